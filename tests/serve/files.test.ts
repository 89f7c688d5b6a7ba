import { mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { giveFiles } from "../../src/desk/server/given-files";
import { type SiteServer, serveSite } from "../../src/desk/server/server";
import { headersFor } from "../../src/site/serve/headers";

const folder = mkdtempSync(join(tmpdir(), "fanrow-serve-"));
const job = join(folder, "job.xlsx");
let site: SiteServer;

beforeAll(async () => {
  mkdirSync(join(folder, "site/.git"), { recursive: true });
  mkdirSync(join(folder, "site/assets"));
  for (const name of ["index.html", "page.html", "gone.js", ".secret", ".git/config"])
    writeFileSync(join(folder, "site", name), `text of ${name}`);
  writeFileSync(job, "a workbook");
  site = await serveSite({ folder: join(folder, "site"), port: 4_950, given: giveFiles([job]) });
});
afterAll(async () => {
  await site.close();
  rmSync(folder, { recursive: true });
});

function ask(path: string, headers: Record<string, string> = {}) {
  return new Promise<{ status: number; body: string; headers: Record<string, unknown> }>(
    (resolve, reject) => {
      const { hostname, port } = new URL(site.address);
      request({ hostname, port, path, headers }, (response) => {
        let body = "";
        response.setEncoding("utf8").on("data", (text: string) => {
          body += text;
        });
        response.on("end", () =>
          resolve({ status: response.statusCode ?? 0, body, headers: response.headers }),
        );
      })
        .on("error", reject)
        .end();
    },
  );
}

describe("A server of ours", () => {
  it.each(["bytes=5-1", "bytes=-", "bytes=999-", "bytes=0-0,5-1", "nonsense"])(
    "answers whole, and lives on, when asked for the range %s",
    async (range) => {
      const { status, body } = await ask("/page.html", { range });
      expect([status, body]).toEqual([200, "text of page.html"]);
      expect((await ask("/page.html")).status).toBe(200);
    },
  );

  it("lives on when a file that it gave is gone, or has become a folder", async () => {
    expect((await ask("/gone.js")).status).toBe(200);
    rmSync(join(folder, "site/gone.js"));
    expect((await ask("/gone.js")).status).toBe(404);
    mkdirSync(join(folder, "site/gone.js"));
    expect((await ask("/gone.js")).status).toBe(404);
    expect((await ask("/")).body).toBe("text of index.html");
  });

  it("lives on when a workbook that it was started with is gone", async () => {
    const other = giveFiles([job]);
    const second = await serveSite({ folder: join(folder, "site"), port: 4_951, given: other });
    rmSync(job);
    const address = `${second.address}given/${other[0]?.token}`;
    expect((await fetch(address)).status).toBe(404);
    mkdirSync(job);
    expect(await (await fetch(address)).text()).toContain("can no longer be read where it was");
    await second.close();
  });

  it("gives nothing whose name, or whose folder's name, begins with a dot", async () => {
    for (const path of ["/.secret", "/.git/config", "/%2egit/config", "/assets/%2e%2e/.secret"])
      expect((await ask(path)).status).toBe(404);
  });

  it("answers a page that is known as it is with nothing new", async () => {
    const { etag } = (await ask("/page.html")).headers;
    expect((await ask("/page.html", { "if-none-match": String(etag) })).status).toBe(304);
  });

  it("answers to no name but this machine's own, with its port", async () => {
    for (const host of ["fans.example.org:4950", "localhost:4951", "127.0.0.1"])
      expect((await ask("/page.html", { host })).status).toBe(421);
  });

  it("says with every page whose scripts it may run", async () => {
    for (const path of ["/", "/page.html", "/none"])
      expect((await ask(path)).headers["content-security-policy"]).toContain("script-src 'self'");
    for (const path of ["/", "/pane.html", "/help/flow.html", "/desk.html"])
      expect(headersFor(path)["Content-Security-Policy"]).toContain("script-src 'self' https:");
  });
});

describe("The certificate's key", () => {
  it("is its owner's alone while it is made, and again where it was opened to others", async () => {
    const { chmodSync, watch } = await import("node:fs");
    const { ensureCertificate } = await import("../../src/site/serve/certificate");
    const own = join(folder, "certificates");
    mkdirSync(own);
    const seen: number[] = [];
    const key = join(own, "localhost.key");
    const watching = watch(own, () => {
      const mode = statSync(key, { throwIfNoEntry: false })?.mode;
      if (mode !== undefined) seen.push(mode & 0o777);
    });
    await ensureCertificate(own);
    watching.close();
    expect(new Set([...seen, statSync(key).mode & 0o777])).toEqual(new Set([0o600]));
    chmodSync(key, 0o644);
    await ensureCertificate(own);
    expect(statSync(key).mode & 0o777).toBe(0o600);
  });
});

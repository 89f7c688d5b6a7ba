import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { giveFiles } from "../../src/desk/server/given-files";
import { readServeOptions } from "../../src/desk/server/options";
import { type SiteServer, serveSite } from "../../src/desk/server/server";
import { deskBrowser } from "./setup/browser";
import { read, sheetTab } from "./setup/cells";
import { firmWorkbook } from "./setup/firm-workbook";

const open = deskBrowser();

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

/** Asks without the tidying of paths and headers that fetch does. */
function ask(
  site: string,
  path: string,
  { method = "GET", headers = {} }: { method?: string; headers?: Record<string, string> } = {},
): Promise<Answer> {
  const { hostname, port } = new URL(site);
  return new Promise((resolve, reject) => {
    const asked = request({ hostname, port, path, method, headers }, (response) => {
      let body = "";
      response.setEncoding("utf8").on("data", (text: string) => {
        body += text;
      });
      response.on("end", () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
      );
    });
    asked.on("error", reject);
    asked.end();
  });
}

describe("the server of the desk", () => {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-given-"));
  const path = join(folder, "visits of May.xlsx");
  let site: SiteServer;
  let given: ReturnType<typeof giveFiles>;

  beforeAll(async () => {
    writeFileSync(path, firmWorkbook());
    given = giveFiles([path]);
    site = await serveSite({ folder: inject("built"), given });
  });
  afterAll(async () => {
    await site.close();
    rmSync(folder, { recursive: true });
  });

  it("listens on the loopback address alone, on the first free port from 4710 up", () => {
    const { address, port } = site.server.address() as { address: string; port: number };
    expect(address).toBe("127.0.0.1");
    expect(port).toBeGreaterThan(4710);
  });

  it("lets pages run no scripts but the site's own, and keeps neither pages nor data", async () => {
    const page = await ask(site.address, "/desk.html");
    expect(page.status).toBe(200);
    expect(page.headers["content-security-policy"]).toContain("script-src 'self';");
    expect(page.headers["x-content-type-options"]).toBe("nosniff");
    expect(page.headers["cache-control"]).toBe("no-store");
    const data = await ask(site.address, "/functions.json");
    expect(data.headers["cache-control"]).toBe("no-store");
    const asset = /assets\/[^"]+\.js/.exec(page.body)?.[0];
    const script = await ask(site.address, `/${asset}`);
    expect(script.headers["cache-control"]).toContain("immutable");
  });

  it("answers only to names of this machine", async () => {
    const port = new URL(site.address).port;
    for (const host of [`127.0.0.1:${port}`, `localhost:${port}`])
      expect((await ask(site.address, "/desk.html", { headers: { host } })).status).toBe(200);
    for (const host of ["fans.example.org", `fans.example.org:${port}`, "127.0.0.1"])
      expect((await ask(site.address, "/desk.html", { headers: { host } })).status).toBe(421);
  });

  it("answers GET and HEAD alone", async () => {
    for (const method of ["POST", "PUT", "DELETE", "OPTIONS"])
      expect((await ask(site.address, "/desk.html", { method })).status).toBe(405);
    const head = await ask(site.address, "/desk.html", { method: "HEAD" });
    expect([head.status, head.body]).toEqual([200, ""]);
  });

  it("gives no file outside the site", async () => {
    const ways = [
      "/../package.json",
      "/..%2fpackage.json",
      "/%2e%2e/package.json",
      "/assets/../../package.json",
      "/..\\package.json",
      "/.%00./package.json",
      "//etc/passwd",
      "/%E0%A4%A",
    ];
    for (const way of ways) {
      const { status, body } = await ask(site.address, way);
      expect([way, status]).toEqual([way, 404]);
      expect(body).toBe("There is no such page here.\n");
    }
  });

  it("lives on after a request that is no HTTP", async () => {
    await new Promise<void>((done) => {
      const socket = connect(Number(new URL(site.address).port), "127.0.0.1", () => {
        socket.end("nonsense\r\n\r\n");
      });
      socket.on("close", () => done());
      socket.resume();
    });
    expect((await ask(site.address, "/desk.html")).status).toBe(200);
  });

  it("gives a named workbook to whoever knows its token, as it stands, and to nobody else", async () => {
    const { token } = given[0] as (typeof given)[0];
    expect(token.length).toBeGreaterThanOrEqual(32);
    const known = await ask(site.address, `/given/${token}`);
    expect(known.status).toBe(200);
    expect(known.headers["cache-control"]).toBe("no-store");
    for (const guess of ["x", token.slice(1), `${token}x`, "../given"])
      expect((await ask(site.address, `/given/${guess}`)).status).toBe(404);
    const elsewhere = { "sec-fetch-site": "cross-site", "sec-fetch-mode": "no-cors" };
    expect((await ask(site.address, `/given/${token}`, { headers: elsewhere })).status).toBe(403);
  });

  it("takes the next port where one is in use, and says so where it was asked for", async () => {
    const port = Number(new URL(site.address).port);
    await expect(serveSite({ folder: inject("built"), port })).rejects.toThrow(
      `port ${port} is in use`,
    );
    const second = await serveSite({ folder: inject("built") });
    expect(Number(new URL(second.address).port)).toBeGreaterThan(port);
    await second.close();
  });

  it("refuses files that are not there and ports that are none, in a line", () => {
    expect(() => giveFiles([join(folder, "gone.xlsx")])).toThrow("there is no such file");
    expect(() => giveFiles([folder])).toThrow("there is no such file");
    expect(() => readServeOptions(["--port", "0"])).toThrow("--port 0: give a whole number");
    expect(() => readServeOptions(["--porte"])).toThrow("--porte");
    expect(readServeOptions(["--help"])).toBeNull();
    expect(readServeOptions(["a.xlsx", "--port", "5000", "--open"])).toEqual({
      port: 5000,
      opensBrowser: true,
      files: ["a.xlsx"],
    });
  });
});

describe("a workbook named on the command line", () => {
  it("is the one the page opens, under its own name", async () => {
    const folder = mkdtempSync(join(tmpdir(), "fanrow-given-"));
    const path = join(folder, "Bürgerhof visits.xlsx");
    writeFileSync(path, firmWorkbook());
    const given = giveFiles([path]);
    const own = await serveSite({ folder: inject("built"), given });
    try {
      const page = await open(`${own.address}desk.html#given=${given[0]?.token}`);
      await sheetTab(page, "Tests").waitFor();
      await page.getByText("Bürgerhof visits.xlsx").first().waitFor();
      expect(await read(page, "A2")).toBe("4A");
    } finally {
      await own.close();
      rmSync(folder, { recursive: true });
    }
  });

  it("that is gone gives way to the demo job, with a line that says so", async () => {
    const page = await open("desk.html#given=unknown");
    await sheetTab(page, "Fans").waitFor();
    await page.getByText("There is no such file here").waitFor();
  });
});

import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import type { IncomingHttpHeaders } from "node:http";
import { type RequestOptions, request } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Certificate, ensureCertificate } from "../../../src/site/serve/certificate";
import { type ExcelServer, serveForExcel } from "../../../src/site/serve/server";
import { loadingSteps } from "../../../src/site/serve/steps";
import type { BuiltSite } from "../built-site";

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

export function servedTests(site: () => BuiltSite): void {
  describe("the site as served to Excel", () => {
    const folder = mkdtempSync(join(tmpdir(), "fanrow-certificate-"));
    let certificate: Certificate;
    let server: ExcelServer;
    beforeAll(async () => {
      certificate = await ensureCertificate(folder);
      server = await serveForExcel({ folder: site().folder, certificate, port: 0 });
    });
    afterAll(async () => {
      await server.close();
      rmSync(folder, { recursive: true });
    });

    /** Asks as a machine that trusts the certificate's authority, and nothing else. */
    const ask = (path: string, options: RequestOptions = {}) =>
      new Promise<Answer>((resolve, reject) => {
        const url = new URL(path, server.address);
        request(url, { ca: certificate.authority.text, agent: false, ...options }, (response) => {
          let text = "";
          response.setEncoding("utf8").on("data", (part: string) => {
            text += part;
          });
          response.on("end", () =>
            resolve({ status: response.statusCode ?? 0, headers: response.headers, text }),
          );
        })
          .on("error", reject)
          .end();
      });

    it("comes over https from localhost, to who trusts the certificate's authority", async () => {
      expect(server.address).toMatch(/^https:\/\/localhost:\d+\/$/);
      const { status, text } = await ask("pane.html");
      expect(status).toBe(200);
      expect(text).toBe(site().read("pane.html"));
      await expect(ask("pane.html", { ca: [] })).rejects.toThrow(/certificate/);
    });

    it("may be shown in a frame of Office's hosts, and of nobody else", async () => {
      for (const path of ["pane.html", "index.html", "help/flow.html"]) {
        const { headers } = await ask(path);
        const policy = String(headers["content-security-policy"]);
        expect(policy, path).toMatch(/^frame-ancestors 'self' https:/);
        expect(policy).toContain("https://*.officeapps.live.com");
        expect(policy).toContain("https://*.sharepoint.com");
        expect(policy).not.toMatch(/\s\*|http:/);
        expect(headers).not.toHaveProperty("x-frame-options");
      }
    });

    it("lets any page read the list of functions, and nothing else", async () => {
      const list = await ask("functions.json");
      expect(list.headers["access-control-allow-origin"]).toBe("*");
      expect(list.headers["content-type"]).toBe("application/json");
      expect(list.text).toBe(site().read("functions.json"));
      expect((await ask("pane.html")).headers).not.toHaveProperty("access-control-allow-origin");
    });

    it("is asked for anew each time, but for the files whose names change with their content", async () => {
      const asset = site().files.find((file) => /^assets\/pane-.*\.js$/.test(file)) ?? "";
      expect((await ask(asset)).headers["cache-control"]).toBe(
        "public, max-age=31536000, immutable",
      );
      for (const path of ["", "pane.html", "functions.json", "functions.js", "manifest.xml"])
        expect((await ask(path)).headers["cache-control"], path).toBe("no-cache");
      const { etag } = (await ask("pane.html")).headers;
      const again = await ask("pane.html", { headers: { "If-None-Match": etag } });
      expect([again.status, again.text]).toEqual([304, ""]);
    });

    it("answers one who asks for something else with a plain no, which is not kept", async () => {
      const gone = await ask("assets/pane-00000000.js");
      expect([gone.status, gone.headers["cache-control"]]).toEqual([404, "no-cache"]);
      expect((await ask("pane.html", { method: "POST" })).status).toBe(405);
      const elsewhere = { headers: { Host: "fans.example.org" }, servername: "localhost" };
      expect((await ask("pane.html", elsewhere)).status).toBe(421);
      const outside = await ask("pane.html", { path: "/../../package.json" });
      expect(outside.status).toBe(404);
    });

    it("says so where the port is taken", async () => {
      const port = Number(new URL(server.address).port);
      await expect(serveForExcel({ folder: site().folder, certificate, port })).rejects.toThrow(
        `port ${port} is in use`,
      );
    });

    it("keeps a certificate that serves, with a key for its owner alone", async () => {
      expect(certificate.isNew).toBe(true);
      expect(statSync(join(folder, "localhost.key")).mode & 0o777).toBe(0o600);
      const again = await ensureCertificate(folder);
      expect(again.isNew).toBe(false);
      expect(again.cert).toEqual(certificate.cert);
    });

    it("makes a new certificate where the old one has run out or is damaged", async () => {
      const inTwoYears = new Date(Date.now() + 2 * 365 * 86_400_000);
      const renewed = await ensureCertificate(folder, inTwoYears);
      expect(renewed.isNew).toBe(true);
      expect(renewed.cert).not.toEqual(certificate.cert);
      writeFileSync(join(folder, "localhost.crt"), "no certificate");
      expect((await ensureCertificate(folder)).isNew).toBe(true);
    });
  });

  describe("the steps that bring the site into Excel", () => {
    const given = {
      address: "https://localhost:3443/",
      manifest: "/site/manifest.xml",
      authority: "/home/ca.crt",
    };

    it("name the manifest, the authority, the three kinds of Excel, and that they are untried", () => {
      const steps = loadingSteps({ ...given, isNew: false });
      for (const words of [
        ...Object.values(given),
        "Windows",
        "Mac",
        "Web",
        "Not yet tried in Excel",
      ])
        expect(steps).toContain(words);
      expect(steps).not.toContain("The certificate is new");
      expect(loadingSteps({ ...given, isNew: true })).toContain("The certificate is new");
    });
  });
}

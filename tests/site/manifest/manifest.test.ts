import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { OfficeAddinManifest } from "office-addin-manifest";
import { afterAll, describe, expect, it } from "vitest";
import { committed, root } from "./committed";

const schema = join(root, "../shared/manifest-schema/OfficeAppManifestV1_1.xsd");
const folder = mkdtempSync(join(tmpdir(), "fanrow-manifest-"));
afterAll(() => rmSync(folder, { recursive: true }));

describe("manifest.xml", () => {
  it("reads as meant through Microsoft's own reader", async () => {
    const info = await OfficeAddinManifest.readManifestFile(join(root, "manifest.xml"));
    expect(info).toMatchObject({
      id: expect.stringMatching(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/),
      version: "1.1.0.0",
      providerName: "Fanrow",
      displayName: "Fanrow",
      defaultLocale: "en-US",
      officeAppType: "TaskPaneApp",
      hosts: ["Workbook"],
      permissions: "ReadWriteDocument",
      iconUrl: "https://localhost:3443/icons/icon-32.png",
      highResolutionIconUrl: "https://localhost:3443/icons/icon-64.png",
      supportUrl: "https://localhost:3443/support.html",
      defaultSettings: { sourceLocation: "https://localhost:3443/pane.html" },
    });
  });

  // The schema set is kept outside the repository, and is not everywhere.
  if (existsSync(schema))
    it("is valid against Microsoft's published schema", () => {
      const file = join(folder, "manifest.xml");
      writeFileSync(file, committed);
      const { status, stderr } = spawnSync("xmllint", ["--noout", "--schema", schema, file], {
        encoding: "utf8",
      });
      expect(stderr).toContain("validates");
      expect(status).toBe(0);
    });
});

import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { isFresh } from "../../src/site/serve/fresh";

describe("a built site", () => {
  let project = "";
  let built = "";
  /** Writes a file as if at that second. */
  const write = (file: string, second: number, text = "") => {
    writeFileSync(join(project, file), text);
    utimesSync(join(project, file), second, second);
  };
  beforeEach(() => {
    project = mkdtempSync(join(tmpdir(), "fanrow-fresh-"));
    built = join(project, "dist");
    for (const folder of ["src/pane", "dist"])
      mkdirSync(join(project, folder), { recursive: true });
    write("src/pane/index.ts", 1000);
    write("manifest.xml", 1000, "<OfficeApp/>");
    write("dist/manifest.xml", 2000, "<OfficeApp/>");
    write("dist/chunks.json", 4_000_000_000);
  });
  afterEach(() => rmSync(project, { recursive: true }));

  it("serves where nothing it is built from has changed since", () => {
    expect(isFresh(project, built)).toBe(true);
  });

  it("is built anew where it is missing, or where a source has changed since", () => {
    expect(isFresh(project, join(project, "elsewhere"))).toBe(false);
    write("src/pane/index.ts", 4_000_000_001);
    expect(isFresh(project, built)).toBe(false);
  });

  it("is built anew where its manifest was written for another address", () => {
    write("dist/manifest.xml", 2000, "<OfficeApp>elsewhere</OfficeApp>");
    expect(isFresh(project, built)).toBe(false);
    rmSync(join(built, "manifest.xml"));
    expect(isFresh(project, built)).toBe(false);
  });
});

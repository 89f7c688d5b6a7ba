import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { type Chunks, paneChunks } from "../../../src/site/build/chunks";
import { checkPackages } from "../../../src/site/build/packages";
import type { BuiltSite } from "../built-site";
import { bundleGoals, bundleSizes } from "./bundle-sizes";
import { readChunks } from "./read-chunks";

/** Chunks made up for a test: the page asks for the pane, and the pane for its charts. */
const made: Chunks = {
  page: "page.js",
  byFile: new Map(
    (
      [
        ["page.js", [], ["pane.js"]],
        ["pane.js", ["shared.js"], ["charts.js"]],
        ["shared.js", [], []],
        ["charts.js", ["shared.js", "plot.js"], []],
        ["plot.js", [], []],
        ["desk.js", ["shared.js"], []],
      ] as const
    ).map(([file, imports, lazy]) => [file, { imports, lazy }]),
  ),
};

export function chunkTests(site: () => BuiltSite): void {
  describe("what the pane fetches", () => {
    it("is told apart as what comes first and what comes when a screen is opened", () => {
      const { first, later } = paneChunks(made);
      expect([...first]).toEqual(["page.js", "pane.js", "shared.js"]);
      expect([...later].sort()).toEqual(["charts.js", "plot.js"]);
    });

    it("is found faulty where React is there twice, or a heavy package comes first", () => {
      const modules = new Map([
        ["pane.js", ["/p/node_modules/react/index.js", "/p/node_modules/reactive/index.js"]],
        ["plot.js", ["/p/node_modules/@observablehq/plot/src/plot.js"]],
      ]);
      expect(checkPackages(made, modules)).toEqual([]);
      modules.set("charts.js", ["/p/node_modules/charts/node_modules/react/index.js"]);
      modules.set("shared.js", ["C:\\p\\node_modules\\@observablehq\\plot\\src\\dot.js"]);
      expect(checkPackages(made, modules)).toEqual([
        expect.stringContaining("react is in the site 2 times"),
        expect.stringContaining("@observablehq/plot is in shared.js"),
      ]);
    });

    it("holds the Check screen at first, and the other screens with their charts later", () => {
      const { first, later } = paneChunks(readChunks(site().folder));
      const text = (files: ReadonlySet<string>) =>
        [...files].map((file) => site().read(file)).join();
      expect(text(first)).toContain("Check the workbook");
      expect(text(first)).not.toContain("Add the job sheets");
      expect(text(later)).toContain("Add the job sheets");
      expect(later.size).toBeGreaterThanOrEqual(4);
    });

    it("stays within its goals as it travels", () => {
      const sizes = bundleSizes(site().folder);
      const functions = readFileSync(join(site().folder, "functions.js"));
      expect(sizes.functions).toBe(gzipSync(functions).length);
      expect(sizes.functions).toBeLessThanOrEqual(bundleGoals.functions);
      // React and the controls alone are more than the lower bound: something was measured.
      expect(sizes.pane).toBeGreaterThan(100_000);
      expect(sizes.pane).toBeLessThanOrEqual(bundleGoals.pane);
      expect(sizes.lazy).toBeGreaterThan(50_000);
    });
  });
}

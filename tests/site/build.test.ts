import { createRequire } from "node:module";
import { posix } from "node:path";
import { Script } from "node:vm";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { helpFile, namespace, worksheetFunctions } from "../../functions";
import { generateMetadata } from "../../functions/metadata/index.mjs";
import { flowFromPressure } from "../../src/formulas";
import { developmentAddress } from "../../src/site/manifest/address";
import { bundleGoals } from "./built/bundle-sizes";
import { chunkTests } from "./built/chunks";
import { servedTests } from "./built/served";
import { type BuiltSite, buildSite, HostError, loadFunctions } from "./built-site";
import { checkManifest } from "./manifest/check";
import { committed, root, siteFiles } from "./manifest/committed";
import { named, parseXml } from "./manifest/xml";

let site: BuiltSite;
beforeAll(async () => {
  site = await buildSite();
});
afterAll(() => site.remove());

/** The page of the runtime and the pages to read; the desk's page is tried with the desk. */
const pages = siteFiles.filter((file) => file.endsWith(".html"));

/** Values of an attribute in a page. */
const valuesOf = (text: string, attribute: string) =>
  [...text.matchAll(new RegExp(`\\s${attribute}="([^"]*)"`, "g"))].map((match) => match[1] ?? "");

describe("the built site", () => {
  it("brings the licence of each package whose code is in it, and Office.js with its own", () => {
    const notices = site.read("licences.txt");
    // Of the controls only those used go in, each a package of its own.
    const elsewhere = ["@fluentui/react-", "cli-table3", "esbuild", "mrmime"];
    const { forbidden } = createRequire(import.meta.url)(`${root}/.dependency-cruiser.cjs`);
    const shipped = forbidden.find(({ name }: { name: string }) => /^shipped code/.test(name)).to;
    const names = String(shipped.pathNot)
      .replace(/^.*\((.*)\)$/, "$1")
      .split("|");
    expect(names.length).toBeGreaterThan(10);
    expect(notices).toContain("\n@fluentui/react-button ");
    for (const name of names.filter((name) => !elsewhere.includes(name)))
      expect(notices, name).toContain(`\n${name} `);
    expect(notices).toMatch(/\nreact \d[\d.]* \(MIT\)\n\nMIT License/);
    expect(notices).not.toMatch(/^\S+ [\d.]+ \(see below\)/m);
    expect(site.read("office/LICENSE.md")).toContain("MICROSOFT SOFTWARE LICENSE TERMS");
  });

  it("holds every file that the manifest, the help and the links rely on", () => {
    expect(site.files).toEqual(expect.arrayContaining([...siteFiles]));
  });

  it("holds together: manifest, functions.json, namespace and files", async () => {
    expect(checkManifest(site.read("manifest.xml"), site.files)).toEqual([]);
    expect(site.read("manifest.xml")).toBe(committed);
    const { functions } = JSON.parse(site.read("functions.json")) as {
      functions: { id: string; helpUrl: string }[];
    };
    expect(site.read("functions.json")).toBe(await generateMetadata());
    for (const { id, helpUrl } of functions) {
      expect(helpUrl).toBe(developmentAddress + helpFile(id));
      expect(site.files).toContain(helpFile(id));
    }
    const stated = named(parseXml(committed), "String").find(
      ({ attributes }) => attributes.get("id") === "Functions.Namespace",
    );
    expect(stated?.attributes.get("DefaultValue")).toBe(namespace);
  });

  it("links only to what is there", () => {
    for (const page of pages)
      for (const to of [
        ...valuesOf(site.read(page), "href"),
        ...valuesOf(site.read(page), "src"),
      ]) {
        if (to.startsWith("https://appsforoffice.microsoft.com/") || to.startsWith("#")) continue;
        expect(site.files, `${page} links to ${to}`).toContain(
          posix.normalize(posix.join(posix.dirname(page), to)),
        );
      }
  });

  it("has a content security policy in every page, and no script or style within one", () => {
    for (const page of pages) {
      const text = site.read(page);
      expect(text, page).toContain('http-equiv="Content-Security-Policy"');
      expect(text, page).not.toMatch(
        /<script(?![^>]*\ssrc=)|<style|\sstyle=|\son\w+=|javascript:/i,
      );
      expect(text, page).not.toMatch(/unsafe-(inline|eval)/);
    }
  });

  it("gives every page a language, a title of its own and a name for its content", () => {
    const titles = pages.map((page) => {
      const text = site.read(page);
      expect(text, page).toContain('<html lang="en">');
      expect(text.match(/<h1>/g), page).toHaveLength(1);
      return text.match(/<title>([^<]+)</)?.[1];
    });
    expect(new Set(titles).size).toBe(titles.length);
  });

  it("loads office.js from Microsoft's network, then the functions, and only then what opens the pane", () => {
    const [office, functions, page] = valuesOf(site.read("pane.html"), "src");
    expect(office).toBe("https://appsforoffice.microsoft.com/lib/1/hosted/office.js");
    expect(functions).toBe("functions.js");
    expect(page).toMatch(/^\.\/assets\/pane-[\w-]{8}\.js$/);
    expect(site.read("pane.html")).toContain(`<script type="module" crossorigin src="${page}">`);
  });

  it("keeps the pane's code out of the page until the page asks for it", () => {
    const asked = [...site.read("pane.html").matchAll(/(?:src|href)="(\.\/assets\/[^"]+)"/g)];
    const size = asked.reduce((sum, [, file]) => sum + site.read(file ?? "").length, 0);
    expect(asked.length).toBeGreaterThanOrEqual(2);
    expect(size).toBeLessThan(10_000);
  });

  it("holds its own address in the manifest and the list of functions only, where it can be changed", () => {
    const holding = site.files.filter((file) => site.read(file).includes(developmentAddress));
    expect(holding.sort()).toEqual(["functions.json", "manifest.xml"]);
  });
});

chunkTests(() => site);
servedTests(() => site);

describe("functions.js", () => {
  it("is no larger than it is meant to be, as it travels", () => {
    expect(gzipSync(site.read("functions.js")).length).toBeLessThanOrEqual(bundleGoals.functions);
  });

  it("associates every id of functions.json in a runtime without window, document or eval", () => {
    const associated = loadFunctions(site.read("functions.js"));
    expect([...associated.keys()].sort()).toEqual(worksheetFunctions.map(({ id }) => id).sort());
    expect(associated.get("FLOW")?.([[24]], [[4]], null, null)).toEqual([[51.36]]);
  });

  it("answers a bad cell with the host's own error, which comes after the functions", () => {
    const flow = loadFunctions(site.read("functions.js")).get("FLOW");
    const cells = flow?.([[24]], [[-4]], null, null) as unknown[][] | undefined;
    const cell = cells?.[0]?.[0];
    expect(cell).toBeInstanceOf(HostError);
    expect(cell).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("hoses") });
  });

  it("is one classic script: nothing is imported, at once or later", () => {
    const script = site.read("functions.js");
    expect(() => new Script(script)).not.toThrow();
    expect(script).not.toMatch(/(?<![.\w])import\(/);
  });

  it("leaves what only help pages show of a formula to them, and shows its sums all the same", () => {
    const script = site.read("functions.js");
    const { validity } = flowFromPressure;
    expect(site.read("help/flow.html")).toContain(validity);
    expect(script).not.toContain(validity);
    expect(loadFunctions(script).get("WORKING")?.("FLOW", [[[24]], [[4]]])).toMatchObject([
      [expect.stringContaining("24")],
    ]);
  });
});

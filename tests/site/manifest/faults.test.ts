import { describe, expect, it } from "vitest";
import { checkManifest } from "./check";
import { changed, committed, siteFiles } from "./committed";
import { inBody } from "./planted/body";
import { inHead } from "./planted/head";
import { inRibbon } from "./planted/ribbon";

const check = (xml: string) => checkManifest(xml, siteFiles);

const faults = [...inHead, ...inBody, ...inRibbon];

describe("the manifest checker", () => {
  it("finds nothing in the committed manifest", () => {
    expect(check(committed)).toEqual([]);
  });

  it.each(faults)("finds %s, and names the element and the mend", (_, from, to, ...words) => {
    const findings = check(changed(committed, from, to));
    const meant = findings.filter((finding) => words.every((word) => finding.includes(word)));
    expect(meant, findings.join("\n")).toHaveLength(1);
    expect(meant[0]).toMatch(/^\w+.*[:;] .+/);
  });

  it.each(["16", "32", "80"])(
    "finds a missing icon of %s px, on the group and on each button",
    (size) => {
      const image = `<bt:Image size="${size}" resid="Icon.${size}" />`;
      const findings = check(committed.replaceAll(image, ""));
      expect(findings.map((finding) => finding.split(" ")[0])).toEqual([
        "Group",
        "Control",
        "Control",
        "Control",
      ]);
      for (const finding of findings) expect(finding).toContain(`size="${size}"`);
    },
  );

  it("takes a function name as one without code where no code is given to Office for it", () => {
    expect(checkManifest(committed, siteFiles, { actions: ["checkWorkbook"] })).toEqual([
      expect.stringContaining('"showRates" does nothing'),
    ]);
  });

  it("says where a manifest is not well-formed", () => {
    expect(check(changed(committed, "</Hosts>\n  <Requirements>", "<Requirements>"))).toEqual([
      expect.stringMatching(/^manifest: not well-formed XML at \d+:\d+: /),
    ]);
    expect(check("")).toEqual([expect.stringContaining("not well-formed")]);
  });

  it("is not misled by comments, prefixes and entities", () => {
    expect(
      check(
        changed(
          committed,
          "<Hosts>\n    <Host Name",
          "<!-- <TaskpaneId>x</TaskpaneId> --><Hosts>\n    <Host Name",
        ),
      ),
    ).toEqual([]);
    expect(check(committed.replaceAll("bt:", "basic:").replaceAll(":bt=", ":basic="))).toEqual([]);
    expect(check(changed(committed, "support.html", "support&#46;html"))).toEqual([]);
  });

  it("has its proof on at least twenty kinds of fault, each of its own", () => {
    const all = faults.map(([fault]) => fault);
    expect(new Set(all).size).toBe(all.length);
    expect(all.length).toBeGreaterThanOrEqual(20);
  });
});

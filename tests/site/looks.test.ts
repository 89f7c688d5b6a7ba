import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const root = join(import.meta.dirname, "../..");
const icons = join(root, "src/site/icons");
const style = readFileSync(join(root, "src/site/html/site.css"), "utf8");

// PNG: eight bytes of signature, then the header chunk with width and height (ISO/IEC 15948, 11.2.2).
describe.each([16, 32, 64, 80, 128])("the icon of %i px", (size) => {
  const png = readFileSync(join(icons, `icon-${size}.png`));

  it("is a PNG of just that size, with an alpha channel", () => {
    expect(png.subarray(0, 8).toString("latin1")).toBe("\x89PNG\r\n\x1a\n");
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
    expect(png[25]).toBe(6);
  });
});

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [
    number,
    number,
  ];
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((from) => {
    const share = Number.parseInt(colour.slice(from, from + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe.each([
  ["light", 0],
  ["dark", 1],
])("the colours of the %s pages", (_, place) => {
  const colour = (name: string) =>
    [...style.matchAll(new RegExp(`--${name}: (#[0-9a-f]{6})`, "g"))][place]?.[1] ?? "";

  // WCAG 2.2, 1.4.3: text 4.5 to 1; 1.4.11: what marks the focus 3 to 1.
  it.each(["ink", "quiet", "link"])("%s is readable on paper and on panels", (name) => {
    expect(contrast(colour(name), colour("paper"))).toBeGreaterThanOrEqual(4.5);
    expect(contrast(colour(name), colour("panel"))).toBeGreaterThanOrEqual(4.5);
  });

  it("the focus mark stands out", () => {
    expect(contrast(colour("mark"), colour("paper"))).toBeGreaterThanOrEqual(3);
  });
});

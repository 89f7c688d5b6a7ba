/** Least contrast of text against what lies behind it (WCAG 2.2, 1.4.3). */
export const leastContrast = 4.5;

/** Relative luminance of "#RRGGBB" (WCAG 2.2, "relative luminance"). */
export function luminance(color: string): number {
  const channel = (at: number) => {
    const share = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

/** Contrast ratio of two colours, 1 to 21 (WCAG 2.2, "contrast ratio"). */
export function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

/** The wanted text colour where it can be read on a ground, else black or white. */
export function readable(wanted: string | null, ground: string): string {
  if (wanted !== null && contrast(wanted, ground) >= leastContrast) return wanted;
  return contrast("#000000", ground) >= contrast("#ffffff", ground) ? "#000000" : "#ffffff";
}

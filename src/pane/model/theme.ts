export const themes = ["light", "dark", "contrast"] as const;
export type PaneTheme = (typeof themes)[number];

/** What the host says of its colours, as far as it says anything. */
export interface HostColours {
  readonly isDarkTheme?: boolean;
  /** Said by our desk alone: Excel has no word for it, and the browser tells it there. */
  readonly isHighContrast?: boolean;
  readonly bodyBackgroundColor?: string;
}

/** What the browser says. */
interface BrowserColours {
  readonly forcedColours: boolean;
  readonly moreContrast: boolean;
  readonly dark: boolean;
}

/** High contrast wherever it is asked for, then the host's own theme, then the browser's. */
export function pickTheme(host: HostColours | undefined, browser: BrowserColours): PaneTheme {
  if (host?.isHighContrast || browser.forcedColours || browser.moreContrast) return "contrast";
  if (typeof host?.isDarkTheme === "boolean") return host.isDarkTheme ? "dark" : "light";
  const lightness = host?.bodyBackgroundColor && lightnessOf(host.bodyBackgroundColor);
  if (typeof lightness === "number") return lightness < 0.5 ? "dark" : "light";
  return browser.dark ? "dark" : "light";
}

/** Rec. 601 luma of "#rrggbb" from 0 to 1; undefined for anything else. */
function lightnessOf(colour: string): number | undefined {
  const found = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(colour.trim());
  if (!found) return undefined;
  const [red, green, blue] = found.slice(1).map((part) => Number.parseInt(part, 16) / 255);
  return 0.299 * (red ?? 0) + 0.587 * (green ?? 0) + 0.114 * (blue ?? 0);
}

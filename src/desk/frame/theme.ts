import {
  type Theme,
  teamsHighContrastTheme,
  webDarkTheme,
  webLightTheme,
} from "@fluentui/react-components";
import type { ThemeName } from "../look/theme-name";

export const themeChoices = ["auto", "light", "dark", "contrast"] as const;
export type ThemeChoice = (typeof themeChoices)[number];
export type { ThemeName } from "../look/theme-name";

export const fluentThemes: Readonly<Record<ThemeName, Theme>> = {
  light: webLightTheme,
  dark: webDarkTheme,
  contrast: teamsHighContrastTheme,
};

const queries = {
  contrast: "(prefers-contrast: more), (forced-colors: active)",
  dark: "(prefers-color-scheme: dark)",
};

/** The theme in force: the one chosen, or the one the browser asks for. */
export function themeFor(choice: ThemeChoice): ThemeName {
  if (choice !== "auto") return choice;
  if (matchMedia(queries.contrast).matches) return "contrast";
  return matchMedia(queries.dark).matches ? "dark" : "light";
}

/** Calls back when the browser asks for another theme. */
export function watchBrowserTheme(changed: () => void): () => void {
  const lists = Object.values(queries).map((query) => matchMedia(query));
  for (const list of lists) list.addEventListener("change", changed);
  return () => {
    for (const list of lists) list.removeEventListener("change", changed);
  };
}

const key = "fanrow.desk.theme";

export function rememberedTheme(): ThemeChoice {
  const kept = remember(() => localStorage.getItem(key));
  return themeChoices.find((choice) => choice === kept) ?? "auto";
}

export function keepTheme(choice: ThemeChoice): void {
  remember(() => localStorage.setItem(key, choice));
}

/** Storage may be closed to the page; then nothing is kept. */
function remember<T>(use: () => T): T | null {
  try {
    return use();
  } catch {
    return null;
  }
}

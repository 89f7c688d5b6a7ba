/** The themes of the page. */
export type ThemeName = "light" | "dark" | "contrast";

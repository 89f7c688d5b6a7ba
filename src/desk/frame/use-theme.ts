import { useLayoutEffect, useState, useSyncExternalStore } from "react";
import {
  keepTheme,
  rememberedTheme,
  type ThemeChoice,
  type ThemeName,
  themeFor,
  watchBrowserTheme,
} from "./theme";

/** The chosen theme, the one in force, and a way to choose. */
export function useTheme(): {
  readonly choice: ThemeChoice;
  readonly theme: ThemeName;
  readonly choose: (choice: ThemeChoice) => void;
} {
  const [choice, setChoice] = useState(rememberedTheme);
  const theme = useSyncExternalStore(watchBrowserTheme, () => themeFor(choice));
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = theme;
    document.documentElement.style.colorScheme = theme === "light" ? "light" : "dark";
  }, [theme]);
  const choose = (next: ThemeChoice) => {
    keepTheme(next);
    setChoice(next);
  };
  return { choice, theme, choose };
}

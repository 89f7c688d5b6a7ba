import { useEffect, useState } from "react";
import { type HostColours, type PaneTheme, pickTheme } from "../model/theme";

/** The part of Office's global object that tells its colours. */
interface OfficeGlobal {
  readonly Office?: { readonly context?: { readonly officeTheme?: HostColours } };
}

const queries = {
  forcedColours: "(forced-colors: active)",
  moreContrast: "(prefers-contrast: more)",
  dark: "(prefers-color-scheme: dark)",
} as const;

/** The theme that host and browser ask for, followed as they change. */
export function useTheme(): PaneTheme {
  const [theme, setTheme] = useState(asked);
  useEffect(() => {
    const look = () => setTheme(asked());
    const lists = Object.values(queries).map((query) => matchMedia(query));
    for (const list of lists) list.addEventListener("change", look);
    // Excel tells nobody of a new theme, so it is looked up when the pane comes to the front.
    document.addEventListener("visibilitychange", look);
    return () => {
      for (const list of lists) list.removeEventListener("change", look);
      document.removeEventListener("visibilitychange", look);
    };
  }, []);
  return theme;
}

function asked(): PaneTheme {
  const host = (globalThis as OfficeGlobal).Office?.context?.officeTheme;
  return pickTheme(host, {
    forcedColours: matchMedia(queries.forcedColours).matches,
    moreContrast: matchMedia(queries.moreContrast).matches,
    dark: matchMedia(queries.dark).matches,
  });
}

import type { ThemeName } from "./theme";

interface OfficeGlobal {
  Office?: object;
}

/** What Excel tells an add-in of its colours, and strong contrast, for which Excel has no word. */
const told = { isDarkTheme: false, isHighContrast: false };

/** Tells the pane the theme in the way Excel does: it looks the theme up when it comes to the front. */
export function tellPane(theme: ThemeName): void {
  told.isDarkTheme = theme !== "light";
  told.isHighContrast = theme === "contrast";
  offerTheme(globalThis as OfficeGlobal);
  document.dispatchEvent(new Event("visibilitychange"));
}

/** Puts a context with our theme before the library's own, which can only be read. */
function offerTheme(global: OfficeGlobal): void {
  if (global.Office && Object.hasOwn(global.Office, "deskTheme")) return;
  global.Office = Object.create(global.Office ?? {}, {
    deskTheme: { value: told },
    context: { value: { officeTheme: told } },
  }) as object;
}

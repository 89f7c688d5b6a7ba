import { useEffect, useRef } from "react";
import type { Desk } from "../desk";
import { attendClipboard } from "../grid/clipboard";
import { pressKey } from "../grid/keys";
import { attendPointer } from "../grid/pointer";
import { SheetGrid } from "../grid/sheet-grid";
import type { ThemeName } from "../look/theme-name";
import { gridId } from "./regions";
import { tabId } from "./SheetTabs";

/** The grid of the active sheet, with the keyboard, the mouse and the clipboard at work on it. */
export function GridView({ desk, theme }: { desk: Desk; theme: ThemeName }) {
  const place = useRef<HTMLDivElement>(null);
  const grid = useRef<SheetGrid | null>(null);
  const shownTheme = useRef(theme);

  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const made = new SheetGrid(element, desk, () => shownTheme.current);
    grid.current = made;
    const onKey = (event: KeyboardEvent) => {
      if (!pressKey(event, { desk, page: () => made.page })) return;
      event.preventDefault();
      event.stopPropagation();
    };
    element.addEventListener("keydown", onKey, { capture: true });
    const release = [
      attendClipboard(element, desk),
      attendPointer(element, desk, () => made.focus()),
      () => element.removeEventListener("keydown", onKey, { capture: true }),
      () => made.destroy(),
    ];
    return () => {
      for (const leave of release) leave();
    };
  }, [desk]);

  useEffect(() => {
    shownTheme.current = theme;
    grid.current?.redraw();
  }, [theme]);

  return (
    <div
      id={gridId}
      className="desk-grid"
      role="tabpanel"
      aria-labelledby={tabId(desk.sheet.name)}
      ref={place}
    />
  );
}

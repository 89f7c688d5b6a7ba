import { useEffect, useRef } from "react";
import type { Desk } from "../desk";
import { tellPane } from "./pane-theme";
import { focusGrid } from "./regions";
import type { ThemeName } from "./theme";
import { useDesk } from "./use-desk";

/** The place of the task pane. It stays mounted while it is out of view, so that it keeps its state. */
export function PaneFrame({
  desk,
  isShown,
  theme,
}: {
  desk: Desk;
  isShown: boolean;
  theme: ThemeName;
}) {
  useDesk(desk);
  const { opened } = desk;
  const place = useRef<HTMLElement>(null);

  useEffect(() => tellPane(theme), [theme]);

  // Another workbook has a pane of its own, as in Excel.
  // biome-ignore lint/correctness/useExhaustiveDependencies: mounted anew for each workbook
  useEffect(() => {
    const home = document.createElement("div");
    home.className = "desk-pane-inside";
    place.current?.append(home);
    let isWanted = true;
    let remove = () => {};
    void import("../../pane").then(({ mountPane }) => {
      if (!isWanted) return;
      remove = mountPane(home, {
        showMarks: (marks) => isWanted && desk.setMarks(marks),
        toSheet: focusGrid,
        checksAtOnce: true,
      });
    });
    return () => {
      isWanted = false;
      home.remove();
      // The pane is a root of its own, which cannot go while this one is being drawn.
      queueMicrotask(() => remove());
    };
  }, [opened, desk]);

  return (
    <aside
      ref={place}
      id="desk-pane"
      className="desk-pane"
      aria-label="Task pane"
      hidden={!isShown}
    />
  );
}

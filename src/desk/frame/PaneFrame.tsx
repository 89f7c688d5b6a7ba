import { useEffect, useRef } from "react";
import { tellPane } from "./pane-theme";
import type { ThemeName } from "./theme";

/** The place of the task pane. It stays mounted while it is out of view, so that it keeps its state. */
export function PaneFrame({ isShown, theme }: { isShown: boolean; theme: ThemeName }) {
  const place = useRef<HTMLElement>(null);
  const isContrast = theme === "contrast";

  useEffect(() => tellPane(theme), [theme]);

  // Excel has no word for a theme of strong contrast, so that one is given as the pane is mounted.
  useEffect(() => {
    const home = document.createElement("div");
    home.className = "desk-pane-inside";
    place.current?.append(home);
    let isWanted = true;
    let remove = () => {};
    void import("../../pane").then(({ mountPane }) => {
      if (isWanted) remove = mountPane(home, isContrast ? { theme: "contrast" } : {});
    });
    return () => {
      isWanted = false;
      home.remove();
      // The pane is a root of its own, which cannot go while this one is being drawn.
      queueMicrotask(() => remove());
    };
  }, [isContrast]);

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

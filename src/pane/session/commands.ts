import { screens } from "../model/screens";
import type { Session } from "./session";

/**
 * Follows what the ribbon and the cell menu ask for, which reaches the pane as events:
 * `fanrow:check` checks the workbook, `fanrow:show` with `detail.screen` shows a screen. Returns
 * what stops it.
 */
export function followCommands(events: EventTarget, session: Session): () => void {
  const check = () => {
    session.show("check");
    void session.check();
  };
  const show = (event: Event) => {
    const wanted: unknown = (event as CustomEvent<{ screen?: unknown } | null>).detail?.screen;
    const screen = screens.find(({ key }) => key === wanted);
    if (screen) session.show(screen.key);
  };
  events.addEventListener("fanrow:check", check);
  events.addEventListener("fanrow:show", show);
  return () => {
    events.removeEventListener("fanrow:check", check);
    events.removeEventListener("fanrow:show", show);
  };
}

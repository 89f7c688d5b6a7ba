import type { Desk } from "../desk";
import { sumUp } from "../sum-up";
import { useDesk } from "./use-desk";

/** Below the grid: how to get about, and a sum of what is selected. */
export function StatusLine({ desk }: { desk: Desk }) {
  useDesk(desk);
  return (
    <footer className="desk-status">
      <span id="desk-keys">F2 edits a cell · F6 goes to the next part of the page</span>
      <span role="status">{sumUp(desk)}</span>
    </footer>
  );
}

import { cellName } from "../../cells";
import type { Desk } from "../desk";
import { sumUp } from "../sum-up";
import { useDesk } from "./use-desk";

/** Below the grid: what was found at the cell, or how to get about, and a sum of what is selected. */
export function StatusLine({ desk }: { desk: Desk }) {
  useDesk(desk);
  const { row, col } = desk.cursor;
  const here = desk.markAt(row, col) ?? desk.latest;
  return (
    <footer className="desk-status">
      {here ? (
        <span className="desk-finding">
          <b>{cellName(here.row, here.col)}</b> {here.words}
        </span>
      ) : (
        <span id="desk-keys">F2 edits a cell · F6 goes to the next part of the page</span>
      )}
      <span role="status">{sumUp(desk)}</span>
    </footer>
  );
}

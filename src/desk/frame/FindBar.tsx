import { Button, Input } from "@fluentui/react-components";
import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { count } from "../../job";
import type { Desk } from "../desk";
import { nextWith, replaced, replacedAll } from "../rows/find";
import { focusGrid } from "./regions";

/** Finds a text on the sheet in view and replaces it in typed cells. */
export function FindBar({ desk, onClose }: { desk: Desk; onClose: () => void }) {
  const [wanted, setWanted] = useState("");
  const [by, setBy] = useState("");
  const [said, setSaid] = useState("");
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);

  const find = (sign: 1 | -1) => {
    if (wanted === "") return;
    const spot = nextWith(desk, wanted, desk.cursor, sign);
    setSaid(spot ? "" : `"${wanted}" does not stand on this sheet.`);
    if (spot) desk.moveTo(spot.row, spot.col);
  };
  const replaceHere = () => {
    const cells = replaced(desk, desk.cursor, wanted, by);
    if (cells.length > 0) desk.attempt(() => desk.book.userEntersCells(desk.sheet.name, cells));
    find(1);
  };
  const replaceAll = () => {
    const cells = replacedAll(desk, wanted, by);
    if (cells.length > 0) desk.attempt(() => desk.book.userEntersCells(desk.sheet.name, cells));
    setSaid(`${count(cells.length, "cell")} changed; formulas left alone.`);
  };
  const close = () => {
    onClose();
    focusGrid();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape") close();
    else if (event.key === "Enter" && event.target === field.current) find(event.shiftKey ? -1 : 1);
    else return;
    event.preventDefault();
  };
  return (
    <search className="desk-find" aria-label="Find and replace" onKeyDown={onKeyDown}>
      <Input
        input={{ ref: field }}
        size="small"
        aria-label="Find"
        placeholder="Find"
        value={wanted}
        onChange={(_, { value }) => setWanted(value)}
      />
      <Button size="small" onClick={() => find(1)}>
        Next
      </Button>
      <Input
        size="small"
        aria-label="Replace with"
        placeholder="Replace with"
        value={by}
        onChange={(_, { value }) => setBy(value)}
      />
      <Button size="small" disabled={wanted === ""} onClick={replaceHere}>
        Replace
      </Button>
      <Button size="small" disabled={wanted === ""} onClick={replaceAll}>
        Replace all
      </Button>
      <span role="status">{said}</span>
      <Button size="small" appearance="subtle" onClick={close}>
        Close
      </Button>
    </search>
  );
}

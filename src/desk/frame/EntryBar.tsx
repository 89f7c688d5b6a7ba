import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { rectangleText } from "../../cells";
import { type Desk, messageOf } from "../desk";
import { goTo } from "../go-to";
import { goOn } from "../grid/keys";
import { meaningOf } from "../text/errors";
import { focusGrid } from "./regions";
import { useDesk } from "./use-desk";

/** The address of the active cell, and what it holds. */
export function EntryBar({ desk }: { desk: Desk }) {
  useDesk(desk);
  return (
    <section id="desk-entry" className="desk-entry" aria-label="Cell">
      <PlaceField desk={desk} />
      <ContentField desk={desk} />
      <EntryNote desk={desk} />
    </section>
  );
}

function PlaceField({ desk }: { desk: Desk }) {
  const [typed, setTyped] = useState<string | null>(null);
  const refused = useRef(0);
  const go = (text: string) => {
    try {
      goTo(desk, text);
      desk.messages.dismiss(refused.current);
      focusGrid();
    } catch (thrown) {
      refused.current = desk.messages.add("error", messageOf(thrown));
    }
  };
  return (
    <input
      className="desk-place"
      type="text"
      aria-label="Address; type one to go there"
      autoComplete="off"
      spellCheck={false}
      value={typed ?? rectangleText(desk.area)}
      onFocus={({ target }) => target.select()}
      onChange={({ target }) => setTyped(target.value)}
      onBlur={() => setTyped(null)}
      onKeyDown={({ key, currentTarget }) => {
        if (key === "Enter") go(currentTarget.value);
        if (key === "Escape") focusGrid();
      }}
    />
  );
}

function ContentField({ desk }: { desk: Desk }) {
  const field = useRef<HTMLInputElement>(null);
  const { edit, cursor, sheet, book } = desk;
  const problem = edit?.problem ?? null;
  const isHere = edit?.place === "bar";
  useEffect(() => {
    if (isHere) field.current?.focus();
  }, [isHere]);
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === "Enter" || event.key === "Tab") {
      event.preventDefault();
      if (!desk.commit()) return;
      goOn(event, desk);
      focusGrid();
    } else if (event.key === "Escape") {
      desk.cancel();
      focusGrid();
    }
  };
  return (
    <input
      ref={field}
      className="desk-content"
      type="text"
      aria-label="Content of the cell"
      aria-invalid={problem !== null}
      aria-describedby="desk-entry-note"
      autoComplete="off"
      spellCheck={false}
      value={edit ? edit.text : book.typedText(sheet.name, cursor.row, cursor.col)}
      onFocus={() => desk.beginEdit("bar")}
      onChange={({ target }) => {
        desk.beginEdit("bar");
        desk.retype(target.value);
      }}
      onBlur={() => {
        if (desk.edit?.place === "bar") desk.commit();
      }}
      onKeyDown={onKeyDown}
    />
  );
}

/** Why the text cannot be taken, or what the error in the cell means. */
function EntryNote({ desk }: { desk: Desk }) {
  const { edit, cursor, sheet, book } = desk;
  const value = book.value(sheet.name, cursor.row, cursor.col);
  const error = typeof value === "object" && value !== null ? value : null;
  const meaning = error ? `${error.error} ${meaningOf(error)}` : "";
  const text = edit?.problem ?? (edit ? "" : meaning);
  return (
    <div id="desk-entry-note" className="desk-entry-note" role="status" title={text}>
      {text}
    </div>
  );
}

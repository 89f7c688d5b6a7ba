import { isBlankCell, shown } from "../cells";
import type { NextOpening } from "../rules";
import type { Mend, Write } from "./findings";
import type { FanRows, Table } from "./read";

/** Puts back the column's formula from the nearest row that has it; undefined where none has. */
export function restoredFormula(table: Table, key: string, i: number): Mend | undefined {
  for (let away = 1; away < table.length; away++)
    for (const near of [i - away, i + away])
      if (near >= 0 && near < table.length && table.formula(key, near) !== null)
        return {
          label: "Restore the formula",
          writes: [{ cell: table.ref(key, i), formulaOf: table.ref(key, near) }],
        };
  return undefined;
}

/** Turns the sign of every reading typed in a row. */
export function turnedSign(fans: FanRows, i: number): Mend | undefined {
  const { table } = fans;
  const writes = typedPressures(fans, i).map((key) => ({
    cell: table.ref(key, i),
    // A number that was typed as a text gives none: it is for a person to type again.
    value: -Number(table.stored(key, i)),
  }));
  return writes.length > 0 && writes.every(({ value }) => !Number.isNaN(value))
    ? { label: "Turn the sign", writes }
    : undefined;
}

/**
 * Sets a row up for a new reading with other openings. What was read goes into the note, so that
 * nothing is lost; undefined where the sheet has no note to keep it in.
 */
export function readAgainWith(fans: FanRows, i: number, next: NextOpening): Mend | undefined {
  const { table } = fans;
  const typed = typedPressures(fans, i);
  if (!table.has("openings") || !table.has("note") || typed.length === 0) return undefined;
  const read = typed.map((key) => shown(table.raw(key, i) as number)).join(", ");
  const was = `read ${read} with ${table.text("openings", i) || "unnamed openings"}`;
  const note = [table.text("note", i), was].filter((text) => text !== "").join("; ");
  const writes: Write[] = [
    { cell: table.ref("openings", i), value: next.label },
    ...typed.map((key) => ({ cell: table.ref(key, i), value: null })),
    { cell: table.ref("note", i), value: note },
  ];
  return { label: `Set up for ${next.label}`, writes };
}

/** A number typed with its own unit, such as "4.1 Pa", as the number alone. */
export function numberAlone(
  table: Table,
  key: string,
  i: number,
  units: readonly string[],
): Mend | undefined {
  const found = /^\s*'?(-?\d+(?:\.\d+)?)\s*(\S.*)?$/.exec(table.text(key, i));
  const unit = found?.[2]?.trim();
  if (!found || (unit !== undefined && !units.includes(unit))) return undefined;
  return {
    label: `Type ${found[1]}`,
    writes: [{ cell: table.ref(key, i), value: Number(found[1]) }],
  };
}

/** The pressure fields of a row that hold a typed number. */
function typedPressures(fans: FanRows, i: number): string[] {
  const { table } = fans;
  return [...fans.readingKeys, "pressure"].filter(
    (key) =>
      table.has(key) &&
      table.formula(key, i) === null &&
      !isBlankCell(table.raw(key, i)) &&
      table.gap(key, i) === undefined,
  );
}

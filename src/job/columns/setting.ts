import { type CellValue, isBlankCell } from "../../cells";
import type { System } from "../../editions";

/** The cell of a setting, and where to say that it cannot be used. */
export interface Typed {
  readonly cell: CellValue;
  /** The same as trimmed text; "" for a blank. */
  readonly text: string;
  readonly system: System;
  readonly complain: (what: string, mend: string) => void;
}

type Usual<T> = T | Readonly<Record<System, T>>;

/** How a setting is read, and what is usual: that stands in for a blank and for what cannot be used. */
interface Reading<T> {
  readonly read: (typed: Typed) => T;
  readonly usual?: Usual<number | string>;
}

/** One setting of the Job sheet: its label in column A, its value in column B. */
export interface Setting<T = unknown> extends Reading<T> {
  readonly label: string;
  readonly words: readonly string[];
  readonly help: string;
  /** Entries that a drop-down list offers. */
  readonly choices?: readonly string[];
  /** Of a day: how its cell shows it. */
  readonly format?: string;
  /** What a new job says, where that is not what is usual. */
  readonly starts?: Usual<number | string>;
}

/** `words` as one text, each after a comma. */
export const entry = <T>(
  label: string,
  words: string,
  help: string,
  reading: Reading<T>,
  rest: Pick<Setting, "choices" | "format" | "starts"> = {},
): Setting<T> => ({
  label,
  words: words === "" ? [] : words.split(", "),
  help,
  ...reading,
  ...rest,
});

export const inSystem = <T extends number | string>(usual: Usual<T>, system: System): T =>
  typeof usual === "object" ? usual[system] : usual;

export const text: Reading<string> = { read: (typed) => typed.text };

const numberFrom =
  (least: string, isSound: (value: number) => boolean) =>
  (usual: Usual<number>): Reading<number> => ({
    usual,
    read({ cell, text, system, complain }) {
      const own = inSystem(usual, system);
      if (isBlankCell(cell)) return own;
      if (typeof cell === "number" && isSound(cell)) return cell;
      complain(`"${text}" is not a number ${least}`, `Type a number; ${own} is usual.`);
      return own;
    },
  });

export const above0 = numberFrom("above 0", (value) => value > 0);
export const from0 = numberFrom("of 0 or more", (value) => value >= 0);

export const ifGiven: Reading<number | undefined> = {
  read({ cell, text, complain }) {
    if (typeof cell === "number") return cell;
    if (!isBlankCell(cell))
      complain(`"${text}" is not a number`, "Type a number, or leave the cell blank.");
    return undefined;
  },
};

/** One of some words, whatever the case. */
export const word = <T extends string>(known: readonly T[], usual: T): Reading<T> => ({
  usual,
  read({ text, complain }) {
    const found = known.find((each) => each === text.toLowerCase());
    if (text !== "" && found === undefined)
      complain(`unknown entry "${text}"`, `Type ${known.join(" or ")}.`);
    return found ?? usual;
  },
});

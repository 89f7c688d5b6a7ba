import type { OpenBook } from "../open-book";
import { invalidArgument } from "../wire/errors";
import type { Members } from "../wire/served";

const modes: readonly unknown[] = ["Automatic", "AutomaticExceptTables", "Manual"];
const kinds: readonly unknown[] = ["Recalculate", "Full", "FullRebuild"];

/**
 * The mode is kept for those that set it back; every formula follows its cells at once in each of
 * them, so that there is never anything left to calculate.
 */
export function applicationMembers(): Members<OpenBook> {
  return {
    className: "Application",
    values: {
      calculationMode: {
        get: (book) => book.calculationMode,
        set(book, value) {
          if (!modes.includes(value))
            throw invalidArgument(`"${String(value)}" is no way of calculating.`);
          book.calculationMode = value as string;
        },
      },
      calculationState: { get: () => "Done" },
    },
    methods: {
      calculate(book, args) {
        if (!kinds.includes(args.json(0)))
          throw invalidArgument(`"${String(args.json(0))}" is no kind of calculation.`);
        const values = book.model.recalculateAll();
        if (values.length > 0) book.touched({ kind: "cells", origin: "pane", edited: [], values });
      },
      // A batch is worked out as a whole and the page draws after it, so both hold anyway.
      suspendApiCalculationUntilNextSync() {},
      suspendScreenUpdatingUntilNextSync() {},
    },
  };
}

export function runtimeMembers(): Members<OpenBook> {
  return {
    className: "Runtime",
    values: {
      enableEvents: {
        get: (book) => book.events.isEnabled,
        set(book, value) {
          book.events.isEnabled = value === true;
        },
      },
    },
  };
}

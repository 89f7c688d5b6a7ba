import { tellCalculated } from "../cells/write";
import type { OpenBook } from "../open-book";
import { invalidArgument } from "../wire/errors";
import type { Members } from "../wire/served";

const modes: readonly unknown[] = ["Automatic", "AutomaticExceptTables", "Manual"];
const kinds: readonly unknown[] = ["Recalculate", "Full", "FullRebuild"];

/** In the manual mode formulas follow their cells when they are asked to calculate. */
export function applicationMembers(): Members<OpenBook> {
  return {
    className: "Application",
    values: {
      calculationMode: {
        get: (book) => book.calculationMode,
        set(book, value) {
          if (!modes.includes(value))
            throw invalidArgument(`"${String(value)}" is no way of calculating.`);
          const wasManual = book.calculationMode === "Manual";
          book.calculationMode = value as string;
          book.model.isManual = value === "Manual";
          if (wasManual && value !== "Manual") calculate(book);
        },
      },
    },
    methods: {
      calculate(book, args) {
        if (!kinds.includes(args.json(0)))
          throw invalidArgument(`"${String(args.json(0))}" is no kind of calculation.`);
        calculate(book);
      },
      // A batch is worked out as a whole, so that it holds anyway.
      suspendApiCalculationUntilNextSync() {},
    },
  };
}

function calculate(book: OpenBook): void {
  const values = book.model.recalculateAll();
  if (values.length === 0) return;
  tellCalculated(book, values);
  book.touched({ kind: "cells", origin: "pane", edited: [], values });
}

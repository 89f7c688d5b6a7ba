import { serialOfDay } from "../../../cells";
import type { OpenBook } from "../open-book";
import { invalidArgument } from "../wire/errors";
import { serve } from "../wire/served";

const result = serve<number>({
  className: "FunctionResult",
  values: { value: { get: (value) => value }, error: { get: () => null } },
});

/** The native functions that a client may call without a cell: DATE, which tells the day count. */
export const functions = serve<OpenBook>({
  className: "Functions",
  methods: {
    date(book, args) {
      const [year, month, day] = ["year", "month", "day"].map((what, i) =>
        args.integer(i, `The ${what}`),
      ) as [number, number, number];
      if (year < 1904 || year > 9999) throw invalidArgument("The year must be 1904 to 9999.");
      return result(serialOfDay({ year, month, day }, book.workbook.date1904));
    },
  },
});

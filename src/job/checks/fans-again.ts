import { cellName, grouped } from "../../cells";
import type { SecondSheet } from "../read";
import type { Check } from "./check";

/** A second sheet with the fans of another, which a reader may take for the one that counts. */
export const checkFansAgain: Check = ({ second }, report) => {
  for (const [name, own] of grouped(second, (each) => each.name)) {
    const { block, firstName, row, col } = own[0] as SecondSheet;
    const sum = (key: "rows" | "otherwise") => own.reduce((all, each) => all + each[key], 0);
    const { hiddenSheet } = block.grid;
    const hidden =
      hiddenSheet === "veryHidden"
        ? ", hidden so that no menu shows it,"
        : hiddenSheet
          ? ", hidden,"
          : "";
    const otherwise = sum("otherwise");
    const differ =
      otherwise === 0 ? "with the same readings" : `${otherwise} of them with other readings`;
    report.add("fans-again", name, cellName(row, col), row, "", {
      what: `${name}${hidden} lists ${sum("rows")} fans of ${firstName} again, ${differ}`,
      effect: `Which of the two sheets counts cannot be told: ${name} is left out, and all results are those of ${firstName}.`,
      mend: "Delete the sheet that does not count, or keep it in a workbook of its own.",
    });
  }
};

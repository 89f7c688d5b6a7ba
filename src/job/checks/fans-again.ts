import { cellName } from "../../cells";
import type { Check } from "./check";

/** A second sheet with the fans of another, which a reader may take for the one that counts. */
export const checkFansAgain: Check = ({ second, firm }, report) => {
  for (const { block, name, firstName, row, col, rows, otherwise } of second) {
    const { hiddenSheet } = block.grid;
    const hidden =
      hiddenSheet &&
      (hiddenSheet === "hidden" ? ", hidden," : ", hidden so that no menu shows it,");
    const differ =
      otherwise === 0 ? "with the same readings" : `${otherwise} of them with other readings`;
    report.add("fans-again", name, cellName(row, col), row, "", {
      what: `${name}${hidden ?? ""} lists ${rows} fans of ${firstName} again, ${differ}`,
      effect: `Which of the two sheets counts cannot be told: ${firm ? "the fans of both are counted" : `${name} is left out, and all results are those of ${firstName}`}.`,
      mend: "Delete the sheet that does not count, or keep it in a workbook of its own.",
    });
  }
};

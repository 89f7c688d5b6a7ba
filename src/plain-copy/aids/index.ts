import type { Workbook } from "../../workbook";
import type { Places } from "../rewrite/places";
import { EditionTables } from "./edition-tables";
import { OpeningSets } from "./opening-sets";
import { Steps } from "./steps";

/** The sheets that a plain copy gets besides those of its workbook. */
export class Aids {
  readonly steps: Steps;
  readonly tables: EditionTables;
  readonly sets: OpeningSets;

  constructor(workbook: Workbook, places: Places) {
    let texts: readonly string[] | undefined;
    const free = (wanted: string) => {
      let name = wanted;
      for (let n = 2; workbook.sheet(name) !== undefined; n++) name = `${wanted} ${n}`;
      return name;
    };
    this.steps = new Steps(free("Steps"));
    this.tables = new EditionTables(free("Edition tables"), () => {
      texts ??= textsOf(workbook);
      return texts;
    });
    this.sets = new OpeningSets(free("Opening sets"), workbook, places);
  }

  get sheets(): readonly string[] {
    return [this.tables, this.sets, this.steps].map(({ sheet }) => sheet);
  }

  write(workbook: Workbook): void {
    const heading = workbook.addStyle({ bold: true, fill: "1F4E4A", color: "FFFFFF", wrap: true });
    const title = workbook.addStyle({ bold: true });
    this.tables.write(workbook, { title, heading });
    this.sets.write(workbook, { title, heading });
    this.steps.write(workbook, heading);
  }
}

/** A few words, as names of rooms and duties are; dates, notes and labels are not. */
const fewWords = /^[a-z][a-z ()/_-]{1,39}$/i;

/** Every different text of a few words in the cells of a workbook. */
function textsOf(workbook: Workbook): string[] {
  const texts = new Set<string>();
  for (const sheet of workbook.sheets)
    sheet.visit((_row, _col, value) => {
      if (typeof value === "string" && fewWords.test(value.trim())) texts.add(value.trim());
    });
  return [...texts];
}

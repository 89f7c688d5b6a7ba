import { panStatus, usualPan } from "../src/job";
import { readingRows } from "./readings";
import { pick, Rows } from "./rows";
import { aboveZero } from "./units";

const any = () => undefined;

/**
 * Whether the duct behind a register is tight, by pressure pan readings with the house at 50 Pa.
 * @customfunction PAN_STATUS
 * @helpurl https://localhost:3443/help/pan-status.html
 * @param {any[][]} readings Pan readings, Pa: a row a register, its repeats side by side; blanks are passed over.
 * @param {any[][]} [limit] Mean up to which the duct is tight, Pa; 1 where blank or left out.
 * @param {any[][]} [span] Most that readings of one register may differ, Pa; 0.5 where blank or left out.
 * @returns {any[][]} "tight", "leaks", or "repeat" where the readings differ too much.
 */
export function panStatusOf(readings: any[][], limit: any[][], span: any[][]): any[][] {
  const repeated = readingRows(readings, any);
  const rows = new Rows({ readings: repeated.cells, limit, span });
  rows.numbers("readings", { blank: "nothing yet" });
  const of = (name: "limit" | "span") => {
    const column = rows.has(name)
      ? rows.numbers(name, { blank: "allowed", refuse: aboveZero })
      : Number.NaN;
    // Zero never comes here: it is refused.
    return (i: number) => pick(column, i) || usualPan[name].value;
  };
  const [most, apart] = [of("limit"), of("span")];
  return rows.result((i) => panStatus(repeated.of(i), most(i), apart(i)) ?? "");
}

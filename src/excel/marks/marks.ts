import { type Finding, type Severity, severities } from "../../job";
import { HostError } from "../host-error";
import { type Book, run } from "../run";
import { addressesOf } from "./areas";
import { isOurRule, looks, ruleOf } from "./looks";

/** A sheet with the marks that are on it. */
interface MarkedSheet {
  readonly proxy: Excel.Worksheet;
  readonly marks: readonly Excel.ConditionalFormat[];
}

/**
 * Marks the cells of findings with conditional formats, one for each severity of a sheet, in place
 * of those marked before; a cell with several findings shows the worst. Returns how many cells are
 * marked. Protected or deleted sheets are passed over and told of at the end by a HostError, when
 * all others are marked.
 */
export function markFindings(findings: readonly Finding[]): Promise<number> {
  return run(async (book) => {
    const sheets = await findMarks(book);
    const bySheet = worstOfCells(findings);
    const passed = new Map<string, string>();
    let marked = 0;
    for (const { proxy, marks } of sheets) {
      const cells = bySheet.get(proxy.name.toLowerCase())?.cells;
      bySheet.delete(proxy.name.toLowerCase());
      if (proxy.protection.protected) {
        if (cells || marks.length > 0) passed.set(proxy.name, "protected");
        continue;
      }
      for (const mark of marks) mark.delete();
      if (!cells) continue;
      mark(proxy, cells);
      marked += cells.size;
    }
    await book.sync();
    for (const { name } of bySheet.values()) passed.set(name, "no longer there");
    if (passed.size > 0) throw notMarked(marked, passed);
    return marked;
  });
}

/** Takes all our marks off; a user's own conditional formats stay. */
export function clearMarks(): Promise<void> {
  return run(async (book) => {
    const sheets = await findMarks(book);
    const passed: string[] = [];
    for (const { proxy, marks } of sheets) {
      if (proxy.protection.protected && marks.length > 0) passed.push(proxy.name);
      else for (const mark of marks) mark.delete();
    }
    await book.sync();
    if (passed.length > 0)
      throw new HostError(
        "SheetProtected",
        `Marks are left on ${passed.join(", ")}, which is protected: unprotect it on the Review tab, then try again.`,
      );
  });
}

export function hasMarks(): Promise<boolean> {
  return run(async (book) => (await findMarks(book)).some(({ marks }) => marks.length > 0));
}

/** All marks of the workbook in three round trips. */
async function findMarks(book: Book): Promise<MarkedSheet[]> {
  book.sheets.load("items/name,items/protection/protected");
  await book.sync();
  const sheets = book.sheets.items.map((proxy) => {
    const formats = proxy.getRange().conditionalFormats;
    formats.load("items/id,items/type");
    return { proxy, formats };
  });
  await book.sync();
  const found = sheets.map(({ proxy, formats }) => {
    const custom = formats.items.filter(({ type }) => type === "Custom");
    for (const { custom: format } of custom) format.rule.load("formula");
    return { proxy, custom };
  });
  if (found.some(({ custom }) => custom.length > 0)) await book.sync();
  return found.map(({ proxy, custom }) => ({
    proxy,
    marks: custom.filter(({ custom: format }) => isOurRule(format.rule.formula)),
  }));
}

interface CellsOfSheet {
  readonly name: string;
  readonly cells: Map<string, Severity>;
}

/** By the sheet's name in lower case, the worst severity of each cell. */
function worstOfCells(findings: readonly Finding[]): Map<string, CellsOfSheet> {
  const bySheet = new Map<string, CellsOfSheet>();
  const marked = findings.flatMap(({ cells, severity }) =>
    cells.map(({ sheet, cell }) => ({ sheet, cell, severity })),
  );
  for (const { sheet, cell, severity } of marked) {
    if (sheet === "" || cell === "") continue;
    const key = sheet.toLowerCase();
    const own = bySheet.get(key) ?? { name: sheet, cells: new Map<string, Severity>() };
    bySheet.set(key, own);
    const before = own.cells.get(cell);
    if (before === undefined || severities.indexOf(severity) < severities.indexOf(before))
      own.cells.set(cell, severity);
  }
  return bySheet;
}

function mark(proxy: Excel.Worksheet, cells: ReadonlyMap<string, Severity>): void {
  for (const severity of severities) {
    const own = [...cells].filter(([, worst]) => worst === severity).map(([cell]) => cell);
    for (const address of addressesOf(own)) {
      const { custom } = proxy.getRanges(address).conditionalFormats.add("Custom");
      const { fill, color, bold, italic } = looks[severity];
      custom.rule.formula = ruleOf(severity);
      custom.format.fill.color = fill;
      custom.format.font.color = color;
      if (bold) custom.format.font.bold = true;
      if (italic) custom.format.font.italic = true;
    }
  }
}

function notMarked(marked: number, passed: ReadonlyMap<string, string>): HostError {
  const reasons = [...passed].map(([name, reason]) => `${name} is ${reason}`).join("; ");
  const advice = [...passed.values()].includes("protected")
    ? " To mark a protected sheet, unprotect it on the Review tab, then mark again."
    : "";
  const cells = marked === 1 ? "1 cell is marked" : `${marked} cells are marked`;
  return new HostError("NotAllMarked", `${cells}. Not marked: ${reasons}.${advice}`);
}

import { type Finding, type Severity, severities } from "../../job";
import { addressesOf } from "../areas";
import { HostError } from "../host-error";
import { type Book, run } from "../run";
import { isOurRule, isRuleOf, looks, ruleOf } from "./looks";

/** A sheet with the marks that are on it. */
interface MarkedSheet {
  readonly proxy: Excel.Worksheet;
  /** undefined where Excel itself cannot hand over the sheet's conditional formats. */
  readonly marks: readonly Mark[] | undefined;
}

/** A mark on the sheet: its rule, and the cells it covers without the sheet's name. */
interface Mark {
  readonly format: Excel.ConditionalFormat;
  readonly formula: string;
  readonly address: string;
}

/** A mark as it should be. */
interface WantedMark {
  readonly severity: Severity;
  readonly address: string;
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
        if (cells || marks?.length) passed.set(proxy.name, "protected");
        continue;
      }
      if (!marks) {
        if (cells) passed.set(proxy.name, "one whose conditional formats Excel cannot read");
        continue;
      }
      const wanted = cells ? wantedMarks(proxy.name, cells) : [];
      // A mark that stands as it should is left alone: each change is a step of the user's undo.
      for (const mark of marks) {
        const same = wanted.findIndex((each) => isSame(mark, each));
        if (same < 0) mark.format.delete();
        else wanted.splice(same, 1);
      }
      for (const each of wanted) add(proxy, each);
      marked += cells?.size ?? 0;
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
      if (proxy.protection.protected && marks?.length) passed.push(proxy.name);
      else for (const { format } of marks ?? []) format.delete();
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
  return run(async (book) => (await findMarks(book)).some(({ marks }) => marks?.length));
}

/**
 * All marks of the workbook in three round trips. A rule or sheet of the user's that Excel itself cannot hand
 * over must not keep the others from being found: then they are asked for one by one.
 */
async function findMarks(book: Book): Promise<MarkedSheet[]> {
  book.sheets.load("items/name,items/protection/protected");
  await book.sync();
  const sheets = book.sheets.items;
  const listed = await asked(book, sheets, (proxy) => {
    const formats = proxy.getRange().conditionalFormats;
    formats.load("items/id,items/type");
    return formats;
  });
  const custom = [...listed].flatMap(([proxy, { items }]) =>
    items.filter(({ type }) => type === "Custom").map(({ id }) => ({ proxy, id })),
  );
  const formats = await asked(book, custom, ({ proxy, id }) => {
    const format = proxy.getRange().conditionalFormats.getItem(id);
    format.custom.rule.load("formula");
    return format;
  });
  const ours = [...formats].filter(([, format]) => isOurRule(format.custom.rule.formula));
  const ranges = ours.map(([, format]) => format.getRanges());
  for (const range of ranges) range.load("address");
  if (ours.length > 0) await book.sync();
  const marks = ours.map(([{ proxy }, format], i) => {
    const address = (ranges[i]?.address ?? "").replace(/(^|,)('[^']*'|[^',!]*)!/g, "$1");
    return { proxy, mark: { format, formula: format.custom.rule.formula, address } };
  });
  return sheets.map((proxy) => ({
    proxy,
    marks: listed.has(proxy)
      ? marks.filter((each) => each.proxy === proxy).map(({ mark }) => mark)
      : undefined,
  }));
}

/**
 * What was loaded of each thing; those that Excel cannot hand over are left out. Every try asks anew: objects
 * of a request that failed are of no use any more.
 */
async function asked<T, L>(
  book: Book,
  things: readonly T[],
  ask: (thing: T) => L,
): Promise<Map<T, L>> {
  if (things.length === 0) return new Map();
  try {
    const loaded = new Map(things.map((thing) => [thing, ask(thing)]));
    await book.sync();
    return loaded;
  } catch (thrown) {
    if ((thrown as { code?: unknown }).code === "InvalidOperationInCellEditMode") throw thrown;
    if (things.length === 1) return new Map();
    const half = things.length >> 1;
    const first = await asked(book, things.slice(0, half), ask);
    return new Map([...first, ...(await asked(book, things.slice(half), ask))]);
  }
}

function isSame({ formula, address }: Mark, wanted: WantedMark): boolean {
  return isRuleOf(formula, wanted.severity) && address === wanted.address;
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

function wantedMarks(sheet: string, cells: ReadonlyMap<string, Severity>): WantedMark[] {
  return severities.flatMap((severity) => {
    const own = [...cells].filter(([, worst]) => worst === severity).map(([cell]) => cell);
    return addressesOf(own, sheet).map((address) => ({ severity, address }));
  });
}

function add(proxy: Excel.Worksheet, { severity, address }: WantedMark): void {
  const { custom } = proxy.getRanges(address).conditionalFormats.add("Custom");
  const { fill, color, bold, italic } = looks[severity];
  custom.rule.formula = ruleOf(severity);
  custom.format.fill.color = fill;
  custom.format.font.color = color;
  if (bold) custom.format.font.bold = true;
  if (italic) custom.format.font.italic = true;
}

function notMarked(marked: number, passed: ReadonlyMap<string, string>): HostError {
  const reasons = [...passed].map(([name, reason]) => `${name} is ${reason}`).join("; ");
  const advice = [...passed.values()].includes("protected")
    ? " To mark a protected sheet, unprotect it on the Review tab, then mark again."
    : "";
  const cells = marked === 1 ? "1 cell is marked" : `${marked} cells are marked`;
  return new HostError("NotAllMarked", `${cells}. Not marked: ${reasons}.${advice}`);
}

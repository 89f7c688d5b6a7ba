import { parseArgs } from "node:util";
import { InputError } from "../cells";
import { type CopyKind, copyKinds } from "./copy";
import type { PrintKind } from "./record";

export const formats = ["table", "json", "csv", "html"] as const;
export type Format = (typeof formats)[number];

export interface Options {
  readonly files: readonly string[];
  readonly format: Format;
  /** Where to write the report; undefined for standard output. */
  readonly out: string | undefined;
  /** Tell only how each file was read. */
  readonly fit: boolean;
  /** A firm's answers on how to read its workbooks. */
  readonly firm: string | undefined;
  /** Findings do not make the command fail. */
  readonly reportOnly: boolean;
  /** Sheets to print that a check also writes: each kind, and where to. */
  readonly prints: readonly { readonly kind: PrintKind; readonly file: string }[];
  /** The cell to trace instead of a check, as written: Fans!P3. */
  readonly trace: string | undefined;
  /** A copy to write instead of a check. */
  readonly copy: { readonly kind: CopyKind; readonly file: string } | undefined;
  /** A file of this name may be replaced. */
  readonly replace: boolean;
  /** A field copy whose readings go into a new copy of the job, and whether they come first. */
  readonly bring:
    | { readonly copy: string; readonly into: string; readonly preferCopy: boolean }
    | undefined;
  /** An edition: tell what it would change instead. */
  readonly under: string | undefined;
  /** Tell the order list of an estimate instead. */
  readonly order: boolean;
  /** A new estimate to make of lists of lots, and the edition it goes by. */
  readonly estimate: { readonly into: string; readonly edition: string | undefined } | undefined;
  /** Tell what changed from the first file to the second instead. */
  readonly compare: boolean;
}

export const usage = `Checks job workbooks of flow-box readings.

  npm run check -- [options] FILE…

  --json          print the findings as JSON
  --csv           print the findings as CSV
  --html          print a self-contained page
  --out FILE      write the report to FILE instead of printing it
  --record FILE   write records to print and sign, and nothing else, into a new workbook FILE
  --papers FILE   write the card of each box and a form for the readings, to take along
  --replace       the file to write may be there already; without it nothing is written over
  --fit           tell only how each file was read: which cells were taken for what, and why
  --firm FILE     read each file with the answers that a firm saved from the pane's Fit screen
  --report-only   exit 0 also when something was found
  --compare       tell instead what changed from the first of two files to the second
  --plain FILE    write instead a copy with native formulas in place of ours to FILE
  --values FILE   write instead a copy with values only to FILE
  --field FILE    write instead a small workbook of native formulas to take to the fans on a phone
  --bring COPY    place instead what was typed in such a copy into the job, by dwelling and fan;
                  --into FILE names the new copy of the job, and where the job holds something
                  else already, --prefer-copy takes what the copy says
  --under EDITION tell instead what another edition would change: rates, and verdicts that turn
                  (with --json as JSON)
  --estimate FILE make instead a new job FILE of a list of lots (with a catalogue of fans and a list of
                  openings as further files), and tell its order list; --edition ID names the edition
  --order         tell instead the order list of an estimate: fans, ducts, openings, hours, totals;
                  with --under another edition stands beside it (with --json, --csv)
  --trace CELL    tell instead how a cell, such as Fans!P3, comes to its value (with --json as JSON)

Exit status: 0 nothing found or changed; 1 a fault of a sheet, or something changed; 2 a file or
cell could not be read, or a file not be written; 3 no fault, but results that ask for something (a fan short, to be read
again or not measured); 4 no fans in any of the files.
`;

/** A call that asks for nothing that can be done; the message says what to write instead. */
export class UsageError extends InputError {}

/** What was asked for; undefined where only help was. Throws a UsageError. */
export function readOptions(args: readonly string[]): Options | undefined {
  const { values, positionals: files } = parse(args);
  if (values.help) return undefined;
  const chosen = formats.filter((format) => format !== "table" && values[format]);
  const [format = "table"] = chosen;
  const isText = format === "table" || format === "json";
  const given = <K extends "record" | "papers" | CopyKind>(kinds: readonly K[]) =>
    kinds.flatMap((kind) => {
      const file = values[kind];
      return file === undefined ? [] : [{ kind, file }];
    });
  const prints = given(["record", "papers"]);
  const copies = given(copyKinds);
  const [copy] = copies;
  const { trace, compare, under, estimate, order, edition, into } = values;
  const isMade = estimate !== undefined;
  const isTold = trace !== undefined || compare;
  const isTable = order || isMade;
  const isBusy = files.length > 1 || isTold;
  const isNoBook = (file: string | undefined) => !file?.toLowerCase().endsWith(".xlsx");
  const written = [...prints, ...copies];
  const noBook = written.find(({ file }) => isNoBook(file));
  const faults: readonly (readonly [unknown, string])[] = [
    [chosen.length > 1, `choose one of ${listed(chosen)}`],
    [
      files.length === 0 && written.length > 0,
      `--${written[0]?.kind} wants the name of the file to write, then the workbook to read: ${written[0]?.file} was taken for the first, and no workbook is left`,
    ],
    [files.length === 0, "name at least one workbook (.xlsx, .csv, .ods, .xls)"],
    [trace !== undefined && files.length > 1, "--trace looks at one cell: name one file"],
    [trace !== undefined && !isText, `--trace prints text or JSON, not ${format}`],
    [
      under !== undefined && ((files.length > 1 && !isMade) || isTold),
      "--under looks at one file, and does nothing else",
    ],
    [under !== undefined && !isTable && !isText, `--under prints text or JSON, not ${format}`],
    [
      compare && (files.length !== 2 || trace !== undefined),
      "--compare takes two files, the earlier one first",
    ],
    [compare && values.html, "--compare prints no HTML"],
    [
      prints.length > 0 && isTold,
      `--${prints[0]?.kind} goes with a check, not with --trace or --compare`,
    ],
    [copy && isBusy, `--${copy?.kind} copies one file, and does nothing else`],
    [copies.length > 1, `choose one of ${listed(copies.map(({ kind }) => kind))}`],
    [
      isMade && isNoBook(estimate),
      "--estimate writes a workbook: give it a name that ends in .xlsx",
    ],
    [edition !== undefined && !isMade, "--edition goes with --estimate"],
    [order && files.length > 1, "--order looks at one file, and does nothing else"],
    [isTable && values.html, "an order list is printed as text, JSON or CSV"],
    [
      values.bring === undefined && (into !== undefined || values["prefer-copy"]),
      "--into and --prefer-copy go with --bring",
    ],
    [
      values.bring !== undefined && isNoBook(into),
      "--bring writes a new copy of the job: name it with --into FILE.xlsx",
    ],
    [
      values.bring !== undefined && (copy || isBusy),
      "--bring places readings into one job, and does nothing else",
    ],
    [values.out?.trim() === "", "--out wants the name of a file"],
    [noBook, `--${noBook?.kind} writes a workbook: give it a name that ends in .xlsx`],
  ];
  const fault = faults.find(([isSo]) => isSo);
  if (fault) throw new UsageError(fault[1]);
  return {
    copy,
    bring:
      values.bring === undefined
        ? undefined
        : { copy: values.bring, into: into ?? "", preferCopy: values["prefer-copy"] === true },
    files,
    format,
    out: values.out,
    fit: values.fit === true,
    firm: values.firm,
    reportOnly: values["report-only"] === true || values.fit === true,
    prints,
    trace,
    under,
    replace: values.replace === true,
    compare: compare === true,
    order: order === true,
    estimate: isMade ? { into: estimate, edition } : undefined,
  };
}

const listed = (options: readonly string[]) => options.map((name) => `--${name}`).join(" and ");

const text = { type: "string" } as const;
const flag = { type: "boolean" } as const;
const known = {
  json: flag,
  csv: flag,
  html: flag,
  fit: flag,
  order: flag,
  compare: flag,
  replace: flag,
  "report-only": flag,
  "prefer-copy": flag,
  help: { ...flag, short: "h" },
  out: text,
  firm: text,
  record: text,
  papers: text,
  plain: text,
  values: text,
  field: text,
  bring: text,
  into: text,
  trace: text,
  under: text,
  estimate: text,
  edition: text,
};

function parse(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options: known });
  } catch (error) {
    throw new UsageError((error as Error).message);
  }
}

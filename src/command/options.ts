import { parseArgs } from "node:util";
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

/** What was asked for; a text is what to tell the user instead. */
export function readOptions(args: readonly string[]): Options | { readonly complaint: string } {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    return { complaint: (error as Error).message };
  }
  const { values, positionals } = parsed;
  if (values.help) return { complaint: "" };
  const chosen = formats.filter((format) => format !== "table" && values[format]);
  if (chosen.length > 1)
    return { complaint: `choose one of ${chosen.map((format) => `--${format}`).join(" and ")}` };
  if (positionals.length === 0)
    return { complaint: "name at least one workbook (.xlsx, .csv, .ods, .xls)" };
  if (values.trace !== undefined && positionals.length > 1)
    return { complaint: "--trace looks at one cell: name one file" };
  if (values.trace !== undefined && (chosen[0] ?? "json") !== "json")
    return { complaint: `--trace prints text or JSON, not ${chosen[0]}` };
  const isAlone = values.estimate === undefined;
  if (
    values.under !== undefined &&
    ((positionals.length > 1 && isAlone) || values.compare || values.trace)
  )
    return { complaint: "--under looks at one file, and does nothing else" };
  if (values.under !== undefined && !values.order && isAlone && (chosen[0] ?? "json") !== "json")
    return { complaint: `--under prints text or JSON, not ${chosen[0]}` };
  if (values.compare && (positionals.length !== 2 || values.trace !== undefined))
    return { complaint: "--compare takes two files, the earlier one first" };
  if (values.compare && values.html) return { complaint: "--compare prints no HTML" };
  const prints = (["record", "papers"] as const).flatMap((kind) => {
    const file = values[kind];
    return file === undefined ? [] : [{ kind, file }];
  });
  for (const { kind, file } of prints) {
    if (values.trace !== undefined || values.compare)
      return { complaint: `--${kind} goes with a check, not with --trace or --compare` };
    if (!file.toLowerCase().endsWith(".xlsx"))
      return { complaint: `--${kind} writes a workbook: give it a name that ends in .xlsx` };
  }
  const copies = copyKinds.flatMap((kind) => {
    const file = values[kind];
    return file === undefined ? [] : [{ kind, file }];
  });
  const [copy] = copies;
  if (
    copy !== undefined &&
    (positionals.length > 1 || values.compare || values.trace !== undefined)
  )
    return { complaint: `--${copy.kind} copies one file, and does nothing else` };
  if (copies.length > 1)
    return { complaint: `choose one of ${copies.map(({ kind }) => `--${kind}`).join(" and ")}` };
  const planned = estimateComplaint(values, positionals.length);
  if (planned !== "") return { complaint: planned };
  const bring = bringAsked(values);
  if (bring && "complaint" in bring) return bring;
  if (bring && (positionals.length > 1 || copy || values.compare || values.trace !== undefined))
    return { complaint: "--bring places readings into one job, and does nothing else" };
  if (values.out?.trim() === "") return { complaint: "--out wants the name of a file" };
  if (copy !== undefined && !copy.file.toLowerCase().endsWith(".xlsx"))
    return { complaint: `--${copy.kind} writes a workbook: give it a name that ends in .xlsx` };
  return {
    copy,
    bring,
    files: positionals,
    format: chosen[0] ?? "table",
    out: values.out,
    fit: values.fit === true,
    firm: values.firm,
    reportOnly: values["report-only"] === true || values.fit === true,
    prints,
    trace: values.trace,
    under: values.under,
    replace: values.replace === true,
    compare: values.compare === true,
    order: values.order === true,
    estimate:
      values.estimate === undefined
        ? undefined
        : { into: values.estimate, edition: values.edition },
  };
}

function estimateComplaint(
  { estimate, edition, order, html }: ReturnType<typeof parse>["values"],
  files: number,
): string {
  if (estimate !== undefined && !estimate.toLowerCase().endsWith(".xlsx"))
    return "--estimate writes a workbook: give it a name that ends in .xlsx";
  if (edition !== undefined && estimate === undefined) return "--edition goes with --estimate";
  if (order && files > 1) return "--order looks at one file, and does nothing else";
  return (order || estimate !== undefined) && html
    ? "an order list is printed as text, JSON or CSV"
    : "";
}

function bringAsked(
  values: ReturnType<typeof parse>["values"],
): Options["bring"] | { readonly complaint: string } {
  const { bring: copy, into } = values;
  const preferCopy = values["prefer-copy"] === true;
  if (copy === undefined)
    return into === undefined && !preferCopy
      ? undefined
      : { complaint: "--into and --prefer-copy go with --bring" };
  if (into === undefined || !into.toLowerCase().endsWith(".xlsx"))
    return { complaint: "--bring writes a new copy of the job: name it with --into FILE.xlsx" };
  return { copy, into, preferCopy };
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      json: { type: "boolean" },
      csv: { type: "boolean" },
      html: { type: "boolean" },
      out: { type: "string" },
      fit: { type: "boolean" },
      firm: { type: "string" },
      "report-only": { type: "boolean" },
      record: { type: "string" },
      papers: { type: "string" },
      plain: { type: "string" },
      values: { type: "string" },
      field: { type: "string" },
      bring: { type: "string" },
      into: { type: "string" },
      "prefer-copy": { type: "boolean" },
      trace: { type: "string" },
      under: { type: "string" },
      order: { type: "boolean" },
      estimate: { type: "string" },
      edition: { type: "string" },
      replace: { type: "boolean" },
      compare: { type: "boolean" },
      help: { type: "boolean", short: "h" },
    },
  });
}

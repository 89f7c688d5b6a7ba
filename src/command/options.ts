import { parseArgs } from "node:util";

export const formats = ["table", "json", "csv", "html"] as const;
export type Format = (typeof formats)[number];

export interface Options {
  readonly files: readonly string[];
  readonly format: Format;
  /** Where to write the report; undefined for standard output. */
  readonly out: string | undefined;
  /** Findings do not make the command fail. */
  readonly reportOnly: boolean;
}

export const usage = `Checks job workbooks of flow-box readings.

  npm run check -- [options] FILE…

  --json          print the findings as JSON
  --csv           print the findings as CSV
  --html          print a self-contained page
  --out FILE      write the report to FILE instead of printing it
  --report-only   exit 0 also when something was found

Exit status: 0 nothing found, 1 something found, 2 a file could not be read.
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
  if (positionals.length === 0) return { complaint: "name at least one .xlsx file" };
  return {
    files: positionals,
    format: chosen[0] ?? "table",
    out: values.out,
    reportOnly: values["report-only"] === true,
  };
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
      "report-only": { type: "boolean" },
      help: { type: "boolean", short: "h" },
    },
  });
}

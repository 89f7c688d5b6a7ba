import { writeFile } from "node:fs/promises";
import { isOpen } from "../job";
import { checkFile, type FileCheck } from "./check-file";
import { compareFiles } from "./compare";
import { writeCopy } from "./copy";
import { readOptions, usage } from "./options";
import { writePrint } from "./record";
import { csvReport } from "./reports/csv";
import { htmlReport } from "./reports/html";
import { jsonReport } from "./reports/json";
import { tableReport } from "./reports/table";
import { traceCell } from "./trace";

/** Where a run prints, and what it needs to know of its surroundings. */
export interface Surroundings {
  readonly out: (text: string) => void;
  /** Progress and complaints. */
  readonly note: (text: string) => void;
  readonly width: number;
  readonly isTerminal: boolean;
  readonly colour: boolean;
  readonly today: Date;
}

/** Runs the command and returns its exit status: 0 clean, 1 findings, 2 could not read. */
export async function run(args: readonly string[], around: Surroundings): Promise<number> {
  const options = readOptions(args);
  if ("complaint" in options) {
    if (options.complaint === "") around.out(usage);
    else around.note(`${options.complaint}\n\n${usage}`);
    return options.complaint === "" ? 0 : 2;
  }
  if (options.trace !== undefined) {
    const traced = await traceCell(options.trace, options.files[0] ?? "", options.format);
    if ("complaint" in traced) around.note(`${traced.complaint}\n`);
    return "report" in traced ? print(traced.report, options.out, around) : 2;
  }
  if (options.copy) {
    const { kind, file } = options.copy;
    const copied = await writeCopy(kind, options.files[0] ?? "", file);
    if ("complaint" in copied) around.note(`${copied.complaint}\n`);
    else around.out(`${copied.said}\n`);
    return "complaint" in copied ? 2 : 0;
  }
  if (options.compare) {
    const [before = "", after = ""] = options.files;
    const compared = await compareFiles([before, after], options.format, around);
    if ("complaint" in compared) around.note(`${compared.complaint}\n`);
    if (!("report" in compared)) return 2;
    if ((await print(compared.report, options.out, around)) !== 0) return 2;
    return compared.changes > 0 && !options.reportOnly ? 1 : 0;
  }
  const results: FileCheck[] = [];
  for (const [i, file] of options.files.entries()) {
    if (around.isTerminal && options.files.length > 1)
      around.note(`\r\u001b[K${i + 1} of ${options.files.length}  ${file}`);
    const result = await checkFile(file, around.today);
    if (around.isTerminal && options.files.length > 1) around.note("\r\u001b[K");
    if ("unreadable" in result) around.note(`${file}: ${result.unreadable}\n`);
    results.push(result);
  }
  const report = {
    table: () => tableReport(results, around),
    json: () => jsonReport(results),
    csv: () => csvReport(results),
    html: () => htmlReport(results, around.today),
  }[options.format]();
  if ((await print(report, options.out, around)) !== 0) return 2;
  const checks = results.flatMap((result) => ("check" in result ? [result.check] : []));
  for (const { kind, file } of options.prints) {
    const complaints = await writePrint(kind, file, checks);
    for (const complaint of complaints) around.note(`${complaint}\n`);
    if (complaints.some((complaint) => complaint.startsWith(`${file}: `))) return 2;
  }
  if (results.some((result) => "unreadable" in result)) return 2;
  const found = results.some((result) => "check" in result && result.check.findings.some(isOpen));
  return found && !options.reportOnly ? 1 : 0;
}

/** Prints a report, or writes it to a file: 0, or 2 where that cannot be. */
async function print(report: string, out: string | undefined, around: Surroundings) {
  if (out === undefined) {
    around.out(report);
    return 0;
  }
  try {
    await writeFile(out, report);
    return 0;
  } catch (error) {
    around.note(`${out}: cannot be written (${(error as NodeJS.ErrnoException).code})\n`);
    return 2;
  }
}

import { writeFile } from "node:fs/promises";
import { checkFile, type FileCheck } from "./check-file";
import { readOptions, usage } from "./options";
import { csvReport } from "./reports/csv";
import { htmlReport } from "./reports/html";
import { jsonReport } from "./reports/json";
import { tableReport } from "./reports/table";

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
  if (options.out === undefined) around.out(report);
  else
    try {
      await writeFile(options.out, report);
    } catch (error) {
      around.note(`${options.out}: cannot be written (${(error as NodeJS.ErrnoException).code})\n`);
      return 2;
    }
  if (results.some((result) => "unreadable" in result)) return 2;
  const found = results.some((result) => "check" in result && result.check.findings.length > 0);
  return found && !options.reportOnly ? 1 : 0;
}

import { InputError, visible } from "../cells";
import { isFault, isOpen, readFirmFile } from "../job";
import { bringFile } from "./bring";
import { checkFile, type FileCheck, type Look, named } from "./check-file";
import { compareFiles } from "./compare";
import { writeCopy } from "./copy";
import { makeEstimate } from "./estimate";
import { type Options, readOptions, UsageError, usage } from "./options";
import { tellOrder } from "./order";
import {
  findPlace,
  type Guard,
  isSameTarget,
  SafeFile,
  WriteError,
  writeFileSafely,
} from "./output";
import { readFileBytes } from "./read-file";
import { Print } from "./record";
import { csvReport } from "./reports/csv";
import { fitReport } from "./reports/fit";
import { htmlReport } from "./reports/html";
import { jsonReport } from "./reports/json";
import { tableReport } from "./reports/table";
import { traceCell } from "./trace";
import { tellUnder } from "./under";

/** Where a run prints, and what it needs to know of its surroundings. */
interface Surroundings {
  /** Rejects with a WriteError where nothing more can be printed. */
  readonly out: (text: string) => void | Promise<void>;
  /** Progress and complaints. */
  readonly note: (text: string) => void;
  readonly width: number;
  readonly isTerminal: boolean;
  readonly colour: boolean;
  readonly today: Date;
}

/** Runs the command and returns its exit status, which `usage` tells. */
export async function run(args: readonly string[], around: Surroundings): Promise<number> {
  try {
    const options = readOptions(args);
    if (options) return await act(options, around);
    await around.out(usage);
    return 0;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    complain(error.message, around);
    if (error instanceof UsageError) around.note(`\n${usage}`);
    return 2;
  }
}

async function act(options: Options, around: Surroundings): Promise<number> {
  const { copy, bring, under, trace, estimate, format } = options;
  const further = [bring?.copy, options.firm].filter((file) => file !== undefined);
  const guard = { sources: [...options.files, ...further], replace: options.replace };
  await refuseTargets(options, guard);
  const [first = "", second = ""] = options.files;
  const look = { ...around, ...(await readFirm(options.firm)) };
  const print = (report: string) => printing(options, guard, around, (write) => write(report));
  const say = (lines: readonly string[]) => around.out(`${lines.map(visible).join("\n  ")}\n`);
  if (trace !== undefined) await print(await traceCell(trace, first, format, look));
  else if (estimate || options.order) {
    if (estimate) {
      const { bytes, said } = await makeEstimate(options.files, estimate.edition, look);
      await writeFileSafely(estimate.into, bytes, guard);
      for (const line of said) complain(line, around);
    }
    await print(await tellOrder(estimate?.into ?? first, under, format, look));
  } else if (under !== undefined)
    await print(await tellUnder(under, first, format === "json", look));
  else if (copy) await say(await writeCopy(copy.kind, first, copy.file, guard));
  else if (bring) {
    const { said, open } = await bringFile(first, bring, guard);
    await say(said);
    return open > 0 && !options.reportOnly ? 1 : 0;
  } else if (options.compare) {
    const { report, changes } = await compareFiles([first, second], format, look);
    await print(report);
    return changes > 0 && !options.reportOnly ? 1 : 0;
  } else return checkAll(options, guard, look);
  return 0;
}

/** Checks file by file, and holds no more than one at a time. */
async function checkAll(
  options: Options,
  guard: Guard,
  around: Surroundings & Look,
): Promise<number> {
  const { files } = options;
  const report = {
    table: () => (options.fit ? fitReport() : tableReport(around)),
    json: () => jsonReport(),
    csv: () => csvReport(),
    html: () => htmlReport(around.today),
  }[options.format]();
  const prints = options.prints.map(({ kind, file }) => new Print(kind, file, guard));
  const tally = { faults: 0, results: 0, fans: 0, unread: 0 };
  await printing(options, guard, around, async (write) => {
    await write(report.head);
    for (const [i, file] of files.entries()) {
      const result = await checkNext(file, `${i + 1} of ${files.length}`, files.length, around);
      if ("unreadable" in result) tally.unread++;
      else {
        const open = result.check.findings.filter(isOpen);
        tally.faults += open.filter(isFault).length;
        tally.results += open.length;
        if (result.check.job.fans) tally.fans++;
      }
      if ("check" in result)
        for (const problem of prints.flatMap((each) => each.add(result.check)))
          complain(problem, around);
      await write(report.file(result));
    }
    await write(report.end());
  });
  for (const print of prints) await print.save();
  if (tally.unread > 0) return 2;
  if (options.reportOnly) return 0;
  if (tally.faults > 0) return 1;
  if (tally.results > 0) return 3;
  return tally.fans === 0 ? 4 : 0;
}

async function checkNext(file: string, place: string, files: number, around: Surroundings & Look) {
  const shows = around.isTerminal && files > 1;
  if (shows) around.note(`\r\u001b[K${place}  ${visible(file)}`);
  const result: FileCheck = await checkFile(file, around);
  if (shows) around.note("\r\u001b[K");
  if ("unreadable" in result) complain(`${file}: ${result.unreadable}`, around);
  return result;
}

/** The answers of a firm's file. */
async function readFirm(file: string | undefined): Promise<Pick<Look, "answers">> {
  if (file === undefined) return {};
  return named(file, async () => ({
    answers: readFirmFile(new TextDecoder().decode(await readFileBytes(file))),
  }));
}

/** Says before any work what could not be written after it. */
async function refuseTargets(
  { out, prints, copy, bring, estimate }: Options,
  guard: Guard,
): Promise<void> {
  const targets = [
    out,
    ...prints.map(({ file }) => file),
    copy?.file,
    bring?.into,
    estimate?.into,
  ].filter((target) => target !== undefined);
  for (const [i, target] of targets.entries()) {
    await findPlace(target, guard);
    for (const other of targets.slice(0, i))
      if (await isSameTarget(target, other))
        throw new WriteError(`${target}: is named for two reports: give each its own name`);
  }
}

/** Prints, or writes a file that is there when all of it is. */
async function printing(
  { out }: Options,
  guard: Guard,
  around: Surroundings,
  action: (write: (text: string) => Promise<void>) => Promise<void>,
): Promise<void> {
  if (out === undefined)
    return action(async (text) => {
      if (text !== "") await around.out(text);
    });
  const file = await SafeFile.begin(out, guard);
  try {
    await action((text) => file.write(text));
  } catch (error) {
    await file.abandon();
    throw error;
  }
  await file.commit();
}

function complain(line: string, around: Surroundings): void {
  around.note(`${visible(line)}\n`);
}

import { InputError, visible } from "../cells";
import { isFault, isOpen, readFirmFile } from "../job";
import { bringFile } from "./bring";
import { checkFile, type FileCheck, type Look } from "./check-file";
import { compareFiles } from "./compare";
import { writeCopy } from "./copy";
import { makeEstimate } from "./estimate";
import { type Options, readOptions, usage } from "./options";
import { tellOrder } from "./order";
import {
  findPlace,
  type Guard,
  isSameTarget,
  SafeFile,
  WriteError,
  writeFileSafely,
} from "./output";
import { FileError, readFileBytes } from "./read-file";
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
    if (!("complaint" in options)) return await act(options, around);
    if (options.complaint === "") await around.out(usage);
    else around.note(`${visible(options.complaint)}\n\n${usage}`);
    return options.complaint === "" ? 0 : 2;
  } catch (error) {
    if (!(error instanceof WriteError)) throw error;
    return complain(error.message, around);
  }
}

async function act(options: Options, around: Surroundings): Promise<number> {
  const further = [options.bring?.copy, options.firm].filter((file) => file !== undefined);
  const sources = [...options.files, ...further];
  const guard = { sources, replace: options.replace };
  await refuseTargets(options, guard);
  const [first = "", second = ""] = options.files;
  const firm = options.firm === undefined ? {} : await readFirm(options.firm);
  if ("complaint" in firm) return complain(firm.complaint, around);
  const look = { ...around, ...firm };
  if (options.trace !== undefined) {
    const traced = await traceCell(options.trace, first, options.format, look);
    if ("complaint" in traced) return complain(traced.complaint, around);
    await print(traced.report, options, guard, around);
    return 0;
  }
  if (options.estimate) {
    const { into, edition } = options.estimate;
    const made = await makeEstimate(options.files, edition, look);
    if ("complaint" in made) return complain(made.complaint, around);
    await writeFileSafely(into, made.bytes, guard);
    for (const line of made.said) around.note(`${visible(line)}\n`);
  }
  if (options.order || options.estimate) {
    const file = options.estimate?.into ?? first;
    const told = await tellOrder(file, options.under, options.format, look);
    if ("complaint" in told) return complain(told.complaint, around);
    await print(told.report, options, guard, around);
    return 0;
  }
  if (options.under !== undefined) {
    const { under, format } = options;
    const told = await tellUnder(under, first, format === "json", look);
    if ("complaint" in told) return complain(told.complaint, around);
    await print(told.report, options, guard, around);
    return 0;
  }
  if (options.copy) {
    const copied = await writeCopy(options.copy.kind, first, options.copy.file, guard);
    if ("complaint" in copied) return complain(copied.complaint, around);
    await around.out(`${copied.said.map(visible).join("\n  ")}\n`);
    return 0;
  }
  if (options.bring) {
    const brought = await bringFile(first, options.bring, guard);
    if ("complaint" in brought) return complain(brought.complaint, around);
    await around.out(`${brought.said.map(visible).join("\n  ")}\n`);
    return brought.open > 0 && !options.reportOnly ? 1 : 0;
  }
  if (options.compare) {
    const compared = await compareFiles([first, second], options.format, look);
    if ("complaint" in compared) return complain(compared.complaint, around);
    await print(compared.report, options, guard, around);
    return compared.changes > 0 && !options.reportOnly ? 1 : 0;
  }
  return checkAll(options, guard, look);
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

/** The answers of a firm's file, or one line that says why there are none. */
async function readFirm(file: string): Promise<Pick<Look, "answers"> | { complaint: string }> {
  try {
    return { answers: readFirmFile(new TextDecoder().decode(await readFileBytes(file))) };
  } catch (error) {
    if (!(error instanceof FileError || error instanceof InputError)) throw error;
    return { complaint: `${file}: ${error.message}` };
  }
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

async function print(report: string, options: Options, guard: Guard, around: Surroundings) {
  await printing(options, guard, around, (write) => write(report));
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

function complain(line: string, around: Surroundings): 2 {
  around.note(`${visible(line)}\n`);
  return 2;
}

import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { jobWorkbook } from "../../src/new-job";
import { Workbook } from "../../src/workbook";
import { dice } from "../../workbooks/dice";
import { demoRows } from "../../workbooks/job-rows";
import { median } from "./median";

const rows = 20_000;
const runs = 3;
const root = join(import.meta.dirname, "../..");

/** The check of a large workbook against LibreOffice reading the same file, as whole processes. */
export async function benchWorkbook(): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-bench-"));
  try {
    const file = join(folder, "large.xlsx");
    writeFileSync(file, largeJob().save());
    // The bundle is made once, as on a user's machine.
    await timed(process.execPath, [join(root, "src/command/launch.mjs"), "--help"]);
    const ours: Run[] = [];
    const theirs: Run[] = [];
    for (let run = 0; run < runs; run++) {
      ours.push(await timed(process.execPath, ourCheck(file, folder)));
      const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
      theirs.push(
        await timed("soffice", [
          profile,
          "--headless",
          "--convert-to",
          "csv",
          "--outdir",
          folder,
          file,
        ]),
      );
    }
    const [a, b] = [ours, theirs].map((list) => median(list.map((run) => run.seconds))) as [
      number,
      number,
    ];
    const peak = Math.max(...ours.map((run) => run.peakMegabytes));
    const huge = join(folder, "huge.xlsx");
    writeFileSync(huge, largeJob(5 * rows).save());
    const five = await timed(process.execPath, ourCheck(huge, folder));
    const firm = join(folder, "firm.xlsx");
    writeFileSync(firm, firmBook().save());
    const unknown: Run[] = [];
    for (let run = 0; run < runs; run++)
      unknown.push(await timed(process.execPath, ourCheck(firm, folder)));
    const c = median(unknown.map((run) => run.seconds));
    return [
      `check of ${rows} fan rows in a firm's own layout: ${c.toFixed(2)} s, ${(c / a).toFixed(2)} times ours (goal 1.5)`,
      `check of ${rows} fan rows: ${a.toFixed(2)} s, LibreOffice to csv ${b.toFixed(2)} s ` +
        `(${(b / a).toFixed(1)} times as fast, goal 3); peak memory ${peak.toFixed(0)} MB`,
      `check of ${5 * rows} fan rows: ${(five.seconds / a).toFixed(1)} times as long, peak memory ${five.peakMegabytes.toFixed(0)} MB (goal below 500)`,
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A firm's own list: other words and order, flows and verdicts by formulas. */
function firmBook(): Workbook {
  const workbook = Workbook.create();
  const heads = [
    "House",
    "Where",
    "Switch",
    "Cut-out sq in",
    "Draw Pa",
    "Air cfm",
    "Needs cfm",
    "OK?",
  ];
  const body = Array.from({ length: rows }, (_, i) => {
    const [room, area, needs] =
      i % 2 ? (["bath", 24, 50] as const) : (["kitchen", 48, 100] as const);
    const pressure = 2 + ((i * 37) % 53) / 10;
    const flow = 1.07 * area * Math.sqrt(pressure);
    const line = i + 2;
    return [
      ...[`Plot ${1 + (i >> 2)}`, room, i % 4 ? "pull cord" : "always on", area, pressure].map(
        (value) => ({ value }),
      ),
      { formula: `1.07*D${line}*SQRT(E${line})`, value: flow },
      { value: needs },
      { formula: `IF(F${line}>=G${line},"yes","no")`, value: flow >= needs ? "yes" : "no" },
    ];
  });
  workbook.addSheet("Results", { rows: [heads.map((value) => ({ value })), ...body] });
  return workbook;
}

function ourCheck(file: string, folder: string): string[] {
  const command = join(root, "src/command/launch.mjs");
  const out = join(folder, "findings.csv");
  return [command, "--report-only", "--replace", "--csv", "--out", out, file];
}

/** The demo job's sound rows, repeated with dwellings and readings of their own. */
function largeJob(fans = rows) {
  const demo = demoRows();
  const copies = Math.ceil(fans / demo.fans.length);
  const random = dice(1);
  const measured = (row: Record<string, unknown>) => {
    const share = 0.9 + 0.2 * random();
    const keys = ["reading1", "reading2", "reading3"].filter((key) => typeof row[key] === "number");
    return keys.map((key) => [key, Math.round(10 * share * (row[key] as number)) / 10]);
  };
  const named = (row: Record<string, unknown>, copy: number) => ({
    ...row,
    dwelling: `${String(row.dwelling)}-${copy + 1}`,
  });
  return jobWorkbook({
    ...demo,
    dwellings: range(copies).flatMap((copy) => demo.dwellings.map((row) => named(row, copy))),
    fans: range(copies)
      .flatMap((copy) =>
        demo.fans.map((row) => ({ ...named(row, copy), ...Object.fromEntries(measured(row)) })),
      )
      .slice(0, fans),
  } as typeof demo);
}

const range = (count: number) => Array.from({ length: count }, (_, i) => i);

interface Run {
  readonly seconds: number;
  readonly peakMegabytes: number;
}

/** Runs a command to its end, watching the kernel's own peak figure of its memory. */
function timed(command: string, args: readonly string[]): Promise<Run> {
  return new Promise((resolve, reject) => {
    const start = performance.now();
    const child = spawn(command, args, { stdio: "ignore", cwd: root });
    let peak = 0;
    const watch = setInterval(() => {
      peak = Math.max(peak, peakOf(child.pid));
    }, 20);
    child.on("error", reject);
    child.on("exit", (code) => {
      clearInterval(watch);
      if (code !== 0) reject(new Error(`${command} ended with ${code}`));
      else resolve({ seconds: (performance.now() - start) / 1000, peakMegabytes: peak });
    });
  });
}

function peakOf(pid: number | undefined): number {
  try {
    const status = readFileSync(`/proc/${pid}/status`, "utf8");
    return Number(/VmHWM:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024;
  } catch {
    // The process has just ended, or the system keeps no such figure.
    return 0;
  }
}

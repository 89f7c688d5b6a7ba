import { readFileSync } from "node:fs";
import { afterEach, describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import { cellName, serialOf } from "../../src/cells";
import { toJobFile } from "../../src/command/job-file";
import type { WorkbookHost } from "../../src/desk/host";
import { readWorkbook } from "../../src/excel";
import { checkJob, type JobCheck, type JobFile } from "../../src/job";
import { excelHost } from "../../src/pane/session/excel-host";
import { loadAudit, readable } from "../../src/pane/session/load-audit";
import { Session } from "../../src/pane/session/session";
import { Workbook } from "../../src/workbook";
import { hostOf, settled } from "../desk-host/desk";
import { HandClock } from "../pane/fake-host";
import { whole } from "../setup/whole";
import { Random } from "./random";

// What the pane says after edits is what a reading of the whole workbook says, and the command.
const edits = whole ? 2_000 : 200;
const jobs = ["quarry-yard", "alder-terrace", "mill-lane", "blank-job"];
const folder = new URL("../../workbooks/", import.meta.url);

const linesOf = ({ findings }: JobCheck) =>
  findings
    .map(({ sheet, cell, kind, what, effect, mend, cells }) =>
      [`${sheet}!${cell}`, kind, what, effect, mend, cells.map(({ cell }) => cell).join()].join(
        " ",
      ),
    )
    .sort();

const wholeCheck = (file: JobFile) => checkJob(file, serialOf(new Date()), auditFormulas);

/** The findings that only one of two checks has. */
function differences(pane: readonly string[], all: readonly string[]): string[] {
  return [
    ...pane.filter((line) => !all.includes(line)).map((line) => `the pane alone: ${line}`),
    ...all.filter((line) => !pane.includes(line)).map((line) => `not in the pane: ${line}`),
  ];
}

/** Types, clears, pastes, takes back or does again at a place by chance; tells what it did. */
function editBy(random: Random, host: WorkbookHost): string {
  const sheets = host.sheets;
  // Most edits are of fans, which is what a person types.
  const fans = sheets.find(({ name }) => /fans/i.test(name));
  const info = fans && random.next() < 0.6 ? fans : random.of(sheets);
  const row = random.next() < 0.03 ? 0 : 1 + random.below(info.rowCount + 1);
  const col = random.below(info.colCount + 1);
  const other = random.of(sheets);
  const [r, c] = [random.below(other.rowCount), random.below(other.colCount)];
  const at = `'${other.name}'!${cellName(r, c)}`;
  const text = random.of([
    () => host.typedText(info.name, 1 + random.below(info.rowCount), col),
    () => host.typedText(info.name, 1 + random.below(info.rowCount), col),
    () => String(Math.round(random.next() * 1_000) / 10),
    () => `=${at}`,
    () => `=${cellName(random.below(info.rowCount), col)}`,
    () => `=SUM(${at}:${cellName(r + 3, c)})`,
    () => `=INDIRECT("${at}")`,
    () => random.of(["", "bath", "#N/A", "-4.1", "1,5", "=1/0"]),
  ])();
  const place = `${info.name}!${cellName(row, col)}`;
  switch (random.below(8)) {
    case 0: {
      const rows = random.below(4);
      host.userClears({ sheet: info.name, top: row, left: col, bottom: row + rows, right: col });
      return `clear ${place} and ${rows} below`;
    }
    case 1: {
      const block = [text, String(random.below(9)), text].map((line) => [line, "2"]);
      host.userEntersBlock(info.name, row, col, block);
      return `paste ${text} at ${place}`;
    }
    default:
      host.userEnters(info.name, row, col, text);
      return `type ${text} into ${place}`;
  }
}

/** What is read and checked after edits, and not yet at rest. */
const soon = 1_000;

/**
 * Some edits, or a burst of undo and redo, some of which come while the pane reads or checks what
 * came before; tells what it did.
 */
async function burstBy(
  random: Random,
  host: WorkbookHost,
  most: number,
  clock: HandClock,
): Promise<string[]> {
  const count = Math.min(most, 1 + random.below(6));
  const kind = random.next();
  const told: string[] = [];
  for (let i = 0; i < count; i++) {
    told.push(once());
    if (random.next() > 0.4) continue;
    await settled();
    clock.turn(random.next() < 0.8 ? soon : undefined);
    // Far enough for the reading, or for some of the checks.
    for (let turns = random.below(40); turns > 0; turns--)
      await new Promise((resolve) => setTimeout(resolve));
    told.push("(meanwhile)");
  }
  return told;

  function once(): string {
    if (kind < 0.2 || (kind < 0.3 && random.next() < 0.5)) {
      host.undo();
      return "undo";
    }
    if (kind < 0.3) {
      host.redo();
      return "redo";
    }
    return editBy(random, host);
  }
}

/** Waits until the pane has heard of all edits and nothing more is asked of the host. */
async function atRest(
  host: WorkbookHost,
  clock: HandClock,
  session: Session,
  longest?: number,
): Promise<void> {
  // On a busy machine an event may take longer than one pause to arrive.
  for (let asked = -1, still = 0; still < 3; still = asked === host.requestCount ? still + 1 : 0) {
    asked = host.requestCount;
    await settled();
    clock.turn(longest);
    await session.further("", async () => {});
  }
}

let session: Session | undefined;
afterEach(() => session?.close());

describe(`${edits.toLocaleString("en")} edits by chance, with bursts of undo, beside the pane`, () => {
  it.each(jobs)(
    "%s: the pane says what a check of the whole workbook says, word for word",
    async (name) => {
      const random = new Random(jobs.indexOf(name) + 1);
      const host = hostOf(Workbook.open(readFileSync(new URL(`${name}.xlsx`, folder))));
      const clock = new HandClock();
      // As of a long job: what depends on the edit first, the whole at rest.
      let readInPart = 0;
      const readAgain: typeof excelHost.readAgain = async (...asked) => {
        const reading = await excelHost.readAgain(...asked);
        if (reading) readInPart++;
        return reading;
      };
      session = new Session({ ...excelHost, readAgain }, clock, 0, -1);
      await session.open();
      await session.check();
      const told: string[] = [];
      for (let done = 0, pauses = 0; done < edits / jobs.length; pauses++) {
        const burst = await burstBy(random, host, edits / jobs.length - done, clock);
        done += burst.filter((each) => each !== "(meanwhile)").length;
        told.push(...burst);
        const isSoon = random.next() < 0.8;
        await atRest(host, clock, session, isSoon ? soon : undefined);
        expect(session.state.problem).toBe("");
        const check = session.state.check as JobCheck;
        const what = told.slice(-12).join("; ");
        const all = wholeCheck(readable((await readWorkbook()).file, await loadAudit()));
        expect(differences(linesOf(check), linesOf(all)), what).toEqual([]);
        if (pauses % 4 > 0) continue;
        const command = wholeCheck(toJobFile(Workbook.open(host.bytes())));
        expect(differences(linesOf(check), linesOf(command)), what).toEqual([]);
      }
      expect(readInPart).toBeGreaterThan(edits / jobs.length / 10);
    },
    3_000_000,
  );
});

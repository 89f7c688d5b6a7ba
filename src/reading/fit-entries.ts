import { cellName } from "../cells";
import type { Block, FieldValue, Role, WorkbookReading } from "./types";

/** One block as `--fit` and the JSON of the check tell it. */
interface FitEntry {
  readonly sheet: string;
  readonly layout: string;
  readonly readings: number;
  readonly roles: Readonly<Partial<Record<Role, readonly string[]>>>;
  readonly because: Readonly<Partial<Record<Role, readonly string[]>>>;
  readonly units: Readonly<Partial<Record<Role, string>>>;
  readonly habits: Readonly<Record<string, unknown>>;
}

/** More cells than this are told as a range. */
const mostCells = 12;

/** What was read, as plain data: a line for each block of each sheet. */
export function fitEntries(reading: WorkbookReading): FitEntry[] {
  return reading.blocks.map((block) => {
    const roles: Partial<Record<Role, string[]>> = {};
    const because: Partial<Record<Role, string[]>> = {};
    for (const [role, { evidence }] of block.roles) {
      roles[role] = ranges(block, role);
      because[role] = [
        ...new Set(evidence.filter(({ weight }) => weight > 0).map((entry) => entry.because)),
      ];
    }
    for (const role of ["dwelling", "room", "required", "tester", "date"] as const) {
      if (block.roles.has(role)) continue;
      for (const [from, words] of Object.entries(toldBy)) {
        const cells = cellsTold(block, role, from);
        if (cells.length === 0) continue;
        roles[role] = cells;
        because[role] = [words];
        break;
      }
    }
    const { habits } = block;
    return {
      sheet: block.sheet,
      layout: block.layout,
      readings: block.readings,
      roles,
      because,
      units: habits.units,
      habits: {
        sign: habits.sign && { value: habits.sign.value, because: habits.sign.because },
        constant: habits.constant?.value,
        window: habits.window?.value,
        decimalComma: habits.decimalComma,
        pass: habits.pass,
        fail: habits.fail,
        neither: habits.neither,
        verdict: habits.verdict,
        rates: habits.rates,
        unknown: habits.unknown,
        openings: habits.openings.map(({ name, area, diameter, unit }) => ({
          name,
          area,
          diameter,
          unit,
        })),
        start: habits.start?.value,
      },
    };
  });
}

/** The cells of a role, one range for each run of fans that share a line. */
function ranges(block: Block, role: Role): string[] {
  const runs = new Map<number, [number, number]>();
  for (let at = 0; at < block.fans.length; at++) {
    const place = block.place(at, role);
    if (!place) continue;
    const [line, along] = block.turned ? [place.row, place.col] : [place.col, place.row];
    const run = runs.get(line);
    if (run) {
      run[0] = Math.min(run[0], along);
      run[1] = Math.max(run[1], along);
    } else runs.set(line, [along, along]);
  }
  return [...runs].map(([line, [from, to]]) => {
    const [a, b] = block.turned
      ? [cellName(line, from), cellName(line, to)]
      : [cellName(from, line), cellName(to, line)];
    return a === b ? a : `${a}:${b}`;
  });
}

/** What tells a role that has no line of its own, in words. */
const toldBy: Readonly<Partial<Record<FieldValue["from"], string>>> = {
  label: "a label beside it says so",
  above: "a line above its rows says so",
  heading: "a heading over the block says so",
  formula: "the verdict's formula holds it",
};

function cellsTold(block: Block, role: Role, from: string): string[] {
  const cells = new Set<string>();
  for (let at = 0; at < block.fans.length; at++) {
    const field = block.field(at, role);
    if (field?.from === from) cells.add(cellName(field.place.row, field.place.col));
  }
  const [first = "", ...others] = cells;
  return others.length > mostCells ? [`${first}:${others.at(-1)}`] : [...cells];
}

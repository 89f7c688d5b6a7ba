import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { afterAll, describe, expect, it } from "vitest";
import { checkFile, faultWords } from "../../src/command/check-file";
import { jsonReport } from "../../src/command/reports/json";
import { tableReport } from "../../src/command/reports/table";
import { Workbook } from "../../src/workbook";
import { whole } from "../setup/whole";
import { Random } from "./random";

const mutations = whole ? 10_000 : 200;
const seeds = 20;
/** Processor time, ms: the clock would measure what else the machine does. */
const slowest = 5_000;

const folder = mkdtempSync(join(tmpdir(), "fanrow-fuzz-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A job of six fans, and the smaller of the demo jobs. */
const small = Workbook.create();
small.addSheet("Fans", {
  rows: [
    ["Dwelling", "Fan", "Room", "Pressure (Pa)", "Open area (in²)", "Flow (cfm)"].map((value) => ({
      value,
    })),
    ...[1, 2, 3, 4, 5, 6].map((n) => [
      ...["Lot 1", `B${n}`, "bathroom", n, 20].map((value) => ({ value })),
      { formula: `1.07*E${n + 1}*SQRT(D${n + 1})`, value: 1.07 * 20 * Math.sqrt(n) },
    ]),
  ],
});
const demo = (name: string) =>
  new Uint8Array(readFileSync(join(import.meta.dirname, "../../workbooks", name)));
const bases = [
  ...Array<Uint8Array>(8).fill(small.save()),
  demo("quarry-yard.xlsx"),
  demo("blank-job.xlsx"),
].map((bytes) => ({ bytes, parts: unzipSync(bytes) }));

const pieces = [
  ...[
    "<v>",
    "</v>",
    "<f>",
    "</f>",
    "<c/>",
    "</row>",
    '<row r="3">',
    "]]>",
    "&#0;",
    "&amp;",
    "<!--",
  ],
  ...['t="s"', 't="b"', 't="e"', 's="999"', 'r="XFD1048576"', 'r="A0"', 'ref="A1:ZZZ9"', 'si="7"'],
  ...["-1", "1e308", "1.5.2", "", "99999999999", "TRUE", "#REF!", "A1:A1048576", "SUM(A:XFD)"],
  ...["INDIRECT(A1)", 'REPT("a",32767)', "FANROW.FLOW(", "_xldudf_FANROW_FLOW(A1,B1)", "\u0007"],
];

/** Text with one place changed: cut, doubled, moved, or with a piece put in. */
function mutatedText(text: string, random: Random): string {
  const [at, length] = [random.below(text.length), 1 + random.below(40)];
  const end = at + length;
  const piece = random.of(pieces);
  switch (random.below(6)) {
    case 0:
      return text.slice(0, at) + text.slice(end);
    case 1:
      return text.slice(0, end) + text.slice(at);
    case 2:
      return text.slice(0, at) + piece + text.slice(at);
    case 3: {
      // A whole value, attribute or element in place of another.
      const marks = [...text.matchAll(/"[^"]*"|>[^<]*</g)];
      const mark = random.of(marks);
      if (mark === undefined) return text + piece;
      const inner = mark[0].slice(1, -1);
      const by = random.next() < 0.5 ? piece : (random.of(marks)?.[0].slice(1, -1) ?? "");
      const from = mark.index + 1;
      return text.slice(0, from) + by + text.slice(from + inner.length);
    }
    case 4:
      return text.replaceAll(text.slice(at, at + 4), piece);
    default:
      return text.slice(0, at) + String.fromCharCode(random.below(65_536)) + text.slice(at + 1);
  }
}

function mutated({ bytes, parts }: (typeof bases)[number], random: Random): Uint8Array {
  if (random.next() < 0.15) {
    const copy = bytes.slice(0, random.next() < 0.3 ? random.below(bytes.length) : undefined);
    for (let n = random.below(6); n >= 0 && copy.length > 0; n--)
      copy[random.below(copy.length)] = random.below(256);
    return copy;
  }
  const changed = { ...parts };
  for (let n = random.below(3); n >= 0; n--) {
    const name = random.of(Object.keys(changed));
    if (random.next() < 0.03) delete changed[name];
    else changed[name] = strToU8(mutatedText(strFromU8(changed[name] as Uint8Array), random));
  }
  return zipSync(changed, { level: 1 });
}

describe(`${mutations.toLocaleString("en")} workbooks damaged at random`, () => {
  it("are read or refused in a line, within the time of a glance", async () => {
    const path = join(folder, "mutated.xlsx");
    const tally = { read: 0, refused: 0, longest: 0 };
    for (let seed = 1; seed <= seeds; seed++) {
      const random = new Random(seed);
      for (let i = 0; i < mutations / seeds; i++) {
        writeFileSync(path, mutated(random.of(bases), random));
        const start = process.cpuUsage();
        const result = await checkFile(path, { today: new Date("2026-11-25T12:00:00Z") });
        const text =
          tableReport({ width: 100, colour: false }).file(result) + jsonReport().file(result);
        const { user, system } = process.cpuUsage(start);
        const took = (user + system) / 1000;
        const told = `seed ${seed}, mutation ${i}`;
        tally.longest = Math.max(tally.longest, took);
        if (took > slowest) expect.fail(`${told} took ${Math.round(took)} ms`);
        if (/\b(NaN|Infinity|undefined)\b|\[object/.test(text)) expect.fail(`${told}: ${text}`);
        if (!("unreadable" in result)) tally.read++;
        else if (result.unreadable.includes(faultWords))
          expect.fail(`${told}: ${result.unreadable}`);
        else tally.refused++;
        if ("unreadable" in result) expect(result.unreadable.length).toBeLessThan(400);
      }
    }
    expect(Math.min(tally.read, tally.refused)).toBeGreaterThan(mutations / 10);
    if (whole) console.log(JSON.stringify(tally));
  }, 3_000_000);
});

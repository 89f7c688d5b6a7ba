import { counted } from "../../../cells";
import { conversionFactor } from "../../../units";
import { plainName } from "../../fit";
import type { FanRows } from "../../read";
import { listed as inWords } from "../../words";
import { eachFan } from "../each";
import { inSheetUnit } from "./sheet-unit";

/** Areas are compared to this share. */
const near = (a: number, b: number, share = 0.01) => Math.abs(a - b) <= share * Math.abs(b);

/** Openings and areas of a firm's rows against its own list and its own other rows. */
export const checkFirmOpenings = eachFan((fans, { firm }) => {
  if (!firm) return undefined;
  const { table } = fans;
  const usual = usualAreas(fans);
  const nameOf = namesOf(fans);
  const [length, unit] =
    table.system === "ip" ? (["in", "in²"] as const) : (["cm", "cm²"] as const);
  return (i, say) => {
    const area = table.number("area", i);
    const label = table.text("openings", i);
    const listed = nameOf?.(i);
    if (listed === null)
      say("opening-unknown", "openings", {
        what: `"${label}" is not among the openings listed`,
        effect: "The open area, and with it the flow, is unknown.",
        mend: "Type the opening as it is listed, or list it with its area.",
        cause: plainName(label),
      });
    if (!(area > 0)) return;
    const size = table.number("openingSize", i);
    const round = size > 0 ? roundArea(size, length, unit) : undefined;
    const expected = listed ?? round;
    if (expected === undefined ? isUsual(area, usual) : near(area, expected, 0.02)) return;
    const told = (value: number) => inSheetUnit(table, "area", i, value);
    const slip = slipOf(area, table.unit("area", i) ?? unit, unit, expected ? [expected] : usual);
    const sizes = `${table.heading("openingSize", i)} ${table.text("openingSize", i)}`;
    const from = listed === undefined ? sizes : `opening "${label}"`;
    const others = `no other row has: they have ${inWords(usual.map(told))}`;
    const right = slip?.area ?? expected;
    say(slip?.kind ?? "area-not-of-sizes", "area", {
      what: slip
        ? `${told(area)} is ${slip.words}: the opening has ${told(slip.area)}`
        : right === undefined
          ? `${told(area)} is an area that ${others}`
          : `the area is ${told(area)} where ${from} gives ${told(right)}`,
      effect: "The flow is wrong by the same factor.",
      mend:
        right === undefined
          ? "Compare with the openings of the box."
          : `Type ${told(right)}, or correct the opening.`,
    });
  };
});

/** So many different areas may be those of a box's openings; more are of many boxes. */
const mostUsual = 12;

/** Areas that several rows have, in the job's unit; none where they do not make up most rows. */
function usualAreas({ table }: FanRows): number[] {
  const areas = [...table.numbers("area")].filter((area) => area > 0);
  const counts = counted(areas.map((area) => Number(area.toPrecision(4))));
  const often = [...counts].filter(([, count]) => count >= 2);
  const covered = often.reduce((sum, [, count]) => sum + count, 0);
  const isMost = covered >= 0.9 * areas.length;
  return often.length <= mostUsual && isMost ? often.map(([area]) => area) : [];
}

/** Whether an area is a usual one, or that of two usual openings together. */
function isUsual(area: number, usual: readonly number[]): boolean {
  const tight = (value: number) => near(area, value, 0.002);
  return usual.length === 0 || usual.some((a) => tight(a) || usual.some((b) => tight(a + b)));
}

/**
 * A typed area that is that of a usual opening in another unit, or its diameter. Areas are in the
 * job's unit; `written` is that of the sheet.
 */
function slipOf(area: number, written: string, unit: string, usual: readonly number[]) {
  const stored = area * conversionFactor(unit, written);
  for (const other of ["in²", "cm²", "mm²"].filter((each) => each !== written)) {
    const found = usual.find((each) => near(stored * conversionFactor(other, unit), each));
    if (found) return { kind: "area-unit", area: found, words: `the area in ${other}` } as const;
  }
  for (const length of written === "in²" ? ["in"] : ["cm", "mm", "in"]) {
    const round = roundArea(stored, length, unit);
    const found = usual.find((each) => near(round, each, 0.03));
    if (found)
      return { kind: "area-is-size", area: found, words: "the diameter, not the area" } as const;
  }
  return undefined;
}

function roundArea(diameter: number, length: string, area: string): number {
  return (
    (Math.PI / 4) *
    diameter ** 2 *
    conversionFactor(length, "m") ** 2 *
    conversionFactor("m²", area)
  );
}

/**
 * The area of a row's opening by the firm's own list, null for a name that is not listed; undefined
 * where no list covers most rows.
 */
function namesOf(fans: FanRows): ((i: number) => number | null | undefined) | undefined {
  const { table, firm } = fans;
  if (!firm || !table.has("openings")) return undefined;
  const areaOf = (i: number): number | null | undefined => {
    const text = table.text("openings", i);
    if (text === "") return undefined;
    const { openings } = firm.at(i).block.habits;
    const list = openings.length > 0 ? openings : firm.reading.openings;
    const find = (name: string) => list.find((each) => plainName(each.name) === plainName(name));
    const own = find(text);
    const parts = own ? [own] : text.split(/\s*[+&,/]\s*|\s+(?:and|und|et|y|en)\s+/i).map(find);
    if (list.length === 0) return undefined;
    if (parts.some((part) => !part)) return null;
    return parts.reduce((sum, part) => {
      const unit = part?.unit ?? table.unit("area", i);
      const area = part?.area ?? Number.NaN;
      return (
        sum + (unit ? area * conversionFactor(unit, table.system === "ip" ? "in²" : "cm²") : area)
      );
    }, 0);
  };
  const rows = Array.from({ length: table.length }, (_, i) => areaOf(i));
  const named = rows.filter((area) => area !== undefined);
  const unknown = named.filter((area) => area === null).length;
  if (named.length === 0 || unknown > 0.2 * named.length) return undefined;
  return (i) => (Number.isNaN(rows[i]) ? undefined : rows[i]);
}

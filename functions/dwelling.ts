import { findEdition, findRoom } from "../src/editions";
import {
  deficitOf,
  fanRate,
  infiltration,
  rateIfBalanced,
  rateWhileOn,
  readYesNo,
  type Work,
  withDeficits,
  works,
} from "../src/job";
import { byEdition, known } from "./by-edition";
import { invalid, missing } from "./problem";
import { isBlank, isError, pick, Rows, toMatrix } from "./rows";
import { aboveZero, readUnits } from "./units";

/**
 * Infiltration of a dwelling over a year from its leakage at 50 Pa, before any cap or credit.
 * @customfunction INFILTRATION
 * @helpurl https://localhost:3443/help/infiltration.html
 * @param {any[][]} edition Edition, such as 62.2-2016: one cell or a range.
 * @param {any[][]} leak50 Leakage at 50 Pa, above 0, cfm (L/s for "si"). A blank gives a blank.
 * @param {any[][]} floorArea Floor area, above 0, ft² (m² for "si").
 * @param {any[][]} height From the lowest to the highest point of the pressure boundary above ground, ft (m for "si").
 * @param {any[][]} weather Weather and shielding factor of the place, from your copy of the edition.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Infiltration, cfm (L/s for "si").
 */
export function infiltrationOf(
  edition: any[][],
  leak50: any[][],
  floorArea: any[][],
  height: any[][],
  weather: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ edition, leak50, floorArea, height, weather });
  const editionOf = rows.texts("edition");
  const leak = rows.numbers("leak50", { blank: "nothing yet", refuse: aboveZero });
  const area = rows.numbers("floorArea", { refuse: aboveZero });
  const high = rows.numbers("height", { refuse: aboveZero });
  const factor = rows.numbers("weather", { refuse: aboveZero });
  return byEdition(rows, editionOf, (named, i) => {
    const envelope = {
      leak50: pick(leak, i),
      floorArea: pick(area, i),
      height: pick(high, i),
      weather: pick(factor, i),
    };
    return infiltration(findEdition(named), envelope, system).rate;
  });
}

/**
 * What fans must still move after an edition's infiltration credit; never below 0.
 * @customfunction FAN_RATE
 * @helpurl https://localhost:3443/help/fan-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2019: one cell or a range.
 * @param {any[][]} total Required total rate, above 0. A blank gives a blank.
 * @param {any[][]} infiltration Infiltration in the same unit, as INFILTRATION gives it.
 * @param {any[][]} [exposedShare] Share of the envelope that faces outside, 0 to 1; 1 (detached) where left out.
 * @param {any[][]} [balanced] "yes" for balanced fans; "no" where left out.
 * @param {any[][]} [work] "new" or "existing"; "new" where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @param {any[][]} [floorArea] Floor area, ft² (m² for "si"), for existing dwellings under 62.2-2010.
 * @returns {any[][]} Rate for the fans, in the unit of the total.
 */
export function fanRateOf(
  edition: any[][],
  total: any[][],
  infiltration: any[][],
  exposedShare: any[][],
  balanced: any[][],
  work: any[][],
  units: any,
  floorArea: any[][],
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({
    edition,
    total,
    infiltration,
    exposedShare,
    balanced,
    work,
    floorArea,
  });
  const editionOf = rows.texts("edition");
  const balancedOf = rows.texts("balanced");
  const workOf = rows.texts("work");
  const whole = rows.numbers("total", { blank: "nothing yet", refuse: aboveZero });
  const leaks = rows.numbers("infiltration", { refuse: zeroOrMore });
  const optional = { blank: "allowed", otherwise: Number.NaN } as const;
  const shares = rows.numbers("exposedShare", { ...optional, refuse: share });
  const areas = rows.numbers("floorArea", { ...optional, refuse: aboveZero });
  return byEdition(rows, editionOf, (named, i) => {
    const given = {
      total: pick(whole, i),
      infiltration: pick(leaks, i),
      exposedShare: known(pick(shares, i)) ?? 1,
      balanced: readYesNo("balanced", balancedOf(i)) ?? false,
      work: readWork(workOf(i)),
      floorArea: known(pick(areas, i)),
    };
    return fanRate(findEdition(named), given, system).rate;
  });
}

/**
 * Flow while on of a fan that runs part of the time.
 * @customfunction ON_RATE
 * @helpurl https://localhost:3443/help/on-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2016 or IRC-2021: one cell or a range.
 * @param {any[][]} rate Continuous rate to make up for, above 0. A blank gives a blank.
 * @param {any[][]} runShare Share of the time on, above 0 and up to 1.
 * @param {any[][]} [cycleHours] Hours from one start to the next; 3 (ASHRAE 62.2) or 4 (IRC) where left out.
 * @returns {any[][]} Flow while on, in the unit of the rate.
 */
export function onRateOf(
  edition: any[][],
  rate: any[][],
  runShare: any[][],
  cycleHours: any[][],
): any[][] {
  const rows = new Rows({ edition, rate, runShare, cycleHours });
  const editionOf = rows.texts("edition");
  const rates = rows.numbers("rate", { blank: "nothing yet", refuse: aboveZero });
  const shares = rows.numbers("runShare", { refuse: shareOn });
  const hours = rows.numbers("cycleHours", {
    blank: "allowed",
    otherwise: Number.NaN,
    refuse: aboveZero,
  });
  return byEdition(
    rows,
    editionOf,
    (named, i) =>
      rateWhileOn(findEdition(named), pick(rates, i), pick(shares, i), known(pick(hours, i))).rate,
  );
}

/**
 * What a room's exhaust lacks, for existing dwellings that keep weak fans; never below 0.
 * @customfunction DEFICIT
 * @helpurl https://localhost:3443/help/deficit.html
 * @param {any[][]} edition Edition, such as 62.2-2016: one cell or a range.
 * @param {any[][]} room Room kind: bathroom, kitchen hood or kitchen.
 * @param {any[][]} measured Measured flow, or 0 or "none" without a fan. A blank gives a blank.
 * @param {any[][]} [window] "yes" for an openable window in the room; "no" where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Deficit, cfm (L/s for "si").
 */
export function deficitOfRoom(
  edition: any[][],
  room: any[][],
  measured: any[][],
  window: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ edition, room, measured: noneAsZero(measured), window });
  const editionOf = rows.texts("edition");
  const roomOf = rows.texts("room");
  const windowOf = rows.texts("window");
  const flow = rows.numbers("measured", { blank: "nothing yet", refuse: zeroOrMore });
  return byEdition(rows, editionOf, (named, i) => {
    const [kind, opens] = [roomOf(i), readYesNo("window", windowOf(i)) ?? false];
    if (kind === "") return missing("the room kind is blank: name one, such as bathroom");
    return deficitOf(findEdition(named), findRoom(kind), pick(flow, i), opens, system).rate;
  });
}

/**
 * Dwelling rate raised by the edition's part of its rooms' deficits.
 * @customfunction DEFICIT_RATE
 * @helpurl https://localhost:3443/help/deficit-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2016: one cell or a range.
 * @param {any[][]} total Required total rate of the dwelling, above 0. A blank gives a blank.
 * @param {any[][]} deficits Deficits of all its rooms in the same unit, as DEFICIT gives them.
 * @returns {any[][]} Raised rate, in the unit of the total.
 */
export function deficitRateOf(edition: any[][], total: any[][], deficits: any[][]): any[][] {
  const rows = new Rows({ edition, total });
  const editionOf = rows.texts("edition");
  const whole = rows.numbers("total", { blank: "nothing yet", refuse: aboveZero });
  const sum = sumOf(deficits);
  return byEdition(rows, editionOf, (named, i) =>
    typeof sum === "number" ? withDeficits(findEdition(named), pick(whole, i), sum).rate : sum,
  );
}

/**
 * Dwelling rate where the system is balanced and ducted as the code says, or is not.
 * @customfunction BALANCED_RATE
 * @helpurl https://localhost:3443/help/balanced-rate.html
 * @param {any[][]} edition Edition, such as IRC-2021 or IMC-2021: one cell or a range.
 * @param {any[][]} rate Required dwelling rate, above 0. A blank gives a blank.
 * @param {any[][]} balancedDucted "yes" if balanced and ducted to the rooms that the code names, or "no".
 * @returns {any[][]} Rate after the reduction, in the unit of the rate.
 */
export function balancedRateOf(edition: any[][], rate: any[][], balancedDucted: any[][]): any[][] {
  const rows = new Rows({ edition, rate, balancedDucted });
  const editionOf = rows.texts("edition");
  const answerOf = rows.texts("balancedDucted");
  const rates = rows.numbers("rate", { blank: "nothing yet", refuse: aboveZero });
  return byEdition(rows, editionOf, (named, i) => {
    const answer = readYesNo("balancedDucted", answerOf(i));
    if (answer === undefined) return missing('balancedDucted is blank: say "yes" or "no"');
    return rateIfBalanced(named, pick(rates, i), answer).rate;
  });
}

export function zeroOrMore(value: number): string | undefined {
  return value >= 0 ? undefined : "give 0 or more";
}

function share(value: number): string | undefined {
  return value >= 0 && value <= 1 ? undefined : "give a share from 0 to 1";
}

function shareOn(value: number): string | undefined {
  return value > 0 && value <= 1
    ? undefined
    : "give a share of the time above 0 and up to 1, such as 0.5 for half of it";
}

function readWork(text: string): Work {
  if (text === "") return "new";
  const found = works.find((work) => work === text.toLowerCase());
  if (!found) throw new RangeError(`unknown work "${text}": use one of ${works.join(", ")}`);
  return found;
}

/** "none" in a flow's place means that there is no fan: a flow of 0. */
function noneAsZero(measured: unknown): unknown {
  if (measured === null || measured === undefined) return measured;
  const isNone = (cell: unknown) =>
    typeof cell === "string" && cell.trim().toLowerCase() === "none";
  return toMatrix(measured).map((row) => row.map((cell) => (isNone(cell) ? 0 : cell)));
}

/** The sum of the deficits; "" where none is entered yet, an error where one is bad. */
function sumOf(deficits: unknown): number | object | "" {
  const cells = toMatrix(deficits)
    .flat()
    .filter((cell) => !isBlank(cell));
  if (cells.length === 0) return "";
  let sum = 0;
  for (const cell of cells) {
    if (isError(cell)) return cell;
    if (typeof cell !== "number" || !(cell >= 0))
      return invalid(`deficits hold "${String(cell)}": give numbers of 0 or more`);
    sum += cell;
  }
  return sum;
}

import { plain } from "../../algebra";
import { areaAtPressure, pressureAtOtherArea } from "../../formulas";
import { aimedPressure } from "../flow/aimed-pressure";
import type { Native } from "./native";
import { NoNativeForm } from "./no-native-form";
import type { OpeningList } from "./opening-list";
import { digits, endless, wrong } from "./text";

/** Areas nearer than this are one and the same. */
const same = "(1+1E-9)";

const none = digits(endless);

/** The openings of a call, where every set of them can be tried; else the error their columns give. */
export function setsToTry(native: Native): OpeningList | string {
  const list = native.call.openings();
  if (typeof list !== "string" && list.isTooLarge)
    throw new NoNativeForm("a box of more than ten openings");
  return list;
}

/**
 * The set of openings whose expected pressure is nearest to the aimed one, after a pressure `P` at
 * an open area `A`. In steps: of all sets of the box the nearest below and above the area that
 * would bring it there, then the better of the two.
 */
export function bestSet(
  native: Native,
  list: OpeningList,
  { P, A }: { readonly P: string; readonly A: string },
): string {
  const { room } = list;
  const [sets, boxes] = [list.sets(), list.boxes()];
  const [low, high] = [native.far("low"), native.far("high")];
  const usual = digits(aimedPressure);
  const aim = `IF(AND(${low}<${usual},${usual}<${high}),${usual},SQRT(${low}*${high}))`;
  const inWindow = (pressure: string) => `AND(${pressure}>=${low},${pressure}<=${high})`;
  const ofBox = (box: string, heading: string) => `INDEX(${boxes.column(heading)},MAX(1,${box}))`;
  const everyArea = sets.block("Area, box 1", `Area, box ${boxes.rows}`);
  const areas = (box: string) => `INDEX(${everyArea},0,MAX(1,${box}))`;
  /** The least area of those that are not ruled out. */
  const least = (box: string, out: string) => `SUMPRODUCT(MIN(${areas(box)}+(${out})*${none}))`;
  const pressureAt = (area: string) => plain(pressureAtOtherArea, { P, A, A2: area });
  const label = (box: string, set: string) =>
    Array.from({ length: room }, (_, k) => {
      const isIn = `INDEX(${sets.column(`Opening ${k + 1}`)},MAX(1,${set}))=1`;
      return `IF(${isIn},"+"&${ofBox(box, `Label ${k + 1}`)},"")`;
    }).join("&");

  const of = [P, A, low, high, native.text("box", "far"), everyArea];
  const found = native.call.steps("next opening", of, {
    box: () => boxNumber(native, list),
    aim: () => aim,
    aimed: ({ aim }) => `IF(COUNT(${P},${A})=2,${plain(areaAtPressure, { A, P, P2: aim })},0)`,
    below: ({ box, aimed }) => `SUMPRODUCT(MAX((${areas(box)}<${aimed})*${areas(box)}))`,
    above: ({ box, aimed }) => least(box, `${areas(box)}<${aimed}`),
    // Of areas that are one and the same the least counts, on either side.
    lower: ({ box, below }) => `IF(${below}=0,0,${least(box, `${areas(box)}*${same}<${below}`)})`,
    upper: ({ box, below, above }) =>
      `IF(${below}*${same}<${above},${above},${least(box, `${areas(box)}<=${above}*${same}`)})`,
    "lower pressure": ({ lower }) => `IF(${lower}=0,0,${pressureAt(lower)})`,
    "upper pressure": ({ upper }) => `IF(${upper}>=${none},0,${pressureAt(upper)})`,
    side: ({ lower, upper, "lower pressure": under, "upper pressure": over, aim }) =>
      sideOf(lower, upper, nearer(under, over, inWindow, aim)),
    area: ({ side, lower, upper }) => `IF(${side}=1,${lower},${upper})`,
    // The set of this area with the fewest openings, the first of several.
    set: ({ box, area }) =>
      `MOD(SUMPRODUCT(MIN((${areas(box)}<>${area})*1E+9+${sets.column("How many")}*10000+${sets.column("No.")})),10000)`,
    label: ({ box, set }) => `MID(${label(box, set)},2,500)`,
  });
  const { box, side } = found;
  const chosen = `IF(${side}=1,${found["lower pressure"]},${found["upper pressure"]})`;
  const named = `IF(${inWindow(chosen)},${found.label},"none in range, nearest "&${found.label})`;
  const known = `IF(${side}=0,"no opening in the list",${named})`;
  const full = wrong(`a box of more than ${room} openings`);
  return `IF(${box}=0,${wrong("unknown box")},IF(${ofBox(box, "Openings")}>${room},${full},${known}))`;
}

/** 0 for a box that the list does not have. */
function boxNumber(native: Native, list: OpeningList): string {
  if (!list.hasBoxes) return "1";
  const box = native.text("box", "far");
  const boxes = list.boxes();
  const number = `SUMPRODUCT((${boxes.column("Box")}=${box})*${boxes.column("No.")})`;
  return `IF(ISERROR(${box}),0,${number})`;
}

/** 0 where there is no set, 1 for the lower, 2 for the upper. */
function sideOf(lower: string, upper: string, nearer: string): string {
  const onlyUpper = `IF(${upper}>=${none},0,2)`;
  return `IF(${lower}=0,${onlyUpper},IF(${upper}>=${none},1,${nearer}))`;
}

/** 1 or 2: inside the window before outside, then the nearer to the aimed pressure by ratio. */
function nearer(
  under: string,
  over: string,
  inWindow: (pressure: string) => string,
  aim: string,
): string {
  const off = (pressure: string) => `ABS(LN(${pressure}/${aim}))`;
  const byRatio = `IF(${off(under)}<=${off(over)},1,2)`;
  return `IF(${inWindow(under)}=${inWindow(over)},${byRatio},IF(${inWindow(under)},1,2))`;
}

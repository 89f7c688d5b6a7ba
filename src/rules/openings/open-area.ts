import { InputError } from "../../cells";
import type { Source } from "../../formulas";
import { openingLists } from "../arguments";
import { nameToCome } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { sixDigits } from "../contract/say";
import type { Native, NativeForm } from "../native/native";
import { wrong } from "../native/text";
import { listedOpenings } from "./box-openings";
import { areaOf, openingsNamed } from "./openings-label";

const source: Source = { work: "sum of the openings in use", clause: "", mark: "by definition" };

export const rule = ruleOf({
  id: "OPEN_AREA",
  title: "Area of the openings in use",
  arguments: { openings: nameToCome((text) => text), ...openingLists },
  work(given) {
    const open = openingsNamed(given.openings, listedOpenings(given));
    const flawed = open.find(({ area }) => Number.isNaN(area));
    if (flawed)
      throw new InputError(
        `opening ${flawed.label} has no area above 0 in the list: type it there as a number`,
      );
    const total = areaOf(open);
    const parts = () => open.map(({ label, area }) => `${label} ${sixDigits(area)}`).join(" + ");
    return {
      gives: total,
      why: () => ({ words: [`${parts()} = ${sixDigits(total)}`], sources: [source] }),
    };
  },
});

/** Labels as a formula may repeat them: one blank between, blanks within a label a line feed. */
function labelsRead(openings: string): string {
  const replace = (text: string, from: string, to: string) => `SUBSTITUTE(${text},${from},${to})`;
  let text = `LOWER(" "&${openings}&" ")`;
  for (const sign of [",", ";", "&"]) text = replace(text, `"${sign}"`, '"+"');
  text = replace(text, '"+"', '" + "');
  text = `TRIM(${replace(text, '" and "', '" + "')})`;
  text = replace(replace(text, '" +"', '"+"'), '"+ "', '"+"');
  return `TRIM(${replace(replace(text, '" "', "CHAR(10)"), '"+"', '" "')})`;
}

export const native: NativeForm = (native: Native) => {
  const list = native.call.openings();
  if (typeof list === "string") return list;
  const { table } = list;
  const read = native.call.step("labels in use", labelsRead(native.far("openings")));
  const named = [
    ...(list.hasBoxes ? [`${table.column("Box")}=${native.text("box")}`] : []),
    `${table.column("First")}=1`,
    `${table.column("Area")}>0`,
    `ISNUMBER(FIND(" "&${table.column("Label")}&" "," "&${read}&" "))`,
  ];
  const factors = named.map((each) => `(${each})`).join("*");
  const asked = `LEN(${read})-LEN(SUBSTITUTE(${read}," ",""))+1`;
  const flaw = wrong("openings: unknown, named twice, or without an area above 0 in the list");
  return `IF(SUMPRODUCT(${factors})=${asked},SUMPRODUCT(${factors}*${table.column("Area")}),${flaw})`;
};

const labels = ["A", "B", "C"];
const areas = [4, 12, 24];

export const help: Help = {
  computes: [
    'Labels may be joined by +, a comma, a semicolon, & or the word "and"; capitals do not matter.',
    "Where the list holds several boxes, give the box in use and the column of boxes too.",
  ],
  result: "Open area, in the unit of the areas given.",
  source,
  examples: [
    {
      words:
        "A box has the openings A (4 in²), B (12 in²) and C (24 in²). A and C are open: 4 + 24.",
      args: ["A+C", labels, areas],
      gives: 28,
      unit: "in²",
    },
  ],
  troubles: [
    { when: "A label is not in the list.", args: ["A+D", labels, areas] },
    { when: "A label is named twice.", args: ["A+A", labels, areas] },
    { when: "The area of an opening is not a number above 0.", args: ["B", labels, [4, "", 24]] },
    { when: "The columns are not of one length.", args: ["A", labels, [4, 12]] },
  ],
  related: ["ROUND_AREA", "RECT_AREA", "FLOW"],
};

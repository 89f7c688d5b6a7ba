import { plain } from "../../algebra";
import { areaForFlow, diameterForArea, rectArea, roundArea } from "../../formulas";
import { aimedPressure } from "../../job";
import { digits, wrong } from "../native-text";
import { aboveZero, Guards } from "./guards";
import type { Call, Writer } from "./writer";

export const roundAreaWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const d = guards.number("diameter", { blank: "nothing yet", need: aboveZero });
    return guards.result(plain(roundArea, { d }));
  },
};

export const rectAreaWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const w = guards.number("width", { blank: "nothing yet", need: aboveZero });
    const h = guards.number("height", { blank: "nothing yet", need: aboveZero });
    return guards.result(plain(rectArea, { w, h }));
  },
};

function areaWriter(shown: (area: string) => string): Writer {
  return {
    write(call) {
      const guards = new Guards(call);
      const isSi = guards.units();
      const Q = guards.number("flow", { blank: "nothing yet", need: aboveZero });
      const P = guards.number("pressure", { otherwise: digits(aimedPressure), need: aboveZero });
      const otherwise = guards.usualConstant(isSi);
      const K = guards.number("constant", { otherwise, need: aboveZero });
      return guards.result(shown(plain(areaForFlow, { Q, P, K })));
    },
  };
}

export const areaForWriter = areaWriter((area) => area);

export const diameterForWriter = areaWriter((area) => plain(diameterForArea, { A: `(${area})` }));

const whole = { labels: "whole", areas: "whole", boxes: "whole" } as const;

/** Labels as `Guards.result` may repeat them: one blank between, blanks within a label a line feed. */
function labelsRead(openings: string): string {
  const replace = (text: string, from: string, to: string) => `SUBSTITUTE(${text},${from},${to})`;
  let text = `LOWER(" "&${openings}&" ")`;
  for (const sign of [",", ";", "&"]) text = replace(text, `"${sign}"`, '"+"');
  text = replace(text, '"+"', '" + "');
  text = `TRIM(${replace(text, '" and "', '" + "')})`;
  text = replace(replace(text, '" +"', '"+"'), '"+ "', '"+"');
  return `TRIM(${replace(replace(text, '" "', "CHAR(10)"), '"+"', '" "')})`;
}

export const openAreaWriter: Writer = {
  kinds: whole,
  write(call) {
    const list = listOf(call);
    if (typeof list === "string") return list;
    const guards = new Guards(call);
    const use = guards.text("openings");
    const box = guards.text("box");
    const openings = call.at("openings");
    const read = call.step("labels in use", labelsRead(openings?.far ?? '""'));
    const of = list.hasBoxes ? [`${list.table.column("Box")}=${box}`] : [];
    const named = [
      ...of,
      `${list.table.column("First")}=1`,
      `${list.table.column("Area")}>0`,
      `ISNUMBER(FIND(" "&${list.table.column("Label")}&" "," "&${read}&" "))`,
    ];
    const found = `SUMPRODUCT(${named.map((each) => `(${each})`).join("*")})`;
    const asked = `LEN(${read})-LEN(SUBSTITUTE(${read}," ",""))+1`;
    const area = `SUMPRODUCT(${named.map((each) => `(${each})`).join("*")}*${list.table.column("Area")})`;
    const flaw = wrong("openings: unknown, named twice, or without an area above 0 in the list");
    return guards.result(`IF(${use}="","",IF(${found}=${asked},${area},${flaw}))`);
  },
};

/** The list of openings that a call names, or the error that its columns give. */
export function listOf(call: Call) {
  const labels = call.place("labels");
  const areas = call.place("areas");
  const boxes = call.place("boxes");
  if (!labels || !areas) return wrong("labels or areas are missing");
  return call.aids.sets.list(labels, areas, boxes);
}

import { plain } from "../../algebra";
import { agreementLimit, openingStrength, percentError } from "../../formulas";
import { agreementFactor } from "../../spread";
import { type Part, span } from "../aids/steps";
import { Left } from "../left";
import { digits, wrong } from "../native-text";
import { colsOf, farText, rowsOf } from "../rewrite/places";
import { aboveZero } from "./guards";
import type { Call, Writer } from "./writer";

/** More pairs than anybody reads. */
const mostPairs = 2000;

interface Pairs {
  /** 1 for each pair that counts, 0 for one passed over, an error for one that will not do. */
  readonly used: string;
  /** The columns worked out for each pair. */
  readonly columns: readonly string[];
}

/** Steps for the pairs of some ranges, or the error that ranges of different lengths give. */
function pairs(
  call: Call,
  names: readonly string[],
  read: readonly string[],
  columns: readonly ((cells: Readonly<Record<string, string>>, used: string) => string)[],
): Pairs | string {
  const places = names.map((name) => {
    const place = call.place(name);
    if (!place) throw new Left(`${name} is missing`);
    return place;
  });
  const sizes = places.map((place) => rowsOf(place) * colsOf(place));
  if (new Set(sizes).size > 1) return wrong("give ranges of one length");
  const count = sizes[0] as number;
  if (count > mostPairs) throw new Left(`${count} pairs`);
  const key = `pairs ${places.map(farText).join(" ")}`;
  const lines = Array.from({ length: count }, (_, i): Part[] => {
    const cells = Object.fromEntries(
      places.map((place, n) => {
        const top = place.top + Math.floor(i / colsOf(place));
        const left = place.left + (i % colsOf(place));
        return [names[n] as string, farText({ ...place, top, left, bottom: top, right: left })];
      }),
    );
    const blank = (x: string) => `IF(ISERROR(${x}),FALSE,TRIM(${x})="")`;
    const passed = read.map((name) => blank(cells[name] as string)).join(",");
    const faults = Object.entries(cells).map(([name, x]) => {
      const flaw = wrong(`${name}: ${aboveZero.say}`);
      return `IF(ISNUMBER(${x}),IF(${aboveZero.text(x)},0,${flaw}),IF(TRIM(${x})="",NA(),${flaw}))`;
    });
    return [
      () => `IF(OR(${passed}),0,1+MAX(${faults.join(",")}))`,
      ...columns.map(
        (column): Part =>
          ([used = ""]) =>
            column(cells, used),
      ),
    ];
  });
  const rows = call.stepRows("pairs: whether each counts, and what comes of it", key, lines);
  const column = (at: number) => span(rows[0]?.[at] as string, rows.at(-1)?.[at] as string);
  return { used: column(0), columns: columns.map((_, i) => column(i + 1)) };
}

/** A result of all pairs: an error of theirs, a blank without any, or the value. */
function ofAll(used: string, value: string): string {
  return `IF(ISERROR(SUM(${used})),SUM(${used}),IF(SUM(${used})=0,"",${value}))`;
}

export const pairConstantWriter: Writer = {
  width: 3,
  kinds: { areas: "whole", pressures: "whole", references: "whole" },
  write(call) {
    const found = pairs(
      call,
      ["areas", "pressures", "references"],
      ["pressures", "references"],
      [
        (cells, used) =>
          `IF(${used}=1,${plain(openingStrength, { A: cells.areas as string, P: cells.pressures as string })},0)`,
        (cells, used) => `IF(${used}=1,${cells.references},0)`,
      ],
    );
    if (typeof found === "string") return found;
    const { used } = found;
    const [x = "", y = ""] = found.columns;
    const slope = `SUMPRODUCT(${x}*${y})/SUMSQ(${x})`;
    const dof = `SUM(${used})-1`;
    const fitted = call.step("constant of the pairs", ofAll(used, slope));
    const lost = `SUMPRODUCT((${y}-${fitted}*${x})^2)`;
    const error = `IF(${dof}=0,"",SQRT(${lost}/(${dof}))/SQRT(SUMSQ(${x})))`;
    if (call.side === 0) return fitted;
    return ofAll(used, call.side === 1 ? error : dof);
  },
};

function agreementWriter(sides: (percent: string) => readonly [string, string, string]): Writer {
  return {
    width: 3,
    kinds: { boxFlows: "whole", referenceFlows: "whole" },
    write(call) {
      const names = ["boxFlows", "referenceFlows"] as const;
      const found = pairs(call, names, names, [
        (cells, used) =>
          `IF(${used}=1,${plain(percentError, { Q: cells.boxFlows as string, R: cells.referenceFlows as string })},"")`,
      ]);
      if (typeof found === "string") return found;
      const [percent = ""] = found.columns;
      return ofAll(found.used, sides(percent)[call.side] as string);
    },
  };
}

export const pairBiasWriter = agreementWriter((percent) => [
  `AVERAGE(${percent})`,
  `IF(COUNT(${percent})>1,STDEV(${percent}),"")`,
  `COUNT(${percent})`,
]);

export const pairLimitsWriter = agreementWriter((percent) => {
  const limit = (z: number) => {
    const given = { B: `AVERAGE(${percent})`, z: digits(z), s: `STDEV(${percent})` };
    return `IF(COUNT(${percent})>1,${plain(agreementLimit, given)},"")`;
  };
  return [limit(-agreementFactor), limit(agreementFactor), `MAX(MAX(${percent}),-MIN(${percent}))`];
});

import { describe, expect, it } from "vitest";
import {
  balancedRules,
  balanceRules,
  codes,
  designMatchRules,
  ductRules,
  editions,
  efficacyRules,
  findDuct,
  findFan,
  findRule,
  makeupAirRules,
  retestBands,
  soundRules,
  UnknownNameError,
} from "../../src/editions";

const known = [...editions, ...codes].map(({ id }) => id);
const lists = {
  "fan efficacy": efficacyRules,
  "sound limits": soundRules,
  "duct lengths": ductRules,
  "makeup air": makeupAirRules,
  "balanced systems": balancedRules,
  "supply against exhaust": balanceRules,
  "design matches": designMatchRules,
} as const;

/** Every source in the data, however deep. */
function sourcesIn(data: unknown): { work: string; clause: string; mark: string }[] {
  if (typeof data !== "object" || data === null) return [];
  if ("work" in data && "mark" in data) return [data as never];
  return Object.values(data).flatMap(sourcesIn);
}

describe("the codes beside the editions", () => {
  it("keep the ids that job workbooks hold", () => {
    for (const id of [
      "IRC-2015",
      "IRC-2018",
      "IMC-2021",
      "IECC-2015",
      "IECC-2018",
      "IECC-2021",
      "10-CFR-460",
      "ENERGY-STAR-3.1",
    ])
      expect(known).toContain(id);
    expect(new Set(known).size).toBe(known.length);
  });
});

describe.each(Object.entries(lists))("the rules on %s", (_, rules) => {
  it("name known codes, each once, and trace every number", () => {
    const named = rules.map(({ code }) => code);
    expect(known).toEqual(expect.arrayContaining(named));
    expect(new Set(named).size).toBe(named.length);
    for (const rule of rules) {
      expect(sourcesIn(rule).length).toBeGreaterThan(0);
      for (const { work, clause, mark } of sourcesIn(rule)) {
        expect(work).not.toBe("");
        expect(clause).not.toBe("");
        expect(["read", "two sources", "from memory"]).toContain(mark);
      }
    }
  });
});

describe("the duct tables", () => {
  it.each(ductRules.map((rule) => [rule.code, rule] as const))(
    "%s: allow less for more flow, and more in wider or smoother ducts",
    (_code, { rows, ratedFlows }) => {
      for (const row of rows) {
        expect(row.lengths).toHaveLength(ratedFlows.length);
        const narrower = rows.findLast(
          ({ duct, diameter }) => duct === row.duct && diameter < row.diameter,
        );
        const flex = rows.find(
          ({ duct, diameter }) => duct === "flex" && diameter === row.diameter,
        );
        row.lengths.forEach((length, i) => {
          expect(length).toBeLessThanOrEqual(row.lengths[i - 1] ?? Number.POSITIVE_INFINITY);
          expect(length).toBeGreaterThanOrEqual(narrower?.lengths[i] ?? 0);
          expect(length).toBeGreaterThanOrEqual(flex?.lengths[i] ?? 0);
        });
      }
    },
  );
});

describe("the efficacies", () => {
  it.each(efficacyRules.map((rule) => [rule.code, rule] as const))(
    "%s: leave no flow between two rows of a kind, and ask more of the larger fan",
    (_code, { rows }) => {
      rows.forEach((row, i) => {
        const before = rows[i - 1];
        if (before?.fan !== row.fan) return;
        expect(row.from).toBe(before.below);
        expect(row.least.ip).toBeGreaterThan(before.least.ip as number);
      });
    },
  );
});

describe("the bands of a second test", () => {
  it("rise, and leave no difference out", () => {
    retestBands.rows.forEach(({ upTo }, i) => {
      expect(upTo).toBeGreaterThan(retestBands.rows[i - 1]?.upTo ?? 0);
    });
    expect(retestBands.rows.at(-1)?.upTo).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("finding a rule by the name of its code", () => {
  it("takes a code's id, title or other names, in any case", () => {
    for (const name of ["IECC-2021", "iecc 2021", "International Energy Conservation Code 2021"])
      expect(findRule("fan efficacy", efficacyRules, name).code).toBe("IECC-2021");
    expect(findRule("fan efficacy", efficacyRules, "10 CFR 460.204").code).toBe("10-CFR-460");
  });

  it("tells a code without such a rule from one that it does not know, and lists those with one", () => {
    const find = (name: string) => () => findRule("sound limit", soundRules, name);
    expect(find("IRC-2021")).toThrow(UnknownNameError);
    expect(find("IRC-2021")).toThrow("IRC-2021 sets no sound limit: use one of 62.2-2010");
    expect(find("62.2-1999")).toThrow('unknown edition "62.2-1999": use one of 62.2-2010');
  });
});

describe("finding a kind of fan or duct", () => {
  it.each([
    ["HRV", "heat recovery"],
    ["Range Hood", "range hood"],
    ["inline", "in-line"],
    ["Bath fan", "bath or utility"],
    ["other exhaust", "bath or utility"],
  ])("takes the fan %s for %s", (name, kind) => {
    expect(findFan(name)).toBe(kind);
  });

  it("takes a rigid duct for a smooth one, and lists the kinds where it knows none", () => {
    expect(findDuct("Rigid")).toBe("smooth");
    expect(() => findDuct("square")).toThrow('unknown duct kind "square": use one of flex, smooth');
    expect(() => findFan("jet")).toThrow('unknown fan kind "jet": use one of heat recovery');
  });
});

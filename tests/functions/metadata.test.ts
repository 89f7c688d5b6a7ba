import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { helpFile, namespace, worksheetFunctions } from "../../functions";
import * as implementations from "../../functions/made";
import { descriptions, generateMetadata, released } from "../../functions/metadata/index.mjs";

/** Ids are stored in users' workbooks. This list may grow at its end; nothing in it may change. */
const frozen = [
  "ROUND_AREA",
  "RECT_AREA",
  "OPEN_AREA",
  "AREA_FOR",
  "DIAMETER_FOR",
  "FLOW",
  "BOX_PRESSURE",
  "REACH",
  "RANGE_STATUS",
  "NEXT_OPENING",
  "ROOM_RATE",
  "DWELLING_RATE",
  "VERDICT",
  "CHANCE_MET",
  "ACCEPT_FROM",
  "AREA_LIMIT",
  "FLOW_SPREAD",
  "UNBOXED_FLOW",
  "UNBOXED_SPREAD",
  "UNBOXED_ESTIMATE",
  "PAIR_CONSTANT",
  "PAIR_BIAS",
  "PAIR_LIMITS",
  "WORKING",
  "AIR_DENSITY",
  "AIR_FACTOR",
  "STANDARD_FLOW",
  "FLOW_CONSTANT",
  "DEVICE_FLOW",
  "BAG_FLOW",
  "DEVICE_SPREAD",
  "PAN_STATUS",
  "FAN_SIZE",
  "EXPECTED_OPENING",
  "SOURCE",
  "EDITIONS",
  "INFILTRATION",
  "FAN_RATE",
  "ON_RATE",
  "DEFICIT",
  "DEFICIT_RATE",
  "BALANCED_RATE",
  "MIN_EFFICACY",
  "MAX_SONE",
  "DUCT_LIMIT",
  "MAKEUP_AIR",
  "DESIGN_MATCH",
  "BALANCE",
];

interface Entry {
  readonly id: string;
  readonly helpUrl: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly type: string;
    readonly dimensionality?: string;
    readonly optional?: boolean;
    readonly repeating?: boolean;
  }[];
}

const metadata = JSON.parse(await generateMetadata()) as { readonly functions: readonly Entry[] };
const entryOf = (id: string) => metadata.functions.find((each) => each.id === id);

describe("functions.json", () => {
  it("lets error values in a range reach the function", () => {
    expect(metadata).toMatchObject({ allowErrorForDataTypeAny: true });
  });

  it("keeps the ids that stand in users' workbooks", () => {
    expect(metadata.functions.map(({ id }) => id)).toEqual(frozen);
    expect([...released().keys()]).toEqual(frozen);
    expect(namespace).toBe("FANROW");
  });

  it("names exactly the functions that have code", () => {
    expect(Object.keys(implementations).sort()).toEqual([...frozen].sort());
    expect(worksheetFunctions.map(({ id }) => id).sort()).toEqual([...frozen].sort());
  });
});

describe.each(worksheetFunctions.map((entry) => [entry.id, entry] as const))("%s", (id, entry) => {
  it("has an id that Excel takes: three characters or more, a letter first, and not like a cell", () => {
    expect(id).toMatch(/^[A-Z][A-Z0-9_.]{2,}$/);
    expect(id).not.toMatch(/^[A-Z]{1,3}[0-9]+$/); // A1 style
    expect(id).not.toMatch(/^R[0-9]*C[0-9]*$/); // R1C1 style
    expect(id.length).toBeLessThanOrEqual(128);
  });

  it("tells Excel of the parameters that its rule takes", () => {
    const told = entryOf(id)?.parameters.map(
      ({ name, type, dimensionality = "scalar", optional = false, repeating = false }) => {
        expect(type).toBe("any");
        return { name, dimensionality, optional, repeating };
      },
    );
    expect(told).toEqual(entry.parameters.map(({ description: _, ...rest }) => rest));
  });

  it("has as many parameters in its rule as in its code", () => {
    expect(entry.parameters).toHaveLength(
      (implementations as Readonly<Record<string, { readonly length: number }>>)[id]?.length ?? 0,
    );
  });

  it("describes itself and each parameter, and puts the optional ones last", async () => {
    expect((await descriptions())[id]).toEqual([
      entry.description,
      ...entry.parameters.map(({ description }) => description),
    ]);
    expect(entry.description).not.toBe("");
    for (const { description } of entry.parameters) expect(description).not.toBe("");
    const optional = entry.parameters.map((parameter) => parameter.optional);
    expect(optional).toEqual([...optional].sort());
  });

  it("has a help page of its own", () => {
    const page = entryOf(id)?.helpUrl ?? "";
    expect(page.endsWith(`/${helpFile(id)}`)).toBe(true);
  });
});

describe("the generator", () => {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-metadata-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  it.each([
    ["a type that Excel has not", "@param {Date} when A day.", "when: Date", "Date"],
    ["a misspelled type", "@param {numbr} size A size.", "size: number", "parameter : size"],
  ])("fails on %s, and says which", async (_, tag, parameter, word) => {
    const file = join(folder, "bad.ts");
    writeFileSync(
      file,
      `/**\n * Bad.\n * @customfunction BAD_ONE\n * ${tag}\n * @returns {number} One.\n */\nexport function bad(${parameter}): number {\n  return 1;\n}\n`,
    );
    await expect(generateMetadata([file])).rejects.toThrow("the function comments do not do:");
    await expect(generateMetadata([file])).rejects.toThrow(word);
  });

  it("fails on two functions of one id", async () => {
    const file = join(folder, "twice.ts");
    const one = (name: string) =>
      `/**\n * One.\n * @customfunction SAME_ID\n * @returns {number} One.\n */\nexport function ${name}(): number {\n  return 1;\n}\n`;
    writeFileSync(file, one("first") + one("second"));
    await expect(generateMetadata([file])).rejects.toThrow("SAME_ID");
  });
});

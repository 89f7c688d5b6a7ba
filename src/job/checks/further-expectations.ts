import { columns } from "../../algebra";
import { InputError } from "../../cells";
import { flowFromPressure } from "../../formulas";
import { meanOf } from "../mean";
import type { Job, Table } from "../read";
import { areaOf, openingsNamed } from "../rules";
import type { Expectation } from "./expectation";

/** The computed columns of the Pairs and the Registers sheet, from the other cells of each row. */
export function ofFurtherSheets(job: Job, table: Table): Expectation[] {
  if (table.layout.kind === "pairs") return ofPairs(job, table);
  if (table.layout.kind === "registers") return ofRegisters(table);
  return [];
}

function ofPairs(job: Job, table: Table): Expectation[] {
  const area = (i: number): number | undefined => {
    const openings = job.boxes?.openings(table.text("box", i));
    try {
      return openings && areaOf(openingsNamed(table.text("openings", i), openings));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      // What is wrong with the label has a finding of its own.
      return undefined;
    }
  };
  const K = Float64Array.from({ length: table.length }, (_, i) => {
    const own = table.number("constant", i);
    return own > 0 ? own : job.settings.constant;
  });
  const flow = columns(
    flowFromPressure,
    { K, A: table.numbers("area"), P: table.numbers("pressure") },
    table.length,
  );
  return [
    { key: "area", expected: area },
    { key: "boxFlow", expected: (i) => known(flow[i]) },
    {
      key: "difference",
      expected: (i) => {
        const reference = table.number("reference", i);
        return known((100 * (table.number("boxFlow", i) - reference)) / reference);
      },
    },
  ];
}

function ofRegisters(table: Table): Expectation[] {
  const keys = ["reading1", "reading2", "reading3"].filter((key) => table.has(key));
  return [
    {
      key: "pressure",
      expected: (i) => {
        const readings = keys
          .map((key) => table.number(key, i))
          .filter((value) => !Number.isNaN(value));
        return known(meanOf(readings));
      },
    },
  ];
}

const known = (value: number | undefined) =>
  value === undefined || Number.isNaN(value) ? undefined : value;

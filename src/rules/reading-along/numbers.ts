import {
  allEditions,
  type Edition,
  findEdition,
  oneOf,
  retestBands,
  samplings,
  UnknownNameError,
} from "../../editions";
import type { Source } from "../../formulas";
import { usualAir } from "../air/air";
import { instruments } from "../instruments";
import { usualPan } from "../instruments/pan-status";
import { numberLeaves } from "./number-leaves";
import { statedUnit } from "./number-units";
import { usualReading } from "./usual-reading";

/** One number that the project rests on, and where it comes from. */
export interface NumberEntry {
  /** Id of the edition; `everyEdition` for what holds whatever the edition. */
  readonly edition: string;
  readonly what: string;
  /** Infinity for the open end of a table. */
  readonly value: number;
  /** "" where the number has none, or its data state none. */
  readonly unit: string;
  readonly source: Source;
}

/** What the numbers are listed under that no edition has for itself. */
export const everyEdition = "every edition";

/**
 * Every number of the editions, and the constants and limits of the rules, in reading order. An
 * edition is walked whatever its shape: a new one is here without being named.
 */
export function everyNumber(): NumberEntry[] {
  const fixed = [
    retestBands,
    samplings.map(({ id, ...rule }) => ({ sampling: id, ...rule })),
    usualReading,
    Object.values(usualAir),
    Object.values(usualPan),
    instruments,
  ];
  return [...allEditions, ...fixed].flatMap(entriesOf);
}

/**
 * The numbers of one edition or code, by its id or, for an edition, any name that is taken for it;
 * by `everyEdition` those of the rules. Throws `UnknownNameError` with the known ones.
 */
export function numbersOf(name: string): NumberEntry[] {
  const all = everyNumber();
  const squeeze = (text: string) => text.toLowerCase().replace(/[\s\-_]+/g, "");
  const ids = new Set(all.map(({ edition }) => edition));
  ids.delete(everyEdition);
  const known = [...ids, everyEdition];
  let wanted = known.find((each) => squeeze(each) === squeeze(name));
  try {
    wanted ??= findEdition(name).id;
  } catch (error) {
    if (!(error instanceof UnknownNameError)) throw error;
    throw new UnknownNameError(`unknown edition "${name}": ${oneOf(name, known)}`);
  }
  return all.filter(({ edition }) => edition === wanted);
}

function entriesOf(item: unknown): NumberEntry[] {
  const { id, title, systems } = item as Partial<Edition>;
  const only = systems?.length === 1 ? systems[0] : undefined;
  return numberLeaves(item, only).map((leaf) => {
    const { parts } = leaf;
    const unit = leaf.unit ?? statedUnit(parts[0] ?? "", leaf.key);
    return {
      edition: id ?? everyEdition,
      // A number of one system whose unit does not show it.
      what: (leaf.system && !leaf.unit && typeof unit === "string" && leaf.system !== only
        ? [...parts.filter((part) => part !== leaf.system), leaf.system]
        : parts
      ).join(", "),
      value: leaf.value,
      unit: typeof unit === "string" ? unit : leaf.system ? unit[leaf.system] : "",
      source: leaf.source ?? { work: title ?? "", clause: "", mark: "from memory" },
    };
  });
}

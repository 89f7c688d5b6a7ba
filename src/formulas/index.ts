/**
 * The formulas of the trade, each written once as text with its symbols, units, validity and
 * source. Nothing here computes: `src/algebra` reads the texts.
 */
import * as air from "./air";
import * as airUnits from "./air-units";
import * as coefficients from "./coefficients";
import * as dwelling from "./dwelling";
import * as equipment from "./equipment";
import * as estimate from "./estimate";
import * as flow from "./flow";
import type { Formula } from "./formula";
import * as infiltration from "./infiltration";
import * as instruments from "./instruments";
import * as judging from "./judging";
import * as openings from "./openings";
import * as proof from "./proof";
import * as rates from "./rates";
import * as uncertainty from "./uncertainty";

export * from "./air";
export * from "./air-units";
export * from "./coefficients";
export * from "./dwelling";
export * from "./equipment";
export * from "./estimate";
export * from "./flow";
export * from "./formula";
export * from "./infiltration";
export * from "./instruments";
export * from "./judging";
export * from "./openings";
export * from "./proof";
export * from "./rates";
export * from "./uncertainty";

/** Every formula, in topic order. The tests of the four readers run over this list. */
export const formulas: readonly Formula[] = [
  openings,
  flow,
  coefficients,
  air,
  rates,
  judging,
  airUnits,
  instruments,
  estimate,
  uncertainty,
  proof,
  infiltration,
  dwelling,
  equipment,
]
  .flatMap((topic) => Object.values(topic))
  .filter((entry): entry is Formula => typeof entry === "object" && "text" in entry);

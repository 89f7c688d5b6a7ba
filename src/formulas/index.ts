/**
 * The formulas of the trade, each written once as text with its symbols, units, validity and
 * source. Nothing here computes: `src/algebra` reads the texts.
 */
import * as air from "./air";
import * as coefficients from "./coefficients";
import * as flow from "./flow";
import type { Formula } from "./formula";
import * as judging from "./judging";
import * as openings from "./openings";
import * as rates from "./rates";

export * from "./air";
export * from "./coefficients";
export * from "./flow";
export * from "./formula";
export * from "./judging";
export * from "./openings";
export * from "./rates";

/** Every formula, in topic order. The tests of the four readers run over this list. */
export const formulas: readonly Formula[] = [openings, flow, coefficients, air, rates, judging]
  .flatMap((topic) => Object.values(topic))
  .filter((entry): entry is Formula => typeof entry === "object" && "text" in entry);

/**
 * The trees of the formula texts and their slopes, made with mathjs: `src/algebra/made` holds them
 * ready, so that nothing that ships needs mathjs. For Node alone.
 */
import type { Maker } from "../maker";
import { parse } from "./parser";
import { differentiate } from "./slope";

export { requireFreshTrees } from "./generate";

export const mathjsMaker: Maker = { parse, differentiate };

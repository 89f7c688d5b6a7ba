import { air } from "./air";
import { credits } from "./credits";
import { equipment } from "./equipment";
import { estimate } from "./estimate";
import { flow } from "./flow";
import { instruments } from "./instruments";
import { judging } from "./judging";
import { openings } from "./openings";
import { pairs } from "./pairs";
import { range } from "./range";
import { readingAlong } from "./reading-along";
import { required } from "./required";
import { spread } from "./spread";
import type { Working } from "./working";

/** How each worksheet function works, by its id. */
export const workings: Readonly<Record<string, Working>> = {
  ...openings,
  ...flow,
  ...range,
  ...required,
  ...credits,
  ...equipment,
  ...judging,
  ...spread,
  ...pairs,
  ...air,
  ...instruments,
  ...estimate,
  ...readingAlong,
};

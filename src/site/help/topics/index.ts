import type { Topic } from "../topic";
import { air } from "./air";
import { dwelling } from "./dwelling";
import { equipment } from "./equipment";
import { estimates } from "./estimate";
import { flow } from "./flow";
import { otherInstruments } from "./instruments";
import { judging } from "./judging";
import { openings } from "./openings";
import { pairs } from "./pairs";
import { range } from "./range";
import { readingAlong } from "./reading-along";
import { requiredRates } from "./required";
import { spread } from "./spread";
import { working } from "./working";

/** What the help says of each function. */
export const topics: readonly Topic[] = [
  ...openings,
  ...flow,
  ...range,
  ...requiredRates,
  ...judging,
  ...spread,
  ...pairs,
  ...working,
  ...dwelling,
  ...equipment,
  ...air,
  ...otherInstruments,
  ...estimates,
  ...readingAlong,
];

import type { Topic } from "../topic";
import { flow } from "./flow";
import { judging } from "./judging";
import { openings } from "./openings";
import { range } from "./range";
import { requiredRates } from "./required";

/** What the help says of each function. */
export const topics: readonly Topic[] = [
  ...openings,
  ...flow,
  ...range,
  ...requiredRates,
  ...judging,
];

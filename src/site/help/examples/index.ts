/** A worked example of each worksheet function, by topic. A test runs every one. */
import { air } from "./air";
import { dwelling } from "./dwelling";
import { equipment } from "./equipment";
import type { Example } from "./example";
import { flow } from "./flow";
import { openings } from "./openings";
import { readingAlong } from "./reading-along";
import { required } from "./required";
import { spread } from "./spread";

export type { Example, Sum } from "./example";

export const examples: readonly Example[] = [
  ...openings,
  ...flow,
  ...required,
  ...spread,
  ...readingAlong,
  ...dwelling,
  ...equipment,
  ...air,
];

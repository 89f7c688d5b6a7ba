import type { Need } from "../contract/need";

/** Far above any exponent there is; it catches a constant typed in its place. */
const steepest = 3;

export const exponentNeed: Need = {
  from: -steepest,
  to: steepest,
  notZero: true,
  say: "give 1 for a flow, 0.5 for a pressure, -1 for a time, or what the device's record says",
};

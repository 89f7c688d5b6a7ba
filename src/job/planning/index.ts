/** Planning a box before it is built. */
export {
  approachError,
  type BoxFace,
  freeOfFace,
  type PlacedHole,
} from "./box-face";
export { type BoxPlan, type OpeningPlan, planOpenings } from "./plan-openings";
export { holeSaws, inSixteenths } from "./saws";

import { handOverFunctions } from "../src/job";
import { airDensityOf, airFactorOf, flowConstantOf, standardFlowOf } from "./air";
import {
  balancedRateOf,
  deficitOfRoom,
  deficitRateOf,
  fanRateOf,
  infiltrationOf,
  onRateOf,
} from "./dwelling";
import { designMatchOf, ductLimitOf, makeupAirOf, maxSoneOf, minEfficacyOf } from "./equipment";
import { expectedOpeningOf, fanSizeOf } from "./estimate";
import { boxPressure, flowOf, reach } from "./flow";
import { bagFlowOf, deviceFlowOf, deviceSpreadOf } from "./instruments";
import { acceptFromOf, chanceMetOf, verdictOf } from "./judging";
import { areaFor, diameterFor, openAreaOf, rectAreaOf, roundAreaOf } from "./openings";
import { pairBiasOf, pairConstantOf, pairLimitsOf } from "./pairs";
import { panStatusOf } from "./pan";
import { nextOpeningOf, rangeStatusOf } from "./range";
import { editionsOf, sourceOf } from "./reading-along";
import { dwellingRateOf, roomRateOf } from "./required";
import { areaLimitOf, flowSpreadOf } from "./spread";
import { unboxedEstimateOf, unboxedFlowOf, unboxedSpreadOf } from "./unboxed";
import { workingOf } from "./working";

/** The code behind each function id. Ids never change once released. */
export const implementations: Readonly<Record<string, (...args: never[]) => unknown>> = {
  ROUND_AREA: roundAreaOf,
  RECT_AREA: rectAreaOf,
  OPEN_AREA: openAreaOf,
  AREA_FOR: areaFor,
  DIAMETER_FOR: diameterFor,
  FLOW: flowOf,
  BOX_PRESSURE: boxPressure,
  REACH: reach,
  RANGE_STATUS: rangeStatusOf,
  NEXT_OPENING: nextOpeningOf,
  ROOM_RATE: roomRateOf,
  DWELLING_RATE: dwellingRateOf,
  VERDICT: verdictOf,
  CHANCE_MET: chanceMetOf,
  ACCEPT_FROM: acceptFromOf,
  AREA_LIMIT: areaLimitOf,
  FLOW_SPREAD: flowSpreadOf,
  UNBOXED_FLOW: unboxedFlowOf,
  UNBOXED_SPREAD: unboxedSpreadOf,
  UNBOXED_ESTIMATE: unboxedEstimateOf,
  PAIR_CONSTANT: pairConstantOf,
  PAIR_BIAS: pairBiasOf,
  PAIR_LIMITS: pairLimitsOf,
  WORKING: workingOf,
  INFILTRATION: infiltrationOf,
  FAN_RATE: fanRateOf,
  ON_RATE: onRateOf,
  DEFICIT: deficitOfRoom,
  DEFICIT_RATE: deficitRateOf,
  BALANCED_RATE: balancedRateOf,
  MIN_EFFICACY: minEfficacyOf,
  MAX_SONE: maxSoneOf,
  DUCT_LIMIT: ductLimitOf,
  MAKEUP_AIR: makeupAirOf,
  DESIGN_MATCH: designMatchOf,
  AIR_DENSITY: airDensityOf,
  AIR_FACTOR: airFactorOf,
  STANDARD_FLOW: standardFlowOf,
  FLOW_CONSTANT: flowConstantOf,
  DEVICE_FLOW: deviceFlowOf,
  BAG_FLOW: bagFlowOf,
  DEVICE_SPREAD: deviceSpreadOf,
  PAN_STATUS: panStatusOf,
  FAN_SIZE: fanSizeOf,
  EXPECTED_OPENING: expectedOpeningOf,
  SOURCE: sourceOf,
  EDITIONS: editionsOf,
};

handOverFunctions(implementations);

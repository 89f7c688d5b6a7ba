/** How each of our worksheet functions is written as a native formula. */
import { airDensityWriter, airFactorWriter, flowConstantWriter, standardFlowWriter } from "./air";
import {
  balancedRateWriter,
  deficitRateWriter,
  deficitWriter,
  fanRateWriter,
  infiltrationWriter,
} from "./dwelling";
import {
  designMatchWriter,
  ductLimitWriter,
  makeupAirWriter,
  maxSoneWriter,
  minEfficacyWriter,
} from "./equipment";
import { expectedOpeningWriter, fanSizeWriter } from "./estimate";
import { boxPressureWriter, flowWriter, reachWriter } from "./flow";
import {
  bagFlowWriter,
  deviceFlowWriter,
  deviceSpreadWriter,
  panStatusWriter,
} from "./instruments";
import { acceptFromWriter, chanceMetWriter, verdictWriter } from "./judging";
import {
  areaForWriter,
  diameterForWriter,
  openAreaWriter,
  rectAreaWriter,
  roundAreaWriter,
} from "./openings";
import { pairBiasWriter, pairConstantWriter, pairLimitsWriter } from "./pairs";
import { nextOpeningWriter, rangeStatusWriter } from "./range";
import { dwellingRateWriter, roomRateWriter } from "./required";
import { onRateWriter } from "./running";
import {
  areaLimitWriter,
  flowSpreadWriter,
  unboxedEstimateWriter,
  unboxedFlowWriter,
  unboxedSpreadWriter,
} from "./spread";
import type { Writer } from "./writer";

/** By function id. */
export const writers: Readonly<Record<string, Writer>> = {
  ROUND_AREA: roundAreaWriter,
  RECT_AREA: rectAreaWriter,
  OPEN_AREA: openAreaWriter,
  AREA_FOR: areaForWriter,
  DIAMETER_FOR: diameterForWriter,
  FLOW: flowWriter,
  BOX_PRESSURE: boxPressureWriter,
  REACH: reachWriter,
  RANGE_STATUS: rangeStatusWriter,
  NEXT_OPENING: nextOpeningWriter,
  ROOM_RATE: roomRateWriter,
  DWELLING_RATE: dwellingRateWriter,
  VERDICT: verdictWriter,
  CHANCE_MET: chanceMetWriter,
  ACCEPT_FROM: acceptFromWriter,
  AREA_LIMIT: areaLimitWriter,
  FLOW_SPREAD: flowSpreadWriter,
  UNBOXED_FLOW: unboxedFlowWriter,
  UNBOXED_SPREAD: unboxedSpreadWriter,
  UNBOXED_ESTIMATE: unboxedEstimateWriter,
  PAIR_CONSTANT: pairConstantWriter,
  PAIR_BIAS: pairBiasWriter,
  PAIR_LIMITS: pairLimitsWriter,
  INFILTRATION: infiltrationWriter,
  FAN_RATE: fanRateWriter,
  ON_RATE: onRateWriter,
  DEFICIT: deficitWriter,
  DEFICIT_RATE: deficitRateWriter,
  BALANCED_RATE: balancedRateWriter,
  MIN_EFFICACY: minEfficacyWriter,
  MAX_SONE: maxSoneWriter,
  DUCT_LIMIT: ductLimitWriter,
  MAKEUP_AIR: makeupAirWriter,
  DESIGN_MATCH: designMatchWriter,
  AIR_DENSITY: airDensityWriter,
  AIR_FACTOR: airFactorWriter,
  STANDARD_FLOW: standardFlowWriter,
  FLOW_CONSTANT: flowConstantWriter,
  DEVICE_FLOW: deviceFlowWriter,
  BAG_FLOW: bagFlowWriter,
  DEVICE_SPREAD: deviceSpreadWriter,
  PAN_STATUS: panStatusWriter,
  FAN_SIZE: fanSizeWriter,
  EXPECTED_OPENING: expectedOpeningWriter,
};

/** Functions whose result is a text to read: the copy keeps the text. */
export const textFunctions: ReadonlySet<string> = new Set(["WORKING", "SOURCE", "EDITIONS"]);

import { boxPressure, flowOf, reach } from "./flow";
import { verdictOf } from "./judging";
import { areaFor, diameterFor, openAreaOf, rectAreaOf, roundAreaOf } from "./openings";
import { nextOpeningOf, rangeStatusOf } from "./range";
import { dwellingRateOf, roomRateOf } from "./required";

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
};

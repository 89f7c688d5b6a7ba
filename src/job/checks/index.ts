/** The checks on a job, one a file. The order is that of a tester's own look down the sheet. */
import { checkBalance, checkSupplyRead, checkSystem } from "./balance";
import { checkBoxDates } from "./box-checks";
import { checkCellTypes } from "./cell-types";
import type { Check } from "./check";
import { checkComputedCells } from "./computed-cells";
import { checkHouse, checkSeats } from "./conditions";
import { checkConstants } from "./constants";
import { checkDwellingRates } from "./dwelling-rates";
import { checkDwellingSize } from "./dwelling-size";
import { checkEditionDay } from "./edition-day";
import { checkEquipment } from "./equipment";
import { checkFanRates } from "./fan-rates";
import { checkFansAgain } from "./fans-again";
import { checkFirmOpenings } from "./firm/openings";
import { checkFirmRates } from "./firm/required";
import { checkFirmVerdicts } from "./firm/verdict";
import { checkFlowsAlike } from "./flows-alike";
import { checkIdentity } from "./identity";
import { checkInstruments } from "./instruments";
import { checkMakeupUnsaid } from "./makeup-unsaid";
import { checkNotes } from "./notes";
import { checkOldRecords } from "./old-records";
import { checkOpeningSizes } from "./opening-sizes";
import { checkOpeningsInUse } from "./openings-in-use";
import { checkPressureBlank } from "./pressure-blank";
import { checkPressureRepeated } from "./pressure-repeated";
import { checkPressureUnit } from "./pressure-unit";
import { checkPressureWindow } from "./pressure-window";
import { checkProofs, checkProvedConstants } from "./proof-of-box";
import { checkRating } from "./rating";
import { checkReadingsApart } from "./readings-apart";
import { checkReadingsCopied } from "./readings-copied";
import { checkRegisters } from "./registers";
import { checkRetests, checkReviews } from "./retests";
import { checkRooms } from "./rooms";
import { checkSampling } from "./sampling";
import { checkCosts, checkSchedule } from "./schedule";
import { checkSettings } from "./settings";
import { checkSmallHoles } from "./small-holes";
import { checkStaleValues } from "./stale-values";
import { checkTwoOpenings } from "./two-openings";
import { checkUnusualSettings } from "./unusual-settings";
import { checkWhoAndWhen } from "./who-and-when";
import { checkWholeHouse } from "./whole-house";

export type { Check, CheckContext } from "./check";
export { checkSettings };

export const checks: readonly Check[] = [
  checkSettings,
  checkEditionDay,
  checkSampling,
  checkIdentity,
  checkDwellingSize,
  checkRooms,
  checkOpeningSizes,
  checkOpeningsInUse,
  checkSmallHoles,
  checkBoxDates,
  checkProofs,
  checkProvedConstants,
  checkInstruments,
  checkConstants,
  checkPressureBlank,
  checkPressureWindow,
  checkPressureUnit,
  checkReadingsApart,
  checkTwoOpenings,
  checkPressureRepeated,
  checkCellTypes,
  checkFanRates,
  checkDwellingRates,
  checkWholeHouse,
  checkBalance,
  checkSupplyRead,
  checkSystem,
  checkRating,
  checkEquipment,
  checkMakeupUnsaid,
  checkSchedule,
  checkCosts,
  checkComputedCells,
  checkStaleValues,
  checkRegisters,
  checkNotes,
  checkHouse,
  checkSeats,
  checkUnusualSettings,
  checkReadingsCopied,
  checkFansAgain,
  checkFlowsAlike,
  checkOldRecords,
  checkWhoAndWhen,
  checkFirmOpenings,
  checkFirmRates,
  checkFirmVerdicts,
  checkRetests,
  checkReviews,
];

/**
 * What a check looks at beside a reading and those of its dwelling: cells that need not be of any
 * table, or the whole job. All others are made again only for the dwellings that an edit bears on.
 */
export const reachOf: ReadonlyMap<Check, "cells" | "job"> = new Map<Check, "cells" | "job">([
  [checkStaleValues, "cells"],
  ...[
    checkSettings,
    checkEditionDay,
    checkSampling,
    checkIdentity,
    checkBoxDates,
    checkPressureRepeated,
    checkComputedCells,
    checkUnusualSettings,
    checkReadingsCopied,
    checkFansAgain,
    checkFlowsAlike,
    checkOldRecords,
  ].map((check) => [check, "job"] as const),
]);

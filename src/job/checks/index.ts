/** The checks on a job, one a file. The order is that of a tester's own look down the sheet. */
import { checkBoxDates } from "./box-checks";
import { checkCellTypes } from "./cell-types";
import type { Check } from "./check";
import { checkComputedCells } from "./computed-cells";
import { checkConstants } from "./constants";
import { checkDwellingSize } from "./dwelling-size";
import { checkIdentity } from "./identity";
import { checkOpeningSizes } from "./opening-sizes";
import { checkOpeningsInUse } from "./openings-in-use";
import { checkPressureBlank } from "./pressure-blank";
import { checkPressureRepeated } from "./pressure-repeated";
import { checkPressureUnit } from "./pressure-unit";
import { checkPressureWindow } from "./pressure-window";
import { checkRates } from "./rates";
import { checkRating } from "./rating";
import { checkReadingsApart } from "./readings-apart";
import { checkRooms } from "./rooms";
import { checkSettings } from "./settings";
import { checkStaleValues } from "./stale-values";
import { checkWhoAndWhen } from "./who-and-when";

export type { Check, CheckContext } from "./check";

export const checks: readonly Check[] = [
  checkSettings,
  checkIdentity,
  checkDwellingSize,
  checkRooms,
  checkOpeningSizes,
  checkOpeningsInUse,
  checkBoxDates,
  checkConstants,
  checkPressureBlank,
  checkPressureWindow,
  checkPressureUnit,
  checkReadingsApart,
  checkPressureRepeated,
  checkCellTypes,
  checkRates,
  checkRating,
  checkComputedCells,
  checkStaleValues,
  checkWhoAndWhen,
];

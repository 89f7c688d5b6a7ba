import { addAggregates } from "./aggregate";
import { addArrays } from "./arrays";
import { addConditional } from "./conditional";
import { addDates, type Calendar } from "./dates";
import { addInformation } from "./information";
import { addLookup } from "./lookup";
import { addMath } from "./math";
import { Natives } from "./natives";
import { addStatistics } from "./statistics";
import { addText } from "./text";

/** Every native function, for a workbook's calendar. */
export function nativeFunctions(calendar: Calendar): Natives {
  const natives = new Natives();
  addMath(natives);
  addAggregates(natives);
  addConditional(natives);
  addStatistics(natives);
  addLookup(natives);
  addArrays(natives);
  addText(natives);
  addDates(natives, calendar);
  addInformation(natives);
  return natives;
}

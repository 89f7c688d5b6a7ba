import { addAggregates } from "./aggregate";
import { addArrays } from "./arrays";
import { addConditional } from "./conditional";
import { addConvert } from "./convert";
import { addDates, type Calendar } from "./dates";
import { addDiscrete } from "./discrete";
import { addFinance } from "./finance";
import { addFrequency } from "./frequency";
import { addInformation } from "./information";
import { addLibrary } from "./library";
import { addLookup } from "./lookup";
import { addMath } from "./math";
import { addMatrices } from "./matrices";
import { Natives } from "./natives";
import { addRegression } from "./regression";
import { addStatistics } from "./statistics";
import { addText } from "./text";
import { addTextAround } from "./text-around";

/** Every native function, for a workbook's calendar. */
export function nativeFunctions(calendar: Calendar): Natives {
  const natives = new Natives();
  addMath(natives);
  addAggregates(natives);
  addConditional(natives);
  addStatistics(natives);
  addLookup(natives);
  addArrays(natives);
  addText(natives, calendar);
  addDates(natives, calendar);
  addInformation(natives);
  addLibrary(natives);
  addConvert(natives);
  addFinance(natives);
  addDiscrete(natives);
  addRegression(natives);
  addMatrices(natives);
  addFrequency(natives);
  addTextAround(natives);
  return natives;
}

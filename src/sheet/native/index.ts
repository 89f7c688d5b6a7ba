import { addAggregates } from "./aggregate";
import { addArrays } from "./arrays";
import { addConditional } from "./conditional";
import { addConvert } from "./convert";
import { addDates, type Calendar } from "./dates";
import { addDiscrete } from "./discrete";
import { addFinance } from "./finance";
import { addInformation } from "./information";
import { addLibrary } from "./library";
import { addLookup } from "./lookup";
import { addMath } from "./math";
import { Natives } from "./natives";
import { addRegression } from "./regression";
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
  addText(natives, calendar);
  addDates(natives, calendar);
  addInformation(natives);
  addLibrary(natives);
  addConvert(natives);
  addFinance(natives);
  addDiscrete(natives);
  addRegression(natives);
  return natives;
}

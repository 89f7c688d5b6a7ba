import { worksheetFunctions } from "../functions";
import { inStoredForm, SheetModel } from "../src/sheet";
import type { Workbook } from "../src/workbook";

/** What a firm asked the functions beside its job; where the rules give no number they say why. */
const asked: readonly (readonly [question: string, formula: string])[] = [
  [
    "A timer with half an hour on in each hour, ASHRAE 62.2-2016",
    'FANROW.ON_RATE("62.2-2016",62,0.5,1)',
  ],
  [
    "The same timer with six hours from one start to the next",
    'FANROW.ON_RATE("62.2-2016",62,0.5,6)',
  ],
  [
    "Leakage of an existing house counted under ASHRAE 62.2-2010",
    'FANROW.FAN_RATE("62.2-2010",48,61,1,"no","existing","ip",1800)',
  ],
  [
    "So little left after the credit in an existing house",
    'FANROW.WORKING("FAN_RATE","62.2-2016",48,40,1,"no","existing")',
  ],
  ["Loudest rating of a hood of 620 cfm", 'FANROW.MAX_SONE("62.2-2019","on demand",620)'],
  [
    "A toilet compartment of a manufactured home",
    'FANROW.ROOM_RATE("HUD-3280","toilet","on demand")',
  ],
  [
    "A studio of 600 ft² by the equation, IRC 2021",
    'FANROW.DWELLING_RATE("IRC-2021",600,0,"equation")',
  ],
  [
    "A hood of 620 cfm where nobody looked for an open flue, IRC 2021",
    'FANROW.MAKEUP_AIR("IRC-2021",620)',
  ],
  ["The same hood in Florida", 'FANROW.WORKING("MAKEUP_AIR","FL-2023",620)'],
  [
    "A continuous fan in a kitchen of which nothing else is said",
    'FANROW.ROOM_RATE("62.2-2019","kitchen","continuous",900)',
  ],
  ["The chance that 52 cfm, ± 2, meets 50, from three readings", "FANROW.CHANCE_MET(52,2,50,2)"],
  ["The same from many readings", "FANROW.CHANCE_MET(52,2,50)"],
  [
    "The next opening for 16 Pa in 24 in², in a window of 5 to 8 Pa",
    'FANROW.NEXT_OPENING(16,24,{"A","B","C"},{9.4,15.9,23.8},,,5,8)',
  ],
  [
    "Where the next reading of a box may lie that five pairs prove, in percent",
    'FANROW.WORKING("PAIR_LIMITS",{50;61;70;82;95},{51;60;72;81;97})',
  ],
  ["Air of a damp room whose humidity was typed as a share", "FANROW.AIR_DENSITY(68,0.5,24.5)"],
  [
    "How many numbers the editions hold, each with mark, source and day",
    "ROWS(FANROW.EDITIONS())-1",
  ],
];

/** Adds the sheet of questions, with the values that its formulas give. */
export function addQuestions(workbook: Workbook): void {
  const heading = workbook.addStyle({ bold: true, fill: "1F4E4A", color: "FFFFFF" });
  const name = "Questions";
  workbook.addSheet(name, {
    rows: [
      ["Question", "Answer"].map((value) => ({ value, style: heading })),
      ...asked.map(([value, formula]) => [
        { value },
        { formula: inStoredForm(formula, worksheetFunctions) },
      ]),
    ],
    columnWidths: [64, 60],
    frozenRows: 1,
  });
  new SheetModel(workbook, worksheetFunctions).recalculateAll();
}

/** What only a person can try: a step to do, and what must be seen. */
export interface Prompt {
  readonly name: string;
  readonly step: string;
  readonly seen: string;
}

export const prompts: readonly Prompt[] = [
  {
    name: "typing while the pane checks",
    step: "Press Check, and at once type 12 into any empty cell without pressing Enter for five seconds; then press Enter.",
    seen: "12 stands in the cell, and the pane did not interrupt.",
  },
  {
    name: "many edits at once",
    step: "Copy a cell and paste it over 300 cells of a test sheet, with the pane's results in view.",
    seen: "The pane follows within two seconds and Excel stays quick.",
  },
  {
    name: "another sheet",
    step: "Go to another sheet tab, and look at Rates in the pane.",
    seen: "The pane speaks of the cell selected on that sheet.",
  },
  {
    name: "undo with marks on",
    step: "Mark the findings, type a number into an empty cell away from the list, wait until the pane is done, then press Ctrl+Z once.",
    seen: "The number is gone: nothing of the pane's stood between.",
  },
  {
    name: "a filter",
    step: "Filter the Fans sheet by one dwelling and press Check.",
    seen: "The pane says that the sheet is filtered, and finds the same as before.",
  },
  {
    name: "close and reopen",
    step: "Close the pane, open it again from the Home tab.",
    seen: "It opens within a few seconds and checks the same workbook.",
  },
  {
    name: "save and open again",
    step: "Save the workbook, close it, open it.",
    seen: "Functions show their values, no #NAME?.",
  },
  {
    name: "help",
    step: "Start typing =FANROW. in a cell, pick FLOW, and follow the help link.",
    seen: "The list shows the functions with their descriptions, and the page of FLOW opens.",
  },
];

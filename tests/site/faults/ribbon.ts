import type { Fault } from "./fault";

/** Faults in what a manifest puts on the ribbon. */
export const inRibbon: readonly Fault[] = [
  [
    "an unknown tab",
    'OfficeTab id="TabHome"',
    'OfficeTab id="TabHoem"',
    "OfficeTab",
    "TabHoem",
    "TabHome",
  ],
  ["a control id taken twice", 'id="Fanrow.Check"', 'id="Fanrow.Open"', "Control", "used twice"],
  [
    "an action that no code gives",
    "checkSheet",
    "checkSheets",
    "FunctionName",
    "checkSheets",
    "associate",
  ],
  [
    "a pane id",
    '<Action xsi:type="ShowTaskpane">',
    '<Action xsi:type="ShowTaskpane"><TaskpaneId>Pane1</TaskpaneId>',
    "TaskpaneId",
    "take the TaskpaneId out",
  ],
  [
    "a pane apart from the runtime's page",
    '<Action xsi:type="ShowTaskpane"><SourceLocation resid="Page.Url" />',
    '<Action xsi:type="ShowTaskpane"><SourceLocation resid="Functions.Script.Url" />',
    "of Action",
    'resid="Page.Url"',
  ],
  [
    "a function file apart from the runtime's page",
    '<FunctionFile resid="Page.Url" />',
    '<FunctionFile resid="Functions.Script.Url" />',
    "FunctionFile",
    'resid="Page.Url"',
  ],
  [
    "a button that runs a function without a function file",
    '<FunctionFile resid="Page.Url" />',
    "",
    "FunctionFile",
    "missing",
  ],
  [
    "the ribbon before the functions' form factor",
    "<Runtimes>",
    "<DesktopFormFactor /><Runtimes>",
    "Runtimes",
    "stands after DesktopFormFactor",
  ],
  [
    "a long tip",
    'DefaultValue="Opens the pane."',
    `DefaultValue="${"x".repeat(251)}"`,
    "String",
    "LongStrings holds 250",
  ],
  [
    "a label that leads to a long string",
    '<Group id="Fanrow.Group">\n                <Label resid="Pane.Label" />',
    '<Group id="Fanrow.Group">\n                <Label resid="Pane.Tip" />',
    "Label",
    "one of ShortStrings",
  ],
];

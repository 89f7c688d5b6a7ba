import type { Fault } from "./fault";

const pageOf = (action: string) => `<Action xsi:type="${action}">
                    <SourceLocation resid="Page.Url" />`;

const checkTip = `<Supertip>
                    <Title resid="Check.Label" />
                    <Description resid="Check.Tip" />
                  </Supertip>`;

/** Faults in what a manifest puts on the ribbon and into the cells' menu. */
export const inRibbon: readonly Fault[] = [
  [
    "an unknown tab",
    'OfficeTab id="TabHome"',
    'OfficeTab id="TabHoem"',
    "OfficeTab",
    "TabHoem",
    "TabHome",
  ],
  [
    "an unknown menu",
    'OfficeMenu id="ContextMenuCell"',
    'OfficeMenu id="ContextMenuRow"',
    "OfficeMenu",
    "ContextMenuRow",
    "ContextMenuCell",
  ],
  [
    "two entries in one menu of Excel",
    "</OfficeMenu>",
    '<Control xsi:type="Button" id="Fanrow.More" /></OfficeMenu>',
    "OfficeMenu",
    "takes one",
  ],
  ["a control id taken twice", 'id="Fanrow.Check"', 'id="Fanrow.Open"', "Control", "used twice"],
  [
    "a control id taken twice, on the ribbon and in the menu",
    'id="Fanrow.Rates"',
    'id="Fanrow.Check"',
    "Control",
    "used twice",
  ],
  ["a control without an id", ' id="Fanrow.Check"', "", "Control", "has no id"],
  [
    "an action that no code gives",
    "<FunctionName>checkWorkbook",
    "<FunctionName>checkWorkbooks",
    "FunctionName",
    "checkWorkbooks",
    "associate",
  ],
  [
    "an action without a function name",
    "<FunctionName>showRates</FunctionName>",
    "",
    "Action",
    "has no FunctionName",
  ],
  [
    "a kind of action that Excel does not know",
    pageOf("ShowTaskpane"),
    pageOf("ShowTaskPane"),
    "Action",
    "ShowTaskPane",
    "ShowTaskpane, ExecuteFunction",
  ],
  [
    "a kind of control that Excel does not know",
    '"Button" id="Fanrow.Open"',
    '"button" id="Fanrow.Open"',
    "Control",
    '"button"',
  ],
  [
    "a place that Excel does not know",
    '"PrimaryCommandSurface"',
    '"PrimarySurface"',
    "ExtensionPoint",
    '"PrimarySurface"',
  ],
  ["a button without a tip", checkTip, "", "Control", "has no Supertip"],
  [
    "a tip without a text",
    checkTip,
    checkTip.replace(/<Description.*>/, ""),
    "Supertip",
    "has no Description",
  ],
  [
    "a tip with its title last",
    checkTip,
    '<Supertip><Description resid="Check.Tip" /><Title resid="Check.Label" /></Supertip>',
    "Title",
    "stands after Description",
  ],
  [
    "a button without a label",
    '<Label resid="Open.Label" />',
    "",
    'Control id="Fanrow.Open"',
    "has no Label",
  ],
  [
    "a group without a label",
    '<Label resid="Group.Label" />',
    "",
    'Group id="Fanrow.Group"',
    "has no Label",
  ],
  [
    "a welcome without a way to learn more",
    '<LearnMoreUrl resid="GetStarted.Url" />',
    "",
    "GetStarted",
    "has no LearnMoreUrl",
  ],
  [
    "a welcome that leads to a page not built",
    "https://localhost:3443/index.html",
    "https://localhost:3443/start.html",
    "GetStarted.Url",
    "start.html",
  ],
  [
    "a pane id",
    pageOf("ShowTaskpane"),
    '<Action xsi:type="ShowTaskpane"><TaskpaneId>Pane1</TaskpaneId><SourceLocation resid="Page.Url" />',
    "TaskpaneId",
    "take the TaskpaneId out",
  ],
  [
    "a pane without a page",
    pageOf("ShowTaskpane"),
    '<Action xsi:type="ShowTaskpane">',
    "Action",
    "has no SourceLocation",
  ],
  [
    "a pane apart from the runtime's page",
    pageOf("ShowTaskpane"),
    '<Action xsi:type="ShowTaskpane"><SourceLocation resid="GetStarted.Url" />',
    "of Action",
    'resid="Page.Url"',
  ],
  [
    "a first page apart from the runtime's",
    '<SourceLocation DefaultValue="https://localhost:3443/pane.html" />',
    '<SourceLocation DefaultValue="https://localhost:3443/index.html" />',
    "SourceLocation of DefaultSettings",
    "write https://localhost:3443/pane.html",
  ],
  [
    "a function file apart from the runtime's page",
    '<FunctionFile resid="Page.Url" />',
    '<FunctionFile resid="GetStarted.Url" />',
    "FunctionFile",
    'resid="Page.Url"',
  ],
  [
    "buttons that run a function without a function file",
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
    'id="Open.Tip" DefaultValue="',
    `id="Open.Tip" DefaultValue="${"x".repeat(250)}`,
    "String",
    "LongStrings holds 250",
  ],
  [
    "a label that leads to a long string",
    '<Label resid="Group.Label" />',
    '<Label resid="Open.Tip" />',
    "Label",
    "one of ShortStrings",
  ],
];

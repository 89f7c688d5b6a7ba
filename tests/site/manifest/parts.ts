// What Office asks of an add-in only manifest, after Microsoft's published manifest reference.

/**
 * The children of an element, by its name, its name and type, or the names above it. They stand in
 * this order, or Office refuses the manifest; "!" marks what the element cannot do without.
 */
export const children: Readonly<Record<string, string>> = {
  OfficeApp:
    "Id! AlternateId Version! ProviderName! DefaultLocale! DisplayName! Description! IconUrl! HighResolutionIconUrl! SupportUrl! AppDomains Hosts! Requirements! DefaultSettings! Permissions! VersionOverrides! ExtendedOverrides",
  Hosts: "Host!",
  Requirements: "Sets!",
  DefaultSettings: "SourceLocation!",
  VersionOverrides:
    "Description Requirements Hosts! Resources! WebApplicationInfo EquivalentAddins VersionOverrides",
  "VersionOverrides/Hosts/Host": "Runtimes! AllFormFactors! DesktopFormFactor",
  Runtimes: "Runtime!",
  AllFormFactors: "ExtensionPoint!",
  DesktopFormFactor: "GetStarted FunctionFile ExtensionPoint",
  GetStarted: "Title! Description! LearnMoreUrl!",
  "ExtensionPoint/CustomFunctions": "Script! Page! Metadata! Namespace!",
  "ExtensionPoint/ContextMenu": "OfficeMenu!",
  OfficeTab: "Group!",
  OfficeMenu: "Control!",
  Resources: "Images Urls! ShortStrings! LongStrings",
  Group: "OverriddenByRibbonApi Label! Icon! Control!",
  "Control/Button": "OverriddenByRibbonApi Label! Supertip! Icon! Action! Enabled",
  "Control/Menu": "OverriddenByRibbonApi Label! Supertip! Icon! Items!",
  Items: "Item!",
  Item: "OverriddenByRibbonApi Label! Supertip! Icon Action! Enabled",
  Supertip: "Title! Description!",
  "Action/ShowTaskpane": "SourceLocation! Title",
  "Action/ExecuteFunction": "FunctionName!",
};

/** Types that Excel knows, of the elements that have one. */
export const types: Readonly<Record<string, string>> = {
  ExtensionPoint: "CustomFunctions PrimaryCommandSurface ContextMenu",
  Control: "Button Menu",
  Action: "ShowTaskpane ExecuteFunction",
};

/** Which list of Resources an element's resid must lead to. */
export const lists: Readonly<Record<string, string>> = {
  Image: "Images",
  Runtime: "Urls",
  SourceLocation: "Urls",
  FunctionFile: "Urls",
  LearnMoreUrl: "Urls",
  Namespace: "ShortStrings",
  Label: "ShortStrings",
  Title: "ShortStrings",
  Description: "LongStrings",
};

/** Excel's own menus that take an entry, one each. */
export const menus = "ContextMenuCell ContextMenuText";

/** The tabs of Excel's ribbon that an add-in may add a group to. */
export const tabs =
  "TabHome TabInsert TabPageLayoutExcel TabFormulas TabData TabReview TabView TabDeveloper TabAddIns TabPrintPreview TabBackgroundRemoval";

/** Icon sizes, px, that every group and button must give. */
export const iconSizes = ["16", "32", "80"] as const;

/** The API sets, and the least version of each, without which functions and pane do not work. */
export const requirementSets = { SharedRuntime: "1.1", CustomFunctionsRuntime: "1.3" } as const;

/** Characters of a text or an id, by the list or element that holds it. */
export const longest: Readonly<Record<string, number>> = {
  resid: 32,
  ShortStrings: 125,
  LongStrings: 250,
  ProviderName: 125,
  DisplayName: 125,
  Description: 250,
  url: 2048,
};

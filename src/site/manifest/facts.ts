// What Office asks of an add-in only manifest, after Microsoft's published manifest reference.

/** The order of children, where Office refuses a manifest for it. */
export const orders: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: [
    "Id",
    "AlternateId",
    "Version",
    "ProviderName",
    "DefaultLocale",
    "DisplayName",
    "Description",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings",
    "Permissions",
    "VersionOverrides",
    "ExtendedOverrides",
  ],
  VersionOverrides: [
    "Description",
    "Requirements",
    "Hosts",
    "Resources",
    "WebApplicationInfo",
    "EquivalentAddins",
    "VersionOverrides",
  ],
  "VersionOverrides/Hosts/Host": ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  "ExtensionPoint/CustomFunctions": ["Script", "Page", "Metadata", "Namespace"],
  Resources: ["Images", "Urls", "ShortStrings", "LongStrings"],
  Group: ["OverriddenByRibbonApi", "Label", "Icon", "Control"],
  "Control/Button": ["OverriddenByRibbonApi", "Label", "Supertip", "Icon", "Action", "Enabled"],
  "Control/Menu": ["OverriddenByRibbonApi", "Label", "Supertip", "Icon", "Items"],
  Item: ["OverriddenByRibbonApi", "Label", "Supertip", "Icon", "Action", "Enabled"],
  Supertip: ["Title", "Description"],
  "Action/ShowTaskpane": ["SourceLocation", "Title"],
};

/** Elements without which the add-in does not load, or loads without its functions. */
export const required: readonly (readonly string[])[] = [
  ["Id"],
  ["Version"],
  ["ProviderName"],
  ["DefaultLocale"],
  ["DisplayName"],
  ["Description"],
  ["IconUrl"],
  ["HighResolutionIconUrl"],
  ["SupportUrl"],
  ["Hosts", "Host"],
  ["Requirements", "Sets"],
  ["DefaultSettings", "SourceLocation"],
  ["Permissions"],
  ["VersionOverrides", "Hosts", "Host", "Runtimes", "Runtime"],
  ["VersionOverrides", "Hosts", "Host", "AllFormFactors", "ExtensionPoint"],
  ["VersionOverrides", "Resources", "Urls"],
  ["VersionOverrides", "Resources", "ShortStrings"],
];

/** What an element cannot do without, apart from its icon. */
export const neededParts: Readonly<Record<string, readonly string[]>> = {
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  "ExtensionPoint/ContextMenu": ["OfficeMenu"],
  OfficeTab: ["Group"],
  OfficeMenu: ["Control"],
  Group: ["Label", "Control"],
  "Control/Button": ["Label", "Supertip", "Action"],
  "Control/Menu": ["Label", "Supertip", "Items"],
  Items: ["Item"],
  Item: ["Label", "Supertip", "Action"],
  Supertip: ["Title", "Description"],
  "Action/ShowTaskpane": ["SourceLocation"],
  "Action/ExecuteFunction": ["FunctionName"],
};

/** Types that Excel knows, of the elements that have one. */
export const knownTypes: Readonly<Record<string, readonly string[]>> = {
  ExtensionPoint: ["CustomFunctions", "PrimaryCommandSurface", "ContextMenu"],
  Control: ["Button", "Menu"],
  Action: ["ShowTaskpane", "ExecuteFunction"],
};

/** Excel's own menus that take an entry, one each. */
export const officeMenus: readonly string[] = ["ContextMenuCell", "ContextMenuText"];

/** The tabs of Excel's ribbon that an add-in may add a group to. */
export const excelTabs: readonly string[] = [
  "TabHome",
  "TabInsert",
  "TabPageLayoutExcel",
  "TabFormulas",
  "TabData",
  "TabReview",
  "TabView",
  "TabDeveloper",
  "TabAddIns",
  "TabPrintPreview",
  "TabBackgroundRemoval",
];

/** Icon sizes, px, that every group and button must give. */
export const iconSizes: readonly string[] = ["16", "32", "80"];

/** The API sets without which the functions and the pane cannot share one runtime. */
export const requirementSets: readonly string[] = ["SharedRuntime", "CustomFunctionsRuntime"];

export const longest = { resid: 32, shortString: 125, longString: 250, url: 2048 } as const;

import { namespace } from "../../../functions";
import * as office from "./parts";
import { at, childrenOf, type Element, named } from "./xml";

/** A manifest with what it is checked against. */
export interface Checked {
  readonly root: Element;
  /** Files of the built site, relative to its address, with forward slashes. */
  readonly builtFiles: ReadonlySet<string>;
  /** Names that the site's code has given to `Office.actions.associate`. */
  readonly actions: readonly string[];
  /** The address that every URL begins with, ending in a slash. */
  readonly address: string;
}

/** What is wrong with an element, and the mend: "what; mend". False where nothing is. */
type Faults = (element: Element, manifest: Checked) => readonly (string | false)[];

const attribute = ({ attributes }: Element, name: string) => attributes.get(name);
const typeOf = (element: Element) => attribute(element, "type");
const textOf = (element: Element) => (attribute(element, "DefaultValue") ?? element.text).trim();
const oneOf = (names: string) => names.split(" ").join(", ");
const holds = (names: string, name = "") => names.split(" ").includes(name);
/** What the resid of an element leads to. */
const resource = (root: Element, resid: string | undefined) =>
  at(root, "VersionOverrides", "Resources")
    ?.children.flatMap((list) => list.children)
    .find((each) => attribute(each, "id") === resid);
const pageOf = (root: Element) => {
  const [runtime] = named(root, "Runtime");
  return runtime && attribute(runtime, "resid");
};

const length = (text: string, limit = Number.POSITIVE_INFINITY) =>
  text.length > limit && `${text.length} characters; shorten it to ${limit} or fewer`;

const headText: Faults = (element) => [
  element.parent?.name === "OfficeApp" && length(textOf(element), office.longest[element.name]),
  textOf(element) === "" &&
    element.parent?.name === "OfficeApp" &&
    "DefaultValue is missing or blank; give it a text",
];

/** Whatever opens a page must open the page of the runtime. */
const page: Faults = (element, { root }) => {
  const shared = pageOf(root);
  const opens =
    element.name === "FunctionFile" ||
    element.parent?.name === "Page" ||
    (element.parent?.name === "Action" && typeOf(element.parent) === "ShowTaskpane");
  const url = resource(root, shared);
  return [
    opens &&
      shared !== undefined &&
      attribute(element, "resid") !== shared &&
      `not the page of the runtime; use resid="${shared}"`,
    // The page that an Excel without add-in commands opens.
    element.parent?.name === "DefaultSettings" &&
      url !== undefined &&
      textOf(element) !== textOf(url) &&
      `not the page of the runtime; write ${textOf(url)}`,
  ];
};

/** Every URL is https, begins with the site's address and names a file that was built. */
const url: Faults = (element, { address, builtFiles }) =>
  [textOf(element), ...element.children.map((child) => attribute(child, "Value") ?? "")]
    .filter((text) => text !== "")
    .map((text) => {
      if (!URL.canParse(text)) return `${text} is not a URL; write it in full`;
      if (new URL(text).protocol !== "https:")
        return `${text} is not https; Office refuses it, write https://`;
      if (element.name === "AppDomain") return false;
      const most = office.longest.url as number;
      if (text.length > most) return `${text} is longer than ${most} characters; shorten it`;
      if (!text.startsWith(address))
        return `${text} lies outside ${address}; serve the file from there`;
      const file = text.slice(address.length).replace(/[?#].*$/, "");
      return !builtFiles.has(file) && `${text} has no built file; build ${file} or mend the URL`;
    });

/** A text, image or URL of Resources. */
const kept: Faults = (element, { root }) => {
  const list = element.parent;
  if (list?.parent?.name !== "Resources") return [];
  const id = attribute(element, "id") ?? "";
  const tooLong = length(id, office.longest.resid);
  const limit = office.longest[list.name];
  const first = resource(root, id);
  return [
    first !== element && "the id is taken; give each its own",
    tooLong && `the id has ${tooLong}`,
    limit !== undefined &&
      textOf(element).length > limit &&
      `the text has ${textOf(element).length} characters; ${list.name} holds ${limit} or fewer`,
    textOf(element) === "" && "DefaultValue is blank; fill it in",
  ];
};

const leads: Faults = (element, { root }) => {
  const resid = attribute(element, "resid");
  if (resid === undefined) return [];
  const target = resource(root, resid);
  const wanted = office.lists[element.name];
  const tooLong = length(resid, office.longest.resid);
  return [
    tooLong && `the resid has ${tooLong}`,
    !target && `Resources has no "${resid}"; add it or mend the name`,
    target !== undefined &&
      wanted !== undefined &&
      target.parent?.name !== wanted &&
      `"${resid}" is among ${target.parent?.name}; it must be one of ${wanted}`,
  ];
};

/** The parts of an element: those it must have, in their order. */
const parts: Faults = (element) => {
  const path = [element.parent?.parent?.name, element.parent?.name, element.name].join("/");
  const words =
    office.children[path] ??
    office.children[`${element.name}/${typeOf(element)}`] ??
    office.children[element.name];
  const order = words?.replaceAll("!", "").split(" ") ?? [];
  const missing = (words?.match(/\w+(?=!)/g) ?? []).filter((name) => !at(element, name));
  let furthest = -1;
  const late = element.children.find(({ name }) => {
    const place = order.indexOf(name);
    if (place >= 0 && place < furthest) return true;
    furthest = Math.max(furthest, place);
    return false;
  });
  return [
    ...missing.map((name) => `has no ${name}; add one`),
    late !== undefined &&
      `${late.name} stands after ${order[furthest]} in it; the order is ${order.join(", ")}`,
  ];
};

const id: Faults = (element, { root }) => {
  const own = attribute(element, "id");
  const alike = named(root, ...(element.name === "Group" ? ["Group"] : ["Control", "Item"]));
  const first = alike.find((each) => attribute(each, "id") === own);
  return [
    own === undefined && "has no id; give it one",
    own !== undefined && first !== element && "the id is used twice; give each its own",
  ];
};

const icons: Faults = (element) => {
  const icon = at(element, "Icon");
  const sizes = childrenOf(icon, "Image").map((image) => attribute(image, "size"));
  return office.iconSizes.map(
    (size) =>
      icon !== undefined &&
      !sizes.includes(size) &&
      `Icon lacks ${size} px; add an Image of size="${size}"`,
  );
};

const guid = /^\{?[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\}?$/i;

/** What is asked of elements by their names; "*" of all. */
export const faults: readonly (readonly [names: string, Faults])[] = [
  ["*", parts],
  ["*", leads],
  ["*", kept],
  [
    "*",
    (each, { root }) => [
      each === root &&
        (each.name !== "OfficeApp" || typeOf(each) !== "TaskPaneApp") &&
        'the manifest must be an OfficeApp with xsi:type="TaskPaneApp"; set both',
    ],
  ],
  [
    "Id",
    (each) => [
      !guid.test(textOf(each)) && "not a GUID; write 8-4-4-4-12 hexadecimal digits",
      /^\{?[0-]+\}?$/.test(textOf(each)) && "all zeros is shared by nobody; make a new GUID",
    ],
  ],
  [
    "Version",
    (each) => [
      !/^\d{1,5}(\.\d{1,5}){3}$/.test(textOf(each)) && "write four numbers, such as 1.0.0.0",
      /^0+\./.test(textOf(each)) && "Office takes 1.0.0.0 or later; raise the first number",
    ],
  ],
  ["ProviderName DisplayName Description", headText],
  ["TaskpaneId", () => ["splits the pane from the shared runtime; take the TaskpaneId out"]],
  [
    "Host",
    (host) => [
      (attribute(host, "Name") ?? typeOf(host)) !== "Workbook" &&
        'the functions run in Excel only; set Name="Workbook", and xsi:type in VersionOverrides',
    ],
  ],
  [
    "Requirements",
    (each) =>
      Object.entries(office.requirementSets).map(
        ([name, least]) =>
          !named(each, "Set").some(
            (set) => attribute(set, "Name") === name && attribute(set, "MinVersion") === least,
          ) &&
          `${name} is missing or in another version; give <Set Name="${name}" MinVersion="${least}"/>`,
      ),
  ],
  [
    "Runtime",
    (each) => [
      attribute(each, "lifetime") !== "long" && 'a shared runtime lives on; set lifetime="long"',
    ],
  ],
  [
    "Runtimes",
    ({ children: { length: count } }) => [
      count > 1 && `${count} runtimes; keep one, shared by functions and pane`,
    ],
  ],
  ["FunctionFile SourceLocation", page],
  [
    "AllFormFactors",
    (each) => [
      !childrenOf(each, "ExtensionPoint").some((point) => typeOf(point) === "CustomFunctions") &&
        'no ExtensionPoint is xsi:type="CustomFunctions"; add one',
    ],
  ],
  [
    "Namespace",
    (each, { root }) => {
      const text = resource(root, attribute(each, "resid"));
      return [
        text !== undefined &&
          textOf(text) !== namespace &&
          `"${textOf(text)}" is not the functions' namespace; write "${namespace}"`,
      ];
    },
  ],
  [
    "ExtensionPoint Control Action",
    (each) => [
      !holds(office.types[each.name] as string, typeOf(each)) &&
        `Excel knows no type "${typeOf(each)}"; write xsi:type as one of ${oneOf(office.types[each.name] as string)}`,
    ],
  ],
  [
    "OfficeTab",
    (each) => [
      !holds(office.tabs, attribute(each, "id")) &&
        `Excel has no such tab; use one of ${oneOf(office.tabs)}`,
    ],
  ],
  [
    "OfficeMenu",
    (each) => [
      !holds(office.menus, attribute(each, "id")) &&
        `Excel has no such menu; use one of ${oneOf(office.menus)}`,
      each.children.length > 1 &&
        `${each.children.length} controls; a menu of Excel takes one, keep one`,
    ],
  ],
  ["Group Control Item", id],
  ["Group Control Item", icons],
  [
    "FunctionName",
    (each, { root, actions }) => [
      !actions.includes(textOf(each)) &&
        `"${textOf(each)}" does nothing; call Office.actions.associate for it`,
      named(root, "FunctionName")[0] === each &&
        named(root, "FunctionFile").length === 0 &&
        "a FunctionFile is missing; add it with the page's resid",
    ],
  ],
  ["IconUrl HighResolutionIconUrl SupportUrl SourceLocation Image Url AppDomain", url],
  [
    // Excel keeps functions.js and functions.json for up to a day, unless their URLs change.
    "Url",
    (each, { root }) => {
      const version = textOf(at(root, "Version") ?? root);
      return [
        /\/functions\.js(on)?(\?|$)/.test(textOf(each)) &&
          !textOf(each).endsWith(`?v=${version}`) &&
          `${textOf(each)} does not name the version; end it with ?v=${version}`,
      ];
    },
  ],
];

import { namespace } from "../../../../functions";
import { requirementSets } from "../facts";
import type { Check, Checked } from "../finding";
import { at, childrenOf, type Element, label, named } from "../xml";

/** One shared runtime, its page, its requirement sets and the functions' namespace. */
export const runtime: Check = (manifest) => {
  const { root } = manifest;
  return [
    ...hosts(root),
    ...sets(root),
    ...oneRuntime(root),
    ...onePage(root),
    ...functionsPoint(manifest),
  ];
};

function hosts(root: Element): string[] {
  const head = childrenOf(at(root, "Hosts"), "Host");
  const body = childrenOf(at(root, "VersionOverrides", "Hosts"), "Host");
  return [
    ...head
      .filter(({ attributes }) => attributes.get("Name") !== "Workbook")
      .map((host) => `${label(host)}: the functions run in Excel only; set Name="Workbook"`),
    ...body
      .filter(({ attributes }) => attributes.get("type") !== "Workbook")
      .map((host) => `${label(host)}: set xsi:type="Workbook", as in the head of the manifest`),
  ];
}

function sets(root: Element): string[] {
  const asked = childrenOf(at(root, "Requirements", "Sets"), "Set").map((set) =>
    set.attributes.get("Name"),
  );
  return requirementSets
    .filter((name) => !asked.includes(name))
    .map((name) => `Requirements: ${name} is missing; add <Set Name="${name}" MinVersion="1.1"/>`);
}

function oneRuntime(root: Element): string[] {
  const runtimes = named(root, "Runtime");
  const found = runtimes
    .filter(({ attributes }) => attributes.get("lifetime") !== "long")
    .map((each) => `${label(each)}: a shared runtime lives on; set lifetime="long"`);
  if (runtimes.length > 1)
    found.push(`Runtimes: ${runtimes.length} runtimes; keep one, shared by functions and pane`);
  return found;
}

/** Whatever opens a page must open the page of the runtime. */
function onePage(root: Element): string[] {
  const shared = named(root, "Runtime")[0]?.attributes.get("resid");
  if (shared === undefined) return [];
  const panes = named(root, "Action").filter((action) => typeOf(action) === "ShowTaskpane");
  const pages = [
    ...named(root, "FunctionFile"),
    ...[...named(root, "Page"), ...panes].flatMap((each) => childrenOf(each, "SourceLocation")),
  ];
  return [
    ...pages
      .filter(({ attributes }) => attributes.get("resid") !== shared)
      .map(
        (each) =>
          `${label(each)} of ${each.parent?.name}: not the page of the runtime; use resid="${shared}"`,
      ),
    ...firstPage(root, shared),
  ];
}

/** The page that an Excel without add-in commands opens. */
function firstPage(root: Element, shared: string): string[] {
  const page = at(root, "DefaultSettings", "SourceLocation")?.attributes.get("DefaultValue");
  const url = named(root, "Url")
    .find(({ attributes }) => attributes.get("id") === shared)
    ?.attributes.get("DefaultValue");
  if (page === undefined || url === undefined || page === url) return [];
  return [`SourceLocation of DefaultSettings: not the page of the runtime; write ${url}`];
}

function functionsPoint({ root }: Checked): string[] {
  const point = named(root, "ExtensionPoint").find((each) => typeOf(each) === "CustomFunctions");
  if (!point)
    return ['ExtensionPoint: none is xsi:type="CustomFunctions"; add one under AllFormFactors'];
  const found = ["Script", "Page", "Metadata", "Namespace"]
    .filter((name) => !at(point, name))
    .map((name) => `${name}: missing; add it to the CustomFunctions ExtensionPoint`);
  const resid = at(point, "Namespace")?.attributes.get("resid");
  const text = named(root, "String").find(({ attributes }) => attributes.get("id") === resid);
  const stated = text?.attributes.get("DefaultValue");
  if (text && stated !== namespace)
    found.push(`${label(text)}: "${stated}" is not the functions' namespace; write "${namespace}"`);
  return found;
}

const typeOf = (element: Element): string | undefined => element.attributes.get("type");

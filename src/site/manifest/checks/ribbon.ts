import { excelTabs, iconSizes, officeMenus } from "../facts";
import type { Check, Checked } from "../finding";
import { at, childrenOf, type Element, label, named } from "../xml";

/** Tabs, groups, buttons, their icons and what they do. */
export const ribbon: Check = (manifest) => {
  const { root } = manifest;
  return [
    ...tabs(root),
    ...menus(root),
    ...uniqueIds(named(root, "Control", "Item")),
    ...uniqueIds(named(root, "Group")),
    ...named(root, "Group", "Control", "Item").flatMap(icons),
    ...namedActions(manifest),
  ];
};

function tabs(root: Element): string[] {
  return named(root, "OfficeTab")
    .filter(({ attributes }) => !excelTabs.includes(attributes.get("id") ?? ""))
    .map((tab) => `${label(tab)}: Excel has no such tab; use one of ${excelTabs.join(", ")}`);
}

function menus(root: Element): string[] {
  return named(root, "OfficeMenu").flatMap((menu) => {
    const found: string[] = [];
    if (!officeMenus.includes(menu.attributes.get("id") ?? ""))
      found.push(`${label(menu)}: Excel has no such menu; use one of ${officeMenus.join(", ")}`);
    const { length } = childrenOf(menu, "Control");
    if (length > 1)
      found.push(`${label(menu)}: ${length} controls; a menu of Excel takes one, keep one`);
    return found;
  });
}

function uniqueIds(elements: readonly Element[]): string[] {
  const seen = new Set<string>();
  return elements.flatMap((element) => {
    const id = element.attributes.get("id");
    if (id === undefined) return [`${label(element)}: has no id; give it one`];
    if (seen.has(id)) return [`${label(element)}: the id is used twice; give each its own`];
    seen.add(id);
    return [];
  });
}

function icons(element: Element): string[] {
  const icon = at(element, "Icon");
  if (!icon)
    return element.name === "Item"
      ? []
      : [`${label(element)}: Icon is missing; add one of ${iconSizes.join(", ")} px`];
  const sizes = childrenOf(icon, "Image").map(({ attributes }) => attributes.get("size"));
  return iconSizes
    .filter((size) => !sizes.includes(size))
    .map((size) => `${label(element)}: Icon lacks ${size} px; add an Image of size="${size}"`);
}

function namedActions({ root, actions }: Checked): string[] {
  const names = named(root, "FunctionName");
  const found = names
    .filter(({ text }) => !actions.includes(text.trim()))
    .map(
      (element) =>
        `${label(element)}: "${element.text.trim()}" does nothing; call Office.actions.associate for it`,
    );
  if (names.length > 0 && named(root, "FunctionFile").length === 0)
    found.push(
      "FunctionFile: missing where a button runs a function; add it with the page's resid",
    );
  return found;
}

import { longest } from "../facts";
import type { Check } from "../finding";
import { at, type Element, label, named } from "../xml";

/** Which list of Resources an element's resid must lead to. */
const lists: Readonly<Record<string, string>> = {
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

/** Ids of resources, what leads to them, and the lengths of texts. */
export const resources: Check = ({ root }) => {
  const overrides = at(root, "VersionOverrides");
  const home = at(overrides, "Resources");
  const kept = home?.children.flatMap((list) => list.children) ?? [];
  return [
    ...duplicates(kept),
    ...tooLong(kept),
    ...named(overrides, ...Object.keys(lists), "Override").flatMap((element) =>
      dangling(element, kept),
    ),
  ];
};

function duplicates(kept: readonly Element[]): string[] {
  const seen = new Map<string, Element>();
  return kept.flatMap((element) => {
    const id = element.attributes.get("id") ?? "";
    const first = seen.get(id);
    seen.set(id, first ?? element);
    return first
      ? [`${label(element)}: the id is taken by ${label(first)}; give each its own`]
      : [];
  });
}

function tooLong(kept: readonly Element[]): string[] {
  return kept.flatMap((element) => {
    const id = element.attributes.get("id") ?? "";
    const text = element.attributes.get("DefaultValue") ?? "";
    const list = element.parent?.name;
    const limit =
      list === "ShortStrings"
        ? longest.shortString
        : list === "LongStrings"
          ? longest.longString
          : Number.POSITIVE_INFINITY;
    const found: string[] = [];
    if (id.length > longest.resid)
      found.push(
        `${label(element)}: the id has ${id.length} characters; shorten it to ${longest.resid} or fewer`,
      );
    if (text.length > limit)
      found.push(
        `${label(element)}: the text has ${text.length} characters; ${list} holds ${limit} or fewer`,
      );
    if (text.trim() === "") found.push(`${label(element)}: DefaultValue is blank; fill it in`);
    return found;
  });
}

function dangling(element: Element, kept: readonly Element[]): string[] {
  const resid = element.attributes.get("resid");
  if (resid === undefined) return [];
  const found: string[] = [];
  if (resid.length > longest.resid)
    found.push(
      `${label(element)}: the resid has ${resid.length} characters; shorten it to ${longest.resid} or fewer`,
    );
  const target = kept.find(({ attributes }) => attributes.get("id") === resid);
  const wanted = lists[element.name];
  if (!target)
    found.push(`${label(element)}: Resources has no "${resid}"; add it or mend the name`);
  else if (wanted && target.parent?.name !== wanted)
    found.push(
      `${label(element)}: "${resid}" is among ${target.parent?.name}; it must be one of ${wanted}`,
    );
  return found;
}

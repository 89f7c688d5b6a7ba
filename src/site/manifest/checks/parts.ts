import { knownTypes, neededParts } from "../facts";
import type { Check } from "../finding";
import { childrenOf, type Element, label, within } from "../xml";

/** What each button, menu, tip and action must hold, and the types that Excel knows. */
export const parts: Check = ({ root }) =>
  [...within(root)].flatMap((element) => [...unknownType(element), ...missing(element)]);

function unknownType(element: Element): string[] {
  const types = knownTypes[element.name];
  const type = element.attributes.get("type") ?? "";
  if (!types || types.includes(type)) return [];
  return [
    `${label(element)}: Excel knows no type "${type}"; write xsi:type as one of ${types.join(", ")}`,
  ];
}

function missing(element: Element): string[] {
  const type = element.attributes.get("type");
  const needed = neededParts[`${element.name}/${type}`] ?? neededParts[element.name] ?? [];
  return needed
    .filter((name) => childrenOf(element, name).length === 0)
    .map((name) => `${label(element)}: has no ${name}; add one`);
}

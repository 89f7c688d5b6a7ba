import { orders, required } from "../facts";
import type { Check } from "../finding";
import { at, type Element, label, within } from "../xml";

/** Elements that must be there, and the order that Office insists on. */
export const structure: Check = ({ root }) => {
  const found = required
    .filter((path) => !at(root, ...path))
    .map((path) => `${path.at(-1)}: missing; add it as ${[root.name, ...path].join("/")}`);
  for (const element of within(root)) {
    const order = orderOf(element);
    if (order) found.push(...disorder(element, order));
  }
  const spare = [...within(root)].filter(({ name }) => name === "TaskpaneId");
  for (const element of spare)
    found.push(
      `${label(element)}: splits the pane from the shared runtime; take the TaskpaneId out`,
    );
  return found;
};

function orderOf(element: Element): readonly string[] | undefined {
  const path = [element.parent?.parent?.name, element.parent?.name, element.name].join("/");
  const type = element.attributes.get("type");
  return orders[path] ?? orders[`${element.name}/${type}`] ?? orders[element.name];
}

function disorder(element: Element, order: readonly string[]): string[] {
  let furthest = -1;
  for (const child of element.children) {
    const place = order.indexOf(child.name);
    if (place >= 0 && place < furthest)
      return [
        `${label(child)}: stands after ${order[furthest]} in ${element.name}; the order is ${order.join(", ")}`,
      ];
    furthest = Math.max(furthest, place);
  }
  return [];
}

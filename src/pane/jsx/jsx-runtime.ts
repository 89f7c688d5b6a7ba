/**
 * React's own, with one thing more: a text that comes from a cell or a file name is shown with its
 * control characters and direction marks as visible signs, wherever a screen shows it.
 */
import { Fragment, type JSX } from "react";
import { jsx as one, jsxs as several } from "react/jsx-runtime";
import { visible } from "../../cells";

export { Fragment, type JSX };

type Props = Readonly<Record<string, unknown>>;

/** Properties whose text is shown or read out. Line ends may stand in them. */
const told = ["children", "title", "label", "content", "aria-label", "hint"];

export const jsx: typeof one = (type, props, key) => one(type, seen(props as Props), key);
export const jsxs: typeof several = (type, props, key) => several(type, seen(props as Props), key);
/** Both, as a build for development calls them. */
export const jsxDEV = (...[type, props, key, isStatic]: [...Parameters<typeof one>, boolean]) =>
  (isStatic ? jsxs : jsx)(type, props, key);

function seen(props: Props): Props {
  const changed = told.flatMap((name): [string, unknown][] => {
    const text = seenText(props[name]);
    return text === props[name] ? [] : [[name, text]];
  });
  return changed.length === 0 ? props : { ...props, ...Object.fromEntries(changed) };
}

function seenText(value: unknown): unknown {
  if (typeof value === "string") return value.split("\n").map(visible).join("\n");
  if (!Array.isArray(value)) return value;
  const texts = value.map((each) => (typeof each === "string" ? seenText(each) : each));
  return texts.some((text, i) => text !== value[i]) ? texts : value;
}

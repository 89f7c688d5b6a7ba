/**
 * Prints what the desk's host serves of the client library's object model, class by class, and what
 * of those classes it refuses (the client then gets ApiNotFound).
 */
import { everyObject } from "./every-object";
import { installOffice } from "./install-office";

const { Excel } = installOffice();
const classes = Excel as unknown as Record<string, { prototype: object } | undefined>;
const inner = /^(_|constructor$|toJSON$|load$|set$|track$|untrack$|context$|isNull)/;

let served = 0;
let refused = 0;
for (const [name, { members }] of [...everyObject()].sort(([a], [b]) => a.localeCompare(b))) {
  const { values = {}, links = {}, methods = {} } = members;
  const offered = new Set([values, links, methods].flatMap((table) => Object.keys(table)));
  const known = Object.getOwnPropertyNames(classes[name]?.prototype ?? {}).filter(
    (member) => !inner.test(member),
  );
  const missing = known.filter((member) => !offered.has(member));
  served += offered.size;
  refused += missing.length;
  console.log(`${name}\n  served: ${[...offered].sort().join(" ") || "-"}`);
  console.log(`  refused: ${missing.sort().join(" ") || "-"}`);
}
console.log(
  `\n${served} members served, ${refused} refused; classes not named here are refused whole.`,
);

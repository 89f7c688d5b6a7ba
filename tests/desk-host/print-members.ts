/**
 * Prints what the desk's host serves of the client library's object model, class by class, and what
 * of those classes it refuses (the client then gets ApiNotFound).
 */
import type { Served } from "../../src/desk/host/wire/served";
import { everyObject } from "./every-object";
import { installOffice } from "./install-office";

const { Excel } = installOffice();
const classes = Excel as unknown as Record<string, { prototype: object } | undefined>;
/** What the client library does by itself. */
const inner =
  /^(_|(constructor|toJSON|load|set|update|retrieve|ensureUnchanged|setMockData|track|untrack|context)$|isNull)/;

/** The names under which the client knows what a table offers: events by their name, and what collections have. */
function namesIn({ values = {}, links = {}, methods = {}, items, item }: Served["members"]) {
  const names = [values, links, methods].flatMap((table) => Object.keys(table));
  const events = names.flatMap((name) => /^_Register(?:Data)?(\w+)Event$/.exec(name)?.[1] ?? []);
  const plain = names.filter((name) => !name.startsWith("_"));
  return new Set([
    ...plain,
    ...events.map((event) => `on${event}`),
    ...(items ? ["items"] : []),
    ...(item ? ["getItem"] : []),
  ]);
}

let served = 0;
let refused = 0;
for (const [name, { members }] of [...everyObject()].sort(([a], [b]) => a.localeCompare(b))) {
  const offered = namesIn(members);
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

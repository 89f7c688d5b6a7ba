import { inTypedForm } from "../../../sheet";
import type { Functions } from "../book";

/** Quoted texts and sheet names, which stay as they are. */
const quoted = /("(?:[^"]|"")*"|'(?:[^']|'')*')/;
/** Spellings that need the formula taken apart: spills, implicit intersection, LET, tables, files. */
const special = ["ANCHORARRAY", "SINGLE", "_xlpm", "_xlws", "["];
const known = new WeakMap<Functions, ReadonlySet<string>>();

/**
 * The formula of a file as a user types it, without "=". A sheet has hundreds of thousands of
 * formulas, so the plain ones are respelled without being taken apart.
 */
export function typedForm(stored: string, functions: Functions): string {
  for (const mark of special) if (stored.includes(mark)) return inTypedForm(stored, functions);
  if (!stored.includes("_xl")) return stored;
  const ids = idsOf(functions);
  if (!stored.includes('"') && !stored.includes("'")) return plain(stored, ids);
  const pieces = stored.split(quoted);
  for (let i = 0; i < pieces.length; i += 2) pieces[i] = plain(pieces[i] as string, ids);
  return pieces.join("");
}

/** Text without quotes, its functions spelled without the prefixes of files. */
function plain(text: string, ids: ReadonlySet<string>): string {
  return text.replace(/_xl(?:dudf_|fn\.)(\w[\w.]*)\(/g, (call: string, name: string) => {
    if (call.startsWith("_xlfn.")) return `${name}(`;
    const id = name.startsWith("FANROW_") ? name.slice("FANROW_".length) : "";
    return ids.has(id) ? `FANROW.${id}(` : call;
  });
}

function idsOf(functions: Functions): ReadonlySet<string> {
  let ids = known.get(functions);
  if (ids === undefined) {
    ids = new Set(functions.map((each) => each.id.toUpperCase()));
    known.set(functions, ids);
  }
  return ids;
}

import { type Token, tokenize, tokenTypes } from "@borgar/fx/xlsx";

/** A part of a formula: its text and its tokens without spaces. */
export interface Piece {
  readonly text: string;
  readonly tokens: readonly Token[];
}

/** A call in a formula, ours or native. */
export interface Call {
  /** In capitals. */
  readonly name: string;
  readonly text: string;
  readonly args: readonly Piece[];
  /** The call around it, and as which of its arguments it stands, from 0. */
  readonly within?: { readonly call: Call; readonly index: number };
}

interface Open {
  /** "" for a bare bracket. */
  readonly name: string;
  readonly start: number;
  readonly args: { from: number; to: number }[];
  readonly within?: { readonly open: Open; readonly index: number };
  done?: Call;
}

/** Every call of a formula in its typed form, outermost and leftmost first. */
export function callsIn(formula: string): Call[] {
  const tokens = tokenize(formula, { withLocation: false });
  const found: Open[] = [];
  const stack: Open[] = [];
  const ends = new Map<Open, number>();
  let braces = 0;
  tokens.forEach((token, i) => {
    if (token.type !== tokenTypes.OPERATOR) return;
    const open = stack.at(-1);
    if (token.value === "{") braces++;
    else if (token.value === "}") braces--;
    else if (token.value === "(") {
      const before = tokens[i - 1];
      const name = before?.type === tokenTypes.FUNCTION ? before.value.toUpperCase() : "";
      const around = [...stack].reverse().find((each) => each.name !== "");
      const entry: Open = {
        name,
        start: name === "" ? i : i - 1,
        args: [{ from: i + 1, to: i + 1 }],
        ...(around ? { within: { open: around, index: around.args.length - 1 } } : {}),
      };
      stack.push(entry);
      if (name !== "") found.push(entry);
    } else if (token.value === "," && braces === 0 && open && open.name !== "") {
      const last = open.args.at(-1);
      if (last) last.to = i;
      open.args.push({ from: i + 1, to: i + 1 });
    } else if (token.value === ")" && open) {
      const last = open.args.at(-1);
      if (last) last.to = i;
      ends.set(open, i + 1);
      stack.pop();
    }
  });
  const finish = (open: Open): Call => {
    open.done ??= {
      name: open.name,
      text: textOf(tokens.slice(open.start, ends.get(open))),
      args: open.args.map(({ from, to }) => pieceOf(tokens.slice(from, to))),
      ...(open.within
        ? { within: { call: finish(open.within.open), index: open.within.index } }
        : {}),
    };
    return open.done;
  };
  return found.filter((open) => ends.has(open)).map(finish);
}

/** A text of a formula as one piece. */
function pieceOf(tokens: readonly Token[]): Piece {
  const solid = tokens.filter(
    ({ type }) => type !== tokenTypes.WHITESPACE && type !== tokenTypes.NEWLINE,
  );
  return { text: textOf(tokens).trim(), tokens: solid };
}

export function wholeOf(formula: string): Piece {
  return pieceOf(tokenize(formula, { withLocation: false }));
}

/** The calls around one, outermost first. */
export function around(call: Call): { readonly call: Call; readonly index: number }[] {
  const out: { call: Call; index: number }[] = [];
  for (let at = call.within; at; at = at.call.within) out.unshift(at);
  return out;
}

/** A part of a formula with the names that LET declares around it, so that it stands alone. */
export function alone(text: string, call: Call | undefined): string {
  let out = text;
  for (const { call: outer, index } of call ? around(call).reverse() : []) {
    if (outer.name !== "LET") continue;
    const declared = outer.args.slice(0, index - (index % 2)).map((piece) => piece.text);
    if (declared.length > 0) out = `LET(${declared.join(",")},${out})`;
  }
  return out;
}

function textOf(tokens: readonly Token[]): string {
  return tokens.map(({ value }) => value).join("");
}

/** A formula as a file stores it, cut into calls and what stands between them, nothing lost. */
import { type Token, tokenize, tokenTypes } from "@borgar/fx/xlsx";
import { NoNativeForm } from "../../rules";

export type Node =
  | { readonly kind: "token"; readonly token: Token }
  /** `id` where the function is one of ours. */
  | {
      readonly kind: "call";
      readonly name: string;
      readonly id: string | undefined;
      readonly args: readonly Nodes[];
    }
  | { readonly kind: "group"; readonly nodes: Nodes };

export type Nodes = readonly Node[];

const own = /^(?:_xludf\.|_xlfn\.)?(?:_xldudf_fanrow_|fanrow\.)(.+)$/i;

/** Whether a formula calls one of our functions, known or not. */
export function callsOurs(formula: string): boolean {
  return /fanrow/i.test(formula) && tokens(formula).some((token) => ownName(token) !== undefined);
}

function ownName(token: Token): string | undefined {
  return token.type === tokenTypes.FUNCTION ? own.exec(token.value)?.[1]?.toUpperCase() : undefined;
}

function tokens(formula: string): Token[] {
  return tokenize(formula.replace(/^=/, ""), { withLocation: false });
}

/** Throws a `NoNativeForm` for a function that looks like one of ours and is none. */
export function nodesOf(formula: string, ids: ReadonlySet<string>): Nodes {
  return new Cutter(tokens(formula), ids).until();
}

class Cutter {
  private at = 0;

  constructor(
    private readonly all: readonly Token[],
    private readonly ids: ReadonlySet<string>,
  ) {}

  /** The nodes up to one of the closing signs, or to the end. */
  until(...closing: string[]): Node[] {
    const out: Node[] = [];
    for (; this.at < this.all.length; this.at++) {
      const token = this.all[this.at]!;
      if (token.type === tokenTypes.OPERATOR && closing.includes(token.value)) return out;
      if (token.type === tokenTypes.FUNCTION && this.all[this.at + 1]?.value === "(")
        out.push(this.call(token, out));
      else if (token.type === tokenTypes.OPERATOR && token.value === "(") {
        this.at++;
        out.push({ kind: "group", nodes: this.until(")") });
      } else if (token.type === tokenTypes.OPERATOR && token.value === "{") {
        // An array constant: its separators are not those of arguments.
        for (; this.all[this.at] && this.all[this.at]!.value !== "}"; this.at++)
          out.push({ kind: "token", token: this.all[this.at]! });
        out.push({ kind: "token", token: this.all[this.at]! });
      } else out.push({ kind: "token", token });
    }
    return out;
  }

  private call(token: Token, before: Node[]): Node {
    const id = ownName(token);
    if (id !== undefined) {
      if (!this.ids.has(id))
        throw new NoNativeForm(`the function FANROW.${id}, which is not known`);
      dropIndex(before);
    }
    const args: Nodes[] = [];
    this.at += 2;
    for (;;) {
      args.push(this.until(",", ")"));
      if (this.all[this.at]?.value !== ",") break;
      this.at++;
    }
    const isEmpty = args.length === 1 && solid(args[0]!).length === 0;
    return { kind: "call", name: token.value, id, args: isEmpty ? [] : args };
  }
}

/** Takes away the "[2]!" that names the file from which a function of ours was once loaded. */
function dropIndex(before: Node[]): void {
  const value = (node: Node | undefined) => (node?.kind === "token" ? node.token.value : "");
  if (value(before.at(-1)) === "!" && /^\[\d+\]$/.test(value(before.at(-2)))) before.length -= 2;
}

/** Without the blanks between. */
export function solid(nodes: Nodes): Nodes {
  return nodes.filter((node) => node.kind !== "token" || node.token.type !== tokenTypes.WHITESPACE);
}

/** The only node there is, out of its brackets. */
export function onlyNode(nodes: Nodes): Node | undefined {
  const [node, ...more] = solid(nodes);
  if (!node || more.length > 0) return undefined;
  return node.kind === "group" ? onlyNode(node.nodes) : node;
}

/** A function's name without the prefixes that only files carry. */
export function bareName(name: string): string {
  return name.replace(/^(_xlfn\.|_xlws\.)+/i, "").toUpperCase();
}

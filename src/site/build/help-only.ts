import { type Plugin, parseAst } from "vite";

/** What of a formula only its help page and the tests read. */
const helpOnly = new Set(["valid", "validity"]);

/** Leaves out of the code that runs what of a formula only help pages show. */
export function withoutHelpOfFormulas(): Plugin {
  return {
    name: "fanrow-help-of-formulas",
    apply: "build",
    enforce: "post",
    transform(code, id) {
      if (!/\/src\/formulas\/[^/]+\.ts$/.test(id)) return null;
      return { code: withoutProperties(code), map: null };
    },
  };
}

function withoutProperties(code: string): string {
  let kept = code;
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    const { type, key, start, end } = node as Partial<Property>;
    if (type === "Property" && helpOnly.has(key?.name ?? "")) {
      const comma = /^\s*,/.exec(code.slice(end))?.[0].length ?? 0;
      kept = kept.slice(0, start) + " ".repeat(end! + comma - start!) + kept.slice(end! + comma);
    } else for (const child of Object.values(node)) visit(child);
  };
  visit(parseAst(code));
  return kept;
}

interface Property {
  readonly type: string;
  readonly key: { readonly name?: string };
  readonly start: number;
  readonly end: number;
}

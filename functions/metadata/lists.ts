import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";

const root = join(import.meta.dirname, "../..");

/** The files under a folder that hold one function each, by the id in them, in the frozen order. */
function filesById(folder: string, mark: RegExp, order: readonly string[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || !entry.name.endsWith(".ts")) continue;
    const file = join(entry.parentPath, entry.name);
    const id = mark.exec(readFileSync(file, "utf8"))?.[1];
    if (id !== undefined && entry.parentPath !== folder) found.set(id, file);
  }
  const at = (id: string) => (order.includes(id) ? order.indexOf(id) : order.length);
  return new Map([...found].sort(([a], [b]) => at(a) - at(b) || a.localeCompare(b)));
}

/** The generated files that list the shells and the rules, with their texts. */
export function listTexts(order: readonly string[]): Map<string, string> {
  const folder = join(root, "functions");
  const shells = filesById(folder, /^ \* @customfunction ([A-Z_]+)$/m, order);
  const rules = filesById(join(root, "src/rules"), /^ {2}id: "([A-Z_]+)",$/m, order);
  const made = (name: string) => join(root, "src/rules/made", name);
  return new Map([
    [join(folder, "made.ts"), list(shells, folder, (id) => id)],
    [made("rules.ts"), list(rules, made("."), (id) => `rule as ${id}`)],
    [made("help.ts"), list(rules, made("."), (id) => `help as ${id}`)],
    [
      made("native.ts"),
      list(
        new Map([...rules].filter(([, file]) => hasNative(file))),
        made("."),
        (id) => `native as ${id}`,
      ),
    ],
  ]);
}

/** Formulas alone need no native form of their own. */
const hasNative = (file: string) => /^export const native\b/m.test(readFileSync(file, "utf8"));

function list(
  files: ReadonlyMap<string, string>,
  from: string,
  named: (id: string) => string,
): string {
  const lines = [...files].map(([id, file]) => {
    const path = relative(from, file).replaceAll(sep, "/").replace(/\.ts$/, "");
    return `export { ${named(id)} } from "${path.startsWith(".") ? path : `./${path}`}";\n`;
  });
  return `// Made by \`npm run metadata\`: one line a function.\n${lines.join("")}`;
}

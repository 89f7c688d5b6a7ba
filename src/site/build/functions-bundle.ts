import { join } from "node:path";
import { build } from "vite";
import { withoutHelpOfFormulas } from "./help-only";

const entry = join(import.meta.dirname, "../../../functions/excel.ts");

export interface FunctionsBundle {
  readonly code: string;
  /** The files it was made from. */
  readonly modules: readonly string[];
}

/**
 * functions.js: one classic script that stands alone, for a page as well as for the runtime that
 * has neither window nor document. Excel is told its name, so the name never changes.
 */
export async function functionsBundle(): Promise<FunctionsBundle> {
  const built = await build({
    configFile: false,
    logLevel: "warn",
    publicDir: false,
    plugins: [withoutHelpOfFormulas()],
    define: { "process.env.NODE_ENV": '"production"' },
    build: {
      write: false,
      target: "es2020",
      lib: { entry, formats: ["iife"], name: "FanrowFunctions", fileName: () => "functions.js" },
    },
  });
  const [result] = Array.isArray(built) ? built : [built];
  if (!result || !("output" in result)) throw new Error("functions.js was not built");
  const [script, ...others] = result.output;
  if (others.length > 0)
    throw new Error(
      `functions.js must stand alone, but needs ${others.map((file) => file.fileName).join(", ")}`,
    );
  return { code: script.code, modules: script.moduleIds };
}

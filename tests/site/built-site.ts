import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { buildSite as build } from "../../src/site/build/build";

export interface BuiltSite {
  readonly folder: string;
  /** Paths of all files, with forward slashes. */
  readonly files: readonly string[];
  read(file: string): string;
  remove(): void;
}

/** Builds the site into a folder of its own. */
export async function buildSite(): Promise<BuiltSite> {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-site-"));
  await build(folder, "silent");
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => statSync(join(folder, file)).isFile())
    .map((file) => file.replaceAll("\\", "/"));
  return {
    folder,
    files,
    read: (file) => readFileSync(join(folder, file), "utf8"),
    remove: () => rmSync(folder, { recursive: true }),
  };
}

type Code = (...args: unknown[]) => unknown;

/** Stands in for the error class that the host brings after office.js has loaded. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

/**
 * Loads functions.js into a runtime with nothing but the language and `CustomFunctions`: no
 * window, no document, no process, and no code from text. As in Excel, `associate` is there from
 * the start and the error class only later. Returns what was associated.
 */
export function loadFunctions(script: string): ReadonlyMap<string, Code> {
  const associated = new Map<string, Code>();
  const CustomFunctions: Record<string, unknown> = {
    associate: (id: string, code: Code) => associated.set(id, code),
  };
  const context = createContext(
    { CustomFunctions },
    { codeGeneration: { strings: false, wasm: false } },
  );
  runInContext(script, context);
  CustomFunctions.Error = HostError;
  return associated;
}

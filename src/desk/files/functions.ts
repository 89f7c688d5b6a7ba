import type { WorksheetFunction } from "../../../functions";

/** The part of Excel's CustomFunctions that functions.js uses. */
interface CustomFunctions {
  associate(id: string, code: (...args: unknown[]) => unknown): void;
  readonly Error: typeof CellProblem;
}

/** An error for one cell, in the shape of CustomFunctions.Error. */
class CellProblem extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? "");
  }
}

interface Metadata {
  readonly functions: readonly {
    readonly id: string;
    readonly description?: string;
    readonly parameters: readonly {
      readonly name: string;
      readonly description?: string;
      readonly type?: string;
      readonly dimensionality?: string;
      readonly optional?: boolean;
      readonly repeating?: boolean;
    }[];
  }[];
}

/**
 * The worksheet functions as Excel loads them: the code of functions.js, each function associated
 * with its id, and what functions.json says of it. `base` is the address of the site's folder.
 * Throws where the two do not agree.
 */
export async function loadFunctions(base: string): Promise<WorksheetFunction[]> {
  const code = new Map<string, (...args: unknown[]) => unknown>();
  const runtime: CustomFunctions = {
    associate: (id, call) => code.set(id, call),
    Error: CellProblem,
  };
  Object.assign(globalThis, { CustomFunctions: runtime });
  const [answer] = await Promise.all([
    fetch(new URL("functions.json", base)),
    loadScript(new URL("functions.js", base)),
  ]);
  if (!answer.ok) throw new Error("functions.json could not be loaded: build the site again.");
  const metadata = (await answer.json()) as Metadata;
  return metadata.functions.map(({ id, description, parameters }) => {
    const call = code.get(id);
    if (!call) throw new Error(`functions.json names ${id}, which functions.js does not bring.`);
    return { id, description: description ?? "", parameters: parameters.map(toParameter), call };
  });
}

type Parameter = WorksheetFunction["parameters"][number];

function toParameter(entry: Metadata["functions"][number]["parameters"][number]): Parameter {
  return {
    name: entry.name,
    description: entry.description ?? "",
    type: (entry.type ?? "any") as Parameter["type"],
    dimensionality: entry.dimensionality === "matrix" ? "matrix" : "scalar",
    optional: entry.optional === true,
    repeating: entry.repeating === true,
  };
}

/** Runs a script of the site in the page. */
export function loadScript(address: URL): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address.href;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${address.pathname} could not be loaded.`));
    document.head.append(script);
  });
}

import { associateActions, type CommandOffice } from "./actions";

/** The part of Office's global object that the page uses. */
export interface PageOffice extends CommandOffice {
  onReady(): Promise<{ readonly host: unknown }>;
  readonly context: {
    readonly requirements: { isSetSupported(name: string, version: string): boolean };
  };
}

/** The parts of the page, of which one is shown: ids in pane.html. */
export type Part = "pane" | "elsewhere" | "too-old" | "failed";

interface Page {
  /** Undefined where office.js did not arrive, as in a browser without a network. */
  readonly office: PageOffice | undefined;
  /** Where the pane listens. */
  readonly listener: EventTarget;
  /** Fetches the pane's code and mounts it. */
  mount(): Promise<void>;
}

/** Opens the pane once Excel is ready. Answers with the part of the page to show. */
export async function openPane({ office, listener, mount }: Page): Promise<Part> {
  if (!office) return "elsewhere";
  let isThere = () => {};
  let isNot = () => {};
  const mounted = new Promise<void>((resolve, reject) => {
    isThere = resolve;
    isNot = () => reject(new Error("there is no pane"));
  });
  // A command may never come; then nobody waits for this.
  mounted.catch(() => {});
  // Before Office is ready: a click on the ribbon may be what has opened this page.
  associateActions(office, mounted, listener);
  const shown = await partOf(office, mount);
  if (shown === "pane") isThere();
  else isNot();
  return shown;
}

async function partOf(office: PageOffice, mount: () => Promise<void>): Promise<Part> {
  const { host } = await office.onReady();
  if (host !== "Excel") return "elsewhere";
  if (!office.context.requirements.isSetSupported("ExcelApi", "1.13")) return "too-old";
  try {
    await mount();
    return "pane";
  } catch {
    return "failed";
  }
}

import { worksheetFunctions } from "../../functions";
import { connect, type HostOptions, WorkbookHost } from "../../src/desk/host";
import { type SheetSpec, Workbook } from "../../src/workbook";
import { installOffice } from "./install-office";

type Content = string | number | boolean | null;

/** Rows of cells: a text that starts with "=" is a formula. */
export function rows(...lines: readonly (readonly Content[])[]): SheetSpec["rows"] {
  return lines.map((line) =>
    line.map((content) =>
      typeof content === "string" && content.startsWith("=")
        ? { formula: content.slice(1), value: 0 }
        : { value: content },
    ),
  );
}

/** A host with a workbook of these sheets, answering the client library from now on. */
export function openDesk(
  sheets: Readonly<Record<string, SheetSpec["rows"]>> = { Data: [] },
  options: Partial<HostOptions> = {},
): WorkbookHost {
  const workbook = Workbook.create();
  for (const [name, content] of Object.entries(sheets)) workbook.addSheet(name, { rows: content });
  return hostOf(workbook, options);
}

export function hostOf(workbook: Workbook, options: Partial<HostOptions> = {}): WorkbookHost {
  const host = new WorkbookHost(workbook, { functions: worksheetFunctions, ...options });
  connect(installOffice().OfficeExtension, host);
  return host;
}

/** A refusal as the client library throws it. */
export interface Refusal {
  readonly code: string;
  readonly message: string;
  readonly debugInfo: { readonly errorLocation?: string; readonly statement?: string };
}

/** What a run throws; fails when it throws nothing. */
export async function refusal(
  run: (context: Excel.RequestContext) => Promise<unknown>,
): Promise<Refusal> {
  try {
    await Excel.run(run);
  } catch (thrown) {
    return thrown as Refusal;
  }
  throw new Error("nothing was refused");
}

/** Waits until messages that are on their way have arrived. */
export function settled(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 20));
}

import { strToU8 } from "fflate";
import { connect, type HostBridge, type WorkbookHost } from "../../src/desk/host";
import { HostError } from "../../src/excel";
import { type CellSpec, type SheetSpec, Workbook } from "../../src/workbook";
import { hostOf } from "../desk-host/desk";
import { installOffice } from "../desk-host/install-office";
import { pack, unpack } from "../workbook/packages";
import { demo } from "./demo";

/** The demo job in a host. */
export function demoHost(): WorkbookHost {
  return hostOf(demo());
}

/** A host whose file was changed part by part, as no library of ours would write it. */
export function hostOfEdited(
  sheets: Readonly<Record<string, SheetSpec["rows"]>>,
  edit: (part: string, text: string) => string,
): WorkbookHost {
  const workbook = Workbook.create();
  for (const [name, rows] of Object.entries(sheets)) workbook.addSheet(name, { rows });
  const parts = Object.entries(unpack(workbook.save())).map(([name, text]) => [
    name,
    strToU8(edit(name, text)),
  ]);
  return hostOf(Workbook.open(pack(Object.fromEntries(parts))));
}

/** A row of plain values. */
export function line(...values: readonly (CellSpec["value"] | undefined)[]): CellSpec[] {
  return values.map((value) => ({ value }));
}

/** The values that the host holds in a block of cells. */
export function cellsOf(host: WorkbookHost, sheet: string, block: string): unknown[][] {
  const [from, to] = block.split(":").map(placeOf) as [Place, Place];
  return Array.from({ length: to.row - from.row + 1 }, (_, r) =>
    Array.from({ length: to.col - from.col + 1 }, (_, c) =>
      host.value(sheet, from.row + r, from.col + c),
    ),
  );
}

/** What stands in the formula bar for a cell such as "K3". */
export function typedAt(host: WorkbookHost, sheet: string, cell: string): string {
  const { row, col } = placeOf(cell);
  return host.typedText(sheet, row, col);
}

interface Place {
  readonly row: number;
  readonly col: number;
}

export function placeOf(cell: string): Place {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(cell) ?? [];
  let col = 0;
  for (const letter of letters) col = col * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(digits) - 1, col: col - 1 };
}

/** The HostError of a call; fails where none is thrown. */
export async function hostError(call: () => Promise<unknown>): Promise<HostError> {
  try {
    await call();
  } catch (thrown) {
    if (thrown instanceof HostError) return thrown;
    throw thrown;
  }
  throw new Error("nothing was refused");
}

/** A host that refuses every request with one code, as Excel words a refusal. */
export function refuseAll(host: WorkbookHost, code: string, message: string): void {
  const bridge = connect(installOffice().OfficeExtension, host);
  bridge.sendMessageToHost = (text: string) => answerWithError(bridge, text, code, message);
}

/** Answers one request with a refusal. */
export function answerWithError(
  bridge: HostBridge,
  request: string,
  code: string,
  message: string,
): void {
  const { id } = JSON.parse(request) as { id: number };
  const error = { Code: code, Message: message, ActionIndex: 0, Location: "Range.values" };
  const body = { Results: [], TraceIds: [], Error: error };
  const answer = { id, type: 2, message: { statusCode: 200, headers: {}, body } };
  setTimeout(() => bridge.onMessageFromHost?.(JSON.stringify(answer)), 0);
}

/**
 * A host that does what it is asked until the nth action of its requests and refuses that one, and
 * so many after it; what was done before stays done, as in Excel.
 */
export function refuseFrom(host: WorkbookHost, nth: number, times = Number.POSITIVE_INFINITY) {
  const bridge = connect(installOffice().OfficeExtension, host);
  const { sendMessageToHost } = bridge;
  const refused = new Set<number>();
  const state = {
    count: 0,
    left: times,
    stop() {
      state.left = 0;
    },
  };
  bridge.sendMessageToHost = (text: string) => {
    const request = JSON.parse(text);
    const { body } = request.message;
    const at = Math.max(0, nth - 1 - state.count);
    state.count += body.Actions.length;
    if (state.left <= 0 || at >= body.Actions.length) return sendMessageToHost(text);
    state.left--;
    refused.add(request.id);
    body.Actions = body.Actions.slice(0, at);
    sendMessageToHost(JSON.stringify(request));
  };
  host.onMessage = (text) => {
    const answer = JSON.parse(text);
    if (refused.delete(answer.id))
      answer.message.body.Error = {
        Code: "OddTrouble",
        Message: "Odd trouble.",
        ActionIndex: answer.message.body.Results.length,
        Location: "Range.values",
      };
    bridge.onMessageFromHost?.(JSON.stringify(answer));
  };
  return state;
}

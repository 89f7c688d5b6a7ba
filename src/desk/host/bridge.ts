import type { WorkbookHost } from "./host";

/** What the client library calls, and what it fills in (`OfficeExtension.HostBridge.init`). */
export interface HostBridge {
  sendMessageToHost(text: string): void;
  onMessageFromHost?: (text: string) => void;
}

/** The part of the client library that takes a bridge. */
export interface ClientLibrary {
  readonly HostBridge: { init(bridge: HostBridge): void };
}

/**
 * Connects the Office.js client library to a host: from then on `Excel.run` speaks to it. The
 * library keeps one bridge at a time, so the last host connected is the one that answers.
 */
export function connect(library: ClientLibrary, host: WorkbookHost): HostBridge {
  const bridge: HostBridge = { sendMessageToHost: (text) => host.sendMessageToHost(text) };
  library.HostBridge.init(bridge);
  host.onMessage = (text) => bridge.onMessageFromHost?.(text);
  return bridge;
}

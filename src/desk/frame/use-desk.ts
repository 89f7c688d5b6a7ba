import { useSyncExternalStore } from "react";
import type { Desk } from "../desk";

/** Draws a component again whenever something at the desk is another than before. */
export function useDesk(desk: Desk): void {
  useSyncExternalStore(desk.subscribe, () => desk.version);
}

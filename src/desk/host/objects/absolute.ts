import { sheetPrefix } from "../address";
import type { HostRange } from "../host-range";

/** "Sheet!$A$1:$B$2": the address as a name keeps it. */
export function absoluteAddress(range: HostRange): string {
  const cells = range.address.slice(range.address.lastIndexOf("!") + 1);
  return sheetPrefix(range.tab.name) + cells.replace(/[A-Z]+|\d+/g, "$$$&");
}

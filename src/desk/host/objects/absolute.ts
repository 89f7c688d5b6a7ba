import { absoluteText, addressText, sheetPrefix } from "../../../cells";
import type { HostRange } from "../host-range";

/** "Sheet!$A$1:$B$2": the address as a name keeps it. */
export function absoluteAddress(range: HostRange): string {
  return sheetPrefix(range.tab.name) + absoluteText(addressText(range));
}

import { plain } from "../../algebra";
import { percentError, type Source } from "../../formulas";
import { type Agreement, agreement, percentDifferences } from "../../spread";
import type { NativeForm } from "../native/native";
import { nativePairs, ofAll, pairReadings } from "./pairs";

export const agreementSource: Source = {
  work: "Bland and Altman, Lancet 1986",
  clause: "bias and limits of agreement",
  mark: "from memory",
};

export const bothFlows = { boxFlows: pairReadings, referenceFlows: pairReadings };

/** The errors of the box in percent of the reference, drawn together. */
export function errorsOf(flows: {
  readonly boxFlows: readonly number[];
  readonly referenceFlows: readonly number[];
}): Agreement {
  return agreement(percentDifferences(flows.boxFlows, flows.referenceFlows));
}

/** Three cells from the errors of all pairs, in percent. */
export function nativeErrors(
  sides: (percent: string) => readonly [string, string, string],
): NativeForm {
  return (native) => {
    const names = ["boxFlows", "referenceFlows"] as const;
    const found = nativePairs(native, names, names, [
      (cells, used) => {
        const given = { Q: cells.boxFlows as string, R: cells.referenceFlows as string };
        return `IF(${used}=1,${plain(percentError, given)},"")`;
      },
    ]);
    if (typeof found === "string") return found;
    const [percent = ""] = found.columns;
    return ofAll(found.used, sides(percent)[native.side] as string);
  };
}

import { useEffect, useState } from "react";
import type { JobCheck } from "../../../job";

/** The dwellings that a record can be made of; undefined until they are known. */
export function useDwellings(check: JobCheck): readonly string[] | undefined {
  const [names, setNames] = useState<readonly string[]>();
  useEffect(() => {
    let isWanted = true;
    const know = (known: readonly string[]) => {
      if (isWanted) setNames(known);
    };
    // Where the piece does not come, writing the records says so.
    import("../../../records").then(
      ({ recordedDwellings }) => know(recordedDwellings(check)),
      () => know([]),
    );
    return () => {
      isWanted = false;
    };
  }, [check]);
  return names;
}

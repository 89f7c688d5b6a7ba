import { useEffect, useState } from "react";
import type { Spot } from "../../../cells";
import type { JobCheck } from "../../../job";
import type { CellNow } from "../../model/trace-now";
import { useSession } from "../../parts/session-context";

/** What the cell holds at this moment, asked for anew with each cell and each check. */
export function useNow(spot: Spot | undefined, check: JobCheck): CellNow | undefined {
  const { session } = useSession();
  const [asked, setAsked] = useState<{
    readonly spot: Spot;
    readonly check: JobCheck;
    readonly now: CellNow | undefined;
  }>();
  useEffect(() => {
    if (!spot) return;
    let isLeft = false;
    void session.now(spot).then((now) => {
      if (!isLeft) setAsked({ spot, check, now });
    });
    return () => {
      isLeft = true;
    };
  }, [session, spot, check]);
  return asked && asked.spot === spot && asked.check === check ? asked.now : undefined;
}

import { once } from "../../cells";
import type { SheetKind, Values } from "../columns";
import { Columns, definedAs, type Job } from "../read";
import { AllDwellings } from "./dwelling-facts";
import { FanFacts } from "./fan-facts";

/** What follows from a job's readings. Checks, pane, records and reports take it from here. */
interface Facts {
  readonly fans: FanFacts | undefined;
  readonly dwellings: AllDwellings;
  /** A computed column that more than its definition goes into; undefined for others. */
  readonly column: (kind: SheetKind, key: string) => Values | undefined;
}

/** The facts of a job, each worked out when it is first asked for. */
export const factsOf = once((job: Job): Facts => {
  const column = (kind: SheetKind, key: string) =>
    kind === "fans" ? fans?.column(key) : undefined;
  const columns: Columns = new Columns(job, (kind, key) => {
    // What stands on the other sheets is taken as it is, where it stands there.
    const isFollowed = kind === "fans" || kind === "dwellings";
    if (!isFollowed && job.tables[kind]?.has(key)) return undefined;
    return column(kind, key) ?? definedAs(kind, key, columns);
  });
  const fans = job.fans && new FanFacts(job, job.fans, columns);
  const dwellings = new AllDwellings(job, fans);
  return { fans, dwellings, column };
});

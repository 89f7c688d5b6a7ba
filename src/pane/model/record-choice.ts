import { boxProofs, type JobCheck } from "../../job";
import { count } from "./announce";

/** Which records are to be written. */
export interface RecordChoice {
  readonly job: boolean;
  /** A dwelling by its name. */
  readonly dwellings: "all" | "none" | { readonly name: string };
  readonly proofs: boolean;
  /** The card of each box and the form for the readings. */
  readonly papers: boolean;
}

/** What a job has to offer of each kind of sheet. */
interface Printable {
  readonly dwellings: number;
  readonly proofs: number;
  readonly papers: number;
}

/** How many sheets a choice comes to. */
export function sheetsOf(choice: RecordChoice, { dwellings, proofs, papers }: Printable): number {
  const homes = choice.dwellings === "all" ? dwellings : choice.dwellings === "none" ? 0 : 1;
  return (choice.job ? 1 : 0) + homes + (choice.proofs ? proofs : 0) + (choice.papers ? papers : 0);
}

/** The boxes of which paired readings are there. */
export function provedBoxes({ job }: JobCheck): number {
  return boxProofs(job).size;
}

/** The cards and the form that can be made. */
export function paperCount({ job }: JobCheck): number {
  return (job.boxes?.names.length ?? 0) + (job.fans?.length ? 1 : 0);
}

/** What a record of the job as it stands would have to admit; a sentence each. */
export function admissions({ findings, summary }: JobCheck): string[] {
  const open = Object.values(summary.bySeverity).reduce((sum, each) => sum + each, 0);
  const incomplete = findings.filter(({ kind }) => kind === "acceptance-incomplete").length;
  const lapsed = findings.filter((finding) => finding.lapsed !== undefined).length;
  const is = (number: number, one: string, many: string) => (number === 1 ? one : many);
  return [
    open > 0 ? `${count(open, "finding")} ${is(open, "is", "are")} open.` : "",
    incomplete > 0
      ? `${count(incomplete, "acceptance")} ${is(incomplete, "is", "are")} incomplete and ${is(incomplete, "counts", "count")} for nothing.`
      : "",
    lapsed > 0
      ? `${count(lapsed, "acceptance")} no longer ${is(lapsed, "holds: its row has", "hold: their rows have")} changed since.`
      : "",
  ].filter((sentence) => sentence !== "");
}

import { shown } from "../../cells";
import { type Edition, editions, findEdition } from "../../editions";
import { type Job, underEdition, unitOf } from "../../job";

interface UnderRow {
  readonly what: string;
  /** "50 → 80 cfm, up", "20 cfm, the same" */
  readonly rate: string;
  /** "9 turn short", or "none turn". */
  readonly turns: string;
  /** Where the other number stands and what it is a number of, or why there is none. */
  readonly note: string;
}

/** The other editions that state their numbers in the job's units. */
export function otherEditions({ settings }: Job): Edition[] {
  return editions.filter(
    ({ id, systems }) => id !== settings.edition?.id && systems.includes(settings.system),
  );
}

export function underRows(job: Job, other: string): UnderRow[] {
  const unit = unitOf("flow", job.settings.system);
  return underEdition(job, findEdition(other)).map((row) => {
    const rate = (value: number | string) => (typeof value === "number" ? shown(value) : "none");
    const turned = [
      ...(row.turnsShort.length > 0 ? [`${row.turnsShort.length} turn short`] : []),
      ...(row.turnsMet.length > 0 ? [`${row.turnsMet.length} turn to meet`] : []),
    ];
    const [before, after] = [rate(row.before), rate(row.after)];
    const inUnit = after === "none" ? after : `${after} ${unit}`;
    const change = row.change === "unlike" ? "" : `, ${row.change}`;
    return {
      what: row.count === 1 ? row.what : `${row.what} (${row.count})`,
      rate: before === after ? `${inUnit}, the same` : `${before} → ${inUnit}${change}`,
      turns: turned.join(", ") || "none turn",
      note:
        typeof row.after === "string"
          ? row.after
          : [row.source, ...(row.is === "" ? [] : [`a ${row.is} rate`])].join("; "),
    };
  });
}

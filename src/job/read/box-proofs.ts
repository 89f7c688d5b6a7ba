import { grouped, once } from "../../cells";
import { type Proof, type ProofPair, proof } from "../../rules";
import { constantInUse } from "./constant-in-use";
import type { Job } from "./job";

/** What the paired readings of one box come to. */
export interface BoxProof {
  readonly box: string;
  readonly proof: Proof;
  /** Rows of the Pairs table that count. */
  readonly rows: readonly number[];
  readonly pairs: readonly ProofPair[];
  /** Day of the latest pair; NaN where none is dated. */
  readonly date: number;
  readonly references: readonly string[];
  /** Standard spread of the reference, percent; NaN where its limit is not stated. */
  readonly referenceSpread: number;
}

/** The proofs of a job's boxes from its Pairs sheet, by the box's name in capitals. */
export const boxProofs = once((job: Job): ReadonlyMap<string, BoxProof> => {
  const { pairs: table } = job.tables;
  const proofs = new Map<string, BoxProof>();
  if (!table) return proofs;
  const isUsable = (i: number) =>
    table.text("box", i) !== "" &&
    ["area", "pressure", "reference"].every((key) => table.number(key, i) > 0);
  const usable = [...Array(table.length).keys()].filter(isUsable);
  for (const [key, rows] of grouped(usable, (i) => table.text("box", i).toUpperCase())) {
    const box = table.text("box", rows[0] as number);
    const pairs = rows.map((i) => ({
      opening: table.text("openings", i),
      area: table.number("area", i),
      pressure: table.number("pressure", i),
      reference: table.number("reference", i),
    }));
    const referenceSpread = spreadOfReference(job, rows);
    const { low, high, proofLimit } = job.settings;
    proofs.set(key, {
      box,
      rows,
      pairs,
      date: Math.max(...rows.map((i) => table.number("date", i))),
      references: [...new Set(rows.map((i) => table.text("instrument", i)))].filter(
        (name) => name !== "",
      ),
      referenceSpread,
      proof: proof(pairs, {
        referenceSpread: Number.isNaN(referenceSpread) ? proofLimit : referenceSpread,
        constant: constantInUse(job, box),
        requirement: proofLimit,
        window: { low, high },
      }),
    });
  }
  return proofs;
});

/** The largest of the references' standard spreads at their readings, percent: limits are rectangular. */
function spreadOfReference(job: Job, rows: readonly number[]): number {
  const { pairs: table } = job.tables;
  let largest = 0;
  for (const i of rows) {
    const instrument = job.instruments?.find(table?.text("instrument", i) ?? "");
    const flow = table?.number("reference", i) ?? Number.NaN;
    if (!instrument || Number.isNaN(instrument.percent)) return Number.NaN;
    const floor = Number.isNaN(instrument.floor) ? 0 : (100 * instrument.floor) / flow;
    largest = Math.max(largest, Math.max(instrument.percent, floor) / Math.sqrt(3));
  }
  return largest;
}

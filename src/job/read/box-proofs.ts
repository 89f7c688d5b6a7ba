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

const known = new WeakMap<Job, ReadonlyMap<string, BoxProof>>();

/** The proofs of a job's boxes from its Pairs sheet, by the box's name in capitals. */
export function boxProofs(job: Job): ReadonlyMap<string, BoxProof> {
  let proofs = known.get(job);
  if (!proofs) {
    proofs = readProofs(job);
    known.set(job, proofs);
  }
  return proofs;
}

function readProofs(job: Job): Map<string, BoxProof> {
  const { pairs: table } = job.tables;
  const rowsOf = new Map<string, number[]>();
  table?.texts("box").forEach((box, i) => {
    const usable =
      table.number("area", i) > 0 &&
      table.number("pressure", i) > 0 &&
      table.number("reference", i) > 0;
    if (box === "" || !usable) return;
    const key = box.toUpperCase();
    rowsOf.set(key, [...(rowsOf.get(key) ?? []), i]);
  });
  const proofs = new Map<string, BoxProof>();
  for (const [key, rows] of rowsOf) {
    if (!table) break;
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
}

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

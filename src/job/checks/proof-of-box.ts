import { type BoxProof, boxProofs } from "../read";
import type { Check } from "./check";

/** Fans measured with a box whose proof is missing, not finished, not passed or too old. */
export const checkProofs: Check = (job, report, { today }) => {
  const { fans } = job;
  if (!fans || !job.tables.pairs) return;
  const proofs = boxProofs(job);
  const requirement = `±${job.settings.proofLimit} %`;
  for (let i = 0; i < fans.length; i++) {
    const box = fans.table.text("box", i);
    if (box === "" || !fans.isMeasured(i) || fans.isByInstrument(i)) continue;
    if (!job.boxes?.openings(box)) continue;
    const own = proofs.get(box.toUpperCase());
    const fault = own ? faultOf(own) : `${box} has no paired readings on the Pairs sheet`;
    const failed = own?.proof.verdict === "not proved" && !Number.isNaN(own.referenceSpread);
    const kind = failed ? "proof-failed" : "proof-incomplete";
    if (fault)
      report.at(kind, fans.table, "box", i, fans.label(i), {
        what: fault,
        cause: box.toUpperCase(),
        effect: `Nothing shows that its flows are within ${requirement}.`,
        mend:
          kind === "proof-failed"
            ? "Find what the box loses or gains (seal, edges, areas, constant), mend it and prove it again; or measure with another box."
            : "Take at least five flows over the window of each opening against a reference whose limit is stated.",
      });
    else if (own) {
      const date = fans.table.number("date", i);
      // A date that lies ahead has a finding of its own.
      const days = date > today + 1 ? Number.NaN : date - own.date;
      if (days > job.settings.interval)
        report.at("proof-expired", fans.table, "box", i, fans.label(i), {
          what: `${box} was proved ${days} days before this reading; the job allows ${job.settings.interval}`,
          effect: "A reviewer will not take the flow as proved.",
          mend: "Prove the box again, and enter the pairs with their date.",
        });
    }
  }
};

function faultOf({ box, proof, date, referenceSpread }: BoxProof): string | undefined {
  if (Number.isNaN(referenceSpread))
    return `${box} was proved against a reference whose limit is not on the Instruments sheet`;
  const [reason = ""] = proof.reasons;
  if (proof.verdict !== "proved")
    return `${box} is ${wordOf(proof.verdict)}: ${reason.charAt(0).toLowerCase()}${reason.slice(1).replace(/\.$/, "")}`;
  return Number.isNaN(date) ? `${box} was proved on no stated day` : undefined;
}

function wordOf(verdict: string): string {
  return verdict === "too few pairs" ? "not proved yet" : verdict;
}

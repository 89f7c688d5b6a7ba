import { shown } from "../../cells";
import { proof } from "../../rules";
import { agreementFactor } from "../../spread";
import { type BoxProof, boxProofs, constantInUse, type Job } from "../read";
import type { Check } from "./check";
import { eachFan } from "./each";

/** Fans measured with a box whose proof is missing, not finished, not passed or too old. */
export const checkProofs = eachFan((fans, job, { today }) => {
  if (!job.tables.pairs) return undefined;
  const proofs = boxProofs(job);
  // What the constant of the pairs mends is told once, at the box.
  const offered = new Set(
    [...proofs.values()].filter((own) => ownConstant(job, own) !== undefined),
  );
  const requirement = `±${job.settings.proofLimit} %`;
  return (i, say) => {
    const box = fans.table.text("box", i);
    if (box === "" || !fans.isMeasured(i) || fans.isByInstrument(i)) return;
    if (!job.boxes?.openings(box)) return;
    const own = proofs.get(box.toUpperCase());
    const fault = own ? faultOf(own) : `${box} has no paired readings on the Pairs sheet`;
    const isOffered = own !== undefined && offered.has(own) && own.proof.verdict === "not proved";
    if (isOffered) return;
    const says = own?.proof.verdict === "not proved" && !Number.isNaN(own.referenceSpread);
    const isWeak = says && !own.proof.referenceAllows;
    const kind = says && !isWeak ? "proof-failed" : "proof-incomplete";
    if (fault)
      say(kind, "box", {
        what: fault,
        cause: box.toUpperCase(),
        effect: `Nothing shows that its flows are within ${requirement}.`,
        mend:
          kind === "proof-failed"
            ? "Find what the box loses or gains (seal, edges, areas, constant), mend it and prove it again; or measure with another box."
            : isWeak
              ? "Prove the box again with a better reference; nothing here speaks against the box."
              : "Take at least five flows over the window of each opening against a reference whose limit is stated.",
      });
    else if (own) {
      const date = fans.table.number("date", i);
      // A date that lies ahead has a finding of its own.
      const days = date > today + 1 ? Number.NaN : date - own.date;
      if (days > job.settings.interval)
        say("proof-expired", "box", {
          what: `${box} was proved ${days} days before this reading; the job allows ${job.settings.interval}`,
          effect: "A reviewer will not take the flow as proved.",
          mend: "Prove the box again, and enter the pairs with their date.",
        });
    }
  };
});

/** The constant that a box's pairs give, where they prove the box with it and the one in use is another. */
function ownConstant({ settings, boxes }: Job, own: BoxProof): number | undefined {
  const { proof: known, pairs, referenceSpread } = own;
  const inUse = constantInUse({ boxes, settings }, own.box);
  const { value, u } = known.constant;
  if (known.verdict === "too few pairs" || Number.isNaN(referenceSpread)) return undefined;
  if (!boxes?.table.has("constant")) return undefined;
  if (Math.abs(inUse - value) <= agreementFactor * u) return undefined;
  const { low, high, proofLimit } = settings;
  const options = { referenceSpread, requirement: proofLimit, window: { low, high } };
  return proof(pairs, options).verdict === "proved" ? value : undefined;
}

/** Boxes whose pairs give another constant than the one in use: it is offered. */
export const checkProvedConstants: Check = (job, report) => {
  const { boxes } = job;
  if (!boxes) return;
  const { table } = boxes;
  const sheetOf = (i: number) => table.cell("constant", i).sheet;
  for (const own of boxProofs(job).values()) {
    const found = ownConstant(job, own);
    const [first, ...others] = boxes.rows(own.box);
    if (found === undefined || first === undefined) continue;
    const rows = [first, ...others.filter((i) => sheetOf(i) === sheetOf(first))];
    const inUse = constantInUse(job, own.box);
    const value = Number(found.toFixed(inUse < 0.5 ? 4 : 3));
    report.at("constant-proved", table, "constant", first, own.box, {
      what: `its pairs give a constant of ${value} ± ${shown(agreementFactor * own.proof.constant.u)}; ${Number(inUse.toPrecision(4))} is in use`,
      effect: `Flows come out ${shown((100 * inUse) / found)} % of what the reference says. With its own constant the box is proved within ±${job.settings.proofLimit} %.`,
      mend: `Type ${value} as the constant of its openings, and what it rests on under How known.`,
      apply: {
        label: `Use ${value}`,
        writes: rows.map((i) => ({ cell: table.ref("constant", i), value })),
      },
    });
  }
};

function faultOf({ box, proof, date, referenceSpread }: BoxProof): string | undefined {
  if (Number.isNaN(referenceSpread))
    return `${box} was proved against a reference whose limit is not on the Instruments sheet`;
  const [whole = ""] = proof.reasons;
  // What follows for a weak reference is the mend.
  const reason = proof.referenceAllows ? whole : (whole.split(":")[0] ?? "");
  if (proof.verdict !== "proved")
    return `${box} is ${wordOf(proof.verdict)}: ${reason.charAt(0).toLowerCase()}${reason.slice(1).replace(/\.$/, "")}`;
  return Number.isNaN(date) ? `${box} was proved on no stated day` : undefined;
}

function wordOf(verdict: string): string {
  return verdict === "too few pairs" ? "not proved yet" : verdict;
}

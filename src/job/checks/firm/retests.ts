import type { Check } from "../check";

/** Retests in lines of their own: dated before the first test. */
export const checkRetests: Check = (job, report) => {
  const { fans, firm } = job;
  if (!fans || !firm) return;
  const { table } = fans;
  for (let i = 0; i < fans.length; i++) {
    const { block, own } = firm.at(i);
    if (block.retestOf === undefined) continue;
    const first = firm.reading.blocks[block.retestOf];
    const at = first?.fans.indexOf(block.fans[own] as number) ?? -1;
    const tested = firm.rowOf(block.retestOf, at);
    if (tested < 0) continue;
    const [before, now] = [table.number("date", tested), table.number("date", i)] as const;
    if (!(now < before)) continue;
    report.at("retest-order", table, "date", i, fans.label(i), {
      what: "the retest is dated before the first test",
      effect: "Which of the two readings stands for the fan as it now is cannot be told.",
      mend: "Compare both dates with the field notes.",
    });
  }
};

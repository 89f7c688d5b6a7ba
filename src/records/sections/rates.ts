import type { Job } from "../../job";
import { unitOf } from "../../job";
import type { DwellingFact } from "../dwelling-facts";
import { fanFacts } from "../fan-facts";
import { looks } from "../looks";
import type { PlanRows } from "../plan-rows";
import { counted, figure } from "../words";

interface UsedRate {
  readonly what: string;
  readonly rate: string;
  readonly clause: string;
  readonly mark: string;
  count: number;
  readonly unit: "fan" | "dwelling";
}

/** The rates that fans and dwellings were judged by, each with its clause and mark. */
export function addRates(rows: PlanRows, job: Job, dwellings: readonly DwellingFact[]): void {
  const { edition, system } = job.settings;
  rows.section("Rates required");
  if (!edition) {
    rows.line(
      isOwn(job)
        ? "The job names no edition: each fan was judged by the rate that its own sheet asks."
        : "The job names no edition, so that nothing was required.",
      looks.text,
    );
    return;
  }
  const used = new Map<string, UsedRate>();
  const note = (key: string, rate: Omit<UsedRate, "count">) => {
    const known = used.get(key);
    if (known) known.count++;
    else used.set(key, { ...rate, count: 1 });
  };
  const unit = unitOf("flow", system);
  for (const { row, isAbsent } of fanFacts(job)) {
    const required = job.fans?.required(row);
    if (isAbsent || !required || !("value" in required)) continue;
    const { rate, source } = required.value;
    const is = job.fans?.kindOfRate(row) ?? "";
    const [room, duty] = [job.fans?.room(row), job.fans?.duty(row)];
    const kind = room && "value" in room ? room.value : "";
    const when = duty && "value" in duty ? duty.value : "";
    note(`${kind} ${when} ${rate} ${source.clause}`, {
      what: `${kind}, ${when}`,
      rate: `${figure(rate)} ${unit}${is && `, ${is}`}`,
      clause: `${source.work}, ${source.clause}`,
      mark: source.mark,
      unit: "fan",
    });
  }
  for (const { rate } of dwellings) {
    if (!rate) continue;
    note(`dwelling ${rate.source.clause}`, {
      what: "whole dwelling",
      rate: "by its size",
      clause: `${rate.source.work}, ${rate.source.clause}`,
      mark: rate.source.mark,
      unit: "dwelling",
    });
  }
  rows.table(
    [...used.values()],
    [
      ["What", 3, looks.cell, ({ what }) => what],
      ["Rate", 2, looks.cell, ({ rate }) => rate],
      ["Used for", 2, looks.cell, ({ count, unit }) => counted(count, unit)],
      ["Clause", 3, looks.small, ({ clause }) => clause],
      [
        "How known",
        2,
        looks.small,
        ({ mark }) => (mark === "from memory" ? "from memory: verify against your copy" : mark),
      ],
    ],
  );
}

/** Whether the sheets of a firm ask rates of their own. */
function isOwn({ firm, fans }: Job): boolean {
  return firm !== undefined && fans?.table.has("required") === true;
}

import { shown } from "../../cells";
import { findInstrument } from "../../rules";
import { attempt } from "../read";
import { listed } from "../words";
import type { Check } from "./check";

/** Fans measured with another instrument than the box, and the list of instruments itself. */
export const checkInstruments: Check = (job, report, { today }) => {
  const { fans, instruments, settings } = job;
  const list = instruments?.table;
  if (list)
    for (let row = 0; row < list.length; row++) {
      const name = list.text("instrument", row);
      const kind = list.text("kind", row);
      const complaint = kind === "" ? undefined : complaintOf(kind);
      if (complaint === undefined) continue;
      report.at("instrument-unknown", list, "kind", row, name, {
        what: `"${kind}" is no known kind of instrument`,
        effect: "Its usual limits and cautions are not shown.",
        mend: complaint,
      });
    }
  if (!fans?.table.has("instrument")) return;
  for (let i = 0; i < fans.length; i++) {
    if (!fans.isByInstrument(i)) continue;
    const name = fans.table.text("instrument", i);
    const own = instruments?.find(name);
    if (!own) {
      report.at("instrument-unknown", fans.table, "instrument", i, fans.label(i), {
        what: `"${name}" is not on the Instruments sheet`,
        effect: "How its reading becomes a flow, and how far it may be off, is unknown.",
        mend: `Name one of ${listed(instruments?.names ?? [])}, or list it with its constant, exponent and limit.`,
      });
      continue;
    }
    const outside = fans
      .deviceReadings(i)
      .find((reading) => reading < own.lowest || reading > own.highest);
    if (outside !== undefined)
      report.at("instrument-outside", fans.table, "device1", i, fans.label(i), {
        what: `${shown(outside)} is outside what ${own.name} reads (${shown(own.lowest)} to ${shown(own.highest)})`,
        effect: "Its limit does not hold there.",
        mend: "Use another setting or another instrument, and read again.",
      });
    if (Number.isNaN(own.percent) && list)
      report.at("instrument-limit", list, "percent", own.row, own.name, {
        what: "no limit is stated for this instrument",
        effect: "The flows read with it have no spread, so guarded judging falls back to simple.",
        mend: "Type its limit in percent, and its least limit, from its record.",
      });
    const days = fans.table.number("date", i) - (list?.number("checked", own.row) ?? Number.NaN);
    if (days > settings.interval && fans.table.number("date", i) <= today + 1)
      report.at("instrument-overdue", fans.table, "instrument", i, fans.label(i), {
        what: `${own.name} was calibrated ${days} days before this reading; the job allows ${settings.interval}`,
        effect: "A reviewer will not take the flow as proved.",
        mend: "Have it calibrated, or correct the dates.",
      });
  }
};

/** What is wrong with the name of a kind; undefined for a known one. */
function complaintOf(kind: string): string | undefined {
  const found = attempt(() => findInstrument(kind));
  return "problem" in found ? (found.problem as Error).message : undefined;
}

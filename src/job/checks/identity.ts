import { plainName } from "../fit";
import type { Job } from "../read";
import type { Check } from "./check";

/** Fans and dwellings: each listed once, each fan in a dwelling, each dwelling with a fan. */
export const checkIdentity: Check = (job, report, { byRow }) => {
  const { fans } = job;
  const { dwellings } = job.tables;
  const known = new Map<string, number>();
  dwellings?.texts("dwelling").forEach((name, i) => {
    const first = known.get(plainName(name));
    if (name !== "" && first !== undefined)
      report.at("dwelling-repeated", dwellings, "dwelling", i, name, {
        what: `this dwelling is already listed in ${dwellings.where(first, i)}`,
        effect: "Its fans are counted for both.",
        mend: "Remove one of the rows, or correct its name.",
      });
    else known.set(plainName(name), i);
  });
  if (!fans) return;
  const rooms = job.firm !== undefined && tellsRooms(job);
  const keys = byRow("fan keys", "fans", (own) => keysOf(own, rooms));
  const seen = new Map<string, number>();
  const withFans = new Set<string>();
  for (const [i, key] of keys.entries()) {
    const dwelling = fans.table.text("dwelling", i);
    withFans.add(plainName(dwelling));
    if (job.firm?.at(i).block.retestOf !== undefined) continue;
    if ((dwelling === "" && !job.firm) || (dwellings && !known.has(plainName(dwelling))))
      report.at("dwelling-unknown", fans.table, "dwelling", i, fans.label(i), {
        what:
          dwelling === ""
            ? "no dwelling is named"
            : `"${dwelling}" is not on the ${dwellings?.name} sheet`,
        cause: plainName(dwelling),
        effect: "The fan counts for no dwelling.",
        mend: "Correct the name, or list the dwelling.",
      });
    const first = seen.get(key);
    if (key !== "" && first !== undefined && !isRetest(job, first, i))
      report.at(
        "fan-repeated",
        fans.table,
        fans.table.text("tag", i) ? "tag" : "room",
        i,
        fans.label(i),
        {
          what: `this fan is already listed in ${fans.table.where(first, i)}`,
          effect: "Its flow is counted twice.",
          mend: `Correct the tag or the dwelling, ${fans.table.has("visit") ? "number the visit where it was read again, " : ""}or remove the row that is not wanted.`,
        },
      );
    else seen.set(key, i);
  }
  for (const name of job.tables.schedule?.texts("dwelling") ?? []) withFans.add(plainName(name));
  // Before the first fan is listed there is nothing to miss, nor where only a sample is tested.
  if (withFans.size === 0 || job.settings.sampling) return;
  dwellings?.texts("dwelling").forEach((name, i) => {
    if (name === "" || withFans.has(plainName(name))) return;
    report.at("dwelling-empty", dwellings, "dwelling", i, name, {
      what: "no fan is listed for this dwelling",
      effect: "Nothing shows that it is ventilated.",
      mend: "List its fans, or correct the dwelling named in the fan rows.",
    });
  });
};

/** By what a fan is told from others; "" for one without a tag. */
function keysOf({ fans }: Job, rooms: boolean): string[] {
  return Array.from({ length: fans?.length ?? 0 }, (_, i) => {
    const [dwelling = "", own, room = ""] = ["dwelling", "tag", "room"].map((key) =>
      fans?.table.text(key, i),
    );
    const tag = own || (rooms ? room : "");
    if (tag === "" || tag.toLowerCase() === "none") return "";
    return [plainName(dwelling), plainName(tag), fans?.which(i)].join("\u0000");
  });
}

/** Repeated rooms are slips only where nearly every fan of a dwelling has a room of its own. */
const mostRepeated = 0.05;

/** Whether a firm's fans without tags are told apart by their rooms. */
function tellsRooms({ fans, firm }: Job): boolean {
  const names = new Set<string>();
  let rows = 0;
  for (let i = 0; i < (fans?.length ?? 0); i++) {
    const [dwelling, room] = ["dwelling", "room"].map((key) =>
      plainName(fans?.table.text(key, i) ?? ""),
    );
    if (!dwelling || !room || firm?.at(i).block.retestOf !== undefined) continue;
    rows++;
    names.add(`${dwelling}\u0000${room}`);
  }
  return rows - names.size <= Math.max(1, mostRepeated * rows);
}

/** A firm may write a retest into a row of its own: of another day than one that failed. */
function isRetest({ fans, firm }: Job, first: number, i: number): boolean {
  const [before, now] = [first, i].map((row) => fans?.table.number("date", row) ?? Number.NaN);
  return firm?.says(first) === "fail" && now !== before;
}

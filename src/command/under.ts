import { shown, visible, visibleJson } from "../cells";
import { findEdition } from "../editions";
import { type RateUnder, underEdition, unitOf } from "../job";
import { type Look, readNamed } from "./check-file";

/** What another edition would change in a job, as a report. */
export async function tellUnder(
  edition: string,
  file: string,
  isJson: boolean,
  look: Look,
): Promise<string> {
  const other = findEdition(edition);
  const job = await readNamed(file, look);
  const rows = underEdition(job, other);
  const under = { file, edition: job.settings.edition?.id ?? "", other: other.id };
  if (isJson) return visibleJson(`${JSON.stringify({ format: 1, ...under, rows }, null, 2)}\n`);
  const unit = unitOf("flow", job.settings.system);
  const head = [file, `  ${under.edition || "no edition"} → ${other.id} (${other.title})`, ""];
  const lines = rows.flatMap((row) => rowLines(row, unit));
  const nothing = rows.length === 0 ? ["  no fan and no dwelling to compare"] : [];
  return `${[...head, ...lines, ...nothing].map(visible).join("\n")}\n`;
}

/** "up    bathroom on demand (24): 50 → 80 cfm (listed)", the fans that turn, and the clause. */
function rowLines(row: RateUnder, unit: string): string[] {
  const rate = (value: number | string) => (typeof value === "number" ? shown(value) : "none");
  const why = [row.before, row.after].find((value) => typeof value === "string");
  const turned = (words: string, names: readonly string[]) =>
    names.length === 0 ? [] : [`${words} (${names.length}): ${names.slice(0, 6).join("; ")}`];
  const [first = "", ...further] = [
    `${row.change.padEnd(6)} ${row.what}${row.count === 1 ? "" : ` (${row.count})`}: ${rate(row.before)} → ${rate(row.after)} ${unit}${row.is === "" ? "" : ` (${row.is})`}`,
    ...(why === undefined ? [] : [String(why)]),
    ...turned("turn short", row.turnsShort),
    ...turned("turn to meet", row.turnsMet),
    ...(row.source === "" || row.change === "same" ? [] : [row.source]),
  ];
  return [`  ${first}`, ...further.map((line) => `           ${line}`)];
}

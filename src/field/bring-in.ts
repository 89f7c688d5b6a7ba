import { type CellValue, isBlankCell, isoDay, isSameValue, numberText } from "../cells";
import { type Job, plainName } from "../job";
import { broughtKeys } from "./field-copy";

/** One value to be written into the job. */
export interface Brought {
  readonly fan: string;
  /** The heading of its column in the job. */
  readonly heading: string;
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
  readonly value: number | string;
  /** What the job holds there already; null where it is blank. */
  readonly before: CellValue;
  /** Both as they are told: a day by its date. */
  readonly told: { readonly value: string; readonly before: string };
}

export interface BringIn {
  /** Into blank cells. */
  readonly fresh: readonly Brought[];
  /** Where the job holds something else: written only when it is asked for. */
  readonly differing: readonly Brought[];
  /** Values that are in the job already. */
  readonly same: number;
  /** Typed on the way, but not to be placed: each with its fan and why. */
  readonly left: readonly { readonly fan: string; readonly what: string; readonly why: string }[];
}

/**
 * What was typed into a field copy, placed by dwelling and fan into the job it was made from.
 * Nothing is written here. A fan that the job has not, or has twice, is told of and never guessed.
 */
export function bringIn(job: Job, copy: Job): BringIn {
  const fresh: Brought[] = [];
  const differing: Brought[] = [];
  const left: BringIn["left"][number][] = [];
  let same = 0;
  const rows = rowsByName(job);
  const seen = new Map<string, number>();
  for (let i = 0; i < (copy.fans?.length ?? 0); i++) {
    const name = nameOf(copy, i);
    const fan = copy.fans?.label(i) ?? "";
    const typed = typedIn(copy, i);
    if (typed.length === 0) continue;
    const what = typed
      .map(({ key, value }) => `${headingIn(copy, key)} ${told(key, value)}`)
      .join(", ");
    const matches = rows.get(name) ?? [];
    const at = seen.get(name) ?? 0;
    seen.set(name, at + 1);
    const twin = matches[at];
    const isHeld = (row: number) =>
      typed.every(({ key, value }) => isSameValue(job.fans?.table.raw(key, row) ?? null, value));
    if (twin !== undefined && isHeld(twin)) {
      same += typed.length;
      continue;
    }
    const row = matches.length === 1 && at === 0 ? twin : undefined;
    if (row === undefined) {
      left.push({ fan, what, why: whyLeft(matches.length, at) });
      continue;
    }
    for (const { key, value } of typed) {
      const place = job.fans?.table.place(key, row);
      if (!place) {
        left.push({
          fan,
          what: `${headingIn(copy, key)} ${told(key, value)}`,
          why: "the job has no such column",
        });
        continue;
      }
      const before = job.fans?.table.raw(key, row) ?? null;
      const brought: Brought = {
        ...{ fan, heading: headingIn(job, key), sheet: place.grid.name },
        ...{ row: place.row, col: place.col, value, before },
        told: { value: told(key, value), before: told(key, before) },
      };
      if (isBlankCell(before)) fresh.push(brought);
      else if (isSameValue(before, value)) same++;
      else differing.push(brought);
    }
  }
  return { fresh, differing, same, left };
}

function told(key: string, value: CellValue): string {
  if (typeof value !== "number") return String(value);
  return key === "date" ? isoDay(value) : numberText(value);
}

function whyLeft(matches: number, at: number): string {
  if (matches === 0) return "the job has no such fan in this dwelling";
  if (matches > 1) return "the job lists this fan more than once";
  return at > 0 ? "the copy lists this fan more than once" : "";
}

function typedIn(copy: Job, i: number): { key: string; value: number | string }[] {
  const { table } = copy.fans as NonNullable<Job["fans"]>;
  return broughtKeys.flatMap((key) => {
    const value = table.has(key) ? table.raw(key, i) : null;
    if ((typeof value !== "number" && typeof value !== "string") || isBlankCell(value)) return [];
    return [{ key, value }];
  });
}

function headingIn({ fans }: Job, key: string): string {
  return fans?.table.heading(key) ?? key;
}

function nameOf({ fans }: Job, i: number): string {
  const parts = ["dwelling", "tag"].map((key) => plainName(fans?.table.text(key, i) ?? ""));
  return [...parts, fans?.which(i)].join("\u0000");
}

function rowsByName(job: Job): Map<string, number[]> {
  const rows = new Map<string, number[]>();
  for (let i = 0; i < (job.fans?.length ?? 0); i++) {
    const name = nameOf(job, i);
    rows.set(name, [...(rows.get(name) ?? []), i]);
  }
  return rows;
}

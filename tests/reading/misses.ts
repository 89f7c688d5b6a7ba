import { readWorkbook } from "../../src/reading";
import type { Invented } from "./invent";

const scored = [
  "dwelling",
  "room",
  "duty",
  "opening",
  "area",
  "diameter",
  "pressure",
  "flow",
  "required",
  "verdict",
  "tester",
  "date",
] as const;

/** Compares what was read of an invented workbook with what stands in it. */
export function misses({ book, expected }: Invented): {
  right: number;
  all: number;
  wrong: string[];
} {
  const { blocks } = readWorkbook(book);
  const wrong: string[] = [];
  let right = 0;
  let all = 0;
  for (const { sheet, lines, readings } of expected) {
    const own = blocks.filter((block) => block.sheet === sheet);
    for (const role of scored) {
      const wanted = lines[role];
      if (!wanted) continue;
      all++;
      const got = new Set(own.flatMap(({ roles }) => roles.get(role)?.line ?? []));
      if (wanted.length === got.size && wanted.every((line) => got.has(line))) right++;
      else wrong.push(`${sheet}: ${role} ${[...got].join("+")} for ${wanted.join("+")}`);
    }
    if (Number.isNaN(readings)) continue;
    all++;
    const read = own.reduce((sum, block) => sum + block.readings, 0);
    if (read === readings) right++;
    else wrong.push(`${sheet}: readings ${read} for ${readings}`);
  }
  return { right, all, wrong };
}

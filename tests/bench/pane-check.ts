import { serialOf } from "../../src/cells";
import { readWorkbook } from "../../src/excel";
import { checkJob } from "../../src/job";
import { hostOf } from "../desk-host/desk";
import { largeJob } from "../excel/large-job";

/** What the pane's check costs through the real client library: reading, then checking. */
export async function benchPaneCheck(): Promise<string[]> {
  const lines: string[] = [];
  let first: number | undefined;
  for (const fans of [1_000, 20_000]) {
    // The workbook opened last is the one that answers.
    hostOf(largeJob(fans));
    const start = performance.now();
    const { file, trips } = await readWorkbook();
    const read = performance.now() - start;
    checkJob(file, serialOf(new Date()) - (file.dateOffset ?? 0));
    const all = performance.now() - start;
    first ??= all;
    lines.push(
      `pane's check of ${fans} fans: ${(all / 1000).toFixed(2)} s (× ${(all / first).toFixed(1)}), ` +
        `of it reading ${(read / 1000).toFixed(2)} s in ${trips} round trips (goal ${3 + Math.floor(fans / 5000)})`,
    );
  }
  return lines;
}

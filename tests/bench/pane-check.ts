import { type Place, serialOf } from "../../src/cells";
import { readAgain, readWorkbook, watchEdits } from "../../src/excel";
import type { JobCheck, JobFile } from "../../src/job";
import { checkSteps } from "../../src/job/engine";
import { hostOf, settled } from "../desk-host/desk";
import { largeJob } from "../excel/large-job";

/**
 * What the pane's check costs through the real client library: reading, then checking; and both after an
 * edit of one fan.
 */
export async function benchPaneCheck(): Promise<string[]> {
  const lines: string[] = [];
  let first: number | undefined;
  for (const fans of [1_000, 20_000]) {
    // The workbook opened last is the one that answers.
    const host = hostOf(largeJob(fans));
    // The stored totals are of other dwellings: the first edit works them out.
    host.userEnters("Fans", fans - 1, 10, "5");
    const start = performance.now();
    const { file, trips } = await readWorkbook();
    const read = performance.now() - start;
    const check = checked(file);
    const all = performance.now() - start;
    first ??= all;
    const cells: Place[] = [];
    const stop = await watchEdits((place) => cells.push(place));
    host.userEnters("Fans", fans - 1, 10, "none");
    await settled();
    await stop();
    const edited = performance.now();
    const again = (await readAgain(file, cells)) as JobFile;
    checked(again, { check, cells });
    const share = (performance.now() - edited) / all;
    lines.push(
      `pane's check of ${fans} fans: ${(all / 1000).toFixed(2)} s (× ${(all / first).toFixed(1)}), ` +
        `of it reading ${(read / 1000).toFixed(2)} s in ${trips} round trips (goal ${3 + Math.floor(fans / 5000)}); ` +
        `after an edit × ${share.toFixed(3)} of that`,
    );
  }
  return lines;
}

function checked(file: JobFile, since: Parameters<typeof checkSteps>[3] = none): JobCheck {
  const steps = checkSteps(file, serialOf(new Date()) - (file.dateOffset ?? 0), undefined, since);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

const none = { check: undefined, cells: undefined };

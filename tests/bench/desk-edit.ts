import { chromium, type Page } from "playwright-core";
import { worksheetFunctions } from "../../functions";
import { serveSite } from "../../src/desk/server/server";
import { SheetModel } from "../../src/sheet";
import { Workbook } from "../../src/workbook";
import { cell, goTo } from "../desk/setup/cells";
import { dropFile } from "../desk/setup/files";
import { largeJob } from "../excel/large-job";
import { median } from "./median";

const runs = 5;
/** A reading of the first fan, which nothing is found about. */
const at = "Fans!K2";

/** What an edit costs on the desk: from Enter to the finding about it, and the recalculation alone. */
export async function deskEdits(folder: string): Promise<string[]> {
  const lines: string[] = [];
  for (const [fans, goal] of [
    [100, 0.15],
    [20_000, 0.3],
  ] as const) {
    const workbook = largeJob(fans);
    // As a spreadsheet program would have saved it: the first edit changes no more than the others.
    new SheetModel(workbook, worksheetFunctions).recalculateAll();
    const bytes = workbook.save();
    const { wall, processor, first } = await inBrowser(folder, fans, { name: "job.xlsx", bytes });
    lines.push(
      `desk with ${fans} fans: from Enter to the finding ${wall.toFixed(2)} s, of it ${processor.toFixed(2)} s of the ` +
        `page's own thread (goal ${goal}), after the first edit ${first.toFixed(2)} s; recalculation ${recalculation(bytes).toFixed(1)} ms (goal 16)`,
    );
  }
  return lines;
}

function recalculation(bytes: Uint8Array): number {
  const model = new SheetModel(Workbook.open(bytes), worksheetFunctions);
  model.enter("Fans", 1, 10, "4");
  const times = Array.from({ length: 2 * runs }, (_, i) => {
    const start = performance.now();
    model.enter("Fans", 1, 10, String(5 + (i % 2)));
    return performance.now() - start;
  });
  return median(times);
}

async function inBrowser(folder: string, fans: number, file: { name: string; bytes: Uint8Array }) {
  const site = await serveSite({ folder });
  const browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-quic", "--disable-background-networking", "--no-first-run"],
  });
  try {
    const page = await browser.newPage();
    page.setDefaultTimeout(120_000);
    await page.goto(new URL("desk.html", site.address).href);
    await page.getByRole("gridcell").first().waitFor();
    await dropFile(page, file);
    const pane = page.getByRole("complementary", { name: "Task pane" });
    // The desk checks by itself.
    await pane.getByText(new RegExp(`^${fans} fans`)).waitFor();
    const client = await page.context().newCDPSession(page);
    await client.send("Performance.enable", { timeDomain: "threadTicks" });
    const thread = async () => {
      const { metrics } = await client.send("Performance.getMetrics");
      return metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN;
    };
    const reading = String(Workbook.open(file.bytes).sheet("Fans")?.cell(1, 10)?.value);
    const walls: number[] = [];
    const threads: number[] = [];
    for (let run = 0; run < runs; run++) {
      await goTo(page, at);
      const before = await thread();
      // A text in place of a reading is found, and its number again is not.
      walls.push(await typed(page, run % 2 === 0 ? "none" : reading, run % 2 === 0));
      threads.push((await thread()) - before);
    }
    const [first = Number.NaN] = threads;
    return { wall: median(walls), processor: median(threads), first };
  } finally {
    await browser.close();
    await site.close();
  }
}

/** Types into the cell in view and waits until a mark stands on it, or no longer does; in seconds. */
async function typed(page: Page, text: string, isFound: boolean): Promise<number> {
  await page.keyboard.type(text);
  // Listening has begun before the key goes down.
  await page.evaluate(() =>
    addEventListener("keydown", () => performance.mark("enter"), { capture: true, once: true }),
  );
  await page.keyboard.press("Enter");
  const marked = (await cell(page, at.slice(at.indexOf("!") + 1))).filter({ hasText: "◆" });
  await marked.waitFor({ state: isFound ? "visible" : "hidden" });
  return page.evaluate(
    () =>
      (performance.now() - (performance.getEntriesByName("enter").at(-1)?.startTime ?? 0)) / 1000,
  );
}

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { buildSite } from "../../src/desk/server/build";
import { serveSite } from "../../src/desk/server/server";
import { bundleGoals, bundleSizes } from "../site/built/bundle-sizes";
import { deskEdits } from "./desk-edit";
import { median } from "./median";

const project = join(import.meta.dirname, "../..");
const runs = 5;

/** Sizes of what Excel loads, and how soon the desk shows something. */
export async function benchSite(): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-bench-site-"));
  try {
    await buildSite(project, folder);
    const sizes = bundleSizes(folder);
    const part = (name: "functions" | "pane") =>
      `${name} ${(sizes[name] / 1000).toFixed(0)} kB gzip (${((100 * sizes[name]) / bundleGoals[name]).toFixed(0)} % of the goal)`;
    return [
      `${part("functions")}, ${part("pane")}, loaded when asked for ${(sizes.lazy / 1000).toFixed(0)} kB`,
      await firstPaint(folder),
      ...(await deskEdits(folder)),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function firstPaint(folder: string): Promise<string> {
  const site = await serveSite({ folder });
  const browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-quic", "--disable-background-networking", "--no-first-run"],
  });
  try {
    const paints: number[] = [];
    const ready: number[] = [];
    for (let run = 0; run < runs; run++) {
      const page = await browser.newPage();
      await page.goto(new URL("desk.html", site.address).href);
      await page.getByRole("gridcell").first().waitFor();
      ready.push(await page.evaluate(() => performance.now()));
      paints.push(
        await page.evaluate(
          () => performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Number.NaN,
        ),
      );
      await page.close();
    }
    return `desk: first paint after ${median(paints).toFixed(0)} ms, the demo job's cells after ${median(ready).toFixed(0)} ms`;
  } finally {
    await browser.close();
    await site.close();
  }
}

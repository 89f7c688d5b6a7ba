import { describe, expect, it } from "vitest";
import { deskBrowser } from "./setup/browser";
import { goTo, read, sheetTab, type } from "./setup/cells";
import { openFiles } from "./setup/files";
import { largeWorkbook } from "./setup/firm-workbook";

const open = deskBrowser();
const large = { name: "large.xlsx", bytes: largeWorkbook() };

describe("20,000 rows of 22 columns", () => {
  it("reaches the last row and recalculates there", async () => {
    const page = await open();
    await openFiles(page, large);
    await sheetTab(page, "Large").waitFor();
    expect(await read(page, "A20000")).toBe(String(19_998 * 22));
    await type(page, "A20000", "21");
    expect(await read(page, "V20000")).toBe("42");
  });

  it("keeps only the rows near the view in the page, and draws them as it is scrolled", async () => {
    const page = await open();
    await openFiles(page, large);
    await sheetTab(page, "Large").waitFor();
    await goTo(page, "A1");
    const grid = page.getByRole("grid");
    const box = await grid.boundingBox();
    if (!box) throw new Error("the grid has no place on the page");
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    const client = await page.context().newCDPSession(page);
    // Processor time of the page's own thread, which other work on the machine leaves alone.
    await client.send("Performance.enable", { timeDomain: "threadTicks" });
    const spent = async () => {
      const { metrics } = await client.send("Performance.getMetrics");
      return (metrics.find(({ name }) => name === "ScriptDuration")?.value ?? 0) * 1000;
    };
    const before = await spent();
    const turns = 60;
    for (let i = 0; i < turns; i++) {
      await page.mouse.wheel(0, 360);
      await page.waitForTimeout(16);
    }
    // A turn brings some 14 rows into view; all of a frame at 60 Hz would be 16.7 ms.
    expect(((await spent()) - before) / turns).toBeLessThan(50);
    expect(await page.getByRole("row").count()).toBeLessThan(120);
    const first = await page.getByRole("rowheader").nth(1).textContent();
    expect(Number(first)).toBeGreaterThan(500);
  });
});

import { describe, expect, it } from "vitest";
import { choose, faults, faultsInEveryTheme } from "./setup/axe";
import { deskBrowser } from "./setup/browser";
import { goTo, tool, type } from "./setup/cells";

const open = deskBrowser();

describe("the desk for everyone", () => {
  it("has no fault that axe finds in any theme", async () => {
    const page = await open();
    await goTo(page, "Fans!K2:M3");
    await type(page, "Fans!H4", "Box 99");
    expect(await faultsInEveryTheme(page)).toEqual([]);
  });

  it("has no fault while a cell is edited or a message stands on the page", async () => {
    const page = await open();
    await goTo(page, "nowhere at all");
    await goTo(page, "Fans!V2");
    await page.keyboard.type("=1+");
    await page.keyboard.press("Enter");
    expect(await faults(page)).toEqual([]);
  });

  it("follows the browser's theme until one is chosen, and keeps the choice", async () => {
    const page = await open("desk.html", { colorScheme: "dark" });
    const theme = () => page.locator("html").getAttribute("data-theme");
    expect(await theme()).toBe("dark");
    await page.emulateMedia({ colorScheme: "light" });
    await expect.poll(theme).toBe("light");
    await choose(page, "High contrast");
    await page.reload();
    await page.getByRole("gridcell").first().waitFor();
    expect(await theme()).toBe("contrast");
  });

  it("moves nothing that is already on the page, while it loads and while one works", async () => {
    const page = await open();
    await page.addInitScript(() => {
      const shifts: number[] = [];
      (globalThis as unknown as { shifts: number[] }).shifts = shifts;
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries())
          shifts.push((entry as unknown as { value: number }).value);
      }).observe({ type: "layout-shift", buffered: true });
    });
    await page.reload();
    await page.getByRole("gridcell").first().waitFor();
    await page.getByRole("complementary", { name: "Task pane" }).getByRole("tab").first().waitFor();
    await type(page, "B6", "1.5");
    await goTo(page, "nowhere at all");
    await page.waitForTimeout(600);
    const shifts = await page.evaluate(
      () => (globalThis as unknown as { shifts: number[] }).shifts,
    );
    expect(shifts.reduce((sum, each) => sum + each, 0)).toBeLessThan(0.01);
  });

  it.each([1280, 900, 400, 320])("fits %i pixels without scrolling sideways", async (width) => {
    const page = await open("desk.html", { viewport: { width, height: 800 } });
    const inner = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(inner).toBeLessThanOrEqual(width);
    for (const name of ["Open", "Save a copy", "New", "Theme", "Pane"]) {
      const box = await tool(page, name).boundingBox();
      expect(box && box.x >= 0 && box.x + box.width <= width).toBe(true);
      expect(box?.height).toBeGreaterThanOrEqual(24);
    }
  });
});

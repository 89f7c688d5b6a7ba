import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { faults, faultsInEveryTheme } from "./setup/axe";
import { deskBrowser } from "./setup/browser";
import { addressField, goTo, type } from "./setup/cells";

const open = deskBrowser();
const paneOnly = '[aria-label="Task pane"]';
const pane = (page: Page) => page.getByRole("complementary", { name: "Task pane" });
const traced = (page: Page, name: string | RegExp) =>
  pane(page).getByRole("heading", { level: 3, name });
const to = (page: Page, cell: string) =>
  pane(page)
    .getByRole("button", { name: new RegExp(`^Trace ${cell}(,|$)`) })
    .first();
const back = (page: Page) => pane(page).getByRole("navigation", { name: "Back" });
const steps = (page: Page) => back(page).getByRole("button").allTextContents();

/** The desk with the demo job checked and the trace in view. */
async function tracing(options?: Parameters<typeof open>[1]): Promise<Page> {
  const page = await open("desk.html", options);
  await pane(page).getByRole("button", { name: "Check again" }).waitFor({ timeout: 30_000 });
  await pane(page).getByRole("tab", { name: "Trace", exact: true }).click();
  await pane(page).getByRole("button", { name: "Hold this cell" }).waitFor({ timeout: 30_000 });
  return page;
}

/** Draws the pane as narrow as Excel's. */
async function narrow(page: Page): Promise<void> {
  await page.getByRole("separator", { name: "Width of the pane" }).press("Home");
  expect((await pane(page).boundingBox())?.width).toBe(320);
}

describe("the trace beside the grid", () => {
  it("walks from a verdict back to the reading that was typed, and back again", async () => {
    const page = await tracing();
    await goTo(page, "Fans!S2");
    await traced(page, "Fans!S2, Verdict").waitFor();
    await pane(page).getByText("Result: meets").waitFor();
    await to(page, "Fans!P2").click();
    await traced(page, "Fans!P2, Flow (cfm)").waitFor();
    await pane(page).getByText("= 1.07 · 42 · √4.7").waitFor();
    await to(page, "Fans!N2").click();
    await traced(page, "Fans!N2, Box pressure (Pa)").waitFor();
    await to(page, "Fans!K2").click();
    await traced(page, "Fans!K2, Reading 1 (Pa)").waitFor();
    await pane(page).getByText("Typed, no formula.").waitFor();
    await expect.poll(() => addressField(page).inputValue()).toBe("K2");
    expect(await steps(page)).toEqual(["Fans!S2", "Fans!P2", "Fans!N2", "Fans!K2"]);

    await back(page).getByRole("button", { name: "Fans!P2" }).click();
    await traced(page, "Fans!P2, Flow (cfm)").waitFor();
    await expect.poll(() => addressField(page).inputValue()).toBe("P2");
    expect(await steps(page)).toEqual(["Fans!S2", "Fans!P2"]);
  });

  it("leads by keyboard: the focus follows to the cell that was gone to", async () => {
    const page = await tracing();
    await goTo(page, "Fans!S2");
    await traced(page, /Verdict/).waitFor();
    await to(page, "Fans!P2").focus();
    await page.keyboard.press("Enter");
    const head = traced(page, /Flow \(cfm\)/);
    await head.waitFor();
    await expect.poll(() => head.evaluate((each) => each === document.activeElement)).toBe(true);
  });

  it("stays at a held cell while another is selected, also over a visit elsewhere", async () => {
    const page = await tracing();
    await goTo(page, "Fans!P2");
    await traced(page, /^Fans!P2/).waitFor();
    await pane(page).getByRole("button", { name: "Hold this cell" }).click();
    await goTo(page, "Fans!S5");
    await pane(page).getByRole("tab", { name: "Check", exact: true }).click();
    await pane(page).getByRole("tab", { name: "Trace", exact: true }).click();
    await traced(page, /^Fans!P2/).waitFor();
    await pane(page).getByRole("button", { name: "Hold this cell" }).click();
    await traced(page, /^Fans!S5/).waitFor();
  });

  it("follows an edit of what the traced cell reads", async () => {
    const page = await tracing();
    await goTo(page, "Fans!P2");
    await pane(page).getByRole("button", { name: "Hold this cell" }).click();
    for (const column of ["K", "L", "M"]) await type(page, `Fans!${column}2`, "2");
    await pane(page).getByText("= 1.07 · 42 · √2").waitFor({ timeout: 20_000 });
    // 1.07 · 42 · √2, by hand.
    await pane(page).getByText("Result: 63.5548 cfm").waitFor();
    await pane(page).getByText("Agrees with a fresh computation.").waitFor();
  });

  it("says in words that a stored value is not what the formula gives", async () => {
    const page = await tracing();
    // The planted fault value-stale.
    await goTo(page, "Fans!P104");
    await pane(page)
      .getByText(/^Does not agree: a fresh computation gives [\d.]+ cfm\.$/)
      .waitFor();
  });

  it("copies the trace as text", async () => {
    const page = await tracing({ permissions: ["clipboard-read", "clipboard-write"] });
    await goTo(page, "Fans!P2");
    await traced(page, /^Fans!P2/).waitFor();
    await pane(page).getByRole("button", { name: "Copy as text" }).click();
    await pane(page).getByText("Copied.").waitFor();
    const text = await page.evaluate(() => navigator.clipboard.readText());
    expect(text).toMatch(/^Fans!P2, Flow \(cfm\): 97\.4276\r?\n {2}=FANROW\.FLOW\(/);
  });

  it("shows the text, selected, where the clipboard is refused", async () => {
    const page = await tracing();
    await page.evaluate(() => {
      Object.defineProperty(navigator.clipboard, "writeText", {
        value: () => Promise.reject(new DOMException("no", "NotAllowedError")),
      });
    });
    await goTo(page, "Fans!P2");
    await traced(page, /^Fans!P2/).waitFor();
    await pane(page).getByRole("button", { name: "Copy as text" }).click();
    const box = pane(page).getByRole("textbox", { name: /clipboard was refused/ });
    await box.waitFor();
    const selected = await box.evaluate((each: HTMLTextAreaElement) =>
      each.value.slice(each.selectionStart, each.selectionEnd),
    );
    expect(selected).toMatch(/^Fans!P2, Flow \(cfm\): 97\.4276\n/);
    expect(await faults(page, paneOnly)).toEqual([]);
  });

  it("has no fault that axe finds in any theme, as narrow as a pane is", async () => {
    const page = await tracing();
    await narrow(page);
    await goTo(page, "Fans!P104");
    await traced(page, "Fans!P104, Flow (cfm)").waitFor();
    expect(await faultsInEveryTheme(page, paneOnly)).toEqual([]);
    await goTo(page, "Fans!N2");
    await traced(page, "Fans!N2, Box pressure (Pa)").waitFor();
    expect(await faultsInEveryTheme(page, paneOnly)).toEqual([]);
  });

  it("scrolls a long sum within itself, by keyboard too, and never the pane sideways", async () => {
    const page = await tracing();
    await narrow(page);
    // A formula of several steps with a number of every kind in them.
    await goTo(page, "Job!E2");
    await page.keyboard.type("=FANROW.AIR_DENSITY(68,40,,5400)");
    await page.keyboard.press("Enter");
    await goTo(page, "Job!E2");
    await traced(page, /^Job!E2/).waitFor();
    const sums = pane(page).locator("[tabindex='0']:has(> p)");
    await sums.first().waitFor();
    const [sideways, panel] = await Promise.all([
      sums.last().evaluate((sum) => sum.scrollWidth - sum.clientWidth),
      pane(page)
        .getByRole("tabpanel")
        .evaluate((each) => each.scrollWidth - each.clientWidth),
    ]);
    expect(sideways).toBeGreaterThan(0);
    expect(panel).toBe(0);
    for (const cell of ["Fans!S2", "Fans!J2", "Fans!O2"]) {
      await goTo(page, cell);
      await traced(page, new RegExp(`^${cell}`)).waitFor();
      expect(
        await pane(page)
          .getByRole("tabpanel")
          .evaluate((each) => each.scrollWidth - each.clientWidth),
      ).toBe(0);
    }
  });
});

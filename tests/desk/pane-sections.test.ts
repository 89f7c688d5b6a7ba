import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { estimateName, existingName, proofName, wholeName } from "../../workbooks/files";
import { faultsInEveryTheme } from "./setup/axe";
import { deskBrowser } from "./setup/browser";
import { goTo } from "./setup/cells";
import { openFiles } from "./setup/files";

const open = deskBrowser();
const pane = (page: Page) => page.getByRole("complementary", { name: "Task pane" });
const show = (page: Page, tab: string) =>
  pane(page).getByRole("tab", { name: tab, exact: true }).click();
const section = (page: Page, name: string | RegExp) => pane(page).getByRole("region", { name });

/** The desk with a workbook of the project checked, its pane as narrow as Excel's. */
async function checked(name: string): Promise<Page> {
  const page = await open();
  const bytes = readFileSync(new URL(`../../workbooks/${name}`, import.meta.url));
  await openFiles(page, { name, bytes });
  await page.getByTitle(name, { exact: true }).waitFor();
  await page.getByRole("separator", { name: "Width of the pane" }).press("Home");
  await pane(page).getByRole("button", { name: "Check again" }).waitFor({ timeout: 30_000 });
  return page;
}

/** Opens every fold of the screen. */
async function unfold(page: Page): Promise<void> {
  const folds = pane(page).locator("details:not([open])");
  while ((await folds.count()) > 0) await folds.first().locator("summary").first().press("Enter");
}

async function expectSound(page: Page): Promise<void> {
  expect(await faultsInEveryTheme(page, '[aria-label="Task pane"]')).toEqual([]);
  const panel = pane(page).getByRole("tabpanel");
  const over = await panel.evaluate((each) => each.scrollWidth - each.clientWidth);
  expect(over).toBeLessThanOrEqual(0);
}

describe("the sections on a selected fan, dwelling or box", () => {
  it("have no fault that axe finds in any theme, and fit a narrow pane", async () => {
    const page = await checked(existingName);
    await show(page, "Rates");
    await goTo(page, "Fans!B4");
    await section(page, "Fan Flat 1, K1").waitFor();
    await unfold(page);
    await pane(page).getByRole("searchbox", { name: "Search the numbers" }).waitFor();
    await expectSound(page);
    await show(page, "Readings");
    await section(page, "Spread of Flat 1, K1").waitFor();
    await unfold(page);
    await expectSound(page);
    await show(page, "Start");
    await pane(page).getByRole("checkbox", { name: "Air density" }).check();
    await expectSound(page);
  });

  it("draw the proof of a box", async () => {
    const page = await checked(proofName);
    await show(page, "Openings");
    const box = section(page, "Box 5");
    await box.getByRole("heading", { name: "Proof: proved" }).waitFor();
    await box.getByRole("button", { name: "Numbers" }).last().click();
    const table = box.getByRole("table", { name: "Paired readings of Box 5" });
    expect(await table.getByRole("row").count()).toBe(21);
    await expectSound(page);
  });

  it("follow the selection from one fan to the next", async () => {
    const page = await checked(existingName);
    await show(page, "Rates");
    await goTo(page, "Fans!B2");
    await section(page, "Fan Flat 1, B1").getByText("Required 50 cfm").waitFor();
    await section(page, "Air")
      .getByText(/^Density 0\.98/)
      .waitFor();
    await section(page, "Equipment").getByText("a measured flow waives it").waitFor();
    await goTo(page, "Dwellings!A7");
    await section(page, "Dwelling Flat 6")
      .getByText(/^Still missing: /)
      .waitFor();
    const partly = section(page, "Running part of the time");
    await partly.getByLabel("Share of time (%)").fill("0");
    await partly.getByText(/^Type a share of the time/).waitFor();
  });

  it("tell of supply beside exhaust, of a system's rate and of a fan that was read again", async () => {
    const page = await checked(wholeName);
    await show(page, "Rates");
    await goTo(page, "Dwellings!A3");
    const house = section(page, "Dwelling House 2");
    await house.getByText(/^Supply moves 75 and exhaust 62 cfm: .*not balanced/).waitFor();
    await goTo(page, "Dwellings!A6");
    await section(page, "Dwelling House 5").getByText("Rate of the system").first().waitFor();
    await goTo(page, "Fans!B18");
    const fan = section(page, "Fan House 5, B1");
    await fan.getByText("41 cfm, short, 2026-10-10").waitFor();
    await fan.getByText("84 cfm, meets, 2026-10-17").waitFor();
    await expectSound(page);
    await show(page, "Readings");
    await pane(page).getByText("Flow against required").waitFor();
    const filter = pane(page).getByRole("combobox").first();
    expect(await filter.locator("option").allTextContents()).toContain("read again (1)");
    await expectSound(page);
  });

  it("keep a caution away once it was put away, whichever screen shows it next", async () => {
    const page = await checked(existingName);
    await show(page, "Openings");
    await pane(page).getByText("Taped boxes.").waitFor();
    const away = pane(page).getByRole("button", { name: "Put the caution away" });
    // The bar on taped boxes, then that of the planner: neither forgets the other.
    await away.first().click();
    await away.first().click();
    await show(page, "Readings");
    await pane(page).getByText("Flow against required").waitFor();
    expect(await pane(page).getByText("Ladders.").count()).toBe(0);
    await show(page, "Openings");
    await pane(page).getByText("Plan a box").waitFor();
    expect(await pane(page).getByText("Taped boxes.").count()).toBe(0);
  });
});

describe("the rates of an estimate", () => {
  it("show its order list, with another edition beside it", async () => {
    const page = await checked(estimateName);
    await show(page, "Rates");
    await pane(page).getByText("Order list").click();
    const fans = pane(page).getByRole("table", { name: "Fans to buy" });
    await fans.waitFor();
    // The demo's own quantities: a test of the command works such numbers out beside it.
    expect(await fans.getByRole("row").nth(1).textContent()).toBe("Stock 808045120.005,400.00");
    await pane(page).getByLabel("Beside it").selectOption("IRC-2021");
    await fans.getByText("Quantity, IRC-2021").waitFor();
    await expectSound(page);
  }, 60_000);
});

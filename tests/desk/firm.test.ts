import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { faults } from "./setup/axe";
import { deskBrowser } from "./setup/browser";
import { addressField, sheetTab } from "./setup/cells";
import { openFiles, saveCopy } from "./setup/files";
import { firmLayouts } from "./setup/firm-layouts";

const open = deskBrowser();
const pane = (page: Page) => page.getByRole("complementary", { name: "Task pane" });
const screen = (page: Page, name: string) => pane(page).getByRole("tab", { name, exact: true });

describe.each(firmLayouts)("$name", ({ sheet, bytes, slip, corrects }) => {
  it("is read as it is, leads to its slip, and is read again when a line is corrected", async () => {
    const page = await open();
    await openFiles(page, { name: "job.xlsx", bytes: bytes() });
    await sheetTab(page, sheet).waitFor();
    await pane(page).getByRole("button", { name: "Check again" }).waitFor({ timeout: 30_000 });

    const found = pane(page)
      .locator("button[data-go]")
      .filter({ hasText: new RegExp(`${sheet}'?!${slip}$`) });
    await found.first().click();
    await expect.poll(() => addressField(page).inputValue()).toBe(slip);

    await screen(page, "Fit").click();
    const { role, line } = corrects;
    const taken = pane(page)
      .getByRole("combobox", { name: `${role} stands in` })
      .first();
    expect(await taken.inputValue()).toBe(line);
    await taken.selectOption("");
    const nowhere = pane(page).locator("summary", {
      hasText: new RegExp(`Not in a column.*${role}`),
    });
    await nowhere.first().waitFor();
    expect(await faults(page, '[aria-label="Task pane"]')).toEqual([]);
    const panel = pane(page).getByRole("tabpanel");
    expect(await panel.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeLessThanOrEqual(
      0,
    );
    const fit = Workbook.open((await saveCopy(page)).bytes).sheet("Fit");
    expect([1, 2].map((col) => fit?.cell(1, col)?.value ?? "")).toEqual([line, ""]);
  });
});

describe("a word that is not known", () => {
  it("is asked once, and its answer is kept in the workbook and taken by the next", async () => {
    const page = await open();
    await openFiles(page, {
      name: "job.xlsx",
      bytes: (firmLayouts[0] as (typeof firmLayouts)[0]).bytes(),
    });
    await pane(page).getByRole("button", { name: "Check again" }).waitFor({ timeout: 30_000 });
    await screen(page, "Fit").click();
    const asked = pane(page).getByRole("region", { name: 'What does "Pendel" mean?' });
    await asked.getByText("3 cells").waitFor();
    await asked.getByRole("button", { name: "on demand" }).click();
    await asked.waitFor({ state: "detached" });
    const [saved] = await Promise.all([
      page.waitForEvent("download"),
      pane(page).getByRole("link", { name: "Save for other workbooks" }).click(),
    ]);

    const next = await open();
    await openFiles(next, {
      name: "next.xlsx",
      bytes: (firmLayouts[0] as (typeof firmLayouts)[0]).bytes(),
    });
    await pane(next).getByRole("button", { name: "Check again" }).waitFor({ timeout: 30_000 });
    await screen(next, "Fit").click();
    const question = pane(next).getByRole("region", { name: 'What does "Pendel" mean?' });
    await question.waitFor();
    await pane(next)
      .getByLabel("Firm's file")
      .setInputFiles(await saved.path());
    await question.waitFor({ state: "detached" });
  });
});

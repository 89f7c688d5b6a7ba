import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { smallJob } from "../records/small-job";
import { deskBrowser } from "./setup/browser";
import { cell, goTo, sheetTab } from "./setup/cells";
import { openFiles } from "./setup/files";

const open = deskBrowser();
const override = "\u202e";

/** A job whose texts hold characters that would act on a screen, under a file name with one too. */
async function opened(): Promise<Page> {
  const workbook = smallJob({ settings: { "Job name": `Two${override}semoh` } });
  const fans = workbook.sheet("Fans");
  fans?.setValue(1, 0, `Lot${override}1`);
  fans?.setValue(1, 1, "B1\u0085");
  fans?.setValue(1, 5, "Box\u200b9");
  const page = await open();
  await openFiles(page, { name: `j${override}ob.xlsx`, bytes: workbook.save() });
  await sheetTab(page, "Fans").waitFor();
  return page;
}

describe("characters that would act on a screen", () => {
  it("are shown as marks on every screen of the pane and in the grid", async () => {
    const page = await opened();
    const pane = page.getByRole("complementary", { name: "Task pane" });
    await pane.getByRole("button", { name: "Check again" }).waitFor({ timeout: 30_000 });
    await expect.poll(() => pane.textContent()).toContain("Lot‹U+202E›1");
    await goTo(page, "Fans!A2");
    expect(await (await cell(page, "A2")).textContent()).toContain("Lot‹U+202E›1");
    for (const tab of await pane.getByRole("tab").all()) {
      await tab.click();
      await page.waitForTimeout(150);
      if ((await tab.textContent())?.includes("Readings"))
        await pane.locator("svg text", { hasText: "‹U+202E›" }).first().waitFor();
      expect(await page.locator("body").textContent()).not.toMatch(
        // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there.
        /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200b\u202a-\u202e\u2066-\u2069]/,
      );
    }
    expect(await page.title()).not.toContain(override);
  });
});

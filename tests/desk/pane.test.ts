import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { deskBrowser } from "./setup/browser";
import { addressField, cell, contentField, goTo, tool, type } from "./setup/cells";

const open = deskBrowser();

const paneOf = (page: Page) => page.getByRole("complementary", { name: "Task pane" });

async function check(page: Page): Promise<void> {
  await paneOf(page).getByRole("button", { name: "Check again" }).waitFor({ timeout: 30_000 });
}

describe("the task pane beside the grid", () => {
  it("checks the open workbook through Office.js and leads to the cell of a finding", async () => {
    const page = await open();
    await check(page);
    const place = paneOf(page).getByRole("button", { name: "Fans!K3" }).first();
    await place.click();
    await expect.poll(() => addressField(page).inputValue()).toBe("K3");
    expect(await (await cell(page, "K3")).getAttribute("aria-selected")).toBe("true");
  });

  it("marks cells from the start with a sign besides the colour and the words at the foot, and takes the marks off again", async () => {
    const page = await open();
    await check(page);
    await goTo(page, "Fans!K2");
    const marked = (await cell(page, "K3")).getByRole("img", { name: /^marked: 16.2 Pa is above/ });
    await marked.waitFor();
    expect(await (await cell(page, "K2")).getByRole("img").count()).toBe(0);
    await goTo(page, "Fans!K3");
    await page.getByText(/^K3 16.2 Pa is above the 8 Pa window/).waitFor();
    // Marks of the page are no part of the workbook.
    expect(await tool(page, "Undo").isDisabled()).toBe(true);
    await paneOf(page).getByRole("switch", { name: "Mark the cells" }).click();
    await marked.waitFor({ state: "detached" });
  });

  it("checks a reading again as it is typed in the grid", async () => {
    const page = await open();
    await check(page);
    const place = paneOf(page).getByRole("button", { name: "Fans!K3" });
    await place.first().waitFor();
    for (const column of ["K", "L", "M"]) await type(page, `Fans!${column}3`, "4.5");
    await expect.poll(() => place.count(), { timeout: 20_000 }).toBe(0);
    // What is new is told at its cell while the next one is being typed.
    await type(page, "Fans!K3", "4.5 Pa");
    await page
      .getByText(/^K3 Reading 1 \(Pa\) holds the text "4.5 Pa"/)
      .waitFor({ timeout: 20_000 });
    expect(await addressField(page).inputValue()).toBe("K4");
  });

  it("waits while a cell is being edited, and answers afterwards", async () => {
    const page = await open();
    await check(page);
    await goTo(page, "Fans!V2");
    await contentField(page).fill("half a note");
    await paneOf(page).getByRole("button", { name: "Check again" }).click();
    expect(await (await cell(page, "V2")).textContent()).toBe("half a note");
  });

  it("keeps its state while it is put out of view", async () => {
    const page = await open();
    await check(page);
    await tool(page, "Pane").click();
    expect(await paneOf(page).count()).toBe(0);
    await tool(page, "Pane").click();
    await paneOf(page).getByRole("button", { name: "Check again" }).waitFor();
  });

  it("takes the theme of the page, and stays where it was", async () => {
    const page = await open();
    await paneOf(page).getByRole("tab", { name: "Rates", exact: true }).click();
    const ground = () =>
      paneOf(page)
        .getByRole("tablist", { name: "Screens" })
        .evaluate((tabs) => getComputedStyle(tabs.parentElement as Element).backgroundColor);
    const grounds = new Set<string>();
    for (const theme of ["Light", "Dark", "High contrast"]) {
      await tool(page, "Theme").click();
      await page.getByRole("menuitemradio", { name: theme }).click();
      const before = [...grounds];
      await expect.poll(ground).not.toBe(before.at(-1));
      grounds.add(await ground());
    }
    expect(grounds.size).toBe(3);
    const selected = paneOf(page).getByRole("tab", { selected: true });
    expect(await selected.textContent()).toBe("Rates");
  });
});

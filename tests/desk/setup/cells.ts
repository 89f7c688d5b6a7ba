import type { Locator, Page } from "playwright-core";

/** A cell of the sheet in view, found as a screen reader finds it: by column and row header. */
export async function cell(page: Page, address: string): Promise<Locator> {
  const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(address) as unknown as [string, string, string];
  const header = page.getByRole("columnheader", { name: letters, exact: true });
  const column = await header.getAttribute("aria-colindex");
  return page
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader", { name: row, exact: true }) })
    .locator(`[role="gridcell"][aria-colindex="${column}"]`);
}

/** Goes to a cell by typing its address. */
export async function goTo(page: Page, address: string): Promise<void> {
  const field = addressField(page);
  await field.fill(address);
  await field.press("Enter");
}

/** The text of a cell of the sheet in view, wherever it is scrolled to. */
export async function read(page: Page, address: string): Promise<string> {
  const cells = address.split("!").at(-1) as string;
  await goTo(page, address);
  return ((await (await cell(page, cells)).textContent()) ?? "").replace("◆", "").trim();
}

/** Types into a cell and finishes with Enter. */
export async function type(page: Page, address: string, text: string): Promise<void> {
  await goTo(page, address);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

export const addressField = (page: Page) => page.getByRole("textbox", { name: /^Address/ });
export const contentField = (page: Page) =>
  page.getByRole("textbox", { name: "Content of the cell" });
export const tool = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
export const messages = (page: Page) => page.getByRole("region", { name: "Messages" });
export const sheetTab = (page: Page, name: string) =>
  page.getByRole("tablist", { name: "Sheets" }).getByRole("tab", { name, exact: true });

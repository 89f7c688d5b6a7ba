import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { deskBrowser } from "./setup/browser";
import { goTo, messages, read, tool } from "./setup/cells";

const open = deskBrowser();
const allowed = { permissions: ["clipboard-read", "clipboard-write"] };

async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((value) => navigator.clipboard.writeText(value), text);
  await page.keyboard.press("Control+v");
}

const clipboard = async (page: Page) =>
  (await page.evaluate(() => navigator.clipboard.readText())).replaceAll("\r\n", "\n");

describe("blocks of cells", () => {
  it("takes a block pasted from a spreadsheet, recalculates, and undoes it in one step", async () => {
    const page = await open("desk.html", allowed);
    const before = await read(page, "Fans!P2");
    await goTo(page, "Fans!K2");
    await paste(page, "2.5\t2.5\t2.5\r\n3\t3\t3\r\n");
    expect(await read(page, "P2")).toBe((1.07 * 42 * Math.sqrt(2.5)).toFixed(1));
    expect(await read(page, "M3")).toBe("3.0");
    await tool(page, "Undo").click();
    expect(await read(page, "P2")).toBe(before);
    expect(await tool(page, "Undo").isDisabled()).toBe(true);
  });

  it("takes comma-separated lines, with quotes and commas inside them", async () => {
    const page = await open("desk.html", allowed);
    await goTo(page, "Dwellings!H2");
    await paste(page, 'plain,"with, comma"\n"two ""words""",4\n');
    expect(await read(page, "I2")).toBe("with, comma");
    expect(await read(page, "H3")).toBe('two "words"');
    expect(await read(page, "I3")).toBe("4");
  });

  it("leaves a sentence with a comma in one cell", async () => {
    const page = await open("desk.html", allowed);
    await goTo(page, "Dwellings!H2");
    await paste(page, "no access, key missing");
    expect(await read(page, "H2")).toBe("no access, key missing");
    expect(await read(page, "I2")).toBe("");
  });

  it("copies a block as it is shown, for other programs", async () => {
    const page = await open("desk.html", allowed);
    await goTo(page, "Fans!A2:C3");
    await page.keyboard.press("Control+c");
    expect(await clipboard(page)).toBe("Lot 01\tB1\tOwner's bath\nLot 01\tB2\tHall bath");
  });

  it("moves the references of formulas along when they are copied within the workbook", async () => {
    const page = await open("desk.html", allowed);
    await goTo(page, "Fans!P2");
    await page.keyboard.press("Control+c");
    await goTo(page, "Fans!X3");
    await page.keyboard.press("Control+v");
    const field = page.getByRole("textbox", { name: "Content of the cell" });
    expect(await field.inputValue()).toBe("=FANROW.FLOW(R3,V3,W3,Job!$B$5)");
  });

  it("fills a selection with one copied cell, and fills rows down", async () => {
    const page = await open("desk.html", allowed);
    await goTo(page, "Fans!T2");
    await page.keyboard.press("Control+c");
    const tester = await clipboard(page);
    await goTo(page, "Fans!V2:V4");
    await page.keyboard.press("Control+v");
    for (const row of [2, 3, 4]) expect(await read(page, `V${row}`)).toBe(tester);
    await goTo(page, "Fans!G2:G4");
    await page.keyboard.press("Control+d");
    expect(await read(page, "G4")).toBe(await read(page, "G2"));
  });

  it("cuts a block and empties it", async () => {
    const page = await open("desk.html", allowed);
    await goTo(page, "Fans!T2:U2");
    await page.keyboard.press("Control+x");
    expect(await clipboard(page)).toContain("\t");
    expect(await read(page, "T2")).toBe("");
    expect(await read(page, "U2")).toBe("");
  });

  it("refuses a block that would reach outside the grid", async () => {
    const page = await open("desk.html", allowed);
    await goTo(page, "Fans!ALL1");
    await paste(page, "1\t2\t3");
    await messages(page).getByText("reaches outside the grid").waitFor();
    expect(await read(page, "ALL1")).toBe("");
  });
});

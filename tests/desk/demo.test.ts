import { describe, expect, it } from "vitest";
import { deskBrowser } from "./setup/browser";
import { addressField, cell, contentField, goTo, read, sheetTab, tool, type } from "./setup/cells";

const open = deskBrowser();

/** Flow through an opening as the job states it: constant × area × √pressure. */
const flow = (constant: number, area: number, pressure: number) =>
  (constant * area * Math.sqrt(pressure)).toFixed(1);

describe("the demo job at the desk", () => {
  it("opens by itself, with its sheets as tabs", async () => {
    const page = await open();
    const tabs = page.getByRole("tablist", { name: "Sheets" }).getByRole("tab");
    expect(await tabs.count()).toBe(4);
    for (const [i, name] of ["Job", "Dwellings", "Boxes", "Fans"].entries())
      expect(await tabs.nth(i).getAttribute("value")).toBe(name);
    expect(await tabs.first().getAttribute("aria-selected")).toBe("true");
    expect(await read(page, "A1")).toBe("Setting");
  });

  it("is read by row and column headers, with number formats and dates as the workbook has them", async () => {
    const page = await open();
    expect(await read(page, "Fans!A2")).toBe("Lot 01");
    expect(await read(page, "Fans!J2")).toBe("42.00");
    expect(await read(page, "Fans!P2")).toBe(flow(1.07, 42, 4.7));
    expect(await read(page, "Fans!U2")).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  });

  it("recalculates flow, range status and verdict when a reading is typed", async () => {
    const page = await open();
    for (const column of ["K", "L", "M"]) await type(page, `Fans!${column}2`, "2.25");
    expect(await read(page, "N2")).toBe("2.3");
    expect(await read(page, "P2")).toBe(flow(1.07, 42, 2.25));
    expect(await read(page, "Q2")).toBe("in range");
    for (const column of ["K", "L", "M"]) await type(page, `${column}2`, "12");
    expect(await read(page, "P2")).toBe(flow(1.07, 42, 12));
    expect(await read(page, "Q2")).not.toBe("in range");
    expect(await read(page, "S2")).toBe("out of range");
  });

  it("carries a change to the formulas of other sheets", async () => {
    const page = await open();
    const before = await read(page, "Dwellings!F2");
    await type(page, "Fans!K2", "7");
    expect(await read(page, "Dwellings!F2")).not.toBe(before);
  });

  it("undoes and redoes an entry with all that followed from it", async () => {
    const page = await open();
    const before = await read(page, "Fans!P2");
    expect(await tool(page, "Undo").isDisabled()).toBe(true);
    await type(page, "Fans!K2", "7.9");
    const after = await read(page, "P2");
    expect(after).not.toBe(before);
    await tool(page, "Undo").click();
    expect(await read(page, "P2")).toBe(before);
    expect(await read(page, "K2")).toBe("4.6");
    await tool(page, "Redo").click();
    expect(await read(page, "P2")).toBe(after);
    await page.keyboard.press("Control+z");
    expect(await read(page, "P2")).toBe(before);
    await page.keyboard.press("Control+y");
    expect(await read(page, "P2")).toBe(after);
  });

  it("shows formulas as they are typed, and takes a changed one", async () => {
    const page = await open();
    await goTo(page, "Fans!P2");
    expect(await contentField(page).inputValue()).toBe("=FANROW.FLOW(J2,N2,O2,Job!$B$5)");
    await contentField(page).fill("=FANROW.FLOW(J2,4,O2,Job!$B$5)");
    await contentField(page).press("Enter");
    expect(await addressField(page).inputValue()).toBe("P3");
    expect(await read(page, "P2")).toBe(flow(1.07, 42, 4));
  });

  it("says in words what is wrong with a cell in error", async () => {
    const page = await open();
    await type(page, "Fans!H2", "Box 99");
    await goTo(page, "Fans!J2");
    const wrong = await cell(page, "J2");
    expect(await wrong.textContent()).toBe("#VALUE!");
    expect(await wrong.getByTitle("#VALUE!").getAttribute("title")).toContain("Box 99");
    expect(await page.locator("#desk-entry-note").textContent()).toContain("Box 99");
  });

  it("shows another sheet by its tab and comes back to where one was", async () => {
    const page = await open();
    await goTo(page, "Fans!K5");
    await sheetTab(page, "Boxes").click();
    expect(await addressField(page).inputValue()).toBe("A1");
    expect(await page.getByRole("grid").getAttribute("aria-label")).toBe("Sheet Boxes");
    await sheetTab(page, "Fans").click();
    expect(await addressField(page).inputValue()).toBe("K5");
  });

  it("lays a spilled result over its cells and takes it away again", async () => {
    const page = await open();
    await type(page, "Boxes!N2", "=FANROW.REACH(G2,H2)");
    expect(await read(page, "N2")).toMatch(/^7\.56/);
    expect(await read(page, "O2")).toMatch(/^21\.39/);
    await goTo(page, "N2");
    await page.keyboard.press("Delete");
    expect(await read(page, "O2")).toBe("");
  });

  it("refuses an address that is none, and says what to type", async () => {
    const page = await open();
    await goTo(page, "nowhere at all");
    await page.getByText('"nowhere at all" is no cell').waitFor();
  });
});

import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { deskBrowser } from "./setup/browser";
import { addressField, cell, contentField, goTo, messages, read, tool, type } from "./setup/cells";

const open = deskBrowser();

/** Presses keys one after the other and counts them; a chord counts once. */
async function pressAll(page: Page, keys: readonly string[]): Promise<number> {
  let count = 0;
  for (const key of keys) {
    const each = key.length > 1 && /^(Tab|Enter|Control\+.|Alt\+.*)$/.test(key) ? [key] : [...key];
    for (const one of each) await page.keyboard.press(one);
    count += each.length;
  }
  return count;
}

describe("typing fans at the desk", () => {
  it("takes at most 23 keys a fan: over typed cells only, completed from the lists and the column", async () => {
    const page = await open();
    await goTo(page, "Fans!A105");
    expect(await addressField(page).inputValue()).toBe("A105");
    const before = await read(page, "Fans!P105");
    await goTo(page, "Fans!A105");
    const start = await pressAll(page, ["Control+."]);
    // Dwelling and box are repeated from the row above, which has no room volume.
    expect(await addressField(page).inputValue()).toBe("B106");
    const typed = await pressAll(page, [
      ...["B9", "Tab", "H", "Tab", "b", "Tab", "o", "Tab"],
      ...["110", "Tab"],
    ]);
    // The box stands there already.
    expect(await addressField(page).inputValue()).toBe("I106");
    const rest = await pressAll(page, ["A", "Tab", "4.1", "Tab"]);
    expect(start + typed + rest).toBeLessThanOrEqual(23);
    expect(await read(page, "D106")).toBe("bathroom");
    expect(await read(page, "E106")).toBe("on demand");
    expect(before).not.toBe("");
    // What the heading says is no entry of the list.
    await goTo(page, "Fans!C2");
    await pressAll(page, ["Roo", "Enter"]);
    expect(await read(page, "C2")).toBe("Roo");
    // From a row that Enter has led to, the next one is that row itself.
    await goTo(page, "Fans!A107");
    await page.keyboard.press("Control+.");
    expect(await addressField(page).inputValue()).toMatch(/^[A-Z]107$/);
  });

  it("gives a new row below the list the formulas of the row above, in one step to undo", async () => {
    const page = await open();
    await goTo(page, "Fans!A106");
    await page.keyboard.type("Lot 99");
    await page.keyboard.press("Enter");
    await goTo(page, "Fans!P106");
    expect(await contentField(page).inputValue()).toContain("FANROW.FLOW(J106");
    const ground = async (address: string) =>
      (await cell(page, address)).evaluate((each) => getComputedStyle(each).backgroundColor);
    expect(await ground("P106")).toBe(await ground("P105"));
    await page.keyboard.press("Control+z");
    expect(await read(page, "Fans!A106")).toBe("");
    await goTo(page, "Fans!P106");
    expect(await contentField(page).inputValue()).toBe("");
  });

  it("keeps a broken formula as text, says so, and lets the next entry go to its own cell", async () => {
    const page = await open();
    await goTo(page, "Dwellings!H2");
    await page.keyboard.type("=SUM(1");
    await page.keyboard.press("Enter");
    await page.keyboard.type("next");
    await page.keyboard.press("Enter");
    expect(await read(page, "H2")).toBe("=SUM(1");
    expect(await read(page, "H3")).toBe("next");
    await messages(page)
      .getByText(/^H2: kept as text/)
      .waitFor();
  });

  it("sorts, inserts and takes out rows by their typed cells, and leaves formulas in place", async () => {
    const page = await open();
    const formula = async (address: string) => {
      await goTo(page, address);
      return contentField(page).inputValue();
    };
    const before = await formula("Dwellings!E2");
    const rows = async (name: string) => {
      await tool(page, "Rows").click();
      await page.getByRole("menuitem", { name }).click();
    };
    const names = async () => {
      const all: string[] = [];
      for (const row of [2, 3, 4, 28]) all.push(await read(page, `Dwellings!A${row}`));
      return all;
    };
    const first = await names();
    await goTo(page, "Dwellings!A2");
    await rows("Sort by this column, down");
    const turned = await names();
    expect(turned[0]).toBe(first[3]);
    expect(turned[3]).toBe(first[0]);
    expect(await formula("Dwellings!E2")).toBe(before);
    await page.keyboard.press("Control+z");
    expect(await names()).toEqual(first);
    await goTo(page, "Dwellings!A3");
    await rows("Insert a row here");
    expect(await read(page, "Dwellings!A3")).toBe("");
    expect(await read(page, "Dwellings!A4")).toBe(first[1]);
    await goTo(page, "Dwellings!A3");
    await rows("Take this row out");
    expect(await names()).toEqual(first);
    // A value typed over a formula goes with its row, and its place gets the formula of the column.
    await type(page, "Dwellings!E2", "61");
    await goTo(page, "Dwellings!A2");
    await rows("Sort by this column, down");
    const at = [28, 27, 26, 25].map((row) => `Dwellings!E${row}`);
    const typed: string[] = [];
    for (const address of at) typed.push(await formula(address));
    expect(typed.filter((text) => text === "61")).toHaveLength(1);
    expect(await formula("Dwellings!E2")).toBe(before);
    await page.keyboard.press("Control+z");
  });

  it("shows only the rows like a cell, also once they are sorted, and goes on in the grid", async () => {
    const page = await open();
    const rows = async (name: string) => {
      await tool(page, "Rows").click();
      await page.getByRole("menuitem", { name }).click();
    };
    await goTo(page, "Dwellings!B3");
    const wanted = await read(page, "Dwellings!B3");
    await rows("Only rows like this cell");
    await page.getByText("in this column are shown").waitFor();
    await rows("Sort by this column, up");
    await page.keyboard.press("ArrowDown");
    const here = await addressField(page).inputValue();
    expect(await (await cell(page, here)).textContent()).toBe(wanted);
    await rows("All rows again");
    await page.getByRole("rowheader", { name: "4", exact: true }).waitFor();
    expect(await page.getByText("in this column are shown").count()).toBe(0);
  });

  it("finds and replaces in typed cells", async () => {
    const page = await open();
    await goTo(page, "Fans!A1");
    await page.keyboard.press("Control+f");
    const bar = page.getByRole("search", { name: "Find and replace" });
    await bar.getByRole("textbox", { name: "Find" }).fill("Guest bath");
    await page.keyboard.press("Enter");
    expect(await addressField(page).inputValue()).toMatch(/^C\d+$/);
    await bar.getByRole("textbox", { name: "Replace with" }).fill("Spare bath");
    await bar.getByRole("button", { name: "Replace all" }).click();
    await bar.getByText(/cells changed/).waitFor();
    await page.keyboard.press("Escape");
    await type(page, "Fans!V2", "x");
  });

  it("chooses from the list of a cell, fills down, and drags a column wider", async () => {
    const page = await open();
    await goTo(page, "Fans!E3");
    await page.keyboard.press("Alt+ArrowDown");
    const editor = page.getByRole("combobox", { name: "Edit E3" });
    const offered = await editor.evaluate((input: HTMLInputElement) =>
      [...(input.list?.options ?? [])].map(({ value }) => value),
    );
    expect(offered).toEqual(["on demand", "continuous"]);
    // A list beside a text shows only what is like it: the field is empty until something is chosen.
    expect(await editor.inputValue()).toBe("");
    await page.keyboard.press("Enter");
    expect(await read(page, "E3")).toBe("on demand");
    await goTo(page, "Fans!E3");
    await page.keyboard.press("Alt+ArrowDown");
    await editor.fill("continuous");
    await page.keyboard.press("Enter");
    await goTo(page, "E3:E5");
    await page.keyboard.press("Control+d");
    expect(await read(page, "E5")).toBe("continuous");
    const heading = page.getByRole("columnheader", { name: "E", exact: true });
    const right = async () => {
      const { x = 0, y = 0, width = 0, height = 0 } = (await heading.boundingBox()) ?? {};
      return { x: x + width, y: y + height / 2, width };
    };
    const { x, y, width } = await right();
    await page.mouse.move(x - 1, y);
    await page.mouse.down();
    await page.mouse.move(x + 59, y, { steps: 3 });
    await page.mouse.up();
    expect((await right()).width).toBeCloseTo(width + 60, 0);
  });

  it("turns the sheets with Ctrl+PageDown and types today with Ctrl+;", async () => {
    const page = await open();
    await goTo(page, "Dwellings!H2");
    await page.keyboard.press("Control+;");
    expect(await read(page, "H2")).toMatch(/^\d{4}-\d\d-\d\d$/);
    await page.keyboard.press("Control+PageDown");
    await page.getByRole("tab", { name: "Boxes", selected: true }).waitFor();
    await (await cell(page, "A1")).waitFor();
  });
});

import { describe, expect, it } from "vitest";
import { deskBrowser } from "./setup/browser";
import { addressField, cell, contentField, goTo, read, sheetTab, tool } from "./setup/cells";

const open = deskBrowser();

describe("the desk by keyboard alone", () => {
  it("leads from the top of the page to a typed reading and back out", async () => {
    const page = await open();
    const { keyboard } = page;
    await keyboard.press("F6");
    expect(await tool(page, "Open").evaluate((each) => each === document.activeElement)).toBe(true);
    await keyboard.press("F6");
    await keyboard.press("End");
    await keyboard.press("Enter");
    expect(await sheetTab(page, "Fans").getAttribute("aria-selected")).toBe("true");
    await keyboard.press("F6");
    await keyboard.press("F6");
    for (let i = 0; i < 10; i++) await keyboard.press("ArrowRight");
    await keyboard.press("ArrowDown");
    expect(await addressField(page).inputValue()).toBe("K2");
    await keyboard.type("3");
    await keyboard.press("Tab");
    await keyboard.type("3");
    await keyboard.press("Tab");
    await keyboard.type("3");
    await keyboard.press("Enter");
    expect(await addressField(page).inputValue()).toBe("K3");
    expect(await (await cell(page, "M2")).textContent()).toBe("3.0");
    await keyboard.press("F6");
    const pane = page.getByRole("complementary", { name: "Task pane" });
    expect(await pane.evaluate((each) => each.contains(document.activeElement))).toBe(true);
    await keyboard.press("Shift+F6");
    const focused = await cell(page, "K3");
    expect(await focused.evaluate((each) => each === document.activeElement)).toBe(true);
    expect(await read(page, "P2")).toBe((1.07 * 42 * Math.sqrt(3)).toFixed(1));
  });

  it("leads from a finding to its cell, where one types at once, and by F6 back to the finding", async () => {
    const page = await open();
    const finding = page.locator("#desk-pane button[data-go]").filter({ hasText: "Fans!K9" });
    await finding.focus();
    await page.keyboard.press("Enter");
    const wanted = await cell(page, "K9");
    await expect.poll(() => wanted.evaluate((each) => each === document.activeElement)).toBe(true);
    await page.keyboard.press("F6");
    expect(await finding.evaluate((each) => each === document.activeElement)).toBe(true);
    await page.keyboard.press("Shift+F6");
    await page.keyboard.type("4.1");
    await page.keyboard.press("Enter");
    expect(await read(page, "K9")).toBe("4.1");
  });

  it("moves by cells, to the ends of rows, to the corners and by screens", async () => {
    const page = await open();
    const at = () => addressField(page).inputValue();
    await goTo(page, "Fans!C4");
    const steps: [key: string, address: string][] = [
      ["ArrowUp", "C3"],
      ["ArrowLeft", "B3"],
      ["Home", "A3"],
      ["End", "W3"],
      ["Control+End", "W105"],
      ["Control+Home", "A1"],
      ["Control+ArrowDown", "A105"],
      ["Control+ArrowUp", "A1"],
      ["Enter", "A2"],
      ["Shift+Enter", "A1"],
      ["Tab", "B1"],
      ["Shift+Tab", "A1"],
    ];
    for (const [key, address] of steps) {
      await page.keyboard.press(key);
      expect([key, await at()]).toEqual([key, address]);
    }
    await page.keyboard.press("PageDown");
    const row = Number((await at()).slice(1));
    expect(row).toBeGreaterThan(10);
    await page.keyboard.press("PageUp");
    expect(await at()).toBe("A1");
  });

  it("extends a selection with Shift and sums it up", async () => {
    const page = await open();
    await goTo(page, "Fans!K2");
    await page.keyboard.press("Shift+ArrowRight");
    await page.keyboard.press("Shift+ArrowRight");
    expect(await addressField(page).inputValue()).toBe("K2:M2");
    expect(await (await cell(page, "L2")).getAttribute("aria-selected")).toBe("true");
    await page.getByText("Filled cells 3 · Mean 4.7 · Sum 14.1").waitFor();
  });

  it("types over a cell, edits one with F2, and lets go with Escape", async () => {
    const page = await open();
    await goTo(page, "Dwellings!H2");
    await page.keyboard.type("first");
    await page.keyboard.press("ArrowDown");
    expect(await read(page, "H2")).toBe("first");
    await page.keyboard.press("F2");
    await page.keyboard.type(" visit");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.type("-");
    await page.keyboard.press("Enter");
    expect(await read(page, "H2")).toBe("first visi-t");
    await page.keyboard.type("never kept");
    await page.keyboard.press("Escape");
    expect(await read(page, "H2")).toBe("first visi-t");
    await page.keyboard.press("Delete");
    expect(await read(page, "H2")).toBe("");
  });

  it("edits in the field above the grid and goes back to the grid", async () => {
    const page = await open();
    await goTo(page, "Dwellings!H3");
    await contentField(page).focus();
    await page.keyboard.type("from above");
    await page.keyboard.press("Enter");
    const below = await cell(page, "H4");
    expect(await below.evaluate((each) => each === document.activeElement)).toBe(true);
    expect(await read(page, "H3")).toBe("from above");
    await contentField(page).focus();
    await page.keyboard.type(" not kept");
    await page.keyboard.press("Escape");
    expect(await read(page, "H3")).toBe("from above");
  });

  it("changes the width of the pane with the arrow keys", async () => {
    const page = await open();
    const divider = page.getByRole("separator", { name: "Width of the pane" });
    await divider.focus();
    const before = Number(await divider.getAttribute("aria-valuenow"));
    await page.keyboard.press("ArrowLeft");
    expect(Number(await divider.getAttribute("aria-valuenow"))).toBe(before + 20);
    const pane = page.getByRole("complementary", { name: "Task pane" });
    expect((await pane.boundingBox())?.width).toBe(before + 20);
    await tool(page, "Pane").click();
    expect(await pane.isVisible()).toBe(false);
  });
});

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, unzipSync } from "fflate";
import { describe, expect, inject, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { deskBrowser } from "./setup/browser";
import { messages, read, sheetTab, tool, type } from "./setup/cells";
import { dropFile, openFiles, saveCopy } from "./setup/files";
import { firmWorkbook } from "./setup/firm-workbook";

const open = deskBrowser();
const firm = { name: "visits.xlsx", bytes: firmWorkbook() };
const prose = { name: "prose.xlsx", bytes: strToU8("not a workbook at all") };

describe("opening files at the desk", () => {
  it("opens a firm's own workbook and calculates its formulas as they are edited", async () => {
    const page = await open();
    await openFiles(page, firm);
    await sheetTab(page, "Tests").waitFor();
    expect(await read(page, "F2")).toBe("19 Mar 2026");
    await type(page, "D2", "9");
    expect(Number(await read(page, "E2"))).toBeCloseTo(1.07 * 18 * Math.sqrt(9), 6);
  });

  it("opens a file that is dropped on the page", async () => {
    const page = await open();
    await dropFile(page, firm);
    await sheetTab(page, "Notes").click();
    expect(await read(page, "A1")).toBe("Keys are with the caretaker.");
  });

  it("says of each file that cannot be read why, and keeps the open job", async () => {
    const page = await open();
    await type(page, "Fans!V2", "still here");
    const cut = { name: "cut.xlsx", bytes: firm.bytes.slice(0, firm.bytes.length / 2) };
    await openFiles(page, prose, cut);
    await messages(page).getByText("prose.xlsx: ").waitFor();
    await messages(page).getByText("cut.xlsx: ").waitFor();
    expect(await read(page, "Fans!V2")).toBe("still here");
  });

  it("opens the one readable file among others that are not", async () => {
    const page = await open();
    await openFiles(page, prose, firm);
    await sheetTab(page, "Tests").waitFor();
  });

  it("asks before a changed job is left, and lets one stay", async () => {
    const page = await open();
    await type(page, "Fans!V2", "not to be lost");
    await openFiles(page, firm);
    const dialog = page.getByRole("dialog");
    await dialog.getByRole("button", { name: "Stay" }).click();
    expect(await read(page, "Fans!V2")).toBe("not to be lost");
    await openFiles(page, firm);
    await dialog.getByRole("button", { name: "Open without saving" }).click();
    await sheetTab(page, "Tests").waitFor();
  });

  it("asks what a new job is to have, edition and all, and begins one that calculates", async () => {
    const page = await open();
    await tool(page, "New").click();
    await page.getByText("job.xlsx").first().waitFor();
    const add = page.getByRole("button", { name: "Add the job sheets" });
    await add.waitFor();
    expect(await add.getAttribute("aria-disabled")).toBe("true");
    // Typed in the list: an option begins with its short name.
    await page.getByLabel("Edition that applies").pressSequentially("IRC 2021");
    await add.click();
    await sheetTab(page, "Fans").waitFor();
    // The tabs stand before the pane has gone to where typing begins.
    const shown = () => sheetTab(page, "Dwellings").getAttribute("aria-selected");
    await expect.poll(shown, { timeout: 20_000 }).toBe("true");
    expect(await read(page, "Job!B3")).toBe("IRC-2021");
    await type(page, "Boxes!A2", "Box 1");
    await type(page, "Boxes!B2", "A");
    await type(page, "Boxes!C2", "round");
    await type(page, "Boxes!D2", "4");
    await type(page, "Boxes!G2", "1");
    expect(await read(page, "I2")).toBe((Math.PI * 4).toFixed(2));
  });
});

describe("saving a copy", () => {
  it("gives back the very bytes that were opened where nothing was changed", async () => {
    const page = await open();
    const saved = await saveCopy(page);
    const demo = readFileSync(join(inject("built"), "workbooks/alder-terrace.xlsx"));
    expect(saved.name).toBe("alder-terrace-copy.xlsx");
    expect(Buffer.from(saved.bytes).equals(demo)).toBe(true);
  });

  it("keeps every part byte for byte but the sheets whose cells changed", async () => {
    const page = await open();
    await type(page, "Job!B2", "Alder Terrace, second visit");
    const saved = unzipSync((await saveCopy(page)).bytes);
    const demo = unzipSync(readFileSync(join(inject("built"), "workbooks/alder-terrace.xlsx")));
    expect(Object.keys(saved)).toEqual(Object.keys(demo));
    const changed = Object.keys(demo).filter(
      (part) => !Buffer.from(saved[part] as Uint8Array).equals(demo[part] as Uint8Array),
    );
    expect(changed).toEqual(["xl/worksheets/sheet1.xml"]);
  });

  it("holds the edits and the recalculated values", async () => {
    const page = await open();
    await openFiles(page, firm);
    await sheetTab(page, "Tests").waitFor();
    await type(page, "D3", "1");
    const saved = await saveCopy(page);
    const sheet = Workbook.open(saved.bytes).sheet("Tests");
    expect(sheet?.cell(2, 3)?.value).toBe(1);
    expect(sheet?.cell(2, 4)?.value).toBeCloseTo(1.07 * 18, 6);
    expect(sheet?.cell(2, 4)?.formula).toBe("_xldudf_FANROW_FLOW(C3,D3)");
  });

  it("ends the warning that the page gives before changes are lost", async () => {
    const page = await open();
    let warnings = 0;
    page.on("dialog", (dialog) => {
      if (dialog.type() === "beforeunload") warnings++;
      void dialog.accept();
    });
    await type(page, "Fans!V2", "x");
    await page.reload();
    expect(warnings).toBe(1);
    await page.getByRole("gridcell").first().waitFor();
    await type(page, "Fans!V2", "y");
    await saveCopy(page);
    await page.reload();
    expect(warnings).toBe(1);
  });
});

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import Papa from "papaparse";
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { deskBrowser } from "./setup/browser";
import { addressField, goTo, read, sheetTab, type } from "./setup/cells";
import { openFiles, saveCopy } from "./setup/files";

const open = deskBrowser();
const pane = (page: Page) => page.getByRole("complementary", { name: "Task pane" });
const screen = (page: Page, name: string) => pane(page).getByRole("tab", { name, exact: true });

async function check(page: Page): Promise<void> {
  await pane(page)
    .getByRole("button", { name: /^Check (the workbook|again)$/ })
    .click();
  await pane(page).getByRole("button", { name: "Check again" }).waitFor({ timeout: 30_000 });
}

/** The places of all findings in the list, such as "Fans!K3", sorted. */
async function places(page: Page): Promise<string[]> {
  const texts = await pane(page).locator("button[data-go]").allTextContents();
  return texts.map((text) => /[A-Z][a-z]+![A-Z]+\d+$/.exec(text)?.[0] ?? text).sort();
}

const finding = (page: Page, place: string) =>
  pane(page)
    .locator("button[data-go]")
    .filter({ hasText: new RegExp(`${place}$`) });

/** A firm's own sheet: other words, another order, other units, a title above. */
function firmReadings(): Uint8Array {
  const workbook = Workbook.create();
  const line = (...values: (string | number)[]) => values.map((value) => ({ value }));
  const pressures = [4.5, 3.2, 5.1, 2.4, 12, 6.2, 3.9, 4.4, 2.8, 5.5];
  workbook.addSheet("October readings", {
    rows: [
      line("Harrow Lane"),
      line("Unit", "Room", "Hole area, sq cm", "dP (Pa)", "Nameplate L/s", "L/s", "Weather"),
      ...pressures.map((pressure, i) => {
        const [area, room, rated] = i % 2 ? [90.3, "kitchen", 18] : [154.84, "bath", 28];
        // The trade's 1.07 in L/s, cm² and Pa.
        const flow = Math.round(0.0782726 * (area as number) * Math.sqrt(pressure) * 10) / 10;
        return line(
          String(1 + (i >> 1)),
          room as string,
          area as number,
          pressure,
          rated as number,
          flow,
          "calm",
        );
      }),
    ],
  });
  return workbook.save();
}

describe("a reviewer at the desk", () => {
  it("finds every planted fault of the demo job and nothing else", async () => {
    const page = await open();
    await check(page);
    const key = Papa.parse<{ sheet: string; cell: string }>(
      readFileSync(join(import.meta.dirname, "../../workbooks/alder-terrace-answers.csv"), "utf8"),
      { header: true, skipEmptyLines: true },
    ).data.map(({ sheet, cell }) => `${sheet}!${cell}`);
    expect(await places(page)).toEqual(key.sort());
  });

  it("lands on the cell, applies the mend, sees the row turn sound, and takes it back", async () => {
    const page = await open();
    await check(page);
    await finding(page, "Fans!K9").click();
    await expect.poll(() => addressField(page).inputValue()).toBe("K9");
    await pane(page).getByRole("button", { name: "Turn the sign, Fans!K9" }).click();
    await expect.poll(() => finding(page, "Fans!K9").count(), { timeout: 20_000 }).toBe(0);
    expect(await read(page, "Fans!K9")).toBe("4.1");
    expect(await read(page, "Fans!S9")).toBe("meets");
    await pane(page)
      .getByRole("button", { name: /^(Undo|Take back)/ })
      .first()
      .click();
    await expect.poll(() => finding(page, "Fans!K9").count(), { timeout: 20_000 }).toBe(1);
    expect(await read(page, "Fans!K9")).toBe("-4.1");
  });

  it("sees the flag appear when a pressure above the window is typed", async () => {
    const page = await open();
    await check(page);
    expect(await finding(page, "Fans!K2").count()).toBe(0);
    for (const column of ["K", "L", "M"]) await type(page, `Fans!${column}2`, "9.4");
    // Between the entries the readings lie far apart, which is a finding of its own.
    await pane(page).getByText("9.4 Pa is above the 8 Pa window").waitFor({ timeout: 20_000 });
    expect(await finding(page, "Fans!K2").count()).toBe(1);
  });

  it("corrects the fit of a renamed column, and the workbook keeps the choice", async () => {
    const page = await open();
    await type(page, "Fans!P1", "Draw (cfm)");
    await check(page);
    // The desk may have checked before the heading was typed.
    await expect.poll(() => finding(page, "Fans!P68").count(), { timeout: 20_000 }).toBe(0);
    await screen(page, "Fit").click();
    const heading = pane(page).getByRole("combobox", { name: "Draw (cfm) is taken for" });
    await heading.selectOption({ label: "Flow" });
    await screen(page, "Check").click();
    await finding(page, "Fans!P68").waitFor({ timeout: 30_000 });
    const fit = Workbook.open((await saveCopy(page)).bytes).sheet("Fit");
    expect([0, 1, 2].map((col) => fit?.cell(1, col)?.value)).toEqual([
      "Fans",
      "Draw (cfm)",
      "Flow",
    ]);
  });

  it("checks a workbook with a firm's own headings", async () => {
    const page = await open();
    await openFiles(page, { name: "october.xlsx", bytes: firmReadings() });
    await sheetTab(page, "October readings").waitFor();
    await check(page);
    await pane(page).getByText("12 Pa is above the 8 Pa window").waitFor();
    const texts = await pane(page).locator("button[data-go]").allTextContents();
    expect(texts).toEqual([expect.stringMatching(/October readings!D7$/)]);
    await pane(page).getByText("pressure above the window").first().waitFor();
    await screen(page, "Fit").click();
    await pane(page)
      .getByText(/the values follow flow = constant × area × √pressure: under the root/)
      .waitFor();
  });

  it("writes the Findings sheet, saves a copy and finds everything in it again", async () => {
    const page = await open();
    await check(page);
    await type(page, "Fans!V2", "seen twice");
    await pane(page).getByRole("button", { name: "Write Findings sheet" }).click();
    await sheetTab(page, "Findings").waitFor({ timeout: 30_000 });
    await goTo(page, "Fans!A1");
    const { bytes } = await saveCopy(page);
    const saved = Workbook.open(bytes);
    expect(saved.sheet("Fans")?.cell(1, 21)?.value).toBe("seen twice");
    expect(saved.sheet("Findings")?.rowCount).toBeGreaterThan(37);
    const demo = unzipSync(readFileSync(join(inject("built"), "workbooks/alder-terrace.xlsx")));
    const copy = unzipSync(bytes);
    const untouched = ["sheet1.xml", "sheet2.xml", "sheet3.xml"].map(
      (part) => `xl/worksheets/${part}`,
    );
    for (const part of untouched)
      expect(Buffer.from(copy[part] as Uint8Array).equals(demo[part] as Uint8Array)).toBe(true);
    await openFiles(page, { name: "again.xlsx", bytes });
    await page.getByText("again.xlsx").first().waitFor();
    expect(await read(page, "Fans!V2")).toBe("seen twice");
  });
});

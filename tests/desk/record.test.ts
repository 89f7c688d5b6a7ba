import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { faultsInEveryTheme } from "./setup/axe";
import { deskBrowser } from "./setup/browser";
import { addressField, messages, read, sheetTab, tool, type } from "./setup/cells";
import type { TestFile } from "./setup/files";

const open = deskBrowser();
const patience = { timeout: 30_000 };

const pane = (page: Page) => page.getByRole("complementary", { name: "Task pane" });
const button = (page: Page, name: string | RegExp) =>
  pane(page).getByRole("button", { name, exact: typeof name === "string" });
const screen = (page: Page, name: string) => pane(page).getByRole("tab", { name, exact: true });

async function check(page: Page): Promise<void> {
  await button(page, /^Check (the workbook|again)$/).click();
  await button(page, "Check again").waitFor(patience);
}

/** Accepts the pressure at Fans!K3. */
async function acceptFinding(page: Page): Promise<void> {
  await button(page, "Accept, Fans!K3").click();
  await pane(page).getByLabel("Reason").fill("Read twice with the grille off.");
  await pane(page).getByLabel("Initials").fill("AB");
  await button(page, "Accept the finding").click();
  await pane(page).getByText("36 open, 1 accepted").waitFor(patience);
}

/** Compares the open workbook with a file. */
async function compare(page: Page, { name, bytes }: TestFile): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    button(page, "Choose an older file").click(),
  ]);
  await chooser.setFiles({
    name,
    mimeType: "application/octet-stream",
    buffer: Buffer.from(bytes),
  });
}

/** Saves a copy of another kind and gives its bytes. */
async function saveOther(page: Page, item: string): Promise<TestFile> {
  await tool(page, "Other copies").click();
  const [saved] = await Promise.all([
    page.waitForEvent("download", patience),
    page.getByRole("menuitem", { name: item }).click(),
  ]);
  return { name: saved.suggestedFilename(), bytes: readFileSync(await saved.path()) };
}

const demoFile = (): TestFile => ({
  name: "alder-terrace.xlsx",
  bytes: readFileSync(join(inject("built"), "workbooks/alder-terrace.xlsx")),
});

const formulasOf = (bytes: Uint8Array) =>
  Workbook.open(bytes).sheets.flatMap((sheet) =>
    [...sheet.cells()].flatMap(({ formula }) => (formula === null ? [] : [formula])),
  );

describe("accepting a finding at the desk", () => {
  it("asks for a reason and initials, sets it apart, and opens it again once its row changes", async () => {
    const page = await open();
    await check(page);
    await pane(page).getByText("37 open", { exact: true }).waitFor();
    await button(page, "Accept, Fans!K3").click();
    await button(page, "Accept the finding").click();
    await pane(page).getByText("Say why the row is right as it is.").waitFor();
    await pane(page).getByText("Say who accepts it.").waitFor();
    await pane(page).getByLabel("Reason").press("Escape");
    expect(await button(page, "Accept, Fans!K3").evaluate((each) => each.matches(":focus"))).toBe(
      true,
    );
    await acceptFinding(page);
    await sheetTab(page, "Accepted").waitFor();
    await pane(page).getByText("1 accepted", { exact: true }).click();
    await pane(page)
      .getByText(/^Accepted by AB on \d{4}-\d\d-\d\d: Read twice with the grille off\.$/)
      .waitFor();
    expect(await button(page, "Accept, Fans!K3").count()).toBe(0);
    // The initials are remembered for the next one.
    await button(page, "Accept, Fans!K6").click();
    expect(await pane(page).getByLabel("Initials").inputValue()).toBe("AB");
    await button(page, "Leave it open").click();
    await type(page, "Fans!V3", "seen again");
    await pane(page)
      .getByText(/^Accepted before by AB .*, but the row has changed since\.$/)
      .waitFor(patience);
    await pane(page).getByText("37 open", { exact: true }).waitFor();
  });

  it("opens it again when it is taken back, and marks only what is open", async () => {
    const page = await open();
    await check(page);
    await acceptFinding(page);
    const marked = (row: number) =>
      page
        .locator(`[data-row="${row - 1}"][data-col="10"]`)
        .getByRole("img", { name: /^marked/ })
        .count();
    await sheetTab(page, "Fans").click();
    await expect.poll(() => marked(6)).toBe(1);
    expect(await marked(3)).toBe(0);
    await pane(page).getByText("1 accepted", { exact: true }).click();
    await button(page, "Take back, Fans!K3").click();
    await pane(page).getByText("37 open", { exact: true }).waitFor(patience);
    await expect.poll(() => marked(3)).toBe(1);
  });
});

describe("the records at the desk", () => {
  it("are written to sheets, with what is open said before", async () => {
    const page = await open();
    await check(page);
    await screen(page, "Record").click();
    await pane(page).getByText("37 findings are open. The records will say so.").waitFor();
    await pane(page).getByLabel("Record of a dwelling").selectOption({ label: "Lot 01" });
    await button(page, "Write 2 sheets").click();
    await pane(page).getByText("2 sheets written").waitFor(patience);
    await button(page, "Record Lot 01").click();
    await expect.poll(() => addressField(page).inputValue()).toBe("A1");
    expect(await read(page, "A1")).toBe("Dwelling record: Lot 01");
    expect(await read(page, "Record!A1")).toBe("Record of fan flow tests");
    await button(page, "Write 2 sheets").click();
    await pane(page).getByText("Wrote 2 sheets.").waitFor(patience);
    expect(await sheetTab(page, "Record 2").count()).toBe(0);
  });

  it("say what the check rests on", async () => {
    const page = await open();
    await check(page);
    await screen(page, "Record").click();
    await pane(page)
      .getByText("International Residential Code 2021", { exact: true })
      .first()
      .waitFor();
    await pane(page)
      .getByText(/^[0-9a-f]{8} [0-9a-f]{8} [0-9a-f]{8}$/)
      .waitFor();
  });
});

describe("comparing with an older file at the desk", () => {
  it("finds nothing in the same file, then just the edit, and leads to its cell", async () => {
    const page = await open();
    await check(page);
    await screen(page, "Record").click();
    await compare(page, demoFile());
    await pane(page)
      .getByRole("paragraph")
      .filter({ hasText: "Nothing differs" })
      .waitFor(patience);
    await type(page, "Fans!V5", "second visit");
    await button(page, "Compare again").click(patience);
    await pane(page).getByText("1 change since alder-terrace.xlsx", { exact: true }).waitFor();
    const change = button(page, /V5$/);
    await change.click();
    await expect.poll(() => addressField(page).inputValue()).toBe("V5");
    const item = pane(page)
      .getByRole("listitem")
      .filter({ has: page.getByRole("button", { name: /V5$/ }) });
    expect(await item.textContent()).toMatch(/was\s*blank\s*is\s*second visit$/);
  });

  it("shows a typed reading, and what follows from it apart", async () => {
    const page = await open();
    await check(page);
    for (const column of ["K", "L", "M"]) await type(page, `Fans!${column}2`, "9.4");
    await pane(page).getByText("9.4 Pa is above the 8 Pa window").waitFor(patience);
    await screen(page, "Record").click();
    await compare(page, demoFile());
    await pane(page)
      .getByText(/^\d+ changes since alder-terrace\.xlsx$/)
      .waitFor(patience);
    await button(page, "3 typed").click();
    const cells = pane(page).locator("button[data-go]");
    expect((await cells.allTextContents()).map((text) => text.slice(-2))).toEqual([
      "K2",
      "L2",
      "M2",
    ]);
    await button(page, "3 typed").click();
    await button(page, /^\d+ findings$/).click();
    await pane(page).getByText("New: pressure above the window").waitFor();
  });

  it("says in one line why a file cannot be read, and keeps the list", async () => {
    const page = await open();
    await check(page);
    await screen(page, "Record").click();
    await compare(page, demoFile());
    const list = pane(page).getByRole("paragraph").filter({ hasText: "Nothing differs" });
    await list.waitFor(patience);
    await compare(page, { name: "prose.xlsx", bytes: Buffer.from("not a workbook") });
    await pane(page)
      .getByRole("alert")
      .filter({ hasText: /^prose\.xlsx: / })
      .waitFor(patience);
    expect(await list.count()).toBe(1);
  });
});

describe("copies that need no add-in", () => {
  it("hold native formulas only, and leave the open job unsaved as it was", async () => {
    const page = await open();
    await type(page, "Fans!V2", "kept");
    const { name, bytes } = await saveOther(page, "Save plain copy");
    expect(name).toBe("alder-terrace-plain.xlsx");
    const formulas = formulasOf(bytes);
    expect(formulas.length).toBeGreaterThan(500);
    expect(formulas.filter((formula) => /FANROW/i.test(formula))).toEqual([]);
    expect(Workbook.open(bytes).sheet("Fans")?.cell(1, 21)?.value).toBe("kept");
    await messages(page).getByText("alder-terrace-plain.xlsx is saved").waitFor();
    await page.getByText("not saved", { exact: true }).waitFor();
  });

  it("hold no formulas at all where that is asked for", async () => {
    const page = await open();
    const { name, bytes } = await saveOther(page, "Save values copy");
    expect(name).toBe("alder-terrace-values.xlsx");
    expect(formulasOf(bytes)).toEqual([]);
  });

  it("are offered in a menu that does not cover the page", async () => {
    const page = await open();
    await tool(page, "Other copies").click();
    await page.getByRole("menuitem", { name: "Save plain copy" }).waitFor();
    const isPage = await page.evaluate(
      () => document.elementFromPoint(200, 500)?.closest("#desk-root") !== null,
    );
    expect(isPage).toBe(true);
  });

  it("are a matter of the page: the pane at the desk does not offer them", async () => {
    const page = await open();
    await check(page);
    await screen(page, "Record").click();
    await button(page, "Choose an older file").waitFor();
    expect(await button(page, "Make a plain copy").count()).toBe(0);
  });
});

describe("the new screens for everyone", () => {
  it("have no fault that axe finds in any theme", async () => {
    const page = await open();
    await check(page);
    await acceptFinding(page);
    await pane(page).getByText("1 accepted", { exact: true }).click();
    await button(page, "Accept, Fans!K6").click();
    await button(page, "Accept the finding").click();
    await pane(page).getByText("Say why the row is right as it is.").waitFor();
    expect(await faultsInEveryTheme(page, "#desk-pane")).toEqual([]);
    await screen(page, "Record").click();
    await compare(page, demoFile());
    await pane(page)
      .getByText("2 changes since alder-terrace.xlsx", { exact: true })
      .waitFor(patience);
    expect(await faultsInEveryTheme(page, "#desk-pane")).toEqual([]);
  });

  it("can be worked by keyboard alone at 320 pixels", async () => {
    const page = await open("desk.html", { viewport: { width: 320, height: 800 } });
    await check(page);
    await button(page, "Accept, Fans!K3").focus();
    await page.keyboard.press("Enter");
    await pane(page).getByLabel("Reason").waitFor();
    await expect
      .poll(() =>
        pane(page)
          .getByLabel("Reason")
          .evaluate((each) => each.matches(":focus")),
      )
      .toBe(true);
    await page.keyboard.type("Read twice.");
    await page.keyboard.press("Tab");
    await page.keyboard.type("AB");
    await page.keyboard.press("Enter");
    await pane(page).getByText("36 open, 1 accepted").waitFor(patience);
    // The next finding takes the focus over.
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.closest("li") !== null))
      .toBe(true);
    const { scroll, own } = await pane(page).evaluate((each) => ({
      scroll: each.scrollWidth,
      own: each.clientWidth,
    }));
    expect(scroll).toBeLessThanOrEqual(own);
  });
});

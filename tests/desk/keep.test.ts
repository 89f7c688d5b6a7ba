import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { deskBrowser } from "./setup/browser";
import { goTo, messages, read, tool, type } from "./setup/cells";
import { saveCopy } from "./setup/files";
import { firmWorkbook } from "./setup/firm-workbook";

const open = deskBrowser();

/** The jobs that the browser keeps. */
const kept = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ typing: { text: string } | null }[]>((done, fail) => {
        const opening = indexedDB.open("fanrow-desk");
        opening.onerror = () => fail(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const reading = db.transaction("kept").objectStore("kept").getAll();
          reading.onsuccess = () => {
            db.close();
            done(reading.result);
          };
        };
      }),
  );
const typing = async (page: Page) => (await kept(page))[0]?.typing?.text;
const keeps = (page: Page, count: number) =>
  expect.poll(async () => (await kept(page)).length, { timeout: 10_000 }).toBe(count);
const offer = (page: Page) => messages(page).getByText(/not saved\./);
const button = (page: Page, name: string) => messages(page).getByRole("button", { name });

async function reload(page: Page): Promise<void> {
  page.once("dialog", (dialog) => void dialog.accept());
  await page.reload();
  await page.getByRole("gridcell").first().waitFor();
}

describe("what was typed at the desk", () => {
  it("is offered after a reload and taken up with the cells and the text being typed", async () => {
    const page = await open();
    await type(page, "Fans!V2", "not to be lost");
    await goTo(page, "Fans!V3");
    await page.keyboard.type("half a not");
    await expect.poll(() => typing(page), { timeout: 10_000 }).toBe("half a not");
    await reload(page);
    expect(await offer(page).textContent()).toMatch(
      /^alder-terrace\.xlsx, 1 change from .*not saved\.$/,
    );
    await button(page, "Open it again").click();
    await offer(page).waitFor({ state: "detached" });
    await page.getByText("not saved", { exact: true }).waitFor();
    expect(await read(page, "Fans!V2")).toBe("not to be lost");
    expect(await read(page, "Fans!V3")).toBe("half a not");
    await keeps(page, 1);
  });

  it("is offered in a new tab once the old one is closed, and forgotten when it is left", async () => {
    const page = await open();
    await type(page, "Fans!V2", "first");
    await keeps(page, 1);
    const second = await open();
    await messages(second).getByText("is open in another tab too", { exact: false }).waitFor();
    expect(await offer(second).count()).toBe(0);
    await page.close();
    await reload(second);
    await offer(second).waitFor();
    expect(await messages(second).getByText("another tab").count()).toBe(0);
    await button(second, "Leave it").click();
    await keeps(second, 0);
    await second.reload();
    await second.getByRole("gridcell").first().waitFor();
    expect(await offer(second).count()).toBe(0);
  });

  it("is kept no longer once it is saved", async () => {
    const page = await open();
    await type(page, "Fans!V2", "saved");
    await keeps(page, 1);
    await saveCopy(page);
    await keeps(page, 0);
  });

  it("is said once not to be kept where the browser's storage refuses", async () => {
    const page = await open();
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("The quota has been exceeded.", "QuotaExceededError");
      };
    });
    const line = messages(page).getByText(/cannot be kept .*quota.*: save a copy/);
    await type(page, "Fans!V2", "x");
    await line.waitFor();
    await messages(page).getByRole("button", { name: "Dismiss" }).click();
    await type(page, "Fans!V3", "y");
    await page.waitForTimeout(1500);
    expect(await line.count()).toBe(0);
  });
});

describe("saving at the desk", () => {
  it("takes the name that was chosen", async () => {
    const page = await open();
    await tool(page, "Other copies").click();
    await page.getByRole("menuitem", { name: "Save under another name" }).click();
    const field = page.getByLabel("File name");
    await field.fill("a/b");
    await page.getByText("A file name holds none of").waitFor();
    await field.fill("second visit");
    const [saved] = await Promise.all([page.waitForEvent("download"), field.press("Enter")]);
    expect(saved.suggestedFilename()).toBe("second visit.xlsx");
  });

  it("writes into the opened file on request, but not over what another program wrote", async () => {
    const page = await open();
    await page.evaluate(async (base64) => {
      const folder = await navigator.storage.getDirectory();
      const handle = await folder.getFileHandle("visits.xlsx", { create: true });
      const target = await handle.createWritable();
      await target.write(Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0)));
      await target.close();
      Object.assign(window, { showOpenFilePicker: async () => [handle] });
    }, Buffer.from(firmWorkbook()).toString("base64"));
    const onDisk = () =>
      page.evaluate(async () => {
        const folder = await navigator.storage.getDirectory();
        const file = await (await folder.getFileHandle("visits.xlsx")).getFile();
        return [...new Uint8Array(await file.arrayBuffer())];
      });
    const saveBack = async () => {
      await tool(page, "Other copies").click();
      await page.getByRole("menuitem", { name: "Save into the opened file" }).click();
    };
    await tool(page, "Open").click();
    await page.getByRole("tab", { name: "Tests" }).waitFor();
    await type(page, "Tests!D3", "1");
    await saveBack();
    await messages(page).getByText("visits.xlsx is saved in its place.").waitFor();
    const written = Workbook.open(Uint8Array.from(await onDisk()));
    expect(written.sheet("Tests")?.cell(2, 3)?.value).toBe(1);
    await page.evaluate(async () => {
      const folder = await navigator.storage.getDirectory();
      const target = await (await folder.getFileHandle("visits.xlsx")).createWritable();
      await target.write("theirs");
      await target.close();
    });
    await type(page, "Tests!D3", "2");
    await saveBack();
    await messages(page)
      .getByText(/visits\.xlsx: it was changed elsewhere/)
      .waitFor();
    expect(String.fromCharCode(...(await onDisk()))).toBe("theirs");
  });
});

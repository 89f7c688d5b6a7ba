import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { tool } from "./cells";

const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

export interface TestFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Picks files with the tool for opening. */
export async function openFiles(page: Page, ...files: readonly TestFile[]): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    tool(page, "Open").click(),
  ]);
  await chooser.setFiles(
    files.map(({ name, bytes }) => ({ name, mimeType: type, buffer: Buffer.from(bytes) })),
  );
}

/** Drops a file on the page. */
export async function dropFile(page: Page, { name, bytes }: TestFile): Promise<void> {
  const data = await page.evaluateHandle(
    ({ name, base64 }) => {
      const transfer = new DataTransfer();
      const content = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      transfer.items.add(new File([content], name));
      return transfer;
    },
    { name, base64: Buffer.from(bytes).toString("base64") },
  );
  await page.dispatchEvent("body", "dragover", { dataTransfer: data });
  await page.dispatchEvent("body", "drop", { dataTransfer: data });
}

/** Saves a copy and gives its bytes. */
export async function saveCopy(page: Page): Promise<TestFile> {
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    tool(page, "Save a copy").click(),
  ]);
  return { name: saved.suggestedFilename(), bytes: readFileSync(await saved.path()) };
}

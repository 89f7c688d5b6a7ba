import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, inject } from "vitest";

const size = { width: 1280, height: 800 };

/**
 * A browser for the tests of a file; `open` gives a new page with the desk on it. Pages opened alike
 * have one context, so that the site's code is fetched and compiled once; nothing a test stored is
 * left for the next.
 */
export function deskBrowser() {
  let browser: Browser;
  const contexts = new Map<string, BrowserContext>();
  const troubles: string[] = [];

  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: "/usr/bin/chromium",
      args: [
        "--no-sandbox",
        // What paints in place of a card costs more than plain drawing.
        "--disable-gpu",
        "--disable-quic",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
      ],
    });
  });
  afterEach(async () => {
    for (const context of contexts.values()) {
      for (const page of context.pages()) {
        await page.evaluate(() => localStorage.clear());
        await page.close();
      }
      await forgetKept(context);
    }
  });
  afterAll(async () => {
    await browser.close();
    // Whatever a page wrote to its console as an error, and whatever it asked of another machine.
    expect(troubles).toEqual([]);
  });

  return async function open(
    path = "desk.html",
    options: BrowserContextOptions = {},
  ): Promise<Page> {
    const key = JSON.stringify(options);
    const context =
      contexts.get(key) ??
      (await browser.newContext({ viewport: size, reducedMotion: "reduce", ...options }));
    contexts.set(key, context);
    const page = await context.newPage();
    // The tests answer the plain chooser of files; nothing can answer the other one.
    await page.addInitScript(() => Reflect.deleteProperty(window, "showOpenFilePicker"));
    const address = new URL(path, inject("site"));
    page.on("console", (message) => {
      // A file that is not there is part of what is tested, and shown on the page.
      if (message.type() === "error" && !/status of 404/.test(message.text()))
        troubles.push(message.text());
    });
    page.on("pageerror", (error) => troubles.push(String(error.stack ?? error)));
    page.on("request", (request) => {
      const url = request.url();
      if (!url.startsWith(address.origin) && !/^(data|blob):/.test(url))
        troubles.push(`asked for ${url}`);
    });
    await page.goto(address.href);
    await page.getByRole("grid").waitFor();
    await page.getByRole("gridcell").first().waitFor();
    return page;
  };
}

/** Deletes what desks kept, from a page of the site that keeps nothing itself. */
async function forgetKept(context: BrowserContext): Promise<void> {
  const page = await context.newPage();
  await page.goto(new URL("functions.json", inject("site")).href);
  await page.evaluate(
    () =>
      new Promise((done) => {
        const request = indexedDB.deleteDatabase("fanrow-desk");
        request.onsuccess = request.onerror = done;
      }),
  );
  await page.close();
}

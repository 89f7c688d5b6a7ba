import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from "vitest";
import { ensureCertificate } from "../../src/site/serve/certificate";
import { type ExcelServer, serveForExcel } from "../../src/site/serve/server";

const office = join(
  dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/package.json")),
  "dist",
);
const cdn = "https://appsforoffice.microsoft.com/lib/1/hosted/";

/** Stands in for an office.js that has found an Excel around it. */
const inExcel = `
  globalThis.happened = [];
  globalThis.commands = {};
  globalThis.CustomFunctions = { associate: (id) => happened.push(id) };
  globalThis.Office = {
    actions: { associate: (name, run) => { commands[name] = run; } },
    addin: { showAsTaskpane: async () => { happened.push("shown"); } },
    onReady: async () => ({ host: "Excel" }),
    context: { requirements: { isSetSupported: () => true } },
  };
  addEventListener("fanrow:check", () => happened.push("told to check"));`;

describe("the pane's page in a browser, served as it is to Excel", () => {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-pane-page-"));
  let browser: Browser;
  let server: ExcelServer;
  beforeAll(async () => {
    const certificate = await ensureCertificate(folder);
    server = await serveForExcel({ folder: inject("built"), certificate, port: 0 });
    browser = await chromium.launch({
      executablePath: "/usr/bin/chromium",
      args: ["--no-sandbox", "--disable-background-networking", "--no-first-run"],
    });
  });
  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
  });
  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true });
  });

  /** The page in a pane's width, with `script` as office.js, and what broke its policy. */
  async function open(script: (file: string) => string | Buffer) {
    const context = await browser.newContext({
      viewport: { width: 320, height: 600 },
      ignoreHTTPSErrors: true,
    });
    const page = await context.newPage();
    const refused: string[] = [];
    page.on("console", (message) => {
      if (/Content Security Policy/.test(message.text())) refused.push(message.text());
    });
    await page.route(/^https:\/\/(?!localhost)/, (route) => {
      const url = route.request().url();
      return url.startsWith(cdn)
        ? route.fulfill({
            contentType: "text/javascript",
            body: script(url.slice(cdn.length).replace(/\?.*/, "")),
          })
        : route.abort();
    });
    await page.addInitScript(() => {
      const shifts: number[] = [];
      Object.assign(globalThis, { shifts });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries())
          shifts.push((entry as PerformanceEntry & { value: number }).value);
      }).observe({ type: "layout-shift", buffered: true });
    });
    await page.goto(`${server.address}pane.html`);
    return { page, refused };
  }

  const read = <T>(page: Page, name: string) =>
    page.evaluate((key) => (globalThis as Record<string, unknown>)[key] as T, name);

  it("says what it is where the real office.js finds no Excel", async () => {
    const { page, refused } = await open((file) => readFileSync(join(office, file)));
    await page.getByRole("heading", { name: "The pane of an Excel add-in" }).waitFor();
    expect(await page.getByRole("tab").count()).toBe(0);
    expect(await page.getByRole("link").count()).toBe(2);
    expect(refused).toEqual([]);
  });

  it("has its functions first, then the pane, and nothing jumps", async () => {
    const { page, refused } = await open(() => inExcel);
    await page.getByRole("tab", { name: "Check" }).waitFor();
    expect(await read<string[]>(page, "happened")).toContain("FLOW");
    expect(await page.locator(".skeleton").count()).toBe(0);
    expect(await read<number[]>(page, "shifts")).toEqual([]);
    expect(refused).toEqual([]);
  });

  it("runs the ribbon's command: shows the pane, tells it to check, and ends", async () => {
    const { page } = await open(() => inExcel);
    const happened = await page.evaluate(async () => {
      const { commands, happened } = globalThis as unknown as {
        commands: Record<string, (event: { completed(): void }) => Promise<void>>;
        happened: string[];
      };
      await commands.checkWorkbook?.({ completed: () => happened.push("completed") });
      return happened;
    });
    expect(happened.slice(-3)).toEqual(["shown", "told to check", "completed"]);
  });

  it("says so where the pane's code does not arrive, and offers to try again", async () => {
    const { page } = await open(() => inExcel);
    const own = await page.locator("script[type=module]").getAttribute("src");
    const needed = [own?.split("/").at(-1) ?? "", "preload-helper"];
    const code = /\/assets\/.*\.js$/;
    await page.route(code, (route) =>
      needed.some((name) => route.request().url().includes(name))
        ? route.continue()
        : route.abort(),
    );
    await page.reload();
    await page.getByRole("heading", { name: "The pane did not open" }).waitFor();
    await page.unroute(code);
    await page.getByRole("button", { name: "Try again" }).click();
    await page.getByRole("tab", { name: "Check" }).waitFor();
  });
});

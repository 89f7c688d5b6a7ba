import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { tool } from "./cells";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
/** The rules whose outcome another theme can change. */
const colors = ["color-contrast", "link-in-text-block"];
const themes = { light: "Light", dark: "Dark", contrast: "High contrast" };

interface Axe {
  run(context: object, options: object): Promise<AxeResults>;
}

/** Every fault that axe finds in a part of a page, as "rule: element". */
export function faults(page: Page, part = "body"): Promise<string[]> {
  return violations(page, part, { type: "tag", values: rules });
}

/**
 * The same in the theme the page has, and what colours can be at fault for in the other themes. The
 * page is left in the last of them.
 */
export async function faultsInEveryTheme(page: Page, part = "body"): Promise<string[]> {
  const all = await faults(page, part);
  const now = await page.locator("html").getAttribute("data-theme");
  for (const [id, name] of Object.entries(themes).filter(([id]) => id !== now)) {
    await choose(page, name);
    await page.locator(`html[data-theme="${id}"]`).waitFor();
    await page.evaluate(drawn);
    const found = await violations(page, part, { type: "rule", values: colors });
    all.push(...found.map((fault) => `${name}: ${fault}`));
  }
  return all;
}

/** Chooses a theme of the desk, as its user does. */
export async function choose(page: Page, theme: string): Promise<void> {
  await tool(page, "Theme").click();
  await page.getByRole("menuitemradio", { name: theme }).click();
}

/** Waits in the page until what was changed is drawn and nothing passes from one colour to another. */
async function drawn(): Promise<void> {
  for (let frame = 0; frame < 2; frame += 1)
    await new Promise((done) => requestAnimationFrame(done));
  await Promise.allSettled(document.getAnimations().map((each) => each.finished));
}

async function violations(page: Page, part: string, runOnly: object): Promise<string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate(
    ({ only, within }) =>
      (globalThis as unknown as { axe: Axe }).axe.run(
        // The control library's sentinels: they take the focus only to pass it on at once.
        { include: [within], exclude: [["[data-tabster-dummy]"]] },
        { runOnly: only },
      ),
    { only: runOnly, within: part },
  );
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
  );
}

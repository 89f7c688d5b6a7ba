import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

interface Axe {
  run(context: object, options: object): Promise<AxeResults>;
}

/** Every fault that axe finds in a part of a page, as "rule: element". */
export async function faults(page: Page, part = "body"): Promise<string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate(
    ({ tags, within }) =>
      (globalThis as unknown as { axe: Axe }).axe.run(
        // The control library's sentinels: they take the focus only to pass it on at once.
        { include: [within], exclude: [["[data-tabster-dummy]"]] },
        { runOnly: { type: "tag", values: tags } },
      ),
    { tags: rules, within: part },
  );
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
  );
}

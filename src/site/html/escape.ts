/** Markup that is already safe: made by `html`, never by hand from a text. */
export class Html {
  constructor(readonly markup: string) {}
}

type Part = string | number | Html | readonly Part[] | undefined;

/** Markup from a template; every text put into it is escaped. */
export function html(fixed: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return new Html(fixed.map((text, i) => text + markupOf(parts[i])).join(""));
}

export function escaped(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}

function markupOf(part: Part): string {
  if (part === undefined) return "";
  if (part instanceof Html) return part.markup;
  if (Array.isArray(part)) return part.map(markupOf).join("");
  return escaped(String(part));
}

import { openPane, type PageOffice, type Part } from "./open-pane";

const element = (id: string) => document.getElementById(id) as HTMLElement;
const parts: readonly Part[] = ["pane", "elsewhere", "too-old", "failed"];

// A failed import stays failed for as long as the page lives.
element("again").addEventListener("click", () => location.reload());

const shown = await openPane({
  office: (globalThis as { Office?: PageOffice }).Office,
  listener: window,
  mount: async () => {
    const { mountPane } = await import("../../pane");
    mountPane(element("pane"));
  },
});
for (const part of parts) element(part).hidden = part !== shown;

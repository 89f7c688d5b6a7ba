export const gridId = "desk-sheet";

/** The parts of the page that F6 steps through, in their order on the page. */
const regions = ["#desk-tools", "#desk-tabs", "#desk-entry", `#${gridId}`, "#desk-pane"];

/** Puts the keyboard on the next part of the page that is in view. */
export function nextRegion(backwards: boolean): void {
  const shown = regions
    .map((selector) => document.querySelector<HTMLElement>(selector))
    .filter((region) => region !== null && region.getClientRects().length > 0) as HTMLElement[];
  const at = shown.findIndex((region) => region.contains(document.activeElement));
  for (let step = 1; step <= shown.length; step++) {
    const move = backwards ? -step : step;
    const region =
      shown[
        ((((at < 0 && backwards ? 0 : at) + move) % shown.length) + shown.length) % shown.length
      ];
    if (region && focusIn(region)) return;
  }
}

function focusIn(region: HTMLElement): boolean {
  const focusable = region.querySelectorAll<HTMLElement>(
    'button:not(:disabled), [role="tab"][aria-selected="true"], input:not(:disabled), select, textarea, a[href], .desk-active, [tabindex="0"]',
  );
  const wanted =
    wayBack(region) ??
    region.querySelector<HTMLElement>('[role="tab"][aria-selected="true"], .desk-active') ??
    [...focusable].find((each) => each.getClientRects().length > 0);
  wanted?.focus();
  return region.contains(document.activeElement);
}

/** What in the pane led to the sheet last, so that F6 leads back to the finding one came from. */
let cameFrom: HTMLElement | null = null;

export function noteFocus({ target }: FocusEvent): void {
  const inPane = target instanceof HTMLElement && target.closest("#desk-pane") ? target : null;
  if (inPane) cameFrom = inPane.matches("[data-go]") ? inPane : null;
}

function wayBack(region: HTMLElement): HTMLElement | null {
  return cameFrom && region.contains(cameFrom) && cameFrom.getClientRects().length > 0
    ? cameFrom
    : null;
}

/** Puts the keyboard back on the active cell. */
export function focusGrid(): void {
  document.querySelector<HTMLElement>(`#${gridId} .desk-active`)?.focus();
}

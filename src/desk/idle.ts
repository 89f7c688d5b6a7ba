import type { WorkbookHost } from "./host";

/** What the first edit needs is made ready while the page is idle, for each workbook that is opened. */
export function beReady(host: WorkbookHost): void {
  if (!("requestIdleCallback" in globalThis)) return;
  const prepare = (deadline: IdleDeadline) => {
    while (deadline.timeRemaining() > 0) if (!host.prepare()) return;
    requestIdleCallback(prepare);
  };
  const begin = () => requestIdleCallback(prepare);
  host.onChange(({ kind }) => {
    if (kind === "opened") begin();
  });
  begin();
}

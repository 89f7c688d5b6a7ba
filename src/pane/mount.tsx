import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { Pane } from "./pane";
import { SessionProvider } from "./parts/session-context";
import { followCommands } from "./session/commands";
import { excelHost } from "./session/excel-host";
import { type PageMark, pageMarks } from "./session/page-marks";
import { Session } from "./session/session";

interface PaneOptions {
  /** Shows the marks on the page; left out, they become formats of the workbook when asked for. */
  readonly showMarks?: (marks: readonly PageMark[]) => void;
  /** Puts the keyboard on the active cell, which an add-in in Excel cannot do. */
  readonly toSheet?: () => void;
  /** Reads and checks the workbook at once. */
  readonly checksAtOnce?: boolean;
}

/**
 * Shows the task pane in `element`, which it fills. Office must be ready. Returns what takes the
 * pane away again.
 */
export function mountPane(element: HTMLElement, options: PaneOptions = {}): () => void {
  const { showMarks, toSheet, checksAtOnce = false } = options;
  const session = new Session({
    ...excelHost,
    ...(showMarks ? pageMarks(excelHost, showMarks) : {}),
    ...(toSheet ? { toSheet } : {}),
  });
  const root = createRoot(element);
  root.render(
    <StrictMode>
      <SessionProvider value={session}>
        <Pane />
      </SessionProvider>
    </StrictMode>,
  );
  void session.open(checksAtOnce);
  // At once and not in an effect: a command may be what has opened the pane.
  const unfollow = followCommands(window, session);
  return () => {
    unfollow();
    session.close();
    root.unmount();
  };
}

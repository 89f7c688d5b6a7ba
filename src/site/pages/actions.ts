/** The part of Office's global object that commands use. */
export interface CommandOffice {
  readonly actions: {
    associate(name: string, run: (event: CommandEvent) => Promise<void>): void;
  };
  readonly addin: { showAsTaskpane(): Promise<void> };
}

/** What Excel hands a command; it waits until `completed` has been called. */
export interface CommandEvent {
  completed(): void;
}

/** What each command of the manifest tells the pane, which listens on `window`. */
const tidings: Readonly<Record<string, () => Event>> = {
  checkWorkbook: () => new CustomEvent("fanrow:check"),
  showRates: () => new CustomEvent("fanrow:show", { detail: { screen: "rates" } }),
};

/** Names that a FunctionName in the manifest may have. */
export const actionNames: readonly string[] = Object.keys(tidings);

/**
 * Gives Excel the code of the ribbon's and the cell menu's commands. Each shows the pane, waits
 * until it is there, and tells it what is wanted. `mounted` rejects where no pane will come.
 */
export function associateActions(
  office: CommandOffice,
  mounted: Promise<unknown>,
  pane: EventTarget,
): void {
  for (const [name, tiding] of Object.entries(tidings))
    office.actions.associate(name, async (event) => {
      try {
        await office.addin.showAsTaskpane();
        await mounted;
        pane.dispatchEvent(tiding());
      } catch {
        // The page itself says why there is no pane; Excel shows nothing of a command's failure.
      } finally {
        event.completed();
      }
    });
}

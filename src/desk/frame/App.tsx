import { FluentProvider } from "@fluentui/react-components";
import { useCallback, useEffect, useRef, useState } from "react";
import type { Desk } from "../desk";
import { copyName } from "../files/download";
import type { Files } from "../files/files";
import type { Keeper } from "../keep/keeper";
import { pickWritable } from "../keep/opened-file";
import { Divider } from "./Divider";
import { EntryBar } from "./EntryBar";
import { FindBar } from "./FindBar";
import { GridView } from "./GridView";
import { LeaveDialog } from "./LeaveDialog";
import { NameDialog } from "./NameDialog";
import { Notices } from "./Notices";
import { PaneFrame } from "./PaneFrame";
import { attendPage } from "./page-events";
import { SheetTabs } from "./SheetTabs";
import { StatusLine } from "./StatusLine";
import { type SaveKind, Tools } from "./Tools";
import { fluentThemes } from "./theme";
import { useTheme } from "./use-theme";

interface AppProps {
  readonly desk: Desk;
  readonly files: Files;
  readonly keeper: Keeper;
}

/** The whole page: tools, sheets, the entry bar, the grid, and the task pane beside it. */
export function App({ desk, files, keeper }: AppProps) {
  const { choice, theme, choose } = useTheme();
  const [isPaneShown, showPane] = useState(true);
  const [paneWidth, setPaneWidth] = useState(400);
  /** What is done once the changes of the open job are saved or let go. */
  const [pending, setPending] = useState<(() => void) | null>(null);
  const [isFinding, setFinding] = useState(false);
  const [isNaming, setNaming] = useState(false);
  const picker = useRef<HTMLInputElement>(null);

  const leaveFor = useCallback(
    (action: () => void) => {
      if (desk.book.isDirty) setPending(() => action);
      else action();
    },
    [desk],
  );
  const open = useCallback(
    (list: readonly File[]) => void files.read(list).then((file) => file && leaveFor(file.open)),
    [files, leaveFor],
  );
  useEffect(
    () => attendPage({ desk, files, onFiles: open, onFind: () => setFinding(true) }),
    [desk, files, open],
  );

  useEffect(() => void keeper.offer(leaveFor), [keeper, leaveFor]);
  const pick = async () => {
    const picked = await pickWritable();
    if (picked) open(picked);
    else picker.current?.click();
  };
  const copy = (kind: SaveKind) => {
    if (kind === "named") setNaming(true);
    else if (kind === "back") void files.saveBack();
    else void files.saveWithoutAddIn(kind);
  };

  return (
    <FluentProvider theme={fluentThemes[theme]} className="desk">
      <Tools
        desk={desk}
        onOpen={() => void pick()}
        onNew={() => leaveFor(() => files.openBlank())}
        onSave={() => files.save()}
        onCopy={copy}
        canSaveBack={() => files.opened !== null}
        onFind={() => setFinding(true)}
        theme={choice}
        onTheme={choose}
        isPaneShown={isPaneShown}
        onPane={showPane}
      />
      <main
        className="desk-main"
        style={{ "--pane-width": isPaneShown ? `${paneWidth}px` : "0px" } as React.CSSProperties}
      >
        <div className="desk-work">
          <SheetTabs desk={desk} />
          <EntryBar desk={desk} />
          {isFinding && <FindBar desk={desk} onClose={() => setFinding(false)} />}
          <GridView desk={desk} theme={theme} />
          <StatusLine desk={desk} />
          <Notices desk={desk} />
        </div>
        {isPaneShown && <Divider width={paneWidth} onWidth={setPaneWidth} />}
        <PaneFrame desk={desk} isShown={isPaneShown} theme={theme} />
      </main>
      <input
        ref={picker}
        type="file"
        accept=".xlsx,.csv,.tsv,.txt"
        multiple
        hidden
        aria-label="Workbook to open"
        onChange={({ target }) => {
          open([...(target.files ?? [])]);
          target.value = "";
        }}
      />
      {isNaming && (
        <NameDialog
          name={copyName(desk.book.fileName)}
          onSave={(name) => files.save(name)}
          onDone={() => setNaming(false)}
        />
      )}
      <LeaveDialog
        fileName={desk.book.fileName}
        pending={pending}
        onSave={() => files.save()}
        onDone={() => setPending(null)}
      />
    </FluentProvider>
  );
}

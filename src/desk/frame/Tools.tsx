import {
  Button,
  Menu,
  MenuItem,
  MenuItemRadio,
  MenuList,
  MenuPopover,
  MenuTrigger,
  ToggleButton,
  Toolbar,
  ToolbarButton,
  ToolbarDivider,
} from "@fluentui/react-components";
import {
  ArrowDownloadRegular,
  ArrowRedoRegular,
  ArrowUndoRegular,
  DarkThemeRegular,
  DocumentAddRegular,
  DocumentArrowDownRegular,
  FolderOpenRegular,
  PanelRightRegular,
} from "@fluentui/react-icons";
import type { Desk } from "../desk";
import type { CopyKind } from "../files/download";
import { RowsMenu } from "./RowsMenu";
import { type ThemeChoice, themeChoices } from "./theme";
import { useDesk } from "./use-desk";
import { Word } from "./Word";

const themeWords: Readonly<Record<ThemeChoice, string>> = {
  auto: "As the browser",
  light: "Light",
  dark: "Dark",
  contrast: "High contrast",
};

/** A copy that needs no add-in, one under a chosen name, or the opened file itself. */
export type SaveKind = CopyKind | "named" | "back";

interface ToolsProps {
  readonly desk: Desk;
  readonly onOpen: () => void;
  readonly onNew: () => void;
  readonly onSave: () => void;
  readonly onCopy: (kind: SaveKind) => void;
  /** Whether the browser can write to the file that was opened. */
  readonly canSaveBack: () => boolean;
  readonly onFind: () => void;
  readonly theme: ThemeChoice;
  readonly onTheme: (theme: ThemeChoice) => void;
  readonly isPaneShown: boolean;
  readonly onPane: (isShown: boolean) => void;
}

/** The tools at the head of the page, and the name of the open file. */
export function Tools(props: ToolsProps) {
  const { desk } = props;
  useDesk(desk);
  const { fileName, isDirty, canUndo, canRedo } = desk.book;
  return (
    <header id="desk-tools" className="desk-tools">
      <h1 className="desk-title">Fanrow</h1>
      <Toolbar aria-label="Workbook" size="small" className="desk-toolbar">
        <ToolbarButton icon={<FolderOpenRegular />} onClick={props.onOpen}>
          <Word>Open</Word>
        </ToolbarButton>
        <ToolbarButton icon={<ArrowDownloadRegular />} onClick={props.onSave}>
          <Word>Save a copy</Word>
        </ToolbarButton>
        <CopyMenu onCopy={props.onCopy} canSaveBack={props.canSaveBack()} />
        <RowsMenu desk={desk} onFind={props.onFind} />
        <ToolbarButton icon={<DocumentAddRegular />} onClick={props.onNew}>
          <Word>New</Word>
        </ToolbarButton>
        <ToolbarDivider />
        <ToolbarButton
          aria-label="Undo"
          title="Undo (Ctrl+Z)"
          icon={<ArrowUndoRegular />}
          disabled={!canUndo}
          onClick={() => desk.undo()}
        />
        <ToolbarButton
          aria-label="Redo"
          title="Redo (Ctrl+Y)"
          icon={<ArrowRedoRegular />}
          disabled={!canRedo}
          onClick={() => desk.redo()}
        />
      </Toolbar>
      <p className="desk-file" title={fileName}>
        <span className="desk-file-name">{fileName}</span>
        <span className="desk-file-state">{isDirty ? "not saved" : ""}</span>
      </p>
      <ThemeMenu choice={props.theme} onTheme={props.onTheme} />
      <ToggleButton
        appearance="subtle"
        size="small"
        icon={<PanelRightRegular />}
        checked={props.isPaneShown}
        onClick={() => props.onPane(!props.isPaneShown)}
      >
        <Word>Pane</Word>
      </ToggleButton>
    </header>
  );
}

/** Other ways to save, and copies for those who have no add-in. */
function CopyMenu({ onCopy, canSaveBack }: Pick<ToolsProps, "onCopy"> & { canSaveBack: boolean }) {
  return (
    <Menu>
      <MenuTrigger disableButtonEnhancement>
        <ToolbarButton icon={<DocumentArrowDownRegular />}>
          <Word>Other copies</Word>
        </ToolbarButton>
      </MenuTrigger>
      <MenuPopover>
        <MenuList>
          <MenuItem onClick={() => onCopy("named")}>Save under another name</MenuItem>
          {canSaveBack && (
            <MenuItem subText="In place of what it holds" onClick={() => onCopy("back")}>
              Save into the opened file
            </MenuItem>
          )}
          <MenuItem
            subText="Formulas of the program in place of the add-in's"
            onClick={() => onCopy("plain")}
          >
            Save plain copy
          </MenuItem>
          <MenuItem subText="No formulas at all" onClick={() => onCopy("values")}>
            Save values copy
          </MenuItem>
          <MenuItem
            subText="The sheet in view as it reads, for any program"
            onClick={() => onCopy("csv")}
          >
            Save sheet as CSV
          </MenuItem>
        </MenuList>
      </MenuPopover>
    </Menu>
  );
}

function ThemeMenu({ choice, onTheme }: { choice: ThemeChoice; onTheme: ToolsProps["onTheme"] }) {
  return (
    <Menu
      checkedValues={{ theme: [choice] }}
      onCheckedValueChange={(_, { checkedItems }) => {
        const next = themeChoices.find((each) => each === checkedItems[0]);
        if (next) onTheme(next);
      }}
    >
      <MenuTrigger disableButtonEnhancement>
        <Button appearance="subtle" size="small" icon={<DarkThemeRegular />}>
          <Word>Theme</Word>
        </Button>
      </MenuTrigger>
      <MenuPopover>
        <MenuList>
          {themeChoices.map((each) => (
            <MenuItemRadio key={each} name="theme" value={each}>
              {themeWords[each]}
            </MenuItemRadio>
          ))}
        </MenuList>
      </MenuPopover>
    </Menu>
  );
}

import {
  Menu,
  MenuDivider,
  MenuItem,
  MenuList,
  MenuPopover,
  MenuTrigger,
  ToolbarButton,
} from "@fluentui/react-components";
import { TableRegular } from "@fluentui/react-icons";
import type { CellText } from "../book";
import type { Desk } from "../desk";
import { closedAt, openedAt, sortedBy } from "../rows/arrange";
import { formulasFor } from "../rows/grow";
import { Word } from "./Word";

/** What can be done with the rows of the list at the active cell. Formulas stay where they are. */
export function RowsMenu({ desk, onFind }: { desk: Desk; onFind: () => void }) {
  const { row, col } = desk.cursor;
  const write = (cells: () => readonly CellText[]) =>
    desk.attempt(() => {
      const texts = cells();
      if (texts.length > 0) desk.book.enter(desk.sheet.name, texts);
    });
  const open = () =>
    write(() => {
      const cells = openedAt(desk, row);
      const last = Math.max(row, ...cells.map((cell) => cell.row));
      return [...cells, ...formulasFor(desk, last)];
    });
  return (
    <Menu>
      <MenuTrigger disableButtonEnhancement>
        <ToolbarButton icon={<TableRegular />}>
          <Word>Rows</Word>
        </ToolbarButton>
      </MenuTrigger>
      <MenuPopover>
        <MenuList>
          <MenuItem subText="Typed cells from here on move down" onClick={open}>
            Insert a row here
          </MenuItem>
          <MenuItem
            subText="Typed cells below move up"
            onClick={() => write(() => closedAt(desk, row))}
          >
            Take this row out
          </MenuItem>
          <MenuDivider />
          <MenuItem onClick={() => write(() => sortedBy(desk, row, col, 1))}>
            Sort by this column, up
          </MenuItem>
          <MenuItem onClick={() => write(() => sortedBy(desk, row, col, -1))}>
            Sort by this column, down
          </MenuItem>
          <MenuDivider />
          <MenuItem onClick={() => desk.filterHere()}>Only rows like this cell</MenuItem>
          <MenuItem disabled={desk.filter === null} onClick={() => desk.showAllRows()}>
            All rows again
          </MenuItem>
          <MenuDivider />
          <MenuItem secondaryContent="Ctrl+F" onClick={onFind}>
            Find and replace
          </MenuItem>
        </MenuList>
      </MenuPopover>
    </Menu>
  );
}

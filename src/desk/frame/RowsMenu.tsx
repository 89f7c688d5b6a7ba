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
import type { Desk } from "../desk";
import type { TypedCell } from "../host";
import { closedAt, openedAt, sortedBy } from "../rows/arrange";
import { formulasFor } from "../rows/grow";
import { focusGrid } from "./regions";
import { Word } from "./Word";

/** What can be done with the rows of the list at the active cell. Formulas stay where they are. */
export function RowsMenu({ desk, onFind }: { desk: Desk; onFind: () => void }) {
  const { row, col } = desk.cursor;
  // The closing menu leads the keyboard to its button; the work goes on in the grid.
  const inGrid = () => void setTimeout(focusGrid);
  const lastOf = (cells: readonly TypedCell[]) => Math.max(row, ...cells.map((cell) => cell.row));
  const write = (cells: () => readonly TypedCell[], isOpened = false) => {
    inGrid();
    desk.attempt(() => {
      const texts = cells();
      const newRow = isOpened ? lastOf(texts) : undefined;
      if (texts.length > 0) desk.book.userEntersCells(desk.sheet.name, texts, newRow, isOpened);
      desk.filterAgain();
    });
  };
  const open = () =>
    write(() => {
      const cells = openedAt(desk, row);
      const isSet = (one: TypedCell) =>
        cells.some((cell) => cell.row === one.row && cell.col === one.col);
      return [...cells, ...formulasFor(desk, lastOf(cells)).filter((one) => !isSet(one))];
    }, true);
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
          <MenuItem
            onClick={() => {
              inGrid();
              desk.filterHere();
            }}
          >
            Only rows like this cell
          </MenuItem>
          <MenuItem
            disabled={desk.filter === null}
            onClick={() => {
              inGrid();
              desk.showAllRows();
            }}
          >
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

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
import { insertRow, sortRows, takeRowOut } from "../rows/act";
import { focusGrid } from "./regions";
import { Word } from "./Word";

/** What can be done with the rows of the list at the active cell. Formulas stay where they are. */
export function RowsMenu({ desk, onFind }: { desk: Desk; onFind: () => void }) {
  // The closing menu leads the keyboard to its button; the work goes on in the grid.
  const inGrid = () => void setTimeout(focusGrid);
  const write = (action: (desk: Desk) => void) => {
    inGrid();
    action(desk);
  };
  return (
    <Menu>
      <MenuTrigger disableButtonEnhancement>
        <ToolbarButton icon={<TableRegular />}>
          <Word>Rows</Word>
        </ToolbarButton>
      </MenuTrigger>
      <MenuPopover>
        <MenuList>
          <MenuItem
            secondaryContent="Ctrl++"
            subText="Typed cells from here on move down"
            onClick={() => write(insertRow)}
          >
            Insert a row here
          </MenuItem>
          <MenuItem
            secondaryContent="Ctrl+−"
            subText="Typed cells below move up"
            onClick={() => write(takeRowOut)}
          >
            Take this row out
          </MenuItem>
          <MenuDivider />
          <MenuItem onClick={() => write(() => sortRows(desk, 1))}>
            Sort by this column, up
          </MenuItem>
          <MenuItem onClick={() => write(() => sortRows(desk, -1))}>
            Sort by this column, down
          </MenuItem>
          <MenuDivider />
          <MenuItem onClick={() => write(() => desk.filterHere())}>
            Only rows like this cell
          </MenuItem>
          <MenuItem disabled={desk.filter === null} onClick={() => write(() => desk.showAllRows())}>
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

import { Tab, TabList } from "@fluentui/react-components";
import type { Desk } from "../desk";
import { gridId } from "./regions";
import { useDesk } from "./use-desk";

export const tabId = (sheet: string) =>
  `desk-tab-${sheet.replace(/[^\w-]/g, (each) => `_${each.charCodeAt(0)}`)}`;

/** The sheets of the workbook. */
export function SheetTabs({ desk }: { desk: Desk }) {
  useDesk(desk);
  return (
    <div id="desk-tabs" className="desk-tabs">
      <TabList
        size="small"
        aria-label="Sheets"
        selectedValue={desk.sheet.name}
        onTabSelect={(_, { value }) => desk.showSheet(String(value))}
      >
        {desk.book.shownSheets.map(({ name }) => (
          <Tab key={name} id={tabId(name)} value={name} aria-controls={gridId}>
            {name}
          </Tab>
        ))}
      </TabList>
    </div>
  );
}

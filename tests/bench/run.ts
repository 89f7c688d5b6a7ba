import { benchColumns } from "./columns";
import { benchPaneCheck } from "./pane-check";
import { benchSite } from "./site";
import { benchWorkbook } from "./workbook-check";

const parts = [benchColumns, benchWorkbook, benchPaneCheck, benchSite];
for (const part of parts) for (const line of await part()) console.log(line);

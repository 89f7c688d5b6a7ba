import { benchColumns } from "./columns";
import { benchWorkbook } from "./workbook-check";

for (const line of benchColumns()) console.log(line);
for (const line of await benchWorkbook()) console.log(line);

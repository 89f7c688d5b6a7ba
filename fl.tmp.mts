import { readFileSync } from "node:fs";
import { Workbook } from "/tmp/w/hold/src/workbook";
import { SheetModel } from "/tmp/w/hold/src/sheet";
import { worksheetFunctions } from "/tmp/w/hold/functions";
import { requireTrees } from "/tmp/w/hold/src/algebra";
import { formulas } from "/tmp/w/hold/src/formulas";
requireTrees(formulas);
const book = Workbook.create(); book.addSheet("S", { rows: [[{ value: 1 }]] });
const m = new SheetModel(book, worksheetFunctions);
for (const f of readFileSync("/tmp/w/hold.tmp/fl.txt", "utf8").split("\n").slice(Number(process.argv[2] ?? 0))) {
  const t = process.cpuUsage().user;
  process.stderr.write("\n"+f.slice(0, 70));
  const r = m.evaluate(f, "S", 5, 5) as any;
  const ms = (process.cpuUsage().user - t) / 1000;
  process.stderr.write(ms > 100 || /fault/.test(r.unsupported??"") ? `  *** ${Math.round(ms)} ms ${JSON.stringify(r).slice(0,120)}` : "");
}

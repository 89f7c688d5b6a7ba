import { describe, expect, it } from "vitest";
import { type WorksheetFunction, worksheetFunctions } from "../../functions";
import { cellName } from "../../src/cells";
import type { WorkbookHost } from "../../src/desk/host";
import { Workbook } from "../../src/workbook";
import { pack, parts, worksheet } from "../workbook/packages";
import { hostOf, openDesk } from "./desk";

const rowCount = 20_000;
const colCount = 22;
const block = 4_000;

/** A file of 20,000 rows: readings, and formulas with and without functions of ours. */
function largeFile(): Uint8Array {
  const lines: string[] = [];
  for (let r = 1; r <= rowCount; r++) {
    let line = `<row r="${r}">`;
    for (let c = 0; c < colCount; c++) {
      const ref = cellName(r - 1, c);
      const formula =
        c % 3 === 0
          ? `IF(B${r}=&quot;&quot;,&quot;&quot;,D${r}*${c}+$B$1)`
          : `_xldudf_FANROW_ROUND_AREA(F${r})`;
      const isFormula = c >= 8 && c % 3 !== 2;
      line += `<c r="${ref}">${isFormula ? `<f>${formula}</f>` : ""}<v>${r + c}</v></c>`;
    }
    lines.push(`${line}</row>`);
  }
  return pack(parts(worksheet(`<sheetData>${lines.join("")}</sheetData>`)));
}

/** Milliseconds of processor time that the host alone takes to answer loads of all blocks. */
async function answering(host: WorkbookHost, property: string): Promise<number> {
  const paths = (top: number) => ({
    1: { Id: 1, ObjectPathType: 1, Name: "" },
    2: { Id: 2, ObjectPathType: 4, Name: "Worksheets", ParentObjectPathId: 1 },
    3: method(3, "GetItemOrNullObject", 2, ["Data"]),
    4: method(4, "GetRangeByIndexes", 3, [top, 0, block, colCount]),
  });
  const before = process.cpuUsage();
  let answered = 0;
  await new Promise<void>((resolve) => {
    host.onMessage = (text) => {
      expect(text.startsWith('{"id":')).toBe(true);
      expect(text).not.toContain('"error"');
      if (++answered === rowCount / block) resolve();
    };
    for (let top = 0; top < rowCount; top += block) {
      const query = { Id: 1, ActionType: 2, Name: "", ObjectPathId: 4 };
      const body = {
        Actions: [{ ...query, QueryInfo: { Select: [property] } }],
        ObjectPaths: paths(top),
      };
      const message = { url: "ProcessQuery", body };
      host.sendMessageToHost(JSON.stringify({ id: top, type: 1, flags: 0, message }));
    }
  });
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function method(id: number, name: string, parent: number, values: unknown[]) {
  return {
    Id: id,
    ObjectPathType: 3,
    Name: name,
    ParentObjectPathId: parent,
    ArgumentInfo: { Arguments: values },
  };
}

describe("A sheet of 20,000 rows and 22 columns", () => {
  // The bounds are ten times what an idle machine takes, so that only a slip in kind fails.
  it("is read in blocks without the host being what takes the time", async () => {
    const host = hostOf(Workbook.open(largeFile()));
    // The first read takes the sheet out of the file.
    host.value("Data", 0, 0);
    expect(await answering(host, "values")).toBeLessThan(2_000);
    expect(await answering(host, "formulas")).toBeLessThan(5_000);
  });
});

describe("A write of 1,000 cells", () => {
  it("recalculates what depends on them once", async () => {
    let calls = 0;
    const known = worksheetFunctions[0] as WorksheetFunction;
    const counted: WorksheetFunction = {
      ...known,
      id: "COUNTED",
      parameters: [
        {
          ...(known.parameters[0] as WorksheetFunction["parameters"][number]),
          dimensionality: "matrix",
          repeating: false,
        },
      ],
      call: (values: unknown) => {
        calls++;
        return (values as unknown[][]).flat().reduce<number>((sum, x) => sum + Number(x), 0);
      },
    };
    const host = openDesk({ Data: [] }, { functions: [counted] });
    host.userEnters("Data", 0, 3, "=FANROW.COUNTED(A1:A1000)");
    calls = 0;
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A1:A1000").values = Array.from(
        { length: 1000 },
        (_, i) => [i],
      );
    });
    expect([calls, host.value("Data", 0, 3)]).toEqual([1, 499_500]);
    host.undo();
    expect([calls, host.value("Data", 0, 3)]).toEqual([2, 0]);
  });
});

import { afterEach, describe, expect, it } from "vitest";
import { givesFile, openWorkbook, workbookBytes } from "../../src/excel";
import { hostError } from "./hosts";

// The desk's host has no documents to hand over, so that a small stand-in answers as Office does.
interface Given {
  readonly slices: readonly (readonly number[])[];
  readonly size?: number;
  readonly refuses?: string;
}

/** What a host puts into every page; another test of this worker may have put it there as a variable. */
const page = globalThis as { Office?: unknown; Excel?: unknown };
const { Office: office, Excel: excel } = page;
let closed = 0;

function install(given: Given | undefined): void {
  closed = 0;
  const succeeded = <T>(value: T) => ({ status: "succeeded", value });
  const file = given && {
    size: given.size ?? given.slices.flat().length,
    sliceCount: given.slices.length,
    getSliceAsync: (index: number, done: (result: object) => void) =>
      done(succeeded({ index, data: given.slices[index], size: given.slices[index]?.length })),
    closeAsync: () => closed++,
  };
  const getFileAsync = (type: string, _: object, done: (result: object) => void) =>
    done(
      given?.refuses === undefined && type === "compressed"
        ? succeeded(file)
        : { status: "failed", error: { message: given?.refuses } },
    );
  page.Office = {
    FileType: { Compressed: "compressed" },
    AsyncResultStatus: { Succeeded: "succeeded", Failed: "failed" },
    context: given ? { document: { getFileAsync } } : { officeTheme: {} },
  };
}

afterEach(() => {
  page.Office = office;
  page.Excel = excel;
});

describe("the open workbook as a file", () => {
  it("is joined from its slices in their order, and given back to Office", async () => {
    install({ slices: [[80, 75, 3], [4, 255], [0]] });
    expect(givesFile()).toBe(true);
    expect([...(await workbookBytes())]).toEqual([80, 75, 3, 4, 255, 0]);
    expect(closed).toBe(1);
  });

  it("is not offered where the program hands over no documents", async () => {
    install(undefined);
    expect(givesFile()).toBe(false);
    expect((await hostError(workbookBytes)).code).toBe("UnsupportedOperation");
  });

  it("says so where Office refuses it", async () => {
    install({ slices: [], refuses: "The document is busy." });
    const { message } = await hostError(workbookBytes);
    expect(message).toContain("(The document is busy)");
    expect(message).toContain("try again");
  });

  it.each([3, 5])("is not used where the slices do not make up its %i bytes", async (size) => {
    install({
      slices: [
        [1, 2],
        [3, 4],
      ],
      size,
    });
    expect((await hostError(workbookBytes)).code).toBe("FileRefused");
    expect(closed).toBe(1);
  });

  it("opens beside the open one from its bytes, however many they are", async () => {
    const bytes = Uint8Array.from({ length: 100_000 }, (_, i) => i % 251);
    let given = "";
    const createWorkbook = async (text: string) => {
      given = text;
    };
    page.Excel = { createWorkbook };
    await openWorkbook(bytes);
    expect(Buffer.from(given, "base64").equals(bytes)).toBe(true);
  });
});

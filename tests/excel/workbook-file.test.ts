import { afterEach, describe, expect, it } from "vitest";
import { givesFile, openWorkbook, workbookBytes } from "../../src/excel";
import { hostError } from "./hosts";

// The desk's host has no documents to hand over, so that a small stand-in answers as Office does.
interface Given {
  readonly slices: readonly (readonly number[])[];
  readonly size?: number;
  readonly refuses?: string;
}

const before = Object.getOwnPropertyDescriptor(globalThis, "Office");
const excelBefore = Object.getOwnPropertyDescriptor(globalThis, "Excel");
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
  const office = {
    FileType: { Compressed: "compressed" },
    AsyncResultStatus: { Succeeded: "succeeded", Failed: "failed" },
    context: given ? { document: { getFileAsync } } : { officeTheme: {} },
  };
  Object.defineProperty(globalThis, "Office", { value: office, configurable: true });
}

afterEach(() => {
  for (const [name, property] of [
    ["Office", before],
    ["Excel", excelBefore],
  ] as const)
    if (property) Object.defineProperty(globalThis, name, property);
    else Reflect.deleteProperty(globalThis, name);
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
    Object.defineProperty(globalThis, "Excel", { value: { createWorkbook }, configurable: true });
    await openWorkbook(bytes);
    expect(Buffer.from(given, "base64").equals(bytes)).toBe(true);
  });
});

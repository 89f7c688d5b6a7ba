import { parseAddress } from "../../cells";
import type { DefinedName } from "../../workbook";
import type { Book, SheetTab } from "./book";
import { HostRange } from "./host-range";
import { HostError, invalidArgument } from "./wire/errors";

/** A defined name of the workbook. */
export interface NamedFormula {
  readonly name: string;
  /** Without "=". */
  readonly formula: string;
  /** The sheet it belongs to; null for the whole workbook. */
  readonly tab: SheetTab | null;
}

/** The names of the workbook. Names with the file format's own prefix are not for users. */
export class Names {
  private read: { from: readonly DefinedName[]; names: NamedFormula[] } | undefined;

  constructor(private readonly book: Book) {}

  list(): readonly NamedFormula[] {
    const { names } = this.book.workbook;
    if (this.read?.from !== names)
      this.read = {
        from: names,
        names: names
          .filter(({ name }) => !name.toLowerCase().startsWith("_xl"))
          .map(({ name, formula, sheet }) => {
            const tab = sheet === null ? null : this.book.findTab(sheet);
            return { name, formula, tab };
          }),
      };
    return this.read.names;
  }

  /** As a formula on a sheet sees it: the sheet's own name before the workbook's. */
  find(name: string, tab: SheetTab | null): NamedFormula | undefined {
    const wanted = name.toLowerCase();
    const found = this.list().filter((each) => each.name.toLowerCase() === wanted);
    return found.find((each) => each.tab === tab) ?? found.find((each) => each.tab === null);
  }

  /** The range a name stands for; null where it stands for something else. */
  range(entry: NamedFormula): HostRange | null {
    const address = parseAddress(entry.formula);
    if (address?.sheet == null) return null;
    const tab = this.book.findTab(address.sheet);
    return tab === null ? null : new HostRange(tab, address.range);
  }

  add(name: string, formula: string, tab: SheetTab | null): NamedFormula {
    if (!/^[\p{L}_\\][\p{L}\p{N}_.\\]{0,254}$/u.test(name) || parseAddress(name) !== null)
      throw invalidArgument(
        `"${name}" cannot be a name: letters, digits, "_" and "." after a letter, unlike an address.`,
      );
    const taken = this.list().some(
      (each) => each.tab === tab && each.name.toLowerCase() === name.toLowerCase(),
    );
    if (taken) throw new HostError("ItemAlreadyExists", `The name "${name}" is taken.`);
    const plain = formula.replace(/^=/, "");
    this.book.workbook.setName(name, plain, tab?.name ?? null);
    this.changed(name);
    return { name, formula: plain, tab };
  }

  remove({ name, tab }: NamedFormula): void {
    this.book.workbook.setName(name, null, tab?.name ?? null);
    this.changed(name);
  }

  /** Called when sheets were taken out or renamed. */
  forget(): void {
    this.read = undefined;
  }

  private changed(name: string): void {
    // Formulas that use the name were read when it meant something else.
    const wanted = name.toLowerCase();
    this.read = undefined;
    const uses = this.book.tabs.some((tab) => {
      for (const cell of tab.sheet.cells())
        if (cell.formula?.toLowerCase().includes(wanted)) return true;
      return false;
    });
    if (uses) {
      this.book.model.refresh();
      this.book.model.recalculateAll();
    }
    this.book.touched({ kind: "names" });
  }
}

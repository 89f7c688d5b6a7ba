import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { isBlankCell, isCellError } from "../cells";
import { plainFormula } from "./accepting";
import { jobSettings, layouts } from "./columns";
import type { Job, Table } from "./read";

/**
 * Three codes of eight hex digits each that stand for a job: the same job gives the same ones in every
 * host, and the one that differs tells what was changed.
 */
export interface JobCodes {
  /** Of what was typed, field by field, and of a sheet that lists the fans again. */
  readonly inputs: string;
  /** Of the formulas, and of what shows a number otherwise: number formats, the colour of its ground. */
  readonly formulas: string;
  /** Of the settings, edition and window among them. */
  readonly settings: string;
}

export const codeKinds = ["inputs", "formulas", "settings"] as const;

/** How the codes are explained wherever they are shown. */
export const codesExplained =
  "The first code (inputs) changes with what was typed, the second (formulas) with a formula, a number format or a colour that hides a number, the third (settings) with a setting. The same job gives the same three in every program.";

/** "1a2b3c4d 5e6f7a8b 9c0d1e2f", in the order of the explanation. */
export function codesText(codes: JobCodes): string {
  return codeKinds.map((kind) => codes[kind]).join(" ");
}

/** By field and not by place: where columns stand, and what is computed, is left out. */
export function codesOf(job: Job): JobCodes {
  const [inputs, formulas] = [new Code(), new Code()];
  for (const layout of layouts) {
    const table = job.tables[layout.kind];
    if (!table) continue;
    const keys = layout.fields.map(({ key }) => key).filter((key) => table.has(key));
    const head = `${layout.kind}\u001f${keys.join("\u001f")}`;
    inputs.add(head);
    formulas.add(head);
    const usual = keys.map((key) => lookOf(table, key, 0));
    formulas.add(usual.join("\u001f"));
    for (let i = 0; i < table.length; i++) {
      let [typed, computed] = ["", ""];
      for (const [at, key] of keys.entries()) {
        const look = lookOf(table, key, i);
        if (look !== usual[at]) computed += look;
        const formula = table.formula(key, i);
        typed += formula === null ? `${inputOf(table.raw(key, i))}\u001f` : "\u001f";
        computed += formula === null ? "\u001f" : `${ofRow(formula, table.home(i).row)}\u001f`;
      }
      inputs.add(typed);
      formulas.add(computed);
    }
  }
  for (const { name, firstName, rows, otherwise } of job.second)
    inputs.add([name, firstName, rows, otherwise].join("\u001f"));
  return { inputs: inputs.text(), formulas: formulas.text(), settings: settingsOf(job) };
}

/** How a cell shows what it holds: its number format, and whether it is seen at all. */
function lookOf(table: Table, key: string, i: number): string {
  const { grid, row, col } = table.placeOrHome(key, i);
  const format = grid.numberFormat?.(row, col) ?? "";
  return grid.isUnseen?.(row, col) ? `${format} unseen` : format;
}

function settingsOf(job: Job): string {
  const code = new Code();
  for (const { key } of jobSettings) {
    const at = job.fit.settings.get(key);
    const grid = at && job.file.sheets.find(({ name }) => name === at.sheet);
    if (!at || !grid) continue;
    const formula = grid.formula(at.row, at.col);
    code.add(`${key}\u001f${formula ?? ""}\u001f${inputOf(grid.value(at.row, at.col))}`);
  }
  const { edition, low, high, constant } = job.settings;
  code.add([edition?.id ?? "", low, high, constant].join("\u001f"));
  return code.text();
}

/** A formula with the number of its own row left out: a row moved is no formula changed. */
function ofRow(formula: string, row: number): string {
  return plainFormula(formula).replace(/(?<![\w.$])(\$?[A-Z]{1,3})(\d+)\b/g, (ref, col, digits) =>
    Number(digits) === row + 1 ? col : ref,
  );
}

/** Characters that go into the hash at once. */
const piece = 1 << 16;

class Code {
  private readonly hash = sha256.create();
  private lines: string[] = [];
  private length = 0;

  add(line: string): void {
    this.lines.push(line);
    this.length += line.length;
    if (this.length >= piece) this.flush();
  }

  text(): string {
    this.flush();
    return bytesToHex(this.hash.digest()).slice(0, 8);
  }

  private flush(): void {
    if (this.lines.length > 0) this.hash.update(utf8ToBytes(`${this.lines.join("\n")}\n`));
    this.lines = [];
    this.length = 0;
  }
}

/** A typed value, to its last digit. */
function inputOf(value: Parameters<typeof isBlankCell>[0]): string {
  if (isBlankCell(value)) return "";
  if (isCellError(value)) return value.error;
  return typeof value === "string" ? `"${value.replaceAll("\r\n", "\n")}` : String(value);
}

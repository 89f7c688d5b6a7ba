import { maxCols, maxRows, packedRef } from "../cells";
import { damaged, quoted } from "./error";
import { plainWhole } from "./plain-number";

/**
 * Where rows and cells stand. Their r attributes may be left out: then each follows the one before
 * it. Reading and writing share this, so that they mean the same cell.
 */
export class RowCursor {
  row = -1;
  col = -1;

  constructor(private readonly part: string) {}

  nextRow(r: string | undefined): number {
    const row = r === undefined ? this.row + 1 : plainWhole(r.trim(), 0, r.trim().length) - 1;
    if (!(row >= 0 && row < maxRows))
      throw damaged(this.part, `a row has the number ${quoted(r ?? `${row + 1}`)}`);
    this.row = row;
    this.col = -1;
    return row;
  }

  nextCol(r: string | undefined): number {
    if (r === undefined) {
      this.col++;
    } else {
      const packed = packedRef(r);
      this.col = packed % maxCols;
      if (packed < 0 || packed - this.col !== this.row * maxCols) {
        throw damaged(this.part, `row ${this.row + 1} holds a cell named ${quoted(r)}`);
      }
    }
    if (this.col >= maxCols) throw damaged(this.part, `row ${this.row + 1} has too many cells`);
    return this.col;
  }
}

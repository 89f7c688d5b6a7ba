import { longestText } from "../cells";
import { decodePieces } from "./decode";
import { WorkbookError } from "./error";
import { decodeXString } from "./text";
import { prefixOf, readXmlText } from "./xml";

/** An escape for one character takes seven. */
const longest = 7 * longestText;
const overlong =
  "A text of the workbook is longer than a cell can hold: shorten it in the program that made the file.";

/**
 * Collects the text of a string item: the plain t, or the t of every rich run; phonetic runs (rPh)
 * are reading aids and no part of the text.
 */
export class StringItem {
  #text = "";
  #inText = false;
  #phonetic = 0;

  constructor(
    private readonly t: string,
    private readonly rPh: string,
  ) {}

  open(name: string): void {
    if (name === this.rPh) this.#phonetic++;
    else if (name === this.t) this.#inText = this.#phonetic === 0;
  }

  close(name: string): void {
    if (name === this.rPh) this.#phonetic--;
    else if (name === this.t) this.#inText = false;
  }

  text(text: string): void {
    if (!this.#inText) return;
    this.#text += text;
    if (this.#text.length > longest) throw new WorkbookError("too-large", overlong);
  }

  /** The text collected so far; starts the next item. */
  take(): string {
    const text = decodeXString(this.#text);
    this.#text = "";
    return text;
  }
}

/** The pieces of a text as they come: the parser would gather one that is endless without a tag. */
function* withTags(pieces: Iterable<string>): Generator<string> {
  let bare = 0;
  for (const piece of pieces) {
    bare = piece.includes("<") ? 0 : bare + piece.length;
    // A sign may be written as an entity of up to ten letters.
    if (bare > 10 * longest) throw new WorkbookError("too-large", overlong);
    yield piece;
  }
}

/** All strings of a shared strings part, by index. */
export function readSharedStrings(part: string, bytes: Uint8Array, maxDepth: number): string[] {
  const strings: string[] = [];
  let item: StringItem | undefined;
  let si = "";
  readXmlText(part, withTags(decodePieces(part, bytes)), maxDepth, {
    open({ name }) {
      if (item === undefined) {
        const prefix = prefixOf(name);
        si = `${prefix}si`;
        item = new StringItem(`${prefix}t`, `${prefix}rPh`);
      } else item.open(name);
    },
    close({ name }) {
      if (item === undefined) return;
      if (name === si) strings.push(item.take());
      else item.close(name);
    },
    text: (text) => item?.text(text),
  });
  return strings;
}

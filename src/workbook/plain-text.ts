import { apart, holds, TextPool } from "./text-pool";

/**
 * Thrown where XML is not of the plain form that is read here: it may be well formed, or not. The
 * full parser then reads the part from its start, and tells what is wrong with it.
 */
export class NotPlain extends Error {}

const notPlain = new NotPlain("not plain XML");

const tab = 9;
const newLine = 10;
const carriageReturn = 13;
const space = 32;
const quote = 34;
const ampersand = 38;
const apostrophe = 39;
const less = 60;
const equals = 61;
const bracket = 93;
/** From here on, two code units are no characters of XML. */
const firstNonCharacter = 0xfffe;

/** ASCII characters that stand for themselves in text. */
const isPlain = Uint8Array.from({ length: 128 }, (_, code) => {
  const isOther = code === ampersand || code === less || code === bracket;
  return (code >= space && !isOther) || code === tab || code === newLine ? 1 : 0;
});

const entities = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);

/** A place that moves on over the plainest XML: elements, attributes and text in ASCII names. */
export class PlainText {
  at: number;
  /** Where the name and the value of the attribute read last stand. */
  nameStart = 0;
  nameEnd = 0;
  valueStart = 0;
  valueEnd = 0;
  readonly pool = new TextPool();

  constructor(
    public text: string,
    at: number,
  ) {
    this.at = at;
  }

  fail(): never {
    throw notPlain;
  }

  /** Moves over white space; true when there was some. */
  skipSpace(): boolean {
    const { text } = this;
    const start = this.at;
    let at = start;
    for (;;) {
      const code = text.charCodeAt(at);
      if (code !== space && code !== newLine && code !== carriageReturn && code !== tab) break;
      at++;
    }
    this.at = at;
    return at > start;
  }

  /** Moves over this very text when it comes next. */
  skip(expected: string): boolean {
    if (!holds(this.text, this.at, expected)) return false;
    this.at += expected.length;
    return true;
  }

  expect(expected: string): void {
    if (!this.skip(expected)) throw notPlain;
  }

  /** Moves over an attribute and notes where it stands; false at the end of the tag. */
  nextAttribute(): boolean {
    const { text } = this;
    const spaced = this.skipSpace();
    let at = this.at;
    let code = text.charCodeAt(at);
    if (!isLetter(code)) return false;
    if (!spaced) throw notPlain;
    this.nameStart = at;
    do code = text.charCodeAt(++at);
    while (isNameSign(code));
    this.nameEnd = at;
    const mark = text.charCodeAt(at + 1);
    if (code !== equals || (mark !== quote && mark !== apostrophe)) throw notPlain;
    at += 2;
    this.valueStart = at;
    for (; ; at++) {
      code = text.charCodeAt(at);
      if (code === mark) break;
      if (!(code >= space) || code === ampersand || code === less || code >= firstNonCharacter)
        throw notPlain;
    }
    this.valueEnd = at;
    this.at = at + 1;
    return true;
  }

  /** The attributes up to the end of the tag; that end is not moved over. */
  attributes(): Record<string, string> {
    const attributes: Record<string, string> = {};
    while (this.nextAttribute()) {
      const name = this.pool.slice(this.text, this.nameStart, this.nameEnd);
      if (Object.hasOwn(attributes, name)) throw notPlain;
      attributes[name] = this.pool.slice(this.text, this.valueStart, this.valueEnd);
    }
    return attributes;
  }

  /** Where the text that begins at a place ends, if it is all plain characters. */
  plainEnd(start: number): number {
    const { text } = this;
    for (let at = start; ; at++) {
      const code = text.charCodeAt(at);
      if (!(code < 128 ? isPlain[code] === 1 : code < firstNonCharacter)) return at;
    }
  }

  /** The text of an element up to the next tag; that tag is not moved over. */
  content(): string {
    const { text } = this;
    const start = this.at;
    let isOdd = false;
    let at = this.plainEnd(start);
    for (; ; at = this.plainEnd(at + 1)) {
      const code = text.charCodeAt(at);
      if (code === less) break;
      // "]" may be the start of "]]>", which is no text.
      if (code !== ampersand && code !== bracket && code !== carriageReturn) throw notPlain;
      isOdd = true;
    }
    this.at = at;
    if (!isOdd) return this.pool.slice(text, start, at);
    const raw = apart(text, start, at);
    if (raw.includes("]]>")) throw notPlain;
    return decoded(raw.includes("\r") ? raw.replaceAll("\r\n", "\n").replaceAll("\r", "\n") : raw);
  }
}

function isLetter(code: number): boolean {
  const lower = code | 32;
  return lower >= 97 && lower <= 122;
}

/** Letters, digits, ":", "-", "." and "_". */
function isNameSign(code: number): boolean {
  return isLetter(code) || (code >= 48 && code <= 58) || code === 45 || code === 46 || code === 95;
}

function decoded(raw: string): string {
  const out: string[] = [];
  let copied = 0;
  for (let at = raw.indexOf("&"); at >= 0; at = raw.indexOf("&", copied)) {
    const end = raw.indexOf(";", at);
    if (end < 0) throw notPlain;
    out.push(raw.slice(copied, at), entity(raw.slice(at + 1, end)));
    copied = end + 1;
  }
  out.push(raw.slice(copied));
  return out.join("");
}

function entity(name: string): string {
  const known = entities.get(name);
  if (known !== undefined) return known;
  if (!/^#(x[0-9a-f]{1,6}|[0-9]{1,7})$/i.test(name) || name[1] === "X") throw notPlain;
  const code = name[1] === "x" ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1));
  const isCharacter =
    code === tab ||
    code === newLine ||
    code === carriageReturn ||
    (code >= space && code < 0xd800) ||
    (code >= 0xe000 && code < firstNonCharacter) ||
    (code > 0xffff && code <= 0x10ffff);
  if (!isCharacter) throw notPlain;
  return String.fromCodePoint(code);
}

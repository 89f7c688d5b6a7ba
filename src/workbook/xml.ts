import { SaxesParser, type SaxesTagPlain } from "saxes";
import { decodePieces } from "./decode";
import { damaged } from "./error";

export type Tag = SaxesTagPlain;

export interface XmlHandlers {
  open(tag: Tag): void;
  close(tag: Tag): void;
  text?(text: string): void;
}

interface PositionedHandlers {
  /** The tag stands at text.slice(start, end). */
  open(tag: Tag, start: number, end: number): void;
  /** For a self-closing tag start and end are those of the tag itself. */
  close(tag: Tag, start: number, end: number): void;
  text?(text: string): void;
}

const knownEncodings = new Set(["UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "US-ASCII", "ASCII"]);

/**
 * A parser with the handlers set. Every parser gets the same handlers in the same order: the engine
 * runs them about six times as fast when all have one shape and few handlers.
 */
function makeParser(maxDepth: number, handlers: XmlHandlers) {
  const parser = new SaxesParser({ xmlns: false, position: false });
  const onText = handlers.text?.bind(handlers) ?? (() => {});
  let depth = 0;
  parser.on("opentag", (tag) => {
    if (++depth > maxDepth) parser.fail(`its elements are nested more than ${maxDepth} deep`);
    handlers.open(tag);
  });
  parser.on("closetag", (tag) => {
    depth--;
    handlers.close(tag);
  });
  parser.on("text", onText);
  parser.on("cdata", onText);
  parser.on("doctype", () => {
    parser.fail("it has a document type declaration, which a workbook may not have");
  });
  return parser;
}

function parse(part: string, parser: SaxesParser, pieces: Iterable<string>): void {
  let encoding: string | undefined;
  try {
    for (const piece of pieces) parser.write(piece);
    encoding = parser.xmlDecl.encoding;
    parser.close();
  } catch (error) {
    // The parser throws plain Errors; all else is about the content and says so itself.
    if (!(error instanceof Error) || error.constructor !== Error) throw error;
    throw damaged(part, error.message.replace(/\.$/, ""), parser.line);
  }
  if (encoding !== undefined && !knownEncodings.has(encoding.toUpperCase())) {
    throw damaged(part, `it is written in ${encoding}, and only UTF-8 and UTF-16 are allowed`);
  }
}

/** What the parser gathers whole though nobody reads it, by what opens it and what ends it. */
const unread = { "<!--": "-->", "<?": "?>" } as const;
const longestUnread = 1_000_000;

/** The pieces as they come, as long as no comment or instruction among them is endless. */
function* withoutEndless(part: string, pieces: Iterable<string>): Generator<string> {
  let end: string | undefined;
  let length = 0;
  for (const piece of pieces) {
    let at = 0;
    while (at >= 0) {
      if (end === undefined) {
        const found = /<!--|<\?/g;
        found.lastIndex = at;
        const opening = found.exec(piece);
        if (!opening) break;
        end = unread[opening[0] as keyof typeof unread];
        at = found.lastIndex;
        length = 0;
      }
      const closing = piece.indexOf(end, at);
      length += (closing < 0 ? piece.length : closing) - at;
      if (length > longestUnread)
        throw damaged(part, `a comment in it has more than ${longestUnread} characters`);
      if (closing >= 0) end = undefined;
      at = closing;
    }
    yield piece;
  }
}

/** Reads a part from its bytes, piece by piece. */
export function readXml(part: string, bytes: Uint8Array, maxDepth: number, handlers: XmlHandlers) {
  readXmlText(part, decodePieces(part, bytes), maxDepth, handlers);
}

/** Reads a part from pieces of its text. */
export function readXmlText(
  part: string,
  pieces: Iterable<string>,
  maxDepth: number,
  handlers: XmlHandlers,
) {
  parse(part, makeParser(maxDepth, handlers), withoutEndless(part, pieces));
}

/** Reads a part that is already text and tells where each tag stands in it. */
export function scanXml(
  part: string,
  text: string,
  maxDepth: number,
  handlers: PositionedHandlers,
): void {
  // No "<" can stand inside a tag, so the last one before its end is where it starts.
  const startOf = () => text.lastIndexOf("<", parser.position - 1);
  const onText = handlers.text?.bind(handlers);
  const parser = makeParser(maxDepth, {
    open: (tag) => handlers.open(tag, startOf(), parser.position),
    close: (tag) => handlers.close(tag, startOf(), parser.position),
    ...(onText === undefined ? {} : { text: onText }),
  });
  parse(part, parser, [text]);
}

/** The namespace prefix of a name, with its colon; "" for none. */
export function prefixOf(name: string): string {
  return name.slice(0, name.indexOf(":") + 1);
}

export function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

/** An attribute by its local name when its prefix is not fixed, such as r:id. */
export function attributeNamed(tag: { attributes: Record<string, string> }, local: string) {
  for (const [name, value] of Object.entries(tag.attributes)) {
    if (name.includes(":") && localName(name) === local) return value;
  }
  return undefined;
}

/** xsd:boolean as written: "1" and "true". */
export function isTrue(value: string | undefined): boolean {
  return value === "1" || value === "true";
}

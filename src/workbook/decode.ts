import { damaged } from "./error";

/** How a part's bytes are text; kept so that an edited part is written the way it was. */
interface Encoding {
  readonly charset: "utf-8" | "utf-16le" | "utf-16be";
  /** Length of the byte order mark; 0 for none. */
  readonly mark: number;
}

export function detectEncoding(bytes: Uint8Array): Encoding {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return { charset: "utf-8", mark: 3 };
  if (a === 0xff && b === 0xfe) return { charset: "utf-16le", mark: 2 };
  if (a === 0xfe && b === 0xff) return { charset: "utf-16be", mark: 2 };
  if (a === 0x3c && b === 0) return { charset: "utf-16le", mark: 0 };
  if (a === 0 && b === 0x3c) return { charset: "utf-16be", mark: 0 };
  return { charset: "utf-8", mark: 0 };
}

function decoderFor(encoding: Encoding): TextDecoder {
  return new TextDecoder(encoding.charset, { fatal: true, ignoreBOM: true });
}

function notValid(part: string, { charset }: Encoding) {
  return damaged(part, `its text is not valid ${charset.toUpperCase()}`);
}

/**
 * The part's text in pieces, so that a large sheet never stands in memory as one string; they are cut
 * before a tag where the bytes of its start are given and it comes by.
 */
export function* decodePieces(
  part: string,
  bytes: Uint8Array,
  pieceBytes = 1 << 16,
  tag?: Uint8Array,
): Generator<string> {
  const encoding = detectEncoding(bytes);
  const decoder = decoderFor(encoding);
  try {
    for (let at = encoding.mark; at < bytes.length; ) {
      const end = Math.min(at + pieceBytes, bytes.length);
      const cut = tag && encoding.charset === "utf-8" ? lastOf(tag, bytes, at, end) : at;
      const to = cut > at ? cut : end;
      // Between two characters the decoder need not remember anything, which it does at a price.
      yield decoder.decode(bytes.subarray(at, to), {
        stream: cut === at && to < bytes.length,
      });
      at = to;
    }
    yield decoder.decode();
  } catch {
    throw notValid(part, encoding);
  }
}

/** Where a tag begins last in a stretch of bytes; the stretch's start where it does not. */
function lastOf(tag: Uint8Array, bytes: Uint8Array, start: number, end: number): number {
  const [first = 0] = tag;
  const last = Math.max(start, end - tag.length);
  for (let at = bytes.lastIndexOf(first, last); at > start; ) {
    if (tag.every((byte, i) => bytes[at + i] === byte)) return at;
    at = bytes.lastIndexOf(first, at - 1);
  }
  return start;
}

export function decodeText(part: string, bytes: Uint8Array): string {
  const encoding = detectEncoding(bytes);
  try {
    return decoderFor(encoding).decode(bytes.subarray(encoding.mark));
  } catch {
    throw notValid(part, encoding);
  }
}

export function encodeText(text: string, encoding: Encoding): Uint8Array {
  if (encoding.charset === "utf-8") {
    const body = new TextEncoder().encode(text);
    if (encoding.mark === 0) return body;
    const bytes = new Uint8Array(body.length + 3);
    bytes.set([0xef, 0xbb, 0xbf]);
    bytes.set(body, 3);
    return bytes;
  }
  const marked = encoding.mark > 0 ? `\uFEFF${text}` : text;
  const bytes = new Uint8Array(marked.length * 2);
  const view = new DataView(bytes.buffer);
  const little = encoding.charset === "utf-16le";
  for (let at = 0; at < marked.length; at++) view.setUint16(at * 2, marked.charCodeAt(at), little);
  return bytes;
}

import { WorkbookError } from "../error";
import { megabytes } from "../limits";
import type { Limits } from "../types";
import type { ZipEntry } from "./entry";

/*
 * The directory of a zip (PKWARE APPNOTE 6.3). fflate's own reader gives only inflated entries,
 * unchecked; a loss-free copy needs the stored bytes, and safety needs the bounds and checksums.
 */

const truncated = () =>
  new WorkbookError(
    "truncated",
    "The file is cut short: its end is missing. Copy or download it again.",
  );

function damagedZip(what: string): WorkbookError {
  return new WorkbookError("damaged", `The file is damaged: ${what}. Copy or download it again.`);
}

interface Directory {
  readonly start: number;
  readonly count: number;
}

/** Offset of the end-of-directory record, searched from the end because a comment may follow it. */
function findEnd(view: DataView): number {
  const lowest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= lowest; at--) {
    if (view.getUint32(at, true) === 0x06054b50) return at;
  }
  throw truncated();
}

function readBig(view: DataView, at: number): number {
  const value = view.getBigUint64(at, true);
  if (value > BigInt(Number.MAX_SAFE_INTEGER)) throw damagedZip("an entry claims an absurd size");
  return Number(value);
}

function findDirectory(view: DataView): Directory {
  const end = findEnd(view);
  const small = { start: view.getUint32(end + 16, true), count: view.getUint16(end + 10, true) };
  if (small.start !== 0xffffffff && small.count !== 0xffff) return small;
  // Zip64: a locator just before points to the larger record.
  const locator = end - 20;
  if (locator < 0 || view.getUint32(locator, true) !== 0x07064b50) return small;
  const record = readBig(view, locator + 8);
  if (record + 56 > view.byteLength || view.getUint32(record, true) !== 0x06064b50) {
    throw truncated();
  }
  return { start: readBig(view, record + 48), count: readBig(view, record + 32) };
}

/** Sizes of 0xffffffff stand in the zip64 extra field (id 1), in the order of the fields that need it. */
function zip64Sizes(view: DataView, from: number, to: number, fields: number[]): number[] {
  const found = [...fields];
  for (let at = from; at + 4 <= to; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== 1) continue;
    const end = Math.min(to, at + 4 + view.getUint16(at + 2, true));
    let next = at + 4;
    for (const [index, field] of fields.entries()) {
      if (field !== 0xffffffff || next + 8 > end) continue;
      found[index] = readBig(view, next);
      next += 8;
    }
  }
  return found;
}

function checkName(name: string, seen: Set<string>): void {
  const plain = name.replaceAll("\\", "/");
  if (plain.split("/").includes("..") || /^\/\/|^[A-Za-z]:/.test(plain) || plain.includes("\0")) {
    throw damagedZip(`an entry has the unsafe name "${name}"`);
  }
  const key = plain.toLowerCase();
  if (seen.has(key)) throw damagedZip(`it holds the entry "${name}" twice`);
  seen.add(key);
}

/** The entries in the order of the directory, not yet inflated. */
export function readZip(bytes: Uint8Array, limits: Limits): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 22) throw truncated();
  const { start, count } = findDirectory(view);
  if (count > limits.entries) {
    throw new WorkbookError(
      "too-large",
      `The file holds ${count} entries; at most ${limits.entries} are read.`,
    );
  }
  const entries: ZipEntry[] = [];
  const seen = new Set<string>();
  let [claimed, stored] = [0, 0];
  let at = start;
  for (let index = 0; index < count; index++) {
    if (at + 46 > bytes.length) throw truncated();
    if (view.getUint32(at, true) !== 0x02014b50) throw damagedZip("its list of entries is broken");
    const flags = view.getUint16(at + 8, true);
    const nameEnd = at + 46 + view.getUint16(at + 28, true);
    const extraEnd = nameEnd + view.getUint16(at + 30, true);
    const next = extraEnd + view.getUint16(at + 32, true);
    if (next > bytes.length) throw truncated();
    const nameBytes = bytes.subarray(at + 46, nameEnd);
    const name = new TextDecoder().decode(nameBytes);
    checkName(name, seen);
    if (flags & 1) {
      throw new WorkbookError(
        "password",
        `The zip entry "${name}" is encrypted. Save the workbook without a password.`,
      );
    }
    const method = view.getUint16(at + 10, true);
    if (method !== 0 && method !== 8) {
      throw damagedZip(`the entry "${name}" is packed by method ${method}, not stored or deflated`);
    }
    const fields = [24, 20, 42].map((offset) => view.getUint32(at + offset, true));
    const [size, packed, local] = zip64Sizes(view, nameEnd, extraEnd, fields) as [
      number,
      number,
      number,
    ];
    if (local + 30 > bytes.length) throw truncated();
    if (view.getUint32(local, true) !== 0x04034b50) {
      throw damagedZip(`the entry "${name}" is not where the list of entries says`);
    }
    const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    if (from + packed > bytes.length) throw truncated();
    stored += packed;
    if (stored > bytes.length) throw damagedZip("its entries lie over each other");
    claimed += size;
    if (claimed > limits.expandedBytes) {
      throw new WorkbookError(
        "too-large",
        `The file unpacks to more than ${megabytes(limits.expandedBytes)}, the most that is read.`,
      );
    }
    entries.push({
      name,
      nameBytes,
      utf8: (flags & 0x800) !== 0,
      method,
      time: view.getUint32(at + 12, true),
      crc: view.getUint32(at + 16, true),
      size,
      data: bytes.subarray(from, from + packed),
    });
    at = next;
  }
  return entries;
}

import { deflateSync } from "fflate";
import { crc32 } from "./crc32";
import { fixedTime, type ZipEntry } from "./entry";

/** Packs a part. The same bytes give the same entry on every machine. */
export function packEntry(name: string, bytes: Uint8Array, time = fixedTime): ZipEntry {
  const nameBytes = new TextEncoder().encode(name);
  return {
    name,
    nameBytes,
    utf8: nameBytes.length !== name.length,
    method: 8,
    time,
    crc: crc32(bytes),
    size: bytes.length,
    data: deflateSync(bytes, { level: 6 }),
  };
}

/** The fields that the local header and the directory share. */
function putCommon(view: DataView, at: number, entry: ZipEntry): void {
  view.setUint16(at, 20, true); // version 2.0: deflate
  view.setUint16(at + 2, entry.utf8 ? 0x800 : 0, true);
  view.setUint16(at + 4, entry.method, true);
  view.setUint32(at + 6, entry.time, true);
  view.setUint32(at + 10, entry.crc, true);
  view.setUint32(at + 14, entry.data.length, true);
  view.setUint32(at + 18, entry.size, true);
  view.setUint16(at + 22, entry.nameBytes.length, true);
}

/**
 * A zip of entries already packed, so that untouched ones go over as they were stored; fflate's
 * writer can only pack anew.
 */
export function writeZip(entries: readonly ZipEntry[]): Uint8Array {
  let total = 22;
  for (const { nameBytes, data } of entries) total += 30 + 46 + 2 * nameBytes.length + data.length;
  const bytes = new Uint8Array(total);
  const view = new DataView(bytes.buffer);
  const offsets: number[] = [];
  let at = 0;
  for (const entry of entries) {
    offsets.push(at);
    view.setUint32(at, 0x04034b50, true);
    putCommon(view, at + 4, entry);
    bytes.set(entry.nameBytes, at + 30);
    bytes.set(entry.data, at + 30 + entry.nameBytes.length);
    at += 30 + entry.nameBytes.length + entry.data.length;
  }
  const directory = at;
  for (const [index, entry] of entries.entries()) {
    view.setUint32(at, 0x02014b50, true);
    view.setUint16(at + 4, 20, true);
    putCommon(view, at + 6, entry);
    view.setUint32(at + 42, offsets[index] ?? 0, true);
    bytes.set(entry.nameBytes, at + 46);
    at += 46 + entry.nameBytes.length;
  }
  view.setUint32(at, 0x06054b50, true);
  view.setUint16(at + 8, entries.length, true);
  view.setUint16(at + 10, entries.length, true);
  view.setUint32(at + 12, at - directory, true);
  view.setUint32(at + 16, directory, true);
  return bytes;
}

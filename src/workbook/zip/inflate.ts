import { Inflate } from "fflate";
import { WorkbookError } from "../error";
import type { Budget } from "../limits";
import type { HostZip } from "../types";
import { crc32 } from "./crc32";
import type { ZipEntry } from "./entry";

/** Packed bytes handed over at a time: even at deflate's best ratio (1032) a step stays below 70 MB. */
const stepBytes = 1 << 16;

function damagedEntry(name: string, what: string): WorkbookError {
  return new WorkbookError(
    "damaged",
    `The file is damaged: the entry "${name}" ${what}. Copy or download it again.`,
  );
}

function inflate(entry: ZipEntry, budget: Budget): Uint8Array {
  // Room for what the directory claims, but no more than deflate could ever make of the bytes.
  const out = new Uint8Array(Math.min(entry.size, entry.data.length * 1032 + 1024));
  let length = 0;
  const stream = new Inflate((piece) => {
    budget.take(piece.length);
    if (length + piece.length <= out.length) out.set(piece, length);
    length += piece.length;
  });
  try {
    for (let at = 0; at < entry.data.length; at += stepBytes) {
      const end = at + stepBytes;
      stream.push(entry.data.subarray(at, end), end >= entry.data.length);
    }
  } catch (error) {
    if (error instanceof WorkbookError) throw error;
    throw damagedEntry(entry.name, "cannot be unpacked");
  }
  if (length !== entry.size) {
    throw damagedEntry(entry.name, `unpacks to ${length} bytes where ${entry.size} are stated`);
  }
  return out;
}

/** Inflates with the host's own code, which stops at the stated size. */
function inflateByHost(entry: ZipEntry, budget: Budget, host: HostZip): Uint8Array {
  budget.take(entry.size);
  let bytes: Uint8Array;
  try {
    bytes = host.inflate(entry.data, entry.size);
  } catch {
    throw damagedEntry(entry.name, "cannot be unpacked to the size it states");
  }
  if (bytes.length !== entry.size)
    throw damagedEntry(
      entry.name,
      `unpacks to ${bytes.length} bytes where ${entry.size} are stated`,
    );
  return bytes;
}

/** The entry's bytes, counted while they inflate and checked against size and checksum. */
export function unpackEntry(entry: ZipEntry, budget: Budget, host?: HostZip): Uint8Array {
  let bytes = entry.data;
  // Some writers call an empty entry deflated and store nothing at all.
  if (entry.method === 0 || (bytes.length === 0 && entry.size === 0)) {
    budget.take(bytes.length);
    if (bytes.length !== entry.size) throw damagedEntry(entry.name, "has a wrong size");
  } else {
    bytes = host ? inflateByHost(entry, budget, host) : inflate(entry, budget);
  }
  const sum = host ? host.crc32(bytes) : crc32(bytes);
  if (sum !== entry.crc) throw damagedEntry(entry.name, "fails its checksum");
  return bytes;
}

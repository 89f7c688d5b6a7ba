const table = new Int32Array(256);
for (let byte = 0; byte < 256; byte++) {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  table[byte] = value;
}

/** The checksum of zip entries (ISO-HDLC CRC-32), which fflate writes but neither checks nor exports. */
export function crc32(bytes: Uint8Array): number {
  let crc = -1;
  for (let at = 0; at < bytes.length; at++) {
    crc = (table[(crc ^ bytes[at]!) & 255] as number) ^ (crc >>> 8);
  }
  return ~crc >>> 0;
}

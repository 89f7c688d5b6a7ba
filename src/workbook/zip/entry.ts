/** One entry of a zip as it is stored. */
export interface ZipEntry {
  readonly name: string;
  /** The name as stored, so that it is written back the same. */
  readonly nameBytes: Uint8Array;
  /** General purpose bit 11: the name is UTF-8. */
  readonly utf8: boolean;
  /** 0 stored, 8 deflated. */
  readonly method: number;
  /** MS-DOS time in the low and date in the high half. */
  readonly time: number;
  readonly crc: number;
  /** Bytes once inflated, as the directory claims. */
  readonly size: number;
  /** The stored bytes. */
  readonly data: Uint8Array;
}

/** 1980-01-01 00:00, the first date a zip can hold: the same on every machine. */
export const fixedTime = 0x0021_0000;

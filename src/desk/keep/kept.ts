import { createStore, del, set, values } from "idb-keyval";
import type { Opened } from "./opened-file";

/** A job as it stood in a tab, not saved by its user. */
export interface KeptJob {
  readonly id: string;
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly changes: number;
  /** When the first of the changes was made, in milliseconds since 1970. */
  readonly since: number;
  /** The text of a cell that was still being typed. */
  readonly typing: KeptText | null;
  readonly file: Opened | null;
}

interface KeptText {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
  readonly text: string;
}

const store = () => createStore("fanrow-desk", "kept");

export const keep = (job: KeptJob): Promise<void> => set(job.id, job, store());
export const forget = (id: string): Promise<void> => del(id, store());
export const allKept = (): Promise<KeptJob[]> => values<KeptJob>(store());

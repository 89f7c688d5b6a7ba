import type { BringIn } from "../../field";
import type { Change, JobCheck, JobCodes, JobFile } from "../../job";
import type { CopyKind } from "../model/copy-name";

/** What was made of the job on its screen: it outlives a visit to another one. */
export interface RecordState {
  /** Names of the sheets that were written last. */
  readonly written: readonly string[];
  readonly comparison: Comparison | undefined;
  readonly copy: FileCopy | undefined;
  /** What a field copy that was read holds, and where it would go. */
  readonly brought: { readonly fileName: string; readonly found: BringIn } | undefined;
}

/** What is otherwise in the open workbook than in an older file. */
export interface Comparison {
  readonly fileName: string;
  readonly older: JobFile;
  readonly changes: readonly Change[];
  /** The codes of the older file. */
  readonly codes: JobCodes;
  /** The check that it was made with; after another one it may no longer hold. */
  readonly check: JobCheck;
}

/** A copy of the workbook that is ready to be taken away. */
export interface FileCopy {
  readonly kind: CopyKind;
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** What could not be replaced, or was taken for granted, a line each. */
  readonly left: readonly string[];
}

export const noRecords: RecordState = {
  written: [],
  comparison: undefined,
  copy: undefined,
  brought: undefined,
};

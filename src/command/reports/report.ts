import type { FileCheck } from "../check-file";

/**
 * A report that is written as the files come, so that it never holds more than one: what stands
 * first, then what is told of each file, then what stands last.
 */
export interface Report {
  readonly head: string;
  file(result: FileCheck): string;
  end(): string;
}

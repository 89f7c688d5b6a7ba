/** A fault, the passage it replaces, and the words its finding must hold. */
export type Fault = readonly [fault: string, from: string, to: string, ...words: string[]];

/** Where the command writes: files that come whole or not at all, and the streams it was given. */
export { SafeFile, writeFileSafely } from "./safe-file";
export { findPlace, type Guard, isSameTarget } from "./target";
export { WriteError, writeErrorOf } from "./write-error";

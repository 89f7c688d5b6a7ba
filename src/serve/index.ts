/** What the servers of the desk and of the add-in share: files of the built site, to this machine alone. */
export { answerFile } from "./files";
export { type Refusal, refusalOf } from "./guard";
export { answerPlain, ended, listens } from "./listen";
export { isStale } from "./stale";

/** Reading and checking a job: what a page need not have before it is asked for its first check. */
export { fingerprintOf } from "../accepting";
export { checkSteps } from "../check-job";
export { provenanceOf } from "../provenance";
export { readJob } from "../read";

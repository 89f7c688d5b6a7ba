/**
 * Findings that someone took as they are: a row of the sheet "Accepted" says which, why and who.
 * An acceptance holds for the row as it stood: once a cell of that row changes, it lapses.
 */
export { applyAcceptances } from "./apply-acceptances";
export { fingerprintOf, plainFormula } from "./fingerprint";
export {
  type Acceptance,
  acceptanceHeadings,
  acceptedSheetTitle,
} from "./read-acceptances";

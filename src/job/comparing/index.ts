/** Two states of a job side by side: what was typed, what is computed, what was found. */
export { type Change, type ChangeKind, compareChecks, shownStates } from "./compare-jobs";
export { type RateUnder, underEdition } from "./under-edition";

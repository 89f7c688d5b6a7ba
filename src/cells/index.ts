/** The ground floor: what every other room takes as known. */
export { InputError } from "./input-error";

import { InputError } from "../cells";
import { unreadableBy } from "./check-file";

/** What to tell of a request that cannot be met; throws on what is no mistake of the user's. */
export function complaintOf(error: unknown): { readonly complaint: string } {
  const why = error instanceof InputError ? error.message : unreadableBy(error);
  if (why === undefined) throw error;
  return { complaint: why };
}

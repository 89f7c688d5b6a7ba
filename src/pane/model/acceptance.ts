import { isoDay } from "../../cells";
import type { Accepted, Finding } from "../../job";

/** What someone types to take a finding as it is. */
interface AcceptanceDraft {
  readonly reason: string;
  readonly initials: string;
}

/** What is still to be typed, in words; "" where nothing is. */
export interface DraftGaps {
  readonly reason: string;
  readonly initials: string;
}

/** "AB on 2026-10-05"; the day is left out where none is given. */
export function acceptedBy({ initials, date }: Accepted, dateOffset = 0): string {
  const day = typeof date === "number" ? isoDay(date, dateOffset) : (date ?? "").trim();
  return day === "" ? initials : `${initials} on ${day}`;
}

export function gapsOf({ reason, initials }: AcceptanceDraft): DraftGaps {
  return {
    reason: reason.trim() === "" ? "Say why the row is right as it is." : "",
    initials: initials.trim() === "" ? "Say who accepts it." : "",
  };
}

/**
 * An acceptance is kept by the finding's cell, so that one without a cell has none; and a faulty
 * acceptance is put right, not accepted.
 */
export function canAccept({ cell, kind }: Finding): boolean {
  return cell !== "" && kind !== "acceptance-incomplete";
}

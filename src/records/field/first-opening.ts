import { constantInUse, expectedOpening, type Job, type NextOpening } from "../../job";

/**
 * The box of a fan row and the opening to begin with: for its rated flow, or for its rate where no
 * rating is known. Undefined where neither is, or no opening brings the fan into the window.
 */
export function firstOpening(
  job: Job,
  i: number,
): (NextOpening & { readonly box: string }) | undefined {
  const { fans, boxes, settings } = job;
  const box = fans?.table.text("box", i) || (boxes?.names[0] ?? "");
  const openings = boxes?.openings(box) ?? [];
  const rated = fans?.table.number("rated", i) ?? Number.NaN;
  const flow = rated > 0 ? rated : (fans?.requiredNumber(i) ?? Number.NaN);
  if (!(flow > 0) || openings.length === 0) return undefined;
  const first = expectedOpening(flow, constantInUse(job, box), openings, settings);
  return first?.inWindow ? { ...first, box } : undefined;
}

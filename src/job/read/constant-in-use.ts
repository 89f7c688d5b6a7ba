import type { BoxList } from "./box-list";
import type { Settings } from "./settings";

/** The constant that a box's flows are worked out with: its own where it states one, else the job's. */
export function constantInUse(
  { boxes, settings }: { readonly boxes: BoxList | undefined; readonly settings: Settings },
  box: string,
): number {
  const own = boxes?.constant(box) ?? Number.NaN;
  return own > 0 ? own : settings.constant;
}

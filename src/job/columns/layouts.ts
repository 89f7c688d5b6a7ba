import { boxesLayout } from "./boxes";
import { catalogueLayout } from "./catalogue";
import { dwellingsLayout } from "./dwellings";
import { fansLayout } from "./fans";
import type { SheetLayout } from "./field";
import { instrumentsLayout } from "./instruments";
import { pairsLayout } from "./pairs";
import { registersLayout } from "./registers";
import { scheduleLayout } from "./schedule";
import type { SheetKind } from "./sheet-kind";
import { totalsLayout } from "./totals";

/** Every sheet that can be recognised, with every field it can have. */
export const layouts: readonly SheetLayout[] = [
  fansLayout,
  dwellingsLayout,
  boxesLayout,
  pairsLayout,
  instrumentsLayout,
  registersLayout,
  scheduleLayout,
  catalogueLayout,
  totalsLayout,
];

export function layoutOf(kind: SheetKind): SheetLayout {
  return layouts.find((layout) => layout.kind === kind) as SheetLayout;
}

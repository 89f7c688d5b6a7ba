import { shown, shownApart } from "../../cells";
import { nextOpening } from "../../rules";
import { unitOf } from "../columns";
import { factsOf } from "../facts";
import type { Mend } from "../findings";
import { readAgainWith, turnedSign } from "../mends";
import { eachFan } from "./each";
import { slippedUnit } from "./pressure-unit";

/** Another box would not show more of a fan that does not run. */
const nothingMoves = {
  effect: "No air goes through the box, or the manometer does not see it: no flow follows.",
  mend: "Look first whether the fan runs, the hose is on, and a cover is still on the grille or the tap; then read again.",
};

/** Pressures above, below or on the wrong side of the window, with the opening to use next. */
export const checkPressureWindow = eachFan((fans, job) => {
  const { settings } = job;
  const flowUnit = unitOf("flow", settings.system);
  return (i, say) => {
    const status = fans.status[i];
    const pressure = fans.pressure[i] as number;
    const cell = fans.typedPressure(i);
    if (job.firm?.says(i) === "pass" && status !== "reversed") return;
    if (status === "reversed" && job.firm) {
      // The sheet's own number, also where it was typed as a text.
      const { block, own } = job.firm.at(i);
      const typed = block.number(own, "pressure") ?? pressure;
      say("pressure-negative", cell, {
        what: `${shown(typed)} stands against the sign of the other readings of this sheet`,
        effect: "Hoses swapped, or the sign typed the other way round: no flow is sure to follow.",
        mend: `Compare with the field notes. If the fan was exhausting, type ${shown(-typed)}.`,
        apply: turnedSign(fans, i),
      });
    } else if (status === "reversed")
      say("pressure-negative", cell, {
        what: `${shown(pressure)} Pa is negative: hoses swapped, or the sign typed the other way round`,
        effect:
          "No flow follows from it; a truly reversed pressure would mean air blown out of the grille.",
        mend: `Check the hoses. If the fan was exhausting, type ${shown(-pressure)} (room minus box).`,
        apply: turnedSign(fans, i),
      });
    else if (status === "above") {
      const [own, high] = shownApart(pressure, settings.high);
      say("pressure-above", cell, {
        what: `${own} Pa is above the ${high} Pa window`,
        effect: heldBack(i),
        ...advice(i),
      });
    } else if (status === "below" && !slippedUnit(job, i)) {
      const [own, low] = shownApart(pressure, settings.low);
      say("pressure-below", cell, {
        what: `${own} Pa is below the ${low} Pa window`,
        ...(pressure === 0
          ? nothingMoves
          : {
              effect:
                "The manometer's limit is a large part of so small a pressure: the flow is unsure.",
              ...advice(i),
            }),
      });
    }
  };

  function heldBack(i: number): string {
    const facts = factsOf(job).fans;
    const flow = facts?.judged(i) ?? Number.NaN;
    const required = facts?.required(i) ?? Number.NaN;
    const reading = Number.isNaN(flow) ? "the flow" : `${shown(flow)} ${flowUnit}`;
    return facts?.alreadyMeets(i)
      ? `${reading} already meets ${shown(required)}, and the box only lowers it; how much more the fan moves cannot be said.`
      : `The box holds the fan back: ${reading} reads low.`;
  }

  function advice(i: number): { mend: string; apply?: Mend | undefined } {
    const openings = fans?.boxes?.openings(fans.table.text("box", i)) ?? [];
    const area = fans?.area[i] as number;
    const next =
      area > 0 ? nextOpening(fans?.pressure[i] as number, area, openings, settings) : undefined;
    if (!fans || !next) return { mend: "Use another opening and read again." };
    const expected = `expect about ${shown(next.pressure)} Pa`;
    const size = `${shown(next.area)} ${unitOf("opening", settings.system)}`;
    return next.inWindow
      ? {
          mend: `Open ${next.label} (${size}), ${expected}, and read again.`,
          apply: readAgainWith(fans, i, next),
        }
      : {
          mend: `No opening of this box brings the fan into the window; ${next.label} (${size}) comes nearest, ${expected}. Use another box.`,
        };
  }
});

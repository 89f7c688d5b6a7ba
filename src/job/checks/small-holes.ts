import { shown } from "../../cells";
import { aimIn, holeError, usualConstant } from "../../rules";
import { convert } from "../../units";
import type { Table } from "../read";
import { eachRow, type Say } from "./each";

/** Holes up to this diameter (m) read low with the usual constant. */
const small = 0.0255;

/** Walls from this share of the hole on are no sharp edge any more; from the other on a short tube. */
const [edge, tube] = [0.1, 1.5];
/** Of a short tube against a sharp hole: 0.82 ÷ 0.61 (a handbook of hydraulics; read). */
const mostMore = 34;

/** Openings in walls so thick that air leaves them as it does a short tube. */
const checkWall = (table: Table, i: number, say: Say) => {
  const sizes = ["size1", "size2"].map((key) => table.number(key, i)).filter((size) => size > 0);
  const share = table.number("wall", i) / Math.min(...sizes);
  if (!(share > edge)) return;
  say("wall-thick", "wall", {
    what: `the wall is ${shown(100 * share)} % as thick as the hole is wide; at a sharp edge it is ${100 * edge} % at most`,
    effect: `Air clings to a thick wall: ${share < tube ? "the flow is unsure, and up to" : "about"} ${mostMore} % more passes than the usual constant says.`,
    mend: "Back the opening with card or thin sheet and cut that clean, or prove this opening and type its own constant.",
    cause: "thick walls",
  });
};

/** Openings made of holes so small that the trade's constant does not hold for them. */
export const checkSmallHoles = eachRow("boxes", (table, job) => {
  const { system, constant, low } = job.settings;
  const aim = aimIn(job.settings);
  return (i, say) => {
    checkWall(table, i, say);
    if (!/^(round|circ|hole|dia)/i.test(table.text("shape", i))) return;
    const size = table.number("size1", i);
    const d = (system === "ip" ? convert(size, "in", "mm") : size * 10) / 1000;
    const own = table.number("constant", i) > 0 ? table.number("constant", i) : constant;
    // A constant that the box proved for itself already knows its holes.
    if (!(d > 0 && d <= small) || Math.abs(own / usualConstant[system] - 1) > 0.005) return;
    const off = (pressure: number) => shown(-100 * holeError(d, pressure, usualConstant.ip));
    say("hole-small", "size1", {
      what: `holes of ${shown(size)} ${system === "ip" ? "in" : "cm"} with the constant ${own}: it reads about ${off(low)} % low at ${shown(low)} Pa and ${off(aim)} % low at ${shown(aim)} Pa`,
      effect:
        "Air is slowed less at the edge of a small hole than the usual constant says: flows come out low.",
      mend: "Prove this opening against a reference and type its own constant, or cut one larger hole of the same area.",
      cause: "small holes",
    });
  };
});

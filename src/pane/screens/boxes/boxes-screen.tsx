import { useMemo, useState } from "react";
import { todayOf } from "../../../cells";
import { type JobCheck, unitOf } from "../../../job";
import { boxViews } from "../../model/boxes-view";
import { proofView } from "../../model/proof-view";
import { CautionBar } from "../../parts/caution-bar";
import { useShared } from "../../parts/styles";
import { TypedNumber } from "../../parts/typed-number";
import { BoxCard } from "./box-card";
import { Planner } from "./planner";

/** The boxes of the job with the reach of their openings, and a planner for a new one. */
export function BoxesScreen({ check }: { check: JobCheck }) {
  const shared = useShared();
  const { job } = check;
  const boxes = useMemo(() => boxViews(job), [job]);
  const proofs = useMemo(() => {
    const today = todayOf(job.file);
    return new Map(boxes.map(({ name }) => [name, proofView(job, name, today)]));
  }, [job, boxes]);
  const [width, setWidth] = useState("");
  const [height, setHeight] = useState("");
  const unit = unitOf("length", job.settings.system);
  const face = width.trim() && height.trim() ? Number(width) * Number(height) : Number.NaN;
  return (
    <div className={shared.screen}>
      <CautionBar about={["taped"]} />
      {boxes.length === 0 ? (
        <p className={shared.text}>
          {job.tables.boxes
            ? `No opening stands on sheet ${job.tables.boxes.name} yet: plan a box, or type one.`
            : "No sheet with boxes and their openings was found."}
        </p>
      ) : boxes.every((box) => box.face > 0) ? null : (
        <section className={shared.stack}>
          <h3 className={shared.subheading}>Box face</h3>
          <p className={shared.muted}>Its size tells which openings are too large for it.</p>
          <div className={shared.pair}>
            <TypedNumber label={`Width (${unit})`} value={width} onType={setWidth} />
            <TypedNumber label={`Height (${unit})`} value={height} onType={setHeight} />
          </div>
        </section>
      )}
      {boxes.map((box) => (
        <BoxCard
          key={box.name}
          box={box}
          proof={proofs.get(box.name)}
          settings={job.settings}
          face={box.face > 0 ? box.face : face}
        />
      ))}
      <Planner settings={job.settings} taken={boxes.map((box) => box.name)} />
    </div>
  );
}

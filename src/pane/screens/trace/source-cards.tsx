import { useId } from "react";
import type { PickView, TraceView } from "../../model/trace-view";
import { Fold } from "../../parts/fold";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { BudgetTable } from "./budget-table";
import { CellList, PlaceButton } from "./place-button";

/** The spread of a flow, where its row works one out. */
export function SpreadCard({ view: { spread } }: { view: TraceView }) {
  const shared = useShared();
  if (!spread) return null;
  return (
    <Panel title="Its spread">
      <CellList cells={[spread.cell]} />
      {spread.budget ? (
        <>
          <BudgetTable budget={spread.budget} />
          <p className={shared.text}>Together {spread.budget.total}</p>
        </>
      ) : null}
    </Panel>
  );
}

/** What look-ups and conditional sums take from their ranges. */
export function PickCards({ picks }: { picks: readonly PickView[] }) {
  const shared = useShared();
  if (picks.length === 0) return null;
  return (
    <Panel title="Looked up">
      {picks.map(({ text, cells, more }) => (
        <div key={text} className={shared.tight}>
          <code className={shared.muted}>{text}</code>
          {cells.length === 0 ? <p className={shared.text}>takes no cell</p> : null}
          <CellList cells={cells} />
          {more === "" ? null : <p className={shared.muted}>{more}</p>}
        </div>
      ))}
    </Panel>
  );
}

/** What the formula reads besides the arguments of calls of ours, or what stands beside a typed value. */
export function ReadsCard({ view: { kind, reads, calls } }: { view: TraceView }) {
  const shared = useShared();
  const id = useId();
  if (reads.length === 0) return null;
  const singles = reads.filter(({ target }) => !target.cells.includes(":"));
  const ranges = reads.filter(({ target }) => target.cells.includes(":"));
  const list = (
    <>
      <CellList cells={singles.flatMap(({ cells }) => cells)} />
      {ranges.map(({ target, words, cells }) => (
        <div key={target.name} className={shared.tight}>
          <span>
            <PlaceButton target={target} /> <span className={shared.muted}>{words}</span>
          </span>
          <CellList cells={cells} />
        </div>
      ))}
    </>
  );
  // Beside calls of ours it is mostly the conditions and the ways not taken.
  return (
    <section className={shared.panel} aria-labelledby={calls.length > 0 ? undefined : id}>
      {calls.length > 0 ? (
        <Fold title="What else the formula reads">{list}</Fold>
      ) : (
        <>
          <h3 id={id} className={shared.subheading}>
            {kind === "typed" ? "Its row holds" : "The formula reads"}
          </h3>
          {list}
        </>
      )}
    </section>
  );
}

import { ToggleButton } from "@fluentui/react-components";
import { Pin16Filled, Pin16Regular } from "@fluentui/react-icons";
import { useEffect, useMemo, useRef } from "react";
import type { JobCheck } from "../../../job";
import type { Target } from "../../model/trace-cells";
import { traceView } from "../../model/trace-view";
import { follow, hold, spotAt, stepTo, tracedSpot, type Walk } from "../../model/trace-walk";
import { CopyText } from "../../parts/copy-text";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { CallCard } from "./call-card";
import { CellCard } from "./cell-card";
import { GoProvider } from "./go-context";
import { PathBar } from "./path-bar";
import { PickCards, ReadsCard, SpreadCard } from "./source-cards";
import { useNow } from "./use-now";

export interface TraceScreenProps {
  readonly check: JobCheck;
  /** The cells gone through; they outlive a visit to another screen. */
  readonly walk: Walk;
  readonly onWalk: (change: (walk: Walk) => Walk) => void;
}

/** Why the selected cell holds what it holds, and the way back to what was typed. */
export function TraceScreen({ check, walk, onWalk }: TraceScreenProps) {
  const shared = useShared();
  const { session, state } = useSession();
  const { selection } = state;
  const selected = useMemo(
    () => (selection ? spotAt(selection.sheet, selection.cell) : undefined),
    [selection],
  );
  // Until a cell that was clicked here is selected, the workbook tells of selections before it.
  const going = useRef(0);
  const hasGone = useRef(false);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (selected && going.current === 0) onWalk((before) => follow(before, selected));
  }, [selected, onWalk]);

  const spot = tracedSpot(walk);
  const now = useNow(spot, check);
  const view = useMemo(
    () => (spot ? traceView(check.job, spot, now) : undefined),
    [check.job, spot, now],
  );
  // The button that was clicked is gone with the trace it stood in.
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever another cell is traced
  useEffect(() => {
    if (!hasGone.current) return;
    hasGone.current = false;
    head.current?.focus();
  }, [spot]);

  const go = async ({ spot: to, cells }: Target) => {
    hasGone.current = true;
    onWalk((before) => stepTo(before, to));
    going.current++;
    await session.select(to.sheet, cells);
    going.current--;
  };
  return (
    <GoProvider value={go}>
      <div className={shared.screen}>
        <div className={shared.spread}>
          <ToggleButton
            size="small"
            icon={walk.held ? <Pin16Filled /> : <Pin16Regular />}
            checked={walk.held}
            onClick={() => onWalk((before) => hold(before, !before.held, selected))}
          >
            Hold this cell
          </ToggleButton>
          {view && "text" in view ? <CopyText key={view.target.name} text={view.text} /> : null}
        </div>
        <PathBar path={walk.path} />
        {view === undefined ? (
          <p className={shared.text}>Select a cell to see why it holds what it holds.</p>
        ) : "nothing" in view ? (
          <p className={shared.text}>{view.nothing}</p>
        ) : (
          <>
            <CellCard view={view} head={head} />
            {view.calls.map((call, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a function may be called twice
              <CallCard key={i} call={call} />
            ))}
            <SpreadCard view={view} />
            <PickCards picks={view.picks} />
            <ReadsCard view={view} />
          </>
        )}
      </div>
    </GoProvider>
  );
}

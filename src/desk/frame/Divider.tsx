import { type KeyboardEvent, type PointerEvent, useRef } from "react";

const narrowestPane = 320;
const widestPane = 720;
/** The widths a press without dragging steps through. */
const stops = [320, 400, 520];

/**
 * The line between grid and pane. It is dragged, moved with the arrow keys, or pressed to step
 * through set widths.
 */
export function Divider({ width, onWidth }: { width: number; onWidth: (width: number) => void }) {
  const from = useRef<{ x: number; width: number; moved: boolean } | null>(null);
  const set = (wanted: number) =>
    onWidth(Math.round(Math.min(widestPane, Math.max(narrowestPane, wanted))));
  const onPointerDown = (event: PointerEvent<HTMLDivElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    from.current = { x: event.clientX, width, moved: false };
  };
  const onPointerMove = (event: PointerEvent) => {
    const start = from.current;
    if (!start) return;
    const by = start.x - event.clientX;
    if (Math.abs(by) > 3) start.moved = true;
    if (start.moved) set(start.width + by);
  };
  const onPointerUp = () => {
    if (from.current && !from.current.moved)
      set(stops.find((stop) => stop > width) ?? (stops[0] as number));
    from.current = null;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const by = { ArrowLeft: 20, ArrowRight: -20 }[event.key];
    if (by !== undefined) set(width + by);
    else if (event.key === "Home") set(narrowestPane);
    else if (event.key === "End") set(widestPane);
    else return;
    event.preventDefault();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: an <hr> takes no keyboard and has no value
    <div
      className="desk-divider"
      role="separator"
      tabIndex={0}
      aria-orientation="vertical"
      aria-label="Width of the pane"
      aria-controls="desk-pane"
      aria-valuenow={width}
      aria-valuemin={narrowestPane}
      aria-valuemax={widestPane}
      title="Drag, press, or use the arrow keys to change the width of the pane"
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={() => {
        from.current = null;
      }}
      onKeyDown={onKeyDown}
    />
  );
}

import { makeStyles, tokens } from "@fluentui/react-components";
import type { OpeningView } from "../../model/boxes-view";
import { chart, useChartColours } from "../../parts/chart-colours";
import { useWidth } from "../../parts/use-width";
import { Hole } from "./hole";

const useStyles = makeStyles({
  label: {
    fill: chart.ink,
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightSemibold,
    textAnchor: "middle",
  },
  count: { fill: chart.quiet, fontSize: "11px", textAnchor: "middle" },
});

const gap = 10;
const labelHeight = 30;
const tallest = 96;

/** The openings of a box side by side, all to one scale. */
export function OpeningDrawing({ openings }: { openings: readonly OpeningView[] }) {
  const styles = useStyles();
  const colours = useChartColours();
  const [element, width] = useWidth<HTMLDivElement>(288);
  const drawn = openings.filter((opening) => opening.width > 0 && opening.height > 0);
  const sum = drawn.reduce((total, opening) => total + opening.width, 0);
  const high = Math.max(...drawn.map((opening) => opening.height));
  const scale = Math.min((width - gap * (drawn.length + 1)) / sum, tallest / high);
  let left = gap;
  return (
    <div ref={element} className={colours.chart}>
      {drawn.length === 0 ? null : (
        <svg width={width} height={high * scale + labelHeight + 4} role="presentation">
          {drawn.map((opening, i) => {
            const [w, h] = [opening.width * scale, opening.height * scale];
            const x = left + w / 2;
            left += w + gap;
            const middle = 2 + (high * scale) / 2;
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: a label may stand twice on a box
              <g key={i}>
                <Hole isRound={opening.shape === "round"} x={x} y={middle} width={w} height={h} />
                <text className={styles.label} x={x} y={high * scale + 17}>
                  {opening.label}
                </text>
                {opening.count > 1 ? (
                  <text className={styles.count} x={x} y={high * scale + 30}>
                    × {opening.count}
                  </text>
                ) : null}
              </g>
            );
          })}
        </svg>
      )}
    </div>
  );
}

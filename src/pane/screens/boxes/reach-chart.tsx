import { makeStyles, tokens } from "@fluentui/react-components";
import { shown } from "../../../cells";
import type { Reach } from "../../../job";
import { flowAxis, ticksFor } from "../../model/flow-axis";
import { chart, useChartColours } from "../../parts/chart-colours";
import { useWidth } from "../../parts/use-width";

const useStyles = makeStyles({
  grid: { stroke: chart.faint },
  text: { fill: chart.ink, fontSize: tokens.fontSizeBase200 },
  small: { fill: chart.quiet, fontSize: "11px", textAnchor: "middle" },
  bar: { fill: chart.bar },
  gap: {
    fill: chart.gap,
    stroke: chart.bad,
    strokeDasharray: "3 2",
  },
  gapText: {
    fill: chart.bad,
    fontSize: "11px",
    fontWeight: tokens.fontWeightSemibold,
    textAnchor: "middle",
  },
});

const line = 22;
const margin = { left: 30, right: 14, top: 6, bottom: 34 };

interface ReachChartProps {
  readonly rows: readonly { readonly label: string; readonly reach: Reach }[];
  readonly gaps: readonly Reach[];
  readonly unit: string;
}

/** What each opening can read on one flow axis: overlaps stand above one another, gaps are framed. */
export function ReachChart({ rows, gaps, unit }: ReachChartProps) {
  const styles = useStyles();
  const colours = useChartColours();
  const [element, width] = useWidth<HTMLDivElement>(288);
  const axis = flowAxis(rows.flatMap(({ reach }) => [reach.lowest, reach.highest]));
  const inner = width - margin.left - margin.right;
  const x = (flow: number) => margin.left + axis.at(flow) * inner;
  const gapLine = gaps.length > 0 ? line : 0;
  const bottom = margin.top + gapLine + rows.length * line;
  return (
    <div ref={element} className={colours.chart}>
      <svg width={width} height={bottom + margin.bottom} role="presentation">
        {ticksFor(axis, inner).map((tick) => (
          <g key={tick}>
            <line className={styles.grid} x1={x(tick)} x2={x(tick)} y1={margin.top} y2={bottom} />
            <text className={styles.small} x={x(tick)} y={bottom + 14}>
              {tick}
            </text>
          </g>
        ))}
        {gaps.map(({ lowest, highest }) => (
          <g key={lowest}>
            <rect
              className={styles.gap}
              x={x(lowest)}
              y={margin.top + line - 3.5}
              width={Math.max(3, x(highest) - x(lowest))}
              height={bottom - margin.top - line + 3}
            />
            <text className={styles.gapText} x={(x(lowest) + x(highest)) / 2} y={margin.top + 14}>
              gap
            </text>
          </g>
        ))}
        {rows.map(({ label, reach }, i) => {
          const y = margin.top + gapLine + i * line;
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a label may stand twice on a box
            <g key={i}>
              <text className={styles.text} x={4} y={y + 15}>
                {label}
              </text>
              <rect
                className={styles.bar}
                x={x(reach.lowest)}
                y={y + 5}
                width={x(reach.highest) - x(reach.lowest)}
                height={line - 10}
                rx={2}
              >
                <title>
                  {label}: {shown(reach.lowest)} to {shown(reach.highest)} {unit}
                </title>
              </rect>
            </g>
          );
        })}
        <text className={styles.small} x={(margin.left + width - margin.right) / 2} y={bottom + 29}>
          flow, {unit}
        </text>
      </svg>
    </div>
  );
}

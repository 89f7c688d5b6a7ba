import { makeStyles, mergeClasses } from "@fluentui/react-components";
import { chart, useChartColours } from "./chart-colours";

const useStyles = makeStyles({
  bar: { display: "block", width: "100%", height: "8px" },
  track: { fill: chart.hole, stroke: chart.quiet, strokeWidth: "1px" },
  part: { fill: chart.bar },
});

interface BarProps {
  /** Ends of the part that is filled, 0 to 1. */
  readonly from?: number;
  readonly to: number;
}

/** A part of a whole as a bar. It says nothing by itself: the number stands beside it. */
export function Bar({ from = 0, to }: BarProps) {
  const styles = useStyles();
  const colours = useChartColours();
  return (
    <svg className={mergeClasses(styles.bar, colours.chart)} aria-hidden="true">
      <rect className={styles.track} width="100%" height="100%" />
      <rect
        className={styles.part}
        x={`${100 * from}%`}
        width={`${100 * Math.max(0, to - from)}%`}
        height="100%"
      />
    </svg>
  );
}

import { makeStyles } from "@fluentui/react-components";
import { chart } from "../../parts/chart-colours";

const useStyles = makeStyles({
  hole: { fill: chart.hole, stroke: chart.ink, strokeWidth: "1.25px" },
});

interface HoleProps {
  readonly isRound: boolean;
  /** The middle, and the sides or the diameter, in points of the drawing. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An opening as it is drawn, round or with four corners. */
export function Hole({ isRound, x, y, width, height }: HoleProps) {
  const { hole } = useStyles();
  return isRound ? (
    <circle className={hole} cx={x} cy={y} r={width / 2} />
  ) : (
    <rect className={hole} x={x - width / 2} y={y - height / 2} width={width} height={height} />
  );
}

import { makeStyles, tokens } from "@fluentui/react-components";
import type { BoxFace, PlacedHole } from "../../../job";
import { chart, useChartColours } from "../../parts/chart-colours";
import { useShared } from "../../parts/styles";
import { useWidth } from "../../parts/use-width";
import { Hole } from "./hole";

const useStyles = makeStyles({
  face: { fill: chart.paper, stroke: chart.ink, strokeWidth: "1.25px" },
  label: {
    fill: chart.ink,
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightSemibold,
    textAnchor: "middle",
    dominantBaseline: "central",
  },
});

interface FaceDrawingProps {
  readonly face: BoxFace;
  readonly holes: readonly PlacedHole[];
  readonly shape: "round" | "square";
  readonly middles: readonly string[];
  readonly unit: string;
}

const edge = 2;
const tallest = 320;

/** The face as it is to be cut, to scale, with the middle of each hole. */
export function FaceDrawing({ face, holes, shape, middles, unit }: FaceDrawingProps) {
  const styles = useStyles();
  const shared = useShared();
  const colours = useChartColours();
  const [element, width] = useWidth<HTMLDivElement>(288);
  const scale = Math.min((width - 2 * edge) / face.width, tallest / face.height);
  const [wide, high] = [face.width * scale, face.height * scale];
  return (
    <>
      <div ref={element} className={colours.chart}>
        <svg
          width={wide + 2 * edge}
          height={high + 2 * edge}
          role="img"
          aria-label="The face with its holes, to scale"
        >
          <rect className={styles.face} x={edge} y={edge} width={wide} height={high} />
          {holes.map(({ opening, size, x, y }) => {
            const [across, down] = [edge + x * scale, edge + high - y * scale];
            const side = size * scale;
            return (
              <g key={`${x} ${y}`}>
                <Hole isRound={shape === "round"} x={across} y={down} width={side} height={side} />
                <text className={styles.label} x={across} y={down}>
                  {opening}
                </text>
              </g>
            );
          })}
        </svg>
      </div>
      <p className={shared.muted}>
        Middles, from the left and from the lower edge ({unit}): {middles.join("; ")}.
      </p>
    </>
  );
}

import { makeStyles, tokens } from "@fluentui/react-components";
import { cellName, rectangleText } from "../../../cells";
import type { Job } from "../../../job";
import { useShared } from "../../parts/styles";

/** So much of a sheet is drawn: enough to see where its blocks lie. */
const mostRows = 48;
const mostCols = 30;

const kinds = {
  readings: "readings",
  names: "names and rates",
  headings: "headings",
  left: "totals and other lines",
} as const;
type Kind = keyof typeof kinds;

const measured = new Set(["pressure", "flow", "area", "diameter", "opening"]);

const useStyles = makeStyles({
  picture: {
    width: "100%",
    maxHeight: "180px",
    backgroundColor: tokens.colorNeutralBackground3,
    borderRadius: tokens.borderRadiusSmall,
  },
  readings: { fill: tokens.colorBrandBackground },
  names: { fill: tokens.colorNeutralStroke1 },
  headings: { fill: tokens.colorNeutralForeground1 },
  left: { fill: tokens.colorPaletteMarigoldBorderActive },
  key: { width: "10px", height: "10px", verticalAlign: "baseline" },
});

/** Which cells of a sheet were taken for readings, names, headings and totals. */
export function BlockPicture({ job, sheet }: { job: Job; sheet: string }) {
  const styles = useStyles();
  const shared = useShared();
  const grid = job.file.sheets.find(({ name }) => name === sheet);
  if (!grid) return null;
  const rows = Math.min(mostRows, grid.rowCount);
  const cols = Math.min(mostCols, grid.colCount);
  const cells = kindsOf(job, sheet, rows, cols);
  const shown = (Object.keys(kinds) as Kind[]).filter((kind) => [...cells.values()].includes(kind));
  const area = rectangleText({ top: 0, left: 0, bottom: rows - 1, right: cols - 1 });
  return (
    <figure className={shared.figure}>
      <svg
        className={styles.picture}
        viewBox={`0 0 ${cols * 20} ${rows * 7}`}
        preserveAspectRatio="none"
        role="img"
        aria-label={`Cells ${area} of ${sheet} and what they were taken for`}
      >
        {[...cells].map(([at, kind]) => {
          const [row, col] = [Math.floor(at / cols), at % cols];
          return (
            <rect
              key={at}
              className={styles[kind]}
              x={col * 20 + 1}
              y={row * 7 + 1}
              width={18}
              height={5}
            >
              <title>{`${cellName(row, col)}: ${kinds[kind]}`}</title>
            </rect>
          );
        })}
      </svg>
      <figcaption className={`${shared.line} ${shared.muted}`}>
        {shown.map((kind) => (
          <span key={kind}>
            <svg className={styles.key} viewBox="0 0 10 10" aria-hidden="true">
              <rect className={styles[kind]} width="10" height="10" />
            </svg>{" "}
            {kinds[kind]}
          </span>
        ))}
        {grid.rowCount > rows ? <span>the first {rows} rows</span> : null}
      </figcaption>
    </figure>
  );
}

function kindsOf(job: Job, sheet: string, rows: number, cols: number): Map<number, Kind> {
  const found = new Map<number, Kind>();
  const grid = job.file.sheets.find(({ name }) => name === sheet);
  const set = (row: number, col: number, kind: Kind) => {
    if (
      row < rows &&
      col < cols &&
      (kind === "readings" || kind === "names" || grid?.value(row, col) !== null)
    )
      found.set(row * cols + col, kind);
  };
  const across = (lines: readonly number[], turned: boolean, kind: Kind) => {
    for (const line of lines)
      for (let at = 0; at < (turned ? rows : cols); at++)
        turned ? set(at, line, kind) : set(line, at, kind);
  };
  const blocks = job.firm?.reading.blocks.filter((block) => block.sheet === sheet) ?? [];
  for (const { skipped, headings, turned } of blocks) {
    across(skipped, turned, "left");
    across(headings, turned, "headings");
  }
  for (const block of blocks)
    for (const role of block.roles.keys())
      for (let i = 0; i < block.fans.length && i < rows * cols; i++) {
        const place = block.place(i, role);
        if (place) set(place.row, place.col, measured.has(role) ? "readings" : "names");
      }
  return found;
}

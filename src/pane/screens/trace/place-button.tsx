import { Link, makeStyles, tokens } from "@fluentui/react-components";
import type { CellLink, Target } from "../../model/trace-cells";
import { useShared } from "../../parts/styles";
import { useGo } from "./go-context";

const useStyles = makeStyles({
  place: {
    minHeight: "24px",
    fontSize: "inherit",
    textAlign: "start",
    // Whole names: breaking anywhere would let columns shrink to single letters.
    overflowWrap: "break-word",
  },
  cell: {
    display: "grid",
    gridTemplateColumns: "minmax(0, 1fr) auto",
    columnGap: "8px",
    alignItems: "center",
  },
  value: {
    color: tokens.colorNeutralForeground1,
    textAlign: "end",
    fontVariantNumeric: "tabular-nums",
    overflowWrap: "anywhere",
  },
});

/** The name of a place; a click selects it in the workbook and traces it. */
export function PlaceButton({ target, label = "" }: { target: Target; label?: string }) {
  const styles = useStyles();
  const go = useGo();
  return (
    <Link
      as="button"
      className={styles.place}
      aria-label={label === "" ? `Trace ${target.name}` : `Trace ${target.name}, ${label}`}
      onClick={() => go(target)}
    >
      {target.name}
    </Link>
  );
}

/** Cells with what the sheet calls them and what stands in them. */
export function CellList({ cells }: { cells: readonly CellLink[] }) {
  const styles = useStyles();
  const shared = useShared();
  if (cells.length === 0) return null;
  return (
    <ul className={shared.plainList}>
      {cells.map(({ target, label, value }) => (
        <li key={target.name} className={styles.cell}>
          <span>
            <PlaceButton target={target} label={label} />{" "}
            <span className={shared.muted}>{label}</span>
          </span>
          <span className={styles.value}>{value}</span>
        </li>
      ))}
    </ul>
  );
}

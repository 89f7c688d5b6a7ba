import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { type ReactNode, useId } from "react";

const useStyles = makeStyles({
  item: {
    position: "relative",
    "& > svg": { marginTop: "2px" },
    display: "grid",
    gridTemplateColumns: "minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalS,
    padding: tokens.spacingVerticalS,
    borderRadius: tokens.borderRadiusMedium,
  },
  led: { gridTemplateColumns: "20px minmax(0, 1fr)" },
  // The dark theme's usual ground for this is too near to the colour of links.
  goes: { ":hover": { backgroundColor: tokens.colorNeutralBackground3 } },
  body: { display: "flex", flexDirection: "column", gap: tokens.spacingVerticalXXS, minWidth: 0 },
  head: {
    display: "flex",
    flexWrap: "wrap",
    justifyContent: "space-between",
    columnGap: tokens.spacingHorizontalS,
    alignItems: "center",
    minHeight: "24px",
  },
  // The button covers the whole item, so that a click anywhere on it goes to the cell.
  go: {
    border: "none",
    padding: 0,
    background: "none",
    color: "inherit",
    font: "inherit",
    textAlign: "start",
    cursor: "pointer",
    ":focus-visible": { outline: "none" },
    "::after": { content: '""', position: "absolute", inset: 0, borderRadius: "inherit" },
    ":focus-visible::after": {
      outline: `2px solid ${tokens.colorStrokeFocus2}`,
      outlineOffset: "-2px",
      borderRadius: tokens.borderRadiusMedium,
    },
  },
  title: { fontWeight: tokens.fontWeightSemibold },
  place: {
    color: tokens.colorBrandForegroundLink,
    whiteSpace: "nowrap",
    "@media (forced-colors: active)": { color: "LinkText" },
  },
});

/** For what stands above the covering button and is pressed for itself. */
export const useAbove = makeStyles({ above: { position: "relative", zIndex: 1 } });

interface GoItemProps {
  readonly title: string;
  /** "Fans!K3"; "" where no cell is meant. */
  readonly place: string;
  /** Shown before the words. */
  readonly icon?: ReactNode;
  /** Left out where the place cannot be gone to. */
  readonly onGo?: (() => void) | undefined;
  /** What belongs to the title: read out with it. */
  readonly children: ReactNode;
  /** Buttons and the like below. */
  readonly actions?: ReactNode;
}

/** An item of a list that leads to a cell of the workbook. */
export function GoItem({ title, place, icon, onGo, children, actions }: GoItemProps) {
  const styles = useStyles();
  const id = useId();
  const head = (
    <>
      <span className={styles.title}>{title}</span>
      {place === "" || place === title ? null : (
        <span className={onGo ? styles.place : undefined}>{place}</span>
      )}
    </>
  );
  return (
    <li className={mergeClasses(styles.item, icon ? styles.led : "", onGo ? styles.goes : "")}>
      {icon}
      <div className={styles.body}>
        {onGo ? (
          <button
            type="button"
            className={mergeClasses(styles.head, styles.go)}
            aria-describedby={id}
            onClick={onGo}
            data-go
          >
            {head}
          </button>
        ) : (
          <div className={styles.head}>{head}</div>
        )}
        <div id={id} className={styles.body}>
          {children}
        </div>
        {actions}
      </div>
    </li>
  );
}

import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { Wrench16Regular } from "@fluentui/react-icons";
import { useId } from "react";
import type { Finding } from "../../../job";
import { placeOf, titleOf } from "../../model/finding-groups";
import { SeverityIcon } from "../../parts/severity-icon";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  item: {
    position: "relative",
    "& > svg": { marginTop: "2px" },
    display: "grid",
    gridTemplateColumns: "20px minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalS,
    padding: tokens.spacingVerticalS,
    borderRadius: tokens.borderRadiusMedium,
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
  },
  body: { display: "flex", flexDirection: "column", gap: tokens.spacingVerticalXXS, minWidth: 0 },
  // The button covers the whole item, so that a click anywhere on it goes to the cell.
  go: {
    display: "flex",
    flexWrap: "wrap",
    justifyContent: "space-between",
    columnGap: tokens.spacingHorizontalS,
    alignItems: "center",
    minHeight: "24px",
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
  mend: { display: "flex", gap: tokens.spacingHorizontalXS, margin: 0 },
  icon: { flexShrink: 0, marginTop: "2px", color: tokens.colorNeutralForeground2 },
  apply: { position: "relative", zIndex: 1, alignSelf: "start" },
});

interface FindingItemProps {
  readonly finding: Finding;
  /** Named in the item where the heading above does not name it. */
  readonly about: boolean;
  readonly busy: boolean;
  readonly onGo: () => void;
  readonly onApply: () => void;
}

export function FindingItem({ finding, about, busy, onGo, onApply }: FindingItemProps) {
  const styles = useStyles();
  const shared = useShared();
  const id = useId();
  const place = placeOf(finding);
  return (
    <li className={styles.item}>
      <SeverityIcon severity={finding.severity} said />
      <div className={styles.body}>
        <button type="button" className={styles.go} aria-describedby={id} onClick={onGo} data-go>
          <span className={styles.title}>{about ? finding.about || place : titleOf(finding)}</span>
          {place === "" ? null : <span className={styles.place}>{place}</span>}
        </button>
        <div id={id} className={styles.body}>
          <p className={shared.text}>{finding.what}</p>
          <p className={shared.muted}>{finding.effect}</p>
          <p className={styles.mend}>
            <Wrench16Regular className={styles.icon} role="img" aria-label="Mend:" />
            <span>{finding.mend}</span>
          </p>
        </div>
        {finding.apply ? (
          <Button
            size="small"
            className={styles.apply}
            disabledFocusable={busy}
            aria-label={`${finding.apply.label}, ${place}`}
            onClick={onApply}
          >
            {finding.apply.label}
          </Button>
        ) : null}
      </div>
    </li>
  );
}

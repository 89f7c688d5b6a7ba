import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { Wrench16Regular } from "@fluentui/react-icons";
import { lazy, Suspense, useRef, useState } from "react";
import type { Finding } from "../../../job";
import { acceptedBy, canAccept } from "../../model/acceptance";
import { placeOf, titleOf } from "../../model/finding-groups";
import { GoItem, useAbove } from "../../parts/go-item";
import { SeverityIcon } from "../../parts/severity-icon";
import { useShared } from "../../parts/styles";

// Most findings are mended and not accepted.
const AcceptForm = lazy(() =>
  import("./accept-form").then((part) => ({ default: part.AcceptForm })),
);

const useStyles = makeStyles({
  mend: { display: "flex", gap: tokens.spacingHorizontalXS, margin: 0 },
  icon: { flexShrink: 0, marginTop: "2px", color: tokens.colorNeutralForeground2 },
});

interface FindingItemProps {
  readonly finding: Finding;
  /** Named in the item where the heading above does not name it. */
  readonly about: boolean;
  /** Whether the heading above tells what it does and how to mend it. */
  readonly told: boolean;
  readonly busy: boolean;
  readonly dateOffset: number;
  readonly onGo: () => void;
  readonly onApply: () => void;
}

/** What a finding does to the result and how to mend it. */
export function FindingWords({ effect, mend }: Pick<Finding, "effect" | "mend">) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <>
      <p className={shared.muted}>{effect}</p>
      <p className={styles.mend}>
        <Wrench16Regular className={styles.icon} role="img" aria-label="Mend:" />
        <span>{mend}</span>
      </p>
    </>
  );
}

/** An open finding with its mend, and the way to take it as it is. */
export function FindingItem(props: FindingItemProps) {
  const { finding, about, told, busy, dateOffset, onGo, onApply } = props;
  const shared = useShared();
  const { above } = useAbove();
  const [accepting, setAccepting] = useState(false);
  const buttons = useRef<HTMLDivElement>(null);
  const place = placeOf(finding);
  const { lapsed } = finding;
  const leave = () => {
    setAccepting(false);
    // The button comes back with the next drawing.
    setTimeout(() => buttons.current?.querySelector<HTMLElement>("[data-accept]")?.focus());
  };
  return (
    <GoItem
      title={about ? finding.about || place : titleOf(finding)}
      place={place}
      icon={<SeverityIcon severity={finding.severity} said />}
      onGo={onGo}
      actions={
        accepting ? (
          <Suspense fallback={null}>
            <AcceptForm finding={finding} onLeave={leave} />
          </Suspense>
        ) : (
          <div ref={buttons} className={shared.line}>
            {finding.apply ? (
              <Button
                size="small"
                className={above}
                disabledFocusable={busy}
                aria-label={`${finding.apply.label}, ${place}`}
                onClick={onApply}
              >
                {finding.apply.label}
              </Button>
            ) : null}
            {canAccept(finding) ? (
              <Button
                size="small"
                appearance="subtle"
                className={above}
                aria-label={`Accept, ${place}`}
                onClick={() => setAccepting(true)}
                data-accept
              >
                Accept
              </Button>
            ) : null}
          </div>
        )
      }
    >
      <p className={shared.text}>{finding.what}</p>
      {told ? null : <FindingWords {...finding} />}
      {lapsed ? (
        <p className={shared.text}>
          Accepted before by {acceptedBy(lapsed, dateOffset)}: {lapsed.reason}, but the row has
          changed since.
        </p>
      ) : null}
    </GoItem>
  );
}

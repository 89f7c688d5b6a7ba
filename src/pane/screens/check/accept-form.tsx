import {
  Button,
  Field,
  Input,
  makeStyles,
  mergeClasses,
  Textarea,
  tokens,
} from "@fluentui/react-components";
import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from "react";
import type { Finding } from "../../../job";
import { type DraftGaps, gapsOf } from "../../model/acceptance";
import { placeOf } from "../../model/finding-groups";
import { useAbove } from "../../parts/go-item";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  form: {
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalS,
    marginTop: tokens.spacingVerticalXS,
    padding: tokens.spacingHorizontalS,
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
  },
  initials: { maxWidth: "120px", minWidth: 0 },
});

const noGaps: DraftGaps = { reason: "", initials: "" };

/** Asks why a finding is taken as it is, and who says so. */
export function AcceptForm({ finding, onLeave }: { finding: Finding; onLeave: () => void }) {
  const styles = useStyles();
  const shared = useShared();
  const { above } = useAbove();
  const { session, state } = useSession();
  const [reason, setReason] = useState("");
  const [initials, setInitials] = useState(state.initials);
  const [gaps, setGaps] = useState(noGaps);
  const form = useRef<HTMLFormElement>(null);
  const enter = (field: "textarea" | "input") =>
    form.current?.querySelector<HTMLElement>(field)?.focus();
  // biome-ignore lint/correctness/useExhaustiveDependencies: only as the form opens
  useEffect(() => enter("textarea"), []);

  const accept = (event: FormEvent) => {
    event.preventDefault();
    if (state.busy !== "") return;
    const missing = gapsOf({ reason, initials });
    setGaps(missing);
    if (missing.reason !== "") enter("textarea");
    else if (missing.initials !== "") enter("input");
    else void session.accept(finding, reason.trim(), initials.trim());
  };
  const leaveByKey = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    onLeave();
  };
  return (
    <form
      ref={form}
      className={mergeClasses(styles.form, above)}
      aria-label={`Accept, ${placeOf(finding)}`}
      noValidate
      onSubmit={accept}
      onKeyDown={leaveByKey}
    >
      <Field label="Reason" required {...saying(gaps.reason)}>
        <Textarea rows={2} value={reason} onChange={(_, data) => setReason(data.value)} />
      </Field>
      <Field label="Initials" required {...saying(gaps.initials)}>
        <Input
          className={styles.initials}
          value={initials}
          onChange={(_, data) => setInitials(data.value)}
        />
      </Field>
      <p className={shared.muted}>
        Kept on the sheet Accepted. It holds until a cell of this row changes.
      </p>
      <div className={shared.line}>
        <Button
          type="submit"
          size="small"
          appearance="primary"
          disabledFocusable={state.busy !== ""}
        >
          Accept the finding
        </Button>
        <Button size="small" onClick={onLeave}>
          Leave it open
        </Button>
      </div>
    </form>
  );
}

function saying(gap: string) {
  return gap === "" ? {} : { validationMessage: gap };
}

import { Field, Input, makeStyles, tokens } from "@fluentui/react-components";
import { useId, useMemo, useState } from "react";
import type { Job } from "../../../job";
import { whileOn } from "../../model/account-view";
import { useShared } from "../../parts/styles";
import { Working } from "./working";

const useStyles = makeStyles({
  inputs: { display: "grid", gridTemplateColumns: "1fr 1fr", gap: tokens.spacingHorizontalS },
  input: { minWidth: 0, width: "100%" },
});

/** What a fan must move that runs only a part of the time in place of a continuous one. */
export function WhileOn({ job, dwelling }: { job: Job; dwelling: number }) {
  const styles = useStyles();
  const shared = useShared();
  const id = useId();
  const [share, setShare] = useState("50");
  const [hours, setHours] = useState("");
  const outcome = useMemo(
    () => whileOn(job, dwelling, share, hours),
    [job, dwelling, share, hours],
  );
  return (
    <section className={shared.panel} aria-labelledby={id}>
      <h3 id={id} className={shared.subheading}>
        Running part of the time
      </h3>
      <div className={styles.inputs}>
        <Field label="Share of time (%)">
          <Input
            className={styles.input}
            inputMode="decimal"
            value={share}
            onChange={(_, data) => setShare(data.value)}
          />
        </Field>
        <Field label="Cycle (hours)">
          <Input
            className={styles.input}
            inputMode="decimal"
            placeholder="usual"
            value={hours}
            onChange={(_, data) => setHours(data.value)}
          />
        </Field>
      </div>
      <p role="status" className={shared.text}>
        {"problem" in outcome ? outcome.problem : `While it runs it must move ${outcome.rate}.`}
      </p>
      {"problem" in outcome ? null : <Working lines={outcome.working} clauses={[outcome.clause]} />}
    </section>
  );
}

import { useMemo, useState } from "react";
import type { Job } from "../../../job";
import { whileOn } from "../../model/account-view";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { TypedNumber } from "../../parts/typed-number";
import { Working } from "./working";

/** What a fan must move that runs only a part of the time in place of a continuous one. */
export function WhileOn({ job, dwelling }: { job: Job; dwelling: number }) {
  const shared = useShared();
  const [share, setShare] = useState("50");
  const [hours, setHours] = useState("");
  const outcome = useMemo(
    () => whileOn(job, dwelling, share, hours),
    [job, dwelling, share, hours],
  );
  return (
    <Panel title="Running part of the time">
      <div className={shared.pair}>
        <TypedNumber label="Share of time (%)" value={share} onType={setShare} />
        <TypedNumber label="Cycle (hours)" placeholder="usual" value={hours} onType={setHours} />
      </div>
      <p role="status" className={shared.text}>
        {"problem" in outcome ? outcome.problem : `While it runs it must move ${outcome.rate}.`}
      </p>
      {"problem" in outcome ? null : <Working lines={outcome.working} clauses={[outcome.clause]} />}
    </Panel>
  );
}

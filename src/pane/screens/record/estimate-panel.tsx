import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { editions } from "../../../editions";
import type { Job } from "../../../job";
import { count } from "../../model/announce";
import { EditionChoice } from "../../parts/edition-choice";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { makeEstimate } from "../../session/record-work";
import { ReadyCopy } from "./copies-panel";

/** An estimate of the lots that the open workbook lists; nothing where it lists none. */
export function EstimatePanel({ job }: { job: Job }) {
  const shared = useShared();
  const { session, state } = useSession();
  const [chosen, setEdition] = useState("");
  const lots = job.lots.flatMap((list) => list.lots).filter(({ name }) => name !== "").length;
  if (lots === 0) return null;
  const edition = editions.find(({ id }) => id === chosen);
  const { copy } = state.record;
  return (
    <Panel title="An estimate of these lots">
      <p className={shared.text}>
        {count(lots, "lot")}: rates, fans and ducts to buy, hours and prices, in a workbook of its
        own. A sheet of plans, of fans on offer or of openings in this workbook is used too.
      </p>
      <EditionChoice
        label="Edition that applies"
        value={chosen}
        before={[{ value: "", words: "not known yet" }]}
        onChoose={setEdition}
      />
      <div className={shared.line}>
        <Button
          appearance="primary"
          disabledFocusable={state.busy !== ""}
          onClick={() => void makeEstimate(session, edition)}
        >
          Make the estimate
        </Button>
      </div>
      {copy?.kind === "estimate" ? <ReadyCopy copy={copy} told="Taken for granted:" /> : null}
    </Panel>
  );
}

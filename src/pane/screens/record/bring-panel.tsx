import { Button, Checkbox, makeStyles } from "@fluentui/react-components";
import { useState } from "react";
import { cellName } from "../../../cells";
import { count } from "../../model/announce";
import { FilePicker } from "../../parts/file-picker";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { placeReadings, readFieldCopy } from "../../session/field-work";

/** Lines shown of what differs or has no place; the rest are counted. */
const mostLines = 20;

const useStyles = makeStyles({ list: { margin: 0, paddingLeft: "20px" } });

/** Brings what was typed in a field copy into the job, after showing where it would go. */
export function BringPanel() {
  const styles = useStyles();
  const shared = useShared();
  const { session, state } = useSession();
  const [takesDiffering, setTakesDiffering] = useState(false);
  const busy = state.busy !== "";
  const { brought } = state.record;
  const { fresh = [], differing = [], left = [], same = 0 } = brought?.found ?? {};
  const values = takesDiffering ? [...fresh, ...differing] : fresh;
  return (
    <Panel title="Bring readings in">
      <p className={shared.text}>
        From a field copy, by dwelling and fan. You see first what goes where.
      </p>
      <div className={shared.line}>
        <FilePicker
          label="Field copy"
          accept=".xlsx"
          busy={busy}
          onFile={(file) => void readFieldCopy(session, file)}
        >
          Choose the field copy
        </FilePicker>
      </div>
      {brought ? (
        <>
          <p className={shared.text}>
            {brought.fileName}: {count(fresh.length, "value")} for blank cells, {same} in the job
            already.
          </p>
          {differing.length > 0 ? (
            <>
              <p className={shared.text}>The job holds something else here:</p>
              <ul className={styles.list}>
                {differing.slice(0, mostLines).map((each) => (
                  <li key={`${each.sheet}!${cellName(each.row, each.col)}`}>
                    {each.fan}: {each.heading} {each.told.value} in the copy, {each.told.before} in{" "}
                    {each.sheet}!{cellName(each.row, each.col)}
                  </li>
                ))}
              </ul>
              <More count={differing.length - mostLines} />
              <Checkbox
                label="Take what the copy says"
                checked={takesDiffering}
                onChange={(_, data) => setTakesDiffering(data.checked === true)}
              />
            </>
          ) : null}
          {left.length > 0 ? (
            <>
              <p className={shared.text}>Not placed:</p>
              <ul className={styles.list}>
                {left.slice(0, mostLines).map(({ fan, what, why }) => (
                  <li key={`${fan} ${what}`}>
                    {fan}: {what}, since {why}
                  </li>
                ))}
              </ul>
              <More count={left.length - mostLines} />
            </>
          ) : null}
          <div>
            <Button
              appearance="primary"
              disabledFocusable={busy || values.length === 0}
              onClick={() => void placeReadings(session, values)}
            >
              Place {count(values.length, "value")}
            </Button>
          </div>
        </>
      ) : null}
    </Panel>
  );
}

function More({ count: more }: { count: number }) {
  return more > 0 ? <p>and {more} more.</p> : null;
}

import { Field, makeStyles, Select } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import type { Job } from "../../../job";
import { otherEditions, underRows } from "../../model/under-view";
import { useShared } from "../../parts/styles";

// Some editions have long names; the pane is narrow.
const useStyles = makeStyles({ select: { minWidth: 0, width: "100%" } });

/** What changes for this job under another edition: rates up and down, verdicts that turn. */
export function EditionSection({ job }: { job: Job }) {
  const shared = useShared();
  const styles = useStyles();
  const editions = useMemo(() => otherEditions(job), [job]);
  const [other, setOther] = useState(editions[0]?.id ?? "");
  const rows = useMemo(() => underRows(job, other), [job, other]);
  return (
    <>
      <Field label="Another edition">
        <Select
          className={styles.select}
          value={other}
          onChange={(_, data) => setOther(data.value)}
        >
          {editions.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </Select>
      </Field>
      <table className={shared.table}>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Rate</th>
            <th scope="col">Verdicts</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ what, rate, turns, note }) => (
            <tr key={`${what} ${rate}`}>
              <th scope="row">{what}</th>
              <td>
                {rate}
                <p className={shared.muted}>{note}</p>
              </td>
              <td>{turns}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={shared.muted}>
        By simple acceptance; what an edition asks and this sheet does not tell counts as it asks
        for most.
      </p>
    </>
  );
}

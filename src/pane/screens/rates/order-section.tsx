import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { findEdition } from "../../../editions";
import { estimateNotes, estimateOf, estimateSections, type Job, sectionText } from "../../../job";
import { otherEditions } from "../../model/under-view";
import { EditionChoice } from "../../parts/edition-choice";
import { useShared } from "../../parts/styles";

/** Where the columns have no room beside one another, each cell stands under its title. */
const useStyles = makeStyles({
  section: { containerType: "inline-size" },
  table: {
    "& caption": { textAlign: "start" },
    "@container (max-width: 480px)": {
      display: "block",
      "& caption, & tbody": { display: "block" },
      "& thead": { position: "absolute", clipPath: "inset(50%)" },
      "& tr": {
        display: "grid",
        gridTemplateColumns: "repeat(3, minmax(0, 1fr))",
        borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
      },
      "& tbody td": { borderBottomStyle: "none", fontVariantNumeric: "tabular-nums" },
      "& td::before": {
        content: "attr(data-title)",
        display: "block",
        color: tokens.colorNeutralForeground2,
      },
    },
  },
});

/** What the planned fans of a job need and cost, with another edition beside it where one is chosen. */
export function OrderSection({ job }: { job: Job }) {
  const styles = useStyles();
  const shared = useShared();
  const [other, setOther] = useState("");
  const estimate = useMemo(() => estimateOf(job), [job]);
  const beside = useMemo(
    () => (other === "" ? undefined : estimateOf(job, findEdition(other))),
    [job, other],
  );
  if (!estimate) return <p className={shared.text}>No fan is planned in the schedule yet.</p>;
  const sections = estimateSections(estimate, job.settings, beside);
  return (
    <>
      <EditionChoice
        label="Beside it"
        value={other}
        before={[{ value: "", words: "no other edition" }]}
        from={otherEditions(job)}
        onChoose={setOther}
      />
      {sections
        .filter(({ key, rows }) => key !== "dwellings" && rows.length > 0)
        .map(({ key, title, columns, rows }) => (
          <section key={key} className={styles.section} aria-label={title}>
            <table className={mergeClasses(shared.table, styles.table)} aria-label={title}>
              <caption className={shared.subheading}>{title}</caption>
              <thead>
                <tr>
                  {columns.map((column) => (
                    <th key={column.title} scope="col">
                      {column.title}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {rows.map((row) => (
                  <tr key={row.slice(0, 3).join()}>
                    {columns.map((column, at) => (
                      <td key={column.title} data-title={column.title}>
                        {sectionText(row[at], column.digits)}
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        ))}
      <ul className={shared.stack}>
        {estimateNotes(estimate, job.settings, beside).map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </>
  );
}

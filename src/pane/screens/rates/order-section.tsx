import { useMemo, useState } from "react";
import { findEdition } from "../../../editions";
import { estimateNotes, estimateOf, estimateSections, type Job, sectionText } from "../../../job";
import { otherEditions } from "../../model/under-view";
import { EditionChoice } from "../../parts/edition-choice";
import { useShared } from "../../parts/styles";

/** What the planned fans of a job need and cost, with another edition beside it where one is chosen. */
export function OrderSection({ job }: { job: Job }) {
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
          // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keyboard too
          <section key={key} className={shared.scroll} aria-label={title} tabIndex={0}>
            <table className={shared.table} aria-label={title}>
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
                      <td key={column.title}>{sectionText(row[at], column.digits)}</td>
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

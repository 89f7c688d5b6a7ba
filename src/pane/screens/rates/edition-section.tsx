import { useMemo, useState } from "react";
import type { Job } from "../../../job";
import { otherEditions, underRows } from "../../model/under-view";
import { EditionChoice } from "../../parts/edition-choice";
import { useShared } from "../../parts/styles";
import { Table } from "../../parts/table";

/** What changes for this job under another edition: rates up and down, verdicts that turn. */
export function EditionSection({ job }: { job: Job }) {
  const shared = useShared();
  const editions = useMemo(() => otherEditions(job), [job]);
  const [other, setOther] = useState(editions[0]?.id ?? "");
  const rows = useMemo(() => underRows(job, other), [job, other]);
  if (rows.length === 0)
    return (
      <p className={shared.text}>No fan here has a room kind and a duty, by which rates go.</p>
    );
  return (
    <>
      <EditionChoice label="Another edition" value={other} from={editions} onChoose={setOther} />
      <Table
        caption="What changes"
        rows={rows}
        columns={[
          { title: "What", cell: ({ what }) => what },
          {
            title: "Rate",
            cell: ({ rate, note }) => (
              <>
                {rate}
                <p className={shared.muted}>{note}</p>
              </>
            ),
          },
          { title: "Verdicts", cell: ({ turns }) => turns },
        ]}
      />
      <p className={shared.muted}>
        By simple acceptance; what an edition asks and this sheet does not tell counts as it asks
        for most.
      </p>
    </>
  );
}

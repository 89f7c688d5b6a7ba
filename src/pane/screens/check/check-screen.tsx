import { Button, ProgressBar } from "@fluentui/react-components";
import { ArrowSync20Regular } from "@fluentui/react-icons";
import { useDeferredValue, useMemo } from "react";
import { sizeOf } from "../../model/announce";
import {
  everything,
  type FindingFilter,
  filterFindings,
  type GroupBy,
} from "../../model/finding-groups";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { Counts } from "./counts";
import { Filters } from "./filters";
import { FindingList } from "./finding-list";
import { AppliedMends, ReadingNotes } from "./folds";
import { SheetActions } from "./sheet-actions";

/** What the user has set on this screen; it outlives a visit to another one. */
export interface CheckView {
  readonly filter: FindingFilter;
  readonly by: GroupBy;
  readonly most: number;
}

const page = 60;
export const firstView: CheckView = { filter: everything, by: "row", most: page };

export interface CheckScreenProps {
  readonly view: CheckView;
  readonly onView: (view: CheckView) => void;
}

export function CheckScreen({ view, onView }: CheckScreenProps) {
  const shared = useShared();
  const { session, state } = useSession();
  const { check, busy, progress } = state;
  const filter = useDeferredValue(view.filter);
  const findings = useMemo(() => filterFindings(check?.findings ?? [], filter), [check, filter]);
  const setFilter = (filter: FindingFilter) => onView({ ...view, filter, most: page });
  return (
    <div className={shared.screen}>
      <div className={shared.spread}>
        <Button
          appearance="primary"
          icon={<ArrowSync20Regular />}
          disabledFocusable={busy !== ""}
          onClick={() => void session.check()}
        >
          {check ? "Check again" : "Check the workbook"}
        </Button>
        {check ? (
          <span className={shared.muted}>
            {check.job.settings.edition?.id ?? "no edition named"}
          </span>
        ) : null}
      </div>
      {progress && progress.total > 0 ? (
        <div className={shared.tight}>
          <ProgressBar aria-label="Reading" value={progress.done} max={progress.total} />
          <span className={shared.muted}>
            {progress.done} of {progress.total} rows read
          </span>
        </div>
      ) : null}
      {check ? (
        <>
          <p className={shared.muted}>{sizeOf(check.summary)}</p>
          <Counts
            bySeverity={check.summary.bySeverity}
            chosen={view.filter.severities}
            onChoose={(severities) => setFilter({ ...view.filter, severities })}
          />
          <Filters
            search={view.filter.search}
            by={view.by}
            onSearch={(search) => setFilter({ ...view.filter, search })}
            onBy={(by) => onView({ ...view, by, most: page })}
          />
          <SheetActions />
          <AppliedMends />
          <ReadingNotes />
          {findings.length === 0 ? (
            <p className={shared.text}>
              {check.findings.length === 0
                ? "Every check came out clean."
                : "No finding fits this search."}
            </p>
          ) : null}
          <FindingList
            findings={findings}
            by={view.by}
            most={view.most}
            onMore={() => onView({ ...view, most: view.most + page })}
          />
        </>
      ) : (
        <p className={shared.text}>
          Reads the sheets of the open workbook, finds its fans, boxes and dwellings by their
          headings, and looks at every row. Nothing is changed. Afterwards each edit is checked as
          you type.
        </p>
      )}
    </div>
  );
}

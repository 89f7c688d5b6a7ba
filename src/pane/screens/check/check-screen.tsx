import { Button, ProgressBar } from "@fluentui/react-components";
import { ArrowSync20Regular } from "@fluentui/react-icons";
import { useDeferredValue, useMemo } from "react";
import type { JobCheck } from "../../../job";
import { openAndAccepted, sizeOf } from "../../model/announce";
import {
  everything,
  type FindingFilter,
  filterFindings,
  type GroupBy,
  splitAccepted,
} from "../../model/finding-groups";
import { sentenceOf } from "../../model/in-words";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { AcceptedFold } from "./accepted-fold";
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
  const { open, accepted } = useMemo(
    () => splitAccepted(filterFindings(check?.findings ?? [], filter)),
    [check, filter],
  );
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
      {busy === "Reading the workbook" && progress && progress.total > 0 ? (
        <div className={shared.tight}>
          <ProgressBar aria-label="Reading" value={progress.done} max={progress.total} />
          <span className={shared.muted}>
            {progress.done} of {progress.total} rows read
          </span>
        </div>
      ) : null}
      {check ? (
        <>
          <div className={shared.tight}>
            <p className={shared.muted}>{sizeOf(check.summary)}</p>
            <p className={shared.text}>{openAndAccepted(check.summary)}</p>
          </div>
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
          <AcceptedFold findings={accepted} all={check.summary.accepted} />
          <AppliedMends />
          <ReadingNotes />
          {open.length === 0 ? <p className={shared.text}>{nothingOpen(check)}</p> : null}
          <FindingList
            findings={open}
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

function nothingOpen({ job, findings, summary: { accepted, fans, measured } }: JobCheck): string {
  if (job.noFans !== "" && findings.length === 0) return sentenceOf(job.noFans);
  if (findings.length === 0 && fans === 0)
    return "There is nothing to check yet: no fan has been typed.";
  if (findings.length === 0)
    return measured === 0
      ? "Nothing is wrong with what has been typed; no fan has a reading yet."
      : "Every check came out clean.";
  return findings.length === accepted
    ? "Every finding has been accepted."
    : "No open finding fits this search.";
}

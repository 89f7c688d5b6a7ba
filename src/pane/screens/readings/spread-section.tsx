import { makeStyles, tokens } from "@fluentui/react-components";
import { useMemo } from "react";
import { flowUnit, type Job } from "../../../job";
import { percentOf } from "../../model/in-words";
import {
  type Acceptance,
  freeFlowView,
  type SpreadView,
  spreadView,
} from "../../model/spread-view";
import { Bar } from "../../parts/bar";
import { Facts } from "../../parts/facts";
import { Fold } from "../../parts/fold";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { Table } from "../../parts/table";
import { verdictLook } from "./verdict-look";

const useStyles = makeStyles({
  budget: {
    "& td:nth-child(3)": { width: "88px" },
    "& td:nth-child(2)": { whiteSpace: "nowrap" },
  },
  input: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
});

/** How far a fan's flow may be off, what that comes from, and what it makes of the verdict. */
export function SpreadSection({ job, fan }: { job: Job; fan: number }) {
  const shared = useShared();
  const view = useMemo(() => spreadView(job, fan), [job, fan]);
  const label = job.fans?.label(fan) ?? "";
  return (
    <Panel title={label === "" ? "Spread" : `Spread of ${label}`}>
      {"problem" in view ? (
        <p className={shared.text}>{view.problem}</p>
      ) : (
        <>
          <Facts
            facts={[
              { name: "Measured", value: view.measured },
              { name: "u", value: view.u },
              { name: `± at ${view.coverage}`, value: view.expanded },
              { name: "k", value: view.k },
            ]}
          />
          <BudgetTable view={view} unit={flowUnit(job.settings.system)} />
          {view.chance === "" ? null : <p className={shared.text}>{view.chance}</p>}
          {view.judged === "" ? null : <p className={shared.muted}>{view.judged}</p>}
          <AcceptanceTable acceptances={view.acceptances} chance={job.settings.chance} />
          <TwoOpenings job={job} fan={fan} />
          <p className={shared.muted}>
            After JCGM 100:2008 and JCGM 106:2012 (from memory, verify against your copy).
          </p>
        </>
      )}
    </Panel>
  );
}

function BudgetTable({ view, unit }: { view: SpreadView; unit: string }) {
  const styles = useStyles();
  return (
    <Table
      caption="What the spread comes from"
      className={styles.budget}
      rows={view.lines}
      columns={[
        {
          title: "From",
          cell: ({ label, input }) => (
            <>
              {label}
              <div className={styles.input}>{input}</div>
            </>
          ),
        },
        { title: `u (${unit})`, isNumber: true, cell: ({ contribution }) => contribution },
        {
          title: "Share",
          cell: ({ share }) => (
            <>
              {percentOf(share)}
              <Bar to={share} />
            </>
          ),
        },
      ]}
    />
  );
}

interface AcceptanceTableProps {
  readonly acceptances: readonly Acceptance[];
  readonly chance: number;
}

function AcceptanceTable({ acceptances, chance }: AcceptanceTableProps) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <>
      <Table
        caption="The verdict by each way of accepting"
        rows={acceptances}
        rowClass={({ used }) => (used ? shared.strong : undefined)}
        columns={[
          {
            title: "Acceptance",
            cell: ({ way, used }) => (
              <>
                {way}
                {used ? <div className={styles.input}>used by this job</div> : null}
              </>
            ),
          },
          {
            title: "Meets from",
            cell: ({ meetsFrom, shortBelow }) => (
              <>
                {meetsFrom}
                {shortBelow === meetsFrom ? null : (
                  <div className={styles.input}>short below {shortBelow}</div>
                )}
              </>
            ),
          },
          {
            title: "Verdict",
            cell: ({ verdict }) => (
              <>
                <span aria-hidden="true">{verdictLook[verdict].sign}&nbsp;</span>
                {verdict}
              </>
            ),
          },
        ]}
      />
      <p className={shared.muted}>
        Simple: at or above the rate meets it. Guarded: a chance of {percentOf(chance)} of truly
        meeting it is asked for, and of missing it before a fan is called short.
      </p>
    </>
  );
}

function TwoOpenings({ job, fan }: { job: Job; fan: number }) {
  const shared = useShared();
  const view = useMemo(() => freeFlowView(job, fan), [job, fan]);
  if (job.fans?.isByInstrument(fan)) return null;
  return (
    <Fold title="Without the box">
      {"problem" in view ? (
        <p className={shared.text}>{view.problem}</p>
      ) : (
        <>
          <Facts
            facts={[
              { name: "Openings", value: view.openings },
              { name: "Measured", value: view.measured },
              { name: "Without the box", value: view.free },
              { name: "Its spread", value: view.around },
            ]}
          />
          <p className={shared.text}>{view.gain}</p>
          <p className={shared.muted}>
            The straight line of flow against box pressure through both readings, carried on to 0
            Pa: our own method, which no standard names. The reading stays the measured value.
          </p>
        </>
      )}
    </Fold>
  );
}

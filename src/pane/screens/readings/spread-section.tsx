import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useId, useMemo } from "react";
import { flowUnit, type Job } from "../../../job";
import { percentOf } from "../../model/in-words";
import {
  type Acceptance,
  freeFlowView,
  type SpreadLine,
  type SpreadView,
  spreadView,
} from "../../model/spread-view";
import { Bar } from "../../parts/bar";
import { Facts } from "../../parts/facts";
import { Fold } from "../../parts/fold";
import { useShared } from "../../parts/styles";
import { verdictLook } from "./verdict-look";

const useStyles = makeStyles({
  budget: {
    "& td.share": { width: "88px" },
    "& td:nth-child(2)": { whiteSpace: "nowrap" },
    "& tfoot th, & tfoot td": { borderBottom: "none" },
  },
  input: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
  used: { fontWeight: tokens.fontWeightSemibold },
});

/** How far a fan's flow may be off, what that comes from, and what it makes of the verdict. */
export function SpreadSection({ job, fan }: { job: Job; fan: number }) {
  const shared = useShared();
  const id = useId();
  const view = useMemo(() => spreadView(job, fan), [job, fan]);
  const label = job.fans?.label(fan) ?? "";
  return (
    <section className={shared.panel} aria-labelledby={id}>
      <h3 id={id} className={shared.subheading}>
        Spread{label === "" ? "" : ` of ${label}`}
      </h3>
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
    </section>
  );
}

function BudgetTable({ view, unit }: { view: SpreadView; unit: string }) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <table className={mergeClasses(shared.table, styles.budget)}>
      <caption className={shared.unseen}>What the spread comes from</caption>
      <thead>
        <tr>
          <th scope="col">From</th>
          <th scope="col" className="number">
            u ({unit})
          </th>
          <th scope="col">Share</th>
        </tr>
      </thead>
      <tbody>
        {view.lines.map((line, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the lines stand in a fixed order
          <BudgetRow key={i} line={line} />
        ))}
      </tbody>
    </table>
  );
}

function BudgetRow({ line: { label, input, contribution, share } }: { line: SpreadLine }) {
  const styles = useStyles();
  return (
    <tr>
      <th scope="row">
        {label}
        <div className={styles.input}>{input}</div>
      </th>
      <td className="number">{contribution}</td>
      <td className="share">
        {percentOf(share)}
        <Bar to={share} />
      </td>
    </tr>
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
      <table className={shared.table}>
        <caption className={shared.unseen}>The verdict by each way of accepting</caption>
        <thead>
          <tr>
            <th scope="col">Acceptance</th>
            <th scope="col">Meets from</th>
            <th scope="col">Verdict</th>
          </tr>
        </thead>
        <tbody>
          {acceptances.map(({ way, meetsFrom, shortBelow, verdict, used }) => (
            <tr key={way} className={used ? styles.used : undefined}>
              <th scope="row">
                {way}
                {used ? <div className={styles.input}>used by this job</div> : null}
              </th>
              <td>
                {meetsFrom}
                {shortBelow === meetsFrom ? null : (
                  <div className={styles.input}>short below {shortBelow}</div>
                )}
              </td>
              <td>
                <span aria-hidden="true">{verdictLook[verdict].sign}&nbsp;</span>
                {verdict}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
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

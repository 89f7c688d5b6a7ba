import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { type FanAirView, standardViews } from "../../model/air-view";
import { clauseText } from "../../model/marks";
import { Fold } from "../../parts/fold";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { Working } from "./working";

const useStyles = makeStyles({
  flows: {
    "& th, & td": { width: "33%", verticalAlign: "top" },
    "& td": { fontSize: tokens.fontSizeBase300, fontVariantNumeric: "tabular-nums" },
  },
});

/** The air at a fan, and what the fan moves by each way of counting it. */
export function AirSection({ view }: { view: FanAirView }) {
  const styles = useStyles();
  const shared = useShared();
  const judged = view.flows.find((flow) => flow.judged);
  return (
    <Panel title="Air">
      {view.problem === "" ? (
        <p className={shared.text}>Density {view.density}</p>
      ) : (
        <p className={shared.text}>{view.problem}</p>
      )}
      <table className={mergeClasses(shared.table, styles.flows)}>
        <caption className={shared.unseen}>The flow, counted in three ways</caption>
        <thead>
          <tr>
            {view.flows.map(({ title }) => (
              <th key={title} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            {view.flows.map(({ title, flow, judged: isJudged }) => (
              <td key={title} className={isJudged ? shared.strong : undefined}>
                <span className={shared.whole}>
                  {flow} {flow === "–" ? "" : view.unit}
                </span>
                {isJudged ? <div className={shared.muted}>judged</div> : null}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
      <p className={shared.muted}>
        The job judges by the {judged?.title.toLowerCase()} flow, as its Job sheet says under “Flow
        judged”.
      </p>
      {view.note === "" ? null : <p className={shared.muted}>{view.note}</p>}
      {view.stoodIn.length > 0 ? (
        <p className={shared.muted}>Taken for granted: {view.stoodIn.join("; ")}.</p>
      ) : null}
      {view.working.length > 0 ? (
        <Fold title="How these came about">
          <Working lines={view.working} clauses={view.sources} />
        </Fold>
      ) : null}
      <Fold title="What standards say of correcting">
        <p className={shared.muted}>They do not agree; the job's own documents decide.</p>
        <dl className={shared.stack}>
          {standardViews.map(({ who, asks, words, clause }) => (
            <div key={who}>
              <dt className={shared.strong}>
                {who}: {asks.toLowerCase()}
              </dt>
              <dd className={shared.text}>{words}</dd>
              <dd className={shared.muted}>{clauseText(clause)}</dd>
            </div>
          ))}
        </dl>
      </Fold>
    </Panel>
  );
}

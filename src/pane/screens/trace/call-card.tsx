import { MessageBar, MessageBarBody, mergeClasses } from "@fluentui/react-components";
import { useId } from "react";
import type { CallView } from "../../model/trace-calls";
import { useShared } from "../../parts/styles";
import { ArgumentTable } from "./argument-table";
import { BudgetTable } from "./budget-table";
import { CellList } from "./place-button";
import { SumBlock } from "./sum-block";

/** One call of a function of ours: the sum, what went in, and whose rule it is. */
export function CallCard({ call }: { call: CallView }) {
  const shared = useShared();
  const id = useId();
  const { name, title, inside, unused } = call;
  return (
    <section className={shared.panel} aria-labelledby={id}>
      <div className={shared.tight}>
        <h3 id={id} className={shared.subheading}>
          {title}
        </h3>
        <p className={shared.muted}>{inside === "" ? name : `${name}, ${inside}`}</p>
      </div>
      {unused === "" ? (
        <>
          {call.sums.map((sum, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a formula may be used twice
            <SumBlock key={i} sum={sum} />
          ))}
          {call.budget ? <BudgetTable budget={call.budget} /> : null}
          {call.words.map((line) => (
            <p key={line} className={shared.text}>
              {line}
            </p>
          ))}
          {call.problem === "" ? (
            call.result === "" ? null : (
              <p className={shared.strong}>Result: {call.result}</p>
            )
          ) : (
            <MessageBar intent="error" layout="multiline" politeness="polite">
              <MessageBarBody>Not worked out: {call.problem}</MessageBarBody>
            </MessageBar>
          )}
          <ArgumentTable name={name} of={call.arguments} />
          {call.picked.length > 0 ? (
            <div className={shared.tight}>
              <h4 className={shared.subheading}>Taken from the list</h4>
              <CellList cells={call.picked} />
            </div>
          ) : null}
          <Clauses call={call} />
        </>
      ) : (
        <p className={shared.text}>Not used here: {unused}.</p>
      )}
    </section>
  );
}

function Clauses({ call: { clauses } }: { call: CallView }) {
  const shared = useShared();
  if (clauses.length === 0) return null;
  return (
    <div className={shared.tight}>
      <h4 className={shared.subheading}>Clause</h4>
      <ul className={mergeClasses(shared.plainList, shared.tight)}>
        {clauses.map(({ work, clause, mark }) => (
          <li key={`${work} ${clause}`} className={shared.tight}>
            <span>{[work, clause].filter((part) => part !== "").join(", ")}</span>
            <span className={shared.muted}>{mark}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}

import { MessageBar, MessageBarBody, makeStyles, tokens } from "@fluentui/react-components";
import type { ReactNode } from "react";
import type { AccountStep, AccountView } from "../../model/account-view";
import { Facts } from "../../parts/facts";
import { Fold } from "../../parts/fold";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { Working } from "./working";

const useStyles = makeStyles({
  steps: {
    listStyleType: "none",
    margin: 0,
    padding: 0,
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalS,
    "& > li": {
      display: "flex",
      flexDirection: "column",
      gap: tokens.spacingVerticalXS,
      borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
      paddingTop: tokens.spacingVerticalS,
    },
  },
});

/** How the flow that a dwelling's fans must move comes about, step by step. */
export function AccountSection({ view }: { view: AccountView }) {
  const styles = useStyles();
  const shared = useShared();
  const { deficits, result } = view;
  return (
    <Panel title={view.title}>
      <Facts facts={view.given} />
      <ol className={styles.steps}>
        <Step step={view.required} />
        {deficits ? (
          <Line title="Room deficits" value={deficits.sum}>
            <Fold title="Room by room">
              {deficits.rooms.length === 0 ? (
                <p className={shared.text}>No fan of this dwelling runs on demand.</p>
              ) : (
                deficits.rooms.map(({ fan, outcome }) => (
                  <Step key={fan} step={{ title: fan, note: "", outcome }} as="div" />
                ))
              )}
            </Fold>
          </Line>
        ) : null}
        {view.further.map((step) => (
          <Step key={step.title} step={step} />
        ))}
      </ol>
      <p className={shared.text}>{view.continuous}</p>
      <MessageBar
        intent={result.isShort === undefined ? "info" : result.isShort ? "error" : "success"}
        layout="multiline"
      >
        <MessageBarBody>{result.words}</MessageBarBody>
      </MessageBar>
    </Panel>
  );
}

function Step({ step, as }: { step: AccountStep; as?: "li" | "div" }) {
  const shared = useShared();
  const { title, note, outcome } = step;
  return (
    <Line title={title} value={"problem" in outcome ? "–" : outcome.rate} as={as}>
      {note === "" ? null : <p className={shared.muted}>{note}</p>}
      {"problem" in outcome ? (
        <p className={shared.text}>{outcome.problem}</p>
      ) : (
        <Working lines={outcome.working} clauses={[outcome.clause]} />
      )}
    </Line>
  );
}

interface LineProps {
  readonly title: string;
  readonly value: string;
  readonly as?: "li" | "div" | undefined;
  readonly children: ReactNode;
}

function Line({ title, value, as: Element = "li", children }: LineProps) {
  const shared = useShared();
  return (
    <Element className={Element === "div" ? shared.tight : undefined}>
      <div className={shared.spread}>
        <h4 className={shared.title}>{title}</h4>
        <span className={shared.strong}>{value}</span>
      </div>
      {children}
    </Element>
  );
}

import {
  Button,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  makeStyles,
  mergeClasses,
  tokens,
} from "@fluentui/react-components";
import {
  CheckmarkCircle20Filled,
  CircleHint20Regular,
  ErrorCircle20Filled,
} from "@fluentui/react-icons";
import type { RefObject } from "react";
import { changedWords, type TraceView } from "../../model/trace-view";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { PlaceButton } from "./place-button";

const useStyles = makeStyles({
  agreement: { display: "flex", gap: tokens.spacingHorizontalXS, margin: 0 },
  head: { ":focus": { outline: "none" } },
});

interface CellCardProps {
  readonly view: TraceView;
  readonly head: RefObject<HTMLHeadingElement | null>;
}

/** The traced cell itself: where it is, what it holds and whether that still holds. */
export function CellCard({ view, head }: CellCardProps) {
  const styles = useStyles();
  const shared = useShared();
  const { target, heading, about, value, stored, kind, formula, given, spilledFrom } = view;
  return (
    <section className={shared.panel} aria-labelledby="fanrow-traced">
      <div className={shared.tight}>
        <h3
          id="fanrow-traced"
          ref={head}
          tabIndex={-1}
          className={mergeClasses(shared.subheading, styles.head)}
        >
          {heading === "" ? target.name : `${target.name}, ${heading}`}
        </h3>
        {about === "" || heading.includes(about) || value.startsWith(about) ? null : (
          <p className={shared.muted}>{about}</p>
        )}
      </div>
      {view.isChanged ? <ChangedBar /> : null}
      <p className={shared.big}>{value}</p>
      {stored === "" ? null : <p className={shared.muted}>{stored}</p>}
      {formula === "" ? (
        kind === "typed" ? (
          <p className={shared.text}>
            Typed, no formula.{given === "" ? "" : ` Its row gives ${given}.`}
          </p>
        ) : null
      ) : (
        <code className={shared.code}>{formula}</code>
      )}
      {spilledFrom ? (
        <p className={shared.text}>
          This formula stands in <PlaceButton target={spilledFrom.target} /> and fills this cell
          too.
        </p>
      ) : null}
      <AgreementLine view={view} />
    </section>
  );
}

function AgreementLine({ view: { agreement } }: { view: TraceView }) {
  const styles = useStyles();
  const shared = useShared();
  if (!agreement) return null;
  const { state, words } = agreement;
  return (
    <p className={styles.agreement}>
      {state === "agrees" ? (
        <CheckmarkCircle20Filled className={shared.good} aria-hidden />
      ) : state === "differs" ? (
        <ErrorCircle20Filled className={shared.bad} aria-hidden />
      ) : (
        <CircleHint20Regular className={shared.quiet} aria-hidden />
      )}
      <span>{words}</span>
    </p>
  );
}

function ChangedBar() {
  const { session, state } = useSession();
  return (
    <MessageBar intent="warning" layout="multiline" politeness="polite">
      <MessageBarBody>{changedWords}</MessageBarBody>
      <MessageBarActions>
        <Button disabledFocusable={state.busy !== ""} onClick={() => void session.check()}>
          Check again
        </Button>
      </MessageBarActions>
    </MessageBar>
  );
}

import { MessageBar, MessageBarBody, makeStyles, tokens } from "@fluentui/react-components";
import { useId } from "react";
import type { RateView } from "../../model/rates-view";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  rate: {
    margin: 0,
    fontSize: tokens.fontSizeBase500,
    lineHeight: tokens.lineHeightBase500,
    fontWeight: tokens.fontWeightSemibold,
  },
  sum: {
    margin: 0,
    padding: tokens.spacingVerticalS,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground3,
    fontFamily: "Cambria Math, STIX Two Math, Cambria, Georgia, serif",
    fontSize: tokens.fontSizeBase300,
  },
  given: {
    display: "grid",
    gridTemplateColumns: "max-content minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalM,
    rowGap: tokens.spacingVerticalXXS,
    margin: 0,
    "& dt": { color: tokens.colorNeutralForeground2 },
    "& dd": { margin: 0 },
  },
});

export function RateCard({ view }: { view: RateView }) {
  const styles = useStyles();
  const shared = useShared();
  const id = useId();
  const { outcome } = view;
  return (
    <section className={shared.panel} aria-labelledby={id}>
      <h3 id={id} className={shared.subheading}>
        {view.title}
      </h3>
      {"problem" in outcome ? (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>{outcome.problem}</MessageBarBody>
        </MessageBar>
      ) : (
        <p className={styles.rate}>Required {outcome.rate}</p>
      )}
      {view.measured === "" ? null : <p className={shared.text}>{view.measured}</p>}
      <dl className={styles.given}>
        {view.given.map(({ name, value }) => (
          <Pair key={name} name={name} value={value} />
        ))}
        {"problem" in outcome ? null : (
          <>
            <Pair name="By" value={outcome.work} />
            <Pair name="Clause" value={outcome.clause} />
            <Pair name="Traced" value={outcome.mark} />
          </>
        )}
      </dl>
      {"problem" in outcome ? null : (
        <div className={shared.tight}>
          <span className={shared.muted}>The sum</span>
          {outcome.working.map((line) => (
            <p key={line} className={styles.sum}>
              {line}
            </p>
          ))}
        </div>
      )}
    </section>
  );
}

function Pair({ name, value }: { name: string; value: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </>
  );
}

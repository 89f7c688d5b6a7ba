import { makeStyles, tokens } from "@fluentui/react-components";

const useStyles = makeStyles({
  facts: {
    display: "grid",
    gridTemplateColumns: "fit-content(45%) minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalM,
    rowGap: tokens.spacingVerticalXXS,
    margin: 0,
    "& dt": { color: tokens.colorNeutralForeground2, overflowWrap: "break-word" },
    "& dd": { margin: 0, overflowWrap: "break-word" },
  },
});

interface FactsProps {
  readonly facts: readonly { readonly name: string; readonly value: string }[];
}

/** Names with their values beside them. */
export function Facts({ facts }: FactsProps) {
  const styles = useStyles();
  return (
    <dl className={styles.facts}>
      {facts.map(({ name, value }) => (
        <Fact key={name} name={name} value={value} />
      ))}
    </dl>
  );
}

function Fact({ name, value }: FactsProps["facts"][number]) {
  return (
    <>
      <dt>{name}</dt>
      {/* A number and its sign stay on one line. */}
      <dd>{value.replaceAll(" %", "\u00a0%")}</dd>
    </>
  );
}

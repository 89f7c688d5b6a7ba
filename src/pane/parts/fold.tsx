import { makeStyles, tokens } from "@fluentui/react-components";
import { type ReactNode, useState } from "react";

const useStyles = makeStyles({
  summary: { cursor: "pointer", minHeight: "24px" },
  inside: {
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalS,
    paddingTop: tokens.spacingVerticalS,
  },
});

interface FoldProps {
  readonly title: string;
  readonly children: ReactNode;
}

/** What is read only when asked for. Its inside is not drawn before it is first opened. */
export function Fold({ title, children }: FoldProps) {
  const styles = useStyles();
  const [opened, setOpened] = useState(false);
  return (
    <details onToggle={(event) => setOpened(opened || event.currentTarget.open)}>
      <summary className={styles.summary}>{title}</summary>
      {opened ? <div className={styles.inside}>{children}</div> : null}
    </details>
  );
}

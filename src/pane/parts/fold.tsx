import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { type ReactNode, useState } from "react";
import { useShared } from "./styles";

const useStyles = makeStyles({
  inside: { paddingTop: tokens.spacingVerticalS },
});

interface FoldProps {
  readonly title: string;
  readonly children: ReactNode;
}

/** What is read only when asked for. Its inside is not drawn before it is first opened. */
export function Fold({ title, children }: FoldProps) {
  const styles = useStyles();
  const shared = useShared();
  const [opened, setOpened] = useState(false);
  return (
    <details onToggle={(event) => setOpened(opened || event.currentTarget.open)}>
      <summary className={shared.summary}>{title}</summary>
      {opened ? <div className={mergeClasses(shared.stack, styles.inside)}>{children}</div> : null}
    </details>
  );
}

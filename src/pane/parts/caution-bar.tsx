import {
  Button,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  MessageBarTitle,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import { Dismiss16Regular } from "@fluentui/react-icons";
import { useState } from "react";
import { cautionsLeft } from "../model/cautions";
import { rememberSeen, seenCautions } from "../session/memory";
import { useShared } from "./styles";

const useStyles = makeStyles({
  body: {
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalXS,
    padding: `${tokens.spacingVerticalXS} 0`,
  },
  title: { fontSize: "inherit" },
});

/** The cautions that matter here, in one bar, until it has been put away. */
export function CautionBar({ about }: { about: readonly string[] }) {
  const styles = useStyles();
  const shared = useShared();
  const [seen, setSeen] = useState(seenCautions);
  const left = cautionsLeft(seen).filter((caution) => about.includes(caution.key));
  if (left.length === 0) return null;
  const putAway = () => {
    // Another bar on the screen may have been put away since this one was drawn.
    const now = [...new Set([...seen, ...seenCautions(), ...left.map(({ key }) => key)])];
    rememberSeen(now);
    setSeen(now);
  };
  return (
    <MessageBar intent="warning" layout="multiline" politeness="polite">
      <MessageBarBody className={styles.body}>
        {left.map((caution) => (
          <p key={caution.key} className={shared.text}>
            <MessageBarTitle className={styles.title}>{caution.title}.</MessageBarTitle>{" "}
            {caution.text}
          </p>
        ))}
      </MessageBarBody>
      <MessageBarActions
        containerAction={
          <Button
            appearance="transparent"
            aria-label="Put the caution away"
            icon={<Dismiss16Regular />}
            onClick={putAway}
          />
        }
      />
    </MessageBar>
  );
}

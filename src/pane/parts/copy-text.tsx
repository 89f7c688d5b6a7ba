import { Button, makeStyles, mergeClasses, Textarea, tokens } from "@fluentui/react-components";
import { Copy16Regular } from "@fluentui/react-icons";
import { useId, useState } from "react";
import { useShared } from "./styles";

const useStyles = makeStyles({
  words: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
  box: { width: "100%" },
  text: { fontFamily: tokens.fontFamilyMonospace, fontSize: tokens.fontSizeBase200 },
});

type Outcome = "" | "copied" | "refused";

/** Copies plain text. A pane may be refused the clipboard: the text is shown then. */
export function CopyText({ text, label = "Copy as text" }: { text: string; label?: string }) {
  const styles = useStyles();
  const shared = useShared();
  const id = useId();
  const [outcome, setOutcome] = useState<Outcome>("");
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setOutcome("copied");
    } catch {
      setOutcome("refused");
    }
  };
  return (
    <>
      <span className={shared.line}>
        <span role="status" className={styles.words}>
          {outcome === "copied" ? "Copied." : ""}
        </span>
        <Button size="small" icon={<Copy16Regular />} onClick={() => void copy()}>
          {label}
        </Button>
      </span>
      {outcome === "refused" ? (
        <div className={mergeClasses(shared.tight, styles.box)}>
          <span id={id} role="alert" className={styles.words}>
            The clipboard was refused. The text is selected here: copy it from this box.
          </span>
          <Textarea
            readOnly
            aria-labelledby={id}
            rows={8}
            className={styles.box}
            textarea={{ className: styles.text }}
            value={text}
            ref={selectAll}
          />
        </div>
      ) : null}
    </>
  );
}

/** Selected as it comes, so that a key is enough. */
function selectAll(box: HTMLTextAreaElement | null): void {
  box?.select();
}

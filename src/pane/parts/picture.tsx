import { Button } from "@fluentui/react-components";
import { DataLine20Regular, Table20Regular } from "@fluentui/react-icons";
import { type ReactNode, useId, useState } from "react";
import { useShared } from "./styles";

interface PictureProps {
  readonly title: string;
  /** One sentence that says what the picture shows. */
  readonly summary: string;
  /** The picture itself; hidden from a screen reader, which reads the twin. */
  readonly children: ReactNode;
  /** The same in a table or list. Always there for a screen reader, seen when asked for. */
  readonly twin: ReactNode;
}

/** A picture with its text twin. */
export function Picture({ title, summary, children, twin }: PictureProps) {
  const shared = useShared();
  const [shown, setShown] = useState(false);
  const id = useId();
  return (
    <figure className={shared.figure} aria-labelledby={id}>
      <div className={shared.spread}>
        <h3 id={id} className={shared.subheading}>
          {title}
        </h3>
        <Button
          size="small"
          appearance="subtle"
          icon={shown ? <DataLine20Regular /> : <Table20Regular />}
          aria-pressed={shown}
          onClick={() => setShown(!shown)}
        >
          Numbers
        </Button>
      </div>
      <p className={shared.muted}>{summary}</p>
      <div aria-hidden="true">{children}</div>
      <div className={shown ? shared.scroll : shared.unseen} tabIndex={shown ? 0 : undefined}>
        {twin}
      </div>
    </figure>
  );
}

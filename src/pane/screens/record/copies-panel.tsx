import { Button, Link, makeStyles } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import type { FileCopy } from "../../session/record-state";
import { makeCopy, openCopy } from "../../session/record-work";

const workbookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

const useStyles = makeStyles({
  link: { minHeight: "24px", display: "inline-flex", alignItems: "center" },
});

/** Copies of the workbook that need no add-in; those of all of it only where the program hands it over. */
export function CopiesPanel() {
  const shared = useShared();
  const { session, state } = useSession();
  const busy = state.busy !== "";
  const { copy } = state.record;
  return (
    <Panel title="Copies that need no add-in">
      <p className={shared.text}>
        {session.givesFile
          ? "The plain copy has formulas of the program itself in place of those of the add-in. The values copy has no formulas at all. "
          : ""}
        The field copy is a small workbook for a phone: fans, room for the readings, flow and
        verdict as they are typed.
      </p>
      <div className={shared.line}>
        {session.givesFile ? (
          <>
            <Button disabledFocusable={busy} onClick={() => void makeCopy(session, "plain")}>
              Make a plain copy
            </Button>
            <Button disabledFocusable={busy} onClick={() => void makeCopy(session, "values")}>
              Make a values copy
            </Button>
          </>
        ) : null}
        <Button disabledFocusable={busy} onClick={() => void makeCopy(session, "field")}>
          Make a field copy
        </Button>
      </div>
      {copy && copy.kind !== "estimate" ? (
        <ReadyCopy
          copy={copy}
          told="What could not be replaced, and keeps the value that it has now:"
        />
      ) : null}
    </Panel>
  );
}

/** The file to be taken away, and what is told of it. */
export function ReadyCopy({ copy, told }: { copy: FileCopy; told: string }) {
  const styles = useStyles();
  const shared = useShared();
  const { session, state } = useSession();
  const address = useAddress(copy.bytes);
  return (
    <div className={shared.stack}>
      <div className={shared.line}>
        <Link className={styles.link} href={address} download={copy.fileName}>
          Download {copy.fileName}
        </Link>
        {session.givesFile ? (
          <Button
            size="small"
            disabledFocusable={state.busy !== ""}
            onClick={() => void openCopy(session)}
          >
            Open it
          </Button>
        ) : null}
      </div>
      {copy.left.length > 0 ? (
        <>
          <p className={shared.text}>{told}</p>
          <ul className={shared.bullets}>
            {copy.left.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      ) : null}
    </div>
  );
}

/** An address in this page under which the bytes can be downloaded. */
function useAddress(bytes: Uint8Array): string {
  const [address, setAddress] = useState("");
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([bytes as BlobPart], { type: workbookType }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes]);
  return address;
}

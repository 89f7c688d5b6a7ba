import { Button, Field, Input, Link } from "@fluentui/react-components";
import { useState } from "react";
import {
  helpFile,
  namespace,
  type WorksheetFunction,
  worksheetFunctions,
} from "../../../../functions";
import { callText, stillNeeded } from "../../model/function-list";
import { Choice } from "../../parts/choice";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

/** Writes a call of a worksheet function, each argument explained, into the active cell. */
export function InsertFunction() {
  const [id, setId] = useState("");
  const chosen = worksheetFunctions.find((entry) => entry.id === id);
  return (
    <Panel title="Insert a function">
      <Choice
        label="Function"
        value={id}
        options={[
          { value: "", words: "choose a function" },
          ...worksheetFunctions.map((entry) => ({
            value: entry.id,
            words: `${namespace}.${entry.id}`,
          })),
        ]}
        onChoose={setId}
      />
      {chosen ? <Call key={id} entry={chosen} /> : null}
    </Panel>
  );
}

function Call({ entry }: { entry: WorksheetFunction }) {
  const shared = useShared();
  const { session, state } = useSession();
  const [typed, setTyped] = useState<readonly string[]>([]);
  const needed = stillNeeded(entry, typed);
  const text = callText(entry, typed);
  return (
    <>
      <p className={shared.text}>
        {entry.description}{" "}
        <Link href={helpFile(entry.id)} target="_blank" rel="noreferrer" inline>
          More on {namespace}.{entry.id}
        </Link>
      </p>
      {entry.parameters.map((argument, i) => (
        <Field
          key={argument.name}
          label={argument.optional ? `${argument.name} (may be left out)` : argument.name}
          hint={argument.description}
        >
          <Input
            value={typed[i] ?? ""}
            onChange={(_, data) =>
              setTyped(
                entry.parameters.map((_a, at) => (at === i ? data.value : (typed[at] ?? ""))),
              )
            }
          />
        </Field>
      ))}
      <code className={shared.code}>={text}</code>
      <p className={shared.muted}>
        {needed.length > 0
          ? `Still needed: ${needed.join(", ")}.`
          : `Goes into ${state.selection ? `${state.selection.sheet}!${state.selection.cell}` : "the active cell"}.`}
      </p>
      <div>
        <Button
          appearance="primary"
          disabledFocusable={needed.length > 0 || state.busy !== ""}
          onClick={() => void session.insertFormula(text)}
        >
          Insert
        </Button>
      </div>
    </>
  );
}

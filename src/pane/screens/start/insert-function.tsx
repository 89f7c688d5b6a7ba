import { Button, Field, Input, Link, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { callText, type FunctionEntry, stillNeeded } from "../../model/function-list";
import { Choice } from "../../parts/choice";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { useFunctions } from "./use-functions";

const useStyles = makeStyles({
  formula: {
    padding: tokens.spacingVerticalS,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground3,
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
  },
});

/** Writes a call of a worksheet function, each argument explained, into the active cell. */
export function InsertFunction() {
  const shared = useShared();
  const { functions, problem, again } = useFunctions();
  const [name, setName] = useState("");
  const chosen = functions.find((entry) => entry.name === name);
  return (
    <Panel title="Insert a function">
      {problem === "" ? (
        <Choice
          label="Function"
          value={name}
          options={[
            { value: "", words: "choose a function" },
            ...functions.map((entry) => entry.name),
          ]}
          onChoose={setName}
        />
      ) : (
        <>
          <p role="alert" className={shared.text}>
            {problem}
          </p>
          <div>
            <Button onClick={again}>Try again</Button>
          </div>
        </>
      )}
      {chosen ? <Call key={chosen.name} entry={chosen} /> : null}
    </Panel>
  );
}

function Call({ entry }: { entry: FunctionEntry }) {
  const styles = useStyles();
  const shared = useShared();
  const { session, state } = useSession();
  const [typed, setTyped] = useState<readonly string[]>([]);
  const needed = stillNeeded(entry, typed);
  const text = callText(entry, typed);
  return (
    <>
      <p className={shared.text}>
        {entry.description}{" "}
        {entry.helpUrl === "" ? null : (
          <Link href={entry.helpUrl} target="_blank" rel="noreferrer" inline>
            More on {entry.name}
          </Link>
        )}
      </p>
      {entry.arguments.map((argument, i) => (
        <Field
          key={argument.name}
          label={argument.optional ? `${argument.name} (may be left out)` : argument.name}
          hint={argument.description}
        >
          <Input
            value={typed[i] ?? ""}
            onChange={(_, data) =>
              setTyped(entry.arguments.map((_a, at) => (at === i ? data.value : (typed[at] ?? ""))))
            }
          />
        </Field>
      ))}
      <code className={styles.formula}>={text}</code>
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

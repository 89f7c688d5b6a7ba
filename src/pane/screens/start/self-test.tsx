import { Button, Radio, RadioGroup } from "@fluentui/react-components";
import { useState } from "react";
import { version } from "../../../../package.json";
import type { Answer, loadSelfTest, Result } from "../../../excel";
import { CopyText } from "../../parts/copy-text";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

/** Tries this Excel line by line, asks a person for the rest, and makes a report of both. */
export function SelfTest({ kit }: { kit: Awaited<ReturnType<typeof loadSelfTest>> }) {
  const { lines, ownSheets, prompts, reportRows, reportText, selfTest, writeReport } = kit;
  const { session } = useSession();
  const shared = useShared();
  const [results, setResults] = useState<readonly Result[]>([]);
  const [answers, setAnswers] = useState<Readonly<Record<string, Answer["outcome"]>>>({});
  const [isRunning, setRunning] = useState(false);
  const failed = results.filter(({ outcome }) => outcome === "fail");
  const isDone = !isRunning && results.length === lines.length;
  const rows = reportRows(
    results,
    prompts.map(({ name }) => ({ name, outcome: answers[name] ?? "not tried" })),
    version,
  );

  // The pane does not check the workbook meanwhile, nor for what is written on these sheets.
  const start = async () => {
    setRunning(true);
    const found: Result[] = [];
    await session.further("Testing", async ({ own }) => {
      ownSheets.forEach(own);
      await selfTest((result) => {
        found.push(result);
        setResults([...found]);
      });
    });
    setRunning(false);
  };
  const write = () => session.further("Writing", () => writeReport(rows));

  return (
    <>
      <p className={shared.text}>
        {lines.length} lines run by themselves on a sheet that is deleted afterwards; your own
        sheets are left alone. Leave Excel alone for a minute or two while they run.
      </p>
      <div className={shared.line}>
        <Button appearance="primary" disabledFocusable={isRunning} onClick={() => void start()}>
          {isRunning ? "Testing…" : "Test in this Excel"}
        </Button>
        <span role="status">
          {results.length > 0
            ? `${results.length} of ${lines.length}: ${failed.length === 0 ? "none fails" : `${failed.length} fail`}`
            : ""}
        </span>
      </div>
      {failed.length > 0 ? (
        <ul className={shared.stack} aria-label="Lines that fail">
          {failed.map(({ name, expected, got }) => (
            <li key={name} className={shared.text}>
              {name}: expected {expected}, got {got}
            </li>
          ))}
        </ul>
      ) : null}
      {isDone ? (
        <>
          <p className={shared.text}>Then try these by hand, and say what you saw.</p>
          {prompts.map(({ name, step, seen }) => (
            <div key={name} className={shared.tight}>
              <h4 className={shared.subheading}>{name}</h4>
              <p className={shared.text}>{step}</p>
              <p className={shared.muted}>{seen}</p>
              <RadioGroup
                layout="horizontal"
                aria-label={`Seen: ${name}`}
                value={answers[name] ?? "not tried"}
                onChange={(_, { value }) =>
                  setAnswers({ ...answers, [name]: value as Answer["outcome"] })
                }
              >
                <Radio value="pass" label="Yes" />
                <Radio value="fail" label="No" />
                <Radio value="not tried" label="Not tried" />
              </RadioGroup>
            </div>
          ))}
          <div className={shared.line}>
            <Button onClick={() => void write()}>Write the report on a sheet</Button>
          </div>
          <CopyText text={reportText(rows)} label="Copy report" />
        </>
      ) : null}
    </>
  );
}

import {
  Button,
  Checkbox,
  Field,
  Input,
  makeStyles,
  mergeClasses,
  Select,
  SpinButton,
  tokens,
} from "@fluentui/react-components";
import { useId, useState } from "react";
import { editions } from "../../../editions";
import { type FeatureKey, features, type Settings, usualFeatures } from "../../../job";
import { EditionChoice } from "../../parts/edition-choice";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  choices: { display: "flex", flexDirection: "column" },
  // Under the words of the box, not under the box itself.
  help: { paddingLeft: "32px", marginTop: `-${tokens.spacingVerticalXS}` },
  count: { boxSizing: "border-box", "& > input": { minWidth: 0 } },
});

const keys = Object.keys(features) as FeatureKey[];
const unitWords = { ip: "in², Pa, cfm, ft²", si: "cm², Pa, L/s, m²" } as const;
const systems = ["ip", "si"] as const satisfies readonly Settings["system"][];
const mostRows = 5_000;

/** Taken by the edition's choice: nothing is chosen yet, or it is not known yet. */
const unasked = "";
const unknown = "unknown";

/** The sheets of a new job, with what it is to have beyond readings and verdicts. */
export function NewJob() {
  const styles = useStyles();
  const shared = useShared();
  const id = useId();
  const { session, state } = useSession();
  const [name, setName] = useState("");
  const [chosenEdition, setEdition] = useState(unasked);
  const [system, setSystem] = useState<Settings["system"]>("ip");
  const [rows, setRows] = useState({ dwellings: 20, fans: 60 });
  const [chosen, setChosen] = useState(usualFeatures);
  const edition = editions.find((each) => each.id === chosenEdition);
  const isOffered = (key: FeatureKey) =>
    key !== "existing" || !edition || edition.deficits !== undefined;
  const choose = (key: FeatureKey, on: boolean) =>
    setChosen(keys.filter((each) => (each === key ? on : chosen.includes(each))));
  const chooseEdition = (value: string) => {
    setEdition(value);
    const stated = editions.find((each) => each.id === value)?.systems;
    if (stated && !stated.includes(system)) setSystem(stated[0] as Settings["system"]);
  };
  const isAsked = chosenEdition === unasked;
  const counted = (key: keyof typeof rows, label: string) => (
    <Field label={label}>
      <SpinButton
        className={mergeClasses(shared.narrow, styles.count)}
        min={1}
        max={mostRows}
        value={rows[key]}
        onChange={(_, { value, displayValue }) => {
          const typed = Math.round(value ?? Number(displayValue));
          if (typed >= 1 && typed <= mostRows) setRows({ ...rows, [key]: typed });
        }}
      />
    </Field>
  );
  return (
    <Panel title="Start a job">
      <p className={shared.text}>
        Adds the sheets Job, Dwellings, Boxes and Fans with headings and formulas, and what is
        ticked here. Where a sheet of one of these names is there already, it is left as it is.
      </p>
      <Field label="Name of the job">
        <Input className={shared.narrow} value={name} onChange={(_, data) => setName(data.value)} />
      </Field>
      <EditionChoice
        label="Edition that applies"
        required
        hint={isAsked ? "Its rates are what the fans are judged by: for you to say." : undefined}
        value={chosenEdition}
        before={[
          { value: unasked, words: "choose the edition" },
          { value: unknown, words: "not known yet" },
        ]}
        onChoose={chooseEdition}
      />
      <Field label="Units">
        <Select
          className={shared.narrow}
          value={system}
          onChange={(_, data) => setSystem(data.value === "si" ? "si" : "ip")}
        >
          {systems.map((each) => (
            <option
              key={each}
              value={each}
              disabled={edition !== undefined && !edition.systems.includes(each)}
            >
              {unitWords[each]}
            </option>
          ))}
        </Select>
      </Field>
      <div className={shared.pair}>
        {counted("dwellings", "Dwellings")}
        {counted("fans", "Fans in all")}
      </div>
      <fieldset className={mergeClasses(shared.bare, styles.choices)}>
        <legend>The job also has</legend>
        {keys.map((key) => (
          <div key={key}>
            <Checkbox
              label={features[key].title}
              checked={chosen.includes(key) && isOffered(key)}
              disabled={!isOffered(key)}
              aria-describedby={`${id}-${key}`}
              onChange={(_, data) => choose(key, data.checked === true)}
            />
            <p id={`${id}-${key}`} className={mergeClasses(shared.muted, styles.help)}>
              {isOffered(key)
                ? features[key].help
                : `${edition?.title} has no rules for this; an edition of 62.2 has`}
            </p>
          </div>
        ))}
      </fieldset>
      <div>
        <Button
          appearance="primary"
          disabledFocusable={state.busy !== "" || isAsked}
          onClick={() =>
            void session.addJobSheets({
              system,
              features: chosen.filter(isOffered),
              ...rows,
              ...(name.trim() === "" ? {} : { name: name.trim() }),
              ...(edition ? { edition: edition.id } : {}),
            })
          }
        >
          Add the job sheets
        </Button>
      </div>
    </Panel>
  );
}

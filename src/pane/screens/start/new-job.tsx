import {
  Button,
  Checkbox,
  Field,
  makeStyles,
  mergeClasses,
  Select,
  tokens,
} from "@fluentui/react-components";
import { useId, useState } from "react";
import { type FeatureKey, features, type Settings, usualFeatures } from "../../../job";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  choices: {
    display: "flex",
    flexDirection: "column",
    margin: 0,
    padding: 0,
    border: "none",
    minWidth: 0,
    "& legend": { padding: 0 },
  },
  // Under the words of the box, not under the box itself.
  help: { paddingLeft: "32px", marginTop: `-${tokens.spacingVerticalXS}` },
});

const keys = Object.keys(features) as FeatureKey[];

/** The sheets of a new job, with what it is to have beyond readings and verdicts. */
export function NewJob() {
  const styles = useStyles();
  const shared = useShared();
  const id = useId();
  const { session, state } = useSession();
  const [system, setSystem] = useState<Settings["system"]>("ip");
  const [chosen, setChosen] = useState(usualFeatures);
  const choose = (key: FeatureKey, on: boolean) =>
    setChosen(keys.filter((each) => (each === key ? on : chosen.includes(each))));
  return (
    <section className={shared.panel}>
      <h3 className={shared.subheading}>Start a job</h3>
      <p className={shared.text}>
        Adds the sheets Job, Dwellings, Boxes and Fans with headings and formulas, and what is
        ticked here. Where a sheet of one of these names is there already, it is left as it is.
      </p>
      <Field label="Units">
        <Select value={system} onChange={(_, data) => setSystem(data.value === "si" ? "si" : "ip")}>
          <option value="ip">in², Pa, cfm, ft²</option>
          <option value="si">cm², Pa, L/s, m²</option>
        </Select>
      </Field>
      <fieldset className={styles.choices}>
        <legend>The job also has</legend>
        {keys.map((key) => (
          <div key={key}>
            <Checkbox
              label={features[key].title}
              checked={chosen.includes(key)}
              aria-describedby={`${id}-${key}`}
              onChange={(_, data) => choose(key, data.checked === true)}
            />
            <p id={`${id}-${key}`} className={mergeClasses(shared.muted, styles.help)}>
              {features[key].help}
            </p>
          </div>
        ))}
      </fieldset>
      <div>
        <Button
          appearance="primary"
          disabledFocusable={state.busy !== ""}
          onClick={() => void session.addJobSheets(system, chosen)}
        >
          Add the job sheets
        </Button>
      </div>
    </section>
  );
}

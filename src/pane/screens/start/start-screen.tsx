import { Button, Field, Select } from "@fluentui/react-components";
import { useState } from "react";
import type { Settings } from "../../../job";
import { cautions } from "../../model/cautions";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { InsertFunction } from "./insert-function";

/** A new job, a function at the cell, and what to be careful of. */
export function StartScreen() {
  const shared = useShared();
  const { session, state } = useSession();
  const [system, setSystem] = useState<Settings["system"]>("ip");
  return (
    <div className={shared.screen}>
      <section className={shared.panel}>
        <h3 className={shared.subheading}>Start a job</h3>
        <p className={shared.text}>
          Adds the sheets Job, Dwellings, Boxes and Fans with headings and formulas. Where a sheet
          of one of these names is there already, nothing is added.
        </p>
        <Field label="Units">
          <Select
            value={system}
            onChange={(_, data) => setSystem(data.value === "si" ? "si" : "ip")}
          >
            <option value="ip">in², Pa, cfm, ft²</option>
            <option value="si">cm², Pa, L/s, m²</option>
          </Select>
        </Field>
        <div>
          <Button
            appearance="primary"
            disabledFocusable={state.busy !== ""}
            onClick={() => void session.addJobSheets(system)}
          >
            Add the job sheets
          </Button>
        </div>
      </section>
      <InsertFunction />
      <section className={shared.panel}>
        <h3 className={shared.subheading}>Be careful of</h3>
        <dl className={shared.stack}>
          {cautions.map(({ key, title, text }) => (
            <div key={key}>
              <dt className={shared.subheading}>{title}</dt>
              <dd className={shared.text}>{text}</dd>
            </div>
          ))}
        </dl>
        <p className={shared.muted}>
          Local code and licensed practice come before anything said here.
        </p>
      </section>
    </div>
  );
}

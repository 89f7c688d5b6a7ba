import { Field, Select } from "@fluentui/react-components";
import { useState } from "react";
import type { Job, SheetKind } from "../../../job";
import { type FitDraft, ownUnitOf, withDraft } from "../../model/fit-draft";
import { absentKinds, otherSheets, unfittedSheet } from "../../model/fit-view";
import { useShared } from "../../parts/styles";
import { HeadingTable } from "./heading-table";

interface OtherSheetProps {
  readonly job: Job;
  readonly draft: FitDraft;
  readonly onChoose: (sheet: string, heading: string, field: string) => void;
}

/** A sheet whose headings were not understood, fitted by hand. */
export function OtherSheet({ job, draft, onChoose }: OtherSheetProps) {
  const shared = useShared();
  const kinds = absentKinds(job);
  const sheets = otherSheets(job);
  const [kind, setKind] = useState<SheetKind | "">("");
  const [sheet, setSheet] = useState("");
  if (kinds.length === 0) return null;
  const titles = kinds.map((layout) => layout.title).join(" and ");
  if (sheets.length === 0)
    return <p className={shared.text}>No sheet was found for {titles}, and none is left over.</p>;
  const found = kind && sheet ? unfittedSheet(job, sheet, kind) : undefined;
  const view = found && withDraft(found, draft, ownUnitOf(job.settings.system));
  return (
    <section className={shared.stack}>
      <h3 className={shared.subheading}>Not found: {titles}</h3>
      <p className={shared.text}>
        If another sheet holds these rows, name it and say what its headings stand for.
      </p>
      <Field label="Sheet">
        <Select value={sheet} onChange={(_, data) => setSheet(data.value)}>
          <option value="">choose a sheet</option>
          {sheets.map((name) => (
            <option key={name}>{name}</option>
          ))}
        </Select>
      </Field>
      <Field label="Holds the rows of">
        <Select value={kind} onChange={(_, data) => setKind(data.value as SheetKind | "")}>
          <option value="">choose what it holds</option>
          {kinds.map((layout) => (
            <option key={layout.kind} value={layout.kind}>
              {layout.title}
            </option>
          ))}
        </Select>
      </Field>
      {view ? (
        <>
          <HeadingTable
            view={view}
            onChoose={(heading, field) => onChoose(view.sheet, heading, field)}
          />
          {view.needed.length > 0 ? (
            <p className={shared.text}>Still needed: {view.needed.join(", ")}.</p>
          ) : null}
        </>
      ) : null}
    </section>
  );
}

import type { JobCheck } from "../../../job";
import { ratesAt } from "../../model/rates-view";
import { CautionBar } from "../../parts/caution-bar";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { RateCard } from "./rate-card";

/** The required rates of the selected row, with the way to them. */
export function RatesScreen({ check }: { check: JobCheck }) {
  const shared = useShared();
  const { state } = useSession();
  const { job } = check;
  const { edition } = job.settings;
  const { selection } = state;
  const views = selection ? ratesAt(job, selection.sheet, selection.row) : [];
  return (
    <div className={shared.screen}>
      <CautionBar about={["combustion", "makeup"]} />
      <p className={shared.text}>
        Edition of this job: {edition ? edition.title : "none named. Name one on the Job sheet."}
      </p>
      {views.length === 0 ? (
        <p className={shared.text}>
          Select a cell in the row of a fan or a dwelling to see the rate that it has to meet.
        </p>
      ) : (
        views.map((view) => <RateCard key={view.title} view={view} />)
      )}
      {edition && edition.notes.length > 0 ? (
        <section className={shared.stack}>
          <h3 className={shared.subheading}>Notes on this edition</h3>
          <ul>
            {edition.notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </section>
      ) : null}
      <p className={shared.muted}>
        These are the numbers of the edition named, before any credit or local amendment. Local code
        and its official decide.
      </p>
    </div>
  );
}

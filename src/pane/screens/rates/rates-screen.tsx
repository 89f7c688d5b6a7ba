import { lazy, Suspense, useMemo } from "react";
import type { Job, JobCheck } from "../../../job";
import { accountView } from "../../model/account-view";
import { fanAirView } from "../../model/air-view";
import { equipmentViews } from "../../model/equipment-view";
import { roomView } from "../../model/rates-view";
import { rowsAt } from "../../model/rows-at";
import { CautionBar } from "../../parts/caution-bar";
import { Fold } from "../../parts/fold";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { AccountSection } from "./account-section";
import { AirSection } from "./air-section";
import { EditionSection } from "./edition-section";
import { EquipmentSection } from "./equipment-section";
import { RateCard } from "./rate-card";
import { WhileOn } from "./while-on";

const NumbersList = lazy(() =>
  import("./numbers-list").then((part) => ({ default: part.NumbersList })),
);

const OrderSection = lazy(() =>
  import("./order-section").then((part) => ({ default: part.OrderSection })),
);

/** What is asked of the selected row: of its fan, and of its dwelling, with the way to it. */
export function RatesScreen({ check }: { check: JobCheck }) {
  const shared = useShared();
  const { state } = useSession();
  const { job } = check;
  const { edition } = job.settings;
  const { selection } = state;
  const { fan, dwelling } = useMemo(
    () =>
      selection
        ? rowsAt(job, selection.sheet, selection.row)
        : { fan: undefined, dwelling: undefined },
    [job, selection],
  );
  return (
    <div className={shared.screen}>
      <p className={shared.text}>
        Edition of this job: {edition ? edition.title : "none named. Name one on the Job sheet."}
      </p>
      {fan === undefined && dwelling === undefined ? (
        <p className={shared.text}>
          Select a cell in the row of a fan or a dwelling to see the rate that it has to meet.
        </p>
      ) : null}
      {fan === undefined ? null : <OfFan job={job} fan={fan} />}
      {fan === undefined && dwelling === undefined ? null : (
        <CautionBar about={["combustion", "makeup"]} />
      )}
      {fan === undefined ? null : <Equipment job={job} fan={fan} />}
      {dwelling === undefined ? null : <OfDwelling job={job} dwelling={dwelling} />}
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
      {job.tables.schedule ? (
        <Fold title="Order list">
          <Suspense fallback={null}>
            <OrderSection job={job} />
          </Suspense>
        </Fold>
      ) : null}
      {job.fans ? (
        <Fold title="Under another edition">
          <EditionSection job={job} />
        </Fold>
      ) : null}
      <Fold title="Every number">
        <Suspense fallback={null}>
          <NumbersList edition={edition?.id} />
        </Suspense>
      </Fold>
      <p className={shared.muted}>
        These are the numbers of the edition named, before any local amendment. Local code and its
        official decide.
      </p>
    </div>
  );
}

function OfFan({ job, fan }: { job: Job; fan: number }) {
  const room = useMemo(() => roomView(job, fan), [job, fan]);
  const air = useMemo(
    () => (job.fans?.isAbsent(fan) ? undefined : fanAirView(job, fan)),
    [job, fan],
  );
  return (
    <>
      <RateCard view={room} />
      {air ? <AirSection view={air} /> : null}
    </>
  );
}

function Equipment({ job, fan }: { job: Job; fan: number }) {
  const views = useMemo(() => equipmentViews(job, fan), [job, fan]);
  return views.length > 0 ? <EquipmentSection views={views} /> : null;
}

function OfDwelling({ job, dwelling }: { job: Job; dwelling: number }) {
  const view = useMemo(() => accountView(job, dwelling), [job, dwelling]);
  return (
    <>
      <AccountSection view={view} />
      <WhileOn job={job} dwelling={dwelling} />
    </>
  );
}

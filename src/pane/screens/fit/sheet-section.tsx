import { useId } from "react";
import type { FitView } from "../../model/fit-view";
import { useShared } from "../../parts/styles";
import { HeadingTable } from "./heading-table";

interface SheetSectionProps {
  readonly view: FitView;
  readonly busy: boolean;
  readonly onChoose: (heading: string, field: string) => void;
}

/** One sheet that was taken for a sheet of the job. */
export function SheetSection({ view, busy, onChoose }: SheetSectionProps) {
  const shared = useShared();
  const id = useId();
  const unused = view.rows.filter((row) => row.field === "").map((row) => row.heading);
  return (
    <section className={shared.stack} aria-labelledby={id}>
      <h3 id={id} className={shared.subheading}>
        {view.layout.title}: sheet {view.sheet}
      </h3>
      <p className={shared.muted}>
        Headings in row {view.headerRow + 1}.{" "}
        {unused.length === 0 ? "All are used." : `Not used: ${unused.join(", ")}.`}
      </p>
      <HeadingTable view={view} busy={busy} onChoose={onChoose} />
      {view.absent.length > 0 ? (
        <p className={shared.muted}>No heading stands for: {view.absent.join(", ")}.</p>
      ) : null}
    </section>
  );
}

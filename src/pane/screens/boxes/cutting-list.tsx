import { shown } from "../../../cells";
import { flowUnit, type Settings, unitOf } from "../../../job";
import type { Cut } from "../../model/cutting-list";
import { useShared } from "../../parts/styles";
import { Table } from "../../parts/table";

interface CuttingListProps {
  readonly cuts: readonly Cut[];
  readonly system: Settings["system"];
  readonly box: string;
}

/** The list that goes to the workshop. */
export function CuttingList({ cuts, system, box }: CuttingListProps) {
  const shared = useShared();
  const imperial = system === "ip";
  return (
    <>
      <Table
        caption={`Cutting list of ${box}`}
        rows={cuts}
        columns={[
          {
            title: "Hole",
            cell: ({ label, count }) => (count > 1 ? `${label} × ${count}` : label),
          },
          {
            title: `Size (${imperial ? "in" : "mm"})`,
            cell: ({ exact, shape, fraction }) => (
              <>
                {exact}
                {shape === "rectangular" ? " square" : ""}
                {imperial ? <div>{fraction}</div> : null}
              </>
            ),
          },
          { title: `Saw (${imperial ? "in" : "mm"})`, cell: ({ saw }) => saw || "–" },
          {
            title: (
              <>
                Area ({unitOf("opening", system)})
                <br />
                Reach ({flowUnit(system)})
              </>
            ),
            isNumber: true,
            cell: ({ area, lowest, highest }) => (
              <>
                {shown(area)}
                <br />
                {Math.round(lowest)} to {Math.round(highest)}
              </>
            ),
          },
        ]}
      />
      <p className={shared.muted}>
        The saw is the next hole saw as sold at or below the size (common practice). Several equal
        holes are opened together. Thin walls with clean edges read true: back a thick wall with
        card or sheet no thicker than a tenth of the smallest hole, and measure what was cut. Close
        a hole with a cap or plug of its size, or with its own disc, taped all round.
      </p>
    </>
  );
}

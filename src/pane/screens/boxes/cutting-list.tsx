import { shown } from "../../../cells";
import { flowUnit, type Settings, unitOf } from "../../../job";
import type { Cut } from "../../model/cutting-list";
import { useShared } from "../../parts/styles";

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
      <table className={shared.table}>
        <caption className={shared.unseen}>Cutting list of {box}</caption>
        <thead>
          <tr>
            <th scope="col">Hole</th>
            <th scope="col">Size ({imperial ? "in" : "mm"})</th>
            <th scope="col">Saw ({imperial ? "in" : "mm"})</th>
            <th scope="col" className="number">
              Area ({unitOf("opening", system)})
              <br />
              Reach ({flowUnit(system)})
            </th>
          </tr>
        </thead>
        <tbody>
          {cuts.map((cut) => (
            <tr key={cut.label}>
              <th scope="row">
                {cut.label}
                {cut.count > 1 ? ` × ${cut.count}` : ""}
              </th>
              <td>
                {cut.exact}
                {cut.shape === "rectangular" ? " square" : ""}
                {imperial ? (
                  <>
                    <br />
                    {cut.fraction}
                  </>
                ) : null}
              </td>
              <td>{cut.saw === "" ? "–" : cut.saw}</td>
              <td className="number">
                {shown(cut.area)}
                <br />
                {Math.round(cut.lowest)} to {Math.round(cut.highest)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={shared.muted}>
        The saw is the next hole saw as sold at or below the size (common practice). Several equal
        holes are opened together. Thin walls with clean edges read true: back a thick wall with
        card or sheet no thicker than a tenth of the smallest hole, and measure what was cut. Close
        a hole with a cap or plug of its size, or with its own disc, taped all round.
      </p>
    </>
  );
}

import { shown } from "../../../cells";
import { flowUnit, type Settings, unitOf } from "../../../job";
import { type Cut, largestSaw } from "../../model/cutting-list";
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
            <th scope="col">Diameter ({imperial ? "in" : "mm"})</th>
            <th scope="col">Saw (in)</th>
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
              <th scope="row">{cut.label}</th>
              <td>
                {cut.exact}
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
        The saw is the next hole saw in eighths of an inch at or below the diameter, up to{" "}
        {largestSaw} in: cut with it, then open the hole to the line, or plan with a step of hole
        saws. Larger holes are cut along the line.
      </p>
    </>
  );
}

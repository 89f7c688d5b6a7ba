import { Link, makeStyles } from "@fluentui/react-components";
import { type FanReading, spreadWords } from "../../model/readings-view";
import { orDash } from "../../parts/format";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({ nowrap: { whiteSpace: "nowrap" } });

interface ReadingTableProps {
  readonly fans: readonly FanReading[];
  readonly unit: string;
}

/** The numbers behind the pictures; a fan's name goes to its pressure cell. */
export function ReadingTable({ fans, unit }: ReadingTableProps) {
  const shared = useShared();
  const { nowrap } = useStyles();
  const { session } = useSession();
  return (
    <table className={shared.table}>
      <caption className={shared.unseen}>Flow against the required rate</caption>
      <thead>
        <tr>
          <th scope="col">Fan</th>
          <th scope="col" className="number">
            Pa
          </th>
          <th scope="col" className="number">
            Flow ({unit})
          </th>
          <th scope="col" className="number">
            Required
          </th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {fans.map((fan) => (
          <tr key={`${fan.sheet}!${fan.cell}`}>
            <th scope="row">
              <Link as="button" onClick={() => void session.select(fan.sheet, fan.cell)}>
                {fan.label}
              </Link>
            </th>
            <td className="number">{orDash(fan.pressure)}</td>
            <td className="number">
              {orDash(fan.flow)} <span className={nowrap}>{spreadWords(fan)}</span>
            </td>
            <td className="number">{orDash(fan.required)}</td>
            <td>
              {fan.verdict}
              {fan.outside === "" ? "" : `, ${fan.outside}`}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

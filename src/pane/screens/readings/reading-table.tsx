import { Link, makeStyles } from "@fluentui/react-components";
import { type FanReading, spreadWords } from "../../model/readings-view";
import { orDash } from "../../parts/format";
import { useSession } from "../../parts/session-context";
import { Table } from "../../parts/table";

const useStyles = makeStyles({ nowrap: { whiteSpace: "nowrap" } });

interface ReadingTableProps {
  readonly fans: readonly FanReading[];
  readonly unit: string;
}

/** The numbers behind the pictures; a fan's name goes to its pressure cell. */
export function ReadingTable({ fans, unit }: ReadingTableProps) {
  const { nowrap } = useStyles();
  const { session } = useSession();
  return (
    <Table<FanReading>
      caption="Flow against the required rate"
      rows={fans}
      columns={[
        {
          title: "Fan",
          cell: ({ sheet, cell, label }) => (
            <Link as="button" onClick={() => void session.select(sheet, cell)}>
              {label}
            </Link>
          ),
        },
        { title: "Pa", isNumber: true, cell: ({ pressure }) => orDash(pressure) },
        {
          title: `Flow (${unit})`,
          isNumber: true,
          cell: (fan) => (
            <>
              {orDash(fan.flow)} <span className={nowrap}>{spreadWords(fan)}</span>
            </>
          ),
        },
        { title: "Required", isNumber: true, cell: ({ required }) => orDash(required) },
        {
          title: "Verdict",
          cell: ({ verdict, outside }) => verdict + (outside === "" ? "" : `, ${outside}`),
        },
      ]}
    />
  );
}

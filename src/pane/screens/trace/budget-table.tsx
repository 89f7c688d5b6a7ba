import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { BudgetView } from "../../model/trace-budget";
import { useShared } from "../../parts/styles";
import { Table } from "../../parts/table";
import { Subscripts } from "./sum-block";

const useStyles = makeStyles({
  off: { fontWeight: tokens.fontWeightRegular },
  table: { "& .number": { whiteSpace: "nowrap" } },
});

/** Why a result may be off, cause by cause. */
export function BudgetTable({ budget }: { budget: BudgetView }) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <Table
      caption="The spread, cause by cause"
      className={styles.table}
      rows={budget.lines}
      columns={[
        {
          title: "Cause, standard spread",
          cell: ({ label, off }) => (
            <>
              {label}
              <div className={mergeClasses(shared.muted, styles.off)}>
                <Subscripts text={off} />
              </div>
            </>
          ),
        },
        {
          title: budget.unit === "" ? "Effect" : `Effect (${budget.unit})`,
          isNumber: true,
          cell: ({ does }) => does,
        },
        { title: "Share", isNumber: true, cell: ({ share }) => share },
      ]}
    />
  );
}

import { Button, Switch } from "@fluentui/react-components";
import { TableAdd20Regular } from "@fluentui/react-icons";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";

/** What the findings can leave in the workbook: marks on cells, and a sheet of their own. */
export function SheetActions() {
  const shared = useShared();
  const { session, state } = useSession();
  const busy = state.busy !== "";
  return (
    <div className={shared.spread}>
      <Switch
        label="Mark the cells"
        checked={state.marks}
        onChange={(_, data) => void session.setMarks(data.checked)}
      />
      <Button
        size="small"
        icon={<TableAdd20Regular />}
        disabledFocusable={busy}
        onClick={() => void session.writeFindings()}
      >
        Write Findings sheet
      </Button>
    </div>
  );
}

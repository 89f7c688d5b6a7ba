import { makeStyles, SearchBox, Select } from "@fluentui/react-components";
import type { GroupBy } from "../../model/finding-groups";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  search: { flex: "1 1 120px", minWidth: 0, maxWidth: "none" },
  by: { flex: "0 1 auto" },
});

interface FiltersProps {
  readonly search: string;
  readonly by: GroupBy;
  readonly onSearch: (search: string) => void;
  readonly onBy: (by: GroupBy) => void;
}

export function Filters({ search, by, onSearch, onBy }: FiltersProps) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <div className={shared.line}>
      <SearchBox
        className={styles.search}
        size="small"
        aria-label="Search the findings"
        placeholder="Search"
        value={search}
        onChange={(_, data) => onSearch(data.value)}
      />
      <Select
        className={styles.by}
        size="small"
        aria-label="Group the findings"
        value={by}
        onChange={(_, data) => onBy(data.value === "kind" ? "kind" : "row")}
      >
        <option value="row">by fan</option>
        <option value="kind">by kind</option>
      </Select>
    </div>
  );
}

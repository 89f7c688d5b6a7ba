import { makeStyles, SearchBox, tokens } from "@fluentui/react-components";
import { useDeferredValue, useMemo, useState } from "react";
import { clauseText } from "../../model/marks";
import { numberEditions, numbersPage } from "../../model/numbers-view";
import { Choice } from "../../parts/choice";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  search: { maxWidth: "none" },
  entry: {
    // What is out of sight is not laid out.
    contentVisibility: "auto",
    containIntrinsicSize: "auto 64px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    padding: `${tokens.spacingVerticalXS} 0`,
  },
});

/** Every number that the rules rest on, edition by edition, with where it stands. */
export function NumbersList({ edition: own }: { edition: string | undefined }) {
  const styles = useStyles();
  const shared = useShared();
  const editions = useMemo(numberEditions, []);
  const [edition, setEdition] = useState(own ?? (editions[0] as string));
  const [filter, setFilter] = useState("");
  // Typing goes on while the list is drawn.
  const asked = useDeferredValue(filter);
  const { rows, total } = useMemo(() => numbersPage(edition, asked), [edition, asked]);
  return (
    <>
      <Choice label="Edition or code" value={edition} options={editions} onChoose={setEdition} />
      <SearchBox
        className={styles.search}
        aria-label="Search the numbers"
        placeholder="Search"
        value={filter}
        onChange={(_, data) => setFilter(data.value)}
      />
      <p role="status" className={shared.muted}>
        {total === 0
          ? "No number fits this search."
          : rows.length < total
            ? `The first ${rows.length} of ${total}: ${total - rows.length} more fit the search.`
            : `${total} ${total === 1 ? "number" : "numbers"}`}
      </p>
      <dl className={shared.text}>
        {rows.map(({ what, value, clause }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list is fixed; two may read alike
          <div key={i} className={styles.entry}>
            <dt>{what}</dt>
            <dd className={shared.strong}>{value}</dd>
            <dd className={shared.muted}>{clauseText(clause)}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

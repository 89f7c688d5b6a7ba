import { Link, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { Spot } from "../../../cells";
import { targetAt } from "../../model/trace-cells";
import { useShared } from "../../parts/styles";
import { useGo } from "./go-context";

const useStyles = makeStyles({
  path: {
    display: "flex",
    flexWrap: "wrap",
    alignItems: "center",
    columnGap: tokens.spacingHorizontalXS,
    fontSize: tokens.fontSizeBase200,
  },
  step: { display: "flex", alignItems: "center", columnGap: tokens.spacingHorizontalXS },
  cell: { minHeight: "24px", fontSize: "inherit" },
});

/** The cells gone through, each a way back; the traced one stands last. */
export function PathBar({ path }: { path: readonly Spot[] }) {
  const styles = useStyles();
  const shared = useShared();
  const go = useGo();
  // The card below names the only one.
  if (path.length < 2) return null;
  return (
    <nav aria-label="Back">
      <ol className={mergeClasses(shared.plainList, styles.path)}>
        {path.map((spot, i) => {
          const target = targetAt(spot);
          const isHere = i === path.length - 1;
          return (
            <li key={target.name} className={styles.step}>
              {i > 0 ? <span aria-hidden>›</span> : null}
              <Link
                as="button"
                className={mergeClasses(styles.cell, isHere && shared.strong)}
                aria-current={isHere ? "step" : undefined}
                onClick={() => go(target)}
              >
                {target.name}
              </Link>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}

import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useLayoutEffect, useState } from "react";
import type { SumView } from "../../model/trace-calls";
import { Fold } from "../../parts/fold";
import { useShared } from "../../parts/styles";
import { useWidth } from "../../parts/use-width";

const useStyles = makeStyles({
  sum: {
    lineHeight: "1.6",
    // It scrolls within itself, so that a sum is never broken in the middle of a term.
    overflowX: "auto",
    "& p": { margin: 0, whiteSpace: "pre" },
    // Subscripts must not push the lines apart.
    "& sub": { fontSize: "0.75em", lineHeight: 0 },
  },
  further: { paddingLeft: tokens.spacingHorizontalL },
  legend: {
    display: "grid",
    gridTemplateColumns: "max-content minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalM,
    rowGap: tokens.spacingVerticalXXS,
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    "& dd": { margin: 0 },
  },
});

/** A formula in symbols, with numbers and its result, and what the symbols mean. */
export function SumBlock({ sum }: { sum: SumView }) {
  const styles = useStyles();
  const shared = useShared();
  const [element, width] = useWidth<HTMLDivElement>(240);
  const [scrolls, setScrolls] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: measured whenever width or sum change
  useLayoutEffect(() => {
    const { current } = element;
    if (current) setScrolls(current.scrollWidth > current.clientWidth);
  }, [element, width, sum]);
  return (
    <div className={shared.tight}>
      {sum.title === "" ? null : <span className={shared.muted}>{sum.title}</span>}
      {/* Only a sum that can be scrolled takes the keyboard. */}
      <div
        ref={element}
        className={mergeClasses(shared.sum, styles.sum)}
        tabIndex={scrolls ? 0 : undefined}
      >
        {sum.lines.map((line, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a step may come to the number of another
          <p key={i} className={line.startsWith("=") ? styles.further : undefined}>
            <Subscripts text={line} />
          </p>
        ))}
      </div>
      {sum.legend.length > 0 ? (
        <Fold title="What the symbols mean">
          <dl className={styles.legend}>
            {sum.legend.map(({ symbol, meaning }) => (
              <Meaning key={symbol} symbol={symbol} meaning={meaning} />
            ))}
          </dl>
        </Fold>
      ) : null}
    </div>
  );
}

function Meaning({ symbol, meaning }: SumView["legend"][number]) {
  return (
    <>
      <dt>
        <Subscripts text={symbol} />
      </dt>
      <dd>{meaning}</dd>
    </>
  );
}

/** `Q_req` with its tail set low. */
export function Subscripts({ text }: { text: string }) {
  return text.split(/(_[\p{L}\d]+)/u).map((part, i) =>
    part.startsWith("_") && part.length > 1 ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one text
      <sub key={i}>{part.slice(1)}</sub>
    ) : (
      part
    ),
  );
}

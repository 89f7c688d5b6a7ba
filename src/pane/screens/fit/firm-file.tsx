import { Link, makeStyles } from "@fluentui/react-components";
import { firmFileOf } from "../../../job";
import { CopyText } from "../../parts/copy-text";
import { useShared } from "../../parts/styles";
import type { AnswerProps } from "./answer-props";

const useStyles = makeStyles({ link: { overflowWrap: "anywhere" } });

/** The answers of this workbook as a file that the command and other workbooks take. */
export function FirmFile({ job }: AnswerProps) {
  const styles = useStyles();
  const shared = useShared();
  const own = new Set(
    Object.values(job.fit.sheets).flatMap((fits) => fits.map(({ sheet }) => sheet)),
  );
  const text = firmFileOf(job.fit.choices, own);
  return (
    <section className={shared.panel} aria-label="Other workbooks">
      <p className={shared.text}>
        This workbook keeps your answers on its Fit sheet. A file of them serves the firm's others:
        choose it here, or give it to the command with --firm.
      </p>
      <div className={shared.line}>
        <Link
          className={styles.link}
          href={`data:application/json;charset=utf-8,${encodeURIComponent(text)}`}
          download="fanrow-firm.json"
        >
          Save for other workbooks
        </Link>
        <CopyText text={text} label="Copy" />
      </div>
    </section>
  );
}

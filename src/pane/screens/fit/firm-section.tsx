import { Button } from "@fluentui/react-components";
import { type FitChoice, withAnswer } from "../../../job";
import { count } from "../../model/announce";
import { firmGroups, sheetsLeft, wordQuestions } from "../../model/firm-view";
import { Fold } from "../../parts/fold";
import { useShared } from "../../parts/styles";
import type { AnswerProps } from "./answer-props";
import { BlockSection } from "./block-section";
import { FirmFile } from "./firm-file";

/** Sheets that a firm laid out itself, as they were read, with all that can be corrected. */
export function FirmSection(props: AnswerProps) {
  const shared = useShared();
  const { job, busy, onAnswers } = props;
  const { choices } = job.fit;
  const answer = (said: FitChoice) => onAnswers(withAnswer(choices, said));
  const left = sheetsLeft(job);
  return (
    <>
      {wordQuestions(job).map(({ field, word, asks, cells, meanings }) => (
        <section key={`${field} ${word}`} className={shared.panel} aria-label={asks}>
          <p className={shared.text}>
            {asks} <span className={shared.muted}>{count(cells, "cell")}</span>
          </p>
          <div className={shared.line}>
            {meanings.map((means) => (
              <Button
                key={means}
                size="small"
                disabledFocusable={busy}
                onClick={() => answer({ sheet: "", heading: "", field, word, means })}
              >
                {means}
              </Button>
            ))}
          </div>
        </section>
      ))}
      {firmGroups(job).map((group, at, all) => (
        <BlockSection
          key={group.key}
          group={group}
          isFirst={all.findIndex(({ block }) => block.sheet === group.block.sheet) === at}
          {...props}
        />
      ))}
      {job.firm && choices.length > 0 ? <FirmFile {...props} /> : null}
      {left.length > 0 ? (
        <Fold title={`${count(left.length, "sheet")} without fans`}>
          {left.map(({ sheet, because }) => (
            <div key={sheet} className={shared.spread}>
              <span>
                {sheet}
                {because === "" ? null : <p className={shared.muted}>{because}</p>}
              </span>
              <Button
                size="small"
                disabledFocusable={busy}
                aria-label={`Sheet ${sheet} holds fans`}
                onClick={() => answer({ sheet, heading: "", field: "fans" })}
              >
                It holds fans
              </Button>
            </div>
          ))}
        </Fold>
      ) : null}
    </>
  );
}

import type { FitChoice, Job } from "../../../job";

/** What a part of the Fit screen shows, and what it does with an answer. */
export interface AnswerProps {
  readonly job: Job;
  readonly busy: boolean;
  /** Keeps these answers in the workbook and reads it again. */
  readonly onAnswers: (answers: readonly FitChoice[]) => void;
}

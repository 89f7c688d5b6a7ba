/** Ways of judging: by the flow alone, or by the chance that it truly meets its rate. */
export const judgings = ["simple", "guarded"] as const;
export type Judging = (typeof judgings)[number];

/** The flows that a verdict may take. */
export const judgedFlows = ["measured", "actual", "standard", "without box"] as const;
export type JudgeBy = (typeof judgedFlows)[number];

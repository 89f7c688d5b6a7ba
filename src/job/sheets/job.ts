/** One setting of the Job sheet: its label in column A, its value in column B. */
export interface Setting {
  readonly key: string;
  readonly label: string;
  readonly words: readonly string[];
  readonly help: string;
}

export const jobTitle = "Job";

export const jobSettings: readonly Setting[] = [
  { key: "name", label: "Job name", words: ["job", "project"], help: "" },
  {
    key: "edition",
    label: "Edition",
    words: ["standard", "code", "rule"],
    help: "The edition whose rates apply, such as 62.2-2016 or IRC-2021",
  },
  {
    key: "method",
    label: "Dwelling rate by",
    words: ["method"],
    help: "equation or table, where the edition has both; blank for its usual one",
  },
  {
    key: "units",
    label: "Units",
    words: ["unit system"],
    help: "ip: in², Pa, cfm, ft². si: cm², Pa, L/s, m²",
  },
  {
    key: "low",
    label: "Lowest pressure (Pa)",
    words: ["lowest pressure", "min pressure"],
    help: "Below this the manometer's limit spoils the reading",
  },
  {
    key: "high",
    label: "Highest pressure (Pa)",
    words: ["highest pressure", "max pressure"],
    help: "Above this the box holds the fan back",
  },
  {
    key: "constant",
    label: "Flow constant",
    words: ["constant"],
    help: "For boxes that state none of their own",
  },
  {
    key: "interval",
    label: "Days between box checks",
    words: ["box check interval", "check interval"],
    help: "A box not checked within so many days before a reading is flagged",
  },
];

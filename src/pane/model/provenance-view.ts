import { codesExplained, codesText, type Provenance } from "../../job";
import { count } from "./announce";
import { markWords } from "./marks";

/** One thing that the results rest on. */
interface ProvenanceLine {
  readonly name: string;
  readonly value: string;
  /** Where it stands and how far that was traced; "" where there is nothing to say. */
  readonly note: string;
}

const notes: Readonly<Record<string, string>> = { ...markWords, stated: "stated in the job" };
const markOf = (mark: string) => notes[mark] ?? mark;

/** What the results rest on, line by line. */
export function provenanceView(provenance: Provenance): ProvenanceLine[] {
  const { version, edition, inForce, clauses, constants, window, judging, rows, codes } =
    provenance;
  return [
    { name: "Functions and checks", value: `version ${version}`, note: "" },
    {
      name: "Edition",
      value: `${edition?.title ?? "none named"}${inForce && `, in force from ${inForce}`}`,
      note: edition?.id ?? "",
    },
    ...clauses.map(({ work, clause, mark }) => ({
      name: "Rule",
      value: [work, clause].filter((part) => part !== "").join(", "),
      note: markWords[mark],
    })),
    ...constants.map(({ text, fans, mark }) => ({
      name: "Flow constant",
      value: `${text} (${count(fans, "fan")})`,
      note: markOf(mark),
    })),
    ...(window
      ? [
          {
            name: "Window of pressures",
            value: `${window.low} to ${window.high} Pa`,
            note: markOf(window.mark),
          },
        ]
      : []),
    { name: "Judged by", value: judging, note: "" },
    { name: "Rows", value: String(rows), note: "" },
    {
      name: "Codes of inputs, formulas, settings",
      value: codesText(codes),
      note: codesExplained,
    },
  ];
}

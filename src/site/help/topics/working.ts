import type { Topic } from "../topic";

export const working: readonly Topic[] = [
  {
    id: "WORKING",
    computes: [
      "Write it beside a result that a reader will ask about: give the name of the function and the same arguments, and the cell holds the sum as text: the formula in symbols, the same with the numbers, the result with its unit, and the source with how far it has been traced.",
      "Ranges give a text a row, as the function itself gives a result a row. What is not yet typed leaves the text blank.",
    ],
    result: "One text for each result of the function.",
    formulas: [],
    source: {
      work: "the formulas and rules of the function named",
      clause: "",
      mark: "by definition",
    },
    troubles: [
      { when: "The name is no function of ours.", args: ["AIRFLOW", 24, 4] },
      { when: "There are more values than the function takes.", args: ["ROUND_AREA", 4, 2] },
      { when: "A number was typed as text.", args: ["FLOW", 24, "4 Pa"] },
    ],
    related: ["FLOW", "ROOM_RATE", "VERDICT"],
  },
];

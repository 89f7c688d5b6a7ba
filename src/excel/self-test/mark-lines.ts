import type { Ground, Line } from "./line";

const ours = "=AND(TRUE,1=1)";
const foreign = "=$A1>5";

function add({ sheet }: Ground, address: string, formula: string): Excel.ConditionalFormat {
  const format = sheet.getRange(address).conditionalFormats.add("Custom");
  format.custom.rule.formula = formula;
  format.custom.format.fill.color = "#FFE699";
  return format;
}

/** The formulas of the rules on the sheet, in their order. */
async function rules({ book, sheet }: Ground): Promise<string[]> {
  const formats = sheet.getRange().conditionalFormats;
  formats.load("items/id,items/type");
  await book.sync();
  const custom = formats.items.filter(({ type }) => type === "Custom");
  for (const { custom: format } of custom) format.rule.load("formula");
  await book.sync();
  return custom.map(({ custom: format }) => format.rule.formula);
}

const count = (all: readonly string[]) =>
  `${all.filter((each) => each === ours).length} ours, ${all.filter((each) => each !== ours).length} other`;

/** Marks beside rules that someone else made. */
export const markLines: readonly Line[] = [
  {
    name: "a mark is put on",
    expected: "1 ours, 0 other",
    run: async (ground) => {
      add(ground, "A1:A3", ours);
      return count(await rules(ground));
    },
  },
  {
    name: "a mark is put on beside a rule of the user's",
    expected: "1 ours, 1 other",
    run: async (ground) => {
      add(ground, "A1:A3", foreign);
      add(ground, "A1:A3", ours);
      return count(await rules(ground));
    },
  },
  {
    name: "taking a mark off leaves the user's rules, doubled ones too",
    expected: "0 ours, 2 other",
    run: async (ground) => {
      add(ground, "A1:A3", foreign);
      add(ground, "B1:B3", foreign);
      add(ground, "A1:A3", ours).delete();
      return count(await rules(ground));
    },
  },
  {
    name: "two marks of several areas each",
    expected: "2 ours, 0 other",
    run: async (ground) => {
      for (const address of ["A1:A2,C1:C2", "B4,D4:D9"]) {
        const format = ground.sheet.getRanges(address).conditionalFormats.add("Custom");
        format.custom.rule.formula = ours;
      }
      return count(await rules(ground));
    },
  },
  {
    name: "a rule whose formula cannot be read is refused",
    expected: "InvalidArgument",
    run: async (ground) => {
      try {
        add(ground, "A1", "=SUM(((");
        await ground.book.sync();
        return "taken";
      } catch (thrown) {
        return String((thrown as { code?: unknown }).code);
      }
    },
  },
];

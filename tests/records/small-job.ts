import { toJobFile } from "../../src/command";
import { checkJob, type JobCheck } from "../../src/job";
import { type CellSpec, Workbook } from "../../src/workbook";

type Content = string | number | null;

/** 2026-11-25 as a serial number. */
export const today = 46_351;
const tested = 46_300;

function rowsOf(lines: readonly (readonly Content[])[]): CellSpec[][] {
  return lines.map((line) => line.map((value) => ({ value })));
}

export interface SmallJob {
  readonly settings?: Readonly<Record<string, Content>>;
  /** Rows of the Pairs sheet: openings, area, pressure, reference flow. */
  readonly pairs?: readonly (readonly [string, number, number, number])[];
  readonly accepted?: readonly (readonly Content[])[];
}

/** An invented job of two dwellings: the first short of its rate, the second with a fan out of range. */
export function smallJob({ settings = {}, pairs = [], accepted = [] }: SmallJob = {}): Workbook {
  const workbook = Workbook.create();
  const named = {
    "Job name": "Two homes & a box",
    Edition: "62.2-2016",
    Units: "ip",
    ...settings,
  };
  workbook.addSheet("Job", {
    rows: rowsOf([["Setting", "Value"], ...Object.entries(named)]),
  });
  workbook.addSheet("Dwellings", {
    rows: rowsOf([
      ["Dwelling", "Plan", "Floor area (ft²)", "Bedrooms"],
      ["Lot 1", "Elm", 1200, 2],
      ["Lot 2", "Elm", 900, 1],
      ["Lot 3", "Oak", 900, 1],
    ]),
  });
  workbook.addSheet("Boxes", {
    rows: rowsOf([
      ["Box", "Opening", "Shape", "Diameter or width (in)", "Area (in²)", "Constant", "Checked on"],
      ["Box 1", "A", "round", 5.528, 24, 1.07, tested - 20],
    ]),
  });
  workbook.addSheet("Fans", {
    rows: rowsOf([
      [
        "Dwelling",
        "Fan",
        "Room",
        "Room kind",
        "Duty",
        "Box",
        "Openings in use",
        "Open area (in²)",
        "Reading 1 (Pa)",
        "Reading 2 (Pa)",
        "Tester",
        "Date",
      ],
      [
        "Lot 1",
        "B1",
        "Bath",
        "bathroom",
        "continuous",
        "Box 1",
        "A",
        24,
        4.1,
        3.9,
        "T. Wren",
        tested,
      ],
      [
        "Lot 1",
        "K1",
        "Kitchen",
        "kitchen hood",
        "on demand",
        "Box 1",
        "A",
        24,
        4,
        4,
        "T. Wren",
        tested,
      ],
      [
        "Lot 2",
        "B1",
        "Bath",
        "bathroom",
        "continuous",
        "Box 1",
        "A",
        24,
        9.5,
        9.4,
        "M. Lark",
        tested + 2,
      ],
    ]),
  });
  if (pairs.length > 0) {
    workbook.addSheet("Pairs", {
      rows: rowsOf([
        [
          "Box",
          "Openings in use",
          "Open area (in²)",
          "Box pressure (Pa)",
          "Reference",
          "Reference flow (cfm)",
          "Tester",
          "Date",
        ],
        ...pairs.map(([opening, area, pressure, flow]) => [
          "Box 1",
          opening,
          area,
          pressure,
          "Hood 3",
          flow,
          "T. Wren",
          tested - 20,
        ]),
      ]),
    });
    workbook.addSheet("Instruments", {
      rows: rowsOf([
        ["Instrument", "Kind", "Limit in percent", "Calibrated on", "Certificate"],
        ["Hood 3", "reference", 2, tested - 100, "C-12"],
      ]),
    });
  }
  if (accepted.length > 0) workbook.addSheet("Accepted", { rows: rowsOf(accepted) });
  return workbook;
}

export function checked(workbook: Workbook): JobCheck {
  return checkJob(toJobFile(workbook), today);
}

import { finder, sourcesIn } from "../editions";
import type { Source } from "../formulas";
import { usualMeter } from "./constants";
import type { Instrument, InstrumentLimit } from "./instrument";

const from380 = (clause: string): Source => ({
  work: "ANSI/RESNET/ICC 380",
  clause: `section 6, ${clause}`,
  mark: "from memory",
});
/** What a code asks of a device that reads a ventilation flow. */
export const california = (clause: string) =>
  sourcesIn("California Reference Appendix RA3.7")(clause, "two sources", "ra37");
const fieldGuide = (clause: string) =>
  sourcesIn("NREL field test best practices")(clause, "read", "fieldGuide");
const fieldStudy = sourcesIn(
  "Stratton, Walker, Wray (LBNL), Measuring Residential Ventilation System Airflows, part 2",
)("abstract", "read", "fieldStudy");
const hoodStudy = sourcesIn(
  "Wray, Walker, Sherman (LBNL), Accuracy of Flow Hoods in Residential Applications, 2002",
)("as quoted", "read", "hoodStudy");
const practice = (clause: string): Source => ({
  work: "field practice",
  clause,
  mark: "common practice",
});

const shown: Source = {
  work: "definition of a flow",
  clause: "the instrument shows the flow itself",
  mark: "by definition",
};

/** Asked of whatever reads a ventilation flow. */
const anyFlow: InstrumentLimit = {
  what: "limit of any device that reads a ventilation flow",
  percent: 10,
  source: california("RA3.7.2.2"),
};

export const instruments: readonly Instrument[] = [
  {
    name: "manometer",
    words: ["gauge", "micromanometer", "box"],
    reads: "pressure, room minus box, Pa",
    exponent: 0.5,
    source: {
      work: "orifice equation",
      clause: "flow goes with the root of the pressure",
      mark: "by definition",
    },
    limits: [
      {
        what: "pressure limit",
        percent: usualMeter.percent,
        floorPressure: usualMeter.floor,
        source: from380("airflow resistance device"),
      },
      {
        what: "pressure limit",
        percent: 1,
        floorPressure: 0.2,
        source: california("RA3.7.2.1"),
      },
      anyFlow,
    ],
    procedure: [
      {
        what: "resolution",
        value: usualMeter.resolution,
        unit: "Pa",
        source: from380("airflow resistance device"),
      },
    ],
    cautions: [
      {
        words: "Exhaust only: air has to enter the box through the opening.",
        source: from380("airflow resistance device"),
      },
    ],
  },
  {
    name: "powered hood",
    words: ["powered flow hood", "zero pressure hood", "fan assisted hood"],
    reads: "flow, cfm or L/s",
    exponent: 1,
    constant: 1,
    source: shown,
    limits: [
      {
        what: "flow limit",
        percent: 5,
        floorFlow: { ip: 5 },
        source: from380("powered flow hood"),
      },
      anyFlow,
      {
        what: "error found in fifteen new homes",
        percent: 6,
        found: true,
        source: fieldStudy,
      },
    ],
    procedure: [
      {
        what: "pressure of the hood to the room, at most, either way",
        value: 0.1,
        unit: "Pa",
        source: from380("powered flow hood"),
      },
    ],
    cautions: [
      {
        words: "Its fan holds the grille at room pressure: read only when it does.",
        source: fieldGuide("powered flow hood"),
      },
    ],
  },
  {
    name: "passive hood",
    words: ["passive flow hood", "flow hood", "capture hood"],
    reads: "flow, cfm or L/s",
    exponent: 1,
    constant: 1,
    source: shown,
    limits: [
      {
        what: "flow limit",
        percent: 10,
        source: from380("passive flow hood"),
      },
      anyFlow,
      {
        what: "error in most cases",
        percent: 5,
        upToPercent: 10,
        found: true,
        source: fieldGuide("flow hood"),
      },
      {
        what: "error found in fifteen new homes",
        percent: 11,
        upToPercent: 25,
        found: true,
        source: fieldStudy,
      },
      {
        what: "errors possible in houses",
        percent: 20,
        upToPercent: 30,
        found: true,
        source: hoodStudy,
      },
    ],
    procedure: [],
    cautions: [
      {
        words:
          "Two public bodies disagree on its error: 5 to 10 % in one guide, 11 to 25 % in a field study. Take the limit that the job's reviewer accepts.",
        source: fieldStudy,
      },
      {
        words: "Its own resistance makes it read low, near a tee by much.",
        source: fieldGuide("powered flow hood"),
      },
      {
        words: "At high altitude its readings have to be adjusted.",
        source: fieldGuide("flow hood"),
      },
    ],
  },
  {
    name: "direct entry",
    words: ["direct", "flow typed in", "in-duct station"],
    reads: "flow, cfm or L/s",
    exponent: 1,
    constant: 1,
    source: shown,
    limits: [anyFlow],
    procedure: [],
    cautions: [
      {
        words: "Say in the note what gave the flow, and its limit.",
        source: practice("a number without its instrument cannot be reviewed"),
      },
    ],
  },
  {
    name: "timed bag",
    words: ["bag", "bag inflation", "timed bag inflation"],
    reads: "time to fill the bag, s",
    exponent: -1,
    source: { work: "definition of a flow", clause: "volume over time", mark: "by definition" },
    limits: [anyFlow],
    procedure: [
      {
        what: "repeats of the bag test",
        value: 3,
        unit: "repeats",
        source: from380("timed bag inflation"),
      },
    ],
    cautions: [
      {
        words: "Only where air leaves: at the outlet of the exhaust, or at a supply.",
        source: from380("timed bag inflation"),
      },
      {
        words: "Never leave a taped bag on a fan that runs on.",
        source: practice("recalled, no text read"),
      },
    ],
  },
  {
    name: "range device",
    words: ["range", "ring", "device with settings"],
    reads: "what the device shows at a setting",
    source: practice("constant and exponent from the device's record"),
    limits: [anyFlow],
    procedure: [],
    cautions: [
      {
        words: "Constant and exponent belong to one setting: change both with it.",
        source: practice("a device's record states them by setting"),
      },
    ],
  },
];

/** The kind of this name, or of a common other word for it. Throws with the known ones. */
export const findInstrument = finder<Instrument>(
  "instrument",
  instruments.map((each) => [each, [each.name, ...each.words]]),
  ({ name }) => name,
);

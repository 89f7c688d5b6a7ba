import type { Source } from "../../formulas";
import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import type { EfficacyRow, FanKind } from "../equipment";

type Row = readonly [fan: FanKind, least: number, from?: number, below?: number];

const efficacy = (rows: readonly Row[], source: (fan: FanKind) => Source) => ({
  rows: rows.map(
    ([fan, ip, from, below]): EfficacyRow => ({
      fan,
      ...(from ? { from } : {}),
      ...(below ? { below } : {}),
      least: { ip },
      source: source(fan),
    }),
  ),
});

const usual: readonly Row[] = [
  ["heat recovery", 1.2],
  ["range hood", 2.8],
];
const until2018: readonly Row[] = [
  ...usual,
  ["in-line", 2.8],
  ["bath or utility", 1.4, 10, 90],
  ["bath or utility", 2.8, 90],
];
const small: Row = ["bath or utility", 2.8, 0, 90];
const since2021: readonly Row[] = [...usual, ["in-line", 3.8], small, ["air handler", 1.2]];
const federal: readonly Row[] = [
  ["heat recovery", 1.2],
  ["in-line", 3.8],
  small,
  ["bath or utility", 3.5, 90],
];

const last = (rows: readonly Row[], ...more: Row[]): readonly Row[] => [
  ...rows.slice(0, -1),
  ...more,
  ...rows.slice(-1),
];

function iecc(year: 2015 | 2018 | 2021 | 2024, rows: readonly Row[], ...notes: string[]): Edition {
  const source = sourcesIn(`IECC ${year}`);
  const by = {
    2015: () => source("table R403.6.1, taken to be that of 2018"),
    2018: (fan: FanKind) =>
      fan === "heat recovery"
        ? source("table R403.6.1")
        : source("table R403.6.1, in the amended text of Washington", "read", "wac2018", "irc2018"),
    2021: () => source("table R403.6.2, as IRC N1103.6.2", "read", "irc2021"),
    2024: () => source("table R403.6.2, as IRC N1103.6.2", "read", "irc2024"),
  };
  return edition(`IECC-${year}`, `International Energy Conservation Code ${year}`, "ip", {
    aliases: [`IECC ${year}`],
    efficacy: efficacy(rows, by[year]),
    notes: ["Fans of the whole-house system only.", ...notes],
  });
}

export const energyConservation: readonly Edition[] = [
  iecc(2015, until2018),
  iecc(2018, until2018),
  iecc(
    2021,
    last(since2021, ["bath or utility", 3.5, 90]),
    "The flow is tested and reported; a hood with a duct of 6 in or more and one elbow at most is exempt.",
  ),
  iecc(
    2024,
    last(since2021, ["bath or utility", 3.5, 90, 200], ["bath or utility", 4, 200]),
    "The flow is tested by ANSI/RESNET/ICC 380 and reported; a hood with a duct of 6 in or more, 10 ft and two elbows at most is exempt.",
  ),
  edition("10-CFR-460", "Federal rule for manufactured homes, 10 CFR 460", "ip", {
    aliases: ["10 CFR 460.204"],
    efficacy: efficacy(federal, () =>
      sourcesIn("10 CFR 460")("460.204, table 1", "read", "cfr460"),
    ),
  }),
];

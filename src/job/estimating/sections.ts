import { fixed, shown } from "../../cells";
import { unitOf } from "../columns";
import type { Settings } from "../read";
import type { Estimate, Total } from "./estimate";
import type { UnfitDuct } from "./unfit-ducts";

/** A table of an estimate as it is printed, shown and written: the first `names` columns name a row. */
export interface EstimateSection {
  readonly key: "rates" | "fans" | "ducts" | "bring" | "totals" | "dwellings";
  readonly title: string;
  readonly columns: readonly {
    readonly title: string;
    /** Decimals of a number; undefined for a text. */
    readonly digits?: number;
  }[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** An amount of money, as it stands below others: 1,240.50. */
const amount = (value: number) =>
  value.toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 });

/** A cell as it is read: a number with the decimals of its column, a blank as nothing. */
export const sectionText = (cell: string | number | null | undefined, digits = 0): string =>
  typeof cell !== "number" ? (cell ?? "") : digits === 2 ? amount(cell) : fixed(cell, digits);

type Cell = string | number | null;

/** A column as it is told: a text names its row, a number has decimals and may be compared. */
type Told<Row> = readonly [
  title: string,
  cell: (row: Row) => string | number,
  digits?: number,
  isCompared?: boolean,
];

/** What many dwellings or one of them come to. */
const money: readonly Told<Total>[] = [
  ["Fans", ({ planned }) => planned, 0],
  ["Fans and ducts", ({ materials }) => materials, 2],
  ["Hours", ({ hours }) => hours, 1],
  ["Labour", ({ labour }) => labour, 2],
  ["Cost", ({ expense }) => expense, 2],
  ["Price", ({ price }) => price, 2, true],
];

/** The tables of an estimate; with another beside it, what that one has otherwise in columns of its own. */
export function estimateSections(
  estimate: Estimate,
  { system, edition }: Pick<Settings, "system" | "edition">,
  beside?: Estimate,
): EstimateSection[] {
  const [flow, distance] = [unitOf("flow", system), unitOf("distance", system)];
  const section = <Row>(
    key: EstimateSection["key"],
    title: string,
    rowsOf: (of: Estimate) => readonly Row[],
    columns: readonly Told<Row>[],
  ): EstimateSection => {
    const other = beside?.edition?.id ?? "";
    const compared = columns.filter(([, , , isCompared]) => beside && isCompared);
    const also = compared.map(([words, ...rest]) => [`${words}, ${other}`, ...rest] as const);
    return {
      ...{ key, title },
      columns: [...columns, ...also].map(([words, , digits]) =>
        digits === undefined ? { title: words } : { title: words, digits },
      ),
      rows: together(rowsOf(estimate), beside ? rowsOf(beside) : [], columns, compared),
    };
  };
  return [
    section(
      "rates",
      `Required rates${edition ? `, ${edition.title}` : ""}`,
      ({ rates, noneRequired }) => [...rates, ...noneRequired],
      [
        ["Room", ({ room }) => room],
        ["Runs", ({ duty }) => duty],
        ["Serves", ({ whole }) => (whole ? "the dwelling too" : "the room")],
        ["Rooms", ({ fans }) => fans, 0],
        [`Least (${flow})`, ({ least }) => orNone(least), 1, true],
        [`Most (${flow})`, ({ most }) => orNone(most), 1, true],
      ],
    ),
    section("fans", "Fans to buy", ({ fans }) => fans, [
      ["Fan", ({ item }) => item],
      [`Rated (${flow})`, ({ rated }) => rated, 0],
      ["Quantity", ({ quantity }) => quantity, 0, true],
      ["Cost of one", ({ cost }) => cost, 2],
      ["Cost", ({ all }) => all, 2, true],
    ]),
    section("ducts", "Ducts to buy", ({ ducts }) => ducts, [
      ["Duct", ({ item }) => item],
      ["Runs", ({ runs }) => runs, 0],
      ["Not allowed", ({ unfit }) => unfit, 0],
      [`Length (${distance})`, ({ quantity }) => quantity, 0],
      [`Cost of 1 ${distance}`, ({ cost }) => cost, 2],
      ["Cost", ({ all }) => all, 2],
    ]),
    section("bring", "Boxes and openings to bring", ({ openings }) => openings, [
      ["Box", ({ box }) => box],
      ["Openings", ({ openings }) => openings],
      ["Fans", ({ fans }) => fans, 0, true],
    ]),
    section("totals", "Totals by plan and by phase", ({ totals }) => totals, [
      ["Total by", ({ by }) => by],
      ["Name", ({ name }) => name],
      ["Dwellings", ({ dwellings }) => dwellings, 0],
      ...money,
    ]),
    section("dwellings", "Dwellings", ({ dwellings }) => dwellings, [
      ["Dwelling", ({ name }) => name],
      [`Required (${flow})`, ({ required }) => required, 1, true],
      ...money,
    ]),
  ];
}

const orNone = (rate: number) => (Number.isFinite(rate) ? rate : "none required");

/** The rows of both, each name once; what only the other has stands at the end. */
function together<Row>(
  own: readonly Row[],
  other: readonly Row[],
  columns: readonly Told<Row>[],
  compared: readonly Told<Row>[],
): Cell[][] {
  const names = columns.filter(([, , digits]) => digits === undefined);
  const keyOf = (row: Row) => names.map(([, cell]) => cell(row)).join("\u0000");
  const others = new Map(other.map((row) => [keyOf(row), row]));
  const mine = new Set(own.map(keyOf));
  const cellsOf = (told: readonly Told<Row>[], row: Row | undefined, isNamed = false) =>
    told.map(([, cell, digits]): Cell => {
      const value = row === undefined || (isNamed && digits !== undefined) ? null : cell(row);
      return typeof value === "number" && !Number.isFinite(value) ? null : value;
    });
  return [
    ...own.map((row) => [...cellsOf(columns, row), ...cellsOf(compared, others.get(keyOf(row)))]),
    ...other
      .filter((row) => !mine.has(keyOf(row)))
      .map((row) => [...cellsOf(columns, row, true), ...cellsOf(compared, row)]),
  ];
}

/** What an estimate leaves open, and how its price comes about, in sentences. */
export function estimateNotes(
  { noneRequired, unmet, unfit, totals }: Estimate,
  settings: Pick<
    Settings,
    "system" | "margin" | "hoursFan" | "hoursDwelling" | "hourRate" | "priceMargin"
  >,
  beside?: Estimate,
): string[] {
  const none = noneRequired.map(({ room, fans }) => `${fans} of kind ${room}`).join(", ");
  const { hoursFan, hoursDwelling, hourRate, priceMargin } = settings;
  const all = totals.find(({ by }) => by === "all");
  const unpriced = all?.unpriced ?? 0;
  const missing = [
    ...(hoursFan === undefined ? ["the hours for a fan"] : []),
    ...(hoursDwelling === undefined ? ["the hours for a dwelling"] : []),
    ...(hourRate === undefined ? ["the cost of an hour"] : []),
    ...(priceMargin === undefined ? ["the margin on the price"] : []),
  ];
  return [
    `Fans are bought ${shown(settings.margin)} % above the required rate.`,
    ...(missing.length === 0
      ? [
          `Hours: ${shown(hoursFan as number)} for a fan and ${shown(hoursDwelling as number)} for a dwelling, at ${shown(hourRate as number)} an hour. Price = cost / (1 − ${shown(priceMargin as number)} %).`,
        ]
      : [`The Job sheet does not say ${missing.join(", ")}: what follows from it is left blank.`]),
    ...(none === "" ? [] : [`No rate is required of rooms (${none}): no fan is bought for them.`]),
    ...unmet.map(unmetText),
    ...(beside?.unmet ?? []).map(
      (each) =>
        `Under ${beside?.edition?.id}: ${unmetText(each)} They are not counted there, and a price that would hold them is left blank; add a fan large enough to the catalogue.`,
    ),
    ...unfit.map((duct) => unfitText(duct, settings.system)),
    ...(!(unpriced > 0)
      ? []
      : [
          `${unpriced} fans and ducts have no cost in the catalogue: totals that hold them are left blank.`,
        ]),
    ...(all && Number.isFinite(all.price - all.expense)
      ? [`Margin in all: ${amount(all.price - all.expense)}.`]
      : []),
  ];
}

const unmetText = ({ said, fans }: Estimate["unmet"][number]) =>
  `${fans} fans cannot be chosen: ${said}.`;

/** What of the ducts to buy would be rejected, and what to draw instead. */
function unfitText(
  { item, buy, length, allowed, runs, instead }: UnfitDuct,
  system: Settings["system"],
): string {
  const [flow, distance] = [unitOf("flow", system), unitOf("distance", system)];
  const why = Number.isFinite(allowed)
    ? `up to ${shown(length)} ${distance} drawn where ${shown(allowed)} ${distance} may be`
    : "no length of it may be";
  const mend = instead
    ? `${instead} would do; change it in the schedule`
    : "no duct of the table would do: shorten it, or measure the installed flow";
  return `${runs} of ${item} do not pass for fans of ${shown(buy)} ${flow}: ${why}; ${mend}.`;
}

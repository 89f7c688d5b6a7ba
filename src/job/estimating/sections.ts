import { fixed, shown } from "../../cells";
import { unitOf } from "../columns";
import type { Settings } from "../read";
import type { Estimate, PlannedRate, Total } from "./estimate";
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

type Cells = (string | number | null)[];
type Column = readonly [title: string, digits?: number];

const orNull = (value: number) => (Number.isFinite(value) ? value : null);

/** The tables of an estimate; with another beside it, what that one has otherwise in columns of its own. */
export function estimateSections(
  estimate: Estimate,
  { system, edition }: Pick<Settings, "system" | "edition">,
  beside?: Estimate,
): EstimateSection[] {
  const [flow, distance] = [unitOf("flow", system), unitOf("distance", system)];
  const other = beside?.edition?.id ?? "";
  const section = (
    key: EstimateSection["key"],
    title: string,
    names: number,
    columns: readonly Column[],
    rowsOf: (of: Estimate) => Cells[],
    compared: readonly number[],
  ): EstimateSection => {
    const own = rowsOf(estimate);
    const also = compared.map((at) => columns[at] as Column);
    const shownColumns = [
      ...columns,
      ...(beside ? also.map(([words, digits]) => [`${words}, ${other}`, digits] as Column) : []),
    ];
    return {
      ...{ key, title },
      columns: shownColumns.map(([words, digits]) =>
        digits === undefined ? { title: words } : { title: words, digits },
      ),
      rows: beside ? together(own, rowsOf(beside), names, columns.length, compared) : own,
    };
  };
  return [
    section(
      "rates",
      `Required rates${edition ? `, ${edition.title}` : ""}`,
      3,
      [["Room"], ["Runs"], ["Serves"], ["Rooms", 0], [`Least (${flow})`, 1], [`Most (${flow})`, 1]],
      ({ rates, noneRequired }) => [...rates, ...noneRequired].map(rateCells),
      [4, 5],
    ),
    section(
      "fans",
      "Fans to buy",
      1,
      [["Fan"], [`Rated (${flow})`, 0], ["Quantity", 0], ["Cost of one", 2], ["Cost", 2]],
      ({ fans }) =>
        fans.map(({ item, rated, quantity, cost, all }) => [
          ...[item, rated, quantity, orNull(cost), orNull(all)],
        ]),
      [2, 4],
    ),
    section(
      "ducts",
      "Ducts to buy",
      1,
      [
        ["Duct"],
        ["Runs", 0],
        ["Not allowed", 0],
        [`Length (${distance})`, 0],
        [`Cost of 1 ${distance}`, 2],
        ["Cost", 2],
      ],
      ({ ducts }) =>
        ducts.map(({ item, runs, unfit, quantity, cost, all }) => [
          ...[item, runs, unfit, quantity, orNull(cost), orNull(all)],
        ]),
      [],
    ),
    section(
      "bring",
      "Boxes and openings to bring",
      2,
      [["Box"], ["Openings"], ["Fans", 0]],
      ({ openings }) => openings.map(({ box, openings: set, fans }) => [box, set, fans]),
      [2],
    ),
    section(
      "totals",
      "Totals by plan and by phase",
      2,
      [
        ["Total by"],
        ["Name"],
        ["Dwellings", 0],
        ["Fans", 0],
        ["Fans and ducts", 2],
        ["Hours", 1],
        ["Labour", 2],
        ["Cost", 2],
        ["Price", 2],
      ],
      ({ totals }) =>
        totals.map((total) => [total.by, total.name, total.dwellings, ...money(total)]),
      [8],
    ),
    section(
      "dwellings",
      "Dwellings",
      1,
      [
        ["Dwelling"],
        [`Required (${flow})`, 1],
        ["Fans", 0],
        ["Fans and ducts", 2],
        ["Hours", 1],
        ["Labour", 2],
        ["Cost", 2],
        ["Price", 2],
      ],
      ({ dwellings }) =>
        dwellings.map((total) => [total.name, orNull(total.required), ...money(total)]),
      [1, 7],
    ),
  ];
}

function rateCells({ room, duty, whole, fans, least, most }: PlannedRate): Cells {
  const serves = whole ? "the dwelling too" : "the room";
  const rate = (value: number) => orNull(value) ?? "none required";
  return [room, duty, serves, fans, rate(least), rate(most)];
}

function money({ planned, materials, hours, labour, expense, price }: Total): Cells {
  return [planned, ...[materials, hours, labour, expense, price].map(orNull)];
}

/** The rows of both, each name once; what only the other has stands at the end. */
function together(
  own: readonly Cells[],
  other: readonly Cells[],
  names: number,
  width: number,
  compared: readonly number[],
): Cells[] {
  const keyOf = (row: Cells) => row.slice(0, names).join("\u0000");
  const others = new Map(other.map((row) => [keyOf(row), row] as const));
  const mine = new Set(own.map(keyOf));
  const beside = (row: Cells | undefined) => compared.map((at) => row?.[at] ?? null);
  return [
    ...own.map((row) => [...row, ...beside(others.get(keyOf(row)))]),
    ...other
      .filter((row) => !mine.has(keyOf(row)))
      .map((row) => [
        ...row.slice(0, names),
        ...Array<null>(width - names).fill(null),
        ...beside(row),
      ]),
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
        `Under ${beside?.edition?.id}: ${unmetText(each)} Its totals leave these fans out; add a fan large enough to the catalogue.`,
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

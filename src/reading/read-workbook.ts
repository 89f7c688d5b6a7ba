import { SheetBlock } from "./blocks/block";
import { enoughForFans } from "./blocks/judge";
import { type Listed, type Listing, listFans } from "./blocks/listing";
import { meansOf } from "./blocks/means";
import { type PoolBlock, readPool } from "./blocks/read-pool";
import { tellerOf } from "./blocks/told";
import type { Cells } from "./cells/cells";
import { Book } from "./formulas/book";
import { learnHabits } from "./habits/learn";
import { gatherStated } from "./habits/stated";
import type { ReadWorkbook } from "./host";
import { findLots } from "./lots";
import { notReadOf } from "./not-read";
import { findOpenings } from "./openings";
import { cutCards } from "./tables/cards";
import { findSections } from "./tables/find";
import { labelsOf } from "./tables/labels";
import { type Pool, poolSections } from "./tables/section";
import { plain } from "./text/plain";
import type { Answers, Layout, LotList, Meaning, OpeningEntry, WorkbookReading } from "./types";

/** A sheet whose law is as sure as this is not tried the other way round. */
const enoughAlone = 5.5;
/** Sheets longer than this are not tried the other way round. */
const longestTurned = 600;

/**
 * Reads a workbook of any layout: which cells hold readings of exhaust fans, what each is and why,
 * and what the sheets keep to of their own accord. Nothing is taken for a reading of fans where too
 * little speaks for it; `answers` of the user outrank everything.
 */
export function readWorkbook(
  workbook: ReadWorkbook,
  { choices, meanings }: Answers = { choices: [], meanings: [] },
): WorkbookReading {
  const book = new Book(workbook);
  const lots = workbook.sheets.flatMap((grid) => findLots(grid) ?? []);
  const sheets = workbook.sheets
    .filter(({ name }) => !lots.some(({ sheet }) => sheet === name))
    .flatMap((grid) => book.cells(grid.name) ?? []);
  const straight = sheets.flatMap((cells) => findSections(cells, book).flatMap(cutCards));
  const openings = findOpenings(straight, sheets);
  const names = new Set(openings.map(({ name }) => plain(name)));
  const read = (pools: readonly Pool[]) =>
    pools.flatMap((pool) => readPool(pool, book, choices, titlesOf(pool), names));
  const upright = read(poolSections(straight)).map(listed);
  const sound = upright.filter(isSound);
  const lawful = new Set(
    sound
      .filter(({ block }) => block.part.core && block.verdict.score >= enoughAlone)
      .flatMap(({ listings }) => listings.map(({ cells }) => cells.grid.name)),
  );
  const toTurn = sheets.filter(
    (cells) =>
      !lawful.has(cells.grid.name) &&
      cells.rows <= longestTurned &&
      cells.rows > 2 &&
      // A list of openings is none of fans, whichever way it is turned.
      openings.filter(({ place }) => place.sheet === cells.grid.name).length <
        (cells.rows - 1) * 0.6,
  );
  const turned = read(
    poolSections(toTurn.flatMap((cells) => findSections(cells.turn(), book).flatMap(cutCards))),
  ).map(listed);
  const chosen = bestWay(sheets, sound, turned.filter(isSound));
  const blocks = toBlocks(chosen, sheets, book, openings, meanings);
  const notRead = notReadOf(upright, blocks);
  const readings = blocks.reduce((sum, block) => sum + block.readings, 0);
  return {
    noFans: readings === 0,
    because:
      readings === 0
        ? (lotsInWords(lots) ?? whyNone(upright))
        : `${readings} readings in ${new Set(blocks.map(({ sheet }) => sheet)).size} sheets`,
    blocks,
    openings,
    notRead,
    lots,
  };
}

function lotsInWords(lists: readonly LotList[]): string | undefined {
  const homes = lists.flatMap(({ lots }) => lots).filter(({ name }) => name !== "").length;
  if (lists.length === 0) return undefined;
  const what = homes > 0 ? `a list of ${homes} lots` : "a list of plans";
  return `${what}, no readings of fans: an estimate can be made of it`;
}

function listed(block: PoolBlock): Listed {
  return { block, listings: listFans(block) };
}

function isSound({ block }: Listed): boolean {
  return block.verdict.score >= enoughForFans;
}

/** Titles over a table, and the name of its sheet. */
function titlesOf(pool: Pool): string[] {
  const titles = new Set<string>();
  for (const { cells, from } of pool.sections.slice(0, 20)) {
    titles.add(cells.grid.name);
    const upright = cells.turned ? cells.turn() : cells;
    const last = cells.turned ? 3 : Math.max(0, from);
    for (let row = 0; row < Math.min(last, 12, upright.rows); row++)
      for (let col = 0; col < Math.min(upright.cols, 12); col++) {
        const text = upright.text(row, col);
        if (text.length > 3) titles.add(text);
      }
  }
  return [...titles];
}

/** For each sheet the way of reading it that finds more readings with more said of each. */
function bestWay(
  sheets: readonly Cells[],
  upright: readonly Listed[],
  turned: readonly Listed[],
): { block: PoolBlock; listing: Listing }[] {
  const weigh = (found: readonly Listed[], name: string) =>
    found.flatMap(({ block, listings }) =>
      listings
        .filter(({ cells }) => cells.grid.name === name)
        .map((listing) => ({ block, listing })),
    );
  return sheets.flatMap(({ grid }) => {
    const [a, b] = [weigh(upright, grid.name), weigh(turned, grid.name)];
    const law = (found: typeof a) =>
      found.some(({ block }) => block.part.core && block.verdict.score >= enoughAlone);
    // A law counts before any number of readings without one.
    if (law(a) !== law(b)) return law(a) ? a : b;
    return worth(b) > worth(a) * 1.1 ? b : a;
  });
}

function worth(found: readonly { block: PoolBlock; listing: Listing }[]): number {
  return found.reduce((sum, { block, listing }) => {
    const readings = listing.read.reduce((count, read) => count + read, 0);
    const known = [...block.given].reduce(
      (all, [role, line]) => all + 1 + Math.min(7, Math.max(0, block.ledger.weight(line, role))),
      0,
    );
    return sum + readings * known;
  }, 0);
}

function toBlocks(
  chosen: readonly { block: PoolBlock; listing: Listing }[],
  sheets: readonly Cells[],
  book: Book,
  openings: readonly OpeningEntry[],
  meanings: readonly Meaning[],
): SheetBlock[] {
  const tables = new Map<string, (row: number) => boolean>();
  const many = new Set(chosen.map(({ listing }) => listing.cells.grid.name)).size > 1;
  for (const cells of sheets) {
    const rows = new Set<number>();
    for (const { listing } of chosen)
      if (listing.cells.grid === cells.grid && !listing.cells.turned)
        for (const row of [...listing.rows, ...listing.sections.flatMap(({ band }) => band)])
          rows.add(row);
    tables.set(cells.grid.name, (row) => rows.has(row));
  }
  const stated = gatherStated(sheets);
  const isAlone = (block: PoolBlock) =>
    !chosen.some(
      ({ block: other }) =>
        other !== block && other.pool === block.pool && !(other.part.retest || block.part.retest),
    );
  const blocks = chosen.map(({ block, listing }) => {
    const { cells } = listing;
    return new SheetBlock(
      block,
      listing,
      layoutOf(block, listing, isAlone(block)),
      labelsOf(cells.turned ? cells.turn() : cells, tables.get(cells.grid.name)!),
    );
  });
  blocks.forEach((block, at) => {
    block.told = tellerOf(block, book, many);
    block.means = meansOf(block);
    block.habits = learnHabits(block, stated, book, openings, meanings);
    if (block.from.part.retest) {
      const first = blocks.findIndex(
        (other, place) =>
          place < at &&
          other.sheet === block.sheet &&
          other.from.pool === block.from.pool &&
          !other.from.part.retest,
      );
      if (first >= 0) block.retestOf = first;
    }
  });
  return blocks;
}

function layoutOf(block: PoolBlock, listing: Listing, isAlone: boolean): Layout {
  if (block.part.retest) return "retests";
  if (
    listing.shifts.some((shift) => shift !== 0) ||
    (listing.sections.length > 2 && listing.rows.length / listing.sections.length < 12)
  )
    return "cards";
  const isBeside = block.part.shared.length > 0 && !isAlone;
  if (isBeside && block.part.room) return "fans side by side";
  if (listing.cells.turned) return "fans in columns";
  if (isBeside) return "fans side by side";
  return listing.groups.some((row) => row >= 0) && !block.given.has("dwelling")
    ? "grouped under lines"
    : "a row a fan";
}

function whyNone(upright: readonly Listed[]): string {
  const nearest = [...upright].sort((a, b) => b.block.verdict.score - a.block.verdict.score)[0];
  const against = nearest?.block.verdict.against[0];
  return `no readings of exhaust fans${against ? `: ${against}` : ""}`;
}

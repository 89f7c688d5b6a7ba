import type { LotList } from "../../reading";
import { conversionFactor } from "../../units";
import { layouts, type SheetKind, unitOf } from "../columns";
import { fitJob, type JobFit } from "../fit";
import type { JobFile } from "../grid";
import { rowBlock } from "./block";
import { BoxList } from "./box-list";
import { effective } from "./effective";
import { FanRows } from "./fan-rows";
import { FirmSheets, isOwnForm, withoutFans, withoutOwnSheets } from "./firm";
import { InstrumentList } from "./instrument-list";
import { answersOf } from "./roles";
import { type SecondSheet, secondSheets } from "./second-sheets";
import { readSettings, type Settings } from "./settings";
import { Table } from "./table";

/** A job workbook, read: settings, tables and the fan rows with what follows from them. */
export interface Job {
  readonly file: JobFile;
  readonly fit: JobFit;
  readonly settings: Settings;
  readonly tables: Readonly<Partial<Record<SheetKind, Table>>>;
  readonly boxes: BoxList | undefined;
  readonly instruments: InstrumentList | undefined;
  readonly fans: FanRows | undefined;
  /** A firm's own sheets, as they were read; undefined where the sheets of fans are ours. */
  readonly firm: FirmSheets | undefined;
  /** Sheets that list the fans of an earlier one again; ours are left out. */
  readonly second: readonly SecondSheet[];
  /** Lists of lots or plans to be built, of which an estimate can be made. */
  readonly lots: readonly LotList[];
  /** Why the workbook holds no fans, in one line; "" where it holds some. */
  readonly noFans: string;
}

export function readJob(file: JobFile): Job {
  const found = fitJob(file);
  const isOurs = found.sheets.fans?.some(isOwnForm) === true;
  const reading = isOurs
    ? undefined
    : file.recognise?.(withoutOwnSheets(file, found), answersOf(found));
  const whole = reading && !reading.noFans ? new FirmSheets(reading) : undefined;
  let second: readonly SecondSheet[] = whole ? secondSheets(whole.table().blocks) : [];
  const firm = whole && second.length > 0 ? whole.without(second.map(({ name }) => name)) : whole;
  const fit = isOurs ? found : withoutFans(found, firm, reading?.lots);
  const stated = firm ? firm.settings(readSettings(file, fit)) : readSettings(file, fit);
  const tables: Partial<Record<SheetKind, Table>> = {};
  for (const layout of layouts) {
    const all = (fit.sheets[layout.kind] ?? []).flatMap((sheetFit) => {
      const grid = file.sheets.find((sheet) => sheet.name === sheetFit.sheet);
      return grid ? [rowBlock(grid, sheetFit, layout)] : [];
    });
    if (layout.kind === "fans" && !firm) second = secondSheets(all);
    const blocks = all.filter((block) => second.every((each) => each.block !== block));
    if (blocks.length > 0) tables[layout.kind] = new Table(blocks, layout, stated.system);
  }
  if (firm) tables.fans = firm.table();
  const settings = effective(stated, tables, fit);
  const boxes = tables.boxes && new BoxList(tables.boxes, stated);
  const instruments = tables.instruments && new InstrumentList(tables.instruments);
  const fans =
    tables.fans && new FanRows(tables.fans, settings, boxes, instruments, firm, tables.dwellings);
  const noFans = tables.fans
    ? ""
    : (reading?.because ?? "no sheet with a row a fan was recognised");
  const lots = reading?.lots ?? [];
  return { file, fit, settings, tables, boxes, instruments, fans, firm, second, lots, noFans };
}

/** The unit in which flows are told, that of a firm's own sheets, and how many of it one of the job's is. */
export function flowsOf({ firm, settings }: Job): { unit: string; factor: number } {
  const own = unitOf("flow", settings.system);
  const unit = firm?.flowUnit ?? own;
  return { unit, factor: conversionFactor(own, unit) };
}

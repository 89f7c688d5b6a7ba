import { columns } from "../../algebra";
import { grouped, InputError, kept } from "../../cells";
import {
  type Duty,
  type Edition,
  findCooking,
  findDuty,
  findRoom,
  type NumberKind,
  type RoomKind,
  type RoomRule,
} from "../../editions";
import { flowFromPressure } from "../../formulas";
import {
  areaOf,
  deviceFlow,
  NoneAsked,
  openingsNamed,
  type RequiredRate,
  type RoomFacts,
  rangeStatusColumn,
  readYesNo,
  roomRate,
  roomRule,
} from "../../rules";
import { fansLayout } from "../columns";
import { plainName } from "../fit";
import { meanOf } from "../mean";
import type { BoxList } from "./box-list";
import { constantInUse } from "./constant-in-use";
import type { FirmSheets } from "./firm";
import type { InstrumentList } from "./instrument-list";
import { attempt, type Maybe, valueIn, valueOrThrow } from "./maybe";
import type { Settings } from "./settings";
import type { Table } from "./table";

/** The fields that a room's rate goes by. */
const asked = ["roomKind", "duty", "volume", "enclosed", "cooking", "window", "capture"];

const sameFan = ["dwelling", "tag", "speed", "direction"];
const supplies = fansLayout.fields.find(({ key }) => key === "direction")?.reads as (
  text: string,
) => string;

const orUnknown = (pressure: number) => (pressure === 0 ? Number.NaN : pressure);

/** The fan rows with what follows from them, recomputed from each row's own cells. */
export class FanRows {
  /** Pressure the flow rests on: the pressure cell, or the mean of the readings. */
  readonly pressure: Float64Array;
  readonly constant: Float64Array;
  readonly area: Float64Array;
  /** constant × area × √pressure; NaN where one of them is missing or the pressure negative. */
  readonly flow: Float64Array;
  readonly status: readonly ReturnType<typeof rangeStatusColumn>[number][];
  readonly readingKeys: readonly string[];
  /** Readings of another instrument than the box. */
  readonly deviceKeys: readonly string[];
  private readonly rowRates: Maybe<RequiredRate>[] = [];
  private readonly rates = new Map<string, Maybe<RequiredRate>>();
  private floors: ReadonlyMap<string, number> | undefined;
  private readonly areas = new Map<string, Maybe<number>>();

  constructor(
    readonly table: Table,
    readonly settings: Settings,
    readonly boxes: BoxList | undefined,
    readonly instruments?: InstrumentList,
    readonly firm?: FirmSheets,
    private readonly dwellings?: Table,
  ) {
    const { length } = table;
    this.readingKeys = ["reading1", "reading2", "reading3"].filter((key) => table.has(key));
    this.deviceKeys = ["device1", "device2", "device3"].filter((key) => table.has(key));
    this.area = Float64Array.from({ length }, (_, i) => this.areaInUse(i));
    this.constant = Float64Array.from({ length }, (_, i) => this.constantInUse(i));
    this.pressure = Float64Array.from({ length }, (_, i) => this.pressureInUse(i));
    this.flow = columns(
      flowFromPressure,
      // A form's 0 Pa is no flow of 0, nor is it one in its cell.
      { K: this.constant, A: this.area, P: firm ? this.pressure : this.pressure.map(orUnknown) },
      length,
    );
    if (table.has("instrument"))
      for (let i = 0; i < length; i++)
        if (this.isByInstrument(i)) this.flow[i] = this.flowByInstrument(i);
    if (firm)
      for (let i = 0; i < length; i++)
        if (Number.isNaN(this.constant[i]) || !firm.hasPressure(i))
          this.flow[i] = table.number("flow", i);
    this.status = rangeStatusColumn(this.pressure, settings.low, settings.high, length);
  }

  get length(): number {
    return this.table.length;
  }

  /** "Lot 07, B1", "Lot 07, B1 (boost, visit 2)": how a finding names a fan. */
  label(i: number): string {
    const parts = ["dwelling", "tag"].map((key) => this.table.text(key, i));
    if (!parts[1]) parts[1] = this.table.text("room", i);
    const which = this.which(i);
    return `${parts.filter((part) => part !== "").join(", ")}${which === "" ? "" : ` (${which})`}`;
  }

  /** Which of the readings of its fan a row is, in words; "" for the only one of most. */
  which(i: number): string {
    const visit = this.visit(i);
    const direction = this.isSupply(i) ? "supply" : "";
    const again = this.firm?.kindOfTest(i) ?? "";
    const words = [
      again,
      direction,
      this.table.text("speed", i),
      visit > 1 ? `visit ${visit}` : "",
    ];
    return words.filter((word) => word !== "").join(", ");
  }

  /** The numbers typed as readings in a row. */
  readings(i: number): number[] {
    return this.readingKeys
      .map((key) => this.table.number(key, i))
      .filter((value) => !Number.isNaN(value));
  }

  /** The numbers typed as readings of another instrument. */
  deviceReadings(i: number): number[] {
    return this.deviceKeys
      .map((key) => this.table.number(key, i))
      .filter((value) => !Number.isNaN(value));
  }

  /** Whether the row was measured with another instrument than the box. */
  isByInstrument(i: number): boolean {
    return this.table.has("instrument") && this.table.text("instrument", i) !== "";
  }

  /** Whether the row says that the room has no fan, so that nothing is to be measured. */
  isAbsent(i: number): boolean {
    return this.table.text("tag", i).toLowerCase() === "none";
  }

  /** Whether the row is of a terminal that supplies air. */
  isSupply(i: number): boolean {
    return this.table.has("direction") && supplies(this.table.text("direction", i)) === "supply";
  }

  /** Which reading of its fan a row is: the first, or one after it was mended or found wanting. */
  visit(i: number): number {
    return Math.max(1, this.table.number("visit", i) || 1);
  }

  /** The rows of each fan that was read more than once, in the order of its visits. */
  get histories(): readonly (readonly number[])[] {
    if (!this.table.has("visit")) return [];
    return [...grouped(Array(this.length).keys(), (i) => this.fanKey(i)).values()]
      .filter((rows) => rows.length > 1)
      .map((rows) => rows.sort((a, b) => this.visit(a) - this.visit(b)));
  }

  /** By what the rows of one fan are one: those of its visits at one speed and one terminal. */
  fanKey(i: number): string {
    return sameFan.map((key) => plainName(this.table.text(key, i))).join("\u0000");
  }

  /** Whether anything was measured in the row. */
  isMeasured(i: number): boolean {
    if (this.firm && !this.firm.hasPressure(i)) return !Number.isNaN(this.table.number("flow", i));
    return this.isByInstrument(i)
      ? this.deviceReadings(i).length > 0
      : !Number.isNaN(this.pressure[i]);
  }

  /** Whether a text stands where the reading belongs. */
  isTyped(i: number): boolean {
    return this.table.gap(this.typedPressure(i), i) === "text";
  }

  private flowByInstrument(i: number): number {
    const instrument = this.instruments?.find(this.table.text("instrument", i));
    const readings = this.deviceReadings(i);
    if (!instrument || readings.length === 0) return Number.NaN;
    return deviceFlow(meanOf(readings), instrument.constant, instrument.exponent);
  }

  /** The field a person types the pressure into: the first reading, or the pressure itself. */
  typedPressure(i: number): string {
    if (this.firm) return this.firm.hasPressure(i) ? "pressure" : "flow";
    const typed = this.readingKeys[0];
    if (!typed) return "pressure";
    const byFormula = this.table.hasFormula("pressure", i);
    return byFormula || !this.table.has("pressure") || this.readings(i).length > 0
      ? typed
      : "pressure";
  }

  /** The area of the openings named, from the Boxes sheet. */
  areaFromBoxes(i: number): Maybe<number> {
    const box = this.table.text("box", i);
    const label = this.table.text("openings", i);
    const key = `${box}\u0000${label}`;
    return kept(this.areas, key, () =>
      attempt(() => {
        const openings = this.boxes?.openings(box);
        if (!openings) throw new InputError(`unknown box "${box}"`);
        return areaOf(openingsNamed(label, openings));
      }),
    );
  }

  room(i: number): Maybe<RoomKind> {
    return attempt(() => findRoom(this.table.text("roomKind", i)));
  }

  duty(i: number): Maybe<Duty> {
    return attempt(() => findDuty(this.table.text("duty", i)));
  }

  /** The rate that the job's edition asks of the row's room. */
  required(i: number): Maybe<RequiredRate> {
    this.rowRates[i] ??= this.findRate(i);
    return this.rowRates[i];
  }

  private findRate(i: number): Maybe<RequiredRate> {
    if (this.isSupply(i)) return attempt(() => this.rateUnder(this.settings.edition as Edition, i));
    const key = [...asked.map((each) => this.table.text(each, i)), this.floorArea(i)].join(
      "\u0000",
    );
    return kept(this.rates, key, () =>
      attempt(() => {
        const { edition } = this.settings;
        if (!edition) throw new InputError("no edition");
        return this.rateUnder(edition, i);
      }),
    );
  }

  /** The rate that an edition asks of the row's room. Throws an InputError where there is none. */
  rateUnder(edition: Edition, i: number, facts: RoomFacts = this.roomFacts(i)): RequiredRate {
    if (this.isSupply(i)) throw new NoneAsked("a supply terminal has no exhaust rate to meet");
    const [room, duty] = [this.room(i), this.duty(i)].map(valueOrThrow) as [RoomKind, Duty];
    return roomRate(edition, room, duty, this.settings.system, facts);
  }

  /** The rule of an edition that holds for the row's room; undefined where none does. */
  ruleUnder(edition: Edition, i: number): RoomRule | undefined {
    const rule = () =>
      roomRule(edition, valueOrThrow(this.room(i)), valueOrThrow(this.duty(i)), this.roomFacts(i));
    return valueIn(attempt(rule));
  }

  /** What the rate that the row is judged by is a number of; undefined where it has none. */
  kindOfRate(i: number): NumberKind | undefined {
    const { edition } = this.settings;
    return edition && "value" in this.required(i) ? this.ruleUnder(edition, i)?.is : undefined;
  }

  /** What the row says of its room beside kind and duty. Throws for a word that is not known. */
  roomFacts(i: number): RoomFacts {
    const text = (key: string) => this.table.text(key, i);
    const [volume, capture] = ["volume", "capture"].map((key) => this.table.number(key, i));
    const floorArea = this.floorArea(i);
    return {
      volume: (volume as number) > 0 ? volume : undefined,
      enclosed: readYesNo("enclosed", text("enclosed")),
      cooking: text("cooking") === "" ? undefined : findCooking(text("cooking")),
      window: readYesNo("window", text("window")),
      floorArea: floorArea > 0 ? floorArea : undefined,
      capture: (capture as number) > 1 ? capture : undefined,
    };
  }

  /** The floor area of the row's dwelling, where kitchens are told apart; NaN where not known. */
  private floorArea(i: number): number {
    const { dwellings, table } = this;
    if (!dwellings || !table.has("enclosed")) return Number.NaN;
    this.floors ??= new Map(
      dwellings
        .texts("dwelling")
        .map((name, row) => [plainName(name), dwellings.number("floor", row)]),
    );
    return this.floors.get(plainName(table.text("dwelling", i))) ?? Number.NaN;
  }

  /** Whether nothing is asked of the row: it supplies air, or the edition has no rate for such a room. */
  asksNothing(i: number): boolean {
    const rate = this.required(i);
    return "problem" in rate && rate.problem instanceof NoneAsked;
  }

  /** The least rate of a row as a number, computed or as stored; NaN where neither is there. */
  requiredNumber(i: number): number {
    const rate = this.required(i);
    return "value" in rate ? rate.value.rate : this.table.number("required", i);
  }

  private areaInUse(i: number): number {
    const stored = this.table.number("area", i);
    if (!Number.isNaN(stored) || this.table.has("area")) return stored;
    const found = this.areaFromBoxes(i);
    return "value" in found ? found.value : Number.NaN;
  }

  private constantInUse(i: number): number {
    if (this.firm) return this.firm.constant(this.firm.at(i).block);
    const stored = this.table.number("constant", i);
    if (stored > 0) return stored;
    return constantInUse(this, this.table.text("box", i));
  }

  private pressureInUse(i: number): number {
    const stored = this.table.number("pressure", i);
    const found = Number.isNaN(stored) ? meanOf(this.readings(i)) : stored;
    // The air of a supply presses on the box: its sign is the other one, and no slip.
    return this.isSupply(i) ? Math.abs(found) : found;
  }
}

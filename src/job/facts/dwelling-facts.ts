import { InputError, kept } from "../../cells";
import {
  type Balance,
  balanceOf,
  dwellingRate,
  fanRate,
  infiltration,
  type RequiredRate,
  type Ruling,
  rateIfBalanced,
  readSystemKind,
  readYesNo,
  type SystemKind,
  withDeficits,
} from "../../rules";
import { plainName } from "../fit";
import { attempt, type Job, type Maybe, valueIn, valueOrThrow } from "../read";
import type { FanFacts } from "./fan-facts";

/**
 * What a dwelling gets of its fans, what it needs and what it still needs, and how that comes
 * about; a step that does not apply is undefined.
 */
export interface DwellingFacts {
  readonly name: string;
  /** Row of the Dwellings table; −1 for a dwelling that only fans name. */
  readonly row: number;
  /** Rows of its fans. */
  readonly fans: readonly number[];
  readonly required: Maybe<RequiredRate>;
  /** What the rate becomes by whether the system is balanced and ducted; undefined where not said. */
  readonly ofSystem: Maybe<RequiredRate> | undefined;
  /** Sum of the rooms' deficits; undefined where the sheets do not ask for them. */
  readonly deficits: { readonly sum: number; readonly unsure: boolean } | undefined;
  readonly raised: Maybe<RequiredRate> | undefined;
  readonly infiltration: Maybe<RequiredRate> | undefined;
  /** What fans must move after everything else. */
  readonly needed: Maybe<RequiredRate>;
  /** The same as a number, that of the sheet where the rules give none; NaN for neither. */
  readonly neededFlow: number;
  /**
   * What its fans move all the time: the flows by which the continuous ones are judged, those of
   * fans on a timer by their share of the time, each fan once, by its latest sound reading.
   */
  readonly exhausted: number;
  readonly supplied: number;
  /** The larger of the two, since the rest of the air comes or goes through the envelope. */
  readonly provided: number;
  readonly continuousFans: number;
  /** A continuous fan is not measured or must be read again, or a fan's duty is not known. */
  readonly isUnsure: boolean;
  /** What is still needed, 0 where nothing is; NaN where what is needed is not known. */
  readonly missing: number;
  /**
   * Whether `missing` is the last word: all is measured, and the dwelling has continuous fans.
   * Without one it is ventilated by something that is not in the job.
   */
  readonly isTold: boolean;
}

/** The dwellings of a job: those listed, each row of the sheet; then those that only fans name. */
export class AllDwellings {
  private readonly fanRows = new Map<string, number[]>();
  private readonly listed: (DwellingFacts | undefined)[] = [];
  private strayed: readonly DwellingFacts[] | undefined;

  constructor(
    private readonly job: Job,
    private readonly fans: FanFacts | undefined,
  ) {
    fans?.fans.table.texts("dwelling").forEach((name, i) => {
      kept(this.fanRows, plainName(name), () => []).push(i);
    });
  }

  /** That of a row of the Dwellings table. */
  at(row: number): DwellingFacts {
    let facts = this.listed[row];
    if (!facts) {
      facts = this.make(this.job.tables.dwellings?.text("dwelling", row) ?? "", row);
      this.listed[row] = facts;
    }
    return facts;
  }

  /** Each dwelling once, by its name; of a name listed twice the first row. */
  all(): DwellingFacts[] {
    const met = new Set<string>([""]);
    const isNew = (name: string) => !met.has(plainName(name)) && met.add(plainName(name));
    const names = this.job.tables.dwellings?.texts("dwelling") ?? [];
    const listed = names.flatMap((name, row) => (isNew(name) ? [this.at(row)] : []));
    this.strayed ??= [...this.fanRows.values()].flatMap(([first]) => {
      const name = this.fans?.fans.table.text("dwelling", first as number) ?? "";
      return isNew(name) ? [this.make(name, -1)] : [];
    });
    return [...listed, ...this.strayed];
  }

  private make(name: string, row: number): DwellingFacts {
    const fans = this.fanRows.get(plainName(name)) ?? [];
    const account = this.account(row, fans);
    const stored = ["needed", "required"].map((key) => this.number(key, row));
    const neededFlow =
      valueIn(account.needed)?.rate ?? stored.find((value) => value > 0) ?? Number.NaN;
    const got = this.continuous(fans);
    return {
      ...{ name, row, fans, ...account, neededFlow, ...got },
      missing: Number.isNaN(neededFlow) ? Number.NaN : Math.max(0, neededFlow - got.provided),
      isTold:
        got.continuousFans > 0 &&
        !got.isUnsure &&
        !account.deficits?.unsure &&
        !Number.isNaN(neededFlow),
    };
  }

  private continuous(rows: readonly number[]) {
    const { fans: facts } = this;
    const sum = { exhausted: 0, supplied: 0, continuousFans: 0, isUnsure: false };
    for (const i of facts ? rows : []) {
      const { fans } = facts as FanFacts;
      const duty = fans.duty(i);
      if (facts?.isSuperseded(i)) continue;
      if (!("value" in duty)) sum.isUnsure = true;
      const isCounted = valueIn(duty) === "continuous" || fans.table.number("runShare", i) > 0;
      if (!facts || !isCounted || fans.isAbsent(i)) continue;
      const counts = facts.counts(i);
      sum.continuousFans++;
      if (Number.isNaN(counts) || facts.verdict(i) === "out of range") sum.isUnsure = true;
      if (!Number.isNaN(counts)) sum[fans.isSupply(i) ? "supplied" : "exhausted"] += counts;
    }
    return { ...sum, provided: Math.max(sum.exhausted, sum.supplied) };
  }

  /** How supply and exhaust stand to each other; undefined for no supply, or no rule on it. */
  balance({
    exhausted,
    supplied,
  }: Pick<DwellingFacts, "exhausted" | "supplied">): Ruling<Balance> | undefined {
    const { edition, system } = this.job.settings;
    if (!edition || !(supplied > 0)) return undefined;
    return valueIn(attempt(() => balanceOf(edition.id, supplied, exhausted, system)));
  }

  private number(key: string, row: number): number {
    return row < 0 ? Number.NaN : (this.job.tables.dwellings?.number(key, row) ?? Number.NaN);
  }

  private account(row: number, fans: readonly number[]) {
    const { settings, tables } = this.job;
    const { system, method, work, weather } = settings;
    const number = (key: string) => this.number(key, row);
    const edition = () => {
      if (!settings.edition) throw new InputError("no edition");
      return settings.edition;
    };
    const required = attempt(() =>
      dwellingRate(edition(), number("floor"), number("bedrooms"), system, method),
    );
    const ducted = this.systemKind(row);
    const ofSystem =
      ducted === undefined
        ? undefined
        : attempt(() => rateIfBalanced(edition().id, valueOrThrow(required).rate, ducted));
    const base = ofSystem ?? required;
    const deficits = this.asksForDeficits() ? this.sumOfDeficits(fans) : undefined;
    const raised =
      deficits && attempt(() => withDeficits(edition(), valueOrThrow(base).rate, deficits.sum));
    const before = raised ?? base;
    const leak50 = number("leak50");
    const leakage =
      leak50 > 0
        ? attempt(() => {
            if (weather === undefined)
              throw new InputError("the Job sheet gives no weather and shielding factor");
            const [floorArea, height] = [number("floor"), number("height")];
            return infiltration(edition(), { leak50, floorArea, height, weather }, system);
          })
        : undefined;
    const needed = leakage
      ? attempt(() => {
          const exposed = number("exposed");
          const of = {
            total: valueOrThrow(before).rate,
            infiltration: valueOrThrow(leakage).rate,
            exposedShare: Number.isNaN(exposed) ? 1 : exposed,
            balanced: readYesNo("balanced", tables.dwellings?.text("balanced", row) ?? "") ?? false,
            work,
            floorArea: number("floor"),
          };
          return fanRate(edition(), of, system);
        })
      : before;
    return { required, ofSystem, deficits, raised, infiltration: leakage, needed };
  }

  /** Whether the system is balanced and ducted, only one of the two, or neither; undefined where not said. */
  systemKind(row: number): SystemKind | undefined {
    const text = row < 0 ? "" : (this.job.tables.dwellings?.text("ducted", row) ?? "");
    return text === "" ? undefined : valueIn(attempt(() => readSystemKind(text, "ducted")));
  }

  /** Whether the sheets count what rooms lack, as they do for existing buildings. */
  asksForDeficits(): boolean {
    const { fans, dwellings } = this.job.tables;
    return (
      ["deficit", "window"].some((key) => fans?.has(key)) ||
      ["deficits", "raised"].some((key) => dwellings?.has(key))
    );
  }

  private sumOfDeficits(fans: readonly number[]): { sum: number; unsure: boolean } {
    const found = fans.map((i) => this.fans?.deficit(i)).filter((deficit) => deficit !== undefined);
    return {
      sum: found.reduce((sum, deficit) => sum + (valueIn(deficit)?.rate ?? 0), 0),
      unsure: found.some((deficit) => !("value" in deficit)),
    };
  }
}

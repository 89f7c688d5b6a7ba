import { type CellValue, InputError, isBlankCell, kept } from "../../cells";
import type { NumberKind } from "../../editions";
import {
  deficitOf,
  type Judging,
  type RequiredRate,
  readYesNo,
  type Verdict,
  verdicts,
} from "../../rules";
import type { Budget } from "../../spread";
import type { Values } from "../columns";
import {
  attempt,
  Columns,
  definedAs,
  type FanRows,
  type Job,
  type Maybe,
  type Replaced,
  valueIn,
  valueOrThrow,
} from "../read";
import { fanBudget } from "./fan-budget";
import { secondArea, type TwoOpenings, twoOpeningsOf } from "./two-openings";

/** A fan's flow at the density at hand and at standard air; NaN where it cannot be told. */
interface FanAir {
  readonly actual: number;
  readonly standard: number;
}

/**
 * What is known of each fan of a job, worked out from what was typed and measured: each once, when
 * it is first asked for. Checks, pane, records and reports take it from here.
 */
export class FanFacts {
  private readonly budgets = new Map<number, Budget | undefined>();
  private again: ReadonlySet<number> | undefined;
  private readonly judgings = new Map<Judging, readonly (Verdict | undefined)[]>();

  constructor(
    private readonly job: Job,
    readonly fans: FanRows,
    /** Every computed column, worked out. */
    private readonly columns: Columns,
  ) {}

  /** The flow that the job judges; NaN where none was measured or where it cannot be worked out. */
  judged(i: number): number {
    return this.number("judged", i);
  }

  /** What the row adds to what its dwelling gets all the time; NaN for nothing. */
  counts(i: number): number {
    const { table } = this.fans;
    const isFolded = ["counts", "visit", "runShare"].some((key) => table.has(key));
    return this.number(isFolded ? "counts" : "judged", i);
  }

  /** How another row stands for the fan as it now is; undefined where this one does. */
  replacedAs(i: number): Replaced | undefined {
    const { firm, table } = this.fans;
    if (!firm)
      return table.has("visit") && this.columns.of("fans", "stands")[i] === "no"
        ? "read again"
        : undefined;
    this.again ??= this.readAgain();
    return this.again.has(i) ? "read again" : firm.replacedAs(i);
  }

  isSuperseded(i: number): boolean {
    return this.replacedAs(i) !== undefined;
  }

  /** Rows that fail by a firm's own word, and whose fan has a row of a later day. */
  private readAgain(): ReadonlySet<number> {
    const { fans } = this;
    const last = new Map<string, number>();
    const day = (i: number) => fans.table.number("date", i);
    for (let i = 0; i < fans.length; i++)
      if (fans.table.text("tag", i) !== "" && fans.isMeasured(i) && day(i) > 0)
        last.set(fans.fanKey(i), Math.max(day(i), last.get(fans.fanKey(i)) ?? 0));
    const rows = Array.from({ length: fans.length }, (_, i) => i);
    return new Set(
      rows.filter((i) => fans.firm?.says(i) === "fail" && day(i) < (last.get(fans.fanKey(i)) ?? 0)),
    );
  }

  air(i: number): FanAir {
    return { actual: this.number("actual", i), standard: this.number("standard", i) };
  }

  /** The least rate of the row's room: by the job's edition, or as stored; NaN for neither. */
  required(i: number): number {
    return this.fans.requiredNumber(i);
  }

  /** The least rate that the row's room could have by an answer that its sheet asks for and lacks. */
  leastIfSaid(i: number): number {
    const { fans } = this;
    const { edition } = this.job.settings;
    const least = attempt(() => {
      if (!edition || !fans.table.has("enclosed")) return Number.NaN;
      const { enclosed = true, cooking = "electric", ...facts } = fans.roomFacts(i);
      return fans.rateUnder(edition, i, { ...facts, enclosed, cooking }).rate;
    });
    return valueIn(least) ?? Number.NaN;
  }

  /** The budget of the measured flow; undefined where nothing usable was measured. */
  budget(i: number): Budget | undefined {
    if (!this.budgets.has(i)) this.budgets.set(i, fanBudget(this.job.settings, this.fans, i));
    return this.budgets.get(i);
  }

  /** Standard spread of the flow; NaN where it is not known. */
  spread(i: number): number {
    return this.budget(i)?.u ?? Number.NaN;
  }

  /** The chance that the flow truly meets its rate; NaN where it cannot be told. */
  chance(i: number): number {
    return this.number("chance", i);
  }

  /**
   * The verdict on a fan by the job's own way of judging, or by another; undefined where no rate is
   * known, and where a flow was measured but not the one that the job judges.
   */
  verdict(i: number, judging: Judging = this.job.settings.judging): Verdict | undefined {
    const found = kept(this.judgings, judging, () => {
      const job = { ...this.job, settings: { ...this.job.settings, judging } };
      const columns = new Columns(job, (kind, key) =>
        key === "verdict" ? undefined : this.columns.of(kind, key),
      );
      return (definedAs("fans", "verdict", columns) ?? []).map((value) =>
        isBlankCell(value) ? "not measured" : verdicts.find((verdict) => verdict === value),
      );
    });
    // A reversed pressure gives no flow, yet it was measured: it wants another reading.
    const isReversed = this.fans.status[i] === "reversed" && !this.fans.isByInstrument(i);
    return isReversed && found[i] !== "none required" ? "out of range" : found[i];
  }

  /** What the rate that a flow was held against is a number of; undefined where none was. */
  verdictOn(i: number): NumberKind | undefined {
    const weighed = ["meets", "short", "too close to call"];
    return weighed.includes(this.verdict(i) ?? "") ? this.fans.kindOfRate(i) : undefined;
  }

  /** A box only ever lowers the flow: one that is enough through it above the window is enough. */
  alreadyMeets(i: number): boolean {
    const { status } = this.fans;
    return status[i] === "above" && this.judged(i) >= this.required(i);
  }

  /** What the room lacks under the alternative for existing dwellings; undefined on other rows. */
  deficit(i: number): Maybe<RequiredRate> | undefined {
    const { fans } = this;
    const { edition, system } = this.job.settings;
    const duty = valueIn(fans.duty(i));
    if (duty !== "on demand") return undefined;
    return attempt(() => {
      if (!edition) throw new InputError("no edition");
      const flow = fans.isAbsent(i) ? 0 : this.judged(i);
      const window = readYesNo("window", fans.table.text("window", i)) ?? false;
      return deficitOf(edition, valueOrThrow(fans.room(i)), flow, window, system);
    });
  }

  /** The flow without the box from two readings; undefined where the row has one. */
  twoOpenings(i: number): Maybe<TwoOpenings> | undefined {
    return twoOpeningsOf(this.job.settings, this.fans, i);
  }

  /** The area of the second openings; NaN where it is not known. */
  secondArea(i: number): number {
    return valueIn(attempt(() => secondArea(this.fans, i))) ?? Number.NaN;
  }

  private number(key: string, i: number): number {
    const value = this.columns.of("fans", key)[i];
    return typeof value === "number" ? value : Number.NaN;
  }

  /** The fields that more than their definition goes into; undefined for others. */
  column(key: string): Values | undefined {
    const { fans } = this;
    switch (key) {
      case "area":
      case "pressure":
      case "constant":
      case "flow":
        return Array.from(fans[key], numberOrNull);
      case "spread":
        return this.each((i) => this.budget(i)?.u ?? null);
      case "freedom":
        return this.each((i) => {
          const { dof = null } = this.budget(i) ?? {};
          return dof === Number.POSITIVE_INFINITY ? "infinite" : dof;
        });
      case "required":
        return this.each((i) =>
          fans.asksNothing(i) ? "none" : numberOrNull(fans.requiredNumber(i)),
        );
      default:
        return undefined;
    }
  }

  private each(value: (i: number) => CellValue): Values {
    return Array.from({ length: this.fans.length }, (_, i) => value(i));
  }
}

const numberOrNull = (value: number): number | null => (Number.isNaN(value) ? null : value);

import { InputError } from "../../cells";
import { plainName } from "../fit";
import {
  deficitOf,
  dwellingRate,
  fanRate,
  infiltration,
  type RequiredRate,
  readYesNo,
  withDeficits,
} from "../rules";
import type { Job } from "./job";
import { attempt, type Maybe, valueOrThrow } from "./maybe";

/** How the flow that a dwelling's fans must move comes about; a step that does not apply is absent. */
export interface DwellingAccount {
  readonly required: Maybe<RequiredRate>;
  /** Sum of the rooms' deficits; undefined where the sheets do not ask for them. */
  readonly deficits: { readonly sum: number; readonly unsure: boolean } | undefined;
  readonly raised: Maybe<RequiredRate> | undefined;
  readonly infiltration: Maybe<RequiredRate> | undefined;
  /** What fans must move after everything else. */
  readonly needed: Maybe<RequiredRate>;
}

const known = new WeakMap<Job, Map<number, DwellingAccount>>();

/** The account of one row of the Dwellings sheet, recomputed from its own cells and its fans. */
export function dwellingAccount(job: Job, i: number): DwellingAccount {
  const accounts = known.get(job) ?? new Map<number, DwellingAccount>();
  known.set(job, accounts);
  let account = accounts.get(i);
  if (!account) {
    account = makeAccount(job, i);
    accounts.set(i, account);
  }
  return account;
}

function makeAccount(job: Job, i: number): DwellingAccount {
  const { dwellings } = job.tables;
  const { edition, system, method, work, weather } = job.settings;
  const number = (key: string) => dwellings?.number(key, i) ?? Number.NaN;
  const required = attempt(() => {
    if (!edition) throw new InputError("no edition");
    return dwellingRate(edition, number("floor"), number("bedrooms"), system, method);
  });
  const deficits = job.fans?.table.has("deficit") ? sumOfDeficits(job, i) : undefined;
  const raised =
    deficits &&
    attempt(() => {
      if (!edition) throw new InputError("no edition");
      return withDeficits(edition, valueOrThrow(required).rate, deficits.sum);
    });
  const before = raised ?? required;
  const leaks = dwellings?.has("leak50") && number("leak50") > 0;
  const leakage = leaks
    ? attempt(() => {
        if (!edition) throw new InputError("no edition");
        if (weather === undefined)
          throw new InputError("the Job sheet gives no weather and shielding factor");
        const [leak50, floorArea, height] = [number("leak50"), number("floor"), number("height")];
        return infiltration(edition, { leak50, floorArea, height, weather }, system);
      })
    : undefined;
  const needed = leakage
    ? attempt(() => {
        if (!edition) throw new InputError("no edition");
        const exposed = number("exposed");
        const of = {
          total: valueOrThrow(before).rate,
          infiltration: valueOrThrow(leakage).rate,
          exposedShare: Number.isNaN(exposed) ? 1 : exposed,
          balanced: readYesNo("balanced", dwellings?.text("balanced", i) ?? "") ?? false,
          work,
          floorArea: number("floor"),
        };
        return fanRate(edition, of, system);
      })
    : before;
  return { required, deficits, raised, infiltration: leakage, needed };
}

/** The deficit of a fan row under the alternative for existing dwellings; undefined on other rows. */
export function fanDeficit(job: Job, i: number): Maybe<RequiredRate> | undefined {
  const { fans, settings } = job;
  const duty = fans?.duty(i);
  if (!fans || !duty || !("value" in duty) || duty.value !== "on demand") return undefined;
  return attempt(() => {
    const { edition, system } = settings;
    if (!edition) throw new InputError("no edition");
    const flow = fans.isAbsent(i) ? 0 : (fans.flow[i] as number);
    const window = readYesNo("window", fans.table.text("window", i)) ?? false;
    return deficitOf(edition, valueOrThrow(fans.room(i)), flow, window, system);
  });
}

function sumOfDeficits(job: Job, i: number): { sum: number; unsure: boolean } {
  const { fans } = job;
  const name = plainName(job.tables.dwellings?.text("dwelling", i) ?? "");
  let sum = 0;
  let unsure = false;
  for (const row of rowsOf(job).get(name) ?? []) {
    const deficit = fans && fanDeficit(job, row);
    if (deficit && "value" in deficit) sum += deficit.value.rate;
    else if (deficit) unsure = true;
  }
  return { sum, unsure };
}

const rows = new WeakMap<Job, Map<string, number[]>>();

/** The fan rows of each dwelling, by its plain name. */
function rowsOf(job: Job): Map<string, number[]> {
  let found = rows.get(job);
  if (!found) {
    found = new Map<string, number[]>();
    for (let i = 0; i < (job.fans?.length ?? 0); i++) {
      const name = plainName(job.fans?.table.text("dwelling", i) ?? "");
      found.set(name, [...(found.get(name) ?? []), i]);
    }
    rows.set(job, found);
  }
  return found;
}

import { units } from "../../units";
import type { Judgement } from "../evidence/from-formulas";
import type { LineWords } from "../evidence/from-words";
import type { LineStats } from "../evidence/stats";
import { unitsOfConstant } from "../physics/constants";
import { lawFit } from "../physics/fit";
import type { Pool } from "../tables/section";
import { ofFanTest, ofOtherTest } from "../text/vocabulary";
import type { Choice, Role } from "../types";
import type { Part } from "./split";

/** How far readings of exhaust fans stand here, with what speaks against it. */
export interface Verdict {
  readonly score: number;
  readonly against: readonly string[];
}

export const enoughForFans = 3;
/** So many different readings without any name tell the law from chance. */
const leastUnnamed = 12;
/** Among more lines than these some follow any law by chance: only the name of flow or pressure tells. */
const mostUnnamed = 40;
/** Less than this share of the rows gives no constant. */
const leastShare = 0.4;

/** What titles and headings speak of. */
export interface About {
  readonly ofFans: boolean;
  readonly titlesOfOther: boolean;
  readonly headingsOfOther: boolean;
}

export function aboutOf(pool: Pool, titles: readonly string[]): About {
  const headings = [...pool.headings.values()].map(({ text, parents }) =>
    [...parents, text].join(" "),
  );
  return {
    ofFans: titles.some(ofFanTest) || headings.some(ofFanTest),
    titlesOfOther: titles.some((title) => ofOtherTest(title) && !ofFanTest(title)),
    headingsOfOther: headings.some(ofOtherTest),
  };
}

/** Weighs a block: law and constant, rooms, duties, the three quantities, comparisons, titles. */
export function judgeBlock(
  pool: Pool,
  part: Part,
  given: ReadonlyMap<Role, number>,
  stats: ReadonlyMap<number, LineStats>,
  words: ReadonlyMap<number, LineWords>,
  judgements: readonly Judgement[],
  about: About,
  said: Choice["role"] | undefined,
): Verdict {
  const against: string[] = [];
  let score = 0;
  const add = (weight: number, because: string) => {
    score += weight;
    if (weight < 0) against.push(because);
  };
  const line = (role: Role) => given.get(role);
  const statsFor = (role: Role) => (line(role) === undefined ? undefined : stats.get(line(role)!));
  const [flow, pressure, area] = [statsFor("flow"), statsFor("pressure"), statsFor("area")];
  const hole = area ?? statsFor("diameter");
  const told = (role: Role) => {
    const own = words.get(line(role) ?? -1);
    const { weight = 0, phrase = "" } = own?.told.get(role) ?? {};
    // A lone letter names nothing by itself.
    return (weight >= 2 && phrase.length > 1) || dimensionOf(own) === quantity[role];
  };
  const { ofFans } = about;
  const isMany = pool.lines.length > mostUnnamed;
  const isNamed =
    (flow && told("flow")) ||
    (pressure && told("pressure")) ||
    (!isMany && (ofFans || (hole && (told("area") || told("diameter")))));
  let isUnsure = !part.core;
  if (part.core && flow && pressure) {
    const fit = lawFit(flow, pressure, hole, area ? 1 : 2, leastShare);
    const constant = hole && fit?.constant;
    const unit = (role: Role) => words.get(line(role) ?? -1)?.unit?.name;
    const known =
      constant !== undefined &&
      (unitsOfConstant(
        constant,
        { flow: unit("flow"), pressure: unit("pressure"), area: unit(area ? "area" : "diameter") },
        !area,
      ) ??
        unitsOfConstant(constant, {}, !area));
    const byChance = part.core.by === "physics" && (isMany || (fit?.different ?? 0) < leastUnnamed);
    isUnsure = byChance;
    if (byChance && !isNamed) against.push("the amounts may follow each other by chance");
    else if (known) add(4, "flow = constant × area × √pressure, with a usual constant");
    else if (part.core.by === "chart" || part.core.opening !== undefined)
      add(2.5, "flow follows opening and √pressure");
    else if (constant === undefined) add(2, "flow is made from a pressure's root");
    else add(0.5, "flow is made from a pressure's root, with an unusual constant");
  }
  const roomStats = statsFor("room");
  if ((roomStats?.rooms ?? 0) >= 0.3 || part.room) add(2, "rooms are named");
  else if (roomStats) add(0.5, "a line may name rooms");
  if ((statsFor("duty")?.duties ?? 0) >= 0.3) add(1, "ways of running are named");
  if (flow && told("flow")) add(1, "a flow is named");
  if (pressure && told("pressure")) add(0.8, "a box pressure is named");
  if (hole && (told("area") || told("diameter"))) add(0.7, "an opening is named");
  const compared = judgements.find(
    (entry) => entry.flow !== undefined && entry.flow === line("flow"),
  );
  if (compared?.lessIsPass) add(-4, "passing means less, as in a test of leakage");
  else if (compared) add(1, "the flow is compared with what is required");
  else if (flow && statsFor("required") && told("required"))
    add(1, "a required flow stands beside");
  if (ofFans) add(1, "titles speak of fans");
  if (about.titlesOfOther) add(-4, "titles speak of another test");
  else if (about.headingsOfOther) add(-1.5, "headings speak of another test");
  const pascals = pressure && pressure.median * (words.get(line("pressure")!)?.unit?.factor ?? 1);
  if (pascals !== undefined && pascals > 18) add(-3, "pressures are too high for a flow box");
  if (isUnsure && !isNamed) add(-3, "no flow, pressure or opening is named");
  if (said === "fans" && (flow || pressure)) add(20, "you said so");
  if (said === null) add(-40, "you said that it holds no fans");
  if (!flow && !pressure) add(-5, "there is neither flow nor pressure");
  else if (!flow && !(pressure && (hole || line("opening") !== undefined)))
    add(-3, "there is no flow, and no opening beside a pressure");
  return { score, against };
}

const quantity: Readonly<Partial<Record<Role, string>>> = {
  flow: "flow",
  pressure: "pressure",
  area: "area",
  diameter: "length",
};

function dimensionOf(words: LineWords | undefined): string | undefined {
  return words?.unit && units.find(({ name }) => name === words.unit!.name)?.dimension;
}

import { type FitChoice, fieldOfRole, type Job } from "../../job";
import type { Block, Candidate, Habits, Role } from "../../reading";

/** Blocks that were read alike, on one sheet or many, as the Fit screen shows them. */
export interface FirmGroup {
  readonly key: string;
  readonly sheets: readonly string[];
  readonly readings: number;
  readonly block: Block;
  /** The room, or else the flow, by which it is told from others on the same sheet; "" where it is alone. */
  readonly name: string;
}

/** What a block's line was taken for, or what is not checked for want of one. */
export interface RoleView {
  readonly role: Role;
  /** Name of the line; "" where there is none. */
  readonly line: string;
  readonly unit: string | undefined;
  readonly reason: string;
  readonly isChosen: boolean;
  readonly candidates: readonly Candidate[];
}

/** A word that the firm uses and whose meaning is not known. */
interface WordQuestion {
  readonly field: string;
  readonly word: string;
  readonly cells: number;
  readonly asks: string;
  readonly meanings: readonly string[];
}

/** What is not checked where nothing tells a role. */
const missing: Readonly<Partial<Record<Role, string>>> = {
  pressure: "the window is not checked, nor any flow worked out again",
  flow: "no fan is judged",
  area: "flows are not worked out again",
  required: "fans are judged by an edition only",
  verdict: "no verdict is checked",
  dwelling: "fans are not told apart by dwelling",
  room: "required rates are not compared by room",
  date: "no date is checked",
  tester: "a record names no tester",
};

/** Reasons shown beside one role. */
const mostReasons = 2;

export function firmGroups({ firm }: Job): FirmGroup[] {
  const groups = new Map<string, FirmGroup>();
  for (const block of firm?.reading.blocks ?? []) {
    const lines = [...block.roles.values()].map(({ role, line, heading }) => [role, line, heading]);
    const key = JSON.stringify([block.layout, lines]);
    const known = groups.get(key);
    groups.set(key, {
      key,
      block: known?.block ?? block,
      sheets: [...new Set([...(known?.sheets ?? []), block.sheet])],
      readings: (known?.readings ?? 0) + block.readings,
      name: String(roomOfAll(block) ?? block.roles.get("flow")?.heading ?? ""),
    });
  }
  const all = [...groups.values()];
  const isAlone = ({ sheets }: FirmGroup) =>
    all.filter((other) => other.sheets.some((sheet) => sheets.includes(sheet))).length === 1;
  return all.map((group) => (isAlone(group) ? { ...group, name: "" } : group));
}

/** The room that a block's headings tell for all its fans; none where each row names its own. */
function roomOfAll(block: Block) {
  return block.roles.has("room") ? undefined : block.field(0, "room")?.value;
}

/** The roles of a block: those found, then those that something is missing for. */
export function roleViews(block: Block): { found: RoleView[]; absent: RoleView[] } {
  const found = [...block.roles.values()].map(({ role, line, heading, evidence }): RoleView => {
    const candidates = block.candidates(role);
    const reasons = evidence
      .filter(({ weight }) => weight > 0)
      .map(({ because }) => because.replace(`the heading "${heading}"`, "its heading"));
    return {
      role,
      line: candidates.find((each) => each.line === line)?.name ?? "",
      unit: block.habits.units[role],
      reason: [...new Set(reasons)].slice(0, mostReasons).join("; "),
      isChosen: evidence.some(({ kind }) => kind === "choice"),
      candidates,
    };
  });
  const instead: Partial<Record<Role, Role>> = { area: "diameter" };
  const absent = (Object.keys(missing) as Role[])
    .filter((role) => !block.roles.has(role) && !block.roles.has(instead[role] ?? role))
    .map((role): RoleView => {
      const field = block.field(0, role);
      const told =
        field && `told by ${field.from === "sheet" ? "the sheet's name" : `a ${field.from}`}`;
      return {
        role,
        line: "",
        unit: undefined,
        reason: told ?? `not found: ${missing[role]}`,
        isChosen: false,
        candidates: block.candidates(role),
      };
    });
  return { found, absent };
}

/** The choices with a line of a block given a role, or ("") its present line taken away. */
export function withRole(
  choices: readonly FitChoice[],
  block: Block,
  { role, line: present, candidates }: RoleView,
  line: string,
): FitChoice[] {
  const { sheet } = block;
  const field = fieldOfRole(role);
  const own = new Set([line, present, ...candidates.map(({ name }) => name)]);
  const others = choices.filter(
    (each) =>
      each.word !== undefined ||
      each.sheet !== sheet ||
      (each.heading !== (line || present) && !(own.has(each.heading) && each.field === field)),
  );
  return [...others, { sheet, heading: line || present, field: line === "" ? "" : field }];
}

/** The choices without what was said of the line of a role. */
export function withoutRole(
  choices: readonly FitChoice[],
  { sheet }: Block,
  { line }: RoleView,
): FitChoice[] {
  return choices.filter((each) => each.sheet !== sheet || each.heading !== line);
}

const meaningsOf: Readonly<Record<Habits["unknown"][number]["role"], readonly string[]>> = {
  duty: ["on demand", "continuous"],
  room: ["bathroom", "toilet", "kitchen", "kitchen hood", "utility", "other"],
  verdict: ["pass", "fail", "neither"],
};

/** One question for each word that is not known, with how many cells hold it. */
export function wordQuestions({ firm }: Job): WordQuestion[] {
  const questions = new Map<string, WordQuestion>();
  for (const block of firm?.reading.blocks ?? [])
    for (const { role, word } of block.habits.unknown) {
      // A mere question mark stands for no one thing.
      if (!/[\p{L}\p{N}]/u.test(word)) continue;
      const key = `${role} ${word}`;
      let cells = questions.get(key)?.cells ?? 0;
      for (let i = 0; i < block.fans.length; i++)
        if (String(block.field(i, role)?.value ?? "").trim() === word) cells++;
      questions.set(key, {
        field: fieldOfRole(role),
        word,
        cells,
        asks: `What does "${word}" mean?`,
        meanings: meaningsOf[role],
      });
    }
  return [...questions.values()].sort((a, b) => b.cells - a.cells);
}

/** Sheets in which no fans were found, with why where they look like some. */
export function sheetsLeft(job: Job): { sheet: string; because: string }[] {
  const read = new Set([
    ...(job.firm?.reading.blocks ?? []).map(({ sheet }) => sheet),
    ...Object.values(job.fit.sheets).flatMap((fits) => fits.map(({ sheet }) => sheet)),
  ]);
  const own = new Set(["job", "fit", "findings", "accepted"]);
  const because = new Map(job.firm?.reading.notRead.map((each) => [each.sheet, each.because]));
  return job.file.sheets
    .filter(
      ({ name, rowCount, colCount }) =>
        rowCount > 2 && colCount > 1 && !read.has(name) && !own.has(name.toLowerCase()),
    )
    .map(({ name }) => ({ sheet: name, because: because.get(name) ?? "" }));
}

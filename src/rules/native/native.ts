import { plain } from "../../algebra";
import type { Formula } from "../../formulas";
import { type Argument, type BySystem, inSystem, type NumberArgument } from "../contract/argument";
import { isMet, type Need } from "../contract/need";
import { before, type Rule, type Use } from "../contract/rule";
import { EditionNumbers, type Found } from "./found";
import type { NativeCall, Operand } from "./native-call";
import { NoNativeForm } from "./no-native-form";
import { digits, wrong } from "./text";

/** The native formula of one cell of a function's result, without its guards. */
export type NativeForm = (native: Native) => string;

const needed = 1;
const nothingYet = 2;

/**
 * A call of one of our functions as a native formula. What its arguments may be stands in the
 * rule: from there come the guards before the arithmetic, so that blanks, texts and errors give
 * what the function gives. An error or an unusable cell outranks a reading that is not there yet (a
 * blank), and that outranks a blank which is needed (`#N/A`).
 */
export class Native {
  /** Whether the units are metric: known now, or as a native condition. */
  readonly isSi: boolean | string;
  private readonly checks: string[] = [];
  private most = 0;
  private readonly editions: EditionNumbers;

  constructor(
    private readonly rule: Rule,
    readonly call: NativeCall,
  ) {
    this.isSi = "units" in rule.arguments ? this.guardUnits() : false;
    this.editions = new EditionNumbers(call);
    for (const [name, argument] of Object.entries(rule.arguments)) this.guard(name, argument);
    for (const group of rule.together ?? [])
      this.add(`IF(AND(${group.map((name) => this.isBlank(name)).join(",")}),2,0)`, nothingYet);
  }

  /** Which of the cells side by side. */
  get side(): number {
    return this.call.side;
  }

  has(name: string): boolean {
    return this.call.at(name) !== undefined;
  }

  /** An argument as this formula writes it; what serves for it where it is left out. */
  near(name: string): string {
    return this.call.at(name)?.text ?? this.standIn(name, (ip, si) => this.bySystem(ip, si));
  }

  /** An argument as any sheet may write it. */
  far(name: string): string {
    return this.call.at(name)?.far ?? this.standIn(name, (ip, si) => this.bySystemFar(ip, si));
  }

  /** Several arguments, each as `near` or `far` writes it. */
  all<const N extends readonly string[]>(place: "near" | "far", ...names: N) {
    return names.map((name) => this[place](name)) as { -readonly [K in keyof N]: string };
  }

  private standIn(name: string, by: (ip: string, si: string) => string): string {
    const argument = this.rule.arguments[name];
    if (argument?.kind !== "number" || argument.otherwise === undefined) return '""';
    const of = (system: "ip" | "si") => digits(inSystem(argument.otherwise as number, system));
    return by(of("ip"), of("si"));
  }

  /** Whether an argument that may be left out is there, as a condition. */
  given(name: string, place: "near" | "far" = "near"): string {
    if (!this.has(name)) return "FALSE";
    const argument = this.rule.arguments[name] as NumberArgument;
    const x = this[place](name);
    return this.isZeroBlank(argument) ? `IF(ISNUMBER(${x}),${x}<>0)` : `ISNUMBER(${x})`;
  }

  /** An argument that may be left out, or what serves then. */
  or(name: string, otherwise: string, place: "near" | "far" = "near"): string {
    return this.has(name)
      ? `IF(${this.given(name, place)},${this[place](name)},${otherwise})`
      : otherwise;
  }

  /** A name without blanks around it; "" where there is none. Case never counts in a comparison. */
  text(name: string, place: "near" | "far" = "near"): string {
    const operand = this.call.at(name);
    if (operand === undefined || operand.literal === 0) return '""';
    const x = `TRIM(${place === "near" ? operand.text : operand.far})`;
    return operand.literal === undefined ? `IF(${x}="0","",${x})` : x;
  }

  /** One text for cfm and another for L/s. */
  bySystem(ip: string, si: string): string {
    if (typeof this.isSi === "boolean") return this.isSi ? si : ip;
    return ip === si ? ip : `IF(${this.isSi},${si},${ip})`;
  }

  /** The same, good on any sheet. */
  bySystemFar(ip: string, si: string): string {
    const system = this.editions.system();
    if (system === '"ip"') return ip;
    return system === '"si"' ? si : `IF(${system}="si",${si},${ip})`;
  }

  /** Where the number of the name in an argument stands; 0 for an unknown name. */
  number(name: string): string {
    const argument = this.rule.arguments[name];
    if (argument?.kind !== "name" || !argument.table)
      throw new Error(`${name} names nothing known`);
    return this.editions.number(argument.table, name);
  }

  /** The system of units as the tables name it, as native text good on any sheet. */
  get system(): string {
    return this.editions.system();
  }

  /** Finds the row of a table where each of these columns has its value. */
  rowWhere(
    make: Parameters<EditionNumbers["rowWhere"]>[0],
    wanted: Readonly<Record<string, string>>,
  ) {
    return this.editions.rowWhere(make, wanted);
  }

  rowBy(make: Parameters<EditionNumbers["rowWhere"]>[0], formula: string): Found {
    return this.editions.rowBy(make, formula);
  }

  /** A yes or no as native text: 1, 0, −1 for a blank, an error for anything else. */
  yesNo(name: string): string {
    return this.editions.yesNo(name);
  }

  /** A check of the function's own: native text that gives 0, or an error. */
  check(text: string): void {
    this.add(text, 0);
  }

  /** The formula behind its guards. */
  result(value: string): string {
    const text = this.ranked(value);
    // Excel takes formulas of 8192 characters.
    if (text.length > 8000)
      throw new NoNativeForm("the formula would be longer than a cell can hold");
    return text;
  }

  private ranked(value: string): string {
    // In brackets: the formula may stand amid other arithmetic.
    if (this.checks.length === 0) return `(${value})`;
    const rank = this.checks.length === 1 ? this.checks[0] : `MAX(${this.checks.join(",")})`;
    const outcomes = [value, "NA()", '""'].slice(0, this.most + 1);
    return `CHOOSE(1+${rank},${outcomes.join(",")})`;
  }

  private guard(name: string, argument: Argument): void {
    switch (argument.kind) {
      case "number":
        this.guardNumber(name, argument, this.call.at(name));
        return;
      case "name": {
        const rank = rankOf(argument.blank);
        const operand = this.call.at(name);
        if (operand?.literal === undefined && operand !== undefined)
          this.add(rank > 0 ? `IF(${this.isBlank(name)},${rank},0)` : errorIn(operand.text), rank);
        else if (rank > 0 && isBlankLiteral(operand)) this.add(String(rank), rank);
        return;
      }
      case "repeats":
        this.guardCells(this.call.across(name).text, name, argument.need, nothingYet);
        return;
      case "numbers": {
        const rank = argument.isReading ? nothingYet : 0;
        this.guardCells(this.call.list(name).text, name, argument.need, rank);
        return;
      }
      default:
    }
  }

  private guardNumber(name: string, argument: NumberArgument, operand: Operand | undefined): void {
    const rank = rankOf(argument.blank);
    const need = argument.need;
    const zero = argument.zeroIsTold ? needed : this.isZeroBlank(argument) ? rank : undefined;
    const because = wrong(`${name}: ${need ? inSystem(need, "ip").say : "not a number"}`);
    if (operand === undefined) {
      if (argument.otherwise === undefined && rank > 0) this.add(String(rank), rank);
      return;
    }
    const { literal, text: x } = operand;
    if (typeof literal === "number") {
      if (literal === 0 && zero !== undefined) {
        if (zero > 0) this.add(String(zero), zero);
      } else if (need && typeof this.isSi === "boolean") {
        if (!isMet(inSystem(need, this.isSi ? "si" : "ip"), literal)) this.checks.push(because);
      } else if (need) this.add(`IF(${this.met(need, x)},0,${because})`, 0);
      return;
    }
    if (isBlankLiteral(operand)) {
      if (rank > 0) this.add(String(rank), rank);
      return;
    }
    const words = Object.keys(argument.words ?? {});
    if (literal !== undefined) {
      const isWord = words.includes(String(literal).trim().toLowerCase());
      if (!isWord) this.checks.push(wrong(`${name}: not a number`));
      return;
    }
    const met = need ? `IF(${this.met(need, x)},0,${because})` : "0";
    const sound = zero === undefined ? met : `IF(${x}=0,${zero},${met})`;
    const other = words.reduceRight(
      (rest, word) => `IF(TRIM(${x})="${word}",0,${rest})`,
      `IF(TRIM(${x})="",${rank},${wrong(`${name}: not a number`)})`,
    );
    this.add(`IF(ISNUMBER(${x}),${sound},${other})`, Math.max(rank, zero ?? 0));
  }

  private met(need: BySystem<Need>, x: string): string {
    const text = (system: "ip" | "si") => conditions(inSystem(need, system), x);
    const [ip, si] = [text("ip"), text("si")].map((all) =>
      all.length === 1 ? (all[0] as string) : `AND(${all.join(",")})`,
    ) as [string, string];
    return this.bySystem(ip, si);
  }

  /** Cells that are numbers or blank; 0 that is never meant counts as blank. */
  private guardCells(text: string, name: string, need: Need | undefined, rank: number): void {
    const flaw = wrong(`${name}: ${need?.say ?? "not numbers"}`);
    const isZeroBlank = need !== undefined && !isMet(need, 0);
    const blank = isZeroBlank ? `*(TRIM(${text})<>"0")` : "";
    const filled = `SUMPRODUCT((TRIM(${text})<>"")${blank})`;
    const factors = need ? conditions(need, text) : [];
    const sound = `SUMPRODUCT(${[`ISNUMBER(${text})`, ...factors.map((each) => `(${each})`), "1"].join("*")})`;
    const none = isZeroBlank && rank > 0 ? `IF(COUNT(${text})>0,1,${rank})` : String(rank);
    const all = `IF(${filled}=${sound},0,${flaw})`;
    const checked = rank > 0 ? `IF(${filled}=0,${none},${all})` : all;
    this.add(`IF(ISERROR(SUM(${text})),SUM(${text}),${checked})`, rank);
  }

  private guardUnits(): boolean | string {
    const operand = this.call.at("units");
    if (operand === undefined) return false;
    const say = wrong('units: use "ip" or "si"');
    if (operand.literal !== undefined) {
      const word = String(operand.literal).trim().toLowerCase();
      if (!["", "0", "ip", "si"].includes(word)) this.checks.push(say);
      return word === "si";
    }
    const x = `TRIM(${operand.text})`;
    const known = ["", "0", "ip", "si"].map((word) => `${x}="${word}"`).join(",");
    this.add(`IF(OR(${known}),0,${say})`, 0);
    return `${x}="si"`;
  }

  private isBlank(name: string): string {
    const operand = this.call.at(name);
    if (operand === undefined) return "TRUE";
    const x = operand.text;
    const argument = this.rule.arguments[name];
    if (argument?.kind === "number") return `TRIM(${x})=""`;
    return `IF(ISLOGICAL(${x}),FALSE,OR(TRIM(${x})="",TRIM(${x})="0"))`;
  }

  private isZeroBlank({ need }: NumberArgument): boolean {
    return need !== undefined && !isMet(inSystem(need, "ip"), 0) && !isMet(inSystem(need, "si"), 0);
  }

  private add(check: string, most: number): void {
    this.checks.push(check);
    this.most = Math.max(this.most, most);
  }
}

/** One of our functions as a native formula for one cell of its result. Throws a NoNativeForm. */
export function nativeText(rule: Rule, form: NativeForm, call: NativeCall): string {
  const native = new Native(rule, call);
  return native.result(form(native));
}

/** Formulas on arguments, as native text. */
export function ofUses(uses: readonly (readonly Use[])[]): NativeForm {
  return (native) => {
    let text = "";
    for (const { formula, of } of uses[native.side] ?? []) {
      const references = Object.fromEntries(
        Object.entries(of).map(([symbol, by]) => [
          symbol,
          by === before
            ? `(${text})`
            : typeof by === "number"
              ? digits(by)
              : native.near(by as string),
        ]),
      );
      const written = (system: "ip" | "si") =>
        plain(inSystem<Formula>(formula, system), references);
      text = native.bySystem(written("ip"), written("si"));
    }
    return text;
  };
}

function conditions({ from, above, to, below, whole, notZero }: Need, x: string): string[] {
  const bound = (sign: string, value: number | undefined) =>
    value === undefined ? [] : [`${x}${sign}${digits(value)}`];
  return [
    ...bound(">=", from),
    ...bound(">", above),
    ...bound("<=", to),
    ...bound("<", below),
    ...(whole ? [`${x}=INT(${x})`] : []),
    ...(notZero ? [`${x}<>0`] : []),
  ];
}

function rankOf(blank: string): 0 | 1 | 2 {
  return blank === "nothing yet" ? nothingYet : blank === "needed" ? needed : 0;
}

const errorIn = (x: string) => `IF(ISERROR(${x}),${x},0)`;

function isBlankLiteral(operand: Operand | undefined): boolean {
  if (operand === undefined) return true;
  const { literal } = operand;
  return literal === 0 || (typeof literal === "string" && literal.trim() === "");
}

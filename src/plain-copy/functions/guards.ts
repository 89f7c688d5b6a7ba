import { usualConstant } from "../../job";
import { Left } from "../left";
import { digits, wrong } from "../native-text";
import type { Operand } from "../rewrite/given";
import type { Call } from "./writer";

/** What a number has to be: as native text, for a number at hand, and in words. */
export interface Need {
  readonly text: (x: string) => string;
  /** Left out where it cannot be known before the units are. */
  readonly met?: (x: number) => boolean;
  readonly say: string;
}

export const aboveZero: Need = {
  text: (x) => `${x}>0`,
  met: (x) => x > 0,
  say: "give a number above 0",
};

export const wholeNumber: Need = {
  text: (x) => `AND(${x}>=0,${x}=INT(${x}))`,
  met: (x) => x >= 0 && Number.isInteger(x),
  say: "give a whole number, 0 or more",
};

export const zeroOrMore: Need = {
  text: (x) => `${x}>=0`,
  met: (x) => x >= 0,
  say: "give a number of 0 or more",
};

const needed = 1;
const nothingYet = 2;

/** A text as names are compared: without blanks around it; case never counts in a comparison. */
export function trimmed(operand: Operand | undefined): string {
  return operand === undefined ? '""' : `TRIM(${operand.text})`;
}

/**
 * The guards of one call: what stands before the arithmetic so that blanks, texts and errors among
 * the arguments give what the function gives. An error or an unusable cell outranks a reading that
 * is not there yet (a blank), and that outranks a blank which is needed (`#N/A`).
 */
export class Guards {
  private readonly checks: string[] = [];
  private readonly late: string[] = [];
  private most = 0;

  constructor(private readonly call: Call) {}

  /** An argument as a number, guarded; its text is safe to repeat in a formula. */
  number(
    name: string,
    options: {
      readonly blank?: "nothing yet" | "needed" | "allowed";
      readonly otherwise?: string;
      readonly need?: Need;
    } = {},
  ): string {
    const operand = this.call.at(name);
    if (operand === undefined) {
      if (options.otherwise !== undefined) return options.otherwise;
      // Without it the whole call fails, whatever else is blank.
      this.checks.unshift("NA()");
      return "0";
    }
    this.checkNumber(name, operand, options.blank ?? "needed", options.need);
    return operand.text;
  }

  private checkNumber(name: string, operand: Operand, blank: string, need?: Need): void {
    const rank = blank === "nothing yet" ? nothingYet : blank === "needed" ? needed : 0;
    const { literal, text: x } = operand;
    const because = wrong(`${name}: ${need?.say ?? "not a number"}`);
    if (literal === undefined) {
      const sound = need ? `IF(${need.text(x)},0,${because})` : "0";
      const text = wrong(`${name}: not a number`);
      this.add(`IF(ISNUMBER(${x}),${sound},IF(TRIM(${x})="",${rank},${text}))`, rank);
    } else if (typeof literal === "number") {
      if (need?.met?.(literal) === false) this.checks.push(because);
      else if (need && !need.met) this.add(`IF(${need.text(x)},0,${because})`, 0);
    } else if (typeof literal === "string" && literal.trim() === "") {
      if (rank > 0) this.add(String(rank), rank);
    } else this.checks.push(wrong(`${name}: not a number`));
  }

  /** An argument as text, without blanks around it. An error in it gives `#N/A`, after all else. */
  text(name: string): string {
    const operand = this.call.at(name);
    if (operand !== undefined && operand.literal === undefined)
      this.late.push(`ISERROR(${operand.text})`);
    return trimmed(operand);
  }

  /** The same where an error in it goes through, in its turn. */
  earlyText(name: string): string {
    const operand = this.call.at(name);
    if (operand !== undefined && operand.literal === undefined)
      this.check(`IF(ISERROR(${operand.text}),${operand.text},0)`);
    return trimmed(operand);
  }

  /** Whether the units are metric: known now, or as a native condition. */
  units(): boolean | string {
    const operand = this.call.at("units");
    if (operand === undefined) return false;
    const say = 'units: use "ip" or "si"';
    if (operand.literal !== undefined) {
      const word = String(operand.literal).trim().toLowerCase();
      if (!["", "ip", "si"].includes(word)) this.checks.push(wrong(say));
      return word === "si";
    }
    const x = operand.text;
    const known = ["", "ip", "si"].map((word) => `TRIM(${x})="${word}"`).join(",");
    this.add(`IF(ISERROR(${x}),${wrong(say)},IF(OR(${known}),0,${wrong(say)}))`, 0);
    return `TRIM(${x})="si"`;
  }

  /** One text for cfm and another for L/s. */
  bySystem(isSi: boolean | string, ip: string, si: string): string {
    if (typeof isSi === "boolean") return isSi ? si : ip;
    return ip === si ? ip : `IF(${isSi},${si},${ip})`;
  }

  /** The trade's flow constant, where an argument is left out. */
  usualConstant(isSi: boolean | string): string {
    return this.bySystem(isSi, digits(usualConstant.ip), digits(usualConstant.si));
  }

  /** A condition of the function's own, checked in its turn. */
  require(condition: string, say: string): void {
    this.add(`IF(${condition},0,${wrong(say)})`, 0);
  }

  /** A check of the function's own: native text that gives 0, or an error. */
  check(text: string): void {
    this.add(text, 0);
  }

  /** A check of the function's own that may give blank where nothing was entered yet. */
  checkEntered(text: string): void {
    this.add(text, nothingYet);
  }

  /** A check that comes before all others. */
  checkFirst(text: string): void {
    this.checks.unshift(text);
  }

  /** The formula behind its guards. */
  result(value: string): string {
    const { late } = this;
    const any = late.length === 1 ? late[0] : `OR(${late.join(",")})`;
    const whole = late.length > 0 ? `IF(${any},NA(),${value})` : value;
    return requireShort(this.ranked(whole));
  }

  private ranked(value: string): string {
    // In brackets: the formula may stand amid other arithmetic.
    if (this.checks.length === 0) return `(${value})`;
    const rank = this.checks.length === 1 ? this.checks[0] : `MAX(${this.checks.join(",")})`;
    const outcomes = [value, "NA()", '""'].slice(0, this.most + 1);
    return `CHOOSE(1+${rank},${outcomes.join(",")})`;
  }

  private add(check: string, most: number): void {
    this.checks.push(check);
    this.most = Math.max(this.most, most);
  }
}

/** Excel takes formulas of 8192 characters. */
function requireShort(text: string): string {
  if (text.length > 8000) throw new Left("the formula would be longer than a cell can hold");
  return text;
}

import { type Severity, severities } from "../../job";

/** How marked cells look; weight and slant tell the severities apart where colour does not. */
interface Look {
  readonly fill: string;
  readonly color: string;
  readonly bold: boolean;
  readonly italic: boolean;
}

export const looks: Readonly<Record<Severity, Look>> = {
  wrong: { fill: "#F6CFC6", color: "#6E1A0A", bold: true, italic: false },
  doubtful: { fill: "#F8E7B0", color: "#574200", bold: false, italic: true },
  missing: { fill: "#D3E3F3", color: "#163C5E", bold: false, italic: false },
  result: { fill: "#E4E0EE", color: "#3E2C66", bold: true, italic: true },
};

/**
 * The rule of a mark. It always holds, and names itself, so that marks can be told from a user's
 * own conditional formats in any workbook and at any later time, after saving and copying as well.
 */
export function ruleOf(severity: Severity): string {
  return `=ISTEXT("Fanrow mark: ${severity}")`;
}

export function isOurRule(formula: string): boolean {
  return severities.some((each) => isRuleOf(formula, each));
}

export function isRuleOf(formula: string, severity: Severity): boolean {
  const plain = (text: string) => text.replace(/\s+/g, "").toLowerCase();
  return plain(formula) === plain(ruleOf(severity));
}

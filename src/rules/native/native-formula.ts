import type { Rule } from "../contract/rule";
import * as made from "../made/native";
import { type NativeForm, nativeText, ofUses } from "./native";
import type { NativeCall } from "./native-call";
import { NoNativeForm } from "./no-native-form";

const forms: Readonly<Record<string, NativeForm>> = made;

const formOf = ({ id, uses }: Rule): NativeForm | undefined => forms[id] ?? (uses && ofUses(uses));

/** Whether a function can be written as a native formula; the others give a text to read. */
export const hasNativeForm = (rule: Rule): boolean => formOf(rule) !== undefined;

/** One of our functions as a native formula for one cell of its result. Throws a NoNativeForm. */
export function nativeFormula(rule: Rule, call: NativeCall): string {
  const form = formOf(rule);
  if (!form) throw new NoNativeForm(`the function FANROW.${rule.id} has no native equivalent`);
  return nativeText(rule, form, call);
}

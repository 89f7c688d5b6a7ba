import { findUnit } from "../../units";

const shape =
  /^(?:[~≈<>=]|ca\.?|approx\.?|about|env\.?|circa)?\s*([-+−–]?)\s*(\d+(?:[.,]\d+)?|[.,]\d+)\s*([^\d].*)?$/i;

/**
 * The number that a text stands for: "4,4", "~6", "3.2 Pa", "5.2?"; undefined for any other text.
 * What follows the number must be a unit or a sign of doubt.
 */
export function textNumber(text: string): number | undefined {
  const trimmed = text.trim();
  if (trimmed.length > 24 || !/\d/.test(trimmed)) return undefined;
  const found = shape.exec(trimmed);
  if (!found) return undefined;
  const tail = (found[3] ?? "").trim();
  if (
    tail !== "" &&
    !/^[?!*~.]+$/.test(tail) &&
    !findUnit(tail) &&
    !findUnit(tail.replace(/[?!*.~]+$/, ""))
  )
    return undefined;
  const sign = found[1] === "" || found[1] === "+" ? 1 : -1;
  return sign * Number(found[2]!.replace(",", "."));
}

const days = [
  /(?<!\d)\d{1,4}\s*[./-]\s*\d{1,2}\s*[./-]\s*\d{1,4}(?!\d)/,
  /(?<!\S)\d{1,2}\.?\s+\p{L}{3,9}\.?\s+\d{2,4}(?!\S)/u,
];

/** A day written in a text in one of the usual orders, "06/05/2023", "10.2.25", and what stands beside it. */
export function dayIn(text: string): { day: string; beside: string } | undefined {
  const found = days.flatMap((pattern) => pattern.exec(text) ?? [])[0];
  if (found === undefined) return undefined;
  const beside = text.replace(found, " ").replace(/^[\s,;:|–-]+|[\s,;:|–-]+$/g, "");
  return { day: found, beside };
}

export function looksLikeDay(text: string): boolean {
  return dayIn(text) !== undefined;
}

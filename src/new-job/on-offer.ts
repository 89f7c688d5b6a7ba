import {
  type FitChoice,
  type Job,
  layoutOf,
  plainName,
  readHeading,
  readJob,
  searchedRows,
} from "../job";
import type { Row } from "./job-rows";

/** Headings over a list of fans to buy that name nothing so elsewhere; data like the words of a layout. */
const words: Readonly<Record<string, string>> = {
  model:
    "fan, fans, product, product name, part, part no, part number, article, article no, item no, item name, sku, description, name, type, typ, modell, artikel, artikel nr, bezeichnung, ventilator, produkt, modele, reference, designation, ventilateur, modelo, producto, ventilador, artikelnummer",
  rated:
    "airflow, air flow, flow, flow rate, capacity, volume, volume flow, luftmenge, luftleistung, volumenstrom, fordervolumen, förderleistung, nennvolumenstrom, debit, débit, caudal, debiet, luchthoeveelheid",
  serves: "room, rooms, used for, verwendung, raum, usage, uso, gebruik",
  watts: "w, watt, watts, leistung, puissance, potencia, vermogen",
  cost: "price each, each, list price, net, cost each, cost per unit, preis, einzelpreis, stückpreis, prix, prix unitaire, precio, prijs, stukprijs",
};
const fieldOf = new Map(
  layoutOf("catalogue").fields.flatMap(({ key, title, words: usual }) =>
    [title, ...usual, ...(words[key] ?? "").split(", ")].map(
      (word) => [plainName(word), key] as const,
    ),
  ),
);
fieldOf.delete("");
/** What a unit alone, such as "cfm", is the heading of. */
const ofUnit = (dimension: string | undefined) => (dimension === "flow" ? "rated" : undefined);

/**
 * The job with a sheet of fans on offer whose headings are an estimator's own: taken as one where a
 * model and a rated flow are named, on a sheet that is nothing else.
 */
export function withOwnCatalogue(job: Job): Job {
  if (job.tables.catalogue !== undefined) return job;
  const taken = new Set([
    ...job.lots.map(({ sheet }) => sheet),
    ...Object.values(job.fit.sheets).flatMap((sheets) => sheets.map(({ sheet }) => sheet)),
  ]);
  const read = new Set(job.firm?.reading.blocks.map(({ sheet }) => sheet));
  for (const grid of job.file.sheets.filter(({ name }) => !taken.has(name)))
    for (let row = 0; row < Math.min(searchedRows, grid.rowCount); row++) {
      const answers: FitChoice[] = [];
      for (let col = 0; col < grid.colCount; col++) {
        const value = grid.value(row, col);
        if (typeof value !== "string") continue;
        const { name, unit } = readHeading(value);
        const field = fieldOf.get(name) ?? (name === "" ? ofUnit(unit?.dimension) : undefined);
        if (field && !answers.some((each) => each.field === field))
          answers.push({ sheet: grid.name, heading: value, field });
      }
      // What was measured has no price.
      const isPriced = answers.some(({ field }) => field === "cost");
      if (answers.length === 0 || (read.has(grid.name) && !isPriced)) continue;
      const again = readJob({ ...job.file, answers: [...(job.file.answers ?? []), ...answers] });
      if (again.tables.catalogue !== undefined) return again;
    }
  return job;
}

const totals = /^(grand |sub)?totals?$|^(gesamt)?summe$|^gesamt$|^total(e|es)?$|^totaal$/i;
const hood = /hood|dunst(abzug|haube)|abzugshaube|hotte|campana|afzuigkap|wasemkap/i;

/**
 * A row of a list of fans on offer as an estimate takes it, none for a total. What serves
 * kitchens is a hood, and where a list does not say what a fan is for, its name may.
 */
export function fanOnOffer(row: Row): Row[] {
  if (!("rated" in row) && totals.test(String(row.model ?? "").trim())) return [];
  if (hood.test(String(row.serves ?? row.model))) return [{ ...row, serves: "kitchen hood" }];
  return [row.serves === undefined ? row : { ...row, serves: "other rooms" }];
}

/** The number of "$ 92.00" or "75,50 €"; the text where it is none. */
export function numberTold(text: string): string | number {
  const found = /^[^\d.,-]*(\d[\d.,' ]*?)[^\d]*$/.exec(text.trim())?.[1];
  if (found === undefined) return text;
  const isComma = /,\d{1,2}$/.test(found) || /\.\d{3},/.test(found);
  const number = Number(found.replace(isComma ? /[.' ]/g : /[,' ]/g, "").replace(",", "."));
  return Number.isFinite(number) ? number : text;
}

import { allEditions } from "./data";
import type { Edition } from "./edition";
import { finder, oneOf, UnknownNameError } from "./finder";

const hasRates = ({ rooms, dwelling }: Edition) => rooms.length + dwelling.length > 0;

/** Editions that set ventilation rates, in the order in which lists show them. */
export const editions: readonly Edition[] = allEditions.filter(hasRates);

/** Codes that set limits on fans and ducts but no ventilation rates here. */
export const codes: readonly Edition[] = allEditions.filter((each) => !hasRates(each));

const byNames = (list: readonly Edition[]) =>
  finder<Edition>(
    "edition",
    list.map((edition) => [edition, [edition.id, edition.title, ...edition.aliases]]),
    ({ id }) => id,
  );

/** The edition of this id or alias, whatever the case and with or without its publisher's name. */
export const findEdition = byNames(editions);

/** As `findEdition`, codes without ventilation rates among them. */
export const findAnyEdition = byNames(allEditions);

type Limits = "efficacy" | "sound" | "ducts" | "makeupAir" | "balanced" | "balance" | "designMatch";

/** One kind of rule of every edition that sets it. */
function rulesOn<K extends Limits>(kind: K) {
  type Rule = NonNullable<Edition[K]> & { readonly code: string };
  return allEditions.flatMap((edition) => {
    const rule = edition[kind];
    return rule ? [{ code: edition.id, ...rule } as Rule] : [];
  });
}

export const efficacyRules = rulesOn("efficacy");
export const soundRules = rulesOn("sound");
export const ductRules = rulesOn("ducts");
export const makeupAirRules = rulesOn("makeupAir");
export const balancedRules = rulesOn("balanced");
export const balanceRules = rulesOn("balance");
export const designMatchRules = rulesOn("designMatch");

/**
 * The rule that a code of this name sets, of a list of rules on one matter (`what`). `named` says
 * what the name is one of.
 *
 * Throws `UnknownNameError` with the codes that set such a rule, where this one is unknown or does
 * not.
 */
export function findRule<T extends { readonly code: string }>(
  what: string,
  rules: readonly T[],
  name: string,
  named = "edition",
): T {
  const use = oneOf(
    name,
    rules.map(({ code }) => code),
  );
  let id: string;
  try {
    id = findAnyEdition(name).id;
  } catch (error) {
    if (!(error instanceof UnknownNameError)) throw error;
    throw new UnknownNameError(`unknown ${named} "${name}": ${use}`);
  }
  const rule = rules.find(({ code }) => code === id);
  if (!rule) throw new UnknownNameError(`${id} sets no ${what}: ${use}`);
  return rule;
}

/** Arguments that several functions share. */
import { findDuty, findEdition, findRoom } from "../editions";
import { usualConstant, usualWindow } from "./constants";
import {
  type ListArgument,
  type NumberArgument,
  named,
  namedIfGiven,
  needed,
  optional,
  orElse,
  type UnitsArgument,
} from "./contract/argument";
import { aboveZero, type Need, zeroOrMore } from "./contract/need";
import { answered } from "./contract/yes-no";

export const units: UnitsArgument & { readonly optional: true } = { kind: "units", optional: true };

/** A pressure that can be turned into a flow: room minus box. 0 may be a cell not filled in. */
export const pressure: NumberArgument<number> = {
  kind: "number",
  blank: "nothing yet",
  zeroIsTold: true,
  need: {
    from: 0,
    say: "negative: exhaust makes the box negative to the room; read room minus box, or swap the hoses",
  },
};

/** The same as repeats of one fan. */
export const readable: Need = { ...(pressure.need as Need), notZero: true };

export const area = needed(aboveZero);
/** A flow or rate without which there is nothing to work out yet. */
export const flowToCome: NumberArgument<number> = {
  kind: "number",
  blank: "nothing yet",
  need: aboveZero,
};
export const limit = needed(zeroOrMore);

/** The constant of a box, or the trade's. */
export const constant = orElse(usualConstant, aboveZero);
export const low = optional(orElse(usualWindow.low, aboveZero));
export const high = optional(orElse(usualWindow.high, aboveZero));

export const edition = named(findEdition, "name one, such as 62.2-2016", "edition");
/** Where codes beside the editions may be named too. */
export const code = named((text) => text, "name one, such as IRC-2021", "edition");
export const room = named(findRoom, "name one, such as bathroom", "room");
export const duty = named(findDuty, "say on demand or continuous", "duty");
export const yesNo = optional(namedIfGiven(answered));

const list: ListArgument = { kind: "list" };
/** The openings of one or several boxes, from columns of the Boxes sheet. */
export const openingLists = {
  labels: list,
  areas: list,
  box: optional(namedIfGiven((text) => text)),
  boxes: optional(list),
} as const;

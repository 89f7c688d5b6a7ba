import type { RoomKind } from "../../editions";
import type { Answers, Choice, Meaning, RoomKind as ReadRoom, Role } from "../../reading";
import { units } from "../../units";
import type { JobFit } from "../fit";

/** Roles of a reader, and the fields of ours that they fill. */
export const fieldOf: Readonly<Partial<Record<Role, string>>> = {
  dwelling: "dwelling",
  fan: "tag",
  room: "room",
  duty: "duty",
  box: "box",
  opening: "openings",
  area: "area",
  diameter: "openingSize",
  pressure: "pressure",
  flow: "flow",
  required: "required",
  verdict: "verdict",
  tester: "tester",
  date: "date",
  rated: "rated",
  note: "note",
};

/** Kinds of room of a reader, and ours. */
export const roomOf: Readonly<Record<ReadRoom, RoomKind | undefined>> = {
  bathroom: "bathroom",
  "half bath": "toilet",
  kitchen: "kitchen",
  "kitchen hood": "kitchen hood",
  laundry: "utility",
  other: undefined,
};

/** A user's answers as the reader takes them. */
export function answersOf({ answers }: JobFit): Answers {
  const roles = new Map(Object.entries(fieldOf).map(([role, key]) => [key, role as Role]));
  const roleOf = (key: string) => roles.get(key === "roomKind" ? "room" : key);
  const choices = answers.flatMap(({ sheet, heading, field, word }): Choice[] => {
    const role =
      field === "" ? null : field === "fans" || field === "constant" ? field : roleOf(field);
    return role === undefined || word !== undefined ? [] : [{ sheet, heading, role }];
  });
  const meanings = answers.flatMap(({ field, word, means = "" }): Meaning[] => {
    const role = roleOf(field);
    if (word === undefined || role === undefined) return [];
    const room = Object.keys(roomOf).find((kind) => roomOf[kind as ReadRoom] === means);
    return [{ role, word, means: role === "room" ? (room ?? means) : means }];
  });
  return { choices, meanings };
}

/** The field under which an answer on a role is kept. */
export function fieldOfRole(role: Role): string {
  return role === "room" ? "roomKind" : (fieldOf[role] ?? role);
}

const dimensions: Readonly<Partial<Record<Role, string>>> = {
  pressure: "pressure",
  flow: "flow",
  area: "area",
};

/** The units that a sheet may keep a measured role in; none for any other role. */
export function unitsOfRole(role: Role): string[] {
  return units.filter(({ dimension }) => dimension === dimensions[role]).map(({ name }) => name);
}

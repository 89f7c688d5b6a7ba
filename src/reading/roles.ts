import { type Role, roles } from "./types";

/** What a line may be: a role, or something that is none of ours. */
export type RoleOrOther = Role | "other";
export const rolesAndOther: readonly RoleOrOther[] = [...roles, "other"];

type Nature = "text" | "number" | "date" | "any";

/** What kind of value each role takes. */
export const natures: Readonly<Record<RoleOrOther, Nature>> = {
  dwelling: "any",
  fan: "any",
  room: "text",
  duty: "text",
  box: "any",
  opening: "any",
  area: "number",
  diameter: "number",
  pressure: "number",
  flow: "number",
  required: "number",
  verdict: "any",
  tester: "text",
  date: "date",
  rated: "number",
  constant: "number",
  note: "text",
  other: "any",
};

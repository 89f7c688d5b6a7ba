import { ductKinds, duties, roomKinds } from "../../editions";
import {
  atMost,
  both,
  column,
  type Expression,
  found,
  isBlank,
  isNumber,
  joined,
  largest,
  nothing,
  orNothing,
  rule,
  same,
  setting,
  times,
  unlessBlank,
  value,
  when,
} from "./expression";
import { dwellingField, money, noteField, number, type SheetLayout, text, yesNo } from "./field";
import { boxConstant, openingsOfBox, units, window } from "./reused";

const flow = { measure: "flow" } as const;
const ofRoom = rule("ROOM_RATE", setting("edition"), "roomKind", "duty", "volume", units);
const ofDwelling = found("dwellings", "required", "dwelling");
/** A hood is chosen among the hoods, any other fan among the others. */
const byUse = (among: (ratings: string) => Expression) =>
  when(same("roomKind", value("kitchen hood")), among("ratedHood"), among("ratedOther"));
const whenBought = (then: Expression) => when(isNumber("buy"), then, nothing);
const costOf = (named: string) => found("catalogue", "cost", named, "model");

/** A row a planned fan: what it must move, what to buy, whether its duct will do. */
export const scheduleLayout: SheetLayout = {
  kind: "schedule",
  title: "Schedule",
  words: ["schedule", "fan schedule", "planned fans", "estimate", "takeoff"],
  names: ["dwelling", "tag"],
  features: ["estimate"],
  fields: [
    dwellingField,
    text("tag", "Fan", "fan tag, tag, fan id"),
    text("room", "Room", "location, room name"),
    text("roomKind", "Room kind", "room type, kind of room", { choices: roomKinds }),
    text("duty", "Duty", "mode, operation, control", { choices: duties }),
    number("volume", "Room volume", "volume, kitchen volume", { measure: "volume" }),
    text("whole", "For the whole dwelling", "whole dwelling, whole house", {
      needed: true,
      choices: yesNo,
    }),
    number("required", "Required", "required flow, minimum, code minimum", {
      ...flow,
      says: ["none"],
      is: unlessBlank(
        ["dwelling"],
        when(
          same("whole", value("yes")),
          when(same(ofRoom, value("none")), ofDwelling, largest(ofRoom, ofDwelling)),
          ofRoom,
        ),
      ),
    }),
    number("buy", "Rated flow to buy", "smallest rated flow, fan size", {
      ...flow,
      // Where no rate is required no fan is bought, unless someone types one.
      is: unlessBlank(
        ["required"],
        when(
          same("required", value("none")),
          nothing,
          byUse((ratings) =>
            rule("FAN_SIZE", "required", setting("margin"), column("catalogue", ratings)),
          ),
        ),
      ),
    }),
    text("model", "Fan to buy", "fan model to buy, model to buy", {
      is: whenBought(byUse((ratings) => found("catalogue", "model", "buy", ratings))),
    }),
    number("count", "Fans to buy", "number of fans, fan count", {
      format: "0",
      is: unlessBlank(["dwelling"], when(isNumber("buy"), value(1), value(0))),
    }),
    text("ductKind", "Duct kind", "duct type", { choices: ductKinds }),
    number("ductDiameter", "Duct diameter", "duct size", { measure: "length" }),
    number("ductLength", "Duct length", "duct run", { measure: "distance" }),
    number("elbows", "Elbows", "bends"),
    text("allowed", "Length allowed", "allowed duct length", {
      says: ["no limit", "not allowed"],
      is: unlessBlank(
        [setting("ducts"), "ductKind"],
        whenBought(
          rule(
            "DUCT_LIMIT",
            setting("ducts"),
            "ductKind",
            "ductDiameter",
            "buy",
            orNothing("elbows"),
            units,
          ),
        ),
      ),
    }),
    text("duct", "Duct check", "duct ok", {
      says: ["fits", "too long", "too narrow"],
      is: unlessBlank(
        ["allowed", "ductLength"],
        when(
          same("allowed", value("no limit")),
          value("fits"),
          when(
            same("allowed", value("not allowed")),
            value("too narrow"),
            when(atMost("ductLength", "allowed"), value("fits"), value("too long")),
          ),
        ),
      ),
    }),
    text("box", "Box", "flow box, box to bring"),
    text("openings", "Opening to bring", "expected opening", {
      is: unlessBlank(
        ["box"],
        whenBought(
          rule("EXPECTED_OPENING", "buy", ...openingsOfBox, boxConstant, ...window, units),
        ),
      ),
    }),
    number("fanCost", "Fan cost", "cost of the fan", {
      ...money,
      is: unlessBlank(
        ["required"],
        when(
          isNumber("buy"),
          when(isNumber(costOf("model")), costOf("model"), nothing),
          // A fan that the catalogue does not have is no fan for nothing.
          when(same("required", value("none")), value(0), nothing),
        ),
      ),
    }),
    number("ductCost", "Duct cost", "cost of the duct", {
      ...money,
      is: unlessBlank(
        ["required"],
        when(
          isBlank("ductItem"),
          value(0),
          when(
            both(isNumber("ductLength"), isNumber(costOf("ductItem"))),
            times("ductLength", costOf("ductItem")),
            nothing,
          ),
        ),
      ),
    }),
    noteField,
    text("ductItem", "Duct item", "duct to buy", {
      isAside: true,
      is: when(
        isBlank("ductKind"),
        nothing,
        joined("ductKind", joined(value(" "), "ductDiameter")),
      ),
    }),
  ],
};

import { ductKinds, duties, roomKinds } from "../../editions";
import {
  atMost,
  column,
  found,
  largest,
  rule,
  same,
  setting,
  unlessBlank,
  value,
  when,
} from "./expression";
import { dwellingField, noteField, number, type SheetLayout, text, yesNo } from "./field";
import { boxConstant, openingsOfBox, units, window } from "./reused";

const flow = { measure: "flow" } as const;
const ofRoom = rule("ROOM_RATE", setting("edition"), "roomKind", "duty", "volume", units);
const ofDwelling = found("dwellings", "required", "dwelling");

/** A row a planned fan: what it must move, what to buy, whether its duct will do. */
export const scheduleLayout: SheetLayout = {
  kind: "schedule",
  title: "Schedule",
  words: ["schedule", "fan schedule", "planned fans", "estimate", "takeoff"],
  names: ["dwelling", "tag"],
  features: ["estimate"],
  fields: [
    dwellingField,
    text("tag", "Fan", ["fan tag", "tag", "fan id"]),
    text("room", "Room", ["location", "room name"]),
    text("roomKind", "Room kind", ["room type", "kind of room"], { choices: roomKinds }),
    text("duty", "Duty", ["mode", "operation", "control"], { choices: duties }),
    number("volume", "Room volume", ["volume", "kitchen volume"], { measure: "volume" }),
    text("whole", "For the whole dwelling", ["whole dwelling", "whole house"], {
      needed: true,
      choices: yesNo,
    }),
    number("required", "Required", ["required flow", "minimum", "code minimum"], {
      ...flow,
      is: unlessBlank(
        ["dwelling"],
        when(same("whole", value("yes")), largest(ofRoom, ofDwelling), ofRoom),
      ),
    }),
    number("buy", "Rated flow to buy", ["smallest rated flow", "fan size"], {
      ...flow,
      is: unlessBlank(
        ["required"],
        rule("FAN_SIZE", "required", setting("margin"), column("catalogue", "rated")),
      ),
    }),
    text("ductKind", "Duct kind", ["duct type"], { choices: ductKinds }),
    number("ductDiameter", "Duct diameter", ["duct size"], { measure: "length" }),
    number("ductLength", "Duct length", ["duct run"], { measure: "distance" }),
    number("elbows", "Elbows", ["bends"]),
    text("allowed", "Length allowed", ["allowed duct length"], {
      says: ["no limit", "not allowed"],
      is: unlessBlank(
        ["buy", "ductKind"],
        rule("DUCT_LIMIT", setting("ducts"), "ductKind", "ductDiameter", "buy", "elbows", units),
      ),
    }),
    text("duct", "Duct check", ["duct ok"], {
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
    text("box", "Box", ["flow box", "box to bring"]),
    text("openings", "Opening to bring", ["expected opening"], {
      is: unlessBlank(
        ["buy", "box"],
        rule("EXPECTED_OPENING", "buy", ...openingsOfBox, boxConstant, ...window, units),
      ),
    }),
    noteField,
  ],
};

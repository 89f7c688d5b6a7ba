import { cookings, ductKinds, duties, findDuty, roomKinds } from "../../editions";
import { attempt, valueIn } from "../read/maybe";
import { dwellingField, type Field, number, text, yesNo } from "./field";

/** What is told of a fan, its room and its duct, and what it is read with. */
export const describedFields: readonly Field[] = [
  dwellingField,
  text("tag", "Fan", "fan tag, tag, fan id, fan no, fan number, fan #, ef, fan label"),
  text("room", "Room", "location, room name, space"),
  text("roomKind", "Room kind", "room type, rm type, kind of room, type of room, space type", {
    choices: roomKinds,
  }),
  text("duty", "Duty", "mode, operation, running, control, fan duty, run mode", {
    choices: duties,
    reads: (text) => valueIn(attempt(() => findDuty(text))) ?? "",
  }),
  number("visit", "Visit", "visit no, test no, attempt", {
    format: "0",
    feature: "visits",
    entry: "seldom",
  }),
  text("speed", "Speed", "fan speed, speed setting", {
    feature: "visits",
    choices: ["low", "boost"],
    entry: "seldom",
  }),
  text("direction", "Direction", "air direction, exhaust or supply, terminal", {
    feature: "visits",
    choices: ["exhaust", "supply"],
    reads: (text) => (/^(sup|inlet|in$)/i.test(text) ? "supply" : text),
    entry: "seldom",
  }),
  number("runShare", "Share of time on", "run share, run time, on time", {
    format: "0%",
    feature: "visits",
    entry: "seldom",
  }),
  text("window", "Openable window", "window, operable window", {
    feature: "existing",
    choices: yesNo,
  }),
  number("volume", "Room volume", "volume, kitchen volume", {
    measure: "volume",
    entry: "seldom",
  }),
  text("enclosed", "Enclosed kitchen", "enclosed, closed kitchen", {
    feature: "kitchens",
    choices: yesNo,
    entry: "seldom",
  }),
  text("cooking", "Cooking", "cooks with, cooktop, hob, range fuel", {
    feature: "kitchens",
    choices: cookings,
    entry: "seldom",
  }),
  number("capture", "Capture efficiency", "capture, capture %, ce", {
    format: "0",
    feature: "kitchens",
    entry: "seldom",
  }),
  number(
    "rated",
    "Rated flow",
    "rated, rating, nameplate, nameplate flow, rated fan flow, label flow",
    { measure: "flow", format: "0" },
  ),
  text("fanKind", "Fan kind", "kind of fan, fan type", { feature: "equipment" }),
  number("watts", "Watts", "power, input power, w", { feature: "equipment" }),
  number("sones", "Sones", "sound, sone, loudness", { feature: "equipment" }),
  number("design", "Design flow", "design, design airflow", {
    measure: "flow",
    feature: "equipment",
  }),
  text("ductKind", "Duct kind", "duct type, duct material", {
    feature: "equipment",
    choices: ductKinds,
  }),
  number("ductDiameter", "Duct diameter", "duct size, duct dia", {
    measure: "length",
    feature: "equipment",
  }),
  number("ductLength", "Duct length", "length of duct, duct run", {
    measure: "distance",
    feature: "equipment",
  }),
  number("elbows", "Elbows", "bends, number of elbows", { feature: "equipment" }),
  text("box", "Box", "flow box, box id, box used, device", { entry: "repeated" }),
  text(
    "openings",
    "Openings in use",
    "openings, opening, openings open, opening used, hole, holes, holes open",
  ),
  text("instrument", "Instrument", "measured with, meter used, instrument used", {
    feature: "instruments",
    entry: "repeated",
  }),
  text("seal", "Seal", "box seal, gasket", {
    feature: "conditions",
    choices: ["tight", "leaky"],
    entry: "seldom",
  }),
  number("grille", "Grille area", "grille, hood area, grille size", {
    measure: "opening",
    feature: "conditions",
    entry: "seldom",
  }),
  text("shared", "Shared duct with", "shared duct, duct shared with, booster", {
    feature: "conditions",
    entry: "seldom",
  }),
];

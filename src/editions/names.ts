import { type DuctKind, ductKinds, type FanKind, fanKinds } from "./equipment";
import { finder } from "./finder";
import { type Cooking, cookings, type Duty, duties, type RoomKind, roomKinds } from "./room";

/** A finder of kinds by their own names and by common other words for them. */
function kinds<T extends string>(what: string, known: readonly T[], words: Record<T, string[]>) {
  return finder<T>(
    what,
    known.map((kind) => [kind, [kind, ...words[kind]]]),
    (kind) => kind,
  );
}

export const findRoom = kinds<RoomKind>("room kind", roomKinds, {
  bathroom: ["bath", "full bath", "shower room", "wet room", "ensuite", "en suite"],
  toilet: ["toilet room", "half bath", "powder room", "wc", "sanitary"],
  "kitchen hood": ["hood", "range hood", "cooker hood", "vented hood"],
  kitchen: ["kitchen other", "kitchen no hood", "downdraft"],
  utility: ["utility room", "laundry", "laundry room"],
});

export const findDuty = kinds<Duty>("duty", duties, {
  "on demand": ["demand", "intermittent", "demand controlled"],
  continuous: ["cont", "always on"],
});

export const findCooking = kinds<Cooking>("cooking", cookings, {
  electric: ["electricity", "induction", "all electric"],
  fuel: ["gas", "natural gas", "propane", "lpg", "combustion", "dual fuel"],
});

export const findFan = kinds<FanKind>("fan kind", fanKinds, {
  "heat recovery": ["hrv", "erv", "heat recovery ventilator", "energy recovery"],
  "range hood": ["hood", "kitchen hood"],
  "in-line": ["in-line fan", "in-line exhaust", "in-line supply"],
  "bath or utility": ["bath", "bathroom", "bath fan", "utility", "other exhaust", "ceiling"],
  "air handler": ["air handler integrated", "integrated air handler"],
});

export const findDuct = kinds<DuctKind>("duct kind", ductKinds, {
  flex: ["flexible", "flex duct"],
  smooth: ["rigid", "smooth wall", "smooth duct", "metal"],
});

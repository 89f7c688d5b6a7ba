import { findDuty, findEdition, findRoom } from "../../editions";
import {
  dwellingRateBounded,
  dwellingRateEquation,
  dwellingRateLarger,
  rateForPersons,
} from "../../formulas";
import { dwellingRate, roomRate } from "../rules";
import { aboveZero } from "./given";
import { lookedUp } from "./looked-up";
import type { Working } from "./working";

export const flowUnit = { ip: "cfm", si: "L/s" };

const dwellingFormulas = [
  dwellingRateEquation,
  dwellingRateLarger,
  dwellingRateBounded,
  rateForPersons,
];

export const required = {
  ROOM_RATE: {
    title: "Required rate of a room",
    takes: ["edition", "room", "duty", "volume", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const edition = findEdition(given.text("edition"));
      const room = findRoom(given.text("room"));
      const duty = findDuty(given.text("duty"));
      const volume = given.optionalNumber("volume", { refuse: aboveZero });
      const { rate, ...why } = roomRate(edition, room, duty, system, { volume });
      return lookedUp({ ...why, value: rate }, flowUnit, system);
    },
  },
  DWELLING_RATE: {
    title: "Required rate of a dwelling",
    takes: ["edition", "floorArea", "bedrooms", "method", "units", "occupants"],
    explain: (given) => {
      const { system = "ip" } = given;
      const edition = findEdition(given.text("edition"));
      const area = given.number("floorArea", { refuse: aboveZero });
      const bedrooms = given.number("bedrooms");
      const method = given.optionalText("method");
      const people = given.optionalNumber("occupants");
      const { rate, ...why } = dwellingRate(edition, area, bedrooms, system, method, people);
      return lookedUp({ ...why, value: rate }, flowUnit, system, dwellingFormulas);
    },
  },
} satisfies Record<string, Working>;

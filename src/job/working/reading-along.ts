import { findDuty, findEdition, findRoom } from "../../editions";
import { dwellingSource, everyNumber, numbersOf, roomSource } from "../rules";
import type { Working } from "./working";

/** Functions that tell of other numbers and have no sum of their own. */
export const readingAlong = {
  WORKING: {
    title: "How another call comes to its result",
    takes: ["name", "values"],
    explain: (given) => ({ words: [`the sum of ${given.text("name")}, as text`], sources: [] }),
  },
  SOURCE: {
    title: "Where a rate stands",
    takes: ["edition", "room", "duty"],
    explain: (given) => {
      const edition = findEdition(given.text("edition"));
      if (!given.has("room") && !given.has("duty"))
        return { sources: [], gives: [dwellingSource(edition)] };
      const room = findRoom(given.text("room"));
      const duty = findDuty(given.text("duty"));
      return { sources: [], gives: [roomSource(edition, room, duty)] };
    },
  },
  EDITIONS: {
    title: "Numbers of the editions and rules",
    takes: ["edition"],
    explain: (given) => {
      const named = given.optionalText("edition");
      const count = (named === "" ? everyNumber() : numbersOf(named)).length;
      const of = named === "" ? "all editions and rules" : named;
      return { words: [`${count} numbers of ${of}, each with its clause and mark`], sources: [] };
    },
  },
} satisfies Record<string, Working>;

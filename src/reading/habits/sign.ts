import type { Spot } from "../../cells";
import type { SheetBlock } from "../blocks/block";
import type { Cells } from "../cells/cells";
import { plain } from "../text/plain";
import type { Habit } from "../types";
import { languages, phrasesOf } from "../words";
import type { Answered } from "./answered";

/** Against what the box is read: stated in a heading or a note, else by the sign of most readings. */
export function signOf(
  block: SheetBlock,
  notes: readonly SignNote[],
  answered: Answered,
): Habit<"room" | "box"> | undefined {
  let [negative, positive] = [0, 0];
  for (let at = 0; at < block.fans.length; at++) {
    const number = block.read[at] ? block.number(at, "pressure") : null;
    if (number === null || number === 0) continue;
    if (number < 0) negative++;
    else positive++;
  }
  if (negative + positive === 0) return undefined;
  const learnt = negative > positive ? "box" : "room";
  const share = Math.max(negative, positive) / (negative + positive);
  const shareOf = (value: "room" | "box") => (value === learnt ? share : 1 - share);
  const said = answered("pressure", "sign");
  if (said === "room" || said === "box")
    return { value: said, share: shareOf(said), stated: undefined, because: "you said so" };
  const stated = statedSign(block, notes);
  if (stated)
    return {
      value: stated.value,
      share: shareOf(stated.value),
      stated: stated.place,
      because: `"${stated.text}" says so`,
    };
  const word =
    learnt === "box" ? "negative: the box against the room" : "positive: the room against the box";
  return {
    value: learnt,
    share,
    stated: undefined,
    because: `${Math.round(share * 100)} % of the pressures are ${word}`,
  };
}

/** A note on against what the box is read. */
export interface SignNote {
  readonly value: "room" | "box";
  readonly text: string;
  readonly place: Spot;
}

function statedSign(block: SheetBlock, notes: readonly SignNote[]): SignNote | undefined {
  const line = block.roles.get("pressure");
  const value = line && readSign(line.heading);
  if (line && value)
    return {
      value,
      text: line.heading,
      place: block.cells.place(Math.max(0, block.headings.at(-1) ?? 0), line.line),
    };
  return notes.find(({ place }) => place.sheet === block.sheet) ?? notes[0];
}

/** Notes near the tops of the sheets that say it. */
export function signNotes(sheets: readonly Cells[]): SignNote[] {
  return sheets.flatMap((cells) => {
    for (let row = 0; row < Math.min(cells.rows, 40); row++)
      for (let col = 0; col < Math.min(cells.cols, 30); col++) {
        const text = cells.text(row, col);
        const value = text.length > 8 ? readSign(text) : undefined;
        if (value) return [{ value, text, place: cells.place(row, col) }];
      }
    return [];
  });
}

/** "room minus box" is "room"; "box against room" is "box". */
function readSign(text: string): "room" | "box" | undefined {
  const name = ` ${plain(text)} `;
  for (const { sign } of languages) {
    if (phrasesOf(sign.negative).some((phrase) => name.includes(` ${phrase} `))) return "box";
    const [box, room, against] = [sign.box, sign.room, sign.against].map(
      (list) =>
        phrasesOf(list)
          .map((phrase) => name.indexOf(` ${phrase} `))
          .filter((at) => at >= 0)
          .sort((a, b) => a - b)[0],
    );
    if (box === undefined || room === undefined || against === undefined) continue;
    if (box < against && against < room) return "box";
    if (room < against && against < box) return "room";
  }
  return undefined;
}

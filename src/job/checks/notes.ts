import { eachFan } from "./each";

/** What a note may say that bears on the reading beside it: words, and what to do about it. */
const telling = [
  {
    words: /\b(leak(s|y|ed|ing)?|gaps?|not sealed|poor seal|no seal)\b/i,
    mend: "Seat the box again, all round the grille, and read again.",
  },
  {
    words: /\b(taped (off|over|up)|tape[ds]?)\b/i,
    mend: "Say what was taped and whether it is as the fan will run; read again without it if not.",
  },
  {
    words: /\b(wind|windy|gusts?|gusty|stormy)\b/i,
    mend: "Read again in calm weather, or average over a longer time and widen the spread.",
  },
  {
    words: /\b((window|door)s? (was |were |left )?open|other fans? (was |were )?(on|running))\b/i,
    mend: "Close the outside openings, turn the other fans off and read again.",
  },
  {
    words: /\b(no (grille|filter|cover)|(grille|filter|cover)s? (off|removed|missing))\b/i,
    mend: "Put the grille and filter back as the fan will run, and read again.",
  },
] as const;

const denied = /\b(no|without|not|never|none|fixed|mended|repaired)\b[^.;,]*$/i;

/** Notes of measured fans that say what the numbers do not: a leak, tape, wind, an open door. */
export const checkNotes = eachFan((fans) => {
  if (!fans.table.has("note")) return undefined;
  return (i, say) => {
    if (!((fans.flow[i] as number) > 0)) return;
    const note = fans.table.text("note", i);
    for (const { words, mend } of telling) {
      const said = words.exec(note);
      if (!said || denied.test(note.slice(0, said.index))) continue;
      say("note-says", "note", {
        what: `the note says "${said[0]}"`,
        effect: "The reading may not be that of the fan as it runs day by day.",
        mend,
      });
      break;
    }
  };
});

import { duties, roomKinds } from "../../editions";
import { NoneAsked } from "../../rules";
import type { Question } from "../findings";
import { plainName } from "../fit";
import { listed } from "../words";
import { eachFan } from "./each";

/** Room kind and duty, without which a fan has no required rate. */
export const checkRooms = eachFan((fans, job) => {
  const { settings } = job;
  const { table } = fans;
  const isOwn = job.firm !== undefined && table.has("required");
  const effect = isOwn
    ? "The rate that its sheet asks cannot be compared with others of its kind."
    : "The fan has no required rate, so no verdict.";
  const typed = (text: string, words: readonly string[]) =>
    job.firm && text !== ""
      ? "Say what it means in the pane, on the Fit screen; or type a word that is known."
      : `Type one of ${listed(words)}.`;
  return (i, say) => {
    const room = fans.room(i);
    const duty = fans.duty(i);
    if (
      table.has("roomKind", i) &&
      !fans.isSupply(i) &&
      !("value" in room) &&
      !job.firm?.isKnown(i, "room")
    ) {
      const text = table.text("roomKind", i);
      say(text === "" ? "room-missing" : "room-unknown", "roomKind", {
        what: text === "" ? "the room kind is missing" : `"${text}" is no known room kind`,
        effect,
        mend: typed(text, roomKinds),
        cause: plainName(text),
        question: ask(text, "which kind of room", roomKinds),
      });
    }
    if (table.has("duty", i) && !("value" in duty) && !job.firm?.isKnown(i, "duty")) {
      const text = table.text("duty", i);
      say(text === "" ? "duty-missing" : "duty-unknown", "duty", {
        what: text === "" ? "the duty is missing" : `"${text}" is no known duty`,
        effect: isOwn
          ? effect
          : `${effect} On demand and continuous rates differ by more than two to one.`,
        mend: typed(text, duties),
        cause: plainName(text),
        question: ask(text, "on demand or continuous", duties),
      });
    }
    if (!settings.edition || fans.isSupply(i) || !("value" in room) || !("value" in duty)) return;
    const rate = fans.required(i);
    const named = settings.edition.rooms.some(({ room: each }) => each === room.value);
    // A terminal of a unit that ventilates the whole dwelling is judged with the dwelling.
    if (!named && table.has("counts") && duty.value === "continuous") return;
    if (!named)
      say("rate-none", "roomKind", {
        what: `${settings.edition.id} asks no exhaust rate of a ${room.value}: none required`,
        effect: "The flow is kept and not judged.",
        cause: room.value,
        mend: "Nothing to mend, unless the room is of another kind, such as one with a bath or shower.",
      });
    else if ("problem" in rate && !(rate.problem instanceof NoneAsked))
      say("rate-not-set", "roomKind", {
        what: (rate.problem as Error).message,
        effect,
        cause: (rate.problem as Error).message,
        mend: "Correct the room kind or the duty; or give the room's volume, and whether a kitchen is enclosed, where air changes are asked for.",
      });
  };
});

/** What to ask of a word that is not known; nothing of a blank. */
function ask(word: string, choice: string, candidates: readonly string[]): Question | undefined {
  return word === ""
    ? undefined
    : { word, asks: `What does "${word}" mean: ${choice}?`, candidates };
}

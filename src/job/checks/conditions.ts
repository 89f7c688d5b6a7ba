import { shown } from "../../cells";
import { unitOf } from "../columns";
import { plainName } from "../fit";
import { listed } from "../words";
import { eachFan, eachRow } from "./each";

/** A house at rest that differs by more from outdoors has wind, or a fan, upon it (common practice). */
const mostBaseline = 5;

/** What a dwelling's row may say of the house during the test that bears on every reading in it. */
const odd = [
  { key: "windows", says: /^(open|ajar|yes)/i, what: "windows or outer doors were open" },
  { key: "others", says: /^(on|running|yes)/i, what: "other exhaust was on" },
  { key: "wind", says: /gust|wind|storm|strong/i, what: "it was gusty" },
] as const;

/** The state of the house while its fans were read. */
export const checkHouse = eachRow("dwellings", (dwellings) => (i, say) => {
  const found: { key: string; what: string }[] = odd.filter(
    ({ key, says }) => dwellings.has(key) && says.test(dwellings.text(key, i)),
  );
  const baseline = dwellings.number("baseline", i);
  if (Math.abs(baseline) > mostBaseline)
    found.push({ key: "baseline", what: `the house stood at ${shown(baseline)} Pa at rest` });
  const [first] = found;
  if (!first) return;
  say("house-state", first.key, {
    what: `during the test ${listed(found.map(({ what }) => what))}`,
    effect: "The readings of this dwelling may not be those of the fans as they run day by day.",
    mend: "Read its fans again with windows and outer doors shut, other exhaust off, in calm weather; or say why it stands.",
  });
});

/** The seat of the box, and the duct, while a fan was read. */
export const checkSeats = eachFan((fans, { settings }) => {
  const { table, boxes } = fans;
  return (i, say) => {
    if (!fans.isMeasured(i)) return;
    if (/^(leak|no|poor|bad|gap)/i.test(table.text("seal", i)))
      say("box-seat", "seal", {
        what: `the seal of the box was "${table.text("seal", i)}"`,
        effect: "Air that passes beside the opening is not counted: the flow reads low.",
        mend: "Seat the box all round the grille, or use a taller gasket, and read again.",
      });
    const face = Math.max(
      0,
      ...(boxes?.rows(table.text("box", i)) ?? []).map(
        (row) => boxes?.table.number("face", row) || 0,
      ),
    );
    const grille = table.number("grille", i);
    if (!fans.isByInstrument(i) && face > 0 && grille > face)
      say("box-seat", "grille", {
        what: `a grille or hood of ${shown(grille)} ${unitOf("opening", settings.system)} is larger than the face of the box, ${shown(face)}`,
        effect: "The box cannot cover it: what passes beside it is not counted.",
        mend: "Use a larger box or another instrument, and name it.",
      });
    const others = table
      .text("shared", i)
      .split(/[,+&;]|\band\b/)
      .map(plainName)
      .filter(Boolean);
    const alone = others.filter((tag) => !isReadWith(tag, i));
    if (alone.length > 0)
      say("duct-shared", "shared", {
        what: `shares a duct with ${table.text("shared", i)}, of which no reading of that day is here`,
        effect: "Fans on one duct take from each other: each has to be read while all run.",
        mend: "Read all of them on one visit, running together.",
      });
  };

  /** Whether another fan of the dwelling was read the same day. */
  function isReadWith(tag: string, i: number): boolean {
    const of = (key: string, row: number) => plainName(table.text(key, row));
    return Array.from({ length: fans.length }, (_, row) => row).some(
      (row) =>
        of("dwelling", row) === of("dwelling", i) &&
        of("tag", row) === tag &&
        of("date", row) === of("date", i) &&
        fans.isMeasured(row),
    );
  }
});

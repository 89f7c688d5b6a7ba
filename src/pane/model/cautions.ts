/** A short caution, shown once where it matters. */
interface Caution {
  readonly key: string;
  readonly title: string;
  readonly text: string;
}

/** Each defers to local code and licensed practice; none gives a permission. */
export const cautions: readonly Caution[] = [
  {
    key: "ladder",
    title: "Ladders",
    text: "Holding a box overhead and reading a meter takes two hands. Use a stand or a second person, level ground and a ladder meant for the height.",
  },
  {
    key: "live",
    title: "Live parts",
    text: "Keep hands and box off fan terminals. Leave grilles on while the fan has power. Wiring is for those licensed to do it.",
  },
  {
    key: "combustion",
    title: "Combustion appliances",
    text: "Exhaust fans can draw flue gas back into a home. Where there is a fuel-burning appliance, have a qualified person test it with the fans running before and after work on them.",
  },
  {
    key: "makeup",
    title: "Makeup air",
    text: "A large kitchen exhaust can need makeup air by code: often above 400 cfm (about 190 L/s), in some places less. Ask the local authority.",
  },
  {
    key: "taped",
    title: "Taped boxes",
    text: "Never leave a box or bag taped over a fan. Take it off, and the tape with it, before you go to the next one.",
  },
];

/** The cautions that have not been put away. */
export function cautionsLeft(seen: readonly string[]): Caution[] {
  return cautions.filter((caution) => !seen.includes(caution.key));
}

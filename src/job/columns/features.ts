/** What a new job may have beyond readings and verdicts. */
interface Feature {
  readonly title: string;
  readonly help: string;
}

/** Each field and each sheet names the features that it belongs to. */
export const features = {
  spread: {
    title: "Spread of each flow",
    help: "What the manometer, the sizes and the constant leave open, and the chance that a fan meets its rate",
  },
  proof: {
    title: "Proof of the boxes",
    help: "Paired readings of a box and a reference, and a list of instruments",
  },
  instruments: {
    title: "Other instruments",
    help: "Fans measured with a hood, a bag or a device with range settings",
  },
  twoOpenings: {
    title: "Second opening",
    help: "A second reading, from which the flow without the box follows",
  },
  air: {
    title: "Air density",
    help: "Actual and standard flow beside the measured one",
  },
  equipment: {
    title: "Equipment",
    help: "Watts, sones, ducts and the design flow of each fan",
  },
  kitchens: {
    title: "Kitchens",
    help: "Enclosed or open, electric or fuel, and what a listed hood catches",
  },
  visits: {
    title: "Retests, speeds and supply",
    help: "A fan read again or at two speeds, supply beside exhaust, fans on a timer, and what each counts for the dwelling",
  },
  conditions: {
    title: "State of the house",
    help: "Windows, other fans, wind and baseline of each dwelling; seal, grille and shared duct of each fan",
  },
  existing: {
    title: "Existing building",
    help: "Room deficits, infiltration credit and what is still missing",
  },
  registers: {
    title: "Pressure pan",
    help: "The closed box over each register, house at 50 Pa",
  },
  estimate: {
    title: "Estimate",
    help: "Planned fans: what to buy, whether the duct will do, which opening to bring",
  },
} as const satisfies Record<string, Feature>;

export type FeatureKey = keyof typeof features;

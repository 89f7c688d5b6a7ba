/** What every record says of itself: it defers to local code and to those licensed to do the work. */
export const cautions: readonly string[] = [
  "This is a record of measurements, not an approval. The authority that has jurisdiction decides what applies and whether it is met; rates marked “from memory” must be compared with a copy of the standard.",
  "Exhaust fans can draw flue gas back into a home. Where there is a fuel-burning appliance, a qualified person tests it with the fans running, before and after work on them.",
  "Wiring, gas and duct work is for those licensed to do it. Large kitchen exhausts can need makeup air by code.",
];

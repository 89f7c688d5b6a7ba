/** Entries that a drop-down list offers, by field; other entries are checked when the job is read. */
export const lists: Readonly<Record<string, readonly string[]>> = {
  roomKind: ["bathroom", "toilet", "kitchen hood", "kitchen", "utility"],
  duty: ["on demand", "continuous"],
  shape: ["round", "rectangular"],
};

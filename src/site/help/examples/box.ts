export const labels = ["A", "B", "C"];
export const areas = [4, 12, 24];
/** The openings of one box, as the examples write them: A 4 in², B 12 in², C 24 in². */
export const box = [labels, areas] as const;

const ends = ["left", "mid", "right"];
const edges = ["top", "bottom"].flatMap((side) => [side, ...ends.map((end) => `${side}-${end}`)]);
const inner = ["left", "left-mid", "mid", "mid-mid", "right", "right-mid", "middle"];

/** The characters of a table without any lines. */
export const noLines = Object.fromEntries([...edges, ...inner].map((name) => [name, ""]));

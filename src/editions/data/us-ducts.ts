import { type DocumentId, sourcesIn } from "../documents";
import type { DuctKind, DuctTable } from "../equipment";

const no = Number.POSITIVE_INFINITY;

/** Of each kind of duct: diameter, then the lengths of the flow columns. */
type Lengths = Readonly<Record<DuctKind, readonly (readonly [diameter: number, ...number[]])[]>>;

const ircLengths: Lengths = {
  flex: [
    [3, 0, 0, 0, 0, 0, 0, 0, 0],
    [4, 56, 4, 0, 0, 0, 0, 0, 0],
    [5, no, 81, 42, 16, 2, 0, 0, 0],
    [6, no, no, 158, 91, 55, 18, 1, 0],
    [7, no, no, no, no, 161, 78, 40, 19],
    [8, no, no, no, no, no, 189, 111, 69],
  ],
  smooth: [
    [3, 5, 0, 0, 0, 0, 0, 0, 0],
    [4, 114, 31, 10, 0, 0, 0, 0, 0],
    [5, no, 152, 91, 51, 28, 4, 0, 0],
    [6, no, no, no, 168, 112, 53, 25, 9],
    [7, no, no, no, no, no, 148, 88, 54],
    [8, no, no, no, no, no, no, 198, 133],
  ],
};

/** A length that is not printed is what a wider duct or a smaller flow has at least. */
const northwestLengths: Lengths = {
  flex: [
    [4, 25, 0, 0, 0, 0],
    [5, 90, 15, 0, 0, 0],
    [6, no, 90, 45, 15, 4],
    [7, no, 90, 70, 70, 50],
  ],
  smooth: [
    [4, 70, 20, 0, 0, 0],
    [5, 100, 100, 50, 0, 0],
    [6, no, no, no, no, 40],
    [7, no, no, no, no, 100],
  ],
};

type Rest = Pick<DuctTable, "ratedAt" | "ratedFlows" | "elbow" | "freeElbows">;

function table(
  work: string,
  clause: string,
  document: DocumentId,
  lengths: Lengths,
  rest: Rest,
): DuctTable {
  const read = (place: string) => sourcesIn(work)(place, "read", document);
  return {
    ...rest,
    rows: (["flex", "smooth"] as const).flatMap((duct) =>
      lengths[duct].map(([diameter, ...row]) => ({
        duct,
        diameter,
        lengths: row.slice(0, rest.ratedFlows.length),
        source: read(`table ${clause}, ${duct}, ${diameter} in`),
      })),
    ),
    source: read(`table ${clause}`),
    waivedByMeasuring: { source: read(`${clause}, exception`) },
  };
}

export const irc = (work: string, clause: string, document: DocumentId): DuctTable =>
  table(work, clause, document, ircLengths, {
    ratedAt: 0.25,
    ratedFlows: [50, 80, 100, 125, 150, 200, 250, 300],
    elbow: 15,
  });

/** Washington's table; Oregon has one column more and another rating pressure. */
export const northwest = (
  work: string,
  clause: string,
  document: DocumentId,
  rest: Pick<DuctTable, "ratedAt" | "ratedFlows">,
): DuctTable =>
  table(work, clause, document, northwestLengths, { ...rest, elbow: 10, freeElbows: 3 });

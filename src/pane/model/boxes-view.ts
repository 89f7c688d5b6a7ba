import { constantInUse, gapsBetween, type Job, mostOfFace, type Reach, reachOf } from "../../job";

/** One opening of a box, with its drawing sizes and its reach. */
export interface OpeningView {
  readonly label: string;
  /** "rectangular" where it has a second size, or its shape says so. */
  readonly shape: "round" | "rectangular";
  /** Diameter or width, in the job's length unit; NaN where not given. */
  readonly width: number;
  /** Same as `width` for a round opening. */
  readonly height: number;
  readonly count: number;
  /** Total open area, in the job's unit. */
  readonly area: number;
  readonly reach: Reach;
}

export interface BoxView {
  readonly name: string;
  readonly constant: number;
  /** Area of its face as the sheet has it; NaN where it does not say. */
  readonly face: number;
  /** Smallest first. */
  readonly openings: readonly OpeningView[];
  /** Flows between the openings, each used alone, that none of them reads. */
  readonly gaps: readonly Reach[];
}

export function boxViews(job: Job): BoxView[] {
  const { boxes, settings } = job;
  if (!boxes) return [];
  const { table } = boxes;
  const number = (key: string, i: number, otherwise: number) => {
    const value = table.has(key) ? table.number(key, i) : Number.NaN;
    return value > 0 ? value : otherwise;
  };
  return boxes.names.map((name) => {
    const constant = constantInUse(job, name);
    const openings = boxes.rows(name).flatMap((i) => {
      const area = table.number("area", i);
      if (!(area > 0)) return [];
      const width = number("size1", i, Number.NaN);
      const height = number("size2", i, width);
      const round = /^(round|circ)/i.test(table.has("shape") ? table.text("shape", i) : "");
      return [
        {
          label: table.text("opening", i),
          shape: round || height === width ? ("round" as const) : ("rectangular" as const),
          width,
          height: round ? width : height,
          count: number("count", i, 1),
          area,
          reach: reachOf(area, constant, settings),
        },
      ];
    });
    openings.sort((a, b) => a.area - b.area);
    const face = boxes
      .rows(name)
      .map((i) => number("face", i, Number.NaN))
      .find((area) => area > 0);
    return {
      name,
      constant,
      face: face ?? Number.NaN,
      openings,
      gaps: gapsBetween(openings.map(({ reach }) => reach)),
    };
  });
}

/** The openings too large for a box face of this area (same unit), with their share of it. */
export function tooLargeFor(
  openings: readonly OpeningView[],
  face: number,
): { readonly label: string; readonly share: number }[] {
  if (!(face > 0)) return [];
  return openings
    .map(({ label, area }) => ({ label, share: area / face }))
    .filter(({ share }) => share > mostOfFace);
}

import type { Formula, Source } from "./formula";
import { area, constant, flow, pressure, quantity, symbol } from "./quantities";

const geometry: Source = { work: "plane geometry", clause: "", mark: "by definition" };
const length = { ip: "in", si: "cm" };
const areaResult = quantity("A", "A", "open area", area.unit);

export const roundArea: Formula = {
  id: "round-area",
  title: "Area of a round opening",
  result: areaResult,
  symbols: [symbol("d", "d", "diameter of the hole", length, [0.1, 40])],
  text: "pi / 4 * d ^ 2",
  validity: "Any round hole; the constant 1.07 suits sharp holes of about 3 to 6 in.",
  source: geometry,
};

export const rectArea: Formula = {
  id: "rect-area",
  title: "Area of a rectangular opening",
  result: areaResult,
  symbols: [
    symbol("w", "w", "width of the opening", length, [0.1, 60]),
    symbol("h", "h", "height of the opening", length, [0.1, 60]),
  ],
  text: "w * h",
  validity: "Square corners. Long slots pass 1 to 6 % more than the constant says.",
  source: geometry,
};

export const areaForFlow: Formula = {
  id: "area-for-flow",
  title: "Open area that puts the box at a wanted pressure",
  result: areaResult,
  symbols: [flow, pressure, constant],
  text: "Q / (K * sqrt(P))",
  validity: "The flow formula turned round; same validity.",
  source: { work: "the flow formula, solved for A", clause: "", mark: "by definition" },
};

export const diameterForArea: Formula = {
  id: "diameter-for-area",
  title: "Diameter of a round hole of a wanted area",
  result: quantity("d", "d", "diameter of the hole", length),
  symbols: [area],
  text: "2 * sqrt(A / pi)",
  validity: "Any round hole.",
  source: geometry,
};

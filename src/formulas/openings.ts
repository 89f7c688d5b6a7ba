import type { Formula, Source } from "./formula";
import { area, constant, flow, pressure, quantity, symbol, worked } from "./quantities";

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
  example: worked({ d: 4.25 }, 14.186, 3, "a 4¼ in hole"),
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
  example: worked({ w: 3, h: 8 }, 24, 6, "a 3 by 8 in slot"),
};

export const areaForFlow: Formula = {
  id: "area-for-flow",
  title: "Open area that puts the box at a wanted pressure",
  result: areaResult,
  symbols: [flow, pressure, constant],
  text: "Q / (K * sqrt(P))",
  validity: "The flow formula turned round; same validity.",
  source: { work: "the flow formula, solved for A", clause: "", mark: "by definition" },
  example: worked({ Q: 50, P: 4, K: 1.07 }, 23.364, 3, "50 cfm at 4 Pa"),
};

export const diameterForArea: Formula = {
  id: "diameter-for-area",
  title: "Diameter of a round hole of a wanted area",
  result: quantity("d", "d", "diameter of the hole", length),
  symbols: [area],
  text: "2 * sqrt(A / pi)",
  validity: "Any round hole.",
  source: geometry,
  example: worked({ A: 23.364 }, 5.454, 3, "the hole for 50 cfm at 4 Pa"),
};

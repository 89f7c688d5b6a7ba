import type { Rectangle } from "../../cells";

/** What is left of a rectangle when another is cut out of it: up to four rectangles. */
export function subtract(from: Rectangle, cut: Rectangle): Rectangle[] {
  const top = Math.max(from.top, cut.top);
  const bottom = Math.min(from.bottom, cut.bottom);
  if (top > bottom || from.right < cut.left || from.left > cut.right) return [from];
  const left: Rectangle[] = [
    { ...from, bottom: top - 1 },
    { ...from, top: bottom + 1 },
    { top, bottom, left: from.left, right: cut.left - 1 },
    { top, bottom, left: cut.right + 1, right: from.right },
  ];
  return left.filter((rect) => rect.top <= rect.bottom && rect.left <= rect.right);
}

export function overlaps(a: Rectangle, b: Rectangle): boolean {
  return a.top <= b.bottom && a.bottom >= b.top && a.left <= b.right && a.right >= b.left;
}

import { describe, expect, it } from "vitest";
import { cellOf, column } from "../functions/call";

// From memory (required 50 and 100 cfm on demand, window 20 cfm, a quarter of the sum); that the
// alternative exists since 2010: read, ASHRAE Journal article on existing buildings. Worked by hand.
describe.each(["62.2-2010", "62.2-2013", "62.2-2016", "62.2-2019", "62.2-2022"])(
  "weak fans in existing dwellings, ASHRAE %s (from memory)",
  (edition) => {
    const deficit = (...args: readonly unknown[]) => cellOf("DEFICIT", edition, ...args) as number;
    const raised = (...deficits: readonly number[]) =>
      cellOf("DEFICIT_RATE", edition, 84, column(...deficits)) as number;

    it("a kitchen of 0 with a window, a bath of 30 and a bath of 0 with a window add 32.5 cfm", () => {
      const rooms = [
        deficit("kitchen", 0, "yes"),
        deficit("bathroom", 30, "no"),
        deficit("bathroom", "none", "yes"),
      ];
      expect(rooms).toEqual([80, 20, 30]);
      expect(raised(...rooms)).toBeCloseTo(84 + 32.5, 10);
    });

    it("a kitchen of 60 and two baths of 25, without windows, add 22.5 cfm", () => {
      const rooms = [deficit("kitchen hood", 60), deficit("bathroom", 25), deficit("bathroom", 25)];
      expect(rooms).toEqual([40, 25, 25]);
      expect(raised(...rooms)).toBeCloseTo(84 + 22.5, 10);
    });

    it("a strong fan does not make up for another room", () => {
      expect(deficit("bathroom", 110)).toBe(0);
      expect(deficit("bathroom", 45, "yes")).toBe(0);
    });

    it("has litres a second of its own", () => {
      expect(deficit("bathroom", 0, "yes", "si")).toBe(15);
      expect(deficit("kitchen", 0, "no", "si")).toBe(50);
    });
  },
);

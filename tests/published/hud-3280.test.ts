import { describe, expect, it } from "vitest";
import { cellOf } from "../functions/call";

// HUD 24 CFR 3280.103 (read: CFR-2001, title 24, volume 5; the two bounds and the rooms on a page
// about the code). 0.035 cfm/ft² of 1200, 2000 and 3000 ft²: 42, 70 and 105.
describe("HUD manufactured homes, 24 CFR 3280.103", () => {
  it.each([
    [1200, 50],
    [2000, 70],
    [3000, 90],
  ])("%d ft² need %d cfm, whatever the bedrooms", (area, expected) => {
    for (const bedrooms of [1, 3, 6])
      expect(cellOf("DWELLING_RATE", "HUD-3280", area, bedrooms) as number).toBeCloseTo(
        expected,
        10,
      );
  });

  it("has 50 cfm for a bath and 100 for a kitchen", () => {
    expect(cellOf("ROOM_RATE", "HUD-3280", "bathroom", "on demand")).toBe(50);
    expect(cellOf("ROOM_RATE", "HUD-3280", "kitchen", "on demand")).toBe(100);
  });
});

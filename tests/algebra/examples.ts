import type { Formula } from "../../src/formulas";

/** One case of a formula, in the IP units where a unit has two, and what it gives to so many digits. */
interface Worked {
  readonly given: Readonly<Record<string, number>>;
  readonly gives: number;
  readonly digits: number;
  readonly note: string;
}

const worked = (given: Worked["given"], gives: number, digits: number, note: string): Worked => ({
  given,
  gives,
  digits,
  note,
});

/** The worked case of a formula. Throws for one that has none. */
export function exampleOf({ id }: Formula): Worked {
  const found = examples[id];
  if (!found) throw new Error(`no worked example of ${id}`);
  return found;
}

const examples: Readonly<Record<string, Worked>> = {
  "celsius-from-fahrenheit": worked({ F: 68 }, 20, 6, "a room"),
  "pascals-from-mercury": worked({ B: 29.92 }, 101321, 0, "sea level"),
  "metres-from-feet": worked({ f: 5000 }, 1524, 6, "a mile, nearly"),
  "density-moist-air": worked({ t: 20, p: 101325, h: 0.5 }, 1.198898, 6, "a room at sea level"),
  "density-over-ice": worked(
    { t: -20, p: 101325, h: 0.5 },
    1.39415,
    5,
    "outdoor air in hard frost",
  ),
  "pressure-at-elevation": worked({ z: 1000 }, 89875, 0, "1000 m"),
  "density-factor": worked({ rho0: 1.204, rho: 1.0678 }, 1.0619, 4, "about 1000 m, 20 °C, dry"),
  "standard-flow": worked({ Q: 60, rho: 1, rho0: 1.2 }, 50, 6, "thin air of 1 kg/m³"),
  "plenum-coefficient": worked({ Re: 10557 }, 0.6087, 4, "a 4 in hole at 4 Pa"),
  "approach-factor": worked({ beta: 0.5 }, 1.0328, 4, "a quarter of the face open"),
  "credit-capped": worked({ I: 61.146, T: 84, c: 2 / 3 }, 56, 6, "two thirds of 84 cfm"),
  "unbalanced-share": worked({ I: 61.146, T: 84 }, 0.7279, 4, "61.146 of 84 cfm"),
  "fan-rate-after-credit": worked(
    { T: 84, p: 0.727929, I: 61.146, X: 1 },
    39.49,
    2,
    "84 cfm, a detached house, unbalanced fans",
  ),
  "fan-rate-after-excess": worked(
    { T: 48, s: 0.5, I: 61.475, d: 0.02, A: 1800 },
    35.2625,
    6,
    "61.475 − 36 cfm exceed the default; half of that counts",
  ),
  "on-rate": worked({ R: 72, e: 1, f: 0.5 }, 144, 6, "half of each 3 h"),
  "room-deficit": worked({ R: 50, M: 0, W: 20 }, 30, 6, "a bath with a window"),
  "rate-with-deficits": worked({ T: 84, q: 0.25, S: 130 }, 116.5, 6, "84 + 32.5"),
  "balanced-rate": worked({ T: 60, r: 0.3 }, 42, 6, "30 % less"),
  "fan-efficacy": worked({ Q: 50, P: 25 }, 2, 6, "50 cfm on 25 W"),
  "duct-left": worked({ L0: 56, e: 15, n: 2 }, 26, 6, "56 ft of the table and two elbows"),
  "match-tolerance": worked({ D: 128.8, t: 15, s: 0.15 }, 19.32, 6, "15 % of 128.8"),
  "rate-with-margin": worked({ R: 50, s: 20 }, 60, 6, "50 cfm and a fifth more"),
  "flow-from-pressure": worked({ K: 1.07, A: 24, P: 4 }, 51.36, 2, "24 in² at 4 Pa"),
  "pressure-from-flow": worked({ Q: 51.36, K: 1.07, A: 24 }, 4, 6, "51.36 cfm through 24 in²"),
  "pressure-at-other-area": worked(
    { P: 16, A: 12, A2: 24 },
    4,
    6,
    "twice the area, a quarter of the pressure",
  ),
  "area-at-pressure": worked(
    { A: 12, P: 16, P2: 4 },
    24,
    6,
    "from 16 to 4 Pa takes twice the area",
  ),
  "flow-constant-ip": worked({ C: 0.6063, rho: 1.2 }, 1.07, 4, "the trade's constant"),
  "flow-constant-si": worked({ C: 0.6063, rho: 1.2 }, 0.078273, 6, "the SI twin of 1.07"),
  "leakage-area-ip": worked({ Q50: 1500 }, 82.435, 3, "1500 cfm at 50 Pa"),
  "infiltration-by-leakage-ip": worked(
    { Q50: 1500, A: 1800, H: 16, Hr: 8.2, z: 0.4, w: 0.6, k: 7.3 },
    61.475,
    3,
    "1500 cfm at 50 Pa, 1800 ft², 16 ft high",
  ),
  "infiltration-by-leakage-si": worked(
    { Q50: 700, A: 170, H: 5, Hr: 2.5, z: 0.4, w: 0.6, k: 1.44 },
    28.913,
    3,
    "700 L/s at 50 Pa, 170 m², 5 m high",
  ),
  "infiltration-short": worked(
    { c: 0.052, Q50: 1500, w: 0.6, H: 16, Hr: 8.2, z: 0.4 },
    61.146,
    3,
    "1500 cfm at 50 Pa, 16 ft high",
  ),
  "device-flow": worked({ K: 25.68, r: 4, n: 0.5 }, 51.36, 6, "24 in² with the constant 1.07"),
  "device-flow-with-errors": worked(
    { K: 25.68, r: 4, n: 0.5, d: 0, e: 0 },
    51.36,
    6,
    "errors of 0 leave the flow",
  ),
  "device-limit": worked({ Q: 50, s: 5, m: 5 }, 5, 6, "5 % of 50 cfm is below the floor"),
  "bag-flow-ip": worked({ V: 4, t: 4.8 }, 50, 6, "4 ft³ in 4.8 s"),
  "bag-flow-si": worked({ V: 120, t: 4.8 }, 25, 6, "120 L in 4.8 s"),
  "pan-code": worked({ m: 1.4, limit: 1, s: 0.2, most: 0.5 }, 1, 0, "1.4 Pa is above 1 Pa"),
  "range-code": worked({ P: 8.2, low: 1, high: 8 }, 1, 0, "8.2 Pa is above"),
  margin: worked({ Q: 49.6, R: 50 }, -0.4, 6, "short by 0.4"),
  "meets-code": worked({ Q: 49.6, R: 50 }, 0, 0, "49.6 is short of 50"),
  "round-area": worked({ d: 4.25 }, 14.186, 3, "a 4¼ in hole"),
  "rect-area": worked({ w: 3, h: 8 }, 24, 6, "a 3 by 8 in slot"),
  "area-for-flow": worked({ Q: 50, P: 4, K: 1.07 }, 23.364, 3, "50 cfm at 4 Pa"),
  "diameter-for-area": worked({ A: 23.364 }, 5.454, 3, "the hole for 50 cfm at 4 Pa"),
  "opening-strength": worked({ A: 24, P: 4 }, 48, 6, "24 in² at 4 Pa"),
  "percent-error": worked({ Q: 51.5, R: 50 }, 3, 6, "51.5 where 50 flows"),
  "agreement-limit": worked({ B: -1, z: 1.96, s: 2.5 }, 3.9, 6, "bias −1 %, SD 2.5 %"),
  "unboxed-flow": worked(
    { K: 1.07, A: 32.71, P: 3.859, A2: 16, P2: 14.537 },
    70.01,
    2,
    "a fan of 70 cfm that the box holds back",
  ),
  "fan-line-slope": worked(
    { Q: 80, P: 25, Q2: 60, P2: 62.4 },
    1.87,
    6,
    "80 cfm at 25 Pa and 60 cfm at 62.4 Pa",
  ),
  "fan-line-top": worked({ P: 25, s: 1.87, Q: 80 }, 174.6, 6, "the same fan"),
  "unboxed-estimate": worked(
    { Q: 67.753, P: 6.961, s: 1.87, p: 174.6 },
    70,
    2,
    "a fan of 70 cfm that the box holds back to 67.8",
  ),
  "dwelling-rate-equation": worked(
    { a: 0.03, A: 1800, b: 7.5, N: 3 },
    84,
    6,
    "1800 ft², 3 bedrooms",
  ),
  "dwelling-rate-larger": worked(
    { a: 0.3, A: 80, B: 25 },
    25,
    6,
    "80 m²: 24 L/s by area, 25 by bedrooms",
  ),
  "dwelling-rate-bounded": worked(
    { a: 0.035, A: 2000, lo: 50, hi: 90 },
    70,
    6,
    "2000 ft² of a manufactured home",
  ),
  "rate-for-persons": worked({ R: 84, b: 7.5, n: 6, N: 3 }, 99, 6, "six persons in three bedrooms"),
  "air-change-rate-ip": worked({ n: 5, V: 960 }, 80, 6, "a kitchen of 8 by 10 by 12 ft"),
  "air-change-rate-si": worked({ n: 5, V: 27 }, 37.5, 6, "a kitchen of 27 m³"),
  "between-two-rows": worked(
    { x: 0.4, x1: 0.33, y1: 3, x2: 0.5, y2: 2 },
    2.588,
    3,
    "40 % running time",
  ),
  "running-rate": worked({ R: 72, m: 2 }, 144, 6, "half of the time"),
  "half-width-spread": worked({ a: 0.25 }, 0.14434, 5, "a limit of ±0.25 Pa"),
  "full-width-spread": worked({ w: 0.1 }, 0.02887, 5, "a display of 0.1 Pa"),
  "mean-spread": worked({ s: 0.12, n: 9 }, 0.04, 6, "nine readings"),
  "manometer-limit": worked({ P: 4, p: 1, f: 0.25 }, 0.25, 6, "1 % of 4 Pa is less than the floor"),
  "constant-spread": worked({ K: 1.07, p: 2 }, 0.0214, 6, "2 % of 1.07"),
  "round-area-limit": worked({ t: 0.0625, d: 5.5 }, 0.53996, 5, "a 5½ in hole to 1⁄16 in"),
  "rect-area-limit": worked({ t: 0.0625, w: 3, h: 8 }, 0.6875, 6, "3 by 8 in to 1⁄16 in"),
  "acceptance-limit": worked(
    { R: 50, z: 1.64485, u: 1.46888 },
    52.416,
    3,
    "50 cfm required, spread 1.47 cfm",
  ),
};

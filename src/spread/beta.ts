const tiny = 1e-300;

/**
 * The continued fraction of the incomplete beta function (NIST DLMF 8.17.22), by Lentz's method:
 * I_x(a, b) is it times x^a (1−x)^b / (a B(a, b)). Short for x up to (a + 1)/(a + b + 2).
 */
export function betaFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / guarded(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / guarded(1 + even * d);
    c = guarded(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / guarded(1 + odd * d);
    c = guarded(1 + odd / c);
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return fraction;
}

function guarded(value: number): number {
  return Math.abs(value) < tiny ? tiny : value;
}

import { type CellValue, errors } from "../../cells";
import { finite } from "../coerce";
import type { Natives } from "./natives";

/**
 * The units of CONVERT by what they measure, each as its part of the first: the page of the function in
 * Microsoft's documentation, with the exact definitions of the international yard and pound (NIST
 * Special Publication 811, appendix B). A star marks units that take a prefix.
 */
const measures = [
  "g*=1 sg=14593.902937206363 lbm=453.59237 u*=1.660538782e-24 ozm=28.349523125 grain=0.06479891 cwt,shweight=45359.237 uk_cwt,lcwt,hweight=50802.34544 stone=6350.29318 ton=907184.74 uk_ton,LTON,brton=1016046.9088",
  "m*=1 mi=1609.344 Nmi=1852 in=0.0254 ft=0.3048 yd=0.9144 ang*=1e-10 ell=1.143 ly*=9460730472580800 parsec,pc*=30856775812815530 Picapt,Pica=0.0003527777777777778 pica=0.004233333333333334 survey_mi=1609.3472186944373",
  "sec,s*=1 yr=31557600 day,d=86400 hr=3600 mn,min=60",
  "Pa,p*=1 atm,at*=101325 mmHg*=133.322 psi=6894.757293168362 Torr=133.32236842105263",
  "N*=1 dyn,dy*=1e-5 lbf=4.4482216152605 pond*=0.00980665",
  "J*=1 e*=1e-7 c*=4.184 cal*=4.1868 eV,ev*=1.602176487e-19 HPh,hh=2684519.537696173 Wh,wh*=3600 flb=1.3558179483314003 BTU,btu=1055.05585262",
  "W,w*=1 HP,h=745.6998715822702 PS=735.49875",
  "T*=1 ga*=1e-4",
  "K,kel*=1 C,cel=1 F,fah=0.5555555555555556 Rank=0.5555555555555556 Reau=1.25",
  "l,L,lt*=1 m3,m^3*=1000 tsp=0.00492892159375 tspm=0.005 tbs=0.01478676478125 oz=0.0295735295625 cup=0.2365882365 pt,us_pt=0.473176473 uk_pt*=0.56826125 qt=0.946352946 uk_qt=1.1365225 gal=3.785411784 uk_gal=4.54609 ang3,ang^3*=1e-27 barrel=158.987294928 bushel=35.23907016688 ft3,ft^3=28.316846592 in3,in^3=0.016387064 ly3,ly^3=8.467866646237152e50 mi3,mi^3=4168181825440.5796 yd3,yd^3=764.554857984 Nmi3,Nmi^3=6352182208000 Picapt3,Picapt^3,Pica3,Pica^3=4.39039566186557e-8 GRT,regton=2831.6846592 MTON=1132.67386368",
  "m2,m^2*=1 uk_acre=4046.8564224 us_acre=4046.872609874252 ang2,ang^2*=1e-20 ar*=100 ft2,ft^2=0.09290304 ha=10000 in2,in^2=0.00064516 ly2,ly^2=8.95054210748189e31 mi2,mi^2=2589988.110336 Morgen=2500 Nmi2,Nmi^2=3429904 Picapt2,Picapt^2,Pica2,Pica^2=1.2445216049382716e-7 yd2,yd^2=0.83612736",
  "bit*=1 byte*=8",
  "m/s,m/sec*=1 m/h,m/hr*=0.0002777777777777778 mph*=0.44704 kn=0.5144444444444445 admkn=0.5147733333333333",
];

/** Kelvins at the zero of a temperature scale. */
const zeros: Readonly<Record<string, number>> = {
  C: 273.15,
  cel: 273.15,
  F: 459.67 / 1.8,
  fah: 459.67 / 1.8,
  Reau: 273.15,
};

const powers: readonly [string, number][] = [
  ...Object.entries({ Y: 24, Z: 21, E: 18, P: 15, T: 12, G: 9, M: 6, k: 3, h: 2, da: 1, e: 1 }),
  ...Object.entries({ d: -1, c: -2, m: -3, u: -6, n: -9, p: -12, f: -15, a: -18, z: -21, y: -24 }),
];
const binary = "ki Mi Gi Ti Pi Ei Zi Yi".split(" ");

interface Unit {
  readonly measure: number;
  readonly factor: number;
  readonly zero: number;
}

type Units = ReadonlyMap<string, Unit>;

let known: readonly [plain: Units, prefixed: Units] | undefined;

/** Every unit, without and with a prefix. */
function units(): readonly [plain: Units, prefixed: Units] {
  if (known) return known;
  const plain = new Map<string, Unit>();
  const prefixed = new Map<string, Unit>();
  for (const [measure, line] of measures.entries())
    for (const entry of line.split(" ")) {
      const [names = "", value] = entry.split("=");
      const factor = Number(value);
      for (const name of names.replace("*", "").split(",")) {
        plain.set(name, { measure, factor, zero: zeros[name] ?? 0 });
        if (!names.endsWith("*")) continue;
        // A prefix stands within the power: a square kilometre is a million square metres.
        const power = Number(/\^?([23])$/.exec(name)?.[1] ?? 1);
        for (const [prefix, exponent] of powers)
          prefixed.set(prefix + name, {
            measure,
            factor: factor * 10 ** (exponent * power),
            zero: 0,
          });
        if (name === "bit" || name === "byte")
          for (const [i, prefix] of binary.entries())
            prefixed.set(prefix + name, { measure, factor: factor * 1024 ** (i + 1), zero: 0 });
      }
    }
  known = [plain, prefixed];
  return known;
}

export function addConvert(to: Natives): void {
  to.add("CONVERT", "e t t", (x, from, into): CellValue => {
    const [plain, prefixed] = units();
    const b = plain.get(into) ?? prefixed.get(into);
    // A name that stands for itself goes before a prefixed one of the same letters.
    const a = [plain, prefixed]
      .map((known) => known.get(from))
      .find((unit) => unit && unit.measure === b?.measure);
    if (!a || !b) return errors.na;
    if (a === b) return x;
    return finite((x * a.factor + a.zero - b.zero) / b.factor);
  });
}

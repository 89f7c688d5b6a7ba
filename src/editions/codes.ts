/** A code or programme that sets limits on fans and ducts but no ventilation rates here. */
export interface Code {
  /** Written in job workbooks; never changes once released. */
  readonly id: string;
  readonly title: string;
  readonly aliases: readonly string[];
}

const code = (id: string, title: string, ...aliases: string[]): Code => ({ id, title, aliases });

export const codes: readonly Code[] = [
  code("IRC-2015", "International Residential Code 2015"),
  code("IRC-2018", "International Residential Code 2018"),
  code("IMC-2021", "International Mechanical Code 2021", "IMC"),
  code("IECC-2015", "International Energy Conservation Code 2015"),
  code("IECC-2018", "International Energy Conservation Code 2018"),
  code("IECC-2021", "International Energy Conservation Code 2021"),
  code("10-CFR-460", "Federal rule for manufactured homes, 10 CFR 460", "10 CFR 460.204"),
  code("ENERGY-STAR-3.1", "ENERGY STAR homes, version 3.1", "ENERGY STAR", "ENERGY STAR v3.1"),
];

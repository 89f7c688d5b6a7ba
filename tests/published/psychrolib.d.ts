/** What the tests use of the package, which ships no types. Pa, °C, kg/kg, kg/m³ and m (or psi, °F, lb/ft³ and ft). */
declare module "psychrolib" {
  interface Psychrolib {
    readonly SI: number;
    readonly IP: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryBulb: number): number;
    GetHumRatioFromRelHum(dryBulb: number, relHum: number, pressure: number): number;
    GetMoistAirDensity(dryBulb: number, humRatio: number, pressure: number): number;
    GetStandardAtmPressure(altitude: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}

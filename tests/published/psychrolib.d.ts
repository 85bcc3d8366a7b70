/** The part of psychrolib 1.1.1 that the checks call; it ships no types. */
declare module 'psychrolib' {
  interface Psychrolib {
    readonly SI: unknown;
    SetUnitSystem(system: unknown): void;
    GetHumRatioFromRelHum(temperatureC: number, relativeHumidity: number, pressurePa: number): number;
    GetMoistAirDensity(temperatureC: number, humidityRatio: number, pressurePa: number): number;
    GetSatVapPres(temperatureC: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}

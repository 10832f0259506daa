declare module "psychrolib" {
  const psychrolib: {
    IP: number;
    SI: number;
    SetUnitSystem(system: number): void;
    /** Altitude in m (SI) or ft (IP); Pa or psi. */
    GetStandardAtmPressure(altitude: number): number;
    /** Temperature in C (SI) or F (IP); Pa or psi. */
    GetSatVapPres(temperature: number): number;
  };
  export default psychrolib;
}

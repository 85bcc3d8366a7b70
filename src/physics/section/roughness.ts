/** Equivalent roughness k, m, of surfaces, EN 1991-1-4:2005 table 7.13. Source: en-1991-1-4. */
export const roughnessByFinish = {
  glass: 0.0015e-3,
  polishedMetal: 0.002e-3,
  finePaint: 0.006e-3,
  sprayPaint: 0.02e-3,
  brightSteel: 0.05e-3,
  castIron: 0.2e-3,
  galvanisedSteel: 0.2e-3,
  smoothConcrete: 0.2e-3,
  planedWood: 0.5e-3,
  roughConcrete: 1.0e-3,
  roughSawnWood: 2.0e-3,
  rust: 2.0e-3,
  brickwork: 3.0e-3,
} as const;

export type Finish = keyof typeof roughnessByFinish;

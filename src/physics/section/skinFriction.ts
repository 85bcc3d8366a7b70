/** Below this length Reynolds number the lines are held: nothing on deck is smaller and matters. */
const leastFrictionReynolds = 1e4;

/** Prandtl-Schlichting: 0.455 / (log10 Re)^2.58, one side, mean over the length, to Re 1e9. Source: fox-mcdonald. */
export function turbulentFriction(reynolds: number): number {
  const logReynolds = Math.LOG10E * Math.log(Math.max(reynolds, leastFrictionReynolds));
  return 0.455 * Math.exp(-2.58 * Math.log(logReynolds));
}

/** Blasius, laminar: 1.328 / sqrt(Re). Re below 5e5. Source: blasius. */
export function laminarFriction(reynolds: number): number {
  return 1.328 / Math.sqrt(Math.max(reynolds, leastFrictionReynolds));
}

/** High estimate: one and a half times the turbulent line (assumed: rough, ribbed or spliced). */
export function roughFriction(reynolds: number): number {
  return 1.5 * turbulentFriction(reynolds);
}

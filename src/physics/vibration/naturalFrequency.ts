/** How the ends of a uniform beam are held; a post stands clamped at its foot and free at its head. */
export const beamEnds = ['pinned', 'clamped', 'clamped-pinned', 'clamped-free'] as const;
export type BeamEnds = (typeof beamEnds)[number];

/** (beta L)^2 of the first mode, by the ends. Source: thomson-beams. */
export const firstModeFactor: Readonly<Record<BeamEnds, number>> = {
  pinned: Math.PI ** 2,
  clamped: 22.3733,
  'clamped-pinned': 15.4182,
  'clamped-free': 3.516,
};

/**
 * First bending frequency of a uniform beam, Hz: (beta L)^2 sqrt(E I / m) / (2 pi L^2), slender, without axial load
 * (compression lowers it by sqrt(1 - P/P_E)), with the mass per length of all that moves with it.
 * Example: pinned, E I 1000 N m2, 1 kg/m, 2 m: 12.4 Hz. Source: thomson-beams.
 */
export function beamFrequencyHz(
  bendingStiffnessNm2: number,
  massPerLengthKgM: number,
  lengthM: number,
  ends: BeamEnds,
): number {
  return (
    (firstModeFactor[ends] * Math.sqrt(bendingStiffnessNm2 / massPerLengthKgM)) / (2 * Math.PI * lengthM ** 2)
  );
}

/**
 * First frequency of a wire by its tension, Hz: sqrt(T / m) / (2 L), its stiffness left out, its ends held.
 * Example: 1000 N, 0.1 kg/m, 2 m: 25 Hz. Source: stretched-string.
 */
export function wireFrequencyHz(tensionN: number, massPerLengthKgM: number, lengthM: number): number {
  return Math.sqrt(tensionN / massPerLengthKgM) / (2 * lengthM);
}

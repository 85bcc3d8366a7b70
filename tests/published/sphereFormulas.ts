/**
 * Published formulas for the drag of a smooth sphere that the model's table was drawn through. They judge nothing: the
 * checks carry numbers, and a test shows that these formulas give those numbers.
 */

/** Almedeij 2008, Powder Technology 186, 218, Re to 1e6 (second-hand, three public codes). */
export function almedeijSphere(Re: number): number {
  const creeping = (24 / Re) ** 10 + (21 * Re ** -0.67) ** 10 + (4 * Re ** -0.33) ** 10 + 0.4 ** 10;
  const plateau = 1 / ((0.148 * Re ** 0.11) ** -10 + 0.5 ** -10);
  const crisis = (1.57e8 * Re ** -1.625) ** 10;
  const recovery = 1 / ((6e-17 * Re ** 2.63) ** -10 + 0.2 ** -10);
  return (1 / (1 / (creeping + plateau) + 1 / crisis) + recovery) ** 0.1;
}

/** Clift, Grace and Weber 1978, Re 260 to 3.38e5 (second-hand) and from 4e5 up (from memory). */
export function cliftSphere(Re: number): number {
  const w = Math.log10(Re);
  if (Re < 1500) return 10 ** (1.6435 - 1.1242 * w + 0.1558 * w ** 2);
  if (Re < 1.2e4) return 10 ** (-2.4571 + 2.5558 * w - 0.9295 * w ** 2 + 0.1049 * w ** 3);
  if (Re < 4.4e4) return 10 ** (-1.9181 + 0.637 * w - 0.0636 * w ** 2);
  if (Re < 3.38e5) return 10 ** (-4.339 + 1.5809 * w - 0.1546 * w ** 2);
  return Re < 1e6 ? 0.1 * w - 0.49 : 0.19 - 8e4 / Re;
}

/** Morrison 2013, Re to 1e6 (second-hand). */
export function morrisonSphere(Re: number): number {
  const plateau = (2.6 * (Re / 5)) / (1 + (Re / 5) ** 1.52);
  const crisis = (0.411 * (Re / 263_000) ** -7.94) / (1 + (Re / 263_000) ** -8);
  return 24 / Re + plateau + crisis + Re ** 0.8 / 461_000;
}

/** N.-S. Cheng 2009, Powder Technology 189, 395, Re to 2e5 (second-hand). */
export function chengSphere(Re: number): number {
  return (24 / Re) * (1 + 0.27 * Re) ** 0.43 + 0.47 * (1 - Math.exp(-0.04 * Re ** 0.38));
}

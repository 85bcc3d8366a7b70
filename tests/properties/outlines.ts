import type { SectionOutline } from '../../src/physics/strut/sectionOutline';

export const round = (diameterM: number): SectionOutline => ({ kind: 'round', diameterM });
export const ellipse = (chordM: number, thicknessM: number): SectionOutline => ({
  kind: 'ellipse',
  chordM,
  thicknessM,
});
export const fairing = (chordM: number, thicknessM: number): SectionOutline => ({
  kind: 'fairing',
  chordM,
  thicknessM,
});

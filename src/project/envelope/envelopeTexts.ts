/** The fields of an estimate, in the order in which a reader meets them. */
export const envelopeFieldIds = [
  'speed',
  'windKind',
  'density',
  'temperature',
  'shape',
  'count',
  'width',
  'length',
  'depth',
  'ends',
  'area',
  'areaOf',
  'coefficient',
  'dragArea',
  'force',
  'power',
  'powerKind',
  'horsepower',
  'windAngle',
  'windAngleKind',
  'boatSpeed',
] as const;
export type EnvelopeFieldId = (typeof envelopeFieldIds)[number];

/** What stands in each field, as typed; an absent field is empty. */
export type EnvelopeTexts = Readonly<Partial<Record<EnvelopeFieldId, string>>>;

/** How a field is called, and what may stand in it. */
export const envelopeLabels: Readonly<Record<EnvelopeFieldId, string>> = {
  speed: 'Wind speed',
  windKind: 'That speed is',
  density: 'Density of the air',
  temperature: 'Temperature of the air',
  shape: 'Shape',
  count: 'How many',
  width: 'Diameter, or width across the wind',
  length: 'Length',
  depth: 'Depth along the wind (chord)',
  ends: 'Ends',
  area: 'Area',
  areaOf: 'That area is of',
  coefficient: 'Drag coefficient',
  dragArea: 'Drag area (Cd times area)',
  force: 'Force, all together',
  power: 'Power, all together',
  powerKind: 'That power is',
  horsepower: 'Horsepower, all together',
  windAngle: 'Wind angle',
  windAngleKind: 'That angle is',
  boatSpeed: 'Boat speed',
};

/** One choice of a field that holds no number. */
export interface EnvelopeOption<Id extends string = string> {
  readonly id: Id;
  readonly label: string;
}

export const windKindIds = ['apparent', 'true'] as const;
export type WindKindId = (typeof windKindIds)[number];
export const areaOfIds = ['all', 'each'] as const;
export type AreaOfId = (typeof areaOfIds)[number];
export const powerKindIds = ['air', 'track'] as const;
export type PowerKindId = (typeof powerKindIds)[number];
export const endsIds = ['free', 'oneOnSurface', 'joined'] as const;
export type EndsId = (typeof endsIds)[number];
export const shapeIds = [
  'roundBar',
  'rod',
  'spiralStrand',
  'strandedWire',
  'braidedRope',
  'sphere',
  'plate',
  'rectangularBar',
  'cubeFace',
  'cubeCorner',
  'disc',
  'squarePlate',
  'squareBarCorner',
  'squareBarRounded',
  'hexagonBarFlat',
  'hexagonBarCorner',
  'halfTubeRoundFront',
  'halfTubeOpenFront',
  'cone60',
  'cone30',
  'solidHemisphereRoundFront',
  'solidHemisphereFlatFront',
  'hollowHemisphereRoundFront',
  'hollowHemisphereOpenFront',
] as const;
export type EnvelopeShapeId = (typeof shapeIds)[number];

export type ChoiceFieldId = 'windKind' | 'shape' | 'ends' | 'areaOf' | 'powerKind' | 'windAngleKind';

/** The choices of each field that holds one. An empty field is "not said". */
export const envelopeOptions = {
  windKind: [
    { id: 'apparent', label: 'apparent wind, as the fitting meets it' },
    { id: 'true', label: 'true wind, over the water' },
  ],
  shape: [
    { id: 'roundBar', label: 'round bar: tube, post, pole' },
    { id: 'rod', label: 'rod or plain wire' },
    { id: 'spiralStrand', label: 'wire of one strand (1 × 19)' },
    { id: 'strandedWire', label: 'stranded wire (7 × 19)' },
    { id: 'braidedRope', label: 'rope with a braided cover' },
    { id: 'sphere', label: 'sphere' },
    { id: 'plate', label: 'flat plate across the wind' },
    { id: 'rectangularBar', label: 'rectangular bar, a side to the wind' },
    { id: 'cubeFace', label: 'cube, a face to the wind' },
    { id: 'cubeCorner', label: 'cube, a corner to the wind' },
    { id: 'disc', label: 'disc across the wind' },
    { id: 'squarePlate', label: 'square plate across the wind' },
    { id: 'squareBarCorner', label: 'long square bar, a corner to the wind' },
    { id: 'squareBarRounded', label: 'long square bar, corners rounded to a fifth of the width' },
    { id: 'hexagonBarFlat', label: 'long hexagonal bar, a flat to the wind' },
    { id: 'hexagonBarCorner', label: 'long hexagonal bar, a corner to the wind' },
    { id: 'halfTubeRoundFront', label: 'half tube, round side to the wind' },
    { id: 'halfTubeOpenFront', label: 'half tube, open side to the wind' },
    { id: 'cone60', label: 'cone of 60°, point to the wind' },
    { id: 'cone30', label: 'cone of 30°, point to the wind' },
    { id: 'solidHemisphereRoundFront', label: 'solid hemisphere, round side to the wind' },
    { id: 'solidHemisphereFlatFront', label: 'solid hemisphere, flat side to the wind' },
    { id: 'hollowHemisphereRoundFront', label: 'hollow hemisphere, round side to the wind' },
    { id: 'hollowHemisphereOpenFront', label: 'hollow hemisphere, open side to the wind' },
  ],
  ends: [
    { id: 'free', label: 'both free' },
    { id: 'oneOnSurface', label: 'one on a large surface, such as the deck' },
    { id: 'joined', label: 'both joined to something' },
  ],
  areaOf: [
    { id: 'all', label: 'all of them together' },
    { id: 'each', label: 'each one' },
  ],
  powerKind: [
    { id: 'air', label: 'air power: force times wind speed' },
    { id: 'track', label: 'track power: what the boat pays' },
  ],
  windAngleKind: [
    { id: 'apparent', label: 'apparent, from the bow' },
    { id: 'true', label: 'true, from the course' },
  ],
} as const satisfies {
  readonly windKind: readonly EnvelopeOption<WindKindId>[];
  readonly shape: readonly EnvelopeOption<EnvelopeShapeId>[];
  readonly ends: readonly EnvelopeOption<EndsId>[];
  readonly areaOf: readonly EnvelopeOption<AreaOfId>[];
  readonly powerKind: readonly EnvelopeOption<PowerKindId>[];
  readonly windAngleKind: readonly EnvelopeOption<WindKindId>[];
};

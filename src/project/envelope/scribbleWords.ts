import type { EnvelopeFieldId } from './envelopeTexts';
import type { NumberFieldId } from './readEnvelope';

/** What a word or a phrase of a scribble does. */
export type WordMeaning =
  /** Names the number beside it; `side` is where it is looked for first. The first field that its unit fits is taken. */
  | { readonly kind: 'label'; readonly fieldIds: readonly NumberFieldId[]; readonly side: 'before' | 'after' }
  /** Sets a choice, and perhaps names the number beside it. */
  | {
      readonly kind: 'choice';
      readonly fieldId: EnvelopeFieldId;
      readonly value: string;
      readonly names?: NumberFieldId;
      readonly note?: string;
    }
  /** True or apparent, of the speed or angle beside it. */
  | { readonly kind: 'windKind'; readonly value: 'apparent' | 'true' }
  | { readonly kind: 'count'; readonly value: string }
  | { readonly kind: 'each' }
  | { readonly kind: 'together' }
  /** Stands between a label and its number. */
  | { readonly kind: 'link' }
  | { readonly kind: 'filler' }
  | { readonly kind: 'refused'; readonly reason: string };

type Entry = readonly [phrases: string, meaning: WordMeaning];

function label(phrases: string, side: 'before' | 'after', ...fieldIds: NumberFieldId[]): Entry {
  return [phrases, { kind: 'label', fieldIds, side }];
}

function shape(phrases: string, value: string, note?: string): Entry {
  return [phrases, { kind: 'choice', fieldId: 'shape', value, ...(note === undefined ? {} : { note }) }];
}

function choice(phrases: string, fieldId: EnvelopeFieldId, value: string, names?: NumberFieldId): Entry {
  return [phrases, { kind: 'choice', fieldId, value, ...(names === undefined ? {} : { names }) }];
}

const refusedRadius = 'A radius is not taken, because it is the commonest slip: type the diameter.';
const refusedSide =
  'Which side faces the wind is not said, and it changes the coefficient: choose the shape in its field.';

/** Phrases, separated by bars; longer ones win. */
const entries: readonly Entry[] = [
  label('boat speed|boatspeed|bs|bsp|speed of the boat|boat|vb|v_b|stw', 'before', 'boatSpeed'),
  label('wind speed|windspeed|speed|v', 'before', 'speed'),
  label('wind', 'before', 'speed', 'windAngle'),
  label('wind angle|angle', 'before', 'windAngle'),
  label('cd|c_d|c d|drag coefficient|coefficient|cx|c_x', 'before', 'coefficient'),
  label('cda|cd a|cd*a|cd·a|c_d a|c_da|drag area', 'before', 'dragArea'),
  label('area|frontal area|a', 'before', 'area'),
  label('air density|density|rho|ρ', 'before', 'density'),
  label('air temperature|temperature|temp', 'before', 'temperature'),
  label('drag force|force|drag|f', 'before', 'force'),
  label('power|p', 'before', 'power', 'horsepower'),
  label('diameter|dia|diam|ø|⌀|d|od', 'after', 'width'),
  label('wide|width|w|thick|thickness|across', 'after', 'width'),
  label('long|length|l|tall|high|height|h', 'after', 'length'),
  label('chord|c|deep|depth', 'after', 'depth'),
  label('off|no|pcs|pieces|times', 'after', 'count'),
  label('number|n|count', 'before', 'count'),
  choice('aws|apparent wind speed', 'windKind', 'apparent', 'speed'),
  choice('tws|true wind speed', 'windKind', 'true', 'speed'),
  choice('awa|apparent wind angle', 'windAngleKind', 'apparent', 'windAngle'),
  choice('twa|true wind angle', 'windAngleKind', 'true', 'windAngle'),
  choice('from the bow|off the bow|off bow', 'windAngleKind', 'apparent', 'windAngle'),
  choice('from the course|off the course', 'windAngleKind', 'true', 'windAngle'),
  ['apparent|apparent wind', { kind: 'windKind', value: 'apparent' }],
  ['true|true wind', { kind: 'windKind', value: 'true' }],
  choice('air power', 'powerKind', 'air', 'power'),
  choice('track power|boat pays|costs the boat|she pays|boat power', 'powerKind', 'track', 'power'),
  choice('free ends|both ends free|ends free|two free ends|both free', 'ends', 'free'),
  choice('on deck|on the deck|one end on deck|one end on the deck|foot on deck', 'ends', 'oneOnSurface'),
  choice('joined|both ends joined|ends joined|both joined', 'ends', 'joined'),
  shape('post|posts|stanchion|stanchions|tube|tubes|pole|poles|pipe|pipes|spar|spars', 'roundBar'),
  shape('cylinder|cylinders|round bar|round bars|mast', 'roundBar'),
  shape('rod|rods|smooth wire', 'rod'),
  shape('wire|wires|guard wire|guard wires', 'spiralStrand', 'taken as a wire of one strand'),
  shape('1x19|1 x 19|1×19|1 × 19|1x19 wire|1×19 wire', 'spiralStrand'),
  shape('7x19|7 x 19|7×19|7 × 19|7x19 wire|7×19 wire|stranded wire', 'strandedWire'),
  shape('rope|ropes|halyard|halyards|lazy line|lazy lines', 'braidedRope'),
  shape('sphere|spheres|ball|balls', 'sphere'),
  shape('plate|plates|flat plate|flat bar|flat bars|board|boards', 'plate'),
  shape('square plate|square plates', 'squarePlate'),
  shape('disc|discs|disk|disks', 'disc'),
  shape('cube|cubes', 'cubeFace', 'taken with a face to the wind'),
  shape('box section|square bar|square bars|square tube|square tubes|rectangular bar', 'rectangularBar'),
  ['radius|radii|rad|r', { kind: 'refused', reason: refusedRadius }],
  ['hemisphere|hemispheres|cone|cones|half tube|half tubes|cup', { kind: 'refused', reason: refusedSide }],
  ['each|apiece|per piece', { kind: 'each' }],
  ['in all|all together|together|total|in total|altogether', { kind: 'together' }],
  ['of|is|at|about|abt|around|approx|approximately|roughly|circa|ca', { kind: 'link' }],
  ['and|the|a|an|with|in|on|gives|makes|so|for|by|air|say|hence|thus|we|get|it|are', { kind: 'filler' }],
  ['round|thin|steel|stainless|stainless steel|carbon|aluminium|smooth|vertical|bare', { kind: 'filler' }],
];

const numberWords = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** By the phrase in lower case with single spaces. "a" alone is a word; followed by = or : it is the area. */
export const scribbleWords: ReadonlyMap<string, WordMeaning> = new Map([
  ...entries.flatMap(([phrases, meaning]) => phrases.split('|').map((phrase) => [phrase, meaning] as const)),
  ...numberWords.map((word, i) => [word, { kind: 'count', value: String(i + 1) }] as const),
]);

/** Labels of one letter, which are words or initials unless a number is assigned to them. A radius is refused even alone. */
export function isSymbol(phrase: string): boolean {
  return phrase.length === 1 && !/[øρ⌀r]/.test(phrase);
}

/** What "a" means as the symbol of an area. */
export const symbolOfArea: WordMeaning = { kind: 'label', fieldIds: ['area'], side: 'before' };

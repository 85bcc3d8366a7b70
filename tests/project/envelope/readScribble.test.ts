import { describe, expect, it } from 'vitest';
import type { EnvelopeTexts } from '../../../src/project/envelope/envelopeTexts';
import { longestScribble, readScribble } from '../../../src/project/envelope/readScribble';

const posts = { shape: 'roundBar', count: '16', width: '25 mm', length: '0.7 m' } as const;
const pole = { shape: 'roundBar', width: '100 mm', length: '3 m' } as const;

describe('a scribble', () => {
  it.each<readonly [string, EnvelopeTexts]>([
    [
      '16 posts 25 mm 0.7 m, Cd 0.6, 12 m/s, 170 W',
      { ...posts, coefficient: '0.6', speed: '12 m/s', power: '170 W' },
    ],
    ['16 × 25 mm × 0.7 m posts', posts],
    ['posts: 25 mm x 0.7 m x 16', posts],
    ['16 stainless stanchions, d = 25 mm, 0.7 m long', posts],
    ['16 off 25 mm dia 0.7 m long tube', posts],
    ['- 16 tubes\n- diameter: 25 mm\n- length: 0.7 m', posts],
    ['16 posts, 0.7 m × 25 mm', posts],
    ['two wires 8 mm 15 m', { shape: 'spiralStrand', count: '2', width: '8 mm', length: '15 m' }],
    ['7x19 wire 6 mm 12 m', { shape: 'strandedWire', width: '6 mm', length: '12 m' }],
    ['0,7 m long pole, cd=0,6', { shape: 'roundBar', length: '0,7 m', coefficient: '0,6' }],
    ['sphere 30 cm', { shape: 'sphere', width: '30 cm' }],
    [
      'AWS 22 kn, AWA 35°',
      { windKind: 'apparent', speed: '22 kn', windAngleKind: 'apparent', windAngle: '35°' },
    ],
    [
      'TWS 20 kn TWA 60 boat speed 8 kn',
      { windKind: 'true', speed: '20 kn', windAngleKind: 'true', windAngle: '60', boatSpeed: '8 kn' },
    ],
    ['12 m/s apparent', { speed: '12 m/s', windKind: 'apparent' }],
    ['true wind 20 kn at 60°', { windKind: 'true', speed: '20 kn', windAngle: '60°' }],
    ['8 kn boat speed, wind 20 kn', { boatSpeed: '8 kn', speed: '20 kn' }],
    ['rho 1.2, C_D 0.5, CdA 0.4 m2', { density: '1.2', coefficient: '0.5', dragArea: '0.4 m2' }],
    ['A = 0.8 m2, Cd0.5', { area: '0.8 m2', coefficient: '0.5' }],
    ['pole 100 mm x 3 m @ 10 m/s -> 9 N', { ...pole, speed: '10 m/s', force: '9 N' }],
    ['TWS 20 kn BS 14 kn', { windKind: 'true', speed: '20 kn', boatSpeed: '14 kn' }],
    ['a pole of 0.8 m2', { shape: 'roundBar', area: '0.8 m2' }],
    ['16 posts of 0.0175 m2 each', { shape: 'roundBar', count: '16', area: '0.0175 m2', areaOf: 'each' }],
    ['0.563 hp, 420 watts', { horsepower: '0.563 hp', power: '420 W' }],
    ['boat pays 60 W', { powerKind: 'track', power: '60 W' }],
    [
      'pole 100 mm 3 m free ends at 20 °C',
      { shape: 'roundBar', width: '100 mm', length: '3 m', ends: 'free', temperature: '20 °C' },
    ],
    [
      'rectangular bar, width 40 mm, depth 80 mm, 2 m long',
      { shape: 'rectangularBar', width: '40 mm', depth: '80 mm', length: '2 m' },
    ],
    ['wind 12', { speed: '12' }],
    ['air at -5 °C', { temperature: '-5 °C' }],
    ['temperature = −5 °C, 20 kn (pole)', { temperature: '-5 °C', speed: '20 kn', shape: 'roundBar' }],
    ['pole (-5 °C)', { shape: 'roundBar', temperature: '-5 °C' }],
    ['1/2 in wire 30 ft', { shape: 'spiralStrand', width: '1/2 in', length: '30 ft' }],
    ['3/8" wire, 12 m', { shape: 'spiralStrand', width: '3/8 in', length: '12 m' }],
    ['tube 4 ft x 1⁄2 in', { shape: 'roundBar', width: '1⁄2 in', length: '4 ft' }],
    ['rod 1½" 3 m', { shape: 'rod', width: '1½ in', length: '3 m' }],
    ['15/16 in × 1 ft pole', { shape: 'roundBar', width: '15/16 in', length: '1 ft' }],
    ['2 x 1/4 in poles 3 ft', { shape: 'roundBar', count: '2', width: '1/4 in', length: '3 ft' }],
    ['2 x pole 80 mm 2.5 m', { shape: 'roundBar', count: '2', width: '80 mm', length: '2.5 m' }],
    ['abt 100 mm pole around 3 m', pole],
    ['pole d 100 mm, l 3 m, v 10 m/s', { ...pole, speed: '10 m/s' }],
    ['F ≈ 24.5 N, A ≈ 0.8 m²', { force: '24.5 N', area: '0.8 m2' }],
    ['5 hp(metric)', { horsepower: '5 PS' }],
    ['Cd 0.6 / 12 m/s', { coefficient: '0.6', speed: '12 m/s' }],
    ['pole 10 ft, 4 in', { shape: 'roundBar', width: '4 in', length: '10 ft' }],
    ['pole 25 mm/3 m', { shape: 'roundBar', width: '25 mm', length: '3 m' }],
  ])('“%s” fills its fields', (text, texts) => {
    const reading = readScribble(text);
    expect(reading.texts).toEqual(texts);
    expect(reading.pieces.filter(({ kind }) => kind === 'notUnderstood')).toEqual([]);
  });

  it.each<readonly [string, string, string, EnvelopeTexts]>([
    ['16 gizmos', 'gizmos', 'not a word that is known', {}],
    ['20 kn, 12 m/s', '12 m/s', 'Wind speed has a value already: 20 kn.', { speed: '20 kn' }],
    ['20-40 kn', '20-40 kn', 'A range', {}],
    ['20 kn,-3 posts', '-3', 'A minus sign', { speed: '20 kn', shape: 'roundBar' }],
    ['5-10 °C', '5-10 °C', 'A range', {}],
    ['-3 posts', '-3', 'A minus sign', { shape: 'roundBar' }],
    ['wind = −12 m/s', '−12 m/s', 'A minus sign', {}],
    ['1/2 hp, 3 ft long', '1/2 hp', 'A fraction', { length: '3 ft' }],
    ['1⁄2 hp', '1⁄2 hp', 'A fraction', {}],
    ['1 / 2 hp', '1 / 2 hp', 'A fraction', {}],
    ['20/40 kn', '20/40 kn', 'A fraction', {}],
    ['8/16 in pole', '8/16 in', 'A fraction', { shape: 'roundBar' }],
    ['2 1/4 in poles', '2 1/4 in', 'two ways', { shape: 'roundBar' }],
    ['2 ¼ in poles', '2 ¼ in', 'such as 2.25 in for 2 1/4 in', { shape: 'roundBar' }],
    ['pole 4 ft 6 in, 20 kn', '4 ft 6 in', 'two ways', { shape: 'roundBar', speed: '20 kn' }],
    ['pole 6\' 6"', '6\' 6"', 'two ways', { shape: 'roundBar' }],
    ['1,200 N', '1,200 N', 'two ways', {}],
    ['r = 25 mm', 'r = 25 mm', 'type the diameter', {}],
    ['r 25 mm, 3 m long', 'r 25 mm', 'type the diameter', { length: '3 m' }],
    ['25 mm rad, 3 m long', '25 mm rad', 'type the diameter', { length: '3 m' }],
    ['3 m radius 50 mm Cd 1.2', '3 m radius 50 mm', 'type the diameter', { coefficient: '1.2' }],
    ['25 mm radius 0.7 m long', '25 mm radius', 'type the diameter', { length: '0.7 m' }],
    ['25 mm radius, 0.7 m long', '25 mm radius', 'type the diameter', { length: '0.7 m' }],
    ['16 x 25 mm', '16', 'how many there are or a size', {}],
    ['post 25 mm', '25 mm', 'more than one size', { shape: 'roundBar' }],
    ['10 mm, 20 mm, 30 mm', '30 mm', 'more than one size', {}],
    ['hemisphere', 'hemisphere', 'Which side faces the wind', {}],
    ['14 W each', 'each', 'all of them here', { power: '14 W' }],
    ['speed 12 m/s, Cd', 'Cd', 'No number that fits', { speed: '12 m/s' }],
    ['sphere or cube', 'cube', 'Shape has a value already', { shape: 'sphere' }],
    ['0.6', '0.6', 'without a unit or a name', {}],
    ['P = 24 x 10 = 240 W', '24 x 10', 'only the answer is read', { power: '240 W' }],
    ['q = 60 Pa, 24 N', '60 Pa', 'A pressure', { force: '24 N' }],
    ['16 tall posts', 'tall', 'No number that fits', { shape: 'roundBar', count: '16' }],
  ])('“%s” leaves “%s” and says why', (text, puzzling, reason, texts) => {
    const reading = readScribble(text);
    expect(reading.texts).toEqual(texts);
    expect(reading.pieces).toContainEqual({
      kind: 'notUnderstood',
      text: puzzling,
      reason: expect.stringContaining(reason) as string,
    });
  });

  it.each<readonly [string, EnvelopeTexts]>([
    ['P = F V = 24 x 10 = 240 W', { power: '240 W' }],
    ['½ rho V² Cd A = 0.5 x 1.2 x 100 x 0.5 x 0.8 = 24 N', { force: '24 N' }],
    ['F = 0.5·1.2·100·0.4 = 24 N', { force: '24 N' }],
    ['F = 60 Pa × 0.4 m2 = 24 N', { area: '0.4 m2', force: '24 N' }],
    ['0.8 m2 + 0.6 m2 = 1.4 m2, 420 W', { area: '1.4 m2', power: '420 W' }],
    ['A = 0.1 m x 3 m = 0.3 m2', { width: '0.1 m', length: '3 m', area: '0.3 m2' }],
  ])('of “%s” takes the answers, not the factors and parts before them', (text, texts) => {
    expect(readScribble(text).texts).toEqual(texts);
  });

  it('says which of two lengths was taken for which, and that bare horsepower is mechanical', () => {
    const hows = (text: string) =>
      readScribble(text).pieces.flatMap((piece) => (piece.kind === 'understood' ? [piece.how] : []));
    expect(hows('0.7 m 25 mm')).toEqual([
      'Length: 0.7 m (the larger of the two lengths)',
      'Diameter, or width across the wind: 25 mm (the smaller of the two lengths)',
    ]);
    expect(hows('1 hp')[0]).toContain('mechanical, because which horsepower is not said');
    expect(hows('1 PS')[0]).not.toContain('not said');
  });

  it('reads two thousand characters and hands the rest back', () => {
    const text = `${' '.repeat(longestScribble)}12 m/s`;
    const { texts, pieces } = readScribble(text);
    expect(texts).toEqual({});
    expect(pieces.at(-1)).toMatchObject({ kind: 'notUnderstood', text: '12 m/s' });
  });
});

import { it } from 'vitest';
import { readScribble } from '../../../src/project/envelope/readScribble';
import { readEnvelope } from '../../../src/project/envelope/readEnvelope';
const list = [
 '16 posts 25 mm 0.7 m, Cd 0.6, 12 m/s, 170 W',
 '16 x 25 mm x 0.7 m', '16 × 25 mm × 0,7 m posts, cd=0,6; 23 kn', '25 x 700 mm tube, 3 100 mm poles', '16 x 25 mm',
 'd = 25 mm, l = 0.7 m', '25 mm dia 0.7 m long', 'diameter 25 mm length 0.7 m', '• AWS 22 kn\n• AWA 35°\n• boat speed 8 kn\n• rho 1.2',
 'true wind 20 kn at 60°, boat 8 kn, TWS 20', 'CdA 0.17 m2, 24 N, 240 W, 0.322 hp', 'Air 1.2 kg/m3, 10 m/s, Cd 0.5, 0.8 m2: 24 N and 240 W',
 'sphere 30 cm, 12 m/s apparent, 0.05 m2 each', '16 posts of 25 mm, 14 W each, 1,200 N', 'ball dia 0.3 m', 'pole 100 mm 3 m free ends 10 m/s', 'A = 0.8 m2, Cd0.5, wind 12', 'r = 25 mm post', 'two wires 8 mm 15 m', '7x19 wire 6 mm 12 m', 'F=24 N P=240 W V=10 m/s','cylinder 0.5 m by 2 m, rho 1.028, Cd 0.8, 95 km/h, 7.55 kW', '<b>16</b> posts', '20-40 kn', 'TWS 20 kn TWA 60 boat speed 8 kn', '0.563 horsepower, 420 watts',
];
it('x', () => { for (const t of list) { const r = readScribble(t); console.log(t, '\n  ', JSON.stringify(r.texts), '\n  ', r.pieces.map(p=>p.kind==='understood'?`[${p.text}→${p.how}]`:p.kind==='filler'?`(${p.text})`:`!${p.text}! ${p.reason}`).join(' '), JSON.stringify(readEnvelope(r.texts).problems)); if (r.pieces.map(p=>p.text).join('')!==t) throw Error(t);} });

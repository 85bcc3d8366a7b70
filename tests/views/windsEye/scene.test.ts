import { describe, expect, it } from 'vitest';
import { itemAt, type SceneItem } from '../../../src/charts/windsEye/scene';
import { deckLineOf } from '../../../src/project/core/fittingToPhysics';
import { hullFaces } from '../../../src/project/picture/hull';
import { solidsOf } from '../../../src/project/picture/solids';
import { demo } from '../ledger/openProjects';
import { centimetres, sceneIn, solid, stateAt, viewAt } from './pictures';

const boat = demo().boat;

/** A post of 1 m on the deck's height, and a box of 1 m beside it. */
function post(x: number, y: number, id = 'post') {
  return solid(
    'bar',
    [
      [x, y, 1],
      [x, y, 2],
    ],
    { thicknessM: 0.02, fittingId: id },
  );
}

function box(x: number, y: number) {
  const corners = [-0.5, 0.5].flatMap((a) =>
    [-0.5, 0.5].flatMap((b) => [1, 2].map((z) => [x + a, y + b, z] as const)),
  );
  return solid('cloud', corners, { fittingId: 'box' });
}

function order(items: readonly SceneItem[]): (string | null)[] {
  return items.map(({ fittingId }) => fittingId);
}

describe('near over far', () => {
  it.each([
    ['from ahead', 0, ['aft', 'box', 'fore']],
    ['from astern', 180, ['fore', 'box', 'aft']],
  ])('a box stands between the post before it and the one behind, seen %s', (_, angleDeg, expected) => {
    const items = sceneIn([box(0, 0), post(2, 0, 'fore'), post(-2, 0, 'aft')], viewAt({ angleDeg }));
    expect(order(items)).toEqual(expected);
  });

  it('a post behind a box is not under the pointer, one before it is', () => {
    const view = viewAt({ angleDeg: 0 });
    const middle = [centimetres.originX, centimetres.originY - 150] as const;
    expect(itemAt(sceneIn([post(-2, 0), box(0, 0)], view), middle, 0)?.fittingId).toBe('box');
    expect(itemAt(sceneIn([post(2, 0), box(0, 0)], view), middle, 0)?.fittingId).toBe('post');
  });

  it('the windward topsides hide the foot of a leeward stanchion on a heeled boat', () => {
    const halfBeam = Math.max(...boat.deckLine.map(({ halfBeamM }) => halfBeamM));
    const freeboard = Math.min(...boat.deckLine.map(({ freeboardM }) => freeboardM));
    const [x, y] = [0, halfBeam - 0.1];
    const foot = solid(
      'bar',
      [
        [x, y, freeboard],
        [x, y, freeboard + 0.05],
      ],
      { thicknessM: 0.03, fittingId: 'stanchion' },
    );
    // Starboard tack: leeward is to port, where y is positive.
    const items = sceneIn([foot, ...hullFaces(boat, 'hull')], viewAt({ angleDeg: 90, heelDeg: 25 }));
    const at = items.find(({ fittingId }) => fittingId === 'stanchion')?.corners[0];
    if (at === undefined) throw new Error('the stanchion is not drawn');
    expect(itemAt(items, at, 0)?.fittingId).toBe('hull');
  });
});

describe('under water', () => {
  it('nothing is drawn, and what reaches out of it is cut off at the waterline', () => {
    const rod = (z1: number, z2: number) =>
      solid(
        'bar',
        [
          [0, 0, z1],
          [0, 0, z2],
        ],
        { thicknessM: 0.02 },
      );
    const view = viewAt({ angleDeg: 40 });
    expect(sceneIn([rod(-2, -1)], view)).toEqual([]);
    const [cut] = sceneIn([rod(-1, 1)], view);
    expect(cut?.corners.map(([, y]) => y)).toEqual([
      centimetres.originY,
      centimetres.originY - centimetres.pxPerM,
    ]);
    const [flown] = sceneIn([rod(-1, 1)], viewAt({ angleDeg: 40, riseM: 1 }));
    expect(flown?.corners.map(([, y]) => centimetres.originY - y)).toEqual([0, 200]);
  });
});

/** Everything that the demo carries, in one state. */
function demoScene(parts: Parameters<typeof stateAt>[0]) {
  const state = stateAt(parts);
  const solids = demo().fittings.flatMap((fitting) => solidsOf(fitting, deckLineOf(boat), state));
  return sceneIn([...hullFaces(boat, null), ...solids], viewAt(parts ?? {}));
}

function cornersOf(items: readonly SceneItem[]): number[] {
  return items.flatMap(({ corners }) => corners.flat());
}

describe('the picture along the wind', () => {
  it('is the same when boat and wind are turned together', () => {
    const ahead = cornersOf(demoScene({ angleDeg: 30, heelDeg: 20 }));
    const turned = cornersOf(demoScene({ angleDeg: 37, heelDeg: 20, leewayDeg: 7 }));
    expect(turned.length).toBe(ahead.length);
    turned.forEach((value, i) => {
      expect(value).toBeCloseTo(ahead[i] ?? NaN, 6);
    });
  });

  it('of the other tack is the mirror image, for what is mirrored itself', () => {
    const places = [
      [2, -0.5, 1],
      [2, 0.5, 1],
    ] as const;
    const balls = (sign: number) =>
      places.map(([x, y, z], i) =>
        solid('ball', [[x, sign * y, z]], { thicknessM: 0.1, fittingId: String(i) }),
      );
    const middles = (items: readonly SceneItem[]): ReadonlyMap<string | null, number> =>
      new Map(
        items.map(({ fittingId, corners }) => [
          fittingId,
          corners.reduce((sum, [x]) => sum + x / corners.length, 0) - centimetres.originX,
        ]),
      );
    const starboard = middles(sceneIn(balls(1), viewAt({ angleDeg: 35, heelDeg: 15 })));
    const port = middles(sceneIn(balls(-1), viewAt({ angleDeg: 35, heelDeg: 15, tack: 'port' })));
    for (const id of ['0', '1']) expect(port.get(id)).toBeCloseTo(-(starboard.get(id) ?? NaN), 9);
  });

  it('shows starboard to the left from ahead, to the right from astern and from above', () => {
    const ball = [solid('ball', [[0, -1, 2]], { thicknessM: 0.2 })];
    const side = (kind: 'wind' | 'astern' | 'above') => {
      const [item] = sceneIn(ball, viewAt({ angleDeg: 0 }, kind));
      return Math.sign((item?.corners[0]?.[0] ?? NaN) - centimetres.originX);
    };
    expect([side('wind'), side('astern'), side('above')]).toEqual([-1, 1, 1]);
  });

  it('from windward puts the bow to the right on starboard tack and to the left on port tack', () => {
    const bow = [solid('ball', [[5, 0, 2]], { thicknessM: 0.2 })];
    const side = (tack: 'port' | 'starboard') => {
      const [item] = sceneIn(bow, viewAt({ angleDeg: 30, tack }, 'side'));
      return Math.sign((item?.corners[0]?.[0] ?? NaN) - centimetres.originX);
    };
    expect([side('starboard'), side('port')]).toEqual([1, -1]);
  });
});

describe('pointing', () => {
  it('finds a thin bar within the reach, and not beyond it', () => {
    const items = sceneIn([post(0, 0)], viewAt({ angleDeg: 0 }));
    const [x, y] = [centimetres.originX + 5, centimetres.originY - 150];
    expect(itemAt(items, [x, y], 6)?.fittingId).toBe('post');
    expect(itemAt(items, [x + 4, y], 6)).toBeNull();
  });

  it('passes through the sketched rig', () => {
    const sail = solid(
      'face',
      [
        [3, -3, 0],
        [3, 3, 0],
        [3, 0, 5],
      ],
      { role: 'rig', fittingId: null },
    );
    const items = sceneIn([box(0, 0), sail], viewAt({ angleDeg: 0 }));
    expect(itemAt(items, [centimetres.originX, centimetres.originY - 150], 0)?.fittingId).toBe('box');
  });
});

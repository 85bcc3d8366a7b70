import { apparentWindVelocityAt, type SailingState } from '../../physics/condition/sailingState';
import { headingToTrack, toBoat } from '../../physics/frames/boatToTrack';
import { headingVector, trackVector, type BoatVector, type TrackVector } from '../../physics/vector/vector3';

/** From where the boat is looked at. */
export const viewKinds = ['wind', 'astern', 'side', 'above'] as const;
export type ViewKind = (typeof viewKinds)[number];

/**
 * An orthographic view: what is to the right, up and away from the eye, as unit vectors of the boat's frame. In the views
 * along the water `up` is the true vertical, so that heights above the water are to scale.
 */
export interface PictureView {
  readonly kind: ViewKind;
  readonly right: BoatVector;
  readonly up: BoatVector;
  readonly away: BoatVector;
  /** What is added to a height along `up` to reach the height above the water, m. */
  readonly riseM: number;
}

/** Nearly still air comes from nowhere. */
const leastWindMs = 1e-6;

/**
 * The view in a condition.
 * @param heightM along the apparent wind at this height above the water; the other views have no use for it.
 * @param turnRad takes the eye about the vertical by so much, clockwise seen from above, to look from another side.
 */
export function viewOf(kind: ViewKind, state: SailingState, heightM: number, turnRad = 0): PictureView {
  const away = turned(awayOf(kind, state, heightM), turnRad);
  const isAbove = kind === 'above';
  const up = isAbove
    ? turned(headingToTrack(state.rotation, headingVector(1, 0, 0)), turnRad)
    : trackVector(0, 0, 1);
  const right = trackVector(
    away[1] * up[2] - away[2] * up[1],
    away[2] * up[0] - away[0] * up[2],
    away[0] * up[1] - away[1] * up[0],
  );
  const { rotation } = state;
  return {
    kind,
    right: toBoat(rotation, right),
    up: toBoat(rotation, up),
    away: toBoat(rotation, away),
    riseM: isAbove ? 0 : state.riseM,
  };
}

function awayOf(kind: ViewKind, state: SailingState, heightM: number): TrackVector {
  const { rotation, tackSign } = state;
  switch (kind) {
    case 'astern':
      return headingToTrack(rotation, headingVector(1, 0, 0));
    case 'side':
      // From the windward side: leeward is to port on starboard tack.
      return headingToTrack(rotation, headingVector(0, tackSign, 0));
    case 'above':
      return trackVector(0, 0, -1);
    case 'wind': {
      const [x, y] = apparentWindVelocityAt(state, heightM);
      const speedMs = Math.hypot(x, y);
      if (speedMs < leastWindMs) return headingToTrack(rotation, headingVector(-1, 0, 0));
      return trackVector(x / speedMs, y / speedMs, 0);
    }
  }
}

function turned([x, y, z]: TrackVector, angleRad: number): TrackVector {
  const cosine = Math.cos(angleRad);
  const sine = Math.sin(angleRad);
  return trackVector(cosine * x + sine * y, cosine * y - sine * x, z);
}

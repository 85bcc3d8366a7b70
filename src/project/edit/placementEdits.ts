import { freeboardAt, type DeckLine } from '../../physics/placement/deckLine';
import type { PlacedMember } from '../../physics/fitting/fittingInput';
import type { BoatVector } from '../../physics/vector/vector3';
import { fromSi } from '../../units/convert';
import { formatQuantity } from '../../units/print';
import { deckLineOf, membersOf } from '../core/fittingToPhysics';
import type { Project, ProjectPlacement, ProjectPoint } from '../file/schema';
import { nothingSuch, type EditAnswer } from './answer';
import { changeFitting } from './fittingEdits';
import { neat } from './neat';

type Taped = Extract<ProjectPlacement, { kind: 'taped' }>;
type EndPoints = Extract<ProjectPlacement, { kind: 'endPoints' }>;

/** Two places closer than this, m, are the same on a boat. */
const sameM = 0.001;

/** Says where a fitting is in the other way, at the same place. */
export function changePlacementKind(
  project: Project,
  id: string,
  kind: ProjectPlacement['kind'],
): EditAnswer {
  const fitting = project.fittings.find((each) => each.id === id);
  if (fitting === undefined) return nothingSuch('fitting', id);
  const { placement, message } = placedAs(fitting.placement, kind, deckLineOf(project.boat));
  return changeFitting(project, id, (old) => ({ ...old, placement }), message);
}

/** A placement, and what became of it besides what was asked. */
export interface Placed {
  readonly placement: ProjectPlacement;
  readonly message?: string;
}

/**
 * The placement said in another way. Between the first and the last of a row, end points run straight and taped places
 * follow the deck, and taped ones are all of one length and lean: where that moves something, the message says so.
 */
export function placedAs(
  placement: ProjectPlacement,
  kind: ProjectPlacement['kind'],
  line: DeckLine,
): Placed {
  if (placement.kind === kind) return { placement };
  const other = otherKind(placement, line);
  const movedM = largestMoveM(membersOf(placement, line), membersOf(other, line));
  if (movedM <= sameM) return { placement: other };
  const moved = formatQuantity(movedM, 'mm', { decimals: 0 });
  const message = `Said this way, the row cannot stand quite as it did: part of it moves by up to ${moved}.`;
  return { placement: other, message };
}

/** The same placement as end points when it was taped, as taped when it had end points. */
export function otherKind(placement: ProjectPlacement, line: DeckLine): ProjectPlacement {
  return placement.kind === 'taped' ? asEndPoints(placement, line) : asTaped(placement, line);
}

function asEndPoints(placement: Taped, line: DeckLine): EndPoints {
  const members = membersOf({ ...placement, pair: false }, line);
  const first = members[0];
  const last = members.at(-1);
  const origin: ProjectPoint = { xM: 0, yM: 0, zM: 0 };
  const { row, basis, pair } = placement;
  return {
    kind: 'endPoints',
    start: first === undefined ? origin : pointOf(first.start),
    end: first === undefined ? origin : pointOf(first.end),
    basis,
    row:
      row === null || last === undefined
        ? null
        : { count: row.count, lastStart: pointOf(last.start), lastEnd: pointOf(last.end) },
    pair,
  };
}

function pointOf([xM, yM, zM]: BoatVector): ProjectPoint {
  return { xM: neat(xM), yM: neat(yM), zM: neat(zM) };
}

function asTaped({ start, end, basis, row, pair }: EndPoints, line: DeckLine): Taped {
  const out = start.yM < 0 ? -1 : 1;
  const aftOfStemM = line.stemXM - start.xM;
  const [dx, dy, dz] = [end.xM - start.xM, end.yM - start.yM, end.zM - start.zM];
  const lengthM = Math.hypot(dx, dy, dz);
  const leanAftRad = Math.atan2(-dx, Math.hypot(dy, dz));
  const leanOutRad = Math.hypot(dy, dz) === 0 ? 0 : Math.atan2(out * dy, dz);
  return {
    kind: 'taped',
    aftOfStemM: neat(aftOfStemM),
    side: start.yM === 0 ? 'centreline' : out === 1 ? 'port' : 'starboard',
    athwart: { from: 'centreline', inboardOrOutM: neat(out * start.yM) },
    aboveDeckM: neat(start.zM - freeboardAt(line, aftOfStemM)),
    lengthM: neat(lengthM),
    leanAftDeg: lengthM === 0 ? 0 : neat(fromSi(leanAftRad, 'deg')),
    leanOutDeg: neat(fromSi(leanOutRad, 'deg')),
    basis,
    row:
      row === null
        ? null
        : {
            count: row.count,
            lastAftOfStemM: neat(line.stemXM - row.lastStart.xM),
            lastAthwartM: neat(out * row.lastStart.yM),
          },
    pair,
  };
}

/** The farthest that an end of a member moves, m. */
function largestMoveM(before: readonly PlacedMember[], after: readonly PlacedMember[]): number {
  return before.reduce((largest, member, i) => {
    const other = after[i] ?? member;
    return Math.max(largest, distanceM(member.start, other.start), distanceM(member.end, other.end));
  }, 0);
}

function distanceM(a: BoatVector, b: BoatVector): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** How far aft of the one before the members of a new row stand, m, until somebody says where the last one is. */
const newRowStepM = 1;

/** How many stand in the row; one is no row. */
export function setRowCount(project: Project, id: string, count: number): EditAnswer {
  const fitting = project.fittings.find((each) => each.id === id);
  if (fitting === undefined) return nothingSuch('fitting', id);
  const { placement, message } = placedInRow(fitting.placement, count);
  return changeFitting(project, id, (old) => ({ ...old, placement }), message);
}

/** The placement as a row of so many. A new row runs straight aft, its members 1 m apart. */
export function placedInRow(placement: ProjectPlacement, count: number): Placed {
  if (count === 1) return { placement: { ...placement, row: null } };
  const inRow = withCount(placement, count);
  if (placement.row !== null) return { placement: inRow };
  const step = formatQuantity(newRowStepM, 'm');
  return { placement: inRow, message: `The row runs aft, ${step} apart; say where its last one stands.` };
}

function withCount(placement: ProjectPlacement, count: number): ProjectPlacement {
  const spanM = newRowStepM * (count - 1);
  if (placement.kind === 'taped') {
    const { row, aftOfStemM, athwart } = placement;
    const first = { lastAftOfStemM: neat(aftOfStemM + spanM), lastAthwartM: athwart.inboardOrOutM };
    return { ...placement, row: { ...(row ?? first), count } };
  }
  const { row, start, end } = placement;
  const back = (point: ProjectPoint): ProjectPoint => ({ ...point, xM: neat(point.xM - spanM) });
  return { ...placement, row: { ...(row ?? { lastStart: back(start), lastEnd: back(end) }), count } };
}

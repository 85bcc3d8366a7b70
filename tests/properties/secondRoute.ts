import type {
  Point,
  Spread,
  RouteBoat,
  RoutePlacement,
  RouteFitting,
  RouteWindLaw,
  RouteCondition,
  RouteOutcome,
} from './secondRouteInput';
import {
  radians,
  cross,
  inner,
  plus,
  times,
  length,
  axesTurnedAboutZ,
  axesTurnedAboutX,
  transposed,
  apply,
  product,
  type Vector,
  type Matrix,
} from './secondRouteVectors';

/**
 * The mechanics of a ledger once more, from the definitions and by other means, sharing no code with the product:
 * everything is computed for starboard tack in the boat's frame (port tack is mirrored first and back at the end), the
 * wind is turned into that frame by products of elementary matrices, cross-flow is t x (u x t), and integrals are
 * midpoint sums. Coefficients must be typed, friction off and bar ends closed; the deck line must be straight.
 */

const strips = 20_000;

/** Root of a rising function in [low, high] by halving. */
function bisect(rising: (x: number) => number, low: number, high: number): number {
  let [below, above] = [low, high];
  for (let step = 0; step < 200; step += 1) {
    const middle = (below + above) / 2;
    if (rising(middle) > 0) above = middle;
    else below = middle;
  }
  return (below + above) / 2;
}

/** Wind speed against height for a wind at 10 m. */
function windProfile(law: RouteWindLaw, at10Ms: number): (heightM: number) => number {
  const held = (heightM: number): number => (heightM < 1 ? 1 : heightM);
  if (law.kind === 'uniform') return () => at10Ms;
  if (law.kind === 'power')
    return (heightM) => at10Ms * Math.exp(law.exponent * Math.log(held(heightM) / 10));
  const roughness = (friction: number): number => (law.charnock * friction ** 2) / 9.80665;
  const at10With = (friction: number): number => (friction / 0.4) * Math.log(10 / roughness(friction));
  const friction = bisect((u) => at10With(u) - at10Ms, 1e-6, 4);
  return (heightM) => (friction / 0.4) * Math.log(held(heightM) / roughness(friction));
}

interface Air {
  readonly density: number;
  /** Boat from track axes, starboard tack. */
  readonly boatFromTrack: Matrix;
  /** True wind in the track's frame at a height, starboard tack. */
  readonly trueWind: (heightM: number) => Vector;
  readonly boatVelocity: Vector;
  readonly riseM: number;
}

/** A condition sailed on starboard tack. */
function airOf(condition: RouteCondition, law: RouteWindLaw): Air {
  const heel = radians(condition.heelDeg);
  const leeway = radians(condition.leewayDeg);
  const headingFromBoat = axesTurnedAboutX(heel);
  const trackFromHeading = axesTurnedAboutZ(leeway);
  const boatFromTrack = transposed(product(trackFromHeading, headingFromBoat));
  const boatVelocity: Vector = [condition.boatSpeedMs, 0, 0];
  const { at10Ms, fromDeg } = trueWind10(condition, law);
  const flow: Vector = [-Math.cos(radians(fromDeg)), Math.sin(radians(fromDeg)), 0];
  const speedAt = windProfile(law, at10Ms);
  return {
    density: density(condition.air),
    boatFromTrack,
    trueWind: (heightM) => times(flow, speedAt(heightM)),
    boatVelocity,
    riseM: condition.riseM,
  };
}

/** Ideal gases: dry air 287.05 and vapour 461.5 J/(kg K), Magnus over water. */
function density({ temperatureC, pressurePa, relativeHumidity }: RouteCondition['air']): number {
  const kelvin = temperatureC + 273.15;
  const vapour = relativeHumidity * 611.2 * Math.exp((17.62 * temperatureC) / (temperatureC + 243.12));
  return (pressurePa - vapour * (1 - 287.05 / 461.5)) / (287.05 * kelvin);
}

function trueWind10(condition: RouteCondition, law: RouteWindLaw): { at10Ms: number; fromDeg: number } {
  const { wind } = condition;
  if (wind.kind === 'true') {
    return { at10Ms: reducedTo10(law, wind.speedMs, wind.heightM), fromDeg: wind.angleFromCourseDeg };
  }
  // Solved the long way round: the true wind whose reading in the heeled plane is the one given.
  const heel = radians(condition.heelDeg);
  const leeway = radians(condition.leewayDeg);
  const bow = radians(wind.angleFromBowDeg);
  const inPlane: Vector = [-wind.speedMs * Math.cos(bow), wind.speedMs * Math.sin(bow), 0];
  const horizontal: Vector = [inPlane[0], inPlane[1] / Math.cos(heel), 0];
  const apparent = apply(axesTurnedAboutZ(leeway), horizontal);
  const air = plus(apparent, [condition.boatSpeedMs, 0, 0]);
  const heightM = wind.heightUpMastM * Math.cos(heel) + condition.riseM;
  return {
    at10Ms: reducedTo10(law, length(air), heightM),
    fromDeg: (Math.atan2(air[1], -air[0]) / Math.PI) * 180,
  };
}

function reducedTo10(law: RouteWindLaw, speedMs: number, heightM: number): number {
  return bisect((at10) => windProfile(law, at10)(heightM) - speedMs, 1e-3, 200);
}

interface Member {
  readonly start: Vector;
  readonly end: Vector;
}

function vectorOf({ xM, yM, zM }: Point): Vector {
  return [xM, yM, zM];
}

function membersOf(fitting: RouteFitting, boat: RouteBoat): Member[] {
  const { placement, shape } = fitting;
  const laid = placement.kind === 'taped' ? taped(placement, boat) : fromEndPoints(placement);
  const all = placement.pair ? laid.flatMap((member) => [member, mirroredMember(member)]) : laid;
  if (shape.kind === 'roundBar') return all;
  const height = shape.kind === 'bluffBody' ? shape.height.m : 0;
  return all.map(({ start }) => ({ start, end: plus(start, [0, 0, height]) }));
}

function mirroredMember({ start, end }: Member): Member {
  return { start: [start[0], -start[1], start[2]], end: [end[0], -end[1], end[2]] };
}

function fromEndPoints({ start, end, row }: Extract<RoutePlacement, { kind: 'endPoints' }>): Member[] {
  const first: Member = { start: vectorOf(start), end: vectorOf(end) };
  if (row === null) return [first];
  const last: Member = { start: vectorOf(row.lastStart), end: vectorOf(row.lastEnd) };
  const members: Member[] = [];
  for (let i = 0; i < row.count; i += 1) {
    const share = i / (row.count - 1);
    const mix = (a: Vector, b: Vector): Vector => plus(times(a, 1 - share), b, share);
    members.push({ start: mix(first.start, last.start), end: mix(first.end, last.end) });
  }
  return members;
}

/** By the tape: the deck line is straight, so its first and last station say it all. */
function taped(placement: Extract<RoutePlacement, { kind: 'taped' }>, boat: RouteBoat): Member[] {
  const first = boat.deckLine[0];
  const last = boat.deckLine[boat.deckLine.length - 1];
  if (first === undefined || last === undefined) throw new Error('no deck line');
  const count = placement.row?.count ?? 1;
  const members: Member[] = [];
  for (let i = 0; i < count; i += 1) {
    const share = count === 1 ? 0 : i / (count - 1);
    const mixed = (a: number, b: number): number => a * (1 - share) + b * share;
    const aft = mixed(placement.aftOfStemM, placement.row?.lastAftOfStemM ?? 0);
    const given = mixed(placement.athwart.inboardOrOutM, placement.row?.lastAthwartM ?? 0);
    const along = (aft - first.aftOfStemM) / (last.aftOfStemM - first.aftOfStemM);
    const freeboard = first.freeboardM * (1 - along) + last.freeboardM * along;
    const halfBeam = first.halfBeamM * (1 - along) + last.halfBeamM * along;
    const outward = placement.athwart.from === 'deck-edge' ? halfBeam - given : given;
    const toPort = placement.side === 'starboard' ? -1 : 1;
    const start: Vector = [boat.lengthM / 2 - aft, toPort * outward, freeboard + placement.aboveDeckM];
    // Upright, leaned out about x, and the result leaned aft about the boat's athwartships axis.
    const [aftLean, outLean] = [radians(placement.leanAftDeg), radians(placement.leanOutDeg)];
    const leanedOut: Vector = [0, toPort * Math.sin(outLean), Math.cos(outLean)];
    const direction = plus(times(leanedOut, Math.cos(aftLean)), [-1, 0, 0], Math.sin(aftLean));
    members.push({ start, end: plus(start, direction, placement.lengthM) });
  }
  return members;
}

/** Sums in the boat's frame on starboard tack. */
interface BoatSums {
  force: Vector;
  moment: Vector;
  airPower: number;
  windPower: number;
}

interface Winds {
  readonly trueBoat: Vector;
  readonly freeBoat: Vector;
  readonly localBoat: Vector;
}

function windsAt(air: Air, point: Vector, exposure: number, turnDeg: number): Winds {
  const trackFromBoat = transposed(air.boatFromTrack);
  const heightM = apply(trackFromBoat, point)[2] + air.riseM;
  const trueTrack = air.trueWind(heightM);
  const free = plus(trueTrack, air.boatVelocity, -1);
  // Where it comes from, on the windward (starboard) side, moves aft by the turn.
  const from = Math.atan2(free[1], -free[0]) + radians(turnDeg);
  const speed = exposure * length(free);
  const local: Vector = [-speed * Math.cos(from), speed * Math.sin(from), 0];
  return {
    trueBoat: apply(air.boatFromTrack, trueTrack),
    freeBoat: apply(air.boatFromTrack, free),
    localBoat: apply(air.boatFromTrack, local),
  };
}

function add(sums: BoatSums, point: Vector, force: Vector, winds: Winds): void {
  sums.force = plus(sums.force, force);
  sums.moment = plus(sums.moment, cross(point, force));
  sums.airPower += inner(force, winds.freeBoat);
  sums.windPower += inner(force, winds.trueBoat);
}

/** Force per unit of length of the member (bar) or of its height's share (body), at a point. */
type Density = (winds: Winds, air: Air) => Vector;

function barDensity(diameterM: number, coefficient: number, axis: Vector): Density {
  return ({ localBoat }, air) => {
    const square = cross(axis, cross(localBoat, axis));
    return times(square, 0.5 * air.density * coefficient * diameterM * length(square));
  };
}

function bodyDensity(areas: Vector, heightM: number): Density {
  return ({ localBoat }, air) => {
    const q = 0.5 * air.density * length(localBoat);
    return [
      (q * areas[0] * localBoat[0]) / heightM,
      (q * areas[1] * localBoat[1]) / heightM,
      (q * areas[2] * localBoat[2]) / heightM,
    ];
  };
}

/** Midpoint sums over the part of a member above the water, in one piece below 1 m and one above. */
function integrate(
  sums: BoatSums,
  member: Member,
  air: Air,
  exposure: number,
  turnDeg: number,
  law: Density,
): void {
  const along = plus(member.end, member.start, -1);
  const lengthM = length(along);
  const heightAt = (share: number): number =>
    apply(transposed(air.boatFromTrack), plus(member.start, along, share))[2] + air.riseM;
  const cuts = [0, 1];
  for (const level of [0, 1]) {
    const [from, to] = [heightAt(0) - level, heightAt(1) - level];
    if (from * to < 0) cuts.push(from / (from - to));
  }
  cuts.sort((a, b) => a - b);
  for (let piece = 0; piece + 1 < cuts.length; piece += 1) {
    const [from = 0, to = 0] = [cuts[piece], cuts[piece + 1]];
    if (heightAt((from + to) / 2) <= 0) continue;
    const share = (to - from) / strips;
    for (let i = 0; i < strips; i += 1) {
      const point = plus(member.start, along, from + (i + 0.5) * share);
      const winds = windsAt(air, point, exposure, turnDeg);
      add(sums, point, times(law(winds, air), share * lengthM), winds);
    }
  }
}

function isotropic(
  sums: BoatSums,
  point: Vector,
  areaM2: number,
  air: Air,
  exposure: number,
  turnDeg: number,
): void {
  const winds = windsAt(air, point, exposure, turnDeg);
  if (apply(transposed(air.boatFromTrack), point)[2] + air.riseM <= 0) return;
  const { localBoat } = winds;
  add(sums, point, times(localBoat, 0.5 * air.density * areaM2 * length(localBoat)), winds);
}

function known(value: Spread | null): number {
  if (value === null) throw new Error('the second route needs typed coefficients');
  return value.best;
}

function deployed(fitting: RouteFitting, members: readonly Member[], air: Air): BoatSums {
  const sums: BoatSums = { force: [0, 0, 0], moment: [0, 0, 0], airPower: 0, windPower: 0 };
  const { shape } = fitting;
  const turn = fitting.localTurn.deg;
  for (const member of members) {
    // Starboard tack: leeward is port.
    const isLeeward = member.start[1] + member.end[1] > 1e-9;
    const exposure = (isLeeward ? (fitting.exposureLeeward ?? fitting.exposure) : fitting.exposure).best;
    const along = plus(member.end, member.start, -1);
    if (shape.kind === 'roundBar') {
      const axis = times(along, 1 / length(along));
      integrate(
        sums,
        member,
        air,
        exposure,
        turn,
        barDensity(shape.diameter.m, known(shape.coefficient), axis),
      );
    } else if (shape.kind === 'bluffBody') {
      const [l, w, h] = [shape.length.m, shape.width.m, shape.height.m];
      const { x, y, z } = shape.coefficients;
      const areas: Vector = [known(x) * w * h, known(y) * l * h, known(z) * l * w];
      integrate(sums, member, air, exposure, turn, bodyDensity(areas, h));
    } else {
      isotropic(sums, member.start, shape.dragAreaM2.best, air, exposure, turn);
    }
  }
  return sums;
}

/** What a fitting does on the mean in a condition: its duty deployed, the rest of the time stowed. */
export function secondRoute(
  fitting: RouteFitting,
  boat: RouteBoat,
  condition: RouteCondition,
  law: RouteWindLaw,
): RouteOutcome {
  const air = airOf(condition, law);
  const isPort = condition.tack === 'port';
  const toStarboardTack = (v: Vector): Vector => (isPort ? [v[0], -v[1], v[2]] : v);
  const members = membersOf(fitting, boat).map((member) => (isPort ? mirroredMember(member) : member));
  const use = deployed(fitting, members, air);
  const rest: BoatSums = { force: [0, 0, 0], moment: [0, 0, 0], airPower: 0, windPower: 0 };
  if (fitting.stowed !== null) {
    const place = toStarboardTack(vectorOf(fitting.stowed.place));
    isotropic(rest, place, fitting.stowed.dragAreaM2.best, air, 1, 0);
  }
  const { byCondition, default: usual } = fitting.dutyFraction;
  const duty = byCondition.find(({ conditionId }) => conditionId === condition.id)?.fraction ?? usual;
  const force = plus(times(use.force, duty), rest.force, 1 - duty);
  const moment = plus(times(use.moment, duty), rest.moment, 1 - duty);
  const given = boat.centreOfLateralResistanceM;
  const centre: Vector = given === null ? [0, 0, -0.4 * boat.draughtM] : toStarboardTack(vectorOf(given));
  return outcome(force, moment, centre, condition, air, {
    airPower: duty * use.airPower + (1 - duty) * rest.airPower,
    windPower: duty * use.windPower + (1 - duty) * rest.windPower,
  });
}

function outcome(
  force: Vector,
  moment: Vector,
  centre: Vector,
  condition: RouteCondition,
  air: Air,
  powers: { readonly airPower: number; readonly windPower: number },
): RouteOutcome {
  const trackFromBoat = transposed(air.boatFromTrack);
  const forceTrack = apply(trackFromBoat, force);
  const momentTrack = apply(trackFromBoat, moment);
  // A force to port well above the centre, on starboard tack, heels to leeward; its moment about x is negative.
  const heeling = -plus(moment, cross(centre, force), -1)[0];
  const track = -inner(forceTrack, air.boatVelocity);
  const { hullDragPerSideForce, driveLostPerHeelingMomentPerM, atHeelLimit } = condition.prices;
  const sidePrice = (hullDragPerSideForce ?? 0) * forceTrack[1];
  const heelPrice = atHeelLimit ? (driveLostPerHeelingMomentPerM ?? 0) * heeling : 0;
  const back = condition.tack === 'port' ? -1 : 1;
  return {
    dragAgainstTrackN: -forceTrack[0],
    sideForceN: forceTrack[1],
    verticalForceN: forceTrack[2],
    heelingMomentNm: heeling,
    airPowerW: powers.airPower,
    trackPowerW: track,
    windPowerW: powers.windPower,
    fullPriceW: track + condition.boatSpeedMs * (sidePrice + heelPrice),
    forceTrackXN: forceTrack[0],
    forceTrackYN: back * forceTrack[1],
    forceTrackZN: forceTrack[2],
    forceBoatXN: force[0],
    forceBoatYN: back * force[1],
    forceBoatZN: force[2],
    momentTrackXNm: back * momentTrack[0],
    momentTrackYNm: momentTrack[1],
    momentTrackZNm: back * momentTrack[2],
    momentBoatXNm: back * moment[0],
    momentBoatYNm: moment[1],
    momentBoatZNm: back * moment[2],
  };
}

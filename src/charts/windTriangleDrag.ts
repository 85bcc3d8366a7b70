import type { Tack } from '../physics/frames/boatToTrack';
import { fromSi, toSi } from '../units/convert';
import { shownUnit } from '../units/shownUnits';
import { mirrorOf, type Point, type TriangleFrame, type WindTriangleGeometry } from './windTriangleGeometry';

/** The true wind at 10 m, as a triangle shows it. */
export interface DrawnWind {
  readonly speedMs: number;
  /** From the course, on the tack's side: 0 to pi. */
  readonly angleRad: number;
}

/**
 * The true wind that puts the wind's end where the pointer is: the inverse of the drawing. The tack is a choice of its
 * own, so beyond the course the end slides along it.
 * @param pointer in the drawing's pixels.
 */
export function windFromPointer(pointer: Point, { boat, pxPerMs }: TriangleFrame, tack: Tack): DrawnWind {
  const acrossMs = Math.max((mirrorOf(tack) * (pointer.x - boat.x)) / pxPerMs, 0);
  const aheadMs = (boat.y - pointer.y) / pxPerMs;
  const speedMs = Math.hypot(acrossMs, aheadMs);
  return { speedMs, angleRad: speedMs === 0 ? 0 : Math.atan2(acrossMs, aheadMs) };
}

/** The boat speed, m/s, that puts the boat's end as far ahead of the wind's end as the pointer is; she does not go astern. */
export function boatSpeedFromPointer(
  pointer: Point,
  { trueFrom, pxPerMs }: Pick<WindTriangleGeometry, 'trueFrom' | 'pxPerMs'>,
): number {
  return Math.max((trueFrom.y - pointer.y) / pxPerMs, 0);
}

/** Strongest wind and highest boat speed that the file holds, m/s. */
export const mostWindMs = 60;
export const mostBoatSpeedMs = 50;

/** A hand sets tenths of the reader's unit of speed and half degrees; what is finer is typed. */
const handSpeedStep = 0.1;
const angleStepDeg = 0.5;

/** The speed to the nearest tenth of a knot, or of the reader's other unit, within what the file holds. */
export function snappedSpeedMs(speedMs: number, mostMs: number): number {
  const unit = shownUnit('kn');
  const stepCount = Math.round(fromSi(Math.min(Math.max(speedMs, 0), mostMs), unit) / handSpeedStep);
  return Math.min(toSi(Number((stepCount * handSpeedStep).toFixed(1)), unit), mostMs);
}

/** The angle to the nearest half degree, 0 to 180. */
export function snappedAngleRad(angleRad: number): number {
  const stepCount = Math.round(fromSi(angleRad, 'deg') / angleStepDeg);
  return toSi(Math.min(Math.max(stepCount * angleStepDeg, 0), 180), 'deg');
}

/** What an arrow key asks for: steps up or down in speed, and steps of the angle. */
export interface KeyStep {
  readonly speedSteps: number;
  readonly angleSteps: number;
}

/** Up and down for the speed, right and left for the angle aft and forward; with Shift ten times as far. */
export function keyStep(key: string, isLarge: boolean): KeyStep | null {
  const size = isLarge ? 10 : 1;
  switch (key) {
    case 'ArrowUp':
      return { speedSteps: size, angleSteps: 0 };
    case 'ArrowDown':
      return { speedSteps: -size, angleSteps: 0 };
    case 'ArrowRight':
      return { speedSteps: 0, angleSteps: size };
    case 'ArrowLeft':
      return { speedSteps: 0, angleSteps: -size };
    default:
      return null;
  }
}

/** One press of a key, in the reader's unit of speed. */
const keySpeedStep = 0.5;
const keyAngleDeg = 1;

export function steppedWind(wind: DrawnWind, { speedSteps, angleSteps }: KeyStep): DrawnWind {
  return {
    speedMs: wind.speedMs + toSi(speedSteps * keySpeedStep, shownUnit('kn')),
    angleRad: wind.angleRad + toSi(angleSteps * keyAngleDeg, 'deg'),
  };
}

/** Boat speed has one direction: every arrow key steps it. */
export function steppedBoatSpeedMs(boatSpeedMs: number, { speedSteps, angleSteps }: KeyStep): number {
  return boatSpeedMs + toSi((speedSteps + angleSteps) * keySpeedStep, shownUnit('kn'));
}

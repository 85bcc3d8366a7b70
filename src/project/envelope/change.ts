/** ONE thing done otherwise in an estimate: what a slip would have changed. */
export interface Change {
  /** On the speed that is met. */
  readonly speedFactor: number;
  /** On the area that follows from sizes. */
  readonly areaFactor: number;
  /** On how many there are. */
  readonly countFactor: number;
  readonly pressureFactor: number;
  /** Horsepower read as the other one. */
  readonly isOtherHorsepower: boolean;
  /** The true wind taken as if it were met. */
  readonly isTrueAsMet: boolean;
  /** Air power where track power is meant, or the other way round. */
  readonly isOtherPower: boolean;
}

export const noChange: Change = {
  speedFactor: 1,
  areaFactor: 1,
  countFactor: 1,
  pressureFactor: 1,
  isOtherHorsepower: false,
  isTrueAsMet: false,
  isOtherPower: false,
};

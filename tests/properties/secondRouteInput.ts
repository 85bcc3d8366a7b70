/** The parts of a project file that the second route reads, written down again so that it shares nothing. */

export interface Point {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
}

export interface Spread {
  readonly best: number;
}

/** The parts of a project file that the mechanics need. */
export interface RouteBoat {
  readonly lengthM: number;
  readonly draughtM: number;
  readonly deckLine: readonly {
    readonly aftOfStemM: number;
    readonly freeboardM: number;
    readonly halfBeamM: number;
  }[];
  readonly centreOfLateralResistanceM: Point | null;
}

export type RoutePlacement =
  | {
      readonly kind: 'endPoints';
      readonly start: Point;
      readonly end: Point;
      readonly row: { readonly count: number; readonly lastStart: Point; readonly lastEnd: Point } | null;
      readonly pair: boolean;
    }
  | {
      readonly kind: 'taped';
      readonly aftOfStemM: number;
      readonly side: 'centreline' | 'port' | 'starboard';
      readonly athwart: { readonly from: 'centreline' | 'deck-edge'; readonly inboardOrOutM: number };
      readonly aboveDeckM: number;
      readonly lengthM: number;
      readonly leanAftDeg: number;
      readonly leanOutDeg: number;
      readonly row: {
        readonly count: number;
        readonly lastAftOfStemM: number;
        readonly lastAthwartM: number;
      } | null;
      readonly pair: boolean;
    };

export type Size = { readonly m: number };

export type RouteShape =
  | { readonly kind: 'roundBar'; readonly diameter: Size; readonly coefficient: Spread | null }
  | { readonly kind: 'measuredArea'; readonly dragAreaM2: Spread }
  | {
      readonly kind: 'bluffBody';
      readonly length: Size;
      readonly width: Size;
      readonly height: Size;
      readonly coefficients: {
        readonly x: Spread | null;
        readonly y: Spread | null;
        readonly z: Spread | null;
      };
    };

export interface RouteFitting {
  readonly shape: RouteShape;
  readonly placement: RoutePlacement;
  readonly exposure: Spread;
  readonly exposureLeeward: Spread | null;
  readonly localTurn: { readonly deg: number };
  readonly dutyFraction: {
    readonly default: number;
    readonly byCondition: readonly { readonly conditionId: string; readonly fraction: number }[];
  };
  readonly stowed: { readonly dragAreaM2: Spread; readonly place: Point } | null;
}

export type RouteWindLaw =
  | { readonly kind: 'log'; readonly charnock: number }
  | { readonly kind: 'power'; readonly exponent: number }
  | { readonly kind: 'uniform' };

export interface RouteCondition {
  readonly id: string;
  readonly wind:
    | {
        readonly kind: 'true';
        readonly speedMs: number;
        readonly heightM: number;
        readonly angleFromCourseDeg: number;
      }
    | {
        readonly kind: 'instrument';
        readonly speedMs: number;
        readonly angleFromBowDeg: number;
        readonly heightUpMastM: number;
      };
  readonly tack: 'port' | 'starboard';
  readonly boatSpeedMs: number;
  readonly heelDeg: number;
  readonly leewayDeg: number;
  readonly riseM: number;
  readonly air: {
    readonly temperatureC: number;
    readonly pressurePa: number;
    readonly relativeHumidity: number;
  };
  readonly prices: {
    readonly hullDragPerSideForce: number | null;
    readonly driveLostPerHeelingMomentPerM: number | null;
    readonly atHeelLimit: boolean;
  };
}

/** The same entries as the ledger's outcome, by the same names. */
export interface RouteOutcome {
  readonly dragAgainstTrackN: number;
  readonly sideForceN: number;
  readonly verticalForceN: number;
  readonly heelingMomentNm: number;
  readonly airPowerW: number;
  readonly trackPowerW: number;
  readonly windPowerW: number;
  readonly fullPriceW: number;
  readonly forceTrackXN: number;
  readonly forceTrackYN: number;
  readonly forceTrackZN: number;
  readonly forceBoatXN: number;
  readonly forceBoatYN: number;
  readonly forceBoatZN: number;
  readonly momentTrackXNm: number;
  readonly momentTrackYNm: number;
  readonly momentTrackZNm: number;
  readonly momentBoatXNm: number;
  readonly momentBoatYNm: number;
  readonly momentBoatZNm: number;
}

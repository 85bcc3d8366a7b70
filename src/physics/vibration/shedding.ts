import type { Quantity } from '../quantity';

/** Strouhal number of a round bar below its crisis, give or take a tenth. Source: strouhal-cylinder (0.2 from memory). */
export const strouhal = { low: 0.18, best: 0.2, high: 0.22 } as const;

/** Reynolds numbers for which the range of `strouhal` holds the published curve. Source: strouhal-cylinder. */
export const strouhalReynoldsRange = { from: 250, to: 2e5 } as const;

/** Vortices shed at one speed square to the axis. */
export interface Shedding {
  readonly crossSpeedMs: number;
  readonly widthM: number;
  readonly reynolds: number;
  readonly sheddingHz: number;
  readonly sheddingLowHz: number;
  readonly sheddingHighHz: number;
  /** 1 where the Strouhal number is known, 0 in the crisis (irregular) or in creeping flow. */
  readonly isRegular: 0 | 1;
}

/**
 * How often a round bar or a wire sheds vortices to one side: f = St |u_n| / d, St 0.2 +- 10 %, for Reynolds numbers of 250 to 2e5;
 * in the crisis beyond it shedding is irregular (and settles near St 0.27 above 3.5e6). Values are given there and marked.
 * Example: 25 mm at 10 m/s: 80 Hz, 72 to 88. Speed and width above nothing. Source: strouhal-cylinder.
 */
export function sheddingAt(crossSpeedMs: number, widthM: number, kinematicViscosityM2S: number): Shedding {
  const perStrouhal = crossSpeedMs / widthM;
  const reynolds = (crossSpeedMs * widthM) / kinematicViscosityM2S;
  const { from, to } = strouhalReynoldsRange;
  return {
    crossSpeedMs,
    widthM,
    reynolds,
    sheddingHz: strouhal.best * perStrouhal,
    sheddingLowHz: strouhal.low * perStrouhal,
    sheddingHighHz: strouhal.high * perStrouhal,
    isRegular: reynolds >= from && reynolds <= to ? 1 : 0,
  };
}

export const sheddingQuantities = {
  crossSpeedMs: { symbol: 'u_n', label: 'wind square to the axis', unit: 'm/s' },
  widthM: { symbol: 'd', label: 'diameter', unit: 'm' },
  reynolds: { symbol: 'Re', label: 'Reynolds number', unit: '1', equation: 'u_n d / nu' },
  sheddingHz: {
    symbol: 'f_s',
    label: 'shedding frequency',
    unit: 'Hz',
    equation: '0.2 u_n / d',
    source: 'strouhal-cylinder',
  },
  sheddingLowHz: { symbol: 'f_low', label: 'shedding frequency, low', unit: 'Hz', equation: '0.18 u_n / d' },
  sheddingHighHz: {
    symbol: 'f_high',
    label: 'shedding frequency, high',
    unit: 'Hz',
    equation: '0.22 u_n / d',
  },
  isRegular: { symbol: 'g', label: 'one where shedding is regular', unit: '1', source: 'strouhal-cylinder' },
} as const satisfies Record<keyof Shedding, Quantity>;

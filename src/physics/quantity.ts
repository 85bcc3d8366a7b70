import type { SourceId } from './sources';

/** SI unit a quantity is kept in; `1` for pure numbers, `rad` for angles. */
export type SiUnit =
  | 'm'
  | 'm2'
  | 'm4'
  | 'm/s'
  | 'N'
  | 'N m'
  | 'N m2'
  | 'W'
  | 'Pa'
  | 'Hz'
  | 'kg'
  | 'kg/m'
  | 'kg/m2'
  | 'kg/m3'
  | 'm2/s'
  | 'rad'
  | '1/m'
  | '1';

/** What a number is: the table beside each result holds one per field, and every screen, file and page loops over it. */
export interface Quantity {
  readonly symbol: string;
  readonly label: string;
  readonly unit: SiUnit;
  /** The formula it comes from, in plain characters. */
  readonly equation?: string;
  readonly source?: SourceId;
}

import { QuantityField, type QuantityFieldProps } from './QuantityField';

type WithoutUnit<Props> = Props extends unknown ? Omit<Props, 'dimension' | 'unit'> : never;

type NumberFieldProps = WithoutUnit<QuantityFieldProps> & {
  /** True shows the fraction 0.05 as 5%. A bare number is then taken for per cent. */
  readonly isPercent?: boolean;
};

/** A plain number: a count, a coefficient, a fraction. Takes `0,8`, `3/4` and `75 %`. */
export function NumberField({ isPercent = false, ...rest }: NumberFieldProps) {
  return <QuantityField {...rest} dimension="none" unit={isPercent ? '%' : '1'} />;
}

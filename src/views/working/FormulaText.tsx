import type { FormulaPiece } from './formula';

/** A formula set in type: raised and lowered signs as real markup, since the typeface has few of its own. */
export function FormulaText({ pieces }: { readonly pieces: readonly FormulaPiece[] }) {
  return pieces.map(({ text, style, sub, sup }, i) => (
    // A formula never changes its order, so the place is the key.
    <span key={i} className={style === 'italic' ? 'variable' : undefined}>
      {text}
      {sub !== undefined && <sub>{sub}</sub>}
      {sup !== undefined && <sup>{sup}</sup>}
    </span>
  ));
}

import './outsideMark.css';

/** The diamond of everything that lies outside its valid range. The typeface has none, so it is drawn. */
export function OutsideMark({ label }: { readonly label?: string }) {
  return (
    <svg
      className="outside-mark"
      width="9"
      height="9"
      viewBox="0 0 9 9"
      {...(label === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
    >
      <path d="M4.5 0.7 8.3 4.5 4.5 8.3 0.7 4.5Z" />
    </svg>
  );
}

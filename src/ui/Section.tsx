import { useId, type ReactNode } from 'react';
import './section.css';

/** Fields that belong together, under a head. */
export function Section({ head, children }: { readonly head: string; readonly children: ReactNode }) {
  const id = useId();
  return (
    <section className="form-section" aria-labelledby={id}>
      <h3 id={id}>{head}</h3>
      {children}
    </section>
  );
}

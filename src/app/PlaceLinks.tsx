import { goTo, usePlace } from './place';
import { placeAddress } from './placeAddress';
import { places } from './places';

/** The ways to the places. Links, so that they can be opened beside the page and copied. */
export function PlaceLinks() {
  const current = usePlace(({ place }) => place);
  return (
    <nav className="place-links" aria-label="Places">
      {places.map(({ id, label }) => (
        <a
          key={id}
          href={placeAddress(id)}
          aria-current={id === current ? 'page' : undefined}
          onClick={(event) => {
            if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
            event.preventDefault();
            goTo(id);
          }}
        >
          {label}
        </a>
      ))}
    </nav>
  );
}

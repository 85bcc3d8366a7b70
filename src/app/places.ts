import type { Loader } from './LazyPart';
import type { PlaceId } from './placeAddress';

/** What every place but the ledger is handed. */
export interface PlaceProps {
  /** What its address holds behind its name. */
  readonly words: string;
  /** The address shall hold this. */
  readonly onWords: (words: string) => void;
  /** A fitting was made: the ledger shows it. */
  readonly onShowFitting: (fittingId: string) => void;
  /** A refit item was made: the plan shows it. */
  readonly onShowItem: (planId: string, itemId: string) => void;
}

/** A place of the page with an address of its own. */
interface Place {
  readonly id: PlaceId;
  readonly label: string;
  /** The page's head for those who listen, and the first words of the tab. */
  readonly heading: string;
  /** Fetched when the place is first gone to; null for the ledger, which the page opens on. */
  readonly load: Loader<PlaceProps> | null;
}

export const places: readonly Place[] = [
  { id: 'ledger', label: 'Ledger', heading: 'Drag ledger', load: null },
  {
    id: 'fairing',
    label: 'Fairing bench',
    heading: 'Fairing bench',
    load: async () => (await import('../views/fairing/FairingPlace')).FairingPlace,
  },
  {
    id: 'envelope',
    label: 'Envelope check',
    heading: 'Envelope check',
    load: async () => (await import('../views/envelope/EnvelopePlace')).EnvelopePlace,
  },
  {
    id: 'survey',
    label: 'Survey',
    heading: 'Survey',
    load: async () => (await import('./SurveyPage')).SurveyPage,
  },
];

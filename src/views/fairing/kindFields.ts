import type {
  Candidate,
  EllipseCandidate,
  FairingRoundCandidate,
  SectionCandidate,
} from '../../project/bench/candidates';

/** The complaint that stands beside a field, if there is one, and what half-typed text in it is kept for. */
export type Tie = (field: string) => { readonly error: string | undefined; readonly typedFor: string };

/** What the fields of a kind of candidate are handed. */
export interface KindFieldsProps<Kind extends Candidate = Candidate> {
  readonly candidate: Kind;
  readonly tie: Tie;
  readonly onChange: (next: Candidate) => void;
}

/** Those that have a nose. */
export type Directed = EllipseCandidate | SectionCandidate | FairingRoundCandidate;

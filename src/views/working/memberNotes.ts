import type { MemberTraceKey } from '../../physics/fitting/memberTrace';
import type { EndKind } from '../../physics/section/endEffect';
import type {
  ProjectExposure,
  ProjectFitting,
  ProjectMethods,
  ProjectShape,
} from '../../project/file/schema';
import { isMember, isSection, type ProjectMember } from '../../project/file/shapeKinds';
import { toSi } from '../../units/convert';
import { formatQuantity, formatRange, formatValue } from '../../units/print';
import type { WorkingSide } from './workingSides';

/** What must stand beside a number of the chain: where it comes from, what it is based on. Null when nothing must. */
export function memberNote(key: MemberTraceKey, side: WorkingSide, methods: ProjectMethods): string | null {
  const { fitting, lead } = side;
  if (fitting === null || lead === null) return null;
  switch (key) {
    case 'trueWindMs':
      return windLawNote(methods.windLaw, lead.heightM);
    case 'exposure':
      return exposureNote(fitting, lead.exposure);
    case 'coefficientBest':
      return coefficientNote(fitting.shape, lead.regime);
    case 'endFactor':
      return endsNote(fitting.shape, methods);
    case 'slenderness':
      return lead.slenderness === null ? null : 'doubled by a closed end';
    case 'frictionCoefficient':
      return isMember(fitting.shape) && fitting.shape.friction === 'zero' ? 'set to zero' : null;
    case 'dragAreaM2':
      return dragAreaNote(fitting.shape);
    case 'areaM2':
      return isMember(fitting.shape) ? `${areaWords(fitting.shape)} above the water` : null;
    default:
      return null;
  }
}

function windLawNote(law: ProjectMethods['windLaw'], heightM: number): string {
  const low = heightM < 1 ? '; below 1 m the wind of 1 m' : '';
  switch (law.kind) {
    case 'log':
      return `log law, Charnock ${formatValue(law.charnock, '1')}${low}`;
    case 'power':
      return `power law${low}`;
    case 'uniform':
      return 'uniform wind';
  }
}

/** Exposure and local turn with their sources. */
function exposureNote(fitting: ProjectFitting, exposureNow: number): string {
  const { exposure, exposureLeeward, localTurn } = fitting;
  const isLeeward =
    exposureLeeward !== null && exposureNow !== exposure.best && exposureNow === exposureLeeward.best;
  const used = isLeeward ? exposureLeeward : exposure;
  const side = isLeeward ? 'leeward side: ' : '';
  const turn =
    localTurn.deg === 0
      ? ''
      : `; wind turned by ${formatQuantity(toSi(localTurn.deg, 'deg'), 'deg')} (${localTurn.source === '' ? 'no source given' : localTurn.source})`;
  return side + exposureWords(used) + turn;
}

function exposureWords({ best, low, high, source }: ProjectExposure): string {
  if (best === 1 && low === 1 && high === 1 && source === '') return 'free wind';
  const range = low === high ? '' : `${formatRange(low, high, '1')}, `;
  return range + (source === '' ? 'no source given' : source);
}

function areaWords(shape: ProjectMember): string {
  return isSection(shape) ? 'chord × length' : 'diameter × length';
}

function coefficientNote(shape: ProjectShape, regime: string): string | null {
  if (shape.kind === 'measuredArea') return null;
  if (shape.kind === 'bluffBody') return `${regime}; on the frontal areas below`;
  if (shape.kind === 'net') return `${regime}; on the gross area, the wind's part onto it and along it`;
  const typed = shape.coefficient;
  if (typed !== null) {
    return `typed; on ${typed.areaBase}; ${typed.source === '' ? 'no source given' : typed.source}`;
  }
  return `${regime}; on ${isMember(shape) ? areaWords(shape) : 'the frontal area'}`;
}

export const endWords: Readonly<Record<EndKind, string>> = {
  free: 'free',
  surface: 'on a large surface',
  joined: 'joined',
};

function endsNote(shape: ProjectShape, methods: ProjectMethods): string | null {
  if (!isMember(shape) || shape.kind === 'wire') return null;
  const [first, second] = shape.ends;
  const words =
    first === second ? `both ends ${endWords[first]}` : `ends ${endWords[first]}, ${endWords[second]}`;
  if (shape.kind === 'fairing') return `${words}; they cost lift and its drag, and nothing before the stall`;
  return `${words}; ${methods.ends === 'dnv' ? 'DNV’s table' : 'EN’s line'}`;
}

const provenanceWords = {
  'pull-test': 'pull test',
  tunnel: 'wind tunnel',
  paper: 'a paper',
  estimate: 'an estimate',
} as const;

function dragAreaNote(shape: ProjectShape): string | null {
  if (shape.kind !== 'measuredArea') return null;
  const { kind, source } = shape.provenance;
  return `from ${provenanceWords[kind]}; ${source === '' ? 'no source given' : source}`;
}

import { sources, type SourceId } from '../../physics/sources';
import { iecPowerLaw, openSeaPowerLaw } from '../../physics/wind/windProfile';
import { defaultMethods } from '../../project/file/blankParts';
import type { ProjectMethods } from '../../project/file/schema';
import { formatPlain } from '../../units/plain';

type WindLaw = ProjectMethods['windLaw'];

export type MethodPart = keyof ProjectMethods;

/** One method that could be used, by what it is called and where it comes from. */
export interface MethodChoice {
  readonly id: string;
  readonly label: string;
  readonly source: string;
  readonly methods: Partial<ProjectMethods>;
  readonly isDefault: boolean;
  readonly isChosen: boolean;
}

function cited(id: SourceId): string {
  const { title, confidence } = sources[id];
  return `${title} (${confidence})`;
}

function windLawLabel(law: WindLaw): string {
  switch (law.kind) {
    case 'log':
      return `Log law, Charnock ${formatPlain(law.charnock)}`;
    case 'power':
      return `Power law, exponent ${formatPlain(law.exponent)}`;
    case 'uniform':
      return 'The same at every height';
  }
}

function windLawSource(law: WindLaw): string {
  switch (law.kind) {
    case 'log':
      return cited('charnock');
    case 'power':
      return isSameLaw(law, iecPowerLaw) ? cited('iec-61400-3') : 'Usual over the open sea (from memory)';
    case 'uniform':
      return 'To compare with budgets that know no height (common practice, no source)';
  }
}

export function isSameLaw(a: WindLaw, b: WindLaw): boolean {
  if (a.kind === 'log') return b.kind === 'log' && a.charnock === b.charnock;
  if (a.kind === 'power') return b.kind === 'power' && a.exponent === b.exponent;
  return b.kind === 'uniform';
}

const namedLaws: readonly WindLaw[] = [
  defaultMethods.windLaw,
  openSeaPowerLaw,
  iecPowerLaw,
  { kind: 'uniform' },
];

/** The named wind laws, and the chosen one where it is none of them. */
function windLawChoices({ windLaw }: ProjectMethods): MethodChoice[] {
  const isNamed = namedLaws.some((law) => isSameLaw(law, windLaw));
  const laws = isNamed ? namedLaws : [...namedLaws, windLaw];
  return laws.map((law) => ({
    id: windLawLabel(law),
    label: windLawLabel(law),
    source: isNamed || law !== windLaw ? windLawSource(law) : 'Your own number',
    methods: { windLaw: law },
    isDefault: isSameLaw(law, defaultMethods.windLaw),
    isChosen: isSameLaw(law, windLaw),
  }));
}

/** A part whose methods have no numbers of their own. */
export type NamedPart = Exclude<MethodPart, 'windLaw'>;

interface NamedMethod<Method extends string> {
  readonly value: Method;
  readonly label: string;
  readonly source: string;
}

export const namedMethods = {
  ends: [
    { value: 'dnv', label: 'DNV-RP-C205', source: cited('dnv-rp-c205') },
    { value: 'en', label: 'EN 1991-1-4', source: cited('en-1991-1-4') },
  ],
  inclined: [
    { value: 'cross-flow', label: 'cross-flow', source: cited('cross-flow') },
    { value: 'dnv-wind', label: 'DNV wind chapter', source: cited('dnv-rp-c205') },
  ],
  fairing: [
    { value: 'turbulent', label: 'turbulent', source: cited('hoerner-sections') },
    { value: 'laminar', label: 'laminar', source: cited('sheldahl-klimas-1981') },
  ],
} as const satisfies { readonly [Part in NamedPart]: readonly NamedMethod<ProjectMethods[Part]>[] };

function namedChoices(part: NamedPart): (methods: ProjectMethods) => MethodChoice[] {
  return (methods) =>
    namedMethods[part].map(({ value, label, source }) => ({
      id: value,
      label,
      source,
      methods: { [part]: value },
      isDefault: value === defaultMethods[part],
      isChosen: value === methods[part],
    }));
}

/** For each part of the methods, what could be chosen. */
export const choicesByPart: Readonly<Record<MethodPart, (methods: ProjectMethods) => MethodChoice[]>> = {
  windLaw: windLawChoices,
  ends: namedChoices('ends'),
  inclined: namedChoices('inclined'),
  fairing: namedChoices('fairing'),
};

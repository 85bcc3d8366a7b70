import type { EndMethod } from '../../physics/section/endEffect';
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
export function windLawChoices({ windLaw }: ProjectMethods): MethodChoice[] {
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

const endLabels: Readonly<Record<EndMethod, string>> = { dnv: 'DNV-RP-C205', en: 'EN 1991-1-4' };
const endSources: Readonly<Record<EndMethod, SourceId>> = { dnv: 'dnv-rp-c205', en: 'en-1991-1-4' };

export function endChoices({ ends }: ProjectMethods): MethodChoice[] {
  return (['dnv', 'en'] as const).map((method) => ({
    id: method,
    label: endLabels[method],
    source: cited(endSources[method]),
    methods: { ends: method },
    isDefault: method === defaultMethods.ends,
    isChosen: method === ends,
  }));
}

import { quantityIn, rangeIn, valueIn } from '../../units/printIn';
import type { Project, ProjectCondition } from '../file/schema';
import { benchCrossings } from './benchCrossings';
import {
  benchMeasures,
  type BenchMeasure,
  type BenchRow,
  type Ranged,
  type UseCandidate,
} from './benchTypes';
import { candidateChordM, candidateThicknessM, type Candidate } from './candidates';
import { compareCandidates } from './compareCandidates';

/** The file's longest note. */
const longestNote = 5000;

/** The reasoning behind a candidate in plain text: what it is, in which wind, what it saves, where it crosses, what is assumed. */
export function candidateNote(project: Project, use: UseCandidate): string {
  const { member, candidate, basis } = use;
  const answer = compareCandidates(project, member, [candidate], basis);
  const row = answer.ok ? answer.comparison.rows[0] : undefined;
  const hasFullPrice = answer.ok && answer.comparison.hasFullPrice;
  const lines = [
    'From the fairing bench.',
    sizesText(use),
    ...(row === undefined ? [] : [...savingLines(project, use, row, hasFullPrice), massText(row)]),
    ...(typeof row?.words === 'string' ? [row.words] : []),
    ...crossingLines(project, use),
    ...assumptions(candidate),
    ...(row?.notices ?? []),
  ];
  return bounded(lines.join('\n'));
}

/** Cut between characters; what the file would not take is left out. */
function bounded(text: string): string {
  return text
    .replace(/(?!\n)[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/gu, '')
    .slice(0, longestNote)
    .replace(/[\uD800-\uDBFF]$/, '');
}

function sizesText({ member, candidate }: UseCandidate): string {
  const thicknessM = candidateThicknessM(candidate, member);
  const chordM = candidateChordM(candidate, member);
  const across = quantityIn(thicknessM, 'mm');
  if (chordM === null) return `${candidate.name}: ${across} across.`;
  const ratio = valueIn(thicknessM / chordM, '1', { decimals: 2 });
  return `${candidate.name}: chord ${quantityIn(chordM, 'mm')}, thickness ${across} (thickness over chord ${ratio})${directionText(candidate)}.`;
}

function directionText(candidate: Candidate): string {
  if (!('direction' in candidate)) return '';
  const { direction } = candidate;
  if (direction.kind === 'fixed') return `, fixed at ${valueIn(direction.angleDeg, '1')}° from forward`;
  const pieces = direction.pieces === 1 ? '' : ` in ${direction.pieces} pieces`;
  return `, turning with the wind${pieces}, give or take ${valueIn(direction.residualDeg, '1')}°`;
}

function savingLines(
  project: Project,
  { basis }: UseCandidate,
  { saving }: BenchRow,
  hasFullPrice: boolean,
): string[] {
  const where =
    basis.kind === 'profile'
      ? `Over the course${project.profile === null ? '' : ` ${project.profile.name}`}`
      : `In ${project.conditions.find(({ id }) => id === basis.conditionId)?.name ?? basis.conditionId}`;
  const told = benchMeasures.filter(({ id }) => hasFullPrice || id !== 'fullPriceW');
  const texts = told.map(({ id, label, unit }) => `${label} ${savingText(id, saving, unit)}`);
  return [`${where} it saves (a minus sign costs): ${texts.join('; ')}.`];
}

function savingText(
  measure: BenchMeasure,
  saving: Readonly<Record<BenchMeasure, Ranged>>,
  unit: 'N' | 'W' | 'N m',
) {
  const { best, low, high } = saving[measure];
  return `${quantityIn(best, unit)} (${rangeIn(low, high, unit)})`;
}

function massText({ mass: { massKg, changeKg, from } }: BenchRow): string {
  const change =
    changeKg === null
      ? 'Change of mass not known and counted as none'
      : `Change of mass ${quantityIn(changeKg, 'kg')}`;
  const own = massKg === null ? '' : `, of a part of ${quantityIn(massKg, 'kg')}`;
  return `${change}${own}: ${from}.`;
}

/** Over the angle, in the condition asked about; of the course, in the one with the most hours. */
function crossingLines(project: Project, { member, candidate, basis }: UseCandidate): string[] {
  const condition = conditionOf(project, basis);
  if (condition === null) return [];
  const { id: conditionId, name, tack } = condition;
  const found = benchCrossings(project, member, candidate, { conditionId, over: 'apparentAngle', tack });
  const texts = found.map(({ text }) => `- ${text}`);
  return texts.length === 0 ? [] : [`Over the apparent wind angle, at the speeds of ${name}:`, ...texts];
}

function conditionOf(project: Project, basis: UseCandidate['basis']): ProjectCondition | null {
  const longest = (project.profile?.entries ?? []).reduce<{ conditionId: string; hours: number } | null>(
    (most, entry) => (most === null || entry.hours > most.hours ? entry : most),
    null,
  );
  const id = basis.kind === 'condition' ? basis.conditionId : longest?.conditionId;
  return project.conditions.find((condition) => condition.id === id) ?? null;
}

function assumptions(candidate: Candidate): string[] {
  const skin =
    candidate.kind === 'fairingRound'
      ? [
          `Assumed: skin ${quantityIn(candidate.skinM, 'mm')} and clearance ${quantityIn(candidate.clearanceM, 'mm')} on each side of the tube.`,
        ]
      : [];
  return [
    ...skin,
    'Sizes doubted as from a drawing. Ribs, bearings, ends, glue and paint are not in the mass.',
  ];
}

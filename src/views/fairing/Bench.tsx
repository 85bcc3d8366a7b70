import { memo, useId, useMemo, type ReactNode } from 'react';
import { compareCandidates } from '../../project/bench/compareCandidates';
import { currencies } from '../../project/bench/benchTypes';
import type { BenchComparison, BenchMember } from '../../project/bench/benchTypes';
import type { Candidate } from '../../project/bench/candidates';
import type { Project } from '../../project/file/schema';
import type { LedgerBasis } from '../../project/ledger/ledgerTypes';
import { changeBench } from '../../state/bench';
import type { Bench as BenchSettings } from '../../state/benchAddress';
import { OneOfWords } from '../../ui/OneOf';
import { chartsTitle, chosenOf, sweepQuestion, workable, type BenchModel } from './benchModel';
import { CandidateEditor } from './CandidateEditor';
import { ComparisonTable } from './ComparisonTable';
import { CoursePart } from './CoursePart';
import { MemberHead } from './MemberHead';
import { Notices, StrutPart } from './StrutPart';
import { AnglePart, SpeedPart } from './SweepPart';
import { ThicknessPart } from './ThicknessPart';
import { TurningPart } from './TurningPart';
import { UsePart } from './UsePart';
import { VibrationPart } from './VibrationPart';
import { useSettled } from './useSettled';

interface BenchProps {
  readonly project: Project;
  readonly bench: BenchSettings;
  readonly member: BenchMember;
  readonly candidates: readonly Candidate[];
  /** The candidates a moment ago, whose numbers are shown. */
  readonly workedOut: readonly Candidate[];
  readonly chosen: Candidate;
  readonly basis: LedgerBasis;
  readonly conditionId: string;
  readonly instead: string | null;
  readonly onShowItem: (planId: string, itemId: string) => void;
}

/** One member, its candidates, and everything that is asked of them. */
export function Bench(props: BenchProps) {
  const { project, bench, member, candidates, workedOut, chosen, basis, conditionId } = props;
  const { good, problems } = useMemo(() => workable(workedOut, member), [workedOut, member]);
  const answer = useMemo(
    () => compareCandidates(project, member, good, basis),
    [project, member, good, basis],
  );
  const comparison = answer.ok ? answer.comparison : null;
  const model = useModel(props, good);
  const settled = useSettled(model);
  const ownProblems = useMemo(
    () => workable([chosen], member).problems.get(chosen.id) ?? [],
    [chosen, member],
  );
  return (
    <div className="bench">
      <MemberHead project={project} member={member} typed={bench.typed} instead={props.instead} />
      <div className="bench-main">
        <div className="bench-compared">
          <ComparisonTable
            candidates={candidates}
            problems={problems}
            chosenId={chosen.id}
            comparison={comparison}
            measure={bench.currency}
          />
          {!answer.ok && <p>{answer.message}</p>}
          <Notices
            notices={comparison?.rows.find(({ candidateId }) => candidateId === chosen.id)?.notices ?? []}
          />
        </div>
        {model !== null && settled !== null && (
          <Charts
            model={model}
            settled={settled}
            currency={bench.currency}
            isOtherTack={bench.isOtherTack}
            comparison={comparison}
          />
        )}
        {settled !== null && <BuildParts tube={bench.tube} turning={bench.turning} model={settled} />}
      </div>
      <div className="bench-aside">
        <div className="bench-side">
          <CandidateEditor
            member={member}
            candidates={candidates}
            chosen={chosen}
            problems={ownProblems}
            currencyName={project.currency}
          />
          <UsePart
            model={{ project, member, candidates, chosen, bare: null, basis, conditionId }}
            hasProblems={ownProblems.length > 0}
            onShowItem={props.onShowItem}
          />
        </div>
        {settled !== null && <ShapeParts tube={bench.tube} wire={bench.wire} model={settled} />}
      </div>
    </div>
  );
}

/** What the parts share, of the candidates that can be worked out; null where none can. */
function useModel(
  { project, bench, member, basis, conditionId }: BenchProps,
  good: readonly Candidate[],
): BenchModel | null {
  return useMemo(() => {
    const chosen = chosenOf(good, bench.chosenId);
    if (chosen === undefined) return null;
    const bare = good.find(({ kind }) => kind === 'bare') ?? null;
    return { project, member, candidates: good, chosen, bare, basis, conditionId };
  }, [project, member, good, bench.chosenId, basis, conditionId]);
}

interface ChartsProps {
  readonly model: BenchModel;
  /** The model once it has come to rest. */
  readonly settled: BenchModel;
  readonly currency: BenchSettings['currency'];
  readonly isOtherTack: boolean;
  readonly comparison: BenchComparison | null;
}

/** What follows a slider at once; drawn anew only when what it shows has changed. */
const Charts = memo(function Charts({ model, settled, currency, isOtherTack, comparison }: ChartsProps) {
  const about = aboutOf(model, isOtherTack);
  return (
    <div className="bench-charts">
      <h3>{chartsTitle}</h3>
      <ChartChoices
        model={model}
        currency={currency}
        isOtherTack={isOtherTack}
        hasFullPrice={comparison?.hasFullPrice === true}
      />
      <AnglePart
        model={model}
        settled={settled}
        currency={currency}
        isOtherTack={isOtherTack}
        about={about}
      />
      <SpeedPart model={settled} currency={currency} isOtherTack={isOtherTack} about={about} />
      <Part title="Over the course">
        <CoursePart rows={comparison?.rows ?? []} currency={currency} />
      </Part>
    </div>
  );
});

interface ChartChoicesProps extends Pick<ChartsProps, 'model' | 'currency' | 'isOtherTack'> {
  readonly hasFullPrice: boolean;
}

function ChartChoices({ model, currency, isOtherTack, hasFullPrice }: ChartChoicesProps) {
  const { tack } = sweepQuestion(model, 'apparentAngle', false);
  const other = tack === 'port' ? 'starboard' : 'port';
  return (
    <div className="bench-choices">
      <OneOfWords
        label="In which currency"
        options={currencies.filter(({ id }) => id !== 'fullPriceW' || hasFullPrice || id === currency)}
        chosenId={currency}
        onChoose={(id) => {
          changeBench({ currency: id });
        }}
      />
      <OneOfWords
        label="Tack"
        options={[
          { id: 'now', label: `${tack} tack, as now` },
          { id: 'other', label: `${other} tack` },
        ]}
        chosenId={isOtherTack ? 'other' : 'now'}
        onChoose={(id) => {
          changeBench({ isOtherTack: id === 'other' });
        }}
      />
      {!hasFullPrice && (
        <p className="fine">No full price: no condition here gives a price for side force or heel.</p>
      )}
    </div>
  );
}

interface PartsProps extends Pick<BenchSettings, 'tube' | 'wire' | 'turning'> {
  readonly model: BenchModel;
}

/** What the chosen candidate weighs, how flat its optimum is, and at which winds it may shake. */
const ShapeParts = memo(function ShapeParts({ tube, wire, model }: Omit<PartsProps, 'turning'>) {
  const about = aboutOf(model, false);
  return (
    <div className="bench-parts">
      <Part title="Thickness ratio">
        <ThicknessPart model={model} about={about} />
      </Part>
      <Part title="Vibration">
        <VibrationPart model={model} tube={tube} wire={wire} about={about} />
      </Part>
    </div>
  );
});

/** Whether it carries and whether it turns. */
const BuildParts = memo(function BuildParts({ tube, turning, model }: Omit<PartsProps, 'wire'>) {
  return (
    <div className="bench-pair bench-builds">
      <Part title="As a strut">
        <StrutPart model={model} tube={tube} />
      </Part>
      <Part title="Turning">
        <TurningPart model={model} turning={turning} />
      </Part>
    </div>
  );
});

/** Member, condition and tack: what a saved picture says under its title. */
function aboutOf(model: BenchModel, isOtherTack: boolean): string {
  const { project, member, conditionId } = model;
  const condition = project.conditions.find(({ id }) => id === conditionId)?.name ?? '';
  const { tack } = sweepQuestion(model, 'apparentAngle', isOtherTack);
  return `${member.fitting.name}, ${condition}, ${tack} tack`;
}

function Part({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const id = useId();
  return (
    <section className="bench-part" aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      {children}
    </section>
  );
}

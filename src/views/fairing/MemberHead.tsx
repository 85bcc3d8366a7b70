import { benchMembers, typedMemberProblems } from '../../project/bench/benchMember';
import type { BenchMember, TypedMember } from '../../project/bench/benchTypes';
import type { Project } from '../../project/file/schema';
import { changeBench, putOnBench } from '../../state/bench';
import { benchRanges, usualTyped } from '../../state/benchAddress';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { QuantityField } from '../../ui/fields/QuantityField';
import { fittingSize } from '../../ui/fittingSize';
import { DegreesField, LengthField } from '../../ui/parts/smallFields';

interface MemberHeadProps {
  readonly project: Project;
  readonly member: BenchMember;
  readonly typed: TypedMember | null;
  /** Why not the one that was asked for; null where it is. */
  readonly instead: string | null;
}

const typedChoice = '';

/** Which member is on the bench. */
export function MemberHead({ project, member, typed, instead }: MemberHeadProps) {
  const { fitting } = member;
  return (
    <header className="bench-head">
      <h2 className="bench-title">Fairing bench</h2>
      <label className="one-of-line bench-member">
        <span className="muted">member</span>
        <select
          value={typed === null ? fitting.id : typedChoice}
          onChange={({ target: { value } }) => {
            if (value === typedChoice) putOnBench({ memberId: null, typed: usualTyped });
            else putOnBench({ memberId: value, typed: null });
          }}
        >
          {benchMembers(project).map((each) => (
            <option key={each.fitting.id} value={each.fitting.id}>
              {project.fittings.indexOf(each.fitting) + 1} {each.fitting.name}
            </option>
          ))}
          <option value={typedChoice}>another one, typed here</option>
        </select>
      </label>
      <p className="muted">
        {fittingSize(fitting, project.boat)}
        {fitting.flags.structural ? '; structural' : ''}
        {fitting.flags.safetyRequired ? '; safety-required: no watt is worth a life' : ''}
      </p>
      {instead !== null && <p>{instead}</p>}
      {typed !== null && <TypedFields typed={typed} />}
    </header>
  );
}

const endChoices: readonly Choice<TypedMember['ends'][number]>[] = [
  { value: 'free', label: 'free' },
  { value: 'surface', label: 'on a large surface' },
  { value: 'joined', label: 'joined' },
];

function rangeOf([fromSi, toSi]: readonly [number, number]) {
  return { fromSi, toSi };
}

/** A round bar on the centreline amidships that no ledger holds. */
function TypedFields({ typed }: { readonly typed: TypedMember }) {
  const problems = typedMemberProblems(typed);
  const errorAt = (field: keyof TypedMember) => problems.find((problem) => problem.field === field)?.message;
  const change = (next: Partial<TypedMember>): void => {
    changeBench({ typed: { ...typed, ...next } });
  };
  return (
    <div className="bench-typed">
      <QuantityField
        label="Diameter"
        dimension="length"
        unit="mm"
        range={rangeOf(benchRanges.diameterM)}
        valueSi={typed.diameterM}
        error={errorAt('diameterM')}
        onCommit={(diameterM) => {
          change({ diameterM });
        }}
      />
      <LengthField
        label="Length"
        range={rangeOf(benchRanges.lengthM)}
        valueM={typed.lengthM}
        error={errorAt('lengthM')}
        onCommit={(lengthM) => {
          change({ lengthM });
        }}
      />
      <LengthField
        label="Foot above deck"
        range={rangeOf(benchRanges.footAboveDeckM)}
        valueM={typed.footAboveDeckM}
        error={errorAt('footAboveDeckM')}
        onCommit={(footAboveDeckM) => {
          change({ footAboveDeckM });
        }}
      />
      <DegreesField
        label="Lean aft"
        valueDeg={typed.leanAftDeg}
        error={errorAt('leanAftDeg')}
        mostDeg={180}
        onCommit={(leanAftDeg) => {
          change({ leanAftDeg });
        }}
      />
      <DegreesField
        label="Lean out"
        valueDeg={typed.leanOutDeg}
        error={errorAt('leanOutDeg')}
        mostDeg={180}
        onCommit={(leanOutDeg) => {
          change({ leanOutDeg });
        }}
      />
      <ChoiceField
        label="Lower end"
        choices={endChoices}
        value={typed.ends[0]}
        onCommit={(end) => {
          change({ ends: [end, typed.ends[1]] });
        }}
      />
      <ChoiceField
        label="Upper end"
        choices={endChoices}
        value={typed.ends[1]}
        onCommit={(end) => {
          change({ ends: [typed.ends[0], end] });
        }}
      />
    </div>
  );
}

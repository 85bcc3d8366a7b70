import { setDutyInCondition } from '../../project/edit/fittingEdits';
import type { Project } from '../../project/file/schema';
import { QuantityField } from '../../ui/fields/QuantityField';
import { DutyFields } from '../../ui/parts/DutyFields';
import { partOf } from '../../ui/parts/partFields';
import { placeOf } from '../../ui/parts/placeOf';
import { StowedFields } from '../../ui/parts/StowedFields';
import { Section } from '../../ui/Section';
import type { RowEdit } from './useRowEdit';

const massRange = { fromSi: 0, toSi: 1_000_000 };

/** When it stands in the wind, what is left of it otherwise, and what it weighs. */
export function UseSection({ row, project }: { readonly row: RowEdit; readonly project: Project }) {
  const { id, dutyFraction, massKg, stowed } = row.fitting;
  return (
    <Section head="Use and mass">
      <DutyFields
        {...partOf(row, 'duty', dutyFraction, (next) => ({ dutyFraction: next }))}
        label="In use, share of the time"
        conditions={project.conditions}
        onShare={(condition, fraction) => {
          row.run(`duty.${condition.id}`, `share of the time in ${condition.name}`, (before) =>
            setDutyInCondition(before, id, condition.id, fraction),
          );
        }}
      />
      <StowedFields
        {...partOf(row, 'stowed', stowed, (next) => ({ stowed: next }))}
        startPlace={placeOf(project, row.fitting)}
      />
      <QuantityField
        label="Mass"
        required={false}
        dimension="mass"
        unit="kg"
        range={massRange}
        valueSi={massKg}
        onCommit={(next) => {
          row.patch('massKg', 'mass', { massKg: next });
        }}
        {...row.at('massKg')}
      />
    </Section>
  );
}

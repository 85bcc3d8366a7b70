import { setDutyInCondition } from '../../project/edit/fittingEdits';
import type { Project, ProjectStowed } from '../../project/file/schema';
import { formatQuantity } from '../../units/print';
import { CheckField } from '../../ui/fields/CheckField';
import { NumberField } from '../../ui/fields/NumberField';
import { QuantityField } from '../../ui/fields/QuantityField';
import { RangedField } from '../../ui/fields/RangedField';
import { TextField } from '../../ui/fields/TextField';
import { dragAreaRange } from './AreaFields';
import { Section } from './Section';
import { PointField } from './smallFields';
import type { RowEdit } from './useRowEdit';

const shareRange = { fromSi: 0, toSi: 1 };
const massRange = { fromSi: 0, toSi: 1_000_000 };

/** When it stands in the wind, what is left of it otherwise, and what it weighs. */
export function UseSection({ row, project }: { readonly row: RowEdit; readonly project: Project }) {
  const { id, dutyFraction, massKg, stowed } = row.fitting;
  return (
    <Section head="Use and mass">
      <NumberField
        label="In use, share of the time"
        isPercent
        range={shareRange}
        valueSi={dutyFraction.default}
        onCommit={(share) => {
          row.patch('duty', 'share of the time', { dutyFraction: { default: share } });
        }}
        {...row.at('duty')}
      />
      {project.conditions.map((condition) => (
        <NumberField
          key={condition.id}
          label={`In ${condition.name}`}
          required={false}
          isPercent
          range={shareRange}
          valueSi={
            dutyFraction.byCondition.find((each) => each.conditionId === condition.id)?.fraction ?? null
          }
          onCommit={(share) => {
            row.run(`duty.${condition.id}`, `share of the time in ${condition.name}`, (before) =>
              setDutyInCondition(before, id, condition.id, share),
            );
          }}
          {...row.at(`duty.${condition.id}`)}
        />
      ))}
      {project.conditions.length > 0 && (
        <p className="fine">Empty takes the share above, {formatQuantity(dutyFraction.default, '%')}.</p>
      )}
      <StowedFields row={row} stowed={stowed} />
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

/** Nothing known yet but that something is left: on the deck amidships, to be typed. */
const startStowed: ProjectStowed = {
  dragAreaM2: { best: 0, low: 0, high: 0 },
  place: { xM: 0, yM: 0, zM: 1 },
  source: '',
};

function StowedFields({ row, stowed }: { readonly row: RowEdit; readonly stowed: ProjectStowed | null }) {
  return (
    <>
      <CheckField
        label="Stowed, something of it is left"
        value={stowed !== null}
        onCommit={(isLeft) => {
          row.patch('stowed', 'stowed state', { stowed: isLeft ? startStowed : null });
        }}
        {...row.at('stowed')}
      />
      {stowed !== null && (
        <div className="edit-part">
          <RangedField
            label="Drag area when stowed"
            dimension="area"
            unit="m2"
            range={dragAreaRange}
            value={stowed.dragAreaM2}
            onCommit={(dragAreaM2) => {
              row.patch('stowed.dragAreaM2', 'stowed drag area', { stowed: { ...stowed, dragAreaM2 } });
            }}
            {...row.at('stowed.dragAreaM2')}
          />
          <PointField
            label="Place when stowed"
            value={stowed.place}
            onCommit={(place) => {
              row.patch('stowed.place', 'stowed place', { stowed: { ...stowed, place } });
            }}
            {...row.at('stowed.place')}
          />
          <TextField
            label="Source"
            kind="source"
            value={stowed.source}
            onCommit={(source) => {
              row.patch('stowed.source', 'source of the stowed state', { stowed: { ...stowed, source } });
            }}
            {...row.at('stowed.source')}
          />
        </div>
      )}
    </>
  );
}

import type { ProjectShape } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { AreaFields } from './AreaFields';
import { BarFields } from './BarFields';
import { BodyFields } from './BodyFields';
import type { PartFields } from './partFields';

const kindChoices: readonly Choice<ProjectShape['kind']>[] = [
  { value: 'roundBar', label: 'round bar' },
  { value: 'bluffBody', label: 'body with edges' },
  { value: 'measuredArea', label: 'measured area' },
];

interface ShapeFieldsProps extends PartFields<ProjectShape> {
  readonly label: string;
  readonly onKind: (kind: ProjectShape['kind']) => void;
}

/** What a fitting is, and its sizes. */
export function ShapeFields({ value, at, onChange, label, onKind }: ShapeFieldsProps) {
  return (
    <>
      <ChoiceField label={label} choices={kindChoices} value={value.kind} onCommit={onKind} {...at('')} />
      {value.kind === 'roundBar' && <BarFields value={value} at={at} onChange={onChange} />}
      {value.kind === 'bluffBody' && <BodyFields value={value} at={at} onChange={onChange} />}
      {value.kind === 'measuredArea' && <AreaFields value={value} at={at} onChange={onChange} />}
    </>
  );
}

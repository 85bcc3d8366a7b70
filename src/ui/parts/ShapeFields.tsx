import type { ProjectShape } from '../../project/file/schema';
import { shapeNames } from '../../project/wording/shapeNames';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { AreaFields } from './AreaFields';
import { BarFields } from './BarFields';
import { BodyFields } from './BodyFields';
import { NetFields } from './NetFields';
import type { PartFields } from './partFields';
import { SectionFields } from './SectionFields';
import { SphereFields } from './SphereFields';
import { WireFields } from './WireFields';

const kindChoices = Object.entries(shapeNames).map(([value, label]) => ({
  value,
  label,
})) as readonly Choice<ProjectShape['kind']>[];

interface ShapeFieldsProps extends PartFields<ProjectShape> {
  readonly label: string;
  readonly onKind: (kind: ProjectShape['kind']) => void;
}

/** What a fitting is, and its sizes. */
export function ShapeFields({ label, onKind, ...part }: ShapeFieldsProps) {
  return (
    <>
      <ChoiceField
        label={label}
        choices={kindChoices}
        value={part.value.kind}
        onCommit={onKind}
        {...part.at('')}
      />
      <FieldsOfKind {...part} />
    </>
  );
}

function FieldsOfKind({ value, ...rest }: PartFields<ProjectShape>) {
  switch (value.kind) {
    case 'roundBar':
      return <BarFields value={value} {...rest} />;
    case 'wire':
      return <WireFields value={value} {...rest} />;
    case 'ellipticalBar':
    case 'rectangularBar':
    case 'fairing':
      return <SectionFields value={value} {...rest} />;
    case 'sphere':
      return <SphereFields value={value} {...rest} />;
    case 'net':
      return <NetFields value={value} {...rest} />;
    case 'bluffBody':
      return <BodyFields value={value} {...rest} />;
    case 'measuredArea':
      return <AreaFields value={value} {...rest} />;
  }
}

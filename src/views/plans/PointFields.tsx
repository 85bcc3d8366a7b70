import type { ProjectPoint } from '../../project/file/schema';
import { QuantityField } from '../../ui/fields/QuantityField';
import type { ItemEditor } from './usePlanEdits';

/** What the file takes as a place, m. */
export const placeRange = { fromSi: -300, toSi: 300 };

const axes = [
  { axis: 'xM', label: 'forward' },
  { axis: 'yM', label: 'to port' },
  { axis: 'zM', label: 'up' },
] as const;

interface PointFieldsProps {
  readonly label: string;
  /** The property that holds the point, such as "massPlace". */
  readonly part: string;
  readonly value: ProjectPoint;
  readonly editor: ItemEditor;
  readonly onCommit: (value: ProjectPoint) => void;
}

/** A place in the boat's frame: from amidships in the waterplane. */
export function PointFields({ label, part, value, editor, onCommit }: PointFieldsProps) {
  return (
    <fieldset className="plans-three">
      <legend>{label}</legend>
      {axes.map(({ axis, label: axisLabel }) => (
        <QuantityField
          key={`${editor.key}.${part}.${axis}`}
          label={axisLabel}
          dimension="length"
          unit="m"
          range={placeRange}
          valueSi={value[axis]}
          error={editor.errorAt(`${part}.${axis}`)}
          onCommit={(valueM) => {
            onCommit({ ...value, [axis]: valueM });
          }}
          onDone={editor.done}
        />
      ))}
    </fieldset>
  );
}

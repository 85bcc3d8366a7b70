import type { ProjectZone } from '../../project/file/schema';
import { isQuickBar } from '../../project/survey/quickShapes';
import { chooseQuick, useQuickAdding } from '../../state/quickAdd';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { basisChoices, lieChoices, shapeChoices, sideChoices } from './quickFields';

export function ShapeChoice() {
  const shape = useQuickAdding((state) => state.choices.shape);
  return (
    <ChoiceField
      label="Shape"
      value={shape}
      choices={shapeChoices}
      onCommit={(next) => {
        chooseQuick({ shape: next });
      }}
    />
  );
}

/** How a bar lies, and how the sizes were obtained. */
export function SizeChoices() {
  const { shape, lie, basis } = useQuickAdding((state) => state.choices);
  return (
    <>
      {isQuickBar(shape) && (
        <ChoiceField
          label="It stands or lies"
          value={lie}
          choices={lieChoices}
          onCommit={(next) => {
            chooseQuick({ lie: next });
          }}
        />
      )}
      <ChoiceField
        label="Sizes are"
        value={basis}
        choices={basisChoices}
        onCommit={(next) => {
          chooseQuick({ basis: next });
        }}
      />
    </>
  );
}

interface PlaceChoicesProps {
  readonly zones: readonly ProjectZone[];
  /** The zone that it goes to; undefined where the project has none yet. */
  readonly zone: ProjectZone | undefined;
}

export function PlaceChoices({ zones, zone }: PlaceChoicesProps) {
  const side = useQuickAdding((state) => state.choices.side);
  return (
    <>
      {zone !== undefined && (
        <ChoiceField
          label="Zone"
          value={zone.id}
          choices={zones.map(({ id, name }) => ({ value: id, label: name }))}
          onCommit={(zoneId) => {
            chooseQuick({ zoneId });
          }}
        />
      )}
      <ChoiceField
        label="On the"
        value={side}
        choices={sideChoices}
        onCommit={(next) => {
          chooseQuick({ side: next });
        }}
      />
    </>
  );
}

import { patchMethods } from '../../project/edit/projectEdits';
import type { ProjectMethods } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { namedMethods, type NamedPart } from './methodChoices';

interface NamedMethodFieldProps {
  readonly label: string;
  readonly part: NamedPart;
  readonly methods: ProjectMethods;
}

/** One method of several that have no numbers of their own. */
export function NamedMethodField({ label, part, methods }: NamedMethodFieldProps) {
  return (
    <ChoiceField<ProjectMethods[NamedPart]>
      label={label}
      value={methods[part]}
      choices={namedMethods[part]}
      onCommit={(next) => {
        const store = useAppStore.getState();
        store.edit(`Change the ${label.toLowerCase()}`, (project) => patchMethods(project, { [part]: next }));
        store.endGroup();
      }}
    />
  );
}

import type { EndMethod } from '../../physics/section/endEffect';
import { patchMethods } from '../../project/edit/projectEdits';
import { useAppStore } from '../../state/appStore';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';

const choices: readonly Choice<EndMethod>[] = [
  { value: 'dnv', label: 'DNV-RP-C205' },
  { value: 'en', label: 'EN 1991-1-4' },
];

/** How much a bar of finite length is relieved at its ends. */
export function EndFields({ ends }: { readonly ends: EndMethod }) {
  return (
    <ChoiceField
      label="End effect"
      value={ends}
      choices={choices}
      onCommit={(next) => {
        const store = useAppStore.getState();
        store.edit('Change the end effect', (project) => patchMethods(project, { ends: next }));
        store.endGroup();
      }}
    />
  );
}

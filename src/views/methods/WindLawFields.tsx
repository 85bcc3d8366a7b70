import { openSeaLogLaw, openSeaPowerLaw } from '../../physics/wind/windProfile';
import { patchMethods } from '../../project/edit/projectEdits';
import type { ProjectMethods } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { NumberField } from '../../ui/fields/NumberField';

type WindLaw = ProjectMethods['windLaw'];

const kinds: readonly Choice<WindLaw['kind']>[] = [
  { value: 'log', label: 'log law' },
  { value: 'power', label: 'power law' },
  { value: 'uniform', label: 'uniform' },
];

/** Each kind as it starts, before anybody types a number. */
const starts: Readonly<Record<WindLaw['kind'], WindLaw>> = {
  log: openSeaLogLaw,
  power: openSeaPowerLaw,
  uniform: { kind: 'uniform' },
};

/** How the wind grows with height. */
export function WindLawFields({ windLaw }: { readonly windLaw: WindLaw }) {
  return (
    <>
      <ChoiceField
        key="methods.windLaw.kind"
        label="Wind law"
        value={windLaw.kind}
        choices={kinds}
        onDone={endGroup}
        onCommit={(kind) => {
          setLaw(starts[kind], 'methods.windLaw.kind');
        }}
      />
      {windLaw.kind === 'log' && (
        <NumberField
          key="methods.windLaw.charnock"
          typedFor="methods/windLaw.charnock"
          label="Charnock's constant"
          describe="Roughness of the sea: 0.011 over the open sea; Wu 1980 has 0.0185."
          range={{ fromSi: 0.005, toSi: 0.03 }}
          valueSi={windLaw.charnock}
          onDone={endGroup}
          onCommit={(charnock) => {
            setLaw({ kind: 'log', charnock }, 'methods.windLaw.charnock');
          }}
        />
      )}
      {windLaw.kind === 'power' && (
        <NumberField
          key="methods.windLaw.exponent"
          typedFor="methods/windLaw.exponent"
          label="Exponent"
          range={{ fromSi: 0, toSi: 0.5 }}
          valueSi={windLaw.exponent}
          onDone={endGroup}
          onCommit={(exponent) => {
            setLaw({ kind: 'power', exponent }, 'methods.windLaw.exponent');
          }}
        />
      )}
    </>
  );
}

function setLaw(windLaw: WindLaw, group: string): void {
  useAppStore
    .getState()
    .edit('Change the wind law', (project) => patchMethods(project, { windLaw }), { group });
}

function endGroup(): void {
  useAppStore.getState().endGroup();
}

import { deleteProfile, removeFromProfile, renameProfile, setHours } from '../../project/edit/profileEdits';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { inUnit } from '../../ui/fields/fieldText';
import { QuantityField } from '../../ui/fields/QuantityField';
import { TextField } from '../../ui/fields/TextField';
import { toSi } from '../../units/convert';
import { formatQuantity } from '../../units/print';
import { fieldId } from './fieldId';
import { profileRows, type ProfileRow } from './profileRows';
import { Section } from '../../ui/Section';
import type { FormEdit } from '../../ui/useFormEdit';

const hoursRange = { fromSi: 0, toSi: toSi(1_000_000, 'h') };

interface ProfileEditorProps {
  readonly project: Project;
  readonly form: FormEdit;
  /** A button took away itself and what it was about. */
  readonly onGone: () => void;
}

/** The course: how long she sails in each condition. */
export function ProfileEditor({ project, form, onGone }: ProfileEditorProps) {
  const { profile } = project;
  return (
    <Section head="Course profile">
      {profile === null ? (
        <p className="fine">
          A course is made of conditions and the hours sailed in each. Type the hours of one and the course
          stands in the list of conditions; its ledger is the mean of theirs, weighted with the hours.
        </p>
      ) : (
        <div className="condition-name">
          <TextField
            key="profile.name"
            id={fieldId('profile.name')}
            kind="name"
            label="Name of the course"
            value={profile.name}
            {...form.at('profile.name')}
            onCommit={(name) => {
              form.run('profile.name', 'Rename the course', (current) => renameProfile(current, name));
            }}
          />
        </div>
      )}
      {profileRows(project).map((row) => (
        <HoursLine key={row.conditionId} row={row} form={form} />
      ))}
      {profile !== null && <ProfileActions form={form} onGone={onGone} />}
    </Section>
  );
}

function HoursLine({ row, form }: { readonly row: ProfileRow; readonly form: FormEdit }) {
  const { conditionId, name, hours, share } = row;
  const field = `profile.${conditionId}`;
  const commit = (valueSi: number | null): void => {
    form.run(field, `Change the hours of ${name}`, (project) =>
      valueSi === null
        ? removeFromProfile(project, conditionId)
        : setHours(project, conditionId, inUnit(valueSi, 'h')),
    );
  };
  return (
    <div className="profile-line">
      <QuantityField
        id={fieldId(field)}
        label={name}
        dimension="duration"
        unit="h"
        range={hoursRange}
        required={false}
        valueSi={hours === null ? null : toSi(hours, 'h')}
        {...form.at(field)}
        onCommit={commit}
      />
      <span className="profile-share muted">{share === null ? '' : formatQuantity(share, '%')}</span>
      <button
        type="button"
        className="profile-out"
        aria-label={`Take ${name} out of the course`}
        disabled={hours === null}
        onClick={() => {
          commit(null);
          useAppStore.getState().endGroup();
          // The button goes with the hours.
          document.getElementById(fieldId(field))?.focus();
        }}
      >
        ×
      </button>
    </div>
  );
}

function ProfileActions({ form, onGone }: Omit<ProfileEditorProps, 'project'>) {
  const basis = useAppStore((state) => state.question.basis);
  return (
    <div className="condition-actions">
      {basis.kind !== 'profile' && (
        <button
          type="button"
          className="plain-action"
          onClick={() => {
            useAppStore.getState().chooseBasis({ kind: 'profile' });
            onGone();
          }}
        >
          Show the course in the ledger
        </button>
      )}
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          form.act('profile', 'Delete the course', deleteProfile);
          onGone();
        }}
      >
        Delete the course
      </button>
    </div>
  );
}

import { useDeferredValue } from 'react';
import { patchMethods } from '../../project/edit/projectEdits';
import { defaultMethods } from '../../project/file/blankParts';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { EndFields } from './EndFields';
import { MethodTable } from './MethodTable';
import { WindLawFields } from './WindLawFields';
import { isSameLaw, type MethodPart } from './methodChoices';
import { methodEffects, type MethodEffect } from './methodEffects';
import './methods.css';

/** The methods of calculation: default or changed, where each comes from, and what it does to the total. */
export function MethodsPane() {
  const project = useAppStore((state) => state.project);
  return project === null ? null : <Methods project={project} />;
}

function Methods({ project }: { readonly project: Project }) {
  const question = useAppStore((state) => state.question);
  // Several ledgers are asked for: the field that is typed in goes first.
  const effects = methodEffects(useDeferredValue(project), useDeferredValue(question));
  const { windLaw, ends } = project.methods;
  const isLawDefault = isSameLaw(windLaw, defaultMethods.windLaw);
  const areEndsDefault = ends === defaultMethods.ends;
  return (
    <div className="methods">
      <h2 className="methods-title">Methods</h2>
      <section className="methods-section" aria-labelledby="methods-wind">
        <MethodHead id="methods-wind" name="Wind over the sea" part="windLaw" isDefault={isLawDefault} />
        <WindLawFields windLaw={windLaw} />
        <Effects name="Wind laws" effects={effects?.windLaw} />
      </section>
      <section className="methods-section" aria-labelledby="methods-ends">
        <MethodHead id="methods-ends" name="End effect of bars" part="ends" isDefault={areEndsDefault} />
        <EndFields ends={ends} />
        <Effects name="End effects" effects={effects?.ends} />
      </section>
    </div>
  );
}

interface MethodHeadProps {
  readonly id: string;
  readonly name: string;
  readonly part: MethodPart;
  readonly isDefault: boolean;
}

function MethodHead({ id, name, part, isDefault }: MethodHeadProps) {
  return (
    <div className="methods-head">
      <h3 id={id}>{name}</h3>
      <span className={isDefault ? 'muted' : 'methods-changed'}>{isDefault ? 'default' : 'changed'}</span>
      {!isDefault && (
        <button
          type="button"
          className="plain-action"
          aria-label={`Back to default: ${name}`}
          onClick={() => {
            const store = useAppStore.getState();
            store.edit(`Set ${name} back to default`, (project) =>
              patchMethods(project, { [part]: defaultMethods[part] }),
            );
            store.endGroup();
          }}
        >
          Back to default
        </button>
      )}
    </div>
  );
}

interface EffectsProps {
  readonly name: string;
  readonly effects: readonly MethodEffect[] | undefined;
}

function Effects({ name, effects }: EffectsProps) {
  return effects === undefined ? null : <MethodTable name={name} effects={effects} />;
}

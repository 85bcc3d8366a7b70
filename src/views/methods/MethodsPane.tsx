import { useDeferredValue } from 'react';
import { patchMethods } from '../../project/edit/projectEdits';
import { defaultMethods } from '../../project/file/blankParts';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { MethodTable } from './MethodTable';
import { NamedMethodField } from './NamedMethodField';
import { WindLawFields } from './WindLawFields';
import { isSameLaw, type MethodPart, type NamedPart } from './methodChoices';
import { methodEffects, type MethodEffect } from './methodEffects';
import './methods.css';

/** The methods of calculation: default or changed, where each comes from, and what it does to the total. */
export function MethodsPane() {
  const project = useAppStore((state) => state.project);
  return project === null ? null : <Methods project={project} />;
}

interface NamedPartWords {
  readonly part: NamedPart;
  readonly name: string;
  readonly label: string;
  readonly effectsName: string;
  /** What the methods differ about. */
  readonly why: string;
}

const namedParts: readonly NamedPartWords[] = [
  {
    part: 'ends',
    name: 'End effect of bars',
    label: 'End effect',
    effectsName: 'End effects',
    why: 'How much a bar of finite length is relieved at its ends.',
  },
  {
    part: 'inclined',
    name: 'Inclined members',
    label: 'Force on an inclined member',
    effectsName: 'Inclined members',
    why: 'The force across a leaning member falls with the square of the sine of the angle between wind and axis, or with the sine, which is the larger number.',
  },
  {
    part: 'fairing',
    name: 'Layer on fairings',
    label: 'Boundary layer on fairings',
    effectsName: 'Fairings',
    why: 'Salt, ribs, tape and the turbulent air over a deck trip the layer; a clean section in steady air stays laminar for a while. Without a fairing in the project nothing moves.',
  },
];

function Methods({ project }: { readonly project: Project }) {
  const question = useAppStore((state) => state.question);
  // Several ledgers are asked for: the field that is typed in goes first.
  const effects = methodEffects(useDeferredValue(project), useDeferredValue(question));
  const { methods } = project;
  const { windLaw } = methods;
  const isLawDefault = isSameLaw(windLaw, defaultMethods.windLaw);
  return (
    <div className="methods">
      <h2 className="methods-title">Methods</h2>
      <section className="methods-section" aria-labelledby="methods-wind">
        <MethodHead id="methods-wind" name="Wind over the sea" part="windLaw" isDefault={isLawDefault} />
        <WindLawFields windLaw={windLaw} />
        <Effects name="Wind laws" effects={effects?.windLaw} />
      </section>
      {namedParts.map(({ part, name, label, effectsName, why }) => (
        <section key={part} className="methods-section" aria-labelledby={`methods-${part}`}>
          <MethodHead
            id={`methods-${part}`}
            name={name}
            part={part}
            isDefault={methods[part] === defaultMethods[part]}
          />
          <p className="fine">{why}</p>
          <NamedMethodField label={label} part={part} methods={methods} />
          <Effects name={effectsName} effects={effects?.[part]} />
        </section>
      ))}
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

import type { Project } from '../../project/file/schema';
import { quickPlaceText, quickZone } from '../../project/survey/addQuickEntry';
import type { QuickField, QuickLie } from '../../project/survey/quickEntry';
import { isQuickBar, quickSizesOf, type QuickShape } from '../../project/survey/quickShapes';
import { useAppStore } from '../../state/appStore';
import { useQuickAdding } from '../../state/quickAdd';
import { AddedList } from './AddedList';
import { PlaceChoices, ShapeChoice, SizeChoices } from './Choices';
import { TypedField } from './TypedField';
import { useQuickForm } from './useQuickForm';
import './quickAdd.css';

/** One fitting after another, by one thumb on a dock: name, shape, sizes, count, zone, height. */
export function QuickAdd() {
  const project = useAppStore((state) => state.project);
  if (project === null) return <p className="muted">Opening the project.</p>;
  return <QuickForm project={project} />;
}

function QuickForm({ project }: { readonly project: Project }) {
  const { shape, lie, side, zoneId } = useQuickAdding((state) => state.choices);
  const { reading, errors, count, said, entryNumber, idOf, add, goOn, say } = useQuickForm();
  const zone = quickZone(project, zoneId);
  const typed = (field: QuickField, describe?: string) => (
    <TypedField
      key={`${field} ${entryNumber}`}
      field={field}
      id={idOf(field)}
      error={errors[field]}
      isAsked={said.isAsked}
      isLast={reading.ok}
      describe={describe}
    />
  );
  return (
    <section className="quick-add" aria-label="Quick add">
      <h2>Quick add</h2>
      <AddedList project={project} onTakenBack={say} />
      <p className="quick-said" role="status" aria-label="Quick add says">
        {said.line}
      </p>
      <form className="quick-form" onSubmit={add} onKeyDown={goOn} noValidate>
        {typed('name')}
        <ShapeChoice />
        {quickSizesOf(shape).map((size) => typed(size))}
        {isQuickBar(shape) && typed('length')}
        <SizeChoices />
        <PlaceChoices zones={project.zones} zone={zone} />
        {typed('count', side === 'both' ? 'On each side. Empty is 1.' : 'Empty is 1.')}
        {typed('height', heightWords(shape, lie))}
        <p className="fine">{quickPlaceText(project, zone, count)}</p>
        {said.problem !== '' && <p role="alert">Not added: {said.problem}.</p>}
        <button type="submit" className="plain-action quick-submit">
          Add
        </button>
      </form>
    </section>
  );
}

function heightWords(shape: QuickShape, lie: QuickLie): string {
  const stands = isQuickBar(shape) ? lie === 'upright' : shape === 'box';
  const where = stands ? 'Of its foot' : shape === 'ball' ? 'Of its middle' : 'Of the bar';
  return `${where}. Empty: it stands on the deck, at the masthead on the mast’s top.`;
}

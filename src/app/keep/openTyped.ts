import { useAppStore } from '../../state/appStore';
import { ownerOf, wantField, type Owner } from '../../state/typedTexts';
import { goTo } from '../place';
import { bringUp } from '../swap';

/** Goes to the field that a half-typed text was typed for. */
export function openTyped(path: string): void {
  const { project } = useAppStore.getState();
  const owner = project === null ? null : ownerOf(project, path);
  if (owner === null) return;
  if (owner.kind === 'quick' || owner.kind === 'survey') {
    goTo('survey');
  } else if (owner.kind === 'bench') {
    goTo('fairing');
  } else {
    goTo('ledger');
    showOwner(owner);
    bringUp('side');
  }
  // The table of a survey has many cells and stands open, and the bench shows one candidate: there is no one field to go to.
  if (owner.kind !== 'survey' && owner.kind !== 'bench') wantField(path);
}

function showOwner(owner: Exclude<Owner, { kind: 'quick' | 'survey' | 'bench' }>): void {
  const store = useAppStore.getState();
  switch (owner.kind) {
    case 'fitting':
      store.select(owner.id);
      store.showPane('edit');
      return;
    case 'zone':
      store.select(store.project?.fittings.find(({ zoneId }) => zoneId === owner.id)?.id ?? null);
      store.showPane('edit');
      return;
    case 'condition':
      store.chooseBasis({ kind: 'condition', conditionId: owner.id });
      store.showPane('condition');
      return;
    case 'course':
      store.showPane('condition');
      return;
    case 'plan':
      store.choosePlan(owner.id);
      store.showPane('plan');
      return;
    case 'item':
      store.choosePlan(owner.planId);
      store.showPane('plan');
      return;
    case 'methods':
      store.showPane('methods');
  }
}

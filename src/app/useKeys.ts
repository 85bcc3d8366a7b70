import { useEffect } from 'react';
import type { Project } from '../project/file/schema';
import type { LedgerBasis } from '../project/ledger/ledgerTypes';
import { useAppStore } from '../state/appStore';
import { say } from './announce';
import { askForFile } from './FileChoice';
import { openDialog } from './dialogs/shell';
import { saveToFile } from './keep/saveToFile';
import { sidePanes } from './lazyPanes';
import { goTo } from './place';
import { goAcross, goToLedger, goToPane } from './swap';

/** The keys of the whole page. A view takes its own keys first and stops them there. */
export function useKeys(): void {
  useEffect(() => {
    window.addEventListener('keydown', onKeyDown);
    return () => {
      window.removeEventListener('keydown', onKeyDown);
    };
  }, []);
}

function onKeyDown(event: KeyboardEvent): void {
  if (event.defaultPrevented || event.isComposing) return;
  // A dialog is a place of its own; its fields know the keys of fields.
  if (document.querySelector('dialog[open]') !== null) return;
  if (actionOf(event)?.() !== undefined) event.preventDefault();
}

/** True says that the key was used; nothing leaves it to the browser. */
type Action = () => true | undefined;

function actionOf(event: KeyboardEvent): Action | undefined {
  const key = event.key.toLowerCase();
  if (event.altKey && (event.ctrlKey || event.metaKey)) return undefined;
  if (event.ctrlKey || event.metaKey) return commandOf(key, event);
  if (event.altKey) return undefined;
  // The one key that is the same in a field, because Tab would take too long out of it.
  if (key === 'f6') return done(goAcross);
  if (takesLetters(event.target)) return undefined;
  return letterOf(key);
}

function commandOf(key: string, { shiftKey, target }: KeyboardEvent): Action | undefined {
  const store = useAppStore.getState();
  switch (key) {
    case 'z':
      return hasOwnUndo(target)
        ? undefined
        : done(() => {
            if (shiftKey) store.redo();
            else store.undo();
          });
    case 'y':
      return hasOwnUndo(target)
        ? undefined
        : done(() => {
            store.redo();
          });
    case 's':
      return done(saveToFile);
    case 'o':
      return done(askForFile);
    default:
      return undefined;
  }
}

function letterOf(key: string): Action | undefined {
  const pane = sidePanes[Number(key) - 1];
  if (pane !== undefined) {
    return done(() => {
      goTo('ledger');
      useAppStore.getState().showPane(pane.id);
      say(`Pane: ${pane.label}`);
    });
  }
  switch (key) {
    case '[':
      return done(() => {
        stepCondition(-1);
      });
    case ']':
      return done(() => {
        stepCondition(1);
      });
    case 'p':
      return done(nextPlan);
    case 'v':
      return done(swapPicture);
    case 'l':
      return done(goToLedger);
    case 'b':
      return done(goToPane);
    case '?':
      return done(() => {
        openDialog('keys');
      });
    default:
      return undefined;
  }
}

/** Working and picture answer each other: one key changes over. */
function swapPicture(): void {
  const store = useAppStore.getState();
  const next = sidePanes.find(({ id }) => id === (store.sidePane === 'picture' ? 'working' : 'picture'));
  if (next === undefined) return;
  goTo('ledger');
  store.showPane(next.id);
  say(`Pane: ${next.label}`);
}

function done(act: () => void): Action {
  return () => {
    act();
    return true;
  };
}

/** Fields into which letters are typed or that search by them. */
function takesLetters(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement)
    return !['radio', 'checkbox', 'button', 'file'].includes(target.type);
  return target.isContentEditable || ['TEXTAREA', 'SELECT'].includes(target.tagName);
}

/** What is typed in a field of the project is an edit of the project; any other text is the browser's to undo. */
function hasOwnUndo(target: EventTarget | null): boolean {
  return takesLetters(target) && target instanceof Element && !target.classList.contains('field-input');
}

function stepCondition(by: 1 | -1): void {
  const store = useAppStore.getState();
  const { project, question } = store;
  if (project === null) return;
  const bases = basesOf(project);
  const index = bases.findIndex((basis) => isSame(basis, question.basis));
  const next = bases[(index + by + bases.length) % bases.length];
  if (next === undefined || isSame(next, question.basis)) return;
  store.chooseBasis(next);
  say(basisText(project, next));
}

function basisText({ conditions, profile }: Project, basis: LedgerBasis): string {
  if (basis.kind === 'profile') return `Course profile: ${profile?.name ?? ''}`;
  return `Condition: ${conditions.find(({ id }) => id === basis.conditionId)?.name ?? ''}`;
}

function basesOf({ conditions, profile }: Project): readonly LedgerBasis[] {
  const each = conditions.map(({ id }) => ({ kind: 'condition', conditionId: id }) as const);
  return profile === null ? each : [...each, { kind: 'profile' }];
}

function isSame(one: LedgerBasis, other: LedgerBasis): boolean {
  if (one.kind === 'profile' || other.kind === 'profile') return one.kind === other.kind;
  return one.conditionId === other.conditionId;
}

function nextPlan(): void {
  const store = useAppStore.getState();
  const { project, question } = store;
  if (project === null) return;
  const ids: readonly (string | null)[] = [...project.plans.map(({ id }) => id), null];
  const next = ids[(ids.indexOf(question.planId) + 1) % ids.length] ?? null;
  if (next === question.planId) return;
  store.choosePlan(next);
  // As sailed is held against nothing.
  if (next === null) store.chooseAgainst(null);
  say(next === null ? 'As sailed' : `Plan: ${project.plans.find(({ id }) => id === next)?.name ?? ''}`);
}

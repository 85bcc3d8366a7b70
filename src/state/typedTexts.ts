import { create } from 'zustand';
import type { Project } from '../project/file/schema';
import { useAppStore } from './appStore';
import type { Opening } from './projectSlice';
import { isSameTyped, noTyped, type TypedText, type TypedTexts } from './storage/typedRecords';

interface Typed {
  /** The opening that the texts belong to. */
  readonly opening: Opening | null;
  readonly texts: TypedTexts;
  /** Those whose field is not on the page. */
  readonly elsewhere: readonly string[];
  /** Where somebody is typing right now. */
  readonly typingIn: string | null;
  /** The field that a line elsewhere asked for, until it has the focus; null for none. */
  readonly wanted: string | null;
}

/** How often each field stands on the page: a row's name may be in its editor and in the row itself. */
const shownCounts = new Map<string, number>();

/**
 * What was typed in the open project and is not a value yet. It stands outside of undo: going back must not take away
 * what somebody is in the middle of.
 */
export const useTypedTexts = create<Typed>()(() => openedWith(useAppStore.getState().opening));

useAppStore.subscribe(({ opening }) => {
  if (opening !== useTypedTexts.getState().opening) useTypedTexts.setState(openedWith(opening));
});

function openedWith(opening: Opening | null): Typed {
  const texts = textsOf(opening);
  return { opening, texts, elsewhere: elsewhereOf(texts), typingIn: null, wanted: null };
}

function textsOf(opening: Opening | null): TypedTexts {
  const origin = opening?.origin ?? 'demo';
  return typeof origin === 'string' ? noTyped : origin.typed;
}

/** The texts of an opening, whether the store has followed it yet or not. */
export function typedTextsOf(opening: Opening | null): TypedTexts {
  const typed = useTypedTexts.getState();
  return typed.opening === opening ? typed.texts : textsOf(opening);
}

function elsewhereOf(texts: TypedTexts): readonly string[] {
  return [...texts.keys()].filter((path) => (shownCounts.get(path) ?? 0) === 0);
}

function setTexts(texts: TypedTexts): void {
  useTypedTexts.setState({ texts, elsewhere: elsewhereOf(texts) });
}

/** Keeps a text for what it was typed for. */
export function keepTyped(path: string, typed: TypedText): void {
  const { texts } = useTypedTexts.getState();
  if (!isSameTyped(texts.get(path), typed)) setTexts(new Map(texts).set(path, typed));
}

/** The text has become a value, or was given up. */
export function dropTyped(path: string): void {
  const texts = new Map(useTypedTexts.getState().texts);
  if (texts.delete(path)) setTexts(texts);
}

/** A field stands on the page; the answer takes it off again. */
export function showField(path: string): () => void {
  const count = (change: number): void => {
    shownCounts.set(path, (shownCounts.get(path) ?? 0) + change);
    const { texts } = useTypedTexts.getState();
    if (texts.has(path)) useTypedTexts.setState({ elsewhere: elsewhereOf(texts) });
  };
  count(1);
  return () => {
    count(-1);
    restIn(path);
  };
}

export function typeIn(path: string): void {
  useTypedTexts.setState({ typingIn: path, wanted: null });
}

/** Nobody types there any more. */
export function restIn(path: string): void {
  if (useTypedTexts.getState().typingIn === path) useTypedTexts.setState({ typingIn: null });
}

/** Asks a field to take the focus as soon as it stands on the page. */
export function wantField(path: string | null): void {
  useTypedTexts.setState({ wanted: path });
}

/** What a text was typed for. */
export type Owner =
  | { readonly kind: 'fitting' | 'zone' | 'condition' | 'plan'; readonly id: string; readonly name: string }
  | { readonly kind: 'item'; readonly id: string; readonly planId: string; readonly name: string }
  | { readonly kind: 'course' | 'methods' | 'quick' | 'survey' | 'bench' };

/** What a text was typed for; null when the project does not have it, as after a deletion that may be taken back. */
export function ownerOf(project: Project, path: string): Owner | null {
  const [, kind, id = '', itemId] = /^([a-z]+)\/([^./]*)(?:\/([^./]*))?/.exec(path) ?? [];
  switch (kind) {
    case 'fitting':
      return ownerIn(kind, project.fittings, id);
    case 'zone':
      return ownerIn(kind, project.zones, id);
    case 'condition':
      return id === 'profile' ? { kind: 'course' } : ownerIn(kind, project.conditions, id);
    case 'plan':
      return itemId === undefined ? ownerIn(kind, project.plans, id) : itemIn(project, id, itemId);
    case 'methods':
    // The form of the quick entry, a table that was brought in, the candidates on the bench: they stand in no list of the
    // project, and every project has them.
    case 'quick':
    case 'survey':
    case 'bench':
      return { kind };
    default:
      return null;
  }
}

type Named = readonly { readonly id: string; readonly name: string }[];

function ownerIn(kind: 'fitting' | 'zone' | 'condition' | 'plan', list: Named, id: string): Owner | null {
  const found = list.find((each) => each.id === id);
  return found === undefined ? null : { kind, id, name: found.name };
}

function itemIn({ plans }: Project, planId: string, id: string): Owner | null {
  const item = plans.find((plan) => plan.id === planId)?.items.find((each) => each.id === id);
  return item === undefined ? null : { kind: 'item', id, planId, name: item.name };
}

/** The texts of what the project has; the same object when that is all of them. */
export function ownedTexts(texts: TypedTexts, project: Project): TypedTexts {
  const owned = [...texts].filter(([path]) => ownerOf(project, path) !== null);
  return owned.length === texts.size ? texts : new Map(owned);
}

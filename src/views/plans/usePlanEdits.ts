import { useMemo, useState } from 'react';
import type { EditAnswer } from '../../project/edit/answer';
import { patchItem } from '../../project/edit/itemEdits';
import type { Patch } from '../../project/edit/patch';
import type { Project, RefitItem } from '../../project/file/schema';
import { pathText, type FieldError } from '../../project/file/wording';
import { useAppStore } from '../../state/appStore';

/** Runs edits of plans and keeps the last refusal for the field that it is about. */
export interface PlanEdits {
  readonly refused: FieldError | null;
  readonly run: (label: string, change: (project: Project) => EditAnswer, group?: string) => EditAnswer;
}

export function usePlanEdits(): PlanEdits {
  const [refused, setRefused] = useState<FieldError | null>(null);
  return useMemo(
    () => ({
      refused,
      run: (label, change, group) => {
        const answer = useAppStore.getState().edit(label, change, group === undefined ? {} : { group });
        setRefused('refused' in answer ? answer.refused : null);
        return answer;
      },
    }),
    [refused],
  );
}

/** What the fields of one item need: to change a part of it, and what was refused about a part. */
export interface ItemEditor {
  readonly planId: string;
  readonly item: RefitItem;
  /** Begins the keys and groups of the item's fields: "p1/i3". */
  readonly key: string;
  readonly run: (label: string, change: (project: Project) => EditAnswer, group?: string) => EditAnswer;
  /**
   * @param part the property, such as "change.diameter": names the group of the undo step.
   * @param what the property in words, such as "diameter".
   */
  readonly patch: (part: string, what: string, patch: Patch<Omit<RefitItem, 'id'>>) => void;
  /** The refusal of a part or of anything in it. */
  readonly errorAt: (part: string) => string | undefined;
  readonly done: () => void;
}

export function itemEditor(
  edits: PlanEdits,
  planId: string,
  planIndex: number,
  item: RefitItem,
  itemIndex: number,
): ItemEditor {
  const path = pathText(['plans', planIndex, 'items', itemIndex]);
  const key = `${planId}/${item.id}`;
  return {
    planId,
    item,
    key,
    run: edits.run,
    patch: (part, what, patch) => {
      edits.run(
        `Change the ${what} of ${item.name}`,
        (project) => patchItem(project, planId, item.id, patch),
        `${key}.${part}`,
      );
    },
    errorAt: (part) => refusalAt(edits.refused, `${path}.${part}`),
    done: endStep,
  };
}

/** The message when the refusal is about the field at a path or about something inside it. */
export function refusalAt(refused: FieldError | null, path: string): string | undefined {
  if (refused === null) return undefined;
  const isHere = refused.path === path || refused.path.startsWith(`${path}.`);
  return isHere ? `Not changed: ${refused.message}.` : undefined;
}

/** Closes the undo step: what is typed next is another. */
export function endStep(): void {
  useAppStore.getState().endGroup();
}

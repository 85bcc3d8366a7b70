import type { EditAnswer } from '../../project/edit/answer';
import { patchItem } from '../../project/edit/itemEdits';
import type { Patch } from '../../project/edit/patch';
import type { Project, RefitItem } from '../../project/file/schema';
import type { FieldTie, FormEdit } from '../../ui/useFormEdit';

/** What the fields of one item need: to change a part of it, and what was refused about a part. */
export interface ItemEditor {
  readonly planId: string;
  readonly item: RefitItem;
  /** Begins the keys and groups of the item's fields: "p1/i3". */
  readonly key: string;
  /** Runs an edit of the item as a whole, such as moving it: a step of its own. */
  readonly run: (label: string, change: (project: Project) => EditAnswer) => EditAnswer;
  /**
   * @param field the property, such as "change.diameter": edits of one are one step.
   * @param words the property in words, such as "diameter".
   */
  readonly patch: (field: string, words: string, patch: Patch<Omit<RefitItem, 'id'>>) => void;
  /** Runs any other edit for a field. */
  readonly runField: (field: string, words: string, change: (project: Project) => EditAnswer) => void;
  readonly at: (field: string) => FieldTie;
  readonly errorAt: (field: string) => string | undefined;
  readonly done: () => void;
}

/** What is refused of an item as a whole, such as moving it, stands under this name. */
export const wholeItem = 'item';

export function itemEditor(form: FormEdit, planId: string, item: RefitItem): ItemEditor {
  const key = `${planId}/${item.id}`;
  const at: ItemEditor['at'] = (field) => form.at(`${key}.${field}`);
  const runField: ItemEditor['runField'] = (field, words, change) => {
    form.run(`${key}.${field}`, `Change the ${words} of ${item.name}`, change);
  };
  return {
    planId,
    item,
    key,
    run: (label, change) => form.act(`${key}.${wholeItem}`, label, change),
    runField,
    patch: (field, words, patch) => {
      runField(field, words, (project) => patchItem(project, planId, item.id, patch));
    },
    at,
    errorAt: (field) => at(field).error,
    done: at(wholeItem).onDone,
  };
}

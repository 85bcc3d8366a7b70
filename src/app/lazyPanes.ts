import type { SidePane } from '../state/readingSlice';
import type { Option } from '../ui/OneOf';
import type { Loader } from './LazyPart';

/** A pane beside the ledger that is fetched when it is first opened. */
interface LazyPane extends Option<SidePane> {
  readonly load: Loader<object>;
}

/** Fetched beside the first load, because the page opens on it. */
export const loadWorking: Loader<object> = async () =>
  (await import('../views/working/WorkingPane')).WorkingPane;

interface AddFittingProps {
  readonly onClose: () => void;
}

/** The list of fittings to add from, which opens over the page. */
export const loadAddFitting: Loader<AddFittingProps> = async () =>
  (await import('../views/rowEditor/AddFitting')).AddFitting;

/** What can stand beside the ledger, in the order of the words and of the keys 1 to 6. */
export const sidePanes: readonly LazyPane[] = [
  { id: 'working', label: 'Working', load: loadWorking },
  {
    id: 'picture',
    label: 'Picture',
    load: async () => (await import('../views/windsEye/WindsEyePane')).WindsEyePane,
  },
  {
    id: 'edit',
    label: 'Edit',
    load: async () => (await import('../views/rowEditor/RowEditor')).RowEditor,
  },
  {
    id: 'plan',
    label: 'Plan',
    load: async () => (await import('../views/plans/PlanPane')).PlanPane,
  },
  {
    id: 'condition',
    label: 'Condition',
    load: async () => (await import('../views/conditions/ConditionPane')).ConditionPane,
  },
  {
    id: 'methods',
    label: 'Methods',
    load: async () => (await import('../views/methods/MethodsPane')).MethodsPane,
  },
];

import {
  quickFieldsOf,
  quickLies,
  quickSides,
  type QuickField,
  type QuickLie,
  type QuickSide,
  type QuickUnits,
} from '../../project/survey/quickEntry';
import { quickShapeNames, quickShapes, quickSizeNames } from '../../project/survey/quickShapes';
import { printUnit } from '../../units/print';
import { shownUnit } from '../../units/shownUnits';
import type { Choice } from '../../ui/fields/ChoiceField';

/** Under this name a field's text is kept with the project until it is added. */
export function typedForField(field: QuickField): string {
  return `quick/entry.${field}`;
}

/** What a bare number is taken for: the units that the reader chose for sizes and lengths. */
export function quickUnits(): QuickUnits {
  return { size: shownUnit('mm'), length: shownUnit('m') };
}

/** The field's name, with the unit of a bare number. */
export function fieldLabel(field: QuickField): string {
  switch (field) {
    case 'name':
      return 'Name';
    case 'count':
      return 'Count';
    case 'length':
      return `Length, ${printUnit('m')}`;
    case 'height':
      return `Height above deck, ${printUnit('m')}`;
    default:
      return `${quickSizeNames[field]}, ${printUnit('mm')}`;
  }
}

/** Fields whose text goes into every entry, whatever its shape. */
export const quickFields: readonly QuickField[] = [
  ...new Set(quickShapes.flatMap((shape) => quickFieldsOf(shape))),
];

export const shapeChoices = quickShapes.map((value) => ({ value, label: quickShapeNames[value] }));

const sideNames: Readonly<Record<QuickSide, string>> = {
  centreline: 'centreline',
  starboard: 'starboard edge',
  port: 'port edge',
  both: 'both edges',
};

const lieNames: Readonly<Record<QuickLie, string>> = {
  upright: 'upright',
  along: 'along the boat',
  across: 'across the boat',
};

export const sideChoices = quickSides.map((value) => ({ value, label: sideNames[value] }));
export const lieChoices = quickLies.map((value) => ({ value, label: lieNames[value] }));

export const basisChoices: readonly Choice<'measured' | 'estimated'>[] = [
  { value: 'measured', label: 'measured' },
  { value: 'estimated', label: 'estimated' },
];

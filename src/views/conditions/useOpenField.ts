import { useEffect } from 'react';
import { useAppStore } from '../../state/appStore';
import { fieldId } from './fieldId';

/** Gives the focus to the field that a line elsewhere asked for, opening what it is folded into. */
export function useOpenField(): void {
  const openField = useAppStore((state) => state.openField);
  useEffect(() => {
    if (openField === null) return;
    const field = document.getElementById(fieldId(openField));
    const folded = field?.closest('details') ?? null;
    if (folded !== null) folded.open = true;
    field?.focus();
    if (field instanceof HTMLInputElement) field.select();
    useAppStore.getState().reachedOpenField();
  }, [openField]);
}

import { useEffect } from 'react';
import { useAppStore } from '../../state/appStore';
import { ownerOf, useTypedTexts } from '../../state/typedTexts';

/** Opens the item of the chosen plan that holds a field which a line elsewhere asked for. */
export function useWantedItem(planId: string | null, onOpen: (itemId: string) => void): void {
  const wanted = useTypedTexts((state) => state.wanted);
  useEffect(() => {
    const { project } = useAppStore.getState();
    if (wanted === null || project === null) return;
    const owner = ownerOf(project, wanted);
    if (owner?.kind === 'item' && owner.planId === planId) onOpen(owner.id);
  }, [wanted, planId, onOpen]);
}

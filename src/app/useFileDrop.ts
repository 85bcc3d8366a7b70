import { useEffect, useState } from 'react';
import { openDropped } from './openFile';

/** Lets a file be dropped anywhere on the page; true while one is held over it. */
export function useFileDrop(): boolean {
  const [isOver, setIsOver] = useState(false);
  useEffect(() => {
    const onDragOver = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      setIsOver(true);
    };
    const onDragLeave = (event: DragEvent) => {
      // Leaving for another element of the page is not leaving the page.
      if (event.relatedTarget === null) setIsOver(false);
    };
    const onDrop = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      // Otherwise the browser would leave the page and show the file.
      event.preventDefault();
      setIsOver(false);
      void openDropped([...(event.dataTransfer?.files ?? [])]);
    };
    window.addEventListener('dragover', onDragOver);
    window.addEventListener('dragleave', onDragLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onDragOver);
      window.removeEventListener('dragleave', onDragLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, []);
  return isOver;
}

function holdsFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') ?? false;
}

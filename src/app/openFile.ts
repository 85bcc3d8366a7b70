import { mostBytes } from '../project/file/guard';
import { useAppStore } from '../state/appStore';
import { decodeFile } from './decodeFile';
import { addFinding } from './keep/keeping';

/** Opens a file from disk. One that is too large is refused by its size alone, before it is read. */
export async function openFile(file: File): Promise<void> {
  const store = useAppStore.getState();
  if (file.size > mostBytes) {
    store.refuseFile(file.name, `the file is larger than ${mostBytes / 1e6} MB`);
    return;
  }
  const bytes = await bytesOf(file);
  if (bytes === null) {
    store.refuseFile(
      file.name,
      'the browser could not read the file; it may have been moved, or it is a folder',
    );
    return;
  }
  const decoded = decodeFile(bytes);
  if (decoded.ok) openText(file.name, decoded.text);
  else store.refuseFile(file.name, decoded.message);
}

function openText(fileName: string, text: string): void {
  const before = useAppStore.getState().opening;
  useAppStore.getState().openText(fileName, text);
  const { opening } = useAppStore.getState();
  if (opening === null || opening === before || opening.upgradedFrom === null) return;
  addFinding({ kind: 'older', fileName, opening });
}

/** Null where the browser cannot read it. Nothing else is tried in here: an error of the page's own must show. */
async function bytesOf(file: File): Promise<Uint8Array | null> {
  try {
    return new Uint8Array(await file.arrayBuffer());
  } catch {
    return null;
  }
}

/** Opens what was dropped: one file, and no other number of them. */
export async function openDropped(files: readonly File[]): Promise<void> {
  const [file, another] = files;
  const store = useAppStore.getState();
  if (file === undefined) return;
  if (another === undefined) await openFile(file);
  else store.refuseFile('What was dropped', `there are ${files.length} files; drop one project file`);
}

import { saveProject } from '../../project/file/saveProject';
import { useAppStore } from '../../state/appStore';
import { downloadText } from '../../state/storage/downloadText';
import { fileNameFor } from '../../state/storage/fileNameFor';
import { addFinding } from './keeping';

/** Hands the open project to the browser as a file. Part of the first load: it must work where nothing else does. */
export function saveToFile(): void {
  const { project } = useAppStore.getState();
  if (project === null) return;
  const saved = saveProject(project);
  if (saved.ok) {
    downloadText(fileNameFor(project), saved.text);
    return;
  }
  const [error] = saved.errors;
  const words = [error?.path, error?.message].filter(Boolean).join(' ');
  addFinding({ kind: 'trouble', text: `Not saved to a file: ${words}.` });
}

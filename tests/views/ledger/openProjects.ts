import { readFileSync } from 'node:fs';
import { openProject } from '../../../src/project/file/openProject';
import type { Project } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';

/** A project of the tests' data, which the tests may change before they open it. */
export function everyKind(): Project {
  return parsed('tests/data/projects/every-kind.json');
}

export function demo(): Project {
  return parsed('demo-data/quillamoor.windtoll.json');
}

function parsed(path: string): Project {
  const opened = openProject(readFileSync(path, 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.errors));
  return opened.project;
}

/** Opens a project in the store the way the page does: as text. */
export function openInStore(project: Project): void {
  useAppStore.setState(useAppStore.getInitialState(), true);
  useAppStore.getState().openText('test.json', JSON.stringify(project));
  const { openFailure } = useAppStore.getState();
  if (openFailure !== null) throw new Error(JSON.stringify(openFailure.errors));
}

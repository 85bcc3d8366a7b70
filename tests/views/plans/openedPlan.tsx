import { fireEvent, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import type { Project } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { ledgerOf } from '../../../src/state/ledgerOf';
import { PlanPane } from '../../../src/views/plans/PlanPane';
import { openInStore } from '../ledger/openProjects';

/** The pane with a plan of the project, or with none. */
export function show(project: Project, planId: string | null): void {
  openInStore(project);
  useAppStore.getState().choosePlan(planId);
  render(<PlanPane />);
}

export function ledger() {
  const { project, question } = useAppStore.getState();
  const answer = project === null ? null : ledgerOf(project, question);
  if (answer === null) throw new Error('nothing open');
  return answer;
}

export function plan(id = useAppStore.getState().question.planId) {
  const found = useAppStore.getState().project?.plans.find((each) => each.id === id);
  if (found === undefined) throw new Error('no such plan');
  return found;
}

export async function press(name: string | RegExp): Promise<void> {
  await userEvent.click(screen.getByRole('button', { name }));
}

/** Puts a whole text into a field, as by pasting. */
export function put(name: string, text: string): void {
  const field = screen.getByRole('textbox', { name });
  fireEvent.focus(field);
  fireEvent.change(field, { target: { value: text } });
  fireEvent.blur(field);
}

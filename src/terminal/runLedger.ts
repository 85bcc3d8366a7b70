import { openProject } from '../project/file/openProject';
import type { Project } from '../project/file/schema';
import type { FieldError } from '../project/file/fieldErrors';
import type { LedgerBasis, LedgerQuestion } from '../project/ledger/ledgerTypes';
import { projectLedger } from '../project/ledger/projectLedger';
import { chooseByName } from './chooseByName';
import { ledgerJson } from './ledgerJson';
import { ledgerTable } from './ledgerTable';
import { parseArguments, usage, type LedgerCommand } from './parseArguments';
import type { ReadText } from './readText';
import { safeJson, safeLine } from './safeText';

/** What the process does: its texts whole, and how it ends (0 done, 1 refused, 2 not understood). */
export interface CommandResult {
  readonly exitCode: 0 | 1 | 2;
  readonly stdout: string;
  readonly stderr: string;
}

/** The whole command as a function: the file comes in through `read`, so that no test needs a process. */
export function runLedger(words: readonly string[], read: (file: string) => ReadText): CommandResult {
  const parsed = parseArguments(words);
  if (parsed.kind === 'help') return { exitCode: 0, stdout: `${usage}\n`, stderr: '' };
  if (parsed.kind === 'problem') {
    return { exitCode: 2, stdout: '', stderr: `${safeLine(parsed.message)}\n${usage}\n` };
  }
  const { command } = parsed;
  const file = read(command.file);
  if (!file.ok) return refused([{ path: command.file, message: file.message }]);
  const opened = openProject(file.text);
  if (!opened.ok) {
    return refused(opened.errors.map(({ path, message }) => ({ path: path || command.file, message })));
  }
  return answer(opened.project, command);
}

function refused(errors: readonly FieldError[]): CommandResult {
  const lines = errors.map(({ path, message }) => `${safeLine(path)}: ${safeLine(message)}\n`);
  return { exitCode: 1, stdout: '', stderr: lines.join('') };
}

function answer(project: Project, command: LedgerCommand): CommandResult {
  const asked = questionOf(project, command);
  if (!asked.ok) return refused(asked.errors);
  const computed = projectLedger(project, asked.question);
  if (!computed.ok) return refused(computed.errors);
  const stdout =
    command.form === 'json'
      ? safeJson(ledgerJson(project, computed.ledger))
      : ledgerTable(project, computed.ledger).join('\n');
  return { exitCode: 0, stdout: `${stdout}\n`, stderr: '' };
}

type Asked =
  | { readonly ok: true; readonly question: LedgerQuestion }
  | { readonly ok: false; readonly errors: readonly FieldError[] };

/** Looks up the names; every name that is not found has an error of its own. */
function questionOf(project: Project, command: LedgerCommand): Asked {
  const errors: FieldError[] = [];
  const idOf = (items: Project['plans'], typed: string | null, path: string): string | null => {
    if (typed === null) return null;
    const choice = chooseByName(items, typed, 'plan');
    if (choice.ok) return choice.item.id;
    errors.push({ path, message: choice.message });
    return null;
  };
  const basis = basisOf(project, command, errors);
  const planId = idOf(project.plans, command.plan, '--plan');
  const againstPlanId = idOf(project.plans, command.against, '--against');
  if (errors.length > 0 || basis === null) return { ok: false, errors };
  return { ok: true, question: { basis, planId, againstPlanId } };
}

function basisOf(project: Project, command: LedgerCommand, errors: FieldError[]): LedgerBasis | null {
  if (command.isProfile) return { kind: 'profile' };
  const [first] = project.conditions;
  if (first === undefined) {
    errors.push({ path: 'conditions', message: 'the project has no sailing condition' });
    return null;
  }
  if (command.condition === null) return { kind: 'condition', conditionId: first.id };
  const choice = chooseByName(project.conditions, command.condition, 'condition');
  if (choice.ok) return { kind: 'condition', conditionId: choice.item.id };
  errors.push({ path: '--condition', message: choice.message });
  return null;
}

import { domainErrors } from './domainErrors';
import { refusal } from './guard';
import { jsonStop } from './jsonStop';
import { currentVersion, formatName, projectSchema, type Project } from './schema';
import { onePerPath, schemaErrors } from './schemaErrors';
import { shippedUpgraders, upgradeStepByStep, type Upgrader } from './upgraders';
import { described, type FieldError } from './fieldErrors';

export type OpenStage = 'parse' | 'envelope' | 'version' | 'schema' | 'domain';

export interface OpenFailure {
  readonly ok: false;
  /** The step that refused the file; the steps after it did not run. */
  readonly stage: OpenStage;
  readonly errors: readonly FieldError[];
}

export type OpenResult =
  { readonly ok: true; readonly project: Project; readonly upgradedFrom: number | null } | OpenFailure;

type Step<Value> = { readonly ok: true; readonly value: Value } | OpenFailure;
type Content = Readonly<Record<string, unknown>>;

/**
 * Opens the text of a project file: parse, envelope, version, upgrade step by step, schema, rules across fields.
 * Never throws; each step's errors name their fields.
 * @param upgraders another table than the shipped one, for tests.
 */
export function openProject(
  text: string,
  upgraders: ReadonlyMap<number, Upgrader> = shippedUpgraders,
): OpenResult {
  const parsed = parse(text);
  if (!parsed.ok) return parsed;
  const content = envelope(parsed.value);
  if (!content.ok) return content;
  const version = versionOf(content.value);
  if (!version.ok) return version;
  const upgraded = upgradeStepByStep(content.value, version.value, currentVersion, upgraders);
  if (!upgraded.ok) return refused('version', 'version', upgraded.message);
  const checked = checkProject(upgraded.content);
  if (!checked.ok) return checked;
  return {
    ok: true,
    project: checked.value,
    upgradedFrom: version.value === currentVersion ? null : version.value,
  };
}

/** Schema, then rules across fields: what both opening and saving ask of a project. Answers with the keys in order. */
export function checkProject(content: unknown): Step<Project> {
  const result = projectSchema.safeParse(content);
  if (!result.success) return { ok: false, stage: 'schema', errors: schemaErrors(result.error.issues) };
  const errors = onePerPath(domainErrors(result.data));
  if (errors.length > 0) return { ok: false, stage: 'domain', errors };
  return { ok: true, value: result.data };
}

function refused(stage: OpenStage, path: string, message: string): OpenFailure {
  return { ok: false, stage, errors: [{ path, message }] };
}

/** Some editors put a byte order mark first, which JSON forbids. */
function parse(textWithMark: string): Step<unknown> {
  const text = textWithMark.replace(/^\uFEFF/, '');
  const message = refusal(text);
  if (message !== null) return refused('parse', '', message);
  try {
    return { ok: true, value: JSON.parse(text) as unknown };
  } catch {
    return refused('parse', '', `the file is not valid JSON${placeIn(text)}`);
  }
}

/** Line and column, counted from 1, where the text stops being JSON. */
function placeIn(text: string): string {
  const stop = jsonStop(text);
  if (stop === null) return '';
  const lines = text.slice(0, stop).split('\n');
  const place = `line ${lines.length}, column ${(lines.at(-1) ?? '').length + 1}`;
  return stop === text.length ? `: it ends too soon, at ${place}` : ` at ${place}`;
}

function envelope(value: unknown): Step<Content> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return refused(
      'envelope',
      '',
      `this is no ${formatName} file: it holds ${described(value)}, not an object`,
    );
  }
  const content = value as Content;
  if (content['format'] === formatName) return { ok: true, value: content };
  const found = content['format'] === undefined ? 'missing' : described(content['format']);
  return refused('envelope', 'format', `this is no ${formatName} file: its format is ${found}`);
}

function versionOf({ version }: Content): Step<number> {
  if (typeof version !== 'number' || !Number.isInteger(version)) {
    const found = version === undefined ? 'missing' : described(version);
    return refused('version', 'version', `must be a whole number; it is ${found}`);
  }
  if (version <= currentVersion) return { ok: true, value: version };
  return refused(
    'version',
    'version',
    `the file has version ${version}, newer than version ${currentVersion}, the newest this Windtoll reads: open it with a newer Windtoll`,
  );
}

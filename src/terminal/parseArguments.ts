export const usage =
  'usage: npm run --silent ledger -- FILE [--condition NAME | --profile] [--plan NAME] [--against NAME] [--json | --table]';

/** What the command line asks for; names are not looked up yet. */
export interface LedgerCommand {
  readonly file: string;
  /** null: the first condition, unless `isProfile`. */
  readonly condition: string | null;
  readonly isProfile: boolean;
  readonly plan: string | null;
  readonly against: string | null;
  readonly form: 'table' | 'json';
}

export type ParsedArguments =
  | { readonly kind: 'run'; readonly command: LedgerCommand }
  | { readonly kind: 'help' }
  | { readonly kind: 'problem'; readonly message: string };

const named = ['--condition', '--plan', '--against'];
const bare = ['--profile', '--json', '--table'];

interface Collected {
  readonly options: Map<string, string>;
  readonly files: string[];
}

/** Reads the words after the command. A name that starts with dashes is given as `--plan=--NAME`. */
export function parseArguments(words: readonly string[]): ParsedArguments {
  if (words.includes('--help') || words.includes('-h')) return { kind: 'help' };
  const collected: Collected = { options: new Map(), files: [] };
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i] ?? '';
    if (word === '--') {
      collected.files.push(...words.slice(i + 1));
      break;
    }
    if (!word.startsWith('-') || word === '-') {
      collected.files.push(word);
      continue;
    }
    const [option, value] = split(word);
    const takesNext = named.includes(option) && value === null;
    const message = take(collected, option, takesNext ? (words[i + 1] ?? null) : value, takesNext);
    if (message !== null) return { kind: 'problem', message };
    if (takesNext) i += 1;
  }
  return commandOf(collected);
}

function split(word: string): [option: string, value: string | null] {
  const place = word.indexOf('=');
  return place < 0 ? [word, null] : [word.slice(0, place), word.slice(place + 1)];
}

/** Takes one option in; answers with the complaint, if there is one. */
function take(
  { options }: Collected,
  option: string,
  value: string | null,
  isNextWord: boolean,
): string | null {
  if (!named.includes(option) && !bare.includes(option)) return `unknown option ${option}`;
  if (options.has(option)) return `${option} is given twice`;
  if (bare.includes(option)) {
    if (value !== null) return `${option} takes no value`;
    options.set(option, '');
    return null;
  }
  if (value === null || value === '' || (isNextWord && value.startsWith('--')))
    return `${option} needs a name`;
  options.set(option, value);
  return null;
}

function commandOf({ options, files }: Collected): ParsedArguments {
  const [file, ...more] = files;
  if (file === undefined || file === '') return problem('no file is given');
  if (more.length > 0) return problem('more than one file is given');
  if (options.has('--condition') && options.has('--profile')) {
    return problem('--condition and --profile exclude each other');
  }
  if (options.has('--json') && options.has('--table'))
    return problem('--json and --table exclude each other');
  return {
    kind: 'run',
    command: {
      file,
      condition: options.get('--condition') ?? null,
      isProfile: options.has('--profile'),
      plan: options.get('--plan') ?? null,
      against: options.get('--against') ?? null,
      form: options.has('--json') ? 'json' : 'table',
    },
  };
}

function problem(message: string): ParsedArguments {
  return { kind: 'problem', message };
}

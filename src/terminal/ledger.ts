import { resolve } from 'node:path';
import process from 'node:process';
import { readText } from './readText';
import { runLedger } from './runLedger';

// npm runs a script in the project's folder; a relative file is meant from where the reader stands.
const runsUnderNpm = process.env['npm_lifecycle_event'] === 'ledger';
const folder = (runsUnderNpm ? process.env['INIT_CWD'] : undefined) ?? process.cwd();

// A reader such as `head` that has seen enough closes the pipe: no error of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

const { exitCode, stdout, stderr } = runLedger(process.argv.slice(2), (file) =>
  readText(resolve(folder, file)),
);
process.stderr.write(stderr);
process.stdout.write(stdout);
// Not process.exit: a long text may still be on its way into a pipe.
process.exitCode = exitCode;

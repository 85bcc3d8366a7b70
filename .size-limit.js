import { readFileSync } from 'node:fs';

/** What the built page asks for before it can show anything: its scripts and what they import statically. */
function firstLoadScripts() {
  const page = readFileSync('dist/index.html', 'utf8');
  const addresses = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map((match) => match[1]);
  if (addresses.length === 0) throw new Error('dist/index.html names no script: run "npm run build" first.');
  return addresses.map((address) => `dist/${address}`);
}

export default [
  { name: 'JavaScript of the first load', path: firstLoadScripts(), limit: '170 kB', gzip: true },
];

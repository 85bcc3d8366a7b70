import { readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, relative } from 'node:path';

/** A little server of the built page, in a folder of its site, that can be renewed and stopped under an open page. */
export interface BuiltServer {
  /** Ends with a stroke. */
  readonly address: string;
  /** Puts a second build in the place of the first: other names for two scripts, and nothing under the old ones. */
  renew(): void;
  /** From now on nobody answers. */
  stop(): Promise<void>;
}

const folder = '/boats/windtoll/';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

type Build = ReadonlyMap<string, Buffer>;

function firstBuild(): Build {
  const names = readdirSync('dist', { recursive: true, encoding: 'utf8' }).map((name) => join('dist', name));
  const files = names.filter((name) => statSync(name).isFile());
  return new Map(files.map((file) => [relative('dist', file), readFileSync(file)]));
}

/** The same page as another build would make it: entry and units dialog renamed, and with them the version. */
function secondBuild(first: Build): Build {
  const script = first.get('sw.js')?.toString() ?? '';
  const [, version = ''] = /version:[`"']([0-9a-f]{16})/.exec(script) ?? [];
  if (version === '') throw new Error('dist/sw.js names no version');
  const renamed = (text: string): string =>
    text
      .replaceAll(version, 'second0000000000')
      .replaceAll(/(assets\/|\.\/)((?:index|UnitsDialog)-)[\w-]{8}\.js/g, '$1$2second00.js');
  return new Map(
    [...first].map(([path, bytes]) => [
      renamed(path),
      /\.(js|html)$/.test(path) ? Buffer.from(renamed(bytes.toString())) : bytes,
    ]),
  );
}

function send(response: ServerResponse, build: Build, url: string): void {
  const path = new URL(url, 'http://site').pathname;
  const name = path === folder ? 'index.html' : path.slice(folder.length);
  const body = path.startsWith(folder) ? build.get(name) : undefined;
  // As many servers do, and as the worker must not stumble over.
  response.setHeader('vary', 'Origin');
  response.setHeader('content-type', types[extname(name)] ?? 'text/plain');
  response.statusCode = body === undefined ? 404 : 200;
  response.end(body ?? 'not here');
}

export async function serveBuilt(): Promise<BuiltServer> {
  const first = firstBuild();
  let build = first;
  const server = createServer((request, response) => {
    send(response, build, request.url ?? '/');
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}${folder}`,
    renew: () => {
      build = secondBuild(first);
    },
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => {
          resolve();
        });
      }),
  };
}

import { createHash } from 'node:crypto';
import react from '@vitejs/plugin-react';
import { build, type PreviewServer, type Rolldown } from 'vite';
import { defineConfig } from 'vitest/config';
import type { FileList } from './src/jobs/offline/protocol';

const contentSecurityPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Puts the policy into the built page only: the development server needs inline scripts for hot reload. */
function pagePolicy() {
  return {
    name: 'page-policy',
    apply: 'build' as const,
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
        injectTo: 'head-prepend' as const,
      },
    ],
  };
}

/** What the service worker has to store, of all that was built. */
function fileListOf(bundle: Rolldown.OutputBundle): FileList {
  const files = Object.values(bundle);
  const entry = files.find((file) => file.type === 'chunk' && file.isEntry)?.fileName;
  const page = 'index.html';
  if (entry === undefined || !(page in bundle)) throw new Error('The build has no page with a script.');
  const hash = createHash('sha256');
  const paths = files.map(({ fileName }) => fileName).sort();
  for (const path of paths) {
    const file = bundle[path];
    hash.update(`${path}\n`).update((file?.type === 'chunk' ? file.code : file?.source) ?? '');
  }
  const version = hash.digest('hex').slice(0, 16);
  return { version, page, entry, assets: paths.filter((path) => path !== page) };
}

/** The worker's own code as one script, with the list of the files in it. */
async function workerScript(list: FileList): Promise<string> {
  const output = (await build({
    configFile: false,
    logLevel: 'warn',
    define: { builtFiles: JSON.stringify(list) },
    build: {
      write: false,
      target: 'es2022',
      modulePreload: false,
      rolldownOptions: { input: 'src/jobs/offline/serviceWorker.ts', output: { format: 'iife' } },
    },
  })) as Rolldown.RolldownOutput;
  return output.output[0].code;
}

/** Emits `sw.js` beside the page: the worker by which the page opens without a network. */
function offlineWorker() {
  return {
    name: 'offline-worker',
    apply: 'build' as const,
    generateBundle: {
      order: 'post' as const,
      async handler(this: Rolldown.PluginContext, _: unknown, bundle: Rolldown.OutputBundle) {
        const source = await workerScript(fileListOf(bundle));
        this.emitFile({ type: 'asset', fileName: 'sw.js', source });
      },
    },
  };
}

/** Prints the address of the served demo as one plain line, so that it can be read and clicked anywhere. */
function plainAddress() {
  return {
    name: 'plain-address',
    configurePreviewServer(server: PreviewServer) {
      server.printUrls = () => {
        const address = server.resolvedUrls?.local[0] ?? server.resolvedUrls?.network[0];
        console.log(`The Windtoll demo is at ${address ?? 'no address'} (Ctrl+C stops it)`);
      };
    },
  };
}

export default defineConfig({
  // Relative addresses, so that the built folder can be served from any place on a site.
  base: './',
  plugins: [react(), pagePolicy(), offlineWorker(), plainAddress()],
  // A fixed port for people; when it is taken, the next free one.
  preview: { host: '127.0.0.1', port: 4173, strictPort: false },
  build: {
    target: 'es2022',
    // Inlined fonts would be data: addresses, which the page policy refuses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  test: {
    // Properties run thousands of cases; a busy machine must not fail them.
    testTimeout: 120_000,
    setupFiles: ['tests/setup/sameCases.ts', 'tests/setup/lazyEquality.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/views/**', 'tests/journeys/**'],
        },
      },
      {
        extends: true,
        test: { name: 'views', environment: 'jsdom', include: ['tests/views/**/*.test.{ts,tsx}'] },
      },
    ],
  },
});

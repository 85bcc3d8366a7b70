import react from '@vitejs/plugin-react';
import type { PreviewServer } from 'vite';
import { defineConfig } from 'vitest/config';

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
  plugins: [react(), pagePolicy(), plainAddress()],
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
    setupFiles: ['tests/setup/sameCases.ts'],
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

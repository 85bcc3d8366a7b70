import { rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview, type Plugin, type PreviewServer } from 'vite';

/** A production build of the page, served until it is closed. */
export interface ServedBuild {
  readonly name: string;
  readonly address: string;
  readonly close: () => Promise<void>;
}

const root = fileURLToPath(new URL('../../../', import.meta.url));
const ledgerModule = join(root, 'src/project/ledger/projectLedger.ts');
const standInModule = join(root, 'tests/bench/ui/ledgerWithoutPhysics.ts');

/** Puts the ledger without physics in the place of the real one, which only the stand-in itself still gets. */
export function withoutPhysics(): Plugin {
  return {
    name: 'without-physics',
    enforce: 'pre',
    async resolveId(source, importer, options) {
      if (importer === undefined || importer === standInModule) return null;
      const resolved = await this.resolve(source, importer, { ...options, skipSelf: true });
      return resolved?.id === ledgerModule ? standInModule : null;
    },
  };
}

/** Builds the page as it is shipped, with some plugins on top, into a folder that goes when it is closed. */
export async function serveBuild(name: string, plugins: Plugin[] = []): Promise<ServedBuild> {
  const outDir = await mkdtemp(join(tmpdir(), 'bench-ui-'));
  await build({ root, plugins, logLevel: 'error', build: { outDir, emptyOutDir: true } });
  const server = await preview({
    root,
    logLevel: 'error',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0 },
  });
  return {
    name,
    address: addressOf(server),
    close: async () => {
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}

function addressOf({ resolvedUrls }: PreviewServer): string {
  const [address] = resolvedUrls?.local ?? [];
  if (address === undefined) throw new Error('the built page is not served');
  return address;
}

import type { Browser, CDPSession, Page } from 'playwright';
import type { ServedBuild } from './builds';
import type { Case } from './cases';
import { installPaintClock, readPaintClock } from './paintClock';
import { countThreadTime, perInput, readThreadTimes, type ThreadTimes } from './threadTimes';

/** A build open in a page of its own with the bench's project in it. */
export interface OpenBuild {
  readonly name: string;
  readonly page: Page;
  readonly session: CDPSession;
}

/** What one build took for one case at one speed of the processor. */
export interface Measured {
  readonly name: string;
  readonly paintedMs: readonly number[];
  readonly thread: ThreadTimes;
}

interface Run {
  readonly build: OpenBuild;
  readonly act: (turn: number) => Promise<void>;
  readonly paintedMs: number[];
}

const warmUpInputs = 10;
const inputs = 60;
/** The ledger has answered when nothing in it moved for so long, ms at full speed. */
const stillMs = 60;

export async function openBuild(
  browser: Browser,
  build: ServedBuild,
  projectText: string,
): Promise<OpenBuild> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await countThreadTime(session);
  await installPaintClock(page);
  await page.goto(build.address);
  const file = { name: 'bench.json', mimeType: 'application/json', buffer: Buffer.from(projectText) };
  await page.getByLabel('Open a file').setInputFiles(file);
  await page.waitForFunction(() => document.title.startsWith('Bench'));
  return { name: build.name, page, session };
}

/**
 * Does a case in every build, one input each in turn, so that whatever else goes on in the machine meets all alike.
 * @param slowerBy how many times slower the processor is made.
 */
export async function measureCase(
  { prepare, finish }: Case,
  builds: readonly OpenBuild[],
  slowerBy: number,
): Promise<Measured[]> {
  const runs: Run[] = [];
  for (const build of builds) {
    runs.push({ build, act: await prepare(build.page), paintedMs: [] });
  }
  const turn = async (from: number, count: number): Promise<void> => {
    for (let i = from; i < from + count; i += 1) {
      for (const { build, act, paintedMs } of i % 2 === 0 ? runs : [...runs].reverse()) {
        await slowDown(build, slowerBy);
        await act(i);
        paintedMs.push(await readPaintClock(build.session, slowerBy * stillMs));
        await slowDown(build, 1);
      }
    }
  };
  await turn(0, warmUpInputs);
  const before = await Promise.all(builds.map(({ session }) => readThreadTimes(session)));
  await turn(warmUpInputs, inputs);
  const after = await Promise.all(builds.map(({ session }) => readThreadTimes(session)));
  for (const { page } of builds) await finish(page);
  return runs.map(({ build, paintedMs }, i) => ({
    name: build.name,
    paintedMs: paintedMs.slice(warmUpInputs),
    thread: perInput(before[i] as ThreadTimes, after[i] as ThreadTimes, inputs),
  }));
}

/** A page that is slowed down keeps a core busy even while it waits, so only the one whose turn it is may be. */
async function slowDown({ session }: OpenBuild, slowerBy: number): Promise<void> {
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowerBy });
}

/**
 * How fast the ledger answers in the production build with 200 fittings: from a key press, or a move of the hand, to the
 * painted ledger. The same table without physics runs beside it, input by input in turn, in a build of its own. Run by
 * `npm run bench:ui`; exits 1 when a bar is missed.
 */
import { loadavg } from 'node:os';
import { chromium } from 'playwright';
import { requireBrowser } from '../../browser/resolve';
import { benchProjectText, fittingCount } from './benchProject';
import { serveBuild, withoutPhysics, type ServedBuild } from './builds';
import { cases } from './cases';
import { measureCase, openBuild, type Measured, type OpenBuild } from './measure';
import { quantile, resultLine, tableHead } from './report';
import { measureSlider, reportSlider } from './slider';
import { measureTurning, reportTurning } from './turning';

/** How many times slower the processor is made, and what 95 of 100 inputs may take at most, ms. */
const speeds = [
  { slowerBy: 1, mostMs: 33 },
  { slowerBy: 4, mostMs: 130 },
] as const;

/** `npm run bench:ui -- turning diameter` measures the cases with one of these words in their names; without words, all. */
const askedWords = process.argv.slice(2);

function isAsked({ name }: { readonly name: string }): boolean {
  return askedWords.length === 0 || askedWords.some((word) => name.includes(word));
}

async function measureAll(builds: readonly OpenBuild[]): Promise<string[]> {
  const missed: string[] = [];
  for (const { slowerBy, mostMs } of speeds) {
    console.log(`\nprocessor ${slowerBy === 1 ? 'as it is' : `${slowerBy} times slower`}, bar ${mostMs} ms`);
    console.log(tableHead);
    for (const each of cases.filter(isAsked)) {
      const results = await measureCase(each, builds, slowerBy);
      for (const result of results) console.log(resultLine(each.name, result));
      missed.push(
        ...missedBy(results, mostMs).map((p95) => `${each.name}, x${slowerBy}, 95 of 100: ${p95} ms`),
      );
    }
  }
  return missed;
}

/** Only the page as it is shipped is judged, which is the first. */
function missedBy([shipped]: readonly Measured[], mostMs: number): string[] {
  const p95 = shipped === undefined ? NaN : quantile(shipped.paintedMs, 0.95);
  return p95 <= mostMs ? [] : [p95.toFixed(1)];
}

async function main(): Promise<number> {
  const { executablePath } = requireBrowser();
  const served: ServedBuild[] = [];
  const browser = await chromium.launch(executablePath === undefined ? {} : { executablePath });
  try {
    served.push(await serveBuild('as shipped'), await serveBuild('no physics', [withoutPhysics()]));
    const text = benchProjectText();
    const builds: OpenBuild[] = [];
    for (const build of served) builds.push(await openBuild(browser, build, text));
    console.log(
      `${fittingCount} fittings, 1440 x 900, ${browser.version()}; load ${loadText()} at the start`,
    );
    const [shipped] = builds;
    if (shipped === undefined) throw new Error('no build');
    const missed = isAsked({ name: 'turning' }) ? reportTurning(await measureTurning(shipped)) : [];
    missed.push(...(await measureAll(builds)));
    if (isAsked({ name: 'slider' })) missed.push(...reportSlider(await measureSlider(shipped)));
    console.log(`\nload ${loadText()} at the end`);
    for (const miss of missed) console.error(`missed: ${miss}`);
    return missed.length === 0 ? 0 : 1;
  } finally {
    await browser.close();
    await Promise.all(served.map(({ close }) => close()));
  }
}

function loadText(): string {
  return (loadavg()[0] ?? NaN).toFixed(1);
}

process.exitCode = await main();

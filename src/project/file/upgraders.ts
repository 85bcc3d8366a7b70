import { fromVersion1 } from './fromVersion1';
import { described } from './fieldErrors';

/** Turns the content of a file of one version into that of the next. It may throw on a content it cannot make sense of. */
export type Upgrader = (older: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/** Upgraders by the version they start from. */
export const shippedUpgraders: ReadonlyMap<number, Upgrader> = new Map([[1, fromVersion1]]);

export type UpgradeResult =
  | { readonly ok: true; readonly content: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly message: string };

/** Upgrades one version at a time until `toVersion`; each step's content gets its version number here. */
export function upgradeStepByStep(
  content: Readonly<Record<string, unknown>>,
  fromVersion: number,
  toVersion: number,
  upgraders: ReadonlyMap<number, Upgrader>,
): UpgradeResult {
  let upgraded = content;
  for (let version = fromVersion; version < toVersion; version += 1) {
    const upgrader = upgraders.get(version);
    if (upgrader === undefined) {
      return {
        ok: false,
        message: `the file has version ${fromVersion}, and no way is known from version ${version} to ${version + 1}`,
      };
    }
    try {
      upgraded = { ...upgrader(upgraded), version: version + 1 };
    } catch (thrown) {
      const cause = thrown instanceof Error ? thrown.message : described(thrown);
      return { ok: false, message: `could not be upgraded from version ${version}: ${cause}` };
    }
  }
  return { ok: true, content: upgraded };
}

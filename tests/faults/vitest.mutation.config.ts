import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { defineConfig } from 'vitest/config';
import { isQuickRun, leftOutWhenQuick } from './quickRun';
import { inOrderOfCost } from './relatedTests';

/** A mutant's run ends at the first failure: the quick tests come first. */
class QuickFirst extends BaseSequencer {
  override sort(specifications: TestSpecification[]): Promise<TestSpecification[]> {
    return Promise.resolve(inOrderOfCost(specifications, ({ moduleId }) => moduleId));
  }
}

/** What may notice a mutant: published numbers, properties and claims about the core. Recorded results would notice any change, right or wrong. */
export default defineConfig({
  test: {
    environment: 'node',
    testTimeout: 120_000,
    sequence: { sequencer: QuickFirst },
    setupFiles: ['tests/setup/sameCases.ts', 'tests/faults/firstFailure.ts'],
    exclude: isQuickRun() ? leftOutWhenQuick.map((name) => `tests/properties/${name}.test.ts`) : [],
    include: ['tests/published/*.test.ts', 'tests/properties/*.test.ts', 'tests/physics/**/*.test.ts'],
  },
});

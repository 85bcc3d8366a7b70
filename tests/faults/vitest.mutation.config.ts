import { defineConfig } from 'vitest/config';

/** What may notice a mutant: published numbers, properties and claims about the core. Recorded results would notice any change, right or wrong. */
export default defineConfig({
  test: {
    environment: 'node',
    testTimeout: 120_000,
    setupFiles: ['tests/setup/sameCases.ts'],
    include: ['tests/published/*.test.ts', 'tests/properties/*.test.ts', 'tests/physics/**/*.test.ts'],
  },
});

import vue from '@vitejs/plugin-vue'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  plugins: [vue()],
  test: {
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    // Whole demos are derived in some tests, on machines that do other work beside.
    testTimeout: 60_000,
    coverage: {
      include: ['src/core/**/*.ts'],
      exclude: ['**/index.ts', '**/*.types.ts'],
      thresholds: { lines: 95 },
    },
  },
})

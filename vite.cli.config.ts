import { defineConfig } from 'vite'
import vue from '@vitejs/plugin-vue'

/** Bundles the command line into one file that Node runs alone, with its libraries and tables inside. */
export default defineConfig({
  plugins: [vue()],
  publicDir: false,
  ssr: { noExternal: true, target: 'node' },
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist-cli',
    target: 'node20',
    minify: false,
    // Decoders that a library loads when needed go into the one file too.
    rollupOptions: {
      output: { entryFileNames: 'lynchet.mjs', format: 'es', codeSplitting: false },
    },
  },
})

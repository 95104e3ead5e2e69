import { createHash } from 'node:crypto'
import { readdirSync } from 'node:fs'
import { defineConfig, type Plugin } from 'vite'
import vue from '@vitejs/plugin-vue'

/** Emits sw.js with the list of built files, so that the app opens with no network. */
function offline(): Plugin {
  return {
    name: 'offline',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const files = [...Object.keys(bundle), ...readdirSync('public')].filter(
          (file) => !file.endsWith('.map'),
        )
        const version = createHash('sha256')
          .update(files.join('|'))
          .update(JSON.stringify(bundle['index.html'] ?? ''))
          .digest('hex')
          .slice(0, 12)
        this.emitFile({ type: 'asset', fileName: 'sw.js', source: serviceWorker(version, files) })
      },
    },
  }
}

/** The offline worker's source: it answers from its own copy first. */
function serviceWorker(version: string, files: string[]): string {
  return `const NAME='lynchet-${version}',FILES=${JSON.stringify(['./', ...files])};
addEventListener('install',e=>e.waitUntil(caches.open(NAME).then(c=>c.addAll(FILES))));
addEventListener('activate',e=>e.waitUntil(caches.keys().then(k=>Promise.all(k.filter(x=>x.startsWith('lynchet-')&&x!==NAME).map(x=>caches.delete(x)))).then(()=>clients.claim())));
addEventListener('fetch',e=>{const r=e.request;if(r.method!=='GET'||new URL(r.url).origin!==location.origin)return;
e.respondWith(caches.open(NAME).then(c=>c.match(r.mode==='navigate'?'./':r,{ignoreVary:true,ignoreSearch:r.mode==='navigate'})).then(m=>m||fetch(r)))});
`
}

export default defineConfig({
  root: 'src/app',
  base: './',
  publicDir: '../../public',
  plugins: [vue(), offline()],
  worker: { format: 'es' },
  define: { __VUE_OPTIONS_API__: false },
  build: { target: 'es2022', outDir: '../../dist', emptyOutDir: true },
})

/// <reference types="vite/client" />
// typescript-eslint cannot read .vue files and needs this; vue-tsc resolves the real component.
declare module '*.vue' {
  import type { DefineComponent } from 'vue'
  const component: DefineComponent<Record<string, unknown>, Record<string, unknown>, unknown>
  export default component
}

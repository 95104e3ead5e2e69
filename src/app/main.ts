import { createPinia } from 'pinia'
import { createApp } from 'vue'
import '@fontsource-variable/newsreader/opsz.css'
import '@fontsource-variable/newsreader/opsz-italic.css'
import '@fontsource-variable/sofia-sans-semi-condensed'
import './style/app.css'
import App from './App.vue'

createApp(App).use(createPinia()).mount('#app')

if (import.meta.env.PROD && 'serviceWorker' in navigator)
  addEventListener('load', () => void navigator.serviceWorker.register('./sw.js'))

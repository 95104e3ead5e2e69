import { createPinia } from 'pinia'
import { createApp } from 'vue'
import '@fontsource-variable/newsreader/opsz.css'
import '@fontsource-variable/newsreader/opsz-italic.css'
import '@fontsource-variable/sofia-sans-semi-condensed'
import App from './App.vue'
import './style/app.css'

createApp(App).use(createPinia()).mount('#app')

if (import.meta.env.PROD && 'serviceWorker' in navigator)
  addEventListener('load', () => void navigator.serviceWorker.register('./sw.js'))

import './look/fonts.css'
import './look/tokens.css'
import './look/base.css'
import './look/layout.css'
import './look/rail.css'
import './look/grid.css'
import './look/editor.css'
import './look/margin.css'
import './look/pages.css'
import './look/print.css'
import { render } from 'solid-js/web'
import { App } from './App'
import { firstNumbers } from './shell/firstNumbers'
import { prepareLanguage } from './shell/language'

const root = document.getElementById('root')
if (root) void prepareLanguage().then(() => render(() => <App />, root))

/** What keeps the page for the next visit comes so long after the first numbers, in milliseconds. */
const OFFLINE_AFTER = 2000
if (import.meta.env.MODE === 'production')
  void firstNumbers.then(() =>
    setTimeout(() => void import('./offline/keepOffline').then((part) => part.keepOffline()), OFFLINE_AFTER),
  )

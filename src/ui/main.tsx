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
import { afterFirstNumbers } from './shell/firstNumbers'
import { prepareLanguage } from './shell/language'

const root = document.getElementById('root')
if (root) void prepareLanguage().then(() => render(() => <App />, root))

/** The page's own numbers come first, then what keeps it for the next visit; milliseconds. */
const OFFLINE_AFTER = 2000
if (import.meta.env.MODE === 'production')
  void afterFirstNumbers(OFFLINE_AFTER).then(async () => (await import('./offline/keepOffline')).keepOffline())

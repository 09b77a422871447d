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

const root = document.getElementById('root')
if (root) render(() => <App />, root)

import { lazy, Match, Suspense, Switch } from 'solid-js'
import { prepareFormulas } from '../shell/formulas'
import { opened, openOver } from './opened'

const CellMenu = lazy(() => import('./CellMenu').then((m) => ({ default: m.CellMenu })))
const CarryDialog = lazy(() => import('../carry/CarryDialog').then((m) => ({ default: m.CarryDialog })))
const FindQuantity = lazy(() => import('./FindQuantity').then((m) => ({ default: m.FindQuantity })))
const PasteReportView = lazy(() => import('./PasteReportView').then((m) => ({ default: m.PasteReportView })))
const RowEditor = lazy(() =>
  Promise.all([import('../rows/RowEditor'), prepareFormulas()]).then(([m]) => ({ default: m.RowEditor })),
)

/** What opens over the grid, fetched when it first does. */
export function GridParts() {
  const of = <W extends string>(what: W) => {
    const now = opened()
    return now?.what === what ? (now as Extract<typeof now, { what: W }>) : null
  }
  return (
    <Suspense>
      <Switch>
        <Match when={of('cells')}>{(menu) => <CellMenu anchor={menu().anchor} />}</Match>
        <Match when={of('find')}>
          <FindQuantity />
        </Match>
        <Match when={of('carry')}>{(carry) => <CarryDialog scenario={carry().scenario} />}</Match>
        <Match when={of('row')}>
          {(form) => <RowEditor what={form().act} row={form().row} onClose={() => openOver(null)} />}
        </Match>
        <Match when={of('report')}>{(shown) => <PasteReportView report={shown().report} />}</Match>
      </Switch>
    </Suspense>
  )
}

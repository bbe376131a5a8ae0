/**
 * The page's first script, ahead of office.js, so that a page whose other scripts do not come says so: a script that is
 * missing at once, one that hangs after a while. Where everything comes late, the pane takes its place all the same.
 */
import { button, el, fill } from '../parts/elements'
import { patience, whyWaiting } from './whyWaiting'

let lost: string | null = null

function say(): void {
  const place = document.querySelector('#pane > .waiting')
  if (place === null) return
  const office = document.querySelector<HTMLScriptElement>('script[src*="office.js"]')?.src ?? ''
  const pane = 'paneScript' in document.documentElement.dataset
  const words = whyWaiting({ lost, office: 'Office' in window, pane }, office)
  const again = button('Try again', () => {
    window.location.reload()
  })
  fill(
    place,
    el('h1', {}, 'Limbwright'),
    el('p', { role: 'alert' }, words),
    el('div', { class: 'actions' }, again)
  )
}

window.addEventListener(
  'error',
  ({ target }) => {
    if (!(target instanceof HTMLScriptElement)) return
    lost = target.src
    say()
  },
  true
)
window.setTimeout(say, patience)

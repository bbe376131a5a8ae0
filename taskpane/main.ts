import { el } from './parts/elements'
import type { Engine } from './engine'
import { excelSurface } from './excelSurface'
import { Pane } from './pane'
import { planCommand } from './planCommand'

/** A script of its own, which the browser fetches once. */
const documents = () => import('./documents')

const engine: Engine = {
  readSheets: async (...order) => (await documents()).readSheets(...order),
  planByRules: async (...order) => (await documents()).planByRules(...order),
  planTrees: async (...order) => (await documents()).planTrees(...order),
  weighing: documents,
  detailsOfDay: async (...order) => (await documents()).detailsOfDay(...order),
  priceByRates: async (...order) => (await documents()).priceByRates(...order),
  describeUsersSheet: async (...order) => (await documents()).describeUsersSheet(...order),
  describeDocuments: async (...order) => (await documents()).describeDocuments(...order),
  specificationOf: async (...order) => (await documents()).treeSpecificationText(...order),
  drawings: documents
}

/** Today where the person sits, year-month-day. */
function today(): string {
  const now = new Date()
  const two = (number: number): string => String(number).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** The whole pane is one sentence. */
function only(root: HTMLElement, sentence: string): null {
  root.replaceChildren(el('main', { class: 'waiting' }, el('h1', {}, 'Limbwright'), el('p', {}, sentence)))
  return null
}

async function begin(root: HTMLElement): Promise<Pane | null> {
  try {
    const { host } = await Office.onReady()
    if (host !== Office.HostType.Excel)
      return only(root, 'Open this pane from a spreadsheet: here there is no selection to plan.')
    const pane = new Pane(root, { surface: excelSurface, engine, today })
    await pane.start()
    return pane
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    return only(root, `The pane could not start (${why}). Close it and open it again.`)
  }
}

document.documentElement.dataset.paneScript = 'ran'
const root = document.getElementById('pane')
// Where office.js did not come, the page's first script says so.
if (root !== null && typeof Office !== 'undefined') {
  const ready = begin(root)
  Office.actions.associate(
    'planSelection',
    (event: Office.AddinCommands.Event) => void planCommand(event, ready)
  )
}

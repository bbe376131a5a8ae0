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
  weighing: async () => (await documents()).weighedFor,
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

async function begin(): Promise<Pane | null> {
  const { host } = await Office.onReady()
  const root = document.getElementById('pane')
  if (root === null) return null
  if (host !== Office.HostType.Excel) {
    const sentence = 'Open this pane from a spreadsheet: here there is no selection to plan.'
    root.replaceChildren(el('main', { class: 'waiting' }, el('h1', {}, 'Limbwright'), el('p', {}, sentence)))
    return null
  }
  const pane = new Pane(root, { surface: excelSurface, engine, today })
  await pane.start()
  return pane
}

const ready = begin()
Office.actions.associate(
  'planSelection',
  (event: Office.AddinCommands.Event) => void planCommand(event, ready)
)

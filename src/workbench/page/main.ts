/** Starts the page: functions, grid with the sample inventory, host, pane, and the buttons of the bar. */
import { sampleInventory, sampleSheetName } from '../../file/sampleInventory'
import { plainContents } from '../files/openFile'
import { createHost } from '../host/host'
import { createDesk, type Desk } from './desk'
import { followDivider } from './divider'
import { loadFunctions } from './functionsFile'
import { createPaneFrame } from './paneFrame'
import { createSaying } from './saying'

const element = (id: string) => document.getElementById(id) as HTMLElement
const sample = () => plainContents('Sample inventory (invented).xlsx', sampleSheetName, sampleInventory)

function download(name: string, bytes: Uint8Array): void {
  const link = document.createElement('a')
  const kind = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'
  link.href = URL.createObjectURL(new Blob([bytes as BlobPart], { type: kind }))
  link.download = `${name.replace(/\.[^.]*$/, '')}.xlsx`
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10000)
}

function followCell(desk: Desk, saying: ReturnType<typeof createSaying>): void {
  const show = () => {
    const found = desk.selectedMessage()
    saying.cell(found && `${found.code} ${found.message}`)
  }
  desk.book.on('selection', show)
  desk.book.on('changed', show)
  desk.onMessage(show)
}

/** The grid measures texts as it draws them, so the font of the sheets has to be there first. */
async function loadSheetFont(): Promise<void> {
  await Promise.allSettled(['11pt Calibri', 'bold 11pt Calibri'].map((font) => document.fonts.load(font)))
}

async function start(): Promise<void> {
  const saying = createSaying()
  const darkness = window.matchMedia('(prefers-color-scheme: dark)')
  const [functions] = await Promise.all([loadFunctions(), loadSheetFont()])
  const desk = await createDesk(element('grid'), darkness.matches, functions, sample())
  darkness.addEventListener('change', () => desk.dark(darkness.matches))
  Object.assign(window, { limbwrightHost: createHost(desk.book) })

  const pane = createPaneFrame()
  const divider = followDivider((shown) => {
    const button = element('pane')
    button.textContent = shown ? 'Close pane' : 'Open pane'
    button.setAttribute('aria-expanded', String(shown))
  })
  const showName = () => {
    element('file').textContent = desk.fileName()
    document.title = `${desk.fileName()} – Limbwright workbench`
  }
  /** Runs a command and says what went wrong where it fails. */
  const onClick = (id: string, command: () => Promise<void> | void) => {
    element(id).addEventListener('click', () => {
      void desk
        .finishEditing()
        .then(command)
        .catch((error: unknown) => saying.say(error instanceof Error ? error.message : String(error), true))
    })
  }
  const chooser = element('choose') as HTMLInputElement
  onClick('open', () => chooser.click())
  chooser.addEventListener('change', () => {
    const file = chooser.files?.[0]
    chooser.value = ''
    if (!file) return
    void file.arrayBuffer().then(async (buffer) => {
      const { opened, sentence } = await desk.openFile(file.name, new Uint8Array(buffer))
      if (opened) pane.load()
      showName()
      saying.say(sentence, !opened)
    })
  })
  onClick('save', async () => download(desk.fileName(), await desk.save()))
  onClick('sample', () => {
    desk.open(sample())
    pane.load()
    showName()
    saying.say('The sample inventory is open. It is invented, and a few of its cells are wrong on purpose.')
  })
  onClick('plan', () => {
    divider.show(true)
    return pane.run('planSelection')
  })
  onClick('pane', () => divider.show(!divider.shown()))

  /** Where focus has gone into the pane, what was being typed counts; another window leaves the cell as it is. */
  window.addEventListener('blur', () => {
    if (document.activeElement === element('frame')) void desk.finishEditing()
  })

  showName()
  followCell(desk, saying)
  pane.load()
  document.documentElement.dataset['ready'] = 'yes'
}

void start().catch((error: unknown) => {
  createSaying().say(
    `The workbench did not start: ${error instanceof Error ? error.message : String(error)}`,
    true
  )
})

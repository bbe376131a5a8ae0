/** The pane's frame: a document of its own that loads office.js, the cell functions and the pane, as in Excel. */

interface PaneWindow extends Window {
  Office?: {
    actions?: { _association?: { mappings: Record<string, (event: CommandEvent) => unknown> } }
  }
}

/** What Excel hands to a command of the ribbon. */
interface CommandEvent {
  source: { id: string }
  completed(): void
}

const page = '/addin/taskpane.html'
/** How long a command may wait for the pane to load, in milliseconds. */
const patience = 15000

export interface PaneFrame {
  /** Loads the pane again, as Excel does for another workbook. */
  load(): void
  /** Runs a command of the ribbon, as ExecuteFunction does; resolves when it says it has completed. */
  run(command: string): Promise<void>
}

export function createPaneFrame(): PaneFrame {
  const frame = document.getElementById('frame') as HTMLIFrameElement
  const find = (command: string) =>
    (frame.contentWindow as PaneWindow | null)?.Office?.actions?._association?.mappings[command.toUpperCase()]

  async function waitFor(command: string): Promise<(event: CommandEvent) => unknown> {
    const end = Date.now() + patience
    for (;;) {
      const action = find(command)
      if (action) return action
      if (Date.now() > end) throw new Error('The pane has not loaded: reload the page and try again.')
      await new Promise((resolve) => setTimeout(resolve, 50))
    }
  }

  return {
    load() {
      if (frame.src === '') frame.src = page
      else frame.contentWindow?.location.reload()
    },
    async run(command) {
      const action = await waitFor(command)
      await new Promise<void>((resolve) => void action({ source: { id: command }, completed: resolve }))
    }
  }
}

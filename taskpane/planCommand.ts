import type { Pane } from './pane'

/** Shows the pane where the host lets it; a host that does not leaves the pane to be opened by hand. */
async function showPane(): Promise<void> {
  try {
    await Office.addin.showAsTaskpane()
  } catch {
    // The plan is made all the same and stands in the pane when it is opened.
  }
}

/** The ribbon's "Plan inventory": shows the pane, plans, and always tells the host that the command has ended. */
export async function planCommand(
  event: Pick<Office.AddinCommands.Event, 'completed'>,
  ready: Promise<Pick<Pane, 'planSelection'> | null>
): Promise<void> {
  try {
    await showPane()
    const pane = await ready
    await pane?.planSelection()
  } finally {
    event.completed()
  }
}

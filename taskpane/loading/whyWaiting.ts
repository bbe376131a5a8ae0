/** How long a person looks at a pane that only waits before it says for what, in milliseconds. */
export const patience = 12_000

/** What has come of what the pane needs. */
export interface Arrived {
  /** The address of a script that the browser could not fetch. */
  lost: string | null
  /** Whether office.js stands. */
  office: boolean
  /** Whether the pane's own script ran. */
  pane: boolean
}

/** The part of an address that a network is told to allow; empty where it is none. */
function hostOf(address: string): string {
  try {
    return new URL(address).host
  } catch {
    return ''
  }
}

/** For a spreadsheet that answers nothing: it goes on when the person has ended what holds it up. */
export const spreadsheetBusy =
  'The spreadsheet has not answered yet. Finish what is being typed into a cell and close any dialog that stands open ' +
  'there: the pane then goes on by itself.'

/** What keeps the pane from standing, and what to do. `officeAddress` is where the page loads office.js from. */
export function whyWaiting({ lost, office, pane }: Arrived, officeAddress: string): string {
  const remedy =
    'Check the connection, or ask whoever runs your network to allow that address; then try again.'
  const from = (address: string): string => (hostOf(address) === '' ? '' : ` from ${hostOf(address)}`)
  if (lost !== null && hostOf(lost) !== hostOf(officeAddress))
    return `A part of the pane could not be loaded${from(lost)}. ${remedy}`
  if (lost !== null || !office)
    return `Microsoft’s part of the pane, office.js, could not be loaded${from(officeAddress)}. ${remedy}`
  if (!pane) return 'The pane’s own script has not come yet. Check the connection, then try again.'
  return `${spreadsheetBusy} Otherwise try again.`
}

/** Turns what happens in the book into the messages that the client's event handlers wait for. */
import { areaAddress } from '../../../shared/a1Notation'
import { eventMessage } from './protocol'
import { anySheet, isWanted, type Session } from './session'

/** Event types of the client library, and the target that stands for the whole workbook. */
const workbookSelection = 2
const sheetChanged = 10
const sheetActivated = 11
const sheetSelection = 14
const wholeWorkbook = 'Workbook'

/** Follows the book until the returned function is called. */
export function followEvents(session: Session, send: (message: string) => void): () => void {
  let active = session.book.activeSheet()
  const sendTo = (
    type: number,
    kind: 'selection' | 'changed' | 'activated',
    sheetId: string,
    body: object
  ) => {
    if (isWanted(session, kind, sheetId)) send(eventMessage(type, sheetId, body))
    if (isWanted(session, kind, anySheet)) send(eventMessage(type, wholeWorkbook, body))
  }
  const stops = [
    session.book.on('selection', (worksheetId) => {
      send(eventMessage(workbookSelection, '', {}))
      const { areas } = session.book.selection()
      const address = areas.map(areaAddress).join(',')
      sendTo(sheetSelection, 'selection', worksheetId, { address, worksheetId })
      if (worksheetId !== active) {
        active = worksheetId
        sendTo(sheetActivated, 'activated', worksheetId, { worksheetId })
      }
    }),
    session.book.on('changed', (worksheetId, changed) => {
      const area = changed ?? session.book.usedArea(worksheetId, false)
      const address = area ? areaAddress(area) : 'A1'
      sendTo(sheetChanged, 'changed', worksheetId, {
        address,
        worksheetId,
        changeType: 'RangeEdited',
        source: 'Local'
      })
    })
  ]
  return () => {
    for (const stop of stops) stop()
  }
}

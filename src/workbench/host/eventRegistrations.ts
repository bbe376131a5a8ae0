/** The calls by which the client asks for the events of one sheet, or of all of them, and gives them up again. */
import { registerEvent, type EventKind, type SheetTarget } from './session'

export function eventRegistrations<T>(sheetOf: (value: T) => SheetTarget) {
  const registration = (kind: EventKind, step: 1 | -1) => (value: T) => {
    const { session, sheetId } = sheetOf(value)
    registerEvent(session, kind, sheetId, step)
  }
  return {
    _RegisterSelectionChangedEvent: registration('selection', 1),
    _UnregisterSelectionChangedEvent: registration('selection', -1),
    _RegisterDataChangedEvent: registration('changed', 1),
    _UnregisterDataChangedEvent: registration('changed', -1),
    _RegisterActivatedEvent: registration('activated', 1),
    _UnregisterActivatedEvent: registration('activated', -1)
  }
}

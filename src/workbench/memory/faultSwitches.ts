/** Faults of Excel's that a test raises on demand. All are off in a new book. */
import { BookFault, type BookRequest } from '../book'

export class FaultSwitches {
  /** So many requests meet a user who is typing in a cell. One that waits for that lets the user finish. */
  cellEditRequests = 0
  /** So many requests fail for no reason that the client could know. */
  failingRequests = 0
  /** So many requests come while another workbook is in front. */
  inactiveRequests = 0
  /** Names of chart sheets: no worksheets, and their names are taken. */
  readonly chartSheets = new Set<string>()
  /** Whether this workbook counts its days from 1904. */
  countsFrom1904 = false
  /** Members that are refused whenever they are used, by type and name: PageLayout.zoom. */
  readonly refusedMembers = new Set<string>()
  /** No sheet can be added, renamed or deleted. */
  protectedWorkbook = false
  /** Ids of sheets that cannot be changed. */
  readonly protectedSheets = new Set<string>()
  /** The most cells that one request may read. */
  mostResponseCells = Infinity
  /** The longest request, in characters. */
  mostRequestCharacters = Infinity
  /** Called before each request with its number: here a co-author changes the book. */
  beforeRequest: ((number: number) => void) | null = null

  private cellsRead = 0

  begin(request: BookRequest): void {
    this.cellsRead = 0
    this.beforeRequest?.(request.number)
    if (request.characters > this.mostRequestCharacters)
      throw new BookFault('RequestPayloadSizeLimitExceeded', 'The request is too large.')
    this.refuseWhileEditing(request.waitsForCellEdit)
    if (this.inactiveRequests > 0) {
      this.inactiveRequests -= 1
      throw new BookFault('InactiveWorkbook', 'This workbook is not the active one.')
    }
    if (this.failingRequests > 0) {
      this.failingRequests -= 1
      throw new BookFault('GeneralException', 'There was an internal error.')
    }
  }

  /** Counts the cells that a request reads. */
  count(cells: number): void {
    this.cellsRead += cells
    if (this.cellsRead > this.mostResponseCells)
      throw new BookFault('ResponsePayloadSizeLimitExceeded', 'The answer is too large.')
  }

  private refuseWhileEditing(waits: boolean): void {
    if (this.cellEditRequests === 0) return
    this.cellEditRequests = waits ? 0 : this.cellEditRequests - 1
    if (!waits) throw new BookFault('InvalidOperationInCellEditMode', 'A cell is being edited.')
  }
}

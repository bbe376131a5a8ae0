/**
 * Whatever happens at whichever request of a Write: nobody else's cells change, each document of ours is the old one or the
 * new one, one sentence says what happened, and the same action succeeds afterward.
 */
import { isProblem } from '../../../src/excel/failures'
import type { SheetDescription } from '../../../src/sheets/sheet'
import { documentsOf, sentenceOf, startWriting, type WritingBook } from './writingBook'

const documents = ['Cut plan', 'Estimate working']
const plans: [SheetDescription[], SheetDescription[]] = [documentsOf('a'), documentsOf('b')]
let office: WritingBook
/** What a document of each plan comes to, and which of the two stands. */
const wanted: Record<string, string>[] = []
let standing: 0 | 1 = 1
let requests = 0
let firstRequests = 0

/** Something that happens to the workbook beside the add-in. */
interface Happening {
  /** What it may do to the sheets that are ours, apart from their being old or new. */
  readonly takes?: string
  /** At its request; `lasting` for all that come after as well. */
  begin(lasting: boolean): void
  /** What the user or the machine puts right before trying again. */
  end(): void
  /** It does not stop a Write at any request. */
  readonly harmless?: true
  /** It comes once or stays, the clean-up too. */
  readonly once?: true
  /** Tried at the first writing as well, where there is no document yet. */
  readonly atFirst?: true
}

const faults = () => office.book.faults
const times = (lasting: boolean) => (lasting ? Infinity : 1)
const onlyChange = { row: 1, column: 0, rows: 1, columns: 1 }
let before: unknown[][] = []

const happenings: Record<string, Happening> = {
  'the spreadsheet fails': {
    once: true,
    atFirst: true,
    begin: (lasting) => (faults().failingRequests = times(lasting)),
    end: () => (faults().failingRequests = 0)
  },
  'a person types in a cell': {
    once: true,
    atFirst: true,
    begin: (lasting) => (faults().cellEditRequests = times(lasting)),
    end: () => (faults().cellEditRequests = 0)
  },
  'another workbook comes to the front': {
    once: true,
    atFirst: true,
    begin: (lasting) => (faults().inactiveRequests = times(lasting)),
    end: () => (faults().inactiveRequests = 0)
  },
  'the workbook is protected': {
    atFirst: true,
    begin: () => (faults().protectedWorkbook = true),
    end: () => (faults().protectedWorkbook = false)
  },
  'the document is protected': {
    begin: () => faults().protectedSheets.add(office.idOf('Cut plan')),
    end: () => faults().protectedSheets.clear()
  },
  'the inventory is protected': {
    begin: () => faults().protectedSheets.add(office.sheetId),
    end: () => faults().protectedSheets.clear(),
    harmless: true
  },
  'the document is renamed': {
    begin: () => rename('Cut plan', 'My plan'),
    end: () => rename('My plan', 'Cut plan')
  },
  'the document is deleted': {
    takes: 'Cut plan',
    begin: () => {
      const id = office.idOf('Cut plan')
      if (id !== '') office.book.deleteSheet(id)
    },
    // Where its name had just been looked up, the new one is called otherwise, which a person may undo.
    end: () => {
      rename('Cut plan (2)', 'Cut plan')
    }
  },
  'the sheet that is being written is deleted': {
    begin: () => {
      for (const { id, name } of office.book.sheets())
        if (name.endsWith(' (draft)')) office.book.deleteSheet(id)
    },
    end: () => undefined
  },
  'the sheet that is being written is shown and renamed': {
    begin: () => {
      for (const { id, name } of office.book.sheets())
        if (name.endsWith(' (draft)')) office.book.renameSheet(id, 'What is this')
    },
    end: () => undefined
  },
  'the inventory is renamed': {
    atFirst: true,
    begin: () => rename('Trees', 'Street'),
    end: () => rename('Street', 'Trees')
  },
  'a co-author changes the inventory': {
    begin: () => {
      before = office.book.values(office.sheetId, onlyChange)
      office.book.setValues(office.sheetId, onlyChange, [['changed']])
    },
    end: () => office.book.setValues(office.sheetId, onlyChange, before as never)
  },
  'the requests become too large': {
    begin: () => (faults().mostRequestCharacters = 500),
    end: () => (faults().mostRequestCharacters = Infinity)
  }
}

function rename(from: string, to: string): void {
  const id = office.idOf(from)
  if (id !== '') office.book.renameSheet(id, to)
}

/** At that request of what follows, something happens; gives how many requests there were. */
async function at<T>(request: number, happening: () => void, work: () => Promise<T>): Promise<[T, number]> {
  let count = 0
  office.book.faults.beforeRequest = () => {
    count += 1
    if (count === request) happening()
  }
  try {
    return [await work(), count]
  } finally {
    office.book.faults.beforeRequest = null
  }
}

const foreign = () => [office.hash(office.sheetId), office.hash(office.idOf('Mine'))]
/** What is still being written is hidden and marked: it is no document yet. */
const ours = () =>
  documents.map((name) => {
    const marked = office
      .drafts()
      .some((formula) => formula.includes(`${name}'!`) || formula.includes(`${name}!`))
    const id = marked ? '' : office.idOf(name)
    return id === '' ? '' : office.hash(id)
  })

beforeAll(async () => {
  office = await startWriting()
  for (const plan of plans) {
    const written = await office.write(plan)
    if (isProblem(written)) throw new Error(written.message)
    wanted.push(Object.fromEntries(documents.map((name) => [name, office.hash(office.idOf(name))])))
  }
  ;[, requests] = await at(
    0,
    () => undefined,
    () => office.write(plans[1])
  )
  clear()
  ;[, firstRequests] = await at(
    0,
    () => undefined,
    () => office.write(plans[1])
  )
})

/** Takes away all that we wrote. */
function clear(): void {
  for (const { id, name } of office.book.sheets())
    if (name !== 'Trees' && name !== 'Mine') office.book.deleteSheet(id)
  for (const { name } of office.book.names()) office.book.deleteName(name)
}

test('the two plans differ on every sheet, and there are many requests to go wrong', () => {
  for (const name of documents) expect(wanted[0]![name]).not.toBe(wanted[1]![name])
  expect(requests).toBeGreaterThan(20)
  expect(firstRequests).toBeGreaterThan(20)
})

interface Outcome {
  foreign: string[]
  /** Of each document: old, new, gone or half. */
  ours: string[]
  sentences: number
  left: boolean
  after: string[]
  names: string[]
  drafts: string[]
}

function state(name: string, hash: string): string {
  if (hash === '') return 'gone'
  if (hash === wanted[standing]![name]) return 'old'
  return hash === wanted[1 - standing]![name] ? 'new' : 'half'
}

/** Writes the other plan while that happens at that request, and then again. */
async function live(happening: Happening, request: number, lasting: boolean): Promise<[Outcome, boolean]> {
  const next = plans[1 - standing]!
  const [result] = await at(
    request,
    () => {
      happening.begin(lasting)
    },
    () => office.write(next)
  )
  const drafts = office.drafts()
  happening.end()
  const half = ours().map((hash, index) => state(documents[index]!, hash))
  const between = foreign()
  const sentence = sentenceOf(result)
  const left = isProblem(result) && result.code === 'drafts-left'
  const again = await office.write(next)
  if (isProblem(again)) throw new Error(`${String(request)}: ${again.message}`)
  const after = ours().map((hash, index) => state(documents[index]!, hash))
  const outcome = {
    foreign: between,
    ours: half,
    sentences: sentence === '' ? 0 : 1,
    left: left || drafts.length === 0,
    after: [...after, again.missing?.message ?? 'whole'],
    names: office.names().sort(),
    drafts: office.drafts()
  }
  return [outcome, isProblem(result)]
}

const cases = Object.entries(happenings).flatMap(([name, happening]) => {
  const { once = false, atFirst = false } = happening
  return [
    ...(once ? [{ name, when: 'once', happening, lasting: false, replacing: true }] : []),
    { name, when: 'and stays', happening, lasting: true, replacing: true },
    ...(atFirst
      ? [{ name, when: 'and stays at the first writing', happening, lasting: true, replacing: false }]
      : [])
  ]
})

test.each(cases)('$name, $when', async ({ happening, lasting, replacing }) => {
  let refusals = 0
  const last = replacing ? requests : firstRequests
  const may = [replacing ? 'old' : 'gone', 'new', ...(happening.takes === undefined ? [] : ['gone'])]
  for (let request = 1; request <= last; request++) {
    if (!replacing) clear()
    const untouched = foreign()
    const [outcome, refused] = await live(happening, request, lasting)
    if (refused) refusals += 1
    expect([request, outcome]).toEqual([
      request,
      {
        foreign: untouched,
        ours: outcome.ours.map((each) => (may.includes(each) ? each : may.join(' or '))),
        // One sentence where it was refused; none where nothing is missing.
        sentences: refused ? 1 : outcome.sentences,
        left: true,
        after: ['new', 'new', 'whole'],
        names: [...documents, 'Mine', 'Trees'].sort(),
        drafts: []
      }
    ])
    standing = (1 - standing) as 0 | 1
  }
  if (happening.harmless) expect(refusals).toBe(0)
})

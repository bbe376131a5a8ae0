import { inventoryOf } from '../../bench/hardTrees'
import { hardTrees } from '../../bench/knownHardTrees'
import { planSheets, type Progress } from '../../taskpane/planning'
import { fakeEngine } from './fakeSurface'
import { longPlan } from './inventedPlan'
import { realEngine } from './realEngine'

const read = { sheets: [], range: null }

/** A clock that moves on by so many milliseconds each time it is read. */
function clockOf(step: number): void {
  let now = 0
  jest.spyOn(performance, 'now').mockImplementation(() => (now += step))
}

afterEach(() => {
  jest.restoreAllMocks()
})

test('planning yields to the browser after 30 ms of work and says how far it is', async () => {
  clockOf(20)
  const seen: Progress[] = []
  const planned = await planSheets(
    fakeEngine(longPlan(6)),
    read,
    {},
    {
      date: '2031-03-02',
      signal: new AbortController().signal,
      onProgress: (progress) => seen.push(progress)
    }
  )
  expect(planned?.plan.trees).toHaveLength(6)
  const during = seen.filter(({ doing }) => doing === 'Planning the trees')
  expect(during).toEqual([
    { doing: 'Planning the trees', done: 2, total: 6 },
    { doing: 'Planning the trees', done: 4, total: 6 },
    { doing: 'Planning the trees', done: 6, total: 6 }
  ])
})

test('a press of cancel is heard between two trees', async () => {
  clockOf(40)
  const control = new AbortController()
  let begun = 0
  const engine = fakeEngine(longPlan(1000), () => {
    begun += 1
    if (begun === 3) setTimeout(() => control.abort(), 0)
  })
  const planned = await planSheets(
    engine,
    read,
    {},
    {
      date: '2031-03-02',
      signal: control.signal,
      onProgress: () => undefined
    }
  )
  expect(planned).toBeNull()
  expect(begun).toBeLessThan(10)
})

test('a press of cancel is heard within one tree that takes its time', async () => {
  clockOf(40)
  const block = inventoryOf(hardTrees.find(({ limbs }) => limbs.some(({ on }) => on !== null))!)
  const sheets = [{ name: 'Trees', top: 0, left: 0, rows: block.rows }]
  const control = new AbortController()
  const seen: Progress[] = []
  const planned = (signal: AbortSignal, onProgress: (progress: Progress) => void) =>
    planSheets(realEngine, { sheets, range: null }, {}, { date: '2031-03-02', signal, onProgress })
  const whole = await planned(new AbortController().signal, () => undefined)
  expect(whole?.plan.trees).toHaveLength(1)
  const canceled = await planned(control.signal, (progress) => {
    seen.push(progress)
    if (seen.filter(({ doing }) => doing === 'Planning the trees').length === 2)
      setTimeout(() => control.abort(), 0)
  })
  expect(canceled).toBeNull()
  expect(seen.at(-1)).toEqual({ doing: 'Planning the trees', done: 0, total: 1 })
})

test('nothing is read where it was canceled before it began', async () => {
  const control = new AbortController()
  control.abort()
  const engine = fakeEngine()
  const reading = jest.spyOn(engine, 'readSheets')
  const options = { date: '2031-03-02', signal: control.signal, onProgress: () => undefined }
  expect(await planSheets(engine, read, {}, options)).toBeNull()
  expect(reading).not.toHaveBeenCalled()
})

/** @jest-environment jsdom */
/** A spreadsheet that does not answer when the pane opens. */
import { patience, spreadsheetBusy } from '../../taskpane/loading/whyWaiting'
import { Pane } from '../../taskpane/pane'
import { FakeSurface, fakeEngine } from './fakeSurface'
import { announced, readable } from './openPane'

class BusySurface extends FakeSurface {
  answer: () => void = () => undefined
  private readonly busy = new Promise<void>((resolve) => {
    this.answer = resolve
  })
  override async watchSelection(...given: Parameters<FakeSurface['watchSelection']>) {
    await this.busy
    return super.watchSelection(...given)
  }
}

beforeEach(() => jest.useFakeTimers())
afterEach(() => jest.useRealTimers())

test('is told after the wait, without taking the focus, and the pane goes on when it answers', async () => {
  const surface = new BusySurface()
  const root = document.createElement('div')
  document.body.replaceChildren(root)
  const started = new Pane(root, { surface, engine: fakeEngine(), today: () => '2031-03-02' }).start()
  await jest.advanceTimersByTimeAsync(patience - 1)
  expect(readable(root)).not.toContain(spreadsheetBusy)
  await jest.advanceTimersByTimeAsync(1)
  expect(readable(root)).toContain(spreadsheetBusy)
  expect(announced(root)).toBe(spreadsheetBusy)
  expect(document.activeElement).toBe(document.body)
  surface.answer()
  await started
  expect(readable(root)).not.toContain(spreadsheetBusy)
  expect(readable(root)).toContain('rows')
})

test('nothing is told of a spreadsheet that answers in time', async () => {
  const surface = new BusySurface()
  const root = document.createElement('div')
  const started = new Pane(root, { surface, engine: fakeEngine(), today: () => '2031-03-02' }).start()
  await jest.advanceTimersByTimeAsync(1000)
  surface.answer()
  await started
  await jest.advanceTimersByTimeAsync(patience)
  expect(announced(root)).not.toBe(spreadsheetBusy)
})

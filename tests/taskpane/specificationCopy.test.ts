/** @jest-environment jsdom */
import { cautions } from '../../src/sheets/cautions'
import { treeSpecificationText } from '../../src/sheets/specification/specification'
import { samplePlan } from '../sheets/samplePlan'
import { fakeEngine, FakeSurface } from './fakeSurface'
import { inventedPlan } from './inventedPlan'
import { announced, openPane, press, readable, settle } from './openPane'

const wanted = () => {
  const plan = inventedPlan()
  return treeSpecificationText(
    plan,
    plan.trees.find(({ tree }) => tree.id === 'K1')!
  )
}

function withClipboard(writeText: ((text: string) => Promise<void>) | undefined): void {
  const clipboard = writeText === undefined ? undefined : { writeText }
  Object.defineProperty(navigator, 'clipboard', { value: clipboard, configurable: true })
}

function withCopyCommand(command: ((name: string) => boolean) | undefined): void {
  Object.defineProperty(document, 'execCommand', { value: command, configurable: true, writable: true })
}

afterEach(() => {
  withClipboard(undefined)
  withCopyCommand(undefined)
})

async function pressed(engine = fakeEngine()) {
  const { root, pane } = await openPane(new FakeSurface(), engine)
  await pane.planSelection()
  press(root, 'Tree K1')
  const button = press(root, 'Copy specification')
  await settle()
  return { root, button }
}

test('the specification of a tree goes to the clipboard, and the pane says that it did', async () => {
  const written: string[] = []
  withClipboard((text) => {
    written.push(text)
    return Promise.resolve()
  })
  const { root, button } = await pressed()
  expect(written).toEqual([wanted()])
  expect(announced(root)).toBe('The specification of tree K1 is copied: paste it where you need it.')
  expect(readable(root)).toContain('The specification of tree K1 is copied')
  expect(document.activeElement).toBe(button)
})

test('where the clipboard is closed, the older way copies the text of a field, which then is gone', async () => {
  withClipboard(() => Promise.reject(new Error('not allowed')))
  const copied: string[] = []
  withCopyCommand((name) => {
    const field = document.activeElement as HTMLTextAreaElement
    copied.push(name, field.value.slice(field.selectionStart, field.selectionEnd))
    return true
  })
  const { root } = await pressed()
  expect(copied).toEqual(['copy', wanted()])
  expect(announced(root)).toContain('is copied')
  expect(document.querySelector('textarea')).toBeNull()
})

test('where neither way is open, the text stands selected to be copied by hand', async () => {
  const { root } = await pressed()
  const field = root.querySelector('textarea')!
  expect(field.value).toBe(wanted())
  expect(document.activeElement).toBe(field)
  expect([field.selectionStart, field.selectionEnd]).toEqual([0, field.value.length])
  expect(field.labels[0]!.textContent).toBe('Specification')
  expect(announced(root)).toContain('copy it from here')
})

test('a specification that cannot be made says so', async () => {
  const engine = fakeEngine()
  engine.specificationOf = () => Promise.reject(new Error('no script'))
  const { root } = await pressed(engine)
  expect(announced(root)).toContain('The specification could not be made.')
})

describe('the text of one tree', () => {
  const plan = samplePlan()
  const elm = plan.trees.find(({ tree }) => tree.id === 'T03')!
  const text = treeSpecificationText(plan, elm)

  test('has what holds for all, the cautions and this tree alone', () => {
    for (const caution of cautions) expect(text).toContain(caution)
    expect(text).toContain('Tree T03: American elm')
    expect(text).toContain('Cuts, 2026')
    expect(text.indexOf('Tree T03')).toBeLessThan(text.indexOf('For all trees'))
    expect(text).not.toMatch(/\bT0[124-9]\b|\bT1\d\b/)
  })
})

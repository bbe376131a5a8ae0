/** @jest-environment jsdom */
import type { Engine } from '../../taskpane/engine'
import { FakeSurface, fakeEngine } from './fakeSurface'
import { openPane, press, readable, settle } from './openPane'

async function planned(change: (engine: Engine) => void = () => undefined) {
  const engine = fakeEngine()
  change(engine)
  const opened = await openPane(new FakeSurface(), engine)
  press(opened.root, 'Plan')
  await settle()
  return opened.root
}

const drawings = (root: ParentNode) => [...root.querySelectorAll('svg.drawing')]
const words = (root: ParentNode) => drawings(root).map((svg) => svg.getAttribute('aria-label') ?? '')

async function openTree(root: HTMLElement, id: string) {
  press(root, `Tree ${id}`)
  await settle()
}

test('nothing is drawn, nor fetched, before a card is opened', async () => {
  let fetched = 0
  const root = await planned((engine) => {
    const load = engine.drawings
    engine.drawings = () => {
      fetched += 1
      return load()
    }
  })
  expect(drawings(root)).toHaveLength(0)
  expect(fetched).toBe(0)
  await openTree(root, 'K1')
  expect(fetched).toBeGreaterThan(0)
})

test('an opened card shows the tree before its first visit, and after it on request, with everything in words', async () => {
  const root = await planned()
  await openTree(root, 'K1')
  const tree = root.querySelector('.tree-drawing')!
  expect(tree.querySelector('svg')!.getAttribute('role')).toBe('img')
  expect(words(tree)[0]).toMatch(/^Tree K1, before visit 1, 2031, Hornbeam\. .*limb B: reduce at 4\.2 m/)
  const after = tree.querySelector<HTMLInputElement>('input[value=after]')!
  after.click()
  await settle()
  expect(words(tree)).toHaveLength(1)
  expect(words(tree)[0]).toMatch(/^Tree K1, after visit 1, 2031/)
  expect(words(tree)[0]).toMatch(/limb B: reduced to a tip of 6\.7 m/)
})

test('a tree without visits is drawn as surveyed, with no choice of sides', async () => {
  const root = await planned()
  await openTree(root, 'K2')
  expect(words(root)).toEqual([expect.stringMatching(/^Tree K2, as surveyed/)])
  expect(root.querySelector('.sides')).toBeNull()
})

test('the choice of before and after is a group of radio buttons with a name', async () => {
  const root = await planned()
  await openTree(root, 'K1')
  const group = root.querySelector('fieldset.sides')!
  expect(group.querySelector('legend')!.textContent).toBe('Drawing of tree K1 at visit 1')
  const labels = [...group.querySelectorAll('label')]
  expect(labels.map((label) => label.textContent)).toEqual(['Before', 'After'])
  const names = labels.map((label) => label.querySelector('input')!.name)
  expect(new Set(names).size).toBe(1)
})

test('a later visit is drawn when it is opened', async () => {
  const root = await planned()
  await openTree(root, 'K1')
  const before = words(root).length
  press(root, 'Visit 2, 2033')
  await settle()
  expect(words(root)).toHaveLength(before + 1)
  expect(words(root).some((alt) => alt.startsWith('Tree K1, before visit 2, 2033'))).toBe(true)
})

test('the aspect ratio is charted with and without pruning, for the limb that is chosen', async () => {
  const root = await planned()
  await openTree(root, 'K1')
  const chart = () => words(root).find((alt) => alt.includes('aspect ratio forecast'))!
  expect(chart()).toMatch(/^Tree K1, limb B: .* As planned: .* Left alone: /)
  const field = root.querySelector<HTMLSelectElement>('.card-body select')!
  const other = [...field.options].find(({ textContent }) => !textContent.startsWith('Limb B,'))!
  field.value = other.value
  field.dispatchEvent(new Event('change'))
  await settle()
  expect(chart()).toContain(`${other.textContent.split(',')[0]!.replace('Limb', 'limb')}: aspect`)
  expect(words(root).some((alt) => alt.includes('foliage removed against allowance'))).toBe(true)
})

test('the estimate begins with the price of each visit as a chart, in words too', async () => {
  const root = await planned()
  press(root, 'Estimate')
  await settle()
  expect(words(root)).toEqual([
    expect.stringMatching(
      /^All trees: price by visit, XTS before tax.*visit 1, 2031: 1,335\.00; visit 2, 2033: 310\.00\.$/
    )
  ])
})

test('where the drawings cannot be fetched the card says so, and its numbers stand', async () => {
  const root = await planned((engine) => {
    engine.drawings = () => Promise.reject(new Error('offline'))
  })
  await openTree(root, 'K1')
  expect(drawings(root)).toHaveLength(0)
  expect(readable(root)).toContain('The drawing could not be shown.')
  expect(readable(root)).toContain('Allowed removal')
})

/** @jest-environment jsdom */
import { FakeSurface, fakeEngine } from './fakeSurface'
import { inventedPlan, longPlan } from './inventedPlan'
import { openPane, press, readable } from './openPane'

const cards = (root: Element) => [...root.querySelectorAll('.card')]
const cardNames = (root: Element) =>
  [...root.querySelectorAll('.card-name')].map(({ textContent }) => textContent)

test('a closed card tells urgency, life stage, vigor, cuts, and the dose against its allowance', async () => {
  const { root, pane } = await openPane()
  await pane.planSelection()
  const card = cards(root)[0]!
  expect(readable(card)).toContain('Tree K1Hornbeampriority high 64')
  expect(readable(card)).toContain('Young, good vigor, 2 cuts')
  expect(card.querySelector('.dose-words')?.textContent).toBe('Foliage taken: 15\u00a0% of 25\u00a0%')
  expect(card.querySelector<HTMLElement>('.dose-fill')?.style.getPropertyValue('inline-size')).toBe('60.0%')
})

test('an open card tells what to do before why, in the order of the plan', async () => {
  const { root, pane } = await openPane()
  await pane.planSelection()
  const toggle = press(root, 'Tree K1')
  expect(toggle.getAttribute('aria-expanded')).toBe('true')
  const card = cards(root)[0]!
  const headings = [...card.querySelectorAll('h5')].map(({ textContent }) => textContent)
  expect(headings).toEqual(['Remove limb C', 'Reduce limb B'])
  const text = readable(card)
  expect(text).toContain(
    'Cut where the limb is 7.8 cm, about 4.2 m above ground. Leave a live lateral of at least 3.9 cm. ' +
      'Keep all other ends of this limb below 6.7 m.'
  )
  expect(text).toContain('Cut over 5.1 cm: precut so that the bark does not tear.')
  expect(text).toContain('half of the limb, 15 % of the tree (±30 %)')
  expect(text).toContain('Remove at the collar (dead wood); 7.8 cm at the base.')
  expect(text).toContain('A ceiling, not a target.')
  expect(text).toContain('0.80, 0.78 after visit 1 (goal 0.60)')
  expect(text.indexOf('Keep all other ends')).toBeLessThan(text.indexOf('Nearly as thick as the leader'))
})

test('what was weighed and later visits are folded until asked for', async () => {
  const { root, pane } = await openPane()
  await pane.planSelection()
  press(root, 'Tree K1')
  const card = cards(root)[0]!
  expect(readable(card)).not.toContain('Not removed: 0.73 of its stem')
  press(card, 'Why this and not more')
  expect(readable(card)).toContain('Not removed: 0.73 of its stem')
  expect(readable(card)).toContain('Visit 2, 20331 cut, 6 % of 25 %')
  expect(readable(card)).not.toContain('A forecast')
  press(card, 'Visit 2')
  expect(readable(card)).toContain('A forecast: measure again at that visit.')
})

test('limbs that are left alone have their reason, and what remains is stated', async () => {
  const { root, pane } = await openPane()
  await pane.planSelection()
  press(root, 'Tree K1')
  press(root, '1 limb not cut')
  expect(readable(root)).toContain('Retain limb D. Subordinate, priority low (6). Not reduced: ')
  expect(readable(root)).toContain('Limb B: Keep and inspect: no cut of this plan settles it (priority 18).')
})

test('a large cut asks for a written reason', async () => {
  const invented = inventedPlan()
  const plan = {
    ...invented,
    trees: invented.trees.map((tree) => ({
      ...tree,
      visits: tree.visits.map((visit) => ({
        ...visit,
        cuts: visit.cuts.map((cut, at) => (at === 1 ? { ...cut, needsReason: true } : cut))
      }))
    }))
  }
  const { root, pane } = await openPane(new FakeSurface(), fakeEngine(plan))
  await pane.planSelection()
  press(root, 'Tree K1')
  expect(readable(root)).toContain('Cut over 10.2 cm: write down the reason.')
})

test('a cut leads to the limb’s row in the sheet', async () => {
  const { root, surface, pane } = await openPane()
  await pane.planSelection()
  press(root, 'Tree K1')
  press(root, 'Go to row of limb B')
  expect(surface.asked.at(-1)).toBe('go to Survey!B5:F5')
})

describe('a tree with limbs that could not be judged', () => {
  const judged = async (count: number) => {
    const plan = inventedPlan()
    const [first, ...others] = plan.trees
    const limbs = first!.tree.limbs.filter((limb) => limb !== first!.leader.limb)
    const visits = count < limbs.length ? first!.visits : [{ ...first!.visits[0]!, cuts: [], limbs: [] }]
    const changed = { ...first!, visits, remaining: [], notJudged: limbs.slice(0, count) }
    const opened = await openPane(new FakeSurface(), fakeEngine({ ...plan, trees: [changed, ...others] }))
    await opened.pane.planSelection()
    press(opened.root, 'Tree K1')
    return { ...opened, limbs, card: cards(opened.root).find((card) => readable(card).includes('Tree K1'))! }
  }

  test('says so closed and open, and nothing of what remains', async () => {
    const { root, card, limbs } = await judged(3)
    expect(limbs).toHaveLength(3)
    expect(readable(card)).toContain('Young, good vigor, limbs not judged')
    expect(readable(card)).toContain('Limbs not judged: limbs B, C and D. The checks say why.')
    expect(readable(card)).not.toMatch(/no cuts?\b|What remains|0 cuts/i)
    expect(readable(root)).toContain('Limbs of 1 tree not judged.')
  })

  test('says how many where some were', async () => {
    const { card } = await judged(1)
    expect(readable(card)).toContain('Young, good vigor, 2 cuts, 1 of 3 limbs not judged')
  })
})

test('a tree without limbs says that none are listed', async () => {
  const { root, pane } = await openPane()
  await pane.planSelection()
  expect(readable(cards(root)[1]!)).toContain('no limbs listed')
})

describe('many trees', () => {
  const open = () => openPane(new FakeSurface(), fakeEngine(longPlan(120)))

  test('come fifty at a time, most urgent first, and focus goes on with the new ones', async () => {
    const { root, pane } = await open()
    await pane.planSelection()
    expect(cardNames(root).slice(0, 2)).toEqual(['Tree N120', 'Tree N119'])
    expect(cards(root)).toHaveLength(50)
    press(root, 'Show 50 more of 70 trees')
    expect(cards(root)).toHaveLength(100)
    expect(document.activeElement?.textContent).toContain('Tree N70')
    press(root, 'Show 20 more of 20 trees')
    expect(cards(root)).toHaveLength(120)
    expect(() => press(root, 'Show')).toThrow()
  })

  test('are found by id, species or location', async () => {
    const { root, pane } = await open()
    await pane.planSelection()
    const field = root.querySelector<HTMLInputElement>('input[type=search]')!
    expect(root.querySelector(`label[for=${field.id}]`)?.textContent).toBe('Find a tree')
    field.value = ' n11 '
    field.dispatchEvent(new Event('input'))
    expect(cardNames(root)).toHaveLength(11)
    field.value = 'no such'
    field.dispatchEvent(new Event('input'))
    expect(readable(root)).toContain('0 trees found.')
    expect(readable(root)).toContain('No tree matches.')
  })
})

import { fallsIn } from '../../src/season/calendar'
import { notesForTree, timingNotes, type TimingAnswers } from '../../src/season/timing'
import { isInGroup } from '../../src/season/speciesGroups'
import { seasonWindows, standingRules, timingAdvice } from '../../src/season/windows'
import { block, planOf } from '../plan/trees'

/** An invented inventory: an oak, a maple, a tree without a species, each with a limb to cut, and an oak without. */
const inventory = block(
  'Tree | Species | Height (m) | Crown base (m) | Life stage | Vigor | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m)',
  ['O1', 'Pin oak', 10, 2, 'young', 'good', 'A', null, 90, 100, 2, 9],
  ['M1', 'Red maple', 10, 2, 'young', 'good', 'A', null, 90, 100, 2, 9],
  ['N1', null, 10, 2, 'young', 'good', 'A', null, 90, 100, 2, 9],
  ['O2', 'Bur oak', 10, 2, 'young', 'good', 'A', null, 10, 100, 3, 5]
)

const plan = (date: string, timing: TimingAnswers = {}) => planOf(inventory, { date, timing })

function told(date: string, timing: TimingAnswers) {
  return (plan(date, timing).timing ?? []).map(
    ({ state, concern, trees }) => `${state} ${concern}: ${trees.map(({ tree }) => tree.id).join(' ')}`
  )
}

const answered = { nest: false, stress: false, flush: false }

describe('oak wilt, by the dates of the sources beside the windows', () => {
  it.each([
    ['Texas', '2030-01-31', 'open'],
    ['Texas', '2030-02-01', 'closed'],
    ['Texas', '2030-06-30', 'closed'],
    ['Texas', '2030-07-01', 'open'],
    ['Wisconsin', '2030-03-31', 'open'],
    ['Wisconsin', '2030-04-01', 'closed'],
    ['Wisconsin', '2030-07-31', 'closed'],
    ['Wisconsin', '2030-08-01', 'open'],
    ['Michigan', '2030-04-14', 'open'],
    ['Michigan', '2030-04-15', 'closed'],
    ['Michigan', '2030-07-15', 'closed'],
    ['Michigan', '2030-07-16', 'open'],
    ['Minnesota', '2030-04-01', 'closed'],
    ['Minnesota', '2030-08-01', 'open']
  ])('%s on %s is %s, for the oak that is cut and no other tree', (region, date, state) => {
    expect(told(date, { region, ...answered })).toContain(`${state} oak wilt: O1`)
  })

  it('a closed window is a problem with its source, at the first oak’s species', () => {
    const { problems } = plan('2030-05-02', { region: 'Marathon County, WI' })
    const closed = problems.find(({ code }) => code === 'closed-window')
    expect(closed?.level).toBe('note')
    expect(closed?.cell).toBe('Trees!B2')
    expect(closed?.message).toMatch(/^Tree O1\. Wisconsin, oak wilt: closed from 1 April to 31 July/)
    expect(closed?.message).toContain('Wisconsin Department of Natural Resources')
  })

  it('in Texas every oak wound is painted, in and out of the window', () => {
    for (const date of ['2030-03-01', '2030-10-01'])
      expect(told(date, { region: 'Texas', ...answered })).toContain('always oak wilt: O1')
  })

  it('a month that lies partly in a window is closed, and says partly', () => {
    const notes = plan('2030-01-10', { region: 'Michigan', visitMonth: 7 }).timing ?? []
    const closed = notes.find(({ state }) => state === 'closed')
    expect(closed?.sentence).toContain('visit 1 (July) falls partly in it')
    expect(told('2030-05-10', { region: 'Michigan', visitMonth: 11, ...answered })).toContain(
      'open oak wilt: O1'
    )
  })
})

describe('where the region is not known', () => {
  it('one problem asks for it, and no window is closed or open', () => {
    const made = plan('2030-05-02')
    expect(made.problems.filter(({ code }) => code === 'region-unknown')).toHaveLength(1)
    const states = new Set((made.timing ?? []).map(({ state }) => state))
    expect([...states].sort()).toEqual(['advice', 'ask'])
  })

  it('a region that is not listed is asked about, never taken to have no window', () => {
    const made = plan('2030-05-02', { region: 'Saxony' })
    expect(made.problems.map(({ code }) => code)).not.toContain('region-unknown')
    const asked = made.problems.filter(({ code }) => code === 'region-not-listed')
    expect(asked.map(({ message }) => /oak wilt|nesting/.exec(message)?.[0])).toEqual(['oak wilt', 'nesting'])
  })

  it('letters within another word are no region', () => {
    expect(told('2030-05-02', { region: 'Miami, Florida', ...answered }).join()).not.toContain('closed')
    expect(told('2030-05-02', { region: 'Twin Falls', ...answered }).join()).not.toContain('closed')
  })

  it('says nothing about the season where nobody asked', () => {
    const made = planOf(inventory, { date: '2030-05-02' })
    expect(made.timing).toEqual([])
    expect(made.problems.map(({ code }) => code)).not.toContain('region-unknown')
  })
})

describe('nesting and what was looked for on site', () => {
  it('windows of a named place are for every tree that is cut', () => {
    expect(told('2030-08-15', { region: 'San Diego County' })).toContain('closed nesting: O1 M1 N1')
    expect(told('2030-08-16', { region: 'San Diego County' })).toContain('open nesting: O1 M1 N1')
    const near = (region: string, day: string) =>
      told(day, { region, ...answered }).filter((line) => line.includes('nesting'))
    expect(near('Fresno, California', '2030-09-15')).toEqual(['closed nesting: O1 M1 N1'])
    expect(near('Fresno, CA', '2030-09-16')).toEqual(['open nesting: O1 M1 N1'])
    // The window of the county ends before that of the state.
    expect(near('San Diego, California', '2030-08-16')).toEqual([
      'closed nesting: O1 M1 N1',
      'open nesting: O1 M1 N1'
    ])
  })

  it('an active nest, stress or a flush of leaves closes the season wherever it is', () => {
    expect(told('2030-12-01', { region: 'Saxony', nest: true })).toContain('closed nesting: O1 M1 N1')
    expect(told('2030-12-01', { region: 'Saxony', stress: true })).toContain('closed stress: O1 M1 N1')
    expect(told('2030-12-01', { region: 'Saxony', flush: true })).toContain('closed leaf flush: O1 M1 N1')
  })

  it('what is not answered is asked, and only that', () => {
    const sentence = (timing: TimingAnswers) =>
      plan('2030-12-01', timing).timing?.find(({ concern }) => concern === 'questions')?.sentence
    expect(sentence({})).toContain('was a nest looked for; drought or frost stress')
    expect(sentence({ nest: false, flush: false })).toBe(
      'Not answered: drought or frost stress this season. Look on site.'
    )
    expect(sentence(answered)).toBeUndefined()
  })
})

describe('the notes of a tree', () => {
  it('are those about it, and a tree that is not cut has none', () => {
    const made = plan('2030-05-02', { region: 'Wisconsin' })
    const of = (id: string) =>
      notesForTree(
        made.timing ?? [],
        made.trees.find(({ tree }) => tree.id === id)!
      ).map(({ state, concern }) => `${state} ${concern}`)
    expect(of('O1')[0]).toBe('closed oak wilt')
    expect(of('M1')).not.toContain('closed oak wilt')
    expect(of('M1').filter((line) => line === 'advice usual time')).toHaveLength(2)
    expect(of('N1')).toContain('ask species')
    expect(of('O2')).toEqual([])
  })

  it('a plan with nothing to cut has none', () => {
    expect(timingNotes({ date: '2030-05-02', trees: [] })).toEqual([])
  })
})

describe('species groups', () => {
  it.each(['Pin oak', 'Oak, white', 'QUERCUS robur', 'live oaks', 'Willow oak'])('%s is an oak', (name) => {
    expect(isInGroup(name, 'oaks')).toBe(true)
  })

  it.each(['Silky oak', 'She-oak', 'poison oak', 'Oakland cherry', 'Red maple', ''])('%s is none', (name) => {
    expect(isInGroup(name, 'oaks')).toBe(false)
  })

  // Source of the list: Colorado State University Extension GardenNotes 613.
  it.each([
    'Paper birch',
    'Black locust',
    'American elm',
    'Goldenchain',
    'Hackberry',
    'Japanese pagodatree',
    'Kentucky coffeetree',
    'Acer rubrum',
    'Mulberry',
    'Lombardy poplar',
    'Black walnut',
    'Weeping willow'
  ])('%s bleeds', (name) => {
    expect(isInGroup(name, 'bleeders')).toBe(true)
  })

  it.each(['Honeylocust', 'Tulip poplar', 'Willow oak', 'Linden', 'Desert willow'])('%s does not', (name) => {
    expect(isInGroup(name, 'bleeders')).toBe(false)
  })
})

it('a window may run over the new year', () => {
  const winter = { from: [11, 15], to: [2, 28] } as const
  const month = (number: number) => fallsIn({ from: [number, 1], to: [number, 30] }, winter)
  expect([1, 3, 11, 12].map(month)).toEqual(['within', 'outside', 'partly', 'within'])
})

it('every window, rule and advice names its source and how sure it is, and its days are in order', () => {
  for (const row of [...seasonWindows, ...standingRules, ...Object.values(timingAdvice)]) {
    expect(row.source.length).toBeGreaterThan(10)
    expect(['read', 'second-hand', 'memory']).toContain(row.certainty)
    expect(row.says).toMatch(/\.$/)
  }
  for (const { from, to } of seasonWindows) expect(from[0] * 31 + from[1]).toBeLessThan(to[0] * 31 + to[1])
})

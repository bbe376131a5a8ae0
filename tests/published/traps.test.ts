/** The traps of the trade that a number alone does not show. */
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { fieldFromWords, readHeader } from '../../shared/columns'
import { lionTailTrials } from './evidence/lionTailing'
import { lowAndHigh, priority, standing } from '../../src/formulas/priority'
import { cutShare, lateralMin } from '../../src/formulas/cuts'
import { estimatePlan } from '../../src/price/estimatePlan'
import { block, limbHeaders, limbRow, planOf } from '../plan/trees'

const root = resolve(__dirname, '../..')

function sourcesIn(folder: string): string[] {
  return readdirSync(join(root, folder)).flatMap((name) => {
    const path = join(folder, name)
    if (statSync(join(root, path)).isDirectory()) return sourcesIn(path)
    return /\.(ts|html)$/.test(name) ? [path] : []
  })
}

/** Sentences that say lion-tailing loads a tree more, which no experiment found. */
function claimsWindFromLionTailing(text: string): boolean {
  return /lion[- ]?tail[^.]*\b(raises?|increases?|adds?|more)\b[^.]*\bwind/i.test(
    text.replace(/Do not say that[^.]*\./g, '')
  )
}

describe('the traps of the trade', () => {
  it('keeps three percents apart: half of the diameter is a quarter of the section and of the limb’s foliage', () => {
    // Loyd, Smiley & Fite 2024 cut by diameter, Gilman & Grabosky 2009 by foliage: both center near 0.7 of the diameter.
    expect(cutShare(0.5, 1)).toBe(0.25)
    expect(cutShare(Math.SQRT1_2, 1)).toBeCloseTo(0.5, 12)
    expect(cutShare(0.5, 1) * 0.35).toBeCloseTo(0.0875, 12)
  })

  it('stores where the stem was measured: the same tape readings make a limb competing or gaining', () => {
    // Cross-section conserved at a union (pipe model, Shinozaki et al. 1964, from memory).
    const headers = `${limbHeaders} | Stem measured`
    const rows = (measured: string) => [
      [...limbRow('A', null, null, null, null, { role: 'leader' }), ''],
      [...limbRow('B', 60, 100, 3, 8), measured]
    ]
    const standingOf = (measured: string) =>
      planOf(block(headers, ...rows(measured))).trees[0]!.visits[0]!.limbs.find(
        ({ limb }) => limb.id === 'B'
      )!.standing
    expect(standingOf('above')).toBe('gaining')
    expect(standingOf('below')).toBe('competing')
  })

  it('does not read a girth as a diameter: the header is asked about', () => {
    expect(fieldFromWords(readHeader('Girth (in)').words)).toBeNull()
    expect(fieldFromWords(readHeader('Circumference (mm)').words)).toBeNull()
  })

  it('never says that lion-tailing raises wind load, as the trials found that it does not', () => {
    // Smiley & Kane 2006, AUF 32(1):33-40; Gilman, Grabosky, Jones & Harchick 2008, AUF 34(1):13-19.
    expect(lionTailTrials.map(({ raisedLoad }) => raisedLoad)).toEqual([false, false])
    expect(claimsWindFromLionTailing('Lion-tailing increases the load of the wind.')).toBe(true)
    expect(claimsWindFromLionTailing('Lion-tailing leaves the load at the tips.')).toBe(false)
    const files = ['shared', 'src', 'functions', 'taskpane'].flatMap(sourcesIn)
    expect(files.length).toBeGreaterThan(50)
    for (const file of files)
      expect([file, claimsWindFromLionTailing(readFileSync(join(root, file), 'utf8'))]).toEqual([file, false])
  })

  it('counts a crown stripped inside as lower in the lower two-thirds than one left alone', () => {
    // ANSI A300-1995, 5.3.1: half of the foliage in the lower two-thirds.
    const headers = `${limbHeaders} | Lowest foliage (m)`
    const rows = (lowest: (number | null)[]) => [
      [...limbRow('A', null, null, null, null, { role: 'leader' }), null],
      [...limbRow('B', 60, 120, 2.5, 9.5), lowest[0] ?? null],
      [...limbRow('C', 50, 110, 3.5, 9.5), lowest[1] ?? null]
    ]
    const lower = (lowest: (number | null)[]) =>
      planOf(block(headers, ...rows(lowest))).trees[0]!.visits[0]!.lowerFoliageBefore
    expect(lower([8, 8])).toBeLessThan(lower([null, null]))
  })

  it('scores no angle: a steep and a level union of one ratio have one priority', () => {
    // Gilman 2003, J. Arboric. 29(5):291-294: angle was not related to strength.
    const headers = `${limbHeaders} | Angle`
    const rows = (angle: number) => [
      [...limbRow('A', null, null, null, null, { role: 'leader' }), null],
      [...limbRow('B', 80, 100, 3, 9), angle]
    ]
    const priorityAt = (angle: number) => {
      const visit = planOf(block(headers, ...rows(angle))).trees[0]!.visits[0]!
      return visit.limbs.find(({ limb }) => limb.id === 'B')!.priority
    }
    expect(priorityAt(20)).toBe(priorityAt(80))
    expect(priorityAt(20)).toBeCloseTo(
      priority({ aspectRatio: 0.8, origin: 3, tip: 9, bark: 'none' }, { height: 10, crownBase: 2 }),
      9
    )
  })

  it('reads the upper third as that of the canopy: a tip at 30 ft of 40 is not in it, at 31 ft it is', () => {
    // Gilman & Black, Circular 853/MG087, Fig. 15; crown from 10 ft, limb from 8 ft.
    expect(lowAndHigh({ origin: 8, tip: 30 }, { height: 40, crownBase: 10 })).toBe(0)
    expect(lowAndHigh({ origin: 8, tip: 31 }, { height: 40, crownBase: 10 })).toBeGreaterThan(0)
  })

  it('lets a 1.0 in lateral on a 3.1 in parent fall short of a third and a 2 in one on 6 in pass', () => {
    // Grabosky & Gilman 2007, AUF 33(5):360-366.
    expect(1 >= lateralMin(3.1)).toBe(false)
    expect(2 >= lateralMin(6)).toBe(true)
  })

  it('calls nothing codominant below 0.80 without included bark, as the strain levels off at about 0.83', () => {
    // Dahle et al. 2022, Forests 13(7):1007.
    expect(standing(0.79)).toBe('competing')
    expect(standing(0.83)).toBe('codominant')
    expect(standing(0.71, 'full')).toBe('codominant')
  })

  it('totals an estimate from its printed lines', () => {
    // Common practice, no source: round once a printed line, add what is printed.
    const plan = planOf(
      block(
        limbHeaders,
        ...['T1', 'T2', 'T3'].flatMap((tree, at) => [
          limbRow('A', 6 + at, null, 1, 10, { tree, role: 'leader' }),
          limbRow('B', 5 + at / 3, 6 + at, 3, 9.5, { tree })
        ])
      )
    )
    const { lines, subtotal } = estimatePlan(plan)
    expect(lines.length).toBeGreaterThan(2)
    const cents = lines.map(({ price }) => price.times(100))
    for (const line of cents) expect(line.isInteger()).toBe(true)
    expect(subtotal.times(100).toNumber()).toBe(cents.reduce((sum, line) => sum + line.toNumber(), 0))
  })
})

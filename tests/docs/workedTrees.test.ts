/** The page of worked trees says what the engine says: its inventories are planned and its results compared. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Cell } from '../../shared/cells'
import { readInventory } from '../../src/inventory/readInventory'
import { numberIn } from '../../shared/numbers'
import { planInventory } from '../../src/plan/planInventory'

const page = readFileSync(join(__dirname, '../../docs/worked-trees.md'), 'utf8')
const sections = page.split(/^## \d\. /m).slice(1)

function cellsOf(section: string): Cell[][] {
  const csv = /```csv\n([^`]+)```/.exec(section)![1]!
  const cell = (text: string): Cell => {
    const value = numberIn(text, '.')
    return text === '' ? null : typeof value === 'number' ? value : text
  }
  return csv
    .trim()
    .split('\n')
    .map((line) => line.split(',').map(cell))
}

function resultOf(section: string): string[][] {
  const rows = section.split('\n').filter((line) => /^\| \d/.test(line))
  return rows.map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim())
  )
}

describe('the worked trees', () => {
  it('are three', () => expect(sections).toHaveLength(3))

  it.each(sections.map((section) => [section.split('\n')[0]!, section]))(
    '%s: the tables are what the engine plans',
    (_, section) => {
      const inventory = readInventory({ rows: cellsOf(section), sheet: '', top: 0, left: 0 })
      const tree = planInventory(inventory, { date: '2027-03-01' }).trees[0]!
      const planned = tree.visits.flatMap((visit) =>
        visit.cuts.map((cut) => [
          String(visit.visit),
          String(visit.year),
          cut.limb.id,
          cut.kind,
          cut.share.toFixed(3),
          cut.cutDiameter === null ? '' : (cut.cutDiameter / 25.4).toFixed(2),
          cut.lateralMin === null ? '' : (cut.lateralMin / 25.4).toFixed(2),
          (cut.dose * 100).toFixed(1),
          cut.priority.toFixed(1),
          cut.nextPriority.toFixed(1)
        ])
      )
      expect(resultOf(section)).toEqual(planned)
    }
  )
})

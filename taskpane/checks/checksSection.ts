import { cellsOf, membersOf } from '../../shared/groupProblems'
import type { Problem, ProblemLevel } from '../../shared/problems'
import { rowsNamed } from '../../shared/words/some'
import type { Unplanned } from '../../src/inventory/inventory'
import { leftOut, type LeftOut } from '../../src/plan/leftOut'
import { button, el } from '../parts/elements'
import { longList } from '../parts/longList'
import { grouped } from '../../shared/words/figures'
import { capital } from '../../shared/words/sentences'

/** One thing to look at: what is wrong, where, what waits for it, and what to do. */
export interface Check {
  level: ProblemLevel
  /** Where it stands, each of several; none where it stands at no cell. */
  cells: readonly string[]
  message: string
  /** Empty where nothing waits, or only the row that the message names. */
  waits: string
  remedy: string
  /** The id of a row that may be no tree. */
  noTree?: string
}

const groups: readonly { level: ProblemLevel; title: string; says: string }[] = [
  { level: 'stop', title: 'Stops the plan', says: 'Nothing can be planned until this is put right.' },
  { level: 'row', title: 'Rows not planned', says: 'The rest of the range was planned without them.' },
  { level: 'doubt', title: 'Doubts', says: 'Planned, with the assumption stated. Confirm or correct it.' },
  { level: 'note', title: 'Notes', says: 'Worth knowing; nothing was assumed.' }
]

const rowOf = (cell: string): string => /(\d+)(:.*)?$/.exec(cell)?.[1] ?? ''

/** A problem as a check. */
export function checkOf(found: Problem): Check {
  const { level, message, remedy, waits = '' } = found
  return { level, cells: cellsOf(found), message, waits, remedy }
}

/** Every problem, and what was left out for a reason that no problem states, one entry a reason. */
export function allChecks(problems: readonly Problem[], unplanned: readonly Unplanned[]): Check[] {
  const ofRows = problems.filter(({ level }) => level === 'row').flatMap(membersOf)
  const stated = new Set(ofRows.map(({ cell }) => rowOf(cell)))
  const left = leftOut({ problems, unplanned }).filter(
    ({ remedy, rows }) => remedy === '' && !rows.every(({ cell }) => stated.has(rowOf(cell)))
  )
  return [...problems.map(checkOf), ...left.map(leftOutCheck)]
}

function leftOutCheck({ rows, reason }: LeftOut): Check {
  const tree = rows[0]?.tree ?? ''
  const one = tree === '' ? '' : `Tree ${tree}: `
  const about = rows.length > 1 ? `${capital(rowsNamed(rows.map(({ row }) => row)))}: ` : one
  return { level: 'row', cells: rows.map(({ cell }) => cell), message: about + reason, waits: '', remedy: '' }
}

/** The checks grouped by what they mean for the plan, worst first, each with its remedy and its cell. */
export function checksSection(
  checks: readonly Check[],
  goToCell: (cell: string) => void,
  isNoTree?: (id: string) => void
): HTMLElement {
  const present = groups.filter(({ level }) => checks.some((check) => check.level === level))
  return el(
    'div',
    {},
    present.length === 0 && el('p', {}, 'Nothing to check: every row was planned as it stands.'),
    ...present.map(({ level, title, says }) => {
      const own = checks.filter((check) => check.level === level)
      return el(
        'section',
        { class: `checks checks-${level}` },
        el('h3', {}, title, ' ', el('span', { class: 'checks-count' }, grouped(own.length))),
        el('p', { class: 'aside' }, says),
        longList(el('ul', { class: 'check-list' }), own, 'checks', (check) =>
          checkEntry(check, goToCell, isNoTree)
        )
      )
    })
  )
}

/** One check with the button that selects its cell, or one of its cells after the other. */
export function checkEntry(
  check: Check,
  goToCell: (cell: string) => void,
  isNoTree?: (id: string) => void
): HTMLElement {
  const { cells, message, waits, remedy, noTree } = check
  return el(
    'li',
    { class: 'check' },
    el('p', { class: 'check-message' }, message),
    waits !== '' && el('p', { class: 'check-waits' }, waits),
    remedy !== '' && el('p', { class: 'check-remedy' }, remedy),
    cells.length > 0 && wayTo(cells, goToCell),
    noTree !== undefined && isNoTree !== undefined && noTreeButton(noTree, isNoTree)
  )
}

function wayTo(cells: readonly string[], goToCell: (cell: string) => void): HTMLElement {
  let next = 0
  const several = cells.length > 1
  const place = el('span', { class: 'cell' })
  const named = el('span', { class: 'unseen' })
  const show = (): void => {
    const cell = cells[next] ?? ''
    const which = several ? `, ${grouped(next + 1)} of ${grouped(cells.length)}` : ''
    place.textContent = shortCell(cell) + which
    named.textContent = ` ${cell}`
  }
  const go = el(
    'button',
    {
      type: 'button',
      class: 'button button-link',
      onclick: () => {
        goToCell(cells[next] ?? '')
        next = (next + 1) % cells.length
        show()
      }
    },
    'Go to cell',
    named
  )
  show()
  return el('div', { class: 'check-go' }, go, place)
}

function noTreeButton(id: string, isNoTree: (id: string) => void): HTMLElement {
  const answer = (): void => {
    isNoTree(id)
  }
  return button('This is not a tree', answer, 'link', { 'aria-label': `${id}: this is not a tree` })
}

/** The address without its sheet: the inventory's sheet is known. */
function shortCell(cell: string): string {
  return cell.slice(cell.lastIndexOf('!') + 1)
}

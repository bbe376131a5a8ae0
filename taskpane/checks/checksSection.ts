import type { Problem, ProblemLevel } from '../../shared/problems'
import type { Unplanned } from '../../src/inventory/inventory'
import { button, el } from '../parts/elements'
import { longList } from '../parts/longList'
import { grouped } from '../../shared/words/figures'

/** One thing to look at: what is wrong, where, and what to do. */
export interface Check {
  level: ProblemLevel
  cell: string
  message: string
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

/**
 * Every problem, and every row that was left out for a reason that no problem of its own row states. A row is listed
 * once: where a problem names a cell of it, the problem says more.
 */
export function allChecks(problems: readonly Problem[], unplanned: readonly Unplanned[]): Check[] {
  const said = new Set(problems.filter(({ level }) => level === 'row').map(({ cell }) => rowOf(cell)))
  const left = unplanned.filter(({ cell }) => !said.has(rowOf(cell)))
  return [
    ...problems,
    ...left.map(({ tree, cell, reason }) => ({
      level: 'row' as const,
      cell,
      message: tree === '' ? reason : `Tree ${tree}: ${reason}`,
      remedy: ''
    }))
  ]
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

/** One check with the button that selects its cell. */
export function checkEntry(
  { cell, message, remedy, noTree }: Check,
  goToCell: (cell: string) => void,
  isNoTree?: (id: string) => void
): HTMLElement {
  const go = el(
    'button',
    {
      type: 'button',
      class: 'button button-link',
      onclick: () => {
        goToCell(cell)
      }
    },
    'Go to cell',
    el('span', { class: 'unseen' }, ` ${cell}`)
  )
  return el(
    'li',
    { class: 'check' },
    el('p', { class: 'check-message' }, message),
    remedy !== '' && el('p', { class: 'check-remedy' }, remedy),
    cell !== '' && el('div', { class: 'check-go' }, go, el('span', { class: 'cell' }, shortCell(cell))),
    noTree !== undefined && isNoTree !== undefined && noTreeButton(noTree, isNoTree)
  )
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

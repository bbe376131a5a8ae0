import { disclosure } from './parts/disclosure'
import { el, facts } from './parts/elements'

/** What an inventory has to hold, for somebody who has none yet. */
export function inventoryNeeds(): HTMLElement {
  const part = disclosure('more', ['What the inventory needs'], () => [
    el(
      'p',
      {},
      'A header row, then one row per limb. Tree columns may stand on the tree’s first row only. ' +
        'Columns in any order and wording, with the unit in the header.'
    ),
    facts([
      ['A limb', 'Tree, Limb, Limb dia (in), Stem dia (in), Origin (ft), Tip (ft)'],
      ['Its tree', 'Height (ft), Crown base (ft), Life stage, Vigor'],
      ['Helpful', 'Trunk dia (in), Role, Included bark, Live or dead, Clearance (ft), Access, Last pruned']
    ]),
    el('p', {}, 'The stem diameter is measured just above the union; a column “Stem below (in)” serves too.'),
    el('p', {}, 'One row per tree, without limbs, gives the allowance and a time budget, and no cuts.')
  ])
  return el('div', { class: 'needs' }, part.element)
}

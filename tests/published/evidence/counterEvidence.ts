import type { Evidence } from '../../../shared/evidence'

/** Findings that speak against claiming too much. They belong beside every page that says why. */
export const counterEvidence: readonly Evidence[] = [
  {
    finding:
      'Of 1,518 trees noted for codominance, included bark, several stems or overextension, 14 lost branches in a storm, none of them at the defect noted.',
    source: 'Koeser et al. 2023, Forests 14(5):988',
    certainty: 'read',
    range: 'one storm, downgraded to tropical-storm strength',
    caution: 'A structure that pruning improves is not a hazard for that reason: do not sell pruning by fear.'
  },
  {
    finding: 'Structurally pruned or not, unions of Callery pear were equally strong after 7 years.',
    source: 'Rathjens, Sydnor, Grabosky & Dahle 2021, AUF 47(3):123-130',
    certainty: 'read',
    range: 'one species, one trial',
    caution: 'Structural pruning sets growth and form; promise nothing of a union’s strength.'
  },
  {
    finding: 'A review found no factor that was reliably tied to branches breaking.',
    source: 'PLOS ONE 2021, article 0246805',
    certainty: 'read',
    range: 'a review of published work',
    caution: 'No number of this add-in says whether a limb will hold.'
  }
]

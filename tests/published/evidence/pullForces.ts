import { refuse, type Refusal } from '../../../shared/refusal'
import { outside, type Evidence } from '../../../shared/evidence'

export const pullEvidence: Evidence = {
  finding:
    'The nearer a branch’s diameter came to its stem’s, the less force it took to pull the two apart; the angle did not matter.',
  source:
    'Gilman 2003, J. Arboric. 29(5):291-294, red maple (table read apart from the paper: its R² range matches)',
  certainty: 'read',
  range: 'branches of 5 to 20 mm, aspect ratios up to 1',
  caution:
    'Small branches of one species: shows a direction. Never extrapolate it to a limb that is pruned, and never read it as the strength of a union.'
}

/** Force in kg = intercept − slope × aspect ratio, for branches of a diameter class in mm. */
interface PullClass {
  from: number
  to: number
  intercept: number
  slope: number
  r2: number
}

function pullClass(from: number, to: number, intercept: number, slope: number, r2: number): PullClass {
  return { from, to, intercept, slope, r2 }
}

export const pullClasses: readonly PullClass[] = [
  pullClass(5, 5.9, 19.2, 12.2, 0.25),
  pullClass(6, 6.9, 45.2, 41, 0.53),
  pullClass(7, 7.9, 47.7, 39.1, 0.5),
  pullClass(8, 8.9, 57.3, 43.9, 0.45),
  pullClass(9, 9.9, 84.6, 69.1, 0.58),
  pullClass(10, 10.9, 90.12, 66.9, 0.65),
  pullClass(11, 11.9, 146.8, 137.8, 0.79),
  pullClass(12, 12.9, 165.1, 155.1, 0.89),
  pullClass(13, 13.9, 165.6, 158.6, 0.86),
  pullClass(14, 20, 217.3, 190.5, 0.9)
]

/** Force in kg that pulled a branch of this diameter in mm from its stem, by the aspect ratio. */
export function pullForce(branchMillimeters: number, aspectRatio: number): number | Refusal {
  const refused =
    outside('The branch diameter', branchMillimeters, 5, 20, 'mm') ??
    outside('The aspect ratio', aspectRatio, 0, 1) ??
    (aspectRatio > 0 ? null : refuse('The aspect ratio is 0: measure the branch and the stem.'))
  if (refused !== null) return refused
  const tenth = Math.round(branchMillimeters * 10) / 10
  const found = pullClasses.find(({ from, to }) => tenth >= from && tenth <= to) as PullClass
  return found.intercept - found.slope * aspectRatio
}

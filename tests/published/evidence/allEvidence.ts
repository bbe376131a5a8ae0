import { biomassEvidence } from './biomass'
import { breakingStressEvidence } from './breakingStress'
import { brushVolumeEvidence } from '../../../src/formulas/brush'
import { counterEvidence } from './counterEvidence'
import { clearances } from './clearances'
import { crownRatios } from './crownRatios'
import { earlyPruningEvidence } from './earlyPruning'
import type { Evidence } from '../../../shared/evidence'
import { crownSectionEvidence, leafAreaEvidence } from './leafArea'
import { lionTailTrials } from './lionTailing'
import { logVolumeEvidence } from './logVolume'
import { logWeightEvidence } from './logWeights'
import { pruningCycles } from './pruningCycles'
import { pullEvidence } from './pullForces'
import { removalThresholds } from './removalThresholds'
import { stemForceEvidence } from './stemForces'
import { newYorkGrowthEvidence, urbanGrowthEvidence } from './trunkGrowth'
import { windEvidence } from './windLoad'

/** Every finding with its source, range and caution, for a page that says why. */
export const allEvidence: readonly Evidence[] = [
  pullEvidence,
  stemForceEvidence,
  breakingStressEvidence,
  ...removalThresholds,
  ...crownRatios,
  ...pruningCycles,
  ...clearances,
  crownSectionEvidence,
  leafAreaEvidence,
  biomassEvidence,
  logWeightEvidence,
  logVolumeEvidence,
  brushVolumeEvidence,
  windEvidence,
  ...lionTailTrials,
  newYorkGrowthEvidence,
  urbanGrowthEvidence,
  earlyPruningEvidence,
  ...counterEvidence
]

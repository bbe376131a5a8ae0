import { judgedOf, judgedWords, notJudgedLimbs } from '../../plan/judged'
import { capital } from '../../../shared/words/sentences'
import type { Scale } from '../paper'
import type { Scene } from '../scene'

function viewWords(scene: Scene): string {
  const forms = scene.limbs.map(({ form }) => form)
  const unknown = forms.filter(({ bearingKnown }) => !bearingKnown)
  if (forms.length === 0) return ''
  if (unknown.length === forms.length)
    return 'No bearing is known: limbs stand left or right where there is room.'
  const turned =
    'Looking north: west is left, east is right. Limbs toward you or away are drawn to their side.'
  if (unknown.length === 0) return turned
  return `${turned} Bearing not known: ${unknown.map(({ present }) => present.limb.id).join(', ')}.`
}

function scaleWords(scene: Scene, scale: Scale): string {
  const { exaggeration } = scale
  const diameters =
    exaggeration === 1
      ? 'Heights and diameters are to one scale.'
      : `Heights to scale; diameters ${exaggeration} times as thick.`
  return scene.trunk.assumed ? `${diameters} The trunk diameter is not known.` : diameters
}

function reachWords(scene: Scene): string {
  const assumed = scene.limbs.filter(({ form }) => form.reachAssumed).length
  if (assumed === 0) return 'Crown sketched.'
  const which = assumed === scene.limbs.length ? 'Reach' : 'Reach without a measured length or angle'
  return `${which} assumed from the rise (house rule); crown sketched.`
}

/** Why a tree stands without limbs: none was listed, or those that were are gone or lack a measurement. */
function noLimbWords({ plan }: Scene): string {
  return plan.tree.limbs.length === 0 ? 'No limbs are listed; crown sketched.' : 'Crown sketched.'
}

/** What the drawing takes for granted, a sentence each. */
export function notesOf(scene: Scene, scale: Scale): string[] {
  const notes = [scaleWords(scene, scale), viewWords(scene)]
  notes.push(scene.limbs.length > 0 ? reachWords(scene) : noLimbWords(scene))
  if (scene.notDrawn.length > 0)
    notes.push(`Not drawn, a measurement is missing: ${scene.notDrawn.join(', ')}.`)
  const judged = judgedOf(scene.plan)
  if (judged === 'some' || judged === 'none')
    notes.push(`${capital(judgedWords(scene.plan))}: ${notJudgedLimbs(scene.plan)}.`)
  const held = (scene.visit?.limbs ?? []).filter(({ decision }) => decision === 'hold')
  if (held.length > 0) notes.push(`Hold, or decide on site: ${held.map(({ limb }) => limb.id).join(', ')}.`)
  if ((scene.visit?.visit ?? 1) > 1)
    notes.push('A forecast: measure again before this visit; diameters as surveyed.')
  notes.push('A qualified arborist on site decides every cut.')
  return notes.filter((note) => note !== '')
}

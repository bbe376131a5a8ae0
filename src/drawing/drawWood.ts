import { outline, stations, ticksAcross, trunkOutline } from './form/outline'
import { onPaper, type Scale } from './paper'
import { crownOutline, leafyLoop } from './form/crownOutline'
import { cutAt, type Scene, type SceneLimb } from './scene'
import type { Depicts, Shape, Step } from './shapes'
import type { Taper } from './form/taper'
import type { LookName } from './drawnLooks'

type When = 'before' | 'after'

function piece(
  scale: Scale,
  taper: Taper,
  from: number,
  to: number,
  look: LookName,
  depicts: Depicts
): Shape {
  return { kind: 'path', steps: outline(stations(scale, taper, from, to)), look, depicts }
}

/** Wood is see-through; a blank of the same outline behind it hides what it stands before. */
function backed(shape: Shape): Shape[] {
  return [{ ...shape, look: 'blank', depicts: { part: 'blank' } }, shape]
}

function comingOff(scale: Scale, { form }: SceneLimb, from: number): Shape[] {
  const limb = form.present.limb.id
  return [
    {
      kind: 'path',
      steps: ticksAcross(scale, form, from, 1),
      look: 'offTicks',
      depicts: { part: 'off-ticks', limb }
    },
    piece(scale, form, from, 1, form.present.limb.dead ? 'dead' : 'off', { part: 'off', limb })
  ]
}

function limbShapes(scale: Scale, limb: SceneLimb, when: When): Shape[] {
  const { form, fate, lateral } = limb
  const { id, dead } = form.present.limb
  const look = dead ? 'dead' : 'limb'
  if (fate === 'removed') return when === 'after' ? [] : comingOff(scale, limb, 0)
  const cut = cutAt(limb)
  const shapes = backed(piece(scale, form, 0, cut, look, { part: 'limb', limb: id }))
  if (fate === 'kept') return shapes
  if (when === 'before') shapes.unshift(...comingOff(scale, limb, cut))
  if (lateral !== null) shapes.unshift(piece(scale, lateral, 0, 1, look, { part: 'lateral', limb: id }))
  return shapes
}

/** The sketched outline of the crown. */
export function crownShape(scene: Scene, scale: Scale, when: When): Shape {
  const steps: Step[] = leafyLoop(crownOutline(scene, when).map((point) => onPaper(scale, point)))
  return { kind: 'path', steps, look: 'crown', depicts: { part: 'crown' } }
}

/** Limbs, thinnest behind, then the trunk and the leader. */
export function woodShapes(scene: Scene, scale: Scale, when: When): Shape[] {
  const { trunk, plan } = scene
  const limbs = [...scene.limbs].sort((a, b) => a.form.diameter - b.form.diameter)
  const leader: Depicts = { part: 'leader' }
  if (plan.leader.limb !== null) leader.limb = plan.leader.limb.id
  return [
    ...limbs.flatMap((limb) => limbShapes(scale, limb, when)),
    ...backed({
      kind: 'path',
      steps: trunkOutline(scale, trunk, 0, trunk.leaderFrom),
      look: 'trunk',
      depicts: { part: 'trunk' }
    }),
    {
      kind: 'path',
      steps: trunkOutline(scale, trunk, trunk.leaderFrom, trunk.tip),
      look: 'leader',
      depicts: leader
    }
  ]
}

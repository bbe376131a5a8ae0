/** Heights and girths: direction in every input, methods that agree, units, never NaN. */
import fc from 'fast-check'
import { isRefusal } from '../../../shared/refusal'
import { convertLength } from '../../../shared/units'
import { scaffoldSpacing } from '../../../src/plan/scaffold/spacing'
import { diameterFromGirth } from '../../../src/formulas/diameters'
import { treeHeight } from '../../../src/formulas/heights'
import { always, between, falls, rises, valueOf } from './monotone'
import { diameter, unit } from './domain'

const radian = Math.PI / 180

describe('TREEHEIGHT', () => {
  const distance = between(5, 100)
  const top = between(1, 80)
  const base = between(-60, 0)

  it('rises with the distance and the top angle and falls with the base angle', () => {
    rises({ over: distance, others: fc.tuple(top, base), formula: treeHeight })
    rises({
      over: top,
      others: fc.tuple(distance, base),
      formula: (up, far, down) => treeHeight(far, up, down)
    })
    falls({
      over: base,
      others: fc.tuple(distance, top),
      formula: (down, far, up) => treeHeight(far, up, down)
    })
  })

  it('agrees with the percent scale and with slant distances where the top stands over the base', () => {
    always(fc.tuple(distance, top, base), (far, up, down) => {
      const height = valueOf(treeHeight(far, up, down))
      const percent = (angle: number) => 100 * Math.tan(angle * radian)
      const rise = (angle: number) => (far / Math.cos(angle * radian)) * Math.sin(angle * radian)
      expect((far * (percent(up) - percent(down))) / 100 / height).toBeCloseTo(1, 9)
      expect((rise(up) - rise(down)) / height).toBeCloseTo(1, 9)
    })
  })

  it('is refused, with a sentence, where the top is not above the base', () => {
    always(fc.tuple(distance, top), (far, angle) => {
      expect(isRefusal(treeHeight(far, angle, angle))).toBe(true)
      expect(isRefusal(treeHeight(far, angle, angle + 1))).toBe(true)
    })
  })
})

describe('girth and spacing', () => {
  it('rise with what they are taken from, in its unit', () => {
    rises({ over: diameter, others: fc.constant<[]>([]), formula: diameterFromGirth })
    rises({ over: between(3, 40), others: fc.constant<[]>([]), formula: scaffoldSpacing })
    always(fc.tuple(diameter, unit), (girth, to) => {
      const inUnit = diameterFromGirth(convertLength(girth, 'mm', to))
      expect(convertLength(inUnit, to, 'mm') / diameterFromGirth(girth)).toBeCloseTo(1, 9)
    })
  })
})

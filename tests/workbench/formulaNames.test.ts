import { fromFileFormula, toFileFormula } from '../../src/workbench/files/formulaNames'

describe('formulas on their way into a file and back', () => {
  const pairs = [
    ['=LIMB.ASPECTRATIO(A1,B1)', '_xldudf_LIMB_ASPECTRATIO(A1,B1)'],
    ['=limb.standing(C2)', '_xldudf_LIMB_STANDING(C2)'],
    [
      '=IF(LIMB.LIVECROWN(A1,B1)<0.6,"LIMB.LIVECROWN(","")',
      'IF(_xldudf_LIMB_LIVECROWN(A1,B1)<0.6,"LIMB.LIVECROWN(","")'
    ],
    ['=SUM(A1:A9)', 'SUM(A1:A9)'],
    ["=SUM('LIMB.X(1)'!A1)", "SUM('LIMB.X(1)'!A1)"],
    ['=XLOOKUP(A1,B:B,C:C)', '_xlfn.XLOOKUP(A1,B:B,C:C)'],
    ['=SORT(FILTER(A1:A9,B1:B9>1))', '_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,B1:B9>1))']
  ] as const

  test.each(pairs)('%s is stored as an add-in or newer function where it is one', (typed, stored) => {
    expect(toFileFormula(typed)).toBe(stored)
  })

  test.each(pairs)('%s is read back as it was typed', (typed, stored) => {
    expect(fromFileFormula(stored)).toBe(typed.replace(/^=limb\.standing/, '=LIMB.STANDING'))
  })

  test('a formula that was stored plainly stays as it is', () => {
    expect(fromFileFormula('A1&"_xlfn.X"')).toBe('=A1&"_xlfn.X"')
  })
})

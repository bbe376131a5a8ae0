import { inventedCrewTimes } from '../../src/formulas/time'
import { inventedRatesIn } from '../../src/price/rates'

describe('the crew times that CREWHOURS computes with', () => {
  it('are the metric start values of the Rates sheet', () => {
    const { setUpMinutes, betweenTrees, accessFactor, cutClasses, heightBands } = inventedRatesIn['cm-m']
    const rounded = (value: number): number => Math.round(value * 1e9) / 1e9
    expect({
      setUpMinutes: Object.fromEntries(
        Object.entries(setUpMinutes).map(([access, minutes]) => [access, minutes + betweenTrees])
      ),
      accessFactor,
      cutClasses: cutClasses.map((each) => ({ ...each, upToMillimeters: rounded(each.upToMillimeters) })),
      heightBands
    }).toEqual(inventedCrewTimes)
  })
})

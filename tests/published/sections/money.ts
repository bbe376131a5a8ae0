import { Money, printMoney, roundMoney } from '../../../shared/money'
import { priceWithMargin } from '../../../src/formulas/price'
import { exactly, printed, type Check } from '../check'

const bookkeeping = 'common practice, no source: markup on cost against margin on price'
const halfUp = 'common practice, no source: half up to the minor unit, once a printed line'

function price(cost: number, overhead: string, margin: string): number {
  return priceWithMargin(new Money(cost), new Money(overhead), new Money(margin)).toNumber()
}

export const money: Check[] = [
  {
    what: 'price of a cost of 600 with a quarter added and no margin',
    got: () => price(600, '0.25', '0'),
    ...printed('750.00'),
    source: bookkeeping,
    certainty: 'practice'
  },
  {
    what: 'markup in percent that equals a margin of a quarter',
    got: () => 100 * (price(600, '0', '0.25') / 600 - 1),
    ...printed('33.33'),
    source: bookkeeping,
    certainty: 'practice'
  },
  {
    what: 'margin in percent on a price of cost and half',
    got: () => 100 * (1 - 40 / price(40, '0.5', '0')),
    ...printed('33.33'),
    source: 'bookkeeping example: cost 40, markup 50 %, price 60, margin 33.33 %',
    certainty: 'second-hand'
  },
  {
    what: 'USD a tree where 811 trees were pruned for 145,370',
    got: () => roundMoney(new Money(145370).div(811), 2).toNumber(),
    ...exactly(179.25),
    source: 'Piedmont CA 2022, contract total and count; quotient ours',
    certainty: 'read'
  },
  {
    what: '2.675 to the cent, where binary floating point gives 2.67',
    got: () => Number(printMoney(new Money('2.675'), 2)),
    ...exactly(2.68),
    source: halfUp,
    certainty: 'practice'
  },
  {
    what: 'a thirds split of 100.00 printed line by line and added up',
    got: () => {
      const line = roundMoney(new Money(100).div(3), 2)
      return line.times(3).toNumber()
    },
    ...exactly(99.99),
    source: halfUp,
    certainty: 'practice'
  }
]

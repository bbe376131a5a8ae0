/** @jest-environment jsdom */
import type { CellBlock } from '../../shared/cells'
import { problem } from '../../shared/problems'
import { rateBook } from '../../src/price/rateBook'
import { isBudget, type ChosenOffer } from '../../src/sheets/offered'
import { FakeSurface, fakeEngine } from './fakeSurface'
import { inventedEstimate } from './inventedPlan'
import { announced, openPane, press, readable, settle } from './openPane'

const sheet: CellBlock = { rows: [], sheet: 'House rates', top: 0, left: 0 }

async function estimated(rates: CellBlock | null = null, engine = fakeEngine()) {
  const surface = new FakeSurface()
  surface.rates = rates
  const { root, pane } = await openPane(surface, engine)
  await pane.planSelection()
  ;[...root.querySelectorAll<HTMLElement>('[role=tab]')]
    .find((tab) => tab.textContent === 'Estimate')!
    .click()
  return { root, pane, surface, engine }
}

function field(root: Element, label: string): HTMLInputElement {
  const found = [...root.querySelectorAll('label')].find(({ textContent }) => textContent.startsWith(label))
  return found!.control as HTMLInputElement
}

const choose = (root: Element, label: string): void => {
  field(root, label).click()
}

function type(root: Element, text: string): void {
  const input = field(root, 'Budget')
  input.value = text
  input.dispatchEvent(new Event('input'))
}

describe('the rates of an estimate', () => {
  test('are marked as invented, every one, and a Rates sheet can be written', async () => {
    const { root, surface } = await estimated()
    const { rateCount } = inventedEstimate()
    press(root, `Rates: ${String(rateCount)} of ${String(rateCount)} still invented`)
    press(root, 'Write a Rates sheet')
    await settle()
    expect(surface.asked).toContain('write rates')
    expect(announced(root)).toBe('Written: the sheet Rates. It is yours: change it, then press Plan again.')
  })

  test('come from the workbook’s own sheet where it has one, and those still invented are named', async () => {
    const engine = fakeEngine()
    const estimate = inventedEstimate()
    const sheets: unknown[] = []
    engine.priceByRates = (_plan, read) => {
      sheets.push(read)
      const rates = { ...estimate.rates, invented: ['wage', 'taxRate'] as const }
      return { estimate: { ...estimate, rates, inventedCount: 2 }, problems: [] }
    }
    const { root } = await estimated(sheet, engine)
    expect(sheets.at(-1)).toBe(sheet)
    press(root, 'Rates: 2 of')
    expect(readable(root)).toContain('From the sheet House rates, which is yours to change.')
    expect(readable(root)).toContain(rateBook.wage.name)
    expect(() => press(root, 'Write a Rates sheet')).toThrow()
  })

  test('that cannot be used are among the checks', async () => {
    const engine = fakeEngine()
    const wrong = problem('rate-missing', 'Rates!B9', { name: 'Tax', value: '0 %' })
    engine.priceByRates = () => ({ estimate: inventedEstimate(), problems: [wrong] })
    const { root } = await estimated(sheet, engine)
    ;[...root.querySelectorAll<HTMLElement>('[role=tab]')]
      .find(({ textContent }) => textContent.startsWith('Checks'))!
      .click()
    expect(readable(root)).toContain(wrong.message)
  })

  test('that cannot be read keep the plan from being priced by others', async () => {
    const surface = new FakeSurface()
    surface.rates = sheet
    const { root, pane } = await openPane(surface)
    surface.readRates = () => Promise.resolve(problem('cell-editing', ''))
    await pane.planSelection()
    expect(readable(root)).toContain('A cell is being edited')
  })
})

describe('what may be ordered', () => {
  test('is the first visit at first, later visits a forecast, and the whole program only where that is chosen', async () => {
    const { root } = await estimated()
    expect(readable(root)).toContain('Total, XTS1,428.45')
    expect(readable(root)).toContain('Later visits, a forecast and not in the price')
    choose(root, 'Whole program')
    expect(readable(root)).toContain('Subtotal1,645.00')
    expect([...root.querySelectorAll('caption')].map(({ textContent }) => textContent)).toEqual([
      'Visit 12031',
      'Visit 22033'
    ])
    expect(readable(root)).not.toContain('a forecast and not in the price')
    expect(announced(root)).toBe('3 visits, in all 1,760.15 XTS with tax.')
  })

  test('within a budget is the choice that relieves most, tax included, and what is left out is told', async () => {
    const { root } = await estimated()
    choose(root, 'Within a budget')
    expect(readable(root)).toContain('Type it, and the visits and their price stand here.')
    type(root, '$1,400')
    press(root, 'Show what fits')
    // 1,335.00 and 7 % are 1,428.45; K1 alone is 1,326.80 and K2, which relieves as much, 101.65.
    expect(readable(root)).toContain('Within 1,400.00 XTS: 1 of 2 first visits')
    expect(readable(root)).toContain('Total, XTS101.65')
    press(root, '1 visit left out')
    expect(readable(root)).toContain('K1: visit 1, 2031')
  })

  test('a budget below the cheapest visit says what that visit costs', async () => {
    const { root } = await estimated()
    choose(root, 'Within a budget')
    type(root, '50')
    press(root, 'Show what fits')
    expect(readable(root)).toContain(
      'No visit fits a budget of 50.00 XTS: the cheapest one, to tree K2, comes to 101.65 XTS with tax'
    )
    expect(readable(root)).not.toContain('Total, XTS')
  })

  test('some trees are priced by themselves, and one that cannot be chosen is named with those that can', async () => {
    const { root } = await estimated()
    choose(root, 'Some trees')
    const ids = field(root, 'Trees')
    ids.value = 'k2, K9'
    ids.dispatchEvent(new Event('input'))
    press(root, 'Show these trees')
    expect(readable(root)).toContain('“K9”: no tree with work due now is called that. Due now: K1 and K2.')
    ids.value = 'k2'
    ids.dispatchEvent(new Event('input'))
    press(root, 'Show these trees')
    expect(readable(root)).toContain('Total, XTS101.65')
  })

  test.each([
    ['', 'No budget is typed'],
    ['plenty', '“plenty” is not an amount'],
    ['-5', 'A budget is more than 0'],
    ['9e99', '“9e99” is not an amount'],
    ['9999999999999999', 'at most a million million']
  ])('a budget of %j gets a sentence and keeps what was typed', async (text, says) => {
    const { root } = await estimated()
    choose(root, 'Within a budget')
    type(root, text)
    press(root, 'Show what fits')
    expect(readable(root)).toContain(says)
    expect(field(root, 'Budget').value).toBe(text)
    expect(field(root, 'Budget').getAttribute('aria-invalid')).toBe('true')
    expect(announced(root)).toContain(says)
  })

  test('reaches the documents, whichever of the three it is, and the line beside them says so', async () => {
    const engine = fakeEngine()
    const describe = engine.describeDocuments
    const offers: ChosenOffer[] = []
    engine.describeDocuments = (...order) => {
      offers.push(order[2])
      return describe(...order)
    }
    const { root } = await estimated(null, engine)
    const lines: string[] = []
    const write = async () => {
      ;[...root.querySelectorAll<HTMLElement>('[role=tab]')].at(-1)!.click()
      lines.push(/The documents offer[^.]*\.|No budget is settled[^.]*\./.exec(readable(root))![0])
      press(root, offers.length === 0 ? 'Write sheets' : 'Write again')
      await settle()
      if (root.querySelector('.question') !== null) press(root, 'Replace them')
      await settle()
      ;[...root.querySelectorAll<HTMLElement>('[role=tab]')]
        .find((tab) => tab.textContent === 'Estimate')!
        .click()
    }
    choose(root, 'Within a budget')
    await write()
    type(root, '1400')
    press(root, 'Show what fits')
    await write()
    choose(root, 'First visit')
    await write()
    choose(root, 'Whole program')
    await write()
    expect(offers.map(({ kind, lines: own }) => [kind, own.length])).toEqual([
      ['first visit', 2],
      ['within budget', 1],
      ['first visit', 2],
      ['whole program', 3]
    ])
    const budget = offers[1]!
    expect(isBudget(budget) && budget.budget.toString()).toBe('1400')
    expect(lines).toEqual([
      'No budget is settled under Estimate, so the documents offer the first visit.',
      'The documents offer, as chosen under Estimate: within a budget, 1 of 3 visits.',
      'The documents offer, as chosen under Estimate: first visit, 2 of 3 visits.',
      'The documents offer, as chosen under Estimate: whole program, 3 of 3 visits.'
    ])
  })
})

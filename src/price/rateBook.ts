import type { Access } from '../../shared/choices'
import type { UnitSystem } from '../../shared/units'
import { rate, type RateEntry, type RatePlace } from './rateEntry'

const money = 'money'
const length = ['in', 'cm'] as const
const height = ['ft', 'm'] as const
/** Wide enough for currencies whose amounts run to millions; narrow enough to catch a slip of the hand. */
const anHour = [0, 10_000_000] as const
const any = [0, 100_000_000] as const
const practice = 'common practice, no source'

const crew = 'Crew'
const cuts = 'Minutes of one cut at ground level, by its diameter'
const heights = 'How much longer a cut takes higher up'
const site = 'Set-up and access'
const pole = 'One person with a pole, from the ground'
const brush = 'Brush'
const trips = 'Trips'
const charge = 'From cost to price'
const paper = 'On the paper'

/** Minutes and factors by class, band or access: the Estimate holds only the minutes that come of them. */
const step = <const Place extends RatePlace>(...place: Place) =>
  ({ use: 'minutes', cell: null, place }) as const

const cutLimit = (at: number, name: string, start: [string, string]) =>
  rate(cuts, name, 'diameter', length, start, [0.1, 200], step('cutClasses', at, 'upToMillimeters'))
const cutTime = (at: number, name: string, start: string) =>
  rate(cuts, name, 'number', 'minutes', start, [0, 600], step('cutClasses', at, 'minutes'))
const heightLimit = (at: number, name: string, start: [string, string]) =>
  rate(heights, name, 'height', height, start, [0.1, 400], step('heightBands', at, 'upToMeters'))
const heightFactor = (at: number, name: string, start: string) =>
  rate(heights, name, 'number', 'factor', start, [0.1, 20], step('heightBands', at, 'factor'))
const setUp = <const At extends Access>(access: At, name: string, start: string) =>
  rate(site, name, 'number', 'minutes', start, [1, 600], step('setUpMinutes', access))
const siteFactor = <const At extends Access>(access: At, name: string, start: string) =>
  rate(site, name, 'number', 'factor', start, [0.5, 10], { ...step('accessFactor', access), note: practice })

/** Every rate of the Rates sheet, in its order. Every start value is invented. */
export const rateBook = {
  crewPersons: rate(crew, 'Persons in the crew', 'whole', 'persons', '3', [1, 12], {
    use: 'crew hour',
    cell: 'Crew_persons'
  }),
  wage: rate(crew, 'Wage of one person', money, 'an hour', '28.00', anHour, {
    use: 'crew hour',
    cell: 'Wage_hour'
  }),
  burdenRate: rate(crew, 'Burden on wages', 'share', 'of the wage', '0.40', [0, 2], {
    use: 'crew hour',
    cell: 'Burden_rate',
    note: `Taxes, insurance, leave. 25 to 45 % is ${practice}.`
  }),
  equipmentHour: rate(crew, 'Equipment of the crew', money, 'an hour', '34.00', anHour, {
    use: 'crew hour',
    cell: 'Equipment_hour'
  }),
  dayHours: rate(crew, 'Productive hours of a crew day', 'number', 'hours', '7', [1, 14], {
    use: 'year',
    cell: 'Day_hours'
  }),

  cutLimit1: cutLimit(0, 'First class of cut: up to', ['1', '2.5']),
  cutMinutes1: cutTime(0, 'First class of cut: one takes', '1.5'),
  cutLimit2: cutLimit(1, 'Second class of cut: up to', ['2', '5']),
  cutMinutes2: cutTime(1, 'Second class of cut: one takes', '3'),
  cutLimit3: cutLimit(2, 'Third class of cut: up to', ['4', '10']),
  cutMinutes3: cutTime(2, 'Third class of cut: one takes', '7'),
  cutLimit4: cutLimit(3, 'Fourth class of cut: up to', ['6', '15']),
  cutMinutes4: cutTime(3, 'Fourth class of cut: one takes', '14'),
  cutMinutes5: cutTime(4, 'Larger cuts: one takes', '25'),

  heightLimit1: heightLimit(0, 'First height band: up to', ['10', '3']),
  heightFactor1: heightFactor(0, 'First height band: times', '1'),
  heightLimit2: heightLimit(1, 'Second height band: up to', ['20', '6']),
  heightFactor2: heightFactor(1, 'Second height band: times', '1.3'),
  heightLimit3: heightLimit(2, 'Third height band: up to', ['40', '12']),
  heightFactor3: heightFactor(2, 'Third height band: times', '1.7'),
  heightFactor4: heightFactor(3, 'Higher: times', '2.2'),

  setUpOpen: setUp('open', 'Set-up at a tree, open access', '6'),
  setUpFenced: setUp('fenced', 'Set-up at a tree, fenced yard', '10'),
  setUpNoMachine: setUp('no machine', 'Set-up at a tree, no machine', '16'),
  betweenTrees: rate(site, 'Way to a tree from the one before', 'number', 'minutes', '2', [0, 240], {
    use: 'minutes',
    cell: null,
    note: 'House figure. With the gear, within a zone or along a street; added to the set-up of every tree, with a pole too.'
  }),
  accessOpen: siteFactor('open', 'Site factor, open access', '1'),
  accessFenced: siteFactor('fenced', 'Site factor, fenced yard', '1.15'),
  accessNoMachine: siteFactor('no machine', 'Site factor, no machine', '1.35'),

  poleHeight: rate(pole, 'Every cut of the visit up to', 'height', height, ['15', '4.5'], [0, 400], {
    use: 'minutes',
    cell: null,
    note: 'Where that holds one person sets up and cuts and the crew works elsewhere. Put 0 to send the crew to every tree.'
  }),
  poleCut: rate(pole, 'and no cut thicker than', 'diameter', length, ['2', '5'], [0.1, 200], {
    use: 'minutes',
    cell: null
  }),
  setUpPole: rate(pole, 'Set-up at a tree, with a pole', 'number', 'minutes', '1', [0, 600], {
    use: 'minutes',
    cell: null
  }),

  brushPerMinute: rate(
    brush,
    'Green brush dragged, chipped and loaded',
    'number',
    ['lb a minute', 'kg a minute'],
    ['20', '9'],
    [0.1, 10_000],
    { use: 'minutes', cell: 'Brush_a_minute' }
  ),
  disposalKind: rate(brush, 'Disposal is paid by', 'choice', 'choice', 'weight', [0, 0], {
    use: 'disposal',
    cell: 'Disposal_kind',
    choices: ['weight', 'load'],
    note: 'Only the one of the next rates that it names is charged, so that nothing is charged twice.'
  }),
  disposalPerWeight: rate(
    brush,
    'Disposal by weight',
    money,
    ['a lb', 'a kg'],
    ['0.03', '0.06'],
    [0, 100_000],
    { use: 'visit', cell: 'Disposal_rate', fine: true }
  ),
  loadVolume: rate(brush, 'Chips in a full load', 'number', ['yd³', 'm³'], ['14', '11'], [0.1, 1000], {
    use: 'year',
    cell: 'Load_volume'
  }),
  loadCharge: rate(brush, 'Disposal by load', money, 'a load', '40.00', any, {
    use: 'year',
    cell: 'Load_charge',
    note: 'Whole loads of each year of work, shared over its trees.'
  }),

  mobilization: rate(trips, 'Mobilization', money, 'a year of work', '90.00', any, {
    use: 'year',
    cell: 'Mobilization_charge',
    note: 'Shared over the trees worked on in that year, by crew-hours.'
  }),
  travelHours: rate(
    trips,
    'Travel of the crew, there and back',
    'number',
    'hours a crew day',
    '0.75',
    [0, 12],
    { use: 'year', cell: 'Travel_hours', note: 'Paid as crew time; shared as mobilization is.' }
  ),
  minimumPerTrip: rate(trips, 'Least charge for a trip', money, 'a year of work', '250.00', any, {
    use: 'trip',
    cell: 'Least_trip',
    note: 'Where the trees of a year come to less, what is missing is shared over them by crew-hours.'
  }),

  contingencyRate: rate(charge, 'Contingency', 'share', 'of the cost', '0.05', [0, 1], {
    use: 'price',
    cell: 'Contingency_rate',
    note: `5 to 15 % is ${practice}.`
  }),
  overheadRate: rate(charge, 'Overhead', 'share', 'of cost and contingency', '0.18', [0, 5], {
    use: 'price',
    cell: 'Overhead_rate'
  }),
  profitKind: rate(charge, 'Profit is calculated as', 'choice', 'choice', 'margin', [0, 0], {
    use: 'price',
    cell: 'Profit_kind',
    choices: ['margin', 'markup'],
    note: 'A margin is a share of the price, a markup a share of the cost: a margin of 25 % is a markup of a third.'
  }),
  profitRate: rate(charge, 'Margin or markup', 'share', 'of price or of cost', '0.15', [0, 5], {
    use: 'price',
    cell: 'Profit_rate',
    note: 'A margin stays below 100 %, since that share of the price cannot all be profit.'
  }),
  minimumPerTree: rate(charge, 'Least charge for a tree at a visit', money, 'a tree', '20.00', any, {
    use: 'price',
    cell: 'Least_charge'
  }),
  taxRate: rate(charge, 'Tax', 'share', 'of the price', '0', [0, 1], {
    use: 'estimate',
    cell: 'Tax_rate',
    fine: true
  }),

  forecastSpread: rate(
    paper,
    'Later visits may cost less or more by',
    'share',
    'of the price',
    '0.30',
    [0, 1],
    {
      use: 'forecast',
      cell: 'Forecast_spread',
      note: 'House rule: what a limb carries is known to ±30 %, and the trees are measured again.'
    }
  ),
  currency: rate(paper, 'Currency', 'code', 'code', 'USD', [0, 0], {
    use: 'estimate',
    cell: null,
    note: 'Three letters, as ISO 4217 has them.'
  }),
  minorDigits: rate(paper, 'Decimals of the currency', 'whole', 'digits', '2', [0, 3], {
    use: 'rounding',
    cell: 'Money_digits',
    note: 'Every printed line is rounded half up to them; totals are sums of printed lines.'
  }),
  validityDays: rate(paper, 'The estimate holds for', 'whole', 'days', '30', [1, 365], {
    use: 'estimate',
    cell: null
  })
} satisfies Record<string, RateEntry>

export type RateName = keyof typeof rateBook

export const rateNames = Object.keys(rateBook) as RateName[]

/** The value of every rate as text in the unit of a system, so that money stays exact. */
export type RateValues = Record<RateName, string>

/** The invented values that a Rates sheet starts with. */
export function startValues(system: UnitSystem): RateValues {
  return Object.fromEntries(rateNames.map((name) => [name, rateBook[name].start[system]])) as RateValues
}

/** The entry of a rate, without the exact type of each. */
export function rateEntry(name: RateName): RateEntry {
  return rateBook[name]
}

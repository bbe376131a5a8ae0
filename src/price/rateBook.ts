import type { UnitSystem } from '../../shared/units'

/** What a rate's cell may hold. A share is 0.18 or 18 %; a choice is one of `choices`; a code is a currency's letters. */
export type RateKind = 'money' | 'number' | 'whole' | 'share' | 'choice' | 'code'

/** One rate of the business: what it is called, what it may be, and the invented value it starts with. */
export interface RateEntry {
  group: string
  name: string
  kind: RateKind
  /** By unit system; an amount of money is in the currency of the sheet. */
  unit: Record<UnitSystem, string>
  start: Record<UnitSystem, string>
  low: number
  high: number
  choices: readonly string[]
  note: string
}

type Both = string | readonly [inches: string, centimetres: string]

function entry(
  group: string,
  name: string,
  kind: RateKind,
  unit: Both,
  start: Both,
  [low, high]: readonly [number, number],
  note = ''
): RateEntry {
  const by = (text: Both): Record<UnitSystem, string> =>
    typeof text === 'string' ? { 'in-ft': text, 'cm-m': text } : { 'in-ft': text[0], 'cm-m': text[1] }
  return { group, name, kind, unit: by(unit), start: by(start), low, high, choices: [], note }
}

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
const brush = 'Brush'
const trips = 'Trips'
const charge = 'From cost to price'
const paper = 'On the paper'

/** Every rate of the Rates sheet, in its order. Every start value is invented. */
export const rateBook = {
  crewPersons: entry(crew, 'Persons in the crew', 'whole', 'persons', '3', [1, 12]),
  wage: entry(crew, 'Wage of one person', money, 'an hour', '28.00', anHour),
  burdenRate: entry(
    crew,
    'Burden on wages',
    'share',
    'of the wage',
    '0.40',
    [0, 2],
    `Taxes, insurance, leave. 25 to 45 % is ${practice}.`
  ),
  equipmentHour: entry(crew, 'Equipment of the crew', money, 'an hour', '34.00', anHour),
  dayHours: entry(crew, 'Productive hours of a crew day', 'number', 'hours', '7', [1, 14]),

  cutLimit1: entry(cuts, 'First class of cut: up to', 'number', length, ['1', '2.5'], [0.1, 200]),
  cutMinutes1: entry(cuts, 'First class of cut: one takes', 'number', 'minutes', '1.5', [0, 600]),
  cutLimit2: entry(cuts, 'Second class of cut: up to', 'number', length, ['2', '5'], [0.1, 200]),
  cutMinutes2: entry(cuts, 'Second class of cut: one takes', 'number', 'minutes', '3', [0, 600]),
  cutLimit3: entry(cuts, 'Third class of cut: up to', 'number', length, ['4', '10'], [0.1, 200]),
  cutMinutes3: entry(cuts, 'Third class of cut: one takes', 'number', 'minutes', '7', [0, 600]),
  cutLimit4: entry(cuts, 'Fourth class of cut: up to', 'number', length, ['6', '15'], [0.1, 200]),
  cutMinutes4: entry(cuts, 'Fourth class of cut: one takes', 'number', 'minutes', '14', [0, 600]),
  cutMinutes5: entry(cuts, 'Larger cuts: one takes', 'number', 'minutes', '25', [0, 600]),

  heightLimit1: entry(heights, 'First height band: up to', 'number', height, ['10', '3'], [0.1, 400]),
  heightFactor1: entry(heights, 'First height band: times', 'number', 'factor', '1', [0.1, 20]),
  heightLimit2: entry(heights, 'Second height band: up to', 'number', height, ['20', '6'], [0.1, 400]),
  heightFactor2: entry(heights, 'Second height band: times', 'number', 'factor', '1.3', [0.1, 20]),
  heightLimit3: entry(heights, 'Third height band: up to', 'number', height, ['40', '12'], [0.1, 400]),
  heightFactor3: entry(heights, 'Third height band: times', 'number', 'factor', '1.7', [0.1, 20]),
  heightFactor4: entry(heights, 'Higher: times', 'number', 'factor', '2.2', [0.1, 20]),

  setUpOpen: entry(site, 'Set-up at a tree, open access', 'number', 'minutes', '8', [1, 600]),
  setUpFenced: entry(site, 'Set-up at a tree, fenced yard', 'number', 'minutes', '12', [1, 600]),
  setUpNoMachine: entry(site, 'Set-up at a tree, no machine', 'number', 'minutes', '18', [1, 600]),
  accessOpen: entry(site, 'Site factor, open access', 'number', 'factor', '1', [0.5, 10], practice),
  accessFenced: entry(site, 'Site factor, fenced yard', 'number', 'factor', '1.15', [0.5, 10], practice),
  accessNoMachine: entry(site, 'Site factor, no machine', 'number', 'factor', '1.35', [0.5, 10], practice),

  brushPerMinute: entry(
    brush,
    'Green brush dragged, chipped and loaded',
    'number',
    ['lb a minute', 'kg a minute'],
    ['20', '9'],
    [0.1, 10_000]
  ),
  disposalPerWeight: entry(
    brush,
    'Disposal by weight',
    money,
    ['a lb', 'a kg'],
    ['0.03', '0.06'],
    [0, 100_000],
    'Put 0 where you pay by the load.'
  ),
  loadVolume: entry(brush, 'Chips in a full load', 'number', ['yd³', 'm³'], ['14', '11'], [0.1, 1000]),
  loadCharge: entry(
    brush,
    'Disposal by load',
    money,
    'a load',
    '40.00',
    any,
    'Whole loads of each year of work, shared over its trees.'
  ),

  mobilisation: entry(
    trips,
    'Mobilisation',
    money,
    'a year of work',
    '90.00',
    any,
    'Shared over the trees worked on in that year, by crew-hours.'
  ),
  travelHours: entry(
    trips,
    'Travel of the crew, there and back',
    'number',
    'hours a crew day',
    '0.75',
    [0, 12],
    'Paid as crew time; shared as mobilisation is.'
  ),

  contingencyRate: entry(
    charge,
    'Contingency',
    'share',
    'of the cost',
    '0.05',
    [0, 1],
    `5 to 15 % is ${practice}.`
  ),
  overheadRate: entry(charge, 'Overhead', 'share', 'of cost and contingency', '0.18', [0, 5]),
  profitKind: {
    ...entry(charge, 'Profit is reckoned as', 'choice', 'choice', 'margin', [0, 0]),
    choices: ['margin', 'markup'],
    note: 'A margin is a share of the price, a markup a share of the cost: a margin of 25 % is a markup of a third.'
  },
  profitRate: entry(
    charge,
    'Margin or markup',
    'share',
    'of price or of cost',
    '0.15',
    [0, 5],
    'A margin stays below 100 %, since that share of the price cannot all be profit.'
  ),
  minimumPerTree: entry(charge, 'Least charge for a tree at a visit', money, 'a tree', '60.00', any),
  taxRate: entry(charge, 'Tax', 'share', 'of the price', '0', [0, 1]),

  currency: entry(paper, 'Currency', 'code', 'code', 'USD', [0, 0], 'Three letters, as ISO 4217 has them.'),
  minorDigits: entry(
    paper,
    'Decimals of the currency',
    'whole',
    'digits',
    '2',
    [0, 3],
    'Every printed line is rounded half up to them; totals are sums of printed lines.'
  ),
  validityDays: entry(paper, 'The estimate holds for', 'whole', 'days', '30', [1, 365])
} as const satisfies Record<string, RateEntry>

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

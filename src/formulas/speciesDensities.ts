import type { Sourced } from '../../shared/sourced'
import { kilogramsPerCubicMeterPerPoundPerCubicFoot } from '../../shared/units'

/** Green density of a species' wood, and what it is called. */
export interface SpeciesDensity extends Sourced {
  name: string
  botanical: string
}

const table = 'USFS FIA reference species table: specific gravity × 62.4 × (1 + moisture content)'

function wood(name: string, botanical: string, gravity: number, moisture: number): SpeciesDensity {
  return {
    name,
    botanical,
    value: gravity * 62.4 * (1 + moisture / 100),
    unit: 'lb/ft³',
    source: `${table}; SG ${gravity}, MC ${moisture} %`,
    certainty: 'read'
  }
}

/** Specific gravity (green volume, dry weight) and moisture content in percent of dry weight, as the table gives them. */
export const speciesDensities: readonly SpeciesDensity[] = [
  wood('red maple', 'acer rubrum', 0.49, 63.5),
  wood('sugar maple', 'acer saccharum', 0.56, 57.4),
  wood('silver maple', 'acer saccharinum', 0.44, 67.5),
  wood('norway maple', 'acer platanoides', 0.47, 70.3),
  wood('northern red oak', 'quercus rubra', 0.56, 83.1),
  wood('white oak', 'quercus alba', 0.6, 68.3),
  wood('live oak', 'quercus virginiana', 0.8, 52.2),
  wood('pin oak', 'quercus palustris', 0.58, 76.8),
  wood('willow oak', 'quercus phellos', 0.56, 83.1),
  wood('american elm', 'ulmus americana', 0.46, 94),
  wood('white ash', 'fraxinus americana', 0.55, 45.7),
  wood('green ash', 'fraxinus pennsylvanica', 0.53, 57.2),
  wood('honeylocust', 'gleditsia triacanthos', 0.6, 60.3),
  wood('sycamore', 'platanus occidentalis', 0.46, 81.2),
  wood('sweetgum', 'liquidambar styraciflua', 0.46, 74.2),
  wood('yellow-poplar', 'liriodendron tulipifera', 0.4, 95),
  wood('basswood', 'tilia americana', 0.32, 105.3),
  wood('black cherry', 'prunus serotina', 0.47, 53.4),
  wood('beech', 'fagus grandifolia', 0.56, 54.5),
  wood('hackberry', 'celtis occidentalis', 0.49, 63.5),
  wood('black walnut', 'juglans nigra', 0.51, 79.1),
  wood('cottonwood', 'populus deltoides', 0.37, 116.6),
  wood('eastern white pine', 'pinus strobus', 0.34, 65)
]

/** Other names people write, each with the name above it stands for (common names, from memory). */
const otherNames = new Map(
  Object.entries({
    'red oak': 'northern red oak',
    'honey locust': 'honeylocust',
    'american sycamore': 'sycamore',
    'american sweetgum': 'sweetgum',
    'sweet gum': 'sweetgum',
    'tulip tree': 'yellow-poplar',
    tuliptree: 'yellow-poplar',
    'tulip poplar': 'yellow-poplar',
    'yellow poplar': 'yellow-poplar',
    'american basswood': 'basswood',
    'american linden': 'basswood',
    'american beech': 'beech',
    'common hackberry': 'hackberry',
    'eastern cottonwood': 'cottonwood',
    'white pine': 'eastern white pine',
    'southern live oak': 'live oak',
    'scarlet maple': 'red maple',
    'swamp maple': 'red maple'
  })
)

/** The middle of the hardwoods listed, for a species that is not (house rule). */
export const middleHardwood: SpeciesDensity = {
  name: 'hardwood',
  botanical: '',
  value: middle(
    speciesDensities.filter((entry) => !entry.botanical.startsWith('pinus')).map(({ value }) => value)
  ),
  unit: 'lb/ft³',
  source: 'house choice: the median of the hardwoods in this table',
  certainty: 'house'
}

function middle(values: number[]): number {
  const sorted = values.sort((a, b) => a - b)
  const half = (sorted.length - 1) / 2
  return ((sorted[Math.floor(half)] ?? NaN) + (sorted[Math.ceil(half)] ?? NaN)) / 2
}

const byName = new Map<string, SpeciesDensity>()
for (const entry of [...speciesDensities, middleHardwood]) {
  byName.set(entry.name, entry)
  if (entry.botanical !== '') byName.set(entry.botanical, entry)
}

/** A name as it is looked up: lower case, no cultivar, "Maple, red" reversed. */
function lookUpName(species: string): string {
  const plain = species
    .toLowerCase()
    .replace(/['‘"“(].*$/, '')
    .replace(/\s+/g, ' ')
    .trim()
  const turned = /^([^,]+), ?([^,]+)$/.exec(plain)
  return turned ? `${turned[2]} ${turned[1]}` : plain
}

/** The density of a species by its common or botanical name, or null where it is not listed. */
export function densityOf(species: string): SpeciesDensity | null {
  const name = lookUpName(species)
  return byName.get(otherNames.get(name) ?? name) ?? null
}

/** lb/ft³ as kg/m³. */
export function poundsPerCubicFootAsMetric(density: number): number {
  return density * kilogramsPerCubicMeterPerPoundPerCubicFoot
}

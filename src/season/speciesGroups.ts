import type { SpeciesGroup } from './windows'

/** Words that put a species in a group, and those that only sound like it. */
interface GroupWords {
  words: RegExp
  except: RegExp
}

/**
 * Oaks: every Quercus. Silky oak, she-oak and poison oak are no oaks (botany, from memory).
 *
 * Bleeders: birch, black locust, elm, goldenchain, hackberry, Japanese pagodatree, Kentucky coffeetree, maple, mulberry,
 * poplar, walnut and willow. Source: Colorado State University Extension GardenNotes 613. That cottonwood and aspen are
 * poplars, box elder is a maple, and tulip poplar, willow oak and desert willow are none of these is from memory.
 */
const groups: Record<Exclude<SpeciesGroup, 'all trees'>, GroupWords> = {
  oaks: { words: /\b(oaks?|quercus)\b/, except: /\b(silky|she|poison)[ -]?oak\b/ },
  bleeders: {
    words:
      /\b(birch|betula|black locust|robinia|elms?|ulmus|golden ?chain|laburnum|hackberry|celtis|pagoda ?tree|styphnolobium|coffee ?tree|gymnocladus|maples?|acer|box ?elder|mulberry|morus|poplar|cottonwood|aspen|populus|walnut|juglans|willow|salix)\b/,
    except: /\b(tulip ?(tree|poplar)|yellow poplar|willow oak|willow-leaved|desert willow)\b/
  }
}

/** True where a species, by its common or botanical name, belongs to the group. */
export function isInGroup(species: string, group: SpeciesGroup): boolean {
  if (group === 'all trees') return true
  const name = species.toLowerCase().replace(/\s+/g, ' ').trim()
  const { words, except } = groups[group]
  return words.test(name) && !except.test(name)
}

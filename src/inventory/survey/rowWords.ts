import { fold } from '../headers/headerText'

const totals =
  /^(?:all (?:trees|limbs|rows|sites)$|alle baume$|tous les arbres$|todos los arboles$)|^(?:limbs?|trees?|branches|aste|baeume|baume|arbres|arboles|ramas) (?:sub)?total\b|^(?:grand |sub ?)?(?:totals?|sum|average|avg|mean|median|min|max|minimum|maximum|count|n ?=.*|stdev|std(?:\.? ?dev)?\.?|standard (?:deviation|error)|variance|overall|carried forward|brought forward|ubertrag|report|percentile|standardabweichung|ecart[- ]type|desviacion|mediane?|gesamt|gesamtsumme|summe|mittel|mittelwert|durchschnitt|anzahl|moyenne|somme|totaux|promedio|suma|media|subtotal|zwischensumme|sous[ -]total)\b\s*(?:$|[:(=]|of\b|h\.?t\b|ttc\b|hors tax|netto|brutto|net\b|general|sin iva|con iva|pages?\b|seite\b|pagina\b|height|dbh|dia|(?:\d+ )?(?:trees?|limbs?|sites?|baeume|baume|arbres|arboles)\b)/

const notes =
  /^[^\p{L}\p{N}]{1,3}\s*\p{L}|^(?:example|e\.g\.|sample|beispiel|bsp\.?|exemple|ejemplo|muster)$|^(?:notes?|n\.?b\.?|remarks?|comments?|surveyed|survey|measured|prepared|checked|inspected|accepted|signed|signature|approved|tax|vat|sales tax|date|page|legend|key|source|see|total price|bemerkung(?:en)?|hinweise?|aufgenommen|erfasst|geprueft|gepruft|unterschrift|datum|mwst|legende|remarques?|releve|verifie|accepte|signe|signature|tva|legende|notas?|observaciones|levantado|medido por|aceptado|firma|firmado|iva|fecha|leyenda)\b\s*(?::|by\b|\d|$|von\b|par\b|por\b|\.)/u

/** What stands where no tree stands: in rows of a tree, each the whole text of a cell. */
const noTrees =
  /^(?:removed|felled|fallen|dead and removed|vacant|vacancy|no tree|tree (?:gone|removed|missing)|missing tree|gone|empty|leer|baum (?:fehlt|gefallt|gefaellt|entfernt)|gefallt|gefaellt|entfernt|gerodet|vide|vacante?|arbre (?:absent|manquant|abattu|supprime)|abattue?|supprimee?|dessouchee?|non plante|a planter|vacio|vacia|(?:arbol )?(?:talado|eliminado|retirado)|arbol ausente|sin arbol|sin plantar|por plantar|marra)(?: (?:in |am |en )?[\d./-]{4,10})?$/

/** Sites without a tree, and stumps, which may be followed by a remark. */
const sites =
  /^(?:vacant|empty|open|available|planting) (?:site|pit|space|well|spot)|^(?:stump|leerstelle|leerer? (?:standort|platz|baumscheibe|pflanzgrube)|leere baumscheibe|freier standort|fehlstelle|nachpflanzung|stubben|stumpf|baumstumpf|baumstubben|wurzelstock|(?:emplacement|fosse|site) (?:vide|vacante?|libre)|souche|tocon|(?:alcorque|hoyo|sitio|plaza|hueco) (?:vaci[oa]|vacante|libre))/
const longestSite = 48
/** A dead tree that is to go. */
const toGo = /^dead(?: tree)? ?[-–—,/:(] ?(?:to be )?(?:remov|replac|fell)/

/** Short words of statistics that are as often the id of a tree or a limb: north, south-east, quadrant 1. */
const statistics = /^(?:n|s\.?d\.?|s\.?e\.?|cv|range|mode|q[13])$/

/** Words for a mean that also say that a tree is neither good nor bad. */
const middling = /^(?:average|mittel|moyenne|media)$/

/** What a text says of its row. */
export interface Judged {
  readonly folded: string
  readonly total: boolean
  readonly note: boolean
  readonly noTree: boolean
  /** It may stand for a statistic: "n", "SD". */
  readonly statistic: boolean
  /** It is a word for a total that is also one for a tree: "average". */
  readonly isAlsoMiddling: boolean
}

/** Texts stand in many rows, so each is judged once; the store is emptied before it grows large. */
const judgments = new Map<string, Judged>()
const mostJudgments = 50_000

function isSite(text: string): boolean {
  const [found] = text.length > longestSite ? [] : (sites.exec(text) ?? [])
  return (
    found !== undefined && /^(?: (?:in |am |en )?[\d./-]{4,10})?$|^ ?[-–,:;(]/.test(text.slice(found.length))
  )
}

/** What a text says of the row that it stands in. */
export function judged(text: string): Judged {
  let found = judgments.get(text)
  if (found === undefined) {
    const folded = fold(text).trim().replace(/\s+/g, ' ')
    found = {
      folded,
      total: totals.test(folded),
      note: notes.test(folded),
      noTree: noTrees.test(folded) || isSite(folded) || toGo.test(folded),
      statistic: statistics.test(folded),
      isAlsoMiddling: middling.test(folded)
    }
    if (judgments.size >= mostJudgments) judgments.clear()
    judgments.set(text, found)
  }
  return found
}

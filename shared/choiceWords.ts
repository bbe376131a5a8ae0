/**
 * The words a cell may hold for each choice, with the spellings the trade uses in English, German, French and Spanish
 * (common practice, no source). The first word of a list is ours. Lists are lines, parted by commas.
 */
function listed(...lines: readonly string[]): readonly string[] {
  return lines.flatMap((line) => line.split(', '))
}

const lifeStage = {
  planting: listed(
    'planting, newly planted, newly-planted, new, new planting, at planting, sapling, whip, seedling, just planted',
    'recently planted, transplant, neupflanzung, gepflanzt, frisch gepflanzt, nouvellement planté',
    'jungpflanze, nouvelle plantation, jeune plant, plantation, recién plantado, plantón, plantación'
  ),
  young: listed(
    'young, juvenile, establishing, training, y, yg, young tree, immature, jung, jungbaum',
    'jugendphase, jugend, jeune, jeune arbre, juvénile, joven, juvenil, árbol joven'
  ),
  medium: listed(
    'medium, medium-aged, established, middle-aged, middle aged, mid-aged, semi-mature, semi mature, semimature',
    'sm, maturing, mittel, mittelalt, reifend, reifephase, heranwachsend, semi-adulte, jeune adulte',
    'intermédiaire, semi-mûr, semimaduro, semi-maduro, adulto joven, mediano, intermedio'
  ),
  mature: listed(
    'mature, adult, m, early mature, fully mature, reif, ausgewachsen, adulte, mûr, mûre, adulto, adulta, maduro',
    'madura'
  ),
  old: listed(
    'old, overmature, over-mature, over mature, om, veteran, v, ancient, senescent, late mature, alt',
    'altbaum, überreif, ueberreif, seneszent, alterungsphase, vieux, vieille, âgé, sénescent, vétéran',
    'viejo, vieja, senescente, sobremaduro, veterano, anciano'
  )
}

const form = {
  // A crown left to itself is what is taken where nothing is known.
  decurrent: listed(
    'decurrent, spreading, rounded, round, broad, natural, free, ausladend, natürlich, freiwachsend, étalé, libre',
    'port libre, naturel, naturelle, extendido, copa libre'
  ),
  excurrent: listed('excurrent, single-leader, conical, pyramidal, kegelförmig, conique, cónico'),
  'multi-stem': listed('multi-stem, multistem, multi-stemmed, clump, mehrstämmig, cépée, multitronco'),
  palm: listed('palm, palme, palmier, palmera')
}

const vigor = {
  good: listed(
    'good, high, normal, vigorous, healthy, thriving, strong, e, excellent, very good, g, vg, gut, guter, sehr gut, vital, gesund, ungeschwächt',
    'hoch, bon, bonne, très bon, très bonne, excellente, vigoureux, élevée, sain, bueno, buena',
    'alta, alto, muy bueno, muy buena, excelente, buen, vigoroso, sano, sana'
  ),
  fair: listed(
    'fair, moderate, average, medium, reduced, f, mittel, mittlerer, mäßig, maessig, befriedigend, vermindert',
    'geschwächt, leicht geschwächt, moyen, moyenne, passable, modéré, modérée, regular, medio, media, moderado, moderada',
    'aceptable'
  ),
  poor: listed(
    'poor, low, declining, in decline, decline, stressed, very poor, drought, dying, moribund, critical, p, vp, bad, weak, schlecht, schlechter, gering, schwach',
    'sehr schlecht, stark geschwächt, absterbend, mauvais, mauvaise, faible, dépérissant, médiocre, malo, mala, bajo',
    'baja, débil, pobre, mal, decadente, deficiente'
  )
}

const growth = {
  slow: listed('slow, low, langsam, gering, schwach, lent, lente, faible, lento, lenta, bajo, baja'),
  medium: listed(
    'medium, moderate, average, normal, mittel, mäßig, moyen, moyenne, modéré, modérée, medio, media',
    'moderado, moderada'
  ),
  fast: listed(
    'fast, rapid, high, vigorous, quick, schnell, stark, rasch, rapide, forte, fort, rápido, rápida',
    'alto, alta'
  )
}

const includedBark = {
  none: listed(
    'none, no, n, absent, 0, false, -, –, —, ☐, nein, keine, kein, non, aucune, ninguna, sin, absente, ausente',
    'not included, nicht eingewachsen, non incluse, pas incluse, no incluida, normal, normale, sound, ok, open, gesund, saine, clean',
    'unauffällig, sain, sana, sano'
  ),
  partial: listed(
    'partial, part, partly, teilw, some, p, slight, slightly, minor, moderate, teilweise, teils, leicht, gering, schwach',
    'mäßig, ansatzweise, partielle, partiel, partiellement, légère, léger, faible, modérée, parcial, en parte, leve',
    'ligera, ligero, moderada'
  ),
  full: listed(
    'full, yes, y, complete, included, incl, included bark, bark included, incl bark, inclusion, present, true, 1, x, ✓, ✔, ☑, ☒, •, ●, +, wahr, vrai, ja, j, voll, vollständig',
    'eingeschlossen, eingeschlossene rinde, eingewachsene rinde, écorce incluse, corteza incluida, inclusa',
    'eingewachsen, vorhanden, oui, o, complète, incluse, présente, sí, s, total, incluida, completa',
    'severe, strong, heavy, marked, extensive, stark, deutlich, ausgeprägt, forte, marquée, importante, fuerte',
    'marcada, severa'
  )
}

const role = {
  leader: listed(
    'leader, main leader, trunk, main trunk, main stem, central leader, dominant, leittrieb, stamm',
    'hauptstamm, terminaltrieb, flèche, axe principal, tronc, guía, guía principal, eje principal',
    'tronco, líder'
  ),
  limb: listed(
    'limb, branch, lateral, scaffold, stem, codominant, codom, competing, ast, äste, aeste, leitast',
    'starkast, seitenast, stämmling, staemmling, branche, charpentière, tige',
    'rama, rama principal, codominante',
    'latérale, latéral, side branch, seitlich, concurrente, konkurrierend, subordinate, subordinated',
    'codominant stem, competitor, rival, secondary, overtopped, konkurrenzast, untergeordnet, unterständig, secondaire',
    'competidora, secundaria',
    'suppressed, dominated, dominée, dominé, unterdrückt, dominada, dominado, subordinada, subordonnée'
  ),
  permanent: listed('permanent, perm, dauerast, permanente, définitive, definitiva'),
  temporary: listed(
    'temporary, temp, temporary branch, nurse, temporär, temporaer, zeitweilig, temporaire, temporal',
    'provisional, provisoire'
  )
}

const permanent = {
  yes: listed(
    'yes, permanent, perm, p, y, true, x, 1, ✓, ✔, ☑, ☒, •, ●, +, keep, stays, scaffold, ja, j, dauerhaft, dauerast',
    'bleibt, gerüstast, oui, o, permanente, définitive, définitif, charpentière, vrai, wahr, sí, s, verdadero',
    'definitiva, definitivo'
  ),
  no: listed(
    'no, temporary, temp, t, n, false, 0, -, –, —, ☐, nein, temporär, temporaer, zeitweilig, falsch, non',
    'temporaire, provisoire, faux, temporal, provisional, falso'
  )
}

const live = {
  live: listed(
    'live, living, alive, healthy, vital, gesund, sano, sana, sain, saine, l, yes, true, 1, lebend, lebendig, grün, ja, vivant, vivante, vif, v, oui',
    'vivo, viva, sí'
  ),
  dead: listed(
    'dead, d, deadwood, dead wood, no, false, 0, tot, abgestorben, totholz, nein, mort, morte, m',
    'bois mort, sec, sèche, non, muerto, muerta, seco, seca'
  )
}

const measured = {
  above: listed(
    'above, above union, just above, a, over, über, oberhalb, ueber, dessus, au-dessus, au dessus',
    'encima, por encima, arriba, sobre'
  ),
  below: listed(
    'below, below union, just below, b, under, unter, unterhalb, dessous, au-dessous, en dessous',
    'sous, debajo, por debajo, abajo, bajo'
  )
}

const access = {
  open: listed(
    'open, easy, street, roadside, drive, driveway, good, offen, frei, leicht, straße, ouvert',
    'ouverte, libre, facile, rue, abierto, abierta, fácil, calle'
  ),
  fenced: listed(
    'fenced, fenced yard, yard, gate, moderate, narrow, eingezäunt, eingezaeunt, garten, tor, clôturé',
    'clôturée, jardin, portail, étroit, vallado, vallada, jardín, cercado, portón, estrecho'
  ),
  'no machine': listed(
    'no machine, climb, climb only, hand carry, hard, difficult, back yard, backyard, keine maschine',
    'nur klettern, schwer, schwierig, hinterhof, sans machine, grimpe, difficile, sin máquina, trepa',
    'difícil, patio trasero'
  )
}

const flag = {
  yes: listed(
    'yes, y, true, x, 1, ✓, ✔, ☑, ☒, •, ●, +, broken, rubbing, crack, decay, cracked, hanging, present',
    'ja, j, wahr, gebrochen, reibend, fäule, riss, vorhanden, oui, o, vrai, cassée, fissure',
    'pourriture, sí, s, verdadero, rota, grieta, pudrición'
  ),
  no: listed(
    'no, n, false, 0, none, -, –, —, ☐, absent, nein, falsch, keine, kein, non, faux, aucun, aucune, falso',
    'ninguno, ninguna'
  )
}

export const choices = {
  lifeStage,
  form,
  vigor,
  growth,
  includedBark,
  role,
  permanent,
  live,
  measured,
  access,
  flag
} as const

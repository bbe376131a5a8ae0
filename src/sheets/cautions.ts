/** What every document and the pane say where people act on a plan. */
export const cautions: readonly string[] = [
  'Not a tree risk assessment and no promise of safety: this plan is about structure and growth only.',
  'A qualified arborist on site decides every cut and may depart from this plan.',
  'Local law, utility, wildlife and quarantine rules govern. Ask for the pruning windows of your region (oak wilt, nesting); no plan knows them all.',
  'Power lines: stop and call the owner of the line. Never work alone aloft.'
]

/** How far the numbers of a plan may be trusted. */
export const howToRead: readonly string[] = [
  'Allowed removal is a ceiling for the season, not a target. A limb’s foliage share is known to ±30 % only, and limbs left out of the survey make the foliage removed look larger.',
  'Visits after the first are a forecast: measure again before each of them.'
]

/** What a client reads while any rate is still an invented default. */
export const draftNotice = 'Draft: priced with invented example rates. Not an offer.'

/** What whoever prepares the prices reads meanwhile. */
export const inventedRatesNotice =
  'Invented default rates stand behind these prices: put your own on the Rates sheet, and check every price against your costs before you quote it.'

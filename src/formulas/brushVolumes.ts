import type { Evidence } from '../../shared/evidence'

export const brushVolumeEvidence: Evidence = {
  finding: 'Agencies put a cubic yard of loose brush at 250 to 600 lb, and of green chips at about 475.',
  source:
    'Oregon DEQ conversion factors (loose 250, compacted 640, green chips 473, dry chips 243); US EPA 2016 (yard trimmings 250); Massachusetts (brush 500); CalRecycle (loose yard waste 600)',
  certainty: 'read',
  range: 'mixed yard debris as collected',
  caution: 'A pile of untidied brush is bulkier than any of these. Weigh a load of your own.'
}

/** Pounds in a cubic yard. As Oregon DEQ prints them; others go up to 600 for loose brush. */
export const poundsPerCubicYard = {
  'loose brush': 250,
  'compacted brush': 640,
  'green chips': 473,
  'dry chips': 243
} as const

/** Exact by definition (NIST SP 811, from memory). */
export const cubicMetersPerCubicYard = 0.764554857984

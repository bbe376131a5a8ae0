import { readHeaderText } from '../../../src/inventory/headers/headerText'

const unitOf = (header: string) => readHeaderText(header).unit
const says = (header: string) => [...readHeaderText(header).notions]
const unknown = (header: string) => readHeaderText(header).unknown

describe('the unit of a header', () => {
  it.each([
    ['DBH (in.)', 'in'],
    ['DBH, inches', 'in'],
    ['D.B.H. (")', 'in'],
    ['dbh_cm', 'cm'],
    ['DBH/mm', 'mm'],
    ['limbDiaCm', 'cm'],
    ['Stem diam\n(above union)\nin', 'in'],
    ['DBH cm (tape)', 'cm'],
    ['Diameter increment (mm/yr)', 'mm'],
    ['Tree height [m]', 'm'],
    ['Höhe in m', 'm'],
    ['Baumhöhe in Metern', null],
    ['Stammdurchmesser in Zentimeter', 'cm'],
    ['Altura en metros', 'm'],
    ['Diámetro (pulgadas)', 'in'],
    ['Hauteur (pieds)', 'ft'],
    ['Point of attachment (ft)', 'ft'],
    ['Diameter in the union', null],
    ['Baumscheibe (m²)', null]
  ])('“%s” is in %s', (header, unit) => {
    expect(unitOf(header)).toBe(unit)
  })
})

describe('the height at which a stem was measured', () => {
  it.each([
    'Diameter at 4.5 ft (in)',
    'Diameter @ 1.3 m (in)',
    "Trunk dia @ 4.5' (in)",
    'Trunk diameter at 4½ ft (in)',
    'Trunk diameter at 4\'6" (in)',
    'Girth @ 1.5m (in)',
    'Stamm Ø 1,30 m (in)',
    'Stammumfang in 1 m Höhe (in)',
    'Diamètre à 1m30 (in)',
    'Diámetro a 1,30 m del suelo (in)',
    'Diameter at 54 in (in)',
    'Diameter at 1.3 (in)'
  ])('is breast height in “%s”, and no unit', (header) => {
    expect(says(header)).toContain('breast')
    expect(unitOf(header)).toBe('in')
    expect(unknown(header)).toEqual([])
  })

  it('is a nursery’s at 6 in', () => {
    expect(says('Diameter at 6 in (mm)')).toContain('caliperHeight')
    expect(unitOf('Diameter at 6 in (mm)')).toBe('mm')
  })

  it('is not told from the number of a reading', () => {
    expect(says('limb_dia_2_in')).not.toContain('caliperHeight')
    expect(unitOf('limb_dia_2_in')).toBe('in')
  })
})

describe('the words of a header', () => {
  it.each([
    ['Vitalitätsstufe', ['vigor', 'rating']],
    ['Kronenunterkante', ['crown', 'base']],
    ['Straßenbaumnummer', ['tree', 'id']],
    ['Schnittstellendurchmesser', ['cut', 'diameter']],
    ['crownbaseht', ['crown', 'base', 'height']],
    ['treeid', ['tree', 'id']]
  ])('are taken out of the compound “%s”', (header, notions) => {
    expect(says(header)).toEqual(expect.arrayContaining(notions))
    expect(unknown(header)).toEqual([])
  })

  it.each([
    ['des Baumes', 'tree'],
    ['des Astes', 'limb'],
    ['der lebenden Äste', 'live'],
    ['de l’arbre', 'tree'],
    ["d'arbre", 'tree'],
    ['del árbol', 'tree'],
    ['des branches vivantes', 'live'],
    ['de las ramas', 'limb']
  ])('are known in every case, number and gender: “%s”', (header, notion) => {
    expect(says(header)).toContain(notion)
    expect(unknown(header)).toEqual([])
  })

  it.each([
    ['Trunk daimeter', 'diameter'],
    ['Tree hieght', 'height'],
    ['Astdurchmeser', 'diameter'],
    ['Kronenansaz', 'crownBase'],
    ['Hautuer', 'height'],
    ['Vigeur', 'vigor'],
    ['Tre ID', 'tree']
  ])('are known with one slip: “%s”', (header, notion) => {
    expect(says(header)).toContain(notion)
    expect(readHeaderText(header).guessed).toBe(true)
  })

  it.each([
    ['brnch', 'limb'],
    ['attach. ht', 'origin'],
    ['circonf tronc', 'girth'],
    ['eingew. Rinde', 'included']
  ])('are known shortened: “%s”', (header, notion) => {
    expect(says(header)).toContain(notion)
  })

  it('are not guessed from short words', () => {
    expect(unknown('Hole size')).toEqual(['hole'])
    expect(unknown('Tee height')).toEqual(['tee'])
  })

  it('leave out what the cells may hold', () => {
    expect(unknown('Condition (G/F/P)')).toEqual([])
    expect(unknown('Health (good/fair/poor)')).toEqual([])
    expect(unknown('Limb direction (N, NE, ..)')).toEqual([])
    expect(readHeaderText('Dead (Y/N)').tick).toBe(true)
    expect(readHeaderText('Rinde eingewachsen (j/n)').tick).toBe(true)
  })

  it('know a count from a number', () => {
    expect(readHeaderText('Number of limbs').decoy).not.toBeNull()
    expect(readHeaderText('Nr. der Äste').decoy).not.toBeNull()
    expect(readHeaderText('Limb number').decoy).toBeNull()
    expect(readHeaderText('Número de rama').decoy).toBeNull()
  })

  it('name the word that is about something else', () => {
    expect(readHeaderText('Light pole height (ft)').decoy).toBe('light')
    expect(readHeaderText('Gehwegbreite (m)').decoy).toBe('gehwegbreite')
  })
})

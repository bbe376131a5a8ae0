import { phrasings, type Phrasing } from './phrasing'

const of = phrasings.bind(null, 'es')

const ofTrees: Phrasing[] = [
  ...of(
    'tree',
    'N.º de árbol\nNº árbol\nNúmero de árbol\nNumero arbol\nID árbol\nidArbol\narbol_id\nCódigo del árbol\nIdentificador de árbol\nRef. árbol\n? Nº\n? Código\n? N.º'
  ),
  ...of('tree', 'Árbol\nArbol', { context: 'alone' }),
  ...of(
    'species',
    'Especie\nEspecie de árbol\nNombre común\nNombre comun\nNombre científico\nNombre botánico\nnombre_cientifico\nGénero y especie\n? Género\n? Variedad'
  ),
  ...of(
    'trunk',
    `
    DAP (cm) :: cm
    D.A.P. cm :: cm
    Diámetro a la altura del pecho (cm) :: cm
    Diámetro del tronco (cm) :: cm
    Diametro tronco cm :: cm
    Diám. tronco (cm) :: cm
    Ø tronco (cm) :: cm
    Diámetro a 1,30 m (cm) :: cm
    diam_tronco_cm :: cm
    Diametro del troco (cm) :: cm
    ? DN (cm) :: cm
    ? Grosor del tronco (cm) :: cm`
  ),
  ...of(
    'trunk',
    'Perímetro del tronco (cm) :: cm\nPerimetro tronco cm :: cm\nCircunferencia del tronco (cm) :: cm\nCAP (cm) :: cm\nPerímetro a 1,30 m (cm) :: cm',
    { measure: 'girth' }
  ),
  ...of('trunk', 'Perímetro (cm) :: cm\nCircunferencia (cm) :: cm', { measure: 'girth', context: 'alone' }),
  ...of('trunk', 'Diámetro (cm) :: cm', { context: 'alone' }),
  ...of(
    'height',
    'Altura del árbol (m) :: m\nAltura total (m) :: m\nAltura arbol m :: m\nAlt. total (m) :: m\naltura_arbol_m :: m\nalturaTotalM :: m\nAltura¶del árbol (m) :: m\nAltrua total (m) :: m'
  ),
  ...of('height', 'Altura (m) :: m\nAlt. (m) :: m\nAltura\nH (m) :: m', { context: 'tree group' }),
  ...of(
    'crownBase',
    `
    Altura de la base de la copa (m) :: m
    Base de la copa (m) :: m
    Altura base copa m :: m
    Inicio de copa (m) :: m
    Altura de inicio de la copa (m) :: m
    Primera rama viva (m) :: m
    Altura primera rama viva (m) :: m
    base_copa_m :: m
    Base de copa viva (m) :: m
    ? Altura de fuste (m) :: m
    ? Altura de cruz (m) :: m`
  ),
  ...of(
    'spread',
    'Diámetro de copa (m) :: m\nAncho de copa (m) :: m\nDiam. copa (m) :: m\nAnchura de la copa (m) :: m\ndiametro_copa_m :: m'
  ),
  ...of(
    'stage',
    'Etapa de vida\nClase de edad\nFase de desarrollo\nEstado de desarrollo\nfase_desarrollo\nEtapa\n? Edad'
  ),
  ...of(
    'vigor',
    'Vigor\nVitalidad\nEstado sanitario\nSalud del árbol\nEstado fisiológico\nestado_sanitario\n? Estado'
  ),
  ...of('growth', 'Crecimiento\nVelocidad de crecimiento\nTasa de crecimiento'),
  ...of('removed', 'Follaje retirado esta temporada (%) :: %\nFollaje ya eliminado (%) :: %'),
  ...of(
    'clearance',
    'Gálibo requerido (m) :: m\nAltura libre necesaria (m) :: m\nDespeje necesario (m) :: m'
  ),
  ...of('dieback', 'Muerte regresiva (%) :: %\nRamas secas en copa (%) :: %'),
  ...of('caliper', 'Calibre (cm) :: cm\nCalibre de vivero (mm) :: mm'),
  ...of('access', 'Acceso\nAccesibilidad\nAcceso al sitio'),
  ...of('site', 'Ubicación\nCalle\nDirección postal\nLugar\nEmplazamiento'),
  ...of('zone', 'Barrio\nZona\nSector\nDistrito\nN.º de zona'),
  ...of('lastPruned', 'Última poda\nFecha de última poda\nUltima poda\nAño de la última poda\nultima_poda'),
  ...of('matureHeight', 'Altura adulta (m) :: m\nAltura en la madurez (m) :: m'),
  ...of('treeNotes', 'Notas del árbol\nObservaciones del árbol')
]

const ofLimbs: Phrasing[] = [
  ...of(
    'limb',
    'Rama\nN.º de rama\nNº rama\nID rama\nrama_id\nNúmero de rama\nRama principal n.º\nCódigo de rama\nNombre de la rama'
  ),
  ...of('limb', '? Nº', { context: 'limb group' }),
  ...of(
    'diameter',
    `
    Diámetro de rama (cm) :: cm
    Diámetro de la rama (cm) :: cm
    Diametro rama cm :: cm
    Diám. rama (mm) :: mm
    Ø rama (cm) :: cm
    diam_rama_mm :: mm
    diamRamaCm :: cm
    Diámetro en la base de la rama (cm) :: cm
    Rama: diámetro (cm) :: cm
    Diámetor de rama (cm) :: cm
    ? Grosor de rama (cm) :: cm`
  ),
  ...of('diameter', 'Diámetro (cm) :: cm\nDiám. (cm) :: cm\nØ cm :: cm', { context: 'limb group' }),
  ...of('diameter', 'Perímetro de rama (cm) :: cm\nCircunferencia de la rama (cm) :: cm', {
    measure: 'girth'
  }),
  ...of('diameter2', 'Diámetro de rama 2 (cm) :: cm\nDiám. rama, segunda medida (cm) :: cm'),
  ...of(
    'stem',
    `
    Diámetro del tronco sobre la unión (cm) :: cm
    Diámetro del tronco encima de la horquilla (cm) :: cm
    Tronco sobre la unión (cm) :: cm
    Tronco por encima de la rama (cm) :: cm
    Diam. tronco arriba de la union cm :: cm
    Ø tallo sobre la unión (cm) :: cm
    Diámetro del eje por encima (cm) :: cm
    Diámetro del tallo en la unión (cm) :: cm
    tronco_encima_mm :: mm
    Diámetro del eje portador (cm) :: cm
    Diámetro del tronco¶sobre la horquilla¶(cm) :: cm
    ? Tronco en la rama (cm) :: cm`
  ),
  ...of('stem', 'Tallo (cm) :: cm\nDiám. eje (cm) :: cm\nØ tallo cm :: cm', { context: 'limb group' }),
  ...of(
    'stem',
    'Perímetro del tronco sobre la unión (cm) :: cm\nCircunferencia del tallo sobre la horquilla (cm) :: cm',
    { measure: 'girth' }
  ),
  ...of(
    'stemBelow',
    'Tronco bajo la unión (cm) :: cm\nDiámetro del tronco debajo de la horquilla (cm) :: cm\nDiam. tallo por debajo cm :: cm\ntronco_debajo_mm :: mm'
  ),
  ...of('measured', 'Tronco medido arriba o abajo\nMedido encima / debajo'),
  ...of(
    'origin',
    `
    Altura de inserción (m) :: m
    Altura de insercion m :: m
    Inserción (m) :: m
    Altura de la unión (m) :: m
    Altura de la horquilla (m) :: m
    Altura de origen (m) :: m
    altura_insercion_m :: m
    La rama nace a (m) :: m
    Origen de la rama (m) :: m
    Punto de inserción (m) :: m`
  ),
  ...of('origin', 'Origen (m) :: m\nDesde (m) :: m\nNace a (m) :: m', { context: 'limb group' }),
  ...of(
    'tip',
    `
    Altura de la punta (m) :: m
    Altura punta m :: m
    Punta de la rama (m) :: m
    Extremo de la rama (m) :: m
    altura_punta_m :: m
    La rama llega a (m) :: m
    Altura del extremo (m) :: m
    Parte alta de la rama (m) :: m`
  ),
  ...of('tip', 'Punta (m) :: m\nHasta (m) :: m\nLlega a (m) :: m', { context: 'limb group' }),
  ...of('parent', 'Rama madre\nRama portadora\nNace de la rama'),
  ...of('role', 'Función de la rama\nPapel de la rama\nRol'),
  ...of('breakHeight', 'Altura de la rotura (m) :: m\nRama rota a (m) :: m'),
  ...of('permanent', 'Permanente (s/n)\nRama permanente\nRama definitiva\nTemporal o permanente'),
  ...of(
    'lowestPermanent',
    'Rama permanente más baja (m) :: m\nAltura de la primera rama permanente (m) :: m\nRamas permanentes desde (m) :: m'
  ),
  ...of(
    'bark',
    'Corteza incluida\nCorteza incluida (S/N)\nInclusión de corteza\ncorteza_incluida\nCorteza inclusa\nCortesa incluida\n? Corteza\n? Inclusión'
  ),
  ...of(
    'angle',
    'Ángulo desde la vertical\nÁngulo de la rama (°) :: deg\nÁngulo de inserción (grados) :: deg'
  ),
  ...of('bearing', 'Rumbo de la rama\nAzimut\nOrientación de la rama'),
  ...of('live', 'Viva o muerta\nViva / muerta\nRama muerta (S/N)'),
  ...of('broken', 'Rota\nRama rota\nQuebrada'),
  ...of('rubbing', 'Roce\nRama que roza\nCruzada / roza'),
  ...of('decay', 'Pudrición\nPudrición o grieta\nGrieta'),
  ...of('length', 'Longitud de la rama (m) :: m\nLargo de rama (m) :: m\nlongitud_rama_m :: m'),
  ...of('lowestFoliage', 'Follaje más bajo (m) :: m\nHojas más bajas de la rama (m) :: m'),
  ...of('lateral', 'Diámetro de la lateral (cm) :: cm\nDiámetro de rama lateral (cm) :: cm'),
  ...of('cut', 'Diámetro de corte (cm) :: cm\nDiám. del corte (cm) :: cm'),
  ...of('lastCutDate', 'Fecha del último corte\nÚltimo corte de la rama'),
  ...of('foliageShare', 'Porción del follaje (%) :: %\nParte del follaje (%) :: %'),
  ...of('notes', 'Notas de la rama\nObservaciones de rama')
]

/** Run together, misspelled, lettered, or asked in a whole sentence; and words that fewer people use. */
const further: Phrasing[] = [
  ...of('crownBase', 'Fuste limpio (m) :: m\n? Altura de la cruz (m) :: m'),
  ...of('origin', 'Altura del nudo (m) :: m')
]

export const spanish: readonly Phrasing[] = [...ofTrees, ...ofLimbs, ...further]

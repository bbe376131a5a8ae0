import type { Words } from './notion'

export const spanish: Words = {
  tree: 'arbol arboles planta ejemplar pie',
  limb: 'rama brazo ramas rama.principal rama.estructural',
  stem: 'tallo fuste eje',
  leader: 'guia lider eje.central eje.principal guia.principal guia.terminal',
  trunk: 'tronco troncos fuste',
  parent: 'madre portador portadora soporte padre sosten',
  crown: 'copa corona',
  lateral: 'lateral ramal tirasavia rama.lateral rama.secundaria ramilla brote.lateral',
  foliage: 'follaje hoja hojas foliar hojarasca',
  union: 'horquilla union insercion bifurcacion cruz enganche axila cruz.del.arbol nudo',
  bark: 'corteza cort',
  diameter: 'diametro diam espesor diametr',
  size: 'grosor tamano calibre grueso seccion',
  girth: 'circunferencia perimetro contorno circ perim circunf',
  dbh: 'dap dn diametro.normal diametro.a.la.altura.del.pecho d.a.p',
  gbh: 'cap pap perimetro.normal circunferencia.a.la.altura.del.pecho',
  breast: 'altura.de.pecho altura.del.pecho pecho altura.pecho',
  caliper: 'calibre',
  height: 'altura alt alto h',
  elevation: '',
  width: 'ancho anchura amplitud',
  length: 'longitud largo long',
  crownBase: `
    hbc fuste.limpio fuste.libre altura.de.fuste.limpio primer.ramo.vivo primer.ramo.verde primera.ramificacion.viva
    1a.ramificacion.viva primera.ramilla.viva`,
  above: 'encima arriba sobre por.encima superior encima.de',
  aboveGround: 'sobre.el.suelo desde.el.suelo',
  below: 'debajo bajo por.debajo abajo inferior debajo.de',
  lowest: 'baja bajo mas.baja mas.bajo mas.bajas mas.bajos primera primer inferior primeras 1a',
  highest: 'alta alto mas.alta superior mas.alto parte.alta punto.mas.alto',
  base: 'basal base inicio pie parte.baja comienzo',
  tip: 'punta extremo alcanza llega apice cima termina final sube parte.alta punto.mas.alto fin remate',
  hangs: 'cuelga baja.hasta',
  origin: 'origen inicio nace arranque comienza nacimiento empieza insercion sale inserta parte arranca',
  from: 'desde de',
  to: 'hasta a llega.hasta',
  at: 'a en al donde',
  on: 'en sobre',
  id: 'numero num no codigo identificador identificacion matricula ref referencia clave letra lote',
  tag: 'placa chapa etiqueta',
  name: 'nombre denominacion',
  naming: 'comun cientifico latino botanico vulgar vernaculo',
  species: 'especie variedad genero cultivar taxon',
  kind: 'tipo clase',
  spot: 'sitio',
  area: `
    ubicacion calle direccion.postal lugar emplazamiento direccion localizacion plaza avenida localidad
    domicilio avda via tramo municipio`,
  zone: 'zona sector barrio distrito seccion area colonia cuartel subzona poligono',
  grounds: 'parque cementerio jardin finca',
  notes: 'nota observacion observaciones comentario anotacion obs',
  stage: `
    etapa fase clase.de.edad madurez etapa.de.vida estado.de.desarrollo estado.de.madurez fase.vital
    fase.de.desarrollo grupo.de.edad estadio desarrollo`,
  age: 'edad',
  form: 'porte forma',
  vigor: 'vigor vitalidad estado salud condicion estado.sanitario',
  rating: 'categoria calificacion puntuacion valoracion nota grado.de nivel',
  growth: 'crecimiento incremento',
  rate: 'tasa clase anual velocidad ritmo al.ano',
  live: 'vivo viva verde',
  dead: 'muerto muerta seco seca',
  status: 'estatus situacion',
  dieback: 'muerte.regresiva puntas.secas puntisecado decaimiento mortandad',
  mature: 'adulto adulta final maduro madura madurez definitiva esperada',
  clearance: 'galibo despeje altura.libre',
  clear: 'libre',
  needed: 'requerido requerida necesario necesaria exigido exigida minimo minima preciso respetar',
  side: 'lado costado',
  bearing: 'rumbo orientacion azimut direccion acimut brujula',
  aspect: 'exposicion',
  angle: 'angulo inclinacion',
  lean: 'inclinado inclinada',
  vertical: 'vertical plomada',
  access: 'acceso accesibilidad accesible',
  included: 'incluida incluido inclusion inclusa embebida incl',
  includedBark: 'corteza.incluida inclusion.de.corteza',
  parentOn: 'nace.de sale.de unida.a crece.de brota.de inserta.en insertada.en parte.de.la.rama',
  role: 'papel funcion rol rango',
  temporary: 'temporal provisional',
  permanent: 'permanente permanent definitiva definitivo',
  broken: 'rota roto quebrada quebrado rotura partida desgarrada desgajada fractura',
  rubbing: 'roza rozando cruzada roce cruzado cruce rozamiento',
  decay: 'pudricion grieta cavidad podredumbre podrido podrida fisura hueco',
  cut: 'corte cortes',
  pruned: 'poda podado podada',
  last: 'ultimo ultima anterior reciente',
  date: 'fecha dia',
  year: 'ano anos',
  share: 'porcentaje proporcion parte cuota porcion fraccion por.ciento',
  removed: 'retirado retirada eliminado eliminada quitado quitada extraido',
  already: 'ya',
  season: 'temporada este.ano esta.temporada',
  limit: 'limite maximo maxima max tope permitido permitida admisible',
  local: 'local ordenanza municipal',
  visit: 'visita',
  existing: 'actual existente',
  inYear: '',
  second: 'segunda segundo 2a',
  total: 'total completa',
  observed: 'observada observado estimada visual',
  measured: 'medido medida medicion',
  proposed: 'propuesto propuesta previsto prevista',
  caliperHeight: '',
  elsewhere: 'a.ras.de.suelo al.ras.de.suelo a.nivel.de.suelo en.la.base.de.tronco al.pie',
  key: '',
  forkHeight: 'altura.cruz altura.de.cruz altura.a.cruz alto.de.cruz',
  small: '',
  tall: '',
  thing: `
    maquina vehiculo bordillo acera senal poste farola edificio casa muro valla linea alcorque tutor
    tocon tuberia mantillo raiz maceta contenedor hoyo seto cuerda cable escalera nido herida banco
    puente techo tejado ventana puerta coche aparcamiento calzada hidrante alcantarilla perno tornillo
    ancla pared reja rejilla cepellon toldo barandilla semaforo luz lampara acolchado cesped garaje
    terraza balcon vecino vecina`,
  money: 'precio coste costo importe valor factura tarifa presupuesto euro iva',
  person: `
    cliente propietario inspector medido.por telefono email correo tecnico equipo contacto operario
    levantado.por dueno responsable por encargado`,
  geo: 'latitud longitud.geografica altitud coordenada coord msnm cota',
  planting: 'plantado plantada plantacion ano.de.plantacion reemplaza sustituye reemplazo',
  nursery: 'vivero',
  inspection: `
    inspeccion revision control proxima proximo levantamiento toma.de.datos actualizacion registro`,
  record: `
    foto imagen factura parcela catastro pedido archivo enlace expediente plano permiso contrato
    referencia.catastral video leyenda`,
  quantity: `
    distancia separacion espaciamiento profundidad peso volumen superficie radio pendiente relacion
    horas duracion retranqueo velocidad.del.viento
    climatica rusticidad zona.de.raices zona.de.proteccion
    mas.gruesa mas.grueso mas.grande`,
  work: `
    obra trabajo prioridad urgencia riesgo peligro diana riego plaga enfermedad hongo tratamiento
    proteccion dano tarea
    despues.de.poda despues.de.la.poda tras.poda`,
  ground: 'suelo pavimento tipo.de.suelo sustrato',
  count: 'cantidad cuantas cuantos n.de',
  noise: `
    sobre.suelo desde.suelo sobre.el.suelo presencia tiene arborea arboreo fitosanitario fitosanitaria
    cuando donde el la los las del de un una y e o u con por para en al a que se lo su sus es cual este
    esta medio media aprox aproximado aproximada actual presente punto si no.si desde respecto promedio
    general sanitario sanitaria fisiologico fisiologica vida dato campo principal mas nivel cada
    estimado`
}

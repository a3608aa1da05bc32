import type { MechanicsCatalogue } from './catalogue.ts';

export const spanish: MechanicsCatalogue = {
  'plot.mark': 'Trazado',
  'plot.from': 'De',
  'plot.to': 'A',
  'plot.value': 'Valor',
  'plot.note': 'Nota',
  'plot.reads': '{name}: {value}',
  'plot.torque': 'Par',
  'plot.preload': 'Precarga',
  'plot.angle': 'Ángulo desde el asiento',
  'plot.how-often': 'Frecuencia',
  'plot.torque-to-preload': 'Precarga según el par',
  'plot.torque-over-angle': 'Par según el ángulo, esperado',
  'plot.preload-over-angle': 'Precarga según el ángulo, esperada',
  'plot.spread': 'Dispersión de la precarga',
  'plot.contributions': 'De dónde viene la incertidumbre',
  'plot.shares': 'A dónde va el par',
  'plot.share-pitch': 'Paso: tensa el tornillo',
  'plot.share-thread': 'Rozamiento en la rosca',
  'plot.share-bearing': 'Rozamiento bajo la cabeza',
  'plot.expected': 'Esperado',
  'plot.band-95': 'Donde está el 95\u00a0%',
  'plot.band-friction': 'Rozamiento un quinto mayor o menor',
  'plot.target': 'Con los valores dados',
  'plot.yield': 'Comienza la fluencia',
  'plot.torque-window': 'Ventana del par',
  'plot.band-tightening': 'Dispersión según el factor de apriete',
  'plot.friction-given': 'Con el rozamiento dado',
  'plot.target-torque': 'Objetivo',
  'plot.window': 'Ventana de precarga',
  'plot.final-window': 'Par final según el rozamiento',
  'plot.drawn': 'Extracciones',
  'plot.propagated': 'Por la ley de propagación',
  'plot.below': 'Por debajo de la ventana',
  'plot.above': 'Por encima de la ventana',
  'plot.lower': 'Límite inferior',
  'plot.upper': 'Límite superior',
  'plot.snug': 'Asiento',
  'plot.elastic': 'Si todo quedara elástico',
  'plot.end': 'Fin del giro',
  'derived.doubts': 'Tenga en cuenta en estas cifras',
  'plot.margins': 'Márgenes, el menor primero',
  'plot.asked-for': 'Lo que se pide',
  'plot.margin-holds': 'aguanta: {ratio} (al menos {needed})',
  'plot.margin-fails': 'no aguanta: {ratio} (al menos {needed})',
  'plot.margin-free': 'aguanta: nada actúa sobre ello',
  'plot.margin-note': '{actual} de {allowed}; {clause}',
  'plot.bolt-sections': 'Dónde cede el tornillo',
  'plot.part-sections': 'Dónde ceden las piezas',
  'plot.force-by-position': 'Fuerza final por posición',
  'plot.position': 'Posición',
  'plot.force-by-round': 'Fuerzas tras cada pasada',
  'plot.forces-after-round': 'De la menor a la mayor fuerza',
  'plot.mean-force': 'Media',
  'plot.spread-by-round': 'Amplitud tras cada pasada',
  'plot.round': 'Pasada',
  'plot.spread-with-friction': 'Amplitud con fricción dispersa, media',
  'plot.capability': 'Valores entre los límites',
  'plot.values': 'Valores',
  'plot.bell': 'Como estaría un proceso normal',
  'plot.mean': 'Media',
  'plot.chart': 'Valores en orden de tiempo',
  'plot.value-number': 'Número del valor',
  'plot.center': 'Línea central',
  'plot.chart-lower': 'Límite inferior del gráfico',
  'plot.chart-upper': 'Límite superior del gráfico',
  'plot.signal': 'Da una señal',
  'plot.steady': 'No da ninguna',
  'plot.reliability': 'Proporción aún dentro de sus límites',
  'plot.days': 'Días',
  'plot.share-percent': 'Proporción, %',
  'plot.model': 'Según el modelo',
  'plot.wanted': 'Proporción deseada',
  'plot.next-interval': 'Próximo intervalo',
  'plot.interval-range': 'Dónde puede estar el intervalo',

  'remark.friction-low':
    'Un rozamiento de {friction} es menor de lo que alcanzan los lubricantes (0,04; VDI 2230-1, tabla A5).',
  'remark.friction-high':
    'Con un rozamiento de {friction} las superficies están a punto de griparse (VDI 2230-1, tabla A5, clase E).',
  'remark.nut-thin': 'Una tuerca de clase {nut} es baja: su rosca se arranca antes de que rompa el tornillo.',
  'remark.nut-weaker': 'Una tuerca de clase {nut} es más débil que un tornillo {bolt}, que pide {needed}.',
  'remark.nut-proof': 'La precarga supera la carga de prueba de la tuerca, {proofLoadN}.',
  'remark.shank-yields': 'La caña fluye al apretar: {yieldShare} de su límite elástico.',
  'remark.breaks-before': 'El tornillo rompe antes: su carga de rotura mínima es {tensileLoadN}.',
  'remark.class-iso-898-1':
    'ISO 898-1 abarca de M1,6 a M39, pasos finos desde M8; {class} en {thread} solo vale si lo dice el fabricante.',
  'remark.class-iso-3506-1':
    'ISO 3506-1 abarca sin acuerdo hasta M24; {class} en {thread} solo vale si lo dice el fabricante.',
  'remark.class-astm-f3125': 'ASTM F3125 abarca roscas UNC; {class} en {thread} solo vale si lo dice el fabricante.',
  'remark.class-sae-j429': 'SAE J429 abarca desde 1/4 in; {class} en {thread} solo vale si lo dice el fabricante.',
  'remark.few-tests': '{count} ensayos dicen poco de la dispersión; diez es lo habitual.',
  'remark.mixed-tests': 'A algunos ensayos les falta el par de la rosca: rosca y apoyo no se distinguen.',
  'remark.grip-short':
    'La longitud de apriete de {gripMm} es menor que la rosca engranada de {engagementMm}: un tornillo tan corto apenas se estira, unos micrómetros de asentamiento le quitan la precarga, y las cifras de su flexibilidad son aproximadas.',
  'remark.past-yield':
    'El tornillo fluye. Eso es para uniones y tornillos previstos para ello; no se reutiliza salvo que el fabricante lo permita, y las piezas deben soportar la precarga.',
  'remark.may-yield':
    'Con el rozamiento en su extremo inferior, el tornillo pasaría del límite elástico a este ángulo.',
  'remark.may-break': 'Dentro del margen de rozamiento el tornillo rompería antes de llegar a este ángulo.',
  'remark.near-breaking': 'Queda menos de una décima parte hasta la rotura del tornillo.',
  'remark.no-snug':
    'El ángulo se cuenta sin carga alguna; una unión real necesita antes un par de ajuste que la cierre.',
  'remark.no-preload-left': 'Dispersión y pérdidas pueden no dejar precarga alguna.',
  'remark.may-open': 'La unión puede abrirse: la carga axial quita todo lo que queda de la precarga.',
  'remark.estimate':
    'Son estimaciones: el dato del fabricante, las normas locales y la práctica habilitada van primero.',
  'remark.in-line': 'La unión está apretada y cargada en el eje del tornillo; las piezas asientan planas.',
  'remark.bearing-circle-of': 'El círculo de apoyo es el de {head}.',
  'remark.hole-iso-273': 'El agujero es el de ISO 273, medio.',
  'remark.hole-asme': 'El agujero es el de ASME B18.2.8, ajuste normal.',
  'remark.all-thread': 'El tornillo lleva rosca en toda la longitud de apriete, pues no se da caña.',
  'remark.parts-as-cone':
    'Las piezas son justo tan anchas como el cono de deformación, pues no se da diámetro exterior.',
  'remark.snug-closed': 'Al ajustar, las piezas asientan; lo que antes estaba abierto no cuenta.',
  'remark.strength-untold':
    'No se da la resistencia del tornillo: todo se toma como elástico, sea cual sea la precarga.',
  'remark.law-bilinear':
    'Supuesto: el acero es elástico hasta la fluencia y luego endurece en línea recta hasta la resistencia a {strainShare} de deformación plástica.',
  'remark.law-smooth':
    'Supuesto: el acero sigue una ley potencial por 0,2\u00a0% de deformación plástica en la fluencia y {strainShare} en la resistencia.',
  'remark.what-may-yield': 'Caña, rosca libre y rosca engranada pueden fluir; cabeza y tuerca no.',
  'remark.torsion-left-out':
    'Se omite la torsión, pues no se da rozamiento: un tornillo girado por su tuerca fluye antes.',
  'remark.prevailing-left-out': 'La parte del par autofrenante en la torsión se omite del punto de fluencia.',
  'remark.careful-friction':
    'El rozamiento en la rosca se toma como {friction}, el extremo superior de la clase B: es el que más tuerce el tornillo.',
  'remark.embedding-estimated':
    'El asentamiento se estima de Rz {roughnessUm} y el número de superficies (VDI 2230-1, tabla 5, de memoria).',
  'remark.moduli-cold': 'Los módulos se toman a temperatura ambiente; fluencia lenta y relajación no se cuentan.',
  'remark.factor-of-method':
    'El factor de apriete es {factor}, el extremo superior para: {method} (VDI 2230-1, tabla A8, {had}).',
  'remark.inner-strength-untold': 'No se da la resistencia de la tuerca o de la pieza roscada.',
  'remark.engagement-untold': 'No se da la longitud de rosca engranada.',
  'remark.endurance-range': 'La fórmula del límite de fatiga vale de 6 a 40 mm.',
  'remark.slip-friction-untold': 'No se da el rozamiento entre las piezas apretadas.',
  'remark.gasket-area-untold': 'No se da la superficie de junta por tornillo.',
  'remark.head-bears-untold': 'No se dice lo que soporta la pieza bajo la cabeza.',
  'remark.nut-bears-untold': 'No se dice lo que soporta la pieza bajo la tuerca.',
  'remark.note-at-assembly': 'Tracción y torsión juntas, frente al {utilizationShare} del límite elástico.',
  'remark.note-proof-load': 'La carga que un tornillo nuevo soporta en un ensayo sin quedar más largo.',
  'remark.note-in-service':
    'Precarga máxima, calor y la parte del tornillo en la carga axial, con la mitad de la torsión del montaje.',
  'remark.note-alternating':
    'Amplitud en la rosca, para roscas laminadas antes del tratamiento térmico, cargadas en el eje del tornillo.',
  'remark.note-stays-closed':
    'Precarga mínima en servicio frente a lo que la carga axial quita a la fuerza de apriete.',
  'remark.note-clamp-asked': 'Fuerza de apriete mínima que queda bajo la carga axial frente a lo pedido.',
  'remark.note-slip-held':
    'Lo que el rozamiento sujeta en sentido transversal con la fuerza de apriete mínima, en todas las caras.',
  'remark.note-shear': 'Tras el deslizamiento, con rosca en la cara de unión.',
  'remark.note-gasket-seating': 'Precarga mínima tras el asentamiento, antes de cargar la unión.',
  'remark.note-gasket-service': 'Fuerza de apriete mínima que queda en servicio; la fluencia de la junta no se cuenta.',
  'remark.note-greatest-preload': 'Precarga máxima.',
  'remark.note-limit-given': 'Frente al límite dado.',
  'remark.note-limit-of-grade': 'Valor orientativo para {grade}, VDI 2230-1:2003, tabla A9 ({had}).',
  'remark.note-nut-class':
    'Carga de prueba de la tuerca de clase {nut} frente a la carga mínima de rotura del tornillo: debe romper primero el tornillo.',
  'remark.note-engagement':
    'Longitud roscada a partir de la cual el tornillo rompe antes de que se arranque su rosca; perfil básico, sin tolerancias.',
  'remark.note-stripping': 'Se arranca primero: {thread}; perfil básico, sin tolerancias.',
  'remark.note-turn-rcsc':
    'Para tornillos estructurales A325 y A490 desde el apriete inicial; la tolerancia del giro difiere entre ediciones, y manda la precarga redondeada del propio código.',
  'remark.note-turn-en-1090':
    'Segundo paso del método combinado para 8.8 y 10.9, tras un primer paso por par en todos los tornillos; manda la precarga redondeada de la propia norma.',
  'remark.linear':
    'Todo cede en proporción a la fuerza; no hay rozamiento entre las piezas, ni fluencia, ni asentamiento.',
  'remark.pressed-first':
    'En la primera vuelta el lecho tiene en todas partes la rigidez de la primera carga; desde la segunda, la de la descarga.',
  'remark.ring-flanges':
    'Dos bridas iguales, cada una un anillo de sección rectangular constante que se flexa y se tuerce; cada una tiene la mitad de la junta.',
  'remark.gasket-pulls':
    'La junta es un lecho que también tira; donde tendría que hacerlo, las bridas se han abierto y el modelo termina.',
  'remark.bolts-upright': 'Los tornillos están rectos y no se flexan.',
  'remark.no-hub': 'Ni el cubo ni el tubo impiden que los anillos se tuerzan.',
  'remark.plate-cover':
    'La tapa es una placa delgada que sigue más allá de los tornillos exteriores; su longitud característica es de {lengthMm}.',
  'remark.plate-bed':
    'Aquello contra lo que se aprieta no se flexa; el lecho de debajo responde en cada punto por sí mismo.',
  'remark.strip-beam': 'La tira es una viga recta con extremos libres; aquello contra lo que se aprieta no se flexa.',
  'remark.bolts-alike':
    'Todos los tornillos son iguales, y sus vecinos también; la flexibilidad se conoce salvo su escala.',
  'remark.matrix-holds': 'La matriz vale tal como se da: todo cede en proporción a la fuerza, igual en cada vuelta.',
  'remark.no-creep': 'Sin rozamiento entre las piezas, sin fluencia, sin asentamiento.',
  'remark.pulled-together':
    'Las llaves de un grupo empiezan y acaban a la vez; un tornillo lleva su objetivo solo cuando el grupo entero ha acabado.',
  'remark.travel-in-the-end': 'Cada tuerca se lleva al recorrido que tiene al final; de ello se sigue cada fuerza.',
  'remark.one-order': 'Un orden para todas las vueltas, un objetivo para todos los tornillos de una vuelta.',
  'remark.neighbours-fade':
    'Todos los tornillos son iguales, y sus vecinos también; la parte de un vecino disminuye en el mismo factor a cada paso.',
  'remark.alike-by-chance':
    'Todas las mediciones se dispersan por igual y al azar; la fuerza que dio un apriete se toma tal cual.',

  'word.read': 'leído',
  'word.from memory': 'de memoria',
  'word.elongation measured by ultrasound': 'alargamiento medido por ultrasonidos',
  'word.elongation measured mechanically': 'alargamiento medido mecánicamente',
  'word.yield controlled': 'controlado por fluencia',
  'word.angle controlled': 'controlado por ángulo',
  'word.hydraulic': 'hidráulico',
  'word.torque wrench, torque found by tests on the joint': 'llave dinamométrica, par hallado por ensayos en la unión',
  'word.torque wrench, friction estimated as class B': 'llave dinamométrica, rozamiento estimado como clase B',
  'word.torque wrench, friction estimated as class A': 'llave dinamométrica, rozamiento estimado como clase A',
  'word.impact wrench': 'llave de impacto',
  'word.bolt thread': 'rosca del tornillo',
  'word.inner thread': 'rosca de la tuerca o de la pieza',

  'remark.passed-ceiling':
    'Ningún apriete apunta por encima del techo, pero un tornillo llega a {peakN} mientras se aprietan otros.',
  'remark.few-values': '{count} valores dicen poco de un proceso; lo usual son {wanted}.',
  'remark.not-normal':
    'Los valores apenas son normales (p menor que 0,05): los índices y las proporciones esperadas engañan.',
  'remark.unsteady': 'El gráfico de control de los valores tiene {count} señales: el proceso no sigue como está.',
  'remark.rough-limits': 'Los límites de {count} valores son toscos; lo usual son {wanted}.',
  'remark.uneven-drift': 'El gráfico de la deriva tiene {count} señales: la llave no deriva de modo uniforme.',
  'remark.nothing-out':
    'Nunca se halló nada fuera, así que no hay mejor valor; este es el límite al 50\u00a0% de confianza.',
  'remark.few-out': 'Solo {count} fuera: guíese por el límite inferior del intervalo, no por su mejor valor.',
  'remark.few-repeats': '{count} repeticiones; la norma pide {wanted}.',
  'remark.no-point-at': 'Ningún punto a {targetNm}, que la norma pide.',
  'remark.not-measured': 'No medido: se supone {percent} %, ancho completo o expandida.',

  'remark.bolt-worked-out': '{bolt}: {worked}, calculado del perfil básico ({standard}), no dado.',
  'remark.shank-no-section': 'La caña de {shankMm} no es un tramo de la longitud de apriete: dé su longitud como caña.',
  'word.pitch diameter': 'diámetro medio',
  'word.minor diameter': 'diámetro menor',
  'word.root diameter': 'diámetro del núcleo',
  'word.stress area': 'área resistente',
};

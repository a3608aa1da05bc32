import type { MechanicsCatalogue } from './catalogue.ts';

export const french: MechanicsCatalogue = {
  'plot.mark': 'Tracé',
  'plot.from': 'De',
  'plot.to': 'À',
  'plot.value': 'Valeur',
  'plot.note': 'Remarque',
  'plot.reads': '{name}\u00a0: {value}',
  'plot.torque': 'Couple',
  'plot.preload': 'Précharge',
  'plot.angle': 'Angle depuis l’accostage',
  'plot.how-often': 'Fréquence',
  'plot.torque-to-preload': 'Précharge selon le couple',
  'plot.torque-over-angle': 'Couple selon l’angle, attendu',
  'plot.preload-over-angle': 'Précharge selon l’angle, attendue',
  'plot.spread': 'Dispersion de la précharge',
  'plot.contributions': 'D’où vient l’incertitude',
  'plot.shares': 'Où va le couple',
  'plot.share-pitch': 'Pas\u00a0: tend la vis',
  'plot.share-thread': 'Frottement dans le filetage',
  'plot.share-bearing': 'Frottement sous tête',
  'plot.expected': 'Attendu',
  'plot.band-95': 'Où sont 95\u00a0%',
  'plot.band-friction': 'Frottement d’un cinquième en plus ou en moins',
  'plot.target': 'Aux valeurs données',
  'plot.yield': 'Début de plastification',
  'plot.torque-window': 'Fenêtre de couple',
  'plot.band-tightening': 'Dispersion selon le facteur de serrage',
  'plot.friction-given': 'Au frottement donné',
  'plot.target-torque': 'Cible',
  'plot.window': 'Fenêtre de précharge',
  'plot.final-window': 'Couple final selon le frottement',
  'plot.drawn': 'Tirages',
  'plot.propagated': 'Par la loi de propagation',
  'plot.below': 'Sous la fenêtre',
  'plot.above': 'Au-dessus de la fenêtre',
  'plot.lower': 'Limite inférieure',
  'plot.upper': 'Limite supérieure',
  'plot.snug': 'Accostage',
  'plot.elastic': 'Si tout restait élastique',
  'plot.end': 'Fin de la rotation',
  'derived.doubts': 'À considérer dans ces valeurs',
  'derived.symbol': 'Symbole',
  'derived.formula': 'Formule',
  'derived.with-numbers': 'Avec les nombres',
  'derived.value': 'Valeur',
  'derived.source': 'Source',
  'derived.assembly-torque': 'Couple de serrage',
  'plot.margins': 'Marges, la plus faible d’abord',
  'plot.asked-for': 'Ce qui est demandé',
  'plot.margin-holds': 'tient\u00a0: {ratio} (au moins {needed})',
  'plot.margin-fails': 'ne tient pas\u00a0: {ratio} (au moins {needed})',
  'plot.margin-free': 'tient\u00a0: rien n’agit dessus',
  'plot.margin-note': '{actual} sur {allowed}\u00a0; {clause}',
  'plot.bolt-sections': 'Où la vis cède',
  'plot.part-sections': 'Où les pièces cèdent',
  'plot.force-by-position': 'Force finale par position',
  'plot.position': 'Position',
  'plot.force-by-round': 'Forces après chaque passe',
  'plot.forces-after-round': 'De la plus petite à la plus grande force',
  'plot.mean-force': 'Moyenne',
  'plot.spread-by-round': 'Étendue après chaque passe',
  'plot.round': 'Passe',
  'plot.spread-with-friction': 'Étendue avec frottement dispersé, moyenne',
  'plot.capability': 'Valeurs entre les limites',
  'plot.values': 'Valeurs',
  'plot.bell': 'Comme serait un processus normal',
  'plot.mean': 'Moyenne',
  'plot.chart': 'Valeurs dans l’ordre du temps',
  'plot.value-number': 'Numéro de la valeur',
  'plot.center': 'Ligne centrale',
  'plot.chart-lower': 'Limite inférieure de la carte',
  'plot.chart-upper': 'Limite supérieure de la carte',
  'plot.signal': 'Avec signal',
  'plot.steady': 'Sans signal',
  'plot.reliability': 'Part encore dans ses limites',
  'plot.days': 'Jours',
  'plot.share-percent': 'Part, %',
  'plot.model': 'Selon le modèle',
  'plot.wanted': 'Part voulue',
  'plot.next-interval': 'Prochain intervalle',
  'plot.interval-range': 'Où peut être l’intervalle',

  'cite.mean-bearing-diameter': 'diamètre moyen d’appui',
  'cite.assembly-preload': 'précharge de montage à une part de la limite d’élasticité',
  'cite.nut-factor': 'coefficient de couple',
  'cite.torsion': 'torsion de la tige',
  'cite.shank-stress': 'contrainte dans la tige',
  'cite.solved-for-preload': 'résolu pour la précharge',
  'cite.tightening-factor': 'facteur de serrage',
  'cite.compliances': 'souplesses en série',
  'cite.pitch': 'l’écrou avance de son pas à chaque tour',
  'cite.no-torsion': '1 sans torsion',
  'cite.steel-law': 'loi de l’acier, une hypothèse (voir là)',
  'cite.combined-method': 'méthode combinée',
  'cite.rotation': 'tableau de la rotation supplémentaire',
  'cite.secondary-table': 'tableau de seconde main',
  'cite.safety-from-memory': 'sécurité de mémoire',
  'cite.from-memory': 'de mémoire',
  'cite.proof-load': 'charge d’épreuve',
  'cite.gasket-stress': 'pression du joint entre assise et limite',
  'cite.appendix': 'annexe',
  'cite.clause': 'article',
  'cite.tables': 'tableaux',
  'cite.table': 'tableau',
  'cite.and': 'et',
  'cite.to': 'à',
  'remark.friction-low':
    'Un frottement de {friction} est inférieur à ce qu’atteignent les lubrifiants (0,04\u00a0; VDI 2230-1, tableau A5).',
  'remark.friction-high':
    'À un frottement de {friction}, les surfaces sont près de gripper (VDI 2230-1, tableau A5, classe E).',
  'remark.nut-thin': 'Un écrou de classe {nut} est mince\u00a0: son filet s’arrache avant que la vis ne rompe.',
  'remark.nut-weaker': 'Un écrou de classe {nut} est plus faible qu’une vis {bolt}, qui demande {needed}.',
  'remark.nut-proof': 'La précharge dépasse la charge d’épreuve de l’écrou, {proofLoadN}.',
  'remark.shank-yields': 'La tige plastifie au serrage\u00a0: {yieldShare} de sa limite d’élasticité.',
  'remark.breaks-before': 'La vis rompt avant\u00a0: sa charge de rupture minimale est de {tensileLoadN}.',
  'remark.class-iso-898-1':
    'L’ISO 898-1 couvre M1,6 à M39, pas fins dès M8\u00a0; {class} sur {thread} ne vaut que si le fabricant l’indique.',
  'remark.class-iso-3506-1':
    'L’ISO 3506-1 couvre sans accord jusqu’à M24\u00a0; {class} sur {thread} ne vaut que si le fabricant l’indique.',
  'remark.class-astm-f3125':
    'L’ASTM F3125 couvre les filetages UNC\u00a0; {class} sur {thread} ne vaut que si le fabricant l’indique.',
  'remark.class-sae-j429':
    'La SAE J429 couvre à partir de 1/4 in\u00a0; {class} sur {thread} ne vaut que si le fabricant l’indique.',
  'remark.few-tests': '{count} essais disent peu de la dispersion\u00a0; dix sont d’usage.',
  'remark.mixed-tests': 'Il manque à certains essais le couple du filet\u00a0: filet et appui ne sont pas distingués.',
  'remark.grip-short':
    'La longueur serrée de {gripMm} est plus courte que le filet en prise de {engagementMm}\u00a0: une vis si courte s’allonge à peine, quelques micromètres d’enfoncement lui prennent sa précharge, et les valeurs de sa souplesse sont approximatives.',
  'remark.past-yield':
    'La vis plastifie. C’est pour les assemblages et les vis prévus à cela\u00a0; elle n’est pas réemployée sauf accord du fabricant, et les pièces doivent supporter la précharge.',
  'remark.may-yield': 'Avec un frottement au plus bas, la vis dépasserait la limite d’élasticité à cet angle.',
  'remark.may-break': 'Dans la plage de frottement, la vis romprait avant d’atteindre cet angle.',
  'remark.near-breaking': 'Il reste moins d’un dixième avant la rupture de la vis.',
  'remark.no-snug':
    'L’angle est compté sans aucune charge\u00a0; un assemblage réel demande d’abord un couple d’accostage qui le ferme.',
  'remark.no-preload-left': 'Dispersion et pertes peuvent ne laisser aucune précharge.',
  'remark.may-open': 'L’assemblage peut s’ouvrir\u00a0: la charge axiale prend tout ce qui reste de la précharge.',
  'remark.estimate':
    'Ce sont des estimations\u00a0: la donnée du fabricant, les codes locaux et la pratique agréée priment.',
  'remark.in-line': 'L’assemblage est serré et chargé dans l’axe de la vis\u00a0; les pièces portent à plat.',
  'remark.bearing-circle-of': 'Le cercle d’appui est celui de {head}.',
  'remark.hole-iso-273': 'Le trou est celui de l’ISO 273, moyen.',
  'remark.hole-asme': 'Le trou est celui de l’ASME B18.2.8, ajustement normal.',
  'remark.all-thread': 'La vis est filetée sur toute la longueur serrée, faute de tige donnée.',
  'remark.parts-as-cone': 'Les pièces sont juste aussi larges que le cône de déformation, faute de diamètre extérieur.',
  'remark.snug-closed': 'À l’accostage, les pièces portent\u00a0; ce qui bâillait avant ne compte pas.',
  'remark.strength-untold':
    'La résistance de la vis n’est pas donnée\u00a0: tout est pris comme élastique, quelle que soit la précharge.',
  'remark.law-bilinear':
    'Hypothèse\u00a0: l’acier est élastique jusqu’à la limite, puis s’écrouit en ligne droite jusqu’à la résistance à {strainShare} de déformation plastique.',
  'remark.law-smooth':
    'Hypothèse\u00a0: l’acier suit une loi puissance par 0,2\u00a0% de déformation plastique à la limite et {strainShare} à la résistance.',
  'remark.what-may-yield': 'Tige, filet libre et filet en prise peuvent plastifier\u00a0; tête et écrou non.',
  'remark.torsion-left-out':
    'La torsion est omise, faute de frottement\u00a0: une vis tournée par son écrou plastifie plus tôt.',
  'remark.prevailing-left-out': 'La part du couple de freinage dans la torsion est omise du point de plastification.',
  'remark.careful-friction':
    'Le frottement du filet est pris à {friction}, le haut de la classe B\u00a0: il tord le plus la vis.',
  'remark.embedding-estimated':
    'L’enfoncement est estimé d’après Rz {roughnessUm} et le nombre de surfaces (VDI 2230-1, tableau 5, de mémoire).',
  'remark.moduli-cold': 'Les modules sont pris à température ambiante\u00a0; fluage et relaxation ne sont pas comptés.',
  'remark.factor-of-method':
    'Le facteur de serrage est {factor}, le haut pour\u00a0: {method} (VDI 2230-1, tableau A8, {had}).',
  'remark.inner-strength-untold': 'La résistance de l’écrou ou de la pièce taraudée n’est pas donnée.',
  'remark.engagement-untold': 'La longueur de filet en prise n’est pas donnée.',
  'remark.endurance-range': 'La formule de la limite d’endurance vaut de 6 à 40\u00a0mm.',
  'remark.slip-friction-untold': 'Le frottement entre les pièces serrées n’est pas donné.',
  'remark.gasket-area-untold': 'La surface de joint par vis n’est pas donnée.',
  'remark.head-bears-untold': 'Ce que supporte la pièce sous la tête n’est pas donné.',
  'remark.nut-bears-untold': 'Ce que supporte la pièce sous l’écrou n’est pas donné.',
  'remark.note-at-assembly': 'Traction et torsion ensemble, contre {utilizationShare} de la limite d’élasticité.',
  'remark.note-proof-load': 'La charge qu’une vis neuve supporte à l’essai sans rester plus longue.',
  'remark.note-in-service':
    'Précharge maximale, chaleur et part de la vis dans la charge axiale, avec la moitié de la torsion du montage.',
  'remark.note-alternating':
    'Amplitude dans le filet, pour des filets roulés avant traitement thermique, chargés dans l’axe de la vis.',
  'remark.note-stays-closed': 'Précharge minimale en service contre ce que la charge axiale ôte à l’effort de serrage.',
  'remark.note-clamp-asked': 'Effort de serrage minimal restant sous la charge axiale contre ce qui est demandé.',
  'remark.note-slip-held':
    'Ce que le frottement tient en travers à l’effort de serrage minimal, sur toutes les interfaces.',
  'remark.note-shear': 'Après glissement, avec du filet dans l’interface.',
  'remark.note-gasket-seating': 'Précharge minimale après tassement, avant que l’assemblage soit chargé.',
  'remark.note-gasket-service':
    'Effort de serrage minimal restant en service\u00a0; le fluage du joint n’est pas compté.',
  'remark.note-greatest-preload': 'Précharge maximale.',
  'remark.note-limit-given': 'Contre la limite donnée.',
  'remark.note-limit-of-grade': 'Valeur indicative pour {grade}, VDI 2230-1:2003, tableau A9 ({had}).',
  'remark.note-nut-class':
    'Charge d’épreuve de l’écrou de classe {nut} contre la charge de rupture minimale de la vis\u00a0: la vis doit rompre la première.',
  'remark.note-engagement':
    'Longueur en prise à partir de laquelle la vis rompt avant que son filet s’arrache\u00a0; profil de base, sans tolérances.',
  'remark.note-stripping': 'S’arrache en premier\u00a0: {thread}\u00a0; profil de base, sans tolérances.',
  'remark.note-turn-rcsc':
    'Pour boulons de charpente A325 et A490 à partir du serrage d’approche\u00a0; la tolérance de l’angle diffère selon l’édition, et c’est la précharge arrondie du code qui fait foi.',
  'remark.note-turn-en-1090':
    'Seconde étape de la méthode combinée pour 8.8 et 10.9, après une première étape au couple sur toutes les vis\u00a0; c’est la précharge arrondie de la norme qui fait foi.',
  'remark.linear':
    'Tout cède en proportion de l’effort\u00a0; ni frottement entre les pièces, ni fluage, ni tassement.',
  'remark.pressed-first':
    'À la première passe, l’assise a partout la raideur du premier chargement, dès la deuxième celle du déchargement.',
  'remark.ring-flanges':
    'Deux brides égales, chacune un anneau de section rectangulaire constante qui fléchit et se tord\u00a0; chacune a la moitié du joint.',
  'remark.gasket-pulls':
    'Le joint est une assise qui tire aussi\u00a0; là où il le devrait, les brides se sont ouvertes et le modèle s’arrête.',
  'remark.bolts-upright': 'Les vis sont droites et ne fléchissent pas.',
  'remark.no-hub': 'Ni collerette ni tube ne retient les anneaux de se tordre.',
  'remark.pipe-holds':
    'Le tube retient la bride comme un long cylindre mince dont l’extrémité tourne sans se déplacer en travers\u00a0; une collerette conique est laissée de côté.',
  'remark.plate-cover':
    'Le couvercle est une plaque mince qui se prolonge au-delà des vis extérieures\u00a0; sa longueur caractéristique est de {lengthMm}. Avec un bord libre tout près, il y cède plusieurs fois autant\u00a0: indiquer son bord.',
  'remark.plate-edges':
    'Le couvercle est une plaque mince à bord libre, ronde autour d’un cercle de vis et sinon rectangulaire\u00a0; sa longueur caractéristique est de {lengthMm}.',
  'remark.firm-bed':
    'L’assise est si ferme que la pièce fléchit sur à peine plus que son épaisseur\u00a0: les vis cèdent davantage, et les voisines participent davantage, que ce qui est calculé ici.',
  'remark.plate-bed':
    'Ce sur quoi il est pressé ne fléchit pas\u00a0; l’assise dessous répond en chaque point pour elle-même.',
  'remark.strip-beam':
    'La barre est une poutre droite aux extrémités libres\u00a0; ce sur quoi elle est pressée ne fléchit pas.',
  'remark.bolts-alike':
    'Toutes les vis sont pareilles, leurs voisines aussi\u00a0; la souplesse est connue à l’échelle près.',
  'remark.matrix-holds':
    'La matrice vaut telle quelle\u00a0: tout cède en proportion de l’effort, à chaque passe pareillement.',
  'remark.no-creep': 'Ni frottement entre les pièces, ni fluage, ni tassement.',
  'remark.pulled-together':
    'Les clés d’un groupe commencent et finissent ensemble\u00a0; une vis ne porte sa cible qu’une fois le groupe entier serré.',
  'remark.travel-in-the-end': 'Chaque écrou est amené à la course qu’il a à la fin\u00a0; chaque effort en découle.',
  'remark.one-order': 'Un ordre pour toutes les passes, une consigne pour toutes les vis d’une passe.',
  'remark.neighbours-fade':
    'Toutes les vis sont pareilles, leurs voisines aussi\u00a0; la part d’une voisine décroît du même facteur à chaque pas.',
  'remark.alike-by-chance':
    'Toutes les mesures se dispersent pareillement et au hasard\u00a0; l’effort qu’un serrage a donné est pris tel quel.',

  'word.read': 'lu',
  'word.from memory': 'de mémoire',
  'word.elongation measured by ultrasound': 'allongement mesuré par ultrasons',
  'word.elongation measured mechanically': 'allongement mesuré mécaniquement',
  'word.yield controlled': 'à la limite d’élasticité',
  'word.angle controlled': 'à l’angle',
  'word.hydraulic': 'hydraulique',
  'word.torque wrench, torque found by tests on the joint':
    'clé dynamométrique, couple trouvé par essais sur l’assemblage',
  'word.torque wrench, friction estimated as class B': 'clé dynamométrique, frottement estimé en classe B',
  'word.torque wrench, friction estimated as class A': 'clé dynamométrique, frottement estimé en classe A',
  'word.impact wrench': 'clé à chocs',
  'word.bolt thread': 'filet de la vis',
  'word.inner thread': 'filet de l’écrou ou de la pièce',

  'remark.passed-ceiling':
    'Aucun serrage ne vise au-dessus du plafond, mais une vis atteint {peakN} pendant qu’on serre les autres.',
  'remark.few-values': '{count} valeurs disent peu d’un processus\u00a0; {wanted} sont d’usage.',
  'remark.not-normal': 'Les valeurs ne sont guère normales (p sous 0,05)\u00a0: indices et parts attendues trompent.',
  'remark.unsteady':
    'La carte de contrôle des valeurs a {count} signaux\u00a0: le processus ne reste pas ce qu’il est.',
  'remark.rough-limits': 'Des limites tirées de {count} valeurs sont grossières\u00a0; {wanted} sont d’usage.',
  'remark.uneven-drift': 'La carte de la dérive a {count} signaux\u00a0: la clé ne dérive pas régulièrement.',
  'remark.nothing-out':
    'Rien ne fut jamais trouvé hors limites, il n’y a donc pas de meilleure valeur\u00a0; celle-ci est la limite à 50\u00a0% de confiance.',
  'remark.few-out':
    'Seulement {count} hors limites\u00a0: suivre la limite inférieure de l’intervalle, non sa meilleure valeur.',
  'remark.few-repeats': '{count} répétitions\u00a0; la norme en demande {wanted}.',
  'remark.no-point-at': 'Aucun point à {targetNm}, que la norme demande.',
  'remark.not-measured': 'Non mesuré\u00a0: {percent}\u00a0% est supposé, largeur entière ou élargie.',

  'remark.bolt-worked-out': '{bolt}\u00a0: {worked}, calculé du profil de base ({standard}), non donné.',
  'remark.shank-no-section':
    'La tige de {shankMm} n’est pas une section de la longueur serrée\u00a0: donnez sa longueur comme tige.',
  'word.pitch diameter': 'diamètre sur flancs',
  'word.minor diameter': 'diamètre intérieur',
  'word.root diameter': 'diamètre du noyau',
  'word.stress area': 'section résistante',
};

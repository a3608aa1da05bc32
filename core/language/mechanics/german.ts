import type { MechanicsCatalogue } from './catalogue.ts';

export const german: MechanicsCatalogue = {
  'plot.mark': 'Gezeichnet',
  'plot.from': 'Von',
  'plot.to': 'Bis',
  'plot.value': 'Wert',
  'plot.note': 'Anmerkung',
  'plot.reads': '{name}: {value}',
  'plot.torque': 'Drehmoment',
  'plot.preload': 'Vorspannkraft',
  'plot.angle': 'Winkel ab Anlegen',
  'plot.how-often': 'Wie häufig',
  'plot.torque-to-preload': 'Vorspannkraft über Drehmoment',
  'plot.torque-over-angle': 'Drehmoment über Winkel, wie erwartet',
  'plot.preload-over-angle': 'Vorspannkraft über Winkel, wie erwartet',
  'plot.spread': 'Streuung der Vorspannkraft',
  'plot.contributions': 'Woher die Unsicherheit kommt',
  'plot.shares': 'Wohin das Drehmoment geht',
  'plot.share-pitch': 'Steigung: spannt die Schraube',
  'plot.share-thread': 'Reibung im Gewinde',
  'plot.share-bearing': 'Reibung unter dem Kopf',
  'plot.expected': 'Erwartet',
  'plot.band-95': 'Wo 95\u00a0% liegen',
  'plot.band-friction': 'Reibung um ein Fünftel größer oder kleiner',
  'plot.target': 'Bei den gegebenen Werten',
  'plot.yield': 'Fließen beginnt',
  'plot.torque-window': 'Fenster des Drehmoments',
  'plot.band-tightening': 'Streuung nach dem Anziehfaktor',
  'plot.friction-given': 'Bei der gegebenen Reibung',
  'plot.target-torque': 'Zielwert',
  'plot.window': 'Fenster der Vorspannkraft',
  'plot.final-window': 'Enddrehmoment über die Reibung',
  'plot.drawn': 'Ziehungen',
  'plot.propagated': 'Nach dem Fortpflanzungsgesetz',
  'plot.below': 'Unter dem Fenster',
  'plot.above': 'Über dem Fenster',
  'plot.lower': 'Unterer Grenzwert',
  'plot.upper': 'Oberer Grenzwert',
  'plot.snug': 'Angelegt',
  'plot.elastic': 'Wenn alles elastisch bliebe',
  'plot.end': 'Ende der Drehung',
  'derived.doubts': 'Zu diesen Werten bedenken',
  'plot.margins': 'Sicherheiten, die kleinste zuerst',
  'plot.asked-for': 'Was verlangt ist',
  'plot.margin-holds': 'hält: {ratio} (mindestens {needed})',
  'plot.margin-fails': 'hält nicht: {ratio} (mindestens {needed})',
  'plot.margin-free': 'hält: nichts wirkt darauf',
  'plot.margin-note': '{actual} von {allowed}; {clause}',
  'plot.bolt-sections': 'Wo die Schraube nachgibt',
  'plot.part-sections': 'Wo die Teile nachgeben',
  'plot.force-by-position': 'Endkraft je Stelle',
  'plot.position': 'Stelle',
  'plot.force-by-round': 'Kräfte nach jedem Durchgang',
  'plot.forces-after-round': 'Kleinste bis größte Kraft',
  'plot.mean-force': 'Mittelwert',
  'plot.spread-by-round': 'Spanne nach jedem Durchgang',
  'plot.round': 'Durchgang',
  'plot.spread-with-friction': 'Spanne mit streuender Reibung, Mittel',
  'plot.capability': 'Werte zwischen den Grenzen',
  'plot.values': 'Werte',
  'plot.bell': 'Wie ein normaler Prozess läge',
  'plot.mean': 'Mittelwert',
  'plot.chart': 'Werte in zeitlicher Folge',
  'plot.value-number': 'Nummer des Werts',
  'plot.center': 'Mittellinie',
  'plot.chart-lower': 'Untergrenze der Karte',
  'plot.chart-upper': 'Obergrenze der Karte',
  'plot.signal': 'Gibt ein Signal',
  'plot.steady': 'Gibt keines',
  'plot.reliability': 'Anteil noch innerhalb der Grenzen',
  'plot.days': 'Tage',
  'plot.share-percent': 'Anteil, %',
  'plot.model': 'Nach dem Modell',
  'plot.wanted': 'Gewünschter Anteil',
  'plot.next-interval': 'Nächstes Intervall',
  'plot.interval-range': 'Wo das Intervall liegen kann',

  'remark.friction-low':
    'Eine Reibung von {friction} ist kleiner, als Schmierstoffe sie erreichen (0,04; VDI 2230-1, Tabelle A5).',
  'remark.friction-high':
    'Bei einer Reibung von {friction} stehen die Oberflächen vor dem Fressen (VDI 2230-1, Tabelle A5, Klasse E).',
  'remark.nut-thin': 'Eine Mutter der Klasse {nut} ist niedrig: Ihr Gewinde reißt aus, bevor die Schraube bricht.',
  'remark.nut-weaker': 'Eine Mutter der Klasse {nut} ist schwächer als eine Schraube {bolt}, die {needed} verlangt.',
  'remark.nut-proof': 'Die Vorspannkraft liegt über der Prüfkraft der Mutter, {proofLoadN}.',
  'remark.shank-yields': 'Der Schaft fließt beim Anziehen: {yieldShare} seiner Streckgrenze.',
  'remark.breaks-before': 'Die Schraube bricht vorher: Ihre Mindestbruchkraft ist {tensileLoadN}.',
  'remark.class-iso-898-1':
    'ISO 898-1 gilt für M1,6 bis M39, Feingewinde ab M8; {class} auf {thread} gilt nur, wo der Hersteller es angibt.',
  'remark.class-iso-3506-1':
    'ISO 3506-1 gilt ohne Vereinbarung bis M24; {class} auf {thread} gilt nur, wo der Hersteller es angibt.',
  'remark.class-astm-f3125':
    'ASTM F3125 gilt für UNC-Gewinde; {class} auf {thread} gilt nur, wo der Hersteller es angibt.',
  'remark.class-sae-j429': 'SAE J429 gilt ab 1/4 in; {class} auf {thread} gilt nur, wo der Hersteller es angibt.',
  'remark.few-tests': '{count} Versuche sagen wenig über die Streuung; zehn sind üblich.',
  'remark.mixed-tests': 'Einigen Versuchen fehlt das Gewindemoment, darum sind Gewinde und Auflage nicht getrennt.',
  'remark.grip-short':
    'Die Klemmlänge von {gripMm} ist kürzer als das eingeschraubte Gewinde von {engagementMm}: Eine so kurze Schraube längt sich kaum, wenige Mikrometer Setzen nehmen ihr die Vorspannkraft, und die Werte ihrer Nachgiebigkeit sind grob.',
  'remark.past-yield':
    'Die Schraube fließt. Das ist nur für Verbindungen und Schrauben, die dafür bestimmt sind; sie wird nicht wieder verwendet, außer der Hersteller erlaubt es, und die Teile müssen die Vorspannkraft ertragen.',
  'remark.may-yield': 'Mit Reibung am unteren Ende wäre die Schraube bei diesem Winkel über der Streckgrenze.',
  'remark.may-break': 'Im Bereich der Reibung würde die Schraube brechen, bevor dieser Winkel erreicht ist.',
  'remark.near-breaking': 'Bis zum Bruch der Schraube bleibt weniger als ein Zehntel.',
  'remark.no-snug':
    'Der Winkel zählt ab völliger Entlastung; eine wirkliche Verbindung braucht ein Fügemoment, das sie zuerst schließt.',
  'remark.no-preload-left': 'Streuung und Verluste lassen womöglich gar keine Vorspannkraft übrig.',
  'remark.may-open': 'Die Verbindung kann klaffen: Die Axialkraft nimmt alles, was von der Vorspannkraft bleibt.',
  'remark.estimate':
    'Das sind Schätzungen: Angabe des Herstellers, örtliche Vorschriften und zugelassene Fachleute gehen vor.',
  'remark.in-line':
    'Die Verbindung ist in der Achse der Schraube gespannt und belastet; die Teile liegen eben aufeinander.',
  'remark.bearing-circle-of': 'Der Auflagekreis ist der von {head}.',
  'remark.hole-iso-273': 'Das Loch ist das von ISO 273, mittel.',
  'remark.hole-asme': 'Das Loch ist das von ASME B18.2.8, normale Passung.',
  'remark.all-thread': 'Die Schraube trägt auf der ganzen Klemmlänge Gewinde, da kein Schaft angegeben ist.',
  'remark.parts-as-cone':
    'Die Teile sind gerade so breit wie der Verformungskegel, da kein Außendurchmesser angegeben ist.',
  'remark.snug-closed': 'Beim Anlegen liegen die Teile aufeinander; was vorher klaffte, zählt nicht.',
  'remark.strength-untold':
    'Die Festigkeit der Schraube ist nicht angegeben: Alles gilt als elastisch, wie hoch die Vorspannkraft auch ist.',
  'remark.law-bilinear':
    'Annahme: Der Stahl ist bis zur Streckgrenze elastisch und verfestigt dann geradlinig bis zur Zugfestigkeit bei {strainShare} plastischer Dehnung.',
  'remark.law-smooth':
    'Annahme: Der Stahl folgt einem Potenzgesetz durch 0,2\u00a0% plastische Dehnung an der Streckgrenze und {strainShare} an der Zugfestigkeit.',
  'remark.what-may-yield': 'Schaft, freies und eingeschraubtes Gewinde dürfen fließen; Kopf und Mutter nicht.',
  'remark.torsion-left-out':
    'Die Torsion ist weggelassen, da keine Reibung angegeben ist: Eine über die Mutter gedrehte Schraube fließt früher.',
  'remark.prevailing-left-out': 'Der Anteil des Klemmmoments an der Torsion ist beim Fließpunkt weggelassen.',
  'remark.careful-friction':
    'Die Reibung im Gewinde ist mit {friction} angesetzt, dem oberen Ende der Klasse B: Sie verdreht die Schraube am meisten.',
  'remark.embedding-estimated':
    'Das Setzen ist aus Rz {roughnessUm} und der Zahl der Flächen geschätzt (VDI 2230-1, Tabelle 5, aus dem Gedächtnis).',
  'remark.moduli-cold': 'Die Elastizitätsmoduln gelten bei Raumtemperatur; Kriechen und Relaxation sind nicht gezählt.',
  'remark.factor-of-method':
    'Der Anziehfaktor ist {factor}, das obere Ende für: {method} (VDI 2230-1, Tabelle A8, {had}).',
  'remark.inner-strength-untold': 'Die Festigkeit der Mutter oder des Teils mit Gewinde ist nicht angegeben.',
  'remark.engagement-untold': 'Die Einschraublänge ist nicht angegeben.',
  'remark.endurance-range': 'Die Formel der Dauerfestigkeit gilt von 6 bis 40 mm.',
  'remark.slip-friction-untold': 'Die Reibung zwischen den verspannten Teilen ist nicht angegeben.',
  'remark.gasket-area-untold': 'Die Dichtfläche je Schraube ist nicht angegeben.',
  'remark.head-bears-untold': 'Was das Teil unter dem Kopf erträgt, ist nicht angegeben.',
  'remark.nut-bears-untold': 'Was das Teil unter der Mutter erträgt, ist nicht angegeben.',
  'remark.note-at-assembly': 'Zug und Torsion zusammen, gegen {utilizationShare} der Streckgrenze.',
  'remark.note-proof-load': 'Die Kraft, die eine neue Schraube im Versuch erträgt, ohne länger zu bleiben.',
  'remark.note-in-service':
    'Größte Vorspannkraft, Wärme und der Anteil der Schraube an der Axialkraft, mit der halben Torsion der Montage.',
  'remark.note-alternating':
    'Ausschlagspannung im Gewinde, für schlussvergütete Gewinde, in der Achse der Schraube belastet.',
  'remark.note-stays-closed': 'Kleinste Vorspannkraft im Betrieb gegen das, was die Axialkraft der Klemmkraft nimmt.',
  'remark.note-clamp-asked': 'Kleinste Klemmkraft unter der Axialkraft gegen das, was verlangt ist.',
  'remark.note-slip-held': 'Was die Reibung bei kleinster Klemmkraft quer hält, über alle Trennfugen.',
  'remark.note-shear': 'Nach dem Gleiten, mit Gewinde in der Trennfuge.',
  'remark.note-gasket-seating': 'Kleinste Vorspannkraft nach dem Setzen, vor der Belastung.',
  'remark.note-gasket-service': 'Kleinste Klemmkraft im Betrieb; das Kriechen der Dichtung ist nicht gezählt.',
  'remark.note-greatest-preload': 'Größte Vorspannkraft.',
  'remark.note-limit-given': 'Gegen die angegebene Grenze.',
  'remark.note-limit-of-grade': 'Richtwert für {grade}, VDI 2230-1:2003, Tabelle A9 ({had}).',
  'remark.note-nut-class':
    'Prüfkraft der Mutter der Klasse {nut} gegen die Mindestbruchkraft der Schraube: Die Schraube soll zuerst brechen.',
  'remark.note-engagement':
    'Einschraublänge, ab der die Schraube bricht, bevor ihr Gewinde ausreißt; Grundprofil, ohne Toleranzen.',
  'remark.note-stripping': 'Zuerst reißt aus: {thread}; Grundprofil, ohne Toleranzen.',
  'remark.note-turn-rcsc':
    'Für Stahlbauschrauben A325 und A490 ab dem Anlegen; die Toleranz des Winkels unterscheidet sich je Ausgabe, und die gerundete Vorspannkraft der Vorschrift selbst entscheidet.',
  'remark.note-turn-en-1090':
    'Zweiter Schritt des kombinierten Verfahrens für 8.8 und 10.9, nach einem ersten Schritt mit Drehmoment über alle Schrauben; die gerundete Vorspannkraft der Norm selbst entscheidet.',
  'remark.linear':
    'Alles gibt im Verhältnis zur Kraft nach; zwischen den Teilen gibt es keine Reibung, kein Kriechen, kein Setzen.',
  'remark.pressed-first':
    'In der ersten Runde hat die Bettung überall die Steifigkeit der ersten Belastung, ab der zweiten die der Entlastung.',
  'remark.ring-flanges':
    'Zwei gleiche Flansche, jeder ein Ring mit gleichbleibendem Rechteckquerschnitt, der sich biegt und verdreht; jeder hat die halbe Dichtung.',
  'remark.gasket-pulls':
    'Die Dichtung ist eine Bettung, die auch zieht; wo sie es müsste, haben sich die Flansche geöffnet, und das Modell endet.',
  'remark.bolts-upright': 'Die Schrauben stehen aufrecht und biegen sich nicht.',
  'remark.no-hub': 'Weder Nabe noch Rohr hält die Ringe gegen das Verdrehen.',
  'remark.plate-cover':
    'Der Deckel ist eine dünne Platte, die über die äußeren Schrauben hinausreicht; ihre charakteristische Länge ist {lengthMm}.',
  'remark.plate-bed':
    'Worauf er gedrückt wird, biegt sich nicht; die Bettung darunter antwortet an jedem Punkt für sich.',
  'remark.strip-beam':
    'Die Leiste ist ein gerader Balken mit freien Enden; worauf sie gedrückt wird, biegt sich nicht.',
  'remark.bolts-alike':
    'Alle Schrauben sind gleich, ihre Nachbarn auch; die Nachgiebigkeit ist bis auf ihren Maßstab bekannt.',
  'remark.matrix-holds':
    'Die Matrix gilt wie angegeben: Alles gibt im Verhältnis zur Kraft nach, in jeder Runde gleich.',
  'remark.no-creep': 'Keine Reibung zwischen den Teilen, kein Kriechen, kein Setzen.',
  'remark.pulled-together':
    'Die Schlüssel einer Gruppe beginnen und enden zugleich; eine Schraube trägt ihr Ziel erst, wenn die ganze Gruppe fertig ist.',
  'remark.travel-in-the-end': 'Jede Mutter wird auf den Weg gebracht, den sie am Ende hat; jede Kraft folgt daraus.',
  'remark.one-order': 'Eine Reihenfolge für alle Runden, ein Sollwert für alle Schrauben einer Runde.',
  'remark.neighbours-fade':
    'Alle Schrauben sind gleich, ihre Nachbarn auch; der Anteil eines Nachbarn nimmt mit jedem Schritt um denselben Faktor ab.',
  'remark.alike-by-chance':
    'Alle Messungen streuen gleich und zufällig; die Kraft, die ein Anzug brachte, gilt wie angegeben.',

  'word.read': 'gelesen',
  'word.from memory': 'aus dem Gedächtnis',
  'word.elongation measured by ultrasound': 'Längung mit Ultraschall gemessen',
  'word.elongation measured mechanically': 'Längung mechanisch gemessen',
  'word.yield controlled': 'streckgrenzgesteuert',
  'word.angle controlled': 'drehwinkelgesteuert',
  'word.hydraulic': 'hydraulisch',
  'word.torque wrench, torque found by tests on the joint':
    'Drehmomentschlüssel, Moment durch Versuche an der Verbindung',
  'word.torque wrench, friction estimated as class B': 'Drehmomentschlüssel, Reibung als Klasse B geschätzt',
  'word.torque wrench, friction estimated as class A': 'Drehmomentschlüssel, Reibung als Klasse A geschätzt',
  'word.impact wrench': 'Schlagschrauber',
  'word.bolt thread': 'Gewinde der Schraube',
  'word.inner thread': 'Gewinde der Mutter oder des Teils',

  'remark.passed-ceiling':
    'Kein Anzug zielt über die Obergrenze, aber eine Schraube kommt auf {peakN}, während andere angezogen werden.',
  'remark.few-values': '{count} Werte sagen wenig über einen Prozess; {wanted} sind üblich.',
  'remark.not-normal': 'Die Werte sind kaum normalverteilt (p unter 0,05): Kennzahlen und erwartete Anteile täuschen.',
  'remark.unsteady': 'Die Regelkarte der Werte hat {count} Signale: Der Prozess bleibt nicht, wie er ist.',
  'remark.rough-limits': 'Grenzen aus {count} Werten sind grob; {wanted} sind üblich.',
  'remark.uneven-drift': 'Die Regelkarte der Drift hat {count} Signale: Der Schlüssel driftet nicht gleichmäßig.',
  'remark.nothing-out':
    'Nie wurde etwas außerhalb gefunden, darum gibt es keinen besten Wert; dieser ist die Grenze bei 50\u00a0% Vertrauen.',
  'remark.few-out':
    'Nur {count} außerhalb gefunden: nach der unteren Grenze des Intervalls gehen, nicht nach seinem besten Wert.',
  'remark.few-repeats': '{count} Wiederholungen; die Norm verlangt {wanted}.',
  'remark.no-point-at': 'Kein Messpunkt bei {targetNm}, den die Norm verlangt.',
  'remark.not-measured': 'Nicht gemessen: {percent} % ist angenommen, volle Breite oder erweitert.',

  'remark.bolt-worked-out': '{bolt}: {worked} aus dem Grundprofil errechnet ({standard}), nicht angegeben.',
  'remark.shank-no-section':
    'Der Schaft von {shankMm} ist kein Abschnitt der Klemmlänge: Geben Sie seine Länge als Schaft an.',
  'word.pitch diameter': 'Flankendurchmesser',
  'word.minor diameter': 'Kerndurchmesser der Mutter',
  'word.root diameter': 'Kerndurchmesser',
  'word.stress area': 'Spannungsquerschnitt',
};

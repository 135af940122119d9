<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en_GB">
<context>
    <name>wording</name>
    <message>
        <source>banned</source>
        <translation>ausgeschlossen</translation>
    </message>
    <message>
        <source>banned: %1</source>
        <translation>ausgeschlossen: %1</translation>
    </message>
    <message>
        <source>surely, since the earlier survey</source>
        <translation>sicher, seit der früheren Lotung</translation>
    </message>
    <message>
        <source>risen</source>
        <translation>gestiegen</translation>
    </message>
    <message>
        <source>fallen</source>
        <translation>gefallen</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>crossings, later pass deeper by, %1</source>
        <translation>Kreuzungen, spätere Fahrt tiefer um, %1</translation>
    </message>
    <message>
        <source>beyond IHO S-44 order 2</source>
        <translation>außerhalb IHO S-44 Order 2</translation>
    </message>
    <message>
        <source>Soundings are in, the water is not drawn yet</source>
        <translation>Lotungen sind da, das Gewässer ist noch nicht gezeichnet</translation>
    </message>
    <message>
        <source>Drop your soundings here</source>
        <translation>Lotungen hierher ziehen</translation>
    </message>
    <message>
        <source>a sounder&apos;s NMEA 0183 log, a GPX track with depths,</source>
        <translation>NMEA-0183-Aufzeichnung eines Echolots, GPX-Track mit Tiefen</translation>
    </message>
    <message>
        <source>or a table with longitude, latitude and depth</source>
        <translation>oder Tabelle mit Länge, Breite und Tiefe</translation>
    </message>
    <message>
        <source>The shoreline is there already.</source>
        <translation>Die Uferlinie ist schon da.</translation>
    </message>
    <message>
        <source>A shoreline too, if you have one: GeoJSON, GPX, Shapefile, GeoPackage, KML</source>
        <translation>Auch eine Uferlinie, falls vorhanden: GeoJSON, GPX, Shapefile, GeoPackage, KML</translation>
    </message>
    <message>
        <source>Without one, the outermost soundings stand in for it.</source>
        <translation>Ohne sie stehen die äußersten Lotungen für das Ufer.</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>look at the forecast</source>
        <translation>Wetterbericht ansehen</translation>
    </message>
    <message>
        <source>force %1, %2</source>
        <translation>Stärke %1, %2</translation>
    </message>
    <message>
        <source>from %1 %2</source>
        <translation>ab %1 %2</translation>
    </message>
    <message>
        <source>depth, %1</source>
        <translation>Tiefe, %1</translation>
    </message>
    <message>
        <source>level %1</source>
        <translation>Wasserstand %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenztiefe %1</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>never fished</source>
        <translation>nie befischt</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>closed: %1</source>
        <translation>gesperrt: %1</translation>
    </message>
    <message>
        <source>launch</source>
        <translation>Slipstelle</translation>
    </message>
    <message>
        <source>not fished</source>
        <translation>nicht befischt</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>bow %1</source>
        <translation>Bug %1</translation>
    </message>
    <message>
        <source>stern %1</source>
        <translation>Heck %1</translation>
    </message>
    <message>
        <source>rod %1  %2</source>
        <translation>Rute %1  %2</translation>
    </message>
    <message>
        <source>%1 %2, rope %3, scope %4</source>
        <translation>%1 %2, Leine %3, Leinenfaktor %4</translation>
    </message>
    <message>
        <source>bow</source>
        <translation>Bug</translation>
    </message>
    <message>
        <source>stern</source>
        <translation>Heck</translation>
    </message>
    <message>
        <source>rod %1  %2, knot %3, %4 off</source>
        <translation>Rute %1  %2, Stopper %3, %4 weit</translation>
    </message>
    <message>
        <source>Map as it was kept: the water is being read</source>
        <translation>Karte wie zuletzt gespeichert: das Gewässer wird gelesen</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Map and marks</source>
        <translation>Karte und Plätze</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>%1 older than your last change</source>
        <translation>%1: älter als die letzte Änderung</translation>
    </message>
    <message>
        <source>: being worked out anew</source>
        <translation> – wird neu berechnet</translation>
    </message>
    <message>
        <source>fish per 10 rod-hours, steadied</source>
        <translation>Fische je 10 Rutenstunden, geglättet</translation>
    </message>
    <message>
        <source>sure to within itself</source>
        <translation>auf sich selbst genau</translation>
    </message>
    <message>
        <source>hardly known</source>
        <translation>kaum bekannt</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht versucht</translation>
    </message>
    <message>
        <source>land</source>
        <translation>Land</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>, level of that day not known</source>
        <translation>, Wasserstand jenes Tages unbekannt</translation>
    </message>
    <message>
        <source>Soundings are in, the water is not drawn yet.</source>
        <translation>Lotungen sind da, das Gewässer ist noch nicht gezeichnet.</translation>
    </message>
    <message>
        <source>Nothing is on the chart yet.</source>
        <translation>Auf der Karte ist noch nichts.</translation>
    </message>
    <message>
        <source>%1, %2, deepest %3.</source>
        <translation>%1, %2, tiefste Stelle %3.</translation>
    </message>
    <message>
        <source>Water without a name</source>
        <translation>Gewässer ohne Namen</translation>
    </message>
    <message>
        <source>Marks: %1.</source>
        <translation>Plätze: %1.</translation>
    </message>
    <message>
        <source>Sections: %1.</source>
        <translation>Abschnitte: %1.</translation>
    </message>
    <message>
        <source>depths at chart level</source>
        <translation>Tiefen bei Kartennull</translation>
    </message>
    <message>
        <source>depths at %1 from chart level</source>
        <translation>Tiefen bei %1 gegen Kartennull</translation>
    </message>
    <message>
        <source>%1, last leg %2 %3</source>
        <translation>%1, letztes Stück %2 %3</translation>
    </message>
    <message>
        <source>Looking at the backdrop</source>
        <translation>Unterlage wird angesehen</translation>
    </message>
    <message>
        <source>Lay the chart round the backdrop</source>
        <translation>Karte um die Unterlage legen</translation>
    </message>
    <message>
        <source>Fetching the backdrop</source>
        <translation>Unterlage wird geholt</translation>
    </message>
    <message>
        <source>Boat speed</source>
        <translation>Bootsgeschwindigkeit</translation>
    </message>
    <message>
        <source>a speed from 0.3 to 8 m/s, such as 3 kn</source>
        <translation>eine Geschwindigkeit von 0,3 bis 8 m/s, etwa 3 kn</translation>
    </message>
    <message>
        <source>Set boat speed</source>
        <translation>Bootsgeschwindigkeit setzen</translation>
    </message>
    <message>
        <source>Fish</source>
        <translation>Fische</translation>
    </message>
    <message>
        <source>Fish that count: of this species, so heavy</source>
        <translation>Fische, die zählen: diese Art, mindestens so schwer</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>The lightest fish that counts: a weight such as 12 lb 8 oz or 5.2 kg</source>
        <translation>Leichtester Fisch, der zählt: ein Gewicht wie 5,2 kg oder 12 lb 8 oz</translation>
    </message>
    <message>
        <source>any weight</source>
        <translation>jedes Gewicht</translation>
    </message>
    <message>
        <source>Stays</source>
        <translation>Ansitze</translation>
    </message>
    <message>
        <source>Stays that count: with this bait, in this season. A stay with several baits counts whole</source>
        <translation>Ansitze, die zählen: mit diesem Köder, in dieser Jahreszeit. Ein Ansitz mit mehreren Ködern zählt ganz</translation>
    </message>
    <message>
        <source>Bait</source>
        <translation>Köder</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Jahreszeit</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>The first and the last day that count; one trip where they are the same</source>
        <translation>Erster und letzter Tag, die zählen; eine Ausfahrt, wo beide gleich sind</translation>
    </message>
    <message>
        <source>From day</source>
        <translation>Von Tag</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>erster Tag</translation>
    </message>
    <message>
        <source>To day</source>
        <translation>Bis Tag</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>letzter Tag</translation>
    </message>
    <message>
        <source>A day such as 2026-10-03 or 3/10/26</source>
        <translation>Ein Tag wie 2026-10-03 oder 3/10/26</translation>
    </message>
    <message>
        <source>all fish</source>
        <translation>alle Fische</translation>
    </message>
    <message>
        <source>all baits</source>
        <translation>alle Köder</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>A time within the stay, such as 0920</source>
        <translation>Eine Uhrzeit im Ansitz, etwa 0920</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>a time within the stay, such as 0920</source>
        <translation>eine Uhrzeit im Ansitz, etwa 0920</translation>
    </message>
    <message>
        <source>Pike, perch, trout</source>
        <translation>Hecht, Barsch, Forelle</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>A weight such as 12 lb 8 oz, 12-8 or 5.2 kg</source>
        <translation>Ein Gewicht wie 5,2 kg, 12 lb 8 oz oder 12-8</translation>
    </message>
    <message>
        <source>a weight such as 12 lb 8 oz, 12-8 or 5.2 kg, up to 100 kg</source>
        <translation>ein Gewicht wie 5,2 kg, 12 lb 8 oz oder 12-8, höchstens 100 kg</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>A fish of %1</source>
        <translation>Ein Fisch von %1</translation>
    </message>
    <message>
        <source>A lost run of %1</source>
        <translation>Ein Fehlbiss von %1</translation>
    </message>
    <message>
        <source>Add fish</source>
        <translation>Fisch hinzufügen</translation>
    </message>
    <message>
        <source>Add lost run</source>
        <translation>Fehlbiss hinzufügen</translation>
    </message>
    <message>
        <source>Save the table</source>
        <translation>Tabelle speichern</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>The table is in %1.</source>
        <translation>Die Tabelle liegt in %1.</translation>
    </message>
    <message>
        <source>The part of the year that counts, of every year</source>
        <translation>Der Teil des Jahres, der zählt, aus jedem Jahr</translation>
    </message>
    <message>
        <source>Rate over the day</source>
        <translation>Fangrate über den Tag</translation>
    </message>
    <message>
        <source>Copy picture</source>
        <translation>Bild kopieren</translation>
    </message>
    <message>
        <source>The curve as a picture, to be pasted</source>
        <translation>Die Kurve als Bild, zum Einfügen</translation>
    </message>
    <message>
        <source>Save table…</source>
        <translation>Tabelle speichern …</translation>
    </message>
    <message>
        <source>The curve as a CSV table</source>
        <translation>Die Kurve als CSV-Tabelle</translation>
    </message>
    <message>
        <source>What the log says of each belief</source>
        <translation>Was das Fangbuch zu jeder Annahme sagt</translation>
    </message>
    <message>
        <source>Opens it under Tomorrow, beside your weights</source>
        <translation>Öffnet es unter Morgen, neben den Gewichten</translation>
    </message>
    <message>
        <source>Nothing logged yet.</source>
        <translation>Noch nichts eingetragen.</translation>
    </message>
    <message>
        <source>nothing logged yet</source>
        <translation>noch nichts eingetragen</translation>
    </message>
    <message>
        <source>Counting the hours</source>
        <translation>Stunden werden ausgezählt</translation>
    </message>
    <message>
        <source>%1: fish by the hour, %2</source>
        <translation>%1: Fische je Stunde, %2</translation>
    </message>
    <message>
        <source>Fish per 10 rod-hours by the hour of the day, with the band in which the rate may lie; from %1. Hours that were not fished are left out.</source>
        <translation>Fische je 10 Rutenstunden nach der Tageszeit, mit dem Bereich, in dem die Rate liegen kann; aus: %1. Nicht befischte Stunden fehlen.</translation>
    </message>
    <message>
        <source>The picture can be pasted now.</source>
        <translation>Das Bild kann nun eingefügt werden.</translation>
    </message>
    <message>
        <source>Sunrise %1, sunset %2 on the days fished.</source>
        <translation>Sonnenaufgang %1, Sonnenuntergang %2 an den befischten Tagen.</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>ohne Fang</translation>
    </message>
    <message>
        <source>%1 fish</source>
        <translation>Fisch: %1</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>Fisch</translation>
    </message>
    <message>
        <source>lost run</source>
        <translation>Fehlbiss</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>too little fished to say</source>
        <translation>zu wenig gefischt, um etwas zu sagen</translation>
    </message>
    <message>
        <source>no hour stands out, by %1</source>
        <translation>keine Stunde sticht heraus, aus: %1</translation>
    </message>
    <message>
        <source>best between %1 and %2, by %3</source>
        <translation>am besten von %1 bis %2, aus: %3</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>In Kürze</translation>
    </message>
    <message>
        <source>The day&apos;s track</source>
        <translation>Spur des Tages</translation>
    </message>
    <message>
        <source>Stays and fish</source>
        <translation>Ansitze und Fische</translation>
    </message>
    <message>
        <source>What produced</source>
        <translation>Was gefangen hat</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>rod-h</source>
        <translation>Ruten-h</translation>
    </message>
    <message>
        <source>steadied</source>
        <translation>geglättet</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation>noch nicht gezählt</translation>
    </message>
    <message>
        <source>%1 fish per 10 rod-hours</source>
        <translation>%1 Fische je 10 Rutenstunden</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>What to sort the log by</source>
        <translation>Wonach das Fangbuch geordnet wird</translation>
    </message>
    <message>
        <source>Shade the chart by it</source>
        <translation>Karte danach tönen</translation>
    </message>
    <message>
        <source>Sections or kinds of place: the darker, the more is to be expected there; the more broken up, the less sure it is</source>
        <translation>Abschnitte oder Arten von Stellen: je dunkler, desto mehr ist dort zu erwarten; je gebrochener, desto unsicherer</translation>
    </message>
    <message>
        <source>List the untried</source>
        <translation>Auch Unversuchtes</translation>
    </message>
    <message>
        <source>Shows the rows that were never tried, too</source>
        <translation>Zeigt auch die Zeilen, die nie versucht wurden</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>Daneben</translation>
    </message>
    <message>
        <source>Compares the row that is chosen above with another</source>
        <translation>Vergleicht die oben gewählte Zeile mit einer anderen</translation>
    </message>
    <message>
        <source>The bars as a picture, to be pasted</source>
        <translation>Die Balken als Bild, zum Einfügen</translation>
    </message>
    <message>
        <source>All rows as a CSV table</source>
        <translation>Alle Zeilen als CSV-Tabelle</translation>
    </message>
    <message>
        <source>Draw the water up to its sections first.</source>
        <translation>Erst das Gewässer bis zu den Abschnitten zeichnen.</translation>
    </message>
    <message>
        <source>Counting the log</source>
        <translation>Fangbuch wird ausgezählt</translation>
    </message>
    <message>
        <source>Fish per 10 rod-hours, with the range in which it lies 95 times in 100. Steadied: drawn towards the whole water&apos;s where little was fished.</source>
        <translation>Fische je 10 Rutenstunden, mit dem Bereich, in dem die Rate 95-mal von 100 liegt. Geglättet: zum Mittel des Gewässers gezogen, wo wenig gefischt wurde.</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1, fish by %2</source>
        <translation>%1, Fische nach: %2</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>kind of place</source>
        <translation>Art der Stelle</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>water temperature</source>
        <translation>Wassertemperatur</translation>
    </message>
    <message>
        <source>days since last fished</source>
        <translation>Tage seit dem letzten Fischen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message numerus="yes">
        <source>%n more were never tried: %1 is to be expected of each.</source>
        <comment>%n more was never tried: %1 is to be expected.</comment>
        <translation>
            <numerusform>%n weitere wurde nie versucht: zu erwarten ist %1.</numerusform>
            <numerusform>%n weitere wurden nie versucht: zu erwarten ist je %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more were never tried.</source>
        <comment>%n more was never tried.</comment>
        <translation>
            <numerusform>%n weitere wurde nie versucht.</numerusform>
            <numerusform>%n weitere wurden nie versucht.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 gave %2, %3 gave %4 fish per 10 rod-hours.</source>
        <translation>%1 gab %2, %3 gab %4 Fische je 10 Rutenstunden.</translation>
    </message>
    <message>
        <source>all year</source>
        <translation>ganzes Jahr</translation>
    </message>
    <message>
        <source>spring, Mar to May</source>
        <translation>Frühling, März bis Mai</translation>
    </message>
    <message>
        <source>summer, Jun to Aug</source>
        <translation>Sommer, Juni bis August</translation>
    </message>
    <message>
        <source>autumn, Sep to Nov</source>
        <translation>Herbst, September bis November</translation>
    </message>
    <message>
        <source>winter, Dec to Feb</source>
        <translation>Winter, Dezember bis Februar</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>trips</source>
        <translation>Ausfahrten</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>Ansitze</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>ohne Fang</translation>
    </message>
    <message>
        <source>The season on a page…</source>
        <translation>Die Saison auf einer Seite …</translation>
    </message>
    <message>
        <source>What it says in words, where, when, and the map, as a PDF</source>
        <translation>Was das Fangbuch in Worten sagt, wo, wann und die Karte, als PDF</translation>
    </message>
    <message>
        <source>Save the season as a page</source>
        <translation>Saison als Seite speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Writing the season</source>
        <translation>Saison wird geschrieben</translation>
    </message>
    <message>
        <source>The season is in %1.</source>
        <translation>Die Saison liegt in %1.</translation>
    </message>
    <message>
        <source>%1 more that were fished are not listed.</source>
        <translation>%1 weitere, die befischt wurden, sind nicht aufgeführt.</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <translation>%1 bis %2: %3</translation>
    </message>
    <message>
        <source>When: the whole log</source>
        <translation>Wann: das ganze Fangbuch</translation>
    </message>
    <message>
        <source>Point at where the boat lay, or type its place</source>
        <translation>Zeigen, wo das Boot lag, oder den Ort eintippen</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>The number of a mark of the day, a name, a position; or point at it on the chart</source>
        <translation>Nummer eines Platzes des Tages, ein Name, eine Position; oder auf der Karte zeigen</translation>
    </message>
    <message>
        <source>mark, name or position</source>
        <translation>Platz, Name oder Position</translation>
    </message>
    <message>
        <source>a mark of the day such as 3, a name of this water, or a position such as 55.1950 N 3.1041 E</source>
        <translation>ein Platz des Tages wie 3, ein Name dieses Gewässers oder eine Position wie 55.1950 N 3.1041 E</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>A time such as 0920, 9:20 or 5pm</source>
        <translation>Eine Uhrzeit wie 0920, 9:20 oder 17:00</translation>
    </message>
    <message>
        <source>a time such as 0920</source>
        <translation>eine Uhrzeit wie 0920</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>A time; before the first one, of the next day</source>
        <translation>Eine Uhrzeit; vor der ersten: am nächsten Tag</translation>
    </message>
    <message>
        <source>a time such as 1105, at most a day after the first</source>
        <translation>eine Uhrzeit wie 1105, höchstens einen Tag nach der ersten</translation>
    </message>
    <message>
        <source>Rods</source>
        <translation>Ruten</translation>
    </message>
    <message>
        <source>Rods in the water. A stay whose rods are not known counts in no rate</source>
        <translation>Ruten im Wasser. Ein Ansitz mit unbekannter Rutenzahl zählt in keiner Rate</translation>
    </message>
    <message>
        <source>a number from 1 to 8, or nothing where it is not known</source>
        <translation>eine Zahl von 1 bis 8, oder nichts, wo sie unbekannt ist</translation>
    </message>
    <message>
        <source>What was on the hooks; several with commas</source>
        <translation>Was am Haken war; mehreres mit Kommas</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>a day such as 2026-10-03</source>
        <translation>ein Tag wie 2026-10-03</translation>
    </message>
    <message>
        <source>Point…</source>
        <translation>Zeigen …</translation>
    </message>
    <message>
        <source>Point on the chart at where the boat lay</source>
        <translation>Auf der Karte zeigen, wo das Boot lag</translation>
    </message>
    <message>
        <source>A stay</source>
        <translation>Ein Ansitz</translation>
    </message>
    <message>
        <source>Return goes on, = takes what stands there pale, Escape leaves it.</source>
        <translation>Eingabetaste geht weiter, = übernimmt das Blasse, Esc bricht ab.</translation>
    </message>
    <message>
        <source>Add stay</source>
        <translation>Ansitz hinzufügen</translation>
    </message>
    <message>
        <source>This stay stands in the log already.</source>
        <translation>Dieser Ansitz steht schon im Fangbuch.</translation>
    </message>
    <message>
        <source>The log had this stay: it is told more of now.</source>
        <translation>Das Fangbuch hatte diesen Ansitz: es erfährt nun mehr von ihm.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>A time such as 9:20, 0920 or 5pm, or a date and a time such as 25/11/26 7:40</source>
        <translation>Eine Uhrzeit wie 9:20, 0920 oder 17:00, oder Tag und Uhrzeit wie 25/11/26 7:40</translation>
    </message>
    <message>
        <source>a time within the stay, such as 9:20 or 2026-10-03 09:20</source>
        <translation>eine Uhrzeit im Ansitz, etwa 9:20 oder 2026-10-03 09:20</translation>
    </message>
    <message>
        <source>A time such as 9:20, 0920 or 5pm, or nothing where it is not known</source>
        <translation>Eine Uhrzeit wie 9:20, 0920 oder 17:00, oder nichts, wo sie unbekannt ist</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Wasserstand</translation>
    </message>
    <message>
        <source>As read on the gauge</source>
        <translation>Wie am Pegel abgelesen</translation>
    </message>
    <message>
        <source>a level on the gauge such as 0.35 m or 1ft 2in</source>
        <translation>ein Pegelstand wie 0,35 m oder 1ft 2in</translation>
    </message>
    <message>
        <source>as seen from the boat, such as NE 30 m, or a position; within 300 m</source>
        <translation>vom Boot aus wie NE 30 m, oder eine Position; innerhalb von 300 m</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurückgesetzt</translation>
    </message>
    <message>
        <source>Alive: yes or no</source>
        <translation>Lebend: ja oder nein</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>ja oder nein</translation>
    </message>
    <message>
        <source>Rods in the water</source>
        <translation>Ruten im Wasser</translation>
    </message>
    <message>
        <source>What was on the hooks</source>
        <translation>Was am Haken war</translation>
    </message>
    <message>
        <source>Baits at</source>
        <translation>Köder lagen bei</translation>
    </message>
    <message>
        <source>The middle of where they lay</source>
        <translation>Die Mitte ihrer Plätze</translation>
    </message>
    <message>
        <source>Wind from</source>
        <translation>Wind aus</translation>
    </message>
    <message>
        <source>Degrees true</source>
        <translation>Grad rechtweisend</translation>
    </message>
    <message>
        <source>degrees from 0 to 360, or a point such as SW</source>
        <translation>Grad von 0 bis 360 oder eine Richtung wie SW</translation>
    </message>
    <message>
        <source>Wind speed</source>
        <translation>Windgeschwindigkeit</translation>
    </message>
    <message>
        <source>a speed such as 6 m/s, 13 mph, 12 kn or F4</source>
        <translation>eine Geschwindigkeit wie 6 m/s, 13 mph, 12 kn oder F4</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>a temperature such as 8 °C or 46 F, up to 40 °C</source>
        <translation>eine Temperatur wie 8 °C oder 46 F, höchstens 40 °C</translation>
    </message>
    <message>
        <source>Sky</source>
        <translation>Himmel</translation>
    </message>
    <message>
        <source>Overcast, bright, rain</source>
        <translation>Bedeckt, sonnig, Regen</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Who fished: Anna, or Anna, Ben</source>
        <translation>Wer fischte: Anna, oder Anna, Ben</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>In eigenen Worten</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>a length such as 78 cm or 31 in, up to 3 m</source>
        <translation>eine Länge wie 78 cm oder 31 in, höchstens 3 m</translation>
    </message>
    <message>
        <source>Bait depth</source>
        <translation>Ködertiefe</translation>
    </message>
    <message>
        <source>a depth such as 12ft or 3.6 m</source>
        <translation>eine Tiefe wie 3,6 m oder 12ft</translation>
    </message>
    <message>
        <source>Where it was not the stay&apos;s</source>
        <translation>Wo er ein anderer war als im Ansitz</translation>
    </message>
    <message>
        <source>Bait at</source>
        <translation>Köder bei</translation>
    </message>
    <message>
        <source>Where it was taken</source>
        <translation>Wo er gebissen hat</translation>
    </message>
    <message>
        <source>Hooked</source>
        <translation>Gehakt</translation>
    </message>
    <message>
        <source>Where the hook held: scissors, throat</source>
        <translation>Wo der Haken saß: Maulwinkel, Schlund</translation>
    </message>
    <message>
        <source>Who took it, where several fished</source>
        <translation>Wer ihn fing, wo mehrere fischten</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Its file, from the water&apos;s folder</source>
        <translation>Seine Datei, vom Ordner des Gewässers aus</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>What can hardly be so</source>
        <translation>Was kaum sein kann</translation>
    </message>
    <message>
        <source>Trip</source>
        <translation>Ausfahrt</translation>
    </message>
    <message>
        <source>One day of the log, or all</source>
        <translation>Ein Tag des Fangbuchs, oder alle</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Ansitz</translation>
    </message>
    <message>
        <source>Rods, bait</source>
        <translation>Ruten, Köder</translation>
    </message>
    <message>
        <source>Write down a stay</source>
        <translation>Einen Ansitz eintragen</translation>
    </message>
    <message>
        <source>Write up the day</source>
        <translation>Tag nachtragen</translation>
    </message>
    <message>
        <source>Go through the marks of the sheet</source>
        <translation>Die Plätze des Blattes durchgehen</translation>
    </message>
    <message>
        <source>A fish of the chosen stay</source>
        <translation>Ein Fisch des gewählten Ansitzes</translation>
    </message>
    <message>
        <source>Lost run</source>
        <translation>Fehlbiss</translation>
    </message>
    <message>
        <source>A take that was lost</source>
        <translation>Ein Biss, der verloren ging</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Move…</source>
        <translation>Verschieben …</translation>
    </message>
    <message>
        <source>Log…</source>
        <translation>Fangbuch …</translation>
    </message>
    <message>
        <source>Read stays and fish from a LOG.csv</source>
        <translation>Ansitze und Fische aus einer LOG.csv lesen</translation>
    </message>
    <message>
        <source>all %1</source>
        <translation>alle (%1)</translation>
    </message>
    <message>
        <source>No stays yet. Write up the day from its sheet, add a stay, bring in a log, or bring in the track of a day.</source>
        <translation>Noch keine Ansitze. Den Tag vom Blatt nachtragen, einen Ansitz hinzufügen, ein Fangbuch oder die Spur eines Tages einlesen.</translation>
    </message>
    <message>
        <source>Say first that you lay there: Space as planned, Return at other times.</source>
        <translation>Erst sagen, dass das Boot dort lag: Leertaste wie geplant, Eingabetaste zu anderen Zeiten.</translation>
    </message>
    <message>
        <source>Choose the stay of the fish first.</source>
        <translation>Erst den Ansitz des Fisches wählen.</translation>
    </message>
    <message>
        <source>Remove fish</source>
        <translation>Fisch entfernen</translation>
    </message>
    <message>
        <source>Point at where the boat lay</source>
        <translation>Zeigen, wo das Boot lag</translation>
    </message>
    <message>
        <source>Move stay</source>
        <translation>Ansitz verschieben</translation>
    </message>
    <message>
        <source>Bring in log</source>
        <translation>Fangbuch einlesen</translation>
    </message>
    <message>
        <source>Logs (*.csv);;All files (*)</source>
        <translation>Fangbücher (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Reading the log</source>
        <translation>Fangbuch wird gelesen</translation>
    </message>
    <message>
        <source>What the log comes to</source>
        <translation>Was das Fangbuch ergibt</translation>
    </message>
    <message>
        <source>Go through the marks of the sheet (Ctrl+D)</source>
        <translation>Die Plätze des Blattes durchgehen (Strg+D)</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>The sentences, to be pasted</source>
        <translation>Die Sätze, zum Einfügen</translation>
    </message>
    <message>
        <source>Nothing logged yet. Write up a day, and the log begins to tell.</source>
        <translation>Noch nichts eingetragen. Einen Tag nachtragen, dann beginnt das Fangbuch zu sprechen.</translation>
    </message>
    <message>
        <source>Summing up the log</source>
        <translation>Fangbuch wird zusammengefasst</translation>
    </message>
    <message>
        <source>The sentences can be pasted now.</source>
        <translation>Die Sätze können nun eingefügt werden.</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>mit %1</translation>
    </message>
    <message>
        <source>from %1 to %2 of each year</source>
        <translation>von %1 bis %2 jedes Jahres</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>Only what was asked for: %1.</source>
        <translation>Nur, wonach gefragt war: %1.</translation>
    </message>
    <message>
        <source>Bring in the track of a fishing day: where the boat lay still is offered as stays. Blanks count as much as catches.</source>
        <translation>Die Spur eines Angeltages einlesen: wo das Boot still lag, wird als Ansitz angeboten. Leere Ansitze zählen so viel wie Fänge.</translation>
    </message>
    <message>
        <source>Rods that were out. A stay whose rods are not known counts in no rate</source>
        <translation>Ruten, die aus waren. Ein Ansitz mit unbekannter Rutenzahl zählt in keiner Rate</translation>
    </message>
    <message>
        <source>Bring in track…</source>
        <translation>Spur einlesen …</translation>
    </message>
    <message>
        <source>Read a GPX file</source>
        <translation>Eine GPX-Datei lesen</translation>
    </message>
    <message>
        <source>Stays found</source>
        <translation>Gefundene Ansitze</translation>
    </message>
    <message>
        <source>Add as blanks</source>
        <translation>Leer eintragen</translation>
    </message>
    <message>
        <source>Put the ticked stays into the log; fill in the fish there</source>
        <translation>Die angehakten Ansitze ins Fangbuch; die Fische dort nachtragen</translation>
    </message>
    <message>
        <source>none brought in</source>
        <translation>keine eingelesen</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>gefunden: %1</translation>
    </message>
    <message>
        <source>Bring in track</source>
        <translation>Spur einlesen</translation>
    </message>
    <message>
        <source>Tracks (*.gpx);;All files (*)</source>
        <translation>Spuren (*.gpx);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Reading the track</source>
        <translation>Spur wird gelesen</translation>
    </message>
    <message>
        <source>%1 of the track stand in the log already.</source>
        <translation>Schon im Fangbuch: %1 der Spur.</translation>
    </message>
    <message>
        <source>a time such as 10:20</source>
        <translation>eine Uhrzeit wie 10:20</translation>
    </message>
    <message>
        <source>When the chosen stay began</source>
        <translation>Wann der gewählte Ansitz begann</translation>
    </message>
    <message>
        <source>When it ended</source>
        <translation>Wann er endete</translation>
    </message>
    <message>
        <source>Cut at</source>
        <translation>Teilen um</translation>
    </message>
    <message>
        <source>Makes two stays of it: before this time, and after</source>
        <translation>Macht zwei Ansitze daraus: vor dieser Zeit und danach</translation>
    </message>
    <message>
        <source>one stay</source>
        <translation>ein Ansitz</translation>
    </message>
    <message>
        <source>a time within the stay, such as 10:20</source>
        <translation>eine Uhrzeit im Ansitz, etwa 10:20</translation>
    </message>
    <message>
        <source>Add stays of the track</source>
        <translation>Ansitze der Spur hinzufügen</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>, %1 lost</source>
        <translation>, verloren: %1</translation>
    </message>
    <message>
        <source>%1 of %2 stops written down</source>
        <translation>%1 von %2 Halten eingetragen</translation>
    </message>
    <message>
        <source>The sheet that was in the boat, or the plan as it is now</source>
        <translation>Das Blatt, das im Boot war, oder der Plan, wie er jetzt ist</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>from – to</source>
        <translation>von – bis</translation>
    </message>
    <message>
        <source>came of it</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Stops of the day</source>
        <translation>Halte des Tages</translation>
    </message>
    <message>
        <source>Space: lay there as planned, a blank until a fish is added. Return: at other times. Ctrl+F: a fish. Delete: not fished. Escape: done.</source>
        <translation>Leertaste: wie geplant dort, ohne Fang, bis ein Fisch dazukommt. Eingabetaste: zu anderen Zeiten. Strg+F: ein Fisch. Entf: nicht befischt. Esc: fertig.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Back to all stays; Escape</source>
        <translation>Zurück zu allen Ansitzen; Esc</translation>
    </message>
    <message>
        <source>Rods out</source>
        <translation>Ruten aus</translation>
    </message>
    <message>
        <source>Of each stay that is ticked. A stay whose rods are not known counts in no rate</source>
        <translation>Bei jedem angehakten Ansitz. Ein Ansitz mit unbekannter Rutenzahl zählt in keiner Rate</translation>
    </message>
    <message>
        <source>Of each stay that is ticked; several with commas</source>
        <translation>Bei jedem angehakten Ansitz; mehreres mit Kommas</translation>
    </message>
    <message>
        <source>%1, from its sheet</source>
        <translation>%1, vom Blatt</translation>
    </message>
    <message>
        <source>%1, the plan as it is now</source>
        <translation>%1, der Plan, wie er jetzt ist</translation>
    </message>
    <message>
        <source>Working out the marks of the plan…</source>
        <translation>Plätze des Plans werden berechnet …</translation>
    </message>
    <message>
        <source>There is no plan to write up: add the stays one by one.</source>
        <translation>Es gibt keinen Plan zum Nachtragen: die Ansitze einzeln hinzufügen.</translation>
    </message>
    <message>
        <source>The plan has no stop: choose marks under Tomorrow, or add stays one by one.</source>
        <translation>Der Plan hat keinen Halt: unter Morgen Plätze wählen oder Ansitze einzeln hinzufügen.</translation>
    </message>
    <message>
        <source>%1, as planned. %2.</source>
        <translation>%1, wie geplant. %2.</translation>
    </message>
    <message>
        <source>This day is still to come: nothing of it has been fished.</source>
        <translation>Dieser Tag kommt erst: nichts davon ist befischt.</translation>
    </message>
    <message>
        <source>This stop is in the log: undo takes it out, or remove its stay.</source>
        <translation>Dieser Halt steht im Fangbuch: Rückgängig nimmt ihn heraus, oder den Ansitz entfernen.</translation>
    </message>
    <message>
        <source>Open this step (%1)</source>
        <translation>Diesen Schritt öffnen (%1)</translation>
    </message>
    <message>
        <source>out of date · %1</source>
        <translation>veraltet · %1</translation>
    </message>
    <message>
        <source>Backdrop</source>
        <translation>Unterlage</translation>
    </message>
    <message>
        <source>No backdrop</source>
        <translation>Keine Unterlage</translation>
    </message>
    <message>
        <source>Take the file from under the chart</source>
        <translation>Die Datei unter der Karte wegnehmen</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Sichtbar</translation>
    </message>
    <message>
        <source>Show the backdrop under the chart (Ctrl+Shift+B)</source>
        <translation>Unterlage unter der Karte zeigen (Strg+Umschalt+B)</translation>
    </message>
    <message>
        <source>Backdrop...</source>
        <translation>Unterlage …</translation>
    </message>
    <message>
        <source>A georeferenced picture or map from a file, to trace the shore over: GeoTIFF, JPEG with world file, Shapefile, GeoPackage, KML...</source>
        <translation>Ein Bild oder eine Karte mit Koordinaten aus einer Datei, um das Ufer nachzuzeichnen: GeoTIFF, JPEG mit World-Datei, Shapefile, GeoPackage, KML …</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>To the right the backdrop comes out and the depths fade</source>
        <translation>Nach rechts tritt die Unterlage hervor und die Tiefen verblassen</translation>
    </message>
    <message>
        <source>A picture or map under the chart, to trace the shore over.</source>
        <translation>Ein Bild oder eine Karte unter der Karte, um das Ufer nachzuzeichnen.</translation>
    </message>
    <message>
        <source>There is no water yet: bring something in first.</source>
        <translation>Noch kein Gewässer: erst etwas einlesen.</translation>
    </message>
    <message>
        <source>Pictures and maps (*.tif *.tiff *.jpg *.jpeg *.png *.jp2 *.vrt *.asc *.gpkg *.shp *.geojson *.json *.kml *.gpx *.pdf);;All files (*)</source>
        <translation>Bilder und Karten (*.tif *.tiff *.jpg *.jpeg *.png *.jp2 *.vrt *.asc *.gpkg *.shp *.geojson *.json *.kml *.gpx *.pdf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Band edges</source>
        <translation>Stufengrenzen</translation>
    </message>
    <message>
        <source>Depths that part the bands, shallow to deep; empty: round steps, chosen from the depths of this water</source>
        <translation>Tiefen, die die Stufen trennen, von flach nach tief; leer: runde Schritte nach den Tiefen dieses Gewässers</translation>
    </message>
    <message>
        <source>chosen from the depths</source>
        <translation>nach den Tiefen gewählt</translation>
    </message>
    <message>
        <source>depths such as 2, 4, 6, each deeper than the one before, or nothing</source>
        <translation>Tiefen wie 2; 4; 6, jede tiefer als die davor, oder nichts</translation>
    </message>
    <message>
        <source>Set band edges</source>
        <translation>Stufengrenzen setzen</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenztiefe</translation>
    </message>
    <message>
        <source>The deepest depth worth fishing; empty: 9 m or 30 ft, or all of a water that is not so deep</source>
        <translation>Die größte Tiefe, die zu befischen lohnt; leer: 9 m oder 30 ft, oder alles, wo das Gewässer flacher ist</translation>
    </message>
    <message>
        <source>a depth such as 30 ft, or nothing</source>
        <translation>eine Tiefe wie 9 m oder 30 ft, oder nichts</translation>
    </message>
    <message>
        <source>Set limit</source>
        <translation>Grenztiefe setzen</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Structure</source>
        <translation>Struktur</translation>
    </message>
    <message>
        <source>%1 (chosen)</source>
        <translation>%1 (gewählt)</translation>
    </message>
    <message>
        <source>at chart level</source>
        <translation>bei Kartennull</translation>
    </message>
    <message>
        <source>at today&apos;s level, %1</source>
        <translation>beim Wasserstand von heute, %1</translation>
    </message>
    <message>
        <source>Down to the limit: %1, %2 of the water %3.</source>
        <translation>Bis zur Grenztiefe: %1, %2 des Gewässers %3.</translation>
    </message>
    <message>
        <source>%1 bands, limit %2</source>
        <translation>%1 Stufen, Grenztiefe %2</translation>
    </message>
    <message>
        <source>%1 bands, %2 zones</source>
        <translation>%1 Stufen, %2 Zonen</translation>
    </message>
    <message>
        <source>Days against each other</source>
        <translation>Tage gegeneinander</translation>
    </message>
    <message>
        <source>Nothing is added to a day&apos;s depths before you agree; it can be undone</source>
        <translation>Zu den Tiefen eines Tages kommt nichts hinzu, bevor zugestimmt ist; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>No sounding is moved along its track before you agree; it can be undone</source>
        <translation>Keine Lotung wird entlang der Spur verschoben, bevor zugestimmt ist; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Agree</source>
        <translation>Zustimmen</translation>
    </message>
    <message>
        <source>%1: %2 added, as agreed</source>
        <translation>%1: %2 hinzugefügt, wie zugestimmt</translation>
    </message>
    <message>
        <source>%1: held, the others are tied to it</source>
        <translation>%1: bleibt fest, die anderen richten sich danach</translation>
    </message>
    <message>
        <source>%1: too few crossings with other days</source>
        <translation>%1: zu wenige Kreuzungen mit anderen Tagen</translation>
    </message>
    <message>
        <source>%1: add %2 (%3), from %4 crossings</source>
        <translation>%1: %2 hinzufügen (%3), aus %4 Kreuzungen</translation>
    </message>
    <message>
        <source>%1: agrees with the others</source>
        <translation>%1: stimmt mit den anderen überein</translation>
    </message>
    <message>
        <source>early</source>
        <translation>zu früh</translation>
    </message>
    <message>
        <source>late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>%1: positions %2 s %3, as agreed</source>
        <translation>%1: Positionen %2 s %3, wie zugestimmt</translation>
    </message>
    <message>
        <source>%1: positions %2 s %3 (±%4 s), from %5 crossings on slopes; without, passes would differ by %6 instead of %7</source>
        <translation>%1: Positionen %2 s %3 (±%4 s), aus %5 Kreuzungen an Hängen; ohne wichen Fahrten um %6 statt %7 ab</translation>
    </message>
    <message>
        <source>nothing to look over yet</source>
        <translation>noch nichts zu prüfen</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>%1 ausgesondert</translation>
    </message>
    <message>
        <source>, crossings %1</source>
        <translation>, Kreuzungen %1</translation>
    </message>
    <message>
        <source>With all of it, crossings would differ by %1 instead of %2.</source>
        <translation>Mit allem zusammen wichen Kreuzungen um %1 statt %2 ab.</translation>
    </message>
    <message>
        <source>What do the columns hold?</source>
        <translation>Was enthalten die Spalten?</translation>
    </message>
    <message>
        <source>%1: say what each column is, and the unit of its depths.</source>
        <translation>%1: sagen, was jede Spalte ist, und die Einheit der Tiefen.</translation>
    </message>
    <message>
        <source>-</source>
        <translation>-</translation>
    </message>
    <message>
        <source>longitude or east</source>
        <translation>Länge oder Ost</translation>
    </message>
    <message>
        <source>latitude or north</source>
        <translation>Breite oder Nord</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>fathoms</source>
        <translation>Faden</translation>
    </message>
    <message>
        <source>Unit of the depths</source>
        <translation>Einheit der Tiefen</translation>
    </message>
    <message>
        <source>point: 3.6</source>
        <translation>Punkt: 3.6</translation>
    </message>
    <message>
        <source>comma: 3,6</source>
        <translation>Komma: 3,6</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Where passes cross</source>
        <translation>Wo Fahrten sich kreuzen</translation>
    </message>
    <message>
        <source>Worst crossings</source>
        <translation>Schlechteste Kreuzungen</translation>
    </message>
    <message>
        <source>Differ by</source>
        <translation>Weicht ab um</translation>
    </message>
    <message>
        <source>A yardstick, no hydrographic survey.</source>
        <translation>Ein Maßstab, keine Seevermessung.</translation>
    </message>
    <message>
        <source>No pass crosses another yet: sail a few lines across the others to see how well they agree.</source>
        <translation>Noch kreuzt keine Fahrt eine andere: einige Linien quer zu den übrigen fahren, um zu sehen, wie gut sie passen.</translation>
    </message>
    <message>
        <source>crossings</source>
        <translation>Kreuzungen</translation>
    </message>
    <message>
        <source>mean difference, later less earlier</source>
        <translation>mittlere Abweichung, spätere minus frühere</translation>
    </message>
    <message>
        <source>root mean square difference</source>
        <translation>quadratisches Mittel der Abweichung</translation>
    </message>
    <message>
        <source>95 of 100 within</source>
        <translation>95 von 100 innerhalb</translation>
    </message>
    <message>
        <source>within IHO S-44 order 1b</source>
        <translation>innerhalb IHO S-44 Order 1b</translation>
    </message>
    <message>
        <source>within IHO S-44 order 2</source>
        <translation>innerhalb IHO S-44 Order 2</translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>%1 on the earlier pass, %2 on the later (%3), at %4</source>
        <translation>%1 auf der früheren Fahrt, %2 auf der späteren (%3), bei %4</translation>
    </message>
    <message>
        <source>Cell</source>
        <translation>Zelle</translation>
    </message>
    <message>
        <source>Side of a cell of the depth grid, 0.5 to 100 m; empty: chosen from the soundings</source>
        <translation>Seite einer Zelle des Tiefenrasters, 0,5 bis 100 m; leer: nach den Lotungen gewählt</translation>
    </message>
    <message>
        <source>chosen from the soundings</source>
        <translation>nach den Lotungen gewählt</translation>
    </message>
    <message>
        <source>a length from 0.5 to 100 m, or nothing</source>
        <translation>eine Länge von 0,5 bis 100 m, oder nichts</translation>
    </message>
    <message>
        <source>Set cell</source>
        <translation>Zelle setzen</translation>
    </message>
    <message>
        <source>Level today</source>
        <translation>Stand heute</translation>
    </message>
    <message>
        <source>How far the water stands above (+) or below (-) the level of the chart: contours, bands and the water&apos;s edge are drawn for it. The same as under Tomorrow, conditions</source>
        <translation>Wie weit das Wasser über (+) oder unter (-) Kartennull steht: Tiefenlinien, Stufen und Wasserrand werden dafür gezeichnet. Derselbe wie unter Morgen, Bedingungen</translation>
    </message>
    <message>
        <source>a length such as +0.35 m or -1ft</source>
        <translation>eine Länge wie +0,35 m oder -1ft</translation>
    </message>
    <message>
        <source>Set level</source>
        <translation>Wasserstand setzen</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Zeichnen</translation>
    </message>
    <message>
        <source>Draw the water again</source>
        <translation>Das Gewässer neu zeichnen</translation>
    </message>
    <message>
        <source>The water</source>
        <translation>Das Gewässer</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>How it was drawn</source>
        <translation>Wie es gezeichnet wurde</translation>
    </message>
    <message>
        <source>The drawing is up to date: nothing has changed since it was made.</source>
        <translation>Die Zeichnung ist aktuell: seither hat sich nichts geändert.</translation>
    </message>
    <message>
        <source>bank</source>
        <translation>Ufer</translation>
    </message>
    <message>
        <source>shore development</source>
        <translation>Uferentwicklung</translation>
    </message>
    <message>
        <source>light</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>very strong</source>
        <translation>sehr stark</translation>
    </message>
    <message>
        <source>no smoother along contours than across</source>
        <translation>längs der Tiefenlinien nicht glatter als quer</translation>
    </message>
    <message>
        <source>smoother along contours than across</source>
        <translation>längs der Tiefenlinien glatter als quer</translation>
    </message>
    <message>
        <source>much smoother along contours than across</source>
        <translation>längs der Tiefenlinien viel glatter als quer</translation>
    </message>
    <message>
        <source>Cells of %1, as you set them.</source>
        <translation>Zellen von %1, wie vorgegeben.</translation>
    </message>
    <message>
        <source>Cells of %1, chosen from the size of the water and how close the soundings lie.</source>
        <translation>Zellen von %1, gewählt nach der Größe des Gewässers und dem Abstand der Lotungen.</translation>
    </message>
    <message>
        <source>%1 smoothing, %2</source>
        <translation>Glättung %1, %2</translation>
    </message>
    <message>
        <source>%1 %2: the usual, for want of soundings to try others on.</source>
        <translation>%1 %2: wie üblich, mangels Lotungen, um anderes zu prüfen.</translation>
    </message>
    <message>
        <source>%1 %2: kept from the drawing before, for so small a change. Draw chooses anew.</source>
        <translation>%1 %2: von der Zeichnung davor behalten, bei so kleiner Änderung. Zeichnen wählt neu.</translation>
    </message>
    <message>
        <source>%1 %2: what foretold best the %3 soundings that were held out in turn. Half of those lay within %4 of the drawing.</source>
        <translation>%1 %2: sagte die %3 nacheinander zurückgehaltenen Lotungen am besten voraus. Die Hälfte davon lag innerhalb von %4 der Zeichnung.</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <source>soundings used</source>
        <translation>benutzte Lotungen</translation>
    </message>
    <message>
        <source>left out as spikes</source>
        <translation>als Ausreißer ausgelassen</translation>
    </message>
    <message>
        <source>usual error at soundings kept back</source>
        <translation>üblicher Fehler an zurückgehaltenen Lotungen</translation>
    </message>
    <message>
        <source>mean error at soundings kept back</source>
        <translation>mittlerer Fehler an zurückgehaltenen Lotungen</translation>
    </message>
    <message>
        <source>stiffness, along contours</source>
        <translation>Steifheit, längs der Tiefenlinien</translation>
    </message>
    <message>
        <source>cells of %1</source>
        <translation>Zellen von %1</translation>
    </message>
    <message>
        <source>%1, off by %2</source>
        <translation>%1, um %2 daneben</translation>
    </message>
    <message>
        <source>not drawn yet</source>
        <translation>noch nicht gezeichnet</translation>
    </message>
    <message>
        <source>, days differ by %1</source>
        <translation>, Tage weichen um %1 ab</translation>
    </message>
    <message>
        <source>%1 sounded, %2 inferred, %3 a guess</source>
        <translation>%1 gelotet, %2 erschlossen, %3 geschätzt</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
    <message>
        <source>%1 was left out: another water was opened.</source>
        <translation>%1 wurde ausgelassen: ein anderes Gewässer wurde geöffnet.</translation>
    </message>
    <message>
        <source>%L1 files were left out: another water was opened.</source>
        <translation>%L1 Dateien wurden ausgelassen: ein anderes Gewässer wurde geöffnet.</translation>
    </message>
    <message>
        <source>%1 was left out.</source>
        <translation>%1 wurde ausgelassen.</translation>
    </message>
    <message>
        <source>Depths in feet?</source>
        <translation>Tiefen in Fuß?</translation>
    </message>
    <message>
        <source>They are feet</source>
        <translation>Es sind Fuß</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>%L1 soundings from %2%3.%4</source>
        <translation>%L1 Lotungen aus %2%3.%4</translation>
    </message>
    <message>
        <source>, %L1 survey days</source>
        <translation>, %L1 Lotungstage</translation>
    </message>
    <message>
        <source> Left out: %1</source>
        <translation> Ausgelassen: %1</translation>
    </message>
    <message>
        <source>Shoreline from %1.</source>
        <translation>Uferlinie aus %1.</translation>
    </message>
    <message>
        <source>%L1 weed notes from %2.</source>
        <translation>%L1 Krautnotizen aus %2.</translation>
    </message>
    <message>
        <source>%L1 soundings by lead line from %2.</source>
        <translation>%L1 Lotungen mit dem Handlot aus %2.</translation>
    </message>
    <message>
        <source>House rules from %1.</source>
        <translation>Gewässerordnung aus %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The day&apos;s track from %1; its stays are under Looking back.</source>
        <translation>Die Spur des Tages aus %1; ihre Ansitze stehen unter Rückblick.</translation>
    </message>
    <message>
        <source>Bring in facts of days</source>
        <translation>Angaben zu Tagen einlesen</translation>
    </message>
    <message>
        <source>Facts of %L1 survey days; those still to come get theirs as their files come in.</source>
        <translation>Angaben zu %L1 Lotungstagen; noch fehlende bekommen ihre, sobald ihre Dateien kommen.</translation>
    </message>
    <message>
        <source>Bring in facts</source>
        <translation>Angaben einlesen</translation>
    </message>
    <message>
        <source>Facts of the water from %1.</source>
        <translation>Angaben zum Gewässer aus %1.</translation>
    </message>
    <message>
        <source>Area and volume by depth</source>
        <translation>Fläche und Volumen nach Tiefe</translation>
    </message>
    <message>
        <source>Area and volume against depth</source>
        <translation>Fläche und Volumen gegen die Tiefe</translation>
    </message>
    <message>
        <source>How much water lies at each depth or deeper: area on the scale below, volume on the scale above</source>
        <translation>Wie viel Wasser so tief oder tiefer ist: Fläche auf der unteren Skala, Volumen auf der oberen</translation>
    </message>
    <message>
        <source>Ctrl+C copies the whole table for a spreadsheet</source>
        <translation>Strg+C kopiert die ganze Tabelle für ein Tabellenprogramm</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>Puts the table on the clipboard, columns apart by tabs, in the units shown (Ctrl+C in the table)</source>
        <translation>Legt die Tabelle in die Zwischenablage, Spalten durch Tabulatoren getrennt, in den gezeigten Einheiten (Strg+C in der Tabelle)</translation>
    </message>
    <message>
        <source>copied, %1 rows</source>
        <translation>%1 Zeilen kopiert</translation>
    </message>
    <message>
        <source>Depth, %1</source>
        <translation>Tiefe, %1</translation>
    </message>
    <message>
        <source>Area, %1</source>
        <translation>Fläche, %1</translation>
    </message>
    <message>
        <source>Volume, %1</source>
        <translation>Volumen, %1</translation>
    </message>
    <message>
        <source>Area as deep as that or deeper, and volume below that depth, at chart level.</source>
        <translation>Fläche, die so tief oder tiefer ist, und Volumen unter dieser Tiefe, bei Kartennull.</translation>
    </message>
    <message>
        <source>Area today, %1</source>
        <translation>Fläche heute, %1</translation>
    </message>
    <message>
        <source>Volume today, %1</source>
        <translation>Volumen heute, %1</translation>
    </message>
    <message>
        <source>today %1</source>
        <translation>heute %1</translation>
    </message>
    <message>
        <source>Area as deep as that or deeper, and volume below that depth: at chart level (dashed), and today at %1 from it (drawn through).</source>
        <translation>Fläche, die so tief oder tiefer ist, und Volumen unter dieser Tiefe: bei Kartennull (gestrichelt) und heute, %1 davon entfernt (durchgezogen).</translation>
    </message>
    <message>
        <source>area, %1</source>
        <translation>Fläche, %1</translation>
    </message>
    <message>
        <source>volume, %1</source>
        <translation>Volumen, %1</translation>
    </message>
    <message>
        <source>By lead line</source>
        <translation>Mit dem Handlot</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Soundings by lead line</source>
        <translation>Lotungen mit dem Handlot</translation>
    </message>
    <message>
        <source>Sound on chart</source>
        <translation>Loten …</translation>
    </message>
    <message>
        <source>Point at the places where the lead found this depth and bottom</source>
        <translation>Die Stellen zeigen, an denen das Lot diese Tiefe und diesen Grund fand</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add this depth at the place typed</source>
        <translation>Diese Tiefe am eingetippten Ort hinzufügen</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Give the chosen sounding what the fields say</source>
        <translation>Der gewählten Lotung geben, was in den Feldern steht</translation>
    </message>
    <message>
        <source>Take the chosen sounding out; it can be undone</source>
        <translation>Die gewählte Lotung herausnehmen; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>such as 3.6 m or 12ft</source>
        <translation>etwa 3,6 m oder 12ft</translation>
    </message>
    <message>
        <source>How far the lead ran out</source>
        <translation>Wie weit das Lot hinablief</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gelesen</translation>
    </message>
    <message>
        <source>Water level on the gauge when the lead ran out; with it the depth is brought to chart level</source>
        <translation>Pegelstand, als das Lot hinablief; damit wird die Tiefe auf Kartennull gebracht</translation>
    </message>
    <message>
        <source>What the lead brought up or felt</source>
        <translation>Was das Lot heraufbrachte oder fühlte</translation>
    </message>
    <message>
        <source>latitude, longitude</source>
        <translation>Breite, Länge</translation>
    </message>
    <message>
        <source>Read off a receiver, or point at it on the chart instead</source>
        <translation>Von einem Empfänger abgelesen, oder stattdessen auf der Karte zeigen</translation>
    </message>
    <message>
        <source>Point where the lead found %1</source>
        <translation>Zeigen, wo das Lot %1 fand</translation>
    </message>
    <message>
        <source>not felt</source>
        <translation>nicht gefühlt</translation>
    </message>
    <message>
        <source>Depths count from chart level (%1 on the gauge). Type the level of the day beside a depth read today, and it is allowed for.</source>
        <translation>Tiefen zählen ab Kartennull (%1 am Pegel). Den Stand des Tages neben eine heute gelesene Tiefe tippen, dann wird er verrechnet.</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>Time for it</source>
        <translation>Zeit dafür</translation>
    </message>
    <message>
        <source>On the water, from the launch and back</source>
        <translation>Auf dem Wasser, von der Slipstelle und zurück</translation>
    </message>
    <message>
        <source>While sounding, and between the lines</source>
        <translation>Beim Loten und zwischen den Linien</translation>
    </message>
    <message>
        <source>Save as GPX...</source>
        <translation>Als GPX speichern …</translation>
    </message>
    <message>
        <source>The whole trip as one route for a plotter or phone: from the launch along every line and back</source>
        <translation>Die ganze Fahrt als eine Route für Plotter oder Telefon: von der Slipstelle über jede Linie und zurück</translation>
    </message>
    <message>
        <source>Propose lines</source>
        <translation>Linien vorschlagen</translation>
    </message>
    <message>
        <source>The lines that would tell most about the water</source>
        <translation>Die Linien, die am meisten über das Gewässer verraten</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>heading</source>
        <translation>Kurs</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>gain</source>
        <translation>Gewinn</translation>
    </message>
    <message>
        <source>In the order of the trip; gain is the share of what all lines bring in trust</source>
        <translation>In der Reihenfolge der Fahrt; Gewinn ist der Anteil an dem, was alle Linien an Verlässlichkeit bringen</translation>
    </message>
    <message>
        <source>Older than your last change: proposed anew before they are saved.</source>
        <translation>Älter als die letzte Änderung: vor dem Speichern wird neu vorgeschlagen.</translation>
    </message>
    <message>
        <source>Looking for lines to sound</source>
        <translation>Linien zum Loten werden gesucht</translation>
    </message>
    <message>
        <source>Trip to sound</source>
        <translation>Lotungsfahrt</translation>
    </message>
    <message>
        <source>GPX (*.gpx)</source>
        <translation>GPX (*.gpx)</translation>
    </message>
    <message>
        <source>The trip lies in %1.</source>
        <translation>Die Fahrt liegt in %1.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>Von %1 bis %2.</translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation>noch nicht gefragt</translation>
    </message>
    <message>
        <source>%1 and %2 of sailing, from the launch and back, bring the trust from %3 to %4 on average where you fish.</source>
        <translation>%1 und %2 Fahrt, von der Slipstelle und zurück, bringen die Verlässlichkeit dort, wo gefischt wird, im Mittel von %3 auf %4.</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Linie %1</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Linie %1: %2</translation>
    </message>
    <message>
        <source>Change sections</source>
        <translation>Abschnitte ändern</translation>
    </message>
    <message>
        <source>Join...</source>
        <translation>Verbinden …</translation>
    </message>
    <message>
        <source>Make one section of two neighbours</source>
        <translation>Zwei Nachbarn zu einem Abschnitt machen</translation>
    </message>
    <message>
        <source>Split...</source>
        <translation>Teilen …</translation>
    </message>
    <message>
        <source>Cut a section in two along a line</source>
        <translation>Einen Abschnitt längs einer Linie zerschneiden</translation>
    </message>
    <message>
        <source>Move border...</source>
        <translation>Grenze ändern …</translation>
    </message>
    <message>
        <source>Draw the border between two neighbours anew</source>
        <translation>Die Grenze zwischen zwei Nachbarn neu ziehen</translation>
    </message>
    <message>
        <source>Take last back</source>
        <translation>Letzte zurück</translation>
    </message>
    <message>
        <source>The last of these changes is undone</source>
        <translation>Die letzte dieser Änderungen wird zurückgenommen</translation>
    </message>
    <message>
        <source>Take all back</source>
        <translation>Alle zurück</translation>
    </message>
    <message>
        <source>The sections as they were laid out</source>
        <translation>Die Abschnitte, wie sie angelegt waren</translation>
    </message>
    <message>
        <source>To split: with the button held, draw a line right across a section</source>
        <translation>Zum Teilen: mit gedrückter Taste eine Linie quer durch einen Abschnitt ziehen</translation>
    </message>
    <message>
        <source>To join: point at the first of two neighbours</source>
        <translation>Zum Verbinden: auf den ersten zweier Nachbarn zeigen</translation>
    </message>
    <message>
        <source>To move a border: point at one of its two sections</source>
        <translation>Zum Ändern der Grenze: auf einen ihrer beiden Abschnitte zeigen</translation>
    </message>
    <message>
        <source>To join: point at the neighbour that %1 is joined with</source>
        <translation>Zum Verbinden: auf den Nachbarn zeigen, mit dem %1 verbunden wird</translation>
    </message>
    <message>
        <source>To move a border: point at the neighbour of %1 beyond it</source>
        <translation>Zum Ändern der Grenze: auf den Nachbarn von %1 jenseits davon zeigen</translation>
    </message>
    <message>
        <source>With the button held, draw the new border right across the two sections</source>
        <translation>Mit gedrückter Taste die neue Grenze quer durch beide Abschnitte ziehen</translation>
    </message>
    <message>
        <source>Wanted size</source>
        <translation>Gewünschte Größe</translation>
    </message>
    <message>
        <source>What one outing can cover</source>
        <translation>Was eine Ausfahrt schaffen kann</translation>
    </message>
    <message>
        <source>chosen from the fishable water</source>
        <translation>nach dem befischbaren Wasser gewählt</translation>
    </message>
    <message>
        <source>an area such as 4 ha or 10 acres, or nothing</source>
        <translation>eine Fläche wie 4 ha oder 10 acres, oder nichts</translation>
    </message>
    <message>
        <source>Set size of sections</source>
        <translation>Größe der Abschnitte setzen</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Weed</source>
        <translation>Kraut</translation>
    </message>
    <message>
        <source>Fished</source>
        <translation>Befischt</translation>
    </message>
    <message>
        <source>Sections</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>The section that is chosen is called after the place nearest to it on the chart</source>
        <translation>Der gewählte Abschnitt heißt nach dem nächsten Ort auf der Karte</translation>
    </message>
    <message>
        <source>Divide anew</source>
        <translation>Neu teilen</translation>
    </message>
    <message>
        <source>Without regard to the borders there are; numbers and names stay with their water</source>
        <translation>Ohne Rücksicht auf die jetzigen Grenzen; Nummern und Namen bleiben bei ihrem Wasser</translation>
    </message>
    <message>
        <source>Double-click a name, or press F2, to give your own. Number, name and borders stay when the water is drawn again; new water gets new numbers, and no number is ever that of other water. Click a section on the chart to choose it; a ring ○ before its name says that it was never fished.</source>
        <translation>Doppelklick auf einen Namen oder F2, um einen eigenen zu geben. Nummer, Name und Grenzen bleiben, wenn neu gezeichnet wird; neues Wasser bekommt neue Nummern, und keine Nummer gehört je zu anderem Wasser. Klick auf einen Abschnitt der Karte wählt ihn; ein Ring ○ vor dem Namen heißt: nie befischt.</translation>
    </message>
    <message>
        <source>Counting the use of the sections</source>
        <translation>Nutzung der Abschnitte wird gezählt</translation>
    </message>
    <message>
        <source>Name it %1</source>
        <translation>%1 nennen</translation>
    </message>
    <message>
        <source>none stands out</source>
        <translation>nichts sticht heraus</translation>
    </message>
    <message>
        <source>sounded</source>
        <translation>gelotet</translation>
    </message>
    <message>
        <source>inferred</source>
        <translation>erschlossen</translation>
    </message>
    <message>
        <source>Never fished</source>
        <translation>Nie befischt</translation>
    </message>
    <message>
        <source>Never anchored in; %1 within a cast of a stay beside it</source>
        <translation>Nie darin geankert; %1 in Wurfweite eines Ansitzes daneben</translation>
    </message>
    <message>
        <source>, the rods of %1 not known</source>
        <translation>, Ruten unbekannt bei %1</translation>
    </message>
    <message>
        <source>%1 in %2 rod-hours (%3%6, %4 without a fish); %5 of it within a cast</source>
        <translation>%1 in %2 Rutenstunden (%3%6, %4 ohne Fisch); %5 davon in Wurfweite</translation>
    </message>
    <message>
        <source>%1 under Tomorrow: what it raises here is not known</source>
        <translation>%1 unter Morgen: was das hier aufwirft, ist unbekannt</translation>
    </message>
    <message>
        <source>calm</source>
        <translation>Flaute</translation>
    </message>
    <message>
        <source>%1: %2 of open water upwind, waves about %3</source>
        <translation>%1: %2 offenes Wasser in Luv, Wellen etwa %3</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>%1 in %2 h</source>
        <translation>%1 in %2 h</translation>
    </message>
    <message>
        <source>%1 on average, down to %2</source>
        <translation>im Mittel %1, bis %2</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Drop-off</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>%1 of edge</source>
        <translation>%1 Kante</translation>
    </message>
    <message>
        <source>likely on %1</source>
        <translation>wahrscheinlich auf %1</translation>
    </message>
    <message>
        <source>Bank</source>
        <translation>Ufer</translation>
    </message>
    <message>
        <source>Launch</source>
        <translation>Slipstelle</translation>
    </message>
    <message>
        <source>%1 away over water</source>
        <translation>%1 übers Wasser</translation>
    </message>
    <message>
        <source>Trust</source>
        <translation>Verlässlichkeit</translation>
    </message>
    <message>
        <source>%1 of %2 never fished; %3 of the water lies within a cast of a stay.</source>
        <translation>%1 von %2 nie befischt; %3 des Wassers in Wurfweite eines Ansitzes.</translation>
    </message>
    <message>
        <source>not divided yet</source>
        <translation>noch nicht geteilt</translation>
    </message>
    <message>
        <source>%1 of about %2</source>
        <translation>%1 von etwa %2</translation>
    </message>
    <message>
        <source>Tomorrow</source>
        <translation>Morgen</translation>
    </message>
    <message>
        <source>Change %1 does not fit this map: %2.</source>
        <translation>Änderung %1 passt nicht zu dieser Karte: %2.</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Ausgesondert</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Weshalb</translation>
    </message>
    <message>
        <source>Soundings</source>
        <translation>Lotungen</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Vorige</translation>
    </message>
    <message>
        <source>The sounding before it that was set aside for the same reason</source>
        <translation>Die vorige Lotung, die aus demselben Grund ausgesondert wurde</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Nächste</translation>
    </message>
    <message>
        <source>The next sounding that was set aside for the same reason</source>
        <translation>Die nächste Lotung, die aus demselben Grund ausgesondert wurde</translation>
    </message>
    <message>
        <source>Keep this one</source>
        <translation>Diese behalten</translation>
    </message>
    <message>
        <source>Draw with the sounding in the ring</source>
        <translation>Mit der Lotung im Ring zeichnen</translation>
    </message>
    <message>
        <source>Set this one aside</source>
        <translation>Diese aussondern</translation>
    </message>
    <message>
        <source>Draw without the sounding in the ring</source>
        <translation>Ohne die Lotung im Ring zeichnen</translation>
    </message>
    <message>
        <source>How the depth of this sounding came about</source>
        <translation>Wie die Tiefe dieser Lotung zustande kam</translation>
    </message>
    <message>
        <source>Many at once</source>
        <translation>Viele auf einmal</translation>
    </message>
    <message>
        <source>Set aside...</source>
        <translation>Aussondern …</translation>
    </message>
    <message>
        <source>Go round soundings that are wrong on the chart, or brush over them in the side view</source>
        <translation>Falsche Lotungen auf der Karte umfahren oder in der Seitenansicht überstreichen</translation>
    </message>
    <message>
        <source>Take back...</source>
        <translation>Zurücknehmen …</translation>
    </message>
    <message>
        <source>Go round soundings that are right although set aside on the chart, or brush over them in the side view</source>
        <translation>Richtige, aber ausgesonderte Lotungen auf der Karte umfahren oder in der Seitenansicht überstreichen</translation>
    </message>
    <message>
        <source>To set aside: with the button held, go round soundings on the chart or brush over them in the side view</source>
        <translation>Zum Aussondern: mit gedrückter Taste Lotungen auf der Karte umfahren oder in der Seitenansicht überstreichen</translation>
    </message>
    <message>
        <source>To take back: with the button held, go round soundings on the chart or brush over them in the side view</source>
        <translation>Zum Zurücknehmen: mit gedrückter Taste Lotungen auf der Karte umfahren oder in der Seitenansicht überstreichen</translation>
    </message>
    <message>
        <source>%1 set aside.</source>
        <translation>%1 ausgesondert.</translation>
    </message>
    <message>
        <source>%1 taken back.</source>
        <translation>%1 zurückgenommen.</translation>
    </message>
    <message>
        <source>%1: %2
%3</source>
        <translation>%1: %2
%3</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation>%1 von %2: %3</translation>
    </message>
    <message>
        <source>none left: %1</source>
        <translation>keine übrig: %1</translation>
    </message>
    <message>
        <source>%1 left: %2</source>
        <translation>%1 übrig: %2</translation>
    </message>
    <message>
        <source>Chart level</source>
        <translation>Kartennull</translation>
    </message>
    <message>
        <source>The gauge reading that all depths refer to</source>
        <translation>Der Pegelstand, auf den sich alle Tiefen beziehen</translation>
    </message>
    <message>
        <source>a gauge reading such as 12.30 m</source>
        <translation>ein Pegelstand wie 12,30 m</translation>
    </message>
    <message>
        <source>Set chart level</source>
        <translation>Kartennull setzen</translation>
    </message>
    <message>
        <source>Set launch</source>
        <translation>Slipstelle setzen</translation>
    </message>
    <message>
        <source>Point on the chart at the place where you start</source>
        <translation>Auf der Karte die Stelle zeigen, an der es losgeht</translation>
    </message>
    <message>
        <source>No launch set: ways are not counted.</source>
        <translation>Keine Slipstelle gesetzt: Wege zählen nicht.</translation>
    </message>
    <message>
        <source>Launch at %1</source>
        <translation>Slipstelle bei %1</translation>
    </message>
    <message>
        <source>Trace...</source>
        <translation>Nachzeichnen …</translation>
    </message>
    <message>
        <source>Go round the water on the chart, corner by corner; islands inside stay</source>
        <translation>Das Wasser auf der Karte umfahren, Ecke für Ecke; Inseln darin bleiben</translation>
    </message>
    <message>
        <source>Take away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Draw without this shoreline; it can be undone</source>
        <translation>Ohne diese Uferlinie zeichnen; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Bring in...</source>
        <translation>Einlesen …</translation>
    </message>
    <message>
        <source>A shoreline from a file, or a track walked round the water</source>
        <translation>Eine Uferlinie aus einer Datei oder eine um das Gewässer gegangene Spur</translation>
    </message>
    <message>
        <source>Shoreline to bring in</source>
        <translation>Uferlinie zum Einlesen</translation>
    </message>
    <message>
        <source>Reshape</source>
        <translation>Umformen</translation>
    </message>
    <message>
        <source>Take hold of the shore: drag a corner, click the line for a new one, Delete takes the chosen corner away; each can be undone</source>
        <translation>Das Ufer anfassen: Ecke ziehen, Klick auf die Linie für eine neue, Entf nimmt die gewählte weg; jedes lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Add island...</source>
        <translation>Insel …</translation>
    </message>
    <message>
        <source>Go round an island on the chart, corner by corner</source>
        <translation>Eine Insel auf der Karte umfahren, Ecke für Ecke</translation>
    </message>
    <message>
        <source>Remove island</source>
        <translation>Insel entfernen</translation>
    </message>
    <message>
        <source>Point into the island to be taken away</source>
        <translation>In die Insel zeigen, die weg soll</translation>
    </message>
    <message>
        <source>Click round the water, corner by corner; double-click to close the line</source>
        <translation>Das Wasser umklicken, Ecke für Ecke; Doppelklick schließt die Linie</translation>
    </message>
    <message>
        <source>Drag a corner of the shore; click the line for a new one; Delete takes the chosen one away</source>
        <translation>Eine Ecke des Ufers ziehen; Klick auf die Linie für eine neue; Entf nimmt die gewählte weg</translation>
    </message>
    <message>
        <source>Click round the island, corner by corner; double-click to close the line</source>
        <translation>Die Insel umklicken, Ecke für Ecke; Doppelklick schließt die Linie</translation>
    </message>
    <message>
        <source>Point at the launch</source>
        <translation>Auf die Slipstelle zeigen</translation>
    </message>
    <message>
        <source>assumed round the soundings</source>
        <translation>um die Lotungen angenommen</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>No shoreline yet. Until there is one, a line round the soundings stands for it, and depths near the bank are a guess.</source>
        <translation>Noch keine Uferlinie. Bis dahin steht eine Linie um die Lotungen dafür, und Tiefen am Ufer sind geschätzt.</translation>
    </message>
    <message>
        <source>brought in</source>
        <translation>eingelesen</translation>
    </message>
    <message>
        <source>%1 of water, %2, %3 of bank.</source>
        <translation>%1 Wasser, %2, %3 Ufer.</translation>
    </message>
    <message>
        <source>%1, no time</source>
        <translation>%1, keine Zeit</translation>
    </message>
    <message>
        <source>speed of sound: not by sound</source>
        <translation>Schallgeschwindigkeit: nicht mit Schall gelotet</translation>
    </message>
    <message>
        <source>speed of sound at %1</source>
        <translation>Schallgeschwindigkeit bei %1</translation>
    </message>
    <message>
        <source>speed of sound: water not known</source>
        <translation>Schallgeschwindigkeit: Wasser unbekannt</translation>
    </message>
    <message>
        <source>water level, gauge %1</source>
        <translation>Wasserstand, Pegel %1</translation>
    </message>
    <message>
        <source>water level: gauge not read</source>
        <translation>Wasserstand: Pegel nicht gelesen</translation>
    </message>
    <message>
        <source>shown by the sounder</source>
        <translation>vom Echolot gezeigt</translation>
    </message>
    <message>
        <source>draft of the transducer</source>
        <translation>Tiefgang des Gebers</translation>
    </message>
    <message>
        <source>agreed for this day</source>
        <translation>für diesen Tag zugestimmt</translation>
    </message>
    <message>
        <source>nothing agreed for this day</source>
        <translation>für diesen Tag nichts zugestimmt</translation>
    </message>
    <message>
        <source>below chart level</source>
        <translation>unter Kartennull</translation>
    </message>
    <message>
        <source>set aside: %1</source>
        <translation>ausgesondert: %1</translation>
    </message>
    <message>
        <source>kept by hand</source>
        <translation>von Hand behalten</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>Survey days</source>
        <translation>Lotungstage</translation>
    </message>
    <message>
        <source>Remove day</source>
        <translation>Tag entfernen</translation>
    </message>
    <message>
        <source>Take the chosen day out of the water; it can be undone</source>
        <translation>Den gewählten Tag aus dem Gewässer nehmen; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Bring in files...</source>
        <translation>Dateien einlesen …</translation>
    </message>
    <message>
        <source>Soundings, shoreline, notes, log: any file</source>
        <translation>Lotungen, Uferlinie, Notizen, Fangbuch: jede Datei</translation>
    </message>
    <message>
        <source>Files to bring in</source>
        <translation>Dateien zum Einlesen</translation>
    </message>
    <message>
        <source>Drop a log of soundings on the window: NMEA 0183, GPX, text, or anything with depths.</source>
        <translation>Eine Lotungsaufzeichnung auf das Fenster ziehen: NMEA 0183, GPX, Text oder irgendetwas mit Tiefen.</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>%1 setzen</translation>
    </message>
    <message>
        <source>Water level on the gauge that day</source>
        <translation>Pegelstand an jenem Tag</translation>
    </message>
    <message>
        <source>a level such as 0.35 m or 1ft 2in</source>
        <translation>ein Wasserstand wie 0,35 m oder 1ft 2in</translation>
    </message>
    <message>
        <source>Water temperature: sound runs slower in cold water</source>
        <translation>Wassertemperatur: in kaltem Wasser läuft der Schall langsamer</translation>
    </message>
    <message>
        <source>a temperature such as 12.5 or 54 F</source>
        <translation>eine Temperatur wie 12,5 oder 54 F</translation>
    </message>
    <message>
        <source>Draft</source>
        <translation>Tiefgang</translation>
    </message>
    <message>
        <source>From the surface down to the transducer</source>
        <translation>Von der Oberfläche bis zum Geber</translation>
    </message>
    <message>
        <source>a depth from 0 to 3 m</source>
        <translation>eine Tiefe von 0 bis 3 m</translation>
    </message>
    <message>
        <source>Sound speed set in the sounder</source>
        <translation>Schall im Echolot</translation>
    </message>
    <message>
        <source>Speed of sound that the sounder reckons with; 1500 m/s unless its manual says otherwise</source>
        <translation>Schallgeschwindigkeit, mit der das Echolot rechnet; 1500 m/s, wenn sein Handbuch nichts anderes sagt</translation>
    </message>
    <message>
        <source>a speed from 1300 to 1700 m/s</source>
        <translation>eine Geschwindigkeit von 1300 bis 1700 m/s</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <translation>%1, aus %2</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>What counts as structure</source>
        <translation>Was als Struktur zählt</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatisch</translation>
    </message>
    <message>
        <source>Drop-off from</source>
        <translation>Kante ab</translation>
    </message>
    <message>
        <source>Slope from which a bank is a drop-off</source>
        <translation>Neigung, ab der ein Hang eine Kante ist</translation>
    </message>
    <message>
        <source>a slope from 1 to 200 %, or nothing</source>
        <translation>eine Neigung von 1 bis 200 %, oder nichts</translation>
    </message>
    <message>
        <source>High ground from</source>
        <translation>Hoher Grund ab</translation>
    </message>
    <message>
        <source>Rise over the surroundings from which ground is a hump, below them a hole</source>
        <translation>Höhe über der Umgebung, ab der Grund ein Berg ist, darunter ein Loch</translation>
    </message>
    <message>
        <source>a height from 0.05 to 20 m, or nothing</source>
        <translation>eine Höhe von 0,05 bis 20 m, oder nichts</translation>
    </message>
    <message>
        <source>Least size</source>
        <translation>Kleinste Größe</translation>
    </message>
    <message>
        <source>Smaller pieces join what surrounds them</source>
        <translation>Kleinere Stücke gehen in ihrer Umgebung auf</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>an area up to 10 ha, or nothing</source>
        <translation>eine Fläche bis 10 ha, oder nichts</translation>
    </message>
    <message>
        <source>Fine scale</source>
        <translation>Feiner Maßstab</translation>
    </message>
    <message>
        <source>Over which slope is taken: what a bait can be placed on</source>
        <translation>Worüber die Neigung genommen wird: worauf ein Köder gelegt werden kann</translation>
    </message>
    <message>
        <source>a length from 3 to 50 m, below the broad scale, or nothing</source>
        <translation>eine Länge von 3 bis 50 m, unter dem groben Maßstab, oder nichts</translation>
    </message>
    <message>
        <source>Broad scale</source>
        <translation>Grober Maßstab</translation>
    </message>
    <message>
        <source>What a hump stands out from: about a long cast</source>
        <translation>Wovon sich ein Berg abhebt: etwa ein weiter Wurf</translation>
    </message>
    <message>
        <source>a length from 20 to 500 m, above the fine scale, or nothing</source>
        <translation>eine Länge von 20 bis 500 m, über dem feinen Maßstab, oder nichts</translation>
    </message>
    <message>
        <source>Set what counts as structure</source>
        <translation>Setzen, was als Struktur zählt</translation>
    </message>
    <message>
        <source>In use: a drop-off has a slope of %1 somewhere and reaches on down to %2; shelves and flats are gentler than %3. Ground is high or low from %4 above or below what lies within %5. Slope is taken over %6. Pieces below %7 join what surrounds them (%8 did).</source>
        <translation>In Gebrauch: eine Kante hat irgendwo eine Neigung von %1 und reicht weiter bis %2; Terrassen und Ebenen sind flacher als %3. Grund ist hoch oder tief ab %4 über oder unter dem, was innerhalb von %5 liegt. Die Neigung wird über %6 genommen. Stücke unter %7 gehen in ihrer Umgebung auf (%8 davon).</translation>
    </message>
    <message>
        <source>Bring in soundings</source>
        <translation>Lotungen einlesen</translation>
    </message>
    <message>
        <source>Shoreline</source>
        <translation>Uferlinie</translation>
    </message>
    <message>
        <source>Check the soundings</source>
        <translation>Lotungen prüfen</translation>
    </message>
    <message>
        <source>Draw the water</source>
        <translation>Gewässer zeichnen</translation>
    </message>
    <message>
        <source>Bands and structure</source>
        <translation>Stufen und Struktur</translation>
    </message>
    <message>
        <source>Where to sound next</source>
        <translation>Wo als Nächstes loten</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Weed notes</source>
        <translation>Krautnotizen</translation>
    </message>
    <message>
        <source>Delete takes the chosen note out; it can be undone</source>
        <translation>Entf nimmt die gewählte Notiz heraus; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>thin</source>
        <translation>dünn</translation>
    </message>
    <message>
        <source>thick</source>
        <translation>dicht</translation>
    </message>
    <message>
        <source>Weed met</source>
        <translation>Kraut gefunden</translation>
    </message>
    <message>
        <source>How much weed you met</source>
        <translation>Wie viel Kraut es war</translation>
    </message>
    <message>
        <source>How far the weed stood above the bottom</source>
        <translation>Wie hoch das Kraut über dem Grund stand</translation>
    </message>
    <message>
        <source>a height up to 60 m, or nothing</source>
        <translation>eine Höhe bis 60 m, oder nichts</translation>
    </message>
    <message>
        <source>At places</source>
        <translation>An Stellen</translation>
    </message>
    <message>
        <source>Point at the places where you met so much weed</source>
        <translation>Die Stellen zeigen, an denen so viel Kraut war</translation>
    </message>
    <message>
        <source>Along a line</source>
        <translation>Längs einer Linie</translation>
    </message>
    <message>
        <source>Draw the way along which you met so much weed</source>
        <translation>Den Weg zeichnen, an dem so viel Kraut war</translation>
    </message>
    <message>
        <source>Over an area</source>
        <translation>Über Fläche</translation>
    </message>
    <message>
        <source>Go round the water where you met so much weed</source>
        <translation>Das Wasser umfahren, in dem so viel Kraut war</translation>
    </message>
    <message>
        <source>Notes from a table of places, kinds and heights</source>
        <translation>Notizen aus einer Tabelle mit Orten, Arten und Höhen</translation>
    </message>
    <message>
        <source>Weed notes to bring in</source>
        <translation>Krautnotizen zum Einlesen</translation>
    </message>
    <message>
        <source>Point where the weed was %1</source>
        <translation>Zeigen, wo das Kraut so war: %1</translation>
    </message>
    <message>
        <source>With the button held, draw the line along which the weed was %1</source>
        <translation>Mit gedrückter Taste die Linie ziehen, an der das Kraut so war: %1</translation>
    </message>
    <message>
        <source>With the button held, go round where the weed was %1</source>
        <translation>Mit gedrückter Taste umfahren, wo das Kraut so war: %1</translation>
    </message>
    <message>
        <source>Clarity</source>
        <translation>Sichttiefe</translation>
    </message>
    <message>
        <source>Depth at which a white disc (Secchi) vanishes</source>
        <translation>Tiefe, in der eine weiße Scheibe (Secchi) verschwindet</translation>
    </message>
    <message>
        <source>a depth from 0.1 to 40 m, or nothing</source>
        <translation>eine Tiefe von 0,1 bis 40 m, oder nichts</translation>
    </message>
    <message>
        <source>Set clarity</source>
        <translation>Sichttiefe setzen</translation>
    </message>
    <message>
        <source>Weed still standing</source>
        <translation>Kraut noch da</translation>
    </message>
    <message>
        <source>How much of the summer&apos;s weed is left</source>
        <translation>Wie viel vom Kraut des Sommers noch steht</translation>
    </message>
    <message>
        <source>Beds and edges</source>
        <translation>Felder und Kanten</translation>
    </message>
    <message>
        <source>Set weed still standing</source>
        <translation>Setzen, wie viel Kraut noch da ist</translation>
    </message>
    <message>
        <source>Without a Secchi depth the map rests on the notes and on what is usual.</source>
        <translation>Ohne Sichttiefe beruht die Karte auf den Notizen und dem Üblichen.</translation>
    </message>
    <message>
        <source>Weed grows down to about %1</source>
        <translation>Kraut wächst bis etwa %1</translation>
    </message>
    <message>
        <source> (published relations: %1)</source>
        <translation> (veröffentlichte Beziehungen: %1)</translation>
    </message>
    <message>
        <source>no notes</source>
        <translation>keine Notizen</translation>
    </message>
    <message>
        <source>, weed to %1</source>
        <translation>, Kraut bis %1</translation>
    </message>
    <message>
        <source>Since an earlier survey</source>
        <translation>Seit einer früheren Lotung</translation>
    </message>
    <message>
        <source>Compare…</source>
        <translation>Vergleichen …</translation>
    </message>
    <message>
        <source>Another file of this water, sounded before: where its bottom has risen or fallen since by more than both surveys may be off</source>
        <translation>Eine andere, früher gelotete Datei dieses Gewässers: wo der Grund seither um mehr gestiegen oder gefallen ist, als beide Lotungen falsch sein können</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Nothing is compared any more</source>
        <translation>Es wird nichts mehr verglichen</translation>
    </message>
    <message>
        <source>What all has in common is a level</source>
        <translation>Was allem gemeinsam ist, ist der Wasserstand</translation>
    </message>
    <message>
        <source>A level was noted wrongly, or not at all: the middle of all changes is taken off before anything is told</source>
        <translation>Ein Stand wurde falsch oder gar nicht notiert: die Mitte aller Änderungen wird abgezogen, bevor etwas gesagt wird</translation>
    </message>
    <message>
        <source>Mark of yours</source>
        <translation>Eigener Platz</translation>
    </message>
    <message>
        <source>The bottom there</source>
        <translation>Der Grund dort</translation>
    </message>
    <message>
        <source>Marks since the earlier survey</source>
        <translation>Plätze seit der früheren Lotung</translation>
    </message>
    <message>
        <source>An earlier survey of this water</source>
        <translation>Eine frühere Lotung dieses Gewässers</translation>
    </message>
    <message>
        <source>Waters (*.gpkg)</source>
        <translation>Gewässer (*.gpkg)</translation>
    </message>
    <message>
        <source>Reading the earlier survey</source>
        <translation>Frühere Lotung wird gelesen</translation>
    </message>
    <message>
        <source>Comparing two surveys</source>
        <translation>Zwei Lotungen werden verglichen</translation>
    </message>
    <message>
        <source>Comparing…</source>
        <translation>Wird verglichen …</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Depths</source>
        <translation>Tiefen</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>; edge %1</source>
        <translation>; Rand %1</translation>
    </message>
    <message>
        <source>, all along the bank</source>
        <translation>, ganz am Ufer</translation>
    </message>
    <message>
        <source>, of it %1 along the bank</source>
        <translation>, davon %1 am Ufer</translation>
    </message>
    <message>
        <source>; depths on average within %1.</source>
        <translation>; Tiefen im Mittel auf %1 genau.</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>Choose a zone here or on the chart; Escape lets go of it</source>
        <translation>Eine Zone hier oder auf der Karte wählen; Esc lässt sie los</translation>
    </message>
    <message>
        <source>Anchor</source>
        <translation>Anker</translation>
    </message>
    <message>
        <source>Rope</source>
        <translation>Leine</translation>
    </message>
    <message>
        <source>Anchors</source>
        <translation>Anker</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Rute</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Peilung</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Weite</translation>
    </message>
    <message>
        <source>Stop knot</source>
        <translation>Stopper</translation>
    </message>
    <message>
        <source>Cut along the ropes</source>
        <translation>Schnitt längs der Leinen</translation>
    </message>
    <message>
        <source>The cut leads along the cast of the rod that is chosen; back to the ropes</source>
        <translation>Der Schnitt folgt dem Wurf der gewählten Rute; zurück zu den Leinen</translation>
    </message>
    <message>
        <source>Lay as found</source>
        <translation>Legen wie gefunden</translation>
    </message>
    <message>
        <source>Give anchors and baits of this mark back to the program; it can be undone</source>
        <translation>Anker und Köder dieses Platzes dem Programm zurückgeben; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Find marks first; the anchors and rods of the chosen one stand here.</source>
        <translation>Erst Plätze suchen; Anker und Ruten des gewählten stehen dann hier.</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>kein Platz</translation>
    </message>
    <message>
        <source>Boat, anchors and baits can be dragged on the chart; Esc while you drag takes it back.</source>
        <translation>Boot, Anker und Köder lassen sich auf der Karte ziehen; Esc beim Ziehen nimmt es zurück.</translation>
    </message>
    <message>
        <source>Never here</source>
        <translation>Nie hier</translation>
    </message>
    <message>
        <source>Banned water</source>
        <translation>Ausgeschlossenes Wasser</translation>
    </message>
    <message>
        <source>Ban mark</source>
        <translation>Ausschließen</translation>
    </message>
    <message>
        <source>Never propose the chosen mark again, nor any within two casts of it</source>
        <translation>Den gewählten Platz nie mehr vorschlagen, auch keinen innerhalb von zwei Würfen</translation>
    </message>
    <message>
        <source>Ban area…</source>
        <translation>Fläche …</translation>
    </message>
    <message>
        <source>Go round water on the chart in which no mark is to be proposed</source>
        <translation>Wasser auf der Karte umfahren, in dem kein Platz vorgeschlagen werden soll</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Aufheben</translation>
    </message>
    <message>
        <source>Lift the chosen ban; it can be undone</source>
        <translation>Den gewählten Ausschluss aufheben; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Marks that you add yourself stay, with a caution.</source>
        <translation>Selbst hinzugefügte Plätze bleiben, mit einer Warnung.</translation>
    </message>
    <message>
        <source>Nothing is banned: all of the water may be proposed.</source>
        <translation>Nichts ist ausgeschlossen: überall darf vorgeschlagen werden.</translation>
    </message>
    <message>
        <source>Click round the water to ban, corner by corner; double-click to close the line</source>
        <translation>Das Wasser umklicken, das ausgeschlossen werden soll, Ecke für Ecke; Doppelklick schließt die Linie</translation>
    </message>
    <message>
        <source>Beliefs and record</source>
        <translation>Annahmen und Fangbuch</translation>
    </message>
    <message>
        <source>What the log says</source>
        <translation>Was das Fangbuch sagt</translation>
    </message>
    <message>
        <source>What your log multiplies the catch by; the pale bar holds it with 80 %</source>
        <translation>Womit das Fangbuch den Fang malnimmt; der blasse Balken fasst es mit 80 %</translation>
    </message>
    <message>
        <source>Once marks are found, your log is heard here on each belief.</source>
        <translation>Sind Plätze gefunden, wird hier das Fangbuch zu jeder Annahme gehört.</translation>
    </message>
    <message>
        <source>What your log says of each belief, for a boat that lies right on it.</source>
        <translation>Was das Fangbuch zu jeder Annahme sagt, für ein Boot, das genau darauf liegt.</translation>
    </message>
    <message>
        <source>Nothing caught yet: by your beliefs alone.</source>
        <translation>Noch nichts gefangen: allein nach den Annahmen.</translation>
    </message>
    <message>
        <source>variable</source>
        <translation>umlaufend</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation>ddd d. MMM yyyy</translation>
    </message>
    <message>
        <source>The day you will be on the water</source>
        <translation>Der Tag auf dem Wasser</translation>
    </message>
    <message>
        <source>Set day</source>
        <translation>Tag setzen</translation>
    </message>
    <message>
        <source>a time such as 7:40, 0740 or 5pm</source>
        <translation>eine Uhrzeit wie 7:40, 0740 oder 17:00</translation>
    </message>
    <message>
        <source>When the boat leaves</source>
        <translation>Wann das Boot ablegt</translation>
    </message>
    <message>
        <source>Set start</source>
        <translation>Beginn setzen</translation>
    </message>
    <message>
        <source>When the boat is back; before the start: the next morning</source>
        <translation>Wann das Boot zurück ist; vor dem Beginn: am nächsten Morgen</translation>
    </message>
    <message>
        <source>Set end</source>
        <translation>Ende setzen</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>The time zone of this water: all its times are told by it</source>
        <translation>Die Zeitzone dieses Gewässers: alle seine Zeiten gelten nach ihr</translation>
    </message>
    <message>
        <source>a time zone such as Europe/London</source>
        <translation>eine Zeitzone wie Europe/Berlin</translation>
    </message>
    <message>
        <source>Set clock</source>
        <translation>Uhr setzen</translation>
    </message>
    <message>
        <source>On each mark</source>
        <translation>Je Platz</translation>
    </message>
    <message>
        <source>How long to fish each mark; ten minutes at the ropes come on top</source>
        <translation>Wie lange jeder Platz befischt wird; zehn Minuten an den Leinen kommen hinzu</translation>
    </message>
    <message>
        <source>the day shared out</source>
        <translation>der Tag aufgeteilt</translation>
    </message>
    <message>
        <source>a time from 5 min to 12 h, such as 1 h 30 or 90 min</source>
        <translation>eine Zeit von 5 min bis 12 h, etwa 1 h 30 oder 90 min</translation>
    </message>
    <message>
        <source>Set time on each mark</source>
        <translation>Zeit je Platz setzen</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Drag the arrow to where the wind comes from (arrow keys turn it)</source>
        <translation>Den Pfeil dorthin ziehen, woher der Wind kommt (Pfeiltasten drehen ihn)</translation>
    </message>
    <message>
        <source>Degrees true; empty where it is variable or nobody knows</source>
        <translation>Grad rechtweisend; leer, wo er umläuft oder niemand es weiß</translation>
    </message>
    <message>
        <source>degrees from 0 to 360, or a point such as SW; empty: not known</source>
        <translation>Grad von 0 bis 360 oder eine Richtung wie SW; leer: unbekannt</translation>
    </message>
    <message>
        <source>Mean speed: 6 m/s, 13 mph, 12 kn, F4; 0 is a calm, empty is not known</source>
        <translation>Mittlere Geschwindigkeit: 6 m/s, 13 mph, 12 kn, F4; 0 ist Flaute, leer ist unbekannt</translation>
    </message>
    <message>
        <source>a speed from 0 to 40 m/s, such as 13 mph, 12 kn or F4; empty: not known</source>
        <translation>eine Geschwindigkeit von 0 bis 40 m/s, etwa 13 mph, 12 kn oder F4; leer: unbekannt</translation>
    </message>
    <message>
        <source>Set wind speed</source>
        <translation>Windgeschwindigkeit setzen</translation>
    </message>
    <message>
        <source>Wind not known</source>
        <translation>Wind unbekannt</translation>
    </message>
    <message>
        <source>Clear direction and speed of the wind</source>
        <translation>Richtung und Stärke des Windes löschen</translation>
    </message>
    <message>
        <source>Clear wind</source>
        <translation>Wind löschen</translation>
    </message>
    <message>
        <source>Wind turns at</source>
        <translation>Wind dreht um</translation>
    </message>
    <message>
        <source>When the wind turns or gets up; empty: one wind all day</source>
        <translation>Wann der Wind dreht oder auffrischt; leer: ein Wind den ganzen Tag</translation>
    </message>
    <message>
        <source>one wind all day</source>
        <translation>ein Wind den ganzen Tag</translation>
    </message>
    <message>
        <source>a time such as 13:00 or 1pm, or empty</source>
        <translation>eine Uhrzeit wie 13:00, oder leer</translation>
    </message>
    <message>
        <source>Set turn of the wind</source>
        <translation>Winddrehung setzen</translation>
    </message>
    <message>
        <source>Then from</source>
        <translation>Dann aus</translation>
    </message>
    <message>
        <source>Where it comes from then, degrees true; empty: variable</source>
        <translation>Woher er dann kommt, Grad rechtweisend; leer: umlaufend</translation>
    </message>
    <message>
        <source>Then speed</source>
        <translation>Dann Stärke</translation>
    </message>
    <message>
        <source>How strong it is then; empty: not known</source>
        <translation>Wie stark er dann ist; leer: unbekannt</translation>
    </message>
    <message>
        <source>Set later wind</source>
        <translation>Späteren Wind setzen</translation>
    </message>
    <message>
        <source>Water level above (+) or below (-) that of the chart</source>
        <translation>Wasserstand über (+) oder unter (-) Kartennull</translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation>Wassertemperatur</translation>
    </message>
    <message>
        <source>Set water temperature</source>
        <translation>Wassertemperatur setzen</translation>
    </message>
    <message>
        <source>Set wind</source>
        <translation>Wind setzen</translation>
    </message>
    <message>
        <source>Lay bow anchor</source>
        <translation>Buganker legen</translation>
    </message>
    <message>
        <source>Lay stern anchor</source>
        <translation>Heckanker legen</translation>
    </message>
    <message>
        <source>Lay bait</source>
        <translation>Köder legen</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Marks wanted</source>
        <translation>Gewünschte Plätze</translation>
    </message>
    <message>
        <source>Set number of marks</source>
        <translation>Zahl der Plätze setzen</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keep this mark where it is, whatever changes</source>
        <translation>Diesen Platz behalten, wo er ist, was sich auch ändert</translation>
    </message>
    <message>
        <source>Find marks</source>
        <translation>Plätze suchen</translation>
    </message>
    <message>
        <source>Work out tomorrow&apos;s marks again</source>
        <translation>Die Plätze für morgen neu berechnen</translation>
    </message>
    <message>
        <source>No marks yet. Draw the water on the survey day, then find marks.</source>
        <translation>Noch keine Plätze. Am Lotungstag das Gewässer zeichnen, dann Plätze suchen.</translation>
    </message>
    <message>
        <source>%1 of %2 looked at</source>
        <translation>%1 von %2 angesehen</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Loslassen</translation>
    </message>
    <message>
        <source>Older than your last change: being worked out anew.</source>
        <translation>Älter als die letzte Änderung: wird neu berechnet.</translation>
    </message>
    <message>
        <source>Older than your last change, and cannot be worked out anew: %1.</source>
        <translation>Älter als die letzte Änderung und nicht neu zu berechnen: %1.</translation>
    </message>
    <message>
        <source>Older than your last change.</source>
        <translation>Älter als die letzte Änderung.</translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation>Ankunft</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Abfahrt</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Order of the day</source>
        <translation>Reihenfolge des Tages</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnungen</translation>
    </message>
    <message>
        <source>Rules of this water</source>
        <translation>Regeln dieses Gewässers</translation>
    </message>
    <message>
        <source>The order of the day stands here once marks are found.</source>
        <translation>Die Reihenfolge des Tages steht hier, sobald Plätze gefunden sind.</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Go to the chosen mark earlier; rows can be dragged as well</source>
        <translation>Früher zum gewählten Platz; Zeilen lassen sich auch ziehen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Go to the chosen mark later</source>
        <translation>Später zum gewählten Platz</translation>
    </message>
    <message>
        <source>Longer</source>
        <translation>Länger</translation>
    </message>
    <message>
        <source>Stay a quarter of an hour longer on the chosen mark; or type the stay</source>
        <translation>Eine Viertelstunde länger am gewählten Platz; oder die Zeit eintippen</translation>
    </message>
    <message>
        <source>Shorter</source>
        <translation>Kürzer</translation>
    </message>
    <message>
        <source>Stay a quarter of an hour less</source>
        <translation>Eine Viertelstunde weniger</translation>
    </message>
    <message>
        <source>Order as found</source>
        <translation>Ordnen wie gefunden</translation>
    </message>
    <message>
        <source>Give the order back to the program; it can be undone</source>
        <translation>Die Reihenfolge dem Programm zurückgeben; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Stay as the day gives</source>
        <translation>Zeit wie der Tag gibt</translation>
    </message>
    <message>
        <source>Let the program share out the time on the chosen mark</source>
        <translation>Das Programm teilt die Zeit am gewählten Platz zu</translation>
    </message>
    <message>
        <source>Own marks</source>
        <translation>Eigene Plätze</translation>
    </message>
    <message>
        <source>Own mark</source>
        <translation>Eigener Platz</translation>
    </message>
    <message>
        <source>Deep</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Keep a mark at the place typed</source>
        <translation>Am eingetippten Ort einen Platz behalten</translation>
    </message>
    <message>
        <source>Add own mark</source>
        <translation>Eigener Platz</translation>
    </message>
    <message>
        <source>Point on the chart at a place of your own</source>
        <translation>Auf der Karte eine eigene Stelle zeigen</translation>
    </message>
    <message>
        <source>Let go of the chosen own mark; it can be undone</source>
        <translation>Den gewählten eigenen Platz loslassen; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>nicht nötig</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Wie er heißt</translation>
    </message>
    <message>
        <source>Point at the place to pin</source>
        <translation>Auf die Stelle zum Festhalten zeigen</translation>
    </message>
    <message>
        <source>On no water of this chart: %1 from its middle.</source>
        <translation>Auf keinem Wasser dieser Karte: %1 von ihrer Mitte.</translation>
    </message>
    <message>
        <source>%1 deep that day</source>
        <translation>%1 tief an jenem Tag</translation>
    </message>
    <message>
        <source>dry that day</source>
        <translation>trocken an jenem Tag</translation>
    </message>
    <message>
        <source>no water that day</source>
        <translation>kein Wasser an jenem Tag</translation>
    </message>
    <message>
        <source>Saved beliefs</source>
        <translation>Gespeicherte Annahmen</translation>
    </message>
    <message>
        <source>such as windy autumn</source>
        <translation>etwa windiger Herbst</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>Speichern als</translation>
    </message>
    <message>
        <source>A name for what the sliders say now; it stays with this water</source>
        <translation>Ein Name für das, was die Regler jetzt sagen; er bleibt bei diesem Gewässer</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save what the sliders say now under this name</source>
        <translation>Was die Regler jetzt sagen, unter diesem Namen speichern</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>Put the sliders where the chosen beliefs have them</source>
        <translation>Die Regler auf die gewählten Annahmen stellen</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Remove the chosen beliefs; it can be undone</source>
        <translation>Die gewählten Annahmen entfernen; es lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <source>Saving replaces what this name holds now.</source>
        <translation>Speichern ersetzt, was dieser Name jetzt hält.</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>A5, for the pocket</source>
        <translation>A5, für die Tasche</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Size of the page</source>
        <translation>Größe der Seite</translation>
    </message>
    <message>
        <source>One sheet</source>
        <translation>Ein Blatt</translation>
    </message>
    <message>
        <source>At length, with pictures</source>
        <translation>Ausführlich, mit Bildern</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>One sheet holds up to eight marks, front and back; at length each mark has more room and the first ones a plan and a cut</source>
        <translation>Ein Blatt fasst bis zu acht Plätze, vorn und hinten; ausführlich hat jeder Platz mehr Raum, und die ersten bekommen Plan und Schnitt</translation>
    </message>
    <message>
        <source>Save PDF…</source>
        <translation>PDF speichern …</translation>
    </message>
    <message>
        <source>Write the sheet as a PDF file</source>
        <translation>Das Blatt als PDF-Datei schreiben</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation>Das Blatt drucken</translation>
    </message>
    <message>
        <source>Preview…</source>
        <translation>Vorschau …</translation>
    </message>
    <message>
        <source>The sheet as it will be printed</source>
        <translation>Das Blatt, wie es gedruckt wird</translation>
    </message>
    <message>
        <source>The day, the chart with its marks, and for each mark its anchors, rods, reasons and cautions.</source>
        <translation>Der Tag, die Karte mit ihren Plätzen und zu jedem Platz Anker, Ruten, Gründe und Warnungen.</translation>
    </message>
    <message>
        <source>Find marks first; then the sheet can be printed.</source>
        <translation>Erst Plätze suchen; dann lässt sich das Blatt drucken.</translation>
    </message>
    <message>
        <source>%1, %2, black and white</source>
        <translation>%1, %2, schwarzweiß</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>Das Blatt</translation>
    </message>
    <message>
        <source>Make the sheet all the same</source>
        <translation>Das Blatt trotzdem machen</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <source>Writing the sheet</source>
        <translation>Blatt wird geschrieben</translation>
    </message>
    <message>
        <source>The sheet is in %1, %2 pages.</source>
        <translation>Das Blatt liegt in %1, %2 Seiten.</translation>
    </message>
    <message>
        <source>The sheet, as it will be printed</source>
        <translation>Das Blatt, wie es gedruckt wird</translation>
    </message>
    <message>
        <source>It is not kept to be written up: this water can only be read here.</source>
        <translation>Es wird nicht zum Nachtragen behalten: dieses Gewässer lässt sich hier nur lesen.</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Wurfweite</translation>
    </message>
    <message>
        <source>How far the farthest bait goes</source>
        <translation>Wie weit der fernste Köder reicht</translation>
    </message>
    <message>
        <source>Bow rope</source>
        <translation>Bugleine</translation>
    </message>
    <message>
        <source>What there is on board</source>
        <translation>Was an Bord ist</translation>
    </message>
    <message>
        <source>Stern rope</source>
        <translation>Heckleine</translation>
    </message>
    <message>
        <source>Boat length</source>
        <translation>Bootslänge</translation>
    </message>
    <message>
        <source>Bow to stern</source>
        <translation>Vom Bug zum Heck</translation>
    </message>
    <message>
        <source>Bow height</source>
        <translation>Bughöhe</translation>
    </message>
    <message>
        <source>Rope fairlead above the water</source>
        <translation>Leinenführung über dem Wasser</translation>
    </message>
    <message>
        <source>Over-depth</source>
        <translation>Mehrtiefe</translation>
    </message>
    <message>
        <source>Stop knot set deeper than the water by this</source>
        <translation>Um so viel wird der Stopper tiefer gestellt als das Wasser</translation>
    </message>
    <message>
        <source>Rods in the water at once</source>
        <translation>Ruten zugleich im Wasser</translation>
    </message>
    <message>
        <source>Set rods</source>
        <translation>Ruten setzen</translation>
    </message>
    <message>
        <source>bow and stern</source>
        <translation>Bug und Heck</translation>
    </message>
    <message>
        <source>one at the bow</source>
        <translation>einer am Bug</translation>
    </message>
    <message>
        <source>Between two anchors the boat lies still; to one she swings with the wind</source>
        <translation>Zwischen zwei Ankern liegt das Boot still; an einem schwojt es mit dem Wind</translation>
    </message>
    <message>
        <source>Set anchors</source>
        <translation>Anker setzen</translation>
    </message>
    <message>
        <source>Scope</source>
        <translation>Leinenfaktor</translation>
    </message>
    <message>
        <source>Rope over depth plus bow height at the anchor; more in wind</source>
        <translation>Leine durch Tiefe plus Bughöhe am Anker; mehr bei Wind</translation>
    </message>
    <message>
        <source>a number from 1.5 to 10</source>
        <translation>eine Zahl von 1,5 bis 10</translation>
    </message>
    <message>
        <source>Set scope</source>
        <translation>Leinenfaktor setzen</translation>
    </message>
    <message>
        <source>Between marks</source>
        <translation>Zwischen den Plätzen</translation>
    </message>
    <message>
        <source>a length from %1 to %2, such as 12ft or 3.6 m</source>
        <translation>eine Länge von %1 bis %2, etwa 3,6 m oder 12ft</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Boat and rods</source>
        <translation>Boot und Ruten</translation>
    </message>
    <message>
        <source>What matters to you</source>
        <translation>Was wichtig ist</translation>
    </message>
    <message>
        <source>Anchors and rods</source>
        <translation>Anker und Ruten</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source> the next day</source>
        <translation> am nächsten Tag</translation>
    </message>
    <message>
        <source>Force %1, %2: %3</source>
        <translation>Stärke %1, %2: %3</translation>
    </message>
    <message>
        <source>%1, one anchor, scope %2, cast %3</source>
        <translation>%1, ein Anker, Leinenfaktor %2, Wurf %3</translation>
    </message>
    <message>
        <source>%1, scope %2, cast %3</source>
        <translation>%1, Leinenfaktor %2, Wurf %3</translation>
    </message>
    <message>
        <source>House rules: at most %1 rods a boat.</source>
        <translation>Gewässerordnung: höchstens %1 Ruten je Boot.</translation>
    </message>
    <message>
        <source> Planned with %1, not %2.</source>
        <translation> Geplant mit %1, nicht %2.</translation>
    </message>
    <message>
        <source>depth in your bands</source>
        <translation>Tiefe in den Stufen</translation>
    </message>
    <message>
        <source>drop-off in reach</source>
        <translation>Kante in Reichweite</translation>
    </message>
    <message>
        <source>weed edge in reach</source>
        <translation>Krautkante in Reichweite</translation>
    </message>
    <message>
        <source>humps and holes</source>
        <translation>Berge und Löcher</translation>
    </message>
    <message>
        <source>wind blows on to it</source>
        <translation>Wind steht darauf</translation>
    </message>
    <message>
        <source>waves</source>
        <translation>Wellen</translation>
    </message>
    <message>
        <source>catches here</source>
        <translation>Fänge hier</translation>
    </message>
    <message>
        <source>seldom fished</source>
        <translation>selten befischt</translation>
    </message>
    <message>
        <source>depth well known</source>
        <translation>Tiefe gut bekannt</translation>
    </message>
    <message>
        <source>kind of bottom</source>
        <translation>Art des Grundes</translation>
    </message>
    <message>
        <source>hours of the day</source>
        <translation>Stunden des Tages</translation>
    </message>
    <message>
        <source>best of many</source>
        <translation>Bestes von vielen</translation>
    </message>
    <message>
        <source>How much of the water within a cast has a depth you want to fish.</source>
        <translation>Wie viel Wasser in Wurfweite eine gewünschte Tiefe hat.</translation>
    </message>
    <message>
        <source>How much edge of a drop-off lies within a cast.</source>
        <translation>Wie viel Kante in Wurfweite liegt.</translation>
    </message>
    <message>
        <source>How much edge of weed lies within a cast.</source>
        <translation>Wie viel Krautkante in Wurfweite liegt.</translation>
    </message>
    <message>
        <source>%1 within a cast.</source>
        <translation>%1 in Wurfweite.</translation>
    </message>
    <message>
        <source>Rippled water goes before calm, the more the farther right; against the liking for calm it says which waves you like best.</source>
        <translation>Gekräuseltes Wasser geht vor ruhigem, je weiter rechts, desto mehr; gegen die Vorliebe für Ruhe sagt es, welche Wellen am liebsten sind.</translation>
    </message>
    <message>
        <source>Calm water goes before rippled, the more the farther right; against the liking for ripple it says which waves you like best.</source>
        <translation>Ruhiges Wasser geht vor gekräuseltem, je weiter rechts, desto mehr; gegen die Vorliebe für Wellen sagt es, welche Wellen am liebsten sind.</translation>
    </message>
    <message>
        <source>What your log says of the place: fish and blanks alike.</source>
        <translation>Was das Fangbuch zur Stelle sagt: Fische und leere Ansitze gleichermaßen.</translation>
    </message>
    <message>
        <source>Places of which the log knows little, so that you learn more.</source>
        <translation>Stellen, von denen das Fangbuch wenig weiß, um mehr zu lernen.</translation>
    </message>
    <message>
        <source>Places where the depth is sounded rather than guessed.</source>
        <translation>Stellen, deren Tiefe gelotet und nicht geschätzt ist.</translation>
    </message>
    <message>
        <source>What your log says of the kind of bottom.</source>
        <translation>Was das Fangbuch zur Art des Grundes sagt.</translation>
    </message>
    <message>
        <source>What your log says of the hours planned.</source>
        <translation>Was das Fangbuch zu den geplanten Stunden sagt.</translation>
    </message>
    <message>
        <source>What looks best of many places looks better than it is.</source>
        <translation>Was von vielen Stellen am besten aussieht, sieht besser aus, als es ist.</translation>
    </message>
    <message>
        <source>liking for ripple</source>
        <translation>Vorliebe für Wellen</translation>
    </message>
    <message>
        <source>liking for calm</source>
        <translation>Vorliebe für Ruhe</translation>
    </message>
    <message>
        <source>Waves do not count for you, while they are not too rough.</source>
        <translation>Wellen zählen nicht, solange sie nicht zu rau sind.</translation>
    </message>
    <message>
        <source>You like waves of about %1 best.</source>
        <translation>Am liebsten Wellen von etwa %1.</translation>
    </message>
    <message>
        <source>You like it as calm as can be.</source>
        <translation>So ruhig wie möglich.</translation>
    </message>
    <message>
        <source>nothing: all marks are equal</source>
        <translation>nichts: alle Plätze sind gleich</translation>
    </message>
    <message>
        <source>Mark %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>, own</source>
        <translation>, eigener</translation>
    </message>
    <message>
        <source>, to learn</source>
        <translation>, zum Lernen</translation>
    </message>
    <message>
        <source>%1 times what the water gives on average, by your beliefs alone.</source>
        <translation>%1-mal so viel, wie das Gewässer im Mittel gibt, allein nach den Annahmen.</translation>
    </message>
    <message>
        <source>%1 fish in 10 rod-hours to be expected, between %2 and %3 (80 %); %4 times the water&apos;s mean.</source>
        <translation>%1 Fische in 10 Rutenstunden zu erwarten, zwischen %2 und %3 (80 %); %4-mal das Mittel des Gewässers.</translation>
    </message>
    <message>
        <source> On the list in order to learn.</source>
        <translation> Auf der Liste, um zu lernen.</translation>
    </message>
    <message>
        <source>, by hand</source>
        <translation>, von Hand</translation>
    </message>
    <message>
        <source>mark %1: bow %2, stern %3</source>
        <translation>Platz %1: Bug %2, Heck %3</translation>
    </message>
    <message>
        <source>mark %1: one anchor, %2</source>
        <translation>Platz %1: ein Anker, %2</translation>
    </message>
    <message>
        <source>, laid by hand</source>
        <translation>, von Hand gelegt</translation>
    </message>
    <message>
        <source>Bow to %1. Drop the bow anchor and fall back on %2 of rope. %3 Ropes are worked out from depth plus bow height.</source>
        <translation>Bug nach %1. Buganker werfen und auf %2 Leine zurücksacken. %3 Die Leinen sind aus Tiefe plus Bughöhe berechnet.</translation>
    </message>
    <message>
        <source>Bow to %1. Drop the bow anchor, fall back on %2 of rope, lower the stern anchor, haul in to %3. Ropes are worked out from depth plus bow height.</source>
        <translation>Bug nach %1. Buganker werfen, auf %2 Leine zurücksacken, Heckanker ablassen, auf %3 einholen. Die Leinen sind aus Tiefe plus Bughöhe berechnet.</translation>
    </message>
    <message>
        <source>no stops</source>
        <translation>keine Halte</translation>
    </message>
    <message>
        <source>First light %1, sunrise %2, sunset %3, dark %4.</source>
        <translation>Erstes Licht %1, Sonnenaufgang %2, Sonnenuntergang %3, dunkel %4.</translation>
    </message>
    <message>
        <source>What you believe: how much each reason counts, from not at all to twice. The log speaks for it or against it.</source>
        <translation>Annahmen: wie viel jeder Grund zählt, von gar nicht bis doppelt. Das Fangbuch spricht dafür oder dagegen.</translation>
    </message>
    <message>
        <source>Usual weights</source>
        <translation>Übliche Gewichte</translation>
    </message>
    <message>
        <source>Put every weight back to the usual</source>
        <translation>Jedes Gewicht auf das Übliche stellen</translation>
    </message>
    <message>
        <source>Try new water</source>
        <translation>Neues Wasser</translation>
    </message>
    <message>
        <source>Known to new</source>
        <translation>Bekannt bis neu</translation>
    </message>
    <message>
        <source>Left: fish what is known. Right: try new water, and learn from it.</source>
        <translation>Links: Bekanntes befischen. Rechts: neues Wasser versuchen und daraus lernen.</translation>
    </message>
    <message>
        <source>Weigh reasons</source>
        <translation>Gründe gewichten</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>that is no regular file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>that is a water file, and would be lost</source>
        <translation>das ist eine Gewässerdatei und ginge verloren</translation>
    </message>
    <message>
        <source>Bring in lead line</source>
        <translation>Handlot einlesen</translation>
    </message>
    <message>
        <source>Bring in %1</source>
        <translation>%1 einlesen</translation>
    </message>
    <message>
        <source>Note weed</source>
        <translation>Kraut notieren</translation>
    </message>
    <message>
        <source>Take out delay</source>
        <translation>Verzug herausnehmen</translation>
    </message>
    <message>
        <source>Take back delay</source>
        <translation>Verzug zurücknehmen</translation>
    </message>
    <message>
        <source>Tie survey day</source>
        <translation>Lotungstag anbinden</translation>
    </message>
    <message>
        <source>Untie survey day</source>
        <translation>Lotungstag lösen</translation>
    </message>
    <message>
        <source>Ban water</source>
        <translation>Wasser ausschließen</translation>
    </message>
    <message>
        <source>Lift ban</source>
        <translation>Ausschluss aufheben</translation>
    </message>
    <message>
        <source>Name banned water</source>
        <translation>Ausgeschlossenes Wasser benennen</translation>
    </message>
    <message>
        <source>Save beliefs</source>
        <translation>Annahmen speichern</translation>
    </message>
    <message>
        <source>Use saved beliefs</source>
        <translation>Gespeicherte Annahmen nehmen</translation>
    </message>
    <message>
        <source>Name saved beliefs</source>
        <translation>Gespeicherte Annahmen benennen</translation>
    </message>
    <message>
        <source>Remove saved beliefs</source>
        <translation>Gespeicherte Annahmen entfernen</translation>
    </message>
    <message>
        <source>Change sounding by lead line</source>
        <translation>Handlotung ändern</translation>
    </message>
    <message>
        <source>Join sections</source>
        <translation>Abschnitte verbinden</translation>
    </message>
    <message>
        <source>Split section</source>
        <translation>Abschnitt teilen</translation>
    </message>
    <message>
        <source>Move border</source>
        <translation>Grenze ändern</translation>
    </message>
    <message>
        <source>Take back change of sections</source>
        <translation>Änderung der Abschnitte zurücknehmen</translation>
    </message>
    <message>
        <source>Take back all changes of sections</source>
        <translation>Alle Änderungen der Abschnitte zurücknehmen</translation>
    </message>
    <message>
        <source>Give anchors and baits back</source>
        <translation>Anker und Köder zurückgeben</translation>
    </message>
    <message>
        <source>Name section</source>
        <translation>Abschnitt benennen</translation>
    </message>
    <message>
        <source>Order the day</source>
        <translation>Tag ordnen</translation>
    </message>
    <message>
        <source>Give the order back</source>
        <translation>Reihenfolge zurückgeben</translation>
    </message>
    <message>
        <source>Set stay</source>
        <translation>Ansitzdauer setzen</translation>
    </message>
    <message>
        <source>Keep mark</source>
        <translation>Platz behalten</translation>
    </message>
    <message>
        <source>Remove sounding by lead line</source>
        <translation>Handlotung entfernen</translation>
    </message>
    <message>
        <source>Remove stay</source>
        <translation>Ansitz entfernen</translation>
    </message>
    <message>
        <source>Remove survey day</source>
        <translation>Lotungstag entfernen</translation>
    </message>
    <message>
        <source>Remove weed note</source>
        <translation>Krautnotiz entfernen</translation>
    </message>
    <message>
        <source>Move shore corner</source>
        <translation>Uferecke verschieben</translation>
    </message>
    <message>
        <source>Add shore corner</source>
        <translation>Uferecke hinzufügen</translation>
    </message>
    <message>
        <source>Take away shore corner</source>
        <translation>Uferecke wegnehmen</translation>
    </message>
    <message>
        <source>Draw island</source>
        <translation>Insel zeichnen</translation>
    </message>
    <message>
        <source>Take away island</source>
        <translation>Insel wegnehmen</translation>
    </message>
    <message>
        <source>Trace shoreline</source>
        <translation>Uferlinie nachzeichnen</translation>
    </message>
    <message>
        <source>Set soundings aside</source>
        <translation>Lotungen aussondern</translation>
    </message>
    <message>
        <source>Set house rules</source>
        <translation>Gewässerordnung setzen</translation>
    </message>
    <message>
        <source>Set shoreline</source>
        <translation>Uferlinie setzen</translation>
    </message>
    <message>
        <source>Take soundings back</source>
        <translation>Lotungen zurücknehmen</translation>
    </message>
    <message>
        <source>Let mark go</source>
        <translation>Platz loslassen</translation>
    </message>
    <message>
        <source>Copying the water</source>
        <translation>Gewässer wird kopiert</translation>
    </message>
    <message>
        <source>Keeping the change</source>
        <translation>Änderung wird gespeichert</translation>
    </message>
    <message>
        <source>Keeping the drawing</source>
        <translation>Zeichnung wird gespeichert</translation>
    </message>
    <message>
        <source>Saving the water in another place</source>
        <translation>Gewässer wird an anderem Ort gespeichert</translation>
    </message>
    <message>
        <source>%1 is open already.</source>
        <translation>%1 ist schon offen.</translation>
    </message>
    <message>
        <source>Opening the water</source>
        <translation>Gewässer wird geöffnet</translation>
    </message>
    <message>
        <source>Drawing the water</source>
        <translation>Gewässer wird gezeichnet</translation>
    </message>
    <message>
        <source>Working out tomorrow</source>
        <translation>Morgen wird berechnet</translation>
    </message>
    <message>
        <source>; not for navigation</source>
        <translation>; nicht zur Navigation</translation>
    </message>
    <message>
        <source>hour of the day</source>
        <translation>Stunde des Tages</translation>
    </message>
    <message>
        <source>fish per 10 rod-hours</source>
        <translation>Fische je 10 Rutenstunden</translation>
    </message>
    <message>
        <source>sunrise</source>
        <translation>Aufgang</translation>
    </message>
    <message>
        <source>sunset</source>
        <translation>Untergang</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>arrive, leave</source>
        <translation>an, ab</translation>
    </message>
    <message>
        <source>move</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>depth today</source>
        <translation>Tiefe heute</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Of this plan</source>
        <translation>Zu diesem Plan</translation>
    </message>
    <message>
        <source>At every mark</source>
        <translation>An jedem Platz</translation>
    </message>
    <message>
        <source>For the fish</source>
        <translation>Für den Fisch</translation>
    </message>
    <message>
        <source>%1 anchor   %2   in %3   rope %4</source>
        <translation>%1anker   %2   in %3   Leine %4</translation>
    </message>
    <message>
        <source>rod %1   %2   %3   in %4   stop knot %5</source>
        <translation>Rute %1   %2   %3   in %4   Stopper %5</translation>
    </message>
    <message>
        <source>   over %1</source>
        <translation>   über %1</translation>
    </message>
    <message>
        <source>the boat lies at %1, heading %2, in %3 %4</source>
        <translation>das Boot liegt bei %1, Bug nach %2, in %3 %4</translation>
    </message>
    <message>
        <source>drop the bow anchor, fall back on %1, lower the stern anchor, haul the bow rope in to %2</source>
        <translation>Buganker werfen, auf %1 zurücksacken, Heckanker ablassen, Bugleine auf %2 einholen</translation>
    </message>
    <message>
        <source>for wind %1</source>
        <translation>für Wind %1</translation>
    </message>
    <message>
        <source>why: </source>
        <translation>warum: </translation>
    </message>
    <message>
        <source>caution: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>runs and fish: ………………………………………</source>
        <translation>Bisse und Fische: …………………………………</translation>
    </message>
    <message>
        <source>1 : %1, north up</source>
        <translation>1 : %1, Norden oben</translation>
    </message>
    <message>
        <source>Mark %1   %2</source>
        <translation>Platz %1   %2</translation>
    </message>
    <message>
        <source>   %1 to %2</source>
        <translation>   %1 bis %2</translation>
    </message>
    <message>
        <source>boat</source>
        <translation>Boot</translation>
    </message>
    <message>
        <source>%1 For wind %2.</source>
        <translation>%1 Für Wind %2.</translation>
    </message>
    <message>
        <source>Why: </source>
        <translation>Warum: </translation>
    </message>
    <message>
        <source>Caution: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>move %1, %2</source>
        <translation>Weg %1, %2</translation>
    </message>
    <message>
        <source>drop at</source>
        <translation>Anker bei</translation>
    </message>
    <message>
        <source>rope</source>
        <translation>Leine</translation>
    </message>
    <message>
        <source>rod</source>
        <translation>Rute</translation>
    </message>
    <message>
        <source>bearing, distance</source>
        <translation>Peilung, Weite</translation>
    </message>
    <message>
        <source>stop knot</source>
        <translation>Stopper</translation>
    </message>
    <message>
        <source>deepest %1</source>
        <translation>tiefste Stelle %1</translation>
    </message>
    <message>
        <source>mean %1</source>
        <translation>Mittel %1</translation>
    </message>
    <message>
        <source>marks for %1</source>
        <translation>Plätze für %1</translation>
    </message>
    <message>
        <source>not for navigation</source>
        <translation>nicht zur Navigation</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)   %4 fish in %5 rod-hours, %6 of %7 stays blank</source>
        <translation>%1 (%2 bis %3)   %4 Fische in %5 Rutenstunden, %6 von %7 Ansitzen leer</translation>
    </message>
    <message>
        <source>all: %1</source>
        <translation>alles: %1</translation>
    </message>
    <message>
        <source>fish per 10 rod-hours; the line is the 95 % interval</source>
        <translation>Fische je 10 Rutenstunden; die Linie ist der 95-%-Bereich</translation>
    </message>
    <message>
        <source>%1 more rows are not shown.
</source>
        <translation>%1 weitere Zeilen sind nicht gezeigt.
</translation>
    </message>
    <message>
        <source>section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>rod-hours</source>
        <translation>Rutenstunden</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>Monat für Monat</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>first light %1   sunrise %2   sunset %3   dark after %4</source>
        <translation>erstes Licht %1   Sonnenaufgang %2   Sonnenuntergang %3   dunkel ab %4</translation>
    </message>
    <message>
        <source>from %1 to %2   level %3 against the chart</source>
        <translation>von %1 bis %2   Wasserstand %3 gegen die Karte</translation>
    </message>
    <message>
        <source>   wind from %1: %2</source>
        <translation>   Wind ab %1: %2</translation>
    </message>
    <message>
        <source>   water %1</source>
        <translation>   Wasser %1</translation>
    </message>
    <message>
        <source>Moves, back to the launch included: %1.</source>
        <translation>Wege, zurück zur Slipstelle eingerechnet: %1.</translation>
    </message>
    <message>
        <source>Left out, no time or no way: mark %1.</source>
        <translation>Ausgelassen, keine Zeit oder kein Weg: Platz %1.</translation>
    </message>
    <message>
        <source>All times by the clock of %1. Ropes are worked out from depth plus bow height. Depths carry the ± given, 95 times in 100. Drawn from your own soundings: not for navigation.</source>
        <translation>Alle Zeiten nach der Uhr von %1. Die Leinen sind aus Tiefe plus Bughöhe berechnet. Tiefen gelten auf das angegebene ± genau, 95-mal von 100. Aus eigenen Lotungen gezeichnet: nicht zur Navigation.</translation>
    </message>
    <message>
        <source>wind from
</source>
        <translation>Wind aus
</translation>
    </message>
    <message>
        <source>anchored</source>
        <translation>geankert</translation>
    </message>
    <message>
        <source>rods, bait</source>
        <translation>Ruten, Köder</translation>
    </message>
    <message>
        <source>run, time</source>
        <translation>Biss, Zeit</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>bait depth</source>
        <translation>Ködertiefe</translation>
    </message>
    <message>
        <source>Catches and blanks: every stay, also the blank ones</source>
        <translation>Fänge und leere Ansitze: jeder Ansitz, auch die leeren</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>aussondern</translation>
    </message>
    <message>
        <source>take back</source>
        <translation>zurücknehmen</translation>
    </message>
    <message>
        <source>brush to %1</source>
        <translation>überstreichen: %1</translation>
    </message>
    <message>
        <source>rod %1  stop knot %2</source>
        <translation>Rute %1  Stopper %2</translation>
    </message>
    <message>
        <source>bow rope %1, scope %2</source>
        <translation>Bugleine %1, Leinenfaktor %2</translation>
    </message>
    <message>
        <source>stern rope %1</source>
        <translation>Heckleine %1</translation>
    </message>
    <message>
        <source>to scale</source>
        <translation>maßstäblich</translation>
    </message>
    <message>
        <source>heights × %1</source>
        <translation>Höhen × %1</translation>
    </message>
    <message>
        <source>along the cast of rod %1, %2; shaded: trust ±</source>
        <translation>längs des Wurfs von Rute %1, %2; getönt: Verlässlichkeit ±</translation>
    </message>
    <message>
        <source>along the ropes, %1; baits at their own depth; shaded: trust ±</source>
        <translation>längs der Leinen, %1; Köder in ihrer eigenen Tiefe; getönt: Verlässlichkeit ±</translation>
    </message>
    <message>
        <source>%1 long, %2; shaded: trust ±</source>
        <translation>%1 lang, %2; getönt: Verlässlichkeit ±</translation>
    </message>
    <message>
        <source>The cut</source>
        <translation>Der Schnitt</translation>
    </message>
    <message>
        <source>Choose a mark, or draw a cut across the chart, to see the water from the side</source>
        <translation>Platz wählen oder Schnitt über die Karte ziehen: das Wasser von der Seite</translation>
    </message>
    <message>
        <source>  set aside: %1</source>
        <translation>  ausgesondert: %1</translation>
    </message>
    <message>
        <source>%1 to %2 along the track; × echo, + position, □ other passes or by hand</source>
        <translation>%1 bis %2 längs der Spur; × Echo, + Position, □ andere Fahrten oder von Hand</translation>
    </message>
    <message>
        <source>Return on the last line, or Ctrl+Return on any; Escape leaves it unwritten</source>
        <translation>Eingabetaste in der letzten Zeile oder Strg+Eingabetaste in jeder; Esc lässt es ungeschrieben</translation>
    </message>
    <message>
        <source>Copy row</source>
        <translation>Zeile kopieren</translation>
    </message>
    <message>
        <source>Copy all rows</source>
        <translation>Alle Zeilen kopieren</translation>
    </message>
    <message>
        <source>E</source>
        <translation>O</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>Water files (*.gpkg)</source>
        <translation>Gewässerdateien (*.gpkg)</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Wie weit es ist</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Stop what is running (Escape)</source>
        <translation>Anhalten, was läuft (Esc)</translation>
    </message>
    <message>
        <source>Go back</source>
        <translation>Zurückgehen</translation>
    </message>
    <message>
        <source>Copies of %1. Going back to one keeps the water as it is now as one more copy.</source>
        <translation>Kopien von %1. Beim Zurückgehen bleibt das Gewässer von jetzt als eine weitere Kopie erhalten.</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Kopien</translation>
    </message>
    <message>
        <source>Go back to this one</source>
        <translation>Zu dieser zurückgehen</translation>
    </message>
    <message>
        <source>Copy %1</source>
        <translation>Kopie %1</translation>
    </message>
    <message>
        <source>facts and settings</source>
        <translation>Angaben und Einstellungen</translation>
    </message>
    <message>
        <source>shoreline</source>
        <translation>Uferlinie</translation>
    </message>
    <message>
        <source>survey days</source>
        <translation>Lotungstage</translation>
    </message>
    <message>
        <source>lead line</source>
        <translation>Handlot</translation>
    </message>
    <message>
        <source>weed notes</source>
        <translation>Krautnotizen</translation>
    </message>
    <message>
        <source>house rules</source>
        <translation>Gewässerordnung</translation>
    </message>
    <message>
        <source>sections</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>numbers of the sections</source>
        <translation>Nummern der Abschnitte</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>sheets for the boat</source>
        <translation>Blätter fürs Boot</translation>
    </message>
    <message>
        <source>log</source>
        <translation>Fangbuch</translation>
    </message>
    <message>
        <source>the whole water</source>
        <translation>das ganze Gewässer</translation>
    </message>
    <message>
        <source>Not kept yet: %1. %2.</source>
        <translation>Noch nicht gespeichert: %1. %2.</translation>
    </message>
    <message>
        <source>It is tried again every few seconds.</source>
        <translation>Alle paar Sekunden wird es wieder versucht.</translation>
    </message>
    <message>
        <source>Drop a log of soundings or a water file on the window to begin.</source>
        <translation>Zum Anfang eine Lotungsaufzeichnung oder eine Gewässerdatei auf das Fenster ziehen.</translation>
    </message>
    <message>
        <source>Count in feet</source>
        <translation>In Fuß zählen</translation>
    </message>
    <message>
        <source>Count in metres</source>
        <translation>In Metern zählen</translation>
    </message>
    <message>
        <source>%1 is open in %2: it can only be looked at here, and shows what is saved there.</source>
        <translation>%1 ist in %2 offen: hier lässt es sich nur ansehen und zeigt, was dort gespeichert ist.</translation>
    </message>
    <message>
        <source>%1 can only be read: nothing you change will be kept.</source>
        <translation>%1 lässt sich nur lesen: keine Änderung wird behalten.</translation>
    </message>
    <message>
        <source>Opened %1.</source>
        <translation>%1 geöffnet.</translation>
    </message>
    <message>
        <source>%1 - Meremark</source>
        <translation>%1 - Meremark</translation>
    </message>
    <message>
        <source>Drawn: %L1 cells of %2, %L3 sections. Next: %4</source>
        <translation>Gezeichnet: %L1 Zellen von %2, %L3 Abschnitte. Weiter: %4</translation>
    </message>
    <message>
        <source>bring in a shoreline.</source>
        <translation>eine Uferlinie einlesen.</translation>
    </message>
    <message>
        <source>choose marks under Tomorrow.</source>
        <translation>unter Morgen Plätze wählen.</translation>
    </message>
    <message>
        <source>Marks ranked for %1: %L2 places looked at, the best %L3 kept. %4</source>
        <translation>Plätze geordnet für %1: %L2 Stellen angesehen, die besten %L3 behalten. %4</translation>
    </message>
    <message>
        <source>Next: the sheet.</source>
        <translation>Weiter: das Blatt.</translation>
    </message>
    <message>
        <source>Turn the wind</source>
        <translation>Wind drehen</translation>
    </message>
    <message>
        <source>Choose a section first: click into it.</source>
        <translation>Erst einen Abschnitt wählen: hineinklicken.</translation>
    </message>
    <message>
        <source>Choose a mark first.</source>
        <translation>Erst einen Platz wählen.</translation>
    </message>
    <message>
        <source>Click from place to place: how far it is stands beside the pointer. Backspace takes a place back, Escape ends it.</source>
        <translation>Von Ort zu Ort klicken: die Entfernung steht neben dem Zeiger. Rücktaste nimmt einen Ort zurück, Esc beendet.</translation>
    </message>
    <message>
        <source>Let mark %1 go</source>
        <translation>Platz %1 loslassen</translation>
    </message>
    <message>
        <source>Keep mark %1</source>
        <translation>Platz %1 behalten</translation>
    </message>
    <message>
        <source>Zoom to mark %1</source>
        <translation>Zu Platz %1 zoomen</translation>
    </message>
    <message>
        <source>Copy position %1</source>
        <translation>Position %1 kopieren</translation>
    </message>
    <message>
        <source>Copy what is known here</source>
        <translation>Kopieren, was hier bekannt ist</translation>
    </message>
    <message>
        <source>Own mark here</source>
        <translation>Eigener Platz hier</translation>
    </message>
    <message>
        <source>Zoom to this section</source>
        <translation>Zu diesem Abschnitt zoomen</translation>
    </message>
    <message>
        <source>Whole water</source>
        <translation>Ganzes Gewässer</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>The water lives in %1 from now on.</source>
        <translation>Das Gewässer liegt von nun an in %1.</translation>
    </message>
    <message>
        <source>Name this water: where is its file to be?</source>
        <translation>Dieses Gewässer benennen: wo soll seine Datei liegen?</translation>
    </message>
    <message>
        <source>Name water</source>
        <translation>Gewässer benennen</translation>
    </message>
    <message>
        <source>Save the water in another place</source>
        <translation>Gewässer an anderem Ort speichern</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Save in another place...</source>
        <translation>An anderem Ort speichern …</translation>
    </message>
    <message>
        <source>Lose these changes</source>
        <translation>Diese Änderungen verlieren</translation>
    </message>
    <message>
        <source>%1 is damaged: %2.</source>
        <translation>%1 ist beschädigt: %2.</translation>
    </message>
    <message>
        <source>New water...</source>
        <translation>Neues Gewässer …</translation>
    </message>
    <message>
        <source>Open water...</source>
        <translation>Gewässer öffnen …</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Name this water...</source>
        <translation>Dieses Gewässer benennen …</translation>
    </message>
    <message>
        <source>Export...</source>
        <translation>Ausgeben …</translation>
    </message>
    <message>
        <source>Chart on paper...</source>
        <translation>Karte auf Papier …</translation>
    </message>
    <message>
        <source>Preview of the chart...</source>
        <translation>Vorschau der Karte …</translation>
    </message>
    <message>
        <source>Chart at a scale</source>
        <translation>Karte in einem Maßstab</translation>
    </message>
    <message>
        <source>Copy the chart</source>
        <translation>Karte kopieren</translation>
    </message>
    <message>
        <source>Cut through the water</source>
        <translation>Schnitt durchs Gewässer</translation>
    </message>
    <message>
        <source>Draw a line on the chart: the cut along it stands below.</source>
        <translation>Eine Linie auf der Karte ziehen: der Schnitt daran steht unten.</translation>
    </message>
    <message>
        <source>Keys and files</source>
        <translation>Tasten und Dateien</translation>
    </message>
    <message>
        <source>About Meremark</source>
        <translation>Über Meremark</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>noch nichts</translation>
    </message>
    <message>
        <source>New water: where is its file to be?</source>
        <translation>Neues Gewässer: wo soll seine Datei liegen?</translation>
    </message>
    <message>
        <source>Open a water</source>
        <translation>Ein Gewässer öffnen</translation>
    </message>
    <message>
        <source>There is nothing to give before the water is drawn.</source>
        <translation>Es gibt nichts auszugeben, bevor das Gewässer gezeichnet ist.</translation>
    </message>
    <message>
        <source>Folder for the export</source>
        <translation>Ordner für die Ausgabe</translation>
    </message>
    <message>
        <source>Exporting</source>
        <translation>Wird ausgegeben</translation>
    </message>
    <message>
        <source>Exported into %1.</source>
        <translation>Ausgegeben nach %1.</translation>
    </message>
    <message>
        <source>%1 Without marks: %2</source>
        <translation>%1 Ohne Plätze: %2</translation>
    </message>
    <message>
        <source>1 : %L1...</source>
        <translation>1 : %L1 …</translation>
    </message>
    <message>
        <source>Save the chart as a page</source>
        <translation>Karte als Seite speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
        <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
    </message>
    <message>
        <source>Writing the chart</source>
        <translation>Karte wird geschrieben</translation>
    </message>
    <message>
        <source>The chart is in %1.</source>
        <translation>Die Karte liegt in %1.</translation>
    </message>
    <message>
        <source>There is no chart before the water is drawn.</source>
        <translation>Es gibt keine Karte, bevor das Gewässer gezeichnet ist.</translation>
    </message>
    <message>
        <source>The chart, as it will be printed</source>
        <translation>Die Karte, wie sie gedruckt wird</translation>
    </message>
    <message>
        <source>Drawing a picture of the chart</source>
        <translation>Ein Bild der Karte wird gezeichnet</translation>
    </message>
    <message>
        <source>The chart is on the clipboard, to be pasted as a picture.</source>
        <translation>Die Karte liegt in der Zwischenablage, als Bild zum Einfügen.</translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;Meremark %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Soundings in, honest map, sections, ranked marks with reasons, anchors and rods, a log, and back into the next plan.&lt;/p&gt;&lt;p&gt;Not for navigation. Local rules and the fishery&apos;s staff go first.&lt;/p&gt;&lt;p&gt;GPL-3.0-or-later. Uses Qt, GDAL, PROJ and SQLite.&lt;/p&gt;</source>
        <translation>&lt;p&gt;&lt;b&gt;Meremark %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Lotungen hinein, ehrliche Karte, Abschnitte, geordnete Plätze mit Gründen, Anker und Ruten, ein Fangbuch, und zurück in den nächsten Plan.&lt;/p&gt;&lt;p&gt;Nicht zur Navigation. Die Regeln am Ort und das Personal des Gewässers gehen vor.&lt;/p&gt;&lt;p&gt;GPL-3.0-or-later. Benutzt Qt, GDAL, PROJ und SQLite.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Contours</source>
        <translation>Tiefenlinien</translation>
    </message>
    <message>
        <source>Closed water</source>
        <translation>Sperrgebiete</translation>
    </message>
    <message>
        <source>Crossings</source>
        <translation>Kreuzungen</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>Rates by place</source>
        <translation>Fangraten nach Ort</translation>
    </message>
    <message>
        <source>Change since an earlier survey</source>
        <translation>Änderung seit einer früheren Lotung</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Hoher Kontrast</translation>
    </message>
    <message>
        <source>Larger type</source>
        <translation>Schrift größer</translation>
    </message>
    <message>
        <source>Smaller type</source>
        <translation>Schrift kleiner</translation>
    </message>
    <message>
        <source>Normal type</source>
        <translation>Schrift normal</translation>
    </message>
    <message>
        <source>Zoom to the section</source>
        <translation>Zum Abschnitt zoomen</translation>
    </message>
    <message>
        <source>Zoom to the mark</source>
        <translation>Zum Platz zoomen</translation>
    </message>
    <message>
        <source>Click to read all of it</source>
        <translation>Klick zeigt alles</translation>
    </message>
    <message>
        <source>Choose where its file is to be (Ctrl+N)</source>
        <translation>Wählen, wo seine Datei liegen soll (Strg+N)</translation>
    </message>
    <message>
        <source>The sample water</source>
        <translation>Das Beispielgewässer</translation>
    </message>
    <message>
        <source>An invented reservoir of three survey days and two autumns, to try things out on</source>
        <translation>Ein erfundener Stausee aus drei Lotungstagen und zwei Herbsten, zum Ausprobieren</translation>
    </message>
    <message>
        <source>Go back...</source>
        <translation>Zurückgehen …</translation>
    </message>
    <message>
        <source>Go back to a copy of %1</source>
        <translation>Zu einer Kopie von %1 zurückgehen</translation>
    </message>
    <message>
        <source>Copies of this water, taken by the hour, day and week</source>
        <translation>Kopien dieses Gewässers, nach Stunde, Tag und Woche</translation>
    </message>
    <message>
        <source>Drawing %1</source>
        <translation>%1 wird gezeichnet</translation>
    </message>
    <message>
        <source>Survey day</source>
        <translation>Lotungstag</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Rückblick</translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation>Strg+%1</translation>
    </message>
    <message>
        <source>The level that the plan expects, above chart level; change it under Tomorrow, Conditions</source>
        <translation>Der Wasserstand, den der Plan erwartet, über Kartennull; zu ändern unter Morgen, Bedingungen</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>On the chart</source>
        <translation>Auf der Karte</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Was die Karte zeigt</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Theme, type, and what of the water is seen</source>
        <translation>Farben, Schrift und was vom Gewässer zu sehen ist</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>New, open, export, help</source>
        <translation>Neu, öffnen, ausgeben, Hilfe</translation>
    </message>
    <message>
        <source>Metres or feet, everywhere at once (Ctrl+U)</source>
        <translation>Meter oder Fuß, überall zugleich (Strg+U)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Meremark</source>
        <translation>Meremark</translation>
    </message>
    <message>
        <source>Undo: %1 (Ctrl+Z)</source>
        <translation>Rückgängig: %1 (Strg+Z)</translation>
    </message>
    <message>
        <source>Redo: %1 (Ctrl+Y)</source>
        <translation>Wiederholen: %1 (Strg+Y)</translation>
    </message>
    <message>
        <source>Water without a name, of %1</source>
        <translation>Gewässer ohne Namen, vom %1</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy, HH:mm</source>
        <translation>ddd d. MMM yyyy, HH:mm</translation>
    </message>
    <message>
        <source>You count it less than usual</source>
        <translation>Zählt weniger als üblich</translation>
    </message>
    <message>
        <source>You count it as usual</source>
        <translation>Zählt wie üblich</translation>
    </message>
    <message>
        <source>You do not count it</source>
        <translation>Zählt gar nicht</translation>
    </message>
    <message>
        <source>You count it more than usual</source>
        <translation>Zählt mehr als üblich</translation>
    </message>
    <message>
        <source>speaks for it</source>
        <translation>spricht dafür</translation>
    </message>
    <message>
        <source>speaks against it</source>
        <translation>spricht dagegen</translation>
    </message>
    <message>
        <source>cannot tell yet</source>
        <translation>kann es noch nicht sagen</translation>
    </message>
    <message>
        <source>your log %1: %2, with 80 % between %3 and %4</source>
        <translation>das Fangbuch %1: %2, mit 80 % zwischen %3 und %4</translation>
    </message>
    <message>
        <source>your log learns depths by itself, range by range</source>
        <translation>das Fangbuch lernt Tiefen von selbst, Stufe für Stufe</translation>
    </message>
    <message>
        <source>your log keeps the wind, but no waves</source>
        <translation>das Fangbuch führt den Wind, aber keine Wellen</translation>
    </message>
    <message>
        <source>it says how far your log is believed</source>
        <translation>sagt, wie weit dem Fangbuch geglaubt wird</translation>
    </message>
    <message>
        <source>it says how much you want to find out</source>
        <translation>sagt, wie viel erkundet werden soll</translation>
    </message>
    <message>
        <source>no fish can speak for it: it is of the chart</source>
        <translation>kein Fisch kann dafür sprechen: es ist Sache der Karte</translation>
    </message>
    <message>
        <source>nothing caught yet: by your belief alone</source>
        <translation>noch nichts gefangen: allein nach der Annahme</translation>
    </message>
    <message>
        <source>no stay of your log tells the wind</source>
        <translation>kein Ansitz des Fangbuchs nennt den Wind</translation>
    </message>
    <message>
        <source>no stay of your log was near any</source>
        <translation>kein Ansitz des Fangbuchs lag in der Nähe</translation>
    </message>
    <message>
        <source>courses teach %1 to 10, and more is safer.</source>
        <translation>Kurse lehren %1 bis 10, und mehr ist sicherer.</translation>
    </message>
    <message>
        <source>the boat</source>
        <translation>das Boot</translation>
    </message>
    <message>
        <source>the bow anchor or its rope</source>
        <translation>der Buganker oder seine Leine</translation>
    </message>
    <message>
        <source>the stern anchor or its rope</source>
        <translation>der Heckanker oder seine Leine</translation>
    </message>
    <message>
        <source>the circle that she swings in</source>
        <translation>der Schwojkreis</translation>
    </message>
    <message>
        <source>Laid by hand: closed water reaches into the circle that she swings in.</source>
        <translation>Von Hand gelegt: ein Sperrgebiet reicht in den Schwojkreis.</translation>
    </message>
    <message>
        <source>Laid by hand: %1 comes into closed water.</source>
        <translation>Von Hand gelegt: %1 gerät ins Sperrgebiet.</translation>
    </message>
    <message>
        <source>Laid by hand: the shore, or water too shallow for her, reaches into the circle that she swings in.</source>
        <translation>Von Hand gelegt: das Ufer oder zu flaches Wasser reicht in den Schwojkreis.</translation>
    </message>
    <message>
        <source>Laid by hand: %1 comes ashore, or where she does not float.</source>
        <translation>Von Hand gelegt: %1 gerät an Land oder wo das Boot nicht schwimmt.</translation>
    </message>
    <message>
        <source>Laid by hand: the %1 rope is too short: %2 to lie there and fall back on, %3 on board.</source>
        <translation>Von Hand gelegt: die %1leine ist zu kurz: %2 nötig, um dort zu liegen und zurückzusacken, %3 an Bord.</translation>
    </message>
    <message>
        <source>Laid by hand: the %1 anchor is too near to hold, scope %2 and not %3.</source>
        <translation>Von Hand gelegt: der %1anker liegt zu nah, um zu halten, Leinenfaktor %2 statt %3.</translation>
    </message>
    <message>
        <source>Laid by hand: %1° off the wind, which comes over her side and can fill her. Lay the anchors anew.</source>
        <translation>Von Hand gelegt: %1° aus dem Wind, der über die Seite kommt und das Boot volllaufen lassen kann. Die Anker neu legen.</translation>
    </message>
    <message>
        <source>Laid by hand: the bow points %1° off the wind.</source>
        <translation>Von Hand gelegt: der Bug zeigt %1° aus dem Wind.</translation>
    </message>
    <message>
        <source>Rod %1, laid by hand: %2</source>
        <translation>Rute %1, von Hand gelegt: %2</translation>
    </message>
    <message>
        <source>bait or line lies in closed water.</source>
        <translation>Köder oder Schnur liegt im Sperrgebiet.</translation>
    </message>
    <message>
        <source>bait or line lies over land.</source>
        <translation>Köder oder Schnur liegt über Land.</translation>
    </message>
    <message>
        <source>deeper than the limit.</source>
        <translation>tiefer als die Grenztiefe.</translation>
    </message>
    <message>
        <source>hardly any water for a bait.</source>
        <translation>kaum Wasser für einen Köder.</translation>
    </message>
    <message>
        <source>farther than the cast.</source>
        <translation>weiter als die Wurfweite.</translation>
    </message>
    <message>
        <source>too near to the boat and her ropes.</source>
        <translation>zu nah am Boot und seinen Leinen.</translation>
    </message>
    <message>
        <source>its line leads along an anchor rope.</source>
        <translation>die Schnur läuft längs einer Ankerleine.</translation>
    </message>
    <message>
        <source>Rods %1 and %2, laid by hand: too near to each other.</source>
        <translation>Ruten %1 und %2, von Hand gelegt: zu nah beieinander.</translation>
    </message>
    <message>
        <source>No room for a rod within the cast.</source>
        <translation>Kein Raum für eine Rute in Wurfweite.</translation>
    </message>
    <message>
        <source>Room for %1 of %2 rods.</source>
        <translation>Raum für %1 von %2 Ruten.</translation>
    </message>
    <message>
        <source>The wind turns or gets up at %1, while you lie here; anchors are laid for the wind %2 it. Lay them anew, or move on, when it does.</source>
        <translation>Der Wind dreht oder frischt auf um %1, während das Boot hier liegt; die Anker sind für den Wind %2 gelegt. Neu legen oder weiterziehen, wenn es so weit ist.</translation>
    </message>
    <message>
        <source>after</source>
        <translation>danach</translation>
    </message>
    <message>
        <source>before</source>
        <translation>davor</translation>
    </message>
    <message>
        <source>The %1 anchor lands on a slope of %2%3</source>
        <translation>Der %1anker liegt an einem Hang von %2%3</translation>
    </message>
    <message>
        <source> that falls towards the boat, so that the pull lifts it: pay out more rope, and watch whether it drags.</source>
        <translation>, der zum Boot hin fällt, so dass der Zug ihn anhebt: mehr Leine geben und darauf achten, ob er schliert.</translation>
    </message>
    <message>
        <source>: watch whether it slides.</source>
        <translation>: darauf achten, ob er rutscht.</translation>
    </message>
    <message>
        <source>Rock was felt near the %1 anchor: it may slip, or jam. Have a line on its crown, or be ready to leave it.</source>
        <translation>Nahe dem %1anker wurde Fels gefühlt: er kann abrutschen oder sich verklemmen. Eine Leine am Ankerkopf haben oder bereit sein, ihn aufzugeben.</translation>
    </message>
    <message>
        <source>The lead brought up weed near the %1 anchor: it may slide on it. Watch whether it drags.</source>
        <translation>Das Lot brachte nahe dem %1anker Kraut herauf: er kann darauf rutschen. Darauf achten, ob er schliert.</translation>
    </message>
    <message>
        <source>Wear the lifejacket, do not stow it. If you fall in, float on your back until your breathing settles.</source>
        <translation>Schwimmweste tragen, nicht verstauen. Wer hineinfällt: auf dem Rücken treiben, bis der Atem sich beruhigt.</translation>
    </message>
    <message>
        <source> Where there is ice, stay ashore: never break out through it.</source>
        <translation> Wo Eis ist, an Land bleiben: nie durchs Eis brechen.</translation>
    </message>
    <message>
        <source>You start before it is light: carry a white light.</source>
        <translation>Aufbruch vor dem Hellwerden: ein weißes Licht mitführen.</translation>
    </message>
    <message>
        <source>You come home in the dark: carry a white light.</source>
        <translation>Heimkehr im Dunkeln: ein weißes Licht mitführen.</translation>
    </message>
    <message>
        <source>You come home after sunset.</source>
        <translation>Heimkehr nach Sonnenuntergang.</translation>
    </message>
    <message>
        <source>Engine in neutral before you fall back: a rope in the propeller holds the boat by the stern.</source>
        <translation>Motor in den Leerlauf, bevor das Boot zurücksackt: eine Leine im Propeller hält das Boot am Heck.</translation>
    </message>
    <message>
        <source> Rope at %1 times depth and bow height is for settled weather only: %2</source>
        <translation> Leine vom %1-fachen aus Tiefe und Bughöhe taugt nur für ruhiges Wetter: %2</translation>
    </message>
    <message>
        <source>High waves for an open boat at anchor: look for a lee.</source>
        <translation>Hohe Wellen für ein offenes Boot vor Anker: Lee suchen.</translation>
    </message>
    <message>
        <source>Scope %1 is short for this wind: %2</source>
        <translation>Leinenfaktor %1 ist kurz für diesen Wind: %2</translation>
    </message>
    <message>
        <source>Room or rope for scope %1 only: take a bearing ashore and watch whether she drags.</source>
        <translation>Raum oder Leine nur für Leinenfaktor %1: ein Ziel an Land peilen und darauf achten, ob der Anker schliert.</translation>
    </message>
    <message>
        <source>Turned %1° off the wind so that neither anchor lands ashore.</source>
        <translation>%1° aus dem Wind gedreht, damit kein Anker an Land kommt.</translation>
    </message>
    <message>
        <source>Where the wind will come from is not known: anchors are drawn with the bow to the longest open water. Lay her to the wind that blows.</source>
        <translation>Woher der Wind kommen wird, ist unbekannt: die Anker sind mit dem Bug zum weitesten offenen Wasser gezeichnet. Nach dem Wind legen, der weht.</translation>
    </message>
    <message>
        <source>Laid by hand for a wind %1° from this one: see whether the anchors still fit it.</source>
        <translation>Von Hand für einen Wind gelegt, der %1° anders stand: prüfen, ob die Anker noch passen.</translation>
    </message>
    <message>
        <source>Laid by hand: in this wind the boat lies %1 from where you put her.</source>
        <translation>Von Hand gelegt: bei diesem Wind liegt das Boot %1 von der gesetzten Stelle.</translation>
    </message>
    <message>
        <source>Your mark lies in closed water.</source>
        <translation>Der eigene Platz liegt im Sperrgebiet.</translation>
    </message>
    <message>
        <source>Your mark lies in water that you banned.</source>
        <translation>Der eigene Platz liegt in ausgeschlossenem Wasser.</translation>
    </message>
    <message>
        <source>Your mark lies in water that you banned: %1.</source>
        <translation>Der eigene Platz liegt in ausgeschlossenem Wasser: %1.</translation>
    </message>
    <message>
        <source>Your mark is deeper than the limit.</source>
        <translation>Der eigene Platz ist tiefer als die Grenztiefe.</translation>
    </message>
    <message>
        <source>Closed water lies within a cast.</source>
        <translation>In Wurfweite liegt ein Sperrgebiet.</translation>
    </message>
    <message>
        <source>The depth here is a guess: sound it before you anchor.</source>
        <translation>Die Tiefe hier ist geschätzt: loten, bevor geankert wird.</translation>
    </message>
    <message>
        <source>Most depths within a cast are guesses: sound round the boat first.</source>
        <translation>Die meisten Tiefen in Wurfweite sind geschätzt: erst rund ums Boot loten.</translation>
    </message>
    <message>
        <source>Waves of about %1 here.</source>
        <translation>Wellen von etwa %1 hier.</translation>
    </message>
    <message>
        <source>%1: the shock of falling in can kill within a minute. %2</source>
        <translation>%1: der Kälteschock beim Hineinfallen kann binnen einer Minute töten. %2</translation>
    </message>
    <message>
        <source>The water is cold (below %1)</source>
        <translation>Das Wasser ist kalt (unter %1)</translation>
    </message>
    <message>
        <source>Water below %1 is cold</source>
        <translation>Wasser unter %1 ist kalt</translation>
    </message>
    <message>
        <source>Force %1 is no weather for a small open boat: stay ashore.</source>
        <translation>Stärke %1 ist kein Wetter für ein kleines offenes Boot: an Land bleiben.</translation>
    </message>
    <message>
        <source>Force %1: white horses. Keep to sheltered water, pay out more rope, and go in if it freshens.</source>
        <translation>Stärke %1: Schaumkronen. In geschütztem Wasser bleiben, mehr Leine geben und heimfahren, wenn es auffrischt.</translation>
    </message>
    <message>
        <source>How strong the wind will be is not known: look at the forecast before you go out.</source>
        <translation>Wie stark der Wind wird, ist unbekannt: vor dem Ablegen den Wetterbericht ansehen.</translation>
    </message>
    <message>
        <source>At the first thunder go ashore: a boat is the highest thing on the water.</source>
        <translation>Beim ersten Donner an Land: ein Boot ist das Höchste auf dem Wasser.</translation>
    </message>
    <message>
        <source>Wind on the beam of a boat held at both ends can fill her: when it goes round, slip the stern rope and let her swing to the bow. Make both ropes fast so that they slip at once, a knife within reach; never lie to the stern anchor alone.</source>
        <translation>Wind von der Seite kann ein an beiden Enden gehaltenes Boot volllaufen lassen: dreht er, die Heckleine slippen und das Boot zum Bug schwojen lassen. Beide Leinen so belegen, dass sie sofort frei sind, ein Messer in Reichweite; nie am Heckanker allein liegen.</translation>
    </message>
    <message>
        <source>To one anchor she swings with the wind: keep her circle clear of other boats, reel in when she goes round, and anchor by the bow, never by the stern.</source>
        <translation>An einem Anker schwojt das Boot mit dem Wind: den Kreis von anderen Booten frei halten, einholen, wenn es herumgeht, und am Bug ankern, nie am Heck.</translation>
    </message>
    <message>
        <source>Tell somebody ashore where you are and when you will be back.</source>
        <translation>Jemandem an Land sagen, wo das Boot ist und wann es zurückkommt.</translation>
    </message>
    <message>
        <source>That day lies outside the season.</source>
        <translation>Dieser Tag liegt außerhalb der Saison.</translation>
    </message>
    <message>
        <source>At most %1 rods in a boat.</source>
        <translation>Höchstens %1 Ruten in einem Boot.</translation>
    </message>
    <message>
        <source>Closed water: %1.</source>
        <translation>Sperrgebiet: %1.</translation>
    </message>
    <message>
        <source>Local rules and the fishery&apos;s staff go first.</source>
        <translation>Die Regeln am Ort und das Personal des Gewässers gehen vor.</translation>
    </message>
    <message>
        <source>Above %1 pike often die after capture in water this warm: consider not fishing for them, or for any species that dies of it.</source>
        <translation>Über %1 sterben Hechte in so warmem Wasser oft nach dem Fang: erwägen, nicht auf sie oder andere so empfindliche Arten zu fischen.</translation>
    </message>
    <message>
        <source>Fish: wet hands, a wet mat, unhooked in the water where it can be done, and a short time in the air.</source>
        <translation>Fisch: nasse Hände, nasse Matte, möglichst im Wasser abhaken, nur kurz an der Luft.</translation>
    </message>
    <message>
        <source>%1 of the baits laid by hand have no rod and are left out.</source>
        <translation>%1 der von Hand gelegten Köder haben keine Rute und bleiben weg.</translation>
    </message>
    <message numerus="yes">
        <source>%n fish and runs</source>
        <comment>%n fish or run</comment>
        <translation>
            <numerusform>%n Fisch oder Biss</numerusform>
            <numerusform>%n Fische und Bisse</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n notes and marks</source>
        <comment>%n note or mark</comment>
        <translation>
            <numerusform>%n Notiz oder Platz</numerusform>
            <numerusform>%n Notizen und Plätze</numerusform>
        </translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>%1 fewer</source>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 mehr</translation>
    </message>
    <message>
        <source>as many of everything as now</source>
        <translation>von allem so viel wie jetzt</translation>
    </message>
    <message>
        <source>%1 than now</source>
        <translation>%1 als jetzt</translation>
    </message>
    <message numerus="yes">
        <source>%n trips</source>
        <comment>%n trip</comment>
        <translation>
            <numerusform>%n Ausfahrt</numerusform>
            <numerusform>%n Ausfahrten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stays</source>
        <comment>%n stay</comment>
        <translation>
            <numerusform>%n Ansitz</numerusform>
            <numerusform>%n Ansitze</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fish</source>
        <comment>%n fish</comment>
        <translation>
            <numerusform>%n Fisch</numerusform>
            <numerusform>%n Fische</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n months</source>
        <comment>%n month</comment>
        <translation>
            <numerusform>%n Monat</numerusform>
            <numerusform>%n Monate</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sections</source>
        <comment>%n section</comment>
        <translation>
            <numerusform>%n Abschnitt</numerusform>
            <numerusform>%n Abschnitte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n marks</source>
        <comment>%n mark</comment>
        <translation>
            <numerusform>%n Platz</numerusform>
            <numerusform>%n Plätze</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <comment>%n line</comment>
        <translation>
            <numerusform>%n Linie</numerusform>
            <numerusform>%n Linien</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n notes</source>
        <comment>%n note</comment>
        <translation>
            <numerusform>%n Notiz</numerusform>
            <numerusform>%n Notizen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rods</source>
        <comment>%n rod</comment>
        <translation>
            <numerusform>%n Rute</numerusform>
            <numerusform>%n Ruten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows</source>
        <comment>%n row</comment>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fields</source>
        <comment>%n field</comment>
        <translation>
            <numerusform>%n Feld</numerusform>
            <numerusform>%n Felder</numerusform>
        </translation>
    </message>
    <message>
        <source>no island</source>
        <translation>keine Insel</translation>
    </message>
    <message numerus="yes">
        <source>%n islands</source>
        <comment>%n island</comment>
        <translation>
            <numerusform>%n Insel</numerusform>
            <numerusform>%n Inseln</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n survey days</source>
        <comment>%n survey day</comment>
        <translation>
            <numerusform>%n Lotungstag</numerusform>
            <numerusform>%n Lotungstage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n soundings</source>
        <comment>%n sounding</comment>
        <translation>
            <numerusform>%n Lotung</numerusform>
            <numerusform>%n Lotungen</numerusform>
        </translation>
    </message>
    <message>
        <source>This stay has not ended yet.</source>
        <translation>Dieser Ansitz ist noch nicht zu Ende.</translation>
    </message>
    <message>
        <source>This stay is %1 hours long.</source>
        <translation>Dieser Ansitz dauert %1 Stunden.</translation>
    </message>
    <message>
        <source>The fishery is closed at this time of the year.</source>
        <translation>Zu dieser Zeit des Jahres ist das Gewässer gesperrt.</translation>
    </message>
    <message>
        <source>%1 rods, where the house allows %2.</source>
        <translation>%1 Ruten, wo die Gewässerordnung %2 erlaubt.</translation>
    </message>
    <message>
        <source>%1 rods, where %2 ride in the boat.</source>
        <translation>%1 Ruten, wo %2 im Boot mitfahren.</translation>
    </message>
    <message numerus="yes">
        <source>%n fish were taken before or after this stay.</source>
        <comment>One fish was taken before or after this stay.</comment>
        <translation>
            <numerusform>Ein Fisch wurde vor oder nach diesem Ansitz gefangen.</numerusform>
            <numerusform>%n Fische wurden vor oder nach diesem Ansitz gefangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>This place is not on the water: %1 from its shore.</source>
        <translation>Dieser Ort liegt nicht auf dem Wasser: %1 von seinem Ufer.</translation>
    </message>
    <message>
        <source>This place lies in closed water.</source>
        <translation>Dieser Ort liegt im Sperrgebiet.</translation>
    </message>
    <message>
        <source>This place lies in closed water: %1.</source>
        <translation>Dieser Ort liegt im Sperrgebiet: %1.</translation>
    </message>
    <message>
        <source>Another stay lasted from %1: one boat cannot be in both.</source>
        <translation>Ein anderer Ansitz dauerte von %1: ein Boot kann nicht in beiden sein.</translation>
    </message>
    <message>
        <source>%1: overlaps another stay brought in with it.</source>
        <translation>%1: überschneidet sich mit einem anderen zugleich eingelesenen Ansitz.</translation>
    </message>
    <message>
        <source>%1, by %2: at that place and time the log has a stay by %3, %4. Did they fish with rods of their own, or is it one stay?</source>
        <translation>%1, von %2: zu dieser Zeit an diesem Ort hat das Fangbuch einen Ansitz von %3, %4. Fischten beide mit eigenen Ruten, oder ist es ein Ansitz?</translation>
    </message>
    <message>
        <source>somebody not named</source>
        <translation>jemand ohne Namen</translation>
    </message>
    <message>
        <source>%1: the log has the boat in another stay then, %2. Which one is right?</source>
        <translation>%1: das Fangbuch hat das Boot dann in einem anderen Ansitz, %2. Welcher stimmt?</translation>
    </message>
    <message>
        <source>%1 anchor in %2, rope %3%4</source>
        <translation>%1anker in %2, Leine %3%4</translation>
    </message>
    <message>
        <source>She swings within %1 of the anchor</source>
        <translation>Das Boot schwojt im Umkreis von %1 um den Anker</translation>
    </message>
    <message>
        <source>; baits are laid for %1° to either side.</source>
        <translation>; Köder liegen für %1° nach beiden Seiten.</translation>
    </message>
    <message>
        <source>, to any side: nobody knows to which, and no bait is sure.</source>
        <translation>, nach jeder Seite: niemand weiß wohin, und kein Köder ist sicher.</translation>
    </message>
    <message>
        <source>Heading %1. Bow down, %2 of rope. %3</source>
        <translation>Bug nach %1. Buganker ab, %2 Leine. %3</translation>
    </message>
    <message>
        <source>Heading %1. Bow down, fall back on %2, stern down, haul the bow rope in to %3.</source>
        <translation>Bug nach %1. Buganker ab, auf %2 zurücksacken, Heckanker ab, Bugleine auf %3 einholen.</translation>
    </message>
    <message>
        <source>bow anchor</source>
        <translation>Buganker</translation>
    </message>
    <message>
        <source>stern anchor</source>
        <translation>Heckanker</translation>
    </message>
    <message>
        <source>baits</source>
        <translation>Köder</translation>
    </message>
    <message>
        <source>%1 laid by hand</source>
        <translation>von Hand gelegt: %1</translation>
    </message>
    <message>
        <source>rod %1: %2, %3, in %4, stop knot %5%6</source>
        <translation>Rute %1: %2, %3, in %4, Stopper %5%6</translation>
    </message>
    <message>
        <source>%1 brought in</source>
        <translation>%1 eingelesen</translation>
    </message>
    <message>
        <source>%1 updated</source>
        <translation>%1 ergänzt</translation>
    </message>
    <message>
        <source>%1 known already</source>
        <translation>%1 schon bekannt</translation>
    </message>
    <message>
        <source>%1 not used: %2.</source>
        <translation>%1 nicht benutzt: %2.</translation>
    </message>
    <message>
        <source>%1 left empty (first: %2 &apos;%3&apos; in row %4).</source>
        <translation>%1 leer gelassen (zuerst: %2 „%3“ in Zeile %4).</translation>
    </message>
    <message>
        <source>%1 not brought in. %2</source>
        <translation>%1 nicht eingelesen. %2</translation>
    </message>
    <message>
        <source>The survey day %1 was left out: some of its soundings are here already, and would count twice.</source>
        <translation>Der Lotungstag %1 blieb weg: einige seiner Lotungen sind schon da und zählten doppelt.</translation>
    </message>
    <message>
        <source>The other water counts its depths from another level on the gauge: soundings by hand were put right by the difference.</source>
        <translation>Das andere Gewässer zählt seine Tiefen von einem anderen Pegelstand: Handlotungen wurden um den Unterschied berichtigt.</translation>
    </message>
    <message>
        <source>too shallow</source>
        <translation>zu flach</translation>
    </message>
    <message>
        <source>deeper than the limit</source>
        <translation>tiefer als die Grenztiefe</translation>
    </message>
    <message>
        <source>too near the bank to swing</source>
        <translation>zu nah am Ufer zum Schwojen</translation>
    </message>
    <message>
        <source>too deep for the ropes</source>
        <translation>zu tief für die Leinen</translation>
    </message>
    <message>
        <source>too rough for an open boat at anchor</source>
        <translation>zu rau für ein offenes Boot vor Anker</translation>
    </message>
    <message>
        <source>that you banned</source>
        <translation>ausgeschlossen</translation>
    </message>
    <message>
        <source>too steep for an anchor</source>
        <translation>zu steil für einen Anker</translation>
    </message>
    <message>
        <source>without room or rope for the anchors</source>
        <translation>ohne Raum oder Leine für die Anker</translation>
    </message>
    <message>
        <source>%1 of %2 marks found. Left out: %3.</source>
        <translation>%1 von %2 Plätzen gefunden. Ausgelassen: %3.</translation>
    </message>
    <message>
        <source>None of the %1 stays of the log counts: by your beliefs alone.</source>
        <translation>Keiner der %1 Ansitze des Fangbuchs zählt: allein nach den Annahmen.</translation>
    </message>
    <message>
        <source>%1 of %2 stays of the log lie on no water of this chart today and say nothing of it.</source>
        <translation>%1 von %2 Ansitzen des Fangbuchs liegen heute auf keinem Wasser dieser Karte und sagen nichts darüber.</translation>
    </message>
    <message>
        <source>%1 of %2 stays of the log count in no rate: nobody noted their rods, or they lasted no time, or longer than any can.</source>
        <translation>%1 von %2 Ansitzen des Fangbuchs zählen in keiner Rate: niemand notierte ihre Ruten, oder sie dauerten keine Zeit oder länger, als es geht.</translation>
    </message>
    <message>
        <source>%1 of water left out: waves of more than %2 there, too rough for an open boat at anchor.</source>
        <translation>%1 Wasser ausgelassen: dort Wellen von mehr als %2, zu rau für ein offenes Boot vor Anker.</translation>
    </message>
    <message>
        <source>Strength of the wind: not said; waves and shelter are not counted.</source>
        <translation>Stärke des Windes: unbekannt; Wellen und Schutz zählen nicht.</translation>
    </message>
    <message>
        <source>There is no time or no way for %1 with stays of %2 minutes.</source>
        <translation>Keine Zeit oder kein Weg für %1 bei Ansitzen von %2 Minuten.</translation>
    </message>
    <message>
        <source>%1, from %2 %3</source>
        <translation>%1, ab %2 %3</translation>
    </message>
    <message numerus="yes">
        <source>Anchors of marks %1 are laid for wind %2.</source>
        <comment>Anchors of mark %1 are laid for wind %2.</comment>
        <translation>
            <numerusform>Die Anker von Platz %1 sind für Wind %2 gelegt.</numerusform>
            <numerusform>Die Anker der Plätze %1 sind für Wind %2 gelegt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The order of the day is yours.</source>
        <translation>Die Reihenfolge des Tages ist die eigene.</translation>
    </message>
    <message>
        <source>The order that you gave is for other marks: this is the program&apos;s.</source>
        <translation>Die eigene Reihenfolge gilt für andere Plätze: dies ist die des Programms.</translation>
    </message>
    <message>
        <source>Stays that you set: on %1.</source>
        <translation>Selbst gesetzte Zeiten: %1.</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>your mark %1 cannot be anchored on: %2</source>
        <translation>auf dem eigenen Platz %1 lässt sich nicht ankern: %2</translation>
    </message>
    <message>
        <source>In the hours that the day has for %1 the water there is too rough for an open boat at anchor.</source>
        <translation>In den Stunden, die der Tag für %1 hat, ist das Wasser dort zu rau für ein offenes Boot vor Anker.</translation>
    </message>
    <message>
        <source>nothing within a cast is open and no deeper than %1</source>
        <translation>in Wurfweite ist nichts frei und höchstens %1 tief</translation>
    </message>
    <message>
        <source>%1 of the water within a cast can be fished, %2 to %3 deep</source>
        <translation>%1 des Wassers in Wurfweite sind befischbar, %2 bis %3 tief</translation>
    </message>
    <message>
        <source>no drop-off within a cast</source>
        <translation>keine Kante in Wurfweite</translation>
    </message>
    <message>
        <source>%1 of drop-off, %2 to %3, within a cast</source>
        <translation>%1 Kante, %2 bis %3, in Wurfweite</translation>
    </message>
    <message>
        <source>%1 of weed edge within a cast</source>
        <translation>%1 Krautkante in Wurfweite</translation>
    </message>
    <message>
        <source>no weed edge within a cast</source>
        <translation>keine Krautkante in Wurfweite</translation>
    </message>
    <message>
        <source>no %1 within a cast</source>
        <translation>in Wurfweite kein Grund dieser Art: %1</translation>
    </message>
    <message>
        <source>%1 of %2 within a cast, most of it %3</source>
        <translation>%1 davon in Wurfweite: %2; am meisten: %3</translation>
    </message>
    <message>
        <source>the wind blows neither up the slope nor down it</source>
        <translation>der Wind weht weder den Hang hinauf noch hinab</translation>
    </message>
    <message>
        <source>the wind of %1 blows up a slope of %2</source>
        <translation>der Wind von %1 weht einen Hang von %2 hinauf</translation>
    </message>
    <message>
        <source>the wind of %1 blows down a slope of %2</source>
        <translation>der Wind von %1 weht einen Hang von %2 hinab</translation>
    </message>
    <message>
        <source>waves of %1 after %2 of open water</source>
        <translation>Wellen von %1 nach %2 offenem Wasser</translation>
    </message>
    <message>
        <source>depths within a cast known to ±%1</source>
        <translation>Tiefen in Wurfweite auf ±%1 bekannt</translation>
    </message>
    <message>
        <source>how far the depths may be off is not known</source>
        <translation>wie weit die Tiefen falsch sein können, ist unbekannt</translation>
    </message>
    <message>
        <source>%1 fish in 10 rod-hours to be expected here, %2 over the whole water</source>
        <translation>%1 Fische in 10 Rutenstunden hier zu erwarten, %2 im ganzen Gewässer</translation>
    </message>
    <message>
        <source>the rate here may lie between %1 and %2 in 10 rod-hours</source>
        <translation>die Rate hier kann zwischen %1 und %2 in 10 Rutenstunden liegen</translation>
    </message>
    <message>
        <source>%1 under the boat</source>
        <translation>%1 unter dem Boot</translation>
    </message>
    <message>
        <source>open water</source>
        <translation>offenes Wasser</translation>
    </message>
    <message>
        <source>no wind</source>
        <translation>kein Wind</translation>
    </message>
    <message>
        <source>how the wind blows on to it is not known and not counted</source>
        <translation>wie der Wind darauf steht, ist unbekannt und zählt nicht</translation>
    </message>
    <message>
        <source>the wind is not said: waves and shelter are not counted</source>
        <translation>der Wind ist unbekannt: Wellen und Schutz zählen nicht</translation>
    </message>
    <message>
        <source>%1; from %2 %3</source>
        <translation>%1; ab %2 %3</translation>
    </message>
    <message>
        <source>the log does not tell yet</source>
        <translation>das Fangbuch sagt noch nichts</translation>
    </message>
    <message>
        <source>never tried</source>
        <translation>nie versucht</translation>
    </message>
    <message>
        <source>at the hours planned</source>
        <translation>zu den geplanten Stunden</translation>
    </message>
    <message>
        <source>what looks best of many looks better than it is</source>
        <translation>was von vielem am besten aussieht, sieht besser aus, als es ist</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Warnung: %1</translation>
    </message>
    <message>
        <source>Laid for wind %1</source>
        <translation>Gelegt für Wind %1</translation>
    </message>
    <message>
        <source>%1 fish per 10 rod-hours (%2 to %3)</source>
        <translation>%1 Fische je 10 Rutenstunden (%2 bis %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n rod-hours</source>
        <comment>%n rod-hour</comment>
        <translation>
            <numerusform>%n Rutenstunde</numerusform>
            <numerusform>%n Rutenstunden</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Never fished: %1 of %2 (%3).</source>
        <translation>Nie befischt: %1 von %2 (%3).</translation>
    </message>
    <message>
        <source>Too little was tried to tell of %1 of %2, with %3 of the effort: %4.</source>
        <translation>Zu wenig versucht, um etwas zu sagen: %1 von %2, mit %3 des Aufwands: %4.</translation>
    </message>
    <message>
        <source>Most is to be expected %1: %2, %3 times the whole water&apos;s.</source>
        <translation>Am meisten ist zu erwarten %1: %2, %3-mal so viel wie im ganzen Gewässer.</translation>
    </message>
    <message>
        <source> That is more than chance would make it.</source>
        <translation> Das ist mehr, als der Zufall macht.</translation>
    </message>
    <message>
        <source> Chance alone could make such a difference.</source>
        <translation> Der Zufall allein könnte so einen Unterschied machen.</translation>
    </message>
    <message>
        <source>No hour of the day stands out, by %1.</source>
        <translation>Keine Stunde des Tages sticht heraus, aus: %1.</translation>
    </message>
    <message>
        <source>The hours from %1 to %2 were best, at their height %3, by %4.</source>
        <translation>Die Stunden von %1 bis %2 waren die besten, auf dem Höhepunkt %3, aus: %4.</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>bisher: %1</translation>
    </message>
    <message>
        <source>not fished yet</source>
        <translation>noch nicht befischt</translation>
    </message>
    <message>
        <source>Worth trying next %1 (%2): %3 is what it may bring; if it is no better than the rest, %4 there bring one fish.</source>
        <translation>Als Nächstes zu versuchen %1 (%2): %3 sind möglich; ist es nicht besser als der Rest, bringt dort ein Fisch so viel Aufwand: %4.</translation>
    </message>
    <message>
        <source>at the kind of bottom “%1”</source>
        <translation>bei der Art des Grundes „%1“</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>at %1 o’clock</source>
        <translation>um %1 Uhr</translation>
    </message>
    <message>
        <source>in a calm</source>
        <translation>bei Flaute</translation>
    </message>
    <message>
        <source>with wind from %1</source>
        <translation>bei Wind aus %1</translation>
    </message>
    <message>
        <source>in water of %1</source>
        <translation>in Wasser von %1</translation>
    </message>
    <message>
        <source>at places last fished %1</source>
        <translation>an Stellen, zuletzt befischt: %1</translation>
    </message>
    <message>
        <source>Nothing that counts was logged in this time.</source>
        <translation>In dieser Zeit wurde nichts eingetragen, was zählt.</translation>
    </message>
    <message>
        <source>No fish in %1: up to %2 per 10 rod-hours may still be there.</source>
        <translation>Kein Fisch in %1: bis zu %2 je 10 Rutenstunden können trotzdem da sein.</translation>
    </message>
    <message>
        <source>Over all: %1, in %2.</source>
        <translation>Insgesamt: %1, in %2.</translation>
    </message>
    <message numerus="yes">
        <source>All of it was %n days: one good day makes a rate.</source>
        <comment>All of it was one day: a good one makes a rate.</comment>
        <translation>
            <numerusform>Alles kam von einem Tag: ein guter macht die Rate.</numerusform>
            <numerusform>Alles kam von %n Tagen: ein guter macht die Rate.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stays count in no rate: their rods or their length are not known.</source>
        <comment>%n stay counts in no rate: its rods or its length are not known.</comment>
        <translation>
            <numerusform>%n Ansitz zählt in keiner Rate: seine Ruten oder seine Dauer sind unbekannt.</numerusform>
            <numerusform>%n Ansitze zählen in keiner Rate: ihre Ruten oder ihre Dauer sind unbekannt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>%1 brought %2 times as much for its effort as %3 (%4).</source>
        <translation>%1 brachte für den Aufwand %2-mal so viel wie %3 (%4).</translation>
    </message>
    <message>
        <source>%1 brought no fish; %2 brought at least %3 times as much for its effort, if anything.</source>
        <translation>%1 brachte keinen Fisch; %2 brachte für den Aufwand mindestens %3-mal so viel, wenn überhaupt.</translation>
    </message>
    <message>
        <source> That is more than chance would make it (%1 in 100).</source>
        <translation> Das ist mehr, als der Zufall macht (%1 von 100).</translation>
    </message>
    <message>
        <source> Chance alone makes as large a difference %1 times in 100.</source>
        <translation> Der Zufall allein macht so einen Unterschied %1-mal von 100.</translation>
    </message>
    <message>
        <source>north</source>
        <translation>Nord</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>Nordost</translation>
    </message>
    <message>
        <source>east</source>
        <translation>Ost</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>Südost</translation>
    </message>
    <message>
        <source>south</source>
        <translation>Süd</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>Südwest</translation>
    </message>
    <message>
        <source>west</source>
        <translation>West</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>Nordwest</translation>
    </message>
    <message>
        <source>no echo</source>
        <translation>kein Echo</translation>
    </message>
    <message>
        <source>spike</source>
        <translation>Ausreißer</translation>
    </message>
    <message>
        <source>double echo</source>
        <translation>Doppelecho</translation>
    </message>
    <message>
        <source>depth stuck</source>
        <translation>Tiefe steht</translation>
    </message>
    <message>
        <source>position jumped</source>
        <translation>Position gesprungen</translation>
    </message>
    <message>
        <source>position stuck</source>
        <translation>Position steht</translation>
    </message>
    <message>
        <source>on land</source>
        <translation>an Land</translation>
    </message>
    <message>
        <source>other passes disagree</source>
        <translation>andere Fahrten widersprechen</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>Two survey days differ by %1 where they cross: agree the offset under Check the soundings.</source>
        <translation>Zwei Lotungstage weichen um %1 ab, wo sie sich kreuzen: unter Lotungen prüfen dem Ausgleich zustimmen.</translation>
    </message>
    <message>
        <source>offset of %1</source>
        <translation>Ausgleich von %1</translation>
    </message>
    <message>
        <source>delay of %1 s</source>
        <translation>Verzug von %1 s</translation>
    </message>
    <message>
        <source>%1: the level is another now, so the %2 agreed before no longer counts; see Check the soundings.</source>
        <translation>%1: der Wasserstand ist nun ein anderer, deshalb gilt nicht mehr, was vereinbart war: %2; siehe Lotungen prüfen.</translation>
    </message>
    <message>
        <source> and the </source>
        <translation> und </translation>
    </message>
    <message>
        <source>over %1 %2</source>
        <translation>über %1 %2</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source> km</source>
        <translation> km</translation>
    </message>
    <message>
        <source> mi</source>
        <translation> mi</translation>
    </message>
    <message>
        <source> ft²</source>
        <translation> ft²</translation>
    </message>
    <message>
        <source> million m³</source>
        <translation> Mio. m³</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source>%1 lb %2 oz</source>
        <translation>%1 lb %2 oz</translation>
    </message>
    <message>
        <source> cm</source>
        <translation> cm</translation>
    </message>
    <message>
        <source> in</source>
        <translation> in</translation>
    </message>
    <message>
        <source> ft/s</source>
        <translation> ft/s</translation>
    </message>
    <message>
        <source>NNE</source>
        <translation>NNO</translation>
    </message>
    <message>
        <source>NE</source>
        <translation>NO</translation>
    </message>
    <message>
        <source>ENE</source>
        <translation>ONO</translation>
    </message>
    <message>
        <source>ESE</source>
        <translation>OSO</translation>
    </message>
    <message>
        <source>SE</source>
        <translation>SO</translation>
    </message>
    <message>
        <source>SSE</source>
        <translation>SSO</translation>
    </message>
    <message>
        <source>SSW</source>
        <translation>SSW</translation>
    </message>
    <message>
        <source>SW</source>
        <translation>SW</translation>
    </message>
    <message>
        <source>WSW</source>
        <translation>WSW</translation>
    </message>
    <message>
        <source>WNW</source>
        <translation>WNW</translation>
    </message>
    <message>
        <source>NW</source>
        <translation>NW</translation>
    </message>
    <message>
        <source>NNW</source>
        <translation>NNW</translation>
    </message>
    <message>
        <source>wind not said</source>
        <translation>Wind unbekannt</translation>
    </message>
    <message>
        <source>variable %1</source>
        <translation>umlaufend %1</translation>
    </message>
    <message>
        <source>, strength not said</source>
        <translation>, Stärke unbekannt</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Of %1 drawn both times %2</source>
        <translation>Von %1, beide Male gezeichnet: %2</translation>
    </message>
    <message>
        <source>nothing has changed by more than both surveys may be off.</source>
        <translation>nichts hat sich um mehr geändert, als beide Lotungen falsch sein können.</translation>
    </message>
    <message>
        <source>%1 have risen by more than both surveys may be off, %2 in all</source>
        <translation>%1 sind um mehr gestiegen, als beide Lotungen falsch sein können, zusammen %2</translation>
    </message>
    <message>
        <source>%1 have fallen by more than both surveys may be off, %2 in all</source>
        <translation>%1 sind um mehr gefallen, als beide Lotungen falsch sein können, zusammen %2</translation>
    </message>
    <message>
        <source>%1 that all of the bottom has in common is taken for a level noted wrongly, and taken off.</source>
        <translation>%1, die der ganze Grund gemeinsam hat, gelten als falsch notierter Wasserstand und sind abgezogen.</translation>
    </message>
    <message>
        <source>not drawn both times</source>
        <translation>nicht beide Male gezeichnet</translation>
    </message>
    <message>
        <source>as it was, %1</source>
        <translation>wie er war, %1</translation>
    </message>
    <message>
        <source>drop-off</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>drop-offs</source>
        <translation>Kanten</translation>
    </message>
    <message>
        <source>A steep bank between shallower and deeper water.</source>
        <translation>Ein steiler Hang zwischen flacherem und tieferem Wasser.</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Terrasse</translation>
    </message>
    <message>
        <source>shelves</source>
        <translation>Terrassen</translation>
    </message>
    <message>
        <source>Gentle bottom with steep ground beside it.</source>
        <translation>Sanfter Grund mit steilem daneben.</translation>
    </message>
    <message>
        <source>plateau</source>
        <translation>Plateau</translation>
    </message>
    <message>
        <source>plateaus</source>
        <translation>Plateaus</translation>
    </message>
    <message>
        <source>Gentle bottom that stands high.</source>
        <translation>Sanfter Grund, der hoch liegt.</translation>
    </message>
    <message>
        <source>hump</source>
        <translation>Berg</translation>
    </message>
    <message>
        <source>humps</source>
        <translation>Berge</translation>
    </message>
    <message>
        <source>Ground that rises out of what lies round it.</source>
        <translation>Grund, der sich aus seiner Umgebung hebt.</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>Loch</translation>
    </message>
    <message>
        <source>holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <source>Ground that lies below what is round it.</source>
        <translation>Grund, der unter seiner Umgebung liegt.</translation>
    </message>
    <message>
        <source>trough</source>
        <translation>Rinne</translation>
    </message>
    <message>
        <source>troughs</source>
        <translation>Rinnen</translation>
    </message>
    <message>
        <source>A long hollow.</source>
        <translation>Eine lange Senke.</translation>
    </message>
    <message>
        <source>spur</source>
        <translation>Sporn</translation>
    </message>
    <message>
        <source>spurs</source>
        <translation>Sporne</translation>
    </message>
    <message>
        <source>A ridge that runs out into deeper water.</source>
        <translation>Ein Rücken, der ins tiefere Wasser läuft.</translation>
    </message>
    <message>
        <source>saddle</source>
        <translation>Sattel</translation>
    </message>
    <message>
        <source>saddles</source>
        <translation>Sättel</translation>
    </message>
    <message>
        <source>The low place of a ridge, with deeper water on both sides.</source>
        <translation>Die tiefe Stelle eines Rückens, mit tieferem Wasser auf beiden Seiten.</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>Ebene</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>Ebenen</translation>
    </message>
    <message>
        <source>Gentle bottom without anything of its own.</source>
        <translation>Sanfter Grund ohne Besonderes.</translation>
    </message>
    <message>
        <source>weed bed</source>
        <translation>Krautfeld</translation>
    </message>
    <message>
        <source>weed beds</source>
        <translation>Krautfelder</translation>
    </message>
    <message>
        <source>Bottom that weed covers.</source>
        <translation>Grund, den Kraut bedeckt.</translation>
    </message>
    <message>
        <source>weed edge</source>
        <translation>Krautkante</translation>
    </message>
    <message>
        <source>weed edges</source>
        <translation>Krautkanten</translation>
    </message>
    <message>
        <source>Where weed ends and open bottom begins.</source>
        <translation>Wo Kraut endet und freier Grund beginnt.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message numerus="yes">
        <source>%n changes by hand; they are made again whenever the water is drawn.</source>
        <comment>%n change by hand; it is made again whenever the water is drawn.</comment>
        <translation>
            <numerusform>%n Änderung von Hand; sie wird bei jedem Zeichnen wiederholt.</numerusform>
            <numerusform>%n Änderungen von Hand; sie werden bei jedem Zeichnen wiederholt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <comment>%n day</comment>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n soundings by lead line</source>
        <comment>and %n sounding by lead line</comment>
        <translation>
            <numerusform>und %n Lotung mit dem Handlot</numerusform>
            <numerusform>und %n Lotungen mit dem Handlot</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n notes lie outside the water and do not count.</source>
        <comment>%n note lies outside the water and does not count.</comment>
        <translation>
            <numerusform>%n Notiz liegt außerhalb des Wassers und zählt nicht.</numerusform>
            <numerusform>%n Notizen liegen außerhalb des Wassers und zählen nicht.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>marks %1</source>
        <comment>mark %1</comment>
        <translation>
            <numerusform>Platz %1</numerusform>
            <numerusform>Plätze %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The water level of %n survey days is not known: their depths may stand too high or too low.</source>
        <comment>The water level of %n survey day is not known: its depths may stand too high or too low.</comment>
        <translation>
            <numerusform>Der Wasserstand von %n Lotungstag ist unbekannt: seine Tiefen können zu hoch oder zu tief liegen.</numerusform>
            <numerusform>Der Wasserstand von %n Lotungstagen ist unbekannt: ihre Tiefen können zu hoch oder zu tief liegen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n survey days have no level: what all of the bottom has in common may be that.</source>
        <comment>One survey day has no level: what all of the bottom has in common may be that.</comment>
        <translation>
            <numerusform>Ein Lotungstag hat keinen Wasserstand: was der ganze Grund gemeinsam hat, kann daher kommen.</numerusform>
            <numerusform>%n Lotungstage haben keinen Wasserstand: was der ganze Grund gemeinsam hat, kann daher kommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The sun over this water is %1 h behind this clock. Is %2 its time zone?</source>
        <translation>Die Sonne über diesem Gewässer geht gegen diese Uhr %1 h nach. Ist %2 seine Zeitzone?</translation>
    </message>
    <message>
        <source>The sun over this water is %1 h ahead of this clock. Is %2 its time zone?</source>
        <translation>Die Sonne über diesem Gewässer geht gegen diese Uhr %1 h vor. Ist %2 seine Zeitzone?</translation>
    </message>
    <message>
        <source>Half of the bottom has risen by %1 or more: is a level of one of the surveys noted wrongly?</source>
        <translation>Die Hälfte des Grundes ist um %1 oder mehr gestiegen: ist ein Wasserstand einer der Lotungen falsch notiert?</translation>
    </message>
    <message>
        <source>Half of the bottom has sunk by %1 or more: is a level of one of the surveys noted wrongly?</source>
        <translation>Die Hälfte des Grundes ist um %1 oder mehr gesunken: ist ein Wasserstand einer der Lotungen falsch notiert?</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>The language changes when the program starts next.</source>
        <translation>Die Sprache wechselt beim nächsten Start des Programms.</translation>
    </message>
    <message>
        <source>That of this machine</source>
        <translation>Die dieses Rechners</translation>
    </message>
    <message>
        <source>Section %1</source>
        <translation>Abschnitt %1</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>mean depth</source>
        <translation>mittlere Tiefe</translation>
    </message>
    <message>
        <source>deepest</source>
        <translation>tiefste Stelle</translation>
    </message>
    <message>
        <source>Season</source>
        <comment>the step: its months, and a page of them</comment>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>On the chart: full is thick, half thin, empty none; pale is of earlier years.</source>
        <translation>Auf der Karte: voll ist dicht, halb dünn, leer keines; blass ist aus früheren Jahren.</translation>
    </message>
    <message>
        <source>The day on which you met it; what was seen in earlier years counts less</source>
        <translation>Der Tag, an dem es gefunden wurde; was in früheren Jahren gesehen wurde, zählt weniger</translation>
    </message>
    <message>
        <source>a day like 20.8.2026 or 2026-08-20, or nothing</source>
        <translation>ein Tag wie 20.8.2026 oder 2026-08-20, oder nichts</translation>
    </message>
    <message>
        <source>%1 of line</source>
        <translation>Linie von %1</translation>
    </message>
    <message>
        <source>%1 round %2</source>
        <translation>%1 um %2</translation>
    </message>
    <message numerus="yes">
        <source>%n notes are of earlier years and count half for every year.</source>
        <comment>%n note is of an earlier year and counts half for every year.</comment>
        <translation>
            <numerusform>%n Notiz ist aus einem früheren Jahr und zählt je Jahr die Hälfte.</numerusform>
            <numerusform>%n Notizen sind aus früheren Jahren und zählen je Jahr die Hälfte.</numerusform>
        </translation>
    </message>
    <message>
        <source> (or with arrows and Space; Escape when done).</source>
        <translation> (oder mit Pfeiltasten und Leertaste; Esc, wenn fertig).</translation>
    </message>
    <message>
        <source>There is no copy of %1.</source>
        <translation>Von %1 gibt es keine Kopie.</translation>
    </message>
    <message>
        <source>Rescue what can be read into a new file...</source>
        <translation>Lesbares in eine neue Datei retten …</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Kapitel</translation>
    </message>
    <message>
        <source>The guide</source>
        <translation>Das Handbuch</translation>
    </message>
    <message>
        <source>Find in the guide</source>
        <translation>Im Handbuch suchen</translation>
    </message>
    <message>
        <source>Enter goes on to the next place (Ctrl+F)</source>
        <translation>Eingabetaste geht zur nächsten Stelle (Strg+F)</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>To where you read before (Alt+Left)</source>
        <translation>Wo zuvor gelesen wurde (Alt+Links)</translation>
    </message>
    <message>
        <source>This chapter, as it will be printed (Ctrl+P)</source>
        <translation>Dieses Kapitel, wie es gedruckt wird (Strg+P)</translation>
    </message>
    <message>
        <source>The guide stays offline. The address is %1</source>
        <translation>Das Handbuch bleibt offline. Die Adresse ist %1</translation>
    </message>
    <message>
        <source>“%1” stands nowhere in the guide.</source>
        <translation>„%1“ steht nirgends im Handbuch.</translation>
    </message>
    <message>
        <source>The chapter, as it will be printed</source>
        <translation>Das Kapitel, wie es gedruckt wird</translation>
    </message>
    <message>
        <source>A newer version of Meremark keeps %1: it can be looked at here, as far as this version knows what is in it, and nothing is saved into it.</source>
        <translation>Eine neuere Version von Meremark führt %1: hier lässt es sich ansehen, soweit diese Version seinen Inhalt kennt, und nichts wird darin gespeichert.</translation>
    </message>
    <message>
        <source>Rescue what can be read into a new file</source>
        <translation>Lesbares in eine neue Datei retten</translation>
    </message>
    <message>
        <source>Reading what can be read</source>
        <translation>Liest, was sich lesen lässt</translation>
    </message>
    <message>
        <source>Rescued</source>
        <translation>Gerettet</translation>
    </message>
    <message>
        <source>Everything that you brought in could be read. The map is drawn anew.</source>
        <translation>Alles, was eingelesen worden war, ließ sich lesen. Die Karte wird neu gezeichnet.</translation>
    </message>
    <message>
        <source>Not everything could be read. What is missing:</source>
        <translation>Nicht alles ließ sich lesen. Es fehlt:</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Not to be shown again; the menu View brings all hints back</source>
        <translation>Nicht wieder zeigen; das Menü Ansicht holt alle Hinweise zurück</translation>
    </message>
    <message>
        <source>What is left empty stays unknown: nothing is counted that nobody said. A blank counts as much as a fish.</source>
        <translation>Was leer bleibt, bleibt unbekannt: Gezählt wird nur, was jemand gesagt hat. Ein Leergang zählt so viel wie ein Fisch.</translation>
    </message>
    <message>
        <source>Turn the arrow of the wind on the chart; drag boat, anchors and baits. The numbers follow, and Esc takes a drag back.</source>
        <translation>Auf der Karte den Pfeil des Windes drehen; Boot, Anker und Köder ziehen. Die Zahlen folgen, und Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Longitudes and latitudes</source>
        <translation>Längen und Breiten</translation>
    </message>
    <message>
        <source>How strongly</source>
        <translation>Wie kräftig</translation>
    </message>
    <message>
        <source>Show the hints again</source>
        <translation>Hinweise wieder zeigen</translation>
    </message>
    <message>
        <source>days differ by %1, %2</source>
        <translation>Tage weichen um %1 ab, %2</translation>
    </message>
    <message>
        <source>A right click on the chart offers what can be done at that place. F1 tells about the step that is open.</source>
        <translation>Ein Rechtsklick auf die Karte bietet an, was an dieser Stelle zu tun ist. F1 erzählt vom offenen Schritt.</translation>
    </message>
    <message>
        <source>By force...</source>
        <translation>Nach Stärke …</translation>
    </message>
    <message>
        <source>Choose the wind&apos;s force</source>
        <translation>Die Windstärke wählen</translation>
    </message>
    <message>
        <source>F%1, %2</source>
        <translation>F%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, %3 to %4</source>
        <translation>%1, %2, %3 bis %4</translation>
    </message>
    <message>
        <source>above the water</source>
        <translation>über dem Wasser</translation>
    </message>
    <message>
        <source>with a wrong check sum</source>
        <translation>mit falscher Prüfsumme</translation>
    </message>
    <message>
        <source>with a position that cannot be read</source>
        <translation>mit unlesbarer Position</translation>
    </message>
    <message>
        <source>with a time that cannot be read</source>
        <translation>mit unlesbarer Zeit</translation>
    </message>
    <message>
        <source>with an XML entity, which is not followed</source>
        <translation>mit einer XML-Entität, der nicht gefolgt wird</translation>
    </message>
    <message>
        <source>with a depth that cannot be</source>
        <translation>mit unmöglicher Tiefe</translation>
    </message>
    <message>
        <source>with a height that cannot be</source>
        <translation>mit unmöglicher Höhe</translation>
    </message>
    <message>
        <source>with a time that cannot be</source>
        <translation>mit unmöglicher Zeit</translation>
    </message>
    <message>
        <source>with a depth below nought</source>
        <translation>mit einer Tiefe unter null</translation>
    </message>
    <message>
        <source>with a height below nought</source>
        <translation>mit einer Höhe unter null</translation>
    </message>
    <message>
        <source>without a day</source>
        <translation>ohne Tag</translation>
    </message>
    <message>
        <source>without a depth</source>
        <translation>ohne Tiefe</translation>
    </message>
    <message>
        <source>without a position</source>
        <translation>ohne Position</translation>
    </message>
    <message>
        <source>without the number of a stay</source>
        <translation>ohne Nummer eines Ansitzes</translation>
    </message>
    <message>
        <source>of a stay that is not there</source>
        <translation>zu einem Ansitz, den es nicht gibt</translation>
    </message>
    <message>
        <source>with something that is no number</source>
        <translation>mit etwas, das keine Zahl ist</translation>
    </message>
    <message>
        <source>with a position that is not on the Earth</source>
        <translation>mit einer Position nicht auf der Erde</translation>
    </message>
    <message>
        <source>of a stay that was there before</source>
        <translation>zu einem Ansitz, der schon da war</translation>
    </message>
    <message>
        <source>that end too early</source>
        <translation>zu früh zu Ende</translation>
    </message>
    <message>
        <source>with an unknown kind of bottom</source>
        <translation>mit unbekanntem Grund</translation>
    </message>
    <message>
        <source>of an unknown kind</source>
        <translation>von unbekannter Art</translation>
    </message>
    <message>
        <source>without a fix of the receiver</source>
        <translation>ohne Ortung des Empfängers</translation>
    </message>
    <message>
        <source>with too few or too many columns</source>
        <translation>mit zu wenigen oder zu vielen Spalten</translation>
    </message>
    <message>
        <source>at 0° 0°, which a receiver without a fix says</source>
        <translation>bei 0° 0°, was ein Empfänger ohne Ortung sagt</translation>
    </message>
    <message>
        <source>%1 %2 (line %3: &apos;%4&apos;)</source>
        <translation>%1 %2 (Zeile %3: „%4“)</translation>
    </message>
</context>
</TS>

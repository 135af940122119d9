<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en_GB">
<context>
    <name>core</name>
    <message>
        <source>structure settings</source>
        <translation>Einstellungen der Struktur</translation>
    </message>
    <message>
        <source>the fine scale is out of its range</source>
        <translation>der feine Maßstab liegt außerhalb seines Bereichs</translation>
    </message>
    <message>
        <source>the broad scale is out of its range</source>
        <translation>der grobe Maßstab liegt außerhalb seines Bereichs</translation>
    </message>
    <message>
        <source>choose 20 to 500 m, more than the fine scale</source>
        <translation>20 bis 500 m wählen, mehr als der feine Maßstab</translation>
    </message>
    <message>
        <source>the slope of a drop-off is out of its range</source>
        <translation>die Neigung einer Kante liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>the hold of a drop-off is out of its range</source>
        <translation>der Halt einer Kante liegt außerhalb seines Bereichs</translation>
    </message>
    <message>
        <source>the rise of high ground is out of its range</source>
        <translation>die Höhe hohen Grundes liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>the least size of a zone is out of its range</source>
        <translation>die kleinste Größe einer Zone liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>choose 3 to 50 m</source>
        <translation>3 bis 50 m wählen</translation>
    </message>
    <message>
        <source>choose 1 to 200 percent</source>
        <translation>1 bis 200 Prozent wählen</translation>
    </message>
    <message>
        <source>choose 0.3 to 1</source>
        <translation>0,3 bis 1 wählen</translation>
    </message>
    <message>
        <source>choose 0.05 to 20 m</source>
        <translation>0,05 bis 20 m wählen</translation>
    </message>
    <message>
        <source>choose 0 to 10 ha</source>
        <translation>0 bis 10 ha wählen</translation>
    </message>
    <message>
        <source>the grids do not lie on the same frame</source>
        <translation>die Raster liegen nicht auf demselben Rahmen</translation>
    </message>
    <message>
        <source>draw the water anew</source>
        <translation>das Gewässer neu zeichnen</translation>
    </message>
    <message>
        <source>the drawn water holds no depth</source>
        <translation>das gezeichnete Gewässer hat keine Tiefe</translation>
    </message>
    <message>
        <source>draw it from soundings first</source>
        <translation>erst aus Lotungen zeichnen</translation>
    </message>
    <message>
        <source>finding structure</source>
        <translation>Struktur wird gesucht</translation>
    </message>
    <message>
        <source>there is no usable reference system of that number</source>
        <translation>es gibt kein brauchbares Bezugssystem mit dieser Nummer</translation>
    </message>
    <message>
        <source>look the number up in the EPSG register</source>
        <translation>die Nummer im EPSG-Verzeichnis nachschlagen</translation>
    </message>
    <message>
        <source>the reference system cannot be read</source>
        <translation>das Bezugssystem ist nicht lesbar</translation>
    </message>
    <message>
        <source>give the EPSG number of the coordinates instead</source>
        <translation>stattdessen die EPSG-Nummer der Koordinaten angeben</translation>
    </message>
    <message>
        <source>it is no picture that can be read</source>
        <translation>es ist kein lesbares Bild</translation>
    </message>
    <message>
        <source>give the photograph as the camera saved it</source>
        <translation>das Foto geben, wie die Kamera es gespeichert hat</translation>
    </message>
    <message>
        <source>give a GeoTIFF, a JPEG with its world file or the like</source>
        <translation>ein GeoTIFF, ein JPEG mit World-Datei oder dergleichen geben</translation>
    </message>
    <message>
        <source>the picture does not say where on the Earth it lies</source>
        <translation>das Bild sagt nicht, wo auf der Erde es liegt</translation>
    </message>
    <message>
        <source>give a georeferenced one: a GeoTIFF, or its world file beside it</source>
        <translation>eines mit Koordinaten geben: ein GeoTIFF oder die World-Datei daneben</translation>
    </message>
    <message>
        <source>the picture has coordinates but does not say of which reference system</source>
        <translation>das Bild hat Koordinaten, sagt aber nicht, in welchem Bezugssystem</translation>
    </message>
    <message>
        <source>put its .prj file beside it, or save it as GeoTIFF</source>
        <translation>die .prj-Datei danebenlegen oder als GeoTIFF speichern</translation>
    </message>
    <message>
        <source>the window has no pixels, or too many</source>
        <translation>das Fenster hat keine Bildpunkte oder zu viele</translation>
    </message>
    <message>
        <source>ask for what can be seen</source>
        <translation>verlangen, was zu sehen ist</translation>
    </message>
    <message>
        <source>the picture's place on the Earth cannot be told</source>
        <translation>wo auf der Erde das Bild liegt, ist nicht zu sagen</translation>
    </message>
    <message>
        <source>save it as GeoTIFF in WGS 84</source>
        <translation>als GeoTIFF in WGS 84 speichern</translation>
    </message>
    <message>
        <source>the picture breaks off or is damaged</source>
        <translation>das Bild bricht ab oder ist beschädigt</translation>
    </message>
    <message>
        <source>get a whole copy of it</source>
        <translation>eine vollständige Kopie besorgen</translation>
    </message>
    <message>
        <source>the grid's values do not fill its columns and rows</source>
        <translation>die Werte des Rasters füllen seine Spalten und Zeilen nicht</translation>
    </message>
    <message>
        <source>{} x {} cells, {} values</source>
        <translation>{} x {} Zellen, {} Werte</translation>
    </message>
    <message>
        <source>draw the water again</source>
        <translation>das Gewässer noch einmal zeichnen</translation>
    </message>
    <message>
        <source>the grid cannot be written</source>
        <translation>das Raster lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>check that the folder is there and has room</source>
        <translation>prüfen, ob der Ordner da ist und Platz hat</translation>
    </message>
    <message>
        <source>it is no raster that can be read</source>
        <translation>es ist kein lesbares Raster</translation>
    </message>
    <message>
        <source>give a GeoTIFF, an ASCII grid or the like</source>
        <translation>ein GeoTIFF, ein ASCII-Raster oder dergleichen geben</translation>
    </message>
    <message>
        <source>it has {} x {} cells, more than can be held</source>
        <translation>es hat {} x {} Zellen, mehr als zu halten sind</translation>
    </message>
    <message>
        <source>cut the part around the water out of it</source>
        <translation>den Teil um das Gewässer herausschneiden</translation>
    </message>
    <message>
        <source>the raster breaks off or is damaged</source>
        <translation>das Raster bricht ab oder ist beschädigt</translation>
    </message>
    <message>
        <source>%s is not asked for</source>
        <translation>nach %s wird nicht gefragt</translation>
    </message>
    <message>
        <source>the contours cannot be traced</source>
        <translation>die Tiefenlinien lassen sich nicht ziehen</translation>
    </message>
    <message>
        <source>there is no reference system of that number</source>
        <translation>es gibt kein Bezugssystem mit dieser Nummer</translation>
    </message>
    <message>
        <source>its reference system cannot be brought to longitude and latitude</source>
        <translation>sein Bezugssystem lässt sich nicht auf Länge und Breite bringen</translation>
    </message>
    <message>
        <source>give the EPSG number of the coordinates</source>
        <translation>die EPSG-Nummer der Koordinaten angeben</translation>
    </message>
    <message>
        <source>it is no vector file that can be read</source>
        <translation>es ist keine lesbare Vektordatei</translation>
    </message>
    <message>
        <source>give a shapefile, GeoPackage, GeoJSON, KML or the like</source>
        <translation>ein Shapefile, GeoPackage, GeoJSON, KML oder dergleichen geben</translation>
    </message>
    <message>
        <source>it has no layer with geometry</source>
        <translation>sie hat keine Ebene mit Geometrie</translation>
    </message>
    <message>
        <source>give a file with points, lines or polygons</source>
        <translation>eine Datei mit Punkten, Linien oder Flächen geben</translation>
    </message>
    <message>
        <source>there is no layer of that number</source>
        <translation>es gibt keine Ebene mit dieser Nummer</translation>
    </message>
    <message>
        <source>take one of those that are listed</source>
        <translation>eine der aufgeführten nehmen</translation>
    </message>
    <message>
        <source>the file breaks off or is damaged</source>
        <translation>die Datei bricht ab oder ist beschädigt</translation>
    </message>
    <message>
        <source>the wanted size of a section must be between 0.01 and 1000 ha</source>
        <translation>die gewünschte Größe eines Abschnitts muss zwischen 0,01 und 1000 ha liegen</translation>
    </message>
    <message>
        <source>the program starts with 4 ha</source>
        <translation>das Programm beginnt mit 4 ha</translation>
    </message>
    <message>
        <source>a setting of the sections is out of its range</source>
        <translation>eine Einstellung der Abschnitte liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>take the usual ones</source>
        <translation>die üblichen nehmen</translation>
    </message>
    <message>
        <source>depths, water and closed water lie on different cells</source>
        <translation>Tiefen, Wasser und Sperrgebiete liegen auf verschiedenen Zellen</translation>
    </message>
    <message>
        <source>the wanted size of a section is smaller than four cells of {} m</source>
        <translation>die gewünschte Größe eines Abschnitts ist kleiner als vier Zellen von {} m</translation>
    </message>
    <message>
        <source>ask for larger sections or draw with smaller cells</source>
        <translation>größere Abschnitte verlangen oder mit kleineren Zellen zeichnen</translation>
    </message>
    <message>
        <source>all fishable water is closed</source>
        <translation>alles befischbare Wasser ist gesperrt</translation>
    </message>
    <message>
        <source>look at the house rules</source>
        <translation>die Gewässerordnung ansehen</translation>
    </message>
    <message>
        <source>all water is deeper than the limit of {:.3g} m, so nothing is left to fish</source>
        <translation>alles Wasser ist tiefer als die Grenztiefe von {} m, zu befischen bleibt nichts</translation>
    </message>
    <message>
        <source>choose a deeper limit</source>
        <translation>eine größere Grenztiefe wählen</translation>
    </message>
    <message>
        <source>Section {}</source>
        <translation>Abschnitt {}</translation>
    </message>
    <message>
        <source>two places are needed</source>
        <translation>zwei Stellen sind nötig</translation>
    </message>
    <message>
        <source>choose two sections</source>
        <translation>zwei Abschnitte wählen</translation>
    </message>
    <message>
        <source>one of the two places lies in no section</source>
        <translation>eine der beiden Stellen liegt in keinem Abschnitt</translation>
    </message>
    <message>
        <source>choose places inside the sections</source>
        <translation>Stellen in den Abschnitten wählen</translation>
    </message>
    <message>
        <source>the two places lie in one section already</source>
        <translation>beide Stellen liegen schon in einem Abschnitt</translation>
    </message>
    <message>
        <source>the two sections do not touch</source>
        <translation>die beiden Abschnitte berühren sich nicht</translation>
    </message>
    <message>
        <source>join sections that lie side by side</source>
        <translation>Abschnitte verbinden, die nebeneinander liegen</translation>
    </message>
    <message>
        <source>the line runs through no section</source>
        <translation>die Linie läuft durch keinen Abschnitt</translation>
    </message>
    <message>
        <source>draw it across the section to be cut</source>
        <translation>sie quer durch den Abschnitt ziehen, der geteilt werden soll</translation>
    </message>
    <message>
        <source>the line does not cut the section in two</source>
        <translation>die Linie teilt den Abschnitt nicht in zwei</translation>
    </message>
    <message>
        <source>draw it right across, from border to border or shore to shore</source>
        <translation>sie ganz hindurchziehen, von Grenze zu Grenze oder Ufer zu Ufer</translation>
    </message>
    <message>
        <source>the line cuts off too little to be a section</source>
        <translation>die Linie schneidet zu wenig für einen Abschnitt ab</translation>
    </message>
    <message>
        <source>draw it further inside the section</source>
        <translation>sie weiter innen ziehen</translation>
    </message>
    <message>
        <source>rates cannot be compared where one has no effort</source>
        <translation>Raten lassen sich nicht vergleichen, wo eine ohne Aufwand ist</translation>
    </message>
    <message>
        <source>compare groups that were both fished</source>
        <translation>Gruppen vergleichen, die beide befischt wurden</translation>
    </message>
    <message>
        <source>a setting for the hours is out of its range</source>
        <translation>eine Einstellung der Stunden liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>set it between the limits that its setting names</source>
        <translation>zwischen den Grenzen setzen, die die Einstellung nennt</translation>
    </message>
    <message>
        <source>whole water</source>
        <translation>ganzes Gewässer</translation>
    </message>
    <message>
        <source>the first day is after the last</source>
        <translation>der erste Tag liegt nach dem letzten</translation>
    </message>
    <message>
        <source>swap the two days</source>
        <translation>die beiden Tage tauschen</translation>
    </message>
    <message>
        <source>a setting for finding stays is out of its range</source>
        <translation>eine Einstellung der Suche nach Ansitzen liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>the track has fewer than two positions</source>
        <translation>die Spur hat weniger als zwei Positionen</translation>
    </message>
    <message>
        <source>give a track with positions and times of the day's fishing</source>
        <translation>eine Spur mit Positionen und Zeiten des Angeltages geben</translation>
    </message>
    <message>
        <source>finding stays</source>
        <translation>Ansitze werden gesucht</translation>
    </message>
    <message>
        <source>{} to {} °C</source>
        <translation>{} bis {} °C</translation>
    </message>
    <message>
        <source>{} to {} m</source>
        <translation>{} bis {} m</translation>
    </message>
    <message>
        <source>over {} m</source>
        <translation>über {} m</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>{} and {} more</source>
        <translation>{} und {} weitere</translation>
    </message>
    <message>
        <source>{} brought {} than the rest, by more than chance would make it.</source>
        <translation>{} brachte {} als der Rest, um mehr, als der Zufall macht.</translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>No {} differs from the rest more than chance would make it.</source>
        <translation>Nichts sticht vom Rest um mehr ab, als der Zufall macht ({}).</translation>
    </message>
    <message>
        <source>Too little tried to tell, less than one fish to be expected: {} ({} of {} {}s).</source>
        <translation>Zu wenig versucht, um etwas zu sagen, weniger als ein Fisch zu erwarten: {} ({} von {}, nach {}).</translation>
    </message>
    <message>
        <source>Fish under "{}" have no effort of their own: they count in the whole only.</source>
        <translation>Fische unter „{}“ haben keinen eigenen Aufwand: sie zählen nur im Ganzen.</translation>
    </message>
    <message>
        <source>{} {} with {} fish left out: how many rods were out, or for how long, is not noted.</source>
        <translation>{} {} mit {} Fischen ausgelassen: wie viele Ruten aus waren oder wie lange, ist nicht notiert.</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>Ansitz</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>Ansitze</translation>
    </message>
    <message>
        <source>No stay was logged in this time.</source>
        <translation>In dieser Zeit ist kein Ansitz eingetragen.</translation>
    </message>
    <message>
        <source>The stays have no length: enter when each began and ended.</source>
        <translation>Die Ansitze haben keine Dauer: eintragen, wann jeder begann und endete.</translation>
    </message>
    <message>
        <source>No fish counted: the upper limits alone say something.</source>
        <translation>Kein Fisch gezählt: nur die oberen Grenzen sagen etwas.</translation>
    </message>
    <message>
        <source>{} of {} fish came in one stay: one good hour can make a rate.</source>
        <translation>{} von {} Fischen kamen in einem Ansitz: eine gute Stunde kann eine Rate machen.</translation>
    </message>
    <message>
        <source>Fish without a weight are left out: {}.</source>
        <translation>Fische ohne Gewicht sind ausgelassen: {}.</translation>
    </message>
    <message>
        <source>Runs count every take, since a lost one has no species or weight.</source>
        <translation>Bisse zählen alle, denn ein verlorener hat weder Art noch Gewicht.</translation>
    </message>
    <message>
        <source>how much groups are thought to differ is out of its range</source>
        <translation>wie sehr Gruppen sich unterscheiden sollen, liegt außerhalb seines Bereichs</translation>
    </message>
    <message>
        <source>set it between 0.1 and 3</source>
        <translation>zwischen 0,1 und 3 setzen</translation>
    </message>
    <message>
        <source>nothing has been fished yet</source>
        <translation>noch nichts ist befischt</translation>
    </message>
    <message>
        <source>enter a stay first</source>
        <translation>erst einen Ansitz eintragen</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>der Tag</translation>
    </message>
    <message>
        <source>the day ends before it starts</source>
        <translation>der Tag endet, bevor er beginnt</translation>
    </message>
    <message>
        <source>choose a later end</source>
        <translation>ein späteres Ende wählen</translation>
    </message>
    <message>
        <source>the boat would never arrive</source>
        <translation>das Boot käme nie an</translation>
    </message>
    <message>
        <source>choose a boat speed of 0.3 to 8 m/s</source>
        <translation>eine Bootsgeschwindigkeit von 0,3 bis 8 m/s wählen</translation>
    </message>
    <message>
        <source>the least stay is out of its range</source>
        <translation>die kürzeste Dauer liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>choose 5 minutes to 8 hours</source>
        <translation>5 Minuten bis 8 Stunden wählen</translation>
    </message>
    <message>
        <source>the time at the ropes is out of its range</source>
        <translation>die Zeit an den Leinen liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>choose 0 to 2 hours</source>
        <translation>0 bis 2 Stunden wählen</translation>
    </message>
    <message>
        <source>the stay is out of its range</source>
        <translation>die Dauer liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>choose 5 minutes to 12 hours</source>
        <translation>5 Minuten bis 12 Stunden wählen</translation>
    </message>
    <message>
        <source>an exact order of so many stops takes too long</source>
        <translation>eine genaue Reihenfolge so vieler Halte dauert zu lange</translation>
    </message>
    <message>
        <source>choose up to 14</source>
        <translation>höchstens 14 wählen</translation>
    </message>
    <message>
        <source>the distances do not fit the marks</source>
        <translation>die Entfernungen passen nicht zu den Plätzen</translation>
    </message>
    <message>
        <source>give one for each pair of marks</source>
        <translation>eine für jedes Paar von Plätzen geben</translation>
    </message>
    <message>
        <source>the order by hand does not fit the marks</source>
        <translation>die Reihenfolge von Hand passt nicht zu den Plätzen</translation>
    </message>
    <message>
        <source>give each mark once</source>
        <translation>jeden Platz einmal nennen</translation>
    </message>
    <message>
        <source>choose water that is open</source>
        <translation>freies Wasser wählen</translation>
    </message>
    <message>
        <source>wait for more water, or draw more of it</source>
        <translation>auf mehr Wasser warten oder mehr davon zeichnen</translation>
    </message>
    <message>
        <source>take a shorter boat, or draw more of the water</source>
        <translation>ein kürzeres Boot nehmen oder mehr vom Gewässer zeichnen</translation>
    </message>
    <message>
        <source>take longer ropes, or a smaller scope</source>
        <translation>längere Leinen oder einen kleineren Leinenfaktor nehmen</translation>
    </message>
    <message>
        <source>stay ashore in this wind, or plan for another</source>
        <translation>bei diesem Wind an Land bleiben oder für einen anderen planen</translation>
    </message>
    <message>
        <source>lift a ban</source>
        <translation>einen Ausschluss aufheben</translation>
    </message>
    <message>
        <source>draw more of the water</source>
        <translation>mehr vom Gewässer zeichnen</translation>
    </message>
    <message>
        <source>{:.2f} ha {}</source>
        <translation>{} ha {}</translation>
    </message>
    <message>
        <source>wherever the boat could lie you have banned the water</source>
        <translation>wo immer das Boot liegen könnte, ist das Wasser ausgeschlossen</translation>
    </message>
    <message>
        <source>wherever the boat could lie the waves are higher than {:.2f} m, too rough for an open boat at anchor</source>
        <translation>wo immer das Boot liegen könnte, sind die Wellen höher als {} m, zu rau für ein offenes Boot vor Anker</translation>
    </message>
    <message>
        <source>there is no open water, deep enough to float and within the limit, with room to swing and within reach of the ropes</source>
        <translation>es gibt kein freies Wasser, tief genug zum Schwimmen und über der Grenztiefe, mit Raum zum Schwojen und in Reichweite der Leinen</translation>
    </message>
    <message>
        <source>a cast from 5 to 100 m</source>
        <translation>eine Wurfweite von 5 bis 100 m</translation>
    </message>
    <message>
        <source>a boat from 2 to 15 m long</source>
        <translation>ein Boot von 2 bis 15 m Länge</translation>
    </message>
    <message>
        <source>a wind from 0 to 60 m/s</source>
        <translation>einen Wind von 0 bis 60 m/s</translation>
    </message>
    <message>
        <source>water from -3 to 50 degrees Celsius</source>
        <translation>Wasser von -3 bis 50 Grad Celsius</translation>
    </message>
    <message>
        <source>from 1 to 1 million places tried in vain</source>
        <translation>1 bis 1 Million vergeblich versuchte Stellen</translation>
    </message>
    <message>
        <source>from 100 to 1 million places looked at</source>
        <translation>100 bis 1 Million angesehene Stellen</translation>
    </message>
    <message>
        <source>candidates from 0.1 to 4 casts apart</source>
        <translation>Anwärter 0,1 bis 4 Würfe auseinander</translation>
    </message>
    <message>
        <source>a least depth from 0.3 to 5 m</source>
        <translation>eine kleinste Tiefe von 0,3 bis 5 m</translation>
    </message>
    <message>
        <source>room from 0 to 5 boat lengths</source>
        <translation>Raum von 0 bis 5 Bootslängen</translation>
    </message>
    <message>
        <source>roughest waves from 0.05 to 5 m</source>
        <translation>raueste Wellen von 0,05 bis 5 m</translation>
    </message>
    <message>
        <source>a steepest bottom from 0.1 to 3</source>
        <translation>einen steilsten Grund von 0,1 bis 3</translation>
    </message>
    <message>
        <source>a steep bottom from 0.02 to 3</source>
        <translation>einen steilen Grund von 0,02 bis 3</translation>
    </message>
    <message>
        <source>from 0, what is known, to 1, new water</source>
        <translation>von 0, Bekanntes, bis 1, neues Wasser</translation>
    </message>
    <message>
        <source>marks cannot be proposed so</source>
        <translation>so lassen sich keine Plätze vorschlagen</translation>
    </message>
    <message>
        <source>choose {}</source>
        <translation>{} wählen</translation>
    </message>
    <message>
        <source>marks from 0 to 20 casts apart</source>
        <translation>Plätze 0 bis 20 Würfe auseinander</translation>
    </message>
    <message>
        <source>0 or more marks in a section</source>
        <translation>0 oder mehr Plätze in einem Abschnitt</translation>
    </message>
    <message>
        <source>an exact list of up to 24 candidates</source>
        <translation>eine genaue Liste von höchstens 24 Anwärtern</translation>
    </message>
    <message>
        <source>marks cannot be ranked so</source>
        <translation>so lassen sich Plätze nicht ordnen</translation>
    </message>
    <message>
        <source>no place is left that is open, on the water and within the limit</source>
        <translation>keine Stelle bleibt, die frei ist, auf dem Wasser und über der Grenztiefe</translation>
    </message>
    <message>
        <source>choose a deeper limit, or another wind</source>
        <translation>eine größere Grenztiefe oder einen anderen Wind wählen</translation>
    </message>
    <message>
        <source>the nearest bait from 1 to 50 m, nearer than the cast</source>
        <translation>den nächsten Köder auf 1 bis 50 m, näher als die Wurfweite</translation>
    </message>
    <message>
        <source>an over-depth from 0 to 3 m</source>
        <translation>eine Mehrtiefe von 0 bis 3 m</translation>
    </message>
    <message>
        <source>an angle between lines from 5 to 90 degrees</source>
        <translation>einen Winkel zwischen Schnüren von 5 bis 90 Grad</translation>
    </message>
    <message>
        <source>baits from 0 to 50 m apart</source>
        <translation>Köder 0 bis 50 m auseinander</translation>
    </message>
    <message>
        <source>lines from 0 to 60 degrees off the ropes</source>
        <translation>Schnüre 0 bis 60 Grad neben den Leinen</translation>
    </message>
    <message>
        <source>baits in no less than 0.1 to 5 m</source>
        <translation>Köder in mindestens 0,1 bis 5 m</translation>
    </message>
    <message>
        <source>the rods cannot be set so</source>
        <translation>so lassen sich die Ruten nicht legen</translation>
    </message>
    <message>
        <source>the boat does not lie on water</source>
        <translation>das Boot liegt nicht auf Wasser</translation>
    </message>
    <message>
        <source>place the anchors first</source>
        <translation>erst die Anker legen</translation>
    </message>
    <message>
        <source>there is no time zone '{}'</source>
        <translation>es gibt keine Zeitzone „{}“</translation>
    </message>
    <message>
        <source>name an IANA zone such as Europe/London</source>
        <translation>eine IANA-Zone wie Europe/Berlin nennen</translation>
    </message>
    <message>
        <source>more than {} elements inside one another</source>
        <translation>mehr als {} Elemente ineinander</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>die Datei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>check that you may read it</source>
        <translation>prüfen, ob sie gelesen werden darf</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>copy it again from where it was recorded</source>
        <translation>sie noch einmal vom Aufzeichnungsgerät kopieren</translation>
    </message>
    <message>
        <source>there is no memory to read it</source>
        <translation>zum Lesen fehlt Speicher</translation>
    </message>
    <message>
        <source>close other programs</source>
        <translation>andere Programme schließen</translation>
    </message>
    <message>
        <source>reading the track</source>
        <translation>Spur wird gelesen</translation>
    </message>
    <message>
        <source>it is no GPX file</source>
        <translation>es ist keine GPX-Datei</translation>
    </message>
    <message>
        <source>it cannot be read as GPX: {}</source>
        <translation>sie ist als GPX nicht lesbar: {}</translation>
    </message>
    <message>
        <source>{}, line {}</source>
        <translation>{}, Zeile {}</translation>
    </message>
    <message>
        <source>export the track again as GPX 1.1</source>
        <translation>die Spur noch einmal als GPX 1.1 ausgeben</translation>
    </message>
    <message>
        <source>The file is not in UTF-8: it was read as Windows-1252.</source>
        <translation>Die Datei ist nicht in UTF-8: sie wurde als Windows-1252 gelesen.</translation>
    </message>
    <message>
        <source>column {}</source>
        <translation>Spalte {}</translation>
    </message>
    <message>
        <source>it has no column '{}'</source>
        <translation>sie hat keine Spalte „{}“</translation>
    </message>
    <message>
        <source>its first line must name the columns</source>
        <translation>ihre erste Zeile muss die Spalten nennen</translation>
    </message>
    <message>
        <source>Dates like {} were read with the day first: nothing in the file says otherwise.</source>
        <translation>Daten wie {} wurden mit dem Tag zuerst gelesen: nichts in der Datei sagt etwas anderes.</translation>
    </message>
    <message>
        <source>Columns that are none of a log's are kept as they are: {}.</source>
        <translation>Spalten, die kein Fangbuch hat, bleiben, wie sie sind: {}.</translation>
    </message>
    <message>
        <source>Line {} is a header once more: what follows is read by it.</source>
        <translation>Zeile {} ist noch einmal ein Kopf: was folgt, wird danach gelesen.</translation>
    </message>
    <message>
        <source>Rows from line {} on are shorter than the header: what they lack is not known.</source>
        <translation>Ab Zeile {} sind die Zeilen kürzer als der Kopf: was fehlt, ist unbekannt.</translation>
    </message>
    <message>
        <source>B-12 soundings are as the boat measured them: look up the draft in the file's header</source>
        <translation>B-12-Lotungen sind, wie das Boot sie maß: den Tiefgang im Kopf der Datei nachsehen</translation>
    </message>
    <message>
        <source>read up to line {} only: {}</source>
        <translation>nur bis Zeile {} gelesen: {}</translation>
    </message>
    <message>
        <source>depths were taken from negative elevations</source>
        <translation>Tiefen wurden aus negativen Höhen genommen</translation>
    </message>
    <message>
        <source>the grid holds no depths</source>
        <translation>das Raster enthält keine Tiefen</translation>
    </message>
    <message>
        <source>give a grid of depths in metres</source>
        <translation>ein Raster mit Tiefen in Metern geben</translation>
    </message>
    <message>
        <source>its values lie between {:.4g} and {:.4g}: heights of the bottom, no depths</source>
        <translation>seine Werte liegen zwischen {} und {}: Höhen des Grundes, keine Tiefen</translation>
    </message>
    <message>
        <source>take each from the height of the water's surface, and give that grid</source>
        <translation>jeden von der Höhe des Wasserspiegels abziehen und dieses Raster geben</translation>
    </message>
    <message>
        <source>the grid does not say in which system its coordinates are</source>
        <translation>das Raster sagt nicht, in welchem System seine Koordinaten sind</translation>
    </message>
    <message>
        <source>choose the system of coordinates (EPSG number)</source>
        <translation>das Koordinatensystem wählen (EPSG-Nummer)</translation>
    </message>
    <message>
        <source>one cell in {} was taken, in every direction</source>
        <translation>eine Zelle von {} wurde genommen, in jeder Richtung</translation>
    </message>
    <message>
        <source>it is a picture and holds no depths</source>
        <translation>es ist ein Bild und enthält keine Tiefen</translation>
    </message>
    <message>
        <source>lay it under the chart as a backdrop, in the step Shoreline</source>
        <translation>als Unterlage unter die Karte legen, im Schritt Uferlinie</translation>
    </message>
    <message>
        <source>a corner is no pair of longitude and latitude</source>
        <translation>eine Ecke ist kein Paar aus Länge und Breite</translation>
    </message>
    <message>
        <source>a corner is not on the Earth</source>
        <translation>eine Ecke liegt nicht auf der Erde</translation>
    </message>
    <message>
        <source>a ring has fewer than three corners</source>
        <translation>ein Ring hat weniger als drei Ecken</translation>
    </message>
    <message>
        <source>a polygon has no ring</source>
        <translation>eine Fläche hat keinen Ring</translation>
    </message>
    <message>
        <source>closed_waters, entry {}</source>
        <translation>closed_waters, Eintrag {}</translation>
    </message>
    <message>
        <source>closed water {}</source>
        <translation>Sperrgebiet {}</translation>
    </message>
    <message>
        <source>its geometry is no Polygon and no MultiPolygon</source>
        <translation>seine Geometrie ist kein Polygon und kein MultiPolygon</translation>
    </message>
    <message>
        <source>'{}' is no MM-DD</source>
        <translation>„{}“ ist kein MM-TT</translation>
    </message>
    <message>
        <source>it is no whole number from {} to {}</source>
        <translation>es ist keine ganze Zahl von {} bis {}</translation>
    </message>
    <message>
        <source>put that entry right</source>
        <translation>diesen Eintrag berichtigen</translation>
    </message>
    <message>
        <source>the house rules cannot be read ({})</source>
        <translation>die Gewässerordnung ist nicht lesbar ({})</translation>
    </message>
    <message>
        <source>give JSON as the sample survey's house-rules.json has it</source>
        <translation>JSON geben, wie house-rules.json des Beispiels es hat</translation>
    </message>
    <message>
        <source>reading the lead line</source>
        <translation>Handlot wird gelesen</translation>
    </message>
    <message>
        <source>it has no usable row: {}</source>
        <translation>sie hat keine brauchbare Zeile: {}</translation>
    </message>
    <message>
        <source>give rows of lon, lat, depth_m and bottom</source>
        <translation>Zeilen mit lon, lat, depth_m und bottom geben</translation>
    </message>
    <message>
        <source>Stays of which no end is known count in no rate: {}.</source>
        <translation>Ansitze ohne bekanntes Ende zählen in keiner Rate: {}.</translation>
    </message>
    <message>
        <source>reading the log</source>
        <translation>Fangbuch wird gelesen</translation>
    </message>
    <message>
        <source>it has no usable stay: {}</source>
        <translation>sie hat keinen brauchbaren Ansitz: {}</translation>
    </message>
    <message>
        <source>give one row for each stay with start, end, lon and lat</source>
        <translation>eine Zeile je Ansitz mit start, end, lon und lat geben</translation>
    </message>
    <message>
        <source>the log begins on {}: if that should be {}, the receiver's count of GPS weeks has run over (1024 weeks); times were left as they are</source>
        <translation>die Aufzeichnung beginnt am {}: sollte es {} sein, ist der GPS-Wochenzähler des Empfängers übergelaufen (1024 Wochen); die Zeiten blieben, wie sie sind</translation>
    </message>
    <message>
        <source>the depths count from the keel: give the keel's depth as draft</source>
        <translation>die Tiefen zählen ab Kiel: die Tiefe des Kiels als Tiefgang angeben</translation>
    </message>
    <message>
        <source>the log has no date: its soundings are without time</source>
        <translation>die Aufzeichnung hat kein Datum: ihre Lotungen sind ohne Zeit</translation>
    </message>
    <message>
        <source>the log has no depths from {}</source>
        <translation>die Aufzeichnung hat keine Tiefen von {}</translation>
    </message>
    <message>
        <source>it has no depths at all</source>
        <translation>sie hat gar keine Tiefen</translation>
    </message>
    <message>
        <source>choose one of {}</source>
        <translation>eines wählen: {}</translation>
    </message>
    <message>
        <source>choose one of: {}</source>
        <translation>eines wählen: {}</translation>
    </message>
    <message>
        <source>the shore has a corner at longitude {}, latitude {}, which is not on the Earth</source>
        <translation>das Ufer hat eine Ecke bei Länge {}, Breite {}, die nicht auf der Erde liegt</translation>
    </message>
    <message>
        <source>longitude and latitude look swapped: turn them round</source>
        <translation>Länge und Breite scheinen vertauscht: tauschen</translation>
    </message>
    <message>
        <source>give the EPSG number of its coordinates</source>
        <translation>die EPSG-Nummer ihrer Koordinaten angeben</translation>
    </message>
    <message>
        <source>reading the shore</source>
        <translation>Ufer wird gelesen</translation>
    </message>
    <message>
        <source>it has {} rings, more than the shore of one water has</source>
        <translation>sie hat {} Ringe, mehr als das Ufer eines Gewässers</translation>
    </message>
    <message>
        <source>cut out the water that you fish</source>
        <translation>das befischte Gewässer ausschneiden</translation>
    </message>
    <message>
        <source>it has neither polygons nor lines</source>
        <translation>sie hat weder Flächen noch Linien</translation>
    </message>
    <message>
        <source>none of its lines comes back to where it began</source>
        <translation>keine ihrer Linien kehrt an ihren Anfang zurück</translation>
    </message>
    <message>
        <source>give the shore as a polygon, or as a line all around the water</source>
        <translation>das Ufer als Fläche geben oder als Linie rund um das Gewässer</translation>
    </message>
    <message>
        <source>the file holds nothing but blanks</source>
        <translation>die Datei enthält nur Leerzeichen</translation>
    </message>
    <message>
        <source>it is binary and of no kind that is known</source>
        <translation>sie ist binär und von keiner bekannten Art</translation>
    </message>
    <message>
        <source>give an NMEA 0183 log, GPX, a text table, or a vector file</source>
        <translation>eine NMEA-0183-Aufzeichnung, GPX, eine Texttabelle oder eine Vektordatei geben</translation>
    </message>
    <message>
        <source>it is no text and no other kind of file that is known</source>
        <translation>sie ist kein Text und keine andere bekannte Art von Datei</translation>
    </message>
    <message>
        <source>it has no rows</source>
        <translation>sie hat keine Zeilen</translation>
    </message>
    <message>
        <source>choose the file with the soundings</source>
        <translation>die Datei mit den Lotungen wählen</translation>
    </message>
    <message>
        <source>no column of {} can be told among: {}</source>
        <translation>keine Spalte für {} ist zu erkennen unter: {}</translation>
    </message>
    <message>
        <source>choose the columns of x, y and depth</source>
        <translation>die Spalten von x, y und Tiefe wählen</translation>
    </message>
    <message>
        <source>without a header, columns {}, {} and {} were taken as longitude, latitude and depth</source>
        <translation>ohne Kopf galten die Spalten {}, {} und {} als Länge, Breite und Tiefe</translation>
    </message>
    <message>
        <source>its times have no date: its soundings are without time</source>
        <translation>ihre Zeiten haben kein Datum: ihre Lotungen sind ohne Zeit</translation>
    </message>
    <message>
        <source>the depth column's name says {}</source>
        <translation>der Name der Tiefenspalte sagt {}</translation>
    </message>
    <message>
        <source>its coordinates are no degrees and nothing tells their reference system</source>
        <translation>ihre Koordinaten sind keine Grad, und nichts nennt ihr Bezugssystem</translation>
    </message>
    <message>
        <source>give its EPSG number</source>
        <translation>seine EPSG-Nummer angeben</translation>
    </message>
    <message>
        <source>reading the table</source>
        <translation>Tabelle wird gelesen</translation>
    </message>
    <message>
        <source>its positions have no date</source>
        <translation>ihre Positionen haben kein Datum</translation>
    </message>
    <message>
        <source>record RMC or ZDA sentences too, which carry the date</source>
        <translation>auch RMC- oder ZDA-Sätze aufzeichnen, die das Datum tragen</translation>
    </message>
    <message>
        <source>it has no track point with a time</source>
        <translation>sie hat keinen Spurpunkt mit Zeit</translation>
    </message>
    <message>
        <source>export the track itself, with its times</source>
        <translation>die Spur selbst ausgeben, mit ihren Zeiten</translation>
    </message>
    <message>
        <source>the place is not on the Earth</source>
        <translation>der Ort liegt nicht auf der Erde</translation>
    </message>
    <message>
        <source>{} is not between {} and {}</source>
        <translation>{} liegt nicht zwischen {} und {}</translation>
    </message>
    <message>
        <source>the water's facts cannot be read ({})</source>
        <translation>die Angaben zum Gewässer sind nicht lesbar ({})</translation>
    </message>
    <message>
        <source>give JSON as the sample survey's water.json has it</source>
        <translation>JSON geben, wie water.json des Beispiels es hat</translation>
    </message>
    <message>
        <source>{} makes no sense: '{}'</source>
        <translation>{} ergibt keinen Sinn: „{}“</translation>
    </message>
    <message>
        <source>put that number right, or leave the cell empty</source>
        <translation>diese Zahl berichtigen oder das Feld leer lassen</translation>
    </message>
    <message>
        <source>a day names no file</source>
        <translation>ein Tag nennt keine Datei</translation>
    </message>
    <message>
        <source>name the file of its soundings</source>
        <translation>die Datei seiner Lotungen nennen</translation>
    </message>
    <message>
        <source>it has no day</source>
        <translation>sie hat keinen Tag</translation>
    </message>
    <message>
        <source>give one row for each day, with a cell for each column</source>
        <translation>eine Zeile je Tag geben, mit einem Feld je Spalte</translation>
    </message>
    <message>
        <source>reading the weed notes</source>
        <translation>Krautnotizen werden gelesen</translation>
    </message>
    <message>
        <source>{} x {} (first: line {} '{}')</source>
        <translation>{} x {} (zuerst: Zeile {} „{}“)</translation>
    </message>
    <message>
        <source>{} of {} depths are negative: taken as heights, so that the sign was turned</source>
        <translation>{} von {} Tiefen sind negativ: sie galten als Höhen, das Vorzeichen wurde gedreht</translation>
    </message>
    <message>
        <source>longitude and latitude were swapped in the file; they were turned round</source>
        <translation>Länge und Breite waren in der Datei vertauscht; sie wurden getauscht</translation>
    </message>
    <message>
        <source>half of the depths are more than {} m: if the file is in feet, choose feet as its unit</source>
        <translation>die Hälfte der Tiefen ist größer als {} m: ist die Datei in Fuß, Fuß als Einheit wählen</translation>
    </message>
    <message>
        <source>the {} has no position and no depth</source>
        <translation>ohne Position und ohne Tiefe: {}</translation>
    </message>
    <message>
        <source>choose the file that was recorded while sounding</source>
        <translation>die beim Loten aufgezeichnete Datei wählen</translation>
    </message>
    <message>
        <source>the {} has {} positions but no depth</source>
        <translation>{} mit {} Positionen, aber ohne Tiefe</translation>
    </message>
    <message>
        <source>record with the sounder switched on and sending its depth, or choose where the depth stands</source>
        <translation>mit eingeschaltetem und sendendem Echolot aufzeichnen oder wählen, wo die Tiefe steht</translation>
    </message>
    <message>
        <source>the {} has {} depths but no position</source>
        <translation>{} mit {} Tiefen, aber ohne Position</translation>
    </message>
    <message>
        <source>record with the positions too, or choose where they stand</source>
        <translation>auch die Positionen aufzeichnen oder wählen, wo sie stehen</translation>
    </message>
    <message>
        <source>none of the {} rows of the {} can be used</source>
        <translation>keine der {} Zeilen ist brauchbar: {}</translation>
    </message>
    <message>
        <source>choose the columns, the unit and the reference system that the file has</source>
        <translation>Spalten, Einheit und Bezugssystem der Datei wählen</translation>
    </message>
    <message>
        <source>text table</source>
        <translation>Texttabelle</translation>
    </message>
    <message>
        <source>vector file</source>
        <translation>Vektordatei</translation>
    </message>
    <message>
        <source>depth grid</source>
        <translation>Tiefenraster</translation>
    </message>
    <message>
        <source>there is no column '{}'</source>
        <translation>es gibt keine Spalte „{}“</translation>
    </message>
    <message>
        <source>its first line must name the columns, with commas between</source>
        <translation>ihre erste Zeile muss die Spalten nennen, mit Kommas dazwischen</translation>
    </message>
    <message>
        <source>point {} of {}</source>
        <translation>Punkt {} von {}</translation>
    </message>
    <message>
        <source>reading the soundings</source>
        <translation>Lotungen werden gelesen</translation>
    </message>
    <message>
        <source>read in part only: {}</source>
        <translation>nur zum Teil gelesen: {}</translation>
    </message>
    <message>
        <source>no layer has a field '{}'</source>
        <translation>keine Ebene hat ein Feld „{}“</translation>
    </message>
    <message>
        <source>choose the right file</source>
        <translation>die richtige Datei wählen</translation>
    </message>
    <message>
        <source>the shore encloses no water</source>
        <translation>das Ufer schließt kein Wasser ein</translation>
    </message>
    <message>
        <source>give a closed ring of at least three different points</source>
        <translation>einen geschlossenen Ring aus mindestens drei verschiedenen Punkten geben</translation>
    </message>
    <message>
        <source>the shore crosses itself</source>
        <translation>das Ufer kreuzt sich selbst</translation>
    </message>
    <message>
        <source>longitude {:.6f}, latitude {:.6f}</source>
        <translation>Länge {}, Breite {}</translation>
    </message>
    <message>
        <source>longitude {:.5f}, latitude {:.5f}</source>
        <translation>Länge {}, Breite {}</translation>
    </message>
    <message>
        <source>mend the shoreline there</source>
        <translation>die Uferlinie dort ausbessern</translation>
    </message>
    <message>
        <source>no flat frame can be laid at longitude {}, latitude {}</source>
        <translation>bei Länge {}, Breite {} lässt sich kein ebener Rahmen anlegen</translation>
    </message>
    <message>
        <source>check the shore: longitude first, then latitude, in degrees</source>
        <translation>das Ufer prüfen: erst Länge, dann Breite, in Grad</translation>
    </message>
    <message>
        <source>there is no position to lay the water's frame on</source>
        <translation>es gibt keine Position, um den Rahmen des Gewässers anzulegen</translation>
    </message>
    <message>
        <source>longitude {}, latitude {} is not on the Earth</source>
        <translation>Länge {}, Breite {} liegt nicht auf der Erde</translation>
    </message>
    <message>
        <source>give degrees, or name the coordinate system of the file</source>
        <translation>Grad geben oder das Koordinatensystem der Datei nennen</translation>
    </message>
    <message>
        <source>the positions spread over {:.1f} by {:.1f} degrees, too wide for one water</source>
        <translation>die Positionen verteilen sich über {} mal {} Grad, zu weit für ein Gewässer</translation>
    </message>
    <message>
        <source>check that all belong to one water</source>
        <translation>prüfen, ob alle zu einem Gewässer gehören</translation>
    </message>
    <message>
        <source>the water has neither a shoreline nor soundings</source>
        <translation>das Gewässer hat weder Uferlinie noch Lotungen</translation>
    </message>
    <message>
        <source>bring in a shoreline or soundings first</source>
        <translation>erst eine Uferlinie oder Lotungen einlesen</translation>
    </message>
    <message>
        <source>writing open formats</source>
        <translation>offene Formate werden geschrieben</translation>
    </message>
    <message>
        <source>a row of {} points to nothing</source>
        <translation>eine Zeile von {} zeigt ins Leere</translation>
    </message>
    <message>
        <source>the file no longer says that it is a GeoPackage 1.3</source>
        <translation>die Datei sagt nicht mehr, dass sie ein GeoPackage 1.3 ist</translation>
    </message>
    <message>
        <source>the layer {} is gone</source>
        <translation>die Ebene {} fehlt</translation>
    </message>
    <message>
        <source>the stay of {} ends before it starts</source>
        <translation>der Ansitz vom {} endet, bevor er beginnt</translation>
    </message>
    <message>
        <source>the stay of {} has no rod</source>
        <translation>der Ansitz vom {} hat keine Rute</translation>
    </message>
    <message>
        <source>{} soundings belong to no survey day</source>
        <translation>{} Lotungen gehören zu keinem Lotungstag</translation>
    </message>
    <message>
        <source>the kept drawing is not whole; it will be made again</source>
        <translation>die behaltene Zeichnung ist unvollständig; sie wird neu gemacht</translation>
    </message>
    <message>
        <source>checking the water file</source>
        <translation>Gewässerdatei wird geprüft</translation>
    </message>
    <message>
        <source>the water file is damaged</source>
        <translation>die Gewässerdatei ist beschädigt</translation>
    </message>
    <message>
        <source>take a copy that is whole</source>
        <translation>eine heile Kopie nehmen</translation>
    </message>
    <message>
        <source>the water file's tables are not as they should be ({})</source>
        <translation>die Tabellen der Gewässerdatei sind nicht, wie sie sein sollen ({})</translation>
    </message>
    <message>
        <source>the disk is full; nothing was changed</source>
        <translation>der Datenträger ist voll; nichts wurde geändert</translation>
    </message>
    <message>
        <source>make room and save again</source>
        <translation>Platz schaffen und noch einmal speichern</translation>
    </message>
    <message>
        <source>the water file was moved or deleted while it was open; nothing was saved</source>
        <translation>die Gewässerdatei wurde verschoben oder gelöscht, während sie offen war; nichts wurde gespeichert</translation>
    </message>
    <message>
        <source>open it where it is now, or save under another name</source>
        <translation>sie öffnen, wo sie jetzt ist, oder unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>the water file may only be read</source>
        <translation>die Gewässerdatei darf nur gelesen werden</translation>
    </message>
    <message>
        <source>allow writing to the file and its folder, or save under another name</source>
        <translation>Schreiben in Datei und Ordner erlauben oder unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>another program is using the water file</source>
        <translation>ein anderes Programm benutzt die Gewässerdatei</translation>
    </message>
    <message>
        <source>close it there and try again</source>
        <translation>dort schließen und noch einmal versuchen</translation>
    </message>
    <message>
        <source>the water file cannot be opened</source>
        <translation>die Gewässerdatei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>check that the folder is there and that you may write in it</source>
        <translation>prüfen, ob der Ordner da ist und beschrieben werden darf</translation>
    </message>
    <message>
        <source>the water file cannot be read to its end</source>
        <translation>die Gewässerdatei lässt sich nicht bis zum Ende lesen</translation>
    </message>
    <message>
        <source>the disk does not take what is written; nothing was changed</source>
        <translation>der Datenträger nimmt das Geschriebene nicht an; nichts wurde geändert</translation>
    </message>
    <message>
        <source>check the disk and save again</source>
        <translation>den Datenträger prüfen und noch einmal speichern</translation>
    </message>
    <message>
        <source>the water file refuses a change ({}); nothing was changed</source>
        <translation>die Gewässerdatei verweigert eine Änderung ({}); nichts wurde geändert</translation>
    </message>
    <message>
        <source>save under another name</source>
        <translation>unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>check the name, and that you may read it</source>
        <translation>den Namen prüfen und ob sie gelesen werden darf</translation>
    </message>
    <message>
        <source>a question to the water file finds no end</source>
        <translation>eine Abfrage der Gewässerdatei findet kein Ende</translation>
    </message>
    <message>
        <source>a table of the water file has more rows than the file has room for</source>
        <translation>eine Tabelle der Gewässerdatei hat mehr Zeilen, als die Datei fasst</translation>
    </message>
    <message>
        <source>the water is just being saved</source>
        <translation>das Gewässer wird gerade gespeichert</translation>
    </message>
    <message>
        <source>try again</source>
        <translation>noch einmal versuchen</translation>
    </message>
    <message>
        <source>the damaged file cannot be kept beside</source>
        <translation>die beschädigte Datei lässt sich nicht danebenlegen</translation>
    </message>
    <message>
        <source>make room, or copy it away yourself</source>
        <translation>Platz schaffen oder sie selbst wegkopieren</translation>
    </message>
    <message>
        <source>the folder for copies cannot be made</source>
        <translation>der Ordner für Kopien lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>make room, or allow writing there</source>
        <translation>Platz schaffen oder dort Schreiben erlauben</translation>
    </message>
    <message>
        <source>survey day '{}' holds {} soundings instead of {}</source>
        <translation>Lotungstag „{}“ hat {} Lotungen statt {}</translation>
    </message>
    <message>
        <source>survey day '{}' speaks of sounding {} of {}</source>
        <translation>Lotungstag „{}“ spricht von Lotung {} von {}</translation>
    </message>
    <message>
        <source>survey day '{}' has no number of its own</source>
        <translation>Lotungstag „{}“ hat keine eigene Nummer</translation>
    </message>
    <message>
        <source>remove it and read its file again</source>
        <translation>ihn entfernen und seine Datei noch einmal lesen</translation>
    </message>
    <message>
        <source>depths cannot be counted in '{}'</source>
        <translation>Tiefen lassen sich nicht in „{}“ zählen</translation>
    </message>
    <message>
        <source>the bands cannot be: {}</source>
        <translation>die Stufen sind unmöglich: {}</translation>
    </message>
    <message>
        <source>a setting cannot be: {}</source>
        <translation>eine Einstellung ist unmöglich: {}</translation>
    </message>
    <message>
        <source>the water's frame cannot be: {}</source>
        <translation>der Rahmen des Gewässers ist unmöglich: {}</translation>
    </message>
    <message>
        <source>this machine knows no time zone '{}'</source>
        <translation>dieser Rechner kennt keine Zeitzone „{}“</translation>
    </message>
    <message>
        <source>install the time zone data (tzdata)</source>
        <translation>die Zeitzonendaten installieren (tzdata)</translation>
    </message>
    <message>
        <source>the log holds a fish without a stay</source>
        <translation>das Fangbuch enthält einen Fisch ohne Ansitz</translation>
    </message>
    <message>
        <source>there is no bottom named '{}'</source>
        <translation>es gibt keinen Grund namens „{}“</translation>
    </message>
    <message>
        <source>there is no weed growth named '{}'</source>
        <translation>es gibt keinen Krautwuchs namens „{}“</translation>
    </message>
    <message>
        <source>two sections numbered {}</source>
        <translation>zwei Abschnitte mit der Nummer {}</translation>
    </message>
    <message>
        <source>the plan's day '{}' is no day</source>
        <translation>der Tag des Plans „{}“ ist kein Tag</translation>
    </message>
    <message>
        <source>there is no change of sections named '{}'</source>
        <translation>es gibt keine Änderung der Abschnitte namens „{}“</translation>
    </message>
    <message>
        <source>the sheet's day '{}' is no day</source>
        <translation>der Tag des Blattes „{}“ ist kein Tag</translation>
    </message>
    <message>
        <source>what was laid by hand belongs to no mark</source>
        <translation>von Hand Gelegtes gehört zu keinem Platz</translation>
    </message>
    <message>
        <source>nothing of a mark is called '{}'</source>
        <translation>nichts an einem Platz heißt „{}“</translation>
    </message>
    <message>
        <source>there is no belief named '{}'</source>
        <translation>es gibt keine Annahme namens „{}“</translation>
    </message>
    <message>
        <source>'{}' is no time</source>
        <translation>„{}“ ist keine Zeit</translation>
    </message>
    <message>
        <source>a geometry cannot be read</source>
        <translation>eine Geometrie ist nicht lesbar</translation>
    </message>
    <message>
        <source>a place of {:g}, {:g} is not on the Earth</source>
        <translation>ein Ort {}, {} liegt nicht auf der Erde</translation>
    </message>
    <message>
        <source>{} is too great a number</source>
        <translation>{} ist eine zu große Zahl</translation>
    </message>
    <message>
        <source>{} is no position</source>
        <translation>{} ist keine Position</translation>
    </message>
    <message>
        <source>the value of {} is no number</source>
        <translation>der Wert von {} ist keine Zahl</translation>
    </message>
    <message>
        <source>the log holds other fields that cannot be read</source>
        <translation>das Fangbuch enthält weitere, nicht lesbare Felder</translation>
    </message>
    <message>
        <source>another program</source>
        <translation>ein anderes Programm</translation>
    </message>
    <message>
        <source>{} (process {} on {})</source>
        <translation>{} (Prozess {} auf {})</translation>
    </message>
    <message>
        <source>{:g} to {:g} can be</source>
        <translation>möglich ist {} bis {}</translation>
    </message>
    <message>
        <source>{} of {:g} cannot be kept, {}; nothing was changed</source>
        <translation>{} von {} kann nicht gespeichert werden, {}; nichts wurde geändert</translation>
    </message>
    <message>
        <source>correct the value and save again</source>
        <translation>den Wert berichtigen und noch einmal speichern</translation>
    </message>
    <message>
        <source>{} is {:g}, and {}</source>
        <translation>{} ist {}, und {}</translation>
    </message>
    <message>
        <source>the water file was moved or deleted while it was open</source>
        <translation>die Gewässerdatei wurde verschoben oder gelöscht, während sie offen war</translation>
    </message>
    <message>
        <source>open it where it is now</source>
        <translation>sie öffnen, wo sie jetzt ist</translation>
    </message>
    <message>
        <source>another program has saved this water since it was read; nothing of that was overwritten</source>
        <translation>ein anderes Programm hat dieses Gewässer seit dem Lesen gespeichert; nichts davon wurde überschrieben</translation>
    </message>
    <message>
        <source>open the water again and make the change there</source>
        <translation>das Gewässer neu öffnen und die Änderung dort machen</translation>
    </message>
    <message>
        <source>reading the water file</source>
        <translation>Gewässerdatei wird gelesen</translation>
    </message>
    <message>
        <source>saving the water file</source>
        <translation>Gewässerdatei wird gespeichert</translation>
    </message>
    <message>
        <source>saving what was found</source>
        <translation>Gefundenes wird gespeichert</translation>
    </message>
    <message>
        <source>a value that is not a number cannot be kept; nothing was changed</source>
        <translation>ein Wert, der keine Zahl ist, kann nicht gespeichert werden; nichts wurde geändert</translation>
    </message>
    <message>
        <source>column {} holds something that is no {}</source>
        <translation>Spalte {} enthält etwas anderes als: {}</translation>
    </message>
    <message>
        <source>whole number</source>
        <translation>ganze Zahl</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>row of bytes</source>
        <translation>Folge von Bytes</translation>
    </message>
    <message>
        <source>there is no such water file</source>
        <translation>diese Gewässerdatei gibt es nicht</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>den Namen prüfen</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei ist nicht lesbar</translation>
    </message>
    <message>
        <source>a newer version of Meremark keeps this water file</source>
        <translation>eine neuere Fassung von Meremark führt diese Gewässerdatei</translation>
    </message>
    <message>
        <source>open it with that version; nothing was changed</source>
        <translation>sie mit jener Fassung öffnen; nichts wurde geändert</translation>
    </message>
    <message>
        <source>this is no water file</source>
        <translation>das ist keine Gewässerdatei</translation>
    </message>
    <message>
        <source>give a file that Meremark made, or bring its soundings in as survey days</source>
        <translation>eine von Meremark gemachte Datei geben oder ihre Lotungen als Lotungstage einlesen</translation>
    </message>
    <message>
        <source>a file of this name is there already</source>
        <translation>eine Datei dieses Namens ist schon da</translation>
    </message>
    <message>
        <source>choose another name, or remove it first</source>
        <translation>einen anderen Namen wählen oder sie erst entfernen</translation>
    </message>
    <message>
        <source>{} has this water open</source>
        <translation>{} hat dieses Gewässer offen</translation>
    </message>
    <message>
        <source>close it there, then open it here again</source>
        <translation>dort schließen, dann hier wieder öffnen</translation>
    </message>
    <message>
        <source>the water was opened to be looked at; nothing was changed</source>
        <translation>das Gewässer ist nur zum Ansehen offen; nichts wurde geändert</translation>
    </message>
    <message>
        <source>open it for writing</source>
        <translation>zum Schreiben öffnen</translation>
    </message>
    <message>
        <source>the water file does not say which version wrote it</source>
        <translation>die Gewässerdatei sagt nicht, welche Fassung sie schrieb</translation>
    </message>
    <message>
        <source>calm</source>
        <translation>Flaute</translation>
    </message>
    <message>
        <source>light air</source>
        <translation>leiser Zug</translation>
    </message>
    <message>
        <source>light breeze</source>
        <translation>leichte Brise</translation>
    </message>
    <message>
        <source>gentle breeze</source>
        <translation>schwache Brise</translation>
    </message>
    <message>
        <source>moderate breeze</source>
        <translation>mäßige Brise</translation>
    </message>
    <message>
        <source>fresh breeze</source>
        <translation>frische Brise</translation>
    </message>
    <message>
        <source>strong breeze</source>
        <translation>starker Wind</translation>
    </message>
    <message>
        <source>near gale</source>
        <translation>steifer Wind</translation>
    </message>
    <message>
        <source>gale</source>
        <translation>stürmischer Wind</translation>
    </message>
    <message>
        <source>strong gale</source>
        <translation>Sturm</translation>
    </message>
    <message>
        <source>storm</source>
        <translation>schwerer Sturm</translation>
    </message>
    <message>
        <source>violent storm</source>
        <translation>orkanartiger Sturm</translation>
    </message>
    <message>
        <source>hurricane</source>
        <translation>Orkan</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>glatt</translation>
    </message>
    <message>
        <source>a ripple here and there</source>
        <translation>hier und da gekräuselt</translation>
    </message>
    <message>
        <source>ripples all over</source>
        <translation>überall gekräuselt</translation>
    </message>
    <message>
        <source>wavelets, the first crests break</source>
        <translation>kleine Wellen, erste Kämme brechen</translation>
    </message>
    <message>
        <source>small waves, some white horses</source>
        <translation>kleine Wellen, einzelne Schaumkronen</translation>
    </message>
    <message>
        <source>white horses everywhere</source>
        <translation>überall Schaumkronen</translation>
    </message>
    <message>
        <source>large waves for a lake, spray</source>
        <translation>große Wellen für einen See, Gischt</translation>
    </message>
    <message>
        <source>foam in streaks</source>
        <translation>Schaum in Streifen</translation>
    </message>
    <message>
        <source>high waves, spray blown off</source>
        <translation>hohe Wellen, Gischt verweht</translation>
    </message>
    <message>
        <source>no water for boats</source>
        <translation>kein Wasser für Boote</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
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
        <source>soft</source>
        <translation>weich</translation>
    </message>
    <message>
        <source>gravel</source>
        <translation>Kies</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>Fels</translation>
    </message>
    <message>
        <source>weed</source>
        <translation>Kraut</translation>
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
        <source>guess</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>drop-off</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>weed edge</source>
        <translation>Krautkante</translation>
    </message>
    <message>
        <source>weed bed</source>
        <translation>Krautfeld</translation>
    </message>
    <message>
        <source>feature</source>
        <translation>Berge und Löcher</translation>
    </message>
    <message>
        <source>windward</source>
        <translation>Wind darauf</translation>
    </message>
    <message>
        <source>shelter</source>
        <translation>Wellen</translation>
    </message>
    <message>
        <source>record</source>
        <translation>Fangbuch</translation>
    </message>
    <message>
        <source>less tried</source>
        <translation>selten befischt</translation>
    </message>
    <message>
        <source>trust</source>
        <translation>Tiefe bekannt</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>best of many</source>
        <translation>Bestes von vielen</translation>
    </message>
    <message>
        <source>section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>bait</source>
        <translation>Köder</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Art der Stelle</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>time since</source>
        <translation>Zeit seither</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Terrasse</translation>
    </message>
    <message>
        <source>plateau</source>
        <translation>Plateau</translation>
    </message>
    <message>
        <source>hump</source>
        <translation>Berg</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>Loch</translation>
    </message>
    <message>
        <source>trough</source>
        <translation>Rinne</translation>
    </message>
    <message>
        <source>spur</source>
        <translation>Sporn</translation>
    </message>
    <message>
        <source>saddle</source>
        <translation>Sattel</translation>
    </message>
    <message>
        <source>elsewhere</source>
        <translation>anderswo</translation>
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
        <source>closed</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>too shallow</source>
        <translation>zu flach</translation>
    </message>
    <message>
        <source>too deep</source>
        <translation>zu tief</translation>
    </message>
    <message>
        <source>no room</source>
        <translation>kein Raum</translation>
    </message>
    <message>
        <source>ropes too short</source>
        <translation>Leinen zu kurz</translation>
    </message>
    <message>
        <source>too rough</source>
        <translation>zu rau</translation>
    </message>
    <message>
        <source>banned</source>
        <translation>ausgeschlossen</translation>
    </message>
    <message>
        <source>too steep</source>
        <translation>zu steil</translation>
    </message>
    <message>
        <source>no anchors</source>
        <translation>keine Anker</translation>
    </message>
    <message>
        <source>the file cannot be written ({})</source>
        <translation>die Datei lässt sich nicht schreiben ({})</translation>
    </message>
    <message>
        <source>make room on the disk, or choose another place</source>
        <translation>Platz schaffen oder einen anderen Ort wählen</translation>
    </message>
    <message>
        <source>stopped before it was done</source>
        <translation>vor dem Ende angehalten</translation>
    </message>
    <message>
        <source>nothing was changed; start it again when you like</source>
        <translation>nichts wurde geändert; jederzeit neu zu beginnen</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>name a file in it</source>
        <translation>eine Datei darin nennen</translation>
    </message>
    <message>
        <source>it is a pipe or a device and no file</source>
        <translation>das ist eine Pipe oder ein Gerät und keine Datei</translation>
    </message>
    <message>
        <source>write what comes out of it into a file first</source>
        <translation>was herauskommt, erst in eine Datei schreiben</translation>
    </message>
    <message>
        <source>the file cannot be looked at</source>
        <translation>die Datei lässt sich nicht ansehen</translation>
    </message>
    <message>
        <source>the file has {} MiB, and at most {} MiB are read</source>
        <translation>die Datei hat {} MiB, und höchstens {} MiB werden gelesen</translation>
    </message>
    <message>
        <source>choose the right file, or cut it into several</source>
        <translation>die richtige Datei wählen oder sie in mehrere teilen</translation>
    </message>
    <message>
        <source>that is no regular file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>take it away, or name another folder</source>
        <translation>sie wegnehmen oder einen anderen Ordner nennen</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>a file of this name is there: choose another name</source>
        <translation>eine Datei dieses Namens ist da: einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>choose a place where you may write</source>
        <translation>einen beschreibbaren Ort wählen</translation>
    </message>
    <message>
        <source>a cell of {} m cannot be laid on this water</source>
        <translation>eine Zelle von {} m passt nicht auf dieses Gewässer</translation>
    </message>
    <message>
        <source>choose a cell between 1 and 50 m</source>
        <translation>eine Zelle zwischen 1 und 50 m wählen</translation>
    </message>
    <message>
        <source>cells of {} m would need {:.0f} million of them, more than the {} million allowed</source>
        <translation>Zellen von {} m wären {} Millionen, mehr als die erlaubten {} Millionen</translation>
    </message>
    <message>
        <source>choose a larger cell</source>
        <translation>eine größere Zelle wählen</translation>
    </message>
    <message>
        <source>the fine scale of structure must be between 3 and 50 m</source>
        <translation>der feine Maßstab der Struktur muss zwischen 3 und 50 m liegen</translation>
    </message>
    <message>
        <source>the broad scale of structure must be between 20 and 500 m, and more than the fine scale</source>
        <translation>der grobe Maßstab der Struktur muss zwischen 20 und 500 m liegen und über dem feinen</translation>
    </message>
    <message>
        <source>the slope of a drop-off must be between 1 and 200 percent</source>
        <translation>die Neigung einer Kante muss zwischen 1 und 200 Prozent liegen</translation>
    </message>
    <message>
        <source>the rise of high ground must be between 0.05 and 20 m</source>
        <translation>die Höhe hohen Grundes muss zwischen 0,05 und 20 m liegen</translation>
    </message>
    <message>
        <source>the least size of a zone must be between 0 and 10 ha</source>
        <translation>die kleinste Größe einer Zone muss zwischen 0 und 10 ha liegen</translation>
    </message>
    <message>
        <source>the cell must be between 0.5 and 100 m</source>
        <translation>die Zelle muss zwischen 0,5 und 100 m liegen</translation>
    </message>
    <message>
        <source>the limit must be a depth below the surface</source>
        <translation>die Grenztiefe muss eine Tiefe unter der Oberfläche sein</translation>
    </message>
    <message>
        <source>the wanted size of a section must be between 0.1 and 1000 ha</source>
        <translation>die gewünschte Größe eines Abschnitts muss zwischen 0,1 und 1000 ha liegen</translation>
    </message>
    <message>
        <source>the Secchi depth must be between 0.1 and 40 m</source>
        <translation>die Sichttiefe muss zwischen 0,1 und 40 m liegen</translation>
    </message>
    <message>
        <source>the share of weed left must be between 0 and 1</source>
        <translation>der Anteil verbliebenen Krauts muss zwischen 0 und 1 liegen</translation>
    </message>
    <message>
        <source>banned water {}</source>
        <translation>ausgeschlossenes Wasser {}</translation>
    </message>
    <message>
        <source>Species that the log has not had before: {}</source>
        <translation>Arten, die das Fangbuch noch nicht hatte: {}</translation>
    </message>
    <message>
        <source>sorting the stays</source>
        <translation>Ansitze werden geordnet</translation>
    </message>
    <message>
        <source>a track needs a water to lie on</source>
        <translation>eine Spur braucht ein Gewässer, auf dem sie liegt</translation>
    </message>
    <message>
        <source>bring in soundings or a shoreline first</source>
        <translation>erst Lotungen oder eine Uferlinie einlesen</translation>
    </message>
    <message>
        <source>it holds neither soundings nor a log to bring in</source>
        <translation>sie enthält weder Lotungen noch ein Fangbuch zum Einlesen</translation>
    </message>
    <message>
        <source>give a water file that somebody else has used</source>
        <translation>eine Gewässerdatei geben, die jemand anders benutzt hat</translation>
    </message>
    <message>
        <source>comparing the two waters</source>
        <translation>die beiden Gewässer werden verglichen</translation>
    </message>
    <message>
        <source>{} lies {:.0f} km from the rest of the water</source>
        <translation>{} liegt {} km vom übrigen Gewässer</translation>
    </message>
    <message>
        <source>longitude and latitude look swapped: choose the columns the other way round</source>
        <translation>Länge und Breite scheinen vertauscht: die Spalten andersherum wählen</translation>
    </message>
    <message>
        <source>check that it belongs to this water, and its coordinate system</source>
        <translation>prüfen, ob es zu diesem Gewässer gehört, und sein Koordinatensystem</translation>
    </message>
    <message>
        <source>its depths are {:.1f} times those already sounded there: feet taken for metres</source>
        <translation>ihre Tiefen sind das {}-fache der dort schon geloteten: Fuß für Meter gehalten</translation>
    </message>
    <message>
        <source>say that the depths are in feet (unit ft)</source>
        <translation>angeben, dass die Tiefen in Fuß sind (Einheit ft)</translation>
    </message>
    <message>
        <source>its depths are {:.2f} times those already sounded there: metres taken for feet</source>
        <translation>ihre Tiefen sind das {}-fache der dort schon geloteten: Meter für Fuß gehalten</translation>
    </message>
    <message>
        <source>say that the depths are in metres (unit m)</source>
        <translation>angeben, dass die Tiefen in Metern sind (Einheit m)</translation>
    </message>
    <message>
        <source>the file</source>
        <translation>die Datei</translation>
    </message>
    <message>
        <source>half of its depths are over {:.0f} m, which no stillwater has</source>
        <translation>die Hälfte ihrer Tiefen liegt über {} m, das hat kein stehendes Gewässer</translation>
    </message>
    <message>
        <source>check the unit of the depths (unit ft) and which column they are in</source>
        <translation>die Einheit der Tiefen (ft) prüfen und in welcher Spalte sie stehen</translation>
    </message>
    <message>
        <source>the shore</source>
        <translation>das Ufer</translation>
    </message>
    <message>
        <source>in feet (unit ft)</source>
        <translation>in Fuß (Einheit ft)</translation>
    </message>
    <message>
        <source>the sections are just being worked out</source>
        <translation>die Abschnitte werden gerade berechnet</translation>
    </message>
    <message>
        <source>try once more when that is done</source>
        <translation>noch einmal versuchen, wenn das fertig ist</translation>
    </message>
    <message>
        <source>there is no shoreline yet: one is assumed 15 m outside the soundings</source>
        <translation>noch keine Uferlinie: sie ist 15 m außerhalb der Lotungen angenommen</translation>
    </message>
    <message>
        <source>Looking the soundings over</source>
        <translation>Lotungen werden durchgesehen</translation>
    </message>
    <message>
        <source>Drawing the water</source>
        <translation>Gewässer wird gezeichnet</translation>
    </message>
    <message>
        <source>Tracing contours and bands</source>
        <translation>Tiefenlinien und Stufen werden gezogen</translation>
    </message>
    <message>
        <source>Tracing the water at today's level</source>
        <translation>Gewässer beim Stand von heute wird gezogen</translation>
    </message>
    <message>
        <source>Finding drop-offs, humps and shelves</source>
        <translation>Kanten, Berge und Terrassen werden gesucht</translation>
    </message>
    <message>
        <source>Mapping the weed</source>
        <translation>Kraut wird kartiert</translation>
    </message>
    <message>
        <source>Dividing the water into sections</source>
        <translation>Gewässer wird in Abschnitte geteilt</translation>
    </message>
    <message>
        <source>the water has no soundings and no shoreline yet</source>
        <translation>das Gewässer hat noch keine Lotungen und keine Uferlinie</translation>
    </message>
    <message>
        <source>bring in a log of soundings first</source>
        <translation>erst eine Lotungsaufzeichnung einlesen</translation>
    </message>
    <message>
        <source>choose another value</source>
        <translation>einen anderen Wert wählen</translation>
    </message>
    <message>
        <source>there is neither a shoreline nor a sounding to draw from</source>
        <translation>es gibt weder Uferlinie noch Lotung, um daraus zu zeichnen</translation>
    </message>
    <message>
        <source>bring in soundings or a shoreline</source>
        <translation>Lotungen oder eine Uferlinie einlesen</translation>
    </message>
    <message>
        <source>choose another one</source>
        <translation>eine andere wählen</translation>
    </message>
    <message>
        <source>the file may not be read</source>
        <translation>die Datei darf nicht gelesen werden</translation>
    </message>
    <message>
        <source>allow reading it</source>
        <translation>Lesen erlauben</translation>
    </message>
    <message>
        <source>looking at photographs</source>
        <translation>Fotos werden angesehen</translation>
    </message>
    <message>
        <source>it lies on no water of this chart today</source>
        <translation>er liegt heute auf keinem Wasser dieser Karte</translation>
    </message>
    <message>
        <source>put it on the water, or let it go</source>
        <translation>ihn aufs Wasser setzen oder loslassen</translation>
    </message>
    <message>
        <source>tomorrow cannot be planned before the water is drawn and divided</source>
        <translation>morgen lässt sich nicht planen, bevor das Gewässer gezeichnet und geteilt ist</translation>
    </message>
    <message>
        <source>bring in soundings and draw the water first</source>
        <translation>erst Lotungen einlesen und das Gewässer zeichnen</translation>
    </message>
    <message>
        <source>the launch lies {} from this water</source>
        <translation>die Slipstelle liegt {} von diesem Gewässer</translation>
    </message>
    <message>
        <source>put it on the bank, or plan without one</source>
        <translation>sie ans Ufer setzen oder ohne planen</translation>
    </message>
    <message>
        <source>none of {} places holds the boat {} ({})</source>
        <translation>keine von {} Stellen hält das Boot {} ({})</translation>
    </message>
    <message>
        <source>at one anchor</source>
        <translation>an einem Anker</translation>
    </message>
    <message>
        <source>between two anchors</source>
        <translation>zwischen zwei Ankern</translation>
    </message>
    <message>
        <source>take more rope, a smaller scope, or another limit of depth</source>
        <translation>mehr Leine, einen kleineren Leinenfaktor oder eine andere Grenztiefe nehmen</translation>
    </message>
    <message>
        <source>Reading the log</source>
        <translation>Fangbuch wird gelesen</translation>
    </message>
    <message>
        <source>Looking for marks</source>
        <translation>Plätze werden gesucht</translation>
    </message>
    <message>
        <source>Working out anchors</source>
        <translation>Anker werden berechnet</translation>
    </message>
    <message>
        <source>Ranking the marks and laying out rods</source>
        <translation>Plätze werden geordnet, Ruten gelegt</translation>
    </message>
    <message>
        <source>all of the water that is left can be reached</source>
        <translation>alles übrige Wasser ist erreichbar</translation>
    </message>
    <message>
        <source>where to sound next can only be told of a drawn water</source>
        <translation>wo als Nächstes zu loten ist, lässt sich nur bei gezeichnetem Gewässer sagen</translation>
    </message>
    <message>
        <source>draw the water first</source>
        <translation>erst das Gewässer zeichnen</translation>
    </message>
    <message>
        <source>the shoreline</source>
        <translation>die Uferlinie</translation>
    </message>
    <message>
        <source>the shore has no such corner</source>
        <translation>das Ufer hat keine solche Ecke</translation>
    </message>
    <message>
        <source>point at one of its corners</source>
        <translation>auf eine seiner Ecken zeigen</translation>
    </message>
    <message>
        <source>a shore needs three corners</source>
        <translation>ein Ufer braucht drei Ecken</translation>
    </message>
    <message>
        <source>move the corner instead</source>
        <translation>stattdessen die Ecke verschieben</translation>
    </message>
    <message>
        <source>take the whole island away instead</source>
        <translation>stattdessen die ganze Insel wegnehmen</translation>
    </message>
    <message>
        <source>an island lies in the water, all of it</source>
        <translation>eine Insel liegt ganz im Wasser</translation>
    </message>
    <message>
        <source>go round it inside the shore</source>
        <translation>sie innerhalb des Ufers umfahren</translation>
    </message>
    <message>
        <source>there is no island at that place</source>
        <translation>an dieser Stelle ist keine Insel</translation>
    </message>
    <message>
        <source>point inside an island</source>
        <translation>in eine Insel zeigen</translation>
    </message>
    <message>
        <source>the file does not say of which reference system its coordinates are</source>
        <translation>die Datei sagt nicht, in welchem Bezugssystem ihre Koordinaten sind</translation>
    </message>
    <message>
        <source>put its .prj file beside it, or save it as GeoJSON</source>
        <translation>die .prj-Datei danebenlegen oder als GeoJSON speichern</translation>
    </message>
    <message>
        <source>the picture</source>
        <translation>das Bild</translation>
    </message>
    <message>
        <source>it is neither a picture nor a map that can be read</source>
        <translation>es ist weder ein lesbares Bild noch eine lesbare Karte</translation>
    </message>
    <message>
        <source>give a GeoTIFF, a JPEG with its world file, a Shapefile, a GeoPackage, GeoJSON or KML</source>
        <translation>ein GeoTIFF, ein JPEG mit World-Datei, ein Shapefile, ein GeoPackage, GeoJSON oder KML geben</translation>
    </message>
    <message>
        <source>the map holds nothing that can be drawn</source>
        <translation>die Karte enthält nichts Zeichenbares</translation>
    </message>
    <message>
        <source>choose another</source>
        <translation>eine andere wählen</translation>
    </message>
    <message>
        <source>the backdrop lies {:.0f} km from the water</source>
        <translation>die Unterlage liegt {} km vom Gewässer</translation>
    </message>
    <message>
        <source>choose one of this water, or see whether its reference system is right</source>
        <translation>eine von diesem Gewässer wählen oder prüfen, ob ihr Bezugssystem stimmt</translation>
    </message>
    <message>
        <source>waves of {:.2f} m</source>
        <translation>Wellen von {} m</translation>
    </message>
    <message>
        <source>the bottom is too steep for an anchor</source>
        <translation>der Grund ist zu steil für einen Anker</translation>
    </message>
    <message>
        <source>two surveys can only be compared once both are drawn</source>
        <translation>zwei Lotungen lassen sich erst vergleichen, wenn beide gezeichnet sind</translation>
    </message>
    <message>
        <source>there is no such mark to lay</source>
        <translation>diesen Platz gibt es nicht</translation>
    </message>
    <message>
        <source>find marks first</source>
        <translation>erst Plätze suchen</translation>
    </message>
    <message>
        <source>the same day</source>
        <translation>am selben Tag</translation>
    </message>
    <message>
        <source>1 to 3 days before</source>
        <translation>1 bis 3 Tage davor</translation>
    </message>
    <message>
        <source>4 to 7 days before</source>
        <translation>4 bis 7 Tage davor</translation>
    </message>
    <message>
        <source>8 to 14 days before</source>
        <translation>8 bis 14 Tage davor</translation>
    </message>
    <message>
        <source>15 to 30 days before</source>
        <translation>15 bis 30 Tage davor</translation>
    </message>
    <message>
        <source>over 30 days before</source>
        <translation>über 30 Tage davor</translation>
    </message>
    <message>
        <source>for the first time</source>
        <translation>zum ersten Mal</translation>
    </message>
    <message>
        <source>mark {}</source>
        <translation>Platz {}</translation>
    </message>
    <message>
        <source>plain bottom</source>
        <translation>schlichter Grund</translation>
    </message>
    <message>
        <source>deeper than the limit</source>
        <translation>tiefer als die Grenztiefe</translation>
    </message>
    <message>
        <source>the log cannot be sorted by place before the water is drawn</source>
        <translation>das Fangbuch lässt sich nicht nach Orten ordnen, bevor das Gewässer gezeichnet ist</translation>
    </message>
    <message>
        <source>draw the water first, or sort by hour, bait, wind, month or mark</source>
        <translation>erst das Gewässer zeichnen oder nach Stunde, Köder, Wind, Monat oder Platz ordnen</translation>
    </message>
    <message>
        <source>no row is called '{}'</source>
        <translation>keine Zeile heißt „{}“</translation>
    </message>
    <message>
        <source>name two rows as the page names them</source>
        <translation>zwei Zeilen nennen, wie die Seite sie nennt</translation>
    </message>
    <message>
        <source>a row was to be compared with itself</source>
        <translation>eine Zeile sollte mit sich selbst verglichen werden</translation>
    </message>
    <message>
        <source>name two rows</source>
        <translation>zwei Zeilen nennen</translation>
    </message>
    <message>
        <source>there is no such banned water</source>
        <translation>dieses ausgeschlossene Wasser gibt es nicht</translation>
    </message>
    <message>
        <source>banned water</source>
        <translation>ausgeschlossenes Wasser</translation>
    </message>
    <message>
        <source>choose one of the list</source>
        <translation>eines der Liste wählen</translation>
    </message>
    <message>
        <source>nothing can be banned before there is a water</source>
        <translation>vor einem Gewässer lässt sich nichts ausschließen</translation>
    </message>
    <message>
        <source>so much water round a mark cannot be banned</source>
        <translation>so viel Wasser um einen Platz lässt sich nicht ausschließen</translation>
    </message>
    <message>
        <source>choose a radius of 1 m to 2 km</source>
        <translation>einen Radius von 1 m bis 2 km wählen</translation>
    </message>
    <message>
        <source>the sheet has no stop to write up</source>
        <translation>das Blatt hat keinen Halt zum Nachtragen</translation>
    </message>
    <message>
        <source>choose marks for the day first</source>
        <translation>erst Plätze für den Tag wählen</translation>
    </message>
    <message>
        <source>a mark stands twice in the order</source>
        <translation>ein Platz steht zweimal in der Reihenfolge</translation>
    </message>
    <message>
        <source>an order of no marks is none</source>
        <translation>eine Reihenfolge ohne Plätze ist keine</translation>
    </message>
    <message>
        <source>the order is the program's already</source>
        <translation>die Reihenfolge ist schon die des Programms</translation>
    </message>
    <message>
        <source>nothing needs to be done</source>
        <translation>nichts ist zu tun</translation>
    </message>
    <message>
        <source>choose one of those there are</source>
        <translation>eine der vorhandenen wählen</translation>
    </message>
    <message>
        <source>the water has no such sounding by lead line</source>
        <translation>diese Handlotung hat das Gewässer nicht</translation>
    </message>
    <message>
        <source>the water has no such weed note</source>
        <translation>diese Krautnotiz hat das Gewässer nicht</translation>
    </message>
    <message>
        <source>nothing is laid by hand there</source>
        <translation>dort ist nichts von Hand gelegt</translation>
    </message>
    <message>
        <source>lay an anchor or a bait</source>
        <translation>einen Anker oder Köder legen</translation>
    </message>
    <message>
        <source>choose a mark of which you laid anchors or baits</source>
        <translation>einen Platz mit von Hand gelegten Ankern oder Ködern wählen</translation>
    </message>
    <message>
        <source>no mark is pinned there</source>
        <translation>dort ist kein Platz festgehalten</translation>
    </message>
    <message>
        <source>choose one of your own marks</source>
        <translation>einen eigenen Platz wählen</translation>
    </message>
    <message>
        <source>no beliefs are saved as '{}'</source>
        <translation>keine Annahmen sind als „{}“ gespeichert</translation>
    </message>
    <message>
        <source>save some first</source>
        <translation>erst welche speichern</translation>
    </message>
    <message>
        <source>beliefs cannot be saved without a name</source>
        <translation>Annahmen lassen sich nicht ohne Namen speichern</translation>
    </message>
    <message>
        <source>give one, such as windy autumn</source>
        <translation>einen geben, etwa windiger Herbst</translation>
    </message>
    <message>
        <source>other beliefs are saved as '{}'</source>
        <translation>andere Annahmen sind als „{}“ gespeichert</translation>
    </message>
    <message>
        <source>choose another name, or remove those first</source>
        <translation>einen anderen Namen wählen oder jene erst entfernen</translation>
    </message>
    <message>
        <source>there are no sections yet</source>
        <translation>noch gibt es keine Abschnitte</translation>
    </message>
    <message>
        <source>there is no such section</source>
        <translation>diesen Abschnitt gibt es nicht</translation>
    </message>
    <message>
        <source>draw the water, then choose one of its sections</source>
        <translation>das Gewässer zeichnen, dann einen seiner Abschnitte wählen</translation>
    </message>
    <message>
        <source>there is no chart to draw a shore on yet</source>
        <translation>noch gibt es keine Karte, auf der ein Ufer zu zeichnen wäre</translation>
    </message>
    <message>
        <source>bring in soundings or a backdrop first</source>
        <translation>erst Lotungen oder eine Unterlage einlesen</translation>
    </message>
    <message>
        <source>the log has no such stay</source>
        <translation>diesen Ansitz hat das Fangbuch nicht</translation>
    </message>
    <message>
        <source>choose one of its stays</source>
        <translation>einen seiner Ansitze wählen</translation>
    </message>
    <message>
        <source>the water has no such survey day</source>
        <translation>diesen Lotungstag hat das Gewässer nicht</translation>
    </message>
    <message>
        <source>survey days</source>
        <translation>Lotungstage</translation>
    </message>
    <message>
        <source>choose one of its days</source>
        <translation>einen seiner Tage wählen</translation>
    </message>
    <message>
        <source>the water has these soundings already, as survey day {}</source>
        <translation>das Gewässer hat diese Lotungen schon, als Lotungstag {}</translation>
    </message>
    <message>
        <source>bring them in once; remove that day first if they are to be read anew</source>
        <translation>sie einmal einlesen; jenen Tag erst entfernen, wenn sie neu gelesen werden sollen</translation>
    </message>
    <message>
        <source>the water has no such sounding</source>
        <translation>diese Lotung hat das Gewässer nicht</translation>
    </message>
    <message>
        <source>choose them anew on the chart</source>
        <translation>sie auf der Karte neu wählen</translation>
    </message>
    <message>
        <source>the soundings are just being looked over</source>
        <translation>die Lotungen werden gerade durchgesehen</translation>
    </message>
    <message>
        <source>{} is out of its range</source>
        <translation>{} liegt außerhalb seines Bereichs</translation>
    </message>
    <message>
        <source>the reach of a note (m)</source>
        <translation>die Reichweite einer Notiz (m)</translation>
    </message>
    <message>
        <source>the depth reach of a note (m)</source>
        <translation>die Tiefenreichweite einer Notiz (m)</translation>
    </message>
    <message>
        <source>what the prior is worth (notes)</source>
        <translation>was das Vorwissen wert ist (Notizen)</translation>
    </message>
    <message>
        <source>the probability of weed in the shallows</source>
        <translation>die Wahrscheinlichkeit von Kraut im Flachen</translation>
    </message>
    <message>
        <source>the softness of the growth limit</source>
        <translation>die Weichheit der Wuchsgrenze</translation>
    </message>
    <message>
        <source>the probability of weed where clarity is not known</source>
        <translation>die Wahrscheinlichkeit von Kraut bei unbekannter Sichttiefe</translation>
    </message>
    <message>
        <source>the growth limit where clarity is not known (m)</source>
        <translation>die Wuchsgrenze bei unbekannter Sichttiefe (m)</translation>
    </message>
    <message>
        <source>the season factor</source>
        <translation>der Faktor der Jahreszeit</translation>
    </message>
    <message>
        <source>the usual height of weed (m)</source>
        <translation>die übliche Höhe von Kraut (m)</translation>
    </message>
    <message>
        <source>the least size of a bed (ha)</source>
        <translation>die kleinste Größe eines Feldes (ha)</translation>
    </message>
    <message>
        <source>the width of a weed edge (m)</source>
        <translation>die Breite einer Krautkante (m)</translation>
    </message>
    <message>
        <source>the Secchi depth (m)</source>
        <translation>die Sichttiefe (m)</translation>
    </message>
    <message>
        <source>weed settings</source>
        <translation>Einstellungen des Krauts</translation>
    </message>
    <message>
        <source>mapping weed</source>
        <translation>Kraut wird kartiert</translation>
    </message>
    <message>
        <source>an effort of {} rod-hours</source>
        <translation>ein Aufwand von {} Rutenstunden</translation>
    </message>
    <message>
        <source>{} fish</source>
        <translation>{} Fische</translation>
    </message>
    <message>
        <source>day {}</source>
        <translation>Tag {}</translation>
    </message>
    <message>
        <source>a value that is no number</source>
        <translation>ein Wert, der keine Zahl ist</translation>
    </message>
    <message>
        <source>the log cannot be learned from so</source>
        <translation>so lässt sich aus dem Fangbuch nicht lernen</translation>
    </message>
    <message>
        <source>choose 0 to 20 renewals from the first day up, and a step above 0</source>
        <translation>0 bis 20 Erneuerungen vom ersten Tag an wählen und einen Schritt über 0</translation>
    </message>
    <message>
        <source>a stay cannot be learned from: {}</source>
        <translation>aus einem Ansitz lässt sich nicht lernen: {}</translation>
    </message>
    <message>
        <source>stay {}</source>
        <translation>Ansitz {}</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>ihn auslassen</translation>
    </message>
    <message>
        <source>{} offsets for {} survey days</source>
        <translation>{} Ausgleiche für {} Lotungstage</translation>
    </message>
    <message>
        <source>tie the days again</source>
        <translation>die Tage neu anbinden</translation>
    </message>
    <message>
        <source>reducing the soundings</source>
        <translation>Lotungen werden auf Kartennull gebracht</translation>
    </message>
    <message>
        <source>finding crossings</source>
        <translation>Kreuzungen werden gesucht</translation>
    </message>
    <message>
        <source>a setting is out of its range</source>
        <translation>eine Einstellung liegt außerhalb ihres Bereichs</translation>
    </message>
    <message>
        <source>choose {} to {}</source>
        <translation>{} bis {} wählen</translation>
    </message>
    <message>
        <source>looking for faults along the track</source>
        <translation>Fehler längs der Spur werden gesucht</translation>
    </message>
    <message>
        <source>comparing neighbouring passes</source>
        <translation>benachbarte Fahrten werden verglichen</translation>
    </message>
    <message>
        <source>all {} soundings lie outside the shore, the first {:.1f} km from its middle</source>
        <translation>alle {} Lotungen liegen außerhalb des Ufers, die erste {} km von seiner Mitte</translation>
    </message>
    <message>
        <source>check that shore and soundings are of the same water and reference system</source>
        <translation>prüfen, ob Ufer und Lotungen zum selben Gewässer und Bezugssystem gehören</translation>
    </message>
    <message>
        <source>longitude and latitude of the soundings are swapped: choose x and y the other way round</source>
        <translation>Länge und Breite der Lotungen sind vertauscht: x und y andersherum wählen</translation>
    </message>
    <message>
        <source>the margin is out of its range</source>
        <translation>der Rand liegt außerhalb seines Bereichs</translation>
    </message>
    <message>
        <source>comparing with the shore</source>
        <translation>Vergleich mit dem Ufer</translation>
    </message>
    <message>
        <source>the two drawings hardly lie on each other</source>
        <translation>die beiden Zeichnungen liegen kaum aufeinander</translation>
    </message>
    <message>
        <source>earlier drawing</source>
        <translation>frühere Zeichnung</translation>
    </message>
    <message>
        <source>choose a file of the same water</source>
        <translation>eine Datei desselben Gewässers wählen</translation>
    </message>
    <message>
        <source>drawing settings</source>
        <translation>Einstellungen der Zeichnung</translation>
    </message>
    <message>
        <source>choose a value in its range</source>
        <translation>einen Wert im Bereich wählen</translation>
    </message>
    <message>
        <source>there is no sounding to draw from</source>
        <translation>es gibt keine Lotung, um daraus zu zeichnen</translation>
    </message>
    <message>
        <source>read at least one survey day, or take soundings back that were set aside</source>
        <translation>mindestens einen Lotungstag lesen oder ausgesonderte Lotungen zurücknehmen</translation>
    </message>
    <message>
        <source>the position or depth is no number</source>
        <translation>Position oder Tiefe ist keine Zahl</translation>
    </message>
    <message>
        <source>sounding {}</source>
        <translation>Lotung {}</translation>
    </message>
    <message>
        <source>set this sounding aside</source>
        <translation>diese Lotung aussondern</translation>
    </message>
    <message>
        <source>choosing the stiffness</source>
        <translation>Steifheit wird gewählt</translation>
    </message>
    <message>
        <source>judging the trust</source>
        <translation>Verlässlichkeit wird beurteilt</translation>
    </message>
    <message>
        <source>reading the shape of the water</source>
        <translation>Form des Gewässers wird gelesen</translation>
    </message>
    <message>
        <source>drawing the bottom</source>
        <translation>Grund wird gezeichnet</translation>
    </message>
    <message>
        <source>the cell must be 0.5 to 100 m</source>
        <translation>die Zelle muss 0,5 bis 100 m haben</translation>
    </message>
    <message>
        <source>the stiffness must be 1 to 1000000</source>
        <translation>die Steifheit muss 1 bis 1000000 sein</translation>
    </message>
    <message>
        <source>the stiffness along contours must be 0 to 1000</source>
        <translation>die Steifheit längs der Tiefenlinien muss 0 bis 1000 sein</translation>
    </message>
    <message>
        <source>the shore may be off by 0 to 50 m</source>
        <translation>das Ufer darf 0 bis 50 m danebenliegen</translation>
    </message>
    <message>
        <source>the error of a sounding must be 0.01 to 2 m</source>
        <translation>der Fehler einer Lotung muss 0,01 bis 2 m sein</translation>
    </message>
    <message>
        <source>the error of a sounding must be 0 to 0.2 of its depth</source>
        <translation>der Fehler einer Lotung muss 0 bis 0,2 ihrer Tiefe sein</translation>
    </message>
    <message>
        <source>the threads must be 1 to 64</source>
        <translation>die Threads müssen 1 bis 64 sein</translation>
    </message>
    <message>
        <source>none of the {} soundings lies in the water</source>
        <translation>keine der {} Lotungen liegt im Wasser</translation>
    </message>
    <message>
        <source>check that shore and soundings belong to the same water</source>
        <translation>prüfen, ob Ufer und Lotungen zum selben Gewässer gehören</translation>
    </message>
    <message>
        <source>the step between depths must be 0.01 to 100 m</source>
        <translation>der Schritt zwischen Tiefen muss 0,01 bis 100 m sein</translation>
    </message>
    <message>
        <source>the level must be within 100 m of chart level</source>
        <translation>der Wasserstand muss innerhalb von 100 m um Kartennull liegen</translation>
    </message>
    <message>
        <source>the depths and the shore are laid out in different cells</source>
        <translation>Tiefen und Ufer liegen auf verschiedenen Zellen</translation>
    </message>
    <message>
        <source>no water is left at {:+.2f} m</source>
        <translation>bei {} m bleibt kein Wasser</translation>
    </message>
    <message>
        <source>choose a higher level</source>
        <translation>einen höheren Wasserstand wählen</translation>
    </message>
    <message>
        <source>the table would be too long</source>
        <translation>die Tabelle würde zu lang</translation>
    </message>
    <message>
        <source>choose a larger step</source>
        <translation>einen größeren Schritt wählen</translation>
    </message>
    <message>
        <source>no cell holds water</source>
        <translation>keine Zelle enthält Wasser</translation>
    </message>
    <message>
        <source>the time must be 5 minutes to 24 hours</source>
        <translation>die Zeit muss 5 Minuten bis 24 Stunden sein</translation>
    </message>
    <message>
        <source>the speed must be 0.2 to 5 m/s</source>
        <translation>die Geschwindigkeit muss 0,2 bis 5 m/s sein</translation>
    </message>
    <message>
        <source>the shortest line must be 10 to 5000 m</source>
        <translation>die kürzeste Linie muss 10 bis 5000 m haben</translation>
    </message>
    <message>
        <source>there must be 1 to 100 lines at most</source>
        <translation>höchstens müssen es 1 bis 100 Linien sein</translation>
    </message>
    <message>
        <source>lines must keep 0 to 200 m off the shore</source>
        <translation>Linien müssen 0 bis 200 m vom Ufer bleiben</translation>
    </message>
    <message>
        <source>the launch must be a place</source>
        <translation>die Slipstelle muss ein Ort sein</translation>
    </message>
    <message>
        <source>lines to sound</source>
        <translation>Linien zum Loten</translation>
    </message>
    <message>
        <source>the launch lies farther than 200 m from the water</source>
        <translation>die Slipstelle liegt mehr als 200 m vom Wasser</translation>
    </message>
    <message>
        <source>put the launch on the shore</source>
        <translation>die Slipstelle ans Ufer setzen</translation>
    </message>
    <message>
        <source>no line fits into this water and this time</source>
        <translation>keine Linie passt in dieses Gewässer und diese Zeit</translation>
    </message>
    <message>
        <source>give more time, or allow shorter lines</source>
        <translation>mehr Zeit geben oder kürzere Linien erlauben</translation>
    </message>
    <message>
        <source>cells of {} m would need {:.0f} million of them, more than the {} million that can be drawn</source>
        <translation>Zellen von {} m wären {} Millionen, mehr als die {} Millionen, die sich zeichnen lassen</translation>
    </message>
    <message>
        <source>cell size</source>
        <translation>Zellengröße</translation>
    </message>
    <message>
        <source>choose a larger cell, or none to have it chosen</source>
        <translation>eine größere Zelle wählen, oder keine, dann wird sie gewählt</translation>
    </message>
    <message>
        <source>the boat's length</source>
        <translation>die Bootslänge</translation>
    </message>
    <message>
        <source>the height of the bow cleat</source>
        <translation>die Höhe der Bugklampe</translation>
    </message>
    <message>
        <source>the height of the stern cleat</source>
        <translation>die Höhe der Heckklampe</translation>
    </message>
    <message>
        <source>the boat's draught</source>
        <translation>der Tiefgang des Bootes</translation>
    </message>
    <message>
        <source>the bow rope</source>
        <translation>die Bugleine</translation>
    </message>
    <message>
        <source>the stern rope</source>
        <translation>die Heckleine</translation>
    </message>
    <message>
        <source>the scope</source>
        <translation>der Leinenfaktor</translation>
    </message>
    <message>
        <source>the stern scope</source>
        <translation>der Leinenfaktor am Heck</translation>
    </message>
    <message>
        <source>the least scope</source>
        <translation>der kleinste Leinenfaktor</translation>
    </message>
    <message>
        <source>the windage</source>
        <translation>die Windangriffsfläche</translation>
    </message>
    <message>
        <source>the turn off the wind</source>
        <translation>die Drehung aus dem Wind</translation>
    </message>
    <message>
        <source>the wind</source>
        <translation>der Wind</translation>
    </message>
    <message>
        <source>the rope of the other anchor is too short for the depth there</source>
        <translation>die Leine des anderen Ankers ist zu kurz für die Tiefe dort</translation>
    </message>
    <message>
        <source>take a longer rope, or lay this anchor elsewhere</source>
        <translation>eine längere Leine nehmen oder diesen Anker anderswo legen</translation>
    </message>
    <message>
        <source>there is no room for the other anchor on the far side of the boat</source>
        <translation>auf der anderen Seite des Bootes ist kein Raum für den anderen Anker</translation>
    </message>
    <message>
        <source>lay it by hand too, or lay this one elsewhere</source>
        <translation>ihn auch von Hand legen oder diesen anderswo legen</translation>
    </message>
    <message>
        <source>the anchors lie nearer to each other than the boat is long</source>
        <translation>die Anker liegen näher beieinander, als das Boot lang ist</translation>
    </message>
    <message>
        <source>lay them farther apart</source>
        <translation>sie weiter auseinander legen</translation>
    </message>
    <message>
        <source>the anchor lies under the boat</source>
        <translation>der Anker liegt unter dem Boot</translation>
    </message>
    <message>
        <source>lay it farther off</source>
        <translation>ihn weiter weg legen</translation>
    </message>
    <message>
        <source>no anchor is laid by hand</source>
        <translation>kein Anker ist von Hand gelegt</translation>
    </message>
    <message>
        <source>lay one, or let the program lay them</source>
        <translation>einen legen oder das Programm legen lassen</translation>
    </message>
    <message>
        <source>the boat would lie ashore from these anchors in this wind</source>
        <translation>das Boot läge von diesen Ankern bei diesem Wind an Land</translation>
    </message>
    <message>
        <source>lay them elsewhere, or let the program lay them</source>
        <translation>sie anderswo legen oder das Programm legen lassen</translation>
    </message>
    <message>
        <source>there is no water to float a boat at the mark</source>
        <translation>am Platz ist kein Wasser, das ein Boot trägt</translation>
    </message>
    <message>
        <source>move the mark to deeper water</source>
        <translation>den Platz in tieferes Wasser verschieben</translation>
    </message>
    <message>
        <source>the ropes are too short for the depth here</source>
        <translation>die Leinen sind zu kurz für die Tiefe hier</translation>
    </message>
    <message>
        <source>take longer ropes or choose a shallower mark</source>
        <translation>längere Leinen nehmen oder einen flacheren Platz wählen</translation>
    </message>
    <message>
        <source>there is no room here to swing round one anchor</source>
        <translation>hier ist kein Raum, um einen Anker zu schwojen</translation>
    </message>
    <message>
        <source>there is no room here for two anchors in this wind</source>
        <translation>hier ist bei diesem Wind kein Raum für zwei Anker</translation>
    </message>
    <message>
        <source>move the mark away from the shore</source>
        <translation>den Platz vom Ufer weg verschieben</translation>
    </message>
    <message>
        <source>the band edges must be depths below the surface, each deeper than the one before</source>
        <translation>die Stufengrenzen müssen Tiefen unter der Oberfläche sein, jede tiefer als die davor</translation>
    </message>
    <message>
        <source>give them as 2,4,6</source>
        <translation>sie als 2,4,6 geben</translation>
    </message>
    <message>
        <source>give one as 9</source>
        <translation>eine wie 9 geben</translation>
    </message>
    <message>
        <source>depths and water lie on different cells</source>
        <translation>Tiefen und Wasser liegen auf verschiedenen Zellen</translation>
    </message>
    <message>
        <source>there are more bands than can be told apart</source>
        <translation>es sind mehr Stufen, als sich unterscheiden lassen</translation>
    </message>
    <message>
        <source>give at most 250 edges</source>
        <translation>höchstens 250 Grenzen geben</translation>
    </message>
    <message>
        <source>a contour's depth is no number</source>
        <translation>die Tiefe einer Tiefenlinie ist keine Zahl</translation>
    </message>
    <message>
        <source>give depths in metres</source>
        <translation>Tiefen in Metern geben</translation>
    </message>
    <message>
        <source>a chart is saved as PDF, SVG or PNG</source>
        <translation>eine Karte wird als PDF, SVG oder PNG gespeichert</translation>
    </message>
    <message>
        <source>let the name end in .pdf, .svg or .png</source>
        <translation>den Namen auf .pdf, .svg oder .png enden lassen</translation>
    </message>
    <message>
        <source>there is no water to draw</source>
        <translation>es gibt kein Gewässer zu zeichnen</translation>
    </message>
    <message>
        <source>the chart would be too large at this scale</source>
        <translation>die Karte würde in diesem Maßstab zu groß</translation>
    </message>
    <message>
        <source>choose a smaller scale, such as 1 : 10,000</source>
        <translation>einen kleineren Maßstab wählen, etwa 1 : 10.000</translation>
    </message>
    <message>
        <source>there is no memory for a picture of this size</source>
        <translation>für ein Bild dieser Größe fehlt Speicher</translation>
    </message>
    <message>
        <source>choose a smaller scale, or save it as PDF</source>
        <translation>einen kleineren Maßstab wählen oder als PDF speichern</translation>
    </message>
    <message>
        <source>chart sheet</source>
        <translation>Kartenblatt</translation>
    </message>
    <message>
        <source>the page cannot be drawn</source>
        <translation>die Seite lässt sich nicht zeichnen</translation>
    </message>
    <message>
        <source>choose another printer or file</source>
        <translation>einen anderen Drucker oder eine andere Datei wählen</translation>
    </message>
    <message>
        <source>chart</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>nothing is planned</source>
        <translation>nichts ist geplant</translation>
    </message>
    <message>
        <source>day sheet</source>
        <translation>Tagesblatt</translation>
    </message>
    <message>
        <source>work out the marks first</source>
        <translation>erst die Plätze berechnen</translation>
    </message>
    <message>
        <source>the marks are older than the water</source>
        <translation>die Plätze sind älter als das Gewässer</translation>
    </message>
    <message>
        <source>work them out anew first</source>
        <translation>sie erst neu berechnen</translation>
    </message>
    <message>
        <source>the pages cannot be drawn</source>
        <translation>die Seiten lassen sich nicht zeichnen</translation>
    </message>
    <message>
        <source>season page</source>
        <translation>Saisonseite</translation>
    </message>
    <message>
        <source>nothing is logged yet</source>
        <translation>noch nichts ist eingetragen</translation>
    </message>
    <message>
        <source>add stays first</source>
        <translation>erst Ansitze hinzufügen</translation>
    </message>
    <message>
        <source>put the file right and bring it in once more</source>
        <translation>die Datei berichtigen und noch einmal einlesen</translation>
    </message>
    <message>
        <source>there is no section at this place</source>
        <translation>an dieser Stelle ist kein Abschnitt</translation>
    </message>
    <message>
        <source>point at another</source>
        <translation>auf einen anderen zeigen</translation>
    </message>
    <message>
        <source>the soundings are just being looked over again</source>
        <translation>die Lotungen werden gerade noch einmal durchgesehen</translation>
    </message>
    <message>
        <source>go over them once more when that is done</source>
        <translation>sie noch einmal durchgehen, wenn das fertig ist</translation>
    </message>
    <message>
        <source>the earlier water cannot be drawn</source>
        <translation>das frühere Gewässer lässt sich nicht zeichnen</translation>
    </message>
    <message>
        <source>open it, and see what it lacks</source>
        <translation>es öffnen und sehen, was ihm fehlt</translation>
    </message>
    <message>
        <source>'{}' is no stay</source>
        <translation>„{}“ ist keine Dauer</translation>
    </message>
    <message>
        <source>give a time such as 1 h 30 or 90 min</source>
        <translation>eine Zeit wie 1 h 30 oder 90 min geben</translation>
    </message>
    <message>
        <source>there is no sheet: tomorrow is older than your last change, and could not be worked out anew: {}</source>
        <translation>es gibt kein Blatt: morgen ist älter als die letzte Änderung und ließ sich nicht neu berechnen: {}</translation>
    </message>
    <message>
        <source>no copy of the water could be taken: {}</source>
        <translation>vom Gewässer ließ sich keine Kopie machen: {}</translation>
    </message>
    <message>
        <source>save the water in another place</source>
        <translation>das Gewässer an anderem Ort speichern</translation>
    </message>
    <message>
        <source>the water that is open has changes that are not kept: {}</source>
        <translation>das offene Gewässer hat Änderungen, die nicht gespeichert sind: {}</translation>
    </message>
    <message>
        <source>save it in another place first</source>
        <translation>es erst an anderem Ort speichern</translation>
    </message>
    <message>
        <source>the water is not drawn yet</source>
        <translation>das Gewässer ist noch nicht gezeichnet</translation>
    </message>
    <message>
        <source>the folder for waters without a name cannot be made</source>
        <translation>der Ordner für Gewässer ohne Namen lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>give the water a name and a place</source>
        <translation>dem Gewässer einen Namen und einen Ort geben</translation>
    </message>
    <message>
        <source>reading the drawing</source>
        <translation>Zeichnung wird gelesen</translation>
    </message>
    <message>
        <source>the file is of another version</source>
        <translation>die Datei ist von einer anderen Fassung</translation>
    </message>
    <message>
        <source>open it to see it</source>
        <translation>sie öffnen, um sie zu sehen</translation>
    </message>
    <message>
        <source>from 1 to 40 marks</source>
        <translation>1 bis 40 Plätze</translation>
    </message>
    <message>
        <source>from 1 to 5000 candidates</source>
        <translation>1 bis 5000 Anwärter</translation>
    </message>
    <message>
        <source>season, {}</source>
        <translation>Saison, {}</translation>
    </message>
    <message>
        <source>GPX track</source>
        <translation>GPX-Spur</translation>
    </message>
    <message>
        <source>choose 5 to 1000, and 1 to 30 s</source>
        <translation>5 bis 1000 und 1 bis 30 s wählen</translation>
    </message>
    <message>
        <source>choose 1 to 50 m, 3 to 20, 0.01 to 2 m, 0 to 0.1 and 0 to 20 m</source>
        <translation>1 bis 50 m, 3 bis 20, 0,01 bis 2 m, 0 bis 0,1 und 0 bis 20 m wählen</translation>
    </message>
    <message>
        <source>choose 0 to 50 m</source>
        <translation>0 bis 50 m wählen</translation>
    </message>
    <message>
        <source>from 1 to 8 rods</source>
        <translation>1 bis 8 Ruten</translation>
    </message>
    <message>
        <source>NMEA 0183 log</source>
        <translation>NMEA-0183-Aufzeichnung</translation>
    </message>
    <message>
        <source>B-12 soundings</source>
        <translation>B-12-Lotungen</translation>
    </message>
    <message>
        <source>give rows of lon, lat, kind (none, thin, thick), height_m and seen (2026-08-20)</source>
        <translation>Zeilen mit lon, lat, kind (none, thin, thick), height_m und seen (2026-08-20) geben</translation>
    </message>
    <message>
        <source>a line or an area of weed belongs to no note</source>
        <translation>eine Linie oder Fläche von Kraut gehört zu keiner Notiz</translation>
    </message>
    <message>
        <source>a line or an area of weed has too few corners</source>
        <translation>eine Linie oder Fläche von Kraut hat zu wenige Ecken</translation>
    </message>
    <message>
        <source>there is not enough memory for this</source>
        <translation>dafür reicht der Speicher nicht</translation>
    </message>
    <message>
        <source>close other programs, or work with fewer and larger cells</source>
        <translation>andere Programme schließen, oder mit weniger und größeren Zellen arbeiten</translation>
    </message>
    <message>
        <source>something unforeseen went wrong: {}</source>
        <translation>etwas Unvorhergesehenes ging schief: {}</translation>
    </message>
    <message>
        <source>try again; what was saved is kept</source>
        <translation>noch einmal versuchen; was gespeichert war, bleibt</translation>
    </message>
    <message>
        <source>a value cannot be kept ({}); nothing was changed</source>
        <translation>ein Wert lässt sich nicht halten ({}); nichts wurde geändert</translation>
    </message>
    <message>
        <source>the table {} is not to be found</source>
        <translation>die Tabelle {} ist nicht zu finden</translation>
    </message>
    <message>
        <source>of the table {} only {} rows can be read, the others lie in pages that are destroyed</source>
        <translation>von der Tabelle {} lassen sich nur {} Zeilen lesen, die anderen liegen auf zerstörten Seiten</translation>
    </message>
    <message>
        <source>a row of the table {} holds what it cannot hold</source>
        <translation>eine Zeile der Tabelle {} enthält, was sie nicht enthalten kann</translation>
    </message>
    <message>
        <source>no table of a water can be found in it</source>
        <translation>keine Tabelle eines Gewässers ist darin zu finden</translation>
    </message>
    <message>
        <source>go back to a copy</source>
        <translation>zu einer Kopie zurückgehen</translation>
    </message>
    <message>
        <source>reading what can be read</source>
        <translation>liest, was lesbar ist</translation>
    </message>
    <message>
        <source>what is read cannot be laid aside</source>
        <translation>was gelesen wird, lässt sich nicht beiseitelegen</translation>
    </message>
    <message>
        <source>make room, or choose another folder</source>
        <translation>Platz schaffen, oder einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>{}, and so {} times in all</source>
        <translation>{}, und das insgesamt {}-mal</translation>
    </message>
    <message>
        <source>{} more like these</source>
        <translation>{} weitere dieser Art</translation>
    </message>
    <message>
        <source>a newer version of Meremark keeps this water file in a way that this one cannot read</source>
        <translation>eine neuere Version von Meremark führt diese Gewässerdatei auf eine Art, die diese nicht lesen kann</translation>
    </message>
    <message>
        <source>change it with that version, or save under another name</source>
        <translation>mit jener Version ändern, oder unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>what can be worked with is {}</source>
        <translation>womit sich arbeiten lässt, ist {}</translation>
    </message>
    <message>
        <source>boat and rods of the plan</source>
        <translation>Boot und Ruten des Plans</translation>
    </message>
    <message>
        <source>all of them lie outside the shore</source>
        <translation>alle liegen außerhalb des Ufers</translation>
    </message>
    <message>
        <source>the launch lies far from this water</source>
        <translation>die Einlassstelle liegt weit von diesem Gewässer</translation>
    </message>
</context>
</TS>

<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>Phrase</name>
    <message>
        <source>coolant</source>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>chamber</source>
        <translation>Kammer</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>%1: %2 to %3 ± %4</source>
        <translation>%1: %2 bis %3 ± %4</translation>
    </message>
    <message>
        <source>%1: %2 ± %3</source>
        <translation>%1: %2 ± %3</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>the last digit shown is missing</source>
        <translation>die letzte angezeigte Stelle fehlt</translation>
    </message>
    <message>
        <source>the service ends before it begins</source>
        <translation>der Einsatz endet, bevor er beginnt</translation>
    </message>
    <message>
        <source>check both times</source>
        <translation>beide Zeiten prüfen</translation>
    </message>
    <message>
        <source>the meter needs a name</source>
        <translation>der Zähler braucht einen Namen</translation>
    </message>
    <message>
        <source>the meter needs a setup that it counts for</source>
        <translation>der Zähler braucht eine Anlage, für die er zählt</translation>
    </message>
    <message>
        <source>add a setup first</source>
        <translation>zuerst eine Anlage anlegen</translation>
    </message>
    <message>
        <source>two moves are at the same time</source>
        <translation>zwei Umzüge liegen auf derselben Zeit</translation>
    </message>
    <message>
        <source>moves</source>
        <translation>Umzüge</translation>
    </message>
    <message>
        <source>offset %1</source>
        <translation>Versatz %1</translation>
    </message>
    <message>
        <source>two offsets begin at the same time</source>
        <translation>zwei Versätze beginnen zur selben Zeit</translation>
    </message>
    <message>
        <source>offsets</source>
        <translation>Versätze</translation>
    </message>
    <message>
        <source>build effort</source>
        <translation>Bauaufwand</translation>
    </message>
    <message>
        <source>ease of use</source>
        <translation>Bedienung</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation>Reinigung</translation>
    </message>
    <message>
        <source>noise</source>
        <translation>Lärm</translation>
    </message>
    <message>
        <source>space</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>the part needs a name</source>
        <translation>das Teil braucht einen Namen</translation>
    </message>
    <message>
        <source>part %1</source>
        <translation>Teil %1</translation>
    </message>
    <message>
        <source>a rating needs to say what it rates</source>
        <translation>bei einer Note fehlt, was sie benotet</translation>
    </message>
    <message>
        <source>ratings</source>
        <translation>Noten</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is rated twice</source>
        <translation>„%1“ ist zweimal benotet</translation>
    </message>
    <message>
        <source>take one of them out</source>
        <translation>eine davon entfernen</translation>
    </message>
    <message>
        <source>a currency has three letters</source>
        <translation>eine Währung hat drei Buchstaben</translation>
    </message>
    <message>
        <source>write it such as USD or EUR</source>
        <translation>etwa USD oder EUR schreiben</translation>
    </message>
    <message>
        <source>two prices hold from the same time on</source>
        <translation>zwei Preise gelten ab derselben Zeit</translation>
    </message>
    <message>
        <source>change one of them</source>
        <translation>einen davon ändern</translation>
    </message>
    <message>
        <source>%1 begins before %2 is over</source>
        <translation>%1 beginnt, bevor %2 vorbei ist</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>Rundgänge</translation>
    </message>
    <message>
        <source>give each its own time</source>
        <translation>jedem seine eigene Zeit geben</translation>
    </message>
    <message>
        <source>two rounds are called %1</source>
        <translation>zwei Rundgänge heißen %1</translation>
    </message>
    <message>
        <source>call one of them something else</source>
        <translation>einen davon anders nennen</translation>
    </message>
    <message>
        <source>a day has one round at least</source>
        <translation>ein Tag hat mindestens einen Rundgang</translation>
    </message>
    <message>
        <source>add one</source>
        <translation>einen hinzufügen</translation>
    </message>
    <message numerus="yes">
        <source>a day has %n rounds at most</source>
        <comment>a day has one round at most</comment>
        <translation>
            <numerusform>ein Tag hat höchstens einen Rundgang</numerusform>
            <numerusform>ein Tag hat höchstens %n Rundgänge</numerusform>
        </translation>
    </message>
    <message>
        <source>take one out</source>
        <translation>einen entfernen</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>Rundgang %1</translation>
    </message>
    <message numerus="yes">
        <source>ice point, %n readings</source>
        <comment>ice point, %n reading</comment>
        <translation>
            <numerusform>Eispunkt, %n Messwert</numerusform>
            <numerusform>Eispunkt, %n Messwerte</numerusform>
        </translation>
    </message>
    <message>
        <source>the sensor needs a name</source>
        <translation>der Sensor braucht einen Namen</translation>
    </message>
    <message>
        <source>the setup needs a name</source>
        <translation>die Anlage braucht einen Namen</translation>
    </message>
    <message>
        <source>outside all windows there is no price</source>
        <translation>außerhalb aller Fenster fehlt ein Preis</translation>
    </message>
    <message>
        <source>type what a kWh costs at other times</source>
        <translation>eintippen, was eine kWh sonst kostet</translation>
    </message>
    <message>
        <source>the time from which this price holds is missing</source>
        <translation>die Zeit, ab der dieser Preis gilt, fehlt</translation>
    </message>
    <message>
        <source>window %1</source>
        <translation>Fenster %1</translation>
    </message>
    <message>
        <source>its days and times can&apos;t be read</source>
        <translation>seine Tage und Zeiten sind nicht lesbar</translation>
    </message>
    <message>
        <source>write them such as mon – fri, 16:00, 21:00</source>
        <translation>so schreiben: mo – fr, 16:00, 21:00</translation>
    </message>
    <message>
        <source>the logbook is open for reading only</source>
        <translation>das Logbuch ist nur zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>close it in the other window first</source>
        <translation>es zuerst im anderen Fenster schließen</translation>
    </message>
    <message>
        <source>nothing is typed here</source>
        <translation>hier steht nichts</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit for this</source>
        <translation>„%1“ ist dafür keine Einheit</translation>
    </message>
    <message>
        <source>write the number alone</source>
        <translation>nur die Zahl schreiben</translation>
    </message>
    <message>
        <source>write it in %1</source>
        <translation>in %1 schreiben</translation>
    </message>
    <message>
        <source>choose which column has the time; write its pattern if it is an unusual one</source>
        <translation>wählen, welche Spalte die Zeit hat; ihr Muster angeben, wenn es ein ungewöhnliches ist</translation>
    </message>
    <message>
        <source>choose the order of the dates above</source>
        <translation>oben die Reihenfolge der Datumsteile wählen</translation>
    </message>
    <message>
        <source>choose above what the comma is</source>
        <translation>oben wählen, was das Komma bedeutet</translation>
    </message>
    <message>
        <source>choose the zone of the logger’s clock above</source>
        <translation>oben die Zeitzone der Logger-Uhr wählen</translation>
    </message>
    <message>
        <source>choose the unit above the column</source>
        <translation>die Einheit über der Spalte wählen</translation>
    </message>
    <message>
        <source>choose above each column what it is</source>
        <translation>über jeder Spalte wählen, was sie ist</translation>
    </message>
    <message>
        <source>choose above what parts the columns and which line has their names</source>
        <translation>oben wählen, was die Spalten trennt und welche Zeile ihre Namen hat</translation>
    </message>
    <message>
        <source>say above what happened to the register</source>
        <translation>oben angeben, was mit dem Zählwerk geschah</translation>
    </message>
    <message>
        <source>it was stopped; nothing was kept of it</source>
        <translation>es wurde angehalten; nichts davon wurde behalten</translation>
    </message>
    <message>
        <source>change a choice, or choose the file again</source>
        <translation>eine Wahl ändern oder die Datei neu wählen</translation>
    </message>
    <message>
        <source>set up %1</source>
        <translation>%1 angelegt</translation>
    </message>
    <message>
        <source>took back %1</source>
        <translation>%1 zurückgenommen</translation>
    </message>
    <message>
        <source>put back %1</source>
        <translation>%1 zurückgeholt</translation>
    </message>
    <message>
        <source>changed a note of %1</source>
        <translation>eine Notiz von %1 geändert</translation>
    </message>
    <message>
        <source>changed a note</source>
        <translation>eine Notiz geändert</translation>
    </message>
    <message>
        <source>removed a note of %1</source>
        <translation>eine Notiz von %1 entfernt</translation>
    </message>
    <message>
        <source>removed a note</source>
        <translation>eine Notiz entfernt</translation>
    </message>
    <message>
        <source>noted something of %1</source>
        <translation>etwas zu %1 notiert</translation>
    </message>
    <message>
        <source>noted something</source>
        <translation>etwas notiert</translation>
    </message>
    <message>
        <source>the time from which the plan holds is missing</source>
        <translation>die Zeit, ab der der Plan gilt, fehlt</translation>
    </message>
    <message>
        <source>the time of pitching is missing</source>
        <translation>die Zeit des Anstellens fehlt</translation>
    </message>
    <message>
        <source>the batch ends before it is pitched</source>
        <translation>der Sud endet, bevor er angestellt ist</translation>
    </message>
    <message>
        <source>the batch needs a name</source>
        <translation>der Sud braucht einen Namen</translation>
    </message>
    <message>
        <source>the batch needs a setup</source>
        <translation>der Sud braucht eine Anlage</translation>
    </message>
    <message>
        <source>add one on the Equipment page</source>
        <translation>auf der Seite Ausrüstung eine anlegen</translation>
    </message>
    <message>
        <source>without a sensor for the beer nobody can say whether it stayed in its band</source>
        <translation>ohne einen Sensor im Bier kann niemand sagen, ob es in seinem Band blieb</translation>
    </message>
    <message>
        <source>add one on the Equipment page; one read by hand will do</source>
        <translation>auf der Seite Ausrüstung einen anlegen; ein von Hand abgelesener genügt</translation>
    </message>
    <message>
        <source>that time is still to come</source>
        <translation>diese Zeit kommt erst noch</translation>
    </message>
    <message>
        <source>type the time it was done</source>
        <translation>die Zeit eintippen, zu der es geschah</translation>
    </message>
    <message>
        <source>%1 has ended by then</source>
        <translation>%1 ist dann schon zu Ende</translation>
    </message>
    <message>
        <source>%1 is not pitched by then</source>
        <translation>%1 ist dann noch nicht angestellt</translation>
    </message>
    <message>
        <source>the stage before was ended later than that</source>
        <translation>der Abschnitt davor endete später</translation>
    </message>
    <message>
        <source>%1 would end before it is pitched</source>
        <translation>%1 würde enden, bevor er angestellt ist</translation>
    </message>
    <message>
        <source>no stage of %1 is in progress then</source>
        <translation>dann läuft kein Abschnitt von %1</translation>
    </message>
    <message>
        <source>its plan is over: add a stage to it, or end the batch</source>
        <translation>der Plan ist zu Ende: einen Abschnitt anhängen oder den Sud beenden</translation>
    </message>
    <message>
        <source>%1 is the last stage of the plan</source>
        <translation>%1 ist der letzte Abschnitt des Plans</translation>
    </message>
    <message>
        <source>add a stage to the plan, or end the batch</source>
        <translation>dem Plan einen Abschnitt anhängen oder den Sud beenden</translation>
    </message>
    <message>
        <source>%1 has ended already</source>
        <translation>%1 ist schon zu Ende</translation>
    </message>
    <message>
        <source>change its end in its details</source>
        <translation>das Ende in den Angaben ändern</translation>
    </message>
    <message>
        <source>the batch would end before it is pitched</source>
        <translation>der Sud würde enden, bevor er angestellt ist</translation>
    </message>
    <message>
        <source>%1 has not ended</source>
        <translation>%1 ist nicht zu Ende</translation>
    </message>
    <message>
        <source>Batch </source>
        <comment>before its number</comment>
        <translation>Sud </translation>
    </message>
    <message>
        <source>the sensor from pitching on stands in the details</source>
        <translation>der Sensor ab dem Anstellen steht in den Angaben</translation>
    </message>
    <message>
        <source>type a later time</source>
        <translation>eine spätere Zeit eintippen</translation>
    </message>
    <message>
        <source>the batch has ended by then</source>
        <translation>der Sud ist dann schon zu Ende</translation>
    </message>
    <message>
        <source>sensor and vessel %1</source>
        <translation>Sensor und Gefäß %1</translation>
    </message>
    <message>
        <source>the sensor is missing</source>
        <translation>der Sensor fehlt</translation>
    </message>
    <message>
        <source>two sensors begin at the same time</source>
        <translation>zwei Sensoren beginnen zur selben Zeit</translation>
    </message>
    <message>
        <source>sensors and vessels</source>
        <translation>Sensoren und Gefäße</translation>
    </message>
    <message>
        <source>the target is missing</source>
        <translation>der Sollwert fehlt</translation>
    </message>
    <message>
        <source>type a temperature</source>
        <translation>eine Temperatur eintippen</translation>
    </message>
    <message>
        <source>the gravity that ends it is missing</source>
        <translation>die Dichte, die ihn beendet, fehlt</translation>
    </message>
    <message>
        <source>type one, such as 1.012</source>
        <translation>eine eintippen, etwa 1,012</translation>
    </message>
    <message>
        <source>stage %1</source>
        <translation>Abschnitt %1</translation>
    </message>
    <message>
        <source>stage %1 (%2)</source>
        <translation>Abschnitt %1 (%2)</translation>
    </message>
    <message>
        <source>Stage %1</source>
        <translation>Abschnitt %1</translation>
    </message>
    <message>
        <source>the time is missing</source>
        <translation>die Zeit fehlt</translation>
    </message>
    <message>
        <source>corrected a reading of %1</source>
        <translation>einen Messwert von %1 berichtigt</translation>
    </message>
    <message>
        <source>no reading is chosen</source>
        <translation>kein Messwert ist gewählt</translation>
    </message>
    <message>
        <source>choose the readings to leave out in the table first</source>
        <translation>zuerst in der Tabelle die Messwerte wählen, die ausgelassen werden</translation>
    </message>
    <message>
        <source>say why they are left out: the reason stays with them</source>
        <translation>sagen, warum sie ausgelassen werden: der Grund bleibt bei ihnen</translation>
    </message>
    <message>
        <source>left out a stretch of %1</source>
        <translation>einen Zeitraum von %1 ausgelassen</translation>
    </message>
    <message>
        <source>they are left out already</source>
        <translation>sie sind schon ausgelassen</translation>
    </message>
    <message>
        <source>no reading that was left out is chosen</source>
        <translation>kein ausgelassener Messwert ist gewählt</translation>
    </message>
    <message>
        <source>choose one in the table first</source>
        <translation>zuerst einen in der Tabelle wählen</translation>
    </message>
    <message>
        <source>brought back a stretch of %1</source>
        <translation>einen Zeitraum von %1 zurückgeholt</translation>
    </message>
    <message>
        <source>a correction is of one reading</source>
        <translation>eine Berichtigung gilt einem Messwert</translation>
    </message>
    <message>
        <source>choose the one to correct in the table first</source>
        <translation>zuerst den zu berichtigenden in der Tabelle wählen</translation>
    </message>
    <message>
        <source>the reading is left out</source>
        <translation>der Messwert ist ausgelassen</translation>
    </message>
    <message>
        <source>bring it back first</source>
        <translation>ihn zuerst zurückholen</translation>
    </message>
    <message>
        <source>It reads less than the one before and nobody said why, so nothing is taken from this pair.</source>
        <translation>Er liegt unter dem davor und niemand sagte, warum; aus diesem Paar wird nichts entnommen.</translation>
    </message>
    <message>
        <source>The register restarted at 0 in between: it is at least this much.</source>
        <translation>Das Zählwerk begann dazwischen wieder bei 0: mindestens so viel.</translation>
    </message>
    <message>
        <source>The register rolled over in between: its top is added.</source>
        <translation>Das Zählwerk lief dazwischen über: sein Höchststand ist hinzugezählt.</translation>
    </message>
    <message>
        <source>It is the first reading.</source>
        <translation>Es ist der erste Zählerstand.</translation>
    </message>
    <message>
        <source>the report was stopped; nothing was written</source>
        <translation>der Bericht wurde angehalten; nichts wurde geschrieben</translation>
    </message>
    <message>
        <source>there is no font to write with</source>
        <translation>es fehlt eine Schrift zum Schreiben</translation>
    </message>
    <message>
        <source>install one, such as the package fonts-dejavu-core</source>
        <translation>eine installieren, etwa das Paket fonts-dejavu-core</translation>
    </message>
    <message>
        <source>the report could not be drawn</source>
        <translation>der Bericht ließ sich nicht zeichnen</translation>
    </message>
    <message>
        <source>choose a smaller size</source>
        <translation>eine kleinere Größe wählen</translation>
    </message>
    <message>
        <source>a register can&apos;t read below 0</source>
        <translation>ein Zählwerk kann nicht unter 0 stehen</translation>
    </message>
    <message>
        <source>check the number</source>
        <translation>die Zahl prüfen</translation>
    </message>
    <message>
        <source>a sample is never at %1 %2</source>
        <translation>eine Probe hat nie %1 %2</translation>
    </message>
    <message>
        <source>check the number and its unit</source>
        <translation>die Zahl und ihre Einheit prüfen</translation>
    </message>
    <message>
        <source>weighed two arrangements</source>
        <translation>zwei Anlagen bewertet</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>never backed up</source>
        <translation>noch nie gesichert</translation>
    </message>
    <message>
        <source>backed up today %1</source>
        <translation>gesichert heute %1</translation>
    </message>
    <message>
        <source>backed up yesterday %1</source>
        <translation>gesichert gestern %1</translation>
    </message>
    <message>
        <source>backed up %1</source>
        <translation>gesichert %1</translation>
    </message>
    <message>
        <source>Copy of</source>
        <translation>Kopie vom</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Sound copies, the newest first</source>
        <translation>Heile Kopien, die neuesten zuerst</translation>
    </message>
    <message>
        <source>&amp;Restore beside the logbook</source>
        <translation>&amp;Neben dem Logbuch wiederherstellen</translation>
    </message>
    <message>
        <source>Keep copies &amp;beside each logbook</source>
        <translation>Kopien &amp;beim Logbuch ablegen</translation>
    </message>
    <message>
        <source>Copies of %1</source>
        <translation>Kopien von %1</translation>
    </message>
    <message>
        <source>Keep copies in a &amp;folder…</source>
        <translation>Kopien in einem &amp;Ordner ablegen…</translation>
    </message>
    <message>
        <source>A copy is made before the first change of a day; those of the last seven days and eight weeks stay. Restoring puts a copy beside the logbook under another name and opens it; the logbook itself stays as it is.</source>
        <translation>Vor der ersten Änderung eines Tages entsteht eine Kopie; die der letzten sieben Tage und acht Wochen bleiben. Beim Wiederherstellen kommt eine Kopie unter anderem Namen neben das Logbuch und wird geöffnet; das Logbuch selbst bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Looking at the copies …</source>
        <translation>Die Kopien werden geprüft …</translation>
    </message>
    <message>
        <source>There is no sound copy of this logbook.</source>
        <translation>Von diesem Logbuch gibt es keine heile Kopie.</translation>
    </message>
    <message>
        <source>Copying …</source>
        <translation>Es wird kopiert …</translation>
    </message>
    <message>
        <source>Where the copies of all logbooks go</source>
        <translation>Wohin die Kopien aller Logbücher kommen</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: choose another folder.</source>
        <translation>In %1 kann nicht geschrieben werden: einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>Copies of this logbook go to %1.</source>
        <translation>Kopien dieses Logbuchs kommen nach %1.</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>Einschwingen</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>beer, mean %1</source>
        <translation>Bier, Mittel %1</translation>
    </message>
    <message>
        <source>least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>from target</source>
        <translation>vom Sollwert</translation>
    </message>
    <message>
        <source>room, mean</source>
        <translation>Raum, Mittel</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht gesehen</translation>
    </message>
    <message>
        <source>read at</source>
        <translation>abgelesen</translation>
    </message>
    <message>
        <source>kWh since pitching</source>
        <translation>kWh seit Anstellen</translation>
    </message>
    <message>
        <source>least – most</source>
        <translation>mindestens – höchstens</translation>
    </message>
    <message>
        <source>since the one before</source>
        <translation>seit dem davor</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>not metered</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>began anew</source>
        <translation>neu begonnen</translation>
    </message>
    <message>
        <source>%1 as tables</source>
        <translation>%1 als Tabellen</translation>
    </message>
    <message>
        <source>Temperature and deviation</source>
        <translation>Temperatur und Abweichung</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>&amp;Temperature and deviation</source>
        <translation>&amp;Temperatur und Abweichung</translation>
    </message>
    <message>
        <source>&amp;Energy</source>
        <translation>&amp;Energie</translation>
    </message>
    <message>
        <source>What the panels show, from %1 to %2.</source>
        <translation>Was die Bilder zeigen, von %1 bis %2.</translation>
    </message>
    <message>
        <source>Deviation from target</source>
        <translation>Abweichung vom Sollwert</translation>
    </message>
    <message>
        <source>It stands here as soon as the beer is logged.</source>
        <translation>Sie steht hier, sobald das Bier protokolliert ist.</translation>
    </message>
    <message>
        <source>Energy since pitching, kWh</source>
        <translation>Energie seit dem Anstellen, kWh</translation>
    </message>
    <message>
        <source>No meter was read during this batch. Rounds (Alt+1) take its readings.</source>
        <translation>Während dieses Suds wurde kein Zähler abgelesen. Rundgänge (Alt+1) nehmen die Zählerstände auf.</translation>
    </message>
    <message>
        <source>no ribbon: the most it can have been is unknown</source>
        <translation>kein Streifen: das Höchste ist unbekannt</translation>
    </message>
    <message>
        <source>dots: readings · ribbon: the least and the most</source>
        <translation>Punkte: Zählerstände · Streifen: mindestens und höchstens</translation>
    </message>
    <message>
        <source>%1 · square: began anew</source>
        <translation>%1 · Quadrat: neu begonnen</translation>
    </message>
    <message>
        <source>The whole run, with a frame around what is shown</source>
        <translation>Der ganze Lauf, mit einem Rahmen um das Gezeigte</translation>
    </message>
    <message>
        <source>The whole run. Drag the frame, turn the wheel, or double-click for all of it.</source>
        <translation>Der ganze Lauf. Rahmen ziehen, Rad drehen oder doppelt klicken für alles.</translation>
    </message>
    <message>
        <source>shown: %1 to %2</source>
        <translation>gezeigt: %1 bis %2</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>Arrow keys pan, plus and minus zoom, 0 shows all, Shift and arrows move the pointer, Ctrl and arrows lead it from reading to reading</source>
        <translation>Pfeiltasten verschieben, Plus und Minus zoomen, 0 zeigt alles, Umschalt mit Pfeilen bewegt den Zeiger, Strg mit Pfeilen führt ihn von Messwert zu Messwert</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>beer not known</source>
        <translation>Bier nicht bekannt</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Sollwert %1</translation>
    </message>
    <message>
        <source>settling, not judged</source>
        <translation>Einschwingen, nicht beurteilt</translation>
    </message>
    <message>
        <source>%1 from target, %2</source>
        <translation>%1 vom Sollwert, %2</translation>
    </message>
    <message>
        <source>inside the band</source>
        <translation>im Band</translation>
    </message>
    <message>
        <source>outside the band</source>
        <translation>außerhalb des Bandes</translation>
    </message>
    <message>
        <source>Temperature, %1</source>
        <translation>Temperatur, %1</translation>
    </message>
    <message>
        <source>Deviation from target, %1</source>
        <translation>Abweichung vom Sollwert, %1</translation>
    </message>
    <message>
        <source>target and band</source>
        <translation>Sollwert und Band</translation>
    </message>
    <message>
        <source>target ± %1</source>
        <translation>Sollwert ± %1</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Nothing is logged yet. Drop a log on the window, or import one (Ctrl+I).</source>
        <translation>Noch nichts protokolliert. Ein Protokoll auf das Fenster ziehen oder importieren (Strg+I).</translation>
    </message>
    <message>
        <source>Outside from %1, %2, up to %3 %4 %5 the band</source>
        <translation>Außerhalb ab %1, %2, bis zu %3 %4 %5 dem Band</translation>
    </message>
    <message>
        <source>above</source>
        <translation>über</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unter</translation>
    </message>
    <message>
        <source>brought back</source>
        <translation>zurückgeholt</translation>
    </message>
    <message>
        <source>retired</source>
        <translation>stillgelegt</translation>
    </message>
    <message>
        <source>setup %1 %2</source>
        <translation>Anlage %1 %2</translation>
    </message>
    <message>
        <source>sensor %1 %2</source>
        <translation>Sensor %1 %2</translation>
    </message>
    <message>
        <source>meter %1 %2</source>
        <translation>Zähler %1 %2</translation>
    </message>
    <message>
        <source>setup %1 removed</source>
        <translation>Anlage %1 entfernt</translation>
    </message>
    <message>
        <source>sensor %1 removed</source>
        <translation>Sensor %1 entfernt</translation>
    </message>
    <message>
        <source>meter %1 removed</source>
        <translation>Zähler %1 entfernt</translation>
    </message>
    <message>
        <source>plan %1 removed</source>
        <translation>Plan %1 entfernt</translation>
    </message>
    <message>
        <source>Add a setup…</source>
        <translation>Anlage hinzufügen…</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Sensoren</translation>
    </message>
    <message>
        <source>sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Named plans</source>
        <translation>Benannte Pläne</translation>
    </message>
    <message>
        <source>named plan</source>
        <translation>benannter Plan</translation>
    </message>
    <message>
        <source>Price of energy</source>
        <translation>Preis der Energie</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Bearbeiten…</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rundgänge</translation>
    </message>
    <message>
        <source>Edit the price of energy</source>
        <translation>Den Preis der Energie bearbeiten</translation>
    </message>
    <message>
        <source>Edit the rounds</source>
        <translation>Die Rundgänge bearbeiten</translation>
    </message>
    <message>
        <source>Care: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <source>No meter is on record yet.</source>
        <translation>Noch kein Zähler eingetragen.</translation>
    </message>
    <message>
        <source>No sensor is on record yet.</source>
        <translation>Noch kein Sensor eingetragen.</translation>
    </message>
    <message>
        <source>A plan kept under a name is offered to each new batch.</source>
        <translation>Ein Plan mit Namen wird jedem neuen Sud angeboten.</translation>
    </message>
    <message numerus="yes">
        <source>%n setups</source>
        <comment>%n setup</comment>
        <translation>
            <numerusform>%n Anlage</numerusform>
            <numerusform>%n Anlagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n meters</source>
        <comment>%n meter</comment>
        <translation>
            <numerusform>%n Zähler</numerusform>
            <numerusform>%n Zähler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sensors</source>
        <comment>%n sensor</comment>
        <translation>
            <numerusform>%n Sensor</numerusform>
            <numerusform>%n Sensoren</numerusform>
        </translation>
    </message>
    <message>
        <source> · from %1</source>
        <translation> · ab %1</translation>
    </message>
    <message>
        <source> · to %1</source>
        <translation> · bis %1</translation>
    </message>
    <message>
        <source>%1 (the last of %2)</source>
        <translation>%1 (der letzte von %2)</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>on the shelf</source>
        <translation>im Regal</translation>
    </message>
    <message>
        <source>power, W</source>
        <translation>Leistung, W</translation>
    </message>
    <message>
        <source>%1, by eye</source>
        <translation>%1, von Auge</translation>
    </message>
    <message>
        <source> · retired %1</source>
        <translation> · stillgelegt %1</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>Nennleistung %1</translation>
    </message>
    <message>
        <source>rated power unknown</source>
        <translation>Nennleistung unbekannt</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>each</source>
        <translation>je Stück</translation>
    </message>
    <message>
        <source>together</source>
        <translation>zusammen</translation>
    </message>
    <message>
        <source>All parts</source>
        <translation>Alle Teile</translation>
    </message>
    <message>
        <source>parts %1</source>
        <translation>Teile %1</translation>
    </message>
    <message>
        <source>Rated 1 – 5: %1</source>
        <translation>Noten 1 – 5: %1</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>measures</source>
        <translation>misst</translation>
    </message>
    <message>
        <source>reads to</source>
        <translation>liest auf</translation>
    </message>
    <message>
        <source>accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>rolls over at</source>
        <translation>läuft über bei</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>reads</source>
        <translation>liest</translation>
    </message>
    <message>
        <source>setup</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>offset</source>
        <translation>Versatz</translation>
    </message>
    <message>
        <source>placement</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>stages</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Gilt</translation>
    </message>
    <message>
        <source>a kWh costs</source>
        <translation>eine kWh kostet</translation>
    </message>
    <message>
        <source>time-of-use windows</source>
        <translation>Zeitfenster</translation>
    </message>
    <message>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <source>at first</source>
        <translation>zuerst</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>No price of energy is on record.</source>
        <translation>Kein Preis der Energie eingetragen.</translation>
    </message>
    <message>
        <source>Crushed ice with just enough water to fill the gaps, stirred, the probe in the middle for some minutes. Type what it shows, three times or more.</source>
        <translation>Zerstoßenes Eis mit gerade so viel Wasser, dass die Lücken gefüllt sind, gerührt, der Fühler einige Minuten in der Mitte. Eintippen, was er zeigt, dreimal oder öfter.</translation>
    </message>
    <message>
        <source>Last digit shown</source>
        <translation>Letzte angezeigte Stelle</translation>
    </message>
    <message>
        <source>&amp;Use as an offset from now on</source>
        <translation>Ab jetzt als Versatz &amp;verwenden</translation>
    </message>
    <message>
        <source>Readings in ice water</source>
        <translation>Messwerte im Eiswasser</translation>
    </message>
    <message>
        <source>last &amp;digit</source>
        <translation>letzte &amp;Stelle</translation>
    </message>
    <message>
        <source>Add…</source>
        <translation>Neu…</translation>
    </message>
    <message>
        <source>Add a %1</source>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>Edit the %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Stilllegen</translation>
    </message>
    <message>
        <source>Retire the %1</source>
        <translation>%1 stilllegen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>the accuracy lies above 0 % and below 100 %</source>
        <translation>die Genauigkeit liegt über 0 % und unter 100 %</translation>
    </message>
    <message>
        <source>New meter</source>
        <translation>Neuer Zähler</translation>
    </message>
    <message>
        <source>Meter: %1</source>
        <translation>Zähler: %1</translation>
    </message>
    <message>
        <source>Keep the meter</source>
        <translation>Zähler behalten</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Setup</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>Starts again at 0 above</source>
        <translation>Beginnt wieder bei 0 über</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>In service from</source>
        <translation>Im Einsatz ab</translation>
    </message>
    <message>
        <source>In service to</source>
        <translation>Im Einsatz bis</translation>
    </message>
    <message>
        <source>move</source>
        <translation>Umzug</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>Counts &amp;for</source>
        <translation>Zählt &amp;für</translation>
    </message>
    <message>
        <source>&amp;Last digit shown</source>
        <translation>&amp;Letzte angezeigte Stelle</translation>
    </message>
    <message>
        <source>Rolls &amp;over at</source>
        <translation>Läuft &amp;über bei</translation>
    </message>
    <message>
        <source>&amp;Accuracy ±</source>
        <translation>&amp;Genauigkeit ±</translation>
    </message>
    <message>
        <source>In &amp;service from</source>
        <translation>Im &amp;Einsatz ab</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Bis</translation>
    </message>
    <message>
        <source>Moves</source>
        <translation>Umzüge</translation>
    </message>
    <message>
        <source>From a time on it counts for another setup, or stands on the shelf.</source>
        <translation>Ab einer Zeit zählt er für eine andere Anlage oder liegt im Regal.</translation>
    </message>
    <message>
        <source>still</source>
        <translation>noch</translation>
    </message>
    <message>
        <source>The register starts again at 0 instead of %1 kWh.</source>
        <translation>Das Zählwerk beginnt wieder bei 0 statt %1 kWh.</translation>
    </message>
    <message>
        <source>The most that it shows, all nines, or where it starts again; it may stay empty.</source>
        <translation>Das Höchste, was er zeigt, lauter Neunen, oder wo er wieder beginnt; darf leer bleiben.</translation>
    </message>
    <message>
        <source>added</source>
        <translation>hinzugefügt</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Counts for</source>
        <translation>Zählt für</translation>
    </message>
    <message>
        <source>the doubt must be above 0</source>
        <translation>die Unsicherheit muss über 0 liegen</translation>
    </message>
    <message>
        <source>Add, %1</source>
        <translation>Dazu, %1</translation>
    </message>
    <message>
        <source>Doubt ±, %1</source>
        <translation>Unsicherheit ±, %1</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>the pieces must be above 0</source>
        <translation>die Stückzahl muss über 0 liegen</translation>
    </message>
    <message>
        <source>a price can&apos;t be negative</source>
        <translation>ein Preis kann nicht negativ sein</translation>
    </message>
    <message>
        <source>a rating lies from 1 to 5</source>
        <translation>eine Note liegt zwischen 1 und 5</translation>
    </message>
    <message>
        <source>the part needs a name</source>
        <translation>das Teil braucht einen Namen</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Price each%1</source>
        <comment>with its currency</comment>
        <translation>Preis je Stück%1</translation>
    </message>
    <message>
        <source>All parts: %1</source>
        <translation>Alle Teile: %1</translation>
    </message>
    <message>
        <source>What can&apos;t be measured</source>
        <translation>Was nicht messbar ist</translation>
    </message>
    <message>
        <source>Keep the prices</source>
        <translation>Preise behalten</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>&amp;Another price from a date on</source>
        <translation>&amp;Weiterer Preis ab einem Datum</translation>
    </message>
    <message>
        <source>&amp;Currency</source>
        <translation>&amp;Währung</translation>
    </message>
    <message>
        <source>At first</source>
        <translation>Zuerst</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Ab %1</translation>
    </message>
    <message>
        <source>price of energy changed</source>
        <translation>Preis der Energie geändert</translation>
    </message>
    <message>
        <source>the round needs a name</source>
        <translation>der Rundgang braucht einen Namen</translation>
    </message>
    <message>
        <source>write a time of day, such as 06:30</source>
        <translation>eine Uhrzeit schreiben, etwa 06:30</translation>
    </message>
    <message>
        <source>write a time of day, such as 09:00</source>
        <translation>eine Uhrzeit schreiben, etwa 09:00</translation>
    </message>
    <message>
        <source>a round ends after it begins, on the same day</source>
        <translation>ein Rundgang endet nach seinem Beginn, am selben Tag</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Keep the rounds</source>
        <translation>Rundgänge behalten</translation>
    </message>
    <message>
        <source>round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>The times of day in which the meters are to be read, in local time. A round that passes without a reading counts as missed.</source>
        <translation>Die Tageszeiten, zu denen die Zähler abzulesen sind, in Ortszeit. Ein Rundgang, der ohne Zählerstand vergeht, gilt als versäumt.</translation>
    </message>
    <message>
        <source>Six rounds a day are the most</source>
        <translation>Mehr als sechs Rundgänge am Tag gehen nicht</translation>
    </message>
    <message>
        <source>rounds changed</source>
        <translation>Rundgänge geändert</translation>
    </message>
    <message>
        <source>in the beer</source>
        <translation>im Bier</translation>
    </message>
    <message>
        <source>in a thermowell</source>
        <translation>in einer Tauchhülse</translation>
    </message>
    <message>
        <source>taped to the wall</source>
        <translation>an die Wand geklebt</translation>
    </message>
    <message>
        <source>in the air</source>
        <translation>in der Luft</translation>
    </message>
    <message>
        <source>New sensor</source>
        <translation>Neuer Sensor</translation>
    </message>
    <message>
        <source>Sensor %1</source>
        <translation>Sensor %1</translation>
    </message>
    <message>
        <source>Keep the sensor</source>
        <translation>Sensor behalten</translation>
    </message>
    <message>
        <source>What it reads</source>
        <translation>Was er misst</translation>
    </message>
    <message>
        <source>Where the probe sits</source>
        <translation>Wo der Fühler sitzt</translation>
    </message>
    <message>
        <source>&amp;read by eye in the rounds</source>
        <translation>bei den &amp;Rundgängen von Auge abgelesen</translation>
    </message>
    <message>
        <source>R&amp;eads</source>
        <translation>M&amp;isst</translation>
    </message>
    <message>
        <source>Belongs &amp;to</source>
        <translation>Gehört &amp;zu</translation>
    </message>
    <message>
        <source>&amp;Probe sits</source>
        <translation>&amp;Fühler sitzt</translation>
    </message>
    <message>
        <source>Offsets, each from a time on</source>
        <translation>Versätze, jeder ab einer Zeit</translation>
    </message>
    <message>
        <source>Ice point</source>
        <translation>Eispunkt</translation>
    </message>
    <message>
        <source>no setup</source>
        <translation>keine Anlage</translation>
    </message>
    <message>
        <source>No parts are on record.</source>
        <translation>Keine Teile eingetragen.</translation>
    </message>
    <message>
        <source>New setup</source>
        <translation>Neue Anlage</translation>
    </message>
    <message>
        <source>Setup %1</source>
        <translation>Anlage %1</translation>
    </message>
    <message>
        <source>Keep the setup</source>
        <translation>Anlage behalten</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Rated power</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>rating</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>coolant loop, cabinet, …</source>
        <translation>Kühlmittelkreis, Schrank, …</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Gefäße</translation>
    </message>
    <message>
        <source>&amp;Vessels</source>
        <translation>&amp;Gefäße</translation>
    </message>
    <message>
        <source>Rated &amp;power</source>
        <translation>Nenn&amp;leistung</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Ratings</source>
        <translation>Noten</translation>
    </message>
    <message>
        <source>A kilowatt-hour costs</source>
        <translation>Eine Kilowattstunde kostet</translation>
    </message>
    <message>
        <source>time-of-use window</source>
        <translation>Zeitfenster</translation>
    </message>
    <message>
        <source>Holds from</source>
        <translation>Gilt ab</translation>
    </message>
    <message>
        <source>Remove this change of price</source>
        <translation>Diese Preisänderung entfernen</translation>
    </message>
    <message>
        <source>A kWh costs</source>
        <translation>Eine kWh kostet</translation>
    </message>
    <message>
        <source>In these windows of local time it costs something else; the first that fits decides.</source>
        <translation>In diesen Fenstern der Ortszeit kostet sie etwas anderes; das erste passende entscheidet.</translation>
    </message>
    <message>
        <source>Units, zone and currency</source>
        <translation>Einheiten, Zeitzone und Währung</translation>
    </message>
    <message>
        <source>Keep these</source>
        <translation>So behalten</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>They say how everything is shown and typed. What was read and logged stays as it is. The zone also says where days begin, and so when a round was.</source>
        <translation>Sie sagen, wie alles gezeigt und getippt wird. Was gelesen und protokolliert wurde, bleibt, wie es ist. Die Zeitzone sagt auch, wo Tage beginnen und wann also ein Rundgang war.</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>&amp;Zone</source>
        <translation>&amp;Zeitzone</translation>
    </message>
    <message>
        <source>°F and gallons</source>
        <translation>°F und Gallonen</translation>
    </message>
    <message>
        <source>°C and litres</source>
        <translation>°C und Liter</translation>
    </message>
    <message>
        <source>three letters: USD, EUR, GBP …</source>
        <translation>drei Buchstaben: USD, EUR, GBP …</translation>
    </message>
    <message>
        <source>A currency has three letters, as USD or EUR; or leave it empty.</source>
        <translation>Eine Währung hat drei Buchstaben wie USD oder EUR; oder leer lassen.</translation>
    </message>
    <message>
        <source>units, zone or currency changed</source>
        <translation>Einheiten, Zeitzone oder Währung geändert</translation>
    </message>
    <message>
        <source>mon</source>
        <translation>mo</translation>
    </message>
    <message>
        <source>tue</source>
        <translation>di</translation>
    </message>
    <message>
        <source>wed</source>
        <translation>mi</translation>
    </message>
    <message>
        <source>thu</source>
        <translation>do</translation>
    </message>
    <message>
        <source>fri</source>
        <translation>fr</translation>
    </message>
    <message>
        <source>sat</source>
        <translation>sa</translation>
    </message>
    <message>
        <source>sun</source>
        <translation>so</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>jeden tag</translation>
    </message>
    <message>
        <source>write a time of day, such as 16:00</source>
        <translation>eine Uhrzeit schreiben, etwa 16:00</translation>
    </message>
    <message>
        <source>mon – fri</source>
        <translation>mo – fr</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>write days such as mon – fri, or sat sun</source>
        <translation>Tage schreiben wie mo – fr oder sa so</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>Move the %1 up</source>
        <translation>%1 nach oben rücken</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Runter</translation>
    </message>
    <message>
        <source>Move the %1 down</source>
        <translation>%1 nach unten rücken</translation>
    </message>
    <message>
        <source>List: each row is a %1</source>
        <translation>Liste, jede Zeile: %1</translation>
    </message>
    <message>
        <source>Row %1, %2: %3.</source>
        <translation>Zeile %1, %2: %3.</translation>
    </message>
    <message>
        <source>a short name</source>
        <translation>ein kurzer Name</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>%1: now</source>
        <translation>%1: jetzt</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>Es ist %1</translation>
    </message>
    <message>
        <source>nothing is typed here</source>
        <translation>hier steht nichts</translation>
    </message>
    <message>
        <source>it must be above 0</source>
        <translation>es muss über 0 liegen</translation>
    </message>
    <message>
        <source>it can&apos;t be negative</source>
        <translation>es kann nicht negativ sein</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>What is wrong or asked</source>
        <translation>Was falsch ist oder gefragt wird</translation>
    </message>
    <message>
        <source>Yes, keep it so</source>
        <translation>Ja, so behalten</translation>
    </message>
    <message>
        <source>What you typed here has not been kept.</source>
        <translation>Was hier getippt wurde, ist nicht behalten.</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>&amp;All pages</source>
        <translation>&amp;Alle Seiten</translation>
    </message>
    <message>
        <source>Changes, the newest first</source>
        <translation>Änderungen, die neuesten zuerst</translation>
    </message>
    <message>
        <source>What the change did</source>
        <translation>Was die Änderung tat</translation>
    </message>
    <message>
        <source>&amp;Older ones</source>
        <translation>&amp;Ältere</translation>
    </message>
    <message>
        <source>What was changed, when and why</source>
        <translation>Was geändert wurde, wann und warum</translation>
    </message>
    <message>
        <source>Nothing was noted row by row.</source>
        <translation>Zeile für Zeile wurde nichts vermerkt.</translation>
    </message>
    <message>
        <source>Values in the store&apos;s own units: °C, K, kWh, litres.</source>
        <translation>Werte in den eigenen Einheiten des Speichers: °C, K, kWh, Liter.</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Sud</translation>
    </message>
    <message>
        <source>probe and vessel</source>
        <translation>Fühler und Gefäß</translation>
    </message>
    <message>
        <source>cause of an excursion</source>
        <translation>Ursache einer Bandverletzung</translation>
    </message>
    <message>
        <source>stage of a changed plan</source>
        <translation>Abschnitt eines geänderten Plans</translation>
    </message>
    <message>
        <source>stretch left out</source>
        <translation>ausgelassener Zeitraum</translation>
    </message>
    <message>
        <source>correction by hand</source>
        <translation>Berichtigung von Hand</translation>
    </message>
    <message>
        <source>reading by hand</source>
        <translation>Messwert von Hand</translation>
    </message>
    <message>
        <source>imported column</source>
        <translation>importierte Spalte</translation>
    </message>
    <message>
        <source>import</source>
        <translation>Import</translation>
    </message>
    <message>
        <source>journal note</source>
        <translation>Journalnotiz</translation>
    </message>
    <message>
        <source>corrected register</source>
        <translation>berichtigter Zählerstand</translation>
    </message>
    <message>
        <source>move of a meter</source>
        <translation>Umzug eines Zählers</translation>
    </message>
    <message>
        <source>register reading</source>
        <translation>Zählerstand</translation>
    </message>
    <message>
        <source>change of plan</source>
        <translation>Planänderung</translation>
    </message>
    <message>
        <source>stage of a named plan</source>
        <translation>Abschnitt eines benannten Plans</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>line of a file</source>
        <translation>Zeile einer Datei</translation>
    </message>
    <message>
        <source>end of a stage</source>
        <translation>Ende eines Abschnitts</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>price window</source>
        <translation>Preisfenster</translation>
    </message>
    <message>
        <source>corrected reading</source>
        <translation>berichtigter Messwert</translation>
    </message>
    <message>
        <source>what is weighed by</source>
        <translation>wonach gewichtet wird</translation>
    </message>
    <message>
        <source>weight of a criterion</source>
        <translation>Gewicht eines Kriteriums</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>accuracy k</source>
        <translation>Genauigkeit K</translation>
    </message>
    <message>
        <source>add k</source>
        <translation>dazu K</translation>
    </message>
    <message>
        <source>ambient sensor</source>
        <translation>Raumsensor</translation>
    </message>
    <message>
        <source>at</source>
        <translation>um</translation>
    </message>
    <message>
        <source>beer sensor</source>
        <translation>Biersensor</translation>
    </message>
    <message>
        <source>cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>corrected at</source>
        <translation>berichtigt um</translation>
    </message>
    <message>
        <source>criterion</source>
        <translation>Kriterium</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>decimals</source>
        <translation>Dezimalstellen</translation>
    </message>
    <message>
        <source>doubt k</source>
        <translation>Unsicherheit K</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>ends by</source>
        <translation>endet durch</translation>
    </message>
    <message>
        <source>event</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>final gravity</source>
        <translation>Enddichte</translation>
    </message>
    <message>
        <source>first at</source>
        <translation>erster um</translation>
    </message>
    <message>
        <source>first line</source>
        <translation>erste Zeile</translation>
    </message>
    <message>
        <source>from at</source>
        <translation>ab</translation>
    </message>
    <message>
        <source>from minute</source>
        <translation>ab Minute</translation>
    </message>
    <message>
        <source>gap limit ms</source>
        <translation>Lückengrenze ms</translation>
    </message>
    <message>
        <source>grace ms</source>
        <translation>Karenz ms</translation>
    </message>
    <message>
        <source>header</source>
        <translation>Kopfzeile</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>item</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>kwh</source>
        <translation>kWh</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>last at</source>
        <translation>letzter um</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>original gravity</source>
        <translation>Stammdichte</translation>
    </message>
    <message>
        <source>path</source>
        <translation>Pfad</translation>
    </message>
    <message>
        <source>pitched</source>
        <translation>angestellt</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>price per kwh</source>
        <translation>Preis je kWh</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>rated power w</source>
        <translation>Nennleistung W</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>resolution kwh</source>
        <translation>Auflösung kWh</translation>
    </message>
    <message>
        <source>retired at</source>
        <translation>stillgelegt um</translation>
    </message>
    <message>
        <source>rolls over at kwh</source>
        <translation>läuft über bei kWh</translation>
    </message>
    <message>
        <source>rows read</source>
        <translation>gelesene Zeilen</translation>
    </message>
    <message>
        <source>sample c</source>
        <translation>Probe °C</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>settle hours</source>
        <translation>Einschwingstunden</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>spec</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <source>taken back at</source>
        <translation>zurückgenommen um</translation>
    </message>
    <message>
        <source>target c</source>
        <translation>Sollwert °C</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>to at</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>to minute</source>
        <translation>bis Minute</translation>
    </message>
    <message>
        <source>tolerance k</source>
        <translation>Toleranz K</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>until gravity</source>
        <translation>bis Dichte</translation>
    </message>
    <message>
        <source>used at</source>
        <translation>benutzt um</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>Gefäß</translation>
    </message>
    <message>
        <source>vessels</source>
        <translation>Gefäße</translation>
    </message>
    <message>
        <source>volume l</source>
        <translation>Volumen l</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>by itself</source>
        <translation>von selbst</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>of</source>
        <translation>von</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Took back: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
    <message>
        <source>Did again: %1.</source>
        <translation>Wiederholt: %1.</translation>
    </message>
    <message>
        <source>as chosen</source>
        <translation>wie gewählt</translation>
    </message>
    <message>
        <source>%1 is</source>
        <translation>%1 ist</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>%1: %2 rows read, %3 readings new, %4 already there, %5 conflicting, %6 rejected.</source>
        <translation>%1: %2 Zeilen gelesen, %3 Messwerte neu, %4 schon da, %5 widersprüchlich, %6 abgelehnt.</translation>
    </message>
    <message>
        <source> Passed over, with all their rows: %1.</source>
        <translation> Übergangen, mit allen ihren Zeilen: %1.</translation>
    </message>
    <message>
        <source>%1 waits for its turn.</source>
        <translation>%1 wartet, bis es dran ist.</translation>
    </message>
    <message>
        <source>Looking at %1…</source>
        <translation>%1 wird angesehen…</translation>
    </message>
    <message>
        <source>Keeping %1…</source>
        <translation>%1 wird behalten…</translation>
    </message>
    <message>
        <source>%1 There is nothing new to keep.</source>
        <translation>%1 Es gibt nichts Neues zu behalten.</translation>
    </message>
    <message>
        <source>Kept. %1</source>
        <translation>Behalten. %1</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>asks</source>
        <translation>fragt</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>bereit</translation>
    </message>
    <message>
        <source>nothing new</source>
        <translation>nichts Neues</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>%1. Text: %2, columns parted by “%3”, decimal sign “%4”.</source>
        <translation>%1. Text: %2, Spalten getrennt durch „%3“, Dezimalzeichen „%4“.</translation>
    </message>
    <message>
        <source>%1. Text: %2, columns parted by “%3”.</source>
        <translation>%1. Text: %2, Spalten getrennt durch „%3“.</translation>
    </message>
    <message>
        <source>Passed over: %1.</source>
        <translation>Übergangen: %1.</translation>
    </message>
    <message>
        <source>Drop logs anywhere in the window, choose files, or paste rows. They are looked at first; nothing is kept without your word.</source>
        <translation>Protokolle irgendwo ins Fenster ziehen, Dateien wählen oder Zeilen einfügen. Sie werden zuerst angesehen; ohne ausdrückliche Wahl wird nichts behalten.</translation>
    </message>
    <message>
        <source>&amp;Choose files…</source>
        <translation>&amp;Dateien wählen…</translation>
    </message>
    <message>
        <source>Paste &amp;rows</source>
        <translation>&amp;Zeilen einfügen</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <source>Keep &amp;all</source>
        <translation>&amp;Alle behalten</translation>
    </message>
    <message>
        <source>Rows copied from a spreadsheet (Ctrl+V)</source>
        <translation>Aus einer Tabelle kopierte Zeilen (Strg+V)</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Protokolle</translation>
    </message>
    <message>
        <source>Share done</source>
        <translation>Erledigter Anteil</translation>
    </message>
    <message>
        <source>The logbook is open for reading only, so no log can be kept.</source>
        <translation>Das Logbuch ist nur zum Lesen geöffnet; es kann kein Protokoll behalten werden.</translation>
    </message>
    <message>
        <source>There are no rows to paste: copy some in a spreadsheet first.</source>
        <translation>Es gibt keine Zeilen zum Einfügen: zuerst welche in einer Tabelle kopieren.</translation>
    </message>
    <message>
        <source>pasted rows</source>
        <translation>eingefügte Zeilen</translation>
    </message>
    <message>
        <source>Nothing was kept.</source>
        <translation>Nichts wurde behalten.</translation>
    </message>
    <message>
        <source>&amp;Keep %1 readings</source>
        <translation>%1 Messwerte &amp;behalten</translation>
    </message>
    <message>
        <source>Keep &amp;all %1 that are ready</source>
        <translation>&amp;Alle %1 bereiten behalten</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Save the rejected rows</source>
        <translation>Abgelehnte Zeilen speichern</translation>
    </message>
    <message>
        <source>%1 rejected.csv</source>
        <translation>%1 abgelehnt.csv</translation>
    </message>
    <message>
        <source>Saved %1.</source>
        <translation>%1 gespeichert.</translation>
    </message>
    <message>
        <source>Watch a folder</source>
        <translation>Einen Ordner überwachen</translation>
    </message>
    <message>
        <source>Watch a file</source>
        <translation>Eine Datei überwachen</translation>
    </message>
    <message>
        <source>Logs (*.csv *.txt *.tsv *.log);;All files (*)</source>
        <translation>Protokolle (*.csv *.txt *.tsv *.log);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>comma ,</source>
        <translation>Komma ,</translation>
    </message>
    <message>
        <source>semicolon ;</source>
        <translation>Semikolon ;</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>Strich |</translation>
    </message>
    <message>
        <source>as found: %1</source>
        <translation>wie gefunden: %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Columns parted by</source>
        <translation>Spalten getrennt durch</translation>
    </message>
    <message>
        <source>Names of the columns</source>
        <translation>Namen der Spalten</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie gefunden</translation>
    </message>
    <message>
        <source>none: the columns are numbered</source>
        <translation>keine: die Spalten sind nummeriert</translation>
    </message>
    <message>
        <source>as the rows show</source>
        <translation>wie die Zeilen zeigen</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>a pattern of your own…</source>
        <translation>ein eigenes Muster…</translation>
    </message>
    <message>
        <source>1,234 is a little over one</source>
        <translation>1,234 ist etwas über eins</translation>
    </message>
    <message>
        <source>1,234 is over a thousand</source>
        <translation>1,234 ist über tausend</translation>
    </message>
    <message>
        <source>not said yet</source>
        <translation>noch nicht gesagt</translation>
    </message>
    <message>
        <source>it restarted at 0 (reset)</source>
        <translation>es begann wieder bei 0 (Neustart)</translation>
    </message>
    <message>
        <source>it passed its top (rollover)</source>
        <translation>es überschritt seinen Höchststand (Überlauf)</translation>
    </message>
    <message>
        <source>yyyy yy year · MM month · MMM its name · dd day · HH hour · hh with a for AM and PM · mm minute · ss second · &apos;words&apos; in quotes</source>
        <translation>yyyy yy Jahr · MM Monat · MMM sein Name · dd Tag · HH Stunde · hh mit a für AM und PM · mm Minute · ss Sekunde · &apos;Wörter&apos; in Anführungszeichen</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>The comma</source>
        <translation>Das Komma</translation>
    </message>
    <message>
        <source>Where the register falls</source>
        <translation>Wo das Zählwerk fällt</translation>
    </message>
    <message>
        <source>Zone of its clock</source>
        <translation>Zeitzone der Uhr</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>the logbook’s</source>
        <translation>die des Logbuchs</translation>
    </message>
    <message>
        <source>✓ %1 is %2</source>
        <translation>✓ %1 ist %2</translation>
    </message>
    <message>
        <source>line %1: %2 %3</source>
        <translation>Zeile %1: %2 %3</translation>
    </message>
    <message>
        <source>choose first which column has the time</source>
        <translation>zuerst wählen, welche Spalte die Zeit hat</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>ausgelassen: %1</translation>
    </message>
    <message>
        <source>the same again</source>
        <translation>noch einmal dasselbe</translation>
    </message>
    <message>
        <source>time in %1</source>
        <translation>Zeit in %1</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>what stands and is kept</source>
        <translation>was dasteht und bleibt</translation>
    </message>
    <message>
        <source>column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>why it is left out</source>
        <translation>warum ausgelassen</translation>
    </message>
    <message>
        <source>the header</source>
        <translation>die Kopfzeile</translation>
    </message>
    <message>
        <source>before the header</source>
        <translation>vor der Kopfzeile</translation>
    </message>
    <message>
        <source>twice in the file</source>
        <translation>zweimal in der Datei</translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 neu</translation>
    </message>
    <message>
        <source>%1 already there</source>
        <translation>%1 schon da</translation>
    </message>
    <message>
        <source>%1 conflicting</source>
        <translation>%1 widersprüchlich</translation>
    </message>
    <message>
        <source>%1 rejected</source>
        <translation>%1 abgelehnt</translation>
    </message>
    <message>
        <source>, the first %1 of them</source>
        <translation>, die ersten %1 davon</translation>
    </message>
    <message>
        <source>The file’s first rows</source>
        <translation>Die ersten Zeilen der Datei</translation>
    </message>
    <message>
        <source>What they become</source>
        <translation>Was sie werden</translation>
    </message>
    <message>
        <source>&amp;Guess anew</source>
        <translation>&amp;Neu raten</translation>
    </message>
    <message>
        <source>Without what was chosen for the last file of this shape</source>
        <translation>Ohne das, was für die letzte Datei dieser Form gewählt wurde</translation>
    </message>
    <message>
        <source>What the rows become stands here as soon as nothing about the file is open.</source>
        <translation>Was die Zeilen werden, steht hier, sobald an der Datei nichts mehr offen ist.</translation>
    </message>
    <message>
        <source>Opens these rows</source>
        <translation>Öffnet diese Zeilen</translation>
    </message>
    <message>
        <source>Rows named %1 are</source>
        <translation>Zeilen namens %1 sind</translation>
    </message>
    <message>
        <source>A new sensor</source>
        <translation>Ein neuer Sensor</translation>
    </message>
    <message>
        <source>A new meter</source>
        <translation>Ein neuer Zähler</translation>
    </message>
    <message>
        <source>the beer</source>
        <translation>das Bier</translation>
    </message>
    <message>
        <source>the room around it</source>
        <translation>den Raum darum</translation>
    </message>
    <message>
        <source>the chamber</source>
        <translation>die Kammer</translation>
    </message>
    <message>
        <source>the coolant</source>
        <translation>das Kühlmittel</translation>
    </message>
    <message>
        <source>gravity</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>It &amp;reads</source>
        <translation>Er &amp;misst</translation>
    </message>
    <message>
        <source>It belongs &amp;to</source>
        <translation>Er gehört &amp;zu</translation>
    </message>
    <message>
        <source>It &amp;counts for</source>
        <translation>Er zählt &amp;für</translation>
    </message>
    <message>
        <source>&amp;Set it up</source>
        <translation>An&amp;legen</translation>
    </message>
    <message>
        <source>A meter counts for a setup, and there is none yet: add one on the page Equipment.</source>
        <translation>Ein Zähler zählt für eine Anlage, und es gibt noch keine: auf der Seite Ausrüstung eine anlegen.</translation>
    </message>
    <message>
        <source>imported</source>
        <translation>importiert</translation>
    </message>
    <message>
        <source>Past imports</source>
        <translation>Frühere Importe</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Put back %1</source>
        <translation>%1 &amp;zurückholen</translation>
    </message>
    <message>
        <source>&amp;Take back %1</source>
        <translation>%1 &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>Rows behind the count</source>
        <translation>Zeilen hinter der Zahl</translation>
    </message>
    <message>
        <source>&amp;Save these as a file…</source>
        <translation>Als Datei &amp;speichern…</translation>
    </message>
    <message>
        <source>Back to the col&amp;umns</source>
        <translation>Zurück zu den &amp;Spalten</translation>
    </message>
    <message>
        <source>ignored</source>
        <translation>nicht beachtet</translation>
    </message>
    <message>
        <source>time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>a new sensor…</source>
        <translation>ein neuer Sensor…</translation>
    </message>
    <message>
        <source>a new meter…</source>
        <translation>ein neuer Zähler…</translation>
    </message>
    <message>
        <source>names, one a row</source>
        <translation>Namen, einer je Zeile</translation>
    </message>
    <message>
        <source>values of the names</source>
        <translation>Werte zu den Namen</translation>
    </message>
    <message>
        <source>units of the values</source>
        <translation>Einheiten der Werte</translation>
    </message>
    <message>
        <source>its unit</source>
        <translation>ihre Einheit</translation>
    </message>
    <message>
        <source>always %1</source>
        <translation>immer %1</translation>
    </message>
    <message>
        <source>%1 new readings kept</source>
        <translation>%1 neue Messwerte behalten</translation>
    </message>
    <message>
        <source>Watched files and folders</source>
        <translation>Überwachte Dateien und Ordner</translation>
    </message>
    <message>
        <source>Watch it no lon&amp;ger</source>
        <translation>&amp;Nicht mehr überwachen</translation>
    </message>
    <message>
        <source>New rows of a watched file come in by themselves while this window is open. Import one file of the kind first, so that its columns are known.</source>
        <translation>Neue Zeilen einer überwachten Datei kommen von selbst herein, solange dieses Fenster offen ist. Zuerst eine Datei dieser Art importieren, damit ihre Spalten bekannt sind.</translation>
    </message>
    <message>
        <source>&amp;Watch a file…</source>
        <translation>&amp;Datei überwachen…</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>&amp;Ordner überwachen…</translation>
    </message>
    <message>
        <source>last news</source>
        <translation>letzte Neuigkeit</translation>
    </message>
    <message>
        <source>nothing new yet</source>
        <translation>noch nichts Neues</translation>
    </message>
    <message>
        <source>watched %1</source>
        <translation>%1 überwacht</translation>
    </message>
    <message>
        <source>watched no longer: %1</source>
        <translation>nicht mehr überwacht: %1</translation>
    </message>
    <message>
        <source>all notes</source>
        <translation>alle Notizen</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>&amp;Keep the change</source>
        <translation>Änderung &amp;behalten</translation>
    </message>
    <message>
        <source>&amp;Remove the note</source>
        <translation>Notiz &amp;entfernen</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Notes of which batch</source>
        <translation>Notizen welchen Suds</translation>
    </message>
    <message>
        <source>Time of the note</source>
        <translation>Zeit der Notiz</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&amp;Time</source>
        <translation>&amp;Zeit</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>No notes yet. Ctrl+J in the window adds one.</source>
        <translation>Noch keine Notizen. Strg+J im Fenster legt eine an.</translation>
    </message>
    <message>
        <source>Choose a note in the table first.</source>
        <translation>Zuerst in der Tabelle eine Notiz wählen.</translation>
    </message>
    <message>
        <source>A note has a word or two; Remove takes it away.</source>
        <translation>Eine Notiz hat ein, zwei Wörter; Entfernen nimmt sie weg.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Kept. Undo brings the old note back.</source>
        <translation>Behalten. Rückgängig bringt die alte Notiz zurück.</translation>
    </message>
    <message>
        <source>Removed. Undo brings it back.</source>
        <translation>Entfernt. Rückgängig bringt sie zurück.</translation>
    </message>
    <message>
        <source>Journal note</source>
        <translation>Journalnotiz</translation>
    </message>
    <message>
        <source>Of which batch</source>
        <translation>Welchen Suds</translation>
    </message>
    <message>
        <source>lid opened, dry hops in, power cut …</source>
        <translation>Deckel geöffnet, Hopfen gestopft, Strom weg …</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>S&amp;ud</translation>
    </message>
    <message>
        <source>the whole logbook</source>
        <translation>das ganze Logbuch</translation>
    </message>
    <message>
        <source>Write a word or two first.</source>
        <translation>Zuerst ein, zwei Wörter schreiben.</translation>
    </message>
    <message>
        <source>The note is not kept. Press Escape or Cancel again to throw it away.</source>
        <translation>Die Notiz ist nicht behalten. Noch einmal Escape oder Abbrechen verwirft sie.</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Scroll the lanes</source>
        <translation>Die Bahnen rollen</translation>
    </message>
    <message>
        <source>&amp;Open the run of %1</source>
        <translation>Den Lauf von %1 ö&amp;ffnen</translation>
    </message>
    <message>
        <source>Set &amp;side by side with %1</source>
        <translation>&amp;Neben %1 stellen</translation>
    </message>
    <message>
        <source>Set &amp;side by side</source>
        <translation>Neb&amp;eneinander stellen</translation>
    </message>
    <message>
        <source>&amp;Change this batch…</source>
        <translation>Diesen Sud &amp;ändern…</translation>
    </message>
    <message>
        <source>Add a journal &amp;note…</source>
        <translation>Journal&amp;notiz hinzufügen…</translation>
    </message>
    <message>
        <source>Show only its &amp;time</source>
        <translation>Nur seine &amp;Zeit zeigen</translation>
    </message>
    <message>
        <source>Show &amp;all</source>
        <translation>&amp;Alles zeigen</translation>
    </message>
    <message>
        <source>Show all of the time (0, or a double-click beside the bars)</source>
        <translation>Die ganze Zeit zeigen (0 oder ein Doppelklick neben den Balken)</translation>
    </message>
    <message>
        <source>%1 batches</source>
        <translation>%1 Sude</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Rundgänge</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>No batch yet: Ctrl+B begins one.</source>
        <translation>Noch kein Sud: Strg+B beginnt einen.</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message numerus="yes">
        <source>it left its band %n times</source>
        <comment>it left its band once</comment>
        <translation>
            <numerusform>er verließ sein Band einmal</numerusform>
            <numerusform>er verließ sein Band %n Mal</numerusform>
        </translation>
    </message>
    <message>
        <source>a target was missed</source>
        <translation>ein Sollwert wurde verfehlt</translation>
    </message>
    <message>
        <source>it stayed in its band</source>
        <translation>er blieb in seinem Band</translation>
    </message>
    <message>
        <source>not enough data to say</source>
        <translation>zu wenig Daten für ein Urteil</translation>
    </message>
    <message>
        <source>%1, and it is still open</source>
        <translation>%1, und er läuft noch</translation>
    </message>
    <message>
        <source>still open: %1 so far</source>
        <translation>läuft noch: %1, bisher</translation>
    </message>
    <message>
        <source>%1 – still open (%2 days so far)</source>
        <translation>%1 – läuft noch (bisher %2 Tage)</translation>
    </message>
    <message>
        <source>%1 – %2 (%3 days)</source>
        <translation>%1 – %2 (%3 Tage)</translation>
    </message>
    <message numerus="yes">
        <source>%n stayed in the band</source>
        <comment>%n stayed in the band</comment>
        <translation>
            <numerusform>%n blieb im Band</numerusform>
            <numerusform>%n blieben im Band</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n left it</source>
        <comment>%n left it</comment>
        <translation>
            <numerusform>%n verließ es</numerusform>
            <numerusform>%n verließen es</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n missed a target</source>
        <comment>%n missed a target</comment>
        <translation>
            <numerusform>%n verfehlte einen Sollwert</numerusform>
            <numerusform>%n verfehlten einen Sollwert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without enough data</source>
        <comment>%n without enough data</comment>
        <translation>
            <numerusform>%n mit zu wenig Daten</numerusform>
            <numerusform>%n mit zu wenig Daten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n still open</source>
        <comment>%n still open</comment>
        <translation>
            <numerusform>%n läuft noch</numerusform>
            <numerusform>%n laufen noch</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 batches, %2 – %3
%4
Click to zoom to them.</source>
        <translation>%1 Sude, %2 – %3
%4
Ein Klick zoomt zu ihnen.</translation>
    </message>
    <message>
        <source>Missed: the round of %1</source>
        <translation>Versäumt: der Rundgang von %1</translation>
    </message>
    <message>
        <source>Read: %1</source>
        <translation>Abgelesen: %1</translation>
    </message>
    <message>
        <source>all read</source>
        <translation>alle abgelesen</translation>
    </message>
    <message>
        <source>%1 of them missed</source>
        <translation>%1 davon versäumt</translation>
    </message>
    <message>
        <source>%1 rounds, %2
%3 – %4</source>
        <translation>%1 Rundgänge, %2
%3 – %4</translation>
    </message>
    <message>
        <source>Every batch: %1</source>
        <translation>Jeder Sud: %1</translation>
    </message>
    <message>
        <source>line: the mean · pale: where it may lie, 95 %</source>
        <translation>Strich: das Mittel · blass: wo es liegen kann, 95 %</translation>
    </message>
    <message>
        <source>line: the mean</source>
        <translation>Strich: das Mittel</translation>
    </message>
    <message>
        <source>band ± %1</source>
        <translation>Band ± %1</translation>
    </message>
    <message>
        <source>bands: A ± %1, B ± %2</source>
        <translation>Bänder: A ± %1, B ± %2</translation>
    </message>
    <message>
        <source>A’s crash</source>
        <translation>Cold Crash A</translation>
    </message>
    <message>
        <source>B’s crash</source>
        <translation>Cold Crash B</translation>
    </message>
    <message>
        <source>A %1 · B %2, dashed</source>
        <translation>A %1 · B %2, gestrichelt</translation>
    </message>
    <message>
        <source>Energy since %1, kWh</source>
        <translation>Energie seit %1, kWh</translation>
    </message>
    <message>
        <source>A’s energy ÷ B’s at the same age</source>
        <translation>Energie A ÷ B im selben Alter</translation>
    </message>
    <message>
        <source>pale: the bounds</source>
        <translation>blass: die Grenzen</translation>
    </message>
    <message>
        <source>Time spent at each deviation, %1</source>
        <translation>Zeit bei jeder Abweichung, %1</translation>
    </message>
    <message>
        <source>green: the band</source>
        <translation>grün: das Band</translation>
    </message>
    <message>
        <source>Energy of each batch, kWh</source>
        <translation>Energie jedes Suds, kWh</translation>
    </message>
    <message>
        <source>whisker: the bounds of reading</source>
        <translation>Strich: die Grenzen des Ablesens</translation>
    </message>
    <message>
        <source>equal after %1 batches</source>
        <translation>gleich nach %1 Suden</translation>
    </message>
    <message>
        <source>Total cost</source>
        <translation>Gesamtkosten</translation>
    </message>
    <message>
        <source>Total cost, %1</source>
        <translation>Gesamtkosten, %1</translation>
    </message>
    <message>
        <source>batches</source>
        <translation>Sude</translation>
    </message>
    <message>
        <source>compared here</source>
        <translation>hier verglichen</translation>
    </message>
    <message>
        <source>Mean power between readings, W</source>
        <translation>Mittlere Leistung zwischen Zählerständen, W</translation>
    </message>
    <message>
        <source>● A %1 · ■ B %2</source>
        <translation>● A %1 · ■ B %2</translation>
    </message>
    <message>
        <source>room warmer than the beer, %1</source>
        <translation>Raum wärmer als das Bier, %1</translation>
    </message>
    <message>
        <source>The logbook is open for reading only: nothing can be kept.</source>
        <translation>Das Logbuch ist nur zum Lesen geöffnet: nichts kann behalten werden.</translation>
    </message>
    <message>
        <source>No batch is open: choose one in the lanes first.</source>
        <translation>Kein Sud ist geöffnet: zuerst einen in den Bahnen wählen.</translation>
    </message>
    <message>
        <source>Pitch now</source>
        <translation>Jetzt anstellen</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Anstellen</translation>
    </message>
    <message>
        <source>Turn down now</source>
        <translation>Jetzt herunterkühlen</translation>
    </message>
    <message>
        <source>Turn down</source>
        <translation>Herunterkühlen</translation>
    </message>
    <message>
        <source>End the batch now</source>
        <translation>Den Sud jetzt beenden</translation>
    </message>
    <message>
        <source>End the batch</source>
        <translation>Sud beenden</translation>
    </message>
    <message>
        <source>%1 has not ended: it runs.</source>
        <translation>%1 ist nicht zu Ende: er läuft.</translation>
    </message>
    <message>
        <source>%1: reopen</source>
        <translation>%1: wieder öffnen</translation>
    </message>
    <message>
        <source>Reopen</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Sud %1</translation>
    </message>
    <message>
        <source>Keep the changes</source>
        <translation>Änderungen behalten</translation>
    </message>
    <message>
        <source>from a time on; &amp;targets before stay</source>
        <translation>ab einer Zeit; die &amp;Sollwerte davor bleiben</translation>
    </message>
    <message>
        <source>it was planned &amp;wrong: for the past too</source>
        <translation>er war &amp;falsch geplant: auch für das Vergangene</translation>
    </message>
    <message>
        <source>The change of plan holds from</source>
        <translation>Die Planänderung gilt ab</translation>
    </message>
    <message>
        <source>Why the plan changed</source>
        <translation>Warum der Plan sich änderte</translation>
    </message>
    <message>
        <source>use of sensor and vessel</source>
        <translation>Gebrauch von Sensor und Gefäß</translation>
    </message>
    <message>
        <source>&amp;Split into a second vessel…</source>
        <translation>In ein zweites Gefäß &amp;teilen…</translation>
    </message>
    <message>
        <source>&amp;Remove this batch</source>
        <translation>Diesen Sud &amp;entfernen</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Angaben</translation>
    </message>
    <message>
        <source>Sensors and vessels</source>
        <translation>Sensoren und Gefäße</translation>
    </message>
    <message>
        <source>Planned and done</source>
        <translation>Geplant und getan</translation>
    </message>
    <message>
        <source>Part of %1, in a second vessel.</source>
        <translation>Teil von %1, in einem zweiten Gefäß.</translation>
    </message>
    <message>
        <source>A change holds</source>
        <translation>Eine Änderung gilt</translation>
    </message>
    <message>
        <source>why it changed</source>
        <translation>warum er sich änderte</translation>
    </message>
    <message>
        <source>From pitching on the beer is read by the sensor in the details. Where a probe was replaced or the beer moved, say from when on.</source>
        <translation>Ab dem Anstellen liest der Sensor in den Angaben das Bier. Wo ein Fühler ersetzt oder das Bier umgefüllt wurde, angeben, ab wann.</translation>
    </message>
    <message>
        <source>First planned</source>
        <translation>Zuerst geplant</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>%1: changed</source>
        <translation>%1: geändert</translation>
    </message>
    <message>
        <source>Remove %1? Its readings stay with their sensors. Press again to remove it.</source>
        <translation>%1 entfernen? Die Messwerte bleiben bei ihren Sensoren. Noch einmal drücken, um ihn zu entfernen.</translation>
    </message>
    <message>
        <source>%1: removed</source>
        <translation>%1: entfernt</translation>
    </message>
    <message>
        <source>a gravity lies between 0.980 and 1.200</source>
        <translation>eine Dichte liegt zwischen 0,980 und 1,200</translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation>Gefäß</translation>
    </message>
    <message>
        <source>Beer sensor</source>
        <translation>Biersensor</translation>
    </message>
    <message>
        <source>Ambient sensor</source>
        <translation>Raumsensor</translation>
    </message>
    <message>
        <source>Pitched</source>
        <translation>Angestellt</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Original gravity</source>
        <translation>Stammdichte</translation>
    </message>
    <message>
        <source>Final gravity</source>
        <translation>Enddichte</translation>
    </message>
    <message>
        <source>Gap limit</source>
        <translation>Lückengrenze</translation>
    </message>
    <message>
        <source>Grace</source>
        <translation>Karenz</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>läuft noch</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>darf leer sein</translation>
    </message>
    <message>
        <source>Set&amp;up</source>
        <translation>An&amp;lage</translation>
    </message>
    <message>
        <source>&amp;Vessel</source>
        <translation>&amp;Gefäß</translation>
    </message>
    <message>
        <source>&amp;Beer sensor</source>
        <translation>&amp;Biersensor</translation>
    </message>
    <message>
        <source>&amp;Ambient</source>
        <translation>&amp;Raum</translation>
    </message>
    <message>
        <source>&amp;Pitched</source>
        <translation>An&amp;gestellt</translation>
    </message>
    <message>
        <source>&amp;Ended</source>
        <translation>B&amp;eendet</translation>
    </message>
    <message>
        <source>Volu&amp;me</source>
        <translation>&amp;Volumen</translation>
    </message>
    <message>
        <source>&amp;Original gravity</source>
        <translation>&amp;Stammdichte</translation>
    </message>
    <message>
        <source>&amp;Final gravity</source>
        <translation>En&amp;ddichte</translation>
    </message>
    <message>
        <source>Gap &amp;limit</source>
        <translation>Lü&amp;ckengrenze</translation>
    </message>
    <message>
        <source>&amp;Grace</source>
        <translation>&amp;Karenz</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keiner</translation>
    </message>
    <message>
        <source>ramp to %1</source>
        <translation>Rampe auf %1</translation>
    </message>
    <message>
        <source>hold at %1</source>
        <translation>halten bei %1</translation>
    </message>
    <message>
        <source>%1: pitched</source>
        <translation>%1: angestellt</translation>
    </message>
    <message>
        <source>%1 is pitched at %2.</source>
        <translation>%1 ist angestellt um %2.</translation>
    </message>
    <message>
        <source> %1 begins: %2.</source>
        <translation> %1 beginnt: %2.</translation>
    </message>
    <message>
        <source>%1 ends at %2. %3 begins: %4.</source>
        <translation>%1 endet um %2. %3 beginnt: %4.</translation>
    </message>
    <message>
        <source>%1: %2 ended</source>
        <translation>%1: %2 beendet</translation>
    </message>
    <message>
        <source>%1: ended</source>
        <translation>%1: beendet</translation>
    </message>
    <message>
        <source>%1 ends at %2.</source>
        <translation>%1 endet um %2.</translation>
    </message>
    <message>
        <source> %1 is its last stage.</source>
        <translation> %1 ist der letzte Abschnitt.</translation>
    </message>
    <message>
        <source>%1: reopened</source>
        <translation>%1: wieder geöffnet</translation>
    </message>
    <message>
        <source>%1 runs on: its end at %2 is taken back.</source>
        <translation>%1 läuft weiter: das Ende um %2 ist zurückgenommen.</translation>
    </message>
    <message>
        <source>%1 is in vessel %2 at that time. Are both in it?</source>
        <translation>%1 ist zu dieser Zeit in Gefäß %2. Sind beide darin?</translation>
    </message>
    <message>
        <source>%1 reads %2 at that time. Does it read both?</source>
        <translation>%1 liest zu dieser Zeit %2. Liest er beide?</translation>
    </message>
    <message>
        <source>%1 has %2, and %3 runs in it at that time. Are both in it?</source>
        <translation>%1 hat %2, und %3 läuft zu dieser Zeit darin. Sind beide darin?</translation>
    </message>
    <message>
        <source>Pitching lies ahead, at %1. Is that meant?</source>
        <translation>Das Anstellen liegt voraus, um %1. Ist das so gemeint?</translation>
    </message>
    <message>
        <source>choose the sensor</source>
        <translation>den Sensor wählen</translation>
    </message>
    <message>
        <source>%1 (end)</source>
        <translation>%1 (Ende)</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>until turned down</source>
        <translation>bis heruntergekühlt</translation>
    </message>
    <message>
        <source>to the end</source>
        <translation>bis zum Ende</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>The plan changed at %1%2.</source>
        <translation>Der Plan änderte sich um %1%2.</translation>
    </message>
    <message>
        <source>%1 was ended by hand at %2.</source>
        <translation>%1 wurde um %2 von Hand beendet.</translation>
    </message>
    <message>
        <source>New batch</source>
        <translation>Neuer Sud</translation>
    </message>
    <message>
        <source>Start the batch</source>
        <translation>Sud beginnen</translation>
    </message>
    <message>
        <source>Part of %1, in a second vessel with a sensor of its own.</source>
        <translation>Teil von %1, in einem zweiten Gefäß mit eigenem Sensor.</translation>
    </message>
    <message>
        <source>Plan to start from</source>
        <translation>Plan als Ausgangspunkt</translation>
    </message>
    <message>
        <source>Plan f&amp;rom</source>
        <translation>Plan &amp;nach</translation>
    </message>
    <message>
        <source>as %1</source>
        <translation>wie %1</translation>
    </message>
    <message>
        <source>nothing: type it below</source>
        <translation>nichts: unten eintippen</translation>
    </message>
    <message>
        <source>Named plan</source>
        <translation>Benannter Plan</translation>
    </message>
    <message>
        <source>Keep the plan</source>
        <translation>Plan behalten</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>No&amp;tiz</translation>
    </message>
    <message>
        <source>The plan needs a name.</source>
        <translation>Der Plan braucht einen Namen.</translation>
    </message>
    <message>
        <source>There is a plan %1 already. Shall this one take its place?</source>
        <translation>Es gibt schon einen Plan %1. Soll dieser an seine Stelle treten?</translation>
    </message>
    <message>
        <source>plan %1 kept</source>
        <translation>Plan %1 behalten</translation>
    </message>
    <message>
        <source>until it is ended</source>
        <translation>bis er beendet wird</translation>
    </message>
    <message>
        <source>ramp to</source>
        <translation>Rampe auf</translation>
    </message>
    <message>
        <source>hold at</source>
        <translation>halten bei</translation>
    </message>
    <message>
        <source>The plan, drawn</source>
        <translation>Der Plan, gezeichnet</translation>
    </message>
    <message>
        <source>Band, plus or minus</source>
        <translation>Band, plus oder minus</translation>
    </message>
    <message>
        <source>Keep as a named plan…</source>
        <translation>Als benannten Plan behalten…</translation>
    </message>
    <message>
        <source>What is wrong with the plan</source>
        <translation>Was am Plan falsch ist</translation>
    </message>
    <message>
        <source>&amp;Hold band ±</source>
        <translation>&amp;Halteband ±</translation>
    </message>
    <message>
        <source>No stage yet: add one below.</source>
        <translation>Noch kein Abschnitt: unten einen hinzufügen.</translation>
    </message>
    <message>
        <source>the hours must be above 0</source>
        <translation>die Stunden müssen über 0 liegen</translation>
    </message>
    <message>
        <source>the band must be above 0</source>
        <translation>das Band muss über 0 liegen</translation>
    </message>
    <message>
        <source>the settling allowed can&apos;t be negative</source>
        <translation>das erlaubte Einschwingen kann nicht negativ sein</translation>
    </message>
    <message>
        <source>after its hours</source>
        <translation>nach Stunden</translation>
    </message>
    <message>
        <source>when turned down</source>
        <translation>beim Herunterkühlen</translation>
    </message>
    <message>
        <source>at a gravity</source>
        <translation>bei einer Dichte</translation>
    </message>
    <message>
        <source>Target, %1</source>
        <translation>Sollwert, %1</translation>
    </message>
    <message>
        <source>Lasts, h or d</source>
        <translation>Dauert, h oder d</translation>
    </message>
    <message>
        <source>a ramp needs hours</source>
        <translation>eine Rampe braucht Stunden</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Endet</translation>
    </message>
    <message>
        <source>Gravity</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>Band ±, %1</source>
        <translation>Band ±, %1</translation>
    </message>
    <message>
        <source>May settle</source>
        <translation>Einschwingen</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Beginnt</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>the one before</source>
        <translation>dem davor</translation>
    </message>
    <message>
        <source>The target of %1 is %2, %3. Is that meant?</source>
        <translation>Der Sollwert von %1 ist %2, %3. Ist das so gemeint?</translation>
    </message>
    <message>
        <source>a stage</source>
        <translation>einem Abschnitt</translation>
    </message>
    <message>
        <source>below freezing</source>
        <translation>unter dem Gefrierpunkt</translation>
    </message>
    <message>
        <source>hotter than beer ferments</source>
        <translation>heißer, als Bier gärt</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>What will be written</source>
        <translation>Was geschrieben wird</translation>
    </message>
    <message>
        <source>&amp;Leave the chosen ones out</source>
        <translation>Gewählte &amp;auslassen</translation>
    </message>
    <message>
        <source>&amp;Bring back</source>
        <translation>&amp;Zurückholen</translation>
    </message>
    <message>
        <source>&amp;Correct the chosen one</source>
        <translation>Den gewählten &amp;berichtigen</translation>
    </message>
    <message>
        <source>Sensor or meter</source>
        <translation>Sensor oder Zähler</translation>
    </message>
    <message>
        <source>The right value</source>
        <translation>Der richtige Wert</translation>
    </message>
    <message>
        <source>right value</source>
        <translation>richtiger Wert</translation>
    </message>
    <message>
        <source>why: probe lifted, battery low …</source>
        <translation>warum: Fühler gezogen, Batterie schwach …</translation>
    </message>
    <message>
        <source>The stretch ends before it begins.</source>
        <translation>Der Zeitraum endet, bevor er beginnt.</translation>
    </message>
    <message>
        <source>why: digits swapped, other meter read …</source>
        <translation>warum: Ziffern vertauscht, anderer Zähler gelesen …</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>logged</source>
        <translation>protokolliert</translation>
    </message>
    <message>
        <source>counts as</source>
        <translation>zählt als</translation>
    </message>
    <message>
        <source>remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>%1 before it</source>
        <translation>%1 davor</translation>
    </message>
    <message>
        <source>was %1, corrected %2</source>
        <translation>war %1, berichtigt %2</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Zählerstand</translation>
    </message>
    <message>
        <source>kWh since</source>
        <translation>kWh seither</translation>
    </message>
    <message>
        <source>No sensor or meter is on record yet. Add one on the Equipment page.</source>
        <translation>Noch kein Sensor oder Zähler eingetragen. Auf der Seite Ausrüstung einen hinzufügen.</translation>
    </message>
    <message>
        <source>The first %1 of this stretch; choose a shorter one to see the rest.</source>
        <translation>Die ersten %1 dieses Zeitraums; einen kürzeren wählen, um den Rest zu sehen.</translation>
    </message>
    <message numerus="yes">
        <source>%n readings in this stretch.</source>
        <comment>%n reading in this stretch.</comment>
        <translation>
            <numerusform>%n Messwert in diesem Zeitraum.</numerusform>
            <numerusform>%n Messwerte in diesem Zeitraum.</numerusform>
        </translation>
    </message>
    <message>
        <source>And %1 more; a report of the figures (CSV) has them all.</source>
        <translation>Und %1 weitere; ein Bericht der Zahlen (CSV) hat sie alle.</translation>
    </message>
    <message>
        <source>%1 · %2 · made %3</source>
        <translation>%1 · %2 · erstellt %3</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programm</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Erstellt</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>Readings are joined by straight lines where they are no further apart than the gap limit; what lies between readings further apart counts for nothing. A stage is judged from where the beer first enters its band (before that it settles) to its end: the beer is inside where it is no further from the target than the tolerance, edges included. Sure means that the verdict is the same with the band made narrower and wider by the sensor’s accuracy. Energy is exact at a meter’s readings and drawn straight between them; least and most are what the readings before and after, their last digit and the rated power allow. Heat is an estimate from volume and temperatures, good to a few percent.</source>
        <translation>Messwerte werden durch gerade Linien verbunden, wo sie nicht weiter auseinanderliegen als die Lückengrenze; was zwischen weiter entfernten liegt, zählt für nichts. Ein Abschnitt wird von dort an beurteilt, wo das Bier zuerst in sein Band kommt (davor schwingt es ein), bis zu seinem Ende: das Bier ist im Band, wo es vom Sollwert nicht weiter entfernt ist als die Toleranz, Ränder eingeschlossen. Sicher heißt, dass das Urteil dasselbe ist, wenn das Band um die Genauigkeit des Sensors enger und weiter gemacht wird. Energie ist an den Zählerständen exakt und dazwischen gerade gezogen; mindestens und höchstens sind, was die Stände davor und danach, ihre letzte Stelle und die Nennleistung zulassen. Wärme ist eine Schätzung aus Volumen und Temperaturen, auf wenige Prozent genau.</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Kenngrößen</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Kenngröße</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>Energy of both over the same elapsed time</source>
        <translation>Energie beider über dieselbe Laufzeit</translation>
    </message>
    <message>
        <source>Cumulative energy of A, %1, and B, %2, and their ratio. %3</source>
        <translation>Aufgelaufene Energie von A, %1, und B, %2, und ihr Verhältnis. %3</translation>
    </message>
    <message>
        <source>Pale: the least and the most that the meters’ readings and their accuracy allow.</source>
        <translation>Blass: mindestens und höchstens, was die Zählerstände und ihre Genauigkeit zulassen.</translation>
    </message>
    <message>
        <source>How fair is this?</source>
        <translation>Wie fair ist das?</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Was verschieden ist</translation>
    </message>
    <message>
        <source>what it does</source>
        <translation>was es bewirkt</translation>
    </message>
    <message>
        <source>touches</source>
        <translation>betrifft</translation>
    </message>
    <message>
        <source>Batches that went in</source>
        <translation>Sude, die eingingen</translation>
    </message>
    <message>
        <source>Computed from</source>
        <translation>Berechnet aus</translation>
    </message>
    <message>
        <source>Energies are compared over the elapsed time that is metered in both. One side is ahead only where the bounds of the two do not overlap; the bounds of energy hold the reading of the meters and their accuracy, those of temperature the sensors’ accuracy. </source>
        <translation>Energien werden über die Laufzeit verglichen, die in beiden gemessen ist. Eine Seite liegt nur vorn, wo die Grenzen der beiden sich nicht überlappen; die Grenzen der Energie enthalten das Ablesen der Zähler und ihre Genauigkeit, die der Temperatur die Genauigkeit der Sensoren. </translation>
    </message>
    <message>
        <source>Report of two side by side</source>
        <translation>Bericht über zwei nebeneinander</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>A is %1 · B is %2</source>
        <translation>A ist %1 · B ist %2</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Counted from %1; energy over the %2 h that are metered in both.</source>
        <translation>Gezählt ab %1; Energie über die %2 h, die in beiden gemessen sind.</translation>
    </message>
    <message>
        <source>%1, batch by batch</source>
        <translation>%1, Sud für Sud</translation>
    </message>
    <message>
        <source>Every batch’s figures</source>
        <translation>Die Zahlen jedes Suds</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Sud</translation>
    </message>
    <message>
        <source>idle</source>
        <translation>Leerlauf</translation>
    </message>
    <message>
        <source>Total cost over batches, energy %1</source>
        <translation>Gesamtkosten über Sude, Energie %1</translation>
    </message>
    <message>
        <source>Cost of parts and energy of A, %1, and B, %2. %3</source>
        <translation>Kosten von Teilen und Energie von A, %1, und B, %2. %3</translation>
    </message>
    <message>
        <source>What it costs</source>
        <translation>Was es kostet</translation>
    </message>
    <message>
        <source>Energy of a batch %1</source>
        <comment>at which price</comment>
        <translation>Energie eines Suds %1</translation>
    </message>
    <message>
        <source>Total after %1 batches</source>
        <translation>Gesamt nach %1 Suden</translation>
    </message>
    <message>
        <source>Judgement sheet</source>
        <translation>Bewertungsbogen</translation>
    </message>
    <message>
        <source>Criterion</source>
        <translation>Kriterium</translation>
    </message>
    <message>
        <source>how it was scored</source>
        <translation>wie benotet wurde</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Gesamt</translation>
    </message>
    <message>
        <source>The mean by weight</source>
        <translation>Das Mittel nach Gewicht</translation>
    </message>
    <message>
        <source>Deviation of both from target</source>
        <translation>Abweichung beider vom Sollwert</translation>
    </message>
    <message>
        <source>The beer’s deviation from target of A, %1, and B, %2, over elapsed time. %3</source>
        <translation>Die Abweichung des Biers vom Sollwert in A, %1, und B, %2, über die Laufzeit. %3</translation>
    </message>
    <message>
        <source>Time spent at each deviation</source>
        <translation>Zeit bei jeder Abweichung</translation>
    </message>
    <message>
        <source>How much of its judged time each spent at each deviation from target, A, %1, above B, %2. %3</source>
        <translation>Wie viel der beurteilten Zeit jeder bei jeder Abweichung vom Sollwert verbrachte, A, %1, über B, %2. %3</translation>
    </message>
    <message>
        <source>Batch by batch</source>
        <translation>Sud für Sud</translation>
    </message>
    <message>
        <source>In the same weather</source>
        <translation>Bei gleichem Wetter</translation>
    </message>
    <message>
        <source>same weather</source>
        <translation>gleiches Wetter</translation>
    </message>
    <message>
        <source>Mean power over how much warmer the room was</source>
        <translation>Mittlere Leistung darüber, wie viel wärmer der Raum war</translation>
    </message>
    <message>
        <source>A point for each time between two readings of the meters, and the line through them. </source>
        <translation>Ein Punkt für jede Zeit zwischen zwei Zählerständen und die Gerade durch sie. </translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>judgement</source>
        <translation>Bewertung</translation>
    </message>
    <message>
        <source>What would turn it:</source>
        <translation>Was sie wenden würde:</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>There is nothing to draw yet.</source>
        <translation>Noch ist nichts zu zeichnen.</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lesen</translation>
    </message>
    <message>
        <source>drawing</source>
        <translation>zeichnen</translation>
    </message>
    <message>
        <source>writing</source>
        <translation>schreiben</translation>
    </message>
    <message>
        <source>There is nothing to report yet: the logbook has no setup and no batch.</source>
        <translation>Noch ist nichts zu berichten: das Logbuch hat keine Anlage und keinen Sud.</translation>
    </message>
    <message>
        <source>The picture of %1 is on the clipboard, %2 × %3.</source>
        <translation>Das Bild von %1 ist in der Zwischenablage, %2 × %3.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>PDF, A4</source>
        <translation>PDF, A4</translation>
    </message>
    <message>
        <source>PDF, Letter</source>
        <translation>PDF, Letter</translation>
    </message>
    <message>
        <source>Page (HTML, one file)</source>
        <translation>Seite (HTML, eine Datei)</translation>
    </message>
    <message>
        <source>Figures (CSV)</source>
        <translation>Zahlen (CSV)</translation>
    </message>
    <message>
        <source>Picture (PNG)</source>
        <translation>Bild (PNG)</translation>
    </message>
    <message>
        <source>Picture as vectors (SVG)</source>
        <translation>Bild als Vektoren (SVG)</translation>
    </message>
    <message>
        <source>1920 × 1080, for a video</source>
        <translation>1920 × 1080, für ein Video</translation>
    </message>
    <message>
        <source>1080 × 1920, upright for a post</source>
        <translation>1080 × 1920, hochkant für einen Beitrag</translation>
    </message>
    <message>
        <source>1080 × 1080, square</source>
        <translation>1080 × 1080, quadratisch</translation>
    </message>
    <message>
        <source>report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Report of</source>
        <translation>Bericht über</translation>
    </message>
    <message>
        <source>Side by side with</source>
        <translation>Neben</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Hintergrund</translation>
    </message>
    <message>
        <source>&amp;Report of</source>
        <translation>&amp;Bericht über</translation>
    </message>
    <message>
        <source>&amp;Side by side with</source>
        <translation>&amp;Neben</translation>
    </message>
    <message>
        <source>&amp;Form</source>
        <translation>&amp;Form</translation>
    </message>
    <message>
        <source>Si&amp;ze</source>
        <translation>&amp;Größe</translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation>&amp;Hintergrund</translation>
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
        <source>&amp;Choose…</source>
        <translation>&amp;Wählen…</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1, all its batches</source>
        <translation>%1, alle Sude</translation>
    </message>
    <message>
        <source>Where the report goes</source>
        <translation>Wohin der Bericht kommt</translation>
    </message>
    <message>
        <source>Say what the file is to be called.</source>
        <translation>Angeben, wie die Datei heißen soll.</translation>
    </message>
    <message>
        <source>A file of that name stands there. Press “Write it” again to replace it, or choose another name.</source>
        <translation>Eine Datei dieses Namens gibt es dort schon. Noch einmal „Schreiben“ drücken, um sie zu ersetzen, oder einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>The report is written to %1.</source>
        <translation>Der Bericht ist nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Wird angehalten…</translation>
    </message>
    <message>
        <source>good to ± %1</source>
        <translation>auf ± %1 genau</translation>
    </message>
    <message>
        <source>accuracy unknown</source>
        <translation>Genauigkeit unbekannt</translation>
    </message>
    <message>
        <source>%1 added from %2 on</source>
        <translation>%1 dazu ab %2</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n Messwert</numerusform>
            <numerusform>%n Messwerte</numerusform>
        </translation>
    </message>
    <message>
        <source>counts in steps of %1 kWh</source>
        <translation>zählt in Schritten von %1 kWh</translation>
    </message>
    <message>
        <source>its last digit taken from its readings</source>
        <translation>letzte Stelle aus den Zählerständen</translation>
    </message>
    <message>
        <source>good to %1 %</source>
        <translation>auf %1 % genau</translation>
    </message>
    <message>
        <source>accuracy class unknown</source>
        <translation>Genauigkeitsklasse unbekannt</translation>
    </message>
    <message>
        <source>%1 of the hold time was seen</source>
        <translation>%1 der Haltezeit wurde gesehen</translation>
    </message>
    <message>
        <source>there was no hold time</source>
        <translation>es gab keine Haltezeit</translation>
    </message>
    <message>
        <source>Readings of the beer</source>
        <translation>Messwerte des Biers</translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>each stage its own</source>
        <translation>jeder Abschnitt seine eigene</translation>
    </message>
    <message>
        <source> (3 × the median interval)</source>
        <translation> (3 × der mittlere Abstand)</translation>
    </message>
    <message>
        <source>excursions shorter than %1 do not count</source>
        <translation>Bandverletzungen kürzer als %1 zählen nicht</translation>
    </message>
    <message>
        <source>none: every excursion counts</source>
        <translation>keine: jede Bandverletzung zählt</translation>
    </message>
    <message>
        <source>Coverage needed</source>
        <translation>Nötige Abdeckung</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>pitched %1</source>
        <translation>angestellt %1</translation>
    </message>
    <message>
        <source>ended %1</source>
        <translation>beendet %1</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>läuft noch</translation>
    </message>
    <message>
        <source>original gravity %1</source>
        <translation>Stammdichte %1</translation>
    </message>
    <message>
        <source>final %1</source>
        <comment>gravity</comment>
        <translation>Enddichte %1</translation>
    </message>
    <message>
        <source>From %1 to %2. %3. </source>
        <translation>Von %1 bis %2. %3. </translation>
    </message>
    <message>
        <source>%1: beer from %2 to %3. </source>
        <translation>%1: Bier von %2 bis %3. </translation>
    </message>
    <message>
        <source>Energy rises to %1 kWh. </source>
        <translation>Die Energie steigt auf %1 kWh. </translation>
    </message>
    <message>
        <source>The figures stand in the tables below.</source>
        <translation>Die Zahlen stehen in den Tabellen unten.</translation>
    </message>
    <message>
        <source>Green: the band.</source>
        <translation>Grün: das Band.</translation>
    </message>
    <message>
        <source>Hatched: settling, not judged.</source>
        <translation>Schraffiert: Einschwingen, nicht beurteilt.</translation>
    </message>
    <message>
        <source>Grey: not seen, or not metered.</source>
        <translation>Grau: nicht gesehen oder nicht gemessen.</translation>
    </message>
    <message>
        <source>Rings: the worst of each excursion.</source>
        <translation>Ringe: das Schlimmste jeder Bandverletzung.</translation>
    </message>
    <message>
        <source>Numbered squares: remarks of the journal.</source>
        <translation>Nummerierte Quadrate: Bemerkungen des Journals.</translation>
    </message>
    <message>
        <source>Nothing of this batch is logged or metered yet, so there is no chart.</source>
        <translation>Von diesem Sud ist noch nichts protokolliert oder gemessen, daher gibt es kein Bild.</translation>
    </message>
    <message>
        <source>Temperature, deviation and energy</source>
        <translation>Temperatur, Abweichung und Energie</translation>
    </message>
    <message>
        <source>Report of a run</source>
        <translation>Bericht über einen Lauf</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>certainty</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Worth a look</source>
        <translation>Einen Blick wert</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>metered</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>mean power, W</source>
        <translation>mittlere Leistung, W</translation>
    </message>
    <message>
        <source>Part of the run</source>
        <translation>Teil des Laufs</translation>
    </message>
    <message>
        <source>Where metered</source>
        <translation>Wo gemessen</translation>
    </message>
    <message>
        <source>Whole run</source>
        <translation>Ganzer Lauf</translation>
    </message>
    <message>
        <source>Before the crash</source>
        <translation>Vor dem Cold Crash</translation>
    </message>
    <message>
        <source>The crash</source>
        <translation>Der Cold Crash</translation>
    </message>
    <message>
        <source>Stage %1</source>
        <translation>Abschnitt %1</translation>
    </message>
    <message>
        <source>Energy by day</source>
        <translation>Energie nach Tagen</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Cost of the energy</source>
        <translation>Kosten der Energie</translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation>Preis einer kWh</translation>
    </message>
    <message>
        <source>by the prices of its time</source>
        <translation>nach den Preisen ihrer Zeit</translation>
    </message>
    <message>
        <source> kWh (least %1, most %2)</source>
        <translation> kWh (mindestens %1, höchstens %2)</translation>
    </message>
    <message>
        <source>A whole day, mean</source>
        <translation>Ein ganzer Tag, Mittel</translation>
    </message>
    <message>
        <source>Room above beer, mean</source>
        <translation>Raum über Bier, Mittel</translation>
    </message>
    <message>
        <source>Energy for each degree-day of lift</source>
        <translation>Energie je Gradtag Hub</translation>
    </message>
    <message>
        <source>Rates and money</source>
        <translation>Raten und Geld</translation>
    </message>
    <message>
        <source>Attenuation, apparent</source>
        <translation>Vergärungsgrad, scheinbar</translation>
    </message>
    <message>
        <source>Attenuation, real</source>
        <translation>Vergärungsgrad, tatsächlich</translation>
    </message>
    <message>
        <source>Alcohol by volume, simple</source>
        <translation>Alkohol (% vol), einfach</translation>
    </message>
    <message>
        <source>Alcohol by volume, Balling</source>
        <translation>Alkohol (% vol), Balling</translation>
    </message>
    <message>
        <source>Heat check of the crash</source>
        <translation>Wärmeprobe des Cold Crash</translation>
    </message>
    <message>
        <source>Beer, from</source>
        <translation>Bier, von</translation>
    </message>
    <message>
        <source>Beer, to</source>
        <translation>Bier, auf</translation>
    </message>
    <message>
        <source>Heat out of the beer</source>
        <translation>Wärme aus dem Bier</translation>
    </message>
    <message>
        <source>Energy used meanwhile</source>
        <translation>Energie in dieser Zeit</translation>
    </message>
    <message>
        <source> kWh of heat for each kWh used</source>
        <translation> kWh Wärme je verbrauchter kWh</translation>
    </message>
    <message>
        <source>Effective performance</source>
        <translation>Wirksame Leistungszahl</translation>
    </message>
    <message>
        <source>An estimate from volume and temperatures, good to a few percent.</source>
        <translation>Eine Schätzung aus Volumen und Temperaturen, auf wenige Prozent genau.</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>attenuation, apparent</source>
        <translation>Vergärungsgrad, scheinbar</translation>
    </message>
    <message>
        <source>Fermentation</source>
        <translation>Gärung</translation>
    </message>
    <message>
        <source>Energy and money</source>
        <translation>Energie und Geld</translation>
    </message>
    <message>
        <source>No meter was read while this batch ran.</source>
        <translation>Während dieses Suds wurde kein Zähler abgelesen.</translation>
    </message>
    <message>
        <source>to </source>
        <translation>auf </translation>
    </message>
    <message>
        <source>missed</source>
        <translation>verfehlt</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>a gap</source>
        <translation>eine Lücke</translation>
    </message>
    <message>
        <source>the stage’s end</source>
        <translation>das Ende des Abschnitts</translation>
    </message>
    <message>
        <source>coming back</source>
        <translation>die Rückkehr</translation>
    </message>
    <message>
        <source>▲ above</source>
        <translation>▲ darüber</translation>
    </message>
    <message>
        <source>▼ below</source>
        <translation>▼ darunter</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>settled in</source>
        <translation>eingeschwungen in</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>im Band</translation>
    </message>
    <message>
        <source>mean deviation, %1</source>
        <translation>mittlere Abweichung, %1</translation>
    </message>
    <message>
        <source>worst past edge, %1</source>
        <translation>weitestes jenseits des Rands, %1</translation>
    </message>
    <message>
        <source>Excursions</source>
        <translation>Bandverletzungen</translation>
    </message>
    <message>
        <source>lasted</source>
        <translation>dauerte</translation>
    </message>
    <message>
        <source>ended by</source>
        <translation>beendet durch</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Did they stay in their bands?</source>
        <translation>Blieben sie in ihren Bändern?</translation>
    </message>
    <message>
        <source>, partly metered</source>
        <translation>, teils gemessen</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Sum of the %1 metered</source>
        <translation>Summe der %1 gemessenen</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>room above beer, %1</source>
        <translation>Raum über Bier, %1</translation>
    </message>
    <message>
        <source>kWh for each %1·day</source>
        <translation>kWh je %1·Tag</translation>
    </message>
    <message>
        <source>Energy of each batch</source>
        <translation>Energie jedes Suds</translation>
    </message>
    <message>
        <source>A bar for each batch. %1 The figures stand in the tables below.</source>
        <translation>Ein Balken für jeden Sud. %1 Die Zahlen stehen in den Tabellen unten.</translation>
    </message>
    <message>
        <source>Under each name: ✓ stayed in the band, a number for its excursions, ↛ a target missed, ? not enough data, … still open.</source>
        <translation>Unter jedem Namen: ✓ blieb im Band, eine Zahl für die Bandverletzungen, ↛ ein Sollwert verfehlt, ? zu wenig Daten, … läuft noch.</translation>
    </message>
    <message>
        <source>price of one</source>
        <translation>Stückpreis</translation>
    </message>
    <message>
        <source>Sum of all pieces</source>
        <translation>Summe aller Stücke</translation>
    </message>
    <message>
        <source>Report of a season</source>
        <translation>Bericht über eine Saison</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Take it &amp;away</source>
        <translation>&amp;Wegnehmen</translation>
    </message>
    <message>
        <source>The right reading</source>
        <translation>Der richtige Stand</translation>
    </message>
    <message>
        <source>When it was read</source>
        <translation>Wann er abgelesen wurde</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source> · reads %1</source>
        <translation> · steht auf %1</translation>
    </message>
    <message>
        <source> · not read: type what you noted</source>
        <translation> · nicht abgelesen: das Notierte eintippen</translation>
    </message>
    <message>
        <source>The note is changed.</source>
        <translation>Die Notiz ist geändert.</translation>
    </message>
    <message>
        <source>Corrected; what was there is kept.</source>
        <translation>Berichtigt; was dort stand, ist bewahrt.</translation>
    </message>
    <message numerus="yes">
        <source>Kept %n readings.</source>
        <comment>Kept %n reading.</comment>
        <translation>
            <numerusform>%n Messwert behalten.</numerusform>
            <numerusform>%n Messwerte behalten.</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken away. Undo brings it back.</source>
        <translation>Weggenommen. Rückgängig bringt ihn zurück.</translation>
    </message>
    <message>
        <source>Write the time beside a reading that was taken at another hour. Type them on the Rounds page later.</source>
        <translation>Neben einen Wert, der zu anderer Stunde abgelesen wurde, die Zeit schreiben. Alles später auf der Seite Rundgänge eintippen.</translation>
    </message>
    <message>
        <source>last</source>
        <translation>zuletzt</translation>
    </message>
    <message>
        <source>Rounds from %1</source>
        <translation>Rundgänge ab %1</translation>
    </message>
    <message>
        <source>Round sheet</source>
        <translation>Rundgangblatt</translation>
    </message>
    <message>
        <source>mistyped</source>
        <translation>vertippt</translation>
    </message>
    <message>
        <source>nothing is kept; type it again</source>
        <translation>nichts wird behalten; noch einmal tippen</translation>
    </message>
    <message>
        <source>restarted at 0</source>
        <translation>begann wieder bei 0</translation>
    </message>
    <message>
        <source>counts what it reads now; what was lost before is a wider bound</source>
        <translation>zählt, was er jetzt zeigt; was davor verloren ging, ist eine weitere Grenze</translation>
    </message>
    <message>
        <source>over its top</source>
        <translation>über den Höchststand</translation>
    </message>
    <message>
        <source>counts up to the top and on from 0</source>
        <translation>zählt bis zum Höchststand und weiter ab 0</translation>
    </message>
    <message>
        <source>another meter</source>
        <translation>anderer Zähler</translation>
    </message>
    <message>
        <source>a new meter begins here, the old one goes out of service</source>
        <translation>hier beginnt ein neuer Zähler, der alte geht außer Dienst</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translation>Taste %1</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Taste T</translation>
    </message>
    <message>
        <source>the meter&apos;s top is not on record</source>
        <translation>der Höchststand des Zählers ist nicht eingetragen</translation>
    </message>
    <message>
        <source>%1 round</source>
        <translation>Rundgang %1</translation>
    </message>
    <message>
        <source>The meters are to be read.</source>
        <translation>Die Zähler sind abzulesen.</translation>
    </message>
    <message>
        <source>A hydrometer made for 20 °C, read at %1: the gravity is %2. What it showed is kept.</source>
        <translation>Ein Aräometer für 20 °C, abgelesen bei %1: die Dichte ist %2. Was es zeigte, ist bewahrt.</translation>
    </message>
    <message>
        <source>never read</source>
        <translation>nie abgelesen</translation>
    </message>
    <message>
        <source>today %1</source>
        <translation>heute %1</translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation>gestern %1</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <comment>pattern of a date</comment>
        <translation>dddd, d. MMMM</translation>
    </message>
    <message>
        <source>%1 round · %2 · now %3</source>
        <translation>Rundgang %1 · %2 · jetzt %3</translation>
    </message>
    <message>
        <source>%1 reading, %2</source>
        <translation>Wert %1, %2</translation>
    </message>
    <message>
        <source>%1 note</source>
        <translation>Notiz %1</translation>
    </message>
    <message>
        <source>sample at %1</source>
        <translation>Probe bei %1</translation>
    </message>
    <message>
        <source>%1 sample temperature, %2, may stay empty</source>
        <translation>Probentemperatur %1, %2, darf leer bleiben</translation>
    </message>
    <message>
        <source>How warm the sample was, if you know: warm wort is thinner and the hydrometer sinks deeper. It is kept beside the gravity, which stays as it was read.</source>
        <translation>Wie warm die Probe war, wenn bekannt: warme Würze ist dünner, und das Aräometer sinkt tiefer. Es steht neben der Dichte, die bleibt, wie sie abgelesen wurde.</translation>
    </message>
    <message>
        <source>can be kept</source>
        <translation>kann behalten werden</translation>
    </message>
    <message>
        <source>Type the gravity of the sample, or clear its temperature.</source>
        <translation>Die Dichte der Probe eintippen oder ihre Temperatur löschen.</translation>
    </message>
    <message>
        <source>%1 is far from the %2 expected. Press Enter again to keep it.</source>
        <translation>%1 ist weit von den erwarteten %2. Noch einmal Eingabe behält es.</translation>
    </message>
    <message>
        <source>%1 is far more than the %2 expected. Press Enter again to keep it.</source>
        <translation>%1 ist viel mehr als die erwarteten %2. Noch einmal Eingabe behält es.</translation>
    </message>
    <message>
        <source>Taken as a rollover of the register.</source>
        <translation>Als Überlauf des Zählwerks verstanden.</translation>
    </message>
    <message>
        <source>%1 is below the %2 before it. What happened?</source>
        <translation>%1 liegt unter den %2 davor. Was ist geschehen?</translation>
    </message>
    <message>
        <source>Change the &amp;time</source>
        <translation>&amp;Zeit ändern</translation>
    </message>
    <message>
        <source>Time of the round</source>
        <translation>Zeit des Rundgangs</translation>
    </message>
    <message>
        <source>the time is %1 for all</source>
        <translation>die Zeit ist für alle %1</translation>
    </message>
    <message>
        <source>the time for all:</source>
        <translation>die Zeit für alle:</translation>
    </message>
    <message>
        <source>Ta&amp;ke now</source>
        <translation>&amp;Jetzt nehmen</translation>
    </message>
    <message>
        <source>The last 14 rounds</source>
        <translation>Die letzten 14 Rundgänge</translation>
    </message>
    <message>
        <source>Ea&amp;rlier rounds</source>
        <translation>F&amp;rühere Rundgänge</translation>
    </message>
    <message>
        <source>Later rou&amp;nds</source>
        <translation>Spätere R&amp;undgänge</translation>
    </message>
    <message>
        <source>Enter on a round: correct it, or type one that was missed. Underlined: corrected, with what it was before. Open circle: missed.</source>
        <translation>Eingabe auf einem Rundgang: ihn berichtigen oder einen versäumten eintippen. Unterstrichen: berichtigt, mit dem früheren Wert. Offener Kreis: versäumt.</translation>
    </message>
    <message>
        <source>14 earlier rounds</source>
        <translation>14 frühere Rundgänge</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht abgelesen</translation>
    </message>
    <message>
        <source>&amp;Save the round</source>
        <translation>Rundgang &amp;speichern</translation>
    </message>
    <message>
        <source>Enter: next field · Ctrl+Enter: save the round ·</source>
        <translation>Eingabe: nächstes Feld · Strg+Eingabe: Rundgang speichern ·</translation>
    </message>
    <message>
        <source>Two weeks to fill in by hand, in front of the meters:</source>
        <translation>Zwei Wochen zum Ausfüllen von Hand, vor den Zählern:</translation>
    </message>
    <message>
        <source>Round sheet as P&amp;DF…</source>
        <translation>Rundgangblatt als P&amp;DF…</translation>
    </message>
    <message>
        <source>&amp;Print it…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>rounds.pdf</source>
        <translation>rundgaenge.pdf</translation>
    </message>
    <message>
        <source>The round sheet is in %1.</source>
        <translation>Das Rundgangblatt ist in %1.</translation>
    </message>
    <message>
        <source>last reading</source>
        <translation>zuletzt gelesen</translation>
    </message>
    <message>
        <source>expected now</source>
        <translation>jetzt erwartet</translation>
    </message>
    <message>
        <source>No meter is in service. Add one on the Equipment page (Alt+4).</source>
        <translation>Kein Zähler ist im Einsatz. Auf der Seite Ausrüstung (Alt+4) einen hinzufügen.</translation>
    </message>
    <message>
        <source>That is still to come; a round can be typed later, not before.</source>
        <translation>Das kommt erst noch; ein Rundgang kann später getippt werden, nicht vorher.</translation>
    </message>
    <message>
        <source>%1 took its place with this reading. Undo takes it back.</source>
        <translation>%1 nahm mit diesem Stand seinen Platz ein. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Nothing is kept yet: one reading needs another look.</source>
        <translation>Noch ist nichts behalten: ein Wert braucht einen zweiten Blick.</translation>
    </message>
    <message>
        <source>Nothing was typed.</source>
        <translation>Nichts wurde getippt.</translation>
    </message>
    <message>
        <source>%1: cause of the excursion</source>
        <translation>%1: Ursache der Bandverletzung</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>&amp;Cause</source>
        <translation>&amp;Ursache</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>spread (standard deviation)</source>
        <translation>Streuung (Standardabweichung)</translation>
    </message>
    <message>
        <source>size (root mean square)</source>
        <translation>Größe (quadratisches Mittel)</translation>
    </message>
    <message>
        <source>Distribution of the deviation</source>
        <translation>Verteilung der Abweichung</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <translation>%1 bis %2: %3</translation>
    </message>
    <message>
        <source>%1 of the held time</source>
        <translation>%1 der gehaltenen Zeit</translation>
    </message>
    <message>
        <source>How far from target</source>
        <translation>Wie weit vom Sollwert</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>bounds unknown</source>
        <translation>Grenzen unbekannt</translation>
    </message>
    <message>
        <source>at %1 a kWh</source>
        <translation>zu %1 je kWh</translation>
    </message>
    <message>
        <source>a whole day</source>
        <translation>ein ganzer Tag</translation>
    </message>
    <message>
        <source>mean power</source>
        <translation>mittlere Leistung</translation>
    </message>
    <message>
        <source>per °F·day of lift</source>
        <translation>je °F·Tag Hub</translation>
    </message>
    <message>
        <source>per °C·day of lift</source>
        <translation>je °C·Tag Hub</translation>
    </message>
    <message>
        <source>before the crash</source>
        <translation>vor dem Cold Crash</translation>
    </message>
    <message>
        <source>the crash</source>
        <translation>der Cold Crash</translation>
    </message>
    <message>
        <source>heat out of the beer</source>
        <translation>Wärme aus dem Bier</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>for each kWh used</source>
        <translation>je verbrauchter kWh</translation>
    </message>
    <message>
        <source>of heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>attenuation, real</source>
        <translation>Vergärungsgrad, tatsächlich</translation>
    </message>
    <message>
        <source>alcohol by volume</source>
        <translation>Alkohol (% vol)</translation>
    </message>
    <message>
        <source>Try other limits</source>
        <translation>Andere Grenzen probieren</translation>
    </message>
    <message>
        <source>&amp;Keep for this batch</source>
        <translation>&amp;Für diesen Sud behalten</translation>
    </message>
    <message>
        <source>Back to its &amp;own</source>
        <translation>&amp;Zurück zu den eigenen</translation>
    </message>
    <message>
        <source>the record stays</source>
        <translation>der Eintrag bleibt</translation>
    </message>
    <message>
        <source>Hold band, ±</source>
        <translation>Halteband, ±</translation>
    </message>
    <message>
        <source>Excursions shorter than this do not count.</source>
        <translation>Kürzere Bandverletzungen zählen nicht.</translation>
    </message>
    <message>
        <source>Readings farther apart than this leave a gap that nobody saw. By itself: three times the usual distance of the readings, at most 2 h.</source>
        <translation>Messwerte, die weiter auseinanderliegen, lassen eine Lücke, die niemand sah. Von selbst: das Dreifache des üblichen Abstands, höchstens 2 h.</translation>
    </message>
    <message>
        <source>Hold ban&amp;d</source>
        <translation>Halteban&amp;d</translation>
    </message>
    <message>
        <source>Gap l&amp;imit</source>
        <translation>Lücken&amp;grenze</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Dann: %1</translation>
    </message>
    <message>
        <source>Give it a &amp;cause…</source>
        <translation>&amp;Ursache angeben…</translation>
    </message>
    <message>
        <source>click to see</source>
        <translation>Klick zeigt es</translation>
    </message>
    <message>
        <source>From volume and temperatures, good to a few percent.</source>
        <translation>Aus Volumen und Temperaturen, auf wenige Prozent genau.</translation>
    </message>
    <message>
        <source>No batch is open.</source>
        <translation>Kein Sud ist geöffnet.</translation>
    </message>
    <message>
        <source>Click a bar in the lanes to open its run.</source>
        <translation>Ein Klick auf einen Balken in den Bahnen öffnet seinen Lauf.</translation>
    </message>
    <message>
        <source>, cut by a gap</source>
        <translation>, von einer Lücke abgeschnitten</translation>
    </message>
    <message>
        <source>, cut by the stage’s end</source>
        <translation>, vom Ende des Abschnitts abgeschnitten</translation>
    </message>
    <message>
        <source>worst</source>
        <translation>weitestes</translation>
    </message>
    <message>
        <source>%1 ± %2, from %3</source>
        <translation>%1 ± %2, ab %3</translation>
    </message>
    <message>
        <source>for</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>past the edge</source>
        <translation>jenseits</translation>
    </message>
    <message>
        <source>%1 Cause: %2</source>
        <translation>%1 Ursache: %2</translation>
    </message>
    <message>
        <source>Nothing that counts was seen yet.</source>
        <translation>Noch wurde nichts gesehen, das zählt.</translation>
    </message>
    <message>
        <source>Those shorter than %1 do not count for the verdict.</source>
        <translation>Kürzere als %1 zählen nicht für das Urteil.</translation>
    </message>
    <message>
        <source>None. Every moment outside the band would count.</source>
        <translation>Keine. Jeder Augenblick außerhalb des Bandes würde zählen.</translation>
    </message>
    <message>
        <source>Every moment outside the band counts.</source>
        <translation>Jeder Augenblick außerhalb des Bandes zählt.</translation>
    </message>
    <message>
        <source>Every batch&apos;s figure</source>
        <translation>Die Zahl jedes Suds</translation>
    </message>
    <message>
        <source>Measure of every batch</source>
        <translation>Kenngröße jedes Suds</translation>
    </message>
    <message>
        <source>counted &amp;from</source>
        <translation>gezählt &amp;ab</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>A und B tauschen</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Gezählt ab</translation>
    </message>
    <message>
        <source>Batches that count</source>
        <translation>Sude, die zählen</translation>
    </message>
    <message>
        <source>pitching</source>
        <translation>Anstellen</translation>
    </message>
    <message>
        <source>%1 + %2 batches</source>
        <translation>%1 + %2 Sude</translation>
    </message>
    <message>
        <source>Judgement</source>
        <translation>Bewertung</translation>
    </message>
    <message>
        <source>weights are yours, 0 to 5</source>
        <translation>eigene Gewichte, 0 bis 5</translation>
    </message>
    <message>
        <source>another criterion</source>
        <translation>weiteres Kriterium</translation>
    </message>
    <message>
        <source>Another criterion</source>
        <translation>Weiteres Kriterium</translation>
    </message>
    <message>
        <source>Weight of %1</source>
        <translation>Gewicht von %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation>%1 von %2: %3</translation>
    </message>
    <message>
        <source>Total cost over batches</source>
        <translation>Gesamtkosten über Sude</translation>
    </message>
    <message>
        <source>Parts and energy of a batch</source>
        <translation>Teile und Energie eines Suds</translation>
    </message>
    <message>
        <source>Batches a year</source>
        <translation>Sude im Jahr</translation>
    </message>
    <message>
        <source>Another price of a kWh</source>
        <translation>Anderer Preis einer kWh</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Each batch</source>
        <translation>Jeder Sud</translation>
    </message>
    <message>
        <source>Energy of both over the same time</source>
        <translation>Energie beider über dieselbe Zeit</translation>
    </message>
    <message>
        <source>Choose two batches or two setups.</source>
        <translation>Zwei Sude oder zwei Anlagen wählen.</translation>
    </message>
    <message>
        <source>A %1 · B %2</source>
        <translation>A %1 · B %2</translation>
    </message>
    <message>
        <source>As brewed, each in its own weather: %1 %2</source>
        <translation>Wie gebraut, jeder in seinem Wetter: %1 %2</translation>
    </message>
    <message>
        <source>In brackets: the least and the most that the figure can be.</source>
        <translation>In Klammern: mindestens und höchstens, was die Zahl sein kann.</translation>
    </message>
    <message>
        <source>%1: %2. %3: %4. In brackets: where the mean of many such batches would lie, 95 times in 100.</source>
        <translation>%1: %2. %3: %4. In Klammern: wo das Mittel vieler solcher Sude läge, 95-mal in 100.</translation>
    </message>
    <message>
        <source>Room warmer than the beer by</source>
        <translation>Raum wärmer als das Bier um</translation>
    </message>
    <message>
        <source>Hold of</source>
        <translation>Haltezeit von</translation>
    </message>
    <message>
        <source>Ask for a room warmer than the beer by</source>
        <translation>Mit einem Raum wärmer als das Bier um</translation>
    </message>
    <message>
        <source>over</source>
        <translation>über</translation>
    </message>
    <message>
        <source>Empty: the mean of both.</source>
        <translation>Leer: das Mittel beider.</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Aussehen</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>Wie der &amp;Schreibtisch</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>a size of text</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>&amp;Text size</source>
        <translation>&amp;Textgröße</translation>
    </message>
    <message>
        <source>The text has the chosen size from the next start on.</source>
        <translation>Der Text hat die gewählte Größe ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>About Holdband</source>
        <translation>Über Holdband</translation>
    </message>
    <message>
        <source>Holdband %1</source>
        <translation>Holdband %1</translation>
    </message>
    <message>
        <source>A logbook for home-brew fermentation runs: did a batch stay in its band, how sure is that, and what did it use.

Licence: GNU General Public License, version 3 or later. No warranty.

Care:%1</source>
        <translation>Ein Logbuch für Gärläufe daheim: blieb ein Sud in seinem Band, wie sicher ist das, und was hat er verbraucht.

Lizenz: GNU General Public License, Version 3 oder später. Keine Gewähr.

Vorsicht:%1</translation>
    </message>
    <message>
        <source>1  Your cooling arrangement</source>
        <translation>1  Die eigene Kühlanlage</translation>
    </message>
    <message>
        <source>what chills the beer, its parts and what they cost</source>
        <translation>was das Bier kühlt, ihre Teile und was sie kosten</translation>
    </message>
    <message>
        <source>2  Its watt-hour meter</source>
        <translation>2  Ihr Wattstundenzähler</translation>
    </message>
    <message>
        <source>the plug-in meter that you read by eye</source>
        <translation>der Steckdosenzähler, der von Auge abgelesen wird</translation>
    </message>
    <message>
        <source>3  The probe in the beer</source>
        <translation>3  Der Fühler im Bier</translation>
    </message>
    <message>
        <source>and one for the room; how far each can be trusted</source>
        <translation>und einer für den Raum; wie weit jedem zu trauen ist</translation>
    </message>
    <message>
        <source>4  The batch and its plan</source>
        <translation>4  Der Sud und sein Plan</translation>
    </message>
    <message>
        <source>target temperatures stage by stage, and when it was pitched</source>
        <translation>Sollwerte Abschnitt für Abschnitt, und wann angestellt wurde</translation>
    </message>
    <message>
        <source>5  The first reading</source>
        <translation>5  Der erste Zählerstand</translation>
    </message>
    <message>
        <source>what the meter shows now; logs can be dropped on the window any time</source>
        <translation>was der Zähler jetzt zeigt; Protokolle können jederzeit auf das Fenster gezogen werden</translation>
    </message>
    <message>
        <source>done</source>
        <translation>getan</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>zu tun</translation>
    </message>
    <message>
        <source>No copy of today: %1 The change is kept all the same.</source>
        <translation>Keine Kopie von heute: %1 Die Änderung ist trotzdem behalten.</translation>
    </message>
    <message>
        <source>Open for reading only: %1. Nothing typed here can be kept.</source>
        <translation>Nur zum Lesen geöffnet: %1. Hier Getipptes kann nicht behalten werden.</translation>
    </message>
    <message>
        <source>The round that you typed is not kept. Save it, or close the window again to leave it.</source>
        <translation>Der getippte Rundgang ist nicht behalten. Ihn speichern, oder das Fenster noch einmal schließen, um ihn zu lassen.</translation>
    </message>
    <message>
        <source>%1 is damaged, or another program wrote in it: it no longer fits its seal.</source>
        <translation>%1 ist beschädigt, oder ein anderes Programm schrieb hinein: es passt nicht mehr zu seinem Siegel.</translation>
    </message>
    <message>
        <source>Restored as %1; the logbook that was there before stays as it is.</source>
        <translation>Als %1 wiederhergestellt; das frühere Logbuch bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Logbooks (*.holdband);;All files (*)</source>
        <translation>Logbücher (*.holdband);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>There is no logbook at %1.</source>
        <translation>Es gibt kein Logbuch unter %1.</translation>
    </message>
    <message>
        <source>%1 &quot;New logbook…&quot; makes one there.</source>
        <translation>%1 „Neues Logbuch…“ legt dort eines an.</translation>
    </message>
    <message>
        <source>The folder %1 can&apos;t be made.</source>
        <translation>Der Ordner %1 kann nicht angelegt werden.</translation>
    </message>
    <message>
        <source>Making the sample logbook …</source>
        <translation>Das Beispiellogbuch wird gemacht …</translation>
    </message>
    <message>
        <source>Open a logbook</source>
        <translation>Ein Logbuch öffnen</translation>
    </message>
    <message>
        <source>Where the new logbook goes</source>
        <translation>Wohin das neue Logbuch kommt</translation>
    </message>
    <message>
        <source>my.holdband</source>
        <translation>meins.holdband</translation>
    </message>
    <message>
        <source>Load a description</source>
        <translation>Eine Beschreibung laden</translation>
    </message>
    <message>
        <source>Descriptions (*.json)</source>
        <translation>Beschreibungen (*.json)</translation>
    </message>
    <message>
        <source>Import logs</source>
        <translation>Protokolle importieren</translation>
    </message>
    <message>
        <source>Open a logbook first, then drop the log again.</source>
        <translation>Zuerst ein Logbuch öffnen, dann das Protokoll noch einmal hineinziehen.</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Logbook</source>
        <translation>&amp;Logbuch</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Import a log…</source>
        <translation>Protokoll &amp;importieren…</translation>
    </message>
    <message>
        <source>&amp;Load a description…</source>
        <translation>Beschreibung &amp;laden…</translation>
    </message>
    <message>
        <source>&amp;Report…</source>
        <translation>&amp;Bericht…</translation>
    </message>
    <message>
        <source>&amp;Copy the picture</source>
        <translation>Bild &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Units, zone and currency…</source>
        <translation>&amp;Einheiten, Zeitzone und Währung…</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>&amp;Sicherungen…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Been&amp;den</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Journal note…</source>
        <translation>Journal&amp;notiz…</translation>
    </message>
    <message>
        <source>Journa&amp;l…</source>
        <translation>&amp;Journal…</translation>
    </message>
    <message>
        <source>&amp;Readings…</source>
        <translation>&amp;Messwerte…</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation>&amp;Verlauf…</translation>
    </message>
    <message>
        <source>&amp;New batch…</source>
        <translation>&amp;Neuer Sud…</translation>
    </message>
    <message>
        <source>&amp;Pitch now…</source>
        <translation>Jetzt &amp;anstellen…</translation>
    </message>
    <message>
        <source>&amp;Turn down now…</source>
        <translation>Jetzt &amp;herunterkühlen…</translation>
    </message>
    <message>
        <source>&amp;End now…</source>
        <translation>Jetzt &amp;beenden…</translation>
    </message>
    <message>
        <source>&amp;Reopen…</source>
        <translation>&amp;Wieder öffnen…</translation>
    </message>
    <message>
        <source>&amp;Split it over a second vessel…</source>
        <translation>Auf zwei Gefäße &amp;teilen…</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>&amp;Vergrößern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>The run as &amp;tables…</source>
        <translation>Der Lauf als &amp;Tabellen…</translation>
    </message>
    <message>
        <source>&amp;Notify me of due rounds</source>
        <translation>Fällige Rundgänge &amp;melden</translation>
    </message>
    <message>
        <source>&amp;Chamber and coolant</source>
        <translation>Kammer und Kühl&amp;mittel</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>How &amp;figures are computed</source>
        <translation>Wie &amp;Zahlen berechnet werden</translation>
    </message>
    <message>
        <source>Reading a &amp;meter</source>
        <translation>Einen Zähler a&amp;blesen</translation>
    </message>
    <message>
        <source>&amp;Sensors and their logs</source>
        <translation>&amp;Sensoren und ihre Protokolle</translation>
    </message>
    <message>
        <source>&amp;Care</source>
        <translation>&amp;Vorsicht</translation>
    </message>
    <message>
        <source>&amp;Help for this page</source>
        <translation>&amp;Hilfe zu dieser Seite</translation>
    </message>
    <message>
        <source>About Hold&amp;band</source>
        <translation>Ü&amp;ber Holdband</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Imports</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>%1 round is due now (Alt+1)</source>
        <translation>Rundgang %1 ist jetzt fällig (Alt+1)</translation>
    </message>
    <message>
        <source>Next round due %1</source>
        <translation>Nächster Rundgang fällig %1</translation>
    </message>
    <message>
        <source>Next round due tomorrow %1</source>
        <translation>Nächster Rundgang fällig morgen %1</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>vor %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>vor %1 h</translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <comment>%n day ago</comment>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>No batch is running, so no round is due.</source>
        <translation>Kein Sud läuft, also ist kein Rundgang fällig.</translation>
    </message>
    <message>
        <source>%1 last read %2</source>
        <translation>%1 zuletzt gelesen %2</translation>
    </message>
    <message>
        <source>%1 never read</source>
        <translation>%1 nie gelesen</translation>
    </message>
    <message>
        <source>Open the &amp;sample logbook</source>
        <translation>Das Bei&amp;spiellogbuch öffnen</translation>
    </message>
    <message>
        <source>O&amp;pen a logbook…</source>
        <translation>Ein Logbuch ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;New logbook…</source>
        <translation>&amp;Neues Logbuch…</translation>
    </message>
    <message>
        <source>Load a &amp;description…</source>
        <translation>Eine &amp;Beschreibung laden…</translation>
    </message>
    <message>
        <source>A logbook for fermentation runs</source>
        <translation>Ein Logbuch für Gärläufe</translation>
    </message>
    <message>
        <source>%1: five steps to the first run</source>
        <translation>%1: fünf Schritte zum ersten Lauf</translation>
    </message>
    <message>
        <source>Look at the sample logbook first, or open one of your own.</source>
        <translation>Zuerst das Beispiellogbuch ansehen oder ein eigenes öffnen.</translation>
    </message>
    <message>
        <source>Open a logbook, or make a new one.</source>
        <translation>Ein Logbuch öffnen oder ein neues anlegen.</translation>
    </message>
    <message>
        <source>Take them in order. Everything can be changed later, and what was done can be undone. Who has it all in a description file can load that instead.</source>
        <translation>Der Reihe nach. Alles lässt sich später ändern und Getanes rückgängig machen. Wer alles in einer Beschreibungsdatei hat, kann stattdessen diese laden.</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the code of the language that this catalogue is in</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>ambient</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>chamber</source>
        <translation>Kammer</translation>
    </message>
    <message>
        <source>coolant</source>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>ramp</source>
        <translation>Rampe</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>halten</translation>
    </message>
    <message>
        <source>rollover</source>
        <translation>Überlauf</translation>
    </message>
    <message>
        <source>reset</source>
        <translation>Neustart</translation>
    </message>
    <message numerus="yes">
        <source>%n vessels</source>
        <comment>%n vessel</comment>
        <translation>
            <numerusform>%n Gefäß</numerusform>
            <numerusform>%n Gefäße</numerusform>
        </translation>
    </message>
    <message>
        <source>Lang&amp;uage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>The texts are in the chosen language from the next start on.</source>
        <translation>Die Texte sind ab dem nächsten Start in der gewählten Sprache.</translation>
    </message>
</context>
</TS>

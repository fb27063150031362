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
        <translation>der Betrieb endet, bevor er beginnt</translation>
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
        <source>add one</source>
        <translation>einen hinzufügen</translation>
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
        <source>change a choice, or choose the file again</source>
        <translation>eine Wahl ändern oder die Datei neu wählen</translation>
    </message>
    <message>
        <source>changed a note of %1</source>
        <translation>Notiz zu %1 geändert</translation>
    </message>
    <message>
        <source>changed a note</source>
        <translation>Notiz geändert</translation>
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
        <translation>der Sud endet, bevor er angestellt wird</translation>
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
        <translation>Messwert von %1 berichtigt</translation>
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
        <source>left out a stretch of %1</source>
        <translation>Zeitraum von %1 ausgelassen</translation>
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
        <source>the volume is given twice, in litres and in gallons</source>
        <translation>die Menge ist doppelt angegeben, in Litern und in Gallonen</translation>
    </message>
    <message>
        <source>give it once</source>
        <translation>einmal angeben</translation>
    </message>
    <message>
        <source>the excursion ends before it begins</source>
        <translation>die Bandverletzung endet, bevor sie beginnt</translation>
    </message>
    <message>
        <source>the key is missing</source>
        <translation>der Schlüssel fehlt</translation>
    </message>
    <message>
        <source>there is neither a cause nor a note</source>
        <translation>es gibt weder eine Ursache noch eine Notiz</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is none of %2</source>
        <translation>„%1“ gehört nicht zu %2</translation>
    </message>
    <message>
        <source>this is no Holdband description: the key &quot;holdband&quot; is missing</source>
        <translation>das ist keine Holdband-Beschreibung: der Schlüssel &quot;holdband&quot; fehlt</translation>
    </message>
    <message>
        <source>this description is of a newer kind than this program knows</source>
        <translation>diese Beschreibung ist von neuerer Art, als dieses Programm kennt</translation>
    </message>
    <message>
        <source>read it with a newer Holdband</source>
        <translation>sie mit einem neueren Holdband lesen</translation>
    </message>
    <message>
        <source>give %1 or %2</source>
        <translation>%1 oder %2 angeben</translation>
    </message>
    <message>
        <source>it is one of %1</source>
        <translation>möglich sind %1</translation>
    </message>
    <message>
        <source>not a time and a line</source>
        <translation>keine Zeit und Zeile</translation>
    </message>
    <message>
        <source>the file can&apos;t be made: %1</source>
        <translation>die Datei lässt sich nicht anlegen: %1</translation>
    </message>
    <message>
        <source>check the folder and its permissions</source>
        <translation>den Ordner und seine Rechte prüfen</translation>
    </message>
    <message>
        <source>the file can&apos;t be written: %1</source>
        <translation>die Datei lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>make room on the disk, or choose another place</source>
        <translation>Platz auf dem Datenträger schaffen oder einen anderen Ort wählen</translation>
    </message>
    <message>
        <source>the file can&apos;t be named: %1</source>
        <translation>die Datei lässt sich nicht benennen: %1</translation>
    </message>
    <message>
        <source>there is no such folder</source>
        <translation>diesen Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>einen anderen Ort wählen</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>name a file in it</source>
        <translation>eine Datei darin nennen</translation>
    </message>
    <message>
        <source>this is no regular file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>choose another name, or --force to replace it</source>
        <translation>einen anderen Namen wählen oder sie mit --force ersetzen</translation>
    </message>
    <message>
        <source>choose a new or an empty folder</source>
        <translation>einen neuen oder leeren Ordner wählen</translation>
    </message>
    <message>
        <source>the folder can&apos;t be made: %1</source>
        <translation>der Ordner lässt sich nicht anlegen: %1</translation>
    </message>
    <message>
        <source>the file can&apos;t be read: %1</source>
        <translation>die Datei lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>check its name</source>
        <translation>ihren Namen prüfen</translation>
    </message>
    <message>
        <source>name a file</source>
        <translation>eine Datei nennen</translation>
    </message>
    <message>
        <source>the file is too large</source>
        <translation>die Datei ist zu groß</translation>
    </message>
    <message>
        <source>at most %1 MiB</source>
        <translation>höchstens %1 MiB</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>this is no JSON</source>
        <translation>das ist kein JSON</translation>
    </message>
    <message>
        <source>look for a missing comma, quote or bracket there</source>
        <translation>dort ein fehlendes Komma, Anführungszeichen oder eine Klammer suchen</translation>
    </message>
    <message>
        <source>the JSON holds a number or text that can&apos;t be read</source>
        <translation>das JSON enthält eine Zahl oder einen Text, die sich nicht lesen lassen</translation>
    </message>
    <message>
        <source>text</source>
        <comment>kind of JSON value</comment>
        <translation>Text</translation>
    </message>
    <message>
        <source>a number</source>
        <comment>kind of JSON value</comment>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a list</source>
        <comment>kind of JSON value</comment>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>an object</source>
        <comment>kind of JSON value</comment>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>null</source>
        <comment>kind of JSON value</comment>
        <translation>null</translation>
    </message>
    <message>
        <source>true or false</source>
        <comment>kind of JSON value</comment>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>%1 is not between %2 and %3</source>
        <translation>%1 liegt nicht zwischen %2 und %3</translation>
    </message>
    <message>
        <source>%1 is not a whole number</source>
        <translation>%1 ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>the temperature is given twice, in °C and in °F</source>
        <translation>die Temperatur ist doppelt angegeben, in °C und in °F</translation>
    </message>
    <message>
        <source>the difference is given twice, in °C and in °F</source>
        <translation>der Unterschied ist doppelt angegeben, in °C und in °F</translation>
    </message>
    <message>
        <source>the difference must not be below %1</source>
        <translation>der Unterschied darf nicht unter %1 liegen</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is unknown</source>
        <translation>der Schlüssel „%1“ ist unbekannt</translation>
    </message>
    <message>
        <source>correct the header, or take the file out of the description and import it with --unit</source>
        <translation>die Kopfzeile berichtigen, oder die Datei aus der Beschreibung nehmen und mit --unit importieren</translation>
    </message>
    <message>
        <source>the meter &quot;%1&quot; has a reading at that instant already</source>
        <translation>der Zähler „%1“ hat zu diesem Zeitpunkt schon einen Stand</translation>
    </message>
    <message>
        <source>batches, causes of &quot;%1&quot;</source>
        <translation>batches, Ursachen von „%1“</translation>
    </message>
    <message>
        <source>the logbook counts in %1, the description in %2</source>
        <translation>das Logbuch rechnet in %1, die Beschreibung in %2</translation>
    </message>
    <message>
        <source>load it into another logbook</source>
        <translation>sie in ein anderes Logbuch laden</translation>
    </message>
    <message>
        <source>either a sensor or a batch must be named</source>
        <translation>entweder ein Sensor oder ein Sud muss genannt sein</translation>
    </message>
    <message>
        <source>the stretch ends before it begins</source>
        <translation>der Zeitraum endet, bevor er beginnt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no time of day</source>
        <translation>„%1“ ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>write it as 16:00</source>
        <translation>wie 16:00 schreiben</translation>
    </message>
    <message>
        <source>a round&apos;s window ends after it begins, on the same day</source>
        <translation>das Zeitfenster eines Rundgangs endet, nachdem es beginnt, am selben Tag</translation>
    </message>
    <message>
        <source>a remembered choice of columns can&apos;t be read</source>
        <translation>eine gemerkte Spaltenwahl lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>year first</source>
        <translation>Jahr zuerst</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>Monat zuerst</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>Tag zuerst</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>the dates fit more than one order, such as &quot;%1&quot;</source>
        <translation>die Datumsangaben passen zu mehr als einer Reihenfolge, etwa „%1“</translation>
    </message>
    <message>
        <source>say --date-order %1</source>
        <translation>--date-order %1 angeben</translation>
    </message>
    <message>
        <source>the dates have no common order: &quot;%1&quot; in line %2 can&apos;t be month first, &quot;%3&quot; in line %4 can&apos;t be day first</source>
        <translation>die Datumsangaben haben keine gemeinsame Reihenfolge: „%1“ in Zeile %2 kann nicht mit dem Monat beginnen, „%3“ in Zeile %4 nicht mit dem Tag</translation>
    </message>
    <message>
        <source>say --date-order %1 to leave the others out</source>
        <translation>--date-order %1 angeben, um die übrigen auszulassen</translation>
    </message>
    <message>
        <source>%1: %2 occurs in line %3</source>
        <translation>%1: %2 kommt in Zeile %3 vor</translation>
    </message>
    <message>
        <source>the first column whose rows are times</source>
        <translation>die erste Spalte, deren Zeilen Zeiten sind</translation>
    </message>
    <message>
        <source>a row is longer than 64 KiB</source>
        <translation>eine Zeile ist länger als 64 KiB</translation>
    </message>
    <message>
        <source>this is no log of a few sensors</source>
        <translation>das ist kein Protokoll weniger Sensoren</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>there is no header: the first row has a time in it</source>
        <translation>es gibt keine Kopfzeile: in der ersten Zeile steht eine Zeit</translation>
    </message>
    <message>
        <source>there are no rows below the header</source>
        <translation>unter der Kopfzeile stehen keine Zeilen</translation>
    </message>
    <message>
        <source>no column of times was found below a header</source>
        <translation>unter einer Kopfzeile wurde keine Spalte mit Zeiten gefunden</translation>
    </message>
    <message>
        <source>name it with --time &quot;COLUMN&quot; or --time &quot;DATE COLUMN+TIME COLUMN&quot;; the first row has: %1</source>
        <translation>sie mit --time &quot;COLUMN&quot; oder --time &quot;DATE COLUMN+TIME COLUMN&quot; nennen; die erste Zeile hat: %1</translation>
    </message>
    <message>
        <source>no row begins in line %1</source>
        <translation>in Zeile %1 beginnt keine Datenzeile</translation>
    </message>
    <message>
        <source>the header is one of the first %1 rows; say its line, or 0 where there is none</source>
        <translation>die Kopfzeile ist eine der ersten %1 Zeilen; ihre Nummer angeben, oder 0, wenn es keine gibt</translation>
    </message>
    <message>
        <source>the header has only one column</source>
        <translation>die Kopfzeile hat nur eine Spalte</translation>
    </message>
    <message>
        <source>say another line, or what parts the columns</source>
        <translation>eine andere Zeile angeben, oder was die Spalten trennt</translation>
    </message>
    <message>
        <source>this is no header: it has a time in it</source>
        <translation>das ist keine Kopfzeile: es steht eine Zeit darin</translation>
    </message>
    <message>
        <source>say another line, or 0 where there is none</source>
        <translation>eine andere Zeile angeben, oder 0, wenn es keine gibt</translation>
    </message>
    <message>
        <source>no column of times was found below it</source>
        <translation>darunter wurde keine Spalte mit Zeiten gefunden</translation>
    </message>
    <message>
        <source>say another line, or name the time’s column; this one has: %1</source>
        <translation>eine andere Zeile angeben oder die Spalte der Zeit nennen; diese hat: %1</translation>
    </message>
    <message>
        <source>the header is not in line %1</source>
        <translation>die Kopfzeile steht nicht in Zeile %1</translation>
    </message>
    <message>
        <source>look at the file again</source>
        <translation>die Datei noch einmal ansehen</translation>
    </message>
    <message>
        <source>there are only %1 columns</source>
        <translation>es gibt nur %1 Spalten</translation>
    </message>
    <message>
        <source>choose the column of the time</source>
        <translation>die Spalte der Zeit wählen</translation>
    </message>
    <message>
        <source>%1 on %2 exists twice in %3, and the rows don&apos;t show which is meant</source>
        <translation>%1 am %2 gibt es in %3 zweimal, und die Zeilen zeigen nicht, welche Zeit gemeint ist</translation>
    </message>
    <message>
        <source>write offsets in the file (%1 or %2), or say --zone %3 or --zone %4 if the logger&apos;s clock was never changed</source>
        <translation>Zeitversätze in die Datei schreiben (%1 oder %2), oder --zone %3 oder --zone %4 angeben, wenn die Uhr des Loggers nie verstellt wurde</translation>
    </message>
    <message>
        <source>the first row holds values</source>
        <translation>die erste Zeile enthält Werte</translation>
    </message>
    <message>
        <source>it is as wide as most rows</source>
        <translation>sie ist so breit wie die meisten Zeilen</translation>
    </message>
    <message>
        <source>its header is the meter’s name</source>
        <translation>ihre Kopfzeile ist der Name des Zählers</translation>
    </message>
    <message>
        <source>its header is the sensor’s name</source>
        <translation>ihre Kopfzeile ist der Name des Sensors</translation>
    </message>
    <message>
        <source>it is the meter’s name</source>
        <translation>es ist der Name des Zählers</translation>
    </message>
    <message>
        <source>it is the sensor’s name</source>
        <translation>es ist der Name des Sensors</translation>
    </message>
    <message>
        <source>its rows are times of day</source>
        <translation>ihre Zeilen sind Uhrzeiten</translation>
    </message>
    <message>
        <source>its rows are dates</source>
        <translation>ihre Zeilen sind Datumsangaben</translation>
    </message>
    <message>
        <source>its rows are times</source>
        <translation>ihre Zeilen sind Zeiten</translation>
    </message>
    <message>
        <source>there are no numbers in it</source>
        <translation>sie enthält keine Zahlen</translation>
    </message>
    <message>
        <source>another column has that name</source>
        <translation>eine andere Spalte hat diesen Namen</translation>
    </message>
    <message>
        <source>nothing in the logbook has that name</source>
        <translation>nichts im Logbuch heißt so</translation>
    </message>
    <message>
        <source>it repeats a few names</source>
        <translation>sie wiederholt einige Namen</translation>
    </message>
    <message>
        <source>the only column of numbers</source>
        <translation>die einzige Spalte mit Zahlen</translation>
    </message>
    <message>
        <source>its rows are units</source>
        <translation>ihre Zeilen sind Einheiten</translation>
    </message>
    <message>
        <source>no header: %1</source>
        <translation>keine Kopfzeile: %1</translation>
    </message>
    <message>
        <source>the header is in line %1: %2</source>
        <translation>die Kopfzeile steht in Zeile %1: %2</translation>
    </message>
    <message>
        <source>it gives times and numbers</source>
        <translation>es ergibt Zeiten und Zahlen</translation>
    </message>
    <message>
        <source>times and numbers follow</source>
        <translation>Zeiten und Zahlen folgen</translation>
    </message>
    <message>
        <source>as chosen</source>
        <translation>wie gewählt</translation>
    </message>
    <message numerus="yes">
        <source>the log has %n columns with the header &quot;%1&quot;</source>
        <comment>the log has %n column with the header &quot;%1&quot;</comment>
        <translation>
            <numerusform>das Protokoll hat %n Spalte mit der Kopfzeile „%1“</numerusform>
            <numerusform>das Protokoll hat %n Spalten mit der Kopfzeile „%1“</numerusform>
        </translation>
    </message>
    <message>
        <source>rename one of them in the file</source>
        <translation>eine davon in der Datei umbenennen</translation>
    </message>
    <message>
        <source>the log has no column &quot;%1&quot;</source>
        <translation>das Protokoll hat keine Spalte „%1“</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>%1, line %2, column %3</source>
        <translation>%1, Zeile %2, Spalte %3</translation>
    </message>
    <message>
        <source>there is no sensor and no meter &quot;%1&quot;</source>
        <translation>es gibt weder Sensor noch Zähler „%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is given two columns</source>
        <translation>„%1“ hat zwei Spalten bekommen</translation>
    </message>
    <message>
        <source>name it once</source>
        <translation>einmal nennen</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>there is no column %1</source>
        <translation>es gibt keine Spalte %1</translation>
    </message>
    <message>
        <source>the file has %1</source>
        <comment>columns</comment>
        <translation>die Datei hat %1</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; holds the time</source>
        <translation>die Spalte „%1“ enthält die Zeit</translation>
    </message>
    <message>
        <source>choose another column for &quot;%1&quot;</source>
        <translation>eine andere Spalte für „%1“ wählen</translation>
    </message>
    <message>
        <source>no column is called like a sensor or meter</source>
        <translation>keine Spalte heißt wie ein Sensor oder Zähler</translation>
    </message>
    <message>
        <source>the reading was stopped</source>
        <translation>das Lesen wurde abgebrochen</translation>
    </message>
    <message>
        <source>read as Windows-1252, since not all of it is UTF-8: %1</source>
        <translation>als Windows-1252 gelesen, weil nicht alles UTF-8 ist: %1</translation>
    </message>
    <message>
        <source>the byte-order mark says UTF-8, but the text isn&apos;t</source>
        <translation>die Bytereihenfolge-Marke sagt UTF-8, der Text ist es aber nicht</translation>
    </message>
    <message>
        <source>save the file again as UTF-8</source>
        <translation>die Datei neu als UTF-8 speichern</translation>
    </message>
    <message>
        <source>choose another</source>
        <translation>etwas anderes wählen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is given twice</source>
        <translation>„%1“ ist zweimal vergeben</translation>
    </message>
    <message>
        <source>choose it once</source>
        <translation>einmal wählen</translation>
    </message>
    <message>
        <source>no name in the file is a sensor’s or meter’s yet</source>
        <translation>noch gehört kein Name in der Datei zu einem Sensor oder Zähler</translation>
    </message>
    <message>
        <source>choose beside each name what it is</source>
        <translation>neben jedem Namen wählen, was er ist</translation>
    </message>
    <message>
        <source>no column is a sensor’s or meter’s yet</source>
        <translation>noch gehört keine Spalte zu einem Sensor oder Zähler</translation>
    </message>
    <message>
        <source>choose what its columns are</source>
        <translation>wählen, was die Spalten sind</translation>
    </message>
    <message>
        <source>no column has the time yet</source>
        <translation>noch hat keine Spalte die Zeit</translation>
    </message>
    <message>
        <source>choose it</source>
        <translation>sie wählen</translation>
    </message>
    <message>
        <source>a column of units belongs to a log with one value a row</source>
        <translation>eine Spalte mit Einheiten gehört zu einem Protokoll mit einem Wert je Zeile</translation>
    </message>
    <message>
        <source>choose which columns have the names and the values</source>
        <translation>wählen, welche Spalten die Namen und die Werte haben</translation>
    </message>
    <message>
        <source>the old meter was read at that time or later</source>
        <translation>der alte Zähler wurde zu dieser Zeit oder später abgelesen</translation>
    </message>
    <message>
        <source>give the time at which the new one was in its place</source>
        <translation>die Zeit angeben, zu der der neue an seinem Platz war</translation>
    </message>
    <message>
        <source>there is no meter &quot;%1&quot;</source>
        <translation>es gibt keinen Zähler „%1“</translation>
    </message>
    <message>
        <source>as chosen before</source>
        <translation>wie zuvor gewählt</translation>
    </message>
    <message>
        <source>%1 kWh of %2</source>
        <translation>%1 kWh vom %2</translation>
    </message>
    <message>
        <source>a register can&apos;t read %1</source>
        <translation>ein Zählwerk kann nicht %1 zeigen</translation>
    </message>
    <message>
        <source>%1 is more than a register here can show</source>
        <translation>%1 ist mehr, als ein Zählwerk hier zeigen kann</translation>
    </message>
    <message>
        <source>%1 is at or above the register&apos;s top of %2 kWh</source>
        <translation>%1 erreicht oder übersteigt das Ende des Zählwerks bei %2 kWh</translation>
    </message>
    <message>
        <source>the meter was not in service at %1</source>
        <translation>der Zähler war am %1 nicht in Betrieb</translation>
    </message>
    <message>
        <source>check the time, or read the meter that was</source>
        <translation>die Zeit prüfen, oder den Zähler ablesen, der es war</translation>
    </message>
    <message>
        <source>the register&apos;s top is not on record, so a rollover can&apos;t be counted</source>
        <translation>das Ende des Zählwerks ist nicht bekannt, also lässt sich kein Überlauf zählen</translation>
    </message>
    <message>
        <source>give the meter rolls_over_at_kwh</source>
        <translation>dem Zähler rolls_over_at_kwh geben</translation>
    </message>
    <message>
        <source>%1 is below %2</source>
        <translation>%1 liegt unter %2</translation>
    </message>
    <message>
        <source>is it mistyped? Else say the event: rollover (it passed its top) or reset (it restarted at 0); another meter is entered as one of its own</source>
        <translation>vertippt? Sonst das Ereignis angeben: rollover (Überlauf am Ende) oder reset (Neubeginn bei 0); ein anderer Zähler wird als eigener eingetragen</translation>
    </message>
    <message>
        <source>correct that reading instead</source>
        <translation>stattdessen jenen Zählerstand berichtigen</translation>
    </message>
    <message>
        <source>%1 is above the later %2</source>
        <translation>%1 liegt über dem späteren %2</translation>
    </message>
    <message>
        <source>check the number and its time</source>
        <translation>die Zahl und ihre Zeit prüfen</translation>
    </message>
    <message>
        <source>%1 is in the future</source>
        <translation>%1 liegt in der Zukunft</translation>
    </message>
    <message>
        <source>check the time</source>
        <translation>die Zeit prüfen</translation>
    </message>
    <message>
        <source>&quot;%1&quot;</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>type it as 1.050</source>
        <translation>wie 1,050 eintippen</translation>
    </message>
    <message>
        <source>beer is never that cold or hot</source>
        <translation>so kalt oder heiß ist Bier nie</translation>
    </message>
    <message>
        <source>the reading is no longer there</source>
        <translation>den Messwert gibt es nicht mehr</translation>
    </message>
    <message>
        <source>is no date with the year first</source>
        <translation>ist mit dem Jahr zuerst kein Datum</translation>
    </message>
    <message>
        <source>is no date with the month first</source>
        <translation>ist mit dem Monat zuerst kein Datum</translation>
    </message>
    <message>
        <source>is no date with the day first</source>
        <translation>ist mit dem Tag zuerst kein Datum</translation>
    </message>
    <message>
        <source>its unit &quot;%1&quot; is not known here</source>
        <translation>seine Einheit „%1“ ist hier unbekannt</translation>
    </message>
    <message>
        <source>its unit %1 is none of %2</source>
        <translation>seine Einheit %1 passt nicht zur Größe %2</translation>
    </message>
    <message>
        <source>its rows say %1</source>
        <translation>ihre Zeilen nennen %1</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n values in another unit converted to %2</source>
        <comment>%1: %n value in another unit converted to %2</comment>
        <translation>
            <numerusform>%1: %n Wert in anderer Einheit in %2 umgerechnet</numerusform>
            <numerusform>%1: %n Werte in anderer Einheit in %2 umgerechnet</numerusform>
        </translation>
    </message>
    <message>
        <source>the last line is not finished</source>
        <translation>die letzte Zeile ist unfertig</translation>
    </message>
    <message numerus="yes">
        <source>has %n fields, the header has %1</source>
        <comment>has %n field, the header has %1</comment>
        <translation>
            <numerusform>hat %n Feld, die Kopfzeile %1</numerusform>
            <numerusform>hat %n Felder, die Kopfzeile %1</numerusform>
        </translation>
    </message>
    <message>
        <source>holds NUL characters</source>
        <translation>enthält NUL-Zeichen</translation>
    </message>
    <message>
        <source>is not a number</source>
        <translation>ist keine Zahl</translation>
    </message>
    <message>
        <source>by the pattern %1</source>
        <translation>nach dem Muster %1</translation>
    </message>
    <message>
        <source>no name in the rows is a sensor&apos;s or meter&apos;s</source>
        <translation>kein Name in den Zeilen gehört zu einem Sensor oder Zähler</translation>
    </message>
    <message>
        <source>say which is which with --column &quot;SENSOR=NAME&quot;; the names are: %1</source>
        <translation>mit --column &quot;SENSOR=NAME&quot; zuordnen; die Namen sind: %1</translation>
    </message>
    <message>
        <source>does not exist in %1: clocks went forward over it</source>
        <translation>gibt es in %1 nicht: die Uhren wurden darüber hinweg vorgestellt</translation>
    </message>
    <message numerus="yes">
        <source>%n rows in an hour that exists twice were placed by their order</source>
        <comment>%n rows in an hour that exists twice were placed by their order</comment>
        <translation>
            <numerusform>%n Zeile in einer doppelten Stunde wurde nach ihrer Reihenfolge eingeordnet</numerusform>
            <numerusform>%n Zeilen in einer doppelten Stunde wurden nach ihrer Reihenfolge eingeordnet</numerusform>
        </translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>you may not read this file</source>
        <translation>diese Datei darf nicht gelesen werden</translation>
    </message>
    <message>
        <source>the file&apos;s name is too long</source>
        <translation>der Name der Datei ist zu lang</translation>
    </message>
    <message>
        <source>the link leads in a circle</source>
        <translation>der Verweis führt im Kreis</translation>
    </message>
    <message>
        <source>the file can&apos;t be read (%1)</source>
        <translation>die Datei lässt sich nicht lesen (%1)</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation>das ist ein Ordner, keine Datei</translation>
    </message>
    <message>
        <source>this is a pipe, not a file</source>
        <translation>das ist eine Pipe, keine Datei</translation>
    </message>
    <message>
        <source>this is a device or socket, not a file</source>
        <translation>das ist ein Gerät oder Socket, keine Datei</translation>
    </message>
    <message>
        <source>the file&apos;s name holds a NUL character</source>
        <translation>der Name der Datei enthält ein NUL-Zeichen</translation>
    </message>
    <message>
        <source>the file is shorter than it was</source>
        <translation>die Datei ist kürzer als zuvor</translation>
    </message>
    <message>
        <source>the file became shorter while it was read</source>
        <translation>die Datei wurde beim Lesen kürzer</translation>
    </message>
    <message>
        <source>try again</source>
        <translation>noch einmal versuchen</translation>
    </message>
    <message>
        <source>is not a time</source>
        <translation>ist keine Zeit</translation>
    </message>
    <message>
        <source>is no date of the calendar</source>
        <translation>ist kein Datum des Kalenders</translation>
    </message>
    <message>
        <source>has a date but no time of day</source>
        <translation>hat ein Datum, aber keine Uhrzeit</translation>
    </message>
    <message>
        <source>its year is not between 1990 and 2100</source>
        <translation>das Jahr liegt nicht zwischen 1990 und 2100</translation>
    </message>
    <message>
        <source>as Unix time is not between 1990 and 2100</source>
        <translation>liegt als Unix-Zeit nicht zwischen 1990 und 2100</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>jumps from its neighbours to what a sensor gives after power-on</source>
        <translation>springt von seinen Nachbarn auf das, was ein Sensor nach dem Einschalten liefert</translation>
    </message>
    <message>
        <source>a quote in the pattern is left open</source>
        <translation>ein Anführungszeichen im Muster bleibt offen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; means nothing in a pattern</source>
        <translation>„%1“ bedeutet in einem Muster nichts</translation>
    </message>
    <message>
        <source>the pattern has the year twice</source>
        <translation>das Muster hat das Jahr zweimal</translation>
    </message>
    <message>
        <source>the pattern lacks the year (yyyy or yy)</source>
        <translation>dem Muster fehlt das Jahr (yyyy oder yy)</translation>
    </message>
    <message>
        <source>the pattern has the month twice</source>
        <translation>das Muster hat den Monat zweimal</translation>
    </message>
    <message>
        <source>the pattern lacks the month (MM or MMM)</source>
        <translation>dem Muster fehlt der Monat (MM oder MMM)</translation>
    </message>
    <message>
        <source>the pattern lacks the day (dd)</source>
        <translation>dem Muster fehlt der Tag (dd)</translation>
    </message>
    <message>
        <source>the pattern has the hour twice</source>
        <translation>das Muster hat die Stunde zweimal</translation>
    </message>
    <message>
        <source>the pattern lacks the hour (HH)</source>
        <translation>dem Muster fehlt die Stunde (HH)</translation>
    </message>
    <message>
        <source>the pattern lacks the half of the day (a) that belongs to hh</source>
        <translation>dem Muster fehlt die Tageshälfte (a), die zu hh gehört</translation>
    </message>
    <message>
        <source>AM and PM go with hh, not with HH</source>
        <translation>AM und PM gehören zu hh, nicht zu HH</translation>
    </message>
    <message>
        <source>the pattern lacks the minute (mm)</source>
        <translation>dem Muster fehlt die Minute (mm)</translation>
    </message>
    <message>
        <source>does not fit the pattern</source>
        <translation>passt nicht zum Muster</translation>
    </message>
    <message>
        <source>goes on where the pattern ends</source>
        <translation>geht weiter, wo das Muster endet</translation>
    </message>
    <message>
        <source>has an hour that is not 1 … 12</source>
        <translation>hat eine Stunde außerhalb von 1 … 12</translation>
    </message>
    <message>
        <source>is no time of day</source>
        <translation>ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>the row has more than %1 fields</source>
        <translation>die Zeile hat mehr als %1 Felder</translation>
    </message>
    <message>
        <source>there is text behind a closing quote</source>
        <translation>hinter einem schließenden Anführungszeichen steht Text</translation>
    </message>
    <message>
        <source>a quote inside a field is written as two, and the field in quotes</source>
        <translation>ein Anführungszeichen im Feld doppelt schreiben und das Feld in Anführungszeichen setzen</translation>
    </message>
    <message>
        <source>the quote that opens here is never closed</source>
        <translation>das Anführungszeichen, das hier beginnt, wird nie geschlossen</translation>
    </message>
    <message>
        <source>close or remove it</source>
        <translation>es schließen oder entfernen</translation>
    </message>
    <message>
        <source>a field is longer than 1 MiB, or a row longer than 4 MiB</source>
        <translation>ein Feld ist länger als 1 MiB oder eine Zeile länger als 4 MiB</translation>
    </message>
    <message>
        <source>look for a quote that is never closed</source>
        <translation>ein nie geschlossenes Anführungszeichen suchen</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>gravity</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>the header says %1</source>
        <translation>laut Kopfzeile %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; reads %2, which is not in %3</source>
        <translation>„%1“ misst %2, und die steht nicht in %3</translation>
    </message>
    <message>
        <source>the header says %1, but &quot;%2&quot; reads %3</source>
        <translation>laut Kopfzeile %1, „%2“ misst aber %3</translation>
    </message>
    <message>
        <source>choose another column for it</source>
        <translation>dafür eine andere Spalte wählen</translation>
    </message>
    <message>
        <source>the median %1 is odd for %2 (%3)</source>
        <translation>der Median %1 ist für %2 seltsam (%3)</translation>
    </message>
    <message>
        <source>write the right unit in the header, in brackets</source>
        <translation>die richtige Einheit in Klammern in die Kopfzeile schreiben</translation>
    </message>
    <message>
        <source>say --unit f if they are in °F, or --unit c if they are right</source>
        <translation>--unit f angeben, wenn es °F sind, oder --unit c, wenn sie stimmen</translation>
    </message>
    <message>
        <source>say --unit c if they are in °C, or --unit f if they are right</source>
        <translation>--unit c angeben, wenn es °C sind, oder --unit f, wenn sie stimmen</translation>
    </message>
    <message>
        <source>is what a disconnected sensor gives</source>
        <translation>ist, was ein abgetrennter Sensor liefert</translation>
    </message>
    <message>
        <source>is no temperature that a sensor here can give</source>
        <translation>ist keine Temperatur, die ein Sensor hier liefern kann</translation>
    </message>
    <message>
        <source>the log mixes decimal signs: &quot;%1&quot; here, &quot;%2&quot; in line %3</source>
        <translation>das Protokoll mischt Dezimalzeichen: hier „%1“, in Zeile %3 „%2“</translation>
    </message>
    <message>
        <source>write all numbers with one sign and without groups of thousands</source>
        <translation>alle Zahlen mit einem Dezimalzeichen und ohne Tausendergruppen schreiben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in two ways, and no other number shows which</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen, und keine andere Zahl entscheidet es</translation>
    </message>
    <message>
        <source>say --decimal comma (a decimal comma) or --decimal point (groups of thousands)</source>
        <translation>--decimal comma (Dezimalkomma) oder --decimal point (Tausendergruppen) angeben</translation>
    </message>
    <message>
        <source>is no specific gravity of beer</source>
        <translation>ist keine Dichte von Bier</translation>
    </message>
    <message>
        <source>is no extract of beer in °P</source>
        <translation>ist kein Extrakt von Bier in °P</translation>
    </message>
    <message>
        <source>is a power below 0</source>
        <translation>ist eine Leistung unter 0</translation>
    </message>
    <message>
        <source>is a register below 0</source>
        <translation>ist ein Zählerstand unter 0</translation>
    </message>
    <message>
        <source>%1: its dates fit two orders and are taken as %2, as in the last file of its kind</source>
        <translation>%1: die Datumsangaben passen zu zwei Reihenfolgen und werden als „%2“ genommen, wie in der letzten Datei dieser Art</translation>
    </message>
    <message>
        <source>%1: %2 rejected, the first in line %3: %4</source>
        <translation>%1: %2 abgelehnt, zuerst in Zeile %3: %4</translation>
    </message>
    <message>
        <source>batch &quot;%1&quot;</source>
        <translation>Sud „%1“</translation>
    </message>
    <message>
        <source>setup &quot;%1&quot;</source>
        <translation>Anlage „%1“</translation>
    </message>
    <message>
        <source>sensor &quot;%1&quot;</source>
        <translation>Sensor „%1“</translation>
    </message>
    <message>
        <source>meter &quot;%1&quot;</source>
        <translation>Zähler „%1“</translation>
    </message>
    <message>
        <source>only the last stage may be without hours</source>
        <translation>nur der letzte Abschnitt darf ohne Stunden sein</translation>
    </message>
    <message>
        <source>give its hours, or let it last until you turn it down</source>
        <translation>seine Stunden angeben oder ihn bis zum Herunterregeln dauern lassen</translation>
    </message>
    <message>
        <source>a ramp ends by its hours</source>
        <translation>eine Rampe endet nach ihren Stunden</translation>
    </message>
    <message>
        <source>give its hours</source>
        <translation>ihre Stunden angeben</translation>
    </message>
    <message>
        <source>a ramp needs hours</source>
        <translation>eine Rampe braucht Stunden</translation>
    </message>
    <message>
        <source>the hours must be above 0 and below ten years</source>
        <translation>die Stunden müssen über 0 und unter zehn Jahren liegen</translation>
    </message>
    <message>
        <source>the settling allowed must be 0 hours or more, and below ten years</source>
        <translation>das erlaubte Einschwingen muss mindestens 0 Stunden und unter zehn Jahren lang sein</translation>
    </message>
    <message>
        <source>a ramp needs a stage before it</source>
        <translation>eine Rampe braucht einen Abschnitt davor</translation>
    </message>
    <message>
        <source>begin with a hold</source>
        <translation>mit einem Halten beginnen</translation>
    </message>
    <message>
        <source>neither the stage nor the batch has a tolerance</source>
        <translation>weder der Abschnitt noch der Sud hat eine Toleranz</translation>
    </message>
    <message>
        <source>give the batch one, such as 3 °F</source>
        <translation>dem Sud eine geben, etwa 1,5 K</translation>
    </message>
    <message>
        <source>the tolerance must be above 0</source>
        <translation>die Toleranz muss über 0 liegen</translation>
    </message>
    <message>
        <source>the schedule has no stage</source>
        <translation>der Plan hat keinen Abschnitt</translation>
    </message>
    <message>
        <source>give at least one</source>
        <translation>mindestens einen angeben</translation>
    </message>
    <message>
        <source>check both times and their zone</source>
        <translation>beide Zeiten und ihre Zeitzone prüfen</translation>
    </message>
    <message>
        <source>the gap limit must be above 0 minutes</source>
        <translation>die Lückengrenze muss über 0 Minuten liegen</translation>
    </message>
    <message>
        <source>The sensor &quot;%1&quot; has no readings.</source>
        <translation>Der Sensor „%1“ hat keine Messwerte.</translation>
    </message>
    <message>
        <source>The sensor &quot;%1&quot; has readings in the future.</source>
        <translation>Der Sensor „%1“ hat Messwerte in der Zukunft.</translation>
    </message>
    <message>
        <source>The meter &quot;%1&quot; has fewer than two readings: nothing can be said of its energy.</source>
        <translation>Der Zähler „%1“ hat weniger als zwei Zählerstände: über seine Energie lässt sich nichts sagen.</translation>
    </message>
    <message numerus="yes">
        <source>The meter &quot;%1&quot; counted more than the rated power of %2 allows, %n times.</source>
        <comment>The meter &quot;%1&quot; counted more than the rated power of %2 allows, %n time.</comment>
        <translation>
            <numerusform>Der Zähler „%1“ zählte %n-mal mehr, als die Nennleistung von %2 erlaubt.</numerusform>
            <numerusform>Der Zähler „%1“ zählte %n-mal mehr, als die Nennleistung von %2 erlaubt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>When &quot;%1&quot; was pitched, %2 batches ran on %3, which has %n vessels.</source>
        <comment>When &quot;%1&quot; was pitched, %2 batches ran on %3, which has %n vessel.</comment>
        <translation>
            <numerusform>Beim Anstellen von „%1“ liefen %2 Sude auf %3 mit %n Gefäß.</numerusform>
            <numerusform>Beim Anstellen von „%1“ liefen %2 Sude auf %3 mit %n Gefäßen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the target of %2, %3, is below freezing.</source>
        <translation>%1: der Sollwert von %2, %3, liegt unter dem Gefrierpunkt.</translation>
    </message>
    <message>
        <source>%1: the target of %2, %3, is hotter than beer ferments.</source>
        <translation>%1: der Sollwert von %2, %3, ist heißer, als Bier gärt.</translation>
    </message>
    <message>
        <source>lid open</source>
        <translation>Deckel offen</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation>Stromausfall</translation>
    </message>
    <message>
        <source>sensor moved</source>
        <translation>Sensor bewegt</translation>
    </message>
    <message>
        <source>warm room</source>
        <translation>warmer Raum</translation>
    </message>
    <message>
        <source>control</source>
        <comment>the cause of an excursion</comment>
        <translation>Regelung</translation>
    </message>
    <message>
        <source>other</source>
        <comment>the cause of an excursion</comment>
        <translation>anderes</translation>
    </message>
    <message>
        <source>%1, &quot;%2&quot;</source>
        <comment>a cause and its note</comment>
        <translation>%1, „%2“</translation>
    </message>
    <message>
        <source>The cause given for %1, %2, belongs to no excursion any more: the limits or the readings have changed.</source>
        <translation>Die zum %1 angegebene Ursache, %2, gehört zu keiner Bandverletzung mehr: die Grenzen oder die Messwerte haben sich geändert.</translation>
    </message>
    <message>
        <source>Mains power near liquid: plug into a GFCI (RCD) outlet, keep meters and plugs off the floor and give cables a drip loop.</source>
        <translation>Netzstrom neben Flüssigkeit: Steckdose mit FI-Schutzschalter (RCD) nehmen, Zähler und Stecker nicht auf den Boden legen und Kabel mit einer Tropfschlaufe führen.</translation>
    </message>
    <message>
        <source>One plugged-in load takes at most 80 % of its circuit: 12 A on 15 A.</source>
        <translation>Ein angestecktes Gerät nimmt höchstens 80 % seines Stromkreises: 12 A bei 15 A.</translation>
    </message>
    <message>
        <source>Coolant near beer is propylene glycol and water, never ethylene glycol.</source>
        <translation>Kühlmittel neben Bier ist Propylenglykol mit Wasser, niemals Ethylenglykol.</translation>
    </message>
    <message>
        <source>A closed cabinet fills with carbon dioxide: air it before you lean in.</source>
        <translation>Ein geschlossener Schrank füllt sich mit Kohlendioxid: vor dem Hineinbeugen lüften.</translation>
    </message>
    <message>
        <source>A full fermenter weighs over 20 kg (44 lb): do not lift it over an edge alone.</source>
        <translation>Ein voller Gärbehälter wiegt über 20 kg (44 lb): nicht allein über eine Kante heben.</translation>
    </message>
    <message>
        <source>Carbon dioxide gathers in closed and low rooms: let air through.</source>
        <translation>Kohlendioxid sammelt sich in geschlossenen und tiefen Räumen: Luft durchlassen.</translation>
    </message>
    <message>
        <source>Sealed refrigeration circuits are opened by certified people only; local codes and licensed practice decide.</source>
        <translation>Geschlossene Kältekreise öffnen nur dafür zertifizierte Leute; maßgeblich sind die örtlichen Vorschriften und zugelassene Fachbetriebe.</translation>
    </message>
    <message>
        <source>How sure the verdict is rests on the beer sensor&apos;s accuracy, and that of %1 is not on record.</source>
        <translation>Wie sicher das Urteil ist, hängt an der Genauigkeit des Biersensors, und die von %1 ist nicht eingetragen.</translation>
    </message>
    <message>
        <source>The batch is judged with its band as planned, and narrower and wider by the sensor&apos;s ±%1, and is sure where all agree: as planned %2, narrower %3, wider %4.</source>
        <translation>Der Sud wird mit dem Band wie geplant beurteilt und um die ±%1 des Sensors schmaler und breiter; sicher ist das Urteil, wo alle übereinstimmen: wie geplant „%2“, schmaler „%3“, breiter „%4“.</translation>
    </message>
    <message>
        <source>There is no hold time yet, so there is nothing to take the figure from.</source>
        <translation>Es gibt noch keine Haltezeit, deshalb nichts, woraus der Wert käme.</translation>
    </message>
    <message>
        <source>none of %1.</source>
        <comment>of the hold time</comment>
        <translation>nichts von %1.</translation>
    </message>
    <message>
        <source>%1, all of it above, of %2.</source>
        <translation>%1, alles darüber, von %2.</translation>
    </message>
    <message>
        <source>%1, all of it below, of %2.</source>
        <translation>%1, alles darunter, von %2.</translation>
    </message>
    <message>
        <source>%1 above + %2 below = %3 of %4.</source>
        <translation>%1 darüber + %2 darunter = %3 von %4.</translation>
    </message>
    <message>
        <source>Hold time between readings at most %1 apart (the batch&apos;s own gap limit), over all hold time: %2 of %3 = %4.</source>
        <translation>Haltezeit zwischen Messwerten, die höchstens %1 auseinanderliegen (Lückengrenze des Suds), durch alle Haltezeit: %2 von %3 = %4.</translation>
    </message>
    <message>
        <source>Hold time between readings at most %1 apart (three times the usual interval, 2 h at most), over all hold time: %2 of %3 = %4.</source>
        <translation>Haltezeit zwischen Messwerten, die höchstens %1 auseinanderliegen (das Dreifache des üblichen Abstands, höchstens 2 h), durch alle Haltezeit: %2 von %3 = %4.</translation>
    </message>
    <message>
        <source>Each counts, however short.</source>
        <translation>Jede zählt, so kurz sie ist.</translation>
    </message>
    <message>
        <source>The furthest past an edge of the band: %1 above in %2, between %3 and %4.</source>
        <translation>Am weitesten jenseits eines Randes des Bandes: %1 darüber in %2, zwischen %3 und %4.</translation>
    </message>
    <message>
        <source>The furthest past an edge of the band: %1 below in %2, between %3 and %4.</source>
        <translation>Am weitesten jenseits eines Randes des Bandes: %1 darunter in %2, zwischen %3 und %4.</translation>
    </message>
    <message>
        <source>There is no crash whose heat could be estimated.</source>
        <translation>Es gibt keinen Cold Crash, dessen Wärme zu schätzen wäre.</translation>
    </message>
    <message>
        <source>The heat of the crash needs the batch&apos;s volume, which is not on record.</source>
        <translation>Die Wärme des Cold Crash braucht das Volumen des Suds, das nicht eingetragen ist.</translation>
    </message>
    <message>
        <source>%1 to %2 (%3 K)</source>
        <comment>a fall of temperature</comment>
        <translation>%1 auf %2 (%3 K)</translation>
    </message>
    <message>
        <source>This needs the original gravity, which is not on record.</source>
        <translation>Dazu braucht es die Stammwürze, die nicht eingetragen ist.</translation>
    </message>
    <message>
        <source>This needs the final gravity: none is given, and none was measured.</source>
        <translation>Dazu braucht es die Restdichte: keine ist angegeben, und keine wurde gemessen.</translation>
    </message>
    <message>
        <source>Fall in gravity over the original gravity&apos;s excess over water: (%1 − %2) ÷ (%1 − 1) = %3.</source>
        <translation>Abnahme der Dichte durch das, was die Stammwürze über Wasser lag: (%1 − %2) ÷ (%1 − 1) = %3.</translation>
    </message>
    <message>
        <source>The simple formula: 131.25 × (%1 − %2) = %3 by volume. Formulas differ by 0.1 to 0.3 %.</source>
        <translation>Die einfache Formel: 131,25 × (%1 − %2) = %3 vol. Formeln weichen um 0,1 bis 0,3 % voneinander ab.</translation>
    </message>
    <message>
        <source>Balling&apos;s formula: alcohol by weight × final gravity ÷ 0.794 = %1 × %2 ÷ 0.794 = %3 by volume. Formulas differ by 0.1 to 0.3 %.</source>
        <translation>Die Formel nach Balling: Alkohol nach Gewicht × Restdichte ÷ 0,794 = %1 × %2 ÷ 0,794 = %3 vol. Formeln weichen um 0,1 bis 0,3 % voneinander ab.</translation>
    </message>
    <message>
        <source>Share of the extract by weight that has fermented, by Balling: the real extract is 0.1808 × original + 0.8192 × apparent extract, of %1 and %2: %3.</source>
        <translation>Vergorener Anteil des Extrakts nach Gewicht, nach Balling: der wirkliche Extrakt ist 0,1808 × ursprünglicher + 0,8192 × scheinbarer Extrakt, aus %1 und %2: %3.</translation>
    </message>
    <message>
        <source>The setup %1 has no meter and no power log.</source>
        <translation>Die Anlage %1 hat weder Zähler noch Leistungsprotokoll.</translation>
    </message>
    <message>
        <source>Energy needs a reading before and one after, and nothing is filled in: no part of this time has both.</source>
        <translation>Energie braucht einen Zählerstand davor und einen danach, und nichts wird aufgefüllt: kein Teil dieser Zeit hat beide.</translation>
    </message>
    <message>
        <source>The logged power added up over its readings (its bounds are not known): %1 in the %2 that were metered, of %3; nothing is added for the rest.</source>
        <translation>Die aufgezeichnete Leistung, über ihre Messwerte summiert (ihre Grenzen sind nicht bekannt): %1 in den %2, die gemessen wurden, von %3; für den Rest kommt nichts hinzu.</translation>
    </message>
    <message>
        <source>The logged power added up over its readings (its bounds are not known): %1 in %2.</source>
        <translation>Die aufgezeichnete Leistung, über ihre Messwerte summiert (ihre Grenzen sind nicht bekannt): %1 in %2.</translation>
    </message>
    <message>
        <source>Energy over the time that was metered: %1 in %2 = %3.</source>
        <translation>Energie durch die gemessene Zeit: %1 in %2 = %3.</translation>
    </message>
    <message>
        <source>There is no crash: none of the holds so far has its target at least %1 below the stage before it.</source>
        <translation>Es gibt keinen Cold Crash: kein bisheriger Halteabschnitt hat seinen Sollwert mindestens %1 unter dem Abschnitt davor.</translation>
    </message>
    <message>
        <source>The crash begins with %1, %2.</source>
        <translation>Der Cold Crash beginnt mit %1, %2.</translation>
    </message>
    <message>
        <source>No calendar day of the run was metered from midnight to midnight.</source>
        <translation>Kein Kalendertag des Laufs wurde von Mitternacht bis Mitternacht gemessen.</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>energy on a day</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>Only one calendar day was metered from midnight to midnight: %1.</source>
        <translation>Nur ein Kalendertag wurde von Mitternacht bis Mitternacht gemessen: %1.</translation>
    </message>
    <message>
        <source>No price of energy is known for some of the metered time.</source>
        <translation>Für einen Teil der gemessenen Zeit ist kein Energiepreis bekannt.</translation>
    </message>
    <message>
        <source>Metered energy times its price: %1 × %2 = %3.</source>
        <translation>Gemessene Energie mal Preis: %1 × %2 = %3.</translation>
    </message>
    <message>
        <source>Each part of the %1 at the price that held when it was used, %2 spans of one price each: %3.</source>
        <translation>Jeder Teil der %1 zu dem Preis, der beim Verbrauch galt, %2 Zeiträume mit je einem Preis: %3.</translation>
    </message>
    <message>
        <source>Lift is room minus beer, and no sensor of the room is named for this batch.</source>
        <translation>Hub ist Raum minus Bier, und für diesen Sud ist kein Sensor des Raums genannt.</translation>
    </message>
    <message>
        <source>Lift is room minus beer, and the readings of %1 never cover the same time as the beer&apos;s.</source>
        <translation>Hub ist Raum minus Bier, und die Messwerte von %1 decken nie dieselbe Zeit ab wie die des Biers.</translation>
    </message>
    <message>
        <source>; in the mean %1</source>
        <translation>; im Mittel %1</translation>
    </message>
    <message>
        <source>The lift must be known for 90 % of the metered time: it is for %1 of %2.</source>
        <translation>Der Hub muss für 90 % der gemessenen Zeit bekannt sein: er ist es für %1 von %2.</translation>
    </message>
    <message>
        <source>The room was never warmer than the beer: there was nothing to cool against.</source>
        <translation>Der Raum war nie wärmer als das Bier: es gab nichts, wogegen zu kühlen war.</translation>
    </message>
    <message>
        <source>°F·day</source>
        <translation>°F·Tag</translation>
    </message>
    <message>
        <source>°C·day</source>
        <translation>°C·Tag</translation>
    </message>
    <message>
        <source>The beer is still on its way into the band of %1, %2 so far.</source>
        <translation>Das Bier ist noch unterwegs in das Band von %1, bisher %2.</translation>
    </message>
    <message>
        <source>From the stage&apos;s start, %1, until the beer first came into the band: %2 on the clock.</source>
        <translation>Vom Beginn des Abschnitts, %1, bis das Bier zum ersten Mal in das Band kam: %2 nach der Uhr.</translation>
    </message>
    <message>
        <source>Only %1 are allowed for settling; what followed is judged.</source>
        <translation>Zum Einschwingen sind nur %1 erlaubt; was folgte, wird beurteilt.</translation>
    </message>
    <message>
        <source>How fast the beer came to the band: from %1 to %2 off the target in %3 = %4 an hour.</source>
        <translation>Wie schnell das Bier in das Band kam: von %1 auf %2 neben dem Sollwert in %3 = %4 je Stunde.</translation>
    </message>
    <message>
        <source>How far the beer went past the target in the direction in which it came, until it turned back over it or the stage ended: %1.</source>
        <translation>Wie weit das Bier in der Richtung, aus der es kam, über den Sollwert hinausging, bis es über ihn zurückkehrte oder der Abschnitt endete: %1.</translation>
    </message>
    <message>
        <source>The stage has no energy of its own.</source>
        <translation>Der Abschnitt hat keine eigene Energie.</translation>
    </message>
    <message>
        <source>It ended when the beer came back.</source>
        <translation>Sie endete, als das Bier zurückkam.</translation>
    </message>
    <message>
        <source>The stage&apos;s end cut it.</source>
        <translation>Das Ende des Abschnitts schnitt sie ab.</translation>
    </message>
    <message>
        <source>Above the band of %1 from %2 to %3, %4: at most %5 past the edge, %6 beyond it in all.</source>
        <translation>Über dem Band von %1 von %2 bis %3, %4: höchstens %5 jenseits des Randes, insgesamt %6 darüber hinaus.</translation>
    </message>
    <message>
        <source>Below the band of %1 from %2 to %3, %4: at most %5 past the edge, %6 beyond it in all.</source>
        <translation>Unter dem Band von %1 von %2 bis %3, %4: höchstens %5 jenseits des Randes, insgesamt %6 darüber hinaus.</translation>
    </message>
    <message>
        <source>Cause given: %1.</source>
        <translation>Angegebene Ursache: %1.</translation>
    </message>
    <message>
        <source>(at least %1)</source>
        <translation>(mindestens %1)</translation>
    </message>
    <message>
        <source>the last digit shown can&apos;t be below 0</source>
        <translation>die letzte angezeigte Stelle kann nicht unter 0 liegen</translation>
    </message>
    <message>
        <source>stir, wait a minute, and read again</source>
        <translation>umrühren, eine Minute warten und wieder ablesen</translation>
    </message>
    <message>
        <source>The mean of %1 readings is %2; ice melts at %3: the offset is %4.</source>
        <translation>Das Mittel von %1 Messwerten ist %2; Eis schmilzt bei %3: der Versatz ist %4.</translation>
    </message>
    <message>
        <source>scatter of the readings ± %1 (Student&apos;s t);</source>
        <translation>Streuung der Messwerte ± %1 (Student-t);</translation>
    </message>
    <message>
        <source>rounding to the last digit ± %1;</source>
        <translation>Rundung auf die letzte Stelle ± %1;</translation>
    </message>
    <message>
        <source>the power drawn in the same weather</source>
        <translation>der Leistung bei gleichem Wetter</translation>
    </message>
    <message>
        <source>&quot;Energy %1&quot;</source>
        <comment>%1: per degree-day of lift</comment>
        <translation>„Energie %1“</translation>
    </message>
    <message>
        <source>; it follows from the energy: give it no weight to count that once</source>
        <translation>; folgt aus der Energie: Gewicht 0 geben, damit sie nur einmal zählt</translation>
    </message>
    <message>
        <source>not scored: %1 is not known of both</source>
        <translation>nicht bewertet nach %1: nicht von beiden bekannt</translation>
    </message>
    <message>
        <source>from %1: nobody can be ahead, so 3 each</source>
        <translation>nach %1: niemand kann vorn sein, deshalb je 3</translation>
    </message>
    <message>
        <source>from %1: the same, so 3 each</source>
        <translation>nach %1: gleich, deshalb je 3</translation>
    </message>
    <message>
        <source>from %1: too close to call, so 3 each</source>
        <translation>nach %1: zu knapp für ein Urteil, deshalb je 3</translation>
    </message>
    <message>
        <source>from %1: %2 is ahead and gets 5</source>
        <translation>nach %1: %2 ist vorn und bekommt 5</translation>
    </message>
    <message>
        <source>as rated in the equipment</source>
        <translation>wie in der Ausrüstung bewertet</translation>
    </message>
    <message>
        <source>not scored: only %1 is rated</source>
        <translation>nicht bewertet: nur zu %1 liegt eine Note vor</translation>
    </message>
    <message>
        <source>not scored: nobody rated it</source>
        <translation>nicht bewertet: niemand hat es benotet</translation>
    </message>
    <message>
        <source>Nothing is weighed: no criterion has both a weight and two scores.</source>
        <translation>Nichts ist gewogen: kein Kriterium hat ein Gewicht und zwei Noten.</translation>
    </message>
    <message>
        <source>%1 and %2 are level at %3 of 5.</source>
        <translation>%1 und %2 liegen mit %3 von 5 gleichauf.</translation>
    </message>
    <message>
        <source>%1 leads %2 to %3 (of 5).</source>
        <translation>%1 führt mit %2 zu %3 (von 5).</translation>
    </message>
    <message>
        <source>Without %1 they would be level.</source>
        <translation>Ohne „%1“ lägen sie gleichauf.</translation>
    </message>
    <message>
        <source>Without %1 %2 would lead.</source>
        <translation>Ohne „%1“ würde %2 führen.</translation>
    </message>
    <message>
        <source>With a weight above %1 for %2 (now %3) %4 would lead.</source>
        <translation>Mit einem Gewicht über %1 für „%2“ (jetzt %3) würde %4 führen.</translation>
    </message>
    <message>
        <source>No single criterion changes that: neither leaving it out nor any weight up to 5.</source>
        <translation>Kein einzelnes Kriterium ändert das: weder es auszulassen noch ein Gewicht bis 5.</translation>
    </message>
    <message>
        <source>What was measured is scored by its figure: the one ahead gets 5, the other 5 divided by how many times worse it is, at least 1; both get 3 where it is too close to call or nobody can be ahead. All else is as rated, 1 to 5, more is better. The total is the mean by weight.</source>
        <translation>Gemessenes wird nach seinem Wert benotet: wer vorn ist, bekommt 5, der andere 5 geteilt durch das Wievielfache, um das er schlechter ist, mindestens 1; beide bekommen 3, wo es zu knapp für ein Urteil ist oder niemand vorn sein kann. Alles andere ist wie benotet, 1 bis 5, mehr ist besser. Die Summe ist das gewichtete Mittel.</translation>
    </message>
    <message>
        <source>temperature</source>
        <comment>criterion</comment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>time in the band</source>
        <comment>criterion</comment>
        <translation>Zeit im Band</translation>
    </message>
    <message>
        <source>settling</source>
        <comment>criterion</comment>
        <translation>Einschwingen</translation>
    </message>
    <message>
        <source>energy</source>
        <comment>criterion</comment>
        <translation>Energie</translation>
    </message>
    <message>
        <source>energy cost</source>
        <comment>criterion</comment>
        <translation>Energiekosten</translation>
    </message>
    <message>
        <source>parts</source>
        <comment>criterion</comment>
        <translation>Teile</translation>
    </message>
    <message>
        <source>build effort</source>
        <comment>criterion</comment>
        <translation>Bauaufwand</translation>
    </message>
    <message>
        <source>ease of use</source>
        <comment>criterion</comment>
        <translation>Bedienung</translation>
    </message>
    <message>
        <source>cleaning</source>
        <comment>criterion</comment>
        <translation>Reinigung</translation>
    </message>
    <message>
        <source>noise</source>
        <comment>criterion</comment>
        <translation>Lärm</translation>
    </message>
    <message>
        <source>space</source>
        <comment>criterion</comment>
        <translation>Platzbedarf</translation>
    </message>
    <message>
        <source>the beer sensor &quot;%1&quot; is not on record</source>
        <translation>der Biersensor „%1“ ist nicht eingetragen</translation>
    </message>
    <message>
        <source>a tolerance must be above 0</source>
        <translation>eine Toleranz muss über 0 liegen</translation>
    </message>
    <message>
        <source>a gap limit must be above 0</source>
        <translation>eine Lückengrenze muss über 0 liegen</translation>
    </message>
    <message>
        <source>Energy, kWh</source>
        <translation>Energie, kWh</translation>
    </message>
    <message>
        <source>before the crash, kWh</source>
        <translation>vor dem Cold Crash, kWh</translation>
    </message>
    <message>
        <source>the crash, kWh</source>
        <translation>der Cold Crash, kWh</translation>
    </message>
    <message>
        <source>Mean power, W</source>
        <translation>Mittlere Leistung, W</translation>
    </message>
    <message>
        <source>per °F·day of lift, Wh</source>
        <translation>je °F·Tag Hub, Wh</translation>
    </message>
    <message>
        <source>per °C·day of lift, Wh</source>
        <translation>je °C·Tag Hub, Wh</translation>
    </message>
    <message>
        <source>Energy cost</source>
        <translation>Energiekosten</translation>
    </message>
    <message>
        <source>Inside the band, %</source>
        <translation>Im Band, %</translation>
    </message>
    <message>
        <source>Outside the band, h</source>
        <translation>Außerhalb des Bandes, h</translation>
    </message>
    <message>
        <source>Excursions</source>
        <translation>Bandverletzungen</translation>
    </message>
    <message>
        <source>Worst past the edge</source>
        <translation>Höchstens jenseits des Randes</translation>
    </message>
    <message>
        <source>Root mean square deviation</source>
        <translation>Effektivwert der Abweichung</translation>
    </message>
    <message>
        <source>Typical deviation</source>
        <translation>Typische Abweichung</translation>
    </message>
    <message>
        <source>Mean deviation</source>
        <translation>Mittlere Abweichung</translation>
    </message>
    <message>
        <source>First stage settled in, h</source>
        <translation>Erster Abschnitt eingeschwungen in, h</translation>
    </message>
    <message>
        <source>Crash settled in, h</source>
        <translation>Cold Crash eingeschwungen in, h</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>%1 (%2 – over %3)</source>
        <comment>a ratio and its ends</comment>
        <translation>%1 (%2 – über %3)</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>zu knapp für ein Urteil</translation>
    </message>
    <message>
        <source>, after %1 years</source>
        <translation>, nach %1 Jahren</translation>
    </message>
    <message>
        <source>(how sure that is, is not known)</source>
        <translation>(wie sicher das ist, ist nicht bekannt)</translation>
    </message>
    <message>
        <source>(between batch %1 and batch %2)</source>
        <translation>(zwischen Sud %1 und Sud %2)</translation>
    </message>
    <message>
        <source>(not before batch %1; within the bounds perhaps never)</source>
        <translation>(nicht vor Sud %1; innerhalb der Grenzen vielleicht nie)</translation>
    </message>
    <message>
        <source>%1 costs %2 more at first and saves %3 with each batch: it is the cheaper one from batch %4 on</source>
        <translation>%1 kostet anfangs %2 mehr und spart %3 mit jedem Sud: günstiger ab Sud %4</translation>
    </message>
    <message>
        <source>Both cost the same at first, and whose energy is cheaper is too close to call.</source>
        <translation>Beide kosten anfangs gleich viel, und wessen Energie günstiger ist, ist zu knapp für ein Urteil.</translation>
    </message>
    <message>
        <source>; within the bounds they might, but not before batch %1</source>
        <translation>; innerhalb der Grenzen könnten sie es, aber nicht vor Sud %1</translation>
    </message>
    <message>
        <source>Both cost the same, however many batches.</source>
        <translation>Beide kosten gleich viel, bei jeder Zahl von Suden.</translation>
    </message>
    <message>
        <source>at the logbook&apos;s prices</source>
        <translation>zu den Preisen des Logbuchs</translation>
    </message>
    <message>
        <source>at the logbook&apos;s price of %1 for a kWh</source>
        <translation>zum Preis des Logbuchs von %1 je kWh</translation>
    </message>
    <message>
        <source>of %1 in the same weather, at %2 for a kWh</source>
        <translation>von %1 bei gleichem Wetter, zu %2 je kWh</translation>
    </message>
    <message>
        <source>The price changes with the time of day: %1 paid %2 for a kWh in the mean, %3 %4.</source>
        <translation>Der Preis hängt von der Tageszeit ab: %1 zahlte im Mittel %2 je kWh, %3 %4.</translation>
    </message>
    <message>
        <source>The total can&apos;t be drawn: %1 has no parts listed.</source>
        <translation>Die Summe lässt sich nicht zeichnen: zu %1 sind keine Teile eingetragen.</translation>
    </message>
    <message>
        <source>The total can&apos;t be drawn: the energy of one of them is not known.</source>
        <translation>Die Summe lässt sich nicht zeichnen: die Energie einer Seite ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The total can&apos;t be drawn: the logbook knows no price for a kWh.</source>
        <translation>Die Summe lässt sich nicht zeichnen: das Logbuch kennt keinen Preis je kWh.</translation>
    </message>
    <message>
        <source>At %1 batches a year the energy costs %2 a year with %3 and %4 with %5.</source>
        <translation>Bei %1 Suden im Jahr kostet die Energie im Jahr %2 mit %3 und %4 mit %5.</translation>
    </message>
    <message>
        <source>no parts listed</source>
        <translation>keine Teile eingetragen</translation>
    </message>
    <message>
        <source>at %1 for a kWh</source>
        <translation>zu %1 je kWh</translation>
    </message>
    <message>
        <source>the mean targets differ: %1</source>
        <translation>die mittleren Sollwerte sind verschieden: %1</translation>
    </message>
    <message>
        <source>the targets differ: %1</source>
        <translation>die Sollwerte sind verschieden: %1</translation>
    </message>
    <message>
        <source>the one further from the room has more to do, so energy and temperature are not of one task</source>
        <translation>der vom Raum weiter entfernte hat mehr zu leisten, deshalb gehören Energie und Temperatur nicht zu einer Aufgabe</translation>
    </message>
    <message>
        <source>the mean tolerances differ: %1</source>
        <translation>die mittleren Toleranzen sind verschieden: %1</translation>
    </message>
    <message>
        <source>the tolerances differ: %1</source>
        <translation>die Toleranzen sind verschieden: %1</translation>
    </message>
    <message>
        <source>%1&apos;s band is wider and easier to stay in: deviations compare, time inside does not</source>
        <translation>das Band von %1 ist breiter und leichter zu halten: Abweichungen sind vergleichbar, Zeit im Band nicht</translation>
    </message>
    <message>
        <source>the volumes differ: %1</source>
        <translation>die Volumen sind verschieden: %1</translation>
    </message>
    <message>
        <source>more beer holds and moves more heat, which counts against the energy of %1</source>
        <translation>mehr Bier hält und bewegt mehr Wärme, was zulasten der Energie von %1 geht</translation>
    </message>
    <message>
        <source>the warmer room asks for more cooling, which counts against the energy of %1; energy for each degree-day allows for it</source>
        <translation>der wärmere Raum verlangt mehr Kühlung, was zulasten der Energie von %1 geht; Energie je Gradtag berücksichtigt das</translation>
    </message>
    <message>
        <source>what happened in the gaps is not in the figures of %1</source>
        <translation>was in den Lücken geschah, steht nicht in den Werten von %1</translation>
    </message>
    <message>
        <source>the sensors differ: %1</source>
        <translation>die Sensoren sind verschieden: %1</translation>
    </message>
    <message>
        <source>the probes sit in different places</source>
        <translation>die Fühler sitzen an verschiedenen Stellen</translation>
    </message>
    <message>
        <source>batches at once on the setup, in the mean: %1</source>
        <translation>Sude zugleich auf der Anlage, im Mittel: %1</translation>
    </message>
    <message>
        <source>the shared energy is split evenly, and a setup that serves more at once spreads its standing losses, which favours %1</source>
        <translation>die gemeinsame Energie ist gleich geteilt, und eine Anlage, die mehr zugleich bedient, verteilt ihre Grundverluste, was %1 begünstigt</translation>
    </message>
    <message>
        <source>the bounds of the energies rest on it</source>
        <translation>die Grenzen der Energien hängen daran</translation>
    </message>
    <message>
        <source>there is no elapsed time that is metered in both</source>
        <translation>keine verstrichene Zeit ist bei beiden gemessen</translation>
    </message>
    <message>
        <source>one meter measured both</source>
        <translation>ein Zähler hat beide gemessen</translation>
    </message>
    <message>
        <source>its own error is the same for both, so it does not widen the bounds</source>
        <translation>sein eigener Fehler ist für beide gleich, deshalb verbreitert er die Grenzen nicht</translation>
    </message>
    <message>
        <source>both ran at once on one meter for %1</source>
        <translation>beide liefen %1 lang zugleich an einem Zähler</translation>
    </message>
    <message>
        <source>of what it read then each is given an even share, so that time can&apos;t tell them apart</source>
        <translation>von dem, was er damals zählte, bekommt jeder den gleichen Teil, deshalb kann diese Zeit sie nicht unterscheiden</translation>
    </message>
    <message>
        <source>logged %1</source>
        <comment>every so many minutes, on each side</comment>
        <translation>aufgezeichnet %1</translation>
    </message>
    <message>
        <source>the slower log misses short excursions, which favours %1</source>
        <translation>das langsamere Protokoll verpasst kurze Bandverletzungen, was %1 begünstigt</translation>
    </message>
    <message>
        <source>the fermentations gave off unequal heat: %1</source>
        <translation>die Gärungen gaben ungleich viel Wärme ab: %1</translation>
    </message>
    <message>
        <source>the larger one needed more cooling, which counts against the energy of %1</source>
        <translation>die größere brauchte mehr Kühlung, was zulasten der Energie von %1 geht</translation>
    </message>
    <message>
        <source>targets were missed: %1</source>
        <translation>Sollwerte wurden verfehlt: %1</translation>
    </message>
    <message>
        <source>nobody is ahead on temperature, and beer that never got cold was spared the energy for it</source>
        <translation>bei der Temperatur ist niemand vorn, und Bier, das nie kalt wurde, hat die Energie dafür gespart</translation>
    </message>
    <message>
        <source>fewer than three batches: %1</source>
        <translation>weniger als drei Sude: %1</translation>
    </message>
    <message>
        <source>how much batches differ is not known, so there is no interval and nobody is ahead</source>
        <translation>wie sehr sich Sude unterscheiden, ist nicht bekannt, deshalb gibt es kein Intervall und niemand ist vorn</translation>
    </message>
    <message>
        <source>not metered throughout: %1 of the run for %2, %3 of the run for %4</source>
        <translation>nicht durchgehend gemessen: %1 des Laufs bei %2, %3 des Laufs bei %4</translation>
    </message>
    <message>
        <source>energies are compared over the elapsed time that is metered in both</source>
        <translation>Energien sind über die verstrichene Zeit verglichen, die bei beiden gemessen ist</translation>
    </message>
    <message>
        <source>the mean times they ran are unequal: %1</source>
        <translation>die mittleren Laufzeiten sind ungleich: %1</translation>
    </message>
    <message>
        <source>they ran for unequal times: %1</source>
        <translation>sie liefen ungleich lang: %1</translation>
    </message>
    <message>
        <source>a longer batch uses more energy and has more hours to leave the band in: mean power and shares compare, sums do not</source>
        <translation>ein längerer Sud verbraucht mehr Energie und hat mehr Stunden, das Band zu verlassen: mittlere Leistung und Anteile sind vergleichbar, Summen nicht</translation>
    </message>
    <message>
        <source>energies are compared over the shorter time; hours outside are of unequal wholes</source>
        <translation>Energien sind über die kürzere Zeit verglichen; Stunden außerhalb gehören zu ungleichen Ganzen</translation>
    </message>
    <message>
        <source>%1 for %2, %3 for %4</source>
        <comment>what each side has</comment>
        <translation>%1 bei %2, %3 bei %4</translation>
    </message>
    <message>
        <source>the room was on average %1 further above the beer for %2 (%3)</source>
        <translation>der Raum lag bei %2 im Mittel %1 weiter über dem Bier (%3)</translation>
    </message>
    <message>
        <source>unknown accuracy</source>
        <translation>unbekannte Genauigkeit</translation>
    </message>
    <message>
        <source>the less sure sensor widens the bounds of %1</source>
        <translation>der unsicherere Sensor verbreitert die Grenzen von %1</translation>
    </message>
    <message>
        <source>the accuracy of a meter on each side is unknown, 2 % is assumed</source>
        <translation>die Genauigkeit eines Zählers auf jeder Seite ist unbekannt, 2 % sind angenommen</translation>
    </message>
    <message>
        <source>the accuracy of a meter of %1 is unknown, 2 % is assumed</source>
        <translation>die Genauigkeit eines Zählers von %1 ist unbekannt, 2 % sind angenommen</translation>
    </message>
    <message>
        <source>energies can&apos;t be compared</source>
        <translation>Energien sind nicht vergleichbar</translation>
    </message>
    <message>
        <source>energies can&apos;t be compared: neither was metered</source>
        <translation>Energien sind nicht vergleichbar: keine Seite wurde gemessen</translation>
    </message>
    <message>
        <source>energies can&apos;t be compared: %1 was not metered</source>
        <translation>Energien sind nicht vergleichbar: %1 wurde nicht gemessen</translation>
    </message>
    <message>
        <source>every %1</source>
        <translation>alle %1</translation>
    </message>
    <message>
        <source>not at all</source>
        <comment>logged</comment>
        <translation>gar nicht</translation>
    </message>
    <message>
        <source>%1 kg of extract fermented (by the last gravity measured)</source>
        <translation>%1 kg Extrakt vergoren (nach der zuletzt gemessenen Dichte)</translation>
    </message>
    <message>
        <source>%1 kg of extract fermented</source>
        <translation>%1 kg Extrakt vergoren</translation>
    </message>
    <message>
        <source>Between the reading before it and the one after it.</source>
        <translation>Zwischen dem Zählerstand davor und dem danach.</translation>
    </message>
    <message>
        <source>It has passed its top since.</source>
        <translation>Inzwischen ist er übergelaufen.</translation>
    </message>
    <message>
        <source>It may have passed its top since: then up to %1.</source>
        <translation>Inzwischen kann er übergelaufen sein: dann bis %1.</translation>
    </message>
    <message>
        <source>The last reading plus half to twice what the last three days&apos; mean of %1 W makes of the %2 since.</source>
        <translation>Der letzte Zählerstand plus die Hälfte bis das Doppelte dessen, was das Mittel der letzten drei Tage von %1 W in den %2 seither ergibt.</translation>
    </message>
    <message>
        <source>was %1, corrected %2</source>
        <comment>a value and when</comment>
        <translation>war %1, berichtigt %2</translation>
    </message>
    <message>
        <source>was %1, corrected %2: %3</source>
        <comment>a value, when and why</comment>
        <translation>war %1, berichtigt %2: %3</translation>
    </message>
    <message>
        <source>Gravity falls while the beer ferments: not above the last reading.</source>
        <translation>Die Dichte fällt, während das Bier gärt: nicht über dem letzten Messwert.</translation>
    </message>
    <message>
        <source>The band of %1 now.</source>
        <translation>Das Band von %1 jetzt.</translation>
    </message>
    <message numerus="yes">
        <source>The meter %1 counted more than the setup&apos;s rated power allows between %n pairs of readings: the rated power was ignored there.</source>
        <comment>The meter %1 counted more than the setup&apos;s rated power allows between %n pair of readings: the rated power was ignored there.</comment>
        <translation>
            <numerusform>Der Zähler %1 zählte zwischen %n Paar Zählerständen mehr, als die Nennleistung der Anlage erlaubt: dort wurde sie nicht beachtet.</numerusform>
            <numerusform>Der Zähler %1 zählte zwischen %n Paaren von Zählerständen mehr, als die Nennleistung der Anlage erlaubt: dort wurde sie nicht beachtet.</numerusform>
        </translation>
    </message>
    <message>
        <source>The register restarted at 0 during the batch and no rated power is known: what it used has no upper bound.</source>
        <translation>Das Zählwerk begann während des Suds wieder bei 0, und eine Nennleistung ist nicht bekannt: der Verbrauch hat keine obere Grenze.</translation>
    </message>
    <message>
        <source>there is no batch &quot;%1&quot;</source>
        <translation>es gibt keinen Sud „%1“</translation>
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
        <source>%n have not enough data</source>
        <comment>%n has not enough data</comment>
        <translation>
            <numerusform>%n hat zu wenig Daten</numerusform>
            <numerusform>%n haben zu wenig Daten</numerusform>
        </translation>
    </message>
    <message>
        <source>It used %1 for %2.</source>
        <translation>Er verbrauchte %1 für %2.</translation>
    </message>
    <message>
        <source>It used %1.</source>
        <translation>Er verbrauchte %1.</translation>
    </message>
    <message>
        <source>Together they used %1 for %2.</source>
        <translation>Zusammen verbrauchten sie %1 für %2.</translation>
    </message>
    <message>
        <source>Together they used %1.</source>
        <translation>Zusammen verbrauchten sie %1.</translation>
    </message>
    <message numerus="yes">
        <source>The %n that were metered used %1 for %2.</source>
        <comment>The %n that were metered used %1 for %2.</comment>
        <translation>
            <numerusform>Der %n gemessene verbrauchte %1 für %2.</numerusform>
            <numerusform>Die %n gemessenen verbrauchten %1 für %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n that were metered used %1.</source>
        <comment>The %n that were metered used %1.</comment>
        <translation>
            <numerusform>Der %n gemessene verbrauchte %1.</numerusform>
            <numerusform>Die %n gemessenen verbrauchten %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has no batch yet.</source>
        <translation>%1 hat noch keinen Sud.</translation>
    </message>
    <message numerus="yes">
        <source>%n batches of %1: %2.</source>
        <comment>%n batch of %1: %2.</comment>
        <translation>
            <numerusform>%n Sud von %1: %2.</numerusform>
            <numerusform>%n Sude von %1: %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>None of them was metered.</source>
        <translation>Keiner davon wurde gemessen.</translation>
    </message>
    <message>
        <source>there is no setup &quot;%1&quot;</source>
        <translation>es gibt keine Anlage „%1“</translation>
    </message>
    <message>
        <source>there is no batch and no setup &quot;%1&quot;</source>
        <translation>es gibt keinen Sud und keine Anlage „%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can&apos;t be compared with itself</source>
        <translation>„%1“ lässt sich nicht mit sich selbst vergleichen</translation>
    </message>
    <message>
        <source>name two</source>
        <comment>batches or setups</comment>
        <translation>zwei nennen</translation>
    </message>
    <message>
        <source>two batches are compared, there are no others to take</source>
        <translation>zwei Sude werden verglichen, es gibt keine anderen zu nehmen</translation>
    </message>
    <message>
        <source>choose among batches only where two setups are compared</source>
        <translation>Sude nur wählen, wo zwei Anlagen verglichen werden</translation>
    </message>
    <message>
        <source>one of &quot;%1&quot; and &quot;%2&quot; is a batch, the other a setup</source>
        <translation>von „%1“ und „%2“ ist eines ein Sud, das andere eine Anlage</translation>
    </message>
    <message>
        <source>compare two batches or two setups</source>
        <translation>zwei Sude oder zwei Anlagen vergleichen</translation>
    </message>
    <message numerus="yes">
        <source>%n batches</source>
        <comment>%n batch</comment>
        <translation>
            <numerusform>%n Sud</numerusform>
            <numerusform>%n Sude</numerusform>
        </translation>
    </message>
    <message>
        <source>the start of %1</source>
        <comment>of a stage</comment>
        <translation>Beginn von %1</translation>
    </message>
    <message>
        <source>pitching</source>
        <comment>since that moment</comment>
        <translation>Anstellen</translation>
    </message>
    <message>
        <source>there is no stage &quot;%1&quot; in both &quot;%2&quot; and &quot;%3&quot;</source>
        <translation>es gibt keinen Abschnitt „%1“ in beiden, „%2“ und „%3“</translation>
    </message>
    <message>
        <source>they have no stage in common: align from pitching</source>
        <translation>sie haben keinen Abschnitt gemeinsam: ab dem Anstellen ausrichten</translation>
    </message>
    <message>
        <source>in both there are %1; or align from pitching</source>
        <translation>in beiden gibt es %1; oder ab dem Anstellen ausrichten</translation>
    </message>
    <message>
        <source>the setup &quot;%1&quot; has no finished batch</source>
        <translation>die Anlage „%1“ hat keinen beendeten Sud</translation>
    </message>
    <message>
        <source>end one, or compare others</source>
        <translation>einen beenden oder andere vergleichen</translation>
    </message>
    <message>
        <source>the batch &quot;%1&quot; ran on &quot;%2&quot;, which is none of the two</source>
        <translation>der Sud „%1“ lief auf „%2“, was keine der beiden ist</translation>
    </message>
    <message>
        <source>the batch &quot;%1&quot; is still open</source>
        <translation>der Sud „%1“ ist noch offen</translation>
    </message>
    <message>
        <source>end it, or take others</source>
        <translation>ihn beenden oder andere nehmen</translation>
    </message>
    <message>
        <source>%1 had a batch whenever it was metered.</source>
        <translation>%1 hatte immer einen Sud, wenn gemessen wurde.</translation>
    </message>
    <message>
        <source>Nothing is known of %1 without a batch: no meter of it was read.</source>
        <translation>Von %1 ohne Sud ist nichts bekannt: kein Zähler davon wurde abgelesen.</translation>
    </message>
    <message>
        <source>Without a batch %1 used %2 in %3: %4 in the mean. That is no part of any batch&apos;s energy.</source>
        <translation>Ohne Sud verbrauchte %1 %2 in %3: im Mittel %4. Das gehört zur Energie keines Suds.</translation>
    </message>
    <message>
        <source>two setups are compared over whole batches</source>
        <translation>zwei Anlagen werden über ganze Sude verglichen</translation>
    </message>
    <message>
        <source>align two batches from a stage, or leave the stage out</source>
        <translation>zwei Sude ab einem Abschnitt ausrichten oder den Abschnitt weglassen</translation>
    </message>
    <message>
        <source>Their energies can&apos;t be compared: neither has a meter or a power log.</source>
        <translation>Ihre Energien sind nicht vergleichbar: keine Seite hat einen Zähler oder ein Leistungsprotokoll.</translation>
    </message>
    <message>
        <source>Their energies can&apos;t be compared: %1 has no meter and no power log.</source>
        <translation>Ihre Energien sind nicht vergleichbar: %1 hat weder Zähler noch Leistungsprotokoll.</translation>
    </message>
    <message>
        <source>Their energies can&apos;t be compared: no batch of one of them was metered.</source>
        <translation>Ihre Energien sind nicht vergleichbar: auf einer Seite wurde kein Sud gemessen.</translation>
    </message>
    <message>
        <source>Their energies can&apos;t be compared: no time is metered in both.</source>
        <translation>Ihre Energien sind nicht vergleichbar: keine Zeit ist bei beiden gemessen.</translation>
    </message>
    <message>
        <source>For each batch %1 and %2 used %3.</source>
        <translation>Je Sud verbrauchten %1 und %2 %3.</translation>
    </message>
    <message>
        <source>Over the same %4 from the start of %5 on, %1 and %2 used %3.</source>
        <translation>Über dieselben %4 ab Beginn von %5 verbrauchten %1 und %2 %3.</translation>
    </message>
    <message>
        <source>Over the same %4 %1 and %2 used %3.</source>
        <translation>Über dieselben %4 verbrauchten %1 und %2 %3.</translation>
    </message>
    <message>
        <source>For each batch %1 used %6 times %2&apos;s energy%7: %3</source>
        <translation>Je Sud verbrauchte %1 das %6-Fache der Energie von %2%7: %3</translation>
    </message>
    <message>
        <source>Over the same %4 from the start of %5 on, %1 used %6 times %2&apos;s energy%7: %3</source>
        <translation>Über dieselben %4 ab Beginn von %5 verbrauchte %1 das %6-Fache der Energie von %2%7: %3</translation>
    </message>
    <message>
        <source>Over the same %4 %1 used %6 times %2&apos;s energy%7: %3</source>
        <translation>Über dieselben %4 verbrauchte %1 das %6-Fache der Energie von %2%7: %3</translation>
    </message>
    <message>
        <source>, which is too close to call.</source>
        <translation>, was zu knapp für ein Urteil ist.</translation>
    </message>
    <message>
        <source>, from too few batches to say how sure: it takes three of each.</source>
        <translation>, aus zu wenigen Suden, um zu sagen, wie sicher: es braucht je drei.</translation>
    </message>
    <message>
        <source>Typical deviation %1 against %2.</source>
        <translation>Typische Abweichung %1 gegen %2.</translation>
    </message>
    <message>
        <source>Typical deviation %1 against %2: %3 held closer.</source>
        <translation>Typische Abweichung %1 gegen %2: %3 hielt genauer.</translation>
    </message>
    <message>
        <source>Typical deviation %1 against %2, too close to call.</source>
        <translation>Typische Abweichung %1 gegen %2, zu knapp für ein Urteil.</translation>
    </message>
    <message>
        <source>Typical deviation %1 against %2, too close to call with these sensors.</source>
        <translation>Typische Abweichung %1 gegen %2, mit diesen Sensoren zu knapp für ein Urteil.</translation>
    </message>
    <message>
        <source>fewer than three batches have it, so there is no interval</source>
        <translation>weniger als drei Sude haben es, deshalb gibt es kein Intervall</translation>
    </message>
    <message>
        <source>a sensor&apos;s accuracy is unknown</source>
        <translation>die Genauigkeit eines Sensors ist unbekannt</translation>
    </message>
    <message>
        <source>no bounds are known</source>
        <translation>es sind keine Grenzen bekannt</translation>
    </message>
    <message>
        <source>the intervals are apart, but by less than meters and sensors may be wrong</source>
        <translation>die Intervalle sind getrennt, aber um weniger, als Zähler und Sensoren falsch gehen können</translation>
    </message>
    <message>
        <source>an estimate: nobody is ahead</source>
        <translation>eine Schätzung: niemand ist vorn</translation>
    </message>
    <message>
        <source>a target was missed: nobody is ahead</source>
        <translation>ein Sollwert wurde verfehlt: niemand ist vorn</translation>
    </message>
    <message>
        <source>the interval is cut at 0 and 100 %, where it ends for certain</source>
        <translation>das Intervall ist bei 0 und 100 % abgeschnitten, wo es sicher endet</translation>
    </message>
    <message>
        <source>the interval is cut at 0: less there can&apos;t be</source>
        <translation>das Intervall ist bei 0 abgeschnitten: weniger kann es nicht sein</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <comment>two energies</comment>
        <translation>%1 gegen %2</translation>
    </message>
    <message>
        <source>Means are over %1 of %2 and %3 of %4.</source>
        <translation>Gemittelt ist über %1 von %2 und %3 von %4.</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>weniger als %1</translation>
    </message>
    <message>
        <source>left the band twice: %1 of %2 held (%3), worst %4 past the edge</source>
        <translation>verließ das Band zweimal: %1 von %2 Haltezeit (%3), höchstens %4 jenseits des Randes</translation>
    </message>
    <message numerus="yes">
        <source>left the band %n times: %1 of %2 held (%3), worst %4 past the edge</source>
        <comment>left the band once: %1 of %2 held (%3), worst %4 past the edge</comment>
        <translation>
            <numerusform>verließ das Band einmal: %1 von %2 Haltezeit (%3), höchstens %4 jenseits des Randes</numerusform>
            <numerusform>verließ das Band %n-mal: %1 von %2 Haltezeit (%3), höchstens %4 jenseits des Randes</numerusform>
        </translation>
    </message>
    <message>
        <source>missed the target of %1: the beer never came into its band</source>
        <translation>verfehlte den Sollwert von %1: das Bier kam nie in dessen Band</translation>
    </message>
    <message>
        <source>missed the targets of %1: the beer never came into their bands</source>
        <translation>verfehlte die Sollwerte von %1: das Bier kam nie in deren Bänder</translation>
    </message>
    <message>
        <source>; %1 more held without a gap would do</source>
        <translation>; %1 weitere Haltezeit ohne Lücke würden genügen</translation>
    </message>
    <message>
        <source>not enough data: there are no beer readings in this batch yet; log or import some</source>
        <translation>zu wenig Daten: in diesem Sud gibt es noch keine Messwerte des Biers; welche aufzeichnen oder importieren</translation>
    </message>
    <message>
        <source>not enough data: there are no beer readings in this batch</source>
        <translation>zu wenig Daten: in diesem Sud gibt es keine Messwerte des Biers</translation>
    </message>
    <message>
        <source>not enough data: there is no hold time to judge</source>
        <translation>zu wenig Daten: es gibt keine Haltezeit zu beurteilen</translation>
    </message>
    <message>
        <source>not enough data: there is no hold time to judge yet</source>
        <translation>zu wenig Daten: es gibt noch keine Haltezeit zu beurteilen</translation>
    </message>
    <message>
        <source>in a band wider by that it would have stayed</source>
        <translation>in einem um so viel breiteren Band wäre das Bier geblieben</translation>
    </message>
    <message>
        <source>in a band wider by that, settling ends earlier, and after that the beer leaves the band</source>
        <translation>in einem um so viel breiteren Band endet das Einschwingen früher, und danach verlässt das Bier das Band</translation>
    </message>
    <message>
        <source>in a band wider by that it would have missed a target</source>
        <translation>mit einem um so viel breiteren Band hätte es einen Sollwert verfehlt</translation>
    </message>
    <message>
        <source>in a band wider by that there would not be enough data</source>
        <translation>mit einem um so viel breiteren Band wären es zu wenig Daten</translation>
    </message>
    <message>
        <source>in a band narrower by that, settling lasts longer, and after that the beer stays in the band</source>
        <translation>in einem um so viel schmaleren Band dauert das Einschwingen länger, und danach bleibt das Bier im Band</translation>
    </message>
    <message>
        <source>in a band narrower by that it would have left the band</source>
        <translation>ein um so viel schmaleres Band hätte das Bier verlassen</translation>
    </message>
    <message>
        <source>in a band narrower by that it would have missed a target</source>
        <translation>mit einem um so viel schmaleren Band hätte es einen Sollwert verfehlt</translation>
    </message>
    <message>
        <source>in a band narrower by that there would not be enough data</source>
        <translation>mit einem um so viel schmaleren Band wären es zu wenig Daten</translation>
    </message>
    <message>
        <source>Sure: it also leaves the band widened by the sensor&apos;s %1.</source>
        <translation>Sicher: auch ein um die %1 des Sensors breiteres Band wird verlassen.</translation>
    </message>
    <message>
        <source>Sure: it also stays in the band narrowed by the sensor&apos;s %1.</source>
        <translation>Sicher: auch in einem um die %1 des Sensors schmaleren Band bleibt es.</translation>
    </message>
    <message>
        <source>Sure: it also misses with the band widened by the sensor&apos;s %1.</source>
        <translation>Sicher: auch mit einem um die %1 des Sensors breiteren Band wird verfehlt.</translation>
    </message>
    <message>
        <source>How sure is unknown: the beer sensor&apos;s accuracy is not on record.</source>
        <translation>Wie sicher, ist unbekannt: die Genauigkeit des Biersensors ist nicht eingetragen.</translation>
    </message>
    <message>
        <source>Covered %1 of the hold time.</source>
        <translation>Abgedeckt sind %1 der Haltezeit.</translation>
    </message>
    <message>
        <source>Settling, %1, is not judged.</source>
        <translation>Das Einschwingen, %1, wird nicht beurteilt.</translation>
    </message>
    <message>
        <source>It also missed %1.</source>
        <translation>Verfehlt wurde auch %1.</translation>
    </message>
    <message>
        <source>So far: %1</source>
        <translation>Bisher: %1</translation>
    </message>
    <message>
        <source>stayed</source>
        <translation>blieb</translation>
    </message>
    <message>
        <source>left</source>
        <comment>the band</comment>
        <translation>verließ</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>verfehlt</translation>
    </message>
    <message>
        <source>not enough data</source>
        <translation>zu wenig Daten</translation>
    </message>
    <message>
        <source>the room %1 warmer than the beer</source>
        <translation>der Raum %1 wärmer als das Bier</translation>
    </message>
    <message numerus="yes">
        <source>%n times between readings</source>
        <comment>%n time between readings</comment>
        <translation>
            <numerusform>%n Zeit zwischen Zählerständen</numerusform>
            <numerusform>%n Zeiten zwischen Zählerständen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 together, with the room %3 warmer than the beer</source>
        <translation>%1, zusammen %2, der Raum %3 wärmer als das Bier</translation>
    </message>
    <message>
        <source>with the room no warmer than the beer it draws %1, and for each %2 that the room is warmer %3 more</source>
        <translation>ist der Raum nicht wärmer als das Bier, zieht sie %1, und je %2, um das der Raum wärmer ist, %3 mehr</translation>
    </message>
    <message>
        <source>the line accounts for %1 of how the power varies (R²)</source>
        <translation>die Gerade erklärt %1 der Schwankung der Leistung (R²)</translation>
    </message>
    <message>
        <source>one more batch would draw between %1 and %2 in that weather</source>
        <translation>ein weiterer Sud zöge bei diesem Wetter zwischen %1 und %2</translation>
    </message>
    <message>
        <source>%1: no meter was read twice, so there is no line</source>
        <translation>%1: kein Zähler wurde zweimal abgelesen, deshalb gibt es keine Gerade</translation>
    </message>
    <message>
        <source>%1: %2 can be used, too few to draw a line through</source>
        <translation>%1: brauchbar sind %2, zu wenige für eine Gerade</translation>
    </message>
    <message>
        <source>%1: only %2 can be used, and %3 are needed, so this decides nothing</source>
        <translation>%1: brauchbar sind nur %2, nötig sind %3, deshalb entscheidet das nichts</translation>
    </message>
    <message>
        <source>%1: the weather hardly changed (%2 of %3 needed), so this decides nothing</source>
        <translation>%1: das Wetter änderte sich kaum (%2 von %3 nötigen), deshalb entscheidet das nichts</translation>
    </message>
    <message>
        <source>up to %1 ran at once on that setup; the power is that for each of them</source>
        <translation>auf dieser Anlage liefen bis zu %1 zugleich; die Leistung ist die für jeden davon</translation>
    </message>
    <message>
        <source>; with the cautions below that decides nothing.</source>
        <translation>; mit den Vorbehalten unten entscheidet das nichts.</translation>
    </message>
    <message>
        <source>: %1 needs less.</source>
        <translation>: %1 braucht weniger.</translation>
    </message>
    <message>
        <source>What they would draw in the same weather can&apos;t be said: %1.</source>
        <translation>Was sie bei gleichem Wetter zögen, lässt sich nicht sagen: %1.</translation>
    </message>
    <message>
        <source>In the same weather (%1) %2 would draw %3 and %4 %5</source>
        <translation>Bei gleichem Wetter (%1) zöge %2 %3 und %4 %5</translation>
    </message>
    <message>
        <source>A hold of %1 in that weather would take %2 with %3 and %4 with %5.</source>
        <translation>Eine Haltezeit von %1 bei diesem Wetter bräuchte %2 mit %3 und %4 mit %5.</translation>
    </message>
    <message>
        <source>(the mean of both)</source>
        <translation>(das Mittel von beiden)</translation>
    </message>
    <message>
        <source>(chosen)</source>
        <translation>(gewählt)</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <comment>a hold of some days, the room so much warmer than the beer</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Fermentation gives off heat of its own: the first %1 after pitching are left out.</source>
        <translation>Die Gärung gibt selbst Wärme ab: die ersten %1 nach dem Anstellen sind ausgelassen.</translation>
    </message>
    <message>
        <source>the record of what was changed is damaged</source>
        <translation>die Aufzeichnung der Änderung ist beschädigt</translation>
    </message>
    <message>
        <source>`holdband check` says what else is</source>
        <translation>`holdband check` sagt, was es noch ist</translation>
    </message>
    <message>
        <source>corrected a gravity of %1</source>
        <translation>Dichte von %1 berichtigt</translation>
    </message>
    <message>
        <source>changed the note of a reading of %1</source>
        <translation>Notiz zu einem Messwert von %1 geändert</translation>
    </message>
    <message>
        <source>changed the note of a gravity of %1</source>
        <translation>Notiz zu einer Dichte von %1 geändert</translation>
    </message>
    <message>
        <source>imported %1</source>
        <translation>%1 importiert</translation>
    </message>
    <message>
        <source>loaded %1</source>
        <translation>%1 geladen</translation>
    </message>
    <message>
        <source>the copy is damaged</source>
        <translation>die Kopie ist beschädigt</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>den Datenträger prüfen</translation>
    </message>
    <message>
        <source>the logbook no longer fits its seal, so no copy was made of it</source>
        <translation>das Logbuch passt nicht mehr zu seinem Siegel, darum wurde keine Kopie gemacht</translation>
    </message>
    <message>
        <source>`holdband check` says more</source>
        <translation>`holdband check` sagt mehr</translation>
    </message>
    <message>
        <source>the folder for the copies can&apos;t be made</source>
        <translation>der Ordner für die Kopien lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>make room for it there, or choose another place for backups</source>
        <translation>dort Platz schaffen oder einen anderen Ort für Sicherungen wählen</translation>
    </message>
    <message>
        <source>the batch has no sensor in its beer</source>
        <translation>der Sud hat keinen Sensor im Bier</translation>
    </message>
    <message>
        <source>name the one that reads it</source>
        <translation>den nennen, der es misst</translation>
    </message>
    <message>
        <source>the batch &quot;%1&quot; has notes</source>
        <translation>zum Sud „%1“ gibt es Notizen</translation>
    </message>
    <message>
        <source>the batch &quot;%1&quot; has readings of its own</source>
        <translation>zum Sud „%1“ gibt es eigene Messwerte</translation>
    </message>
    <message>
        <source>the batch &quot;%1&quot; has a batch that was split from it</source>
        <translation>vom Sud „%1“ wurde ein Sud abgeteilt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is in use: %2</source>
        <translation>„%1“ wird gebraucht: %2</translation>
    </message>
    <message>
        <source>retire it instead</source>
        <translation>stattdessen ausmustern</translation>
    </message>
    <message>
        <source>quantity and price must not be negative</source>
        <translation>Menge und Preis dürfen nicht negativ sein</translation>
    </message>
    <message>
        <source>a batch ran on it</source>
        <translation>ein Sud lief darauf</translation>
    </message>
    <message>
        <source>a meter counts for it</source>
        <translation>ein Zähler zählt dafür</translation>
    </message>
    <message>
        <source>a meter counted for it</source>
        <translation>ein Zähler zählte dafür</translation>
    </message>
    <message>
        <source>a sensor belongs to it</source>
        <translation>ein Sensor gehört dazu</translation>
    </message>
    <message>
        <source>two offsets begin at the same time, or not in order</source>
        <translation>zwei Versätze beginnen zur selben Zeit oder nicht der Reihe nach</translation>
    </message>
    <message>
        <source>a batch is read by it</source>
        <translation>ein Sud wird damit gemessen</translation>
    </message>
    <message>
        <source>a batch was read by it</source>
        <translation>ein Sud wurde damit gemessen</translation>
    </message>
    <message>
        <source>it has imported readings</source>
        <translation>es gibt importierte Messwerte davon</translation>
    </message>
    <message>
        <source>it has readings</source>
        <translation>es gibt Messwerte davon</translation>
    </message>
    <message>
        <source>it has corrected readings</source>
        <translation>es gibt berichtigte Messwerte davon</translation>
    </message>
    <message>
        <source>two moves are at the same time, or not in order</source>
        <translation>zwei Umzüge sind zur selben Zeit oder nicht der Reihe nach</translation>
    </message>
    <message>
        <source>it was read</source>
        <translation>er wurde abgelesen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a reading at that instant already</source>
        <translation>„%1“ hat zu diesem Zeitpunkt schon einen Messwert</translation>
    </message>
    <message>
        <source>meter readings have since been entered for the same times</source>
        <translation>für dieselben Zeiten wurden seither Zählerstände eingetragen</translation>
    </message>
    <message>
        <source>the note has no words</source>
        <translation>die Notiz hat keinen Text</translation>
    </message>
    <message>
        <source>there is no such logbook</source>
        <translation>dieses Logbuch gibt es nicht</translation>
    </message>
    <message>
        <source>make one with `holdband new`</source>
        <translation>eines mit `holdband new` anlegen</translation>
    </message>
    <message>
        <source>this is a folder, no logbook</source>
        <translation>das ist ein Ordner, kein Logbuch</translation>
    </message>
    <message>
        <source>the file is empty: it is no logbook</source>
        <translation>die Datei ist leer: kein Logbuch</translation>
    </message>
    <message>
        <source>another reading has since been entered for the same time</source>
        <translation>für dieselbe Zeit wurde seither ein anderer Messwert eingetragen</translation>
    </message>
    <message>
        <source>at most %1 bytes</source>
        <translation>höchstens %1 Byte</translation>
    </message>
    <message>
        <source>take it out</source>
        <translation>es entfernen</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>the unit of &quot;%1&quot; is another than it was</source>
        <translation>die Einheit von „%1“ ist eine andere als zuvor</translation>
    </message>
    <message>
        <source>this is an SQLite file of another program, no logbook</source>
        <translation>das ist eine SQLite-Datei eines anderen Programms, kein Logbuch</translation>
    </message>
    <message>
        <source>this logbook was made by a newer Holdband (format %1, this program knows up to %2)</source>
        <translation>dieses Logbuch stammt von einem neueren Holdband (Format %1, dieses Programm kennt bis %2)</translation>
    </message>
    <message>
        <source>open it with that version</source>
        <translation>es mit jener Fassung öffnen</translation>
    </message>
    <message>
        <source>this logbook has no format number: it is damaged</source>
        <translation>dieses Logbuch hat keine Formatnummer: es ist beschädigt</translation>
    </message>
    <message>
        <source>use a backup</source>
        <translation>eine Sicherung nehmen</translation>
    </message>
    <message>
        <source>the readings of &quot;%1&quot; imported from %2 no longer fit their checksum</source>
        <translation>die aus %2 importierten Messwerte von „%1“ passen nicht mehr zu ihrer Prüfsumme</translation>
    </message>
    <message>
        <source>there are readings that belong to no import</source>
        <translation>es gibt Messwerte, die zu keinem Import gehören</translation>
    </message>
    <message>
        <source>SQLite reports: %1</source>
        <translation>SQLite meldet: %1</translation>
    </message>
    <message>
        <source>a row of %1 refers to one of %2 that is not there</source>
        <translation>eine Zeile von %1 verweist auf eine von %2, die es nicht gibt</translation>
    </message>
    <message>
        <source>equipment, batches, meter readings or the journal no longer fit their seal: a bit changed, or another program wrote here</source>
        <translation>Ausrüstung, Sude, Zählerstände oder das Journal passen nicht mehr zu ihrem Siegel: ein Bit hat sich geändert, oder ein anderes Programm hat hier geschrieben</translation>
    </message>
    <message>
        <source>this is no logbook (it is not an SQLite file)</source>
        <translation>das ist kein Logbuch (keine SQLite-Datei)</translation>
    </message>
    <message>
        <source>the file is damaged</source>
        <translation>die Datei ist beschädigt</translation>
    </message>
    <message>
        <source>the disk is full; nothing was changed</source>
        <translation>der Datenträger ist voll; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the file can&apos;t be written</source>
        <translation>die Datei lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>the file can&apos;t be opened</source>
        <translation>die Datei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>another program is using the file</source>
        <translation>ein anderes Programm benutzt die Datei</translation>
    </message>
    <message>
        <source>reading or writing the file failed (%1)</source>
        <translation>die Datei ließ sich nicht lesen oder schreiben (%1)</translation>
    </message>
    <message>
        <source>the database can&apos;t be guarded</source>
        <translation>die Datenbank lässt sich nicht absichern</translation>
    </message>
    <message>
        <source>the file can&apos;t be written durably</source>
        <translation>die Datei lässt sich nicht dauerhaft schreiben</translation>
    </message>
    <message>
        <source>there is a batch &quot;%1&quot; already</source>
        <translation>es gibt schon einen Sud „%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; and the batch &quot;%2&quot; differ only in case or spaces</source>
        <translation>„%1“ und der Sud „%2“ unterscheiden sich nur in Groß- und Kleinschreibung oder Leerzeichen</translation>
    </message>
    <message>
        <source>a batch needs a name</source>
        <translation>ein Sud braucht einen Namen</translation>
    </message>
    <message>
        <source>the batch&apos;s name &quot;%1&quot; is too long</source>
        <translation>der Name „%1“ des Sudes ist zu lang</translation>
    </message>
    <message>
        <source>the batch&apos;s name holds a line break or a control character</source>
        <translation>der Name des Sudes enthält einen Zeilenumbruch oder ein Steuerzeichen</translation>
    </message>
    <message>
        <source>there is a meter &quot;%1&quot; already</source>
        <translation>es gibt schon einen Zähler „%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; and the meter &quot;%2&quot; differ only in case or spaces</source>
        <translation>„%1“ und der Zähler „%2“ unterscheiden sich nur in Groß- und Kleinschreibung oder Leerzeichen</translation>
    </message>
    <message>
        <source>a meter needs a name</source>
        <translation>ein Zähler braucht einen Namen</translation>
    </message>
    <message>
        <source>the meter&apos;s name &quot;%1&quot; is too long</source>
        <translation>der Name „%1“ des Zählers ist zu lang</translation>
    </message>
    <message>
        <source>the meter&apos;s name holds a line break or a control character</source>
        <translation>der Name des Zählers enthält einen Zeilenumbruch oder ein Steuerzeichen</translation>
    </message>
    <message>
        <source>there is no plan &quot;%1&quot;</source>
        <translation>es gibt keinen Plan „%1“</translation>
    </message>
    <message>
        <source>there is a plan &quot;%1&quot; already</source>
        <translation>es gibt schon einen Plan „%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; and the plan &quot;%2&quot; differ only in case or spaces</source>
        <translation>„%1“ und der Plan „%2“ unterscheiden sich nur in Groß- und Kleinschreibung oder Leerzeichen</translation>
    </message>
    <message>
        <source>a plan needs a name</source>
        <translation>ein Plan braucht einen Namen</translation>
    </message>
    <message>
        <source>the plan&apos;s name &quot;%1&quot; is too long</source>
        <translation>der Name „%1“ des Plans ist zu lang</translation>
    </message>
    <message>
        <source>the plan&apos;s name holds a line break or a control character</source>
        <translation>der Name des Plans enthält einen Zeilenumbruch oder ein Steuerzeichen</translation>
    </message>
    <message>
        <source>there is no sensor &quot;%1&quot;</source>
        <translation>es gibt keinen Sensor „%1“</translation>
    </message>
    <message>
        <source>there is a sensor &quot;%1&quot; already</source>
        <translation>es gibt schon einen Sensor „%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; and the sensor &quot;%2&quot; differ only in case or spaces</source>
        <translation>„%1“ und der Sensor „%2“ unterscheiden sich nur in Groß- und Kleinschreibung oder Leerzeichen</translation>
    </message>
    <message>
        <source>a sensor needs a name</source>
        <translation>ein Sensor braucht einen Namen</translation>
    </message>
    <message>
        <source>the sensor&apos;s name &quot;%1&quot; is too long</source>
        <translation>der Name „%1“ des Sensors ist zu lang</translation>
    </message>
    <message>
        <source>the sensor&apos;s name holds a line break or a control character</source>
        <translation>der Name des Sensors enthält einen Zeilenumbruch oder ein Steuerzeichen</translation>
    </message>
    <message>
        <source>there is a setup &quot;%1&quot; already</source>
        <translation>es gibt schon eine Anlage „%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; and the setup &quot;%2&quot; differ only in case or spaces</source>
        <translation>„%1“ und die Anlage „%2“ unterscheiden sich nur in Groß- und Kleinschreibung oder Leerzeichen</translation>
    </message>
    <message>
        <source>a setup needs a name</source>
        <translation>eine Anlage braucht einen Namen</translation>
    </message>
    <message>
        <source>the setup&apos;s name &quot;%1&quot; is too long</source>
        <translation>der Name „%1“ der Anlage ist zu lang</translation>
    </message>
    <message>
        <source>the setup&apos;s name holds a line break or a control character</source>
        <translation>der Name der Anlage enthält einen Zeilenumbruch oder ein Steuerzeichen</translation>
    </message>
    <message>
        <source>this is watched already</source>
        <translation>das wird schon überwacht</translation>
    </message>
    <message>
        <source>a criterion has no name</source>
        <translation>ein Kriterium hat keinen Namen</translation>
    </message>
    <message>
        <source>the room of the reference hold is no colder than the beer</source>
        <translation>der Raum der Vergleichshaltung ist nicht kälter als das Bier</translation>
    </message>
    <message>
        <source>the reference hold lasts longer than nothing</source>
        <translation>die Vergleichshaltung dauert länger als nichts</translation>
    </message>
    <message>
        <source>the batches a year are more than none</source>
        <translation>es ist mehr als kein Sud im Jahr</translation>
    </message>
    <message>
        <source>the wait after pitching is no shorter than nothing</source>
        <translation>die Wartezeit nach dem Anstellen ist nicht kürzer als nichts</translation>
    </message>
    <message>
        <source>what is weighed by must be a number</source>
        <translation>das Gewicht muss eine Zahl sein</translation>
    </message>
    <message>
        <source>the logbook is open for writing in %1 (process %2 on %3)</source>
        <translation>das Logbuch ist in %1 zum Schreiben geöffnet (Prozess %2 auf %3)</translation>
    </message>
    <message>
        <source>close it there first; reading commands work meanwhile</source>
        <translation>es zuerst dort schließen; lesende Befehle gehen inzwischen</translation>
    </message>
    <message>
        <source>make the folder first</source>
        <translation>zuerst den Ordner anlegen</translation>
    </message>
    <message>
        <source>the folder can&apos;t be written, so the logbook can&apos;t be locked</source>
        <translation>in den Ordner lässt sich nicht schreiben, also lässt sich das Logbuch nicht sperren</translation>
    </message>
    <message>
        <source>check the folder&apos;s permissions</source>
        <translation>die Rechte des Ordners prüfen</translation>
    </message>
    <message>
        <source>the logbook can&apos;t be locked</source>
        <translation>das Logbuch lässt sich nicht sperren</translation>
    </message>
    <message>
        <source>choose a shorter name or another folder</source>
        <translation>einen kürzeren Namen oder einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 d</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>%1 and %n more</comment>
        <translation>
            <numerusform>%1 und %n weiteres</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>the last of a list</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>there are none</source>
        <translation>es gibt keine</translation>
    </message>
    <message>
        <source>there are: %1</source>
        <translation>es gibt: %1</translation>
    </message>
    <message>
        <source>a number is missing</source>
        <translation>eine Zahl fehlt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number</source>
        <translation>„%1“ ist keine Zahl</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one decimal sign</source>
        <translation>„%1“ hat mehr als ein Dezimalzeichen</translation>
    </message>
    <message>
        <source>write it without groups of thousands, such as %1</source>
        <translation>ohne Tausendergruppen schreiben, etwa %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in two ways</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen</translation>
    </message>
    <message>
        <source>write %1 or %2</source>
        <translation>%1 oder %2 schreiben</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>Jan</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>Feb</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>Mär</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>Apr</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>Jun</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>Jul</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>Aug</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>Sep</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>Okt</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>Nov</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>Dez</translation>
    </message>
    <message>
        <source>write its offset: %1 or %2</source>
        <translation>mit Abstand zu UTC schreiben: %1 oder %2</translation>
    </message>
    <message>
        <source>a time is missing</source>
        <translation>eine Zeit fehlt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time</source>
        <translation>„%1“ ist keine Zeit</translation>
    </message>
    <message>
        <source>write it as 2026-03-07 06:30 or 2026-03-07T06:30:00-07:00</source>
        <translation>als 2026-03-07 06:30 oder 2026-03-07T06:30:00-07:00 schreiben</translation>
    </message>
    <message>
        <source>the year %1 is not between %2 and %3</source>
        <translation>das Jahr %1 liegt nicht zwischen %2 und %3</translation>
    </message>
    <message>
        <source>check it for a typing slip</source>
        <translation>auf einen Tippfehler prüfen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an RFC 3339 time</source>
        <translation>„%1“ ist keine Zeit nach RFC 3339</translation>
    </message>
    <message>
        <source>%1 on %2 does not exist in %3: clocks went forward over it</source>
        <translation>%1 am %2 gibt es in %3 nicht: die Uhren wurden darüber hinweg vorgestellt</translation>
    </message>
    <message>
        <source>%1 on %2 exists twice in %3: clocks went back over it</source>
        <translation>%1 am %2 gibt es in %3 zweimal: die Uhren wurden darüber zurückgestellt</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>day, month and year</comment>
        <translation>%1. %2 %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>day and month</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>there is no time zone called &quot;%1&quot;</source>
        <translation>es gibt keine Zeitzone „%1“</translation>
    </message>
    <message>
        <source>write a name such as America/Denver, or an offset such as -07:00</source>
        <translation>einen Namen wie America/Denver oder einen Abstand wie -07:00 schreiben</translation>
    </message>
    <message>
        <source>the round sheet could not be drawn</source>
        <translation>das Rundgangblatt konnte nicht gezeichnet werden</translation>
    </message>
    <message>
        <source>there is no %1</source>
        <translation>%1 gibt es nicht</translation>
    </message>
    <message>
        <source>the reading is not left out</source>
        <translation>der Messwert ist nicht ausgelassen</translation>
    </message>
    <message>
        <source>No meter of this setup was read twice during the batch, so nothing was metered.</source>
        <translation>Kein Zähler dieser Anlage wurde während des Sudes zweimal abgelesen, also ist nichts gemessen.</translation>
    </message>
    <message>
        <source>Energy, its cost and mean power are counted from there; temperature, settling and fairness are of the whole runs.</source>
        <translation>Energie, ihre Kosten und mittlere Leistung zählen ab dort; Temperatur, Einschwingen und Fairness gelten den ganzen Läufen.</translation>
    </message>
    <message>
        <source>Before the crash and the crash are each compared over as much of it as both have, so they need not add up.</source>
        <translation>Vor dem Cold Crash und der Cold Crash werden je so lange verglichen, wie beide ihn haben; ihre Summe muss darum nicht das Ganze ergeben.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>who, and what became of its run</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>who, and what became of its run</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>the logbook has no name</source>
        <translation>das Logbuch hat keinen Namen</translation>
    </message>
    <message>
        <source>give the logbook&apos;s path</source>
        <translation>den Pfad des Logbuchs angeben</translation>
    </message>
    <message>
        <source>the file can&apos;t be opened: %1</source>
        <translation>die Datei lässt sich nicht öffnen: %1</translation>
    </message>
    <message>
        <source>something with this name already exists; nothing was changed</source>
        <translation>etwas mit diesem Namen gibt es schon; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the logbook was deleted, moved or replaced while it was open; nothing was saved</source>
        <translation>das Logbuch wurde gelöscht, verschoben oder ersetzt, während es geöffnet war; nichts wurde gespeichert</translation>
    </message>
    <message>
        <source>the logbook is locked by a file that no Holdband wrote: %1</source>
        <translation>das Logbuch ist durch eine Datei gesperrt, die nicht von Holdband ist: %1</translation>
    </message>
    <message>
        <source>if no program has the logbook open, delete that file</source>
        <translation>wenn kein Programm das Logbuch geöffnet hat, diese Datei löschen</translation>
    </message>
    <message>
        <source>the logbook is open for writing on another computer, %1 (%2, process %3)</source>
        <translation>das Logbuch ist auf einem anderen Computer zum Schreiben geöffnet, %1 (%2, Prozess %3)</translation>
    </message>
    <message>
        <source>not metered</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>unknown</source>
        <comment>bounds</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Total metered</source>
        <translation>Gemessen insgesamt</translation>
    </message>
    <message>
        <source>Whole run</source>
        <translation>Ganzer Lauf</translation>
    </message>
    <message>
        <source>before the crash</source>
        <translation>vor dem Crash</translation>
    </message>
    <message>
        <source>the crash and after it</source>
        <translation>der Crash und danach</translation>
    </message>
    <message>
        <source>the crash</source>
        <translation>der Crash</translation>
    </message>
    <message>
        <source>The energy was shared with %1: each batch that runs on %2 has an equal part.</source>
        <translation>Die Energie wurde mit %1 geteilt: Jeder Sud auf %2 hat einen gleichen Anteil.</translation>
    </message>
    <message>
        <source>For %1 the batch shared %2 with %3, and has an equal part of what was used then.</source>
        <translation>Für %1 teilte der Sud %2 mit %3 und hat einen gleichen Anteil an dem, was da verbraucht wurde.</translation>
    </message>
    <message>
        <source>This batch is still open, but its beer was not read for more than 48 h: meter readings after that are not counted for it. End the batch, or import its log.</source>
        <translation>Dieser Sud ist noch offen, aber von seinem Bier gibt es seit mehr als 48 h keine Messung: Zählerstände danach zählen nicht für ihn. Beende den Sud oder importiere sein Protokoll.</translation>
    </message>
    <message>
        <source>still settling</source>
        <translation>schwingt noch ein</translation>
    </message>
    <message>
        <source>; with the %1 left out by hand it stayed in the band</source>
        <translation>; mit den von Hand ausgelassenen %1 blieb er im Band</translation>
    </message>
    <message>
        <source>; with the %1 left out by hand it left the band</source>
        <translation>; mit den von Hand ausgelassenen %1 verließ er das Band</translation>
    </message>
    <message>
        <source>; with the %1 left out by hand it missed a target</source>
        <translation>; mit den von Hand ausgelassenen %1 verfehlte er ein Ziel</translation>
    </message>
    <message>
        <source>; with the %1 left out by hand there is not enough data</source>
        <translation>; mit den von Hand ausgelassenen %1 gibt es nicht genug Daten</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n Messung</numerusform>
            <numerusform>%n Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>; %1 left out by hand</source>
        <translation>; %1 von Hand ausgelassen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>from one time to another</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>%n more stretches</source>
        <comment>%n more stretch</comment>
        <translation>
            <numerusform>%n weiterer Abschnitt</numerusform>
            <numerusform>%n weitere Abschnitte</numerusform>
        </translation>
    </message>
    <message>
        <source>Left out by hand: %1.</source>
        <translation>Von Hand ausgelassen: %1.</translation>
    </message>
    <message>
        <source>the values fall in %1 of the %2 rows in which they change, first from %3 to %4 (lines %5 …): the column looks like the energy of each interval, not like a meter&apos;s register, which only rises</source>
        <translation>die Werte fallen in %1 der %2 Zeilen, in denen sie sich ändern, zuerst von %3 auf %4 (Zeilen %5 …): die Spalte sieht nach der Energie jedes Zeitabschnitts aus, nicht nach einem Zählerstand, der nur steigt</translation>
    </message>
    <message>
        <source>say --event rollover (it passed its top) or --event reset (it restarted at 0); another meter gets a name of its own, and the energy of each interval is no register</source>
        <translation>--event rollover (Überlauf am Ende) oder --event reset (Neubeginn bei 0) angeben; ein anderer Zähler bekommt einen eigenen Namen, und die Energie jedes Zeitabschnitts ist kein Zählerstand</translation>
    </message>
    <message>
        <source>as the description says for this file</source>
        <translation>wie die Beschreibung für diese Datei angibt</translation>
    </message>
    <message>
        <source>the description&apos;s zone</source>
        <translation>die Zeitzone der Beschreibung</translation>
    </message>
    <message>
        <source>times need no zone: each says its offset or is Unix time</source>
        <translation>Zeiten brauchen keine Zeitzone: jede nennt ihren Abstand zur Weltzeit oder ist Unix-Zeit</translation>
    </message>
    <message>
        <source>times read as %1</source>
        <translation>Zeiten gelesen als %1</translation>
    </message>
    <message>
        <source>times read as %1 (%2)</source>
        <translation>Zeiten gelesen als %1 (%2)</translation>
    </message>
    <message>
        <source>%1, but for those that say their own offset</source>
        <translation>%1, außer denen, die ihren eigenen Abstand nennen</translation>
    </message>
    <message>
        <source>as set</source>
        <translation>wie eingestellt</translation>
    </message>
    <message>
        <source>the logbook&apos;s zone</source>
        <translation>die Zeitzone des Logbuchs</translation>
    </message>
    <message>
        <source>%1; the header &quot;%2&quot; says %3</source>
        <translation>%1; die Kopfzeile „%2“ sagt %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; in the header is no single time zone</source>
        <translation>„%1“ in der Kopfzeile ist keine eindeutige Zeitzone</translation>
    </message>
    <message>
        <source>say --zone with the zone of the logger&apos;s clock, such as America/Denver or -07:00</source>
        <translation>--zone mit der Zeitzone der Logger-Uhr angeben, etwa America/Denver oder -07:00</translation>
    </message>
    <message>
        <source>As brewed, each in its own weather: %1 %2</source>
        <translation>Wie gebraut, jeder in seinem eigenen Wetter: %1 %2</translation>
    </message>
    <message>
        <source>%1: fewer than %2 took part, so this decides nothing</source>
        <translation>%1: Weniger als %2 waren dabei, also entscheidet das nichts</translation>
    </message>
    <message>
        <source>take the file out of the description and import it with --time and --pattern, or name another column of times in %1</source>
        <translation>die Datei aus der Beschreibung nehmen und mit --time und --pattern importieren, oder in %1 eine andere Zeitspalte nennen</translation>
    </message>
    <message>
        <source>no value beside the times in &quot;%1&quot; can be read: &quot;%2&quot; is not a number</source>
        <translation>kein Wert neben den Zeiten in „%1“ ist lesbar: „%2“ ist keine Zahl</translation>
    </message>
    <message>
        <source>write plain numbers, and the unit into the header, such as &quot;%1 (°F)&quot;</source>
        <translation>nur Zahlen schreiben und die Einheit in die Kopfzeile, etwa „%1 (°F)“</translation>
    </message>
    <message>
        <source>the times can&apos;t be read: &quot;%1&quot; %2</source>
        <translation>die Zeiten sind nicht lesbar: „%1“ %2</translation>
    </message>
    <message>
        <source>say which column has the time of day with --time &quot;%1+TIME COLUMN&quot;, or write it behind the date</source>
        <translation>mit --time &quot;%1+UHRZEITSPALTE&quot; angeben, in welcher Spalte die Uhrzeit steht, oder sie hinter das Datum schreiben</translation>
    </message>
    <message>
        <source>say how they are written, such as --time &quot;%1&quot; --pattern &quot;dd.MM.yy HH:mm&quot;, or name another column with --time &quot;COLUMN&quot;; the columns are: %2</source>
        <translation>angeben, wie sie geschrieben sind, etwa --time &quot;%1&quot; --pattern &quot;dd.MM.yy HH:mm&quot;, oder mit --time &quot;SPALTE&quot; eine andere Spalte nennen; die Spalten sind: %2</translation>
    </message>
    <message>
        <source>the file is damaged: a reading of &quot;%1&quot; is no number</source>
        <translation>die Datei ist beschädigt: eine Messung von &quot;%1&quot; ist keine Zahl</translation>
    </message>
    <message>
        <source>the file is damaged: it holds a value that can&apos;t be (%1)</source>
        <translation>die Datei ist beschädigt: sie enthält einen Wert, den es nicht geben kann (%1)</translation>
    </message>
    <message>
        <source>the readings of &quot;%1&quot; imported from %2 no longer fit their checksum: a bit changed, or another program wrote here</source>
        <translation>die Messungen von &quot;%1&quot;, importiert aus %2, passen nicht mehr zu ihrer Prüfsumme: ein Bit hat sich geändert, oder ein anderes Programm hat hier geschrieben</translation>
    </message>
    <message>
        <source>`holdband check` says what is damaged</source>
        <translation>`holdband check` sagt, was beschädigt ist</translation>
    </message>
    <message>
        <source>%1 kWh from %2 to %3 are %4 in the mean, and %5 is rated %6</source>
        <translation>%1 kWh von %2 bis %3 sind im Mittel %4, und %5 hat eine Nennleistung von %6</translation>
    </message>
    <message>
        <source>leave the probe in crushed ice and water for some minutes</source>
        <translation>den Fühler einige Minuten in zerstoßenem Eis und Wasser stehen lassen</translation>
    </message>
    <message>
        <source>The remaining uncertainty is ± %1 (95 %), from three parts:</source>
        <translation>Die verbleibende Unsicherheit ist ± %1 (95 %), aus drei Teilen:</translation>
    </message>
    <message>
        <source>the bath itself ± %1, assumed within 0.1 K.</source>
        <translation>das Bad selbst ± %1, angenommen auf 0,1 K.</translation>
    </message>
    <message>
        <source>%1 is already stored, not %2</source>
        <translation>gespeichert ist schon %1, nicht %2</translation>
    </message>
    <message>
        <source>a gravity must be between 0.950 and 1.250</source>
        <translation>eine Dichte muss zwischen 0,950 und 1,250 liegen</translation>
    </message>
    <message>
        <source>these must be in order of time, each once</source>
        <translation>diese müssen nach der Zeit geordnet sein, jede einmal</translation>
    </message>
    <message>
        <source>these must be in order of their &quot;from&quot;, each time once</source>
        <translation>diese müssen nach ihrem &quot;from&quot; geordnet sein, jede Zeit einmal</translation>
    </message>
    <message>
        <source>the file already exists; nothing was changed</source>
        <translation>die Datei gibt es schon; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is there twice in one object</source>
        <translation>der Schlüssel „%1“ kommt in einem Objekt zweimal vor</translation>
    </message>
    <message>
        <source>expected an object, found %1</source>
        <translation>ein Objekt erwartet, gefunden: %1</translation>
    </message>
    <message>
        <source>expected text, found %1</source>
        <translation>Text erwartet, gefunden: %1</translation>
    </message>
    <message>
        <source>expected a number, found %1</source>
        <translation>eine Zahl erwartet, gefunden: %1</translation>
    </message>
    <message>
        <source>expected true or false, found %1</source>
        <translation>true oder false erwartet, gefunden: %1</translation>
    </message>
    <message>
        <source>expected a list of times</source>
        <translation>eine Liste von Zeiten erwartet</translation>
    </message>
    <message>
        <source>expected a time</source>
        <translation>eine Zeit erwartet</translation>
    </message>
    <message>
        <source>expected a list, found %1</source>
        <translation>eine Liste erwartet, gefunden: %1</translation>
    </message>
    <message>
        <source>expected a list of %1</source>
        <translation>eine Liste von %1 erwartet</translation>
    </message>
    <message>
        <source>there is a quote inside a field that does not begin with one</source>
        <translation>in einem Feld, das nicht mit einem Anführungszeichen beginnt, ist eines</translation>
    </message>
    <message>
        <source>line %1, %2: %3 at %4, where %5 is stored</source>
        <translation>Zeile %1, %2: %3 am %4, gespeichert ist %5</translation>
    </message>
    <message>
        <source>the import was cancelled; nothing was stored</source>
        <translation>der Import wurde abgebrochen; nichts wurde gespeichert</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>auf %1 gesetzt</translation>
    </message>
    <message>
        <source>the header says %1, but the import was set to %2</source>
        <translation>laut Kopfzeile %1, der Import ist aber auf %2 gesetzt</translation>
    </message>
    <message>
        <source>%1 became shorter: it was read again</source>
        <translation>%1 wurde kürzer: noch einmal gelesen</translation>
    </message>
    <message>
        <source>%1 is a different file now: it was read again</source>
        <translation>%1 ist jetzt eine andere Datei: noch einmal gelesen</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n readings differ from what is stored, which is unchanged</source>
        <comment>%1: %n readings differ from what is stored, which is unchanged</comment>
        <translation>
            <numerusform>%1: %n Messwert weicht vom gespeicherten ab, der unverändert bleibt</numerusform>
            <numerusform>%1: %n Messwerte weichen von den gespeicherten ab, die unverändert bleiben</numerusform>
        </translation>
    </message>
    <message>
        <source>Cooling efficiency (est.)</source>
        <translation>Kühlwirkung (Schätzung)</translation>
    </message>
    <message>
        <source>%1 is cheaper from the first batch on: the lines never cross</source>
        <translation>%1 ist vom ersten Sud an günstiger: die Geraden kreuzen sich nie</translation>
    </message>
    <message>
        <source>not equally well covered: %1 of the hold time for %2, %3 of the hold time for %4</source>
        <translation>nicht gleich gut abgedeckt: %1 der Haltezeit bei %2, %3 der Haltezeit bei %4</translation>
    </message>
    <message>
        <source>%1 was only recorded with the room %2 warmer than the beer; beyond that the line is uncertain</source>
        <translation>%1 wurde nur mit einem um %2 wärmeren Raum als das Bier aufgezeichnet; weiter außen ist die Gerade unsicher</translation>
    </message>
    <message>
        <source>No stage settled: wherever the target jumped, the beer was in the band already or there is no data.</source>
        <translation>Kein Abschnitt schwang ein: wo der Sollwert sprang, war das Bier schon im Band, oder es gibt keine Daten.</translation>
    </message>
    <message>
        <source>Recorded time from a stage&apos;s start until the beer first came into its band, where the target jumped; it is not judged: %1.</source>
        <translation>Aufgezeichnete Zeit vom Beginn eines Abschnitts, bis das Bier zum ersten Mal in sein Band kam, wo der Sollwert sprang; sie wird nicht beurteilt: %1.</translation>
    </message>
    <message>
        <source>Too little of the hold time is covered for a verdict, so there is nothing to be sure of.</source>
        <translation>Für ein Urteil ist zu wenig der Haltezeit abgedeckt, deshalb ist nichts sicher.</translation>
    </message>
    <message>
        <source>The band is no wider than that uncertainty, and then only &quot;left the band&quot; can be sure.</source>
        <translation>Das Band ist nicht breiter als diese Unsicherheit, und dann kann nur „Band verlassen“ sicher sein.</translation>
    </message>
    <message>
        <source>There is no data for any of the %1 of hold time, so this figure can&apos;t be computed.</source>
        <translation>Für keinen Teil der %1 Haltezeit gibt es Daten, deshalb lässt sich dieser Wert nicht berechnen.</translation>
    </message>
    <message>
        <source>Time inside the band ÷ covered hold time: %1 of %2 = %3.</source>
        <translation>Zeit im Band ÷ abgedeckte Haltezeit: %1 von %2 = %3.</translation>
    </message>
    <message>
        <source>Covered hold time beyond an edge of the band, with straight lines between the readings: %1</source>
        <translation>Abgedeckte Haltezeit außerhalb des Bandes, mit geraden Linien zwischen den Messwerten: %1</translation>
    </message>
    <message>
        <source>There is no hold time yet, so there is no coverage either.</source>
        <translation>Es gibt noch keine Haltezeit, also auch keine Abdeckung.</translation>
    </message>
    <message>
        <source>Those shorter than %1 are ignored in the verdict.</source>
        <translation>Die kürzer als %1 sind, zählen nicht für das Urteil.</translation>
    </message>
    <message>
        <source>Worst past the edge of the band: no reading of the hold time is outside.</source>
        <translation>Am weitesten außerhalb des Bandes: in der Haltezeit liegt kein Messwert außerhalb.</translation>
    </message>
    <message>
        <source>There is no data for the hold time.</source>
        <translation>Für die Haltezeit gibt es keine Daten.</translation>
    </message>
    <message>
        <source>Beer minus target, averaged over the %1 of covered hold time, each moment counting alike: %2.</source>
        <translation>Bier minus Sollwert, gemittelt über die %1 abgedeckter Haltezeit, jeder Augenblick gleich gewichtet: %2.</translation>
    </message>
    <message>
        <source>How far beer minus target strays from its own mean of %1 (standard deviation) over the %2 of covered hold time, each moment counting alike: %3.</source>
        <translation>Wie weit Bier minus Sollwert um sein eigenes Mittel von %1 streut (Standardabweichung), über die %2 abgedeckter Haltezeit, jeder Augenblick gleich gewichtet: %3.</translation>
    </message>
    <message>
        <source>Root of the mean square of beer minus target over the %1 of covered hold time, each moment counting alike: √(mean² + spread²), with a mean of %2 and a spread of %3, = %4.</source>
        <translation>Wurzel aus dem mittleren Quadrat von Bier minus Sollwert über die %1 abgedeckter Haltezeit, jeder Augenblick gleich gewichtet: √(Mittel² + Streuung²), mit einem Mittel von %2 und einer Streuung von %3, = %4.</translation>
    </message>
    <message>
        <source>The distance from the target, above or below alike, averaged over the %1 of covered hold time, each moment counting alike: %2.</source>
        <translation>Der Abstand vom Sollwert, nach oben wie nach unten, gemittelt über die %1 abgedeckter Haltezeit, jeder Augenblick gleich gewichtet: %2.</translation>
    </message>
    <message>
        <source>The heat of the crash is counted from the first reading outside its band to the arrival in it, and no reading shows the beer arriving from outside.</source>
        <translation>Die Wärme des Cold Crash zählt vom ersten Messwert außerhalb seines Bandes bis zur Ankunft darin, und kein Messwert zeigt, dass das Bier von außen ankam.</translation>
    </message>
    <message>
        <source>An estimate of heat removed ÷ electricity, and none is metered from %1 to %2.</source>
        <translation>Eine Schätzung von entzogener Wärme ÷ Strom, und von %1 bis %2 ist keiner gemessen.</translation>
    </message>
    <message>
        <source>An estimate: heat removed ÷ electricity of the same time, from %1 to %2: %3 ÷ %4 = %5.</source>
        <translation>Eine Schätzung: entzogene Wärme ÷ Strom derselben Zeit, von %1 bis %2: %3 ÷ %4 = %5.</translation>
    </message>
    <message>
        <source>No final gravity is given: the last measured one, of %1, is used.</source>
        <translation>Keine Restdichte ist angegeben: die zuletzt gemessene, vom %1, wird verwendet.</translation>
    </message>
    <message>
        <source>No final gravity is given: the last measured one, of %1, is used, corrected from a sample at %2 to a hydrometer&apos;s %3.</source>
        <translation>Keine Restdichte ist angegeben: die zuletzt gemessene, vom %1, wird verwendet, von einer Probe bei %2 auf die %3 der Spindel korrigiert.</translation>
    </message>
    <message>
        <source>The mean of the %1 calendar days that were metered from midnight to midnight: %2; minimum %3, maximum %4.</source>
        <translation>Das Mittel der %1 Kalendertage, die von Mitternacht bis Mitternacht gemessen wurden: %2; Minimum %3, Maximum %4.</translation>
    </message>
    <message>
        <source>Room minus beer, summed over the %1 in which both were recorded: %2 with the room warmer, %3 with the beer warmer</source>
        <translation>Raum minus Bier, summiert über die %1, in denen beide aufgezeichnet wurden: %2 mit wärmerem Raum, %3 mit wärmerem Bier</translation>
    </message>
    <message>
        <source>Metered energy over the lift of the same time, with the room warmer: %1 ÷ (%2 ÷ 24) = %3 for each %4.</source>
        <translation>Gemessene Energie durch den Hub derselben Zeit, mit wärmerem Raum: %1 ÷ (%2 ÷ 24) = %3 je %4.</translation>
    </message>
    <message>
        <source>There is no data for %1, so no arrival is known.</source>
        <translation>Für %1 gibt es keine Daten, also ist keine Ankunft bekannt.</translation>
    </message>
    <message>
        <source>No reading is in the band of %1: its target was missed.</source>
        <translation>Kein Messwert liegt im Band von %1: der Sollwert wurde verfehlt.</translation>
    </message>
    <message>
        <source>Nothing to settle: the target did not jump at the start of %1.</source>
        <translation>Nichts einzuschwingen: der Sollwert sprang am Beginn von %1 nicht.</translation>
    </message>
    <message>
        <source>Nothing to settle: the beer was in the band at the first reading of %1.</source>
        <translation>Nichts einzuschwingen: das Bier war beim ersten Messwert von %1 im Band.</translation>
    </message>
    <message>
        <source>%1 of it are covered and not judged; time without data counts as hold time.</source>
        <translation>%1 davon sind abgedeckt und werden nicht beurteilt; Zeit ohne Daten zählt als Haltezeit.</translation>
    </message>
    <message>
        <source>The beer was in the band at its first reading: there is no rate.</source>
        <translation>Das Bier war schon beim ersten Messwert im Band: es gibt keine Geschwindigkeit.</translation>
    </message>
    <message>
        <source>Of the %1 of covered hold time, the beer was at or below %2 off the target for 5 %, %3 for half and %4 for 95 %.</source>
        <translation>Von den %1 abgedeckter Haltezeit lag das Bier 5 % lang bei höchstens %2 neben dem Sollwert, die Hälfte lang bei höchstens %3 und 95 % lang bei höchstens %4.</translation>
    </message>
    <message>
        <source>The coldest and the warmest beer of the covered hold time, with straight lines between the readings: %1 and %2.</source>
        <translation>Das kälteste und das wärmste Bier der abgedeckten Haltezeit, mit geraden Linien zwischen den Messwerten: %1 und %2.</translation>
    </message>
    <message>
        <source>A gap in the readings cut it: how it went on is not known.</source>
        <translation>Eine Lücke in den Messwerten schnitt sie ab: wie es weiterging, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>the time below which excursions are ignored can&apos;t be negative</source>
        <translation>die Zeit, unter der Bandverletzungen nicht zählen, kann nicht negativ sein</translation>
    </message>
    <message>
        <source>; twice for %1 or longer, which counts</source>
        <translation>; zweimal für %1 oder länger, was zählt</translation>
    </message>
    <message>
        <source>stayed in the band for all of the %1 on target and recorded</source>
        <translation>blieb im Band während der ganzen aufgezeichneten Haltezeit von %1</translation>
    </message>
    <message>
        <source>stayed in the band of %1 for all of the %2 on target and recorded</source>
        <translation>blieb im Band von %1 während der ganzen aufgezeichneten Haltezeit von %2</translation>
    </message>
    <message>
        <source>not enough data: there are no beer readings in this batch; %1 of its %2 must be covered</source>
        <translation>zu wenig Daten: in diesem Sud gibt es keine Messwerte des Biers; %1 von %2 müssen abgedeckt sein</translation>
    </message>
    <message>
        <source>not enough data: %1 of %2 hold time is covered, and %3 is needed</source>
        <translation>zu wenig Daten: %1 von %2 Haltezeit sind abgedeckt, nötig sind %3</translation>
    </message>
    <message>
        <source>the band is no wider than the uncertainty</source>
        <translation>das Band ist nicht breiter als die Unsicherheit</translation>
    </message>
    <message>
        <source>Within the sensor&apos;s uncertainty of %1: %2.</source>
        <translation>Innerhalb der Unsicherheit des Sensors von %1: %2.</translation>
    </message>
    <message>
        <source>Covered %1 of the hold time (no data for %2).</source>
        <translation>Abgedeckt sind %1 der Haltezeit (keine Daten für %2).</translation>
    </message>
    <message>
        <source>a later change depends on this; nothing was changed</source>
        <translation>eine spätere Änderung hängt davon ab; nichts wurde geändert</translation>
    </message>
    <message>
        <source>undo the later change first</source>
        <translation>erst die spätere Änderung rückgängig machen</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>es gibt nichts zu wiederholen</translation>
    </message>
    <message numerus="yes">
        <source>another import has since added readings for %n of the same times</source>
        <comment>another import has since added readings for %n of the same times</comment>
        <translation>
            <numerusform>ein anderer Import hat seither Messwerte für %n derselben Zeiten hinzugefügt</numerusform>
            <numerusform>ein anderer Import hat seither Messwerte für %n derselben Zeiten hinzugefügt</numerusform>
        </translation>
    </message>
    <message>
        <source>withdraw that one first</source>
        <translation>erst diesen zurückziehen</translation>
    </message>
    <message>
        <source>delete those first</source>
        <translation>erst diese löschen</translation>
    </message>
    <message>
        <source>delete that one first</source>
        <translation>erst diesen löschen</translation>
    </message>
    <message>
        <source>the import that these rows belong to is deleted or withdrawn</source>
        <translation>den Import, zu dem diese Zeilen gehören, gibt es nicht mehr, oder er ist zurückgezogen</translation>
    </message>
    <message>
        <source>delete those first, or end the batch</source>
        <translation>erst diese löschen oder den Sud beenden</translation>
    </message>
    <message>
        <source>choose a name that differs more</source>
        <translation>einen deutlich anderen Namen wählen</translation>
    </message>
    <message>
        <source>the time below which excursions are ignored must be 0 minutes or more</source>
        <translation>die Zeit, unter der Bandverletzungen nicht zählen, muss mindestens 0 Minuten lang sein</translation>
    </message>
    <message>
        <source>a weight must be between 0 and 5</source>
        <translation>ein Gewicht muss zwischen 0 und 5 liegen</translation>
    </message>
    <message>
        <source>the copy could not be written to the disk</source>
        <translation>die Kopie ließ sich nicht auf den Datenträger schreiben</translation>
    </message>
    <message>
        <source>the file is written, but its folder could not be synced: %1; it may be missing after a power loss</source>
        <translation>die Datei ist geschrieben, aber ihr Ordner ließ sich nicht auf den Datenträger schreiben: %1; nach einem Stromausfall kann sie fehlen</translation>
    </message>
    <message>
        <source>readings of a withdrawn import are stored in two places</source>
        <translation>Messwerte eines zurückgezogenen Imports sind an zwei Stellen gespeichert</translation>
    </message>
    <message numerus="yes">
        <source>the record of %n changes no longer fits its digest: they can&apos;t be undone</source>
        <comment>the record of %n changes no longer fits its digest: they can&apos;t be undone</comment>
        <translation>
            <numerusform>die Aufzeichnung von %n Änderung passt nicht mehr zu ihrer Prüfsumme: sie lässt sich nicht rückgängig machen</numerusform>
            <numerusform>die Aufzeichnung von %n Änderungen passt nicht mehr zu ihrer Prüfsumme: sie lassen sich nicht rückgängig machen</numerusform>
        </translation>
    </message>
    <message>
        <source>close it there first; if that computer is off or the program no longer runs, delete the file %1</source>
        <translation>es zuerst dort schließen; ist jener Computer aus oder das Programm dort beendet, die Datei %1 löschen</translation>
    </message>
    <message>
        <source>did you mean %1?</source>
        <translation>meinten Sie %1?</translation>
    </message>
    <message>
        <source>it was stopped; nothing of it was stored</source>
        <translation>es wurde angehalten; nichts davon wurde gespeichert</translation>
    </message>
    <message>
        <source>the sensor used from pitching is set in the details</source>
        <translation>der Sensor ab dem Anstellen steht in den Angaben</translation>
    </message>
    <message>
        <source>say why they are left out: the reason is stored with them</source>
        <translation>sagen, warum sie ausgelassen werden: der Grund wird mitgespeichert</translation>
    </message>
    <message>
        <source>The register was reset to 0 in between: at least this much was used.</source>
        <translation>Der Zähler wurde dazwischen auf 0 zurückgesetzt: mindestens so viel wurde verbraucht.</translation>
    </message>
    <message>
        <source>an ice point needs at least three readings</source>
        <translation>ein Eispunkt braucht mindestens drei Messwerte</translation>
    </message>
    <message>
        <source>the readings are too far from the melting point of ice</source>
        <translation>die Messwerte liegen zu weit vom Schmelzpunkt des Eises</translation>
    </message>
    <message>
        <source>It is measured at the ice point: far from it, the sensor may be off by more.</source>
        <translation>Bestimmt am Eispunkt: weit davon kann der Sensor weiter danebenliegen.</translation>
    </message>
    <message>
        <source>choose one</source>
        <translation>einen wählen</translation>
    </message>
    <message>
        <source>leave only one of them</source>
        <translation>nur einen davon stehen lassen</translation>
    </message>
    <message>
        <source>there must be at least one, in order of the day, not overlapping</source>
        <translation>es muss mindestens einer sein, nach der Tageszeit geordnet und ohne Überschneidung</translation>
    </message>
    <message>
        <source>it splits most rows into the same number of columns</source>
        <translation>es teilt die meisten Zeilen in gleich viele Spalten</translation>
    </message>
    <message>
        <source>its row has no unit</source>
        <translation>ihre Zeile hat keine Einheit</translation>
    </message>
    <message>
        <source>from the header &quot;%1&quot;</source>
        <translation>aus der Kopfzeile „%1“</translation>
    </message>
    <message>
        <source>the header has no unit: %1 is assumed</source>
        <translation>die Kopfzeile hat keine Einheit: %1 wird angenommen</translation>
    </message>
    <message>
        <source>write words in &apos;quotes&apos;</source>
        <translation>Wörter in &apos;Anführungszeichen&apos; schreiben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; repeats a part of the pattern</source>
        <translation>„%1“ wiederholt einen Teil des Musters</translation>
    </message>
    <message>
        <source>a probe in the air or on the wall swings differently from one in the beer, so their deviations can&apos;t be compared</source>
        <translation>ein Fühler in der Luft oder an der Wand schwankt anders als einer im Bier, deshalb lassen sich ihre Abweichungen nicht vergleichen</translation>
    </message>
    <message>
        <source>the energy of a batch covers its metered part only, so it is too small for the whole batch</source>
        <translation>die Energie eines Suds umfasst nur seinen gemessenen Teil und ist deshalb zu klein für den ganzen Sud</translation>
    </message>
    <message>
        <source>the range of %1 is not known, so nobody is ahead on temperature</source>
        <translation>der Bereich von %1 ist nicht bekannt, deshalb liegt bei der Temperatur niemand vorn</translation>
    </message>
    <message>
        <source>; the points are off it by %1 of the mean power (CV(RMSE))</source>
        <translation>; die Punkte liegen um %1 der mittleren Leistung daneben (CV(RMSE))</translation>
    </message>
    <message>
        <source>%1: the room was not measured, so there is no line</source>
        <translation>%1: der Raum wurde nicht gemessen, deshalb gibt es keine Gerade</translation>
    </message>
    <message>
        <source>%1: the points are far off the line (%2 of the mean power, at most %3 is allowed), so this decides nothing</source>
        <translation>%1: die Punkte liegen weit neben der Geraden (%2 der mittleren Leistung, erlaubt sind höchstens %3), deshalb entscheidet das nichts</translation>
    </message>
    <message>
        <source>An estimate, within a few percent: volume × density × specific heat of beer × the fall to the arrival, %1 × %2 kg/L × %3 kJ/(kg·K) × %4 = %5 kJ = %6.</source>
        <translation>Eine Schätzung, auf wenige Prozent gut: Volumen × Dichte × spezifische Wärme von Bier × der Fall bis zur Ankunft, %1 × %2 kg/L × %3 kJ/(kg·K) × %4 = %5 kJ = %6.</translation>
    </message>
    <message>
        <source>The meter at the end minus the meter at the start, with straight lines between its readings; in brackets the range that they allow: %1 in the %2 that were metered, of %3; nothing is added for the rest.</source>
        <translation>Der Zähler am Ende minus der Zähler am Anfang, mit geraden Linien zwischen den Zählerständen; in Klammern, was sie offen lassen: %1 in den %2, die gemessen wurden, von %3; für den Rest kommt nichts hinzu.</translation>
    </message>
    <message>
        <source>The meter at the end minus the meter at the start, with straight lines between its readings; in brackets the range that they allow: %1 in %2.</source>
        <translation>Der Zähler am Ende minus der Zähler am Anfang, mit geraden Linien zwischen den Zählerständen; in Klammern, was sie offen lassen: %1 in %2.</translation>
    </message>
    <message>
        <source>; %1 more of it is enough</source>
        <translation>; %1 mehr davon genügen</translation>
    </message>
    <message>
        <source>a setup has at least one vessel</source>
        <translation>eine Anlage hat mindestens ein Gefäß</translation>
    </message>
    <message>
        <source>parts of its readings are left out</source>
        <translation>Teile seiner Messwerte sind ausgelassen</translation>
    </message>
    <message>
        <source>the target must be within -50 … 100 °C</source>
        <translation>der Sollwert muss in −50 … 100 °C liegen</translation>
    </message>
    <message>
        <source>move it back, or open the one that is there now</source>
        <translation>es zurückverschieben oder das öffnen, das jetzt dort ist</translation>
    </message>
    <message>
        <source>a day needs at least one round</source>
        <translation>ein Tag braucht mindestens einen Rundgang</translation>
    </message>
    <message numerus="yes">
        <source>a day can have at most %n rounds</source>
        <comment>a day has one round at most</comment>
        <translation>
            <numerusform>ein Tag kann höchstens %n Rundgang haben</numerusform>
            <numerusform>ein Tag kann höchstens %n Rundgänge haben</numerusform>
        </translation>
    </message>
    <message>
        <source>without a beer sensor there can be no verdict</source>
        <translation>ohne Sensor für das Bier gibt es kein Urteil</translation>
    </message>
    <message>
        <source>restore it first</source>
        <translation>zuerst wiederherstellen</translation>
    </message>
    <message>
        <source>It is lower than the reading before and no reason is given, so this pair is not used.</source>
        <translation>Er ist niedriger als der davor, und es ist kein Grund angegeben; dieses Paar wird nicht verwendet.</translation>
    </message>
    <message numerus="yes">
        <source>; %n times for %1 or longer, which counts</source>
        <comment>; once for %1 or longer, which counts</comment>
        <translation>
            <numerusform>; einmal für %1 oder länger, was zählt</numerusform>
            <numerusform>; %n-mal für %1 oder länger, was zählt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stayed in the band: %n excursions were ignored as shorter than %1</source>
        <comment>stayed in the band: %n excursion was ignored as shorter than %1</comment>
        <translation>
            <numerusform>blieb im Band: %n Bandverletzung war kürzer als %1 und zählt nicht</numerusform>
            <numerusform>blieb im Band: %n Bandverletzungen waren kürzer als %1 und zählen nicht</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stayed in the band of %1: %n excursions were ignored as shorter than %2</source>
        <comment>stayed in the band of %1: %n excursion was ignored as shorter than %2</comment>
        <translation>
            <numerusform>blieb im Band von %1: %n Bandverletzung war kürzer als %2 und zählt nicht</numerusform>
            <numerusform>blieb im Band von %1: %n Bandverletzungen waren kürzer als %2 und zählen nicht</numerusform>
        </translation>
    </message>
    <message>
        <source>expected a list of texts</source>
        <translation>erwartet: eine Liste von Texten</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no change that this version knows</source>
        <translation>„%1“ ist keine Änderung, die diese Version kennt</translation>
    </message>
    <message>
        <source>created the logbook</source>
        <translation>Logbuch angelegt</translation>
    </message>
    <message>
        <source>withdrew %1</source>
        <translation>%1 zurückgezogen</translation>
    </message>
    <message>
        <source>restored %1</source>
        <translation>%1 wiederhergestellt</translation>
    </message>
    <message>
        <source>saved how the columns of a log are read</source>
        <translation>Spaltenzuordnung eines Protokolls gespeichert</translation>
    </message>
    <message>
        <source>started watching %1</source>
        <translation>Überwachung von %1 begonnen</translation>
    </message>
    <message>
        <source>stopped watching %1</source>
        <translation>Überwachung von %1 beendet</translation>
    </message>
    <message>
        <source>added new rows of %1</source>
        <translation>neue Zeilen von %1 hinzugefügt</translation>
    </message>
    <message>
        <source>added %1</source>
        <translation>%1 hinzugefügt</translation>
    </message>
    <message>
        <source>saved a round</source>
        <translation>Rundgang gespeichert</translation>
    </message>
    <message>
        <source>deleted a gravity of %1</source>
        <translation>Dichte von %1 gelöscht</translation>
    </message>
    <message>
        <source>restored a stretch of %1</source>
        <translation>Zeitraum von %1 wiederhergestellt</translation>
    </message>
    <message>
        <source>added a note to %1</source>
        <translation>Notiz zu %1 hinzugefügt</translation>
    </message>
    <message>
        <source>added a note</source>
        <translation>Notiz hinzugefügt</translation>
    </message>
    <message>
        <source>deleted a note of %1</source>
        <translation>Notiz zu %1 gelöscht</translation>
    </message>
    <message>
        <source>deleted a note</source>
        <translation>Notiz gelöscht</translation>
    </message>
    <message>
        <source>added setup %1</source>
        <translation>Anlage %1 hinzugefügt</translation>
    </message>
    <message>
        <source>changed setup %1</source>
        <translation>Anlage %1 geändert</translation>
    </message>
    <message>
        <source>removed setup %1</source>
        <translation>Anlage %1 entfernt</translation>
    </message>
    <message>
        <source>retired setup %1</source>
        <translation>Anlage %1 ausgemustert</translation>
    </message>
    <message>
        <source>restored setup %1</source>
        <translation>Anlage %1 wieder in Gebrauch genommen</translation>
    </message>
    <message>
        <source>added sensor %1</source>
        <translation>Sensor %1 hinzugefügt</translation>
    </message>
    <message>
        <source>changed sensor %1</source>
        <translation>Sensor %1 geändert</translation>
    </message>
    <message>
        <source>removed sensor %1</source>
        <translation>Sensor %1 entfernt</translation>
    </message>
    <message>
        <source>retired sensor %1</source>
        <translation>Sensor %1 ausgemustert</translation>
    </message>
    <message>
        <source>restored sensor %1</source>
        <translation>Sensor %1 wieder in Gebrauch genommen</translation>
    </message>
    <message>
        <source>added meter %1</source>
        <translation>Zähler %1 hinzugefügt</translation>
    </message>
    <message>
        <source>changed meter %1</source>
        <translation>Zähler %1 geändert</translation>
    </message>
    <message>
        <source>removed meter %1</source>
        <translation>Zähler %1 entfernt</translation>
    </message>
    <message>
        <source>retired meter %1</source>
        <translation>Zähler %1 ausgemustert</translation>
    </message>
    <message>
        <source>restored meter %1</source>
        <translation>Zähler %1 wieder in Gebrauch genommen</translation>
    </message>
    <message>
        <source>replaced %2 with %1</source>
        <translation>%2 durch %1 ersetzt</translation>
    </message>
    <message>
        <source>saved plan %1</source>
        <translation>Plan %1 gespeichert</translation>
    </message>
    <message>
        <source>removed plan %1</source>
        <translation>Plan %1 entfernt</translation>
    </message>
    <message>
        <source>pitched %1</source>
        <translation>%1 angestellt</translation>
    </message>
    <message>
        <source>changed batch %1</source>
        <translation>Sud %1 geändert</translation>
    </message>
    <message>
        <source>removed batch %1</source>
        <translation>Sud %1 entfernt</translation>
    </message>
    <message>
        <source>ended batch %1</source>
        <translation>Sud %1 beendet</translation>
    </message>
    <message>
        <source>reopened batch %1</source>
        <translation>Sud %1 wieder geöffnet</translation>
    </message>
    <message>
        <source>ended %2 of %1</source>
        <translation>%2 von %1 beendet</translation>
    </message>
    <message>
        <source>changed the limits of %1</source>
        <translation>Grenzen von %1 geändert</translation>
    </message>
    <message>
        <source>set the cause of the excursion of %1 on %2</source>
        <translation>Ursache der Bandverletzung von %1 am %2 angegeben</translation>
    </message>
    <message>
        <source>changed units, time zone or currency</source>
        <translation>Einheiten, Zeitzone oder Währung geändert</translation>
    </message>
    <message>
        <source>changed the rounds</source>
        <translation>Rundgänge geändert</translation>
    </message>
    <message>
        <source>changed the price of energy</source>
        <translation>Energiepreis geändert</translation>
    </message>
    <message>
        <source>changed how setups are weighed</source>
        <translation>Gewichtung der Anlagen geändert</translation>
    </message>
    <message numerus="yes">
        <source>saved a round of %n readings</source>
        <comment>saved a round of %n reading</comment>
        <translation>
            <numerusform>Rundgang mit %n Messwert gespeichert</numerusform>
            <numerusform>Rundgang mit %n Messwerten gespeichert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>deleted %n readings of %1</source>
        <comment>deleted a reading of %1</comment>
        <translation>
            <numerusform>Messwert von %1 gelöscht</numerusform>
            <numerusform>%n Messwerte von %1 gelöscht</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>restored %n readings of %1</source>
        <comment>restored a reading of %1</comment>
        <translation>
            <numerusform>Messwert von %1 wiederhergestellt</numerusform>
            <numerusform>%n Messwerte von %1 wiederhergestellt</numerusform>
        </translation>
    </message>
    <message>
        <source>undid: %1</source>
        <translation>rückgängig gemacht: %1</translation>
    </message>
    <message>
        <source>redid: %1</source>
        <translation>wiederholt: %1</translation>
    </message>
    <message>
        <source>there is no change since midnight to undo</source>
        <translation>seit Mitternacht gibt es keine Änderung zum Rückgängigmachen</translation>
    </message>
    <message>
        <source>say &quot;unit&quot;: &quot;f&quot; if they are in °F, or &quot;unit&quot;: &quot;c&quot; if they are right (in %1)</source>
        <translation>&quot;unit&quot;: &quot;f&quot; angeben, wenn es °F sind, oder &quot;unit&quot;: &quot;c&quot;, wenn sie stimmen (in %1)</translation>
    </message>
    <message>
        <source>say &quot;unit&quot;: &quot;c&quot; if they are in °C, or &quot;unit&quot;: &quot;f&quot; if they are right (in %1)</source>
        <translation>&quot;unit&quot;: &quot;c&quot; angeben, wenn es °C sind, oder &quot;unit&quot;: &quot;f&quot;, wenn sie stimmen (in %1)</translation>
    </message>
    <message>
        <source>say &quot;date_order&quot;: %1 (in %2)</source>
        <translation>&quot;date_order&quot;: %1 angeben (in %2)</translation>
    </message>
    <message>
        <source>write offsets in the file, or give the zone of the logger&apos;s clock, such as &quot;zone&quot;: %1 (in %2)</source>
        <translation>Zeitversätze in die Datei schreiben oder die Zeitzone der Logger-Uhr angeben, etwa &quot;zone&quot;: %1 (in %2)</translation>
    </message>
    <message>
        <source>say which is which with &quot;columns&quot; (in %2); the file has: %1</source>
        <translation>mit &quot;columns&quot; angeben, welche Spalte welche ist (in %2); die Datei hat: %1</translation>
    </message>
    <message>
        <source>name it with &quot;time&quot;: &quot;COLUMN&quot; or &quot;time&quot;: &quot;DATE COLUMN+TIME COLUMN&quot; (in %2); the first row has: %1</source>
        <translation>mit &quot;time&quot;: &quot;SPALTE&quot; oder &quot;time&quot;: &quot;DATUMSSPALTE+ZEITSPALTE&quot; angeben (in %2); in der ersten Zeile stehen: %1</translation>
    </message>
    <message>
        <source>say which column has the time of day with &quot;time&quot;: &quot;%1+TIME COLUMN&quot; (in %2), or write it behind the date</source>
        <translation>die Spalte mit der Uhrzeit mit &quot;time&quot;: &quot;%1+ZEITSPALTE&quot; angeben (in %2) oder die Uhrzeit hinter das Datum schreiben</translation>
    </message>
    <message>
        <source>take the file out of the description and import it with --decimal comma or --decimal point</source>
        <translation>die Datei aus der Beschreibung nehmen und mit --decimal comma oder --decimal point importieren</translation>
    </message>
    <message>
        <source>take the file out of the description and import it with --event rollover (it passed its top) or --event reset (it restarted at 0)</source>
        <translation>die Datei aus der Beschreibung nehmen und mit --event rollover (Überlauf) oder --event reset (auf 0 gesetzt) importieren</translation>
    </message>
    <message>
        <source>Qt&apos;s driver for SQLite is not installed, so no logbook can be opened</source>
        <translation>Der SQLite-Treiber von Qt ist nicht installiert, daher kann kein Logbuch geöffnet werden</translation>
    </message>
    <message>
        <source>install the package libqt6sql6-sqlite</source>
        <translation>das Paket libqt6sql6-sqlite installieren</translation>
    </message>
    <message>
        <source>Qt&apos;s driver for SQLite has another SQLite (%1) than this program (%2)</source>
        <translation>Der SQLite-Treiber von Qt hat ein anderes SQLite (%1) als dieses Programm (%2)</translation>
    </message>
    <message>
        <source>install both from the same release of the system</source>
        <translation>beide aus derselben Version des Systems installieren</translation>
    </message>
    <message>
        <source>SQLite %1 is too old or was built without sessions</source>
        <translation>SQLite %1 ist zu alt oder wurde ohne Sessions gebaut</translation>
    </message>
    <message>
        <source>install SQLite 3.37 or later with the session extension</source>
        <translation>SQLite ab 3.37 mit der Session-Erweiterung installieren</translation>
    </message>
    <message>
        <source>a text is not in UTF-8</source>
        <translation>ein Text ist nicht in UTF-8</translation>
    </message>
    <message>
        <source>write it in UTF-8</source>
        <translation>in UTF-8 schreiben</translation>
    </message>
    <message>
        <source>%1 (was: %2, now: %3)</source>
        <comment>a batch and its two verdicts</comment>
        <translation>%1 (zuvor: %2, jetzt: %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n more batches</source>
        <comment>%n more batch</comment>
        <translation>
            <numerusform>%n weiterer Sud</numerusform>
            <numerusform>%n weitere Sude</numerusform>
        </translation>
    </message>
    <message>
        <source>The beer now has to stay in the band to have arrived, and a short return no longer ends an excursion. That changes the verdict of %1.</source>
        <translation>Das Bier gilt jetzt erst als eingeschwungen, wenn es im Band bleibt, und eine kurze Rückkehr beendet keine Bandverletzung mehr. Das ändert das Urteil über %1.</translation>
    </message>
    <message>
        <source>Recorded time from a stage&apos;s start until the beer came into its band and stayed for %1, where the target jumped; it is not judged: %2.</source>
        <translation>Aufgezeichnete Zeit vom Beginn eines Abschnitts, bis das Bier in sein Band kam und %1 lang blieb, wo der Sollwert sprang; sie wird nicht beurteilt: %2.</translation>
    </message>
    <message>
        <source>Each ends as soon as the beer is back inside.</source>
        <translation>Jede endet, sobald das Bier wieder im Band ist.</translation>
    </message>
    <message>
        <source>Each ends once the beer has been back inside for %1; shorter returns are part of it, though their time is not counted as outside.</source>
        <translation>Jede endet, wenn das Bier %1 lang wieder im Band ist; kürzere Rückkehren gehören dazu, ihre Zeit zählt aber nicht als außerhalb.</translation>
    </message>
    <message>
        <source>How often the beer left the band in covered hold time: %1.</source>
        <translation>Wie oft das Bier in abgedeckter Haltezeit das Band verließ: %1.</translation>
    </message>
    <message>
        <source>How often the beer left the band in covered hold time: %1 (%2 above, %3 below).</source>
        <translation>Wie oft das Bier in abgedeckter Haltezeit das Band verließ: %1 (%2 darüber, %3 darunter).</translation>
    </message>
    <message numerus="yes">
        <source>The beer came into the band of %1 %n times, but never stayed for %2: its target was missed.</source>
        <comment>The beer came into the band of %1 once, but did not stay for %2: its target was missed.</comment>
        <translation>
            <numerusform>Das Bier kam einmal in das Band von %1, blieb aber nicht %2 lang: der Sollwert wurde verfehlt.</numerusform>
            <numerusform>Das Bier kam %n-mal in das Band von %1, blieb aber nie %2 lang: der Sollwert wurde verfehlt.</numerusform>
        </translation>
    </message>
    <message>
        <source>From the stage&apos;s start, %1, until the beer came into the band and stayed for %2: %3 on the clock.</source>
        <translation>Vom Beginn des Abschnitts, %1, bis das Bier in das Band kam und %2 lang blieb: %3 auf der Uhr.</translation>
    </message>
    <message numerus="yes">
        <source>Before that it was inside %n times for less.</source>
        <comment>Before that it was inside once for less.</comment>
        <translation>
            <numerusform>Davor war es einmal kürzer darin.</numerusform>
            <numerusform>Davor war es %n-mal kürzer darin.</numerusform>
        </translation>
    </message>
    <message>
        <source>Above the band of %1 from %2 to %3, outside for %4 of it: at most %5 past the edge, %6 beyond it in all.</source>
        <translation>Über dem Band von %1 von %2 bis %3, davon %4 außerhalb: höchstens %5 jenseits des Rands, insgesamt %6 darüber hinaus.</translation>
    </message>
    <message>
        <source>Below the band of %1 from %2 to %3, outside for %4 of it: at most %5 past the edge, %6 beyond it in all.</source>
        <translation>Unter dem Band von %1 von %2 bis %3, davon %4 außerhalb: höchstens %5 jenseits des Rands, insgesamt %6 darüber hinaus.</translation>
    </message>
    <message>
        <source>the time inside after which the beer is settled, or an excursion ends, can&apos;t be negative</source>
        <translation>die Zeit im Band, nach der das Bier eingeschwungen ist oder eine Bandverletzung endet, kann nicht negativ sein</translation>
    </message>
    <message>
        <source>The log&apos;s %1 between readings can hide up to %2 more than the worst that was read.</source>
        <translation>Die %1 zwischen den Messwerten können bis zu %2 mehr verbergen als das Schlimmste, was gemessen wurde.</translation>
    </message>
    <message>
        <source>The log&apos;s %1 between readings can hide up to %2 more at the peak.</source>
        <translation>Die %1 zwischen den Messwerten können an der Spitze bis zu %2 mehr verbergen.</translation>
    </message>
    <message>
        <source>The log&apos;s %1 between readings can hide up to %2 more at the peak, and the length is only known to ±%3.</source>
        <translation>Die %1 zwischen den Messwerten können an der Spitze bis zu %2 mehr verbergen, und die Länge ist nur auf ±%3 bekannt.</translation>
    </message>
    <message>
        <source>missed the target of %1: the beer never stayed in its band for %2</source>
        <translation>verfehlte den Sollwert von %1: das Bier blieb nie %2 lang in seinem Band</translation>
    </message>
    <message>
        <source>missed the targets of %1: the beer never stayed in their bands for %2</source>
        <translation>verfehlte die Sollwerte von %1: das Bier blieb nie %2 lang in ihren Bändern</translation>
    </message>
    <message>
        <source>not enough data: there is no hold time to judge yet; it begins when the beer is settled in the band of %1</source>
        <translation>zu wenig Daten: es gibt noch keine Haltezeit zu beurteilen; sie beginnt, wenn das Bier im Band von %1 eingeschwungen ist</translation>
    </message>
    <message>
        <source>the time inside after which the beer is settled, or an excursion ends, must be 0 minutes or more</source>
        <translation>die Zeit im Band, nach der das Bier eingeschwungen ist oder eine Bandverletzung endet, muss mindestens 0 Minuten sein</translation>
    </message>
    <message>
        <source>the cost of the power drawn in the same weather</source>
        <translation>die Kosten der Leistung bei gleichem Wetter</translation>
    </message>
    <message>
        <source>the cost of the energy for each degree-day of lift</source>
        <translation>die Kosten der Energie je Gradtag Hub</translation>
    </message>
    <message>
        <source>%1: its batches ran at the same time or have too few times between readings to tell how much they differ, so this decides nothing</source>
        <translation>%1: Die Sude liefen gleichzeitig oder haben zu wenige Zeiten zwischen Zählerständen, um zu sagen, wie sehr sie sich unterscheiden; deshalb entscheidet das nichts</translation>
    </message>
    <message>
        <source>its ranges are partly assumed: that batches differ by 5 %</source>
        <translation>die Bereiche sind zum Teil angenommen: dass Sude sich um 5 % unterscheiden</translation>
    </message>
    <message>
        <source>its ranges come from how much its %1 differ</source>
        <translation>die Bereiche kommen daher, wie sehr sich %1 unterscheiden</translation>
    </message>
    <message>
        <source>its ranges come from how much its %1 differ, in %2 groups: those that ran at once count as one</source>
        <translation>die Bereiche kommen daher, wie sehr sich %1 unterscheiden, in %2 Gruppen: Was gleichzeitig lief, zählt als eins</translation>
    </message>
    <message>
        <source>Successive times between readings are alike (a warm day follows a warm day), and batches differ, so the ranges are computed by batch.</source>
        <translation>Aufeinanderfolgende Zeiten zwischen Zählerständen ähneln sich (auf einen warmen Tag folgt ein warmer), und Sude unterscheiden sich; deshalb sind die Bereiche je Sud berechnet.</translation>
    </message>
    <message>
        <source>Reading times are taken as good to %1.</source>
        <translation>Ablesezeiten gelten als auf %1 genau.</translation>
    </message>
    <message>
        <source>Cold at about %1 (%2 – %3).</source>
        <translation>Kalt gegen %1 (%2 – %3).</translation>
    </message>
    <message>
        <source>At %1 at about %2 (%3 – %4).</source>
        <translation>Bei %1 gegen %2 (%3 – %4).</translation>
    </message>
    <message>
        <source>Cold in about %1, at about %2 (%3 – %4).</source>
        <translation>Kalt in etwa %1, gegen %2 (%3 – %4).</translation>
    </message>
    <message>
        <source>At %1 in about %2, at about %3 (%4 – %5).</source>
        <translation>Bei %1 in etwa %2, gegen %3 (%4 – %5).</translation>
    </message>
    <message>
        <source>Last reading %1.</source>
        <translation>Letzter Messwert %1.</translation>
    </message>
    <message>
        <source>Not moving towards %1 now: may not get there.</source>
        <translation>Kommt %1 zurzeit nicht näher: erreicht den Sollwert vielleicht nicht.</translation>
    </message>
    <message>
        <source>Not cold before about %1, and may not get there.</source>
        <translation>Nicht vor etwa %1 kalt, und vielleicht gar nicht.</translation>
    </message>
    <message>
        <source>Not at %1 before about %2, and may not get there.</source>
        <translation>Nicht vor etwa %2 bei %1, und vielleicht gar nicht.</translation>
    </message>
    <message>
        <source>Will not come to %1 at this rate: levels off near %2.</source>
        <translation>Erreicht %1 so nicht: bleibt bei etwa %2 stehen.</translation>
    </message>
    <message>
        <source>Too few readings yet to say when the beer will be at %1.</source>
        <translation>Noch zu wenige Messwerte, um zu sagen, wann das Bier bei %1 ist.</translation>
    </message>
    <message>
        <source>Too early to say when the beer will be at %1: it has hardly moved.</source>
        <translation>Noch zu früh, um zu sagen, wann das Bier bei %1 ist: Es hat sich kaum geändert.</translation>
    </message>
    <message>
        <source>Too early to say when the beer will be at %1.</source>
        <translation>Noch zu früh, um zu sagen, wann das Bier bei %1 ist.</translation>
    </message>
    <message>
        <source>The beer has been in its band of %1 since %2.</source>
        <translation>Das Bier ist seit %2 in seinem Band von %1.</translation>
    </message>
    <message>
        <source>The beer has been above its band for %1.</source>
        <translation>Das Bier ist seit %1 über seinem Band.</translation>
    </message>
    <message>
        <source>The beer has been below its band for %1.</source>
        <translation>Das Bier ist seit %1 unter seinem Band.</translation>
    </message>
    <message>
        <source>No reading of %1 since %2.</source>
        <translation>Kein Messwert von %1 seit %2.</translation>
    </message>
    <message numerus="yes">
        <source>From %n past crashes on %1: the hours that each took from %2, where the beer is now, to %3, the edge of its band.</source>
        <comment>From %n past crash on %1: the hours that it took from %2, where the beer is now, to %3, the edge of its band.</comment>
        <translation>
            <numerusform>Aus %n früheren Cold Crash mit %1: die Stunden, die er von %2, wo das Bier jetzt ist, bis %3 brauchte, dem Rand des Bandes.</numerusform>
            <numerusform>Aus %n früheren Cold Crashs mit %1: die Stunden, die jeder von %2, wo das Bier jetzt ist, bis %3 brauchte, dem Rand des Bandes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From %n past warm-ups on %1: the hours that each took from %2, where the beer is now, to %3, the edge of its band.</source>
        <comment>From %n past warm-up on %1: the hours that it took from %2, where the beer is now, to %3, the edge of its band.</comment>
        <translation>
            <numerusform>Aus %n früheren Erwärmung mit %1: die Stunden, die sie von %2, wo das Bier jetzt ist, bis %3 brauchte, dem Rand des Bandes.</numerusform>
            <numerusform>Aus %n früheren Erwärmungen mit %1: die Stunden, die jede von %2, wo das Bier jetzt ist, bis %3 brauchte, dem Rand des Bandes.</numerusform>
        </translation>
    </message>
    <message>
        <source>They are scaled by the pace of this one so far.</source>
        <translation>Sie sind umgerechnet auf das bisherige Tempo.</translation>
    </message>
    <message>
        <source>They are scaled by volume, where both are known.</source>
        <translation>Sie sind umgerechnet auf das Volumen, wo beide bekannt sind.</translation>
    </message>
    <message>
        <source>The interval is meant to hold nine times in ten; by how much one differs from another is partly assumed.</source>
        <translation>Der Bereich soll neunmal von zehn stimmen; wie sehr sie sich voneinander unterscheiden, ist zum Teil angenommen.</translation>
    </message>
    <message>
        <source>From the beer&apos;s last readings: curves of cooling that fit them, and when each reaches %1, the edge of the band. No past crash on %2 helps: none came from %3 to there.</source>
        <translation>Aus den letzten Messwerten des Biers: Abkühlungskurven, die zu ihnen passen, und wann jede %1 erreicht, den Rand des Bandes. Kein früherer Cold Crash mit %2 hilft: keiner kam von %3 bis dorthin.</translation>
    </message>
    <message>
        <source>From the beer&apos;s last readings: curves of warming that fit them, and when each reaches %1, the edge of the band. No past warm-up on %2 helps: none came from %3 to there.</source>
        <translation>Aus den letzten Messwerten des Biers: Erwärmungskurven, die zu ihnen passen, und wann jede %1 erreicht, den Rand des Bandes. Keine frühere Erwärmung mit %2 hilft: keine kam von %3 bis dorthin.</translation>
    </message>
    <message>
        <source>Another batch ran on the setup meanwhile, so the rate may change.</source>
        <translation>Ein anderer Sud lief währenddessen auf der Anlage, darum kann sich das Tempo ändern.</translation>
    </message>
    <message>
        <source>The readings also fit curves that never get there, so there is no latest time.</source>
        <translation>Zu den Messwerten passen auch Kurven, die nie dorthin kommen; darum gibt es keine späteste Zeit.</translation>
    </message>
    <message>
        <source>None of them gets there; the best one levels off at %1.</source>
        <translation>Keine kommt dorthin; die beste bleibt bei %1 stehen.</translation>
    </message>
    <message>
        <source>The interval is meant to hold nine times in ten.</source>
        <translation>Der Bereich soll neunmal von zehn stimmen.</translation>
    </message>
    <message>
        <source>A forecast needs half an hour of readings where a past crash or warm-up of the setup passed the same temperatures; else an hour and a half, readings spread over it, and a beer that has moved by %1 and a tenth of its way.</source>
        <translation>Eine Vorhersage braucht eine halbe Stunde Messwerte, wo ein früherer Cold Crash oder eine frühere Erwärmung der Anlage dieselben Temperaturen durchlief; sonst anderthalb Stunden mit verteilten Messwerten und ein Bier, das sich um %1 und ein Zehntel seines Weges geändert hat.</translation>
    </message>
    <message>
        <source>There is nothing to forecast: the batch has ended, its stage has no new target, or the beer came into its band.</source>
        <translation>Es gibt nichts vorherzusagen: Der Sud ist beendet, sein Abschnitt hat keinen neuen Sollwert, oder das Bier kam in sein Band.</translation>
    </message>
    <message>
        <source>the figure is outside its own range</source>
        <translation>die Zahl liegt außerhalb ihres eigenen Bereichs</translation>
    </message>
    <message>
        <source>Before the crash the line gives %1 for the planned hours and weather, and the heat of fermentation %2 more.</source>
        <translation>Vor dem Cold Crash gibt die Gerade %1 für die geplanten Stunden und das Wetter, und die Wärme der Gärung %2 dazu.</translation>
    </message>
    <message>
        <source>In the crash the line gives %1, and cooling the beer down %2 more.</source>
        <translation>Im Cold Crash gibt die Gerade %1, und das Abkühlen des Biers %2 dazu.</translation>
    </message>
    <message>
        <source>While it held, %1 drew %2 and %3 for each %4 that the room was warmer than the beer.</source>
        <translation>Beim Halten zog %1 %2 und dazu %3 für jedes %4, um das der Raum wärmer war als das Bier.</translation>
    </message>
    <message>
        <source>The range goes up to %1 more: how far batches differ is assumed.</source>
        <translation>Der Bereich reicht bis %1 mehr: wie sehr Sude sich unterscheiden, ist angenommen.</translation>
    </message>
    <message>
        <source>The range goes up to %1 more: from how far each past batch was off when it was forecast from the others, together with an assumed spread that weighs as much as four more batches.</source>
        <translation>Der Bereich reicht bis %1 mehr: daraus, wie weit jeder vergangene Sud daneben lag, als er aus den anderen vorhergesagt wurde, zusammen mit einer angenommenen Streuung, die so viel zählt wie vier weitere Sude.</translation>
    </message>
    <message>
        <source>Assumed: %1.</source>
        <translation>Angenommen: %1.</translation>
    </message>
    <message>
        <source>The price of energy is not known. Enter it under Equipment.</source>
        <translation>Der Preis der Energie ist nicht bekannt. Er wird unter Ausrüstung eingetragen.</translation>
    </message>
    <message>
        <source>Each stage&apos;s energy at the mean price of its hours, %1 in all: %2 for %3.</source>
        <translation>Die Energie jedes Abschnitts zum mittleren Preis seiner Stunden, zusammen %1: %2 für %3.</translation>
    </message>
    <message>
        <source>The plan has no crash.</source>
        <translation>Der Plan hat keinen Cold Crash.</translation>
    </message>
    <message>
        <source>No past crash of %1 went from %2 to %3, the upper edge of the band.</source>
        <translation>Kein früherer Cold Crash von %1 ging von %2 auf %3, die obere Kante des Bandes.</translation>
    </message>
    <message>
        <source>From turning down at %1 to the upper edge of the band at %2: the hours that %3 took for it, in proportion to the volume. Their spread is partly assumed.</source>
        <translation>Vom Herunterkühlen bei %1 an bis zur oberen Kante des Bandes bei %2: die Stunden, die %3 dafür gebraucht haben, im Verhältnis zum Volumen. Ihre Streuung ist zum Teil angenommen.</translation>
    </message>
    <message numerus="yes">
        <source>%n past crashes</source>
        <comment>%n past crash</comment>
        <translation>
            <numerusform>%n früherer Cold Crash</numerusform>
            <numerusform>%n frühere Cold Crashs</numerusform>
        </translation>
    </message>
    <message>
        <source>What the plan needs is not known: the room&apos;s record has gaps.</source>
        <translation>Was der Plan braucht, ist nicht bekannt: die Aufzeichnung des Raums hat Lücken.</translation>
    </message>
    <message>
        <source>In its hardest 12 hours the plan needs the beer %1 below the room. No past batch of %2 was in its band for 12 hours on end, later than four days after pitching, with the room known.</source>
        <translation>In seinen schwersten 12 Stunden braucht der Plan das Bier %1 unter dem Raum. Kein vergangener Sud von %2 war später als vier Tage nach dem Anstellen 12 Stunden lang ohne Unterbrechung in seinem Band, mit bekanntem Raum.</translation>
    </message>
    <message>
        <source>In its hardest 12 hours the plan needs the beer %1 below the room. The most that %2 was seen holding over 12 hours, in its band and later than four days after pitching, is %3.</source>
        <translation>In seinen schwersten 12 Stunden braucht der Plan das Bier %1 unter dem Raum. Das Meiste, was %2 über 12 Stunden in seinem Band und später als vier Tage nach dem Anstellen gehalten hat, sind %3.</translation>
    </message>
    <message>
        <source>Each past batch of %1 was forecast from the others, with its own hours, heat and weather. It tests the energy, not the forecast of the weather.</source>
        <translation>Jeder vergangene Sud von %1 wurde aus den anderen vorhergesagt, mit seinen eigenen Stunden, seiner Wärme und seinem Wetter. Das prüft die Energie, nicht die Vorhersage des Wetters.</translation>
    </message>
    <message>
        <source>%1: %2 forecast, %3 came.</source>
        <translation>%1: %2 vorhergesagt, %3 kam.</translation>
    </message>
    <message>
        <source>%1 would use about %2</source>
        <comment>a setup, an energy</comment>
        <translation>%1 würde etwa %2 verbrauchen</translation>
    </message>
    <message>
        <source>Too close to call: %1 would use %2, %3 would use %4.</source>
        <translation>Zu knapp für ein Urteil: %1 würde %2 verbrauchen, %3 würde %4 verbrauchen.</translation>
    </message>
    <message>
        <source>%1 would use less: %2, %3 %4.</source>
        <comment>a setup, its energy, the other one</comment>
        <translation>%1 würde weniger verbrauchen: %2, %3 %4.</translation>
    </message>
    <message>
        <source>%1 would be cold about %2 sooner.</source>
        <translation>%1 wäre etwa %2 früher kalt.</translation>
    </message>
    <message>
        <source>Which is cold sooner is too close to call (%1 after %2, %3 after %4).</source>
        <translation>Welche früher kalt ist, ist zu knapp für ein Urteil (%1 nach %2, %3 nach %4).</translation>
    </message>
    <message>
        <source>%1 was seen holding more than this asks for.</source>
        <translation>%1 hat schon mehr gehalten, als hier verlangt ist.</translation>
    </message>
    <message>
        <source>This is at the edge of what %1 was seen holding.</source>
        <translation>Das ist an der Grenze dessen, was %1 schon gehalten hat.</translation>
    </message>
    <message>
        <source>This asks for more than %1 was seen holding.</source>
        <translation>Das verlangt mehr, als %1 schon gehalten hat.</translation>
    </message>
    <message>
        <source>Both were seen holding more than this asks for.</source>
        <translation>Beide haben schon mehr gehalten, als hier verlangt ist.</translation>
    </message>
    <message>
        <source>This asks for more than either was seen holding.</source>
        <translation>Das verlangt mehr, als eine der beiden schon gehalten hat.</translation>
    </message>
    <message>
        <source>%1 has no finished batch yet. After one metered batch there is a forecast.</source>
        <translation>%1 hat noch keinen beendeten Sud. Nach einem gemessenen Sud gibt es eine Vorhersage.</translation>
    </message>
    <message>
        <source>No finished batch of %1 ran beside another one, so nothing is known of a shared batch.</source>
        <translation>Kein beendeter Sud von %1 lief neben einem anderen, daher ist über einen geteilten Sud nichts bekannt.</translation>
    </message>
    <message>
        <source>Every finished batch of %1 ran beside another one. After one metered batch alone there is a forecast.</source>
        <translation>Jeder beendete Sud von %1 lief neben einem anderen. Nach einem gemessenen Sud allein gibt es eine Vorhersage.</translation>
    </message>
    <message>
        <source>The past batches don&apos;t say yet what this plan would use.</source>
        <translation>Die vergangenen Sude sagen noch nicht, was dieser Plan verbrauchen würde.</translation>
    </message>
    <message>
        <source>Nine such batches in ten lie in the ranges.</source>
        <translation>Neun von zehn solchen Suden liegen in den Bereichen.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>3 batches of a setup</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>that batches differ by %1 is assumed</source>
        <translation>dass Sude sich um %1 unterscheiden, ist angenommen</translation>
    </message>
    <message>
        <source>that batches differ by %1 is partly assumed</source>
        <translation>dass Sude sich um %1 unterscheiden, ist zum Teil angenommen</translation>
    </message>
    <message>
        <source>From %1; %2.</source>
        <comment>counts of batches; what is assumed</comment>
        <translation>Grundlage: %1; %2.</translation>
    </message>
    <message>
        <source>No meter of %1 was read. Enter its readings under Rounds.</source>
        <translation>Kein Zähler von %1 wurde abgelesen. Seine Stände werden unter Rundgänge eingetragen.</translation>
    </message>
    <message>
        <source>%1 has too few readings between rounds in quiet days to see how its power follows the weather. After one more metered batch there may be a forecast.</source>
        <translation>%1 hat an ruhigen Tagen zu wenige Stände, um zu sehen, wie die Leistung dem Wetter folgt. Nach einem weiteren gemessenen Sud kann es eine Vorhersage geben.</translation>
    </message>
    <message>
        <source>The past batches of %1 say too little: the range would be %2. After one more metered batch it is narrower.</source>
        <translation>Die vergangenen Sude von %1 sagen zu wenig: der Bereich wäre %2. Nach einem weiteren gemessenen Sud ist er enger.</translation>
    </message>
    <message>
        <source>No finished batch of %1 is metered and has the room&apos;s temperature over at least 90 % of what is planned. After one more metered batch there is a forecast.</source>
        <translation>Kein beendeter Sud von %1 ist über mindestens 90 % dessen gemessen, was geplant ist, mit der Temperatur des Raums. Nach einem weiteren gemessenen Sud gibt es eine Vorhersage.</translation>
    </message>
    <message>
        <source>batches differ by %1</source>
        <translation>Sude unterscheiden sich um %1</translation>
    </message>
    <message>
        <source>batches differ by %1, in part</source>
        <translation>Sude unterscheiden sich um %1, zum Teil</translation>
    </message>
    <message>
        <source>the room is like the one picked</source>
        <translation>der Raum ist wie der gewählte</translation>
    </message>
    <message>
        <source>the typed room is good to %1</source>
        <translation>der eingetippte Raum ist auf %1 genau</translation>
    </message>
    <message>
        <source>every batch gives off as much heat, because a volume or a gravity is unknown</source>
        <translation>jeder Sud gibt gleich viel Wärme ab, weil ein Volumen oder eine Dichte unbekannt ist</translation>
    </message>
    <message>
        <source>the line goes on beyond the lifts that were seen, so the range is half as wide again</source>
        <translation>die Gerade geht über die gesehenen Hübe hinaus weiter, daher ist der Bereich um die Hälfte breiter</translation>
    </message>
    <message>
        <source>the last stage lasts %1</source>
        <translation>der letzte Abschnitt dauert %1</translation>
    </message>
    <message>
        <source>the band is ±%1</source>
        <translation>das Band ist ±%1</translation>
    </message>
    <message>
        <source>no room is as cold or as warm as that</source>
        <translation>so kalt oder so warm ist kein Raum</translation>
    </message>
    <message>
        <source>check the room&apos;s temperature and its unit</source>
        <translation>die Temperatur des Raums und ihre Einheit prüfen</translation>
    </message>
    <message>
        <source>the room&apos;s swing is the difference between the lowest and the highest temperature of a day, so it is not negative</source>
        <translation>die Schwankung des Raums ist der Unterschied zwischen der tiefsten und der höchsten Temperatur eines Tages, also nicht negativ</translation>
    </message>
    <message>
        <source>the logbook has no setup</source>
        <translation>das Logbuch hat keine Anlage</translation>
    </message>
    <message>
        <source>add one under Equipment</source>
        <translation>unter Ausrüstung eine hinzufügen</translation>
    </message>
    <message>
        <source>the room&apos;s record has too many gaps in that time</source>
        <translation>die Aufzeichnung des Raums hat in dieser Zeit zu viele Lücken</translation>
    </message>
    <message>
        <source>choose another stretch, or type its temperature</source>
        <translation>ein anderes Stück wählen oder die Temperatur eintippen</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>can it hold?</comment>
        <translation>ja</translation>
    </message>
    <message>
        <source>at the edge</source>
        <comment>can it hold?</comment>
        <translation>an der Grenze</translation>
    </message>
    <message>
        <source>not seen yet</source>
        <comment>can it hold?</comment>
        <translation>noch nicht gesehen</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>can it hold?</comment>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1 of 5</source>
        <comment>points of a rating</comment>
        <translation>%1 von 5</translation>
    </message>
    <message>
        <source>No past batch could be forecast from the others.</source>
        <translation>Kein vergangener Sud ließ sich aus den anderen vorhersagen.</translation>
    </message>
    <message>
        <source>%1 of %2 inside</source>
        <comment>forecasts whose interval held what came</comment>
        <translation>%1 von %2 im Bereich</translation>
    </message>
    <message>
        <source>; typically off by %1</source>
        <translation>; meist um %1 daneben</translation>
    </message>
    <message>
        <source>The ranges were too narrow here.</source>
        <translation>Die Bereiche waren hier zu eng.</translation>
    </message>
    <message>
        <source>%1: %2 over %3, %4 of lift</source>
        <comment>stage, energy, time, temperature</comment>
        <translation>%1: %2 über %3, %4 Hub</translation>
    </message>
    <message>
        <source>typed: %1, from %2 to %3 in a day</source>
        <translation>eingetippt: %1, am Tag von %2 bis %3</translation>
    </message>
    <message>
        <source>%1, %2 to %3: mean %4</source>
        <comment>sensor, first and last day, mean</comment>
        <translation>%1, %2 bis %3: Mittel %4</translation>
    </message>
    <message>
        <source>, from %1 to %2 in a day</source>
        <translation>, am Tag von %1 bis %2</translation>
    </message>
    <message>
        <source>, %1 covered</source>
        <translation>, %1 abgedeckt</translation>
    </message>
    <message numerus="yes">
        <source>; the mean of %n days of pitching</source>
        <comment>; one day of pitching</comment>
        <translation>
            <numerusform>; ein Tag des Anstellens</numerusform>
            <numerusform>; das Mittel von %n Tagen des Anstellens</numerusform>
        </translation>
    </message>
    <message>
        <source>; repeated, because the plan is longer</source>
        <translation>; wiederholt, weil der Plan länger ist</translation>
    </message>
    <message>
        <source>a drawn plan, %1</source>
        <comment>its length</comment>
        <translation>ein gezeichneter Plan, %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a plan&apos;s name and its length</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>the stage &quot;%1&quot; doesn&apos;t say how long it is</source>
        <translation>der Abschnitt „%1“ sagt nicht, wie lang er ist</translation>
    </message>
    <message>
        <source>give it an expected length</source>
        <translation>ihm eine erwartete Länge geben</translation>
    </message>
    <message>
        <source>no plan is called &quot;%1&quot;</source>
        <translation>kein Plan heißt „%1“</translation>
    </message>
    <message>
        <source>no sensor reads the room</source>
        <translation>kein Sensor misst den Raum</translation>
    </message>
    <message>
        <source>type the room&apos;s temperature instead</source>
        <translation>stattdessen die Temperatur des Raums eintippen</translation>
    </message>
    <message>
        <source>no sensor of the room is called &quot;%1&quot;</source>
        <translation>kein Sensor des Raums heißt „%1“</translation>
    </message>
    <message>
        <source>the stretch of the room is shorter than a day</source>
        <translation>das Stück des Raums ist kürzer als ein Tag</translation>
    </message>
    <message>
        <source>choose a longer one</source>
        <translation>ein längeres wählen</translation>
    </message>
    <message>
        <source>the room has no readings in that time</source>
        <translation>der Raum hat in dieser Zeit keine Messwerte</translation>
    </message>
    <message>
        <source>the room has readings of less than a day in that time</source>
        <translation>der Raum hat in dieser Zeit Messwerte von weniger als einem Tag</translation>
    </message>
    <message>
        <source>inside the range</source>
        <translation>im Bereich</translation>
    </message>
    <message>
        <source>more than the range</source>
        <translation>mehr als der Bereich</translation>
    </message>
    <message>
        <source>less than the range</source>
        <translation>weniger als der Bereich</translation>
    </message>
    <message>
        <source>When it was pitched it was forecast to use %1.</source>
        <translation>Beim Anstellen wurde ein Verbrauch von %1 vorhergesagt.</translation>
    </message>
    <message>
        <source>When it was pitched it was forecast to use %1; so far it used %2.</source>
        <translation>Beim Anstellen wurde ein Verbrauch von %1 vorhergesagt; bisher waren es %2.</translation>
    </message>
    <message>
        <source>When it was pitched it was forecast to use %1; of what it used only a part is metered.</source>
        <translation>Beim Anstellen wurde ein Verbrauch von %1 vorhergesagt; vom Verbrauch ist nur ein Teil gemessen.</translation>
    </message>
    <message>
        <source>When it was pitched it was forecast to use %1; it used %2, %3.</source>
        <comment>ranges, an energy, &apos;inside the range&apos;</comment>
        <translation>Beim Anstellen wurde ein Verbrauch von %1 vorhergesagt; es waren %2, %3.</translation>
    </message>
    <message>
        <source>It was forecast to be cold %1 after turning down; it took %2, %3.</source>
        <comment>range of hours, hours, &apos;inside the range&apos;</comment>
        <translation>Kalt sollte er %1 nach dem Herunterkühlen sein; es dauerte %2, %3.</translation>
    </message>
    <message>
        <source>what was written of it could not be removed: delete it yourself</source>
        <translation>was davon geschrieben wurde, konnte nicht gelöscht werden: Bitte selbst löschen</translation>
    </message>
    <message>
        <source>the new logbook is written, but it can&apos;t be opened now</source>
        <translation>das neue Logbuch ist geschrieben, kann aber gerade nicht geöffnet werden</translation>
    </message>
    <message>
        <source>check the disk, then open it</source>
        <translation>Datenträger prüfen, dann das Logbuch öffnen</translation>
    </message>
    <message>
        <source>the file can&apos;t be read now (%1)</source>
        <translation>die Datei kann gerade nicht gelesen werden (%1)</translation>
    </message>
    <message>
        <source>check the disk, then try again</source>
        <translation>Datenträger prüfen, dann noch einmal versuchen</translation>
    </message>
    <message>
        <source>the change may have been saved, but the disk did not confirm it</source>
        <translation>die Änderung wurde vielleicht gespeichert, aber der Datenträger hat es nicht bestätigt</translation>
    </message>
    <message>
        <source>check the disk; then look whether the change is there</source>
        <translation>Datenträger prüfen; dann nachsehen, ob die Änderung da ist</translation>
    </message>
    <message>
        <source>in the table %1: %2</source>
        <translation>in der Tabelle %1: %2</translation>
    </message>
    <message>
        <source>the file is damaged, or another program changed it: use a backup</source>
        <translation>die Datei ist beschädigt, oder ein anderes Programm hat sie geändert: eine Sicherung verwenden</translation>
    </message>
    <message>
        <source>there is not enough memory to check the file</source>
        <translation>der Speicher reicht nicht, um die Datei zu prüfen</translation>
    </message>
    <message>
        <source>close other programs, then try again</source>
        <translation>andere Programme schließen und es dann noch einmal versuchen</translation>
    </message>
    <message>
        <source>missing in the file: %1</source>
        <translation>fehlt in der Datei: %1</translation>
    </message>
    <message>
        <source>not as Holdband makes it: %1</source>
        <translation>nicht so, wie Holdband es anlegt: %1</translation>
    </message>
    <message>
        <source>in the file, but never made by Holdband: %1</source>
        <translation>in der Datei, aber nie von Holdband angelegt: %1</translation>
    </message>
    <message>
        <source>there is not enough memory</source>
        <translation>der Speicher reicht nicht</translation>
    </message>
    <message>
        <source>a value in the file is larger than %1 MiB, which no logbook holds</source>
        <translation>ein Wert in der Datei ist größer als %1 MiB; so große hat kein Logbuch</translation>
    </message>
    <message>
        <source>a text is too long: it has %1 bytes, and at most %2 are stored</source>
        <translation>ein Text ist zu lang: er hat %1 Bytes, und höchstens %2 werden gespeichert</translation>
    </message>
    <message>
        <source>shorten it, or split it</source>
        <translation>ihn kürzen oder aufteilen</translation>
    </message>
    <message>
        <source>that time is in the future: the computer&apos;s clock was wrong when it was saved, or is wrong now; set the clock, or correct that reading&apos;s time</source>
        <translation>dieser Zeitpunkt liegt in der Zukunft: die Uhr des Computers ging beim Speichern falsch oder geht jetzt falsch; die Uhr stellen oder die Zeit jenes Zählerstands berichtigen</translation>
    </message>
    <message>
        <source>wait until it has finished, then try again</source>
        <translation>warten, bis es fertig ist, dann noch einmal versuchen</translation>
    </message>
    <message>
        <source>%1 holds %2 logs: only the first %3 by name are read; move old ones to another folder</source>
        <translation>%1 enthält %2 Protokolle: nur die ersten %3 nach dem Namen werden gelesen; alte in einen anderen Ordner verschieben</translation>
    </message>
    <message>
        <source>this is a part of an archive in several parts</source>
        <translation>das ist ein Teil eines mehrteiligen Archivs</translation>
    </message>
    <message>
        <source>unpack it first</source>
        <translation>zuerst auspacken</translation>
    </message>
    <message>
        <source>this is a workbook with a password, or of the old format (.xls)</source>
        <translation>das ist eine Arbeitsmappe mit Passwort oder im alten Format (.xls)</translation>
    </message>
    <message>
        <source>save it as .xlsx without a password, or as CSV</source>
        <translation>als .xlsx ohne Passwort speichern, oder als CSV</translation>
    </message>
    <message>
        <source>this file is packed in a way that can&apos;t be read</source>
        <translation>diese Datei ist auf eine Art gepackt, die nicht gelesen werden kann</translation>
    </message>
    <message>
        <source>unpack it first, or pack it as gzip or zip</source>
        <translation>zuerst auspacken, oder mit gzip oder zip packen</translation>
    </message>
    <message>
        <source>the line is longer than 1 MiB</source>
        <translation>die Zeile ist länger als 1 MiB</translation>
    </message>
    <message>
        <source>the objects have more than %1 different keys</source>
        <translation>die Objekte haben mehr als %1 verschiedene Schlüssel</translation>
    </message>
    <message>
        <source>this is JSON over several lines</source>
        <translation>das ist JSON über mehrere Zeilen</translation>
    </message>
    <message>
        <source>write one object in each line, without a list around them</source>
        <translation>in jede Zeile ein Objekt schreiben, ohne eine Liste darum</translation>
    </message>
    <message>
        <source>this file is no workbook: it has no sheet &quot;%1&quot;</source>
        <translation>diese Datei ist keine Arbeitsmappe: sie hat kein Blatt „%1“</translation>
    </message>
    <message>
        <source>the packed file is larger than 256 MiB</source>
        <translation>die gepackte Datei ist größer als 256 MiB</translation>
    </message>
    <message>
        <source>the file is larger than 512 MiB</source>
        <translation>die Datei ist größer als 512 MiB</translation>
    </message>
    <message>
        <source>split the log into several files</source>
        <translation>das Protokoll in mehrere Dateien teilen</translation>
    </message>
    <message>
        <source>this is an archive inside an archive</source>
        <translation>das ist ein Archiv in einem Archiv</translation>
    </message>
    <message>
        <source>the packed file is damaged here</source>
        <translation>die gepackte Datei ist hier beschädigt</translation>
    </message>
    <message>
        <source>byte %1</source>
        <translation>Byte %1</translation>
    </message>
    <message>
        <source>copy or download it again</source>
        <translation>noch einmal kopieren oder herunterladen</translation>
    </message>
    <message>
        <source>the packed file ends too early: its end is missing</source>
        <translation>die gepackte Datei endet zu früh: ihr Ende fehlt</translation>
    </message>
    <message>
        <source>it unpacks to more than 1 GiB</source>
        <translation>ausgepackt ist sie größer als 1 GiB</translation>
    </message>
    <message>
        <source>it unpacks to more than %1 times its size, which no log does</source>
        <translation>ausgepackt ist sie mehr als %1-mal so groß, was bei keinem Protokoll vorkommt</translation>
    </message>
    <message>
        <source>if you trust it, unpack it first</source>
        <translation>wenn sie vertrauenswürdig ist, zuerst auspacken</translation>
    </message>
    <message numerus="yes">
        <source>%n formulas have no stored value (the first in %1): open the workbook, compute it and save it</source>
        <comment>%n formula has no stored value (%1): open the workbook, compute it and save it</comment>
        <translation>
            <numerusform>%n Formel hat keinen gespeicherten Wert (%1): die Arbeitsmappe öffnen, berechnen und speichern</numerusform>
            <numerusform>%n Formeln haben keinen gespeicherten Wert (die erste in %1): die Arbeitsmappe öffnen, berechnen und speichern</numerusform>
        </translation>
    </message>
    <message>
        <source>its rows are not in order</source>
        <translation>seine Zeilen sind nicht in der richtigen Reihenfolge</translation>
    </message>
    <message>
        <source>a cell has no place in it</source>
        <translation>eine Zelle hat keinen Platz darin</translation>
    </message>
    <message>
        <source>it has more than %1 columns</source>
        <translation>es hat mehr als %1 Spalten</translation>
    </message>
    <message>
        <source>it has the same cell twice</source>
        <translation>es hat dieselbe Zelle zweimal</translation>
    </message>
    <message>
        <source>a cell has a text that is missing</source>
        <translation>der Text einer Zelle fehlt</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>save the workbook again, or export the sheet as CSV</source>
        <translation>die Arbeitsmappe noch einmal speichern, oder das Blatt als CSV exportieren</translation>
    </message>
    <message>
        <source>there is no sheet &quot;%1&quot;</source>
        <translation>es gibt kein Blatt „%1“</translation>
    </message>
    <message>
        <source>the sheets are: %1</source>
        <translation>die Blätter sind: %1</translation>
    </message>
    <message>
        <source>the sheet &quot;%1&quot; was read; the workbook also has: %2</source>
        <translation>gelesen wurde das Blatt „%1“; die Arbeitsmappe hat auch: %2</translation>
    </message>
    <message>
        <source>the sheet &quot;%1&quot; is missing</source>
        <translation>das Blatt „%1“ fehlt</translation>
    </message>
    <message>
        <source>the sheet &quot;%1&quot; is larger than 512 MiB</source>
        <translation>das Blatt „%1“ ist größer als 512 MiB</translation>
    </message>
    <message>
        <source>sheet %1, %2</source>
        <translation>Blatt %1, %2</translation>
    </message>
    <message>
        <source>the workbook holds too many texts</source>
        <translation>die Arbeitsmappe enthält zu viele Texte</translation>
    </message>
    <message>
        <source>this is a document that can&apos;t be read</source>
        <translation>das ist ein Dokument, das nicht gelesen werden kann</translation>
    </message>
    <message>
        <source>save it as a workbook (.xlsx) or as CSV</source>
        <translation>als Arbeitsmappe (.xlsx) oder als CSV speichern</translation>
    </message>
    <message>
        <source>there is no sheet of cells in it</source>
        <translation>es ist kein Blatt mit Zellen darin</translation>
    </message>
    <message>
        <source>the workbook is damaged: this part is no sound XML</source>
        <translation>die Arbeitsmappe ist beschädigt: dieser Teil ist kein gültiges XML</translation>
    </message>
    <message>
        <source>save it again, or export the sheet as CSV</source>
        <translation>noch einmal speichern, oder das Blatt als CSV exportieren</translation>
    </message>
    <message>
        <source>the archive is damaged here</source>
        <translation>das Archiv ist hier beschädigt</translation>
    </message>
    <message>
        <source>the archive ends too early: its list of files is missing</source>
        <translation>das Archiv endet zu früh: seine Liste der Dateien fehlt</translation>
    </message>
    <message>
        <source>this is an archive for very large files (ZIP64)</source>
        <translation>das ist ein Archiv für sehr große Dateien (ZIP64)</translation>
    </message>
    <message>
        <source>the archive is empty</source>
        <translation>das Archiv ist leer</translation>
    </message>
    <message>
        <source>the archive holds only folders</source>
        <translation>das Archiv enthält nur Ordner</translation>
    </message>
    <message>
        <source>the archive holds %1 files: %2</source>
        <translation>das Archiv enthält %1 Dateien: %2</translation>
    </message>
    <message>
        <source>unpack it, and import the logs among them</source>
        <translation>auspacken und die Protokolle darunter importieren</translation>
    </message>
    <message>
        <source>the file has a password</source>
        <translation>die Datei hat ein Passwort</translation>
    </message>
    <message>
        <source>the file is packed in a way that can&apos;t be read</source>
        <translation>die Datei ist auf eine Art gepackt, die nicht gelesen werden kann</translation>
    </message>
    <message>
        <source>blanks part the header into %1 columns and the next row into %2</source>
        <translation>Leerzeichen teilen die Kopfzeile in %1 Spalten und die nächste Zeile in %2</translation>
    </message>
    <message>
        <source>write names with blanks in them in quotes</source>
        <translation>Namen mit Leerzeichen in Anführungszeichen schreiben</translation>
    </message>
    <message>
        <source>read as a table, %1</source>
        <translation>als Tabelle gelesen, %1</translation>
    </message>
    <message>
        <source>only &quot;%1&quot; begins with its header</source>
        <translation>nur „%1“ beginnt mit seiner Kopfzeile</translation>
    </message>
    <message>
        <source>say --header-line 0, and which column is which, such as --column &quot;SENSOR=column 2&quot;; or add a header row with the names of the columns</source>
        <translation>--header-line 0 angeben und die Spalten zuordnen, etwa --column &quot;SENSOR=column 2&quot;; oder eine Kopfzeile mit den Namen der Spalten davorsetzen</translation>
    </message>
    <message>
        <source>, such as --column &quot;%1=%2&quot;</source>
        <translation>, etwa --column &quot;%1=%2&quot;</translation>
    </message>
    <message>
        <source>say which is which with --column &quot;SENSOR=COLUMN&quot;%1; the columns are: %2</source>
        <translation>mit --column &quot;SENSOR=COLUMN&quot; zuordnen%1; die Spalten sind: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n rows are shorter than the header: their missing last cells count as no value</source>
        <comment>%n row is shorter than the header: its missing last cells count as no value</comment>
        <translation>
            <numerusform>%n Zeile ist kürzer als die Kopfzeile: ihre fehlenden letzten Zellen haben keinen Wert</numerusform>
            <numerusform>%n Zeilen sind kürzer als die Kopfzeile: ihre fehlenden letzten Zellen haben keinen Wert</numerusform>
        </translation>
    </message>
    <message>
        <source>says %1, but the import was set to %2</source>
        <translation>nennt %1, aber für den Import ist %2 gewählt</translation>
    </message>
    <message>
        <source>its rows say K: converted to °C</source>
        <translation>seine Zeilen sagen K: in °C umgerechnet</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit, but &quot;%2&quot; in line %3 has one</source>
        <translation>„%1“ hat keine Einheit, aber „%2“ in Zeile %3 hat eine</translation>
    </message>
    <message>
        <source>say --unit c if those without a unit are in °C, or --unit f if they are in °F</source>
        <translation>--unit c angeben, wenn die ohne Einheit in °C sind, oder --unit f, wenn sie in °F sind</translation>
    </message>
    <message>
        <source>the header says K: converted to °C</source>
        <translation>die Kopfzeile sagt K: in °C umgerechnet</translation>
    </message>
    <message>
        <source>take the file out of the description and import it with --time-unit</source>
        <translation>die Datei aus der Beschreibung nehmen und mit --time-unit importieren</translation>
    </message>
    <message>
        <source>take the file out of the description and import it with --start</source>
        <translation>die Datei aus der Beschreibung nehmen und mit --start importieren</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>nothing says what the numbers in the column of times count, such as &quot;%1&quot;</source>
        <translation>nichts sagt, was die Zahlen in der Spalte der Zeiten zählen, etwa „%1“</translation>
    </message>
    <message>
        <source>say --time-unit days (of a spreadsheet&apos;s calendar), or --time-unit seconds, minutes or hours and with --start when they began; or name the column of the times with --time</source>
        <translation>--time-unit days angeben (Tage des Kalenders einer Tabellenkalkulation), oder --time-unit seconds, minutes oder hours und mit --start den Beginn; oder die Spalte der Zeiten mit --time nennen</translation>
    </message>
    <message>
        <source>say --time-unit seconds, minutes or hours, and with --start when they began; or name the column of the times with --time</source>
        <translation>--time-unit seconds, minutes oder hours angeben und mit --start den Beginn; oder die Spalte der Zeiten mit --time nennen</translation>
    </message>
    <message>
        <source>is before the start</source>
        <translation>liegt vor dem Beginn</translation>
    </message>
    <message>
        <source>is more than a hundred years after the start</source>
        <translation>liegt mehr als hundert Jahre nach dem Beginn</translation>
    </message>
    <message>
        <source>the times since the start fall at &quot;%1&quot;: they count from several starts</source>
        <translation>die Zeiten seit dem Beginn fallen bei „%1“: sie zählen ab mehreren Anfängen</translation>
    </message>
    <message>
        <source>the times are %1 since a start that the file doesn&apos;t say</source>
        <translation>die Zeiten sind %1 seit einem Beginn, den die Datei nicht nennt</translation>
    </message>
    <message>
        <source>say when they began, such as --start &quot;2026-03-07 06:30&quot;</source>
        <translation>den Beginn angeben, etwa --start &quot;2026-03-07 06:30&quot;</translation>
    </message>
    <message>
        <source>the times don&apos;t count from a start</source>
        <translation>die Zeiten zählen nicht ab einem Beginn</translation>
    </message>
    <message>
        <source>leave out --start</source>
        <translation>--start weglassen</translation>
    </message>
    <message>
        <source>names no zone, but the rows above name %1</source>
        <translation>nennt keine Zeitzone, aber die Zeilen darüber nennen %1</translation>
    </message>
    <message>
        <source>names a zone, but the rows above name none</source>
        <translation>nennt eine Zeitzone, aber die Zeilen darüber nennen keine</translation>
    </message>
    <message>
        <source>its zone is not that of the rows above, %1</source>
        <translation>seine Zeitzone ist nicht die der Zeilen darüber, %1</translation>
    </message>
    <message>
        <source>days of a spreadsheet&apos;s calendar</source>
        <translation>Tage des Kalenders einer Tabellenkalkulation</translation>
    </message>
    <message>
        <source>as the rows say</source>
        <translation>wie die Zeilen sagen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; behind the times is no single time zone</source>
        <translation>„%1“ hinter den Zeiten ist keine eindeutige Zeitzone</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 seit %2</translation>
    </message>
    <message>
        <source>has an offset that no zone has</source>
        <translation>hat einen Abstand zur Weltzeit, den keine Zeitzone hat</translation>
    </message>
    <message>
        <source>its rows are days</source>
        <translation>ihre Zeilen sind Tage</translation>
    </message>
    <message>
        <source>import it for a sensor that reads the energy of each interval, or a column that holds the register&apos;s running total for the meter</source>
        <translation>importiere sie für einen Sensor, der die Energie je Zeitabschnitt misst, oder für den Zähler eine Spalte mit dem fortlaufenden Zählerstand</translation>
    </message>
    <message>
        <source>the values never fall in %1 rows and rise in at least %2 of them: the column looks like a meter&apos;s register, not like the energy of each interval</source>
        <translation>die Werte fallen in %1 Zeilen nie und steigen in mindestens %2 davon: Die Spalte sieht nach einem Zählerstand aus, nicht nach der Energie je Zeitabschnitt</translation>
    </message>
    <message>
        <source>import it for a meter</source>
        <translation>importiere sie für einen Zähler</translation>
    </message>
    <message>
        <source>nothing says in which unit the energy of its intervals is</source>
        <translation>nichts sagt, in welcher Einheit die Energie ihrer Zeitabschnitte ist</translation>
    </message>
    <message>
        <source>say --unit wh or --unit kwh</source>
        <translation>gib --unit wh oder --unit kwh an</translation>
    </message>
    <message>
        <source>on target, of %1 recorded</source>
        <translation>am Ziel, von %1 Messzeit</translation>
    </message>
    <message>
        <source>outside, twice</source>
        <translation>außerhalb, zweimal</translation>
    </message>
    <message numerus="yes">
        <source>outside, %n times</source>
        <comment>outside, once</comment>
        <translation>
            <numerusform>außerhalb, einmal</numerusform>
            <numerusform>außerhalb, %n-mal</numerusform>
        </translation>
    </message>
    <message>
        <source>worst past the edge</source>
        <translation>am weitesten über den Rand</translation>
    </message>
    <message>
        <source>%1 settled in</source>
        <comment>a stage</comment>
        <translation>%1 eingeschwungen nach</translation>
    </message>
    <message>
        <source>of the hold time recorded</source>
        <translation>der Haltezeit gemessen</translation>
    </message>
    <message>
        <source>make a file of each part, and import each with its own start</source>
        <translation>aus jedem Teil eine Datei machen und jede mit eigenem Beginn importieren</translation>
    </message>
    <message>
        <source>choose above what the times count, or which column has the time</source>
        <translation>oben wählen, was die Zeiten zählen, oder welche Spalte die Zeit hat</translation>
    </message>
    <message>
        <source>say above when they began</source>
        <translation>oben den Beginn angeben</translation>
    </message>
    <message>
        <source>choose another sheet above</source>
        <translation>oben ein anderes Blatt wählen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is the name of two records</source>
        <translation>„%1“ heißen zwei Einträge</translation>
    </message>
    <message>
        <source>give one of them another name</source>
        <translation>gib einem davon einen anderen Namen</translation>
    </message>
    <message>
        <source>the file is damaged: the batch &quot;%1&quot; refers to equipment that is not in it</source>
        <translation>die Datei ist beschädigt: der Sud „%1“ verweist auf Ausrüstung, die nicht darin ist</translation>
    </message>
    <message>
        <source>equal</source>
        <comment>A&apos;s figure and B&apos;s</comment>
        <translation>gleich</translation>
    </message>
    <message>
        <source>Cost of a batch</source>
        <translation>Kosten eines Suds</translation>
    </message>
    <message>
        <source>Cost of the energy</source>
        <translation>Kosten der Energie</translation>
    </message>
    <message>
        <source>On target, %</source>
        <translation>Am Ziel, %</translation>
    </message>
    <message>
        <source>Crash cold in, h</source>
        <translation>Crash kalt nach, h</translation>
    </message>
    <message>
        <source>Work, rounds a batch</source>
        <translation>Arbeit, Rundgänge je Sud</translation>
    </message>
    <message>
        <source>Work, rounds</source>
        <translation>Arbeit, Rundgänge</translation>
    </message>
    <message>
        <source>energy</source>
        <comment>one of the compared things</comment>
        <translation>Energie</translation>
    </message>
    <message>
        <source>cost</source>
        <comment>one of the compared things</comment>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>time on target</source>
        <comment>one of the compared things</comment>
        <translation>Zeit am Ziel</translation>
    </message>
    <message>
        <source>time to get cold</source>
        <comment>one of the compared things</comment>
        <translation>Zeit bis kalt</translation>
    </message>
    <message>
        <source>work</source>
        <comment>one of the compared things</comment>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <comment>on target</comment>
        <translation>%1 länger</translation>
    </message>
    <message>
        <source>%1 sooner</source>
        <comment>cold</comment>
        <translation>%1 früher</translation>
    </message>
    <message>
        <source>%1 less</source>
        <comment>energy, cost or work</comment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 not known</source>
        <comment>A or B</comment>
        <translation>%1 unbekannt</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>nicht entschieden</translation>
    </message>
    <message>
        <source>Rounds in which somebody read a register; imported readings don&apos;t count.</source>
        <translation>Rundgänge, in denen jemand einen Zähler ablas; importierte Zählerstände zählen nicht.</translation>
    </message>
    <message>
        <source>cheaper to build</source>
        <comment>A setup is …</comment>
        <translation>billiger im Bau</translation>
    </message>
    <message>
        <source>cheaper to run</source>
        <comment>A setup is …</comment>
        <translation>billiger im Betrieb</translation>
    </message>
    <message>
        <source>cheaper</source>
        <comment>A batch was …</comment>
        <translation>billiger</translation>
    </message>
    <message>
        <source>more economical</source>
        <comment>A setup is …, a batch was …</comment>
        <translation>sparsamer</translation>
    </message>
    <message>
        <source>more economical in the same weather</source>
        <comment>A setup is …</comment>
        <translation>sparsamer bei gleichem Wetter</translation>
    </message>
    <message>
        <source>steadier</source>
        <comment>A setup is …, a batch was …</comment>
        <translation>gleichmäßiger</translation>
    </message>
    <message>
        <source>longer on target</source>
        <comment>A setup is …, a batch was …</comment>
        <translation>länger am Ziel</translation>
    </message>
    <message>
        <source>closer to target</source>
        <comment>A setup is …, a batch was …</comment>
        <translation>näher am Ziel</translation>
    </message>
    <message>
        <source>cold sooner</source>
        <comment>A setup is …, a batch was …</comment>
        <translation>früher kalt</translation>
    </message>
    <message>
        <source>less work</source>
        <comment>A setup is …, a batch was …</comment>
        <translation>weniger Arbeit</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <comment>a setup, and in what it is ahead</comment>
        <translation>%1 ist %2</translation>
    </message>
    <message>
        <source>%1 was %2</source>
        <comment>a batch, and in what it was ahead</comment>
        <translation>%1 war %2</translation>
    </message>
    <message>
        <source>Too close to call: %1.</source>
        <translation>Zu knapp für ein Urteil: %1.</translation>
    </message>
    <message>
        <source>Too close to call from %1 of %2 and %3 of %4: %5.</source>
        <translation>Zu knapp für ein Urteil (%2: %1, %4: %3): %5.</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <comment>two clauses</comment>
        <translation>%1; %2.</translation>
    </message>
    <message>
        <source>Too close to call: neither %1 nor %2 is ahead.</source>
        <translation>Zu knapp für ein Urteil: weder %1 noch %2 ist vorn.</translation>
    </message>
    <message>
        <source>Too few batches to say whether %1 or %2 is ahead.</source>
        <translation>Zu wenige Sude, um zu sagen, ob %1 oder %2 vorn ist.</translation>
    </message>
    <message>
        <source>Nothing decides between %1 and %2 yet.</source>
        <translation>Noch entscheidet nichts zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>Not decided, because a target was missed: %1.</source>
        <translation>Nicht entschieden, weil ein Ziel verfehlt wurde: %1.</translation>
    </message>
    <message>
        <source>Not decided, it takes three batches of each: %1.</source>
        <translation>Nicht entschieden, dafür braucht es je drei Sude: %1.</translation>
    </message>
    <message>
        <source>Not decided: %1.</source>
        <translation>Nicht entschieden: %1.</translation>
    </message>
    <message>
        <source>Known of one side only: %1.</source>
        <translation>Nur von einer Seite bekannt: %1.</translation>
    </message>
</context>
<context>
    <name>QPlatformTheme</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
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
        <source>Copies of %1</source>
        <translation>Kopien von %1</translation>
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
        <source>read at</source>
        <translation>abgelesen</translation>
    </message>
    <message>
        <source>kWh since pitching</source>
        <translation>kWh seit Anstellen</translation>
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
        <source>Energy since pitching, kWh</source>
        <translation>Energie seit dem Anstellen, kWh</translation>
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
        <source>No meter is on record yet.</source>
        <translation>Noch kein Zähler eingetragen.</translation>
    </message>
    <message>
        <source>No sensor is on record yet.</source>
        <translation>Noch kein Sensor eingetragen.</translation>
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
        <source>%1 from %2</source>
        <translation>%1 ab %2</translation>
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
        <source>New meter</source>
        <translation>Neuer Zähler</translation>
    </message>
    <message>
        <source>Meter: %1</source>
        <translation>Zähler: %1</translation>
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
        <translation>Läuft übe&amp;r bei</translation>
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
        <source>still</source>
        <translation>noch</translation>
    </message>
    <message>
        <source>The register starts again at 0 instead of %1 kWh.</source>
        <translation>Das Zählwerk beginnt wieder bei 0 statt %1 kWh.</translation>
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
        <source>Add, %1</source>
        <translation>Dazu, %1</translation>
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
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>&amp;Another price from a date on</source>
        <translation>Weiterer &amp;Preis ab einem Datum</translation>
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
        <source>round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>The times of day in which the meters are to be read, in local time. A round that passes without a reading counts as missed.</source>
        <translation>Die Tageszeiten, zu denen die Zähler abzulesen sind, in Ortszeit. Ein Rundgang, der ohne Zählerstand vergeht, gilt als versäumt.</translation>
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
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zeitzone</translation>
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
        <translation>jeden Tag</translation>
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
        <source>when</source>
        <translation>wann</translation>
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
        <source>Passed over: %1.</source>
        <translation>Übergangen: %1.</translation>
    </message>
    <message>
        <source>&amp;Choose files…</source>
        <translation>Dateien &amp;wählen…</translation>
    </message>
    <message>
        <source>Paste &amp;rows</source>
        <translation>&amp;Zeilen einfügen</translation>
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
        <source>There are no rows to paste: copy some in a spreadsheet first.</source>
        <translation>Es gibt keine Zeilen zum Einfügen: zuerst welche in einer Tabelle kopieren.</translation>
    </message>
    <message>
        <source>pasted rows</source>
        <translation>eingefügte Zeilen</translation>
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
        <source>Without what was chosen for the last file of this shape</source>
        <translation>Ohne das, was für die letzte Datei dieser Form gewählt wurde</translation>
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
        <translation>Zurück zu den S&amp;palten</translation>
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
        <source>Watched files and folders</source>
        <translation>Überwachte Dateien und Ordner</translation>
    </message>
    <message>
        <source>Watch it no lon&amp;ger</source>
        <translation>&amp;Nicht mehr überwachen</translation>
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
        <source>all notes</source>
        <translation>alle Notizen</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
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
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
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
        <translation>&amp;Journalnotiz hinzufügen…</translation>
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
        <translation>Messwerte</translation>
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
        <source>Every batch: %1</source>
        <translation>Jeder Sud: %1</translation>
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
        <source>room warmer than the beer, %1</source>
        <translation>Raum wärmer als das Bier, %1</translation>
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
        <source>from a time on; &amp;targets before stay</source>
        <translation>ab einer Zeit; Soll&amp;werte davor bleiben</translation>
    </message>
    <message>
        <source>it was planned &amp;wrong: for the past too</source>
        <translation>falsch ge&amp;plant: auch für früher</translation>
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
        <translation>Diesen Sud ent&amp;fernen</translation>
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
        <source>Remove %1? Its readings stay with their sensors. Press again to remove it.</source>
        <translation>%1 entfernen? Die Messwerte bleiben bei ihren Sensoren. Noch einmal drücken, um ihn zu entfernen.</translation>
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
        <source>still running</source>
        <translation>läuft noch</translation>
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
        <translation>&amp;Angestellt</translation>
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
        <source>%1 ends at %2.</source>
        <translation>%1 endet um %2.</translation>
    </message>
    <message>
        <source> %1 is its last stage.</source>
        <translation> %1 ist der letzte Abschnitt.</translation>
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
        <translation>&amp;Plan nach</translation>
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
        <translation>Soll, %1</translation>
    </message>
    <message>
        <source>Lasts, h or d</source>
        <translation>Dauer, h/d</translation>
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
        <translation>Einschw.</translation>
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
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>There is nothing to draw yet.</source>
        <translation>Noch ist nichts zu zeichnen.</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Wert</translation>
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
        <source>Report of</source>
        <translation>Bericht über</translation>
    </message>
    <message>
        <source>Side by side with</source>
        <translation>Neben</translation>
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
        <source>Si&amp;ze</source>
        <translation>&amp;Größe</translation>
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
        <source>The report is written to %1.</source>
        <translation>Der Bericht ist nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Wird angehalten…</translation>
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
        <source>accuracy class unknown</source>
        <translation>Genauigkeitsklasse unbekannt</translation>
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
        <source>Green: the band.</source>
        <translation>Grün: das Band.</translation>
    </message>
    <message>
        <source>Hatched: settling, not judged.</source>
        <translation>Schraffiert: Einschwingen, nicht beurteilt.</translation>
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
        <source>Effective performance</source>
        <translation>Wirksame Leistungszahl</translation>
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
        <translation>erreicht in</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>im Band</translation>
    </message>
    <message>
        <source>Excursions</source>
        <translation>Bandverletzungen</translation>
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
        <source>kWh for each %1·day</source>
        <translation>kWh je %1·Tag</translation>
    </message>
    <message>
        <source>Energy of each batch</source>
        <translation>Energie jedes Suds</translation>
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
        <source>The right reading</source>
        <translation>Der richtige Stand</translation>
    </message>
    <message>
        <source>When it was read</source>
        <translation>Wann er abgelesen wurde</translation>
    </message>
    <message>
        <source> · reads %1</source>
        <translation> · steht auf %1</translation>
    </message>
    <message>
        <source>The note is changed.</source>
        <translation>Die Notiz ist geändert.</translation>
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
        <source>Type the gravity of the sample, or clear its temperature.</source>
        <translation>Die Dichte der Probe eintippen oder ihre Temperatur löschen.</translation>
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
        <source>all readings count for %1</source>
        <translation>alle Stände gelten für %1</translation>
    </message>
    <message>
        <source>the time for all:</source>
        <translation>die Zeit für alle:</translation>
    </message>
    <message>
        <source>The last 14 rounds</source>
        <translation>Die letzten 14 Rundgänge</translation>
    </message>
    <message>
        <source>Ea&amp;rlier rounds</source>
        <translation>&amp;Frühere Rundgänge</translation>
    </message>
    <message>
        <source>Later rou&amp;nds</source>
        <translation>S&amp;pätere Rundgänge</translation>
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
        <source>A paper sheet for two weeks of rounds:</source>
        <translation>Ein Blatt für zwei Wochen Rundgänge:</translation>
    </message>
    <message>
        <source>Round sheet as P&amp;DF…</source>
        <translation>Rundgangblatt als P&amp;DF…</translation>
    </message>
    <message>
        <source>&amp;Print it…</source>
        <translation>D&amp;rucken…</translation>
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
        <source>That is still to come; a round can be typed later, not before.</source>
        <translation>Das kommt erst noch; ein Rundgang kann später getippt werden, nicht vorher.</translation>
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
        <source>at %1 a kWh</source>
        <translation>zu %1 je kWh</translation>
    </message>
    <message>
        <source>mean power</source>
        <translation>Ø Leistung</translation>
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
        <source>Back to its &amp;own</source>
        <translation>&amp;Zurück zu den eigenen</translation>
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
        <translation>Ursa&amp;che angeben…</translation>
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
        <translation>Spitze</translation>
    </message>
    <message>
        <source>%1 ± %2, from %3</source>
        <translation>%1 ± %2, ab %3</translation>
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
        <translation>g&amp;ezählt ab</translation>
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
        <source>Choose two batches or two setups.</source>
        <translation>Zwei Sude oder zwei Anlagen wählen.</translation>
    </message>
    <message>
        <source>A %1 · B %2</source>
        <translation>A %1 · B %2</translation>
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
        <translation>Aus&amp;sehen</translation>
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
        <translation>Text&amp;größe</translation>
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
        <source>%1 is damaged, or another program wrote in it: it no longer fits its seal.</source>
        <translation>%1 ist beschädigt, oder ein anderes Programm schrieb hinein: es passt nicht mehr zu seinem Siegel.</translation>
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
        <translation>Kammer und Kü&amp;hlmittel</translation>
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
        <source>&amp;Help for this page</source>
        <translation>&amp;Hilfe zu dieser Seite</translation>
    </message>
    <message>
        <source>About Hold&amp;band</source>
        <translation>Über H&amp;oldband</translation>
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
        <translation>Eine Beschreibung la&amp;den…</translation>
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
        <source>Take them in order. Everything can be changed later, and what was done can be undone. If you have a description file, load it instead.</source>
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
        <source>missed</source>
        <comment>of a round</comment>
        <translation>versäumt</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>a step of making a report</comment>
        <translation>lese</translation>
    </message>
    <message>
        <source>drawing</source>
        <comment>a step of making a report</comment>
        <translation>zeichne</translation>
    </message>
    <message>
        <source>writing</source>
        <comment>a step of making a report</comment>
        <translation>schreibe</translation>
    </message>
    <message>
        <source>Readings</source>
        <comment>of the rounds, beneath the lanes</comment>
        <translation>Rundgänge</translation>
    </message>
    <message>
        <source>Room sensor</source>
        <translation>Raumsensor</translation>
    </message>
    <message>
        <source>What each batch rests on</source>
        <translation>Worauf jeder Sud beruht</translation>
    </message>
    <message>
        <source>span</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>sensors</source>
        <translation>Sensoren</translation>
    </message>
    <message>
        <source>meters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>pattern of a date</comment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <comment>pattern of a date</comment>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>Morning</source>
        <comment>a round</comment>
        <translation>Morgen</translation>
    </message>
    <message>
        <source>Evening</source>
        <comment>a round</comment>
        <translation>Abend</translation>
    </message>
    <message>
        <source>morning</source>
        <comment>a round, beside its date</comment>
        <translation>morgens</translation>
    </message>
    <message>
        <source>evening</source>
        <comment>a round, beside its date</comment>
        <translation>abends</translation>
    </message>
    <message>
        <source>No meter was read twice during this batch. Rounds (Alt+1) take its readings.</source>
        <translation>Kein Zähler wurde während dieses Sudes zweimal abgelesen. Rundgänge (Alt+1) nehmen die Stände auf.</translation>
    </message>
    <message numerus="yes">
        <source>%n batches, %1 – %2
%3
Click to zoom to them.</source>
        <comment>%n batch, %1 – %2
%3
Click to zoom to it.</comment>
        <translation>
            <numerusform>%n Sud, %1 – %2
%3
Ein Klick zeigt ihn größer.</numerusform>
            <numerusform>%n Sude, %1 – %2
%3
Ein Klick zeigt sie größer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rounds, %1
%2 – %3</source>
        <comment>%n round, %1
%2 – %3</comment>
        <translation>
            <numerusform>%n Rundgang, %1
%2 – %3</numerusform>
            <numerusform>%n Rundgänge, %1
%2 – %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings of the beer</source>
        <comment>%n reading of the beer</comment>
        <translation>
            <numerusform>%n Messwert des Biers</numerusform>
            <numerusform>%n Messwerte des Biers</numerusform>
        </translation>
    </message>
    <message>
        <source>band %1</source>
        <translation>Band %1</translation>
    </message>
    <message>
        <source>each stage its own band</source>
        <translation>jeder Abschnitt sein eigenes Band</translation>
    </message>
    <message>
        <source>Bounds of the measures</source>
        <translation>Grenzen der Kenngrößen</translation>
    </message>
    <message>
        <source>kWh/(%1·day)</source>
        <translation>kWh/(%1·Tag)</translation>
    </message>
    <message>
        <source> (%1 × ΔSG)</source>
        <translation> (%1 × ΔSG)</translation>
    </message>
    <message>
        <source>%1 kWh of heat for each kWh used</source>
        <translation>%1 kWh Wärme je verbrauchter kWh</translation>
    </message>
    <message>
        <source>No meter was read twice while this batch ran.</source>
        <translation>Kein Zähler wurde während dieses Sudes zweimal abgelesen.</translation>
    </message>
    <message>
        <source>to %1</source>
        <comment>the end of a ramp</comment>
        <translation>auf %1</translation>
    </message>
    <message>
        <source>%1 × ΔSG</source>
        <translation>%1 × ΔSG</translation>
    </message>
    <message>
        <source>Report of a comparison</source>
        <translation>Bericht über einen Vergleich</translation>
    </message>
    <message>
        <source>beer left out by hand</source>
        <translation>Bier von Hand ausgelassen</translation>
    </message>
    <message>
        <source>beer left out by hand: %1</source>
        <translation>Bier von Hand ausgelassen: %1</translation>
    </message>
    <message>
        <source>Upright lines: left out by hand.</source>
        <translation>Senkrechte Linien: von Hand ausgelassen.</translation>
    </message>
    <message>
        <source>as the header says</source>
        <translation>wie in der Kopfzeile</translation>
    </message>
    <message>
        <source>The file changed after it was looked at; nothing was stored. Now: </source>
        <translation>Die Datei hat sich geändert, seit sie angesehen wurde; nichts wurde gespeichert. Jetzt: </translation>
    </message>
    <message>
        <source> It was stored before Cancel took effect; it can be withdrawn under Past imports.</source>
        <translation> Gespeichert, bevor das Abbrechen wirkte; unter „Frühere Importe“ kann der Import zurückgenommen werden.</translation>
    </message>
    <message>
        <source>Cancelling…</source>
        <translation>Wird abgebrochen…</translation>
    </message>
    <message>
        <source> No value could be read. The first: line %1: %2 %3.</source>
        <translation> Kein Wert war lesbar. Der erste: Zeile %1: %2 %3.</translation>
    </message>
    <message>
        <source> No value could be read. The first: line %1, column %2: %3 %4.</source>
        <translation> Kein Wert war lesbar. Der erste: Zeile %1, Spalte %2: %3 %4.</translation>
    </message>
    <message>
        <source>%1 is below the reading before it. What happened?</source>
        <translation>%1 liegt unter dem Stand davor. Was ist passiert?</translation>
    </message>
    <message>
        <source>Another meter took its place with this reading.</source>
        <translation>Ein anderer Zähler hat mit diesem Stand seinen Platz eingenommen.</translation>
    </message>
    <message>
        <source>%1 is far from the %2 expected. Press Enter again to save it.</source>
        <translation>%1 ist weit von den erwarteten %2 entfernt. Drücke noch einmal Enter, um es zu speichern.</translation>
    </message>
    <message>
        <source>%1. Press Enter again to save it.</source>
        <translation>%1. Drücke noch einmal Enter, um es zu speichern.</translation>
    </message>
    <message>
        <source>add</source>
        <translation>zu addieren</translation>
    </message>
    <message>
        <source>gap limit</source>
        <translation>Lückengrenze</translation>
    </message>
    <message>
        <source>rated power</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>%1 ended %2. Edit the batch to change that, or reopen it.</source>
        <translation>%1 endete %2. Bearbeite den Sud, um das zu ändern, oder öffne ihn wieder.</translation>
    </message>
    <message>
        <source>Opening %1 …</source>
        <translation>%1 wird geöffnet …</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>keine Daten</translation>
    </message>
    <message>
        <source>range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>reset to 0</source>
        <translation>auf 0 zurückgesetzt</translation>
    </message>
    <message>
        <source>Appears after the first reading of the beer.</source>
        <translation>Erscheint nach dem ersten Messwert des Biers.</translation>
    </message>
    <message>
        <source>dots: readings · ribbon: minimum – maximum</source>
        <translation>Punkte: Zählerstände · Streifen: Minimum – Maximum</translation>
    </message>
    <message>
        <source>%1 · square: reset to 0</source>
        <translation>%1 · Quadrat: auf 0 zurückgesetzt</translation>
    </message>
    <message>
        <source>In brackets: minimum – maximum of the figure.</source>
        <translation>In Klammern: Minimum – Maximum des Wertes.</translation>
    </message>
    <message>
        <source>A saved plan is offered for each new batch.</source>
        <translation>Ein gespeicherter Plan wird für jeden neuen Sud angeboten.</translation>
    </message>
    <message>
        <source>not in use</source>
        <translation>unbenutzt</translation>
    </message>
    <message>
        <source>the accuracy must be above 0 % and below 100 %</source>
        <translation>die Genauigkeit muss über 0 % und unter 100 % liegen</translation>
    </message>
    <message>
        <source>Save meter</source>
        <translation>Zähler speichern</translation>
    </message>
    <message>
        <source>From a time on it counts for another setup, or is not in use.</source>
        <translation>Ab einer Zeit zählt er für eine andere Anlage oder ist unbenutzt.</translation>
    </message>
    <message>
        <source>the uncertainty must be above 0</source>
        <translation>die Unsicherheit muss über 0 liegen</translation>
    </message>
    <message>
        <source>Uncertainty ±, %1</source>
        <translation>Unsicherheit ±, %1</translation>
    </message>
    <message>
        <source>a rating must be from 1 to 5</source>
        <translation>eine Note muss zwischen 1 und 5 liegen</translation>
    </message>
    <message>
        <source>Save prices</source>
        <translation>Preise speichern</translation>
    </message>
    <message>
        <source>Save rounds</source>
        <translation>Rundgänge speichern</translation>
    </message>
    <message>
        <source>Save sensor</source>
        <translation>Sensor speichern</translation>
    </message>
    <message>
        <source>Save setup</source>
        <translation>Anlage speichern</translation>
    </message>
    <message>
        <source>Save settings</source>
        <translation>Einstellungen speichern</translation>
    </message>
    <message>
        <source>They set how everything is shown and typed. Stored readings are unchanged. The zone also sets where days begin, and so when a round was due.</source>
        <translation>Sie legen fest, wie alles gezeigt und eingegeben wird. Gespeicherte Messwerte bleiben unverändert. Die Zeitzone legt auch fest, wo Tage beginnen und wann also ein Rundgang fällig war.</translation>
    </message>
    <message>
        <source>a gravity must be between 0.980 and 1.200</source>
        <translation>eine Dichte muss zwischen 0,980 und 1,200 liegen</translation>
    </message>
    <message>
        <source>Yes, save</source>
        <translation>Ja, speichern</translation>
    </message>
    <message>
        <source>What you typed here has not been saved.</source>
        <translation>Das hier Eingegebene ist nicht gespeichert.</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Saving %1…</source>
        <translation>%1 wird gespeichert…</translation>
    </message>
    <message>
        <source>%1 There is nothing new to save.</source>
        <translation>%1 Es gibt nichts Neues zu speichern.</translation>
    </message>
    <message>
        <source>Saved. %1</source>
        <translation>Gespeichert. %1</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>gespeichert</translation>
    </message>
    <message>
        <source>%1. Text: %2, separator “%3”, decimal sign “%4”.</source>
        <translation>%1. Text: %2, Trennzeichen „%3“, Dezimalzeichen „%4“.</translation>
    </message>
    <message>
        <source>%1. Text: %2, separator “%3”.</source>
        <translation>%1. Text: %2, Trennzeichen „%3“.</translation>
    </message>
    <message>
        <source>Drop logs anywhere in the window, choose files, or paste rows. You see a preview first; nothing is saved until you confirm.</source>
        <translation>Protokolle irgendwo ins Fenster ziehen, Dateien wählen oder Zeilen einfügen. Zuerst kommt eine Vorschau; gespeichert wird erst nach Bestätigung.</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;all</source>
        <translation>Alle s&amp;peichern</translation>
    </message>
    <message>
        <source>The logbook is open for reading only, so no log can be saved.</source>
        <translation>Das Logbuch ist nur zum Lesen geöffnet; kein Protokoll kann gespeichert werden.</translation>
    </message>
    <message>
        <source>Nothing was saved.</source>
        <translation>Nichts wurde gespeichert.</translation>
    </message>
    <message>
        <source>&amp;Save %1 readings</source>
        <translation>%1 Messwerte &amp;speichern</translation>
    </message>
    <message>
        <source>Save &amp;all %1 that are ready</source>
        <translation>Alle %1 bereiten s&amp;peichern</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Separator</source>
        <translation>Trennzeichen</translation>
    </message>
    <message>
        <source>Header row</source>
        <translation>Kopfzeile</translation>
    </message>
    <message>
        <source>stored (unchanged)</source>
        <translation>gespeichert (unverändert)</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vorschau</translation>
    </message>
    <message>
        <source>&amp;Detect again</source>
        <translation>Neu &amp;erkennen</translation>
    </message>
    <message>
        <source>The preview appears after every question about the file is answered.</source>
        <translation>Die Vorschau erscheint, wenn alle Fragen zur Datei beantwortet sind.</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>&amp;Restore %1</source>
        <translation>%1 &amp;wiederherstellen</translation>
    </message>
    <message>
        <source>%1 new readings stored</source>
        <translation>%1 neue Messwerte gespeichert</translation>
    </message>
    <message>
        <source>New rows of a watched file are imported automatically while this window is open. Import one file of the kind first, so that its columns are known.</source>
        <translation>Neue Zeilen einer beobachteten Datei werden automatisch importiert, solange dieses Fenster offen ist. Zuerst eine Datei dieser Art importieren, damit ihre Spalten bekannt sind.</translation>
    </message>
    <message>
        <source>The logbook is open for reading only: nothing can be saved.</source>
        <translation>Das Logbuch ist nur zum Lesen geöffnet: nichts kann gespeichert werden.</translation>
    </message>
    <message>
        <source>Save changes</source>
        <translation>Änderungen speichern</translation>
    </message>
    <message>
        <source>Ignore shorter than</source>
        <translation>Nicht werten unter</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatisch</translation>
    </message>
    <message>
        <source>I&amp;gnore shorter than</source>
        <translation>&amp;Nicht werten unter</translation>
    </message>
    <message>
        <source>%1 is open again: its end at %2 was removed.</source>
        <translation>%1 läuft wieder: das Ende um %2 ist entfernt.</translation>
    </message>
    <message>
        <source>Pitching is in the future, at %1. Is that intended?</source>
        <translation>Das Anstellen liegt in der Zukunft, um %1. Ist das gewollt?</translation>
    </message>
    <message>
        <source>Save plan</source>
        <translation>Plan speichern</translation>
    </message>
    <message>
        <source>Save as a named plan…</source>
        <translation>Als benannten Plan speichern…</translation>
    </message>
    <message>
        <source>Store copies &amp;beside each logbook</source>
        <translation>Kopien &amp;beim Logbuch speichern</translation>
    </message>
    <message>
        <source>Store copies in a &amp;folder…</source>
        <translation>Kopien in einem &amp;Ordner speichern…</translation>
    </message>
    <message>
        <source>A copy is made before the first change of each day; copies of the last seven days and eight weeks are retained. Restoring writes a copy beside the logbook under another name and opens it; the logbook itself is unchanged.</source>
        <translation>Vor der ersten Änderung eines Tages entsteht eine Kopie; die der letzten sieben Tage und acht Wochen bleiben erhalten. Wiederherstellen schreibt eine Kopie unter anderem Namen neben das Logbuch und öffnet sie; das Logbuch selbst bleibt unverändert.</translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>ignore shorter than</source>
        <translation>nicht werten unter</translation>
    </message>
    <message>
        <source>deleted</source>
        <translation>gelöscht</translation>
    </message>
    <message>
        <source>withdrawn at</source>
        <translation>zurückgezogen um</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>rückgängig gemacht</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>&amp;Save change</source>
        <translation>Änderung &amp;speichern</translation>
    </message>
    <message>
        <source>&amp;Delete note</source>
        <translation>Notiz &amp;löschen</translation>
    </message>
    <message>
        <source>A note can&apos;t be empty; to remove it, choose Delete.</source>
        <translation>Eine Notiz darf nicht leer sein; zum Entfernen „Löschen“ wählen.</translation>
    </message>
    <message>
        <source>Saved. Undo restores the old note.</source>
        <translation>Gespeichert. „Rückgängig“ stellt die alte Notiz wieder her.</translation>
    </message>
    <message>
        <source>The note is not saved. Press Escape or Cancel again to discard it.</source>
        <translation>Die Notiz ist nicht gespeichert. Noch einmal Escape oder Abbrechen verwirft sie.</translation>
    </message>
    <message>
        <source>covered</source>
        <translation>abgedeckt</translation>
    </message>
    <message>
        <source>%1 of the hold time up to %2 is covered; there is no data after that</source>
        <translation>%1 der Haltezeit bis %2 ist abgedeckt; danach gibt es keine Daten</translation>
    </message>
    <message>
        <source>%1 of the hold time is covered</source>
        <translation>%1 der Haltezeit ist abgedeckt</translation>
    </message>
    <message>
        <source>%1, minimum</source>
        <translation>%1, Minimum</translation>
    </message>
    <message>
        <source>%1, maximum</source>
        <translation>%1, Maximum</translation>
    </message>
    <message>
        <source>Pale: the minimum and maximum that the meters’ readings and their accuracy allow.</source>
        <translation>Blass: Minimum und Maximum, die die Zählerstände und ihre Genauigkeit zulassen.</translation>
    </message>
    <message>
        <source>Energies are compared over the elapsed time that is metered in both. One side is ahead only where the ranges of the two do not overlap; the range of energy covers the reading of the meters and their accuracy, that of temperature the sensors’ accuracy. </source>
        <translation>Energien werden über die verstrichene Zeit verglichen, die bei beiden gemessen ist. Eine Seite liegt nur vorn, wo sich die Bereiche der beiden nicht überlappen; der Bereich der Energie umfasst das Ablesen der Zähler und ihre Genauigkeit, der der Temperatur die Genauigkeit der Sensoren. </translation>
    </message>
    <message>
        <source>What would change the result:</source>
        <translation>Was das Ergebnis ändern würde:</translation>
    </message>
    <message>
        <source>The figures are in the tables below.</source>
        <translation>Die Zahlen stehen in den Tabellen unten.</translation>
    </message>
    <message>
        <source>Grey: no data, or not metered.</source>
        <translation>Grau: keine Daten oder nicht gemessen.</translation>
    </message>
    <message>
        <source>Check these</source>
        <translation>Bitte prüfen</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>%1 kWh (minimum %2, maximum %3)</source>
        <translation>%1 kWh (Minimum %2, Maximum %3)</translation>
    </message>
    <message>
        <source>Average day</source>
        <translation>Mittlerer Tag</translation>
    </message>
    <message>
        <source>A bar for each batch. %1 The figures are in the tables below.</source>
        <translation>Ein Balken für jeden Sud. %1 Die Zahlen stehen in den Tabellen unten.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>Background</source>
        <translation>Hintergrund</translation>
    </message>
    <message>
        <source>&amp;Format</source>
        <translation>&amp;Format</translation>
    </message>
    <message>
        <source>&amp;Background</source>
        <translation>&amp;Hintergrund</translation>
    </message>
    <message>
        <source>A file of that name already exists. Press “Save” again to replace it, or choose another name.</source>
        <translation>Eine Datei dieses Namens gibt es schon. Noch einmal „Speichern“ drücken, um sie zu ersetzen, oder einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>Corrected; the old value stays in the history.</source>
        <translation>Korrigiert; der alte Wert bleibt im Verlauf.</translation>
    </message>
    <message>
        <source>Deleted. Undo restores it.</source>
        <translation>Gelöscht. „Rückgängig“ stellt ihn wieder her.</translation>
    </message>
    <message>
        <source>nothing was saved; type it again</source>
        <translation>nichts wurde gespeichert; noch einmal eingeben</translation>
    </message>
    <message>
        <source>A hydrometer made for 20 °C, read at %1: the gravity is %2. What it showed is stored.</source>
        <translation>Ein Aräometer für 20 °C, abgelesen bei %1: die Dichte ist %2. Gespeichert wird, was es zeigte.</translation>
    </message>
    <message>
        <source>How warm the sample was, if you know: warm wort is thinner and the hydrometer sinks deeper. It is stored beside the gravity as read.</source>
        <translation>Wie warm die Probe war, wenn bekannt: warme Würze ist dünner, und das Aräometer sinkt tiefer. Sie wird neben der abgelesenen Dichte gespeichert.</translation>
    </message>
    <message>
        <source>can be saved</source>
        <translation>kann gespeichert werden</translation>
    </message>
    <message>
        <source>%1 is far more than the %2 expected. Press Enter again to save it.</source>
        <translation>%1 ist viel mehr als die erwarteten %2. Noch einmal Eingabe speichert es.</translation>
    </message>
    <message>
        <source>&amp;Use current time</source>
        <translation>Aktuelle &amp;Zeit</translation>
    </message>
    <message>
        <source>%1 replaced it with this reading. Undo reverses that.</source>
        <translation>%1 hat ihn mit diesem Stand ersetzt. „Rückgängig“ hebt das auf.</translation>
    </message>
    <message>
        <source>Nothing is saved yet: check one reading first.</source>
        <translation>Noch ist nichts gespeichert: bitte erst einen Wert prüfen.</translation>
    </message>
    <message>
        <source>average day</source>
        <translation>mittlerer Tag</translation>
    </message>
    <message>
        <source>&amp;Save for this batch</source>
        <translation>&amp;Für diesen Sud speichern</translation>
    </message>
    <message>
        <source>the record does not change</source>
        <translation>Gespeichertes bleibt</translation>
    </message>
    <message>
        <source>Readings farther apart than this leave a gap without data. Automatic: three times the median interval between readings, at most 2 h.</source>
        <translation>Messwerte, die weiter auseinanderliegen, lassen eine Lücke ohne Daten. Automatisch: das Dreifache des mittleren Abstands (Median) der Messwerte, höchstens 2 h.</translation>
    </message>
    <message>
        <source>There is no hold time with data yet.</source>
        <translation>Noch gibt es keine Haltezeit mit Daten.</translation>
    </message>
    <message>
        <source>No copy today: %1 The change is saved all the same.</source>
        <translation>Heute keine Kopie: %1 Die Änderung ist trotzdem gespeichert.</translation>
    </message>
    <message>
        <source>Open for reading only: %1. Nothing typed here can be saved.</source>
        <translation>Nur zum Lesen geöffnet: %1. Hier Eingegebenes kann nicht gespeichert werden.</translation>
    </message>
    <message>
        <source>The round that you typed is not saved. Save it, or close the window again to discard it.</source>
        <translation>Der eingegebene Rundgang ist nicht gespeichert. Ihn speichern, oder das Fenster noch einmal schließen, um ihn zu verwerfen.</translation>
    </message>
    <message>
        <source>Restored as %1; the original logbook is unchanged.</source>
        <translation>Als %1 wiederhergestellt; das ursprüngliche Logbuch bleibt unverändert.</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>line: mean · pale: 95 % interval</source>
        <translation>Linie: Mittel · blass: 95-%-Bereich</translation>
    </message>
    <message>
        <source>no ribbon: the maximum is unknown</source>
        <translation>kein Streifen: das Maximum ist unbekannt</translation>
    </message>
    <message>
        <source>%1: %2. %3: %4. In brackets: 95 % interval of the mean of many such batches.</source>
        <translation>%1: %2. %3: %4. In Klammern: 95-%-Bereich des Mittels vieler solcher Sude.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>The highest reading it can show, all nines, or where it starts again at 0; optional.</source>
        <translation>Der höchste Stand, den er zeigen kann, lauter Neunen, oder wo er wieder bei 0 beginnt; freiwillig.</translation>
    </message>
    <message>
        <source>At most six rounds a day</source>
        <translation>Höchstens sechs Rundgänge am Tag</translation>
    </message>
    <message>
        <source>Three letters, such as USD or EUR, or leave it empty.</source>
        <translation>Drei Buchstaben wie USD oder EUR, oder leer lassen.</translation>
    </message>
    <message>
        <source>not set yet</source>
        <translation>noch nicht gesetzt</translation>
    </message>
    <message>
        <source>optional</source>
        <translation>freiwillig</translation>
    </message>
    <message>
        <source>The target of %1 is %2, %3. Is that intended?</source>
        <translation>Der Sollwert von %1 ist %2, %3. Ist das gewollt?</translation>
    </message>
    <message>
        <source>No single rows are on record.</source>
        <translation>Einzelne Zeilen sind nicht verzeichnet.</translation>
    </message>
    <message>
        <source>Type a reason first.</source>
        <translation>Zuerst einen Grund eingeben.</translation>
    </message>
    <message>
        <source>&amp;Restore</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>An estimate from volume and temperatures, within a few percent.</source>
        <translation>Eine Schätzung aus Volumen und Temperaturen, auf wenige Prozent genau.</translation>
    </message>
    <message>
        <source> · no reading: type what you wrote down</source>
        <translation> · kein Stand: den notierten eingeben</translation>
    </message>
    <message>
        <source>%1 sample temperature, %2, optional</source>
        <translation>%1 Probentemperatur, %2, freiwillig</translation>
    </message>
    <message>
        <source>click to show</source>
        <translation>zum Zeigen klicken</translation>
    </message>
    <message>
        <source>From volume and temperatures, within a few percent.</source>
        <translation>Aus Volumen und Temperaturen, auf wenige Prozent genau.</translation>
    </message>
    <message>
        <source>A logbook for home-brew fermentation runs: did a batch stay in its band, how sure is that, and what did it use.

Licence: GNU General Public License, version 3 or later. No warranty.

Safety:%1</source>
        <translation>Ein Logbuch für Gärläufe daheim: blieb ein Sud in seinem Band, wie sicher ist das, und was hat er verbraucht.

Lizenz: GNU General Public License, Version 3 oder später. Keine Gewähr.

Sicherheit:%1</translation>
    </message>
    <message>
        <source>&amp;Safety</source>
        <translation>&amp;Sicherheit</translation>
    </message>
    <message>
        <source>W&amp;ithdraw</source>
        <translation>Zurü&amp;ckziehen</translation>
    </message>
    <message>
        <source>W&amp;ithdraw %1</source>
        <translation>%1 zurü&amp;ckziehen</translation>
    </message>
    <message>
        <source>accurate to ± %1</source>
        <translation>auf ± %1 genau</translation>
    </message>
    <message>
        <source>accurate to %1 %</source>
        <translation>auf %1 % genau</translation>
    </message>
    <message>
        <source>shorter than %1</source>
        <translation>kürzer als %1</translation>
    </message>
    <message numerus="yes">
        <source>Saved %n readings.</source>
        <comment>Saved %n reading.</comment>
        <translation>
            <numerusform>%n Messwert gespeichert.</numerusform>
            <numerusform>%n Messwerte gespeichert.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each batch has a row for its gravity in the rounds.</source>
        <translation>Jeder Sud hat in den Runden eine eigene Zeile für die Dichte.</translation>
    </message>
    <message>
        <source>Settled after</source>
        <translation>Eingeschwungen nach</translation>
    </message>
    <message>
        <source>Excursion ends after</source>
        <translation>Bandverletzung endet nach</translation>
    </message>
    <message>
        <source>Se&amp;ttled after</source>
        <translation>Eingesch&amp;wungen nach</translation>
    </message>
    <message>
        <source>E&amp;xcursion ends after</source>
        <translation>Band&amp;verletzung endet nach</translation>
    </message>
    <message>
        <source>%1 if empty</source>
        <translation>%1, wenn leer</translation>
    </message>
    <message>
        <source>Excurs&amp;ion ends after</source>
        <translation>Bandverletz&amp;ung endet nach</translation>
    </message>
    <message>
        <source>settled after</source>
        <translation>eingeschwungen nach</translation>
    </message>
    <message>
        <source>excursion ends after</source>
        <translation>Bandverletzung endet nach</translation>
    </message>
    <message>
        <source>%1; gap limit %2; ignored excursions: %3; settled after %4; an excursion ends after %5; coverage needed %6</source>
        <translation>%1; Lückengrenze %2; nicht gewertete Bandverletzungen: %3; eingeschwungen nach %4; eine Bandverletzung endet nach %5; nötige Abdeckung %6</translation>
    </message>
    <message>
        <source>%1 inside the band</source>
        <translation>%1 im Band</translation>
    </message>
    <message>
        <source>the first moment inside the band</source>
        <translation>dem ersten Moment im Band</translation>
    </message>
    <message>
        <source>%1 back inside</source>
        <translation>%1 wieder im Band</translation>
    </message>
    <message>
        <source>the first moment back inside</source>
        <translation>dem ersten Moment wieder im Band</translation>
    </message>
    <message>
        <source>Readings are joined by straight lines where they are no further apart than the gap limit; time between readings further apart has no data. A stage is judged from where the beer enters its band and stays there (before that it settles) to its end: the beer is inside where it is no further from the target than the tolerance, edges included. An excursion ends once the beer has been back inside for a while; its time is the time outside. Sure means that the verdict is the same with the band made narrower and wider by the sensor’s accuracy. Energy is exact at a meter’s readings and drawn straight between them; minimum and maximum are what the readings before and after, their last digit and the rated power allow. Heat is an estimate from volume and temperatures, within a few percent.</source>
        <translation>Messwerte werden durch gerade Linien verbunden, wo sie nicht weiter auseinanderliegen als die Lückengrenze; Zeit zwischen weiter entfernten hat keine Daten. Ein Abschnitt wird von dort an beurteilt, wo das Bier in sein Band kommt und dort bleibt (davor schwingt es ein), bis zu seinem Ende: das Bier ist im Band, wo es vom Sollwert nicht weiter entfernt ist als die Toleranz, Ränder eingeschlossen. Eine Bandverletzung endet, wenn das Bier eine Weile wieder im Band ist; ihre Zeit ist die Zeit außerhalb. Sicher heißt, dass das Urteil dasselbe ist, wenn das Band um die Genauigkeit des Sensors enger und weiter gemacht wird. Energie ist an den Zählerständen exakt und dazwischen gerade gezogen; Minimum und Maximum sind, was die Stände davor und danach, ihre letzte Stelle und die Nennleistung zulassen. Wärme ist eine Schätzung aus Volumen und Temperaturen, auf wenige Prozent genau.</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>How it is computed</source>
        <translation>Wie es berechnet wird</translation>
    </message>
    <message>
        <source>The beer is settled once it has stayed in the band for this long; 0: as soon as it comes in.</source>
        <translation>Das Bier ist eingeschwungen, wenn es so lange im Band geblieben ist; 0: sobald es hineinkommt.</translation>
    </message>
    <message>
        <source>An excursion ends once the beer has been back in the band for this long; shorter returns are part of it.</source>
        <translation>Eine Bandverletzung endet, wenn das Bier so lange wieder im Band ist; kürzere Rückkehren gehören dazu.</translation>
    </message>
    <message>
        <source>A %1, filled · B %2, hollow</source>
        <translation>A %1, gefüllt · B %2, hohl</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>exact</source>
        <translation>exakt</translation>
    </message>
    <message>
        <source>&amp;Typed times are good to</source>
        <translation>&amp;Getippte Zeiten gelten auf</translation>
    </message>
    <message>
        <source>A reading that is typed later, with a time from memory or from paper, may have been read a while before or after. Ranges of energy widen by this. Readings saved as &quot;now&quot; and imported ones are exact.</source>
        <translation>Ein Stand, der später mit einer Zeit aus dem Gedächtnis oder vom Papier getippt wird, kann eine Weile davor oder danach gelesen sein. Bereiche der Energie werden um so viel weiter. Als „jetzt“ gespeicherte und importierte Stände sind exakt.</translation>
    </message>
    <message>
        <source>the time for all, taken as good to %1:</source>
        <translation>die Zeit für alle, gilt als auf %1 genau:</translation>
    </message>
    <message>
        <source>How far a typed time may be off is set with the rounds, on the page Equipment. Ranges of energy widen by it.</source>
        <translation>Wie weit eine getippte Zeit daneben liegen darf, wird bei den Rundgängen auf der Seite Ausrüstung eingestellt. Bereiche der Energie werden um so viel weiter.</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>noch nicht gemessen</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>Pale fan: when the beer may come into its band.</source>
        <translation>Blasser Fächer: wann das Bier in sein Band kommen dürfte.</translation>
    </message>
    <message>
        <source>arrival</source>
        <comment>forecast of a crash</comment>
        <translation>Ankunft</translation>
    </message>
    <message>
        <source>Notify me about running &amp;batches</source>
        <translation>&amp;Laufende Sude melden</translation>
    </message>
    <message>
        <source>Cold when? Beer in the crash, %1</source>
        <translation>Wann kalt? Bier im Cold Crash, %1</translation>
    </message>
    <message>
        <source>hours after turning down</source>
        <translation>Stunden nach dem Herunterkühlen</translation>
    </message>
    <message>
        <source>Energy by stage, kWh</source>
        <translation>Energie nach Abschnitt, kWh</translation>
    </message>
    <message>
        <source>line below: nine in ten</source>
        <translation>Strich darunter: neun von zehn</translation>
    </message>
    <message>
        <source>How well would it have known? (kWh)</source>
        <translation>Wie gut hätte sie es gewusst? (kWh)</translation>
    </message>
    <message>
        <source>pale: nine in ten · line: forecast · dot: what came</source>
        <translation>blass: neun von zehn · Strich: Vorhersage · Punkt: was kam</translation>
    </message>
    <message>
        <source>Draw a plan</source>
        <translation>Einen Plan zeichnen</translation>
    </message>
    <message>
        <source>Use this plan</source>
        <translation>Diesen Plan nehmen</translation>
    </message>
    <message>
        <source>For the forecast only; &quot;Pitch this&quot; takes it along.</source>
        <translation>Nur für die Vorhersage; „Diesen anstellen“ nimmt ihn mit.</translation>
    </message>
    <message>
        <source>Can it hold?</source>
        <translation>Hält sie das?</translation>
    </message>
    <message>
        <source>Ease of use</source>
        <translation>Handhabung</translation>
    </message>
    <message>
        <source>Cleaning</source>
        <translation>Reinigung</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>as forecast</source>
        <translation>wie vorhergesagt</translation>
    </message>
    <message>
        <source>Pitch &amp;this…</source>
        <translation>Diesen ans&amp;tellen…</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>Energy of the next batch by stage</source>
        <translation>Energie des nächsten Suds nach Abschnitt</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Was es bedeutet</translation>
    </message>
    <message>
        <source>Past batches as they would have been forecast</source>
        <translation>Vergangene Sude, wie sie vorhergesagt worden wären</translation>
    </message>
    <message>
        <source>Temperature of the crash</source>
        <translation>Temperatur im Cold Crash</translation>
    </message>
    <message>
        <source>Starts a batch with this plan and keeps the forecast with it.</source>
        <translation>Beginnt einen Sud mit diesem Plan und behält die Vorhersage bei ihm.</translation>
    </message>
    <message>
        <source>Forecast for each setup</source>
        <translation>Vorhersage für jede Anlage</translation>
    </message>
    <message>
        <source>Tick a setup.</source>
        <translation>Eine Anlage ankreuzen.</translation>
    </message>
    <message>
        <source>The plan needs at most %1 of lift over 12 hours.</source>
        <translation>Der Plan braucht über 12 Stunden höchstens %1 Hub.</translation>
    </message>
    <message>
        <source>A forecast needs a plan and a setup.</source>
        <translation>Eine Vorhersage braucht einen Plan und eine Anlage.</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>&amp;Draw…</source>
        <translation>Z&amp;eichnen…</translation>
    </message>
    <message>
        <source>&amp;Another batch runs beside it</source>
        <translation>Ein an&amp;derer Sud läuft daneben</translation>
    </message>
    <message>
        <source>Stages of the plan</source>
        <translation>Abschnitte des Plans</translation>
    </message>
    <message>
        <source>On the same setup at the same time. Only past batches that shared it count then.</source>
        <translation>Zur selben Zeit auf derselben Anlage. Dann zählen nur vergangene Sude, die sie geteilt haben.</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <source>Vol&amp;ume</source>
        <translation>V&amp;olumen</translation>
    </message>
    <message>
        <source>Fi&amp;nal gravity</source>
        <translation>E&amp;nddichte</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>wie %1</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>gezeichnet</translation>
    </message>
    <message>
        <source>%1, from the room&apos;s log</source>
        <translation>%1, aus dem Protokoll des Raums</translation>
    </message>
    <message>
        <source>The room it will stand in</source>
        <translation>Der Raum, in dem er stehen wird</translation>
    </message>
    <message>
        <source>Room like</source>
        <translation>Raum wie</translation>
    </message>
    <message>
        <source>Mean of the room</source>
        <translation>Mittel des Raums</translation>
    </message>
    <message>
        <source>Daily swing of the room</source>
        <translation>Tagesschwankung des Raums</translation>
    </message>
    <message>
        <source>From the lowest to the highest temperature of a day.</source>
        <translation>Von der tiefsten zur höchsten Temperatur eines Tages.</translation>
    </message>
    <message>
        <source>Li&amp;ke</source>
        <translation>&amp;Wie</translation>
    </message>
    <message>
        <source>F&amp;rom</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <source>&amp;Mean</source>
        <translation>&amp;Mittel</translation>
    </message>
    <message>
        <source>Daily &amp;swing</source>
        <translation>Tagesschwan&amp;kung</translation>
    </message>
    <message>
        <source>a stretch of the room&apos;s log</source>
        <translation>ein Stück aus dem Protokoll des Raums</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>eingetippt</translation>
    </message>
    <message>
        <source>Setups</source>
        <translation>Anlagen</translation>
    </message>
    <message>
        <source>low</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>high</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>cold after, h</source>
        <translation>kalt nach, h</translation>
    </message>
    <message>
        <source>can it hold?</source>
        <translation>hält sie das?</translation>
    </message>
    <message>
        <source>Energy by stage</source>
        <translation>Energie nach Abschnitt</translation>
    </message>
    <message>
        <source>How well would it have known?</source>
        <translation>Wie gut hätte sie es gewusst?</translation>
    </message>
    <message>
        <source>forecast, kWh</source>
        <translation>Vorhersage, kWh</translation>
    </message>
    <message>
        <source>came, kWh</source>
        <translation>kam, kWh</translation>
    </message>
    <message>
        <source>%1, assumed: %2.</source>
        <translation>%1, angenommen: %2.</translation>
    </message>
    <message>
        <source>What it rests on</source>
        <translation>Worauf es beruht</translation>
    </message>
    <message>
        <source>Forecast of the next batch</source>
        <translation>Vorhersage des nächsten Suds</translation>
    </message>
    <message>
        <source>Room: %1</source>
        <translation>Raum: %1</translation>
    </message>
    <message>
        <source>The line below a bar: in nine of ten such batches it lies there.</source>
        <translation>Der Strich unter einem Balken: bei neun von zehn solchen Suden liegt der Verbrauch dort.</translation>
    </message>
    <message>
        <source>Cold when?</source>
        <translation>Wann kalt?</translation>
    </message>
    <message>
        <source>the next batch</source>
        <translation>dem nächsten Sud</translation>
    </message>
    <message>
        <source>the next batch, as it is shown</source>
        <translation>der nächste Sud, wie er gezeigt wird</translation>
    </message>
    <message>
        <source>next batch</source>
        <translation>Nächster Sud</translation>
    </message>
    <message>
        <source>No meter is in service. Add one on the Equipment page (Alt+5).</source>
        <translation>Kein Zähler ist im Einsatz. Auf der Seite Ausrüstung (Alt+5) einen hinzufügen.</translation>
    </message>
    <message>
        <source>Next batch</source>
        <translation>Nächster Sud</translation>
    </message>
    <message>
        <source>A forecast needs a plan: save one, or begin a first batch (Ctrl+B).</source>
        <translation>Eine Vorhersage braucht einen Plan: einen speichern oder einen ersten Sud beginnen (Strg+B).</translation>
    </message>
    <message>
        <source>Energy, kWh</source>
        <translation>Energie, kWh</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Cold after, h</source>
        <translation>Kalt nach, h</translation>
    </message>
    <message>
        <source>Held so far</source>
        <translation>Bisher gehalten</translation>
    </message>
    <message>
        <source>%1 MiB</source>
        <translation>%1 MiB</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 Bytes</translation>
    </message>
    <message>
        <source>a name, a label</source>
        <translation>ein Name, eine Bezeichnung</translation>
    </message>
    <message>
        <source>a note, a reason, a remark</source>
        <translation>eine Notiz, ein Grund, eine Bemerkung</translation>
    </message>
    <message>
        <source>decimals of a typed reading</source>
        <translation>Nachkommastellen einer getippten Ablesung</translation>
    </message>
    <message>
        <source>a register&apos;s reading</source>
        <translation>ein Zählerstand</translation>
    </message>
    <message>
        <source>%1 kWh</source>
        <translation>%1 kWh</translation>
    </message>
    <message>
        <source>rounds a day</source>
        <translation>Rundgänge am Tag</translation>
    </message>
    <message>
        <source>columns of a log</source>
        <translation>Spalten eines Protokolls</translation>
    </message>
    <message>
        <source>columns of a log that the window shows; others are ignored</source>
        <translation>Spalten eines Protokolls, die das Fenster zeigt; weitere werden nicht gelesen</translation>
    </message>
    <message>
        <source>one field of a log</source>
        <translation>ein Feld eines Protokolls</translation>
    </message>
    <message>
        <source>one row of a log</source>
        <translation>eine Zeile eines Protokolls</translation>
    </message>
    <message>
        <source>rejected rows that are listed; others are counted</source>
        <translation>abgelehnte Zeilen, die aufgeführt werden; weitere werden gezählt</translation>
    </message>
    <message>
        <source>logs of a watched folder</source>
        <translation>Protokolle eines beobachteten Ordners</translation>
    </message>
    <message>
        <source>a description file</source>
        <translation>eine Beschreibungsdatei</translation>
    </message>
    <message>
        <source>one value in a logbook</source>
        <translation>ein Wert in einem Logbuch</translation>
    </message>
    <message>
        <source>| what | at most |</source>
        <translation>| was | höchstens |</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>Logs (*.csv *.txt *.tsv *.log *.xlsx *.jsonl *.ndjson *.gz *.zip);;All files (*)</source>
        <translation>Protokolle (*.csv *.txt *.tsv *.log *.xlsx *.jsonl *.ndjson *.gz *.zip);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>a packed log, as it is</source>
        <translation>ein gepacktes Protokoll, so wie es ist</translation>
    </message>
    <message>
        <source>a packed log, unpacked</source>
        <translation>ein gepacktes Protokoll, entpackt</translation>
    </message>
    <message>
        <source>a workbook&apos;s sheet, JSON lines, standard input</source>
        <translation>das Blatt einer Arbeitsmappe, JSON-Zeilen, Standardeingabe</translation>
    </message>
    <message>
        <source>Which end of its interval a time is</source>
        <translation>Welches Ende seines Abschnitts eine Zeit ist</translation>
    </message>
    <message>
        <source>Its times &amp;mark</source>
        <translation>Seine &amp;Zeiten nennen</translation>
    </message>
    <message>
        <source>the start of each interval</source>
        <translation>den Anfang jedes Abschnitts</translation>
    </message>
    <message>
        <source>the end of each interval</source>
        <translation>das Ende jedes Abschnitts</translation>
    </message>
    <message>
        <source>energy of each interval</source>
        <translation>Energie je Zeitabschnitt</translation>
    </message>
    <message numerus="yes">
        <source>%n notes</source>
        <comment>%n note</comment>
        <translation>
            <numerusform>%n Notiz</numerusform>
            <numerusform>%n Notizen</numerusform>
        </translation>
    </message>
    <message>
        <source>mean deviation</source>
        <translation>mittlere Abw.</translation>
    </message>
    <message>
        <source>worst past edge</source>
        <translation>Spitze jenseits</translation>
    </message>
    <message>
        <source>room above beer</source>
        <translation>Raum über Bier</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>days of a spreadsheet’s calendar</source>
        <translation>Tage des Kalenders einer Tabellenkalkulation</translation>
    </message>
    <message>
        <source>as the header says: %1</source>
        <translation>wie die Kopfzeile sagt: %1</translation>
    </message>
    <message>
        <source>Began</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>Times count</source>
        <translation>Zeiten zählen</translation>
    </message>
    <message>
        <source>Ignored, but it looks like a temperature: %1. Choose above the column what it is.</source>
        <translation>Nicht beachtet, sieht aber nach einer Temperatur aus: %1. Über der Spalte wählen, was sie ist.</translation>
    </message>
    <message>
        <source>Ignored, but they look like temperatures: %1. Choose above each column what it is.</source>
        <translation>Nicht beachtet, sehen aber nach Temperaturen aus: %1. Über jeder Spalte wählen, was sie ist.</translation>
    </message>
    <message>
        <source>&amp;Go to the column</source>
        <translation>Zu&amp;r Spalte</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Back up &amp;now</source>
        <translation>&amp;Jetzt sichern</translation>
    </message>
    <message>
        <source>&amp;Open it when it is written</source>
        <translation>Danach öff&amp;nen</translation>
    </message>
    <message>
        <source>The window changes at the next start: the round that you typed is not saved yet.</source>
        <translation>Das Fenster ändert sich beim nächsten Start: Der getippte Rundgang ist noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>Preview of the picture</source>
        <translation>Vorschau des Bildes</translation>
    </message>
    <message>
        <source>%1: %2 kWh since %3</source>
        <translation>%1: %2 kWh seit %3</translation>
    </message>
    <message>
        <source>%1, %2 kWh</source>
        <comment>a batch and its energy</comment>
        <translation>%1, %2 kWh</translation>
    </message>
    <message>
        <source>Energy of the running batches since pitching, kWh</source>
        <translation>Energie der laufenden Sude seit dem Anstellen, kWh</translation>
    </message>
    <message>
        <source>dots: readings</source>
        <translation>Punkte: Zählerstände</translation>
    </message>
    <message numerus="yes">
        <source>%n parts</source>
        <comment>%n part</comment>
        <translation>
            <numerusform>%n Teil</numerusform>
            <numerusform>%n Teile</numerusform>
        </translation>
    </message>
    <message>
        <source>Rated from 1 poor to 5 good: %1</source>
        <translation>Noten von 1 schlecht bis 5 gut: %1</translation>
    </message>
    <message>
        <source>Restore: %1 is offered again for new batches.</source>
        <translation>Wiederherstellen: %1 wird für neue Sude wieder angeboten.</translation>
    </message>
    <message>
        <source>Retire: %1 is no longer offered for new batches, but stays with the batches that used it.</source>
        <translation>Stilllegen: %1 wird für neue Sude nicht mehr angeboten, bleibt aber bei den Suden, die es benutzten.</translation>
    </message>
    <message>
        <source>Remove: %1 is deleted from the logbook, which is possible only while no batch uses it.</source>
        <translation>Entfernen: %1 wird aus dem Logbuch gelöscht; das geht nur, solange kein Sud es benutzt.</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>Remove: %1 is deleted from the logbook; batches that were pitched with it don&apos;t change.</source>
        <translation>Entfernen: %1 wird aus dem Logbuch gelöscht; Sude, die damit angestellt wurden, ändern sich nicht.</translation>
    </message>
    <message>
        <source>1 poor … 5 good</source>
        <translation>1 schlecht … 5 gut</translation>
    </message>
    <message>
        <source>Parts of %1</source>
        <translation>Teile von %1</translation>
    </message>
    <message>
        <source>1 is poor and 5 is good, for every criterion: for noise, 5 is quiet. A blank is not rated.</source>
        <translation>1 ist schlecht und 5 ist gut, bei jedem Kriterium: beim Lärm ist 5 leise. Was leer ist, hat keine Note.</translation>
    </message>
    <message>
        <source>forecast at</source>
        <translation>vorhergesagt am</translation>
    </message>
    <message>
        <source>forecast crash</source>
        <translation>Vorhersage Cold Crash</translation>
    </message>
    <message>
        <source>forecast crash high</source>
        <translation>Vorhersage Cold Crash, höchstens</translation>
    </message>
    <message>
        <source>forecast crash low</source>
        <translation>Vorhersage Cold Crash, mindestens</translation>
    </message>
    <message>
        <source>forecast high kwh</source>
        <translation>Vorhersage kWh, höchstens</translation>
    </message>
    <message>
        <source>forecast kwh</source>
        <translation>Vorhersage kWh</translation>
    </message>
    <message>
        <source>forecast low kwh</source>
        <translation>Vorhersage kWh, mindestens</translation>
    </message>
    <message>
        <source>forecast room</source>
        <translation>Vorhersage Raum</translation>
    </message>
    <message>
        <source>%1 kWh since %2, %3 W</source>
        <translation>%1 kWh seit %2, %3 W</translation>
    </message>
    <message>
        <source>No round is due</source>
        <translation>Kein Rundgang ist fällig</translation>
    </message>
    <message>
        <source>%1 round, due now</source>
        <translation>Rundgang %1, jetzt fällig</translation>
    </message>
    <message>
        <source>Next round: %1, from %2</source>
        <translation>Nächster Rundgang: %1, ab %2</translation>
    </message>
    <message>
        <source>Next round: %1, tomorrow from %2</source>
        <translation>Nächster Rundgang: %1, morgen ab %2</translation>
    </message>
    <message>
        <source>%1 · %2, %3</source>
        <comment>what is due, a date and the time</comment>
        <translation>%1 · %2, %3</translation>
    </message>
    <message>
        <source>Press Enter on a round to correct it, or to type one that was missed.</source>
        <translation>Eingabe auf einem Rundgang berichtigt ihn oder trägt einen versäumten ein.</translation>
    </message>
    <message>
        <source>Underlined: corrected, with what it was before.</source>
        <translation>Unterstrichen: berichtigt, mit dem früheren Wert.</translation>
    </message>
    <message>
        <source>Open circle: missed.</source>
        <translation>Offener Kreis: versäumt.</translation>
    </message>
    <message>
        <source>last 7 days</source>
        <translation>letzte 7 Tage</translation>
    </message>
    <message>
        <source>Energy of the running batches</source>
        <translation>Energie der laufenden Sude</translation>
    </message>
    <message>
        <source>%1, the last week</source>
        <translation>%1, die letzte Woche</translation>
    </message>
    <message>
        <source>Mean power between the readings of the last 7 days: %1 – %2 W, lately %3 W</source>
        <translation>Mittlere Leistung zwischen den Ständen der letzten 7 Tage: %1 – %2 W, zuletzt %3 W</translation>
    </message>
    <message>
        <source>B dashed · each line a batch</source>
        <translation>B gestrichelt · jede Linie ein Sud</translation>
    </message>
    <message>
        <source>bar: mean of the batches · whisker: 95 % interval · dot: a batch</source>
        <translation>Balken: Mittel der Sude · Strich: 95-%-Intervall · Punkt: ein Sud</translation>
    </message>
    <message>
        <source>bar: the figure · whisker: minimum – maximum</source>
        <translation>Balken: der Wert · Strich: Minimum – Maximum</translation>
    </message>
    <message>
        <source>At a glance</source>
        <translation>Auf einen Blick</translation>
    </message>
    <message numerus="yes">
        <source>%n measures</source>
        <comment>%n measure</comment>
        <translation>
            <numerusform>%n Kenngröße</numerusform>
            <numerusform>%n Kenngrößen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n notes on fairness</source>
        <comment>%n note on fairness</comment>
        <translation>
            <numerusform>%n Notiz zur Fairness</numerusform>
            <numerusform>%n Notizen zur Fairness</numerusform>
        </translation>
    </message>
    <message>
        <source>Details: %1</source>
        <translation>Details: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n batches</source>
        <comment>%n batch</comment>
        <translation>
            <numerusform>%n Sud</numerusform>
            <numerusform>%n Sude</numerusform>
        </translation>
    </message>
    <message>
        <source>How the same weather was computed</source>
        <translation>Wie das gleiche Wetter gerechnet wurde</translation>
    </message>
    <message numerus="yes">
        <source>%n charts</source>
        <comment>%n chart</comment>
        <translation>
            <numerusform>%n Diagramm</numerusform>
            <numerusform>%n Diagramme</numerusform>
        </translation>
    </message>
    <message>
        <source>Energy since pitching</source>
        <translation>Energie seit dem Anstellen</translation>
    </message>
    <message>
        <source>Energy of every batch since pitching</source>
        <translation>Energie jedes Suds seit dem Anstellen</translation>
    </message>
    <message>
        <source>Cumulative energy of every batch of A, %1, and B, %2. %3</source>
        <translation>Aufsummierte Energie jedes Suds von A, %1, und B, %2. %3</translation>
    </message>
    <message>
        <source>Choose the day</source>
        <translation>Tag wählen</translation>
    </message>
    <message>
        <source>%1: choose the day</source>
        <translation>%1: Tag wählen</translation>
    </message>
    <message>
        <source>Choose the day (Alt+Down)</source>
        <translation>Tag wählen (Alt+Pfeil ab)</translation>
    </message>
    <message>
        <source>Arrow keys pan, plus and minus zoom, 0 shows all, Shift and arrows move the pointer, Ctrl and arrows lead it from reading to reading, M marks a span from the pointer on, and M again ends it</source>
        <translation>Pfeiltasten verschieben, Plus und Minus zoomen, 0 zeigt alles, Umschalt und Pfeile bewegen den Zeiger, Strg und Pfeile führen ihn von Messwert zu Messwert, M markiert eine Spanne ab dem Zeiger, M noch einmal beendet sie</translation>
    </message>
    <message>
        <source>Mark a &amp;span</source>
        <translation>&amp;Spanne markieren</translation>
    </message>
    <message>
        <source>Marks a span of time, to leave its readings out or to zoom to it. Shift and drag does the same, or the key M.</source>
        <translation>Markiert eine Zeitspanne, um ihre Messwerte auszulassen oder sie zu vergrößern. Ziehen mit der Umschalttaste tut dasselbe, oder die Taste M.</translation>
    </message>
    <message>
        <source>Drag over a chart, or press M at both ends. Escape cancels.</source>
        <translation>Über ein Diagramm ziehen, oder M an beiden Enden drücken. Esc bricht ab.</translation>
    </message>
    <message>
        <source>&amp;Use as an offset</source>
        <translation>Als &amp;Versatz nehmen</translation>
    </message>
    <message>
        <source>&amp;From now on</source>
        <translation>Ab &amp;jetzt</translation>
    </message>
    <message>
        <source>Also for &amp;earlier readings, since the last check on %1</source>
        <translation>Auch für f&amp;rühere Messwerte, seit der letzten Prüfung am %1</translation>
    </message>
    <message>
        <source>Also for all &amp;earlier readings, since %1</source>
        <translation>Auch für alle f&amp;rüheren Messwerte, seit %1</translation>
    </message>
    <message>
        <source>&amp;Leave out the readings here…</source>
        <translation>Messwerte hier aus&amp;lassen…</translation>
    </message>
    <message>
        <source>&amp;Zoom to it</source>
        <translation>&amp;Darauf zoomen</translation>
    </message>
    <message>
        <source>Two batches or two setups are compared here as soon as there are two.</source>
        <translation>Zwei Sude oder zwei Anlagen werden hier verglichen, sobald es zwei gibt.</translation>
    </message>
    <message>
        <source>Begin a &amp;batch…</source>
        <translation>Sud &amp;beginnen…</translation>
    </message>
    <message>
        <source>A setup is what chills the beer: add yours, then its meter and its sensors.</source>
        <translation>Eine Anlage ist, was das Bier kühlt: Füge deine hinzu, dann ihren Zähler und ihre Sensoren.</translation>
    </message>
    <message>
        <source>Add a &amp;setup…</source>
        <translation>Anlage &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>Make a &amp;plan…</source>
        <translation>&amp;Plan anlegen…</translation>
    </message>
    <message>
        <source>Drop a log anywhere in this window, or choose one: you see a preview before anything is saved.</source>
        <translation>Ein Protokoll irgendwo in diesem Fenster ablegen oder eines wählen: Vor dem Speichern steht eine Vorschau.</translation>
    </message>
    <message>
        <source>A round reads every meter in a minute, twice a day: add the first meter.</source>
        <translation>Ein Rundgang liest zweimal am Tag jeden Zähler in einer Minute ab: Füge den ersten Zähler hinzu.</translation>
    </message>
    <message>
        <source>Add a &amp;meter…</source>
        <translation>Zähler &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>No batch is open: begin one, or click a bar in the lanes to open its run.</source>
        <translation>Kein Sud ist offen: einen beginnen, oder in den Bahnen auf einen Balken klicken.</translation>
    </message>
    <message>
        <source>Drag to move, turn the wheel to zoom, Shift and drag to mark.</source>
        <translation>Ziehen verschiebt, das Mausrad zoomt, Umschalt und Ziehen markiert.</translation>
    </message>
    <message>
        <source>hatched: settling, not judged</source>
        <translation>schraffiert: Einschwingen, nicht beurteilt</translation>
    </message>
    <message>
        <source>numbers: notes in the journal</source>
        <translation>Zahlen: Notizen im Journal</translation>
    </message>
    <message>
        <source>None: a stage is watched for them once its target is reached, and that of %1 was not.</source>
        <translation>Keine: Eine Stufe wird darauf beobachtet, sobald ihr Ziel erreicht ist, und das von %1 wurde es nicht.</translation>
    </message>
    <message>
        <source>&amp;Motion</source>
        <translation>Be&amp;wegung</translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation>&amp;Keine</translation>
    </message>
</context>
</TS>

<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>AxesPanel</name>
    <message numerus="yes">
        <source>%n axis(es)</source>
        <translation>
            <numerusform>%n Achse</numerusform>
            <numerusform>%n Achsen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s)</source>
        <translation>
            <numerusform>%n Hinweis</numerusform>
            <numerusform>%n Hinweise</numerusform>
        </translation>
    </message>
    <message>
        <source>Machine without a name</source>
        <translation>Maschine ohne Namen</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation>nicht berechnet</translation>
    </message>
    <message>
        <source>%1 governs</source>
        <translation>%1 bestimmt</translation>
    </message>
    <message>
        <source>no feed limit known</source>
        <translation>keine Vorschubgrenze bekannt</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>gewünscht %1</translation>
    </message>
    <message>
        <source>Axis %1</source>
        <translation>Achse %1</translation>
    </message>
</context>
<context>
    <name>AxisActions</name>
    <message>
        <source>add axis %1</source>
        <translation>Achse %1 hinzufügen</translation>
    </message>
    <message>
        <source>copy axis %1 as %2</source>
        <translation>Achse %1 als %2 kopieren</translation>
    </message>
    <message>
        <source>remove axis %1</source>
        <translation>Achse %1 entfernen</translation>
    </message>
</context>
<context>
    <name>CLI</name>
    <message>
        <source>Print this help and leave.</source>
        <translation>Diese Hilfe ausgeben und beenden.</translation>
    </message>
    <message>
        <source>Exit codes and examples: feedwright --help.</source>
        <translation>Rückgabewerte und Beispiele: feedwright --help.</translation>
    </message>
    <message>
        <source>Language of the words: %1; English if not given.</source>
        <translation>Sprache der Texte: %1; ohne Angabe Englisch.</translation>
    </message>
</context>
<context>
    <name>Fields</name>
    <message>
        <source>The %1 must be given, such as %2.</source>
        <translation>%1 muss angegeben werden, etwa %2.</translation>
    </message>
    <message>
        <source>The %1 must be %2.</source>
        <translation>%1 muss %2 sein.</translation>
    </message>
    <message>
        <source>= %1</source>
        <comment>what a typed quantity became</comment>
        <translation>= %1</translation>
    </message>
    <message>
        <source>The %1 must be a whole number from %2 to %3.</source>
        <translation>%1 muss eine ganze Zahl von %2 bis %3 sein.</translation>
    </message>
</context>
<context>
    <name>Headless</name>
    <message>
        <source>Print this help and leave.</source>
        <translation>Diese Hilfe ausgeben und beenden.</translation>
    </message>
    <message>
        <source>Print the version and leave.</source>
        <translation>Die Version ausgeben und beenden.</translation>
    </message>
    <message>
        <source>The machine file to read.</source>
        <translation>Die zu lesende Maschinendatei.</translation>
    </message>
    <message>
        <source>Size every axis and print all results.</source>
        <translation>Jede Achse auslegen und alle Ergebnisse ausgeben.</translation>
    </message>
    <message>
        <source>Write the drive-sizing sheet as PDF.</source>
        <translation>Das Auslegungsblatt als PDF schreiben.</translation>
    </message>
    <message>
        <source>The PDF to write.</source>
        <translation>Das zu schreibende PDF.</translation>
    </message>
    <message>
        <source>a4 or letter; a4 if not given.</source>
        <translation>a4 oder letter; ohne Angabe a4.</translation>
    </message>
    <message>
        <source>Append how each figure came about.</source>
        <translation>Den Rechenweg jeder Größe anhängen.</translation>
    </message>
    <message>
        <source>Date on the sheet, YYYY-MM-DD; today if not given.</source>
        <translation>Datum auf dem Blatt, JJJJ-MM-TT; ohne Angabe heute.</translation>
    </message>
    <message>
        <source>Print the JSON Schema of machine files.</source>
        <translation>Das JSON-Schema der Maschinendateien ausgeben.</translation>
    </message>
    <message>
        <source>Write a picture of the window as PNG.</source>
        <translation>Ein Bild des Fensters als PNG schreiben.</translation>
    </message>
    <message>
        <source>The PNG to write.</source>
        <translation>Das zu schreibende PNG.</translation>
    </message>
    <message>
        <source>Width and height; 1280x800 if not given.</source>
        <translation>Breite und Höhe; ohne Angabe 1280x800.</translation>
    </message>
    <message>
        <source>Light on dark.</source>
        <translation>Hell auf dunkel.</translation>
    </message>
    <message>
        <source>Number of the axis to show, from 1.</source>
        <translation>Nummer der anzuzeigenden Achse, ab 1.</translation>
    </message>
    <message>
        <source>Number of the study to show, from 1.</source>
        <translation>Nummer der anzuzeigenden Studie, ab 1.</translation>
    </message>
    <message>
        <source>The paper is a4 or letter, not &quot;%1&quot;.</source>
        <translation>Das Papier ist a4 oder letter, nicht „%1“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date; 2026-05-01 is one.</source>
        <translation>„%1“ ist kein Datum; 2026-05-01 ist eines.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a size; 1280x800 is one.</source>
        <translation>„%1“ ist keine Größe; 1280x800 ist eine.</translation>
    </message>
    <message>
        <source>Axes and studies are numbered from 1; &quot;%1&quot; is not such a number.</source>
        <translation>Achsen und Studien sind ab 1 nummeriert; „%1“ ist keine solche Nummer.</translation>
    </message>
    <message>
        <source>There is no language &quot;%1&quot;; there are: %2.</source>
        <translation>Die Sprache „%1“ gibt es nicht; vorhanden: %2.</translation>
    </message>
    <message>
        <source>Standard output did not take everything; what is there is not complete.</source>
        <translation>Die Standardausgabe hat nicht alles aufgenommen; was dort steht, ist nicht vollständig.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>file: sentence</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The machine has no axis number %1; its axes are numbered from 1 to %2.</source>
        <translation>Die Maschine hat keine Achse Nummer %1; ihre Achsen sind von 1 bis %2 nummeriert.</translation>
    </message>
    <message>
        <source>There is no study number %1; studies are numbered from 1 to %2.</source>
        <translation>Es gibt keine Studie Nummer %1; die Studien sind von 1 bis %2 nummeriert.</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>File: %1 · content %2 · Feedwright %3</source>
        <translation>Datei: %1 · Inhalt %2 · Feedwright %3</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>reads</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>reached</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>governs the feed</source>
        <translation>bestimmt den Vorschub</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>limit: why it is open</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>top feed</source>
        <translation>höchster Vorschub</translation>
    </message>
    <message>
        <source>acceleration, as wanted</source>
        <translation>Beschleunigung, wie gewünscht</translation>
    </message>
    <message>
        <source>acceleration at the wanted feed</source>
        <translation>Beschleunigung beim gewünschten Vorschub</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the commands %2.</source>
        <translation>„%1“ ist keiner der Befehle %2.</translation>
    </message>
    <message>
        <source>Print JSON with stable names, in SI and in the file&apos;s units.</source>
        <translation>JSON mit festen Namen ausgeben, in SI-Einheiten und denen der Datei.</translation>
    </message>
</context>
<context>
    <name>Limits</name>
    <message>
        <source>Limits of feed</source>
        <translation>Grenzen des Vorschubs</translation>
    </message>
    <message>
        <source>Limits of axial force</source>
        <translation>Grenzen der Axialkraft</translation>
    </message>
    <message>
        <source>Other margins</source>
        <translation>Weitere Reserven</translation>
    </message>
    <message>
        <source>allowed ÷ wanted</source>
        <translation>zulässig ÷ gewünscht</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>reached value, why it is not judged</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, wanted ≤ %2</source>
        <translation>%1, gewünscht ≤ %2</translation>
    </message>
    <message>
        <source>%1, wanted %2</source>
        <translation>%1, gewünscht %2</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <comment>limit, verdict, why open</comment>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source> It governs.</source>
        <translation> Sie bestimmt.</translation>
    </message>
    <message>
        <source>%1: %2. Reaches %3; nothing is wanted of it.</source>
        <translation>%1: %2. Erreicht %3; gewünscht ist nichts.</translation>
    </message>
    <message>
        <source>%1: %2. Reaches %3, wanted is %4.</source>
        <translation>%1: %2. Erreicht %3, gewünscht %4.</translation>
    </message>
    <message>
        <source>as wanted</source>
        <translation>wie gewünscht</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>gewünscht %1</translation>
    </message>
</context>
<context>
    <name>Prompts</name>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Discard the changes</source>
        <translation>Änderungen verwerfen</translation>
    </message>
    <message>
        <source>%1 was changed by another program since it was read here. Saving now would lose that change.</source>
        <translation>%1 wurde von einem anderen Programm geändert, seit die Datei hier gelesen wurde. Beim Speichern ginge diese Änderung jetzt verloren.</translation>
    </message>
    <message>
        <source>%1 was written by a newer program. What this one does not know of it is kept as it stands, but may no longer fit your changes.</source>
        <translation>%1 wurde von einem neueren Programm geschrieben. Was dieses Programm davon nicht kennt, bleibt unverändert erhalten, passt aber vielleicht nicht mehr zu den Änderungen.</translation>
    </message>
    <message>
        <source>Overwrite</source>
        <translation>Überschreiben</translation>
    </message>
    <message>
        <source>Save under another name…</source>
        <translation>Unter anderem Namen speichern…</translation>
    </message>
    <message>
        <source>Machines (*.feedwright)</source>
        <translation>Maschinen (*.feedwright)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Open a machine</source>
        <translation>Maschine öffnen</translation>
    </message>
    <message>
        <source>Save the machine as</source>
        <translation>Maschine speichern unter</translation>
    </message>
    <message>
        <source>Sheet as PDF</source>
        <translation>Auslegungsblatt als PDF</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Set-up</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Top feed</source>
        <translation>Höchster Vorschub</translation>
    </message>
    <message>
        <source>Acceleration, as wanted</source>
        <translation>Beschleunigung, wie gewünscht</translation>
    </message>
    <message>
        <source>Acceleration at the wanted feed</source>
        <translation>Beschleunigung beim gewünschten Vorschub</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Reads</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Reached</source>
        <translation>Erreicht</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>Does not apply to this train: %1.</source>
        <translation>Gilt für diesen Antriebsstrang nicht: %1.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Inputs</source>
        <translation>Eingaben</translation>
    </message>
    <message>
        <source>governs the feed</source>
        <translation>bestimmt den Vorschub</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>part: type of part</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Axes</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <source>Supply and controller</source>
        <translation>Netzteil und Steuerung</translation>
    </message>
    <message>
        <source>Parts to buy</source>
        <translation>Zu kaufende Teile</translation>
    </message>
    <message>
        <source>%1, wanted %2</source>
        <translation>%1, gewünscht %2</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <comment>sign and verdict (limit): margin</comment>
        <translation>%1 (%2): %3</translation>
    </message>
    <message>
        <source>Axis</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Vorschub</translation>
    </message>
    <message>
        <source>Feed governed by</source>
        <translation>Vorschub bestimmt durch</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Auflösung</translation>
    </message>
    <message>
        <source>Lost motion</source>
        <translation>Umkehrverlust</translation>
    </message>
    <message>
        <source>Lowest margin</source>
        <translation>Kleinste Reserve</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>%1: drive-sizing sheet</source>
        <translation>%1: Auslegungsblatt</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Auslegungsblatt</translation>
    </message>
    <message>
        <source>There is no sheet while the machine has faults, for nothing is computed from it. Mend the faults first.</source>
        <translation>Solange die Maschine Fehler hat, gibt es kein Auslegungsblatt, denn es wird nichts berechnet. Zuerst die Fehler beheben.</translation>
    </message>
    <message>
        <source>The printer did not take the sheet. Nothing may have been printed.</source>
        <translation>Der Drucker hat das Auslegungsblatt nicht angenommen. Möglicherweise wurde nichts gedruckt.</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Drive-sizing sheet</source>
        <translation>Auslegungsblatt</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Geprüft von</translation>
    </message>
    <message>
        <source>File: not saved yet</source>
        <translation>Datei: noch nicht gespeichert</translation>
    </message>
    <message>
        <source>File: %1</source>
        <translation>Datei: %1</translation>
    </message>
    <message>
        <source>File: %1 · content %2</source>
        <translation>Datei: %1 · Inhalt %2</translation>
    </message>
    <message>
        <source>Feedwright %1 · %2</source>
        <translation>Feedwright %1 · %2</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>Synchronous belt</source>
        <translation>Zahnriemen</translation>
    </message>
    <message>
        <source>Belt pulley</source>
        <translation>Riemenscheibe</translation>
    </message>
    <message>
        <source>Screw with nut</source>
        <translation>Spindel mit Mutter</translation>
    </message>
    <message>
        <source>Fixed end bearing</source>
        <translation>Festlager</translation>
    </message>
    <message>
        <source>Supporting end bearing</source>
        <translation>Loslager</translation>
    </message>
    <message>
        <source>Guide block</source>
        <translation>Führungswagen</translation>
    </message>
    <message>
        <source>Holding brake</source>
        <translation>Haltebremse</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Netzteil</translation>
    </message>
    <message>
        <source>%1 teeth</source>
        <translation>%1 Zähne</translation>
    </message>
    <message>
        <source>%1 belt teeth</source>
        <translation>%1 Riemenzähne</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a figure, figure with unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>for a screw of %1</source>
        <translation>für eine Spindel von %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>over 1000</source>
        <translation>über 1000</translation>
    </message>
    <message>
        <source>Margin: what is allowed over what is wanted. %1 from 1.2 up, %2 from 1, %3 below 1; %4: a target or an input is missing.</source>
        <translation>Reserve: Zulässiges geteilt durch Gewünschtes. %1 ab 1,2, %2 ab 1, %3 unter 1; %4: ein Ziel oder eine Eingabe fehlt.</translation>
    </message>
    <message>
        <source>These figures help to choose parts; they are not an approval. Machines crush and cut: follow the local rules and ask competent help where safety is at stake.</source>
        <translation>Diese Werte helfen bei der Auswahl von Teilen; sie sind keine Freigabe. Maschinen quetschen und schneiden: die örtlichen Vorschriften befolgen und fachkundige Hilfe holen, wo es um die Sicherheit geht.</translation>
    </message>
    <message>
        <source>%1 · working</source>
        <translation>%1 · Rechenweg</translation>
    </message>
    <message>
        <source>source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>field, origin of its value</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>symbol: what it is</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Axial force</source>
        <translation>Axialkraft</translation>
    </message>
    <message>
        <source>Axial force governed by</source>
        <translation>Axialkraft bestimmt durch</translation>
    </message>
</context>
<context>
    <name>Studies</name>
    <message>
        <source>Point at the plot, or press the arrow keys, to read it off. The wheel zooms, a double click resets, Ctrl+C copies picture and numbers.</source>
        <translation>Zum Ablesen auf das Diagramm zeigen oder die Pfeiltasten drücken. Das Mausrad vergrößert, ein Doppelklick setzt zurück, Strg+C kopiert Bild und Zahlen.</translation>
    </message>
    <message>
        <source>cutting thrust</source>
        <translation>Vorschubkraft</translation>
    </message>
    <message>
        <source>the motor can push</source>
        <translation>vom Motor aufbringbar</translation>
    </message>
    <message>
        <source>At %1 the motor can cut with %2.%3</source>
        <translation>Bei %1 kann der Motor mit %2 schneiden.%3</translation>
    </message>
    <message>
        <source>Cutting thrust against feed; give a cutting feed to read it off.</source>
        <translation>Vorschubkraft über dem Vorschub; zum Ablesen einen Schnittvorschub angeben.</translation>
    </message>
    <message>
        <source>acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>the motor can reach</source>
        <translation>vom Motor erreichbar</translation>
    </message>
    <message>
        <source>At %1 the motor can accelerate with %2.%3</source>
        <translation>Bei %1 kann der Motor mit %2 beschleunigen.%3</translation>
    </message>
    <message>
        <source>Acceleration against feed; give a feed to read it off.</source>
        <translation>Beschleunigung über dem Vorschub; zum Ablesen einen Vorschub angeben.</translation>
    </message>
    <message>
        <source>length between bearings</source>
        <translation>Lagerabstand</translation>
    </message>
    <message>
        <source>motor speed</source>
        <translation>Motordrehzahl</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>short-time</source>
        <translation>kurzzeitig</translation>
    </message>
    <message>
        <source>pull-out</source>
        <translation>Grenzmoment</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>nutzbar</translation>
    </message>
    <message>
        <source>Motor torque against speed; give a feed and an acceleration to see the need.</source>
        <translation>Motordrehmoment über der Drehzahl; Vorschub und Beschleunigung angeben, um den Bedarf zu sehen.</translation>
    </message>
    <message>
        <source>needed %1 at %2</source>
        <translation>nötig %1 bei %2</translation>
    </message>
    <message>
        <source>At the wanted feed, %1, the motor needs %2 of its usable %3.</source>
        <translation>Beim gewünschten Vorschub, %1, braucht der Motor %2 von nutzbaren %3.</translation>
    </message>
    <message>
        <source>At the wanted feed, %1, the motor needs %2; its curve ends before.</source>
        <translation>Beim gewünschten Vorschub, %1, braucht der Motor %2; seine Kennlinie endet vorher.</translation>
    </message>
    <message>
        <source> Wanted is %1.</source>
        <translation> Gewünscht: %1.</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>Vorschub</translation>
    </message>
    <message>
        <source>wanted %1 at %2</source>
        <translation>gewünscht %1 bei %2</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>supports at the two ends of a screw</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>as it is, %1</source>
        <translation>wie vorhanden, %1</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>gewünscht %1</translation>
    </message>
    <message>
        <source>longest at %1: %2</source>
        <translation>größte Länge bei %1: %2</translation>
    </message>
    <message>
        <source>At %1 between bearings whip allows %2.</source>
        <translation>Bei %1 Lagerabstand sind %2 zulässig.</translation>
    </message>
    <message>
        <source>These end supports do not hold the screw.</source>
        <translation>Diese Endlagerung hält die Spindel nicht.</translation>
    </message>
    <message>
        <source>The longest for %1 is %2.</source>
        <translation>Die größte Länge für %1 ist %2.</translation>
    </message>
    <message>
        <source>No length that holds the travel allows %1.</source>
        <translation>Keine Länge, die für den Verfahrweg reicht, lässt %1 zu.</translation>
    </message>
    <message>
        <source>Thrust</source>
        <translation>Vorschubkraft</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Stretch</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Motor torque</source>
        <translation>Motordrehmoment</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what an axis shows, its unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>allowed feed</source>
        <translation>zul. Vorschub</translation>
    </message>
</context>
<context>
    <name>Train</name>
    <message>
        <source>1 : %1</source>
        <translation>1 : %1</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1 : 1</translation>
    </message>
    <message>
        <source>%1, screw %2 times as thick</source>
        <translation>%1, Spindel %2-mal so dick</translation>
    </message>
    <message>
        <source>Ø %1 × %2, core %3</source>
        <comment>nominal diameter × lead, core diameter</comment>
        <translation>Ø %1 × %2, Kern %3</translation>
    </message>
    <message>
        <source>%1 between bearings</source>
        <translation>%1 Lagerabstand</translation>
    </message>
    <message>
        <source>travel %1</source>
        <translation>Verfahrweg %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>axis letter, axis name</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>motor, size %1</source>
        <translation>Motor, Größe %1</translation>
    </message>
    <message>
        <source>coupling</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>%1 : %2 teeth</source>
        <comment>teeth of the motor&apos;s pulley : of the screw&apos;s pulley</comment>
        <translation>%1 : %2 Zähne</translation>
    </message>
    <message>
        <source>belt %1, %2, %3 teeth</source>
        <comment>profile, width, number of teeth</comment>
        <translation>Riemen %1, %2, %3 Zähne</translation>
    </message>
    <message>
        <source>μ %1</source>
        <comment>coefficient of friction of the guides</comment>
        <translation>μ %1</translation>
    </message>
    <message>
        <source>cuts with %1</source>
        <translation>schneidet mit %1</translation>
    </message>
    <message>
        <source>no cutting force given</source>
        <translation>keine Schnittkraft angegeben</translation>
    </message>
    <message>
        <source>gravity %1</source>
        <translation>Schwerkraft %1</translation>
    </message>
    <message>
        <source>gravity</source>
        <translation>Schwerkraft</translation>
    </message>
    <message>
        <source>axis inclined %1, drawn lying</source>
        <translation>Achse um %1 geneigt, liegend gezeichnet</translation>
    </message>
    <message>
        <source>%1 (inclined %2, drawn lying)</source>
        <comment>axis, angle</comment>
        <translation>%1 (um %2 geneigt, liegend gezeichnet)</translation>
    </message>
    <message>
        <source>supply %1</source>
        <translation>Netzteil %1</translation>
    </message>
    <message>
        <source>controller</source>
        <translation>Steuerung</translation>
    </message>
    <message>
        <source>steps ≤ %1</source>
        <translation>Schritte ≤ %1</translation>
    </message>
    <message>
        <source>whips at %1 · allowed %2</source>
        <translation>schwingt bei %1 · zulässig %2</translation>
    </message>
    <message>
        <source>%1 %2 governs</source>
        <comment>sign, name of a limit</comment>
        <translation>%1 %2 bestimmt</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1: %2</source>
        <comment>path, sentence</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <comment>line number, sentence</comment>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>Line %1, %2: %3</source>
        <comment>line number, path, sentence</comment>
        <translation>Zeile %1, %2: %3</translation>
    </message>
    <message>
        <source>an object { }</source>
        <translation>ein Objekt { }</translation>
    </message>
    <message>
        <source>a list [ ]</source>
        <translation>eine Liste [ ]</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <translation>ein Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>a bare number</source>
        <translation>eine bloße Zahl</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>null</source>
        <translation>null</translation>
    </message>
    <message>
        <source>more than zero</source>
        <translation>mehr als null</translation>
    </message>
    <message>
        <source>zero or more</source>
        <translation>null oder mehr</translation>
    </message>
    <message>
        <source>from zero to one</source>
        <translation>von null bis eins</translation>
    </message>
    <message>
        <source>more than zero and at most one</source>
        <translation>mehr als null und höchstens eins</translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation>eine endliche Zahl</translation>
    </message>
    <message>
        <source>%1 found; wanted is a whole number from %2 to %3.</source>
        <translation>%1 gefunden; erwartet wird eine ganze Zahl von %2 bis %3.</translation>
    </message>
    <message>
        <source>%1 found; wanted is %2, such as %3.</source>
        <translation>%1 gefunden; erwartet wird %2, etwa %3.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; found; wanted is one of %2.</source>
        <translation>„%1“ gefunden; erlaubt ist nur eines von: %2.</translation>
    </message>
    <message>
        <source>This cannot be read.</source>
        <translation>Das lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>This is not JSON.</source>
        <translation>Das ist kein JSON.</translation>
    </message>
    <message>
        <source>This is JSON, but no machine of this program: it wants a member &quot;format&quot; with the name &quot;feedwright machine&quot;.</source>
        <translation>Das ist JSON, aber keine Maschine dieses Programms: Nötig ist ein Eintrag „format“ mit dem Namen „feedwright machine“.</translation>
    </message>
    <message>
        <source>The file was written by a newer program, in format %1, which this one does not understand. It is not touched.</source>
        <translation>Die Datei stammt von einem neueren Programm, im Format %1, das dieses hier nicht versteht. Sie bleibt unangetastet.</translation>
    </message>
    <message>
        <source>This member is missing; it must be given.</source>
        <translation>Dieser Eintrag fehlt; er muss angegeben werden.</translation>
    </message>
    <message>
        <source>%1 found; wanted is %2.</source>
        <translation>%1 gefunden; erwartet wird %2.</translation>
    </message>
    <message>
        <source>%1 axes found; at most %2 are read.</source>
        <translation>%1 Achsen gefunden; höchstens %2 werden gelesen.</translation>
    </message>
    <message>
        <source>These end supports leave the screw loose; fix at least one end, or support both.</source>
        <translation>Mit diesen Enden ist die Spindel nicht gehalten; mindestens ein Ende fest lagern oder beide stützen.</translation>
    </message>
    <message>
        <source>The core diameter must be smaller than the nominal diameter.</source>
        <translation>Der Kerndurchmesser muss kleiner sein als der Nenndurchmesser.</translation>
    </message>
    <message>
        <source>The travel must be shorter than the screw&apos;s length between bearings.</source>
        <translation>Der Verfahrweg muss kürzer sein als der Lagerabstand der Spindel.</translation>
    </message>
    <message>
        <source>From its start the nut would travel past the bearings; start earlier or make the screw longer.</source>
        <translation>Von ihrem Anfang aus würde die Mutter über die Lager hinausfahren; früher beginnen oder die Spindel verlängern.</translation>
    </message>
    <message>
        <source>The torque curve needs at least two points.</source>
        <translation>Die Drehmomentkennlinie braucht mindestens zwei Punkte.</translation>
    </message>
    <message>
        <source>The speeds of the torque curve must rise from point to point.</source>
        <translation>Die Drehzahlen der Drehmomentkennlinie müssen von Punkt zu Punkt steigen.</translation>
    </message>
    <message>
        <source>Speeds and torques of the torque curve must not be below zero.</source>
        <translation>Drehzahlen und Momente der Drehmomentkennlinie dürfen nicht unter null liegen.</translation>
    </message>
    <message>
        <source>The belt is too short to go round both pulleys; use more belt teeth or smaller pulleys.</source>
        <translation>Der Riemen ist zu kurz für beide Scheiben; mehr Riemenzähne oder kleinere Scheiben nehmen.</translation>
    </message>
    <message>
        <source>The belt is so long that no sensible centre distance fits it; check its teeth.</source>
        <translation>Der Riemen ist so lang, dass kein sinnvoller Achsabstand passt; seine Zähnezahl prüfen.</translation>
    </message>
    <message>
        <source>The servo&apos;s top speed must not be below its rated speed.</source>
        <translation>Die Höchstdrehzahl des Servomotors darf nicht unter seiner Nenndrehzahl liegen.</translation>
    </message>
    <message>
        <source>The machine has no axis; it needs at least one.</source>
        <translation>Die Maschine hat keine Achse; mindestens eine ist nötig.</translation>
    </message>
    <message>
        <source>Another axis has the same letter; each needs its own.</source>
        <translation>Eine andere Achse hat denselben Buchstaben; jede braucht einen eigenen.</translation>
    </message>
    <message>
        <source>With this much friction the thread cannot be driven at all; check the friction and the lead.</source>
        <translation>Bei so viel Reibung lässt sich das Gewinde gar nicht antreiben; Reibung und Steigung prüfen.</translation>
    </message>
    <message>
        <source>This cannot be used.</source>
        <translation>Das ist nicht verwendbar.</translation>
    </message>
    <message>
        <source>The file is too large to be a machine.</source>
        <translation>Die Datei ist zu groß für eine Maschine.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <source>The byte %1 is no text in UTF-8; save the file in that encoding.</source>
        <translation>Das Byte %1 ist kein Text in UTF-8; die Datei in dieser Kodierung speichern.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not belong here in JSON.</source>
        <translation>„%1“ gehört in JSON nicht hierher.</translation>
    </message>
    <message>
        <source>The text ends too early; a bracket or quotation mark is still open.</source>
        <translation>Der Text endet zu früh; eine Klammer oder ein Anführungszeichen ist noch offen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; follows after the end of the machine.</source>
        <translation>Nach dem Ende der Maschine folgt noch „%1“.</translation>
    </message>
    <message>
        <source>Brackets are nested too deeply to be a machine.</source>
        <translation>Die Klammern sind für eine Maschine zu tief verschachtelt.</translation>
    </message>
    <message>
        <source>There are too many values to be a machine.</source>
        <translation>Das sind zu viele Werte für eine Maschine.</translation>
    </message>
    <message>
        <source>A text or number here is too long to be read.</source>
        <translation>Ein Text oder eine Zahl ist hier zu lang zum Lesen.</translation>
    </message>
    <message>
        <source>%1 is too large or too small a number.</source>
        <translation>%1 ist eine zu große oder zu kleine Zahl.</translation>
    </message>
    <message>
        <source>The member &quot;%1&quot; stands here a second time.</source>
        <translation>Der Eintrag „%1“ steht hier ein zweites Mal.</translation>
    </message>
    <message>
        <source>Nothing is written here; %1 is %2, such as %3.</source>
        <translation>Hier steht nichts; gefragt ist %2 wie %3 (%1).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; %2 is %3, such as %4.</source>
        <translation>„%1“ ist keine Zahl; gefragt ist %3 wie %4 (%2).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has two decimal marks; a number has one, point or comma, and digits are not grouped.</source>
        <translation>„%1“ hat zwei Dezimalzeichen; eine Zahl hat nur eines, Punkt oder Komma, und Ziffern werden nicht gruppiert.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a gap in its digits; write them together.</source>
        <translation>„%1“ hat eine Lücke zwischen den Ziffern; sie zusammenschreiben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit known here; %2 is %3, such as %4.</source>
        <translation>„%1“ ist keine hier bekannte Einheit; gefragt ist %3 wie %4 (%2).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is %2; %3 is %4, such as %5.</source>
        <translation>„%1“ ist %2; gefragt ist %4 wie %5 (%3).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit; %2 is %3, such as %4.</source>
        <translation>„%1“ hat keine Einheit; gefragt ist %3 wie %4 (%2).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit, while other terms of the sum have one.</source>
        <translation>„%1“ hat keine Einheit, andere Glieder der Summe haben aber eine.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; multiplies or divides units; give one value with its unit.</source>
        <translation>„%1“ multipliziert oder teilt Einheiten; einen einzigen Wert mit seiner Einheit angeben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; divides by zero.</source>
        <translation>„%1“ teilt durch null.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too large or too small a number.</source>
        <translation>„%1“ ist eine zu große oder zu kleine Zahl.</translation>
    </message>
    <message>
        <source>A bracket at &quot;%1&quot; has no partner.</source>
        <translation>Eine Klammer bei „%1“ hat kein Gegenstück.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not belong here; %2 is %3, such as %4.</source>
        <translation>„%1“ gehört nicht hierher; gefragt ist %3 wie %4 (%2).</translation>
    </message>
    <message>
        <source>%1: there is no such file or folder.</source>
        <translation>%1: Eine solche Datei oder einen solchen Ordner gibt es nicht.</translation>
    </message>
    <message>
        <source>%1: the system does not permit it.</source>
        <translation>%1: Das System erlaubt es nicht.</translation>
    </message>
    <message>
        <source>%1: the file may be read only.</source>
        <translation>%1: Die Datei darf nur gelesen werden.</translation>
    </message>
    <message>
        <source>%1: the medium may be read only.</source>
        <translation>%1: Der Datenträger darf nur gelesen werden.</translation>
    </message>
    <message>
        <source>%1: there is no room left; nothing was changed.</source>
        <translation>%1: Es ist kein Platz mehr frei; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1: the file is larger than what is allowed.</source>
        <translation>%1: Die Datei ist größer als erlaubt.</translation>
    </message>
    <message>
        <source>%1: that is a folder, not a file.</source>
        <translation>%1: Das ist ein Ordner, keine Datei.</translation>
    </message>
    <message>
        <source>%1: that is no ordinary file.</source>
        <translation>%1: Das ist keine gewöhnliche Datei.</translation>
    </message>
    <message>
        <source>%1: its links lead round in a circle.</source>
        <translation>%1: Die Verknüpfungen führen im Kreis.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be the name of a file.</source>
        <translation>„%1“ kann kein Dateiname sein.</translation>
    </message>
    <message>
        <source>%1: the name is too long.</source>
        <translation>%1: Der Name ist zu lang.</translation>
    </message>
    <message>
        <source>%1: the file changed while it was being read; try again.</source>
        <translation>%1: Die Datei hat sich beim Lesen geändert; noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1: what was written does not read back the same; the medium may be failing.</source>
        <translation>%1: Das Geschriebene liest sich anders zurück; der Datenträger ist womöglich schadhaft.</translation>
    </message>
    <message>
        <source>%1: the file is written, but may be lost if the power fails now.</source>
        <translation>%1: Die Datei ist geschrieben, kann aber verloren gehen, wenn jetzt der Strom ausfällt.</translation>
    </message>
    <message>
        <source>%1: the system has run out of memory or handles.</source>
        <translation>%1: Dem System fehlen Speicher oder Dateikennungen.</translation>
    </message>
    <message>
        <source>%1: the system could not read or write it.</source>
        <translation>%1: Das System konnte nicht lesen oder schreiben.</translation>
    </message>
    <message>
        <source>%1 (System error %2.)</source>
        <translation>%1 (Systemfehler %2.)</translation>
    </message>
    <message>
        <source>The axis can fall when the power goes: gravity puts %1 on the motor, which resists with %2 unpowered. Hands and heads below it are in danger. Fit a brake or a counterbalance, keep to your local rules, and ask somebody qualified.</source>
        <translation>Die Achse kann bei Stromausfall herabfallen: Die Schwerkraft belastet den Motor mit %1, stromlos hält er %2 dagegen. Hände und Köpfe darunter sind in Gefahr. Eine Haltebremse oder einen Gewichtsausgleich einbauen, die örtlichen Vorschriften einhalten und eine fachkundige Person fragen.</translation>
    </message>
    <message>
        <source>By these figures the thread does not drive back, but vibration, grease and wear can still let the axis creep down. Do not trust it with hands below; keep to your local rules.</source>
        <translation>Nach diesen Werten treibt das Gewinde nicht zurück, doch Vibration, Fett und Verschleiß können die Achse trotzdem absinken lassen. Nicht darauf vertrauen, solange Hände darunter sind; die örtlichen Vorschriften einhalten.</translation>
    </message>
    <message>
        <source>The wanted feed turns the screw at %1, past the allowed %2 and near the speed at which it whips. A whipping screw bends, breaks loose and hits: guard it, and do not try it out.</source>
        <translation>Der gewünschte Vorschub dreht die Spindel mit %1, über den erlaubten %2 und nahe der Drehzahl, bei der sie schwingt. Eine schwingende Spindel verbiegt sich, reißt los und schlägt um sich: abdecken und nicht ausprobieren.</translation>
    </message>
    <message>
        <source>The wanted feed turns the screw at %1, at or past its first critical speed of %2. It would whip: bend, break loose and hit. Change the drive before turning it that fast.</source>
        <translation>Der gewünschte Vorschub dreht die Spindel mit %1, an oder über ihrer ersten kritischen Drehzahl von %2. Sie würde schwingen: sich verbiegen, losreißen und um sich schlagen. Den Antrieb ändern, bevor sie so schnell gedreht wird.</translation>
    </message>
    <message>
        <source>The motor would stall from rest: accelerating needs %1, usable are %2.</source>
        <translation>Der Motor würde aus dem Stand stehen bleiben: Beschleunigen braucht %1, nutzbar sind %2.</translation>
    </message>
    <message>
        <source>The wanted feed turns the motor at %1; its torque is known only up to %2.</source>
        <translation>Der gewünschte Vorschub dreht den Motor mit %1; sein Moment ist nur bis %2 bekannt.</translation>
    </message>
    <message>
        <source>The torque curve was taken at %1, the supply gives %2. At less voltage the torque falls earlier; find the curve for yours.</source>
        <translation>Die Drehmomentkennlinie gilt für %1, das Netzteil liefert %2. Bei weniger Spannung fällt das Moment früher; die Kennlinie für die eigene Spannung suchen.</translation>
    </message>
    <message>
        <source>Only %1 teeth of the smaller pulley are in mesh; under %2 the belt carries less and may jump. Use a larger pulley or a longer belt.</source>
        <translation>Nur %1 Zähne der kleineren Scheibe greifen ein; unter %2 trägt der Riemen weniger und kann überspringen. Eine größere Scheibe oder einen längeren Riemen nehmen.</translation>
    </message>
    <message>
        <source>%1 of turning screw lie between the bearings: cover it, for it winds up sleeves, hair and cables.</source>
        <translation>Zwischen den Lagern dreht sich die Spindel auf %1 Länge: abdecken, denn sie wickelt Ärmel, Haare und Kabel auf.</translation>
    </message>
    <message>
        <source>At rest gravity asks %1 of the motor, more than the %2 it may be asked to hold: the axis can slip even with the power on.</source>
        <translation>Im Stillstand verlangt die Schwerkraft %1 vom Motor, mehr als die %2, die er halten darf: Die Achse kann auch mit Strom abrutschen.</translation>
    </message>
    <message>
        <source>The figures of this part are typical, not your supplier&apos;s. Put in those of the data sheet before you buy.</source>
        <translation>Die Werte dieses Teils sind typisch, nicht die des Lieferanten. Vor dem Kauf die des Datenblatts einsetzen.</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Netzteil</translation>
    </message>
    <message>
        <source>Controller</source>
        <translation>Steuerung</translation>
    </message>
    <message>
        <source>Axis</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Ziele</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>Schlitten</translation>
    </message>
    <message>
        <source>Guides</source>
        <translation>Führungen</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Transmission</source>
        <translation>Übertragung</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <source>Stepper, by torque curve</source>
        <translation>Schrittmotor (Kennlinie)</translation>
    </message>
    <message>
        <source>Stepper, by ratings</source>
        <translation>Schrittmotor (Nennwerte)</translation>
    </message>
    <message>
        <source>Servo motor</source>
        <translation>Servomotor</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>Belt and two pulleys</source>
        <translation>Riemen und zwei Scheiben</translation>
    </message>
    <message>
        <source>ball screw</source>
        <translation>Kugelgewinde</translation>
    </message>
    <message>
        <source>trapezoidal screw</source>
        <translation>Trapezgewinde</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>supported</source>
        <translation>gestützt</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>nut to bearing</source>
        <translation>Mutter bis Lager</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>Spitzenwert</translation>
    </message>
    <message>
        <source>effective (rms)</source>
        <translation>Effektivwert (rms)</translation>
    </message>
    <message>
        <source>supply voltage</source>
        <translation>Netzteilspannung</translation>
    </message>
    <message>
        <source>Voltage of the motor supply. A stepper keeps its torque to higher speeds with more; stay within what drive and motor allow.</source>
        <translation>Spannung des Motornetzteils. Mit mehr hält ein Schrittmotor sein Moment bis zu höheren Drehzahlen; innerhalb dessen bleiben, was Endstufe und Motor erlauben.</translation>
    </message>
    <message>
        <source>step rate limit</source>
        <translation>Grenze Schrittfrequenz</translation>
    </message>
    <message>
        <source>Most steps a second the controller can send. More microsteps use it up sooner.</source>
        <translation>Meiste Schritte je Sekunde, die die Steuerung senden kann. Mehr Mikroschritte brauchen sie schneller auf.</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>Buchstabe</translation>
    </message>
    <message>
        <source>The axis&apos; letter in programs, such as X.</source>
        <translation>Buchstabe der Achse in Programmen, etwa X.</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What moves, in your words; printed on the sheet.</source>
        <translation>Was sich bewegt, in eigenen Worten; steht auf dem Auslegungsblatt.</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>Verfahrweg</translation>
    </message>
    <message>
        <source>How far the carriage goes from end to end.</source>
        <translation>Wie weit der Schlitten von Ende zu Ende fährt.</translation>
    </message>
    <message>
        <source>incline</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>Angle to the horizontal: 0° lies flat, 90° stands upright, where gravity works against the motor.</source>
        <translation>Winkel zur Waagerechten: 0° liegt flach, 90° steht senkrecht, wo die Schwerkraft gegen den Motor wirkt.</translation>
    </message>
    <message>
        <source>nut at start of travel</source>
        <translation>Mutter am Weganfang</translation>
    </message>
    <message>
        <source>From the motor-end bearing to the nut at the start of travel. Left open, the travel lies in the middle of the screw.</source>
        <translation>Vom Lager der Motorseite bis zur Mutter am Anfang des Verfahrwegs. Bleibt es offen, liegt der Verfahrweg in der Mitte der Spindel.</translation>
    </message>
    <message>
        <source>wanted feed</source>
        <translation>gewünschter Vorschub</translation>
    </message>
    <message>
        <source>Fastest feed the axis should reach, not cutting.</source>
        <translation>Schnellster Vorschub, den die Achse ohne Schnitt erreichen soll.</translation>
    </message>
    <message>
        <source>wanted acceleration</source>
        <translation>gewünschte Beschleunigung</translation>
    </message>
    <message>
        <source>Acceleration the axis should still have at the wanted feed.</source>
        <translation>Beschleunigung, die die Achse beim gewünschten Vorschub noch haben soll.</translation>
    </message>
    <message>
        <source>cutting feed</source>
        <translation>Vorschub beim Schnitt</translation>
    </message>
    <message>
        <source>Feed at which the cutting thrust is asked for.</source>
        <translation>Vorschub, bei dem die Vorschubkraft gefordert ist.</translation>
    </message>
    <message>
        <source>cutting thrust</source>
        <translation>Vorschubkraft</translation>
    </message>
    <message>
        <source>Force the tool asks of the axis along its travel.</source>
        <translation>Kraft, die das Werkzeug der Achse entlang ihres Wegs abverlangt.</translation>
    </message>
    <message>
        <source>wanted resolution</source>
        <translation>gewünschte Auflösung</translation>
    </message>
    <message>
        <source>Longest travel one command step may make.</source>
        <translation>Längster Weg, den ein Befehlsschritt machen darf.</translation>
    </message>
    <message>
        <source>allowed lost motion</source>
        <translation>erlaubter Umkehrverlust</translation>
    </message>
    <message>
        <source>Most that may be lost when the direction changes.</source>
        <translation>Höchstens so viel darf beim Richtungswechsel verloren gehen.</translation>
    </message>
    <message>
        <source>inertia match up to</source>
        <translation>Trägheitsverhältnis bis</translation>
    </message>
    <message>
        <source>Most the load&apos;s inertia may be as a multiple of the rotor&apos;s. Ten is common practice for steppers.</source>
        <translation>Höchstes Vielfaches der Rotorträgheit für die Lastträgheit. Zehn ist bei Schrittmotoren üblich.</translation>
    </message>
    <message>
        <source>moving mass</source>
        <translation>bewegte Masse</translation>
    </message>
    <message>
        <source>Everything that travels with this axis, the other axes on it too.</source>
        <translation>Alles, was mit dieser Achse fährt, auch die Achsen, die sie trägt.</translation>
    </message>
    <message>
        <source>counterbalance</source>
        <translation>Gewichtsausgleich</translation>
    </message>
    <message>
        <source>Upward pull of a spring, weight or gas strut along the axis.</source>
        <translation>Zug nach oben durch Feder, Gewicht oder Gasfeder, entlang der Achse.</translation>
    </message>
    <message>
        <source>holding brake</source>
        <translation>Haltebremse</translation>
    </message>
    <message>
        <source>A brake that closes when the power goes.</source>
        <translation>Eine Bremse, die bei Stromausfall schließt.</translation>
    </message>
    <message>
        <source>guide friction</source>
        <translation>Führungsreibung</translation>
    </message>
    <message>
        <source>Friction coefficient of the guides: about 0.005 for rolling blocks, 0.1 for sliding ways.</source>
        <translation>Reibungszahl der Führungen: etwa 0,005 bei Wälzführungswagen, 0,1 bei Gleitführungen.</translation>
    </message>
    <message>
        <source>guide blocks</source>
        <translation>Führungswagen</translation>
    </message>
    <message>
        <source>Number of blocks or bushings; each drags with its seals.</source>
        <translation>Anzahl der Wagen oder Buchsen; jeder bremst mit seinen Dichtungen.</translation>
    </message>
    <message>
        <source>seal drag of a block</source>
        <translation>Dichtungsreibung je Wagen</translation>
    </message>
    <message>
        <source>Force the seals of one block cost at any load.</source>
        <translation>Kraft, die die Dichtungen eines Wagens bei jeder Last kosten.</translation>
    </message>
    <message>
        <source>drag of covers and cables</source>
        <translation>Abdeckungen und Kabel</translation>
    </message>
    <message>
        <source>Force that bellows, wipers and cable chains cost.</source>
        <translation>Kraft, die Faltenbälge, Abstreifer und Energieketten kosten.</translation>
    </message>
    <message>
        <source>guide speed limit</source>
        <translation>Geschwindigkeit Führung</translation>
    </message>
    <message>
        <source>Fastest travel the guides&apos; maker allows.</source>
        <translation>Schnellste Fahrt, die der Hersteller der Führungen erlaubt.</translation>
    </message>
    <message>
        <source>frame size</source>
        <translation>Flanschgröße</translation>
    </message>
    <message>
        <source>Size of the flange, such as NEMA 23; for the parts to buy.</source>
        <translation>Baugröße des Flanschs, etwa NEMA 23; für die Kaufteile.</translation>
    </message>
    <message>
        <source>torque curve</source>
        <translation>Drehmomentkennlinie</translation>
    </message>
    <message>
        <source>Pull-out torque at rising speeds, from the data sheet&apos;s curve at your supply voltage.</source>
        <translation>Grenzmoment bei steigenden Drehzahlen, aus der Kennlinie im Datenblatt für die eigene Netzteilspannung.</translation>
    </message>
    <message>
        <source>voltage of the curve</source>
        <translation>Spannung der Kennlinie</translation>
    </message>
    <message>
        <source>Supply voltage at which the torque curve was taken.</source>
        <translation>Netzteilspannung, für die die Drehmomentkennlinie gilt.</translation>
    </message>
    <message>
        <source>rotor inertia</source>
        <translation>Rotorträgheit</translation>
    </message>
    <message>
        <source>Moment of inertia of the rotor, from the data sheet.</source>
        <translation>Trägheitsmoment des Rotors, aus dem Datenblatt.</translation>
    </message>
    <message>
        <source>holding torque</source>
        <translation>Haltemoment</translation>
    </message>
    <message>
        <source>Torque at rest with both phases at rated current.</source>
        <translation>Moment im Stillstand, beide Stränge mit Nennstrom.</translation>
    </message>
    <message>
        <source>detent torque</source>
        <translation>Rastmoment</translation>
    </message>
    <message>
        <source>What the motor resists unpowered; it helps to keep an axis up.</source>
        <translation>Was der Motor stromlos entgegensetzt; es hilft, eine Achse oben zu halten.</translation>
    </message>
    <message>
        <source>step angle</source>
        <translation>Schrittwinkel</translation>
    </message>
    <message>
        <source>Turn of one full step: 1.8° is 200 steps a turn.</source>
        <translation>Drehung eines Vollschritts: 1,8° sind 200 Schritte je Umdrehung.</translation>
    </message>
    <message>
        <source>microsteps</source>
        <translation>Mikroschritte</translation>
    </message>
    <message>
        <source>Command steps the drive makes of one full step.</source>
        <translation>Befehlsschritte, die die Endstufe aus einem Vollschritt macht.</translation>
    </message>
    <message>
        <source>usable share of torque</source>
        <translation>nutzbarer Momentanteil</translation>
    </message>
    <message>
        <source>How much of the torque curve you trust; the rest is reserve against stalling.</source>
        <translation>Welchem Anteil der Drehmomentkennlinie vertraut wird; der Rest ist Reserve gegen Stehenbleiben.</translation>
    </message>
    <message>
        <source>rated current</source>
        <translation>Nennstrom</translation>
    </message>
    <message>
        <source>Effective current of a phase at which the holding torque is given.</source>
        <translation>Effektivstrom eines Strangs, bei dem das Haltemoment angegeben ist.</translation>
    </message>
    <message>
        <source>phase resistance</source>
        <translation>Strangwiderstand</translation>
    </message>
    <message>
        <source>Resistance of one phase.</source>
        <translation>Widerstand eines Strangs.</translation>
    </message>
    <message>
        <source>phase inductance</source>
        <translation>Stranginduktivität</translation>
    </message>
    <message>
        <source>Inductance of one phase; a lower one keeps torque to higher speeds.</source>
        <translation>Induktivität eines Strangs; eine kleinere hält das Moment bis zu höheren Drehzahlen.</translation>
    </message>
    <message>
        <source>drive current</source>
        <translation>Strom der Endstufe</translation>
    </message>
    <message>
        <source>Current the drive is set to.</source>
        <translation>Strom, auf den die Endstufe eingestellt ist.</translation>
    </message>
    <message>
        <source>drive current is</source>
        <translation>Angabe des Stroms</translation>
    </message>
    <message>
        <source>Whether the drive&apos;s setting means the top of the sine or its effective value.</source>
        <translation>Ob die Einstellung der Endstufe den Scheitel des Sinus oder den Effektivwert meint.</translation>
    </message>
    <message>
        <source>continuous torque</source>
        <translation>Dauerdrehmoment</translation>
    </message>
    <message>
        <source>Torque the servo gives for ever; cutting is held against it.</source>
        <translation>Moment, das der Servomotor dauernd abgibt; der Schnitt wird daran gemessen.</translation>
    </message>
    <message>
        <source>peak torque</source>
        <translation>Spitzenmoment</translation>
    </message>
    <message>
        <source>Torque the servo gives for a moment; accelerating is held against it.</source>
        <translation>Moment, das der Servomotor kurz abgibt; das Beschleunigen wird daran gemessen.</translation>
    </message>
    <message>
        <source>rated speed</source>
        <translation>Nenndrehzahl</translation>
    </message>
    <message>
        <source>Up to here the torques hold; beyond they fall with one over the speed.</source>
        <translation>Bis hierher gelten die Momente; darüber fallen sie mit eins durch Drehzahl.</translation>
    </message>
    <message>
        <source>top speed</source>
        <translation>Höchstdrehzahl</translation>
    </message>
    <message>
        <source>The servo&apos;s fastest speed.</source>
        <translation>Schnellste Drehzahl des Servomotors.</translation>
    </message>
    <message>
        <source>command steps a turn</source>
        <translation>Schritte je Umdrehung</translation>
    </message>
    <message>
        <source>Steps the servo drive takes for one turn, after its gearing.</source>
        <translation>Schritte, die der Servoregler für eine Umdrehung braucht, nach seiner Übersetzung.</translation>
    </message>
    <message>
        <source>coupling inertia</source>
        <translation>Kupplungsträgheit</translation>
    </message>
    <message>
        <source>Moment of inertia of the coupling.</source>
        <translation>Trägheitsmoment der Kupplung.</translation>
    </message>
    <message>
        <source>belt profile</source>
        <translation>Riemenprofil</translation>
    </message>
    <message>
        <source>Tooth profile by its designation, such as 5M or T5; for the parts to buy.</source>
        <translation>Zahnprofil nach seiner Bezeichnung, etwa 5M oder T5; für die Kaufteile.</translation>
    </message>
    <message>
        <source>belt pitch</source>
        <translation>Riementeilung</translation>
    </message>
    <message>
        <source>From tooth to tooth.</source>
        <translation>Von Zahn zu Zahn.</translation>
    </message>
    <message>
        <source>belt width</source>
        <translation>Riemenbreite</translation>
    </message>
    <message>
        <source>Width of belt and pulleys.</source>
        <translation>Breite von Riemen und Scheiben.</translation>
    </message>
    <message>
        <source>motor pulley teeth</source>
        <translation>Zähne Motorscheibe</translation>
    </message>
    <message>
        <source>Teeth of the pulley on the motor. Fewer than on the screw gear down.</source>
        <translation>Zähne der Scheibe am Motor. Weniger als an der Spindel übersetzt ins Langsame.</translation>
    </message>
    <message>
        <source>screw pulley teeth</source>
        <translation>Zähne Spindelscheibe</translation>
    </message>
    <message>
        <source>Teeth of the pulley on the screw.</source>
        <translation>Zähne der Scheibe an der Spindel.</translation>
    </message>
    <message>
        <source>belt teeth</source>
        <translation>Riemenzähne</translation>
    </message>
    <message>
        <source>Teeth of the whole belt; with the pulleys they set the centre distance.</source>
        <translation>Zähne des ganzen Riemens; mit den Scheiben bestimmen sie den Achsabstand.</translation>
    </message>
    <message>
        <source>belt efficiency</source>
        <translation>Riemenwirkungsgrad</translation>
    </message>
    <message>
        <source>Share of the power that comes through the belt stage.</source>
        <translation>Anteil der Leistung, der durch die Riemenstufe kommt.</translation>
    </message>
    <message>
        <source>belt mass per length</source>
        <translation>Riemenmasse je Länge</translation>
    </message>
    <message>
        <source>Mass of a metre of the belt at its width.</source>
        <translation>Masse eines Meters Riemen in seiner Breite.</translation>
    </message>
    <message>
        <source>motor pulley inertia</source>
        <translation>Trägheit Motorscheibe</translation>
    </message>
    <message>
        <source>Left open, a solid disc of the pitch diameter is taken.</source>
        <translation>Bleibt es offen, gilt eine Vollscheibe vom Teilkreisdurchmesser.</translation>
    </message>
    <message>
        <source>screw pulley inertia</source>
        <translation>Trägheit Spindelscheibe</translation>
    </message>
    <message>
        <source>pulley density</source>
        <translation>Dichte der Scheiben</translation>
    </message>
    <message>
        <source>Of the pulleys&apos; material: aluminium 2700 kg/m³, steel 7850 kg/m³.</source>
        <translation>Des Scheibenwerkstoffs: Aluminium 2700 kg/m³, Stahl 7850 kg/m³.</translation>
    </message>
    <message>
        <source>belt speed limit</source>
        <translation>Grenze Riemengeschw.</translation>
    </message>
    <message>
        <source>Fastest the belt may run, from its maker.</source>
        <translation>Schnellster Lauf, den der Hersteller dem Riemen erlaubt.</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Balls roll and drive back easily; a trapezoidal thread slides and wastes more, but may hold by itself.</source>
        <translation>Kugeln rollen und lassen sich leicht zurücktreiben; ein Trapezgewinde gleitet und verliert mehr, hält aber womöglich von selbst.</translation>
    </message>
    <message>
        <source>nominal diameter</source>
        <translation>Nenndurchmesser</translation>
    </message>
    <message>
        <source>The diameter the screw is sold by; its inertia is taken from it.</source>
        <translation>Durchmesser, unter dem die Spindel verkauft wird; daraus folgt ihre Trägheit.</translation>
    </message>
    <message>
        <source>core diameter</source>
        <translation>Kerndurchmesser</translation>
    </message>
    <message>
        <source>At the bottom of the thread. Whip and buckling go by it; look it up, do not guess.</source>
        <translation>Am Grund des Gewindes. Schwingen und Knicken hängen daran; nachschlagen, nicht raten.</translation>
    </message>
    <message>
        <source>pitch diameter</source>
        <translation>Flankendurchmesser</translation>
    </message>
    <message>
        <source>Ball-circle diameter of a ball screw, pitch diameter of a trapezoidal one.</source>
        <translation>Kugelkreis eines Kugelgewindetriebs, Flankendurchmesser eines Trapezgewindes.</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>Travel for one turn of the screw. More lead turns the screw slower for the same feed and asks more torque of the motor.</source>
        <translation>Weg je Umdrehung der Spindel. Mehr Steigung dreht die Spindel bei gleichem Vorschub langsamer und verlangt mehr Moment vom Motor.</translation>
    </message>
    <message>
        <source>length between bearings</source>
        <translation>Lagerabstand</translation>
    </message>
    <message>
        <source>Whip falls with its square: half the length allows four times the speed.</source>
        <translation>Die Schwingdrehzahl fällt mit seinem Quadrat: halbe Länge erlaubt die vierfache Drehzahl.</translation>
    </message>
    <message>
        <source>overall length</source>
        <translation>Gesamtlänge</translation>
    </message>
    <message>
        <source>Of the whole shaft, for its inertia. Left open, the length between bearings counts.</source>
        <translation>Der ganzen Welle, für ihre Trägheit. Bleibt es offen, gilt der Lagerabstand.</translation>
    </message>
    <message>
        <source>motor end</source>
        <translation>Motorseite</translation>
    </message>
    <message>
        <source>Fixed holds place, thrust and direction (a bearing pair); supported holds place only.</source>
        <translation>Fest hält Lage, Axialkraft und Richtung (ein Lagerpaar); gestützt hält nur die Lage.</translation>
    </message>
    <message>
        <source>far end</source>
        <translation>Gegenseite</translation>
    </message>
    <message>
        <source>A fixed far end lets a long screw turn faster than a supported one.</source>
        <translation>Eine feste Gegenseite lässt eine lange Spindel schneller drehen als eine gestützte.</translation>
    </message>
    <message>
        <source>length that whips</source>
        <translation>schwingende Länge</translation>
    </message>
    <message>
        <source>Between the bearings is the safe reading. Nut to bearing counts the nut as a support.</source>
        <translation>„Zwischen den Lagern“ ist die sichere Annahme. „Mutter bis Lager“ zählt die Mutter als Stütze.</translation>
    </message>
    <message>
        <source>thread friction</source>
        <translation>Gewindereibung</translation>
    </message>
    <message>
        <source>Friction coefficient in the thread: about 0.01 for balls, 0.1 to 0.2 for greased trapezoidal threads.</source>
        <translation>Reibungszahl im Gewinde: etwa 0,01 bei Kugeln, 0,1 bis 0,2 bei gefetteten Trapezgewinden.</translation>
    </message>
    <message>
        <source>measured efficiency</source>
        <translation>gemessener Wirkungsgrad</translation>
    </message>
    <message>
        <source>If you have it from data sheet or measurement, it counts instead of the friction.</source>
        <translation>Liegt er aus Datenblatt oder Messung vor, gilt er statt der Reibung.</translation>
    </message>
    <message>
        <source>preload drag</source>
        <translation>Reibmoment Vorspannung</translation>
    </message>
    <message>
        <source>Torque a preloaded nut costs at any load.</source>
        <translation>Moment, das eine vorgespannte Mutter bei jeder Last kostet.</translation>
    </message>
    <message>
        <source>bearing drag</source>
        <translation>Reibmoment Lager</translation>
    </message>
    <message>
        <source>Torque the end bearings and their seals cost.</source>
        <translation>Moment, das die Endlager und ihre Dichtungen kosten.</translation>
    </message>
    <message>
        <source>backlash</source>
        <translation>Umkehrspiel</translation>
    </message>
    <message>
        <source>Axial play of the nut. Inexpensive rolled screws show about 50 µm; preloaded nuts none.</source>
        <translation>Axialspiel der Mutter. Preiswerte gerollte Spindeln zeigen etwa 50 µm; vorgespannte Muttern keines.</translation>
    </message>
    <message>
        <source>diameter × speed limit</source>
        <translation>Durchm. × Drehzahl bis</translation>
    </message>
    <message>
        <source>Ball-circle diameter times speed that the nut&apos;s ball return bears: 70000 mm·rpm is usual for common rolled nuts.</source>
        <translation>Kugelkreisdurchmesser mal Drehzahl, den die Kugelrückführung der Mutter verträgt: 70000 mm·rpm ist bei gängigen gerollten Muttern üblich.</translation>
    </message>
    <message>
        <source>screw speed limit</source>
        <translation>Grenze Spindeldrehzahl</translation>
    </message>
    <message>
        <source>Fastest speed that nut or bearings are rated for.</source>
        <translation>Schnellste Drehzahl, für die Mutter oder Lager zugelassen sind.</translation>
    </message>
    <message>
        <source>static load rating</source>
        <translation>statische Tragzahl</translation>
    </message>
    <message>
        <source>The nut&apos;s static rating C0a, from its maker.</source>
        <translation>Statische Tragzahl C0a der Mutter, vom Hersteller.</translation>
    </message>
    <message>
        <source>bearing thrust limit</source>
        <translation>Axialkraftgrenze Lager</translation>
    </message>
    <message>
        <source>Most axial force the end bearing may carry.</source>
        <translation>Höchste Axialkraft, die das Endlager tragen darf.</translation>
    </message>
    <message>
        <source>allowed share of whip speed</source>
        <translation>Anteil krit. Drehzahl</translation>
    </message>
    <message>
        <source>How near the first critical speed you let the screw turn; 80 % is usual.</source>
        <translation>Wie nahe die Spindel der ersten kritischen Drehzahl kommen darf; 80 % ist üblich.</translation>
    </message>
    <message>
        <source>safety against buckling</source>
        <translation>Sicherheit gegen Knicken</translation>
    </message>
    <message>
        <source>The critical load is divided by it.</source>
        <translation>Durch sie wird die Knicklast geteilt.</translation>
    </message>
    <message>
        <source>safety against yielding</source>
        <translation>Sicherheit gegen Fließen</translation>
    </message>
    <message>
        <source>The yield strength is divided by it.</source>
        <translation>Durch sie wird die Streckgrenze geteilt.</translation>
    </message>
    <message>
        <source>safety of the static rating</source>
        <translation>Sicherheit stat. Tragzahl</translation>
    </message>
    <message>
        <source>The static rating is divided by it: 1 to 2 in smooth running, 2 to 3 with shocks.</source>
        <translation>Durch sie wird die statische Tragzahl geteilt: 1 bis 2 bei ruhigem Lauf, 2 bis 3 bei Stößen.</translation>
    </message>
    <message>
        <source>elastic modulus</source>
        <translation>Elastizitätsmodul</translation>
    </message>
    <message>
        <source>Of the screw&apos;s steel.</source>
        <translation>Des Spindelstahls.</translation>
    </message>
    <message>
        <source>yield strength</source>
        <translation>Streckgrenze</translation>
    </message>
    <message>
        <source>Of the screw&apos;s core.</source>
        <translation>Des Spindelkerns.</translation>
    </message>
    <message>
        <source>density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
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
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>an area</source>
        <translation>eine Fläche</translation>
    </message>
    <message>
        <source>a second moment of area</source>
        <translation>ein Flächenträgheitsmoment</translation>
    </message>
    <message>
        <source>a mass</source>
        <translation>eine Masse</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>eine Zeit</translation>
    </message>
    <message>
        <source>a force</source>
        <translation>eine Kraft</translation>
    </message>
    <message>
        <source>a torque</source>
        <translation>ein Drehmoment</translation>
    </message>
    <message>
        <source>an energy</source>
        <translation>eine Energie</translation>
    </message>
    <message>
        <source>a power</source>
        <translation>eine Leistung</translation>
    </message>
    <message>
        <source>a moment of inertia</source>
        <translation>ein Massenträgheitsmoment</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>ein Winkel</translation>
    </message>
    <message>
        <source>a speed of rotation</source>
        <translation>eine Drehzahl</translation>
    </message>
    <message>
        <source>an angular acceleration</source>
        <translation>eine Winkelbeschleunigung</translation>
    </message>
    <message>
        <source>a speed</source>
        <translation>eine Geschwindigkeit</translation>
    </message>
    <message>
        <source>an acceleration</source>
        <translation>eine Beschleunigung</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>ein Druck</translation>
    </message>
    <message>
        <source>a density</source>
        <translation>eine Dichte</translation>
    </message>
    <message>
        <source>a mass per length</source>
        <translation>eine Masse je Länge</translation>
    </message>
    <message>
        <source>a stiffness</source>
        <translation>eine Steifigkeit</translation>
    </message>
    <message>
        <source>a frequency</source>
        <translation>eine Frequenz</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>eine Temperatur</translation>
    </message>
    <message>
        <source>a voltage</source>
        <translation>eine Spannung</translation>
    </message>
    <message>
        <source>a current</source>
        <translation>ein Strom</translation>
    </message>
    <message>
        <source>a resistance</source>
        <translation>ein Widerstand</translation>
    </message>
    <message>
        <source>an inductance</source>
        <translation>eine Induktivität</translation>
    </message>
    <message>
        <source>a torque per current</source>
        <translation>ein Drehmoment je Strom</translation>
    </message>
    <message>
        <source>a diameter times a speed</source>
        <translation>ein Durchmesser mal Drehzahl</translation>
    </message>
    <message>
        <source>a number per length</source>
        <translation>eine Anzahl je Länge</translation>
    </message>
    <message>
        <source>a figure</source>
        <translation>ein Wert</translation>
    </message>
    <message>
        <source>preset</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>eingegeben</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>reduction</source>
        <translation>Übersetzung</translation>
    </message>
    <message>
        <source>Turns of the motor for one turn of the screw.</source>
        <translation>Umdrehungen des Motors für eine Umdrehung der Spindel.</translation>
    </message>
    <message>
        <source>travel per screw angle</source>
        <translation>Weg je Spindelwinkel</translation>
    </message>
    <message>
        <source>The lead over a whole turn.</source>
        <translation>Die Steigung geteilt durch eine ganze Umdrehung.</translation>
    </message>
    <message>
        <source>travel per motor angle</source>
        <translation>Weg je Motorwinkel</translation>
    </message>
    <message>
        <source>The lead seen from the motor, through the reduction.</source>
        <translation>Die Steigung vom Motor aus gesehen, durch die Übersetzung.</translation>
    </message>
    <message>
        <source>steps per length</source>
        <translation>Schritte je Länge</translation>
    </message>
    <message>
        <source>Command steps for a length of travel.</source>
        <translation>Befehlsschritte für eine Länge Weg.</translation>
    </message>
    <message>
        <source>resolution</source>
        <translation>Auflösung</translation>
    </message>
    <message>
        <source>Travel of one command step.</source>
        <translation>Weg eines Befehlsschritts.</translation>
    </message>
    <message>
        <source>lost motion</source>
        <translation>Umkehrverlust</translation>
    </message>
    <message>
        <source>Axial play of the nut; none if it is preloaded.</source>
        <translation>Axialspiel der Mutter; keines, wenn sie vorgespannt ist.</translation>
    </message>
    <message>
        <source>centre distance</source>
        <translation>Achsabstand</translation>
    </message>
    <message>
        <source>From shaft to shaft, at which the whole belt goes taut round both pulleys; the belt does not stretch.</source>
        <translation>Von Welle zu Welle, bei dem der ganze Riemen straff um beide Scheiben läuft; der Riemen dehnt sich nicht.</translation>
    </message>
    <message>
        <source>teeth in mesh</source>
        <translation>eingreifende Zähne</translation>
    </message>
    <message>
        <source>Teeth on the smaller pulley&apos;s arc of contact.</source>
        <translation>Zähne auf dem Umschlingungsbogen der kleineren Scheibe.</translation>
    </message>
    <message>
        <source>The free length of the screw that bends first.</source>
        <translation>Die freie Länge der Spindel, die sich zuerst biegt.</translation>
    </message>
    <message>
        <source>first critical speed</source>
        <translation>erste kritische Drehzahl</translation>
    </message>
    <message>
        <source>Speed at which the screw whips: the first natural frequency of bending of a slender round shaft of the core diameter.</source>
        <translation>Drehzahl, bei der die Spindel schwingt: die erste Biegeeigenfrequenz einer schlanken runden Welle vom Kerndurchmesser.</translation>
    </message>
    <message>
        <source>allowed screw speed</source>
        <translation>erlaubte Spindeldrehzahl</translation>
    </message>
    <message>
        <source>The allowed share of the first critical speed.</source>
        <translation>Der erlaubte Anteil der ersten kritischen Drehzahl.</translation>
    </message>
    <message>
        <source>whip feed between bearings</source>
        <translation>Schwinggrenze Lager–Lager</translation>
    </message>
    <message>
        <source>With the whole length between the bearings free to bend.</source>
        <translation>Vorschub, wenn sich die ganze Länge zwischen den Lagern frei biegen kann.</translation>
    </message>
    <message>
        <source>whip feed nut to bearing</source>
        <translation>Schwinggrenze Mutter–Lager</translation>
    </message>
    <message>
        <source>With the longest length between nut and bearing, the nut counted as a support.</source>
        <translation>Vorschub mit der größten Länge zwischen Mutter und Lager; die Mutter zählt als Stütze.</translation>
    </message>
    <message>
        <source>length that buckles</source>
        <translation>Knicklänge</translation>
    </message>
    <message>
        <source>From the bearing that takes the thrust to the nut at its farthest.</source>
        <translation>Vom Lager, das die Axialkraft aufnimmt, bis zur Mutter am fernsten Punkt.</translation>
    </message>
    <message>
        <source>core area</source>
        <translation>Kernquerschnitt</translation>
    </message>
    <message>
        <source>Cross-section at the bottom of the thread.</source>
        <translation>Querschnitt am Grund des Gewindes.</translation>
    </message>
    <message>
        <source>slenderness</source>
        <translation>Schlankheitsgrad</translation>
    </message>
    <message>
        <source>Length over the core&apos;s radius of gyration.</source>
        <translation>Länge geteilt durch den Trägheitsradius des Kerns.</translation>
    </message>
    <message>
        <source>slenderness where Euler begins</source>
        <translation>Grenzschlankheit nach Euler</translation>
    </message>
    <message>
        <source>Where Johnson&apos;s parabola meets Euler&apos;s curve.</source>
        <translation>Wo die Johnson-Parabel die Euler-Kurve trifft.</translation>
    </message>
    <message>
        <source>critical buckling load</source>
        <translation>kritische Knicklast</translation>
    </message>
    <message>
        <source>By Euler for slender screws, by J. B. Johnson for stocky ones.</source>
        <translation>Nach Euler für schlanke Spindeln, nach J. B. Johnson für gedrungene.</translation>
    </message>
    <message>
        <source>tangent of the lead angle</source>
        <translation>Tangens des Steigungswinkels</translation>
    </message>
    <message>
        <source>Lead over the circumference at the pitch diameter.</source>
        <translation>Steigung geteilt durch den Umfang am Flankendurchmesser.</translation>
    </message>
    <message>
        <source>friction angle</source>
        <translation>Reibungswinkel</translation>
    </message>
    <message>
        <source>Of the thread&apos;s friction, in radians, the slope of the flank counted in.</source>
        <translation>Der Gewindereibung, in Radiant, die Flankenneigung eingerechnet.</translation>
    </message>
    <message>
        <source>efficiency, driving</source>
        <translation>Wirkungsgrad, treibend</translation>
    </message>
    <message>
        <source>Of the thread, power going to the load.</source>
        <translation>Des Gewindes, wenn Leistung zur Last fließt.</translation>
    </message>
    <message>
        <source>efficiency, driven back</source>
        <translation>Wirkungsgrad, rückgetrieben</translation>
    </message>
    <message>
        <source>Of the thread, power coming from the load; at or below zero the thread does not drive back.</source>
        <translation>Des Gewindes, wenn Leistung von der Last kommt; bei null oder darunter treibt das Gewinde nicht zurück.</translation>
    </message>
    <message>
        <source>screw inertia</source>
        <translation>Spindelträgheit</translation>
    </message>
    <message>
        <source>A solid cylinder of the nominal diameter, at the screw.</source>
        <translation>Ein Vollzylinder vom Nenndurchmesser, an der Spindel.</translation>
    </message>
    <message>
        <source>As given, or a solid disc of the pitch diameter.</source>
        <translation>Wie angegeben, sonst eine Vollscheibe vom Teilkreisdurchmesser.</translation>
    </message>
    <message>
        <source>As given, or a solid disc of the pitch diameter; at the screw.</source>
        <translation>Wie angegeben, sonst eine Vollscheibe vom Teilkreisdurchmesser; an der Spindel.</translation>
    </message>
    <message>
        <source>belt inertia</source>
        <translation>Riementrägheit</translation>
    </message>
    <message>
        <source>The belt&apos;s mass at the motor pulley&apos;s pitch radius.</source>
        <translation>Die Riemenmasse am Teilkreisradius der Motorscheibe.</translation>
    </message>
    <message>
        <source>carriage inertia at the motor</source>
        <translation>Schlittenträgheit am Motor</translation>
    </message>
    <message>
        <source>What the moving mass weighs as an inertia at the motor&apos;s shaft.</source>
        <translation>Was die bewegte Masse als Trägheit an der Motorwelle ausmacht.</translation>
    </message>
    <message>
        <source>load inertia</source>
        <translation>Lastträgheit</translation>
    </message>
    <message>
        <source>Everything but the rotor, seen from the motor.</source>
        <translation>Alles außer dem Rotor, vom Motor aus gesehen.</translation>
    </message>
    <message>
        <source>inertia match</source>
        <translation>Trägheitsverhältnis</translation>
    </message>
    <message>
        <source>Load inertia over rotor inertia.</source>
        <translation>Lastträgheit geteilt durch Rotorträgheit.</translation>
    </message>
    <message>
        <source>gravity along the axis</source>
        <translation>Schwerkraft entlang der Achse</translation>
    </message>
    <message>
        <source>Weight along the axis less the counterbalance.</source>
        <translation>Gewichtskraft entlang der Achse abzüglich Gewichtsausgleich.</translation>
    </message>
    <message>
        <source>friction force</source>
        <translation>Reibkraft</translation>
    </message>
    <message>
        <source>Guide friction, seals and covers together.</source>
        <translation>Führungsreibung, Dichtungen und Abdeckungen zusammen.</translation>
    </message>
    <message>
        <source>force lowering</source>
        <translation>Kraft beim Senken</translation>
    </message>
    <message>
        <source>Down the slope at steady feed; below zero the load pulls.</source>
        <translation>Abwärts mit gleichmäßigem Vorschub; unter null zieht die Last.</translation>
    </message>
    <message>
        <source>force accelerating</source>
        <translation>Kraft beim Beschleunigen</translation>
    </message>
    <message>
        <source>Accelerating up the slope at the wanted rate, not cutting.</source>
        <translation>Aufwärts beschleunigt mit dem gewünschten Wert, ohne Schnitt.</translation>
    </message>
    <message>
        <source>force cutting</source>
        <translation>Kraft beim Schnitt</translation>
    </message>
    <message>
        <source>Cutting up the slope at steady feed.</source>
        <translation>Schnitt aufwärts mit gleichmäßigem Vorschub.</translation>
    </message>
    <message>
        <source>torque for the motor&apos;s shaft</source>
        <translation>Moment für die Motorwelle</translation>
    </message>
    <message>
        <source>To accelerate what turns with the motor.</source>
        <translation>Zum Beschleunigen dessen, was sich mit dem Motor dreht.</translation>
    </message>
    <message>
        <source>torque for the screw&apos;s shaft</source>
        <translation>Moment für die Spindelwelle</translation>
    </message>
    <message>
        <source>To accelerate what turns with the screw; at the screw.</source>
        <translation>Zum Beschleunigen dessen, was sich mit der Spindel dreht; an der Spindel.</translation>
    </message>
    <message>
        <source>torque through the thread</source>
        <translation>Moment durch das Gewinde</translation>
    </message>
    <message>
        <source>To push the axial force through the thread; at the screw.</source>
        <translation>Um die Axialkraft durch das Gewinde zu drücken; an der Spindel.</translation>
    </message>
    <message>
        <source>drag torque</source>
        <translation>Reibmoment</translation>
    </message>
    <message>
        <source>Preload, seals and bearings, at the screw.</source>
        <translation>Vorspannung, Dichtungen und Lager, an der Spindel.</translation>
    </message>
    <message>
        <source>torque needed accelerating</source>
        <translation>Moment zum Beschleunigen</translation>
    </message>
    <message>
        <source>At the motor, while accelerating up the slope.</source>
        <translation>Am Motor, beim Beschleunigen aufwärts.</translation>
    </message>
    <message>
        <source>torque needed cutting</source>
        <translation>Moment beim Schnitt</translation>
    </message>
    <message>
        <source>At the motor, while cutting up the slope.</source>
        <translation>Am Motor, beim Schnitt aufwärts.</translation>
    </message>
    <message>
        <source>torque lowering</source>
        <translation>Moment beim Senken</translation>
    </message>
    <message>
        <source>At the motor, down the slope at steady feed; below zero the motor brakes.</source>
        <translation>Am Motor, abwärts mit gleichmäßigem Vorschub; unter null bremst der Motor.</translation>
    </message>
    <message>
        <source>torque needed to hold</source>
        <translation>Moment zum Halten</translation>
    </message>
    <message>
        <source>What gravity asks of the motor at rest, guide friction not counted on.</source>
        <translation>Was die Schwerkraft im Stillstand vom Motor verlangt, ohne auf Führungsreibung zu zählen.</translation>
    </message>
    <message>
        <source>motor speed</source>
        <translation>Motordrehzahl</translation>
    </message>
    <message>
        <source>At the wanted feed.</source>
        <translation>Beim gewünschten Vorschub.</translation>
    </message>
    <message>
        <source>usable torque</source>
        <translation>nutzbares Moment</translation>
    </message>
    <message>
        <source>The usable share of the motor&apos;s torque at the wanted feed.</source>
        <translation>Der nutzbare Anteil des Motormoments beim gewünschten Vorschub.</translation>
    </message>
    <message>
        <source>usable torque cutting</source>
        <translation>nutzbares Schnittmoment</translation>
    </message>
    <message>
        <source>The usable share of the motor&apos;s torque at the cutting feed.</source>
        <translation>Der nutzbare Anteil des Motormoments beim Vorschub im Schnitt.</translation>
    </message>
    <message>
        <source>acceleration available</source>
        <translation>verfügbare Beschleunigung</translation>
    </message>
    <message>
        <source>From the usable torque at the wanted feed, up the slope.</source>
        <translation>Aus dem nutzbaren Moment beim gewünschten Vorschub, aufwärts.</translation>
    </message>
    <message>
        <source>cutting thrust available</source>
        <translation>verfügbare Vorschubkraft</translation>
    </message>
    <message>
        <source>From the usable torque at the cutting feed, up the slope, friction and gravity paid.</source>
        <translation>Aus dem nutzbaren Moment beim Vorschub im Schnitt, aufwärts, nach Abzug von Reibung und Schwerkraft.</translation>
    </message>
    <message>
        <source>feed allowed by whip</source>
        <translation>Vorschub nach Schwingen</translation>
    </message>
    <message>
        <source>Allowed screw speed times the lead.</source>
        <translation>Erlaubte Spindeldrehzahl mal Steigung.</translation>
    </message>
    <message>
        <source>feed allowed by ball speed</source>
        <translation>Vorschub nach Kugeldrehzahl</translation>
    </message>
    <message>
        <source>From the limit of ball-circle diameter times speed.</source>
        <translation>Aus der Grenze für Kugelkreisdurchmesser mal Drehzahl.</translation>
    </message>
    <message>
        <source>feed at the screw&apos;s rated speed</source>
        <translation>Vorschub nach Spindeldrehzahl</translation>
    </message>
    <message>
        <source>From the rated speed of nut and bearings.</source>
        <translation>Aus der zulässigen Drehzahl von Mutter und Lagern.</translation>
    </message>
    <message>
        <source>feed allowed by motor torque</source>
        <translation>Vorschub nach Motormoment</translation>
    </message>
    <message>
        <source>Where the usable torque falls to what accelerating needs.</source>
        <translation>Wo das nutzbare Moment auf das fällt, was Beschleunigen braucht.</translation>
    </message>
    <message>
        <source>feed at the end of the motor&apos;s curve</source>
        <translation>Vorschub am Ende der Motorkennlinie</translation>
    </message>
    <message>
        <source>Beyond it the motor&apos;s torque is not known.</source>
        <translation>Darüber ist das Motormoment nicht bekannt.</translation>
    </message>
    <message>
        <source>feed allowed by step rate</source>
        <translation>Vorschub nach Schrittfrequenz</translation>
    </message>
    <message>
        <source>The controller&apos;s step rate times the travel of a step.</source>
        <translation>Die Schrittfrequenz der Steuerung mal dem Weg eines Schritts.</translation>
    </message>
    <message>
        <source>feed allowed by belt speed</source>
        <translation>Vorschub nach Riemengeschw.</translation>
    </message>
    <message>
        <source>Where the belt runs at its allowed speed.</source>
        <translation>Wo der Riemen mit erlaubter Geschwindigkeit läuft.</translation>
    </message>
    <message>
        <source>feed allowed by the guides</source>
        <translation>Vorschub nach Führungen</translation>
    </message>
    <message>
        <source>As given by the guides&apos; maker.</source>
        <translation>Nach Angabe des Herstellers der Führungen.</translation>
    </message>
    <message>
        <source>feed reached</source>
        <translation>erreichter Vorschub</translation>
    </message>
    <message>
        <source>The lowest of the feed limits.</source>
        <translation>Die niedrigste der Vorschubgrenzen.</translation>
    </message>
    <message>
        <source>thrust allowed by buckling</source>
        <translation>Axialkraft nach Knicken</translation>
    </message>
    <message>
        <source>The critical load over its safety factor.</source>
        <translation>Die kritische Last geteilt durch ihre Sicherheit.</translation>
    </message>
    <message>
        <source>thrust allowed by core stress</source>
        <translation>Axialkraft nach Kernspannung</translation>
    </message>
    <message>
        <source>Core area times yield strength over its safety factor.</source>
        <translation>Kernquerschnitt mal Streckgrenze geteilt durch ihre Sicherheit.</translation>
    </message>
    <message>
        <source>thrust allowed by the static rating</source>
        <translation>Axialkraft nach stat. Tragzahl</translation>
    </message>
    <message>
        <source>The nut&apos;s static rating over its safety factor.</source>
        <translation>Die statische Tragzahl der Mutter geteilt durch ihre Sicherheit.</translation>
    </message>
    <message>
        <source>thrust allowed by the bearing</source>
        <translation>Axialkraft nach Lager</translation>
    </message>
    <message>
        <source>What the end bearing may carry, as given.</source>
        <translation>Was das Endlager tragen darf, wie angegeben.</translation>
    </message>
    <message>
        <source>axial force the motor makes</source>
        <translation>Axialkraft aus dem Motor</translation>
    </message>
    <message>
        <source>From the usable torque at the cutting feed.</source>
        <translation>Aus dem nutzbaren Moment beim Vorschub im Schnitt.</translation>
    </message>
    <message>
        <source>largest axial force</source>
        <translation>größte Axialkraft</translation>
    </message>
    <message>
        <source>On the screw, the larger of accelerating and cutting.</source>
        <translation>An der Spindel, die größere aus Beschleunigen und Schnitt.</translation>
    </message>
    <message>
        <source>core stress</source>
        <translation>Kernspannung</translation>
    </message>
    <message>
        <source>Largest axial force over the core area.</source>
        <translation>Größte Axialkraft geteilt durch den Kernquerschnitt.</translation>
    </message>
    <message>
        <source>axial force reached</source>
        <translation>erreichte Axialkraft</translation>
    </message>
    <message>
        <source>The lowest of the thrust limits.</source>
        <translation>Die niedrigste der Axialkraftgrenzen.</translation>
    </message>
    <message>
        <source>whip</source>
        <translation>Biegeschwingen</translation>
    </message>
    <message>
        <source>ball speed</source>
        <translation>Kugelgeschwindigkeit</translation>
    </message>
    <message>
        <source>screw speed</source>
        <translation>Spindeldrehzahl</translation>
    </message>
    <message>
        <source>motor torque</source>
        <translation>Motormoment</translation>
    </message>
    <message>
        <source>step rate</source>
        <translation>Schrittfrequenz</translation>
    </message>
    <message>
        <source>belt speed</source>
        <translation>Riemengeschwindigkeit</translation>
    </message>
    <message>
        <source>guide speed</source>
        <translation>Führungsgeschwindigkeit</translation>
    </message>
    <message>
        <source>buckling</source>
        <translation>Knicken</translation>
    </message>
    <message>
        <source>static rating</source>
        <translation>statische Tragzahl</translation>
    </message>
    <message>
        <source>bearing thrust</source>
        <translation>Lagerkraft</translation>
    </message>
    <message>
        <source>motor thrust</source>
        <translation>Motorkraft</translation>
    </message>
    <message>
        <source>acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>klar</translation>
    </message>
    <message>
        <source>close</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>over</source>
        <translation>über</translation>
    </message>
    <message>
        <source>standard acceleration of free fall</source>
        <translation>Normfallbeschleunigung</translation>
    </message>
    <message>
        <source>eigenvalue of the beam with these ends</source>
        <translation>Eigenwert des Balkens mit diesen Enden</translation>
    </message>
    <message>
        <source>end condition constant of the column</source>
        <translation>Beiwert der Knickstab-Enden</translation>
    </message>
    <message>
        <source>command steps for one turn of the motor</source>
        <translation>Befehlsschritte für eine Umdrehung des Motors</translation>
    </message>
    <message>
        <source>end of the motor&apos;s curve</source>
        <translation>Ende der Motorkennlinie</translation>
    </message>
    <message>
        <source>teeth of the smaller pulley</source>
        <translation>Zähne der kleineren Scheibe</translation>
    </message>
    <message>
        <source>arc of contact on the smaller pulley, in radians</source>
        <translation>Umschlingungswinkel der kleineren Scheibe, in Radiant</translation>
    </message>
    <message>
        <source>a coupling loses nothing</source>
        <translation>eine Kupplung verliert nichts</translation>
    </message>
    <message>
        <source>f: the distance at which the belt&apos;s whole length goes round both pulleys, found by root finding</source>
        <translation>f: der Abstand, bei dem der ganze Riemen um beide Scheiben läuft, durch Nullstellensuche gefunden</translation>
    </message>
    <message>
        <source>f: the motor&apos;s torque at that speed times its usable share</source>
        <translation>f: das Moment des Motors bei dieser Drehzahl mal seinem nutzbaren Anteil</translation>
    </message>
    <message>
        <source>f: the lowest motor speed at which the usable torque has fallen to the need, found by root finding</source>
        <translation>f: die niedrigste Motordrehzahl, bei der das nutzbare Moment auf den Bedarf gefallen ist, durch Nullstellensuche gefunden</translation>
    </message>
    <message>
        <source>bearing to bearing</source>
        <translation>Lager zu Lager</translation>
    </message>
    <message>
        <source>missing: %1 (%2)</source>
        <comment>an open limit: field that is missing, its part</comment>
        <translation>es fehlt: %1 (%2)</translation>
    </message>
    <message>
        <source>a pair [speed, torque]</source>
        <translation>ein Paar [Drehzahl, Drehmoment]</translation>
    </message>
    <message>
        <source>%1 found; wanted is %2, such as &quot;%3&quot;.</source>
        <translation>%1 gefunden; gefragt ist %2, etwa „%3“.</translation>
    </message>
</context>
<context>
    <name>feedwright::AxesPanel</name>
    <message>
        <source>Machine and axes</source>
        <translation>Maschine und Achsen</translation>
    </message>
    <message>
        <source>Add axis</source>
        <translation>Achse hinzufügen</translation>
    </message>
</context>
<context>
    <name>feedwright::Banner</name>
    <message>
        <source>Close this message</source>
        <translation>Diese Meldung schließen</translation>
    </message>
</context>
<context>
    <name>feedwright::FieldsPanel</name>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Type of %1</source>
        <translation>Typ: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>part: its type</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>Source of the figures</source>
        <translation>Quelle der Werte</translation>
    </message>
    <message>
        <source>data sheet, supplier, measured</source>
        <translation>Datenblatt, Lieferant, gemessen</translation>
    </message>
    <message>
        <source>source of the figures</source>
        <translation>Quelle der Werte</translation>
    </message>
</context>
<context>
    <name>feedwright::FlagRow</name>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>feedwright::LimitsView</name>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Limits are not computed</source>
        <translation>Grenzen sind nicht berechnet</translation>
    </message>
    <message>
        <source>Not computed: there is no axis.</source>
        <translation>Nicht berechnet: Es gibt keine Achse.</translation>
    </message>
    <message>
        <source>Not computed. Nothing can be said of the limits until this is put right:</source>
        <translation>Nicht berechnet. Über die Grenzen lässt sich nichts sagen, bis dies behoben ist:</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <comment>sign, part, sentence</comment>
        <translation>%1 %2: %3</translation>
    </message>
</context>
<context>
    <name>feedwright::MachineDocument</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <comment>field, value before, value after</comment>
        <translation>%1 %2 → %3</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Unbenannt</translation>
    </message>
</context>
<context>
    <name>feedwright::MachineFiles</name>
    <message>
        <source>%1 cannot be opened.</source>
        <translation>%1 lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The machine is not saved.</source>
        <translation>Die Maschine ist nicht gespeichert.</translation>
    </message>
    <message>
        <source>There is no sheet while the machine has faults, for nothing is computed from it. Mend the faults first.</source>
        <translation>Solange die Maschine Fehler hat, gibt es kein Auslegungsblatt, denn es wird nichts berechnet. Zuerst die Fehler beheben.</translation>
    </message>
    <message>
        <source>The sheet is not written.</source>
        <translation>Das Auslegungsblatt ist nicht geschrieben.</translation>
    </message>
</context>
<context>
    <name>feedwright::MachineForm</name>
    <message>
        <source>Name of the machine</source>
        <translation>Name der Maschine</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Notes on the machine</source>
        <translation>Notizen zur Maschine</translation>
    </message>
    <message>
        <source>Notes, printed on the sheet</source>
        <translation>Notizen, auf dem Blatt gedruckt</translation>
    </message>
    <message>
        <source>name of the machine</source>
        <translation>Name der Maschine</translation>
    </message>
    <message>
        <source>notes on the machine</source>
        <translation>Notizen zur Maschine</translation>
    </message>
</context>
<context>
    <name>feedwright::MainWindow</name>
    <message>
        <source>Try this: click the screw in the drawing, type a lead of 10 mm, and watch the limits move. Undo takes it back.</source>
        <translation>Zum Ausprobieren: in der Zeichnung die Spindel anklicken, als Steigung 10 mm eingeben und zusehen, wie sich die Grenzen verschieben. „Rückgängig“ nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1[*] – Feedwright</source>
        <comment>title of the window</comment>
        <translation>%1[*] – Feedwright</translation>
    </message>
    <message>
        <source>This file was written by a newer program (format 1.%1). It is opened as far as understood; the rest is kept as it stands.</source>
        <translation>Diese Datei wurde von einem neueren Programm geschrieben (Format 1.%1). Sie ist geöffnet, soweit sie verstanden wird; der Rest bleibt unverändert erhalten.</translation>
    </message>
    <message>
        <source>%1 was changed by another program, and you have changes that are not saved.</source>
        <translation>%1 wurde von einem anderen Programm geändert, und hier gibt es Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translation>%1 wurde von einem anderen Programm geändert.</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>Neu einlesen</translation>
    </message>
    <message>
        <source>Keep what is here</source>
        <translation>Hiesigen Stand behalten</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Buttons</source>
        <translation>Schaltflächen</translation>
    </message>
    <message>
        <source>&amp;New machine</source>
        <translation>&amp;Neue Maschine</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Öffnen…</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Sheet as P&amp;DF…</source>
        <translation>Auslegungsblatt als P&amp;DF…</translation>
    </message>
    <message>
        <source>Pre&amp;view the sheet…</source>
        <translation>&amp;Vorschau des Auslegungsblatts…</translation>
    </message>
    <message>
        <source>&amp;Print the sheet…</source>
        <translation>Auslegungsblatt d&amp;rucken…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
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
        <source>&amp;Axis</source>
        <translation>&amp;Achse</translation>
    </message>
    <message>
        <source>&amp;Add axis</source>
        <translation>Achse &amp;hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Copy axis</source>
        <translation>Achse &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Remove axis</source>
        <translation>Achse &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>A&amp;nsicht</translation>
    </message>
    <message>
        <source>Colours of the &amp;desktop</source>
        <translation>&amp;Farben des Desktops</translation>
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
        <source>Lan&amp;guage</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;About Feedwright</source>
        <translation>&amp;Über Feedwright</translation>
    </message>
    <message>
        <source>About Feedwright</source>
        <translation>Über Feedwright</translation>
    </message>
    <message>
        <source>Feedwright %1

Sizes the drive of every axis of a CNC router or mill before its parts are bought.

Its figures help to choose; they are not an approval. Machines crush and cut: keep to your local rules, and ask somebody qualified where you are not.

Free software under the GNU General Public License, version 3 or later; it comes without warranty.</source>
        <translation>Feedwright %1

Legt den Antrieb jeder Achse einer CNC-Fräsmaschine aus, bevor die Teile gekauft werden.

Die Werte helfen bei der Auswahl; sie sind keine Freigabe. Maschinen quetschen und schneiden: die örtlichen Vorschriften einhalten und, wo die eigene Fachkunde fehlt, eine fachkundige Person fragen.

Freie Software unter der GNU General Public License, Version 3 oder neuer; ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>Open a sa&amp;mple</source>
        <translation>Be&amp;ispiel öffnen</translation>
    </message>
</context>
<context>
    <name>feedwright::PointsRow</name>
    <message>
        <source>speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Add point</source>
        <translation>Punkt hinzufügen</translation>
    </message>
    <message>
        <source>Remove point</source>
        <translation>Punkt entfernen</translation>
    </message>
</context>
<context>
    <name>feedwright::StudiesView</name>
    <message>
        <source>Studies</source>
        <translation>Studien</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>Not computed: the machine has faults, listed with the limits.</source>
        <translation>Nicht berechnet: Die Maschine hat Fehler; sie stehen bei den Grenzen.</translation>
    </message>
</context>
<context>
    <name>feedwright::StudyCanvas</name>
    <message>
        <source>Read-out under the cursor</source>
        <translation>Ablesung unter dem Zeiger</translation>
    </message>
    <message>
        <source>Plot: %1</source>
        <translation>Diagramm: %1</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>what the axis shows, number, unit</comment>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <comment>curve: number, unit</comment>
        <translation>%1: %2 %3</translation>
    </message>
</context>
<context>
    <name>feedwright::TextRow</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
</context>
<context>
    <name>feedwright::TrainView</name>
    <message>
        <source>Drive train</source>
        <translation>Antriebsstrang</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what governs: verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>There is no axis.</source>
        <translation>Es gibt keine Achse.</translation>
    </message>
    <message>
        <source>Drive train of %1: %2</source>
        <translation>Antriebsstrang von %1: %2</translation>
    </message>
</context>
<context>
    <name>feedwright::WorkingView</name>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Symbols of the equation</source>
        <translation>Formelzeichen der Gleichung</translation>
    </message>
    <message>
        <source>symbol</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>what it is</source>
        <translation>Bedeutung</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>Enter or a double click goes to the field or to the working of the row.</source>
        <translation>Eingabetaste oder Doppelklick führt zum Feld oder zum Rechenweg der Zeile.</translation>
    </message>
    <message>
        <source>Not computed: the machine has faults, listed with the limits.</source>
        <translation>Nicht berechnet: Die Maschine hat Fehler; sie stehen bei den Grenzen.</translation>
    </message>
    <message>
        <source>This result is open: an input or target it needs is missing.</source>
        <translation>Dieses Ergebnis ist offen: Eine nötige Eingabe oder ein nötiges Ziel fehlt.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>field (part)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>festgelegt</translation>
    </message>
</context>
<context>
    <name>std</name>
    <message>
        <source>Feedwright sizes the drive trains of CNC router and mill axes and says what limits each.
With a machine file, or with nothing, it opens the window. The commands below need no display.</source>
        <translation>Feedwright legt die Antriebsstränge der Achsen von CNC-Fräsmaschinen aus und sagt, was jede begrenzt.
Mit einer Maschinendatei oder ohne alles öffnet es das Fenster. Die Befehle unten brauchen keine Anzeige.</translation>
    </message>
    <message>
        <source>Exit codes:
  0  done; for check: no limit is over
  1  check only: some limit is over what is wanted
  2  the command line, the machine or the place to write to is unusable;
     every reason is on standard error, one sentence a line

Examples:
  feedwright router.feedwright                 open it in the window
  feedwright check router.feedwright           all results as text
  feedwright check router.feedwright --json &gt; now.json
  feedwright check router.feedwright &gt; log.txt || echo &quot;look at the limits&quot;
  feedwright sheet router.feedwright --output router.pdf --paper letter
  feedwright sheet router.feedwright -o log.pdf --working --date 2026-05-01
  feedwright schema &gt; machine.schema.json
  feedwright picture router.feedwright -o window.png --size 1920x1080 --dark

The same file on the same date gives the same bytes, whatever the locale: words are
English unless --language is given.
Figures help to choose parts; they are not an approval.</source>
        <translation>Rückgabewerte:
  0  erledigt; bei check: keine Grenze ist über
  1  nur check: das Gewünschte liegt über mindestens einer Grenze
  2  Befehlszeile, Maschine oder Schreibziel ist unbrauchbar;
     jeder Grund steht auf der Standardfehlerausgabe, ein Satz je Zeile

Beispiele:
  feedwright router.feedwright                 im Fenster öffnen
  feedwright check router.feedwright           alle Ergebnisse als Text
  feedwright check router.feedwright --json &gt; now.json
  feedwright check router.feedwright &gt; log.txt || echo &quot;Grenzen ansehen&quot;
  feedwright sheet router.feedwright --output router.pdf --paper letter
  feedwright sheet router.feedwright -o log.pdf --working --date 2026-05-01
  feedwright schema &gt; machine.schema.json
  feedwright picture router.feedwright -o window.png --size 1920x1080 --dark

Dieselbe Datei ergibt am selben Datum dieselben Bytes, gleich welche Ländereinstellung gilt:
Die Texte sind englisch, wenn --language nicht angegeben ist.
Die Werte helfen bei der Auswahl von Teilen; sie sind keine Freigabe.</translation>
    </message>
    <message>
        <source>Try feedwright --help.</source>
        <translation>Siehe feedwright --help.</translation>
    </message>
    <message>
        <source>The command line lacks something that is needed (%1).</source>
        <translation>In der Befehlszeile fehlt etwas Nötiges (%1).</translation>
    </message>
    <message>
        <source>The command line has something that is not known (%1).</source>
        <translation>In der Befehlszeile steht etwas Unbekanntes (%1).</translation>
    </message>
    <message>
        <source>The command line cannot be understood at %1.</source>
        <translation>Die Befehlszeile ist bei %1 nicht zu verstehen.</translation>
    </message>
</context>
</TS>

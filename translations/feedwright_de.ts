<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>About</name>
    <message>
        <source>window, text, printing</source>
        <translation>Fenster, Text, Druck</translation>
    </message>
    <message>
        <source>plots</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>units, root finding</source>
        <translation>Einheiten, Nullstellensuche</translation>
    </message>
    <message>
        <source>reading machine files</source>
        <translation>Maschinendateien lesen</translation>
    </message>
    <message>
        <source>writing numbers</source>
        <translation>Zahlen schreiben</translation>
    </message>
    <message>
        <source>values, or what went wrong</source>
        <translation>Werte oder was schiefging</translation>
    </message>
    <message>
        <source>command line</source>
        <translation>Befehlszeile</translation>
    </message>
</context>
<context>
    <name>AxesPanel</name>
    <message numerus="yes">
        <source>%n axis(es)</source>
        <translation>
            <numerusform>%n Achse</numerusform>
            <numerusform>%n Achsen</numerusform>
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
    <message>
        <source>supply over</source>
        <translation>Netzteil über</translation>
    </message>
    <message>
        <source>bus over</source>
        <translation>Zwischenkreis über</translation>
    </message>
    <message numerus="yes">
        <source>%n to settle</source>
        <translation>
            <numerusform>%n zu klären</numerusform>
            <numerusform>%n zu klären</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 over</source>
        <comment>limit</comment>
        <translation>%1 über</translation>
    </message>
    <message>
        <source>%1 close</source>
        <comment>limit</comment>
        <translation>%1 knapp</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>trouble of an axis</comment>
        <translation>
            <numerusform>%1 und %n weitere</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>can fall</source>
        <translation>kann herabfallen</translation>
    </message>
    <message>
        <source>would whip</source>
        <translation>würde schwingen</translation>
    </message>
    <message>
        <source>can slip at rest</source>
        <translation>kann im Stillstand rutschen</translation>
    </message>
    <message>
        <source>runs near whip</source>
        <translation>läuft nahe der Biegeschwingung</translation>
    </message>
    <message>
        <source>screw may shake</source>
        <translation>Spindel kann schwingen</translation>
    </message>
    <message>
        <source>braking lifts the supply</source>
        <translation>Bremsen hebt die Netzteilspannung</translation>
    </message>
    <message>
        <source>danger</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>can rise</source>
        <translation>kann hochfahren</translation>
    </message>
    <message>
        <source>may stall from rest</source>
        <translation>kann beim Anlaufen stehen bleiben</translation>
    </message>
</context>
<context>
    <name>AxisActions</name>
    <message>
        <source>add axis %1</source>
        <translation>Achse %1 hinzufügen</translation>
    </message>
    <message>
        <source>remove axis %1</source>
        <translation>Achse %1 entfernen</translation>
    </message>
    <message>
        <source>duplicate axis %1 as %2</source>
        <translation>Achse %1 als %2 duplizieren</translation>
    </message>
    <message>
        <source>move axis %1 up</source>
        <translation>Achse %1 nach oben schieben</translation>
    </message>
    <message>
        <source>move axis %1 down</source>
        <translation>Achse %1 nach unten schieben</translation>
    </message>
    <message>
        <source>paste axis %1</source>
        <translation>Achse %1 einfügen</translation>
    </message>
    <message numerus="yes">
        <source>paste %n axis(es)</source>
        <translation>
            <numerusform>%n Achse einfügen</numerusform>
            <numerusform>%n Achsen einfügen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A machine has at most %n axis(es).</source>
        <translation>
            <numerusform>Eine Maschine hat höchstens %n Achse.</numerusform>
            <numerusform>Eine Maschine hat höchstens %n Achsen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>AxisClip</name>
    <message>
        <source>There is no axis on the clipboard.</source>
        <translation>In der Zwischenablage ist keine Achse.</translation>
    </message>
    <message>
        <source>The machine on the clipboard has no axis.</source>
        <translation>Die Maschine in der Zwischenablage hat keine Achse.</translation>
    </message>
    <message>
        <source>What is on the clipboard is too large for a machine.</source>
        <translation>Der Inhalt der Zwischenablage ist zu groß für eine Maschine.</translation>
    </message>
    <message>
        <source>What is on the clipboard is no axis. %1</source>
        <translation>Der Inhalt der Zwischenablage ist keine Achse. %1</translation>
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
    <name>Cautions</name>
    <message>
        <source>%1: %2</source>
        <comment>limit, answer</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Differences</name>
    <message>
        <source>axis %1 is new</source>
        <translation>Achse %1 ist neu</translation>
    </message>
    <message>
        <source>axis %1 is gone</source>
        <translation>Achse %1 fehlt</translation>
    </message>
    <message>
        <source>place of axis %1</source>
        <translation>Platz der Achse %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>axis: what differs</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>type of %1</source>
        <translation>%1 (Art)</translation>
    </message>
    <message>
        <source>source of %1</source>
        <translation>%1 (Quelle)</translation>
    </message>
    <message>
        <source>name of the machine</source>
        <translation>Name der Maschine</translation>
    </message>
    <message>
        <source>notes on the machine</source>
        <translation>Notizen zur Maschine</translation>
    </message>
    <message>
        <source>what a newer program wrote</source>
        <translation>was ein neueres Programm geschrieben hat</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) differ: %1.</source>
        <translation>
            <numerusform>%n Abweichung: %1.</numerusform>
            <numerusform>%n Abweichungen: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und %n weitere</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
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
    <message>
        <source>&quot;%1&quot; is not a choice for %2.</source>
        <translation>„%1“ steht für %2 nicht zur Wahl.</translation>
    </message>
    <message>
        <source>%1 is a whole number from %2 to %3.</source>
        <translation>%1 ist eine ganze Zahl von %2 bis %3.</translation>
    </message>
    <message>
        <source>%1 must be %2, such as %3.</source>
        <comment>column, bound, example</comment>
        <translation>%1 muss %2 sein, etwa %3.</translation>
    </message>
    <message>
        <source>%1 is too long: at most %2 bytes are kept, and it has %3.</source>
        <comment>column</comment>
        <translation>%1 ist zu lang: Höchstens %2 Byte werden aufgenommen, es sind %3.</translation>
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
        <translation>Warnungen</translation>
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
    <message>
        <source>Size of the letters, in points.</source>
        <translation>Schriftgröße in Punkt.</translation>
    </message>
    <message>
        <source>Show this page of help instead, such as limit/whip.</source>
        <translation>Stattdessen diese Hilfeseite zeigen, etwa limit/whip.</translation>
    </message>
    <message>
        <source>The size of letters is from 4 to 72 points, not &quot;%1&quot;.</source>
        <translation>Die Schriftgröße liegt zwischen 4 und 72 Punkt, nicht „%1“.</translation>
    </message>
    <message>
        <source>There is no page of help &quot;%1&quot;; &quot;limit/whip&quot; is one.</source>
        <translation>Es gibt keine Hilfeseite „%1“; „limit/whip“ ist eine.</translation>
    </message>
    <message>
        <source>All axes at once</source>
        <translation>Alle Achsen zugleich</translation>
    </message>
    <message>
        <source>Show the page of the whole machine.</source>
        <translation>Die Seite der ganzen Maschine zeigen.</translation>
    </message>
    <message>
        <source>top feed, limits clear</source>
        <translation>größter Vorschub, alle Grenzen klar</translation>
    </message>
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
    <message>
        <source>governs the axial force</source>
        <translation>bestimmt die Axialkraft</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Using the program</source>
        <translation>Bedienung des Programms</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Limits of feed</source>
        <translation>Grenzen des Vorschubs</translation>
    </message>
    <message>
        <source>Limits of axial force</source>
        <translation>Grenzen der Axialkraft</translation>
    </message>
    <message>
        <source>Other limits</source>
        <translation>Weitere Grenzen</translation>
    </message>
</context>
<context>
    <name>KeysPage</name>
    <message>
        <source>Drawing of the drive train</source>
        <translation>Zeichnung des Antriebsstrangs</translation>
    </message>
    <message>
        <source>the next part, and its fields</source>
        <translation>zum nächsten Teil und seinen Feldern</translation>
    </message>
    <message>
        <source>the part before it</source>
        <translation>zum Teil davor</translation>
    </message>
    <message>
        <source>the fields of the part the mark stands on</source>
        <translation>zu den Feldern des markierten Teils</translation>
    </message>
    <message>
        <source>Ladders of limits</source>
        <translation>Leitern der Grenzen</translation>
    </message>
    <message>
        <source>the next limit, the one before it</source>
        <translation>zur nächsten Grenze, zur vorigen</translation>
    </message>
    <message>
        <source>the lowest limit, the last one</source>
        <translation>zur niedrigsten Grenze, zur letzten</translation>
    </message>
    <message>
        <source>the field the limit comes from, and its working</source>
        <translation>zum Feld, aus dem die Grenze kommt, und zu ihrem Rechenweg</translation>
    </message>
    <message>
        <source>Plots</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>read the curves off, a step at a time</source>
        <translation>die Kurven schrittweise ablesen</translation>
    </message>
    <message>
        <source>zoom in and out</source>
        <translation>vergrößern und verkleinern</translation>
    </message>
    <message>
        <source>show the whole plot again</source>
        <translation>wieder das ganze Diagramm zeigen</translation>
    </message>
    <message>
        <source>copy the picture and its numbers</source>
        <translation>das Bild und seine Zahlen kopieren</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Everything can be reached from the keyboard. Tab goes from one thing to the next, Shift+Tab back. This page is made from the menus as they are now.</source>
        <translation>Alles ist mit der Tastatur erreichbar. Tab geht von einem zum nächsten, Umschalt+Tab zurück. Diese Seite entsteht aus den Menüs, wie sie gerade sind.</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Taste</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was sie tut</translation>
    </message>
    <message>
        <source>In a field, Enter takes what was typed and Escape puts back what stood there. The mouse wheel never changes a field.</source>
        <translation>In einem Feld übernimmt die Eingabetaste das Getippte, und Escape stellt wieder her, was dort stand. Das Mausrad ändert nie ein Feld.</translation>
    </message>
    <message>
        <source>type over a figure of that part; Tab goes to the next figure</source>
        <translation>eine Angabe dieses Teils überschreiben; Tab geht zur nächsten Angabe</translation>
    </message>
    <message>
        <source>what can stand in the part&apos;s place</source>
        <translation>was an der Stelle des Teils stehen kann</translation>
    </message>
    <message>
        <source>with the mark on the carriage: move it along the travel</source>
        <translation>mit der Marke auf dem Schlitten: ihn entlang des Verfahrwegs bewegen</translation>
    </message>
    <message>
        <source>with the mark on the carriage: to an end of the travel</source>
        <translation>mit der Marke auf dem Schlitten: an ein Ende des Verfahrwegs</translation>
    </message>
    <message>
        <source>with the mark on a belt loop: choose a pulley; Shift and an arrow moves it</source>
        <translation>mit der Marke auf einer Riemenschleife: eine Scheibe wählen; Umschalt und ein Pfeil bewegt sie</translation>
    </message>
    <message>
        <source>larger, smaller</source>
        <translation>größer, kleiner</translation>
    </message>
    <message>
        <source>the whole drawing again</source>
        <translation>wieder die ganze Zeichnung</translation>
    </message>
    <message>
        <source>copy the drawing as a picture</source>
        <translation>die Zeichnung als Bild kopieren</translation>
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
        <source>%1: %2. %3</source>
        <comment>limit, verdict, why open</comment>
        <translation>%1: %2. %3</translation>
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
    <message>
        <source>governs</source>
        <translation>bestimmt</translation>
    </message>
    <message>
        <source>open:</source>
        <translation>offen:</translation>
    </message>
    <message>
        <source>%1, at most %2</source>
        <comment>value, wanted with unit</comment>
        <translation>%1, höchstens %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>list of limits, the last</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 are within %2 %: both govern.</source>
        <translation>%1 liegen innerhalb von %2 %: beide bestimmen.</translation>
    </message>
    <message>
        <source>%1 are within %2 %: all govern.</source>
        <translation>%1 liegen innerhalb von %2 %: alle bestimmen.</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>%1, wanted %2</source>
        <comment>value, wanted with unit</comment>
        <translation>%1, gewünscht %2</translation>
    </message>
    <message>
        <source> This limit governs.</source>
        <translation> Diese Grenze bestimmt.</translation>
    </message>
    <message>
        <source>Limits of axial force, worst side</source>
        <translation>Grenzen der Axialkraft, höher belastete Seite</translation>
    </message>
</context>
<context>
    <name>MachineView</name>
    <message>
        <source>%1 [%2]</source>
        <comment>figure, its unit</comment>
        <translation>%1 [%2]</translation>
    </message>
    <message>
        <source>Feed governed by</source>
        <translation>Vorschub bestimmt durch</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Vorschub</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Axial force governed by</source>
        <translation>Axialkraft bestimmt durch</translation>
    </message>
    <message>
        <source>Axial force</source>
        <translation>Axialkraft</translation>
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
        <source>Motor torque used</source>
        <translation>Genutztes Motormoment</translation>
    </message>
    <message>
        <source>RMS torque used</source>
        <translation>Genutztes Effektivmoment</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>margin (limit)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Moved mass</source>
        <translation>Bewegte Masse</translation>
    </message>
    <message>
        <source>2 × %1</source>
        <comment>motor</comment>
        <translation>2 × %1</translation>
    </message>
    <message>
        <source>belt %1, %2 : %3 teeth</source>
        <comment>profile, teeth of motor&apos;s pulley : of screw&apos;s pulley</comment>
        <translation>Riemen %1, %2 : %3 Zähne</translation>
    </message>
    <message numerus="yes">
        <source>belt loop, %n pulley(s)</source>
        <translation>
            <numerusform>Riemenschleife, %n Scheibe</numerusform>
            <numerusform>Riemenschleife, %n Scheiben</numerusform>
        </translation>
    </message>
    <message>
        <source>coupling</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>%1 × %2, %3, %4–%5</source>
        <comment>screw: diameter × lead, span, motor end–far end</comment>
        <translation>%1 × %2, %3, %4–%5</translation>
    </message>
    <message>
        <source>2 × %1</source>
        <comment>screw or belt</comment>
        <translation>2 × %1</translation>
    </message>
    <message>
        <source>Motors</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Heat at rest</source>
        <translation>Wärme im Stillstand</translation>
    </message>
    <message>
        <source>Energy returned</source>
        <translation>Rückgespeiste Energie</translation>
    </message>
    <message>
        <source>Bus, axis alone</source>
        <translation>Zwischenkreis, Achse allein</translation>
    </message>
    <message>
        <source>Outputs</source>
        <translation>Ausgänge</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Alle zugleich</translation>
    </message>
    <message>
        <source>Most of one axis</source>
        <translation>Größter Wert einer Achse</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Zulässig</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>figure (axis letter)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>Axes</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <source>Supply power</source>
        <translation>Netzteilleistung</translation>
    </message>
    <message>
        <source>Bus voltage, all braking</source>
        <translation>Zwischenkreisspannung, alle bremsen</translation>
    </message>
    <message>
        <source>Top feed, limits clear</source>
        <translation>Größter Vorschub, alle Grenzen klar</translation>
    </message>
    <message>
        <source>Step rate reads</source>
        <translation>Schrittfrequenz ist</translation>
    </message>
    <message>
        <source>Step rate, feed reached</source>
        <translation>Schrittfrequenz bei erreichtem Vorschub</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>What is typed for %1 cannot be taken and is not saved.</source>
        <translation>Die Eingabe für %1 ist nicht verwendbar und wird nicht gespeichert.</translation>
    </message>
    <message numerus="yes">
        <source>What is typed for %1 and %n more field(s) cannot be taken and is not saved.</source>
        <translation>
            <numerusform>Die Eingaben für %1 und %n weiteres Feld sind nicht verwendbar und werden nicht gespeichert.</numerusform>
            <numerusform>Die Eingaben für %1 und %n weitere Felder sind nicht verwendbar und werden nicht gespeichert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>What is typed for %1 cannot be taken, and %n more text(s) wait; they are not saved.</source>
        <translation>
            <numerusform>Die Eingabe für %1 ist nicht verwendbar, und %n weiterer Text wartet; sie werden nicht gespeichert.</numerusform>
            <numerusform>Die Eingabe für %1 ist nicht verwendbar, und %n weitere Texte warten; sie werden nicht gespeichert.</numerusform>
        </translation>
    </message>
    <message>
        <source>The answer to %1 is not kept yet and is not saved.</source>
        <translation>Die Antwort auf %1 ist noch nicht aufgenommen und wird nicht gespeichert.</translation>
    </message>
    <message numerus="yes">
        <source>The answers to %1 and to %n more thing(s) are not kept yet and are not saved.</source>
        <translation>
            <numerusform>Die Antworten auf %1 und auf %n Weiteres sind noch nicht aufgenommen und werden nicht gespeichert.</numerusform>
            <numerusform>Die Antworten auf %1 und auf %n weitere Feststellungen sind noch nicht aufgenommen und werden nicht gespeichert.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Parts</name>
    <message>
        <source>%1 cannot be read.</source>
        <translation>%1 lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name of a parts list, what is wrong with it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>part: the listed part it became</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Der Ordner %1 lässt sich nicht anlegen.</translation>
    </message>
</context>
<context>
    <name>Prompts</name>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 hat Änderungen, die nicht gespeichert sind.</translation>
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
    <message>
        <source>Tables as text (*.csv *.tsv *.txt)</source>
        <translation>Tabellen als Text (*.csv *.tsv *.txt)</translation>
    </message>
    <message>
        <source>Import a table</source>
        <translation>Tabelle importieren</translation>
    </message>
    <message>
        <source>&amp;Don&apos;t save</source>
        <translation>&amp;Nicht speichern</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>Numbers (*.csv)</source>
        <translation>Zahlen (*.csv)</translation>
    </message>
    <message>
        <source>Save the study as</source>
        <translation>Studie speichern unter</translation>
    </message>
</context>
<context>
    <name>PulleyMove</name>
    <message>
        <source>pulley %1 moved</source>
        <comment>its number</comment>
        <translation>Scheibe %1 versetzt</translation>
    </message>
</context>
<context>
    <name>ReadOut</name>
    <message>
        <source>carriage at x %1</source>
        <translation>Schlitten bei x %1</translation>
    </message>
    <message>
        <source>pulley %1</source>
        <comment>its number</comment>
        <translation>Scheibe %1</translation>
    </message>
    <message>
        <source>x</source>
        <comment>coordinate</comment>
        <translation>x</translation>
    </message>
    <message>
        <source>y</source>
        <comment>coordinate</comment>
        <translation>y</translation>
    </message>
    <message>
        <source>slide stands at</source>
        <translation>Stellung im Spannweg</translation>
    </message>
    <message>
        <source>belt does not fit</source>
        <translation>Riemen passt nicht</translation>
    </message>
    <message>
        <source>none would</source>
        <translation>keiner würde passen</translation>
    </message>
    <message>
        <source>would: %1 teeth</source>
        <comment>list of numbers</comment>
        <translation>passend: %1 Zähne</translation>
    </message>
</context>
<context>
    <name>RecoveryOffers</name>
    <message>
        <source>A machine without a name (axes %1), last changed %2, was never saved.</source>
        <translation>Eine Maschine ohne Namen (Achsen %1), zuletzt geändert %2, wurde nie gespeichert.</translation>
    </message>
    <message>
        <source>%1 (axes %2), last changed %3, was never saved.</source>
        <translation>%1 (Achsen %2), zuletzt geändert %3, wurde nie gespeichert.</translation>
    </message>
    <message>
        <source>Changes to %1, made %2, were not saved, and the file cannot be read now.</source>
        <translation>Änderungen an %1 (%2) wurden nicht gespeichert, und die Datei lässt sich jetzt nicht lesen.</translation>
    </message>
    <message>
        <source>Changes to %1, made %2, were not saved. Against the file, %3</source>
        <translation>Änderungen an %1 (%2) wurden nicht gespeichert. Gegenüber der Datei %3</translation>
    </message>
    <message>
        <source>Changes to %1, made %2, were not saved, and the file has been changed since. Against the file as it is now, %3</source>
        <translation>Änderungen an %1 (%2) wurden nicht gespeichert, und die Datei wurde seitdem geändert. Gegenüber der Datei, wie sie jetzt ist, %3</translation>
    </message>
    <message>
        <source>Take up</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Look at it in another window</source>
        <translation>In einem anderen Fenster ansehen</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>take up what was not saved</source>
        <translation>Ungespeichertes übernehmen</translation>
    </message>
</context>
<context>
    <name>Remedies</name>
    <message>
        <source>%1 %2: %3 has %4, wanted at most %5.</source>
        <comment>sign, verdict, limit, value, wanted value</comment>
        <translation>%1 %2: %3 beträgt %4, gewünscht höchstens %5.</translation>
    </message>
    <message>
        <source>%1 %2: %3 allows %4, wanted is %5.</source>
        <comment>sign, verdict, limit, value, wanted value</comment>
        <translation>%1 %2: %3 erlaubt %4, gewünscht %5.</translation>
    </message>
    <message>
        <source>No single change would do; two together may, or another layout.</source>
        <translation>Keine einzelne Änderung genügt; zwei zusammen vielleicht, oder eine andere Anordnung.</translation>
    </message>
    <message>
        <source>To reach it, one of:</source>
        <translation>Um den Wunsch zu erreichen, eines von:</translation>
    </message>
    <message>
        <source>To be clear of it, one of:</source>
        <translation>Um genug Reserve zu haben, eines von:</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>field: choice</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 ≤ %2</source>
        <comment>field, value</comment>
        <translation>%1 ≤ %2</translation>
    </message>
    <message>
        <source>%1 ≥ %2</source>
        <comment>field, value</comment>
        <translation>%1 ≥ %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>field, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>figures of a screw, its name in the list</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>End bearings: %1</source>
        <comment>name in the list</comment>
        <translation>Endlagerung: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>part, its name in the list</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>a part with %1</source>
        <comment>figure a bought part must have</comment>
        <translation>ein Teil mit %1</translation>
    </message>
    <message>
        <source>ask less: %1</source>
        <comment>target and value</comment>
        <translation>weniger verlangen: %1</translation>
    </message>
    <message>
        <source>then nothing governs</source>
        <translation>dann bestimmt nichts</translation>
    </message>
    <message>
        <source>then %1: %2</source>
        <comment>value of the limit afterwards, verdict</comment>
        <translation>dann %1: %2</translation>
    </message>
    <message>
        <source>then it is no limit any more</source>
        <translation>dann ist es keine Grenze mehr</translation>
    </message>
    <message>
        <source>%1; the feed is then governed by %2: %3</source>
        <comment>what becomes of the limit, limit, feed</comment>
        <translation>%1; den Vorschub bestimmt dann %2: %3</translation>
    </message>
    <message>
        <source>then %1 governs: %2, %3</source>
        <comment>limit, value, verdict</comment>
        <translation>dann bestimmt %1: %2, %3</translation>
    </message>
    <message>
        <source>%1 of axis %2</source>
        <comment>limit, letter</comment>
        <translation>%1 der Achse %2</translation>
    </message>
    <message>
        <source>It only moves the trouble, over is then: %1.</source>
        <comment>limits</comment>
        <translation>Das verlagert nur das Problem, über ist dann: %1.</translation>
    </message>
    <message>
        <source>%1: %2 → no limit any more</source>
        <comment>limit, value before</comment>
        <translation>%1: %2 → keine Grenze mehr</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>%1: %2 → %3, %4 %5</source>
        <comment>limit, value before, after, sign, verdict</comment>
        <translation>%1: %2 → %3, %4 %5</translation>
    </message>
    <message>
        <source>%1, all its figures from the list: %2</source>
        <comment>name of a listed part, its source</comment>
        <translation>%1, alle Werte aus der Liste: %2</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <comment>field, value before, value after</comment>
        <translation>%1: %2 → %3</translation>
    </message>
    <message>
        <source>All other limits stay as they are.</source>
        <translation>Alle anderen Grenzen bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>%1: %2 in row %3: %4</source>
        <comment>table, column, row, value</comment>
        <translation>%1: %2 in Zeile %3: %4</translation>
    </message>
    <message>
        <source>%1 where %2 is wanted</source>
        <comment>value reached, value wanted</comment>
        <translation>%1, wo %2 gewünscht sind</translation>
    </message>
    <message>
        <source>%1 %2 (now %3)</source>
        <comment>limit, value afterwards, value at present</comment>
        <translation>%1 %2 (jetzt %3)</translation>
    </message>
    <message>
        <source>Further over than before: %1.</source>
        <comment>limits, with their values</comment>
        <translation>Weiter über der Grenze als vorher: %1.</translation>
    </message>
    <message>
        <source>No longer known then: %1.</source>
        <comment>limits</comment>
        <translation>Dann nicht mehr bekannt: %1.</translation>
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
        <translation>Warnungen</translation>
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
    <message>
        <source>Figures</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Sides and guides</source>
        <translation>Seiten und Führungen</translation>
    </message>
    <message>
        <source>Falling and braking</source>
        <translation>Absinken und Bremsen</translation>
    </message>
    <message>
        <source>Preload</source>
        <translation>Vorspannung</translation>
    </message>
    <message>
        <source>Belt</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>Hauling belt</source>
        <translation>Zugriemen</translation>
    </message>
    <message>
        <source>Stiffness at the worst place</source>
        <translation>Steifigkeit, ungünstigste Stelle</translation>
    </message>
    <message>
        <source>Error on reversal</source>
        <translation>Umkehrfehler</translation>
    </message>
    <message>
        <source>Error over the travel</source>
        <translation>Wegfehler</translation>
    </message>
    <message>
        <source>Error under cut</source>
        <translation>Schnittfehler</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>Lebensdauer</translation>
    </message>
    <message>
        <source>Moves and duty</source>
        <translation>Fahrten und Arbeitszyklus</translation>
    </message>
    <message>
        <source>Motor, controller and supply</source>
        <translation>Motor, Steuerung und Netzteil</translation>
    </message>
    <message>
        <source>Pulleys of the loop</source>
        <translation>Scheiben der Riemenschleife</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number of a pulley, what it sits on</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2 in mesh</source>
        <comment>arc of contact, teeth</comment>
        <translation>%1, %2 im Eingriff</translation>
    </message>
    <message>
        <source>span after it</source>
        <translation>Trum danach</translation>
    </message>
    <message>
        <source>Load cases</source>
        <translation>Lastfälle</translation>
    </message>
    <message>
        <source>%1, all the spindle gives</source>
        <comment>cutting thrust</comment>
        <translation>%1, mehr gibt die Arbeitsspindel nicht</translation>
    </message>
    <message>
        <source>torque at the motor</source>
        <translation>Moment am Motor</translation>
    </message>
    <message>
        <source>Smooth roller</source>
        <translation>Glatte Rolle</translation>
    </message>
    <message>
        <source>Ø %1</source>
        <translation>Ø %1</translation>
    </message>
    <message>
        <source>All axes at once</source>
        <translation>Alle Achsen zugleich</translation>
    </message>
    <message>
        <source>changed from %1</source>
        <comment>name of a part in a list</comment>
        <translation>geändert gegenüber %1</translation>
    </message>
    <message>
        <source>Top feed, limits clear</source>
        <translation>Größter Vorschub, alle Grenzen klar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>sign and verdict, how many limits</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Dangers</source>
        <translation>Gefahren</translation>
    </message>
    <message>
        <source>not chosen yet: the program&apos;s own figures</source>
        <comment>of a part to buy</comment>
        <translation>noch nicht ausgewählt: Werte des Programms</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>mehr als %1</translation>
    </message>
    <message>
        <source>%1, typed as %2</source>
        <comment>value, the sum it was worked out from</comment>
        <translation>%1, eingegeben als %2</translation>
    </message>
    <message>
        <source>governs the axial force</source>
        <translation>bestimmt die Axialkraft</translation>
    </message>
    <message>
        <source>axial force on one drive</source>
        <translation>Axialkraft auf einen Antrieb</translation>
    </message>
    <message>
        <source>force on the drive</source>
        <translation>Kraft auf den Antrieb</translation>
    </message>
    <message>
        <source>force on one drive</source>
        <translation>Kraft auf einen Antrieb</translation>
    </message>
    <message>
        <source>%1, plus its ends</source>
        <comment>screw with its length between bearings</comment>
        <translation>%1, dazu die Enden</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>A long screw that whips before it is fast enough: see what lead, end supports and length do to the feed.</source>
        <translation>Eine lange Spindel, die schwingt, bevor sie schnell genug ist: zeigt, wie sich Steigung, Endlagerung und Länge auf den Vorschub auswirken.</translation>
    </message>
    <message>
        <source>A heavy head on a column, and a wish for a few micrometres: see what holds it up and where motion is lost.</source>
        <translation>Ein schwerer Kopf an einer Säule und der Wunsch nach wenigen Mikrometern: zeigt, was ihn oben hält und wo Bewegung verloren geht.</translation>
    </message>
    <message>
        <source>Trapezoidal screws and a slow controller: see how step rate and friction set the limits.</source>
        <translation>Trapezspindeln und eine langsame Steuerung: zeigt, wie Schrittfrequenz und Reibung die Grenzen setzen.</translation>
    </message>
</context>
<context>
    <name>Studies</name>
    <message>
        <source>cutting thrust</source>
        <translation>Vorschubkraft</translation>
    </message>
    <message>
        <source>the motor can push</source>
        <translation>vom Motor aufbringbar</translation>
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
        <source>At the wanted feed, %1, the motor needs %2 of its usable %3.</source>
        <translation>Beim gewünschten Vorschub, %1, braucht der Motor %2 von nutzbaren %3.</translation>
    </message>
    <message>
        <source>At the wanted feed, %1, the motor needs %2; its curve ends before.</source>
        <translation>Beim gewünschten Vorschub, %1, braucht der Motor %2; seine Kennlinie endet vorher.</translation>
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
        <source>These end supports do not hold the screw.</source>
        <translation>Diese Endlagerung hält die Spindel nicht.</translation>
    </message>
    <message>
        <source>Thrust</source>
        <translation>Schub</translation>
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
        <source>%1, %2</source>
        <comment>what an axis shows, its unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>allowed feed</source>
        <translation>zul. Vorschub</translation>
    </message>
    <message>
        <source>The motor&apos;s curve ends before the wanted feed of %1.</source>
        <translation>Die Motorkennlinie endet vor dem gewünschten Vorschub von %1.</translation>
    </message>
    <message>
        <source>At %1 the motor can accelerate with %2; wanted is %3.</source>
        <translation>Bei %1 kann der Motor mit %2 beschleunigen; gewünscht sind %3.</translation>
    </message>
    <message>
        <source>At %1 the motor can accelerate with %2.</source>
        <translation>Bei %1 kann der Motor mit %2 beschleunigen.</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>on reversal</source>
        <translation>beim Umkehren</translation>
    </message>
    <message>
        <source>over the travel</source>
        <translation>über den Verfahrweg</translation>
    </message>
    <message>
        <source>under cut</source>
        <translation>beim Schnitt</translation>
    </message>
    <message>
        <source>sum</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>known so far</source>
        <translation>bisher bekannt</translation>
    </message>
    <message>
        <source>root of squares</source>
        <translation>Wurzel der Quadrate</translation>
    </message>
    <message>
        <source>one step</source>
        <translation>ein Schritt</translation>
    </message>
    <message>
        <source>%1: open, past the motor&apos;s pull-out torque</source>
        <translation>%1: offen, über dem Grenzmoment des Motors</translation>
    </message>
    <message>
        <source>%1: missing %2 (%3)</source>
        <comment>what is open, the field it wants, the part it belongs to</comment>
        <translation>%1: es fehlt %2 (%3)</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>two sentences</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Added up: on reversal %1, under cut %2; a belt&apos;s own pitch error over the travel is not reckoned.</source>
        <translation>Zusammengezählt: beim Umkehren %1, beim Schnitt %2; der Teilungsfehler des Riemens selbst über den Verfahrweg ist nicht eingerechnet.</translation>
    </message>
    <message>
        <source>Added up: on reversal %1, over the travel %2, under cut %3.</source>
        <translation>Zusammengezählt: beim Umkehren %1, über den Verfahrweg %2, beim Schnitt %3.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>sign, word of a margin</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>root mean square of the duty, %1</source>
        <translation>Effektivwert des Arbeitszyklus, %1</translation>
    </message>
    <message>
        <source>usable for a moment</source>
        <translation>kurzzeitig nutzbar</translation>
    </message>
    <message>
        <source>usable for ever</source>
        <translation>dauernd nutzbar</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>what the motor does, torque</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 at %3</source>
        <comment>what the motor does, torque, speed</comment>
        <translation>%1 %2 bei %3</translation>
    </message>
    <message>
        <source>%1: enough up to %2</source>
        <comment>what the motor does, feed</comment>
        <translation>%1: genügt bis %2</translation>
    </message>
    <message>
        <source>enough up to %1</source>
        <translation>genügt bis %1</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>A move needs a wanted feed and a wanted acceleration; give both.</source>
        <translation>Eine Fahrt braucht einen gewünschten Vorschub und eine gewünschte Beschleunigung; beide angeben.</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>motor torque</source>
        <translation>Motormoment</translation>
    </message>
    <message>
        <source>motor torque, upwards</source>
        <translation>Motormoment, aufwärts</translation>
    </message>
    <message>
        <source>motor torque, downwards</source>
        <translation>Motormoment, abwärts</translation>
    </message>
    <message>
        <source>available</source>
        <translation>verfügbar</translation>
    </message>
    <message>
        <source>asks %1, has %2</source>
        <translation>verlangt %1, verfügbar %2</translation>
    </message>
    <message>
        <source>%1 take at least %2, at %3 in the middle.</source>
        <translation>%1 dauern mindestens %2, in der Mitte mit %3.</translation>
    </message>
    <message>
        <source>%1 take at least %2; the way is too short for the wanted feed, it comes to %3.</source>
        <translation>%1 dauern mindestens %2; der Weg ist zu kurz für den gewünschten Vorschub, erreicht werden %3.</translation>
    </message>
    <message>
        <source>%1 The motor is hardest pressed at %2: %3.</source>
        <comment>sentence, time, asked and available torque</comment>
        <translation>%1 Am stärksten gefordert ist der Motor bei %2: %3.</translation>
    </message>
    <message>
        <source>accelerating</source>
        <translation>Beschleunigen</translation>
    </message>
    <message>
        <source>cutting</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>holding</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>rotor and its shaft</source>
        <translation>Rotor und seine Welle</translation>
    </message>
    <message>
        <source>turning screw</source>
        <translation>drehende Spindel</translation>
    </message>
    <message>
        <source>turning pulleys</source>
        <translation>drehende Scheiben</translation>
    </message>
    <message>
        <source>moving mass</source>
        <translation>bewegte Masse</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewichtskraft</translation>
    </message>
    <message>
        <source>guides and covers</source>
        <translation>Führungen und Abdeckungen</translation>
    </message>
    <message>
        <source>bearings and preload</source>
        <translation>Lager und Vorspannung</translation>
    </message>
    <message>
        <source>bearings</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>lost in the thread</source>
        <translation>Verlust im Gewinde</translation>
    </message>
    <message>
        <source>lost in the belt</source>
        <translation>Verlust im Riemen</translation>
    </message>
    <message>
        <source>lost in the stage</source>
        <translation>Verlust in der Riemenstufe</translation>
    </message>
    <message>
        <source>The screw stands still and does not whip; the other limits hardly change with its length.</source>
        <translation>Die Spindel steht still und schwingt nicht; die anderen Grenzen ändern sich kaum mit ihrer Länge.</translation>
    </message>
    <message>
        <source>whip, %1</source>
        <comment>supports at the two ends</comment>
        <translation>Biegeschwingen, %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>names of limits that run together</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>Verfahrweg</translation>
    </message>
    <message>
        <source>give of the drive</source>
        <translation>Nachgeben des Antriebs</translation>
    </message>
    <message>
        <source>on reversal, from friction</source>
        <translation>beim Umkehren, durch Reibung</translation>
    </message>
    <message>
        <source>under the wanted cut</source>
        <translation>beim gewünschten Schnitt</translation>
    </message>
    <message>
        <source>allowed under cut %1</source>
        <translation>beim Schnitt erlaubt %1</translation>
    </message>
    <message>
        <source>A belt that hauls the carriage does not whip; it gives: %1 under the wanted cut at this travel, and more the longer it is.</source>
        <translation>Ein Zugriemen am Schlitten schwingt nicht; er gibt nach: %1 beim gewünschten Schnitt bei diesem Verfahrweg, und mehr, je länger er ist.</translation>
    </message>
    <message>
        <source>A belt that hauls the carriage does not whip; it gives: %1 on reversal at this travel, and more the longer it is.</source>
        <translation>Ein Zugriemen am Schlitten schwingt nicht; er gibt nach: %1 beim Umkehren bei diesem Verfahrweg, und mehr, je länger er ist.</translation>
    </message>
    <message>
        <source>A belt that hauls the carriage does not whip; it gives, and more the longer it is. How much is open without the specific stiffness of each belt or the stiffness of the coupling.</source>
        <translation>Ein Zugriemen am Schlitten schwingt nicht; er gibt nach, und mehr, je länger er ist. Wie viel, bleibt offen ohne die spezifische Steifigkeit jedes Riemens oder die Steifigkeit der Kupplung.</translation>
    </message>
    <message>
        <source>Point at the plot, or press the arrow keys, to read it off. The wheel zooms while the plot has the keyboard or Ctrl is held, dragging pans, a double click or 0 resets, Ctrl+C copies picture and numbers.</source>
        <translation>Zum Ablesen auf das Diagramm zeigen oder die Pfeiltasten drücken. Das Mausrad vergrößert und verkleinert, solange das Diagramm die Tastatur hat oder Strg gehalten wird; Ziehen verschiebt, Doppelklick oder 0 setzt zurück, Strg+C kopiert Bild und Zahlen.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what a column holds, its unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 up to</source>
        <comment>region</comment>
        <translation>%1 bis</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Markiert</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Säule</translation>
    </message>
    <message>
        <source>Part or level</source>
        <translation>Anteil oder Marke</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>Errors</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Torque shares</source>
        <translation>Momentanteile</translation>
    </message>
    <message>
        <source>%1; along the top %2</source>
        <comment>what the two scales show</comment>
        <translation>%1; oben entlang %2</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>what it is, number, unit</comment>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>number, unit, what it is</comment>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>%1 up to %2 %3</source>
        <comment>region, number, unit</comment>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>sign of a margin, text</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>case %1, held to the spindle&apos;s power: %2 at %3</source>
        <comment>number of a load case, thrust, feed</comment>
        <translation>Lastfall %1, auf die Leistung der Arbeitsspindel begrenzt: %2 bei %3</translation>
    </message>
    <message>
        <source>case %1: %2 at %3</source>
        <comment>number of a load case, thrust, feed</comment>
        <translation>Lastfall %1: %2 bei %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a limit, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The motor&apos;s curve ends before the cutting feed of %1.</source>
        <translation>Die Motorkennlinie endet vor dem Vorschub beim Schnitt von %1.</translation>
    </message>
    <message>
        <source>At %1 the motor can cut with %2; wanted is %3.</source>
        <translation>Bei %1 kann der Motor mit %2 schneiden; gewünscht sind %3.</translation>
    </message>
    <message>
        <source>At %1 the motor can cut with %2.</source>
        <translation>Bei %1 kann der Motor mit %2 schneiden.</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>verlangt</translation>
    </message>
    <message>
        <source>▲ past the end of the motor&apos;s curve</source>
        <translation>▲ über das Ende der Motorkennlinie hinaus</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>what the motor does, feed</comment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>Give a feed and an acceleration, or a cutting feed and a thrust, to see where the motor&apos;s torque goes.</source>
        <translation>Vorschub und Beschleunigung oder Vorschub beim Schnitt und Vorschubkraft angeben, um zu sehen, wohin das Motormoment geht.</translation>
    </message>
    <message>
        <source>While %1 the motor is asked %2; the largest share, %3, is %4.</source>
        <comment>what the motor does, torque, torque, where it goes</comment>
        <translation>Beim %1 werden vom Motor %2 verlangt; der größte Anteil, %3: %4.</translation>
    </message>
    <message>
        <source>lowest of all limits</source>
        <translation>niedrigste aller Grenzen</translation>
    </message>
    <message>
        <source>lowest of the known limits</source>
        <translation>niedrigste der bekannten Grenzen</translation>
    </message>
    <message>
        <source>whip as it is, %1</source>
        <comment>supports at the two ends</comment>
        <translation>Biegeschwingen, wie es ist, %1</translation>
    </message>
    <message>
        <source>%1 stops at %2</source>
        <comment>name of a limit, feed</comment>
        <translation>%1 endet bei %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>two sentences</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 Not known yet: %2.</source>
        <comment>sentence, names of limits</comment>
        <translation>%1 Noch nicht bekannt: %2.</translation>
    </message>
    <message>
        <source>At %1 between bearings %2 is the lowest limit, %3.</source>
        <comment>length, name of a limit, feed</comment>
        <translation>Bei %1 Lagerabstand ist die niedrigste Grenze %3: %2.</translation>
    </message>
    <message>
        <source>At %1 between bearings %2 is the lowest limit, %3</source>
        <comment>length, name of a limit, feed</comment>
        <translation>Bei %1 Lagerabstand ist die niedrigste Grenze %3: %2</translation>
    </message>
    <message>
        <source>%1; the longest screw for %2 is %3, then %4 stops it.</source>
        <comment>what governs now, feed, length, names of limits</comment>
        <translation>%1; die längste Spindel für %2 ist %3, darüber begrenzt %4.</translation>
    </message>
    <message>
        <source>%1; no known limit keeps a longer one from %2.</source>
        <comment>what governs now, feed</comment>
        <translation>%1; keine bekannte Grenze hält eine längere Spindel von %2 ab.</translation>
    </message>
    <message>
        <source>allowed on reversal</source>
        <translation>beim Umkehren zulässig</translation>
    </message>
    <message>
        <source>allowed under cut</source>
        <translation>beim Schnitt zulässig</translation>
    </message>
    <message>
        <source>allowed as lost motion</source>
        <translation>als Umkehrverlust zulässig</translation>
    </message>
    <message>
        <source>%1 %2 is open</source>
        <comment>sign, a part of an error</comment>
        <translation>%1 %2 ist offen</translation>
    </message>
    <message>
        <source>%1 %2 is missing</source>
        <comment>sign, a field</comment>
        <translation>%1 %2 fehlt</translation>
    </message>
    <message>
        <source>upwards</source>
        <translation>aufwärts</translation>
    </message>
    <message>
        <source>downwards</source>
        <translation>abwärts</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number, unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>travel %1</source>
        <translation>Verfahrweg %1</translation>
    </message>
    <message>
        <source>%1 wanted %2, not reached with this travel</source>
        <comment>sign, feed</comment>
        <translation>%1 gewünscht %2, mit diesem Verfahrweg nicht erreicht</translation>
    </message>
    <message>
        <source>%1; no length that still holds the travel of %2 reaches %3: %4.</source>
        <comment>what governs now, length, feed, what each limit allows at the most</comment>
        <translation>%1; keine Länge, die den Verfahrweg von %2 noch fasst, erreicht %3: %4.</translation>
    </message>
    <message>
        <source>But at the wanted feed the turning nut may shake the still screw, the longer the more: read the cautions.</source>
        <translation>Beim gewünschten Vorschub kann aber die drehende Mutter die stehende Spindel zum Schwingen bringen, je länger, desto mehr: die Warnungen lesen.</translation>
    </message>
    <message>
        <source>at least %1 (not all is known)</source>
        <comment>sum of errors</comment>
        <translation>mindestens %1 (nicht alles bekannt)</translation>
    </message>
    <message>
        <source>weight, less what the drive holds</source>
        <translation>Gewicht, weniger was der Antrieb hält</translation>
    </message>
    <message>
        <source>usable at rest</source>
        <translation>nutzbar im Stillstand</translation>
    </message>
    <message>
        <source>%1 But %2 allows no more than %3.</source>
        <comment>sentence, name of a limit, feed</comment>
        <translation>%1 Mehr als %3 erlaubt diese Grenze aber nicht: %2.</translation>
    </message>
    <message>
        <source>%1 The motor would stall at %2: %3. What is drawn after that would not happen.</source>
        <comment>sentence, time, asked and available torque</comment>
        <translation>%1 Der Motor bliebe bei %2 stehen: %3. Was danach gezeichnet ist, käme nicht zustande.</translation>
    </message>
    <message>
        <source>%1, %2 of cut</source>
        <comment>name of a limit, cutting thrust at which it is met</comment>
        <translation>%1, Schnitt mit %2</translation>
    </message>
    <message>
        <source>%1 = case %2</source>
        <comment>what a mark stands for, number of a load case</comment>
        <translation>%1 = Lastfall %2</translation>
    </message>
    <message>
        <source>%1 From %2 on the motor is asked more than can be relied on: %3.</source>
        <comment>sentence, time, asked and usable torque</comment>
        <translation>%1 Ab %2 wird vom Motor mehr verlangt, als von ihm nutzbar ist: %3.</translation>
    </message>
    <message>
        <source>%1 From %2 on it turns past the end of its curve: nothing is known of its torque there.</source>
        <comment>sentence, time</comment>
        <translation>%1 Ab %2 dreht er jenseits des Endes seiner Kennlinie: Über sein Moment dort ist nichts bekannt.</translation>
    </message>
    <message>
        <source>longest at %1: %2, then %3</source>
        <comment>feed, length, limits that are lower, or over, beyond</comment>
        <translation>längste bei %1: %2, dann %3</translation>
    </message>
    <message>
        <source>%1; the longest screw for %2 is %3, beyond it %4 would be over.</source>
        <comment>what governs now, feed, length, names of limits of another kind</comment>
        <translation>%1; die längste Spindel für %2 ist %3, darüber wäre %4 über.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>verdict with its sign, limit with its value</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>SwapWords</name>
    <message>
        <source>one more idler pulley</source>
        <translation>eine Umlenkrolle mehr</translation>
    </message>
    <message>
        <source>without pulley %1</source>
        <comment>its number</comment>
        <translation>ohne Scheibe %1</translation>
    </message>
    <message>
        <source>the screw turns</source>
        <translation>die Spindel dreht</translation>
    </message>
    <message>
        <source>the nut turns</source>
        <translation>die Mutter dreht</translation>
    </message>
    <message>
        <source>with a brake</source>
        <translation>mit Haltebremse</translation>
    </message>
    <message>
        <source>without a brake</source>
        <translation>ohne Haltebremse</translation>
    </message>
    <message>
        <source>one more load case</source>
        <translation>ein Lastfall mehr</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <comment>axis letter, part, what it became</comment>
        <translation>%1 %2: %3</translation>
    </message>
</context>
<context>
    <name>Together</name>
    <message>
        <source>Reads</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>Alle zugleich</translation>
    </message>
    <message>
        <source>Most of one axis</source>
        <translation>Größter Wert einer Achse</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Zulässig</translation>
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
        <source>Axis</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>Motors</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Heat at rest</source>
        <translation>Wärme im Stillstand</translation>
    </message>
    <message>
        <source>Energy returned</source>
        <translation>Rückgespeiste Energie</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>figure (axis letter)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>axis %1: %2</source>
        <translation>Achse %1: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>limit, answer</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Every direction is reached at %1.</source>
        <translation>Jede Richtung wird mit %1 erreicht.</translation>
    </message>
    <message>
        <source>%1 and %2 together, at right angles: %3 with each at its own feed; %4 at 45°.</source>
        <translation>%1 und %2 zusammen, im rechten Winkel: %3, wenn jede mit ihrem eigenen Vorschub fährt; %4 unter 45°.</translation>
    </message>
    <message>
        <source>The power is the sum of what each axis takes at its own largest; the energy that of all axes stopping at once from their wanted feeds. Nothing is taken off for axes that seldom move together. The spindle and its supply are not in it.</source>
        <translation>Die Leistung ist die Summe dessen, was jede Achse bei ihrem eigenen Höchstwert aufnimmt; die Energie die aller Achsen, die zugleich aus ihrem gewünschten Vorschub anhalten. Für Achsen, die selten zusammen fahren, wird nichts abgezogen. Die Arbeitsspindel und ihr Netzteil sind nicht enthalten.</translation>
    </message>
    <message>
        <source>For this power the supply gives %1 at its own voltage.</source>
        <translation>Für diese Leistung gibt das Netzteil bei seiner eigenen Spannung %1 ab.</translation>
    </message>
    <message>
        <source>%1 of capacitance keep the bus at its voltage limit when all axes brake at once.</source>
        <translation>Mit %1 Kapazität bleibt der Zwischenkreis an seiner Spannungsgrenze, wenn alle Achsen zugleich bremsen.</translation>
    </message>
    <message>
        <source>Steps at the feed reached</source>
        <translation>Schritte bei erreichtem Vorschub</translation>
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
    <message>
        <source>%1 apart</source>
        <comment>distance</comment>
        <translation>%1 auseinander</translation>
    </message>
    <message>
        <source>%1 between pulleys</source>
        <translation>%1 zwischen den Scheiben</translation>
    </message>
    <message>
        <source>%1 z</source>
        <comment>teeth of a pulley</comment>
        <translation>%1 Z.</translation>
    </message>
    <message>
        <source>%1 z, %2 in mesh</source>
        <comment>teeth of a pulley, how many of them are in mesh</comment>
        <translation>%1 Z., %2 im Eingriff</translation>
    </message>
    <message>
        <source>1 hauling belt</source>
        <translation>1 Zugriemen</translation>
    </message>
    <message>
        <source>1 motor</source>
        <translation>1 Motor</translation>
    </message>
    <message>
        <source>1 screw</source>
        <translation>1 Spindel</translation>
    </message>
    <message>
        <source>2 hauling belts</source>
        <translation>2 Zugriemen</translation>
    </message>
    <message>
        <source>2 motors</source>
        <translation>2 Motoren</translation>
    </message>
    <message>
        <source>2 screws</source>
        <translation>2 Spindeln</translation>
    </message>
    <message>
        <source>brake</source>
        <translation>Bremse</translation>
    </message>
    <message>
        <source>counterbalance %1</source>
        <translation>Gewichtsausgleich %1</translation>
    </message>
    <message>
        <source>duty: %1</source>
        <translation>Arbeitszyklus: %1</translation>
    </message>
    <message>
        <source>end view %1</source>
        <comment>scale</comment>
        <translation>Stirnansicht %1</translation>
    </message>
    <message>
        <source>hauling belt %1, %2 × %3, pulleys %4 z</source>
        <comment>profile, width, length, teeth</comment>
        <translation>Zugriemen %1, %2 × %3, Scheiben %4 Z.</translation>
    </message>
    <message>
        <source>load cases %1</source>
        <comment>how many</comment>
        <translation>Lastfälle %1</translation>
    </message>
    <message>
        <source>moves %1</source>
        <comment>how many without cutting</comment>
        <translation>Fahrten %1</translation>
    </message>
    <message>
        <source>no duty cycle given</source>
        <translation>kein Arbeitszyklus angegeben</translation>
    </message>
    <message>
        <source>nut turns</source>
        <translation>Mutter dreht</translation>
    </message>
    <message>
        <source>two nuts, preloaded</source>
        <translation>zwei Muttern, vorgespannt</translation>
    </message>
    <message>
        <source>wound against each other</source>
        <comment>two screws</comment>
        <translation>gegeneinander verspannt</translation>
    </message>
    <message>
        <source>Ø %1</source>
        <comment>smooth idler</comment>
        <translation>Ø %1</translation>
    </message>
    <message>
        <source>Ø %1, on the back</source>
        <comment>idler</comment>
        <translation>Ø %1, am Rücken</translation>
    </message>
    <message>
        <source>nut here: whips at %1 · allowed %2</source>
        <translation>Mutter hier: schwingt bei %1 · zulässig %2</translation>
    </message>
    <message>
        <source>%1 %2 over</source>
        <comment>sign, name of a limit</comment>
        <translation>%1 %2 über</translation>
    </message>
    <message>
        <source>pulley %1: %2</source>
        <comment>number, what it is</comment>
        <translation>Scheibe %1: %2</translation>
    </message>
    <message>
        <source>The belt does not fit round the pulleys.</source>
        <translation>Der Riemen passt nicht um die Scheiben.</translation>
    </message>
    <message>
        <source>the wanted feed turns it at %1 % of that</source>
        <translation>der gewünschte Vorschub dreht sie mit %1 % davon</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what governs: verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>▲ %1, can fall</source>
        <comment>gravity with its force</comment>
        <translation>▲ %1, kann herabfallen</translation>
    </message>
    <message>
        <source>▲ can fall</source>
        <translation>▲ kann herabfallen</translation>
    </message>
    <message>
        <source>%1 between end supports</source>
        <translation>%1 zwischen den Endlagern</translation>
    </message>
    <message>
        <source>▲ can rise</source>
        <translation>▲ kann hochfahren</translation>
    </message>
    <message>
        <source>▲ %1 more than the weight, can rise</source>
        <comment>pull of the counterbalance</comment>
        <translation>▲ %1 mehr als das Gewicht, kann hochfahren</translation>
    </message>
    <message>
        <source>%1 from bearing to free end</source>
        <translation>%1 vom Lager zum freien Ende</translation>
    </message>
    <message>
        <source>%1 %2 nearly as low</source>
        <comment>sign, name of a limit</comment>
        <translation>%1 %2 fast so niedrig</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>What all axes share. The voltage decides how fast the motors still pull, the step rate how fast they may turn, the spindle how hard a cut can press.</source>
        <translation>Was alle Achsen teilen. Die Spannung bestimmt, wie schnell die Motoren noch ziehen, die Schrittfrequenz, wie schnell sie drehen dürfen, die Arbeitsspindel, wie stark ein Schnitt drücken kann.</translation>
    </message>
    <message>
        <source>How far the axis goes and how it lies. On an incline the motor carries weight, and an axis that can fall wants a brake.</source>
        <translation>Wie weit die Achse fährt und wie sie liegt. Geneigt trägt der Motor Gewicht, und eine Achse, die absinken kann, braucht eine Bremse.</translation>
    </message>
    <message>
        <source>What the axis must do. Every limit is judged by these, so ask for what the work needs and no more.</source>
        <translation>Was die Achse leisten muss. Jede Grenze wird daran gemessen; zu verlangen ist, was die Arbeit braucht, und nicht mehr.</translation>
    </message>
    <message>
        <source>All that this axis moves. Its mass decides the acceleration and, on an incline, what must be held.</source>
        <translation>Alles, was diese Achse bewegt. Die Masse bestimmt die Beschleunigung und, bei Neigung, was gehalten werden muss.</translation>
    </message>
    <message>
        <source>They carry the load and rub. What they and their covers take is lost to the cut at every feed.</source>
        <translation>Sie tragen die Last und reiben. Was sie und ihre Abdeckungen nehmen, fehlt dem Schnitt bei jedem Vorschub.</translation>
    </message>
    <message>
        <source>How the two sides are driven. Look at how far apart they are and where between them the load stands.</source>
        <translation>Wie die beiden Seiten angetrieben sind. Zu beachten ist, wie weit sie auseinander liegen und wo zwischen ihnen die Last steht.</translation>
    </message>
    <message>
        <source>A day&apos;s work. It warms the motor and wears screw, bearings and guides; without it their life stays open.</source>
        <translation>Die Arbeit eines Tages. Sie erwärmt den Motor und verschleißt Spindel, Lager und Führungen; ohne sie bleibt deren Lebensdauer offen.</translation>
    </message>
    <message>
        <source>It turns the drive. Look at the torque it has left at speed, not at its holding torque.</source>
        <translation>Er dreht den Antrieb. Es zählt das Moment, das ihm bei Drehzahl bleibt, nicht sein Haltemoment.</translation>
    </message>
    <message>
        <source>Between motor and drive. A ratio trades feed for force; whatever gives or has play here shows at the tool.</source>
        <translation>Zwischen Motor und Antrieb. Eine Übersetzung tauscht Vorschub gegen Kraft; was hier nachgibt oder Spiel hat, zeigt sich am Werkzeug.</translation>
    </message>
    <message>
        <source>It turns rotation into travel. A long lead or a large pulley is fast, a short or small one strong; what is long and thin whips, buckles and stretches.</source>
        <translation>Er macht aus Drehung Weg. Große Steigung oder Scheibe ist schnell, kleine ist stark; was lang und dünn ist, schwingt, knickt und dehnt sich.</translation>
    </message>
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
        <translation>Der gewünschte Vorschub dreht die Spindel mit %1; ihre kritische Drehzahl ist %2. Sie würde schwingen, losreißen, um sich schlagen. Vorher den Antrieb ändern.</translation>
    </message>
    <message>
        <source>The wanted feed turns the motor at %1; its torque is known only up to %2.</source>
        <translation>Der gewünschte Vorschub dreht den Motor mit %1; sein Moment ist nur bis %2 bekannt.</translation>
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
        <source>driven pulley teeth</source>
        <translation>Zähne Abtriebsscheibe</translation>
    </message>
    <message>
        <source>belt teeth</source>
        <translation>Riemenzähne</translation>
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
        <source>preload drag</source>
        <translation>Reibmoment Vorspannung</translation>
    </message>
    <message>
        <source>bearing drag</source>
        <translation>Reibmoment Lager</translation>
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
        <translation>Eingabe</translation>
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
        <source>travel per motor angle</source>
        <translation>Weg je Motorwinkel</translation>
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
        <source>The free length of the screw that bends first.</source>
        <translation>Die freie Länge der Spindel, die sich zuerst biegt.</translation>
    </message>
    <message>
        <source>first critical speed</source>
        <translation>erste kritische Drehzahl</translation>
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
        <source>drag torque</source>
        <translation>Reibmoment</translation>
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
        <source>thrust allowed by core stress</source>
        <translation>Axialkraft nach Kernspannung</translation>
    </message>
    <message>
        <source>thrust allowed by the static rating</source>
        <translation>Axialkraft nach stat. Tragzahl</translation>
    </message>
    <message>
        <source>thrust allowed by the bearing</source>
        <translation>Axialkraft nach Lager</translation>
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
        <source>%1 found; wanted is %2, such as &quot;%3&quot;.</source>
        <translation>%1 gefunden; gefragt ist %2, etwa „%3“.</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>Vorschub</translation>
    </message>
    <message>
        <source>thrust</source>
        <translation>Vorschubkraft</translation>
    </message>
    <message>
        <source>specific force</source>
        <translation>spez. Schnittkraft</translation>
    </message>
    <message>
        <source>exponent</source>
        <translation>Exponent</translation>
    </message>
    <message>
        <source>tool diameter</source>
        <translation>Werkzeug-Ø</translation>
    </message>
    <message>
        <source>tool teeth</source>
        <translation>Schneiden</translation>
    </message>
    <message>
        <source>spindle speed</source>
        <translation>Werkzeugdrehzahl</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>cut width</source>
        <translation>Schnittbreite</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>on</source>
        <translation>Sitz</translation>
    </message>
    <message>
        <source>teeth</source>
        <translation>Zähne</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>face</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>tooth load</source>
        <translation>Zahnlast</translation>
    </message>
    <message>
        <source>a pair of values [ , ]</source>
        <translation>ein Wertepaar [ , ]</translation>
    </message>
    <message>
        <source>Too many rows; a table has at most %1.</source>
        <translation>Zu viele Zeilen; eine Tabelle hat höchstens %1.</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>Gangzahl</translation>
    </message>
    <message>
        <source>Threads side by side: lead over starts is the thread&apos;s own pitch.</source>
        <translation>Gewindegänge nebeneinander: Steigung durch Gangzahl ist die Teilung des Gewindes.</translation>
    </message>
    <message>
        <source>what turns</source>
        <translation>was sich dreht</translation>
    </message>
    <message>
        <source>Usually the screw. A turning nut lets the screw stand still, so that it cannot whip.</source>
        <translation>Meist die Spindel. Bei drehender Mutter steht die Spindel still und kann nicht schwingen.</translation>
    </message>
    <message>
        <source>inertia of turning nut</source>
        <translation>Trägheit drehende Mutter</translation>
    </message>
    <message>
        <source>Of the nut with its pulley and bearings; needed when the nut turns.</source>
        <translation>Der Mutter mit Scheibe und Lagern; nötig, wenn sich die Mutter dreht.</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Bore of a hollow screw; zero for a solid one.</source>
        <translation>Bohrung einer hohlen Spindel; null bei einer vollen.</translation>
    </message>
    <message>
        <source>efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>Share of the power that comes through. Of a screw, a measured figure counts instead of the friction.</source>
        <translation>Anteil der Leistung, der durchkommt. Bei einer Spindel gilt ein gemessener Wert anstelle der Reibung.</translation>
    </message>
    <message>
        <source>nuts</source>
        <translation>Muttern</translation>
    </message>
    <message>
        <source>Two nuts wound against each other have no play, but cost drag and life.</source>
        <translation>Zwei gegeneinander verspannte Muttern haben kein Spiel, kosten aber Reibmoment und Lebensdauer.</translation>
    </message>
    <message>
        <source>preload</source>
        <translation>Vorspannung</translation>
    </message>
    <message>
        <source>Force with which two nuts or two screws are wound against each other; of a preloaded nut, as its maker gives it.</source>
        <translation>Kraft, mit der zwei Muttern oder zwei Spindeln gegeneinander verspannt sind; bei einer vorgespannten Mutter nach Angabe des Herstellers.</translation>
    </message>
    <message>
        <source>Torque a preloaded nut costs at any load. Left open, it is reckoned from the preload.</source>
        <translation>Moment, das eine vorgespannte Mutter bei jeder Last kostet. Bleibt es offen, wird es aus der Vorspannung berechnet.</translation>
    </message>
    <message>
        <source>collar friction</source>
        <translation>Reibung Anlaufscheibe</translation>
    </message>
    <message>
        <source>Friction coefficient of a plain thrust washer; zero where balls or rollers take the thrust.</source>
        <translation>Reibungszahl einer gleitenden Anlaufscheibe; null, wo Kugeln oder Rollen die Axialkraft aufnehmen.</translation>
    </message>
    <message>
        <source>collar diameter</source>
        <translation>Durchm. Anlaufscheibe</translation>
    </message>
    <message>
        <source>Mean diameter of the thrust washer&apos;s rubbing face.</source>
        <translation>Mittlerer Durchmesser der Reibfläche der Anlaufscheibe.</translation>
    </message>
    <message>
        <source>Torque the bearings and their seals cost at the screw or pulley.</source>
        <translation>Moment, das die Lager und ihre Dichtungen an der Spindel oder Scheibe kosten.</translation>
    </message>
    <message>
        <source>speed limit</source>
        <translation>höchste Geschwindigkeit</translation>
    </message>
    <message>
        <source>Fastest a screw&apos;s nut or bearings may turn, or fastest a hauling belt may run, from its maker.</source>
        <translation>Höchste Drehzahl von Mutter oder Lagern der Spindel oder höchste Geschwindigkeit des Zugriemens, vom Hersteller.</translation>
    </message>
    <message>
        <source>dynamic load rating</source>
        <translation>dynamische Tragzahl</translation>
    </message>
    <message>
        <source>The nut&apos;s dynamic rating Ca for a million turns, from its maker; for the life.</source>
        <translation>Dynamische Tragzahl Ca der Mutter für eine Million Umdrehungen, vom Hersteller; für die Lebensdauer.</translation>
    </message>
    <message>
        <source>load factor</source>
        <translation>Lastfaktor</translation>
    </message>
    <message>
        <source>The mean load is multiplied by it: 1 to 1.2 in smooth running, up to 3 with shocks.</source>
        <translation>Mit ihm wird die mittlere Last multipliziert: 1 bis 1,2 bei ruhigem Lauf, bis 3 bei Stößen.</translation>
    </message>
    <message>
        <source>reliability</source>
        <translation>Zuverlässigkeit</translation>
    </message>
    <message>
        <source>Share of screws that should reach the life; 90 % is what catalogues give.</source>
        <translation>Anteil der Spindeln, der die Lebensdauer erreichen soll; Kataloge geben sie für 90 % an.</translation>
    </message>
    <message>
        <source>nut stiffness</source>
        <translation>Muttersteifigkeit</translation>
    </message>
    <message>
        <source>As catalogues give it: at 30 % of the dynamic rating, or of a preloaded nut at 10 %.</source>
        <translation>Wie im Katalog: bei 30 % der dynamischen Tragzahl, bei einer vorgespannten Mutter bei 10 %.</translation>
    </message>
    <message>
        <source>bearing stiffness</source>
        <translation>Lagersteifigkeit</translation>
    </message>
    <message>
        <source>Axial stiffness of one fixed bearing set, from its maker.</source>
        <translation>Axiale Steifigkeit eines Festlagersatzes, vom Hersteller.</translation>
    </message>
    <message>
        <source>lead accuracy grade</source>
        <translation>Toleranzklasse Steigung</translation>
    </message>
    <message>
        <source>Grade by ISO 3408-3; a smaller number is more accurate. Rolled screws are often 7 or 10.</source>
        <translation>Klasse nach ISO 3408-3; eine kleinere Zahl ist genauer. Gerollte Spindeln haben oft 7 oder 10.</translation>
    </message>
    <message>
        <source>travel deviation</source>
        <translation>Wegabweichung</translation>
    </message>
    <message>
        <source>Over the travel, from the supplier&apos;s chart; it counts instead of the grade.</source>
        <translation>Über den Verfahrweg, aus dem Messblatt des Lieferanten; gilt anstelle der Toleranzklasse.</translation>
    </message>
    <message>
        <source>warmer than the frame</source>
        <translation>wärmer als das Gestell</translation>
    </message>
    <message>
        <source>How much warmer than its frame the screw gets in work.</source>
        <translation>Um wie viel die Spindel im Betrieb wärmer wird als das Gestell.</translation>
    </message>
    <message>
        <source>thermal expansion</source>
        <translation>Wärmedehnung</translation>
    </message>
    <message>
        <source>How much the screw&apos;s steel grows for each degree.</source>
        <translation>Wie viel sich der Spindelstahl je Grad ausdehnt.</translation>
    </message>
    <message>
        <source>stretch</source>
        <translation>Reckkraft</translation>
    </message>
    <message>
        <source>Pull the screw is stretched with between two fixed ends, so that warmth does not bend it.</source>
        <translation>Zugkraft, mit der die Spindel zwischen zwei festen Enden gereckt ist, damit Wärme sie nicht verbiegt.</translation>
    </message>
    <message>
        <source>shear modulus</source>
        <translation>Schubmodul</translation>
    </message>
    <message>
        <source>Of the screw&apos;s steel; for its twist.</source>
        <translation>Des Spindelstahls; für seine Verdrehung.</translation>
    </message>
    <message>
        <source>pulley teeth</source>
        <translation>Zähne je Scheibe</translation>
    </message>
    <message>
        <source>Teeth of each of the two pulleys. More give more travel a turn and ask more torque of the motor.</source>
        <translation>Zähne jeder der beiden Scheiben. Mehr geben mehr Weg je Umdrehung und verlangen mehr Moment vom Motor.</translation>
    </message>
    <message>
        <source>belt length</source>
        <translation>Riemenlänge</translation>
    </message>
    <message>
        <source>Of the whole belt, from clamp to clamp.</source>
        <translation>Des ganzen Riemens, von Klemme zu Klemme.</translation>
    </message>
    <message>
        <source>pulley inertia</source>
        <translation>Trägheit je Scheibe</translation>
    </message>
    <message>
        <source>Of each of the two pulleys. Left open, a solid disc of the pitch diameter is taken.</source>
        <translation>Jeder der beiden Scheiben. Bleibt es offen, gilt eine Vollscheibe vom Teilkreisdurchmesser.</translation>
    </message>
    <message>
        <source>belt specific stiffness</source>
        <translation>spez. Riemensteifigkeit</translation>
    </message>
    <message>
        <source>Pull that would stretch the belt to twice its length, at its width; a span&apos;s stiffness times its length.</source>
        <translation>Zug, der den Riemen in seiner Breite auf die doppelte Länge dehnen würde; Steifigkeit eines Trums mal seiner Länge.</translation>
    </message>
    <message>
        <source>set belt tension</source>
        <translation>Riemenvorspannung</translation>
    </message>
    <message>
        <source>Pull each span is set to at rest. Left open, the least that keeps the slack side tight counts.</source>
        <translation>Zug, auf den jedes Trum im Stillstand eingestellt ist. Bleibt es offen, gilt der kleinste, der das Leertrum straff hält.</translation>
    </message>
    <message>
        <source>tooth gap</source>
        <translation>Zahnspiel</translation>
    </message>
    <message>
        <source>Play of the belt&apos;s teeth in the pulley&apos;s gaps, at the pitch line, from the profile&apos;s maker.</source>
        <translation>Spiel der Riemenzähne in den Lücken der Scheibe, an der Wirklinie, vom Hersteller des Profils.</translation>
    </message>
    <message>
        <source>allowable cord pull</source>
        <translation>zul. Zug der Zugstränge</translation>
    </message>
    <message>
        <source>Pull the belt&apos;s cords carry for ever, at its width, from its maker.</source>
        <translation>Zug, den die Zugstränge des Riemens in seiner Breite dauernd tragen, vom Hersteller.</translation>
    </message>
    <message>
        <source>rated pull, base width</source>
        <translation>Nennzug, Bezugsbreite</translation>
    </message>
    <message>
        <source>Allowable pull at the base width, as ISO 5295 gives it; with the base width it sets the strength.</source>
        <translation>Zulässiger Zug bei der Bezugsbreite nach ISO 5295; zusammen mit ihr bestimmt er die Festigkeit.</translation>
    </message>
    <message>
        <source>base width</source>
        <translation>Bezugsbreite</translation>
    </message>
    <message>
        <source>Width the rated pull is given for.</source>
        <translation>Breite, für die der Nennzug gilt.</translation>
    </message>
    <message>
        <source>load of a tooth</source>
        <translation>Last eines Zahns</translation>
    </message>
    <message>
        <source>What one tooth in mesh carries for each belt width at rising pulley speeds, from the maker; it counts before the rated pull.</source>
        <translation>Was ein eingreifender Zahn je Riemenbreite bei steigender Scheibendrehzahl trägt, vom Hersteller; gilt vor dem Nennzug.</translation>
    </message>
    <message>
        <source>most teeth counted</source>
        <translation>gezählte Zähne bis</translation>
    </message>
    <message>
        <source>Teeth in mesh beyond this number carry no more; 12 is usual.</source>
        <translation>Über diese Zahl hinaus tragen eingreifende Zähne nicht mehr; 12 ist üblich.</translation>
    </message>
    <message>
        <source>least pulley teeth</source>
        <translation>Mindestzähnezahl Scheibe</translation>
    </message>
    <message>
        <source>Fewest teeth a pulley may have for this belt, from its maker.</source>
        <translation>Kleinste Zähnezahl einer Scheibe für diesen Riemen, vom Hersteller.</translation>
    </message>
    <message>
        <source>supply power</source>
        <translation>Netzteilleistung</translation>
    </message>
    <message>
        <source>Power the supply can give for ever, from its label.</source>
        <translation>Leistung, die das Netzteil dauernd abgibt, vom Typenschild.</translation>
    </message>
    <message>
        <source>capacitance</source>
        <translation>Kapazität</translation>
    </message>
    <message>
        <source>All capacitors on the drives&apos; side of the supply, the drives&apos; own included; they take up what braking sends back.</source>
        <translation>Alle Kondensatoren auf der Endstufenseite des Netzteils, auch die der Endstufen; sie nehmen auf, was das Bremsen zurückspeist.</translation>
    </message>
    <message>
        <source>voltage limit</source>
        <translation>Spannungsgrenze</translation>
    </message>
    <message>
        <source>Voltage at which the first drive switches off, from its data sheet.</source>
        <translation>Spannung, bei der die erste Endstufe abschaltet, aus ihrem Datenblatt.</translation>
    </message>
    <message>
        <source>spindle power</source>
        <translation>Leistung Arbeitsspindel</translation>
    </message>
    <message>
        <source>spindle efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>Share of the spindle&apos;s power that reaches the tool.</source>
        <translation>Anteil der Leistung der Arbeitsspindel, der am Werkzeug ankommt.</translation>
    </message>
    <message>
        <source>From the motor-end bearing to the nut at the start of travel. Left open, the travel lies in the middle of the screw. A hauling belt has no use for it.</source>
        <translation>Vom motorseitigen Lager zur Mutter am Anfang des Verfahrwegs. Bleibt es offen, liegt der Verfahrweg mitten auf der Spindel. Ein Zugriemen braucht es nicht.</translation>
    </message>
    <message>
        <source>allowed reversal error</source>
        <translation>erlaubter Umkehrfehler</translation>
    </message>
    <message>
        <source>Most the carriage may be off when its direction changes: play, wind-up and the motor&apos;s load angle together.</source>
        <translation>Höchstens so weit darf der Schlitten beim Richtungswechsel danebenliegen: Spiel, Nachgeben und Lastwinkel des Motors zusammen.</translation>
    </message>
    <message>
        <source>allowed error under cut</source>
        <translation>erlaubter Schnittfehler</translation>
    </message>
    <message>
        <source>Most the cutting thrust may push the carriage off its place.</source>
        <translation>Höchstens so weit darf die Vorschubkraft beim Schnitt den Schlitten verschieben.</translation>
    </message>
    <message>
        <source>wanted life</source>
        <translation>gewünschte Lebensdauer</translation>
    </message>
    <message>
        <source>Hours of the duty cycle the ball screw should last.</source>
        <translation>Stunden im Arbeitszyklus, die der Kugelgewindetrieb halten soll.</translation>
    </message>
    <message>
        <source>block spacing</source>
        <translation>Wagenabstand</translation>
    </message>
    <message>
        <source>Along the travel, centre to centre of the outermost blocks on one rail; it takes the couple of a load off the drive&apos;s line.</source>
        <translation>Entlang des Verfahrwegs, Mitte zu Mitte der äußersten Wagen einer Schiene; er nimmt das Kräftepaar einer Last neben der Antriebslinie auf.</translation>
    </message>
    <message>
        <source>block side stiffness</source>
        <translation>Seitensteifigkeit Wagen</translation>
    </message>
    <message>
        <source>Sideways stiffness of one block, from its maker; for the skew.</source>
        <translation>Seitliche Steifigkeit eines Wagens, vom Hersteller; für die Schrägstellung.</translation>
    </message>
    <message>
        <source>block dynamic rating</source>
        <translation>dyn. Tragzahl Wagen</translation>
    </message>
    <message>
        <source>Basic dynamic rating of one block for 100 km of travel, from its maker; for the guides&apos; life.</source>
        <translation>Dynamische Tragzahl eines Wagens für 100 km Weg, vom Hersteller; für die Lebensdauer der Führungen.</translation>
    </message>
    <message>
        <source>layout</source>
        <translation>Anordnung</translation>
    </message>
    <message>
        <source>One drive in the middle, a motor and drive on each side, or one motor that turns both sides by a belt loop.</source>
        <translation>Ein Antrieb in der Mitte, Motor und Antrieb auf jeder Seite oder ein Motor, der beide Seiten über eine Riemenschleife dreht.</translation>
    </message>
    <message>
        <source>two screws</source>
        <translation>zwei Spindeln</translation>
    </message>
    <message>
        <source>Whether two screws share the load, or are wound against each other to take out the play.</source>
        <translation>Ob sich zwei Spindeln die Last teilen oder gegeneinander verspannt sind, um das Spiel zu beseitigen.</translation>
    </message>
    <message>
        <source>spacing of the sides</source>
        <translation>Abstand der Seiten</translation>
    </message>
    <message>
        <source>Between the two screws or belts; with one drive, between the rails.</source>
        <translation>Zwischen den beiden Spindeln oder Riemen; bei einem Antrieb zwischen den Schienen.</translation>
    </message>
    <message>
        <source>mass that crosses</source>
        <translation>quer fahrende Masse</translation>
    </message>
    <message>
        <source>The part of the moving mass that travels across, from side to side; not more than the moving mass.</source>
        <translation>Der Teil der bewegten Masse, der quer von Seite zu Seite fährt; nicht mehr als die bewegte Masse.</translation>
    </message>
    <message>
        <source>cross travel</source>
        <translation>Querweg</translation>
    </message>
    <message>
        <source>How far that mass and the tool travel across, taken as centred between the sides.</source>
        <translation>Wie weit diese Masse und das Werkzeug quer fahren, mittig zwischen den Seiten angenommen.</translation>
    </message>
    <message>
        <source>load cases</source>
        <translation>Lastfälle</translation>
    </message>
    <message>
        <source>How the axis is loaded while it cuts, and for how long in a cycle. Give the thrust, or the whole cut to reckon it from.</source>
        <translation>Wie die Achse beim Schnitt belastet ist und wie lange im Zyklus. Die Vorschubkraft angeben oder den ganzen Schnitt, aus dem sie berechnet wird.</translation>
    </message>
    <message>
        <source>moves</source>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>Moves without cutting in a cycle and the rest after each; a move there and back is two rows.</source>
        <translation>Fahrten ohne Schnitt im Zyklus und die Pause nach jeder; hin und zurück sind zwei Zeilen.</translation>
    </message>
    <message>
        <source>jerk limit</source>
        <translation>Ruckgrenze</translation>
    </message>
    <message>
        <source>How fast the controller lets acceleration change. Left open, acceleration starts at once.</source>
        <translation>Wie schnell die Steuerung die Beschleunigung ändern lässt. Bleibt es offen, setzt die Beschleunigung sofort ein.</translation>
    </message>
    <message>
        <source>Pull-out torque at rising speeds, from the data sheet&apos;s curve, if there is one at your supply voltage.</source>
        <translation>Grenzmoment bei steigenden Drehzahlen, aus der Kennlinie des Datenblatts, wenn es eine für die eigene Netzteilspannung gibt.</translation>
    </message>
    <message>
        <source>reckon for the supply</source>
        <translation>auf Netzteil umrechnen</translation>
    </message>
    <message>
        <source>Reckon the curve anew for the machine&apos;s supply. It needs the curve&apos;s voltage and the winding&apos;s figures, and is an estimate.</source>
        <translation>Die Kennlinie auf das Netzteil der Maschine umrechnen. Das braucht die Spannung der Kennlinie und die Wicklungsdaten und ist eine Schätzung.</translation>
    </message>
    <message>
        <source>closed loop</source>
        <translation>mit Lageregelung</translation>
    </message>
    <message>
        <source>An encoder corrects the position: no step is lost and the load angle is no error.</source>
        <translation>Ein Geber regelt die Lage nach: Kein Schritt geht verloren, und der Lastwinkel ist kein Fehler.</translation>
    </message>
    <message>
        <source>coupling torque limit</source>
        <translation>Grenzmoment Kupplung</translation>
    </message>
    <message>
        <source>Most torque the coupling may hand on, from its maker.</source>
        <translation>Höchstes Moment, das die Kupplung übertragen darf, vom Hersteller.</translation>
    </message>
    <message>
        <source>torsional stiffness</source>
        <translation>Drehsteifigkeit</translation>
    </message>
    <message>
        <source>Torque for a radian of twist of the coupling, from its maker.</source>
        <translation>Moment je Radiant Verdrehung der Kupplung, vom Hersteller.</translation>
    </message>
    <message>
        <source>Teeth of the pulley on the screw, or on the shaft of a hauling belt.</source>
        <translation>Zähne der Scheibe auf der Spindel oder auf der Welle eines Zugriemens.</translation>
    </message>
    <message>
        <source>Teeth of the whole belt; with the pulleys they set the centre distance, or the place of a loop&apos;s slide.</source>
        <translation>Zähne des ganzen Riemens; mit den Scheiben bestimmen sie den Achsabstand oder die Stellung im Spannweg einer Riemenschleife.</translation>
    </message>
    <message>
        <source>pulleys</source>
        <translation>Scheiben</translation>
    </message>
    <message>
        <source>Every pulley and idler in belt order, seen along the shafts. One sits on the motor, one or two on screws.</source>
        <translation>Jede Scheibe und Umlenkrolle in der Folge des Riemens, längs der Wellen gesehen. Eine sitzt auf dem Motor, eine oder zwei auf Spindeln.</translation>
    </message>
    <message>
        <source>sliding pulley</source>
        <translation>verschiebbare Scheibe</translation>
    </message>
    <message>
        <source>Number of the pulley, in the table, that slides to take up the belt.</source>
        <translation>Nummer der Scheibe in der Tabelle, die zum Spannen des Riemens verschoben wird.</translation>
    </message>
    <message>
        <source>slide direction</source>
        <translation>Spannrichtung</translation>
    </message>
    <message>
        <source>Direction the slide goes forth in: 0° along x, 90° along y.</source>
        <translation>Richtung, in die der Spannschlitten vorgeht: 0° entlang x, 90° entlang y.</translation>
    </message>
    <message>
        <source>slide travel back</source>
        <translation>Spannweg zurück</translation>
    </message>
    <message>
        <source>How far the sliding pulley can go back from its drawn place.</source>
        <translation>Wie weit die verschiebbare Scheibe von ihrer gezeichneten Lage zurückgehen kann.</translation>
    </message>
    <message>
        <source>slide travel forth</source>
        <translation>Spannweg vor</translation>
    </message>
    <message>
        <source>How far the sliding pulley can go forth from its drawn place.</source>
        <translation>Wie weit die verschiebbare Scheibe von ihrer gezeichneten Lage vorgehen kann.</translation>
    </message>
    <message>
        <source>pitch line to back</source>
        <translation>Wirklinie bis Rückseite</translation>
    </message>
    <message>
        <source>From the belt&apos;s pitch line to its smooth back; it sets where rollers touch.</source>
        <translation>Von der Wirklinie des Riemens bis zu seiner glatten Rückseite; bestimmt, wo Rollen anliegen.</translation>
    </message>
    <message>
        <source>Only %1 teeth of a driven pulley are in mesh; under %2 the belt carries less and may jump. Use a larger pulley, a longer belt, or an idler that leads the belt farther round.</source>
        <translation>Nur %1 Zähne einer angetriebenen Scheibe sind im Eingriff; unter %2 trägt der Riemen weniger und kann überspringen. Eine größere Scheibe, einen längeren Riemen oder eine Umlenkrolle nehmen, die den Riemen weiter herumführt.</translation>
    </message>
    <message>
        <source>The wanted feed turns the nut at %1, near or past the %2 at which the still screw swings by itself. It may shake: take a thicker, shorter or better held screw, or a larger lead.</source>
        <translation>Der gewünschte Vorschub dreht die Mutter mit %1, nahe an oder über den %2, bei denen die stehende Spindel von selbst schwingt. Sie kann rütteln: eine dickere, kürzere oder besser gelagerte Spindel oder eine größere Steigung nehmen.</translation>
    </message>
    <message>
        <source>The largest axial force of %1 is over the %2 up to which the preload keeps both halves loaded. Past it play comes back; raise the preload within what its maker allows, or ask less force.</source>
        <translation>Die größte Axialkraft von %1 liegt über den %2, bis zu denen die Vorspannung beide Hälften belastet hält. Darüber kehrt das Spiel zurück; die Vorspannung im vom Hersteller erlaubten Rahmen erhöhen oder weniger Kraft verlangen.</translation>
    </message>
    <message>
        <source>The belt is set to %1, but at the largest pull its slack side goes limp below %2, and teeth may jump. Tighten it within what belt and bearings bear.</source>
        <translation>Der Riemen ist auf %1 gespannt, doch unter %2 erschlafft beim größten Zug sein Leertrum, und Zähne können überspringen. Stärker spannen, soweit Riemen und Lager es vertragen.</translation>
    </message>
    <message>
        <source>A pulley has %1 teeth, fewer than the %2 this belt asks for: bent so tightly its cords break early. Use a larger pulley.</source>
        <translation>Eine Scheibe hat %1 Zähne, weniger als die %2, die dieser Riemen verlangt: So eng gebogen brechen seine Zugstränge früh. Eine größere Scheibe nehmen.</translation>
    </message>
    <message>
        <source>The torque curve was taken at %1 and is reckoned anew for the supply&apos;s %2. It is an estimate from the winding&apos;s figures; a measured curve is better.</source>
        <translation>Die Drehmomentkennlinie gilt für %1 und ist auf die %2 des Netzteils umgerechnet. Das ist eine Schätzung aus den Wicklungsdaten; eine gemessene Kennlinie ist besser.</translation>
    </message>
    <message>
        <source>A load case asks more than the spindle gives: it would stall, so %1 of thrust are reckoned with. A stalled tool can break and fly; take less depth, width or feed, and keep to your local rules.</source>
        <translation>Ein Lastfall verlangt mehr, als die Arbeitsspindel gibt: Sie bliebe stehen, daher wird mit %1 Vorschubkraft gerechnet. Ein blockiertes Werkzeug kann brechen und wegfliegen; weniger Tiefe, Breite oder Vorschub nehmen und die örtlichen Vorschriften einhalten.</translation>
    </message>
    <message>
        <source>%1 of belt run along the axis: it draws in fingers, hair and sleeves where it meets the pulleys. Cover it there and along the travel; keep to your local rules.</source>
        <translation>Entlang der Achse laufen %1 Riemen: Wo er auf die Scheiben trifft, zieht er Finger, Haare und Ärmel ein. Dort und entlang des Verfahrwegs abdecken; die örtlichen Vorschriften einhalten.</translation>
    </message>
    <message>
        <source>If one of the two motors stalls, its side falls back by at least %1 and the sides run askew and may jam. Let a fault on either side stop both, and square them before each start.</source>
        <translation>Bleibt einer der beiden Motoren stehen, fällt seine Seite um mindestens %1 zurück; die Seiten laufen schief und können klemmen. Eine Störung auf einer Seite soll beide anhalten; vor jedem Start beide ausrichten.</translation>
    </message>
    <message>
        <source>Braking can lift the supply to %1, over the %2 at which a drive switches off; the axis then runs on unbraked, or falls. Brake more gently, or fit capacitance or a brake resistor; have it done by somebody qualified and keep to your local rules.</source>
        <translation>Bremsen kann die Netzteilspannung auf %1 heben, über die %2, bei denen eine Endstufe abschaltet; die Achse läuft dann ungebremst weiter oder fällt. Sanfter bremsen oder Kapazität oder einen Bremswiderstand einbauen; das einer fachkundigen Person überlassen und die örtlichen Vorschriften einhalten.</translation>
    </message>
    <message>
        <source>Spindle</source>
        <translation>Arbeitsspindel</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Arbeitszyklus</translation>
    </message>
    <message>
        <source>Final drive</source>
        <translation>Endantrieb</translation>
    </message>
    <message>
        <source>Belt loop</source>
        <translation>Riemenschleife</translation>
    </message>
    <message>
        <source>Belt that hauls the carriage</source>
        <translation>Zugriemen am Schlitten</translation>
    </message>
    <message>
        <source>the screw</source>
        <translation>die Spindel</translation>
    </message>
    <message>
        <source>the nut</source>
        <translation>die Mutter</translation>
    </message>
    <message>
        <source>single nut</source>
        <translation>Einzelmutter</translation>
    </message>
    <message>
        <source>preloaded pair</source>
        <translation>Doppelmutter</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>one motor, one drive</source>
        <translation>ein Antrieb</translation>
    </message>
    <message>
        <source>a motor on each side</source>
        <translation>ein Motor je Seite</translation>
    </message>
    <message>
        <source>one motor for both</source>
        <translation>ein Motor für beide</translation>
    </message>
    <message>
        <source>share the load</source>
        <translation>teilen sich die Last</translation>
    </message>
    <message>
        <source>wound against each other</source>
        <translation>gegeneinander verspannt</translation>
    </message>
    <message>
        <source>motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>screw</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <source>idler</source>
        <translation>Umlenkrolle</translation>
    </message>
    <message>
        <source>toothed</source>
        <translation>Zahnseite</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>a jerk</source>
        <translation>ein Ruck</translation>
    </message>
    <message>
        <source>a torsional stiffness</source>
        <translation>eine Drehsteifigkeit</translation>
    </message>
    <message>
        <source>a thermal expansion</source>
        <translation>eine Wärmedehnung</translation>
    </message>
    <message>
        <source>a capacitance</source>
        <translation>eine Kapazität</translation>
    </message>
    <message>
        <source>belt pull</source>
        <translation>Riemenzug</translation>
    </message>
    <message>
        <source>hauling belt pull</source>
        <translation>Zug im Zugriemen</translation>
    </message>
    <message>
        <source>coupling torque</source>
        <translation>Kupplungsmoment</translation>
    </message>
    <message>
        <source>RMS torque</source>
        <translation>Effektivmoment</translation>
    </message>
    <message>
        <source>reversal error</source>
        <translation>Umkehrfehler</translation>
    </message>
    <message>
        <source>error under cut</source>
        <translation>Schnittfehler</translation>
    </message>
    <message>
        <source>life</source>
        <translation>Lebensdauer</translation>
    </message>
    <message>
        <source>Where the belt, a hauling one first, runs at its allowed speed.</source>
        <translation>Wo der Riemen, zuerst ein Zugriemen, mit seiner erlaubten Geschwindigkeit läuft.</translation>
    </message>
    <message>
        <source>On one screw or hauling belt, the larger of accelerating and cutting.</source>
        <translation>Auf eine Spindel oder einen Zugriemen; der größere Wert aus Beschleunigen und Schnitt.</translation>
    </message>
    <message>
        <source>pull the belt hands on</source>
        <translation>Umfangskraft am Riemen</translation>
    </message>
    <message>
        <source>Largest torque through the stage over the motor pulley&apos;s pitch radius.</source>
        <translation>Größtes Moment durch die Riemenstufe geteilt durch den Teilkreisradius der Motorscheibe.</translation>
    </message>
    <message>
        <source>teeth in mesh factor</source>
        <translation>Zahneingriffsfaktor</translation>
    </message>
    <message>
        <source>One from six teeth in mesh up; each tooth fewer takes a fifth.</source>
        <translation>Eins ab sechs eingreifenden Zähnen; jeder Zahn weniger nimmt ein Fünftel.</translation>
    </message>
    <message>
        <source>allowed belt pull</source>
        <translation>zulässiger Riemenzug</translation>
    </message>
    <message>
        <source>The lower of what teeth in mesh and cords carry, as far as they are known.</source>
        <translation>Der kleinere Wert dessen, was eingreifende Zähne und Zugstränge tragen, soweit bekannt.</translation>
    </message>
    <message>
        <source>Least pull at rest that keeps the slack side from going limp at the largest pull.</source>
        <translation>Kleinster Zug im Stillstand, bei dem das Leertrum unter dem größten Zug nicht erschlafft.</translation>
    </message>
    <message>
        <source>note of the belt</source>
        <translation>Trumfrequenz</translation>
    </message>
    <message>
        <source>Frequency of the longest span when plucked at its tension; tune by it.</source>
        <translation>Frequenz des längsten Trums, wenn es gespannt angezupft wird; danach einstellen.</translation>
    </message>
    <message>
        <source>belt load on the shaft</source>
        <translation>Wellenlast durch den Riemen</translation>
    </message>
    <message>
        <source>What the tension pulls the motor&apos;s shaft with, at rest.</source>
        <translation>Womit die Riemenvorspannung im Stillstand an der Motorwelle zieht.</translation>
    </message>
    <message>
        <source>pull of the hauling belt</source>
        <translation>Umfangskraft am Zugriemen</translation>
    </message>
    <message>
        <source>The largest axial force on it.</source>
        <translation>Die größte Axialkraft an ihm.</translation>
    </message>
    <message>
        <source>allowed hauling pull</source>
        <translation>zulässiger Zug Zugriemen</translation>
    </message>
    <message>
        <source>Least pull at rest that keeps the slack side from going limp, the carriage at its worst place.</source>
        <translation>Kleinster Zug im Stillstand, bei dem das Leertrum nicht erschlafft, der Schlitten an der ungünstigsten Stelle.</translation>
    </message>
    <message>
        <source>note of the hauling belt</source>
        <translation>Trumfrequenz Zugriemen</translation>
    </message>
    <message>
        <source>shaft stiffness</source>
        <translation>Spindelsteifigkeit</translation>
    </message>
    <message>
        <source>Of the screw&apos;s core along the axis, the nut at its weakest place.</source>
        <translation>Des Spindelkerns entlang der Achse, die Mutter an der weichsten Stelle.</translation>
    </message>
    <message>
        <source>nut stiffness under load</source>
        <translation>Muttersteifigkeit unter Last</translation>
    </message>
    <message>
        <source>The listed stiffness, of a ball nut brought to its load or preload.</source>
        <translation>Die Steifigkeit nach Liste, bei einer Kugelmutter auf ihre Last oder Vorspannung umgerechnet.</translation>
    </message>
    <message>
        <source>bearings stiffness</source>
        <translation>Steifigkeit der Lager</translation>
    </message>
    <message>
        <source>Of the fixed bearings along the axis; two fixed ends count twice.</source>
        <translation>Der Festlager entlang der Achse; zwei feste Enden zählen doppelt.</translation>
    </message>
    <message>
        <source>twist stiffness</source>
        <translation>Verdrehsteifigkeit</translation>
    </message>
    <message>
        <source>Twist of the screw up to the nut at its farthest, as a spring along the axis.</source>
        <translation>Verdrehung der Spindel bis zur Mutter am fernsten Punkt, als Feder entlang der Achse.</translation>
    </message>
    <message>
        <source>transmission stiffness</source>
        <translation>Steifigkeit der Übertragung</translation>
    </message>
    <message>
        <source>Coupling or belt as a spring along the axis.</source>
        <translation>Kupplung oder Riemen als Feder entlang der Achse.</translation>
    </message>
    <message>
        <source>hauling belt stiffness</source>
        <translation>Steifigkeit des Zugriemens</translation>
    </message>
    <message>
        <source>Of both runs of belt to the carriage at its worst place.</source>
        <translation>Beider Riementrume zum Schlitten an der ungünstigsten Stelle.</translation>
    </message>
    <message>
        <source>stiffness of one drive</source>
        <translation>Steifigkeit eines Antriebs</translation>
    </message>
    <message>
        <source>Everything in one drive, spring after spring.</source>
        <translation>Alles in einem Antrieb, Feder hinter Feder.</translation>
    </message>
    <message>
        <source>axis stiffness</source>
        <translation>Achssteifigkeit</translation>
    </message>
    <message>
        <source>All drives side by side, at the worst place of the travel.</source>
        <translation>Alle Antriebe nebeneinander, an der ungünstigsten Stelle des Verfahrwegs.</translation>
    </message>
    <message>
        <source>natural frequency</source>
        <translation>Eigenfrequenz</translation>
    </message>
    <message>
        <source>Of the moving mass on the axis stiffness.</source>
        <translation>Der bewegten Masse auf der Achssteifigkeit.</translation>
    </message>
    <message>
        <source>torsional frequency</source>
        <translation>Drehschwingfrequenz</translation>
    </message>
    <message>
        <source>Of the motor against screw and load, on the transmission and the screw&apos;s twist.</source>
        <translation>Des Motors gegen Spindel und Last, über die Übertragung und die Verdrehung der Spindel.</translation>
    </message>
    <message>
        <source>skew under cut</source>
        <translation>Schrägstellung beim Schnitt</translation>
    </message>
    <message>
        <source>How far the guides let the sides run apart under the couple of a cut with one central drive.</source>
        <translation>Wie weit die Führungen die Seiten auseinanderlaufen lassen, beim Kräftepaar eines Schnitts mit einem mittigen Antrieb.</translation>
    </message>
    <message>
        <source>skew of one slip</source>
        <translation>Schrägstellung bei Schlupf</translation>
    </message>
    <message>
        <source>How far one side falls back when its stepper slips by the least it can.</source>
        <translation>Wie weit eine Seite zurückfällt, wenn ihr Schrittmotor um das Kleinstmögliche durchrutscht.</translation>
    </message>
    <message>
        <source>couple on the blocks in a stall</source>
        <translation>Kräftepaar beim Stehenbleiben</translation>
    </message>
    <message>
        <source>Sideways force on the guide blocks when one motor pushes with all it has and the other stands.</source>
        <translation>Seitliche Kraft auf die Führungswagen, wenn ein Motor mit aller Kraft schiebt und der andere steht.</translation>
    </message>
    <message>
        <source>tooth gap error</source>
        <translation>Fehler durch Zahnspiel</translation>
    </message>
    <message>
        <source>Play of the belt&apos;s teeth at both pulleys of the stage, at the carriage; none with a coupling.</source>
        <translation>Spiel der Riemenzähne an beiden Scheiben der Stufe, am Schlitten; bei einer Kupplung keines.</translation>
    </message>
    <message>
        <source>wind-up error</source>
        <translation>Fehler durch Nachgeben</translation>
    </message>
    <message>
        <source>What friction bends the drive one way and then the other.</source>
        <translation>Wie weit die Reibung den Antrieb erst zur einen, dann zur anderen Seite nachgeben lässt.</translation>
    </message>
    <message>
        <source>load angle on reversal</source>
        <translation>Lastwinkel beim Umkehren</translation>
    </message>
    <message>
        <source>What friction holds an open-loop stepper behind its field, one way and then the other.</source>
        <translation>Wie weit die Reibung einen ungeregelten Schrittmotor hinter seinem Feld zurückhält, erst in der einen, dann in der anderen Richtung.</translation>
    </message>
    <message>
        <source>error on reversal</source>
        <translation>Umkehrfehler</translation>
    </message>
    <message>
        <source>Lost motion, tooth gap, wind-up and load angle added up.</source>
        <translation>Umkehrverlust, Zahnspiel, Nachgeben und Lastwinkel zusammengezählt.</translation>
    </message>
    <message>
        <source>error on reversal, likely</source>
        <translation>Umkehrfehler, wahrscheinlich</translation>
    </message>
    <message>
        <source>The same as root of the sum of squares, since not all is worst at once.</source>
        <translation>Dasselbe als Wurzel der Quadratsumme, denn nicht alles ist zugleich am schlechtesten.</translation>
    </message>
    <message>
        <source>lead error</source>
        <translation>Steigungsfehler</translation>
    </message>
    <message>
        <source>heat error</source>
        <translation>Wärmefehler</translation>
    </message>
    <message>
        <source>What a warmer screw grows over the travel, less its stretch.</source>
        <translation>Was eine wärmere Spindel über den Verfahrweg wächst, abzüglich ihrer Reckung.</translation>
    </message>
    <message>
        <source>stretch needed for heat</source>
        <translation>nötige Reckkraft bei Wärme</translation>
    </message>
    <message>
        <source>Pull that takes up the whole warmth between two fixed ends.</source>
        <translation>Zugkraft, die die ganze Erwärmung zwischen zwei festen Enden aufnimmt.</translation>
    </message>
    <message>
        <source>error over the travel</source>
        <translation>Wegfehler</translation>
    </message>
    <message>
        <source>Lead error and heat error added up.</source>
        <translation>Steigungsfehler und Wärmefehler zusammengezählt.</translation>
    </message>
    <message>
        <source>error over the travel, likely</source>
        <translation>Wegfehler, wahrscheinlich</translation>
    </message>
    <message>
        <source>The same as root of the sum of squares.</source>
        <translation>Dasselbe als Wurzel der Quadratsumme.</translation>
    </message>
    <message>
        <source>deflection under cut</source>
        <translation>Nachgeben beim Schnitt</translation>
    </message>
    <message>
        <source>load angle under cut</source>
        <translation>Lastwinkel beim Schnitt</translation>
    </message>
    <message>
        <source>How far the cutting torque holds an open-loop stepper behind its field, at the carriage.</source>
        <translation>Wie weit das Schnittmoment einen ungeregelten Schrittmotor hinter seinem Feld zurückhält, am Schlitten.</translation>
    </message>
    <message>
        <source>Deflection and load angle added up.</source>
        <translation>Nachgeben und Lastwinkel zusammengezählt.</translation>
    </message>
    <message>
        <source>error under cut, likely</source>
        <translation>Schnittfehler, wahrscheinlich</translation>
    </message>
    <message>
        <source>mean axial force</source>
        <translation>mittlere Axialkraft</translation>
    </message>
    <message>
        <source>Cubic mean over the turns of the cycle, on the harder-loaded screw, the preload counted in.</source>
        <translation>Kubisches Mittel über die Umdrehungen des Zyklus, an der höher belasteten Spindel, die Vorspannung eingerechnet.</translation>
    </message>
    <message>
        <source>life in turns</source>
        <translation>Lebensdauer, Umdrehungen</translation>
    </message>
    <message>
        <source>Turns of the screw that the wanted share of screws reaches.</source>
        <translation>Umdrehungen der Spindel, die der gewünschte Anteil der Spindeln erreicht.</translation>
    </message>
    <message>
        <source>life in distance</source>
        <translation>Lebensdauer, Weg</translation>
    </message>
    <message>
        <source>Life in turns times the lead.</source>
        <translation>Lebensdauer in Umdrehungen mal Steigung.</translation>
    </message>
    <message>
        <source>life in hours</source>
        <translation>Lebensdauer, Stunden</translation>
    </message>
    <message>
        <source>Life in turns by the turns of a cycle and its time.</source>
        <translation>Aus der Lebensdauer in Umdrehungen, den Umdrehungen eines Zyklus und seiner Zeit.</translation>
    </message>
    <message>
        <source>load of a guide block</source>
        <translation>Last eines Führungswagens</translation>
    </message>
    <message>
        <source>guide life</source>
        <translation>Führungslebensdauer</translation>
    </message>
    <message>
        <source>Travel that nine of ten blocks reach at that load.</source>
        <translation>Weg, den neun von zehn Wagen bei dieser Last erreichen.</translation>
    </message>
    <message>
        <source>time for the whole travel</source>
        <translation>Zeit für den ganzen Verfahrweg</translation>
    </message>
    <message>
        <source>Quickest move from end to end at the wanted feed and acceleration.</source>
        <translation>Schnellste Fahrt von Ende zu Ende mit gewünschtem Vorschub und gewünschter Beschleunigung.</translation>
    </message>
    <message>
        <source>cycle time</source>
        <translation>Zykluszeit</translation>
    </message>
    <message>
        <source>Load cases, moves and rests together.</source>
        <translation>Lastfälle, Fahrten und Pausen zusammen.</translation>
    </message>
    <message>
        <source>Root mean square of the motor&apos;s torque over the cycle; it stands for the motor&apos;s heat.</source>
        <translation>Effektivwert des Motormoments über den Zyklus; er steht für die Erwärmung des Motors.</translation>
    </message>
    <message>
        <source>continuous torque usable</source>
        <translation>nutzbares Dauermoment</translation>
    </message>
    <message>
        <source>The usable share of what a servo gives for ever.</source>
        <translation>Der nutzbare Anteil dessen, was ein Servomotor dauernd abgibt.</translation>
    </message>
    <message>
        <source>Command steps a second at the wanted feed.</source>
        <translation>Befehlsschritte je Sekunde beim gewünschten Vorschub.</translation>
    </message>
    <message>
        <source>stepper&apos;s own frequency</source>
        <translation>Eigenfrequenz Schrittmotor</translation>
    </message>
    <message>
        <source>At which rotor and load swing on the motor&apos;s field at rest.</source>
        <translation>Bei ihr schwingen Rotor und Last im Stillstand am Feld des Motors.</translation>
    </message>
    <message>
        <source>feed to hurry through</source>
        <translation>Resonanzvorschub</translation>
    </message>
    <message>
        <source>Where full steps come at the stepper&apos;s own frequency.</source>
        <translation>Wo die Vollschritte mit der Eigenfrequenz des Schrittmotors kommen; rasch durchfahren.</translation>
    </message>
    <message>
        <source>motor power</source>
        <translation>Motorleistung</translation>
    </message>
    <message>
        <source>Largest at the motor&apos;s shaft, accelerating or cutting.</source>
        <translation>Größte an der Motorwelle, beim Beschleunigen oder im Schnitt.</translation>
    </message>
    <message>
        <source>winding heat</source>
        <translation>Wicklungswärme</translation>
    </message>
    <message>
        <source>What a stepper&apos;s windings turn to heat at the drive current.</source>
        <translation>Was die Wicklungen eines Schrittmotors beim Strom der Endstufe in Wärme umsetzen.</translation>
    </message>
    <message>
        <source>power from the supply</source>
        <translation>Leistung aus dem Netzteil</translation>
    </message>
    <message>
        <source>current from the supply</source>
        <translation>Strom aus dem Netzteil</translation>
    </message>
    <message>
        <source>That power over the supply voltage.</source>
        <translation>Diese Leistung geteilt durch die Netzteilspannung.</translation>
    </message>
    <message>
        <source>energy returned</source>
        <translation>rückgespeiste Energie</translation>
    </message>
    <message>
        <source>What comes back to the supply when the axis stops from its wanted feed, downhill where it can.</source>
        <translation>Was zum Netzteil zurückkommt, wenn die Achse aus dem gewünschten Vorschub anhält, nach Möglichkeit abwärts.</translation>
    </message>
    <message>
        <source>bus voltage after braking</source>
        <translation>Zwischenkreisspannung nach dem Bremsen</translation>
    </message>
    <message>
        <source>best lead to accelerate</source>
        <translation>beste Steigung</translation>
    </message>
    <message>
        <source>Lead with the most acceleration at the wanted feed&apos;s torque, all else as it is.</source>
        <translation>Steigung mit der höchsten Beschleunigung beim Moment des gewünschten Vorschubs, alles andere wie vorhanden.</translation>
    </message>
    <message>
        <source>best reduction to accelerate</source>
        <translation>beste Übersetzung</translation>
    </message>
    <message>
        <source>Reduction with the most acceleration at the wanted feed&apos;s torque, all else as it is.</source>
        <translation>Übersetzung mit der höchsten Beschleunigung beim Moment des gewünschten Vorschubs, alles andere wie vorhanden.</translation>
    </message>
    <message>
        <source>torque on the coupling</source>
        <translation>Moment an der Kupplung</translation>
    </message>
    <message>
        <source>Largest while accelerating or cutting.</source>
        <translation>Größtes beim Beschleunigen oder im Schnitt.</translation>
    </message>
    <message>
        <source>allowed coupling torque</source>
        <translation>zulässiges Kupplungsmoment</translation>
    </message>
    <message>
        <source>As given by the coupling&apos;s maker.</source>
        <translation>Nach Angabe des Herstellers der Kupplung.</translation>
    </message>
    <message>
        <source>Turns of the motor for one turn of the screw, or of a hauling belt&apos;s pulley.</source>
        <translation>Umdrehungen des Motors je Umdrehung der Spindel oder der Scheibe eines Zugriemens.</translation>
    </message>
    <message>
        <source>travel per screw or pulley angle</source>
        <translation>Weg je Spindel-/Scheibenwinkel</translation>
    </message>
    <message>
        <source>A screw&apos;s lead over a whole turn, or the pitch radius of a hauling belt&apos;s pulley.</source>
        <translation>Steigung einer Spindel geteilt durch eine ganze Umdrehung oder Teilkreisradius der Scheibe eines Zugriemens.</translation>
    </message>
    <message>
        <source>Travel per angle of screw or pulley, seen from the motor through the reduction.</source>
        <translation>Weg je Winkel von Spindel oder Scheibe, vom Motor aus über die Übersetzung gesehen.</translation>
    </message>
    <message>
        <source>Fewest belt teeth on the arc of contact of a driven pulley.</source>
        <translation>Kleinste Zahl der Riemenzähne im Umschlingungsbogen einer angetriebenen Scheibe.</translation>
    </message>
    <message>
        <source>place of the slide</source>
        <translation>Stellung im Spannweg</translation>
    </message>
    <message>
        <source>From the sliding pulley&apos;s drawn place to where the belt&apos;s whole length fits; forth is positive.</source>
        <translation>Von der gezeichneten Lage der verschiebbaren Scheibe bis dahin, wo der ganze Riemen passt; vor ist positiv.</translation>
    </message>
    <message>
        <source>share of the worst side</source>
        <translation>Anteil höher belastete Seite</translation>
    </message>
    <message>
        <source>Largest share of a load that one side carries while it crosses.</source>
        <translation>Größter Anteil einer quer fahrenden Last, den eine Seite trägt.</translation>
    </message>
    <message>
        <source>mass of the worst side</source>
        <translation>Masse höher belastete Seite</translation>
    </message>
    <message>
        <source>What the harder-loaded motor moves: half of what stays, and its share of what crosses.</source>
        <translation>Was der höher belastete Motor bewegt: die Hälfte dessen, was bleibt, und sein Anteil an dem, was quer fährt.</translation>
    </message>
    <message>
        <source>Speed at which the screw whips: the first natural frequency of bending of a slender round shaft, solid or hollow, of the core diameter.</source>
        <translation>Drehzahl, bei der die Spindel schwingt: die erste Biegeeigenfrequenz einer schlanken runden Welle, voll oder hohl, mit dem Kerndurchmesser.</translation>
    </message>
    <message>
        <source>critical speed under load</source>
        <translation>krit. Drehzahl unter Last</translation>
    </message>
    <message>
        <source>The first critical speed, lowered by the largest axial force and raised by the stretch.</source>
        <translation>Die erste kritische Drehzahl, gesenkt durch die größte Axialkraft und erhöht durch die Reckung.</translation>
    </message>
    <message>
        <source>Cross-section at the bottom of the thread, less the bore.</source>
        <translation>Querschnitt am Grund des Gewindes, abzüglich der Bohrung.</translation>
    </message>
    <message>
        <source>thread pitch</source>
        <translation>Gewindeteilung</translation>
    </message>
    <message>
        <source>Lead over starts.</source>
        <translation>Steigung geteilt durch Gangzahl.</translation>
    </message>
    <message>
        <source>collar loss</source>
        <translation>Verlust Anlaufscheibe</translation>
    </message>
    <message>
        <source>Torque the thrust washer adds, as a share of the axial force times travel per angle.</source>
        <translation>Zusatzmoment der Anlaufscheibe, als Anteil der Axialkraft mal Weg je Winkel.</translation>
    </message>
    <message>
        <source>load that frees the preload</source>
        <translation>Abhebekraft der Vorspannung</translation>
    </message>
    <message>
        <source>Axial force beyond which the relieved half of a preloaded pair carries nothing.</source>
        <translation>Axialkraft, über der die entlastete Hälfte eines vorgespannten Paars nichts mehr trägt.</translation>
    </message>
    <message>
        <source>As given, or reckoned from the preload; at the screw.</source>
        <translation>Wie angegeben, sonst aus der Vorspannung berechnet; an der Spindel.</translation>
    </message>
    <message>
        <source>screw or belt inertia</source>
        <translation>Trägheit Spindel oder Riemen</translation>
    </message>
    <message>
        <source>A cylinder of the screw&apos;s nominal diameter less its bore, a turning nut as given, or a hauling belt with both pulleys; at its own shaft.</source>
        <translation>Ein Zylinder vom Nenndurchmesser der Spindel ohne ihre Bohrung, eine drehende Mutter wie angegeben oder ein Zugriemen mit beiden Scheiben; an der eigenen Welle.</translation>
    </message>
    <message>
        <source>As given, or a solid disc of the pitch diameter; a loop&apos;s idlers are counted in.</source>
        <translation>Wie angegeben, sonst eine Vollscheibe vom Teilkreisdurchmesser; die Umlenkrollen einer Riemenschleife sind eingerechnet.</translation>
    </message>
    <message>
        <source>As given, or a solid disc of the pitch diameter; at the screw, all pulleys on screws together.</source>
        <translation>Wie angegeben, sonst eine Vollscheibe vom Teilkreisdurchmesser; an der Spindel, alle Scheiben auf Spindeln zusammen.</translation>
    </message>
    <message>
        <source>couple on the guide blocks</source>
        <translation>Kräftepaar auf Führungswagen</translation>
    </message>
    <message>
        <source>Sideways force on the blocks each way, from a cut off the line of one central drive.</source>
        <translation>Seitliche Kraft auf die Wagen in jeder Richtung, von einem Schnitt neben der Linie eines mittigen Antriebs.</translation>
    </message>
    <message>
        <source>friction of the couple</source>
        <translation>Reibung durch das Kräftepaar</translation>
    </message>
    <message>
        <source>What the guides add to a force off the drive&apos;s line, as a share of it.</source>
        <translation>Was die Führungen zu einer Kraft neben der Antriebslinie hinzufügen, als Anteil an ihr.</translation>
    </message>
    <message>
        <source>gravity of the worst side</source>
        <translation>Schwerkraft höher belastete Seite</translation>
    </message>
    <message>
        <source>The harder-loaded motor&apos;s share of gravity along the axis.</source>
        <translation>Anteil des höher belasteten Motors an der Schwerkraft entlang der Achse.</translation>
    </message>
    <message>
        <source>friction of the worst side</source>
        <translation>Reibung höher belastete Seite</translation>
    </message>
    <message>
        <source>The harder-loaded motor&apos;s share of the friction force.</source>
        <translation>Anteil des höher belasteten Motors an der Reibkraft.</translation>
    </message>
    <message>
        <source>To accelerate what turns with the screw or a hauling belt&apos;s pulleys; at that shaft.</source>
        <translation>Zum Beschleunigen dessen, was sich mit der Spindel oder den Scheiben eines Zugriemens dreht; an dieser Welle.</translation>
    </message>
    <message>
        <source>torque for the axial force</source>
        <translation>Moment für die Axialkraft</translation>
    </message>
    <message>
        <source>To push the axial force through the thread or pull it by the belt; at the screw or pulley.</source>
        <translation>Um die Axialkraft durch das Gewinde zu drücken oder am Riemen zu ziehen; an der Spindel oder Scheibe.</translation>
    </message>
    <message>
        <source>Preload, seals and bearings, at the screw or pulley.</source>
        <translation>Vorspannung, Dichtungen und Lager, an der Spindel oder Scheibe.</translation>
    </message>
    <message>
        <source>acceleration of a fall</source>
        <translation>Beschleunigung beim Absinken</translation>
    </message>
    <message>
        <source>How fast the axis gains speed downwards unpowered and without a brake; zero if it stays.</source>
        <translation>Wie schnell die Achse stromlos und ohne Bremse abwärts schneller wird; null, wenn sie stehen bleibt.</translation>
    </message>
    <message>
        <source>torque braking</source>
        <translation>Moment beim Bremsen</translation>
    </message>
    <message>
        <source>At the motor, while slowing down on the way down the slope; below zero the motor brakes.</source>
        <translation>Am Motor, beim Abbremsen auf dem Weg abwärts; unter null bremst der Motor.</translation>
    </message>
    <message>
        <source>These pulleys make no loop; check their number, places and sizes.</source>
        <translation>Diese Scheiben ergeben keine Riemenschleife; Anzahl, Lage und Größe prüfen.</translation>
    </message>
    <message>
        <source>The nut turns, but its inertia is open; give it with its pulley&apos;s.</source>
        <translation>Die Mutter dreht sich, aber ihre Trägheit ist offen; mit der ihrer Scheibe angeben.</translation>
    </message>
    <message>
        <source>The bore must be smaller than the core diameter.</source>
        <translation>Die Bohrung muss kleiner sein als der Kerndurchmesser.</translation>
    </message>
    <message>
        <source>A screw can be stretched only between two fixed ends; fix both or set the stretch to zero.</source>
        <translation>Eine Spindel lässt sich nur zwischen zwei festen Enden recken; beide fest lagern oder die Reckkraft auf null setzen.</translation>
    </message>
    <message>
        <source>The mass that crosses is part of the moving mass; it must not be more.</source>
        <translation>Die quer fahrende Masse ist Teil der bewegten Masse; sie darf nicht größer sein.</translation>
    </message>
    <message>
        <source>With two sides and a cross travel the spacing of the sides must be given.</source>
        <translation>Bei zwei Seiten und einem Querweg muss der Abstand der Seiten angegeben werden.</translation>
    </message>
    <message>
        <source>With one drive and a cross travel the guides take the couple; give the block spacing.</source>
        <translation>Bei einem Antrieb und einem Querweg nehmen die Führungen das Kräftepaar auf; den Wagenabstand angeben.</translation>
    </message>
    <message>
        <source>One screw cannot be wound against another; choose a layout with two, or let them share the load.</source>
        <translation>Eine einzelne Spindel lässt sich nicht gegen eine andere verspannen; eine Anordnung mit zweien wählen oder die Last teilen lassen.</translation>
    </message>
    <message>
        <source>Nuts or screws are wound against each other; give the preload.</source>
        <translation>Muttern oder Spindeln sind gegeneinander verspannt; die Vorspannung angeben.</translation>
    </message>
    <message>
        <source>One motor for both sides needs a belt loop with two pulleys on screws.</source>
        <translation>Ein Motor für beide Seiten braucht eine Riemenschleife mit zwei Scheiben auf Spindeln.</translation>
    </message>
    <message>
        <source>The belt loop drives two screws; choose one motor for both, or take one pulley off.</source>
        <translation>Die Riemenschleife treibt zwei Spindeln; einen Motor für beide wählen oder eine Scheibe wegnehmen.</translation>
    </message>
    <message>
        <source>A belt loop needs one pulley on a motor, no more and no less.</source>
        <translation>Eine Riemenschleife braucht genau eine Scheibe auf einem Motor.</translation>
    </message>
    <message>
        <source>A belt loop needs one or two pulleys on screws.</source>
        <translation>Eine Riemenschleife braucht eine oder zwei Scheiben auf Spindeln.</translation>
    </message>
    <message>
        <source>Pulley %1 has no size; give its teeth, or the diameter of a smooth idler.</source>
        <translation>Scheibe %1 hat keine Größe; ihre Zähne oder den Durchmesser einer glatten Umlenkrolle angeben.</translation>
    </message>
    <message>
        <source>Pulley %1 has other teeth than the first screw&apos;s; two screws must turn alike.</source>
        <translation>Scheibe %1 hat andere Zähne als die der ersten Spindel; zwei Spindeln müssen sich gleich drehen.</translation>
    </message>
    <message>
        <source>Pulley %1 would slip on the belt&apos;s smooth back; put it on the toothed face or make it an idler.</source>
        <translation>Scheibe %1 würde auf der glatten Rückseite des Riemens rutschen; auf die Zahnseite setzen oder zur Umlenkrolle machen.</translation>
    </message>
    <message>
        <source>The table has no pulley of the sliding pulley&apos;s number.</source>
        <translation>Die Tabelle hat keine Scheibe mit der Nummer der verschiebbaren Scheibe.</translation>
    </message>
    <message>
        <source>Pulleys %1 and %2 overlap; move them apart.</source>
        <translation>Die Scheiben %1 und %2 überschneiden sich; auseinanderrücken.</translation>
    </message>
    <message>
        <source>The belt does not touch pulley %1 on the face it is given; choose the other face or move it.</source>
        <translation>Der Riemen berührt Scheibe %1 nicht auf der angegebenen Seite; die andere Seite wählen oder die Scheibe versetzen.</translation>
    </message>
    <message>
        <source>The belt crosses itself: its spans after pulleys %1 and %2 meet. List the pulleys in belt order or move them.</source>
        <translation>Der Riemen kreuzt sich selbst: Seine Trume nach den Scheiben %1 und %2 treffen sich. Die Scheiben in der Folge des Riemens aufführen oder versetzen.</translation>
    </message>
    <message>
        <source>The belt&apos;s span after pulley %1 runs through pulley %2; move one of them or list them in belt order.</source>
        <translation>Das Trum nach Scheibe %1 läuft durch Scheibe %2; eine versetzen oder in der Folge des Riemens aufführen.</translation>
    </message>
    <message>
        <source>The belt fits at no place of the slide; change its teeth, the slide&apos;s travel or the pulleys.</source>
        <translation>Der Riemen passt in keiner Stellung des Spannwegs; seine Zähnezahl, den Spannweg oder die Scheiben ändern.</translation>
    </message>
    <message>
        <source>The belt is too short; it must go twice along the travel and round the pulleys.</source>
        <translation>Der Riemen ist zu kurz; er muss zweimal über den Verfahrweg und um die Scheiben reichen.</translation>
    </message>
    <message>
        <source>Load case %1 has neither a thrust nor a whole cut; give the thrust, or material, tool and cut in full. A tool cuts no wider than its diameter.</source>
        <translation>Lastfall %1 hat weder eine Vorschubkraft noch einen ganzen Schnitt; die Vorschubkraft oder Werkstoff, Werkzeug und Schnitt vollständig angeben. Ein Werkzeug schneidet nicht breiter als sein Durchmesser.</translation>
    </message>
    <message>
        <source>The belt fits at no place of the slide; those of %1 teeth would.</source>
        <translation>Der Riemen passt in keiner Stellung des Spannwegs; solche mit %1 Zähnen würden passen.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>the whole, not divided or geared</source>
        <translation>das Ganze, weder geteilt noch übersetzt</translation>
    </message>
    <message>
        <source>two drives on one motor</source>
        <translation>zwei Antriebe an einem Motor</translation>
    </message>
    <message>
        <source>half to each side</source>
        <translation>je Seite die Hälfte</translation>
    </message>
    <message>
        <source>travel that a block&apos;s rating is given for</source>
        <translation>Weg, für den die Tragzahl eines Wagens gilt</translation>
    </message>
    <message>
        <source>axial force on the nut, or its preload</source>
        <translation>Axialkraft auf die Mutter oder ihre Vorspannung</translation>
    </message>
    <message>
        <source>free length of belt one way round</source>
        <translation>freie Riemenlänge in der einen Richtung</translation>
    </message>
    <message>
        <source>free length of belt the other way round</source>
        <translation>freie Riemenlänge in der anderen Richtung</translation>
    </message>
    <message>
        <source>length of the belt&apos;s span</source>
        <translation>Länge des Riementrums</translation>
    </message>
    <message>
        <source>teeth of the rotor, four full steps each</source>
        <translation>Zähne des Rotors, je vier Vollschritte</translation>
    </message>
    <message>
        <source>motor torque at standstill</source>
        <translation>Motormoment im Stillstand</translation>
    </message>
    <message>
        <source>detent torque of the motor</source>
        <translation>Rastmoment des Motors</translation>
    </message>
    <message>
        <source>holding torque of the motor</source>
        <translation>Haltemoment des Motors</translation>
    </message>
    <message>
        <source>largest torque from the motor into coupling or belt</source>
        <translation>größtes Moment vom Motor in Kupplung oder Riemen</translation>
    </message>
    <message>
        <source>lead variation of the grade over 300 mm</source>
        <translation>Steigungsschwankung der Toleranzklasse auf 300 mm</translation>
    </message>
    <message>
        <source>largest share of the belt&apos;s length on its tight side</source>
        <translation>größter Anteil der Riemenlänge im Lasttrum</translation>
    </message>
    <message>
        <source>number of drives side by side</source>
        <translation>Anzahl der Antriebe nebeneinander</translation>
    </message>
    <message>
        <source>number of motors</source>
        <translation>Anzahl der Motoren</translation>
    </message>
    <message>
        <source>turns of the screw in a cycle</source>
        <translation>Umdrehungen der Spindel im Zyklus</translation>
    </message>
    <message>
        <source>pitch radius of the motor pulley</source>
        <translation>Teilkreisradius der Motorscheibe</translation>
    </message>
    <message>
        <source>time of a cycle</source>
        <translation>Zeit eines Zyklus</translation>
    </message>
    <message>
        <source>length of screw from bearing to nut, at its weakest</source>
        <translation>Spindellänge vom Lager zur Mutter, an der weichsten Stelle</translation>
    </message>
    <message>
        <source>length of screw that twists, the nut at its farthest</source>
        <translation>Spindellänge, die sich verdreht, die Mutter am fernsten Punkt</translation>
    </message>
    <message>
        <source>teeth of the motor pulley</source>
        <translation>Zähne der Motorscheibe</translation>
    </message>
    <message>
        <source>teeth of the screw pulley</source>
        <translation>Zähne der Spindelscheibe</translation>
    </message>
    <message>
        <source>arc of contact on the motor pulley</source>
        <translation>Umschlingungswinkel der Motorscheibe</translation>
    </message>
    <message>
        <source>f: the place of the slide at which the belt&apos;s whole length goes round all pulleys, found by root finding</source>
        <translation>f: die Stellung im Spannweg, bei der der ganze Riemen um alle Scheiben läuft, durch Nullstellensuche gefunden</translation>
    </message>
    <message>
        <source>f: the fewest teeth in mesh of the driven pulleys, from their arcs of contact</source>
        <translation>f: die kleinste Zahl eingreifender Zähne der angetriebenen Scheiben, aus ihren Umschlingungswinkeln</translation>
    </message>
    <message>
        <source>f: the idlers as solid discs, each by the square of the motor pulley&apos;s diameter over its own</source>
        <translation>f: die Umlenkrollen als Vollscheiben, jede mal dem Quadrat aus Durchmesser der Motorscheibe durch eigenem</translation>
    </message>
    <message>
        <source>f: the lower of what teeth and cords carry at that speed, from the maker&apos;s figures or ISO 5295</source>
        <translation>f: der kleinere Wert dessen, was Zähne und Zugstränge bei dieser Drehzahl tragen, nach Hersteller oder ISO 5295</translation>
    </message>
    <message>
        <source>f: one from six teeth in mesh up, a fifth less for each tooth fewer</source>
        <translation>f: eins ab sechs eingreifenden Zähnen, ein Fünftel weniger je fehlendem Zahn</translation>
    </message>
    <message>
        <source>f: the lead at which the acceleration is greatest, torque, load and inertia as they are</source>
        <translation>f: die Steigung mit der größten Beschleunigung, Moment, Last und Trägheit wie vorhanden</translation>
    </message>
    <message>
        <source>f: the reduction at which the acceleration is greatest, torque, load and inertia as they are</source>
        <translation>f: die Übersetzung mit der größten Beschleunigung, Moment, Last und Trägheit wie vorhanden</translation>
    </message>
    <message>
        <source>f: 2√2 times the preload, where the relieved half comes loose</source>
        <translation>f: 2√2-mal die Vorspannung, wo sich die entlastete Hälfte löst</translation>
    </message>
    <message>
        <source>f: 0.8 times the listed stiffness and the cube root of the load over 30 % of the dynamic rating, or 10 % if preloaded</source>
        <translation>f: 0,8-mal die Steifigkeit nach Liste und die Kubikwurzel aus Last durch 30 % der dynamischen Tragzahl, 10 % bei Vorspannung</translation>
    </message>
    <message>
        <source>f: two inertias that swing against each other on a spring</source>
        <translation>f: zwei Trägheiten, die an einer Feder gegeneinander schwingen</translation>
    </message>
    <message>
        <source>f: the arcsine of torque over pull-out torque, over the rotor&apos;s teeth, as travel</source>
        <translation>f: der Arkussinus von Moment durch Grenzmoment, geteilt durch die Rotorzähne, als Weg</translation>
    </message>
    <message>
        <source>f: the root of the sum of the squares</source>
        <translation>f: die Wurzel der Quadratsumme</translation>
    </message>
    <message>
        <source>f: the cubic mean of the axial force over the turns of the cycle</source>
        <translation>f: das kubische Mittel der Axialkraft über die Umdrehungen des Zyklus</translation>
    </message>
    <message>
        <source>f: a million turns times the cube of the rating over factor times mean load, less for more reliability or a preloaded pair</source>
        <translation>f: eine Million Umdrehungen mal der dritten Potenz aus Tragzahl durch Faktor mal mittlerer Last, weniger bei höherer Zuverlässigkeit oder vorgespanntem Paar</translation>
    </message>
    <message>
        <source>f: the time of the quickest move within feed, acceleration and jerk</source>
        <translation>f: die Zeit der schnellsten Fahrt innerhalb von Vorschub, Beschleunigung und Ruck</translation>
    </message>
    <message>
        <source>f: the root of the mean square of the motor&apos;s torque over the cycle</source>
        <translation>f: der Effektivwert des Motormoments über den Zyklus</translation>
    </message>
    <message>
        <source>heard note</source>
        <translation>gehörter Ton</translation>
    </message>
    <message>
        <source>Tone of the longest free span when plucked, from a tuning app or microphone; the pull follows from it.</source>
        <translation>Ton des längsten freien Trums beim Anzupfen, aus Stimmgerät oder Mikrofon; daraus folgt die Trumkraft.</translation>
    </message>
    <message>
        <source>belt pull as heard</source>
        <translation>Trumkraft nach Gehör</translation>
    </message>
    <message>
        <source>Pull of the longest span from the note that was heard.</source>
        <translation>Kraft im längsten Trum aus dem gehörten Ton.</translation>
    </message>
    <message>
        <source>hauling pull as heard</source>
        <translation>Zugriemenkraft nach Gehör</translation>
    </message>
    <message>
        <source>f: what the loaded one of two screws wound against each other carries, by ISO 3408-5</source>
        <translation>f: was die belastete von zwei gegeneinander verspannten Spindeln trägt, nach ISO 3408-5</translation>
    </message>
    <message>
        <source>Tone of the free run between the pulleys when plucked, from a tuning app or microphone; the pull follows from it.</source>
        <translation>Ton des freien Trums zwischen den Scheiben beim Anzupfen, aus Stimmgerät oder Mikrofon; daraus folgt die Trumkraft.</translation>
    </message>
    <message>
        <source>pressure from heat</source>
        <translation>Druck durch Wärme</translation>
    </message>
    <message>
        <source>What a warmer screw between two fixed ends presses with, less its stretch.</source>
        <translation>Womit eine wärmere Spindel zwischen zwei festen Enden drückt, abzüglich ihrer Reckung.</translation>
    </message>
    <message>
        <source>The critical load over its safety factor, less what heat presses.</source>
        <translation>Die Knicklast durch ihren Sicherheitsfaktor, abzüglich des Drucks durch Wärme.</translation>
    </message>
    <message>
        <source>Core area times yield strength over its safety factor, less the stretch.</source>
        <translation>Kernquerschnitt mal Streckgrenze durch den Sicherheitsfaktor, abzüglich der Reckung.</translation>
    </message>
    <message>
        <source>The static rating over its safety factor; of a preloaded pair the load that brings it there.</source>
        <translation>Die statische Tragzahl durch ihren Sicherheitsfaktor; bei einem vorgespannten Paar die Last, die es dorthin bringt.</translation>
    </message>
    <message>
        <source>What the end bearing may carry, less what stretch or heat already takes.</source>
        <translation>Was das Endlager tragen darf, abzüglich dessen, was Reckung oder Wärme schon beanspruchen.</translation>
    </message>
    <message>
        <source>Frequency of the free run between the pulleys when plucked; tune by it.</source>
        <translation>Frequenz des freien Trums zwischen den Scheiben beim Anzupfen; danach wird gespannt.</translation>
    </message>
    <message>
        <source>Pull of the free run between the pulleys from the note that was heard.</source>
        <translation>Kraft im freien Trum zwischen den Scheiben aus dem gehörten Ton.</translation>
    </message>
    <message>
        <source>Over the travel, as given or by the grade as of a transport screw; a positioning screw does better.</source>
        <translation>Über den Verfahrweg, wie angegeben oder nach der Toleranzklasse als Transportspindel; eine Positionierspindel ist besser.</translation>
    </message>
    <message>
        <source>Cutting thrust over the axis stiffness, the tool at the end of its cross travel.</source>
        <translation>Vorschubkraft beim Schnitt durch die Achssteifigkeit, das Werkzeug am Ende seines Querwegs.</translation>
    </message>
    <message>
        <source>Weight on the blocks of the heavier rail, and what the couple adds to one.</source>
        <translation>Gewicht auf den Wagen der höher belasteten Schiene und was das Kräftepaar auf einen dazugibt.</translation>
    </message>
    <message>
        <source>reserve in the load cases</source>
        <translation>Reserve in den Lastfällen</translation>
    </message>
    <message>
        <source>Least over the load cases: usable torque over the torque asked, or the feed reached over the feed asked.</source>
        <translation>Das Kleinste über die Lastfälle: nutzbares durch verlangtes Moment oder erreichter durch verlangten Vorschub.</translation>
    </message>
    <message>
        <source>Axial play of the nut, none if it is preloaded; of a hauling belt its tooth gap.</source>
        <translation>Axialspiel der Mutter, keines bei Vorspannung; bei einem Zugriemen sein Zahnspiel.</translation>
    </message>
    <message>
        <source>slide travel to fit the belt</source>
        <translation>Spannweg zum Auflegen</translation>
    </message>
    <message>
        <source>From the slide&apos;s place, so that the belt comes loose by half a tooth and goes over a flange.</source>
        <translation>Vom Platz des Schlittens aus, damit der Riemen um einen halben Zahn locker wird und über eine Bordscheibe geht.</translation>
    </message>
    <message>
        <source>slide travel to take up</source>
        <translation>Spannweg zum Nachspannen</translation>
    </message>
    <message>
        <source>From the slide&apos;s place, for a belt stretched by one part in five hundred.</source>
        <translation>Vom Platz des Schlittens aus, für einen um ein Fünfhundertstel gedehnten Riemen.</translation>
    </message>
    <message>
        <source>Two motors would have to hold the preload against each other; drive screws wound against each other with one motor and a belt loop.</source>
        <translation>Zwei Motoren müssten die Vorspannung gegeneinander halten; gegeneinander verspannte Spindeln mit einem Motor und einer Riemenschleife antreiben.</translation>
    </message>
    <message>
        <source>what stretch or heat already takes of the bearing</source>
        <translation>was Reckung oder Wärme vom Lager schon beanspruchen</translation>
    </message>
    <message>
        <source>force of the hardest load case</source>
        <translation>Kraft des schwersten Lastfalls</translation>
    </message>
    <message>
        <source>usual efficiency of a servo with its drive, from memory</source>
        <translation>üblicher Wirkungsgrad eines Servos mit Endstufe, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>f: the slide&apos;s way until the belt&apos;s path is that much longer or shorter, found by root finding</source>
        <translation>f: der Weg des Schlittens, bis der Riemenweg um so viel länger oder kürzer ist, durch Nullstellensuche</translation>
    </message>
    <message>
        <source>f: the least ratio of usable torque to the torque a load case asks at its feed</source>
        <translation>f: das kleinste Verhältnis des nutzbaren Moments zu dem, das ein Lastfall bei seinem Vorschub verlangt</translation>
    </message>
    <message>
        <source>f: the outer load under which the loaded half of the pair carries that much, by ISO 3408-5</source>
        <translation>f: die äußere Last, unter der die belastete Hälfte des Paars so viel trägt, nach ISO 3408-5</translation>
    </message>
    <message>
        <source>There are more answers here than the %1 that are read.</source>
        <translation>Hier stehen mehr Antworten als die %1, die gelesen werden.</translation>
    </message>
    <message>
        <source>This text of an answer is longer than the %1 bytes that are read.</source>
        <translation>Dieser Text einer Antwort ist länger als die %1 Bytes, die gelesen werden.</translation>
    </message>
    <message>
        <source>An answer names what it answers: either a &quot;finding&quot; or a &quot;limit&quot;.</source>
        <translation>Eine Antwort nennt, worauf sie antwortet: entweder ein „finding“ oder ein „limit“.</translation>
    </message>
    <message>
        <source>In the working: %1.</source>
        <translation>Im Rechenweg: %1.</translation>
    </message>
    <message>
        <source>Speed and force</source>
        <translation>Geschwindigkeit und Kraft</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>Life and inertia</source>
        <translation>Lebensdauer und Trägheit</translation>
    </message>
    <message>
        <source>Drag and speed</source>
        <translation>Reibung und Geschwindigkeit</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Führungswagen</translation>
    </message>
    <message>
        <source>Torque and speed</source>
        <translation>Moment und Drehzahl</translation>
    </message>
    <message>
        <source>Winding and current</source>
        <translation>Wicklung und Strom</translation>
    </message>
    <message>
        <source>Rotor and steps</source>
        <translation>Rotor und Schritte</translation>
    </message>
    <message>
        <source>Belt</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>Pulleys and length</source>
        <translation>Scheiben und Länge</translation>
    </message>
    <message>
        <source>Masses and losses</source>
        <translation>Massen und Verluste</translation>
    </message>
    <message>
        <source>Stiffness and play</source>
        <translation>Steifigkeit und Spiel</translation>
    </message>
    <message>
        <source>Tension and strength</source>
        <translation>Vorspannung, Festigkeit</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Length and ends</source>
        <translation>Länge und Enden</translation>
    </message>
    <message>
        <source>Nut and preload</source>
        <translation>Mutter und Vorspannung</translation>
    </message>
    <message>
        <source>Ratings and speeds</source>
        <translation>Tragzahlen, Drehzahlen</translation>
    </message>
    <message>
        <source>Stiffness, accuracy</source>
        <translation>Steifigkeit, Genauigkeit</translation>
    </message>
    <message>
        <source>Safety and material</source>
        <translation>Sicherheit und Werkstoff</translation>
    </message>
    <message>
        <source>Usual: 24 V to 48 V for small steppers. Read it on the label of the supply.</source>
        <translation>Üblich: 24 V bis 48 V für kleine Schrittmotoren. Auf dem Typenschild des Netzteils ablesen.</translation>
    </message>
    <message>
        <source>Usual: 2 m/min to 10 m/min on a router, 1 m/min to 4 m/min on a small mill.</source>
        <translation>Üblich: 2 m/min bis 10 m/min bei einer Portalfräse, 1 m/min bis 4 m/min bei einer kleinen Fräsmaschine.</translation>
    </message>
    <message>
        <source>Usual: 0.2 m/s² to 2 m/s² on home-built machines.</source>
        <translation>Üblich: 0,2 m/s² bis 2 m/s² bei Eigenbaumaschinen.</translation>
    </message>
    <message>
        <source>Usual: 50 N to 200 N in wood, 200 N to 1 kN in metal.</source>
        <translation>Üblich: 50 N bis 200 N in Holz, 200 N bis 1 kN in Metall.</translation>
    </message>
    <message>
        <source>Usual: up to 10 for steppers; the motor&apos;s data sheet may say.</source>
        <translation>Üblich: bis 10 bei Schrittmotoren; womöglich steht es im Datenblatt des Motors.</translation>
    </message>
    <message>
        <source>Weigh it, or take it from the drawing, spindle and cables too.</source>
        <translation>Wiegen oder aus der Zeichnung nehmen, samt Arbeitsspindel und Kabeln.</translation>
    </message>
    <message>
        <source>Usual: 0.002 to 0.006 for balls, 0.1 to 0.2 for sliding guides.</source>
        <translation>Üblich: 0,002 bis 0,006 bei Kugeln, 0,1 bis 0,2 bei Gleitführungen.</translation>
    </message>
    <message>
        <source>Read it on the motor&apos;s data sheet; often in g·cm².</source>
        <translation>Im Datenblatt des Motors ablesen; oft in g·cm².</translation>
    </message>
    <message>
        <source>Read it on the motor&apos;s data sheet; often in N·cm or oz·in.</source>
        <translation>Im Datenblatt des Motors ablesen; oft in N·cm oder oz·in.</translation>
    </message>
    <message>
        <source>Read it on the motor&apos;s data sheet, of one phase; usual: 1 mH to 8 mH.</source>
        <translation>Im Datenblatt des Motors ablesen, für einen Strang; üblich: 1 mH bis 8 mH.</translation>
    </message>
    <message>
        <source>Read it on the motor&apos;s data sheet, of one phase, or measure it.</source>
        <translation>Im Datenblatt des Motors ablesen, für einen Strang, oder messen.</translation>
    </message>
    <message>
        <source>Read it on the motor&apos;s label or data sheet, of one phase.</source>
        <translation>Auf dem Typenschild oder im Datenblatt des Motors ablesen, für einen Strang.</translation>
    </message>
    <message>
        <source>Usual: 50 % to 70 % for steppers.</source>
        <translation>Üblich: 50 % bis 70 % bei Schrittmotoren.</translation>
    </message>
    <message>
        <source>Read it on the drive&apos;s switches; usual: 8 to 16.</source>
        <translation>An den Schaltern der Endstufe ablesen; üblich: 8 bis 16.</translation>
    </message>
    <message>
        <source>The belt maker&apos;s manual says how much; it can be heard as a note.</source>
        <translation>Das Handbuch des Riemenherstellers nennt den Wert; er lässt sich als Ton hören.</translation>
    </message>
    <message>
        <source>Read it on the screw&apos;s drawing (root diameter) or measure it with a calliper in the thread.</source>
        <translation>In der Zeichnung der Spindel ablesen (Kerndurchmesser) oder mit dem Messschieber im Gewinde messen.</translation>
    </message>
    <message>
        <source>Usual: 2 mm to 25 mm; 16 × 5 means a lead of 5 mm.</source>
        <translation>Üblich: 2 mm bis 25 mm; 16 × 5 heißt 5 mm Steigung.</translation>
    </message>
    <message>
        <source>Read it on your drawing, from bearing middle to bearing middle.</source>
        <translation>In der eigenen Zeichnung ablesen, von Lagermitte zu Lagermitte.</translation>
    </message>
    <message>
        <source>Usual: 85 % to 95 % for balls, 20 % to 60 % for a sliding thread.</source>
        <translation>Üblich: 85 % bis 95 % bei Kugeln, 20 % bis 60 % bei einem Gleitgewinde.</translation>
    </message>
    <message>
        <source>Usual: 20 µm to 100 µm for a single rolled nut; measure it with a dial gauge.</source>
        <translation>Üblich: 20 µm bis 100 µm bei einer gerollten Einzelmutter; mit der Messuhr messen.</translation>
    </message>
    <message>
        <source>Read it on the nut&apos;s data sheet, as C or C_a.</source>
        <translation>Im Datenblatt der Mutter ablesen, als C oder C_a.</translation>
    </message>
    <message>
        <source>Read it on the nut&apos;s data sheet, as C_0 or C_0a.</source>
        <translation>Im Datenblatt der Mutter ablesen, als C_0 oder C_0a.</translation>
    </message>
    <message>
        <source>Read it on the data sheet of the fixed bearing, axially.</source>
        <translation>Im Datenblatt des Festlagers ablesen, axial.</translation>
    </message>
    <message>
        <source>Usual: 80 % of the first critical speed.</source>
        <translation>Üblich: 80 % der ersten kritischen Drehzahl.</translation>
    </message>
    <message>
        <source>supply power, all axes at once</source>
        <translation>Netzteilleistung, alle Achsen zugleich</translation>
    </message>
    <message>
        <source>bus voltage, all axes braking at once</source>
        <translation>Zwischenkreisspannung, alle Achsen bremsen zugleich</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>axis letter or machine, part or limit</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>▲ grave</source>
        <comment>a finding</comment>
        <translation>▲ schwerwiegend</translation>
    </message>
    <message>
        <source>△ caution</source>
        <comment>a finding</comment>
        <translation>△ Warnung</translation>
    </message>
    <message>
        <source>%1 against %2 allowed; the margin is %3.</source>
        <translation>%1 gegen %2 zulässig; die Reserve ist %3.</translation>
    </message>
    <message>
        <source>without figures</source>
        <translation>ohne Werte</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <comment>actual, allowed</comment>
        <translation>%1 gegenüber %2</translation>
    </message>
    <message>
        <source>✎ answered: %1</source>
        <translation>✎ beantwortet: %1</translation>
    </message>
    <message>
        <source>✎ answered when it was %1; now it is %2. The answer was: %3</source>
        <translation>✎ beantwortet, als es %1 war; jetzt ist es %2. Die Antwort war: %3</translation>
    </message>
    <message>
        <source>%1: answered, but no longer found. The answer was: %2</source>
        <comment>subject, note</comment>
        <translation>%1: beantwortet, aber nicht mehr gefunden. Die Antwort war: %2</translation>
    </message>
    <message>
        <source>missing on %1: %2 (%3)</source>
        <comment>axis letter or machine, field, its part</comment>
        <translation>es fehlt bei %1: %2 (%3)</translation>
    </message>
    <message>
        <source>The share pays for what the critical speed leaves out: imbalance, bends, give of the bearings.</source>
        <translation>Der Anteil deckt ab, was die kritische Drehzahl nicht berücksichtigt: Unwucht, Krümmung, Nachgiebigkeit der Lager.</translation>
    </message>
    <message>
        <source>Holds as far as the critical speed does: a straight, slender screw held at its ends as stated.</source>
        <translation>Gilt, soweit die kritische Drehzahl gilt: für eine gerade, schlanke Spindel, deren Enden wie angegeben gelagert sind.</translation>
    </message>
    <message>
        <source>Takes the nut for a plain support, which a stiff nut betters and a loose one does not reach.</source>
        <translation>Nimmt die Mutter als einfache Stütze an; eine steife Mutter ist besser, eine lose erreicht das nicht.</translation>
    </message>
    <message>
        <source>Exact for both ends supported, close for others. Holds below the buckling load.</source>
        <translation>Exakt bei beidseitig gestützten Enden, sonst gute Näherung. Gilt unterhalb der Knicklast.</translation>
    </message>
    <message>
        <source>Euler holds above the slenderness where both curves meet, J. B. Johnson below it. For a straight screw, loaded along its axis, without shock.</source>
        <translation>Euler gilt oberhalb des Schlankheitsgrads, bei dem sich beide Kurven treffen, J. B. Johnson darunter. Für eine gerade, entlang ihrer Achse und ohne Stöße belastete Spindel.</translation>
    </message>
    <message>
        <source>The whole force is taken to pass through the longest loaded length; where two fixed ends share it, this is on the safe side.</source>
        <translation>Angenommen ist, dass die ganze Kraft durch die größte belastete Länge geht; wo zwei feste Enden sie sich teilen, liegt das auf der sicheren Seite.</translation>
    </message>
    <message>
        <source>Where the load is half of what yields the core.</source>
        <translation>Wo die Last halb so groß ist wie die, bei der der Kern fließt.</translation>
    </message>
    <message>
        <source>Plain pressure over the core. Left out: torsion, notches of the thread, fatigue.</source>
        <translation>Einfache Druckspannung über den Kernquerschnitt. Nicht berücksichtigt: Torsion, Kerbwirkung des Gewindes, Ermüdung.</translation>
    </message>
    <message>
        <source>An experience with the balls&apos; return; the supplier&apos;s own figure for the nut is better.</source>
        <translation>Ein Erfahrungswert zur Kugelrückführung; der Wert des Lieferanten für die Mutter ist besser.</translation>
    </message>
    <message>
        <source>For a load along the axis that all balls share; side load and tilt take off much of it.</source>
        <translation>Für eine Last entlang der Achse, die sich alle Kugeln teilen; Seitenlast und Verkippen nehmen viel davon weg.</translation>
    </message>
    <message>
        <source>As good as the bearing maker&apos;s figure; what stretch or heat already takes is counted off.</source>
        <translation>So gut wie die Angabe des Lagerherstellers; was Reckung oder Wärme schon beanspruchen, ist abgezogen.</translation>
    </message>
    <message>
        <source>Holds for one coefficient of friction, whatever speed, grease and load; cold grease and wear make it worse.</source>
        <translation>Gilt für eine einzige Reibungszahl, unabhängig von Drehzahl, Fett und Last; kaltes Fett und Verschleiß verschlechtern den Wert.</translation>
    </message>
    <message>
        <source>At rest and without vibration. Below zero a thread holds by itself on paper only; do not rely on it to keep a load up.</source>
        <translation>Im Stillstand und ohne Vibration. Unter null hält ein Gewinde nur auf dem Papier von selbst; nicht darauf verlassen, um eine Last oben zu halten.</translation>
    </message>
    <message>
        <source>For balls, by Hertz: deflection goes with load to the power of two thirds.</source>
        <translation>Bei Kugeln nach Hertz: Die Einfederung wächst mit der Last hoch zwei Drittel.</translation>
    </message>
    <message>
        <source>Left out: stick at rest, wear, heat, oil at speed. A measured drag is better.</source>
        <translation>Nicht berücksichtigt: Haftreibung im Stillstand, Verschleiß, Wärme, Öl bei hoher Drehzahl. Ein gemessenes Reibmoment ist besser.</translation>
    </message>
    <message>
        <source>Over the load cases and moves as they were given.</source>
        <translation>Über die Lastfälle und Fahrten, wie sie angegeben sind.</translation>
    </message>
    <message>
        <source>Holds for good lubrication, a clean nut and load along the axis. Left out: side load and tilt, dirt, strokes of a few turns.</source>
        <translation>Gilt bei guter Schmierung, sauberer Mutter und Last entlang der Achse. Nicht berücksichtigt: Seitenlast und Verkippen, Schmutz, Hübe von nur wenigen Umdrehungen.</translation>
    </message>
    <message>
        <source>A life that the stated share of screws reaches; any single one may last a fraction or many times as long.</source>
        <translation>Eine Lebensdauer, die der angegebene Anteil der Spindeln erreicht; eine einzelne kann nur einen Bruchteil davon oder ein Vielfaches halten.</translation>
    </message>
    <message>
        <source>Nine of ten reach it, well greased and clean. Left out: couples on the blocks beyond those named, shocks.</source>
        <translation>Neun von zehn erreichen sie, gut geschmiert und sauber. Nicht berücksichtigt: weitere Kräftepaare auf die Wagen außer den genannten, Stöße.</translation>
    </message>
    <message>
        <source>What the grade permits; a single screw may be much better. A controller that corrects pitch takes most of it away.</source>
        <translation>Was die Toleranzklasse zulässt; eine einzelne Spindel kann viel besser sein. Eine Steuerung mit Steigungskorrektur nimmt das meiste davon weg.</translation>
    </message>
    <message>
        <source>For an evenly warmed screw held at one end; the frame&apos;s own warming is left out.</source>
        <translation>Für eine gleichmäßig erwärmte, an einem Ende gehaltene Spindel; die Erwärmung des Gestells selbst ist nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>Geometry of the pitch line; tension and tolerance of the belt shift it by tenths of a millimetre.</source>
        <translation>Geometrie der Wirklinie; Spannung und Toleranz des Riemens verschieben sie um Zehntelmillimeter.</translation>
    </message>
    <message>
        <source>Whole teeth only. Fewer than two in mesh are no drive.</source>
        <translation>Nur ganze Zähne. Weniger als zwei im Eingriff sind kein Antrieb.</translation>
    </message>
    <message>
        <source>For a new, clean, true belt at room temperature with even load; shocks want a margin.</source>
        <translation>Für einen neuen, sauberen, fluchtenden Riemen bei Raumtemperatur und gleichmäßiger Last; Stöße verlangen eine Reserve.</translation>
    </message>
    <message>
        <source>The span as a string. Short, stiff spans sound higher, and their pull is then less than it sounds.</source>
        <translation>Das Trum als Saite. Kurze, steife Trume klingen höher, und ihre Trumkraft ist dann kleiner, als sie klingt.</translation>
    </message>
    <message>
        <source>The span as a string; a stiff belt on a short span makes the pull read too high.</source>
        <translation>Das Trum als Saite; bei einem steifen Riemen auf kurzem Trum fällt die Trumkraft zu hoch aus.</translation>
    </message>
    <message>
        <source>At rest. Hold it against what the motor&apos;s maker allows as radial load.</source>
        <translation>Im Stillstand. Mit der vom Motorhersteller zugelassenen Radiallast vergleichen.</translation>
    </message>
    <message>
        <source>While both ways of the belt stay taut. Left out: teeth and clamps.</source>
        <translation>Solange beide Riementrume straff bleiben. Nicht berücksichtigt: Zähne und Klemmen.</translation>
    </message>
    <message>
        <source>Of a belt while both spans stay taut; its teeth are left out.</source>
        <translation>Eines Riemens, solange beide Trume straff bleiben; seine Zähne sind nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>One coefficient at all speeds. Left out: stick at rest, cold grease, guides out of true.</source>
        <translation>Eine einzige Reibungszahl bei allen Geschwindigkeiten. Nicht berücksichtigt: Haftreibung im Stillstand, kaltes Fett, nicht fluchtende Führungen.</translation>
    </message>
    <message>
        <source>Guide friction is not counted on. Without power only a brake or a counterbalance holds.</source>
        <translation>Auf die Führungsreibung wird nicht gezählt. Stromlos hält nur eine Haltebremse oder ein Gewichtsausgleich.</translation>
    </message>
    <message>
        <source>Holds on the motor&apos;s curve at the stated supply, warm enough and away from resonance. Past the last known point nothing is said.</source>
        <translation>Gilt auf der Motorkennlinie bei der angegebenen Netzteilspannung, warm genug und abseits der Resonanz. Jenseits des letzten bekannten Punkts wird nichts ausgesagt.</translation>
    </message>
    <message>
        <source>Where the known curve ends: the motor may turn faster, but nobody has said with what torque.</source>
        <translation>Wo die bekannte Kennlinie endet: Der Motor kann schneller drehen, aber mit welchem Moment, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>At the wanted feed, where torque is least; from rest there is more.</source>
        <translation>Beim gewünschten Vorschub, wo das Moment am kleinsten ist; aus dem Stand ist es größer.</translation>
    </message>
    <message>
        <source>At steady feed. Cutting forces swing: their peaks lie above the mean.</source>
        <translation>Bei gleichmäßigem Vorschub. Schnittkräfte schwanken: Ihre Spitzen liegen über dem Mittelwert.</translation>
    </message>
    <message>
        <source>A habit of drive builders, not a law of nature: a stiff train tolerates more.</source>
        <translation>Eine Gewohnheit der Antriebsbauer, kein Naturgesetz: Ein steifer Antriebsstrang verträgt mehr.</translation>
    </message>
    <message>
        <source>Small swings about rest with a stiff train. Microstepping weakens it, damping is left out.</source>
        <translation>Kleine Schwingungen um den Stillstand bei steifem Antriebsstrang. Mikroschritte schwächen sie ab, Dämpfung ist nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>One axis alone, from rest to rest, with the same limits up and down.</source>
        <translation>Eine Achse allein, von Stillstand zu Stillstand, mit gleichen Grenzen beim Beschleunigen und Bremsen.</translation>
    </message>
    <message>
        <source>While a cycle is short against the time the motor takes to warm up, and torque goes with current.</source>
        <translation>Solange ein Zyklus kurz ist gegenüber der Zeit, in der sich der Motor erwärmt, und das Moment dem Strom folgt.</translation>
    </message>
    <message>
        <source>For the mean of the force in each case; peaks within a turn of the cutter lie above it.</source>
        <translation>Für die mittlere Kraft in jedem Lastfall; die Spitzen innerhalb einer Werkzeugumdrehung liegen darüber.</translation>
    </message>
    <message>
        <source>With cold windings; warm copper adds up to a third. Iron loss is left out.</source>
        <translation>Mit kalten Wicklungen; bei warmem Kupfer kommt bis zu ein Drittel hinzu. Eisenverluste sind nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>This axis alone: add up the axes that work at the same time, and the drives&apos; own needs.</source>
        <translation>Diese Achse allein: die gleichzeitig arbeitenden Achsen und den Eigenbedarf der Endstufen zusammenzählen.</translation>
    </message>
    <message>
        <source>On the safe side: loss in the windings and what other axes draw are left out.</source>
        <translation>Auf der sicheren Seite: Verluste in den Wicklungen und der Verbrauch der anderen Achsen sind nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>On the safe side: a supply that takes back, a brake resistor and the drives&apos; own needs are left out.</source>
        <translation>Auf der sicheren Seite: ein rückspeisefähiges Netzteil, ein Bremswiderstand und der Eigenbedarf der Endstufen sind nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>At one torque and with inertias as they are. The top is flat: half or twice as much still gives about 80 % of the acceleration.</source>
        <translation>Bei einem festen Moment und unveränderten Trägheiten. Das Maximum ist flach: Die Hälfte oder das Doppelte gibt noch etwa 80 % der Beschleunigung.</translation>
    </message>
    <message>
        <source>For a stiff gantry. Left out: bending of the gantry and the rails.</source>
        <translation>Für ein steifes Portal. Nicht berücksichtigt: Biegung von Portal und Schienen.</translation>
    </message>
    <message>
        <source>The core in tension and compression, at the place of the travel where it is softest.</source>
        <translation>Der Kern auf Zug und Druck, an der weichsten Stelle des Verfahrwegs.</translation>
    </message>
    <message>
        <source>By Hertz from one listed figure; housing and tilt of the nut are left out.</source>
        <translation>Nach Hertz aus einem einzigen Listenwert; Gehäuse und Verkippen der Mutter sind nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>Springs one after the other. Left out: housing, bed and carriage, which often give more than the drive.</source>
        <translation>Federn hintereinander. Nicht berücksichtigt: Gehäuse, Bett und Schlitten, die oft mehr nachgeben als der Antrieb.</translation>
    </message>
    <message>
        <source>Of the drive alone. Left out: housing, bed and carriage, which often give more.</source>
        <translation>Nur des Antriebs. Nicht berücksichtigt: Gehäuse, Bett und Schlitten, die oft mehr nachgeben.</translation>
    </message>
    <message>
        <source>One mass on the drive&apos;s spring, undamped; frame and guides are left out.</source>
        <translation>Eine Masse auf der Feder des Antriebs, ungedämpft; Gestell und Führungen sind nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>Two inertias on one spring, undamped.</source>
        <translation>Zwei Trägheiten an einer Feder, ungedämpft.</translation>
    </message>
    <message>
        <source>For a stiff gantry, small angles and blocks without play.</source>
        <translation>Für ein steifes Portal, kleine Winkel und spielfreie Wagen.</translation>
    </message>
    <message>
        <source>Friction that turns round with the motion winds the drive&apos;s spring both ways.</source>
        <translation>Reibung, die sich mit der Bewegung umkehrt, lässt die Feder des Antriebs in beiden Richtungen nachgeben.</translation>
    </message>
    <message>
        <source>A stepper lags by the arcsine of its load; microstepping errors of the motor itself come on top.</source>
        <translation>Ein Schrittmotor bleibt um den Arkussinus seiner Last zurück; die Mikroschrittfehler des Motors selbst kommen hinzu.</translation>
    </message>
    <message>
        <source>All parts at their worst at once; the root of squares is what is likely.</source>
        <translation>Alle Anteile zugleich im ungünstigsten Fall; wahrscheinlich ist die Wurzel der Quadratsumme.</translation>
    </message>
    <message>
        <source>Of the drive along the axis alone; spindle, frame and guides give as well.</source>
        <translation>Nur des Antriebs entlang der Achse; Arbeitsspindel, Gestell und Führungen geben ebenfalls nach.</translation>
    </message>
    <message>
        <source>Kinematics</source>
        <translation>Kinematik</translation>
    </message>
    <message>
        <source>Screw shaft</source>
        <translation>Spindelwelle</translation>
    </message>
    <message>
        <source>Inertia</source>
        <translation>Trägheit</translation>
    </message>
    <message>
        <source>Forces</source>
        <translation>Kräfte</translation>
    </message>
    <message>
        <source>Torque at the motor</source>
        <translation>Moment am Motor</translation>
    </message>
    <message>
        <source>Limits of feed</source>
        <translation>Grenzen des Vorschubs</translation>
    </message>
    <message>
        <source>Limits of axial force</source>
        <translation>Grenzen der Axialkraft</translation>
    </message>
    <message>
        <source>Belt between motor and screw</source>
        <translation>Riemen zwischen Motor und Spindel</translation>
    </message>
    <message>
        <source>Hauling belt</source>
        <translation>Zugriemen</translation>
    </message>
    <message>
        <source>Stiffness</source>
        <translation>Steifigkeit</translation>
    </message>
    <message>
        <source>Errors</source>
        <translation>Positionsfehler</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>Lebensdauer</translation>
    </message>
    <message>
        <source>Moves and duty</source>
        <translation>Fahrten und Arbeitszyklus</translation>
    </message>
    <message>
        <source>Motor, controller and supply</source>
        <translation>Motor, Steuerung und Netzteil</translation>
    </message>
    <message>
        <source>supply power, axis alone</source>
        <translation>Netzteilleistung, Achse allein</translation>
    </message>
    <message>
        <source>bus voltage, axis alone</source>
        <translation>Zwischenkreisspannung, Achse allein</translation>
    </message>
    <message>
        <source>Shaft power and losses of this axis&apos; motors alone; the other axes draw on the supply too. All of them at once are judged with the machine.</source>
        <translation>Wellenleistung und Verluste nur der Motoren dieser Achse; auch die anderen Achsen belasten das Netzteil. Alle zugleich werden bei der Maschine beurteilt.</translation>
    </message>
    <message>
        <source>Supply voltage raised by the energy returned into the capacitance when this axis alone brakes. All of them at once are judged with the machine.</source>
        <translation>Netzteilspannung, erhöht um die Energie, die in die Kapazität zurückgespeist wird, wenn diese Achse allein bremst. Alle zugleich werden bei der Maschine beurteilt.</translation>
    </message>
    <message>
        <source>%1 times %2</source>
        <translation>%1 mal %2</translation>
    </message>
    <message>
        <source>minus %1</source>
        <translation>minus %1</translation>
    </message>
    <message>
        <source>%1 squared</source>
        <translation>%1 Quadrat</translation>
    </message>
    <message>
        <source>the square of %1, end of square</source>
        <translation>das Quadrat von %1, Ende des Quadrats</translation>
    </message>
    <message>
        <source>the square root of %1</source>
        <translation>die Quadratwurzel aus %1</translation>
    </message>
    <message>
        <source>the square root of %1, end of root</source>
        <translation>die Quadratwurzel aus %1, Ende der Wurzel</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>function</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 equals %2</source>
        <translation>%1 gleich %2</translation>
    </message>
    <message>
        <source>bracket %1, end of bracket</source>
        <translation>Klammer auf %1, Klammer zu</translation>
    </message>
    <message>
        <source>%1 prime</source>
        <translation>%1 Strich</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>symbol, subscript</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 times ten to the power of %2</source>
        <translation>%1 mal zehn hoch %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number, unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 minus %2</source>
        <translation>%1 minus %2</translation>
    </message>
    <message>
        <source>%1 plus %2</source>
        <translation>%1 plus %2</translation>
    </message>
    <message>
        <source>%1 over %2</source>
        <translation>%1 durch %2</translation>
    </message>
    <message>
        <source>the fraction %1, over %2, end of fraction</source>
        <translation>der Bruch %1, durch %2, Ende des Bruchs</translation>
    </message>
    <message>
        <source>a function f</source>
        <translation>eine Funktion f</translation>
    </message>
    <message>
        <source>a function f of %1</source>
        <translation>eine Funktion f von %1</translation>
    </message>
    <message>
        <source>Axis %1</source>
        <comment>letter</comment>
        <translation>Achse %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>place of a fault, sentence</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>△ %1 is more than any such machine has: is the unit right?</source>
        <translation>△ %1 ist mehr, als solch eine Maschine je hat: Stimmt die Einheit?</translation>
    </message>
    <message>
        <source>nut length</source>
        <translation>Mutterlänge</translation>
    </message>
    <message>
        <source>Of the whole nut along the screw; it takes from the travel. Left open, twice the diameter and twice the lead are reckoned with.</source>
        <translation>Der ganzen Mutter längs der Spindel; sie geht vom Verfahrweg ab. Offen gelassen wird mit zweimal Durchmesser und zweimal Steigung gerechnet.</translation>
    </message>
    <message>
        <source>The screw is %1 long between its bearings; travel, nut and a turn of free thread at either end want %2. Make it longer, or travel less; if your nut is another length, give it.</source>
        <translation>Die Spindel ist zwischen ihren Lagern %1 lang; Verfahrweg, Mutter und ein freier Gewindegang an jedem Ende brauchen %2. Sie länger machen oder weniger verfahren; ist die Mutter anders lang, ihre Länge angeben.</translation>
    </message>
    <message>
        <source>The whole screw is given as %1, less than the %2 between its bearings. It must be longer, by its journals; inertia and the parts to buy go by the length given.</source>
        <translation>Die ganze Spindel ist mit %1 angegeben, weniger als die %2 zwischen ihren Lagern. Sie muss um ihre Zapfen länger sein; Trägheit und Einkaufsteile richten sich nach der angegebenen Länge.</translation>
    </message>
    <message>
        <source>Holds for a straight, slender shaft. Shear and rotary inertia, left out, lower it: at 15 diameters by up to 0.3 % fixed–free, 0.6 % supported–supported, 1.3 % fixed–supported, 2.2 % fixed–fixed, at twice the length by a quarter of that. Left out too: axial load, give of the bearings, the nut&apos;s mass, imbalance.</source>
        <translation>Gilt für eine gerade, schlanke Welle. Schub und Drehträgheit, hier weggelassen, senken den Wert: bei 15 Durchmessern um bis zu 0,3 % fest–frei, 0,6 % gestützt–gestützt, 1,3 % fest–gestützt, 2,2 % fest–fest, bei doppelter Länge um ein Viertel davon. Ebenfalls weggelassen: Axiallast, Nachgiebigkeit der Lager, Masse der Mutter, Unwucht.</translation>
    </message>
    <message>
        <source>Accelerating all the way up to this feed. A stepper curve from ratings leaves out saturation, iron loss and resonance; measured points are better. Where the curve ends above the need, the figure is a least one.</source>
        <translation>Bei Beschleunigung bis hinauf zu diesem Vorschub. Eine Schrittmotorkennlinie aus Nenndaten lässt Sättigung, Eisenverluste und Resonanz weg; gemessene Punkte sind besser. Endet die Kennlinie über dem Bedarf, ist der Wert ein Mindestwert.</translation>
    </message>
    <message>
        <source>Where the usable torque falls to what accelerating needs; the end of the motor&apos;s curve, or more, if it never does.</source>
        <translation>Wo das nutzbare Moment auf das fällt, was das Beschleunigen braucht; das Ende der Motorkennlinie oder mehr, wenn es nie so weit fällt.</translation>
    </message>
    <message>
        <source>motor torque at the wanted feed</source>
        <translation>Motormoment beim gewünschten Vorschub</translation>
    </message>
    <message>
        <source>The whole of what the motor has at that speed, before a share is kept back.</source>
        <translation>Alles, was der Motor bei dieser Drehzahl hat, ehe ein Anteil als Reserve abgezogen wird.</translation>
    </message>
    <message>
        <source>motor torque at the cutting feed</source>
        <translation>Motormoment beim Zerspanungsvorschub</translation>
    </message>
    <message>
        <source>The pitch diameter must be larger than the core diameter.</source>
        <translation>Der Flankendurchmesser muss größer als der Kerndurchmesser sein.</translation>
    </message>
    <message>
        <source>thrust of the load case with the least reserve</source>
        <translation>Vorschubkraft des Lastfalls mit der kleinsten Reserve</translation>
    </message>
    <message>
        <source>feed of the load case with the least reserve</source>
        <translation>Vorschub des Lastfalls mit der kleinsten Reserve</translation>
    </message>
    <message>
        <source>usable torque at the end of the motor&apos;s curve</source>
        <translation>nutzbares Moment am Ende der Motorkennlinie</translation>
    </message>
    <message>
        <source>pull-out torque of the motor at that speed</source>
        <translation>Kippmoment des Motors bei dieser Drehzahl</translation>
    </message>
    <message>
        <source>place of the nut, from the motor-end bearing</source>
        <translation>Ort der Mutter, vom motorseitigen Lager aus</translation>
    </message>
    <message>
        <source>f: the end of the motor&apos;s known curve. The usable torque there is still above the need, so the feed that torque allows is this or more; what limits is the end of the curve</source>
        <translation>f: das Ende der bekannten Motorkennlinie. Das nutzbare Moment liegt dort noch über dem Bedarf, der vom Moment erlaubte Vorschub ist also dieser oder mehr; begrenzt wird er vom Ende der Kennlinie</translation>
    </message>
    <message>
        <source>f: nothing, for at that feed the motor&apos;s torque is not known or none is left</source>
        <translation>f: nichts, denn bei diesem Vorschub ist das Moment des Motors nicht bekannt oder keines übrig</translation>
    </message>
    <message>
        <source>Read it in the manual of the controller, for one axis; a figure for all is divided by the axes that move at once.</source>
        <translation>Steht im Handbuch der Steuerung, für eine Achse; ein Wert für alle wird durch die Zahl der Achsen geteilt, die zugleich fahren.</translation>
    </message>
    <message>
        <source>A holding brake is fitted, its strength is not judged here: at the motor&apos;s shaft it has to hold %1, worn and greasy too, and what stands between it and the carriage must not fail. Take it from its maker&apos;s data, keep to your local rules.</source>
        <translation>Eine Haltebremse ist eingebaut, ihre Stärke wird hier nicht beurteilt: An der Motorwelle muss sie %1 halten, auch abgenutzt und verölt, und was zwischen ihr und dem Schlitten liegt, darf nicht versagen. Nach den Angaben ihres Herstellers wählen, die örtlichen Vorschriften einhalten.</translation>
    </message>
    <message>
        <source>The least, for the wanted load: a motor that runs into a stop pulls harder, and a belt maker&apos;s own figure goes before it. Shaft centres stand still and the belt is elastic. Left out: the belt&apos;s own mass at speed.</source>
        <translation>Das Mindeste, für die gewünschte Last: Ein Motor, der auf einen Anschlag fährt, zieht stärker, und ein Wert des Riemenherstellers geht vor. Der Wellenabstand ist fest und der Riemen elastisch. Weggelassen: die Masse des laufenden Riemens.</translation>
    </message>
    <message>
        <source>least belt tension</source>
        <translation>kleinste Riemenvorspannung</translation>
    </message>
    <message>
        <source>least hauling tension</source>
        <translation>kleinste Vorspannung Zugriemen</translation>
    </message>
    <message>
        <source>Power of the spindle motor at its speed in the cut. Only load cases reckoned from tool and material go by it; left open, no cut is limited by it.</source>
        <translation>Leistung des Arbeitsspindelmotors bei seiner Drehzahl im Schnitt. Nur Lastfälle, die aus Werkzeug und Werkstoff gerechnet werden, richten sich danach; bleibt es offen, begrenzt sie keinen Schnitt.</translation>
    </message>
    <message>
        <source>Without power only friction and the motor&apos;s detent torque hold the axis: weight less counterbalance puts %1 on the motor, detent resists with %2. Vibration and wear can overcome that, and the axis then runs off. Fit a brake, or balance it; keep clear of its way and keep to your local rules.</source>
        <translation>Stromlos halten nur Reibung und Rastmoment des Motors die Achse: Gewicht weniger Gewichtsausgleich belastet den Motor mit %1, das Rastmoment hält %2 dagegen. Erschütterung und Verschleiß können das überwinden, dann läuft die Achse davon. Eine Haltebremse einbauen oder sie ausgleichen; aus ihrem Weg bleiben und die örtlichen Vorschriften einhalten.</translation>
    </message>
    <message>
        <source>The torque curve was taken at %1, the supply gives only %2. At less voltage the torque falls earlier, so the curve&apos;s speeds are taken down with it. That is an estimate; find the curve for your voltage.</source>
        <translation>Die Drehmomentkennlinie gilt für %1, das Netzteil liefert nur %2. Bei weniger Spannung fällt das Moment früher, darum sind die Drehzahlen der Kennlinie herabgesetzt. Das ist eine Schätzung; die Kennlinie für die eigene Spannung suchen.</translation>
    </message>
    <message>
        <source>The torque curve was taken at %1, the supply gives %2. At more voltage the torque falls later; nothing is reckoned for that, the curve is used as it is. The motor may give more at speed; find the curve for your voltage.</source>
        <translation>Die Drehmomentkennlinie gilt für %1, das Netzteil liefert %2. Bei mehr Spannung fällt das Moment später; das wird nicht gerechnet, die Kennlinie gilt, wie sie ist. Bei hoher Drehzahl gibt der Motor vielleicht mehr; die Kennlinie für die eigene Spannung suchen.</translation>
    </message>
    <message>
        <source>At rest weight and counterbalance together ask %1 of the motor, more than the %2 it may be asked to hold: the axis can slip even with the power on. Keep hands from below it, and fit a brake or a counterbalance; keep to your local rules.</source>
        <translation>Im Stillstand verlangen Gewicht und Gewichtsausgleich zusammen %1 vom Motor, mehr als die %2, die er halten darf: Die Achse kann auch bei eingeschaltetem Strom abrutschen. Hände darunter fernhalten und eine Haltebremse oder einen Gewichtsausgleich einbauen; die örtlichen Vorschriften einhalten.</translation>
    </message>
    <message>
        <source>The counterbalance pulls more than the axis weighs. When the power goes the axis can rise: that puts %1 on the motor, which resists with %2 unpowered. Hands and heads above it are in danger. Lessen the counterbalance, or fit a brake that holds both ways; keep to your local rules, and ask somebody qualified.</source>
        <translation>Der Gewichtsausgleich zieht mehr, als die Achse wiegt. Fällt der Strom aus, kann die Achse hochfahren: Das belastet den Motor mit %1, der stromlos %2 dagegen hält. Hände und Köpfe darüber sind in Gefahr. Den Gewichtsausgleich verringern oder eine Haltebremse einbauen, die in beiden Richtungen hält; die örtlichen Vorschriften einhalten und jemanden mit Fachkenntnis fragen.</translation>
    </message>
    <message>
        <source>The axis is called Z but lies flat: its incline is 0°. If it lifts, give the incline, 90° for straight up; until then its weight counts only as friction, and nothing warns that it could fall.</source>
        <translation>Die Achse heißt Z, liegt aber flach: Ihre Neigung ist 0°. Wenn sie hebt, die Neigung angeben, 90° für senkrecht; bis dahin zählt ihr Gewicht nur als Reibung, und nichts warnt davor, dass sie herabfallen könnte.</translation>
    </message>
    <message>
        <source>The torque at speed is reckoned from the motor&apos;s ratings, without iron loss and saturation: a measured curve lies lower, the more so the faster. Find the maker&apos;s curve for your drive and voltage, or leave a larger reserve.</source>
        <translation>Das Moment bei Drehzahl ist aus den Nenndaten des Motors gerechnet, ohne Eisenverluste und Sättigung: Eine gemessene Kennlinie liegt tiefer, je schneller, desto mehr. Die Kennlinie des Herstellers für die eigene Endstufe und Spannung suchen oder mehr Reserve lassen.</translation>
    </message>
    <message>
        <source>Of this part&apos;s figures nobody has given %1: they are the program&apos;s own, to have something to compute with. Put in those of the data sheet, or take a part from a list, before you buy.</source>
        <translation>Von den Angaben dieses Teils hat niemand gegeben: %1. Sie stammen vom Programm, damit es etwas zu rechnen hat. Vor dem Kauf die des Datenblatts eintragen oder ein Teil aus einer Liste nehmen.</translation>
    </message>
    <message>
        <source>With friction and drags as given; zero where they hold it. The caution that an axis can fall does not count on them: a worn or shaken drive falls, and faster. Do not stand under it.</source>
        <translation>Mit Reibung und Reibmomenten wie angegeben; null, wo sie die Achse halten. Die Warnung vor dem Herabfallen rechnet nicht mit ihnen: Ein verschlissener oder gerüttelter Antrieb fällt, und schneller. Nicht darunter aufhalten.</translation>
    </message>
    <message>
        <source>f: the motor&apos;s torque at that speed: its points joined by a curve that never overshoots them (monotone cubic), less in proportion where the drive is set below the rated current</source>
        <translation>f: das Moment des Motors bei dieser Drehzahl: seine Punkte, verbunden durch eine Kurve, die nie über sie hinausschießt (monoton kubisch), im Verhältnis weniger, wo die Endstufe unter dem Nennstrom eingestellt ist</translation>
    </message>
    <message>
        <source>f: the motor&apos;s torque at that speed: its points, their speeds times (U − R I)/(U_p + R I) for the lower supply, U_p the voltage they were taken at, R I the winding&apos;s drop at the peak of the current (0 where not known), joined by a curve that never overshoots them (monotone cubic), less in proportion where the drive is set below the rated current</source>
        <translation>f: das Moment des Motors bei dieser Drehzahl: seine Punkte, ihre Drehzahlen mal (U − R I)/(U_p + R I) für das schwächere Netzteil, U_p die Spannung, für die sie gelten, R I der Spannungsabfall der Wicklung beim Scheitelwert des Stroms (0, wo unbekannt), verbunden durch eine Kurve, die nie über sie hinausschießt (monoton kubisch), im Verhältnis weniger, wo die Endstufe unter dem Nennstrom eingestellt ist</translation>
    </message>
    <message>
        <source>f: the motor&apos;s torque at that speed, from its ratings at the supply&apos;s voltage, with the inductance and the loss that meet its points best</source>
        <translation>f: das Moment des Motors bei dieser Drehzahl, aus seinen Nenndaten bei der Spannung des Netzteils, mit der Induktivität und dem Verlust, die seine Punkte am besten treffen</translation>
    </message>
    <message>
        <source>f: K I − T_d, for at that speed the current alone limits. K = T_h/(√2 I_r); I is the peak of the drive&apos;s current, √2 times an effective one</source>
        <translation>f: K I − T_d, denn bei dieser Drehzahl begrenzt allein der Strom. K = T_h/(√2 I_r); I ist der Scheitelwert des Stroms der Endstufe, das √2-Fache eines Effektivwerts</translation>
    </message>
    <message>
        <source>f: K (U/Z − K ω R/Z²) − T_d, for at that speed the voltage alone limits. K = T_h/(√2 I_r); ω is the speed in radians a second, X = N_r ω L, Z² = R² + X²; never less than nothing</source>
        <translation>f: K (U/Z − K ω R/Z²) − T_d, denn bei dieser Drehzahl begrenzt allein die Spannung. K = T_h/(√2 I_r); ω ist die Drehzahl in Radiant je Sekunde, X = N_r ω L, Z² = R² + X²; nie weniger als null</translation>
    </message>
    <message>
        <source>f: K i − T_d, for at that speed current and voltage both limit. K = T_h/(√2 I_r); I is the peak of the drive&apos;s current, √2 times an effective one; ω is the speed in radians a second, X = N_r ω L, Z² = R² + X², q = −K ω R/Z², d = K ω X/Z², c² = q² + d², a = (I² − U²/Z² + c²)/(2 c); i = (q a + d √(I² − a²))/c; never less than nothing</source>
        <translation>f: K i − T_d, denn bei dieser Drehzahl begrenzen Strom und Spannung beide. K = T_h/(√2 I_r); I ist der Scheitelwert des Stroms der Endstufe, das √2-Fache eines Effektivwerts; ω ist die Drehzahl in Radiant je Sekunde, X = N_r ω L, Z² = R² + X², q = −K ω R/Z², d = K ω X/Z², c² = q² + d², a = (I² − U²/Z² + c²)/(2 c); i = (q a + d √(I² − a²))/c; nie weniger als null</translation>
    </message>
    <message>
        <source>The hardest load case gets %1 of the torque or feed it asks.</source>
        <translation>Der schwerste Lastfall verlangt Moment oder Vorschub und bekommt davon %1.</translation>
    </message>
    <message>
        <source>The motor may stall from rest: accelerating needs %1, usable is %2.</source>
        <translation>Der Motor kann aus dem Stand stehen bleiben: Beschleunigen braucht %1, nutzbar sind %2.</translation>
    </message>
    <message>
        <source>%1 of screw turns between its supports: cover it, for it winds up sleeves, hair and cables. Keep to your local rules.</source>
        <translation>Zwischen den Enden drehen sich %1 Spindel: abdecken, denn sie wickelt Ärmel, Haare und Kabel auf. Die örtlichen Vorschriften einhalten.</translation>
    </message>
    <message>
        <source>rolled</source>
        <translation>gerollt</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>geschliffen</translation>
    </message>
    <message>
        <source>transport grade</source>
        <translation>Transportklasse</translation>
    </message>
    <message>
        <source>lubricated</source>
        <translation>geschmiert</translation>
    </message>
    <message>
        <source>bronze nut</source>
        <translation>Bronzemutter</translation>
    </message>
    <message>
        <source>steel or dry nut</source>
        <translation>Mutter aus Stahl oder trocken</translation>
    </message>
    <message>
        <source>rubber</source>
        <translation>Gummi</translation>
    </message>
    <message>
        <source>polyurethane</source>
        <translation>Polyurethan</translation>
    </message>
    <message>
        <source>glass cords</source>
        <translation>Glaszugstränge</translation>
    </message>
    <message>
        <source>steel cords</source>
        <translation>Stahlzugstränge</translation>
    </message>
    <message>
        <source>open length</source>
        <translation>offene Länge</translation>
    </message>
    <message>
        <source>%1 curvilinear</source>
        <translation>%1 mit rundem Zahn</translation>
    </message>
    <message>
        <source>jaw</source>
        <translation>Klaue</translation>
    </message>
    <message>
        <source>hard spider</source>
        <translation>harter Zahnkranz</translation>
    </message>
    <message>
        <source>bellows</source>
        <translation>Metallbalg</translation>
    </message>
    <message>
        <source>beam</source>
        <translation>Steg</translation>
    </message>
    <message>
        <source>helical slit</source>
        <translation>Wendelschlitz</translation>
    </message>
    <message>
        <source>rigid</source>
        <translation>starr</translation>
    </message>
    <message>
        <source>clamped sleeve</source>
        <translation>geklemmte Hülse</translation>
    </message>
    <message>
        <source>%1 mm outside</source>
        <translation>außen %1 mm</translation>
    </message>
    <message>
        <source>bore %1</source>
        <translation>Bohrung %1</translation>
    </message>
    <message>
        <source>pair of angular contact ball bearings in a block</source>
        <translation>Paar Schrägkugellager im Gehäuse</translation>
    </message>
    <message>
        <source>pair of 60° angular contact thrust bearings</source>
        <translation>Paar Axial-Schrägkugellager 60°</translation>
    </message>
    <message>
        <source>two deep-groove ball bearings against each other</source>
        <translation>zwei Rillenkugellager gegeneinander</translation>
    </message>
    <message>
        <source>one deep-groove ball bearing</source>
        <translation>ein Rillenkugellager</translation>
    </message>
    <message>
        <source>preloaded</source>
        <translation>vorgespannt</translation>
    </message>
    <message>
        <source>floating end only</source>
        <translation>nur am Loslager</translation>
    </message>
    <message>
        <source>no thrust</source>
        <translation>ohne Axialkraft</translation>
    </message>
    <message>
        <source>profile rail %1</source>
        <translation>Profilschiene %1</translation>
    </message>
    <message>
        <source>round rail %1</source>
        <translation>Rundschiene %1</translation>
    </message>
    <message>
        <source>rail and one block</source>
        <translation>Schiene mit einem Wagen</translation>
    </message>
    <message>
        <source>long block</source>
        <translation>langer Wagen</translation>
    </message>
    <message>
        <source>ball blocks</source>
        <translation>Kugelwagen</translation>
    </message>
    <message>
        <source>roller blocks</source>
        <translation>Rollenwagen</translation>
    </message>
    <message>
        <source>open ball bushings</source>
        <translation>offene Kugelbuchsen</translation>
    </message>
    <message>
        <source>V-guide with steel wheels and felt wipers</source>
        <translation>V-Führung mit Stahlrollen und Filzabstreifern</translation>
    </message>
    <message>
        <source>V-wheels</source>
        <translation>V-Rollen</translation>
    </message>
    <message>
        <source>polymer</source>
        <translation>Kunststoff</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>on aluminium extrusion</source>
        <translation>auf Aluminiumprofil</translation>
    </message>
    <message>
        <source>on hardened track</source>
        <translation>auf gehärteter Bahn</translation>
    </message>
    <message>
        <source>sliding ways</source>
        <translation>Gleitführung</translation>
    </message>
    <message>
        <source>worked example</source>
        <translation>Rechenbeispiel</translation>
    </message>
    <message>
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>steel %1</source>
        <translation>Stahl %1</translation>
    </message>
    <message>
        <source>case-hardening steel %1</source>
        <translation>Einsatzstahl %1</translation>
    </message>
    <message>
        <source>heat-treatable steel %1</source>
        <translation>Vergütungsstahl %1</translation>
    </message>
    <message>
        <source>stainless steel %1</source>
        <translation>nichtrostender Stahl %1</translation>
    </message>
    <message>
        <source>cast iron %1</source>
        <translation>Gusseisen %1</translation>
    </message>
    <message>
        <source>brass</source>
        <translation>Messing</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>wrought</source>
        <translation>geknetet</translation>
    </message>
    <message>
        <source>particleboard</source>
        <translation>Spanplatte</translation>
    </message>
    <message>
        <source>softwood</source>
        <translation>Weichholz</translation>
    </message>
    <message>
        <source>hardwood</source>
        <translation>Hartholz</translation>
    </message>
    <message>
        <source>plywood</source>
        <translation>Sperrholz</translation>
    </message>
    <message>
        <source>acrylic</source>
        <translation>Acrylglas</translation>
    </message>
    <message>
        <source>servo %1 W</source>
        <translation>Servo %1 W</translation>
    </message>
    <message>
        <source>%1 mm flange</source>
        <translation>Flansch %1 mm</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>ask the supplier</source>
        <translation>Lieferanten fragen</translation>
    </message>
    <message>
        <source>typical, from memory</source>
        <translation>typisch, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>nominal diameter and lead of the series of ISO 3408-2</source>
        <translation>Nenndurchmesser und Steigung aus den Reihen der ISO 3408-2</translation>
    </message>
    <message>
        <source>the rest typical, from memory</source>
        <translation>das Übrige typisch, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>friction typical, from memory</source>
        <translation>Reibung typisch, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>pitch by ISO 5296</source>
        <translation>Teilung nach ISO 5296</translation>
    </message>
    <message>
        <source>rated pull, mass and base width as in ISO 5295, recalled</source>
        <translation>Nennzugkraft, Masse und Bezugsbreite wie in ISO 5295, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ISO 2904: d2 = d − 0.5 P, d3 = d − P − 2 a_c</source>
        <translation>ISO 2904: d2 = d − 0,5 P, d3 = d − P − 2 a_c</translation>
    </message>
    <message>
        <source>pitch by ISO 13050</source>
        <translation>Teilung nach ISO 13050</translation>
    </message>
    <message>
        <source>least teeth and tooth gap typical, from memory</source>
        <translation>Mindestzähnezahl und Zahnlücke typisch, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>pitch by ISO 17396</source>
        <translation>Teilung nach ISO 17396</translation>
    </message>
    <message>
        <source>an average over the chip, so no exponent</source>
        <translation>ein Mittel über den Span, daher ohne Exponent</translation>
    </message>
    <message>
        <source>Kienzle figures, typical, from memory</source>
        <translation>Werte nach Kienzle, typisch, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ask the supplier of the tool</source>
        <translation>Lieferanten des Werkzeugs fragen</translation>
    </message>
    <message>
        <source>rough band, typical, from memory</source>
        <translation>grober Bereich, typisch, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>friction of ball guides 0.002 to 0.003: Thomson Linear, published engineering tips</source>
        <translation>Reibung von Kugelführungen 0,002 bis 0,003: Thomson Linear, veröffentlichte Auslegungshinweise</translation>
    </message>
    <message>
        <source>Elatech catalogue, 2012 edition distributed by Goodyear, technical data T5, open-ended type M</source>
        <translation>Elatech-Katalog, Ausgabe 2012 im Vertrieb von Goodyear, Kennwerte T5, offene Ausführung M</translation>
    </message>
    <message>
        <source>Elatech catalogue, 2012 edition distributed by Goodyear, technical data ATL5, open-ended type M</source>
        <translation>Elatech-Katalog, Ausgabe 2012 im Vertrieb von Goodyear, Kennwerte ATL5, offene Ausführung M</translation>
    </message>
    <message>
        <source>ISO 2904: d2 = d − 0.5 P, d3 = d − P − 2 a_c (from memory: this pitch is the trade&apos;s, not in the standard&apos;s own series)</source>
        <translation>ISO 2904: d2 = d − 0,5 P, d3 = d − P − 2 a_c (aus dem Gedächtnis: diese Steigung ist handelsüblich, nicht aus den Reihen der Norm)</translation>
    </message>
    <message>
        <source>Elatech catalogue, 2012 edition distributed by Goodyear, technical data HTD5M, open-ended type M</source>
        <translation>Elatech-Katalog, Ausgabe 2012 im Vertrieb von Goodyear, Kennwerte HTD5M, offene Ausführung M</translation>
    </message>
    <message>
        <source>sliding friction 0.05 to 0.2: Miki Pulley, published technical data (tech 26)</source>
        <translation>Gleitreibung 0,05 bis 0,2: Miki Pulley, veröffentlichte Unterlagen (tech 26)</translation>
    </message>
    <message>
        <source>friction of roller guides 0.001 to 0.002: Thomson Linear, published engineering tips</source>
        <translation>Reibung von Rollenführungen 0,001 bis 0,002: Thomson Linear, veröffentlichte Auslegungshinweise</translation>
    </message>
    <message>
        <source>THK, Type KR catalogue, worked example: friction 0.005, rolling and seal resistance 2.5 N</source>
        <translation>THK, Katalog Typ KR, Rechenbeispiel: Reibung 0,005, Roll- und Dichtungswiderstand 2,5 N</translation>
    </message>
    <message>
        <source>Hepco V-guide example as published on industrialmonitordirect.com: friction 0.02 and 28 N of seal drag for the carriage, here a quarter for each wheel</source>
        <translation>Beispiel einer V-Führung von Hepco, veröffentlicht auf industrialmonitordirect.com: Reibung 0,02 und 28 N Dichtungswiderstand am Wagen, hier ein Viertel für jedes Rad</translation>
    </message>
    <message>
        <source>figures from memory</source>
        <translation>Werte aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>they give the table of Röhm, chuck manual RN-1391, p. 43 (cast iron HB 200 to 250, feeds 0.16 to 1.6 mm at 45°) within 3 %</source>
        <translation>sie geben die Tafel von Röhm, Futteranleitung RN-1391, S. 43 (Gusseisen HB 200 bis 250, Vorschübe 0,16 bis 1,6 mm bei 45°) auf 3 % wieder</translation>
    </message>
    <message>
        <source>B. Pałubicki, Materials 2021, 14, 2208: average specific principal force in peripheral milling, slow end (40 m/s)</source>
        <translation>B. Pałubicki, Materials 2021, 14, 2208: mittlere spezifische Schnittkraft beim Umfangsfräsen, langsames Ende (40 m/s)</translation>
    </message>
    <message>
        <source>B. Pałubicki, Materials 2021, 14, 2208: average specific principal force in peripheral milling, fast end (60 m/s)</source>
        <translation>B. Pałubicki, Materials 2021, 14, 2208: mittlere spezifische Schnittkraft beim Umfangsfräsen, schnelles Ende (60 m/s)</translation>
    </message>
</context>
<context>
    <name>Working</name>
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
        <translation>fest</translation>
    </message>
</context>
<context>
    <name>feedwright</name>
    <message>
        <source>%1 teeth</source>
        <translation>%1 Zähne</translation>
    </message>
    <message>
        <source>wrap %1°</source>
        <translation>Umschlingung %1°</translation>
    </message>
    <message>
        <source>in mesh: %1</source>
        <translation>im Eingriff: %1</translation>
    </message>
    <message>
        <source>reduction %1 : 1</source>
        <translation>Übersetzung %1 : 1</translation>
    </message>
    <message>
        <source>motor turns %1 ×</source>
        <translation>Motor dreht %1 ×</translation>
    </message>
    <message>
        <source>the side nearer to the load carries more</source>
        <translation>die Seite näher an der Last trägt mehr</translation>
    </message>
    <message>
        <source>thin: no jerk limit · bold: with one</source>
        <translation>dünn: ohne Ruckgrenze · fett: mit</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>a target or an input is missing</source>
        <translation>ein Ziel oder eine Eingabe fehlt</translation>
    </message>
    <message>
        <source>an example; its stiffnesses are invented</source>
        <translation>ein Beispiel; seine Steifigkeiten sind erfunden</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <comment>the two ends of a screw</comment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>speed at which it whips, against two supported ends</source>
        <translation>Drehzahl, bei der sie schwingt, gegenüber zwei gestützten Enden</translation>
    </message>
    <message>
        <source>load at which it buckles, against two supported ends</source>
        <translation>Last, bei der sie knickt, gegenüber zwei gestützten Enden</translation>
    </message>
    <message>
        <source>starts: %1 · pitch = lead ÷ %1</source>
        <translation>Gangzahl: %1 · Teilung = Steigung ÷ %1</translation>
    </message>
    <message>
        <source>each half presses on one flank of the thread only: no play is left</source>
        <translation>jede Hälfte drückt nur auf eine Gewindeflanke: es bleibt kein Spiel</translation>
    </message>
    <message>
        <source>speed</source>
        <comment>of a carriage, over time</comment>
        <translation>Geschwindigkeit</translation>
    </message>
</context>
<context>
    <name>feedwright::AboutWindow</name>
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
        <source>Made with:</source>
        <translation>Erstellt mit:</translation>
    </message>
    <message>
        <source>Libraries and their licences</source>
        <translation>Bibliotheken und ihre Lizenzen</translation>
    </message>
    <message>
        <source>Library</source>
        <translation>Bibliothek</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Verwendet für</translation>
    </message>
    <message>
        <source>GNU General Public License, version 3</source>
        <translation>GNU General Public License, Version 3</translation>
    </message>
    <message>
        <source>View &amp;licence</source>
        <translation>&amp;Lizenz ansehen</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
</context>
<context>
    <name>feedwright::Autosave</name>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 lässt sich nicht anlegen.</translation>
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
    <message>
        <source>✎ typed text waits</source>
        <translation>✎ Eingabe wartet</translation>
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
    <name>feedwright::BeltChooser</name>
    <message>
        <source>Belts round about</source>
        <translation>Benachbarte Riemen</translation>
    </message>
    <message>
        <source>%1 teeth: slide at %2</source>
        <translation>%1 Zähne: Spannweg bei %2</translation>
    </message>
    <message>
        <source>%1 teeth: centres %2 apart</source>
        <translation>%1 Zähne: Achsabstand %2</translation>
    </message>
    <message>
        <source>%1, usually in stock</source>
        <comment>belt</comment>
        <translation>%1, meist lagernd</translation>
    </message>
</context>
<context>
    <name>feedwright::ChoiceRow</name>
    <message>
        <source>%1: %2</source>
        <comment>field: choice</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>feedwright::ConcernGroup</name>
    <message>
        <source>%1, %2: %3</source>
        <comment>weight, places, sentence</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Anzeigen</translation>
    </message>
    <message>
        <source>Show the first of %1</source>
        <translation>Die erste Stelle zeigen von %1</translation>
    </message>
    <message numerus="yes">
        <source>Each of %n</source>
        <comment>cautions that say the same</comment>
        <translation>
            <numerusform>Jede von %n</numerusform>
            <numerusform>Alle %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Each of %n, open: %1</source>
        <comment>cautions, their places</comment>
        <translation>
            <numerusform>Jede von %n, aufgeklappt: %1</numerusform>
            <numerusform>Alle %n, aufgeklappt: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Each of %n, closed: %1</source>
        <comment>cautions, their places</comment>
        <translation>
            <numerusform>Jede von %n, zugeklappt: %1</numerusform>
            <numerusform>Alle %n, zugeklappt: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::ConcernList</name>
    <message>
        <source>What deserves care</source>
        <translation>Was Aufmerksamkeit verdient</translation>
    </message>
    <message>
        <source>Nothing waits for an answer.</source>
        <translation>Nichts wartet auf eine Antwort.</translation>
    </message>
    <message numerus="yes">
        <source>%n to settle, the gravest first</source>
        <translation>
            <numerusform>%n zu klären, Schwerwiegendes zuerst</numerusform>
            <numerusform>%n zu klären, Schwerwiegendes zuerst</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n answered</source>
        <translation>
            <numerusform>%n beantwortet</numerusform>
            <numerusform>%n beantwortet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::ConcernRow</name>
    <message>
        <source>Keep the answer</source>
        <translation>Antwort übernehmen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>weight, subject, sentence</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Anzeigen</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 anzeigen</translation>
    </message>
    <message>
        <source>Answer…</source>
        <translation>Beantworten…</translation>
    </message>
    <message>
        <source>Change…</source>
        <translation>Ändern…</translation>
    </message>
    <message>
        <source>Answer %1</source>
        <translation>%1 beantworten</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the answer to %1</source>
        <translation>Antwort auf %1 entfernen</translation>
    </message>
    <message>
        <source>Why it is all right: %1</source>
        <translation>Warum es in Ordnung ist: %1</translation>
    </message>
    <message>
        <source>Why it is all right</source>
        <translation>Warum es in Ordnung ist</translation>
    </message>
    <message>
        <source>This is too long: at most %1 bytes are kept, and it has %2.</source>
        <translation>Das ist zu lang: Höchstens %1 Bytes werden aufbewahrt, es sind aber %2.</translation>
    </message>
    <message>
        <source>An answer makes nothing safer: the caution stays in sight and on the sheet. Keep to your local rules, and ask somebody qualified.</source>
        <translation>Eine Antwort macht nichts sicherer: Die Warnung bleibt sichtbar und steht auf dem Auslegungsblatt. Die örtlichen Vorschriften einhalten und eine fachkundige Person fragen.</translation>
    </message>
    <message>
        <source>It is kept in the machine&apos;s file with the figures as they are now, and printed on the sheet.</source>
        <translation>Sie wird mit den jetzigen Werten in der Datei der Maschine aufbewahrt und auf dem Auslegungsblatt gedruckt.</translation>
    </message>
    <message>
        <source>answer to %1</source>
        <translation>Antwort auf %1</translation>
    </message>
    <message>
        <source>remove the answer to %1</source>
        <translation>Antwort auf %1 entfernen</translation>
    </message>
    <message>
        <source>%1 is not found any more, but an answer to it was being written.</source>
        <translation>%1 wird nicht mehr festgestellt, aber eine Antwort darauf war in Arbeit.</translation>
    </message>
    <message>
        <source>There is nothing to answer now. What you wrote stays here until it is found again, or until you cancel it.</source>
        <translation>Zurzeit ist nichts zu beantworten. Das Geschriebene bleibt hier, bis es wieder festgestellt oder verworfen wird.</translation>
    </message>
</context>
<context>
    <name>feedwright::FieldRow</name>
    <message>
        <source>Back to the preset</source>
        <translation>Zurück zur Vorgabe</translation>
    </message>
    <message>
        <source>Back to the preset, %1</source>
        <translation>Zurück zur Vorgabe, %1</translation>
    </message>
    <message>
        <source>Put the list&apos;s figures back</source>
        <translation>Listenwerte wiederherstellen</translation>
    </message>
    <message>
        <source>Put the list&apos;s %1 back</source>
        <translation>Listenwert wiederherstellen: %1</translation>
    </message>
    <message>
        <source>Leave it open</source>
        <translation>Offen lassen</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Bedeutung</translation>
    </message>
    <message>
        <source>The program&apos;s own figure until you give yours.</source>
        <translation>Der Wert des Programms, bis ein eigener angegeben ist.</translation>
    </message>
    <message>
        <source>Typed in here or in the file.</source>
        <translation>Hier oder in der Datei eingegeben.</translation>
    </message>
    <message>
        <source>From a list: %1</source>
        <translation>Aus einer Liste: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>field, where its value came from</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>changed from the list</source>
        <translation>gegenüber der Liste geändert</translation>
    </message>
    <message>
        <source>changed from the list: %1</source>
        <translation>gegenüber der Liste geändert: %1</translation>
    </message>
    <message>
        <source>%1 wanted by %2</source>
        <comment>sign, limits that need the field</comment>
        <translation>%1 benötigt für %2</translation>
    </message>
</context>
<context>
    <name>feedwright::FieldSection</name>
    <message>
        <source>%1, open</source>
        <comment>section of a form</comment>
        <translation>%1, aufgeklappt</translation>
    </message>
    <message>
        <source>%1, closed</source>
        <comment>section of a form</comment>
        <translation>%1, zugeklappt</translation>
    </message>
</context>
<context>
    <name>feedwright::FieldsForm</name>
    <message numerus="yes">
        <source>%n to mend</source>
        <comment>fields of a section</comment>
        <translation>
            <numerusform>%n zu beheben</numerusform>
            <numerusform>%n zu beheben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wanted</source>
        <comment>fields of a section</comment>
        <translation>
            <numerusform>%n benötigt</numerusform>
            <numerusform>%n benötigt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n given</source>
        <comment>fields of a section</comment>
        <translation>
            <numerusform>%n angegeben</numerusform>
            <numerusform>%n angegeben</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>feedwright::FieldsPanel</name>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>Find a field of this part</source>
        <translation>Ein Feld dieses Teils suchen</translation>
    </message>
    <message>
        <source>Find a field (Ctrl+F)</source>
        <translation>Feld suchen (Strg+F)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>field, its part</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>No field of this axis or of the machine is called so.</source>
        <translation>Kein Feld dieser Achse oder der Maschine heißt so.</translation>
    </message>
    <message>
        <source>None in this part. Elsewhere: %1. Enter goes to the first.</source>
        <comment>fields with their parts</comment>
        <translation>In diesem Teil keines. Anderswo: %1. Die Eingabetaste führt zum ersten.</translation>
    </message>
    <message>
        <source>Find a field</source>
        <translation>Feld suchen</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
</context>
<context>
    <name>feedwright::FigureEditor</name>
    <message>
        <source>Figure</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
</context>
<context>
    <name>feedwright::FigureModel</name>
    <message>
        <source>wanted %1</source>
        <translation>gewünscht %1</translation>
    </message>
</context>
<context>
    <name>feedwright::FigureTable</name>
    <message>
        <source>Copy the table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>%1, wanted</source>
        <translation>%1, gewünscht</translation>
    </message>
    <message>
        <source>%1, reads</source>
        <translation>%1, Befund</translation>
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
    <name>feedwright::GraveCautions</name>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <comment>cautions</comment>
        <translation>
            <numerusform>%n weiterer</numerusform>
            <numerusform>%n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>Show fewer cautions</source>
        <translation>Weniger Warnungen anzeigen</translation>
    </message>
    <message>
        <source>Show all cautions in full</source>
        <translation>Alle Warnungen vollständig anzeigen</translation>
    </message>
</context>
<context>
    <name>feedwright::HelpWindow</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vorwärts</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>Search all pages</source>
        <translation>Alle Seiten durchsuchen</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) found.</source>
        <translation>
            <numerusform>%n Seite gefunden.</numerusform>
            <numerusform>%n Seiten gefunden.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 – Feedwright help</source>
        <translation>%1 – Feedwright-Hilfe</translation>
    </message>
    <message>
        <source>Page of help</source>
        <translation>Hilfeseite</translation>
    </message>
</context>
<context>
    <name>feedwright::LadderWidget</name>
    <message>
        <source>%1 Chosen.</source>
        <comment>sentence on a limit</comment>
        <translation>%1 Ausgewählt.</translation>
    </message>
</context>
<context>
    <name>feedwright::LengthenRow</name>
    <message>
        <source>&amp;Longer by</source>
        <translation>&amp;Länger um</translation>
    </message>
    <message>
        <source>How much longer the travel is to be, in any unit; less than nothing makes it shorter. Screw or belt grow with it.</source>
        <translation>Um wie viel der Verfahrweg länger werden soll, in jeder Einheit; weniger als null macht ihn kürzer. Spindel oder Riemen wachsen mit.</translation>
    </message>
    <message>
        <source>Make the a&amp;xis so long</source>
        <translation>Ac&amp;hse so lang machen</translation>
    </message>
    <message>
        <source>Make the axis so long</source>
        <translation>Achse so lang machen</translation>
    </message>
    <message>
        <source>So much shorter, nothing would be left.</source>
        <translation>Um so viel kürzer bliebe nichts übrig.</translation>
    </message>
    <message>
        <source>lengthen axis %1 by %2</source>
        <translation>Achse %1 um %2 verlängern</translation>
    </message>
    <message>
        <source>shorten axis %1 by %2</source>
        <translation>Achse %1 um %2 verkürzen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>field, its new value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>then %1</source>
        <comment>fields with their new values</comment>
        <translation>dann %1</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between fields</comment>
        <translation>, </translation>
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
    <message>
        <source>Show</source>
        <translation>Anzeigen</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 anzeigen</translation>
    </message>
    <message>
        <source>▲ Computed without “%1”, which stands in %2 and is not taken.</source>
        <comment>text, field</comment>
        <translation>▲ Gerechnet ist ohne „%1“; es steht in %2 und ist nicht übernommen.</translation>
    </message>
    <message>
        <source>▲ Computed with %1 %2: “%3” stands in the field and is not taken.</source>
        <comment>field, value, text</comment>
        <translation>▲ Gerechnet ist mit %1 %2: „%3“ steht im Feld und ist nicht übernommen.</translation>
    </message>
    <message numerus="yes">
        <source>△ %n caution(s)</source>
        <translation>
            <numerusform>△ %n Warnung</numerusform>
            <numerusform>△ %n Warnungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s) below: %1</source>
        <comment>parts they are about</comment>
        <translation>
            <numerusform>%n Warnung weiter unten: %1</numerusform>
            <numerusform>%n Warnungen weiter unten: %1</numerusform>
        </translation>
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
    <message>
        <source>%1 copy</source>
        <comment>file name</comment>
        <translation>%1 Kopie</translation>
    </message>
    <message>
        <source>%1 is open elsewhere (%2). Save under another name.</source>
        <translation>%1 ist anderswo geöffnet (%2). Unter anderem Namen speichern.</translation>
    </message>
    <message>
        <source>another window of this program</source>
        <translation>ein anderes Fenster dieses Programms</translation>
    </message>
    <message>
        <source>on %1, process %2</source>
        <translation>auf %1, Prozess %2</translation>
    </message>
    <message>
        <source>by %1 on %2, process %3</source>
        <translation>von %1 auf %2, Prozess %3</translation>
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
    <message>
        <source>These notes are too long and are not taken: at most %1 bytes are kept, and they have %2.</source>
        <translation>Diese Notizen sind zu lang und werden nicht übernommen: Höchstens %1 Byte werden aufgenommen, es sind %2.</translation>
    </message>
</context>
<context>
    <name>feedwright::MachineView</name>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Axes side by side</source>
        <translation>Achsen nebeneinander</translation>
    </message>
    <message>
        <source>All axes at once</source>
        <translation>Alle Achsen zugleich</translation>
    </message>
    <message>
        <source>About the machine</source>
        <translation>Zur Maschine</translation>
    </message>
    <message>
        <source>Copy the table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>What deserves care</source>
        <translation>Was Aufmerksamkeit verdient</translation>
    </message>
    <message>
        <source>What each axis asks</source>
        <translation>Was jede Achse verlangt</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Netzteil</translation>
    </message>
    <message>
        <source>Controller figures</source>
        <translation>Werte der Steuerung</translation>
    </message>
    <message>
        <source>Controller</source>
        <translation>Steuerung</translation>
    </message>
    <message>
        <source>Parts to buy</source>
        <translation>Zu kaufende Teile</translation>
    </message>
    <message>
        <source>Not computed. Nothing can be said of the machine until this is put right:</source>
        <translation>Nicht berechnet. Über die Maschine lässt sich nichts sagen, bis dies behoben ist:</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · %4</source>
        <comment>machine, axes, motors, concerns</comment>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message>
        <source>Machine without a name</source>
        <translation>Maschine ohne Namen</translation>
    </message>
    <message numerus="yes">
        <source>%n axis(es)</source>
        <translation>
            <numerusform>%n Achse</numerusform>
            <numerusform>%n Achsen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n motor(s)</source>
        <translation>
            <numerusform>%n Motor</numerusform>
            <numerusform>%n Motoren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to settle</source>
        <translation>
            <numerusform>%n zu klären</numerusform>
            <numerusform>%n zu klären</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n output(s) for motors in all; the two motors of one axis get the same steps, each from an output of its own.</source>
        <translation>
            <numerusform>Insgesamt %n Motorausgang; die beiden Motoren einer Achse erhalten dieselben Schritte, jeder von einem eigenen Ausgang.</numerusform>
            <numerusform>Insgesamt %n Motorausgänge; die beiden Motoren einer Achse erhalten dieselben Schritte, jeder von einem eigenen Ausgang.</numerusform>
        </translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Anzeigen</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 anzeigen</translation>
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
        <source>Open a sa&amp;mple</source>
        <translation>Be&amp;ispiel öffnen</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation>&amp;Verlauf…</translation>
    </message>
    <message>
        <source>&amp;Paste axis</source>
        <translation>Achse ein&amp;fügen</translation>
    </message>
    <message>
        <source>&amp;Duplicate axis</source>
        <translation>Achse &amp;duplizieren</translation>
    </message>
    <message>
        <source>Move axis &amp;up</source>
        <translation>Achse nach &amp;oben</translation>
    </message>
    <message>
        <source>Move axis d&amp;own</source>
        <translation>Achse nach &amp;unten</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>History of edits</source>
        <translation>Verlauf der Änderungen</translation>
    </message>
    <message>
        <source>As opened</source>
        <translation>Wie geöffnet</translation>
    </message>
    <message>
        <source>New &amp;window</source>
        <translation>Neues &amp;Fenster</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>S&amp;tart page</source>
        <translation>S&amp;tartseite</translation>
    </message>
    <message>
        <source>&amp;Close window</source>
        <translation>Fenster s&amp;chließen</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>file, folder</comment>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>&amp;Clear the list</source>
        <translation>Liste &amp;leeren</translation>
    </message>
    <message>
        <source>&amp;Remember recent files</source>
        <translation>Zuletzt geöffnete Dateien &amp;merken</translation>
    </message>
    <message>
        <source>Help on &amp;this</source>
        <translation>Hilfe &amp;hierzu</translation>
    </message>
    <message>
        <source>&amp;Contents</source>
        <translation>&amp;Inhalt</translation>
    </message>
    <message>
        <source>&amp;Keyboard shortcuts</source>
        <translation>&amp;Tastenkürzel</translation>
    </message>
    <message>
        <source>Ca&amp;utions</source>
        <translation>Hi&amp;nweise</translation>
    </message>
    <message>
        <source>What you change here cannot be put aside for the case of a crash; save often. %1</source>
        <translation>Änderungen lassen sich hier nicht für den Fall eines Absturzes sichern; oft speichern. %1</translation>
    </message>
    <message>
        <source>%1[*] (open elsewhere) – Feedwright</source>
        <comment>title of the window</comment>
        <translation>%1[*] (anderswo geöffnet) – Feedwright</translation>
    </message>
    <message>
        <source>This file was written by a newer program (format %1.%2). It is opened as far as understood; the rest is kept as it stands.</source>
        <translation>Diese Datei wurde von einem neueren Programm geschrieben (Format %1.%2). Sie ist geöffnet, soweit sie verständlich ist; der Rest bleibt unverändert erhalten.</translation>
    </message>
    <message>
        <source>%1 is open elsewhere: %2. Here you can look and change, but only save under another name.</source>
        <translation>%1 ist anderswo geöffnet: %2. Hier ist Ansehen und Ändern möglich, Speichern aber nur unter anderem Namen.</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Anzeigen</translation>
    </message>
    <message>
        <source>Close without it</source>
        <translation>Ohne die Eingabe schließen</translation>
    </message>
    <message>
        <source>%1 is not there any more, or its medium is not.</source>
        <translation>%1 ist nicht mehr vorhanden, oder der Datenträger fehlt.</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Aus der Liste nehmen</translation>
    </message>
    <message>
        <source>Leave it there</source>
        <translation>In der Liste lassen</translation>
    </message>
    <message>
        <source>&amp;Next pane</source>
        <translation>&amp;Nächster Bereich</translation>
    </message>
    <message>
        <source>&amp;Previous pane</source>
        <translation>Vori&amp;ger Bereich</translation>
    </message>
    <message>
        <source>Axis a&amp;bove</source>
        <translation>Achse da&amp;rüber</translation>
    </message>
    <message>
        <source>Axis b&amp;elow</source>
        <translation>Achse darun&amp;ter</translation>
    </message>
    <message>
        <source>&amp;First steps</source>
        <translation>&amp;Erste Schritte</translation>
    </message>
    <message>
        <source>The sheet is written: %1</source>
        <translation>Das Blatt ist geschrieben: %1</translation>
    </message>
    <message>
        <source>&amp;Lengthen axis…</source>
        <translation>Achse &amp;verlängern…</translation>
    </message>
    <message>
        <source>Sheet with the wor&amp;king</source>
        <translation>Auslegungsblatt mit Rechenwe&amp;g</translation>
    </message>
</context>
<context>
    <name>feedwright::MoveDistance</name>
    <message>
        <source>Dis&amp;tance of the move</source>
        <translation>&amp;Weg der Fahrt</translation>
    </message>
    <message>
        <source>From standstill to standstill, in any unit; a tenth of the travel if nothing is typed. Kept for this axis while the window is open.</source>
        <translation>Von Stillstand zu Stillstand, in beliebiger Einheit; ohne Eingabe ein Zehntel des Verfahrwegs. Gilt für diese Achse, solange das Fenster offen ist.</translation>
    </message>
    <message>
        <source>The distance must be more than zero.</source>
        <translation>Der Weg muss größer als null sein.</translation>
    </message>
    <message>
        <source>The distance must be within the travel of %1.</source>
        <translation>Der Weg muss innerhalb des Verfahrwegs von %1 liegen.</translation>
    </message>
    <message>
        <source>= %1</source>
        <comment>what a typed distance became</comment>
        <translation>= %1</translation>
    </message>
</context>
<context>
    <name>feedwright::Panes</name>
    <message>
        <source>Fields or study</source>
        <translation>Felder oder Studie</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
</context>
<context>
    <name>feedwright::PartChooser</name>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>%1 (typed text waits)</source>
        <comment>part</comment>
        <translation>%1 (Eingabe wartet)</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
</context>
<context>
    <name>feedwright::PartHeader</name>
    <message>
        <source>Type of %1</source>
        <translation>Typ: %1</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>part: its type</comment>
        <translation>%1: %2</translation>
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
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>source of the figures</source>
        <translation>Quelle der Werte</translation>
    </message>
    <message>
        <source>Keep in my list…</source>
        <translation>In eigene Liste aufnehmen…</translation>
    </message>
    <message>
        <source>Puts these figures into your own parts list, for other axes and machines</source>
        <translation>Nimmt diese Werte in die eigene Teileliste auf, für andere Achsen und Maschinen</translation>
    </message>
    <message>
        <source>Name of the part in your list</source>
        <translation>Name des Teils in der eigenen Liste</translation>
    </message>
    <message>
        <source>a name, then Enter</source>
        <translation>ein Name, dann Eingabetaste</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>own figures</source>
        <translation>eigene Werte</translation>
    </message>
    <message>
        <source>Kept as &quot;%1&quot; in %2.</source>
        <translation>Als „%1“ aufgenommen in %2.</translation>
    </message>
</context>
<context>
    <name>feedwright::PartPicker</name>
    <message>
        <source>Take a part from a list</source>
        <translation>Ein Teil aus einer Liste nehmen</translation>
    </message>
    <message>
        <source>Take from a list…</source>
        <translation>Aus einer Liste nehmen…</translation>
    </message>
    <message>
        <source>%1 (own list)</source>
        <translation>%1 (eigene Liste)</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Nothing found. A screw is found as 16x10 or 1610, other parts by a piece of their names.</source>
        <translation>Nichts gefunden. Eine Spindel findet man als 16x10 oder 1610, andere Teile über ein Stück ihres Namens.</translation>
    </message>
</context>
<context>
    <name>feedwright::PlotOrTable</name>
    <message>
        <source>Plot</source>
        <translation>Diagramm</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>The same as a table of numbers</source>
        <translation>Dasselbe als Zahlentabelle</translation>
    </message>
    <message>
        <source>Back to the plot</source>
        <translation>Zurück zum Diagramm</translation>
    </message>
    <message>
        <source>The names of the plot have no room here; it comes back where there is more</source>
        <translation>Die Namen im Diagramm haben hier keinen Platz; wo mehr ist, kommt es wieder</translation>
    </message>
</context>
<context>
    <name>feedwright::QuantityEdit</name>
    <message>
        <source>In other units</source>
        <translation>In anderen Einheiten</translation>
    </message>
    <message>
        <source>The value in each unit (Alt+Down)</source>
        <translation>Der Wert in jeder Einheit (Alt+Pfeil unten)</translation>
    </message>
    <message>
        <source>The value in each unit</source>
        <translation>Der Wert in jeder Einheit</translation>
    </message>
</context>
<context>
    <name>feedwright::RemediesView</name>
    <message>
        <source>What would do</source>
        <translation>Was Abhilfe schafft</translation>
    </message>
    <message>
        <source>Limit that is over or close</source>
        <translation>Grenze mit Befund „über“ oder „knapp“</translation>
    </message>
    <message>
        <source>What would do is not computed while the machine has faults.</source>
        <translation>Was Abhilfe schafft, wird nicht berechnet, solange die Maschine Fehler hat.</translation>
    </message>
    <message>
        <source>Nothing is over or close.</source>
        <translation>Nichts ist „über“ oder „knapp“.</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <comment>name of the step tried last</comment>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>No limit is over or close, but there is a danger: read the cautions.</source>
        <translation>Keine Grenze ist „über“ oder „knapp“, aber es besteht eine Gefahr: die Warnungen lesen.</translation>
    </message>
    <message>
        <source>On no axis is a limit over or close.</source>
        <translation>Auf keiner Achse ist eine Grenze „über“ oder „knapp“.</translation>
    </message>
    <message>
        <source>A limit is over or close on %1. Choose the axis to see what would do.</source>
        <comment>letters of axes</comment>
        <translation>Auf %1 ist eine Grenze „über“ oder „knapp“. Die Achse wählen, um zu sehen, was Abhilfe schafft.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing known is over or close; %n limit(s) are open.</source>
        <translation>
            <numerusform>Nichts Bekanntes ist „über“ oder „knapp“; %n Grenze ist offen.</numerusform>
            <numerusform>Nichts Bekanntes ist „über“ oder „knapp“; %n Grenzen sind offen.</numerusform>
        </translation>
    </message>
    <message>
        <source>See to the danger among the cautions first. %1</source>
        <comment>sentence on a limit</comment>
        <translation>Zuerst die Gefahr unter den Warnungen beheben. %1</translation>
    </message>
    <message>
        <source>On no axis is a limit over or close, but there is a danger: read the cautions.</source>
        <translation>Auf keiner Achse ist eine Grenze „über“ oder „knapp“, aber es besteht eine Gefahr: die Warnungen lesen.</translation>
    </message>
</context>
<context>
    <name>feedwright::ResultPicker</name>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Type part of a name to find a result.</source>
        <translation>Einen Teil des Namens eingeben, um ein Ergebnis zu finden.</translation>
    </message>
</context>
<context>
    <name>feedwright::StackKeeper</name>
    <message>
        <source>↑ %1</source>
        <comment>a level above the scale</comment>
        <translation>↑ %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number with its unit, what it is</comment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>feedwright::StartPage</name>
    <message>
        <source>Start page</source>
        <translation>Startseite</translation>
    </message>
    <message>
        <source>Sizes the drive of every axis of a CNC router or mill before its parts are bought.</source>
        <translation>Legt den Antrieb jeder Achse einer CNC-Fräsmaschine aus, bevor die Teile gekauft werden.</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Back to the machine</source>
        <translation>Zurück zur Maschine</translation>
    </message>
    <message>
        <source>New machine</source>
        <translation>Neue Maschine</translation>
    </message>
    <message>
        <source>One axis of ordinary parts, to be changed.</source>
        <translation>Eine Achse aus üblichen Teilen, zum Ändern.</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>A machine from a file. It can be dropped here, too.</source>
        <translation>Eine Maschine aus einer Datei. Sie lässt sich auch hierher ziehen.</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>A sample is opened as a machine of your own: saving it asks for a place.</source>
        <translation>Ein Beispiel wird als eigene Maschine geöffnet: Beim Speichern wird nach dem Ort gefragt.</translation>
    </message>
    <message>
        <source>Worked on last</source>
        <translation>Zuletzt bearbeitet</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Erste Schritte</translation>
    </message>
    <message>
        <source>Sizing a first router, step by step: a page to read beside the program.</source>
        <translation>Eine erste Fräse auslegen, Schritt für Schritt: eine Seite zum Lesen neben dem Programm.</translation>
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
    <message>
        <source>%1 is not written.</source>
        <translation>%1 ist nicht geschrieben.</translation>
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
        <source>The study as a table</source>
        <translation>Die Studie als Tabelle</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Save picture…</source>
        <translation>Bild speichern…</translation>
    </message>
    <message>
        <source>Save numbers…</source>
        <translation>Zahlen speichern…</translation>
    </message>
    <message>
        <source>Whole plot</source>
        <translation>Ganzes Diagramm</translation>
    </message>
    <message>
        <source>Back to the scales that show everything (0)</source>
        <translation>Zurück zu den Skalen, die alles zeigen (0)</translation>
    </message>
</context>
<context>
    <name>feedwright::TableFieldRow</name>
    <message>
        <source>%1: %2</source>
        <comment>button, table</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Importieren…</translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation>%1 lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>%1 holds no table: wanted are lines of %2 values parted by tabs, semicolons or commas.</source>
        <translation>%1 enthält keine Tabelle: Nötig sind Zeilen mit %2 Werten, getrennt durch Tabulatoren, Semikolons oder Kommas.</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1: %2 %3 → %4</source>
        <comment>table, column, value before, value after</comment>
        <translation>%1: %2 %3 → %4</translation>
    </message>
    <message>
        <source>%1: one more</source>
        <comment>table</comment>
        <translation>%1: eine Zeile mehr</translation>
    </message>
    <message>
        <source>%1: one less</source>
        <comment>table</comment>
        <translation>%1: eine Zeile weniger</translation>
    </message>
    <message>
        <source>Nothing is taken, for in row %1: %2</source>
        <translation>Nichts wird übernommen, denn in Zeile %1: %2</translation>
    </message>
    <message>
        <source>%1: a table put in</source>
        <comment>table</comment>
        <translation>%1: Tabelle eingesetzt</translation>
    </message>
    <message>
        <source>This was typed and is not taken yet.</source>
        <translation>Das ist eingegeben und noch nicht übernommen.</translation>
    </message>
    <message>
        <source>A table has at most %1 rows.</source>
        <translation>Eine Tabelle hat höchstens %1 Zeilen.</translation>
    </message>
    <message>
        <source>Nothing is taken, for a table has at most %1 rows.</source>
        <translation>Nichts wird übernommen, denn eine Tabelle hat höchstens %1 Zeilen.</translation>
    </message>
</context>
<context>
    <name>feedwright::TermsTable</name>
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
        <source>1 % gives</source>
        <translation>1 % ergibt</translation>
    </message>
    <message>
        <source>By how much the result moves when this figure alone grows by one per cent.</source>
        <translation>Um wie viel sich das Ergebnis ändert, wenn dieser Wert allein um ein Prozent wächst.</translation>
    </message>
    <message>
        <source>Enter, or a click on what a row is about, goes to its field or its working. Ctrl+C copies rows.</source>
        <translation>Die Eingabetaste oder ein Klick auf die Bedeutung einer Zeile führt zu ihrem Feld oder Rechenweg. Strg+C kopiert Zeilen.</translation>
    </message>
</context>
<context>
    <name>feedwright::TextRow</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>show %1 in %2</source>
        <comment>field, unit</comment>
        <translation>%1 in %2 anzeigen</translation>
    </message>
</context>
<context>
    <name>feedwright::TrainView</name>
    <message>
        <source>Drive train</source>
        <translation>Antriebsstrang</translation>
    </message>
    <message>
        <source>There is no axis.</source>
        <translation>Es gibt keine Achse.</translation>
    </message>
    <message>
        <source>Drive train of %1: %2</source>
        <translation>Antriebsstrang von %1: %2</translation>
    </message>
    <message>
        <source>Type over a figure here</source>
        <translation>Hier einen Wert überschreiben</translation>
    </message>
    <message>
        <source>Carriage back to the middle</source>
        <translation>Schlitten zurück zur Mitte</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>The whole drawing</source>
        <translation>Die ganze Zeichnung</translation>
    </message>
    <message>
        <source>Copy the drawing</source>
        <translation>Zeichnung kopieren</translation>
    </message>
    <message>
        <source>Swap the part</source>
        <translation>Teil tauschen</translation>
    </message>
    <message>
        <source>Swap: %1</source>
        <comment>part</comment>
        <translation>Tauschen: %1</translation>
    </message>
</context>
<context>
    <name>feedwright::TypedLength</name>
    <message>
        <source>▲ %1</source>
        <comment>sign of a fault, sentence</comment>
        <translation>▲ %1</translation>
    </message>
</context>
<context>
    <name>feedwright::WorkingTrail</name>
    <message>
        <source>Back to the working before (Alt+Left)</source>
        <translation>Zurück zum vorigen Rechenweg (Alt+Pfeil links)</translation>
    </message>
    <message>
        <source>Forward to the working after (Alt+Right)</source>
        <translation>Vor zum nächsten Rechenweg (Alt+Pfeil rechts)</translation>
    </message>
    <message>
        <source>Back to: %1</source>
        <comment>result</comment>
        <translation>Zurück zu: %1</translation>
    </message>
</context>
<context>
    <name>feedwright::WorkingView</name>
    <message>
        <source>Symbols of the equation</source>
        <translation>Formelzeichen der Gleichung</translation>
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
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Figures behind it that move it most:</source>
        <translation>Werte dahinter, die es am stärksten ändern:</translation>
    </message>
    <message>
        <source>Figures that move the result most</source>
        <translation>Werte, die das Ergebnis am stärksten ändern</translation>
    </message>
    <message>
        <source>%1 It is %2.</source>
        <comment>meaning of a result, its value</comment>
        <translation>%1 Der Wert ist %2.</translation>
    </message>
    <message>
        <source>This result is open. %1</source>
        <comment>what is missing</comment>
        <translation>Dieses Ergebnis ist offen. %1</translation>
    </message>
    <message>
        <source>%1 = %2, %3</source>
        <comment>symbol, value, what it is</comment>
        <translation>%1 = %2, %3</translation>
    </message>
    <message>
        <source>%1 %2 %</source>
        <comment>part of a sum, its per cent</comment>
        <translation>%1 %2 %</translation>
    </message>
    <message>
        <source>The largest part: %1.</source>
        <translation>Der größte Anteil: %1.</translation>
    </message>
    <message>
        <source>Copy the working</source>
        <translation>Rechenweg kopieren</translation>
    </message>
    <message>
        <source>Copies equation, symbols and source as text, and the equation as MathML (Ctrl+C)</source>
        <translation>Kopiert Gleichung, Formelzeichen und Quelle als Text, dazu die Gleichung als MathML (Strg+C)</translation>
    </message>
</context>
</TS>

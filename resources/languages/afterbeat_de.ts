<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>HeaderStrip</name>
    <message>
        <source>clock never set: times count from the record&apos;s begin</source>
        <translation>Uhr nie gestellt: Zeiten zählen ab Beginn der Aufzeichnung</translation>
    </message>
    <message>
        <source>%1 (clock checked)</source>
        <translation>%1 (Uhr geprüft)</translation>
    </message>
    <message>
        <source>%1 (device clock)</source>
        <translation>%1 (Geräteuhr)</translation>
    </message>
</context>
<context>
    <name>Importers</name>
    <message>
        <source>no such file or folder</source>
        <translation>Datei oder Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation>es ist ein Ordner</translation>
    </message>
    <message>
        <source>access is not allowed</source>
        <translation>der Zugriff ist nicht erlaubt</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>the disk can only be read</source>
        <translation>der Datenträger ist schreibgeschützt</translation>
    </message>
    <message>
        <source>it is not an ordinary file</source>
        <translation>es ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>it is larger than this program reads</source>
        <translation>sie ist größer, als dieses Programm liest</translation>
    </message>
    <message>
        <source>writing was given up</source>
        <translation>das Schreiben wurde abgebrochen</translation>
    </message>
    <message>
        <source>it is nested deeper than 64 levels</source>
        <translation>sie ist tiefer als 64 Ebenen verschachtelt</translation>
    </message>
    <message>
        <source>it is cut off or holds something else than an entry</source>
        <translation>sie ist abgeschnitten oder enthält etwas anderes als einen Eintrag</translation>
    </message>
    <message>
        <source>it is not an object in braces</source>
        <translation>sie ist kein Objekt in geschweiften Klammern</translation>
    </message>
    <message>
        <source>a number in it is too large</source>
        <translation>eine Zahl darin ist zu groß</translation>
    </message>
    <message>
        <source>it holds the key “%1” twice</source>
        <translation>der Schlüssel „%1“ steht zweimal darin</translation>
    </message>
    <message>
        <source>it holds empty bytes, as are left when power fails while writing</source>
        <translation>sie enthält leere Bytes, wie sie bei Stromausfall während des Schreibens zurückbleiben</translation>
    </message>
    <message>
        <source>it is not text in UTF-8</source>
        <translation>sie ist kein Text in UTF-8</translation>
    </message>
    <message>
        <source>it has no id</source>
        <translation>er hat keine Kennung (id)</translation>
    </message>
    <message>
        <source>it does not say what was measured</source>
        <translation>er sagt nicht, was gemessen wurde</translation>
    </message>
    <message>
        <source>it has no usable sampling rate</source>
        <translation>er hat keine brauchbare Abtastrate</translation>
    </message>
    <message>
        <source>its %1 is not a number</source>
        <translation>sein „%1“ ist keine Zahl</translation>
    </message>
    <message>
        <source>two channels have this id</source>
        <translation>zwei Kanäle haben diese Kennung</translation>
    </message>
    <message>
        <source>it is longer than 32 MiB</source>
        <translation>sie ist länger als 32 MiB</translation>
    </message>
    <message>
        <source>it closes a recording that is closed already</source>
        <translation>sie schließt eine Aufzeichnung, die schon geschlossen ist</translation>
    </message>
    <message>
        <source>The file could not be read: %1.</source>
        <translation>Die Datei konnte nicht gelesen werden: %1.</translation>
    </message>
    <message>
        <source>The file does not begin like an event log: its first line cannot be used. If it is one whose beginning was lost, it can be salvaged under a made-up first line.</source>
        <translation>Die Datei beginnt nicht wie ein Ereignisprotokoll: Ihre erste Zeile ist nicht brauchbar. Falls nur der Anfang verloren ging, lässt sich der Rest unter einer ersetzten ersten Zeile retten.</translation>
    </message>
    <message>
        <source>The file is written in version %1 of the event log; this program reads versions 1.x. A newer program may read it.</source>
        <translation>Die Datei ist in Version %1 des Ereignisprotokolls geschrieben; dieses Programm liest die Versionen 1.x. Ein neueres Programm kann sie vielleicht lesen.</translation>
    </message>
    <message>
        <source>The file is larger than 2 GiB, more than this program reads; it can be split between two lines.</source>
        <translation>Die Datei ist größer als 2 GiB und damit größer, als dieses Programm liest; sie lässt sich zwischen zwei Zeilen teilen.</translation>
    </message>
    <message>
        <source>The file is empty; there is nothing to read.</source>
        <translation>Die Datei ist leer; es gibt nichts zu lesen.</translation>
    </message>
    <message>
        <source>they begin before the recording does</source>
        <translation>sie beginnen vor der Aufzeichnung</translation>
    </message>
    <message>
        <source>their number is not usable</source>
        <translation>ihre Anzahl ist nicht brauchbar</translation>
    </message>
    <message>
        <source>their data is not a text</source>
        <translation>ihre Daten sind kein Text</translation>
    </message>
    <message>
        <source>the data does not hold exactly %1 samples in base64</source>
        <translation>die Daten enthalten nicht genau %1 Messwerte in Base64</translation>
    </message>
    <message>
        <source>it became shorter while it was read</source>
        <translation>sie wurde kürzer, während sie gelesen wurde</translation>
    </message>
    <message>
        <source>it could not be written</source>
        <translation>sie konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <source>it holds no such record</source>
        <translation>diese Aufzeichnung ist nicht darin</translation>
    </message>
    <message>
        <source>No column with times was found; one with seconds (95), minutes and seconds (1:35) or clock times (14:05:30) is needed.</source>
        <translation>Es wurde keine Spalte mit Zeiten gefunden; nötig ist eine mit Sekunden (95), Minuten und Sekunden (1:35) oder Uhrzeiten (14:05:30).</translation>
    </message>
    <message>
        <source>There is no column &quot;%1&quot;; the table has no headings and %2 columns.</source>
        <translation>Eine Spalte „%1“ gibt es nicht; die Tabelle hat keine Überschriften und %2 Spalten.</translation>
    </message>
    <message>
        <source>There is no column &quot;%1&quot;; the headings are: %2.</source>
        <translation>Eine Spalte „%1“ gibt es nicht; die Überschriften sind: %2.</translation>
    </message>
    <message>
        <source>This system cannot convert text from %1.</source>
        <translation>Dieses System kann Text in %1 nicht umwandeln.</translation>
    </message>
    <message>
        <source>This file holds no text; notes must be a table saved as text (CSV).</source>
        <translation>Diese Datei enthält keinen Text; Notizen müssen eine als Text (CSV) gespeicherte Tabelle sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is none of the words known for an event; it is kept as a remark.</source>
        <translation>„%1“ gehört nicht zu den bekannten Wörtern für ein Ereignis; es bleibt als Bemerkung erhalten.</translation>
    </message>
    <message>
        <source>This line has a time and nothing else; it is left out.</source>
        <translation>Diese Zeile enthält eine Zeit und sonst nichts; sie wird ausgelassen.</translation>
    </message>
    <message>
        <source>What this analysis advised is not noted, so it counts in no figure.</source>
        <translation>Was diese Analyse empfahl, ist nicht notiert; sie zählt daher in keiner Kennzahl.</translation>
    </message>
    <message>
        <source>Compressions were already noted as begun; this line changes nothing.</source>
        <translation>Der Beginn der Kompressionen war schon notiert; diese Zeile ändert nichts.</translation>
    </message>
    <message>
        <source>Compressions end here and their begin is not noted; the line is kept as a remark.</source>
        <translation>Kompressionen enden hier, ihr Beginn ist nicht notiert; die Zeile bleibt als Bemerkung erhalten.</translation>
    </message>
    <message>
        <source>Compressions begin here and their end is not noted; they are taken to go on to the last note.</source>
        <translation>Kompressionen beginnen hier, ihr Ende ist nicht notiert; angenommen wird, dass sie bis zur letzten Notiz andauern.</translation>
    </message>
    <message>
        <source>%1 characters could not be read and are shown as �.</source>
        <translation>%1 Zeichen konnten nicht gelesen werden und erscheinen als �.</translation>
    </message>
    <message>
        <source>This file is empty; there are no notes in it.</source>
        <translation>Diese Datei ist leer; sie enthält keine Notizen.</translation>
    </message>
    <message>
        <source>Only one column was found; notes need at least a time and what happened, with commas, semicolons or tabs between them.</source>
        <translation>Es wurde nur eine Spalte gefunden; Notizen brauchen mindestens eine Zeit und was geschah, getrennt durch Komma, Semikolon oder Tabulator.</translation>
    </message>
    <message>
        <source>No line of these notes has a time that can be understood.</source>
        <translation>Keine Zeile dieser Notizen hat eine verständliche Zeit.</translation>
    </message>
    <message>
        <source>This line has no time and is left out.</source>
        <translation>Diese Zeile hat keine Zeit und wird ausgelassen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no time that can be understood; the line is left out.</source>
        <translation>„%1“ ist keine verständliche Zeit; die Zeile wird ausgelassen.</translation>
    </message>
    <message>
        <source>The times were read as clock times (hours, minutes, seconds).</source>
        <translation>Die Zeiten wurden als Uhrzeiten gelesen (Stunden, Minuten, Sekunden).</translation>
    </message>
    <message>
        <source>The times were read as time since the notes&apos; own zero (minutes and seconds, or seconds).</source>
        <translation>Die Zeiten wurden als Zeit seit dem Nullpunkt der Notizen gelesen (Minuten und Sekunden oder Sekunden).</translation>
    </message>
    <message>
        <source>The notes name a date and no clock time, so the clock time is not known.</source>
        <translation>Die Notizen nennen ein Datum, aber keine Uhrzeit; die Uhrzeit ist daher nicht bekannt.</translation>
    </message>
    <message>
        <source>This time lies more than eleven days from the first one; the line is left out.</source>
        <translation>Diese Zeit liegt mehr als elf Tage von der ersten entfernt; die Zeile wird ausgelassen.</translation>
    </message>
    <message>
        <source>The notes give times of day and no date, so the clock time is not known.</source>
        <translation>Die Notizen nennen Tageszeiten, aber kein Datum; der Zeitpunkt ist daher nicht bekannt.</translation>
    </message>
    <message>
        <source>The notes do not say whether this was a rescue, a drill or a test (a line &quot;Kind;drill&quot; would); a test is assumed.</source>
        <translation>Die Notizen sagen nicht, ob dies ein Einsatz, eine Übung oder ein Test war (eine Zeile „Art;Übung“ würde es sagen); angenommen wird ein Test.</translation>
    </message>
    <message>
        <source>The notes cannot be read: %1.</source>
        <translation>Die Notizen können nicht gelesen werden: %1.</translation>
    </message>
    <message>
        <source>The zero of the times was moved %1 s earlier, to the begin of the first waveform.</source>
        <translation>Der Nullpunkt der Zeiten wurde um %1 s nach vorn verlegt, auf den Beginn der ersten Kurve.</translation>
    </message>
    <message>
        <source>%1 stretches of waveform of %2 lie more than 1000000 s from the zero and are lost.</source>
        <translation>%1 Kurvenabschnitte aus %2 liegen mehr als 1000000 s vom Nullpunkt entfernt und sind verloren.</translation>
    </message>
    <message>
        <source>%1 entries of %2 lie more than 1000000 s from the zero and are lost.</source>
        <translation>%1 Einträge aus %2 liegen mehr als 1000000 s vom Nullpunkt entfernt und sind verloren.</translation>
    </message>
    <message>
        <source>The clock of %1 was set at %2 s; kept as a remark, as the gathered record follows another clock.</source>
        <translation>Die Uhr von %1 wurde bei %2 s gestellt; dies bleibt als Bemerkung erhalten, da die zusammengeführte Aufzeichnung einer anderen Uhr folgt.</translation>
    </message>
    <message>
        <source>%1 says otherwise about the %2: &quot;%3&quot;; &quot;%4&quot; is kept.</source>
        <translation>%1 sagt zu „%2“ etwas anderes: „%3“; „%4“ bleibt.</translation>
    </message>
    <message>
        <source>%1 says it is %2, a source before it %3; %4 is kept.</source>
        <translation>Laut %1 ist es „%2“, laut einer Quelle davor „%3“; „%4“ bleibt.</translation>
    </message>
    <message>
        <source>The header of %1 holds more that this program does not know; it is not taken over.</source>
        <translation>Der Kopf von %1 enthält mehr, als dieses Programm kennt; dies wird nicht übernommen.</translation>
    </message>
    <message>
        <source>The clock times are those of %1, carried back to the begin.</source>
        <translation>Die Uhrzeiten sind die von %1, auf den Beginn zurückgerechnet.</translation>
    </message>
    <message>
        <source>No source tells date and time, so the clock times of the gathered record are not known.</source>
        <translation>Keine Quelle nennt Datum und Uhrzeit; die Uhrzeiten der zusammengeführten Aufzeichnung sind daher nicht bekannt.</translation>
    </message>
    <message>
        <source>There is no record in this file.</source>
        <translation>In dieser Datei ist keine Aufzeichnung.</translation>
    </message>
    <message>
        <source>This file holds %1 records one after the other; only the first is taken.</source>
        <translation>Diese Datei enthält %1 Aufzeichnungen nacheinander; nur die erste wird genommen.</translation>
    </message>
    <message>
        <source>The file cannot be read: %1.</source>
        <translation>Die Datei kann nicht gelesen werden: %1.</translation>
    </message>
    <message>
        <source>%1 lies at %2, as given.</source>
        <translation>%1 liegt bei %2, wie angegeben.</translation>
    </message>
    <message>
        <source>The clocks of %1 and %2 are more than eleven days apart, so one of them is wrong; %3 is put at +0 s.</source>
        <translation>Die Uhren von %1 und %2 liegen mehr als elf Tage auseinander, eine davon geht also falsch; %3 wird auf +0 s gelegt.</translation>
    </message>
    <message>
        <source>%1 lies at %2, found by comparing it with %3: %4.</source>
        <translation>%1 liegt bei %2, ermittelt durch Vergleich mit %3: %4.</translation>
    </message>
    <message>
        <source>%1 is put at +0 s, as no clock ties it to the sources before it.</source>
        <translation>%1 wird auf +0 s gelegt, da keine Uhr es mit den Quellen davor verbindet.</translation>
    </message>
    <message>
        <source>The header %1 of the WFDB record cannot be read: %2.</source>
        <translation>Der Kopf %1 der WFDB-Aufzeichnung kann nicht gelesen werden: %2.</translation>
    </message>
    <message>
        <source>This WFDB record holds neither signals nor remarks.</source>
        <translation>Diese WFDB-Aufzeichnung enthält weder Signale noch Bemerkungen.</translation>
    </message>
    <message>
        <source>Nothing could be imported.</source>
        <translation>Es konnte nichts eingelesen werden.</translation>
    </message>
    <message>
        <source>The signal &quot;%1&quot; has %2 samples where others have one, which is not supported; the signals of %3 are not imported.</source>
        <translation>Das Signal „%1“ hat %2 Messwerte, wo andere einen haben; das wird nicht unterstützt. Die Signale aus %3 werden nicht eingelesen.</translation>
    </message>
    <message>
        <source>The signals of %1 are described with different storage forms; they are not imported.</source>
        <translation>Die Signale aus %1 sind mit verschiedenen Speicherformen beschrieben; sie werden nicht eingelesen.</translation>
    </message>
    <message>
        <source>The signal &quot;%1&quot; is stored in format %2, which is not supported (16 and 212 are); it is not imported.</source>
        <translation>Das Signal „%1“ ist im Format %2 gespeichert, das nicht unterstützt wird (nur 16 und 212); es wird nicht eingelesen.</translation>
    </message>
    <message>
        <source>The signal file &quot;%1&quot; does not lie beside the header; its signals are not imported.</source>
        <translation>Die Signaldatei „%1“ liegt nicht neben der Kopfdatei; ihre Signale werden nicht eingelesen.</translation>
    </message>
    <message>
        <source>The signal file %1 cannot be read (%2); its signals are not imported.</source>
        <translation>Die Signaldatei %1 kann nicht gelesen werden (%2); ihre Signale werden nicht eingelesen.</translation>
    </message>
    <message>
        <source>The signal file %1 is shorter than its header says: %2 s of %3 s are there, and were read.</source>
        <translation>Die Signaldatei %1 ist kürzer, als ihr Kopf angibt: %2 s von %3 s sind vorhanden und wurden gelesen.</translation>
    </message>
    <message>
        <source>The signal file %1 is longer than its header says; the rest was not read.</source>
        <translation>Die Signaldatei %1 ist länger, als ihr Kopf angibt; der Rest wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>The signal &quot;%1&quot; begins with %2 where its header says %3.</source>
        <translation>Das Signal „%1“ beginnt mit %2, laut Kopf mit %3.</translation>
    </message>
    <message>
        <source>The signal &quot;%1&quot; does not match its checksum (%2 instead of %3); it may be damaged.</source>
        <translation>Das Signal „%1“ passt nicht zu seiner Prüfsumme (%2 statt %3); es ist vielleicht beschädigt.</translation>
    </message>
    <message>
        <source>The signal &quot;%1&quot; is longer than the %2 s a record can hold; the rest is lost.</source>
        <translation>Das Signal „%1“ ist länger als die %2 s, die eine Aufzeichnung fasst; der Rest ist verloren.</translation>
    </message>
    <message>
        <source>The signal &quot;%1&quot; is not calibrated; %2 steps per %3 are assumed.</source>
        <translation>Das Signal „%1“ ist nicht kalibriert; angenommen werden %2 Schritte je %3.</translation>
    </message>
    <message>
        <source>There is no annotation file beside the header.</source>
        <translation>Neben der Kopfdatei liegt keine Datei mit Anmerkungen.</translation>
    </message>
    <message>
        <source>The annotation file %1 cannot be read: %2.</source>
        <translation>Die Anmerkungsdatei %1 kann nicht gelesen werden: %2.</translation>
    </message>
    <message>
        <source>The annotation file %1 ends early; what is there was read.</source>
        <translation>Die Anmerkungsdatei %1 endet vorzeitig; was vorhanden ist, wurde gelesen.</translation>
    </message>
    <message>
        <source>The header gives a time of day and no date, so the clock time is not known.</source>
        <translation>Der Kopf nennt eine Tageszeit, aber kein Datum; der Zeitpunkt ist daher nicht bekannt.</translation>
    </message>
    <message>
        <source>The header gives no date and time, so the clock time is not known.</source>
        <translation>Der Kopf nennt weder Datum noch Uhrzeit; die Uhrzeit ist daher nicht bekannt.</translation>
    </message>
    <message>
        <source>The source does not say whether this was a rescue, a drill or a test; a test is assumed.</source>
        <translation>Die Quelle sagt nicht, ob dies ein Einsatz, eine Übung oder ein Test war; angenommen wird ein Test.</translation>
    </message>
    <message>
        <source>The header&apos;s comments were not taken over, as they may describe the patient.</source>
        <translation>Die Kommentare im Kopf wurden nicht übernommen, da sie die behandelte Person beschreiben können.</translation>
    </message>
    <message>
        <source>%1 marks on single heart beats and waves were not taken over.</source>
        <translation>%1 Marken zu einzelnen Herzschlägen und Wellen wurden nicht übernommen.</translation>
    </message>
    <message>
        <source>%1 annotations lie outside the times a record can hold and are lost.</source>
        <translation>%1 Anmerkungen liegen außerhalb der Zeiten, die eine Aufzeichnung fasst, und sind verloren.</translation>
    </message>
    <message>
        <source>The time of day &quot;%1&quot; cannot be understood and is left out.</source>
        <translation>Die Tageszeit „%1“ ist nicht verständlich und wird ausgelassen.</translation>
    </message>
    <message>
        <source>The date &quot;%1&quot; cannot be understood and is left out.</source>
        <translation>Das Datum „%1“ ist nicht verständlich und wird ausgelassen.</translation>
    </message>
    <message>
        <source>The header does not begin with a record line (a name and the number of signals), so this is not a WFDB record.</source>
        <translation>Der Kopf beginnt nicht mit einer Zeile zur Aufzeichnung (Name und Zahl der Signale); dies ist daher keine WFDB-Aufzeichnung.</translation>
    </message>
    <message>
        <source>This WFDB record is put together from several segments, which is not supported; open its segments one by one.</source>
        <translation>Diese WFDB-Aufzeichnung besteht aus mehreren Abschnitten, was nicht unterstützt wird; öffnen Sie die Abschnitte einzeln.</translation>
    </message>
    <message>
        <source>The header states the sampling frequency &quot;%1&quot;, which is no usable number.</source>
        <translation>Der Kopf nennt die Abtastfrequenz „%1“, die keine brauchbare Zahl ist.</translation>
    </message>
    <message>
        <source>The number of samples &quot;%1&quot; is no number; all there are will be read.</source>
        <translation>Die Anzahl der Messwerte „%1“ ist keine Zahl; alle vorhandenen werden gelesen.</translation>
    </message>
    <message>
        <source>This line describes a signal more than the header announces; it is not read.</source>
        <translation>Diese Zeile beschreibt ein Signal mehr, als der Kopf ankündigt; sie wird nicht gelesen.</translation>
    </message>
    <message>
        <source>This line describes a signal and cannot be understood; the signals of its file are not imported.</source>
        <translation>Diese Zeile beschreibt ein Signal und ist nicht verständlich; die Signale ihrer Datei werden nicht eingelesen.</translation>
    </message>
    <message>
        <source>The header is empty, so this is not a WFDB record.</source>
        <translation>Der Kopf ist leer; dies ist daher keine WFDB-Aufzeichnung.</translation>
    </message>
    <message>
        <source>The header announces %1 signals and describes %2; the file of the last one described is not imported, as its layout is unknown.</source>
        <translation>Der Kopf kündigt %1 Signale an und beschreibt %2; die Datei des zuletzt beschriebenen wird nicht eingelesen, da ihr Aufbau unbekannt ist.</translation>
    </message>
    <message>
        <source>their clocks</source>
        <translation>ihre Uhren</translation>
    </message>
    <message>
        <source>the local readings of their clocks, as a time zone is not known</source>
        <translation>die Ortszeiten ihrer Uhren, da eine Zeitzone nicht bekannt ist</translation>
    </message>
    <message>
        <source>their times of day, as a date is not known</source>
        <translation>ihre Tageszeiten, da ein Datum nicht bekannt ist</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a key of a guideline profile.</source>
        <translation>„%1“ ist kein Schlüssel eines Leitlinienprofils.</translation>
    </message>
    <message>
        <source>A guideline profile must be one JSON object, in braces.</source>
        <translation>Ein Leitlinienprofil muss ein einziges JSON-Objekt in geschweiften Klammern sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be an object, in braces, but is %2.</source>
        <translation>„%1“ muss ein Objekt in geschweiften Klammern sein, ist aber %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a known key; here there can be %2.</source>
        <translation>„%1“ ist kein bekannter Schlüssel; hier können stehen: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing.</source>
        <translation>„%1“ fehlt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a text with something in it, but is %2.</source>
        <translation>„%1“ muss ein Text sein, in dem etwas steht, ist aber %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a number, but is %2.</source>
        <translation>„%1“ muss eine Zahl sein, ist aber %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be from %2 to %3, but is %4.</source>
        <translation>„%1“ muss zwischen %2 und %3 liegen, ist aber %4.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be &quot;read&quot;, &quot;secondary&quot; or &quot;memory&quot;, but is %2.</source>
        <translation>„%1“ muss &quot;read&quot;, &quot;secondary&quot; oder &quot;memory&quot; sein, ist aber %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is larger than &quot;%2&quot;.</source>
        <translation>„%1“ ist größer als „%2“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be two numbers like &quot;30:2&quot;, but is %2.</source>
        <translation>„%1“ muss aus zwei Zahlen bestehen wie &quot;30:2&quot;, ist aber %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a list, in square brackets, but is %2.</source>
        <translation>„%1“ muss eine Liste in eckigen Klammern sein, ist aber %2.</translation>
    </message>
    <message>
        <source>This is too long for a guideline profile.</source>
        <translation>Das ist zu lang für ein Leitlinienprofil.</translation>
    </message>
    <message>
        <source>This is not valid JSON, from line %1 on.</source>
        <translation>Ab Zeile %1 ist das kein gültiges JSON.</translation>
    </message>
    <message>
        <source>A number in this profile is too large.</source>
        <translation>Eine Zahl in diesem Profil ist zu groß.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; stands twice in the same braces.</source>
        <translation>„%1“ steht zweimal in denselben Klammern.</translation>
    </message>
    <message>
        <source>This record is not in the archive any more.</source>
        <translation>Diese Aufzeichnung ist nicht mehr im Archiv.</translation>
    </message>
    <message>
        <source>the database gave no reason</source>
        <translation>die Datenbank nannte keinen Grund</translation>
    </message>
    <message>
        <source>The archive %1 cannot be opened: %2.</source>
        <translation>Das Archiv %1 lässt sich nicht öffnen: %2.</translation>
    </message>
    <message>
        <source>The archive %1 could not be used: %2.</source>
        <translation>Das Archiv %1 ließ sich nicht benutzen: %2.</translation>
    </message>
    <message>
        <source>You may read the archive %1 and not change it; whoever looks after it can allow it. The database says: %2.</source>
        <translation>Sie dürfen das Archiv %1 lesen, aber nicht ändern; wer es betreut, kann es Ihnen erlauben. Die Datenbank meldet: %2.</translation>
    </message>
    <message>
        <source>There is no service file of PostgreSQL (~/.pg_service.conf).</source>
        <translation>Es gibt keine Dienstdatei von PostgreSQL (~/.pg_service.conf).</translation>
    </message>
    <message>
        <source>There is no service “%1” in PostgreSQL&apos;s service file (~/.pg_service.conf). Ask whoever looks after the shared archive for its lines.</source>
        <translation>In der Dienstdatei von PostgreSQL (~/.pg_service.conf) gibt es keinen Dienst „%1“. Fragen Sie nach den Zeilen dafür, wer das gemeinsame Archiv betreut.</translation>
    </message>
    <message>
        <source>Shared archives need the package libqt6sql6-psql.</source>
        <translation>Gemeinsame Archive brauchen das Paket libqt6sql6-psql.</translation>
    </message>
    <message>
        <source>Archives need the package libqt6sql6-sqlite.</source>
        <translation>Archive brauchen das Paket libqt6sql6-sqlite.</translation>
    </message>
    <message>
        <source>There is no archive %1.</source>
        <translation>Es gibt kein Archiv %1.</translation>
    </message>
    <message>
        <source>The archive holds a guideline that cannot be read.</source>
        <translation>Das Archiv enthält eine Leitlinie, die sich nicht lesen lässt.</translation>
    </message>
    <message>
        <source>The figures of this archive follow newer definitions (version %1, this program knows %2). Nothing was touched; use the newer program.</source>
        <translation>Die Kennzahlen dieses Archivs folgen neueren Definitionen (Version %1, dieses Programm kennt %2). Nichts wurde angerührt; nehmen Sie das neuere Programm.</translation>
    </message>
    <message>
        <source>“%1” is no name of a service: letters, digits, “_”, “-” and “.” only.</source>
        <translation>„%1“ ist kein Name eines Dienstes: erlaubt sind nur Buchstaben, Ziffern, „_“, „-“ und „.“.</translation>
    </message>
    <message>
        <source>No archive was named. Name a file, or service:NAME for a shared one.</source>
        <translation>Es wurde kein Archiv genannt. Nennen Sie eine Datei oder service:NAME für ein gemeinsames.</translation>
    </message>
    <message>
        <source>Its name is not written in UTF-8; rename it and take it in again.</source>
        <translation>Ihr Name ist nicht in UTF-8 geschrieben; benennen Sie die Datei um und nehmen Sie sie noch einmal auf.</translation>
    </message>
    <message>
        <source>This folder could not be looked through: %1.</source>
        <translation>Dieser Ordner ließ sich nicht durchsehen: %1.</translation>
    </message>
    <message>
        <source>This archive was changed by a newer Afterbeat (its tables have version %1, this program knows %2). Nothing was touched; use the newer program.</source>
        <translation>Dieses Archiv hat ein neueres Afterbeat geändert (seine Tabellen haben Version %1, dieses Programm kennt %2). Nichts wurde angerührt; nehmen Sie das neuere Programm.</translation>
    </message>
    <message>
        <source>This is no archive of Afterbeat: it holds tables of something else.</source>
        <translation>Das ist kein Archiv von Afterbeat: Es enthält Tabellen von etwas anderem.</translation>
    </message>
    <message>
        <source>There is no archive of Afterbeat in this database yet.</source>
        <translation>In dieser Datenbank gibt es noch kein Archiv von Afterbeat.</translation>
    </message>
    <message>
        <source>The file is gone, and its bytes are not in the archive.</source>
        <translation>Die Datei ist nicht mehr da, und ihre Bytes sind nicht im Archiv.</translation>
    </message>
    <message>
        <source>The file is another one now, and its old bytes are not in the archive.</source>
        <translation>Die Datei ist jetzt eine andere, und ihre alten Bytes sind nicht im Archiv.</translation>
    </message>
    <message>
        <source>It cannot be read: %1.</source>
        <translation>Sie lässt sich nicht lesen: %1.</translation>
    </message>
    <message>
        <source>It changed while it was read; take it in once more.</source>
        <translation>Sie änderte sich, während sie gelesen wurde; nehmen Sie sie noch einmal auf.</translation>
    </message>
    <message>
        <source>This archive was made by an older Afterbeat (its tables have version %1, this program needs %2). Somebody who may write to it has to open it once; that brings it up to date.</source>
        <translation>Dieses Archiv stammt von einem älteren Afterbeat (seine Tabellen haben Version %1, dieses Programm braucht %2). Wer hineinschreiben darf, muss es einmal öffnen; das bringt es auf den neuen Stand.</translation>
    </message>
</context>
<context>
    <name>Measures</name>
    <message>
        <source>Time without circulation</source>
        <translation>Zeit ohne Kreislauf</translation>
    </message>
    <message>
        <source>Length of the resuscitation window without circulation intervals and excluded stretches.</source>
        <translation>Länge des Zeitraums der Wiederbelebung ohne Abschnitte mit Kreislauf und ohne ausgenommene Abschnitte.</translation>
    </message>
    <message>
        <source>Hands-off time</source>
        <translation>Zeit ohne Herzdruckmassage</translation>
    </message>
    <message>
        <source>Sum of the pauses: gaps without hands on the chest that are longer than the threshold, each in full.</source>
        <translation>Summe der Pausen: Zeiten ohne Herzdruckmassage, die länger sind als die Schwelle; jede zählt in voller Länge.</translation>
    </message>
    <message>
        <source>Hands-off share</source>
        <translation>Anteil ohne Herzdruckmassage</translation>
    </message>
    <message>
        <source>Hands-off time divided by the time without circulation (no-flow fraction).</source>
        <translation>Zeit ohne Herzdruckmassage geteilt durch die Zeit ohne Kreislauf (No-Flow-Anteil).</translation>
    </message>
    <message>
        <source>Chest compression fraction</source>
        <translation>Anteil mit Herzdruckmassage</translation>
    </message>
    <message>
        <source>One minus the hands-off share.</source>
        <translation>Eins minus Anteil ohne Herzdruckmassage.</translation>
    </message>
    <message>
        <source>Hands-off time without analyses</source>
        <translation>Zeit ohne Herzdruckmassage, abzüglich Analysen</translation>
    </message>
    <message>
        <source>Hands-off time minus its overlap with analyses and with the time from an analysis to the shock that used it.</source>
        <translation>Zeit ohne Herzdruckmassage abzüglich ihrer Überlappung mit Analysen und mit der Zeit von einer Analyse bis zum zugehörigen Schock.</translation>
    </message>
    <message>
        <source>Compressions</source>
        <translation>Kompressionen</translation>
    </message>
    <message>
        <source>Number of chest compressions during the time without circulation.</source>
        <translation>Zahl der Thoraxkompressionen in der Zeit ohne Kreislauf.</translation>
    </message>
    <message>
        <source>Compressions delivered a minute</source>
        <translation>Tatsächliche Kompressionen pro Minute</translation>
    </message>
    <message>
        <source>Number of compressions divided by the time without circulation: delivered, not the rate.</source>
        <translation>Zahl der Kompressionen geteilt durch die Zeit ohne Kreislauf: tatsächlich gegeben, nicht die Frequenz.</translation>
    </message>
    <message>
        <source>Compression rate</source>
        <translation>Kompressionsfrequenz</translation>
    </message>
    <message>
        <source>Sixty times the number of intervals between neighbouring compressions that are no longer than the threshold, divided by their total length.</source>
        <translation>60 × Zahl der Abstände zwischen aufeinanderfolgenden Kompressionen, die nicht länger als die Schwelle sind, geteilt durch ihre Gesamtdauer.</translation>
    </message>
    <message>
        <source>Rate in target range</source>
        <translation>Frequenz im Zielbereich</translation>
    </message>
    <message>
        <source>Share of the intervals between neighbouring compressions whose rate lies in the target range, limits included.</source>
        <translation>Anteil der Abstände zwischen aufeinanderfolgenden Kompressionen, deren Frequenz im Zielbereich liegt, Grenzen eingeschlossen.</translation>
    </message>
    <message>
        <source>Compression depth</source>
        <translation>Drucktiefe</translation>
    </message>
    <message>
        <source>Mean depth of the compressions whose depth was recorded.</source>
        <translation>Mittlere Tiefe der Kompressionen, deren Tiefe aufgezeichnet wurde.</translation>
    </message>
    <message>
        <source>Depth in target range</source>
        <translation>Drucktiefe im Zielbereich</translation>
    </message>
    <message>
        <source>Share of the compressions with recorded depth whose depth lies in the target range for the patient.</source>
        <translation>Anteil der Kompressionen mit aufgezeichneter Tiefe, deren Tiefe im Zielbereich für den Patienten liegt.</translation>
    </message>
    <message>
        <source>Full release</source>
        <translation>Vollständige Entlastung</translation>
    </message>
    <message>
        <source>Share of the compressions with known release after which the chest was fully released.</source>
        <translation>Anteil der Kompressionen mit bekannter Entlastung, nach denen der Brustkorb vollständig entlastet wurde.</translation>
    </message>
    <message>
        <source>Breaths</source>
        <translation>Beatmungen</translation>
    </message>
    <message>
        <source>Number of breaths given during the time without circulation.</source>
        <translation>Zahl der Beatmungen in der Zeit ohne Kreislauf.</translation>
    </message>
    <message>
        <source>Breaths a minute</source>
        <translation>Beatmungen pro Minute</translation>
    </message>
    <message>
        <source>Number of breaths divided by the time without circulation.</source>
        <translation>Zahl der Beatmungen geteilt durch die Zeit ohne Kreislauf.</translation>
    </message>
    <message>
        <source>Longest pause</source>
        <translation>Längste Pause</translation>
    </message>
    <message>
        <source>Length of the longest pause.</source>
        <translation>Dauer der längsten Pause.</translation>
    </message>
    <message>
        <source>Pauses over the limit</source>
        <translation>Pausen über dem Grenzwert</translation>
    </message>
    <message>
        <source>Number of pauses longer than the guideline&apos;s limit for a pause.</source>
        <translation>Zahl der Pausen, die länger sind als der Grenzwert der Leitlinie für eine Pause.</translation>
    </message>
    <message>
        <source>Pause before a shock, median</source>
        <translation>Pause vor einem Schock, Median</translation>
    </message>
    <message>
        <source>Median, over delivered shocks, of the time from the last hands on the chest to the shock.</source>
        <translation>Median über die abgegebenen Schocks: Zeit vom Ende der Herzdruckmassage bis zum Schock.</translation>
    </message>
    <message>
        <source>Pause before a shock, longest</source>
        <translation>Pause vor einem Schock, längste</translation>
    </message>
    <message>
        <source>Longest time from the last hands on the chest to a delivered shock.</source>
        <translation>Längste Zeit vom Ende der Herzdruckmassage bis zu einem abgegebenen Schock.</translation>
    </message>
    <message>
        <source>Pause after a shock, median</source>
        <translation>Pause nach einem Schock, Median</translation>
    </message>
    <message>
        <source>Median, over delivered shocks, of the time from the shock to the next hands on the chest.</source>
        <translation>Median über die abgegebenen Schocks: Zeit vom Schock bis zur Wiederaufnahme der Herzdruckmassage.</translation>
    </message>
    <message>
        <source>Pause after a shock, longest</source>
        <translation>Pause nach einem Schock, längste</translation>
    </message>
    <message>
        <source>Longest time from a delivered shock to the next hands on the chest.</source>
        <translation>Längste Zeit von einem abgegebenen Schock bis zur Wiederaufnahme der Herzdruckmassage.</translation>
    </message>
    <message>
        <source>Pause around a shock, median</source>
        <translation>Pause rund um einen Schock, Median</translation>
    </message>
    <message>
        <source>Median, over delivered shocks, of the pauses before and after the shock together.</source>
        <translation>Median über die abgegebenen Schocks: Pausen vor und nach dem Schock zusammen.</translation>
    </message>
    <message>
        <source>Pause around a shock, longest</source>
        <translation>Pause rund um einen Schock, längste</translation>
    </message>
    <message>
        <source>Longest pause before and after a delivered shock together.</source>
        <translation>Längste Pause vor und nach einem abgegebenen Schock zusammen.</translation>
    </message>
    <message>
        <source>Shocks given</source>
        <translation>Abgegebene Schocks</translation>
    </message>
    <message>
        <source>Number of shocks delivered.</source>
        <translation>Zahl der abgegebenen Schocks.</translation>
    </message>
    <message>
        <source>Shocks not given</source>
        <translation>Nicht abgegebene Schocks</translation>
    </message>
    <message>
        <source>Number of shocks that were advised or charged and not given.</source>
        <translation>Zahl der Schocks, die empfohlen waren oder für die geladen wurde und die nicht abgegeben wurden.</translation>
    </message>
    <message>
        <source>Shocks, delivery unknown</source>
        <translation>Schocks, Abgabe unbekannt</translation>
    </message>
    <message>
        <source>Number of shocks of which the record does not say whether they were given.</source>
        <translation>Zahl der Schocks, von denen die Aufzeichnung nicht sagt, ob sie abgegeben wurden.</translation>
    </message>
    <message>
        <source>Energy delivered</source>
        <translation>Abgegebene Energie</translation>
    </message>
    <message>
        <source>Sum of the energies of the delivered shocks, if each is recorded.</source>
        <translation>Summe der Energien der abgegebenen Schocks, wenn jede aufgezeichnet ist.</translation>
    </message>
    <message>
        <source>Rhythm analyses</source>
        <translation>Rhythmusanalysen</translation>
    </message>
    <message>
        <source>Number of rhythm analyses.</source>
        <translation>Zahl der Rhythmusanalysen.</translation>
    </message>
    <message>
        <source>Analyses that advised a shock</source>
        <translation>Analysen mit Schockempfehlung</translation>
    </message>
    <message>
        <source>Number of rhythm analyses that advised a shock.</source>
        <translation>Zahl der Rhythmusanalysen, die einen Schock empfahlen.</translation>
    </message>
    <message>
        <source>Advice to shock, median</source>
        <translation>Empfehlung bis Schock, Median</translation>
    </message>
    <message>
        <source>Median time from the end of an analysis that advised a shock to the shock that used it.</source>
        <translation>Median der Zeit vom Ende einer Analyse mit Schockempfehlung bis zum zugehörigen Schock.</translation>
    </message>
    <message>
        <source>Advice to shock, longest</source>
        <translation>Empfehlung bis Schock, längste</translation>
    </message>
    <message>
        <source>Longest time from the end of an analysis that advised a shock to the shock that used it.</source>
        <translation>Längste Zeit vom Ende einer Analyse mit Schockempfehlung bis zum zugehörigen Schock.</translation>
    </message>
    <message>
        <source>Device on to first shock</source>
        <translation>Einschalten bis erster Schock</translation>
    </message>
    <message>
        <source>Time from the first power-on to the first delivered shock.</source>
        <translation>Zeit vom ersten Einschalten bis zum ersten abgegebenen Schock.</translation>
    </message>
    <message>
        <source>Electrodes to first shock</source>
        <translation>Elektroden bis erster Schock</translation>
    </message>
    <message>
        <source>Time from electrodes first attached to the first delivered shock.</source>
        <translation>Zeit vom ersten Aufkleben der Elektroden bis zum ersten abgegebenen Schock.</translation>
    </message>
    <message>
        <source>Collapse to first shock</source>
        <translation>Kollaps bis erster Schock</translation>
    </message>
    <message>
        <source>Time from collapse to the first delivered shock.</source>
        <translation>Zeit vom Kollaps bis zum ersten abgegebenen Schock.</translation>
    </message>
    <message>
        <source>Call to first shock</source>
        <translation>Notruf bis erster Schock</translation>
    </message>
    <message>
        <source>Time from the emergency call to the first delivered shock.</source>
        <translation>Zeit vom Notruf bis zum ersten abgegebenen Schock.</translation>
    </message>
    <message>
        <source>First compressions to first shock</source>
        <translation>Erste Kompressionen bis erster Schock</translation>
    </message>
    <message>
        <source>Time from the first hands on the chest to the first delivered shock.</source>
        <translation>Zeit vom Beginn der Herzdruckmassage bis zum ersten abgegebenen Schock.</translation>
    </message>
    <message>
        <source>Device on to electrodes</source>
        <translation>Einschalten bis Elektroden</translation>
    </message>
    <message>
        <source>Time from the first power-on to electrodes first attached.</source>
        <translation>Zeit vom ersten Einschalten bis zum ersten Aufkleben der Elektroden.</translation>
    </message>
    <message>
        <source>Device on to first compressions</source>
        <translation>Einschalten bis erste Kompressionen</translation>
    </message>
    <message>
        <source>Time from the first power-on to the first hands on the chest.</source>
        <translation>Zeit vom ersten Einschalten bis zum Beginn der Herzdruckmassage.</translation>
    </message>
    <message>
        <source>Electrodes to first analysis</source>
        <translation>Elektroden bis erste Analyse</translation>
    </message>
    <message>
        <source>Time from electrodes first attached to the begin of the first analysis.</source>
        <translation>Zeit vom ersten Aufkleben der Elektroden bis zum Beginn der ersten Analyse.</translation>
    </message>
    <message>
        <source>Collapse to first compressions</source>
        <translation>Kollaps bis erste Kompressionen</translation>
    </message>
    <message>
        <source>Time from collapse to the first hands on the chest.</source>
        <translation>Zeit vom Kollaps bis zum Beginn der Herzdruckmassage.</translation>
    </message>
    <message>
        <source>Call to first compressions</source>
        <translation>Notruf bis erste Kompressionen</translation>
    </message>
    <message>
        <source>Time from the emergency call to the first hands on the chest.</source>
        <translation>Zeit vom Notruf bis zum Beginn der Herzdruckmassage.</translation>
    </message>
    <message>
        <source>Call to device arrived</source>
        <translation>Notruf bis Eintreffen des Geräts</translation>
    </message>
    <message>
        <source>Time from the emergency call to the arrival of the defibrillator.</source>
        <translation>Zeit vom Notruf bis zum Eintreffen des Defibrillators.</translation>
    </message>
    <message>
        <source>Collapse to return of circulation</source>
        <translation>Kollaps bis Rückkehr des Kreislaufs</translation>
    </message>
    <message>
        <source>Time from collapse to the first return of spontaneous circulation.</source>
        <translation>Zeit vom Kollaps bis zur ersten Rückkehr des Spontankreislaufs.</translation>
    </message>
    <message>
        <source>Time with circulation</source>
        <translation>Zeit mit Kreislauf</translation>
    </message>
    <message>
        <source>Total time with spontaneous circulation, as judged on scene, up to the window&apos;s end.</source>
        <translation>Gesamte Zeit mit Spontankreislauf, nach der Beurteilung vor Ort, bis zum Ende des Zeitraums.</translation>
    </message>
    <message>
        <source>Longest time with circulation</source>
        <translation>Längste Zeit mit Kreislauf</translation>
    </message>
    <message>
        <source>Longest single time with spontaneous circulation; sustained from 20 minutes.</source>
        <translation>Längste einzelne Zeit mit Spontankreislauf; anhaltend ab 20 Minuten.</translation>
    </message>
    <message>
        <source>Device on for</source>
        <translation>Gerät in Betrieb</translation>
    </message>
    <message>
        <source>Sum of the periods in which the device was on.</source>
        <translation>Summe der Zeiten, in denen das Gerät eingeschaltet war.</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation>in der Quelle gelesen</translation>
    </message>
    <message>
        <source>read in a secondary publication</source>
        <translation>in einer Sekundärquelle gelesen</translation>
    </message>
    <message>
        <source>from memory, check the source</source>
        <translation>aus dem Gedächtnis, Quelle prüfen</translation>
    </message>
    <message>
        <source>Uniform reporting of measured CPR quality: Kramer-Johansen et al., Resuscitation 2007;74:406-417</source>
        <translation>Uniform reporting of measured CPR quality: Kramer-Johansen et al., Resuscitation 2007;74:406-417</translation>
    </message>
    <message>
        <source>CPR quality consensus statement: Meaney et al., Circulation 2013;128:417-435</source>
        <translation>CPR quality consensus statement: Meaney et al., Circulation 2013;128:417-435</translation>
    </message>
    <message>
        <source>After Wik et al., JAMA 2005;293:299-304</source>
        <translation>Nach Wik et al., JAMA 2005;293:299-304</translation>
    </message>
    <message>
        <source>Cheskes et al., Circulation 2011;124:58-66</source>
        <translation>Cheskes et al., Circulation 2011;124:58-66</translation>
    </message>
    <message>
        <source>Utstein terms for times in resuscitation</source>
        <translation>Utstein-Begriffe für Zeiten der Wiederbelebung</translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation>Übliche Praxis, ohne Quelle</translation>
    </message>
</context>
<context>
    <name>Papers</name>
    <message>
        <source>Hands off, rate and depth are derived from signals, not from the device&apos;s own entries (mean quality %1 %): a reviewer&apos;s aid.</source>
        <translation>Pausen, Frequenz und Tiefe sind aus Signalen abgeleitet, nicht vom Gerät selbst notiert (mittlere Güte %1 %): eine Hilfe für die Auswertung.</translation>
    </message>
    <message>
        <source>Breaths are derived from signals (mean quality %1 %).</source>
        <translation>Beatmungen sind aus Signalen abgeleitet (mittlere Güte %1 %).</translation>
    </message>
    <message>
        <source>%1 noted, delivery not recorded</source>
        <translation>%1 vermerkt, Abgabe nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>lines were lost: may be more</source>
        <translation>Zeilen verloren: evtl. mehr</translation>
    </message>
    <message>
        <source>Lines of the recording that could not be read: %1. Shocks and compressions may be missing, times may be wrong.</source>
        <translation>Nicht lesbare Zeilen der Aufzeichnung: %1. Schocks und Thoraxkompressionen können fehlen, Zeiten falsch sein.</translation>
    </message>
    <message>
        <source>The file holds other recordings, which are not on this sheet: %1.</source>
        <translation>Die Datei enthält weitere Aufzeichnungen, die nicht auf diesem Blatt stehen: %1.</translation>
    </message>
    <message>
        <source>%1 before power-on</source>
        <translation>%1 vor dem Einschalten</translation>
    </message>
    <message>
        <source>%1 before the record begins</source>
        <translation>%1 vor Beginn der Aufzeichnung</translation>
    </message>
    <message>
        <source>%1 after power-on</source>
        <translation>%1 nach dem Einschalten</translation>
    </message>
    <message>
        <source>%1 after the record begins</source>
        <translation>%1 nach Beginn der Aufzeichnung</translation>
    </message>
    <message>
        <source>around shocks %1</source>
        <translation>rund um die Schocks %1</translation>
    </message>
    <message>
        <source>around shock %1</source>
        <translation>rund um Schock %1</translation>
    </message>
    <message>
        <source>for an analysis</source>
        <translation>wegen einer Analyse</translation>
    </message>
    <message>
        <source>before the first compression</source>
        <translation>vor der ersten Kompression</translation>
    </message>
    <message>
        <source>after the last compression</source>
        <translation>nach der letzten Kompression</translation>
    </message>
    <message>
        <source>for breaths</source>
        <translation>wegen Beatmungen</translation>
    </message>
    <message>
        <source>no reason recorded</source>
        <translation>kein Grund aufgezeichnet</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation>in der Quelle gelesen</translation>
    </message>
    <message>
        <source>read in a secondary publication</source>
        <translation>in einer Sekundärquelle gelesen</translation>
    </message>
    <message>
        <source>from memory, check the source</source>
        <translation>aus dem Gedächtnis, Quelle prüfen</translation>
    </message>
    <message>
        <source>European guidelines 2021</source>
        <translation>Europäische Leitlinien 2021</translation>
    </message>
    <message>
        <source>European guidelines 2025</source>
        <translation>Europäische Leitlinien 2025</translation>
    </message>
    <message>
        <source>American guidelines 2020</source>
        <translation>Amerikanische Leitlinien 2020</translation>
    </message>
    <message>
        <source>American guidelines 2025</source>
        <translation>Amerikanische Leitlinien 2025</translation>
    </message>
    <message>
        <source>adult</source>
        <translation>erwachsen</translation>
    </message>
    <message>
        <source>child</source>
        <translation>Kind</translation>
    </message>
    <message>
        <source>infant</source>
        <translation>Säugling</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>Übergabeblatt</translation>
    </message>
    <message>
        <source>The font “%1” is not installed (Debian package fonts-inter). The sheet was not written.</source>
        <translation>Die Schrift „%1“ ist nicht installiert (Debian-Paket fonts-inter). Das Blatt wurde nicht geschrieben.</translation>
    </message>
    <message>
        <source>The sheet could not be painted.</source>
        <translation>Das Blatt konnte nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>The sheet could not be written: %1.</source>
        <translation>Das Blatt konnte nicht geschrieben werden: %1.</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>Device on for</source>
        <translation>Gerät in Betrieb</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>Shocks given</source>
        <translation>Abgegebene Schocks</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>letzter %1</translation>
    </message>
    <message>
        <source>%1 more: delivery not recorded</source>
        <translation>%1 weitere: Abgabe nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Hands off</source>
        <translation>Ohne Druckmassage</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>target at most %1</source>
        <translation>Ziel höchstens %1</translation>
    </message>
    <message>
        <source>To the first shock</source>
        <translation>Bis zum ersten Schock</translation>
    </message>
    <message>
        <source>from device on</source>
        <translation>ab dem Einschalten</translation>
    </message>
    <message>
        <source>from electrodes on</source>
        <translation>ab dem Aufkleben der Elektroden</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>The device&apos;s analysis took %1 of it.</source>
        <translation>Davon entfielen %1 auf die Analyse des Geräts.</translation>
    </message>
    <message>
        <source>The steadiest minute: hands were on the chest all the time.</source>
        <translation>Die stetigste Minute: durchgehende Herzdruckmassage.</translation>
    </message>
    <message>
        <source>The steadiest minute: hands were on the chest for %1 of %2.</source>
        <translation>Die stetigste Minute: Herzdruckmassage in %1 von %2.</translation>
    </message>
    <message>
        <source>Nothing that was measured lies within its target yet. Here is what came nearest, and an effort that shows in the record.</source>
        <translation>Noch liegt kein gemessener Wert im Zielbereich. Hier steht, was am nächsten kam, und eine Leistung, die in der Aufzeichnung zu sehen ist.</translation>
    </message>
    <message>
        <source>Nothing that was measured lies within its target yet. Here is what came nearest.</source>
        <translation>Noch liegt kein gemessener Wert im Zielbereich. Hier steht, was am nächsten kam.</translation>
    </message>
    <message>
        <source>An effort that shows in the record.</source>
        <translation>Eine Leistung, die in der Aufzeichnung zu sehen ist.</translation>
    </message>
    <message>
        <source>The record cannot tell what went well. The people who were there can: ask them.</source>
        <translation>Was gut gelang, kann die Aufzeichnung nicht sagen. Wer dabei war, kann es: Fragt nach.</translation>
    </message>
    <message>
        <source>There is too little in the record to choose something to practise.</source>
        <translation>Die Aufzeichnung enthält zu wenig, um etwas zum Üben auszuwählen.</translation>
    </message>
    <message>
        <source>Nothing else that was measured lies beyond its target.</source>
        <translation>Sonst liegt kein gemessener Wert außerhalb des Zielbereichs.</translation>
    </message>
    <message>
        <source>Nothing that was measured lies clearly beyond its target. What would you like to practise?</source>
        <translation>Kein gemessener Wert liegt deutlich außerhalb des Zielbereichs. Was möchtet ihr üben?</translation>
    </message>
    <message>
        <source>What are you glad about?</source>
        <translation>Worüber seid ihr froh?</translation>
    </message>
    <message>
        <source>What do we do the same way next time, and what do we try?</source>
        <translation>Was machen wir nächstes Mal genauso, und was probieren wir?</translation>
    </message>
    <message>
        <source>Not in the record: %1.</source>
        <translation>Nicht in der Aufzeichnung: %1.</translation>
    </message>
    <message>
        <source>Went well</source>
        <translation>Gut gelungen</translation>
    </message>
    <message>
        <source>To practise</source>
        <translation>Zum Üben</translation>
    </message>
    <message>
        <source>To talk about</source>
        <translation>Zum Besprechen</translation>
    </message>
    <message>
        <source>Shock %1</source>
        <translation>Schock %1</translation>
    </message>
    <message>
        <source>Shock not given</source>
        <translation>Schock nicht abgegeben</translation>
    </message>
    <message>
        <source>Shock: delivery not recorded</source>
        <translation>Schock: Abgabe nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>analysis</source>
        <translation>Analyse</translation>
    </message>
    <message>
        <source>analysis without result</source>
        <translation>Analyse ohne Ergebnis</translation>
    </message>
    <message>
        <source>Hands not recorded</source>
        <translation>Druckmassage nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Hands off for %1 s</source>
        <translation>Seit %1 s ohne Druckmassage</translation>
    </message>
    <message>
        <source>Hands on, %1 a minute</source>
        <translation>Druckmassage, %1/min</translation>
    </message>
    <message>
        <source>Hands on</source>
        <translation>Druckmassage</translation>
    </message>
    <message>
        <source>Before the first activity</source>
        <translation>Vor der ersten Maßnahme</translation>
    </message>
    <message>
        <source>After the last activity</source>
        <translation>Nach der letzten Maßnahme</translation>
    </message>
    <message>
        <source>Not counted</source>
        <translation>Nicht gewertet</translation>
    </message>
    <message>
        <source>Circulation returned</source>
        <translation>Kreislauf wieder da</translation>
    </message>
    <message>
        <source>What helped to keep hands on the chest?</source>
        <translation>Was half, die Hände auf dem Brustkorb zu lassen?</translation>
    </message>
    <message>
        <source>What took hands off the chest in the minute from %1?</source>
        <translation>Was holte die Hände in der Minute ab %1 vom Brustkorb?</translation>
    </message>
    <message>
        <source>What kept every pause this short?</source>
        <translation>Was hielt jede Pause so kurz?</translation>
    </message>
    <message>
        <source>What was happening around %1, when hands were off for %2?</source>
        <translation>Was geschah gegen %1, als %2 lang nicht gedrückt wurde?</translation>
    </message>
    <message>
        <source>What was prepared so that hands could stay on until the shock?</source>
        <translation>Was war vorbereitet, damit bis zum Schock gedrückt werden konnte?</translation>
    </message>
    <message>
        <source>What was happening at %1, before shock %3, while hands were off?</source>
        <translation>Was geschah gegen %1, vor Schock %3, während nicht gedrückt wurde?</translation>
    </message>
    <message>
        <source>How did you know when to go on after the shock?</source>
        <translation>Woher wusstet ihr, wann es nach dem Schock weitergeht?</translation>
    </message>
    <message>
        <source>After shock %3, at %1: what were you waiting for?</source>
        <translation>Nach Schock %3, gegen %1: Worauf habt ihr gewartet?</translation>
    </message>
    <message>
        <source>What made the first shock come this soon?</source>
        <translation>Wodurch kam der erste Schock so früh?</translation>
    </message>
    <message>
        <source>Which step between power-on and the first shock took longest, and what would make it easier?</source>
        <translation>Welcher Schritt vom Einschalten bis zum ersten Schock dauerte am längsten, und was würde ihn leichter machen?</translation>
    </message>
    <message>
        <source>Around %1, before the first compression: what could have run side by side?</source>
        <translation>Gegen %1, vor der ersten Kompression: Was hätte gleichzeitig laufen können?</translation>
    </message>
    <message>
        <source>What kept the pace: counting, a metronome, a song?</source>
        <translation>Was hielt den Takt: Zählen, ein Metronom, ein Lied?</translation>
    </message>
    <message>
        <source>Around %1: what did you keep the pace by, and could you hear it?</source>
        <translation>Gegen %1: Wonach habt ihr den Takt gehalten, und war es zu hören?</translation>
    </message>
    <message>
        <source>What made the pace change around %1?</source>
        <translation>Wodurch änderte sich gegen %1 der Takt?</translation>
    </message>
    <message>
        <source>How did it feel to press this deep, and for how long could you keep it up?</source>
        <translation>Wie fühlte es sich an, so tief zu drücken, und wie lange ließ es sich durchhalten?</translation>
    </message>
    <message>
        <source>How did you know around %1 that it was deep enough?</source>
        <translation>Woran habt ihr gegen %1 gemerkt, dass es tief genug war?</translation>
    </message>
    <message>
        <source>What made it hard to press deeper around %1: the ground, the height, tired arms?</source>
        <translation>Was machte es gegen %1 schwer, tiefer zu drücken: der Boden, die Höhe, müde Arme?</translation>
    </message>
    <message>
        <source>What helped to come all the way up?</source>
        <translation>Was half, ganz zu entlasten?</translation>
    </message>
    <message>
        <source>How tired were you around %1, and what would help to come all the way up?</source>
        <translation>Wie müde wart ihr gegen %1, und was würde helfen, ganz zu entlasten?</translation>
    </message>
    <message>
        <source>How did compressions and breaths fit together so well?</source>
        <translation>Wodurch passten Herzdruckmassage und Beatmung so gut zusammen?</translation>
    </message>
    <message>
        <source>What made the breaths around %1 take %2: the mask, the head, waiting for each other?</source>
        <translation>Woran lag es, dass die Beatmungen gegen %1 insgesamt %2 dauerten: an der Maske, am Kopf, am Warten aufeinander?</translation>
    </message>
    <message>
        <source>What became easier as time went on?</source>
        <translation>Was wurde mit der Zeit leichter?</translation>
    </message>
    <message>
        <source>What changed after %1: tired arms, changing over, the room?</source>
        <translation>Was änderte sich ab %1: müde Arme, der Wechsel, der Platz?</translation>
    </message>
    <message>
        <source>What helped to have the electrodes on this soon?</source>
        <translation>Was half, die Elektroden so früh aufzukleben?</translation>
    </message>
    <message>
        <source>What was in the way of the electrodes: clothes, wet skin, room to kneel?</source>
        <translation>Was erschwerte das Aufkleben der Elektroden: Kleidung, nasse Haut, zu wenig Platz zum Knien?</translation>
    </message>
    <message>
        <source>How did everybody know to stand clear?</source>
        <translation>Woher wussten alle, dass sie zurücktreten sollten?</translation>
    </message>
    <message>
        <source>What happened between the advice and shock %3?</source>
        <translation>Was geschah zwischen der Empfehlung und Schock %3?</translation>
    </message>
    <message>
        <source>to be seen from %1</source>
        <translation>zu sehen ab %1</translation>
    </message>
    <message>
        <source>Debrief</source>
        <translation>Nachbesprechung</translation>
    </message>
    <message>
        <source>DRILL</source>
        <translation>ÜBUNG</translation>
    </message>
    <message>
        <source>SYNTHETIC</source>
        <translation>SYNTHETISCH</translation>
    </message>
    <message>
        <source>Pauses longer than %1 s count. Targets: %2. Local protocol and licensed practice go first.</source>
        <translation>Pausen über %1 s zählen. Ziele: %2. Örtliche Vorgaben und berufliche Befugnisse gehen vor.</translation>
    </message>
    <message>
        <source>Before shock %1 hands were off for %2.</source>
        <translation>Vor Schock %1 wurde %2 lang nicht gedrückt.</translation>
    </message>
    <message>
        <source>After shock %1 hands were back on after %2.</source>
        <translation>Nach Schock %1 wurde nach %2 wieder gedrückt.</translation>
    </message>
    <message>
        <source>Hands were off for only %1 before the shock.</source>
        <translation>Vor dem Schock wurde nur %1 lang nicht gedrückt.</translation>
    </message>
    <message>
        <source>After the shock hands were back on within %1.</source>
        <translation>Nach dem Schock wurde innerhalb von %1 wieder gedrückt.</translation>
    </message>
    <message>
        <source>Hands were never off for more than %1 before a shock.</source>
        <translation>Vor keinem Schock wurde länger als %1 nicht gedrückt.</translation>
    </message>
    <message>
        <source>After every shock hands were back on within %1.</source>
        <translation>Nach jedem Schock wurde innerhalb von %1 wieder gedrückt.</translation>
    </message>
    <message>
        <source>No pause between compressions lasted longer than %1.</source>
        <translation>Keine Pause zwischen Kompressionen dauerte länger als %1.</translation>
    </message>
    <message>
        <source>The longest pause lasted %1: %2.</source>
        <translation>Die längste Pause dauerte %1: %2.</translation>
    </message>
    <message>
        <source>Compressions kept the pace: %1 a minute on average, %2 within target.</source>
        <translation>Die Herzdruckmassage hielt den Takt: im Mittel %1 pro Minute, %2 im Ziel.</translation>
    </message>
    <message>
        <source>Compressions were faster than the target: %1 a minute.</source>
        <translation>Die Herzdruckmassage war schneller als das Ziel: %1 pro Minute.</translation>
    </message>
    <message>
        <source>Compressions were slower than the target: %1 a minute.</source>
        <translation>Die Herzdruckmassage war langsamer als das Ziel: %1 pro Minute.</translation>
    </message>
    <message>
        <source>Compressions were deep enough: %1 mm on average, %2 within target.</source>
        <translation>Die Kompressionen waren tief genug: im Mittel %1 mm, %2 im Ziel.</translation>
    </message>
    <message>
        <source>Compressions went deeper than the target: %1 mm on average.</source>
        <translation>Die Kompressionen gingen tiefer als das Ziel: im Mittel %1 mm.</translation>
    </message>
    <message>
        <source>Compressions were less deep than the target: %1 mm on average.</source>
        <translation>Die Kompressionen waren weniger tief als das Ziel: im Mittel %1 mm.</translation>
    </message>
    <message>
        <source>It got better: hands were off for %1 of the first half and only %2 of the second.</source>
        <translation>Es wurde besser: Ohne Herzdruckmassage vergingen %1 der ersten Hälfte und nur %2 der zweiten.</translation>
    </message>
    <message>
        <source>It got harder: hands were off for %1 of the first half and %2 of the second.</source>
        <translation>Es wurde schwerer: Ohne Herzdruckmassage vergingen %1 der ersten Hälfte und %2 der zweiten.</translation>
    </message>
    <message>
        <source>The pace changed a lot: %1 of the compressions came within the target rate.</source>
        <translation>Der Takt wechselte stark: %1 der Kompressionen lagen im Zielbereich der Frequenz.</translation>
    </message>
    <message>
        <source>The chest came all the way up after %1 of compressions.</source>
        <translation>Nach %1 der Kompressionen wurde ganz entlastet.</translation>
    </message>
    <message>
        <source>The chest came all the way up after %1 of compressions; after the others some weight stayed on it.</source>
        <translation>Nach %1 der Kompressionen wurde ganz entlastet; nach den anderen blieb etwas Gewicht auf dem Brustkorb.</translation>
    </message>
    <message>
        <source>Hands stayed on: they were off the chest for only %1 of the time.</source>
        <translation>Die Hände blieben auf dem Brustkorb: Nur %1 der Zeit vergingen ohne Herzdruckmassage.</translation>
    </message>
    <message>
        <source>Hands were off the chest for %1 of the time.</source>
        <translation>%1 der Zeit vergingen ohne Herzdruckmassage.</translation>
    </message>
    <message>
        <source>The first shock came %1 after power-on.</source>
        <translation>Der erste Schock kam %1 nach dem Einschalten.</translation>
    </message>
    <message>
        <source>The electrodes were on %1 after power-on.</source>
        <translation>Die Elektroden waren %1 nach dem Einschalten aufgeklebt.</translation>
    </message>
    <message>
        <source>The first compression came %1 after the electrodes were on.</source>
        <translation>Die erste Kompression kam %1 nach dem Aufkleben der Elektroden.</translation>
    </message>
    <message>
        <source>%1/min</source>
        <translation>%1/min</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>target at least %1</source>
        <translation>Ziel mindestens %1</translation>
    </message>
    <message>
        <source>target %1–%2 mm</source>
        <translation>Ziel %1–%2 mm</translation>
    </message>
    <message>
        <source>target below %1 s</source>
        <translation>Ziel unter %1 s</translation>
    </message>
    <message>
        <source>Breaths were quick: no pause for them lasted longer than %1.</source>
        <translation>Die Beatmungen gingen zügig: Keine Pause dafür dauerte länger als %1.</translation>
    </message>
    <message>
        <source>The longest pause for breaths lasted %1.</source>
        <translation>Die längste Pause für Beatmungen dauerte %1.</translation>
    </message>
    <message>
        <source>Shock %1 came %2 after it was advised.</source>
        <translation>Schock %1 kam %2 nach der Empfehlung.</translation>
    </message>
    <message>
        <source>hands on and off, pace and depth</source>
        <translation>Herzdruckmassage und Pausen, Takt und Tiefe</translation>
    </message>
    <message>
        <source>hands on and off (less than a minute was recorded)</source>
        <translation>Herzdruckmassage und Pausen (weniger als eine Minute aufgezeichnet)</translation>
    </message>
    <message>
        <source>the pace of compressions</source>
        <translation>der Takt der Herzdruckmassage</translation>
    </message>
    <message>
        <source>the depth of compressions</source>
        <translation>die Tiefe der Kompressionen</translation>
    </message>
    <message>
        <source>breaths</source>
        <translation>Beatmungen</translation>
    </message>
    <message>
        <source>shocks</source>
        <translation>Schocks</translation>
    </message>
    <message>
        <source>what stood in the lines that were lost (a pause may be shorter than it looks)</source>
        <translation>was in den verlorenen Zeilen stand (eine Pause kann kürzer sein, als sie aussieht)</translation>
    </message>
    <message>
        <source>Rate in range</source>
        <translation>Frequenz im Zielbereich</translation>
    </message>
    <message>
        <source>mean %1 a minute</source>
        <translation>im Mittel %1 pro Minute</translation>
    </message>
    <message>
        <source>target %1–%2 a minute</source>
        <translation>Ziel %1–%2 pro Minute</translation>
    </message>
    <message>
        <source>Longest pause</source>
        <translation>Längste Pause</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>none longer than %1 s</source>
        <translation>keine länger als %1 s</translation>
    </message>
    <message>
        <source>target at most %1 s</source>
        <translation>Ziel höchstens %1 s</translation>
    </message>
    <message>
        <source>Minutes %1 to %2 do not fit on this page: %3 rows are left out. All of them are counted in the figures.</source>
        <translation>Die Minuten %1 bis %2 passen nicht auf diese Seite: %3 Zeilen fehlen hier. In den Zahlen sind sie enthalten.</translation>
    </message>
    <message>
        <source>Nothing in this record can be drawn as rows: no electrodes, compressions, analysis or shock.</source>
        <translation>Diese Aufzeichnung enthält nichts, was sich in Zeilen zeichnen ließe: keine Elektroden, keine Kompression, keine Analyse, keinen Schock.</translation>
    </message>
    <message>
        <source>%1 s</source>
        <extracomment>Seconds of an axis.</extracomment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>shock? delivery not recorded</source>
        <translation>Schock? Abgabe nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>shock ?</source>
        <translation>Schock ?</translation>
    </message>
    <message>
        <source>shock not given</source>
        <translation>Schock nicht abgegeben</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht abgegeben</translation>
    </message>
    <message>
        <source>shock %1</source>
        <translation>Schock %1</translation>
    </message>
    <message>
        <source>analysis: shock advised</source>
        <translation>Analyse: Schock empfohlen</translation>
    </message>
    <message>
        <source>shock advised</source>
        <translation>Schock empfohlen</translation>
    </message>
    <message>
        <source>shock</source>
        <translation>Schock</translation>
    </message>
    <message>
        <source>analysis: no shock advised</source>
        <translation>Analyse: kein Schock empfohlen</translation>
    </message>
    <message>
        <source>no shock advised</source>
        <translation>kein Schock empfohlen</translation>
    </message>
    <message>
        <source>no shock</source>
        <translation>kein Schock</translation>
    </message>
    <message>
        <source>analysis: inconclusive</source>
        <translation>Analyse: ohne Ergebnis</translation>
    </message>
    <message>
        <source>inconclusive</source>
        <translation>ohne Ergebnis</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>medication</source>
        <translation>Medikament</translation>
    </message>
    <message>
        <source>rescuer change</source>
        <translation>Helferwechsel</translation>
    </message>
    <message>
        <source>electrodes off</source>
        <translation>Elektroden gelöst</translation>
    </message>
    <message>
        <source>device off</source>
        <translation>Gerät aus</translation>
    </message>
    <message>
        <source>device fault</source>
        <translation>Gerätestörung</translation>
    </message>
    <message>
        <source>circulation returned</source>
        <translation>Kreislauf wieder da</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>wieder da</translation>
    </message>
    <message>
        <source>circulation lost</source>
        <translation>Kreislauf verloren</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gewertet</translation>
    </message>
    <message>
        <source>not counted: not part of the rescue</source>
        <translation>nicht gewertet: gehört nicht zum Einsatz</translation>
    </message>
    <message>
        <source>not counted: recording not trusted</source>
        <translation>nicht gewertet: Aufzeichnung unzuverlässig</translation>
    </message>
    <message>
        <source>not counted: nobody was watching</source>
        <translation>nicht gewertet: niemand hat beobachtet</translation>
    </message>
    <message>
        <source>%1–%2 min</source>
        <translation>%1–%2 min</translation>
    </message>
    <message>
        <source>collapse</source>
        <translation>Kollaps</translation>
    </message>
    <message>
        <source>call received</source>
        <translation>Notruf</translation>
    </message>
    <message>
        <source>compressions started</source>
        <translation>Herzdruckmassage begonnen</translation>
    </message>
    <message>
        <source>device requested</source>
        <translation>Gerät angefordert</translation>
    </message>
    <message>
        <source>device arrived</source>
        <translation>Gerät eingetroffen</translation>
    </message>
    <message>
        <source>crew arrived</source>
        <translation>Rettungsdienst da</translation>
    </message>
    <message>
        <source>handover</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>efforts ended</source>
        <translation>Maßnahmen beendet</translation>
    </message>
    <message>
        <source>hands on; height shows the compression rate</source>
        <translation>Herzdruckmassage; Höhe = Frequenz</translation>
    </message>
    <message>
        <source>hands on, rate not recorded</source>
        <translation>Herzdruckmassage, Frequenz nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>hands off, seconds</source>
        <translation>ohne Herzdruckmassage, Sekunden</translation>
    </message>
    <message>
        <source>longer than %1 s</source>
        <translation>länger als %1 s</translation>
    </message>
    <message>
        <source>shock given</source>
        <translation>Schock abgegeben</translation>
    </message>
    <message>
        <source>not recorded whether given</source>
        <translation>Abgabe nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>breath</source>
        <translation>Beatmung</translation>
    </message>
    <message>
        <source>no hands on the chest</source>
        <translation>keine Herzdruckmassage</translation>
    </message>
    <message>
        <source>hands on for %1</source>
        <translation>Herzdruckmassage %1 lang</translation>
    </message>
    <message>
        <source>hands on for %1, about %2 a minute</source>
        <translation>Herzdruckmassage %1 lang, etwa %2 pro Minute</translation>
    </message>
    <message>
        <source>hands off %1 from %2, beyond the limit</source>
        <translation>ohne Herzdruckmassage %1 ab %2, über dem Grenzwert</translation>
    </message>
    <message>
        <source>hands off %1 from %2</source>
        <translation>ohne Herzdruckmassage %1 ab %2</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>one breath</source>
        <translation>eine Beatmung</translation>
    </message>
    <message>
        <source>%1 breaths</source>
        <translation>%1 Beatmungen</translation>
    </message>
    <message>
        <source>Training: what was recorded during a drill</source>
        <translation>Übung: was dabei aufgezeichnet wurde</translation>
    </message>
    <message>
        <source>Test of a device: no patient</source>
        <translation>Gerätetest: kein Patient</translation>
    </message>
    <message>
        <source>Cardiac arrest: what device and helpers recorded</source>
        <translation>Kreislaufstillstand: Aufzeichnung von Gerät und Helfern</translation>
    </message>
    <message>
        <source>DRILL – not a real patient</source>
        <translation>ÜBUNG – kein echter Patient</translation>
    </message>
    <message>
        <source>TEST – not a real patient</source>
        <translation>TEST – kein echter Patient</translation>
    </message>
    <message>
        <source>SYNTHETIC – invented data</source>
        <translation>SYNTHETISCH – erfundene Daten</translation>
    </message>
    <message>
        <source>record %1</source>
        <translation>Aufzeichnung %1</translation>
    </message>
    <message>
        <source>device %1</source>
        <translation>Gerät %1</translation>
    </message>
    <message>
        <source>The device was set to “%1”; the patient is recorded as “%2”.</source>
        <translation>Das Gerät war auf „%1“ eingestellt; der Patient ist als „%2“ erfasst.</translation>
    </message>
    <message>
        <source>The file does not match its checksum: it was damaged or edited.</source>
        <translation>Die Datei passt nicht zu ihrer Prüfsumme: Sie wurde beschädigt oder verändert.</translation>
    </message>
    <message>
        <source>The recording stopped without being closed; what came after is not known.</source>
        <translation>Die Aufzeichnung brach ab, ohne abgeschlossen zu werden; was danach geschah, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>This record was salvaged from a damaged file (%1 problems).</source>
        <translation>Diese Aufzeichnung wurde aus einer beschädigten Datei gerettet (%1 Probleme).</translation>
    </message>
    <message>
        <source>This record was written again from another file.</source>
        <translation>Diese Aufzeichnung wurde aus einer anderen Datei neu geschrieben.</translation>
    </message>
    <message>
        <source>The file had no usable header; one was made up.</source>
        <translation>Die Datei hatte keine brauchbare Kopfzeile; sie wurde ersetzt.</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>serial number %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Return to</source>
        <translation>Rückgabe an</translation>
    </message>
    <message>
        <source>Return to: %1</source>
        <translation>Rückgabe an: %1</translation>
    </message>
    <message>
        <source>The device clock was not set: there are no clock times.</source>
        <translation>Die Geräteuhr war nicht gestellt: Es gibt keine Uhrzeiten.</translation>
    </message>
    <message>
        <source>another clock</source>
        <translation>einer anderen Uhr</translation>
    </message>
    <message>
        <source>Clock compared with %1; the difference of %2 is corrected.</source>
        <translation>Uhr verglichen mit: %1; die Abweichung von %2 ist korrigiert.</translation>
    </message>
    <message>
        <source>Device clock not checked, time zone not known: times are the device&apos;s own.</source>
        <translation>Geräteuhr nicht geprüft, Zeitzone nicht bekannt: Die Uhrzeiten sind die des Geräts.</translation>
    </message>
    <message>
        <source>Device clock not checked: times are the device&apos;s own.</source>
        <translation>Geräteuhr nicht geprüft: Die Uhrzeiten sind die des Geräts.</translation>
    </message>
    <message>
        <source>Hands off: pauses longer than %1 s count in full.</source>
        <translation>Ohne Herzdruckmassage: Pausen über %1 s zählen in voller Länge.</translation>
    </message>
    <message>
        <source>Target %1 to %2 a minute: %3.</source>
        <translation>Ziel %1 bis %2 pro Minute: %3.</translation>
    </message>
    <message>
        <source>Left out of the figures: %1.</source>
        <translation>In den Zahlen nicht enthalten: %1.</translation>
    </message>
    <message>
        <source>Compressions are recorded as stretches, not all of them one by one.</source>
        <translation>Kompressionen sind in Abschnitten aufgezeichnet, nicht alle einzeln.</translation>
    </message>
    <message>
        <source>A ruled line stands for what was not recorded.</source>
        <translation>Eine Linie steht für das, was nicht aufgezeichnet wurde.</translation>
    </message>
    <message>
        <source>Corrections: none.</source>
        <translation>Korrekturen: keine.</translation>
    </message>
    <message>
        <source>file %1</source>
        <translation>Datei %1</translation>
    </message>
    <message>
        <source>printed %1</source>
        <translation>gedruckt %1</translation>
    </message>
    <message>
        <source>This sheet does not replace your own assessment. Local protocol and licensed practice go first.</source>
        <translation>Dieses Blatt ersetzt nicht die eigene Beurteilung. Örtliche Vorgaben und berufliche Befugnisse gehen vor.</translation>
    </message>
    <message>
        <source>SHA-256 of the file: %1</source>
        <translation>SHA-256 der Datei: %1</translation>
    </message>
    <message>
        <source>on %1, off %2</source>
        <translation>ein %1, aus %2</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>ein %1</translation>
    </message>
    <message>
        <source>clock times not known</source>
        <translation>Uhrzeiten nicht bekannt</translation>
    </message>
    <message>
        <source>switching off not recorded</source>
        <translation>Ausschalten nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>in %1 periods, added up</source>
        <translation>in %1 Abschnitten, zusammengezählt</translation>
    </message>
    <message>
        <source>energy not recorded</source>
        <translation>Energie nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>%1 J</source>
        <translation>%1 J</translation>
    </message>
    <message>
        <source>%1 prepared, not given</source>
        <translation>%1 vorbereitet, nicht abgegeben</translation>
    </message>
    <message>
        <source>none until recording broke off</source>
        <translation>keiner bis zum Abbruch der Aufzeichnung</translation>
    </message>
    <message>
        <source>%1 min before printing</source>
        <translation>%1 min vor dem Ausdrucken</translation>
    </message>
    <message>
        <source>Last shock</source>
        <translation>Letzter Schock</translation>
    </message>
    <message>
        <source>after power-on</source>
        <translation>nach dem Einschalten</translation>
    </message>
    <message>
        <source>after the record begins</source>
        <translation>nach Beginn der Aufzeichnung</translation>
    </message>
    <message>
        <source>%1 before the record ends</source>
        <translation>%1 vor Ende der Aufzeichnung</translation>
    </message>
    <message>
        <source>Adult</source>
        <translation>Erwachsene</translation>
    </message>
    <message>
        <source>Child</source>
        <translation>Kind</translation>
    </message>
    <message>
        <source>Infant</source>
        <translation>Säugling</translation>
    </message>
    <message>
        <source>as recorded for the patient</source>
        <translation>wie für den Patienten erfasst</translation>
    </message>
    <message>
        <source>device setting not recorded</source>
        <translation>Geräteeinstellung nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>not changed</source>
        <translation>nicht geändert</translation>
    </message>
    <message>
        <source>changed %1</source>
        <translation>geändert %1</translation>
    </message>
    <message>
        <source>before: %1</source>
        <translation>vorher: %1</translation>
    </message>
    <message>
        <source>patient recorded as %1</source>
        <translation>Patient erfasst als: %1</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Patient</source>
        <translation>Patient</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Adult or child</source>
        <translation>Erwachsen oder Kind</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 Jahre</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>female</source>
        <translation>weiblich</translation>
    </message>
    <message>
        <source>male</source>
        <translation>männlich</translation>
    </message>
    <message>
        <source>%1 (after %2)</source>
        <extracomment>A clock time, and how long after the device was switched on: &quot;first shock 09:13:23 (after 53 s)&quot;.</extracomment>
        <translation>%1 (nach %2)</translation>
    </message>
    <message>
        <source>device on %1</source>
        <translation>Gerät ein %1</translation>
    </message>
    <message>
        <source>electrodes on %1</source>
        <translation>Elektroden aufgeklebt %1</translation>
    </message>
    <message>
        <source>first analysis %1</source>
        <translation>erste Analyse %1</translation>
    </message>
    <message>
        <source>first shock %1</source>
        <translation>erster Schock %1</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Collapse at</source>
        <translation>Kollaps um</translation>
    </message>
    <message>
        <source>Call received at</source>
        <translation>Notruf um</translation>
    </message>
    <message>
        <source>No rhythm analysis in this record</source>
        <translation>Keine Rhythmusanalyse in dieser Aufzeichnung</translation>
    </message>
    <message>
        <source>One analysis: %1</source>
        <translation>Eine Analyse: %1</translation>
    </message>
    <message>
        <source>%1 analyses: %2</source>
        <translation>%1 Analysen: %2</translation>
    </message>
    <message>
        <source>%1 analyses: %2; the last: %3</source>
        <translation>%1 Analysen: %2; die letzte: %3</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Hergang</translation>
    </message>
    <message>
        <source>the collapse was seen by a bystander</source>
        <translation>der Kollaps wurde von Anwesenden beobachtet</translation>
    </message>
    <message>
        <source>the collapse was seen by the crew</source>
        <translation>der Kollaps wurde vom Rettungsdienst beobachtet</translation>
    </message>
    <message>
        <source>nobody saw the collapse</source>
        <translation>niemand hat den Kollaps beobachtet</translation>
    </message>
    <message>
        <source>Seen by</source>
        <translation>Kollaps beobachtet von</translation>
    </message>
    <message>
        <source>bystanders gave compressions</source>
        <translation>Herzdruckmassage durch Ersthelfer</translation>
    </message>
    <message>
        <source>no compressions by bystanders</source>
        <translation>keine Herzdruckmassage durch Ersthelfer</translation>
    </message>
    <message>
        <source>First help by</source>
        <translation>Erste Hilfe durch</translation>
    </message>
    <message>
        <source>longest pause %1, %2</source>
        <translation>längste Pause %1, %2</translation>
    </message>
    <message>
        <source>no pause longer than %1 s</source>
        <translation>keine Pause länger als %1 s</translation>
    </message>
    <message>
        <source>longest pause: not recorded</source>
        <translation>längste Pause: nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>compressions at %1 a minute</source>
        <translation>Kompressionsfrequenz %1 pro Minute</translation>
    </message>
    <message>
        <source>compression rate: not recorded</source>
        <translation>Kompressionsfrequenz: nicht aufgezeichnet</translation>
    </message>
    <message>
        <source> (noted by an observer)</source>
        <translation> (von einem Beobachter vermerkt)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Chest compressions for %1 (not all recorded singly)</source>
        <translation>Herzdruckmassage %1 lang (nicht alle Kompressionen einzeln aufgezeichnet)</translation>
    </message>
    <message>
        <source>Shocks: %1</source>
        <translation>Schocks: %1</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>Medication: %1</source>
        <translation>Medikamente: %1</translation>
    </message>
    <message>
        <source>no device</source>
        <translation>ohne Hilfsmittel</translation>
    </message>
    <message>
        <source>mask</source>
        <translation>Maske</translation>
    </message>
    <message>
        <source>supraglottic airway</source>
        <translation>supraglottische Atemwegshilfe</translation>
    </message>
    <message>
        <source>tube</source>
        <translation>Tubus</translation>
    </message>
    <message>
        <source>Airway: %1, %2</source>
        <translation>Atemweg: %1, %2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Maßnahmen</translation>
    </message>
    <message>
        <source>Medication, anything else given</source>
        <translation>Medikamente, weitere Maßnahmen</translation>
    </message>
    <message>
        <source>Anything else given</source>
        <translation>Weitere Maßnahmen</translation>
    </message>
    <message>
        <source>en</source>
        <extracomment>The code of this language: &quot;de&quot; in German.</extracomment>
        <translation>de</translation>
    </message>
    <message>
        <source>less than 1 %</source>
        <translation>weniger als 1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 min %2 s</source>
        <translation>%1 min %2 s</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <extracomment>How a date is written: weekday, day, month, year (Qt&apos;s letters).</extracomment>
        <translation>dddd, d. MMMM yyyy</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>no</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>one</source>
        <translation>eine</translation>
    </message>
    <message>
        <source>two</source>
        <translation>zwei</translation>
    </message>
    <message>
        <source>three</source>
        <translation>drei</translation>
    </message>
    <message>
        <source>four</source>
        <translation>vier</translation>
    </message>
    <message>
        <source>five</source>
        <translation>fünf</translation>
    </message>
    <message>
        <source>six</source>
        <translation>sechs</translation>
    </message>
    <message>
        <source>seven</source>
        <translation>sieben</translation>
    </message>
    <message>
        <source>eight</source>
        <translation>acht</translation>
    </message>
    <message>
        <source>nine</source>
        <translation>neun</translation>
    </message>
    <message>
        <source>ten</source>
        <translation>zehn</translation>
    </message>
    <message>
        <source>eleven</source>
        <translation>elf</translation>
    </message>
    <message>
        <source>twelve</source>
        <translation>zwölf</translation>
    </message>
    <message>
        <source>no pause</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>presumed cardiac</source>
        <translation>vermutlich kardial</translation>
    </message>
    <message>
        <source>medical</source>
        <translation>innere Erkrankung</translation>
    </message>
    <message>
        <source>trauma</source>
        <translation>Trauma</translation>
    </message>
    <message>
        <source>drug overdose</source>
        <translation>Überdosis</translation>
    </message>
    <message>
        <source>drowning</source>
        <translation>Ertrinken</translation>
    </message>
    <message>
        <source>electrocution</source>
        <translation>Stromunfall</translation>
    </message>
    <message>
        <source>asphyxia</source>
        <translation>Ersticken</translation>
    </message>
    <message>
        <source>cause as recorded: %1</source>
        <translation>Ursache laut Aufzeichnung: %1</translation>
    </message>
    <message>
        <source>One row is two minutes, from %1 on</source>
        <translation>Eine Zeile entspricht zwei Minuten, ab %1</translation>
    </message>
    <message>
        <source>Device setting</source>
        <translation>Geräteeinstellung</translation>
    </message>
    <message>
        <source>returned %1</source>
        <translation>wieder da %1</translation>
    </message>
    <message>
        <source>lost %1</source>
        <translation>verloren %1</translation>
    </message>
    <message>
        <source>no loss recorded after it; the record ends %1</source>
        <translation>danach kein Verlust aufgezeichnet; die Aufzeichnung endet %1</translation>
    </message>
    <message>
        <source>the record ends there</source>
        <translation>die Aufzeichnung endet dort</translation>
    </message>
    <message>
        <source>first compression</source>
        <translation>erste Kompression</translation>
    </message>
    <message>
        <source>electrodes on</source>
        <translation>Elektroden aufgeklebt</translation>
    </message>
    <message>
        <source>first analysis</source>
        <translation>erste Analyse</translation>
    </message>
    <message>
        <source>first shock</source>
        <translation>erster Schock</translation>
    </message>
    <message>
        <source>Hands off the chest</source>
        <translation>Ohne Herzdruckmassage</translation>
    </message>
    <message>
        <source>no time to measure it in</source>
        <translation>kein auswertbarer Zeitraum</translation>
    </message>
    <message>
        <source>Circulation</source>
        <translation>Kreislauf (ROSC)</translation>
    </message>
    <message>
        <source>return not recorded</source>
        <translation>Rückkehr nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>noted by an observer</source>
        <translation>von einem Beobachter vermerkt</translation>
    </message>
    <message>
        <source>efforts ended %1</source>
        <translation>Maßnahmen beendet %1</translation>
    </message>
    <message>
        <source>Efforts ended %1</source>
        <translation>Maßnahmen beendet %1</translation>
    </message>
    <message>
        <source>self-test failed</source>
        <translation>Selbsttest nicht bestanden</translation>
    </message>
    <message>
        <source>The device reported a fault: %1</source>
        <translation>Das Gerät meldete eine Störung: %1</translation>
    </message>
    <message>
        <source>Counted from %1 to %2 (end of the record).</source>
        <translation>Ausgewertet von %1 bis %2 (Ende der Aufzeichnung).</translation>
    </message>
    <message>
        <source>Counted from %1 to %2 (last compression, shock or analysis).</source>
        <translation>Ausgewertet von %1 bis %2 (letzte Kompression, Schock oder Analyse).</translation>
    </message>
    <message>
        <source>Targets: %1.</source>
        <translation>Zielwerte: %1.</translation>
    </message>
    <message>
        <source>rate within %1–%2 a minute: %3</source>
        <translation>Frequenz im Bereich %1–%2 pro Minute: %3</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>To</source>
        <translation>An</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Um</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>Um %1</translation>
    </message>
    <message>
        <source>fill in by pen</source>
        <translation>von Hand eintragen</translation>
    </message>
    <message>
        <source>as told</source>
        <translation>wie berichtet</translation>
    </message>
    <message>
        <source>There is no recording. The large figures are as told by people who were there; nothing was measured.</source>
        <translation>Es gibt keine Aufzeichnung. Die großen Angaben sind so, wie Beteiligte sie berichtet haben; nichts davon ist gemessen.</translation>
    </message>
    <message>
        <source>There is no recording: everything is filled in by pen.</source>
        <translation>Es gibt keine Aufzeichnung: Alles wird von Hand eingetragen.</translation>
    </message>
    <message>
        <source>Cardiac arrest: as told, without a recording</source>
        <translation>Kreislaufstillstand: wie berichtet, ohne Aufzeichnung</translation>
    </message>
    <message>
        <source>Training: as told, without a recording</source>
        <translation>Übung: wie berichtet, ohne Aufzeichnung</translation>
    </message>
    <message>
        <source>Told by</source>
        <translation>Berichtet von</translation>
    </message>
    <message>
        <source>Name, role</source>
        <translation>Name, Funktion</translation>
    </message>
    <message>
        <source>Device switched on at</source>
        <translation>Gerät eingeschaltet um</translation>
    </message>
    <message>
        <source>First shock at</source>
        <translation>Erster Schock um</translation>
    </message>
    <message>
        <source>What the device advised</source>
        <translation>Was das Gerät empfahl</translation>
    </message>
    <message>
        <source>Chest compressions from</source>
        <translation>Herzdruckmassage von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Breaths, airway</source>
        <translation>Beatmung, Atemweg</translation>
    </message>
    <message>
        <source>Medication</source>
        <translation>Medikamente</translation>
    </message>
    <message>
        <source>A ruled line stands for what is not known.</source>
        <translation>Eine Linie steht für das, was nicht bekannt ist.</translation>
    </message>
    <message>
        <source>device on %1 earlier</source>
        <translation>Gerät %1 früher eingeschaltet</translation>
    </message>
    <message>
        <source>on %1 earlier</source>
        <translation>%1 früher ein</translation>
    </message>
    <message>
        <source>cycle %1</source>
        <translation>Zyklus %1</translation>
    </message>
    <message>
        <source>cycle begins</source>
        <translation>Zyklus beginnt</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>No activity recorded</source>
        <translation>Keine Maßnahme aufgezeichnet</translation>
    </message>
    <message>
        <source>at least: the end was not recorded</source>
        <translation>mindestens: Ende nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>may be more: lines were lost</source>
        <translation>evtl. mehr: Zeilen verloren</translation>
    </message>
    <message>
        <source>may be more: recording broke off</source>
        <translation>evtl. mehr: Aufzeichnung brach ab</translation>
    </message>
    <message>
        <source>no shock given</source>
        <translation>kein Schock abgegeben</translation>
    </message>
    <message>
        <source>mean %1 a minute: too fast</source>
        <translation>im Mittel %1 pro Minute: zu schnell</translation>
    </message>
    <message>
        <source>mean %1 a minute: too slow</source>
        <translation>im Mittel %1 pro Minute: zu langsam</translation>
    </message>
    <message>
        <source>rescue</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>drill</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>the last recorded</source>
        <translation>letzter aufgezeichneter</translation>
    </message>
    <message>
        <source>unclear</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>compressions went on until %1</source>
        <translation>danach weiter gedrückt bis %1</translation>
    </message>
    <message>
        <source>shock after it, %1</source>
        <translation>danach Schock um %1</translation>
    </message>
    <message>
        <source>of what was recorded</source>
        <translation>vom Aufgezeichneten</translation>
    </message>
    <message>
        <source>The record goes on for %1 after the device was switched off.</source>
        <translation>Die Aufzeichnung geht nach dem Ausschalten des Geräts noch %1 weiter.</translation>
    </message>
    <message>
        <source>Clock compared with %1: no difference.</source>
        <translation>Uhr verglichen mit: %1; keine Abweichung.</translation>
    </message>
    <message>
        <source>The file does not say whether this was a rescue, a drill or a test: tick what it was.</source>
        <translation>Die Datei sagt nicht, ob dies ein Einsatz, eine Übung oder ein Test war. Bitte ankreuzen:</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>mean depth %1 mm</source>
        <translation>mittlere Tiefe %1 mm</translation>
    </message>
    <message>
        <source>full release after %1</source>
        <translation>volle Entlastung nach %1</translation>
    </message>
    <message>
        <source>%1 chest compressions, hands on the chest for %2</source>
        <translation>%1 Thoraxkompressionen, Herzdruckmassage %2 lang</translation>
    </message>
    <message>
        <source>%1 × %2: first %3, last %4</source>
        <extracomment>A medicine, how many times, the first and the last time.</extracomment>
        <translation>%1 × %2: erste %3, letzte %4</translation>
    </message>
    <message>
        <source>Breaths</source>
        <translation>Beatmungen</translation>
    </message>
    <message>
        <source>Airway</source>
        <translation>Atemweg</translation>
    </message>
    <message>
        <source>%1 of the %2 counted</source>
        <translation>%1 von %2 gewerteter Zeit</translation>
    </message>
    <message>
        <source>to first recorded compression %1</source>
        <translation>erste aufgezeichnete Kompression nach %1</translation>
    </message>
    <message>
        <source>to first shock %1</source>
        <translation>erster Schock nach %1</translation>
    </message>
    <message>
        <source>to return of circulation %1</source>
        <translation>Rückkehr des Kreislaufs nach %1</translation>
    </message>
    <message>
        <source>from collapse: %1</source>
        <translation>ab Kollaps: %1</translation>
    </message>
    <message>
        <source>How are you feeling about it?</source>
        <translation>Wie geht es euch damit?</translation>
    </message>
    <message>
        <source>This record holds no compression, analysis or shock. Open a recording of the rescue or the drill, or talk from memory: the questions below need no figures.</source>
        <translation>Diese Aufzeichnung enthält keine Kompression, keine Analyse und keinen Schock. Öffnen Sie eine Aufzeichnung des Einsatzes oder der Übung, oder sprechen Sie aus der Erinnerung: Die Fragen unten brauchen keine Zahlen.</translation>
    </message>
    <message>
        <source>%1: a shock was prepared and not given. What was happening?</source>
        <translation>%1: Ein Schock war vorbereitet und wurde nicht abgegeben. Was geschah da?</translation>
    </message>
    <message>
        <source>hands on, from the signals; height shows the rate</source>
        <translation>Herzdruckmassage aus den Signalen; Höhe = Frequenz</translation>
    </message>
    <message>
        <source>breath, from the signals</source>
        <translation>Beatmung, aus den Signalen</translation>
    </message>
    <message>
        <source>not counted: no signal shows the hands</source>
        <translation>nicht gezählt: kein Signal zeigt die Hände</translation>
    </message>
    <message>
        <source>%1, from the signals</source>
        <translation>%1, aus den Signalen</translation>
    </message>
    <message>
        <source>Too many for single points: a column&apos;s height is the number of records there, at most %1.</source>
        <translation>Zu viele für einzelne Punkte: Die Höhe einer Säule ist die Zahl der Aufzeichnungen dort, höchstens %1.</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>Days and months on an axis (Qt&apos;s letters).</extracomment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>Rescues, drills and tests are not mixed in one figure. Choose one kind.</source>
        <translation>Einsätze, Übungen und Tests werden nicht in einer Zahl vermischt. Bitte eine Art wählen.</translation>
    </message>
    <message>
        <source>What these shares were counted over is not known here.</source>
        <translation>Woraus diese Anteile gezählt wurden, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>call</source>
        <translation>Notruf</translation>
    </message>
    <message>
        <source>device on</source>
        <translation>Gerät ein</translation>
    </message>
    <message>
        <source>first compressions</source>
        <translation>erste Kompressionen</translation>
    </message>
    <message>
        <source>electrodes attached</source>
        <translation>Elektroden angelegt</translation>
    </message>
    <message>
        <source>The pause before the first shock differs most: %2 in %1, %4 in %3, %5 apart.</source>
        <translation>Am meisten unterscheidet sich die Pause vor dem ersten Schock: %2 in %1, %4 in %3, Abstand %5.</translation>
    </message>
    <message>
        <source>The pause after the first shock differs most: %2 in %1, %4 in %3, %5 apart.</source>
        <translation>Am meisten unterscheidet sich die Pause nach dem ersten Schock: %2 in %1, %4 in %3, Abstand %5.</translation>
    </message>
    <message>
        <source>The longest pause differs most: %2 in %1, %4 in %3, %5 apart.</source>
        <translation>Am meisten unterscheidet sich die längste Pause: %2 in %1, %4 in %3, Abstand %5.</translation>
    </message>
    <message>
        <source>The time from %6 to %7 differs most: %2 in %1, %4 in %3, %5 apart.</source>
        <translation>Am meisten unterscheidet sich die Zeit von „%6“ bis „%7“: %2 in %1, %4 in %3, Abstand %5.</translation>
    </message>
    <message>
        <source>%1: %2 lies above the upper limit: chance alone would rarely reach it. Look at what was special.</source>
        <translation>%1: %2 liegt über der oberen Grenze; durch Zufall allein käme das selten vor. Bitte ansehen, was besonders war.</translation>
    </message>
    <message>
        <source>%1: %2 lies below the lower limit: chance alone would rarely reach it. Look at what was special.</source>
        <translation>%1: %2 liegt unter der unteren Grenze; durch Zufall allein käme das selten vor. Bitte ansehen, was besonders war.</translation>
    </message>
    <message>
        <source>%1 points in a row lie above the line, from %2 to %3; chance explains up to %4. Something lasting may have changed.</source>
        <translation>%1 Punkte in Folge liegen über der Linie, von %2 bis %3; der Zufall erklärt bis zu %4. Es kann sich etwas auf Dauer geändert haben.</translation>
    </message>
    <message>
        <source>%1 points in a row lie below the line, from %2 to %3; chance explains up to %4. Something lasting may have changed.</source>
        <translation>%1 Punkte in Folge liegen unter der Linie, von %2 bis %3; der Zufall erklärt bis zu %4. Es kann sich etwas auf Dauer geändert haben.</translation>
    </message>
    <message>
        <source>From %1 to %2 more points lie high above the line than chance would often put there.</source>
        <translation>Von %1 bis %2 liegen mehr Punkte weit über der Linie, als der Zufall oft bewirkt.</translation>
    </message>
    <message>
        <source>From %1 to %2 more points lie far below the line than chance would often put there.</source>
        <translation>Von %1 bis %2 liegen mehr Punkte weit unter der Linie, als der Zufall oft bewirkt.</translation>
    </message>
    <message>
        <source>Crossings of the line from %1 to %2: %3; chance would make at least %4. Something may have moved slowly or in steps.</source>
        <translation>Wechsel über die Linie von %1 bis %2: %3; der Zufall brächte mindestens %4. Es kann sich etwas langsam oder in Stufen verschoben haben.</translation>
    </message>
    <message>
        <source>%1. Each record counts once.</source>
        <translation>%1. Jede Aufzeichnung zählt einmal.</translation>
    </message>
    <message>
        <source>%1. Each point is the middle of the records of its time.</source>
        <translation>%1. Jeder Punkt ist der mittlere Wert der Aufzeichnungen seines Zeitraums.</translation>
    </message>
    <message>
        <source>%1: share of the records with %2 or more.</source>
        <translation>%1: Anteil der Aufzeichnungen mit %2 oder mehr.</translation>
    </message>
    <message>
        <source>%1: share of the records below %2.</source>
        <translation>%1: Anteil der Aufzeichnungen unter %2.</translation>
    </message>
    <message>
        <source>%1, all that was counted in the records of its time taken together.</source>
        <translation>%1, alles zusammen, was in den Aufzeichnungen des Zeitraums gezählt wurde.</translation>
    </message>
    <message>
        <source>%1 for every %2 of: %3.</source>
        <translation>%1 je %2 von: %3.</translation>
    </message>
    <message>
        <source>Share of the records in which a shock was given.</source>
        <translation>Anteil der Aufzeichnungen, in denen ein Schock abgegeben wurde.</translation>
    </message>
    <message>
        <source>The line is the middle of all points: half lie above it, half below.</source>
        <translation>Die Linie ist die Mitte aller Punkte: Eine Hälfte liegt darüber, eine darunter.</translation>
    </message>
    <message>
        <source>The line is the mean; between the two limits points move by chance alone.</source>
        <translation>Die Linie ist der Mittelwert; zwischen den beiden Grenzen schwanken Punkte durch Zufall allein.</translation>
    </message>
    <message>
        <source>From %1 (%2): %4, before %3. That is more than chance explains; what caused it this picture cannot say.</source>
        <translation>Ab %1 (%2): %4, vorher %3. Das ist mehr, als der Zufall erklärt; woran es lag, kann dieses Bild nicht sagen.</translation>
    </message>
    <message>
        <source>From %1 (%2): %4, before %3. Chance alone could explain that.</source>
        <translation>Ab %1 (%2): %4, vorher %3. Das kann der Zufall allein erklären.</translation>
    </message>
    <message>
        <source>The values lean to one side: a point beyond a limit says less here. The run chart asks nothing of how values are spread.</source>
        <translation>Die Werte sind schief verteilt: Ein Punkt jenseits einer Grenze sagt hier weniger. Das Verlaufsbild mit Mittellinie setzt keine Verteilung voraus.</translation>
    </message>
    <message>
        <source>Records in which it is not recorded: %1.</source>
        <translation>Aufzeichnungen, in denen es nicht aufgezeichnet ist: %1.</translation>
    </message>
    <message>
        <source>Records to which it does not apply: %1.</source>
        <translation>Aufzeichnungen, auf die es nicht zutrifft: %1.</translation>
    </message>
    <message>
        <source>Records without a day, which are in no point: %1.</source>
        <translation>Aufzeichnungen ohne Tag, die in keinem Punkt stehen: %1.</translation>
    </message>
    <message>
        <source>A point beyond the limits</source>
        <translation>Ein Punkt jenseits der Grenzen</translation>
    </message>
    <message>
        <source>A longer run on one side of the line than chance explains</source>
        <translation>Eine längere Folge auf einer Seite der Linie, als der Zufall erklärt</translation>
    </message>
    <message>
        <source>Fewer crossings of the line than chance explains</source>
        <translation>Weniger Wechsel über die Linie, als der Zufall erklärt</translation>
    </message>
    <message>
        <source>Two of three points beyond two deviations on one side</source>
        <translation>Zwei von drei Punkten jenseits von zwei Standardabweichungen auf einer Seite</translation>
    </message>
    <message>
        <source>Four of five points beyond one deviation on one side</source>
        <translation>Vier von fünf Punkten jenseits einer Standardabweichung auf einer Seite</translation>
    </message>
    <message>
        <source>Eight points in a row on one side of the line</source>
        <translation>Acht Punkte in Folge auf einer Seite der Linie</translation>
    </message>
    <message>
        <source>Where none is recorded the middle record has %1, all others have %2: more of a difference than chance explains.</source>
        <translation>Wo nichts angegeben ist, hat die mittlere Aufzeichnung %1, alle anderen haben %2: ein größerer Unterschied, als der Zufall erklärt.</translation>
    </message>
    <message>
        <source>%1: the middle record has %2, elsewhere it has %3: more of a difference than chance explains.</source>
        <translation>%1: Die mittlere Aufzeichnung hat %2, anderswo %3: ein größerer Unterschied, als der Zufall erklärt.</translation>
    </message>
    <message>
        <source>This share alone says little: how long it took and how many shocks were given stand beside it.</source>
        <translation>Dieser Anteil allein sagt wenig: Daneben stehen Dauer und Zahl der Schocks.</translation>
    </message>
    <message>
        <source>No record has a value.</source>
        <translation>Keine Aufzeichnung hat einen Wert.</translation>
    </message>
    <message>
        <source>Too few records for a middle and its interval: %1.</source>
        <translation>Zu wenige Aufzeichnungen für eine Mitte mit Intervall: %1.</translation>
    </message>
    <message>
        <source>Band: middle %1, half of the records between %2 and %3, in a published group of rescues (%4). What others measured, not a target.</source>
        <translation>Band: Mitte %1, die Hälfte der Aufzeichnungen zwischen %2 und %3, in einer veröffentlichten Gruppe von Einsätzen (%4). Was andere gemessen haben, kein Ziel.</translation>
    </message>
    <message>
        <source>From the call to the first shock, stage by stage. A stage whose ends are not recorded is left open.</source>
        <translation>Vom Notruf bis zum ersten Schock, Abschnitt für Abschnitt. Ein Abschnitt, dessen Enden nicht aufgezeichnet sind, bleibt offen.</translation>
    </message>
    <message>
        <source>From device on to the first shock, stage by stage. A stage whose ends are not recorded is left open.</source>
        <translation>Vom Einschalten bis zum ersten Schock, Abschnitt für Abschnitt. Ein Abschnitt, dessen Enden nicht aufgezeichnet sind, bleibt offen.</translation>
    </message>
    <message>
        <source>The whole takes %1 in the middle of %2 records.</source>
        <translation>Das Ganze dauert %1 in der Mitte von %2 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Records that give no such moment: %1.</source>
        <translation>Aufzeichnungen, die keinen solchen Zeitpunkt angeben: %1.</translation>
    </message>
    <message>
        <source>%1: %2, far above what is usual here (middle %3).</source>
        <translation>%1: %2, weit über dem hier Üblichen (Mitte %3).</translation>
    </message>
    <message>
        <source>%1: %2, far below what is usual here (middle %3).</source>
        <translation>%1: %2, weit unter dem hier Üblichen (Mitte %3).</translation>
    </message>
    <message>
        <source>Pause of %1 for which no reason is recorded.</source>
        <translation>Pause von %1, für die kein Grund aufgezeichnet ist.</translation>
    </message>
    <message>
        <source>A shock was advised or charged and not given.</source>
        <translation>Ein Schock wurde empfohlen oder geladen und nicht abgegeben.</translation>
    </message>
    <message>
        <source>The device was set for another age group than the patient&apos;s.</source>
        <translation>Das Gerät war auf eine andere Altersgruppe als die der Patientin oder des Patienten eingestellt.</translation>
    </message>
    <message>
        <source>Nothing in the record shows compressions.</source>
        <translation>Nichts in der Aufzeichnung zeigt Kompressionen.</translation>
    </message>
    <message>
        <source>The limit of the guideline profile in use</source>
        <translation>Der Grenzwert des verwendeten Leitlinienprofils</translation>
    </message>
    <message>
        <source>%1 a minute</source>
        <translation>%1 pro Minute</translation>
    </message>
    <message>
        <source>Too many for single points: the stronger the colour of a spot, the more records lie there, at most %1.</source>
        <translation>Zu viele für einzelne Punkte: Je kräftiger die Farbe einer Stelle, desto mehr Aufzeichnungen liegen dort, höchstens %1.</translation>
    </message>
    <message>
        <source>Share of records with %2 or more: %1</source>
        <translation>Anteil der Aufzeichnungen mit mindestens %2: %1</translation>
    </message>
    <message>
        <source>Share of records below %2: %1</source>
        <translation>Anteil der Aufzeichnungen unter %2: %1</translation>
    </message>
    <message>
        <source>Share of records with a shock</source>
        <translation>Anteil der Aufzeichnungen mit Schock</translation>
    </message>
    <message>
        <source>%1 for every %2</source>
        <translation>%1 je %2</translation>
    </message>
    <message>
        <source>%1 over time (%2)</source>
        <translation>%1 im Verlauf (%2)</translation>
    </message>
    <message>
        <source>No record has a day and a value.</source>
        <translation>Keine Aufzeichnung hat einen Tag und einen Wert.</translation>
    </message>
    <message>
        <source>Fewer than five points: they are drawn without a line.</source>
        <translation>Weniger als fünf Punkte: Sie sind ohne Linie gezeichnet.</translation>
    </message>
    <message>
        <source>one record</source>
        <translation>eine Aufzeichnung</translation>
    </message>
    <message>
        <source>the records of a time</source>
        <translation>die Aufzeichnungen eines Zeitraums</translation>
    </message>
    <message>
        <source>middle of the points</source>
        <translation>Mitte der Punkte</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittelwert</translation>
    </message>
    <message>
        <source>limits of what chance explains</source>
        <translation>Grenzen dessen, was Zufall erklärt</translation>
    </message>
    <message>
        <source>fewer than five records</source>
        <translation>weniger als fünf Aufzeichnungen</translation>
    </message>
    <message>
        <source>more than chance explains</source>
        <translation>mehr, als Zufall erklärt</translation>
    </message>
    <message>
        <source>middle %1</source>
        <translation>Mitte %1</translation>
    </message>
    <message>
        <source>mean %1</source>
        <translation>Mittelwert %1</translation>
    </message>
    <message>
        <source>upper limit %1</source>
        <translation>obere Grenze %1</translation>
    </message>
    <message>
        <source>lower limit %1</source>
        <translation>untere Grenze %1</translation>
    </message>
    <message>
        <source>marked day</source>
        <translation>markierter Tag</translation>
    </message>
    <message>
        <source>%1, per minute</source>
        <translation>%1, pro Minute</translation>
    </message>
    <message>
        <source>%1, millimetres</source>
        <translation>%1, Millimeter</translation>
    </message>
    <message>
        <source>%1, joules</source>
        <translation>%1, Joule</translation>
    </message>
    <message>
        <source>records of no stated kind</source>
        <translation>Aufzeichnungen ohne Angabe der Art</translation>
    </message>
    <message>
        <source>rescues</source>
        <translation>Einsätze</translation>
    </message>
    <message>
        <source>drills</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>Probeläufe</translation>
    </message>
    <message>
        <source>1 record</source>
        <translation>1 Aufzeichnung</translation>
    </message>
    <message>
        <source>%1 records</source>
        <translation>%1 Aufzeichnungen</translation>
    </message>
    <message>
        <source>TEST</source>
        <translation>PROBELAUF</translation>
    </message>
    <message>
        <source>record without a name</source>
        <translation>Aufzeichnung ohne Namen</translation>
    </message>
    <message>
        <source>Quarter %1, %2</source>
        <extracomment>First the quarter (1 to 4), then the year.</extracomment>
        <translation>%1. Quartal %2</translation>
    </message>
    <message>
        <source>Day not recorded</source>
        <translation>Tag nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Site not recorded</source>
        <translation>Ort nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Team not recorded</source>
        <translation>Team nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>All records</source>
        <translation>Alle Aufzeichnungen</translation>
    </message>
    <message>
        <source>%1 by site</source>
        <translation>%1 nach Ort</translation>
    </message>
    <message>
        <source>%1 by team</source>
        <translation>%1 nach Team</translation>
    </message>
    <message>
        <source>%1 by quarter</source>
        <translation>%1 nach Quartal</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <source>%1: points only</source>
        <translation>%1: nur Punkte</translation>
    </message>
    <message>
        <source>%1, middle %2</source>
        <translation>%1, Mitte %2</translation>
    </message>
    <message>
        <source>%1; %2 without value</source>
        <translation>%1; %2 ohne Wert</translation>
    </message>
    <message>
        <source>%1, middle of %2: %3</source>
        <translation>%1, Mitte von %2: %3</translation>
    </message>
    <message>
        <source>%1 – %2.</source>
        <translation>%1 – %2.</translation>
    </message>
    <message>
        <source>middle half, as published</source>
        <translation>mittlere Hälfte, wie veröffentlicht</translation>
    </message>
    <message>
        <source>middle, as published</source>
        <translation>Mitte, wie veröffentlicht</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>No record has a value to draw.</source>
        <translation>Keine Aufzeichnung hat einen Wert zum Zeichnen.</translation>
    </message>
    <message>
        <source>From the call to the first shock (%1)</source>
        <translation>Vom Notruf bis zum ersten Schock (%1)</translation>
    </message>
    <message>
        <source>From device on to the first shock (%1)</source>
        <translation>Vom Einschalten bis zum ersten Schock (%1)</translation>
    </message>
    <message>
        <source>%1  %2 – %3</source>
        <extracomment>A stage: its number, where it begins and where it ends.</extracomment>
        <translation>%1  %2 – %3</translation>
    </message>
    <message>
        <source>no first shock recorded</source>
        <translation>kein erster Schock aufgezeichnet</translation>
    </message>
    <message>
        <source>several stages, moments between not recorded</source>
        <translation>mehrere Abschnitte, Zeitpunkte dazwischen nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Time a stage took</source>
        <translation>Dauer eines Abschnitts</translation>
    </message>
    <message>
        <source>Each record counts once. The middles of the stages do not add up to the middle of the whole: each stands on the records that have it.</source>
        <translation>Jede Aufzeichnung zählt einmal. Die Mitten der Abschnitte ergeben zusammen nicht die Mitte des Ganzen: Jede beruht auf den Aufzeichnungen, die sie haben.</translation>
    </message>
    <message>
        <source>The whole</source>
        <translation>Das Ganze</translation>
    </message>
    <message>
        <source>middle record, and the middle half of all</source>
        <translation>mittlere Aufzeichnung und die mittlere Hälfte aller</translation>
    </message>
    <message>
        <source>No record gives a moment after the begin.</source>
        <translation>Keine Aufzeichnung gibt einen Zeitpunkt nach dem Beginn.</translation>
    </message>
    <message>
        <source>%1, record by record</source>
        <translation>%1, Aufzeichnung für Aufzeichnung</translation>
    </message>
    <message>
        <source>Time since the call</source>
        <translation>Zeit seit dem Notruf</translation>
    </message>
    <message>
        <source>Time since device on</source>
        <translation>Zeit seit dem Einschalten</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Each bar is one record, the latest at the top; its pieces are the stages, one after the other. What is not recorded is left open.</source>
        <translation>Jeder Balken ist eine Aufzeichnung, die neueste oben; seine Stücke sind die Abschnitte nacheinander. Was nicht aufgezeichnet ist, bleibt offen.</translation>
    </message>
    <message>
        <source>The latest %1 of %2 records are shown.</source>
        <translation>Gezeigt sind die neuesten %1 von %2 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Groups that differ as well: %1.</source>
        <translation>Gruppen, die sich ebenfalls unterscheiden: %1.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>How it was made</source>
        <translation>Wie dies entstand</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (Fortsetzung)</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>From one value to another.</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>values: %1</source>
        <extracomment>The values themselves, as there are too few for a middle.</extracomment>
        <translation>Werte: %1</translation>
    </message>
    <message>
        <source>Comparison of records</source>
        <translation>Vergleich von Aufzeichnungen</translation>
    </message>
    <message>
        <source>For review after the event: no medical device, no prognosis, no diagnosis. Local protocol goes first. Not for ranking people.</source>
        <translation>Zur Nachbesprechung: kein Medizinprodukt, keine Prognose, keine Diagnose. Örtliche Vorgaben gehen vor. Nicht zur Rangfolge von Personen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>There is no record to compare.</source>
        <translation>Es gibt keine Aufzeichnung zum Vergleichen.</translation>
    </message>
    <message>
        <source>Records by kind – %1. Kinds are never mixed in one figure.</source>
        <translation>Aufzeichnungen nach Art – %1. Die Arten werden nie in einer Zahl vermischt.</translation>
    </message>
    <message>
        <source>Sources that could not be read and are in no figure: %1.</source>
        <translation>Quellen, die nicht gelesen werden konnten und in keiner Zahl stecken: %1.</translation>
    </message>
    <message>
        <source>Season at a glance: %1</source>
        <translation>Der Zeitraum auf einen Blick: %1</translation>
    </message>
    <message>
        <source>sites: %1</source>
        <translation>Orte: %1</translation>
    </message>
    <message>
        <source>without a day: %1</source>
        <translation>ohne Tag: %1</translation>
    </message>
    <message>
        <source>without evidence of compressions: %1</source>
        <translation>ohne Nachweis von Herzdruckmassagen: %1</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Middle half</source>
        <translation>Mittlere Hälfte</translation>
    </message>
    <message>
        <source>Not recorded</source>
        <translation>Nicht aufgez.</translation>
    </message>
    <message>
        <source>Does not apply</source>
        <translation>Trifft nicht zu</translation>
    </message>
    <message>
        <source>Figures of these records</source>
        <translation>Zahlen dieser Aufzeichnungen</translation>
    </message>
    <message>
        <source>%1 (not recorded: %2, does not apply: %3)</source>
        <translation>%1 (nicht aufgezeichnet: %2, trifft nicht zu: %3)</translation>
    </message>
    <message>
        <source>Without any value: %1.</source>
        <translation>Ganz ohne Wert: %1.</translation>
    </message>
    <message>
        <source>Worth a look</source>
        <translation>Einen Blick wert</translation>
    </message>
    <message>
        <source>No record stands out.</source>
        <translation>Keine Aufzeichnung fällt auf.</translation>
    </message>
    <message>
        <source>Figures of this site</source>
        <translation>Zahlen dieses Ortes</translation>
    </message>
    <message>
        <source>Middle elsewhere</source>
        <translation>Mitte anderswo</translation>
    </message>
    <message>
        <source>No figure here differs from the other sites by more than chance explains; in few records a real difference can go unseen.</source>
        <translation>Keine Zahl hier unterscheidet sich von den anderen Orten stärker, als Zufall erklärt; bei wenigen Aufzeichnungen kann ein wirklicher Unterschied unbemerkt bleiben.</translation>
    </message>
    <message>
        <source>More of a difference to the other sites than chance explains: %1. Why, these figures cannot say.</source>
        <translation>Ein größerer Unterschied zu den anderen Orten, als Zufall erklärt: %1. Warum, können diese Zahlen nicht sagen.</translation>
    </message>
    <message>
        <source>Site %1</source>
        <extracomment>A pseudonym stands in the place.</extracomment>
        <translation>Ort %1</translation>
    </message>
    <message>
        <source>Team %1</source>
        <translation>Team %1</translation>
    </message>
    <message>
        <source>Record %1</source>
        <translation>Aufzeichnung %1</translation>
    </message>
    <message>
        <source>Of so many points chance alone puts about %1 beyond the limits.</source>
        <translation>Von so vielen Punkten bringt der Zufall allein etwa %1 über die Grenzen.</translation>
    </message>
    <message>
        <source>Pause of %1 before a shock; the profile asks for less than %2.</source>
        <translation>Pause von %1 vor einem Schock; das Profil verlangt weniger als %2.</translation>
    </message>
    <message>
        <source>Too few records, here or elsewhere, to hold this site against the others.</source>
        <translation>Zu wenige Aufzeichnungen, hier oder anderswo, um diesen Ort mit den anderen zu vergleichen.</translation>
    </message>
    <message>
        <source>%1: %2, too few for a middle</source>
        <translation>%1: %2, zu wenige für eine Mitte</translation>
    </message>
    <message>
        <source>Worth a look: %1 of %2 that stand out</source>
        <translation>Einen Blick wert: %1 von %2 auffälligen</translation>
    </message>
    <message>
        <source>broke off</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>No group differs from the others by more than chance explains.</source>
        <translation>Keine Gruppe unterscheidet sich von den anderen stärker, als der Zufall erklärt.</translation>
    </message>
    <message>
        <source>In few records a real difference can go unseen.</source>
        <translation>In wenigen Aufzeichnungen kann ein echter Unterschied verborgen bleiben.</translation>
    </message>
    <message>
        <source>Here this is usual and names no record by itself: a pause before a shock that is not below the limit of %1, in %2 of %3 records.</source>
        <translation>Hier ist das üblich und nennt für sich keine Aufzeichnung: eine Pause vor einem Schock, die nicht unter der Grenze von %1 bleibt, in %2 von %3 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Here this is usual and names no record by itself: a long pause without a recorded reason, in %1 of %2 records.</source>
        <translation>Hier ist das üblich und nennt für sich keine Aufzeichnung: eine lange Pause ohne aufgezeichneten Grund, in %1 von %2 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Here this is usual and names no record by itself: a shock that was not given, in %1 of %2 records.</source>
        <translation>Hier ist das üblich und nennt für sich keine Aufzeichnung: ein nicht abgegebener Schock, in %1 von %2 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Here this is usual and names no record by itself: a setting for another age group, in %1 of %2 records.</source>
        <translation>Hier ist das üblich und nennt für sich keine Aufzeichnung: eine Einstellung für eine andere Altersgruppe, in %1 von %2 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Here this is usual and names no record by itself: nothing shows compressions, in %1 of %2 records.</source>
        <translation>Hier ist das üblich und nennt für sich keine Aufzeichnung: Nichts zeigt Kompressionen, in %1 von %2 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Definition: common practice, no source.</source>
        <translation>Definition: übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>Definition: %1 (%2).</source>
        <translation>Definition: %1 (%2).</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Pauses longer than %1 s  ·  %2  ·  to the %3</source>
        <translation>Pausen über %1 s  ·  %2  ·  bis %3</translation>
    </message>
    <message>
        <source>last activity</source>
        <translation>zur letzten Maßnahme</translation>
    </message>
    <message>
        <source>end of the record</source>
        <translation>zum Ende der Aufzeichnung</translation>
    </message>
    <message>
        <source>Figures computed with: %1.</source>
        <translation>Kennzahlen berechnet mit: %1.</translation>
    </message>
    <message>
        <source>%1 – %2: %3, elsewhere %4.</source>
        <translation>%1 – %2: %3, anderswo %4.</translation>
    </message>
    <message>
        <source>Where none is recorded – %1: %2, elsewhere %3.</source>
        <translation>Wo nichts angegeben ist – %1: %2, anderswo %3.</translation>
    </message>
    <message>
        <source>No group differs from the others in any of these figures by more than chance explains. In few records a real difference can go unseen.</source>
        <translation>Keine Gruppe unterscheidet sich in einer dieser Zahlen stärker von den anderen, als es der Zufall erklärt. Bei wenigen Aufzeichnungen kann ein wirklicher Unterschied verborgen bleiben.</translation>
    </message>
    <message>
        <source>The largest part of the time to the first shock lies between %1 and %2: %3, added up over %4 records.</source>
        <translation>Der größte Teil der Zeit bis zum ersten Schock liegt zwischen „%1“ und „%2“: %3, zusammengezählt über %4 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>%1 of it cannot be divided, as moments are not recorded.</source>
        <translation>%1 davon lassen sich nicht aufteilen, weil Zeitpunkte nicht aufgezeichnet sind.</translation>
    </message>
    <message>
        <source>That holds records whose first analysis advised no shock: such time is not lost.</source>
        <translation>Darin sind auch Aufzeichnungen, deren erste Analyse keinen Schock empfahl: Diese Zeit ist nicht verloren.</translation>
    </message>
    <message>
        <source>Typically the longest stage is from %1 to %2: %3 in the middle of %4 records.</source>
        <translation>Gewöhnlich ist der längste Abschnitt der von „%1“ bis „%2“: %3 in der Mitte von %4 Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Typically another stage is the longest, from %1 to %2: %3 in the middle of %4 records. Single records in which the first took very long make the difference.</source>
        <translation>Gewöhnlich ist ein anderer Abschnitt der längste, von „%1“ bis „%2“: %3 in der Mitte von %4 Aufzeichnungen. Den Unterschied machen einzelne Aufzeichnungen, in denen der erste sehr lang war.</translation>
    </message>
    <message>
        <source>Groups: rank test of Mann and Whitney, corrected for the number of groups after Holm and for the number of figures asked at once (all from memory). Over time: longest run and crossings after Anhøj and Olesen, PLoS ONE 2014;9:e113825 (read in a secondary publication).</source>
        <translation>Gruppen: Rangtest nach Mann und Whitney, nach Holm für die Zahl der Gruppen korrigiert, dazu für die Zahl der zugleich gefragten Größen (alles aus dem Gedächtnis). Verlauf: längste Folge und Seitenwechsel nach Anhøj und Olesen, PLoS ONE 2014;9:e113825 (nach einer Sekundärquelle).</translation>
    </message>
    <message>
        <source>Differences between sites beyond chance</source>
        <translation>Unterschiede zwischen Orten, die der Zufall nicht erklärt</translation>
    </message>
    <message>
        <source>Of the stretches between marked days those with fewer than %1 points have no limits and no signals: %2 of %3.</source>
        <translation>Von den Abschnitten zwischen markierten Tagen haben die mit weniger als %1 Punkten keine Grenzen und keine Signale: %2 von %3.</translation>
    </message>
    <message>
        <source>Of the stretches between marked days those with fewer than %1 points have no signals: %2 of %3.</source>
        <translation>Von den Abschnitten zwischen markierten Tagen haben die mit weniger als %1 Punkten keine Signale: %2 von %3.</translation>
    </message>
    <message>
        <source>Limits of fewer than %1 points may still move.</source>
        <translation>Grenzen aus weniger als %1 Punkten können sich noch verschieben.</translation>
    </message>
    <message>
        <source>From %1 (%2): fewer than five values before or after it, so nothing is compared.</source>
        <translation>Ab %1 (%2): davor oder danach weniger als fünf Werte, darum wird nicht verglichen.</translation>
    </message>
    <message>
        <source>Beside that no sign of a change: chance alone explains how the points lie.</source>
        <translation>Sonst kein Zeichen einer Änderung: Wie die Punkte liegen, erklärt allein der Zufall.</translation>
    </message>
    <message>
        <source>No sign of a change: chance alone explains how these points lie.</source>
        <translation>Kein Zeichen einer Änderung: Wie diese Punkte liegen, erklärt allein der Zufall.</translation>
    </message>
    <message>
        <source>With %1 points a real change can go unseen.</source>
        <translation>Bei %1 Punkten kann eine wirkliche Änderung verborgen bleiben.</translation>
    </message>
    <message>
        <source>Points: %1. With fewer than %2 nothing can be said of a change.</source>
        <translation>Punkte: %1. Bei weniger als %2 lässt sich über eine Änderung nichts sagen.</translation>
    </message>
    <message>
        <source>From %1 to %2 (middles): %3 %4, %5 %6.</source>
        <translation>Von %1 bis %2 (Mitten): %3 %4, %5 %6.</translation>
    </message>
    <message>
        <source>too few for a middle</source>
        <translation>zu wenige für eine Mitte</translation>
    </message>
    <message>
        <source>%1: %2, far above what is usual here (middle %3). Beside it: %4 %5, %6 %7.</source>
        <translation>%1: %2, weit über dem hier Üblichen (Mitte %3). Daneben: %4 %5, %6 %7.</translation>
    </message>
    <message>
        <source>%1: %2, far below what is usual here (middle %3). Beside it: %4 %5, %6 %7.</source>
        <translation>%1: %2, weit unter dem hier Üblichen (Mitte %3). Daneben: %4 %5, %6 %7.</translation>
    </message>
    <message>
        <source>From %1 (%2): no point lies after it.</source>
        <translation>Ab %1 (%2): kein Punkt liegt danach.</translation>
    </message>
    <message>
        <source>From %1 (%2): no point lies between it and the next marked day.</source>
        <translation>Ab %1 (%2): kein Punkt liegt zwischen diesem und dem nächsten markierten Tag.</translation>
    </message>
    <message>
        <source>%1 – too few records for a middle: %2.</source>
        <extracomment>Figures, and the groups that have too few records for a middle of them.</extracomment>
        <translation>%1 – zu wenige Aufzeichnungen für eine Mitte: %2.</translation>
    </message>
    <message>
        <source>Too few records to hold one group against another.</source>
        <translation>Zu wenige Aufzeichnungen, um eine Gruppe mit einer anderen zu vergleichen.</translation>
    </message>
    <message>
        <source>Too few records for a middle.</source>
        <translation>Zu wenige Aufzeichnungen für eine Mitte.</translation>
    </message>
    <message>
        <source>Middle of %1: %2 (may really be %3 to %4).</source>
        <translation>Mitte von %1: %2 (kann wirklich %3 bis %4 sein).</translation>
    </message>
    <message>
        <source>Each record counts once.</source>
        <translation>Jede Aufzeichnung zählt einmal.</translation>
    </message>
    <message>
        <source>middle record, and where the middle may really lie (95 %)</source>
        <translation>mittlere Aufzeichnung, und wo die Mitte wirklich liegen kann (95 %)</translation>
    </message>
    <message>
        <source>How to read it: the middle is the value that half of the records lie below. “May really be” stands beside it: within these values the true middle may lie, the fewer records the wider; with fewer than five records only the values themselves are shown. What was not recorded is counted, never taken as zero.</source>
        <translation>So ist es zu lesen: Die Mitte ist der Wert, unter dem die Hälfte der Aufzeichnungen liegt. „Kann wirklich sein“ steht daneben: Innerhalb dieser Werte kann die wahre Mitte liegen, je weniger Aufzeichnungen, desto weiter; bei weniger als fünf Aufzeichnungen stehen nur die Werte selbst da. Was nicht aufgezeichnet wurde, wird gezählt und nie als null genommen.</translation>
    </message>
    <message>
        <source>Middle: median; middle half: quartiles of type 7 (Hyndman and Fan, The American Statistician 1996;50:361-365, from memory). What a middle may really be: with other records of the same kind it would lie elsewhere; a range made like this holds the true middle about 94 times in 100 (bootstrap percentile interval, 95 %, 2000 resamples: Efron, The Annals of Statistics 1979;7:1-26, from memory).</source>
        <translation>Mitte: Median; mittlere Hälfte: Quartile vom Typ 7 (Hyndman und Fan, The American Statistician 1996;50:361-365, aus dem Gedächtnis). Was eine Mitte wirklich sein kann: Mit anderen Aufzeichnungen derselben Art läge sie anderswo; ein so gebildeter Bereich enthält die wahre Mitte etwa 94 von 100 Mal (Bootstrap-Perzentilintervall, 95 %, 2000 Stichproben: Efron, The Annals of Statistics 1979;7:1-26, aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>May really be</source>
        <translation>Kann wirklich sein</translation>
    </message>
    <message>
        <source>Quarters are not held against each other here: whether anything changed is asked over time.</source>
        <translation>Quartale werden hier nicht miteinander verglichen: Ob sich etwas geändert hat, zeigt der Verlauf.</translation>
    </message>
    <message>
        <source>Without identity: sites, teams and records have pseudonyms made with a secret; days are cut to their month. All of the month of a marked day counts as after it.</source>
        <translation>Ohne Identität: Orte, Teams und Aufzeichnungen haben Pseudonyme, die mit einem Geheimnis gebildet sind; von Tagen bleibt nur der Monat. Der ganze Monat eines markierten Tages zählt als danach.</translation>
    </message>
    <message>
        <source>Largest difference: from %7 to %6. It took %2 in %1 and %4 in %3, %5 apart.</source>
        <translation>Größter Unterschied: von „%7“ bis „%6“ vergingen %2 in %1 und %4 in %3, Abstand %5.</translation>
    </message>
    <message>
        <source>Largest difference: %6 and %7. In %1, “%7” came %2 before “%6”; in %3, %4 after it.</source>
        <translation>Größter Unterschied: „%6“ und „%7“. In %1 kam „%7“ %2 vor „%6“, in %3 %4 danach.</translation>
    </message>
    <message>
        <source>Records without figures under these settings, in nothing here: %1.</source>
        <translation>Aufzeichnungen ohne Kennzahlen mit diesen Einstellungen, in nichts hiervon enthalten: %1.</translation>
    </message>
    <message>
        <source>Middle of %1 records: %2 (may really be %3 to %4).</source>
        <translation>Mitte von %1 Aufzeichnungen: %2 (kann wirklich %3 bis %4 sein).</translation>
    </message>
</context>
<context>
    <name>WaveMarks</name>
    <message>
        <source>Hands off from %1 for %2.</source>
        <translation>Ohne Druckmassage ab %1, Dauer %2.</translation>
    </message>
    <message>
        <source>%1 at %2.</source>
        <translation>%1 um %2.</translation>
    </message>
    <message>
        <source>nothing was recorded here</source>
        <translation>hier wurde nichts aufgezeichnet</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>keine Daten</translation>
    </message>
    <message>
        <source>hands off %1</source>
        <translation>ohne Druckmassage %1</translation>
    </message>
</context>
<context>
    <name>WorkingPanel</name>
    <message>
        <source>%1 of %2.</source>
        <translation>%1 von %2.</translation>
    </message>
    <message>
        <source>Evidence: single compressions.</source>
        <translation>Grundlage: einzelne Kompressionen.</translation>
    </message>
    <message>
        <source>Evidence: stretches of compressions.</source>
        <translation>Grundlage: Abschnitte mit Herzdruckmassage.</translation>
    </message>
    <message>
        <source>Evidence: single compressions, and stretches where no single ones were recorded.</source>
        <translation>Grundlage: einzelne Kompressionen, sonst Abschnitte, wo keine einzelnen aufgezeichnet sind.</translation>
    </message>
    <message>
        <source>No compressions were recorded.</source>
        <translation>Es wurden keine Kompressionen aufgezeichnet.</translation>
    </message>
    <message>
        <source>Hands off counts as a pause when longer than %1 s, and then in full.</source>
        <translation>Eine Zeit ohne Herzdruckmassage gilt als Pause, wenn sie länger als %1 s ist, und zählt dann in voller Länge.</translation>
    </message>
    <message>
        <source>%1 of %2 could be used.</source>
        <translation>%1 von %2 waren brauchbar.</translation>
    </message>
    <message>
        <source>%1 were excluded and count in no figure.</source>
        <translation>%1 wurden ausgenommen und gehen in keine Zahl ein.</translation>
    </message>
    <message>
        <source>Targets: %1.</source>
        <translation>Ziele: %1.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window</name>
    <message>
        <source>time without circulation</source>
        <translation>Zeit ohne Kreislauf</translation>
    </message>
    <message>
        <source>pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>taken away: analysis, or advice to shock</source>
        <translation>abgezogen: Analyse oder Empfehlung bis Schock</translation>
    </message>
    <message>
        <source>1 compression</source>
        <translation>1 Kompression</translation>
    </message>
    <message>
        <source>%1 compressions</source>
        <translation>%1 Kompressionen</translation>
    </message>
    <message>
        <source>compressions at %1 a minute</source>
        <translation>Kompressionen mit %1 pro Minute</translation>
    </message>
    <message>
        <source>compressions, rate not recorded</source>
        <translation>Kompressionen, Frequenz nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>breath</source>
        <translation>Beatmung</translation>
    </message>
    <message>
        <source>shock %1</source>
        <translation>Schock %1</translation>
    </message>
    <message>
        <source>shock not given</source>
        <translation>Schock nicht abgegeben</translation>
    </message>
    <message>
        <source>shock, delivery unknown</source>
        <translation>Schock, Abgabe unbekannt</translation>
    </message>
    <message>
        <source>before shock %1</source>
        <translation>vor Schock %1</translation>
    </message>
    <message>
        <source>after shock %1</source>
        <translation>nach Schock %1</translation>
    </message>
    <message>
        <source>around shock %1</source>
        <translation>rund um Schock %1</translation>
    </message>
    <message>
        <source>analysis</source>
        <translation>Analyse</translation>
    </message>
    <message>
        <source>advice to shock %1</source>
        <translation>Empfehlung bis Schock %1</translation>
    </message>
    <message>
        <source>from the one to the other</source>
        <translation>vom einen zum anderen</translation>
    </message>
    <message>
        <source>circulation</source>
        <translation>Kreislauf</translation>
    </message>
    <message>
        <source>device on</source>
        <translation>Gerät ein</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>%1 a minute</source>
        <translation>%1 pro Minute</translation>
    </message>
    <message>
        <source>before the first compressions</source>
        <translation>vor den ersten Kompressionen</translation>
    </message>
    <message>
        <source>after the last compressions</source>
        <translation>nach den letzten Kompressionen</translation>
    </message>
    <message>
        <source>breaths</source>
        <translation>Beatmungen</translation>
    </message>
    <message>
        <source>breaths, longer than the limit</source>
        <translation>Beatmungen, länger als der Grenzwert</translation>
    </message>
    <message>
        <source>no reason recorded</source>
        <translation>kein Grund aufgezeichnet</translation>
    </message>
    <message>
        <source>pause of %1: %2</source>
        <translation>Pause von %1: %2</translation>
    </message>
    <message>
        <source>adult</source>
        <translation>erwachsen</translation>
    </message>
    <message>
        <source>child</source>
        <translation>Kind</translation>
    </message>
    <message>
        <source>infant</source>
        <translation>Säugling</translation>
    </message>
    <message>
        <source>adult or child not recorded</source>
        <translation>ob erwachsen oder Kind, ist nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>rescue or drill not stated</source>
        <translation>ob Einsatz oder Übung, ist nicht angegeben</translation>
    </message>
    <message>
        <source>rescue</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>drill</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>The file could not be read: %1.</source>
        <translation>Die Datei war nicht lesbar: %1.</translation>
    </message>
    <message>
        <source>Nothing was changed on the disk.</source>
        <translation>Auf dem Datenträger wurde nichts verändert.</translation>
    </message>
    <message>
        <source>Check that the file is still there and that you may read it, or copy it to this computer and open the copy.</source>
        <translation>Prüfen Sie, ob die Datei noch da ist und ob Sie sie lesen dürfen, oder kopieren Sie sie auf diesen Rechner und öffnen Sie die Kopie.</translation>
    </message>
    <message>
        <source>The file itself was not changed.</source>
        <translation>Die Datei selbst wurde nicht verändert.</translation>
    </message>
    <message>
        <source>The first line of this file is not the header of an event log, so the program cannot tell when it was recorded and what it is.</source>
        <translation>Die erste Zeile dieser Datei ist nicht die Kopfzeile eines Ereignisprotokolls; das Programm weiß deshalb nicht, wann aufgezeichnet wurde und was es ist.</translation>
    </message>
    <message>
        <source>All lines below the first can probably still be read.</source>
        <translation>Alle Zeilen unter der ersten sind wahrscheinlich noch lesbar.</translation>
    </message>
    <message>
        <source>If you know that it is an event log, open it under a made-up header: choose what it was. Clock times and the patient then stay unknown.</source>
        <translation>Wenn Sie wissen, dass es ein Ereignisprotokoll ist, öffnen Sie es mit einer angenommenen Kopfzeile: Wählen Sie, was es war. Uhrzeiten und Patient bleiben dann unbekannt.</translation>
    </message>
    <message>
        <source>This file is written in version %1 of the event log; this program reads versions 1.0 to 1.x.</source>
        <translation>Diese Datei ist in Version %1 des Ereignisprotokolls geschrieben; dieses Programm liest die Versionen 1.0 bis 1.x.</translation>
    </message>
    <message>
        <source>Install a newer version of Afterbeat, or write the file again in version 1 with the program it came from.</source>
        <translation>Installieren Sie eine neuere Version von Afterbeat, oder schreiben Sie die Datei mit dem Programm, aus dem sie stammt, noch einmal in Version 1.</translation>
    </message>
    <message>
        <source>This file is larger than 2 GiB, more than the event log allows.</source>
        <translation>Diese Datei ist größer als 2 GiB; mehr erlaubt das Ereignisprotokoll nicht.</translation>
    </message>
    <message>
        <source>Split the recording where the device wrote it, and open the parts one by one.</source>
        <translation>Teilen Sie die Aufzeichnung dort, wo das Gerät sie geschrieben hat, und öffnen Sie die Teile einzeln.</translation>
    </message>
    <message>
        <source>This file is empty: there is nothing in it to read.</source>
        <translation>Diese Datei ist leer: Es gibt darin nichts zu lesen.</translation>
    </message>
    <message>
        <source>Fetch the recording from the device once more, before its memory is cleared.</source>
        <translation>Holen Sie die Aufzeichnung noch einmal aus dem Gerät, bevor sein Speicher gelöscht wird.</translation>
    </message>
    <message>
        <source>Afterbeat opens event logs (.resuslog), WFDB records (.hea with its files beside it) and observer&apos;s notes as CSV.</source>
        <translation>Afterbeat öffnet Ereignisprotokolle (.resuslog), WFDB-Aufzeichnungen (.hea mit den Dateien daneben) und Beobachternotizen als CSV.</translation>
    </message>
    <message>
        <source>Reading was stopped.</source>
        <translation>Das Lesen wurde abgebrochen.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>Not a medical device. For review after the event. Local protocol goes first.</source>
        <translation>Kein Medizinprodukt. Zur Auswertung nach dem Einsatz. Örtliche Vorgaben gehen vor.</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Taste</translation>
    </message>
    <message>
        <source>In the rows</source>
        <translation>In den Zeilen</translation>
    </message>
    <message>
        <source>Move the selected stretch</source>
        <translation>Den gewählten Abschnitt verschieben</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>A row up or down</source>
        <translation>Eine Zeile nach oben oder unten</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>Begin or end of the rescue</source>
        <translation>Anfang oder Ende des Einsatzes</translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation>Pos1, Ende</translation>
    </message>
    <message>
        <source>In the waves</source>
        <translation>In den Kurven</translation>
    </message>
    <message>
        <source>Closer or wider around the pointer</source>
        <translation>Um den Zeiger vergrößern oder verkleinern</translation>
    </message>
    <message>
        <source>Earlier or later</source>
        <translation>Früher oder später</translation>
    </message>
    <message>
        <source>drag, or Shift with the wheel</source>
        <translation>ziehen, oder Umschalt mit dem Mausrad</translation>
    </message>
    <message>
        <source>&lt;h2&gt;Afterbeat %1&lt;/h2&gt;&lt;p&gt;Turns what was recorded during a cardiac-arrest rescue or drill into answers: figures with their working, and a handover sheet on one page.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What it is not.&lt;/b&gt; Afterbeat is not a medical device. It is for review after the event, never for use during one. It gives no diagnosis and no prognosis, and it does not replace the crew&apos;s own assessment. Local protocol and licensed practice go first; the targets shown come from the guideline chosen under Record.&lt;/p&gt;&lt;p&gt;Every figure shows its definition, its source, and how sure we are of that source. What was not recorded is said in words.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation>&lt;h2&gt;Afterbeat %1&lt;/h2&gt;&lt;p&gt;Macht aus dem, was bei einer Wiederbelebung oder Übung aufgezeichnet wurde, Antworten: Zahlen mit ihrer Herleitung und ein Übergabeblatt auf einer Seite.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was es nicht ist.&lt;/b&gt; Afterbeat ist kein Medizinprodukt. Es dient der Auswertung nach dem Einsatz, nie der Anwendung während eines Einsatzes. Es stellt keine Diagnose und keine Prognose, und es ersetzt nicht die eigene Beurteilung der Rettungskräfte. Örtliche Vorgaben und berufliche Befugnisse gehen vor; die gezeigten Ziele stammen aus der Leitlinie, die unter Aufzeichnung gewählt ist.&lt;/p&gt;&lt;p&gt;Jede Zahl zeigt ihre Definition, ihre Quelle und wie sicher wir uns dieser Quelle sind. Was nicht aufgezeichnet wurde, steht in Worten da.&lt;/p&gt;&lt;p&gt;Freie Software unter der GNU General Public License, Version 3 oder neuer.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>About Afterbeat</source>
        <translation>Über Afterbeat</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2 J</source>
        <translation>%1, %2 J</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 (incomplete, counts in no figure)</source>
        <translation>%1 (unvollständig, geht in keine Zahl ein)</translation>
    </message>
    <message>
        <source>device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>derived from waves</source>
        <translation>aus den Kurven abgeleitet</translation>
    </message>
    <message>
        <source>%1 compressions, %2 a minute</source>
        <translation>%1 Kompressionen, %2 pro Minute</translation>
    </message>
    <message>
        <source>pause, hands off</source>
        <translation>Pause, ohne Druckmassage</translation>
    </message>
    <message>
        <source>problem: %1</source>
        <translation>Problem: %1</translation>
    </message>
    <message>
        <source>problem</source>
        <translation>Problem</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation>errechnet</translation>
    </message>
    <message>
        <source>reading the file</source>
        <translation>beim Lesen der Datei</translation>
    </message>
    <message>
        <source>Something in this file could not be understood.</source>
        <translation>Etwas in dieser Datei war nicht zu verstehen.</translation>
    </message>
    <message>
        <source>Notes from reading the source</source>
        <translation>Anmerkungen vom Lesen der Quelle</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>on record</source>
        <translation>seit Beginn</translation>
    </message>
    <message>
        <source>a minute</source>
        <translation>pro Minute</translation>
    </message>
    <message>
        <source>minute</source>
        <translation>Minute</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gewertet</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>hands off</source>
        <translation>ohne Druckmassage</translation>
    </message>
    <message>
        <source>compressions</source>
        <translation>Kompressionen</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>in range</source>
        <translation>im Ziel</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>shocks</source>
        <translation>Schocks</translation>
    </message>
    <message>
        <source>minute %1</source>
        <translation>Minute %1</translation>
    </message>
    <message>
        <source>No minute of a rescue is in this record.</source>
        <translation>In dieser Aufzeichnung ist keine Minute eines Einsatzes.</translation>
    </message>
    <message>
        <source>cycle</source>
        <translation>Zyklus</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>share hands off</source>
        <translation>Anteil ohne Druckmassage</translation>
    </message>
    <message>
        <source>between</source>
        <translation>zwischen</translation>
    </message>
    <message>
        <source>two analyses</source>
        <translation>zwei Analysen</translation>
    </message>
    <message>
        <source>begin and first analysis</source>
        <translation>Beginn und erster Analyse</translation>
    </message>
    <message>
        <source>last analysis and end</source>
        <translation>letzter Analyse und Ende</translation>
    </message>
    <message>
        <source>cycle %1</source>
        <translation>Zyklus %1</translation>
    </message>
    <message>
        <source>No analysis is in this record, so it has no cycles.</source>
        <translation>In dieser Aufzeichnung ist keine Analyse, deshalb hat sie keine Zyklen.</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>against the limit</source>
        <translation>Vergleich mit Grenzwert</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>kein Grenzwert</translation>
    </message>
    <message>
        <source>longer</source>
        <translation>länger</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>No compressions are recorded, so pauses are not known.</source>
        <translation>Es sind keine Kompressionen aufgezeichnet, deshalb sind Pausen nicht bekannt.</translation>
    </message>
    <message>
        <source>No hands-off stretch is longer than %1 s.</source>
        <translation>Kein Abschnitt ohne Druckmassage ist länger als %1 s.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>shock</source>
        <translation>Schock</translation>
    </message>
    <message>
        <source>given</source>
        <translation>abgegeben</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>J</source>
        <translation>J</translation>
    </message>
    <message>
        <source>hands off before</source>
        <translation>Pause davor</translation>
    </message>
    <message>
        <source>hands off after</source>
        <translation>Pause danach</translation>
    </message>
    <message>
        <source>before and after</source>
        <translation>davor und danach</translation>
    </message>
    <message>
        <source>advice to shock</source>
        <translation>Empfehlung bis Schock</translation>
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
        <source>No shock is in this record.</source>
        <translation>In dieser Aufzeichnung ist kein Schock.</translation>
    </message>
    <message>
        <source>Shocks: not recorded.</source>
        <translation>Schocks: nicht aufgezeichnet.</translation>
    </message>
    <message>
        <source>unknown type</source>
        <translation>unbekannte Art</translation>
    </message>
    <message>
        <source>device on, power</source>
        <translation>Gerät ein, Einschalten</translation>
    </message>
    <message>
        <source>device off, power</source>
        <translation>Gerät aus, Ausschalten</translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>Elektroden</translation>
    </message>
    <message>
        <source>patient setting</source>
        <translation>Geräteeinstellung</translation>
    </message>
    <message>
        <source>charge</source>
        <translation>Laden</translation>
    </message>
    <message>
        <source>compressions, hands on</source>
        <translation>Kompressionen, Druckmassage</translation>
    </message>
    <message>
        <source>breath, ventilation</source>
        <translation>Beatmung</translation>
    </message>
    <message>
        <source>airway</source>
        <translation>Atemweg</translation>
    </message>
    <message>
        <source>rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message>
        <source>rescuer change</source>
        <translation>Helferwechsel</translation>
    </message>
    <message>
        <source>medication</source>
        <translation>Medikament</translation>
    </message>
    <message>
        <source>milestone</source>
        <translation>Zeitpunkt</translation>
    </message>
    <message>
        <source>not counted, excluded</source>
        <translation>nicht gewertet, ausgenommen</translation>
    </message>
    <message>
        <source>prompt</source>
        <translation>Ansage</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>electrode pads</source>
        <translation>Klebeelektroden</translation>
    </message>
    <message>
        <source>self-test</source>
        <translation>Selbsttest</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Störung</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>samples</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>unreadable line</source>
        <translation>unlesbare Zeile</translation>
    </message>
    <message>
        <source>The recording stopped without being closed.</source>
        <translation>Die Aufzeichnung brach ab, ohne abgeschlossen zu werden.</translation>
    </message>
    <message>
        <source>This line could not be read: %1.</source>
        <translation>Diese Zeile war nicht lesbar: %1.</translation>
    </message>
    <message>
        <source>This line repeats line %1 exactly.</source>
        <translation>Diese Zeile wiederholt Zeile %1 genau.</translation>
    </message>
    <message>
        <source>This “%1” ends before it begins.</source>
        <translation>Dieser Eintrag „%1“ endet, bevor er beginnt.</translation>
    </message>
    <message>
        <source>This line is %1 s earlier than the line above it.</source>
        <translation>Diese Zeile ist %1 s früher als die Zeile darüber.</translation>
    </message>
    <message>
        <source>The value of “%1” is too large or not a number (%2).</source>
        <translation>Der Wert von „%1“ ist zu groß oder keine Zahl (%2).</translation>
    </message>
    <message>
        <source>“%1” has a value that this program does not understand (%2).</source>
        <translation>„%1“ hat einen Wert, den dieses Programm nicht versteht (%2).</translation>
    </message>
    <message>
        <source>This “%1” lacks “%2”.</source>
        <translation>In diesem Eintrag „%1“ fehlt „%2“.</translation>
    </message>
    <message>
        <source>It is not recorded whether this shock was delivered.</source>
        <translation>Es ist nicht aufgezeichnet, ob dieser Schock abgegeben wurde.</translation>
    </message>
    <message>
        <source>This “%1” began, and its end was never recorded.</source>
        <translation>Dieser Eintrag „%1“ begann; sein Ende wurde nie aufgezeichnet.</translation>
    </message>
    <message>
        <source>These samples belong to channel “%1”, which the first line does not describe.</source>
        <translation>Diese Messwerte gehören zum Kanal „%1“, den die erste Zeile nicht beschreibt.</translation>
    </message>
    <message>
        <source>These samples of channel “%1” could not be used: %2.</source>
        <translation>Diese Messwerte des Kanals „%1“ waren nicht brauchbar: %2.</translation>
    </message>
    <message>
        <source>Samples of channel “%1” overlap earlier ones by %2 s.</source>
        <translation>Messwerte des Kanals „%1“ überlappen frühere um %2 s.</translation>
    </message>
    <message>
        <source>Channel “%1” has a gap of %2 s before these samples.</source>
        <translation>Kanal „%1“ hat vor diesen Messwerten eine Lücke von %2 s.</translation>
    </message>
    <message>
        <source>These samples of channel “%1” span %2 s, longer than the 5 s a line should hold.</source>
        <translation>Diese Messwerte des Kanals „%1“ reichen über %2 s; eine Zeile sollte höchstens 5 s enthalten.</translation>
    </message>
    <message>
        <source>Channel “%1” is stored in a way this program does not know (%2).</source>
        <translation>Kanal „%1“ ist in einer Form gespeichert, die dieses Programm nicht kennt (%2).</translation>
    </message>
    <message>
        <source>Channel “%1” cannot be used: %2.</source>
        <translation>Kanal „%1“ ist nicht brauchbar: %2.</translation>
    </message>
    <message>
        <source>The file does not match its checksum.</source>
        <translation>Die Datei passt nicht zu ihrer Prüfsumme.</translation>
    </message>
    <message>
        <source>The closing line speaks of %1 lines, but %2 were found.</source>
        <translation>Die Schlusszeile spricht von %1 Zeilen, gefunden wurden %2.</translation>
    </message>
    <message>
        <source>Here another recording begins in the same file.</source>
        <translation>Hier beginnt in derselben Datei eine weitere Aufzeichnung.</translation>
    </message>
    <message>
        <source>The first line of the recording lacks “%1”.</source>
        <translation>In der ersten Zeile der Aufzeichnung fehlt „%1“.</translation>
    </message>
    <message>
        <source>In the first line of the recording, “%1” has a value that this program does not understand (%2).</source>
        <translation>In der ersten Zeile der Aufzeichnung hat „%1“ einen Wert, den dieses Programm nicht versteht (%2).</translation>
    </message>
    <message>
        <source>The file has no usable first line.</source>
        <translation>Die Datei hat keine brauchbare erste Zeile.</translation>
    </message>
    <message>
        <source>%1 chest compressions were detected twice.</source>
        <translation>%1 Thoraxkompressionen wurden doppelt erkannt.</translation>
    </message>
    <message>
        <source>The record speaks of the patient as “%1”, but the device was set to “%2”.</source>
        <translation>Die Aufzeichnung nennt den Patienten „%1“, das Gerät stand aber auf „%2“.</translation>
    </message>
    <message>
        <source>Lines that could not be read</source>
        <translation>Unlesbare Zeilen</translation>
    </message>
    <message>
        <source>What these lines said is lost; all other lines are used. Counts may be too low.</source>
        <translation>Was in diesen Zeilen stand, ist verloren; alle anderen werden verwendet. Anzahlen können zu niedrig sein.</translation>
    </message>
    <message>
        <source>Repeated lines</source>
        <translation>Wiederholte Zeilen</translation>
    </message>
    <message>
        <source>The repetition was dropped, so that nothing is counted twice.</source>
        <translation>Die Wiederholung wurde weggelassen, damit nichts doppelt zählt.</translation>
    </message>
    <message>
        <source>Ends before it begins</source>
        <translation>Endet vor dem Beginn</translation>
    </message>
    <message>
        <source>The entry is kept and counts in no figure.</source>
        <translation>Der Eintrag bleibt erhalten und geht in keine Zahl ein.</translation>
    </message>
    <message>
        <source>Lines out of order</source>
        <translation>Zeilen in falscher Reihenfolge</translation>
    </message>
    <message>
        <source>They were sorted into their place by time; nothing is lost.</source>
        <translation>Sie wurden nach der Zeit eingeordnet; nichts ist verloren.</translation>
    </message>
    <message>
        <source>Values that could not be used</source>
        <translation>Unbrauchbare Werte</translation>
    </message>
    <message>
        <source>The value is kept as it was written and treated as missing.</source>
        <translation>Der Wert bleibt, wie er geschrieben wurde, und gilt als fehlend.</translation>
    </message>
    <message>
        <source>Incomplete entries</source>
        <translation>Unvollständige Einträge</translation>
    </message>
    <message>
        <source>Shocks that may or may not have been given</source>
        <translation>Schocks, bei denen die Abgabe offen ist</translation>
    </message>
    <message>
        <source>They are counted neither as given nor as not given. Ask the crew.</source>
        <translation>Sie zählen weder als abgegeben noch als nicht abgegeben. Fragen Sie das Team.</translation>
    </message>
    <message>
        <source>Ends that were not recorded</source>
        <translation>Nicht aufgezeichnete Enden</translation>
    </message>
    <message>
        <source>The entry is taken to last until the last time in the file.</source>
        <translation>Der Eintrag gilt bis zum letzten Zeitpunkt der Datei.</translation>
    </message>
    <message>
        <source>Samples that are lost</source>
        <translation>Verlorene Messwerte</translation>
    </message>
    <message>
        <source>This part of the waves is missing and shown as a gap. Entries are not affected.</source>
        <translation>Dieser Teil der Kurven fehlt und erscheint als Lücke. Einträge sind nicht betroffen.</translation>
    </message>
    <message>
        <source>Samples recorded twice</source>
        <translation>Doppelt aufgezeichnete Messwerte</translation>
    </message>
    <message>
        <source>The earlier samples are kept.</source>
        <translation>Die früheren Messwerte bleiben.</translation>
    </message>
    <message>
        <source>Gaps in the waves</source>
        <translation>Lücken in den Kurven</translation>
    </message>
    <message>
        <source>The waves are drawn with the gap. Entries are not affected.</source>
        <translation>Die Kurven werden mit der Lücke gezeichnet. Einträge sind nicht betroffen.</translation>
    </message>
    <message>
        <source>Long lines of samples</source>
        <translation>Lange Zeilen mit Messwerten</translation>
    </message>
    <message>
        <source>They are used; nothing is lost.</source>
        <translation>Sie werden verwendet; nichts ist verloren.</translation>
    </message>
    <message>
        <source>Channels that cannot be drawn</source>
        <translation>Kanäle, die sich nicht zeichnen lassen</translation>
    </message>
    <message>
        <source>The samples are kept in the file and not shown.</source>
        <translation>Die Messwerte bleiben in der Datei und werden nicht gezeigt.</translation>
    </message>
    <message>
        <source>Channels that cannot be used</source>
        <translation>Unbrauchbare Kanäle</translation>
    </message>
    <message>
        <source>Their samples are lost.</source>
        <translation>Ihre Messwerte sind verloren.</translation>
    </message>
    <message>
        <source>The recording was not closed</source>
        <translation>Die Aufzeichnung wurde nicht abgeschlossen</translation>
    </message>
    <message>
        <source>All complete lines are kept. What happened after the last of them is not known.</source>
        <translation>Alle vollständigen Zeilen bleiben. Was nach der letzten geschah, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The checksum differs</source>
        <translation>Die Prüfsumme weicht ab</translation>
    </message>
    <message>
        <source>The file was damaged or edited after it was closed. Everything that can be read is shown.</source>
        <translation>Die Datei wurde nach dem Abschluss beschädigt oder verändert. Alles Lesbare wird gezeigt.</translation>
    </message>
    <message>
        <source>The number of lines differs</source>
        <translation>Die Zahl der Zeilen weicht ab</translation>
    </message>
    <message>
        <source>Lines are missing or were added. What is there is shown.</source>
        <translation>Zeilen fehlen oder kamen hinzu. Was da ist, wird gezeigt.</translation>
    </message>
    <message>
        <source>Several recordings in one file</source>
        <translation>Mehrere Aufzeichnungen in einer Datei</translation>
    </message>
    <message>
        <source>Each is read as a record of its own; see the menu Record.</source>
        <translation>Jede wird für sich gelesen; siehe Menü Aufzeichnung.</translation>
    </message>
    <message>
        <source>The first line is incomplete</source>
        <translation>Die erste Zeile ist unvollständig</translation>
    </message>
    <message>
        <source>What it lacks is treated as not recorded.</source>
        <translation>Was ihr fehlt, gilt als nicht aufgezeichnet.</translation>
    </message>
    <message>
        <source>No first line</source>
        <translation>Keine erste Zeile</translation>
    </message>
    <message>
        <source>The file was read under a made-up one; date, place and device are unknown.</source>
        <translation>Die Datei wurde mit einer angenommenen Kopfzeile gelesen; Datum, Ort und Gerät sind unbekannt.</translation>
    </message>
    <message>
        <source>Compressions detected twice</source>
        <translation>Doppelt erkannte Kompressionen</translation>
    </message>
    <message>
        <source>Each is counted once.</source>
        <translation>Jede zählt einmal.</translation>
    </message>
    <message>
        <source>Patient and device setting differ</source>
        <translation>Patient und Geräteeinstellung passen nicht zusammen</translation>
    </message>
    <message>
        <source>Targets follow the record&apos;s patient. Check which of the two is right.</source>
        <translation>Die Ziele richten sich nach dem Patienten der Aufzeichnung. Prüfen Sie, welche der beiden Angaben stimmt.</translation>
    </message>
    <message>
        <source>electrodes attached</source>
        <translation>Elektroden aufgeklebt</translation>
    </message>
    <message>
        <source>the collapse</source>
        <translation>der Kollaps</translation>
    </message>
    <message>
        <source>the call</source>
        <translation>der Notruf</translation>
    </message>
    <message>
        <source>the device&apos;s arrival</source>
        <translation>das Eintreffen des Geräts</translation>
    </message>
    <message>
        <source>the first hands on</source>
        <translation>der Beginn der Herzdruckmassage</translation>
    </message>
    <message>
        <source>an analysis</source>
        <translation>eine Analyse</translation>
    </message>
    <message>
        <source>a shock that was given</source>
        <translation>ein abgegebener Schock</translation>
    </message>
    <message>
        <source>the return of circulation</source>
        <translation>die Rückkehr des Kreislaufs</translation>
    </message>
    <message>
        <source>not in the record: %1</source>
        <translation>nicht in der Aufzeichnung: %1</translation>
    </message>
    <message>
        <source>no two compressions close enough for a rate</source>
        <translation>keine zwei Kompressionen nah genug beieinander für eine Frequenz</translation>
    </message>
    <message>
        <source>the guideline has no range for the rate</source>
        <translation>die Leitlinie nennt keinen Bereich für die Frequenz</translation>
    </message>
    <message>
        <source>no compressions were recorded</source>
        <translation>keine Kompressionen aufgezeichnet</translation>
    </message>
    <message>
        <source>the recorded stretches carry no rate</source>
        <translation>für die aufgezeichneten Abschnitte ist keine Frequenz angegeben</translation>
    </message>
    <message>
        <source>no compression that counts carries a depth</source>
        <translation>zu keiner gewerteten Kompression ist die Tiefe angegeben</translation>
    </message>
    <message>
        <source>no compression carries a depth</source>
        <translation>zu keiner Kompression ist die Tiefe angegeben</translation>
    </message>
    <message>
        <source>the guideline has no range for this patient</source>
        <translation>die Leitlinie nennt keinen Bereich für diesen Patienten</translation>
    </message>
    <message>
        <source>no compression says whether the chest was released</source>
        <translation>bei keiner Kompression ist vermerkt, ob der Brustkorb entlastet wurde</translation>
    </message>
    <message>
        <source>no single compressions were recorded</source>
        <translation>keine einzelnen Kompressionen aufgezeichnet</translation>
    </message>
    <message>
        <source>none was noted, and no defibrillator&apos;s own recording is part of this record</source>
        <translation>keine vermerkt, und die Aufzeichnung enthält keine eigenen Daten eines Defibrillators</translation>
    </message>
    <message>
        <source>no shock was given</source>
        <translation>kein Schock abgegeben</translation>
    </message>
    <message>
        <source>not every shock that was given carries its energy</source>
        <translation>nicht zu jedem abgegebenen Schock ist die Energie angegeben</translation>
    </message>
    <message>
        <source>no shock followed an analysis that advised it</source>
        <translation>kein Schock folgte auf eine Analyse, die ihn empfahl</translation>
    </message>
    <message>
        <source>no shock was given with hands on around it</source>
        <translation>kein Schock mit Druckmassage davor und danach</translation>
    </message>
    <message>
        <source>no time counts in this record</source>
        <translation>diese Aufzeichnung enthält keine gewertete Zeit</translation>
    </message>
    <message>
        <source>no breath was recorded</source>
        <translation>keine Beatmung aufgezeichnet</translation>
    </message>
    <message>
        <source>circulation returned when the window had ended</source>
        <translation>der Kreislauf kehrte nach dem Ende des Zeitraums zurück</translation>
    </message>
    <message>
        <source>no return of circulation was noted</source>
        <translation>keine Rückkehr des Kreislaufs vermerkt</translation>
    </message>
    <message>
        <source>switching on was not recorded</source>
        <translation>das Einschalten wurde nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>the guideline has no limit for pauses</source>
        <translation>die Leitlinie nennt keinen Grenzwert für Pausen</translation>
    </message>
    <message>
        <source>nothing in the record begins a rescue</source>
        <translation>die Aufzeichnung enthält nichts, womit ein Einsatz beginnt</translation>
    </message>
    <message>
        <source>known for %1 of %2 s</source>
        <translation>bekannt für %1 von %2 s</translation>
    </message>
    <message>
        <source>known for %1 of %2 compressions</source>
        <translation>bekannt für %1 von %2 Kompressionen</translation>
    </message>
    <message>
        <source>pause: longer than %1 s</source>
        <translation>Pause: länger als %1 s</translation>
    </message>
    <message>
        <source>%1 excluded</source>
        <translation>%1 ausgenommen</translation>
    </message>
    <message>
        <source>target at most %1</source>
        <translation>Ziel höchstens %1</translation>
    </message>
    <message>
        <source>target at least %1</source>
        <translation>Ziel mindestens %1</translation>
    </message>
    <message>
        <source>target %1–%2 a minute</source>
        <translation>Ziel %1–%2 pro Minute</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>target %1–%2 mm</source>
        <translation>Ziel %1–%2 mm</translation>
    </message>
    <message>
        <source>target about %1 a minute with an advanced airway</source>
        <translation>Ziel etwa %1 pro Minute bei gesichertem Atemweg</translation>
    </message>
    <message>
        <source>target %1–%2 a minute with an advanced airway</source>
        <translation>Ziel %1–%2 pro Minute bei gesichertem Atemweg</translation>
    </message>
    <message>
        <source>target at most %1 s</source>
        <translation>Ziel höchstens %1 s</translation>
    </message>
    <message>
        <source>target none longer than %1 s</source>
        <translation>Ziel keine länger als %1 s</translation>
    </message>
    <message>
        <source>target below %1 s</source>
        <translation>Ziel unter %1 s</translation>
    </message>
    <message>
        <source>released: leaning at most %1 mm</source>
        <translation>entlastet: Aufstützen höchstens %1 mm</translation>
    </message>
    <message>
        <source>within the target</source>
        <translation>im Ziel</translation>
    </message>
    <message>
        <source>below the target</source>
        <translation>unter dem Ziel</translation>
    </message>
    <message>
        <source>beyond the target</source>
        <translation>über dem Ziel</translation>
    </message>
    <message>
        <source>no signal</source>
        <translation>kein Signal</translation>
    </message>
    <message>
        <source>no signal at one end</source>
        <translation>an einem Ende kein Signal</translation>
    </message>
    <message>
        <source>Show the pause, shock or moment</source>
        <translation>Die Pause, den Schock oder den Moment zeigen</translation>
    </message>
    <message>
        <source>click</source>
        <translation>klicken</translation>
    </message>
    <message>
        <source>Show a stretch in the waves</source>
        <translation>Einen Abschnitt in den Kurven zeigen</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>ziehen</translation>
    </message>
    <message>
        <source>Say what was at a moment</source>
        <translation>Sagen, was in einem Moment war</translation>
    </message>
    <message>
        <source>hold the pointer still</source>
        <translation>Mauszeiger stillhalten</translation>
    </message>
    <message>
        <source>Go to the waves</source>
        <translation>Zu den Kurven gehen</translation>
    </message>
    <message>
        <source>double click, or Enter</source>
        <translation>Doppelklick oder Eingabe</translation>
    </message>
    <message>
        <source>Read the values at a moment</source>
        <translation>Die Werte in einem Moment ablesen</translation>
    </message>
    <message>
        <source>move the pointer</source>
        <translation>Mauszeiger bewegen</translation>
    </message>
    <message>
        <source>wheel, or pinch with two fingers</source>
        <translation>Mausrad, oder zwei Finger spreizen</translation>
    </message>
    <message>
        <source>Measure between two moments</source>
        <translation>Zwischen zwei Momenten messen</translation>
    </message>
    <message>
        <source>Shift while dragging</source>
        <translation>ziehen mit Umschalt</translation>
    </message>
    <message>
        <source>Move the cursor</source>
        <translation>Die Zeitmarke bewegen</translation>
    </message>
    <message>
        <source>Begin a ruler, and stretch it</source>
        <translation>Ein Messlineal anlegen und aufziehen</translation>
    </message>
    <message>
        <source>Shift+Left, Shift+Right</source>
        <translation>Umschalt+Links, Umschalt+Rechts</translation>
    </message>
    <message>
        <source>Choose the track that the ruler measures</source>
        <translation>Die Spur wählen, in der das Messlineal misst</translation>
    </message>
    <message>
        <source>Take the ruler and the cursor away</source>
        <translation>Messlineal und Zeitmarke entfernen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>In the lists</source>
        <translation>In den Listen</translation>
    </message>
    <message>
        <source>Show the chosen line in the rows and waves</source>
        <translation>Den gewählten Eintrag in Zeilen und Kurven zeigen</translation>
    </message>
    <message>
        <source>click, or Enter</source>
        <translation>Klick oder Eingabe</translation>
    </message>
    <message>
        <source>Open or close a heading of problems</source>
        <translation>Eine Überschrift der Probleme auf- oder zuklappen</translation>
    </message>
    <message>
        <source>Right, Left, or double click</source>
        <translation>Rechts, Links oder Doppelklick</translation>
    </message>
    <message>
        <source>From the words typed to the lines found</source>
        <translation>Von den getippten Worten zu den gefundenen Einträgen</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>In the debrief</source>
        <translation>In der Nachbesprechung</translation>
    </message>
    <message>
        <source>Go to the moment of a line</source>
        <translation>Zum Moment eines Satzes gehen</translation>
    </message>
    <message>
        <source>From line to line</source>
        <translation>Von Satz zu Satz</translation>
    </message>
    <message>
        <source>Keep or drop what was reworded</source>
        <translation>Neue Worte behalten oder verwerfen</translation>
    </message>
    <message>
        <source>Enter, Escape</source>
        <translation>Eingabe, Esc</translation>
    </message>
    <message>
        <source>In its rows: go to a moment</source>
        <translation>In ihren Zeilen: zu einem Moment gehen</translation>
    </message>
    <message>
        <source>click, or the arrows, Home, End</source>
        <translation>Klick, oder Pfeile, Pos1, Ende</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>This recording broke off at %1. What came after is not in it: there may be more shocks and more time than is shown.</source>
        <translation>Diese Aufzeichnung brach ab: %1. Was danach kam, steht nicht darin; es können mehr Schocks und mehr Zeit sein, als hier steht.</translation>
    </message>
    <message>
        <source>One line of this recording could not be read: counts may be too low and pauses shorter than shown.</source>
        <translation>Eine Zeile dieser Aufzeichnung war nicht lesbar: Anzahlen können zu niedrig sein und Pausen kürzer als gezeigt.</translation>
    </message>
    <message>
        <source>%1 lines of this recording could not be read: counts may be too low and pauses shorter than shown.</source>
        <translation>%1 Zeilen dieser Aufzeichnung waren nicht lesbar: Anzahlen können zu niedrig sein und Pausen kürzer als gezeigt.</translation>
    </message>
    <message>
        <source>This is not a recording that Afterbeat knows.</source>
        <translation>Dies ist keine Aufzeichnung, die Afterbeat kennt.</translation>
    </message>
    <message>
        <source>Stretch the ruler</source>
        <translation>Das Messlineal verlängern oder kürzen</translation>
    </message>
    <message>
        <source>drag an end</source>
        <translation>ein Ende ziehen</translation>
    </message>
    <message>
        <source>Type to search: shock, ruler, F4 …</source>
        <translation>Zum Suchen tippen: Schock, Lineal, F4 …</translation>
    </message>
    <message>
        <source>Search the keys</source>
        <translation>Tasten durchsuchen</translation>
    </message>
    <message>
        <source>Leakage of the fibrillation filter</source>
        <translation>Rest des Flimmerfilters (Leckage)</translation>
    </message>
    <message>
        <source>Slow repeating beats</source>
        <translation>Langsam wiederkehrende Schläge</translation>
    </message>
    <message>
        <source>Likeness of the beats</source>
        <translation>Ähnlichkeit der Schläge</translation>
    </message>
    <message>
        <source>Large samples between 13 and 16.5 Hz</source>
        <translation>Große Werte zwischen 13 und 16,5 Hz</translation>
    </message>
    <message>
        <source>Evenness of the amplitude</source>
        <translation>Gleichmäßigkeit der Amplitude</translation>
    </message>
    <message>
        <source>Threshold crossing sample count</source>
        <translation>Werte über der Schwelle (TCSC)</translation>
    </message>
    <message>
        <source>Complexity</source>
        <translation>Komplexität</translation>
    </message>
    <message>
        <source>Lowest autocorrelation</source>
        <translation>Kleinste Autokorrelation</translation>
    </message>
    <message>
        <source>Median to 98th percentile of the slope</source>
        <translation>Median zu 98. Perzentil der Steigung</translation>
    </message>
    <message>
        <source>Slow repeating waves</source>
        <translation>Langsam wiederkehrende Wellen</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>keines von beiden</translation>
    </message>
    <message>
        <source>shockable</source>
        <translation>defibrillierbar</translation>
    </message>
    <message>
        <source>not shockable</source>
        <translation>nicht defibrillierbar</translation>
    </message>
    <message>
        <source>%1 a minute (correlation %2)</source>
        <translation>%1 pro Minute (Korrelation %2)</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nicht</translation>
    </message>
    <message>
        <source>Amplitude in a second, peak to peak: %1 mV (median), %2 to %3 mV.</source>
        <translation>Amplitude in einer Sekunde, Spitze zu Spitze: %1 mV (Median), %2 bis %3 mV.</translation>
    </message>
    <message>
        <source>The ECG repeats itself: %1; its slopes: %2.</source>
        <translation>Das EKG wiederholt sich: %1; seine Steigungen: %2.</translation>
    </message>
    <message>
        <source>Peaks taken for beats: %1, at %2 a minute.</source>
        <translation>Als Schläge genommene Spitzen: %1, bei %2 pro Minute.</translation>
    </message>
    <message>
        <source>Log-odds of shockable: %1 of this window alone, %2 with its neighbours; nearer to 0 than %3 is no decision.</source>
        <translation>Logarithmierte Chance für defibrillierbar: %1 für dieses Fenster allein, %2 mit seinen Nachbarn; näher an 0 als %3 ist keine Entscheidung.</translation>
    </message>
    <message>
        <source>Decision: %1.</source>
        <translation>Entscheidung: %1.</translation>
    </message>
    <message>
        <source>Reason: %1.</source>
        <translation>Grund: %1.</translation>
    </message>
    <message>
        <source>partly from the signals</source>
        <translation>zum Teil aus den Signalen</translation>
    </message>
    <message>
        <source>from the signals</source>
        <translation>aus den Signalen</translation>
    </message>
    <message>
        <source>%1, %2 judged</source>
        <translation>%1, %2 beurteilt</translation>
    </message>
    <message>
        <source>From the signals: %1 of %2 breaths were derived, not recorded.</source>
        <translation>Aus den Signalen: %1 von %2 Beatmungen wurden abgeleitet, nicht aufgezeichnet.</translation>
    </message>
    <message>
        <source>From the signals: %1 of %2 compressions were derived, not recorded.</source>
        <translation>Aus den Signalen: %1 von %2 Kompressionen wurden abgeleitet, nicht aufgezeichnet.</translation>
    </message>
    <message>
        <source>Channels: %1; %2 of the recording could be judged.</source>
        <translation>Kanäle: %1; %2 der Aufzeichnung waren zu beurteilen.</translation>
    </message>
    <message>
        <source>Their quality is %1 of 1 in the mean.</source>
        <translation>Ihre Güte ist im Mittel %1 von 1.</translation>
    </message>
    <message>
        <source>chest compressions</source>
        <translation>Herzdruckmassage</translation>
    </message>
    <message>
        <source>saturation</source>
        <translation>Übersteuerung</translation>
    </message>
    <message>
        <source>noise</source>
        <translation>Rauschen</translation>
    </message>
    <message>
        <source>pacing spikes</source>
        <translation>Schrittmacher-Spitzen</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>zu kurz</translation>
    </message>
    <message>
        <source>between fibrillation and asystole</source>
        <translation>zwischen Flimmern und Asystolie</translation>
    </message>
    <message>
        <source>neither clearly shockable nor clearly not</source>
        <translation>weder klar defibrillierbar noch klar nicht</translation>
    </message>
    <message>
        <source>too few samples a second</source>
        <translation>zu wenige Werte pro Sekunde</translation>
    </message>
    <message>
        <source>device: %1</source>
        <translation>Gerät: %1</translation>
    </message>
    <message>
        <source>noted: %1</source>
        <translation>notiert: %1</translation>
    </message>
    <message>
        <source>hint: %1</source>
        <translation>Hinweis: %1</translation>
    </message>
    <message>
        <source>organised</source>
        <translation>organisiert</translation>
    </message>
    <message>
        <source>asystole</source>
        <translation>Asystolie</translation>
    </message>
    <message>
        <source>unclear</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>wide and fast, %1 a minute</source>
        <translation>breit und schnell, %1 pro Minute</translation>
    </message>
    <message>
        <source>A reviewer&apos;s aid, not a diagnosis</source>
        <translation>Hilfe zur Durchsicht, keine Diagnose</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>%1 bis %2, %3</translation>
    </message>
    <message>
        <source>derived from the ECG, quality %1 of 1</source>
        <translation>aus dem EKG abgeleitet, Güte %1 von 1</translation>
    </message>
    <message>
        <source>derived from the ECG</source>
        <translation>aus dem EKG abgeleitet</translation>
    </message>
    <message>
        <source>no ECG was recorded here</source>
        <translation>hier wurde kein EKG aufgezeichnet</translation>
    </message>
    <message>
        <source>missing samples</source>
        <translation>fehlende Werte</translation>
    </message>
    <message>
        <source>electrodes off</source>
        <translation>Elektroden gelöst</translation>
    </message>
    <message>
        <source>no fibrillation</source>
        <translation>kein Flimmern</translation>
    </message>
    <message>
        <source>rhythm unclear</source>
        <translation>Rhythmus unklar</translation>
    </message>
    <message>
        <source>not told: %1</source>
        <translation>nicht angegeben: %1</translation>
    </message>
    <message>
        <source>coarse fibrillation</source>
        <translation>grobes Flimmern</translation>
    </message>
    <message>
        <source>fine fibrillation</source>
        <translation>feines Flimmern</translation>
    </message>
    <message>
        <source>fibrillation ended within 5 s</source>
        <translation>Flimmern binnen 5 s beendet</translation>
    </message>
    <message>
        <source>fibrillation went on</source>
        <translation>Flimmern dauerte an</translation>
    </message>
    <message>
        <source>not known: %1</source>
        <translation>nicht bekannt: %1</translation>
    </message>
    <message>
        <source>nothing clear</source>
        <translation>nichts Klares</translation>
    </message>
    <message>
        <source>fibrillation again after %1</source>
        <translation>erneutes Flimmern nach %1</translation>
    </message>
    <message>
        <source>Before the shock: %1</source>
        <translation>Vor dem Schock: %1</translation>
    </message>
    <message>
        <source>amplitude %1 mV, dominant frequency %2 Hz, AMSA %3 mV·Hz</source>
        <translation>Amplitude %1 mV, vorherrschende Frequenz %2 Hz, AMSA %3 mV·Hz</translation>
    </message>
    <message>
        <source>After it: %1</source>
        <translation>Danach: %1</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Dann: %1</translation>
    </message>
    <message>
        <source>hint: before</source>
        <translation>Hinweis: vorher</translation>
    </message>
    <message>
        <source>amplitude</source>
        <translation>Amplitude</translation>
    </message>
    <message>
        <source>mV</source>
        <translation>mV</translation>
    </message>
    <message>
        <source>dominant</source>
        <translation>vorherrschend</translation>
    </message>
    <message>
        <source>Hz</source>
        <translation>Hz</translation>
    </message>
    <message>
        <source>AMSA</source>
        <translation>AMSA</translation>
    </message>
    <message>
        <source>mV·Hz</source>
        <translation>mV·Hz</translation>
    </message>
    <message>
        <source>hint: then</source>
        <translation>Hinweis: dann</translation>
    </message>
    <message>
        <source>hands on, derived from the signals</source>
        <translation>Herzdruckmassage, aus den Signalen abgeleitet</translation>
    </message>
    <message>
        <source>rhythm hints are being made …</source>
        <translation>Rhythmushinweise werden gemacht …</translation>
    </message>
    <message>
        <source>Click for its working</source>
        <translation>Klick zeigt die Herleitung</translation>
    </message>
    <message>
        <source>Open the working of a rhythm hint</source>
        <translation>Herleitung eines Rhythmushinweises öffnen</translation>
    </message>
    <message>
        <source>click the hint</source>
        <translation>Klick auf den Hinweis</translation>
    </message>
    <message>
        <source>Say what a rhythm or shock is known by</source>
        <translation>Sagen, woran Rhythmus oder Schock zu erkennen ist</translation>
    </message>
    <message>
        <source>Nearly all of it is below %1 mV: asystole, whatever its shape.</source>
        <translation>Fast alles liegt unter %1 mV: Asystolie, gleich welcher Form.</translation>
    </message>
    <message>
        <source>Clear beats, alike and far apart, stand out of a flat line: organised.</source>
        <translation>Klare Schläge, einander ähnlich und weit auseinander, ragen aus einer flachen Linie: organisiert.</translation>
    </message>
    <message>
        <source>Wide, but it repeats itself at less than %1 a minute, or its beats are alike and slow: a rule counts this window as organised.</source>
        <translation>Breit, wiederholt sich aber mit weniger als %1 pro Minute, oder die Schläge sind ähnlich und langsam: Eine Regel zählt dieses Fenster als organisiert.</translation>
    </message>
    <message>
        <source>Regular and slow, beats alike and slow, or narrow complexes: a rule counts this window as organised.</source>
        <translation>Regelmäßig und langsam, ähnliche langsame Schläge oder schmale Komplexe: Eine Regel zählt dieses Fenster als organisiert.</translation>
    </message>
    <message>
        <source>Its amplitude lies between %1 and %2 mV.</source>
        <translation>Die Amplitude liegt zwischen %1 und %2 mV.</translation>
    </message>
    <message>
        <source>Waves that rest for a second are not called shockable.</source>
        <translation>Wellen, die eine Sekunde lang ruhen, werden nicht defibrillierbar genannt.</translation>
    </message>
    <message>
        <source>A doubt, %1, does not change the decision.</source>
        <translation>Ein Zweifel (%1) ändert die Entscheidung nicht.</translation>
    </message>
    <message>
        <source>ended within 5 s</source>
        <translation>binnen 5 s beendet</translation>
    </message>
    <message>
        <source>went on</source>
        <translation>dauerte an</translation>
    </message>
    <message>
        <source>fibrillation</source>
        <translation>Flimmern</translation>
    </message>
    <message>
        <source>Derived from the ECG. %1.</source>
        <translation>Aus dem EKG abgeleitet. %1.</translation>
    </message>
    <message>
        <source>The signals tell nothing about shocks here: no shock was given, no ECG shows it, or no hints are made from the signals.</source>
        <translation>Die Signale sagen hier nichts über Schocks: Es wurde keiner abgegeben, kein EKG zeigt ihn, oder aus den Signalen werden keine Hinweise gemacht.</translation>
    </message>
    <message>
        <source>place not recorded</source>
        <translation>Ort nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>day not recorded</source>
        <translation>Tag nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>DRILL</source>
        <translation>ÜBUNG</translation>
    </message>
    <message>
        <source>SYNTHETIC</source>
        <translation>SYNTHETISCH</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 Prozentpunkte</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>%1 after</source>
        <translation>%1 danach</translation>
    </message>
    <message>
        <source>%1 before</source>
        <translation>%1 davor</translation>
    </message>
    <message>
        <source>collapse</source>
        <translation>Kollaps</translation>
    </message>
    <message>
        <source>call</source>
        <translation>Notruf</translation>
    </message>
    <message>
        <source>device arrived</source>
        <translation>Gerät eingetroffen</translation>
    </message>
    <message>
        <source>first analysis</source>
        <translation>erste Analyse</translation>
    </message>
    <message>
        <source>first shock</source>
        <translation>erster Schock</translation>
    </message>
    <message>
        <source>circulation returned</source>
        <translation>Kreislauf wieder da</translation>
    </message>
    <message>
        <source>A chart is written as .svg, .png or .pdf: choose one of these endings.</source>
        <translation>Ein Diagramm wird als .svg, .png oder .pdf geschrieben: Wählen Sie eine dieser Endungen.</translation>
    </message>
    <message>
        <source>The chart was not written: %1.</source>
        <translation>Das Diagramm wurde nicht geschrieben: %1.</translation>
    </message>
    <message>
        <source>nothing begins a resuscitation here</source>
        <translation>hier beginnt keine Reanimation</translation>
    </message>
    <message>
        <source>compressions not recorded</source>
        <translation>Kompressionen nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>pauses: %1</source>
        <translation>Pausen: %1</translation>
    </message>
    <message>
        <source>shocks: %1</source>
        <translation>Schocks: %1</translation>
    </message>
    <message>
        <source>A report is written as .pdf, .html or .csv: choose one of these endings.</source>
        <translation>Ein Bericht wird als .pdf, .html oder .csv geschrieben: Wählen Sie eine dieser Endungen.</translation>
    </message>
    <message>
        <source>The report was not written: %1.</source>
        <translation>Der Bericht wurde nicht geschrieben: %1.</translation>
    </message>
    <message>
        <source>first compressions</source>
        <translation>erste Kompressionen</translation>
    </message>
    <message>
        <source>from signals where the device recorded nothing</source>
        <translation>aus Signalen, wo das Gerät nichts aufzeichnete</translation>
    </message>
    <message>
        <source>never from signals</source>
        <translation>nie aus Signalen</translation>
    </message>
    <message>
        <source>always from signals</source>
        <translation>immer aus Signalen</translation>
    </message>
    <message>
        <source>definitions %1 → %2</source>
        <translation>Definitionen %1 → %2</translation>
    </message>
    <message>
        <source>pauses longer than %1 s</source>
        <translation>Pausen länger als %1 s</translation>
    </message>
    <message>
        <source>to the last activity</source>
        <translation>bis zur letzten Maßnahme</translation>
    </message>
    <message>
        <source>to the end of the record</source>
        <translation>bis zum Ende der Aufzeichnung</translation>
    </message>
    <message>
        <source>targets of the guideline</source>
        <translation>Zielwerte der Leitlinie</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennzahl</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>What was changed</source>
        <translation>Was geändert wurde</translation>
    </message>
    <message>
        <source>All figures of this archive were made in one way, with one version of the definitions: there is nothing to set against them.</source>
        <translation>Alle Kennzahlen dieses Archivs sind auf eine Art gebildet, nach einer Version der Definitionen: Es gibt nichts zu vergleichen.</translation>
    </message>
    <message>
        <source>The archive holds figures made in more than one way, and they are all the same.</source>
        <translation>Das Archiv enthält Kennzahlen, die auf mehr als eine Art gebildet sind; alle stimmen überein.</translation>
    </message>
    <message>
        <source>The archive holds figures made in more than one way. Figures that changed: %1.</source>
        <translation>Das Archiv enthält Kennzahlen, die auf mehr als eine Art gebildet sind. Geänderte Kennzahlen: %1.</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>A day in short: &quot;5 Mar 2026&quot;.</extracomment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>pause before the first shock, %1</source>
        <translation>Pause vor dem ersten Schock, %1</translation>
    </message>
    <message>
        <source>pause after the first shock, %1</source>
        <translation>Pause nach dem ersten Schock, %1</translation>
    </message>
    <message>
        <source>longest pause, %1</source>
        <translation>längste Pause, %1</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>small letter within a sentence</comment>
        <extracomment>Whether a figure&apos;s title begins in a small letter within a sentence: &quot;yes&quot; or &quot;no&quot;.</extracomment>
        <translation>no</translation>
    </message>
    <message>
        <source>%1 against %2 – %3; %4.</source>
        <translation>%1 gegenüber %2 – %3; %4.</translation>
    </message>
    <message>
        <source>better: %1</source>
        <translation>besser: %1</translation>
    </message>
    <message>
        <source>better in %2 figures, most of all %1</source>
        <translation>besser bei %2 Kennzahlen, am meisten %1</translation>
    </message>
    <message>
        <source>better: no figure</source>
        <translation>besser: keine Kennzahl</translation>
    </message>
    <message>
        <source>worse: %1</source>
        <translation>schlechter: %1</translation>
    </message>
    <message>
        <source>worse in %2 figures, most of all %1</source>
        <translation>schlechter bei %2 Kennzahlen, am meisten %1</translation>
    </message>
    <message>
        <source>worse: no figure</source>
        <translation>schlechter: keine Kennzahl</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::Appearance</name>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>Larger type</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>Smaller type</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Normal type</source>
        <translation>Normale Schrift</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::BesideCanvas</name>
    <message>
        <source>Rows of the records under each other</source>
        <translation>Zeilen der Aufzeichnungen untereinander</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::BesideEmpty</name>
    <message>
        <source>Nothing lies side by side yet</source>
        <translation>Noch liegt nichts nebeneinander</translation>
    </message>
    <message>
        <source>In Records, mark two to eight lines (Ctrl or Shift and a click, or Shift and the arrows), then press Shift+C.</source>
        <translation>Unter „Aufzeichnungen“ zwei bis acht Zeilen markieren (Strg oder Umschalt und ein Klick, oder Umschalt und die Pfeile), dann Umschalt+C drücken.</translation>
    </message>
    <message>
        <source>Lay the two latest of the same kind and site side by side</source>
        <translation>Die zwei neuesten derselben Art und desselben Orts nebeneinanderlegen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::BesideLegend</name>
    <message>
        <source>What the shapes mean</source>
        <translation>Was die Formen bedeuten</translation>
    </message>
    <message>
        <source>what differs most</source>
        <translation>größter Unterschied</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::BesideName</name>
    <message>
        <source>Open record %1</source>
        <translation>Aufzeichnung %1 öffnen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::BesidePicture</name>
    <message>
        <source>not begun</source>
        <translation>noch nicht begonnen</translation>
    </message>
    <message>
        <source>nothing more</source>
        <translation>nichts mehr</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>From %1 to %2 after</source>
        <translation>Von „%1“ bis %2 danach</translation>
    </message>
    <message>
        <source>From %1 before %2 on</source>
        <translation>Ab %1 vor „%2“</translation>
    </message>
    <message>
        <source>%1 to %2 after %3</source>
        <translation>%1 bis %2 nach „%3“</translation>
    </message>
    <message>
        <source>%1 to %2 before %3</source>
        <translation>%1 bis %2 vor „%3“</translation>
    </message>
    <message>
        <source>%1: nothing here</source>
        <translation>%1: hier nichts</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 before %3</source>
        <translation>%1 %2 vor „%3“</translation>
    </message>
    <message>
        <source>%1 %2 after %3</source>
        <translation>%1 %2 nach „%3“</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 before %2 to %3 after</source>
        <translation>%1 vor „%2“ bis %3 danach</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::BesideTable</name>
    <message>
        <source>Moments, from %1</source>
        <translation>Zeitpunkte, gezählt ab „%1“</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Figures, and how they differ from the first</source>
        <translation>Kennzahlen und ihr Abstand zur ersten</translation>
    </message>
    <message>
        <source>%1, record %2: %3</source>
        <translation>%1, Aufzeichnung %2: %3</translation>
    </message>
    <message>
        <source>moment or figure</source>
        <translation>Zeitpunkt oder Kennzahl</translation>
    </message>
    <message>
        <source>record %1</source>
        <translation>Aufzeichnung %1</translation>
    </message>
    <message>
        <source>nearly the same</source>
        <translation>fast gleich</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::BesideView</name>
    <message>
        <source>Moment at which the records are aligned</source>
        <translation>Zeitpunkt, an dem die Aufzeichnungen ausgerichtet sind</translation>
    </message>
    <message>
        <source>Length of a row</source>
        <translation>Länge einer Zeile</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Aligned at</source>
        <translation>Ausgerichtet an</translation>
    </message>
    <message>
        <source>A row is</source>
        <translation>Eine Zeile ist</translation>
    </message>
    <message>
        <source>Moments and figures of the records</source>
        <translation>Zeitpunkte und Kennzahlen der Aufzeichnungen</translation>
    </message>
    <message>
        <source>Align at the next &amp;moment</source>
        <translation>Am nächsten &amp;Zeitpunkt ausrichten</translation>
    </message>
    <message>
        <source>Next &amp;length of a row</source>
        <translation>Nächste &amp;Länge einer Zeile</translation>
    </message>
    <message>
        <source>Not in the rows, as %1 is not recorded: %2.</source>
        <translation>Nicht in den Zeilen, weil „%1“ nicht aufgezeichnet ist: %2.</translation>
    </message>
    <message>
        <source>No moment and no pause that two of them record differs.</source>
        <translation>Kein Zeitpunkt und keine Pause, die zwei von ihnen aufgezeichnet haben, unterscheidet sich.</translation>
    </message>
    <message>
        <source>These records are of different kinds: what differs may come from that.</source>
        <translation>Diese Aufzeichnungen sind von verschiedener Art: Unterschiede können daher kommen.</translation>
    </message>
    <message>
        <source>Eight records at most stand side by side. Left out: %1.</source>
        <translation>Höchstens acht Aufzeichnungen stehen nebeneinander. Weggelassen: %1.</translation>
    </message>
    <message>
        <source>%1 is not among them. %2</source>
        <translation>%1 ist nicht dabei. %2</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ChartCanvas</name>
    <message>
        <source>Chart</source>
        <translation>Diagramm</translation>
    </message>
    <message>
        <source>%1 records</source>
        <translation>%1 Aufzeichnungen</translation>
    </message>
    <message>
        <source>and %1 more here</source>
        <translation>und %1 weitere hier</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ChartView</name>
    <message>
        <source>Kinds are never mixed in one chart; not in this one: %1.</source>
        <translation>Arten werden in einem Diagramm nie vermischt; nicht in diesem: %1.</translation>
    </message>
    <message>
        <source>Kind of records</source>
        <translation>Art der Aufzeichnungen</translation>
    </message>
    <message>
        <source>There is no record to draw.</source>
        <translation>Es gibt keine Aufzeichnung zu zeichnen.</translation>
    </message>
    <message>
        <source>A click on a point opens its record, as Enter does after the arrow keys.</source>
        <translation>Ein Klick auf einen Punkt öffnet seine Aufzeichnung, ebenso die Eingabetaste nach den Pfeiltasten.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::CompareBusy</name>
    <message>
        <source>Reading</source>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>How much was read</source>
        <translation>Wie viel gelesen wurde</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::CompareEmpty</name>
    <message>
        <source>Compare</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Lay two to eight recordings side by side: two drills of one evening, or the same team a year apart. Choose their files, or mark them in the list of a folder.</source>
        <translation>Legen Sie zwei bis acht Aufzeichnungen nebeneinander: zwei Übungen eines Abends oder dasselbe Team im Abstand eines Jahres. Wählen Sie die Dateien, oder markieren Sie sie in der Liste eines Ordners.</translation>
    </message>
    <message>
        <source>Archives opened lately:</source>
        <translation>Zuletzt geöffnete Archive:</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>Or look at a whole season of them: where time is lost, whether it is getting better, and which record to look at next. Files are only read, never changed; an archive keeps their figures for the next time. Recordings and folders can also be dropped here.</source>
        <translation>Oder sehen Sie eine ganze Saison an: wo Zeit verloren geht, ob es besser wird, und welche Aufzeichnung Sie als Nächstes ansehen sollten. Dateien werden nur gelesen, nie geändert; ein Archiv bewahrt ihre Kennzahlen für das nächste Mal. Aufzeichnungen und Ordner können Sie auch hierher ziehen.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ComparePage</name>
    <message>
        <source>&amp;Compare many</source>
        <translation>&amp;Viele vergleichen</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Lay &amp;side by side…</source>
        <translation>&amp;Nebeneinander legen…</translation>
    </message>
    <message>
        <source>Beside the recording &amp;before this one</source>
        <translation>Neben die Aufzeichnung &amp;davor legen</translation>
    </message>
    <message>
        <source>Back to the record</source>
        <translation>Zurück zur Aufzeichnung</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Show what lies si&amp;de by side</source>
        <translation>Zeigen, was neb&amp;eneinander liegt</translation>
    </message>
    <message>
        <source>%1 of %2 recordings were read</source>
        <translation>%1 von %2 Aufzeichnungen gelesen</translation>
    </message>
    <message>
        <source>%1 records side by side</source>
        <translation>%1 Aufzeichnungen nebeneinander</translation>
    </message>
    <message>
        <source>Sa&amp;ve the chart…</source>
        <translation>Diagramm &amp;speichern…</translation>
    </message>
    <message>
        <source>Copy the chart as te&amp;xt</source>
        <translation>Diagramm als Te&amp;xt kopieren</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>Show the &amp;records</source>
        <translation>Die &amp;Aufzeichnungen zeigen</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Show the s&amp;pread of a figure</source>
        <translation>Die Streu&amp;ung einer Kennzahl zeigen</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>Im Verlauf</translation>
    </message>
    <message>
        <source>Show a figure over &amp;time</source>
        <translation>Eine Kennzahl im &amp;Verlauf zeigen</translation>
    </message>
    <message>
        <source>Where the time goes</source>
        <translation>Wo die Zeit bleibt</translation>
    </message>
    <message>
        <source>Show &amp;where the time goes</source>
        <translation>Zeigen, &amp;wo die Zeit bleibt</translation>
    </message>
    <message>
        <source>Worth a look</source>
        <translation>Einen Blick wert</translation>
    </message>
    <message>
        <source>Show what is worth a &amp;look</source>
        <translation>Zeigen, was sehens&amp;wert ist</translation>
    </message>
    <message>
        <source>Looking for recordings, or asking the archive…</source>
        <translation>Aufzeichnungen werden gesucht, oder das Archiv wird gefragt…</translation>
    </message>
    <message>
        <source>Taken in: %1 new, %2 changed, %3 known already, %4 that could not be read.</source>
        <translation>Aufgenommen: %1 neu, %2 geändert, %3 schon bekannt, %4 nicht lesbar.</translation>
    </message>
    <message>
        <source>It was stopped: what was taken in stays, the next time goes on from there.</source>
        <translation>Es wurde angehalten: Was aufgenommen ist, bleibt; das nächste Mal geht es von dort weiter.</translation>
    </message>
    <message>
        <source>The file of this record is not where it was: %1. Its figures are in the archive all the same.</source>
        <translation>Die Datei dieser Aufzeichnung ist nicht mehr dort, wo sie war: %1. Ihre Kennzahlen sind trotzdem im Archiv.</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Diagramm speichern</translation>
    </message>
    <message>
        <source>Pictures (*.svg *.png *.pdf)</source>
        <translation>Bilder (*.svg *.png *.pdf)</translation>
    </message>
    <message>
        <source>The chart was copied as text.</source>
        <translation>Das Diagramm wurde als Text kopiert.</translation>
    </message>
    <message>
        <source>Eight records at most stand side by side, and %1 are marked.</source>
        <translation>Höchstens acht Aufzeichnungen stehen nebeneinander, markiert sind %1.</translation>
    </message>
    <message>
        <source>No two records here have the same kind and site, a known day and their files at hand. Mark two in Records instead.</source>
        <translation>Keine zwei Aufzeichnungen hier haben dieselbe Art, denselben Ort, einen bekannten Tag und ihre Dateien zur Hand. Stattdessen zwei unter „Aufzeichnungen“ markieren.</translation>
    </message>
    <message>
        <source>nothing side by side yet</source>
        <translation>noch nichts nebeneinander</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::CompareWays</name>
    <message>
        <source>Two to eight recordings to lay side by side</source>
        <translation>Zwei bis acht Aufzeichnungen zum Nebeneinanderlegen</translation>
    </message>
    <message>
        <source>Recordings (*.resuslog *.hea *.csv *.tsv *.txt);;All files (*)</source>
        <translation>Aufzeichnungen (*.resuslog *.hea *.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose two to eight recordings to lay side by side.</source>
        <translation>Wählen Sie zwei bis acht Aufzeichnungen zum Nebeneinanderlegen.</translation>
    </message>
    <message>
        <source>This folder holds no earlier recording of the same kind and place.</source>
        <translation>In diesem Ordner ist keine frühere Aufzeichnung derselben Art vom selben Ort.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::DebriefPage</name>
    <message>
        <source>What to talk about</source>
        <translation>Worüber zu sprechen ist</translation>
    </message>
    <message>
        <source>&amp;Strike the line for this showing</source>
        <translation>Den Satz für dieses Mal &amp;streichen</translation>
    </message>
    <message>
        <source>&amp;Reword the line</source>
        <translation>Den Satz &amp;umformulieren</translation>
    </message>
    <message>
        <source>Add to what went &amp;well</source>
        <translation>Zu „Gut &amp;gelungen“ hinzufügen</translation>
    </message>
    <message>
        <source>Add to what to &amp;practise</source>
        <translation>Zu „Zum &amp;Üben“ hinzufügen</translation>
    </message>
    <message>
        <source>Add a &amp;question</source>
        <translation>Eine &amp;Frage hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>R&amp;edo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Copy the debrief as text</source>
        <translation>Die Nachbesprechung als Text &amp;kopieren</translation>
    </message>
    <message>
        <source>Show &amp;names and remarks of the record</source>
        <translation>Na&amp;men und Bemerkungen der Aufzeichnung zeigen</translation>
    </message>
    <message>
        <source>Ctrl+B, N</source>
        <translation>Ctrl+B, N</translation>
    </message>
    <message>
        <source>Pro&amp;jector size</source>
        <translation>Größe für den &amp;Projektor</translation>
    </message>
    <message>
        <source>The debrief was copied as text, as it is shown now.</source>
        <translation>Die Nachbesprechung wurde so, wie sie jetzt dasteht, als Text kopiert.</translation>
    </message>
    <message>
        <source>Enter shows a moment, Page Down the next one · Space plays · Delete strikes, F4 rewords, Ctrl+Z undoes · F12 projector size</source>
        <translation>Eingabe zeigt einen Moment, Bild ab den nächsten · Leertaste spielt ab · Entf streicht, F4 formuliert um, Strg+Z macht rückgängig · F12 Projektorgröße</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::DebriefRowsCanvas</name>
    <message>
        <source>Rows of the rescue, two minutes each</source>
        <translation>Zeilen des Einsatzes, je zwei Minuten</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::Deck</name>
    <message>
        <source>strike a line</source>
        <translation>einen Satz streichen</translation>
    </message>
    <message>
        <source>reword a line</source>
        <translation>einen Satz umformulieren</translation>
    </message>
    <message>
        <source>add a line</source>
        <translation>einen Satz hinzufügen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::DeckColumnView</name>
    <message>
        <source>One more line, then Enter</source>
        <translation>Noch ein Satz, dann Eingabe</translation>
    </message>
    <message>
        <source>One more line: %1</source>
        <translation>Noch ein Satz: %1</translation>
    </message>
    <message>
        <source>Struck for this showing: %1</source>
        <translation>Für dieses Mal gestrichen: %1</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::DeriveActions</name>
    <message>
        <source>Where the &amp;device recorded nothing</source>
        <translation>Wo das &amp;Gerät nichts aufgezeichnet hat</translation>
    </message>
    <message>
        <source>&amp;Never</source>
        <translation>&amp;Nie</translation>
    </message>
    <message>
        <source>&amp;Always</source>
        <translation>&amp;Immer</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::FigureSettingsActions</name>
    <message>
        <source>Longer than %1 s</source>
        <translation>Länger als %1 s</translation>
    </message>
    <message>
        <source>Another length…</source>
        <translation>Eine andere Dauer …</translation>
    </message>
    <message>
        <source>At the last activity</source>
        <translation>Mit der letzten Maßnahme</translation>
    </message>
    <message>
        <source>At the end of the record</source>
        <translation>Mit dem Ende der Aufzeichnung</translation>
    </message>
    <message>
        <source>From a file of your own…</source>
        <translation>Aus einer eigenen Datei …</translation>
    </message>
    <message>
        <source>Hands off counts as a &amp;pause</source>
        <translation>Ohne Druckmassage gilt als &amp;Pause</translation>
    </message>
    <message>
        <source>The &amp;window of the figures ends</source>
        <translation>Der &amp;Zeitraum der Zahlen endet</translation>
    </message>
    <message>
        <source>&amp;Guideline for the targets</source>
        <translation>&amp;Leitlinie für die Ziele</translation>
    </message>
    <message>
        <source>Length of a pause</source>
        <translation>Dauer einer Pause</translation>
    </message>
    <message>
        <source>Hands off counts as a pause when longer than (seconds, 0.5 to 5):</source>
        <translation>Als Pause gilt eine Zeit ohne Druckmassage, die länger ist als (Sekunden, 0,5 bis 5):</translation>
    </message>
    <message>
        <source>Open a guideline profile</source>
        <translation>Ein Leitlinienprofil öffnen</translation>
    </message>
    <message>
        <source>Guideline profiles (*.json);;All files (*)</source>
        <translation>Leitlinienprofile (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The profile could not be read: %1. The figures stay as they were.</source>
        <translation>Das Profil war nicht lesbar: %1. Die Zahlen bleiben, wie sie waren.</translation>
    </message>
    <message>
        <source>The profile could not be used: %1 The figures stay as they were.</source>
        <translation>Das Profil ist nicht brauchbar: %1 Die Zahlen bleiben, wie sie waren.</translation>
    </message>
    <message>
        <source>Your own profile</source>
        <translation>Eigenes Profil</translation>
    </message>
    <message>
        <source>Your own: %1</source>
        <translation>Eigenes: %1</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::FiguresMoved</name>
    <message>
        <source>Figures that cha&amp;nged…</source>
        <translation>Ge&amp;änderte Kennzahlen…</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::FileActions</name>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>Open a &amp;folder or card…</source>
        <translation>&amp;Ordner oder Speicherkarte öffnen …</translation>
    </message>
    <message>
        <source>&amp;Close the record</source>
        <translation>Aufzeichnung s&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Stop reading</source>
        <translation>Lesen ab&amp;brechen</translation>
    </message>
    <message>
        <source>&amp;Next record of the file</source>
        <translation>&amp;Nächste Aufzeichnung der Datei</translation>
    </message>
    <message>
        <source>P&amp;revious record of the file</source>
        <translation>&amp;Vorige Aufzeichnung der Datei</translation>
    </message>
    <message>
        <source>Open it as a rescue</source>
        <translation>Als Einsatz öffnen</translation>
    </message>
    <message>
        <source>Open it as a drill</source>
        <translation>Als Übung öffnen</translation>
    </message>
    <message>
        <source>Open it as a test</source>
        <translation>Als Test öffnen</translation>
    </message>
    <message>
        <source>Open a recording</source>
        <translation>Eine Aufzeichnung öffnen</translation>
    </message>
    <message>
        <source>Recordings (*.resuslog *.hea *.csv *.tsv *.txt);;Event logs (*.resuslog);;WFDB records (*.hea);;Observer&apos;s notes (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Aufzeichnungen (*.resuslog *.hea *.csv *.tsv *.txt);;Ereignisprotokolle (*.resuslog);;WFDB-Aufzeichnungen (*.hea);;Beobachternotizen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open a folder with recordings</source>
        <translation>Einen Ordner mit Aufzeichnungen öffnen</translation>
    </message>
    <message>
        <source>(empty)</source>
        <translation>(leer)</translation>
    </message>
    <message>
        <source>Next recording of the f&amp;older</source>
        <translation>Nächste Aufzeichnung des &amp;Ordners</translation>
    </message>
    <message>
        <source>Previous recording of the fo&amp;lder</source>
        <translation>Vorige Aufzeichnung des O&amp;rdners</translation>
    </message>
    <message>
        <source>This is the last recording of the folder.</source>
        <translation>Dies ist die letzte Aufzeichnung des Ordners.</translation>
    </message>
    <message>
        <source>This is the first recording of the folder.</source>
        <translation>Dies ist die erste Aufzeichnung des Ordners.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::FilterBar</name>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Team</source>
        <translation>Team</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>Had a shock</source>
        <translation>Mit Schock</translation>
    </message>
    <message>
        <source>Longest pause was</source>
        <translation>Längste Pause war</translation>
    </message>
    <message>
        <source>Type to filter the records</source>
        <translation>Aufzeichnungen durch Tippen filtern</translation>
    </message>
    <message>
        <source>Sort by</source>
        <translation>Sortiert nach</translation>
    </message>
    <message>
        <source>&amp;Filter by typing</source>
        <translation>Durch Tippen &amp;filtern</translation>
    </message>
    <message>
        <source>Show &amp;all records again</source>
        <translation>Wieder &amp;alle Aufzeichnungen zeigen</translation>
    </message>
    <message>
        <source>Turn the &amp;order round</source>
        <translation>Reihenfolge um&amp;drehen</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Alle Arten</translation>
    </message>
    <message>
        <source>With or without shock</source>
        <translation>Mit/ohne Schock</translation>
    </message>
    <message>
        <source>With a shock</source>
        <translation>Mit Schock</translation>
    </message>
    <message>
        <source>Without a shock</source>
        <translation>Ohne Schock</translation>
    </message>
    <message>
        <source>Longest pause: any</source>
        <translation>Längste Pause: alle</translation>
    </message>
    <message>
        <source>All teams</source>
        <translation>Alle Teams</translation>
    </message>
    <message>
        <source>team not recorded</source>
        <translation>Team nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>All days</source>
        <translation>Alle Tage</translation>
    </message>
    <message>
        <source>%1, quarter %2</source>
        <translation>%1, Quartal %2</translation>
    </message>
    <message>
        <source>Largest or latest first</source>
        <translation>Größte oder späteste zuerst</translation>
    </message>
    <message>
        <source>Smallest or earliest first</source>
        <translation>Kleinste oder früheste zuerst</translation>
    </message>
    <message>
        <source>Records: %1. They are being sorted…</source>
        <translation>Aufzeichnungen: %1. Sie werden sortiert …</translation>
    </message>
    <message>
        <source>%1 of %2 records; the others do not fit the filter.</source>
        <translation>%1 von %2 Aufzeichnungen; die anderen passen nicht zum Filter.</translation>
    </message>
    <message>
        <source>Records: %1, all of them.</source>
        <translation>Aufzeichnungen: %1, alle.</translation>
    </message>
    <message>
        <source>Nothing recorded of what they are sorted by, and therefore last: %1.</source>
        <translation>Ohne Angabe zu dem, wonach sortiert ist, und deshalb am Ende: %1.</translation>
    </message>
    <message>
        <source>Files that could not be read and are not among them: %1.</source>
        <translation>Dateien, die nicht gelesen werden konnten und nicht dabei sind: %1.</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>All sites</source>
        <translation>Alle Orte</translation>
    </message>
    <message>
        <source>site not recorded</source>
        <translation>Ort nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>No recording that can be read was found here.</source>
        <translation>Hier wurde keine lesbare Aufzeichnung gefunden.</translation>
    </message>
    <message>
        <source>The latest %1 of %2 records; all of them are being read…</source>
        <translation>Die neuesten %1 von %2 Aufzeichnungen; alle werden gerade gelesen…</translation>
    </message>
    <message>
        <source>The order and filter you chose take effect once all records are there.</source>
        <translation>Gewählte Sortierung und Filter gelten, sobald alle Aufzeichnungen da sind.</translation>
    </message>
    <message>
        <source>This archive holds no figures with the settings below; these were computed with: %1.</source>
        <translation>Dieses Archiv enthält keine Kennzahlen mit den unten genannten Einstellungen; diese wurden berechnet mit: %1.</translation>
    </message>
    <message>
        <source>Type to filter: site, team, kind, cause, with a shock, 2026-Q1, 2026-03..2026-05…</source>
        <translation>Zum Filtern tippen: Ort, Team, Art, Grund, mit Schock, 2026-Q1, 2026-03..2026-05…</translation>
    </message>
    <message>
        <source>No figures under these settings: %1.</source>
        <translation>Ohne Kennzahlen mit diesen Einstellungen: %1.</translation>
    </message>
    <message>
        <source>To compare some: mark two to eight, then Shift+C.</source>
        <translation>Zum Vergleichen: zwei bis acht markieren, dann Umschalt+C.</translation>
    </message>
    <message>
        <source>Marked: %1. Shift+C lays them side by side.</source>
        <translation>Markiert: %1. Umschalt+C legt sie nebeneinander.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::FolderPage</name>
    <message>
        <source>%1 (file date)</source>
        <translation>%1 (Datum der Datei)</translation>
    </message>
    <message>
        <source>place not recorded</source>
        <translation>Ort nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>synthetic</source>
        <translation>synthetisch</translation>
    </message>
    <message>
        <source>Which recording?</source>
        <translation>Welche Aufzeichnung?</translation>
    </message>
    <message>
        <source>Recordings in the folder, newest first</source>
        <translation>Aufzeichnungen des Ordners, die neueste zuerst</translation>
    </message>
    <message>
        <source>Looking for recordings…</source>
        <translation>Aufzeichnungen werden gesucht …</translation>
    </message>
    <message>
        <source>No recording was found in this folder or the folders in it. Nothing was changed. Afterbeat looks for event logs (.resuslog), WFDB records (.hea) and observer&apos;s notes (.csv); copy the recording from the device first, or open another file.</source>
        <translation>In diesem Ordner und den Ordnern darin wurde keine Aufzeichnung gefunden. Nichts wurde verändert. Afterbeat sucht Ereignisprotokolle (.resuslog), WFDB-Aufzeichnungen (.hea) und Beobachternotizen (.csv); kopieren Sie die Aufzeichnung zuerst aus dem Gerät, oder öffnen Sie eine andere Datei.</translation>
    </message>
    <message>
        <source>The newest is at the top. Only the first %1 files were looked at; open a folder nearer to the recording to see the others.</source>
        <translation>Die neueste steht oben. Nur die ersten %1 Dateien wurden angesehen; öffnen Sie einen Ordner näher an der Aufzeichnung, um die übrigen zu sehen.</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>begins like no recording</source>
        <translation>beginnt nicht wie eine Aufzeichnung</translation>
    </message>
    <message>
        <source>Open this recording   (Enter)</source>
        <translation>Diese Aufzeichnung öffnen   (Eingabetaste)</translation>
    </message>
    <message>
        <source>Open this recording</source>
        <translation>Diese Aufzeichnung öffnen</translation>
    </message>
    <message>
        <source>%1 files</source>
        <translation>%1 Dateien</translation>
    </message>
    <message>
        <source>No recording found</source>
        <translation>Keine Aufzeichnung gefunden</translation>
    </message>
    <message>
        <source>The newest is at the top. Enter opens it; the files are only read. Mark two to eight to lay them side by side.</source>
        <translation>Die neueste steht oben. Eingabe öffnet sie; die Dateien werden nur gelesen. Markieren Sie zwei bis acht, um sie nebeneinander zu legen.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::HandoverActions</name>
    <message>
        <source>&amp;Export the handover sheet as PDF…</source>
        <translation>Übergabeblatt als PDF e&amp;xportieren …</translation>
    </message>
    <message>
        <source>&amp;Print the handover sheet…</source>
        <translation>Übergabeblatt &amp;drucken …</translation>
    </message>
    <message>
        <source>en</source>
        <comment>language of the sheet: en or de</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Export the handover sheet</source>
        <translation>Übergabeblatt exportieren</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;All files (*)</source>
        <translation>PDF (*.pdf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1: %2. Choose another folder.</source>
        <translation>Das Blatt konnte nicht nach %1 geschrieben werden: %2. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Print the handover sheet</source>
        <translation>Übergabeblatt drucken</translation>
    </message>
    <message>
        <source>The printer did not accept the sheet. Check that it is switched on, or export the sheet as PDF.</source>
        <translation>Der Drucker hat das Blatt nicht angenommen. Prüfen Sie, ob er eingeschaltet ist, oder exportieren Sie das Blatt als PDF.</translation>
    </message>
    <message>
        <source>Sheet in &amp;English</source>
        <translation>Blatt auf &amp;Englisch</translation>
    </message>
    <message>
        <source>Sheet in &amp;German</source>
        <translation>Blatt auf &amp;Deutsch</translation>
    </message>
    <message>
        <source>Sheet on &amp;A4</source>
        <translation>Blatt auf &amp;A4</translation>
    </message>
    <message>
        <source>Sheet on &amp;Letter</source>
        <translation>Blatt auf &amp;Letter</translation>
    </message>
    <message>
        <source>Sheet lar&amp;ger</source>
        <translation>Blatt &amp;größer</translation>
    </message>
    <message>
        <source>Sheet s&amp;maller</source>
        <translation>Blatt &amp;kleiner</translation>
    </message>
    <message>
        <source>&amp;Whole sheet</source>
        <translation>Ganzes &amp;Blatt</translation>
    </message>
    <message>
        <source>No printer is set up on this computer: the print dialog can only write a file.</source>
        <translation>Auf diesem Rechner ist kein Drucker eingerichtet: Der Druckdialog kann nur eine Datei schreiben.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::HandoverPage</name>
    <message>
        <source>&amp;Back from the sheet without a recording</source>
        <translation>Zurück &amp;vom Blatt ohne Aufzeichnung</translation>
    </message>
    <message>
        <source>Without a recording</source>
        <translation>Ohne Aufzeichnung</translation>
    </message>
    <message>
        <source>Type what people or the device said, as far as it is known. What stays empty is a line for the pen.</source>
        <translation>Tragen Sie ein, was Beteiligte oder das Gerät gesagt haben, soweit es bekannt ist. Was leer bleibt, wird eine Linie zum Eintragen von Hand.</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <source>Export as PDF…</source>
        <translation>Als PDF exportieren …</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <source>Language of the sheet</source>
        <translation>Sprache des Blatts</translation>
    </message>
    <message>
        <source>Pape&amp;r</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>Paper of the sheet</source>
        <translation>Papier des Blatts</translation>
    </message>
    <message>
        <source>Left to fill in by pen</source>
        <translation>Von Hand einzutragen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Choices for the sheet</source>
        <translation>Auswahl für das Blatt</translation>
    </message>
    <message>
        <source>Nothing is left to fill in by pen.</source>
        <translation>Von Hand ist nichts mehr einzutragen.</translation>
    </message>
    <message>
        <source>Left to fill in by pen:</source>
        <translation>Von Hand einzutragen:</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::HappeningsModel</name>
    <message>
        <source>%1, lasts %2</source>
        <translation>%1, dauert %2</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>since start</source>
        <translation>seit Beginn</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>from</source>
        <translation>Quelle</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::HappeningsView</name>
    <message>
        <source>Find in what happened</source>
        <translation>In den Ereignissen suchen</translation>
    </message>
    <message>
        <source>Type to filter: shock, pause, 09:15 …</source>
        <translation>Tippen zum Filtern: Schock, Pause, 09:15 …</translation>
    </message>
    <message>
        <source>Filter what happened</source>
        <translation>Ereignisse filtern</translation>
    </message>
    <message>
        <source>How many are shown</source>
        <translation>Wie viele gezeigt werden</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::HeaderStrip</name>
    <message>
        <source>DRILL</source>
        <translation>ÜBUNG</translation>
    </message>
    <message>
        <source>Drill: this record never enters rescue statistics</source>
        <translation>Übung: Diese Aufzeichnung geht nie in Einsatzstatistiken ein</translation>
    </message>
    <message>
        <source>SYNTHETIC</source>
        <translation>SYNTHETISCH</translation>
    </message>
    <message>
        <source>Synthetic: these data were generated</source>
        <translation>Synthetisch: Diese Daten sind künstlich erzeugt</translation>
    </message>
    <message>
        <source>MADE-UP HEADER</source>
        <translation>OHNE KOPFZEILE</translation>
    </message>
    <message>
        <source>The file had no usable header and is read under a made-up one</source>
        <translation>Die Datei hatte keine brauchbare Kopfzeile und wird mit einer angenommenen gelesen</translation>
    </message>
    <message>
        <source>Place not recorded</source>
        <translation>Ort nicht aufgezeichnet</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::HeadlineStrip</name>
    <message>
        <source>Headline figures</source>
        <translation>Wichtigste Zahlen</translation>
    </message>
    <message>
        <source>Working of figure %1</source>
        <translation>Herleitung der Zahl %1</translation>
    </message>
    <message>
        <source>No working over the rows</source>
        <translation>Keine Herleitung über den Zeilen</translation>
    </message>
    <message>
        <source>Working: %1</source>
        <translation>Herleitung: %1</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::HintWorking</name>
    <message>
        <source>Hint and window</source>
        <translation>Hinweis und Fenster</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Decision and reason</source>
        <translation>Entscheidung und Grund</translation>
    </message>
    <message>
        <source>Amplitude and rates</source>
        <translation>Amplitude und Frequenzen</translation>
    </message>
    <message>
        <source>Working of a rhythm hint</source>
        <translation>Herleitung eines Rhythmushinweises</translation>
    </message>
    <message>
        <source>Features of the window</source>
        <translation>Merkmale des Fensters</translation>
    </message>
    <message>
        <source>feature</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>speaks for</source>
        <translation>spricht für</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>wie stark</translation>
    </message>
    <message>
        <source>Previous hint</source>
        <translation>Voriger Hinweis</translation>
    </message>
    <message>
        <source>Next hint</source>
        <translation>Nächster Hinweis</translation>
    </message>
    <message>
        <source>2 s earlier</source>
        <translation>2 s früher</translation>
    </message>
    <message>
        <source>2 s later</source>
        <translation>2 s später</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>window of the rhythm hint</source>
        <translation>Fenster des Rhythmushinweises</translation>
    </message>
    <message>
        <source>The hints are being made.</source>
        <translation>Die Hinweise werden gerade gemacht.</translation>
    </message>
    <message>
        <source>No hint was made for this moment. Hints that came with the file have no working here: choose Figures, From the signals, Always.</source>
        <translation>Für diesen Moment gibt es keinen Hinweis. Hinweise, die mit der Datei kamen, haben hier keine Herleitung: Zahlen, Aus den Signalen, Immer wählen.</translation>
    </message>
    <message>
        <source>Window of 8 s from %1, one of %2</source>
        <translation>Fenster von 8 s ab %1, eines von %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::IncompleteStrip</name>
    <message>
        <source>The recording is not whole</source>
        <translation>Die Aufzeichnung ist nicht vollständig</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::LanguageActions</name>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>The language changes when Afterbeat is started the next time.</source>
        <translation>Die Sprache wechselt beim nächsten Start von Afterbeat.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::LineCard</name>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>Reword this line</source>
        <translation>Diesen Satz umformulieren</translation>
    </message>
    <message>
        <source>Its moment is marked in the rows</source>
        <translation>Ihr Moment ist in den Zeilen markiert</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::LoadingPage</name>
    <message>
        <source>Reading</source>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>How much of the file was read</source>
        <translation>Wie viel der Datei gelesen ist</translation>
    </message>
    <message>
        <source>%1 of %2 were read</source>
        <translation>%1 von %2 gelesen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::LowerArea</name>
    <message>
        <source>Waves and tables</source>
        <translation>Kurven und Tabellen</translation>
    </message>
    <message>
        <source>What is shown under the rows</source>
        <translation>Was unter den Zeilen steht</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::MainWindow</name>
    <message>
        <source>Record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Go to the &amp;record</source>
        <translation>Zur &amp;Aufzeichnung</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Opened &amp;lately</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Open without a &amp;header</source>
        <translation>Ohne &amp;Kopfzeile öffnen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>&amp;Record</source>
        <translation>&amp;Aufzeichnung</translation>
    </message>
    <message>
        <source>Fi&amp;gures</source>
        <translation>&amp;Zahlen</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>An&amp;sicht</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>For the projector</source>
        <translation>Für den Projektor</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;About, and what it is not</source>
        <translation>&amp;Über Afterbeat, und was es nicht ist</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Afterbeat</source>
        <translation>Afterbeat</translation>
    </message>
    <message>
        <source>%1 – Afterbeat</source>
        <translation>%1 – Afterbeat</translation>
    </message>
    <message>
        <source>Sheet &amp;without a recording…</source>
        <translation>Blatt ohne A&amp;ufzeichnung …</translation>
    </message>
    <message>
        <source>Debrief</source>
        <translation>Nachbesprechung</translation>
    </message>
    <message>
        <source>Go to the &amp;debrief</source>
        <translation>Zur &amp;Nachbesprechung</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Go to the &amp;handover sheet</source>
        <translation>Zum &amp;Übergabeblatt</translation>
    </message>
    <message>
        <source>Language and paper of the s&amp;heet</source>
        <translation>Sprache und &amp;Papier des Blatts</translation>
    </message>
    <message>
        <source>&amp;Debrief</source>
        <translation>&amp;Nachbesprechung</translation>
    </message>
    <message>
        <source>Without a recording – Afterbeat</source>
        <translation>Ohne Aufzeichnung – Afterbeat</translation>
    </message>
    <message>
        <source>&amp;Copy the list as text</source>
        <translation>&amp;Liste als Text kopieren</translation>
    </message>
    <message>
        <source>&amp;Tracks of the waves</source>
        <translation>&amp;Spuren der Kurven</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Change what the figures are computed with</source>
        <translation>Ändern, womit die Zahlen berechnet werden</translation>
    </message>
    <message>
        <source>The handover sheet was written to %1.</source>
        <translation>Übergabeblatt gespeichert: %1</translation>
    </message>
    <message>
        <source>The handover sheet was sent to the printer %1.</source>
        <translation>Das Übergabeblatt wurde an den Drucker %1 geschickt.</translation>
    </message>
    <message>
        <source>The list was copied as text.</source>
        <translation>Die Liste wurde als Text kopiert.</translation>
    </message>
    <message>
        <source>From the &amp;signals</source>
        <translation>Aus den &amp;Signalen</translation>
    </message>
    <message>
        <source>&amp;ECG around shocks</source>
        <translation>&amp;EKG um die Schocks</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>V&amp;ergleich</translation>
    </message>
    <message>
        <source>Archives opened latel&amp;y</source>
        <translation>&amp;Zuletzt geöffnete Archive</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Nach %1 geschrieben.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::MarkDialog</name>
    <message>
        <source>New from here</source>
        <translation>Neu ab hier</translation>
    </message>
    <message>
        <source>From this day on the chart gets a centre line of its own, and says whether what came after differs clearly from what was before.</source>
        <translation>Ab diesem Tag bekommt das Diagramm eine eigene Mittellinie und sagt, ob sich das Spätere deutlich vom Früheren unterscheidet.</translation>
    </message>
    <message>
        <source>From this day on</source>
        <translation>Ab diesem Tag</translation>
    </message>
    <message>
        <source>new training from here</source>
        <translation>neue Schulung ab hier</translation>
    </message>
    <message>
        <source>What was new</source>
        <translation>Was neu war</translation>
    </message>
    <message>
        <source>1 record before, %1 from this day on.</source>
        <translation>1 Aufzeichnung davor, %1 ab diesem Tag.</translation>
    </message>
    <message>
        <source>%1 records before, %2 from this day on.</source>
        <translation>%1 Aufzeichnungen davor, %2 ab diesem Tag.</translation>
    </message>
    <message>
        <source>Without a day: %1.</source>
        <translation>Ohne Tag: %1.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::MeasuresList</name>
    <message>
        <source>All figures</source>
        <translation>Alle Zahlen</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>How fast?</source>
        <translation>Wie schnell?</translation>
    </message>
    <message>
        <source>Hands on?</source>
        <translation>Hände auf dem Brustkorb?</translation>
    </message>
    <message>
        <source>How well?</source>
        <translation>Wie gut?</translation>
    </message>
    <message>
        <source>Shocks?</source>
        <translation>Schocks?</translation>
    </message>
    <message>
        <source>Breaths?</source>
        <translation>Beatmungen?</translation>
    </message>
    <message>
        <source>Circulation?</source>
        <translation>Kreislauf?</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::MovedDialog</name>
    <message>
        <source>The archive is being asked…</source>
        <translation>Das Archiv wird gefragt…</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>Figures that changed</source>
        <translation>Geänderte Kennzahlen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::NoticeBar</name>
    <message>
        <source>Take the message away</source>
        <translation>Die Meldung ausblenden</translation>
    </message>
    <message>
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Ordner zeigen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::OverTimeView</name>
    <message>
        <source>Over time</source>
        <translation>Im Verlauf</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennzahl</translation>
    </message>
    <message>
        <source>Drawn as</source>
        <translation>Gezeichnet</translation>
    </message>
    <message>
        <source>A point is</source>
        <translation>Ein Punkt ist</translation>
    </message>
    <message>
        <source>Share of records with a shock</source>
        <translation>Anteil der Aufzeichnungen mit Schock</translation>
    </message>
    <message>
        <source>as suits the figure</source>
        <translation>wie es zur Kennzahl passt</translation>
    </message>
    <message>
        <source>along the median (run chart)</source>
        <translation>entlang der Mitte (Verlaufskarte)</translation>
    </message>
    <message>
        <source>with limits (control chart)</source>
        <translation>mit Grenzen (Regelkarte)</translation>
    </message>
    <message>
        <source>each record</source>
        <translation>jede Aufzeichnung</translation>
    </message>
    <message>
        <source>each week</source>
        <translation>jede Woche</translation>
    </message>
    <message>
        <source>each month</source>
        <translation>jeder Monat</translation>
    </message>
    <message>
        <source>each quarter</source>
        <translation>jedes Quartal</translation>
    </message>
    <message>
        <source>each year</source>
        <translation>jedes Jahr</translation>
    </message>
    <message>
        <source>&amp;New training from here…</source>
        <translation>&amp;Neue Schulung ab hier…</translation>
    </message>
    <message>
        <source>&amp;Take a mark away…</source>
        <translation>Markierung weg&amp;nehmen…</translation>
    </message>
    <message>
        <source>&amp;Undo the mark</source>
        <translation>Markierung &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Redo the mark</source>
        <translation>Markierung wieder&amp;holen</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Markierung</translation>
    </message>
    <message>
        <source>mark taken away</source>
        <translation>Markierung weggenommen</translation>
    </message>
    <message>
        <source>Marked. Shift+Z takes it back.</source>
        <translation>Markiert. Umschalt+Z nimmt es zurück.</translation>
    </message>
    <message>
        <source>Take a mark away</source>
        <translation>Markierung wegnehmen</translation>
    </message>
    <message>
        <source>Which one?</source>
        <translation>Welche?</translation>
    </message>
    <message>
        <source>This mark is there already.</source>
        <translation>Diese Markierung gibt es schon.</translation>
    </message>
    <message>
        <source>Marked for you alone, as you may not write to this archive. Shift+Z takes it back.</source>
        <translation>Nur für Sie markiert, weil Sie in dieses Archiv nicht schreiben dürfen. Umschalt+Z nimmt es zurück.</translation>
    </message>
    <message>
        <source>Marked in the archive, for all who use it. Shift+Z takes it back.</source>
        <translation>Im Archiv markiert, für alle, die es benutzen. Umschalt+Z nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1 (for you alone)</source>
        <translation>%1 (nur für Sie)</translation>
    </message>
    <message>
        <source>The mark will be kept for you alone.</source>
        <translation>Die Markierung wird für Sie allein aufbewahrt.</translation>
    </message>
    <message>
        <source>The mark will be kept for you alone, as you may not write to this archive.</source>
        <translation>Die Markierung wird für Sie allein aufbewahrt, da Sie in dieses Archiv nicht schreiben dürfen.</translation>
    </message>
    <message>
        <source>The mark will be kept in this archive, for all who use it.</source>
        <translation>Die Markierung wird in diesem Archiv aufbewahrt, für alle, die es nutzen.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ProblemsModel</name>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>information</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>1 error</source>
        <translation>1 Fehler</translation>
    </message>
    <message>
        <source>%1 errors</source>
        <translation>%1 Fehler</translation>
    </message>
    <message>
        <source>1 warning</source>
        <translation>1 Warnung</translation>
    </message>
    <message>
        <source>%1 warnings</source>
        <translation>%1 Warnungen</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>1 Anmerkung</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Anmerkungen</translation>
    </message>
    <message>
        <source>no problems found</source>
        <translation>keine Probleme gefunden</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>no line</source>
        <translation>keine Zeile</translation>
    </message>
    <message>
        <source>how bad</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>what was found</source>
        <translation>was gefunden wurde</translation>
    </message>
    <message>
        <source>lines %1 to %2</source>
        <translation>Zeilen %1 bis %2</translation>
    </message>
    <message>
        <source>Enter or a click shows %1 in the rows and waves.</source>
        <translation>Eingabetaste oder Klick zeigt %1 in Zeilen und Kurven.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>what it means</source>
        <translation>was es bedeutet</translation>
    </message>
    <message>
        <source>No time is known for it.</source>
        <translation>Dafür ist kein Zeitpunkt bekannt.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ProblemsStrip</name>
    <message>
        <source>Show the problems of the file</source>
        <translation>Die Probleme der Datei zeigen</translation>
    </message>
    <message>
        <source>This file holds %1 records; record %2 is shown. The others are under Record.</source>
        <translation>Diese Datei enthält %1 Aufzeichnungen; gezeigt wird Nummer %2. Die anderen stehen unter Aufzeichnung.</translation>
    </message>
    <message>
        <source>In this file: %1.</source>
        <translation>In dieser Datei: %1.</translation>
    </message>
    <message>
        <source>Hands off and rate are counted up to the last activity; the record goes on for %1.</source>
        <translation>Pausen und Frequenz zählen bis zur letzten Maßnahme; die Aufzeichnung geht noch %1 weiter.</translation>
    </message>
    <message>
        <source>%1 s is no longer than the time between two compressions: nearly everything counts as hands off. Figures with it mean little.</source>
        <translation>%1 s sind nicht länger als der Abstand zwischen zwei Kompressionen: Fast alles zählt dann als Pause, und die Zahlen sagen wenig.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ProblemsView</name>
    <message>
        <source>Problems of the file</source>
        <translation>Probleme der Datei</translation>
    </message>
    <message>
        <source>What the problem means</source>
        <translation>Was das Problem bedeutet</translation>
    </message>
    <message>
        <source>No problems were found in this file.</source>
        <translation>In dieser Datei wurden keine Probleme gefunden.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::RecordPage</name>
    <message>
        <source>Go to the next place</source>
        <translation>Zum nächsten Bereich</translation>
    </message>
    <message>
        <source>Waves</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>Show the &amp;waves</source>
        <translation>Die &amp;Kurven zeigen</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <source>Show the &amp;tables</source>
        <translation>Die &amp;Tabellen zeigen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::RefusalPage</name>
    <message>
        <source>This file cannot be shown</source>
        <translation>Diese Datei kann nicht gezeigt werden</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::Replay</name>
    <message>
        <source>&amp;Play or pause the replay</source>
        <translation>Wiedergabe st&amp;arten oder anhalten</translation>
    </message>
    <message>
        <source>Replay at the speed of the record</source>
        <translation>Wiedergabe in Originalgeschwindigkeit</translation>
    </message>
    <message>
        <source>Replay %1 times as fast</source>
        <translation>Wiedergabe %1-mal so schnell</translation>
    </message>
    <message>
        <source>%1×</source>
        <translation>%1×</translation>
    </message>
    <message>
        <source>&amp;Next item of the debrief, or next pause</source>
        <translation>&amp;Nächster Punkt der Nachbesprechung oder nächste Pause</translation>
    </message>
    <message>
        <source>Pre&amp;vious item of the debrief, or previous pause</source>
        <translation>&amp;Voriger Punkt der Nachbesprechung oder vorige Pause</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ReplayBar</name>
    <message>
        <source>Time of the replay</source>
        <translation>Zeitpunkt der Wiedergabe</translation>
    </message>
    <message>
        <source>What is happening</source>
        <translation>Was gerade geschieht</translation>
    </message>
    <message>
        <source>❚❚ Pause</source>
        <translation>❚❚ Anhalten</translation>
    </message>
    <message>
        <source>▶ Play</source>
        <translation>▶ Abspielen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ReportDialog</name>
    <message>
        <source>&amp;Without names, serials and free text</source>
        <translation>&amp;Ohne Namen, Seriennummern und freien Text</translation>
    </message>
    <message>
        <source>Write a comparison report</source>
        <translation>Vergleichsbericht schreiben</translation>
    </message>
    <message>
        <source>Choose a &amp;file…</source>
        <translation>&amp;Datei wählen…</translation>
    </message>
    <message>
        <source>Of the records that are listed: as pages (.pdf), as one page for a browser (.html), or each record as a line of a table (.csv).</source>
        <translation>Über die Aufzeichnungen der Liste: als Seiten (.pdf), als eine Seite für einen Browser (.html) oder jede Aufzeichnung als Zeile einer Tabelle (.csv).</translation>
    </message>
    <message>
        <source>Sites, teams and records get pseudonyms, days are cut to their month. Whoever knows a rescue may still recognise its figures.</source>
        <translation>Orte, Teams und Aufzeichnungen bekommen Pseudonyme, Tage werden auf ihren Monat gekürzt. Wer einen Einsatz kennt, kann ihn womöglich noch an seinen Kennzahlen erkennen.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::RowsCanvas</name>
    <message>
        <source>Rows of the rescue, two minutes each</source>
        <translation>Zeilen des Einsatzes, je zwei Minuten</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::RowsScroll</name>
    <message>
        <source>Rows</source>
        <translation>Zeilen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SaveReport</name>
    <message>
        <source>Write a &amp;comparison report…</source>
        <translation>&amp;Vergleichsbericht schreiben…</translation>
    </message>
    <message>
        <source>Write a comparison report</source>
        <translation>Vergleichsbericht schreiben</translation>
    </message>
    <message>
        <source>Reports and tables (*.pdf *.html *.csv)</source>
        <translation>Berichte und Tabellen (*.pdf *.html *.csv)</translation>
    </message>
    <message>
        <source>The report is being written…</source>
        <translation>Der Bericht wird geschrieben…</translation>
    </message>
    <message>
        <source>It holds no names, serials or free text; its pseudonyms are the same in every report of this archive.</source>
        <translation>Darin stehen keine Namen, Seriennummern und kein freier Text; die Pseudonyme sind in jedem Bericht dieses Archivs dieselben.</translation>
    </message>
    <message>
        <source>It holds no names, serials or free text; its pseudonyms hold for this report alone.</source>
        <translation>Darin stehen keine Namen, Seriennummern und kein freier Text; die Pseudonyme gelten nur in diesem Bericht.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::Saying</name>
    <message>
        <source>entry of a type unknown to this program: “%1”</source>
        <translation>Eintrag einer Art, die dieses Programm nicht kennt: „%1“</translation>
    </message>
    <message>
        <source>device on</source>
        <translation>Gerät ein</translation>
    </message>
    <message>
        <source>device off</source>
        <translation>Gerät aus</translation>
    </message>
    <message>
        <source>clock of the device set</source>
        <translation>Uhr des Geräts gestellt</translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>Elektroden</translation>
    </message>
    <message>
        <source>electrodes attached</source>
        <translation>Elektroden aufgeklebt</translation>
    </message>
    <message>
        <source>electrodes off</source>
        <translation>Elektroden gelöst</translation>
    </message>
    <message>
        <source>electrodes: poor contact</source>
        <translation>Elektroden: schlechter Kontakt</translation>
    </message>
    <message>
        <source>device set to: %1</source>
        <translation>Gerät eingestellt auf: %1</translation>
    </message>
    <message>
        <source>device setting for the patient</source>
        <translation>Einstellung des Geräts für den Patienten</translation>
    </message>
    <message>
        <source>analysis</source>
        <translation>Analyse</translation>
    </message>
    <message>
        <source>analysis: shock advised</source>
        <translation>Analyse: Schock empfohlen</translation>
    </message>
    <message>
        <source>analysis: no shock advised</source>
        <translation>Analyse: kein Schock empfohlen</translation>
    </message>
    <message>
        <source>analysis: inconclusive</source>
        <translation>Analyse: ohne Ergebnis</translation>
    </message>
    <message>
        <source>charging</source>
        <translation>lädt</translation>
    </message>
    <message>
        <source>shock, not recorded whether given</source>
        <translation>Schock, Abgabe nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>shock given</source>
        <translation>Schock abgegeben</translation>
    </message>
    <message>
        <source>shock not given</source>
        <translation>Schock nicht abgegeben</translation>
    </message>
    <message>
        <source>compressions, %1 a minute</source>
        <translation>Kompressionen, %1 pro Minute</translation>
    </message>
    <message>
        <source>compressions, rate not recorded</source>
        <translation>Kompressionen, Frequenz nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>compression, %1 mm</source>
        <translation>Kompression, %1 mm</translation>
    </message>
    <message>
        <source>compression</source>
        <translation>Kompression</translation>
    </message>
    <message>
        <source>breath, %1 ml</source>
        <translation>Beatmung, %1 ml</translation>
    </message>
    <message>
        <source>breath</source>
        <translation>Beatmung</translation>
    </message>
    <message>
        <source>airway</source>
        <translation>Atemweg</translation>
    </message>
    <message>
        <source>airway: no device</source>
        <translation>Atemweg: kein Hilfsmittel</translation>
    </message>
    <message>
        <source>airway: mask</source>
        <translation>Atemweg: Maske</translation>
    </message>
    <message>
        <source>airway: supraglottic device</source>
        <translation>Atemweg: supraglottische Atemwegshilfe</translation>
    </message>
    <message>
        <source>airway: tube</source>
        <translation>Atemweg: Tubus</translation>
    </message>
    <message>
        <source>rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message>
        <source>rhythm: shockable</source>
        <translation>Rhythmus: defibrillierbar</translation>
    </message>
    <message>
        <source>rhythm: organised</source>
        <translation>Rhythmus: organisiert</translation>
    </message>
    <message>
        <source>rhythm: asystole</source>
        <translation>Rhythmus: Asystolie</translation>
    </message>
    <message>
        <source>rhythm: unclear</source>
        <translation>Rhythmus: unklar</translation>
    </message>
    <message>
        <source>circulation</source>
        <translation>Kreislauf</translation>
    </message>
    <message>
        <source>circulation returned</source>
        <translation>Kreislauf wieder da</translation>
    </message>
    <message>
        <source>circulation lost</source>
        <translation>Kreislauf verloren</translation>
    </message>
    <message>
        <source>rescuer change</source>
        <translation>Helferwechsel</translation>
    </message>
    <message>
        <source>medication</source>
        <translation>Medikament</translation>
    </message>
    <message>
        <source>milestone</source>
        <translation>Zeitpunkt</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gewertet</translation>
    </message>
    <message>
        <source>not counted: not part of the rescue</source>
        <translation>nicht gewertet: gehört nicht zum Einsatz</translation>
    </message>
    <message>
        <source>not counted: recording not trusted</source>
        <translation>nicht gewertet: Aufzeichnung unzuverlässig</translation>
    </message>
    <message>
        <source>not counted: nobody was watching</source>
        <translation>nicht gewertet: niemand hat beobachtet</translation>
    </message>
    <message>
        <source>prompt of the device</source>
        <translation>Ansage des Geräts</translation>
    </message>
    <message>
        <source>battery: %1 %</source>
        <translation>Batterie: %1 %</translation>
    </message>
    <message>
        <source>battery: %1 of %2 bars</source>
        <translation>Batterie: %1 von %2 Balken</translation>
    </message>
    <message>
        <source>battery: bars %1</source>
        <translation>Batterie: %1 Balken</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>electrode pads</source>
        <translation>Klebeelektroden</translation>
    </message>
    <message>
        <source>electrode pads, expire %1</source>
        <translation>Klebeelektroden, haltbar bis %1</translation>
    </message>
    <message>
        <source>self-test</source>
        <translation>Selbsttest</translation>
    </message>
    <message>
        <source>self-test passed</source>
        <translation>Selbsttest bestanden</translation>
    </message>
    <message>
        <source>self-test failed</source>
        <translation>Selbsttest nicht bestanden</translation>
    </message>
    <message>
        <source>device fault</source>
        <translation>Gerätestörung</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>samples that could not be used, channel “%1”</source>
        <translation>unbrauchbare Messwerte, Kanal „%1“</translation>
    </message>
    <message>
        <source>a line that could not be read</source>
        <translation>eine unlesbare Zeile</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SeasonDesk</name>
    <message>
        <source>around a shock</source>
        <translation>um einen Schock</translation>
    </message>
    <message>
        <source>for an analysis</source>
        <translation>wegen einer Analyse</translation>
    </message>
    <message>
        <source>before the first compressions</source>
        <translation>vor den ersten Kompressionen</translation>
    </message>
    <message>
        <source>after the last compressions</source>
        <translation>nach den letzten Kompressionen</translation>
    </message>
    <message>
        <source>for breaths</source>
        <translation>wegen Beatmungen</translation>
    </message>
    <message>
        <source>for breaths, long</source>
        <translation>wegen Beatmungen, lang</translation>
    </message>
    <message>
        <source>no reason recorded</source>
        <translation>kein Grund aufgezeichnet</translation>
    </message>
    <message>
        <source>with a shock</source>
        <translation>mit Schock</translation>
    </message>
    <message>
        <source>without a shock</source>
        <translation>ohne Schock</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SeasonDrop</name>
    <message>
        <source>&amp;Take into %1</source>
        <translation>In %1 auf&amp;nehmen</translation>
    </message>
    <message>
        <source>&amp;Open the recording</source>
        <translation>Die Aufzeichnung ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Look at them, keeping nothing</source>
        <translation>&amp;Ansehen, ohne etwas aufzubewahren</translation>
    </message>
    <message>
        <source>Lay them &amp;side by side</source>
        <translation>Neben&amp;einander legen</translation>
    </message>
    <message>
        <source>What to do with what was dropped</source>
        <translation>Was mit dem Abgelegten geschehen soll</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>A&amp;bbrechen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SeasonTable</name>
    <message>
        <source>Records</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>There is no record here yet. Take recordings into an archive (Shift+I), or look through another folder (Shift+F).</source>
        <translation>Hier ist noch keine Aufzeichnung. Aufzeichnungen in ein Archiv aufnehmen (Umschalt+I) oder einen anderen Ordner durchsehen (Umschalt+F).</translation>
    </message>
    <message>
        <source>No record fits the filter. Shift+U shows all of them again.</source>
        <translation>Keine Aufzeichnung passt zum Filter. Umschalt+U zeigt wieder alle.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SeasonTableModel</name>
    <message>
        <source>not recorded</source>
        <translation>nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Team</source>
        <translation>Team</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Made from</source>
        <translation>Gemacht aus</translation>
    </message>
    <message>
        <source>Had a shock</source>
        <translation>Mit Schock</translation>
    </message>
    <message>
        <source>Longest pause was</source>
        <translation>Längste Pause war</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Fassung</translation>
    </message>
    <message>
        <source>%1 (changed, version %2)</source>
        <translation>%1 (geändert, Fassung %2)</translation>
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
        <source>no pause</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>Sort by this</source>
        <translation>Danach sortieren</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>shock</source>
        <comment>cause of the longest pause</comment>
        <translation>Schock</translation>
    </message>
    <message>
        <source>analysis</source>
        <comment>cause of the longest pause</comment>
        <translation>Analyse</translation>
    </message>
    <message>
        <source>at the begin</source>
        <comment>cause of the longest pause</comment>
        <translation>am Anfang</translation>
    </message>
    <message>
        <source>at the end</source>
        <comment>cause of the longest pause</comment>
        <translation>am Ende</translation>
    </message>
    <message>
        <source>breaths</source>
        <comment>cause of the longest pause</comment>
        <translation>Beatmungen</translation>
    </message>
    <message>
        <source>long breaths</source>
        <comment>cause of the longest pause</comment>
        <translation>lange Beatmungen</translation>
    </message>
    <message>
        <source>no reason</source>
        <comment>cause of the longest pause</comment>
        <translation>kein Grund</translation>
    </message>
    <message>
        <source>Small picture of the rows: %1</source>
        <translation>Kleines Bild der Zeilen: %1</translation>
    </message>
    <message>
        <source>Small picture of the rows</source>
        <translation>Kleines Bild der Zeilen</translation>
    </message>
    <message>
        <source>Small picture of each record, a quarter of an hour from edge to edge: hands on in colour, pauses as gaps, shocks as flags, circulation that returned as a line</source>
        <translation>Kleines Bild jeder Aufzeichnung, eine Viertelstunde von Rand zu Rand: Hände am Brustkorb in Farbe, Pausen als Lücken, Schocks als Fahnen, zurückgekehrter Kreislauf als Linie</translation>
    </message>
    <message>
        <source>no figures</source>
        <translation>keine Kennzahlen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SeasonWays</name>
    <message>
        <source>Archives (*.sqlite);;All files (*)</source>
        <translation>Archive (*.sqlite);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Look through a &amp;folder…</source>
        <translation>Einen &amp;Ordner durchsehen…</translation>
    </message>
    <message>
        <source>Open an &amp;archive…</source>
        <translation>Ein A&amp;rchiv öffnen…</translation>
    </message>
    <message>
        <source>Open a shared archive by its ser&amp;vice…</source>
        <translation>Ein &amp;gemeinsames Archiv über seinen Dienst öffnen…</translation>
    </message>
    <message>
        <source>Take recordings &amp;into an archive…</source>
        <translation>Aufzeichnungen in ein Archiv auf&amp;nehmen…</translation>
    </message>
    <message>
        <source>Files that could not be &amp;read…</source>
        <translation>Dateien, die nicht lesbar &amp;waren…</translation>
    </message>
    <message>
        <source>(empty)</source>
        <translation>(leer)</translation>
    </message>
    <message>
        <source>A folder of recordings to look through</source>
        <translation>Ein Ordner mit Aufzeichnungen zum Durchsehen</translation>
    </message>
    <message>
        <source>Open an archive</source>
        <translation>Archiv öffnen</translation>
    </message>
    <message>
        <source>Open a shared archive</source>
        <translation>Gemeinsames Archiv öffnen</translation>
    </message>
    <message>
        <source>Name of the service in PostgreSQL&apos;s service file (.pg_service.conf); user and password stay in its own files:</source>
        <translation>Name des Dienstes in der Dienstdatei von PostgreSQL (.pg_service.conf); Benutzer und Kennwort bleiben in dessen eigenen Dateien:</translation>
    </message>
    <message>
        <source>A folder of recordings to take in</source>
        <translation>Ein Ordner mit Aufzeichnungen zum Aufnehmen</translation>
    </message>
    <message>
        <source>Into which archive? One that is there gains them; another name makes a new one</source>
        <translation>In welches Archiv? Ein vorhandenes bekommt sie dazu; ein anderer Name legt ein neues an</translation>
    </message>
    <message>
        <source>Files that could not be read</source>
        <translation>Dateien, die nicht gelesen werden konnten</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SheetPreview</name>
    <message>
        <source>Handover sheet as it will be printed</source>
        <translation>Übergabeblatt, wie es gedruckt wird</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SidePanel</name>
    <message>
        <source>Figures and problems</source>
        <translation>Zahlen und Probleme</translation>
    </message>
    <message>
        <source>What the panel shows</source>
        <translation>Was die Seitenleiste zeigt</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Herleitung</translation>
    </message>
    <message>
        <source>Show the working of the figure</source>
        <translation>Die Herleitung der Zahl zeigen</translation>
    </message>
    <message>
        <source>Show all figures</source>
        <translation>Alle Zahlen zeigen</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>Show the problems</source>
        <translation>Die Probleme zeigen</translation>
    </message>
    <message>
        <source>Problems (%1)</source>
        <translation>Probleme (%1)</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Show what happened</source>
        <translation>Die Ereignisse zeigen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::SpreadView</name>
    <message>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennzahl</translation>
    </message>
    <message>
        <source>Apart by</source>
        <translation>Getrennt</translation>
    </message>
    <message>
        <source>by team</source>
        <translation>nach Team</translation>
    </message>
    <message>
        <source>by quarter</source>
        <translation>nach Quartal</translation>
    </message>
    <message>
        <source>all together</source>
        <translation>alle zusammen</translation>
    </message>
    <message>
        <source>by site</source>
        <translation>nach Ort</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::StagesView</name>
    <message>
        <source>Where the time goes</source>
        <translation>Wo die Zeit bleibt</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>Gezählt ab</translation>
    </message>
    <message>
        <source>Drawn as</source>
        <translation>Gezeichnet</translation>
    </message>
    <message>
        <source>from the call</source>
        <translation>ab Notruf</translation>
    </message>
    <message>
        <source>stage by stage</source>
        <translation>Abschnitt für Abschnitt</translation>
    </message>
    <message>
        <source>record by record</source>
        <translation>Aufzeichnung für Aufzeichnung</translation>
    </message>
    <message>
        <source>from device on</source>
        <translation>ab Einschalten</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::StandOutView</name>
    <message>
        <source>Records worth a look</source>
        <translation>Aufzeichnungen, die einen näheren Blick lohnen</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Why it is worth a look</source>
        <translation>Warum sie sehenswert ist</translation>
    </message>
    <message>
        <source>The first %1 are listed.</source>
        <translation>Die ersten %1 sind aufgelistet.</translation>
    </message>
    <message>
        <source>No record stands out, of %1.</source>
        <translation>Keine Aufzeichnung fällt auf, von %1.</translation>
    </message>
    <message>
        <source>Records that stand out: %1 of %2, those with most reasons first. A reason to look, not a judgement: what happened there may have been right.</source>
        <translation>Auffällige Aufzeichnungen: %1 von %2, die mit den meisten Gründen zuerst. Ein Grund hinzusehen, kein Urteil: Was dort geschah, kann richtig gewesen sein.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::Stepping</name>
    <message>
        <source>Next pause</source>
        <translation>Nächste Pause</translation>
    </message>
    <message>
        <source>Previous pause</source>
        <translation>Vorige Pause</translation>
    </message>
    <message>
        <source>Next shock</source>
        <translation>Nächster Schock</translation>
    </message>
    <message>
        <source>Previous shock</source>
        <translation>Voriger Schock</translation>
    </message>
    <message>
        <source>Next analysis</source>
        <translation>Nächste Analyse</translation>
    </message>
    <message>
        <source>Previous analysis</source>
        <translation>Vorige Analyse</translation>
    </message>
    <message>
        <source>Next problem in the file</source>
        <translation>Nächstes Problem der Datei</translation>
    </message>
    <message>
        <source>Previous problem in the file</source>
        <translation>Voriges Problem der Datei</translation>
    </message>
    <message>
        <source>Longest pause</source>
        <translation>Längste Pause</translation>
    </message>
    <message>
        <source>There is no pause in this record.</source>
        <translation>In dieser Aufzeichnung ist keine Pause.</translation>
    </message>
    <message>
        <source>There is no shock in this record.</source>
        <translation>In dieser Aufzeichnung ist kein Schock.</translation>
    </message>
    <message>
        <source>There is no analysis in this record.</source>
        <translation>In dieser Aufzeichnung ist keine Analyse.</translation>
    </message>
    <message>
        <source>No problem of the file lies at a known time.</source>
        <translation>Kein Problem der Datei liegt an einer bekannten Zeit.</translation>
    </message>
    <message>
        <source>There is no further pause this way.</source>
        <translation>In dieser Richtung ist keine weitere Pause.</translation>
    </message>
    <message>
        <source>There is no further shock this way.</source>
        <translation>In dieser Richtung ist kein weiterer Schock.</translation>
    </message>
    <message>
        <source>There is no further analysis this way.</source>
        <translation>In dieser Richtung ist keine weitere Analyse.</translation>
    </message>
    <message>
        <source>There is no further problem this way.</source>
        <translation>In dieser Richtung ist kein weiteres Problem.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::StepsKeeper</name>
    <message>
        <source>The marks in the archive could not be read. %1</source>
        <translation>Die Markierungen im Archiv ließen sich nicht lesen. %1</translation>
    </message>
    <message>
        <source>The mark could not be put into the archive; it is kept for you alone. %1</source>
        <translation>Die Markierung ließ sich nicht ins Archiv schreiben; sie bleibt nur für Sie erhalten. %1</translation>
    </message>
    <message>
        <source>The mark could not be taken out of the archive. %1</source>
        <translation>Die Markierung ließ sich nicht aus dem Archiv nehmen. %1</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::TablesView</name>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Cycles</source>
        <translation>Zyklen</translation>
    </message>
    <message>
        <source>Pauses</source>
        <translation>Pausen</translation>
    </message>
    <message>
        <source>Shocks</source>
        <translation>Schocks</translation>
    </message>
    <message>
        <source>ECG around shocks</source>
        <translation>EKG um die Schocks</translation>
    </message>
    <message>
        <source>Table: %1</source>
        <translation>Tabelle: %1</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::Toast</name>
    <message>
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::ToldForm</name>
    <message>
        <source>&amp;Minutes on</source>
        <translation>&amp;Minuten in Betrieb</translation>
    </message>
    <message>
        <source>for example 22</source>
        <translation>zum Beispiel 22</translation>
    </message>
    <message>
        <source>&amp;Shocks given</source>
        <translation>Abgegebene S&amp;chocks</translation>
    </message>
    <message>
        <source>for example 3</source>
        <translation>zum Beispiel 3</translation>
    </message>
    <message>
        <source>&amp;Last shock at</source>
        <translation>&amp;Letzter Schock um</translation>
    </message>
    <message>
        <source>for example 09:31</source>
        <translation>zum Beispiel 09:31</translation>
    </message>
    <message>
        <source>Device se&amp;tting</source>
        <translation>Geräteeinst&amp;ellung</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>adult</source>
        <translation>Erwachsene</translation>
    </message>
    <message>
        <source>child</source>
        <translation>Kind</translation>
    </message>
    <message>
        <source>infant</source>
        <translation>Säugling</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>Ar&amp;t</translation>
    </message>
    <message>
        <source>rescue</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>drill</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>What is not on the sheet yet</source>
        <translation>Was noch nicht auf dem Blatt steht</translation>
    </message>
    <message>
        <source>Minutes are a whole number, up to %1.</source>
        <translation>Minuten sind eine ganze Zahl bis %1.</translation>
    </message>
    <message>
        <source>Shocks are a whole number, up to %1.</source>
        <translation>Schocks sind eine ganze Zahl bis %1.</translation>
    </message>
    <message>
        <source>No shock, but a time of the last one: both are left to the pen until one of them is changed.</source>
        <translation>Kein Schock, aber eine Uhrzeit für den letzten: Beides bleibt zum Eintragen von Hand frei, bis eines davon geändert wird.</translation>
    </message>
    <message>
        <source>Write the time of day as 09:31.</source>
        <translation>Schreiben Sie die Uhrzeit in der Form 09:31.</translation>
    </message>
    <message>
        <source>Take back what was typed before</source>
        <translation>Das zuvor Getippte zurückholen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::WavesPlot</name>
    <message>
        <source>Waves of the selected stretch</source>
        <translation>Kurven des gewählten Abschnitts</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>From %1 to %2: %3. %4</source>
        <translation>Von %1 bis %2: %3. %4</translation>
    </message>
    <message>
        <source>ECG</source>
        <translation>EKG</translation>
    </message>
    <message>
        <source>Impedance</source>
        <translation>Impedanz</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Force</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>Capnogram</source>
        <translation>Kapnogramm</translation>
    </message>
    <message>
        <source>Pulse wave</source>
        <translation>Pulswelle</translation>
    </message>
    <message>
        <source>ECG paper: %1 mm/s, %2 mm/mV on this screen</source>
        <translation>EKG-Papier: %1 mm/s, %2 mm/mV auf diesem Bildschirm</translation>
    </message>
    <message>
        <source>! problem in line %1</source>
        <translation>! Problem in Zeile %1</translation>
    </message>
    <message>
        <source>! problem</source>
        <translation>! Problem</translation>
    </message>
    <message>
        <source>ECG, compressions suppressed</source>
        <translation>EKG, Herzdruckmassage unterdrückt</translation>
    </message>
    <message>
        <source>for looking only</source>
        <translation>nur zum Ansehen</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::WavesView</name>
    <message>
        <source>Selected stretch</source>
        <translation>Gewählter Abschnitt</translation>
    </message>
    <message>
        <source>Wave tracks</source>
        <translation>Kurvenspuren</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>Wider</source>
        <translation>Verkleinern</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>The whole record</source>
        <translation>Die ganze Aufzeichnung</translation>
    </message>
    <message>
        <source>the whole record</source>
        <translation>die ganze Aufzeichnung</translation>
    </message>
    <message>
        <source>Twenty seconds</source>
        <translation>Zwanzig Sekunden</translation>
    </message>
    <message>
        <source>This record holds no waves: the device or the observer wrote down events only.</source>
        <translation>Diese Aufzeichnung enthält keine Kurven: Gerät oder Beobachter hielten nur Ereignisse fest.</translation>
    </message>
    <message>
        <source>This record holds waves in a form that cannot be drawn; the list of problems says which.</source>
        <translation>Diese Aufzeichnung enthält Kurven in einer Form, die sich nicht zeichnen lässt; die Liste der Probleme sagt, welche.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>&amp;Ruler from here</source>
        <translation>&amp;Messlineal ab hier</translation>
    </message>
    <message>
        <source>&amp;Take the ruler away</source>
        <translation>Messlineal &amp;entfernen</translation>
    </message>
    <message>
        <source>Squares of ECG &amp;paper</source>
        <translation>Kästchen des EKG-&amp;Papiers</translation>
    </message>
    <message>
        <source>&amp;25 mm for a second</source>
        <translation>&amp;25 mm pro Sekunde</translation>
    </message>
    <message>
        <source>Track %1</source>
        <translation>Spur %1</translation>
    </message>
    <message>
        <source>Ruler and scale of the waves</source>
        <translation>Messlineal und Maßstab der Kurven</translation>
    </message>
    <message>
        <source>ruler: %1  ·  drag its ends</source>
        <translation>Messlineal: %1  ·  Enden lassen sich ziehen</translation>
    </message>
    <message>
        <source>Working of the r&amp;hythm hint here</source>
        <translation>Herleitung des R&amp;hythmushinweises hier</translation>
    </message>
    <message>
        <source>ECG with compressions &amp;suppressed</source>
        <translation>EKG mit &amp;unterdrückter Herzdruckmassage</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::WelcomePage</name>
    <message>
        <source>Open a recording</source>
        <translation>Eine Aufzeichnung öffnen</translation>
    </message>
    <message>
        <source>Drop a file or the device&apos;s card folder on this window, or open one: an event log (.resuslog), a WFDB record (.hea), or an observer&apos;s notes (.csv).</source>
        <translation>Ziehen Sie eine Datei oder den Ordner der Speicherkarte auf dieses Fenster, oder öffnen Sie eine Aufzeichnung: ein Ereignisprotokoll (.resuslog), eine WFDB-Aufzeichnung (.hea) oder Beobachternotizen (.csv).</translation>
    </message>
    <message>
        <source>The file is only read, never changed. You then see the whole rescue, its figures with their working, and the handover sheet is one key away.</source>
        <translation>Die Datei wird nur gelesen, nie verändert. Sie sehen dann den ganzen Einsatz und seine Zahlen mit ihrer Herleitung; das Übergabeblatt ist einen Tastendruck entfernt.</translation>
    </message>
    <message>
        <source>Opened lately:</source>
        <translation>Zuletzt geöffnet:</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>There is no recording? Type what the device or people said and print the same sheet.</source>
        <translation>Es gibt keine Aufzeichnung? Tragen Sie ein, was das Gerät oder Beteiligte gesagt haben, und drucken Sie dasselbe Blatt.</translation>
    </message>
    <message>
        <source>There are many? Lay some side by side, or look at a whole season of them.</source>
        <translation>Es sind viele? Legen Sie einige nebeneinander, oder sehen Sie eine ganze Saison an.</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::WorkingModel</name>
    <message>
        <source>from</source>
        <translation>ab</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>what was going on</source>
        <translation>was gerade geschah</translation>
    </message>
</context>
<context>
    <name>afterbeat::window::WorkingPanel</name>
    <message>
        <source>Chosen figure</source>
        <translation>Gewählte Zahl</translation>
    </message>
    <message>
        <source>Definition</source>
        <translation>Definition</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Working of the figure</source>
        <translation>Herleitung der Zahl</translation>
    </message>
    <message>
        <source>No figure is chosen</source>
        <translation>Keine Zahl ist gewählt</translation>
    </message>
    <message>
        <source>Choose a figure above, or one from the list of all figures: what it was made from is shown here and over the rows.</source>
        <translation>Wählen Sie oben eine Zahl oder eine aus der Liste aller Zahlen: Woraus sie entstand, steht dann hier und über den Zeilen.</translation>
    </message>
    <message>
        <source>%1, %2: the working</source>
        <translation>%1, %2: die Herleitung</translation>
    </message>
    <message>
        <source>No stretch or moment went into this figure.</source>
        <translation>In diese Zahl ging kein Abschnitt und kein Zeitpunkt ein.</translation>
    </message>
    <message>
        <source>Next part of the working</source>
        <translation>Nächster Teil der Herleitung</translation>
    </message>
    <message>
        <source>Previous part of the working</source>
        <translation>Voriger Teil der Herleitung</translation>
    </message>
    <message>
        <source>The record does not hold what this figure is made from: %1.</source>
        <translation>Die Aufzeichnung enthält nicht, woraus diese Zahl entsteht: %1.</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Shows what was recorded during a cardiac-arrest rescue or drill.</source>
        <translation>Zeigt, was bei einer Wiederbelebung oder Übung aufgezeichnet wurde.</translation>
    </message>
    <message>
        <source>Recording, folder or archive to open; several recordings are listed.</source>
        <translation>Aufzeichnung, Ordner oder Archiv zum Öffnen; mehrere Aufzeichnungen werden aufgelistet.</translation>
    </message>
</context>
</TS>

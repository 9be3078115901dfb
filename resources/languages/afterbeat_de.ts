<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>Papers</name>
    <message>
        <source>%1 noted, delivery not recorded</source>
        <translation>%1 vermerkt, Abgabe nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>lines were lost: may be more</source>
        <translation>Zeilen verloren: vielleicht mehr</translation>
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
        <source>The file does not say whether this was a rescue, a drill or a test.</source>
        <translation>Die Datei sagt nicht, ob es ein Einsatz, eine Übung oder ein Test war.</translation>
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
        <translation>für eine Analyse</translation>
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
        <translation>für Beatmungen</translation>
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
        <translation>nicht anwendbar</translation>
    </message>
    <message>
        <source>Device on for</source>
        <translation>Gerät eingeschaltet für</translation>
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
        <source>%1 not given</source>
        <translation>%1 nicht abgegeben</translation>
    </message>
    <message>
        <source>Hands off</source>
        <translation>Keine Druckmassage</translation>
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
        <translation>ab dem Anlegen der Elektroden</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>The device&apos;s analysis took %1 of it.</source>
        <translation>Davon brauchte die Analyse des Geräts %1.</translation>
    </message>
    <message>
        <source>The steadiest minute: hands were on the chest for %1 of %2.</source>
        <translation>Die stetigste Minute: Druckmassage in %1 von %2.</translation>
    </message>
    <message>
        <source>Nothing that was measured lies within its target yet. Here is what came nearest, and an effort that shows in the record.</source>
        <translation>Noch liegt nichts Gemessenes in seinem Ziel. Hier steht, was ihm am nächsten kam, und eine Leistung, die in der Aufzeichnung zu sehen ist.</translation>
    </message>
    <message>
        <source>Nothing that was measured lies within its target yet. Here is what came nearest.</source>
        <translation>Noch liegt nichts Gemessenes in seinem Ziel. Hier steht, was ihm am nächsten kam.</translation>
    </message>
    <message>
        <source>An effort that shows in the record.</source>
        <translation>Eine Leistung, die in der Aufzeichnung zu sehen ist.</translation>
    </message>
    <message>
        <source>The record cannot tell what went well. The people who were there can: ask them.</source>
        <translation>Was gut gelang, kann die Aufzeichnung nicht sagen. Wer dabei war, kann es: fragt nach.</translation>
    </message>
    <message>
        <source>There is too little in the record to choose something to practise.</source>
        <translation>Die Aufzeichnung enthält zu wenig, um etwas zum Üben auszuwählen.</translation>
    </message>
    <message>
        <source>Nothing else that was measured lies beyond its target.</source>
        <translation>Sonst liegt nichts Gemessenes außerhalb seines Ziels.</translation>
    </message>
    <message>
        <source>Nothing that was measured lies clearly beyond its target. What would you like to practise?</source>
        <translation>Nichts Gemessenes liegt deutlich außerhalb seines Ziels. Was möchtet ihr üben?</translation>
    </message>
    <message>
        <source>How was it for you?</source>
        <translation>Wie war es für euch?</translation>
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
        <source>This record holds no compression, analysis or shock yet. Open a recording of the rescue or the drill, or talk from memory: the questions below need no figures.</source>
        <translation>Diese Aufzeichnung enthält noch keine Kompression, keine Analyse und keinen Schock. Öffnen Sie eine Aufzeichnung des Einsatzes oder der Übung, oder sprechen Sie aus der Erinnerung: Die Fragen unten brauchen keine Zahlen.</translation>
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
        <translation>Zum Reden</translation>
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
        <translation>Druckmassage, %1 pro Minute</translation>
    </message>
    <message>
        <source>Hands on</source>
        <translation>Druckmassage</translation>
    </message>
    <message>
        <source>Before the first activity</source>
        <translation>Vor der ersten Tätigkeit</translation>
    </message>
    <message>
        <source>After the last activity</source>
        <translation>Nach der letzten Tätigkeit</translation>
    </message>
    <message>
        <source>Not counted</source>
        <translation>Nicht gezählt</translation>
    </message>
    <message>
        <source>Circulation returned</source>
        <translation>Kreislauf wieder da</translation>
    </message>
    <message>
        <source>What helped to keep hands on the chest?</source>
        <translation>Was half, die Hände auf der Brust zu lassen?</translation>
    </message>
    <message>
        <source>What took hands off the chest in the minute from %1?</source>
        <translation>Was holte die Hände in der Minute ab %1 von der Brust?</translation>
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
        <translation>Gegen %1, vor der ersten Kompression: Was hätte nebeneinander laufen können?</translation>
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
        <translation>Wie fühlte es sich an, so tief zu drücken, und wie lange ging es?</translation>
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
        <translation>Wodurch passten Druckmassage und Beatmung so gut zusammen?</translation>
    </message>
    <message>
        <source>What made the breaths around %1 take %2: the mask, the head, waiting for each other?</source>
        <translation>Wodurch dauerten die Beatmungen gegen %1 ganze %2: die Maske, der Kopf, das Warten aufeinander?</translation>
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
        <translation>Was half, die Elektroden so früh anzulegen?</translation>
    </message>
    <message>
        <source>What was in the way of the electrodes: clothes, wet skin, room to kneel?</source>
        <translation>Was stand den Elektroden im Weg: Kleidung, nasse Haut, Platz zum Knien?</translation>
    </message>
    <message>
        <source>How did everybody know to stand clear?</source>
        <translation>Woher wussten alle, dass sie zurücktreten sollen?</translation>
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
        <translation>Pausen über %1 s zählen. Ziele: %2. Das örtliche Protokoll und die zugelassene Praxis gehen vor.</translation>
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
        <translation>Die Druckmassage hielt den Takt: im Mittel %1 pro Minute, %2 im Ziel.</translation>
    </message>
    <message>
        <source>Compressions were faster than the target: %1 a minute.</source>
        <translation>Die Druckmassage war schneller als das Ziel: %1 pro Minute.</translation>
    </message>
    <message>
        <source>Compressions were slower than the target: %1 a minute.</source>
        <translation>Die Druckmassage war langsamer als das Ziel: %1 pro Minute.</translation>
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
        <translation>Es wurde besser: ohne Druckmassage %1 der ersten Hälfte und nur %2 der zweiten.</translation>
    </message>
    <message>
        <source>It got harder: hands were off for %1 of the first half and %2 of the second.</source>
        <translation>Es wurde schwerer: ohne Druckmassage %1 der ersten Hälfte und %2 der zweiten.</translation>
    </message>
    <message>
        <source>The pace changed a lot: %1 of the compressions came within the target rate.</source>
        <translation>Der Takt wechselte stark: %1 der Kompressionen lagen im Ziel.</translation>
    </message>
    <message>
        <source>The chest came all the way up after %1 of compressions.</source>
        <translation>Nach %1 der Kompressionen wurde ganz entlastet.</translation>
    </message>
    <message>
        <source>The chest came all the way up after %1 of compressions; after the others some weight stayed on it.</source>
        <translation>Nach %1 der Kompressionen wurde ganz entlastet; nach den anderen blieb etwas Gewicht auf der Brust.</translation>
    </message>
    <message>
        <source>Hands stayed on: they were off the chest for only %1 of the time.</source>
        <translation>Die Hände blieben auf der Brust: ohne Druckmassage waren nur %1 der Zeit.</translation>
    </message>
    <message>
        <source>Hands were off the chest for %1 of the time.</source>
        <translation>Ohne Druckmassage waren %1 der Zeit.</translation>
    </message>
    <message>
        <source>The first shock came %1 after power-on.</source>
        <translation>Der erste Schock kam %1 nach dem Einschalten.</translation>
    </message>
    <message>
        <source>The electrodes were on %1 after power-on.</source>
        <translation>Die Elektroden waren %1 nach dem Einschalten angelegt.</translation>
    </message>
    <message>
        <source>The first compression came %1 after the electrodes were on.</source>
        <translation>Die erste Kompression kam %1 nach dem Anlegen der Elektroden.</translation>
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
        <translation>Druckmassage, Takt und Tiefe</translation>
    </message>
    <message>
        <source>hands on and off (less than a minute was recorded)</source>
        <translation>Druckmassage (weniger als eine Minute aufgezeichnet)</translation>
    </message>
    <message>
        <source>the pace of compressions</source>
        <translation>der Takt der Kompressionen</translation>
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
        <source>no shock in this record</source>
        <translation>kein Schock in dieser Aufzeichnung</translation>
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
        <translation>Diese Aufzeichnung hat nichts, was sich in Zeilen zeichnen ließe: keine Elektroden, Kompressionen, Analyse oder Schocks.</translation>
    </message>
    <message>
        <source>%1 s</source>
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
        <translation>Elektroden ab</translation>
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
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>not counted: not part of the rescue</source>
        <translation>nicht gezählt: gehört nicht zum Einsatz</translation>
    </message>
    <message>
        <source>not counted: recording not trusted</source>
        <translation>nicht gezählt: Aufzeichnung unzuverlässig</translation>
    </message>
    <message>
        <source>not counted: nobody was watching</source>
        <translation>nicht gezählt: niemand hat beobachtet</translation>
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
        <translation>Druckmassage begonnen</translation>
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
        <translation>Druckmassage; Höhe zeigt die Frequenz</translation>
    </message>
    <message>
        <source>hands on, rate not recorded</source>
        <translation>Druckmassage, Frequenz nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>hands off, seconds</source>
        <translation>ohne Druckmassage, Sekunden</translation>
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
        <translation>keine Druckmassage</translation>
    </message>
    <message>
        <source>hands on for %1</source>
        <translation>Druckmassage %1 lang</translation>
    </message>
    <message>
        <source>hands on for %1, about %2 a minute</source>
        <translation>Druckmassage %1 lang, etwa %2 pro Minute</translation>
    </message>
    <message>
        <source>hands off %1 from %2, beyond the limit</source>
        <translation>ohne Druckmassage %1 ab %2, über der Grenze</translation>
    </message>
    <message>
        <source>hands off %1 from %2</source>
        <translation>ohne Druckmassage %1 ab %2</translation>
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
        <translation>Kreislaufstillstand: was aufgezeichnet wurde</translation>
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
        <translation>Diese Aufzeichnung wurde aus einer beschädigten Datei gerettet (%1 Mängel).</translation>
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
        <translation>Zurück an</translation>
    </message>
    <message>
        <source>Return to: %1</source>
        <translation>Zurück an: %1</translation>
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
        <translation>Uhr verglichen mit: %1; die Abweichung von %2 ist berichtigt.</translation>
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
        <translation>Keine Druckmassage: Pausen über %1 s zählen ganz.</translation>
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
        <source>checksum %1…%2</source>
        <translation>Prüfsumme %1…%2</translation>
    </message>
    <message>
        <source>printed %1</source>
        <translation>gedruckt %1</translation>
    </message>
    <message>
        <source>This sheet does not replace your own assessment. Local protocol and licensed practice go first.</source>
        <translation>Dieses Blatt ersetzt nicht die eigene Beurteilung. Örtliche Vorgaben und anerkannte Fachpraxis gehen vor.</translation>
    </message>
    <message>
        <source>SHA-256 of the file: %1</source>
        <translation>SHA-256 der Datei: %1</translation>
    </message>
    <message>
        <source>on %1, off %2</source>
        <translation>an %1, aus %2</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>an %1</translation>
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
        <source>recording broke off: may be more</source>
        <translation>Aufzeichnung brach ab: evtl. mehr</translation>
    </message>
    <message>
        <source>none until recording broke off</source>
        <translation>keiner bis zum Abbruch der Aufzeichnung</translation>
    </message>
    <message>
        <source>%1 min before printing</source>
        <translation>%1 min vor dem Druck</translation>
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
        <translation>Gerät an %1</translation>
    </message>
    <message>
        <source>electrodes on %1</source>
        <translation>Elektroden an %1</translation>
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
        <source>collapse %1</source>
        <translation>Kollaps %1</translation>
    </message>
    <message>
        <source>Collapse at</source>
        <translation>Kollaps um</translation>
    </message>
    <message>
        <source>call received %1</source>
        <translation>Notruf %1</translation>
    </message>
    <message>
        <source>Call received at</source>
        <translation>Notruf um</translation>
    </message>
    <message>
        <source>from collapse to first shock %1</source>
        <translation>vom Kollaps bis zum ersten Schock %1</translation>
    </message>
    <message>
        <source>Times of the device: not recorded</source>
        <translation>Zeiten des Geräts: nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>No rhythm analysis in this record</source>
        <translation>Keine Rhythmusanalyse in dieser Aufzeichnung</translation>
    </message>
    <message>
        <source>Rhythm analyses: not recorded</source>
        <translation>Rhythmusanalysen: nicht aufgezeichnet</translation>
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
        <translation>der Kollaps wurde von Anwesenden gesehen</translation>
    </message>
    <message>
        <source>the collapse was seen by the crew</source>
        <translation>der Kollaps wurde vom Rettungsdienst gesehen</translation>
    </message>
    <message>
        <source>nobody saw the collapse</source>
        <translation>niemand hat den Kollaps gesehen</translation>
    </message>
    <message>
        <source>Seen by</source>
        <translation>Gesehen von</translation>
    </message>
    <message>
        <source>bystanders gave compressions</source>
        <translation>Druckmassage durch Anwesende</translation>
    </message>
    <message>
        <source>no compressions by bystanders</source>
        <translation>keine Druckmassage durch Anwesende</translation>
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
        <translation>Druckmassage mit %1 pro Minute</translation>
    </message>
    <message>
        <source>compression rate: not recorded</source>
        <translation>Frequenz der Druckmassage: nicht aufgezeichnet</translation>
    </message>
    <message>
        <source> (noted by an observer)</source>
        <translation> (von Beobachtenden notiert)</translation>
    </message>
    <message>
        <source>resuscitation went on after it</source>
        <translation>danach wurde weiter reanimiert</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Chest compressions: not recorded</source>
        <translation>Druckmassage: nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>%1 chest compressions in %2 with hands on</source>
        <translation>%1 Thoraxkompressionen in %2 Druckmassage</translation>
    </message>
    <message>
        <source>Chest compressions for %1 (not all recorded singly)</source>
        <translation>Druckmassage %1 lang (nicht alle Kompressionen einzeln aufgezeichnet)</translation>
    </message>
    <message>
        <source>breaths: not recorded</source>
        <translation>Beatmungen: nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>Shocks: %1</source>
        <translation>Schocks: %1</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht benannt</translation>
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
        <translation>Behandlung</translation>
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
        <translation>vermutlich das Herz</translation>
    </message>
    <message>
        <source>medical</source>
        <translation>innere Erkrankung</translation>
    </message>
    <message>
        <source>trauma</source>
        <translation>Verletzung</translation>
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
        <translation>Eine Zeile sind zwei Minuten, ab %1</translation>
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
        <translation>Keine Druckmassage</translation>
    </message>
    <message>
        <source>no time to measure it in</source>
        <translation>keine Zeit, in der zu messen war</translation>
    </message>
    <message>
        <source>%1 of %2 without circulation</source>
        <translation>%1 von %2 ohne Kreislauf</translation>
    </message>
    <message>
        <source>Circulation</source>
        <translation>Kreislauf</translation>
    </message>
    <message>
        <source>return not recorded</source>
        <translation>Wiederkehr nicht aufgezeichnet</translation>
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
        <translation>Das Gerät meldete einen Fehler: %1</translation>
    </message>
    <message>
        <source>Counted from %1 to %2 (end of the record).</source>
        <translation>Gezählt von %1 bis %2 (Ende der Aufzeichnung).</translation>
    </message>
    <message>
        <source>Counted from %1 to %2 (last compression, shock or analysis).</source>
        <translation>Gezählt von %1 bis %2 (letzte Kompression, Schock oder Analyse).</translation>
    </message>
    <message>
        <source>Targets: %1.</source>
        <translation>Zielwerte: %1.</translation>
    </message>
    <message>
        <source>crew arrived %1</source>
        <translation>Rettungsdienst da %1</translation>
    </message>
    <message>
        <source>rate within %1–%2 a minute: %3</source>
        <translation>Frequenz im Bereich %1–%2 pro Minute: %3</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
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
        <translation>Name, Aufgabe</translation>
    </message>
    <message>
        <source>Device switched on at</source>
        <translation>Gerät ein um</translation>
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
        <translation>Druckmassage von</translation>
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
</context>
</TS>

<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Tideleg</name>
    <message>
        <location filename="../cards/card_book.py"/>
        <location filename="../cards/sheet_files.py"/>
        <source>the file cannot be written</source>
        <translation>die Datei kann nicht geschrieben werden</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <location filename="../cards/card_text.py"/>
        <source>No flags. Feasible is not safe.</source>
        <translation>Keine Meldungen. Machbar heißt nicht sicher.</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>{count} more flags, {grave} of them stops or warnings: read the report.</source>
        <translation>{count} weitere Hinweise, davon {grave} Stopps oder Warnungen: siehe Bericht.</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>1 more flag: read the report.</source>
        <translation>1 weitere Meldung: siehe Bericht.</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>{count} more flags: read the report.</source>
        <translation>{count} weitere Meldungen: siehe Bericht.</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>STOP:</source>
        <translation>STOPP:</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>WARNING:</source>
        <translation>WARNUNG:</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>note:</source>
        <translation>Hinweis:</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>crosses a channel</source>
        <translation>quert ein Fahrwasser</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>touches an area with rules</source>
        <translation>berührt ein Gebiet mit Regeln</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>crosses land</source>
        <translation>quert Land</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>longer than the swimmer's range</source>
        <translation>weiter als die Reichweite des Schwimmers</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>longer than there is time for</source>
        <translation>länger, als Zeit ist</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <location filename="../layers_out/time_layers.py"/>
        <source>cannot be swum</source>
        <translation>nicht schwimmbar</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>in the dark</source>
        <translation>im Dunkeln</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>too shallow</source>
        <translation>zu flach</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>too deep</source>
        <translation>zu tief</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/day_curves.py"/>
        <location filename="../cards/day_words.py"/>
        <source>stream not known</source>
        <translation>Strom nicht bekannt</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>stream beyond its tables</source>
        <translation>Strom außerhalb seiner Tabellen</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <location filename="../cards/day_curves.py"/>
        <source>tide not known</source>
        <translation>Gezeit nicht bekannt</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>water to drink</source>
        <translation>Trinkwasser</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>pace and limits are guesses</source>
        <translation>Tempo und Grenzen sind geschätzt</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <location filename="../core/results/card.py"/>
        <location filename="../core/solve/drift_areas.py"/>
        <source>leg {number}</source>
        <translation>Abschnitt {number}</translation>
    </message>
    <message>
        <location filename="../cards/card_flags.py"/>
        <source>legs {first} and {last}</source>
        <translation>Abschnitte {first} und {last}</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <location filename="../cards/card_text.py"/>
        <source>ALARM (shore contact)</source>
        <translation>ALARM (Kontakt an Land)</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>shore ALARM</source>
        <translation>ALARM an Land</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <location filename="../cards/card_text.py"/>
        <source>Weakest stream, then sets to:</source>
        <translation>Schwächster Strom, setzt danach nach:</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>Set arrows: true north is up.</source>
        <translation>Strompfeile: rw Nord ist oben.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>No arrival, so no alarm time.</source>
        <translation>Keine Ankunft, daher keine Alarmzeit.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>Tide not known.</source>
        <translation>Gezeit nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>Predicted, not observed. Not for navigation of vessels. Never dive alone.</source>
        <translation>Vorhersage, keine Beobachtung. Nicht zur Navigation von Fahrzeugen. Nie allein tauchen.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>Predicted. Not for navigation of vessels. Never dive alone.</source>
        <translation>Vorhergesagt. Nicht für die Schifffahrt. Nie allein tauchen.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <location filename="../cards/day_light.py"/>
        <source>sunset</source>
        <translation>Sonnenuntergang</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>The depth of 1 more mark is not shown.</source>
        <translation>Die Tiefe von 1 weiteren Marke ist nicht gezeigt.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>Depths of {count} more marks are not shown.</source>
        <translation>Die Tiefen von {count} weiteren Marken sind nicht gezeigt.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>depth at {name}:</source>
        <translation>Tiefe bei {name}:</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>depth, m, at</source>
        <translation>Tiefe, m, um</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>Depths not known.</source>
        <translation>Tiefen nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>{place} {flat} m, in rock {rock} m</source>
        <translation>{place} {flat} m, in Fels {rock} m</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>Line to let out, on flat ground: {places}. You carry {line} m.</source>
        <translation>Leine ausgeben, auf flachem Grund: {places}. Dabei: {line} m.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>Let out up to {line} m of line.</source>
        <translation>Bis zu {line} m Leine geben.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>On all of it the float swings: {places}.</source>
        <translation>Dabei schwingt die Boje: {places}.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>CLOCKS CHANGE during this swim: times are {before} first, {after} at its end.</source>
        <translation>UHREN WERDEN während der Tour UMGESTELLT: Zeiten sind zuerst {before}, am Ende {after}.</translation>
    </message>
    <message>
        <location filename="../cards/card_foot.py"/>
        <source>M is magnetic: variation {variation}, {model}, {day}.</source>
        <translation>M ist magnetisch: Missweisung {variation}, {model}, {day}.</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>sketch</source>
        <translation>Skizze</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>positions</source>
        <translation>Positionen</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>transits</source>
        <translation>Deckpeilungen</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>ways if late</source>
        <translation>Wege bei Verspätung</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>headings home</source>
        <translation>Kurse heim</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>tides</source>
        <translation>Gezeiten</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>depths, line</source>
        <translation>Tiefen, Leine</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>alarm, tides, depths</source>
        <translation>Alarm, Gezeiten, Tiefen</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <location filename="../cards/read_back.py"/>
        <source>flags</source>
        <translation>Meldungen</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>ways home</source>
        <translation>Heimwege</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>HOME from {place}</source>
        <translation>HEIM von {place}</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <source>Not on this card: {parts}.</source>
        <translation>Nicht auf dieser Karte: {parts}.</translation>
    </message>
    <message>
        <location filename="../cards/card_parts.py"/>
        <location filename="../core/results/shared.py"/>
        <source>Marks are left out for sharing: no positions, headings or distances.</source>
        <translation>Zum Weitergeben ohne Marken: keine Positionen, Kurse und Entfernungen.</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <source>Choose larger paper or more sides, or make the frames of your layout larger</source>
        <translation>Größeres Papier oder mehr Seiten wählen, oder die Rahmen des eigenen Layouts vergrößern</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <source>The card of '{route}' ({legs} legs) does not fit {what}: no room for '{part}', {where}</source>
        <translation>Die Karte von '{route}' ({legs} Abschnitte) passt nicht auf {what}: kein Platz für '{part}', {where}</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <source>the last frame for it is '{frame}'</source>
        <translation>der letzte Rahmen dafür ist '{frame}'</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <location filename="../layers_in/model_row.py"/>
        <location filename="../layers_in/order_in.py"/>
        <location filename="../layers_in/table.py"/>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <source>letters of 4 mm, headings and times of 7 mm; they are never made smaller</source>
        <translation>Buchstaben von 4 mm, Kurse und Zeiten von 7 mm; kleiner werden sie nie</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <source>there is no room for a single leg of this swim beside what every card must say</source>
        <translation>neben dem, was jede Karte sagen muss, hat kein einziger Abschnitt dieser Tour Platz</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <source>legs of this swim that there is room for: {legs}</source>
        <translation>so viele Abschnitte dieser Tour haben Platz: {legs}</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <source>Choose a shorter route: larger paper and more sides do not take all of this swim either</source>
        <translation>Eine kürzere Route wählen: auch größeres Papier und mehr Seiten fassen diese Tour nicht ganz</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <source>Choose larger paper or more sides; what takes this swim: {choices}</source>
        <translation>Größeres Papier oder mehr Seiten wählen; diese Tour fasst: {choices}</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <location filename="../core/text_moments.py"/>
        <location filename="../core/water/stream_text.py"/>
        <location filename="../dock/tables/cell_text.py"/>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <location filename="../dock/card_choice.py"/>
        <source>1 side</source>
        <translation>1 Seite</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <location filename="../dock/card_choice.py"/>
        <source>2 sides</source>
        <translation>2 Seiten</translation>
    </message>
    <message>
        <location filename="../cards/card_refusal.py"/>
        <location filename="../dock/card_choice.py"/>
        <source>4 sides</source>
        <translation>4 Seiten</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <location filename="../processing/planswim.py"/>
        <location filename="../processing/swimcard.py"/>
        <source>Wet card</source>
        <translation>Nasskarte</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>it is not XML</source>
        <translation>sie ist kein XML</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>QGIS finds no layout in it</source>
        <translation>QGIS findet kein Layout darin</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>The layout {file} has no frame for: {parts}</source>
        <translation>Das Layout {file} hat keinen Rahmen für: {parts}</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>A label whose id begins with 'tideleg' is a frame; its text names the parts, one a line</source>
        <translation>Eine Beschriftung, deren Kennung mit 'tideleg' beginnt, ist ein Rahmen; ihr Text nennt die Teile, einen je Zeile</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>Add the parts to a frame, or begin again with one of the layouts that come with Tideleg</source>
        <translation>Die Teile in einem Rahmen ergänzen oder mit einem der Layouts von Tideleg neu beginnen</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>reaches over the edge of its page</source>
        <translation>reicht über den Rand seiner Seite</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>is turned</source>
        <translation>ist gedreht</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>lies over '{other}'</source>
        <translation>liegt über „{other}“</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>The frame '{id}' of the layout {file} {why}</source>
        <translation>Der Rahmen „{id}“ des Layouts {file} {why}</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>Frames lie within their page, upright, and beside each other</source>
        <translation>Rahmen liegen auf ihrer Seite, aufrecht und nebeneinander</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>Move it in the layout designer, and save the template again</source>
        <translation>Ihn im Layoutdesigner verschieben und die Vorlage neu speichern</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>The frame '{id}' of the layout {file} names '{part}'</source>
        <translation>Der Rahmen '{id}' des Layouts {file} nennt '{part}'</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>one part a line, of: {parts}</source>
        <translation>einen Teil je Zeile, von: {parts}</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>Correct the text of the frame</source>
        <translation>Den Text des Rahmens berichtigen</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>The layout {file} cannot be read: {why}</source>
        <translation>Das Layout {file} ist nicht zu lesen: {why}</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>a print layout template (.qpt)</source>
        <translation>eine Druckvorlage (.qpt)</translation>
    </message>
    <message>
        <location filename="../cards/card_templates.py"/>
        <source>Save the layout as a template in QGIS's layout designer, and choose that file</source>
        <translation>Das Layout in der Layoutgestaltung von QGIS als Vorlage speichern und diese Datei wählen</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/card_title.py"/>
        <location filename="../cards/sheet_files.py"/>
        <source>PREDICTED</source>
        <translation>VORHERSAGE</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/card_title.py"/>
        <source>NOT FEASIBLE</source>
        <translation>NICHT MACHBAR</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/card_title.py"/>
        <source>times in {zone}</source>
        <translation>Zeiten in {zone}</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/card_title.py"/>
        <source>swimmer {name}</source>
        <translation>Schwimmer {name}</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/card_title.py"/>
        <source>from {name}</source>
        <translation>ab {name}</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/leg_rows.py"/>
        <source>NOT SWIMMABLE</source>
        <translation>NICHT SCHWIMMBAR</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/leg_rows.py"/>
        <source>NOT REACHED</source>
        <translation>NICHT ERREICHT</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <source>leave {leave}, arrive {arrive}, {minutes} min</source>
        <translation>ab {leave}, an {arrive}, {minutes} min</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/leg_rows.py"/>
        <source>HEADING</source>
        <translation>KURS</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/leg_rows.py"/>
        <source>Only if leg {number} could be swum.</source>
        <translation>Nur falls Abschnitt {number} schwimmbar wäre.</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <source>stream sets {set} true, {rate} kn</source>
        <translation>Strom setzt {set} rechtweisend, {rate} kn</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <location filename="../cards/turn_back_block.py"/>
        <source>TURN BACK BY</source>
        <translation>UMKEHR BIS</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <source>Depth at {name}: {depths}</source>
        <translation>Tiefe an {name}: {depths}</translation>
    </message>
    <message>
        <location filename="../cards/card_text.py"/>
        <source>to {set} true</source>
        <translation>nach {set} rechtweisend</translation>
    </message>
    <message>
        <location filename="../cards/csv_legs.py"/>
        <source>Leg of {route}; times in {zone}</source>
        <translation>Abschnitt von {route}; Zeiten in {zone}</translation>
    </message>
    <message>
        <location filename="../cards/csv_legs.py"/>
        <source>Only if leg {number} could be swum</source>
        <translation>Nur wenn Abschnitt {number} schwimmbar wäre</translation>
    </message>
    <message>
        <location filename="../cards/day_curves.py"/>
        <source>you make {pace}</source>
        <translation>eigenes Tempo {pace}</translation>
    </message>
    <message>
        <location filename="../cards/day_curves.py"/>
        <source>you make {pace} kn</source>
        <translation>eigenes Tempo {pace} kn</translation>
    </message>
    <message>
        <location filename="../cards/day_departures.py"/>
        <source>planned {at}</source>
        <translation>geplant {at}</translation>
    </message>
    <message>
        <location filename="../cards/day_departures.py"/>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <location filename="../cards/day_departures.py"/>
        <source>no departures looked at</source>
        <translation>keine Startzeiten geprüft</translation>
    </message>
    <message>
        <location filename="../cards/day_departures.py"/>
        <source>+{count} more</source>
        <translation>+{count} weitere</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Asked for a picture of no days</source>
        <translation>Bild ohne Tage verlangt</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Give a longer time</source>
        <translation>Eine längere Zeit angeben</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Asked for a picture in a file that ends in '{}'</source>
        <translation>Bild in einer Datei verlangt, die auf „{}“ endet</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Pictures are {}</source>
        <translation>Bilder sind {}</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Choose one of these endings</source>
        <translation>Eine dieser Endungen wählen</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Asked for a PNG of {} days</source>
        <translation>PNG von {} Tagen verlangt</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>It may be {} pixels high</source>
        <translation>Es darf {} Pixel hoch sein</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Write a PDF, or fewer days</source>
        <translation>Ein PDF schreiben oder weniger Tage</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>the picture could not be written</source>
        <translation>das Bild konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Asked for an SVG, and this QGIS has no QtSvg</source>
        <translation>SVG verlangt, und dieses QGIS hat kein QtSvg</translation>
    </message>
    <message>
        <location filename="../cards/day_export.py"/>
        <source>Install PyQt's QtSvg, or write a PDF or PNG</source>
        <translation>QtSvg von PyQt installieren, oder ein PDF oder PNG schreiben</translation>
    </message>
    <message>
        <location filename="../cards/day_light.py"/>
        <source>daylight not known</source>
        <translation>Tageslicht nicht bekannt</translation>
    </message>
    <message>
        <location filename="../cards/day_light.py"/>
        <source>dark all day</source>
        <translation>den ganzen Tag dunkel</translation>
    </message>
    <message>
        <location filename="../cards/day_light.py"/>
        <source>light all night</source>
        <translation>die ganze Nacht hell</translation>
    </message>
    <message>
        <location filename="../cards/day_light.py"/>
        <source>dawn</source>
        <translation>Morgendämmerung</translation>
    </message>
    <message>
        <location filename="../cards/day_light.py"/>
        <source>sunrise</source>
        <translation>Sonnenaufgang</translation>
    </message>
    <message>
        <location filename="../cards/day_light.py"/>
        <source>dusk</source>
        <translation>Abenddämmerung</translation>
    </message>
    <message>
        <location filename="../cards/day_page.py"/>
        <location filename="../core/chart/hours.py"/>
        <source>{first} to {last}</source>
        <translation>{first} bis {last}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>feasible</source>
        <translation>machbar</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>stream</source>
        <translation>Strom</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <location filename="../dock/day_reading.py"/>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>too late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>range</source>
        <translation>Weite</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <location filename="../core/solve/flags/closed.py"/>
        <location filename="../core/solve/reach/find_reach.py"/>
        <location filename="../core/solve/turn_back/leaving.py"/>
        <location filename="../core/solve/windows/chart_limits.py"/>
        <location filename="../layers_in/swim_in.py"/>
        <source>land</source>
        <translation>Land</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>closed</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <location filename="../cards/sketch_areas.py"/>
        <source>ferry</source>
        <translation>Fähre</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <location filename="../cards/leg_rows.py"/>
        <location filename="../cards/season_contents.py"/>
        <location filename="../cards/sheet_words.py"/>
        <location filename="../dock/day_reading.py"/>
        <location filename="../dock/reach_rows.py"/>
        <location filename="../dock/rows.py"/>
        <location filename="../dock/sheet_section.py"/>
        <location filename="../dock/time_words.py"/>
        <location filename="../layers_out/styles/map_tips.py"/>
        <location filename="../layers_out/time_layers.py"/>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>feasible departures</source>
        <translation>machbare Startzeiten</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>stream too strong</source>
        <translation>Strom zu stark</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>home only in the dark</source>
        <translation>erst im Dunkeln zurück</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <location filename="../dock/day_reading.py"/>
        <source>twilight</source>
        <translation>Dämmerung</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>longer than your hours</source>
        <translation>länger als die eigenen Stunden</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>beyond your range</source>
        <translation>weiter als die eigene Reichweite</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>land in the way</source>
        <translation>Land im Weg</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <location filename="../core/solve/turn_back/leaving.py"/>
        <source>closed water</source>
        <translation>gesperrtes Wasser</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>ferry due</source>
        <translation>Fähre erwartet</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>depth at a mark</source>
        <translation>Tiefe an einer Marke</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>above {datum}</source>
        <translation>über {datum}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>datum not known</source>
        <translation>Bezugsniveau nicht bekannt</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>Departures</source>
        <translation>Startzeiten</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>Stream, kn</source>
        <translation>Strom, kn</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>at {}</source>
        <translation>bei {}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>on the route</source>
        <translation>auf der Route</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>Tide, m</source>
        <translation>Gezeit, m</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>Daylight</source>
        <translation>Tageslicht</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>then {offset}</source>
        <translation>dann {offset}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>clocks go on {minutes} min</source>
        <translation>Uhren {minutes} min vor</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>clocks go back {minutes} min</source>
        <translation>Uhren {minutes} min zurück</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>any time</source>
        <translation>jederzeit</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>until {last}</source>
        <translation>bis {last}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>from {first}</source>
        <translation>ab {first}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>{span}, best {best}</source>
        <translation>{span}, am besten {best}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>{minutes} min, home {at}</source>
        <translation>{minutes} min, zurück {at}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>home {at}</source>
        <translation>zurück {at}</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>The stream lies partly outside its tables: less sure.</source>
        <translation>Der Strom liegt zum Teil außerhalb seiner Tafeln: weniger sicher.</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>No departure of this day is feasible.</source>
        <translation>Keine Startzeit dieses Tages ist machbar.</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>Stream in kn; dashed: what you make.</source>
        <translation>Strom in kn; gestrichelt: eigenes Tempo.</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>Predicted, not observed. Feasible is not safe. Not for the navigation of vessels.</source>
        <translation>Vorhersage, keine Beobachtung. Machbar heißt nicht sicher. Nicht zur Navigation von Fahrzeugen.</translation>
    </message>
    <message>
        <location filename="../cards/day_words.py"/>
        <source>{span}. Opens: {opens}. Closes: {closes}.</source>
        <translation>{span}. Öffnet: {opens}. Schließt: {closes}.</translation>
    </message>
    <message>
        <location filename="../cards/gps_options.py"/>
        <source>Asked for names of {} letters for the GPS</source>
        <translation>Namen mit {} Buchstaben für das GPS verlangt</translation>
    </message>
    <message>
        <location filename="../cards/gps_options.py"/>
        <source>Names have {} to {} letters, or any number</source>
        <translation>Namen haben {} bis {} Buchstaben, oder beliebig viele</translation>
    </message>
    <message>
        <location filename="../cards/gps_options.py"/>
        <source>Choose a number in between, or leave it empty</source>
        <translation>Eine Zahl dazwischen wählen oder leer lassen</translation>
    </message>
    <message>
        <location filename="../cards/gps_options.py"/>
        <source>Asked for a point on the way every {} m</source>
        <translation>Einen Punkt auf dem Weg alle {} m verlangt</translation>
    </message>
    <message>
        <location filename="../cards/gps_options.py"/>
        <source>They are {} m apart at the least</source>
        <translation>Sie liegen mindestens {} m auseinander</translation>
    </message>
    <message>
        <location filename="../cards/gps_options.py"/>
        <source>Choose a greater distance, or leave it empty for none</source>
        <translation>Einen größeren Abstand wählen, oder leer lassen für keine</translation>
    </message>
    <message>
        <location filename="../cards/gpx.py"/>
        <source>Points every {} m make {} waypoints, with names of up to {} letters</source>
        <translation>Punkte alle {} m ergeben {} Wegpunkte, mit Namen bis {} Buchstaben</translation>
    </message>
    <message>
        <location filename="../cards/gpx.py"/>
        <source>{} waypoints are the most that small receivers keep, and names have the letters asked for</source>
        <translation>{} Wegpunkte sind das Meiste, was kleine Empfänger behalten, und Namen haben die verlangten Buchstaben</translation>
    </message>
    <message>
        <location filename="../cards/gpx.py"/>
        <source>Put the points further apart</source>
        <translation>Die Punkte weiter auseinander legen</translation>
    </message>
    <message>
        <location filename="../cards/gpx.py"/>
        <source>Departure {when}.</source>
        <translation>Start {when}.</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>leave</source>
        <translation>ab</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>arrive</source>
        <translation>an</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>set, kn</source>
        <translation>setzt, kn</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>actual</source>
        <translation>wirklich</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>to</source>
        <translation>nach</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>bearing</source>
        <translation>Peilung</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>distance</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>position</source>
        <translation>Position</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>LEGS {first}-{last} ARE NOT ON THIS CARD</source>
        <translation>ABSCHNITTE {first}-{last} FEHLEN AUF DIESER KARTE</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <location filename="../cards/ways_home.py"/>
        <source>{minutes} min</source>
        <translation>{minutes} min</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>{rate} kn</source>
        <translation>{rate} kn</translation>
    </message>
    <message>
        <location filename="../cards/leg_rows.py"/>
        <source>and {count} more new headings: see the report</source>
        <translation>und {count} weitere neue Kurse: siehe Bericht</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>The {} file is not read again: this GDAL has no driver for it.</source>
        <translation>Die Datei {} wird nicht zurückgelesen: dieses GDAL hat keinen Treiber dafür.</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>Times in the {} file are not read again: this GDAL lacks a driver.</source>
        <translation>Zeiten in der Datei {} werden nicht zurückgelesen: diesem GDAL fehlt ein Treiber.</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>waypoints</source>
        <translation>Wegpunkte</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>points of the route</source>
        <translation>Punkte der Route</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>points of the track</source>
        <translation>Punkte der Spur</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>segments of the track</source>
        <translation>Abschnitte der Spur</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>cells of row {}</source>
        <translation>Zellen der Zeile {}</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>legs</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>tracks</source>
        <translation>Spuren</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>ends of leg {}</source>
        <translation>Enden von Abschnitt {}</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>track points of leg {}</source>
        <translation>Spurpunkte von Abschnitt {}</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>times</source>
        <translation>Zeiten</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>The {} file could not be read again after it was written</source>
        <translation>Die Datei {} war nach dem Schreiben nicht wieder zu lesen</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>It was not kept. See whether the disk is full, or choose another folder</source>
        <translation>Sie wurde nicht behalten. Ist der Datenträger voll? Sonst einen anderen Ordner wählen</translation>
    </message>
    <message>
        <location filename="../cards/read_back.py"/>
        <source>The {} file was read again and differs from the plan: {}, {} where the plan has {}</source>
        <translation>Die Datei {} wurde zurückgelesen und weicht vom Plan ab: {}, {} statt {} im Plan</translation>
    </message>
    <message>
        <location filename="../cards/row_looks.py"/>
        <source>The card's legs have {width} mm of width</source>
        <translation>Die Abschnitte der Karte haben {width} mm Breite</translation>
    </message>
    <message>
        <location filename="../cards/row_looks.py"/>
        <source>at least {width} mm</source>
        <translation>mindestens {width} mm</translation>
    </message>
    <message>
        <location filename="../cards/row_looks.py"/>
        <source>Make the frame wider</source>
        <translation>Den Rahmen breiter machen</translation>
    </message>
    <message>
        <location filename="../cards/season_contents.py"/>
        <source>{first} to {last}, times in {zone}, swimmer {swimmer}</source>
        <translation>{first} bis {last}, Zeiten in {zone}, es schwimmt {swimmer}</translation>
    </message>
    <message>
        <location filename="../cards/season_contents.py"/>
        <source>{cards} cards of {windows} windows on {days} days. PREDICTED: look at the sea before you go.</source>
        <translation>{cards} Karten von {windows} Fenstern an {days} Tagen. VORHERGESAGT: sieh dir das Meer an, bevor du gehst.</translation>
    </message>
    <message>
        <location filename="../cards/season_contents.py"/>
        <source>leave {first} to {last}; planned {depart}, home {home}, {minutes} min</source>
        <translation>los {first} bis {last}; geplant {depart}, zurück {home}, {minutes} min</translation>
    </message>
    <message>
        <location filename="../cards/season_contents.py"/>
        <source>LATE: no departure tried in this window leaves every stop in time. Read the card's turn back.</source>
        <translation>ZU SPÄT: bei keinem probierten Aufbruch in diesem Fenster wird jeder Halt rechtzeitig verlassen. Lies die Umkehr auf der Karte.</translation>
    </message>
    <message>
        <location filename="../cards/season_contents.py"/>
        <source>STOP: {flag}</source>
        <translation>STOPP: {flag}</translation>
    </message>
    <message>
        <location filename="../cards/season_contents.py"/>
        <source>Every day of the span has a window.</source>
        <translation>Jeder Tag des Zeitraums hat ein Fenster.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_files.py"/>
        <source>NOT FEASIBLE AS PLANNED, PREDICTED</source>
        <translation>SO WIE GEPLANT NICHT MACHBAR, VORHERSAGE</translation>
    </message>
    <message>
        <location filename="../cards/sheet_files.py"/>
        <source>Route: {route}.</source>
        <translation>Route: {route}.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_files.py"/>
        <source>Asked for the sheet as a PDF, and this QGIS has no QtSvg to draw its map</source>
        <translation>Das Blatt als PDF verlangt, und dieses QGIS hat kein QtSvg, um seine Karte zu zeichnen</translation>
    </message>
    <message>
        <location filename="../cards/sheet_files.py"/>
        <source>Install PyQt's QtSvg, or write the sheet as HTML</source>
        <translation>QtSvg von PyQt installieren, oder das Blatt als HTML schreiben</translation>
    </message>
    <message>
        <location filename="../cards/sheet_map.py"/>
        <source>Map of the drift areas</source>
        <translation>Karte der Driftgebiete</translation>
    </message>
    <message>
        <location filename="../cards/sheet_map.py"/>
        <source>Map of the swim</source>
        <translation>Karte der Tour</translation>
    </message>
    <message>
        <location filename="../cards/sheet_map.py"/>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Swim on {day}: for the shore contact</source>
        <translation>Tour am {day}: für den Kontakt an Land</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>only if leg {number} could be swum</source>
        <translation>nur wenn Abschnitt {number} schwimmbar wäre</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>LEG {number}, FROM {start} TO {end}, CANNOT BE SWUM: {why}.</source>
        <translation>ABSCHNITT {number}, VON {start} NACH {end}, IST NICHT SCHWIMMBAR: {why}.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>DO NOT ACCEPT THIS PLAN AS IT STANDS</source>
        <translation>DIESEN PLAN SO NICHT ANNEHMEN</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>FROM {stop} NO WAY OUT IS SAFE when they are there, {arrive} to {leave}.</source>
        <translation>VON {stop} IST KEIN AUSSTIEG SICHER, solange sie dort sind, {arrive} bis {leave}.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>THE PLAN LEAVES {stop} AT {leave}, WHICH IS TOO LATE: its last safe minute is {latest}.</source>
        <translation>DER PLAN VERLÄSST {stop} UM {leave}, UND DAS IST ZU SPÄT: die letzte sichere Minute ist {latest}.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>This plan has no time of return: it cannot be swum as it stands, and there is no alarm time.</source>
        <translation>Dieser Plan hat keine Rückkehrzeit: so, wie er ist, ist er nicht schwimmbar, und es gibt keine Alarmzeit.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Do not accept it: ask for a plan that has both.</source>
        <translation>Nicht annehmen: einen Plan verlangen, der beides hat.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>ALARM {alarm}</source>
        <translation>ALARM {alarm}</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>ALARM at {alarm}: if nobody has told you by then that they are ashore, ring the emergency service.</source>
        <translation>ALARM um {alarm}: wenn bis dahin niemand gesagt hat, dass sie an Land sind, den Notruf anrufen.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Back on shore, as planned: {home}.</source>
        <translation>Zurück an Land, wie geplant: {home}.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Say: swimmers with a float are missing at sea; how many; when they left; where they were bound; the places and the drift areas below; the colours of float and flag.</source>
        <translation>Sagen: Schwimmer mit einer Boje werden auf See vermisst; wie viele; wann sie gestartet sind; wohin sie wollten; die Orte und die Driftgebiete unten; die Farben von Boje und Flagge.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Stay where you can be reached, do not go out yourself, and do what the service asks.</source>
        <translation>Erreichbar bleiben, nicht selbst hinausgehen, und tun, was die Rettung verlangt.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>If they come ashore after the alarm, tell the service at once.</source>
        <translation>Kommen sie nach dem Alarm an Land, der Rettung sofort Bescheid sagen.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>No emergency number was typed. Write down the number of your sea rescue before they leave:</source>
        <translation>Es wurde keine Notrufnummer eingegeben. Vor dem Aufbruch die Nummer der Seenotrettung hier notieren:</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>If they are not back</source>
        <translation>Wenn sie nicht zurück sind</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>not stated: ask before they leave</source>
        <translation>nicht angegeben: vor dem Aufbruch fragen</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <location filename="../dock/swim_section.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Swimmers</source>
        <translation>Schwimmer</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Float</source>
        <translation>Boje</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <location filename="../dock/sheet_section.py"/>
        <source>Flag</source>
        <translation>Flagge</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Solid line: the way they expect to swim. Dashed: the straight legs. North is up.</source>
        <translation>Durchgezogene Linie: der erwartete Weg. Gestrichelt: die geraden Abschnitte. Norden ist oben.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>To mind: {}</source>
        <translation>Zu beachten: {}</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>The plan in words</source>
        <translation>Der Plan in Worten</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>leg {}, {}</source>
        <translation>Abschnitt {}, {}</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>legs {}, {}</source>
        <translation>Abschnitte {}, {}</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>From {start} to {end}: cannot be swum ({why}).</source>
        <translation>Von {start} nach {end}: nicht schwimmbar ({why}).</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>They leave {start} at {leave}, swim {far} to {end} in about {minutes} minutes and are there at {arrive}.</source>
        <translation>Sie brechen von {start} um {leave} auf, schwimmen {far} nach {end} in etwa {minutes} Minuten und sind um {arrive} dort.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>They must leave {stop} by {latest}; then the nearest safe way out may be {exit}.</source>
        <translation>Von {stop} müssen sie bis {latest} weg; dann ist der nächste sichere Ausstieg vielleicht {exit}.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>arrive at {}</source>
        <translation>an {}</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>leave {}</source>
        <translation>ab {}</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>{leave}: TOO LATE</source>
        <translation>{leave}: ZU SPÄT</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>ALARM, if not heard from</source>
        <translation>ALARM, falls nichts gehört</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Times are those of {zone} ({offset}).</source>
        <translation>Zeiten sind die von {zone} ({offset}).</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Timeline</source>
        <translation>Zeitplan</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <location filename="../dock/order_rows.py"/>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Position (WGS84)</source>
        <translation>Position (WGS84)</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Where they may come ashore. Late swimmers may use another exit than planned: look there too.</source>
        <translation>Wo sie an Land kommen können. Wer spät ist, nimmt vielleicht einen anderen Ausstieg als geplant: auch dort suchen.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Ways out</source>
        <translation>Ausstiege</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <location filename="../processing/streamat.py"/>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Where a float with a person may be who stopped swimming. A prediction: the sea may do otherwise.</source>
        <translation>Wo eine Boje mit einem Menschen sein kann, der nicht mehr schwimmt. Eine Vorhersage: die See kann anders handeln.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Dotted on the map: where a float may be so many minutes after the planned return. North is up.</source>
        <translation>Gepunktet auf der Karte: wo eine Boje so viele Minuten nach der geplanten Rückkehr sein kann. Norden ist oben.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>anywhere on the swim</source>
        <translation>irgendwo auf der Tour</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Last heard of</source>
        <translation>Zuletzt gehört von</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>{:.0f} min later</source>
        <translation>{:.0f} min später</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Drift areas</source>
        <translation>Driftgebiete</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>not known: the stream there is not known</source>
        <translation>nicht bekannt: der Strom dort ist nicht bekannt</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>within {km:.1f} km of {place}, or ashore</source>
        <translation>innerhalb {km:.1f} km von {place}, oder an Land</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>within {km:.1f} km of {place}</source>
        <translation>innerhalb {km:.1f} km von {place}</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>PREDICTED from tables and a chart, not observed. Water depths, streams and boats may be otherwise.</source>
        <translation>VORHERSAGE aus Tafeln und einer Seekarte, keine Beobachtung. Tiefen, Ströme und Boote können anders sein.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Agree how they tell you that they are ashore. The alarm is yours: it works without their telephones.</source>
        <translation>Vereinbaren, wie sie sagen, dass sie an Land sind. Der Alarm ist Sache des Kontakts: er geht ohne ihre Telefone.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Local rules and the rescue service's word go before this sheet.</source>
        <translation>Örtliche Regeln und das Wort der Rettung gehen diesem Blatt vor.</translation>
    </message>
    <message>
        <location filename="../cards/sheet_words.py"/>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../cards/sketch.py"/>
        <location filename="../map_tools/readings.py"/>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <location filename="../cards/sketch_areas.py"/>
        <source>channel</source>
        <translation>Fahrwasser</translation>
    </message>
    <message>
        <location filename="../cards/sketch_areas.py"/>
        <source>area with rules</source>
        <translation>Gebiet mit Regeln</translation>
    </message>
    <message>
        <location filename="../cards/transits_part.py"/>
        <source>IN LINE at {place}, front / rear:</source>
        <translation>IN DECKUNG bei {place}, vorn / hinten:</translation>
    </message>
    <message>
        <location filename="../cards/transits_part.py"/>
        <source>mark {metres} m left of the line</source>
        <translation>Marke {metres} m links der Linie</translation>
    </message>
    <message>
        <location filename="../cards/transits_part.py"/>
        <source>mark {metres} m right of the line</source>
        <translation>Marke {metres} m rechts der Linie</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <location filename="../cards/way_blocks.py"/>
        <source>{head} (goes on)</source>
        <translation>{head} (weiter)</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>Turn-back times of {count} more stops: read the report.</source>
        <translation>Umkehrzeiten von {count} weiteren Halten: siehe Bericht.</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>THE PLAN LEAVES TOO LATE: {clock}</source>
        <translation>DER PLAN GEHT ZU SPÄT LOS: {clock}</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>no exit is reached in time</source>
        <translation>kein Ausstieg rechtzeitig</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>do not plan to be here</source>
        <translation>hier nicht einplanen</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>ONLY TO {exit}</source>
        <translation>NUR NACH {exit}</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>to {exit}</source>
        <translation>nach {exit}</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>on a bad day not safe at all</source>
        <translation>an einem schlechten Tag gar nicht sicher</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>as predicted</source>
        <translation>wie vorhergesagt</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>on a bad day</source>
        <translation>am schlechten Tag</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>on a bad day only from {first} on</source>
        <translation>an einem schlechten Tag erst ab {first}</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>as predicted {clock}</source>
        <translation>vorhergesagt {clock}</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>the plan leaves at {clock}: not on a bad day</source>
        <translation>der Plan geht um {clock} los: nicht an einem schlechten Tag</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>home {heading}</source>
        <translation>heim {heading}</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>later no exit in time</source>
        <translation>später keiner rechtzeitig</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>ELSE EXIT {exit}</source>
        <translation>SONST AUSSTIEG {exit}</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>ELSE EXIT {exit}, from {clock} on</source>
        <translation>SONST NACH {exit}, ab {clock}</translation>
    </message>
    <message>
        <location filename="../cards/turn_back_block.py"/>
        <source>ELSE EXIT</source>
        <translation>SONST AUSSTIEG</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>LATE at {place}: to {exit}, leave at</source>
        <translation>SPÄT bei {place}: nach {exit}, ab</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>to {exit}, leave at</source>
        <translation>nach {exit}, ab</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>HOME from {place} to {exit}, leave at</source>
        <translation>HEIM von {place} nach {exit}, ab</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>From {clock} on: see LATE.</source>
        <translation>Ab {clock}: siehe SPÄT.</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>TOO LATE after {clock}</source>
        <translation>ZU SPÄT nach {clock}</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>Later rows are not on this card: it covers leaving until {clock}.</source>
        <translation>Spätere Zeilen stehen nicht auf der Karte: sie reicht bis Aufbruch um {clock}.</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>1 row is left out.</source>
        <translation>1 Zeile fehlt.</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>{count} rows are left out.</source>
        <translation>{count} Zeilen fehlen.</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>TOO LATE</source>
        <translation>ZU SPÄT</translation>
    </message>
    <message>
        <location filename="../cards/ways_home.py"/>
        <source>not on a bad day</source>
        <translation>nicht am schlechten Tag</translation>
    </message>
    <message>
        <location filename="../cards/wet_card.py"/>
        <source>The card's picture could not be written to {}</source>
        <translation>Das Bild der Karte konnte nicht nach {} geschrieben werden</translation>
    </message>
    <message>
        <location filename="../cards/wet_card.py"/>
        <source>Choose another folder or make room on the disk</source>
        <translation>Einen anderen Ordner wählen oder Platz auf der Platte schaffen</translation>
    </message>
    <message>
        <location filename="../cards/wet_card.py"/>
        <source>The card could not be written to {}: the exporter's answer was {}</source>
        <translation>Die Karte konnte nicht nach {} geschrieben werden: die Antwort der Ausgabe war {}</translation>
    </message>
    <message>
        <location filename="../cards/whole_files.py"/>
        <source>Could not write {}: {}</source>
        <translation>{} konnte nicht geschrieben werden: {}</translation>
    </message>
    <message>
        <location filename="../cards/whole_files.py"/>
        <location filename="../layers_out/reach_rasters.py"/>
        <source>Choose another folder or close the program that holds the file</source>
        <translation>Einen anderen Ordner wählen oder das Programm schließen, das die Datei hält</translation>
    </message>
    <message>
        <location filename="../cards/whole_files.py"/>
        <source>{} could not be written whole</source>
        <translation>{} konnte nicht ganz geschrieben werden</translation>
    </message>
    <message>
        <location filename="../cards/whole_files.py"/>
        <source>What was there before stays</source>
        <translation>Was vorher da war, bleibt</translation>
    </message>
    <message>
        <location filename="../cards/whole_files.py"/>
        <location filename="../plan_package/database.py"/>
        <location filename="../plan_package/styles.py"/>
        <source>Check free space on the disk and try again</source>
        <translation>Freien Platz auf der Platte prüfen und noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../core/chart/depths.py"/>
        <source>no sounding or contour within {surveyed_within_m:g} m</source>
        <translation>keine Lotung oder Tiefenlinie innerhalb von {surveyed_within_m:g} m</translation>
    </message>
    <message>
        <location filename="../core/chart/depths.py"/>
        <source>the nearest contour</source>
        <translation>die nächste Tiefenlinie</translation>
    </message>
    <message>
        <location filename="../core/chart/depths.py"/>
        <source>between contours and soundings</source>
        <translation>zwischen Tiefenlinien und Lotungen</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>the beginning</source>
        <translation>Anfang an</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>further notice</source>
        <translation>auf Weiteres</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>Got the times {start!r} and {end!r}</source>
        <translation>Angegeben sind die Zeiten {start!r} und {end!r}</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>Both ends are clock times, both dates, or both days of the year</source>
        <translation>Beide Enden sind Uhrzeiten, beide Daten oder beide Tage im Jahr</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>Write both the same way; use two rows for a season with daily hours</source>
        <translation>Beide gleich schreiben; für eine Saison mit täglichen Stunden zwei Zeilen verwenden</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>Got {text!r} for the time of a sailing</source>
        <translation>{text!r} steht als Zeit einer Abfahrt</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>It is a clock time such as 10:05 (every day) or a date and time</source>
        <translation>Es ist eine Uhrzeit wie 10:05 (jeden Tag) oder Datum und Uhrzeit</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>Correct the ferries table</source>
        <translation>Die Tabelle der Fähren berichtigen</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>Got {text!r} for a time</source>
        <translation>{text!r} steht als Zeit</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>It is HH:MM, YYYY-MM-DD, a date and time, or --MMDD</source>
        <translation>Es ist HH:MM, JJJJ-MM-TT, Datum und Uhrzeit oder --MMTT</translation>
    </message>
    <message>
        <location filename="../core/chart/hours.py"/>
        <source>Correct it, or leave it empty for always</source>
        <translation>Berichtigen, oder für „immer“ leer lassen</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>cairn</source>
        <translation>Steinmännchen</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>cemetery</source>
        <translation>Friedhof</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>chimney</source>
        <translation>Schornstein</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>dish aerial</source>
        <translation>Parabolantenne</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>flagpole</source>
        <translation>Fahnenmast</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>flare stack</source>
        <translation>Fackelturm</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>mast</source>
        <translation>Mast</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>windsock</source>
        <translation>Windsack</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>monument</source>
        <translation>Denkmal</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>column</source>
        <translation>Säule</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>memorial plaque</source>
        <translation>Gedenktafel</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>obelisk</source>
        <translation>Obelisk</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>statue</source>
        <translation>Standbild</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>cross</source>
        <translation>Kreuz</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>dome</source>
        <translation>Kuppel</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>radar scanner</source>
        <translation>Radarantenne</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>tower</source>
        <translation>Turm</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>windmill</source>
        <translation>Windmühle</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>wind turbine</source>
        <translation>Windkraftanlage</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>spire or minaret</source>
        <translation>Turmspitze oder Minarett</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>tank</source>
        <translation>Tank</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>grain elevator</source>
        <translation>Getreidespeicher</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>water tower</source>
        <translation>Wasserturm</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>hospital</source>
        <translation>Krankenhaus</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>hotel</source>
        <translation>Hotel</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>factory</source>
        <translation>Fabrik</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>power station</source>
        <translation>Kraftwerk</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>church</source>
        <translation>Kirche</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>chapel</source>
        <translation>Kapelle</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>temple</source>
        <translation>Tempel</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>pagoda</source>
        <translation>Pagode</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>mosque</source>
        <translation>Moschee</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>lookout</source>
        <translation>Ausguck</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>lighthouse</source>
        <translation>Leuchtturm</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>cooling tower</source>
        <translation>Kühlturm</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>beacon</source>
        <translation>Bake</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>light</source>
        <translation>Feuer</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>building</source>
        <translation>Gebäude</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>tank or silo</source>
        <translation>Tank oder Silo</translation>
    </message>
    <message>
        <location filename="../core/chart/landmark_classes.py"/>
        <source>church tower</source>
        <translation>Kirchturm</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <source>Route '{name}' has {count} stop(s)</source>
        <translation>Route „{name}“: Zahl der Halte {count}</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <source>A route has two or more different vertices</source>
        <translation>Eine Route hat mindestens zwei verschiedene Stützpunkte</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <source>Draw it from the entry over the marks to the exit</source>
        <translation>Vom Einstieg über die Marken zum Ausstieg zeichnen</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <source>The route starts at {name}, a mark: the way out is not in this plan.</source>
        <translation>Die Route beginnt bei {name}, einer Marke: Der Hinweg ist nicht in diesem Plan.</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <source>The route ends at {name}, which is no exit: the way home is not in this plan.</source>
        <translation>Die Route endet bei {name}, das kein Ausstieg ist: Der Heimweg ist nicht in diesem Plan.</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <source>{stop} lies {distance:.0f} m from {mark}: snap it to the mark if that is meant.</source>
        <translation>{stop} liegt {distance:.0f} m von {mark}: auf die Marke einrasten, falls sie gemeint ist.</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <source>{count} marks lie at one stop ({names}); the nearest counts: {name}, kind {kind}, stay {stay_min:g} min.</source>
        <translation>{count} Marken liegen an einem Halt ({names}); es gilt die nächste: {name}, Art {kind}, Aufenthalt {stay_min:g} min.</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <location filename="../dock/order_section.py"/>
        <location filename="../dock/reach_section.py"/>
        <location filename="../layers_out/styling.py"/>
        <location filename="../map_tools/place_mark.py"/>
        <location filename="../processing/bestorder.py"/>
        <location filename="../processing/reach.py"/>
        <source>Entry</source>
        <translation>Einstieg</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <location filename="../dock/order_section.py"/>
        <location filename="../layers_out/styling.py"/>
        <location filename="../processing/bestorder.py"/>
        <source>Exit</source>
        <translation>Ausstieg</translation>
    </message>
    <message>
        <location filename="../core/chart/marks.py"/>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>Waypoint {number}</source>
        <translation>Wegpunkt {number}</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <location filename="../core/solve/flags/channels.py"/>
        <source>fairway</source>
        <translation>betonntes Fahrwasser</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>dredged area</source>
        <translation>gebaggertes Gebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <location filename="../core/solve/flags/channels.py"/>
        <source>traffic lane</source>
        <translation>Einbahnweg</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>crossing of traffic lanes</source>
        <translation>Kreuzung von Einbahnwegen</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>roundabout of traffic lanes</source>
        <translation>Kreisverkehr von Einbahnwegen</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>deep water route</source>
        <translation>Tiefwasserweg</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>two-way route</source>
        <translation>Weg für beide Richtungen</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>recommended traffic lane</source>
        <translation>empfohlener Einbahnweg</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>recommended route</source>
        <translation>empfohlener Weg</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>recommended track</source>
        <translation>empfohlener Kurs</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>leading line</source>
        <translation>Leitlinie</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>ferry route</source>
        <translation>Fährstrecke</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>restricted area</source>
        <translation>Gebiet mit Beschränkungen</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>military practice area</source>
        <translation>militärisches Übungsgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>caution area</source>
        <translation>Warngebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>precautionary area</source>
        <translation>Vorsichtsgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>anchorage</source>
        <translation>Ankerplatz</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>marine farm</source>
        <translation>Marikultur</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>cable area</source>
        <translation>Kabelgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>pipeline area</source>
        <translation>Rohrleitungsgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>dumping ground</source>
        <translation>Schüttstelle</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>seaplane landing area</source>
        <translation>Landegebiet für Wasserflugzeuge</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>submarine transit lane</source>
        <translation>Transitweg für U-Boote</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>offshore production area</source>
        <translation>Fördergebiet auf See</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>incineration area</source>
        <translation>Verbrennungsgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>inshore traffic zone</source>
        <translation>Küstenverkehrszone</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>unsurveyed area</source>
        <translation>nicht vermessenes Gebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>rock</source>
        <translation>Felsen</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>obstruction</source>
        <translation>Hindernis</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>wreck</source>
        <translation>Wrack</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>rock of unknown depth</source>
        <translation>Felsen unbekannter Tiefe</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>obstruction of unknown depth</source>
        <translation>Hindernis unbekannter Tiefe</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>wreck of unknown depth</source>
        <translation>Wrack unbekannter Tiefe</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>harmonic constants of a stream, which a plan cannot hold</source>
        <translation>harmonische Konstanten eines Stroms, die ein Plan nicht aufnehmen kann</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>non-harmonic constants of a stream, which a plan cannot hold</source>
        <translation>nicht harmonische Konstanten eines Stroms, die ein Plan nicht aufnehmen kann</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>one rate for flood or ebb without its hours, which a plan cannot hold</source>
        <translation>eine Stärke für Flut oder Ebbe ohne ihre Stunden, die ein Plan nicht aufnehmen kann</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>partly above high water</source>
        <translation>zum Teil über Hochwasser</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>always dry</source>
        <translation>immer trocken</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>covers and uncovers</source>
        <translation>fällt trocken</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>awash</source>
        <translation>in Höhe des Wassers</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>traffic inbound</source>
        <translation>Verkehr einlaufend</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>traffic outbound</source>
        <translation>Verkehr auslaufend</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>traffic one-way</source>
        <translation>Verkehr in einer Richtung</translation>
    </message>
    <message>
        <location filename="../core/chart/object_classes.py"/>
        <source>traffic two-way</source>
        <translation>Verkehr in beiden Richtungen</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>anchoring prohibited</source>
        <translation>Ankern verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>anchoring restricted</source>
        <translation>Ankern beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>fishing prohibited</source>
        <translation>Fischen verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>fishing restricted</source>
        <translation>Fischen beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>trawling prohibited</source>
        <translation>Schleppnetze verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>trawling restricted</source>
        <translation>Schleppnetze beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>entry prohibited</source>
        <translation>Einfahrt verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>entry restricted</source>
        <translation>Einfahrt beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>dredging prohibited</source>
        <translation>Baggern verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>dredging restricted</source>
        <translation>Baggern beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>diving prohibited</source>
        <translation>Tauchen verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>diving restricted</source>
        <translation>Tauchen beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>no wake</source>
        <translation>Sog und Wellenschlag vermeiden</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>area to be avoided</source>
        <translation>zu meidendes Gebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>construction prohibited</source>
        <translation>Bauen verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>discharging prohibited</source>
        <translation>Einleiten verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>discharging restricted</source>
        <translation>Einleiten beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>exploration or development prohibited</source>
        <translation>Erkundung oder Erschließung verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>exploration or development restricted</source>
        <translation>Erkundung oder Erschließung beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>drilling prohibited</source>
        <translation>Bohren verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>drilling restricted</source>
        <translation>Bohren beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>removal of historical artefacts prohibited</source>
        <translation>Entnahme historischer Gegenstände verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>cargo transhipment prohibited</source>
        <translation>Umladen verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>dragging prohibited</source>
        <translation>Schleppen von Gerät am Grund verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>stopping prohibited</source>
        <translation>Anhalten verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>landing prohibited</source>
        <translation>Anlanden verboten</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>speed restricted</source>
        <translation>Geschwindigkeit beschränkt</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>offshore safety zone</source>
        <translation>Sicherheitszone auf See</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>nature reserve</source>
        <translation>Naturschutzgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>bird sanctuary</source>
        <translation>Vogelschutzgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>game preserve</source>
        <translation>Wildschutzgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>seal sanctuary</source>
        <translation>Robbenschutzgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>degaussing range</source>
        <translation>Entmagnetisierungsstrecke</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>military area</source>
        <translation>militärisches Gebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>historic wreck area</source>
        <translation>Gebiet eines historischen Wracks</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>navigational aid safety zone</source>
        <translation>Sicherheitszone eines Seezeichens</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>minefield</source>
        <translation>Minenfeld</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>swimming area</source>
        <translation>Badegebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>waiting area</source>
        <translation>Wartegebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>research area</source>
        <translation>Forschungsgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>dredging area</source>
        <translation>Baggergebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>fish sanctuary</source>
        <translation>Fischschutzgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>ecological reserve</source>
        <translation>ökologisches Schutzgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>no wake area</source>
        <translation>Gebiet ohne Sog und Wellenschlag</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>swinging area</source>
        <translation>Schwojgebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>water skiing area</source>
        <translation>Wasserskigebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>environmentally sensitive sea area</source>
        <translation>ökologisch empfindliches Seegebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>particularly sensitive sea area</source>
        <translation>besonders empfindliches Seegebiet</translation>
    </message>
    <message>
        <location filename="../core/chart/restrictions.py"/>
        <source>{name} code {code}, not known here</source>
        <translation>{name} mit dem Code {code}, hier nicht bekannt</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Asked for the time zone {name!r}</source>
        <translation>Verlangt ist die Zeitzone {name!r}</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Zones are named as in the IANA list</source>
        <translation>Zonen heißen wie in der Liste der IANA</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Write one such as Europe/Lisbon or UTC into the plan's settings</source>
        <translation>Eine wie Europe/Lisbon oder UTC in die Einstellungen des Plans schreiben</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Got the clock time {naive:%Y-%m-%d %H:%M} in {zone}</source>
        <translation>Angegeben ist die Uhrzeit {naive:%Y-%m-%d %H:%M} in {zone}</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>That time does not exist: clocks jump over it</source>
        <translation>Diese Zeit gibt es nicht: Die Uhren überspringen sie</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>That time comes twice that night</source>
        <translation>Diese Zeit kommt in jener Nacht zweimal vor</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Write the offset, for example {earlier} or {later}</source>
        <translation>Den Versatz dazuschreiben, zum Beispiel {earlier} oder {later}</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Asked for the time from {first!r} to {last!r}</source>
        <translation>Verlangt ist die Zeit von {first!r} bis {last!r}</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>The beginning is before the end</source>
        <translation>Der Anfang liegt vor dem Ende</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <location filename="../core/solve/windows/find_windows.py"/>
        <source>Give a later end</source>
        <translation>Ein späteres Ende angeben</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Got {text!r} for a date and time</source>
        <translation>{text!r} steht als Datum und Uhrzeit</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Times are ISO 8601, date and time of day</source>
        <translation>Zeiten sind nach ISO 8601, Datum und Uhrzeit</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>Write it like 2027-06-05T10:00 or 2027-06-05T10:00+01:00</source>
        <translation>Etwa 2027-06-05T10:00 oder 2027-06-05T10:00+01:00 schreiben</translation>
    </message>
    <message>
        <location filename="../core/clock.py"/>
        <source>the plan's start</source>
        <translation>der Beginn des Plans</translation>
    </message>
    <message>
        <location filename="../core/clock_labels.py"/>
        <source>the heading '{heading}'</source>
        <translation>Überschrift „{heading}“</translation>
    </message>
    <message>
        <location filename="../core/clock_labels.py"/>
        <source>row {row}, '{said}'</source>
        <translation>Zeile {row}, „{said}“</translation>
    </message>
    <message>
        <location filename="../core/clock_rows.py"/>
        <source>{remedy}, or give ZONE as a fixed offset if the table does not change its clock</source>
        <translation>{remedy}, oder in ZONE einen festen Versatz angeben, wenn die Tabelle ihre Uhr nicht umstellt</translation>
    </message>
    <message>
        <location filename="../core/clock_rows.py"/>
        <source>{wrong} in {zone}</source>
        <translation>{wrong} (in {zone})</translation>
    </message>
    <message>
        <location filename="../core/clock_rows.py"/>
        <source>That hour comes twice that night in {zone}, and stands there more often</source>
        <translation>Diese Stunde kommt in jener Nacht in {zone} zweimal vor, und hier steht sie öfter</translation>
    </message>
    <message>
        <location filename="../core/clock_rows.py"/>
        <source>Sort the rows, delete those given twice, or write the offset</source>
        <translation>Die Zeilen sortieren, doppelte löschen, oder den Versatz dazuschreiben</translation>
    </message>
    <message>
        <location filename="../core/errors.py"/>
        <location filename="../layers_in/tides_in.py"/>
        <source>Layer '{layer}'</source>
        <translation>Layer „{layer}“</translation>
    </message>
    <message>
        <location filename="../core/errors.py"/>
        <source>, row {row}</source>
        <translation>, Zeile {row}</translation>
    </message>
    <message>
        <location filename="../core/errors.py"/>
        <source>, field '{field}'</source>
        <translation>, Feld „{field}“</translation>
    </message>
    <message>
        <location filename="../core/errors.py"/>
        <source>{place}: got {value!r}</source>
        <translation>{place}: dort steht {value!r}</translation>
    </message>
    <message>
        <location filename="../core/errors.py"/>
        <source>Got the time {value} in {where} without a time zone</source>
        <translation>Die Zeit {value} in {where} hat keine Zeitzone</translation>
    </message>
    <message>
        <location filename="../core/errors.py"/>
        <source>Got the time {value} without a time zone</source>
        <translation>Die Zeit {value} hat keine Zeitzone</translation>
    </message>
    <message>
        <location filename="../core/errors.py"/>
        <location filename="../plan_package/row_check.py"/>
        <source>Times carry a zone or an offset</source>
        <translation>Zeiten haben eine Zone oder einen Versatz</translation>
    </message>
    <message>
        <location filename="../core/errors.py"/>
        <location filename="../plan_package/row_check.py"/>
        <source>Write the offset, for example 2027-06-05T09:40+00:00</source>
        <translation>Den Versatz dazuschreiben, zum Beispiel 2027-06-05T09:40+00:00</translation>
    </message>
    <message>
        <location filename="../core/geodesy.py"/>
        <source>{name} is at longitude {lon}, latitude {lat}</source>
        <translation>{name} liegt auf Länge {lon}, Breite {lat}</translation>
    </message>
    <message>
        <location filename="../core/geodesy.py"/>
        <source>Longitudes reach from -180 to 180 and latitudes from -89 to 89 degrees</source>
        <translation>Längen reichen von -180 bis 180, Breiten von -89 bis 89 Grad</translation>
    </message>
    <message>
        <location filename="../core/geodesy.py"/>
        <source>Check the layer's coordinate reference system and the order longitude, latitude</source>
        <translation>Das Koordinatenbezugssystem des Layers und die Reihenfolge Länge, Breite prüfen</translation>
    </message>
    <message>
        <location filename="../core/geodesy.py"/>
        <source>The plan's centre</source>
        <translation>Die Mitte des Plans</translation>
    </message>
    <message>
        <location filename="../core/magnetism.py"/>
        <source>Asked for the magnetic variation on {date:%Y-%m-%d}</source>
        <translation>Verlangt ist die Missweisung am {date:%Y-%m-%d}</translation>
    </message>
    <message>
        <location filename="../core/magnetism.py"/>
        <source>{model_name} is valid from 2025-01-01 to 2029-12-31</source>
        <translation>{model_name} gilt vom 2025-01-01 bis 2029-12-31</translation>
    </message>
    <message>
        <location filename="../core/magnetism.py"/>
        <source>Plan within those years, or install a release of Tideleg with a newer model</source>
        <translation>In jenen Jahren planen, oder eine Ausgabe von Tideleg mit neuerem Modell installieren</translation>
    </message>
    <message>
        <location filename="../core/results/card.py"/>
        <source>NOT REACHED {reason}</source>
        <translation>NICHT ERREICHT {reason}</translation>
    </message>
    <message>
        <location filename="../core/results/card.py"/>
        <source>NOT SWIMMABLE {reason}</source>
        <translation>NICHT SCHWIMMBAR {reason}</translation>
    </message>
    <message>
        <location filename="../core/results/card.py"/>
        <source>{minutes}min leave {depart} arrive {arrive}</source>
        <translation>{minutes}min ab {depart} an {arrive}</translation>
    </message>
    <message>
        <location filename="../core/results/card.py"/>
        <source> then {when} {heading}</source>
        <translation> dann {when} {heading}</translation>
    </message>
    <message>
        <location filename="../core/results/fastest_path.py"/>
        <source>The optimum is that of a swimmer who steers anew all the time over a grid; the route holds one compass heading a leg, which is what its minutes are for.</source>
        <translation>Das Optimum ist das eines Schwimmers, der über einem Raster ständig neu steuert; die Route hält je Abschnitt einen Kompasskurs, und für den gelten ihre Minuten.</translation>
    </message>
    <message>
        <location filename="../core/results/file_contents.py"/>
        <source>PREDICTED, not for navigation</source>
        <translation>VORHERGESAGT, nicht zur Navigation</translation>
    </message>
    <message>
        <location filename="../core/results/file_contents.py"/>
        <source>track of a leg</source>
        <translation>Weg eines Abschnitts</translation>
    </message>
    <message>
        <location filename="../core/results/file_contents.py"/>
        <source>tracks of legs</source>
        <translation>Wege von Abschnitten</translation>
    </message>
    <message>
        <location filename="../core/results/file_contents.py"/>
        <source>point on the way</source>
        <translation>Punkt unterwegs</translation>
    </message>
    <message>
        <location filename="../core/results/file_contents.py"/>
        <source>points on the way</source>
        <translation>Punkte unterwegs</translation>
    </message>
    <message>
        <location filename="../core/results/file_contents.py"/>
        <source>{held}; times in {zone}</source>
        <translation>{held}; Zeiten in {zone}</translation>
    </message>
    <message>
        <location filename="../core/results/file_contents.py"/>
        <source>No places</source>
        <translation>Keine Orte</translation>
    </message>
    <message>
        <location filename="../core/results/file_contents.py"/>
        <source>Leg {stuck} CANNOT BE SWUM; later times hold only if it could</source>
        <translation>Abschnitt {stuck} IST NICHT SCHWIMMBAR; spätere Zeiten gelten nur, wenn er es wäre</translation>
    </message>
    <message>
        <location filename="../core/results/reach.py"/>
        <source>The times are those of a swimmer who steers anew all the time for the fastest track; on one compass heading a leg it takes longer: the marks' one-heading numbers say by how much.</source>
        <translation>Die Zeiten sind die eines Schwimmers, der für den schnellsten Weg ständig neu steuert; mit einem Kompasskurs je Abschnitt dauert es länger: Wie viel, sagen die Zahlen der Marken für einen Kurs.</translation>
    </message>
    <message>
        <location filename="../core/results/season.py"/>
        <source>Days without a window: {days}</source>
        <translation>Tage ohne Fenster: {days}</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>pushed back, set off or too slow on the way</source>
        <translation>unterwegs zurückgedrückt, abgesetzt oder zu langsam</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <location filename="../core/solve/turn_back/leaving.py"/>
        <source>the stream is not known</source>
        <translation>der Strom ist nicht bekannt</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>the stream across is too strong</source>
        <translation>der Strom quer ist zu stark</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>no arrival within 12 hours</source>
        <translation>keine Ankunft innerhalb von 12 Stunden</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>no single heading is found</source>
        <translation>kein einzelner Kurs gefunden</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>The plan itself cannot be swum: there is no planned return, and so no alarm to be home by.</source>
        <translation>Der Plan selbst ist nicht schwimmbar: Es gibt keine geplante Rückkehr, also keine Alarmzeit, bis zu der man zurück wäre.</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>stream of {name} +-{rate_times:.0f} % and +-{phase_times:.0f} min</source>
        <translation>Strom von {name} +-{rate_times:.0f} % und +-{phase_times:.0f} min</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>+- holds 95 of 100 days: two standard deviations of a normal spread, none beyond three</source>
        <translation>+- gilt an 95 von 100 Tagen: zwei Standardabweichungen einer Normalverteilung, keine jenseits von dreien</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>pace {pace_m_s:g} m/s +-{pace:g} %</source>
        <translation>Tempo {pace_m_s:g} m/s +-{pace:g} %</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>path factor {path_factor:g} +-{path:g}, never below 1</source>
        <translation>Wegfaktor {path_factor:g} +-{path:g}, nie unter 1</translation>
    </message>
    <message>
        <location filename="../core/solve/confidence.py"/>
        <source>all streams are off together, by their own measure</source>
        <translation>alle Ströme weichen gemeinsam ab, jeder nach seinem Maß</translation>
    </message>
    <message>
        <location filename="../core/solve/doubts.py"/>
        <source>Asked for a doubt {name} of {value}</source>
        <translation>Verlangt ist eine Unsicherheit {name} von {value}</translation>
    </message>
    <message>
        <location filename="../core/solve/doubts.py"/>
        <source>It lies from 0 to {most:g}</source>
        <translation>Sie liegt von 0 bis {most:g}</translation>
    </message>
    <message>
        <location filename="../core/solve/doubts.py"/>
        <source>Correct the doubt</source>
        <translation>Die Unsicherheit berichtigen</translation>
    </message>
    <message>
        <location filename="../core/solve/doubts.py"/>
        <source>Asked for {count} members</source>
        <translation>Verlangt sind {count} Durchläufe</translation>
    </message>
    <message>
        <location filename="../core/solve/doubts.py"/>
        <source>There may be {fewest} to {most}</source>
        <translation>Es dürfen {fewest} bis {most} sein</translation>
    </message>
    <message>
        <location filename="../core/solve/doubts.py"/>
        <source>500 give shares to within about 4 %</source>
        <translation>500 ergeben Anteile auf etwa 4 % genau</translation>
    </message>
    <message>
        <location filename="../core/solve/drift.py"/>
        <source>Asked for a wind from {from_deg:g} degrees of {speed_kn:g} kn</source>
        <translation>Verlangt ist ein Wind aus {from_deg:g} Grad mit {speed_kn:g} kn</translation>
    </message>
    <message>
        <location filename="../core/solve/drift.py"/>
        <source>It comes from 0 to 360 degrees true with 0 to 100 kn</source>
        <translation>Er kommt aus 0 bis 360 Grad rechtweisend mit 0 bis 100 kn</translation>
    </message>
    <message>
        <location filename="../core/solve/drift.py"/>
        <source>Correct the wind, or leave it empty where it is not known</source>
        <translation>Den Wind berichtigen, oder leer lassen, wo er nicht bekannt ist</translation>
    </message>
    <message>
        <location filename="../core/solve/drift_areas.py"/>
        <source>There is no planned return, and so no areas of drift after it.</source>
        <translation>Es gibt keine geplante Rückkehr, also keine Driftgebiete danach.</translation>
    </message>
    <message>
        <location filename="../core/solve/drift_areas.py"/>
        <source>The drift is not known for {unknown} of {areas} areas: the stream there and then is not known.</source>
        <translation>Für {unknown} von {areas} Gebieten ist die Drift nicht bekannt: Der Strom ist dort dann nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../core/solve/drift_areas.py"/>
        <source>any time of the swim</source>
        <translation>jede Zeit der Tour</translation>
    </message>
    <message>
        <location filename="../core/solve/drift_areas.py"/>
        <source>No wind was given: its push on the float is not counted, which is not to say there is none. In a wind the float goes {downwind:.2f} % of its speed downwind of these areas.</source>
        <translation>Kein Wind angegeben: Sein Druck auf die Boje ist nicht gerechnet, was nicht heißt, dass es keinen gibt. Bei Wind treibt die Boje mit {downwind:.2f} % seiner Geschwindigkeit leewärts aus diesen Gebieten.</translation>
    </message>
    <message>
        <location filename="../core/solve/drift_areas.py"/>
        <source>Wind from {from_deg:03.0f} true, {speed_kn:g} kn, all the time: the float is pushed {downwind:.2f} % of its speed downwind and up to {across:.2f} % to either side.</source>
        <translation>Die ganze Zeit Wind aus {from_deg:03.0f} rechtweisend, {speed_kn:g} kn: Die Boje wird mit {downwind:.2f} % seiner Geschwindigkeit leewärts und bis zu {across:.2f} % nach jeder Seite gedrückt.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>ferry's track</source>
        <translation>Fährweg</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <location filename="../layers_in/swim_in.py"/>
        <source>boat channel</source>
        <translation>Fahrwasser</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>The straight line of leg {number} crosses the {channel}; the leg is not timed.</source>
        <translation>Die gerade Linie von Abschnitt {number} quert: {channel}; der Abschnitt hat keine Zeiten.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>{end_name} lies in it: you would stay {minutes:.0f} min among the boats.</source>
        <translation>{end_name} liegt darin: Sie wären {minutes:.0f} min zwischen den Booten.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>You are in the {channel} from {first} to {last}: {minutes:.1f} min over {metres:.0f} m.</source>
        <translation>Von {first} bis {last} sind Sie darin ({channel}): {minutes:.1f} min über {metres:.0f} m.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>The direction of its traffic is not known, so the crossing angle is not checked.</source>
        <translation>Die Richtung des Verkehrs ist nicht bekannt, der Winkel der Querung also nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>, cross square</source>
        <translation>, rechtwinklig queren</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>The way of its traffic is taken from its shape.</source>
        <translation>Die Richtung des Verkehrs ist aus der Form genommen.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>A boat at {boat_kn:.0f} kn runs {distance} in that time: enter only when none is nearer.</source>
        <translation>Ein Boot mit {boat_kn:.0f} kn fährt in dieser Zeit {distance}: erst hinein, wenn keines näher ist.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>you point {heading_angle_deg:.0f}° off the line of its traffic and move {track_angle_deg:.0f}° off it</source>
        <translation>Sie zeigen {heading_angle_deg:.0f}° und bewegen sich {track_angle_deg:.0f}° zur Linie des Verkehrs</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>Near square: {angles}.</source>
        <translation>Fast rechtwinklig: {angles}.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>Not near a right angle: {angles}; cross square.</source>
        <translation>Weit vom rechten Winkel: {angles}; rechtwinklig queren.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>The ferry of {when} is too near.</source>
        <translation>Die Fähre um {when} ist zu nah.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>No gap in the timetable is long enough to cross in.</source>
        <translation>Keine Lücke im Fahrplan reicht zum Queren.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>A timetable is not the traffic.</source>
        <translation>Ein Fahrplan ist nicht der Verkehr.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>Enter from {first} on.</source>
        <translation>Ab {first} hinein.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>Enter by {last}.</source>
        <translation>Bis {last} hinein.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>Enter between {first} and {last}.</source>
        <translation>Zwischen {first} und {last} hinein.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/channels.py"/>
        <source>unnamed {kind}</source>
        <translation>{kind} ohne Namen</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>nobody may enter</source>
        <translation>niemand darf hinein</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>spearing is not allowed</source>
        <translation>Speerfischen ist verboten</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>anchoring is not allowed</source>
        <translation>Ankern ist verboten</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>no loaded gun may be carried</source>
        <translation>keine geladene Harpune darf mitgeführt werden</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>An unnamed closed area</source>
        <translation>Ein Sperrgebiet ohne Namen</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>Leg {number} passes {metres:.0f} m through {place}.</source>
        <translation>Abschnitt {number} führt {metres:.0f} m durch {place}.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>The straight line of leg {number} passes through {place}; the leg is not timed.</source>
        <translation>Die gerade Linie von Abschnitt {number} führt durch {place}; der Abschnitt hat keine Zeiten.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>{end_name} lies inside it.</source>
        <translation>{end_name} liegt darin.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>In force {words}.</source>
        <translation>In Kraft {words}.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>Rule: {citation}.</source>
        <translation>Regel: {citation}.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>No citation given.</source>
        <translation>Keine Quelle angegeben.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>Checked on {checked_on}</source>
        <translation>Geprüft am {checked_on}</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>Not marked as checked</source>
        <translation>Nicht als geprüft vermerkt</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>{checked}; the local law decides.</source>
        <translation>{checked}; es gilt das örtliche Recht.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <location filename="../map_tools/draw_line.py"/>
        <source>Closed area</source>
        <translation>Sperrgebiet</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>Leg {number} crosses {metres:.0f} m of {name}: route it round, watching the bow of the track.</source>
        <translation>Abschnitt {number} quert {metres:.0f} m von {name}: außen herum legen und auf den Bogen des Weges achten.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>The straight line of leg {number} crosses {metres:.0f} m of {name}; the leg is not timed.</source>
        <translation>Die gerade Linie von Abschnitt {number} quert {metres:.0f} m von {name}; der Abschnitt hat keine Zeiten.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>The chart's coast runs {metres:.0f} m outside the entry.</source>
        <translation>Die Küste der Karte verläuft {metres:.0f} m seewärts vom Einstieg.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>The chart's coast runs {metres:.0f} m outside the exit.</source>
        <translation>Die Küste der Karte verläuft {metres:.0f} m seewärts vom Ausstieg.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>Leg {number} starts or ends on {name}</source>
        <translation>Abschnitt {number} beginnt oder endet auf {name}</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/closed.py"/>
        <source>Leg {number} runs on {name}</source>
        <translation>Abschnitt {number} läuft auf {name}</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/crossing.py"/>
        <source>Crossing square takes {square_seconds:.1f} min</source>
        <translation>Rechtwinklig queren dauert {square_seconds:.1f} min</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/crossing.py"/>
        <source>{words} and sets you down {down:.0f} m towards {true_deg:03.0f}° true: aim that far up-stream.</source>
        <translation>{words} und versetzt Sie {down:.0f} m nach {true_deg:03.0f}° rechtweisend: so weit stromauf zielen.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>the mark</source>
        <translation>die Marke</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>it is no mark</source>
        <translation>es ist keine Marke</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>The height of tide at {name} is not known: the depth there is the charted {charted_m:.1f} m plus an unknown height.</source>
        <translation>Der Wasserstand bei {name} ist nicht bekannt: Die Tiefe dort ist die Kartentiefe {charted_m:.1f} m plus eine unbekannte Höhe.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>{name}: tide not known</source>
        <translation>{name}: Wasserstand nicht bekannt</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>{name} is {depth:.1f} m deep while you are there, over your {limit:.1f} m.</source>
        <translation>{name} ist {depth:.1f} m tief, während Sie dort sind, mehr als Ihre {limit:.1f} m.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>{name} {depth:.1f} m: too deep</source>
        <translation>{name} {depth:.1f} m: zu tief</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>{name} has {depth:.1f} m of water while you are there, less than {shallow_depth_m:.1f} m: swell breaks on it and it may dry.</source>
        <translation>{name} hat {depth:.1f} m Wasser, während Sie dort sind, weniger als {shallow_depth_m:.1f} m: Dünung bricht darauf, und es kann trockenfallen.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>{name} {depth:.1f} m: swell breaks</source>
        <translation>{name} {depth:.1f} m: Dünung bricht</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>{name} is {depth:.1f} m deep while you are there: an anchor hooked in rock wants {rock:.0f} m of line, one on flat ground {flat:.0f} m, and you carry {line:g} m.</source>
        <translation>{name} ist {depth:.1f} m tief, während Sie dort sind: Ein in Fels gehakter Anker braucht {rock:.0f} m Leine, einer auf flachem Grund {flat:.0f} m, und Sie haben {line:g} m dabei.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source>{name}: {line:g} m of line do not hold</source>
        <translation>{name}: {line:g} m Leine halten nicht</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source> It stays so through the tide.</source>
        <translation> Das bleibt die ganze Tide so.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source> The tide table ends before it is seen to change.</source>
        <translation> Die Gezeitentafel endet, bevor es sich ändert.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source> It is within your limit from {when}.</source>
        <translation> Ab {when} liegt es in Ihrer Grenze.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/depths.py"/>
        <source> It is within your limit until {when}.</source>
        <translation> Bis {when} liegt es in Ihrer Grenze.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Leg {number} to {end_name} cannot be swum as planned: {reason}.</source>
        <translation>Abschnitt {number} nach {end_name} ist so nicht schwimmbar: {reason}.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Leg {number} cannot be swum</source>
        <translation>Abschnitt {number} ist nicht schwimmbar</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>The stream on leg {number} is extrapolated: the range of the day is outside neaps and springs or unknown, or no station is near or in sight over water. Allow for more stream than shown.</source>
        <translation>Der Strom auf Abschnitt {number} ist hochgerechnet: Der Tidenhub des Tages liegt außerhalb von Nipp- und Springzeit oder ist unbekannt, oder keine Station ist nah oder über Wasser in Sicht. Mit mehr Strom rechnen als gezeigt.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Leg {number}: stream extrapolated</source>
        <translation>Abschnitt {number}: Strom hochgerechnet</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>The route is {length_km:.1f} km, over the {range_km:.1f} km of {name}.</source>
        <translation>Die Route hat {length_km:.1f} km, mehr als die {range_km:.1f} km von {name}.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Over range: {length_km:.1f} km</source>
        <translation>Zu weit: {length_km:.1f} km</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>The swim takes {hours:.1f} h, over the {max_hours:g} h of {name}.</source>
        <translation>Die Tour dauert {hours:.1f} h, länger als die {max_hours:g} h von {name}.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Over time: {hours:.1f} h</source>
        <translation>Zu lang: {hours:.1f} h</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>You need {need_l:.1f} L to drink and carry {fluid_l:.1f} L.</source>
        <translation>Sie brauchen {need_l:.1f} L zu trinken und haben {fluid_l:.1f} L dabei.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Carry {need_l:.1f} L to drink</source>
        <translation>{need_l:.1f} L zu trinken mitnehmen</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Guessed for {name}: {guessed}. Time yourself over a known distance before you trust the minutes.</source>
        <translation>Geschätzt für {name}: {guessed}. Stoppen Sie sich über eine bekannte Strecke, bevor Sie den Minuten trauen.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Pace and limits are guesses</source>
        <translation>Tempo und Grenzen sind geschätzt</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>the sun does not come near the horizon that day</source>
        <translation>die Sonne kommt an diesem Tag nicht in die Nähe des Horizonts</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>civil dawn is at {dawn}, civil dusk at {dusk}</source>
        <translation>bürgerliche Morgendämmerung um {dawn}, Abenddämmerung um {dusk}</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Leg {number} to {end_name} is swum in the dark: {words}.</source>
        <translation>Abschnitt {number} nach {end_name} wird im Dunkeln geschwommen: {words}.</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/limits.py"/>
        <source>Leg {number} is in the dark</source>
        <translation>Abschnitt {number} liegt im Dunkeln</translation>
    </message>
    <message>
        <location filename="../core/solve/flags/track.py"/>
        <source>an unknown time</source>
        <translation>einer unbekannten Zeit</translation>
    </message>
    <message>
        <location filename="../core/solve/order/best_first.py"/>
        <source>Not every order was looked at, so there may be a better one: take fewer marks, departures or alternatives.</source>
        <translation>Nicht jede Reihenfolge wurde angesehen, es kann also eine bessere geben: weniger Marken, Aufbrüche oder Alternativen nehmen.</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <source>Asked for departures over {days:.0f} days</source>
        <translation>Verlangt sind Aufbrüche über {days:.0f} Tage</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <source>At most {days:.0f} days are looked at</source>
        <translation>Höchstens {days:.0f} Tage werden angesehen</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <source>Give an earlier end</source>
        <translation>Ein früheres Ende angeben</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <source>Asked for {count} departures over {days:.1f} days</source>
        <translation>Verlangt sind {count} Aufbrüche über {days:.1f} Tage</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <source>At most {count} times are looked at</source>
        <translation>Höchstens {count} Zeiten werden angesehen</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <location filename="../core/solve/windows/find_windows.py"/>
        <source>Take a longer step or fewer days</source>
        <translation>Einen längeren Schritt oder weniger Tage nehmen</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <source>No way over water leads to {name}: land or closed water bars it.</source>
        <translation>Kein Weg über Wasser führt zu {name}: Land oder gesperrtes Wasser liegt davor.</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <source>The height of tide is not known: the depth at {names} is not checked.</source>
        <translation>Der Wasserstand ist nicht bekannt: Die Tiefe bei {names} ist nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../core/solve/order/find_order.py"/>
        <source>The depth at {names} is not known, and not checked.</source>
        <translation>Die Tiefe bei {names} ist nicht bekannt und nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../core/solve/order/request.py"/>
        <location filename="../layers_in/order_in.py"/>
        <source>Asked for the order of {count} marks</source>
        <translation>Verlangt ist die Reihenfolge von {count} Marken</translation>
    </message>
    <message>
        <location filename="../core/solve/order/request.py"/>
        <location filename="../layers_in/order_in.py"/>
        <source>From 1 to {most_marks} marks are put in order</source>
        <translation>1 bis {most_marks} Marken werden geordnet</translation>
    </message>
    <message>
        <location filename="../core/solve/order/request.py"/>
        <source>Name the marks to visit</source>
        <translation>Die Marken nennen, die besucht werden</translation>
    </message>
    <message>
        <location filename="../core/solve/order/request.py"/>
        <source>Turn {turn}</source>
        <translation>Wende {turn}</translation>
    </message>
    <message>
        <location filename="../core/solve/order/swum_again.py"/>
        <source>Stay {minutes:.0f} min longer at {name}: leaving later you are sooner at the next place.</source>
        <translation>{minutes:.0f} min länger bei {name} bleiben: Wer später aufbricht, ist eher am nächsten Ort.</translation>
    </message>
    <message>
        <location filename="../core/solve/order/swum_again.py"/>
        <source>Goes round land or closed water after {names}.</source>
        <translation>Führt nach {names} um Land oder gesperrtes Wasser herum.</translation>
    </message>
    <message>
        <location filename="../core/solve/order/swum_again.py"/>
        <source>The stream is extrapolated on part of it: allow for more stream.</source>
        <translation>Der Strom ist auf einem Teil hochgerechnet: mit mehr Strom rechnen.</translation>
    </message>
    <message>
        <location filename="../core/solve/picked_transits.py"/>
        <source>The transit {front} / {rear} of {mark} is left out: from there {rear} is no farther than {front}, or on the other side. Swap the two, or pick others.</source>
        <translation>Die Deckpeilung {front} / {rear} von {mark} fehlt: Von dort ist {rear} nicht weiter weg als {front} oder auf der anderen Seite. Beide tauschen oder andere wählen.</translation>
    </message>
    <message>
        <location filename="../core/solve/picked_transits.py"/>
        <source>The transit {transit} passes {off_m:.0f} m to the right of {mark}.</source>
        <translation>Die Deckpeilung {transit} geht {off_m:.0f} m rechts an {mark} vorbei.</translation>
    </message>
    <message>
        <location filename="../core/solve/picked_transits.py"/>
        <source>The transit {transit} passes {off_m:.0f} m to the left of {mark}.</source>
        <translation>Die Deckpeilung {transit} geht {off_m:.0f} m links an {mark} vorbei.</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/area.py"/>
        <source>Asked for cells of {cell_m:g} m over {wide_km:.1f} km by {high_km:.1f} km</source>
        <translation>Verlangt sind Zellen von {cell_m:g} m über {wide_km:.1f} km mal {high_km:.1f} km</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/area.py"/>
        <source>Cells measure from {least:g} to {most:g} m there</source>
        <translation>Zellen messen dort {least:g} bis {most:g} m</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/area.py"/>
        <source>Change CELL, or leave it empty to have it chosen</source>
        <translation>CELL ändern, oder leer lassen und wählen lassen</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/compass.py"/>
        <source>the way out is stopped by {what}</source>
        <translation>den Hinweg verhindert: {what}</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/compass.py"/>
        <source>no exit is reached from it in time</source>
        <translation>kein Ausstieg ist von dort rechtzeitig zu erreichen</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>it cannot be swum</source>
        <translation>er ist nicht schwimmbar</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>land lies in the way</source>
        <translation>Land liegt im Weg</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>closed water lies in the way</source>
        <translation>gesperrtes Wasser liegt im Weg</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>the stream is not known all the way</source>
        <translation>der Strom ist nicht auf dem ganzen Weg bekannt</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>the stream is too strong for one heading</source>
        <translation>der Strom ist zu stark für einen Kurs</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>A track that steers all the time takes {minutes:.0f} min, but no way of a few legs on one heading each was found: {why}</source>
        <translation>Ein Weg, der ständig neu steuert, dauert {minutes:.0f} min, aber keiner aus wenigen Abschnitten mit je einem Kurs wurde gefunden: {why}</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>Each leg is swum on one heading, clear of land and closed water</source>
        <translation>Jeder Abschnitt wird mit einem Kurs geschwommen, frei von Land und gesperrtem Wasser</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>Leave at another hour, or draw the route by hand</source>
        <translation>Zu anderer Stunde aufbrechen, oder die Route von Hand zeichnen</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>The end '{name}'</source>
        <translation>Das Ende „{name}“</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>No way was found from {start} to {end} within {hours:g} h</source>
        <translation>Von {start} nach {end} wurde kein Weg innerhalb von {hours:g} h gefunden</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>It leads over open water, of some cells' width, whose stream is known and can be swum against</source>
        <translation>Er führt über freies Wasser, einige Zellen breit, dessen Strom bekannt ist und gegen den man schwimmen kann</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>Leave at another hour, take notice of channels in another way, or choose a smaller CELL</source>
        <translation>Zu anderer Stunde aufbrechen, Fahrwasser anders beachten, oder CELL kleiner wählen</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>No way was found that crosses every channel square: see the crossings' angles.</source>
        <translation>Kein Weg gefunden, der jedes Fahrwasser rechtwinklig quert: siehe die Winkel der Querungen.</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>it starts or ends in it</source>
        <translation>er beginnt oder endet darin</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>its direction is not known</source>
        <translation>seine Richtung ist nicht bekannt</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>The path does not cross {name} square: {why}.</source>
        <translation>Der Weg quert {name} nicht rechtwinklig: {why}.</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_path.py"/>
        <source>a channel</source>
        <translation>ein Fahrwasser</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>{name} is no way home here: land, closed or unknown water lies round it.</source>
        <translation>{name} ist hier kein Weg heim: Land, gesperrtes oder unbekanntes Wasser liegt darum.</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>In {count} cells the stream is not known when they would be reached: they count as closed, and what lies behind them may be missing.</source>
        <translation>In {count} Zellen ist der Strom nicht bekannt, wenn sie erreicht würden: Sie gelten als gesperrt, und was dahinter liegt, kann fehlen.</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>({share:.0f} % of those reached) the stream is extrapolated.</source>
        <translation>({share:.0f} % der erreichten) ist der Strom hochgerechnet.</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>In {count} cells {words}</source>
        <translation>In {count} Zellen {words}</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>The reach goes on beyond the area looked at, which is cut to what the plan's layers cover.</source>
        <translation>Die Reichweite geht über das betrachtete Gebiet hinaus, das auf die Layer des Plans beschnitten ist.</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>not reached</source>
        <translation>nicht erreicht</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>no exit is reached from it</source>
        <translation>kein Ausstieg von dort zu erreichen</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>{words} in time over open water whose stream is known</source>
        <translation>{words}, rechtzeitig und über freies Wasser mit bekanntem Strom</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>The entry '{name}'</source>
        <translation>Der Einstieg „{name}“</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>The entry '{name}' lies in {area}, which nobody may enter then</source>
        <translation>Der Einstieg „{name}“ liegt in {area}, wo dann niemand hineindarf</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>a closed area</source>
        <translation>ein Sperrgebiet</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>In force {words}</source>
        <translation>In Kraft {words}</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>Choose another entry or another time</source>
        <translation>Einen anderen Einstieg oder eine andere Zeit wählen</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>No stream is known at the entry '{name}' at {depart}</source>
        <translation>Am Einstieg „{name}“ ist um {depart} kein Strom bekannt</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>Water for which no stream is known is never taken as slack</source>
        <translation>Wasser ohne bekannten Strom gilt nie als Stauwasser</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>Add a stream station, or tides and stream times that cover that hour</source>
        <translation>Eine Stromstation ergänzen, oder Gezeiten und Stromzeiten, die jene Stunde abdecken</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>{words} lies {metres:.0f} m inside {name}</source>
        <translation>{words} liegt {metres:.0f} m in {name}</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>It lies in the water, or on a beach up to {beach_m:g} m from it</source>
        <translation>Es liegt im Wasser, oder an einem Strand bis {beach_m:g} m davon</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>Move it to the water's edge</source>
        <translation>An den Rand des Wassers verschieben</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>No open water was found beside the entry '{name}' with cells of {cell_m:g} m</source>
        <translation>Neben dem Einstieg „{name}“ wurde mit Zellen von {cell_m:g} m kein freies Wasser gefunden</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>Passages narrower than two cells are closed, and so are channels that are kept out of</source>
        <translation>Durchlässe schmaler als zwei Zellen sind geschlossen, ebenso gemiedene Fahrwasser</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>Choose a smaller CELL, or take notice of channels in another way</source>
        <translation>CELL kleiner wählen, oder Fahrwasser anders beachten</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>No way home was found to '{name}' or any exit by {back_by}</source>
        <translation>Bis {back_by} wurde kein Heimweg zu „{name}“ oder einem Ausstieg gefunden</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>At the time to be back the water at an exit is open and its stream is known</source>
        <translation>Zur Zeit der Rückkehr ist das Wasser an einem Ausstieg frei und sein Strom bekannt</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/find_reach.py"/>
        <source>Give another BACK_BY, or tides and streams that last until then</source>
        <translation>Ein anderes BACK_BY angeben, oder Gezeiten und Ströme, die bis dahin reichen</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/request.py"/>
        <source>Asked to leave at {depart} and be back by {back_by}</source>
        <translation>Verlangt ist Aufbruch um {depart} und Rückkehr bis {back_by}</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/request.py"/>
        <location filename="../layers_in/reach_in.py"/>
        <source>Being back comes after leaving, by {most_hours:g} hours at the most</source>
        <translation>Die Rückkehr kommt nach dem Aufbruch, um höchstens {most_hours:g} Stunden</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/request.py"/>
        <location filename="../layers_in/reach_in.py"/>
        <source>Correct DEPART or BACK_BY</source>
        <translation>DEPART oder BACK_BY berichtigen</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/request.py"/>
        <source>Asked for a stay of {stay_min:g} min</source>
        <translation>Verlangt ist ein Aufenthalt von {stay_min:g} min</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/request.py"/>
        <source>A stay lasts from 0 to {most_stay_min:g} min</source>
        <translation>Ein Aufenthalt dauert 0 bis {most_stay_min:g} min</translation>
    </message>
    <message>
        <location filename="../core/solve/reach/request.py"/>
        <source>Correct STAY</source>
        <translation>STAY berichtigen</translation>
    </message>
    <message>
        <location filename="../core/solve/request.py"/>
        <source>The setting {key} is {value:g}</source>
        <translation>Die Einstellung {key} ist {value:g}</translation>
    </message>
    <message>
        <location filename="../core/solve/request.py"/>
        <source>It lies from {low:g} to {high:g}</source>
        <translation>Sie liegt von {low:g} bis {high:g}</translation>
    </message>
    <message>
        <location filename="../core/solve/request.py"/>
        <location filename="../layers_in/swim_people.py"/>
        <source>Correct the settings table</source>
        <translation>Die Tabelle der Einstellungen berichtigen</translation>
    </message>
    <message>
        <location filename="../core/solve/request.py"/>
        <source>The setting back_by is {back_by!r}</source>
        <translation>Die Einstellung back_by ist {back_by!r}</translation>
    </message>
    <message>
        <location filename="../core/solve/request.py"/>
        <source>It is a clock time such as 17:30, in the plan's zone</source>
        <translation>Es ist eine Uhrzeit wie 17:30, in der Zone des Plans</translation>
    </message>
    <message>
        <location filename="../core/solve/request.py"/>
        <source>Correct the settings table, or leave it empty</source>
        <translation>Die Tabelle der Einstellungen berichtigen, oder leer lassen</translation>
    </message>
    <message>
        <location filename="../core/solve/request.py"/>
        <source>the departure</source>
        <translation>der Aufbruch</translation>
    </message>
    <message>
        <location filename="../core/solve/stop_results.py"/>
        <source>no charted depth</source>
        <translation>keine Kartentiefe</translation>
    </message>
    <message>
        <location filename="../core/solve/stop_results.py"/>
        <source>the height of tide is not known</source>
        <translation>der Wasserstand ist nicht bekannt</translation>
    </message>
    <message>
        <location filename="../core/solve/stop_results.py"/>
        <source>Depth not known at {names}: {why}.</source>
        <translation>Tiefe nicht bekannt bei {names}: {why}.</translation>
    </message>
    <message>
        <location filename="../core/solve/stop_results.py"/>
        <source>No times and no depths at {names}: the swim does not get there.</source>
        <translation>Keine Zeiten und Tiefen bei {names}: Die Tour kommt nicht dorthin.</translation>
    </message>
    <message>
        <location filename="../core/solve/stop_results.py"/>
        <source>The stay of {stay_min:g} min at {name} is not counted: the swim starts or ends there.</source>
        <translation>Der Aufenthalt von {stay_min:g} min bei {name} zählt nicht: Dort beginnt oder endet die Tour.</translation>
    </message>
    <message>
        <location filename="../core/solve/stop_results.py"/>
        <source>No charted depth at {name}: {basis}.</source>
        <translation>Keine Kartentiefe bei {name}: {basis}.</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>Asked for heading mode {mode}, new headings every {heading_every_s:g} s</source>
        <translation>Verlangt ist Kursweise {mode}, neue Kurse alle {heading_every_s:g} s</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>Modes are 0, 1 and 2, and a heading is held half a minute at the least</source>
        <translation>Es gibt 0, 1 und 2, und ein Kurs wird mindestens eine halbe Minute gehalten</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>Choose another heading mode or a longer time between headings</source>
        <translation>Eine andere Kursweise oder eine längere Zeit zwischen Kursen wählen</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>the stream is not known for the whole of this leg: add a stream station or tides that cover it</source>
        <translation>der Strom ist nicht für den ganzen Abschnitt bekannt: eine Stromstation oder Gezeiten ergänzen, die ihn abdecken</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>the stream across the leg is stronger than the {pace:.2f} m/s you make: you would be set off the line</source>
        <translation>der Strom quer zum Abschnitt ist stärker als die {pace:.2f} m/s, die Sie machen: Sie würden von der Linie versetzt</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>at {pace:.2f} m/s against this stream you would not arrive within 12 hours</source>
        <translation>mit {pace:.2f} m/s gegen diesen Strom kämen Sie nicht innerhalb von 12 Stunden an</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>no single heading was found: the stream changes too sharply; put a waypoint into the leg, or take a new heading every so often</source>
        <translation>kein einzelner Kurs gefunden: Der Strom ändert sich zu schnell; einen Wegpunkt einfügen, oder von Zeit zu Zeit einen neuen Kurs nehmen</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>an earlier leg is not completed</source>
        <translation>ein früherer Abschnitt wird nicht beendet</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>the stream across the leg reaches {across:.2f} m/s, and you make {pace:.2f} m/s</source>
        <translation>der Strom quer zum Abschnitt erreicht {across:.2f} m/s, und Sie machen {pace:.2f} m/s</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>the stream pushes you back: toward the mark you make {ahead:.2f} m/s at the worst</source>
        <translation>der Strom drückt Sie zurück: zur Marke hin machen Sie schlimmstens {ahead:.2f} m/s</translation>
    </message>
    <message>
        <location filename="../core/solve/swim.py"/>
        <source>you make good {mean:.{decimals}f} m/s, below your minimum of {least:.{decimals}f} m/s</source>
        <translation>Sie machen {mean:.{decimals}f} m/s über Grund gut, weniger als Ihr Mindestes von {least:.{decimals}f} m/s</translation>
    </message>
    <message>
        <location filename="../core/solve/transit_lines.py"/>
        <source>Asked for transits that pass within {offset_m:g} m of the mark</source>
        <translation>Verlangt sind Deckpeilungen, die in {offset_m:g} m Abstand an der Marke vorbeigehen</translation>
    </message>
    <message>
        <location filename="../core/solve/transit_lines.py"/>
        <source>The limit is above 0 and at most {nearest_m:g} m</source>
        <translation>Die Grenze liegt über 0 und bei höchstens {nearest_m:g} m</translation>
    </message>
    <message>
        <location filename="../core/solve/transit_lines.py"/>
        <source>Give another limit; 20 m is common practice</source>
        <translation>Eine andere Grenze angeben; 20 m sind üblich</translation>
    </message>
    <message>
        <location filename="../core/solve/transits.py"/>
        <source>No transits of {mark}: there are no landmarks. Put some on the map, or read them from a chart.</source>
        <translation>Keine Deckpeilungen von {mark}: Es gibt keine Landmarken. Welche in die Karte setzen oder aus einer Seekarte lesen.</translation>
    </message>
    <message>
        <location filename="../core/solve/transits.py"/>
        <source>No transits of {mark}: {in_range} of {given} landmarks lie from {nearest_m:g} m to {farthest_km:g} km away, and a transit needs two. Add landmarks.</source>
        <translation>Keine Deckpeilungen von {mark}: {in_range} von {given} Landmarken liegen {nearest_m:g} m bis {farthest_km:g} km entfernt, und eine Deckpeilung braucht zwei. Landmarken ergänzen.</translation>
    </message>
    <message>
        <location filename="../core/solve/transits.py"/>
        <source>No transits of {mark}: no two of {in_range} landmarks are in line within {offset_m:g} m of it. Add landmarks, move the mark, or allow a larger offset.</source>
        <translation>Keine Deckpeilungen von {mark}: Keine zwei von {in_range} Landmarken decken sich auf {offset_m:g} m genau. Landmarken ergänzen, die Marke verschieben, oder mehr Abstand erlauben.</translation>
    </message>
    <message>
        <location filename="../core/solve/transits.py"/>
        <source>Transits of {mark} found: {in_line}, but no two that cross at {least_crossing_deg:g} degrees or more. One line alone does not fix a mark: cross it with a depth or a compass bearing, or add landmarks elsewhere.</source>
        <translation>Deckpeilungen von {mark}: {in_line}, aber keine zwei, die sich mit {least_crossing_deg:g} Grad oder mehr schneiden. Eine Linie allein legt eine Marke nicht fest: mit einer Tiefe oder einer Kompasspeilung schneiden, oder anderswo Landmarken ergänzen.</translation>
    </message>
    <message>
        <location filename="../core/solve/transits_of_marks.py"/>
        <source>Whether a landmark can be seen from the water is not known: higher land, trees and houses may hide it, and the tide a low one. Look from the beach and from the water before you rely on a transit.</source>
        <translation>Ob man eine Landmarke vom Wasser aus sieht, ist nicht bekannt: Höheres Land, Bäume und Häuser können sie verdecken, und die Tide eine niedrige. Vom Strand und vom Wasser aus nachsehen, bevor Sie sich auf eine Deckpeilung verlassen.</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/hard_stops.py"/>
        <source>{max_hours:g} h in the water</source>
        <translation>{max_hours:g} h im Wasser</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/hard_stops.py"/>
        <source>the alarm</source>
        <translation>der Alarm</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/hard_stops.py"/>
        <source>back by {text}</source>
        <translation>zurück bis {text}</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/landings.py"/>
        <source>Only the {most} nearest exits are looked at for turning back; left out: {left}.</source>
        <translation>Für die Umkehr werden nur die {most} nächsten Ausstiege angesehen; nicht dabei: {left}.</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <location filename="../core/solve/turn_back/turn_back.py"/>
        <source>Turn back: {words}</source>
        <translation>Umkehr: {words}</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>on arriving at {name} at {arrive} no exit is reached in time.</source>
        <translation>bei Ankunft in {name} um {arrive} ist kein Ausstieg rechtzeitig zu erreichen.</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>From {name} no exit is reached in time</source>
        <translation>Von {name} ist kein Ausstieg rechtzeitig zu erreichen</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>leave {name} not before {until}: on arriving at {arrive} no exit is reached in time.</source>
        <translation>{name} nicht vor {until} verlassen: Bei Ankunft um {arrive} ist kein Ausstieg rechtzeitig zu erreichen.</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>Leave {name} not before {until}</source>
        <translation>{name} nicht vor {until} verlassen</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>the plan leaves {name} at {leave}, after {last}, the last safe minute.</source>
        <translation>der Plan verlässt {name} um {leave}, nach {last}, der letzten sicheren Minute.</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>The plan leaves {name} at {leave}: too late after {last}</source>
        <translation>Der Plan verlässt {name} um {leave}: nach {last} zu spät</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>never safe</source>
        <translation>nie sicher</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>safe until {last}</source>
        <translation>sicher bis {last}</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>the plan leaves {name} at {leave} for {planned_exit}, which is {until}: take {exit}.</source>
        <translation>der Plan verlässt {name} um {leave} nach {planned_exit}, das ist {until}: {exit} nehmen.</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>From {name} to {planned_exit} is too late: take {exit}</source>
        <translation>Von {name} nach {planned_exit} zu spät: {exit} nehmen</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>on a bad day (slower, more or less stream, turning early or late) no exit is reached in time from {name}, not even leaving on arrival at {arrive}.</source>
        <translation>an einem schlechten Tag (langsamer, mehr oder weniger Strom, früher oder später kenternd) ist von {name} kein Ausstieg rechtzeitig zu erreichen, auch nicht bei Aufbruch sofort nach Ankunft um {arrive}.</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/late_leaving.py"/>
        <source>the plan leaves {name} at {leave}; on a bad day that is too late after {bad}.</source>
        <translation>der Plan verlässt {name} um {leave}; an einem schlechten Tag ist das nach {bad} zu spät.</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/leaving.py"/>
        <source>the stream</source>
        <translation>der Strom</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/leaving.py"/>
        <source>a sailing</source>
        <translation>eine Abfahrt der Fähre</translation>
    </message>
    <message>
        <location filename="../core/solve/turn_back/turn_back.py"/>
        <source>Turn back: its times are those of the stops between the ends of the route.</source>
        <translation>Umkehr: Ihre Zeiten sind die der Halte zwischen den Enden der Route.</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/chart_limits.py"/>
        <source>an unnamed closed area</source>
        <translation>ein Sperrgebiet ohne Namen</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/chart_limits.py"/>
        <source>an unnamed channel</source>
        <translation>ein Fahrwasser ohne Namen</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/find_windows.py"/>
        <source>Asked for departures from {start} to {end}</source>
        <translation>Verlangt sind Aufbrüche von {start} bis {end}</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/find_windows.py"/>
        <source>The first is before the last</source>
        <translation>Der erste liegt vor dem letzten</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/find_windows.py"/>
        <source>Asked for {count} departures</source>
        <translation>Verlangt sind {count} Aufbrüche</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/find_windows.py"/>
        <source>At most {most_departures} are looked at</source>
        <translation>Höchstens {most_departures} werden angesehen</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/find_windows.py"/>
        <source>the time looked at ends</source>
        <translation>die betrachtete Zeit endet</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/own_limits.py"/>
        <source>No charted depth at {bare}: not checked.</source>
        <translation>Keine Kartentiefe bei {bare}: nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/own_limits.py"/>
        <source>The height of tide is not known: the depth at the marks is not checked.</source>
        <translation>Der Wasserstand ist nicht bekannt: Die Tiefe an den Marken ist nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>leg {leg} to {name}</source>
        <translation>Abschnitt {leg} nach {name}</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>the swim</source>
        <translation>die Tour</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where}: the stream across it reaches {across:.2f} m/s, you make {pace:.2f} m/s</source>
        <translation>{where}: Der Strom quer dazu erreicht {across:.2f} m/s, Sie machen {pace:.2f} m/s</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where}: the stream pushes you back, {ahead:.2f} m/s at the worst</source>
        <translation>{where}: Der Strom drückt Sie zurück, schlimmstens {ahead:.2f} m/s</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where}: too little way is made against the stream</source>
        <translation>{where}: gegen den Strom zu wenig Fahrt</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where} would end after civil dusk at {dusk:%H:%M}</source>
        <translation>{where} würde nach der bürgerlichen Abenddämmerung um {dusk:%H:%M} enden</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where} would begin before civil dawn</source>
        <translation>{where} würde vor der bürgerlichen Morgendämmerung beginnen</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where} would be swum in the dark</source>
        <translation>{where} läge im Dunkeln</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>the swim takes {hours:.1f} h, over the {max_hours:g} h of {name}</source>
        <translation>die Tour dauert {hours:.1f} h, länger als die {max_hours:g} h von {name}</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>the route is longer than the {range_km:.1f} km of {name}</source>
        <translation>die Route ist länger als die {range_km:.1f} km von {name}</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where} runs over {item}</source>
        <translation>{where} führt über {item}</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where} enters {item}, which nobody may</source>
        <translation>{where} führt in {item}, wo niemand hineindarf</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where}: the stream is not known</source>
        <translation>{where}: Der Strom ist nicht bekannt</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{where} meets a sailing in {item}</source>
        <translation>{where} trifft auf eine Abfahrt in {item}</translation>
    </message>
    <message>
        <location filename="../core/solve/windows/words.py"/>
        <source>{item} is too deep or too shoal while you are there</source>
        <translation>{item} ist zu tief oder zu flach, während Sie dort sind</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>Swimmer '{name}' has {key} = {value}</source>
        <translation>Schwimmer „{name}“ hat {key} = {value}</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>{key} lies from {low:g} to {high:g}</source>
        <translation>{key} liegt von {low:g} bis {high:g}</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>Correct the swimmers table</source>
        <translation>Die Tabelle der Schwimmer berichtigen</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>pace {value:g} m/s</source>
        <translation>Tempo {value:g} m/s</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>path factor {value:g}</source>
        <translation>Wegfaktor {value:g}</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>range {value:g} m</source>
        <translation>Reichweite {value:g} m</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>{value:g} hours</source>
        <translation>{value:g} Stunden</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>depth limit {value:g} m</source>
        <translation>Tiefengrenze {value:g} m</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>least ground speed {value:g} m/s</source>
        <translation>kleinste Fahrt über Grund {value:g} m/s</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>{value:g} L to drink</source>
        <translation>{value:g} L zu trinken</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>{value:g} L an hour drunk</source>
        <translation>{value:g} L in der Stunde getrunken</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>anchor line {value:g} m</source>
        <translation>Ankerleine {value:g} m</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>{words} by {name}</source>
        <translation>{words} durch {name}</translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <location filename="../core/water/stream_columns.py"/>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <location filename="../core/swimmer.py"/>
        <source>{before} and {last}</source>
        <translation>{before} und {last}</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>each row says its offset</source>
        <translation>jede Zeile nennt ihren Versatz</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>{who} says {label}</source>
        <translation>{who} nennt {label}</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>{zone}, as given</source>
        <translation>{zone}, wie angegeben</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>{label}, by {who}</source>
        <translation>{label}, laut {who}</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>Give ZONE as the zone or the fixed offset of that clock, such as -05:00</source>
        <translation>In ZONE die Zone oder den festen Versatz jener Uhr angeben, etwa -05:00</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>the fixed offset {offset}</source>
        <translation>den festen Versatz {offset}</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>If the table's clock stays at {label}, give ZONE as {such}</source>
        <translation>Wenn die Uhr der Tabelle bei {label} bleibt, in ZONE {such} angeben</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>{offset}, where {label} means that</source>
        <translation>{offset}, wenn {label} das heißt</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>Give ZONE as the fixed offset of that clock, such as {such}</source>
        <translation>In ZONE den festen Versatz jener Uhr angeben, etwa {such}</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>{who} says {label}, and at {time:%Y-%m-%d %H:%M} {zone} has {clock}</source>
        <translation>{who} nennt {label}, und um {time:%Y-%m-%d %H:%M} hat {zone} {clock}</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>{remedy}; if that label is wrong, correct it</source>
        <translation>{remedy}; wenn die Angabe falsch ist, sie berichtigen</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>{who} says {label}, which names no one zone for certain</source>
        <translation>{who} nennt {label}, was nicht sicher eine einzige Zone bezeichnet</translation>
    </message>
    <message>
        <location filename="../core/table_clock.py"/>
        <source>Give ZONE: an IANA name such as Europe/Lisbon where the clock changes in summer, else its fixed offset, such as {such}</source>
        <translation>ZONE angeben: einen IANA-Namen wie Europe/Lisbon, wenn die Uhr im Sommer umgestellt wird, sonst ihren festen Versatz, etwa {such}</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>Asked for the time zone {zone!r}</source>
        <translation>Verlangt ist die Zeitzone {zone!r}</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>A table's zone is an IANA name or a fixed offset</source>
        <translation>Die Zone einer Tabelle ist ein IANA-Name oder ein fester Versatz</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>Write one such as Europe/Lisbon, UTC or UTC-8</source>
        <translation>Eine wie Europe/Lisbon, UTC oder UTC-8 schreiben</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>The rows before it read as {orders}</source>
        <translation>Die Zeilen davor lesen sich als {orders}</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>That is no date</source>
        <translation>Das ist kein Datum</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>Write dates as 2027-06-05</source>
        <translation>Daten wie 2027-06-05 schreiben</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>It was to be read as {asked}, and only {orders} reads every row</source>
        <translation>Es sollte als {asked} gelesen werden, und nur {orders} passt auf jede Zeile</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>Correct DATE_ORDER or the rows</source>
        <translation>DATE_ORDER oder die Zeilen berichtigen</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>It may be {both}, and no other row tells which</source>
        <translation>Es kann {both} sein, und keine andere Zeile entscheidet es</translation>
    </message>
    <message>
        <location filename="../core/text_moments.py"/>
        <source>Give DATE_ORDER: dmy, mdy or ymd</source>
        <translation>DATE_ORDER angeben: dmy, mdy oder ymd</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>bar</source>
        <translation>senkrechter Strich</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>wide space</source>
        <translation>mehrere Leerzeichen</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>space</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>{count} characters</source>
        <translation>{count} Zeichen</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>Up to {most} are read at once</source>
        <translation>Bis zu {most} werden auf einmal gelesen</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Read it in parts</source>
        <translation>In Teilen lesen</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <location filename="../core/water/stream_text.py"/>
        <source>There is nothing in it</source>
        <translation>Es steht nichts darin</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <location filename="../core/water/stream_text.py"/>
        <source>Paste the table or choose another file</source>
        <translation>Die Tabelle einfügen oder eine andere Datei wählen</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>It starts like JSON and is not: {error}</source>
        <translation>Es beginnt wie JSON und ist keines: {error}</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>Correct the file</source>
        <translation>Die Datei berichtigen</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>JSON holds a list of records, alone or under one key, each with the same plain values</source>
        <translation>JSON enthält eine Liste von Datensätzen, allein oder unter einem Schlüssel, jeder mit denselben einfachen Werten</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>Convert it to such a list or to CSV</source>
        <translation>In eine solche Liste oder in CSV umwandeln</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>A record holds plain texts and numbers</source>
        <translation>Ein Datensatz enthält einfache Texte und Zahlen</translation>
    </message>
    <message>
        <location filename="../core/text_table.py"/>
        <source>Convert it to such records or to CSV</source>
        <translation>In solche Datensätze oder in CSV umwandeln</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>It has both hemispheres (N or S, and E or W) or neither</source>
        <translation>Sie hat beide Himmelsrichtungen (N oder S, und E oder W) oder keine</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>O is west in some languages and east in others: write E or W</source>
        <translation>O ist in manchen Sprachen Westen und in anderen Osten: E oder W schreiben</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>{plain!r} has no place in it</source>
        <translation>{plain!r} gehört nicht hinein</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>It has a latitude and a longitude</source>
        <translation>Sie hat eine Breite und eine Länge</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>It has one latitude (N or S) and one longitude (E or W)</source>
        <translation>Sie hat eine Breite (N oder S) und eine Länge (E oder W)</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>The {word} has either a hemisphere or one sign, before its degrees</source>
        <translation>Die {word} hat entweder eine Himmelsrichtung oder ein Vorzeichen vor den Graden</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>The {word} has whole degrees, then minutes with decimals</source>
        <translation>Die {word} hat ganze Grade, dann Minuten mit Nachkommastellen</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>Minutes and seconds of the {word} are below 60</source>
        <translation>Minuten und Sekunden der {word} liegen unter 60</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>A {word} is at most {most_deg:g} degrees</source>
        <translation>Eine {word} hat höchstens {most_deg:g} Grad</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>'{text}' is not a position</source>
        <translation>„{text}“ ist keine Position</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>No position was typed</source>
        <translation>Keine Position eingegeben</translation>
    </message>
    <message>
        <location filename="../core/typed_position.py"/>
        <source>Write it like {example}</source>
        <translation>Etwa so schreiben: {example}</translation>
    </message>
    <message>
        <location filename="../core/vendored.py"/>
        <source>Tideleg needs {names}, which the plugin's zip carries but this copy does not</source>
        <translation>Tideleg braucht {names}; das Zip der Erweiterung enthält es, diese Kopie nicht</translation>
    </message>
    <message>
        <location filename="../core/vendored.py"/>
        <source>Install the plugin from its zip, or run: {executable} -m pip install {missing}</source>
        <translation>Die Erweiterung aus ihrem Zip installieren, oder ausführen: {executable} -m pip install {missing}</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>value 3 is {reference!r}</source>
        <translation>Wert 3 ist {reference!r}</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>Value 3 is HW or LW</source>
        <translation>Wert 3 ist HW oder LW</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>it has {count} pairs</source>
        <translation>er hat {count} Paare</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>There are 13 pairs, for the hours -6 to +6</source>
        <translation>Es sind 13 Paare, für die Stunden -6 bis +6</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>every pair is blank</source>
        <translation>jedes Paar ist leer</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>At least one hour has a set and a rate</source>
        <translation>Mindestens eine Stunde hat Stromrichtung und Stärke</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>it has {count} values</source>
        <translation>er hat {count} Werte</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>It has a station, a port, HW or LW, and 13 pairs</source>
        <translation>Er hat eine Station, einen Ort, HW oder LW und 13 Paare</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>Times and heights come in pairs</source>
        <translation>Zeiten und Höhen stehen paarweise</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>a time does not follow the one before</source>
        <translation>eine Zeit folgt nicht auf die davor</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>Times run forward</source>
        <translation>Zeiten laufen vorwärts</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>it has one water only</source>
        <translation>er hat nur ein Hoch- oder Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>Two waters or more tell high from low</source>
        <translation>Erst zwei oder mehr zeigen, was Hoch- und was Niedrigwasser ist</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>two high or two low waters follow each other</source>
        <translation>zwei Hoch- oder zwei Niedrigwasser folgen aufeinander</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>High and low water alternate</source>
        <translation>Hoch- und Niedrigwasser wechseln sich ab</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>it has {count} values of set and rate</source>
        <translation>er hat {count} Werte für Stromrichtung und Stärke</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>They come in pairs</source>
        <translation>Sie stehen paarweise</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>value {position} is blank beside a rate of {rate_kn:g} kn</source>
        <translation>Wert {position} ist leer neben einer Stärke von {rate_kn:g} kn</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <location filename="../core/water/stream_rows.py"/>
        <source>A rate has a set</source>
        <translation>Zu einer Stärke gehört eine Stromrichtung</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>value {position} is {text!r}</source>
        <translation>Wert {position} ist {text!r}</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>value {position} is {text}</source>
        <translation>Wert {position} ist {text}</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <location filename="../core/water/stream_cells.py"/>
        <source>It is a number from {low:g} to {high:g}</source>
        <translation>Es ist eine Zahl von {low:g} bis {high:g}</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>Times are written as 19950428T1020, with Z or an offset where they carry one</source>
        <translation>Zeiten werden wie 19950428T1020 geschrieben, mit Z oder einem Versatz, wo sie einen haben</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>T_HWLW, value {position}</source>
        <translation>T_HWLW, Wert {position}</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>The chart's {name} text cannot be read: {got}</source>
        <translation>Der Text {name} der Seekarte ist nicht lesbar: {got}</translation>
    </message>
    <message>
        <location filename="../core/water/chart_strings.py"/>
        <source>Correct the text, or enter the stream by hand from the printed table</source>
        <translation>Den Text berichtigen, oder den Strom von Hand aus der gedruckten Tafel eintragen</translation>
    </message>
    <message>
        <location filename="../core/water/coefficients.py"/>
        <source>The tide coefficients of {port} have two rows at one time</source>
        <translation>Die Gezeitenkoeffizienten von {port} haben zwei Zeilen zur selben Zeit</translation>
    </message>
    <message>
        <location filename="../core/water/coefficients.py"/>
        <location filename="../core/water/events.py"/>
        <location filename="../core/water/harmonic_stream.py"/>
        <location filename="../core/water/series_stream.py"/>
        <location filename="../core/water/tide.py"/>
        <location filename="../core/water/tide_constants_text.py"/>
        <location filename="../core/water/tide_ports_text.py"/>
        <location filename="../core/water/tide_text.py"/>
        <location filename="../core/water/wind_drift.py"/>
        <location filename="../layers_in/streams_reading.py"/>
        <location filename="../layers_in/tides_in.py"/>
        <source>Delete one of them</source>
        <translation>Eine davon löschen</translation>
    </message>
    <message>
        <location filename="../core/water/constituents.py"/>
        <source>Asked for the tidal constituent {name!r}</source>
        <translation>Verlangt ist die Tide {name!r}</translation>
    </message>
    <message>
        <location filename="../core/water/constituents.py"/>
        <source>Known are {names}</source>
        <translation>Bekannt sind {names}</translation>
    </message>
    <message>
        <location filename="../core/water/constituents.py"/>
        <source>Correct its name, or leave it out if its amplitude is small</source>
        <translation>Ihren Namen berichtigen, oder sie weglassen, wenn ihre Amplitude klein ist</translation>
    </message>
    <message>
        <location filename="../core/water/constituents.py"/>
        <source>Got the tidal constituent {name!r}</source>
        <translation>Angegeben ist die Tide {name!r}</translation>
    </message>
    <message>
        <location filename="../core/water/constituents.py"/>
        <source> twice</source>
        <translation> zweimal</translation>
    </message>
    <message>
        <location filename="../core/water/constituents.py"/>
        <source>Each of these once: {names}</source>
        <translation>Jede von diesen einmal: {names}</translation>
    </message>
    <message>
        <location filename="../core/water/events.py"/>
        <source>The stream events of {station} have two rows at one time</source>
        <translation>Die Stromereignisse von {station} haben zwei Zeilen zur selben Zeit</translation>
    </message>
    <message>
        <location filename="../core/water/grid_stream.py"/>
        <source>The model '{name}' has {times} times and components of shape {east} and {north}</source>
        <translation>Das Modell „{name}“ hat {times} Zeiten und Komponenten der Form {east} und {north}</translation>
    </message>
    <message>
        <location filename="../core/water/grid_stream.py"/>
        <source>Both components have the shape (times, rows, columns)</source>
        <translation>Beide Komponenten haben die Form (Zeiten, Zeilen, Spalten)</translation>
    </message>
    <message>
        <location filename="../core/water/grid_stream.py"/>
        <source>Check how the raster was read</source>
        <translation>Prüfen, wie das Raster gelesen wurde</translation>
    </message>
    <message>
        <location filename="../core/water/harmonic_stream.py"/>
        <source>Station {station} has {count} constituents and {size} {name}</source>
        <translation>Station {station} hat {count} Tiden und {size} Werte für {name}</translation>
    </message>
    <message>
        <location filename="../core/water/harmonic_stream.py"/>
        <source>Each constituent has amplitude and phase of both parts</source>
        <translation>Jede Tide hat Amplitude und Phase beider Teile</translation>
    </message>
    <message>
        <location filename="../core/water/harmonic_stream.py"/>
        <source>The stream constants of {station} have {mean} twice</source>
        <translation>Die Stromkonstanten von {station} haben {mean} zweimal</translation>
    </message>
    <message>
        <location filename="../core/water/harmonics.py"/>
        <source>the start of a tidal sum</source>
        <translation>der Beginn einer Gezeitensumme</translation>
    </message>
    <message>
        <location filename="../core/water/harmonics.py"/>
        <source>the day of the nodal corrections</source>
        <translation>der Tag der Knotenkorrekturen</translation>
    </message>
    <message>
        <location filename="../core/water/harmonics.py"/>
        <source>Got {count} constituents and {size} {what}</source>
        <translation>Angegeben sind {count} Tiden und {size} Werte für {what}</translation>
    </message>
    <message>
        <location filename="../core/water/harmonics.py"/>
        <source>Each constituent has one amplitude and one phase, both numbers</source>
        <translation>Jede Tide hat eine Amplitude und eine Phase, beides Zahlen</translation>
    </message>
    <message>
        <location filename="../core/water/harmonics.py"/>
        <source>Fill in what is missing</source>
        <translation>Fehlendes eintragen</translation>
    </message>
    <message>
        <location filename="../core/water/harmonics.py"/>
        <source>The constants of {port} make no high or low water</source>
        <translation>Die Konstanten von {port} ergeben kein Hoch- oder Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../core/water/harmonics.py"/>
        <source>The tide rises and falls by a centimetre or more</source>
        <translation>Die Tide steigt und fällt um einen Zentimeter oder mehr</translation>
    </message>
    <message>
        <location filename="../core/water/harmonics.py"/>
        <source>Check the amplitudes and their unit</source>
        <translation>Die Amplituden und ihre Einheit prüfen</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>Give true directions: magnetic plus the east variation</source>
        <translation>Rechtweisende Richtungen angeben: missweisende plus östliche Missweisung</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>Give true directions the water goes to</source>
        <translation>Rechtweisende Richtungen angeben, in die das Wasser setzt</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>It begins as a column for {role}, and the rest of it is not read; in brackets it may say {words}</source>
        <translation>Sie beginnt wie eine Spalte für {role}, und der Rest wird nicht gelesen; in Klammern kann stehen: {words}</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>Turn the figures into what the table may say, and correct the heading</source>
        <translation>Die Zahlen in das umrechnen, was die Tabelle sagen kann, und die Überschrift berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>It says magnetic, and directions are true</source>
        <translation>Sie sagt missweisend, und Richtungen sind rechtweisend</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>It says from, and streams are where the water goes to</source>
        <translation>Sie sagt, woher, und bei Strömen zählt, wohin das Wasser setzt</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>It says from, which only a wind does; streams are where the water goes to</source>
        <translation>Sie sagt, woher, und das gilt nur für Wind; bei Strömen zählt, wohin das Wasser setzt</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>It names two units</source>
        <translation>Sie nennt zwei Einheiten</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>Name the one that the figures are in</source>
        <translation>Die eine nennen, in der die Zahlen sind</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>It says '{text}', and directions are true</source>
        <translation>Sie sagt „{text}“, und Richtungen sind rechtweisend</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>It says '{text}', and streams are where the water goes to</source>
        <translation>Sie sagt „{text}“, und bei Strömen zählt, wohin das Wasser setzt</translation>
    </message>
    <message>
        <location filename="../core/water/heading_words.py"/>
        <source>It says '{text}', which is not read; beside its name a heading may say {words}</source>
        <translation>Sie sagt „{text}“, was nicht gelesen wird; neben ihrem Namen kann in einer Überschrift stehen: {words}</translation>
    </message>
    <message>
        <location filename="../core/water/height_curve.py"/>
        <source>Got a series of {times} times and {heights} heights</source>
        <translation>Angegeben ist eine Reihe von {times} Zeiten und {heights} Höhen</translation>
    </message>
    <message>
        <location filename="../core/water/height_curve.py"/>
        <source>A series has at least two heights, each with its time</source>
        <translation>Eine Reihe hat mindestens zwei Höhen, jede mit ihrer Zeit</translation>
    </message>
    <message>
        <location filename="../core/water/height_curve.py"/>
        <source>Add the missing rows</source>
        <translation>Die fehlenden Zeilen ergänzen</translation>
    </message>
    <message>
        <location filename="../core/water/height_curve.py"/>
        <source>The times of a series do not rise at its row {row}</source>
        <translation>Die Zeiten einer Reihe steigen bei ihrer Zeile {row} nicht</translation>
    </message>
    <message>
        <location filename="../core/water/height_curve.py"/>
        <source>Each height is later than the one before</source>
        <translation>Jede Höhe ist später als die davor</translation>
    </message>
    <message>
        <location filename="../core/water/height_curve.py"/>
        <source>Sort the rows and delete those given twice</source>
        <translation>Die Zeilen sortieren und doppelte löschen</translation>
    </message>
    <message>
        <location filename="../core/water/hourly.py"/>
        <source>The hourly table of {station} has {size} values of {name}</source>
        <translation>Die Stundentabelle von {station} hat {size} Werte für {name}</translation>
    </message>
    <message>
        <location filename="../core/water/hourly.py"/>
        <source>It has 13, for the hours -6 to +6</source>
        <translation>Sie hat 13, für die Stunden -6 bis +6</translation>
    </message>
    <message>
        <location filename="../core/water/hourly.py"/>
        <source>Give one row for each hour; leave an unknown rate empty</source>
        <translation>Für jede Stunde eine Zeile; eine unbekannte Stärke leer lassen</translation>
    </message>
    <message>
        <location filename="../core/water/hourly.py"/>
        <location filename="../core/water/slack_offset.py"/>
        <source>Station {station} has neap range {neap_range_m} m, spring range {spring_range_m} m</source>
        <translation>Station {station} hat Nipphub {neap_range_m} m, Springhub {spring_range_m} m</translation>
    </message>
    <message>
        <location filename="../core/water/hourly.py"/>
        <location filename="../core/water/slack_offset.py"/>
        <location filename="../layers_in/station_forms.py"/>
        <location filename="../map_tools/placings.py"/>
        <source>The spring range is the larger</source>
        <translation>Der Springhub ist der größere</translation>
    </message>
    <message>
        <location filename="../core/water/hourly.py"/>
        <location filename="../core/water/slack_offset.py"/>
        <source>Correct the stream_stations row</source>
        <translation>Die Zeile in stream_stations berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/mesh_stream.py"/>
        <source>The model '{name}' has components of shape {east} and {north}, and corners numbered up to {numbers} of {nodes} nodes</source>
        <translation>Das Modell „{name}“ hat Komponenten der Form {east} und {north} und Ecken mit Nummern bis {numbers} von {nodes} Knoten</translation>
    </message>
    <message>
        <location filename="../core/water/mesh_stream.py"/>
        <source>Its times and places make the shape {expected}, and every corner is a node that is there</source>
        <translation>Zeiten und Orte ergeben die Form {expected}, und jede Ecke ist ein vorhandener Knoten</translation>
    </message>
    <message>
        <location filename="../core/water/mesh_stream.py"/>
        <source>Check how the mesh was read</source>
        <translation>Prüfen, wie das Netz gelesen wurde</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>slack</source>
        <translation>Stauwasser</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>max</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>high and low waters alternate</source>
        <translation>Hoch- und Niedrigwasser wechseln sich ab</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>high and low waters are hours apart</source>
        <translation>zwischen Hoch- und Niedrigwasser liegen Stunden</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>high waters are higher than the low ones beside them</source>
        <translation>Hochwasser sind höher als die Niedrigwasser neben ihnen</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>slacks and maxima are hours apart</source>
        <translation>zwischen Stauwasser und Maximum liegen Stunden</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>a series goes in even steps</source>
        <translation>eine Reihe hat gleiche Schritte</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>{held}, and {rule}</source>
        <translation>{held}, und {rule}</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>The plan has a {kind} {apart} later</source>
        <translation>Der Plan hat {kind} {apart} später</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>The plan has a {kind} {apart} earlier</source>
        <translation>Der Plan hat {kind} {apart} früher</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>The plan has a row {apart} later</source>
        <translation>Der Plan hat eine Zeile {apart} später</translation>
    </message>
    <message>
        <location filename="../core/water/second_reading.py"/>
        <source>The plan has a row {apart} earlier</source>
        <translation>Der Plan hat eine Zeile {apart} früher</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>The secondary port {port} has no difference of {water} water in {what}</source>
        <translation>Der Anschlussort {port} hat keinen Unterschied für {what} ({water})</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>Differences in time and height are given for high and low waters; none is not zero</source>
        <translation>Unterschiede in Zeit und Höhe stehen für Hoch- und Niedrigwasser da; keiner ist nicht null</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>Fill in the {water} water difference in {what}, 0 where there is none</source>
        <translation>Den Unterschied für {what} ({water}) eintragen, 0 wo keiner ist</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>The time differences of {port} put a high water past the low water beside it</source>
        <translation>Die Zeitunterschiede von {port} schieben ein Hochwasser über das Niedrigwasser daneben hinaus</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>Differences of high and low waters are of much the same size</source>
        <translation>Unterschiede von Hoch- und Niedrigwasser sind ungefähr gleich groß</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>Check their signs: later is positive</source>
        <translation>Ihre Vorzeichen prüfen: später ist positiv</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>Springs and neaps of {port} are {apart_m:.2f} m apart</source>
        <translation>Spring- und Nippzeit von {port} liegen {apart_m:.2f} m auseinander</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>The differences of {port} are interpolated between them: {least_spread_m} m or more</source>
        <translation>Die Unterschiede von {port} werden dazwischen interpoliert: {least_spread_m} m oder mehr</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>Give the mean levels of the reference port, or one difference for springs and neaps</source>
        <translation>Die mittleren Höhen des Bezugsorts angeben, oder einen Unterschied für Spring- und Nippzeit</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>The table of {port} has {count} high waters</source>
        <translation>Die Tafel von {port} hat {count} Hochwasser</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>The table of {port} has {count} low waters</source>
        <translation>Die Tafel von {port} hat {count} Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>To tell springs from neaps it needs 15 days of them</source>
        <translation>Um Spring- von Nippzeit zu unterscheiden, braucht es 15 Tage davon</translation>
    </message>
    <message>
        <location filename="../core/water/secondary_port.py"/>
        <source>Read more days of the reference port's tides, or give its mean levels at springs and neaps</source>
        <translation>Mehr Tage der Gezeiten des Bezugsorts einlesen, oder seine mittleren Höhen zu Spring- und Nippzeit angeben</translation>
    </message>
    <message>
        <location filename="../core/water/series_stream.py"/>
        <source>The stream series of {station} has two rows at one time</source>
        <translation>Die Stromreihe von {station} hat zwei Zeilen zur selben Zeit</translation>
    </message>
    <message>
        <location filename="../core/water/stream_asked.py"/>
        <location filename="../processing/readstreams.py"/>
        <source>the text</source>
        <translation>der Text</translation>
    </message>
    <message>
        <location filename="../core/water/stream_blocks.py"/>
        <source>The {key} asked for is {mine}</source>
        <translation>Verlangt ist für {key}: {mine}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_blocks.py"/>
        <source>Leave it out, or read this part alone</source>
        <translation>Es weglassen, oder diesen Teil für sich lesen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_cells.py"/>
        <source>It is a true direction; magnetic ones must be turned into true ones first</source>
        <translation>Es ist eine rechtweisende Richtung; missweisende müssen zuerst umgerechnet werden</translation>
    </message>
    <message>
        <location filename="../core/water/stream_cells.py"/>
        <source>It is a true direction from 0 to 360 degrees, or a compass point</source>
        <translation>Es ist eine rechtweisende Richtung von 0 bis 360 Grad, oder ein Kompassstrich</translation>
    </message>
    <message>
        <location filename="../core/water/stream_cells.py"/>
        <source>It is whole hours from the tide, from -6 to 6, such as -3, HW+2 or '3 before HW'</source>
        <translation>Es sind ganze Stunden, von der Tide an gezählt, von -6 bis 6, etwa -3, HW+2 oder '3 before HW'</translation>
    </message>
    <message>
        <location filename="../core/water/stream_cells.py"/>
        <source>It is whole hours from the tide, from -6 to 6</source>
        <translation>Es sind ganze Stunden, von der Tide an gezählt, von -6 bis 6</translation>
    </message>
    <message>
        <location filename="../core/water/stream_cells.py"/>
        <source>It is degrees up to {limit:g}, or degrees and minutes with {first} or {second}</source>
        <translation>Es sind Grad bis {limit:g}, oder Grad und Minuten mit {first} oder {second}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_columns.py"/>
        <source>column {number}</source>
        <translation>Spalte {number}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_columns.py"/>
        <location filename="../dock/tables/grid_model.py"/>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <location filename="../core/water/stream_columns.py"/>
        <source>Columns '{first}' and '{second}' both say the {role}</source>
        <translation>Die Spalten „{first}“ und „{second}“ stehen beide für {role}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_columns.py"/>
        <source>The headings name two units: {units}</source>
        <translation>Die Überschriften nennen zwei Einheiten: {units}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>It counts from {reference}</source>
        <translation>Gezählt wird ab {reference}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>hour {hour:+d} blank: unknown, not slack</source>
        <translation>Stunde {hour:+d} leer: nicht bekannt, kein Stauwasser</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>the line</source>
        <translation>die Zeile</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>station, port, HW or LW, 13 pairs of set and spring rate</source>
        <translation>Station, Ort, HW oder LW, 13 Paare aus Stromrichtung und Stärke zur Springzeit</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>Spring rates only: neap rates are unknown</source>
        <translation>Nur Stärken zur Springzeit: Die zur Nippzeit sind nicht bekannt</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>Rates are in knots, as the standard has them</source>
        <translation>Die Stärken sind in Knoten, wie im Standard</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>A TS_TSV text carries no times and no station</source>
        <translation>Ein Text TS_TSV enthält keine Zeiten und keine Station</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>Its first moment, the minutes from one pair to the next, and its station are given beside it</source>
        <translation>Sein erster Zeitpunkt, die Minuten von einem Paar zum nächsten und seine Station werden dazu angegeben</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>Fill in START, STEP and STATION</source>
        <translation>START, STEP und STATION ausfüllen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>pair {count} blank: unknown, not slack</source>
        <translation>Paar {count} leer: nicht bekannt, kein Stauwasser</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <source>pairs of set and rate (kn) at equal steps of time</source>
        <translation>Paare aus Stromrichtung und Stärke (kn) in gleichen Zeitschritten</translation>
    </message>
    <message>
        <location filename="../core/water/stream_panels.py"/>
        <location filename="../layers_in/station_rows.py"/>
        <source>Correct the line</source>
        <translation>Die Zeile berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>The heading says {said}, and {asked} was asked for</source>
        <translation>Die Überschrift sagt {said}, und verlangt ist {asked}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Correct UNITS or the heading</source>
        <translation>UNITS oder die Überschrift berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Nothing says whether the rates are in knots or metres a second</source>
        <translation>Nichts sagt, ob die Stärken in Knoten oder in Metern je Sekunde sind</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Choose UNITS</source>
        <translation>UNITS wählen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>That time comes twice that night, as clocks go back, and stands in the table once</source>
        <translation>Diese Zeit kommt in jener Nacht zweimal vor, weil die Uhren zurückgestellt werden, und steht nur einmal in der Tabelle</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Write its offset, or take the table in UTC</source>
        <translation>Den Versatz dazuschreiben, oder die Tabelle in UTC nehmen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Correct the text</source>
        <translation>Den Text berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Every row has its hour</source>
        <translation>Jede Zeile hat ihre Stunde</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Row {number} has that hour already</source>
        <translation>Zeile {number} hat diese Stunde schon</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>no rate: the hour is unknown, not slack</source>
        <translation>keine Stärke: Die Stunde ist nicht bekannt, kein Stauwasser</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>No row for hour {hours}: unknown then</source>
        <translation>Keine Zeile für Stunde {hours}: dann nicht bekannt</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Row {number} before the slack has a rate of the same sign, and a stream turns at slack</source>
        <translation>Zeile {number} vor dem Stauwasser hat eine Stärke mit demselben Vorzeichen, und ein Strom kentert bei Stauwasser</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Write ebb rates negative, or say flood or ebb in each row</source>
        <translation>Stärken der Ebbe negativ schreiben, oder in jeder Zeile flood oder ebb sagen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>It is no standard name of a constituent, such as M2</source>
        <translation>Das ist kein üblicher Name einer Teiltide wie M2</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Row {number} has that constituent already</source>
        <translation>Zeile {number} hat diese Teiltide schon</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Every constituent has amplitude and phase of both parts</source>
        <translation>Jede Teiltide hat Amplitude und Phase beider Anteile</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>A drift has an end or its minutes</source>
        <translation>Eine Drift hat ein Ende oder ihre Minuten</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>A drift has both its places</source>
        <translation>Eine Drift hat ihre beiden Orte</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>A wind has a direction it comes from</source>
        <translation>Ein Wind hat eine Richtung, aus der er kommt</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>The table counts its hours from {reference}</source>
        <translation>Die Tabelle zählt ihre Stunden ab {reference}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Correct REFERENCE</source>
        <translation>REFERENCE berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Before or after does not say its way</source>
        <translation>Before oder after sagt nicht, wohin er setzt</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>Write + for flood, - for ebb</source>
        <translation>+ für Flut schreiben, - für Ebbe</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>A flood has a positive rate</source>
        <translation>Die Flut hat eine positive Stärke</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>A slack has no rate</source>
        <translation>Ein Stauwasser hat keine Stärke</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>It is slack, max, flood or ebb</source>
        <translation>Es ist slack, max, flood oder ebb</translation>
    </message>
    <message>
        <location filename="../core/water/stream_rows.py"/>
        <source>A row without a word for it has a rate: 0 for slack, flood +, ebb -</source>
        <translation>Eine Zeile ohne ein Wort dafür hat eine Stärke: 0 für Stauwasser, Flut +, Ebbe -</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Forms are {forms}</source>
        <translation>Formen sind {forms}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Correct the form</source>
        <translation>Die Form berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>The table does not say which station it belongs to</source>
        <translation>Die Tabelle sagt nicht, zu welcher Station sie gehört</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Every stream table has a station</source>
        <translation>Jede Stromtabelle hat eine Station</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Name it in STATION</source>
        <translation>Sie in STATION nennen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>The table of {station} does not say from which tide its hours are counted</source>
        <translation>Die Tabelle von {station} sagt nicht, ab welcher Tide ihre Stunden zählen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Hours are counted from high water or from low water</source>
        <translation>Stunden zählen ab Hochwasser oder ab Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Choose REFERENCE</source>
        <translation>REFERENCE wählen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>no coefficient</source>
        <translation>kein Koeffizient</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Rename one of them</source>
        <translation>Eine davon umbenennen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>The first row names the columns, or the columns are in the order of the form ({orders})</source>
        <translation>Die erste Zeile benennt die Spalten, oder die Spalten stehen in der Reihenfolge der Form ({orders})</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Write headings such as hour, set_deg, spring_kn, neap_kn, or choose FORM</source>
        <translation>Überschriften wie hour, set_deg, spring_kn, neap_kn schreiben, oder FORM wählen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>A table of the form '{form}' has a column for {roles}; it has {known}</source>
        <translation>Eine Tabelle der Form „{form}“ hat eine Spalte für {roles}; diese hat {known}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Add the column, correct its heading, or choose another FORM</source>
        <translation>Die Spalte ergänzen, ihre Überschrift berichtigen, oder eine andere FORM wählen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>The first row has {width} cells (parted by {separator}), this one {count}</source>
        <translation>Die erste Zeile hat {width} Zellen (getrennt durch: {separator}), diese {count}</translation>
    </message>
    <message>
        <location filename="../core/water/stream_text.py"/>
        <source>Give every row the same cells; part cells by semicolons where numbers have a decimal comma</source>
        <translation>Jeder Zeile gleich viele Zellen geben; wo Zahlen ein Dezimalkomma haben, die Zellen durch Semikolon trennen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_times.py"/>
        <source>It is a date and a clock time, such as 2027-06-05 09:40 or 5 Jun 2027 9:40 am</source>
        <translation>Es sind Datum und Uhrzeit, etwa 2027-06-05 09:40 oder 5 Jun 2027 9:40 am</translation>
    </message>
    <message>
        <location filename="../core/water/stream_times.py"/>
        <source>Correct the date and time</source>
        <translation>Datum und Uhrzeit berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/stream_times.py"/>
        <source>The times carry no zone</source>
        <translation>Die Zeiten haben keine Zone</translation>
    </message>
    <message>
        <location filename="../core/water/stream_times.py"/>
        <source>Name the table's zone, an IANA name such as Europe/Lisbon, or UTC</source>
        <translation>Die Zone der Tabelle nennen, einen IANA-Namen wie Europe/Lisbon, oder UTC</translation>
    </message>
    <message>
        <location filename="../core/water/subordinate.py"/>
        <source>The difference {name} is missing</source>
        <translation>Der Unterschied {name} fehlt</translation>
    </message>
    <message>
        <location filename="../core/water/subordinate.py"/>
        <source>All four are needed</source>
        <translation>Alle vier werden gebraucht</translation>
    </message>
    <message>
        <location filename="../core/water/subordinate.py"/>
        <source>The speed ratio {name} is {value}</source>
        <translation>Das Verhältnis der Stärken {name} ist {value}</translation>
    </message>
    <message>
        <location filename="../core/water/subordinate.py"/>
        <source>Ratios lie from 0 to {largest_ratio:g}</source>
        <translation>Verhältnisse liegen von 0 bis {largest_ratio:g}</translation>
    </message>
    <message>
        <location filename="../core/water/subordinate.py"/>
        <source>The differences of {station} put its {first} after its {next}</source>
        <translation>Die Unterschiede von {station} setzen {first} nach {next}</translation>
    </message>
    <message>
        <location filename="../core/water/subordinate.py"/>
        <source>Slacks and maxima keep their order</source>
        <translation>Stauwasser und Maxima behalten ihre Reihenfolge</translation>
    </message>
    <message>
        <location filename="../core/water/subordinate.py"/>
        <source>Correct the minutes and their signs, later positive</source>
        <translation>Die Minuten und ihre Vorzeichen berichtigen, später ist positiv</translation>
    </message>
    <message>
        <location filename="../core/water/tide.py"/>
        <source>The tide table of {port} has a row without a time</source>
        <translation>Die Gezeitentafel von {port} hat eine Zeile ohne Zeit</translation>
    </message>
    <message>
        <location filename="../core/water/tide.py"/>
        <source>Fill in or delete the row</source>
        <translation>Die Zeile ausfüllen oder löschen</translation>
    </message>
    <message>
        <location filename="../core/water/tide.py"/>
        <source>The tide table of {port} has two rows at one time</source>
        <translation>Die Gezeitentafel von {port} hat zwei Zeilen zur selben Zeit</translation>
    </message>
    <message>
        <location filename="../core/water/tide.py"/>
        <source>two of the same kind in a row</source>
        <translation>zwei derselben Art hintereinander</translation>
    </message>
    <message>
        <location filename="../core/water/tide.py"/>
        <source>a low water above a high water</source>
        <translation>ein Niedrigwasser über einem Hochwasser</translation>
    </message>
    <message>
        <location filename="../core/water/tide.py"/>
        <source>The tide table of {port}, in order of time, has {what} at row {row}</source>
        <translation>Die Gezeitentafel von {port} hat, nach der Zeit geordnet, {what} in Zeile {row}</translation>
    </message>
    <message>
        <location filename="../core/water/tide.py"/>
        <source>High and low waters alternate, the high ones higher</source>
        <translation>Hoch- und Niedrigwasser wechseln sich ab, die hohen höher</translation>
    </message>
    <message>
        <location filename="../core/water/tide.py"/>
        <source>Check the kind, height and time of that row and the one before, or add one between them</source>
        <translation>Art, Höhe und Zeit dieser Zeile und der davor prüfen, oder eine dazwischen ergänzen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>by its heading</source>
        <translation>nach der Überschrift</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>by its cells</source>
        <translation>nach den Zellen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>four digits beside a date</source>
        <translation>vier Ziffern neben einem Datum</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>neither time, height nor kind</source>
        <translation>weder Zeit noch Höhe noch Art</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>No row of it has a date or time and a height in columns</source>
        <translation>Keine Zeile hat in Spalten ein Datum oder eine Zeit und eine Höhe</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>Part the columns by commas, semicolons, tabs or spaces, and write dates as 2027-06-05</source>
        <translation>Die Spalten durch Komma, Semikolon, Tabulator oder Leerzeichen trennen, und Daten wie 2027-06-05 schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>column {number} '{heading}'</source>
        <translation>Spalte {number} „{heading}“</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>It names up to {width} columns from the left, each one of {roles}</source>
        <translation>Es nennt bis zu {width} Spalten von links, jede eine von {roles}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>Correct COLUMNS or leave it empty</source>
        <translation>COLUMNS berichtigen oder leer lassen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>The heading '{heading}' says {strange}, and heights are read in {units}</source>
        <translation>Die Überschrift „{heading}“ sagt {strange}, und Höhen werden in {units} gelesen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>the heading '{heading}' says {of_heading}</source>
        <translation>die Überschrift „{heading}“ sagt {of_heading}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>the cell says {of_cell}</source>
        <translation>die Zelle sagt {of_cell}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_columns.py"/>
        <source>UNITS says {units}</source>
        <translation>UNITS sagt {units}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <location filename="../core/water/tide_ports_text.py"/>
        <location filename="../core/water/tide_rows.py"/>
        <source>above the table</source>
        <translation>über der Tabelle</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>no amplitude or phase</source>
        <translation>keine Amplitude oder Phase</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>not known, and of amplitude 0</source>
        <translation>nicht bekannt, und mit Amplitude 0</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>No column of it names constituents such as M2 beside two numbers</source>
        <translation>Keine Spalte nennt Teiltiden wie M2 neben zwei Zahlen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Write rows such as: M2, 1.234, 210.5</source>
        <translation>Zeilen schreiben wie: M2, 1.234, 210.5</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>None of its rows is whole</source>
        <translation>Keine der Zeilen ist vollständig</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Fill in amplitudes and phases</source>
        <translation>Amplituden und Phasen ausfüllen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <location filename="../core/water/tide_text.py"/>
        <source>as written</source>
        <translation>wie geschrieben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>It is not plain which number is the amplitude and which the phase</source>
        <translation>Es ist nicht klar, welche Zahl die Amplitude und welche die Phase ist</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Put headings above the columns: constituent, amplitude, phase</source>
        <translation>Überschriften über die Spalten setzen: constituent, amplitude, phase</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Greenwich, by a heading</source>
        <translation>Greenwich, laut einer Überschrift</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Phases belong to Greenwich and UTC or to a local clock of fixed offset, and {who} says {label}</source>
        <translation>Phasen gehören zu Greenwich und UTC oder zu einer örtlichen Uhr mit festem Versatz, und {who} nennt {label}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Phases belong to Greenwich and UTC or to a local clock of fixed offset, and nothing says to which of them</source>
        <translation>Phasen gehören zu Greenwich und UTC oder zu einer örtlichen Uhr mit festem Versatz, und nichts sagt, wozu diese</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Give ZONE: UTC, or the fixed offset of the clock, such as UTC-8</source>
        <translation>ZONE angeben: UTC, oder den festen Versatz der Uhr, etwa UTC-8</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>{who} says {label}, and {zone} is another clock</source>
        <translation>{who} nennt {label}, und {zone} ist eine andere Uhr</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Correct ZONE or that label</source>
        <translation>ZONE oder jene Angabe berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>of {zone}, as given</source>
        <translation>von {zone}, wie angegeben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>of {label}, by {who}</source>
        <translation>von {label}, laut {who}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Phases belong to UTC (Greenwich) or to a fixed offset</source>
        <translation>Phasen gehören zu UTC (Greenwich) oder zu einem festen Versatz</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Write UTC or for example UTC-8</source>
        <translation>UTC oder zum Beispiel UTC-8 schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>That is no number</source>
        <translation>Das ist keine Zahl</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Write it like 1.234</source>
        <translation>Wie 1.234 schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <location filename="../core/water/tide_ports_text.py"/>
        <location filename="../core/water/tide_rows.py"/>
        <source>Correct UNITS, the heading or the row</source>
        <translation>UNITS, die Überschrift oder die Zeile berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>Nothing says metres or feet</source>
        <translation>Nichts sagt, ob Meter oder Fuß</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <location filename="../core/water/tide_ports_text.py"/>
        <location filename="../core/water/tide_rows.py"/>
        <source>Give UNITS: m or ft</source>
        <translation>UNITS angeben: m oder ft</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>It is from {lowest_m} to {largest} m</source>
        <translation>Erlaubt sind {lowest_m} bis {largest} m</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Correct it</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>A phase is in degrees, from -360 to 360</source>
        <translation>Eine Phase ist in Grad, von -360 bis 360</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Known are {known} and more</source>
        <translation>Bekannt sind {known} und mehr</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Correct it or leave the row out</source>
        <translation>Berichtigen oder die Zeile weglassen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_constants_text.py"/>
        <source>Row {row} gives {standard} too</source>
        <translation>Zeile {row} gibt {standard} auch an</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>It has no headings such as hw_minutes_springs, lw_height_neaps_m</source>
        <translation>Überschriften wie hw_minutes_springs, lw_height_neaps_m fehlen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>Head each column by water (hw, lw), minutes or height, and springs or neaps where they differ</source>
        <translation>Über jede Spalte das Wasser (hw, lw), minutes oder height, und springs oder neaps setzen, wo sie verschieden sind</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>as headed</source>
        <translation>wie in den Überschriften</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>Two columns give it</source>
        <translation>Zwei Spalten geben es an</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>It has no difference</source>
        <translation>Sie hat keinen Unterschied</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>Fill it in or delete the row</source>
        <translation>Ausfüllen oder die Zeile löschen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>That is no difference of time up to a day</source>
        <translation>Das ist kein Zeitunterschied bis zu einem Tag</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>Write minutes, such as -20, or -0:20</source>
        <translation>Minuten schreiben, etwa -20, oder -0:20</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <location filename="../core/water/tide_rows.py"/>
        <source>That is no height</source>
        <translation>Das ist keine Höhe</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>Write it like -0.4</source>
        <translation>Wie -0.4 schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <source>Differences are up to {largest} m</source>
        <translation>Unterschiede sind höchstens {largest} m</translation>
    </message>
    <message>
        <location filename="../core/water/tide_ports_text.py"/>
        <location filename="../core/water/tide_rows.py"/>
        <source>Correct it or UNITS</source>
        <translation>Die Zahl oder UNITS berichtigen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_reading.py"/>
        <location filename="../processing/readtides.py"/>
        <source>the pasted text</source>
        <translation>der eingefügte Text</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>no date, time or height in it</source>
        <translation>weder Datum noch Zeit noch Höhe darin</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>no height</source>
        <translation>keine Höhe</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>neither time nor height</source>
        <translation>weder Zeit noch Höhe</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>below the table</source>
        <translation>unter der Tabelle</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>Each time needs one height beside it, and one date in its row or in the same cell</source>
        <translation>Zu jeder Zeit gehört eine Höhe daneben, und ein Datum in ihrer Zeile oder in derselben Zelle</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>Name the columns from the left in COLUMNS, such as date, time, height, kind, skip</source>
        <translation>Die Spalten von links in COLUMNS nennen, etwa date, time, height, kind, skip</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>{carried} rows without a date took that of the row above</source>
        <translation>{carried} Zeilen ohne Datum haben das der Zeile darüber</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>The table has {count} columns</source>
        <translation>Die Tabelle hat {count} Spalten</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>Part it alike</source>
        <translation>Sie wie die anderen unterteilen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>That is no time of day</source>
        <translation>Das ist keine Uhrzeit</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>Write it like 09:40 or 9:40 pm</source>
        <translation>Wie 09:40 oder 9:40 pm schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>The first row of a day has its date</source>
        <translation>Die erste Zeile eines Tages hat sein Datum</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>Write it like 2027-06-05</source>
        <translation>Wie 2027-06-05 schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>That is neither high nor low water</source>
        <translation>Das ist weder Hoch- noch Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <location filename="../core/water/tide_text.py"/>
        <source>Write H or L</source>
        <translation>H oder L schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>Write it like 3.9, or - for none</source>
        <translation>Wie 3.9 schreiben, oder - für keine</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>Neither the row nor the heading says metres or feet</source>
        <translation>Weder die Zeile noch die Überschrift sagt, ob Meter oder Fuß</translation>
    </message>
    <message>
        <location filename="../core/water/tide_rows.py"/>
        <source>Heights of tide are from {lowest} to {highest} m</source>
        <translation>Höhen der Tide liegen zwischen {lowest} und {highest} m</translation>
    </message>
    <message>
        <location filename="../core/water/tide_series.py"/>
        <source>The heights of {port} never turn</source>
        <translation>Die Höhen von {port} kehren nie um</translation>
    </message>
    <message>
        <location filename="../core/water/tide_series.py"/>
        <source>A series shows at least one high or low water</source>
        <translation>Eine Reihe zeigt mindestens ein Hoch- oder Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../core/water/tide_series.py"/>
        <source>Read a longer series, or check which column was taken for the height</source>
        <translation>Eine längere Reihe lesen, oder prüfen, welche Spalte für die Höhe genommen wurde</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>given twice</source>
        <translation>doppelt</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>in the hour that comes twice that night, and it is not said which</source>
        <translation>in der Stunde, die in jener Nacht zweimal kommt, und es steht nicht da, in welcher</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>None of its rows has a height</source>
        <translation>Keine der Zeilen hat eine Höhe</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Check which column holds the heights</source>
        <translation>Prüfen, in welcher Spalte die Höhen stehen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>It says {unit}, and UNITS says {units}</source>
        <translation>Sie sagt {unit}, und UNITS sagt {units}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Correct UNITS, or delete that line if it does not speak of the heights</source>
        <translation>UNITS berichtigen, oder jene Zeile löschen, wenn sie nicht von den Höhen spricht</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>a usual step of {minutes:.0f} min</source>
        <translation>ein üblicher Schritt von {minutes:.0f} min</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>High and low waters are hours apart, an even series has steps of up to two hours</source>
        <translation>Zwischen Hoch- und Niedrigwasser liegen Stunden, eine gleichmäßige Reihe hat Schritte bis zu zwei Stunden</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Say in FORM which it is: events or series</source>
        <translation>In FORM sagen, was es ist: events oder series</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Nothing in the table says which clock its times are read from</source>
        <translation>Nichts in der Tabelle sagt, nach welcher Uhr ihre Zeiten sind</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Give ZONE: an IANA name such as Europe/Lisbon where its clock changes in summer, else UTC or UTC-8</source>
        <translation>ZONE angeben: einen IANA-Namen wie Europe/Lisbon, wenn ihre Uhr im Sommer umgestellt wird, sonst UTC oder UTC-8</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Row {row} differs at the same time, {time:%Y-%m-%d %H:%M} UTC</source>
        <translation>Zeile {row} sagt zur selben Zeit etwas anderes, {time:%Y-%m-%d %H:%M} UTC</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>{count} heights</source>
        <translation>{count} Höhen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>A series has three or more</source>
        <translation>Eine Reihe hat drei oder mehr</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Read more rows</source>
        <translation>Mehr Zeilen lesen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Rows {first} to {last}: clocks go back that night, this hour comes twice and stands there once. Its rows are left out.</source>
        <translation>Zeilen {first} bis {last}: In jener Nacht werden die Uhren zurückgestellt, diese Stunde kommt zweimal und steht einmal da. Ihre Zeilen sind weggelassen.</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source> Between rows {before} and {after} the height changes by {rise:+.3f} m, beside them by {expected:+.3f} m: the other reading of that hour is missing there.</source>
        <translation> Zwischen den Zeilen {before} und {after} ändert sich die Höhe um {rise:+.3f} m, daneben um {expected:+.3f} m: Dort fehlt jene Stunde in ihrer anderen Lesung.</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>1 gap in the series, the first after row {first}: the curve is unknown there.</source>
        <translation>1 Lücke in der Reihe, nach Zeile {first}: Die Kurve ist dort nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>{count} gaps in the series, the first after row {first}: the curve is unknown there.</source>
        <translation>{count} Lücken in der Reihe, die erste nach Zeile {first}: Die Kurve ist dort nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>The height jumps before row {where}: a slip, or a clock that was changed.</source>
        <translation>Die Höhe springt vor Zeile {where}: ein Versehen, oder eine umgestellte Uhr.</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>The height jumps before rows {where}: a slip, or a clock that was changed.</source>
        <translation>Die Höhe springt vor den Zeilen {where}: ein Versehen, oder eine umgestellte Uhr.</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Other rows say high or low water, this one does not</source>
        <translation>Andere Zeilen sagen, ob Hoch- oder Niedrigwasser, diese nicht</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>none says high or low; told from the heights, which rise and fall in turn by {least_m:.2f} m or more</source>
        <translation>keine sagt, ob hoch oder niedrig; nach den Höhen, die im Wechsel um {least_m:.2f} m oder mehr steigen und fallen</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>It has no height, and no row says whether it is high or low water</source>
        <translation>Sie hat keine Höhe, und keine Zeile sagt, ob sie Hoch- oder Niedrigwasser ist</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Fill in the height or delete the row, and write H or L in each row</source>
        <translation>Die Höhe ausfüllen oder die Zeile löschen, und in jede Zeile H oder L schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>The rows beside it are one higher and one lower</source>
        <translation>Von den Zeilen daneben ist eine höher und eine niedriger</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>No row within {hours:.0f} hours of it is higher or lower</source>
        <translation>Keine Zeile im Abstand von bis zu {hours:.0f} Stunden ist höher oder niedriger</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Its rows are some {hours:.1f} h apart: they may be high waters alone, low waters alone, or one of each a day</source>
        <translation>Zwischen den Zeilen liegen etwa {hours:.1f} h: Es können nur Hochwasser sein, nur Niedrigwasser, oder eines von jedem am Tag</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>It differs from row {row} by {rise_m:.2f} m, others by some {usual:.2f} m: that does not tell high from low water</source>
        <translation>Sie liegt {rise_m:.2f} m neben Zeile {row}, andere etwa {usual:.2f} m: Daraus geht nicht hervor, was Hoch- und was Niedrigwasser ist</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>{height_m:.2f} m at {time:%Y-%m-%d %H:%M} UTC</source>
        <translation>{height_m:.2f} m um {time:%Y-%m-%d %H:%M} UTC</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>{why}; and no row says which</source>
        <translation>{why}; und keine Zeile sagt, was es ist</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Write H or L in each row</source>
        <translation>In jede Zeile H oder L schreiben</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>It is a high water and so is row {row}, {hours} h before</source>
        <translation>Sie ist ein Hochwasser, und Zeile {row}, {hours} h davor, ist auch eines</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>It is a low water and so is row {row}, {hours} h before</source>
        <translation>Sie ist ein Niedrigwasser, und Zeile {row}, {hours} h davor, ist auch eines</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>It is a high water and lower than row {row}</source>
        <translation>Sie ist ein Hochwasser und niedriger als Zeile {row}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>It is a low water and higher than row {row}</source>
        <translation>Sie ist ein Niedrigwasser und höher als Zeile {row}</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>{why}; high and low waters alternate</source>
        <translation>{why}; Hoch- und Niedrigwasser wechseln sich ab</translation>
    </message>
    <message>
        <location filename="../core/water/tide_text.py"/>
        <source>Correct that row or the one before, add the missing one, write H or L, or read it as FORM series</source>
        <translation>Jene Zeile oder die davor berichtigen, die fehlende ergänzen, H oder L schreiben, oder mit FORM series lesen</translation>
    </message>
    <message>
        <location filename="../core/water/time_steps.py"/>
        <source>The model '{name}' has {size} time steps</source>
        <translation>Das Modell „{name}“ hat {size} Zeitschritte</translation>
    </message>
    <message>
        <location filename="../core/water/time_steps.py"/>
        <location filename="../layers_in/model_times.py"/>
        <source>A model has two steps or more, each later than the one before</source>
        <translation>Ein Modell hat zwei Schritte oder mehr, jeder später als der davor</translation>
    </message>
    <message>
        <location filename="../core/water/time_steps.py"/>
        <source>Give a model that goes on in time</source>
        <translation>Ein Modell angeben, das in der Zeit fortschreitet</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>The drift's start</source>
        <translation>Der Anfang der Drift</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>The drift's end</source>
        <translation>Das Ende der Drift</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>A drift lasts {minutes:.1f} minutes</source>
        <translation>Eine Drift dauert {minutes:.1f} Minuten</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>Drifts of 2 minutes to 3 hours say what the stream does</source>
        <translation>Driften von 2 Minuten bis 3 Stunden sagen, was der Strom tut</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>Check both times</source>
        <translation>Beide Zeiten prüfen</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>A drift makes {rate_kn:.1f} kn</source>
        <translation>Eine Drift macht {rate_kn:.1f} kn</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>Streams up to 15 kn are planned in</source>
        <translation>Geplant wird in Strömen bis 15 kn</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>Check both places and times</source>
        <translation>Beide Orte und Zeiten prüfen</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>There is no drift to correct by</source>
        <translation>Es gibt keine Drift, nach der berichtigt werden kann</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>Time one: two places and two times</source>
        <translation>Eine stoppen: zwei Orte und zwei Zeiten</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>The station's table does not know the stream during drift {number}</source>
        <translation>Die Tabelle der Station kennt den Strom während Drift {number} nicht</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>A drift is compared with what the table says for the same time</source>
        <translation>Eine Drift wird mit dem verglichen, was die Tabelle für dieselbe Zeit sagt</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>Extend the tides or the table to that day</source>
        <translation>Die Gezeiten oder die Tabelle bis zu jenem Tag verlängern</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>Check places and times, or time another drift when the stream runs strongly</source>
        <translation>Orte und Zeiten prüfen, oder eine weitere Drift stoppen, wenn der Strom stark läuft</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>The station's table has hardly any stream during the drifts</source>
        <translation>Die Tabelle der Station hat während der Driften kaum Strom</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>A factor needs a table that runs {rate_kn:.1f} kn or more</source>
        <translation>Ein Faktor braucht eine Tabelle mit {rate_kn:.1f} kn oder mehr</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>The drifts ran {seen}, the station's table {told}</source>
        <translation>Die Driften liefen {seen}, die Tabelle der Station {told}</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>A day's correction keeps the table's set within some 60 degrees and its rate within a fifth and five times</source>
        <translation>Die Berichtigung eines Tages hält die Stromrichtung der Tabelle auf etwa 60 Grad und die Stärke zwischen einem Fünftel und dem Fünffachen</translation>
    </message>
    <message>
        <location filename="../core/water/timed_drift.py"/>
        <source>{set_deg:03d} at {rate_kn:.1f} kn</source>
        <translation>{set_deg:03d} mit {rate_kn:.1f} kn</translation>
    </message>
    <message>
        <location filename="../core/water/wind_drift.py"/>
        <source>The winds have two rows at one time</source>
        <translation>Die Winde haben zwei Zeilen zur selben Zeit</translation>
    </message>
    <message>
        <location filename="../dock/asked_layers.py"/>
        <source>{} - before the last change</source>
        <translation>{} - vor der letzten Änderung</translation>
    </message>
    <message>
        <location filename="../dock/asking.py"/>
        <location filename="../dock/swim_section.py"/>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Layout</source>
        <translation>Layout</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>As needed</source>
        <translation>Wie nötig</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Any sides</source>
        <translation>Alle Seiten</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Choose a Layout of Your Own…</source>
        <translation>Eigenes Layout wählen…</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Open in Layout Designer</source>
        <translation>In der Layoutgestaltung öffnen</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Labels say what stands where. Open one of Tideleg's layouts in the designer, change it, save it there as a template, and choose that file here</source>
        <translation>Beschriftungen sagen, was wo steht. Ein Layout von Tideleg in der Layoutgestaltung öffnen, ändern, dort als Vorlage speichern und diese Datei hier wählen</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Paper of the card</source>
        <translation>Papier der Karte</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>As needed: A5, and A4 where that is too small. Letters are never made smaller</source>
        <translation>Wie nötig: A5, und A4, wo das zu klein ist. Buchstaben werden nie kleiner</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Sides of the card</source>
        <translation>Seiten der Karte</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>At most so many; what is left out is named on the card</source>
        <translation>Höchstens so viele; was fehlt, nennt die Karte</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Layout of your own</source>
        <translation>Eigenes Layout</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>C&amp;ard on</source>
        <translation>K&amp;arte auf</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Layout for the Wet Card</source>
        <translation>Layout der Nasskarte</translation>
    </message>
    <message>
        <location filename="../dock/card_choice.py"/>
        <source>Print layout templates (*.qpt)</source>
        <translation>Druckvorlagen (*.qpt)</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>Save Picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>Save the picture of this day as a PDF, PNG or SVG file</source>
        <translation>Das Bild dieses Tages als PDF-, PNG- oder SVG-Datei speichern</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>Save the picture of this day</source>
        <translation>Das Bild dieses Tages speichern</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>There is no picture of this day yet</source>
        <translation>Von diesem Tag gibt es noch kein Bild</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>Wait until it is there</source>
        <translation>Warten, bis es da ist</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>Saved to {}</source>
        <translation>Gespeichert in {}</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <location filename="../dock/take_files.py"/>
        <source>route</source>
        <translation>Route</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <location filename="../dock/sheet_section.py"/>
        <location filename="../dock/take_files.py"/>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>PNG (*.png)</source>
        <translation>PNG (*.png)</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>SVG (*.svg)</source>
        <translation>SVG (*.svg)</translation>
    </message>
    <message>
        <location filename="../dock/day_export_menu.py"/>
        <source>Save Picture of the Day</source>
        <translation>Bild des Tages speichern</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <location filename="../layers_out/time_styles.py"/>
        <source>Tide</source>
        <translation>Gezeit</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <location filename="../layers_out/time_styles.py"/>
        <source>Stream</source>
        <translation>Strom</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Leaving then</source>
        <translation>Start dann</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <location filename="../layers_out/time_layers.py"/>
        <source>, rising</source>
        <translation>, steigend</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <location filename="../layers_out/time_layers.py"/>
        <source>, falling</source>
        <translation>, fallend</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>above {}</source>
        <translation>über {}</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>above a datum that is not known</source>
        <translation>über einem Bezugsniveau, das nicht bekannt ist</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Height of tide, metres {}</source>
        <translation>Höhe der Gezeit, Meter {}</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Twilight is from civil dawn to sunrise and from sunset to civil dusk</source>
        <translation>Dämmerung: von der bürgerlichen Morgendämmerung bis Sonnenaufgang und von Sonnenuntergang bis zur bürgerlichen Abenddämmerung</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>What comes of leaving at that moment, looked at every five minutes; a window keeps no reserve</source>
        <translation>Was aus einem Start in diesem Augenblick wird, alle fünf Minuten geprüft; ein Zeitfenster enthält keine Reserve</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>The stream at {}: rate in knots, and set: degrees true it runs towards</source>
        <translation>Der Strom bei {}: Stärke in Knoten und Stromrichtung: rechtweisende Grad, wohin er setzt</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>The weakest and the strongest rate on the route, knots, and its mean set: degrees true it runs towards</source>
        <translation>Der schwächste und der stärkste Strom auf der Route, Knoten, und seine mittlere Richtung: rechtweisende Grad, wohin er setzt</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>not known on the whole route</source>
        <translation>nicht auf der ganzen Route bekannt</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>{least} to {most} kn</source>
        <translation>{least} bis {most} kn</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>{rate}, its sets differ along the route</source>
        <translation>{rate}, die Richtungen sind längs der Route verschieden</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>{rate} towards {set}° true</source>
        <translation>{rate} nach {set}° rechtweisend</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>daylight</source>
        <translation>hell</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>not looked at</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>can be swum</source>
        <translation>schwimmbar</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>can be swum: {minutes} min, home {at}</source>
        <translation>schwimmbar: {minutes} min, zurück {at}</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>cannot be swum: {}</source>
        <translation>nicht schwimmbar: {}</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>High and low water are not known.</source>
        <translation>Hoch- und Niedrigwasser sind nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <location filename="../dock/tables/problems.py"/>
        <source>high water</source>
        <translation>Hochwasser</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <location filename="../dock/tables/problems.py"/>
        <location filename="../layers_in/chart_cell.py"/>
        <source>low water</source>
        <translation>Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>height not known</source>
        <translation>Höhe nicht bekannt</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source> the day after</source>
        <translation> am Tag danach</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Next after {at}: {waters}.</source>
        <translation>Als nächstes nach {at}: {waters}.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>; then </source>
        <translation>; dann </translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>The stream has no weakest moment.</source>
        <translation>Der Strom hat keinen schwächsten Augenblick.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>The stream is not known all day.</source>
        <translation>Der Strom ist den ganzen Tag nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Stream at {place} weakest at {times}.</source>
        <translation>Strom bei {place} am schwächsten um {times}.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Stream on the route weakest at {}.</source>
        <translation>Strom auf der Route am schwächsten um {}.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Without a route no departures are looked at.</source>
        <translation>Ohne Route werden keine Abgangszeiten geprüft.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>No departures were looked at.</source>
        <translation>Es wurden keine Startzeiten geprüft.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>No departure of this day can be swum; most often: {}.</source>
        <translation>Keine Startzeit dieses Tages ist schwimmbar; am häufigsten: {}.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Departures that can be swum: in {count} windows, the first at {first}, the last at {last}.</source>
        <translation>Schwimmbare Startzeiten: in {count} Zeitfenstern, die erste um {first}, die letzte um {last}.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Departures that can be swum: the first at {first}, the last at {last}.</source>
        <translation>Schwimmbare Startzeiten: die erste um {first}, die letzte um {last}.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Daylight is not known.</source>
        <translation>Das Tageslicht ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>civil dawn {}</source>
        <translation>bürgerliche Morgendämmerung {}</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>civil dusk {}</source>
        <translation>bürgerliche Abenddämmerung {}</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Light all day and night.</source>
        <translation>Tag und Nacht hell.</translation>
    </message>
    <message>
        <location filename="../dock/day_reading.py"/>
        <source>Dark all day.</source>
        <translation>Den ganzen Tag dunkel.</translation>
    </message>
    <message>
        <location filename="../dock/day_strip_view.py"/>
        <source>Picture of the day</source>
        <translation>Bild des Tages</translation>
    </message>
    <message>
        <location filename="../dock/day_work.py"/>
        <source>Tideleg: the day</source>
        <translation>Tideleg: der Tag</translation>
    </message>
    <message>
        <location filename="../dock/day_work.py"/>
        <location filename="../dock/result_sections.py"/>
        <location filename="../dock/swim_section.py"/>
        <location filename="../dock/time_section.py"/>
        <location filename="../dock/transits_section.py"/>
        <location filename="../dock/work_section.py"/>
        <source>Stopped.</source>
        <translation>Gestoppt.</translation>
    </message>
    <message>
        <location filename="../dock/desktop.py"/>
        <source>{} is there already. Replace it?</source>
        <translation>{} ist schon da. Ersetzen?</translation>
    </message>
    <message>
        <location filename="../dock/desktop.py"/>
        <source>Your desktop has no program to open {}</source>
        <translation>Der Rechner hat kein Programm, um {} zu öffnen</translation>
    </message>
    <message>
        <location filename="../dock/dock.py"/>
        <location filename="../dock/tables/table_window.py"/>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <location filename="../dock/dock.py"/>
        <source>Open the page on this dock</source>
        <translation>Die Seite über dieses Bedienfeld öffnen</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>Draw</source>
        <translation>Zeichnen</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>Save Drawing</source>
        <translation>Zeichnung speichern</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>P&amp;osition</source>
        <translation>P&amp;osition</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>Degrees and decimal minutes with N or S, E or W; or with signs, latitude first. Enter takes it.</source>
        <translation>Grad und Dezimalminuten mit N oder S, E oder W; oder mit Vorzeichen, Breite zuerst. Die Eingabetaste übernimmt.</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>Finish Drawing</source>
        <translation>Zeichnung beenden</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>Finish what is being drawn, as Enter and a right click on the map do</source>
        <translation>Beenden, was gezeichnet wird, wie mit Eingabetaste und Rechtsklick auf der Karte</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>As Backspace on the map does</source>
        <translation>Wie die Rücktaste auf der Karte</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>Choose what to draw, or type where a mark goes.</source>
        <translation>Wählen, was zu zeichnen ist, oder eingeben, wohin eine Marke kommt.</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>Take Position</source>
        <translation>Position übernehmen</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <location filename="../dock/result_sections.py"/>
        <location filename="../dock/swim_section.py"/>
        <location filename="../dock/tables_section.py"/>
        <location filename="../dock/take_section.py"/>
        <location filename="../dock/time_section.py"/>
        <location filename="../dock/transits_section.py"/>
        <location filename="../dock/water_section.py"/>
        <location filename="../dock/work_section.py"/>
        <source>Open a plan first.</source>
        <translation>Zuerst einen Plan öffnen.</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <source>'{}' is drawn and not saved yet.</source>
        <translation>'{}' ist gezeichnet und noch nicht gespeichert.</translation>
    </message>
    <message>
        <location filename="../dock/draw_section.py"/>
        <location filename="../dock/plan_marks.py"/>
        <source>(without a name)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message>
        <location filename="../dock/edit_steps.py"/>
        <location filename="../dock/tables/table_window.py"/>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <location filename="../dock/edit_steps.py"/>
        <location filename="../dock/tables/table_window.py"/>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <location filename="../dock/edit_steps.py"/>
        <source>Save the edits of: {}</source>
        <translation>Änderungen speichern in: {}</translation>
    </message>
    <message>
        <location filename="../dock/edit_steps.py"/>
        <source>Undo in '{}': {}</source>
        <translation>Rückgängig in „{}“: {}</translation>
    </message>
    <message>
        <location filename="../dock/edit_steps.py"/>
        <source>Redo in '{}': {}</source>
        <translation>Wiederholen in „{}“: {}</translation>
    </message>
    <message>
        <location filename="../dock/edit_steps.py"/>
        <source>'{}' was not saved: {}</source>
        <translation>'{}' wurde nicht gespeichert: {}</translation>
    </message>
    <message>
        <location filename="../dock/edit_steps.py"/>
        <source>Saved: {}.</source>
        <translation>Gespeichert: {}.</translation>
    </message>
    <message>
        <location filename="../dock/flag_shapes.py"/>
        <location filename="../dock/sheet_section.py"/>
        <location filename="../dock/swim_section.py"/>
        <location filename="../dock/work_section.py"/>
        <location filename="../layers_out/styling.py"/>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <location filename="../dock/flag_shapes.py"/>
        <location filename="../layers_out/styling.py"/>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <location filename="../dock/flag_shapes.py"/>
        <location filename="../dock/sheet_section.py"/>
        <location filename="../layers_out/styling.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <location filename="../dock/help_window.py"/>
        <source>Page of the documentation</source>
        <translation>Seite der Dokumentation</translation>
    </message>
    <message>
        <location filename="../dock/help_window.py"/>
        <location filename="../dock/walk.py"/>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <location filename="../dock/help_window.py"/>
        <source>The page before this one</source>
        <translation>Die Seite vor dieser</translation>
    </message>
    <message>
        <location filename="../dock/help_window.py"/>
        <source>User Guide</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <location filename="../dock/help_window.py"/>
        <source>The page to begin with</source>
        <translation>Die Seite für den Anfang</translation>
    </message>
    <message>
        <location filename="../dock/help_window.py"/>
        <location filename="../dock/tables/table_window.py"/>
        <location filename="../dock/walk.py"/>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../dock/help_window.py"/>
        <source>Tideleg help: {}</source>
        <translation>Tideleg-Hilfe: {}</translation>
    </message>
    <message>
        <location filename="../dock/home_by.py"/>
        <source>three hours after leaving, since no swim is planned</source>
        <translation>drei Stunden nach dem Start, da keine Tour geplant ist</translation>
    </message>
    <message>
        <location filename="../dock/home_by.py"/>
        <source>dusk, with the plan's minutes before sunset</source>
        <translation>die Abenddämmerung, mit den Minuten des Plans vor Sonnenuntergang</translation>
    </message>
    <message>
        <location filename="../dock/home_by.py"/>
        <source>the swimmer's hours in the water</source>
        <translation>die Stunden des Schwimmers im Wasser</translation>
    </message>
    <message>
        <location filename="../dock/home_by.py"/>
        <source>the plan's time to be back</source>
        <translation>die Rückkehrzeit des Plans</translation>
    </message>
    <message>
        <location filename="../dock/latest_work.py"/>
        <source>Tideleg has a defect here: {}. The log messages say more.</source>
        <translation>Tideleg hat hier einen Fehler: {}. Das Protokoll sagt mehr.</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>New Plan</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <location filename="../dock/plan_section.py"/>
        <location filename="../processing/newplan.py"/>
        <location filename="../processing/readchart.py"/>
        <location filename="../processing/text_reading.py"/>
        <source>Plans (*.gpkg)</source>
        <translation>Pläne (*.gpkg)</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Where to Keep the Plan</source>
        <translation>Wo der Plan liegen soll</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>such as Autumn swims</source>
        <translation>etwa Herbst</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>may stay empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <location filename="../processing/newplan.py"/>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>What the plan is called in the dock, in the layers and on the cards</source>
        <translation>Wie der Plan im Fenster, bei den Layern und auf den Karten heißt</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <location filename="../processing/readstreams.py"/>
        <location filename="../processing/readtides.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Where the plan is kept: one GeoPackage (.gpkg)</source>
        <translation>Wo der Plan liegt: ein GeoPackage (.gpkg)</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>The clock of the coast; type a part of its name to find it</source>
        <translation>Die Uhr der Küste; tippe einen Teil des Namens</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Datum</source>
        <translation>Bezugshöhe</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>The level that depths and heights of tide are counted from</source>
        <translation>Die Höhe, von der Tiefen und Gezeitenhöhen zählen</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Tide port</source>
        <translation>Gezeitenhafen</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Whose tides give the heights, where the plan has several ports</source>
        <translation>Wessen Gezeiten die Höhen geben, wenn der Plan mehrere Häfen hat</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Make Plan</source>
        <translation>Plan anlegen</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>T&amp;itle</source>
        <translation>T&amp;itel</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>&amp;File</source>
        <translation>Da&amp;tei</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Time &amp;zone</source>
        <translation>&amp;Zeitzone</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>&amp;Datum</source>
        <translation>&amp;Bezugshöhe</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Tide &amp;port</source>
        <translation>Gezeiten&amp;hafen</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>No file is named</source>
        <translation>Keine Datei genannt</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>A plan is kept in one file of yours</source>
        <translation>Ein Plan liegt in einer Datei von dir</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>Name one that ends in .gpkg</source>
        <translation>Nenne eine, die auf .gpkg endet</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>{} is there already</source>
        <translation>{} gibt es schon</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <source>A new plan replaces no file</source>
        <translation>Ein neuer Plan ersetzt keine Datei</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <location filename="../map_tools/row_form.py"/>
        <source>Give it another name</source>
        <translation>Einen anderen Namen geben</translation>
    </message>
    <message>
        <location filename="../dock/new_plan_form.py"/>
        <location filename="../processing/newplan.py"/>
        <source>New plan</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>The places in swimming order, the best order first</source>
        <translation>Die Orte in der Reihenfolge des Schwimmens, die beste Reihenfolge zuerst</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <location filename="../dock/reach_section.py"/>
        <source>Leave</source>
        <translation>Start</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>The best departure for this order, in the plan's zone</source>
        <translation>Die beste Startzeit für diese Reihenfolge, in der Zone des Plans</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>Home</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>Clock time of landing, rounded up</source>
        <translation>Uhrzeit der Landung, aufgerundet</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>From leaving the entry to landing, stays and all, rounded up</source>
        <translation>Vom Einstieg bis zur Landung mit allen Halten, aufgerundet</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>Not feasible: {}</source>
        <translation>Nicht machbar: {}</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <location filename="../dock/reach_rows.py"/>
        <source>{} h {:02d} min</source>
        <translation>{} h {:02d} min</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>No order can be swum. What stops the shortest one, at how many departures: {}</source>
        <translation>Keine Reihenfolge ist schwimmbar. Was die kürzeste verhindert, bei wie vielen Startzeiten: {}</translation>
    </message>
    <message>
        <location filename="../dock/order_rows.py"/>
        <source>{} marks, {} departures from {} to {}</source>
        <translation>{} Marken, {} Startzeiten von {} bis {}</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Add as Route</source>
        <translation>Als Route anfügen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Order of Marks</source>
        <translation>Reihenfolge der Marken</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Find Best Order</source>
        <translation>Beste suchen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Marks to visit</source>
        <translation>Zu besuchende Marken</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Tick up to {} marks to visit</source>
        <translation>Bis zu {} Marken ankreuzen, die zu besuchen sind</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Where one sets out</source>
        <translation>Wo man losschwimmt</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Where one lands; the first choice takes whichever is best</source>
        <translation>Wo man landet; die erste Wahl nimmt, was am besten ist</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Leave from</source>
        <translation>Start von</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>The first departure to try, date and time in the plan's zone</source>
        <translation>Die erste Startzeit, die versucht wird, Datum und Uhrzeit in der Zone des Plans</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Leave to</source>
        <translation>Start bis</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>The last departure to try, date and time in the plan's zone</source>
        <translation>Die letzte Startzeit, die versucht wird, Datum und Uhrzeit in der Zone des Plans</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Departure every</source>
        <translation>Startzeit alle</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Minutes between the departures that are tried</source>
        <translation>Minuten zwischen den Startzeiten, die versucht werden</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Find best order</source>
        <translation>Beste Reihenfolge suchen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Weigh every order at every departure in the stream as it changes</source>
        <translation>Jede Reihenfolge zu jeder Startzeit im Strom, wie er sich ändert, abwägen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <location filename="../processing/bestorder.py"/>
        <source>Orders</source>
        <translation>Reihenfolgen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>A click draws the order on the map</source>
        <translation>Ein Klick zeichnet die Reihenfolge auf die Karte</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Add as route</source>
        <translation>Als Route anfügen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Put the order shown into the layer of routes, unsaved, and plan its swim</source>
        <translation>Die gezeigte Reihenfolge ungespeichert in den Layer der Routen legen und ihre Tour planen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>&amp;Marks</source>
        <translation>&amp;Marken</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>E&amp;ntry</source>
        <translation>Ei&amp;nstieg</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>E&amp;xit</source>
        <translation>&amp;Ausstieg</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Leave &amp;from</source>
        <translation>Start &amp;von</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Leave t&amp;o</source>
        <translation>Start &amp;bis</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>E&amp;very</source>
        <translation>A&amp;lle</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>One heading a leg. No reserve is kept: look at the route's turn back before you go.</source>
        <translation>Ein Kurs je Abschnitt. Keine Reserve ist darin: vor dem Aufbruch die Umkehr der Route ansehen.</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>The entry, or the best exit</source>
        <translation>Der Einstieg oder der beste Ausstieg</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>The plan has no marks to visit. Place some in the layer of marks.</source>
        <translation>Der Plan hat keine Marken zu besuchen. Im Layer der Marken welche setzen.</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Tick the marks to visit.</source>
        <translation>Die Marken ankreuzen, die zu besuchen sind.</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>{} are ticked: up to {} can be put in order.</source>
        <translation>{} sind angekreuzt: bis zu {} können geordnet werden.</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>{} of up to {} ticked</source>
        <translation>{} von bis zu {} angekreuzt</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <location filename="../dock/reach_section.py"/>
        <source>There is no entry to set out from</source>
        <translation>Es gibt keinen Einstieg, von dem aus es losgeht</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Place a mark of the kind entry</source>
        <translation>Eine Marke der Art Einstieg setzen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <location filename="../dock/reach_section.py"/>
        <location filename="../dock/sheet_section.py"/>
        <location filename="../dock/windows_section.py"/>
        <source>Reading the plan…</source>
        <translation>Liest den Plan…</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>An order that cannot be swum is no route.</source>
        <translation>Eine Reihenfolge, die nicht schwimmbar ist, ist keine Route.</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>The layer of routes is not in the project: open the plan again.</source>
        <translation>Der Layer der Routen ist nicht im Projekt: den Plan noch einmal öffnen.</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Add the order as a route</source>
        <translation>Die Reihenfolge als Route anfügen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Added as '{}', not saved yet; the swim above leaves as this order does.</source>
        <translation>Angefügt als „{}“, noch nicht gespeichert; die Tour oben startet wie diese Reihenfolge.</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Order of marks (result)</source>
        <translation>Reihenfolge der Marken (Ergebnis)</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Ways between the marks</source>
        <translation>Wege zwischen den Marken</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Minutes of every leg</source>
        <translation>Minuten jedes Abschnitts</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Departures that get home</source>
        <translation>Startzeiten, die nach Hause kommen</translation>
    </message>
    <message>
        <location filename="../dock/order_section.py"/>
        <source>Swimming the orders</source>
        <translation>Schwimmt die Reihenfolgen</translation>
    </message>
    <message>
        <location filename="../dock/plan_at_hand.py"/>
        <source>The layer '{}' of the plan is not in the project</source>
        <translation>Der Layer „{}“ des Plans ist nicht im Projekt</translation>
    </message>
    <message>
        <location filename="../dock/plan_at_hand.py"/>
        <source>What is drawn goes into the project's layer, where you can undo it and save it</source>
        <translation>Gezeichnet wird in den Layer des Projekts, wo man es rückgängig machen und speichern kann</translation>
    </message>
    <message>
        <location filename="../dock/plan_at_hand.py"/>
        <source>Drag it into the project from the plan's file in the Browser panel</source>
        <translation>Ihn im Browser-Bedienfeld aus der Datei des Plans ins Projekt ziehen</translation>
    </message>
    <message>
        <location filename="../dock/plan_at_hand.py"/>
        <location filename="../map_tools/readings.py"/>
        <source>no departure is chosen</source>
        <translation>keine Startzeit gewählt</translation>
    </message>
    <message>
        <location filename="../dock/plan_at_hand.py"/>
        <source>the plan is being read</source>
        <translation>der Plan wird gelesen</translation>
    </message>
    <message>
        <location filename="../dock/plan_at_hand.py"/>
        <source>Tideleg: reading the plan around the cursor</source>
        <translation>Tideleg: liest den Plan um den Mauszeiger</translation>
    </message>
    <message>
        <location filename="../dock/plan_in_project.py"/>
        <source>Another file has taken the plan's place, and edits are not saved: {}</source>
        <translation>Eine andere Datei ist an die Stelle des Plans getreten, und Änderungen sind nicht gespeichert: {}</translation>
    </message>
    <message>
        <location filename="../dock/plan_in_project.py"/>
        <source>They belong to the file before, and saving them would lose them with it</source>
        <translation>Sie gehören zur Datei davor; beim Speichern gingen sie mit ihr verloren</translation>
    </message>
    <message>
        <location filename="../dock/plan_in_project.py"/>
        <source>Copy the rows that you need, roll the edits back in QGIS, and paste them into the new file</source>
        <translation>Kopiere die Zeilen, die du brauchst, verwirf die Änderungen in QGIS und füge sie in die neue Datei ein</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <location filename="../entry.py"/>
        <location filename="../processing/newplan.py"/>
        <location filename="../processing/plan_algorithm.py"/>
        <location filename="../processing/planswim.py"/>
        <location filename="../processing/readchart.py"/>
        <location filename="../processing/text_reading.py"/>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>New…</source>
        <translation>Neu…</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Recent</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Sample</source>
        <translation>Beispiel</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Make a new plan: one GeoPackage with all its layers and tables</source>
        <translation>Einen neuen Plan anlegen: ein GeoPackage mit allen Layern und Tabellen</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Open a plan (.gpkg)</source>
        <translation>Einen Plan öffnen (.gpkg)</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Plans opened of late</source>
        <translation>Zuletzt geöffnete Pläne</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Open the sample bay: invented, not for navigation</source>
        <translation>Die Beispielbucht öffnen: erfunden, nicht zur Navigation</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Open a plan, or make a new one. A plan is one file with the chart, tides, streams, marks and swimmers.</source>
        <translation>Einen Plan öffnen oder neu anlegen. Ein Plan ist eine Datei mit Seekarte, Gezeiten, Strömen, Marken und Schwimmern.</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>Open Plan</source>
        <translation>Plan öffnen</translation>
    </message>
    <message>
        <location filename="../dock/plan_section.py"/>
        <source>{} (not found)</source>
        <translation>{} (nicht gefunden)</translation>
    </message>
    <message>
        <location filename="../dock/planner.py"/>
        <source>Tideleg: planning the swim</source>
        <translation>Tideleg: plant die Tour</translation>
    </message>
    <message>
        <location filename="../dock/progress_words.py"/>
        <source>{}… {} %</source>
        <translation>{}… {} %</translation>
    </message>
    <message>
        <location filename="../dock/rates_hint.py"/>
        <source>Fill In Rates…</source>
        <translation>Stärken eintragen…</translation>
    </message>
    <message>
        <location filename="../dock/rates_hint.py"/>
        <source>'{}' has no rates yet: its stream is not known, and not known is not slack.</source>
        <translation>'{}' hat noch keine Stärken: Ihr Strom ist nicht bekannt, und nicht bekannt ist nicht Stauwasser.</translation>
    </message>
    <message>
        <location filename="../dock/rates_hint.py"/>
        <source>Stations like that: {}.</source>
        <translation>Solche Stationen: {}.</translation>
    </message>
    <message>
        <location filename="../dock/rates_hint.py"/>
        <source>Open the table '{}' at the rows of '{}'</source>
        <translation>Die Tabelle '{}' bei den Zeilen von '{}' öffnen</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <location filename="../dock/transits_section.py"/>
        <location filename="../layers_out/styling.py"/>
        <location filename="../map_tools/place_mark.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>For a swimmer who steers anew all the time; what differs on one heading a leg stands below</source>
        <translation>Für einen Schwimmer, der ständig neu steuert; was bei einem Kurs je Abschnitt anders ist, steht darunter</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>There
at</source>
        <translation>Dort
um</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>Earliest arrival, clock time in the plan's zone, rounded up</source>
        <translation>Früheste Ankunft, Uhrzeit in der Zone des Plans, aufgerundet</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>Leave
by</source>
        <translation>Weg
bis</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>Latest leaving that is still home in time, rounded down; no reserve is in it</source>
        <translation>Letzter Aufbruch, der noch rechtzeitig zurück ist, abgerundet; ohne Reserve</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>Longest
stay</source>
        <translation>Bleiben
max.</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>Time between the two, rounded down</source>
        <translation>Zeit zwischen beiden, abgerundet</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>Home at</source>
        <translation>Zurück in</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>Where one lands when leaving as late as that</source>
        <translation>Wo man landet, wenn man so spät aufbricht</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>one heading</source>
        <translation>ein Kurs</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>there at {}</source>
        <translation>dort um {}</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>to be left by {}</source>
        <translation>weg bis {}</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>not in time: there at {}, but to be left by {}</source>
        <translation>nicht rechtzeitig: dort um {}, aber weg bis {}</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <location filename="../dock/swim_section.py"/>
        <location filename="../layers_out/reach_bands.py"/>
        <source>{} min</source>
        <translation>{} min</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>From {}: leave {}, back by {}, stay {} min. Time for that in {} square kilometres.</source>
        <translation>Von {}: Start {}, zurück bis {}, {} min bleiben. Zeit dafür auf {} Quadratkilometern.</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>There is no place from which one would be home in time.</source>
        <translation>Es gibt keinen Ort, von dem man rechtzeitig zurück wäre.</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>On the map: where one can be and be home in time, the lighter the sooner, a line every {} min; slanting lines and a dark edge where there is time for the stay.</source>
        <translation>Auf der Karte: wo man sein und rechtzeitig zurück sein kann, je heller, desto früher, alle {} min eine Linie; schräge Linien und ein dunkler Rand, wo Zeit zum Bleiben ist.</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>Cells of {} m: what is narrower than {} m counts as closed.</source>
        <translation>Zellen von {} m: was schmaler ist als {} m, gilt als geschlossen.</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>How much the minutes hang on the cells is not known.</source>
        <translation>Wie sehr die Minuten von den Zellen abhängen, ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>On cells twice as large they differ by {} min on average, by {} min at most in 99 of 100 cells.</source>
        <translation>Auf doppelt so großen Zellen sind sie im Mittel {} min anders, in 99 von 100 Zellen höchstens {} min.</translation>
    </message>
    <message>
        <location filename="../dock/reach_rows.py"/>
        <source>The map shows a swimmer who steers anew all the time. No reserve is in these times.</source>
        <translation>Die Karte zeigt einen Schwimmer, der ständig neu steuert. In diesen Zeiten ist keine Reserve.</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>As Late as Planned</source>
        <translation>So spät wie geplant</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>How Far</source>
        <translation>Wie weit</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Show Reach</source>
        <translation>Reichweite zeigen</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Where one sets out: the start of the route, or a mark of the kind entry</source>
        <translation>Wo man losschwimmt: der Anfang der Route oder eine Marke der Art Einstieg</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Back by</source>
        <translation>Zurück bis</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Date and time in the plan's zone by which to be ashore</source>
        <translation>Datum und Uhrzeit in der Zone des Plans, bis wann man an Land ist</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Back by as planned</source>
        <translation>Zurück wie geplant</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Dusk, the swimmer's hours or the plan's own time to be back</source>
        <translation>Abenddämmerung, Stunden des Schwimmers oder die Rückkehrzeit des Plans</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Stay</source>
        <translation>Bleiben</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Minutes to stay somewhere out there</source>
        <translation>Minuten, die man irgendwo draußen bleibt</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Show reach</source>
        <translation>Reichweite zeigen</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Work out where one can be and be home in time, and draw it on the map</source>
        <translation>Ausrechnen, wo man sein und rechtzeitig zurück sein kann, und auf die Karte zeichnen</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Marks within reach</source>
        <translation>Marken in Reichweite</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>A click shows the mark on the map</source>
        <translation>Ein Klick zeigt die Marke auf der Karte</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>&amp;Entry</source>
        <translation>&amp;Einstieg</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>&amp;Back by</source>
        <translation>&amp;Zurück bis</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>S&amp;tay</source>
        <translation>&amp;Bleiben</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>{}, as the swim above</source>
        <translation>{}, wie die Tour oben</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Start of the route: {}</source>
        <translation>Anfang der Route: {}</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>As typed here</source>
        <translation>Wie hier eingegeben</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Draw a route, or a mark of the kind entry</source>
        <translation>Eine Route zeichnen oder eine Marke der Art Einstieg</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>How far (result)</source>
        <translation>Wie weit (Ergebnis)</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>On the way out</source>
        <translation>Auf dem Hinweg</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>On the way home</source>
        <translation>Auf dem Rückweg</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>Once more on larger cells</source>
        <translation>Noch einmal auf größeren Zellen</translation>
    </message>
    <message>
        <location filename="../dock/reach_section.py"/>
        <source>To the marks on one heading</source>
        <translation>Zu den Marken auf einem Kurs</translation>
    </message>
    <message>
        <location filename="../dock/result_layers.py"/>
        <source>Planned swim (result)</source>
        <translation>Geplante Tour (Ergebnis)</translation>
    </message>
    <message>
        <location filename="../dock/result_layers.py"/>
        <location filename="../processing/planswim.py"/>
        <source>What to mind</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <location filename="../dock/result_layers.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Swimmer</source>
        <translation>Schwimmer</translation>
    </message>
    <message>
        <location filename="../dock/result_layers.py"/>
        <source>Stream on the way</source>
        <translation>Strom auf dem Weg</translation>
    </message>
    <message>
        <location filename="../dock/result_layers.py"/>
        <source>Legs (ruler lines)</source>
        <translation>Abschnitte (gerade Linien)</translation>
    </message>
    <message>
        <location filename="../dock/result_layers.py"/>
        <location filename="../processing/planswim.py"/>
        <source>Track swum</source>
        <translation>Geschwommene Bahn</translation>
    </message>
    <message>
        <location filename="../dock/result_layers.py"/>
        <source>Stream around</source>
        <translation>Strom ringsum</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <location filename="../dock/swim_section.py"/>
        <source>Planning…</source>
        <translation>Plant…</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <location filename="../dock/take_section.py"/>
        <source>There is no planned swim. The section above says what to do.</source>
        <translation>Es ist keine Tour geplant. Der Bereich darüber sagt, was zu tun ist.</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <location filename="../processing/planswim.py"/>
        <source>Legs</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <source>What to Mind</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <source>A prediction, not an observation. Feasible is not safe; never dive alone. Not for navigation.</source>
        <translation>Vorhersage, keine Beobachtung. Machbar heißt nicht sicher; nie allein tauchen. Nicht zur Navigation.</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <source>The plan finds nothing to mind. That is not to say that there is nothing.</source>
        <translation>Der Plan findet nichts zu beachten. Das heißt nicht, dass da nichts ist.</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <source>Turn Back</source>
        <translation>Umkehr</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <location filename="../dock/swim_section.py"/>
        <location filename="../dock/take_section.py"/>
        <source>Working out when to turn back…</source>
        <translation>Rechnet aus, wann umzukehren ist…</translation>
    </message>
    <message>
        <location filename="../dock/result_sections.py"/>
        <source>The swim reaches no stop between its ends.</source>
        <translation>Die Tour erreicht zwischen ihren Enden keinen Halt.</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <location filename="../dock/windows_section.py"/>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>The stop at the end of the leg</source>
        <translation>Der Halt am Ende des Abschnitts</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <location filename="../layers_out/styling.py"/>
        <location filename="../layers_out/time_styles.py"/>
        <source>Hold</source>
        <translation>Kurs</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Heading to hold on the compass, degrees magnetic, as on the card</source>
        <translation>Kurs am Kompass, missweisende Grad, wie auf der Nasskarte</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <location filename="../dock/window_rows.py"/>
        <source>Min</source>
        <translation>Min</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Minutes from leaving to arriving, as the clock shows them</source>
        <translation>Minuten von Abgang bis Ankunft, wie die Uhr sie zeigt</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Leave,
arrive</source>
        <translation>Ab,
an</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Clock times in the plan's zone, rounded up</source>
        <translation>Uhrzeiten in der Zone des Plans, aufgerundet</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Stream
to</source>
        <translation>Strom
nach</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Mean stream on the leg: degrees true it runs towards, and its rate in knots</source>
        <translation>Mittlerer Strom auf dem Abschnitt: rechtweisende Grad, wohin er setzt, und seine Stärke in Knoten</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Ground</source>
        <translation>Grund</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Speed made good over the ground, in knots like the stream, and in metres a second</source>
        <translation>Fahrt über Grund, in Knoten wie der Strom und in Metern je Sekunde</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <location filename="../map_tools/readings.py"/>
        <source>Cannot be swum: {}</source>
        <translation>Nicht schwimmbar: {}</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Not reached: {}</source>
        <translation>Nicht erreicht: {}</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>only if leg {} could be swum</source>
        <translation>nur, wenn Abschnitt {} zu schwimmen wäre</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Leg {}: </source>
        <translation>Abschnitt {}: </translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <location filename="../dock/windows_section.py"/>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>The stop to leave</source>
        <translation>Der Halt, der zu verlassen ist</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Leave by</source>
        <translation>Weg bis</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Latest leaving time that keeps the reserve, in the water expected; rounded down</source>
        <translation>Letzter Aufbruch, der die Reserve lässt, im erwarteten Wasser; abgerundet</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Bad day</source>
        <translation>Schlechter Tag</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>The same with a tenth less pace, a stronger stream and its turn early or late</source>
        <translation>Dasselbe mit einem Zehntel weniger Tempo, stärkerem Strom und früherem oder späterem Kentern</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>The exit that is quickest and safe at that minute</source>
        <translation>Der Ausstieg, der zu dieser Minute am schnellsten und sicher ist</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Not safe even if left at once: no exit is reached with the reserve kept.</source>
        <translation>Selbst bei sofortigem Aufbruch nicht sicher: kein Ausstieg wird mit der Reserve erreicht.</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>not safe</source>
        <translation>nicht sicher</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>from {}
to {}</source>
        <translation>von {}
bis {}</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Cannot be swum: leg {}</source>
        <translation>Nicht schwimmbar: Abschnitt {}</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>home {}</source>
        <translation>zurück {}</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <source>Not like this ({} x Stop below)</source>
        <translation>So nicht ({} x Stopp unten)</translation>
    </message>
    <message>
        <location filename="../dock/rows.py"/>
        <location filename="../layers_out/styling.py"/>
        <location filename="../processing/planswim.py"/>
        <location filename="../processing/swimcard.py"/>
        <location filename="../processing/swimfiles.py"/>
        <source>Can be swum</source>
        <translation>Schwimmbar</translation>
    </message>
    <message>
        <location filename="../dock/sample_plan.py"/>
        <source>The sample could not be copied to {} ({})</source>
        <translation>Das Beispiel konnte nicht nach {} kopiert werden ({})</translation>
    </message>
    <message>
        <location filename="../dock/sample_plan.py"/>
        <source>Check the free space and the rights of that folder, and try again</source>
        <translation>Freien Platz und Rechte dieses Ordners prüfen und noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../dock/section.py"/>
        <source>Help: {}</source>
        <translation>Hilfe: {}</translation>
    </message>
    <message>
        <location filename="../dock/session.py"/>
        <source>Layer '{}' is filtered: the rows that its filter hides are not in the plan.</source>
        <translation>Layer „{}“ ist gefiltert: die Zeilen, die sein Filter verbirgt, sind nicht im Plan.</translation>
    </message>
    <message>
        <location filename="../dock/session.py"/>
        <source>Another file has taken the plan's place: it was read anew.</source>
        <translation>Eine andere Datei ist an die Stelle des Plans getreten: sie wurde neu gelesen.</translation>
    </message>
    <message>
        <location filename="../dock/session.py"/>
        <source>The plan's time zone was changed in its file: {} before, {} now. The departure is the same moment.</source>
        <translation>Die Zeitzone des Plans wurde in seiner Datei geändert: vorher {}, jetzt {}. Der Aufbruch ist derselbe Zeitpunkt.</translation>
    </message>
    <message>
        <location filename="../dock/session.py"/>
        <source>The plan has no route with a name. Draw one in the layer of routes and name it.</source>
        <translation>Der Plan hat keine Route mit Namen. Eine im Layer der Routen zeichnen und benennen.</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Open Pages</source>
        <translation>Seiten öffnen</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Open HTML</source>
        <translation>HTML öffnen</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Shore Contact</source>
        <translation>Kontakt an Land</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Write Sheet…</source>
        <translation>Blatt schreiben…</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source> kn</source>
        <translation> kn</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <location filename="../processing/swimcard.py"/>
        <source>Colours of the float</source>
        <translation>Farben der Boje</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>As seen from a boat, such as orange and white</source>
        <translation>Wie von einem Boot gesehen, etwa orange und weiß</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>The flag flown and its colours</source>
        <translation>Die gesetzte Flagge und ihre Farben</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Emergency numbers</source>
        <translation>Notrufnummern</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Who the contact rings, with ; between several. None is assumed</source>
        <translation>Wen der Kontakt anruft, mit ; zwischen mehreren. Angenommen wird keine</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Anything else the contact must know</source>
        <translation>Was der Kontakt sonst noch wissen muss</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Wind from</source>
        <translation>Wind aus</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Degrees true; the lowest step means that it is not known</source>
        <translation>Rechtweisende Grad; die unterste Stufe heißt: nicht bekannt</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Wind speed</source>
        <translation>Windgeschwindigkeit</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Knots; the lowest step means that it is not known</source>
        <translation>Knoten; die unterste Stufe heißt: nicht bekannt</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Write sheet</source>
        <translation>Blatt schreiben</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Plan the swim with its drift and write pages of A4 and one HTML file</source>
        <translation>Die Tour mit ihrer Drift planen und A4-Seiten und eine HTML-Datei schreiben</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Stop; nothing is written</source>
        <translation>Stoppen; nichts wird geschrieben</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>F&amp;loat</source>
        <translation>&amp;Boje</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Fla&amp;g</source>
        <translation>Fla&amp;gge</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Emergency &amp;numbers</source>
        <translation>Not&amp;rufnummern</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>N&amp;ote</source>
        <translation>&amp;Hinweis</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>W&amp;ind from, speed</source>
        <translation>&amp;Wind aus, Stärke</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>The plan has no route</source>
        <translation>Der Plan hat keine Route</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Draw one first</source>
        <translation>Zuerst eine zeichnen</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <location filename="../processing/whole_outputs.py"/>
        <source>Nothing was written</source>
        <translation>Nichts wurde geschrieben</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Name a file to write to</source>
        <translation>Eine Datei nennen, in die geschrieben wird</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Only one half of the wind is given</source>
        <translation>Nur die eine Hälfte des Winds ist angegeben</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Give both where it comes from and its speed</source>
        <translation>Beides angeben: woher er kommt und seine Geschwindigkeit</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source> shore contact</source>
        <translation> Kontakt an Land</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Write Sheet</source>
        <translation>Blatt schreiben</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Written: {} and the HTML file beside it.</source>
        <translation>Geschrieben: {} und die HTML-Datei daneben.</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>This swim has no time of return and so no alarm: the sheet says so. </source>
        <translation>Diese Tour hat keine Rückkehrzeit und darum keinen Alarm: das Blatt sagt es. </translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Working out when to turn back</source>
        <translation>Umkehr wird berechnet</translation>
    </message>
    <message>
        <location filename="../dock/sheet_section.py"/>
        <source>Working out where a float drifts</source>
        <translation>Abdrift einer Boje wird berechnet</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <location filename="../entry.py"/>
        <source>Swim</source>
        <translation>Tour</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Plan Again</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Whole Swim</source>
        <translation>Ganze Strecke</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source> m/s</source>
        <translation> m/s</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>The swimmer's own</source>
        <translation>Das des Schwimmers</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <location filename="../processing/plan_algorithm.py"/>
        <source>One heading per leg</source>
        <translation>Ein Kurs je Abschnitt</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <location filename="../processing/plan_algorithm.py"/>
        <source>A new heading every so often</source>
        <translation>Immer wieder ein neuer Kurs</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <location filename="../processing/plan_algorithm.py"/>
        <source>Hold the line</source>
        <translation>Auf der Linie bleiben</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <location filename="../map_tools/draw_line.py"/>
        <source>Route</source>
        <translation>Route</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>A route of the plan, by its name</source>
        <translation>Eine Route des Plans, nach ihrem Namen</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Tick those who swim together: the slowest sets the pace</source>
        <translation>Ankreuzen, wer zusammen schwimmt: der Langsamste bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Departure</source>
        <translation>Start</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Date and time in the plan's zone</source>
        <translation>Datum und Uhrzeit in der Zone des Plans</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Ten minutes earlier</source>
        <translation>Zehn Minuten früher</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Leave ten minutes earlier</source>
        <translation>Zehn Minuten früher starten</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Ten minutes later</source>
        <translation>Zehn Minuten später</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Leave ten minutes later</source>
        <translation>Zehn Minuten später starten</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Pace</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Pace through the water, m/s; emptied, or 0, it is the swimmer's own</source>
        <translation>Tempo durchs Wasser, m/s; leer oder 0 ist es das eigene</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <location filename="../processing/plan_algorithm.py"/>
        <source>Headings</source>
        <translation>Kurse</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Keep a heading for the leg, take new ones on the way, or follow the ruler line</source>
        <translation>Einen Kurs je Abschnitt halten, unterwegs neue nehmen oder der geraden Linie folgen</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Minutes between new headings</source>
        <translation>Minuten zwischen neuen Kursen</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Minutes for which a heading is held</source>
        <translation>Minuten, die ein Kurs gehalten wird</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Stop planning</source>
        <translation>Planung stoppen</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Plan again</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Plan the swim as it is chosen here</source>
        <translation>Die Tour planen, wie sie hier gewählt ist</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Whole swim</source>
        <translation>Ganze Strecke</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>Show the whole swim on the map</source>
        <translation>Die ganze Strecke auf der Karte zeigen</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>&amp;Route</source>
        <translation>&amp;Route</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>S&amp;wimmers</source>
        <translation>S&amp;chwimmer</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>&amp;Departure</source>
        <translation>&amp;Start</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>&amp;Pace</source>
        <translation>Tem&amp;po</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>&amp;Headings</source>
        <translation>&amp;Kurse</translation>
    </message>
    <message>
        <location filename="../dock/swim_section.py"/>
        <source>own, {:.2f} m/s</source>
        <translation>eigenes, {:.2f} m/s</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_editors.py"/>
        <location filename="../plan_package/forms.py"/>
        <source>(not given)</source>
        <translation>(nicht angegeben)</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_numbers.py"/>
        <source>Allowed is {}</source>
        <translation>Erlaubt ist {}</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_numbers.py"/>
        <source>Write a number</source>
        <translation>Eine Zahl schreiben</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_numbers.py"/>
        <source>The column is in {}</source>
        <translation>Die Spalte ist in {}</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_numbers.py"/>
        <source>The column has no unit</source>
        <translation>Die Spalte hat keine Einheit</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_numbers.py"/>
        <source>Convert the number and leave the unit out</source>
        <translation>Die Zahl umrechnen und die Einheit weglassen</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_numbers.py"/>
        <source>It may be {} or {}</source>
        <translation>Es kann {} oder {} sein</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_numbers.py"/>
        <source>Write it without the comma, or with a point before the decimals</source>
        <translation>Ohne das Komma schreiben oder mit einem Punkt vor den Dezimalen</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>(plan's zone)</source>
        <translation>(Zone des Plans)</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source> Typed and shown in {}, stored as UTC.</source>
        <translation> Eingegeben und gezeigt in {}, gespeichert als UTC.</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <location filename="../plan_package/forms.py"/>
        <source>Allowed:</source>
        <translation>Erlaubt:</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>a date and time</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>It holds characters that cannot be seen</source>
        <translation>Es enthält Zeichen, die man nicht sieht</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>Type it anew</source>
        <translation>Neu eingeben</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>A text has up to {} characters</source>
        <translation>Ein Text hat bis zu {} Zeichen</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>Shorten it</source>
        <translation>Kürzen</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>It lacks the time of day</source>
        <translation>Die Uhrzeit fehlt</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>Allowed is a date and time</source>
        <translation>Erlaubt sind Datum und Uhrzeit</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>Write it like 2027-06-05 09:40</source>
        <translation>Schreiben wie 2027-06-05 09:40</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_text.py"/>
        <source>Its date may be {}</source>
        <translation>Das Datum kann {} sein</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_words.py"/>
        <source>That is a formula, not its result</source>
        <translation>Das ist eine Formel, nicht ihr Ergebnis</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_words.py"/>
        <source>Paste the values</source>
        <translation>Die Werte einfügen</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_words.py"/>
        <source>Got '{}'</source>
        <translation>Da steht „{}“</translation>
    </message>
    <message>
        <location filename="../dock/tables/cell_words.py"/>
        <source>The cell is empty</source>
        <translation>Die Zelle ist leer</translation>
    </message>
    <message>
        <location filename="../dock/tables/clipboard_table.py"/>
        <source>There is no text on the clipboard</source>
        <translation>In der Zwischenablage ist kein Text</translation>
    </message>
    <message>
        <location filename="../dock/tables/clipboard_table.py"/>
        <source>Rows of cells can be pasted, as a spreadsheet copies them</source>
        <translation>Eingefügt werden Zeilen von Zellen, wie eine Tabellenkalkulation sie kopiert</translation>
    </message>
    <message>
        <location filename="../dock/tables/clipboard_table.py"/>
        <source>Select the cells there and copy them</source>
        <translation>Dort die Zellen auswählen und kopieren</translation>
    </message>
    <message>
        <location filename="../dock/tables/clipboard_table.py"/>
        <source>The text on the clipboard has {} characters in {} lines</source>
        <translation>Der Text in der Zwischenablage hat {} Zeichen in {} Zeilen</translation>
    </message>
    <message>
        <location filename="../dock/tables/clipboard_table.py"/>
        <source>Up to {} lines of {} characters are pasted at once</source>
        <translation>Bis zu {} Zeilen mit {} Zeichen werden auf einmal eingefügt</translation>
    </message>
    <message>
        <location filename="../dock/tables/clipboard_table.py"/>
        <source>Paste it in parts, or save it as a file and read that into the plan</source>
        <translation>In Teilen einfügen, oder als Datei speichern und diese in den Plan lesen</translation>
    </message>
    <message>
        <location filename="../dock/tables/clipboard_table.py"/>
        <source>Each line is taken for one number with a decimal comma.</source>
        <translation>Jede Zeile wird für eine Zahl mit Dezimalkomma genommen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_clipboard.py"/>
        <source>Copied with headings. Rows: {}.</source>
        <translation>Mit Überschriften kopiert. Zeilen: {}.</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_clipboard.py"/>
        <source>Nothing was pasted.</source>
        <translation>Nichts wurde eingefügt.</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_clipboard.py"/>
        <source>Paste rows ({})</source>
        <translation>Zeilen einfügen ({})</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_clipboard.py"/>
        <source>Rows pasted: {}, new among them: {}. Undo takes them back in one step.</source>
        <translation>Eingefügte Zeilen: {}, davon neu: {}. Rückgängig nimmt sie in einem Schritt zurück.</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_clipboard.py"/>
        <source>Paste into cells ({})</source>
        <translation>In Zellen einfügen ({})</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_model.py"/>
        <source>Row {} of the file</source>
        <translation>Zeile {} der Datei</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_model.py"/>
        <source>New, not saved yet (row {})</source>
        <translation>Neu, noch nicht gespeichert (Zeile {})</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_model.py"/>
        <source>Edit {}</source>
        <translation>{} ändern</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_model.py"/>
        <source>Not taken: the plan still has {} here.</source>
        <translation>Nicht übernommen: im Plan steht hier weiterhin {}.</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_model.py"/>
        <source>Delete rows ({})</source>
        <translation>Zeilen löschen ({})</translation>
    </message>
    <message>
        <location filename="../dock/tables/grid_view.py"/>
        <source>Clear cells ({})</source>
        <translation>Zellen leeren ({})</translation>
    </message>
    <message>
        <location filename="../dock/tables/headings.py"/>
        <source>The column '{}' is not used: no field is called so.</source>
        <translation>Die Spalte „{}“ wird nicht benutzt: kein Feld heißt so.</translation>
    </message>
    <message>
        <location filename="../dock/tables/headings.py"/>
        <source>{}: read as {}, as the heading says.</source>
        <translation>{}: gelesen als {}, wie die Überschrift sagt.</translation>
    </message>
    <message>
        <location filename="../dock/tables/headings.py"/>
        <source>The heading '{}' says {}, and the column here is in {}. Convert the numbers first.</source>
        <translation>Die Überschrift „{}“ sagt {}, und die Spalte hier ist in {}. Zuerst die Zahlen umrechnen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/headings.py"/>
        <source>no unit</source>
        <translation>keine Einheit</translation>
    </message>
    <message>
        <location filename="../dock/tables/headings.py"/>
        <source>{} columns stick out on the right and are not used.</source>
        <translation>{} Spalten stehen rechts über und werden nicht benutzt.</translation>
    </message>
    <message>
        <location filename="../dock/tables/headings.py"/>
        <source>The heading '{}' names no one clock for certain. Write UTC or an offset such as +01:00 there.</source>
        <translation>Die Überschrift „{}“ nennt keine eindeutige Uhr. Dort UTC oder einen Abstand wie +01:00 schreiben.</translation>
    </message>
    <message>
        <location filename="../dock/tables/layer_rows.py"/>
        <source>The layer '{}' does not let itself be edited</source>
        <translation>Der Layer „{}“ lässt sich nicht bearbeiten</translation>
    </message>
    <message>
        <location filename="../dock/tables/layer_rows.py"/>
        <source>Its file must be writable, and the layer not read-only</source>
        <translation>Seine Datei muss beschreibbar und der Layer nicht schreibgeschützt sein</translation>
    </message>
    <message>
        <location filename="../dock/tables/layer_rows.py"/>
        <source>Check the file's permissions and the layer's properties</source>
        <translation>Die Rechte der Datei und die Eigenschaften des Layers prüfen</translation>
    </message>
    <message>
        <location filename="../dock/tables/layer_rows.py"/>
        <source>QGIS gave no reason.</source>
        <translation>QGIS nannte keinen Grund.</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_plan.py"/>
        <source>There is no such row, and rows of this table are drawn on the map.</source>
        <translation>Eine solche Zeile gibt es nicht, und Zeilen dieser Tabelle werden auf der Karte gezeichnet.</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_plan.py"/>
        <source>Dates and times of day stand in two columns and are taken together.</source>
        <translation>Datum und Uhrzeit stehen in zwei Spalten und werden zusammen genommen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_plan.py"/>
        <source>{}: '{}', as in the rows there.</source>
        <translation>{}: „{}“, wie in den Zeilen dort.</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <location filename="../dock/tables/table_window.py"/>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Where the rows go</source>
        <translation>Wohin die Zeilen kommen</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Add them as new rows at the end</source>
        <translation>Als neue Zeilen am Ende anfügen</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Write them over what is there, from row {} on</source>
        <translation>Über das schreiben, was da ist, ab Zeile {}</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Row of the paste</source>
        <translation>Zeile der Einfügung</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Why it is refused</source>
        <translation>Warum sie abgelehnt ist</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Rows that are refused</source>
        <translation>Abgelehnte Zeilen</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Paste All</source>
        <translation>Alle einfügen</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <location filename="../dock/tables/table_window.py"/>
        <source>And {} more.</source>
        <translation>Und {} weitere.</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Refused and not shown: {}.</source>
        <translation>Abgelehnt und nicht gezeigt: {}.</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Paste Good Rows ({})</source>
        <translation>Gute Zeilen einfügen ({})</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Rows that can be pasted: {}.</source>
        <translation>Zeilen, die eingefügt werden können: {}.</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>Refused: {}.</source>
        <translation>Abgelehnt: {}.</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>(not used)</source>
        <translation>(nicht benutzt)</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>By their headings: {}</source>
        <translation>Nach ihren Überschriften: {}</translation>
    </message>
    <message>
        <location filename="../dock/tables/paste_preview.py"/>
        <source>By their place: {}</source>
        <translation>Nach ihrem Platz: {}</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>Stands there {} times. Only one row of these may stay.</source>
        <translation>Steht {}-mal da. Nur eine dieser Zeilen darf bleiben.</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>Follows another of its kind. A {} between them is missing, or one is of the other kind.</source>
        <translation>Folgt auf eine gleicher Art. Dazwischen fehlt {}, oder eine ist von der anderen Art.</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>This high water is not higher than a low water beside it ({:.2f} m). Check both heights.</source>
        <translation>Dieses Hochwasser ist nicht höher als ein Niedrigwasser daneben ({:.2f} m). Beide Höhen prüfen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>This low water is not lower than a high water beside it ({:.2f} m). Check both heights.</source>
        <translation>Dieses Niedrigwasser ist nicht niedriger als ein Hochwasser daneben ({:.2f} m). Beide Höhen prüfen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>A slack has the rate 0. Correct the rate or the kind.</source>
        <translation>Stauwasser hat die Stärke 0. Die Stärke oder die Art berichtigen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>Follows another slack. The maximum between them is missing.</source>
        <translation>Folgt auf ein anderes Stauwasser. Das Maximum dazwischen fehlt.</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>Flood and ebb follow each other without a slack between them. Check the signs.</source>
        <translation>Flut und Ebbe folgen aufeinander ohne Stauwasser dazwischen. Die Vorzeichen prüfen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>The drift ends before it begins. Correct one of the times.</source>
        <translation>Die Drift endet, bevor sie beginnt. Eine der Zeiten berichtigen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/problems.py"/>
        <source>The plan has nothing of this name. Known are: {}</source>
        <translation>Der Plan hat nichts mit diesem Namen. Bekannt sind: {}</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Add Row</source>
        <translation>Zeile anfügen</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Add a row at the end (Insert)</source>
        <translation>Am Ende eine Zeile anfügen (Einfg)</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Delete Rows</source>
        <translation>Zeilen löschen</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Delete the selected rows (Ctrl+Minus)</source>
        <translation>Die ausgewählten Zeilen löschen (Strg+Minus)</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Copy the selected rows with their headings, or all (Ctrl+C)</source>
        <translation>Die ausgewählten Zeilen mit ihren Überschriften kopieren, oder alle (Strg+C)</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Paste cells from a spreadsheet, or CSV (Ctrl+V)</source>
        <translation>Zellen aus einer Tabellenkalkulation oder CSV einfügen (Strg+V)</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Undo (Ctrl+Z)</source>
        <translation>Rückgängig (Strg+Z)</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Redo (Ctrl+Y)</source>
        <translation>Wiederholen (Strg+Y)</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Read Printed Table…</source>
        <translation>Gedruckte Tafel lesen…</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Read a whole table as it was printed, from a file or pasted</source>
        <translation>Eine ganze Tafel lesen, wie sie gedruckt war, aus einer Datei oder eingefügt</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Save the edits of this table into the plan; other layers are left alone</source>
        <translation>Die Änderungen dieser Tabelle in den Plan speichern; andere Layer bleiben unberührt</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Open the page on these tables</source>
        <translation>Die Seite über diese Tabellen öffnen</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Close this window; edits stay in QGIS until they are saved</source>
        <translation>Dieses Fenster schließen; Änderungen bleiben in QGIS, bis sie gespeichert sind</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>What is wrong in this table</source>
        <translation>Was in dieser Tabelle nicht stimmt</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Each row is a place: draw it on the map, in the layer '{}'</source>
        <translation>Jede Zeile ist ein Ort: auf der Karte zeichnen, im Layer „{}“</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>The layer is filtered: hidden rows are not shown here.</source>
        <translation>Der Layer ist gefiltert: verborgene Zeilen sind hier nicht zu sehen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Not saved yet.</source>
        <translation>Noch nicht gespeichert.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>All saved.</source>
        <translation>Alles gespeichert.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Rows: {}.</source>
        <translation>Zeilen: {}.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Row {}, {}: {}</source>
        <translation>Zeile {}, {}: {}</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Add row</source>
        <translation>Zeile anfügen</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Row {} is new. Type its values; Tab goes on.</source>
        <translation>Zeile {} ist neu. Ihre Werte eingeben; Tab geht weiter.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Add rows of '{}'</source>
        <translation>Zeilen von '{}' hinzufügen</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>The rows of '{}' are new. Empty means not known, and is never taken as 0.</source>
        <translation>Die Zeilen von '{}' sind neu. Leer heißt nicht bekannt und wird nie als 0 genommen.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Select the rows to delete first.</source>
        <translation>Zuerst die Zeilen auswählen, die zu löschen sind.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Rows deleted: {}. Undo brings them back.</source>
        <translation>Gelöschte Zeilen: {}. Rückgängig holt sie wieder.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Not saved; your edits are kept. {}</source>
        <translation>Nicht gespeichert; die Änderungen sind noch da. {}</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Saved, without what the plan cannot hold. Cells so marked: {}.</source>
        <translation>Gespeichert, ohne das, was der Plan nicht aufnimmt. So gekennzeichnete Zellen: {}.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Saved.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>What the plan cannot hold is lost when the window is closed; the plan keeps what it had. Such cells: {}.</source>
        <translation>Was der Plan nicht aufnimmt, geht mit dem Schließen verloren; der Plan behält, was er hatte. Solche Zellen: {}.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Close Anyway</source>
        <translation>Trotzdem schließen</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>Keep Open</source>
        <translation>Offen lassen</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_window.py"/>
        <source>{}: edits are not saved yet. They stay in QGIS until you save them or throw them away.</source>
        <translation>{}: Änderungen sind noch nicht gespeichert. Sie bleiben in QGIS, bis man sie speichert oder verwirft.</translation>
    </message>
    <message>
        <location filename="../dock/tables/table_windows.py"/>
        <source>The plan is of an older version and lacks: {}</source>
        <translation>Der Plan ist von einer älteren Version, ihm fehlt: {}</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Tides</source>
        <translation>Gezeiten</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>High and low waters, ports, heights, constants, coefficients</source>
        <translation>Hoch- und Niedrigwasser, Häfen, Höhen, Konstanten, Koeffizienten</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>Streams</source>
        <translation>Ströme</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>Stations and their rates, events, series, constants, models</source>
        <translation>Stationen und ihre Stärken, Ereignisse, Reihen, Konstanten, Modelle</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>Swimmers…</source>
        <translation>Schwimmer…</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>Who swims: pace, limits, gear</source>
        <translation>Wer schwimmt: Tempo, Grenzen, Ausrüstung</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>Ferries…</source>
        <translation>Fähren…</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>When ferries pass in the channels</source>
        <translation>Wann Fähren in den Fahrwassern vorbeikommen</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <location filename="../entry.py"/>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>Marks, landmarks, transits, winds, timed drifts, catches, settings</source>
        <translation>Marken, Landmarken, Deckpeilungen, Winde, gestoppte Driften, Fänge, Einstellungen</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>{}…</source>
        <translation>{}…</translation>
    </message>
    <message>
        <location filename="../dock/tables_section.py"/>
        <source>Not saved yet: {}.</source>
        <translation>Noch nicht gespeichert: {}.</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>Wet Card…</source>
        <translation>Nasskarte…</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>The card to carry on the water, as a PDF to print black on white</source>
        <translation>Die Nasskarte zum Mitnehmen, als PDF zum Drucken in Schwarz auf Weiß</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source> card</source>
        <translation> Nasskarte</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>Card as Text…</source>
        <translation>Nasskarte als Text…</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>The same card in plain text, for a message or a slate</source>
        <translation>Dieselbe Nasskarte als einfacher Text, für eine Nachricht oder eine Schreibtafel</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>GPX…</source>
        <translation>GPX…</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>Marks, route and track for a GPS (GPX 1.1); settings gps_... of the plan say how</source>
        <translation>Marken, Route und Spur für ein GPS (GPX 1.1); wie, sagen die Einstellungen gps_... des Plans</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>GPX (*.gpx)</source>
        <translation>GPX (*.gpx)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>KML…</source>
        <translation>KML…</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>Places, legs, track and flags for globes and maps (KML 2.2)</source>
        <translation>Orte, Abschnitte, Spur und Meldungen für Globen und Karten (KML 2.2)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>KML (*.kml)</source>
        <translation>KML (*.kml)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>GeoJSON…</source>
        <translation>GeoJSON…</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>Places, legs, track and flags for other map programs (GeoJSON)</source>
        <translation>Orte, Abschnitte, Spur und Meldungen für andere Kartenprogramme (GeoJSON)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>GeoJSON (*.geojson)</source>
        <translation>GeoJSON (*.geojson)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>Table of Legs…</source>
        <translation>Abschnitte…</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>The legs as a table for a spreadsheet (CSV)</source>
        <translation>Die Abschnitte als Tabelle für eine Tabellenkalkulation (CSV)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source> legs</source>
        <translation> Abschnitte</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>Report…</source>
        <translation>Bericht…</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>All numbers of the swim for other programs (JSON)</source>
        <translation>Alle Zahlen der Tour für andere Programme (JSON)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source> report</source>
        <translation> Bericht</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>JSON (*.json)</source>
        <translation>JSON (*.json)</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source> shared</source>
        <translation> zum Weitergeben</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>No folder could be made in {}: {}</source>
        <translation>In {} konnte kein Ordner angelegt werden: {}</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <location filename="../plan_package/placing.py"/>
        <source>Choose another folder</source>
        <translation>Einen anderen Ordner wählen</translation>
    </message>
    <message>
        <location filename="../dock/take_files.py"/>
        <source>{} holds {} folders named {}</source>
        <translation>{} enthält {} Ordner mit Namen {}</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Take It Along</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Everything…</source>
        <translation>Alles…</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>To &amp;share: leave the marks out</source>
        <translation>&amp;Zum Weitergeben: Marken weglassen</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Open Folder</source>
        <translation>Ordner öffnen</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>All of these files into a new folder</source>
        <translation>Alle diese Dateien in einen neuen Ordner</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>No positions, headings or distances of marks in what is written; times and names stay. A report is not written so</source>
        <translation>Keine Positionen, Kurse und Entfernungen von Marken in dem, was geschrieben wird; Zeiten und Namen bleiben. Ein Bericht wird so nicht geschrieben</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Open what was written with the program that your desktop has for it</source>
        <translation>Öffnen, was geschrieben wurde, mit dem Programm, das der Rechner dafür hat</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Show the folder it was written to</source>
        <translation>Den Ordner zeigen, in den geschrieben wurde</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>The swim is being planned.</source>
        <translation>Die Tour wird geplant.</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>There is no turn back, and no card goes without: {}</source>
        <translation>Es gibt keine Umkehr, und ohne sie geht keine Nasskarte hinaus: {}</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Stopped before it was known when to turn back: plan again.</source>
        <translation>Gestoppt, bevor die Umkehr bekannt war: neu planen.</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Folder in Which to Make '{}'</source>
        <translation>Ordner, in dem „{}“ angelegt wird</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>The swim has changed meanwhile: nothing was written.</source>
        <translation>Die Tour hat sich inzwischen geändert: nichts wurde geschrieben.</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Written: {}</source>
        <translation>Geschrieben: {}</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>Leg {} cannot be swum. Card, report and table of legs say so too.</source>
        <translation>Abschnitt {} ist nicht schwimmbar. Nasskarte, Bericht und Tabelle der Abschnitte sagen das auch.</translation>
    </message>
    <message>
        <location filename="../dock/take_section.py"/>
        <source>{} x Stop in What to Mind: not to be swum like this. Card and report say so too.</source>
        <translation>{} x Stopp in Zu beachten: so nicht zu schwimmen. Nasskarte und Bericht sagen das auch.</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Play the Swim</source>
        <translation>Tour abspielen</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>All Times</source>
        <translation>Alle Zeiten</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Minute of the swim</source>
        <translation>Minute der Tour</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Minutes after leaving; arrow keys go on by one, Page by ten</source>
        <translation>Minuten nach dem Start; Pfeiltasten gehen um eine weiter, Bild auf und ab um zehn</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Play or pause</source>
        <translation>Abspielen oder anhalten</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Play the swim on the map: swimmer, stream and tide move together</source>
        <translation>Die Tour auf der Karte abspielen: Schwimmer, Strom und Gezeit bewegen sich zusammen</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>All times</source>
        <translation>Alle Zeiten</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Show the whole swim again and leave the map's time as it was</source>
        <translation>Wieder die ganze Tour zeigen und die Zeit der Karte lassen, wie sie war</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Pause</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>There is no planned swim yet.</source>
        <translation>Es ist noch keine Tour geplant.</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Tideleg: the swim in time</source>
        <translation>Tideleg: die Tour in der Zeit</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>The map shows all times</source>
        <translation>Die Karte zeigt alle Zeiten</translation>
    </message>
    <message>
        <location filename="../dock/time_section.py"/>
        <source>Move the slider, or play, to see swimmer, stream and tide at a time.</source>
        <translation>Den Regler schieben oder abspielen, um Schwimmer, Strom und Gezeit zu einer Zeit zu sehen.</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <source>{} {}, {} min after leaving</source>
        <translation>{} {}, {} min nach dem Start</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <source>{} (above {})</source>
        <translation>{} (über {})</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <source>about {} m</source>
        <translation>etwa {} m</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <source>Stream: {}</source>
        <translation>Strom: {}</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <source>Tide: {}</source>
        <translation>Gezeit: {}</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <source>Depth here: {}</source>
        <translation>Tiefe hier: {}</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <location filename="../map_tools/readings.py"/>
        <source>At {}</source>
        <translation>Bei {}</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <source>Leg {} to {}: cannot be swum</source>
        <translation>Abschnitt {} nach {}: nicht schwimmbar</translation>
    </message>
    <message>
        <location filename="../dock/time_words.py"/>
        <source>Leg {} to {}: hold {}</source>
        <translation>Abschnitt {} nach {}: Kurs {}</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Place Mark</source>
        <translation>Marke setzen</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Place a mark; depth and distance in metres and bearing in degrees show beside the cursor</source>
        <translation>Eine Marke setzen; Tiefe und Abstand in Metern und Peilung in Grad stehen neben dem Mauszeiger</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Move Mark</source>
        <translation>Marke verschieben</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Drag a mark, or type where it goes; routes stay as they are drawn</source>
        <translation>Eine Marke ziehen oder eingeben, wohin sie kommt; Routen bleiben, wie sie gezeichnet sind</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Draw Route</source>
        <translation>Route zeichnen</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Click the stops in swimming order; a stop at a mark takes the mark's exact place</source>
        <translation>Die Halte in der Reihenfolge des Schwimmens anklicken; ein Halt an einer Marke übernimmt deren genauen Ort</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Edit Route</source>
        <translation>Route ändern</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Move, put in and take out the stops of a route</source>
        <translation>Halte einer Route verschieben, einfügen und herausnehmen</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Channel Line</source>
        <translation>Fahrwasserlinie</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Draw a boat channel along its middle; its width in metres is asked for</source>
        <translation>Ein Fahrwasser längs seiner Mitte zeichnen; nach der Breite in Metern wird gefragt</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Channel Area</source>
        <translation>Fahrwasserfläche</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Draw a boat channel by its corners</source>
        <translation>Ein Fahrwasser mit seinen Ecken zeichnen</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Closed Area</source>
        <translation>Sperrgebiet</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Draw an area with a rule, such as no entry or no anchoring</source>
        <translation>Ein Gebiet mit einer Regel zeichnen, etwa kein Zutritt oder Ankern verboten</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Stream Station</source>
        <translation>Stromstation</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Place a stream station, or drag one to its new place; its rates are typed into a table</source>
        <translation>Eine Stromstation setzen oder eine an ihren neuen Ort ziehen; ihre Stärken kommen in eine Tabelle</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Eddy Area</source>
        <translation>Neerstrom</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Draw an area in which one stream station alone rules, such as an eddy behind a headland</source>
        <translation>Ein Gebiet zeichnen, in dem allein eine Stromstation gilt, etwa ein Neerstrom hinter einer Landspitze</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <location filename="../map_tools/placings.py"/>
        <source>Landmark</source>
        <translation>Landmarke</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Place a landmark ashore, or drag one to its new place; two in line make a transit</source>
        <translation>Eine Landmarke an Land setzen oder eine an ihren neuen Ort ziehen; zwei in Linie sind eine Deckpeilung</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Measure Leg</source>
        <translation>Abschnitt messen</translation>
    </message>
    <message>
        <location filename="../dock/tool_words.py"/>
        <source>Distance in metres, bearings and heading to hold in degrees, minutes, speed over the ground in m/s</source>
        <translation>Strecke in Metern, Peilungen und Kurs am Kompass in Grad, Minuten, Geschwindigkeit über Grund in m/s</translation>
    </message>
    <message>
        <location filename="../dock/transit_picks.py"/>
        <source>The name '{}' is that of {} marks</source>
        <translation>Den Namen '{}' haben {} Marken</translation>
    </message>
    <message>
        <location filename="../dock/transit_picks.py"/>
        <source>The name '{}' is that of {} landmarks</source>
        <translation>Den Namen '{}' haben {} Landmarken</translation>
    </message>
    <message>
        <location filename="../dock/transit_picks.py"/>
        <source>Pick transit</source>
        <translation>Deckpeilung wählen</translation>
    </message>
    <message>
        <location filename="../dock/transit_picks.py"/>
        <source>Drop transit</source>
        <translation>Deckpeilung weglassen</translation>
    </message>
    <message>
        <location filename="../dock/transit_picks.py"/>
        <source>A transit tells mark and landmarks by their names</source>
        <translation>Eine Deckpeilung nennt Marke und Landmarken mit ihren Namen</translation>
    </message>
    <message>
        <location filename="../dock/transit_picks.py"/>
        <location filename="../layers_in/transits_in.py"/>
        <source>Give each a name of its own</source>
        <translation>Jedem einen eigenen Namen geben</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Front / rear</source>
        <translation>Vorn / hinten</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Two landmarks in line, the nearer one first; ticked ones go on the card</source>
        <translation>Zwei Landmarken in Linie, die nähere zuerst; angehakte kommen auf die Karte</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Bearing</source>
        <translation>Peilung</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Bearing of the line from the mark over the front, degrees magnetic, as on the card</source>
        <translation>Peilung der Linie von der Marke über die vordere Landmarke, Grad missweisend, wie auf der Karte</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Crosses</source>
        <translation>Kreuzt</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Angle with the other line of its pair; the nearer to 90 degrees, the sharper the fix</source>
        <translation>Winkel mit der anderen Linie des Paars; je näher an 90 Grad, desto schärfer der Ort</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Pair {}: crosses at {:.0f}°, puts you within about {:.0f} m</source>
        <translation>Paar {}: kreuzt sich mit {:.0f}°, führt auf etwa {:.0f} m heran</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Single lines</source>
        <translation>Einzelne Linien</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Picked besides</source>
        <translation>Außerdem gewählt</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Nothing is picked for {}: tick both lines of a pair.</source>
        <translation>Für {} ist nichts gewählt: beide Linien eines Paars anhaken.</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>One line alone does not fix {}: tick one that crosses it, too.</source>
        <translation>Eine Linie allein legt {} nicht fest: auch eine anhaken, die sie kreuzt.</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>Picked for {}: {} lines, crossing at {:.0f}°.</source>
        <translation>Für {} gewählt: {} Linien, die sich mit {:.0f}° kreuzen.</translation>
    </message>
    <message>
        <location filename="../dock/transit_rows.py"/>
        <source>It is no stop of this route, so its card leaves them out.</source>
        <translation>Sie ist kein Halt dieser Route, daher fehlen sie auf deren Karte.</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <location filename="../processing/transits.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Transits</source>
        <translation>Deckpeilungen</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Whether a landmark is hidden from the water is not known here: look before you go.</source>
        <translation>Ob eine Landmarke vom Wasser aus verdeckt ist, ist hier nicht bekannt: vorher nachsehen.</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Place Landmarks</source>
        <translation>Landmarken setzen</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Read from a Chart…</source>
        <translation>Aus Seekarte lesen…</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Save Transits</source>
        <translation>Deckpeilungen speichern</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>The mark from which the landmarks are seen; stops of the route come first</source>
        <translation>Die Marke, von der aus die Landmarken gesehen werden; zuerst die Halte der Route</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>A click shows the two landmarks on the map; the box puts them on the card</source>
        <translation>Ein Klick zeigt die beiden Landmarken auf der Karte; das Kästchen bringt sie auf die Nasskarte</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Place landmarks</source>
        <translation>Landmarken setzen</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Take the map tool that places things ashore</source>
        <translation>Das Kartenwerkzeug nehmen, das Dinge an Land setzt</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Read from a chart</source>
        <translation>Aus Seekarte lesen</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Read towers, chimneys, beacons and lights from a chart cell</source>
        <translation>Türme, Schornsteine, Baken und Feuer aus einer Seekartenzelle lesen</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Seen fro&amp;m</source>
        <translation>Gesehen vo&amp;n</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <location filename="../dock/work_section.py"/>
        <source>Tideleg: {}</source>
        <translation>Tideleg: {}</translation>
    </message>
    <message>
        <location filename="../dock/transits_section.py"/>
        <source>Place a mark first: landmarks are seen in line from a mark.</source>
        <translation>Zuerst eine Marke setzen: Landmarken stehen von einer Marke aus in Linie.</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <location filename="../entry.py"/>
        <source>Walk through the sample</source>
        <translation>Rundgang durch das Beispiel</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <location filename="../processing/fastestpath.py"/>
        <source>Start</source>
        <translation>Starten</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>No, Thanks</source>
        <translation>Nein, danke</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>Less than two minutes; it can be closed at any step</source>
        <translation>Weniger als zwei Minuten; er lässt sich bei jedem Schritt schließen</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>Not asked again; the menu Plugins &gt; Tideleg has the walk too</source>
        <translation>Wird nicht wieder gefragt; den Rundgang hat auch das Menü Erweiterungen &gt; Tideleg</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>New here?</source>
        <translation>Neu hier?</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>A walk through an invented bay shows in two minutes how a swim is planned.</source>
        <translation>Ein Rundgang durch eine erfundene Bucht zeigt in zwei Minuten, wie eine Tour geplant wird.</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>Step {} of {}: {}</source>
        <translation>Schritt {} von {}: {}</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <location filename="../dock/walk.py"/>
        <source>Done: Return goes on</source>
        <translation>Erledigt: weiter mit Eingabe</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>Choose the route '{}'. The bold line says what the swim comes to.</source>
        <translation>Die Route '{}' wählen. Die fette Zeile sagt, was dabei herauskommt.</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>Press Sample: it opens an invented bay.</source>
        <translation>Beispiel drücken: Es öffnet eine erfundene Bucht.</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>Drag the handle to another time. Where it is hatched you cannot leave.</source>
        <translation>Den Griff auf eine andere Zeit ziehen. Wo es schraffiert ist, geht es nicht los.</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>Click a leg: it flashes on the map. Hold is the heading for your compass.</source>
        <translation>Einen Abschnitt anklicken: Er blinkt auf der Karte. Kurs ist, was am Kompass zu halten ist.</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>Press Play: swimmer, stream and tide move on the map.</source>
        <translation>Abspielen drücken: Schwimmer, Strom und Gezeit bewegen sich auf der Karte.</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>Click the first row, the gravest. What can be swum is not therefore safe.</source>
        <translation>Die erste Zeile anklicken, die schwerste. Was schwimmbar ist, ist deshalb nicht sicher.</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>Click a stop: by then you must leave it, on a bad day earlier.</source>
        <translation>Einen Halt anklicken: Bis dahin ist er zu verlassen, an einem schlechten Tag früher.</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>Take it along: the card, marks for a GPS, and below the sheet for the shore.</source>
        <translation>Zum Mitnehmen: die Karte, Marken für ein GPS, darunter das Blatt für den Kontakt an Land.</translation>
    </message>
    <message>
        <location filename="../dock/walk_steps.py"/>
        <source>That is all. For your own water press New.</source>
        <translation>Das ist alles. Für das eigene Revier Neu drücken.</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>Water of the Day</source>
        <translation>Wasser des Tages</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>Leave at this hour the day before</source>
        <translation>Am Tag davor zu dieser Stunde starten</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>Leave at this hour the day after</source>
        <translation>Am Tag danach zu dieser Stunde starten</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>Looking…</source>
        <translation>Sieht nach…</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>The plan has no tide and no stream yet. Open Tides and Streams under Tables and type, paste or read a table in: the day is shown at once. Then draw a route under Draw to see when to leave.</source>
        <translation>Der Plan hat noch keine Gezeit und keinen Strom. Gezeiten und Ströme unter Tabellen öffnen und eine Tabelle tippen, einfügen oder einlesen: Der Tag erscheint sofort. Dann unter Zeichnen eine Route zeichnen, um zu sehen, wann es losgehen kann.</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>At the cursor, {}</source>
        <translation>Am Mauszeiger, {}</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>Departure {date} {at}</source>
        <translation>Start {date} {at}</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>No route yet: the stream is that at station {name}, the first of the plan.</source>
        <translation>Noch keine Route: Der Strom ist der bei der Station {name}, der ersten des Plans.</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>No route yet: the stream is that at {name}; the plan has no station.</source>
        <translation>Noch keine Route: Der Strom ist der bei {name}; der Plan hat keine Station.</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>No route, mark or station yet: tide and daylight where the chart is.</source>
        <translation>Noch keine Route, Marke oder Station: Gezeit und Tageslicht, wo die Seekarte liegt.</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>Nothing is drawn yet: the tide alone is shown; daylight and stream need a place.</source>
        <translation>Noch ist nichts gezeichnet: Gezeigt wird nur die Gezeit; Tageslicht und Strom brauchen einen Ort.</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>No route yet: the stream is that at station {name}, the nearest to {near}.</source>
        <translation>Noch keine Route: Der Strom ist der bei der Station {name}, am nächsten bei {near}.</translation>
    </message>
    <message>
        <location filename="../dock/water_section.py"/>
        <source>Draw a route under Draw to see when to leave.</source>
        <translation>Unter Zeichnen eine Route zeichnen, um zu sehen, wann es losgehen kann.</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>Day, and why it ends</source>
        <translation>Tag, und warum es endet</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>The day on which it opens, that day's rank, and what stops later departures</source>
        <translation>Der Tag, an dem es öffnet, der Rang dieses Tages, und was spätere Startzeiten verhindert</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>First,
last</source>
        <translation>Erste,
letzte</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>The first and the last departure of the window, clock times in the plan's zone</source>
        <translation>Die erste und die letzte Startzeit des Zeitfensters, Uhrzeiten in der Zone des Plans</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>Best</source>
        <translation>Beste</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>The departure of the shortest swim: a click on the row chooses it</source>
        <translation>Die Startzeit der kürzesten Tour: ein Klick auf die Zeile wählt sie</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>Minutes from the best departure to the end of the route, stays included, rounded up</source>
        <translation>Minuten von der besten Startzeit bis zum Ende der Route mit allen Halten, aufgerundet</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>{day}, rank {rank}
{why}</source>
        <translation>{day}, Rang {rank}
{why}</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>{at}, {days} d on</source>
        <translation>{at}, {days} d später</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>{windows} windows on {days} days: {feasible} of {departures} departures can be swum</source>
        <translation>{windows} Zeitfenster an {days} Tagen: {feasible} von {departures} Startzeiten sind schwimmbar</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>None of {departures} departures can be swum: {stopped}</source>
        <translation>Keine von {departures} Startzeiten ist schwimmbar: {stopped}</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>The tide that the route needs is not known: no tide of a known range lies whole in this time.</source>
        <translation>Die Tide, die die Route braucht, ist nicht bekannt: keine Tide mit bekanntem Hub liegt ganz in dieser Zeit.</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>The stream lets the route be swum not even at the smallest tide of this time, {} m.</source>
        <translation>Der Strom lässt die Route nicht einmal bei der kleinsten Tide dieser Zeit zu, {} m.</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>The stream lets the route be swum at every tide of this time, up to a range of {} m.</source>
        <translation>Der Strom lässt die Route bei jeder Tide dieser Zeit zu, bis zu einem Hub von {} m.</translation>
    </message>
    <message>
        <location filename="../dock/window_rows.py"/>
        <source>The stream lets the route be swum at tides up to a range of {up_to} m, and not at one of {not_at} m.</source>
        <translation>Der Strom lässt die Route bei Tiden bis zu einem Hub von {up_to} m zu, und bei einer von {not_at} m nicht.</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>When to Go</source>
        <translation>Wann los</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Find Windows</source>
        <translation>Zeitfenster suchen</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Best days first</source>
        <translation>Beste Tage zuerst</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>In order of time</source>
        <translation>Der Zeit nach</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>The first day to look at, by the plan's clock</source>
        <translation>Der erste Tag, der geprüft wird, nach der Uhr des Plans</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>The last day to look at, by the plan's clock</source>
        <translation>Der letzte Tag, der geprüft wird, nach der Uhr des Plans</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>A departure every</source>
        <translation>Eine Startzeit alle</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Minutes between the departures that are looked at</source>
        <translation>Minuten zwischen den Startzeiten, die geprüft werden</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Find windows</source>
        <translation>Zeitfenster suchen</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Swim the route at every departure of these days</source>
        <translation>Die Route zu jeder Startzeit dieser Tage schwimmen</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Order of the windows</source>
        <translation>Reihenfolge der Zeitfenster</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Days rank by their longest window, then by the quickest swim</source>
        <translation>Tage stehen nach ihrem längsten Zeitfenster im Rang, dann nach der schnellsten Tour</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Show all windows</source>
        <translation>Alle Zeitfenster zeigen</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Show the other windows as well</source>
        <translation>Auch die anderen Zeitfenster zeigen</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <location filename="../processing/departurewindows.py"/>
        <source>Windows</source>
        <translation>Zeitfenster</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>A click, or Enter, chooses the best departure of the window</source>
        <translation>Ein Klick oder die Eingabetaste wählt die beste Startzeit des Zeitfensters</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>&amp;From</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>T&amp;o</source>
        <translation>&amp;Bis</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>&amp;Every</source>
        <translation>&amp;Alle</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>A window is a prediction and keeps no reserve: the times to turn back do.</source>
        <translation>Ein Zeitfenster ist eine Vorhersage und enthält keine Reserve: die Umkehrzeiten tun es.</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>The plan has no route with a name</source>
        <translation>Der Plan hat keine Route mit Namen</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Draw one and name it</source>
        <translation>Eine zeichnen und benennen</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Swimming at every departure</source>
        <translation>Schwimmt zu jeder Startzeit</translation>
    </message>
    <message>
        <location filename="../dock/windows_section.py"/>
        <source>Show All {} Windows</source>
        <translation>Alle {} Zeitfenster zeigen</translation>
    </message>
    <message>
        <location filename="../dock/work_section.py"/>
        <source>How far: {}</source>
        <translation>Wie weit: {}</translation>
    </message>
    <message>
        <location filename="../dock/work_section.py"/>
        <source>Working…</source>
        <translation>Rechnet…</translation>
    </message>
    <message>
        <location filename="../dock/work_section.py"/>
        <source>The plan has changed meanwhile: ask again.</source>
        <translation>Der Plan hat sich inzwischen geändert: noch einmal fragen.</translation>
    </message>
    <message>
        <location filename="../dock/work_section.py"/>
        <source>The plan has changed since: ask again.</source>
        <translation>Der Plan hat sich seither geändert: noch einmal fragen.</translation>
    </message>
    <message>
        <location filename="../entry.py"/>
        <source>Read Data</source>
        <translation>Daten einlesen</translation>
    </message>
    <message>
        <location filename="../entry.py"/>
        <source>Take Along</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <location filename="../entry.py"/>
        <source>Tideleg dock</source>
        <translation>Tideleg-Bedienfeld</translation>
    </message>
    <message>
        <location filename="../entry.py"/>
        <source>Tideleg user guide</source>
        <translation>Tideleg-Handbuch</translation>
    </message>
    <message>
        <location filename="../entry.py"/>
        <source>Plan a swim beside the map</source>
        <translation>Eine Tour neben der Karte planen</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_areas.py"/>
        <source>line, without the extent of an area</source>
        <translation>Linie, ohne die Ausdehnung eines Gebiets</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_areas.py"/>
        <source>point drawn as a circle of {radius:g} m</source>
        <translation>Punkt, als Kreis von {radius:g} m gezeichnet</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_areas.py"/>
        <source>land charted as a point, without a shore</source>
        <translation>Land als Punkt in der Karte, ohne Ufer</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_areas.py"/>
        <source>land charted as a line, without a shore</source>
        <translation>Land als Linie in der Karte, ohne Ufer</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_areas.py"/>
        <source>see the chart's text {name}</source>
        <translation>siehe den Text {name} der Seekarte</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_areas.py"/>
        <location filename="../layers_in/chart_streams.py"/>
        <source>{object_class} on {chart}</source>
        <translation>{object_class} in {chart}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>mean low water springs</source>
        <translation>mittleres Springniedrigwasser</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>mean sea level</source>
        <translation>mittlerer Meeresspiegel</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>mean low water</source>
        <translation>mittleres Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>Indian spring low water</source>
        <translation>indisches Springniedrigwasser</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>mean lower low water</source>
        <translation>mittleres niedrigeres Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>equinoctial spring low water</source>
        <translation>Springniedrigwasser der Tagundnachtgleiche</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>lowest astronomical tide</source>
        <translation>niedrigster Gezeitenwasserstand</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>lower low water large tide</source>
        <translation>niedrigeres Niedrigwasser großer Tiden</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>chart {name}, edition {edition}, update {update}</source>
        <translation>Seekarte {name}, Ausgabe {edition}, Berichtigung {update}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>{words}, dated {dated}</source>
        <translation>{words}, vom {dated}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>Give the base cell, a file that ends in .000, with its updates .001, .002 beside it</source>
        <translation>Die Grundzelle angeben, eine Datei auf .000, mit ihren Berichtigungen .001, .002 daneben</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>There is no file {path}</source>
        <translation>Es gibt keine Datei {path}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>The file cannot be read as an S-57 chart cell</source>
        <translation>Die Datei ist nicht als Zelle einer Seekarte (S-57) lesbar</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>Depths of a cell are in metres (1)</source>
        <translation>Tiefen einer Zelle sind in Metern (1)</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>Read the depths as an ordinary layer, with a conversion such as depth_m = DEPTH * 0.3048</source>
        <translation>Die Tiefen als gewöhnlichen Layer lesen, mit einer Umrechnung wie depth_m = DEPTH * 0.3048</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_cell.py"/>
        <source>S-57 datum code {datum}</source>
        <translation>Bezugsniveau mit dem S-57-Code {datum}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_channels.py"/>
        <source>point, without the extent of a channel</source>
        <translation>Punkt, ohne die Ausdehnung eines Fahrwassers</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_channels.py"/>
        <source>line of bearing that vessels do not run along (CATNAV not 3)</source>
        <translation>Peillinie, der Schiffe nicht folgen (CATNAV nicht 3)</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_channels.py"/>
        <source>line given a width of {width_m:g} m (common practice, no source)</source>
        <translation>Linie mit einer Breite von {width_m:g} m versehen (übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>dries: depth taken as 0 m</source>
        <translation>fällt trocken: Tiefe als 0 m genommen</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>contour charted as a point</source>
        <translation>Tiefenlinie als Punkt in der Karte</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>contour charted as a polygon</source>
        <translation>Tiefenlinie als Fläche in der Karte</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>contour without a depth</source>
        <translation>Tiefenlinie ohne Tiefe</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>sounding without a place or a depth</source>
        <translation>Lotung ohne Ort oder Tiefe</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>no depth charted, {level}: taken as 0 m</source>
        <translation>keine Kartentiefe, {level}: als 0 m genommen</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>no depth charted: caution circle of {radius:g} m</source>
        <translation>keine Kartentiefe: Warnkreis von {radius:g} m</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>no depth charted: caution area</source>
        <translation>keine Kartentiefe: Warngebiet</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>no depth charted</source>
        <translation>keine Kartentiefe</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_depths.py"/>
        <source>line hazard without a depth</source>
        <translation>Gefahr als Linie ohne Tiefe</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>line, with no one place to look at</source>
        <translation>Linie, ohne einen einzelnen Ort zum Anpeilen</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>building that is not charted as conspicuous</source>
        <translation>Gebäude, das in der Karte nicht als auffällig steht</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>neither a name nor a kind charted</source>
        <translation>weder Name noch Art in der Karte</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>without a name: called by kind and position</source>
        <translation>ohne Namen: nach Art und Position benannt</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>light on something that floats</source>
        <translation>Feuer auf etwas, das schwimmt</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>part of a landmark already read</source>
        <translation>Teil einer Landmarke, die schon gelesen ist</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>conspicuous</source>
        <translation>auffällig</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>not conspicuous</source>
        <translation>nicht auffällig</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_landmarks.py"/>
        <source>what carries the light is not charted</source>
        <translation>was das Feuer trägt, steht nicht in der Karte</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_layers.py"/>
        <source>{kind}, where {geometry} is held</source>
        <translation>{kind}, wo {geometry} hingehört</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_layers.py"/>
        <source>The position cannot be brought to longitude and latitude: {error}</source>
        <translation>Die Position lässt sich nicht in Länge und Breite umrechnen: {error}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_layers.py"/>
        <location filename="../layers_in/table.py"/>
        <source>Check the layer's coordinate reference system</source>
        <translation>Das Koordinatenbezugssystem des Layers prüfen</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_layers.py"/>
        <source>The plan's layer {layer} holds {geometry}</source>
        <translation>Der Layer {layer} des Plans enthält {geometry}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_layers.py"/>
        <source>Choose another layer, or another plan layer in INTO</source>
        <translation>Einen anderen Layer wählen, oder in INTO einen anderen Layer des Plans</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_layers.py"/>
        <source>A layer says in which coordinate reference system it is</source>
        <translation>Ein Layer sagt, in welchem Koordinatenbezugssystem er ist</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_layers.py"/>
        <source>Set the layer's coordinate reference system (Layer properties, Source)</source>
        <translation>Das Koordinatenbezugssystem des Layers setzen (Layereigenschaften, Quelle)</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_objects.py"/>
        <source>dredged bottom of a fairway already read</source>
        <translation>gebaggerter Grund eines Fahrwassers, das schon gelesen ist</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_reading.py"/>
        <location filename="../layers_in/streams_reading.py"/>
        <location filename="../layers_in/tides_reading.py"/>
        <source>{written} rows written, {there} were there already</source>
        <translation>{written} Zeilen geschrieben, {there} waren schon da</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_reading.py"/>
        <source>The plan has no layer 'landmarks': {lost} landmarks are left out. A new plan has it.</source>
        <translation>Der Plan hat keinen Layer „landmarks“: {lost} Landmarken sind weggelassen. Ein neuer Plan hat ihn.</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_streams.py"/>
        <source>stream table refused: {error}</source>
        <translation>Stromtabelle abgelehnt: {error}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_streams.py"/>
        <source>spring rates only: neap rates are unknown</source>
        <translation>nur Stärken zur Springzeit: die zur Nippzeit sind nicht bekannt</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_streams.py"/>
        <source>hour {hour:+d} blank</source>
        <translation>Stunde {hour:+d} leer</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_streams.py"/>
        <source>stream times refused: {error}</source>
        <translation>Stromzeiten abgelehnt: {error}</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_streams.py"/>
        <source>{count} streams at set times, which a plan cannot hold</source>
        <translation>{count} Ströme zu festen Zeiten, die ein Plan nicht aufnehmen kann</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_streams.py"/>
        <source>tide times without a name of their place</source>
        <translation>Gezeiten ohne den Namen ihres Orts</translation>
    </message>
    <message>
        <location filename="../layers_in/chart_streams.py"/>
        <source>tide times refused: {error}</source>
        <translation>Gezeiten abgelehnt: {error}</translation>
    </message>
    <message>
        <location filename="../layers_in/copied_source.py"/>
        <source>Layer '{name}' gave {count} of its rows</source>
        <translation>Layer „{name}“ gab {count} seiner Zeilen her</translation>
    </message>
    <message>
        <location filename="../layers_in/copied_source.py"/>
        <source>It has {least}</source>
        <translation>Er hat {least}</translation>
    </message>
    <message>
        <location filename="../layers_in/copied_source.py"/>
        <source>Another program may hold the file: try again, or open the plan again</source>
        <translation>Ein anderes Programm hält vielleicht die Datei: noch einmal versuchen, oder den Plan neu öffnen</translation>
    </message>
    <message>
        <location filename="../layers_in/day_asked.py"/>
        <source>The place</source>
        <translation>Der Ort</translation>
    </message>
    <message>
        <location filename="../layers_in/day_asked.py"/>
        <source>Got {day!r} for a day</source>
        <translation>{day!r} steht als Tag</translation>
    </message>
    <message>
        <location filename="../layers_in/day_asked.py"/>
        <source>A day is year-month-day</source>
        <translation>Ein Tag ist Jahr-Monat-Tag</translation>
    </message>
    <message>
        <location filename="../layers_in/day_asked.py"/>
        <source>Write it like 2027-06-26</source>
        <translation>Etwa 2027-06-26 schreiben</translation>
    </message>
    <message>
        <location filename="../layers_in/drift_findings.py"/>
        <source>Drift: set {set_deg:03d}, {rate_kn:.2f} kn</source>
        <translation>Drift: Stromrichtung {set_deg:03d}, {rate_kn:.2f} kn</translation>
    </message>
    <message>
        <location filename="../layers_in/drift_findings.py"/>
        <source>Station '{name}' is not corrected: {error}</source>
        <translation>Station „{name}“ wird nicht berichtigt: {error}</translation>
    </message>
    <message>
        <location filename="../layers_in/drift_findings.py"/>
        <source>Station '{name}', {drifts}</source>
        <translation>Station „{name}“, {drifts}</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>The timed drifts at '{name}' do not correct its stream: {error}</source>
        <translation>Die gestoppten Driften bei „{name}“ berichtigen den Strom nicht: {error}</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>Station '{name}' is corrected for the day by {words}.</source>
        <translation>Station „{name}“ ist für den Tag berichtigt: {words}.</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>1 timed drift</source>
        <translation>1 gestoppte Drift</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>{count} timed drifts</source>
        <translation>{count} gestoppte Driften</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>{minutes} min later</source>
        <translation>{minutes} min später</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>{minutes} min earlier</source>
        <translation>{minutes} min früher</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>its clock kept, as they do not tell a shift</source>
        <translation>die Zeiten bleiben, denn sie zeigen keine Verschiebung</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>{count}: rates x {rate_factor:.2f}, {shift}</source>
        <translation>{count}: Stärken x {rate_factor:.2f}, {shift}</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <location filename="../layers_in/station_tables.py"/>
        <source>Its station must be in stream_stations, which has {names}</source>
        <translation>Ihre Station muss in stream_stations stehen; dort sind {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <location filename="../layers_in/order_in.py"/>
        <location filename="../layers_in/station_tables.py"/>
        <location filename="../layers_in/swim_in.py"/>
        <location filename="../layers_in/swim_people.py"/>
        <location filename="../layers_in/swim_water.py"/>
        <location filename="../layers_in/transits_asked.py"/>
        <location filename="../layers_in/transits_in.py"/>
        <source>no rows</source>
        <translation>keine Zeilen</translation>
    </message>
    <message>
        <location filename="../layers_in/drifts_in.py"/>
        <source>Correct the name, add the station, or leave it empty</source>
        <translation>Den Namen berichtigen, die Station ergänzen, oder leer lassen</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>FIELDS has {piece!r}</source>
        <translation>In FIELDS steht {piece!r}</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>It is a list such as depth_m = DEPTH * 0.3048; name = OBJNAM</source>
        <translation>Es ist eine Liste wie depth_m = DEPTH * 0.3048; name = OBJNAM</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>Write the plan's field, an equals sign, and a QGIS expression over the layer's fields</source>
        <translation>Das Feld des Plans, ein Gleichheitszeichen und einen QGIS-Ausdruck über die Felder des Layers schreiben</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>FIELDS gives {name} twice</source>
        <translation>FIELDS gibt {name} zweimal an</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>A field is given once</source>
        <translation>Ein Feld steht einmal da</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>Drop one of the two</source>
        <translation>Eines von beiden weglassen</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>The field must be filled: {allowed}</source>
        <translation>Das Feld muss gefüllt sein: {allowed}</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>The plan's layer {layer} has the fields {names}</source>
        <translation>Der Layer {layer} des Plans hat die Felder {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>The expression {text} cannot be read: {why}</source>
        <translation>Der Ausdruck {text} ist nicht lesbar: {why}</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>The layer has no field {column}; it has {fields}</source>
        <translation>Der Layer hat kein Feld {column}; er hat {fields}</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>The expression fails here: {why}</source>
        <translation>Der Ausdruck scheitert hier: {why}</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>Correct the value or the expression</source>
        <translation>Den Wert oder den Ausdruck berichtigen</translation>
    </message>
    <message>
        <location filename="../layers_in/field_mapping.py"/>
        <source>Correct FIELDS, for example {name} = an expression over the layer's fields</source>
        <translation>FIELDS berichtigen, zum Beispiel {name} = ein Ausdruck über die Felder des Layers</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>QGIS does not open this file as a mesh</source>
        <translation>QGIS öffnet diese Datei nicht als Netz</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>Name a mesh with its dataset groups, or write kind 'raster' if it is a raster</source>
        <translation>Ein Netz mit seinen Datensatzgruppen nennen, oder kind „raster“ schreiben, wenn es ein Raster ist</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>Stream model '{name}' has no mesh around the plan: it does not know its stream.</source>
        <translation>Das Strommodell „{name}“ hat kein Netz um den Plan: Es kennt dort keinen Strom.</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>Both parts have the same steps</source>
        <translation>Beide Teile haben dieselben Schritte</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <location filename="../layers_in/raster_in.py"/>
        <source>Name two parts of one model</source>
        <translation>Zwei Teile eines Modells nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>The stream stands at the mesh's nodes or in its faces; layered and edge values are not read</source>
        <translation>Der Strom steht an den Knoten oder in den Flächen des Netzes; Schichten und Kanten werden nicht gelesen</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>Export the surface layer</source>
        <translation>Die Oberflächenschicht exportieren</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>For a mesh this is a file of dataset groups that belong to it, and QGIS does not read this one as such</source>
        <translation>Bei einem Netz ist dies eine Datei mit zugehörigen Datensatzgruppen, und QGIS liest diese nicht als solche</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>Correct the file, or leave the field empty</source>
        <translation>Die Datei berichtigen, oder das Feld leer lassen</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>Its groups with a direction are {directed}; all its groups are {names}</source>
        <translation>Gruppen mit Richtung sind {directed}; alle Gruppen sind {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/mesh_in.py"/>
        <source>Name one with a direction, or the east and the north part in group and v_group</source>
        <translation>Eine mit Richtung nennen, oder Ost- und Nordteil in group und v_group</translation>
    </message>
    <message>
        <location filename="../layers_in/model_places.py"/>
        <source>The coordinate reference system is not understood</source>
        <translation>Das Koordinatenbezugssystem wird nicht verstanden</translation>
    </message>
    <message>
        <location filename="../layers_in/model_places.py"/>
        <source>Write it into the file, or give its code, such as EPSG:32610, in the field crs</source>
        <translation>Es in die Datei schreiben, oder seinen Code, wie EPSG:32610, im Feld crs angeben</translation>
    </message>
    <message>
        <location filename="../layers_in/model_places.py"/>
        <source>Stream model '{name}': the file names no coordinate reference system; its coordinates were taken as longitude and latitude on WGS84.</source>
        <translation>Strommodell „{name}“: Die Datei nennt kein Koordinatenbezugssystem; ihre Koordinaten wurden als Länge und Breite auf WGS84 genommen.</translation>
    </message>
    <message>
        <location filename="../layers_in/model_places.py"/>
        <source>The file names no coordinate reference system, and its coordinates, {low_x:g} to {high_x:g} by {low_y:g} to {high_y:g}, are not longitudes and latitudes around the plan</source>
        <translation>Die Datei nennt kein Koordinatenbezugssystem, und ihre Koordinaten, {low_x:g} bis {high_x:g} mal {low_y:g} bis {high_y:g}, sind keine Längen und Breiten um den Plan</translation>
    </message>
    <message>
        <location filename="../layers_in/model_places.py"/>
        <source>Write the system into the file, or give its code, such as EPSG:32610, in the field crs</source>
        <translation>Das System in die Datei schreiben, oder seinen Code, wie EPSG:32610, im Feld crs angeben</translation>
    </message>
    <message>
        <location filename="../layers_in/model_row.py"/>
        <source>{count} more</source>
        <translation>{count} weitere</translation>
    </message>
    <message>
        <location filename="../layers_in/model_row.py"/>
        <source>There is no such file; looked for {path}</source>
        <translation>Es gibt keine solche Datei; gesucht wurde {path}</translation>
    </message>
    <message>
        <location filename="../layers_in/model_row.py"/>
        <source>Correct the path: it is absolute, or counted from the plan's own folder</source>
        <translation>Den Pfad berichtigen: Er ist absolut oder zählt vom Ordner des Plans aus</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>The file does not say at what moment its steps begin</source>
        <translation>Die Datei sagt nicht, wann ihre Schritte beginnen</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Give the first step's moment in UTC in the field start</source>
        <translation>Die Zeit des ersten Schritts in UTC im Feld start angeben</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>The file does not say how far apart its steps are</source>
        <translation>Die Datei sagt nicht, wie weit ihre Schritte auseinanderliegen</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Give the minutes from step to step in the field step_min</source>
        <translation>Die Minuten von Schritt zu Schritt im Feld step_min angeben</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Stream model '{name}': the file's own times begin at {own}; the start given in the plan, {start:%Y-%m-%d %H:%M} UTC, stands in their place.</source>
        <translation>Strommodell „{name}“: Die eigenen Zeiten der Datei beginnen um {own}; an ihrer Stelle gilt der Beginn aus dem Plan, {start:%Y-%m-%d %H:%M} UTC.</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Stream model '{name}' covers {first} to {last}; the plan starts at {start}: the model does not know its stream.</source>
        <translation>Strommodell „{name}“ reicht von {first} bis {last}; der Plan beginnt um {start}: Das Modell kennt seinen Strom nicht.</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Stream model '{name}': its steps are up to {hours:g} h apart; between them the stream is drawn straight, which no tide is.</source>
        <translation>Strommodell „{name}“: Seine Schritte liegen bis zu {hours:g} h auseinander; dazwischen ist der Strom gerade gezogen, was keine Tide ist.</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Around the plan the model has {steps} steps of {places} values; at most {largest_values} are read</source>
        <translation>Um den Plan hat das Modell {steps} Schritte mit {places} Werten; höchstens {largest_values} werden gelesen</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Cut the file to fewer steps, or to the plan's area</source>
        <translation>Die Datei auf weniger Schritte oder auf das Gebiet des Plans kürzen</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Times are seconds, minutes, hours or days since a moment of the Gregorian calendar</source>
        <translation>Zeiten sind Sekunden, Minuten, Stunden oder Tage seit einem Zeitpunkt des gregorianischen Kalenders</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Convert the file's times, or give start and step_min</source>
        <translation>Die Zeiten der Datei umwandeln, oder start und step_min angeben</translation>
    </message>
    <message>
        <location filename="../layers_in/model_times.py"/>
        <source>Name a group that goes on in time, or give start and step_min</source>
        <translation>Eine Gruppe nennen, die in der Zeit fortschreitet, oder start und step_min angeben</translation>
    </message>
    <message>
        <location filename="../layers_in/model_units.py"/>
        <source>Stream model '{name}': the file names no unit; its values were taken as m/s.</source>
        <translation>Strommodell „{name}“: Die Datei nennt keine Einheit; ihre Werte wurden als m/s genommen.</translation>
    </message>
    <message>
        <location filename="../layers_in/model_units.py"/>
        <source>The stream is in m/s, cm/s, km/h, ft/s or knots</source>
        <translation>Der Strom steht in m/s, cm/s, km/h, ft/s oder Knoten</translation>
    </message>
    <message>
        <location filename="../layers_in/model_units.py"/>
        <source>Name the group that holds the stream, or convert the file to m/s</source>
        <translation>Die Gruppe mit dem Strom nennen, oder die Datei in m/s umwandeln</translation>
    </message>
    <message>
        <location filename="../layers_in/model_units.py"/>
        <source>Stream model '{name}': its values in {unit} were converted to m/s.</source>
        <translation>Strommodell „{name}“: Seine Werte in {unit} wurden in m/s umgerechnet.</translation>
    </message>
    <message>
        <location filename="../layers_in/model_units.py"/>
        <source>A stream model holds the stream; this is wind</source>
        <translation>Ein Strommodell enthält den Strom; dies ist Wind</translation>
    </message>
    <message>
        <location filename="../layers_in/model_units.py"/>
        <source>Name the stream's group</source>
        <translation>Die Gruppe des Stroms nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/model_units.py"/>
        <source>Stream model '{name}': {wild} values above {fastest_m_s:g} m/s were taken as unknown.</source>
        <translation>Strommodell „{name}“: {wild} Werte über {fastest_m_s:g} m/s gelten als unbekannt.</translation>
    </message>
    <message>
        <location filename="../layers_in/model_units.py"/>
        <source>Stream model '{name}': {still} places with no stream at any time were taken as land, unknown.</source>
        <translation>Strommodell „{name}“: {still} Orte, die nie Strom haben, gelten als Land, unbekannt.</translation>
    </message>
    <message>
        <location filename="../layers_in/models_in.py"/>
        <source>A model's name stands once</source>
        <translation>Der Name eines Modells steht einmal da</translation>
    </message>
    <message>
        <location filename="../layers_in/models_in.py"/>
        <location filename="../layers_in/station_tables.py"/>
        <source>Rename or delete one of them</source>
        <translation>Eines davon umbenennen oder löschen</translation>
    </message>
    <message>
        <location filename="../layers_in/moments.py"/>
        <source>Allowed is a date and time in UTC</source>
        <translation>Erlaubt sind Datum und Uhrzeit in UTC</translation>
    </message>
    <message>
        <location filename="../layers_in/moments.py"/>
        <source>Write it like 2027-06-05T09:40:00Z</source>
        <translation>Etwa 2027-06-05T09:40:00Z schreiben</translation>
    </message>
    <message>
        <location filename="../layers_in/moments.py"/>
        <source>no time</source>
        <translation>keine Zeit</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>No entry was named</source>
        <translation>Kein Einstieg genannt</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>The plan has {names} of kind entry</source>
        <translation>Einstiege des Plans: {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>Name the place to start from</source>
        <translation>Den Ort nennen, von dem es losgeht</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>Name up to {most_marks} marks, with ; between them</source>
        <translation>Bis zu {most_marks} Marken nennen, mit ; dazwischen</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>No marks were named: all of kind mark are visited, {count} of them.</source>
        <translation>Keine Marken genannt: Alle der Art Marke werden besucht, {count} davon.</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>Only the nearest exits and the entry are looked at; left out: {names}.</source>
        <translation>Nur die nächsten Ausstiege und der Einstieg werden angesehen; nicht dabei: {names}.</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>'{one}' and '{other}' lie at the same place</source>
        <translation>„{one}“ und „{other}“ liegen am selben Ort</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>Places to put in order lie {least_apart_m:g} m apart at the least</source>
        <translation>Orte, die geordnet werden, liegen mindestens {least_apart_m:g} m auseinander</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>Leave one of them out, or move it</source>
        <translation>Einen davon weglassen oder verschieben</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>Asked for the {what} '{name}'</source>
        <translation>Verlangt ist „{name}“ ({what})</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>, which stands there {count} times</source>
        <translation>, das {count}-mal dasteht</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <location filename="../layers_in/transits_asked.py"/>
        <source>The marks layer has {names}</source>
        <translation>Der Layer der Marken hat {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/order_in.py"/>
        <source>Name one that stands there once</source>
        <translation>Eine nennen, die einmal dasteht</translation>
    </message>
    <message>
        <location filename="../layers_in/place_in.py"/>
        <source>the entry</source>
        <translation>dem Einstieg</translation>
    </message>
    <message>
        <location filename="../layers_in/place_in.py"/>
        <source>a place not drawn yet</source>
        <translation>einem noch nicht gezeichneten Ort</translation>
    </message>
    <message>
        <location filename="../layers_in/place_in.py"/>
        <source>the chart</source>
        <translation>der Seekarte</translation>
    </message>
    <message>
        <location filename="../layers_in/plan_append.py"/>
        <source>The plan {path} has no layer {name}</source>
        <translation>Der Plan {path} hat keinen Layer {name}</translation>
    </message>
    <message>
        <location filename="../layers_in/plan_append.py"/>
        <source>A plan holds every layer of its schema</source>
        <translation>Ein Plan enthält jeden Layer seines Schemas</translation>
    </message>
    <message>
        <location filename="../layers_in/plan_append.py"/>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Make a new plan and read into that</source>
        <translation>Einen neuen Plan anlegen und dorthin lesen</translation>
    </message>
    <message>
        <location filename="../layers_in/plan_append.py"/>
        <source>The plan {path} could not be written ({why})</source>
        <translation>Der Plan {path} konnte nicht geschrieben werden ({why})</translation>
    </message>
    <message>
        <location filename="../layers_in/plan_append.py"/>
        <location filename="../plan_package/geopackage.py"/>
        <source>no reason given</source>
        <translation>kein Grund genannt</translation>
    </message>
    <message>
        <location filename="../layers_in/plan_append.py"/>
        <location filename="../plan_package/database.py"/>
        <location filename="../plan_package/geopackage.py"/>
        <source>A plan is a GeoPackage that nothing else is writing to</source>
        <translation>Ein Plan ist ein GeoPackage, in das sonst nichts schreibt</translation>
    </message>
    <message>
        <location filename="../layers_in/plan_append.py"/>
        <source>Save or drop the edits of its layers, check free space, and try again</source>
        <translation>Die Änderungen seiner Layer speichern oder verwerfen, freien Platz prüfen und noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../layers_in/plan_tables.py"/>
        <source>The plan has no layer '{name}', which was taken as empty: bring the plan up to date.</source>
        <translation>Der Plan hat keinen Layer „{name}“; er galt als leer: den Plan auf den neuesten Stand bringen.</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_bands.py"/>
        <source>GDAL does not open this file as a raster</source>
        <translation>GDAL öffnet diese Datei nicht als Raster</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_bands.py"/>
        <source>Name a raster file, or write kind 'mesh' if it is a mesh</source>
        <translation>Eine Rasterdatei nennen, oder kind „mesh“ schreiben, wenn es ein Netz ist</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_bands.py"/>
        <source>The file's groups are {names}</source>
        <translation>Die Gruppen der Datei sind {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_bands.py"/>
        <source>Name the one for this part</source>
        <translation>Die für diesen Teil nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_bands.py"/>
        <source>The file's bands are {names}</source>
        <translation>Die Kanäle der Datei sind {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_bands.py"/>
        <source>Give the letters the bands of this part begin with</source>
        <translation>Die Buchstaben angeben, mit denen die Kanäle dieses Teils beginnen</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_in.py"/>
        <source>Stream model '{name}' has no cells around the plan: it does not know its stream.</source>
        <translation>Das Strommodell „{name}“ hat keine Zellen um den Plan: Es kennt dort keinen Strom.</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_in.py"/>
        <source>Both parts stand in the same cells at the same times; they have {first} and {second} steps, {grids} x {grids_2} and {grids_3} x {grids_4} cells</source>
        <translation>Beide Teile stehen zu denselben Zeiten in denselben Zellen; sie haben {first} und {second} Schritte, {grids} x {grids_2} und {grids_3} x {grids_4} Zellen</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_in.py"/>
        <source>Name two parts of one model, brought to common cells</source>
        <translation>Zwei Teile eines Modells nennen, auf gemeinsame Zellen gebracht</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_in.py"/>
        <source>The two parts differ</source>
        <translation>Die beiden Teile sind verschieden</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_in.py"/>
        <source>Name the north part's bands</source>
        <translation>Die Kanäle des Nordteils nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_in.py"/>
        <source>Both parts have the same times</source>
        <translation>Beide Teile haben dieselben Zeiten</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_in.py"/>
        <source>The raster's projection bends too much around the plan to find places in it</source>
        <translation>Die Projektion des Rasters krümmt sich um den Plan zu sehr, um Orte darin zu finden</translation>
    </message>
    <message>
        <location filename="../layers_in/raster_in.py"/>
        <source>Bring the raster into a projection made for the area, UTM for instance</source>
        <translation>Das Raster in eine Projektion für das Gebiet bringen, zum Beispiel UTM</translation>
    </message>
    <message>
        <location filename="../layers_in/reach_in.py"/>
        <source>DEPART is {depart} and BACK_BY {back_by}</source>
        <translation>DEPART ist {depart} und BACK_BY {back_by}</translation>
    </message>
    <message>
        <location filename="../layers_in/reach_in.py"/>
        <source>Asked for a path between places {metres:.0f} m apart</source>
        <translation>Verlangt ist ein Weg zwischen Orten, die {metres:.0f} m auseinanderliegen</translation>
    </message>
    <message>
        <location filename="../layers_in/reach_in.py"/>
        <source>They lie from 1 m to {near_km:g} km apart</source>
        <translation>Sie liegen 1 m bis {near_km:g} km auseinander</translation>
    </message>
    <message>
        <location filename="../layers_in/reach_in.py"/>
        <source>Choose START and END anew</source>
        <translation>START und END neu wählen</translation>
    </message>
    <message>
        <location filename="../layers_in/reach_in.py"/>
        <source>The start</source>
        <translation>Der Anfang</translation>
    </message>
    <message>
        <location filename="../layers_in/reach_in.py"/>
        <source>The end</source>
        <translation>Das Ende</translation>
    </message>
    <message>
        <location filename="../layers_in/read_report.py"/>
        <source>The chart is for planning ashore, not for navigation; an area that is not charted is not thereby permitted.</source>
        <translation>Die Seekarte ist zum Planen an Land, nicht zum Navigieren; ein Gebiet, das nicht in der Karte steht, ist damit nicht erlaubt.</translation>
    </message>
    <message>
        <location filename="../layers_in/read_report.py"/>
        <source>Depths of the chart are from {datum}, the plan's tides from {plan_datum}: they do not add up.</source>
        <translation>Bezugsniveau der Tiefen der Seekarte: {datum}; der Gezeiten des Plans: {plan_datum}. Sie lassen sich nicht zusammenzählen.</translation>
    </message>
    <message>
        <location filename="../layers_in/read_report.py"/>
        <source>The chart's horizontal datum has code {code}; it is taken as WGS 84.</source>
        <translation>Das Lagedatum der Seekarte hat den Code {code}; es wird als WGS 84 genommen.</translation>
    </message>
    <message>
        <location filename="../layers_in/read_report.py"/>
        <source>The chart has no data for {percent:.0f} % of the extent: water there is unknown.</source>
        <translation>Die Seekarte hat für {percent:.0f} % der Ausdehnung keine Daten: Das Wasser dort ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../layers_in/read_report.py"/>
        <source>Nothing of the chart that a plan can use lies in the extent.</source>
        <translation>In der Ausdehnung liegt nichts von der Seekarte, das ein Plan brauchen kann.</translation>
    </message>
    <message>
        <location filename="../layers_in/read_report.py"/>
        <source>It is a file in a folder that is there</source>
        <translation>Es ist eine Datei in einem Ordner, den es gibt</translation>
    </message>
    <message>
        <location filename="../layers_in/read_report.py"/>
        <source>report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <location filename="../layers_in/read_tally.py"/>
        <source>{name}: {read} read, {used} used</source>
        <translation>{name}: {read} gelesen, {used} verwendet</translation>
    </message>
    <message>
        <location filename="../layers_in/read_tally.py"/>
        <source>{count} outside the extent</source>
        <translation>{count} außerhalb der Ausdehnung</translation>
    </message>
    <message>
        <location filename="../layers_in/read_tally.py"/>
        <source>{count} skipped ({reason})</source>
        <translation>{count} übergangen ({reason})</translation>
    </message>
    <message>
        <location filename="../layers_in/read_tally.py"/>
        <source>{count} repaired</source>
        <translation>{count} repariert</translation>
    </message>
    <message>
        <location filename="../layers_in/second_reading.py"/>
        <source>{why}. Was the same table read before in another zone ({layer}, port '{who}')?</source>
        <translation>{why}. Wurde dieselbe Tabelle schon einmal in einer anderen Zone gelesen ({layer}, Ort „{who}“)?</translation>
    </message>
    <message>
        <location filename="../layers_in/second_reading.py"/>
        <source>{why}. Was the same table read before in another zone ({layer}, station '{who}')?</source>
        <translation>{why}. Wurde dieselbe Tabelle schon einmal in einer anderen Zone gelesen ({layer}, Station „{who}“)?</translation>
    </message>
    <message>
        <location filename="../layers_in/second_reading.py"/>
        <source>Correct ZONE, delete the plan's rows of that port, or name the port otherwise</source>
        <translation>ZONE berichtigen, die Zeilen jenes Orts im Plan löschen, oder den Ort anders nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/second_reading.py"/>
        <source>Correct ZONE, delete the plan's rows of that station, or name the station otherwise</source>
        <translation>ZONE berichtigen, die Zeilen jener Station im Plan löschen, oder die Station anders nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source>Station '{station}'</source>
        <translation>Station „{station}“</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source>The tide coefficients</source>
        <translation>Die Gezeitenkoeffizienten</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source>Station '{station}' at longitude {lon:.5f}, latitude {lat:.5f} lies {away_km:.0f} km from everything else in the plan: check its place.</source>
        <translation>Station „{station}“ auf Länge {lon:.5f}, Breite {lat:.5f} liegt {away_km:.0f} km von allem anderen im Plan: ihren Ort prüfen.</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source> With longitude and latitude exchanged it would be {away_km:.0f} km: longitude comes first.</source>
        <translation> Mit Länge und Breite vertauscht wären es {away_km:.0f} km: Die Länge kommt zuerst.</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source>Station '{station}' has no spring range: every rate will be extrapolated, the spring rate on every day. Fill in spring_range_m.</source>
        <translation>Station „{station}“ hat keinen Springhub: Jede Stärke wird hochgerechnet, an jedem Tag die der Springzeit. spring_range_m eintragen.</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source>Station '{station}' has rates at neaps and no neap range: they will not be used. Fill in neap_range_m.</source>
        <translation>Station „{station}“ hat Stärken zur Nippzeit und keinen Nipphub: Sie werden nicht verwendet. neap_range_m eintragen.</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source>it has those of {known}</source>
        <translation>er hat die von {known}</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source>it has none with a port</source>
        <translation>er hat keine mit einem Ort</translation>
    </message>
    <message>
        <location filename="../layers_in/station_doubts.py"/>
        <source>{who}: the plan has no tides for the port '{port}' ({has}). Read them in, or correct PORT.</source>
        <translation>{who}: Der Plan hat keine Gezeiten für den Ort „{port}“ ({has}). Sie einlesen, oder PORT berichtigen.</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <source>It names a station of the form 'events' in stream_stations</source>
        <translation>Es nennt eine Station der Form „events“ in stream_stations</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <source>Name the station whose slacks and maxima the differences belong to</source>
        <translation>Die Station nennen, zu deren Stauwassern und Maxima die Unterschiede gehören</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <source>A constant station has one row in stream_rates, hour 0</source>
        <translation>Eine konstante Station hat eine Zeile in stream_rates, Stunde 0</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <source>It has {count}; correct stream_rates</source>
        <translation>Sie hat {count}; stream_rates berichtigen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <source>Stream station '{station}' goes by tide coefficients, and tide_coefficients has none for its port: its rates are those at 95.</source>
        <translation>Die Stromstation „{station}“ geht nach Gezeitenkoeffizienten, und tide_coefficients hat keine für ihren Ort: Ihre Stärken sind die bei 95.</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <source>Station '{station}' has every hour once</source>
        <translation>Station „{station}“ hat jede Stunde einmal</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <source>Delete one of the rows given twice</source>
        <translation>Eine der doppelten Zeilen löschen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <location filename="../map_tools/placings.py"/>
        <source>Correct the ranges</source>
        <translation>Die Tidenhübe berichtigen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_forms.py"/>
        <source>Stream station '{station}' is driven by the wind, and the winds table is empty: its stream is unknown.</source>
        <translation>Die Stromstation „{station}“ wird vom Wind getrieben, und die Tabelle der Winde ist leer: Ihr Strom ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>The text has that station already</source>
        <translation>Der Text hat diese Station schon</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>Name one otherwise</source>
        <translation>Eine anders nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>The station '{name}' is not in the plan, and nothing says where it is</source>
        <translation>Die Station „{name}“ ist nicht im Plan, und nichts sagt, wo sie ist</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>A stream belongs to a place</source>
        <translation>Ein Strom gehört zu einem Ort</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>Give its place in POINT, or name a station of the plan</source>
        <translation>Den Ort in POINT angeben, oder eine Station des Plans nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>The plan has the stations {names}</source>
        <translation>Der Plan hat die Stationen {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>The plan has no stations</source>
        <translation>Der Plan hat keine Stationen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>Correct the name, or leave it out</source>
        <translation>Den Namen berichtigen oder weglassen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>Fields of a station are {fields}</source>
        <translation>Felder einer Station sind {fields}</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>Correct the line, or begin it with ##</source>
        <translation>Die Zeile berichtigen, oder sie mit ## beginnen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>The plan's station '{station}' has {held!r}</source>
        <translation>Die Station „{station}“ des Plans hat {held!r}</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>Name the station otherwise, or correct one of them</source>
        <translation>Die Station anders nennen, oder eine davon berichtigen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>The plan's station '{station}' has none</source>
        <translation>Bei der Station „{station}“ des Plans ist es leer</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>Fill in its {key} first</source>
        <translation>Dort zuerst {key} ausfüllen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>The plan's station '{name}' is at {lon:.5f} {lat:.5f}</source>
        <translation>Die Station „{name}“ des Plans liegt bei {lon:.5f} {lat:.5f}</translation>
    </message>
    <message>
        <location filename="../layers_in/station_rows.py"/>
        <source>Leave the place out, or name the station otherwise</source>
        <translation>Den Ort weglassen, oder die Station anders nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_tables.py"/>
        <source>the winds</source>
        <translation>die Winde</translation>
    </message>
    <message>
        <location filename="../layers_in/station_tables.py"/>
        <source>Stream station '{station}' counts its hours from the tides of {port}, and the tides table does not have them: its stream is unknown.</source>
        <translation>Die Stromstation „{station}“ zählt ihre Stunden nach den Gezeiten von {port}, und die Gezeitentafel hat sie nicht: Ihr Strom ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../layers_in/station_tables.py"/>
        <source>a port that is not named</source>
        <translation>einem Ort ohne Namen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_tables.py"/>
        <source>A station of the form '{form}' needs it</source>
        <translation>Eine Station der Form „{form}“ braucht es</translation>
    </message>
    <message>
        <location filename="../layers_in/station_tables.py"/>
        <source>Fill it in: empty is not 0</source>
        <translation>Eintragen: leer ist nicht 0</translation>
    </message>
    <message>
        <location filename="../layers_in/station_tables.py"/>
        <location filename="../layers_in/swim_water.py"/>
        <source>Correct the name or add the station</source>
        <translation>Den Namen berichtigen oder die Station ergänzen</translation>
    </message>
    <message>
        <location filename="../layers_in/station_tables.py"/>
        <source>A station's name stands once</source>
        <translation>Der Name einer Station steht einmal da</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>The text has several stations, and one place was given</source>
        <translation>Der Text hat mehrere Stationen, und ein Ort ist angegeben</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Each station has its own place</source>
        <translation>Jede Station hat ihren eigenen Ort</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Write lines '# lon: ...' and '# lat: ...' under each '# station: ...'</source>
        <translation>Unter jedes '# station: ...' Zeilen '# lon: ...' und '# lat: ...' schreiben</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Station '{station}' had these fields empty, the text fills them: {fields}</source>
        <translation>Bei der Station „{station}“ waren diese Felder leer, der Text füllt sie: {fields}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Preview: {count} rows understood, nothing written</source>
        <translation>Vorschau: {count} Zeilen verstanden, nichts geschrieben</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>1 station filled in: {names}</source>
        <translation>1 Station ausgefüllt: {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>{count} stations filled in: {names}</source>
        <translation>{count} Stationen ausgefüllt: {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>The file {path} cannot be read ({why})</source>
        <translation>Die Datei {path} ist nicht lesbar ({why})</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <location filename="../layers_in/tides_reading.py"/>
        <location filename="../processing/whole_outputs.py"/>
        <source>Choose another file</source>
        <translation>Eine andere Datei wählen</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>The file {path} is no text</source>
        <translation>Die Datei {path} ist kein Text</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Text and CSV files are read</source>
        <translation>Text- und CSV-Dateien werden gelesen</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Save the table as CSV</source>
        <translation>Die Tabelle als CSV speichern</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>{name} is not UTF-8: its letters were read as Latin 1.</source>
        <translation>{name} ist nicht UTF-8: Die Buchstaben wurden als Latin 1 gelesen.</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Row {number} says something for it already</source>
        <translation>Zeile {number} sagt dafür schon etwas</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>The plan's {layer} has other figures for it</source>
        <translation>In {layer} des Plans stehen dafür andere Zahlen</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Delete them there, or name the station otherwise</source>
        <translation>Sie dort löschen, oder die Station anders nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Table of station {station}: form {form}, {count} rows, parted by {parted}</source>
        <translation>Tabelle der Station {station}: Form {form}, {count} Zeilen, getrennt durch: {parted}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>Table: form {form}, {count} rows, parted by {parted}</source>
        <translation>Tabelle: Form {form}, {count} Zeilen, getrennt durch: {parted}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>clock of the times: {clock}</source>
        <translation>Uhr der Zeiten: {clock}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>{column}: taken for {role}</source>
        <translation>{column}: genommen für {role}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_reading.py"/>
        <source>row {number} skipped: {reason}</source>
        <translation>Zeile {number} übergangen: {reason}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_text.py"/>
        <source>The plan has no stream station '{station}'</source>
        <translation>Der Plan hat keine Stromstation „{station}“</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_text.py"/>
        <source>It has {names}</source>
        <translation>Er hat {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_text.py"/>
        <source>It has no stream stations</source>
        <translation>Er hat keine Stromstationen</translation>
    </message>
    <message>
        <location filename="../layers_in/streams_text.py"/>
        <source>Correct the name, or leave it out to write all</source>
        <translation>Den Namen berichtigen, oder ihn weglassen, um alle zu schreiben</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_chart.py"/>
        <source>The ferries table names the channel '{name}', which is not among the channels.</source>
        <translation>Die Tabelle der Fähren nennt das Fahrwasser „{name}“, das nicht unter den Fahrwassern ist.</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_chart.py"/>
        <source>A channel drawn as a line needs its width in metres</source>
        <translation>Ein als Linie gezeichnetes Fahrwasser braucht seine Breite in Metern</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_chart.py"/>
        <location filename="../map_tools/row_form.py"/>
        <location filename="../plan_package/row_check.py"/>
        <source>Fill it in</source>
        <translation>Bitte ausfüllen</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source>No plan was given: times are read and shown in UTC, and settings are the defaults.</source>
        <translation>Kein Plan angegeben: Zeiten werden in UTC gelesen und gezeigt, und Einstellungen sind die vorgegebenen.</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source>closed area</source>
        <translation>Sperrgebiet</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source>The plan holds no {what}: that is not to say there is none.</source>
        <translation>Im Plan fehlt: {what}. Das heißt nicht, dass es so etwas dort nicht gibt.</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source> and no </source>
        <translation> und </translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source>Asked for the route '{name}'</source>
        <translation>Verlangt ist die Route „{name}“</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source>No route was named</source>
        <translation>Keine Route genannt</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source>The routes layer has {names}</source>
        <translation>Der Layer der Routen hat {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source>Name one route that stands there once, drawn in one piece</source>
        <translation>Eine Route nennen, die einmal dasteht, in einem Stück gezeichnet</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_in.py"/>
        <source>Vertex {number} of route '{name}'</source>
        <translation>Stützpunkt {number} der Route „{name}“</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>Asked for the swimmer '{name}'</source>
        <translation>Verlangt ist der Schwimmer „{name}“</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>The swimmers table has {names}</source>
        <translation>Die Tabelle der Schwimmer hat {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>Choose one of them or add the swimmer; names of a group have a semicolon between them</source>
        <translation>Einen davon wählen oder den Schwimmer ergänzen; zwischen den Namen einer Gruppe steht ein Semikolon</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>No swimmer was named; planned for the first one, {name}.</source>
        <translation>Kein Schwimmer genannt; geplant für den ersten, {name}.</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>all have the same numbers</source>
        <translation>alle haben dieselben Zahlen</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>{name} swim together, and the slowest sets the pace: {set_by}.</source>
        <translation>{name} schwimmen zusammen, und wer am langsamsten ist, bestimmt das Tempo: {set_by}.</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>Asked for a pace of {pace_m_s:g} m/s</source>
        <translation>Verlangt ist ein Tempo von {pace_m_s:g} m/s</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>A pace lies from {low:g} to {high:g} m/s</source>
        <translation>Ein Tempo liegt von {low:g} bis {high:g} m/s</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>Correct the pace, or leave it empty for the swimmer's own</source>
        <translation>Das Tempo berichtigen, oder leer lassen für das des Schwimmers</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>pace {pace_m_s:g} m/s as given</source>
        <translation>Tempo {pace_m_s:g} m/s wie angegeben</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>The setting {key} is {text!r}</source>
        <translation>Die Einstellung {key} ist {text!r}</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_people.py"/>
        <source>It is a number</source>
        <translation>Es ist eine Zahl</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_water.py"/>
        <source>Stream station '{name}' lies {away_km:.0f} km from the route: is its place right, longitude before latitude?</source>
        <translation>Die Stromstation „{name}“ liegt {away_km:.0f} km von der Route: Stimmt ihr Ort, Länge vor Breite?</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_water.py"/>
        <source>The stream area of '{name}' rules by the tide, and that station's port has no tides: the stream inside is unknown.</source>
        <translation>Das Stromgebiet von „{name}“ gilt nach der Tide, und der Ort der Station hat keine Gezeiten: Der Strom darin ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../layers_in/swim_water.py"/>
        <source>The ruling station must be in stream_stations, which has {names}</source>
        <translation>Die maßgebende Station muss in stream_stations stehen; dort sind {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>with no geometry skipped</source>
        <translation>ohne Geometrie übergangen</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>with an invalid polygon repaired</source>
        <translation>mit ungültigem Polygon repariert</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Layer '{name}': 1 row {words}: {rows}.</source>
        <translation>Layer „{name}“: 1 Zeile {words}: {rows}.</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Layer '{name}': {count} rows {words}: {rows}.</source>
        <translation>Layer „{name}“: {count} Zeilen {words}: {rows}.</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>The layer needs the field '{name}'; it has {names}</source>
        <translation>Der Layer braucht das Feld „{name}“; er hat {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Rename the field, add it, or read the layer into the plan with a field mapping</source>
        <translation>Das Feld umbenennen, ergänzen, oder den Layer mit einer Feldzuordnung in den Plan lesen</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Layer '{name}' has no field '{field}': {value:g} is taken for every row.</source>
        <translation>Layer „{name}“ hat kein Feld „{field}“: Für jede Zeile gilt {value:g}.</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>A layer with places needs a coordinate reference system; this one has none</source>
        <translation>Ein Layer mit Orten braucht ein Koordinatenbezugssystem; dieser hat keines</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Set the layer's coordinate reference system in its properties</source>
        <translation>Das Koordinatenbezugssystem in den Eigenschaften des Layers setzen</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <location filename="../plan_package/row_check.py"/>
        <source>The layer holds {geometry}</source>
        <translation>Der Layer enthält {geometry}</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <location filename="../plan_package/row_check.py"/>
        <source>Convert the geometry or choose another layer</source>
        <translation>Die Geometrie umwandeln oder einen anderen Layer wählen</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>The geometry must lie where its reference system is defined</source>
        <translation>Die Geometrie muss dort liegen, wo ihr Bezugssystem definiert ist</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>longitude {lon:g}, latitude {lat:g}</source>
        <translation>Länge {lon:g}, Breite {lat:g}</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <location filename="../map_tools/places.py"/>
        <source>Longitudes lie within 360 and latitudes within 90 degrees</source>
        <translation>Längen liegen innerhalb 360 und Breiten innerhalb 90 Grad</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Check the layer's coordinate reference system, longitude before latitude</source>
        <translation>Das Koordinatenbezugssystem des Layers prüfen, Länge vor Breite</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>an edge of {wide:g} degrees of longitude</source>
        <translation>eine Kante von {wide:g} Längengraden</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Edges span less than half the Earth</source>
        <translation>Kanten reichen über weniger als die halbe Erde</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Add vertices along the edge, or clip the layer to the area of the plan</source>
        <translation>Stützpunkte entlang der Kante einfügen, oder den Layer auf das Gebiet des Plans beschneiden</translation>
    </message>
    <message>
        <location filename="../layers_in/table.py"/>
        <source>Layer '{name}', field '{field}': times without a zone were read as UTC. Write Z or their offset.</source>
        <translation>Layer „{name}“, Feld „{field}“: Zeiten ohne Zone wurden als UTC gelesen. Z oder ihren Versatz dazuschreiben.</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Clock of the times: {said}</source>
        <translation>Uhr der Zeiten: {said}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Phases: {said}</source>
        <translation>Phasen: {said}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Order of day, month and year: {said}</source>
        <translation>Reihenfolge von Tag, Monat und Jahr: {said}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Units of the heights: {said}</source>
        <translation>Einheiten der Höhen: {said}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Dates: {said}</source>
        <translation>Daten: {said}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>High or low water: {said}</source>
        <translation>Hoch- oder Niedrigwasser: {said}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Kept: {said}</source>
        <translation>Behalten: {said}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Cells parted by: {separator}</source>
        <translation>Zellen getrennt durch: {separator}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Columns: constituent {constituent}, amplitude {amplitude}, phase {phase}</source>
        <translation>Spalten: Teiltide {constituent}, Amplitude {amplitude}, Phase {phase}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Column {number} '{heading}': taken for {role}</source>
        <translation>Spalte {number} „{heading}“: genommen für {role}</translation>
    </message>
    <message>
        <location filename="../layers_in/tide_sentences.py"/>
        <source>Row {number}: {values}</source>
        <translation>Zeile {number}: {values}</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <location filename="../processing/readstreams.py"/>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <source>Asked for the tides of port '{port}'</source>
        <translation>Verlangt sind die Gezeiten des Orts „{port}“</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <location filename="../layers_in/tides_reading.py"/>
        <source>No port was named</source>
        <translation>Es ist kein Ort genannt</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <source>The plan has tides of {ports}</source>
        <translation>Der Plan hat Gezeiten von {ports}</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <source>The plan has tides of no port</source>
        <translation>Der Plan hat von keinem Ort Gezeiten</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <source>Name one of them in PORT</source>
        <translation>Einen davon in PORT nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <source>Asked for the {form} of port '{chosen}'</source>
        <translation>Verlangt ist {form} für den Ort „{chosen}“</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <source>The plan has none in {layer}</source>
        <translation>In {layer} des Plans steht davon nichts</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_export.py"/>
        <source>Choose another FORM</source>
        <translation>Eine andere FORM wählen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>The tide of port '{port}' is given as {form}, and the plan has no rows for it: its tide is unknown.</source>
        <translation>Die Tide des Orts „{port}“ ist als {form} angegeben, und der Plan hat keine Zeilen dafür: Seine Tide ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>Port '{port}' is given as {form} in tide_ports: its rows in tides are not used.</source>
        <translation>Der Ort „{port}“ ist in tide_ports als {form} angegeben: Seine Zeilen in tides werden nicht verwendet.</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>Row {number} gives that port</source>
        <translation>Zeile {number} gibt diesen Ort an</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>the plan</source>
        <translation>der Plan</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>The constants of port '{port}' have no mean level above the plan's datum: heights are counted from 0.</source>
        <translation>Die Konstanten des Orts „{port}“ haben keinen mittleren Stand über dem Bezugsniveau des Plans: Höhen zählen von 0.</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>A secondary port refers to one with a tide of its own: {names}</source>
        <translation>Ein Anschlussort bezieht sich auf einen mit eigener Tide: {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>there is none</source>
        <translation>es gibt keinen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>Correct the name or add that port's tides</source>
        <translation>Den Namen berichtigen oder die Gezeiten jenes Orts ergänzen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>The settings name the port '{asked_port}' for the height of tide</source>
        <translation>Die Einstellungen nennen den Ort „{asked_port}“ für den Wasserstand</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>The plan has tides of {names}</source>
        <translation>Der Plan hat Gezeiten von {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>no port</source>
        <translation>keinem Ort</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>Correct the setting 'port' or add that port's tides</source>
        <translation>Die Einstellung „port“ berichtigen oder die Gezeiten jenes Orts ergänzen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>The tides table has several ports ({names}): name one in the setting 'port' to get depths.</source>
        <translation>Die Gezeitentafel hat mehrere Orte ({names}): einen in der Einstellung „port“ nennen, um Tiefen zu bekommen.</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_in.py"/>
        <source>Row {number} of '{name}' has the same time</source>
        <translation>Zeile {number} von „{name}“ hat dieselbe Zeit</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>a water beside a gap, after which comes another of its kind</source>
        <translation>ein Hoch- oder Niedrigwasser neben einer Lücke, nach der noch eines derselben Art kommt</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>The file {path} cannot be read ({error})</source>
        <translation>Die Datei {path} ist nicht lesbar ({error})</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>The file {path} is large</source>
        <translation>Die Datei {path} ist groß</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Up to {most} bytes are read</source>
        <translation>Bis zu {most} Bytes werden gelesen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>The file {path} is no text in UTF-8</source>
        <translation>Die Datei {path} ist kein Text in UTF-8</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Text, CSV and JSON are read</source>
        <translation>Text, CSV und JSON werden gelesen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Save it as UTF-8</source>
        <translation>Als UTF-8 speichern</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Its heights never turn</source>
        <translation>Die Höhen kehren nie um</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Read a longer series, or keep the curve itself</source>
        <translation>Eine längere Reihe lesen, oder die Kurve selbst behalten</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>{count} high and low waters found on {heights} heights</source>
        <translation>{count} Hoch- und Niedrigwasser auf {heights} Höhen gefunden</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>This form of tide belongs to a named port</source>
        <translation>Diese Form von Gezeiten gehört zu einem genannten Ort</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Give PORT</source>
        <translation>PORT angeben</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>The table names the port '{named}', PORT says '{asked}'</source>
        <translation>Die Tabelle nennt den Ort „{named}“, PORT sagt „{asked}“</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>They are one and the same</source>
        <translation>Es ist ein und derselbe</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Correct PORT or leave it empty</source>
        <translation>PORT berichtigen oder leer lassen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Got DATUM_OFFSET {offset_m}</source>
        <translation>DATUM_OFFSET ist {offset_m}</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>A secondary port's heights are the reference port's with differences added</source>
        <translation>Die Höhen eines Anschlussorts sind die des Bezugsorts plus Unterschiede</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Leave DATUM_OFFSET empty and add it to the height differences</source>
        <translation>DATUM_OFFSET leer lassen und ihn zu den Höhenunterschieden zählen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>The plan {plan} has no table {name}</source>
        <translation>Der Plan {plan} hat keine Tabelle {name}</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Plans of this version have it</source>
        <translation>Pläne dieser Version haben sie</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>{name} says {value} for port '{port}'</source>
        <translation>{name} sagt {value} für den Ort „{port}“</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Delete the plan's row of that port, or name the port otherwise</source>
        <translation>Die Zeile jenes Orts im Plan löschen, oder den Ort anders nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Port '{port}' is given so in the plan; this table gives it as {given}, which would not be used</source>
        <translation>Der Ort „{port}“ steht so im Plan; diese Tabelle gibt ihn als {given}, was nicht benutzt würde</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>The plan's {layer} has {value} for {key}</source>
        <translation>In {layer} des Plans steht {value} für {key}</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>Delete the plan's row, or name the port otherwise</source>
        <translation>Die Zeile des Plans löschen, oder den Ort anders nennen</translation>
    </message>
    <message>
        <location filename="../layers_in/tides_reading.py"/>
        <source>{count} skipped ({reason}): rows {rows}</source>
        <translation>{count} übergangen ({reason}): Zeilen {rows}</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_asked.py"/>
        <source>Asked for transits of the mark '{name}'</source>
        <translation>Verlangt sind Deckpeilungen der Marke „{name}“</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_asked.py"/>
        <source>Asked for transits of all of kind mark</source>
        <translation>Verlangt sind Deckpeilungen aller der Art Marke</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_asked.py"/>
        <source>The marks layer has {names}, none of that kind</source>
        <translation>Der Layer der Marken hat {names}, keine dieser Art</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_asked.py"/>
        <source>Name one of them, or add the mark</source>
        <translation>Eine davon nennen, oder die Marke ergänzen</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_asked.py"/>
        <source>A layer of landmarks has a field of text with their names</source>
        <translation>Ein Layer mit Landmarken hat ein Textfeld mit ihren Namen</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_asked.py"/>
        <source>Add one, or choose another layer</source>
        <translation>Eines ergänzen, oder einen anderen Layer wählen</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_asked.py"/>
        <source>Layer '{layer}': {unnamed} of {count} rows give no landmark: they have nothing in the field '{field}', or no place.</source>
        <translation>Layer „{layer}“: {unnamed} von {count} Zeilen ergeben keine Landmarke: Im Feld „{field}“ steht nichts, oder der Ort fehlt.</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_in.py"/>
        <source>This transit is left out.</source>
        <translation>Diese Deckpeilung fehlt.</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_in.py"/>
        <source>The layer {layer} has {count} of that name</source>
        <translation>Der Layer {layer} hat {count} dieses Namens</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_in.py"/>
        <source>The layer {layer} has {names}</source>
        <translation>Der Layer {layer} hat {names}</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_in.py"/>
        <source>Correct the name, or add what it names</source>
        <translation>Den Namen berichtigen, oder ergänzen, was er nennt</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_in.py"/>
        <source>Layer '{name}', row {number}: the line begins {away_m:.0f} m from {mark}. Its names count: draw it anew.</source>
        <translation>Layer „{name}“, Zeile {number}: Die Linie beginnt {away_m:.0f} m von {mark}. Es gelten ihre Namen: neu zeichnen.</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_kept.py"/>
        <source>No transits of {mark} were put into the plan: {reason}.</source>
        <translation>Keine Deckpeilungen von {mark} in den Plan geschrieben: {reason}.</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_kept.py"/>
        <source>it has some already</source>
        <translation>es hat schon welche</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_kept.py"/>
        <source>no pair was found</source>
        <translation>kein Paar gefunden</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_kept.py"/>
        <source>{count} landmarks are called {name}; give each a name of its own</source>
        <translation>{count} Landmarken heißen {name}; jeder einen eigenen Namen geben</translation>
    </message>
    <message>
        <location filename="../layers_in/transits_kept.py"/>
        <source>the plan has another landmark called {name}, {metres:.0f} m from this one</source>
        <translation>der Plan hat eine andere Landmarke {name}, {metres:.0f} m von dieser</translation>
    </message>
    <message>
        <location filename="../layers_in/whole_shapes.py"/>
        <location filename="../plan_package/row_check.py"/>
        <source>no geometry</source>
        <translation>keine Geometrie</translation>
    </message>
    <message>
        <location filename="../layers_in/whole_shapes.py"/>
        <source>mixed geometry collection</source>
        <translation>gemischte Geometriesammlung</translation>
    </message>
    <message>
        <location filename="../layers_in/whole_shapes.py"/>
        <source>geometry without extent</source>
        <translation>Geometrie ohne Ausdehnung</translation>
    </message>
    <message>
        <location filename="../layers_in/whole_text.py"/>
        <source>The {what} {path} could not be written ({why})</source>
        <translation>{path} ({what}) konnte nicht geschrieben werden ({why})</translation>
    </message>
    <message>
        <location filename="../layers_in/whole_text.py"/>
        <source>Choose another place for {parameter}</source>
        <translation>Einen anderen Ort für {parameter} wählen</translation>
    </message>
    <message>
        <location filename="../layers_out/confidence_layers.py"/>
        <source>the planned return</source>
        <translation>die geplante Rückkehr</translation>
    </message>
    <message>
        <location filename="../layers_out/confidence_layers.py"/>
        <source>the stop</source>
        <translation>der Halt</translation>
    </message>
    <message>
        <location filename="../layers_out/confidence_layers.py"/>
        <source>Home by {} ({}): {} of 100.</source>
        <translation>Zurück bis {} ({}): {} von 100.</translation>
    </message>
    <message>
        <location filename="../layers_out/confidence_layers.py"/>
        <source>{}: planned {}, 10 of 100 by {}, half by {}, 90 of 100 by {}.</source>
        <translation>{}: geplant {}, 10 von 100 bis {}, die Hälfte bis {}, 90 von 100 bis {}.</translation>
    </message>
    <message>
        <location filename="../layers_out/confidence_layers.py"/>
        <source>Leg {} to {} fails in {} of {}: {}.</source>
        <translation>Abschnitt {} nach {} misslingt bei {} von {}: {}.</translation>
    </message>
    <message>
        <location filename="../layers_out/confidence_layers.py"/>
        <source>{} leaves the last mark by {}.</source>
        <translation>{} verlässt die letzte Marke bis {}.</translation>
    </message>
    <message>
        <location filename="../layers_out/confidence_layers.py"/>
        <source>{} members. {}.</source>
        <translation>{} Schwimmgänge. {}.</translation>
    </message>
    <message>
        <location filename="../layers_out/confidence_layers.py"/>
        <location filename="../layers_out/turn_back_layers.py"/>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <location filename="../layers_out/order_layer.py"/>
        <source>Leave {}.</source>
        <translation>Start {}.</translation>
    </message>
    <message>
        <location filename="../layers_out/order_layer.py"/>
        <source>Best order {}</source>
        <translation>Beste Reihenfolge {}</translation>
    </message>
    <message>
        <location filename="../layers_out/order_layer.py"/>
        <source>Order {} of {}</source>
        <translation>Reihenfolge {} von {}</translation>
    </message>
    <message>
        <location filename="../layers_out/order_layer.py"/>
        <source>{}. {}: leave {}, home {}, {} min</source>
        <translation>{}. {}: Start {}, zurück {}, {} min</translation>
    </message>
    <message>
        <location filename="../layers_out/order_layer.py"/>
        <source>Not feasible: {}. {}</source>
        <translation>Nicht machbar: {}. {}</translation>
    </message>
    <message>
        <location filename="../layers_out/order_layer.py"/>
        <source>No order can be swum. The shortest one is stopped by: {}</source>
        <translation>Keine Reihenfolge ist schwimmbar. Die kürzeste wird verhindert von: {}</translation>
    </message>
    <message>
        <location filename="../layers_out/order_styles.py"/>
        <source>Order shown</source>
        <translation>Gezeigte Reihenfolge</translation>
    </message>
    <message>
        <location filename="../layers_out/order_styles.py"/>
        <source>Stops in this order</source>
        <translation>Halte in dieser Reihenfolge</translation>
    </message>
    <message>
        <location filename="../layers_out/path_layer.py"/>
        <source>Leave {}, {} min.</source>
        <translation>Start {}, {} min.</translation>
    </message>
    <message>
        <location filename="../layers_out/path_layer.py"/>
        <source>{} legs, {} m, {} min; straight: {}; steering anew all the time: {} min</source>
        <translation>{} Abschnitte, {} m, {} min; gerade: {}; ständig neu gesteuert: {} min</translation>
    </message>
    <message>
        <location filename="../layers_out/path_layer.py"/>
        <location filename="../layers_out/styling.py"/>
        <source>not swimmable</source>
        <translation>nicht schwimmbar</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_band_styles.py"/>
        <source>Time to stay</source>
        <translation>Zeit zu bleiben</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_band_styles.py"/>
        <source>Minutes out (lines)</source>
        <translation>Minuten hinaus (Linien)</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_band_styles.py"/>
        <source>There and home in time, by minutes out</source>
        <translation>Hin und rechtzeitig zurück, nach Minuten hinaus</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_bands.py"/>
        <source>out in up to {} min</source>
        <translation>hinaus in bis zu {} min</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_bands.py"/>
        <source>out in {} to {} min</source>
        <translation>hinaus in {} bis {} min</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_layers.py"/>
        <source>out in {} min</source>
        <translation>hinaus in {} min</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_layers.py"/>
        <source>time to stay {} min and be home by {}</source>
        <translation>Zeit, {} min zu bleiben und bis {} zurück zu sein</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_layers.py"/>
        <source>Time to stay {} min and be home by {}: {} square kilometres</source>
        <translation>Zeit, {} min zu bleiben und bis {} zurück zu sein: {} Quadratkilometer</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_layers.py"/>
        <source>{}: there in {} min (one heading {}), leave by {} (one heading {}), to {}</source>
        <translation>{}: dort in {} min (ein Kurs {}), weg bis {} (ein Kurs {}), nach {}</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_rasters.py"/>
        <source>Could not write the raster {}</source>
        <translation>Das Raster {} konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <location filename="../layers_out/reach_rasters.py"/>
        <source>Rasters go to files that can be written to</source>
        <translation>Raster kommen in Dateien, die beschreibbar sind</translation>
    </message>
    <message>
        <location filename="../layers_out/stream_layer.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Slack</source>
        <translation>Stauwasser</translation>
    </message>
    <message>
        <location filename="../layers_out/stream_layer.py"/>
        <source>Least rate</source>
        <translation>Kleinste Stärke</translation>
    </message>
    <message>
        <location filename="../layers_out/stream_layer.py"/>
        <source>Greatest rate</source>
        <translation>Größte Stärke</translation>
    </message>
    <message>
        <location filename="../layers_out/stream_layer.py"/>
        <source>{} to {}: {} min at or below {} kn</source>
        <translation>{} bis {}: {} min bei oder unter {} kn</translation>
    </message>
    <message>
        <location filename="../layers_out/stream_layer.py"/>
        <source>The stream is not known here on that day: look at stations, tides and their dates.</source>
        <translation>Der Strom ist hier an diesem Tag nicht bekannt: Stationen, Gezeiten und ihre Tage ansehen.</translation>
    </message>
    <message>
        <location filename="../layers_out/stream_layer.py"/>
        <source>Not known at {} of {} times.</source>
        <translation>Nicht bekannt zu {} von {} Zeiten.</translation>
    </message>
    <message>
        <location filename="../layers_out/stream_layer.py"/>
        <source>Extrapolated at {} of {} times: allow for more stream.</source>
        <translation>Extrapoliert zu {} von {} Zeiten: mit mehr Strom rechnen.</translation>
    </message>
    <message>
        <location filename="../layers_out/styles/plan_symbols.py"/>
        <source>other</source>
        <translation>andere</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Cannot be swum</source>
        <translation>Nicht schwimmbar</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Stream to, true</source>
        <translation>Strom nach, rechtweisend</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Knots</source>
        <translation>Knoten</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Swum</source>
        <translation>Geschwommen</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Off the ruler line, m</source>
        <translation>Neben der geraden Linie, m</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Crossing</source>
        <translation>Querung</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Closed</source>
        <translation>Gesperrt</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Land</source>
        <translation>Land</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Over range</source>
        <translation>Zu weit</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Over time</source>
        <translation>Zu lange</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Not swimmable</source>
        <translation>Nicht schwimmbar</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Shoal</source>
        <translation>Flach</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Too deep</source>
        <translation>Zu tief</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <location filename="../layers_out/time_styles.py"/>
        <location filename="../map_tools/readings.py"/>
        <source>Stream not known</source>
        <translation>Strom nicht bekannt</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Stream extrapolated</source>
        <translation>Strom extrapoliert</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Tide not known</source>
        <translation>Gezeit nicht bekannt</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Waypoint</source>
        <translation>Wegpunkt</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>After {} min</source>
        <translation>Nach {} min</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Reached in so many minutes</source>
        <translation>Erreicht in so vielen Minuten</translation>
    </message>
    <message>
        <location filename="../layers_out/styling.py"/>
        <source>Time to stay and be home</source>
        <translation>Zeit, zu bleiben und zurück zu sein</translation>
    </message>
    <message>
        <location filename="../layers_out/time_layers.py"/>
        <source>slack, below {} kn</source>
        <translation>Stauwasser, unter {} kn</translation>
    </message>
    <message>
        <location filename="../layers_out/time_layers.py"/>
        <source>to {}°, {} kn</source>
        <translation>nach {}°, {} kn</translation>
    </message>
    <message>
        <location filename="../layers_out/time_layers.py"/>
        <source>{}, extrapolated</source>
        <translation>{}, extrapoliert</translation>
    </message>
    <message>
        <location filename="../layers_out/time_layers.py"/>
        <source>time not known</source>
        <translation>Zeit nicht bekannt</translation>
    </message>
    <message>
        <location filename="../layers_out/time_styles.py"/>
        <source>Swimmer, at the time shown</source>
        <translation>Schwimmer, zur gezeigten Zeit</translation>
    </message>
    <message>
        <location filename="../layers_out/time_styles.py"/>
        <source>Every {} minutes, while no time is shown</source>
        <translation>Alle {} Minuten, solange keine Zeit gezeigt wird</translation>
    </message>
    <message>
        <location filename="../layers_out/time_styles.py"/>
        <source>tide</source>
        <translation>Gezeit</translation>
    </message>
    <message>
        <location filename="../layers_out/time_styles.py"/>
        <source>Stream goes this way; longer is faster</source>
        <translation>Der Strom setzt hierhin; länger ist schneller</translation>
    </message>
    <message>
        <location filename="../layers_out/time_styles.py"/>
        <source>Slack, below 0.1 kn</source>
        <translation>Stauwasser, unter 0.1 kn</translation>
    </message>
    <message>
        <location filename="../layers_out/transits_layer.py"/>
        <source>passes over the mark</source>
        <translation>geht über die Marke</translation>
    </message>
    <message>
        <location filename="../layers_out/transits_layer.py"/>
        <source>passes {} m to the right of the mark</source>
        <translation>geht {} m rechts der Marke vorbei</translation>
    </message>
    <message>
        <location filename="../layers_out/transits_layer.py"/>
        <source>passes {} m to the left of the mark</source>
        <translation>geht {} m links der Marke vorbei</translation>
    </message>
    <message>
        <location filename="../layers_out/transits_layer.py"/>
        <source>{} in line with {}, {} magnetic; {}; opens visibly {} m off the line</source>
        <translation>{} in Linie mit {}, missweisend {}; {}; öffnet sich sichtbar {} m neben der Linie</translation>
    </message>
    <message>
        <location filename="../layers_out/transits_layer.py"/>
        <source>{}, pair {}: crosses at {} degrees, fixes to about {} m</source>
        <translation>{}, Paar {}: kreuzt sich unter {} Grad, auf etwa {} m genau</translation>
    </message>
    <message>
        <location filename="../layers_out/turn_back_layers.py"/>
        <source>Ashore before: {}</source>
        <translation>An Land vor: {}</translation>
    </message>
    <message>
        <location filename="../layers_out/turn_back_layers.py"/>
        <source>{}: leave between {} and {} (to {}); then {}</source>
        <translation>{}: weg zwischen {} und {} (nach {}); dann {}</translation>
    </message>
    <message>
        <location filename="../layers_out/turn_back_layers.py"/>
        <source>{}: leave at {}: exit {}, heading {}, {} min{}</source>
        <translation>{}: weg um {}: Ausstieg {}, Kurs {}, {} min{}</translation>
    </message>
    <message>
        <location filename="../layers_out/turn_back_layers.py"/>
        <source> - too late</source>
        <translation> - zu spät</translation>
    </message>
    <message>
        <location filename="../layers_out/turn_back_layers.py"/>
        <source>{}: no exit is reached with the reserve kept.</source>
        <translation>{}: kein Ausstieg wird mit der Reserve erreicht.</translation>
    </message>
    <message>
        <location filename="../layers_out/turn_back_layers.py"/>
        <source>{}: turn back by {} at the latest, to {}; on a bad day by {}</source>
        <translation>{}: Umkehr spätestens {}, nach {}; an einem schlechten Tag {}</translation>
    </message>
    <message>
        <location filename="../layers_out/window_layers.py"/>
        <source>No departure can be swum. Stopped by: {}</source>
        <translation>Keine Startzeit ist schwimmbar. Verhindert von: {}</translation>
    </message>
    <message>
        <location filename="../layers_out/window_layers.py"/>
        <source>{}. {}: longest window {} min, best departure {}, {} min</source>
        <translation>{}. {}: längstes Zeitfenster {} min, beste Startzeit {}, {} min</translation>
    </message>
    <message>
        <location filename="../layers_out/window_layers.py"/>
        <source>{} {}-{}, best {} ({} min). Before: {}. After: {}</source>
        <translation>{} {}-{}, am besten {} ({} min). Davor: {}. Danach: {}</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>New Route</source>
        <translation>Neue Route</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Draw route</source>
        <translation>Route zeichnen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Click the stops in swimming order, from the entry to the exit.</source>
        <translation>Die Halte in der Reihenfolge des Schwimmens anklicken, vom Einstieg bis zum Ausstieg.</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Channel</source>
        <translation>Fahrwasser</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>New Channel</source>
        <translation>Neues Fahrwasser</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Draw channel</source>
        <translation>Fahrwasser zeichnen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Click along the middle of the channel; its width is asked for afterwards.</source>
        <translation>Längs der Mitte des Fahrwassers klicken; nach der Breite wird danach gefragt.</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Click the corners of the channel.</source>
        <translation>Die Ecken des Fahrwassers anklicken.</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>New Closed Area</source>
        <translation>Neues Sperrgebiet</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Draw closed area</source>
        <translation>Sperrgebiet zeichnen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Click the corners of the area; its rule is asked for afterwards.</source>
        <translation>Die Ecken des Gebiets anklicken; nach der Regel wird danach gefragt.</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>New Eddy Area</source>
        <translation>Neuer Neerstrom</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Draw eddy area</source>
        <translation>Neerstrom zeichnen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Click the corners of the area in which one stream station alone rules.</source>
        <translation>Die Ecken der Fläche anklicken, in der eine Stromstation allein gilt.</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <location filename="../map_tools/place_point.py"/>
        <source>Esc ends.</source>
        <translation>Esc beendet.</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Right click or Enter finishes, Backspace takes the last one back, Esc drops it.</source>
        <translation>Rechtsklick oder Eingabetaste schließt ab, Rücktaste nimmt den letzten zurück, Esc verwirft.</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Add Stop There</source>
        <translation>Halt dort anfügen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Add Vertex There</source>
        <translation>Stützpunkt dort setzen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Remove Last Stop</source>
        <translation>Letzten Halt entfernen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <location filename="../map_tools/plan_tool.py"/>
        <source>Remove Last Vertex</source>
        <translation>Letzten Stützpunkt entfernen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>In all {}</source>
        <translation>Insgesamt {}</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>{} of {} vertices are drawn</source>
        <translation>{} von {} Stützpunkten sind gezeichnet</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>An area has three corners or more, a line two vertices or more</source>
        <translation>Eine Fläche hat drei Ecken oder mehr, eine Linie zwei Stützpunkte oder mehr</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Click the next one, or press Esc to drop it</source>
        <translation>Den nächsten anklicken oder mit Esc verwerfen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>The edges of the area cross each other</source>
        <translation>Die Ränder der Fläche kreuzen einander</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>An area is bounded by a line that does not cross itself</source>
        <translation>Eine Fläche hat einen Rand, der sich nicht kreuzt</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Take the last corners back with Backspace</source>
        <translation>Die letzten Ecken mit der Rücktaste zurücknehmen</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>The plan has no stream station</source>
        <translation>Der Plan hat keine Stromstation</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>An eddy area takes its stream from a station</source>
        <translation>Ein Neerstrom nimmt seinen Strom von einer Station</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Place the station first, with Stream Station</source>
        <translation>Zuerst die Station setzen, mit Stromstation</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>{} corners</source>
        <translation>{} Ecken</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>{} vertices, {}</source>
        <translation>{} Stützpunkte, {}</translation>
    </message>
    <message>
        <location filename="../map_tools/draw_line.py"/>
        <source>Snapped to: {}</source>
        <translation>Gefangen an: {}</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>Drag a stop, or a leg to put a stop into it. Backspace takes out the stop below the cursor. Esc ends.</source>
        <translation>Einen Halt ziehen, oder einen Abschnitt, um einen Halt einzufügen. Rücktaste nimmt den Halt unter dem Mauszeiger heraus. Esc beendet.</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>Click where the stop goes, or type its position. Backspace takes it out, Esc leaves it where it was.</source>
        <translation>Klicken, wohin der Halt kommt, oder seine Position eingeben. Rücktaste nimmt ihn heraus, Esc lässt ihn, wo er war.</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>Move Stop There</source>
        <translation>Halt dorthin verschieben</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>Take Out Stop</source>
        <translation>Halt herausnehmen</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>Put stop into route</source>
        <translation>Halt in die Route einfügen</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>Move stop</source>
        <translation>Halt verschieben</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>Take stop out of route</source>
        <translation>Halt aus der Route nehmen</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>New stop here</source>
        <translation>Neuer Halt hier</translation>
    </message>
    <message>
        <location filename="../map_tools/edit_route.py"/>
        <source>Stop {}</source>
        <translation>Halt {}</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>QGIS did not take the change into the layer '{}'</source>
        <translation>QGIS hat die Änderung nicht in den Layer „{}“ übernommen</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>What is changed must still be there</source>
        <translation>Was geändert wird, muss noch da sein</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>Look at the layer and try again; nothing was changed</source>
        <translation>Den Layer ansehen und noch einmal versuchen; nichts wurde geändert</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>A route of two stops cannot lose one</source>
        <translation>Eine Route mit zwei Halten kann keinen verlieren</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>A route has two stops or more</source>
        <translation>Eine Route hat zwei Halte oder mehr</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>Move the stop, or delete the whole route in QGIS</source>
        <translation>Den Halt verschieben, oder die ganze Route in QGIS löschen</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>The layer '{}' cannot be edited</source>
        <translation>Der Layer „{}“ kann nicht bearbeitet werden</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>It must not be read-only, and its file must be writable and not held by another program</source>
        <translation>Er darf nicht schreibgeschützt sein, und seine Datei muss beschreibbar und von keinem anderen Programm belegt sein</translation>
    </message>
    <message>
        <location filename="../map_tools/edits.py"/>
        <source>Allow editing in the project's properties or free the file, then try again</source>
        <translation>In den Projekteigenschaften das Bearbeiten erlauben oder die Datei freigeben, dann noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../map_tools/lost_stops.py"/>
        <source>'{route}' no longer stops at {mark}</source>
        <translation>'{route}' hält nicht mehr bei {mark}</translation>
    </message>
    <message>
        <location filename="../map_tools/lost_stops.py"/>
        <source>Stop {number} of '{route}' no longer lies at {mark}</source>
        <translation>Halt {number} von '{route}' liegt nicht mehr bei {mark}</translation>
    </message>
    <message>
        <location filename="../map_tools/lost_stops.py"/>
        <source>its stay of {stay} min is gone</source>
        <translation>sein Aufenthalt von {stay} min ist weg</translation>
    </message>
    <message>
        <location filename="../map_tools/mark_lines.py"/>
        <source>Place an entry to see distance and bearing from it</source>
        <translation>Einen Einstieg setzen, um Abstand und Peilung von ihm zu sehen</translation>
    </message>
    <message>
        <location filename="../map_tools/measure_leg.py"/>
        <source>Click where the leg starts. Nothing is drawn into the plan. Esc ends.</source>
        <translation>Klicken, wo der Abschnitt beginnt. In den Plan wird nichts gezeichnet. Esc beendet.</translation>
    </message>
    <message>
        <location filename="../map_tools/measure_leg.py"/>
        <source>Click where the leg ends. Esc drops it.</source>
        <translation>Klicken, wo der Abschnitt endet. Esc verwirft ihn.</translation>
    </message>
    <message>
        <location filename="../map_tools/measure_leg.py"/>
        <source>Start There</source>
        <translation>Dort beginnen</translation>
    </message>
    <message>
        <location filename="../map_tools/measure_leg.py"/>
        <source>End There</source>
        <translation>Dort enden</translation>
    </message>
    <message>
        <location filename="../map_tools/measure_leg.py"/>
        <source>To {}</source>
        <translation>Nach {}</translation>
    </message>
    <message>
        <location filename="../map_tools/move_mark.py"/>
        <source>Drag a mark to its new place, or click it. Esc ends.</source>
        <translation>Eine Marke an ihren neuen Ort ziehen oder sie anklicken. Esc beendet.</translation>
    </message>
    <message>
        <location filename="../map_tools/move_mark.py"/>
        <location filename="../map_tools/place_point.py"/>
        <source>Click where '{}' goes, or type its position. Esc leaves it where it was.</source>
        <translation>Klicken, wohin „{}“ kommt, oder die Position eingeben. Esc lässt sie, wo sie war.</translation>
    </message>
    <message>
        <location filename="../map_tools/move_mark.py"/>
        <source>Move Mark There</source>
        <translation>Marke dorthin verschieben</translation>
    </message>
    <message>
        <location filename="../map_tools/move_mark.py"/>
        <source>Move mark</source>
        <translation>Marke verschieben</translation>
    </message>
    <message>
        <location filename="../map_tools/move_mark.py"/>
        <source>Move stops with mark</source>
        <translation>Halte mit der Marke verschieben</translation>
    </message>
    <message>
        <location filename="../map_tools/move_mark.py"/>
        <source>Stops of routes that came along: {}.</source>
        <translation>Halte von Routen, die mitgekommen sind: {}.</translation>
    </message>
    <message>
        <location filename="../map_tools/move_mark.py"/>
        <source>Stops of routes that stay at its old place: {}. Move them with Edit Route.</source>
        <translation>Halte von Routen, die am alten Ort bleiben: {}. Mit Route ändern verschieben.</translation>
    </message>
    <message>
        <location filename="../map_tools/place_mark.py"/>
        <source>Click where the mark goes, or type its position. Esc ends.</source>
        <translation>Klicken, wohin die Marke kommt, oder ihre Position eingeben. Esc beendet.</translation>
    </message>
    <message>
        <location filename="../map_tools/place_mark.py"/>
        <source>Place Mark There</source>
        <translation>Marke dort setzen</translation>
    </message>
    <message>
        <location filename="../map_tools/place_mark.py"/>
        <source>New Mark</source>
        <translation>Neue Marke</translation>
    </message>
    <message>
        <location filename="../map_tools/place_mark.py"/>
        <source>Place mark</source>
        <translation>Marke setzen</translation>
    </message>
    <message>
        <location filename="../map_tools/place_point.py"/>
        <source>A click or a drag moves it</source>
        <translation>Ein Klick oder Ziehen versetzt sie</translation>
    </message>
    <message>
        <location filename="../map_tools/places.py"/>
        <source>This place of the map is not on the globe</source>
        <translation>Dieser Ort der Karte liegt nicht auf dem Globus</translation>
    </message>
    <message>
        <location filename="../map_tools/places.py"/>
        <source>Move the map back over the plan</source>
        <translation>Die Karte zurück über den Plan schieben</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Click where the stream is known, or type its position. Drag a station to move it.</source>
        <translation>Klicken, wo der Strom bekannt ist, oder die Position eingeben. Eine Station ziehen, um sie zu versetzen.</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Place Station There</source>
        <translation>Station dort setzen</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Move Station There</source>
        <translation>Station dorthin</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Move stream station</source>
        <translation>Stromstation versetzen</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Click where a landmark stands, or type its position. Drag one to move it.</source>
        <translation>Klicken, wo eine Landmarke steht, oder die Position eingeben. Eine ziehen, um sie zu versetzen.</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Place Landmark There</source>
        <translation>Landmarke dort setzen</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Move Landmark There</source>
        <translation>Landmarke dorthin</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Move landmark</source>
        <translation>Landmarke versetzen</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <location filename="../processing/readstreams.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Station</source>
        <translation>Station</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>New Stream Station</source>
        <translation>Neue Stromstation</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Place stream station</source>
        <translation>Stromstation setzen</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>The neap range of {:g} m is not below the spring range of {:g} m</source>
        <translation>Der Nipptidenhub von {:g} m ist nicht kleiner als der Springtidenhub von {:g} m</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>New Landmark</source>
        <translation>Neue Landmarke</translation>
    </message>
    <message>
        <location filename="../map_tools/placings.py"/>
        <source>Place landmark</source>
        <translation>Landmarke setzen</translation>
    </message>
    <message>
        <location filename="../map_tools/plan_tool.py"/>
        <source>The map shows no place yet</source>
        <translation>Die Karte zeigt noch keinen Ort</translation>
    </message>
    <message>
        <location filename="../map_tools/plan_tool.py"/>
        <source>Type a position, or add a map of the coast and go there</source>
        <translation>Tippe eine Position, oder füge eine Karte der Küste hinzu und geh dorthin</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>Charted depth not known:</source>
        <translation>Kartentiefe nicht bekannt:</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>On land</source>
        <translation>An Land</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>Charted depth {:.1f} m</source>
        <translation>Kartentiefe {:.1f} m</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>From {}: {}</source>
        <translation>Von {}: {}</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>{}° true</source>
        <translation>{}° rechtweisend</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>magnetic not known: {}</source>
        <translation>missweisend nicht bekannt: {}</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>{}° magnetic</source>
        <translation>{}° missweisend</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>the swim is being planned anew</source>
        <translation>die Tour wird neu geplant</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>Heading not known: {}</source>
        <translation>Kurs nicht bekannt: {}</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>Hold {} ({}° magnetic, {}° true)</source>
        <translation>Kurs {} ({}° missweisend, {}° rechtweisend)</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>The first of {} headings</source>
        <translation>Der erste von {} Kursen</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>{} min, leave {}, arrive {}</source>
        <translation>{} min, ab {}, an {}</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>{:.2f} m/s over the ground</source>
        <translation>{:.2f} m/s über Grund</translation>
    </message>
    <message>
        <location filename="../map_tools/readings.py"/>
        <source>Stream {:.1f} kn towards {}° true</source>
        <translation>Strom {:.1f} kn nach {}° rechtweisend</translation>
    </message>
    <message>
        <location filename="../map_tools/row_form.py"/>
        <source>'{}' is empty</source>
        <translation>„{}“ ist leer</translation>
    </message>
    <message>
        <location filename="../map_tools/row_form.py"/>
        <source>'{}' is there already</source>
        <translation>„{}“ ist schon da</translation>
    </message>
    <message>
        <location filename="../map_tools/row_form.py"/>
        <source>Choose one of: {}</source>
        <translation>Wähle eines davon: {}</translation>
    </message>
    <message>
        <location filename="../map_tools/row_form.py"/>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <location filename="../map_tools/row_form.py"/>
        <source>(choose)</source>
        <translation>(wählen)</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>The new plan {name} did not come out whole ({verdict})</source>
        <translation>Der neue Plan {name} ist nicht heil herausgekommen ({verdict})</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>The plan {path} was to be replaced while it is open</source>
        <translation>Der Plan {path} sollte ersetzt werden, während er offen ist</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>No other program or project may have it open</source>
        <translation>Kein anderes Programm oder Projekt darf ihn offen haben</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <location filename="../plan_package/placing.py"/>
        <source>Remove its layers from open projects and try again</source>
        <translation>Seine Layer aus offenen Projekten nehmen und noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>there is no such file</source>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>The plan {path} could not be written ({error})</source>
        <translation>Der Plan {path} konnte nicht geschrieben werden ({error})</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>Save or drop the edits of its layers and try again</source>
        <translation>Die Änderungen seiner Layer speichern oder verwerfen und noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>The plan {path} could not be read ({error})</source>
        <translation>Der Plan {path} konnte nicht gelesen werden ({error})</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>Another program is writing to it</source>
        <translation>Ein anderes Programm schreibt gerade hinein</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>Close it there, then try again</source>
        <translation>Ihn dort schließen, dann noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>The plan {path} could not be read ({reason})</source>
        <translation>Der Plan {path} konnte nicht gelesen werden ({reason})</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>A plan is one GeoPackage file</source>
        <translation>Ein Plan ist eine GeoPackage-Datei</translation>
    </message>
    <message>
        <location filename="../plan_package/database.py"/>
        <source>Check the path, or make a new plan</source>
        <translation>Den Pfad prüfen, oder einen neuen Plan anlegen</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>one of {names}, or another text</source>
        <translation>eines von {names}, oder ein anderer Text</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>one of {names}</source>
        <translation>eines von {names}</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>a date and time with its UTC offset</source>
        <translation>Datum und Uhrzeit mit Versatz zu UTC</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <location filename="../plan_package/odd_numbers.py"/>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <location filename="../plan_package/odd_numbers.py"/>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>{noun} above {low:g} to {high:g}{unit}</source>
        <translation>{noun} über {low:g} bis {high:g}{unit}</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>{noun} from {low:g} to {high:g}{unit}</source>
        <translation>{noun} von {low:g} bis {high:g}{unit}</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>{noun} above {low:g}{unit}</source>
        <translation>{noun} über {low:g}{unit}</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>{noun} of at least {low:g}{unit}</source>
        <translation>{noun}, mindestens {low:g}{unit}</translation>
    </message>
    <message>
        <location filename="../plan_package/field_spec.py"/>
        <source>{noun} of at most {high:g}{unit}</source>
        <translation>{noun}, höchstens {high:g}{unit}</translation>
    </message>
    <message>
        <location filename="../plan_package/geopackage.py"/>
        <source>The plan {path} could not be written ({said})</source>
        <translation>Der Plan {path} konnte nicht geschrieben werden ({said})</translation>
    </message>
    <message>
        <location filename="../plan_package/geopackage.py"/>
        <source>Check the folder's permissions and free space, end edits of its layers, and try again</source>
        <translation>Rechte des Ordners und freien Platz prüfen, Änderungen seiner Layer beenden und noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../plan_package/odd_numbers.py"/>
        <source>It is {noun}, or nothing at all (NULL)</source>
        <translation>Es ist {noun}, oder gar nichts (NULL)</translation>
    </message>
    <message>
        <location filename="../plan_package/odd_numbers.py"/>
        <source>Set it to NULL, which means unknown</source>
        <translation>Auf NULL setzen, das heißt unbekannt</translation>
    </message>
    <message>
        <location filename="../plan_package/odd_numbers.py"/>
        <source>Correct it, with a point before decimals</source>
        <translation>Berichtigen, mit einem Punkt vor den Nachkommastellen</translation>
    </message>
    <message>
        <location filename="../plan_package/offsets.py"/>
        <source>Times in this table are stored in UTC</source>
        <translation>Zeiten stehen in dieser Tabelle in UTC</translation>
    </message>
    <message>
        <location filename="../plan_package/offsets.py"/>
        <source>Store it in UTC, like 2027-06-05T09:40:00Z</source>
        <translation>In UTC ablegen, etwa 2027-06-05T09:40:00Z</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>The plan was to be written to {path}</source>
        <translation>Der Plan sollte nach {path} geschrieben werden</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>A plan is a GeoPackage and its name ends in {suffix}</source>
        <translation>Ein Plan ist ein GeoPackage, und sein Name endet auf {suffix}</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>Use {name}{suffix}</source>
        <translation>{name}{suffix} verwenden</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>The folder must exist</source>
        <translation>Den Ordner muss es geben</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>Make the folder {parent} or choose another</source>
        <translation>Den Ordner {parent} anlegen oder einen anderen wählen</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>The plan was to be written to {path}, which is already there</source>
        <translation>Der Plan sollte nach {path} geschrieben werden, und das gibt es schon</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>An existing plan is not written over unless that is asked for</source>
        <translation>Ein vorhandener Plan wird nur überschrieben, wenn das verlangt ist</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>Choose another name, or ask for the old plan to be replaced</source>
        <translation>Einen anderen Namen wählen, oder den alten Plan ersetzen lassen</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>The plan was to be written to {target} ({strerror})</source>
        <translation>Der Plan sollte nach {target} geschrieben werden ({strerror})</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>The folder must be writable</source>
        <translation>In den Ordner muss geschrieben werden können</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>The plan could not be put in place as {target} ({strerror})</source>
        <translation>Der Plan konnte nicht als {target} abgelegt werden ({strerror})</translation>
    </message>
    <message>
        <location filename="../plan_package/placing.py"/>
        <source>No other program may have the file open</source>
        <translation>Kein anderes Programm darf die Datei offen haben</translation>
    </message>
    <message>
        <location filename="../plan_package/project.py"/>
        <source>{} (lines)</source>
        <translation>{} (Linien)</translation>
    </message>
    <message>
        <location filename="../plan_package/project.py"/>
        <source>{} (areas)</source>
        <translation>{} (Flächen)</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>The layer has the fields {names}</source>
        <translation>Der Layer hat die Felder {names}</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Drop the value or give it one of these names</source>
        <translation>Den Wert weglassen oder ihm einen dieser Namen geben</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>The table holds no geometry</source>
        <translation>Die Tabelle hat keine Geometrie</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Pass None</source>
        <translation>None übergeben</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>A row needs a {geometry}</source>
        <translation>Eine Zeile braucht {geometry}</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Draw it or leave the row out</source>
        <translation>Zeichnen oder die Zeile weglassen</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>The field must be filled: {what}</source>
        <translation>Das Feld muss gefüllt sein: {what}</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Allowed is {what}</source>
        <translation>Erlaubt ist {what}</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Correct the value</source>
        <translation>Den Wert berichtigen</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Correct the value, or leave it empty</source>
        <translation>Den Wert berichtigen, oder leer lassen</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>latitude {lat:g}</source>
        <translation>Breite {lat:g}</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Latitude is from -90 to 90 deg</source>
        <translation>Die Breite liegt von -90 bis 90 Grad</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>longitude {lon:g}</source>
        <translation>Länge {lon:g}</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Longitude is from -360 to 360 deg</source>
        <translation>Die Länge liegt von -360 bis 360 Grad</translation>
    </message>
    <message>
        <location filename="../plan_package/row_check.py"/>
        <source>Reproject the layer to EPSG:4326, longitude before latitude</source>
        <translation>Den Layer nach EPSG:4326 umprojizieren, Länge vor Breite</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>Write a name of the IANA time zone list, such as Europe/Lisbon, Pacific/Auckland or UTC</source>
        <translation>Einen Namen aus der Zeitzonenliste der IANA schreiben, wie Europe/Lisbon, Pacific/Auckland oder UTC</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>The plan {path} has no such table: its time zone and reserve are not known</source>
        <translation>Der Plan {path} hat keine solche Tabelle: Seine Zeitzone und Reserve sind nicht bekannt</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>Bring the table back from a copy, or make a new plan</source>
        <translation>Die Tabelle aus einer Kopie zurückholen, oder einen neuen Plan anlegen</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>The settings are {names}</source>
        <translation>Einstellungen sind {names}</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>Use one of these keys</source>
        <translation>Einen dieser Schlüssel verwenden</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>The plan {path} is of version {version}, made by a newer plugin</source>
        <translation>Der Plan {path} hat Version {version}, von einer neueren Erweiterung</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>This plugin reads plans up to version {version}</source>
        <translation>Diese Erweiterung liest Pläne bis Version {version}</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>Update the plugin</source>
        <translation>Die Erweiterung aktualisieren</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>The path {path} has '{found}' in it, which QGIS reads as something else</source>
        <translation>Im Pfad {path} steht „{found}“, das QGIS als etwas anderes liest</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>Paths of plans have no | and no % before two figures or letters from A to F</source>
        <translation>Pfade von Plänen haben kein | und kein % vor zwei Ziffern oder Buchstaben von A bis F</translation>
    </message>
    <message>
        <location filename="../plan_package/settings.py"/>
        <source>Rename the file or the folder</source>
        <translation>Die Datei oder den Ordner umbenennen</translation>
    </message>
    <message>
        <location filename="../plan_package/store.py"/>
        <source>The file {path} must be a plan with this layer</source>
        <translation>Die Datei {path} muss ein Plan mit diesem Layer sein</translation>
    </message>
    <message>
        <location filename="../plan_package/store.py"/>
        <source>Make a new plan, or copy the file again if it is damaged</source>
        <translation>Einen neuen Plan anlegen, oder die Datei neu kopieren, wenn sie beschädigt ist</translation>
    </message>
    <message>
        <location filename="../plan_package/store.py"/>
        <source>The plan's layer lacks this field</source>
        <translation>Dem Layer des Plans fehlt dieses Feld</translation>
    </message>
    <message>
        <location filename="../plan_package/store.py"/>
        <source>Bring the plan up to date, or make a new one</source>
        <translation>Den Plan auf den neuesten Stand bringen, oder einen neuen anlegen</translation>
    </message>
    <message>
        <location filename="../plan_package/store.py"/>
        <source>A plan has the layers {names}</source>
        <translation>Ein Plan hat die Layer {names}</translation>
    </message>
    <message>
        <location filename="../plan_package/store.py"/>
        <source>Use one of these names</source>
        <translation>Einen dieser Namen verwenden</translation>
    </message>
    <message>
        <location filename="../plan_package/store.py"/>
        <source>The plan {path} lacks this layer</source>
        <translation>Dem Plan {path} fehlt dieser Layer</translation>
    </message>
    <message>
        <location filename="../plan_package/store.py"/>
        <source>Make a new plan, or bring this one up to date</source>
        <translation>Einen neuen Plan anlegen, oder diesen auf den neuesten Stand bringen</translation>
    </message>
    <message>
        <location filename="../plan_package/styles.py"/>
        <source>The style of layer {name} could not be stored in {path} ({refusal})</source>
        <translation>Der Stil des Layers {name} konnte nicht in {path} abgelegt werden ({refusal})</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <source>Order of marks</source>
        <translation>Reihenfolge der Marken</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <source>order,marks,best,departure,route,stream,tide</source>
        <translation>Reihenfolge,Marken,beste,Start,Route,Strom,Gezeiten</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <source>In which order to visit up to nine marks, staying at each, and when to leave, so that the time from the entry to the exit is the least: every order and every departure is weighed in the stream as it changes. The best orders are listed, each at its best departure; the best one comes as a route to edit.

Marks: their names with ; between them; empty for all of kind mark.
Entry, exit: names; an empty exit is the entry or whichever exit is best.
From, to: dates such as 2027-06-26, whole days by the plan's clock, or dates with times. The departures tried lie so many minutes apart.
Legs go round land and closed water. Where it pays to wait for the stream, a longer stay is told. Left out is what Plan swim would stop: darkness, land, closed water, a sailing, range, hours, a stream that is not known; and marks too deep or too shoal while you are there.

A prediction, not an observation; no reserve is kept: look at the turn-back times of the route before you go. Feasible is not safe; never dive alone. Not for the navigation of vessels.</source>
        <translation>In welcher Reihenfolge bis zu neun Marken zu besuchen sind, mit Bleiben an jeder, und wann zu starten ist, so dass die Zeit vom Einstieg zum Ausstieg am kürzesten wird: jede Reihenfolge und jede Startzeit wird im Strom, wie er sich ändert, abgewogen. Die besten Reihenfolgen werden aufgelistet, jede zu ihrer besten Startzeit; die beste kommt als Route zum Bearbeiten.

Marken: ihre Namen mit ; dazwischen; leer für alle der Art Marke.
Einstieg, Ausstieg: Namen; ein leerer Ausstieg ist der Einstieg oder der Ausstieg, der am besten ist.
Von, bis: Tage wie 2027-06-26, ganze Tage nach der Uhr des Plans, oder Tage mit Uhrzeiten. Die versuchten Startzeiten liegen so viele Minuten auseinander.
Abschnitte gehen um Land und gesperrtes Wasser herum. Wo es lohnt, auf den Strom zu warten, wird ein längeres Bleiben genannt. Ausgelassen ist, was „Tour planen“ stoppen würde: Dunkelheit, Land, gesperrtes Wasser, eine Fähre, Reichweite, Stunden, ein Strom, der nicht bekannt ist; und Marken, die zu jener Zeit zu tief oder zu flach sind.

Eine Vorhersage, keine Beobachtung; keine Reserve ist darin: vor dem Aufbruch die Umkehrzeiten der Route ansehen. Machbar heißt nicht sicher; nie allein tauchen. Nicht zur Navigation von Fahrzeugen.</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <source>Marks to visit (names with ; between them)</source>
        <translation>Zu besuchende Marken (Namen mit ; dazwischen)</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <location filename="../processing/departurewindows.py"/>
        <location filename="../processing/seasoncards.py"/>
        <source>From (date, or date and time)</source>
        <translation>Von (Datum, oder Datum und Uhrzeit)</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <location filename="../processing/departurewindows.py"/>
        <location filename="../processing/seasoncards.py"/>
        <source>To (date, or date and time)</source>
        <translation>Bis (Datum, oder Datum und Uhrzeit)</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <location filename="../processing/departurewindows.py"/>
        <location filename="../processing/seasoncards.py"/>
        <source>A departure every (min)</source>
        <translation>Eine Startzeit alle (min)</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <source>Orders to list</source>
        <translation>Reihenfolgen in der Liste</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <source>Best order as a route</source>
        <translation>Beste Reihenfolge als Route</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <source>Feasible</source>
        <translation>Machbar</translation>
    </message>
    <message>
        <location filename="../processing/bestorder.py"/>
        <source>Minutes of the best order</source>
        <translation>Minuten der besten Reihenfolge</translation>
    </message>
    <message>
        <location filename="../processing/card_look.py"/>
        <source>As the swim needs, from A5</source>
        <translation>Wie die Tour es braucht, ab A5</translation>
    </message>
    <message>
        <location filename="../processing/card_look.py"/>
        <source>As many as needed</source>
        <translation>So viele wie nötig</translation>
    </message>
    <message>
        <location filename="../processing/card_look.py"/>
        <source>One</source>
        <translation>Eine</translation>
    </message>
    <message>
        <location filename="../processing/card_look.py"/>
        <source>Two</source>
        <translation>Zwei</translation>
    </message>
    <message>
        <location filename="../processing/card_look.py"/>
        <source>Four (two cards)</source>
        <translation>Vier (zwei Karten)</translation>
    </message>
    <message>
        <location filename="../processing/card_look.py"/>
        <source>Paper of the wet card</source>
        <translation>Papier der Nasskarte</translation>
    </message>
    <message>
        <location filename="../processing/card_look.py"/>
        <source>Sides of the wet card, at most</source>
        <translation>Seiten der Nasskarte, höchstens</translation>
    </message>
    <message>
        <location filename="../processing/card_look.py"/>
        <source>Layout of your own for the wet card (print layout template)</source>
        <translation>Eigenes Layout der Nasskarte (Druckvorlage)</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>How sure is a plan</source>
        <translation>Wie sicher ist ein Plan</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>sure,spread,chance,probability,ellipse,dead reckoning,drift,leeway,search,group</source>
        <translation>sicher,Streuung,Chance,Wahrscheinlichkeit,Ellipse,Koppelnavigation,Drift,Abdrift,Suche,Gruppe</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>Swims a plan many times, each time at another pace, on a longer or shorter path and in water that is stronger or weaker and earlier or later than its tables by what each source is uncertain by: when each stop is reached, how often one is home by the alarm, by dusk and within one's hours, and which leg fails.

Ellipses: where 95 of 100 swimmers are who hold the planned headings for the planned minutes from the last stop and do not correct.
Drift: where the float with its person is 30, 60 and 120 minutes after the swimmer stopped, at every quarter of an hour of the swim and at every stop; and so long after the planned return, wherever it happened. For the shore contact.
Wind: steady; pushes the float 1.93 % of its speed downwind and up to 0.51 % to either side. With none given the push is left out, which is not to say that there is none.
Swimmer: several names with a semicolon between them swim together, the slowest sets the pace.

The spread is that of the doubts put in, most of them common practice without a source: a wrong table or a gale is not among them. A prediction, not an observation; feasible is not safe; never dive alone. Not for the navigation of vessels.</source>
        <translation>Schwimmt einen Plan viele Male, jedes Mal mit anderem Tempo, auf einem längeren oder kürzeren Weg und in Wasser, das um die Unsicherheit jeder Quelle stärker oder schwächer und früher oder später ist als in ihren Tafeln: wann jeder Halt erreicht wird, wie oft man vor dem Alarm, vor der Abenddämmerung und in den eigenen Stunden zurück ist, und welcher Abschnitt misslingt.

Ellipsen: wo 95 von 100 Schwimmern sind, die die geplanten Kurse die geplanten Minuten lang vom letzten Halt aus halten und nicht berichtigen.
Drift: wo die Boje mit ihrem Menschen 30, 60 und 120 Minuten nach dem Ende des Schwimmens ist, zu jeder Viertelstunde der Tour und an jedem Halt; und so lange nach der geplanten Rückkehr, wo immer es geschah. Für den Kontakt an Land.
Wind: stetig; schiebt die Boje mit 1.93 % seiner Geschwindigkeit vor sich her und bis zu 0.51 % nach jeder Seite. Ohne Angabe bleibt der Schub weg, was nicht heißt, dass keiner da ist.
Schwimmer: mehrere Namen mit Strichpunkt dazwischen schwimmen zusammen, der Langsamste bestimmt das Tempo.

Die Streuung ist die der eingesetzten Zweifel, die meisten davon übliche Praxis ohne Quelle: eine falsche Tafel oder ein Sturm gehören nicht dazu. Eine Vorhersage, keine Beobachtung; machbar heißt nicht sicher; nie allein tauchen. Nicht zur Navigation von Fahrzeugen.</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <location filename="../processing/departurewindows.py"/>
        <location filename="../processing/planswim.py"/>
        <location filename="../processing/seasoncards.py"/>
        <location filename="../processing/swimcard.py"/>
        <location filename="../processing/swimfiles.py"/>
        <location filename="../processing/turnback.py"/>
        <source>Name of the route</source>
        <translation>Name der Route</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <location filename="../processing/fastestpath.py"/>
        <location filename="../processing/planswim.py"/>
        <location filename="../processing/reach.py"/>
        <location filename="../processing/swimcard.py"/>
        <location filename="../processing/swimfiles.py"/>
        <location filename="../processing/turnback.py"/>
        <source>Departure (date and time)</source>
        <translation>Start (Datum und Uhrzeit)</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>Members</source>
        <translation>Anzahl der Schwimmgänge</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>Seed</source>
        <translation>Zufallszahl für den Anfang</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>Arrivals at the stops</source>
        <translation>Ankünfte an den Halten</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>Ellipses of dead reckoning</source>
        <translation>Ellipsen der Koppelnavigation</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>Areas of drift</source>
        <translation>Driftgebiete</translation>
    </message>
    <message>
        <location filename="../processing/confidence.py"/>
        <source>Share of members who complete the swim</source>
        <translation>Anteil der Schwimmgänge, die die Tour vollenden</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>Departure windows</source>
        <translation>Zeitfenster für den Start</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>window,when,departure,slack,stream,tide,season,day,range</source>
        <translation>Zeitfenster,wann,Start,Stauwasser,Strom,Gezeiten,Saison,Tag,Tidenhub</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>Swims a route, stays included, leaving every so many minutes from one moment to another, over days or a season, and says when it can be swum: the windows of departures with their first, last and best one, what stops the departures just before and after, the spare time before dusk, and the days by rank.

From, to: dates such as 2027-06-26, whole days by the plan's clock, or dates with times.
A departure is out where a leg cannot be swum or its stream is not known, where Plan swim would say stop (darkness, land, closed water, a sailing, range, hours), and where a mark is too deep or too shoal.
Weak stream: besides, the tides at which the stream at the stop farthest out stays at or below a rate for so long, and the range they have.

A window is a prediction and no more: feasible is not safe; never dive alone. Windows keep no reserve: the turn-back times do.</source>
        <translation>Schwimmt eine Route mit allem Bleiben, mit einem Start alle so viele Minuten von einem Augenblick bis zu einem anderen, über Tage oder eine Saison, und sagt, wann sie schwimmbar ist: die Zeitfenster der Startzeiten mit erster, letzter und bester, was die Startzeiten kurz davor und danach verhindert, die Zeit, die vor der Abenddämmerung übrig ist, und die Tage nach Rang.

Von, bis: Tage wie 2027-06-26, ganze Tage nach der Uhr des Plans, oder Tage mit Uhrzeiten.
Eine Startzeit scheidet aus, wo ein Abschnitt nicht schwimmbar oder sein Strom nicht bekannt ist, wo „Tour planen“ Stopp sagen würde (Dunkelheit, Land, gesperrtes Wasser, eine Fähre, Reichweite, Stunden), und wo eine Marke zu tief oder zu flach ist.
Schwacher Strom: außerdem die Tiden, bei denen der Strom am entferntesten Halt so lange bei einer Stärke oder darunter bleibt, und der Tidenhub, den sie haben.

Ein Zeitfenster ist eine Vorhersage und nicht mehr: machbar heißt nicht sicher; nie allein tauchen. Zeitfenster enthalten keine Reserve: die Umkehrzeiten tun es.</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>Weak stream: at most (kn)</source>
        <translation>Schwacher Strom: höchstens (kn)</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>Weak stream: for (min)</source>
        <translation>Schwacher Strom: für (min)</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>All departures</source>
        <translation>Alle Startzeiten</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>Picture of the days</source>
        <translation>Bild der Tage</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>Number of windows</source>
        <translation>Anzahl der Zeitfenster</translation>
    </message>
    <message>
        <location filename="../processing/departurewindows.py"/>
        <source>A weak stream needs both its rate and for how many minutes.</source>
        <translation>Ein schwacher Strom braucht seine Stärke und für wie viele Minuten.</translation>
    </message>
    <message>
        <location filename="../processing/fastestpath.py"/>
        <source>Fastest path</source>
        <translation>Schnellster Weg</translation>
    </message>
    <message>
        <location filename="../processing/fastestpath.py"/>
        <source>fastest,path,route,shortest,stream,tide,channel,land,headland,round</source>
        <translation>schnellster,Weg,Route,kürzester,Strom,Gezeiten,Fahrwasser,Land,Kap,herum</translation>
    </message>
    <message>
        <location filename="../processing/fastestpath.py"/>
        <source>The quickest way from one place to another, leaving at one moment, in the stream as it changes: round land and round what nobody may enter, past channels or square across them. It comes as a route of a few legs, each on one compass heading, with the minutes of the straight line and of a swimmer who steers anew all the time beside it.

Departure: ISO 8601, such as 2027-06-05T10:00; without an offset in the plan's zone.
Channels: no notice; keep out; or cross square, each crossing a leg of its own whose heading is square to the traffic.
Cells: empty has the size chosen. Passages narrower than a few cells count as closed.
Route: the line with the fields of the plan's routes: paste it there, move its vertices, plan the swim. Its legs are checked on the track really swum, which bows; the way keeps 20 m off land where it can.
Report: that of Plan swim for this route, and the comparison.

No reserve is in these times. A prediction, not an observation; feasible is not safe; never dive alone. Not for the navigation of vessels.</source>
        <translation>Der schnellste Weg von einem Ort zu einem anderen, mit Start in einem Augenblick, im Strom, wie er sich ändert: um Land herum und um alles, was niemand betreten darf, an Fahrwassern vorbei oder quer darüber. Er kommt als Route mit wenigen Abschnitten, jeder auf einem Kurs am Kompass, mit den Minuten der geraden Linie und eines Schwimmers, der ständig neu steuert, daneben.

Start: ISO 8601, wie 2027-06-05T10:00; ohne Abstand in der Zone des Plans.
Fahrwasser: nicht beachten; draußen bleiben; oder rechtwinklig queren, jede Querung ein eigener Abschnitt, dessen Kurs quer zum Verkehr ist.
Zellen: leer wird die Größe gewählt. Durchlässe, die schmaler sind als ein paar Zellen, gelten als geschlossen.
Route: die Linie mit den Feldern der Routen des Plans: dort einfügen, ihre Stützpunkte verschieben, die Tour planen. Ihre Abschnitte sind an der wirklich geschwommenen Bahn geprüft, die sich biegt; der Weg hält, wo er kann, 20 m Abstand vom Land.
Bericht: der von „Tour planen“ für diese Route, und der Vergleich.

In diesen Zeiten ist keine Reserve. Eine Vorhersage, keine Beobachtung; machbar heißt nicht sicher; nie allein tauchen. Nicht zur Navigation von Fahrzeugen.</translation>
    </message>
    <message>
        <location filename="../processing/fastestpath.py"/>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <location filename="../processing/fastestpath.py"/>
        <source>Fastest path as a route</source>
        <translation>Schnellster Weg als Route</translation>
    </message>
    <message>
        <location filename="../processing/fastestpath.py"/>
        <source>Minutes of the route</source>
        <translation>Minuten der Route</translation>
    </message>
    <message>
        <location filename="../processing/file_options.py"/>
        <source>Letters of a name (6 to 10)</source>
        <translation>Buchstaben eines Namens (6 bis 10)</translation>
    </message>
    <message>
        <location filename="../processing/file_options.py"/>
        <source>Names in capitals</source>
        <translation>Namen in Großbuchstaben</translation>
    </message>
    <message>
        <location filename="../processing/file_options.py"/>
        <source>Points on the way every (m)</source>
        <translation>Punkte auf dem Weg alle (m)</translation>
    </message>
    <message>
        <location filename="../processing/main_thread.py"/>
        <source>QGIS was too busy to lay out the card</source>
        <translation>QGIS war zu beschäftigt, um die Nasskarte zu setzen</translation>
    </message>
    <message>
        <location filename="../processing/main_thread.py"/>
        <source>Run it again when QGIS answers</source>
        <translation>Noch einmal ausführen, wenn QGIS wieder antwortet</translation>
    </message>
    <message>
        <location filename="../processing/newplan.py"/>
        <source>plan,new,create,geopackage,package,swim,marks,route,log</source>
        <translation>Plan,neu,anlegen,GeoPackage,Paket,Schwimmen,Marken,Route,Logbuch</translation>
    </message>
    <message>
        <location filename="../processing/newplan.py"/>
        <source>Makes an empty plan: one GeoPackage with layers for marks, routes, channels, closed areas, land, depths, tides, tidal streams, ferries, swimmers, settings and the log. Each layer brings its form, with units, value lists and checks, and its style.

Time zone: the IANA name of the zone the plan is read and printed in, such as Europe/Lisbon. Tides and stream events are always typed in UTC.
Datum: the name of the level that charted depths and tide heights are counted from. Depths and heights of one plan must share it.
Replace: without it, a file that is already there is left alone.

A plan holds what its maker puts in. An area that is not drawn is not thereby permitted, and a stream that is not known is not zero.</source>
        <translation>Legt einen leeren Plan an: ein GeoPackage mit Layern für Marken, Routen, Fahrwasser, Sperrgebiete, Land, Tiefen, Gezeiten, Gezeitenströme, Fähren, Schwimmer, Einstellungen und das Logbuch. Jeder Layer bringt sein Formular mit Einheiten, Wertelisten und Prüfungen und seinen Stil mit.

Zeitzone: der IANA-Name der Zone, in der der Plan gelesen und gedruckt wird, wie Europe/Lisbon. Gezeiten und Stromereignisse werden immer in UTC eingegeben.
Bezugsniveau: der Name des Niveaus, von dem aus Kartentiefen und Höhen der Gezeit gezählt werden. Tiefen und Höhen eines Plans müssen es gemeinsam haben.
Ersetzen: ohne das bleibt eine Datei, die schon da ist, unberührt.

Ein Plan enthält, was sein Ersteller hineintut. Ein Gebiet, das nicht gezeichnet ist, ist damit nicht erlaubt, und ein Strom, der nicht bekannt ist, ist nicht null.</translation>
    </message>
    <message>
        <location filename="../processing/newplan.py"/>
        <source>Time zone (IANA name)</source>
        <translation>Zeitzone (IANA-Name)</translation>
    </message>
    <message>
        <location filename="../processing/newplan.py"/>
        <source>Datum of depths and heights</source>
        <translation>Bezugsniveau der Tiefen und Höhen</translation>
    </message>
    <message>
        <location filename="../processing/newplan.py"/>
        <source>Replace the file if it is there</source>
        <translation>Die Datei ersetzen, wenn sie schon da ist</translation>
    </message>
    <message>
        <location filename="../processing/newplan.py"/>
        <source>Add the plan's layers to the project</source>
        <translation>Die Layer des Plans ins Projekt holen</translation>
    </message>
    <message>
        <location filename="../processing/newplan.py"/>
        <source>Made the plan {}</source>
        <translation>Plan {} angelegt</translation>
    </message>
    <message>
        <location filename="../processing/place_asked.py"/>
        <source>Take no notice</source>
        <translation>Nicht beachten</translation>
    </message>
    <message>
        <location filename="../processing/place_asked.py"/>
        <source>Keep out</source>
        <translation>Draußen bleiben</translation>
    </message>
    <message>
        <location filename="../processing/place_asked.py"/>
        <source>Cross square</source>
        <translation>Rechtwinklig queren</translation>
    </message>
    <message>
        <location filename="../processing/place_asked.py"/>
        <source>Boat channels</source>
        <translation>Fahrwasser der Boote</translation>
    </message>
    <message>
        <location filename="../processing/place_asked.py"/>
        <source>Cell (m)</source>
        <translation>Zelle (m)</translation>
    </message>
    <message>
        <location filename="../processing/place_asked.py"/>
        <source>{} was left empty</source>
        <translation>{} blieb leer</translation>
    </message>
    <message>
        <location filename="../processing/place_asked.py"/>
        <source>It is a place</source>
        <translation>Es ist ein Ort</translation>
    </message>
    <message>
        <location filename="../processing/place_asked.py"/>
        <source>Choose a point on the map</source>
        <translation>Einen Punkt auf der Karte wählen</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <source>Edits of these layers of the plan are not saved yet, and not counted here: {}. Save them first.</source>
        <translation>Änderungen an diesen Layern des Plans sind noch nicht gespeichert und zählen hier nicht: {}. Erst speichern.</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <source>Name of the swimmer, or names with ;</source>
        <translation>Name des Schwimmers, oder Namen mit ;</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <location filename="../processing/planswim.py"/>
        <source>Pace through the water (m/s)</source>
        <translation>Tempo durchs Wasser (m/s)</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <source>New heading every (min)</source>
        <translation>Neuer Kurs alle (min)</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <source>Wind from (degrees true)</source>
        <translation>Wind aus (rechtweisende Grad)</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Wind speed (kn)</source>
        <translation>Windgeschwindigkeit (kn)</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <source>A wind needs both its speed and where it comes from; leave both empty for none.</source>
        <translation>Ein Wind braucht Geschwindigkeit und Richtung, woher er kommt; für keinen beide leer lassen.</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <location filename="../processing/planswim.py"/>
        <location filename="../processing/readchart.py"/>
        <location filename="../processing/text_reading.py"/>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <source>Asked to write two outputs to {}</source>
        <translation>Zwei Ausgaben nach {} verlangt</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <source>Each output goes to a file of its own</source>
        <translation>Jede Ausgabe kommt in eine eigene Datei</translation>
    </message>
    <message>
        <location filename="../processing/plan_algorithm.py"/>
        <source>Choose another file for one of them</source>
        <translation>Für eine davon eine andere Datei wählen</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>Plan swim</source>
        <translation>Tour planen</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>plan,swim,route,heading,stream,tide,legs,card,gpx</source>
        <translation>Plan,Schwimmen,Tour,Route,Kurs,Strom,Gezeiten,Abschnitte,Karte,GPX</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>Swims a route leaving at one moment, leg by leg, in the stream as it changes: the heading to hold on each leg, minutes, the track really swum and what it meets (channels, closed areas, land, darkness, depth, the swimmer's limits).

Plan: a plan's GeoPackage. A layer given under the advanced parameters stands in for the plan's own.
Departure: ISO 8601, such as 2027-06-05T10:00; without an offset it is read in the plan's zone.
Turn back: each stop's latest leaving time, so that the best of all exits is reached before dusk, the swimmer's hours and the plan's other limits with the reserve kept, and the same for a bad day.
Swimmer: several names with a semicolon between them swim together, the slowest sets the pace.
Pace: through the water, m/s; overrides the swimmer's.
Headings: one for the whole leg, solved so that the track ends on the mark; a new one every so many minutes, each ending on the line; or held on the line all the time.

Stream that is not known is never taken as none: the leg is refused and said so. A prediction, not an observation; feasible is not safe; never dive alone. Not for the navigation of vessels.</source>
        <translation>Schwimmt eine Route mit Start in einem Augenblick, Abschnitt für Abschnitt, im Strom, wie er sich ändert: der Kurs, der auf jedem Abschnitt zu halten ist, Minuten, die wirklich geschwommene Bahn und was sie antrifft (Fahrwasser, Sperrgebiete, Land, Dunkelheit, Tiefe, die Grenzen des Schwimmers).

Plan: das GeoPackage eines Plans. Ein Layer, der unter den erweiterten Parametern angegeben ist, tritt an die Stelle dessen im Plan.
Start: ISO 8601, wie 2027-06-05T10:00; ohne Abstand wird er in der Zone des Plans gelesen.
Umkehr: der letzte Aufbruch von jedem Halt, so dass der beste aller Ausstiege vor der Abenddämmerung, den Stunden des Schwimmers und den anderen Grenzen des Plans mit der Reserve erreicht wird, und dasselbe für einen schlechten Tag.
Schwimmer: mehrere Namen mit Strichpunkt dazwischen schwimmen zusammen, der Langsamste bestimmt das Tempo.
Tempo: durchs Wasser, m/s; geht dem des Schwimmers vor.
Kurse: einer für den ganzen Abschnitt, so gelöst, dass die Bahn an der Marke endet; alle so viele Minuten ein neuer, jeder endet auf der Linie; oder die ganze Zeit auf der Linie gehalten.

Strom, der nicht bekannt ist, wird nie für keinen genommen: der Abschnitt wird abgelehnt, und das wird gesagt. Eine Vorhersage, keine Beobachtung; machbar heißt nicht sicher; nie allein tauchen. Nicht zur Navigation von Fahrzeugen.</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>Name of the swimmer</source>
        <translation>Name des Schwimmers</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>Leave the marks out of GPX, wet card and table, to share them</source>
        <translation>Marken aus GPX, Nasskarte und Tabelle weglassen, um sie weiterzugeben</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>Minutes in all</source>
        <translation>Minuten insgesamt</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Routes</source>
        <translation>Routen</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Channels</source>
        <translation>Fahrwasser</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Closed areas</source>
        <translation>Sperrgebiete</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Depth contours</source>
        <translation>Tiefenlinien</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Soundings</source>
        <translation>Lotungen</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Stream stations</source>
        <translation>Stromstationen</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Stream rates by the hour</source>
        <translation>Stromstärken nach Stunden</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>Stops</source>
        <translation>Halte</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>Marks and route for a GPS</source>
        <translation>Marken und Route für ein GPS</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <location filename="../processing/swimfiles.py"/>
        <source>Legs as a table</source>
        <translation>Abschnitte als Tabelle</translation>
    </message>
    <message>
        <location filename="../processing/planswim.py"/>
        <source>Give a plan, or at least a layer of routes.</source>
        <translation>Einen Plan angeben, oder wenigstens einen Layer mit Routen.</translation>
    </message>
    <message>
        <location filename="../processing/provider.py"/>
        <source>Tideleg swim planning</source>
        <translation>Tideleg Tourenplanung</translation>
    </message>
    <message>
        <location filename="../processing/provider.py"/>
        <source>The algorithm {} could not be loaded: {}</source>
        <translation>Der Algorithmus {} konnte nicht geladen werden: {}</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Reach from an entry</source>
        <translation>Reichweite von einem Einstieg</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>reach,isochrone,out,home,stay,stream,tide,range,exit,latest</source>
        <translation>Reichweite,Isochrone,hinaus,zurück,bleiben,Strom,Gezeiten,Ausstieg,spätestens</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Leaving an entry at one moment: the earliest arrival everywhere in the stream as it changes, round land and round what nobody may enter; from the exits (every mark of the kind exit, and the entry) the latest leaving that is still back in time; and between the two where one can stay so long and be home.

Departure, Back by: ISO 8601, such as 2027-06-05T10:00; without an offset in the plan's zone.
Rasters: minutes after the departure, -9999 where there is no answer, in the plan's own frame.
Areas: reached in so many minutes (kind out), and with time to stay (kind stay).
Cells: empty has the size chosen; the report says how much the minutes change on cells twice as large. Passages narrower than two cells count as closed.
Channels: no notice; keep out; or cross square, time inside counted several times over.

The times are those of a swimmer who steers anew all the time for the fastest track: on one compass heading a leg it takes longer. The marks' numbers are given both ways. Who comes to a closed area before it opens waits beside it. Water whose stream is not known is not passed, and said so. No reserve is in these times. A prediction, not an observation; feasible is not safe; never dive alone. Not for the navigation of vessels.</source>
        <translation>Beim Aufbruch von einem Einstieg in einem Augenblick: die früheste Ankunft überall im Strom, wie er sich ändert, um Land herum und um alles, was niemand betreten darf; von den Ausstiegen (jede Marke der Art Ausstieg, und der Einstieg) der letzte Aufbruch, der noch rechtzeitig zurück ist; und zwischen beiden, wo man so lange bleiben und zurück sein kann.

Start, Zurück bis: ISO 8601, wie 2027-06-05T10:00; ohne Abstand in der Zone des Plans.
Raster: Minuten nach dem Start, -9999 wo es keine Antwort gibt, im eigenen Bezug des Plans.
Flächen: erreicht in so vielen Minuten (Art out), und mit Zeit zu bleiben (Art stay).
Zellen: leer wird die Größe gewählt; der Bericht sagt, wie sehr sich die Minuten auf doppelt so großen Zellen ändern. Durchlässe, die schmaler sind als zwei Zellen, gelten als geschlossen.
Fahrwasser: nicht beachten; draußen bleiben; oder rechtwinklig queren, Zeit darin mehrfach gezählt.

Die Zeiten sind die eines Schwimmers, der für die schnellste Bahn ständig neu steuert: auf einem Kurs je Abschnitt dauert es länger. Die Zahlen der Marken sind auf beide Weisen gegeben. Wer vor der Öffnung an ein Sperrgebiet kommt, wartet daneben. Wasser, dessen Strom nicht bekannt ist, wird nicht durchschwommen, und das wird gesagt. In diesen Zeiten ist keine Reserve. Eine Vorhersage, keine Beobachtung; machbar heißt nicht sicher; nie allein tauchen. Nicht zur Navigation von Fahrzeugen.</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Back by (date and time)</source>
        <translation>Zurück bis (Datum und Uhrzeit)</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Stay (min)</source>
        <translation>Bleiben (min)</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Out in (min)</source>
        <translation>Hinaus in (min)</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Leave by (min)</source>
        <translation>Weg bis (min)</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Reach</source>
        <translation>Reichweite</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Marks' numbers</source>
        <translation>Zahlen der Marken</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>earliest arrival, min after departure</source>
        <translation>früheste Ankunft, min nach dem Start</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>latest leaving, min after departure</source>
        <translation>letzter Aufbruch, min nach dem Start</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Asked to write {} to {}</source>
        <translation>Verlangt, {} nach {} zu schreiben</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>Rasters are GeoTIFF</source>
        <translation>Raster sind GeoTIFF</translation>
    </message>
    <message>
        <location filename="../processing/reach.py"/>
        <source>End its name in .tif</source>
        <translation>Seinen Namen mit .tif enden lassen</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>Read chart into plan</source>
        <translation>Seekarte in den Plan lesen</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>chart,s-57,cell,enc,soundings,contours,fairway,restricted,import,layer,plan</source>
        <translation>Seekarte,S-57,Zelle,ENC,Lotungen,Tiefenlinien,Fahrwasser,gesperrt,Import,Layer,Plan</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>Adds what an electronic chart holds to a plan: fairways, lanes, tracks and ferry routes, restricted and caution areas, land, depth contours, soundings, rocks and wrecks, landmarks, beacons and fixed lights, and tidal stream tables.

Chart cell: the base file of an S-57 cell (.000); updates beside it (.001 ...) are applied.
Layer: instead or as well, an ordinary layer in any coordinate reference system, read into the one plan layer chosen below.
Fields: for each field of the plan an expression over the layer's fields, parted by semicolons, such as
depth_m = "DEPTH" * 0.3048; name = OBJNAM
Fields of the same name are taken without being mentioned.
Extent: only what lies inside is read; stream tables are read from the whole cell.

Rows that the plan holds already are left out, so that reading twice changes nothing. The report counts everything read, clipped away, skipped and repaired. If anything fails, the plan stays as it was.

A charted restriction becomes the strictest rule its codes allow; the citation names them all. Charts do not hold every local rule: an area that is not there is not thereby permitted. Not for navigation.</source>
        <translation>Fügt einem Plan hinzu, was eine elektronische Seekarte enthält: Fahrwasser, Einbahnwege, Tracks und Fährstrecken, Sperr- und Warngebiete, Land, Tiefenlinien, Lotungen, Felsen und Wracks, Landmarken, Baken und feste Feuer, und Gezeitenstromtafeln.

Zelle: die Basisdatei einer S-57-Zelle (.000); Nachträge daneben (.001 ...) werden angewandt.
Layer: stattdessen oder dazu ein gewöhnlicher Layer in beliebigem Koordinatenbezugssystem, gelesen in den einen Layer des Plans, der unten gewählt ist.
Felder: für jedes Feld des Plans ein Ausdruck über die Felder des Layers, durch Strichpunkte getrennt, wie
depth_m = "DEPTH" * 0.3048; name = OBJNAM
Felder gleichen Namens werden ohne Erwähnung genommen.
Ausdehnung: nur was darin liegt, wird gelesen; Stromtafeln werden aus der ganzen Zelle gelesen.

Zeilen, die der Plan schon hat, werden ausgelassen, so dass zweimaliges Lesen nichts ändert. Der Bericht zählt alles, was gelesen, abgeschnitten, übergangen und repariert ist. Misslingt etwas, bleibt der Plan, wie er war.

Eine Beschränkung der Karte wird zur strengsten Regel, die ihre Codes zulassen; die Fundstelle nennt sie alle. Seekarten enthalten nicht jede örtliche Regel: ein Gebiet, das nicht da ist, ist damit nicht erlaubt. Nicht zur Navigation.</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>Chart cell</source>
        <translation>Zelle der Seekarte</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>S-57 chart cells (*.000)</source>
        <translation>S-57-Zellen (*.000)</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>Layer</source>
        <translation>Layer</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>Plan layer that the layer goes into</source>
        <translation>Layer des Plans, in den der Layer kommt</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>Fields of the layer</source>
        <translation>Felder des Layers</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>Extent to read</source>
        <translation>Zu lesende Ausdehnung</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <location filename="../processing/text_reading.py"/>
        <source>JSON files (*.json)</source>
        <translation>JSON-Dateien (*.json)</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <location filename="../processing/text_reading.py"/>
        <source>Rows written</source>
        <translation>Geschriebene Zeilen</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <location filename="../processing/text_reading.py"/>
        <source>Rows that were there already</source>
        <translation>Zeilen, die schon da waren</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>There is nothing to read: give a chart cell (CHART), a layer (LAYER), or both.</source>
        <translation>Es gibt nichts zu lesen: eine Zelle (CHART), einen Layer (LAYER) oder beides angeben.</translation>
    </message>
    <message>
        <location filename="../processing/readchart.py"/>
        <source>The extent to read (EXTENT) is empty: draw one with an area, or leave it out.</source>
        <translation>Die zu lesende Ausdehnung (EXTENT) ist leer: eine mit Fläche zeichnen oder weglassen.</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Read streams into plan</source>
        <translation>Ströme in den Plan lesen</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>tidal stream,current,slack,flood,ebb,drift,wind,coefficient,table,csv,import,plan</source>
        <translation>Gezeitenstrom,Strom,Stauwasser,Flut,Ebbe,Drift,Wind,Koeffizient,Tafel,CSV,Import,Plan</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Reads tidal streams, from a file or pasted, into a plan.

Forms: hourly tables from high or low water with set and rates at springs and neaps (hourly) or at the tide coefficients 95 and 45 (coefficients); slacks and maxima (events); sets and rates at moments (series); harmonic constants of the east and north parts (constants); the texts TS_TSP and TS_TSV of electronic charts; timed drifts (drift); winds; tide coefficients.

Headings such as hour, set, spring (kn), neap (kn); time, event, rate; time, lon, lat, end time, end lon, end lat tell the columns. Preview says what each column is taken for and writes nothing.

Station: whose rows they are; a new one needs its place. Lines '# station: name', '# lon: ...' in the text say the same, and let one text hold many stations.
Zone: that of the table's clock, such as Europe/Lisbon or UTC. Letters such as EST or LST in the text never decide it, but a zone in which they cannot be true is refused. A clock time that comes twice as clocks go back, and stands in the table once, is refused by its row.
Units: where the headings do not say it, knots or metres a second must be chosen.
Start and step: TS_TSV texts carry no times of their own.

Export writes the plan's streams, after the reading, as a text that can be read again; without a file and a text nothing but that is done.

A blank is unknown, never slack. Sets are where the water goes to, true; winds are where they come from. Rows that the plan holds already are left out, empty fields of its stations are filled, other figures for the same hour or moment are refused. If anything fails, the plan stays as it was. A prediction, not an observation; not for navigation.</source>
        <translation>Liest Gezeitenströme aus einer Datei oder eingefügt in einen Plan.

Formen: Stundentafeln ab Hoch- oder Niedrigwasser mit Richtung und Stärke zur Spring- und Nippzeit (hourly) oder zu den Tidenkoeffizienten 95 und 45 (coefficients); Stauwasser und Maxima (events); Richtung und Stärke zu Zeitpunkten (series); harmonische Konstanten des Ost- und Nordanteils (constants); die Texte TS_TSP und TS_TSV elektronischer Seekarten; gestoppte Driften (drift); Winde; Tidenkoeffizienten.

Überschriften wie hour, set, spring (kn), neap (kn); time, event, rate; time, lon, lat, end time, end lon, end lat sagen, was die Spalten sind. Die Vorschau sagt, wofür jede Spalte genommen wird, und schreibt nichts.

Station: wessen Zeilen es sind; eine neue braucht ihren Ort. Zeilen '# station: Name', '# lon: ...' im Text sagen dasselbe und lassen einen Text viele Stationen enthalten.
Zone: die der Uhr der Tafel, wie Europe/Lisbon oder UTC. Buchstaben wie EST oder LST im Text entscheiden sie nie, aber eine Zone, in der sie nicht stimmen können, wird abgelehnt. Eine Uhrzeit, die beim Zurückstellen zweimal kommt und in der Tafel einmal steht, wird mit ihrer Zeile abgelehnt.
Einheiten: wo die Überschriften es nicht sagen, müssen Knoten oder Meter je Sekunde gewählt werden.
Anfang und Schritt: TS_TSV-Texte haben keine eigenen Zeiten.

Die Ausgabe schreibt die Ströme des Plans nach dem Lesen als Text, der wieder gelesen werden kann; ohne Datei und Text geschieht nur das.

Leer heißt nicht bekannt, nie Stauwasser. Stromrichtungen sind, wohin das Wasser setzt, rechtweisend; Winde sind, woher sie kommen. Zeilen, die der Plan schon hat, werden ausgelassen, leere Felder seiner Stationen gefüllt, andere Zahlen für dieselbe Stunde oder denselben Zeitpunkt abgelehnt. Misslingt etwas, bleibt der Plan, wie er war. Eine Vorhersage, keine Beobachtung; nicht zur Navigation.</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Text (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Text (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <location filename="../processing/readtides.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Place of a new station</source>
        <translation>Ort einer neuen Station</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Zone of the table</source>
        <translation>Zone der Tafel</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Units of the rates</source>
        <translation>Einheiten der Stärken</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Hours are counted from</source>
        <translation>Stunden gezählt ab</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Port of the tides</source>
        <translation>Hafen der Gezeiten</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <location filename="../processing/readtides.py"/>
        <source>Order of day, month and year</source>
        <translation>Reihenfolge von Tag, Monat und Jahr</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>First moment (TS_TSV)</source>
        <translation>Erster Zeitpunkt (TS_TSV)</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Minutes from pair to pair (TS_TSV)</source>
        <translation>Minuten von Paar zu Paar (TS_TSV)</translation>
    </message>
    <message>
        <location filename="../processing/readstreams.py"/>
        <source>Export of the plan's streams</source>
        <translation>Ausgabe der Ströme des Plans</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Read tides into plan</source>
        <translation>Gezeiten in den Plan lesen</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>tide,high water,low water,height,harmonic,constants,secondary,port,csv,import,plan</source>
        <translation>Gezeiten,Hochwasser,Niedrigwasser,Höhe,harmonisch,Konstanten,Anschlussort,Hafen,CSV,Import,Plan</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Reads heights of tide, from a file or pasted, into a plan: high and low waters (events), heights at even times (series), harmonic constants (constants), or differences of a secondary port (secondary). Text, CSV and JSON lists of records are read, gzipped too.

Preview: writes nothing and shows what each column was taken for, the first rows, and what was skipped.
Time zone: the table's: an IANA name such as Europe/Lisbon where its clock changes in summer, or UTC or UTC-8 where it does not. Needed unless the table itself says UTC or an offset; letters such as EST or LST in it never decide, but a zone in which they cannot be true is refused. Times that daylight saving skips or gives twice are refused by their row; of a series, an hour that comes twice and stands there once is left out and counted.
Units, date order: needed where the table leaves a choice; 05/06 is not guessed.
Columns: what the columns hold, from the left, where headings and cells leave a choice: moment, date, time, height, kind, skip, parted by commas.
Datum offset: how far the table's datum lies above the plan's, in metres; for constants without a row Z0, their mean level above the plan's datum.
Keep: of a series the plan keeps its curve, or only the high and low waters found on it.
Export: writes the port's tides of the plan as CSV; alone, without file and text, nothing is read.

Rows that the plan holds already are left out; other figures for the same moment are refused. If anything fails, the plan stays as it was. Predictions are not observations. Not for navigation.</source>
        <translation>Liest Höhen der Gezeit aus einer Datei oder eingefügt in einen Plan: Hoch- und Niedrigwasser (events), Höhen in gleichen Abständen (series), harmonische Konstanten (constants) oder Unterschiede eines Anschlussorts (secondary). Text, CSV und JSON-Listen von Einträgen werden gelesen, auch mit gzip gepackt.

Vorschau: schreibt nichts und zeigt, wofür jede Spalte genommen wurde, die ersten Zeilen, und was übergangen wurde.
Zeitzone: die der Tafel: ein IANA-Name wie Europe/Lisbon, wo ihre Uhr im Sommer umgestellt wird, oder UTC oder UTC-8, wo nicht. Nötig, wenn die Tafel nicht selbst UTC oder einen Abstand nennt; Buchstaben wie EST oder LST darin entscheiden nie, aber eine Zone, in der sie nicht stimmen können, wird abgelehnt. Zeiten, die die Sommerzeit überspringt oder doppelt hat, werden mit ihrer Zeile abgelehnt; bei einer Reihe wird eine Stunde, die zweimal kommt und einmal da steht, ausgelassen und gezählt.
Einheiten, Reihenfolge des Datums: nötig, wo die Tafel eine Wahl lässt; 05/06 wird nicht geraten.
Spalten: was die Spalten enthalten, von links, wo Überschriften und Zellen eine Wahl lassen: moment, date, time, height, kind, skip, durch Kommas getrennt.
Abstand des Bezugsniveaus: wie hoch das der Tafel über dem des Plans liegt, in Metern; für Konstanten ohne Zeile Z0 ihr mittleres Niveau über dem Bezugsniveau des Plans.
Behalten: von einer Reihe behält der Plan ihre Kurve, oder nur die Hoch- und Niedrigwasser, die darauf gefunden sind.
Ausgabe: schreibt die Gezeiten des Hafens aus dem Plan als CSV; allein, ohne Datei und Text, wird nichts gelesen.

Zeilen, die der Plan schon hat, werden ausgelassen; andere Zahlen für denselben Zeitpunkt abgelehnt. Misslingt etwas, bleibt der Plan, wie er war. Vorhersagen sind keine Beobachtungen. Nicht zur Navigation.</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Tables (*.csv *.txt *.tsv *.json *.gz);;All files (*)</source>
        <translation>Tafeln (*.csv *.txt *.tsv *.json *.gz);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Pasted text</source>
        <translation>Eingefügter Text</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <location filename="../plan_package/schema.py"/>
        <source>Port</source>
        <translation>Hafen</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Time zone of the table</source>
        <translation>Zeitzone der Tafel</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Units of the heights</source>
        <translation>Einheiten der Höhen</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Columns, from the left</source>
        <translation>Spalten, von links</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Datum of the table above the plan's (m)</source>
        <translation>Bezugsniveau der Tafel über dem des Plans (m)</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Latitude of the port, for constants (deg)</source>
        <translation>Breite des Hafens, für Konstanten (Grad)</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Keep of a series</source>
        <translation>Von einer Reihe behalten</translation>
    </message>
    <message>
        <location filename="../processing/readtides.py"/>
        <source>Export of the port's tides</source>
        <translation>Ausgabe der Gezeiten des Hafens</translation>
    </message>
    <message>
        <location filename="../processing/refusals.py"/>
        <source>Stopped: everything is as it was.</source>
        <translation>Gestoppt: alles ist, wie es war.</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Wet cards of a season</source>
        <translation>Nasskarten einer Saison</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>card,print,season,windows,atlas,batch,days</source>
        <translation>Karte,Druck,Saison,Fenster,Atlas,Stapel,Tage</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Swims a route at every departure of a span as Departure windows does, takes the windows of the best days, and writes a wet card for each, turn back and ways home included, one after the other into one PDF. Its first page says which window is on which page, and which days have none. On the morning take the pages of the window.

Best days: those with the longest window. In a window the quickest departure that leaves every stop in time; where none of those tried does, the quickest, and the contents say so. Cards stand in the order of time.

Tides and streams must reach to the end of the span: days without them are not counted as good. A prediction; feasible is not safe; never dive alone.</source>
        <translation>Schwimmt eine Route zu jedem Aufbruch eines Zeitraums, wie es „Zeitfenster für den Start“ tut, nimmt die Fenster der besten Tage und schreibt für jedes eine Nasskarte, mit Umkehr und Heimwegen, eine nach der anderen in ein PDF. Dessen erste Seite sagt, welches Fenster auf welcher Seite steht und welche Tage keines haben. Am Morgen nimm die Seiten des Fensters.

Beste Tage: die mit dem längsten Fenster. Im Fenster der schnellste Aufbruch, bei dem jeder Halt rechtzeitig verlassen wird; wo das bei keinem probierten so ist, der schnellste, und das Verzeichnis sagt es. Die Karten stehen in der Reihenfolge der Zeit.

Gezeiten und Ströme müssen bis zum Ende des Zeitraums reichen: Tage ohne sie zählen nicht als gut. Eine Vorhersage; machbar heißt nicht sicher; nie allein tauchen.</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Days, at most</source>
        <translation>Tage, höchstens</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Every window</source>
        <translation>Jedes Fenster</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>The longest window</source>
        <translation>Das längste Fenster</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Of each day</source>
        <translation>Von jedem Tag</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Leave out windows shorter than (min)</source>
        <translation>Fenster weglassen, die kürzer sind als (min)</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Leave the marks out, to share the cards: no positions, headings or distances</source>
        <translation>Marken weglassen, um die Karten weiterzugeben: keine Positionen, Kurse und Entfernungen</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Wet cards</source>
        <translation>Nasskarten</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Number of cards</source>
        <translation>Anzahl der Karten</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>Every window of this span is shorter: the longest has {:.0f} min. Nothing was written.</source>
        <translation>Jedes Fenster dieses Zeitraums ist kürzer: das längste hat {:.0f} min. Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <location filename="../processing/seasoncards.py"/>
        <source>No departure of this span can be swum: {}. Nothing was written.</source>
        <translation>Kein Aufbruch dieser Spanne ist schwimmbar: {}. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <location filename="../processing/streamat.py"/>
        <source>Stream at a place</source>
        <translation>Strom an einem Ort</translation>
    </message>
    <message>
        <location filename="../processing/streamat.py"/>
        <source>stream,tide,slack,set,rate,drift,current,table,day</source>
        <translation>Strom,Gezeiten,Stauwasser,Richtung,Stärke,Drift,Tafel,Tag</translation>
    </message>
    <message>
        <location filename="../processing/streamat.py"/>
        <source>The tidal stream at one place through one day: set and rate every so many minutes, where each value comes from and whether it is known, the slacks and the greatest rates to the minute, and the windows in which the rate stays at or below a limit.

Day: a date such as 2027-06-26, from midnight to midnight by the clocks of the plan's zone; a day on which clocks change has 23 or 25 hours.

Set is where the water goes to, true. What is not known is left empty; it is never none. A prediction, not an observation.</source>
        <translation>Der Gezeitenstrom an einem Ort durch einen Tag: Richtung und Stärke alle so viele Minuten, woher jeder Wert kommt und ob er bekannt ist, Stauwasser und größte Stärken auf die Minute, und die Zeitfenster, in denen die Stärke bei einer Grenze oder darunter bleibt.

Tag: ein Datum wie 2027-06-26, von Mitternacht bis Mitternacht nach den Uhren der Zone des Plans; ein Tag, an dem Uhren umgestellt werden, hat 23 oder 25 Stunden.

Die Stromrichtung ist, wohin das Wasser setzt, rechtweisend. Was nicht bekannt ist, bleibt leer; es ist nie keiner. Eine Vorhersage, keine Beobachtung.</translation>
    </message>
    <message>
        <location filename="../processing/streamat.py"/>
        <source>Day (year-month-day)</source>
        <translation>Tag (Jahr-Monat-Tag)</translation>
    </message>
    <message>
        <location filename="../processing/streamat.py"/>
        <source>Every (min)</source>
        <translation>Alle (min)</translation>
    </message>
    <message>
        <location filename="../processing/streamat.py"/>
        <source>Limit of the windows (kn)</source>
        <translation>Grenze der Zeitfenster (kn)</translation>
    </message>
    <message>
        <location filename="../processing/streamat.py"/>
        <source>Stream through the day</source>
        <translation>Strom durch den Tag</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Wet card and shore contact's sheet</source>
        <translation>Nasskarte und Blatt für den Kontakt an Land</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>card,sheet,print,shore contact,alarm,drift,emergency</source>
        <translation>Karte,Blatt,Druck,Kontakt an Land,Alarm,Drift,Notfall</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Plans a swim and writes its papers.

Wet card: headings, minutes, turn back, headings home by the time of leaving, tides, to be carried along. Letters are never made smaller than can be read at arm's length: what does not fit a side goes on the next one, and what is left out is named. A layout of your own is a print layout template in which labels say what stands where: begin with one of Tideleg's.
Shore contact's sheet: who is out, where, when they are back, at what time the contact acts and what they do then, where a float would drift in 30, 60 and 120 minutes. As pages of A4, and as one HTML file that opens on a telephone without any network.

Float, flag, emergency numbers: what is left empty comes from the plan's settings; nothing is assumed. Several numbers have a semicolon between them.
Wind: pushes the float that drifts; left empty its push is not counted, and the sheet says so.

A prediction, not an observation; feasible is not safe; never dive alone. Not for the navigation of vessels.</source>
        <translation>Plant eine Tour und schreibt ihre Papiere.

Nasskarte: Kurse, Minuten, Umkehr, Kurse heim nach der Zeit des Aufbruchs, Gezeiten, zum Mitnehmen. Buchstaben werden nie kleiner, als sie auf Armlänge zu lesen sind: was nicht auf eine Seite passt, kommt auf die nächste, und was fehlt, wird genannt. Ein eigenes Layout ist eine Druckvorlage, in der Beschriftungen sagen, was wo steht: am besten mit einem von Tideleg beginnen.
Blatt für den Kontakt an Land: wer draußen ist, wo, wann zurück, um welche Zeit der Kontakt handelt und was er dann tut, wohin eine Boje in 30, 60 und 120 Minuten triebe. Als Seiten in A4 und als eine HTML-Datei, die sich auf einem Telefon ohne jedes Netz öffnet.

Boje, Flagge, Notrufnummern: was leer bleibt, kommt aus den Einstellungen des Plans; nichts wird angenommen. Mehrere Nummern trennt ein Strichpunkt.
Wind: schiebt die Boje, die treibt; bleibt er leer, zählt sein Schub nicht, und das Blatt sagt es.

Eine Vorhersage, keine Beobachtung; machbar heißt nicht sicher; nie allein tauchen. Nicht für die Schifffahrt.</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Flag and its colours</source>
        <translation>Flagge und ihre Farben</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Emergency numbers (with ; between them)</source>
        <translation>Notrufnummern (mit ; dazwischen)</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Note to the shore contact</source>
        <translation>Hinweis für den Kontakt an Land</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Wet card as a picture</source>
        <translation>Nasskarte als Bild</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <location filename="../processing/swimfiles.py"/>
        <source>Wet card as plain text</source>
        <translation>Nasskarte als reiner Text</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Shore contact's sheet</source>
        <translation>Blatt für den Kontakt an Land</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Shore contact's sheet for a telephone</source>
        <translation>Blatt für den Kontakt an Land, fürs Telefon</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>Leave the marks out, to share the card: no positions, headings or distances</source>
        <translation>Marken weglassen, um die Karte weiterzugeben: keine Positionen, Kurse und Entfernungen</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <source>The shore contact's sheet says where you are and is not to be shared: leave {} empty.</source>
        <translation>Das Blatt für den Kontakt an Land sagt, wo man ist, und wird nicht weitergegeben: {} leer lassen.</translation>
    </message>
    <message>
        <location filename="../processing/swimcard.py"/>
        <location filename="../processing/swimfiles.py"/>
        <source>No file was asked for: name at least one.</source>
        <translation>Es wurde keine Datei verlangt: mindestens eine nennen.</translation>
    </message>
    <message>
        <location filename="../processing/swimfiles.py"/>
        <source>Files for a GPS</source>
        <translation>Dateien für ein GPS</translation>
    </message>
    <message>
        <location filename="../processing/swimfiles.py"/>
        <source>gpx,gps,kml,geojson,csv,waypoint,route,track,export,share</source>
        <translation>gpx,gps,kml,geojson,csv,Wegpunkt,Route,Spur,Export,weitergeben</translation>
    </message>
    <message>
        <location filename="../processing/swimfiles.py"/>
        <source>Plans a swim and writes it for a GPS and for other programs. Each file is read again and held against the plan before it is kept.

GPX: places as waypoints, the legs as a route, the predicted track with its times. KML, GeoJSON: places, legs, track and flags. CSV: the legs as a table, safe for spreadsheets. Text: the wet card.

Length of names: what a small receiver shows, 6 to 10 letters; names stay different. Points on the way: waypoints on the track really swum, every so many metres of each leg. What is left empty comes from the plan's settings.
Leave the marks out: for files to share. Entries and exits stay; marks have no positions, and there is nothing to find them by.

Everything is predicted. Not for navigation. Marks are private: the other files say where they are.</source>
        <translation>Plant eine Tour und schreibt sie für ein GPS und für andere Programme. Jede Datei wird zurückgelesen und mit dem Plan verglichen, bevor sie behalten wird.

GPX: Orte als Wegpunkte, die Abschnitte als Route, die vorhergesagte Spur mit ihren Zeiten. KML, GeoJSON: Orte, Abschnitte, Spur und Meldungen. CSV: die Abschnitte als Tabelle, ungefährlich für Tabellenprogramme. Text: die Nasskarte.

Länge der Namen: was ein kleiner Empfänger zeigt, 6 bis 10 Buchstaben; Namen bleiben verschieden. Punkte auf dem Weg: Wegpunkte auf der wirklich geschwommenen Spur, alle so viele Meter jedes Abschnitts. Was leer bleibt, kommt aus den Einstellungen des Plans.
Marken weglassen: für Dateien zum Weitergeben. Ein- und Ausstiege bleiben; Marken haben keine Positionen, und nichts führt zu ihnen.

Alles ist vorhergesagt. Nicht für die Schifffahrt. Marken sind privat: die anderen Dateien sagen, wo sie liegen.</translation>
    </message>
    <message>
        <location filename="../processing/swimfiles.py"/>
        <source>Leave the marks out, to share the files</source>
        <translation>Marken weglassen, um die Dateien weiterzugeben</translation>
    </message>
    <message>
        <location filename="../processing/swimfiles.py"/>
        <source>Marks, route and track for a GPS</source>
        <translation>Marken, Route und Spur für ein GPS</translation>
    </message>
    <message>
        <location filename="../processing/swimfiles.py"/>
        <source>KML</source>
        <translation>KML</translation>
    </message>
    <message>
        <location filename="../processing/swimfiles.py"/>
        <source>GeoJSON</source>
        <translation>GeoJSON</translation>
    </message>
    <message>
        <location filename="../processing/text_reading.py"/>
        <source>Preview, write nothing</source>
        <translation>Vorschau, nichts schreiben</translation>
    </message>
    <message>
        <location filename="../processing/text_reading.py"/>
        <source>CSV files (*.csv)</source>
        <translation>CSV-Dateien (*.csv)</translation>
    </message>
    <message>
        <location filename="../processing/text_reading.py"/>
        <source>Give a file (FILE) or a text (TEXT), not both.</source>
        <translation>Eine Datei (FILE) oder einen Text (TEXT) angeben, nicht beides.</translation>
    </message>
    <message>
        <location filename="../processing/text_reading.py"/>
        <source>There is nothing to read: give a file (FILE) or paste a text (TEXT).</source>
        <translation>Es gibt nichts zu lesen: eine Datei (FILE) angeben oder einen Text (TEXT) einfügen.</translation>
    </message>
    <message>
        <location filename="../processing/text_reading.py"/>
        <source>A preview writes nothing: leave out EXPORT or PREVIEW.</source>
        <translation>Eine Vorschau schreibt nichts: EXPORT oder PREVIEW weglassen.</translation>
    </message>
    <message>
        <location filename="../processing/text_reading.py"/>
        <source>{} rows exported</source>
        <translation>{} Zeilen ausgegeben</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>Transits of marks</source>
        <translation>Deckpeilungen der Marken</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>transit,landmark,mark,line,bearing,fix,in line,leading</source>
        <translation>Deckpeilung,Landmarke,Marke,Linie,Peilung,Standort,in Linie,Richtlinie</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>A transit is two things ashore seen in line. Two transits that cross near a right angle bring you back to a mark without any instrument. For each mark the best pairs are listed, with the bearing of each line, how far it passes from the mark, how far you stray before the two visibly open (5 minutes of arc), and how far from the mark the pair can be expected to put you.

Mark: a name; empty for every mark of kind mark.
Landmarks: a layer of points with a field of names, in the place of the plan's landmarks.
Offset: lines that pass farther from the mark than this are not looked at.
Put into the plan: the best pair of each mark goes into the plan's transits, and onto the wet card. A mark that has transits there keeps them.

Fronts lie from 100 m away, rears up to 10 km, and lines of a pair cross at 60 degrees or more. Whether a landmark is hidden by land, trees or houses is not known here: look before you rely on one. Not for navigation.</source>
        <translation>Eine Deckpeilung sind zwei Dinge an Land, die in Linie zu sehen sind. Zwei Deckpeilungen, die sich nahezu im rechten Winkel kreuzen, bringen dich ohne jedes Gerät zu einer Marke zurück. Für jede Marke stehen da die besten Paare, mit der Peilung jeder Linie, wie weit sie an der Marke vorbeigeht, wie weit du abkommst, bis sich die beiden sichtbar öffnen (5 Bogenminuten), und wie weit von der Marke dich das Paar voraussichtlich bringt.

Marke: ein Name; leer für jede Marke der Art „mark“.
Landmarken: ein Layer von Punkten mit einem Feld für Namen, anstelle der Landmarken des Plans.
Abstand: Linien, die weiter an der Marke vorbeigehen, werden nicht betrachtet.
In den Plan: das beste Paar jeder Marke kommt zu den Deckpeilungen des Plans und auf die Nasskarte. Eine Marke, die dort schon welche hat, behält sie.

Vordere liegen ab 100 m, hintere bis 10 km entfernt, und die Linien eines Paars kreuzen sich unter 60 Grad oder mehr. Ob Land, Bäume oder Häuser eine Landmarke verdecken, ist hier nicht bekannt: sieh nach, bevor du dich darauf verlässt. Nicht zur Navigation.</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>Mark (empty for all)</source>
        <translation>Marke (leer für alle)</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>Landmarks, in place of the plan's</source>
        <translation>Landmarken, anstelle derer des Plans</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>Line passes within (m)</source>
        <translation>Linie geht vorbei innerhalb von (m)</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>Day of the magnetic variation (empty for today)</source>
        <translation>Tag der Missweisung (leer für heute)</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>Put the best pair of each mark into the plan</source>
        <translation>Bestes Paar jeder Marke in den Plan übernehmen</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>Pairs found</source>
        <translation>Gefundene Paare</translation>
    </message>
    <message>
        <location filename="../processing/transits.py"/>
        <source>Transits put into the plan</source>
        <translation>In den Plan übernommene Deckpeilungen</translation>
    </message>
    <message>
        <location filename="../processing/turnback.py"/>
        <source>Turn back</source>
        <translation>Umkehr</translation>
    </message>
    <message>
        <location filename="../processing/turnback.py"/>
        <source>turn back,latest,leave,exit,late,reserve,dusk,no return,group</source>
        <translation>Umkehr,spätestens,Aufbruch,Ausstieg,verspätet,Reserve,Dämmerung,kein Zurück,Gruppe</translation>
    </message>
    <message>
        <location filename="../processing/turnback.py"/>
        <source>Plans a swim and says when each stop must be left: the bands of leaving times from which the best of all exits is reached before dusk, the swimmer's hours, the plan's `back_by` and the alarm, with the reserve of the plan's settings kept (reserve_factor times the way home, and reserve_min on top), on the day expected and on a bad day: a tenth slower, every stream stronger by its doubt and turning early, on time or late.
The alarm is kept without the reserve, as it goes out a fixed time after the planned return.

Ways home: by the quickest exit at and after the planned leaving, and to the planned exit by the quarter of an hour, with headings and minutes. Points of no return: the last place on each leg from which turning back is in time; a leg without one lets you turn anywhere.

Exits: the route's end, its start, and every mark of the kind exit. Several swimmers, with semicolons between their names, are a group: their times together, and each one's alone in the report.

A prediction: minutes late can cost hours where the stream turns. Feasible is not safe; never dive alone.</source>
        <translation>Plant eine Tour und sagt, wann jeder Halt zu verlassen ist: die Spannen der Aufbruchszeiten, aus denen der beste aller Ausstiege vor der Abenddämmerung, den Stunden des Schwimmers, `back_by` des Plans und dem Alarm erreicht wird, mit der Reserve aus den Einstellungen des Plans (reserve_factor mal der Heimweg, und reserve_min dazu), am erwarteten Tag und an einem schlechten: ein Zehntel langsamer, jeder Strom um seine Unsicherheit stärker und früher, pünktlich oder später kenternd.
Der Alarm wird ohne die Reserve eingehalten, da er eine feste Zeit nach der geplanten Rückkehr ausgelöst wird.

Heimwege: zum schnellsten Ausstieg beim geplanten Aufbruch und danach, und zum geplanten Ausstieg jede Viertelstunde, mit Kursen und Minuten. Punkte ohne Zurück: der letzte Ort auf jedem Abschnitt, von dem aus die Umkehr rechtzeitig ist; auf einem Abschnitt ohne ihn ist die Umkehr überall möglich.

Ausstiege: das Ende der Route, ihr Anfang, und jede Marke der Art Ausstieg. Mehrere Schwimmer mit Strichpunkten zwischen ihren Namen sind eine Gruppe: ihre gemeinsamen Zeiten, und die jedes Einzelnen im Bericht.

Eine Vorhersage: Minuten Verspätung können Stunden kosten, wo der Strom kentert. Machbar heißt nicht sicher; nie allein tauchen.</translation>
    </message>
    <message>
        <location filename="../processing/turnback.py"/>
        <source>Ways home</source>
        <translation>Heimwege</translation>
    </message>
    <message>
        <location filename="../processing/turnback.py"/>
        <source>Bands of leaving times</source>
        <translation>Spannen der Aufbruchszeiten</translation>
    </message>
    <message>
        <location filename="../processing/turnback.py"/>
        <source>Points of no return</source>
        <translation>Punkte ohne Zurück</translation>
    </message>
    <message>
        <location filename="../processing/whole_outputs.py"/>
        <source>Asked to write {}, which this run reads from</source>
        <translation>Verlangt, {} zu schreiben, woraus dieser Lauf liest</translation>
    </message>
    <message>
        <location filename="../processing/whole_outputs.py"/>
        <source>Outputs go to files of their own, so that nothing of yours is lost</source>
        <translation>Ausgaben kommen in eigene Dateien, damit nichts verloren geht</translation>
    </message>
    <message>
        <location filename="../processing/whole_outputs.py"/>
        <source>Asked to write {}, which is a plan</source>
        <translation>Nach {} sollte geschrieben werden, und das ist ein Plan</translation>
    </message>
    <message>
        <location filename="../processing/whole_outputs.py"/>
        <source>Written were: {}</source>
        <translation>Geschrieben wurden: {}</translation>
    </message>
    <message>
        <location filename="../processing/whole_outputs.py"/>
        <source>Not written: {}. {}</source>
        <translation>Nicht geschrieben: {}. {}</translation>
    </message>
    <message>
        <location filename="../processing/whole_outputs.py"/>
        <source>Could not write {}</source>
        <translation>{} konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <location filename="../processing/whole_outputs.py"/>
        <source>Outputs go to a folder that can be written to, under a name that is no folder's</source>
        <translation>Ausgaben kommen in einen beschreibbaren Ordner, unter einem Namen, den kein Ordner hat</translation>
    </message>
    <message>
        <location filename="../processing/whole_outputs.py"/>
        <source>Choose another folder or name</source>
        <translation>Einen anderen Ordner oder Namen wählen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Places a swim starts, stops, passes or ends at.</source>
        <translation>Orte, an denen eine Tour beginnt, hält, vorbeikommt oder endet.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The name printed on the card. A vertex of a route within 15 m of the mark takes it.</source>
        <translation>Der Name, der auf der Nasskarte steht. Ein Stützpunkt einer Route näher als 15 m an der Marke übernimmt ihn.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What the place is for.</source>
        <translation>Wofür der Ort da ist.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Entry (where the swim starts)</source>
        <translation>Einstieg (wo die Tour beginnt)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mark (a place to dive)</source>
        <translation>Marke (ein Ort zum Tauchen)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Exit (where one can land)</source>
        <translation>Ausstieg (wo man landen kann)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Waypoint (passed without a stop)</source>
        <translation>Wegpunkt (ohne Halt passiert)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes spent here before swimming on.</source>
        <translation>Minuten, die man hier bleibt, bevor es weitergeht.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Charted depth (m)</source>
        <translation>Kartentiefe (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Depth below the plan's datum, positive down. Left empty, it is taken from soundings and contours.</source>
        <translation>Tiefe unter dem Bezugsniveau des Plans, nach unten positiv. Leer wird sie aus Lotungen und Tiefenlinien genommen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Bottom</source>
        <translation>Grund</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What the seabed is made of: rock, sand, weed and so on.</source>
        <translation>Woraus der Meeresgrund besteht: Fels, Sand, Kraut und so weiter.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Anything worth knowing, in words.</source>
        <translation>Alles, was wissenswert ist, in Worten.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>One line per swim. Vertices are the stops in swimming order.</source>
        <translation>Eine Linie je Tour. Stützpunkte sind die Halte in der Reihenfolge des Schwimmens.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The name by which a plan is asked for.</source>
        <translation>Der Name, unter dem ein Plan verlangt wird.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Where boats run. An area, or a line with a width.</source>
        <translation>Wo Boote fahren. Eine Fläche, oder eine Linie mit Breite.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The name used in warnings; ferry times refer to it.</source>
        <translation>Der Name in Warnungen; Fährzeiten beziehen sich darauf.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What sort of channel it is.</source>
        <translation>Was für ein Fahrwasser es ist.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Fairway</source>
        <translation>Betonntes Fahrwasser</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Ferry track</source>
        <translation>Fährstrecke</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Traffic lane</source>
        <translation>Einbahnweg</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Small craft channel</source>
        <translation>Fahrwasser für Kleinfahrzeuge</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Width of a line (m)</source>
        <translation>Breite einer Linie (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Full width of a channel drawn as a line. Areas need none.</source>
        <translation>Volle Breite eines Fahrwassers, das als Linie gezeichnet ist. Flächen brauchen keine.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Boats' direction (deg true)</source>
        <translation>Richtung der Boote (deg true)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>True direction boats run. Left empty, it is taken from the shape.</source>
        <translation>Rechtweisende Richtung, in der Boote fahren. Leer wird sie aus der Form genommen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Boat speed (kn)</source>
        <translation>Geschwindigkeit der Boote (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Speed of the boats to reckon with; gives the clear water a crossing needs.</source>
        <translation>Geschwindigkeit der Boote, mit der zu rechnen ist; ergibt das freie Wasser, das eine Querung braucht.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Areas with a rule. An area that is not drawn here is not thereby permitted.</source>
        <translation>Gebiete mit einer Regel. Ein Gebiet, das hier nicht gezeichnet ist, ist damit nicht erlaubt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The name used in warnings.</source>
        <translation>Der Name in Warnungen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What the area forbids or warns of.</source>
        <translation>Was das Gebiet verbietet oder wovor es warnt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>No entry</source>
        <translation>Kein Zutritt</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>No spearing</source>
        <translation>Speerfischen verboten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>No anchoring</source>
        <translation>Ankern verboten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>No loaded gun</source>
        <translation>Keine geladene Harpune</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>From (plan's zone)</source>
        <translation>Von (Zone des Plans)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Start of the rule: HH:MM each day, a date YYYY-MM-DD, a date and time, or --MMDD each year.</source>
        <translation>Beginn der Regel: HH:MM täglich, ein Tag YYYY-MM-DD, Tag und Uhrzeit, oder --MMDD jedes Jahr.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>HH:MM each day, a date YYYY-MM-DD, a date and time, or --MMDD each year</source>
        <translation>HH:MM an jedem Tag, ein Datum JJJJ-MM-TT, Datum und Uhrzeit, oder --MMTT in jedem Jahr</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>To (plan's zone)</source>
        <translation>Bis (Zone des Plans)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>End of the rule: HH:MM each day, a date YYYY-MM-DD, a date and time, or --MMDD each year.</source>
        <translation>Ende der Regel: HH:MM täglich, ein Tag YYYY-MM-DD, Tag und Uhrzeit, oder --MMDD jedes Jahr.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Citation</source>
        <translation>Fundstelle</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Where the rule is written down.</source>
        <translation>Wo die Regel geschrieben steht.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Checked on</source>
        <translation>Geprüft am</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The day somebody last read the rule, YYYY-MM-DD.</source>
        <translation>Der Tag, an dem zuletzt jemand die Regel gelesen hat, YYYY-MM-DD.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>a date YYYY-MM-DD</source>
        <translation>ein Datum JJJJ-MM-TT</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Dry land, islands and rocks. Swims do not cross it, streams are not carried across it.</source>
        <translation>Trockenes Land, Inseln und Felsen. Touren kreuzen es nicht, Ströme werden nicht darüber getragen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>A name, if it has one.</source>
        <translation>Ein Name, wenn es einen gibt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Lines of equal charted depth.</source>
        <translation>Linien gleicher Kartentiefe.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Depth (m)</source>
        <translation>Tiefe (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Depth of the line below the plan's datum, positive down.</source>
        <translation>Tiefe der Linie unter dem Bezugsniveau des Plans, nach unten positiv.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Single charted depths, rocks and wrecks among them.</source>
        <translation>Einzelne Kartentiefen, darunter Felsen und Wracks.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Depth below the plan's datum, positive down.</source>
        <translation>Tiefe unter dem Bezugsniveau des Plans, nach unten positiv.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Landmarks</source>
        <translation>Landmarken</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Things ashore that can be told from the water. Two of them in line make a transit.</source>
        <translation>Was an Land vom Wasser aus zu erkennen ist. Zwei davon in Linie geben eine Deckpeilung.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The name printed on the card. Transits refer to it, so it stands once.</source>
        <translation>Der Name auf der Karte. Deckpeilungen beziehen sich auf ihn, deshalb steht er nur einmal da.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What it is: one of these, or a word of your own.</source>
        <translation>Was es ist: eines von diesen oder ein eigenes Wort.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Tower</source>
        <translation>Turm</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Church tower or spire</source>
        <translation>Kirchturm oder Turmspitze</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Chimney</source>
        <translation>Schornstein</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mast</source>
        <translation>Mast</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Windmill or wind turbine</source>
        <translation>Windmühle oder Windrad</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Dome</source>
        <translation>Kuppel</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Monument</source>
        <translation>Denkmal</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Cross</source>
        <translation>Kreuz</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Cairn</source>
        <translation>Steinmännchen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Flagpole</source>
        <translation>Fahnenmast</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Building</source>
        <translation>Gebäude</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Tank or silo</source>
        <translation>Tank oder Silo</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Beacon</source>
        <translation>Bake</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rock</source>
        <translation>Felsen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Edge of a headland</source>
        <translation>Kante einer Landspitze</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Height of the top (m)</source>
        <translation>Höhe der Spitze (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Height of its top above high water.</source>
        <translation>Höhe seiner Spitze über Hochwasser.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Two landmarks in line as seen from a mark. The names count; the line only shows it.</source>
        <translation>Zwei Landmarken, die von einer Marke aus in Linie stehen. Es zählen die Namen; die Linie zeigt es nur.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the mark that lies on the line.</source>
        <translation>Name der Marke, die auf der Linie liegt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the nearer landmark.</source>
        <translation>Name der näheren Landmarke.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rear</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the farther landmark, seen over or beside the front one.</source>
        <translation>Name der ferneren Landmarke, die über oder neben der vorderen zu sehen ist.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>High and low waters, by port.</source>
        <translation>Hoch- und Niedrigwasser, nach Hafen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the port the heights belong to.</source>
        <translation>Name des Hafens, zu dem die Höhen gehören.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Time (UTC)</source>
        <translation>Zeit (UTC)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moment of the high or low water, in UTC.</source>
        <translation>Zeitpunkt des Hoch- oder Niedrigwassers, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Height (m)</source>
        <translation>Höhe (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Height above the plan's datum, positive up.</source>
        <translation>Höhe über dem Bezugsniveau des Plans, nach oben positiv.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>High water or low water.</source>
        <translation>Hochwasser oder Niedrigwasser.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>High water</source>
        <translation>Hochwasser</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Low water</source>
        <translation>Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Tide ports</source>
        <translation>Gezeitenhäfen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>How the tide of each port is given. A port without a row here is given by its high and low waters.</source>
        <translation>Wie die Gezeit jedes Hafens gegeben ist. Ein Hafen ohne Zeile hier ist durch seine Hoch- und Niedrigwasser gegeben.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the port.</source>
        <translation>Name des Hafens.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>How the tide of the port is given.</source>
        <translation>Wie die Gezeit des Hafens gegeben ist.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>High and low waters</source>
        <translation>Hoch- und Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Heights at even times</source>
        <translation>Höhen in gleichen Abständen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Harmonic constants</source>
        <translation>Harmonische Konstanten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Differences from another port</source>
        <translation>Unterschiede zu einem anderen Hafen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean level above the plan's datum (m)</source>
        <translation>Mittleres Niveau über dem Bezugsniveau des Plans (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Height of the level that the constants swing about (Z0) above the plan's datum. Empty means 0.</source>
        <translation>Höhe des Niveaus, um das die Konstanten schwingen (Z0), über dem Bezugsniveau des Plans. Leer heißt 0.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Reference port</source>
        <translation>Bezugsort</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Port whose waters a secondary port's differences are added to.</source>
        <translation>Hafen, zu dessen Hoch- und Niedrigwassern die Unterschiede eines Anschlussorts gezählt werden.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Secondary port</source>
        <translation>Anschlussort</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>High water, springs, later by (min)</source>
        <translation>Hochwasser, Springzeit, später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes to add to the reference port's time of high water at springs.</source>
        <translation>Minuten, die zur Springzeit zur Hochwasserzeit des Bezugsorts zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>High water, neaps, later by (min)</source>
        <translation>Hochwasser, Nippzeit, später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes to add to the reference port's time of high water at neaps.</source>
        <translation>Minuten, die zur Nippzeit zur Hochwasserzeit des Bezugsorts zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Low water, springs, later by (min)</source>
        <translation>Niedrigwasser, Springzeit, später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes to add to the reference port's time of low water at springs.</source>
        <translation>Minuten, die zur Springzeit zur Niedrigwasserzeit des Bezugsorts zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Low water, neaps, later by (min)</source>
        <translation>Niedrigwasser, Nippzeit, später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes to add to the reference port's time of low water at neaps.</source>
        <translation>Minuten, die zur Nippzeit zur Niedrigwasserzeit des Bezugsorts zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>High water, springs, higher by (m)</source>
        <translation>Hochwasser, Springzeit, höher um (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Metres to add to the reference port's height of high water at springs.</source>
        <translation>Meter, die zur Springzeit zur Hochwasserhöhe des Bezugsorts zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>High water, neaps, higher by (m)</source>
        <translation>Hochwasser, Nippzeit, höher um (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Metres to add to the reference port's height of high water at neaps.</source>
        <translation>Meter, die zur Nippzeit zur Hochwasserhöhe des Bezugsorts zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Low water, springs, higher by (m)</source>
        <translation>Niedrigwasser, Springzeit, höher um (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Metres to add to the reference port's height of low water at springs.</source>
        <translation>Meter, die zur Springzeit zur Niedrigwasserhöhe des Bezugsorts zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Low water, neaps, higher by (m)</source>
        <translation>Niedrigwasser, Nippzeit, höher um (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Metres to add to the reference port's height of low water at neaps.</source>
        <translation>Meter, die zur Nippzeit zur Niedrigwasserhöhe des Bezugsorts zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Where the figures come from.</source>
        <translation>Woher die Zahlen kommen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Latitude (deg)</source>
        <translation>Breite (deg)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Latitude of the port, north positive: a small part of what corrects its constants for the year. Empty leaves that part out.</source>
        <translation>Geographische Breite des Hafens, Nord positiv: ein kleiner Teil dessen, was seine Konstanten für das Jahr berichtigt. Leer lässt diesen Teil weg.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean high water at springs (m)</source>
        <translation>Mittleres Springhochwasser (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean height of the port's high water at springs above the plan's datum. Secondary ports that refer to it are interpolated between these; empty means told from its table.</source>
        <translation>Mittlere Höhe des Springhochwassers im Hafen über dem Bezugsniveau des Plans. Anschlussorte, die sich auf ihn beziehen, werden zwischen diesen Höhen interpoliert; leer heißt, aus seiner Tafel ermittelt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean levels</source>
        <translation>Mittlere Höhen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean high water at neaps (m)</source>
        <translation>Mittleres Nipphochwasser (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean height of the port's high water at neaps above the plan's datum. Secondary ports that refer to it are interpolated between these; empty means told from its table.</source>
        <translation>Mittlere Höhe des Nipphochwassers im Hafen über dem Bezugsniveau des Plans. Anschlussorte, die sich auf ihn beziehen, werden zwischen diesen Höhen interpoliert; leer heißt, aus seiner Tafel ermittelt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean low water at neaps (m)</source>
        <translation>Mittleres Nippniedrigwasser (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean height of the port's low water at neaps above the plan's datum. Secondary ports that refer to it are interpolated between these; empty means told from its table.</source>
        <translation>Mittlere Höhe des Nippniedrigwassers im Hafen über dem Bezugsniveau des Plans. Anschlussorte, die sich auf ihn beziehen, werden zwischen diesen Höhen interpoliert; leer heißt, aus seiner Tafel ermittelt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean low water at springs (m)</source>
        <translation>Mittleres Springniedrigwasser (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean height of the port's low water at springs above the plan's datum. Secondary ports that refer to it are interpolated between these; empty means told from its table.</source>
        <translation>Mittlere Höhe des Springniedrigwassers im Hafen über dem Bezugsniveau des Plans. Anschlussorte, die sich auf ihn beziehen, werden zwischen diesen Höhen interpoliert; leer heißt, aus seiner Tafel ermittelt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Tide heights at even times</source>
        <translation>Gezeitenhöhen in gleichen Abständen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Heights of tide every few minutes or every hour, by port.</source>
        <translation>Höhen der Gezeit alle paar Minuten oder jede Stunde, nach Hafen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moment of the height, in UTC.</source>
        <translation>Zeitpunkt der Höhe, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Tide constants</source>
        <translation>Gezeitenkonstanten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Harmonic constants of the height of tide, by port.</source>
        <translation>Harmonische Konstanten der Höhe der Gezeit, nach Hafen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the port the constants belong to.</source>
        <translation>Name des Hafens, zu dem die Konstanten gehören.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Constituent</source>
        <translation>Teiltide</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Standard name of the constituent, such as M2.</source>
        <translation>Üblicher Name der Teiltide, wie M2.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Amplitude (m)</source>
        <translation>Amplitude (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Half the range it makes.</source>
        <translation>Der halbe Hub, den sie macht.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Phase (deg)</source>
        <translation>Phase (deg)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Greenwich phase lag, in UTC.</source>
        <translation>Greenwich-Phasenverspätung, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Tide coefficients</source>
        <translation>Tidenkoeffizienten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Coefficient of each tide, by port: about 20 at the smallest, 120 at the largest, 45 at mean neaps and 95 at mean springs.</source>
        <translation>Koeffizient jeder Tide, nach Hafen: etwa 20 bei der kleinsten, 120 bei der größten, 45 zur mittleren Nippzeit und 95 zur mittleren Springzeit.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the port the coefficients belong to.</source>
        <translation>Name des Hafens, zu dem die Koeffizienten gehören.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moment of the high water the coefficient stands beside, in UTC.</source>
        <translation>Zeitpunkt des Hochwassers, bei dem der Koeffizient steht, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Coefficient</source>
        <translation>Koeffizient</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Coefficient of that tide.</source>
        <translation>Koeffizient dieser Tide.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Places where the tidal stream is known. Where there is none, the stream is unknown, not zero.</source>
        <translation>Orte, an denen der Gezeitenstrom bekannt ist. Wo keiner ist, ist der Strom nicht bekannt, nicht null.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the station; the stream tables refer to it.</source>
        <translation>Name der Station; die Stromtafeln beziehen sich darauf.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>How the stream is given.</source>
        <translation>Wie der Strom gegeben ist.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hourly table (-6 h to +6 h)</source>
        <translation>Stundentafel (-6 h bis +6 h)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Slack and maximum events</source>
        <translation>Ereignisse: Stauwasser und Maximum</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Constant (no tide needed)</source>
        <translation>Konstant (keine Gezeit nötig)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hourly table by tide coefficient (45 and 95)</source>
        <translation>Stundentafel nach Tidenkoeffizient (45 und 95)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Slacks and maxima by differences from another station</source>
        <translation>Stauwasser und Maxima mit Unterschieden zu einer anderen Station</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Slack so long after high or low water, and one rate</source>
        <translation>Stauwasser so lange nach Hoch- oder Niedrigwasser, und eine Stärke</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set and rate at set times</source>
        <translation>Richtung und Stärke zu festen Zeiten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Driven by the wind</source>
        <translation>Vom Wind getrieben</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hours counted from</source>
        <translation>Stunden gezählt ab</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Which tide an hourly table counts from. A constant station needs none.</source>
        <translation>Ab welcher Tide eine Stundentafel zählt. Eine konstante Station braucht keine.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hours from high water</source>
        <translation>Stunden ab Hochwasser</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hours from low water</source>
        <translation>Stunden ab Niedrigwasser</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Port whose tides the hours and the range are taken from.</source>
        <translation>Hafen, aus dessen Gezeiten Stunden und Tidenhub genommen werden.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Spring range (m)</source>
        <translation>Springtidenhub (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean range of the port at springs.</source>
        <translation>Mittlerer Tidenhub des Hafens zur Springzeit.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Neap range (m)</source>
        <translation>Nipptidenhub (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mean range of the port at neaps.</source>
        <translation>Mittlerer Tidenhub des Hafens zur Nippzeit.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Confidence</source>
        <translation>Vertrauen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What kind of source it is, best first; the best one in reach rules. Empty, or any other text, means a table.</source>
        <translation>Was für eine Quelle es ist, die beste zuerst; die beste in Reichweite gilt. Leer oder jeder andere Text heißt Tafel.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Own measurement</source>
        <translation>Eigene Messung</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Official table of the place</source>
        <translation>Amtliche Tafel des Orts</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hourly table of the region</source>
        <translation>Stundentafel der Gegend</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Words (a pilot book, a local)</source>
        <translation>Worte (ein Seehandbuch, ein Ortskundiger)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rules within (m)</source>
        <translation>Gilt im Umkreis von (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>How far from its place the station rules over what is less trusted (common practice, no source).</source>
        <translation>Wie weit von ihrem Ort die Station weniger Vertrautem vorgeht (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Trust</source>
        <translation>Vertrauen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate may be off by this share</source>
        <translation>Stärke unsicher um diesen Anteil</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Share of the rate by which it may be stronger or weaker; 0.30 is common practice, no source.</source>
        <translation>Anteil der Stärke, um den sie größer oder kleiner sein kann; 0.30 ist übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Clock may be off by (min)</source>
        <translation>Uhr unsicher um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes by which the stream may turn earlier or later; 30 is common practice, no source.</source>
        <translation>Minuten, um die der Strom früher oder später kentern kann; 30 ist übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate of the day times</source>
        <translation>Stärke des Tages mal</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The day's correction of the rate, from a timed drift for instance.</source>
        <translation>Die Berichtigung der Stärke für den Tag, etwa aus einer gestoppten Drift.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Clock of the day later by (min)</source>
        <translation>Uhr des Tages später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The day's correction of the clock, later positive, from timed drifts for instance.</source>
        <translation>Die Berichtigung der Uhr für den Tag, später positiv, etwa aus gestoppten Driften.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Reference station</source>
        <translation>Bezugsstation</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Station whose slacks and maxima a subordinate place's differences are added to.</source>
        <translation>Station, zu deren Stauwassern und Maxima die Unterschiede eines Nebenorts gezählt werden.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Differences from another station</source>
        <translation>Unterschiede zu einer anderen Station</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Slack before flood, later by (min)</source>
        <translation>Stauwasser vor Flut, später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes to add.</source>
        <translation>Minuten, die zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Maximum flood, later by (min)</source>
        <translation>Größter Flutstrom, später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Slack before ebb, later by (min)</source>
        <translation>Stauwasser vor Ebbe, später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Maximum ebb, later by (min)</source>
        <translation>Größter Ebbstrom, später um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Flood rate times</source>
        <translation>Stärke der Flut mal</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Ratio of the rates.</source>
        <translation>Verhältnis der Stärken.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Ebb rate times</source>
        <translation>Stärke der Ebbe mal</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Slack after the tide by (min)</source>
        <translation>Stauwasser nach der Tide um (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes from the reference water (high or low) to slack, later positive.</source>
        <translation>Minuten vom Bezugswasser (Hoch- oder Niedrigwasser) bis Stauwasser, später positiv.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Sets and slack offset</source>
        <translation>Richtungen und Abstand des Stauwassers</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set of the flood (deg true)</source>
        <translation>Richtung der Flut (deg true)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>True direction the flood runs towards.</source>
        <translation>Rechtweisende Richtung, wohin die Flut setzt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set of the ebb (deg true)</source>
        <translation>Richtung der Ebbe (deg true)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>True direction the ebb runs towards.</source>
        <translation>Rechtweisende Richtung, wohin die Ebbe setzt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Largest rate at springs (kn)</source>
        <translation>Größte Stärke zur Springzeit (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Largest rate between slacks at springs.</source>
        <translation>Größte Stärke zwischen zwei Stauwassern zur Springzeit.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Largest rate at neaps (kn)</source>
        <translation>Größte Stärke zur Nippzeit (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Largest rate between slacks at neaps.</source>
        <translation>Größte Stärke zwischen zwei Stauwassern zur Nippzeit.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate as a share of the wind (%)</source>
        <translation>Stärke als Anteil des Winds (%)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Share of the wind's speed.</source>
        <translation>Anteil der Windgeschwindigkeit.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Turned to the right by (deg)</source>
        <translation>Nach rechts gedreht um (deg)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Degrees to the right of down wind, left negative. Empty means 0.</source>
        <translation>Grad rechts von der Richtung, wohin der Wind weht, links negativ. Leer heißt 0.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set and rate for each hour from the reference tide. A constant station has one row, hour 0.</source>
        <translation>Richtung und Stärke für jede Stunde ab der Bezugstide. Eine konstante Station hat eine Zeile, Stunde 0.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the stream station.</source>
        <translation>Name der Stromstation.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hour from the tide (h)</source>
        <translation>Stunde ab der Tide (h)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hours before (-) or after (+) the reference tide.</source>
        <translation>Stunden vor (-) oder nach (+) der Bezugstide.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set (deg true)</source>
        <translation>Stromrichtung (deg true)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>True direction the stream runs towards.</source>
        <translation>Rechtweisende Richtung, wohin der Strom setzt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate at springs (kn)</source>
        <translation>Stärke zur Springzeit (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate at springs. Empty means unknown, not zero.</source>
        <translation>Stärke zur Springzeit. Leer heißt nicht bekannt, nicht null.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate at neaps (kn)</source>
        <translation>Stärke zur Nippzeit (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate at neaps. Empty means unknown, not zero.</source>
        <translation>Stärke zur Nippzeit. Leer heißt nicht bekannt, nicht null.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Stream slacks and maxima</source>
        <translation>Stauwasser und Maxima des Stroms</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moments of slack water and of the strongest stream.</source>
        <translation>Zeitpunkte von Stauwasser und stärkstem Strom.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moment of the slack or maximum, in UTC.</source>
        <translation>Zeitpunkt des Stauwassers oder Maximums, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Slack or maximum.</source>
        <translation>Stauwasser oder Maximum.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate, flood +, ebb - (kn)</source>
        <translation>Stärke, Flut +, Ebbe - (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate at the moment: flood positive, ebb negative, slack 0.</source>
        <translation>Stärke zu diesem Zeitpunkt: Flut positiv, Ebbe negativ, Stauwasser 0.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Streams at set times</source>
        <translation>Ströme zu festen Zeiten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set and rate at moments, as a current meter or a chart's time series gives them.</source>
        <translation>Richtung und Stärke zu Zeitpunkten, wie sie ein Strommesser oder die Zeitreihe einer Seekarte gibt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moment of the set and rate, in UTC.</source>
        <translation>Zeitpunkt von Richtung und Stärke, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate (kn)</source>
        <translation>Stärke (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate at the moment. Empty means unknown, not zero.</source>
        <translation>Stärke zu diesem Zeitpunkt. Leer heißt nicht bekannt, nicht null.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Stream constants</source>
        <translation>Stromkonstanten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Harmonic constants of the stream's east and north parts, by station. Z0 is a mean, with phase 0.</source>
        <translation>Harmonische Konstanten des Ost- und Nordanteils des Stroms, nach Station. Z0 ist ein Mittel, mit Phase 0.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Standard name of the constituent, such as M2; Z0 for the mean.</source>
        <translation>Üblicher Name der Teiltide, wie M2; Z0 für das Mittel.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>East amplitude (m/s)</source>
        <translation>Amplitude Ost (m/s)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Amplitude of the part towards east.</source>
        <translation>Amplitude des Anteils nach Osten.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>East phase (deg)</source>
        <translation>Phase Ost (deg)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Greenwich phase lag of the part towards east, in UTC.</source>
        <translation>Greenwich-Phasenverspätung des Anteils nach Osten, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>North amplitude (m/s)</source>
        <translation>Amplitude Nord (m/s)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Amplitude of the part towards north.</source>
        <translation>Amplitude des Anteils nach Norden.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>North phase (deg)</source>
        <translation>Phase Nord (deg)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Greenwich phase lag of the part towards north, in UTC.</source>
        <translation>Greenwich-Phasenverspätung des Anteils nach Norden, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Stream models</source>
        <translation>Strommodelle</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Meshes and rasters of the stream in time. Their files stay where they are.</source>
        <translation>Netze und Raster des Stroms in der Zeit. Ihre Dateien bleiben, wo sie sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the model.</source>
        <translation>Name des Modells.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What QGIS opens the file as.</source>
        <translation>Als was QGIS die Datei öffnet.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Mesh</source>
        <translation>Netz</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Raster</source>
        <translation>Raster</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The file, or the east part's file.</source>
        <translation>Die Datei, oder die des Ostanteils.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Dataset group, or first letters of its bands.</source>
        <translation>Datengruppe, oder die ersten Buchstaben ihrer Kanäle.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>North part's file</source>
        <translation>Datei des Nordanteils</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Where the north part has its own.</source>
        <translation>Wo der Nordanteil seine eigene hat.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>North part's group</source>
        <translation>Gruppe des Nordanteils</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Coordinate system</source>
        <translation>Koordinatensystem</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Code such as EPSG:32610, for a file that names no coordinate reference system.</source>
        <translation>Code wie EPSG:32610, für eine Datei, die kein Koordinatenbezugssystem nennt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Start (UTC)</source>
        <translation>Anfang (UTC)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>First moment of a file that does not carry its own times.</source>
        <translation>Erster Zeitpunkt einer Datei, die keine eigenen Zeiten hat.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Step (min)</source>
        <translation>Schritt (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes from step to step of a file that does not carry its own times.</source>
        <translation>Minuten von Schritt zu Schritt einer Datei, die keine eigenen Zeiten hat.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Stream areas</source>
        <translation>Stromgebiete</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Inside, one station alone rules: eddies behind headlands, for instance.</source>
        <translation>Darin gilt eine Station allein: etwa Wirbel hinter Landspitzen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the station whose stream rules inside.</source>
        <translation>Name der Station, deren Strom darin gilt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rules</source>
        <translation>Gilt</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>When the station rules.</source>
        <translation>Wann die Station gilt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>On the flood</source>
        <translation>Bei Flut</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>On the ebb</source>
        <translation>Bei Ebbe</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Always</source>
        <translation>Immer</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Winds</source>
        <translation>Winde</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>The forecast or observed wind, for streams that it drives.</source>
        <translation>Der vorhergesagte oder beobachtete Wind, für Ströme, die er treibt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moment of the wind, in UTC.</source>
        <translation>Zeitpunkt des Winds, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Wind from (deg true)</source>
        <translation>Wind aus (deg true)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>True direction the wind blows from.</source>
        <translation>Rechtweisende Richtung, woher der Wind weht.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Speed of the wind. Empty means unknown.</source>
        <translation>Geschwindigkeit des Winds. Leer heißt nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Timed drifts</source>
        <translation>Gestoppte Driften</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Drifts timed from place to place: what the stream did.</source>
        <translation>Driften, von Ort zu Ort gestoppt: was der Strom tat.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>When the drift began, in UTC.</source>
        <translation>Wann die Drift begann, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Longitude (deg)</source>
        <translation>Länge (deg)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Where it began, east positive.</source>
        <translation>Wo sie begann, Ost positiv.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Where it began, north positive.</source>
        <translation>Wo sie begann, Nord positiv.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>End (UTC)</source>
        <translation>Ende (UTC)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>When it ended, in UTC.</source>
        <translation>Wann sie endete, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>End longitude (deg)</source>
        <translation>Länge am Ende (deg)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Where it ended, east positive.</source>
        <translation>Wo sie endete, Ost positiv.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>End latitude (deg)</source>
        <translation>Breite am Ende (deg)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Where it ended, north positive.</source>
        <translation>Wo sie endete, Nord positiv.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Stream station it is compared with.</source>
        <translation>Stromstation, mit der sie verglichen wird.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Ferry times</source>
        <translation>Fährzeiten</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>When a ferry runs in a channel. A timetable is not traffic: others come too.</source>
        <translation>Wann eine Fähre in einem Fahrwasser fährt. Ein Fahrplan ist nicht der Verkehr: andere kommen auch.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the channel the ferry uses.</source>
        <translation>Name des Fahrwassers, das die Fähre benutzt.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Passes at (plan's zone)</source>
        <translation>Vorbei um (Zone des Plans)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>HH:MM each day in the plan's zone, or one date and time.</source>
        <translation>HH:MM täglich in der Zone des Plans, oder ein Tag mit Uhrzeit.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>HH:MM each day, or a date and time</source>
        <translation>HH:MM an jedem Tag, oder Datum und Uhrzeit</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Keep clear before (min)</source>
        <translation>Frei halten davor (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes before the passing in which nobody is in the channel.</source>
        <translation>Minuten vor der Vorbeifahrt, in denen niemand im Fahrwasser ist.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Keep clear after (min)</source>
        <translation>Frei halten danach (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes after the passing in which nobody is in the channel.</source>
        <translation>Minuten nach der Vorbeifahrt, in denen niemand im Fahrwasser ist.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Who swims, and how. The defaults are guesses until own figures are known.</source>
        <translation>Wer schwimmt, und wie. Die Vorgaben sind geraten, bis eigene Zahlen bekannt sind.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Pace (m/s)</source>
        <translation>Tempo (m/s)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Speed through the water with float and gear.</source>
        <translation>Geschwindigkeit durchs Wasser mit Boje und Ausrüstung.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Path factor</source>
        <translation>Wegfaktor</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Length of the path really swum over the straight line.</source>
        <translation>Länge des wirklich geschwommenen Wegs geteilt durch die gerade Linie.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Range (m)</source>
        <translation>Reichweite (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Longest swim of a day.</source>
        <translation>Längste Strecke eines Tages.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Longest time in the water (h)</source>
        <translation>Längste Zeit im Wasser (h)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Longest swim, stops and all.</source>
        <translation>Längste Tour mit allen Halten.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Depth limit (m)</source>
        <translation>Tiefengrenze (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Deepest bottom to work at.</source>
        <translation>Tiefster Grund, an dem getaucht wird.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Least ground speed (m/s)</source>
        <translation>Kleinste Fahrt über Grund (m/s)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>A leg made good more slowly counts as not swimmable.</source>
        <translation>Ein Abschnitt, auf dem man langsamer vorankommt, gilt als nicht schwimmbar.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Fluid carried (L)</source>
        <translation>Mitgeführtes Getränk (L)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Drink carried on the float.</source>
        <translation>Getränk auf der Boje.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Gear</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Fluid needed (L/h)</source>
        <translation>Nötiges Getränk (L/h)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Drink needed for each hour in the water.</source>
        <translation>Getränk, das für jede Stunde im Wasser nötig ist.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Anchor line (m)</source>
        <translation>Ankerleine (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Line carried for the float.</source>
        <translation>Leine für die Boje.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What holds for the whole plan. Where a key stands twice, the later row counts.</source>
        <translation>Was für den ganzen Plan gilt. Wo ein Schlüssel zweimal steht, zählt die spätere Zeile.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the setting.</source>
        <translation>Name der Einstellung.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Its value.</source>
        <translation>Ihr Wert.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Log: sessions</source>
        <translation>Logbuch: Tauchgänge</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>One row per session at a mark, those without a catch as well.</source>
        <translation>Eine Zeile je Tauchgang an einer Marke, auch die ohne Fang.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Session</source>
        <translation>Tauchgang</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>A name of its own, such as date and mark; the catches refer to it.</source>
        <translation>Ein eigener Name, etwa Tag und Marke; die Fänge beziehen sich darauf.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the mark.</source>
        <translation>Name der Marke.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the swimmer.</source>
        <translation>Name des Schwimmers.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Started (UTC)</source>
        <translation>Begonnen (UTC)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moment the session at the mark began, in UTC.</source>
        <translation>Zeitpunkt, zu dem es an der Marke begann, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Ended (UTC)</source>
        <translation>Beendet (UTC)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moment it ended, in UTC.</source>
        <translation>Zeitpunkt, zu dem es endete, in UTC.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Time hunting (min)</source>
        <translation>Jagdzeit (min)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Minutes really spent hunting.</source>
        <translation>Minuten, die wirklich gejagt wurde.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Stream as felt</source>
        <translation>Gefühlter Strom</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>How the stream felt at the mark.</source>
        <translation>Wie sich der Strom an der Marke anfühlte.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Met</source>
        <translation>Angetroffen</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>None (the float hangs still)</source>
        <translation>Keiner (die Boje hängt still)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Weak (easily swum against)</source>
        <translation>Schwach (leicht dagegen zu schwimmen)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Moderate (slow headway)</source>
        <translation>Mäßig (langsames Vorankommen)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Strong (no headway)</source>
        <translation>Stark (kein Vorankommen)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set as felt (deg true)</source>
        <translation>Gefühlte Stromrichtung (deg true)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>True direction it ran towards.</source>
        <translation>Rechtweisende Richtung, wohin er setzte.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Visibility (m)</source>
        <translation>Sicht (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>How far one saw under water.</source>
        <translation>Wie weit man unter Wasser sah.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Water temperature (deg C)</source>
        <translation>Wassertemperatur (deg C)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Temperature of the water.</source>
        <translation>Temperatur des Wassers.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Wind (kn)</source>
        <translation>Wind (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Speed of the wind.</source>
        <translation>Geschwindigkeit des Winds.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>True direction the wind came from.</source>
        <translation>Rechtweisende Richtung, woher der Wind kam.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Swell (m)</source>
        <translation>Dünung (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Height of the swell.</source>
        <translation>Höhe der Dünung.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hours from high water (h)</source>
        <translation>Stunden ab Hochwasser (h)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Hours before (-) or after (+) the nearest high water.</source>
        <translation>Stunden vor (-) oder nach (+) dem nächsten Hochwasser.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Worked out</source>
        <translation>Berechnet</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Range of the tide (m)</source>
        <translation>Tidenhub (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Range of the day's tide.</source>
        <translation>Hub der Tide des Tages.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set predicted (deg true)</source>
        <translation>Vorhergesagte Stromrichtung (deg true)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Set the plan predicted.</source>
        <translation>Richtung, die der Plan vorhersagte.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate predicted (kn)</source>
        <translation>Vorhergesagte Stärke (kn)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Rate the plan predicted.</source>
        <translation>Stärke, die der Plan vorhersagte.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Depth at the time (m)</source>
        <translation>Tiefe zu der Zeit (m)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Charted depth and tide together.</source>
        <translation>Kartentiefe und Gezeit zusammen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Log: catches</source>
        <translation>Logbuch: Fänge</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>What was seen and kept in a session, one row per species.</source>
        <translation>Was bei einem Tauchgang gesehen und behalten wurde, eine Zeile je Art.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the session in the log.</source>
        <translation>Name des Tauchgangs im Logbuch.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Species</source>
        <translation>Art des Tiers</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Name of the species.</source>
        <translation>Name der Art.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Kept (count)</source>
        <translation>Behalten (count)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>How many were kept.</source>
        <translation>Wie viele behalten wurden.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Seen (count)</source>
        <translation>Gesehen (count)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>How many were seen, the kept ones included.</source>
        <translation>Wie viele gesehen wurden, die behaltenen eingeschlossen.</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Size (cm)</source>
        <translation>Größe (cm)</translation>
    </message>
    <message>
        <location filename="../plan_package/schema.py"/>
        <source>Length of the largest.</source>
        <translation>Länge des größten.</translation>
    </message>
</context>
</TS>

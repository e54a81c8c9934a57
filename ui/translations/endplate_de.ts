<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>CaseWords</name>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
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
        <source>open sharp</source>
        <translation>offen scharf</translation>
    </message>
    <message>
        <source>open crush</source>
        <translation>offen, Quetschung</translation>
    </message>
    <message>
        <source>gunshot</source>
        <translation>Schuss</translation>
    </message>
    <message>
        <source>closed traction</source>
        <translation>geschlossener Zug</translation>
    </message>
    <message>
        <source>fracture or dislocation</source>
        <translation>Fraktur oder Luxation</translation>
    </message>
    <message>
        <source>iatrogenic</source>
        <translation>iatrogen</translation>
    </message>
    <message>
        <source>compression</source>
        <translation>Kompression</translation>
    </message>
    <message>
        <source>injection</source>
        <translation>Injektion</translation>
    </message>
    <message>
        <source>inflammatory</source>
        <translation>entzündlich</translation>
    </message>
    <message>
        <source>birth</source>
        <translation>Geburt</translation>
    </message>
    <message>
        <source>spinal cord</source>
        <translation>Rückenmark</translation>
    </message>
    <message>
        <source>neurapraxia</source>
        <translation>Neurapraxie</translation>
    </message>
    <message>
        <source>axonotmesis</source>
        <translation>Axonotmesis</translation>
    </message>
    <message>
        <source>neurotmesis</source>
        <translation>Neurotmesis</translation>
    </message>
    <message>
        <source>Sunderland 1</source>
        <translation>Sunderland 1</translation>
    </message>
    <message>
        <source>Sunderland 2</source>
        <translation>Sunderland 2</translation>
    </message>
    <message>
        <source>Sunderland 3</source>
        <translation>Sunderland 3</translation>
    </message>
    <message>
        <source>Sunderland 4</source>
        <translation>Sunderland 4</translation>
    </message>
    <message>
        <source>Sunderland 5</source>
        <translation>Sunderland 5</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>proximal</source>
        <translation>proximal</translation>
    </message>
    <message>
        <source>distal</source>
        <translation>distal</translation>
    </message>
    <message>
        <source>preganglionic</source>
        <translation>präganglionär</translation>
    </message>
    <message>
        <source>postganglionic</source>
        <translation>postganglionär</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>oberer</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>mittlerer</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>unterer</translation>
    </message>
    <message>
        <source>superior</source>
        <translation>superior</translation>
    </message>
    <message>
        <source>inferior</source>
        <translation>inferior</translation>
    </message>
    <message>
        <source>lateral</source>
        <translation>lateral</translation>
    </message>
    <message>
        <source>posterior</source>
        <translation>posterior</translation>
    </message>
    <message>
        <source>medial</source>
        <translation>medial</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>done</source>
        <translation>ausgeführt</translation>
    </message>
    <message>
        <source>absent</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>present</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>subcutaneous</source>
        <translation>subkutan</translation>
    </message>
    <message>
        <source>submuscular</source>
        <translation>submuskulär</translation>
    </message>
    <message>
        <source>exploration</source>
        <translation>Exploration</translation>
    </message>
    <message>
        <source>neurolysis</source>
        <translation>Neurolyse</translation>
    </message>
    <message>
        <source>decompression</source>
        <translation>Dekompression</translation>
    </message>
    <message>
        <source>transposition</source>
        <translation>Transposition</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>graft</source>
        <translation>Transplantat</translation>
    </message>
    <message>
        <source>conduit</source>
        <translation>Conduit</translation>
    </message>
    <message>
        <source>nerve transfer</source>
        <translation>Nerventransfer</translation>
    </message>
    <message>
        <source>end-to-side nerve transfer</source>
        <translation>End-zu-Seit-Nerventransfer</translation>
    </message>
    <message>
        <source>reverse end-to-side nerve transfer</source>
        <translation>umgekehrter End-zu-Seit-Nerventransfer</translation>
    </message>
    <message>
        <source>tendon transfer</source>
        <translation>Sehnentransfer</translation>
    </message>
    <message>
        <source>free muscle transfer</source>
        <translation>freier Muskeltransfer</translation>
    </message>
    <message>
        <source>joint fusion</source>
        <translation>Arthrodese</translation>
    </message>
    <message>
        <source>fracture fixation</source>
        <translation>Osteosynthese</translation>
    </message>
    <message>
        <source>revascularisation</source>
        <translation>Revaskularisation</translation>
    </message>
    <message>
        <source>expanding haematoma</source>
        <translation>wachsendes Hämatom</translation>
    </message>
    <message>
        <source>growing deficit</source>
        <translation>zunehmender Ausfall</translation>
    </message>
    <message>
        <source>lost pulse</source>
        <translation>fehlender Puls</translation>
    </message>
    <message>
        <source>new deficit after an operation or block</source>
        <translation>neuer Ausfall nach Operation oder Block</translation>
    </message>
    <message>
        <source>pain out of proportion</source>
        <translation>Schmerz außer Verhältnis</translation>
    </message>
    <message>
        <source>tense compartment</source>
        <translation>gespannte Loge</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>vollständig</translation>
    </message>
    <message>
        <source>partial</source>
        <translation>teilweise</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>few</source>
        <translation>wenige</translation>
    </message>
    <message>
        <source>reduced</source>
        <translation>vermindert</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>contracts</source>
        <translation>kontrahiert</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>stumm</translation>
    </message>
    <message>
        <source>anterior</source>
        <translation>anterior</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>portal</source>
        <translation>Portal</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Pin</translation>
    </message>
</context>
<context>
    <name>endplate::ui</name>
    <message>
        <source>ahead %1, on course %2, late %3, no advance %4</source>
        <translation>voraus %1, im Zeitplan %2, verspätet %3, kein Fortschritt %4</translation>
    </message>
    <message>
        <source>; a conduction block, %1, counts as on course</source>
        <translation>; ein Leitungsblock, %1, zählt als im Zeitplan</translation>
    </message>
    <message>
        <source>no skin fibres beyond the lesion: tapping says nothing here</source>
        <translation>keine Hautfasern jenseits der Läsion: Klopfen sagt hier nichts</translation>
    </message>
    <message>
        <source>%1 mm beyond the lesion on %2</source>
        <translation>%1 mm jenseits der Läsion am %2</translation>
    </message>
    <message>
        <source>no Tinel point that could be used</source>
        <translation>kein verwertbarer Tinel-Punkt</translation>
    </message>
    <message>
        <source>patients like this one: %1 mm a day</source>
        <translation>Patienten wie dieser: %1 mm am Tag</translation>
    </message>
    <message>
        <source>hardly any chance of growth, so there is no rate; %1</source>
        <translation>kaum eine Aussicht auf Wachstum, daher keine Rate; %1</translation>
    </message>
    <message>
        <source>if it grows, %1 mm a day; %2</source>
        <translation>falls er wächst, %1 mm am Tag; %2</translation>
    </message>
    <message>
        <source>torn from the cord, no axons to grow</source>
        <translation>vom Rückenmark abgerissen, keine Axone zum Wachsen</translation>
    </message>
    <message>
        <source>forecast %1</source>
        <translation>Vorhersage %1</translation>
    </message>
    <message>
        <source>without repair, grade not known: conduction block %1, axons grow %2, nothing grows %3</source>
        <translation>ohne Naht, Grad nicht bekannt: Leitungsblock %1, Axone wachsen %2, nichts wächst %3</translation>
    </message>
    <message>
        <source>, given the findings</source>
        <translation>, nach den Befunden</translation>
    </message>
    <message>
        <source>grade not known</source>
        <translation>Grad nicht bekannt</translation>
    </message>
    <message>
        <source>If it is a conduction block, everything returns together: first movement %1 to %2 weeks, useful %3 to %4 weeks after the injury.</source>
        <translation>Ist es ein Leitungsblock, kehrt alles zugleich zurück: erste Bewegung %1 bis %2 Wochen, brauchbar %3 bis %4 Wochen nach der Verletzung.</translation>
    </message>
    <message>
        <source>nerve grade 3</source>
        <translation>Nervengrad 3</translation>
    </message>
    <message>
        <source>own scale</source>
        <translation>eigene Skala</translation>
    </message>
    <message>
        <source>%1 of %2 %3</source>
        <translation>%1 von %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2 % %3</source>
        <translation>%1 bis %2 % %3</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>keine gefunden</translation>
    </message>
    <message>
        <source>feasible</source>
        <translation>machbar</translation>
    </message>
    <message>
        <source>marginal</source>
        <translation>grenzwertig</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>not feasible</source>
        <translation>nicht machbar</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 Wochen</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 Monate</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>under 5 %</source>
        <translation>unter 5 %</translation>
    </message>
    <message>
        <source>over 95 %</source>
        <translation>über 95 %</translation>
    </message>
    <message>
        <source>the day of injury</source>
        <translation>am Tag der Verletzung</translation>
    </message>
    <message>
        <source>%1 after the injury</source>
        <translation>%1 nach der Verletzung</translation>
    </message>
    <message>
        <source>A computed estimate for a typical limb, to inform and not to replace surgical judgement, local protocols and licensed practice. Check it against the patient.</source>
        <translation>Eine berechnete Schätzung für eine typische Extremität; sie unterrichtet und ersetzt weder chirurgisches Urteil noch örtliche Vorgaben noch die Ausübung des Berufs. Am Patienten prüfen.</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation>in %1 Tagen</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>vor %1 Tagen</translation>
    </message>
    <message>
        <source>in %1 weeks</source>
        <translation>in %1 Wochen</translation>
    </message>
    <message>
        <source>%1 weeks ago</source>
        <translation>vor %1 Wochen</translation>
    </message>
    <message>
        <source>in %1 months</source>
        <translation>in %1 Monaten</translation>
    </message>
    <message>
        <source>%1 months ago</source>
        <translation>vor %1 Monaten</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>later visit</source>
        <translation>spätere Untersuchung</translation>
    </message>
    <message>
        <source>operation</source>
        <translation>Operation</translation>
    </message>
    <message>
        <source>EMG study</source>
        <translation>EMG-Messung</translation>
    </message>
    <message>
        <source>incision</source>
        <translation>Inzision</translation>
    </message>
    <message>
        <source>muscle</source>
        <translation>Muskel</translation>
    </message>
    <message>
        <source>skin area</source>
        <translation>Hautareal</translation>
    </message>
    <message>
        <source>movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Tinel point</source>
        <translation>Tinel-Punkt</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
</context>
<context>
    <name>endplate::ui::AnswerRunner</name>
    <message>
        <source>the place of the injury</source>
        <translation>der Ort der Verletzung</translation>
    </message>
    <message>
        <source>the deficit</source>
        <translation>der Ausfall</translation>
    </message>
    <message>
        <source>the recovery</source>
        <translation>die Erholung</translation>
    </message>
    <message>
        <source>the course</source>
        <translation>der Verlauf</translation>
    </message>
    <message>
        <source>the options</source>
        <translation>die Möglichkeiten</translation>
    </message>
    <message>
        <source>the transfers</source>
        <translation>die Transfers</translation>
    </message>
    <message>
        <source>the incision</source>
        <translation>die Inzision</translation>
    </message>
    <message>
        <source>the limb</source>
        <translation>die Extremität</translation>
    </message>
    <message>
        <source>the evidence</source>
        <translation>die Belege</translation>
    </message>
</context>
<context>
    <name>endplate::ui::CaseDocument</name>
    <message>
        <source>open another case</source>
        <translation>einen anderen Fall öffnen</translation>
    </message>
    <message>
        <source>New case</source>
        <translation>Neuer Fall</translation>
    </message>
</context>
<context>
    <name>endplate::ui::ChoiceField</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>endplate::ui::DateField</name>
    <message>
        <source>not known, YYYY-MM-DD</source>
        <translation>nicht bekannt, JJJJ-MM-TT</translation>
    </message>
</context>
<context>
    <name>endplate::ui::DecisionPanel</name>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>%1, today: the usual date has passed</source>
        <translation>%1, heute: der übliche Tag ist vorüber</translation>
    </message>
    <message>
        <source>%1 after the %2</source>
        <translation>%1 nach: %2</translation>
    </message>
    <message>
        <source>What next, and by when?</source>
        <translation>Was als Nächstes, und bis wann?</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Unless</source>
        <translation>Außer wenn</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
    <message>
        <source>Lesion</source>
        <translation>Läsion</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Praxis</translation>
    </message>
    <message>
        <source>Dates from here on</source>
        <translation>Termine von heute an</translation>
    </message>
    <message>
        <source>Save as calendar...</source>
        <translation>Als Kalender sichern...</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>The first step among the options</source>
        <translation>Der erste Schritt unter den Möglichkeiten</translation>
    </message>
    <message>
        <source>What would change this</source>
        <translation>Was dies ändern würde</translation>
    </message>
    <message>
        <source>What would change the decision</source>
        <translation>Was die Entscheidung ändern würde</translation>
    </message>
    <message>
        <source>Not known yet, and worth knowing</source>
        <translation>Noch nicht bekannt und wissenswert</translation>
    </message>
    <message>
        <source>No decision: see above.</source>
        <translation>Keine Entscheidung: siehe oben.</translation>
    </message>
    <message>
        <source>Being reckoned ...</source>
        <translation>Wird berechnet ...</translation>
    </message>
    <message>
        <source>no later visit yet: see the dates below for what to look for</source>
        <translation>noch keine spätere Untersuchung: unten steht, worauf zu achten ist</translation>
    </message>
    <message>
        <source>nothing is named</source>
        <translation>nichts genannt</translation>
    </message>
    <message>
        <source>Source: %1 (%2)</source>
        <translation>Quelle: %1 (%2)</translation>
    </message>
    <message>
        <source>no common date</source>
        <translation>kein üblicher Tag</translation>
    </message>
    <message>
        <source>No dates: the date of the injury is not known</source>
        <translation>Keine Termine: der Tag der Verletzung ist nicht bekannt</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>none of the options is the first step yet</source>
        <translation>noch keine der Möglichkeiten ist der erste Schritt</translation>
    </message>
    <message>
        <source>No single input of the rules changes the next step</source>
        <translation>Keine einzelne Angabe der Regeln ändert den nächsten Schritt</translation>
    </message>
    <message>
        <source>If</source>
        <translation>Wenn</translation>
    </message>
    <message>
        <source>were</source>
        <translation>wäre</translation>
    </message>
    <message>
        <source>then</source>
        <translation>dann</translation>
    </message>
    <message>
        <source>Save as calendar</source>
        <translation>Als Kalender sichern</translation>
    </message>
    <message>
        <source>The dates are not current. Wait until they are reckoned.</source>
        <translation>Die Termine sind nicht aktuell. Warten Sie, bis sie berechnet sind.</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>Take back...</source>
        <translation>Zurücknehmen...</translation>
    </message>
    <message>
        <source>From a calendar that was saved before: the entries that no longer stand, as cancelled</source>
        <translation>Aus einem früher gesicherten Kalender: die Einträge, die nicht mehr gelten, als abgesagt</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>The calendar that was saved before</source>
        <translation>Der früher gesicherte Kalender</translation>
    </message>
    <message>
        <source>Every entry from today on still stands or only moves: save the calendar anew, and the entries move with it.</source>
        <translation>Jeder Eintrag von heute an gilt noch oder verschiebt sich nur: Sichern Sie den Kalender neu, dann verschieben sich die Einträge mit.</translation>
    </message>
    <message>
        <source>Rows behind the decision</source>
        <translation>Zeilen hinter der Entscheidung</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Belege</translation>
    </message>
</context>
<context>
    <name>endplate::ui::DeficitPanel</name>
    <message>
        <source>denervated</source>
        <translation>denerviert</translation>
    </message>
    <message>
        <source>partial</source>
        <translation>teilweise</translation>
    </message>
    <message>
        <source>may be weak</source>
        <translation>vielleicht schwach</translation>
    </message>
    <message>
        <source>intact</source>
        <translation>erhalten</translation>
    </message>
    <message>
        <source>absent</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>reduced</source>
        <translation>vermindert</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>nicht untersucht</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>hyperaesthetic</source>
        <translation>hyperästhetisch</translation>
    </message>
    <message>
        <source>two points at %1 mm</source>
        <translation>zwei Punkte bei %1 mm</translation>
    </message>
    <message>
        <source>What is lost, and what is spared?</source>
        <translation>Was ist verloren, und was bleibt verschont?</translation>
    </message>
    <message>
        <source>show what is intact as well</source>
        <translation>auch zeigen, was erhalten ist</translation>
    </message>
    <message>
        <source>Muscles</source>
        <translation>Muskeln</translation>
    </message>
    <message>
        <source>Skin areas</source>
        <translation>Hautareale</translation>
    </message>
    <message>
        <source>Movements</source>
        <translation>Bewegungen</translation>
    </message>
    <message>
        <source>Variants to test for</source>
        <translation>Zu prüfende Varianten</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>; partial</source>
        <translation>; teilweise</translation>
    </message>
    <message>
        <source>; conduction block</source>
        <translation>; Leitungsblock</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Muscle</source>
        <translation>Muskel</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Nerve</source>
        <translation>Nerv</translation>
    </message>
    <message>
        <source>Roots lost</source>
        <translation>Verlorene Wurzeln</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Skin area (* autonomous zone)</source>
        <translation>Hautareal (* autonome Zone)</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>weakened</source>
        <translation>geschwächt</translation>
    </message>
    <message>
        <source>kept by others</source>
        <translation>von anderen gehalten</translation>
    </message>
    <message>
        <source>A dead muscle is hidden by those that still move.</source>
        <translation>Ein toter Muskel wird von denen verdeckt, die sich noch bewegen.</translation>
    </message>
    <message>
        <source>Movement is</source>
        <translation>Bewegung ist</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Denervated</source>
        <translation>Denerviert</translation>
    </message>
    <message>
        <source>Kept by</source>
        <translation>Gehalten von</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source> (%1 to %2)</source>
        <translation> (%1 bis %2)</translation>
    </message>
    <message>
        <source>examine and stimulate</source>
        <translation>untersuchen und stimulieren</translation>
    </message>
    <message>
        <source>Variant</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Of limbs</source>
        <translation>Der Extremitäten</translation>
    </message>
    <message>
        <source>If it is there</source>
        <translation>Wenn vorhanden</translation>
    </message>
    <message>
        <source>How to test</source>
        <translation>Wie prüfen</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
</context>
<context>
    <name>endplate::ui::EvidencePanel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>What stands behind a number?</source>
        <translation>Was steht hinter einer Zahl?</translation>
    </message>
    <message>
        <source>Words or the id of a row</source>
        <translation>Wörter oder die Kennung einer Zeile</translation>
    </message>
    <message>
        <source>words, such as posterior interosseous, or the id of a row</source>
        <translation>Wörter, etwa posterior interosseous, oder die Kennung einer Zeile</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>all tables</source>
        <translation>alle Tabellen</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Quantities</source>
        <translation>Größen</translation>
    </message>
    <message>
        <source>Published rows</source>
        <translation>Veröffentlichte Zeilen</translation>
    </message>
    <message>
        <source>not pooled</source>
        <translation>nicht gepoolt</translation>
    </message>
    <message>
        <source>A single limb, 90 in 100</source>
        <translation>Eine einzelne Extremität, 90 von 100</translation>
    </message>
    <message>
        <source>A new study, 90 in 100</source>
        <translation>Eine neue Studie, 90 von 100</translation>
    </message>
    <message>
        <source>a row as it stands</source>
        <translation>eine Zeile, wie sie steht</translation>
    </message>
    <message>
        <source>Either side: published figures hold for both. %1 quantities, %2 rows of tables that are not pooled. Intervals: 90 in 100.</source>
        <translation>Beide Seiten: veröffentlichte Zahlen gelten für beide. %1 Größen, %2 Zeilen von Tabellen, die nicht gepoolt werden. Intervalle: 90 von 100.</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Studies</source>
        <translation>Studien</translation>
    </message>
    <message>
        <source>Pooled</source>
        <translation>Gepoolt</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>A single limb, or a new study</source>
        <translation>Eine einzelne Extremität oder eine neue Studie</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>n</source>
        <translation>n</translation>
    </message>
    <message>
        <source>Mean, mm</source>
        <translation>Mittel, mm</translation>
    </message>
    <message>
        <source>SD, mm</source>
        <translation>SD, mm</translation>
    </message>
    <message>
        <source>Known by</source>
        <translation>Bekannt durch</translation>
    </message>
    <message>
        <source>Not pooled because</source>
        <translation>Nicht gepoolt, weil</translation>
    </message>
    <message>
        <source>Nothing can be pooled.</source>
        <translation>Nichts kann gepoolt werden.</translation>
    </message>
    <message>
        <source>%1, %2 %</source>
        <translation>%1, %2 %</translation>
    </message>
    <message>
        <source>pooled mean</source>
        <translation>gepooltes Mittel</translation>
    </message>
    <message>
        <source>mean of a new study</source>
        <translation>Mittel einer neuen Studie</translation>
    </message>
    <message>
        <source>a single limb</source>
        <translation>eine einzelne Extremität</translation>
    </message>
    <message>
        <source>%1: pooled mean %2 %3; 90 in 100 single limbs %4. Spread between studies %5 mm, between limbs %6 mm; I%7 %8 %.</source>
        <translation>%1: gepooltes Mittel %2 %3; 90 von 100 einzelnen Extremitäten %4. Streuung zwischen Studien %5 mm, zwischen Extremitäten %6 mm; I%7 %8 %.</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Share, %</source>
        <translation>Anteil, %</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>pooled</source>
        <translation>gepoolt</translation>
    </message>
    <message>
        <source>a new study</source>
        <translation>eine neue Studie</translation>
    </message>
    <message>
        <source>%1: %2 % of a typical study; 90 in 100 new studies %3 %.</source>
        <translation>%1: %2 % einer typischen Studie; 90 von 100 neuen Studien %3 %.</translation>
    </message>
    <message>
        <source>A row of %1 as it stands.</source>
        <translation>Eine Zeile von %1, wie sie steht.</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Cell</source>
        <translation>Zelle</translation>
    </message>
</context>
<context>
    <name>endplate::ui::ExaminationPanel</name>
    <message>
        <source>intact</source>
        <translation>erhalten</translation>
    </message>
    <message>
        <source>may be weak</source>
        <translation>vielleicht schwach</translation>
    </message>
    <message>
        <source>partial</source>
        <translation>teilweise</translation>
    </message>
    <message>
        <source>denervated</source>
        <translation>denerviert</translation>
    </message>
    <message>
        <source>reduced</source>
        <translation>vermindert</translation>
    </message>
    <message>
        <source>absent</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>What was found?</source>
        <translation>Was wurde gefunden?</translation>
    </message>
    <message>
        <source>Keys: muscle 0 to 5, then + or - for 4+ and 4-; area N normal, R reduced, A absent, H hyperaesthetic; sign P present, A absent; Delete: not examined; Space: next.</source>
        <translation>Tasten: Muskel 0 bis 5, dann + oder - für 4+ und 4-; Areal N normal, R vermindert, A fehlt, H hyperästhetisch; Zeichen P vorhanden, A fehlt; Entf: nicht untersucht; Leertaste: weiter.</translation>
    </message>
    <message>
        <source>finding of %1</source>
        <translation>Befund von %1</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Untersuchung</translation>
    </message>
    <message>
        <source>date of the visit</source>
        <translation>Tag der Untersuchung</translation>
    </message>
    <message>
        <source>Add a visit</source>
        <translation>Untersuchung hinzufügen</translation>
    </message>
    <message>
        <source>all muscles and areas</source>
        <translation>alle Muskeln und Areale</translation>
    </message>
    <message>
        <source>add a visit</source>
        <translation>Untersuchung hinzufügen</translation>
    </message>
    <message>
        <source>Tinel sign at this visit</source>
        <translation>Tinel-Zeichen bei dieser Untersuchung</translation>
    </message>
    <message>
        <source>Tinel point</source>
        <translation>Tinel-Punkt</translation>
    </message>
    <message>
        <source>%1, %2 mm %3 to the %4</source>
        <translation>%1, %2 mm %3 von %4</translation>
    </message>
    <message>
        <source>nerve not named</source>
        <translation>Nerv nicht genannt</translation>
    </message>
    <message>
        <source>nerve of the Tinel sign</source>
        <translation>Nerv des Tinel-Zeichens</translation>
    </message>
    <message>
        <source>Nerve</source>
        <translation>Nerv</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Muscles: power, M0 to M5</source>
        <translation>Muskeln: Kraft, M0 bis M5</translation>
    </message>
    <message>
        <source>Skin: feeling</source>
        <translation>Haut: Gefühl</translation>
    </message>
    <message>
        <source>Signs</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>%1 muscles and areas of this list examined, %2 not examined. Not examined is not taken as normal. * area with an autonomous zone.</source>
        <translation>%1 Muskeln und Areale dieser Liste untersucht, %2 nicht untersucht. Nicht untersucht gilt nicht als normal. * Areal mit autonomer Zone.</translation>
    </message>
    <message>
        <source>First examination</source>
        <translation>Erste Untersuchung</translation>
    </message>
    <message>
        <source>Later visit %1</source>
        <translation>Spätere Untersuchung %1</translation>
    </message>
    <message>
        <source>Power, feeling and signs</source>
        <translation>Kraft, Gefühl und Zeichen</translation>
    </message>
    <message>
        <source>Tinel sign</source>
        <translation>Tinel-Zeichen</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>EMG</source>
        <translation>EMG</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
</context>
<context>
    <name>endplate::ui::FindingTable</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Muscle, area or sign</source>
        <translation>Muskel, Areal oder Zeichen</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>nicht untersucht</translation>
    </message>
    <message>
        <source>none, M0</source>
        <translation>keine, M0</translation>
    </message>
    <message>
        <source>normal, M5</source>
        <translation>normal, M5</translation>
    </message>
    <message>
        <source>weak, M%1</source>
        <translation>schwach, M%1</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>reduced</source>
        <translation>vermindert</translation>
    </message>
    <message>
        <source>absent</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>present</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>hyperaesthetic</source>
        <translation>hyperästhetisch</translation>
    </message>
    <message>
        <source>picked on the limb</source>
        <translation>an der Extremität gewählt</translation>
    </message>
</context>
<context>
    <name>endplate::ui::ForestChart</name>
    <message>
        <source>Forest plot of the studies</source>
        <translation>Forest-Plot der Studien</translation>
    </message>
</context>
<context>
    <name>endplate::ui::HelpDialog</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>The next step by the published rules of decision: red flags first, then how the injury came about, then what was found. Below it: by when, unless what, and why.

Dates can be saved as a calendar; only the label goes into it. What no longer stands of a saved one can be taken back.

'What would change this' names each single input that would lead to another step. 'Not known yet' lists what the case leaves open.</source>
        <translation>Der nächste Schritt nach den veröffentlichten Entscheidungsregeln: zuerst Warnzeichen, dann der Hergang der Verletzung, dann die Befunde. Darunter: bis wann, außer wenn, und warum.

Termine lassen sich als Kalender sichern; nur die Bezeichnung kommt hinein. Was von einem gesicherten nicht mehr gilt, lässt sich zurücknehmen.

'Was dies ändern würde' nennt jede einzelne Angabe, die zu einem anderen Schritt führte. 'Noch nicht bekannt' zählt auf, was der Fall offen lässt.</translation>
    </message>
    <message>
        <source>Side, sex, age and stature size the limb; every length that is measured on the patient counts more than any table.

The sliders move the joints within the largest published range. A joint that was not moved is not in the case.

The table tells how big such a limb is and how far limbs like it differ.

Measures of the other, sound arm say how long this one was. A point of a nerve that ultrasound found moves that nerve and its neighbours.</source>
        <translation>Seite, Geschlecht, Alter und Körpergröße bestimmen die Maße der Extremität; jede am Patienten gemessene Länge zählt mehr als jede Tabelle.

Die Schieber bewegen die Gelenke innerhalb des größten veröffentlichten Umfangs. Ein nicht bewegtes Gelenk steht nicht im Fall.

Die Tabelle sagt, wie groß eine solche Extremität ist und wie weit sich solche unterscheiden.

Maße des anderen, gesunden Arms sagen, wie lang dieser war. Ein mit Ultraschall gefundener Punkt eines Nervs verschiebt diesen Nerv und seine Nachbarn.</translation>
    </message>
    <message>
        <source>Tick a red flag first: it outweighs everything else.

Each injury has a nerve, a place and a mechanism. The place is given by a landmark and a distance along the limb, or as a root, trunk, cord or branch; 'In words' says how it was understood. A place outside its nerve is refused with the range that would do.

Leave open what is not known: nothing is filled in silently.</source>
        <translation>Zuerst ein Warnzeichen ankreuzen: es wiegt mehr als alles andere.

Jede Verletzung hat einen Nerv, einen Ort und einen Hergang. Der Ort wird durch eine Landmarke und einen Abstand entlang der Extremität angegeben, oder als Wurzel, Truncus, Faszikel oder Ast; 'In Worten' sagt, wie er verstanden wurde. Ein Ort außerhalb seines Nervs wird mit dem zulässigen Bereich zurückgewiesen.

Lassen Sie offen, was nicht bekannt ist: nichts wird stillschweigend ergänzt.</translation>
    </message>
    <message>
        <source>The list holds what this injury touches and what was examined before. Type: 0 to 5 for power, then + or - for 4+ and 4-; N, R, A or H for feeling; P or A for a sign. Delete takes a finding back to 'not examined'.

A muscle that is not listed counts as not examined, never as normal. Later visits are kept apart, each with its date.

S grade and two-point distance of the area that is chosen are entered below the list.</source>
        <translation>Die Liste enthält, was diese Verletzung betrifft und was früher untersucht wurde. Tippen Sie 0 bis 5 für die Kraft, dann + oder - für 4+ und 4-; N, R, A oder H für das Gefühl; P oder A für ein Zeichen. Entf setzt einen Befund auf 'nicht untersucht' zurück.

Ein nicht aufgeführter Muskel gilt als nicht untersucht, nie als normal. Spätere Untersuchungen werden getrennt geführt, jede mit ihrem Datum.

S-Grad und Zweipunktabstand des gewählten Hautareals werden unter der Liste eingegeben.</translation>
    </message>
    <message>
        <source>What was done or is planned, step by step. A repair or graft starts the clock of regrowth anew on its date.

What the patient needs most steers which transfers are combined; what is not available is never offered.</source>
        <translation>Was getan wurde oder geplant ist, Schritt für Schritt. Eine Naht oder ein Transplantat lässt die Uhr des Wachstums an ihrem Tag neu beginnen.

Was der Patient am meisten braucht, lenkt die Kombination der Transfers; was nicht verfügbar ist, wird nie angeboten.</translation>
    </message>
    <message>
        <source>What such an injury paralyses and numbs, from the nerve tree alone, beside what was found. Movements that others keep up can hide a dead muscle.

Variants to test for are those that would change this answer.</source>
        <translation>Was eine solche Verletzung lähmt und taub macht, allein nach dem Nervenbaum, neben dem Befund. Bewegungen, die andere halten, können einen toten Muskel verdecken.

Zu prüfende Varianten sind die, die diese Antwort ändern würden.</translation>
    </message>
    <message>
        <source>For every target the way, the time and the chance. A bar holds 90 in 100 of those whose axons grow; the chances count everyone.

The closing window shows how the chance of a useful result falls with the date of the operation. The Tinel sign is expected where the table says, if axons grow. Axons at a muscle are not movement.</source>
        <translation>Für jedes Ziel der Weg, die Zeit und die Aussicht. Ein Balken umfasst 90 von 100 derer, deren Axone wachsen; die Aussichten zählen alle.

Das sich schließende Fenster zeigt, wie die Aussicht auf ein brauchbares Ergebnis mit dem Tag der Operation fällt. Das Tinel-Zeichen wird dort erwartet, wo die Tabelle es sagt, falls Axone wachsen. Axone am Muskel sind noch keine Bewegung.</translation>
    </message>
    <message>
        <source>Published transfers for what is lost, each with its donor's state, its reach and its verdict. A donor that was not examined is 'not judged', never feasible.

'Together' holds the best set that can be done at once; 'Rejected' one reason for each of the others. Choose a row to see all of its reasons.</source>
        <translation>Veröffentlichte Transfers für das Verlorene, jeder mit dem Zustand seines Spenders, seiner Reichweite und seinem Urteil. Ein nicht untersuchter Spender ist 'nicht beurteilt', nie machbar.

'Zusammen' enthält den besten Satz, der zugleich möglich ist; 'Verworfen' je einen Grund für die übrigen. Wählen Sie eine Zeile, um alle Gründe zu sehen.</translation>
    </message>
    <message>
        <source>Choose a standard approach, a cut of the case, or write marks of your own. The table gives for each nerve how near the cut comes and with what chance.

Published rules are quoted; each holds on its own side and in its own pose. Vessels and tendons are not in the model.

'Corridor' looks for the line beside a cut with the least risk. 'Of this case' holds the incisions that are saved with it.</source>
        <translation>Wählen Sie einen Standardzugang, einen Schnitt des Falls, oder schreiben Sie eigene Marken. Die Tabelle gibt für jeden Nerv an, wie nah der Schnitt kommt und mit welcher Wahrscheinlichkeit.

Veröffentlichte Regeln werden zitiert; jede gilt auf ihrer Seite und in ihrer Haltung. Gefäße und Sehnen sind nicht im Modell.

'Korridor' sucht neben einem Schnitt die Linie mit dem geringsten Risiko. 'Aus diesem Fall' enthält die Schnitte, die mit ihm gespeichert werden.</translation>
    </message>
    <message>
        <source>The options side by side: the first step, then the order of the trade. Published series let in different patients, so options are not ranked by their figures.

Choose an option to see what it needs, brings and costs.</source>
        <translation>Die Möglichkeiten nebeneinander: der erste Schritt, dann die Reihenfolge des Fachs. Veröffentlichte Reihen nahmen verschiedene Patienten auf, daher werden Möglichkeiten nicht nach ihren Zahlen gereiht.

Wählen Sie eine Möglichkeit, um zu sehen, was sie braucht, bringt und kostet.</translation>
    </message>
    <message>
        <source>Search by words, by table or by the id of a row. For a quantity: the studies, their weights, what they say together, and every row behind it with how it was come by: read, recalled, common practice or assumed.</source>
        <translation>Suchen Sie nach Wörtern, nach Tabelle oder nach der Kennung einer Zeile. Zu einer Größe: die Studien, ihre Gewichte, was sie gemeinsam sagen, und jede Zeile dahinter mit ihrer Herkunft: gelesen, erinnert, allgemeine Praxis oder angenommen.</translation>
    </message>
</context>
<context>
    <name>endplate::ui::IncisionPanel</name>
    <message>
        <source>Drawn on the limb</source>
        <translation>Am Arm gezeichnet</translation>
    </message>
    <message>
        <source>Choose 'Draw incision' above the limb and click along the skin.</source>
        <translation>Über dem Arm „Schnitt zeichnen“ wählen und auf der Haut entlangklicken.</translation>
    </message>
    <message>
        <source>anatomical position, forearm supinated</source>
        <translation>anatomische Stellung, Unterarm supiniert</translation>
    </message>
    <message>
        <source>Where may a knife, portal or needle go?</source>
        <translation>Wohin darf Messer, Portal oder Nadel?</translation>
    </message>
    <message>
        <source>Nerves near the cut</source>
        <translation>Nerven nahe am Schnitt</translation>
    </message>
    <message>
        <source>Chance of a nerve within 10 mm along the cut</source>
        <translation>Wahrscheinlichkeit eines Nervs innerhalb von 10 mm entlang des Schnitts</translation>
    </message>
    <message>
        <source>Published rules about this place</source>
        <translation>Veröffentlichte Regeln zu diesem Ort</translation>
    </message>
    <message>
        <source>Which cut</source>
        <translation>Welcher Schnitt</translation>
    </message>
    <message>
        <source>Standard approach</source>
        <translation>Standardzugang</translation>
    </message>
    <message>
        <source>Of this case</source>
        <translation>Aus diesem Fall</translation>
    </message>
    <message>
        <source>My own marks</source>
        <translation>Eigene Marken</translation>
    </message>
    <message>
        <source>Approach</source>
        <translation>Zugang</translation>
    </message>
    <message>
        <source>choose or type the name of an approach</source>
        <translation>Namen eines Zugangs wählen oder tippen</translation>
    </message>
    <message>
        <source>Incision of the case</source>
        <translation>Inzision des Falls</translation>
    </message>
    <message>
        <source>Kind of cut</source>
        <translation>Art des Schnitts</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>portal</source>
        <translation>Portal</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Pin</translation>
    </message>
    <message>
        <source>injection</source>
        <translation>Injektion</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <source>olecranon tip, 250 proximal, on posterior; olecranon tip, 50 proximal, on posterior</source>
        <translation>olecranon tip, 250 proximal, on posterior; olecranon tip, 50 proximal, on posterior</translation>
    </message>
    <message>
        <source>A landmark, then mm along and across the limb and the side whose skin is meant; marks of a line are parted by semicolons.</source>
        <translation>Eine Landmarke, dann mm entlang und quer zur Extremität und die Seite, deren Haut gemeint ist; Marken einer Linie trennt ein Strichpunkt. Die Wörter sind englisch.</translation>
    </message>
    <message>
        <source>Depth, mm</source>
        <translation>Tiefe, mm</translation>
    </message>
    <message>
        <source>depth, mm</source>
        <translation>Tiefe, mm</translation>
    </message>
    <message>
        <source>Straight in from the skin; empty: to the first bone.</source>
        <translation>Gerade hinein von der Haut; leer: bis zum ersten Knochen.</translation>
    </message>
    <message>
        <source>incision %1</source>
        <translation>Inzision %1</translation>
    </message>
    <message>
        <source>Marks: %1
Pose: %2
</source>
        <translation>Marken: %1
Haltung: %2
</translation>
    </message>
    <message>
        <source>; %1 %2 long</source>
        <translation>; %1 %2 lang</translation>
    </message>
    <message>
        <source>; %1 %2 deep</source>
        <translation>; %1 %2 tief</translation>
    </message>
    <message>
        <source>; %1 to %2 %3 deep</source>
        <translation>; %1 bis %2 %3 tief</translation>
    </message>
    <message>
        <source> (depth not given)</source>
        <translation> (Tiefe nicht angegeben)</translation>
    </message>
    <message>
        <source>%1 (%2-%3)</source>
        <translation>%1 (%2-%3)</translation>
    </message>
    <message>
        <source>Nerve</source>
        <translation>Nerv</translation>
    </message>
    <message>
        <source>Nearest, %1</source>
        <translation>Nächster, %1</translation>
    </message>
    <message>
        <source>From the middle of the nerve; 90 in 100 limbs in brackets</source>
        <translation>Von der Mitte des Nervs; 90 von 100 Extremitäten in Klammern</translation>
    </message>
    <message>
        <source>At, %1</source>
        <translation>Bei, %1</translation>
    </message>
    <message>
        <source>Along the cut from its first mark</source>
        <translation>Entlang des Schnitts von seiner ersten Marke</translation>
    </message>
    <message>
        <source>Deep, %1</source>
        <translation>Tief, %1</translation>
    </message>
    <message>
        <source>The nerve under the skin there</source>
        <translation>Der Nerv unter der Haut an dieser Stelle</translation>
    </message>
    <message>
        <source>&lt; %1 mm</source>
        <translation>&lt; %1 mm</translation>
    </message>
    <message>
        <source>Chance that the nerve lies within %1 mm of the cut</source>
        <translation>Wahrscheinlichkeit, dass der Nerv innerhalb von %1 mm vom Schnitt liegt</translation>
    </message>
    <message>
        <source>mm along the cut: the chance of any modelled nerve within %1 mm</source>
        <translation>mm entlang des Schnitts: Wahrscheinlichkeit eines modellierten Nervs innerhalb von %1 mm</translation>
    </message>
    <message>
        <source>Published rule, as quoted</source>
        <translation>Veröffentlichte Regel, wörtlich</translation>
    </message>
    <message>
        <source>Holds on, in the pose</source>
        <translation>Gilt auf, in der Haltung</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Met first of the nerves of skin alone: %1.</source>
        <translation>Zuerst getroffen unter den reinen Hautnerven: %1.</translation>
    </message>
    <message>
        <source>No nerve of skin alone within %1 mm in most limbs.</source>
        <translation>In den meisten Extremitäten kein reiner Hautnerv innerhalb von %1 mm.</translation>
    </message>
    <message>
        <source>From %1 to %2 %3 along the cut every modelled nerve is farther than %4 mm (%5).</source>
        <translation>Von %1 bis %2 %3 entlang des Schnitts ist jeder modellierte Nerv weiter als %4 mm entfernt (%5).</translation>
    </message>
    <message>
        <source>Not in the model: %1.</source>
        <translation>Nicht im Modell: %1.</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>Nerves</source>
        <translation>Nerven</translation>
    </message>
    <message>
        <source>Along the cut</source>
        <translation>Entlang des Schnitts</translation>
    </message>
    <message>
        <source>Published rules</source>
        <translation>Veröffentlichte Regeln</translation>
    </message>
    <message>
        <source>Published rules: %1</source>
        <translation>Veröffentlichte Regeln: %1</translation>
    </message>
    <message>
        <source>Corridor</source>
        <translation>Korridor</translation>
    </message>
</context>
<context>
    <name>endplate::ui::InjuryPanel</name>
    <message>
        <source>What is injured, where and how?</source>
        <translation>Was ist verletzt, wo und wie?</translation>
    </message>
    <message>
        <source>Red flags: what cannot wait</source>
        <translation>Warnzeichen: was nicht warten kann</translation>
    </message>
    <message>
        <source>Injuries</source>
        <translation>Verletzungen</translation>
    </message>
    <message>
        <source>Add an injury</source>
        <translation>Verletzung hinzufügen</translation>
    </message>
    <message>
        <source>Remove this injury</source>
        <translation>Diese Verletzung entfernen</translation>
    </message>
    <message>
        <source>add an injury</source>
        <translation>Verletzung hinzufügen</translation>
    </message>
    <message>
        <source>remove an injury</source>
        <translation>Verletzung entfernen</translation>
    </message>
    <message>
        <source>nerve</source>
        <translation>Nerv</translation>
    </message>
    <message>
        <source>mechanism</source>
        <translation>Hergang</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>complete or partial</source>
        <translation>vollständig oder teilweise</translation>
    </message>
    <message>
        <source>nerve seen</source>
        <translation>Nerv gesehen</translation>
    </message>
    <message>
        <source>date of injury</source>
        <translation>Tag der Verletzung</translation>
    </message>
    <message>
        <source>Nerve</source>
        <translation>Nerv</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>Mechanism</source>
        <translation>Hergang</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>Palsy</source>
        <translation>Lähmung</translation>
    </message>
    <message>
        <source>Nerve seen</source>
        <translation>Nerv gesehen</translation>
    </message>
    <message>
        <source>Date of injury</source>
        <translation>Tag der Verletzung</translation>
    </message>
    <message>
        <source>red flag</source>
        <translation>Warnzeichen</translation>
    </message>
    <message>
        <source>%1. %2, %3</source>
        <translation>%1. %2, %3</translation>
    </message>
    <message>
        <source>nerve not named</source>
        <translation>Nerv nicht genannt</translation>
    </message>
    <message>
        <source>date not known</source>
        <translation>Datum nicht bekannt</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
</context>
<context>
    <name>endplate::ui::ItemList</name>
    <message>
        <source>Add: %1</source>
        <translation>Hinzufügen: %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>add: %1</source>
        <translation>hinzufügen: %1</translation>
    </message>
    <message>
        <source>remove: %1</source>
        <translation>entfernen: %1</translation>
    </message>
    <message>
        <source>none given</source>
        <translation>nichts angegeben</translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <translation>Entfernen: %1</translation>
    </message>
</context>
<context>
    <name>endplate::ui::MainWindow</name>
    <message>
        <source>&amp;Edit a lecture...</source>
        <translation>Vorlesung &amp;bearbeiten...</translation>
    </message>
    <message>
        <source>Edit a lecture</source>
        <translation>Vorlesung bearbeiten</translation>
    </message>
    <message>
        <source>The limb is shown here.</source>
        <translation>Hier wird die Extremität gezeigt.</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>%1 (Alt+%2)</source>
        <translation>%1 (Alt+%2)</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Patient and limb</source>
        <translation>Patient und Extremität</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>Examination</source>
        <translation>Untersuchung</translation>
    </message>
    <message>
        <source>Operations</source>
        <translation>Operationen</translation>
    </message>
    <message>
        <source>Deficit</source>
        <translation>Ausfall</translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation>Erholung</translation>
    </message>
    <message>
        <source>Transfers</source>
        <translation>Transfers</translation>
    </message>
    <message>
        <source>Incision</source>
        <translation>Inzision</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Möglichkeiten</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Belege</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>A case was not saved when the desk ended: %1, copied %2.</source>
        <translation>Ein Fall war nicht gesichert, als das Programm endete: %1, kopiert %2.</translation>
    </message>
    <message>
        <source>Open the copy</source>
        <translation>Kopie öffnen</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop reckoning; the last answer stays (Esc)</source>
        <translation>Das Rechnen anhalten; die letzte Antwort bleibt (Esc)</translation>
    </message>
    <message>
        <source>Safety copy %1</source>
        <translation>Sicherheitskopie %1</translation>
    </message>
    <message>
        <source>NO safety copy: %1</source>
        <translation>KEINE Sicherheitskopie: %1</translation>
    </message>
    <message>
        <source>Reckoning %1</source>
        <translation>Berechnet wird %1</translation>
    </message>
    <message>
        <source>%1[*] - Endplate</source>
        <translation>%1[*] - Endplate</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New case</source>
        <translation>&amp;Neuer Fall</translation>
    </message>
    <message>
        <source>&amp;Open...</source>
        <translation>Ö&amp;ffnen...</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Sichern</translation>
    </message>
    <message>
        <source>Save &amp;as...</source>
        <translation>Sichern &amp;unter...</translation>
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
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Se&amp;ttings...</source>
        <translation>&amp;Einstellungen...</translation>
    </message>
    <message>
        <source>&amp;Questions</source>
        <translation>&amp;Fragen</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Help on this question</source>
        <translation>&amp;Hilfe zu dieser Frage</translation>
    </message>
    <message>
        <source>&amp;First steps</source>
        <translation>&amp;Erste Schritte</translation>
    </message>
    <message>
        <source>&amp;About Endplate</source>
        <translation>&amp;Über Endplate</translation>
    </message>
    <message>
        <source>%1 was not opened.
%2</source>
        <translation>%1 wurde nicht geöffnet.
%2</translation>
    </message>
    <message>
        <source>%1 is open on another desk. What you save here replaces what is saved there: save under another name.</source>
        <translation>%1 ist an einem anderen Platz geöffnet. Was Sie hier sichern, ersetzt das dort Gesicherte: sichern Sie unter einem anderen Namen.</translation>
    </message>
    <message>
        <source>Save the case</source>
        <translation>Den Fall sichern</translation>
    </message>
    <message>
        <source>case.json</source>
        <translation>fall.json</translation>
    </message>
    <message>
        <source>Case files (*.json)</source>
        <translation>Falldateien (*.json)</translation>
    </message>
    <message>
        <source>Open a case</source>
        <translation>Einen Fall öffnen</translation>
    </message>
    <message>
        <source>Case files (*.json);;All files (*)</source>
        <translation>Falldateien (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The case was changed</source>
        <translation>Der Fall wurde geändert</translation>
    </message>
    <message>
        <source>Save the changes of %1?</source>
        <translation>Die Änderungen von %1 sichern?</translation>
    </message>
    <message>
        <source>About Endplate</source>
        <translation>Über Endplate</translation>
    </message>
    <message>
        <source>Endplate %1

%2

GPL-3.0-or-later. It is not a medical device.</source>
        <translation>Endplate %1

%2

GPL-3.0-or-later. Es ist kein Medizinprodukt.</translation>
    </message>
    <message>
        <source>Save &amp;table as CSV...</source>
        <translation>&amp;Tabelle als CSV sichern...</translation>
    </message>
    <message>
        <source>&amp;Lecture</source>
        <translation>&amp;Vorlesung</translation>
    </message>
    <message>
        <source>&amp;Open a lecture...</source>
        <translation>Vorlesung ö&amp;ffnen...</translation>
    </message>
    <message>
        <source>Open a lecture</source>
        <translation>Eine Vorlesung öffnen</translation>
    </message>
    <message>
        <source>Lectures (*.json)</source>
        <translation>Vorlesungen (*.json)</translation>
    </message>
    <message>
        <source>&amp;Fit to a scan...</source>
        <translation>An einen &amp;Scan anpassen...</translation>
    </message>
    <message>
        <source>Drop one case, or a scanned surface with its landmarks.</source>
        <translation>Legen Sie einen Fall ab, oder eine gescannte Oberfläche mit ihren Landmarken.</translation>
    </message>
</context>
<context>
    <name>endplate::ui::NameList</name>
    <message>
        <source>Add to: %1</source>
        <translation>Hinzufügen zu: %1</translation>
    </message>
    <message>
        <source>add a name</source>
        <translation>Namen hinzufügen</translation>
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
        <source>none given</source>
        <translation>nichts angegeben</translation>
    </message>
</context>
<context>
    <name>endplate::ui::NumberField</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not known, %1</source>
        <translation>nicht bekannt, %1</translation>
    </message>
</context>
<context>
    <name>endplate::ui::OperationsPanel</name>
    <message>
        <source>What was done, what is planned, what is wanted?</source>
        <translation>Was wurde getan, was ist geplant, was wird gewünscht?</translation>
    </message>
    <message>
        <source>Operations</source>
        <translation>Operationen</translation>
    </message>
    <message>
        <source>What the patient needs most, first things first</source>
        <translation>Was der Patient am meisten braucht, das Wichtigste zuerst</translation>
    </message>
    <message>
        <source>needed most</source>
        <translation>am meisten gebraucht</translation>
    </message>
    <message>
        <source>Not available: muscles, nerves, graft donors</source>
        <translation>Nicht verfügbar: Muskeln, Nerven, Transplantatspender</translation>
    </message>
    <message>
        <source>not available</source>
        <translation>nicht verfügbar</translation>
    </message>
    <message>
        <source>Variants known of this limb</source>
        <translation>Bekannte Varianten dieser Extremität</translation>
    </message>
    <message>
        <source>variants</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>operation</source>
        <translation>Operation</translation>
    </message>
    <message>
        <source>date not known</source>
        <translation>Datum nicht bekannt</translation>
    </message>
    <message>
        <source>planned or done is not said</source>
        <translation>ob geplant oder ausgeführt, ist nicht gesagt</translation>
    </message>
    <message>
        <source>date of the operation</source>
        <translation>Tag der Operation</translation>
    </message>
    <message>
        <source>planned or done</source>
        <translation>geplant oder ausgeführt</translation>
    </message>
    <message>
        <source>nerve action potential</source>
        <translation>Nervenaktionspotential</translation>
    </message>
    <message>
        <source>gap after resection</source>
        <translation>Lücke nach Resektion</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Nerve action potential</source>
        <translation>Nervenaktionspotential</translation>
    </message>
    <message>
        <source>Gap after resection, mm</source>
        <translation>Lücke nach Resektion, mm</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>procedure</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>nerve that was operated</source>
        <translation>operierter Nerv</translation>
    </message>
    <message>
        <source>cables of the graft</source>
        <translation>Kabel des Transplantats</translation>
    </message>
    <message>
        <source>donor of the graft or transfer</source>
        <translation>Spender des Transplantats oder Transfers</translation>
    </message>
    <message>
        <source>layer of a transposed ulnar nerve</source>
        <translation>Schicht eines verlagerten N. ulnaris</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Nerve</source>
        <translation>Nerv</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Cables</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Donor</source>
        <translation>Spender</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Schicht</translation>
    </message>
</context>
<context>
    <name>endplate::ui::Panel</name>
    <message>
        <source>Reckon again</source>
        <translation>Neu berechnen</translation>
    </message>
    <message>
        <source>LEFT LIMB</source>
        <translation>LINKE EXTREMITÄT</translation>
    </message>
    <message>
        <source>RIGHT LIMB</source>
        <translation>RECHTE EXTREMITÄT</translation>
    </message>
    <message>
        <source>SIDE NOT GIVEN</source>
        <translation>SEITE NICHT ANGEGEBEN</translation>
    </message>
    <message>
        <source>Shown as a right limb until the side is given.</source>
        <translation>Als rechte Extremität gezeigt, bis die Seite angegeben ist.</translation>
    </message>
    <message>
        <source>Reckoned on %1</source>
        <translation>Berechnet für den %1</translation>
    </message>
    <message>
        <source>injury %1 (%2)</source>
        <translation>Verletzung %1 (%2)</translation>
    </message>
    <message>
        <source>date of injury not known</source>
        <translation>Tag der Verletzung nicht bekannt</translation>
    </message>
    <message>
        <source>last examined %1 (%2)</source>
        <translation>zuletzt untersucht %1 (%2)</translation>
    </message>
    <message>
        <source>date of examination not known</source>
        <translation>Tag der Untersuchung nicht bekannt</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>nicht untersucht</translation>
    </message>
    <message>
        <source>NOT CURRENT: the case cannot be read.
%1</source>
        <translation>NICHT AKTUELL: der Fall kann nicht gelesen werden.
%1</translation>
    </message>
    <message>
        <source>Stopped. Nothing has been reckoned yet.</source>
        <translation>Angehalten. Noch ist nichts berechnet.</translation>
    </message>
    <message>
        <source>Being reckoned ...</source>
        <translation>Wird berechnet ...</translation>
    </message>
    <message>
        <source>NOT CURRENT, stopped.</source>
        <translation>NICHT AKTUELL, angehalten.</translation>
    </message>
    <message>
        <source>NOT CURRENT: being reckoned anew.</source>
        <translation>NICHT AKTUELL: wird neu berechnet.</translation>
    </message>
    <message>
        <source>What is shown was made at %1 with other settings.</source>
        <translation>Das Gezeigte entstand um %1 mit anderen Einstellungen.</translation>
    </message>
    <message>
        <source>What is shown was made at %1, from the case before: %2.</source>
        <translation>Das Gezeigte entstand um %1 aus dem Fall vor: %2.</translation>
    </message>
    <message>
        <source>No injury is given yet: enter it under Injury (Alt+3).</source>
        <translation>Noch ist keine Verletzung angegeben: unter Verletzung eingeben (Alt+3).</translation>
    </message>
</context>
<context>
    <name>endplate::ui::PatientPanel</name>
    <message>
        <source>Whose limb is it, and how does it lie?</source>
        <translation>Wessen Extremität ist es, und wie liegt sie?</translation>
    </message>
    <message>
        <source>How the limb lies</source>
        <translation>Wie die Extremität liegt</translation>
    </message>
    <message>
        <source>How big such a limb is</source>
        <translation>Wie groß eine solche Extremität ist</translation>
    </message>
    <message>
        <source>Size of the limb</source>
        <translation>Größe der Extremität</translation>
    </message>
    <message>
        <source>&amp;Right</source>
        <translation>&amp;Rechts</translation>
    </message>
    <message>
        <source>&amp;Left</source>
        <translation>&amp;Links</translation>
    </message>
    <message>
        <source>Injured side</source>
        <translation>Verletzte Seite</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Dominant side</source>
        <translation>Dominante Seite</translation>
    </message>
    <message>
        <source>dominant side</source>
        <translation>dominante Seite</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Age, years</source>
        <translation>Alter, Jahre</translation>
    </message>
    <message>
        <source>age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>Stature, mm</source>
        <translation>Körpergröße, mm</translation>
    </message>
    <message>
        <source>stature</source>
        <translation>Körpergröße</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>a label without identity, for calendar and file</source>
        <translation>eine Bezeichnung ohne Identität, für Kalender und Datei</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>breadth: </source>
        <translation>Breite: </translation>
    </message>
    <message>
        <source>girth: </source>
        <translation>Umfang: </translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>90 in 100 such limbs, %1</source>
        <translation>90 von 100 solcher Extremitäten, %1</translation>
    </message>
    <message>
        <source>Known by</source>
        <translation>Bekannt durch</translation>
    </message>
    <message>
        <source>Measured with a tape</source>
        <translation>Mit dem Maßband gemessen</translation>
    </message>
    <message>
        <source>Nerves found by ultrasound</source>
        <translation>Mit Ultraschall gefundene Nerven</translation>
    </message>
    <message>
        <source>percentile of the stature</source>
        <translation>Perzentile der Körpergröße</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>How many of a hundred people of this sex and age are shorter; instead of the stature</source>
        <translation>Wie viele von hundert Menschen dieses Geschlechts und Alters kleiner sind; anstelle der Körpergröße</translation>
    </message>
    <message>
        <source>or percentile</source>
        <translation>oder Perzentile</translation>
    </message>
</context>
<context>
    <name>endplate::ui::PlaceEditor</name>
    <message>
        <source>place not known</source>
        <translation>Ort nicht bekannt</translation>
    </message>
    <message>
        <source>by a landmark</source>
        <translation>durch eine Landmarke</translation>
    </message>
    <message>
        <source>on a branch</source>
        <translation>auf einem Ast</translation>
    </message>
    <message>
        <source>root</source>
        <translation>Wurzel</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>Truncus</translation>
    </message>
    <message>
        <source>cord</source>
        <translation>Faszikel</translation>
    </message>
    <message>
        <source>How the place is given</source>
        <translation>Wie der Ort angegeben wird</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>Ast</translation>
    </message>
    <message>
        <source>distance from the origin of the branch</source>
        <translation>Abstand vom Ursprung des Astes</translation>
    </message>
    <message>
        <source>from the origin of</source>
        <translation>vom Ursprung von</translation>
    </message>
    <message>
        <source>level of the root</source>
        <translation>Höhe der Wurzel</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
</context>
<context>
    <name>endplate::ui::PlanPanel</name>
    <message>
        <source>FIRST STEP</source>
        <translation>ERSTER SCHRITT</translation>
    </message>
    <message>
        <source>FIRST: examine</source>
        <translation>ZUERST: untersuchen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>unlikely</source>
        <translation>unwahrscheinlich</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>verschlossen</translation>
    </message>
    <message>
        <source>Which options are there?</source>
        <translation>Welche Möglichkeiten gibt es?</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>Möglichkeiten nebeneinander</translation>
    </message>
    <message>
        <source>Published series of the option</source>
        <translation>Veröffentlichte Reihen der Möglichkeit</translation>
    </message>
    <message>
        <source>Candidates of the option</source>
        <translation>Kandidaten der Möglichkeit</translation>
    </message>
    <message>
        <source>Before what later visits showed: %1. The decision weighs them.</source>
        <translation>Vor dem, was spätere Untersuchungen zeigten: %1. Die Entscheidung wiegt sie.</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Möglichkeit</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Published</source>
        <translation>Veröffentlicht</translation>
    </message>
    <message>
        <source>The largest counted series, on its own scale</source>
        <translation>Die größte gezählte Reihe, auf ihrer eigenen Skala</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>This program's chance of use if done today; it does not weigh how many axons a donor brings</source>
        <translation>Aussicht auf Gebrauch nach diesem Programm, wenn heute operiert wird; wie viele Axone ein Spender bringt, wiegt es nicht</translation>
    </message>
    <message>
        <source>M1, mo</source>
        <translation>M1, Mo</translation>
    </message>
    <message>
        <source>First movement, months from the injury</source>
        <translation>Erste Bewegung, Monate ab der Verletzung</translation>
    </message>
    <message>
        <source>The first step stands first, then the order of the trade: not the order of chances.</source>
        <translation>Zuerst steht der erste Schritt, dann die Reihenfolge des Fachs: nicht die der Aussichten.</translation>
    </message>
    <message>
        <source>Not run: %1; no chance and no time is given.</source>
        <translation>Nicht gerechnet: %1; weder Aussicht noch Zeit wird angegeben.</translation>
    </message>
    <message>
        <source>The series let in different patients, so their figures do not compare: %1.</source>
        <translation>Die Reihen nahmen verschiedene Patienten auf, daher sind ihre Zahlen nicht vergleichbar: %1.</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Needs</source>
        <translation>Braucht</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Finds</source>
        <translation>Findet</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Spends</source>
        <translation>Verbraucht</translation>
    </message>
    <message>
        <source>; %1 cables of sural nerve</source>
        <translation>; %1 Kabel des N. suralis</translation>
    </message>
    <message>
        <source>; %1 to %2 cables of sural nerve</source>
        <translation>; %1 bis %2 Kabel des N. suralis</translation>
    </message>
    <message>
        <source>; %1 to %2 mm of graft in all</source>
        <translation>; insgesamt %1 bis %2 mm Transplantat</translation>
    </message>
    <message>
        <source>Graft</source>
        <translation>Transplantat</translation>
    </message>
    <message>
        <source>Graft donors</source>
        <translation>Transplantatspender</translation>
    </message>
    <message>
        <source>Not available</source>
        <translation>Nicht verfügbar</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Who was let in</source>
        <translation>Wer aufgenommen wurde</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>Known by</source>
        <translation>Bekannt durch</translation>
    </message>
    <message>
        <source>Examine first: %1. </source>
        <translation>Zuerst untersuchen: %1. </translation>
    </message>
    <message>
        <source>Donor</source>
        <translation>Spender</translation>
    </message>
    <message>
        <source>Recipient</source>
        <translation>Empfänger</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>The series let in different patients: their figures do not compare.</source>
        <translation>Die Reihen nahmen verschiedene Patienten auf: ihre Zahlen sind nicht vergleichbar.</translation>
    </message>
</context>
<context>
    <name>endplate::ui::PoseSliders</name>
    <message>
        <source>%1 to %2 degrees: %3.</source>
        <translation>%1 bis %2 Grad: %3.</translation>
    </message>
    <message>
        <source>%1, degrees</source>
        <translation>%1, Grad</translation>
    </message>
    <message>
        <source>Back to the anatomical position</source>
        <translation>Zurück zur anatomischen Stellung</translation>
    </message>
    <message>
        <source>anatomical position</source>
        <translation>anatomische Stellung</translation>
    </message>
    <message>
        <source>thumb and fingers joint by joint</source>
        <translation>Daumen und Finger Gelenk für Gelenk</translation>
    </message>
</context>
<context>
    <name>endplate::ui::RangeEditor</name>
    <message>
        <source>movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1: active %2, passive %3</source>
        <translation>%1: aktiv %2, passiv %3</translation>
    </message>
    <message>
        <source>movement not named</source>
        <translation>Bewegung nicht genannt</translation>
    </message>
    <message>
        <source>active range</source>
        <translation>aktiver Umfang</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>passive range</source>
        <translation>passiver Umfang</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Active, degrees</source>
        <translation>Aktiv, Grad</translation>
    </message>
    <message>
        <source>Passive, degrees</source>
        <translation>Passiv, Grad</translation>
    </message>
</context>
<context>
    <name>endplate::ui::RecoveryPanel</name>
    <message>
        <source>skin: </source>
        <translation>Haut: </translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>When does it come back, and with what chance?</source>
        <translation>Wann kommt es zurück, und mit welcher Aussicht?</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Zeitachse</translation>
    </message>
    <message>
        <source>Order of return</source>
        <translation>Reihenfolge der Rückkehr</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Chance of a useful result by the date of operation</source>
        <translation>Aussicht auf ein brauchbares Ergebnis nach dem Tag der Operation</translation>
    </message>
    <message>
        <source>Chance by date of operation</source>
        <translation>Aussicht nach dem Tag der Operation</translation>
    </message>
    <message>
        <source>Closing window</source>
        <translation>Schließendes Fenster</translation>
    </message>
    <message>
        <source>Tinel schedule</source>
        <translation>Tinel-Plan</translation>
    </message>
    <message>
        <source>Tinel</source>
        <translation>Tinel</translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation>Worauf zu achten ist</translation>
    </message>
    <message>
        <source>Needle studies</source>
        <translation>Nadeluntersuchungen</translation>
    </message>
    <message>
        <source>No forecast: %1</source>
        <translation>Keine Vorhersage: %1</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>Months from the injury: the middle, and 90 in 100 of those whose axons grow. Axons at a muscle are not movement. * part of its axons come another way or were spared.</source>
        <translation>Monate ab der Verletzung: die Mitte und 90 von 100 derer, deren Axone wachsen. Axone am Muskel sind noch keine Bewegung. * ein Teil der Axone kommt auf anderem Weg oder blieb verschont.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>operate before %1, if at all</source>
        <translation>operieren vor %1, wenn überhaupt</translation>
    </message>
    <message>
        <source>In 90 in 100 published series: %1 to %2</source>
        <translation>In 90 von 100 veröffentlichten Reihen: %1 bis %2</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Way, %1</source>
        <translation>Weg, %1</translation>
    </message>
    <message>
        <source>Axons, mo</source>
        <translation>Axone, Mo</translation>
    </message>
    <message>
        <source>Axons arrive, months from the injury</source>
        <translation>Axone treffen ein, Monate ab der Verletzung</translation>
    </message>
    <message>
        <source>M1, mo</source>
        <translation>M1, Mo</translation>
    </message>
    <message>
        <source>First movement, months from the injury</source>
        <translation>Erste Bewegung, Monate ab der Verletzung</translation>
    </message>
    <message>
        <source>M3/S3, mo</source>
        <translation>M3/S3, Mo</translation>
    </message>
    <message>
        <source>Useful, months from the injury</source>
        <translation>Brauchbar, Monate ab der Verletzung</translation>
    </message>
    <message>
        <source>In time</source>
        <translation>Rechtzeitig</translation>
    </message>
    <message>
        <source>Chance that axons find a muscle that can still become useful</source>
        <translation>Aussicht, dass Axone einen Muskel finden, der noch brauchbar werden kann</translation>
    </message>
    <message>
        <source>Useful</source>
        <translation>Brauchbar</translation>
    </message>
    <message>
        <source>Chance of a useful result, with its scale</source>
        <translation>Aussicht auf ein brauchbares Ergebnis, mit seiner Skala</translation>
    </message>
    <message>
        <source>best before %1</source>
        <translation>am besten vor %1</translation>
    </message>
    <message>
        <source>unlikely after %1</source>
        <translation>unwahrscheinlich nach %1</translation>
    </message>
    <message>
        <source>If a %1 is needed: the chance of %2 by the date of the operation (%3). Unlikely: under one in five.</source>
        <translation>Falls nötig (%1): die Aussicht auf %2 nach dem Tag der Operation (%3). Unwahrscheinlich: unter eins zu fünf.</translation>
    </message>
    <message>
        <source>months from the injury to the operation</source>
        <translation>Monate von der Verletzung bis zur Operation</translation>
    </message>
    <message>
        <source>Operation on</source>
        <translation>Operation am</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Aussicht</translation>
    </message>
    <message>
        <source>If axons grow, tapping should tingle this far beyond the lesion, toward the %1.</source>
        <translation>Wenn Axone wachsen, sollte Klopfen so weit jenseits der Läsion kribbeln, in Richtung %1.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Beyond the lesion, %1</source>
        <translation>Jenseits der Läsion, %1</translation>
    </message>
    <message>
        <source>90 in 100, %1</source>
        <translation>90 von 100, %1</translation>
    </message>
    <message>
        <source>One in twenty shows the sign before the first date and one in twenty after the last, of those whose axons grow.</source>
        <translation>Einer von zwanzig zeigt das Zeichen vor dem ersten und einer von zwanzig nach dem letzten Tag, von denen, deren Axone wachsen.</translation>
    </message>
    <message>
        <source>Look for</source>
        <translation>Zu achten auf</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>Nicht vor</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Late after</source>
        <translation>Spät nach</translation>
    </message>
    <message>
        <source>muscles below the lesion</source>
        <translation>Muskeln unterhalb der Läsion</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Muscle</source>
        <translation>Muskel</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Means</source>
        <translation>Bedeutet</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
</context>
<context>
    <name>endplate::ui::RowTable</name>
    <message>
        <source>Save the table</source>
        <translation>Die Tabelle sichern</translation>
    </message>
    <message>
        <source>Comma-separated values (*.csv)</source>
        <translation>Werte mit Komma (*.csv)</translation>
    </message>
    <message>
        <source>Save the table as CSV...</source>
        <translation>Die Tabelle als CSV sichern...</translation>
    </message>
    <message>
        <source>What stands behind this: %1</source>
        <translation>Was dahinter steht: %1</translation>
    </message>
    <message>
        <source>picked on the limb</source>
        <translation>an der Extremität gewählt</translation>
    </message>
</context>
<context>
    <name>endplate::ui::Settings</name>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
</context>
<context>
    <name>endplate::ui::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Lengths in &amp;tables</source>
        <translation>Längen in &amp;Tabellen</translation>
    </message>
    <message>
        <source>&amp;Palette</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>&amp;Language (from the next start)</source>
        <translation>&amp;Sprache (ab dem nächsten Start)</translation>
    </message>
    <message>
        <source>&amp;Sampled limbs and patients</source>
        <translation>Gezogene &amp;Extremitäten und Patienten</translation>
    </message>
    <message>
        <source>S&amp;eed of the random numbers</source>
        <translation>&amp;Startwert der Zufallszahlen</translation>
    </message>
    <message>
        <source>The same case, seed, number of samples and day give the same figures. Case files always hold millimetres.</source>
        <translation>Derselbe Fall, Startwert, Umfang und Tag ergeben dieselben Zahlen. Falldateien enthalten immer Millimeter.</translation>
    </message>
</context>
<context>
    <name>endplate::ui::StudyEditor</name>
    <message>
        <source>Of all visits, each with its own date. A study is of one muscle or of one nerve.</source>
        <translation>Aus allen Untersuchungen, jede mit eigenem Datum. Eine Messung gilt einem Muskel oder einem Nerv.</translation>
    </message>
    <message>
        <source>study</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>fibrillation</source>
        <translation>Fibrillation</translation>
    </message>
    <message>
        <source>nothing given yet</source>
        <translation>noch nichts angegeben</translation>
    </message>
    <message>
        <source>date of the study</source>
        <translation>Tag der Messung</translation>
    </message>
    <message>
        <source>muscle of the study</source>
        <translation>Muskel der Messung</translation>
    </message>
    <message>
        <source>nerve of the study</source>
        <translation>Nerv der Messung</translation>
    </message>
    <message>
        <source>motor units</source>
        <translation>motorische Einheiten</translation>
    </message>
    <message>
        <source>sensory nerve action potential</source>
        <translation>sensibles Nervenaktionspotential</translation>
    </message>
    <message>
        <source>compound muscle action potential</source>
        <translation>Muskelsummenpotential</translation>
    </message>
    <message>
        <source>on stimulation</source>
        <translation>bei Stimulation</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Muscle</source>
        <translation>Muskel</translation>
    </message>
    <message>
        <source>or nerve</source>
        <translation>oder Nerv</translation>
    </message>
    <message>
        <source>Fibrillation</source>
        <translation>Fibrillation</translation>
    </message>
    <message>
        <source>Motor units</source>
        <translation>Motorische Einheiten</translation>
    </message>
    <message>
        <source>Sensory potential</source>
        <translation>Sensibles Potential</translation>
    </message>
    <message>
        <source>Motor potential</source>
        <translation>Motorisches Potential</translation>
    </message>
    <message>
        <source>On stimulation</source>
        <translation>Bei Stimulation</translation>
    </message>
</context>
<context>
    <name>endplate::ui::TermField</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
</context>
<context>
    <name>endplate::ui::TimelineChart</name>
    <message>
        <source>Order of return, in months from the injury</source>
        <translation>Reihenfolge der Rückkehr, in Monaten ab der Verletzung</translation>
    </message>
    <message>
        <source>useful</source>
        <translation>brauchbar</translation>
    </message>
    <message>
        <source>first movement (M1)</source>
        <translation>erste Bewegung (M1)</translation>
    </message>
    <message>
        <source>useful (M3, S3)</source>
        <translation>brauchbar (M3, S3)</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>first movement: %1 months</source>
        <translation>erste Bewegung: %1 Monate</translation>
    </message>
    <message>
        <source>useful: %1 months</source>
        <translation>brauchbar: %1 Monate</translation>
    </message>
</context>
<context>
    <name>endplate::ui::TourDialog</name>
    <message>
        <source>The questions stand on the left. Alt and a number opens one of them.</source>
        <translation>Die Fragen stehen links. Alt und eine Ziffer öffnet eine von ihnen.</translation>
    </message>
    <message>
        <source>Start with the patient and the injury. What you do not know you leave open.</source>
        <translation>Beginnen Sie mit dem Patienten und der Verletzung. Was Sie nicht wissen, lassen Sie offen.</translation>
    </message>
    <message>
        <source>Enter the examination with one key for each muscle. Not examined is not normal.</source>
        <translation>Geben Sie die Untersuchung mit einer Taste je Muskel ein. Nicht untersucht ist nicht normal.</translation>
    </message>
    <message>
        <source>The decision says what next, by when, unless what. While it is being reckoned anew the last one stays, marked as not current.</source>
        <translation>Die Entscheidung sagt, was als Nächstes, bis wann, außer wenn. Während neu gerechnet wird, bleibt die letzte stehen, als nicht aktuell gekennzeichnet.</translation>
    </message>
    <message>
        <source>Every edit can be undone, and a safety copy is written every few seconds. F1 opens the help of the question in front of you.</source>
        <translation>Jede Änderung kann zurückgenommen werden, und alle paar Sekunden entsteht eine Sicherheitskopie. F1 öffnet die Hilfe zu der Frage vor Ihnen.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Erste Schritte</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
</context>
<context>
    <name>endplate::ui::TransferPanel</name>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>weak</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>tot</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>A tendon or muscle: not a gap.</source>
        <translation>Eine Sehne oder ein Muskel: keine Lücke.</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation>nicht berechnet</translation>
    </message>
    <message>
        <source>synergist</source>
        <translation>Synergist</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>neutral</translation>
    </message>
    <message>
        <source>ANTAGONIST</source>
        <translation>ANTAGONIST</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Who can give to whom?</source>
        <translation>Wer kann wem geben?</translation>
    </message>
    <message>
        <source>also pairs that nobody has published, kept apart and never combined</source>
        <translation>auch Paare, die niemand veröffentlicht hat, getrennt und nie kombiniert</translation>
    </message>
    <message>
        <source>Transfers side by side</source>
        <translation>Transfers nebeneinander</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Transfers that go together</source>
        <translation>Transfers, die zusammen gehen</translation>
    </message>
    <message>
        <source>Left out of the combination</source>
        <translation>Aus der Kombination weggelassen</translation>
    </message>
    <message>
        <source>Left out, and why</source>
        <translation>Weggelassen, und warum</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Rejected transfers</source>
        <translation>Verworfene Transfers</translation>
    </message>
    <message>
        <source>Rejected</source>
        <translation>Verworfen</translation>
    </message>
    <message>
        <source>Reach: the chance of meeting without a graft through the postoperative range, a computed guide that agrees with %1 of %2 dissected figures: measure before you cut. The published series differ in whom they let in. Whether to transfer at all, and by when, is answered by the options.</source>
        <translation>Reichweite: die Wahrscheinlichkeit, ohne Transplantat im postoperativen Bewegungsumfang zusammenzutreffen, eine berechnete Hilfe, die mit %1 von %2 präparierten Zahlen übereinstimmt: messen Sie, bevor Sie schneiden. Die veröffentlichten Reihen unterscheiden sich darin, wen sie aufnahmen. Ob überhaupt und bis wann, beantworten die Möglichkeiten.</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>none found</source>
        <translation>keine gefunden</translation>
    </message>
    <message>
        <source>NOT PUBLISHED: %1</source>
        <translation>NICHT VERÖFFENTLICHT: %1</translation>
    </message>
    <message>
        <source>Restores</source>
        <translation>Stellt her</translation>
    </message>
    <message>
        <source>Transfer</source>
        <translation>Transfer</translation>
    </message>
    <message>
        <source>Donor is</source>
        <translation>Spender ist</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Reichweite</translation>
    </message>
    <message>
        <source>Slack, %1</source>
        <translation>Reserve, %1</translation>
    </message>
    <message>
        <source>Spare length in the middle limb; negative is missing</source>
        <translation>Überschüssige Länge in der mittleren Extremität; negativ fehlt sie</translation>
    </message>
    <message>
        <source>Axons, mo</source>
        <translation>Axone, Mo</translation>
    </message>
    <message>
        <source>Axons at the nearest target, months from the injury, if done today</source>
        <translation>Axone am nächsten Ziel, Monate ab der Verletzung, wenn heute operiert wird</translation>
    </message>
    <message>
        <source>Published</source>
        <translation>Veröffentlicht</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>%1 to %2 (%3)</source>
        <translation>%1 auf %2 (%3)</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Donor</source>
        <translation>Spender</translation>
    </message>
    <message>
        <source>Examine first</source>
        <translation>Zuerst untersuchen</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Slack</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>%1 (%2 to %3) %4</source>
        <translation>%1 (%2 bis %3) %4</translation>
    </message>
    <message>
        <source>Way to the nearest target</source>
        <translation>Weg zum nächsten Ziel</translation>
    </message>
    <message>
        <source>Axons arrive</source>
        <translation>Axone treffen ein</translation>
    </message>
    <message>
        <source>%1 months from the injury</source>
        <translation>%1 Monate ab der Verletzung</translation>
    </message>
    <message>
        <source>Axon ratio</source>
        <translation>Axonverhältnis</translation>
    </message>
    <message>
        <source>%1, %2; shown, never a gate</source>
        <translation>%1, %2; gezeigt, nie eine Schranke</translation>
    </message>
    <message>
        <source>Function</source>
        <translation>Funktion</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Also spends</source>
        <translation>Verbraucht auch</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>Timing</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Gesagt</translation>
    </message>
    <message>
        <source>Better</source>
        <translation>Besser</translation>
    </message>
    <message>
        <source>shown to work</source>
        <translation>als wirksam gezeigt</translation>
    </message>
    <message>
        <source>if shown to work</source>
        <translation>falls als wirksam gezeigt</translation>
    </message>
    <message>
        <source>Donors and conditions that were not examined, if they do</source>
        <translation>Spender und Bedingungen, die nicht untersucht wurden, falls sie es sind</translation>
    </message>
    <message>
        <source>Nothing yet that was shown to work can be done.</source>
        <translation>Noch kann nichts getan werden, was als wirksam gezeigt ist.</translation>
    </message>
    <message>
        <source>The best set of what was shown to work stands first.</source>
        <translation>Der beste Satz aus dem, was als wirksam gezeigt ist, steht zuerst.</translation>
    </message>
    <message>
        <source>Stays without: %1.</source>
        <translation>Bleibt ohne: %1.</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Dient</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Rejected because</source>
        <translation>Verworfen, weil</translation>
    </message>
    <message>
        <source>yes, %1</source>
        <translation>ja, %1</translation>
    </message>
    <message>
        <source>The chance of meeting without a graft</source>
        <translation>Die Wahrscheinlichkeit, ohne Transplantat zusammenzutreffen</translation>
    </message>
    <message>
        <source>graft, %1</source>
        <translation>Transplantat, %1</translation>
    </message>
    <message>
        <source>A graft would be needed; the chance without one</source>
        <translation>Ein Transplantat wäre nötig; die Wahrscheinlichkeit ohne eines</translation>
    </message>
    <message>
        <source>no, %1</source>
        <translation>nein, %1</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>The desk: one case of an injured nerve of the upper limb, its decision and its answers.</source>
        <translation>Der Arbeitsplatz: ein Fall eines verletzten Nervs der oberen Extremität, seine Entscheidung und seine Antworten.</translation>
    </message>
    <message>
        <source>case file to open</source>
        <translation>zu öffnende Falldatei</translation>
    </message>
    <message>
        <source>folder of the evidence tables</source>
        <translation>Ordner der Belegtabellen</translation>
    </message>
    <message>
        <source>the date to reckon from, YYYY-MM-DD</source>
        <translation>der Tag, für den gerechnet wird, JJJJ-MM-TT</translation>
    </message>
</context>
<context>
    <name>endplate::ui::LectureEditor</name>
    <message>
        <source>Edit lecture</source>
        <translation>Vorlesung bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Lecture</source>
        <translation>&amp;Vorlesung</translation>
    </message>
    <message>
        <source>Steps, in order</source>
        <translation>Schritte der Reihe nach</translation>
    </message>
    <message>
        <source>&amp;Up</source>
        <translation>&amp;Hinauf</translation>
    </message>
    <message>
        <source>Move the step up</source>
        <translation>Schritt nach oben schieben</translation>
    </message>
    <message>
        <source>&amp;Down</source>
        <translation>H&amp;inunter</translation>
    </message>
    <message>
        <source>Move the step down</source>
        <translation>Schritt nach unten schieben</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>Add a step after this one</source>
        <translation>Einen Schritt hinter diesem einfügen</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>Remove the step</source>
        <translation>Den Schritt löschen</translation>
    </message>
    <message>
        <source>One paragraph a line</source>
        <translation>Ein Absatz je Zeile</translation>
    </message>
    <message>
        <source>AP_004, AP_005: rows of approaches.csv</source>
        <translation>AP_004, AP_005: Zeilen aus approaches.csv</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>&amp;Titel</translation>
    </message>
    <message>
        <source>S&amp;hows</source>
        <translation>&amp;Zeigt</translation>
    </message>
    <message>
        <source>&amp;Nerve</source>
        <translation>N&amp;erv</translation>
    </message>
    <message>
        <source>Seen &amp;from</source>
        <translation>Gesehen v&amp;on</translation>
    </message>
    <message>
        <source>R&amp;egion</source>
        <translation>&amp;Gegend</translation>
    </message>
    <message>
        <source>La&amp;yers</source>
        <translation>S&amp;chichten</translation>
    </message>
    <message>
        <source>&amp;Words</source>
        <translation>&amp;Worte</translation>
    </message>
    <message>
        <source>Ru&amp;les</source>
        <translation>&amp;Regeln</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>New step</source>
        <translation>Neuer Schritt</translation>
    </message>
    <message>
        <source>words alone</source>
        <translation>nur Worte</translation>
    </message>
    <message>
        <source>course of a nerve</source>
        <translation>Verlauf eines Nervs</translation>
    </message>
    <message>
        <source>muscles it moves</source>
        <translation>Muskeln, die er bewegt</translation>
    </message>
    <message>
        <source>skin it serves</source>
        <translation>Haut, die er versorgt</translation>
    </message>
    <message>
        <source>exceptions</source>
        <translation>Ausnahmen</translation>
    </message>
    <message>
        <source>danger zones</source>
        <translation>Gefahrenzonen</translation>
    </message>
</context>
<context>
    <name>endplate::ui::LectureRoom</name>
    <message>
        <source>LEFT</source>
        <translation>LINKE</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>RECHTE</translation>
    </message>
    <message>
        <source>Save this step as a figure</source>
        <translation>Diesen Schritt als Abbildung speichern</translation>
    </message>
    <message>
        <source>step-%1.png</source>
        <translation>schritt-%1.png</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>PNG-Bild (*.png)</translation>
    </message>
    <message>
        <source>Lecture</source>
        <translation>Vorlesung</translation>
    </message>
    <message>
        <source>Nothing was written to %1.</source>
        <translation>Nach %1 wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Save lecture</source>
        <translation>Vorlesung speichern</translation>
    </message>
    <message>
        <source>Lecture (*.json)</source>
        <translation>Vorlesung (*.json)</translation>
    </message>
</context>
<context>
    <name>endplate::ui::LimbStage</name>
    <message>
        <source>Picture of the limb</source>
        <translation>Bild des Arms</translation>
    </message>
    <message>
        <source>%1 The limb is drawn flat; everything else works.</source>
        <translation>%1 Der Arm ist flach gezeichnet; alles andere geht.</translation>
    </message>
    <message>
        <source>Nerve within %1 mm, %2 mm deep</source>
        <translation>Nerv innerhalb von %1 mm, %2 mm tief</translation>
    </message>
    <message>
        <source>under 5 %</source>
        <translation>unter 5 %</translation>
    </message>
    <message>
        <source>over 95 %</source>
        <translation>über 95 %</translation>
    </message>
    <message>
        <source>%1, %2 mm from where it begins</source>
        <translation>%1, %2 mm von seinem Anfang</translation>
    </message>
    <message>
        <source>Picture of the limb: by hand</source>
        <translation>Bild des Arms: von Hand</translation>
    </message>
    <message>
        <source>Picture of the limb: tools</source>
        <translation>Bild des Arms: Werkzeuge</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Seen from the front (1)</source>
        <translation>Von vorn gesehen (1)</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Seen from the back (2)</source>
        <translation>Von hinten gesehen (2)</translation>
    </message>
    <message>
        <source>Lateral</source>
        <translation>Lateral</translation>
    </message>
    <message>
        <source>Seen from the lateral side (3)</source>
        <translation>Von lateral gesehen (3)</translation>
    </message>
    <message>
        <source>Medial</source>
        <translation>Medial</translation>
    </message>
    <message>
        <source>Seen from the medial side (4)</source>
        <translation>Von medial gesehen (4)</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Schichten</translation>
    </message>
    <message>
        <source>What is shown of the limb</source>
        <translation>Was vom Arm gezeigt wird</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Bones</source>
        <translation>Knochen</translation>
    </message>
    <message>
        <source>Muscles</source>
        <translation>Muskeln</translation>
    </message>
    <message>
        <source>Nerves and plexus</source>
        <translation>Nerven und Plexus</translation>
    </message>
    <message>
        <source>Small nerves</source>
        <translation>Kleine Nerven</translation>
    </message>
    <message>
        <source>Nerves of the chest</source>
        <translation>Nerven der Brustwand</translation>
    </message>
    <message>
        <source>Branch points</source>
        <translation>Abgänge</translation>
    </message>
    <message>
        <source>Motor entries</source>
        <translation>Muskeleintritte</translation>
    </message>
    <message>
        <source>Landmarks</source>
        <translation>Landmarken</translation>
    </message>
    <message>
        <source>Names</source>
        <translation>Namen</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Schnittbild</translation>
    </message>
    <message>
        <source>Cut a part of the limb away</source>
        <translation>Einen Teil des Arms wegschneiden</translation>
    </message>
    <message>
        <source>Whole limb</source>
        <translation>Ganzer Arm</translation>
    </message>
    <message>
        <source>Front half away</source>
        <translation>Vordere Hälfte weg</translation>
    </message>
    <message>
        <source>Lateral half away</source>
        <translation>Laterale Hälfte weg</translation>
    </message>
    <message>
        <source>Upper third away</source>
        <translation>Oberes Drittel weg</translation>
    </message>
    <message>
        <source>Upper two thirds away</source>
        <translation>Obere zwei Drittel weg</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Two clicks: straight, along the nerve and over the skin</source>
        <translation>Zwei Klicks: gerade, am Nerv entlang und über die Haut</translation>
    </message>
    <message>
        <source>Draw incision</source>
        <translation>Schnitt zeichnen</translation>
    </message>
    <message>
        <source>Click along the skin; Return ends the line, Backspace takes a point back</source>
        <translation>Auf der Haut entlangklicken; Eingabe beendet die Linie, Rücktaste nimmt einen Punkt zurück</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>The picture as PNG at print resolution</source>
        <translation>Das Bild als PNG in Druckauflösung</translation>
    </message>
    <message>
        <source>The limb of this case cannot be drawn: %1</source>
        <translation>Der Arm dieses Falls kann nicht gezeichnet werden: %1</translation>
    </message>
    <message>
        <source>injury %1</source>
        <translation>Verletzung %1</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>Move the injury</source>
        <translation>Verletzung verschieben</translation>
    </message>
    <message>
        <source>straight %1 %2</source>
        <translation>gerade %1 %2</translation>
    </message>
    <message>
        <source>along the nerve %1 %2</source>
        <translation>am Nerv entlang %1 %2</translation>
    </message>
    <message>
        <source>over the skin %1 %2</source>
        <translation>über die Haut %1 %2</translation>
    </message>
    <message>
        <source> (this limb, as drawn)</source>
        <translation> (dieser Arm, wie gezeichnet)</translation>
    </message>
    <message>
        <source>donor</source>
        <translation>Spender</translation>
    </message>
    <message>
        <source>recipient</source>
        <translation>Empfänger</translation>
    </message>
    <message>
        <source>limb.png</source>
        <translation>arm.png</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>PNG-Bild (*.png)</translation>
    </message>
    <message>
        <source>The picture could not be written to %1</source>
        <translation>Das Bild konnte nicht nach %1 geschrieben werden</translation>
    </message>
    <message>
        <source>Picture saved to %1</source>
        <translation>Bild gespeichert: %1</translation>
    </message>
    <message>
        <source>least risk</source>
        <translation>geringstes Risiko</translation>
    </message>
</context>
<context>
    <name>endplate::ui::LimbView</name>
    <message>
        <source>View of the limb</source>
        <translation>Ansicht des Arms</translation>
    </message>
    <message>
        <source>Skin, bones, muscles and nerves of the limb. Keys 1 to 5 look from the front, the back, the lateral and medial side and from above; the arrows turn it.</source>
        <translation>Haut, Knochen, Muskeln und Nerven des Arms. Die Tasten 1 bis 5 blicken von vorn, hinten, lateral, medial und oben; die Pfeile drehen ihn.</translation>
    </message>
    <message>
        <source>This screen offers no OpenGL.</source>
        <translation>Dieser Bildschirm bietet kein OpenGL.</translation>
    </message>
    <message>
        <source>This screen offers OpenGL %1.%2; 3.2 is needed.</source>
        <translation>Dieser Bildschirm bietet OpenGL %1.%2; gebraucht wird 3.2.</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>RECHTS</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>LINKS</translation>
    </message>
    <message>
        <source>straight %1 mm</source>
        <translation>gerade %1 mm</translation>
    </message>
    <message>
        <source>along the nerve %1 mm</source>
        <translation>am Nerv entlang %1 mm</translation>
    </message>
    <message>
        <source>over the skin %1 mm</source>
        <translation>über die Haut %1 mm</translation>
    </message>
    <message>
        <source>not over the skin: %1</source>
        <translation>nicht über die Haut: %1</translation>
    </message>
    <message>
        <source>over the skin: measuring</source>
        <translation>über die Haut: wird gemessen</translation>
    </message>
    <message>
        <source>Click the first place to measure from.</source>
        <translation>Auf die erste Stelle klicken, von der gemessen wird.</translation>
    </message>
    <message>
        <source>Click the place to measure to.</source>
        <translation>Auf die Stelle klicken, bis zu der gemessen wird.</translation>
    </message>
    <message>
        <source>Click on the skin where the incision begins.</source>
        <translation>Auf die Haut klicken, wo der Schnitt beginnt.</translation>
    </message>
    <message>
        <source>Click on along the incision; Return ends it, Backspace takes the last point away.</source>
        <translation>Weiter am Schnitt entlangklicken; Eingabe beendet ihn, Rücktaste nimmt den letzten Punkt weg.</translation>
    </message>
</context>
<context>
    <name>endplate::ui::PickCard</name>
    <message>
        <source>What was picked on the limb</source>
        <translation>Was am Arm angeklickt wurde</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>, %1 mm from where it begins</source>
        <translation>, %1 mm von seinem Anfang</translation>
    </message>
    <message>
        <source> and %1 more</source>
        <translation> und %1 weitere</translation>
    </message>
    <message>
        <source>Moves:</source>
        <translation>Bewegt:</translation>
    </message>
    <message>
        <source>Feels:</source>
        <translation>Fühlt:</translation>
    </message>
    <message>
        <source>Nerve: %1 (%2)</source>
        <translation>Nerv: %1 (%2)</translation>
    </message>
    <message>
        <source>Action: %1</source>
        <translation>Wirkung: %1</translation>
    </message>
    <message>
        <source>Chosen:</source>
        <translation>Gewählt:</translation>
    </message>
</context>
<context>
    <name>endplate::ui::Presenter</name>
    <message>
        <source>Lecture</source>
        <translation>Vorlesung</translation>
    </message>
    <message>
        <source>Right or Space: next step. Left: step before. Home, End: first and last. S: save this step as a figure. F11: whole screen. Escape: close.</source>
        <translation>Rechts oder Leertaste: nächster Schritt. Links: voriger Schritt. Pos1, Ende: erster und letzter. S: diesen Schritt als Abbildung speichern. F11: ganzer Bildschirm. Escape: schließen.</translation>
    </message>
</context>
<context>
    <name>endplate::ui::RiskBar</name>
    <message>
        <source>Risk on the skin</source>
        <translation>Risiko auf der Haut</translation>
    </message>
    <message>
        <source>For every place of the skin: the chance that a modelled nerve lies near the track that goes straight in there</source>
        <translation>Für jede Stelle der Haut: die Wahrscheinlichkeit, dass ein Nerv des Modells nahe dem Weg liegt, der dort gerade hineinführt</translation>
    </message>
    <message>
        <source>How near</source>
        <translation>Wie nah</translation>
    </message>
    <message>
        <source>within %1 mm</source>
        <translation>in %1 mm</translation>
    </message>
    <message>
        <source>How deep</source>
        <translation>Wie tief</translation>
    </message>
    <message>
        <source>Of which nerve</source>
        <translation>Welcher Nerv</translation>
    </message>
    <message>
        <source>any nerve</source>
        <translation>jeder Nerv</translation>
    </message>
    <message>
        <source>%1 mm deep</source>
        <translation>%1 mm tief</translation>
    </message>
</context>
<context>
    <name>endplate::ui::StepPage</name>
    <message>
        <source>Words of this step</source>
        <translation>Worte dieses Schritts</translation>
    </message>
    <message>
        <source>A limb of average build, calibrated to published measurements. Vessels and tendons are not in the model.</source>
        <translation>Ein Arm von mittlerem Bau, an veröffentlichten Messungen geeicht. Gefäße und Sehnen sind nicht im Modell.</translation>
    </message>
    <message>
        <source>%1 LIMB  -  step %2 of %3</source>
        <translation>%1 EXTREMITÄT  -  Schritt %2 von %3</translation>
    </message>
    <message>
        <source>Sources: %1</source>
        <translation>Quellen: %1</translation>
    </message>
</context>
<context>
    <name>endplate::ui::StepFacts</name>
    <message>
        <source>its own zone: %1</source>
        <translation>eigene Zone: %1</translation>
    </message>
    <message>
        <source>: %1 % of limbs, %2 to %3 % by study</source>
        <translation>: %1 % der Arme, %2 bis %3 % je nach Studie</translation>
    </message>
    <message>
        <source>: %1 % of limbs</source>
        <translation>: %1 % der Arme</translation>
    </message>
    <message>
        <source>: how often is not published</source>
        <translation>: wie oft, ist nicht veröffentlicht</translation>
    </message>
</context>
<context>
    <name>endplate::ui::ScanDialog</name>
    <message>
        <source>Fit the limb to a scan</source>
        <translation>Die Extremität an einen Scan anpassen</translation>
    </message>
    <message>
        <source>&amp;Enter the ticked lengths into the case</source>
        <translation>Die angekreuzten Längen in den Fall &amp;eintragen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Choose...</source>
        <translation>Wählen...</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>Wählen: %1</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Unit of the surface</source>
        <translation>Einheit der Oberfläche</translation>
    </message>
    <message>
        <source>Landmarks</source>
        <translation>Landmarken</translation>
    </message>
    <message>
        <source>The arm alone, as PLY, OBJ or STL. The landmarks were picked on it: a CSV file that begins with landmark,x,y,z; four at least, better twelve, from the acromion to the hand and on all sides. The pose of the case should be that of the scan.</source>
        <translation>Nur der Arm, als PLY, OBJ oder STL. Die Landmarken wurden auf ihm gesetzt: eine CSV-Datei, die mit landmark,x,y,z beginnt; mindestens vier, besser zwölf, vom Akromion bis zur Hand und auf allen Seiten. Die Haltung im Fall sollte die des Scans sein.</translation>
    </message>
    <message>
        <source>&amp;Fit</source>
        <translation>&amp;Anpassen</translation>
    </message>
    <message>
        <source>Lengths on the scan</source>
        <translation>Längen auf dem Scan</translation>
    </message>
    <message>
        <source>The case takes lengths alone, as exact; the shape of the scan stays outside it.</source>
        <translation>Der Fall übernimmt nur Längen, als genaue; die Form des Scans bleibt außerhalb.</translation>
    </message>
    <message>
        <source>Landmarks, as picked and as fitted</source>
        <translation>Landmarken, wie gesetzt und wie angepasst</translation>
    </message>
    <message>
        <source>Open a scan</source>
        <translation>Einen Scan öffnen</translation>
    </message>
    <message>
        <source>Surfaces (*.ply *.obj *.stl);;All files (*)</source>
        <translation>Oberflächen (*.ply *.obj *.stl);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open landmarks</source>
        <translation>Landmarken öffnen</translation>
    </message>
    <message>
        <source>Landmarks (*.csv);;All files (*)</source>
        <translation>Landmarken (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>choose: no file says it</source>
        <translation>wählen: keine Datei nennt sie</translation>
    </message>
    <message>
        <source>%1: it is %2 mm across</source>
        <translation>%1: er misst %2 mm im Ganzen</translation>
    </message>
    <message>
        <source>, as an arm is</source>
        <translation>, wie ein Arm</translation>
    </message>
    <message>
        <source>Being fitted; this takes some seconds.</source>
        <translation>Wird angepasst; das dauert einige Sekunden.</translation>
    </message>
    <message>
        <source>Being read.</source>
        <translation>Wird gelesen.</translation>
    </message>
    <message>
        <source>The lengths are in the case; one undo takes them back.</source>
        <translation>Die Längen stehen im Fall; einmal Rückgängig nimmt sie zurück.</translation>
    </message>
    <message>
        <source>The limb of the case was changed since: fit again for its lengths.</source>
        <translation>Die Extremität des Falls wurde seither geändert: Passen Sie für ihre Längen neu an.</translation>
    </message>
    <message>
        <source>Choose a surface, or drop one on the window.</source>
        <translation>Wählen Sie eine Oberfläche, oder legen Sie eine auf dem Fenster ab.</translation>
    </message>
    <message>
        <source>Choose the file of the landmarks.</source>
        <translation>Wählen Sie die Datei der Landmarken.</translation>
    </message>
    <message>
        <source>Choose the unit in which the arm has its size.</source>
        <translation>Wählen Sie die Einheit, in der der Arm seine Größe hat.</translation>
    </message>
    <message>
        <source>Scan of the RIGHT limb</source>
        <translation>Scan der RECHTEN Extremität</translation>
    </message>
    <message>
        <source>Scan of the LEFT limb</source>
        <translation>Scan der LINKEN Extremität</translation>
    </message>
    <message>
        <source>%1 triangles, in %2. 95 in 100 places of the fitted skin lie within %3 mm of the scan (root mean square %4 mm); %5 % of the skin has a place on it.</source>
        <translation>%1 Dreiecke, in %2. 95 von 100 Stellen der angepassten Haut liegen höchstens %3 mm vom Scan (quadratisches Mittel %4 mm); %5 % der Haut haben eine Stelle auf ihm.</translation>
    </message>
    <message>
        <source>Warning: %1</source>
        <translation>Warnung: %1</translation>
    </message>
    <message>
        <source>Of the file: %1.</source>
        <translation>Zur Datei: %1.</translation>
    </message>
    <message>
        <source>too few</source>
        <translation>zu wenige</translation>
    </message>
    <message>
        <source>Landmark</source>
        <translation>Landmarke</translation>
    </message>
    <message>
        <source>Missed by, %1</source>
        <translation>Verfehlt um, %1</translation>
    </message>
    <message>
        <source>Had it not been picked, %1</source>
        <translation>Wäre sie nicht gesetzt, %1</translation>
    </message>
    <message>
        <source>%1: %2 mm, give or take %3 (expected %4, give or take %5)</source>
        <translation>%1: %2 mm, plus oder minus %3 (erwartet %4, plus oder minus %5)</translation>
    </message>
    <message>
        <source>%1. The case gives it already.</source>
        <translation>%1. Der Fall nennt sie schon.</translation>
    </message>
    <message>
        <source>%1. Not shown well by this scan; pick both its ends.</source>
        <translation>%1. Dieser Scan zeigt sie nicht gut; setzen Sie ihre beiden Enden.</translation>
    </message>
    <message>
        <source>lengths from a scan</source>
        <translation>Längen aus einem Scan</translation>
    </message>
</context>
<context>
    <name>endplate::ui::SourceTable</name>
    <message>
        <source>Rows behind this answer</source>
        <translation>Zeilen hinter dieser Antwort</translation>
    </message>
    <message>
        <source>Double click or Return: the row as it was published</source>
        <translation>Doppelklick oder Eingabetaste: die Zeile, wie sie veröffentlicht ist</translation>
    </message>
    <message>
        <source>the whole table</source>
        <translation>die ganze Tabelle</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>Known by</source>
        <translation>Bekannt durch</translation>
    </message>
</context>
<context>
    <name>endplate::ui::LandmarkFields</name>
    <message>
        <source>distance from the landmark</source>
        <translation>Abstand von der Landmarke</translation>
    </message>
    <message>
        <source>direction from the landmark</source>
        <translation>Richtung von der Landmarke</translation>
    </message>
    <message>
        <source>landmark</source>
        <translation>Landmarke</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>to</source>
        <translation>von</translation>
    </message>
    <message>
        <source>place not known</source>
        <translation>Ort nicht bekannt</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>%1 mm %2 to %3</source>
        <translation>%1 mm %2 von %3</translation>
    </message>
</context>
<context>
    <name>endplate::ui::MeasureFields</name>
    <message>
        <source>This limb</source>
        <translation>Diese Extremität</translation>
    </message>
    <message>
        <source>Other side</source>
        <translation>Andere Seite</translation>
    </message>
    <message>
        <source>%1, other side</source>
        <translation>%1, andere Seite</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Measure to add</source>
        <translation>Hinzuzufügendes Maß</translation>
    </message>
    <message>
        <source>a measure, such as upper arm length</source>
        <translation>ein Maß, etwa upper arm length</translation>
    </message>
</context>
<context>
    <name>endplate::ui::UltrasoundEditor</name>
    <message>
        <source>point found by ultrasound</source>
        <translation>mit Ultraschall gefundener Punkt</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>nerve not named</source>
        <translation>Nerv nicht genannt</translation>
    </message>
    <message>
        <source>point not named</source>
        <translation>Punkt nicht genannt</translation>
    </message>
    <message>
        <source>nerve seen by ultrasound</source>
        <translation>Nerv im Ultraschall</translation>
    </message>
    <message>
        <source>point of the nerve</source>
        <translation>Punkt des Nervs</translation>
    </message>
    <message>
        <source>error of the observer, SD</source>
        <translation>Fehler des Untersuchers, SD</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Standard deviation along the limb. Empty: taken from a published comparison with dissection, and listed as an assumption.</source>
        <translation>Standardabweichung längs der Extremität. Leer: aus einem veröffentlichten Vergleich mit der Präparation genommen und als Annahme aufgeführt.</translation>
    </message>
    <message>
        <source>Nerve or branch</source>
        <translation>Nerv oder Ast</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Error (SD)</source>
        <translation>Fehler (SD)</translation>
    </message>
</context>
<context>
    <name>endplate::ui::SkinMarkFields</name>
    <message>
        <source>distance across the limb</source>
        <translation>Abstand quer zur Extremität</translation>
    </message>
    <message>
        <source>direction across the limb</source>
        <translation>Richtung quer zur Extremität</translation>
    </message>
    <message>
        <source>side whose skin is meant</source>
        <translation>Seite, deren Haut gemeint ist</translation>
    </message>
    <message>
        <source>Not known: the skin nearest to the mark</source>
        <translation>Nicht bekannt: die der Marke nächste Haut</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Along the limb</source>
        <translation>Längs der Extremität</translation>
    </message>
    <message>
        <source>Across it</source>
        <translation>Quer dazu</translation>
    </message>
    <message>
        <source>On the skin</source>
        <translation>Auf der Haut</translation>
    </message>
    <message>
        <source>, %1 mm %2</source>
        <translation>, %1 mm %2</translation>
    </message>
    <message>
        <source>, on %1</source>
        <translation>, auf %1</translation>
    </message>
</context>
<context>
    <name>endplate::ui::IncisionEditor</name>
    <message>
        <source>incision</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>without a name</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <source>Judge this incision</source>
        <translation>Diesen Schnitt beurteilen</translation>
    </message>
    <message>
        <source>name of the incision</source>
        <translation>Name des Schnitts</translation>
    </message>
    <message>
        <source>such as posterior arm</source>
        <translation>etwa Oberarm dorsal</translation>
    </message>
    <message>
        <source>kind of cut</source>
        <translation>Art des Schnitts</translation>
    </message>
    <message>
        <source>Not known: a line</source>
        <translation>Nicht bekannt: eine Linie</translation>
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
        <source>Straight in from the skin; empty: to the first bone.</source>
        <translation>Gerade hinein von der Haut; leer: bis zum ersten Knochen.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Depth, mm</source>
        <translation>Tiefe, mm</translation>
    </message>
    <message>
        <source>Marks, in their order</source>
        <translation>Marken in ihrer Reihenfolge</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Aimed at (empty: straight in)</source>
        <translation>Gezielt auf (leer: gerade hinein)</translation>
    </message>
    <message>
        <source>%1, marks: %2</source>
        <translation>%1, Marken: %2</translation>
    </message>
</context>
<context>
    <name>endplate::ui::AreaFields</name>
    <message>
        <source>S grade of the area</source>
        <translation>S-Grad des Hautareals</translation>
    </message>
    <message>
        <source>S grade not known</source>
        <translation>S-Grad nicht bekannt</translation>
    </message>
    <message>
        <source>Two-point distance of the area, mm</source>
        <translation>Zweipunktabstand des Hautareals, mm</translation>
    </message>
    <message>
        <source>two points, mm</source>
        <translation>zwei Punkte, mm</translation>
    </message>
    <message>
        <source>Two-point distance in mm; empty: not examined</source>
        <translation>Zweipunktabstand in mm; leer: nicht untersucht</translation>
    </message>
    <message>
        <source>Also of the %1:</source>
        <translation>Dazu, %1:</translation>
    </message>
    <message>
        <source>Choose a skin area for its S grade and two-point distance.</source>
        <translation>Ein Hautareal wählen für S-Grad und Zweipunktabstand.</translation>
    </message>
    <message>
        <source>S grade of %1</source>
        <translation>S-Grad: %1</translation>
    </message>
    <message>
        <source>two-point distance of %1</source>
        <translation>Zweipunktabstand: %1</translation>
    </message>
</context>
<context>
    <name>endplate::ui::CorridorPage</name>
    <message>
        <source>anteriorly</source>
        <translation>nach anterior</translation>
    </message>
    <message>
        <source>posteriorly</source>
        <translation>nach posterior</translation>
    </message>
    <message>
        <source>laterally</source>
        <translation>nach lateral</translation>
    </message>
    <message>
        <source>medially</source>
        <translation>nach medial</translation>
    </message>
    <message>
        <source>Look for the line of least risk</source>
        <translation>Die Linie mit dem geringsten Risiko suchen</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>beside the cut by</source>
        <translation>neben dem Schnitt bis</translation>
    </message>
    <message>
        <source>How far beside the cut, mm</source>
        <translation>Wie weit neben dem Schnitt, mm</translation>
    </message>
    <message>
        <source>nerve within</source>
        <translation>Nerv innerhalb von</translation>
    </message>
    <message>
        <source>How near a nerve counts, mm</source>
        <translation>Wie nah ein Nerv zählt, mm</translation>
    </message>
    <message>
        <source>Line of least risk</source>
        <translation>Linie mit dem geringsten Risiko</translation>
    </message>
    <message>
        <source>A modelled nerve within %1 mm anywhere along the cut: %2.</source>
        <translation>Ein modellierter Nerv innerhalb von %1 mm irgendwo entlang des Schnitts: %2.</translation>
    </message>
    <message>
        <source>No line beside it has less.</source>
        <translation>Keine Linie daneben hat weniger.</translation>
    </message>
    <message>
        <source>On the line of least risk: %1. It leaves the cut by up to %2 %3 %4, %5 %3 along, and ends where the cut ends.</source>
        <translation>Auf der Linie mit dem geringsten Risiko: %1. Sie weicht bis zu %2 %3 %4 vom Schnitt ab, nach %5 %3 seiner Länge, und endet, wo er endet.</translation>
    </message>
    <message>
        <source>Nothing but a line over the skin has one.</source>
        <translation>Nur eine Linie über die Haut hat eine solche.</translation>
    </message>
    <message>
        <source>Length, scar, tension and what has to be reached are not weighed, nor what is not in the model. The least of many chances is a little too low.</source>
        <translation>Länge, Narbe, Spannung und was erreicht werden muss, sind nicht abgewogen, auch nicht, was nicht im Modell ist. Die kleinste von vielen Wahrscheinlichkeiten ist etwas zu niedrig.</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>on the cut</source>
        <translation>auf dem Schnitt</translation>
    </message>
    <message>
        <source>Along, %1</source>
        <translation>Entlang, %1</translation>
    </message>
    <message>
        <source>Beside the cut, %1</source>
        <translation>Neben dem Schnitt, %1</translation>
    </message>
    <message>
        <source>Nerve near</source>
        <translation>Nerv nah</translation>
    </message>
    <message>
        <source>Chance of a nerve near this place alone</source>
        <translation>Wahrscheinlichkeit eines nahen Nervs an dieser Stelle allein</translation>
    </message>
    <message>
        <source>Room left, %1</source>
        <translation>Platz links, %1</translation>
    </message>
    <message>
        <source>Room right, %1</source>
        <translation>Platz rechts, %1</translation>
    </message>
    <message>
        <source>As one looks along the cut: so far it may move before a nerve is near in more than one limb of twenty</source>
        <translation>In Richtung des Schnitts gesehen: so weit darf er rücken, bevor bei mehr als einer von zwanzig Extremitäten ein Nerv nah ist</translation>
    </message>
</context>
</TS>

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
        <translation>Es sei denn</translation>
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
        <source>as the program</source>
        <translation>wie das Programm</translation>
    </message>
    <message>
        <source>English</source>
        <translation>Englisch</translation>
    </message>
    <message>
        <source>Latin</source>
        <translation>Latein</translation>
    </message>
    <message>
        <source>right: panel on the right</source>
        <translation>rechts: Tafel rechts</translation>
    </message>
    <message>
        <source>left: panel on the left</source>
        <translation>links: Tafel links</translation>
    </message>
    <message>
        <source>&amp;Names of nerves</source>
        <translation>&amp;Namen der Nerven</translation>
    </message>
    <message>
        <source>Working &amp;hand</source>
        <translation>Arbeits&amp;hand</translation>
    </message>
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
        <source>to its right</source>
        <translation>nach rechts</translation>
    </message>
    <message>
        <source>to its left</source>
        <translation>nach links</translation>
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
<context>
    <name>joints</name>
    <message>
        <source>Shoulder abduction</source>
        <translation>Schulter: Abduktion</translation>
    </message>
    <message>
        <source>Shoulder flexion</source>
        <translation>Schulter: Flexion</translation>
    </message>
    <message>
        <source>Shoulder external rotation</source>
        <translation>Schulter: Außenrotation</translation>
    </message>
    <message>
        <source>Elbow flexion</source>
        <translation>Ellenbogen: Flexion</translation>
    </message>
    <message>
        <source>Forearm pronation</source>
        <translation>Unterarm: Pronation</translation>
    </message>
    <message>
        <source>Wrist extension</source>
        <translation>Handgelenk: Extension</translation>
    </message>
    <message>
        <source>Wrist ulnar deviation</source>
        <translation>Handgelenk: Ulnardeviation</translation>
    </message>
    <message>
        <source>Fingers flexion</source>
        <translation>Finger: Flexion</translation>
    </message>
    <message>
        <source>Thumb palmar abduction</source>
        <translation>Daumen: palmare Abduktion</translation>
    </message>
    <message>
        <source>Thumb MCP flexion</source>
        <translation>Daumen: Flexion im MCP</translation>
    </message>
    <message>
        <source>Thumb IP flexion</source>
        <translation>Daumen: Flexion im IP</translation>
    </message>
    <message>
        <source>Index MCP flexion</source>
        <translation>Zeigefinger: Flexion im MCP</translation>
    </message>
    <message>
        <source>Index PIP flexion</source>
        <translation>Zeigefinger: Flexion im PIP</translation>
    </message>
    <message>
        <source>Index DIP flexion</source>
        <translation>Zeigefinger: Flexion im DIP</translation>
    </message>
    <message>
        <source>Middle MCP flexion</source>
        <translation>Mittelfinger: Flexion im MCP</translation>
    </message>
    <message>
        <source>Middle PIP flexion</source>
        <translation>Mittelfinger: Flexion im PIP</translation>
    </message>
    <message>
        <source>Middle DIP flexion</source>
        <translation>Mittelfinger: Flexion im DIP</translation>
    </message>
    <message>
        <source>Ring MCP flexion</source>
        <translation>Ringfinger: Flexion im MCP</translation>
    </message>
    <message>
        <source>Ring PIP flexion</source>
        <translation>Ringfinger: Flexion im PIP</translation>
    </message>
    <message>
        <source>Ring DIP flexion</source>
        <translation>Ringfinger: Flexion im DIP</translation>
    </message>
    <message>
        <source>Little MCP flexion</source>
        <translation>Kleinfinger: Flexion im MCP</translation>
    </message>
    <message>
        <source>Little PIP flexion</source>
        <translation>Kleinfinger: Flexion im PIP</translation>
    </message>
    <message>
        <source>Little DIP flexion</source>
        <translation>Kleinfinger: Flexion im DIP</translation>
    </message>
</context>
<context>
    <name>terms</name>
    <message>
        <source>english terms</source>
        <translation>latin terms</translation>
    </message>
    <message>
        <source>nervus</source>
        <translation>N.</translation>
    </message>
    <message>
        <source>nervi</source>
        <translation>n.</translation>
    </message>
    <message>
        <source>ramus</source>
        <translation>R.</translation>
    </message>
    <message>
        <source>fasciculus</source>
        <translation>Fasciculus</translation>
    </message>
    <message>
        <source>truncus</source>
        <translation>Truncus</translation>
    </message>
</context>
<context>
    <name>models</name>
    <message>
        <source>Now: take every dressing and cast off down to skin, measure or open the compartments; fasciotomy when in doubt</source>
        <translation>Jetzt: alle Verbände und Gipse bis auf die Haut entfernen, Kompartmentdruck messen oder Kompartimente öffnen; im Zweifel Fasziotomie</translation>
    </message>
    <message>
        <source>Now: reduce and splint, then vascular surgery at once if the pulse stays away; see the nerve in the same operation</source>
        <translation>Jetzt: reponieren und schienen, bei fehlendem Puls danach sofort Gefäßchirurgie; den Nerv in derselben Operation darstellen</translation>
    </message>
    <message>
        <source>Now: vascular imaging or exploration at once; decompress and see the nerve in the same operation</source>
        <translation>Jetzt: sofort Gefäßdarstellung oder Exploration; den Nerv in derselben Operation dekomprimieren und darstellen</translation>
    </message>
    <message>
        <source>Now: find what presses the nerve (haematoma, fragment, cast, spine) and relieve it today; examine hourly until then</source>
        <translation>Jetzt: suchen, was den Nerv drückt (Hämatom, Fragment, Gips, Wirbelsäule), und heute entlasten; bis dahin stündlich untersuchen</translation>
    </message>
    <message>
        <source>Today: release dressings, position and cast, read the operation or block note, image for haematoma and metal; re-explore today if something presses or passes through the nerve, or if the nerve was not seen and was at risk</source>
        <translation>Heute: Verbände, Lagerung und Gips lösen, Operationsbericht oder Protokoll der Blockade lesen, Bildgebung auf Hämatom und Metall; heute re-explorieren, wenn etwas auf den Nerv drückt oder durch ihn geht oder wenn der Nerv nicht dargestellt wurde und gefährdet war</translation>
    </message>
    <message>
        <source>Refer to a birth palsy clinic now; grade every movement at 1, 3 and 6 months of age; surgery is decided on elbow flexion at 3 months and on the hand</source>
        <translation>Jetzt in eine Sprechstunde für geburtstraumatische Plexusparesen überweisen; jede Bewegung mit 1, 3 und 6 Monaten einstufen; über die Operation entscheiden die Ellenbogenbeugung mit 3 Monaten und die Hand</translation>
    </message>
    <message>
        <source>Test by stimulation which muscles below the level still answer (upper motor neurone) and which are silent (lower); refer early to an upper-limb tetraplegia team</source>
        <translation>Durch Stimulation prüfen, welche Muskeln unterhalb des Niveaus noch antworten (erstes Motoneuron) und welche stumm sind (zweites); früh an ein Team für Tetraplegie der oberen Extremität überweisen</translation>
    </message>
    <message>
        <source>Watch: neuralgic amyotrophy and spontaneous anterior interosseous palsy are not explored at first; pain control, EMG at 4 weeks, image for a mass and for constrictions</source>
        <translation>Beobachten: neuralgische Amyotrophie und spontane Interosseus-anterior-Parese werden zunächst nicht exploriert; Schmerztherapie, EMG nach 4 Wochen, Bildgebung auf Raumforderung und Einschnürungen</translation>
    </message>
    <message>
        <source>End of waiting: this is no conduction block alone. Nerve conduction and EMG now, then decompress and see the nerve</source>
        <translation>Ende des Abwartens: das ist kein reiner Leitungsblock. Jetzt Neurographie und EMG, dann dekomprimieren und den Nerv darstellen</translation>
    </message>
    <message>
        <source>Go on watching: examine every 6 to 8 weeks, EMG of what is still silent</source>
        <translation>Weiter beobachten: alle 6 bis 8 Wochen untersuchen, EMG der noch stummen Muskeln</translation>
    </message>
    <message>
        <source>Examine and EMG again now, and image the nerve for constrictions (ultrasound or MR neurography): where neither movement nor units show by 3 to 6 months, discuss exploration</source>
        <translation>Jetzt erneut untersuchen und EMG, Bildgebung des Nervs auf Einschnürungen (Ultraschall oder MR-Neurographie): wo sich nach 3 bis 6 Monaten weder Bewegung noch motorische Einheiten zeigen, die Exploration besprechen</translation>
    </message>
    <message>
        <source>Take the pressure away, splint, and watch: a conduction block returns as a whole</source>
        <translation>Druck wegnehmen, schienen und beobachten: ein Leitungsblock kehrt als Ganzes zurück</translation>
    </message>
    <message>
        <source>End of waiting: what is not back at 12 weeks was no conduction block, or something still presses. EMG and conduction now, image the nerve, then decompress or explore</source>
        <translation>Ende des Abwartens: was nach 12 Wochen nicht zurück ist, war kein Leitungsblock, oder es drückt noch etwas. Jetzt EMG und Neurographie, Bildgebung des Nervs, dann dekomprimieren oder explorieren</translation>
    </message>
    <message>
        <source>Find and treat the cause of the pressure; nerve conduction at 3 to 4 weeks tells block from axon loss; decompress if weakness or wasting is established</source>
        <translation>Ursache des Drucks suchen und behandeln; die Neurographie nach 3 bis 4 Wochen trennt Block von Axonverlust; dekomprimieren, wenn Schwäche oder Atrophie ausgeprägt ist</translation>
    </message>
    <message>
        <source>Watch with pain control; EMG and ultrasound at 3 to 4 weeks; explore for severe pain or no recovery</source>
        <translation>Unter Schmerztherapie beobachten; EMG und Ultraschall nach 3 bis 4 Wochen; explorieren bei starkem Schmerz oder wenn keine Erholung kommt</translation>
    </message>
    <message>
        <source>Go on watching the order of return; examine every 4 to 6 weeks</source>
        <translation>Die Reihenfolge der Rückkehr weiter beobachten; alle 4 bis 6 Wochen untersuchen</translation>
    </message>
    <message>
        <source>End of waiting: explore with nerve action potentials, then neurolysis, or resection and graft</source>
        <translation>Ende des Abwartens: explorieren mit Nervenaktionspotenzialen, dann Neurolyse oder Resektion und Transplantat</translation>
    </message>
    <message>
        <source>Refer to a plexus unit now: the root is torn from the cord, nothing grows from it; nerve transfers are planned once MRI or myelography and EMG confirm it</source>
        <translation>Jetzt an ein Plexuszentrum überweisen: die Wurzel ist aus dem Rückenmark ausgerissen, aus ihr wächst nichts; Nerventransfers werden geplant, sobald MRT oder Myelographie und EMG es bestätigen</translation>
    </message>
    <message>
        <source>End of waiting: nothing advances and a second nerve repair would come too late for most muscles. Discuss tendon transfer, free muscle or fusion; nerve work for skin and pain only</source>
        <translation>Ende des Abwartens: nichts schreitet voran, und eine zweite Nervenrekonstruktion käme für die meisten Muskeln zu spät. Sehnentransfer, freien Muskel oder Arthrodese besprechen; Nervenchirurgie nur noch für Haut und Schmerz</translation>
    </message>
    <message>
        <source>End of waiting: ultrasound and EMG now, then re-explore the repair or go to nerve transfers</source>
        <translation>Ende des Abwartens: jetzt Ultraschall und EMG, dann die Naht re-explorieren oder zu Nerventransfers übergehen</translation>
    </message>
    <message>
        <source>End of waiting set: a second observer taps the nerve and ultrasound shows the suture lines now; list for re-exploration or nerve transfer unless the sign has moved by the next visit</source>
        <translation>Ende des Abwartens festgelegt: jetzt beklopft ein zweiter Untersucher den Nerv, und der Ultraschall zeigt die Nahtstellen; zur Re-Exploration oder zum Nerventransfer anmelden, außer das Zeichen ist bis zur nächsten Kontrolle gewandert</translation>
    </message>
    <message>
        <source>EMG of the first muscle now: axons advance, but slowly. Plan nerve or tendon transfer now for what they will reach too late (chances below); explore if the first muscle shows no units when due</source>
        <translation>Jetzt EMG des ersten Muskels: die Axone schreiten voran, aber langsam. Nerven- oder Sehnentransfer jetzt planen für das, was sie zu spät erreichen (Chancen unten); explorieren, wenn der erste Muskel zum erwarteten Zeitpunkt keine Einheiten zeigt</translation>
    </message>
    <message>
        <source>End of waiting for the first muscle: EMG now; without units re-explore or go to nerve or tendon transfers</source>
        <translation>Ende des Abwartens für den ersten Muskel: jetzt EMG; ohne Einheiten re-explorieren oder zu Nerven- oder Sehnentransfers übergehen</translation>
    </message>
    <message>
        <source>Do not wait longer: EMG now; without units re-explore the graft, or go to nerve or tendon transfers</source>
        <translation>Nicht länger warten: jetzt EMG; ohne Einheiten das Transplantat re-explorieren oder zu Nerven- oder Sehnentransfers übergehen</translation>
    </message>
    <message>
        <source>Do not wait longer: EMG now; without units re-explore the suture, or go to nerve or tendon transfers</source>
        <translation>Nicht länger warten: jetzt EMG; ohne Einheiten die Naht re-explorieren oder zu Nerven- oder Sehnentransfers übergehen</translation>
    </message>
    <message>
        <source>Protect, then examine monthly: Tinel, the next muscle in order; EMG when the first muscle is due</source>
        <translation>Schützen, dann monatlich untersuchen: Tinel, der nächste Muskel der Reihe; EMG, wenn der erste Muskel fällig ist</translation>
    </message>
    <message>
        <source>Nerve reconstruction is unlikely to give a useful muscle now: discuss tendon transfer, free muscle or fusion; nerve work for skin and pain only</source>
        <translation>Eine Nervenrekonstruktion bringt jetzt wahrscheinlich keinen brauchbaren Muskel mehr: Sehnentransfer, freien Muskel oder Arthrodese besprechen; Nervenchirurgie nur noch für Haut und Schmerz</translation>
    </message>
    <message>
        <source>Explore and repair now: the nerve is known to be divided</source>
        <translation>Jetzt explorieren und rekonstruieren: der Nerv ist bekanntermaßen durchtrennt</translation>
    </message>
    <message>
        <source>Explore and reconstruct: this grade does not recover by itself; at about 3 weeks when the zone of injury has shown itself, at once if it has</source>
        <translation>Explorieren und rekonstruieren: dieser Grad erholt sich nicht von selbst; nach etwa 3 Wochen, wenn sich die Verletzungszone gezeigt hat, sofort, wenn sie es schon hat</translation>
    </message>
    <message>
        <source>Explore the wound and repair the nerve, tendons and vessels</source>
        <translation>Die Wunde explorieren und Nerv, Sehnen und Gefäße versorgen</translation>
    </message>
    <message>
        <source>Explore now: a cut nerve does not wait; expect to trim and graft</source>
        <translation>Jetzt explorieren: ein durchtrennter Nerv wartet nicht; mit Anfrischen und Transplantat rechnen</translation>
    </message>
    <message>
        <source>Watch the order of return and explore what stays behind: some axons pass the wound</source>
        <translation>Die Reihenfolge der Rückkehr beobachten und explorieren, was zurückbleibt: einige Axone passieren die Wunde</translation>
    </message>
    <message>
        <source>Explore the wound: a partial deficit below a cut is a partial division until seen</source>
        <translation>Die Wunde explorieren: ein Teilausfall unterhalb eines Schnitts ist eine Teildurchtrennung, bis man den Nerv gesehen hat</translation>
    </message>
    <message>
        <source>A partial deficit that stands still after 3 months: EMG, and discuss exploration of the part that is dead</source>
        <translation>Ein Teilausfall, der nach 3 Monaten stillsteht: EMG und die Exploration des ausgefallenen Anteils besprechen</translation>
    </message>
    <message>
        <source>End of waiting: explore with nerve action potentials, then neurolysis, suture, graft or transfer</source>
        <translation>Ende des Abwartens: explorieren mit Nervenaktionspotenzialen, dann Neurolyse, Naht, Transplantat oder Transfer</translation>
    </message>
    <message>
        <source>Nerve seen and whole: watch as a closed injury, EMG at 3 to 4 weeks, end of waiting 3 months</source>
        <translation>Nerv dargestellt und erhalten: wie eine geschlossene Verletzung beobachten, EMG nach 3 bis 4 Wochen, Ende des Abwartens nach 3 Monaten</translation>
    </message>
    <message>
        <source>Explore with the wound excision: see the nerve, bridge or tag the ends, record the gap; reconstruct when the zone has declared itself</source>
        <translation>Mit der Wundexzision explorieren: den Nerv darstellen, die Enden überbrücken oder markieren, den Defekt dokumentieren; rekonstruieren, wenn sich die Zone abgegrenzt hat</translation>
    </message>
    <message>
        <source>Explore now: the nerve was not seen and the wound was open</source>
        <translation>Jetzt explorieren: der Nerv wurde nicht dargestellt, und die Wunde war offen</translation>
    </message>
    <message>
        <source>Watch: examine every 4 weeks, EMG at 3 to 4 weeks; end of waiting 3 months</source>
        <translation>Beobachten: alle 4 Wochen untersuchen, EMG nach 3 bis 4 Wochen; Ende des Abwartens nach 3 Monaten</translation>
    </message>
    <message>
        <source>End of waiting set: EMG now and list for exploration; explore with nerve action potentials, then neurolysis, suture, graft or transfer unless something moves</source>
        <translation>Ende des Abwartens festgelegt: jetzt EMG und zur Exploration anmelden; explorieren mit Nervenaktionspotenzialen, dann Neurolyse, Naht, Transplantat oder Transfer, außer es bewegt sich etwas</translation>
    </message>
    <message>
        <source>End of waiting: explore</source>
        <translation>Ende des Abwartens: explorieren</translation>
    </message>
    <message>
        <source>End of waiting: explore with nerve action potentials (or transfer), now that about three months have passed without a sign</source>
        <translation>Ende des Abwartens: explorieren mit Nervenaktionspotenzialen (oder Transfer), nachdem etwa drei Monate ohne Zeichen vergangen sind</translation>
    </message>
    <message>
        <source>End of waiting: explore with nerve action potentials, whatever the first operation saw</source>
        <translation>Ende des Abwartens: explorieren mit Nervenaktionspotenzialen, was auch immer die erste Operation gezeigt hat</translation>
    </message>
    <message>
        <source>End of waiting: explore with nerve action potentials, then neurolysis, suture or graft of the part that is dead</source>
        <translation>Ende des Abwartens: explorieren mit Nervenaktionspotenzialen, dann Neurolyse, Naht oder Transplantat des ausgefallenen Anteils</translation>
    </message>
    <message>
        <source>Watch unless vessels, bone or wound call for an operation, and then see the nerve; EMG at 3 to 4 weeks, examine every 4 weeks, end of waiting 3 months</source>
        <translation>Beobachten, außer Gefäße, Knochen oder Wunde erfordern eine Operation, dann den Nerv darstellen; EMG nach 3 bis 4 Wochen, alle 4 Wochen untersuchen, Ende des Abwartens nach 3 Monaten</translation>
    </message>
    <message>
        <source>End of waiting: explore with nerve action potentials, then neurolysis, suture or graft</source>
        <translation>Ende des Abwartens: explorieren mit Nervenaktionspotenzialen, dann Neurolyse, Naht oder Transplantat</translation>
    </message>
    <message>
        <source>Re-explore early, by a surgeon who repairs nerves: the nerve was not seen and may be cut, tied or under the plate</source>
        <translation>Früh re-explorieren, durch jemanden, der Nerven rekonstruiert: der Nerv wurde nicht dargestellt und kann durchtrennt, ligiert oder unter der Platte sein</translation>
    </message>
    <message>
        <source>End of waiting: re-explore, by a surgeon who repairs nerves; explore with nerve action potentials, then neurolysis, suture, graft or transfer</source>
        <translation>Ende des Abwartens: re-explorieren, durch jemanden, der Nerven rekonstruiert; explorieren mit Nervenaktionspotenzialen, dann Neurolyse, Naht, Transplantat oder Transfer</translation>
    </message>
    <message>
        <source>Ultrasound now, EMG at 3 to 4 weeks, examine every 4 weeks; re-explore at 3 months or when it stops improving</source>
        <translation>Jetzt Ultraschall, EMG nach 3 bis 4 Wochen, alle 4 Wochen untersuchen; re-explorieren nach 3 Monaten oder wenn die Besserung aufhört</translation>
    </message>
    <message>
        <source>Nerve seen whole at the end of the operation: watch, EMG at 3 to 4 weeks, end of waiting 3 months</source>
        <translation>Nerv am Ende der Operation erhalten gesehen: beobachten, EMG nach 3 bis 4 Wochen, Ende des Abwartens nach 3 Monaten</translation>
    </message>
    <message>
        <source>Watch: a conduction block returns as a whole, not in order; end of waiting 12 weeks</source>
        <translation>Beobachten: ein Leitungsblock kehrt als Ganzes zurück, nicht der Reihe nach; Ende des Abwartens nach 12 Wochen</translation>
    </message>
    <message>
        <source>Go on watching, with an end: axons advance at the usual pace and no muscle has answered yet. EMG of the first muscle when it is due (dates below), examine every 4 weeks</source>
        <translation>Weiter beobachten, mit einem Ende: die Axone schreiten im üblichen Tempo voran, und noch hat kein Muskel geantwortet. EMG des ersten Muskels, wenn er fällig ist (Termine unten), alle 4 Wochen untersuchen</translation>
    </message>
    <message>
        <source>Watch with dates: reduce and fix as the bone needs, splint, EMG at 3 to 4 weeks, examine every 4 weeks; end of waiting about 3 months</source>
        <translation>Mit Terminen beobachten: reponieren und fixieren, wie der Knochen es braucht, schienen, EMG nach 3 bis 4 Wochen, alle 4 Wochen untersuchen; Ende des Abwartens nach etwa 3 Monaten</translation>
    </message>
    <message>
        <source>Watch with dates: splint, EMG at 3 to 4 weeks, examine every 4 weeks; end of waiting about 3 months</source>
        <translation>Mit Terminen beobachten: schienen, EMG nach 3 bis 4 Wochen, alle 4 Wochen untersuchen; Ende des Abwartens nach etwa 3 Monaten</translation>
    </message>
    <message>
        <source>Refer to a plexus unit now; EMG, and MRI or myelography for torn roots, at 3 to 4 weeks; examine every 4 weeks; reconstruct by about 3 months what shows no sign</source>
        <translation>Jetzt an ein Plexuszentrum überweisen; EMG und MRT oder Myelographie auf ausgerissene Wurzeln nach 3 bis 4 Wochen; alle 4 Wochen untersuchen; bis etwa 3 Monate rekonstruieren, was kein Zeichen zeigt</translation>
    </message>
    <message>
        <source>Explore and reconstruct now (graft what is torn outside the spine, transfer what is torn from it)</source>
        <translation>Jetzt explorieren und rekonstruieren (Transplantat für das, was außerhalb der Wirbelsäule gerissen ist, Transfer für das, was aus ihr ausgerissen ist)</translation>
    </message>
    <message>
        <source>Find the cause first: ask for wound, fall, operation, injection, pressure and pain; until then treat as a closed injury with dates</source>
        <translation>Zuerst die Ursache suchen: nach Wunde, Sturz, Operation, Injektion, Druck und Schmerz fragen; bis dahin wie eine geschlossene Verletzung mit Terminen behandeln</translation>
    </message>
    <message>
        <source>Follow up what was done: examine every 4 to 6 weeks in the order below, EMG when the first muscle is due</source>
        <translation>Nachkontrolle dessen, was operiert wurde: alle 4 bis 6 Wochen in der Reihenfolge unten untersuchen, EMG, wenn der erste Muskel fällig ist</translation>
    </message>
    <message>
        <source>Examine now, EMG, and decide at this visit: the usual end of waiting (3 months) has passed or no rule fits better</source>
        <translation>Jetzt untersuchen, EMG, und bei dieser Kontrolle entscheiden: das übliche Ende des Abwartens (3 Monate) ist vorbei, oder keine Regel passt besser</translation>
    </message>
    <message>
        <source>Refer for exploration if the deficit disturbs or pain is growing; ultrasound first</source>
        <translation>Zur Exploration überweisen, wenn der Ausfall stört oder der Schmerz zunimmt; zuerst Ultraschall</translation>
    </message>
    <message>
        <source>Neurolysis only, then wait with dates</source>
        <translation>Nur Neurolyse, dann mit Terminen abwarten</translation>
    </message>
    <message>
        <source>Resect to healthy fascicles, then repair, graft or transfer</source>
        <translation>Bis zu gesunden Faszikeln resezieren, dann Naht, Transplantat oder Transfer</translation>
    </message>
    <message>
        <source>another cause of the pain and the tension is proven at once</source>
        <translation>eine andere Ursache von Schmerz und Spannung wird sofort nachgewiesen</translation>
    </message>
    <message>
        <source>pulse and perfusion return with reduction and stay</source>
        <translation>Puls und Durchblutung kehren mit der Reposition zurück und bleiben</translation>
    </message>
    <message>
        <source>imaging shows no bleeding and the deficit does not grow</source>
        <translation>die Bildgebung zeigt keine Blutung, und der Ausfall nimmt nicht zu</translation>
    </message>
    <message>
        <source>it is improving</source>
        <translation>es bessert sich</translation>
    </message>
    <message>
        <source>a local block still explains it (examine again when it should have worn off, at most 24 hours)</source>
        <translation>eine örtliche Blockade erklärt es noch (erneut untersuchen, wenn sie abgeklungen sein sollte, höchstens 24 Stunden)</translation>
    </message>
    <message>
        <source>elbow flexion against gravity returns before 2 months of age</source>
        <translation>die Ellenbogenbeugung gegen die Schwerkraft kehrt vor dem Alter von 2 Monaten zurück</translation>
    </message>
    <message>
        <source>the examination still changes from month to month</source>
        <translation>der Befund ändert sich noch von Monat zu Monat</translation>
    </message>
    <message>
        <source>a mass, a growing deficit, or no sign of recovery on EMG</source>
        <translation>eine Raumforderung, ein zunehmender Ausfall oder kein Zeichen der Erholung im EMG</translation>
    </message>
    <message>
        <source>a muscle stays silent on EMG while its neighbours return</source>
        <translation>ein Muskel bleibt im EMG stumm, während seine Nachbarn zurückkehren</translation>
    </message>
    <message>
        <source>units are found in the silent muscles</source>
        <translation>in den stummen Muskeln finden sich Einheiten</translation>
    </message>
    <message>
        <source>fibrillation on EMG at 4 weeks, or nothing back at 12 weeks</source>
        <translation>Fibrillation im EMG nach 4 Wochen oder nach 12 Wochen nichts zurück</translation>
    </message>
    <message>
        <source>a first movement or units are found at this visit</source>
        <translation>bei dieser Kontrolle findet sich eine erste Bewegung oder finden sich Einheiten</translation>
    </message>
    <message>
        <source>an acute pressure palsy that is already recovering</source>
        <translation>eine akute Druckparese, die sich schon erholt</translation>
    </message>
    <message>
        <source>high-pressure injection or a toxic agent under pressure: washed out the same day</source>
        <translation>Hochdruckinjektion oder toxische Substanz unter Druck: am selben Tag ausspülen</translation>
    </message>
    <message>
        <source>pain grows, or the next muscle does not come</source>
        <translation>der Schmerz nimmt zu, oder der nächste Muskel kommt nicht</translation>
    </message>
    <message>
        <source>recovery in order</source>
        <translation>Erholung der Reihe nach</translation>
    </message>
    <message>
        <source>imaging and the examination show that the root is whole</source>
        <translation>Bildgebung und Befund zeigen, dass die Wurzel erhalten ist</translation>
    </message>
    <message>
        <source>the first muscle answers</source>
        <translation>der erste Muskel antwortet</translation>
    </message>
    <message>
        <source>the next visit finds the Tinel sign further down, or EMG shows units in the first muscle</source>
        <translation>die nächste Kontrolle findet das Tinel-Zeichen weiter distal, oder das EMG zeigt Einheiten im ersten Muskel</translation>
    </message>
    <message>
        <source>EMG shows units in the first muscle, or a second observer finds the Tinel sign further down</source>
        <translation>das EMG zeigt Einheiten im ersten Muskel, oder ein zweiter Untersucher findet das Tinel-Zeichen weiter distal</translation>
    </message>
    <message>
        <source>the first muscle still lies beyond the reach of the axons by the dates below</source>
        <translation>der erste Muskel liegt nach den Terminen unten noch außer Reichweite der Axone</translation>
    </message>
    <message>
        <source>EMG this week shows units in the first muscle</source>
        <translation>das EMG dieser Woche zeigt Einheiten im ersten Muskel</translation>
    </message>
    <message>
        <source>EMG shows units in the first muscle, or that muscle lies so far that its time below is still to come</source>
        <translation>das EMG zeigt Einheiten im ersten Muskel, oder dieser liegt so weit entfernt, dass seine Zeit unten noch kommt</translation>
    </message>
    <message>
        <source>no advance of Tinel at two visits running, or pain at the suture line</source>
        <translation>kein Vorrücken des Tinel-Zeichens bei zwei Kontrollen in Folge oder Schmerz an der Naht</translation>
    </message>
    <message>
        <source>the next muscle is late by two months, or Tinel stands still at two visits</source>
        <translation>der nächste Muskel ist zwei Monate überfällig, oder das Tinel-Zeichen steht bei zwei Kontrollen still</translation>
    </message>
    <message>
        <source>muscles that still answer to stimulation or show fibrillation in short-denervated parts</source>
        <translation>Muskeln, die noch auf Stimulation antworten oder in kurz denervierten Anteilen fibrillieren</translation>
    </message>
    <message>
        <source>the patient or the wound is not fit: then tag the ends and return within 3 weeks</source>
        <translation>Patient oder Wunde sind nicht operationsfähig: dann die Enden markieren und innerhalb von 3 Wochen zurückkehren</translation>
    </message>
    <message>
        <source>nerve action potential across the lesion at operation: then neurolysis only</source>
        <translation>Nervenaktionspotenzial über die Läsion bei der Operation: dann nur Neurolyse</translation>
    </message>
    <message>
        <source>clear recovery in order below the wound</source>
        <translation>klare Erholung der Reihe nach unterhalb der Wunde</translation>
    </message>
    <message>
        <source>a muscle that is due does not come</source>
        <translation>ein fälliger Muskel kommt nicht</translation>
    </message>
    <message>
        <source>the rest is recovering month by month</source>
        <translation>der Rest erholt sich Monat für Monat</translation>
    </message>
    <message>
        <source>no sign by 3 months</source>
        <translation>kein Zeichen nach 3 Monaten</translation>
    </message>
    <message>
        <source>a second observer finds the Tinel sign further down, or units or movement show before the date</source>
        <translation>ein zweiter Untersucher findet das Tinel-Zeichen weiter distal, oder Einheiten oder Bewegung zeigen sich vor dem Termin</translation>
    </message>
    <message>
        <source>EMG this week shows units in the first muscle, or a second observer finds the Tinel sign further down</source>
        <translation>das EMG dieser Woche zeigt Einheiten im ersten Muskel, oder ein zweiter Untersucher findet das Tinel-Zeichen weiter distal</translation>
    </message>
    <message>
        <source>operation for another reason (see the nerve then), high-energy wound with tissue loss, growing pain, or ends seen apart</source>
        <translation>Operation aus anderem Grund (dann den Nerv darstellen), Hochenergiewunde mit Gewebeverlust, zunehmender Schmerz oder getrennt gesehene Enden</translation>
    </message>
    <message>
        <source>the deficit is partial and shrinking</source>
        <translation>der Ausfall ist unvollständig und nimmt ab</translation>
    </message>
    <message>
        <source>the deficit grows, or ultrasound shows a gap or metal on the nerve</source>
        <translation>der Ausfall nimmt zu, oder der Ultraschall zeigt eine Lücke oder Metall am Nerv</translation>
    </message>
    <message>
        <source>the note does not say that it was seen along its whole way through the field</source>
        <translation>der Bericht sagt nicht, dass der Nerv auf seinem ganzen Weg durch das Operationsfeld gesehen wurde</translation>
    </message>
    <message>
        <source>the Tinel sign stands still at two visits, or the first muscle shows no units two months after it was due: then explore</source>
        <translation>das Tinel-Zeichen steht bei zwei Kontrollen still, oder der erste Muskel zeigt zwei Monate nach dem erwarteten Zeitpunkt keine Einheiten: dann explorieren</translation>
    </message>
    <message>
        <source>the palsy came with reduction or fixation, the fracture is open, a vessel needs repair, or the nerve is to be seen at fixation</source>
        <translation>die Parese kam mit Reposition oder Osteosynthese, die Fraktur ist offen, ein Gefäß muss versorgt werden, oder der Nerv wird bei der Osteosynthese dargestellt</translation>
    </message>
    <message>
        <source>a gap on ultrasound, a vessel that needs repair, or a high-energy pull with a whole limb dead</source>
        <translation>eine Lücke im Ultraschall, ein Gefäß, das versorgt werden muss, oder ein Hochenergiezug mit Ausfall des ganzen Arms</translation>
    </message>
    <message>
        <source>clear recovery from month to month</source>
        <translation>klare Erholung von Monat zu Monat</translation>
    </message>
    <message>
        <source>a wound lies over the nerve: then explore</source>
        <translation>über dem Nerv liegt eine Wunde: dann explorieren</translation>
    </message>
    <message>
        <source>the first muscle that is due does not come</source>
        <translation>der erste fällige Muskel kommt nicht</translation>
    </message>
    <message>
        <source>birth palsy clinic and dated examinations</source>
        <translation>Sprechstunde für geburtstraumatische Plexusparesen und terminierte Untersuchungen</translation>
    </message>
    <message>
        <source>as soon as a list can be had</source>
        <translation>sobald ein Operationstermin zu haben ist</translation>
    </message>
    <message>
        <source>3 months</source>
        <translation>3 Monate</translation>
    </message>
    <message>
        <source>3 to 6 months</source>
        <translation>3 bis 6 Monate</translation>
    </message>
    <message>
        <source>3 months without a sign</source>
        <translation>3 Monate ohne Zeichen</translation>
    </message>
    <message>
        <source>3 months, up to 6 when the first target lies far from the lesion</source>
        <translation>3 Monate, bis zu 6, wenn das erste Zielorgan weit von der Läsion liegt</translation>
    </message>
    <message>
        <source>nerve transfer to silent muscles within 6 months, others later; tendon transfer when stable</source>
        <translation>Nerventransfer auf stumme Muskeln innerhalb von 6 Monaten, auf andere später; Sehnentransfer, wenn der Befund stabil ist</translation>
    </message>
    <message>
        <source>exploration is discussed when neither clinical nor EMG recovery shows by 3 to 6 months; opinions differ</source>
        <translation>die Exploration wird besprochen, wenn sich nach 3 bis 6 Monaten weder klinisch noch im EMG eine Erholung zeigt; die Meinungen gehen auseinander</translation>
    </message>
    <message>
        <source>end to waiting 12 weeks</source>
        <translation>Ende des Abwartens nach 12 Wochen</translation>
    </message>
    <message>
        <source>exploration is discussed only for what stays silent by 3 to 6 months; opinions differ</source>
        <translation>die Exploration wird nur für das besprochen, was nach 3 bis 6 Monaten stumm bleibt; die Meinungen gehen auseinander</translation>
    </message>
    <message>
        <source>nerve conduction at 3 to 4 weeks; end to waiting 12 weeks</source>
        <translation>Neurographie nach 3 bis 4 Wochen; Ende des Abwartens nach 12 Wochen</translation>
    </message>
    <message>
        <source>established wasting or constant numbness: decompress without waiting</source>
        <translation>ausgeprägte Atrophie oder ständige Taubheit: ohne Abwarten dekomprimieren</translation>
    </message>
    <message>
        <source>neurolysis or repair is considered at 3 months without recovery</source>
        <translation>Neurolyse oder Rekonstruktion wird nach 3 Monaten ohne Erholung erwogen</translation>
    </message>
    <message>
        <source>explore only what stays behind</source>
        <translation>nur explorieren, was zurückbleibt</translation>
    </message>
    <message>
        <source>explore only what stays behind or hurts</source>
        <translation>nur explorieren, was zurückbleibt oder schmerzt</translation>
    </message>
    <message>
        <source>explore at 3 months without recovery</source>
        <translation>nach 3 Monaten ohne Erholung explorieren</translation>
    </message>
    <message>
        <source>reconstruct at 3 months, seldom after 6</source>
        <translation>nach 3 Monaten rekonstruieren, selten nach 6</translation>
    </message>
    <message>
        <source>reconstruct within 3 months, seldom after 6</source>
        <translation>innerhalb von 3 Monaten rekonstruieren, selten nach 6</translation>
    </message>
    <message>
        <source>tendon transfers after about 18 months; earlier when the distance is long</source>
        <translation>Sehnentransfers nach etwa 18 Monaten; früher, wenn der Weg lang ist</translation>
    </message>
    <message>
        <source>re-explore when Tinel stands still at two visits</source>
        <translation>re-explorieren, wenn das Tinel-Zeichen bei zwei Kontrollen stillsteht</translation>
    </message>
    <message>
        <source>re-explore when Tinel stands still at two visits; without units at 7 months after a suture, 12 after a graft (wrist and forearm), at the latest</source>
        <translation>re-explorieren, wenn das Tinel-Zeichen bei zwei Kontrollen stillsteht; ohne Einheiten spätestens 7 Monate nach einer Naht, 12 nach einem Transplantat (Handgelenk und Unterarm)</translation>
    </message>
    <message>
        <source>re-explore when no unit shows by 7 months or no movement by 10 (wrist and forearm); nearer targets earlier</source>
        <translation>re-explorieren, wenn sich nach 7 Monaten keine Einheit oder nach 10 keine Bewegung zeigt (Handgelenk und Unterarm); nähere Ziele früher</translation>
    </message>
    <message>
        <source>re-explore, or go to transfers, when no unit shows by 12 months (wrist and forearm); nearer targets earlier</source>
        <translation>re-explorieren oder zu Transfers übergehen, wenn sich nach 12 Monaten keine Einheit zeigt (Handgelenk und Unterarm); nähere Ziele früher</translation>
    </message>
    <message>
        <source>re-explore when no movement shows by 10 months after a suture, no potential by 14 after a graft (wrist and forearm)</source>
        <translation>re-explorieren, wenn sich 10 Monate nach einer Naht keine Bewegung oder 14 nach einem Transplantat kein Potenzial zeigt (Handgelenk und Unterarm)</translation>
    </message>
    <message>
        <source>explore without movement or units by 6 months, whatever the Tinel sign does</source>
        <translation>ohne Bewegung oder Einheiten nach 6 Monaten explorieren, was das Tinel-Zeichen auch tut</translation>
    </message>
    <message>
        <source>direct repair within days; ends retract and need a graft after about 3 weeks</source>
        <translation>direkte Naht innerhalb von Tagen; die Enden ziehen sich zurück und brauchen nach etwa 3 Wochen ein Transplantat</translation>
    </message>
    <message>
        <source>delayed repair or graft at 3 weeks to 3 months</source>
        <translation>verzögerte Naht oder Transplantat nach 3 Wochen bis 3 Monaten</translation>
    </message>
    <message>
        <source>within 72 hours where possible, always within 2 weeks</source>
        <translation>möglichst innerhalb von 72 Stunden, immer innerhalb von 2 Wochen</translation>
    </message>
    <message>
        <source>explore the part that stays dead at 3 months</source>
        <translation>nach 3 Monaten den Anteil explorieren, der ausgefallen bleibt</translation>
    </message>
    <message>
        <source>within days, with the wound</source>
        <translation>innerhalb von Tagen, mit der Wunde</translation>
    </message>
    <message>
        <source>by 3 months</source>
        <translation>bis 3 Monate</translation>
    </message>
    <message>
        <source>definite repair or graft at about 3 weeks, by 3 months</source>
        <translation>definitive Naht oder Transplantat nach etwa 3 Wochen, bis 3 Monate</translation>
    </message>
    <message>
        <source>as soon as the soft tissue allows</source>
        <translation>sobald die Weichteile es erlauben</translation>
    </message>
    <message>
        <source>explore by 3 months without a sign</source>
        <translation>ohne Zeichen bis 3 Monate explorieren</translation>
    </message>
    <message>
        <source>explore at 3 months without a sign, at once when the lack of advance is certain</source>
        <translation>ohne Zeichen nach 3 Monaten explorieren, sofort, wenn der Stillstand sicher ist</translation>
    </message>
    <message>
        <source>explore at 3 to 4 months without recovery; results fall after about 6 months</source>
        <translation>nach 3 bis 4 Monaten ohne Erholung explorieren; nach etwa 6 Monaten werden die Ergebnisse schlechter</translation>
    </message>
    <message>
        <source>explore at 3 to 4 months without recovery</source>
        <translation>nach 3 bis 4 Monaten ohne Erholung explorieren</translation>
    </message>
    <message>
        <source>within days to two weeks of recognition</source>
        <translation>innerhalb von Tagen bis zwei Wochen nach dem Erkennen</translation>
    </message>
    <message>
        <source>within two weeks of recognition</source>
        <translation>innerhalb von zwei Wochen nach dem Erkennen</translation>
    </message>
    <message>
        <source>12 weeks</source>
        <translation>12 Wochen</translation>
    </message>
    <message>
        <source>explore when neither movement nor EMG units show by about 3 months (6 at the latest)</source>
        <translation>explorieren, wenn sich nach etwa 3 Monaten (spätestens 6) weder Bewegung noch Einheiten im EMG zeigen</translation>
    </message>
    <message>
        <source>EMG at 3 to 4 weeks, end of waiting 3 months</source>
        <translation>EMG nach 3 bis 4 Wochen, Ende des Abwartens nach 3 Monaten</translation>
    </message>
    <message>
        <source>3 months after neurolysis without a sign: think again</source>
        <translation>3 Monate nach der Neurolyse ohne Zeichen: neu überlegen</translation>
    </message>
    <message>
        <source>nerve reconstruction in infancy</source>
        <translation>Nervenrekonstruktion im Säuglingsalter</translation>
    </message>
    <message>
        <source>nerve surgery is decided at 3 to 6 months of age</source>
        <translation>über die Nervenoperation wird im Alter von 3 bis 6 Monaten entschieden</translation>
    </message>
    <message>
        <source>examine every movement</source>
        <translation>jede Bewegung untersuchen</translation>
    </message>
    <message>
        <source>elbow flexion decides</source>
        <translation>die Ellenbogenbeugung entscheidet</translation>
    </message>
    <message>
        <source>second decision</source>
        <translation>zweite Entscheidung</translation>
    </message>
    <message>
        <source>first EMG</source>
        <translation>erstes EMG</translation>
    </message>
    <message>
        <source>EMG again</source>
        <translation>erneut EMG</translation>
    </message>
    <message>
        <source>decide on exploration for constrictions</source>
        <translation>über die Exploration auf Einschnürungen entscheiden</translation>
    </message>
    <message>
        <source>first EMG and conduction</source>
        <translation>erstes EMG und Neurographie</translation>
    </message>
    <message>
        <source>examine</source>
        <translation>untersuchen</translation>
    </message>
    <message>
        <source>end to waiting</source>
        <translation>Ende des Abwartens</translation>
    </message>
    <message>
        <source>first EMG and ultrasound</source>
        <translation>erstes EMG und Ultraschall</translation>
    </message>
    <message>
        <source>EMG and nerve conduction (a kept sensory potential speaks for avulsion)</source>
        <translation>EMG und Neurographie (ein erhaltenes sensibles Potenzial spricht für einen Ausriss)</translation>
    </message>
    <message>
        <source>reconstruct at the latest</source>
        <translation>spätestens rekonstruieren</translation>
    </message>
    <message>
        <source>second look and reconstruction of ends tagged</source>
        <translation>Second Look und Rekonstruktion der markierten Enden</translation>
    </message>
    <message>
        <source>ultrasound</source>
        <translation>Ultraschall</translation>
    </message>
    <message>
        <source>EMG, nerve conduction and MRI</source>
        <translation>EMG, Neurographie und MRT</translation>
    </message>
    <message>
        <source>reconstruct what shows no sign</source>
        <translation>rekonstruieren, was kein Zeichen zeigt</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>operation</source>
        <translation>Operation</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>muscle and nerve die within hours</source>
        <translation>Muskel und Nerv sterben innerhalb von Stunden</translation>
    </message>
    <message>
        <source>a pulse does not exclude it</source>
        <translation>ein Puls schließt es nicht aus</translation>
    </message>
    <message>
        <source>limb before nerve</source>
        <translation>Extremität vor Nerv</translation>
    </message>
    <message>
        <source>the nerve lies beside the artery</source>
        <translation>der Nerv liegt neben der Arterie</translation>
    </message>
    <message>
        <source>a haematoma or a false aneurysm squeezes a nerve that was whole</source>
        <translation>ein Hämatom oder falsches Aneurysma drückt einen Nerv, der erhalten war</translation>
    </message>
    <message>
        <source>a nerve that fails under the eye was whole at first: what presses it can still be taken away</source>
        <translation>ein Nerv, der unter den Augen ausfällt, war zuerst erhalten: was ihn drückt, lässt sich noch entfernen</translation>
    </message>
    <message>
        <source>the deficit was not there before, so something was done to a whole nerve</source>
        <translation>der Ausfall bestand vorher nicht, also ist einem erhaltenen Nerv etwas geschehen</translation>
    </message>
    <message>
        <source>cut or caught nerves do best when dealt with early</source>
        <translation>durchtrennte oder eingeklemmte Nerven haben die besten Ergebnisse, wenn sie früh versorgt werden</translation>
    </message>
    <message>
        <source>the adult trauma forecast does not hold for an infant plexus</source>
        <translation>die Prognose nach Trauma beim Erwachsenen gilt nicht für den Plexus des Säuglings</translation>
    </message>
    <message>
        <source>elbow flexion and the hand at 3 months decide on surgery</source>
        <translation>Ellenbogenbeugung und Hand mit 3 Monaten entscheiden über die Operation</translation>
    </message>
    <message>
        <source>a flail arm with Horner sign is referred at once</source>
        <translation>ein schlaffer Arm mit Horner-Zeichen wird sofort überwiesen</translation>
    </message>
    <message>
        <source>muscles with a whole lower motor neurone keep their endplates, so the window does not bind them</source>
        <translation>Muskeln mit erhaltenem zweitem Motoneuron behalten ihre Endplatten, das Zeitfenster bindet sie also nicht</translation>
    </message>
    <message>
        <source>silent muscles at the level have the window of any denervated muscle</source>
        <translation>stumme Muskeln auf dem Niveau haben das Zeitfenster jedes denervierten Muskels</translation>
    </message>
    <message>
        <source>no axon is known to be divided</source>
        <translation>von keinem Axon ist bekannt, dass es durchtrennt ist</translation>
    </message>
    <message>
        <source>recovery goes on for one to three years, so a distance-and-rate forecast would mislead</source>
        <translation>die Erholung dauert ein bis drei Jahre, eine Prognose aus Strecke und Wachstumsrate führte also in die Irre</translation>
    </message>
    <message>
        <source>nothing advances and nothing has come back when a block should have</source>
        <translation>nichts schreitet voran, und nichts ist zurück, wenn ein Block es sein müsste</translation>
    </message>
    <message>
        <source>a block that is not back at 3 months was none</source>
        <translation>ein Block, der nach 3 Monaten nicht zurück ist, war keiner</translation>
    </message>
    <message>
        <source>recovery goes on for one to three years and is patchy</source>
        <translation>die Erholung dauert ein bis drei Jahre und ist lückenhaft</translation>
    </message>
    <message>
        <source>hourglass constrictions do not open by themselves</source>
        <translation>sanduhrförmige Einschnürungen öffnen sich nicht von selbst</translation>
    </message>
    <message>
        <source>after a year a silent muscle is on its way out of reach</source>
        <translation>nach einem Jahr ist ein stummer Muskel bald nicht mehr erreichbar</translation>
    </message>
    <message>
        <source>conduction is back at 6 to 8 weeks in most</source>
        <translation>bei den meisten ist die Leitung nach 6 bis 8 Wochen zurück</translation>
    </message>
    <message>
        <source>what is not back at 3 months was no conduction block</source>
        <translation>was nach 3 Monaten nicht zurück ist, war kein Leitungsblock</translation>
    </message>
    <message>
        <source>axon loss or a pressure that goes on is what is left</source>
        <translation>es bleiben Axonverlust oder anhaltender Druck</translation>
    </message>
    <message>
        <source>a block returns when the pressure is gone, axon loss does not wait</source>
        <translation>ein Block kehrt zurück, wenn der Druck weg ist, Axonverlust wartet nicht</translation>
    </message>
    <message>
        <source>the trauma forecast knows no cause that goes on pressing</source>
        <translation>die Prognose nach Trauma kennt keine Ursache, die weiter drückt</translation>
    </message>
    <message>
        <source>the agent and the place inside the nerve decide, and neither is in the model</source>
        <translation>Substanz und Ort im Nerv entscheiden, und beides ist nicht im Modell</translation>
    </message>
    <message>
        <source>a sign of recovery was found</source>
        <translation>ein Zeichen der Erholung wurde gefunden</translation>
    </message>
    <message>
        <source>a sign of recovery was found: what comes next is dated below</source>
        <translation>ein Zeichen der Erholung wurde gefunden: was als Nächstes kommt, ist unten terminiert</translation>
    </message>
    <message>
        <source>pain decides as much as power</source>
        <translation>der Schmerz entscheidet so viel wie die Kraft</translation>
    </message>
    <message>
        <source>about three months without a sign</source>
        <translation>etwa drei Monate ohne Zeichen</translation>
    </message>
    <message>
        <source>about three months have passed without a sign</source>
        <translation>etwa drei Monate sind ohne Zeichen vergangen</translation>
    </message>
    <message>
        <source>the scar inside the nerve does not loosen</source>
        <translation>die Narbe im Nerv löst sich nicht</translation>
    </message>
    <message>
        <source>no advance below the operation</source>
        <translation>kein Vorrücken unterhalb der Operationsstelle</translation>
    </message>
    <message>
        <source>no axons to grow, so waiting gains nothing from this root</source>
        <translation>keine Axone, die wachsen könnten, das Abwarten bringt von dieser Wurzel also nichts</translation>
    </message>
    <message>
        <source>a transfer near its muscle is best done early</source>
        <translation>ein muskelnaher Transfer geschieht am besten früh</translation>
    </message>
    <message>
        <source>transfers do best within 3 to 6 months of injury</source>
        <translation>Transfers haben innerhalb von 3 bis 6 Monaten nach der Verletzung die besten Ergebnisse</translation>
    </message>
    <message>
        <source>the middle of the motor window is passed before new axons could arrive</source>
        <translation>die Mitte des motorischen Zeitfensters ist vorbei, bevor neue Axone ankommen könnten</translation>
    </message>
    <message>
        <source>the middle of the motor window is passed before axons could arrive</source>
        <translation>die Mitte des motorischen Zeitfensters ist vorbei, bevor Axone ankommen könnten</translation>
    </message>
    <message>
        <source>the Tinel sign stands still longer than the sutures should hold the axons back</source>
        <translation>das Tinel-Zeichen steht länger still, als die Nähte die Axone aufhalten sollten</translation>
    </message>
    <message>
        <source>the Tinel sign stands still or what was due has not come</source>
        <translation>das Tinel-Zeichen steht still, oder was fällig war, ist nicht gekommen</translation>
    </message>
    <message>
        <source>some sutures hold them longer than others</source>
        <translation>manche Nähte halten sie länger auf als andere</translation>
    </message>
    <message>
        <source>slow growth spends the time of the far muscles first</source>
        <translation>langsames Wachstum verbraucht zuerst die Zeit der fernen Muskeln</translation>
    </message>
    <message>
        <source>no movement more than 10 months after a suture and no evoked potential 14 months after a graft are reasons to look again</source>
        <translation>keine Bewegung mehr als 10 Monate nach einer Naht und kein evoziertes Potenzial 14 Monate nach einem Transplantat sind Gründe, wieder nachzusehen</translation>
    </message>
    <message>
        <source>no units by 12 months after a graft at the wrist or forearm speak for a graft that failed</source>
        <translation>keine Einheiten 12 Monate nach einem Transplantat an Handgelenk oder Unterarm sprechen für ein Versagen des Transplantats</translation>
    </message>
    <message>
        <source>no units by 12 months after a graft at the wrist or forearm is a reason to look again</source>
        <translation>keine Einheiten 12 Monate nach einem Transplantat an Handgelenk oder Unterarm sind ein Grund, wieder nachzusehen</translation>
    </message>
    <message>
        <source>no units by 7 months after a suture at the wrist or forearm speak for a suture that failed</source>
        <translation>keine Einheiten 7 Monate nach einer Naht an Handgelenk oder Unterarm sprechen für ein Versagen der Naht</translation>
    </message>
    <message>
        <source>no units by 7 months after a suture at the wrist or forearm is a reason to look again</source>
        <translation>keine Einheiten 7 Monate nach einer Naht an Handgelenk oder Unterarm sind ein Grund, wieder nachzusehen</translation>
    </message>
    <message>
        <source>each further month costs muscle</source>
        <translation>jeder weitere Monat kostet Muskel</translation>
    </message>
    <message>
        <source>each further month costs muscle if nothing grows across</source>
        <translation>jeder weitere Monat kostet Muskel, wenn nichts hinüberwächst</translation>
    </message>
    <message>
        <source>each further month costs muscle if the nerve is divided</source>
        <translation>jeder weitere Monat kostet Muskel, wenn der Nerv durchtrennt ist</translation>
    </message>
    <message>
        <source>each month of delay costs chance</source>
        <translation>jeder Monat Verzögerung kostet Chance</translation>
    </message>
    <message>
        <source>results fall with each month of delay</source>
        <translation>die Ergebnisse werden mit jedem Monat Verzögerung schlechter</translation>
    </message>
    <message>
        <source>late reconstructions have reached M3, seldom</source>
        <translation>späte Rekonstruktionen haben M3 erreicht, selten</translation>
    </message>
    <message>
        <source>waiting costs the muscle and gains no axon</source>
        <translation>Abwarten kostet den Muskel und bringt kein Axon</translation>
    </message>
    <message>
        <source>an open wound over a nerve with its deficit is a divided nerve until seen</source>
        <translation>eine offene Wunde über einem Nerv mit passendem Ausfall ist ein durchtrennter Nerv, bis man ihn gesehen hat</translation>
    </message>
    <message>
        <source>direct repair without tension is possible for days, later the ends retract</source>
        <translation>eine spannungsfreie direkte Naht ist für Tage möglich, später ziehen sich die Enden zurück</translation>
    </message>
    <message>
        <source>recovery below an open wound means that part of the nerve is whole</source>
        <translation>Erholung unterhalb einer offenen Wunde heißt, dass ein Teil des Nervs erhalten ist</translation>
    </message>
    <message>
        <source>a partial cut is repaired best at once, before the neuroma is in continuity</source>
        <translation>ein Teilschnitt wird am besten sofort versorgt, vor dem Kontinuitätsneurom</translation>
    </message>
    <message>
        <source>a partial division becomes a neuroma in continuity</source>
        <translation>eine Teildurchtrennung wird zum Kontinuitätsneurom</translation>
    </message>
    <message>
        <source>intraoperative stimulation tells what to keep</source>
        <translation>die intraoperative Stimulation sagt, was zu erhalten ist</translation>
    </message>
    <message>
        <source>nothing advances below an open wound</source>
        <translation>unterhalb einer offenen Wunde schreitet nichts voran</translation>
    </message>
    <message>
        <source>nothing grows across a divided nerve</source>
        <translation>über einen durchtrennten Nerv wächst nichts</translation>
    </message>
    <message>
        <source>a divided nerve does not grow across a gap</source>
        <translation>ein durchtrennter Nerv wächst nicht über eine Lücke</translation>
    </message>
    <message>
        <source>seen to be whole, so bruised or stretched</source>
        <translation>erhalten gesehen, also geprellt oder gedehnt</translation>
    </message>
    <message>
        <source>seen and whole, so stretched or bruised</source>
        <translation>gesehen und erhalten, also gedehnt oder geprellt</translation>
    </message>
    <message>
        <source>an open wound is explored whatever the forecast</source>
        <translation>eine offene Wunde wird exploriert, was die Prognose auch sagt</translation>
    </message>
    <message>
        <source>the length of bruised nerve cannot be judged on the first day</source>
        <translation>die Länge des geprellten Nervs lässt sich am ersten Tag nicht beurteilen</translation>
    </message>
    <message>
        <source>an open wound with a complete deficit is not watched to the end of a closed one</source>
        <translation>eine offene Wunde mit vollständigem Ausfall wird nicht so lange beobachtet wie eine geschlossene Verletzung</translation>
    </message>
    <message>
        <source>the nerve is in continuity or is recovering</source>
        <translation>der Nerv ist in Kontinuität oder erholt sich</translation>
    </message>
    <message>
        <source>nothing has advanced although axons should have been on their way</source>
        <translation>nichts ist vorangeschritten, obwohl Axone unterwegs sein sollten</translation>
    </message>
    <message>
        <source>waiting longer than about three months without a sign costs muscle if the nerve is divided</source>
        <translation>länger als etwa drei Monate ohne Zeichen abzuwarten kostet Muskel, wenn der Nerv durchtrennt ist</translation>
    </message>
    <message>
        <source>nothing advances although axons should have come far enough to be found</source>
        <translation>nichts schreitet voran, obwohl die Axone weit genug gekommen sein sollten, um gefunden zu werden</translation>
    </message>
    <message>
        <source>most gunshot palsies are stretched and in continuity</source>
        <translation>die meisten Schussparesen sind Dehnungen in Kontinuität</translation>
    </message>
    <message>
        <source>early repair through a burst zone fails</source>
        <translation>eine frühe Naht durch eine zerfetzte Zone versagt</translation>
    </message>
    <message>
        <source>about three months without a sign make a lesion that needs repair likely</source>
        <translation>etwa drei Monate ohne Zeichen machen eine rekonstruktionsbedürftige Läsion wahrscheinlich</translation>
    </message>
    <message>
        <source>results fall after about 6 months</source>
        <translation>nach etwa 6 Monaten werden die Ergebnisse schlechter</translation>
    </message>
    <message>
        <source>an operated nerve that was not seen counts as divided</source>
        <translation>ein operierter Nerv, der nicht dargestellt wurde, gilt als durchtrennt</translation>
    </message>
    <message>
        <source>early direct repair beats a late graft</source>
        <translation>die frühe direkte Naht ist besser als das späte Transplantat</translation>
    </message>
    <message>
        <source>ultrasound shows a gap or metal on the nerve but does not clear it</source>
        <translation>der Ultraschall zeigt eine Lücke oder Metall am Nerv, schließt eine Verletzung aber nicht aus</translation>
    </message>
    <message>
        <source>nothing advances from the field of the operation</source>
        <translation>aus dem Operationsfeld schreitet nichts voran</translation>
    </message>
    <message>
        <source>an early repair beats a late one</source>
        <translation>eine frühe Naht ist besser als eine späte</translation>
    </message>
    <message>
        <source>part of the nerve works</source>
        <translation>ein Teil des Nervs arbeitet</translation>
    </message>
    <message>
        <source>part of the nerve is whole and must not be lost at operation</source>
        <translation>ein Teil des Nervs ist erhalten und darf bei der Operation nicht verloren gehen</translation>
    </message>
    <message>
        <source>part of the axons is whole: the deficit is partial, and what conducts must not be lost at an operation</source>
        <translation>ein Teil der Axone ist erhalten: der Ausfall ist unvollständig, und was leitet, darf bei einer Operation nicht verloren gehen</translation>
    </message>
    <message>
        <source>axons are on their way to a muscle that lies too far to have answered</source>
        <translation>Axone sind unterwegs zu einem Muskel, der zu weit entfernt liegt, um schon geantwortet zu haben</translation>
    </message>
    <message>
        <source>an advancing Tinel sign is no movement, and some nerves advance in skin fibres only</source>
        <translation>ein wanderndes Tinel-Zeichen ist keine Bewegung, und manche Nerven schreiten nur in Hautfasern voran</translation>
    </message>
    <message>
        <source>most closed palsies beside a fracture recover by themselves (77 per cent of 890 radial palsies)</source>
        <translation>die meisten geschlossenen Paresen neben einer Fraktur erholen sich von selbst (77 Prozent von 890 Radialisparesen)</translation>
    </message>
    <message>
        <source>by month 4 nearly every nerve that recovered by itself showed units on EMG (21 of 22)</source>
        <translation>im Monat 4 zeigte fast jeder Nerv, der sich von selbst erholte, Einheiten im EMG (21 von 22)</translation>
    </message>
    <message>
        <source>a stretched nerve in continuity recovers by itself in many (no count for single nerves was found)</source>
        <translation>ein gedehnter Nerv in Kontinuität erholt sich bei vielen von selbst (für einzelne Nerven fand sich keine Zahl)</translation>
    </message>
    <message>
        <source>torn roots gain nothing from waiting and must be found early</source>
        <translation>ausgerissene Wurzeln gewinnen durch Abwarten nichts und müssen früh gefunden werden</translation>
    </message>
    <message>
        <source>those who reached M3 were operated at 4 months in the median, the others at 7</source>
        <translation>wer M3 erreichte, wurde im Median nach 4 Monaten operiert, die anderen nach 7</translation>
    </message>
    <message>
        <source>the cause decides the first step more than any forecast</source>
        <translation>die Ursache entscheidet den ersten Schritt mehr als jede Prognose</translation>
    </message>
    <message>
        <source>an operation was done that is no repair or graft of this nerve</source>
        <translation>es wurde operiert, aber ohne Naht oder Transplantat dieses Nervs</translation>
    </message>
    <message>
        <source>more than three months have gone</source>
        <translation>mehr als drei Monate sind vergangen</translation>
    </message>
    <message>
        <source>a nerve seen whole can still be crushed beyond growing, or have been another nerve</source>
        <translation>ein erhalten gesehener Nerv kann dennoch so gequetscht sein, dass nichts wächst, oder ein anderer Nerv gewesen sein</translation>
    </message>
    <message>
        <source>an entrapment gets better when it is released, not with time</source>
        <translation>eine Einklemmung bessert sich durch Lösen, nicht durch Zeit</translation>
    </message>
    <message>
        <source>contested: a secondary page has 56 per cent recover fully after 7 months without a sign</source>
        <translation>umstritten: nach einer Sekundärquelle erholen sich 56 Prozent nach 7 Monaten ohne Zeichen vollständig</translation>
    </message>
    <message>
        <source>the waiting has ended without a sign; only movement or EMG units in the first muscle prolong it</source>
        <translation>das Abwarten ist ohne Zeichen zu Ende; nur Bewegung oder Einheiten im EMG des ersten Muskels verlängern es</translation>
    </message>
    <message>
        <source>Unless: %1.</source>
        <translation>Es sei denn: %1.</translation>
    </message>
    <message>
        <source>EMG and nerve conduction</source>
        <translation>EMG und Neurographie</translation>
    </message>
    <message>
        <source>EMG of %1 for first units</source>
        <translation>EMG von %1 auf erste Einheiten</translation>
    </message>
    <message>
        <source>Last expected day for %1: %2</source>
        <translation>Letzter erwarteter Tag für %1: %2</translation>
    </message>
    <message>
        <source>If it has not come, growth is late: decide again, do not wait for the next in order.</source>
        <translation>Ist es nicht gekommen, ist das Wachstum verspätet: neu entscheiden, nicht auf den Nächsten der Reihe warten.</translation>
    </message>
    <message>
        <source>first movement (M1)</source>
        <translation>erste Bewegung (M1)</translation>
    </message>
    <message>
        <source>useful feeling (S3)</source>
        <translation>brauchbares Gefühl (S3)</translation>
    </message>
    <message>
        <source>nothing grows from this lesion as it stands, so no order can be dated</source>
        <translation>aus dieser Läsion wächst, so wie sie ist, nichts, also lässt sich keine Reihenfolge terminieren</translation>
    </message>
    <message>
        <source>fibrillation or sharp waves in a muscle that does not move</source>
        <translation>Fibrillationen oder scharfe Wellen in einem Muskel, der sich nicht bewegt</translation>
    </message>
    <message>
        <source>axons are lost: what comes back grows in from above, in order</source>
        <translation>Axone sind verloren: was zurückkommt, wächst von proximal ein, der Reihe nach</translation>
    </message>
    <message>
        <source>no fibrillation, no units, and the muscle still answers to stimulation below the lesion</source>
        <translation>keine Fibrillation, keine Einheiten, und der Muskel antwortet noch auf Stimulation unterhalb der Läsion</translation>
    </message>
    <message>
        <source>conduction block: it returns as a whole, not in order</source>
        <translation>Leitungsblock: er kehrt als Ganzes zurück, nicht der Reihe nach</translation>
    </message>
    <message>
        <source>units under will beside fibrillation</source>
        <translation>Willküreinheiten neben Fibrillationen</translation>
    </message>
    <message>
        <source>small polyphasic units in the first muscle</source>
        <translation>kleine polyphasische Einheiten im ersten Muskel</translation>
    </message>
    <message>
        <source>axons have reached it: watch on, movement is due next; units are not movement</source>
        <translation>Axone haben ihn erreicht: weiter beobachten, als Nächstes ist Bewegung fällig; Einheiten sind keine Bewegung</translation>
    </message>
    <message>
        <source>no units by the late end of the window</source>
        <translation>keine Einheiten bis zum späten Ende des Zeitfensters</translation>
    </message>
    <message>
        <source>growth is late or has failed: decide now, do not wait for the next muscle</source>
        <translation>das Wachstum ist verspätet oder ausgeblieben: jetzt entscheiden, nicht auf den nächsten Muskel warten</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>voraus</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>im Zeitplan</translation>
    </message>
    <message>
        <source>late</source>
        <translation>verspätet</translation>
    </message>
    <message>
        <source>no advance</source>
        <translation>kein Fortschritt</translation>
    </message>
    <message>
        <source>cannot tell yet</source>
        <translation>noch nicht zu sagen</translation>
    </message>
    <message>
        <source>not informative</source>
        <translation>ohne Aussage</translation>
    </message>
    <message>
        <source>growth is still the likelier, but what was seen has raised the odds that nothing grows %1 times</source>
        <translation>Wachstum ist noch das Wahrscheinlichere, aber das Gesehene hat die Odds, dass nichts wächst, auf das %1-Fache erhöht</translation>
    </message>
    <message>
        <source>no skin fibres run in the nerve beyond the lesion, so there is nothing to tap, and no muscle or EMG below it was examined: examine the muscles in their order</source>
        <translation>distal der Läsion führt der Nerv keine Hautfasern, es gibt also nichts zu beklopfen, und darunter wurde kein Muskel und kein EMG untersucht: die Muskeln der Reihe nach untersuchen</translation>
    </message>
    <message>
        <source>nothing below the lesion was examined on a known date: tap the nerve, grade the muscles</source>
        <translation>unterhalb der Läsion wurde nichts an einem bekannten Datum untersucht: den Nerv beklopfen, die Muskeln einstufen</translation>
    </message>
    <message>
        <source>the findings fit no course of growth: examine again before anything is built on them</source>
        <translation>die Befunde passen zu keinem Wachstumsverlauf: erneut untersuchen, bevor man darauf baut</translation>
    </message>
    <message>
        <source>too few points: %1 visit(s) with a Tinel point, %2 are needed, %3 days apart, and no muscle was examined that is due by now</source>
        <translation>zu wenige Punkte: Kontrollen mit Tinel-Punkt: %1, nötig sind %2 im Abstand von %3 Tagen, und kein Muskel wurde untersucht, der jetzt fällig ist</translation>
    </message>
    <message>
        <source>no muscle was examined that is due by now, and there is nothing to tap</source>
        <translation>kein Muskel wurde untersucht, der jetzt fällig ist, und es gibt nichts zu beklopfen</translation>
    </message>
    <message>
        <source>the last finding that tells anything is %1 days from the injury or the repair; before %2 nothing is called</source>
        <translation>der letzte aussagekräftige Befund liegt %1 Tage nach Verletzung oder Naht; vor %2 wird nichts beurteilt</translation>
    </message>
    <message>
        <source>no state is more likely than not</source>
        <translation>kein Zustand ist wahrscheinlicher als die übrigen zusammen</translation>
    </message>
    <message>
        <source>the date of the injury is not given, so no finding has a place in time</source>
        <translation>das Datum der Verletzung ist nicht angegeben, also hat kein Befund einen Platz in der Zeit</translation>
    </message>
    <message>
        <source>hardly any patient with these findings grows: the dates are those of the few that do</source>
        <translation>kaum ein Nerv wächst bei diesen Befunden: die Termine sind die der wenigen, die es tun</translation>
    </message>
    <message>
        <source>the last examination, of %1, is more than %2 weeks old: examine again before acting on this</source>
        <translation>die letzte Untersuchung, vom %1, ist mehr als %2 Wochen alt: erneut untersuchen, bevor danach gehandelt wird</translation>
    </message>
    <message>
        <source>the Tinel points fit no course of growth, nor a nerve that stands still: look again at dates, places and the place of the lesion; they were not used</source>
        <translation>die Tinel-Punkte passen weder zu einem Wachstumsverlauf noch zu einem Nerv, der stillsteht: Daten, Orte und den Ort der Läsion prüfen; sie wurden nicht verwendet</translation>
    </message>
    <message>
        <source>the Tinel points of the lesions do not go together; they were not used</source>
        <translation>die Tinel-Punkte der Läsionen passen nicht zusammen; sie wurden nicht verwendet</translation>
    </message>
    <message>
        <source>the planned operation is left out: the nerve is judged as it is</source>
        <translation>die geplante Operation bleibt außer Acht: der Nerv wird beurteilt, wie er ist</translation>
    </message>
    <message>
        <source>the Tinel point of %1 lies %2 mm proximal to that of %3: a front does not go back, so one of the two is wrong; the series was not used</source>
        <translation>der Tinel-Punkt vom %1 liegt %2 mm proximal von dem vom %3: eine Front geht nicht zurück, also ist einer der beiden falsch; die Reihe wurde nicht verwendet</translation>
    </message>
    <message>
        <source>%1: found before the nerve was repaired, from when growth starts anew; the point was not used</source>
        <translation>%1: vor der Naht des Nervs gefunden, ab der das Wachstum neu beginnt; der Punkt wurde nicht verwendet</translation>
    </message>
    <message>
        <source>%1: the farthest of several Tinel points of one day is taken as the front</source>
        <translation>%1: der fernste von mehreren Tinel-Punkten eines Tages gilt als Front</translation>
    </message>
    <message>
        <source>%1: the Tinel point has no date and was not used</source>
        <translation>%1: der Tinel-Punkt hat kein Datum und wurde nicht verwendet</translation>
    </message>
    <message>
        <source>%1: no skin fibres that the lesion cut run in the %2, so tapping it says nothing of this lesion; the point was not used</source>
        <translation>%1: in %2 verlaufen keine Hautfasern, die die Läsion durchtrennt hat, das Beklopfen sagt also nichts über diese Läsion; der Punkt wurde nicht verwendet</translation>
    </message>
    <message>
        <source>%1: its examination has no date, so it was not used to weigh the forecast</source>
        <translation>%1: die Untersuchung hat kein Datum, der Befund wurde also nicht zum Gewichten der Prognose verwendet</translation>
    </message>
    <message>
        <source>no skin fibres run in the nerve beyond the lesion: there is nothing that could tingle, so its silence is no bad sign</source>
        <translation>distal der Läsion führt der Nerv keine Hautfasern: nichts könnte kribbeln, sein Schweigen ist also kein schlechtes Zeichen</translation>
    </message>
    <message>
        <source>no axons grow from this lesion as it stands: a fixed Tinel sign over it is expected</source>
        <translation>aus dieser Läsion wachsen, so wie sie ist, keine Axone: ein feststehendes Tinel-Zeichen darüber ist zu erwarten</translation>
    </message>
    <message>
        <source>no axon has left the lesion within the next year</source>
        <translation>kein Axon hat im nächsten Jahr die Läsion verlassen</translation>
    </message>
    <message>
        <source>the date of the injury is not known: days count from the injury, and time already gone is taken as none</source>
        <translation>das Datum der Verletzung ist nicht bekannt: Tage zählen ab der Verletzung, und es wird so gerechnet, als wäre noch keine Zeit vergangen</translation>
    </message>
    <message>
        <source>the Tinel points of the case are not weighed here, though they can change the decision: followup weighs them</source>
        <translation>die Tinel-Punkte des Falls sind hier nicht gewichtet, obwohl sie die Entscheidung ändern können: die Verlaufskontrolle gewichtet sie</translation>
    </message>
    <message>
        <source>the injury lies after today</source>
        <translation>die Verletzung liegt nach heute</translation>
    </message>
    <message>
        <source>Correct the date, or give --today.</source>
        <translation>Datum berichtigen oder --today angeben.</translation>
    </message>
    <message>
        <source>the operation lies before the injury</source>
        <translation>die Operation liegt vor der Verletzung</translation>
    </message>
    <message>
        <source>Correct one of the two dates.</source>
        <translation>Eines der beiden Daten berichtigen.</translation>
    </message>
    <message>
        <source>an operation that is done lies after today</source>
        <translation>eine durchgeführte Operation liegt nach heute</translation>
    </message>
    <message>
        <source>Correct the date, or write "state": "planned".</source>
        <translation>Datum berichtigen oder "state": "planned" schreiben.</translation>
    </message>
    <message>
        <source>the place of the lesion is not given: fill in /injuries/%1/at for a forecast</source>
        <translation>der Ort der Läsion ist nicht angegeben: für eine Prognose /injuries/%1/at ausfüllen</translation>
    </message>
    <message>
        <source>place not given</source>
        <translation>Ort nicht angegeben</translation>
    </message>
    <message>
        <source>series with grafts over about 50 mm do worse (graft_len_threshold_radial_zhu23, graft_len_poor_kallio93, graftlen_ulnar_roganovic04); the effect of length that the counts show is small and uncertain, so the chance of a long graft may be too high</source>
        <translation>Serien mit Transplantaten über etwa 50 mm haben schlechtere Ergebnisse (graft_len_threshold_radial_zhu23, graft_len_poor_kallio93, graftlen_ulnar_roganovic04); der Einfluss der Länge, den die Zahlen zeigen, ist klein und unsicher, die Chance eines langen Transplantats kann also zu hoch sein</translation>
    </message>
    <message>
        <source>the deficit is partial: what is dated are the interrupted axons alone, and no chance of use is given for a muscle that kept some</source>
        <translation>der Ausfall ist unvollständig: terminiert sind nur die unterbrochenen Axone, und für einen Muskel, der einige behielt, wird keine Chance auf Brauchbarkeit angegeben</translation>
    </message>
    <message>
        <source>the mechanism '%1' is not run as adult trauma</source>
        <translation>der Mechanismus „%1“ wird nicht als Trauma des Erwachsenen gerechnet</translation>
    </message>
    <message>
        <source>injury %1: whether the deficit is complete is not given; the rules for a complete one were used</source>
        <translation>Verletzung %1: ob der Ausfall vollständig ist, ist nicht angegeben; verwendet wurden die Regeln für einen vollständigen</translation>
    </message>
    <message>
        <source>no muscle and no skin area of the tables hangs beyond the lesion</source>
        <translation>kein Muskel und kein Hautareal der Tabellen hängt distal an der Läsion</translation>
    </message>
    <message>
        <source>the findings fit hardly any patient with this lesion: look again at place, grade and findings; the forecast was made without them</source>
        <translation>die Befunde passen bei dieser Läsion zu kaum einem Patienten: Ort, Grad und Befunde prüfen; die Prognose wurde ohne sie erstellt</translation>
    </message>
    <message>
        <source>the nerve is repaired</source>
        <translation>der Nerv ist rekonstruiert</translation>
    </message>
    <message>
        <source>a conduction block is not operated on</source>
        <translation>ein Leitungsblock wird nicht operiert</translation>
    </message>
    <message>
        <source>no lesion that could be repaired has a whole muscle or area below it</source>
        <translation>unter keiner Läsion, die rekonstruiert werden könnte, hängt ein ganzer Muskel oder ein ganzes Areal</translation>
    </message>
    <message>
        <source>mean over the muscles that a repair can reach</source>
        <translation>Mittel der Muskeln, die eine Naht erreichen kann</translation>
    </message>
    <message>
        <source>mean over the skin areas that a repair can reach</source>
        <translation>Mittel der Hautareale, die eine Naht erreichen kann</translation>
    </message>
    <message>
        <source>the case holds no injury, so nothing is denervated</source>
        <translation>der Fall enthält keine Verletzung, also ist nichts denerviert</translation>
    </message>
    <message>
        <source>Add "injuries" with at least "nerve", "at" and "mechanism".</source>
        <translation>"injuries" mit mindestens "nerve", "at" und "mechanism" ergänzen.</translation>
    </message>
    <message>
        <source>with the planned %1</source>
        <translation>mit der geplanten Operation: %1</translation>
    </message>
    <message>
        <source>after the %1</source>
        <translation>nach: %1</translation>
    </message>
    <message>
        <source>without repair</source>
        <translation>ohne Naht</translation>
    </message>
    <message>
        <source>graft</source>
        <translation>Transplantat</translation>
    </message>
    <message>
        <source>direct repair</source>
        <translation>direkte Naht</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>M3 or better</source>
        <translation>M3 oder besser</translation>
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
        <source>unknown</source>
        <translation>unbekannt</translation>
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
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>erinnert</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>without the place nothing distal to it can be told</source>
        <translation>ohne den Ort lässt sich distal davon nichts sagen</translation>
    </message>
    <message>
        <source>it decides the first step more than any forecast does</source>
        <translation>sie entscheidet den ersten Schritt mehr als jede Prognose</translation>
    </message>
    <message>
        <source>without it no time can be counted from the injury</source>
        <translation>ohne dies lässt sich keine Zeit ab der Verletzung zählen</translation>
    </message>
    <message>
        <source>whether the nerve was seen, whole or cut, weighs in what to do next</source>
        <translation>ob der Nerv gesehen wurde, erhalten oder durchtrennt, wiegt beim nächsten Schritt mit</translation>
    </message>
    <message>
        <source>the drawing shows a right limb until it is given</source>
        <translation>die Zeichnung zeigt einen rechten Arm, bis die Seite angegeben ist</translation>
    </message>
    <message>
        <source>age changes the rate of growth and the result</source>
        <translation>das Alter ändert Wachstumsrate und Ergebnis</translation>
    </message>
    <message>
        <source>lengths follow it; a measured length of the limb is better still</source>
        <translation>die Längen folgen ihr; eine gemessene Länge des Arms ist noch besser</translation>
    </message>
    <message>
        <source>limb lengths differ at the same stature</source>
        <translation>Armlängen unterscheiden sich bei gleicher Körpergröße</translation>
    </message>
    <message>
        <source>a muscle that is not listed counts as not examined, never as normal</source>
        <translation>ein nicht aufgeführter Muskel gilt als nicht untersucht, nie als unauffällig</translation>
    </message>
    <message>
        <source>findings mean another thing early and late</source>
        <translation>Befunde bedeuten früh und spät etwas anderes</translation>
    </message>
    <message>
        <source>without it the observation has no place in time</source>
        <translation>ohne dies hat die Beobachtung keinen Platz in der Zeit</translation>
    </message>
    <message>
        <source>regrowth is counted from it</source>
        <translation>das Wachstum wird davon an gezählt</translation>
    </message>
    <message>
        <source>sunderland_1</source>
        <translation>Sunderland 1</translation>
    </message>
    <message>
        <source>sunderland_2</source>
        <translation>Sunderland 2</translation>
    </message>
    <message>
        <source>sunderland_3</source>
        <translation>Sunderland 3</translation>
    </message>
    <message>
        <source>sunderland_4</source>
        <translation>Sunderland 4</translation>
    </message>
    <message>
        <source>sunderland_5</source>
        <translation>Sunderland 5</translation>
    </message>
    <message>
        <source>deal with the emergency first</source>
        <translation>zuerst den Notfall behandeln</translation>
    </message>
    <message>
        <source>a red flag: limb, vessel or pressure before any nerve</source>
        <translation>ein Alarmzeichen: Extremität, Gefäß oder Druck vor jedem Nerv</translation>
    </message>
    <message>
        <source>explore the nerve</source>
        <translation>den Nerv explorieren</translation>
    </message>
    <message>
        <source>an open wound over a dead nerve, an operated nerve that was not seen, a nerve known to be divided, or no sign of recovery at the end of waiting</source>
        <translation>offene Wunde über einem ausgefallenen Nerv, operierter Nerv, der nicht dargestellt wurde, bekannt durchtrennter Nerv oder kein Zeichen der Erholung am Ende des Abwartens</translation>
    </message>
    <message>
        <source>observe with dates</source>
        <translation>mit Terminen beobachten</translation>
    </message>
    <message>
        <source>a closed injury, or a nerve seen whole, before the end of waiting, or one that recovers</source>
        <translation>geschlossene Verletzung oder erhalten gesehener Nerv vor dem Ende des Abwartens, oder einer, der sich erholt</translation>
    </message>
    <message>
        <source>neurolysis</source>
        <translation>Neurolyse</translation>
    </message>
    <message>
        <source>cable graft</source>
        <translation>Nerventransplantat (Kabel)</translation>
    </message>
    <message>
        <source>nerve transfer</source>
        <translation>Nerventransfer</translation>
    </message>
    <message>
        <source>tendon transfer</source>
        <translation>Sehnentransfer</translation>
    </message>
    <message>
        <source>muscle transfer</source>
        <translation>Muskeltransfer</translation>
    </message>
    <message>
        <source>free functioning muscle</source>
        <translation>freier funktioneller Muskel</translation>
    </message>
    <message>
        <source>shoulder fusion</source>
        <translation>Schulterarthrodese</translation>
    </message>
    <message>
        <source>decompress</source>
        <translation>dekomprimieren</translation>
    </message>
    <message>
        <source>nerve transfer for silent muscles</source>
        <translation>Nerventransfer für stumme Muskeln</translation>
    </message>
    <message>
        <source>stimulate what hangs below the level</source>
        <translation>stimulieren, was unter dem Niveau hängt</translation>
    </message>
    <message>
        <source>tendon transfer for pinch, grasp or elbow extension</source>
        <translation>Sehnentransfer für Spitzgriff, Greifen oder Ellenbogenstreckung</translation>
    </message>
    <message>
        <source>observe, with pain control and EMG</source>
        <translation>beobachten, mit Schmerztherapie und EMG</translation>
    </message>
    <message>
        <source>explore for constrictions</source>
        <translation>auf Einschnürungen explorieren</translation>
    </message>
    <message>
        <source>observe, with pain control, EMG and ultrasound</source>
        <translation>beobachten, mit Schmerztherapie, EMG und Ultraschall</translation>
    </message>
    <message>
        <source>explore, neurolysis or repair</source>
        <translation>explorieren, Neurolyse oder Naht</translation>
    </message>
    <message>
        <source>at operation the nerve is in continuity and conducts: an action potential crosses the lesion (about 8 weeks after the injury or later)</source>
        <translation>bei der Operation ist der Nerv in Kontinuität und leitet: ein Aktionspotenzial überquert die Läsion (etwa 8 Wochen nach der Verletzung oder später)</translation>
    </message>
    <message>
        <source>divided or resected, both ends healthy, and they meet without tension with the joints in a usual position</source>
        <translation>durchtrennt oder reseziert, beide Enden gesund, und sie kommen bei üblicher Gelenkstellung spannungsfrei zusammen</translation>
    </message>
    <message>
        <source>divided or resected, a proximal stump with healthy fascicles, and a gap that cannot be closed without tension</source>
        <translation>durchtrennt oder reseziert, ein proximaler Stumpf mit gesunden Faszikeln und ein Defekt, der sich nicht spannungsfrei schließen lässt</translation>
    </message>
    <message>
        <source>the target is lost, its own nerve beyond the coaptation is whole, the donor works (M4 or better, examined) and is expendable, and axons come in time</source>
        <translation>das Ziel ist ausgefallen, sein Nerv distal der Koaptation ist erhalten, der Spender arbeitet (M4 oder besser, untersucht) und ist entbehrlich, und Axone kommen rechtzeitig</translation>
    </message>
    <message>
        <source>nerve recovery is not expected; supple joints, a sensate hand, a donor of M4 or better that can be spared, one function for each transfer</source>
        <translation>eine Erholung des Nervs ist nicht zu erwarten; freie Gelenke, eine sensible Hand, ein entbehrlicher Spender von M4 oder besser, eine Funktion je Transfer</translation>
    </message>
    <message>
        <source>late or failed nerve surgery; passive movement kept; a strong donor muscle</source>
        <translation>späte oder gescheiterte Nervenchirurgie; passive Beweglichkeit erhalten; ein kräftiger Spendermuskel</translation>
    </message>
    <message>
        <source>no local donor muscle, a donor nerve and vessels at hand, steady shoulder, passive elbow movement; any delay, since the muscle is fresh</source>
        <translation>kein örtlicher Spendermuskel, Spendernerv und Gefäße vorhanden, stabile Schulter, passive Ellenbogenbeweglichkeit; jede Verzögerung, da der Muskel frisch ist</translation>
    </message>
    <message>
        <source>a painful or loose flail shoulder after the last nerve operation has had its time; trapezius and serratus anterior work; passive movement of the scapula</source>
        <translation>schmerzhafte oder lockere schlaffe Schulter, nachdem die letzte Nervenoperation ihre Zeit hatte; trapezius und serratus anterior arbeiten; passive Beweglichkeit der Skapula</translation>
    </message>
    <message>
        <source>stable level; silent muscles (lower motor neurone) within about 6 months, others later; working donor above the level</source>
        <translation>stabiles Niveau; stumme Muskeln (zweites Motoneuron) innerhalb von etwa 6 Monaten, andere später; arbeitender Spender oberhalb des Niveaus</translation>
    </message>
    <message>
        <source>every spinal cord lesion</source>
        <translation>jede Rückenmarksläsion</translation>
    </message>
    <message>
        <source>stable level, M4 donors</source>
        <translation>stabiles Niveau, Spender M4</translation>
    </message>
    <message>
        <source>inflammatory palsy without a mass</source>
        <translation>entzündliche Parese ohne Raumforderung</translation>
    </message>
    <message>
        <source>no clinical or EMG recovery by 3 to 6 months, or a constriction on imaging; opinions differ</source>
        <translation>keine klinische oder EMG-Erholung nach 3 bis 6 Monaten oder eine Einschnürung in der Bildgebung; die Meinungen gehen auseinander</translation>
    </message>
    <message>
        <source>every compression palsy</source>
        <translation>jede Druckparese</translation>
    </message>
    <message>
        <source>established weakness, wasting or constant numbness, a mass, or a deficit that grows</source>
        <translation>ausgeprägte Schwäche, Atrophie oder ständige Taubheit, eine Raumforderung oder ein zunehmender Ausfall</translation>
    </message>
    <message>
        <source>every birth palsy</source>
        <translation>jede geburtstraumatische Parese</translation>
    </message>
    <message>
        <source>no elbow flexion at 3 to 6 months, or a flail arm with Horner sign</source>
        <translation>keine Ellenbogenbeugung mit 3 bis 6 Monaten oder ein schlaffer Arm mit Horner-Zeichen</translation>
    </message>
    <message>
        <source>injection palsy that is not under pressure</source>
        <translation>Injektionsparese, die nicht unter Druck steht</translation>
    </message>
    <message>
        <source>severe pain, high-pressure injection (the same day), or no recovery at 3 months</source>
        <translation>starker Schmerz, Hochdruckinjektion (am selben Tag) oder keine Erholung nach 3 Monaten</translation>
    </message>
    <message>
        <source>every option below waits until this is done</source>
        <translation>jede Möglichkeit unten wartet, bis dies geschehen ist</translation>
    </message>
    <message>
        <source>whole or conducting (action potential across the lesion): neurolysis, then wait</source>
        <translation>erhalten oder leitend (Aktionspotenzial über die Läsion): Neurolyse, dann abwarten</translation>
    </message>
    <message>
        <source>divided: repair where the ends meet without tension, else graft</source>
        <translation>durchtrennt: Naht, wo die Enden spannungsfrei zusammenkommen, sonst Transplantat</translation>
    </message>
    <message>
        <source>in continuity without an action potential: resect, then repair or graft</source>
        <translation>in Kontinuität ohne Aktionspotenzial: resezieren, dann Naht oder Transplantat</translation>
    </message>
    <message>
        <source>no proximal stump, or too far or too late for the muscle: nerve transfer or tendon transfer</source>
        <translation>kein proximaler Stumpf oder für den Muskel zu weit oder zu spät: Nerventransfer oder Sehnentransfer</translation>
    </message>
    <message>
        <source>find and take away the cause; conduction study at 3 to 4 weeks</source>
        <translation>Ursache suchen und beseitigen; Neurographie nach 3 bis 4 Wochen</translation>
    </message>
    <message>
        <source>find and take away the cause</source>
        <translation>Ursache suchen und beseitigen</translation>
    </message>
    <message>
        <source>conduction study at 3 to 4 weeks</source>
        <translation>Neurographie nach 3 bis 4 Wochen</translation>
    </message>
    <message>
        <source>muscles that answer keep their endplates, silent ones lose them</source>
        <translation>Muskeln, die antworten, behalten ihre Endplatten, stumme verlieren sie</translation>
    </message>
    <message>
        <source>recovery goes on for one to three years</source>
        <translation>die Erholung dauert ein bis drei Jahre</translation>
    </message>
    <message>
        <source>the agent and its place in the nerve decide, and are not in the model</source>
        <translation>Substanz und Ort im Nerv entscheiden und sind nicht im Modell</translation>
    </message>
    <message>
        <source>one operation</source>
        <translation>eine Operation</translation>
    </message>
    <message>
        <source>one operation and its scar</source>
        <translation>eine Operation und ihre Narbe</translation>
    </message>
    <message>
        <source>a skin nerve</source>
        <translation>ein Hautnerv</translation>
    </message>
    <message>
        <source>two lines of suture</source>
        <translation>zwei Nahtstellen</translation>
    </message>
    <message>
        <source>mobilisation of the nerve</source>
        <translation>Mobilisierung des Nervs</translation>
    </message>
    <message>
        <source>joints held for about 3 weeks</source>
        <translation>Gelenke etwa 3 Wochen ruhiggestellt</translation>
    </message>
    <message>
        <source>the nerve itself is not touched if it conducts</source>
        <translation>der Nerv selbst bleibt unberührt, wenn er leitet</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>time, if the pressure goes on</source>
        <translation>Zeit, wenn der Druck anhält</translation>
    </message>
    <message>
        <source>time, if silent muscles are missed</source>
        <translation>Zeit, wenn stumme Muskeln übersehen werden</translation>
    </message>
    <message>
        <source>time: each month without axons costs muscle if the nerve is divided</source>
        <translation>Zeit: jeder Monat ohne Axone kostet Muskel, wenn der Nerv durchtrennt ist</translation>
    </message>
    <message>
        <source>the donor branch</source>
        <translation>der Spenderast</translation>
    </message>
    <message>
        <source>the donor branch, and every later use of its muscle</source>
        <translation>der Spenderast und jede spätere Verwendung seines Muskels</translation>
    </message>
    <message>
        <source>the donor muscle</source>
        <translation>der Spendermuskel</translation>
    </message>
    <message>
        <source>the donor muscle for every other use</source>
        <translation>der Spendermuskel für jede andere Verwendung</translation>
    </message>
    <message>
        <source>the donor nerve and the muscle of the thigh</source>
        <translation>der Spendernerv und der Muskel des Oberschenkels</translation>
    </message>
    <message>
        <source>a scar of the thigh; the donor nerve</source>
        <translation>Narbe am Oberschenkel; der Spendernerv</translation>
    </message>
    <message>
        <source>movement of the shoulder joint for good</source>
        <translation>die Bewegung des Schultergelenks auf Dauer</translation>
    </message>
    <message>
        <source>later cuff or deltoid recovery is lost</source>
        <translation>eine spätere Erholung von Rotatorenmanschette oder Deltoideus geht verloren</translation>
    </message>
    <message>
        <source>a fused joint; fracture of the humerus and revision are known</source>
        <translation>ein versteiftes Gelenk; Humerusfraktur und Revision sind bekannt</translation>
    </message>
    <message>
        <source>when the lesion is too high for its muscle, or when repair or graft failed or cannot be done</source>
        <translation>wenn die Läsion für ihren Muskel zu hoch liegt oder wenn Naht oder Transplantat gescheitert oder nicht möglich sind</translation>
    </message>
    <message>
        <source>kept for what recovery or nerve surgery does not bring</source>
        <translation>aufgehoben für das, was Erholung oder Nervenchirurgie nicht bringen</translation>
    </message>
    <message>
        <source>kept for what recovery or nerve surgery does not bring; as an internal splint earlier</source>
        <translation>aufgehoben für das, was Erholung oder Nervenchirurgie nicht bringen; als innere Schiene früher</translation>
    </message>
    <message>
        <source>last of all: nothing of it can be taken back</source>
        <translation>zuletzt: nichts davon lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>all who were explored, whatever was found</source>
        <translation>alle, die exploriert wurden, was auch gefunden wurde</translation>
    </message>
    <message>
        <source>unselected palsies that were watched</source>
        <translation>nicht ausgewählte Paresen, die beobachtet wurden</translation>
    </message>
    <message>
        <source>nerves that conducted at operation, so most would have recovered: never a measure against repair or graft</source>
        <translation>Nerven, die bei der Operation leiteten, die meisten hätten sich also erholt: nie ein Maßstab gegen Naht oder Transplantat</translation>
    </message>
    <message>
        <source>divided or not conducting, the ends met</source>
        <translation>durchtrennt oder nicht leitend, die Enden kamen zusammen</translation>
    </message>
    <message>
        <source>divided or not conducting, the ends did not meet</source>
        <translation>durchtrennt oder nicht leitend, die Enden kamen nicht zusammen</translation>
    </message>
    <message>
        <source>working donor and lost target, mostly plexus lesions operated within months</source>
        <translation>arbeitender Spender und ausgefallenes Ziel, meist Plexusläsionen, innerhalb von Monaten operiert</translation>
    </message>
    <message>
        <source>late or failed nerves, supple joints, strong donors, whatever the delay</source>
        <translation>späte oder gescheiterte Nerven, freie Gelenke, kräftige Spender, bei jeder Verzögerung</translation>
    </message>
    <message>
        <source>late or failed nerves, working donors, whatever the delay</source>
        <translation>späte oder gescheiterte Nerven, arbeitende Spender, bei jeder Verzögerung</translation>
    </message>
    <message>
        <source>complete or late palsies, mostly without another choice</source>
        <translation>vollständige oder späte Paresen, meist ohne andere Wahl</translation>
    </message>
    <message>
        <source>late flail shoulders</source>
        <translation>späte schlaffe Schultern</translation>
    </message>
    <message>
        <source>infants</source>
        <translation>Säuglinge</translation>
    </message>
    <message>
        <source>spinal cord lesions</source>
        <translation>Rückenmarksläsionen</translation>
    </message>
    <message>
        <source>inflammatory palsies</source>
        <translation>entzündliche Paresen</translation>
    </message>
    <message>
        <source>compression palsies</source>
        <translation>Druckparesen</translation>
    </message>
    <message>
        <source>injection palsies</source>
        <translation>Injektionsparesen</translation>
    </message>
    <message>
        <source>conducts at operation</source>
        <translation>leitet bei der Operation</translation>
    </message>
    <message>
        <source>does not conduct, ends meet</source>
        <translation>leitet nicht, Enden kommen zusammen</translation>
    </message>
    <message>
        <source>does not conduct, gap</source>
        <translation>leitet nicht, Defekt</translation>
    </message>
    <message>
        <source>explored</source>
        <translation>exploriert</translation>
    </message>
    <message>
        <source>not operated</source>
        <translation>nicht operiert</translation>
    </message>
    <message>
        <source>free muscle</source>
        <translation>freier Muskel</translation>
    </message>
    <message>
        <source>salvage</source>
        <translation>Rettungseingriff</translation>
    </message>
    <message>
        <source>not an option until the nerve is seen: under a wound or an operation a dead nerve counts as divided</source>
        <translation>keine Möglichkeit, bis der Nerv dargestellt ist: unter einer Wunde oder Operation gilt ein ausgefallener Nerv als durchtrennt</translation>
    </message>
    <message>
        <source>not an option: a nerve known to be divided does not grow across the gap</source>
        <translation>keine Möglichkeit: ein bekannt durchtrennter Nerv wächst nicht über die Lücke</translation>
    </message>
    <message>
        <source>not an option for a torn root: nothing grows from it, so waiting gains nothing</source>
        <translation>keine Möglichkeit bei ausgerissener Wurzel: aus ihr wächst nichts, Abwarten bringt also nichts</translation>
    </message>
    <message>
        <source>a divided nerve has nothing to free</source>
        <translation>an einem durchtrennten Nerv gibt es nichts zu lösen</translation>
    </message>
    <message>
        <source>only after the nerve was seen and does not conduct</source>
        <translation>erst, wenn der Nerv dargestellt wurde und nicht leitet</translation>
    </message>
    <message>
        <source>only after the nerve was seen and stimulated</source>
        <translation>erst, wenn der Nerv dargestellt und stimuliert wurde</translation>
    </message>
    <message>
        <source>only when the dates of the decision pass without units or movement, or Tinel stands still</source>
        <translation>erst, wenn die Termine der Entscheidung ohne Einheiten oder Bewegung verstreichen oder das Tinel-Zeichen stillsteht</translation>
    </message>
    <message>
        <source>the nerve is reconstructed; again only when the dates of the decision pass without units or movement</source>
        <translation>der Nerv ist rekonstruiert; erneut erst, wenn die Termine der Entscheidung ohne Einheiten oder Bewegung verstreichen</translation>
    </message>
    <message>
        <source>when the end of waiting comes without a sign, or at once if the wound or the course changes</source>
        <translation>wenn das Ende des Abwartens ohne Zeichen kommt, oder sofort, wenn Wunde oder Verlauf sich ändern</translation>
    </message>
    <message>
        <source>the decision gives the dates and the end of waiting</source>
        <translation>die Entscheidung gibt die Termine und das Ende des Abwartens</translation>
    </message>
    <message>
        <source>in the same operation, if an action potential crosses</source>
        <translation>in derselben Operation, wenn ein Aktionspotenzial überquert</translation>
    </message>
    <message>
        <source>in the same operation, if the ends do not meet</source>
        <translation>in derselben Operation, wenn die Enden nicht zusammenkommen</translation>
    </message>
    <message>
        <source>in the same operation, if the nerve does not conduct and the ends do not meet</source>
        <translation>in derselben Operation, wenn der Nerv nicht leitet und die Enden nicht zusammenkommen</translation>
    </message>
    <message>
        <source>in the same operation, if the nerve does not conduct and the ends meet</source>
        <translation>in derselben Operation, wenn der Nerv nicht leitet und die Enden zusammenkommen</translation>
    </message>
    <message>
        <source>in the same operation, if the nerve is divided and the ends meet</source>
        <translation>in derselben Operation, wenn der Nerv durchtrennt ist und die Enden zusammenkommen</translation>
    </message>
    <message>
        <source>in the same operation only where a piece of nerve is missing: fresh ends usually meet</source>
        <translation>in derselben Operation nur, wo ein Stück Nerv fehlt: frische Enden kommen meist zusammen</translation>
    </message>
    <message>
        <source>planned now, beside or instead of the repair of the nerve</source>
        <translation>jetzt zu planen, neben oder statt der Naht des Nervs</translation>
    </message>
    <message>
        <source>planned by the plexus unit: it shows which roots have a stump</source>
        <translation>vom Plexuszentrum zu planen: es zeigt, welche Wurzeln einen Stumpf haben</translation>
    </message>
    <message>
        <source>from a root that is not torn, if its stump shows healthy fascicles</source>
        <translation>aus einer nicht ausgerissenen Wurzel, wenn ihr Stumpf gesunde Faszikel zeigt</translation>
    </message>
    <message>
        <source>unlikely to give a useful muscle now: for skin and pain only</source>
        <translation>bringt jetzt wahrscheinlich keinen brauchbaren Muskel mehr: nur für Haut und Schmerz</translation>
    </message>
    <message>
        <source>unlikely now: the muscle has been without axons too long; a free muscle is fresh</source>
        <translation>jetzt unwahrscheinlich: der Muskel war zu lange ohne Axone; ein freier Muskel ist frisch</translation>
    </message>
    <message>
        <source>for pain only: a nerve that had conducted would have moved something by now</source>
        <translation>nur wegen der Schmerzen: ein Nerv, der geleitet hätte, hätte inzwischen etwas bewegt</translation>
    </message>
    <message>
        <source>for skin and pain only; the muscle gains nothing</source>
        <translation>nur für Haut und Schmerz; der Muskel gewinnt nichts</translation>
    </message>
    <message>
        <source>now: nerve work no longer brings the muscle back</source>
        <translation>jetzt: Nervenchirurgie bringt den Muskel nicht mehr zurück</translation>
    </message>
    <message>
        <source>for protective feeling, which has no such end of time as a muscle</source>
        <translation>für das Schutzgefühl, das kein solches Zeitende hat wie ein Muskel</translation>
    </message>
    <message>
        <source>examine first: of no donor was it shown that it works and that what must hold beside it does</source>
        <translation>zuerst untersuchen: von keinem Spender wurde gezeigt, dass er arbeitet und dass gilt, was daneben gelten muss</translation>
    </message>
    <message>
        <source>examine trapezius and serratus anterior first</source>
        <translation>zuerst trapezius und serratus anterior untersuchen</translation>
    </message>
    <message>
        <source>what would carry the fused arm does not work</source>
        <translation>was den versteiften Arm tragen würde, arbeitet nicht</translation>
    </message>
    <message>
        <source>what carries the fused arm: %1</source>
        <translation>was den versteiften Arm trägt: %1</translation>
    </message>
    <message>
        <source>trapezius and serratus anterior, which carry the fused arm</source>
        <translation>trapezius und serratus anterior, die den versteiften Arm tragen</translation>
    </message>
    <message>
        <source>movement of the shoulder blade</source>
        <translation>Bewegung des Schulterblatts</translation>
    </message>
    <message>
        <source>the fused arm</source>
        <translation>der versteifte Arm</translation>
    </message>
    <message>
        <source>position of the arm</source>
        <translation>Stellung des Arms</translation>
    </message>
    <message>
        <source>an action potential crossed at operation</source>
        <translation>bei der Operation überquerte ein Aktionspotenzial die Läsion</translation>
    </message>
    <message>
        <source>no action potential crossed at operation</source>
        <translation>bei der Operation überquerte kein Aktionspotenzial die Läsion</translation>
    </message>
    <message>
        <source>an action potential crossed at operation: resection would lose it</source>
        <translation>bei der Operation überquerte ein Aktionspotenzial die Läsion: eine Resektion gäbe es verloren</translation>
    </message>
    <message>
        <source>nothing of the kind for %1: torn from the cord</source>
        <translation>nichts dergleichen für %1: aus dem Rückenmark ausgerissen</translation>
    </message>
    <message>
        <source>the root is torn from the cord: there is nothing to join</source>
        <translation>die Wurzel ist aus dem Rückenmark ausgerissen: es gibt nichts zu verbinden</translation>
    </message>
    <message>
        <source>the model gives it less than one chance in five today</source>
        <translation>das Modell gibt ihm heute weniger als eine Chance von fünf</translation>
    </message>
    <message>
        <source>only of the part that is dead: what works is kept</source>
        <translation>nur des ausgefallenen Anteils: was arbeitet, bleibt erhalten</translation>
    </message>
    <message>
        <source>the case names it as a priority</source>
        <translation>der Fall nennt es als vorrangig</translation>
    </message>
    <message>
        <source>operated today, when the cast or splint comes off, %1 to %2 days later; evenly spread between them (assumed)</source>
        <translation>heute operiert, bei Abnahme von Gips oder Schiene, %1 bis %2 Tage später; gleichmäßig dazwischen verteilt (angenommen)</translation>
    </message>
    <message>
        <source>one coaptation today at the beginning of the receiving nerve; nearer the muscle it is sooner</source>
        <translation>eine Koaptation heute am Beginn des Empfängernervs; näher am Muskel früher</translation>
    </message>
    <message>
        <source>the axons grow through a graft first: no time and no chance of the model</source>
        <translation>die Axone wachsen zuerst durch ein Transplantat: keine Zeit und keine Chance aus dem Modell</translation>
    </message>
    <message>
        <source>the muscle is alive, so it moves when the cast comes off</source>
        <translation>der Muskel lebt, er bewegt sich also, wenn der Gips abkommt</translation>
    </message>
    <message>
        <source>the muscle is alive, so it moves when the splint comes off</source>
        <translation>der Muskel lebt, er bewegt sich also, wenn die Schiene abkommt</translation>
    </message>
    <message>
        <source>mean over %1 muscles, %2</source>
        <translation>Mittel über %1 Muskeln, %2</translation>
    </message>
    <message>
        <source>%1 more get no axon from it</source>
        <translation>%1 weitere bekommen davon kein Axon</translation>
    </message>
    <message>
        <source>%1 today</source>
        <translation>%1 heute</translation>
    </message>
    <message>
        <source>without an operation</source>
        <translation>ohne Operation</translation>
    </message>
    <message>
        <source>after the repair that was done</source>
        <translation>nach der durchgeführten Naht</translation>
    </message>
    <message>
        <source>the gap is not known: it is measured after resection, with the joints in the position in which the graft is laid, and it grows when they are straightened</source>
        <translation>der Defekt ist nicht bekannt: er wird nach der Resektion gemessen, mit den Gelenken in der Stellung, in der das Transplantat eingelegt wird, und er wächst, wenn sie gestreckt werden</translation>
    </message>
    <message>
        <source>gap %1 mm after resection; the joint position in which it was measured is not given: measured bent, it grows when the joint is straight</source>
        <translation>Defekt nach Resektion %1 mm; die Gelenkstellung bei der Messung ist nicht angegeben: gebeugt gemessen, wächst er, wenn das Gelenk gestreckt ist</translation>
    </message>
    <message>
        <source>gap %1 mm after resection, in the case's joint position (%2); it grows when the joints are straight</source>
        <translation>Defekt nach Resektion %1 mm, in der Gelenkstellung des Falls (%2); er wächst, wenn die Gelenke gestreckt sind</translation>
    </message>
    <message>
        <source>%1 mm closed by %2</source>
        <translation>%1 mm geschlossen durch %2</translation>
    </message>
    <message>
        <source>%1 [%2]</source>
        <translation>%1 [%2]</translation>
    </message>
    <message>
        <source>%1 degrees of wrist flexion, %2 mm above the wrist</source>
        <translation>%1 Grad Handgelenkbeugung, %2 mm oberhalb des Handgelenks</translation>
    </message>
    <message>
        <source>%1 degrees of elbow flexion</source>
        <translation>%1 Grad Ellenbogenbeugung</translation>
    </message>
    <message>
        <source>long mobilisation with anterior transposition</source>
        <translation>langstreckige Mobilisierung mit Vorverlagerung</translation>
    </message>
    <message>
        <source>local mobilisation of the ends</source>
        <translation>örtliche Mobilisierung der Enden</translation>
    </message>
    <message>
        <source>the gap of %1 mm is more than any of these: graft</source>
        <translation>der Defekt von %1 mm ist größer als jedes davon: Transplantat</translation>
    </message>
    <message>
        <source>the gap of %1 mm may come together; tension at the suture with the joint moved decides</source>
        <translation>der Defekt von %1 mm kann sich schließen lassen; die Spannung an der Naht bei bewegtem Gelenk entscheidet</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>genug</translation>
    </message>
    <message>
        <source>not enough</source>
        <translation>nicht genug</translation>
    </message>
    <message>
        <source>one leg</source>
        <translation>ein Bein</translation>
    </message>
    <message>
        <source>both legs</source>
        <translation>beide Beine</translation>
    </message>
    <message>
        <source>enough if the nerve is long</source>
        <translation>genug, wenn der Nerv lang ist</translation>
    </message>
    <message>
        <source>one leg if the nerve is long, else both</source>
        <translation>ein Bein, wenn der Nerv lang ist, sonst beide</translation>
    </message>
    <message>
        <source>both legs, and perhaps not enough</source>
        <translation>beide Beine, und vielleicht nicht genug</translation>
    </message>
    <message>
        <source>not enough in both legs</source>
        <translation>in beiden Beinen nicht genug</translation>
    </message>
    <message>
        <source>its skin is numb from this injury already: no further loss</source>
        <translation>seine Haut ist durch diese Verletzung schon taub: kein weiterer Verlust</translation>
    </message>
    <message>
        <source>up to a gap of %1 mm</source>
        <translation>bis zu einem Defekt von %1 mm</translation>
    </message>
    <message>
        <source>no cross-section of the %1 was found: count at operation</source>
        <translation>für %1 fand sich kein Querschnitt: bei der Operation zählen</translation>
    </message>
    <message>
        <source>as the case says</source>
        <translation>wie im Fall angegeben</translation>
    </message>
    <message>
        <source>%1 more weeks pass without a change</source>
        <translation>%1 weitere Wochen vergehen ohne Änderung</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>completeness</source>
        <translation>Vollständigkeit</translation>
    </message>
    <message>
        <source>nerve_seen</source>
        <translation>Nerv gesehen</translation>
    </message>
    <message>
        <source>sign of recovery</source>
        <translation>Zeichen der Erholung</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>red flag</source>
        <translation>Alarmzeichen</translation>
    </message>
    <message>
        <source>action potential at operation</source>
        <translation>Aktionspotenzial bei der Operation</translation>
    </message>
    <message>
        <source>crosses the lesion</source>
        <translation>überquert die Läsion</translation>
    </message>
    <message>
        <source>does not cross the lesion</source>
        <translation>überquert die Läsion nicht</translation>
    </message>
    <message>
        <source>the deficit is partial</source>
        <translation>der Ausfall ist unvollständig</translation>
    </message>
    <message>
        <source>the deficit is complete</source>
        <translation>der Ausfall ist vollständig</translation>
    </message>
    <message>
        <source>the nerve was seen whole</source>
        <translation>der Nerv wurde erhalten gesehen</translation>
    </message>
    <message>
        <source>the nerve was not seen</source>
        <translation>der Nerv wurde nicht gesehen</translation>
    </message>
    <message>
        <source>movement or EMG units return below the lesion</source>
        <translation>Bewegung oder Einheiten im EMG kehren unterhalb der Läsion zurück</translation>
    </message>
    <message>
        <source>the sign of recovery does not hold</source>
        <translation>das Zeichen der Erholung gilt nicht</translation>
    </message>
    <message>
        <source>known to be a conduction block</source>
        <translation>bekannt als Leitungsblock</translation>
    </message>
    <message>
        <source>known to be divided (neurotmesis)</source>
        <translation>bekannt als durchtrennt (Neurotmesis)</translation>
    </message>
    <message>
        <source>a root is found torn from the cord</source>
        <translation>eine Wurzel erweist sich als ausgerissen</translation>
    </message>
    <message>
        <source>the deficit grows (any red flag comes before all else)</source>
        <translation>der Ausfall nimmt zu (jedes Alarmzeichen geht allem vor)</translation>
    </message>
    <message>
        <source>the red flag is dealt with</source>
        <translation>das Alarmzeichen ist behandelt</translation>
    </message>
    <message>
        <source>intercostal donor</source>
        <translation>Interkostalspender</translation>
    </message>
    <message>
        <source>distant donor</source>
        <translation>ferner Spender</translation>
    </message>
    <message>
        <source>near donor</source>
        <translation>naher Spender</translation>
    </message>
    <message>
        <source>%1 from one leg</source>
        <translation>%1 aus einem Bein</translation>
    </message>
    <message>
        <source>intact</source>
        <translation>intakt</translation>
    </message>
    <message>
        <source>partial</source>
        <translation>unvollständig</translation>
    </message>
    <message>
        <source>absent</source>
        <translation>aufgehoben</translation>
    </message>
    <message>
        <source>reduced</source>
        <translation>vermindert</translation>
    </message>
    <message>
        <source>denervated</source>
        <translation>denerviert</translation>
    </message>
    <message>
        <source>may be weak</source>
        <translation>vielleicht schwach</translation>
    </message>
    <message>
        <source>no sign</source>
        <translation>kein Zeichen</translation>
    </message>
    <message>
        <source>cut with the %1</source>
        <translation>durchtrennt mit: %1</translation>
    </message>
    <message>
        <source>cut with the %1; a second supply is whole</source>
        <translation>durchtrennt mit: %1; eine zweite Versorgung ist erhalten</translation>
    </message>
    <message>
        <source>%1 cut, another way is whole; the shares are unknown</source>
        <translation>%1 durchtrennt, ein anderer Weg ist erhalten; die Anteile sind unbekannt</translation>
    </message>
    <message>
        <source>%1 injured in part</source>
        <translation>%1 teilweise verletzt</translation>
    </message>
    <message>
        <source>conduction block of the %1, the axons are whole</source>
        <translation>Leitungsblock von %1, die Axone sind erhalten</translation>
    </message>
    <message>
        <source>its branch leaves the %1 about here</source>
        <translation>sein Ast verlässt %1 etwa hier</translation>
    </message>
    <message>
        <source>loses %1 of %2</source>
        <translation>verliert %1 von %2</translation>
    </message>
    <message>
        <source>%1; a second supply is whole</source>
        <translation>%1; eine zweite Versorgung ist erhalten</translation>
    </message>
    <message>
        <source>its second supply: %1</source>
        <translation>seine zweite Versorgung: %1</translation>
    </message>
    <message>
        <source>%1; in some limbs its branch comes another way</source>
        <translation>%1; an manchen Armen kommt sein Ast auf anderem Weg</translation>
    </message>
    <message>
        <source>%1 torn from the cord: sensory nerve action potentials of the skin stay although it is numb, and the paraspinal muscles of the level denervate</source>
        <translation>%1 aus dem Rückenmark ausgerissen: die sensiblen Nervenaktionspotenziale der Haut bleiben, obwohl sie taub ist, und die paraspinalen Muskeln des Niveaus denervieren</translation>
    </message>
    <message>
        <source>T1 torn from the cord: a Horner sign is to be expected</source>
        <translation>T1 aus dem Rückenmark ausgerissen: ein Horner-Zeichen ist zu erwarten</translation>
    </message>
    <message>
        <source>C4 and C5 carry axons of the phrenic nerve: look at the diaphragm</source>
        <translation>C4 und C5 führen Axone des N. phrenicus: das Zwerchfell ansehen</translation>
    </message>
    <message>
        <source>conduction block: the axons are whole and the muscles are not denervated, but they may not move at all until the block lifts</source>
        <translation>Leitungsblock: die Axone sind erhalten und die Muskeln nicht denerviert, sie bewegen sich aber vielleicht gar nicht, bis der Block sich löst</translation>
    </message>
    <message>
        <source>%1 is absent in this patient</source>
        <translation>%1 fehlt bei diesem Patienten</translation>
    </message>
    <message>
        <source>%1: no nerve of its own in this patient</source>
        <translation>%1: kein eigener Nerv bei diesem Patienten</translation>
    </message>
    <message>
        <source>%1: which muscles it reaches is assumed (%2)</source>
        <translation>%1: welche Muskeln sie erreicht, ist angenommen (%2)</translation>
    </message>
    <message>
        <source>%1: how much of it is hurt is not known; shown as if all of it were</source>
        <translation>%1: wie viel davon verletzt ist, ist nicht bekannt; gezeigt, als wäre es alles</translation>
    </message>
    <message>
        <source>%1: an inflammatory palsy often strikes several nerves or single fascicles; only the place given is shown</source>
        <translation>%1: eine entzündliche Parese trifft oft mehrere Nerven oder einzelne Faszikel; gezeigt ist nur der angegebene Ort</translation>
    </message>
    <message>
        <source>%1: taken to change no nerve supply, as no row of the tables says how</source>
        <translation>%1: es wird keine Änderung der Versorgung angenommen, da keine Zeile der Tabellen sagt, welche</translation>
    </message>
    <message>
        <source>no injury is given, so there is no deficit to tell</source>
        <translation>keine Verletzung ist angegeben, also ist kein Ausfall zu nennen</translation>
    </message>
    <message>
        <source>Name the injured nerve and where along it; a plexus injury is several injuries.</source>
        <translation>Den verletzten Nerv und den Ort daran nennen; eine Plexusverletzung sind mehrere Verletzungen.</translation>
    </message>
    <message>
        <source>a spinal cord lesion paralyses by segments of the cord and denervates only at its own level; the nerve tree cannot tell its deficit</source>
        <translation>eine Rückenmarksläsion lähmt nach Segmenten des Rückenmarks und denerviert nur auf ihrem Niveau; der Nervenbaum kann ihren Ausfall nicht nennen</translation>
    </message>
    <message>
        <source>Use the segmental examination of the cord. Which muscles still answer to stimulation is the finding that decides.</source>
        <translation>Die segmentale Untersuchung des Rückenmarks verwenden. Welche Muskeln noch auf Stimulation antworten, ist der entscheidende Befund.</translation>
    </message>
    <message>
        <source>where the %1 is injured is not given</source>
        <translation>wo %1 verletzt ist, ist nicht angegeben</translation>
    </message>
    <message>
        <source>Give the place: a landmark and an offset, a root, a trunk, a cord or a branch. The most proximal muscle that is weak tells it.</source>
        <translation>Den Ort angeben: Landmarke und Abstand, Wurzel, Truncus, Fasciculus oder Ast. Der proximalste schwache Muskel sagt ihn.</translation>
    </message>
    <message>
        <source>%1, torn from the cord</source>
        <translation>%1, aus dem Rückenmark ausgerissen</translation>
    </message>
    <message>
        <source>%1, beyond its ganglion</source>
        <translation>%1, distal des Ganglions</translation>
    </message>
    <message>
        <source>the %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>at the %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>at the level of the %1</source>
        <translation>auf Höhe von %1</translation>
    </message>
    <message>
        <source>%1 mm proximal to the %2</source>
        <translation>%1 mm proximal von %2</translation>
    </message>
    <message>
        <source>%1 mm distal to the %2</source>
        <translation>%1 mm distal von %2</translation>
    </message>
    <message>
        <source>%1 mm beyond the origin of the %2</source>
        <translation>%1 mm distal des Abgangs von %2</translation>
    </message>
    <message>
        <source>in the hand</source>
        <translation>an der Hand</translation>
    </message>
    <message>
        <source>lateral epicondyle</source>
        <translation>Epicondylus lateralis</translation>
    </message>
    <message>
        <source>medial epicondyle</source>
        <translation>Epicondylus medialis</translation>
    </message>
    <message>
        <source>distal wrist crease</source>
        <translation>distale Handgelenkbeugefalte</translation>
    </message>
    <message>
        <source>coracoid process tip</source>
        <translation>Spitze des Processus coracoideus</translation>
    </message>
    <message>
        <source>suprascapular notch</source>
        <translation>Incisura scapulae</translation>
    </message>
    <message>
        <source>stimulate the median nerve at the elbow and record first dorsal interosseous; compare ulnar stimulation above and below the crossing</source>
        <translation>N. medianus am Ellenbogen stimulieren und vom M. interosseus dorsalis I ableiten; die Ulnarisstimulation proximal und distal der Kreuzung vergleichen</translation>
    </message>
    <message>
        <source>stimulate the radial nerve and record first dorsal interosseous</source>
        <translation>N. radialis stimulieren und vom M. interosseus dorsalis I ableiten</translation>
    </message>
    <message>
        <source>stimulate the ulnar nerve at the elbow and record the thenar muscles</source>
        <translation>N. ulnaris am Ellenbogen stimulieren und von den Thenarmuskeln ableiten</translation>
    </message>
    <message>
        <source>stimulate the ulnar nerve at the wrist and record or feel abductor pollicis brevis</source>
        <translation>N. ulnaris am Handgelenk stimulieren und vom abductor pollicis brevis ableiten oder ihn tasten</translation>
    </message>
    <message>
        <source>block or stimulate the superficial radial nerve</source>
        <translation>den R. superficialis n. radialis blockieren oder stimulieren</translation>
    </message>
    <message>
        <source>compare two-point discrimination of the facing sides of middle and ring fingers with the other hand</source>
        <translation>Zweipunktdiskrimination der einander zugewandten Seiten von Mittel- und Ringfinger mit der anderen Hand vergleichen</translation>
    </message>
    <message>
        <source>MRI of the plexus; root stimulation at exploration</source>
        <translation>MRT des Plexus; Wurzelstimulation bei der Exploration</translation>
    </message>
    <message>
        <source>all-median hand</source>
        <translation>rein vom Medianus versorgte Hand</translation>
    </message>
    <message>
        <source>all-ulnar thenar eminence</source>
        <translation>rein vom Ulnaris versorgter Thenar</translation>
    </message>
    <message>
        <source>Tinel at the neck</source>
        <translation>Tinel am Hals</translation>
    </message>
    <message>
        <source>biceps reflex lost</source>
        <translation>Bizepsreflex erloschen</translation>
    </message>
    <message>
        <source>triceps reflex lost</source>
        <translation>Trizepsreflex erloschen</translation>
    </message>
    <message>
        <source>claw hand</source>
        <translation>Krallenhand</translation>
    </message>
    <message>
        <source>diaphragm palsy</source>
        <translation>Zwerchfellparese</translation>
    </message>
    <message>
        <source>pinch sign</source>
        <translation>Spitzgriffzeichen</translation>
    </message>
    <message>
        <source>scapular winging</source>
        <translation>Scapula alata</translation>
    </message>
    <message>
        <source>spasticity</source>
        <translation>Spastik</translation>
    </message>
    <message>
        <source>swallow-tail</source>
        <translation>Schwalbenschwanzzeichen</translation>
    </message>
    <message>
        <source>wrist drop</source>
        <translation>Fallhand</translation>
    </message>
    <message>
        <source>hornblower</source>
        <translation>Hornbläserzeichen</translation>
    </message>
    <message>
        <source>pseudomeningocele</source>
        <translation>Pseudomeningozele</translation>
    </message>
    <message>
        <source>Duchenne</source>
        <translation>Duchenne</translation>
    </message>
    <message>
        <source>Froment</source>
        <translation>Froment</translation>
    </message>
    <message>
        <source>Horner</source>
        <translation>Horner</translation>
    </message>
    <message>
        <source>Jeanne</source>
        <translation>Jeanne</translation>
    </message>
    <message>
        <source>Phalen</source>
        <translation>Phalen</translation>
    </message>
    <message>
        <source>Wartenberg</source>
        <translation>Wartenberg</translation>
    </message>
    <message>
        <source>Berrettini communication</source>
        <translation>Berrettini-Anastomose</translation>
    </message>
    <message>
        <source>Froment-Rauber nerve</source>
        <translation>Froment-Rauber-Nerv</translation>
    </message>
    <message>
        <source>Kaplan communication</source>
        <translation>Kaplan-Anastomose</translation>
    </message>
    <message>
        <source>Marinacci communication</source>
        <translation>Marinacci-Anastomose</translation>
    </message>
    <message>
        <source>Martin-Gruber communication</source>
        <translation>Martin-Gruber-Anastomose</translation>
    </message>
    <message>
        <source>Martin-Gruber communication from the anterior interosseous nerve</source>
        <translation>Martin-Gruber-Anastomose vom N. interosseus anterior</translation>
    </message>
    <message>
        <source>Riche-Cannieu communication</source>
        <translation>Riche-Cannieu-Anastomose</translation>
    </message>
    <message>
        <source>musculocutaneous to median communication</source>
        <translation>Anastomose vom N. musculocutaneus zum N. medianus</translation>
    </message>
    <message>
        <source>prefixed brachial plexus</source>
        <translation>präfixierter Plexus brachialis</translation>
    </message>
    <message>
        <source>postfixed brachial plexus</source>
        <translation>postfixierter Plexus brachialis</translation>
    </message>
    <message>
        <source>intercostobrachial link to the brachial plexus</source>
        <translation>Verbindung des N. intercostobrachialis zum Plexus brachialis</translation>
    </message>
    <message>
        <source>linked dorsal nerves of the hand</source>
        <translation>verbundene dorsale Handnerven</translation>
    </message>
    <message>
        <source>axillary share in the long head of triceps</source>
        <translation>Anteil des N. axillaris am Caput longum des Trizeps</translation>
    </message>
    <message>
        <source>long head felt on elbow extension in an axillary or radial lesion</source>
        <translation>Caput longum bei Ellenbogenstreckung tastbar bei Axillaris- oder Radialisläsion</translation>
    </message>
    <message>
        <source>median branch to brachialis</source>
        <translation>Medianusast zum brachialis</translation>
    </message>
    <message>
        <source>median twig to adductor pollicis</source>
        <translation>Medianuszweig zum adductor pollicis</translation>
    </message>
    <message>
        <source>middle fingertip flexion abolished with an anterior interosseous lesion</source>
        <translation>Beugung des Mittelfingerendglieds bei Interosseus-anterior-Läsion aufgehoben</translation>
    </message>
    <message>
        <source>thumb adduction kept with an ulnar lesion, without thumb-tip flexion</source>
        <translation>Daumenadduktion bei Ulnarisläsion erhalten, ohne Beugung des Daumenendglieds</translation>
    </message>
    <message>
        <source>palmar little-finger feeling kept with an ulnar canal lesion</source>
        <translation>palmares Kleinfingergefühl bei Läsion in der Loge de Guyon erhalten</translation>
    </message>
    <message>
        <source>lower subscapular nerve from the axillary nerve</source>
        <translation>N. subscapularis inferior aus dem N. axillaris</translation>
    </message>
    <message>
        <source>thoracodorsal nerve from the axillary nerve</source>
        <translation>N. thoracodorsalis aus dem N. axillaris</translation>
    </message>
    <message>
        <source>C4 root</source>
        <translation>Wurzel C4</translation>
    </message>
    <message>
        <source>C5 root</source>
        <translation>Wurzel C5</translation>
    </message>
    <message>
        <source>C6 root</source>
        <translation>Wurzel C6</translation>
    </message>
    <message>
        <source>C7 root</source>
        <translation>Wurzel C7</translation>
    </message>
    <message>
        <source>C8 root</source>
        <translation>Wurzel C8</translation>
    </message>
    <message>
        <source>T1 root</source>
        <translation>Wurzel T1</translation>
    </message>
    <message>
        <source>contralateral C7 root</source>
        <translation>Wurzel C7 der Gegenseite</translation>
    </message>
    <message>
        <source>abduction</source>
        <translation>Abduktion</translation>
    </message>
    <message>
        <source>elbow extension</source>
        <translation>Ellenbogenstreckung</translation>
    </message>
    <message>
        <source>elbow flexion</source>
        <translation>Ellenbogenbeugung</translation>
    </message>
    <message>
        <source>forearm pronation</source>
        <translation>Pronation des Unterarms</translation>
    </message>
    <message>
        <source>forearm supination</source>
        <translation>Supination des Unterarms</translation>
    </message>
    <message>
        <source>pronation</source>
        <translation>Pronation</translation>
    </message>
    <message>
        <source>supination</source>
        <translation>Supination</translation>
    </message>
    <message>
        <source>finger abduction</source>
        <translation>Fingerspreizen</translation>
    </message>
    <message>
        <source>finger adduction</source>
        <translation>Fingerschließen</translation>
    </message>
    <message>
        <source>finger extension</source>
        <translation>Fingerstreckung</translation>
    </message>
    <message>
        <source>finger extension at the knuckles</source>
        <translation>Fingerstreckung in den Grundgelenken</translation>
    </message>
    <message>
        <source>finger flexion</source>
        <translation>Fingerbeugung</translation>
    </message>
    <message>
        <source>finger flexion at the knuckles</source>
        <translation>Fingerbeugung in den Grundgelenken</translation>
    </message>
    <message>
        <source>finger flexion at the middle joints</source>
        <translation>Fingerbeugung in den Mittelgelenken</translation>
    </message>
    <message>
        <source>finger and thumb extension</source>
        <translation>Finger- und Daumenstreckung</translation>
    </message>
    <message>
        <source>index abduction</source>
        <translation>Abduktion des Zeigefingers</translation>
    </message>
    <message>
        <source>index abduction for pinch</source>
        <translation>Abduktion des Zeigefingers für den Spitzgriff</translation>
    </message>
    <message>
        <source>index and middle flexion</source>
        <translation>Beugung von Zeige- und Mittelfinger</translation>
    </message>
    <message>
        <source>ring and little flexion</source>
        <translation>Beugung von Ring- und Kleinfinger</translation>
    </message>
    <message>
        <source>thumb and index flexion</source>
        <translation>Beugung von Daumen und Zeigefinger</translation>
    </message>
    <message>
        <source>index tip flexion</source>
        <translation>Beugung des Zeigefingerendglieds</translation>
    </message>
    <message>
        <source>middle finger tip flexion</source>
        <translation>Beugung des Mittelfingerendglieds</translation>
    </message>
    <message>
        <source>ring finger tip flexion</source>
        <translation>Beugung des Ringfingerendglieds</translation>
    </message>
    <message>
        <source>little finger tip flexion</source>
        <translation>Beugung des Kleinfingerendglieds</translation>
    </message>
    <message>
        <source>thumb tip flexion</source>
        <translation>Beugung des Daumenendglieds</translation>
    </message>
    <message>
        <source>thumb knuckle flexion</source>
        <translation>Beugung des Daumengrundgelenks</translation>
    </message>
    <message>
        <source>independent index extension</source>
        <translation>selbständige Streckung des Zeigefingers</translation>
    </message>
    <message>
        <source>little finger abduction</source>
        <translation>Abspreizen des Kleinfingers</translation>
    </message>
    <message>
        <source>little finger opposition</source>
        <translation>Opposition des Kleinfingers</translation>
    </message>
    <message>
        <source>straightening the index and middle finger</source>
        <translation>Strecken von Zeige- und Mittelfinger</translation>
    </message>
    <message>
        <source>straightening the ring and little finger</source>
        <translation>Strecken von Ring- und Kleinfinger</translation>
    </message>
    <message>
        <source>thumb abduction</source>
        <translation>Daumenabduktion</translation>
    </message>
    <message>
        <source>thumb adduction</source>
        <translation>Daumenadduktion</translation>
    </message>
    <message>
        <source>thumb extension</source>
        <translation>Daumenstreckung</translation>
    </message>
    <message>
        <source>thumb extension at the knuckle</source>
        <translation>Daumenstreckung im Grundgelenk</translation>
    </message>
    <message>
        <source>thumb extension at the tip</source>
        <translation>Daumenstreckung im Endgelenk</translation>
    </message>
    <message>
        <source>thumb flexion</source>
        <translation>Daumenbeugung</translation>
    </message>
    <message>
        <source>thumb opposition</source>
        <translation>Daumenopposition</translation>
    </message>
    <message>
        <source>thumb palmar abduction</source>
        <translation>palmare Daumenabduktion</translation>
    </message>
    <message>
        <source>thumb radial abduction</source>
        <translation>radiale Daumenabduktion</translation>
    </message>
    <message>
        <source>wrist extension</source>
        <translation>Handgelenkstreckung</translation>
    </message>
    <message>
        <source>wrist extension without radial drift</source>
        <translation>Handgelenkstreckung ohne Radialabweichung</translation>
    </message>
    <message>
        <source>wrist flexion</source>
        <translation>Handgelenkbeugung</translation>
    </message>
    <message>
        <source>radial deviation</source>
        <translation>Radialabduktion</translation>
    </message>
    <message>
        <source>radial deviation of the wrist</source>
        <translation>Radialabduktion des Handgelenks</translation>
    </message>
    <message>
        <source>ulnar deviation of the wrist</source>
        <translation>Ulnarabduktion des Handgelenks</translation>
    </message>
    <message>
        <source>radio-ulnar balance of the wrist</source>
        <translation>radioulnare Balance des Handgelenks</translation>
    </message>
    <message>
        <source>wrist, finger and thumb extension</source>
        <translation>Streckung von Handgelenk, Fingern und Daumen</translation>
    </message>
    <message>
        <source>wrist, finger, thumb extension</source>
        <translation>Streckung von Handgelenk, Fingern, Daumen</translation>
    </message>
    <message>
        <source>scapular elevation and upward rotation</source>
        <translation>Hebung und Aufwärtsdrehung der Skapula</translation>
    </message>
    <message>
        <source>upward rotation of the scapula</source>
        <translation>Aufwärtsdrehung der Skapula</translation>
    </message>
    <message>
        <source>scapular protraction</source>
        <translation>Protraktion der Skapula</translation>
    </message>
    <message>
        <source>scapular retraction</source>
        <translation>Retraktion der Skapula</translation>
    </message>
    <message>
        <source>scapular stability</source>
        <translation>Stabilität der Skapula</translation>
    </message>
    <message>
        <source>scapular stability and arm elevation</source>
        <translation>Stabilität der Skapula und Armhebung</translation>
    </message>
    <message>
        <source>shoulder girdle elevation</source>
        <translation>Hebung des Schultergürtels</translation>
    </message>
    <message>
        <source>shoulder abduction</source>
        <translation>Schulterabduktion</translation>
    </message>
    <message>
        <source>shoulder abduction and external rotation</source>
        <translation>Schulterabduktion und Außenrotation</translation>
    </message>
    <message>
        <source>shoulder adduction</source>
        <translation>Schulteradduktion</translation>
    </message>
    <message>
        <source>shoulder extension</source>
        <translation>Schulterretroversion</translation>
    </message>
    <message>
        <source>shoulder flexion</source>
        <translation>Schulteranteversion</translation>
    </message>
    <message>
        <source>shoulder external rotation</source>
        <translation>Außenrotation der Schulter</translation>
    </message>
    <message>
        <source>shoulder internal rotation</source>
        <translation>Innenrotation der Schulter</translation>
    </message>
    <message>
        <source>outward rotation of shoulder</source>
        <translation>Außenrotation der Schulter</translation>
    </message>
    <message>
        <source>outward rotation and abduction of shoulder</source>
        <translation>Außenrotation und Abduktion der Schulter</translation>
    </message>
    <message>
        <source>shoulder stability and abduction</source>
        <translation>Stabilität und Abduktion der Schulter</translation>
    </message>
    <message>
        <source>start of shoulder abduction</source>
        <translation>Beginn der Schulterabduktion</translation>
    </message>
    <message>
        <source>external rotation</source>
        <translation>Außenrotation</translation>
    </message>
    <message>
        <source>internal rotation</source>
        <translation>Innenrotation</translation>
    </message>
    <message>
        <source>hyperextension</source>
        <translation>Überstreckung</translation>
    </message>
    <message>
        <source>claw correction</source>
        <translation>Krallenkorrektur</translation>
    </message>
    <message>
        <source>claw correction and grip</source>
        <translation>Krallenkorrektur und Griff</translation>
    </message>
    <message>
        <source>claw correction, opening</source>
        <translation>Krallenkorrektur, Öffnen</translation>
    </message>
    <message>
        <source>critical pinch sensation</source>
        <translation>entscheidendes Gefühl für den Spitzgriff</translation>
    </message>
    <message>
        <source>dorsoradial sensation</source>
        <translation>Gefühl dorsoradial</translation>
    </message>
    <message>
        <source>grasp</source>
        <translation>Greifen</translation>
    </message>
    <message>
        <source>grasp, pinch</source>
        <translation>Greifen, Spitzgriff</translation>
    </message>
    <message>
        <source>grasp, protective sensation</source>
        <translation>Greifen, Schutzgefühl</translation>
    </message>
    <message>
        <source>key pinch</source>
        <translation>Schlüsselgriff</translation>
    </message>
    <message>
        <source>pinch</source>
        <translation>Spitzgriff</translation>
    </message>
    <message>
        <source>pinch, anti-claw</source>
        <translation>Spitzgriff, gegen die Kralle</translation>
    </message>
    <message>
        <source>intrinsic function</source>
        <translation>Funktion der Binnenmuskeln</translation>
    </message>
    <message>
        <source>protective sensation</source>
        <translation>Schutzgefühl</translation>
    </message>
    <message>
        <source>protective sensation of ulnar border</source>
        <translation>Schutzgefühl der Ulnarkante</translation>
    </message>
    <message>
        <source>protective dorsoradial sensation</source>
        <translation>Schutzgefühl dorsoradial</translation>
    </message>
    <message>
        <source>protective pinch sensation</source>
        <translation>Schutzgefühl für den Spitzgriff</translation>
    </message>
    <message>
        <source>protective ulnar sensation</source>
        <translation>Schutzgefühl ulnar</translation>
    </message>
    <message>
        <source>sensation of the hand</source>
        <translation>Gefühl der Hand</translation>
    </message>
    <message>
        <source>skin of the hand</source>
        <translation>Haut der Hand</translation>
    </message>
    <message>
        <source>supports a regenerating or compressed ulnar nerve</source>
        <translation>stützt einen regenerierenden oder komprimierten N. ulnaris</translation>
    </message>
    <message>
        <source>ulnar intrinsics</source>
        <translation>ulnare Binnenmuskeln</translation>
    </message>
    <message>
        <source>scapula</source>
        <translation>Skapula</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>Schulter</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>Ellenbogen</translation>
    </message>
    <message>
        <source>wrist</source>
        <translation>Handgelenk</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>forearm</source>
        <translation>Unterarm</translation>
    </message>
    <message>
        <source>upper arm</source>
        <translation>Oberarm</translation>
    </message>
    <message>
        <source>0 is beside the palm</source>
        <translation>0 ist neben der Handfläche</translation>
    </message>
    <message>
        <source>0 is full supination, the anatomical position</source>
        <translation>0 ist volle Supination, die anatomische Stellung</translation>
    </message>
    <message>
        <source>0 is straight</source>
        <translation>0 ist gestreckt</translation>
    </message>
    <message>
        <source>0 is straight; of the knuckles, the other joints follow in proportion</source>
        <translation>0 ist gestreckt; Grundgelenke, die übrigen Gelenke folgen im Verhältnis</translation>
    </message>
    <message>
        <source>0 is the anatomical position, negative is %1</source>
        <translation>0 ist die anatomische Stellung, negativ ist %1</translation>
    </message>
    <message>
        <source>0 is the arm at the side</source>
        <translation>0 ist der Arm an der Seite</translation>
    </message>
    <message>
        <source>anconeus, weakly; gravity imitates it</source>
        <translation>anconeus, schwach; die Schwerkraft täuscht es vor</translation>
    </message>
    <message>
        <source>brachioradialis as far as mid-rotation</source>
        <translation>brachioradialis bis zur Mittelstellung</translation>
    </message>
    <message>
        <source>brachioradialis with the forearm in mid-rotation, the radial part of brachialis where present, pronator teres and the long wrist extensor from the epicondyles</source>
        <translation>brachioradialis bei Mittelstellung des Unterarms, der radiale Anteil des brachialis, wo vorhanden, pronator teres und der lange Handgelenkstrecker von den Epicondylen aus</translation>
    </message>
    <message>
        <source>finger and thumb extensors with the fingers straight; letting the fingers go after a fist imitates it</source>
        <translation>Finger- und Daumenstrecker bei gestreckten Fingern; das Loslassen nach der Faust täuscht es vor</translation>
    </message>
    <message>
        <source>finger flexors with a closing fist, and the long thumb abductor</source>
        <translation>Fingerbeuger bei Faustschluss und der lange Daumenabduktor</translation>
    </message>
    <message>
        <source>imitated by the deep head of the short flexor, or by the long abductor with the long flexor sweeping over the palm</source>
        <translation>vorgetäuscht durch den tiefen Kopf des kurzen Beugers oder durch den langen Abduktor, wobei der lange Beuger über die Hohlhand streicht</translation>
    </message>
    <message>
        <source>index and little fingers alone have their own extensors; bending the wrist imitates it</source>
        <translation>nur Zeige- und Kleinfinger haben eigene Strecker; Handgelenkbeugung täuscht es vor</translation>
    </message>
    <message>
        <source>latissimus dorsi and teres major</source>
        <translation>latissimus dorsi und teres major</translation>
    </message>
    <message>
        <source>pectoralis major, latissimus and teres major</source>
        <translation>pectoralis major, latissimus und teres major</translation>
    </message>
    <message>
        <source>pectoralis minor draws the scapula forward without holding it to the chest</source>
        <translation>pectoralis minor zieht die Skapula nach vorn, ohne sie am Thorax zu halten</translation>
    </message>
    <message>
        <source>pinch with a bent thumb tip (Froment), or drawing back with the long extensor</source>
        <translation>Griff mit gebeugtem Daumenendglied (Froment) oder Zurückziehen mit dem langen Strecker</translation>
    </message>
    <message>
        <source>posterior deltoid, with the arm held back</source>
        <translation>hinterer Deltoideus bei zurückgehaltenem Arm</translation>
    </message>
    <message>
        <source>radial wrist flexor, and brachioradialis as far as mid-rotation</source>
        <translation>radialer Handgelenkbeuger und brachioradialis bis zur Mittelstellung</translation>
    </message>
    <message>
        <source>short extensor, and the short abductor out of the palm</source>
        <translation>kurzer Strecker und der kurze Abduktor aus der Hohlhand heraus</translation>
    </message>
    <message>
        <source>supraspinatus with the rest of the cuff may lift the arm past horizontal; it tires, and lags in inward rotation</source>
        <translation>supraspinatus mit der übrigen Rotatorenmanschette kann den Arm über die Horizontale heben; er ermüdet und bleibt in Innenrotation zurück</translation>
    </message>
    <message>
        <source>the clavicular head, coracobrachialis and the long head</source>
        <translation>der klavikuläre Kopf, coracobrachialis und der lange Kopf</translation>
    </message>
    <message>
        <source>the deep flexors bend the middle joints on their way to the tip</source>
        <translation>die tiefen Beuger beugen die Mittelgelenke auf dem Weg zum Endglied</translation>
    </message>
    <message>
        <source>the extensors spread the fingers while they straighten them</source>
        <translation>die Strecker spreizen die Finger, während sie sie strecken</translation>
    </message>
    <message>
        <source>the extensors spread the fingers while they straighten them; test flat on the table</source>
        <translation>die Strecker spreizen die Finger, während sie sie strecken; flach auf dem Tisch prüfen</translation>
    </message>
    <message>
        <source>the little-finger extensor holds it out (Wartenberg)</source>
        <translation>der Kleinfingerstrecker hält ihn ab (Wartenberg)</translation>
    </message>
    <message>
        <source>the long abductor, in the plane of the palm rather than out of it</source>
        <translation>der lange Abduktor, in der Ebene der Hohlhand statt aus ihr heraus</translation>
    </message>
    <message>
        <source>the long extensor</source>
        <translation>der lange Strecker</translation>
    </message>
    <message>
        <source>the long extensors, only while the knuckles are kept from overextending (claw)</source>
        <translation>die langen Strecker, nur solange die Grundgelenke an der Überstreckung gehindert werden (Kralle)</translation>
    </message>
    <message>
        <source>the long extensors, where the knuckles do not overextend</source>
        <translation>die langen Strecker, wo die Grundgelenke nicht überstrecken</translation>
    </message>
    <message>
        <source>the long flexor and the adductor</source>
        <translation>der lange Beuger und der Adduktor</translation>
    </message>
    <message>
        <source>the long flexors draw the fingers together while they bend them</source>
        <translation>die langen Beuger schließen die Finger, während sie sie beugen</translation>
    </message>
    <message>
        <source>the long flexors, after the finger has rolled in from the tip</source>
        <translation>die langen Beuger, nachdem sich der Finger vom Endglied her eingerollt hat</translation>
    </message>
    <message>
        <source>the long thumb abductor and short extensor</source>
        <translation>der lange Daumenabduktor und der kurze Strecker</translation>
    </message>
    <message>
        <source>the middle deltoid starts the movement itself or after a sideways lean</source>
        <translation>der mittlere Deltoideus beginnt die Bewegung selbst oder nach Seitneigung</translation>
    </message>
    <message>
        <source>the short flexor raises the edge a little</source>
        <translation>der kurze Beuger hebt den Rand ein wenig</translation>
    </message>
    <message>
        <source>thenar muscles pull on the extensor hood and straighten the tip, without lifting the thumb off the table</source>
        <translation>die Thenarmuskeln ziehen an der Streckerhaube und strecken das Endglied, ohne den Daumen vom Tisch zu heben</translation>
    </message>
    <message>
        <source>skin: %1</source>
        <translation>Haut: %1</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes, %1</source>
        <translation>ja, %1</translation>
    </message>
    <message>
        <source>axilla and upper medial arm</source>
        <translation>Axilla und oberer medialer Oberarm</translation>
    </message>
    <message>
        <source>distal palm lateral two thirds</source>
        <translation>distale Hohlhand, laterale zwei Drittel</translation>
    </message>
    <message>
        <source>dorsal index and middle facing sides</source>
        <translation>dorsal, zugewandte Seiten von Zeige- und Mittelfinger</translation>
    </message>
    <message>
        <source>dorsal index proximal</source>
        <translation>Zeigefinger dorsal proximal</translation>
    </message>
    <message>
        <source>dorsal little and ring facing sides</source>
        <translation>dorsal, zugewandte Seiten von Klein- und Ringfinger</translation>
    </message>
    <message>
        <source>dorsal little finger ulnar side</source>
        <translation>Kleinfinger dorsal, Ulnarseite</translation>
    </message>
    <message>
        <source>dorsal middle and ring facing sides</source>
        <translation>dorsal, zugewandte Seiten von Mittel- und Ringfinger</translation>
    </message>
    <message>
        <source>dorsal thumb radial side</source>
        <translation>Daumen dorsal, Radialseite</translation>
    </message>
    <message>
        <source>dorsal thumb ulnar side</source>
        <translation>Daumen dorsal, Ulnarseite</translation>
    </message>
    <message>
        <source>dorsum of hand radial half</source>
        <translation>Handrücken, radiale Hälfte</translation>
    </message>
    <message>
        <source>dorsum of hand ulnar half</source>
        <translation>Handrücken, ulnare Hälfte</translation>
    </message>
    <message>
        <source>dorsum of hand all radial</source>
        <translation>ganzer Handrücken vom Radialis</translation>
    </message>
    <message>
        <source>first dorsal web space</source>
        <translation>erste Zwischenfingerfalte dorsal</translation>
    </message>
    <message>
        <source>index nail bed and dorsal distal phalanx</source>
        <translation>Nagelbett und dorsales Endglied des Zeigefingers</translation>
    </message>
    <message>
        <source>index radial pulp</source>
        <translation>Zeigefingerkuppe radial</translation>
    </message>
    <message>
        <source>index ulnar pulp</source>
        <translation>Zeigefingerkuppe ulnar</translation>
    </message>
    <message>
        <source>lateral forearm anterior</source>
        <translation>lateraler Unterarm vorn</translation>
    </message>
    <message>
        <source>lateral forearm posterior</source>
        <translation>lateraler Unterarm hinten</translation>
    </message>
    <message>
        <source>lateral shoulder patch</source>
        <translation>Areal der seitlichen Schulter</translation>
    </message>
    <message>
        <source>little nail bed</source>
        <translation>Nagelbett des Kleinfingers</translation>
    </message>
    <message>
        <source>little radial pulp</source>
        <translation>Kleinfingerkuppe radial</translation>
    </message>
    <message>
        <source>little ulnar pulp</source>
        <translation>Kleinfingerkuppe ulnar</translation>
    </message>
    <message>
        <source>lower lateral arm</source>
        <translation>unterer lateraler Oberarm</translation>
    </message>
    <message>
        <source>lower medial arm</source>
        <translation>unterer medialer Oberarm</translation>
    </message>
    <message>
        <source>medial forearm anterior</source>
        <translation>medialer Unterarm vorn</translation>
    </message>
    <message>
        <source>medial forearm posterior</source>
        <translation>medialer Unterarm hinten</translation>
    </message>
    <message>
        <source>middle nail bed and dorsal distal phalanges</source>
        <translation>Nagelbett und dorsale Endglieder des Mittelfingers</translation>
    </message>
    <message>
        <source>middle radial pulp</source>
        <translation>Mittelfingerkuppe radial</translation>
    </message>
    <message>
        <source>middle ulnar pulp</source>
        <translation>Mittelfingerkuppe ulnar</translation>
    </message>
    <message>
        <source>palm medial third</source>
        <translation>Hohlhand, mediales Drittel</translation>
    </message>
    <message>
        <source>posterior arm</source>
        <translation>Oberarm hinten</translation>
    </message>
    <message>
        <source>posterior forearm</source>
        <translation>Unterarm hinten</translation>
    </message>
    <message>
        <source>ring nail bed radial half</source>
        <translation>Nagelbett des Ringfingers, radiale Hälfte</translation>
    </message>
    <message>
        <source>ring nail bed ulnar half</source>
        <translation>Nagelbett des Ringfingers, ulnare Hälfte</translation>
    </message>
    <message>
        <source>ring radial pulp</source>
        <translation>Ringfingerkuppe radial</translation>
    </message>
    <message>
        <source>ring ulnar pulp</source>
        <translation>Ringfingerkuppe ulnar</translation>
    </message>
    <message>
        <source>shoulder cap and upper chest</source>
        <translation>Schulterkappe und obere Brust</translation>
    </message>
    <message>
        <source>skin over biceps</source>
        <translation>Haut über dem Bizeps</translation>
    </message>
    <message>
        <source>thenar and proximal palm</source>
        <translation>Thenar und proximale Hohlhand</translation>
    </message>
    <message>
        <source>thenar base strip</source>
        <translation>Streifen an der Thenarbasis</translation>
    </message>
    <message>
        <source>thumb nail bed</source>
        <translation>Nagelbett des Daumens</translation>
    </message>
    <message>
        <source>thumb radial pulp</source>
        <translation>Daumenkuppe radial</translation>
    </message>
    <message>
        <source>thumb ulnar pulp</source>
        <translation>Daumenkuppe ulnar</translation>
    </message>
    <message>
        <source>small patch over the lower deltoid</source>
        <translation>kleines Areal über dem unteren Deltoideus</translation>
    </message>
    <message>
        <source>strip on the medial forearm (extent recalled)</source>
        <translation>Streifen am medialen Unterarm (Ausdehnung erinnert)</translation>
    </message>
    <message>
        <source>strip on the lateral mid-forearm (extent recalled)</source>
        <translation>Streifen am lateralen mittleren Unterarm (Ausdehnung erinnert)</translation>
    </message>
    <message>
        <source>skin of the first dorsal web</source>
        <translation>Haut der ersten Zwischenfingerfalte dorsal</translation>
    </message>
    <message>
        <source>radial tip of the index</source>
        <translation>radiale Zeigefingerspitze</translation>
    </message>
    <message>
        <source>index tip (recalled)</source>
        <translation>Zeigefingerspitze (erinnert)</translation>
    </message>
    <message>
        <source>distal phalanx of the little finger</source>
        <translation>Endglied des Kleinfingers</translation>
    </message>
    <message>
        <source>suprascapular cutaneous branch</source>
        <translation>Hautast des N. suprascapularis</translation>
    </message>
    <message>
        <source>index</source>
        <translation>Zeigefinger</translation>
    </message>
    <message>
        <source>middle finger</source>
        <translation>Mittelfinger</translation>
    </message>
    <message>
        <source>ring finger</source>
        <translation>Ringfinger</translation>
    </message>
    <message>
        <source>little finger</source>
        <translation>Kleinfinger</translation>
    </message>
    <message>
        <source>middle finger radial side</source>
        <translation>Mittelfinger, Radialseite</translation>
    </message>
    <message>
        <source>middle finger ulnar side</source>
        <translation>Mittelfinger, Ulnarseite</translation>
    </message>
    <message>
        <source>acromial (middle)</source>
        <translation>Pars acromialis (Mitte)</translation>
    </message>
    <message>
        <source>clavicular (anterior)</source>
        <translation>Pars clavicularis (vorn)</translation>
    </message>
    <message>
        <source>spinal (posterior)</source>
        <translation>Pars spinalis (hinten)</translation>
    </message>
    <message>
        <source>ascending (lower)</source>
        <translation>Pars ascendens (unten)</translation>
    </message>
    <message>
        <source>descending (upper)</source>
        <translation>Pars descendens (oben)</translation>
    </message>
    <message>
        <source>transverse (middle)</source>
        <translation>Pars transversa (Mitte)</translation>
    </message>
    <message>
        <source>clavicular head</source>
        <translation>Caput claviculare</translation>
    </message>
    <message>
        <source>sternocostal head</source>
        <translation>Caput sternocostale</translation>
    </message>
    <message>
        <source>long head</source>
        <translation>Caput longum</translation>
    </message>
    <message>
        <source>short head</source>
        <translation>Caput breve</translation>
    </message>
    <message>
        <source>lateral head</source>
        <translation>Caput laterale</translation>
    </message>
    <message>
        <source>medial head</source>
        <translation>Caput mediale</translation>
    </message>
    <message>
        <source>deep head</source>
        <translation>Caput profundum</translation>
    </message>
    <message>
        <source>superficial head</source>
        <translation>Caput superficiale</translation>
    </message>
    <message>
        <source>oblique head</source>
        <translation>Caput obliquum</translation>
    </message>
    <message>
        <source>transverse head</source>
        <translation>Caput transversum</translation>
    </message>
    <message>
        <source>main part</source>
        <translation>Hauptteil</translation>
    </message>
    <message>
        <source>inferolateral part</source>
        <translation>inferolateraler Teil</translation>
    </message>
    <message>
        <source>upper part</source>
        <translation>oberer Teil</translation>
    </message>
    <message>
        <source>lower part</source>
        <translation>unterer Teil</translation>
    </message>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>%1 is not lost</source>
        <translation>%1: nicht ausgefallen</translation>
    </message>
    <message>
        <source>%1 was not examined</source>
        <translation>%1: nicht untersucht</translation>
    </message>
    <message>
        <source>%1 examined M{2}</source>
        <translation>%1 untersucht: M{2}</translation>
    </message>
    <message>
        <source>%1: M4 or better is asked for</source>
        <translation>%1: verlangt ist M4 oder besser</translation>
    </message>
    <message>
        <source>%1: a donor of M4 or better is asked for</source>
        <translation>%1: verlangt ist ein Spender von M4 oder besser</translation>
    </message>
    <message>
        <source>%1: the superficialis of a finger is given only when its deep flexor is shown to be strong</source>
        <translation>%1: der Superficialis eines Fingers wird nur abgegeben, wenn sein tiefer Beuger nachweislich kräftig ist</translation>
    </message>
    <message>
        <source>%1 is not available in this case</source>
        <translation>%1 steht in diesem Fall nicht zur Verfügung</translation>
    </message>
    <message>
        <source>%1 is absent</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>this injury paralyses %1</source>
        <translation>diese Verletzung lähmt: %1</translation>
    </message>
    <message>
        <source>this injury numbs the %1</source>
        <translation>diese Verletzung macht taub: %1</translation>
    </message>
    <message>
        <source>%1 was not shown to work by EMG or stimulation</source>
        <translation>%1: durch EMG oder Stimulation wurde nicht gezeigt, dass er arbeitet</translation>
    </message>
    <message>
        <source>%1 works on EMG or stimulation</source>
        <translation>%1 arbeitet im EMG oder auf Stimulation</translation>
    </message>
    <message>
        <source>%1 not normal on EMG or stimulation</source>
        <translation>%1 im EMG oder auf Stimulation nicht unauffällig</translation>
    </message>
    <message>
        <source>%1 fibrillates on EMG</source>
        <translation>%1 fibrilliert im EMG</translation>
    </message>
    <message>
        <source>%1 did not answer to stimulation</source>
        <translation>%1 antwortete nicht auf Stimulation</translation>
    </message>
    <message>
        <source>%1 still works and would be cut with the %2</source>
        <translation>%1 arbeitet noch und würde mit durchtrennt: %2</translation>
    </message>
    <message>
        <source>the whole %1 would be cut</source>
        <translation>durchtrennt würde ganz: %1</translation>
    </message>
    <message>
        <source>the injury lies on the %1 itself, where it would be sewn, or beyond</source>
        <translation>die Verletzung liegt auf %1 selbst, wo genäht würde, oder distal davon</translation>
    </message>
    <message>
        <source>sewn to the %1 beyond what works: %2</source>
        <translation>genäht an %1 distal von dem, was arbeitet: %2</translation>
    </message>
    <message>
        <source>no function of the tables</source>
        <translation>keine Funktion der Tabellen</translation>
    </message>
    <message>
        <source>none of what it feeds is known to be lost</source>
        <translation>von dem, was er versorgt, ist nichts als ausgefallen bekannt</translation>
    </message>
    <message>
        <source>nothing in the case file judges the donor</source>
        <translation>nichts in der Falldatei beurteilt den Spender</translation>
    </message>
    <message>
        <source>the diaphragm of this side is paralysed</source>
        <translation>das Zwerchfell dieser Seite ist gelähmt</translation>
    </message>
    <message>
        <source>the patient is a child</source>
        <translation>der Patient ist ein Kind</translation>
    </message>
    <message>
        <source>not published: geometry only</source>
        <translation>nicht veröffentlicht: nur Geometrie</translation>
    </message>
    <message>
        <source>for another palsy: %1</source>
        <translation>für eine andere Parese: %1</translation>
    </message>
    <message>
        <source>needs: %1</source>
        <translation>braucht: %1</translation>
    </message>
    <message>
        <source>when: %1</source>
        <translation>wann: %1</translation>
    </message>
    <message>
        <source>asked for: %1</source>
        <translation>verlangt: %1</translation>
    </message>
    <message>
        <source>not together with %1: %2</source>
        <translation>nicht zusammen mit %1: %2</translation>
    </message>
    <message>
        <source>breaks the rule %1 by itself</source>
        <translation>bricht für sich allein die Regel %1</translation>
    </message>
    <message>
        <source>would break the rule %1</source>
        <translation>bräche die Regel %1</translation>
    </message>
    <message>
        <source>its donor %1 is used</source>
        <translation>sein Spender %1 ist verwendet</translation>
    </message>
    <message>
        <source>%1 already receives</source>
        <translation>%1 empfängt schon</translation>
    </message>
    <message>
        <source>%1 has what it needs</source>
        <translation>%1 hat, was es braucht</translation>
    </message>
    <message>
        <source>%1 would stay without, even with it</source>
        <translation>%1 bliebe auch damit ohne</translation>
    </message>
    <message>
        <source>restores nothing that is asked for</source>
        <translation>stellt nichts wieder her, was verlangt ist</translation>
    </message>
    <message>
        <source>not to be done together: %1</source>
        <translation>nicht zusammen auszuführen: %1</translation>
    </message>
    <message>
        <source>published for %1</source>
        <translation>veröffentlicht für %1</translation>
    </message>
    <message>
        <source>and for %1</source>
        <translation>und für %1</translation>
    </message>
    <message>
        <source>lesions at or above the elbow: here the lesion lies about where the coaptation would</source>
        <translation>Läsionen am oder oberhalb des Ellenbogens: hier liegt die Läsion etwa dort, wo die Koaptation läge</translation>
    </message>
    <message>
        <source>severe compression of the ulnar nerve at the elbow, beside its decompression</source>
        <translation>schwere Kompression des N. ulnaris am Ellenbogen, neben seiner Dekompression</translation>
    </message>
    <message>
        <source>an ulnar lesion in continuity from which axons may still come</source>
        <translation>eine Ulnarisläsion in Kontinuität, aus der noch Axone kommen können</translation>
    </message>
    <message>
        <source>the complete plexus lesion only</source>
        <translation>nur die vollständige Plexusläsion</translation>
    </message>
    <message>
        <source>a lesion of the %1 above the branch to %2</source>
        <translation>eine Läsion von %1 oberhalb des Astes zu %2</translation>
    </message>
    <message>
        <source>a nerve that may still recover or is repaired, and that does not recover by itself</source>
        <translation>einen Nerv, der sich noch erholen kann oder rekonstruiert ist und der sich nicht von selbst erholt</translation>
    </message>
    <message>
        <source>a recipient through which axons may still come, by an incomplete lesion, signs of recovery or a repair</source>
        <translation>ein Empfänger, durch den noch Axone kommen können, bei unvollständiger Läsion, Zeichen der Erholung oder Naht</translation>
    </message>
    <message>
        <source>no repair of the %1 is done or planned in this case</source>
        <translation>in diesem Fall ist keine Naht von %1 durchgeführt oder geplant</translation>
    </message>
    <message>
        <source>whether axons may still come is not known</source>
        <translation>ob noch Axone kommen können, ist nicht bekannt</translation>
    </message>
    <message>
        <source>another head of triceps keeps the elbow straightening</source>
        <translation>ein anderer Trizepskopf erhält die Ellenbogenstreckung</translation>
    </message>
    <message>
        <source>biceps keeps the elbow flexion</source>
        <translation>der Bizeps erhält die Ellenbogenbeugung</translation>
    </message>
    <message>
        <source>biceps keeps the supination</source>
        <translation>der Bizeps erhält die Supination</translation>
    </message>
    <message>
        <source>flexor carpi ulnaris keeps the wrist flexion</source>
        <translation>der flexor carpi ulnaris erhält die Handgelenkbeugung</translation>
    </message>
    <message>
        <source>no radial wrist extensor works</source>
        <translation>kein radialer Handgelenkstrecker arbeitet</translation>
    </message>
    <message>
        <source>the deep flexor of every finger is strong</source>
        <translation>der tiefe Beuger jedes Fingers ist kräftig</translation>
    </message>
    <message>
        <source>the other radial wrist extensor keeps the wrist up</source>
        <translation>der andere radiale Handgelenkstrecker hält das Handgelenk oben</translation>
    </message>
    <message>
        <source>reach is not computed here: whether donor and recipient meet without a graft is measured on the patient</source>
        <translation>die Reichweite wird hier nicht berechnet: ob Spender und Empfänger ohne Transplantat zusammenkommen, wird am Patienten gemessen</translation>
    </message>
    <message>
        <source>reach not computable: %1</source>
        <translation>Reichweite nicht berechenbar: %1</translation>
    </message>
    <message>
        <source>the model has no place for the %1: neither it nor a nerve that it hangs on is drawn there</source>
        <translation>das Modell hat keinen Ort für %1: weder er noch ein Nerv, an dem er hängt, ist dort gezeichnet</translation>
    </message>
    <message>
        <source>reaches without a graft in %1 of 100 limbs</source>
        <translation>reicht ohne Transplantat an %1 von 100 Armen</translation>
    </message>
    <message>
        <source>a graft of %1 mm (%2 to %3) would be needed</source>
        <translation>nötig wäre ein Transplantat von %1 mm (%2 bis %3)</translation>
    </message>
    <message>
        <source>does not reach, and the graft would be too long</source>
        <translation>reicht nicht, und das Transplantat wäre zu lang</translation>
    </message>
    <message>
        <source>on the model %1 mm are missing, though it was published without a graft: measure before you cut</source>
        <translation>am Modell fehlen %1 mm, obwohl es ohne Transplantat veröffentlicht wurde: messen, bevor geschnitten wird</translation>
    </message>
    <message>
        <source>%1 months after the injury</source>
        <translation>%1 Monate nach der Verletzung</translation>
    </message>
    <message>
        <source>%1 months after the injury a nerve seldom gives a useful muscle</source>
        <translation>%1 Monate nach der Verletzung bringt ein Nerv selten einen brauchbaren Muskel</translation>
    </message>
    <message>
        <source>later than any in the series (%1 months)</source>
        <translation>später als alle der Serie (%1 Monate)</translation>
    </message>
    <message>
        <source>longest delay in the series %1 months</source>
        <translation>längste Verzögerung der Serie %1 Monate</translation>
    </message>
    <message>
        <source>the date of the injury is not given</source>
        <translation>das Datum der Verletzung ist nicht angegeben</translation>
    </message>
    <message>
        <source>age %1 years</source>
        <translation>Alter %1 Jahre</translation>
    </message>
    <message>
        <source>both counted in {1}; no spread printed</source>
        <translation>beide gezählt in {1}; keine Streuung gedruckt</translation>
    </message>
    <message>
        <source>both counted in {1}; 90 % range between people</source>
        <translation>beide gezählt in {1}; 90-%-Bereich zwischen Menschen</translation>
    </message>
    <message>
        <source>across studies: other people, other methods</source>
        <translation>über Studien hinweg: andere Menschen, andere Methoden</translation>
    </message>
    <message>
        <source>the donor works together with the wanted movement: relearned readily</source>
        <translation>der Spender arbeitet mit der gewünschten Bewegung zusammen: leicht umzulernen</translation>
    </message>
    <message>
        <source>the donor has no part in the wanted movement: to be relearned by training</source>
        <translation>der Spender hat keinen Anteil an der gewünschten Bewegung: durch Training umzulernen</translation>
    </message>
    <message>
        <source>the donor works against the function and must be retrained</source>
        <translation>der Spender arbeitet gegen die Funktion und muss umtrainiert werden</translation>
    </message>
    <message>
        <source>the own work of %1</source>
        <translation>Eigenfunktion: %1</translation>
    </message>
    <message>
        <source>the muscle and its donor nerve lie outside what a case file tells</source>
        <translation>Muskel und Spendernerv liegen außerhalb dessen, was eine Falldatei sagt</translation>
    </message>
    <message>
        <source>the published results and the days on which axons arrive are those of adults after an injury; this case is another kind of palsy, for which they are no guide</source>
        <translation>die veröffentlichten Ergebnisse und die Tage, an denen Axone ankommen, sind die von Erwachsenen nach einer Verletzung; dieser Fall ist eine andere Art von Parese, für die sie kein Anhalt sind</translation>
    </message>
    <message>
        <source>intercostal nerves are not graded: ask for rib fractures, chest drains, lung and diaphragm</source>
        <translation>Interkostalnerven werden nicht eingestuft: nach Rippenfrakturen, Thoraxdrainagen, Lunge und Zwerchfell fragen</translation>
    </message>
    <message>
        <source>the diaphragm of both sides and the lung must be tested</source>
        <translation>das Zwerchfell beider Seiten und die Lunge müssen geprüft werden</translation>
    </message>
    <message>
        <source>the sound side is not examined in a case file</source>
        <translation>die gesunde Seite wird in einer Falldatei nicht untersucht</translation>
    </message>
    <message>
        <source>the skin of the axilla is not in the model</source>
        <translation>die Haut der Axilla ist nicht im Modell</translation>
    </message>
    <message>
        <source>intercostals to both elbow movers: the same worry of contraction together; no series opened</source>
        <translation>Interkostalnerven auf beide Ellenbogenbeweger: dieselbe Sorge der Kokontraktion; keine Serie geöffnet</translation>
    </message>
    <message>
        <source>both fire with breathing, so flexors and extensors of the elbow contract together: none of 7 reached M3 elbow extension (M0 1, M1 3, M2 3)</source>
        <translation>beide feuern beim Atmen, sodass Beuger und Strecker des Ellenbogens zusammen kontrahieren: keiner von 7 erreichte M3 der Ellenbogenstreckung (M0 1, M1 3, M2 3)</translation>
    </message>
    <message>
        <source>contralateral C7</source>
        <translation>C7 der Gegenseite</translation>
    </message>
    <message>
        <source>accessory to musculocutaneous</source>
        <translation>N. accessorius auf N. musculocutaneus</translation>
    </message>
    <message>
        <source>axillary recipient</source>
        <translation>Empfänger N. axillaris</translation>
    </message>
    <message>
        <source>suprascapular recipient</source>
        <translation>Empfänger N. suprascapularis</translation>
    </message>
    <message>
        <source>intercostal to triceps</source>
        <translation>Interkostalnerven auf Trizeps</translation>
    </message>
    <message>
        <source>intercostal, direct</source>
        <translation>interkostal, direkt</translation>
    </message>
    <message>
        <source>intercostal, with a graft between</source>
        <translation>interkostal, mit Transplantat dazwischen</translation>
    </message>
    <message>
        <source>high level</source>
        <translation>hohes Niveau</translation>
    </message>
    <message>
        <source>intermediate level</source>
        <translation>mittleres Niveau</translation>
    </message>
    <message>
        <source>high graft, fingers</source>
        <translation>hohes Transplantat, Finger</translation>
    </message>
    <message>
        <source>high graft, thumb</source>
        <translation>hohes Transplantat, Daumen</translation>
    </message>
    <message>
        <source>high graft, wrist</source>
        <translation>hohes Transplantat, Handgelenk</translation>
    </message>
    <message>
        <source>isolated axillary lesion</source>
        <translation>isolierte Axillarisläsion</translation>
    </message>
    <message>
        <source>isolated axillary lesion, triceps branch</source>
        <translation>isolierte Axillarisläsion, Trizepsast</translation>
    </message>
    <message>
        <source>isolated lesion</source>
        <translation>isolierte Läsion</translation>
    </message>
    <message>
        <source>isolated lesion, deltoid</source>
        <translation>isolierte Läsion, Deltoideus</translation>
    </message>
    <message>
        <source>axillary and plexus lesions, radial branch</source>
        <translation>Axillaris- und Plexusläsionen, Radialisast</translation>
    </message>
    <message>
        <source>late reconstruction, sutures and grafts</source>
        <translation>späte Rekonstruktion, Nähte und Transplantate</translation>
    </message>
    <message>
        <source>median or ulnar repair, motor</source>
        <translation>Medianus- oder Ulnarisnaht, motorisch</translation>
    </message>
    <message>
        <source>median or ulnar repair, sensory</source>
        <translation>Medianus- oder Ulnarisnaht, sensibel</translation>
    </message>
    <message>
        <source>digital nerve, monofilament result</source>
        <translation>Fingernerv, Ergebnis im Monofilamenttest</translation>
    </message>
    <message>
        <source>divided</source>
        <translation>durchtrennt</translation>
    </message>
    <message>
        <source>divided, primary suture</source>
        <translation>durchtrennt, primäre Naht</translation>
    </message>
    <message>
        <source>divided, secondary suture</source>
        <translation>durchtrennt, sekundäre Naht</translation>
    </message>
    <message>
        <source>suture</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>missile</source>
        <translation>Geschoss</translation>
    </message>
    <message>
        <source>in continuity without action potential, resected</source>
        <translation>in Kontinuität ohne Aktionspotenzial, reseziert</translation>
    </message>
    <message>
        <source>neurolysis, entry not printed</source>
        <translation>Neurolyse, Einschluss nicht gedruckt</translation>
    </message>
    <message>
        <source>plexus, all transfers</source>
        <translation>Plexus, alle Transfers</translation>
    </message>
    <message>
        <source>plexus, elbow flexion</source>
        <translation>Plexus, Ellenbogenbeugung</translation>
    </message>
    <message>
        <source>plexus, shoulder abduction</source>
        <translation>Plexus, Schulterabduktion</translation>
    </message>
    <message>
        <source>plexus, single or double fascicle</source>
        <translation>Plexus, einfacher oder doppelter Faszikel</translation>
    </message>
    <message>
        <source>upper plexus, all transfers</source>
        <translation>oberer Plexus, alle Transfers</translation>
    </message>
    <message>
        <source>upper plexus, elbow flexion</source>
        <translation>oberer Plexus, Ellenbogenbeugung</translation>
    </message>
    <message>
        <source>upper plexus, shoulder abduction</source>
        <translation>oberer Plexus, Schulterabduktion</translation>
    </message>
    <message>
        <source>C5-C6 lesions, double fascicle</source>
        <translation>C5-C6-Läsionen, doppelter Faszikel</translation>
    </message>
    <message>
        <source>C5-C6 lesions, single fascicle</source>
        <translation>C5-C6-Läsionen, einfacher Faszikel</translation>
    </message>
    <message>
        <source>with a fracture of the shaft of the humerus</source>
        <translation>mit Humerusschaftfraktur</translation>
    </message>
    <message>
        <source>with a fracture, explored and fixed within 3 weeks</source>
        <translation>mit Fraktur, innerhalb von 3 Wochen exploriert und fixiert</translation>
    </message>
    <message>
        <source>with a fracture, later than 8 weeks, after waiting failed</source>
        <translation>mit Fraktur, später als 8 Wochen, nach erfolglosem Abwarten</translation>
    </message>
    <message>
        <source>wrist, finger and thumb, M3 or better</source>
        <translation>Handgelenk, Finger und Daumen, M3 oder besser</translation>
    </message>
    <message>
        <source>M3 to M4</source>
        <translation>M3 bis M4</translation>
    </message>
    <message>
        <source>M3 to M4 in %1 of %2</source>
        <translation>M3 bis M4 bei %1 von %2</translation>
    </message>
    <message>
        <source>M4 in 12, M3 in 15, M2 in 2 of 29; mean active flexion 100 deg (30-150)</source>
        <translation>M4 bei 12, M3 bei 15, M2 bei 2 von 29; mittlere aktive Beugung 100 Grad (30-150)</translation>
    </message>
    <message>
        <source>M4 wrist and thumb in 5 of 5; finger M4 in 3 and M3 in 2 of 5</source>
        <translation>M4 an Handgelenk und Daumen bei 5 von 5; Finger M4 bei 3 und M3 bei 2 von 5</translation>
    </message>
    <message>
        <source>M5 1, M4 5, M3 4, M2 3 of 13</source>
        <translation>M5 1, M4 5, M3 4, M2 3 von 13</translation>
    </message>
    <message>
        <source>complete claw correction 60.6 %</source>
        <translation>vollständige Krallenkorrektur 60.6 %</translation>
    </message>
    <message>
        <source>best open-hand and closing scores; grip not measured</source>
        <translation>beste Werte für Öffnen und Schließen der Hand; Griffkraft nicht gemessen</translation>
    </message>
    <message>
        <source>greatest pinch gain when adductor alone is rebuilt</source>
        <translation>größter Zugewinn im Spitzgriff, wenn nur der Adduktor ersetzt wird</translation>
    </message>
    <message>
        <source>grip +3.8 kg, greatest of the techniques</source>
        <translation>Griffkraft +3.8 kg, am meisten von den Techniken</translation>
    </message>
    <message>
        <source>mean abduction 50 deg, trapezius M3, stability in all of 17; another technique 34 deg mean</source>
        <translation>mittlere Abduktion 50 Grad, Trapezius M3, Stabilität bei allen 17; eine andere Technik im Mittel 34 Grad</translation>
    </message>
    <message>
        <source>mean about 50 deg abduction and 20 deg outward rotation (upper and lower trapezius together)</source>
        <translation>im Mittel etwa 50 Grad Abduktion und 20 Grad Außenrotation (oberer und unterer Trapezius zusammen)</translation>
    </message>
    <message>
        <source>mean active outward rotation 28 deg (15-55) at the side, 36 deg (0-90) at 90 deg; 0.32 of the strength of the other side; n 11</source>
        <translation>mittlere aktive Außenrotation 28 Grad (15-55) am angelegten Arm, 36 Grad (0-90) bei 90 Grad; 0.32 der Kraft der Gegenseite; n 11</translation>
    </message>
    <message>
        <source>very good or good in 11 of 12 (C5-C7, with wrist fusion)</source>
        <translation>sehr gut oder gut bei 11 von 12 (C5-C7, mit Handgelenkarthrodese)</translation>
    </message>
    <message>
        <source>read in the abstract: all 8 fused in a mean of 3 months (2 to 8), active abduction 59 degrees (40 to 80)</source>
        <translation>im Abstract gelesen: alle 8 im Mittel in 3 Monaten (2 bis 8) durchbaut, aktive Abduktion 59 Grad (40 bis 80)</translation>
    </message>
    <message>
        <source>%1 works</source>
        <translation>%1 arbeitet</translation>
    </message>
    <message>
        <source>phrenic</source>
        <translation>N. phrenicus</translation>
    </message>
    <message>
        <source>steindler</source>
        <translation>Steindler</translation>
    </message>
    <message>
        <source>intrinsic recovery after high ulnar repair</source>
        <translation>Erholung der Binnenmuskeln nach hoher Ulnarisnaht</translation>
    </message>
    <message>
        <source>elbow flexion lost with a high median lesion</source>
        <translation>Ellenbogenbeugung bei hoher Medianusläsion ausgefallen</translation>
    </message>
    <message>
        <source>as the prerequisites of %1 say: partial or recoverable ulnar lesion</source>
        <translation>wie die Voraussetzungen von %1 sagen: unvollständige oder erholungsfähige Ulnarisläsion</translation>
    </message>
    <message>
        <source>abstract read in a mirror</source>
        <translation>Abstract in einem Spiegel gelesen</translation>
    </message>
    <message>
        <source>contested: Baltzer 2016 saw no gain in compression (0.67 against 0.67)</source>
        <translation>umstritten: Baltzer 2016 sah bei Kompression keinen Gewinn (0.67 gegen 0.67)</translation>
    </message>
    <message>
        <source>not with</source>
        <translation>nicht bei</translation>
    </message>
    <message>
        <source>rather not with</source>
        <translation>eher nicht bei</translation>
    </message>
    <message>
        <source>range of all counts of both</source>
        <translation>Spanne aller Zählungen beider</translation>
    </message>
    <message>
        <source>%1 (beside %2)</source>
        <translation>%1 (neben %2)</translation>
    </message>
    <message>
        <source>Adduction strength falls</source>
        <translation>Die Adduktionskraft nimmt ab</translation>
    </message>
    <message>
        <source>Adduction strength falls a little</source>
        <translation>Die Adduktionskraft nimmt etwas ab</translation>
    </message>
    <message>
        <source>Adduction strength falls a little if one branch is kept</source>
        <translation>Die Adduktionskraft nimmt etwas ab, wenn ein Ast erhalten bleibt</translation>
    </message>
    <message>
        <source>Chest wall numbness</source>
        <translation>Taubheit der Thoraxwand</translation>
    </message>
    <message>
        <source>Chest wall numbness; little respiratory effect with an intact phrenic nerve</source>
        <translation>Taubheit der Thoraxwand; bei erhaltenem N. phrenicus wenig Wirkung auf die Atmung</translation>
    </message>
    <message>
        <source>Chest wall sensory loss and slight loss of respiratory reserve</source>
        <translation>Gefühlsverlust der Thoraxwand und leichter Verlust an Atemreserve</translation>
    </message>
    <message>
        <source>Dorsal numb patch</source>
        <translation>Taubes Areal dorsal</translation>
    </message>
    <message>
        <source>Elbow extension stays useful because two triceps heads remain</source>
        <translation>Die Ellenbogenstreckung bleibt brauchbar, weil zwei Trizepsköpfe bleiben</translation>
    </message>
    <message>
        <source>Elbow flexion falls slightly; biceps and brachioradialis compensate</source>
        <translation>Die Ellenbogenbeugung nimmt leicht ab; Bizeps und Brachioradialis gleichen aus</translation>
    </message>
    <message>
        <source>Fourth web numb; distal stump can be put end-to-side on a working nerve</source>
        <translation>Vierte Zwischenfingerfalte taub; der distale Stumpf kann End-zu-Seit an einen arbeitenden Nerv gesetzt werden</translation>
    </message>
    <message>
        <source>Third web numb</source>
        <translation>Dritte Zwischenfingerfalte taub</translation>
    </message>
    <message>
        <source>Grip and pinch unchanged in published series</source>
        <translation>Grob- und Spitzgriff in veröffentlichten Serien unverändert</translation>
    </message>
    <message>
        <source>Hemidiaphragm palsy; long-term lung function stayed normal in the adult series</source>
        <translation>Einseitige Zwerchfellparese; die Lungenfunktion blieb in der Erwachsenenserie langfristig normal</translation>
    </message>
    <message>
        <source>Lateral forearm numb</source>
        <translation>Lateraler Unterarm taub</translation>
    </message>
    <message>
        <source>Latissimus dorsi is lost: no later muscle transfer from it</source>
        <translation>Der Latissimus dorsi geht verloren: später kein Muskeltransfer daraus</translation>
    </message>
    <message>
        <source>Little</source>
        <translation>Wenig</translation>
    </message>
    <message>
        <source>Little finger abduction is lost</source>
        <translation>Die Kleinfingerabduktion geht verloren</translation>
    </message>
    <message>
        <source>Loss of lower trapezius drive; upper trapezius is kept by cutting distal to its branches</source>
        <translation>Verlust des unteren Trapezius; der obere bleibt durch Absetzen distal seiner Äste erhalten</translation>
    </message>
    <message>
        <source>Lower trapezius weakens</source>
        <translation>Der untere Trapezius wird schwächer</translation>
    </message>
    <message>
        <source>Lower trapezius weakens; upper part spared</source>
        <translation>Der untere Trapezius wird schwächer; der obere Anteil bleibt verschont</translation>
    </message>
    <message>
        <source>Minor loss of elbow extension</source>
        <translation>Geringer Verlust an Ellenbogenstreckung</translation>
    </message>
    <message>
        <source>None expected (end-to-side)</source>
        <translation>Keine zu erwarten (End-zu-Seit)</translation>
    </message>
    <message>
        <source>None; muscle absent in some people</source>
        <translation>Keine; der Muskel fehlt bei manchen Menschen</translation>
    </message>
    <message>
        <source>Numb axilla and medial arm</source>
        <translation>Axilla und medialer Oberarm taub</translation>
    </message>
    <message>
        <source>Part of pectoralis major</source>
        <translation>Teil des Pectoralis major</translation>
    </message>
    <message>
        <source>Partial loss of pectoralis major</source>
        <translation>Teilverlust des Pectoralis major</translation>
    </message>
    <message>
        <source>Pronation kept by pronator teres</source>
        <translation>Pronation durch den Pronator teres erhalten</translation>
    </message>
    <message>
        <source>Pronation kept by proximal branch and pronator quadratus</source>
        <translation>Pronation durch den proximalen Ast und den Pronator quadratus erhalten</translation>
    </message>
    <message>
        <source>Pronation normal</source>
        <translation>Pronation normal</translation>
    </message>
    <message>
        <source>Pronation stays clinically normal through pronator teres</source>
        <translation>Die Pronation bleibt durch den Pronator teres klinisch normal</translation>
    </message>
    <message>
        <source>Rhomboids are lost; trapezius and its nerve are kept</source>
        <translation>Die Rhomboidei gehen verloren; der Trapezius und sein Nerv bleiben erhalten</translation>
    </message>
    <message>
        <source>Slight loss of elbow flexion</source>
        <translation>Leichter Verlust an Ellenbogenbeugung</translation>
    </message>
    <message>
        <source>Slight loss of pronation</source>
        <translation>Leichter Verlust an Pronation</translation>
    </message>
    <message>
        <source>Slight loss of terminal elbow extension and of anconeus drive</source>
        <translation>Leichter Verlust der endgradigen Ellenbogenstreckung und des Anconeus</translation>
    </message>
    <message>
        <source>Slight wrist-flexion weakness, usually temporary</source>
        <translation>Leichte Schwäche der Handgelenkbeugung, meist vorübergehend</translation>
    </message>
    <message>
        <source>Small loss of thumb flexion at the metacarpophalangeal joint</source>
        <translation>Geringer Verlust an Daumenbeugung im Grundgelenk</translation>
    </message>
    <message>
        <source>Some loss of extension power; long and medial heads compensate</source>
        <translation>Gewisser Verlust an Streckkraft; langer und medialer Kopf gleichen aus</translation>
    </message>
    <message>
        <source>Sum of both donor losses</source>
        <translation>Summe beider Spenderverluste</translation>
    </message>
    <message>
        <source>Supination kept by biceps</source>
        <translation>Supination durch den Bizeps erhalten</translation>
    </message>
    <message>
        <source>Temporary triceps weakness and index/middle numbness on the sound side</source>
        <translation>Vorübergehende Trizepsschwäche und Taubheit von Zeige-/Mittelfinger auf der gesunden Seite</translation>
    </message>
    <message>
        <source>Usually no measurable loss of grip; transient ulnar paraesthesia</source>
        <translation>Meist kein messbarer Verlust an Griffkraft; vorübergehende ulnare Parästhesien</translation>
    </message>
    <message>
        <source>Wrist extension kept by extensor carpi radialis longus</source>
        <translation>Handgelenkstreckung durch den Extensor carpi radialis longus erhalten</translation>
    </message>
    <message>
        <source>Wrist flexion kept by flexor carpi ulnaris</source>
        <translation>Handgelenkbeugung durch den Flexor carpi ulnaris erhalten</translation>
    </message>
    <message>
        <source>Both radial wrist extensors M4</source>
        <translation>Beide radialen Handgelenkstrecker M4</translation>
    </message>
    <message>
        <source>Median nerve normal</source>
        <translation>N. medianus unauffällig</translation>
    </message>
    <message>
        <source>Pronator teres M4</source>
        <translation>Pronator teres M4</translation>
    </message>
    <message>
        <source>Supinator and biceps M4</source>
        <translation>Supinator und Bizeps M4</translation>
    </message>
    <message>
        <source>Ulnar nerve intact; high median lesion</source>
        <translation>N. ulnaris intakt; hohe Medianusläsion</translation>
    </message>
    <message>
        <source>Ulnar nerve intact</source>
        <translation>N. ulnaris intakt</translation>
    </message>
    <message>
        <source>after failed nerve repair</source>
        <translation>nach gescheiterter Nervennaht</translation>
    </message>
    <message>
        <source>after median repair failure or in parallel</source>
        <translation>nach gescheiterter Medianusnaht oder parallel</translation>
    </message>
    <message>
        <source>after supple finger joints</source>
        <translation>nach freien Fingergelenken</translation>
    </message>
    <message>
        <source>any delay: the muscle is fresh</source>
        <translation>jede Verzögerung: der Muskel ist frisch</translation>
    </message>
    <message>
        <source>late presentation or failed nerve surgery</source>
        <translation>späte Vorstellung oder gescheiterte Nervenchirurgie</translation>
    </message>
    <message>
        <source>late reconstruction (mean 32 months after injury in the series)</source>
        <translation>späte Rekonstruktion (in der Serie im Mittel 32 Monate nach der Verletzung)</translation>
    </message>
    <message>
        <source>no nerve option left</source>
        <translation>keine Möglichkeit am Nerv mehr</translation>
    </message>
    <message>
        <source>when flexor pollicis longus recovery is not expected</source>
        <translation>wenn eine Erholung des Flexor pollicis longus nicht zu erwarten ist</translation>
    </message>
    <message>
        <source>when wrist extension is not expected; may be done early as internal splint (end-to-side)</source>
        <translation>wenn Handgelenkstreckung nicht zu erwarten ist; früh als innere Schiene möglich (End-zu-Seit)</translation>
    </message>
    <message>
        <source>with carpal tunnel release</source>
        <translation>mit Karpaltunnelspaltung</translation>
    </message>
    <message>
        <source>with the wrist and finger transfers</source>
        <translation>mit den Transfers für Handgelenk und Finger</translation>
    </message>
    <message>
        <source>brachial plexus or axillary, late or failed</source>
        <translation>Plexus brachialis oder N. axillaris, spät oder gescheitert</translation>
    </message>
    <message>
        <source>brachial plexus or musculocutaneous, late or failed</source>
        <translation>Plexus brachialis oder N. musculocutaneus, spät oder gescheitert</translation>
    </message>
    <message>
        <source>brachial plexus or suprascapular, late or failed</source>
        <translation>Plexus brachialis oder N. suprascapularis, spät oder gescheitert</translation>
    </message>
    <message>
        <source>combined / tetraplegia</source>
        <translation>kombiniert / Tetraplegie</translation>
    </message>
    <message>
        <source>combined high radial-median / tetraplegia</source>
        <translation>kombiniert hoch Radialis-Medianus / Tetraplegie</translation>
    </message>
    <message>
        <source>combined lower plexus</source>
        <translation>kombiniert unterer Plexus</translation>
    </message>
    <message>
        <source>combined median-ulnar / tetraplegia</source>
        <translation>kombiniert Medianus-Ulnaris / Tetraplegie</translation>
    </message>
    <message>
        <source>complete plexus, or late</source>
        <translation>vollständiger Plexus oder spät</translation>
    </message>
    <message>
        <source>tetraplegia / C7 plexus</source>
        <translation>Tetraplegie / Plexus C7</translation>
    </message>
    <message>
        <source>ulnar or combined median-ulnar claw</source>
        <translation>Krallenhand bei Ulnaris- oder kombinierter Medianus-Ulnaris-Läsion</translation>
    </message>
    <message>
        <source>Acute high ulnar transection repaired proximally; pronator quadratus shown by EMG or stimulation</source>
        <translation>Akute hohe Ulnarisdurchtrennung, proximal genäht; Pronator quadratus durch EMG oder Stimulation nachgewiesen</translation>
    </message>
    <message>
        <source>Biceps M4</source>
        <translation>Bizeps M4</translation>
    </message>
    <message>
        <source>Biceps M4 or better; C8-T1 lesion or tetraplegia</source>
        <translation>Bizeps M4 oder besser; C8-T1-Läsion oder Tetraplegie</translation>
    </message>
    <message>
        <source>Biceps M4, C6 function; C7-T1 lesion or tetraplegia</source>
        <translation>Bizeps M4, Funktion von C6; C7-T1-Läsion oder Tetraplegie</translation>
    </message>
    <message>
        <source>C5-C6 lesion with normal C7</source>
        <translation>C5-C6-Läsion bei unauffälliger C7</translation>
    </message>
    <message>
        <source>C7 working; C5-C6 lesion</source>
        <translation>C7 arbeitet; C5-C6-Läsion</translation>
    </message>
    <message>
        <source>C7-C8 intact latissimus</source>
        <translation>Latissimus über C7-C8 intakt</translation>
    </message>
    <message>
        <source>C7-T1 intact</source>
        <translation>C7-T1 intakt</translation>
    </message>
    <message>
        <source>C8-T1 intact, flexor carpi ulnaris M4 or better</source>
        <translation>C8-T1 intakt, Flexor carpi ulnaris M4 oder besser</translation>
    </message>
    <message>
        <source>Complete avulsion, young patient, early surgery</source>
        <translation>Vollständiger Ausriss, junger Patient, frühe Operation</translation>
    </message>
    <message>
        <source>Complete plexus lesion</source>
        <translation>Vollständige Plexusläsion</translation>
    </message>
    <message>
        <source>Donor nerve and vessels; steady shoulder; passive elbow flexion</source>
        <translation>Spendernerv und Gefäße; stabile Schulter; passive Ellenbogenbeugung</translation>
    </message>
    <message>
        <source>Donor slip present</source>
        <translation>Spenderzügel vorhanden</translation>
    </message>
    <message>
        <source>Flexor carpi ulnaris and median function normal</source>
        <translation>Flexor carpi ulnaris und Medianusfunktion unauffällig</translation>
    </message>
    <message>
        <source>Flexor-pronator muscles normal or near normal; best where some elbow flexion exists</source>
        <translation>Flexoren-Pronatoren-Muskeln normal oder nahezu normal; am besten, wo etwas Ellenbogenbeugung besteht</translation>
    </message>
    <message>
        <source>Intact intercostals; ribs unfractured; usual setting a complete plexus lesion</source>
        <translation>Interkostalnerven intakt; Rippen nicht frakturiert; üblich bei vollständiger Plexusläsion</translation>
    </message>
    <message>
        <source>Intact phrenic; usual setting a complete plexus avulsion</source>
        <translation>N. phrenicus intakt; üblich bei vollständigem Plexusausriss</translation>
    </message>
    <message>
        <source>Latissimus dorsi M4; thoracodorsal nerve not spent</source>
        <translation>Latissimus dorsi M4; N. thoracodorsalis nicht verbraucht</translation>
    </message>
    <message>
        <source>Latissimus dorsi and teres major M4; passive outward rotation</source>
        <translation>Latissimus dorsi und Teres major M4; passive Außenrotation</translation>
    </message>
    <message>
        <source>Low median or thenar lesion with the anterior interosseous nerve working; pronator quadratus shown by EMG or stimulation</source>
        <translation>Tiefe Medianus- oder Thenarläsion bei arbeitendem N. interosseus anterior; Pronator quadratus durch EMG oder Stimulation nachgewiesen</translation>
    </message>
    <message>
        <source>Lower trunk intact</source>
        <translation>Truncus inferior intakt</translation>
    </message>
    <message>
        <source>Lower trunk intact, pectoralis major M4</source>
        <translation>Truncus inferior intakt, Pectoralis major M4</translation>
    </message>
    <message>
        <source>Median deep flexor M4</source>
        <translation>Tiefer Beuger vom Medianus M4</translation>
    </message>
    <message>
        <source>Median motor function M4 or better</source>
        <translation>Motorische Medianusfunktion M4 oder besser</translation>
    </message>
    <message>
        <source>Median nerve normal; dorsoradial skin numb; useful in C5-C6 lesion</source>
        <translation>N. medianus unauffällig; Haut dorsoradial taub; nützlich bei C5-C6-Läsion</translation>
    </message>
    <message>
        <source>Median nerve normal; proximal joints supple; positive blocking test; deep flexor of the donor finger M4 or better on examination</source>
        <translation>N. medianus unauffällig; proximale Gelenke frei; Blocktest positiv; tiefer Beuger des Spenderfingers untersucht M4 oder besser</translation>
    </message>
    <message>
        <source>Median nerve normal; ulnar skin numb</source>
        <translation>N. medianus unauffällig; ulnare Haut taub</translation>
    </message>
    <message>
        <source>Musculocutaneous nerve normal</source>
        <translation>N. musculocutaneus unauffällig</translation>
    </message>
    <message>
        <source>Normal contralateral diaphragm and lung function; adult</source>
        <translation>Zwerchfell der Gegenseite und Lungenfunktion normal; erwachsen</translation>
    </message>
    <message>
        <source>Palmaris longus present</source>
        <translation>Palmaris longus vorhanden</translation>
    </message>
    <message>
        <source>Partial or recoverable ulnar lesion, or high repair; pronator quadratus shown by EMG or stimulation</source>
        <translation>Unvollständige oder erholungsfähige Ulnarisläsion oder hohe Naht; Pronator quadratus durch EMG oder Stimulation nachgewiesen</translation>
    </message>
    <message>
        <source>Pectoral muscles working; usual setting: accessory nerve not available</source>
        <translation>Brustmuskeln arbeiten; üblich: N. accessorius nicht verfügbar</translation>
    </message>
    <message>
        <source>Pectoralis major M4; steady shoulder</source>
        <translation>Pectoralis major M4; stabile Schulter</translation>
    </message>
    <message>
        <source>Prone position; trapezius M4 or better</source>
        <translation>Bauchlage; Trapezius M4 oder besser</translation>
    </message>
    <message>
        <source>Radial nerve normal</source>
        <translation>N. radialis unauffällig</translation>
    </message>
    <message>
        <source>Reported for C5-C8 root injuries with the anterior interosseous nerve working; pronator quadratus shown by EMG or stimulation</source>
        <translation>Berichtet für Wurzelverletzungen C5-C8 bei arbeitendem N. interosseus anterior; Pronator quadratus durch EMG oder Stimulation nachgewiesen</translation>
    </message>
    <message>
        <source>Rhomboids M4 on examination</source>
        <translation>Rhomboidei bei der Untersuchung M4</translation>
    </message>
    <message>
        <source>Second triceps branch free after deltoid reinnervation</source>
        <translation>Zweiter Trizepsast frei nach Reinnervation des Deltoideus</translation>
    </message>
    <message>
        <source>Supple joints, sensate hand, donor M4 or better, expendable, straight line of pull, one function per transfer</source>
        <translation>Freie Gelenke, sensible Hand, Spender M4 oder besser, entbehrlich, gerade Zugrichtung, eine Funktion je Transfer</translation>
    </message>
    <message>
        <source>A steady, extending wrist (by ECRL, or by the wrist transfer in the same sitting)</source>
        <translation>Ein stabiles, streckendes Handgelenk (durch den ECRL oder durch den Handgelenktransfer in derselben Sitzung)</translation>
    </message>
    <message>
        <source>Brachioradialis must be mobilised widely</source>
        <translation>Der Brachioradialis muss weit mobilisiert werden</translation>
    </message>
    <message>
        <source>Line of pull from the ulnar side of the palm</source>
        <translation>Zugrichtung von der Ulnarseite der Hohlhand</translation>
    </message>
    <message>
        <source>Not in posterior interosseous palsy: it is the last ulnar deviator</source>
        <translation>Nicht bei Interosseus-posterior-Parese: er ist der letzte Ulnarabduktor</translation>
    </message>
    <message>
        <source>Suprascapular nerve lesion extending past the notch; intact infraspinatus branch</source>
        <translation>Suprascapularisläsion über die Incisura hinaus; Ast zum Infraspinatus intakt</translation>
    </message>
    <message>
        <source>Thenar branch intact</source>
        <translation>Thenarast intakt</translation>
    </message>
    <message>
        <source>Trapezius M4 or better</source>
        <translation>Trapezius M4 oder besser</translation>
    </message>
    <message>
        <source>Trapezius M4 or better; suprascapular nerve intact distal to the notch</source>
        <translation>Trapezius M4 oder besser; N. suprascapularis distal der Incisura intakt</translation>
    </message>
    <message>
        <source>Trapezius M4 or better; usual setting: no intraplexal donor</source>
        <translation>Trapezius M4 oder besser; üblich: kein intraplexueller Spender</translation>
    </message>
    <message>
        <source>Trapezius M4; accessory nerve not spent</source>
        <translation>Trapezius M4; N. accessorius nicht verbraucht</translation>
    </message>
    <message>
        <source>Trapezius M4; passive abduction</source>
        <translation>Trapezius M4; passive Abduktion</translation>
    </message>
    <message>
        <source>Triceps M4 or better</source>
        <translation>Trizeps M4 oder besser</translation>
    </message>
    <message>
        <source>Triceps M4 or better (C7 intact)</source>
        <translation>Trizeps M4 oder besser (C7 intakt)</translation>
    </message>
    <message>
        <source>Triceps M4 or better, normal at presentation</source>
        <translation>Trizeps M4 oder besser, bei Vorstellung normal</translation>
    </message>
    <message>
        <source>Ulnar deep flexors M4 or better</source>
        <translation>Ulnare tiefe Beuger M4 oder besser</translation>
    </message>
    <message>
        <source>Ulnar intrinsics intact</source>
        <translation>Ulnare Binnenmuskeln intakt</translation>
    </message>
    <message>
        <source>Ulnar lesion at or above elbow; pronator quadratus shown by EMG or stimulation</source>
        <translation>Ulnarisläsion am oder oberhalb des Ellenbogens; Pronator quadratus durch EMG oder Stimulation nachgewiesen</translation>
    </message>
    <message>
        <source>Ulnar lesion at or above elbow; pronator quadratus shown by EMG or stimulation; short delay</source>
        <translation>Ulnarisläsion am oder oberhalb des Ellenbogens; Pronator quadratus durch EMG oder Stimulation nachgewiesen; kurze Verzögerung</translation>
    </message>
    <message>
        <source>Ulnar sensation normal</source>
        <translation>Gefühl ulnar normal</translation>
    </message>
    <message>
        <source>Usual setting a complete plexus lesion</source>
        <translation>Üblich bei vollständiger Plexusläsion</translation>
    </message>
    <message>
        <source>C7 lesion</source>
        <translation>C7-Läsion</translation>
    </message>
    <message>
        <source>anterior interosseous palsy</source>
        <translation>Interosseus-anterior-Parese</translation>
    </message>
    <message>
        <source>anterior interosseous palsy; lesion distal to the coaptation</source>
        <translation>Interosseus-anterior-Parese; Läsion distal der Koaptation</translation>
    </message>
    <message>
        <source>axillary dissection (donor likely cut)</source>
        <translation>Axilladissektion (Spender wahrscheinlich durchtrennt)</translation>
    </message>
    <message>
        <source>brachialis below M4 on examination</source>
        <translation>Brachialis bei der Untersuchung unter M4</translation>
    </message>
    <message>
        <source>combined median lesion</source>
        <translation>kombinierter Medianusläsion</translation>
    </message>
    <message>
        <source>donor ribs fractured or those nerves injured; severe lung disease</source>
        <translation>Fraktur der Spenderrippen oder Verletzung dieser Nerven; schwerer Lungenerkrankung</translation>
    </message>
    <message>
        <source>donor ribs fractured or those nerves injured; severe lung disease; spinal cord injury above T6</source>
        <translation>Fraktur der Spenderrippen oder Verletzung dieser Nerven; schwerer Lungenerkrankung; Rückenmarksverletzung oberhalb T6</translation>
    </message>
    <message>
        <source>injured sound side</source>
        <translation>Verletzung der gesunden Seite</translation>
    </message>
    <message>
        <source>lateral forearm numb on examination</source>
        <translation>bei der Untersuchung taubem lateralem Unterarm</translation>
    </message>
    <message>
        <source>low ulnar lesion</source>
        <translation>tiefer Ulnarisläsion</translation>
    </message>
    <message>
        <source>lower trunk lesion</source>
        <translation>Läsion des Truncus inferior</translation>
    </message>
    <message>
        <source>lower trunk lesion (donor dead)</source>
        <translation>Läsion des Truncus inferior (Spender ausgefallen)</translation>
    </message>
    <message>
        <source>lower trunk or C8 lesion with a weak flexor carpi ulnaris</source>
        <translation>Läsion des Truncus inferior oder von C8 mit schwachem Flexor carpi ulnaris</translation>
    </message>
    <message>
        <source>lung disease; weak diaphragm on the other side; weak phrenic nerve</source>
        <translation>Lungenerkrankung; schwachem Zwerchfell der Gegenseite; schwachem N. phrenicus</translation>
    </message>
    <message>
        <source>median motor function below M4</source>
        <translation>motorischer Medianusfunktion unter M4</translation>
    </message>
    <message>
        <source>median nerve lesion</source>
        <translation>Medianusläsion</translation>
    </message>
    <message>
        <source>median or C7 lesion with a weak flexor carpi radialis</source>
        <translation>Medianus- oder C7-Läsion mit schwachem Flexor carpi radialis</translation>
    </message>
    <message>
        <source>only one radial wrist extensor works</source>
        <translation>nur einem arbeitenden radialen Handgelenkstrecker</translation>
    </message>
    <message>
        <source>palmaris longus absent</source>
        <translation>fehlendem Palmaris longus</translation>
    </message>
    <message>
        <source>pronator quadratus silent on EMG or stimulation</source>
        <translation>im EMG oder auf Stimulation stummem Pronator quadratus</translation>
    </message>
    <message>
        <source>radial nerve lesion</source>
        <translation>Radialisläsion</translation>
    </message>
    <message>
        <source>supinator paralysed</source>
        <translation>gelähmtem Supinator</translation>
    </message>
    <message>
        <source>supinator paralysed; posterior interosseous lesion beyond the supinator branches</source>
        <translation>gelähmtem Supinator; Läsion des N. interosseus posterior distal der Supinatoräste</translation>
    </message>
    <message>
        <source>trapezius palsy</source>
        <translation>Trapeziusparese</translation>
    </message>
    <message>
        <source>trapezius palsy; scapular fracture with damage distal to the notch</source>
        <translation>Trapeziusparese; Skapulafraktur mit Schaden distal der Incisura</translation>
    </message>
    <message>
        <source>trapezius palsy; triceps below M4</source>
        <translation>Trapeziusparese; Trizeps unter M4</translation>
    </message>
    <message>
        <source>triceps below M4 on examination</source>
        <translation>Trizeps bei der Untersuchung unter M4</translation>
    </message>
    <message>
        <source>triceps paralysed</source>
        <translation>gelähmtem Trizeps</translation>
    </message>
    <message>
        <source>ulnar nerve lesion</source>
        <translation>Ulnarisläsion</translation>
    </message>
    <message>
        <source>weak rhomboids (C5 avulsion)</source>
        <translation>schwachen Rhomboidei (Ausriss von C5)</translation>
    </message>
    <message>
        <source>weak triceps</source>
        <translation>schwachem Trizeps</translation>
    </message>
    <message>
        <source>weak wrist extension</source>
        <translation>schwacher Handgelenkstreckung</translation>
    </message>
    <message>
        <source>C5-C6 lesion (the examined grade decides)</source>
        <translation>C5-C6-Läsion (der untersuchte Grad entscheidet)</translation>
    </message>
    <message>
        <source>C5-C6 lesion (the examined skin decides)</source>
        <translation>C5-C6-Läsion (die untersuchte Haut entscheidet)</translation>
    </message>
    <message>
        <source>C7 lesion that weakens wrist flexion</source>
        <translation>C7-Läsion, die die Handgelenkbeugung schwächt</translation>
    </message>
    <message>
        <source>C7 root lesion (the examined triceps grade decides)</source>
        <translation>C7-Wurzelläsion (der untersuchte Trizepsgrad entscheidet)</translation>
    </message>
    <message>
        <source>C7 root lesion (the examined triceps grade decides); rotator cuff tear (image it: a modifier, no bar)</source>
        <translation>C7-Wurzelläsion (der untersuchte Trizepsgrad entscheidet); Rotatorenmanschettenruptur (Bildgebung: beeinflusst, schließt aber nicht aus)</translation>
    </message>
    <message>
        <source>C7-C8 lesion (the examined grade of the donor fascicle decides)</source>
        <translation>C7-C8-Läsion (der untersuchte Grad des Spenderfaszikels entscheidet)</translation>
    </message>
    <message>
        <source>age; delay; obesity</source>
        <translation>Alter; Verzögerung; Adipositas</translation>
    </message>
    <message>
        <source>better donor exists: accessory nerve</source>
        <translation>besserem Spender: N. accessorius</translation>
    </message>
    <message>
        <source>better donor exists: accessory nerve (larger series)</source>
        <translation>besserem Spender: N. accessorius (größere Serie)</translation>
    </message>
    <message>
        <source>better donor exists: triceps branch</source>
        <translation>besserem Spender: Trizepsast</translation>
    </message>
    <message>
        <source>better donor exists: ulnar or median fascicle</source>
        <translation>besserem Spender: Ulnaris- oder Medianusfaszikel</translation>
    </message>
    <message>
        <source>better option: direct suture or graft, or an opposition tendon transfer</source>
        <translation>besserer Möglichkeit: direkte Naht oder Transplantat oder Sehnentransfer für die Opposition</translation>
    </message>
    <message>
        <source>child; obesity; better donor exists: ulnar fascicle; intercostal transfer to triceps (transfer_conflicts.csv)</source>
        <translation>Kind; Adipositas; besserem Spender: Ulnarisfaszikel; Interkostaltransfer auf den Trizeps (transfer_conflicts.csv)</translation>
    </message>
    <message>
        <source>delay beyond muscle viability</source>
        <translation>Verzögerung über die Lebensfähigkeit des Muskels hinaus</translation>
    </message>
    <message>
        <source>latissimus dorsi needed as a muscle transfer; better donor exists: ulnar or median fascicle</source>
        <translation>als Muskeltransfer benötigtem Latissimus dorsi; besserem Spender: Ulnaris- oder Medianusfaszikel</translation>
    </message>
    <message>
        <source>no proximal axons expected (better option: end-to-end)</source>
        <translation>keinen zu erwartenden proximalen Axonen (bessere Möglichkeit: End-zu-End)</translation>
    </message>
    <message>
        <source>phrenic palsy on that side</source>
        <translation>Phrenikusparese dieser Seite</translation>
    </message>
    <message>
        <source>phrenic palsy on that side; better donor exists: accessory nerve</source>
        <translation>Phrenikusparese dieser Seite; besserem Spender: N. accessorius</translation>
    </message>
    <message>
        <source>phrenic palsy on that side; better donor exists: ulnar or median fascicle</source>
        <translation>Phrenikusparese dieser Seite; besserem Spender: Ulnaris- oder Medianusfaszikel</translation>
    </message>
    <message>
        <source>phrenic palsy on that side; phrenic or intercostal transfer to the elbow flexors of the same limb (transfer_conflicts.csv)</source>
        <translation>Phrenikusparese dieser Seite; Phrenikus- oder Interkostaltransfer auf die Ellenbogenbeuger desselben Arms (transfer_conflicts.csv)</translation>
    </message>
    <message>
        <source>pronator teres palsy: not a bar (the reported group had it), but re-feed the distal pronator quadratus stump</source>
        <translation>Pronator-teres-Parese: kein Ausschluss (die berichtete Gruppe hatte sie), aber den distalen Stumpf des Pronator quadratus wieder anschließen</translation>
    </message>
    <message>
        <source>rib fracture</source>
        <translation>Rippenfraktur</translation>
    </message>
    <message>
        <source>suspected second lesion at the suprascapular notch (use the posterior approach)</source>
        <translation>Verdacht auf eine zweite Läsion an der Incisura scapulae (hinteren Zugang verwenden)</translation>
    </message>
    <message>
        <source>triceps abnormal at presentation (result falls with donor weakness)</source>
        <translation>bei Vorstellung auffälligem Trizeps (das Ergebnis sinkt mit der Schwäche des Spenders)</translation>
    </message>
    <message>
        <source>weak biceps (supination would be lost)</source>
        <translation>schwachem Bizeps (die Supination ginge verloren)</translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>%1/%2</source>
        <translation>%1/%2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>%1 (side to side)</source>
        <translation>%1 (Seit-zu-Seit)</translation>
    </message>
    <message>
        <source>%1 (rerouted)</source>
        <translation>%1 (umgeleitet)</translation>
    </message>
    <message>
        <source>%1 (lasso)</source>
        <translation>%1 (Lasso)</translation>
    </message>
    <message>
        <source>%1 (part)</source>
        <translation>%1 (Teil)</translation>
    </message>
    <message>
        <source>%1 (bipolar)</source>
        <translation>%1 (bipolar)</translation>
    </message>
    <message>
        <source>%1 (bipolar, whole)</source>
        <translation>%1 (bipolar, ganz)</translation>
    </message>
    <message>
        <source>%1 (one per finger)</source>
        <translation>%1 (einer je Finger)</translation>
    </message>
    <message>
        <source>%1 with palmar fascia strip</source>
        <translation>%1 mit Streifen der Palmarfaszie</translation>
    </message>
    <message>
        <source>%1 + graft through metacarpal space</source>
        <translation>%1 + Transplantat durch den Intermetakarpalraum</translation>
    </message>
    <message>
        <source>%1 + grafts, four-tail</source>
        <translation>%1 + Transplantate, vierzügelig</translation>
    </message>
    <message>
        <source>%1 four-tail</source>
        <translation>%1 vierzügelig</translation>
    </message>
    <message>
        <source>%1 slip</source>
        <translation>%1-Zügel</translation>
    </message>
    <message>
        <source>%1, side to side; ECRL insertion released beyond the join</source>
        <translation>%1, Seit-zu-Seit; ECRL-Ansatz distal der Verbindung gelöst</translation>
    </message>
    <message>
        <source>%1 of the middle finger, split in four</source>
        <translation>%1 des Mittelfingers, vierfach gespalten</translation>
    </message>
    <message>
        <source>A1/A2 pulley</source>
        <translation>Ringband A1/A2</translation>
    </message>
    <message>
        <source>A1/A2 pulley or proximal phalanx (lasso)</source>
        <translation>Ringband A1/A2 oder Grundglied (Lasso)</translation>
    </message>
    <message>
        <source>A1/A2 pulley of each finger</source>
        <translation>Ringband A1/A2 jedes Fingers</translation>
    </message>
    <message>
        <source>abductor pollicis brevis / metacarpophalangeal capsule</source>
        <translation>abductor pollicis brevis / Kapsel des Grundgelenks</translation>
    </message>
    <message>
        <source>adductor pollicis insertion</source>
        <translation>Ansatz des adductor pollicis</translation>
    </message>
    <message>
        <source>anterior distal humerus</source>
        <translation>distaler Humerus vorn</translation>
    </message>
    <message>
        <source>anterior interosseous and ulnar</source>
        <translation>Interosseus anterior und Ulnaris</translation>
    </message>
    <message>
        <source>anterior interosseous only</source>
        <translation>nur Interosseus anterior</translation>
    </message>
    <message>
        <source>anterior interosseous muscles</source>
        <translation>Muskeln des N. interosseus anterior</translation>
    </message>
    <message>
        <source>axilla and medial arm skin</source>
        <translation>Haut von Axilla und medialem Oberarm</translation>
    </message>
    <message>
        <source>biceps</source>
        <translation>Bizeps</translation>
    </message>
    <message>
        <source>triceps</source>
        <translation>Trizeps</translation>
    </message>
    <message>
        <source>triceps long head</source>
        <translation>Caput longum des Trizeps</translation>
    </message>
    <message>
        <source>triceps tendon</source>
        <translation>Trizepssehne</translation>
    </message>
    <message>
        <source>triceps tendon / olecranon</source>
        <translation>Trizepssehne / Olecranon</translation>
    </message>
    <message>
        <source>biceps tendon</source>
        <translation>Bizepssehne</translation>
    </message>
    <message>
        <source>biceps tendon; origin to coracoid</source>
        <translation>Bizepssehne; Ursprung an den Processus coracoideus</translation>
    </message>
    <message>
        <source>contralateral C7 muscles</source>
        <translation>C7-Muskeln der Gegenseite</translation>
    </message>
    <message>
        <source>deltoid (anterior, middle)</source>
        <translation>Deltoideus (vorn, Mitte)</translation>
    </message>
    <message>
        <source>distal part of accessory nerve</source>
        <translation>distaler Teil des N. accessorius</translation>
    </message>
    <message>
        <source>dorsoradial hand</source>
        <translation>dorsoradiale Hand</translation>
    </message>
    <message>
        <source>dorsum of thumb/index</source>
        <translation>Rücken von Daumen/Zeigefinger</translation>
    </message>
    <message>
        <source>extensor digitorum communis</source>
        <translation>extensor digitorum communis</translation>
    </message>
    <message>
        <source>extensor indicis proprius</source>
        <translation>extensor indicis proprius</translation>
    </message>
    <message>
        <source>finger and thumb extensors</source>
        <translation>Finger- und Daumenstrecker</translation>
    </message>
    <message>
        <source>thumb and finger flexors</source>
        <translation>Daumen- und Fingerbeuger</translation>
    </message>
    <message>
        <source>wrist and finger flexors</source>
        <translation>Handgelenk- und Fingerbeuger</translation>
    </message>
    <message>
        <source>first dorsal interosseous</source>
        <translation>interosseus dorsalis I</translation>
    </message>
    <message>
        <source>flexor carpi radialis/superficialis</source>
        <translation>flexor carpi radialis/superficialis</translation>
    </message>
    <message>
        <source>superficialis</source>
        <translation>Superficialis</translation>
    </message>
    <message>
        <source>flexor pollicis brevis deep head</source>
        <translation>flexor pollicis brevis, Caput profundum</translation>
    </message>
    <message>
        <source>flexor pollicis brevis superficial head</source>
        <translation>flexor pollicis brevis, Caput superficiale</translation>
    </message>
    <message>
        <source>superficial flexor pollicis brevis</source>
        <translation>oberflächlicher flexor pollicis brevis</translation>
    </message>
    <message>
        <source>flexor-pronator origin moved up the humerus (PT, FCR, FCU, PL, FDS)</source>
        <translation>Ursprung der Flexoren-Pronatoren am Humerus nach proximal versetzt (PT, FCR, FCU, PL, FDS)</translation>
    </message>
    <message>
        <source>fourth web</source>
        <translation>vierte Zwischenfingerfalte</translation>
    </message>
    <message>
        <source>third web</source>
        <translation>dritte Zwischenfingerfalte</translation>
    </message>
    <message>
        <source>free gracilis (thigh) on a donor nerve</source>
        <translation>freier Gracilis (Oberschenkel) an einem Spendernerv</translation>
    </message>
    <message>
        <source>hand sensation</source>
        <translation>Gefühl der Hand</translation>
    </message>
    <message>
        <source>sensation</source>
        <translation>Gefühl</translation>
    </message>
    <message>
        <source>hemidiaphragm</source>
        <translation>Zwerchfellhälfte</translation>
    </message>
    <message>
        <source>index and middle deep flexors</source>
        <translation>tiefe Beuger von Zeige- und Mittelfinger</translation>
    </message>
    <message>
        <source>infraspinatus tendon (upper part: humerus)</source>
        <translation>Infraspinatussehne (oberer Teil: Humerus)</translation>
    </message>
    <message>
        <source>intercostal muscles</source>
        <translation>Interkostalmuskeln</translation>
    </message>
    <message>
        <source>intercostal nerves</source>
        <translation>Interkostalnerven</translation>
    </message>
    <message>
        <source>lateral bands</source>
        <translation>Seitenzügel</translation>
    </message>
    <message>
        <source>lateral forearm skin</source>
        <translation>Haut des lateralen Unterarms</translation>
    </message>
    <message>
        <source>lateral head of triceps</source>
        <translation>Caput laterale des Trizeps</translation>
    </message>
    <message>
        <source>long head of triceps</source>
        <translation>Caput longum des Trizeps</translation>
    </message>
    <message>
        <source>medial head of triceps</source>
        <translation>Caput mediale des Trizeps</translation>
    </message>
    <message>
        <source>levator scapulae, rhomboid minor and major</source>
        <translation>levator scapulae, rhomboideus minor und major</translation>
    </message>
    <message>
        <source>lower trapezius</source>
        <translation>unterer Trapezius</translation>
    </message>
    <message>
        <source>lower trapezius (with upper trapezius for abduction)</source>
        <translation>unterer Trapezius (mit oberem Trapezius für die Abduktion)</translation>
    </message>
    <message>
        <source>upper trapezius</source>
        <translation>oberer Trapezius</translation>
    </message>
    <message>
        <source>median only</source>
        <translation>nur Medianus</translation>
    </message>
    <message>
        <source>median and ulnar</source>
        <translation>Medianus und Ulnaris</translation>
    </message>
    <message>
        <source>ulnar only</source>
        <translation>nur Ulnaris</translation>
    </message>
    <message>
        <source>median hand skin</source>
        <translation>Medianushaut der Hand</translation>
    </message>
    <message>
        <source>middle and lower trapezius</source>
        <translation>mittlerer und unterer Trapezius</translation>
    </message>
    <message>
        <source>upper and middle trapezius</source>
        <translation>oberer und mittlerer Trapezius</translation>
    </message>
    <message>
        <source>middle deep flexor</source>
        <translation>tiefer Beuger des Mittelfingers</translation>
    </message>
    <message>
        <source>pectoralis major and minor</source>
        <translation>pectoralis major und minor</translation>
    </message>
    <message>
        <source>pectoralis major/minor</source>
        <translation>pectoralis major/minor</translation>
    </message>
    <message>
        <source>posterior cuff / greater tubercle (L'Episcopo type)</source>
        <translation>hintere Rotatorenmanschette / Tuberculum majus (Typ L'Episcopo)</translation>
    </message>
    <message>
        <source>posterior deltoid</source>
        <translation>hinterer Deltoideus</translation>
    </message>
    <message>
        <source>pronator teres (deep head and distal part)</source>
        <translation>pronator teres (Caput profundum und distaler Teil)</translation>
    </message>
    <message>
        <source>proximal humerus / deltoid</source>
        <translation>proximaler Humerus / Deltoideus</translation>
    </message>
    <message>
        <source>deltoid</source>
        <translation>Deltoideus</translation>
    </message>
    <message>
        <source>cuff + deltoid</source>
        <translation>Rotatorenmanschette + Deltoideus</translation>
    </message>
    <message>
        <source>trapezius + triceps</source>
        <translation>Trapezius + Trizeps</translation>
    </message>
    <message>
        <source>rhomboid muscles</source>
        <translation>Rhomboidei</translation>
    </message>
    <message>
        <source>ring and little deep flexors</source>
        <translation>tiefe Beuger von Ring- und Kleinfinger</translation>
    </message>
    <message>
        <source>ulnar deep flexors (ring, little)</source>
        <translation>ulnare tiefe Beuger (Ring-, Kleinfinger)</translation>
    </message>
    <message>
        <source>scapular spine and infraspinous fossa</source>
        <translation>Spina scapulae und Fossa infraspinata</translation>
    </message>
    <message>
        <source>spinal accessory nerve</source>
        <translation>N. accessorius</translation>
    </message>
    <message>
        <source>superior trunk</source>
        <translation>Truncus superior</translation>
    </message>
    <message>
        <source>the superior trunk</source>
        <translation>Truncus superior</translation>
    </message>
    <message>
        <source>upper trunk</source>
        <translation>Truncus superior</translation>
    </message>
    <message>
        <source>thenar muscles</source>
        <translation>Thenarmuskeln</translation>
    </message>
    <message>
        <source>third lumbrical</source>
        <translation>lumbricalis III</translation>
    </message>
    <message>
        <source>thumb and index</source>
        <translation>Daumen und Zeigefinger</translation>
    </message>
    <message>
        <source>thumb and index pulp</source>
        <translation>Kuppen von Daumen und Zeigefinger</translation>
    </message>
    <message>
        <source>thumb ulnar and index radial pulp</source>
        <translation>ulnare Daumen- und radiale Zeigefingerkuppe</translation>
    </message>
    <message>
        <source>ulnar border of hand</source>
        <translation>Ulnarkante der Hand</translation>
    </message>
    <message>
        <source>ulnar digits</source>
        <translation>ulnare Finger</translation>
    </message>
    <message>
        <source>ulnar or median nerve</source>
        <translation>N. ulnaris oder N. medianus</translation>
    </message>
    <message>
        <source>end-to-end or end-to-side</source>
        <translation>End-zu-End oder End-zu-Seit</translation>
    </message>
    <message>
        <source>vessels and tendons are not in the model, nor are nerves without a line in it; a place far from the modelled nerves is not a place without danger</source>
        <translation>Gefäße und Sehnen sind nicht im Modell, ebenso wenig Nerven ohne Linie darin; ein Ort fern der modellierten Nerven ist kein Ort ohne Gefahr</translation>
    </message>
    <message>
        <source>serratus anterior (lower part)</source>
        <translation>serratus anterior (unterer Teil)</translation>
    </message>
    <message>
        <source>arm</source>
        <translation>Oberarm</translation>
    </message>
    <message>
        <source>%1 (middle and ring)</source>
        <translation>%1 (Mittel- und Ringfinger)</translation>
    </message>
    <message>
        <source>%1 (ring)</source>
        <translation>%1 (Ringfinger)</translation>
    </message>
    <message>
        <source>ulnar + median nerve</source>
        <translation>N. ulnaris + N. medianus</translation>
    </message>
    <message>
        <source>median nerve (anterior interosseous)</source>
        <translation>N. medianus (N. interosseus anterior)</translation>
    </message>
    <message>
        <source>pectoral nerves</source>
        <translation>Nn. pectorales</translation>
    </message>
    <message>
        <source>first lumbrical</source>
        <translation>lumbricalis I</translation>
    </message>
    <message>
        <source>second lumbrical</source>
        <translation>lumbricalis II</translation>
    </message>
    <message>
        <source>fourth lumbrical</source>
        <translation>lumbricalis IV</translation>
    </message>
    <message>
        <source>second dorsal interosseous</source>
        <translation>interosseus dorsalis II</translation>
    </message>
    <message>
        <source>third dorsal interosseous</source>
        <translation>interosseus dorsalis III</translation>
    </message>
    <message>
        <source>fourth dorsal interosseous</source>
        <translation>interosseus dorsalis IV</translation>
    </message>
    <message>
        <source>first palmar interosseous</source>
        <translation>interosseus palmaris I</translation>
    </message>
    <message>
        <source>second palmar interosseous</source>
        <translation>interosseus palmaris II</translation>
    </message>
    <message>
        <source>third palmar interosseous</source>
        <translation>interosseus palmaris III</translation>
    </message>
    <message>
        <source>rhomboid major</source>
        <translation>rhomboideus major</translation>
    </message>
    <message>
        <source>rhomboid minor</source>
        <translation>rhomboideus minor</translation>
    </message>
    <message>
        <source>second lumbrical, ulnar</source>
        <translation>lumbricalis II, Ulnaris</translation>
    </message>
    <message>
        <source>third lumbrical, median</source>
        <translation>lumbricalis III, Medianus</translation>
    </message>
    <message>
        <source>C7 root (same side)</source>
        <translation>Wurzel C7 (gleiche Seite)</translation>
    </message>
    <message>
        <source>spinal accessory + radial nerve</source>
        <translation>N. accessorius + N. radialis</translation>
    </message>
    <message>
        <source>suprascapular + axillary nerve</source>
        <translation>N. suprascapularis + N. axillaris</translation>
    </message>
    <message>
        <source>0 stands for "at the level of the line", not a mean</source>
        <translation>0 steht für „auf Höhe der Linie“, kein Mittelwert</translation>
    </message>
    <message>
        <source>0 stands for the most common level, not a mean</source>
        <translation>0 steht für die häufigste Höhe, kein Mittelwert</translation>
    </message>
    <message>
        <source>a bound ("within"), not a mean</source>
        <translation>eine Grenze („innerhalb“), kein Mittelwert</translation>
    </message>
    <message>
        <source>a limit of a confidence interval, not a mean</source>
        <translation>Grenze eines Konfidenzintervalls, kein Mittelwert</translation>
    </message>
    <message>
        <source>a median, not a mean</source>
        <translation>ein Median, kein Mittelwert</translation>
    </message>
    <message>
        <source>a range without a mean</source>
        <translation>eine Spanne ohne Mittelwert</translation>
    </message>
    <message>
        <source>a range without a single figure</source>
        <translation>eine Spanne ohne einzelne Zahl</translation>
    </message>
    <message>
        <source>a round figure given as "about", not a computed mean</source>
        <translation>eine runde, als „etwa“ angegebene Zahl, kein errechneter Mittelwert</translation>
    </message>
    <message>
        <source>a fraction of a line whose length is not stated</source>
        <translation>Bruchteil einer Linie, deren Länge nicht angegeben ist</translation>
    </message>
    <message>
        <source>group row: one measurement entered for two branches</source>
        <translation>Gruppenzeile: eine Messung für zwei Äste eingetragen</translation>
    </message>
    <message>
        <source>group row: the level of the common leash entered for one of its branches</source>
        <translation>Gruppenzeile: die Höhe des gemeinsamen Bündels für einen seiner Äste eingetragen</translation>
    </message>
    <message>
        <source>both groups carry the same n, so it is probably that of the whole review</source>
        <translation>beide Gruppen tragen dasselbe n, vermutlich das der ganzen Übersicht</translation>
    </message>
    <message>
        <source>fraction of the Martin-Gruber cases, n of all limbs</source>
        <translation>Anteil an den Martin-Gruber-Fällen, n aller Arme</translation>
    </message>
    <message>
        <source>mean of the greater subgroup, n of all sides</source>
        <translation>Mittel der größeren Untergruppe, n aller Seiten</translation>
    </message>
    <message>
        <source>mean of the limbs on one side of the line; their number is not printed</source>
        <translation>Mittel der Arme auf einer Seite der Linie; ihre Zahl ist nicht gedruckt</translation>
    </message>
    <message>
        <source>mid-point of a printed zone, not a mean</source>
        <translation>Mitte einer gedruckten Zone, kein Mittelwert</translation>
    </message>
    <message>
        <source>mid-point of a printed zone, not a mean; one statement shared by several muscles</source>
        <translation>Mitte einer gedruckten Zone, kein Mittelwert; eine Angabe für mehrere Muskeln</translation>
    </message>
    <message>
        <source>n is that of the whole series or review, not of this figure</source>
        <translation>n ist das der ganzen Serie oder Übersicht, nicht dieser Zahl</translation>
    </message>
    <message>
        <source>no mean is printed</source>
        <translation>kein Mittelwert gedruckt</translation>
    </message>
    <message>
        <source>no single figure</source>
        <translation>keine einzelne Zahl</translation>
    </message>
    <message>
        <source>pooled figure of a meta-analysis with the n of the whole review</source>
        <translation>gepoolte Zahl einer Metaanalyse mit dem n der ganzen Übersicht</translation>
    </message>
    <message>
        <source>pooled figure of a review with the n of the whole review</source>
        <translation>gepoolte Zahl einer Übersicht mit dem n der ganzen Übersicht</translation>
    </message>
    <message>
        <source>textbook figure without a sample</source>
        <translation>Lehrbuchzahl ohne Stichprobe</translation>
    </message>
    <message>
        <source>the bifurcation of the artery stands in for that of the nerve</source>
        <translation>die Teilung der Arterie steht für die des Nervs</translation>
    </message>
    <message>
        <source>the junction of two thirds named in words, not a computed mean</source>
        <translation>die Grenze zweier Drittel in Worten, kein errechneter Mittelwert</translation>
    </message>
    <message>
        <source>the number behind it is not stated</source>
        <translation>die Zahl dahinter ist nicht angegeben</translation>
    </message>
    <message>
        <source>the page contradicts itself on the sign</source>
        <translation>die Seite widerspricht sich im Vorzeichen</translation>
    </message>
    <message>
        <source>the page does not say whether this is a mean or an extreme</source>
        <translation>die Seite sagt nicht, ob dies ein Mittelwert oder ein Extremwert ist</translation>
    </message>
    <message>
        <source>the printed fraction fits no whole number of n</source>
        <translation>der gedruckte Anteil passt zu keiner ganzen Zahl von n</translation>
    </message>
    <message>
        <source>the printed mean almost equals the maximum: one of them is a misprint</source>
        <translation>der gedruckte Mittelwert ist fast gleich dem Maximum: eines von beiden ist ein Druckfehler</translation>
    </message>
    <message>
        <source>the same measurement as {1}</source>
        <translation>dieselbe Messung wie {1}</translation>
    </message>
    <message>
        <source>cadaver</source>
        <translation>Körperspende</translation>
    </message>
    <message>
        <source>fetal limbs</source>
        <translation>fetale Arme</translation>
    </message>
    <message>
        <source>clinical, intra-operative</source>
        <translation>klinisch, intraoperativ</translation>
    </message>
    <message>
        <source>lateral/prone</source>
        <translation>Seitenlage/Bauchlage</translation>
    </message>
    <message>
        <source>prone/lateral</source>
        <translation>Bauchlage/Seitenlage</translation>
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
        <source>anterior</source>
        <translation>anterior</translation>
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
        <source>lateral</source>
        <translation>lateral</translation>
    </message>
    <message>
        <source>along the nerve</source>
        <translation>entlang des Nervs</translation>
    </message>
    <message>
        <source>wrist neutral</source>
        <translation>Handgelenk neutral</translation>
    </message>
    <message>
        <source>across the epicondyles over skin, elbow at 90 degrees</source>
        <translation>über die Epicondylen auf der Haut, Ellenbogen in 90 Grad</translation>
    </message>
    <message>
        <source>across the heads of the second to fifth metacarpals</source>
        <translation>über die Köpfe des zweiten bis fünften Mittelhandknochens</translation>
    </message>
    <message>
        <source>around the heads of the second to fifth metacarpals</source>
        <translation>um die Köpfe des zweiten bis fünften Mittelhandknochens</translation>
    </message>
    <message>
        <source>arm, biceps tensed</source>
        <translation>Oberarm, Bizeps angespannt</translation>
    </message>
    <message>
        <source>at the styloids</source>
        <translation>an den Styloidfortsätzen</translation>
    </message>
    <message>
        <source>forearm, fist clenched</source>
        <translation>Unterarm, Faust geballt</translation>
    </message>
    <message>
        <source>largest, elbow at 90 degrees, fist clenched</source>
        <translation>größter, Ellenbogen in 90 Grad, Faust geballt</translation>
    </message>
    <message>
        <source>mid arm, relaxed</source>
        <translation>Oberarmmitte, entspannt</translation>
    </message>
    <message>
        <source>lateral edge of the acromion to the lateral epicondyle, along the arm</source>
        <translation>seitlicher Rand des Akromions bis Epicondylus lateralis, entlang des Oberarms</translation>
    </message>
    <message>
        <source>line of the epicondyles to the line of the two styloids, along the forearm</source>
        <translation>Epicondylenlinie bis Linie der beiden Styloidfortsätze, entlang des Unterarms</translation>
    </message>
    <message>
        <source>distal wrist crease to the tip of the middle finger, hand flat</source>
        <translation>distale Handgelenkbeugefalte bis Mittelfingerspitze, Hand flach</translation>
    </message>
    <message>
        <source>wrist to the crease at the base of the middle finger</source>
        <translation>Handgelenk bis zur Beugefalte an der Basis des Mittelfingers</translation>
    </message>
    <message>
        <source>radial to ulnar styloid</source>
        <translation>Processus styloideus radii bis ulnae</translation>
    </message>
    <message>
        <source>right to left acromion</source>
        <translation>rechtes bis linkes Akromion</translation>
    </message>
    <message>
        <source>shoulders (biacromial)</source>
        <translation>Schultern (biakromial)</translation>
    </message>
    <message>
        <source>palm</source>
        <translation>Handfläche</translation>
    </message>
    <message>
        <source>see limb_size.csv</source>
        <translation>siehe limb_size.csv</translation>
    </message>
    <message>
        <source>the survey measures from the level of the radial styloid, which is taken as the crease</source>
        <translation>die Erhebung misst von der Höhe des Processus styloideus radii, die als Beugefalte gilt</translation>
    </message>
    <message>
        <source>ratio of the two lengths on the ledger limb: its landmarks are placed, not measured (%1 of %2 mm)</source>
        <translation>Verhältnis der beiden Längen am Arm der Tabellen: seine Landmarken sind gesetzt, nicht gemessen (%1 von %2 mm)</translation>
    </message>
    <message>
        <source>no cut was chosen</source>
        <translation>kein Schnitt gewählt</translation>
    </message>
    <message>
        <source>Choose an approach, or write the marks of a cut.</source>
        <translation>Einen Zugang wählen oder die Marken eines Schnitts schreiben.</translation>
    </message>
    <message>
        <source>at least %1 mm</source>
        <translation>mindestens %1 mm</translation>
    </message>
    <message>
        <source>%1 mm, %2 to %3</source>
        <translation>%1 mm, %2 bis %3</translation>
    </message>
    <message>
        <source>olecranon tip</source>
        <translation>Olecranonspitze</translation>
    </message>
    <message>
        <source>absent musculocutaneous nerve</source>
        <translation>fehlender N. musculocutaneus</translation>
    </message>
    <message>
        <source>palmar cutaneous branch of median nerve absent</source>
        <translation>R. palmaris n. mediani fehlt</translation>
    </message>
    <message>
        <source>superior lateral brachial cutaneous nerve absent</source>
        <translation>N. cutaneus brachii lateralis superior fehlt</translation>
    </message>
    <message>
        <source>biceps crosses the shoulder</source>
        <translation>der Bizeps überquert die Schulter</translation>
    </message>
    <message>
        <source>elbow extension relaxes the nerve</source>
        <translation>Ellenbogenstreckung entspannt den Nerv</translation>
    </message>
    <message>
        <source>women</source>
        <translation>Frauen</translation>
    </message>
    <message>
        <source>men</source>
        <translation>Männer</translation>
    </message>
    <message>
        <source>adults</source>
        <translation>Erwachsene</translation>
    </message>
    <message>
        <source>SD %1</source>
        <translation>SD %1</translation>
    </message>
    <message>
        <source>posterior arm, proximal third</source>
        <translation>Oberarm hinten, proximales Drittel</translation>
    </message>
    <message>
        <source>proximal third of the arm</source>
        <translation>proximales Drittel des Oberarms</translation>
    </message>
    <message>
        <source>middle third of the arm</source>
        <translation>mittleres Drittel des Oberarms</translation>
    </message>
    <message>
        <source>distal third of the arm</source>
        <translation>distales Drittel des Oberarms</translation>
    </message>
    <message>
        <source>proximal third of the forearm</source>
        <translation>proximales Drittel des Unterarms</translation>
    </message>
    <message>
        <source>middle third of the forearm</source>
        <translation>mittleres Drittel des Unterarms</translation>
    </message>
    <message>
        <source>distal third of the forearm</source>
        <translation>distales Drittel des Unterarms</translation>
    </message>
    <message>
        <source>No girths were found below 3 years (Fryar et al. 2025): they shrink with the length of the body (assumed).</source>
        <translation>Unter 3 Jahren fanden sich keine Umfänge (Fryar et al. 2025): sie schrumpfen mit der Körperlänge (angenommen).</translation>
    </message>
    <message>
        <source>%1, %2 proximal, on %3</source>
        <translation>%1, %2 proximal, auf: %3</translation>
    </message>
    <message>
        <source>%1, %2 distal, on %3</source>
        <translation>%1, %2 distal, auf: %3</translation>
    </message>
    <message>
        <source>{1}: %2 mm is outside the published range of %3, %4 to %5 mm (mean and %6 standard deviations; {7}). It is believed as given; what follows from it for the rest of the limb goes beyond the people who were measured.</source>
        <translation>{1}: %2 mm liegt außerhalb des veröffentlichten Bereichs für %3, %4 bis %5 mm (Mittel und %6 Standardabweichungen; {7}). Die Angabe wird geglaubt; was daraus für den übrigen Arm folgt, geht über die gemessenen Menschen hinaus.</translation>
    </message>
    <message>
        <source>{1}: %2 mm is outside the published range of %3, %4 to %5 mm (mean and %6 standard deviations; {7}). It is believed as given; what follows from it for the rest of the limb goes beyond the people who were measured, and in disproportionate short or tall stature the segments do not follow stature: measure arm, forearm and hand.</source>
        <translation>{1}: %2 mm liegt außerhalb des veröffentlichten Bereichs für %3, %4 bis %5 mm (Mittel und %6 Standardabweichungen; {7}). Die Angabe wird geglaubt; was daraus für den übrigen Arm folgt, geht über die gemessenen Menschen hinaus, und bei unproportioniertem Klein- oder Großwuchs folgen die Segmente der Körpergröße nicht: Oberarm, Unterarm und Hand messen.</translation>
    </message>
    <message>
        <source>girls at %1 years</source>
        <translation>Mädchen mit %1 Jahren</translation>
    </message>
    <message>
        <source>boys at %1 years</source>
        <translation>Jungen mit %1 Jahren</translation>
    </message>
    <message>
        <source>boys and girls at %1 years</source>
        <translation>Jungen und Mädchen mit %1 Jahren</translation>
    </message>
    <message>
        <source>mean over 1 muscle, %1</source>
        <translation>Mittel über 1 Muskel, %1</translation>
    </message>
    <message>
        <source>mean over %1 skin areas, %2</source>
        <translation>Mittel über %1 Hautareale, %2</translation>
    </message>
    <message>
        <source>mean over 1 skin area, %1</source>
        <translation>Mittel über 1 Hautareal, %1</translation>
    </message>
    <message>
        <source>after the graft</source>
        <translation>nach dem Transplantat</translation>
    </message>
    <message>
        <source>after the repair</source>
        <translation>nach der Naht</translation>
    </message>
    <message>
        <source>{1} is no nerve that the tables know</source>
        <translation>{1} ist kein Nerv, den die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no muscle that the tables know</source>
        <translation>{1} ist kein Muskel, den die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no landmark that the tables know</source>
        <translation>{1} ist keine Landmarke, die die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no skin area that the tables know</source>
        <translation>{1} ist kein Hautareal, das die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no movement that the tables know</source>
        <translation>{1} ist keine Bewegung, die die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no variant that the tables know</source>
        <translation>{1} ist keine Variante, die die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no sign that the tables know</source>
        <translation>{1} ist kein Zeichen, das die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no graft donor that the tables know</source>
        <translation>{1} ist kein Transplantatspender, den die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no muscle or nerve that the tables know</source>
        <translation>{1} ist kein Muskel oder Nerv, den die Tabellen kennen</translation>
    </message>
    <message>
        <source>{1} is no movement or skin area that the tables know</source>
        <translation>{1} ist keine Bewegung und kein Hautareal, die die Tabellen kennen</translation>
    </message>
    <message>
        <source>%1 examined: normal</source>
        <translation>%1 untersucht: unauffällig</translation>
    </message>
    <message>
        <source>%1 examined: not normal</source>
        <translation>%1 untersucht: nicht unauffällig</translation>
    </message>
    <message>
        <source>%1 by the superficialis of the index finger</source>
        <translation>%1 durch den Superficialis des Zeigefingers</translation>
    </message>
    <message>
        <source>%1 by the superficialis of the middle finger</source>
        <translation>%1 durch den Superficialis des Mittelfingers</translation>
    </message>
    <message>
        <source>%1 by the superficialis of the ring finger</source>
        <translation>%1 durch den Superficialis des Ringfingers</translation>
    </message>
    <message>
        <source>%1 by the superficialis of the little finger</source>
        <translation>%1 durch den Superficialis des Kleinfingers</translation>
    </message>
    <message>
        <source>for another palsy: accessory</source>
        <translation>für eine andere Parese: N. accessorius</translation>
    </message>
    <message>
        <source>for another palsy: median</source>
        <translation>für eine andere Parese: N. medianus</translation>
    </message>
    <message>
        <source>for another palsy: radial</source>
        <translation>für eine andere Parese: N. radialis</translation>
    </message>
    <message>
        <source>for another palsy: ulnar</source>
        <translation>für eine andere Parese: N. ulnaris</translation>
    </message>
    <message>
        <source>for another palsy: posterior interosseous</source>
        <translation>für eine andere Parese: N. interosseus posterior</translation>
    </message>
    <message>
        <source>Baltzer 2016: 13 with the transfer: intrinsic muscles recovered in 11 (0.38 of matched controls)</source>
        <translation>Baltzer 2016: 13 mit dem Transfer: Binnenmuskeln erholt bei 11 (0.38 der gematchten Kontrollen)</translation>
    </message>
    <message>
        <source>Xie 2021: randomised: good or excellent hand function in 0.67 of 45, against 0.35 of 48 decompressed alone</source>
        <translation>Xie 2021: randomisiert: gute oder sehr gute Handfunktion bei 0.67 von 45, gegen 0.35 von 48 nur Dekomprimierten</translation>
    </message>
    <message>
        <source>Numb lateral foot border. Numb lateral foot. Sensory loss reported by 87.2 %; pain 25.6 %; cold sensitivity 22.2 %; functional impairment 10 %. Touch loss over calcaneus and cuboid in 84 %; no long-term pain.</source>
        <translation>Lateraler Fußrand taub. Lateraler Fuß taub. Gefühlsverlust von 87.2 % berichtet; Schmerz 25.6 %; Kälteempfindlichkeit 22.2 %; funktionelle Einschränkung 10 %. Verlust der Berührungsempfindung über Kalkaneus und Kuboid bei 84 %; kein langfristiger Schmerz.</translation>
    </message>
    <message>
        <source>when: late</source>
        <translation>wann: spät</translation>
    </message>
    <message>
        <source>%1, deltoid (anterior, middle)</source>
        <translation>%1, Deltoideus (vorn, Mitte)</translation>
    </message>
    <message>
        <source>%1 mm proximal to the distal wrist crease</source>
        <translation>%1 mm proximal der distalen Handgelenkbeugefalte</translation>
    </message>
    <message>
        <source>%1 mm distal to the distal wrist crease</source>
        <translation>%1 mm distal der distalen Handgelenkbeugefalte</translation>
    </message>
    <message>
        <source>at the level of the distal wrist crease</source>
        <translation>auf Höhe der distalen Handgelenkbeugefalte</translation>
    </message>
    <message>
        <source>%1 mm proximal to the distal wrist crease, %2</source>
        <translation>%1 mm proximal der distalen Handgelenkbeugefalte, %2</translation>
    </message>
    <message>
        <source>%1 mm distal to the distal wrist crease, %2</source>
        <translation>%1 mm distal der distalen Handgelenkbeugefalte, %2</translation>
    </message>
    <message>
        <source>at the level of the distal wrist crease, %1</source>
        <translation>auf Höhe der distalen Handgelenkbeugefalte, %1</translation>
    </message>
    <message>
        <source>the injury of %1</source>
        <translation>die Verletzung vom %1</translation>
    </message>
    <message>
        <source>%1 lies after today, %2</source>
        <translation>%1 liegt nach heute, %2</translation>
    </message>
    <message>
        <source>Correct the date, or give the right --today.</source>
        <translation>Datum berichtigen oder das richtige --today angeben.</translation>
    </message>
    <message>
        <source>this is the injury of {1} again</source>
        <translation>das ist noch einmal die Verletzung von {1}</translation>
    </message>
    <message>
        <source>Delete one of the two, or give each its own place.</source>
        <translation>Eine der beiden löschen oder jeder einen eigenen Ort geben.</translation>
    </message>
    <message>
        <source>the key {1} stands twice here</source>
        <translation>der Schlüssel {1} steht hier zweimal</translation>
    </message>
    <message>
        <source>Keep the one that is right and delete the other.</source>
        <translation>Den richtigen behalten und den anderen löschen.</translation>
    </message>
    <message>
        <source>the text is not valid UTF-8</source>
        <translation>der Text ist kein gültiges UTF-8</translation>
    </message>
    <message>
        <source>Save the file with the encoding UTF-8.</source>
        <translation>Die Datei in der Kodierung UTF-8 speichern.</translation>
    </message>
    <message>
        <source>this is not a JSON value</source>
        <translation>das ist kein JSON-Wert</translation>
    </message>
    <message>
        <source>Write a number, true, false or a text in quotes; NaN and Infinity are not values, so leave an unknown key out.</source>
        <translation>Eine Zahl, true, false oder einen Text in Anführungszeichen schreiben; NaN und Infinity sind keine Werte, einen unbekannten Schlüssel also weglassen.</translation>
    </message>
    <message>
        <source>this is not valid JSON: {1}</source>
        <translation>das ist kein gültiges JSON: {1}</translation>
    </message>
    <message>
        <source>Look for a missing quote, comma or bracket just before this place.</source>
        <translation>Kurz vor dieser Stelle nach fehlendem Anführungszeichen, Komma oder fehlender Klammer suchen.</translation>
    </message>
    <message>
        <source>the file has {1} bytes, more than {2}</source>
        <translation>die Datei hat {1} Byte, mehr als {2}</translation>
    </message>
    <message>
        <source>Check that this is a case file; one case takes a few thousand bytes.</source>
        <translation>Prüfen, ob dies eine Falldatei ist; ein Fall braucht einige tausend Byte.</translation>
    </message>
    <message>
        <source>a number here is too large to hold</source>
        <translation>eine Zahl ist hier zu groß</translation>
    </message>
    <message>
        <source>Write it in the unit that the key names, or leave the key out.</source>
        <translation>In der Einheit schreiben, die der Schlüssel nennt, oder den Schlüssel weglassen.</translation>
    </message>
    <message>
        <source>the file is nested deeper than {1} levels</source>
        <translation>die Datei ist tiefer als {1} Ebenen verschachtelt</translation>
    </message>
    <message>
        <source>Remove the extra brackets.</source>
        <translation>Die überzähligen Klammern entfernen.</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>Nearest names: {1}.</source>
        <translation>Ähnlichste Namen: {1}.</translation>
    </message>
    <message>
        <source>{1} stands for several</source>
        <translation>{1} steht für mehrere</translation>
    </message>
    <message>
        <source>Name one of: {1}.</source>
        <translation>Eines davon nennen: {1}.</translation>
    </message>
    <message>
        <source>null is no value</source>
        <translation>null ist kein Wert</translation>
    </message>
    <message>
        <source>Leave the key out: what is not given is unknown.</source>
        <translation>Den Schlüssel weglassen: was nicht angegeben ist, ist unbekannt.</translation>
    </message>
    <message>
        <source>%1 stands where %2 belongs</source>
        <translation>hier steht %1, hierher gehört %2</translation>
    </message>
    <message>
        <source>%1 stands where an object belongs</source>
        <translation>hier steht %1, hierher gehört ein Objekt</translation>
    </message>
    <message>
        <source>%1 stands where a text belongs</source>
        <translation>hier steht %1, hierher gehört ein Text</translation>
    </message>
    <message>
        <source>Write a number of %1 without quotes.</source>
        <translation>Eine Zahl in %1 ohne Anführungszeichen schreiben.</translation>
    </message>
    <message>
        <source>Give %1 from %2 to %3.</source>
        <translation>%1 von %2 bis %3 angeben.</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3 %4</source>
        <translation>%1 liegt außerhalb von %2 bis %3 %4</translation>
    </message>
    <message>
        <source>Give a whole number from {1} to {2}.</source>
        <translation>Eine ganze Zahl von {1} bis {2} angeben.</translation>
    </message>
    <message>
        <source>{1} is no whole number from {2} to {3}</source>
        <translation>{1} ist keine ganze Zahl von {2} bis {3}</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>per cent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>Write true or false without quotes, or leave the key out when it is unknown.</source>
        <translation>true oder false ohne Anführungszeichen schreiben oder den Schlüssel weglassen, wenn es unbekannt ist.</translation>
    </message>
    <message>
        <source>Write a text in quotes.</source>
        <translation>Einen Text in Anführungszeichen schreiben.</translation>
    </message>
    <message>
        <source>the text is empty</source>
        <translation>der Text ist leer</translation>
    </message>
    <message>
        <source>Fill it in, or leave the key out when it is unknown.</source>
        <translation>Ausfüllen oder den Schlüssel weglassen, wenn es unbekannt ist.</translation>
    </message>
    <message>
        <source>{1} is no day of the calendar from 1900 to 2199</source>
        <translation>{1} ist kein Kalendertag von 1900 bis 2199</translation>
    </message>
    <message>
        <source>Write the date as YYYY-MM-DD, such as "2026-06-01".</source>
        <translation>Das Datum als JJJJ-MM-TT schreiben, etwa "2026-06-01".</translation>
    </message>
    <message>
        <source>Write its keys between { and }.</source>
        <translation>Die Schlüssel zwischen { und } schreiben.</translation>
    </message>
    <message>
        <source>{1} is not one of the words of this key</source>
        <translation>{1} ist keines der Wörter dieses Schlüssels</translation>
    </message>
    <message>
        <source>Write "{1}", or another of: {2}.</source>
        <translation>"{1}" schreiben oder ein anderes von: {2}.</translation>
    </message>
    <message>
        <source>Write the items between [ and ], even a single one.</source>
        <translation>Die Einträge zwischen [ und ] schreiben, auch einen einzelnen.</translation>
    </message>
    <message>
        <source>Write a name in quotes.</source>
        <translation>Einen Namen in Anführungszeichen schreiben.</translation>
    </message>
    <message>
        <source>the key is missing</source>
        <translation>der Schlüssel fehlt</translation>
    </message>
    <message>
        <source>Leave it out.</source>
        <translation>Weglassen.</translation>
    </message>
    <message>
        <source>Write "{1}" if that was meant, or leave it out; the keys here are: {2}.</source>
        <translation>"{1}" schreiben, wenn das gemeint war, oder weglassen; die Schlüssel sind hier: {2}.</translation>
    </message>
    <message>
        <source>{1} is no key of a case file here</source>
        <translation>{1} ist hier kein Schlüssel einer Falldatei</translation>
    </message>
    <message>
        <source>Write "endplate_case": 1.</source>
        <translation>"endplate_case": 1 schreiben.</translation>
    </message>
    <message>
        <source>{1} is no version that this program reads</source>
        <translation>{1} ist keine Version, die dieses Programm liest</translation>
    </message>
    <message>
        <source>{1} is listed already</source>
        <translation>{1} ist schon aufgeführt</translation>
    </message>
    <message>
        <source>Delete one of the two.</source>
        <translation>Eines von beiden löschen.</translation>
    </message>
    <message>
        <source>{1} is no red flag of the list</source>
        <translation>{1} ist kein Alarmzeichen der Liste</translation>
    </message>
    <message>
        <source>{1} is no red flag</source>
        <translation>{1} ist kein Alarmzeichen</translation>
    </message>
    <message>
        <source>Write one of: {1}.</source>
        <translation>Eines davon schreiben: {1}.</translation>
    </message>
    <message>
        <source>Use one of: {1}.</source>
        <translation>Eines davon verwenden: {1}.</translation>
    </message>
    <message>
        <source>the file is not one JSON object</source>
        <translation>die Datei ist nicht ein einzelnes JSON-Objekt</translation>
    </message>
    <message>
        <source>Begin with { "endplate_case": 1 and see the format's page or the example cases.</source>
        <translation>Mit { "endplate_case": 1 beginnen; siehe die Seite zum Format oder die Beispielfälle.</translation>
    </message>
    <message>
        <source>Write 0 to 5, or a text with a plain hyphen or plus such as "4-"; leave the muscle out where it was not examined.</source>
        <translation>0 bis 5 schreiben oder einen Text mit einfachem Minus oder Plus wie "4-"; den Muskel weglassen, wo er nicht untersucht wurde.</translation>
    </message>
    <message>
        <source>{1} is no grade of the MRC scale</source>
        <translation>{1} ist kein Grad der MRC-Skala</translation>
    </message>
    <message>
        <source>Keep one entry; a later finding belongs to observations.</source>
        <translation>Einen Eintrag behalten; ein späterer Befund gehört zu observations.</translation>
    </message>
    <message>
        <source>Name the muscle.</source>
        <translation>Den Muskel nennen.</translation>
    </message>
    <message>
        <source>Name the movement.</source>
        <translation>Die Bewegung nennen.</translation>
    </message>
    <message>
        <source>Give active_deg, passive_deg or both in degrees.</source>
        <translation>active_deg, passive_deg oder beide in Grad angeben.</translation>
    </message>
    <message>
        <source>the active range is larger than the passive one</source>
        <translation>der aktive Bewegungsumfang ist größer als der passive</translation>
    </message>
    <message>
        <source>Check both; the limb cannot move itself further than it can be moved.</source>
        <translation>Beide prüfen; der Arm kann sich nicht weiter bewegen, als er bewegt werden kann.</translation>
    </message>
    <message>
        <source>{1} contradicts the state {2}</source>
        <translation>{1} widerspricht dem Zustand {2}</translation>
    </message>
    <message>
        <source>Keep the one that was found.</source>
        <translation>Den gefundenen behalten.</translation>
    </message>
    <message>
        <source>Name the skin area.</source>
        <translation>Das Hautareal nennen.</translation>
    </message>
    <message>
        <source>Give state, s_grade or two_point_mm; leave the area out where it was not examined.</source>
        <translation>state, s_grade oder two_point_mm angeben; das Areal weglassen, wo es nicht untersucht wurde.</translation>
    </message>
    <message>
        <source>Name the sign.</source>
        <translation>Das Zeichen nennen.</translation>
    </message>
    <message>
        <source>Write "present" or "absent".</source>
        <translation>"present" oder "absent" schreiben.</translation>
    </message>
    <message>
        <source>Keep one entry.</source>
        <translation>Einen Eintrag behalten.</translation>
    </message>
    <message>
        <source>Name the nerve that was tapped.</source>
        <translation>Den beklopften Nerv nennen.</translation>
    </message>
    <message>
        <source>one entry holds the test of a muscle or of a nerve, not of both</source>
        <translation>ein Eintrag enthält die Prüfung eines Muskels oder eines Nervs, nicht beider</translation>
    </message>
    <message>
        <source>Make two entries.</source>
        <translation>Zwei Einträge anlegen.</translation>
    </message>
    <message>
        <source>Name the muscle or the nerve that was tested.</source>
        <translation>Den geprüften Muskel oder Nerv nennen.</translation>
    </message>
    <message>
        <source>the test has no finding</source>
        <translation>die Prüfung hat keinen Befund</translation>
    </message>
    <message>
        <source>Give fibrillation, units, snap, cmap or stimulation.</source>
        <translation>fibrillation, units, snap, cmap oder stimulation angeben.</translation>
    </message>
    <message>
        <source>this is found in a muscle, not in a nerve</source>
        <translation>das findet man in einem Muskel, nicht in einem Nerv</translation>
    </message>
    <message>
        <source>a sensory potential is recorded from a nerve, not from a muscle</source>
        <translation>ein sensibles Potenzial leitet man von einem Nerv ab, nicht von einem Muskel</translation>
    </message>
    <message>
        <source>Name the nerve.</source>
        <translation>Den Nerv nennen.</translation>
    </message>
    <message>
        <source>Name the landmark from which the point is measured.</source>
        <translation>Die Landmarke nennen, von der aus der Punkt gemessen ist.</translation>
    </message>
    <message>
        <source>the distance has no direction</source>
        <translation>der Abstand hat keine Richtung</translation>
    </message>
    <message>
        <source>the direction has no distance</source>
        <translation>die Richtung hat keinen Abstand</translation>
    </message>
    <message>
        <source>Write "aside": "anterior", "posterior", "medial" or "lateral".</source>
        <translation>"aside": "anterior", "posterior", "medial" oder "lateral" schreiben.</translation>
    </message>
    <message>
        <source>Give aside_mm in mm, or leave both out.</source>
        <translation>aside_mm in mm angeben oder beide weglassen.</translation>
    </message>
    <message>
        <source>List the points of the cut in their order.</source>
        <translation>Die Punkte des Schnitts in ihrer Reihenfolge aufführen.</translation>
    </message>
    <message>
        <source>the incision has no point</source>
        <translation>der Schnitt hat keinen Punkt</translation>
    </message>
    <message>
        <source>Give at least one point.</source>
        <translation>Mindestens einen Punkt angeben.</translation>
    </message>
    <message>
        <source>the plexus is not one nerve</source>
        <translation>der Plexus ist nicht ein Nerv</translation>
    </message>
    <message>
        <source>Place the injury by "at": a root, trunk or cord; several are several injuries.</source>
        <translation>Die Verletzung mit "at" verorten: Wurzel, Truncus oder Fasciculus; mehrere sind mehrere Verletzungen.</translation>
    </message>
    <message>
        <source>{1} and the place {2} disagree</source>
        <translation>{1} und der Ort {2} passen nicht zusammen</translation>
    </message>
    <message>
        <source>Leave nerve out where a root, trunk or cord is the place; an injury of the nerve itself is an entry of its own.</source>
        <translation>nerve weglassen, wo Wurzel, Truncus oder Fasciculus der Ort ist; eine Verletzung des Nervs selbst ist ein eigener Eintrag.</translation>
    </message>
    <message>
        <source>{1} is no branch of {2}</source>
        <translation>{1} ist kein Ast von {2}</translation>
    </message>
    <message>
        <source>Write "nerve": "{1}", or place the injury on a branch of {2}.</source>
        <translation>"nerve": "{1}" schreiben oder die Verletzung auf einen Ast von {2} legen.</translation>
    </message>
    <message>
        <source>Name the nerve, or place the injury at a root, trunk or cord.</source>
        <translation>Den Nerv nennen oder die Verletzung an eine Wurzel, einen Truncus oder Fasciculus legen.</translation>
    </message>
    <message>
        <source>Name the nerve that is injured at this landmark.</source>
        <translation>Den an dieser Landmarke verletzten Nerv nennen.</translation>
    </message>
    <message>
        <source>{1} is given twice</source>
        <translation>{1} ist zweimal angegeben</translation>
    </message>
    <message>
        <source>Keep the one that is right.</source>
        <translation>Den richtigen behalten.</translation>
    </message>
    <message>
        <source>{1} is outside {2} to {3} degrees, the largest published range ({4})</source>
        <translation>{1} liegt außerhalb von {2} bis {3} Grad, dem größten veröffentlichten Umfang ({4})</translation>
    </message>
    <message>
        <source>Give %1 to %2 degrees: %3.</source>
        <translation>%1 bis %2 Grad angeben: %3.</translation>
    </message>
    <message>
        <source>stature_mm says the stature already</source>
        <translation>stature_mm sagt die Körpergröße schon</translation>
    </message>
    <message>
        <source>Keep stature_mm; the percentile follows from it.</source>
        <translation>stature_mm behalten; die Perzentile folgt daraus.</translation>
    </message>
    <message>
        <source>A percentile is one of people of a sex: give it, or stature_mm instead.</source>
        <translation>Eine Perzentile gilt für ein Geschlecht: es angeben oder stattdessen stature_mm.</translation>
    </message>
    <message>
        <source>Give a landmark, with offset_mm and toward unless it is there.</source>
        <translation>Eine Landmarke angeben, mit offset_mm und toward, außer es ist dort.</translation>
    </message>
    <message>
        <source>Name the nerve, or the branch whose origin was seen.</source>
        <translation>Den Nerv nennen oder den Ast, dessen Abgang gesehen wurde.</translation>
    </message>
    <message>
        <source>Name the point of the nerve, such as "origin" or "bifurcation".</source>
        <translation>Den Punkt des Nervs nennen, etwa "origin" oder "bifurcation".</translation>
    </message>
    <message>
        <source>only a graft has cables</source>
        <translation>nur ein Transplantat hat Kabel</translation>
    </message>
    <message>
        <source>Leave it out, or write "graft".</source>
        <translation>Weglassen oder "graft" schreiben.</translation>
    </message>
    <message>
        <source>only a graft or a nerve transfer has a donor</source>
        <translation>nur ein Transplantat oder ein Nerventransfer hat einen Spender</translation>
    </message>
    <message>
        <source>Leave it out, or write the procedure that was done.</source>
        <translation>Weglassen oder das durchgeführte Verfahren schreiben.</translation>
    </message>
    <message>
        <source>only a transposed ulnar nerve has a layer</source>
        <translation>nur ein verlagerter N. ulnaris hat eine Schicht</translation>
    </message>
    <message>
        <source>Leave it out, or write "transposition" of the "ulnar nerve".</source>
        <translation>Weglassen oder "transposition" des "ulnar nerve" schreiben.</translation>
    </message>
    <message>
        <source>a planned operation has recorded nothing yet</source>
        <translation>eine geplante Operation hat noch nichts abgeleitet</translation>
    </message>
    <message>
        <source>Leave it out, or write "state": "done".</source>
        <translation>Weglassen oder "state": "done" schreiben.</translation>
    </message>
    <message>
        <source>Name what was done.</source>
        <translation>Nennen, was gemacht wurde.</translation>
    </message>
    <message>
        <source>Give a landmark with offset_mm and toward, or a root, trunk, cord or branch.</source>
        <translation>Eine Landmarke mit offset_mm und toward angeben oder Wurzel, Truncus, Fasciculus oder Ast.</translation>
    </message>
    <message>
        <source>Give the distance from where the branch leaves its parent.</source>
        <translation>Den Abstand vom Abgang des Astes angeben.</translation>
    </message>
    <message>
        <source>the offset has no direction</source>
        <translation>der Abstand hat keine Richtung</translation>
    </message>
    <message>
        <source>the direction has no offset</source>
        <translation>die Richtung hat keinen Abstand</translation>
    </message>
    <message>
        <source>Write "toward": "proximal" or "distal".</source>
        <translation>"toward": "proximal" oder "distal" schreiben.</translation>
    </message>
    <message>
        <source>Give offset_mm in mm, or leave both out for the landmark itself.</source>
        <translation>offset_mm in mm angeben oder für die Landmarke selbst beide weglassen.</translation>
    </message>
    <message>
        <source>the place is empty</source>
        <translation>der Ort ist leer</translation>
    </message>
    <message>
        <source>nothing here says where on the nerve</source>
        <translation>nichts hier sagt, wo am Nerv</translation>
    </message>
    <message>
        <source>{1} and {2} are two places</source>
        <translation>{1} und {2} sind zwei Orte</translation>
    </message>
    <message>
        <source>Keep one; a second injury is an entry of its own.</source>
        <translation>Einen behalten; eine zweite Verletzung ist ein eigener Eintrag.</translation>
    </message>
    <message>
        <source>no nerve is called '{1}'</source>
        <translation>kein Nerv heißt „{1}“</translation>
    </message>
    <message>
        <source>Use a standard term of the nerve tree.</source>
        <translation>Einen Standardnamen des Nervenbaums verwenden.</translation>
    </message>
    <message>
        <source>a place by a landmark lies on some nerve, which is not given</source>
        <translation>ein Ort nach Landmarke liegt auf einem Nerv, der nicht angegeben ist</translation>
    </message>
    <message>
        <source>Name the injured nerve.</source>
        <translation>Den verletzten Nerv nennen.</translation>
    </message>
    <message>
        <source>no branch is called '{1}'</source>
        <translation>kein Ast heißt „{1}“</translation>
    </message>
    <message>
        <source>'{1}' is no branch of '{2}'</source>
        <translation>„{1}“ ist kein Ast von „{2}“</translation>
    </message>
    <message>
        <source>Name the nerve that the branch belongs to, or none.</source>
        <translation>Den Nerv nennen, zu dem der Ast gehört, oder keinen.</translation>
    </message>
    <message>
        <source>{1} mm from its origin lies beyond the '{2}', which is about {3} mm long in this limb</source>
        <translation>{1} mm vom Abgang liegt jenseits von „{2}“, der an diesem Arm etwa {3} mm lang ist</translation>
    </message>
    <message>
        <source>Give 0 to {1} mm.</source>
        <translation>0 bis {1} mm angeben.</translation>
    </message>
    <message>
        <source>the injury is of the '{1}' but its place is the '{2}'</source>
        <translation>die Verletzung betrifft „{1}“, ihr Ort ist aber „{2}“</translation>
    </message>
    <message>
        <source>Leave the nerve out, or give a place on it.</source>
        <translation>Den Nerv weglassen oder einen Ort daran angeben.</translation>
    </message>
    <message>
        <source>{1} mm proximal to the {2} lies beyond the {3}</source>
        <translation>{1} mm proximal von {2} liegt jenseits von {3}</translation>
    </message>
    <message>
        <source>{1} mm distal to the {2} lies beyond the {3}</source>
        <translation>{1} mm distal von {2} liegt jenseits von {3}</translation>
    </message>
    <message>
        <source>Give 0 to {1} mm proximal to the {2}.</source>
        <translation>0 bis {1} mm proximal von {2} angeben.</translation>
    </message>
    <message>
        <source>Give 0 to {1} mm distal to the {2}.</source>
        <translation>0 bis {1} mm distal von {2} angeben.</translation>
    </message>
    <message>
        <source>Give {1} to {2} mm proximal to the {3}.</source>
        <translation>{1} bis {2} mm proximal von {3} angeben.</translation>
    </message>
    <message>
        <source>Give {1} to {2} mm distal to the {3}.</source>
        <translation>{1} bis {2} mm distal von {3} angeben.</translation>
    </message>
    <message>
        <source>{1} mm proximal to the {2} lies outside the segment, or the nerve does not reach it</source>
        <translation>{1} mm proximal von {2} liegt außerhalb des Segments, oder der Nerv reicht nicht dorthin</translation>
    </message>
    <message>
        <source>{1} mm distal to the {2} lies outside the segment, or the nerve does not reach it</source>
        <translation>{1} mm distal von {2} liegt außerhalb des Segments, oder der Nerv reicht nicht dorthin</translation>
    </message>
    <message>
        <source>Give the place from another landmark.</source>
        <translation>Den Ort von einer anderen Landmarke aus angeben.</translation>
    </message>
    <message>
        <source>the model limb does not hold the landmark '{1}'</source>
        <translation>der Modellarm enthält die Landmarke „{1}“ nicht</translation>
    </message>
    <message>
        <source>Give the place from another landmark, such as the lateral epicondyle.</source>
        <translation>Den Ort von einer anderen Landmarke aus angeben, etwa dem Epicondylus lateralis.</translation>
    </message>
    <message>
        <source>the course of the '{1}' is not modelled, so no level finds it</source>
        <translation>der Verlauf von „{1}“ ist nicht modelliert, also findet ihn keine Höhe</translation>
    </message>
    <message>
        <source>Give the place as this branch and the distance from its origin.</source>
        <translation>Den Ort als diesen Ast und den Abstand von seinem Abgang angeben.</translation>
    </message>
    <message>
        <source>an offset from a landmark is not negative</source>
        <translation>ein Abstand von einer Landmarke ist nicht negativ</translation>
    </message>
    <message>
        <source>Give its size, and proximal or distal.</source>
        <translation>Seine Größe angeben und proximal oder distal.</translation>
    </message>
    <message>
        <source>a depth of nothing cuts nothing</source>
        <translation>eine Tiefe von null schneidet nichts</translation>
    </message>
    <message>
        <source>Give the depth in mm, above 0.</source>
        <translation>Die Tiefe in mm angeben, über 0.</translation>
    </message>
    <message>
        <source>a line needs two points</source>
        <translation>eine Linie braucht zwei Punkte</translation>
    </message>
    <message>
        <source>there is no point</source>
        <translation>es gibt keinen Punkt</translation>
    </message>
    <message>
        <source>Give where it begins and where it ends.</source>
        <translation>Anfang und Ende angeben.</translation>
    </message>
    <message>
        <source>Give the point of entry.</source>
        <translation>Den Eintrittspunkt angeben.</translation>
    </message>
    <message>
        <source>a portal, a pin or an injection has one point of entry</source>
        <translation>ein Portal, ein Draht oder eine Injektion hat einen Eintrittspunkt</translation>
    </message>
    <message>
        <source>Give one point, or make it a line.</source>
        <translation>Einen Punkt angeben oder eine Linie daraus machen.</translation>
    </message>
    <message>
        <source>there is no skin on that side at that level</source>
        <translation>auf dieser Seite ist auf dieser Höhe keine Haut</translation>
    </message>
    <message>
        <source>Leave out "surface", or give another level.</source>
        <translation>"surface" weglassen oder eine andere Höhe angeben.</translation>
    </message>
    <message>
        <source>the mark lies {1} mm off the skin</source>
        <translation>die Marke liegt {1} mm neben der Haut</translation>
    </message>
    <message>
        <source>Give an offset within the limb.</source>
        <translation>Einen Abstand innerhalb des Arms angeben.</translation>
    </message>
    <message>
        <source>there the skin is that of chest and armpit, which is not modelled</source>
        <translation>dort ist die Haut die von Brust und Achsel, die nicht modelliert ist</translation>
    </message>
    <message>
        <source>Mark a place on the arm, the forearm or the hand.</source>
        <translation>Eine Stelle an Oberarm, Unterarm oder Hand markieren.</translation>
    </message>
    <message>
        <source>the approach '{1}' cannot be drawn: {2}</source>
        <translation>der Zugang „{1}“ lässt sich nicht zeichnen: {2}</translation>
    </message>
    <message>
        <source>there is no approach '{1}' in the tables</source>
        <translation>in den Tabellen gibt es keinen Zugang „{1}“</translation>
    </message>
    <message>
        <source>Choose one of: {1}.</source>
        <translation>Eines davon wählen: {1}.</translation>
    </message>
    <message>
        <source>'{1}' names no landmark</source>
        <translation>„{1}“ nennt keine Landmarke</translation>
    </message>
    <message>
        <source>'{1}' stands for several landmarks</source>
        <translation>„{1}“ steht für mehrere Landmarken</translation>
    </message>
    <message>
        <source>Lengths are in mm: %1 cm is %2 mm.</source>
        <translation>Längen sind in mm: %1 cm sind %2 mm.</translation>
    </message>
</context>
</TS>

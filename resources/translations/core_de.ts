<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>core</name>
    <message>
        <source>With everything switched off, {} {} {}: {} in {}; {} may lose {}.</source>
        <translation>Ist alles ausgeschaltet, {1} {0} {2}: {3} in {4}; {5} darf {6} verlieren.</translation>
    </message>
    <message>
        <source>draws</source>
        <translation>zieht</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>ziehen</translation>
    </message>
    <message>
        <source>A battery that is drained below half starts no engine and ages fast.</source>
        <translation>Eine Batterie, die unter die Hälfte entladen wird, startet keinen Motor und altert schnell.</translation>
    </message>
    <message>
        <source>Feed {} over a contact of the ignition switch, after its fuse.</source>
        <translation>{} über einen Kontakt des Zündschalters speisen, nach dessen Sicherung.</translation>
    </message>
    <message>
        <source>State a shorter time between two charges, if the vehicle is never left longer.</source>
        <translation>Eine kürzere Zeit zwischen zwei Ladungen angeben, wenn das Fahrzeug nie länger steht.</translation>
    </message>
    <message>
        <source>Battery drained while parked</source>
        <translation>Batterie im Stand entladen</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation>übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>Put a resistor of {} before {}.</source>
        <translation>Einen Widerstand mit {} vor {} setzen.</translation>
    </message>
    <message>
        <source>Put a resistor of {} into {}, before {}.</source>
        <translation>Einen Widerstand mit {} in {} setzen, vor {}.</translation>
    </message>
    <message>
        <source>Add a resistor before {}</source>
        <translation>Widerstand vor {} einsetzen</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} charges {} with {}, over {} in all; it may make {}.</source>
        <translation>Der Kontakt {}–{} von {} lädt {} mit {}, über insgesamt {}; er darf {} einschalten.</translation>
    </message>
    <message>
        <source>An empty capacitor is a short for a moment: the small contact welds, and the load runs on.</source>
        <translation>Ein leerer Kondensator ist einen Augenblick lang ein Kurzschluss: Der kleine Kontakt verschweißt, und der Verbraucher läuft weiter.</translation>
    </message>
    <message>
        <source>Contact charges a capacitor</source>
        <translation>Kontakt lädt einen Kondensator</translation>
    </message>
    <message>
        <source>the contact's rating for making; I = V/R of the charge: physics</source>
        <translation>Einschaltvermögen des Kontakts; I = V/R der Ladung: Physik</translation>
    </message>
    <message>
        <source>by the nameplates of its loads</source>
        <translation>nach den Typenschildern der Verbraucher</translation>
    </message>
    <message>
        <source>{} of {} is plus and {} is minus: as {} leaves one under {}, the arc can reach the other, and plus lies on minus over it.</source>
        <translation>{} von {} liegt an Plus und {} an Minus: Wenn {} die eine bei {} verlässt, kann der Lichtbogen die andere erreichen, und Plus liegt über ihn an Minus.</translation>
    </message>
    <message>
        <source>The arc then draws the battery's current until the fuse opens or the relay has burnt out.</source>
        <translation>Der Lichtbogen zieht dann den Strom der Batterie, bis die Sicherung auslöst oder das Relais ausgebrannt ist.</translation>
    </message>
    <message>
        <source>Switch plus and minus with two relays, so that one opens before the other closes, instead of {}.</source>
        <translation>Plus und Minus statt mit {} mit zwei Relais schalten, sodass eines öffnet, bevor das andere schließt.</translation>
    </message>
    <message>
        <source>Leave {} of {} open</source>
        <translation>{} von {} offen lassen</translation>
    </message>
    <message>
        <source>Take the wire off {}: what hangs on {} then runs out by itself.</source>
        <translation>Die Leitung von {} abnehmen: Was an {} hängt, läuft dann von selbst aus.</translation>
    </message>
    <message>
        <source>Arc can bridge a changeover contact</source>
        <translation>Lichtbogen kann einen Wechselkontakt überbrücken</translation>
    </message>
    <message>
        <source>least current of an arc: Bell System paper on arcing of contacts, 1953; 0.4 A for silver from memory</source>
        <translation>kleinster Strom eines Lichtbogens: Bell-System-Aufsatz über Lichtbögen an Kontakten, 1953; 0,4 A für Silber aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>This circuit takes {} and the rest of the vehicle {}, {} together; {} is charged with {}.</source>
        <translation>Diese Schaltung nimmt {} auf und das übrige Fahrzeug {}, zusammen {}; {} wird mit {} geladen.</translation>
    </message>
    <message>
        <source>What the alternator or converter can't give comes out of the battery, until it is empty.</source>
        <translation>Was Lichtmaschine oder Wandler nicht liefern können, kommt aus der Batterie, bis sie leer ist.</translation>
    </message>
    <message>
        <source>Fit an alternator or converter for at least {}.</source>
        <translation>Eine Lichtmaschine oder einen Wandler für mindestens {} einbauen.</translation>
    </message>
    <message>
        <source>Switch off other consumers while the pump runs.</source>
        <translation>Andere Verbraucher ausschalten, während die Pumpe läuft.</translation>
    </message>
    <message>
        <source>Alternator or converter too weak</source>
        <translation>Lichtmaschine oder Wandler zu schwach</translation>
    </message>
    <message>
        <source>the source's charging current limit</source>
        <translation>Grenze des Ladestroms der Quelle</translation>
    </message>
    <message>
        <source>Draw the leakage at {} off</source>
        <translation>Leckstrom an {} ableiten</translation>
    </message>
    <message>
        <source>Fit a resistor of {} and {} beside the coil of {}.</source>
        <translation>Einen Widerstand mit {} und {} parallel zur Spule von {} setzen.</translation>
    </message>
    <message>
        <source>Switched off, the coil of {} still gets {} over {}; it lets go for certain below {}, 90 % of its drop-out current.</source>
        <translation>Ausgeschaltet bekommt die Spule von {} noch {} über {}; sicher fällt das Relais erst unter {} ab, 90 % seines Abfallstroms.</translation>
    </message>
    <message>
        <source>A relay that has once pulled in stays in: the pump does not stop.</source>
        <translation>Ein Relais, das einmal angezogen hat, bleibt angezogen: Die Pumpe hält nicht an.</translation>
    </message>
    <message>
        <source>Take {} off what switches the coil, or put a relay between.</source>
        <translation>{} von dem trennen, was die Spule schaltet, oder ein Relais dazwischensetzen.</translation>
    </message>
    <message>
        <source>Relay may not drop out</source>
        <translation>Relais fällt vielleicht nicht ab</translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.4</source>
        <translation>Caltrans-Normen für elektrische Ausrüstung 8.4</translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation>{} in {}</translation>
    </message>
    <message>
        <source>Lay {}.</source>
        <translation>{} verlegen.</translation>
    </message>
    <message>
        <source>Lay {}</source>
        <translation>{} verlegen</translation>
    </message>
    <message>
        <source>With {} of supply the coil of {} gets {}; hot, at {}, it needs {}.</source>
        <translation>Bei einer Versorgung mit {} bekommt die Spule von {} {}; heiß, bei {}, braucht sie {}.</translation>
    </message>
    <message>
        <source>A hot relay that has dropped out does not pull in again while the supply is low.</source>
        <translation>Ein heißes Relais, das abgefallen ist, zieht nicht wieder an, solange die Versorgung niedrig ist.</translation>
    </message>
    <message>
        <source>Choose a relay that pulls in at less as {}, or fit it where it is cooler.</source>
        <translation>Für {} ein Relais wählen, das schon bei weniger anzieht, oder es an einem kühleren Platz einbauen.</translation>
    </message>
    <message>
        <source>Relay may not pull in when hot</source>
        <translation>Relais zieht heiß vielleicht nicht an</translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.3; lowest supply set in the project's limits</source>
        <translation>Caltrans-Normen für elektrische Ausrüstung 8.3; niedrigste Versorgung in den Grenzen des Projekts gesetzt</translation>
    </message>
    <message>
        <source>Fit a resistor of about 680 Ω across {}'s coil: its current may have either direction.</source>
        <translation>Einen Widerstand von etwa 680 Ω parallel zur Spule von {} setzen: Ihr Strom kann in beide Richtungen fließen.</translation>
    </message>
    <message>
        <source>Use a relay with a built-in diode as {}.</source>
        <translation>Ein Relais mit eingebauter Diode als {} verwenden.</translation>
    </message>
    <message>
        <source>Build a diode into {}</source>
        <translation>Diode in {} einbauen</translation>
    </message>
    <message>
        <source>Fit a diode across the coil, cathode to {}.</source>
        <translation>Eine Diode parallel zur Spule setzen, Kathode an {}.</translation>
    </message>
    <message>
        <source>Add a diode across {}</source>
        <translation>Diode parallel zu {} einsetzen</translation>
    </message>
    <message>
        <source>the output {}–{} of {}</source>
        <translation>dem Ausgang {}–{} von {}</translation>
    </message>
    <message>
        <source>the contact {}–{} of {}</source>
        <translation>dem Kontakt {}–{} von {}</translation>
    </message>
    <message>
        <source>by I·√(L/C)</source>
        <translation>nach I·√(L/C)</translation>
    </message>
    <message>
        <source>by I·√(L/C), as far as the opening gap stands it</source>
        <translation>nach I·√(L/C), so weit der sich öffnende Spalt es aushält</translation>
    </message>
    <message>
        <source>{} is switched off without suppression: its coil makes a spike of {} ({}).</source>
        <translation>{} wird ohne Entstörung abgeschaltet: Die Spule erzeugt eine Spannungsspitze von {} ({}).</translation>
    </message>
    <message>
        <source>{} is switched off without suppression: its coil makes a spike of {} ({}); with the supply that makes {} across {}, which stands {}.</source>
        <translation>{} wird ohne Entstörung abgeschaltet: Die Spule erzeugt eine Spannungsspitze von {} ({}); mit der Versorgung ergibt das {} über {}, zulässig sind {}.</translation>
    </message>
    <message>
        <source>The output breaks down at every switch-off; in the end it fails closed.</source>
        <translation>Der Ausgang schlägt bei jedem Abschalten durch; am Ende bleibt er leitend.</translation>
    </message>
    <message>
        <source>The spike burns the contact that switches the coil and can destroy electronics nearby.</source>
        <translation>Die Spannungsspitze verbrennt den Kontakt, der die Spule schaltet, und kann Elektronik in der Nähe zerstören.</translation>
    </message>
    <message>
        <source>Coil without suppression</source>
        <translation>Spule ohne Entstörung</translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.1; spike: ISO 7637-2, pulse 1, or what the output stands</source>
        <translation>Caltrans-Normen für elektrische Ausrüstung 8.1; Spannungsspitze: ISO 7637-2, Impuls 1, oder was der Ausgang aushält</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} switches {}; below {} it does not stay clean.</source>
        <translation>Der Kontakt {}–{} von {} schaltet {}; unter {} bleibt er nicht sauber.</translation>
    </message>
    <message>
        <source>A power contact needs the small arc to burn off its film; without it fails now and then.</source>
        <translation>Ein Leistungskontakt braucht den kleinen Lichtbogen, um seinen Belag abzubrennen; ohne ihn versagt er ab und zu.</translation>
    </message>
    <message>
        <source>Choose a part with a contact for small loads as {}.</source>
        <translation>Ein Teil mit einem Kontakt für kleine Lasten als {} wählen.</translation>
    </message>
    <message>
        <source>Let a resistor beside the load draw what is missing.</source>
        <translation>Einen Widerstand parallel zum Verbraucher ziehen lassen, was fehlt.</translation>
    </message>
    <message>
        <source>Load too small for the contact</source>
        <translation>Last zu klein für den Kontakt</translation>
    </message>
    <message>
        <source>the contact's least current; 1 A for 40 to 70 A relays in their data sheets</source>
        <translation>Mindeststrom des Kontakts; 1 A für Relais von 40 bis 70 A in deren Datenblättern</translation>
    </message>
    <message>
        <source>Fit a diode across {}, cathode to {}, so that its current does not go through the arc.</source>
        <translation>Eine Diode parallel zu {} setzen, Kathode an {}, damit der Strom nicht durch den Lichtbogen geht.</translation>
    </message>
    <message>
        <source>Let {} switch a relay whose contact may break {}.</source>
        <translation>Mit {} ein Relais schalten, dessen Kontakt {} ausschalten darf.</translation>
    </message>
    <message>
        <source> ({}, {})</source>
        <translation> ({}, {})</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} opens under {} ({}); with {} load{} it may break {}.</source>
        <translation>Der Kontakt {}–{} von {} öffnet bei {} ({}); bei {} Last{} darf er {} ausschalten.</translation>
    </message>
    <message>
        <source>an inductive</source>
        <translation>induktiver</translation>
    </message>
    <message>
        <source>a resistive</source>
        <translation>ohmscher</translation>
    </message>
    <message>
        <source>FAA AC 43.13-1B, table 11-4: half the resistive rating</source>
        <translation>FAA AC 43.13-1B, Tabelle 11-4: die Hälfte des ohmschen Werts</translation>
    </message>
    <message>
        <source>The arc at opening eats the contact; in the end it sticks or no longer closes.</source>
        <translation>Der Lichtbogen beim Öffnen frisst den Kontakt; am Ende klebt er oder schließt nicht mehr.</translation>
    </message>
    <message>
        <source>Contact breaks too high a current</source>
        <translation>Kontakt schaltet zu hohen Strom aus</translation>
    </message>
    <message>
        <source>the contact's rating for breaking; kinds of load: IEC 60947-4-1 and IEC 60947-5-1</source>
        <translation>Ausschaltvermögen des Kontakts; Lastarten: IEC 60947-4-1 und IEC 60947-5-1</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} carries {} ({}); it is rated for {}{}.</source>
        <translation>Der Kontakt {}–{} von {} führt {} ({}); er ist für {} ausgelegt{}.</translation>
    </message>
    <message>
        <source>, and good for {} at {}</source>
        <translation>, zulässig {} bei {}</translation>
    </message>
    <message>
        <source>An overloaded contact heats up, softens its housing and in the end fails closed or open.</source>
        <translation>Ein überlasteter Kontakt wird heiß, weicht sein Gehäuse auf und bleibt am Ende geschlossen oder offen.</translation>
    </message>
    <message>
        <source>Choose a part with a contact for at least {} as {}.</source>
        <translation>Ein Teil mit einem Kontakt für mindestens {} als {} wählen.</translation>
    </message>
    <message>
        <source>Contact carries more than its rating</source>
        <translation>Kontakt führt mehr als seinen Nennstrom</translation>
    </message>
    <message>
        <source>the contact's rating; relays in heat: data sheet of a 70 A power relay; five seconds as continuous: common practice, no published source</source>
        <translation>Nennstrom des Kontakts; Relais in der Wärme: Datenblatt eines 70-A-Leistungsrelais; fünf Sekunden als dauernd: übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>Let a timer with delay on release hold the pump longer, so that it starts less often.</source>
        <translation>Die Pumpe mit einem abfallverzögerten Zeitrelais länger halten, damit sie seltener anläuft.</translation>
    </message>
    <message>
        <source>Choose a part with a longer electrical life or a larger contact as {}.</source>
        <translation>Für {} ein Teil mit längerer elektrischer Lebensdauer oder größerem Kontakt wählen.</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} closes {} times in the drive, about {} times in a year of {}. Rated for {} operations at {}, it lasts about {} at {} ({}): {} years, of {}.</source>
        <translation>Der Kontakt {}–{} von {} schließt {}-mal in der Fahrt, etwa {}-mal in einem Jahr mit {}. Ausgelegt für {} Schaltspiele bei {}, hält er etwa {} bei {} ({}): {} Jahre, verlangt sind {}.</translation>
    </message>
    <message>
        <source>A worn contact welds or no longer closes: the pump runs on, or not at all.</source>
        <translation>Ein verschlissener Kontakt verschweißt oder schließt nicht mehr: Die Pumpe läuft weiter oder gar nicht.</translation>
    </message>
    <message>
        <source>Contact worn out too soon</source>
        <translation>Kontakt zu früh verschlissen</translation>
    </message>
    <message>
        <source>the contact's rated operations; ten years, and how life goes with current: common practice, no published source</source>
        <translation>Schaltspiele des Kontakts nach Angabe; zehn Jahre, und wie die Lebensdauer vom Strom abhängt: übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source> into {}, {}</source>
        <translation> in {}, {}</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} closes on an inrush of {}{} ({}); it may make {}.</source>
        <translation>Der Kontakt {}–{} von {} schließt auf einen Einschaltstrom von {}{} ({}); er darf {} einschalten.</translation>
    </message>
    <message>
        <source>A contact that bounces on too high an inrush welds, and the load runs on.</source>
        <translation>Ein Kontakt, der bei zu hohem Einschaltstrom prellt, verschweißt, und der Verbraucher läuft weiter.</translation>
    </message>
    <message>
        <source>Choose a part that may make at least {} as {}.</source>
        <translation>Ein Teil, das mindestens {} einschalten darf, als {} wählen.</translation>
    </message>
    <message>
        <source>Contact closes on too high an inrush</source>
        <translation>Kontakt schließt auf zu hohen Einschaltstrom</translation>
    </message>
    <message>
        <source>the contact's rating for making; lamps: FAA AC 43.13-1B, table 11-4; kinds of load: IEC 60947-4-1</source>
        <translation>Einschaltvermögen des Kontakts; Lampen: FAA AC 43.13-1B, Tabelle 11-4; Lastarten: IEC 60947-4-1</translation>
    </message>
    <message>
        <source>After the pump's stop at {} the vacuum falls back by {} within {}; {} closes again after {}.</source>
        <translation>Nach dem Halt der Pumpe bei {} fällt der Unterdruck um {} binnen {} zurück; {} schließt nach {} wieder.</translation>
    </message>
    <message>
        <source>Gas that was pumped down fast warms up again and its pressure rises: the pump starts anew.</source>
        <translation>Schnell abgepumptes Gas erwärmt sich wieder, und sein Druck steigt: Die Pumpe läuft erneut an.</translation>
    </message>
    <message>
        <source>Let a timer with delay on release run the pump on after the switch has opened.</source>
        <translation>Die Pumpe mit einem abfallverzögerten Zeitrelais nachlaufen lassen, nachdem der Schalter geöffnet hat.</translation>
    </message>
    <message>
        <source>Differential smaller than the pressure's creep back</source>
        <translation>Schaltdifferenz kleiner als das Zurückkriechen des Drucks</translation>
    </message>
    <message>
        <source>Use a relay with diode and zener inside as {}.</source>
        <translation>Ein Relais mit eingebauter Diode und Z-Diode als {} verwenden.</translation>
    </message>
    <message>
        <source>Build diode and zener into {}</source>
        <translation>Diode und Z-Diode in {} einbauen</translation>
    </message>
    <message>
        <source>Put a zener of {} in a row with {}, anode to anode.</source>
        <translation>Eine Z-Diode mit {} in Reihe mit {} setzen, Anode an Anode.</translation>
    </message>
    <message>
        <source>Add a zener to {}</source>
        <translation>Z-Diode zu {} hinzufügen</translation>
    </message>
    <message>
        <source>The diode across the coil of {} lets it go after {}, {} later than diode and zener would; its contact {}–{} then parts slowly under {}, of {} inductive that it may break.</source>
        <translation>Die Diode parallel zur Spule von {} lässt das Relais erst nach {} abfallen, {} später als Diode und Z-Diode; der Kontakt {}–{} trennt dann langsam bei {}; induktiv darf er {} ausschalten.</translation>
    </message>
    <message>
        <source>The armature lets go with little force: the arc burns longer and the contact can stick.</source>
        <translation>Der Anker löst sich mit wenig Kraft: Der Lichtbogen brennt länger, und der Kontakt kann kleben.</translation>
    </message>
    <message>
        <source>Diode lets a relay open slowly</source>
        <translation>Diode lässt ein Relais langsam öffnen</translation>
    </message>
    <message>
        <source>common practice, no published source; that it shortens contact life: coil-suppression application notes</source>
        <translation>übliche Praxis, ohne veröffentlichte Quelle; dass es die Lebensdauer der Kontakte verkürzt: Anwendungshinweise zur Entstörung von Spulen</translation>
    </message>
    <message>
        <source>carries</source>
        <translation>führt</translation>
    </message>
    <message>
        <source>takes as a surge</source>
        <translation>verträgt als Stoß</translation>
    </message>
    <message>
        <source>blocks</source>
        <translation>sperrt</translation>
    </message>
    <message>
        <source>Choose a larger diode as {}.</source>
        <translation>Für {} eine größere Diode wählen.</translation>
    </message>
    <message>
        <source>Choose a diode for {} as {}.</source>
        <translation>Eine Diode für {} als {} wählen.</translation>
    </message>
    <message>
        <source>Choose a larger diode as {}</source>
        <translation>Größere Diode für {} wählen</translation>
    </message>
    <message>
        <source>{} {} of the {} that it has to</source>
        <translation>{} {} der nötigen {}</translation>
    </message>
    <message>
        <source>{} {} {}.</source>
        <translation>{} {} {}.</translation>
    </message>
    <message>
        <source>across a winding</source>
        <translation>parallel zu einer Wicklung</translation>
    </message>
    <message>
        <source>in a feed</source>
        <translation>in einer Zuleitung</translation>
    </message>
    <message>
        <source>A diode that fails closed shorts the supply as soon as the winding is fed.</source>
        <translation>Eine Diode, die leitend ausfällt, schließt die Versorgung kurz, sobald die Wicklung gespeist wird.</translation>
    </message>
    <message>
        <source>A diode that fails opens the feed, or lets current through both ways.</source>
        <translation>Eine Diode, die ausfällt, unterbricht die Zuleitung oder lässt Strom in beide Richtungen durch.</translation>
    </message>
    <message>
        <source>Diode too small for its current or voltage</source>
        <translation>Diode zu klein für ihren Strom oder ihre Spannung</translation>
    </message>
    <message>
        <source>the diode's ratings; blocks three times the supply: relay contact protection in a card's manual</source>
        <translation>Nennwerte der Diode; sperrt das Dreifache der Versorgung: Kontaktschutz für Relais im Handbuch einer Steckkarte</translation>
    </message>
    <message>
        <source>What the rest of the drive would show, chatter or a press without assist, is not known.</source>
        <translation>Was der Rest der Fahrt zeigen würde, Flattern oder eine Bremsung ohne Unterstützung, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Look at the values and wires of the part that the message names.</source>
        <translation>Werte und Leitungen des Teils prüfen, das die Meldung nennt.</translation>
    </message>
    <message>
        <source>Drive not simulated to its end</source>
        <translation>Fahrt nicht bis zum Ende simuliert</translation>
    </message>
    <message>
        <source>Make {} {} long, in a sheath</source>
        <translation>{} {} lang machen, im Schutzrohr</translation>
    </message>
    <message>
        <source>{}.</source>
        <translation>{}.</translation>
    </message>
    <message>
        <source>A short right behind {} draws {}; the fuse interrupts {}.</source>
        <translation>Ein Kurzschluss direkt hinter {} zieht {}; die Sicherung schaltet {} ab.</translation>
    </message>
    <message>
        <source>A fuse beyond its breaking capacity arcs on, bursts and sets fire to its holder.</source>
        <translation>Eine Sicherung über ihrem Ausschaltvermögen brennt im Lichtbogen weiter, platzt und setzt ihren Halter in Brand.</translation>
    </message>
    <message>
        <source>Choose a fuse with a larger breaking capacity as {}.</source>
        <translation>Für {} eine Sicherung mit größerem Ausschaltvermögen wählen.</translation>
    </message>
    <message>
        <source>Fuse cannot interrupt the short-circuit current</source>
        <translation>Sicherung kann den Kurzschlussstrom nicht abschalten</translation>
    </message>
    <message>
        <source>the fuse's breaking capacity, 1000 A for ISO 8820-3</source>
        <translation>Ausschaltvermögen der Sicherung, 1000 A nach ISO 8820-3</translation>
    </message>
    <message>
        <source>Move {} to {}</source>
        <translation>{} an {} versetzen</translation>
    </message>
    <message>
        <source>{}, at most 0.178 m of wire before it.</source>
        <translation>{}, mit höchstens 0,178 m Leitung davor.</translation>
    </message>
    <message>
        <source>Move {} to the begin of {}.</source>
        <translation>{} an den Anfang von {} versetzen.</translation>
    </message>
    <message>
        <source>Sheathe the lead to {}</source>
        <translation>Zuleitung zu {} ins Schutzrohr legen</translation>
    </message>
    <message>
        <source>Put {} into a sheath all the way.</source>
        <translation>{} durchgehend in ein Schutzrohr legen.</translation>
    </message>
    <message>
        <source>{} of wire lie between {} and {}{}; {} are allowed.</source>
        <translation>{} Leitung liegen zwischen {} und {}{}; erlaubt sind {}.</translation>
    </message>
    <message>
        <source>, in a sheath</source>
        <translation>, im Schutzrohr</translation>
    </message>
    <message>
        <source>Nothing protects this piece of wire: when it chafes through, it burns.</source>
        <translation>Nichts schützt dieses Stück Leitung: Wenn es durchscheuert, brennt es.</translation>
    </message>
    <message>
        <source>Fuse far from the source</source>
        <translation>Sicherung weit von der Quelle</translation>
    </message>
    <message>
        <source>33 CFR 183.455(b)</source>
        <translation>33 CFR 183.455(b)</translation>
    </message>
    <message>
        <source>fuse of {} as {}</source>
        <translation>Sicherung mit {} als {}</translation>
    </message>
    <message>
        <source>Fit a {}.</source>
        <translation>{} einbauen.</translation>
    </message>
    <message>
        <source>Fit a {}</source>
        <translation>{} einbauen</translation>
    </message>
    <message>
        <source>Lay {} in a gauge for {}.</source>
        <translation>{} in einem Querschnitt für {} verlegen.</translation>
    </message>
    <message>
        <source>Lay larger wires behind the fuse</source>
        <translation>Größere Leitungen hinter der Sicherung verlegen</translation>
    </message>
    <message>
        <source>{} is rated for {}, but {} behind it may carry only {}.</source>
        <translation>{} ist für {} ausgelegt, aber {} dahinter darf nur {} führen.</translation>
    </message>
    <message>
        <source>An overload that the fuse carries for ever burns the wire's insulation.</source>
        <translation>Eine Überlast, die die Sicherung dauernd aushält, verbrennt die Isolierung der Leitung.</translation>
    </message>
    <message>
        <source>Share what {} feeds between several fuses.</source>
        <translation>Was {} speist, auf mehrere Sicherungen aufteilen.</translation>
    </message>
    <message>
        <source>Fuse larger than the wire it protects</source>
        <translation>Sicherung größer als die Leitung, die sie schützt</translation>
    </message>
    <message>
        <source>33 CFR 183.455</source>
        <translation>33 CFR 183.455</translation>
    </message>
    <message>
        <source>Give {} a fuse of its own.</source>
        <translation>{} eine eigene Sicherung geben.</translation>
    </message>
    <message>
        <source>{} of {} may open after {} of {}, but {} takes that for about {} when it starts.</source>
        <translation>{} mit {} kann nach {} bei {} auslösen, aber {} nimmt das beim Anlaufen etwa {} lang auf.</translation>
    </message>
    <message>
        <source>A fuse at the fast edge of its band opens without a fault, and the load is dead.</source>
        <translation>Eine Sicherung am schnellen Rand ihres Streubands löst ohne Fehler aus, und der Verbraucher ist tot.</translation>
    </message>
    <message>
        <source>Fuse may open on the inrush</source>
        <translation>Sicherung kann beim Einschaltstrom auslösen</translation>
    </message>
    <message>
        <source>fast edge of the opening times of blade fuses, data sheets to ISO 8820-3</source>
        <translation>schneller Rand der Auslösezeiten von Flachstecksicherungen, Datenblätter nach ISO 8820-3</translation>
    </message>
    <message>
        <source>Fit a {}, and lay {}.</source>
        <translation>{} einbauen und {} verlegen.</translation>
    </message>
    <message>
        <source>Feed {} over a fuse of its own.</source>
        <translation>{} über eine eigene Sicherung speisen.</translation>
    </message>
    <message>
        <source>Put a fuse of {} into {}, so that {} has its own.</source>
        <translation>Eine Sicherung mit {} in {} setzen, damit {} eine eigene hat.</translation>
    </message>
    <message>
        <source>Add a fuse for {}</source>
        <translation>Sicherung für {} einsetzen</translation>
    </message>
    <message>
        <source>{} feeds {} and {} as well.</source>
        <translation>{} speist {} und auch {}.</translation>
    </message>
    <message>
        <source>A fault there opens the fuse, and with the lamp or horn the brake assist is gone.</source>
        <translation>Ein Fehler dort löst die Sicherung aus, und mit Lampe oder Hupe ist auch die Bremsunterstützung weg.</translation>
    </message>
    <message>
        <source>Pump shares its fuse</source>
        <translation>Pumpe teilt ihre Sicherung</translation>
    </message>
    <message>
        <source>{} of {} opens in the drive at {}.</source>
        <translation>{} mit {} löst in der Fahrt bei {} aus.</translation>
    </message>
    <message>
        <source>{} of {} carries {} for long ({}); {} of its rating is {}.</source>
        <translation>{} mit {} führt {} dauernd ({}); {} des Nennstroms sind {}.</translation>
    </message>
    <message>
        <source>A fuse that is loaded too highly opens some day without a fault, and the pump stops.</source>
        <translation>Eine zu hoch belastete Sicherung löst eines Tages ohne Fehler aus, und die Pumpe hält an.</translation>
    </message>
    <message>
        <source>Fuse smaller than the load</source>
        <translation>Sicherung kleiner als die Last</translation>
    </message>
    <message>
        <source>continuous share set in the project's limits; 80 %: common practice, no published source</source>
        <translation>Daueranteil in den Grenzen des Projekts gesetzt; 80 %: übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>{} on the way back from {} has {}; no wire that feeds it is below {}.</source>
        <translation>{} auf dem Rückweg von {} hat {}; keine Leitung der Zuleitung liegt unter {}.</translation>
    </message>
    <message>
        <source>The way back carries the same current: there the voltage is lost and the wire warms.</source>
        <translation>Der Rückweg führt denselben Strom: Dort geht die Spannung verloren, und die Leitung wird warm.</translation>
    </message>
    <message>
        <source>Lay {} in {}.</source>
        <translation>{} in {} verlegen.</translation>
    </message>
    <message>
        <source>Lay {} in {}</source>
        <translation>{} in {} verlegen</translation>
    </message>
    <message>
        <source>Ground wire thinner than the feed</source>
        <translation>Masseleitung dünner als die Zuleitung</translation>
    </message>
    <message>
        <source>{} to {}</source>
        <translation>{} auf {}</translation>
    </message>
    <message>
        <source>Change {}.</source>
        <translation>{} ändern.</translation>
    </message>
    <message>
        <source>Change {}</source>
        <translation>{} ändern</translation>
    </message>
    <message>
        <source>Let a timer with delay on release bridge the gap.</source>
        <translation>Die Lücke mit einem abfallverzögerten Zeitrelais überbrücken.</translation>
    </message>
    <message>
        <source>{} holds {} for {}; in the drive at {} its command is gone for {}.</source>
        <translation>{} hält {} für {}; in der Fahrt bei {} fehlt der Befehl für {}.</translation>
    </message>
    <message>
        <source>The capacitor costs a charge at every closing, and the relay chatters all the same.</source>
        <translation>Der Kondensator kostet bei jedem Schließen eine Ladung, und das Relais flattert trotzdem.</translation>
    </message>
    <message>
        <source>Capacitor holds for too short a time</source>
        <translation>Kondensator hält zu kurz</translation>
    </message>
    <message>
        <source>the gap in the drive; gaps up to two seconds: common practice, no published source</source>
        <translation>die Lücke in der Fahrt; Lücken bis zwei Sekunden: übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>Choose a part whose input goes on at less as {}, or feed it past what lies in a row with it.</source>
        <translation>Für {} ein Teil wählen, dessen Eingang schon bei weniger einschaltet, oder es an dem vorbei speisen, was damit in Reihe liegt.</translation>
    </message>
    <message>
        <source>With {} of supply the input {} of {} gets {}; to go on for certain it needs {}.</source>
        <translation>Bei einer Versorgung mit {} bekommt der Eingang {} von {} {}; um sicher einzuschalten, braucht er {}.</translation>
    </message>
    <message>
        <source>While the supply is low, as at a start or with lamps on, the pump is not commanded.</source>
        <translation>Solange die Versorgung niedrig ist, wie beim Anlassen oder bei eingeschaltetem Licht, wird die Pumpe nicht angesteuert.</translation>
    </message>
    <message>
        <source>Input may not go on at low supply</source>
        <translation>Eingang schaltet bei niedriger Versorgung vielleicht nicht ein</translation>
    </message>
    <message>
        <source>the voltage at which the input goes on, and a tenth more: Caltrans equipment electrical standards 8.3; lowest supply set in the project's limits</source>
        <translation>Spannung, bei der der Eingang einschaltet, und ein Zehntel mehr: Caltrans-Normen für elektrische Ausrüstung 8.3; niedrigste Versorgung in den Grenzen des Projekts gesetzt</translation>
    </message>
    <message>
        <source>Let a relay instead of {} switch {}.</source>
        <translation>{1} mit einem Relais statt mit {0} schalten.</translation>
    </message>
    <message>
        <source>Fit a resistor of {} from {} to {}.</source>
        <translation>Einen Widerstand mit {} von {} nach {} setzen.</translation>
    </message>
    <message>
        <source>Off, {} still leaks {}: that leaves {} at the input {} of {}, which lets go below {}.</source>
        <translation>Ausgeschaltet lässt {} noch {} durch: Das ergibt {} am Eingang {} von {}, der erst unter {} ausschaltet.</translation>
    </message>
    <message>
        <source>The input stays on, or comes on by itself when it is warm: the pump does not stop.</source>
        <translation>Der Eingang bleibt ein oder schaltet bei Wärme von selbst ein: Die Pumpe hält nicht an.</translation>
    </message>
    <message>
        <source>Leakage keeps an input on</source>
        <translation>Leckstrom hält einen Eingang ein</translation>
    </message>
    <message>
        <source>the voltage at which the input goes off, the output's leakage</source>
        <translation>Spannung, bei der der Eingang ausschaltet, Leckstrom des Ausgangs</translation>
    </message>
    <message>
        <source>{} switches {} off, and the motor's {} find no way but through the semiconductor, which breaks down at {}.</source>
        <translation>{} schaltet {} aus, und die {} des Motors finden keinen Weg außer durch den Halbleiter, der bei {} durchschlägt.</translation>
    </message>
    <message>
        <source>Every switch-off drives the semiconductor into breakdown; in the end it fails closed.</source>
        <translation>Jedes Abschalten treibt den Halbleiter in den Durchbruch; am Ende bleibt er leitend.</translation>
    </message>
    <message>
        <source>Fit a diode across {}, cathode to {}.</source>
        <translation>Eine Diode parallel zu {} setzen, Kathode an {}.</translation>
    </message>
    <message>
        <source>Motor on a semiconductor without a freewheel diode</source>
        <translation>Motor am Halbleiter ohne Freilaufdiode</translation>
    </message>
    <message>
        <source>No check valve lies between {} and {}.</source>
        <translation>Zwischen {} und {} liegt kein Rückschlagventil.</translation>
    </message>
    <message>
        <source>When the pump stops, air leaks back through it and the assist is gone in seconds.</source>
        <translation>Wenn die Pumpe anhält, strömt Luft durch sie zurück, und die Unterstützung ist in Sekunden weg.</translation>
    </message>
    <message>
        <source>Put a check valve into the hose at {}.</source>
        <translation>Ein Rückschlagventil in den Schlauch an {} setzen.</translation>
    </message>
    <message>
        <source>Add a check valve at {}</source>
        <translation>Rückschlagventil an {} einsetzen</translation>
    </message>
    <message>
        <source>No check valve before the booster</source>
        <translation>Kein Rückschlagventil vor dem Bremskraftverstärker</translation>
    </message>
    <message>
        <source>49 CFR 393.50(b), text of earlier years</source>
        <translation>49 CFR 393.50(b), Text früherer Jahre</translation>
    </message>
    <message>
        <source>Current flows only where it can come back to the source: this part does nothing.</source>
        <translation>Strom fließt nur, wo er zur Quelle zurückkommen kann: Dieses Teil tut nichts.</translation>
    </message>
    <message>
        <source>A diode, semiconductor or capacitor bars the current through {} ({}).</source>
        <translation>Eine Diode, ein Halbleiter oder ein Kondensator sperrt den Strom durch {} ({}).</translation>
    </message>
    <message>
        <source>Turn the part that stands the wrong way round, or bridge the capacitor.</source>
        <translation>Das Teil umdrehen, das verkehrt herum steht, oder den Kondensator überbrücken.</translation>
    </message>
    <message>
        <source>Nothing feeds {} ({}): the circuit has no supply.</source>
        <translation>Nichts speist {} ({}): Die Schaltung hat keine Versorgung.</translation>
    </message>
    <message>
        <source>Place a supply and wire it.</source>
        <translation>Eine Versorgung setzen und anschließen.</translation>
    </message>
    <message>
        <source>No current can flow from a supply through {} ({}) and back.</source>
        <translation>Von einer Versorgung kann kein Strom durch {} ({}) und zurück fließen.</translation>
    </message>
    <message>
        <source>Wire {} between a feed and ground.</source>
        <translation>{} zwischen Zuleitung und Masse anschließen.</translation>
    </message>
    <message>
        <source>No return path</source>
        <translation>Kein Rückweg</translation>
    </message>
    <message>
        <source>No lamp or buzzer tells the driver that {} has too little vacuum.</source>
        <translation>Keine Lampe und kein Summer sagt dem Fahrer, dass {} zu wenig Unterdruck hat.</translation>
    </message>
    <message>
        <source>The loss of assist shows only when the pedal is hard: in the press that was needed.</source>
        <translation>Der Verlust der Unterstützung zeigt sich erst, wenn das Pedal hart ist: bei der Bremsung, die nötig war.</translation>
    </message>
    <message>
        <source>Feed {} from the battery over a fuse and a contact of the ignition switch of its own.</source>
        <translation>{} von der Batterie über eine eigene Sicherung und einen eigenen Kontakt des Zündschalters speisen.</translation>
    </message>
    <message>
        <source>{} feeds the pump or its control, and the warning {} as well.</source>
        <translation>{} speist die Pumpe oder ihre Steuerung und auch die Warnung {}.</translation>
    </message>
    <message>
        <source>The fuse that stops the pump silences the warning of it.</source>
        <translation>Die Sicherung, die die Pumpe stilllegt, lässt auch die Warnung davor verstummen.</translation>
    </message>
    <message>
        <source>No warning of low vacuum</source>
        <translation>Keine Warnung bei zu wenig Unterdruck</translation>
    </message>
    <message>
        <source>common practice, no published source; the idea: California Vehicle Code 26521</source>
        <translation>übliche Praxis, ohne veröffentlichte Quelle; die Idee: California Vehicle Code 26521</translation>
    </message>
    <message>
        <source>{} has nothing connected to terminal {}.</source>
        <translation>An {} ist die Klemme {} nicht angeschlossen.</translation>
    </message>
    <message>
        <source>{} has nothing connected to terminals {}.</source>
        <translation>An {} sind die Klemmen {} nicht angeschlossen.</translation>
    </message>
    <message>
        <source>A part with an open terminal does not work, or works only by chance.</source>
        <translation>Ein Teil mit einer offenen Klemme arbeitet nicht oder nur durch Zufall.</translation>
    </message>
    <message>
        <source>Wire {} of {} to where it belongs.</source>
        <translation>{} von {} dort anschließen, wo die Klemme hingehört.</translation>
    </message>
    <message>
        <source>Delete {} if it is not needed.</source>
        <translation>{} löschen, wenn es nicht gebraucht wird.</translation>
    </message>
    <message>
        <source>Open terminal</source>
        <translation>Offene Klemme</translation>
    </message>
    <message>
        <source>makes</source>
        <translation>einschalten</translation>
    </message>
    <message>
        <source>breaks</source>
        <translation>ausschalten</translation>
    </message>
    <message>
        <source>{} ({}–{})</source>
        <translation>{} ({}–{})</translation>
    </message>
    <message>
        <source>{} lie side by side: whichever closes first and opens last {} {} alone ({}), and one of them may no more than {}.</source>
        <translation>{0} liegen parallel: Was zuerst schließt und zuletzt öffnet, muss {2} allein {1} ({3}), und einer davon darf höchstens {4}.</translation>
    </message>
    <message>
        <source>They share what they carry, not what they make and break: one welds, then the other.</source>
        <translation>Sie teilen sich, was sie führen, nicht aber, was sie ein- und ausschalten: Einer verschweißt, dann der andere.</translation>
    </message>
    <message>
        <source>Choose parts of which each {} {} alone.</source>
        <translation>Teile wählen, von denen jedes {1} allein {0} kann.</translation>
    </message>
    <message>
        <source>Let the contacts switch the coil of one power relay, whose contact does all of it.</source>
        <translation>Mit den Kontakten die Spule eines einzigen Leistungsrelais schalten, dessen Kontakt alles übernimmt.</translation>
    </message>
    <message>
        <source>Contacts in parallel count as one</source>
        <translation>Parallele Kontakte zählen als einer</translation>
    </message>
    <message>
        <source>the rating of one contact; common practice, no published source</source>
        <translation>Nennwert eines Kontakts; übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>Only the pedal starts {}; no vacuum switch does.</source>
        <translation>Nur das Pedal startet {}; kein Unterdruckschalter tut es.</translation>
    </message>
    <message>
        <source>The pump begins when the assist is needed already, and fills up only while the foot is down.</source>
        <translation>Die Pumpe beginnt erst, wenn die Unterstützung schon gebraucht wird, und füllt nur auf, solange der Fuß unten ist.</translation>
    </message>
    <message>
        <source>Let a vacuum switch at the booster start the pump as well.</source>
        <translation>Die Pumpe auch mit einem Unterdruckschalter am Bremskraftverstärker starten.</translation>
    </message>
    <message>
        <source>Only the pedal starts the pump</source>
        <translation>Nur das Pedal startet die Pumpe</translation>
    </message>
    <message>
        <source>{} stands the wrong way round: its plus is on the body.</source>
        <translation>{} ist verkehrt herum angeschlossen: Der Pluspol liegt an der Karosserie.</translation>
    </message>
    <message>
        <source>{} stands the wrong way round: plus is on {} and belongs on {}.</source>
        <translation>{} ist verkehrt herum angeschlossen: Plus liegt an {} und gehört an {}.</translation>
    </message>
    <message>
        <source>Everything gets the wrong polarity: electronics fail at once, diodes short it.</source>
        <translation>Alles bekommt die falsche Polung: Elektronik fällt sofort aus, Dioden schließen kurz.</translation>
    </message>
    <message>
        <source>The part does not work that way round, and may burn or burst.</source>
        <translation>Das Teil arbeitet so herum nicht und kann verbrennen oder platzen.</translation>
    </message>
    <message>
        <source>Exchange the wires on {} and {}.</source>
        <translation>Die Leitungen an {} und {} vertauschen.</translation>
    </message>
    <message>
        <source>Exchange the wires of {}</source>
        <translation>Leitungen von {} vertauschen</translation>
    </message>
    <message>
        <source>Part the wrong way round</source>
        <translation>Teil verkehrt herum</translation>
    </message>
    <message>
        <source>Let a vacuum switch start the pump, so that the vacuum is there before the first press.</source>
        <translation>Die Pumpe mit einem Unterdruckschalter starten, damit der Unterdruck vor der ersten Bremsung da ist.</translation>
    </message>
    <message>
        <source>Raise the set point of the vacuum switch, or fit a larger reservoir or pump.</source>
        <translation>Den Schaltpunkt des Unterdruckschalters anheben oder einen größeren Speicher oder eine größere Pumpe einbauen.</translation>
    </message>
    <message>
        <source>Warn the driver of low vacuum with a lamp and a buzzer on a switch and fuse of their own.</source>
        <translation>Den Fahrer bei zu wenig Unterdruck mit Lampe und Summer an eigenem Schalter und eigener Sicherung warnen.</translation>
    </message>
    <message>
        <source>{} of {} of the drive {} full assist from {}; the worst, at {}, gets {} of the {} that it asks for ({}).</source>
        <translation>{} von {} der Fahrt {} die volle Unterstützung von {}; die schlechteste, bei {}, bekommt {} der verlangten {} ({}).</translation>
    </message>
    <message>
        <source>lacks</source>
        <translation>bekommt nicht</translation>
    </message>
    <message>
        <source>lack</source>
        <translation>bekommen nicht</translation>
    </message>
    <message>
        <source>Without assist the pedal needs several times the force, and the vehicle stops later.</source>
        <translation>Ohne Unterstützung braucht das Pedal ein Mehrfaches der Kraft, und das Fahrzeug hält später.</translation>
    </message>
    <message>
        <source>Press without assist</source>
        <translation>Bremsung ohne Unterstützung</translation>
    </message>
    <message>
        <source>1 press with assist is in store</source>
        <translation>1 Bremsung mit Unterstützung ist im Vorrat</translation>
    </message>
    <message>
        <source>{} presses with assist are in store</source>
        <translation>{} Bremsungen mit Unterstützung sind im Vorrat</translation>
    </message>
    <message>
        <source>With {} off while the vehicle rolls, {} is dead; {}, and the drive plan makes {}.</source>
        <translation>Ist {} aus, während das Fahrzeug rollt, ist {} tot; {}, und der Fahrtplan macht {}.</translation>
    </message>
    <message>
        <source>With {} off while the vehicle rolls, {} is dead; {}.</source>
        <translation>Ist {} aus, während das Fahrzeug rollt, ist {} tot; {}.</translation>
    </message>
    <message>
        <source>A key that is turned off too early, or an ignition switch that fails, takes the assist along.</source>
        <translation>Ein zu früh abgedrehter Schlüssel oder ein defekter Zündschalter nimmt die Unterstützung mit.</translation>
    </message>
    <message>
        <source>Tell the driver to keep {} on until the vehicle stands; write it on the sheet.</source>
        <translation>Den Fahrer anweisen, {} eingeschaltet zu lassen, bis das Fahrzeug steht; dies auf dem Blatt vermerken.</translation>
    </message>
    <message>
        <source>Fit a larger reservoir, so that the presses after that have their vacuum.</source>
        <translation>Einen größeren Speicher einbauen, damit die Bremsungen danach ihren Unterdruck haben.</translation>
    </message>
    <message>
        <source>Pump dead with the key off while rolling</source>
        <translation>Pumpe tot, wenn der Schlüssel im Rollen aus ist</translation>
    </message>
    <message>
        <source>{} runs for {} of the {} from {} on, a duty of {}; it is rated for {}.</source>
        <translation>{} läuft {} lang in den {} ab {}, eine Einschaltdauer von {}; ausgelegt ist die Pumpe für {}.</translation>
    </message>
    <message>
        <source>A pump beyond its duty gets hotter than its windings stand, and then the assist is gone.</source>
        <translation>Eine Pumpe über ihrer Einschaltdauer wird heißer, als ihre Wicklungen aushalten, und dann ist die Unterstützung weg.</translation>
    </message>
    <message>
        <source>Look for leaks; a tight system is pumped down once and kept.</source>
        <translation>Nach Lecks suchen; ein dichtes System wird einmal leer gepumpt und hält.</translation>
    </message>
    <message>
        <source>Fit a pump with a larger flow or for continuous duty.</source>
        <translation>Eine Pumpe mit größerer Förderleistung oder für Dauerbetrieb einbauen.</translation>
    </message>
    <message>
        <source>Pump beyond its duty</source>
        <translation>Pumpe über ihrer Einschaltdauer</translation>
    </message>
    <message>
        <source>the pump's rated duty in ten minutes</source>
        <translation>Nenn-Einschaltdauer der Pumpe in zehn Minuten</translation>
    </message>
    <message>
        <source>Lead {} over a contact of the ignition switch.</source>
        <translation>{} über einen Kontakt des Zündschalters führen.</translation>
    </message>
    <message>
        <source>Put an ignition contact into {}</source>
        <translation>Zündkontakt in {} einsetzen</translation>
    </message>
    <message>
        <source>Let a relay on the ignition switch feed the pump's circuit.</source>
        <translation>Den Stromkreis der Pumpe über ein Relais am Zündschalter speisen.</translation>
    </message>
    <message>
        <source>{} is fed with every hand switch off: it draws {} whenever the vacuum is low.</source>
        <translation>{} wird auch gespeist, wenn alle Handschalter aus sind: Die Pumpe zieht {}, sobald der Unterdruck zu gering ist.</translation>
    </message>
    <message>
        <source>In a parked car the vacuum leaks away: the pump runs unwatched until the battery is empty.</source>
        <translation>Im geparkten Wagen baut sich der Unterdruck durch Lecks ab: Die Pumpe läuft unbeaufsichtigt, bis die Batterie leer ist.</translation>
    </message>
    <message>
        <source>Pump fed with the key off</source>
        <translation>Pumpe bei ausgeschaltetem Schlüssel gespeist</translation>
    </message>
    <message>
        <source>{} runs for {} without a stop.</source>
        <translation>{} läuft {} ohne Halt.</translation>
    </message>
    <message>
        <source>A pump without a pause overheats and wears out, and then the assist is gone.</source>
        <translation>Eine Pumpe ohne Pause überhitzt und verschleißt, und dann ist die Unterstützung weg.</translation>
    </message>
    <message>
        <source>{} {} opens at {}; the vacuum gets to {} only.</source>
        <translation>{} {} öffnet bei {}; der Unterdruck erreicht nur {}.</translation>
    </message>
    <message>
        <source>Look for leaks; fit a pump with a better ultimate vacuum or a larger flow.</source>
        <translation>Nach Lecks suchen; eine Pumpe mit besserem Endunterdruck oder größerer Förderleistung einbauen.</translation>
    </message>
    <message>
        <source>Pump never reaches the set point</source>
        <translation>Pumpe erreicht den Schaltpunkt nie</translation>
    </message>
    <message>
        <source>Australian heavy-vehicle inspection criteria: full vacuum within 60 s</source>
        <translation>Australische Prüfkriterien für schwere Fahrzeuge: voller Unterdruck binnen 60 s</translation>
    </message>
    <message>
        <source>Fit a reservoir, so that a press takes less of the vacuum; look for leaks.</source>
        <translation>Einen Speicher einbauen, damit eine Bremsung weniger vom Unterdruck nimmt; nach Lecks suchen.</translation>
    </message>
    <message>
        <source>{} starts {} times in an hour of this drive; it is rated for {}.</source>
        <translation>{} läuft {}-mal in einer Stunde dieser Fahrt an; ausgelegt ist die Pumpe für {}.</translation>
    </message>
    <message>
        <source>Each start is an inrush: brushes, contacts and windings wear with every one.</source>
        <translation>Jeder Anlauf bringt einen Einschaltstrom: Bürsten, Kontakte und Wicklungen verschleißen mit jedem.</translation>
    </message>
    <message>
        <source>Pump starts too often</source>
        <translation>Pumpe läuft zu oft an</translation>
    </message>
    <message>
        <source>the pump's rated starts in an hour</source>
        <translation>Nennwert der Pumpe für Anläufe in einer Stunde</translation>
    </message>
    <message>
        <source>Lay thicker or shorter wires to {} and back.</source>
        <translation>Dickere oder kürzere Leitungen zu {} und zurück verlegen.</translation>
    </message>
    <message>
        <source>Let the pump rest while the engine is cranked: feed its control from a contact that opens then.</source>
        <translation>Die Pumpe ruhen lassen, während der Motor angelassen wird: ihre Steuerung von einem Kontakt speisen, der dann öffnet.</translation>
    </message>
    <message>
        <source>Charge or change the battery, and clean its terminals.</source>
        <translation>Die Batterie laden oder ersetzen und ihre Klemmen reinigen.</translation>
    </message>
    <message>
        <source>{} gets {} ({}); it works down to {}.</source>
        <translation>{} bekommt {} ({}); nötig sind mindestens {}.</translation>
    </message>
    <message>
        <source>with {} at the battery, as in cranking or at full load</source>
        <translation>mit {} an der Batterie, wie beim Anlassen oder bei Volllast</translation>
    </message>
    <message>
        <source>A pump that gets too little voltage stalls, and the vacuum is not made good.</source>
        <translation>Eine Pumpe mit zu wenig Spannung bleibt stehen, und der Unterdruck wird nicht ersetzt.</translation>
    </message>
    <message>
        <source>Too little voltage at the pump</source>
        <translation>Zu wenig Spannung an der Pumpe</translation>
    </message>
    <message>
        <source>the pump's lowest voltage; ISO 16750-2, code D, for the lowest supply</source>
        <translation>niedrigste Spannung der Pumpe; ISO 16750-2, Code D, für die niedrigste Versorgung</translation>
    </message>
    <message>
        <source>A part beyond what it stands fails early: it melts, corrodes, or water shorts it.</source>
        <translation>Ein Teil, das mehr ertragen muss, als es verträgt, fällt früh aus: Es schmilzt, korrodiert, oder Wasser schließt es kurz.</translation>
    </message>
    <message>
        <source>Fit {} in a cooler or drier place, or choose one that is made for {}.</source>
        <translation>{} an einem kühleren oder trockeneren Platz einbauen oder ein Teil wählen, das für {} gemacht ist.</translation>
    </message>
    <message>
        <source>{} stands {}; {} it gets {}.</source>
        <translation>{} verträgt {}; {} treten {} auf.</translation>
    </message>
    <message>
        <source>{} is {}; {} its second digit must be {} or more.</source>
        <translation>{} hat {}; {} muss die zweite Ziffer mindestens {} sein.</translation>
    </message>
    <message>
        <source>Part not made for its place in the vehicle</source>
        <translation>Teil nicht für seinen Platz im Fahrzeug gemacht</translation>
    </message>
    <message>
        <source>IEC 60529 for the code; temperatures: common practice, no published source</source>
        <translation>IEC 60529 für den Code; Temperaturen: übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>wires</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>hoses</source>
        <translation>Schläuche</translation>
    </message>
    <message>
        <source>Reference missing or given twice</source>
        <translation>Kennzeichen fehlt oder ist doppelt vergeben</translation>
    </message>
    <message>
        <source>IEC 81346-1: a reference designates one object; value from memory</source>
        <translation>IEC 81346-1: Ein Kennzeichen bezeichnet ein Objekt; Wert aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Set the delay of {}.</source>
        <translation>Die Verzögerung von {} einstellen.</translation>
    </message>
    <message>
        <source>Set the delay of {}</source>
        <translation>Verzögerung von {} einstellen</translation>
    </message>
    <message>
        <source>Let a timer with delay on release hold the pump for about five seconds after the vacuum switch has opened.</source>
        <translation>Die Pumpe mit einem abfallverzögerten Zeitrelais etwa fünf Sekunden halten, nachdem der Unterdruckschalter geöffnet hat.</translation>
    </message>
    <message>
        <source>{} {} times</source>
        <translation>{} {}-mal</translation>
    </message>
    <message>
        <source>Contacts chatter: within {} from {} on close {}.</source>
        <translation>Kontakte flattern: Innerhalb von {} ab {} schließen {}.</translation>
    </message>
    <message>
        <source>Each closing takes the pump's inrush: the contact welds or burns out within weeks.</source>
        <translation>Jedes Schließen trägt den Einschaltstrom der Pumpe: Der Kontakt verschweißt oder brennt binnen Wochen aus.</translation>
    </message>
    <message>
        <source>Relay chatter</source>
        <translation>Relais flattert</translation>
    </message>
    <message>
        <source>Let {} switch a relay</source>
        <translation>Mit {} ein Relais schalten</translation>
    </message>
    <message>
        <source>Put a power relay beside {}: {} switches its coil, and its contact the load.</source>
        <translation>Ein Leistungsrelais neben {} setzen: {} schaltet dessen Spule, und dessen Kontakt schaltet den Verbraucher.</translation>
    </message>
    <message>
        <source>Add a warning lamp for low vacuum</source>
        <translation>Warnlampe für zu wenig Unterdruck einsetzen</translation>
    </message>
    <message>
        <source>a reservoir of {} at {}</source>
        <translation>Speicher mit {} bei {}</translation>
    </message>
    <message>
        <source>Put in {}</source>
        <translation>{} einsetzen</translation>
    </message>
    <message>
        <source>Put in {}.</source>
        <translation>{} einsetzen.</translation>
    </message>
    <message>
        <source>Raise the set point of the vacuum switch, so that more vacuum is in store.</source>
        <translation>Den Schaltpunkt des Unterdruckschalters anheben, damit mehr Unterdruck im Vorrat ist.</translation>
    </message>
    <message>
        <source>When the pump dies at {}, {} has {} of {} with at least {} of the assist; {} are wanted.</source>
        <translation>Fällt die Pumpe bei {} aus, hat {} noch {} von {} mit mindestens {} der Unterstützung; verlangt sind {}.</translation>
    </message>
    <message>
        <source>With the pump dead, the stored vacuum must bring the vehicle to a stop.</source>
        <translation>Bei ausgefallener Pumpe muss der gespeicherte Unterdruck das Fahrzeug zum Stehen bringen.</translation>
    </message>
    <message>
        <source>Too few presses in reserve</source>
        <translation>Zu wenige Bremsungen in Reserve</translation>
    </message>
    <message>
        <source>the project's limit; two to three assisted presses: common practice, no published source</source>
        <translation>Grenze des Projekts; zwei bis drei unterstützte Bremsungen: übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>{}: closes at {}, opens {} higher</source>
        <translation>{} auf Schließen bei {} und Öffnen {} höher</translation>
    </message>
    <message>
        <source>Set {}.</source>
        <translation>{} einstellen.</translation>
    </message>
    <message>
        <source>Set {}</source>
        <translation>{} einstellen</translation>
    </message>
    <message>
        <source>Lower the set point of {}.</source>
        <translation>Den Schaltpunkt von {} senken.</translation>
    </message>
    <message>
        <source>{} opens at {}; at {}, the highest of the drive plan, {} pump reaches {}.</source>
        <translation>{} öffnet bei {}; auf {}, der größten Höhe des Fahrtplans, erreicht {} Pumpe {}.</translation>
    </message>
    <message>
        <source>a new</source>
        <translation>eine neue</translation>
    </message>
    <message>
        <source>a worn</source>
        <translation>eine verschlissene</translation>
    </message>
    <message>
        <source>The pump then never stops: it overheats, and one day the assist is gone.</source>
        <translation>Die Pumpe hält dann nie an: Sie überhitzt, und eines Tages ist die Unterstützung weg.</translation>
    </message>
    <message>
        <source>Fit a pump with a lower ultimate pressure.</source>
        <translation>Eine Pumpe mit niedrigerem Enddruck einbauen.</translation>
    </message>
    <message>
        <source>Set point out of the pump's reach</source>
        <translation>Schaltpunkt außer Reichweite der Pumpe</translation>
    </message>
    <message>
        <source>ISO 2533 for the ambient pressure; the pump's ultimate pressure</source>
        <translation>ISO 2533 für den Umgebungsdruck; Enddruck der Pumpe</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>{} plus</source>
        <translation>{} Plus</translation>
    </message>
    <message>
        <source>{} – {}</source>
        <translation>{} – {}</translation>
    </message>
    <message>
        <source>{} – minus</source>
        <translation>{} – Minus</translation>
    </message>
    <message>
        <source>{} closed</source>
        <translation>{} geschlossen</translation>
    </message>
    <message>
        <source>{} open</source>
        <translation>{} offen</translation>
    </message>
    <message>
        <source>{} blown</source>
        <translation>{} durchgebrannt</translation>
    </message>
    <message>
        <source>{} off the body</source>
        <translation>{} von der Karosserie getrennt</translation>
    </message>
    <message>
        <source>in every state</source>
        <translation>in jedem Zustand</translation>
    </message>
    <message>
        <source>with {}</source>
        <translation>bei {}</translation>
    </message>
    <message>
        <source>Put a diode into {}, against the current that should not flow.</source>
        <translation>Eine Diode in {} setzen, gegen den Strom, der nicht fließen soll.</translation>
    </message>
    <message>
        <source>Put a diode into {}</source>
        <translation>Diode in {} einsetzen</translation>
    </message>
    <message>
        <source>Give {} a ground of its own</source>
        <translation>{} eine eigene Masse geben</translation>
    </message>
    <message>
        <source>Give {} a ground point of its own.</source>
        <translation>{} einen eigenen Massepunkt geben.</translation>
    </message>
    <message>
        <source>Separate the two circuits: a contact of its own, or a relay, for each of them.</source>
        <translation>Die beiden Stromkreise trennen: ein eigener Kontakt oder ein eigenes Relais für jeden von ihnen.</translation>
    </message>
    <message>
        <source>{} gets {} {} by a path that does not command it: {}.</source>
        <translation>{} bekommt {} {} über einen Weg, der nicht zur Ansteuerung gehört: {}.</translation>
    </message>
    <message>
        <source>A fault then does more than put something out: it turns something else on, or keeps it on.</source>
        <translation>Ein Fehler schaltet dann nicht nur etwas aus: Er schaltet etwas anderes ein oder hält es eingeschaltet.</translation>
    </message>
    <message>
        <source>Something comes on, or stays on, that nobody has turned on.</source>
        <translation>Etwas geht an oder bleibt an, das niemand eingeschaltet hat.</translation>
    </message>
    <message>
        <source>{} switches, relays and fuses that hang together have {} combinations; a sample of {} of them was looked at for unintended paths.</source>
        <translation>{} zusammenhängende Schalter, Relais und Sicherungen haben {} Kombinationen; eine Stichprobe von {} davon wurde auf unbeabsichtigte Wege geprüft.</translation>
    </message>
    <message>
        <source>A path that only some other combination opens is not found.</source>
        <translation>Ein Weg, den nur eine andere Kombination öffnet, wird nicht gefunden.</translation>
    </message>
    <message>
        <source>Check parts of the circuit as circuits of their own, or look through it by hand.</source>
        <translation>Teile der Schaltung als eigene Schaltungen prüfen oder sie von Hand durchsehen.</translation>
    </message>
    <message>
        <source>Fed by a path that does not command it</source>
        <translation>Über einen Weg gespeist, der nicht zur Ansteuerung gehört</translation>
    </message>
    <message>
        <source>sneak analysis as ECSS-Q-TM-40-04 describes it, from memory</source>
        <translation>Sneak-Analyse, wie ECSS-Q-TM-40-04 sie beschreibt, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Choose a solid-state relay of at least {} as {}.</source>
        <translation>Ein Halbleiterrelais für mindestens {} als {} wählen.</translation>
    </message>
    <message>
        <source>a solid-state relay of {} as {}</source>
        <translation>Halbleiterrelais für {} als {}</translation>
    </message>
    <message>
        <source>Choose {}.</source>
        <translation>{} wählen.</translation>
    </message>
    <message>
        <source>Choose {}</source>
        <translation>{} wählen</translation>
    </message>
    <message>
        <source>{} carries {} ({}); sold as {}, it is good for {} with {} load.</source>
        <translation>{} führt {} ({}); als {} verkauft, taugt es für {} bei {} Last.</translation>
    </message>
    <message>
        <source>An overheated semiconductor mostly fails closed: the load runs on.</source>
        <translation>Ein überhitzter Halbleiter bleibt meist leitend: Der Verbraucher läuft weiter.</translation>
    </message>
    <message>
        <source>Use a power relay with a mechanical contact instead.</source>
        <translation>Stattdessen ein Leistungsrelais mit mechanischem Kontakt verwenden.</translation>
    </message>
    <message>
        <source>Solid-state relay beyond its derated current</source>
        <translation>Halbleiterrelais über seinem geminderten Strom</translation>
    </message>
    <message>
        <source>Fit {} on a heat sink of {}, junction to surroundings</source>
        <translation>{} auf einen Kühlkörper mit {} setzen, Sperrschicht bis Umgebung</translation>
    </message>
    <message>
        <source>Fit {} on a heat sink</source>
        <translation>{} auf einen Kühlkörper setzen</translation>
    </message>
    <message>
        <source>Choose a solid-state relay with less on-resistance as {}, or fit it where it is cooler.</source>
        <translation>Für {} ein Halbleiterrelais mit kleinerem Durchlasswiderstand wählen oder es an einem kühleren Platz einbauen.</translation>
    </message>
    <message>
        <source>{} carries {} ({}) over {} and gives the heat off over {}: its junction gets {}{} in surroundings of {}.</source>
        <translation>{} führt {} ({}) über {} und gibt die Wärme über {} ab: Die Sperrschicht kommt auf {}{} bei einer Umgebung von {}.</translation>
    </message>
    <message>
        <source>hotter and hotter, beyond </source>
        <translation>immer höhere Werte, über </translation>
    </message>
    <message>
        <source>Solid-state relay gets too hot</source>
        <translation>Halbleiterrelais wird zu heiß</translation>
    </message>
    <message>
        <source>guide to the heat of solid-state relays: junctions to 115 °C</source>
        <translation>Leitfaden zur Wärme von Halbleiterrelais: Sperrschichten bis 115 °C</translation>
    </message>
    <message>
        <source>Move {}</source>
        <translation>{} verschieben</translation>
    </message>
    <message>
        <source>{} lies under the symbol of {}, {} from clear paper.</source>
        <translation>{} liegt unter dem Symbol von {}, {} von freiem Papier entfernt.</translation>
    </message>
    <message>
        <source>{} grid steps</source>
        <translation>{} Rasterschritte</translation>
    </message>
    <message>
        <source>1 grid step</source>
        <translation>1 Rasterschritt</translation>
    </message>
    <message>
        <source>Whoever builds from the sheet does not see that wires meet there, or takes the part's terminal for the joint.</source>
        <translation>Wer nach dem Blatt baut, sieht nicht, dass sich dort Leitungen treffen, oder hält die Klemme des Teils für die Verbindung.</translation>
    </message>
    <message>
        <source>Move {} to the nearest clear place.</source>
        <translation>{} an die nächste freie Stelle verschieben.</translation>
    </message>
    <message>
        <source>Splice hidden under a part</source>
        <translation>Verbinder unter einem Teil verborgen</translation>
    </message>
    <message>
        <source>Put a diode of {} into the lead at {}, anode to it.</source>
        <translation>Eine Diode mit {} in die Zuleitung an {} setzen, Anode dorthin.</translation>
    </message>
    <message>
        <source>Add a diode at {}</source>
        <translation>Diode an {} einsetzen</translation>
    </message>
    <message>
        <source>Exchange the wires on the poles of {}.</source>
        <translation>Die Leitungen an den Polen von {} vertauschen.</translation>
    </message>
    <message>
        <source>Charge {} before it is joined, or join the two over a switch that separates them at rest.</source>
        <translation>{} vor dem Verbinden laden oder die beiden über einen Schalter verbinden, der sie in Ruhe trennt.</translation>
    </message>
    <message>
        <source>{} and {} stand {}: about {} flow from one into the other{}.</source>
        <translation>{} und {} liegen {}: Etwa {} fließen von einer in die andere{}.</translation>
    </message>
    <message>
        <source>plus on minus</source>
        <translation>Plus an Minus</translation>
    </message>
    <message>
        <source>side by side at different voltages</source>
        <translation>parallel bei verschiedenen Spannungen</translation>
    </message>
    <message>
        <source>Two batteries short each other until a wire burns or one of them bursts.</source>
        <translation>Zwei Batterien schließen einander kurz, bis eine Leitung brennt oder eine von ihnen platzt.</translation>
    </message>
    <message>
        <source>The weaker battery is charged without any limit: leads and battery get hot.</source>
        <translation>Die schwächere Batterie wird ohne jede Begrenzung geladen: Zuleitungen und Batterie werden heiß.</translation>
    </message>
    <message>
        <source>Two supplies against each other</source>
        <translation>Zwei Versorgungen gegeneinander</translation>
    </message>
    <message>
        <source>a tenth of the ampere-hours as charging current: common practice, no published source</source>
        <translation>ein Zehntel der Amperestunden als Ladestrom: übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>{} is short-circuited{}: about {} flow over {}{}.</source>
        <translation>{} ist kurzgeschlossen{}: Etwa {} fließen über {}{}.</translation>
    </message>
    <message>
        <source> and no fuse</source>
        <translation> und keine Sicherung</translation>
    </message>
    <message>
        <source> until {} opens</source>
        <translation> bis zum Auslösen von {}</translation>
    </message>
    <message>
        <source>A battery heats a shorted wire until its insulation burns.</source>
        <translation>Eine Batterie heizt eine kurzgeschlossene Leitung, bis ihre Isolierung brennt.</translation>
    </message>
    <message>
        <source>Take out the wire that leads past the load, or put the load into the way.</source>
        <translation>Die Leitung entfernen, die an der Last vorbeiführt, oder die Last in den Weg setzen.</translation>
    </message>
    <message>
        <source>Short across the supply</source>
        <translation>Kurzschluss der Versorgung</translation>
    </message>
    <message>
        <source>The diode inside {} stands the wrong way round: plus is on {}, and belongs on {}.</source>
        <translation>Die Diode in {} ist verkehrt herum: Plus liegt an {} und gehört an {}.</translation>
    </message>
    <message>
        <source>Exchange the coil wires of {}</source>
        <translation>Spulenleitungen von {} tauschen</translation>
    </message>
    <message>
        <source>{} across the winding stands the wrong way round: its anode is on plus.</source>
        <translation>{} an der Wicklung ist verkehrt herum eingebaut: die Anode liegt an Plus.</translation>
    </message>
    <message>
        <source>Turn {} round.</source>
        <translation>{} umdrehen.</translation>
    </message>
    <message>
        <source>Turn {} round</source>
        <translation>{} umdrehen</translation>
    </message>
    <message>
        <source>It shorts the supply as soon as the winding is switched on: the diode or the switch burns.</source>
        <translation>Sie schließt die Versorgung kurz, sobald die Wicklung eingeschaltet wird: die Diode oder der Schalter brennt durch.</translation>
    </message>
    <message>
        <source>Suppression diode the wrong way round</source>
        <translation>Löschdiode verkehrt herum</translation>
    </message>
    <message>
        <source>The coil of {} has {} suppressions: {}{}.</source>
        <translation>Die Spule von {} hat {} Entstörglieder: {}{}.</translation>
    </message>
    <message>
        <source>one built in, </source>
        <translation>ein eingebautes, </translation>
    </message>
    <message>
        <source>The slower one decides the release; the other is money and one more thing to fail.</source>
        <translation>Das langsamere bestimmt den Abfall; das andere kostet Geld und kann zusätzlich ausfallen.</translation>
    </message>
    <message>
        <source>Leave out {}.</source>
        <translation>{} weglassen.</translation>
    </message>
    <message>
        <source>Coil suppressed twice</source>
        <translation>Spule doppelt entstört</translation>
    </message>
    <message>
        <source>Move {} to the booster</source>
        <translation>{} zum Bremskraftverstärker verschieben</translation>
    </message>
    <message>
        <source>Connect {} between check valve and booster, with a tee.</source>
        <translation>{} mit einem T-Stück zwischen Rückschlagventil und Bremskraftverstärker anschließen.</translation>
    </message>
    <message>
        <source>Change the hoses so that the check valve lies between pump and switch.</source>
        <translation>Die Schläuche so ändern, dass das Rückschlagventil zwischen Pumpe und Schalter liegt.</translation>
    </message>
    <message>
        <source>{} senses the pump's side of the check valve, not the booster's.</source>
        <translation>{} misst auf der Pumpenseite des Rückschlagventils, nicht auf der des Bremskraftverstärkers.</translation>
    </message>
    <message>
        <source>That side loses its vacuum as soon as the pump stops: the pump starts again and again, and the switch knows nothing of the booster.</source>
        <translation>Diese Seite verliert ihren Unterdruck, sobald die Pumpe stoppt: Die Pumpe startet immer wieder, und der Schalter erfährt nichts vom Bremskraftverstärker.</translation>
    </message>
    <message>
        <source>Vacuum switch on the wrong side of the check valve</source>
        <translation>Unterdruckschalter auf der falschen Seite des Rückschlagventils</translation>
    </message>
    <message>
        <source>a motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>a filament lamp</source>
        <translation>Glühlampe</translation>
    </message>
    <message>
        <source>a coil</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>electronics</source>
        <translation>Elektronik</translation>
    </message>
    <message>
        <source>a resistive load</source>
        <translation>ohmsche Last</translation>
    </message>
    <message>
        <source>Join {} in a splice, and lead one wire of {} from there to {}.</source>
        <translation>{} in einem Verbinder zusammenführen und eine Leitung von {} von dort zu {} verlegen.</translation>
    </message>
    <message>
        <source>Add a splice at {}</source>
        <translation>Verbinder an {} hinzufügen</translation>
    </message>
    <message>
        <source>Put some of the wires on another terminal of the same line than {}.</source>
        <translation>Einige der Leitungen auf eine andere Klemme desselben Potenzials als {} legen.</translation>
    </message>
    <message>
        <source>{} wire ends are on {}, which takes {}: {}.</source>
        <translation>{} Leitungsenden liegen auf {}, Platz ist für {}: {}.</translation>
    </message>
    <message>
        <source>Too many wires in one crimp or under one screw work loose, and a loose joint gets hot.</source>
        <translation>Zu viele Leitungen in einer Crimpung oder unter einer Schraube lockern sich, und eine lockere Verbindung wird heiß.</translation>
    </message>
    <message>
        <source>Terminal with more wires than it takes</source>
        <translation>Klemme mit mehr Leitungen als zulässig</translation>
    </message>
    <message>
        <source>makes a single shot: the pump stops after the set time, however low the vacuum still is</source>
        <translation>gibt nur einen Impuls: Die Pumpe stoppt nach der eingestellten Zeit, wie niedrig der Unterdruck auch noch ist</translation>
    </message>
    <message>
        <source>delays on make: the pump starts late, and not at all for a shorter signal</source>
        <translation>ist ansprechverzögert: Die Pumpe startet spät und bei einem kürzeren Signal gar nicht</translation>
    </message>
    <message>
        <source>ignores a new signal during its delay: the run-on may end too early</source>
        <translation>ignoriert ein neues Signal während der Verzögerung: Der Nachlauf kann zu früh enden</translation>
    </message>
    <message>
        <source>Let a new signal start the time of {} anew.</source>
        <translation>Ein neues Signal die Zeit von {} neu starten lassen.</translation>
    </message>
    <message>
        <source>Let {} start anew</source>
        <translation>{} neu starten lassen</translation>
    </message>
    <message>
        <source>Set {} to delay on release.</source>
        <translation>{} auf rückfallverzögert stellen.</translation>
    </message>
    <message>
        <source>Set {} to delay on release</source>
        <translation>{} auf rückfallverzögert stellen</translation>
    </message>
    <message>
        <source>{} commands the pump and {}.</source>
        <translation>{} steuert die Pumpe und {}.</translation>
    </message>
    <message>
        <source>The run-on of a pump must start at once and begin anew with the last end of the signal.</source>
        <translation>Der Nachlauf einer Pumpe muss sofort beginnen und mit dem letzten Ende des Signals neu anfangen.</translation>
    </message>
    <message>
        <source>Timer cannot do what the pump needs</source>
        <translation>Zeitrelais kann nicht, was die Pumpe braucht</translation>
    </message>
    <message>
        <source>IEC 60050-445-01-04, off-delay with control signal; retriggerable: common practice, no published source</source>
        <translation>IEC 60050-445-01-04, rückfallverzögert mit Steuersignal; nachtriggerbar: übliche Praxis, ohne veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>Put a fuse of {} into {} at {}.</source>
        <translation>Eine Sicherung von {} in {} an {} setzen.</translation>
    </message>
    <message>
        <source>Add a fuse to {}</source>
        <translation>Sicherung in {} einsetzen</translation>
    </message>
    <message>
        <source>{} leads from {} to {} without a fuse.</source>
        <translation>{} führt ohne Sicherung von {} zu {}.</translation>
    </message>
    <message>
        <source>When this wire chafes through, the battery feeds the short until something burns.</source>
        <translation>Scheuert diese Leitung durch, speist die Batterie den Kurzschluss, bis etwas brennt.</translation>
    </message>
    <message>
        <source>Supply lead without a fuse</source>
        <translation>Versorgungsleitung ohne Sicherung</translation>
    </message>
    <message>
        <source>Lay larger wires to {}</source>
        <translation>Stärkere Leitungen zu {} verlegen</translation>
    </message>
    <message>
        <source>Shorten the wires to {}.</source>
        <translation>Die Leitungen zu {} kürzen.</translation>
    </message>
    <message>
        <source>{} loses {} of {} on the way to and from it ({}), {}.</source>
        <translation>{} verliert {} von {} auf Hin- und Rückweg ({}), {}.</translation>
    </message>
    <message>
        <source>running in the drive</source>
        <translation>im Betrieb während der Fahrt</translation>
    </message>
    <message>
        <source>by the nameplates, in the wires alone</source>
        <translation>nach den Typenschildern, nur in den Leitungen</translation>
    </message>
    <message>
        <source>A pump on low voltage runs slowly and takes longer to restore the vacuum.</source>
        <translation>Eine Pumpe mit niedriger Spannung läuft langsam und braucht länger, um den Unterdruck wiederherzustellen.</translation>
    </message>
    <message>
        <source>Voltage drop in feed and return</source>
        <translation>Spannungsfall in Hin- und Rückleitung</translation>
    </message>
    <message>
        <source>ABYC E-11: 10 % for circuits that are not critical; set in the project's limits</source>
        <translation>ABYC E-11: 10 % für unkritische Stromkreise; in den Grenzen des Projekts gesetzt</translation>
    </message>
    <message>
        <source>While {} starts with {}, {} are lost in wires and fuse; {} are usual at most.</source>
        <translation>Während {} mit {} anläuft, gehen {} in Leitungen und Sicherung verloren; üblich sind höchstens {}.</translation>
    </message>
    <message>
        <source>The motor starts slowly, and a relay on the same wires may drop out and chatter.</source>
        <translation>Der Motor läuft langsam an, und ein Relais an denselben Leitungen kann abfallen und flattern.</translation>
    </message>
    <message>
        <source>Voltage drop while the motor starts</source>
        <translation>Spannungsfall beim Anlauf des Motors</translation>
    </message>
    <message>
        <source>Fit a smaller fuse as {}, or give {} one of its own at its start.</source>
        <translation>Für {} eine kleinere Sicherung einsetzen, oder {} am Anfang eine eigene geben.</translation>
    </message>
    <message>
        <source>A short at the far end of {} draws {}; {} may take {} to open, but the wire stands it for {}.</source>
        <translation>Ein Kurzschluss am fernen Ende von {} zieht {}; {} kann zum Auslösen {} brauchen, aber die Leitung hält ihn nur {} aus.</translation>
    </message>
    <message>
        <source>for ever</source>
        <translation>beliebig lange</translation>
    </message>
    <message>
        <source>The wire burns before the fuse opens, and sets fire to what lies beside it.</source>
        <translation>Die Leitung brennt, bevor die Sicherung auslöst, und setzt in Brand, was neben ihr liegt.</translation>
    </message>
    <message>
        <source>Wire burns before the fuse opens</source>
        <translation>Leitung brennt, bevor die Sicherung auslöst</translation>
    </message>
    <message>
        <source>IEC 60949, IEC 60364-5-54: I²t = k²S²; slow edge of blade fuses</source>
        <translation>IEC 60949, IEC 60364-5-54: I²t = k²S²; langsame Grenze der Flachsicherungen</translation>
    </message>
    <message>
        <source>Share the load between several circuits, or lay {} where it is cooler.</source>
        <translation>Die Last auf mehrere Stromkreise verteilen, oder {} dort verlegen, wo es kühler ist.</translation>
    </message>
    <message>
        <source>{} of {} carries {} ({}); at {}{} it may carry {}.</source>
        <translation>{} mit {} führt {} ({}); bei {}{} darf sie {} führen.</translation>
    </message>
    <message>
        <source> in a bundle of {}</source>
        <translation> in einem Bündel von {}</translation>
    </message>
    <message>
        <source>A wire over its capacity gets hotter than its insulation stands.</source>
        <translation>Eine Leitung über ihrer Strombelastbarkeit wird heißer, als ihre Isolierung aushält.</translation>
    </message>
    <message>
        <source>Wire over its current capacity</source>
        <translation>Leitung über ihrer Strombelastbarkeit</translation>
    </message>
    <message>
        <source>33 CFR 183.425, table 5</source>
        <translation>33 CFR 183.425, Tabelle 5</translation>
    </message>
    <message>
        <source>Both ends of {} are on {}.</source>
        <translation>Beide Enden von {} liegen auf {}.</translation>
    </message>
    <message>
        <source>It joins nothing; most likely one end belongs elsewhere.</source>
        <translation>Sie verbindet nichts; vermutlich gehört ein Ende woandershin.</translation>
    </message>
    <message>
        <source>Delete {}.</source>
        <translation>{} löschen.</translation>
    </message>
    <message>
        <source>Delete {}</source>
        <translation>{} löschen</translation>
    </message>
    <message>
        <source>Put one end of {} where it belongs.</source>
        <translation>Ein Ende von {} dorthin legen, wohin es gehört.</translation>
    </message>
    <message>
        <source>Wire joins a terminal to itself</source>
        <translation>Leitung verbindet eine Klemme mit sich selbst</translation>
    </message>
    <message>
        <source>{} and {}</source>
        <translation>{} und {}</translation>
    </message>
    <message>
        <source>{}, {}</source>
        <translation>{}, {}</translation>
    </message>
    <message>
        <source> as soon as {} closes</source>
        <translation>, sobald {} schließt</translation>
    </message>
    <message>
        <source> as soon as {} close</source>
        <translation>, sobald {} schließen</translation>
    </message>
    <message>
        <source>in the drive at {}</source>
        <translation>in der Fahrt bei {}</translation>
    </message>
    <message>
        <source>1 press</source>
        <translation>1 Bremsung</translation>
    </message>
    <message>
        <source>{} presses</source>
        <translation>{} Bremsungen</translation>
    </message>
    <message>
        <source>Closes at pedal force</source>
        <translation>Schließt bei Pedalkraft</translation>
    </message>
    <message>
        <source>in the cabin</source>
        <translation>im Innenraum</translation>
    </message>
    <message>
        <source>under the bonnet</source>
        <translation>unter der Motorhaube</translation>
    </message>
    <message>
        <source>under the bonnet, near the engine</source>
        <translation>unter der Motorhaube, nahe am Motor</translation>
    </message>
    <message>
        <source>on the engine</source>
        <translation>am Motor</translation>
    </message>
    <message>
        <source>under the floor or in a wheel arch</source>
        <translation>unter dem Fahrzeugboden oder im Radhaus</translation>
    </message>
    <message>
        <source>Coil resistance (20 °C)</source>
        <translation>Spulenwiderstand (20 °C)</translation>
    </message>
    <message>
        <source>Coil inductance</source>
        <translation>Spuleninduktivität</translation>
    </message>
    <message>
        <source>Coil stray capacitance</source>
        <translation>Streukapazität der Spule</translation>
    </message>
    <message>
        <source>Pulls in at (20 °C)</source>
        <translation>Zieht an bei (20 °C)</translation>
    </message>
    <message>
        <source>Drops out at (20 °C)</source>
        <translation>Fällt ab bei (20 °C)</translation>
    </message>
    <message>
        <source>Armature travel, in</source>
        <translation>Ankerlaufzeit, Anzug</translation>
    </message>
    <message>
        <source>Armature travel, out</source>
        <translation>Ankerlaufzeit, Abfall</translation>
    </message>
    <message>
        <source>Make contact bounces for</source>
        <translation>Schließer prellt für</translation>
    </message>
    <message>
        <source>Suppression resistor</source>
        <translation>Entstörwiderstand</translation>
    </message>
    <message>
        <source>Suppression Zener</source>
        <translation>Zenerspannung der Entstörung</translation>
    </message>
    <message>
        <source>Set time</source>
        <translation>Eingestellte Zeit</translation>
    </message>
    <message>
        <source>Trigger on at</source>
        <translation>Trigger ein bei</translation>
    </message>
    <message>
        <source>Trigger off at</source>
        <translation>Trigger aus bei</translation>
    </message>
    <message>
        <source>Trigger input resistance</source>
        <translation>Widerstand des Triggereingangs</translation>
    </message>
    <message>
        <source>Own current</source>
        <translation>Eigenstrom</translation>
    </message>
    <message>
        <source>Works down to</source>
        <translation>Arbeitet hinab bis</translation>
    </message>
    <message>
        <source>Inner relay's operate time</source>
        <translation>Ansprechzeit des inneren Relais</translation>
    </message>
    <message>
        <source>Breakdowns, worst first</source>
        <translation>Ausfälle, der schlimmste zuerst</translation>
    </message>
    <message>
        <source>What fails</source>
        <translation>Was ausfällt</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>Was daraus wird</translation>
    </message>
    <message>
        <source>The driver notices</source>
        <translation>Der Fahrer merkt</translation>
    </message>
    <message>
        <source>Also</source>
        <translation>Außerdem</translation>
    </message>
    <message>
        <source>Brakes are safety-critical: a fault in this circuit can cost lives.</source>
        <translation>Bremsen sind sicherheitskritisch: Ein Fehler in dieser Schaltung kann Leben kosten.</translation>
    </message>
    <message>
        <source>The results of this program are estimates from the values entered; they prove nothing about a vehicle.</source>
        <translation>Die Ergebnisse dieses Programms sind Schätzungen aus den eingegebenen Werten; sie beweisen nichts über ein Fahrzeug.</translation>
    </message>
    <message>
        <source>Have the finished work inspected by a qualified person before the vehicle is driven.</source>
        <translation>Die fertige Arbeit von einer Fachkraft prüfen lassen, bevor das Fahrzeug gefahren wird.</translation>
    </message>
    <message>
        <source>Local roadworthiness law decides whether the vehicle may be used on the road.</source>
        <translation>Ob das Fahrzeug auf die Straße darf, entscheidet das örtliche Zulassungsrecht.</translation>
    </message>
    <message>
        <source>Test with the vehicle stationary first, wheels chocked, before any test at low speed.</source>
        <translation>Zuerst im Stand prüfen, mit Keilen an den Rädern, erst dann bei geringer Geschwindigkeit.</translation>
    </message>
    <message>
        <source>Disconnect the battery before wiring, and connect it last.</source>
        <translation>Vor dem Verdrahten die Batterie abklemmen und sie zuletzt wieder anklemmen.</translation>
    </message>
    <message>
        <source>Fitted values</source>
        <translation>Angepasste Werte</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Angepasst</translation>
    </message>
    <message>
        <source>Standard error</source>
        <translation>Standardfehler</translation>
    </message>
    <message>
        <source>of the value</source>
        <translation>vom Wert</translation>
    </message>
    <message>
        <source>Between log and simulation, root mean square</source>
        <translation>Zwischen Aufzeichnung und Simulation, quadratisches Mittel</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>The simulation does not meet {}: {} are left between them. Do not trust these values, whatever their errors: log a stretch in which nothing switches, start from nearer values, or fit others.</source>
        <translation>Die Simulation trifft {} nicht: {} liegen noch dazwischen. Diesen Werten nicht trauen, wie klein ihre Fehler auch sind: einen Abschnitt aufzeichnen, in dem nichts schaltet, von näheren Werten ausgehen oder andere anpassen.</translation>
    </message>
    <message>
        <source>The log cannot tell {} and {} apart: one makes up for the other (correlation {}). Fit one of them, or log something else as well.</source>
        <translation>Die Aufzeichnung kann {} und {} nicht unterscheiden: Das eine gleicht das andere aus (Korrelation {}). Nur eines davon anpassen oder noch etwas anderes aufzeichnen.</translation>
    </message>
    <message>
        <source>{} ended at the limit of what it may be: do not trust it.</source>
        <translation>{} endete an der Grenze dessen, was es sein darf: dem nicht trauen.</translation>
    </message>
    <message>
        <source>The log says nothing about {}: it stays as it was.</source>
        <translation>Die Aufzeichnung sagt nichts über {}: Es bleibt, wie es war.</translation>
    </message>
    <message>
        <source>The search had not settled when its rounds were used up: start from nearer values.</source>
        <translation>Die Suche war noch nicht zur Ruhe gekommen, als ihre Runden aufgebraucht waren: von näheren Werten ausgehen.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Beschriftung</translation>
    </message>
    <message>
        <source>Catalogue entry</source>
        <translation>Katalogeintrag</translation>
    </message>
    <message>
        <source>Values from</source>
        <translation>Werte aus</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Isolierung</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Beginnt</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Legal owner</source>
        <translation>Gesetzlicher Eigentümer</translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation>Identifikationsnummer</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Änderungsstand</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Ausgabedatum</translation>
    </message>
    <message>
        <source>Creator</source>
        <translation>Erstellt durch</translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation>Genehmigt von</translation>
    </message>
    <message>
        <source>Tolerances that matter most: rank correlations of {} cars, beyond chance from {} on</source>
        <translation>Toleranzen, auf die es am meisten ankommt: Rangkorrelationen von {} Fahrzeugen, ab {} mehr als Zufall</translation>
    </message>
    <message>
        <source>Tolerance of</source>
        <translation>Toleranz von</translation>
    </message>
    <message>
        <source>with closings</source>
        <translation>mit Schließungen</translation>
    </message>
    <message>
        <source>with assist</source>
        <translation>mit Unterstützung</translation>
    </message>
    <message>
        <source>with vacuum</source>
        <translation>mit Unterdruck</translation>
    </message>
    <message>
        <source>none that stands out</source>
        <translation>keine, die herausragt</translation>
    </message>
    <message>
        <source>Shares</source>
        <translation>Anteile</translation>
    </message>
    <message>
        <source>Cars</source>
        <translation>Fahrzeuge</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>True share, 95 % sure</source>
        <translation>Wahrer Anteil, zu 95 % sicher</translation>
    </message>
    <message>
        <source>with a contact that chatters</source>
        <translation>mit einem Kontakt, der flattert</translation>
    </message>
    <message>
        <source>with a press without full assist</source>
        <translation>mit einer Bremsung ohne volle Unterstützung</translation>
    </message>
    <message>
        <source>Percentiles</source>
        <translation>Perzentile</translation>
    </message>
    <message>
        <source>Worst press of a car</source>
        <translation>Schlechteste Bremsung eines Fahrzeugs</translation>
    </message>
    <message>
        <source>5 % have less</source>
        <translation>5 % haben weniger</translation>
    </message>
    <message>
        <source>half have less</source>
        <translation>die Hälfte hat weniger</translation>
    </message>
    <message>
        <source>95 % have less</source>
        <translation>95 % haben weniger</translation>
    </message>
    <message>
        <source>Lowest vacuum</source>
        <translation>Niedrigster Unterdruck</translation>
    </message>
    <message>
        <source>Assist, of what is asked for</source>
        <translation>Unterstützung, von der verlangten</translation>
    </message>
    <message>
        <source>{}; good is {}</source>
        <translation>{}; gut ist {}</translation>
    </message>
    <message>
        <source>{}; good is {} or more</source>
        <translation>{}; gut ist {} oder mehr</translation>
    </message>
    <message>
        <source>{}; good is {} or less</source>
        <translation>{}; gut ist {} oder weniger</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Thresholds of {}, found to {}</source>
        <translation>Schwellen von {}, auf {} genau gefunden</translation>
    </message>
    <message>
        <source>Threshold</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source>The study was ended before all were found.</source>
        <translation>Die Untersuchung wurde beendet, bevor alle gefunden waren.</translation>
    </message>
    <message>
        <source>The result turns good nowhere between the points.</source>
        <translation>Das Ergebnis wird nirgends zwischen den Punkten gut.</translation>
    </message>
    <message>
        <source>Good from {} up, not yet at {}.</source>
        <translation>Gut ab {} aufwärts, noch nicht bei {}.</translation>
    </message>
    <message>
        <source>Good from {} down, not yet at {}.</source>
        <translation>Gut ab {} abwärts, noch nicht bei {}.</translation>
    </message>
    <message>
        <source>all alike</source>
        <translation>alle gleich</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Idea</source>
        <translation>Idee</translation>
    </message>
    <message>
        <source>Added parts</source>
        <translation>Hinzugefügte Teile</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Am besten</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Am schlechtesten</translation>
    </message>
    <message>
        <source>armature pulls in</source>
        <translation>Anker zieht an</translation>
    </message>
    <message>
        <source>armature lets go</source>
        <translation>Anker fällt ab</translation>
    </message>
    <message>
        <source>armature is back</source>
        <translation>Anker ist zurück</translation>
    </message>
    <message>
        <source>contacts close</source>
        <translation>Kontakte schließen</translation>
    </message>
    <message>
        <source>contacts open</source>
        <translation>Kontakte öffnen</translation>
    </message>
    <message>
        <source>vacuum chamber</source>
        <translation>Unterdruckkammer</translation>
    </message>
    <message>
        <source>pedal force</source>
        <translation>Pedalkraft</translation>
    </message>
    <message>
        <source>assist</source>
        <translation>Unterstützung</translation>
    </message>
    <message>
        <source>assist asked for</source>
        <translation>verlangte Unterstützung</translation>
    </message>
    <message>
        <source>diaphragm travel</source>
        <translation>Membranweg</translation>
    </message>
    <message>
        <source>line pressure</source>
        <translation>Bremsleitungsdruck</translation>
    </message>
    <message>
        <source>deceleration</source>
        <translation>Verzögerung</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>sounds</source>
        <translation>ertönt</translation>
    </message>
    <message>
        <source>+ where it is polarised</source>
        <translation>+, falls gepolt</translation>
    </message>
    <message>
        <source>− where it is polarised</source>
        <translation>−, falls gepolt</translation>
    </message>
    <message>
        <source>charging current</source>
        <translation>Ladestrom</translation>
    </message>
    <message>
        <source>to the booster: air comes from here</source>
        <translation>zum Bremskraftverstärker: von hier kommt Luft</translation>
    </message>
    <message>
        <source>to the pump: air leaves here</source>
        <translation>zur Pumpe: hier geht Luft hinaus</translation>
    </message>
    <message>
        <source>air flow</source>
        <translation>Luftstrom</translation>
    </message>
    <message>
        <source>anode</source>
        <translation>Anode</translation>
    </message>
    <message>
        <source>cathode</source>
        <translation>Kathode</translation>
    </message>
    <message>
        <source>filament temperature</source>
        <translation>Glühfadentemperatur</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>leuchtet</translation>
    </message>
    <message>
        <source>towards the supply</source>
        <translation>zur Versorgung hin</translation>
    </message>
    <message>
        <source>towards the load</source>
        <translation>zur Last hin</translation>
    </message>
    <message>
        <source>way to opening</source>
        <translation>Weg bis zum Auslösen</translation>
    </message>
    <message>
        <source>to the vehicle body</source>
        <translation>zur Karosserie</translation>
    </message>
    <message>
        <source>current into the body</source>
        <translation>Strom in die Karosserie</translation>
    </message>
    <message>
        <source>contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>Give every {} its own reference</source>
        <translation>Je {} ein eigenes Kennzeichen vergeben</translation>
    </message>
    <message>
        <source>current, anode to cathode</source>
        <translation>Strom, Anode zu Kathode</translation>
    </message>
    <message>
        <source>one end</source>
        <translation>ein Ende</translation>
    </message>
    <message>
        <source>other end</source>
        <translation>anderes Ende</translation>
    </message>
    <message>
        <source>{} {} are called {}.</source>
        <translation>{} {} heißen {}.</translation>
    </message>
    <message>
        <source>1 {} has no reference.</source>
        <translation>1 {} hat kein Kennzeichen.</translation>
    </message>
    <message>
        <source>{} {} have no reference.</source>
        <translation>{} {} haben kein Kennzeichen.</translation>
    </message>
    <message>
        <source>On the wiring sheet nobody can tell which of them is meant.</source>
        <translation>Auf dem Verdrahtungsblatt kann niemand erkennen, welches davon gemeint ist.</translation>
    </message>
    <message>
        <source>Give them the next free references.</source>
        <translation>Ihnen die nächsten freien Kennzeichen geben.</translation>
    </message>
    <message>
        <source>motor, plus</source>
        <translation>Motor, Plus</translation>
    </message>
    <message>
        <source>motor, minus</source>
        <translation>Motor, Minus</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation>Unterdruck</translation>
    </message>
    <message>
        <source>motor current</source>
        <translation>Motorstrom</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>coil, + side</source>
        <translation>Spule, +-Seite</translation>
    </message>
    <message>
        <source>coil, − side</source>
        <translation>Spule, −-Seite</translation>
    </message>
    <message>
        <source>contact, common</source>
        <translation>Kontakt, gemeinsam</translation>
    </message>
    <message>
        <source>make contact</source>
        <translation>Schließer</translation>
    </message>
    <message>
        <source>break contact</source>
        <translation>Öffner</translation>
    </message>
    <message>
        <source>coil current</source>
        <translation>Spulenstrom</translation>
    </message>
    <message>
        <source>coil voltage</source>
        <translation>Spulenspannung</translation>
    </message>
    <message>
        <source>armature in</source>
        <translation>Anker angezogen</translation>
    </message>
    <message>
        <source>one port</source>
        <translation>ein Stutzen</translation>
    </message>
    <message>
        <source>other port, may stay closed</source>
        <translation>anderer Stutzen, darf verschlossen bleiben</translation>
    </message>
    <message>
        <source>control, +</source>
        <translation>Steuereingang, +</translation>
    </message>
    <message>
        <source>control, −</source>
        <translation>Steuereingang, −</translation>
    </message>
    <message>
        <source>output, +</source>
        <translation>Ausgang, +</translation>
    </message>
    <message>
        <source>output, −</source>
        <translation>Ausgang, −</translation>
    </message>
    <message>
        <source>output on</source>
        <translation>Ausgang ein</translation>
    </message>
    <message>
        <source>output current</source>
        <translation>Ausgangsstrom</translation>
    </message>
    <message>
        <source>junction temperature</source>
        <translation>Sperrschichttemperatur</translation>
    </message>
    <message>
        <source>where the wires meet</source>
        <translation>wo die Leitungen sich treffen</translation>
    </message>
    <message>
        <source>positive pole</source>
        <translation>Pluspol</translation>
    </message>
    <message>
        <source>negative pole</source>
        <translation>Minuspol</translation>
    </message>
    <message>
        <source>current delivered</source>
        <translation>abgegebener Strom</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>Abzweig</translation>
    </message>
    <message>
        <source>own supply, +</source>
        <translation>eigene Versorgung, +</translation>
    </message>
    <message>
        <source>own supply, −</source>
        <translation>eigene Versorgung, −</translation>
    </message>
    <message>
        <source>trigger, + starts</source>
        <translation>Trigger, + startet</translation>
    </message>
    <message>
        <source>delay left</source>
        <translation>verbleibende Verzögerung</translation>
    </message>
    <message>
        <source>conductor temperature</source>
        <translation>Leitertemperatur</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Price per metre</source>
        <translation>Preis pro Meter</translation>
    </message>
    <message>
        <source>Stands surroundings up to</source>
        <translation>Verträgt eine Umgebung bis</translation>
    </message>
    <message>
        <source>Cross-section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Inner diameter</source>
        <translation>Innendurchmesser</translation>
    </message>
    <message>
        <source>Equivalent hole of its leak</source>
        <translation>Loch, das seinem Leck gleichkommt</translation>
    </message>
    <message>
        <source>Tolerance, share of the value</source>
        <translation>Toleranz, Anteil des Wertes</translation>
    </message>
    <message>
        <source>Ambient temperature</source>
        <translation>Umgebungstemperatur</translation>
    </message>
    <message>
        <source>Voltage drop allowed</source>
        <translation>Zulässiger Spannungsfall</translation>
    </message>
    <message>
        <source>Share of a fuse's rating carried for long</source>
        <translation>Anteil vom Nennstrom einer Sicherung auf Dauer</translation>
    </message>
    <message>
        <source>Lowest supply voltage</source>
        <translation>Niedrigste Versorgungsspannung</translation>
    </message>
    <message>
        <source>Parked without charging for</source>
        <translation>Ohne Laden geparkt für</translation>
    </message>
    <message>
        <source>Driven in a year</source>
        <translation>Gefahren in einem Jahr</translation>
    </message>
    <message>
        <source>Duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Vacuum at the start</source>
        <translation>Unterdruck am Anfang</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Held for</source>
        <translation>Gehalten für</translation>
    </message>
    <message>
        <source>Pedal force</source>
        <translation>Pedalkraft</translation>
    </message>
    <message>
        <source>Rise and fall</source>
        <translation>Anstieg und Abfall</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>Value when waived</source>
        <translation>Wert bei der Ausnahme</translation>
    </message>
    <message>
        <source>DANGER</source>
        <translation>GEFAHR</translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation>WARNUNG</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>VORSICHT</translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation>HINWEIS</translation>
    </message>
    <message>
        <source>Diaphragm area</source>
        <translation>Membranfläche</translation>
    </message>
    <message>
        <source>Vacuum chamber at rest</source>
        <translation>Unterdruckkammer in Ruhe</translation>
    </message>
    <message>
        <source>Working chamber at rest</source>
        <translation>Arbeitskammer in Ruhe</translation>
    </message>
    <message>
        <source>Longest travel</source>
        <translation>Größter Weg</translation>
    </message>
    <message>
        <source>Output force that asks for full travel</source>
        <translation>Ausgangskraft, die den vollen Weg verlangt</translation>
    </message>
    <message>
        <source>Boost ratio</source>
        <translation>Verstärkungsfaktor</translation>
    </message>
    <message>
        <source>Pedal ratio</source>
        <translation>Pedalübersetzung</translation>
    </message>
    <message>
        <source>Rod force at which assist sets in</source>
        <translation>Stangenkraft, bei der die Unterstützung einsetzt</translation>
    </message>
    <message>
        <source>Return spring at rest</source>
        <translation>Rückstellfeder in Ruhe</translation>
    </message>
    <message>
        <source>Return spring rate</source>
        <translation>Federrate der Rückstellfeder</translation>
    </message>
    <message>
        <source>Equivalent hole of an open valve</source>
        <translation>Ersatzbohrung eines offenen Ventils</translation>
    </message>
    <message>
        <source>Equivalent hole of all leaks</source>
        <translation>Ersatzbohrung aller Undichtigkeiten</translation>
    </message>
    <message>
        <source>Walls bring gas back to ambient temperature in</source>
        <translation>Wände bringen Gas zurück auf Umgebungstemperatur in</translation>
    </message>
    <message>
        <source>Efficiency of booster and master cylinder</source>
        <translation>Wirkungsgrad von Bremskraftverstärker und Hauptbremszylinder</translation>
    </message>
    <message>
        <source>Master cylinder bore</source>
        <translation>Bohrung des Hauptbremszylinders</translation>
    </message>
    <message>
        <source>Vehicle mass, kg</source>
        <translation>Fahrzeugmasse, kg</translation>
    </message>
    <message>
        <source>Braking force per line pressure</source>
        <translation>Bremskraft je Bremsleitungsdruck</translation>
    </message>
    <message>
        <source>Deceleration that the road allows</source>
        <translation>Verzögerung, die die Straße zulässt</translation>
    </message>
    <message>
        <source>Brake booster with pedal</source>
        <translation>Bremskraftverstärker mit Pedal</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Sounds from</source>
        <translation>Ertönt ab</translation>
    </message>
    <message>
        <source>Buzzer</source>
        <translation>Summer</translation>
    </message>
    <message>
        <source>Capacitance</source>
        <translation>Kapazität</translation>
    </message>
    <message>
        <source>Series resistance</source>
        <translation>Serienwiderstand</translation>
    </message>
    <message>
        <source>Working voltage</source>
        <translation>Betriebsspannung</translation>
    </message>
    <message>
        <source>Polarised</source>
        <translation>Gepolt</translation>
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
        <source>Capacitor</source>
        <translation>Kondensator</translation>
    </message>
    <message>
        <source>Opens at a pressure difference of</source>
        <translation>Öffnet bei einer Druckdifferenz von</translation>
    </message>
    <message>
        <source>Equivalent hole when open</source>
        <translation>Ersatzbohrung, offen</translation>
    </message>
    <message>
        <source>Equivalent hole when shut</source>
        <translation>Ersatzbohrung, geschlossen</translation>
    </message>
    <message>
        <source>Vacuum check valve</source>
        <translation>Unterdruck-Rückschlagventil</translation>
    </message>
    <message>
        <source>60 °C</source>
        <translation>60 °C</translation>
    </message>
    <message>
        <source>75 °C</source>
        <translation>75 °C</translation>
    </message>
    <message>
        <source>80 °C (PVC)</source>
        <translation>80 °C (PVC)</translation>
    </message>
    <message>
        <source>90 °C</source>
        <translation>90 °C</translation>
    </message>
    <message>
        <source>105 °C (heat-resistant PVC)</source>
        <translation>105 °C (wärmebeständiges PVC)</translation>
    </message>
    <message>
        <source>125 °C (cross-linked polyethylene)</source>
        <translation>125 °C (vernetztes Polyethylen)</translation>
    </message>
    <message>
        <source>Contact resistance</source>
        <translation>Kontaktwiderstand</translation>
    </message>
    <message>
        <source>Continuous current of a pin</source>
        <translation>Dauerstrom eines Pins</translation>
    </message>
    <message>
        <source>Ways</source>
        <translation>Polzahl</translation>
    </message>
    <message>
        <source>2</source>
        <translation>2</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>3</source>
        <translation>3</translation>
    </message>
    <message>
        <source>4</source>
        <translation>4</translation>
    </message>
    <message>
        <source>6</source>
        <translation>6</translation>
    </message>
    <message>
        <source>Connector</source>
        <translation>Steckverbinder</translation>
    </message>
    <message>
        <source>Forward voltage at rated current</source>
        <translation>Durchlassspannung bei Nennstrom</translation>
    </message>
    <message>
        <source>Rated current</source>
        <translation>Nennstrom</translation>
    </message>
    <message>
        <source>Surge current, 8 ms</source>
        <translation>Stoßstrom, 8 ms</translation>
    </message>
    <message>
        <source>Blocks up to</source>
        <translation>Sperrt bis</translation>
    </message>
    <message>
        <source>Diode</source>
        <translation>Diode</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Nennstrom</translation>
    </message>
    <message>
        <source>Breaking capacity</source>
        <translation>Ausschaltvermögen</translation>
    </message>
    <message>
        <source>Rated voltage</source>
        <translation>Nennspannung</translation>
    </message>
    <message>
        <source>Type (ISO 8820-3)</source>
        <translation>Typ (ISO 8820-3)</translation>
    </message>
    <message>
        <source>C, medium</source>
        <translation>C, mittel</translation>
    </message>
    <message>
        <source>F, small</source>
        <translation>F, klein</translation>
    </message>
    <message>
        <source>E, high current</source>
        <translation>E, Hochstrom</translation>
    </message>
    <message>
        <source>Opens at</source>
        <translation>Löst aus bei</translation>
    </message>
    <message>
        <source>middle of the published band</source>
        <translation>Mitte des veröffentlichten Bandes</translation>
    </message>
    <message>
        <source>fast edge</source>
        <translation>schnelle Grenze</translation>
    </message>
    <message>
        <source>slow edge</source>
        <translation>langsame Grenze</translation>
    </message>
    <message>
        <source>fuse opens</source>
        <translation>Sicherung löst aus</translation>
    </message>
    <message>
        <source>Fuse</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Ground point</source>
        <translation>Massepunkt</translation>
    </message>
    <message>
        <source>At the start</source>
        <translation>Am Anfang</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>on</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>Hand switch</source>
        <translation>Handschalter</translation>
    </message>
    <message>
        <source>Rated power</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Bauart</translation>
    </message>
    <message>
        <source>filament</source>
        <translation>Glühfaden</translation>
    </message>
    <message>
        <source>LED</source>
        <translation>LED</translation>
    </message>
    <message>
        <source>Lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>Pedal switch</source>
        <translation>Pedalschalter</translation>
    </message>
    <message>
        <source>Motor: armature and brushes</source>
        <translation>Motor: Anker und Bürsten</translation>
    </message>
    <message>
        <source>Motor: armature</source>
        <translation>Motor: Anker</translation>
    </message>
    <message>
        <source>Motor constant</source>
        <translation>Motorkonstante</translation>
    </message>
    <message>
        <source>Rotor and vanes</source>
        <translation>Rotor und Flügel</translation>
    </message>
    <message>
        <source>Friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>Friction that grows with speed, N·m·s</source>
        <translation>Mit der Drehzahl wachsende Reibung, N·m·s</translation>
    </message>
    <message>
        <source>Volume flow at rated speed</source>
        <translation>Volumenstrom bei Nenndrehzahl</translation>
    </message>
    <message>
        <source>Rated speed</source>
        <translation>Nenndrehzahl</translation>
    </message>
    <message>
        <source>Lowest pressure, share of ambient</source>
        <translation>Tiefster Druck, Anteil am Umgebungsdruck</translation>
    </message>
    <message>
        <source>Volume at the inlet</source>
        <translation>Volumen am Einlass</translation>
    </message>
    <message>
        <source>Equivalent hole at standstill</source>
        <translation>Ersatzbohrung im Stillstand</translation>
    </message>
    <message>
        <source>Pulsation of the flow</source>
        <translation>Pulsation des Volumenstroms</translation>
    </message>
    <message>
        <source>Running current, stated</source>
        <translation>Laufstrom, angegeben</translation>
    </message>
    <message>
        <source>Inrush current, stated</source>
        <translation>Anlaufstrom, angegeben</translation>
    </message>
    <message>
        <source>Lowest pressure may be worse by</source>
        <translation>Tiefster Druck kann schlechter sein um</translation>
    </message>
    <message>
        <source>Rated duty, of ten minutes</source>
        <translation>Nenn-Einschaltdauer, von zehn Minuten</translation>
    </message>
    <message>
        <source>Starts in an hour</source>
        <translation>Starts je Stunde</translation>
    </message>
    <message>
        <source>Vacuum pump</source>
        <translation>Unterdruckpumpe</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Kontakte</translation>
    </message>
    <message>
        <source>make</source>
        <translation>Schließer</translation>
    </message>
    <message>
        <source>changeover</source>
        <translation>Wechsler</translation>
    </message>
    <message>
        <source>Across the coil</source>
        <translation>Parallel zur Spule</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>diode</source>
        <translation>Diode</translation>
    </message>
    <message>
        <source>resistor</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>diode and Zener</source>
        <translation>Diode und Zenerdiode</translation>
    </message>
    <message>
        <source>Relay</source>
        <translation>Relais</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Wall brings gas back to ambient temperature in</source>
        <translation>Wand bringt Gas zurück auf Umgebungstemperatur in</translation>
    </message>
    <message>
        <source>Vacuum reservoir</source>
        <translation>Unterdruckspeicher</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Resistor</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Share for a resistive load</source>
        <translation>Anteil bei ohmscher Last</translation>
    </message>
    <message>
        <source>Share for a motor or coil</source>
        <translation>Anteil bei Motor oder Spule</translation>
    </message>
    <message>
        <source>On-resistance (25 °C)</source>
        <translation>Durchlasswiderstand (25 °C)</translation>
    </message>
    <message>
        <source>Leakage when off</source>
        <translation>Leckstrom im ausgeschalteten Zustand</translation>
    </message>
    <message>
        <source>Output breaks down at</source>
        <translation>Ausgang bricht durch bei</translation>
    </message>
    <message>
        <source>Input on at</source>
        <translation>Eingang ein bei</translation>
    </message>
    <message>
        <source>Input off at</source>
        <translation>Eingang aus bei</translation>
    </message>
    <message>
        <source>Input current</source>
        <translation>Eingangsstrom</translation>
    </message>
    <message>
        <source>Junction to surroundings</source>
        <translation>Sperrschicht zur Umgebung</translation>
    </message>
    <message>
        <source>Heat capacity</source>
        <translation>Wärmekapazität</translation>
    </message>
    <message>
        <source>output conducts</source>
        <translation>Ausgang leitet</translation>
    </message>
    <message>
        <source>output blocks</source>
        <translation>Ausgang sperrt</translation>
    </message>
    <message>
        <source>Solid-state relay</source>
        <translation>Halbleiterrelais</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Verbinder</translation>
    </message>
    <message>
        <source>State of charge at the start</source>
        <translation>Ladezustand am Anfang</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Kapazität</translation>
    </message>
    <message>
        <source>Internal resistance</source>
        <translation>Innenwiderstand</translation>
    </message>
    <message>
        <source>Charging voltage</source>
        <translation>Ladespannung</translation>
    </message>
    <message>
        <source>Charging current limit</source>
        <translation>Ladestromgrenze</translation>
    </message>
    <message>
        <source>Charging lead resistance</source>
        <translation>Widerstand der Ladeleitung</translation>
    </message>
    <message>
        <source>Cranking current of the engine, at 10 V</source>
        <translation>Anlasserstrom des Motors, bei 10 V</translation>
    </message>
    <message>
        <source>The engine is cranked for</source>
        <translation>Der Motor wird angelassen für</translation>
    </message>
    <message>
        <source>The vehicle's other consumption</source>
        <translation>Übriger Verbrauch des Fahrzeugs</translation>
    </message>
    <message>
        <source>Charged by</source>
        <translation>Geladen durch</translation>
    </message>
    <message>
        <source>alternator</source>
        <translation>Lichtmaschine</translation>
    </message>
    <message>
        <source>traction converter</source>
        <translation>Traktionswandler</translation>
    </message>
    <message>
        <source>cranking begins</source>
        <translation>Anlassen beginnt</translation>
    </message>
    <message>
        <source>cranking ends</source>
        <translation>Anlassen endet</translation>
    </message>
    <message>
        <source>charging begins</source>
        <translation>Laden beginnt</translation>
    </message>
    <message>
        <source>charging ends</source>
        <translation>Laden endet</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Versorgung</translation>
    </message>
    <message>
        <source>Volume inside</source>
        <translation>Innenvolumen</translation>
    </message>
    <message>
        <source>Hose tee</source>
        <translation>Schlauch-T-Stück</translation>
    </message>
    <message>
        <source>Function (IEC 61812-1)</source>
        <translation>Funktion (IEC 61812-1)</translation>
    </message>
    <message>
        <source>delay on release</source>
        <translation>rückfallverzögert</translation>
    </message>
    <message>
        <source>single shot</source>
        <translation>einschaltwischend</translation>
    </message>
    <message>
        <source>delay on make</source>
        <translation>ansprechverzögert</translation>
    </message>
    <message>
        <source>New trigger during the delay</source>
        <translation>Neuer Trigger während der Verzögerung</translation>
    </message>
    <message>
        <source>starts the time anew</source>
        <translation>startet die Zeit neu</translation>
    </message>
    <message>
        <source>is ignored</source>
        <translation>wird ignoriert</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Zeitrelais</translation>
    </message>
    <message>
        <source>Closes when vacuum falls to</source>
        <translation>Schließt, wenn der Unterdruck fällt auf</translation>
    </message>
    <message>
        <source>Opens this much above</source>
        <translation>Öffnet um so viel darüber</translation>
    </message>
    <message>
        <source>vacuum switch closes</source>
        <translation>Unterdruckschalter schließt</translation>
    </message>
    <message>
        <source>vacuum switch opens</source>
        <translation>Unterdruckschalter öffnet</translation>
    </message>
    <message>
        <source>Vacuum switch</source>
        <translation>Unterdruckschalter</translation>
    </message>
    <message>
        <source>Zener voltage</source>
        <translation>Zenerspannung</translation>
    </message>
    <message>
        <source>Resistance while it holds</source>
        <translation>Widerstand, während sie hält</translation>
    </message>
    <message>
        <source>Zener diode</source>
        <translation>Zenerdiode</translation>
    </message>
    <message>
        <source>{} opens in time, no wire is harmed</source>
        <translation>{} öffnet rechtzeitig, keine Leitung leidet</translation>
    </message>
    <message>
        <source>{} opens</source>
        <translation>{} öffnet</translation>
    </message>
    <message>
        <source>{} too hot for the insulation</source>
        <translation>{} zu heiß für die Isolierung</translation>
    </message>
    <message>
        <source>{} out of action</source>
        <translation>{} außer Betrieb</translation>
    </message>
    <message>
        <source>the drive stopped: {}</source>
        <translation>die Fahrt brach ab: {}</translation>
    </message>
    <message>
        <source>the drive stopped</source>
        <translation>die Fahrt brach ab</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>assist lost without warning</source>
        <translation>Unterstützung ohne Warnung verloren</translation>
    </message>
    <message>
        <source>wire overheats</source>
        <translation>Leitung überhitzt</translation>
    </message>
    <message>
        <source>assist lost after a warning</source>
        <translation>Unterstützung nach einer Warnung verloren</translation>
    </message>
    <message>
        <source>noticed, assist stays</source>
        <translation>bemerkt, Unterstützung bleibt</translation>
    </message>
    <message>
        <source>not noticed, assist stays</source>
        <translation>nicht bemerkt, Unterstützung bleibt</translation>
    </message>
    <message>
        <source>City</source>
        <translation>Stadt</translation>
    </message>
    <message>
        <source>Highway</source>
        <translation>Autobahn</translation>
    </message>
    <message>
        <source>Mountain descent</source>
        <translation>Bergabfahrt</translation>
    </message>
    <message>
        <source>Car park</source>
        <translation>Parkplatz</translation>
    </message>
    <message>
        <source>Contacts chatter</source>
        <translation>Kontakte flattern</translation>
    </message>
    <message>
        <source>Closings in 2 s, most</source>
        <translation>Schließungen in 2 s, höchstens</translation>
    </message>
    <message>
        <source>Presses without full assist</source>
        <translation>Bremsungen ohne volle Unterstützung</translation>
    </message>
    <message>
        <source>Assist of the worst press, of what it asks for</source>
        <translation>Unterstützung der schlechtesten Bremsung, Anteil am Verlangten</translation>
    </message>
    <message>
        <source>Lowest vacuum in a press</source>
        <translation>Niedrigster Unterdruck in einer Bremsung</translation>
    </message>
    <message>
        <source>Reserve, presses</source>
        <translation>Reserve, Bremsungen</translation>
    </message>
    <message>
        <source>Pump starts</source>
        <translation>Pumpenstarts</translation>
    </message>
    <message>
        <source>Pump runs for</source>
        <translation>Laufzeit der Pumpe</translation>
    </message>
    <message>
        <source>Findings: DANGER</source>
        <translation>Befunde: GEFAHR</translation>
    </message>
    <message>
        <source>Lead-acid battery 45 Ah</source>
        <translation>Bleibatterie 45 Ah</translation>
    </message>
    <message>
        <source>Lead-acid battery 60 Ah</source>
        <translation>Bleibatterie 60 Ah</translation>
    </message>
    <message>
        <source>Lead-acid battery 60 Ah with alternator 70 A</source>
        <translation>Bleibatterie 60 Ah mit Lichtmaschine 70 A</translation>
    </message>
    <message>
        <source>Lead-acid battery 45 Ah with DC-DC converter 40 A</source>
        <translation>Bleibatterie 45 Ah mit Gleichspannungswandler 40 A</translation>
    </message>
    <message>
        <source>Ground point: M6 bolt on bare metal with toothed washer</source>
        <translation>Massepunkt: Schraube M6 auf blankem Metall mit Zahnscheibe</translation>
    </message>
    <message>
        <source>Ground bar, 6 bolts, on the vehicle body</source>
        <translation>Masseschiene, 6 Schrauben, an der Karosserie</translation>
    </message>
    <message>
        <source>Blade fuse 3 A with holder</source>
        <translation>Flachsicherung 3 A mit Halter</translation>
    </message>
    <message>
        <source>Blade fuse 5 A with holder</source>
        <translation>Flachsicherung 5 A mit Halter</translation>
    </message>
    <message>
        <source>Blade fuse 7.5 A with holder</source>
        <translation>Flachsicherung 7.5 A mit Halter</translation>
    </message>
    <message>
        <source>Blade fuse 10 A with holder</source>
        <translation>Flachsicherung 10 A mit Halter</translation>
    </message>
    <message>
        <source>Blade fuse 15 A with holder</source>
        <translation>Flachsicherung 15 A mit Halter</translation>
    </message>
    <message>
        <source>Blade fuse 20 A with holder</source>
        <translation>Flachsicherung 20 A mit Halter</translation>
    </message>
    <message>
        <source>Blade fuse 25 A with holder</source>
        <translation>Flachsicherung 25 A mit Halter</translation>
    </message>
    <message>
        <source>Blade fuse 30 A with holder</source>
        <translation>Flachsicherung 30 A mit Halter</translation>
    </message>
    <message>
        <source>High-current blade fuse 40 A with holder</source>
        <translation>Hochstrom-Flachsicherung 40 A mit Halter</translation>
    </message>
    <message>
        <source>High-current blade fuse 60 A with holder</source>
        <translation>Hochstrom-Flachsicherung 60 A mit Halter</translation>
    </message>
    <message>
        <source>Toggle switch 10 A</source>
        <translation>Kippschalter 10 A</translation>
    </message>
    <message>
        <source>Rocker switch 20 A</source>
        <translation>Wippschalter 20 A</translation>
    </message>
    <message>
        <source>Ignition switch, terminal 15</source>
        <translation>Zündschalter, Klemme 15</translation>
    </message>
    <message>
        <source>Brake lamp switch</source>
        <translation>Bremslichtschalter</translation>
    </message>
    <message>
        <source>Vacuum switch, 50 kPa, differential 1 kPa</source>
        <translation>Unterdruckschalter, 50 kPa, Schaltdifferenz 1 kPa</translation>
    </message>
    <message>
        <source>Vacuum switch, 50 kPa, differential 7 kPa</source>
        <translation>Unterdruckschalter, 50 kPa, Schaltdifferenz 7 kPa</translation>
    </message>
    <message>
        <source>Vacuum switch, adjustable, differential 4 kPa</source>
        <translation>Unterdruckschalter, einstellbar, Schaltdifferenz 4 kPa</translation>
    </message>
    <message>
        <source>Vacuum warning switch, 35 kPa</source>
        <translation>Unterdruck-Warnschalter, 35 kPa</translation>
    </message>
    <message>
        <source>Timer, delay on release, retriggerable, contact 5 A</source>
        <translation>Zeitrelais, abfallverzögert, nachtriggerbar, Kontakt 5 A</translation>
    </message>
    <message>
        <source>Timer, delay on release, retriggerable, contact 10 A</source>
        <translation>Zeitrelais, abfallverzögert, nachtriggerbar, Kontakt 10 A</translation>
    </message>
    <message>
        <source>Run-on relay, delay on release, retriggerable, contact 20 A</source>
        <translation>Nachlaufrelais, abfallverzögert, nachtriggerbar, Kontakt 20 A</translation>
    </message>
    <message>
        <source>Timer, single shot, contact 10 A</source>
        <translation>Zeitrelais, einschaltwischend, Kontakt 10 A</translation>
    </message>
    <message>
        <source>Timer, delay on make, contact 10 A</source>
        <translation>Zeitrelais, anzugverzögert, Kontakt 10 A</translation>
    </message>
    <message>
        <source>Relay 30 A, make contact</source>
        <translation>Relais 30 A, Schließer</translation>
    </message>
    <message>
        <source>Relay 30 A, make contact, diode inside</source>
        <translation>Relais 30 A, Schließer, mit Diode</translation>
    </message>
    <message>
        <source>Relay 30 A, make contact, resistor 680 Ω inside</source>
        <translation>Relais 30 A, Schließer, mit Widerstand 680 Ω</translation>
    </message>
    <message>
        <source>Relay 40 A, changeover contact</source>
        <translation>Relais 40 A, Wechsler</translation>
    </message>
    <message>
        <source>Relay 40 A, changeover contact, diode inside</source>
        <translation>Relais 40 A, Wechsler, mit Diode</translation>
    </message>
    <message>
        <source>Relay 40 A, changeover contact, resistor 680 Ω inside</source>
        <translation>Relais 40 A, Wechsler, mit Widerstand 680 Ω</translation>
    </message>
    <message>
        <source>Relay 40 A, make contact, diode and Zener 24 V inside</source>
        <translation>Relais 40 A, Schließer, mit Diode und Z-Diode 24 V</translation>
    </message>
    <message>
        <source>Power relay 70 A, make contact, resistor 680 Ω inside</source>
        <translation>Leistungsrelais 70 A, Schließer, mit Widerstand 680 Ω</translation>
    </message>
    <message>
        <source>Solid-state relay 25 A, DC</source>
        <translation>Halbleiterrelais 25 A, Gleichstrom</translation>
    </message>
    <message>
        <source>Solid-state relay 60 A, DC</source>
        <translation>Halbleiterrelais 60 A, Gleichstrom</translation>
    </message>
    <message>
        <source>Solid-state relay 100 A, DC</source>
        <translation>Halbleiterrelais 100 A, Gleichstrom</translation>
    </message>
    <message>
        <source>Rectifier diode 1 A, 400 V</source>
        <translation>Gleichrichterdiode 1 A, 400 V</translation>
    </message>
    <message>
        <source>Rectifier diode 3 A, 400 V</source>
        <translation>Gleichrichterdiode 3 A, 400 V</translation>
    </message>
    <message>
        <source>Rectifier diode 6 A, 400 V</source>
        <translation>Gleichrichterdiode 6 A, 400 V</translation>
    </message>
    <message>
        <source>Zener diode 24 V, 5 W</source>
        <translation>Zenerdiode 24 V, 5 W</translation>
    </message>
    <message>
        <source>Zener diode 33 V, 5 W</source>
        <translation>Zenerdiode 33 V, 5 W</translation>
    </message>
    <message>
        <source>Electrolytic capacitor 470 µF, 35 V</source>
        <translation>Elektrolytkondensator 470 µF, 35 V</translation>
    </message>
    <message>
        <source>Electrolytic capacitor 1000 µF, 35 V</source>
        <translation>Elektrolytkondensator 1000 µF, 35 V</translation>
    </message>
    <message>
        <source>Electrolytic capacitor 4700 µF, 35 V</source>
        <translation>Elektrolytkondensator 4700 µF, 35 V</translation>
    </message>
    <message>
        <source>Film capacitor 1 µF, 100 V</source>
        <translation>Folienkondensator 1 µF, 100 V</translation>
    </message>
    <message>
        <source>Resistor 680 Ω, 0.5 W</source>
        <translation>Widerstand 680 Ω, 0.5 W</translation>
    </message>
    <message>
        <source>Resistor 330 Ω, 1 W</source>
        <translation>Widerstand 330 Ω, 1 W</translation>
    </message>
    <message>
        <source>Resistor 100 Ω, 5 W</source>
        <translation>Widerstand 100 Ω, 5 W</translation>
    </message>
    <message>
        <source>Vacuum pump, 5.5 A, 36 L/min</source>
        <translation>Unterdruckpumpe, 5.5 A, 36 L/min</translation>
    </message>
    <message>
        <source>Vacuum pump, 8.3 A, 54 L/min</source>
        <translation>Unterdruckpumpe, 8.3 A, 54 L/min</translation>
    </message>
    <message>
        <source>Filament lamp 5 W with socket</source>
        <translation>Glühlampe 5 W mit Fassung</translation>
    </message>
    <message>
        <source>Filament lamp 21 W with socket</source>
        <translation>Glühlampe 21 W mit Fassung</translation>
    </message>
    <message>
        <source>Warning lamp, LED, red</source>
        <translation>Warnleuchte, LED, rot</translation>
    </message>
    <message>
        <source>Warning buzzer 12 V</source>
        <translation>Warnsummer 12 V</translation>
    </message>
    <message>
        <source>Brake booster 7 in, single diaphragm, with master cylinder</source>
        <translation>Bremskraftverstärker 7 in, eine Membran, mit Hauptzylinder</translation>
    </message>
    <message>
        <source>Brake booster 8 in, single diaphragm, with master cylinder</source>
        <translation>Bremskraftverstärker 8 in, eine Membran, mit Hauptzylinder</translation>
    </message>
    <message>
        <source>Brake booster 9 in, single diaphragm, with master cylinder</source>
        <translation>Bremskraftverstärker 9 in, eine Membran, mit Hauptzylinder</translation>
    </message>
    <message>
        <source>Vacuum reservoir 1 L</source>
        <translation>Unterdruckbehälter 1 L</translation>
    </message>
    <message>
        <source>Vacuum reservoir 2 L</source>
        <translation>Unterdruckbehälter 2 L</translation>
    </message>
    <message>
        <source>Vacuum reservoir 4 L</source>
        <translation>Unterdruckbehälter 4 L</translation>
    </message>
    <message>
        <source>Check valve for 9 mm hose</source>
        <translation>Rückschlagventil für Schlauch 9 mm</translation>
    </message>
    <message>
        <source>Check valve for the booster's port, with grommet</source>
        <translation>Rückschlagventil für den Anschluss des Verstärkers, mit Tülle</translation>
    </message>
    <message>
        <source>Hose tee 9 mm</source>
        <translation>Schlauch-T-Stück 9 mm</translation>
    </message>
    <message>
        <source>Hose tee 9 mm with branch 4 mm</source>
        <translation>Schlauch-T-Stück 9 mm mit Abgang 4 mm</translation>
    </message>
    <message>
        <source>Crimp splice with adhesive heat-shrink sleeve</source>
        <translation>Quetschverbinder mit klebendem Schrumpfschlauch</translation>
    </message>
    <message>
        <source>Sealed connector, 1 way</source>
        <translation>Dichter Steckverbinder, 1-polig</translation>
    </message>
    <message>
        <source>Sealed connector, 2 ways</source>
        <translation>Dichter Steckverbinder, 2-polig</translation>
    </message>
    <message>
        <source>Sealed connector, 3 ways</source>
        <translation>Dichter Steckverbinder, 3-polig</translation>
    </message>
    <message>
        <source>Sealed connector, 4 ways</source>
        <translation>Dichter Steckverbinder, 4-polig</translation>
    </message>
    <message>
        <source>Sealed connector, 6 ways</source>
        <translation>Dichter Steckverbinder, 6-polig</translation>
    </message>
    <message>
        <source>Typical value; common practice, no published source.</source>
        <translation>Üblicher Wert; übliche Praxis, ohne veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>Price of the battery alone. Typical value; common practice, no published source.</source>
        <translation>Preis der Batterie allein. Üblicher Wert; übliche Praxis, ohne veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>ISO 8820-3 type C: 32 V, 1000 A (value from memory of ISO 8820-3). Price: fuse and splash-proof holder.</source>
        <translation>ISO 8820-3 Typ C: 32 V, 1000 A (Wert aus dem Gedächtnis nach ISO 8820-3). Preis: Sicherung und spritzwasserdichter Halter.</translation>
    </message>
    <message>
        <source>ISO 8820-3 type E: 32 V, 1000 A (value from memory of ISO 8820-3). Price: fuse and holder.</source>
        <translation>ISO 8820-3 Typ E: 32 V, 1000 A (Wert aus dem Gedächtnis nach ISO 8820-3). Preis: Sicherung und Halter.</translation>
    </message>
    <message>
        <source>Shares of the rating that are left without a heat sink: common practice, no published source.</source>
        <translation>Anteile der Belastbarkeit, die ohne Kühlkörper bleiben: übliche Praxis, ohne veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>Running and inrush current, flow and lowest pressure of a small 12 V vane pump; common practice, no published source.</source>
        <translation>Betriebs- und Anlaufstrom, Fördermenge und niedrigster Druck einer kleinen 12-V-Flügelzellenpumpe; übliche Praxis, ohne veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>The small pump with one and a half times the flow and torque; common practice, no published source.</source>
        <translation>Die kleine Pumpe mit anderthalbfacher Fördermenge und anderthalbfachem Drehmoment; übliche Praxis, ohne veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>Area of the housing's nominal diameter; chambers in proportion to it; common practice, no published source.</source>
        <translation>Fläche des Nenndurchmessers des Gehäuses; Kammern im Verhältnis dazu; übliche Praxis, ohne veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>Price: splice and sleeve.</source>
        <translation>Preis: Verbinder und Schrumpfschlauch.</translation>
    </message>
</context>
</TS>

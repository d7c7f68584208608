<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Snapshots</name>
    <message>
        <source>This unsaved work was opened before and the program did not live. It is set aside, and will not be offered again.</source>
        <translation>Diese nicht gespeicherte Arbeit wurde schon einmal geöffnet, und das Programm hat es nicht überlebt. Sie ist beiseitegelegt und wird nicht wieder angeboten.</translation>
    </message>
</context>
<context>
    <name>pumpwright</name>
    <message>
        <source>%1 closes</source>
        <translation>%1 schließt</translation>
    </message>
    <message>
        <source>%1 opens</source>
        <translation>%1 öffnet</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Unterdruck</translation>
    </message>
    <message>
        <source>Assist</source>
        <translation>Unterstützung</translation>
    </message>
    <message>
        <source>%1 asked</source>
        <translation>%1 verlangt</translation>
    </message>
    <message>
        <source>%1 delivered</source>
        <translation>%1 geleistet</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>%1 at 30</source>
        <translation>%1 an 30</translation>
    </message>
    <message>
        <source>%1 at +</source>
        <translation>%1 an +</translation>
    </message>
    <message>
        <source>Current of the selection</source>
        <translation>Strom der Auswahl</translation>
    </message>
    <message>
        <source>%1: coil</source>
        <translation>%1: Spule</translation>
    </message>
    <message>
        <source>%1: contact</source>
        <translation>%1: Kontakt</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Kontakte</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>on</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Price per metre (%1)</source>
        <translation>Preis je Meter (%1)</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Isolierung</translation>
    </message>
    <message>
        <source>Loaded wires in its bundle</source>
        <translation>Belastete Leitungen im Bündel</translation>
    </message>
    <message>
        <source>In a sheath all the way</source>
        <translation>Durchgehend im Schutzrohr</translation>
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
        <source>Inner diameter</source>
        <translation>Innendurchmesser</translation>
    </message>
    <message>
        <source>Set the limit “%1” to %2</source>
        <translation>Grenze „%1“ auf %2 setzen</translation>
    </message>
    <message>
        <source>Loaded wires in a bundle, at least</source>
        <translation>Belastete Leitungen im Bündel, mindestens</translation>
    </message>
    <message>
        <source>Presses with assist after the pump has died</source>
        <translation>Bremsungen mit Unterstützung nach Ausfall der Pumpe</translation>
    </message>
    <message>
        <source>Set %1 of %2</source>
        <translation>%1 von %2 setzen</translation>
    </message>
    <message>
        <source>%1 parts of different kinds</source>
        <translation>%1 verschiedenartige Teile</translation>
    </message>
    <message>
        <source>Select parts of one kind to edit them together.</source>
        <translation>Teile einer Art auswählen, um sie gemeinsam zu ändern.</translation>
    </message>
    <message>
        <source>%1 parts: %2</source>
        <translation>%1 Teile: %2</translation>
    </message>
    <message>
        <source>%1 Wire</source>
        <translation>%1 Leitung</translation>
    </message>
    <message>
        <source>%1 wires</source>
        <translation>%1 Leitungen</translation>
    </message>
    <message>
        <source>A new value goes to all of them.</source>
        <translation>Ein neuer Wert gilt für alle.</translation>
    </message>
    <message>
        <source>%1 Hose</source>
        <translation>%1 Schlauch</translation>
    </message>
    <message>
        <source>%1 hoses</source>
        <translation>%1 Schläuche</translation>
    </message>
    <message>
        <source>Limits of this circuit</source>
        <translation>Grenzen dieser Schaltung</translation>
    </message>
    <message>
        <source>Findings are told against these. Select a part, a wire or a hose to see and set its values.</source>
        <translation>Befunde werden an ihnen gemessen. Ein Teil, eine Leitung oder einen Schlauch auswählen, um die Werte zu sehen und zu setzen.</translation>
    </message>
    <message>
        <source>Wires and hoses</source>
        <translation>Leitungen und Schläuche</translation>
    </message>
    <message>
        <source>Select either wires or hoses to edit them together.</source>
        <translation>Entweder Leitungen oder Schläuche auswählen, um sie gemeinsam zu ändern.</translation>
    </message>
    <message>
        <source>Another part is also called %1. Give one of them another number.</source>
        <translation>Ein anderes Teil heißt auch %1. Einem von beiden eine andere Nummer geben.</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Place in the vehicle</source>
        <translation>Platz im Fahrzeug</translation>
    </message>
    <message>
        <source>Protection (IEC 60529)</source>
        <translation>Schutzart (IEC 60529)</translation>
    </message>
    <message>
        <source>Stands surroundings up to</source>
        <translation>Verträgt Umgebung bis</translation>
    </message>
    <message>
        <source>Price (%1)</source>
        <translation>Preis (%1)</translation>
    </message>
    <message>
        <source>Where the values come from</source>
        <translation>Woher die Werte stammen</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Beschriftung</translation>
    </message>
    <message>
        <source>Switch</source>
        <translation>Schalter</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Brake presses</source>
        <translation>Bremsungen</translation>
    </message>
    <message>
        <source>press</source>
        <translation>Bremsung</translation>
    </message>
    <message>
        <source>Nobody brakes. Add a press to see whether assist is there.</source>
        <translation>Niemand bremst. Eine Bremsung hinzufügen, um zu sehen, ob Unterstützung da ist.</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Force</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>Switch moves</source>
        <translation>Schalterstellungen</translation>
    </message>
    <message>
        <source>switch move</source>
        <translation>Schalterstellung</translation>
    </message>
    <message>
        <source>Every hand switch stays as it is at the start.</source>
        <translation>Jeder Handschalter bleibt, wie er am Anfang steht.</translation>
    </message>
    <message>
        <source>There is no hand switch in the circuit. Place one first.</source>
        <translation>In der Schaltung ist kein Handschalter. Zuerst einen setzen.</translation>
    </message>
    <message>
        <source>Charging</source>
        <translation>Laden</translation>
    </message>
    <message>
        <source>charging span</source>
        <translation>Ladezeit</translation>
    </message>
    <message>
        <source>Neither engine nor converter feeds the 12 V system.</source>
        <translation>Weder Motor noch Wandler speist das 12-V-Netz.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>altitude point</source>
        <translation>Höhenpunkt</translation>
    </message>
    <message>
        <source>The whole drive is at sea level.</source>
        <translation>Die ganze Fahrt ist auf Meereshöhe.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 is out of range. Allowed: %2.</source>
        <translation>%1 liegt außerhalb des Bereichs. Erlaubt: %2.</translation>
    </message>
    <message>
        <source>Columns of %1</source>
        <translation>Spalten von %1</translation>
    </message>
    <message>
        <source>Rows of %1</source>
        <translation>Zeilen von %1</translation>
    </message>
    <message>
        <source>Select all of %1</source>
        <translation>Alles von %1 auswählen</translation>
    </message>
    <message>
        <source>black</source>
        <translation>schwarz</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>braun</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violett</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>white</source>
        <translation>weiß</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>green and yellow</source>
        <translation>grün und gelb</translation>
    </message>
    <message>
        <source>“%1” is no colour. Use the letters of IEC 60757, one or two colours: RD, RDBU.</source>
        <translation>„%1“ ist keine Farbe. Buchstaben nach IEC 60757 verwenden, eine oder zwei Farben: RD, RDBU.</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 nach %2</translation>
    </message>
    <message numerus="yes">
        <source>%n objects</source>
        <translation>
            <numerusform>%n Objekt</numerusform>
            <numerusform>%n Objekte</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 gemessen</translation>
    </message>
</context>
<context>
    <name>pumpwright::AccessibleObject</name>
    <message>
        <source>Select</source>
        <translation>Auswählen</translation>
    </message>
    <message>
        <source>Open the Nameplate</source>
        <translation>Typenschild öffnen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Selects what the finding is about and brings it into view</source>
        <translation>Wählt aus, worum es im Befund geht, und bringt es ins Bild</translation>
    </message>
    <message>
        <source>Selects it and brings it into view</source>
        <translation>Wählt es aus und bringt es ins Bild</translation>
    </message>
    <message>
        <source>Shows its values, to be changed</source>
        <translation>Zeigt seine Werte, um sie zu ändern</translation>
    </message>
    <message>
        <source>Takes it out of the circuit; undo brings it back</source>
        <translation>Nimmt es aus der Schaltung; Rückgängig bringt es wieder</translation>
    </message>
</context>
<context>
    <name>pumpwright::ArrangeActions</name>
    <message>
        <source>&amp;Left edges</source>
        <translation>&amp;Linke Kanten</translation>
    </message>
    <message>
        <source>Move the parts to the leftmost edge</source>
        <translation>Die Teile an die Kante ganz links schieben</translation>
    </message>
    <message>
        <source>&amp;One below the other</source>
        <translation>&amp;Untereinander</translation>
    </message>
    <message>
        <source>Bring the middles of the parts below each other</source>
        <translation>Die Mitten der Teile untereinander bringen</translation>
    </message>
    <message>
        <source>&amp;Right edges</source>
        <translation>&amp;Rechte Kanten</translation>
    </message>
    <message>
        <source>Move the parts to the rightmost edge</source>
        <translation>Die Teile an die Kante ganz rechts schieben</translation>
    </message>
    <message>
        <source>&amp;Top edges</source>
        <translation>&amp;Obere Kanten</translation>
    </message>
    <message>
        <source>Move the parts to the topmost edge</source>
        <translation>Die Teile an die oberste Kante schieben</translation>
    </message>
    <message>
        <source>&amp;Side by side</source>
        <translation>&amp;Nebeneinander</translation>
    </message>
    <message>
        <source>Bring the middles of the parts to one height</source>
        <translation>Die Mitten der Teile auf eine Höhe bringen</translation>
    </message>
    <message>
        <source>&amp;Bottom edges</source>
        <translation>U&amp;ntere Kanten</translation>
    </message>
    <message>
        <source>Move the parts to the lowest edge</source>
        <translation>Die Teile an die unterste Kante schieben</translation>
    </message>
    <message>
        <source>Equal gaps &amp;across</source>
        <translation>Gleiche Abstände &amp;waagerecht</translation>
    </message>
    <message>
        <source>Leave the same gap from part to part, left to right</source>
        <translation>Von Teil zu Teil denselben Abstand lassen, von links nach rechts</translation>
    </message>
    <message>
        <source>Equal gaps &amp;down</source>
        <translation>Gleiche Abstände &amp;senkrecht</translation>
    </message>
    <message>
        <source>Leave the same gap from part to part, top to bottom</source>
        <translation>Von Teil zu Teil denselben Abstand lassen, von oben nach unten</translation>
    </message>
</context>
<context>
    <name>pumpwright::Arranging</name>
    <message>
        <source>Align %1 left</source>
        <translation>%1 links ausrichten</translation>
    </message>
    <message>
        <source>Align %1 one below the other</source>
        <translation>%1 untereinander ausrichten</translation>
    </message>
    <message>
        <source>Align %1 right</source>
        <translation>%1 rechts ausrichten</translation>
    </message>
    <message>
        <source>Align %1 at the top</source>
        <translation>%1 oben ausrichten</translation>
    </message>
    <message>
        <source>Align %1 side by side</source>
        <translation>%1 nebeneinander ausrichten</translation>
    </message>
    <message>
        <source>Align %1 at the bottom</source>
        <translation>%1 unten ausrichten</translation>
    </message>
    <message>
        <source>Equal gaps across: %1</source>
        <translation>Gleiche Abstände waagerecht: %1</translation>
    </message>
    <message>
        <source>Equal gaps down: %1</source>
        <translation>Gleiche Abstände senkrecht: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::BandTool</name>
    <message>
        <source>Release to select what lies inside; with Shift it is added.</source>
        <translation>Loslassen wählt aus, was innen liegt; mit Umschalt kommt es dazu.</translation>
    </message>
</context>
<context>
    <name>pumpwright::CanvasEdits</name>
    <message numerus="yes">
        <source>%n objects</source>
        <translation>
            <numerusform>%n Objekt</numerusform>
            <numerusform>%n Objekte</numerusform>
        </translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Rotate %1</source>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Mirror %1</source>
        <translation>%1 spiegeln</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>%1 löschen</translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translation>%1 einfügen</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>%1 setzen</translation>
    </message>
    <message>
        <source>Draw %1</source>
        <translation>%1 zeichnen</translation>
    </message>
    <message>
        <source>Lay %1</source>
        <translation>%1 verlegen</translation>
    </message>
</context>
<context>
    <name>pumpwright::CautionsBar</name>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Before you rely on anything here</source>
        <translation>Bevor Sie sich auf irgendetwas hier verlassen</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
</context>
<context>
    <name>pumpwright::CircuitView</name>
    <message>
        <source>Circuit</source>
        <translation>Schaltung</translation>
    </message>
    <message>
        <source>The drawing of the circuit. Ctrl with the arrow keys goes from part to part.</source>
        <translation>Die Zeichnung der Schaltung. Strg mit den Pfeiltasten geht von Teil zu Teil.</translation>
    </message>
    <message>
        <source>There are no parts on the clipboard. Copy some first.</source>
        <translation>In der Zwischenablage sind keine Teile. Zuerst welche kopieren.</translation>
    </message>
    <message>
        <source>Rotate</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation>Spiegeln</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Ausschneiden</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Draw a wire</source>
        <translation>Leitung zeichnen</translation>
    </message>
    <message>
        <source>Draw a hose</source>
        <translation>Schlauch zeichnen</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Select all</source>
        <translation>Alles auswählen</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>Route again</source>
        <translation>Neu verlegen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Nameplate</source>
        <translation>Typenschild</translation>
    </message>
    <message>
        <source>Arrange</source>
        <translation>Anordnen</translation>
    </message>
    <message>
        <source>Select one part or wire that has a label.</source>
        <translation>Ein Teil oder eine Leitung mit Beschriftung auswählen.</translation>
    </message>
    <message>
        <source>Move label</source>
        <translation>Beschriftung verschieben</translation>
    </message>
    <message>
        <source>Place label automatically</source>
        <translation>Beschriftung selbsttätig anordnen</translation>
    </message>
</context>
<context>
    <name>pumpwright::CompareActions</name>
    <message>
        <source>Co&amp;mpare with a file…</source>
        <translation>Mit einer Datei &amp;vergleichen…</translation>
    </message>
    <message>
        <source>See what has changed since another file, and what that does to the findings</source>
        <translation>Sehen, was sich gegenüber einer anderen Datei geändert hat und was das für die Befunde heißt</translation>
    </message>
    <message>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <source>Circuits (*.pumpwright)</source>
        <translation>Schaltungen (*.pumpwright)</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be compared with.</source>
        <translation>Mit „%1“ lässt sich nicht vergleichen.</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Ohne Namen</translation>
    </message>
    <message>
        <source>Simulating “%1” to compare…</source>
        <translation>„%1“ wird zum Vergleich simuliert…</translation>
    </message>
</context>
<context>
    <name>pumpwright::ComparisonWindow</name>
    <message>
        <source>What differs</source>
        <translation>Was sich unterscheidet</translation>
    </message>
    <message>
        <source>Before: %1
After: %2</source>
        <translation>Vorher: %1
Nachher: %2</translation>
    </message>
    <message>
        <source>What was added, removed and changed</source>
        <translation>Was hinzukam, wegfiel und sich änderte</translation>
    </message>
    <message>
        <source>The circuits say the same.</source>
        <translation>Die Schaltungen sagen dasselbe.</translation>
    </message>
    <message>
        <source>What that does to the findings</source>
        <translation>Was das für die Befunde heißt</translation>
    </message>
    <message>
        <source>The findings are the same.</source>
        <translation>Die Befunde sind dieselben.</translation>
    </message>
    <message>
        <source>Parts that only stand elsewhere on the drawing: %1</source>
        <translation>Teile, die nur anders auf der Zeichnung stehen: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::ConnectTool</name>
    <message>
        <source>tee in the hose</source>
        <translation>T-Stück im Schlauch</translation>
    </message>
    <message>
        <source>splice in the wire</source>
        <translation>Verbinder in der Leitung</translation>
    </message>
    <message>
        <source>From %1: click the port or hose where the hose ends, or a place for a corner. Esc starts again.</source>
        <translation>Von %1: auf Stutzen oder Schlauch klicken, wo der Schlauch endet, oder auf eine Ecke. Esc beginnt neu.</translation>
    </message>
    <message>
        <source>From %1: click the terminal or wire where the wire ends, or a place for a corner. Esc starts again.</source>
        <translation>Von %1: auf Klemme oder Leitung klicken, wo die Leitung endet, oder auf eine Ecke. Esc beginnt neu.</translation>
    </message>
    <message>
        <source>Nothing here is called %1. Backspace takes a letter back.</source>
        <translation>Hier heißt nichts %1. Die Rücktaste nimmt einen Buchstaben zurück.</translation>
    </message>
    <message>
        <source>Enter ends it at %1. Type reference and number for another, as in K1 86.</source>
        <translation>Eingabe endet bei %1. Für ein anderes Ende Kennzeichen und Nummer tippen, etwa K1 86.</translation>
    </message>
    <message>
        <source>Enter begins at %1. Type reference and number for another, as in K1 86.</source>
        <translation>Eingabe beginnt bei %1. Für einen anderen Anfang Kennzeichen und Nummer tippen, etwa K1 86.</translation>
    </message>
    <message>
        <source>Click the port where the hose begins, or type it. Esc ends.</source>
        <translation>Den Stutzen anklicken oder tippen, an dem der Schlauch beginnt. Esc beendet.</translation>
    </message>
    <message>
        <source>Click the terminal where the wire begins, or type it. Esc ends.</source>
        <translation>Die Klemme anklicken oder tippen, an der die Leitung beginnt. Esc beendet.</translation>
    </message>
</context>
<context>
    <name>pumpwright::Document</name>
    <message>
        <source>Make a trial: %1</source>
        <translation>Versuch anlegen: %1</translation>
    </message>
    <message>
        <source>Take the trial: %1</source>
        <translation>Versuch übernehmen: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::DriveActions</name>
    <message>
        <source>&amp;Play the drive</source>
        <translation>Fahrt ab&amp;spielen</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Run the cursor over the drive, on the canvas too</source>
        <translation>Den Zeiger über die Fahrt laufen lassen, auch auf der Zeichnung</translation>
    </message>
    <message>
        <source>Event &amp;before</source>
        <translation>Ereignis &amp;davor</translation>
    </message>
    <message>
        <source>◂ Event</source>
        <translation>◂ Ereignis</translation>
    </message>
    <message>
        <source>Cursor to the event before</source>
        <translation>Zeiger zum Ereignis davor</translation>
    </message>
    <message>
        <source>&amp;Next event</source>
        <translation>&amp;Nächstes Ereignis</translation>
    </message>
    <message>
        <source>Event ▸</source>
        <translation>Ereignis ▸</translation>
    </message>
    <message>
        <source>Cursor to the next event</source>
        <translation>Zeiger zum nächsten Ereignis</translation>
    </message>
    <message>
        <source>&amp;Slow at events</source>
        <translation>&amp;Langsam bei Ereignissen</translation>
    </message>
    <message>
        <source>Slow at events</source>
        <translation>Langsam bei Ereignissen</translation>
    </message>
    <message>
        <source>Play slowly past events, so that an armature can be seen to travel</source>
        <translation>Langsam an Ereignissen vorbei, damit man einen Anker sich bewegen sieht</translation>
    </message>
    <message>
        <source>Set the &amp;mark at the cursor</source>
        <translation>&amp;Marke am Zeiger setzen</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Set a mark at the cursor, to read differences from</source>
        <translation>Eine Marke am Zeiger setzen, um Unterschiede abzulesen</translation>
    </message>
    <message>
        <source>&amp;Remove the mark</source>
        <translation>Marke &amp;entfernen</translation>
    </message>
    <message>
        <source>No mark</source>
        <translation>Keine Marke</translation>
    </message>
    <message>
        <source>Remove the mark</source>
        <translation>Marke entfernen</translation>
    </message>
    <message>
        <source>Speed of playing</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>How fast the drive is played</source>
        <translation>Wie schnell die Fahrt abgespielt wird</translation>
    </message>
    <message>
        <source>a hundredth</source>
        <translation>ein Hundertstel</translation>
    </message>
    <message>
        <source>a tenth</source>
        <translation>ein Zehntel</translation>
    </message>
    <message>
        <source>real time</source>
        <translation>Echtzeit</translation>
    </message>
    <message>
        <source>10 times</source>
        <translation>10-fach</translation>
    </message>
    <message>
        <source>60 times</source>
        <translation>60-fach</translation>
    </message>
    <message>
        <source>&amp;Pause</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>pumpwright::DriveChart</name>
    <message>
        <source>Vacuum</source>
        <translation>Unterdruck</translation>
    </message>
    <message>
        <source>Assist</source>
        <translation>Unterstützung</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Current of the selection</source>
        <translation>Strom der Auswahl</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Kontakte</translation>
    </message>
    <message>
        <source>Values and events</source>
        <translation>Werte und Ereignisse</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Lines and values</source>
        <translation>Linien und Werte</translation>
    </message>
    <message>
        <source>Values at the cursor</source>
        <translation>Werte am Zeiger</translation>
    </message>
    <message>
        <source>Events of the drive</source>
        <translation>Ereignisse der Fahrt</translation>
    </message>
    <message>
        <source>Drive chart tools</source>
        <translation>Werkzeuge des Fahrtdiagramms</translation>
    </message>
    <message>
        <source>Whole drive</source>
        <translation>Ganze Fahrt</translation>
    </message>
    <message>
        <source>Show the whole drive (0)</source>
        <translation>Die ganze Fahrt zeigen (0)</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Show less time (+)</source>
        <translation>Weniger Zeit zeigen (+)</translation>
    </message>
    <message>
        <source>Wider</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Show more time (−)</source>
        <translation>Mehr Zeit zeigen (−)</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Spuren</translation>
    </message>
    <message>
        <source>Choose the lanes that are shown</source>
        <translation>Auswählen, welche Spuren gezeigt werden</translation>
    </message>
    <message>
        <source>Cursor at %1</source>
        <translation>Zeiger bei %1</translation>
    </message>
    <message>
        <source>%1, %2 from the mark</source>
        <translation>%1, %2 ab der Marke</translation>
    </message>
    <message>
        <source>The simulation stopped early. %1</source>
        <translation>Die Simulation hörte vorzeitig auf. %1</translation>
    </message>
    <message>
        <source>Simulating the drive…</source>
        <translation>Die Fahrt wird simuliert…</translation>
    </message>
    <message>
        <source>The drive shows here once the circuit holds a supply, a pump and a booster.</source>
        <translation>Die Fahrt erscheint hier, sobald die Schaltung Versorgung, Pumpe und Bremskraftverstärker enthält.</translation>
    </message>
</context>
<context>
    <name>pumpwright::DrivePlanEditor</name>
    <message>
        <source>Drive plan</source>
        <translation>Fahrtplan</translation>
    </message>
    <message>
        <source>Length of the drive</source>
        <translation>Dauer der Fahrt</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>Vacuum at the start</source>
        <translation>Unterdruck am Anfang</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>%1 setzen</translation>
    </message>
    <message>
        <source>Starts steady</source>
        <translation>Beginnt eingeschwungen</translation>
    </message>
    <message>
        <source>As after ten minutes of the first instant: booster evacuated, wires warm. Else the vehicle has stood, with the vacuum above.</source>
        <translation>Wie nach zehn Minuten des ersten Augenblicks: Bremskraftverstärker evakuiert, Leitungen warm. Sonst hat das Fahrzeug gestanden, mit dem Unterdruck oben.</translation>
    </message>
    <message>
        <source>Start the drive steady</source>
        <translation>Fahrt eingeschwungen beginnen</translation>
    </message>
    <message>
        <source>Start the drive at rest</source>
        <translation>Fahrt aus dem Stand beginnen</translation>
    </message>
</context>
<context>
    <name>pumpwright::EditActions</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>Cut the selection</source>
        <translation>Die Auswahl ausschneiden</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Copy the selection</source>
        <translation>Die Auswahl kopieren</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>Paste at the pointer</source>
        <translation>Am Zeiger einfügen</translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation>&amp;Verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate the selection</source>
        <translation>Die Auswahl verdoppeln</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>A&amp;lles auswählen</translation>
    </message>
    <message>
        <source>Select everything</source>
        <translation>Alles auswählen</translation>
    </message>
    <message>
        <source>&amp;Rotate</source>
        <translation>&amp;Drehen</translation>
    </message>
    <message>
        <source>Turn the selection by a quarter, clockwise</source>
        <translation>Die Auswahl um ein Viertel im Uhrzeigersinn drehen</translation>
    </message>
    <message>
        <source>&amp;Mirror</source>
        <translation>&amp;Spiegeln</translation>
    </message>
    <message>
        <source>Mirror the selection left to right</source>
        <translation>Die Auswahl links-rechts spiegeln</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>Delete the selection</source>
        <translation>Die Auswahl löschen</translation>
    </message>
    <message>
        <source>&amp;Select</source>
        <translation>&amp;Auswählen</translation>
    </message>
    <message>
        <source>Select and move (Esc)</source>
        <translation>Auswählen und verschieben (Esc)</translation>
    </message>
    <message>
        <source>&amp;Wire</source>
        <translation>&amp;Leitung</translation>
    </message>
    <message>
        <source>Draw a wire from terminal to terminal</source>
        <translation>Eine Leitung von Klemme zu Klemme zeichnen</translation>
    </message>
    <message>
        <source>&amp;Hose</source>
        <translation>&amp;Schlauch</translation>
    </message>
    <message>
        <source>Draw a hose from port to port</source>
        <translation>Einen Schlauch von Stutzen zu Stutzen zeichnen</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Show the circuit larger</source>
        <translation>Die Schaltung größer zeigen</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Show the circuit smaller</source>
        <translation>Die Schaltung kleiner zeigen</translation>
    </message>
    <message>
        <source>Actual &amp;size</source>
        <translation>&amp;Originalgröße</translation>
    </message>
    <message>
        <source>Show the circuit at 100 %</source>
        <translation>Die Schaltung bei 100 % zeigen</translation>
    </message>
    <message>
        <source>&amp;Fit</source>
        <translation>&amp;Einpassen</translation>
    </message>
    <message>
        <source>Show the whole circuit</source>
        <translation>Die ganze Schaltung zeigen</translation>
    </message>
    <message>
        <source>Arra&amp;nge</source>
        <translation>A&amp;nordnen</translation>
    </message>
    <message>
        <source>Move la&amp;bel</source>
        <translation>Besch&amp;riftung verschieben</translation>
    </message>
    <message>
        <source>Move the texts beside the selected part or wire</source>
        <translation>Die Texte neben dem ausgewählten Teil oder der Leitung verschieben</translation>
    </message>
    <message>
        <source>Place label aut&amp;omatically</source>
        <translation>Beschriftung selbsttäti&amp;g anordnen</translation>
    </message>
    <message>
        <source>Leave it to the program where the texts stand</source>
        <translation>Dem Programm überlassen, wo die Texte stehen</translation>
    </message>
</context>
<context>
    <name>pumpwright::EmptyState</name>
    <message>
        <source>Open a sample, drag a part here, or open a file.</source>
        <translation>Ein Beispiel öffnen, ein Teil hierher ziehen oder eine Datei öffnen.</translation>
    </message>
    <message>
        <source>Open a sample</source>
        <translation>Beispiel öffnen</translation>
    </message>
    <message>
        <source>Open a file…</source>
        <translation>Datei öffnen…</translation>
    </message>
</context>
<context>
    <name>pumpwright::ErrorBar</name>
    <message>
        <source>What went wrong</source>
        <translation>Was schiefging</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Put this message away</source>
        <translation>Diese Meldung weglegen</translation>
    </message>
    <message>
        <source>Message code: %1</source>
        <translation>Meldungscode: %1</translation>
    </message>
    <message>
        <source>Place: %1. Message code: %2</source>
        <translation>Stelle: %1. Meldungscode: %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::EventModel</name>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Was geschieht</translation>
    </message>
</context>
<context>
    <name>pumpwright::ExportActions</name>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>&amp;Schematic…</source>
        <translation>&amp;Schaltplan…</translation>
    </message>
    <message>
        <source>Write the schematic</source>
        <translation>Schaltplan schreiben</translation>
    </message>
    <message>
        <source>Drawings (*.svg *.png *.pdf)</source>
        <translation>Zeichnungen (*.svg *.png *.pdf)</translation>
    </message>
    <message>
        <source>Drive &amp;chart…</source>
        <translation>&amp;Fahrtdiagramm…</translation>
    </message>
    <message>
        <source>Write the drive chart</source>
        <translation>Fahrtdiagramm schreiben</translation>
    </message>
    <message>
        <source>Pictures and tables (*.png *.svg *.csv)</source>
        <translation>Bilder und Tabellen (*.png *.svg *.csv)</translation>
    </message>
    <message>
        <source>W&amp;ires as table…</source>
        <translation>&amp;Leitungen als Tabelle…</translation>
    </message>
    <message>
        <source>Write the wires</source>
        <translation>Leitungen schreiben</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>Die Tabelle</translation>
    </message>
    <message>
        <source>&amp;Parts list as table…</source>
        <translation>Stü&amp;ckliste als Tabelle…</translation>
    </message>
    <message>
        <source>Write the parts list</source>
        <translation>Stückliste schreiben</translation>
    </message>
    <message>
        <source>&amp;Nets as table…</source>
        <translation>&amp;Netze als Tabelle…</translation>
    </message>
    <message>
        <source>Write which terminals are joined</source>
        <translation>Schreiben, welche Klemmen verbunden sind</translation>
    </message>
    <message>
        <source>&amp;Findings…</source>
        <translation>&amp;Befunde…</translation>
    </message>
    <message>
        <source>Write the findings</source>
        <translation>Befunde schreiben</translation>
    </message>
    <message>
        <source>Text and data (*.md *.json)</source>
        <translation>Text und Daten (*.md *.json)</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Ohne Namen</translation>
    </message>
    <message>
        <source>“%1” is written.</source>
        <translation>„%1“ ist geschrieben.</translation>
    </message>
    <message>
        <source>“%1” is not written.</source>
        <translation>„%1“ ist nicht geschrieben.</translation>
    </message>
    <message>
        <source>The circuit was not simulated yet. Try again in a moment.</source>
        <translation>Die Schaltung ist noch nicht simuliert. Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The findings can&apos;t be written in this form. End the file name in .md or .json.</source>
        <translation>In dieser Form lassen sich die Befunde nicht schreiben. Den Dateinamen auf .md oder .json enden lassen.</translation>
    </message>
    <message>
        <source>The list of findings</source>
        <translation>Die Liste der Befunde</translation>
    </message>
</context>
<context>
    <name>pumpwright::FileActions</name>
    <message>
        <source>Circuits (*.pumpwright)</source>
        <translation>Schaltungen (*.pumpwright)</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>Start an empty circuit</source>
        <translation>Eine leere Schaltung beginnen</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open a circuit file</source>
        <translation>Eine Schaltungsdatei öffnen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save the circuit</source>
        <translation>Die Schaltung speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save the circuit under another name</source>
        <translation>Die Schaltung unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>Open a circuit</source>
        <translation>Schaltung öffnen</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be opened. The open circuit is unchanged.</source>
        <translation>„%1“ lässt sich nicht öffnen. Die offene Schaltung ist unverändert.</translation>
    </message>
    <message>
        <source>“%1” is not saved. Your changes are still here.</source>
        <translation>„%1“ ist nicht gespeichert. Ihre Änderungen sind noch da.</translation>
    </message>
    <message>
        <source>“%1” is saved.</source>
        <translation>„%1“ ist gespeichert.</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Ohne Namen</translation>
    </message>
    <message>
        <source>&amp;Keep this circuit as a template…</source>
        <translation>Diese Schaltung als &amp;Vorlage behalten…</translation>
    </message>
    <message>
        <source>Keep as a template</source>
        <translation>Als Vorlage behalten</translation>
    </message>
    <message>
        <source>The template “%1” is not written.</source>
        <translation>Die Vorlage „%1“ ist nicht geschrieben.</translation>
    </message>
    <message>
        <source>The template “%1” is kept.</source>
        <translation>Die Vorlage „%1“ ist abgelegt.</translation>
    </message>
    <message>
        <source>No file yet</source>
        <translation>Noch keine Datei</translation>
    </message>
    <message>
        <source>Forget this list</source>
        <translation>Diese Liste vergessen</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindField</name>
    <message>
        <source>Find in the circuit</source>
        <translation>In der Schaltung suchen</translation>
    </message>
    <message>
        <source>Reference, label, kind or value; Return goes to the next match</source>
        <translation>Kennzeichen, Beschriftung, Art oder Wert; Eingabe geht zum nächsten Treffer</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>nichts gefunden</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindingDelegate</name>
    <message>
        <source>%1, waived</source>
        <translation>%1, hingenommen</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindingDetails</name>
    <message>
        <source>Read about this rule</source>
        <translation>Über diese Regel lesen</translation>
    </message>
    <message>
        <source>What it looks at, its limit and where that comes from, with examples</source>
        <translation>Was sie ansieht, ihre Grenze und woher diese stammt, mit Beispielen</translation>
    </message>
    <message>
        <source>Waive…</source>
        <translation>Hinnehmen…</translation>
    </message>
    <message>
        <source>Accept this finding, with a reason that is printed on the wiring sheet</source>
        <translation>Diesen Befund hinnehmen, mit einem Grund, der auf dem Verdrahtungsblatt steht</translation>
    </message>
    <message>
        <source>Take the waiver back</source>
        <translation>Hinnahme zurücknehmen</translation>
    </message>
    <message>
        <source>Reason of the waiver</source>
        <translation>Grund der Hinnahme</translation>
    </message>
    <message>
        <source>Initials of who waives</source>
        <translation>Kürzel dessen, der hinnimmt</translation>
    </message>
    <message>
        <source>Waive</source>
        <translation>Hinnehmen</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Why it matters: %1</source>
        <translation>Warum es zählt: %1</translation>
    </message>
    <message>
        <source>Source of the limit: %1</source>
        <translation>Quelle der Grenze: %1</translation>
    </message>
    <message>
        <source>Show at %1 in the drive</source>
        <translation>Bei %1 der Fahrt zeigen</translation>
    </message>
    <message>
        <source>Remedy</source>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <source>Remedies</source>
        <translation>Abhilfen</translation>
    </message>
    <message>
        <source>Apply this remedy</source>
        <translation>Diese Abhilfe anwenden</translation>
    </message>
    <message>
        <source>Apply: %1</source>
        <translation>Anwenden: %1</translation>
    </message>
    <message>
        <source>Waived by %1: %2</source>
        <translation>Hingenommen von %1: %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindingsModel</name>
    <message>
        <source>Found %1, limit %2</source>
        <translation>Gefunden %1, Grenze %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindingsPanel</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Details of the finding</source>
        <translation>Einzelheiten des Befunds</translation>
    </message>
    <message>
        <source>Findings and details</source>
        <translation>Befunde und Einzelheiten</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>Wird geprüft…</translation>
    </message>
    <message>
        <source>No open findings.</source>
        <translation>Keine offenen Befunde.</translation>
    </message>
    <message>
        <source>1 finding: %1</source>
        <translation>1 Befund: %1</translation>
    </message>
    <message>
        <source>%1 findings: %2</source>
        <translation>%1 Befunde: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Waive %1</source>
        <translation>%1 hinnehmen</translation>
    </message>
    <message>
        <source>Take back the waiver of %1</source>
        <translation>Hinnahme von %1 zurücknehmen</translation>
    </message>
</context>
<context>
    <name>pumpwright::FitPage</name>
    <message>
        <source>Open a log…</source>
        <translation>Messreihe öffnen…</translation>
    </message>
    <message>
        <source>Take the fitted values</source>
        <translation>Angepasste Werte übernehmen</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Anpassung</translation>
    </message>
    <message>
        <source>Sets the ticked values so that the drive comes as near as it can to the log.</source>
        <translation>Setzt die angehakten Werte so, dass die Fahrt der Messreihe so nahe kommt wie möglich.</translation>
    </message>
    <message>
        <source>Tick the values to fit.</source>
        <translation>Die anzupassenden Werte anhaken.</translation>
    </message>
    <message>
        <source>Set the values in the circuit, as one step</source>
        <translation>Die Werte in der Schaltung setzen, als ein Schritt</translation>
    </message>
    <message>
        <source>Columns of the log</source>
        <translation>Spalten der Messreihe</translation>
    </message>
    <message>
        <source>Measured vacuum, voltage or current over time, as CSV.</source>
        <translation>Gemessener Unterdruck, Spannung oder Strom über der Zeit, als CSV.</translation>
    </message>
    <message>
        <source>Time offset</source>
        <translation>Zeitversatz</translation>
    </message>
    <message>
        <source>Add to its times</source>
        <translation>Zu ihren Zeiten dazu</translation>
    </message>
    <message>
        <source>Find a value</source>
        <translation>Wert suchen</translation>
    </message>
    <message>
        <source>Find a value to fit</source>
        <translation>Einen anzupassenden Wert suchen</translation>
    </message>
    <message>
        <source>Values to fit</source>
        <translation>Anzupassende Werte</translation>
    </message>
    <message>
        <source>Open a bench log</source>
        <translation>Messreihe öffnen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tabellen (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>The log cannot be read.</source>
        <translation>Die Messreihe lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>Open a log first.</source>
        <translation>Erst eine Messreihe öffnen.</translation>
    </message>
    <message>
        <source>The circuit has changed since: run it again.</source>
        <translation>Die Schaltung hat sich seither geändert: neu starten.</translation>
    </message>
</context>
<context>
    <name>pumpwright::HandPanel</name>
    <message>
        <source>Press the pedal</source>
        <translation>Pedal treten</translation>
    </message>
    <message>
        <source>Pedal force</source>
        <translation>Pedalkraft</translation>
    </message>
    <message>
        <source>The engine runs and charges</source>
        <translation>Der Motor läuft und lädt</translation>
    </message>
    <message>
        <source>Keep as drive plan</source>
        <translation>Als Fahrtplan behalten</translation>
    </message>
    <message>
        <source>Pressed until you click again; on the canvas hold the pedal, or B</source>
        <translation>Getreten bis zum nächsten Klick; auf der Zeichnung das Pedal halten, oder B</translation>
    </message>
    <message>
        <source>Make what you did the circuit&apos;s drive plan, to see it on the Drive chart</source>
        <translation>Was Sie getan haben, zum Fahrtplan machen, um es im Fahrtdiagramm zu sehen</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Bedienung</translation>
    </message>
    <message>
        <source>By hand, for %1</source>
        <translation>Von Hand, seit %1</translation>
    </message>
    <message>
        <source>. This machine is too slow: the drive goes on at %1 % of real time.</source>
        <translation>. Dieser Rechner ist zu langsam: Die Fahrt läuft mit %1 % der Echtzeit.</translation>
    </message>
    <message>
        <source>The drive, at %1</source>
        <translation>Die Fahrt, bei %1</translation>
    </message>
    <message>
        <source>There is no booster and no reservoir to measure.</source>
        <translation>Es gibt keinen Bremskraftverstärker und keinen Speicher zu messen.</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Try by hand</source>
        <translation>Von Hand probieren</translation>
    </message>
    <message>
        <source>Back to drawing (Esc)</source>
        <translation>Zurück zum Zeichnen (Esc)</translation>
    </message>
    <message>
        <source>Run the circuit in real time and operate it (F9)</source>
        <translation>Die Schaltung in Echtzeit laufen lassen und bedienen (F9)</translation>
    </message>
    <message>
        <source>Keep what was done by hand as drive plan</source>
        <translation>Von Hand Getanes als Fahrtplan behalten</translation>
    </message>
    <message>
        <source>Release the pedal</source>
        <translation>Pedal loslassen</translation>
    </message>
</context>
<context>
    <name>pumpwright::HandTool</name>
    <message>
        <source>Click a switch to move it; hold the pedal, or B, to brake. Esc ends.</source>
        <translation>Klick bewegt einen Schalter; Pedal oder B halten bremst. Esc beendet.</translation>
    </message>
    <message>
        <source>Hold the button on %1 to brake, let go to release. Esc ends.</source>
        <translation>Taste auf %1 halten bremst, loslassen löst. Esc beendet.</translation>
    </message>
    <message>
        <source>A click switches %1 off. Esc ends.</source>
        <translation>Ein Klick schaltet %1 aus. Esc beendet.</translation>
    </message>
    <message>
        <source>A click switches %1 on. Esc ends.</source>
        <translation>Ein Klick schaltet %1 ein. Esc beendet.</translation>
    </message>
</context>
<context>
    <name>pumpwright::HandbookWindow</name>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Contents of the handbook</source>
        <translation>Inhalt des Handbuchs</translation>
    </message>
    <message>
        <source>Page of the handbook</source>
        <translation>Seite des Handbuchs</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>Findings, one by one</source>
        <translation>Befunde, einer nach dem anderen</translation>
    </message>
</context>
<context>
    <name>pumpwright::LabelTool</name>
    <message>
        <source>Release to put the label here. Esc leaves it where it was.</source>
        <translation>Loslassen legt die Beschriftung hier ab. Esc lässt sie, wo sie war.</translation>
    </message>
    <message>
        <source>Move the label with the pointer or the arrow keys, Shift makes larger steps. A click or Return puts it here, Esc leaves it where it was.</source>
        <translation>Die Beschriftung mit dem Zeiger oder den Pfeiltasten verschieben, Umschalt macht größere Schritte. Ein Klick oder die Eingabetaste legt sie hier ab, Esc lässt sie, wo sie war.</translation>
    </message>
</context>
<context>
    <name>pumpwright::Labels</name>
    <message>
        <source>Move label of %1</source>
        <translation>Beschriftung von %1 verschieben</translation>
    </message>
    <message>
        <source>Place label of %1 automatically</source>
        <translation>Beschriftung von %1 selbsttätig anordnen</translation>
    </message>
</context>
<context>
    <name>pumpwright::LanePlot</name>
    <message>
        <source>Lines of the drive</source>
        <translation>Linien der Fahrt</translation>
    </message>
    <message>
        <source>Drawing of the lines</source>
        <translation>Zeichnung der Linien</translation>
    </message>
    <message>
        <source>%1, right: %2</source>
        <translation>%1, rechts: %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::LayTool</name>
    <message>
        <source>Release to lay it here. It keeps these corners until it is routed again.</source>
        <translation>Loslassen legt es hierher. Die Ecken bleiben, bis neu verlegt wird.</translation>
    </message>
</context>
<context>
    <name>pumpwright::LineSurgery</name>
    <message>
        <source>Splice into %1</source>
        <translation>In %1 verbinden</translation>
    </message>
    <message>
        <source>Tee into %1</source>
        <translation>T-Stück in %1</translation>
    </message>
    <message>
        <source>Insert %1 into %2</source>
        <translation>%1 in %2 einsetzen</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>%1 löschen</translation>
    </message>
</context>
<context>
    <name>pumpwright::LiveState</name>
    <message>
        <source>chattering</source>
        <translation>flattert</translation>
    </message>
    <message>
        <source>switching</source>
        <translation>schaltet</translation>
    </message>
    <message>
        <source>blown</source>
        <translation>durchgebrannt</translation>
    </message>
</context>
<context>
    <name>pumpwright::LogColumnsModel</name>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht benutzt</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>%1 absolute</source>
        <translation>%1 absolut</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Is</source>
        <translation>Ist</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>First value</source>
        <translation>Erster Wert</translation>
    </message>
</context>
<context>
    <name>pumpwright::LostWorkBar</name>
    <message>
        <source>Unsaved work</source>
        <translation>Nicht gespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>a circuit without a name</source>
        <translation>einer Schaltung ohne Namen</translation>
    </message>
    <message>
        <source>Pumpwright did not end well. Work on %1 of %2 was not saved, but is still here.</source>
        <translation>Pumpwright ist nicht sauber beendet worden. Arbeit an %1 vom %2 war nicht gespeichert, ist aber noch da.</translation>
    </message>
    <message>
        <source>The unsaved work can&apos;t be opened.</source>
        <translation>Die nicht gespeicherte Arbeit lässt sich nicht öffnen.</translation>
    </message>
</context>
<context>
    <name>pumpwright::MainWindow</name>
    <message>
        <source>Drawing of the circuit</source>
        <translation>Zeichnung der Schaltung</translation>
    </message>
    <message>
        <source>Parts drawer</source>
        <translation>Teileschublade</translation>
    </message>
    <message>
        <source>Nameplate</source>
        <translation>Typenschild</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Drive plan</source>
        <translation>Fahrtplan</translation>
    </message>
    <message>
        <source>Drive chart</source>
        <translation>Fahrtdiagramm</translation>
    </message>
    <message>
        <source>Studies</source>
        <translation>Studien</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>Von Hand</translation>
    </message>
    <message>
        <source>%1[*] – Pumpwright</source>
        <translation>%1[*] – Pumpwright</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>New from &amp;template</source>
        <translation>Neu aus &amp;Vorlage</translation>
    </message>
    <message>
        <source>New &amp;window</source>
        <translation>Neues &amp;Fenster</translation>
    </message>
    <message>
        <source>Open sa&amp;mple</source>
        <translation>&amp;Beispiel öffnen</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>E&amp;xport</translation>
    </message>
    <message>
        <source>&amp;Close the window</source>
        <translation>Fenster s&amp;chließen</translation>
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
        <source>&amp;Find…</source>
        <translation>&amp;Suchen…</translation>
    </message>
    <message>
        <source>Pre&amp;ferences…</source>
        <translation>&amp;Einstellungen…</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Setzen</translation>
    </message>
    <message>
        <source>&amp;Part…</source>
        <translation>&amp;Teil…</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Go to the &amp;Circuit</source>
        <translation>Zur &amp;Schaltung</translation>
    </message>
    <message>
        <source>Go to: %1</source>
        <translation>Gehe zu: %1</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>&amp;Felder</translation>
    </message>
    <message>
        <source>&amp;Drive</source>
        <translation>&amp;Fahrt</translation>
    </message>
    <message>
        <source>Try by &amp;hand</source>
        <translation>Von &amp;Hand probieren</translation>
    </message>
    <message>
        <source>Run the circuit in real time and operate switches and pedal</source>
        <translation>Die Schaltung in Echtzeit laufen lassen, Schalter und Pedal bedienen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>Help on &amp;this panel</source>
        <translation>Hilfe zu &amp;diesem Feld</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Warnhinweise</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>Was als Nächstes zu tun ist</translation>
    </message>
    <message>
        <source>State of the simulation</source>
        <translation>Stand der Simulation</translation>
    </message>
    <message>
        <source>Show the findings</source>
        <translation>Die Befunde zeigen</translation>
    </message>
    <message>
        <source>Zoom</source>
        <translation>Vergrößerung</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Simulating…</source>
        <translation>Simuliert…</translation>
    </message>
    <message>
        <source>The catalogue of parts can&apos;t be read.</source>
        <translation>Der Katalog der Teile lässt sich nicht lesen.</translation>
    </message>
</context>
<context>
    <name>pumpwright::MoveTool</name>
    <message>
        <source>Release to put it here. Ctrl, held, keeps it from going into line with others. Esc leaves everything where it was.</source>
        <translation>Loslassen legt es hier ab. Mit gehaltener Strg-Taste rückt es nicht in die Flucht anderer. Esc lässt alles, wo es war.</translation>
    </message>
</context>
<context>
    <name>pumpwright::Nameplate</name>
    <message>
        <source>Nameplate fields</source>
        <translation>Felder des Typenschilds</translation>
    </message>
</context>
<context>
    <name>pumpwright::PanelTitle</name>
    <message>
        <source>Help on: %1 (F1)</source>
        <translation>Hilfe zu: %1 (F1)</translation>
    </message>
    <message>
        <source>Close: %1</source>
        <translation>Schließen: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::PartsDrawer</name>
    <message>
        <source>Search parts</source>
        <translation>Teile suchen</translation>
    </message>
    <message>
        <source>No part matches. Try another word, such as relay, fuse or hose.</source>
        <translation>Kein Teil passt. Ein anderes Wort versuchen, etwa relay, fuse oder hose.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Columns of the parts</source>
        <translation>Spalten der Teile</translation>
    </message>
    <message>
        <source>Enter takes the part to the drawing. Ctrl+Enter puts it where there is room and stays here.</source>
        <translation>Die Eingabetaste nimmt das Teil zur Zeichnung mit. Strg+Eingabe setzt es dorthin, wo Platz ist, und bleibt hier.</translation>
    </message>
</context>
<context>
    <name>pumpwright::PartsModel</name>
    <message>
        <source>Supply</source>
        <translation>Versorgung</translation>
    </message>
    <message>
        <source>Protection</source>
        <translation>Schutz</translation>
    </message>
    <message>
        <source>Control</source>
        <translation>Steuerung</translation>
    </message>
    <message>
        <source>Sensing</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Suppression</source>
        <translation>Entstörung</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Unterdruck</translation>
    </message>
    <message>
        <source>Connection</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
</context>
<context>
    <name>pumpwright::PlaceTool</name>
    <message>
        <source>Click to insert %1 into %2. R turns it, M mirrors it, Esc ends.</source>
        <translation>Klick setzt %1 in %2 ein. R dreht, M spiegelt, Esc beendet.</translation>
    </message>
    <message>
        <source>Click to place %1. R turns it, M mirrors it; Ctrl, held, keeps it from going into line with others. Esc ends.</source>
        <translation>Klick setzt %1. R dreht, M spiegelt; mit gehaltener Strg-Taste rückt es nicht in die Flucht anderer. Esc beendet.</translation>
    </message>
</context>
<context>
    <name>pumpwright::PlanList</name>
    <message>
        <source>Add</source>
        <translation>Hinzu</translation>
    </message>
    <message>
        <source>Add a %1</source>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Remove the chosen %1</source>
        <translation>Gewählte %1 entfernen</translation>
    </message>
</context>
<context>
    <name>pumpwright::PlanMaker</name>
    <message>
        <source>Make</source>
        <translation>Machen</translation>
    </message>
    <message>
        <source>From a speed trace…</source>
        <translation>Aus einem Geschwindigkeitsverlauf…</translation>
    </message>
    <message>
        <source>Sort of drive</source>
        <translation>Art der Fahrt</translation>
    </message>
    <message>
        <source>seed </source>
        <translation>Startzahl </translation>
    </message>
    <message>
        <source>Seed of the drive</source>
        <translation>Startzahl der Fahrt</translation>
    </message>
    <message>
        <source>Another seed makes another drive of this sort</source>
        <translation>Eine andere Startzahl ergibt eine andere Fahrt dieser Art</translation>
    </message>
    <message>
        <source>Make a drive</source>
        <translation>Eine Fahrt machen</translation>
    </message>
    <message>
        <source>Replaces the presses with those of such a drive</source>
        <translation>Ersetzt die Bremsungen durch die einer solchen Fahrt</translation>
    </message>
    <message>
        <source>Takes the presses from a table of time and speed (CSV)</source>
        <translation>Nimmt die Bremsungen aus einer Tabelle von Zeit und Geschwindigkeit (CSV)</translation>
    </message>
    <message>
        <source>Open a speed trace</source>
        <translation>Geschwindigkeitsverlauf öffnen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tabellen (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>The plan cannot be made.</source>
        <translation>Der Fahrtplan lässt sich nicht machen.</translation>
    </message>
    <message>
        <source>Make the drive plan: %1</source>
        <translation>Fahrtplan machen: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::PlanTableModel</name>
    <message>
        <source>Add a %1</source>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>Remove %1 %2</source>
        <translation>%1 %2 entfernen</translation>
    </message>
    <message>
        <source>missing switch</source>
        <translation>fehlender Schalter</translation>
    </message>
    <message>
        <source>Allowed: %1</source>
        <translation>Erlaubt: %1</translation>
    </message>
    <message>
        <source>Set %1 of %2 %3</source>
        <translation>%1 von %2 %3 setzen</translation>
    </message>
</context>
<context>
    <name>pumpwright::PreferencesWindow</name>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Units and paper</source>
        <translation>Einheiten und Papier</translation>
    </message>
    <message>
        <source>New circuits</source>
        <translation>Neue Schaltungen</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Back to standard</source>
        <translation>Zurück zum Üblichen</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Unterdruck</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>inHg</source>
        <translation>inHg</translation>
    </message>
    <message>
        <source>mbar</source>
        <translation>mbar</translation>
    </message>
    <message>
        <source>Wire sizes</source>
        <translation>Leitungsquerschnitte</translation>
    </message>
    <message>
        <source>mm²</source>
        <translation>mm²</translation>
    </message>
    <message>
        <source>AWG</source>
        <translation>AWG</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>A3</source>
        <translation>A3</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>A new circuit has its prices in this currency. Prices of the catalogue in another one are left out.</source>
        <translation>Eine neue Schaltung hat ihre Preise in dieser Währung. Katalogpreise in einer anderen bleiben weg.</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Three letters, as EUR</source>
        <translation>Drei Buchstaben, etwa EUR</translation>
    </message>
    <message>
        <source>A wire as it is drawn:</source>
        <translation>Eine Leitung, wie sie gezeichnet wird:</translation>
    </message>
    <message>
        <source>Limits of a circuit that is begun new, unless it says otherwise:</source>
        <translation>Grenzen einer neu begonnenen Schaltung, wenn sie nichts anderes sagt:</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Isolierung</translation>
    </message>
    <message>
        <source>Loaded wires in a bundle, at least</source>
        <translation>Belastete Leitungen im Bündel, mindestens</translation>
    </message>
    <message>
        <source>Presses with assist after the pump has died</source>
        <translation>Bremsungen mit Unterstützung nach Ausfall der Pumpe</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Schreibtisch</translation>
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
        <source>A mouse wheel</source>
        <translation>Ein Mausrad</translation>
    </message>
    <message>
        <source>Zooms; with Ctrl too</source>
        <translation>Vergrößert; mit Strg auch</translation>
    </message>
    <message>
        <source>Scrolls; with Ctrl it zooms</source>
        <translation>Verschiebt; mit Strg vergrößert es</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>The drive is played smoothly</source>
        <translation>Die Fahrt läuft gleichmäßig ab</translation>
    </message>
    <message>
        <source>Less: playing goes from event to event</source>
        <translation>Weniger: von Ereignis zu Ereignis</translation>
    </message>
</context>
<context>
    <name>pumpwright::QuantityField</name>
    <message>
        <source>Allowed: %1</source>
        <translation>Erlaubt: %1</translation>
    </message>
    <message>
        <source>several values</source>
        <translation>mehrere Werte</translation>
    </message>
    <message>
        <source>= %1</source>
        <translation>= %1</translation>
    </message>
    <message>
        <source>%1 Still %2.</source>
        <translation>%1 Es bleibt %2.</translation>
    </message>
</context>
<context>
    <name>pumpwright::ReadoutModel</name>
    <message>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>From mark</source>
        <translation>Ab Marke</translation>
    </message>
</context>
<context>
    <name>pumpwright::ScreenDialogs</name>
    <message>
        <source>Unsaved changes</source>
        <translation>Nicht gespeicherte Änderungen</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation>„%1“ hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Discard the changes</source>
        <translation>Änderungen verwerfen</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Hier bleiben</translation>
    </message>
</context>
<context>
    <name>pumpwright::SelectTool</name>
    <message>
        <source>Click selects, Shift adds. Drag moves parts, wires and labels; drag from a terminal draws a wire.</source>
        <translation>Klick wählt aus, Umschalt fügt hinzu. Ziehen verschiebt Teile, Leitungen und Beschriftungen; Ziehen von einer Klemme zeichnet eine Leitung.</translation>
    </message>
</context>
<context>
    <name>pumpwright::SheetActions</name>
    <message>
        <source>Wiring &amp;sheet…</source>
        <translation>&amp;Verdrahtungsblatt…</translation>
    </message>
    <message>
        <source>&amp;Print the wiring sheet…</source>
        <translation>Verdrahtungsblatt &amp;drucken…</translation>
    </message>
    <message>
        <source>&amp;Wiring sheet as PDF…</source>
        <translation>&amp;Verdrahtungsblatt als PDF…</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>See the wiring sheet before it is printed</source>
        <translation>Das Verdrahtungsblatt vor dem Druck ansehen</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Ohne Namen</translation>
    </message>
    <message>
        <source>Waiting for the drive to be simulated…</source>
        <translation>Wartet auf die Simulation der Fahrt…</translation>
    </message>
    <message>
        <source>Simulating tests and breakdowns for the sheet…</source>
        <translation>Prüfungen und Ausfälle für das Blatt werden simuliert…</translation>
    </message>
    <message>
        <source>Letting one thing after the other fail, for the fault-finding table of the sheet…</source>
        <translation>Eins nach dem anderen fällt aus, für die Fehlersuchtabelle des Blatts…</translation>
    </message>
    <message>
        <source>Go on without that table</source>
        <translation>Ohne diese Tabelle weiter</translation>
    </message>
    <message>
        <source>Wiring sheet</source>
        <translation>Verdrahtungsblatt</translation>
    </message>
    <message>
        <source>Wiring sheet of %1</source>
        <translation>Verdrahtungsblatt von %1</translation>
    </message>
    <message>
        <source>The wiring sheet can&apos;t be shown.</source>
        <translation>Das Verdrahtungsblatt lässt sich nicht zeigen.</translation>
    </message>
    <message>
        <source>The wiring sheet was not printed.</source>
        <translation>Das Verdrahtungsblatt wurde nicht gedruckt.</translation>
    </message>
    <message>
        <source>“%1” is written.</source>
        <translation>„%1“ ist geschrieben.</translation>
    </message>
    <message>
        <source>“%1” is not written.</source>
        <translation>„%1“ ist nicht geschrieben.</translation>
    </message>
    <message>
        <source>Write the wiring sheet</source>
        <translation>Verdrahtungsblatt schreiben</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
</context>
<context>
    <name>pumpwright::Spoken</name>
    <message>
        <source>contact closed</source>
        <translation>Kontakt geschlossen</translation>
    </message>
    <message>
        <source>contact open</source>
        <translation>Kontakt offen</translation>
    </message>
    <message>
        <source>contact %1 closed</source>
        <translation>Kontakt %1 geschlossen</translation>
    </message>
    <message>
        <source>contact %1 open</source>
        <translation>Kontakt %1 offen</translation>
    </message>
    <message>
        <source>coil energised</source>
        <translation>Spule erregt</translation>
    </message>
    <message>
        <source>coil not energised</source>
        <translation>Spule nicht erregt</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>läuft</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>leuchtet</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>on</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>Wire %1, from %2 to %3</source>
        <translation>Leitung %1, von %2 nach %3</translation>
    </message>
    <message>
        <source>Hose %1, from %2 to %3</source>
        <translation>Schlauch %1, von %2 nach %3</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>heil</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 nach %3</translation>
    </message>
    <message>
        <source>live</source>
        <translation>unter Spannung</translation>
    </message>
    <message>
        <source>without voltage</source>
        <translation>spannungslos</translation>
    </message>
    <message>
        <source>Waived by %1: %2</source>
        <translation>Hingenommen von %1: %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::StudiesPanel</name>
    <message>
        <source>Breakdowns</source>
        <translation>Ausfälle</translation>
    </message>
    <message>
        <source>Lets each part, wire and hose fail in turn, and says what the driver notices and whether a warning comes before assist is lost. The worst comes first.</source>
        <translation>Lässt jedes Teil, jede Leitung und jeden Schlauch einmal ausfallen und sagt, was der Fahrer merkt und ob eine Warnung kommt, bevor die Unterstützung fehlt. Das Schlimmste zuerst.</translation>
    </message>
    <message>
        <source>Kinds of study</source>
        <translation>Arten von Studien</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Drives many cars whose parts lie differently within their tolerances, over the same plan.</source>
        <translation>Fährt viele Wagen, deren Teile verschieden in ihren Toleranzen liegen, über denselben Plan.</translation>
    </message>
    <message>
        <source> cars</source>
        <translation> Wagen</translation>
    </message>
    <message>
        <source>How many cars</source>
        <translation>Wie viele Wagen</translation>
    </message>
    <message>
        <source>Two at once</source>
        <translation>Zwei zugleich</translation>
    </message>
    <message>
        <source>Sweep</source>
        <translation>Durchlauf</translation>
    </message>
    <message>
        <source>Bench log</source>
        <translation>Messreihe</translation>
    </message>
    <message>
        <source>Lets every two of them fail together; takes longer</source>
        <translation>Lässt je zwei davon zusammen ausfallen; dauert länger</translation>
    </message>
    <message>
        <source>end when sure to ± </source>
        <translation>enden, wenn sicher auf ± </translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>drive all of them</source>
        <translation>alle fahren</translation>
    </message>
    <message>
        <source>End early</source>
        <translation>Früher enden</translation>
    </message>
    <message>
        <source>Ends once both shares are known to this, 95 % sure</source>
        <translation>Endet, sobald beide Anteile so genau bekannt sind, zu 95 % sicher</translation>
    </message>
</context>
<context>
    <name>pumpwright::StudyPage</name>
    <message>
        <source>Run the study</source>
        <translation>Studie starten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Run: %1</source>
        <translation>Starten: %1</translation>
    </message>
    <message>
        <source>Cancel: %1</source>
        <translation>Abbrechen: %1</translation>
    </message>
    <message>
        <source>Progress: %1</source>
        <translation>Fortschritt: %1</translation>
    </message>
    <message>
        <source>Results: %1</source>
        <translation>Ergebnisse: %1</translation>
    </message>
    <message>
        <source>Cancelled: this is what it had come to.</source>
        <translation>Abgebrochen: so weit war es gekommen.</translation>
    </message>
    <message>
        <source>The circuit has changed since: run it again.</source>
        <translation>Die Schaltung hat sich seither geändert: neu starten.</translation>
    </message>
</context>
<context>
    <name>pumpwright::SweepPage</name>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Second value</source>
        <translation>Zweiter Wert</translation>
    </message>
    <message>
        <source>nothing else</source>
        <translation>nichts weiter</translation>
    </message>
    <message>
        <source>Good at</source>
        <translation>Gut bei</translation>
    </message>
    <message>
        <source>Sweep</source>
        <translation>Durchlauf</translation>
    </message>
    <message>
        <source>Drives the circuit with a value over a range, and looks for where the result turns good.</source>
        <translation>Fährt die Schaltung mit einem Wert über einen Bereich und sucht, wo das Ergebnis gut wird.</translation>
    </message>
    <message>
        <source>%1 from</source>
        <translation>%1 von</translation>
    </message>
    <message>
        <source>%1 to</source>
        <translation>%1 bis</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Points along each value</source>
        <translation>Punkte je Wert</translation>
    </message>
    <message>
        <source> points</source>
        <translation> Punkte</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Über</translation>
    </message>
    <message>
        <source>and over</source>
        <translation>und über</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>good at</source>
        <translation>gut bei</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
</context>
<context>
    <name>pumpwright::SweepPlot</name>
    <message>
        <source>Picture of the sweep</source>
        <translation>Bild des Durchlaufs</translation>
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
        <source>good</source>
        <translation>gut</translation>
    </message>
</context>
<context>
    <name>pumpwright::TextField</name>
    <message>
        <source>several values</source>
        <translation>mehrere Werte</translation>
    </message>
    <message>
        <source>%1 Still %2.</source>
        <translation>%1 Es bleibt %2.</translation>
    </message>
</context>
<context>
    <name>pumpwright::Toast</name>
    <message>
        <source>Notice</source>
        <translation>Hinweis</translation>
    </message>
</context>
<context>
    <name>pumpwright::TrialsModel</name>
    <message>
        <source>Rename a trial</source>
        <translation>Versuch umbenennen</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Trial</source>
        <translation>Versuch</translation>
    </message>
</context>
<context>
    <name>pumpwright::TrialsPage</name>
    <message>
        <source>Make a trial of…</source>
        <translation>Versuch machen aus…</translation>
    </message>
    <message>
        <source>Take into the circuit</source>
        <translation>In die Schaltung übernehmen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Drives the circuit as it is drawn, and with each trial, over the same plan.</source>
        <translation>Fährt die Schaltung wie gezeichnet und mit jedem Versuch über denselben Plan.</translation>
    </message>
    <message>
        <source>Trials of the circuit</source>
        <translation>Versuche der Schaltung</translation>
    </message>
    <message>
        <source>Take the last steps back and keep them as a trial</source>
        <translation>Die letzten Schritte zurücknehmen und als Versuch behalten</translation>
    </message>
    <message>
        <source>Make the chosen trial&apos;s changes in the circuit, as one step</source>
        <translation>Die Änderungen des gewählten Versuchs als einen Schritt in der Schaltung machen</translation>
    </message>
    <message>
        <source>Remove the chosen trial</source>
        <translation>Gewählten Versuch entfernen</translation>
    </message>
    <message>
        <source>To try an idea, change the circuit, then make a trial of the change.</source>
        <translation>Um eine Idee zu prüfen: Schaltung ändern, dann aus der Änderung einen Versuch machen.</translation>
    </message>
    <message>
        <source>the last step: %1</source>
        <translation>dem letzten Schritt: %1</translation>
    </message>
    <message>
        <source>the last %1 steps, from: %2</source>
        <translation>den letzten %1 Schritten, ab: %2</translation>
    </message>
    <message>
        <source>Remove a trial</source>
        <translation>Versuch entfernen</translation>
    </message>
    <message>
        <source>Lay over the chart</source>
        <translation>Über das Diagramm legen</translation>
    </message>
    <message>
        <source>Show vacuum and pump current of each trial in the Drive chart</source>
        <translation>Unterdruck und Pumpenstrom jedes Versuchs im Fahrtdiagramm zeigen</translation>
    </message>
    <message>
        <source>%1 of trial %2</source>
        <translation>%1 in Versuch %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::TwiceOpenBar</name>
    <message>
        <source>File open twice</source>
        <translation>Datei zweimal offen</translation>
    </message>
    <message>
        <source>I know</source>
        <translation>Ich weiß</translation>
    </message>
    <message>
        <source>I know that the file is open twice</source>
        <translation>Ich weiß, dass die Datei zweimal offen ist</translation>
    </message>
    <message>
        <source>%1 is open in another window too. The one that saves last overwrites the other; save this one under another name.</source>
        <translation>%1 ist auch in einem anderen Fenster offen. Wer zuletzt speichert, überschreibt das andere; dieses unter anderem Namen speichern.</translation>
    </message>
</context>
<context>
    <name>pumpwright::VacuumGauge</name>
    <message>
        <source>Vacuum gauge</source>
        <translation>Unterdruckmesser</translation>
    </message>
</context>
<context>
    <name>pumpwright::ValueChoice</name>
    <message>
        <source>%1, typed</source>
        <translation>%1, getippt</translation>
    </message>
</context>
</TS>

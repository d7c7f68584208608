<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Snapshots</name>
    <message>
        <source>This unsaved work was opened before and the program did not live. It is set aside, and will not be offered again.</source>
        <translation>Este trabajo sin guardar ya se abrió una vez y el programa no lo soportó. Queda apartado y no se ofrecerá de nuevo.</translation>
    </message>
</context>
<context>
    <name>pumpwright</name>
    <message>
        <source>%1 closes</source>
        <translation>%1 cierra</translation>
    </message>
    <message>
        <source>%1 opens</source>
        <translation>%1 abre</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vacío</translation>
    </message>
    <message>
        <source>Assist</source>
        <translation>Asistencia</translation>
    </message>
    <message>
        <source>%1 asked</source>
        <translation>%1 pedida</translation>
    </message>
    <message>
        <source>%1 delivered</source>
        <translation>%1 prestada</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>%1 at 30</source>
        <translation>%1 en 30</translation>
    </message>
    <message>
        <source>%1 at +</source>
        <translation>%1 en +</translation>
    </message>
    <message>
        <source>Current of the selection</source>
        <translation>Corriente de lo seleccionado</translation>
    </message>
    <message>
        <source>%1: coil</source>
        <translation>%1: bobina</translation>
    </message>
    <message>
        <source>%1: contact</source>
        <translation>%1: contacto</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Contactos</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>on</source>
        <translation>encendido</translation>
    </message>
    <message>
        <source>off</source>
        <translation>apagado</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Price per metre (%1)</source>
        <translation>Precio por metro (%1)</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Aislamiento</translation>
    </message>
    <message>
        <source>Loaded wires in its bundle</source>
        <translation>Cables cargados en su mazo</translation>
    </message>
    <message>
        <source>In a sheath all the way</source>
        <translation>Con funda en todo el recorrido</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Inner diameter</source>
        <translation>Diámetro interior</translation>
    </message>
    <message>
        <source>Set the limit “%1” to %2</source>
        <translation>Fijar el límite «%1» en %2</translation>
    </message>
    <message>
        <source>Loaded wires in a bundle, at least</source>
        <translation>Cables cargados en un mazo, al menos</translation>
    </message>
    <message>
        <source>Presses with assist after the pump has died</source>
        <translation>Frenadas con asistencia tras fallar la bomba</translation>
    </message>
    <message>
        <source>Set %1 of %2</source>
        <translation>Fijar %1 de %2</translation>
    </message>
    <message>
        <source>%1 parts of different kinds</source>
        <translation>%1 piezas de distinto tipo</translation>
    </message>
    <message>
        <source>Select parts of one kind to edit them together.</source>
        <translation>Seleccione piezas de un mismo tipo para cambiarlas a la vez.</translation>
    </message>
    <message>
        <source>%1 parts: %2</source>
        <translation>%1 piezas: %2</translation>
    </message>
    <message>
        <source>%1 Wire</source>
        <translation>%1 Cable</translation>
    </message>
    <message>
        <source>%1 wires</source>
        <translation>%1 cables</translation>
    </message>
    <message>
        <source>A new value goes to all of them.</source>
        <translation>Un valor nuevo vale para todos.</translation>
    </message>
    <message>
        <source>%1 Hose</source>
        <translation>%1 Manguera</translation>
    </message>
    <message>
        <source>%1 hoses</source>
        <translation>%1 mangueras</translation>
    </message>
    <message>
        <source>Limits of this circuit</source>
        <translation>Límites de este circuito</translation>
    </message>
    <message>
        <source>Findings are told against these. Select a part, a wire or a hose to see and set its values.</source>
        <translation>Los hallazgos se miden con ellos. Seleccione una pieza, un cable o una manguera para ver y fijar sus valores.</translation>
    </message>
    <message>
        <source>Wires and hoses</source>
        <translation>Cables y mangueras</translation>
    </message>
    <message>
        <source>Select either wires or hoses to edit them together.</source>
        <translation>Seleccione solo cables o solo mangueras para cambiarlos a la vez.</translation>
    </message>
    <message>
        <source>Another part is also called %1. Give one of them another number.</source>
        <translation>Otra pieza también se llama %1. Dé otro número a una de ellas.</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Referencia</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Place in the vehicle</source>
        <translation>Lugar en el vehículo</translation>
    </message>
    <message>
        <source>Protection (IEC 60529)</source>
        <translation>Protección (IEC 60529)</translation>
    </message>
    <message>
        <source>Stands surroundings up to</source>
        <translation>Soporta un entorno de hasta</translation>
    </message>
    <message>
        <source>Price (%1)</source>
        <translation>Precio (%1)</translation>
    </message>
    <message>
        <source>Where the values come from</source>
        <translation>De dónde salen los valores</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Rótulo</translation>
    </message>
    <message>
        <source>Switch</source>
        <translation>Interruptor</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Brake presses</source>
        <translation>Frenadas</translation>
    </message>
    <message>
        <source>press</source>
        <translation>frenada</translation>
    </message>
    <message>
        <source>Nobody brakes. Add a press to see whether assist is there.</source>
        <translation>Nadie frena. Añada una frenada para ver si hay asistencia.</translation>
    </message>
    <message>
        <source>At</source>
        <translation>En</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Mantener</translation>
    </message>
    <message>
        <source>Force</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Subida</translation>
    </message>
    <message>
        <source>Switch moves</source>
        <translation>Maniobras</translation>
    </message>
    <message>
        <source>switch move</source>
        <translation>maniobra</translation>
    </message>
    <message>
        <source>Every hand switch stays as it is at the start.</source>
        <translation>Cada interruptor queda como está al principio.</translation>
    </message>
    <message>
        <source>There is no hand switch in the circuit. Place one first.</source>
        <translation>No hay interruptor manual en el circuito. Coloque uno primero.</translation>
    </message>
    <message>
        <source>Charging</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>charging span</source>
        <translation>tramo de carga</translation>
    </message>
    <message>
        <source>Neither engine nor converter feeds the 12 V system.</source>
        <translation>Ni motor ni convertidor alimentan la red de 12 V.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>altitude point</source>
        <translation>punto de altitud</translation>
    </message>
    <message>
        <source>The whole drive is at sea level.</source>
        <translation>Toda la marcha es al nivel del mar.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>%1 is out of range. Allowed: %2.</source>
        <translation>%1 está fuera de rango. Se admite: %2.</translation>
    </message>
    <message>
        <source>Columns of %1</source>
        <translation>Columnas de %1</translation>
    </message>
    <message>
        <source>Rows of %1</source>
        <translation>Filas de %1</translation>
    </message>
    <message>
        <source>Select all of %1</source>
        <translation>Seleccionar todo de %1</translation>
    </message>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrón</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>green and yellow</source>
        <translation>verde y amarillo</translation>
    </message>
    <message>
        <source>“%1” is no colour. Use the letters of IEC 60757, one or two colours: RD, RDBU.</source>
        <translation>«%1» no es un color. Use las letras de IEC 60757, uno o dos colores: RD, RDBU.</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message numerus="yes">
        <source>%n objects</source>
        <translation>
            <numerusform>%n objeto</numerusform>
            <numerusform>%n objetos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 medido</translation>
    </message>
</context>
<context>
    <name>pumpwright::AccessibleObject</name>
    <message>
        <source>Select</source>
        <translation>Seleccionar</translation>
    </message>
    <message>
        <source>Open the Nameplate</source>
        <translation>Abrir la placa de datos</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Eliminar</translation>
    </message>
    <message>
        <source>Selects what the finding is about and brings it into view</source>
        <translation>Selecciona aquello de lo que trata el hallazgo y lo pone a la vista</translation>
    </message>
    <message>
        <source>Selects it and brings it into view</source>
        <translation>Lo selecciona y lo pone a la vista</translation>
    </message>
    <message>
        <source>Shows its values, to be changed</source>
        <translation>Muestra sus valores para cambiarlos</translation>
    </message>
    <message>
        <source>Takes it out of the circuit; undo brings it back</source>
        <translation>Lo quita del circuito; deshacer lo devuelve</translation>
    </message>
</context>
<context>
    <name>pumpwright::ArrangeActions</name>
    <message>
        <source>&amp;Left edges</source>
        <translation>Bordes &amp;izquierdos</translation>
    </message>
    <message>
        <source>Move the parts to the leftmost edge</source>
        <translation>Lleva las piezas al borde de más a la izquierda</translation>
    </message>
    <message>
        <source>&amp;One below the other</source>
        <translation>&amp;Una debajo de otra</translation>
    </message>
    <message>
        <source>Bring the middles of the parts below each other</source>
        <translation>Pone los centros de las piezas uno debajo de otro</translation>
    </message>
    <message>
        <source>&amp;Right edges</source>
        <translation>Bordes &amp;derechos</translation>
    </message>
    <message>
        <source>Move the parts to the rightmost edge</source>
        <translation>Lleva las piezas al borde de más a la derecha</translation>
    </message>
    <message>
        <source>&amp;Top edges</source>
        <translation>Bordes &amp;superiores</translation>
    </message>
    <message>
        <source>Move the parts to the topmost edge</source>
        <translation>Lleva las piezas al borde más alto</translation>
    </message>
    <message>
        <source>&amp;Side by side</source>
        <translation>Una a&amp;l lado de otra</translation>
    </message>
    <message>
        <source>Bring the middles of the parts to one height</source>
        <translation>Pone los centros de las piezas a la misma altura</translation>
    </message>
    <message>
        <source>&amp;Bottom edges</source>
        <translation>Bordes i&amp;nferiores</translation>
    </message>
    <message>
        <source>Move the parts to the lowest edge</source>
        <translation>Lleva las piezas al borde más bajo</translation>
    </message>
    <message>
        <source>Equal gaps &amp;across</source>
        <translation>Separación igual a lo &amp;ancho</translation>
    </message>
    <message>
        <source>Leave the same gap from part to part, left to right</source>
        <translation>Deja la misma separación de pieza a pieza, de izquierda a derecha</translation>
    </message>
    <message>
        <source>Equal gaps &amp;down</source>
        <translation>Separación igual a lo al&amp;to</translation>
    </message>
    <message>
        <source>Leave the same gap from part to part, top to bottom</source>
        <translation>Deja la misma separación de pieza a pieza, de arriba abajo</translation>
    </message>
</context>
<context>
    <name>pumpwright::Arranging</name>
    <message>
        <source>Align %1 left</source>
        <translation>Alinear %1 a la izquierda</translation>
    </message>
    <message>
        <source>Align %1 one below the other</source>
        <translation>Alinear %1 una debajo de otra</translation>
    </message>
    <message>
        <source>Align %1 right</source>
        <translation>Alinear %1 a la derecha</translation>
    </message>
    <message>
        <source>Align %1 at the top</source>
        <translation>Alinear %1 arriba</translation>
    </message>
    <message>
        <source>Align %1 side by side</source>
        <translation>Alinear %1 una al lado de otra</translation>
    </message>
    <message>
        <source>Align %1 at the bottom</source>
        <translation>Alinear %1 abajo</translation>
    </message>
    <message>
        <source>Equal gaps across: %1</source>
        <translation>Separación igual a lo ancho: %1</translation>
    </message>
    <message>
        <source>Equal gaps down: %1</source>
        <translation>Separación igual a lo alto: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::BandTool</name>
    <message>
        <source>Release to select what lies inside; with Shift it is added.</source>
        <translation>Suelte para seleccionar lo que queda dentro; con Mayús se añade.</translation>
    </message>
</context>
<context>
    <name>pumpwright::CanvasEdits</name>
    <message numerus="yes">
        <source>%n objects</source>
        <translation>
            <numerusform>%n objeto</numerusform>
            <numerusform>%n objetos</numerusform>
        </translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Mover %1</translation>
    </message>
    <message>
        <source>Rotate %1</source>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Mirror %1</source>
        <translation>Reflejar %1</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>Borrar %1</translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translation>Pegar %1</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>Colocar %1</translation>
    </message>
    <message>
        <source>Draw %1</source>
        <translation>Trazar %1</translation>
    </message>
    <message>
        <source>Lay %1</source>
        <translation>Tender %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::CautionsBar</name>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>Before you rely on anything here</source>
        <translation>Antes de confiar en nada de esto</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
</context>
<context>
    <name>pumpwright::CircuitView</name>
    <message>
        <source>Circuit</source>
        <translation>Circuito</translation>
    </message>
    <message>
        <source>The drawing of the circuit. Ctrl with the arrow keys goes from part to part.</source>
        <translation>El dibujo del circuito. Ctrl con las flechas va de pieza en pieza.</translation>
    </message>
    <message>
        <source>There are no parts on the clipboard. Copy some first.</source>
        <translation>No hay piezas en el portapapeles. Copie algunas primero.</translation>
    </message>
    <message>
        <source>Rotate</source>
        <translation>Girar</translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation>Reflejar</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Cortar</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Draw a wire</source>
        <translation>Trazar un cable</translation>
    </message>
    <message>
        <source>Draw a hose</source>
        <translation>Trazar una manguera</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pegar</translation>
    </message>
    <message>
        <source>Select all</source>
        <translation>Seleccionar todo</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Mostrar todo</translation>
    </message>
    <message>
        <source>Route again</source>
        <translation>Trazar de nuevo</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Nameplate</source>
        <translation>Placa de datos</translation>
    </message>
    <message>
        <source>Arrange</source>
        <translation>Ordenar</translation>
    </message>
    <message>
        <source>Select one part or wire that has a label.</source>
        <translation>Seleccione una pieza o un cable que tenga rótulo.</translation>
    </message>
    <message>
        <source>Move label</source>
        <translation>Mover el rótulo</translation>
    </message>
    <message>
        <source>Place label automatically</source>
        <translation>Colocar el rótulo automáticamente</translation>
    </message>
</context>
<context>
    <name>pumpwright::CompareActions</name>
    <message>
        <source>Co&amp;mpare with a file…</source>
        <translation>Co&amp;mparar con un archivo…</translation>
    </message>
    <message>
        <source>See what has changed since another file, and what that does to the findings</source>
        <translation>Ver qué ha cambiado respecto a otro archivo y qué supone para los hallazgos</translation>
    </message>
    <message>
        <source>Compare with</source>
        <translation>Comparar con</translation>
    </message>
    <message>
        <source>Circuits (*.pumpwright)</source>
        <translation>Circuitos (*.pumpwright)</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be compared with.</source>
        <translation>No se puede comparar con «%1».</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Sin título</translation>
    </message>
    <message>
        <source>Simulating “%1” to compare…</source>
        <translation>Simulando «%1» para comparar…</translation>
    </message>
</context>
<context>
    <name>pumpwright::ComparisonWindow</name>
    <message>
        <source>What differs</source>
        <translation>Qué difiere</translation>
    </message>
    <message>
        <source>Before: %1
After: %2</source>
        <translation>Antes: %1
Después: %2</translation>
    </message>
    <message>
        <source>What was added, removed and changed</source>
        <translation>Qué se añadió, quitó y cambió</translation>
    </message>
    <message>
        <source>The circuits say the same.</source>
        <translation>Los circuitos dicen lo mismo.</translation>
    </message>
    <message>
        <source>What that does to the findings</source>
        <translation>Qué supone para los hallazgos</translation>
    </message>
    <message>
        <source>The findings are the same.</source>
        <translation>Los hallazgos son los mismos.</translation>
    </message>
    <message>
        <source>Parts that only stand elsewhere on the drawing: %1</source>
        <translation>Piezas que solo están en otro lugar del dibujo: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::ConnectTool</name>
    <message>
        <source>tee in the hose</source>
        <translation>te en la manguera</translation>
    </message>
    <message>
        <source>splice in the wire</source>
        <translation>empalme en el cable</translation>
    </message>
    <message>
        <source>From %1: click the port or hose where the hose ends, or a place for a corner. Esc starts again.</source>
        <translation>Desde %1: pulse la toma o manguera donde termina, o un lugar para una esquina. Esc empieza de nuevo.</translation>
    </message>
    <message>
        <source>From %1: click the terminal or wire where the wire ends, or a place for a corner. Esc starts again.</source>
        <translation>Desde %1: pulse el borne o cable donde termina, o un lugar para una esquina. Esc empieza de nuevo.</translation>
    </message>
    <message>
        <source>Nothing here is called %1. Backspace takes a letter back.</source>
        <translation>Aquí nada se llama %1. Retroceso borra una letra.</translation>
    </message>
    <message>
        <source>Enter ends it at %1. Type reference and number for another, as in K1 86.</source>
        <translation>Intro lo termina en %1. Para otro extremo, escriba referencia y número, como K1 86.</translation>
    </message>
    <message>
        <source>Enter begins at %1. Type reference and number for another, as in K1 86.</source>
        <translation>Intro empieza en %1. Para otro comienzo, escriba referencia y número, como K1 86.</translation>
    </message>
    <message>
        <source>Click the port where the hose begins, or type it. Esc ends.</source>
        <translation>Pulse la toma donde empieza la manguera o escríbala. Esc termina.</translation>
    </message>
    <message>
        <source>Click the terminal where the wire begins, or type it. Esc ends.</source>
        <translation>Pulse el borne donde empieza el cable o escríbalo. Esc termina.</translation>
    </message>
</context>
<context>
    <name>pumpwright::Document</name>
    <message>
        <source>Make a trial: %1</source>
        <translation>Hacer un ensayo: %1</translation>
    </message>
    <message>
        <source>Take the trial: %1</source>
        <translation>Tomar el ensayo: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::DriveActions</name>
    <message>
        <source>&amp;Play the drive</source>
        <translation>&amp;Reproducir la marcha</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Run the cursor over the drive, on the canvas too</source>
        <translation>Pasar el cursor por la marcha, también en el dibujo</translation>
    </message>
    <message>
        <source>Event &amp;before</source>
        <translation>Suceso &amp;anterior</translation>
    </message>
    <message>
        <source>◂ Event</source>
        <translation>◂ Suceso</translation>
    </message>
    <message>
        <source>Cursor to the event before</source>
        <translation>Cursor al suceso anterior</translation>
    </message>
    <message>
        <source>&amp;Next event</source>
        <translation>Suceso &amp;siguiente</translation>
    </message>
    <message>
        <source>Event ▸</source>
        <translation>Suceso ▸</translation>
    </message>
    <message>
        <source>Cursor to the next event</source>
        <translation>Cursor al suceso siguiente</translation>
    </message>
    <message>
        <source>&amp;Slow at events</source>
        <translation>&amp;Lento en los sucesos</translation>
    </message>
    <message>
        <source>Slow at events</source>
        <translation>Lento en los sucesos</translation>
    </message>
    <message>
        <source>Play slowly past events, so that an armature can be seen to travel</source>
        <translation>Pasar despacio por los sucesos, para ver moverse una armadura</translation>
    </message>
    <message>
        <source>Set the &amp;mark at the cursor</source>
        <translation>Poner la &amp;marca en el cursor</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Set a mark at the cursor, to read differences from</source>
        <translation>Poner una marca en el cursor, para leer diferencias</translation>
    </message>
    <message>
        <source>&amp;Remove the mark</source>
        <translation>&amp;Quitar la marca</translation>
    </message>
    <message>
        <source>No mark</source>
        <translation>Sin marca</translation>
    </message>
    <message>
        <source>Remove the mark</source>
        <translation>Quitar la marca</translation>
    </message>
    <message>
        <source>Speed of playing</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>How fast the drive is played</source>
        <translation>A qué velocidad se reproduce la marcha</translation>
    </message>
    <message>
        <source>a hundredth</source>
        <translation>una centésima</translation>
    </message>
    <message>
        <source>a tenth</source>
        <translation>una décima</translation>
    </message>
    <message>
        <source>real time</source>
        <translation>tiempo real</translation>
    </message>
    <message>
        <source>10 times</source>
        <translation>10 veces</translation>
    </message>
    <message>
        <source>60 times</source>
        <translation>60 veces</translation>
    </message>
    <message>
        <source>&amp;Pause</source>
        <translation>&amp;Pausa</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
</context>
<context>
    <name>pumpwright::DriveChart</name>
    <message>
        <source>Vacuum</source>
        <translation>Vacío</translation>
    </message>
    <message>
        <source>Assist</source>
        <translation>Asistencia</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Current of the selection</source>
        <translation>Corriente de lo seleccionado</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Contactos</translation>
    </message>
    <message>
        <source>Values and events</source>
        <translation>Valores y sucesos</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Valores</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Sucesos</translation>
    </message>
    <message>
        <source>Lines and values</source>
        <translation>Líneas y valores</translation>
    </message>
    <message>
        <source>Values at the cursor</source>
        <translation>Valores en el cursor</translation>
    </message>
    <message>
        <source>Events of the drive</source>
        <translation>Sucesos de la marcha</translation>
    </message>
    <message>
        <source>Drive chart tools</source>
        <translation>Herramientas del gráfico de marcha</translation>
    </message>
    <message>
        <source>Whole drive</source>
        <translation>Toda la marcha</translation>
    </message>
    <message>
        <source>Show the whole drive (0)</source>
        <translation>Mostrar toda la marcha (0)</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Más cerca</translation>
    </message>
    <message>
        <source>Show less time (+)</source>
        <translation>Mostrar menos tiempo (+)</translation>
    </message>
    <message>
        <source>Wider</source>
        <translation>Más lejos</translation>
    </message>
    <message>
        <source>Show more time (−)</source>
        <translation>Mostrar más tiempo (−)</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Franjas</translation>
    </message>
    <message>
        <source>Choose the lanes that are shown</source>
        <translation>Elegir las franjas que se muestran</translation>
    </message>
    <message>
        <source>Cursor at %1</source>
        <translation>Cursor en %1</translation>
    </message>
    <message>
        <source>%1, %2 from the mark</source>
        <translation>%1, a %2 de la marca</translation>
    </message>
    <message>
        <source>The simulation stopped early. %1</source>
        <translation>La simulación se detuvo antes de tiempo. %1</translation>
    </message>
    <message>
        <source>Simulating the drive…</source>
        <translation>Simulando la marcha…</translation>
    </message>
    <message>
        <source>The drive shows here once the circuit holds a supply, a pump and a booster.</source>
        <translation>La marcha aparece aquí cuando el circuito tiene alimentación, bomba y servofreno.</translation>
    </message>
</context>
<context>
    <name>pumpwright::DrivePlanEditor</name>
    <message>
        <source>Drive plan</source>
        <translation>Plan de marcha</translation>
    </message>
    <message>
        <source>Length of the drive</source>
        <translation>Duración de la marcha</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Temperatura del aire</translation>
    </message>
    <message>
        <source>Vacuum at the start</source>
        <translation>Vacío al principio</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>Fijar %1</translation>
    </message>
    <message>
        <source>Starts steady</source>
        <translation>Empieza en régimen</translation>
    </message>
    <message>
        <source>As after ten minutes of the first instant: booster evacuated, wires warm. Else the vehicle has stood, with the vacuum above.</source>
        <translation>Como tras diez minutos del primer instante: servofreno evacuado, cables calientes. Si no, el vehículo estaba parado, con el vacío de arriba.</translation>
    </message>
    <message>
        <source>Start the drive steady</source>
        <translation>Empezar la marcha en régimen</translation>
    </message>
    <message>
        <source>Start the drive at rest</source>
        <translation>Empezar la marcha en reposo</translation>
    </message>
</context>
<context>
    <name>pumpwright::EditActions</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Cor&amp;tar</translation>
    </message>
    <message>
        <source>Cut the selection</source>
        <translation>Cortar lo seleccionado</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>Copy the selection</source>
        <translation>Copiar lo seleccionado</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>Paste at the pointer</source>
        <translation>Pegar en el puntero</translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation>D&amp;uplicar</translation>
    </message>
    <message>
        <source>Duplicate the selection</source>
        <translation>Duplicar lo seleccionado</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>Seleccionar &amp;todo</translation>
    </message>
    <message>
        <source>Select everything</source>
        <translation>Seleccionarlo todo</translation>
    </message>
    <message>
        <source>&amp;Rotate</source>
        <translation>&amp;Girar</translation>
    </message>
    <message>
        <source>Turn the selection by a quarter, clockwise</source>
        <translation>Girar lo seleccionado un cuarto de vuelta a la derecha</translation>
    </message>
    <message>
        <source>&amp;Mirror</source>
        <translation>&amp;Reflejar</translation>
    </message>
    <message>
        <source>Mirror the selection left to right</source>
        <translation>Reflejar lo seleccionado de izquierda a derecha</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Borrar</translation>
    </message>
    <message>
        <source>Delete the selection</source>
        <translation>Borrar lo seleccionado</translation>
    </message>
    <message>
        <source>&amp;Select</source>
        <translation>&amp;Seleccionar</translation>
    </message>
    <message>
        <source>Select and move (Esc)</source>
        <translation>Seleccionar y mover (Esc)</translation>
    </message>
    <message>
        <source>&amp;Wire</source>
        <translation>&amp;Cable</translation>
    </message>
    <message>
        <source>Draw a wire from terminal to terminal</source>
        <translation>Trazar un cable de borne a borne</translation>
    </message>
    <message>
        <source>&amp;Hose</source>
        <translation>&amp;Manguera</translation>
    </message>
    <message>
        <source>Draw a hose from port to port</source>
        <translation>Trazar una manguera de toma a toma</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>A&amp;cercar</translation>
    </message>
    <message>
        <source>Show the circuit larger</source>
        <translation>Ver el circuito más grande</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>A&amp;lejar</translation>
    </message>
    <message>
        <source>Show the circuit smaller</source>
        <translation>Ver el circuito más pequeño</translation>
    </message>
    <message>
        <source>Actual &amp;size</source>
        <translation>&amp;Tamaño real</translation>
    </message>
    <message>
        <source>Show the circuit at 100 %</source>
        <translation>Ver el circuito al 100 %</translation>
    </message>
    <message>
        <source>&amp;Fit</source>
        <translation>&amp;Ajustar</translation>
    </message>
    <message>
        <source>Show the whole circuit</source>
        <translation>Ver todo el circuito</translation>
    </message>
    <message>
        <source>Arra&amp;nge</source>
        <translation>Orde&amp;nar</translation>
    </message>
    <message>
        <source>Move la&amp;bel</source>
        <translation>Mover el rótu&amp;lo</translation>
    </message>
    <message>
        <source>Move the texts beside the selected part or wire</source>
        <translation>Mover los textos junto a la pieza o el cable seleccionado</translation>
    </message>
    <message>
        <source>Place label aut&amp;omatically</source>
        <translation>Colocar el rótulo aut&amp;omáticamente</translation>
    </message>
    <message>
        <source>Leave it to the program where the texts stand</source>
        <translation>Dejar que el programa decida dónde van los textos</translation>
    </message>
</context>
<context>
    <name>pumpwright::EmptyState</name>
    <message>
        <source>Open a sample, drag a part here, or open a file.</source>
        <translation>Abra un ejemplo, arrastre aquí una pieza o abra un archivo.</translation>
    </message>
    <message>
        <source>Open a sample</source>
        <translation>Abrir un ejemplo</translation>
    </message>
    <message>
        <source>Open a file…</source>
        <translation>Abrir un archivo…</translation>
    </message>
</context>
<context>
    <name>pumpwright::ErrorBar</name>
    <message>
        <source>What went wrong</source>
        <translation>Qué ha fallado</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Put this message away</source>
        <translation>Quitar este mensaje</translation>
    </message>
    <message>
        <source>Message code: %1</source>
        <translation>Código del mensaje: %1</translation>
    </message>
    <message>
        <source>Place: %1. Message code: %2</source>
        <translation>Lugar: %1. Código del mensaje: %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::EventModel</name>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Qué ocurre</translation>
    </message>
</context>
<context>
    <name>pumpwright::ExportActions</name>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>&amp;Schematic…</source>
        <translation>&amp;Esquema…</translation>
    </message>
    <message>
        <source>Write the schematic</source>
        <translation>Escribir el esquema</translation>
    </message>
    <message>
        <source>Drawings (*.svg *.png *.pdf)</source>
        <translation>Dibujos (*.svg *.png *.pdf)</translation>
    </message>
    <message>
        <source>Drive &amp;chart…</source>
        <translation>&amp;Gráfico de marcha…</translation>
    </message>
    <message>
        <source>Write the drive chart</source>
        <translation>Escribir el gráfico de marcha</translation>
    </message>
    <message>
        <source>Pictures and tables (*.png *.svg *.csv)</source>
        <translation>Imágenes y tablas (*.png *.svg *.csv)</translation>
    </message>
    <message>
        <source>W&amp;ires as table…</source>
        <translation>&amp;Cables como tabla…</translation>
    </message>
    <message>
        <source>Write the wires</source>
        <translation>Escribir los cables</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>La tabla</translation>
    </message>
    <message>
        <source>&amp;Parts list as table…</source>
        <translation>&amp;Lista de piezas como tabla…</translation>
    </message>
    <message>
        <source>Write the parts list</source>
        <translation>Escribir la lista de piezas</translation>
    </message>
    <message>
        <source>&amp;Nets as table…</source>
        <translation>&amp;Redes como tabla…</translation>
    </message>
    <message>
        <source>Write which terminals are joined</source>
        <translation>Escribir qué bornes están unidos</translation>
    </message>
    <message>
        <source>&amp;Findings…</source>
        <translation>&amp;Hallazgos…</translation>
    </message>
    <message>
        <source>Write the findings</source>
        <translation>Escribir los hallazgos</translation>
    </message>
    <message>
        <source>Text and data (*.md *.json)</source>
        <translation>Texto y datos (*.md *.json)</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Sin título</translation>
    </message>
    <message>
        <source>“%1” is written.</source>
        <translation>«%1» está escrito.</translation>
    </message>
    <message>
        <source>“%1” is not written.</source>
        <translation>«%1» no se ha escrito.</translation>
    </message>
    <message>
        <source>The circuit was not simulated yet. Try again in a moment.</source>
        <translation>El circuito aún no se ha simulado. Inténtelo en un momento.</translation>
    </message>
    <message>
        <source>The findings can&apos;t be written in this form. End the file name in .md or .json.</source>
        <translation>Los hallazgos no se pueden escribir en esta forma. Termine el nombre en .md o .json.</translation>
    </message>
    <message>
        <source>The list of findings</source>
        <translation>La lista de hallazgos</translation>
    </message>
</context>
<context>
    <name>pumpwright::FileActions</name>
    <message>
        <source>Circuits (*.pumpwright)</source>
        <translation>Circuitos (*.pumpwright)</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nuevo</translation>
    </message>
    <message>
        <source>Start an empty circuit</source>
        <translation>Empezar un circuito vacío</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open a circuit file</source>
        <translation>Abrir un archivo de circuito</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Save the circuit</source>
        <translation>Guardar el circuito</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Guardar &amp;como…</translation>
    </message>
    <message>
        <source>Save the circuit under another name</source>
        <translation>Guardar el circuito con otro nombre</translation>
    </message>
    <message>
        <source>Open a circuit</source>
        <translation>Abrir un circuito</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be opened. The open circuit is unchanged.</source>
        <translation>«%1» no se puede abrir. El circuito abierto no ha cambiado.</translation>
    </message>
    <message>
        <source>“%1” is not saved. Your changes are still here.</source>
        <translation>«%1» no se ha guardado. Sus cambios siguen aquí.</translation>
    </message>
    <message>
        <source>“%1” is saved.</source>
        <translation>«%1» está guardado.</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Sin título</translation>
    </message>
    <message>
        <source>&amp;Keep this circuit as a template…</source>
        <translation>&amp;Conservar este circuito como plantilla…</translation>
    </message>
    <message>
        <source>Keep as a template</source>
        <translation>Conservar como plantilla</translation>
    </message>
    <message>
        <source>The template “%1” is not written.</source>
        <translation>La plantilla «%1» no se ha escrito.</translation>
    </message>
    <message>
        <source>The template “%1” is kept.</source>
        <translation>La plantilla «%1» está guardada.</translation>
    </message>
    <message>
        <source>No file yet</source>
        <translation>Ningún archivo todavía</translation>
    </message>
    <message>
        <source>Forget this list</source>
        <translation>Olvidar esta lista</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindField</name>
    <message>
        <source>Find in the circuit</source>
        <translation>Buscar en el circuito</translation>
    </message>
    <message>
        <source>Reference, label, kind or value; Return goes to the next match</source>
        <translation>Referencia, rótulo, tipo o valor; Intro va a la siguiente coincidencia</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>nada encontrado</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindingDelegate</name>
    <message>
        <source>%1, waived</source>
        <translation>%1, aceptado</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindingDetails</name>
    <message>
        <source>Read about this rule</source>
        <translation>Leer sobre esta regla</translation>
    </message>
    <message>
        <source>What it looks at, its limit and where that comes from, with examples</source>
        <translation>Qué examina, su límite y de dónde sale, con ejemplos</translation>
    </message>
    <message>
        <source>Waive…</source>
        <translation>Aceptar…</translation>
    </message>
    <message>
        <source>Accept this finding, with a reason that is printed on the wiring sheet</source>
        <translation>Aceptar este hallazgo, con un motivo que se imprime en la hoja de cableado</translation>
    </message>
    <message>
        <source>Take the waiver back</source>
        <translation>Retirar la aceptación</translation>
    </message>
    <message>
        <source>Reason of the waiver</source>
        <translation>Motivo de la aceptación</translation>
    </message>
    <message>
        <source>Initials of who waives</source>
        <translation>Iniciales de quien acepta</translation>
    </message>
    <message>
        <source>Waive</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniciales</translation>
    </message>
    <message>
        <source>Why it matters: %1</source>
        <translation>Por qué importa: %1</translation>
    </message>
    <message>
        <source>Source of the limit: %1</source>
        <translation>Fuente del límite: %1</translation>
    </message>
    <message>
        <source>Show at %1 in the drive</source>
        <translation>Mostrar en %1 de la marcha</translation>
    </message>
    <message>
        <source>Remedy</source>
        <translation>Remedio</translation>
    </message>
    <message>
        <source>Remedies</source>
        <translation>Remedios</translation>
    </message>
    <message>
        <source>Apply this remedy</source>
        <translation>Aplicar este remedio</translation>
    </message>
    <message>
        <source>Apply: %1</source>
        <translation>Aplicar: %1</translation>
    </message>
    <message>
        <source>Waived by %1: %2</source>
        <translation>Aceptado por %1: %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindingsModel</name>
    <message>
        <source>Found %1, limit %2</source>
        <translation>Hallado %1, límite %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::FindingsPanel</name>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Details of the finding</source>
        <translation>Detalles del hallazgo</translation>
    </message>
    <message>
        <source>Findings and details</source>
        <translation>Hallazgos y detalles</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>Comprobando…</translation>
    </message>
    <message>
        <source>No open findings.</source>
        <translation>Sin hallazgos abiertos.</translation>
    </message>
    <message>
        <source>1 finding: %1</source>
        <translation>1 hallazgo: %1</translation>
    </message>
    <message>
        <source>%1 findings: %2</source>
        <translation>%1 hallazgos: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Waive %1</source>
        <translation>Aceptar %1</translation>
    </message>
    <message>
        <source>Take back the waiver of %1</source>
        <translation>Retirar la aceptación de %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::FitPage</name>
    <message>
        <source>Open a log…</source>
        <translation>Abrir un registro…</translation>
    </message>
    <message>
        <source>Take the fitted values</source>
        <translation>Tomar los valores ajustados</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Sets the ticked values so that the drive comes as near as it can to the log.</source>
        <translation>Pone los valores marcados de modo que la marcha se acerque al registro lo más posible.</translation>
    </message>
    <message>
        <source>Tick the values to fit.</source>
        <translation>Marque los valores que se ajustan.</translation>
    </message>
    <message>
        <source>Set the values in the circuit, as one step</source>
        <translation>Pone los valores en el circuito, en un solo paso</translation>
    </message>
    <message>
        <source>Columns of the log</source>
        <translation>Columnas del registro</translation>
    </message>
    <message>
        <source>Measured vacuum, voltage or current over time, as CSV.</source>
        <translation>Vacío, tensión o corriente medidos en el tiempo, como CSV.</translation>
    </message>
    <message>
        <source>Time offset</source>
        <translation>Desfase de tiempo</translation>
    </message>
    <message>
        <source>Add to its times</source>
        <translation>Sumar a sus tiempos</translation>
    </message>
    <message>
        <source>Find a value</source>
        <translation>Buscar un valor</translation>
    </message>
    <message>
        <source>Find a value to fit</source>
        <translation>Buscar un valor que ajustar</translation>
    </message>
    <message>
        <source>Values to fit</source>
        <translation>Valores que se ajustan</translation>
    </message>
    <message>
        <source>Open a bench log</source>
        <translation>Abrir un registro de banco</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tablas (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>The log cannot be read.</source>
        <translation>El registro no se puede leer.</translation>
    </message>
    <message>
        <source>Open a log first.</source>
        <translation>Abra primero un registro.</translation>
    </message>
    <message>
        <source>The circuit has changed since: run it again.</source>
        <translation>El circuito ha cambiado desde entonces: vuelva a iniciarlo.</translation>
    </message>
</context>
<context>
    <name>pumpwright::HandPanel</name>
    <message>
        <source>Press the pedal</source>
        <translation>Pisar el pedal</translation>
    </message>
    <message>
        <source>Pedal force</source>
        <translation>Fuerza en el pedal</translation>
    </message>
    <message>
        <source>The engine runs and charges</source>
        <translation>El motor gira y carga</translation>
    </message>
    <message>
        <source>Keep as drive plan</source>
        <translation>Conservar como plan de marcha</translation>
    </message>
    <message>
        <source>Pressed until you click again; on the canvas hold the pedal, or B</source>
        <translation>Pisado hasta el siguiente clic; en el dibujo mantenga el pedal, o B</translation>
    </message>
    <message>
        <source>Make what you did the circuit&apos;s drive plan, to see it on the Drive chart</source>
        <translation>Hacer de lo hecho el plan de marcha, para verlo en el gráfico</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Mandos</translation>
    </message>
    <message>
        <source>By hand, for %1</source>
        <translation>A mano, desde hace %1</translation>
    </message>
    <message>
        <source>. This machine is too slow: the drive goes on at %1 % of real time.</source>
        <translation>. Este equipo es lento: la marcha avanza al %1 % del tiempo real.</translation>
    </message>
    <message>
        <source>The drive, at %1</source>
        <translation>La marcha, en %1</translation>
    </message>
    <message>
        <source>There is no booster and no reservoir to measure.</source>
        <translation>No hay servofreno ni depósito que medir.</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Terminar</translation>
    </message>
    <message>
        <source>Try by hand</source>
        <translation>Probar a mano</translation>
    </message>
    <message>
        <source>Back to drawing (Esc)</source>
        <translation>Volver a dibujar (Esc)</translation>
    </message>
    <message>
        <source>Run the circuit in real time and operate it (F9)</source>
        <translation>Hacer funcionar el circuito en tiempo real y manejarlo (F9)</translation>
    </message>
    <message>
        <source>Keep what was done by hand as drive plan</source>
        <translation>Conservar lo hecho a mano como plan de marcha</translation>
    </message>
    <message>
        <source>Release the pedal</source>
        <translation>Soltar el pedal</translation>
    </message>
</context>
<context>
    <name>pumpwright::HandTool</name>
    <message>
        <source>Click a switch to move it; hold the pedal, or B, to brake. Esc ends.</source>
        <translation>Pulse un interruptor para moverlo; mantenga el pedal, o B, para frenar. Esc termina.</translation>
    </message>
    <message>
        <source>Hold the button on %1 to brake, let go to release. Esc ends.</source>
        <translation>Mantenga el botón sobre %1 para frenar, suelte para soltar. Esc termina.</translation>
    </message>
    <message>
        <source>A click switches %1 off. Esc ends.</source>
        <translation>Un clic apaga %1. Esc termina.</translation>
    </message>
    <message>
        <source>A click switches %1 on. Esc ends.</source>
        <translation>Un clic enciende %1. Esc termina.</translation>
    </message>
</context>
<context>
    <name>pumpwright::HandbookWindow</name>
    <message>
        <source>Handbook</source>
        <translation>Manual</translation>
    </message>
    <message>
        <source>Contents of the handbook</source>
        <translation>Contenido del manual</translation>
    </message>
    <message>
        <source>Page of the handbook</source>
        <translation>Página del manual</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>Findings, one by one</source>
        <translation>Hallazgos, uno a uno</translation>
    </message>
</context>
<context>
    <name>pumpwright::LabelTool</name>
    <message>
        <source>Release to put the label here. Esc leaves it where it was.</source>
        <translation>Suelte para dejar el rótulo aquí. Esc lo deja donde estaba.</translation>
    </message>
    <message>
        <source>Move the label with the pointer or the arrow keys, Shift makes larger steps. A click or Return puts it here, Esc leaves it where it was.</source>
        <translation>Mueva el rótulo con el puntero o las flechas; con Mayús los pasos son mayores. Un clic o Intro lo deja aquí, Esc lo deja donde estaba.</translation>
    </message>
</context>
<context>
    <name>pumpwright::Labels</name>
    <message>
        <source>Move label of %1</source>
        <translation>Mover el rótulo de %1</translation>
    </message>
    <message>
        <source>Place label of %1 automatically</source>
        <translation>Colocar el rótulo de %1 automáticamente</translation>
    </message>
</context>
<context>
    <name>pumpwright::LanePlot</name>
    <message>
        <source>Lines of the drive</source>
        <translation>Líneas de la marcha</translation>
    </message>
    <message>
        <source>Drawing of the lines</source>
        <translation>Dibujo de las líneas</translation>
    </message>
    <message>
        <source>%1, right: %2</source>
        <translation>%1, derecha: %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::LayTool</name>
    <message>
        <source>Release to lay it here. It keeps these corners until it is routed again.</source>
        <translation>Suelte para tenderlo aquí. Conserva estas esquinas hasta trazarlo de nuevo.</translation>
    </message>
</context>
<context>
    <name>pumpwright::LineSurgery</name>
    <message>
        <source>Splice into %1</source>
        <translation>Empalmar en %1</translation>
    </message>
    <message>
        <source>Tee into %1</source>
        <translation>Te en %1</translation>
    </message>
    <message>
        <source>Insert %1 into %2</source>
        <translation>Insertar %1 en %2</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>Borrar %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::LiveState</name>
    <message>
        <source>chattering</source>
        <translation>vibra</translation>
    </message>
    <message>
        <source>switching</source>
        <translation>conmuta</translation>
    </message>
    <message>
        <source>blown</source>
        <translation>fundido</translation>
    </message>
</context>
<context>
    <name>pumpwright::LogColumnsModel</name>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>sin usar</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>%1 absolute</source>
        <translation>%1 absoluto</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Is</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>First value</source>
        <translation>Primer valor</translation>
    </message>
</context>
<context>
    <name>pumpwright::LostWorkBar</name>
    <message>
        <source>Unsaved work</source>
        <translation>Trabajo sin guardar</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Desecharlo</translation>
    </message>
    <message>
        <source>a circuit without a name</source>
        <translation>un circuito sin nombre</translation>
    </message>
    <message>
        <source>Pumpwright did not end well. Work on %1 of %2 was not saved, but is still here.</source>
        <translation>Pumpwright no terminó bien. El trabajo en %1 del %2 no se guardó, pero sigue aquí.</translation>
    </message>
    <message>
        <source>The unsaved work can&apos;t be opened.</source>
        <translation>El trabajo sin guardar no se puede abrir.</translation>
    </message>
</context>
<context>
    <name>pumpwright::MainWindow</name>
    <message>
        <source>Drawing of the circuit</source>
        <translation>Dibujo del circuito</translation>
    </message>
    <message>
        <source>Parts drawer</source>
        <translation>Cajón de piezas</translation>
    </message>
    <message>
        <source>Nameplate</source>
        <translation>Placa de datos</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Drive plan</source>
        <translation>Plan de marcha</translation>
    </message>
    <message>
        <source>Drive chart</source>
        <translation>Gráfico de marcha</translation>
    </message>
    <message>
        <source>Studies</source>
        <translation>Estudios</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>A mano</translation>
    </message>
    <message>
        <source>%1[*] – Pumpwright</source>
        <translation>%1[*] – Pumpwright</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>New from &amp;template</source>
        <translation>Nuevo desde &amp;plantilla</translation>
    </message>
    <message>
        <source>New &amp;window</source>
        <translation>Nueva &amp;ventana</translation>
    </message>
    <message>
        <source>Open sa&amp;mple</source>
        <translation>Abrir &amp;ejemplo</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>E&amp;xportar</translation>
    </message>
    <message>
        <source>&amp;Close the window</source>
        <translation>&amp;Cerrar la ventana</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Buscar…</translation>
    </message>
    <message>
        <source>Pre&amp;ferences…</source>
        <translation>Pre&amp;ferencias…</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Colocar</translation>
    </message>
    <message>
        <source>&amp;Part…</source>
        <translation>&amp;Pieza…</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Go to the &amp;Circuit</source>
        <translation>Ir al &amp;circuito</translation>
    </message>
    <message>
        <source>Go to: %1</source>
        <translation>Ir a: %1</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>&amp;Paneles</translation>
    </message>
    <message>
        <source>&amp;Drive</source>
        <translation>&amp;Marcha</translation>
    </message>
    <message>
        <source>Try by &amp;hand</source>
        <translation>Probar a &amp;mano</translation>
    </message>
    <message>
        <source>Run the circuit in real time and operate switches and pedal</source>
        <translation>Hacer funcionar el circuito en tiempo real y manejar interruptores y pedal</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>&amp;Manual</translation>
    </message>
    <message>
        <source>Help on &amp;this panel</source>
        <translation>Ayuda sobre es&amp;te panel</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>A&amp;dvertencias</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>Qué hacer ahora</translation>
    </message>
    <message>
        <source>State of the simulation</source>
        <translation>Estado de la simulación</translation>
    </message>
    <message>
        <source>Show the findings</source>
        <translation>Mostrar los hallazgos</translation>
    </message>
    <message>
        <source>Zoom</source>
        <translation>Ampliación</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Simulating…</source>
        <translation>Simulando…</translation>
    </message>
    <message>
        <source>The catalogue of parts can&apos;t be read.</source>
        <translation>El catálogo de piezas no se puede leer.</translation>
    </message>
</context>
<context>
    <name>pumpwright::MoveTool</name>
    <message>
        <source>Release to put it here. Ctrl, held, keeps it from going into line with others. Esc leaves everything where it was.</source>
        <translation>Suelte para dejarlo aquí. Con Ctrl pulsada no se alinea con otros. Esc lo deja todo donde estaba.</translation>
    </message>
</context>
<context>
    <name>pumpwright::Nameplate</name>
    <message>
        <source>Nameplate fields</source>
        <translation>Campos de la placa de datos</translation>
    </message>
</context>
<context>
    <name>pumpwright::PanelTitle</name>
    <message>
        <source>Help on: %1 (F1)</source>
        <translation>Ayuda sobre: %1 (F1)</translation>
    </message>
    <message>
        <source>Close: %1</source>
        <translation>Cerrar: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::PartsDrawer</name>
    <message>
        <source>Search parts</source>
        <translation>Buscar piezas</translation>
    </message>
    <message>
        <source>No part matches. Try another word, such as relay, fuse or hose.</source>
        <translation>Ninguna pieza coincide. Pruebe otra palabra, como relay, fuse o hose.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Columns of the parts</source>
        <translation>Columnas de las piezas</translation>
    </message>
    <message>
        <source>Enter takes the part to the drawing. Ctrl+Enter puts it where there is room and stays here.</source>
        <translation>Intro lleva la pieza al dibujo. Ctrl+Intro la pone donde hay sitio y se queda aquí.</translation>
    </message>
</context>
<context>
    <name>pumpwright::PartsModel</name>
    <message>
        <source>Supply</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>Protection</source>
        <translation>Protección</translation>
    </message>
    <message>
        <source>Control</source>
        <translation>Mando</translation>
    </message>
    <message>
        <source>Sensing</source>
        <translation>Detección</translation>
    </message>
    <message>
        <source>Suppression</source>
        <translation>Supresión</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Consumo</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vacío</translation>
    </message>
    <message>
        <source>Connection</source>
        <translation>Conexión</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
</context>
<context>
    <name>pumpwright::PlaceTool</name>
    <message>
        <source>Click to insert %1 into %2. R turns it, M mirrors it, Esc ends.</source>
        <translation>Pulse para insertar %1 en %2. R gira, M refleja, Esc termina.</translation>
    </message>
    <message>
        <source>Click to place %1. R turns it, M mirrors it; Ctrl, held, keeps it from going into line with others. Esc ends.</source>
        <translation>Pulse para colocar %1. R gira, M refleja; con Ctrl pulsada no se alinea con otros. Esc termina.</translation>
    </message>
</context>
<context>
    <name>pumpwright::PlanList</name>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Add a %1</source>
        <translation>Añadir %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the chosen %1</source>
        <translation>Quitar %1 elegida</translation>
    </message>
</context>
<context>
    <name>pumpwright::PlanMaker</name>
    <message>
        <source>Make</source>
        <translation>Hacer</translation>
    </message>
    <message>
        <source>From a speed trace…</source>
        <translation>De un registro de velocidad…</translation>
    </message>
    <message>
        <source>Sort of drive</source>
        <translation>Tipo de marcha</translation>
    </message>
    <message>
        <source>seed </source>
        <translation>semilla </translation>
    </message>
    <message>
        <source>Seed of the drive</source>
        <translation>Semilla de la marcha</translation>
    </message>
    <message>
        <source>Another seed makes another drive of this sort</source>
        <translation>Otra semilla hace otra marcha de este tipo</translation>
    </message>
    <message>
        <source>Make a drive</source>
        <translation>Hacer una marcha</translation>
    </message>
    <message>
        <source>Replaces the presses with those of such a drive</source>
        <translation>Sustituye las frenadas por las de una marcha así</translation>
    </message>
    <message>
        <source>Takes the presses from a table of time and speed (CSV)</source>
        <translation>Toma las frenadas de una tabla de tiempo y velocidad (CSV)</translation>
    </message>
    <message>
        <source>Open a speed trace</source>
        <translation>Abrir un registro de velocidad</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tablas (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>The plan cannot be made.</source>
        <translation>El plan no se puede hacer.</translation>
    </message>
    <message>
        <source>Make the drive plan: %1</source>
        <translation>Hacer el plan de marcha: %1</translation>
    </message>
</context>
<context>
    <name>pumpwright::PlanTableModel</name>
    <message>
        <source>Add a %1</source>
        <translation>Añadir %1</translation>
    </message>
    <message>
        <source>Remove %1 %2</source>
        <translation>Quitar %1 %2</translation>
    </message>
    <message>
        <source>missing switch</source>
        <translation>falta el interruptor</translation>
    </message>
    <message>
        <source>Allowed: %1</source>
        <translation>Se admite: %1</translation>
    </message>
    <message>
        <source>Set %1 of %2 %3</source>
        <translation>Fijar %1 de %2 %3</translation>
    </message>
</context>
<context>
    <name>pumpwright::PreferencesWindow</name>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>Units and paper</source>
        <translation>Unidades y papel</translation>
    </message>
    <message>
        <source>New circuits</source>
        <translation>Circuitos nuevos</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Ventana</translation>
    </message>
    <message>
        <source>Back to standard</source>
        <translation>Volver a lo habitual</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vacío</translation>
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
        <translation>Secciones de cable</translation>
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
        <translation>Papel</translation>
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
        <translation>Carta</translation>
    </message>
    <message>
        <source>A new circuit has its prices in this currency. Prices of the catalogue in another one are left out.</source>
        <translation>Un circuito nuevo tiene sus precios en esta moneda. Los del catálogo en otra se omiten.</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Three letters, as EUR</source>
        <translation>Tres letras, como EUR</translation>
    </message>
    <message>
        <source>A wire as it is drawn:</source>
        <translation>Un cable al trazarlo:</translation>
    </message>
    <message>
        <source>Limits of a circuit that is begun new, unless it says otherwise:</source>
        <translation>Límites de un circuito que se empieza, si no dice otra cosa:</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Aislamiento</translation>
    </message>
    <message>
        <source>Loaded wires in a bundle, at least</source>
        <translation>Cables cargados en un mazo, al menos</translation>
    </message>
    <message>
        <source>Presses with assist after the pump has died</source>
        <translation>Frenadas con asistencia tras fallar la bomba</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Como el escritorio</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>A mouse wheel</source>
        <translation>La rueda del ratón</translation>
    </message>
    <message>
        <source>Zooms; with Ctrl too</source>
        <translation>Amplía; con Ctrl también</translation>
    </message>
    <message>
        <source>Scrolls; with Ctrl it zooms</source>
        <translation>Desplaza; con Ctrl amplía</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>The drive is played smoothly</source>
        <translation>La marcha se reproduce con fluidez</translation>
    </message>
    <message>
        <source>Less: playing goes from event to event</source>
        <translation>Menos: de suceso en suceso</translation>
    </message>
</context>
<context>
    <name>pumpwright::QuantityField</name>
    <message>
        <source>Allowed: %1</source>
        <translation>Se admite: %1</translation>
    </message>
    <message>
        <source>several values</source>
        <translation>varios valores</translation>
    </message>
    <message>
        <source>= %1</source>
        <translation>= %1</translation>
    </message>
    <message>
        <source>%1 Still %2.</source>
        <translation>%1 Sigue %2.</translation>
    </message>
</context>
<context>
    <name>pumpwright::ReadoutModel</name>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>From mark</source>
        <translation>Desde la marca</translation>
    </message>
</context>
<context>
    <name>pumpwright::ScreenDialogs</name>
    <message>
        <source>Unsaved changes</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation>«%1» tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Discard the changes</source>
        <translation>Descartar los cambios</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Quedarse aquí</translation>
    </message>
</context>
<context>
    <name>pumpwright::SelectTool</name>
    <message>
        <source>Click selects, Shift adds. Drag moves parts, wires and labels; drag from a terminal draws a wire.</source>
        <translation>Un clic selecciona, Mayús añade. Al arrastrar se mueven piezas, cables y rótulos; arrastrar desde un borne traza un cable.</translation>
    </message>
</context>
<context>
    <name>pumpwright::SheetActions</name>
    <message>
        <source>Wiring &amp;sheet…</source>
        <translation>&amp;Hoja de cableado…</translation>
    </message>
    <message>
        <source>&amp;Print the wiring sheet…</source>
        <translation>&amp;Imprimir la hoja de cableado…</translation>
    </message>
    <message>
        <source>&amp;Wiring sheet as PDF…</source>
        <translation>&amp;Hoja de cableado en PDF…</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>See the wiring sheet before it is printed</source>
        <translation>Ver la hoja de cableado antes de imprimir</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Sin título</translation>
    </message>
    <message>
        <source>Waiting for the drive to be simulated…</source>
        <translation>Esperando la simulación de la marcha…</translation>
    </message>
    <message>
        <source>Simulating tests and breakdowns for the sheet…</source>
        <translation>Simulando pruebas y averías para la hoja…</translation>
    </message>
    <message>
        <source>Letting one thing after the other fail, for the fault-finding table of the sheet…</source>
        <translation>Una cosa tras otra falla, para la tabla de averías de la hoja…</translation>
    </message>
    <message>
        <source>Go on without that table</source>
        <translation>Seguir sin esa tabla</translation>
    </message>
    <message>
        <source>Wiring sheet</source>
        <translation>Hoja de cableado</translation>
    </message>
    <message>
        <source>Wiring sheet of %1</source>
        <translation>Hoja de cableado de %1</translation>
    </message>
    <message>
        <source>The wiring sheet can&apos;t be shown.</source>
        <translation>La hoja de cableado no se puede mostrar.</translation>
    </message>
    <message>
        <source>The wiring sheet was not printed.</source>
        <translation>La hoja de cableado no se imprimió.</translation>
    </message>
    <message>
        <source>“%1” is written.</source>
        <translation>«%1» está escrito.</translation>
    </message>
    <message>
        <source>“%1” is not written.</source>
        <translation>«%1» no se ha escrito.</translation>
    </message>
    <message>
        <source>Write the wiring sheet</source>
        <translation>Escribir la hoja de cableado</translation>
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
        <translation>contacto cerrado</translation>
    </message>
    <message>
        <source>contact open</source>
        <translation>contacto abierto</translation>
    </message>
    <message>
        <source>contact %1 closed</source>
        <translation>contacto %1 cerrado</translation>
    </message>
    <message>
        <source>contact %1 open</source>
        <translation>contacto %1 abierto</translation>
    </message>
    <message>
        <source>coil energised</source>
        <translation>bobina excitada</translation>
    </message>
    <message>
        <source>coil not energised</source>
        <translation>bobina sin excitar</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>en marcha</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>parada</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>encendida</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>apagada</translation>
    </message>
    <message>
        <source>on</source>
        <translation>encendido</translation>
    </message>
    <message>
        <source>Wire %1, from %2 to %3</source>
        <translation>Cable %1, de %2 a %3</translation>
    </message>
    <message>
        <source>Hose %1, from %2 to %3</source>
        <translation>Manguera %1, de %2 a %3</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>entero</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 de %2 a %3</translation>
    </message>
    <message>
        <source>live</source>
        <translation>con tensión</translation>
    </message>
    <message>
        <source>without voltage</source>
        <translation>sin tensión</translation>
    </message>
    <message>
        <source>Waived by %1: %2</source>
        <translation>Aceptado por %1: %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::StudiesPanel</name>
    <message>
        <source>Breakdowns</source>
        <translation>Averías</translation>
    </message>
    <message>
        <source>Lets each part, wire and hose fail in turn, and says what the driver notices and whether a warning comes before assist is lost. The worst comes first.</source>
        <translation>Hace fallar por turno cada pieza, cable y manguera, y dice qué nota el conductor y si llega un aviso antes de perder la asistencia. Lo peor va primero.</translation>
    </message>
    <message>
        <source>Kinds of study</source>
        <translation>Tipos de estudio</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Dispersión</translation>
    </message>
    <message>
        <source>Drives many cars whose parts lie differently within their tolerances, over the same plan.</source>
        <translation>Conduce muchos coches con piezas repartidas dentro de sus tolerancias, con el mismo plan.</translation>
    </message>
    <message>
        <source> cars</source>
        <translation> coches</translation>
    </message>
    <message>
        <source>How many cars</source>
        <translation>Cuántos coches</translation>
    </message>
    <message>
        <source>Two at once</source>
        <translation>Dos a la vez</translation>
    </message>
    <message>
        <source>Sweep</source>
        <translation>Barrido</translation>
    </message>
    <message>
        <source>Bench log</source>
        <translation>Registro de banco</translation>
    </message>
    <message>
        <source>Lets every two of them fail together; takes longer</source>
        <translation>Hace fallar cada dos de ellas juntas; tarda más</translation>
    </message>
    <message>
        <source>end when sure to ± </source>
        <translation>terminar al estar seguro a ± </translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>drive all of them</source>
        <translation>recorrer todos</translation>
    </message>
    <message>
        <source>End early</source>
        <translation>Terminar antes</translation>
    </message>
    <message>
        <source>Ends once both shares are known to this, 95 % sure</source>
        <translation>Termina cuando ambas partes se conocen así, con 95 % de seguridad</translation>
    </message>
</context>
<context>
    <name>pumpwright::StudyPage</name>
    <message>
        <source>Run the study</source>
        <translation>Hacer el estudio</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Run: %1</source>
        <translation>Hacer: %1</translation>
    </message>
    <message>
        <source>Cancel: %1</source>
        <translation>Cancelar: %1</translation>
    </message>
    <message>
        <source>Progress: %1</source>
        <translation>Progreso: %1</translation>
    </message>
    <message>
        <source>Results: %1</source>
        <translation>Resultados: %1</translation>
    </message>
    <message>
        <source>Cancelled: this is what it had come to.</source>
        <translation>Cancelado: hasta aquí había llegado.</translation>
    </message>
    <message>
        <source>The circuit has changed since: run it again.</source>
        <translation>El circuito ha cambiado desde entonces: hágalo de nuevo.</translation>
    </message>
</context>
<context>
    <name>pumpwright::SweepPage</name>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Second value</source>
        <translation>Segundo valor</translation>
    </message>
    <message>
        <source>nothing else</source>
        <translation>nada más</translation>
    </message>
    <message>
        <source>Good at</source>
        <translation>Bueno con</translation>
    </message>
    <message>
        <source>Sweep</source>
        <translation>Barrido</translation>
    </message>
    <message>
        <source>Drives the circuit with a value over a range, and looks for where the result turns good.</source>
        <translation>Recorre el circuito con un valor en un intervalo y busca dónde el resultado pasa a ser bueno.</translation>
    </message>
    <message>
        <source>%1 from</source>
        <translation>%1 desde</translation>
    </message>
    <message>
        <source>%1 to</source>
        <translation>%1 hasta</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Points along each value</source>
        <translation>Puntos por cada valor</translation>
    </message>
    <message>
        <source> points</source>
        <translation> puntos</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Sobre</translation>
    </message>
    <message>
        <source>and over</source>
        <translation>y sobre</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>good at</source>
        <translation>bueno con</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>pumpwright::SweepPlot</name>
    <message>
        <source>Picture of the sweep</source>
        <translation>Imagen del barrido</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bueno</translation>
    </message>
</context>
<context>
    <name>pumpwright::TextField</name>
    <message>
        <source>several values</source>
        <translation>varios valores</translation>
    </message>
    <message>
        <source>%1 Still %2.</source>
        <translation>%1 Sigue %2.</translation>
    </message>
</context>
<context>
    <name>pumpwright::Toast</name>
    <message>
        <source>Notice</source>
        <translation>Aviso</translation>
    </message>
</context>
<context>
    <name>pumpwright::TrialsModel</name>
    <message>
        <source>Rename a trial</source>
        <translation>Renombrar un ensayo</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Trial</source>
        <translation>Ensayo</translation>
    </message>
</context>
<context>
    <name>pumpwright::TrialsPage</name>
    <message>
        <source>Make a trial of…</source>
        <translation>Hacer un ensayo de…</translation>
    </message>
    <message>
        <source>Take into the circuit</source>
        <translation>Llevar al circuito</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>Drives the circuit as it is drawn, and with each trial, over the same plan.</source>
        <translation>Conduce el circuito tal como está, y con cada ensayo, con el mismo plan.</translation>
    </message>
    <message>
        <source>Trials of the circuit</source>
        <translation>Ensayos del circuito</translation>
    </message>
    <message>
        <source>Take the last steps back and keep them as a trial</source>
        <translation>Retirar los últimos pasos y conservarlos como ensayo</translation>
    </message>
    <message>
        <source>Make the chosen trial&apos;s changes in the circuit, as one step</source>
        <translation>Hacer en el circuito los cambios del ensayo elegido, como un paso</translation>
    </message>
    <message>
        <source>Remove the chosen trial</source>
        <translation>Quitar el ensayo elegido</translation>
    </message>
    <message>
        <source>To try an idea, change the circuit, then make a trial of the change.</source>
        <translation>Para probar una idea, cambie el circuito y haga un ensayo del cambio.</translation>
    </message>
    <message>
        <source>the last step: %1</source>
        <translation>el último paso: %1</translation>
    </message>
    <message>
        <source>the last %1 steps, from: %2</source>
        <translation>los últimos %1 pasos, desde: %2</translation>
    </message>
    <message>
        <source>Remove a trial</source>
        <translation>Quitar un ensayo</translation>
    </message>
    <message>
        <source>Lay over the chart</source>
        <translation>Poner sobre el gráfico</translation>
    </message>
    <message>
        <source>Show vacuum and pump current of each trial in the Drive chart</source>
        <translation>Mostrar el vacío y la corriente de la bomba de cada ensayo en el gráfico</translation>
    </message>
    <message>
        <source>%1 of trial %2</source>
        <translation>%1 del ensayo %2</translation>
    </message>
</context>
<context>
    <name>pumpwright::TwiceOpenBar</name>
    <message>
        <source>File open twice</source>
        <translation>Archivo abierto dos veces</translation>
    </message>
    <message>
        <source>I know</source>
        <translation>Ya lo sé</translation>
    </message>
    <message>
        <source>I know that the file is open twice</source>
        <translation>Ya sé que el archivo está abierto dos veces</translation>
    </message>
    <message>
        <source>%1 is open in another window too. The one that saves last overwrites the other; save this one under another name.</source>
        <translation>%1 está abierto también en otra ventana. La que guarda la última pisa a la otra; guarde esta con otro nombre.</translation>
    </message>
</context>
<context>
    <name>pumpwright::VacuumGauge</name>
    <message>
        <source>Vacuum gauge</source>
        <translation>Vacuómetro</translation>
    </message>
</context>
<context>
    <name>pumpwright::ValueChoice</name>
    <message>
        <source>%1, typed</source>
        <translation>%1, escrito</translation>
    </message>
</context>
</TS>

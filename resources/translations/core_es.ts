<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>core</name>
    <message>
        <source>With everything switched off, {} {} {}: {} in {}; {} may lose {}.</source>
        <translation>Con todo apagado, {} {} {}: {} en {}; {} puede perder {}.</translation>
    </message>
    <message>
        <source>draws</source>
        <translation>consume</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>consumen</translation>
    </message>
    <message>
        <source>A battery that is drained below half starts no engine and ages fast.</source>
        <translation>Una batería descargada por debajo de la mitad no arranca ningún motor y envejece deprisa.</translation>
    </message>
    <message>
        <source>Feed {} over a contact of the ignition switch, after its fuse.</source>
        <translation>Alimente {} a través de un contacto del interruptor de encendido, detrás de su fusible.</translation>
    </message>
    <message>
        <source>State a shorter time between two charges, if the vehicle is never left longer.</source>
        <translation>Indique un tiempo menor entre dos cargas, si el vehículo nunca se deja parado más tiempo.</translation>
    </message>
    <message>
        <source>Battery drained while parked</source>
        <translation>La batería se descarga con el vehículo aparcado</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation>práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>Put a resistor of {} before {}.</source>
        <translation>Ponga una resistencia de {} delante de {}.</translation>
    </message>
    <message>
        <source>Put a resistor of {} into {}, before {}.</source>
        <translation>Ponga una resistencia de {} en {}, delante de {}.</translation>
    </message>
    <message>
        <source>Add a resistor before {}</source>
        <translation>Añadir una resistencia delante de {}</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} charges {} with {}, over {} in all; it may make {}.</source>
        <translation>El contacto {}–{} de {} carga {} con {}, a través de {} en total; puede conectar {}.</translation>
    </message>
    <message>
        <source>An empty capacitor is a short for a moment: the small contact welds, and the load runs on.</source>
        <translation>Un condensador vacío es por un momento un cortocircuito: el contacto pequeño se suelda y el consumidor sigue en marcha.</translation>
    </message>
    <message>
        <source>Contact charges a capacitor</source>
        <translation>Un contacto carga un condensador</translation>
    </message>
    <message>
        <source>the contact's rating for making; I = V/R of the charge: physics</source>
        <translation>poder de conexión del contacto; I = V/R de la carga: física</translation>
    </message>
    <message>
        <source>by the nameplates of its loads</source>
        <translation>según las placas de datos de sus consumidores</translation>
    </message>
    <message>
        <source>{} of {} is plus and {} is minus: as {} leaves one under {}, the arc can reach the other, and plus lies on minus over it.</source>
        <translation>{} de {} está a positivo y {} a negativo: cuando {} deja uno de ellos con {}, el arco puede alcanzar el otro y unir positivo con negativo.</translation>
    </message>
    <message>
        <source>The arc then draws the battery's current until the fuse opens or the relay has burnt out.</source>
        <translation>El arco toma entonces la corriente de la batería hasta que el fusible se funde o el relé se ha quemado.</translation>
    </message>
    <message>
        <source>Switch plus and minus with two relays, so that one opens before the other closes, instead of {}.</source>
        <translation>Conmute positivo y negativo con dos relés, de modo que uno abra antes de que cierre el otro, en lugar de con {}.</translation>
    </message>
    <message>
        <source>Leave {} of {} open</source>
        <translation>Dejar {} de {} sin conectar</translation>
    </message>
    <message>
        <source>Take the wire off {}: what hangs on {} then runs out by itself.</source>
        <translation>Quite el cable de {}: lo que está conectado a {} se para entonces por sí solo.</translation>
    </message>
    <message>
        <source>Arc can bridge a changeover contact</source>
        <translation>El arco puede puentear un contacto conmutado</translation>
    </message>
    <message>
        <source>least current of an arc: Bell System paper on arcing of contacts, 1953; 0.4 A for silver from memory</source>
        <translation>corriente mínima de un arco: artículo de Bell System sobre arcos en contactos, 1953; 0.4 A para plata, de memoria</translation>
    </message>
    <message>
        <source>This circuit takes {} and the rest of the vehicle {}, {} together; {} is charged with {}.</source>
        <translation>Este circuito toma {} y el resto del vehículo {}, {} en total; {} se carga con {}.</translation>
    </message>
    <message>
        <source>What the alternator or converter can't give comes out of the battery, until it is empty.</source>
        <translation>Lo que el alternador o convertidor no puede dar sale de la batería, hasta que se vacía.</translation>
    </message>
    <message>
        <source>Fit an alternator or converter for at least {}.</source>
        <translation>Monte un alternador o convertidor de al menos {}.</translation>
    </message>
    <message>
        <source>Switch off other consumers while the pump runs.</source>
        <translation>Apague otros consumidores mientras funciona la bomba.</translation>
    </message>
    <message>
        <source>Alternator or converter too weak</source>
        <translation>Alternador o convertidor demasiado débil</translation>
    </message>
    <message>
        <source>the source's charging current limit</source>
        <translation>límite de corriente de carga de la fuente</translation>
    </message>
    <message>
        <source>Draw the leakage at {} off</source>
        <translation>Derivar la fuga en {}</translation>
    </message>
    <message>
        <source>Fit a resistor of {} and {} beside the coil of {}.</source>
        <translation>Monte una resistencia de {} y {} en paralelo con la bobina de {}.</translation>
    </message>
    <message>
        <source>Switched off, the coil of {} still gets {} over {}; it lets go for certain below {}, 90 % of its drop-out current.</source>
        <translation>Desconectada, la bobina de {} recibe aún {} a través de {}; se suelta con seguridad por debajo de {}, el 90 % de su corriente de caída.</translation>
    </message>
    <message>
        <source>A relay that has once pulled in stays in: the pump does not stop.</source>
        <translation>Un relé que ha atraído una vez queda atraído: la bomba no se para.</translation>
    </message>
    <message>
        <source>Take {} off what switches the coil, or put a relay between.</source>
        <translation>Quite {} de lo que conmuta la bobina, o intercale un relé.</translation>
    </message>
    <message>
        <source>Relay may not drop out</source>
        <translation>El relé puede no soltarse</translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.4</source>
        <translation>Normas de equipos eléctricos de Caltrans 8.4</translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation>{} con {}</translation>
    </message>
    <message>
        <source>Lay {}.</source>
        <translation>Tienda {}.</translation>
    </message>
    <message>
        <source>Lay {}</source>
        <translation>Tender {}</translation>
    </message>
    <message>
        <source>With {} of supply the coil of {} gets {}; hot, at {}, it needs {}.</source>
        <translation>Con {} de alimentación la bobina de {} recibe {}; caliente, a {}, necesita {}.</translation>
    </message>
    <message>
        <source>A hot relay that has dropped out does not pull in again while the supply is low.</source>
        <translation>Un relé caliente que se ha soltado no vuelve a atraer mientras la alimentación esté baja.</translation>
    </message>
    <message>
        <source>Choose a relay that pulls in at less as {}, or fit it where it is cooler.</source>
        <translation>Elija como {} un relé que atraiga con menos, o móntelo donde haga menos calor.</translation>
    </message>
    <message>
        <source>Relay may not pull in when hot</source>
        <translation>El relé puede no atraer en caliente</translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.3; lowest supply set in the project's limits</source>
        <translation>Normas de equipos eléctricos de Caltrans 8.3; alimentación mínima fijada en los límites del proyecto</translation>
    </message>
    <message>
        <source>Fit a resistor of about 680 Ω across {}'s coil: its current may have either direction.</source>
        <translation>Monte una resistencia de unos 680 Ω en paralelo con la bobina de {}: su corriente puede tener cualquiera de los dos sentidos.</translation>
    </message>
    <message>
        <source>Use a relay with a built-in diode as {}.</source>
        <translation>Use como {} un relé con diodo incorporado.</translation>
    </message>
    <message>
        <source>Build a diode into {}</source>
        <translation>Incorporar un diodo en {}</translation>
    </message>
    <message>
        <source>Fit a diode across the coil, cathode to {}.</source>
        <translation>Monte un diodo en paralelo con la bobina, con el cátodo en {}.</translation>
    </message>
    <message>
        <source>Add a diode across {}</source>
        <translation>Añadir un diodo en paralelo con {}</translation>
    </message>
    <message>
        <source>the output {}–{} of {}</source>
        <translation>la salida {}–{} de {}</translation>
    </message>
    <message>
        <source>the contact {}–{} of {}</source>
        <translation>el contacto {}–{} de {}</translation>
    </message>
    <message>
        <source>by I·√(L/C)</source>
        <translation>según I·√(L/C)</translation>
    </message>
    <message>
        <source>by I·√(L/C), as far as the opening gap stands it</source>
        <translation>según I·√(L/C), hasta donde lo soporta la separación de los contactos</translation>
    </message>
    <message>
        <source>{} is switched off without suppression: its coil makes a spike of {} ({}).</source>
        <translation>{} se desconecta sin supresión: su bobina produce un pico de {} ({}).</translation>
    </message>
    <message>
        <source>{} is switched off without suppression: its coil makes a spike of {} ({}); with the supply that makes {} across {}, which stands {}.</source>
        <translation>{} se desconecta sin supresión: su bobina produce un pico de {} ({}); con la alimentación resultan {} en {}, que soporta {}.</translation>
    </message>
    <message>
        <source>The output breaks down at every switch-off; in the end it fails closed.</source>
        <translation>La salida entra en ruptura con cada desconexión; al final falla en cerrado.</translation>
    </message>
    <message>
        <source>The spike burns the contact that switches the coil and can destroy electronics nearby.</source>
        <translation>El pico quema el contacto que conmuta la bobina y puede destruir la electrónica cercana.</translation>
    </message>
    <message>
        <source>Coil without suppression</source>
        <translation>Bobina sin supresión</translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.1; spike: ISO 7637-2, pulse 1, or what the output stands</source>
        <translation>Normas de equipos eléctricos de Caltrans 8.1; pico: ISO 7637-2, pulso 1, o lo que soporta la salida</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} switches {}; below {} it does not stay clean.</source>
        <translation>El contacto {}–{} de {} conmuta {}; por debajo de {} no se mantiene limpio.</translation>
    </message>
    <message>
        <source>A power contact needs the small arc to burn off its film; without it fails now and then.</source>
        <translation>Un contacto de potencia necesita el pequeño arco para quemar su película; sin él falla de vez en cuando.</translation>
    </message>
    <message>
        <source>Choose a part with a contact for small loads as {}.</source>
        <translation>Elija como {} una pieza con un contacto para cargas pequeñas.</translation>
    </message>
    <message>
        <source>Let a resistor beside the load draw what is missing.</source>
        <translation>Haga que una resistencia en paralelo con el consumidor tome lo que falta.</translation>
    </message>
    <message>
        <source>Load too small for the contact</source>
        <translation>Carga demasiado pequeña para el contacto</translation>
    </message>
    <message>
        <source>the contact's least current; 1 A for 40 to 70 A relays in their data sheets</source>
        <translation>corriente mínima del contacto; 1 A para relés de 40 a 70 A en sus hojas de datos</translation>
    </message>
    <message>
        <source>Fit a diode across {}, cathode to {}, so that its current does not go through the arc.</source>
        <translation>Monte un diodo en paralelo con {}, con el cátodo en {}, para que su corriente no pase por el arco.</translation>
    </message>
    <message>
        <source>Let {} switch a relay whose contact may break {}.</source>
        <translation>Haga que {} conmute un relé cuyo contacto pueda cortar {}.</translation>
    </message>
    <message>
        <source> ({}, {})</source>
        <translation> ({}, {})</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} opens under {} ({}); with {} load{} it may break {}.</source>
        <translation>El contacto {}–{} de {} abre con {} ({}); con carga {}{} puede cortar {}.</translation>
    </message>
    <message>
        <source>an inductive</source>
        <translation>inductiva</translation>
    </message>
    <message>
        <source>a resistive</source>
        <translation>resistiva</translation>
    </message>
    <message>
        <source>FAA AC 43.13-1B, table 11-4: half the resistive rating</source>
        <translation>FAA AC 43.13-1B, tabla 11-4: la mitad del valor resistivo</translation>
    </message>
    <message>
        <source>The arc at opening eats the contact; in the end it sticks or no longer closes.</source>
        <translation>El arco al abrir se come el contacto; al final se pega o ya no cierra.</translation>
    </message>
    <message>
        <source>Contact breaks too high a current</source>
        <translation>El contacto corta una corriente demasiado alta</translation>
    </message>
    <message>
        <source>the contact's rating for breaking; kinds of load: IEC 60947-4-1 and IEC 60947-5-1</source>
        <translation>poder de corte del contacto; tipos de carga: IEC 60947-4-1 e IEC 60947-5-1</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} carries {} ({}); it is rated for {}{}.</source>
        <translation>El contacto {}–{} de {} lleva {} ({}); está previsto para {}{}.</translation>
    </message>
    <message>
        <source>, and good for {} at {}</source>
        <translation>, y sirve para {} a {}</translation>
    </message>
    <message>
        <source>An overloaded contact heats up, softens its housing and in the end fails closed or open.</source>
        <translation>Un contacto sobrecargado se calienta, ablanda su caja y al final falla en cerrado o en abierto.</translation>
    </message>
    <message>
        <source>Choose a part with a contact for at least {} as {}.</source>
        <translation>Elija una pieza con un contacto de al menos {} como {}.</translation>
    </message>
    <message>
        <source>Contact carries more than its rating</source>
        <translation>El contacto lleva más de su valor nominal</translation>
    </message>
    <message>
        <source>the contact's rating; relays in heat: data sheet of a 70 A power relay; five seconds as continuous: common practice, no published source</source>
        <translation>valor nominal del contacto; relés con calor: hoja de datos de un relé de potencia de 70 A; cinco segundos como servicio continuo: práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>Let a timer with delay on release hold the pump longer, so that it starts less often.</source>
        <translation>Haga que un temporizador con retardo a la desconexión mantenga la bomba más tiempo, para que arranque menos veces.</translation>
    </message>
    <message>
        <source>Choose a part with a longer electrical life or a larger contact as {}.</source>
        <translation>Elija como {} una pieza de mayor vida eléctrica o con un contacto mayor.</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} closes {} times in the drive, about {} times in a year of {}. Rated for {} operations at {}, it lasts about {} at {} ({}): {} years, of {}.</source>
        <translation>El contacto {}–{} de {} cierra {} veces en la marcha, unas {} veces en un año de {}. Previsto para {} maniobras a {}, dura unas {} a {} ({}): {} años, de {}.</translation>
    </message>
    <message>
        <source>A worn contact welds or no longer closes: the pump runs on, or not at all.</source>
        <translation>Un contacto gastado se suelda o ya no cierra: la bomba sigue en marcha, o no funciona en absoluto.</translation>
    </message>
    <message>
        <source>Contact worn out too soon</source>
        <translation>Contacto gastado demasiado pronto</translation>
    </message>
    <message>
        <source>the contact's rated operations; ten years, and how life goes with current: common practice, no published source</source>
        <translation>maniobras nominales del contacto; diez años, y cómo varía la vida con la corriente: práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source> into {}, {}</source>
        <translation> de {}, {}</translation>
    </message>
    <message>
        <source>The contact {}–{} of {} closes on an inrush of {}{} ({}); it may make {}.</source>
        <translation>El contacto {}–{} de {} cierra sobre un pico de conexión de {}{} ({}); puede conectar {}.</translation>
    </message>
    <message>
        <source>A contact that bounces on too high an inrush welds, and the load runs on.</source>
        <translation>Un contacto que rebota con un pico de conexión demasiado alto se suelda, y el consumidor sigue en marcha.</translation>
    </message>
    <message>
        <source>Choose a part that may make at least {} as {}.</source>
        <translation>Elija una pieza que pueda conectar al menos {} como {}.</translation>
    </message>
    <message>
        <source>Contact closes on too high an inrush</source>
        <translation>El contacto cierra sobre un pico de conexión demasiado alto</translation>
    </message>
    <message>
        <source>the contact's rating for making; lamps: FAA AC 43.13-1B, table 11-4; kinds of load: IEC 60947-4-1</source>
        <translation>poder de conexión del contacto; lámparas: FAA AC 43.13-1B, tabla 11-4; tipos de carga: IEC 60947-4-1</translation>
    </message>
    <message>
        <source>After the pump's stop at {} the vacuum falls back by {} within {}; {} closes again after {}.</source>
        <translation>Tras la parada de la bomba en {}, el vacío retrocede {} en {}; {} vuelve a cerrar con un retroceso de {}.</translation>
    </message>
    <message>
        <source>Gas that was pumped down fast warms up again and its pressure rises: the pump starts anew.</source>
        <translation>El gas evacuado deprisa vuelve a calentarse y su presión sube: la bomba arranca de nuevo.</translation>
    </message>
    <message>
        <source>Let a timer with delay on release run the pump on after the switch has opened.</source>
        <translation>Haga que un temporizador con retardo a la desconexión dé a la bomba marcha residual tras abrir el interruptor.</translation>
    </message>
    <message>
        <source>Differential smaller than the pressure's creep back</source>
        <translation>Diferencial menor que el retroceso de la presión</translation>
    </message>
    <message>
        <source>Use a relay with diode and zener inside as {}.</source>
        <translation>Use como {} un relé con diodo y zener dentro.</translation>
    </message>
    <message>
        <source>Build diode and zener into {}</source>
        <translation>Incorporar diodo y zener en {}</translation>
    </message>
    <message>
        <source>Put a zener of {} in a row with {}, anode to anode.</source>
        <translation>Ponga un zener de {} en serie con {}, ánodo con ánodo.</translation>
    </message>
    <message>
        <source>Add a zener to {}</source>
        <translation>Añadir un zener a {}</translation>
    </message>
    <message>
        <source>The diode across the coil of {} lets it go after {}, {} later than diode and zener would; its contact {}–{} then parts slowly under {}, of {} inductive that it may break.</source>
        <translation>El diodo en paralelo con la bobina de {} hace que se suelte tras {}, {} más tarde que con diodo y zener; su contacto {}–{} se separa entonces despacio con {}, de los {} inductivos que puede cortar.</translation>
    </message>
    <message>
        <source>The armature lets go with little force: the arc burns longer and the contact can stick.</source>
        <translation>La armadura se suelta con poca fuerza: el arco arde más tiempo y el contacto puede pegarse.</translation>
    </message>
    <message>
        <source>Diode lets a relay open slowly</source>
        <translation>El diodo hace que el relé abra despacio</translation>
    </message>
    <message>
        <source>common practice, no published source; that it shortens contact life: coil-suppression application notes</source>
        <translation>práctica habitual, sin fuente publicada; que acorta la vida del contacto: notas de aplicación sobre supresión de bobinas</translation>
    </message>
    <message>
        <source>carries</source>
        <translation>conduce</translation>
    </message>
    <message>
        <source>takes as a surge</source>
        <translation>aguanta como pico</translation>
    </message>
    <message>
        <source>blocks</source>
        <translation>bloquea</translation>
    </message>
    <message>
        <source>Choose a larger diode as {}.</source>
        <translation>Elija un diodo mayor como {}.</translation>
    </message>
    <message>
        <source>Choose a diode for {} as {}.</source>
        <translation>Elija un diodo de {} como {}.</translation>
    </message>
    <message>
        <source>Choose a larger diode as {}</source>
        <translation>Elegir un diodo mayor como {}</translation>
    </message>
    <message>
        <source>{} {} of the {} that it has to</source>
        <translation>{} {} de los {} que debe</translation>
    </message>
    <message>
        <source>{} {} {}.</source>
        <translation>{} {} {}.</translation>
    </message>
    <message>
        <source>across a winding</source>
        <translation>en paralelo con un devanado</translation>
    </message>
    <message>
        <source>in a feed</source>
        <translation>en una alimentación</translation>
    </message>
    <message>
        <source>A diode that fails closed shorts the supply as soon as the winding is fed.</source>
        <translation>Un diodo que falla en cerrado cortocircuita la alimentación en cuanto el devanado recibe tensión.</translation>
    </message>
    <message>
        <source>A diode that fails opens the feed, or lets current through both ways.</source>
        <translation>Un diodo que falla interrumpe la alimentación, o deja pasar corriente en ambos sentidos.</translation>
    </message>
    <message>
        <source>Diode too small for its current or voltage</source>
        <translation>Diodo demasiado pequeño para su corriente o tensión</translation>
    </message>
    <message>
        <source>the diode's ratings; blocks three times the supply: relay contact protection in a card's manual</source>
        <translation>valores nominales del diodo; bloquea tres veces la alimentación: protección de contactos de relé en el manual de una tarjeta</translation>
    </message>
    <message>
        <source>What the rest of the drive would show, chatter or a press without assist, is not known.</source>
        <translation>No se sabe qué mostraría el resto de la marcha: vibración de contactos o una frenada sin asistencia.</translation>
    </message>
    <message>
        <source>Look at the values and wires of the part that the message names.</source>
        <translation>Mire los valores y los cables de la pieza que nombra el mensaje.</translation>
    </message>
    <message>
        <source>Drive not simulated to its end</source>
        <translation>Marcha no simulada hasta el final</translation>
    </message>
    <message>
        <source>Make {} {} long, in a sheath</source>
        <translation>Haga {} de {} de largo, con funda</translation>
    </message>
    <message>
        <source>{}.</source>
        <translation>{}.</translation>
    </message>
    <message>
        <source>A short right behind {} draws {}; the fuse interrupts {}.</source>
        <translation>Un cortocircuito justo detrás de {} toma {}; el fusible interrumpe {}.</translation>
    </message>
    <message>
        <source>A fuse beyond its breaking capacity arcs on, bursts and sets fire to its holder.</source>
        <translation>Un fusible por encima de su poder de corte mantiene el arco, revienta y prende fuego a su portafusibles.</translation>
    </message>
    <message>
        <source>Choose a fuse with a larger breaking capacity as {}.</source>
        <translation>Elija como {} un fusible con mayor poder de corte.</translation>
    </message>
    <message>
        <source>Fuse cannot interrupt the short-circuit current</source>
        <translation>El fusible no puede interrumpir la corriente de cortocircuito</translation>
    </message>
    <message>
        <source>the fuse's breaking capacity, 1000 A for ISO 8820-3</source>
        <translation>poder de corte del fusible, 1000 A según ISO 8820-3</translation>
    </message>
    <message>
        <source>Move {} to {}</source>
        <translation>Lleve {} junto a {}</translation>
    </message>
    <message>
        <source>{}, at most 0.178 m of wire before it.</source>
        <translation>{}, con 0.178 m de cable delante como máximo.</translation>
    </message>
    <message>
        <source>Move {} to the begin of {}.</source>
        <translation>Lleve {} al comienzo de {}.</translation>
    </message>
    <message>
        <source>Sheathe the lead to {}</source>
        <translation>Enfundar el cable hasta {}</translation>
    </message>
    <message>
        <source>Put {} into a sheath all the way.</source>
        <translation>Ponga {} con funda en todo el recorrido.</translation>
    </message>
    <message>
        <source>{} of wire lie between {} and {}{}; {} are allowed.</source>
        <translation>Hay {} de cable entre {} y {}{}; se admiten {}.</translation>
    </message>
    <message>
        <source>, in a sheath</source>
        <translation>, con funda</translation>
    </message>
    <message>
        <source>Nothing protects this piece of wire: when it chafes through, it burns.</source>
        <translation>Nada protege este tramo de cable: cuando se roza hasta el metal, arde.</translation>
    </message>
    <message>
        <source>Fuse far from the source</source>
        <translation>Fusible lejos de la fuente</translation>
    </message>
    <message>
        <source>33 CFR 183.455(b)</source>
        <translation>33 CFR 183.455(b)</translation>
    </message>
    <message>
        <source>fuse of {} as {}</source>
        <translation>fusible de {} como {}</translation>
    </message>
    <message>
        <source>Fit a {}.</source>
        <translation>Monte un {}.</translation>
    </message>
    <message>
        <source>Fit a {}</source>
        <translation>Montar un {}</translation>
    </message>
    <message>
        <source>Lay {} in a gauge for {}.</source>
        <translation>Tienda {} con una sección para {}.</translation>
    </message>
    <message>
        <source>Lay larger wires behind the fuse</source>
        <translation>Tender cables de mayor sección detrás del fusible</translation>
    </message>
    <message>
        <source>{} is rated for {}, but {} behind it may carry only {}.</source>
        <translation>{} tiene un valor nominal de {}, pero {} detrás de él solo puede llevar {}.</translation>
    </message>
    <message>
        <source>An overload that the fuse carries for ever burns the wire's insulation.</source>
        <translation>Una sobrecarga que el fusible lleva sin fin quema el aislamiento del cable.</translation>
    </message>
    <message>
        <source>Share what {} feeds between several fuses.</source>
        <translation>Reparta entre varios fusibles lo que alimenta {}.</translation>
    </message>
    <message>
        <source>Fuse larger than the wire it protects</source>
        <translation>Fusible mayor que el cable que protege</translation>
    </message>
    <message>
        <source>33 CFR 183.455</source>
        <translation>33 CFR 183.455</translation>
    </message>
    <message>
        <source>Give {} a fuse of its own.</source>
        <translation>Dé a {} un fusible propio.</translation>
    </message>
    <message>
        <source>{} of {} may open after {} of {}, but {} takes that for about {} when it starts.</source>
        <translation>{} de {} puede fundirse tras {} con {}, pero {} los toma durante aproximadamente {} al arrancar.</translation>
    </message>
    <message>
        <source>A fuse at the fast edge of its band opens without a fault, and the load is dead.</source>
        <translation>Un fusible en el borde rápido de su banda se funde sin avería, y el consumidor queda muerto.</translation>
    </message>
    <message>
        <source>Fuse may open on the inrush</source>
        <translation>El fusible puede fundirse con el pico de conexión</translation>
    </message>
    <message>
        <source>fast edge of the opening times of blade fuses, data sheets to ISO 8820-3</source>
        <translation>borde rápido de los tiempos de fusión de fusibles de cuchilla, hojas de datos según ISO 8820-3</translation>
    </message>
    <message>
        <source>Fit a {}, and lay {}.</source>
        <translation>Monte un {} y tienda {}.</translation>
    </message>
    <message>
        <source>Feed {} over a fuse of its own.</source>
        <translation>Alimente {} a través de un fusible propio.</translation>
    </message>
    <message>
        <source>Put a fuse of {} into {}, so that {} has its own.</source>
        <translation>Ponga un fusible de {} en {}, para que {} tenga el suyo.</translation>
    </message>
    <message>
        <source>Add a fuse for {}</source>
        <translation>Añadir un fusible para {}</translation>
    </message>
    <message>
        <source>{} feeds {} and {} as well.</source>
        <translation>{} alimenta {} y también {}.</translation>
    </message>
    <message>
        <source>A fault there opens the fuse, and with the lamp or horn the brake assist is gone.</source>
        <translation>Una avería allí funde el fusible, y con la lámpara o la bocina se pierde la asistencia de frenado.</translation>
    </message>
    <message>
        <source>Pump shares its fuse</source>
        <translation>La bomba comparte su fusible</translation>
    </message>
    <message>
        <source>{} of {} opens in the drive at {}.</source>
        <translation>{} de {} se funde en {} de la marcha.</translation>
    </message>
    <message>
        <source>{} of {} carries {} for long ({}); {} of its rating is {}.</source>
        <translation>{} de {} lleva {} de forma prolongada ({}); el {} de su valor nominal es {}.</translation>
    </message>
    <message>
        <source>A fuse that is loaded too highly opens some day without a fault, and the pump stops.</source>
        <translation>Un fusible demasiado cargado se funde algún día sin avería, y la bomba se para.</translation>
    </message>
    <message>
        <source>Fuse smaller than the load</source>
        <translation>Fusible menor que la carga</translation>
    </message>
    <message>
        <source>continuous share set in the project's limits; 80 %: common practice, no published source</source>
        <translation>fracción continua fijada en los límites del proyecto; 80 %: práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>{} on the way back from {} has {}; no wire that feeds it is below {}.</source>
        <translation>{}, en el retorno desde {}, tiene {}; ningún cable de su alimentación baja de {}.</translation>
    </message>
    <message>
        <source>The way back carries the same current: there the voltage is lost and the wire warms.</source>
        <translation>El retorno lleva la misma corriente: allí se pierde la tensión y se calienta el cable.</translation>
    </message>
    <message>
        <source>Lay {} in {}.</source>
        <translation>Tienda {} con {}.</translation>
    </message>
    <message>
        <source>Lay {} in {}</source>
        <translation>Tender {} con {}</translation>
    </message>
    <message>
        <source>Ground wire thinner than the feed</source>
        <translation>Cable de masa más delgado que el de alimentación</translation>
    </message>
    <message>
        <source>{} to {}</source>
        <translation>{} a {}</translation>
    </message>
    <message>
        <source>Change {}.</source>
        <translation>Cambie {}.</translation>
    </message>
    <message>
        <source>Change {}</source>
        <translation>Cambiar {}</translation>
    </message>
    <message>
        <source>Let a timer with delay on release bridge the gap.</source>
        <translation>Haga que un temporizador con retardo a la desconexión salve el hueco.</translation>
    </message>
    <message>
        <source>{} holds {} for {}; in the drive at {} its command is gone for {}.</source>
        <translation>{} mantiene {} durante {}; en {} de la marcha su mando falta durante {}.</translation>
    </message>
    <message>
        <source>The capacitor costs a charge at every closing, and the relay chatters all the same.</source>
        <translation>El condensador cuesta una carga en cada cierre, y el relé vibra igualmente.</translation>
    </message>
    <message>
        <source>Capacitor holds for too short a time</source>
        <translation>El condensador mantiene durante un tiempo demasiado corto</translation>
    </message>
    <message>
        <source>the gap in the drive; gaps up to two seconds: common practice, no published source</source>
        <translation>el hueco en la marcha; huecos de hasta dos segundos: práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>Choose a part whose input goes on at less as {}, or feed it past what lies in a row with it.</source>
        <translation>Elija como {} una pieza cuya entrada se active con menos, o aliméntela sin pasar por lo que está en serie con ella.</translation>
    </message>
    <message>
        <source>With {} of supply the input {} of {} gets {}; to go on for certain it needs {}.</source>
        <translation>Con {} de alimentación la entrada {} de {} recibe {}; para activarse con seguridad necesita {}.</translation>
    </message>
    <message>
        <source>While the supply is low, as at a start or with lamps on, the pump is not commanded.</source>
        <translation>Mientras la alimentación está baja, como en un arranque o con las lámparas encendidas, la bomba no recibe mando.</translation>
    </message>
    <message>
        <source>Input may not go on at low supply</source>
        <translation>La entrada puede no activarse con alimentación baja</translation>
    </message>
    <message>
        <source>the voltage at which the input goes on, and a tenth more: Caltrans equipment electrical standards 8.3; lowest supply set in the project's limits</source>
        <translation>la tensión a la que se activa la entrada, y una décima parte más: normas de equipos eléctricos de Caltrans 8.3; alimentación mínima fijada en los límites del proyecto</translation>
    </message>
    <message>
        <source>Let a relay instead of {} switch {}.</source>
        <translation>Haga que un relé, en lugar de {}, conmute {}.</translation>
    </message>
    <message>
        <source>Fit a resistor of {} from {} to {}.</source>
        <translation>Monte una resistencia de {} de {} a {}.</translation>
    </message>
    <message>
        <source>Off, {} still leaks {}: that leaves {} at the input {} of {}, which lets go below {}.</source>
        <translation>Desconectado, {} deja pasar aún {}: eso deja {} en la entrada {} de {}, que se desactiva por debajo de {}.</translation>
    </message>
    <message>
        <source>The input stays on, or comes on by itself when it is warm: the pump does not stop.</source>
        <translation>La entrada sigue activa, o se activa por sí sola cuando hace calor: la bomba no se para.</translation>
    </message>
    <message>
        <source>Leakage keeps an input on</source>
        <translation>Una fuga mantiene activa una entrada</translation>
    </message>
    <message>
        <source>the voltage at which the input goes off, the output's leakage</source>
        <translation>la tensión a la que se desactiva la entrada, la fuga de la salida</translation>
    </message>
    <message>
        <source>{} switches {} off, and the motor's {} find no way but through the semiconductor, which breaks down at {}.</source>
        <translation>{} desconecta {}, y los {} del motor no hallan más camino que el semiconductor, que entra en ruptura a {}.</translation>
    </message>
    <message>
        <source>Every switch-off drives the semiconductor into breakdown; in the end it fails closed.</source>
        <translation>Cada desconexión lleva el semiconductor a la ruptura; al final falla en cerrado.</translation>
    </message>
    <message>
        <source>Fit a diode across {}, cathode to {}.</source>
        <translation>Monte un diodo en paralelo con {}, con el cátodo en {}.</translation>
    </message>
    <message>
        <source>Motor on a semiconductor without a freewheel diode</source>
        <translation>Motor con semiconductor sin diodo de rueda libre</translation>
    </message>
    <message>
        <source>No check valve lies between {} and {}.</source>
        <translation>No hay válvula antirretorno entre {} y {}.</translation>
    </message>
    <message>
        <source>When the pump stops, air leaks back through it and the assist is gone in seconds.</source>
        <translation>Cuando la bomba se para, el aire vuelve a través de ella y la asistencia se pierde en segundos.</translation>
    </message>
    <message>
        <source>Put a check valve into the hose at {}.</source>
        <translation>Ponga una válvula antirretorno en la manguera en {}.</translation>
    </message>
    <message>
        <source>Add a check valve at {}</source>
        <translation>Añadir una válvula antirretorno en {}</translation>
    </message>
    <message>
        <source>No check valve before the booster</source>
        <translation>Sin válvula antirretorno antes del servofreno</translation>
    </message>
    <message>
        <source>49 CFR 393.50(b), text of earlier years</source>
        <translation>49 CFR 393.50(b), texto de años anteriores</translation>
    </message>
    <message>
        <source>Current flows only where it can come back to the source: this part does nothing.</source>
        <translation>La corriente solo fluye donde puede volver a la fuente: esta pieza no hace nada.</translation>
    </message>
    <message>
        <source>A diode, semiconductor or capacitor bars the current through {} ({}).</source>
        <translation>Un diodo, semiconductor o condensador cierra el paso a la corriente por {} ({}).</translation>
    </message>
    <message>
        <source>Turn the part that stands the wrong way round, or bridge the capacitor.</source>
        <translation>Gire la pieza que está al revés, o puentee el condensador.</translation>
    </message>
    <message>
        <source>Nothing feeds {} ({}): the circuit has no supply.</source>
        <translation>Nada alimenta {} ({}): el circuito no tiene alimentación.</translation>
    </message>
    <message>
        <source>Place a supply and wire it.</source>
        <translation>Coloque una alimentación y conéctela.</translation>
    </message>
    <message>
        <source>No current can flow from a supply through {} ({}) and back.</source>
        <translation>No puede fluir corriente desde una alimentación por {} ({}) y de vuelta.</translation>
    </message>
    <message>
        <source>Wire {} between a feed and ground.</source>
        <translation>Conecte {} entre una alimentación y masa.</translation>
    </message>
    <message>
        <source>No return path</source>
        <translation>Sin camino de retorno</translation>
    </message>
    <message>
        <source>No lamp or buzzer tells the driver that {} has too little vacuum.</source>
        <translation>Ninguna lámpara ni zumbador avisa al conductor de que {} tiene demasiado poco vacío.</translation>
    </message>
    <message>
        <source>The loss of assist shows only when the pedal is hard: in the press that was needed.</source>
        <translation>La pérdida de asistencia solo se nota cuando el pedal está duro: en la frenada en la que hacía falta.</translation>
    </message>
    <message>
        <source>Feed {} from the battery over a fuse and a contact of the ignition switch of its own.</source>
        <translation>Alimente {} desde la batería a través de un fusible y un contacto del interruptor de encendido propios.</translation>
    </message>
    <message>
        <source>{} feeds the pump or its control, and the warning {} as well.</source>
        <translation>{} alimenta la bomba o su mando, y también el aviso {}.</translation>
    </message>
    <message>
        <source>The fuse that stops the pump silences the warning of it.</source>
        <translation>El fusible que para la bomba hace callar el aviso de ello.</translation>
    </message>
    <message>
        <source>No warning of low vacuum</source>
        <translation>Sin aviso de vacío bajo</translation>
    </message>
    <message>
        <source>common practice, no published source; the idea: California Vehicle Code 26521</source>
        <translation>práctica habitual, sin fuente publicada; la idea: California Vehicle Code 26521</translation>
    </message>
    <message>
        <source>{} has nothing connected to terminal {}.</source>
        <translation>En {} no hay nada conectado al borne {}.</translation>
    </message>
    <message>
        <source>{} has nothing connected to terminals {}.</source>
        <translation>En {} no hay nada conectado a los bornes {}.</translation>
    </message>
    <message>
        <source>A part with an open terminal does not work, or works only by chance.</source>
        <translation>Una pieza con un borne abierto no funciona, o solo funciona por casualidad.</translation>
    </message>
    <message>
        <source>Wire {} of {} to where it belongs.</source>
        <translation>Conecte {} de {} donde corresponda.</translation>
    </message>
    <message>
        <source>Delete {} if it is not needed.</source>
        <translation>Borre {} si no hace falta.</translation>
    </message>
    <message>
        <source>Open terminal</source>
        <translation>Borne abierto</translation>
    </message>
    <message>
        <source>makes</source>
        <translation>conecta</translation>
    </message>
    <message>
        <source>breaks</source>
        <translation>corta</translation>
    </message>
    <message>
        <source>{} ({}–{})</source>
        <translation>{} ({}–{})</translation>
    </message>
    <message>
        <source>{} lie side by side: whichever closes first and opens last {} {} alone ({}), and one of them may no more than {}.</source>
        <translation>{} están en paralelo: el que cierra primero y abre el último {} {} él solo ({}), y uno de ellos no puede con más de {}.</translation>
    </message>
    <message>
        <source>They share what they carry, not what they make and break: one welds, then the other.</source>
        <translation>Comparten lo que llevan, no lo que conectan y cortan: se suelda uno, y después el otro.</translation>
    </message>
    <message>
        <source>Choose parts of which each {} {} alone.</source>
        <translation>Elija piezas de las que cada una {} {} por sí sola.</translation>
    </message>
    <message>
        <source>Let the contacts switch the coil of one power relay, whose contact does all of it.</source>
        <translation>Haga que los contactos conmuten la bobina de un solo relé de potencia, cuyo contacto lo haga todo.</translation>
    </message>
    <message>
        <source>Contacts in parallel count as one</source>
        <translation>Los contactos en paralelo cuentan como uno</translation>
    </message>
    <message>
        <source>the rating of one contact; common practice, no published source</source>
        <translation>valor nominal de un contacto; práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>Only the pedal starts {}; no vacuum switch does.</source>
        <translation>Solo el pedal pone en marcha {}; ningún interruptor de vacío lo hace.</translation>
    </message>
    <message>
        <source>The pump begins when the assist is needed already, and fills up only while the foot is down.</source>
        <translation>La bomba empieza cuando la asistencia ya hace falta, y solo evacúa mientras el pie pisa.</translation>
    </message>
    <message>
        <source>Let a vacuum switch at the booster start the pump as well.</source>
        <translation>Haga que un interruptor de vacío en el servofreno ponga también en marcha la bomba.</translation>
    </message>
    <message>
        <source>Only the pedal starts the pump</source>
        <translation>Solo el pedal pone en marcha la bomba</translation>
    </message>
    <message>
        <source>{} stands the wrong way round: its plus is on the body.</source>
        <translation>{} está al revés: su positivo está en la carrocería.</translation>
    </message>
    <message>
        <source>{} stands the wrong way round: plus is on {} and belongs on {}.</source>
        <translation>{} está al revés: el positivo está en {} y debe estar en {}.</translation>
    </message>
    <message>
        <source>Everything gets the wrong polarity: electronics fail at once, diodes short it.</source>
        <translation>Todo recibe la polaridad equivocada: la electrónica falla al instante, los diodos la cortocircuitan.</translation>
    </message>
    <message>
        <source>The part does not work that way round, and may burn or burst.</source>
        <translation>La pieza no funciona en ese sentido, y puede arder o reventar.</translation>
    </message>
    <message>
        <source>Exchange the wires on {} and {}.</source>
        <translation>Intercambie los cables de {} y {}.</translation>
    </message>
    <message>
        <source>Exchange the wires of {}</source>
        <translation>Intercambiar los cables de {}</translation>
    </message>
    <message>
        <source>Part the wrong way round</source>
        <translation>Pieza al revés</translation>
    </message>
    <message>
        <source>Let a vacuum switch start the pump, so that the vacuum is there before the first press.</source>
        <translation>Haga que un interruptor de vacío ponga en marcha la bomba, para que haya vacío antes de la primera frenada.</translation>
    </message>
    <message>
        <source>Raise the set point of the vacuum switch, or fit a larger reservoir or pump.</source>
        <translation>Suba el punto de consigna del interruptor de vacío, o monte un depósito o una bomba mayor.</translation>
    </message>
    <message>
        <source>Warn the driver of low vacuum with a lamp and a buzzer on a switch and fuse of their own.</source>
        <translation>Avise al conductor del vacío bajo con una lámpara y un zumbador, con interruptor y fusible propios.</translation>
    </message>
    <message>
        <source>{} of {} of the drive {} full assist from {}; the worst, at {}, gets {} of the {} that it asks for ({}).</source>
        <translation>A {} de {} de la marcha {} asistencia plena de {}; la peor, en {}, recibe {} de los {} que pide ({}).</translation>
    </message>
    <message>
        <source>lacks</source>
        <translation>le falta</translation>
    </message>
    <message>
        <source>lack</source>
        <translation>les falta</translation>
    </message>
    <message>
        <source>Without assist the pedal needs several times the force, and the vehicle stops later.</source>
        <translation>Sin asistencia el pedal necesita varias veces la fuerza, y el vehículo se detiene más tarde.</translation>
    </message>
    <message>
        <source>Press without assist</source>
        <translation>Frenada sin asistencia</translation>
    </message>
    <message>
        <source>1 press with assist is in store</source>
        <translation>queda 1 frenada con asistencia en reserva</translation>
    </message>
    <message>
        <source>{} presses with assist are in store</source>
        <translation>quedan {} frenadas con asistencia en reserva</translation>
    </message>
    <message>
        <source>With {} off while the vehicle rolls, {} is dead; {}, and the drive plan makes {}.</source>
        <translation>Con {} en posición de apagado mientras el vehículo rueda, {} no funciona; {}, y el plan de marcha pide {}.</translation>
    </message>
    <message>
        <source>With {} off while the vehicle rolls, {} is dead; {}.</source>
        <translation>Con {} en posición de apagado mientras el vehículo rueda, {} no funciona; {}.</translation>
    </message>
    <message>
        <source>A key that is turned off too early, or an ignition switch that fails, takes the assist along.</source>
        <translation>Una llave girada demasiado pronto, o un interruptor de encendido que falla, se lleva también la asistencia.</translation>
    </message>
    <message>
        <source>Tell the driver to keep {} on until the vehicle stands; write it on the sheet.</source>
        <translation>Diga al conductor que mantenga {} en posición de encendido hasta que el vehículo esté parado; escríbalo en la hoja.</translation>
    </message>
    <message>
        <source>Fit a larger reservoir, so that the presses after that have their vacuum.</source>
        <translation>Monte un depósito mayor, para que las frenadas siguientes tengan su vacío.</translation>
    </message>
    <message>
        <source>Pump dead with the key off while rolling</source>
        <translation>Bomba muerta al rodar con el encendido apagado</translation>
    </message>
    <message>
        <source>{} runs for {} of the {} from {} on, a duty of {}; it is rated for {}.</source>
        <translation>{} funciona {} de los {} a partir de {}, un ciclo de trabajo del {}; está prevista para el {}.</translation>
    </message>
    <message>
        <source>A pump beyond its duty gets hotter than its windings stand, and then the assist is gone.</source>
        <translation>Una bomba por encima de su ciclo de trabajo se calienta más de lo que soportan sus devanados, y entonces se pierde la asistencia.</translation>
    </message>
    <message>
        <source>Look for leaks; a tight system is pumped down once and kept.</source>
        <translation>Busque fugas; un sistema estanco se evacúa una vez y se conserva así.</translation>
    </message>
    <message>
        <source>Fit a pump with a larger flow or for continuous duty.</source>
        <translation>Monte una bomba de mayor caudal o para servicio continuo.</translation>
    </message>
    <message>
        <source>Pump beyond its duty</source>
        <translation>Bomba por encima de su ciclo de trabajo</translation>
    </message>
    <message>
        <source>the pump's rated duty in ten minutes</source>
        <translation>ciclo de trabajo nominal de la bomba en diez minutos</translation>
    </message>
    <message>
        <source>Lead {} over a contact of the ignition switch.</source>
        <translation>Lleve {} a través de un contacto del interruptor de encendido.</translation>
    </message>
    <message>
        <source>Put an ignition contact into {}</source>
        <translation>Poner un contacto de encendido en {}</translation>
    </message>
    <message>
        <source>Let a relay on the ignition switch feed the pump's circuit.</source>
        <translation>Haga que un relé en el interruptor de encendido alimente el circuito de la bomba.</translation>
    </message>
    <message>
        <source>{} is fed with every hand switch off: it draws {} whenever the vacuum is low.</source>
        <translation>{} recibe alimentación con todos los interruptores manuales apagados: consume {} siempre que el vacío está bajo.</translation>
    </message>
    <message>
        <source>In a parked car the vacuum leaks away: the pump runs unwatched until the battery is empty.</source>
        <translation>En un coche aparcado el vacío se escapa: la bomba funciona sin vigilancia hasta vaciar la batería.</translation>
    </message>
    <message>
        <source>Pump fed with the key off</source>
        <translation>Bomba alimentada con el encendido apagado</translation>
    </message>
    <message>
        <source>{} runs for {} without a stop.</source>
        <translation>{} funciona durante {} sin parar.</translation>
    </message>
    <message>
        <source>A pump without a pause overheats and wears out, and then the assist is gone.</source>
        <translation>Una bomba sin pausa se sobrecalienta y se gasta, y entonces se pierde la asistencia.</translation>
    </message>
    <message>
        <source>{} {} opens at {}; the vacuum gets to {} only.</source>
        <translation>{} {} abre a {}; el vacío solo llega a {}.</translation>
    </message>
    <message>
        <source>Look for leaks; fit a pump with a better ultimate vacuum or a larger flow.</source>
        <translation>Busque fugas; monte una bomba con mejor vacío límite o mayor caudal.</translation>
    </message>
    <message>
        <source>Pump never reaches the set point</source>
        <translation>La bomba nunca alcanza el punto de consigna</translation>
    </message>
    <message>
        <source>Australian heavy-vehicle inspection criteria: full vacuum within 60 s</source>
        <translation>Criterios australianos de inspección de vehículos pesados: vacío pleno en 60 s</translation>
    </message>
    <message>
        <source>Fit a reservoir, so that a press takes less of the vacuum; look for leaks.</source>
        <translation>Monte un depósito, para que una frenada gaste menos vacío; busque fugas.</translation>
    </message>
    <message>
        <source>{} starts {} times in an hour of this drive; it is rated for {}.</source>
        <translation>{} arranca {} veces en una hora de esta marcha; está prevista para {}.</translation>
    </message>
    <message>
        <source>Each start is an inrush: brushes, contacts and windings wear with every one.</source>
        <translation>Cada arranque es un pico de conexión: escobillas, contactos y devanados se desgastan con cada uno.</translation>
    </message>
    <message>
        <source>Pump starts too often</source>
        <translation>La bomba arranca demasiadas veces</translation>
    </message>
    <message>
        <source>the pump's rated starts in an hour</source>
        <translation>arranques nominales de la bomba por hora</translation>
    </message>
    <message>
        <source>Lay thicker or shorter wires to {} and back.</source>
        <translation>Tienda cables más gruesos o más cortos hasta {} y de vuelta.</translation>
    </message>
    <message>
        <source>Let the pump rest while the engine is cranked: feed its control from a contact that opens then.</source>
        <translation>Deje descansar la bomba mientras se arranca el motor: alimente su mando desde un contacto que abra entonces.</translation>
    </message>
    <message>
        <source>Charge or change the battery, and clean its terminals.</source>
        <translation>Cargue o cambie la batería, y limpie sus bornes.</translation>
    </message>
    <message>
        <source>{} gets {} ({}); it works down to {}.</source>
        <translation>{} recibe {} ({}); funciona hasta un mínimo de {}.</translation>
    </message>
    <message>
        <source>with {} at the battery, as in cranking or at full load</source>
        <translation>con {} en la batería, como al arrancar el motor o a plena carga</translation>
    </message>
    <message>
        <source>A pump that gets too little voltage stalls, and the vacuum is not made good.</source>
        <translation>Una bomba con demasiado poca tensión se cala, y el vacío no se repone.</translation>
    </message>
    <message>
        <source>Too little voltage at the pump</source>
        <translation>Demasiado poca tensión en la bomba</translation>
    </message>
    <message>
        <source>the pump's lowest voltage; ISO 16750-2, code D, for the lowest supply</source>
        <translation>tensión mínima de la bomba; ISO 16750-2, código D, para la alimentación mínima</translation>
    </message>
    <message>
        <source>A part beyond what it stands fails early: it melts, corrodes, or water shorts it.</source>
        <translation>Una pieza más allá de lo que soporta falla pronto: se funde, se corroe o el agua la cortocircuita.</translation>
    </message>
    <message>
        <source>Fit {} in a cooler or drier place, or choose one that is made for {}.</source>
        <translation>Monte {} en un lugar más fresco o más seco, o elija una pieza hecha para ir {}.</translation>
    </message>
    <message>
        <source>{} stands {}; {} it gets {}.</source>
        <translation>{} soporta {}; {} llega a {}.</translation>
    </message>
    <message>
        <source>{} is {}; {} its second digit must be {} or more.</source>
        <translation>{} es {}; {} su segunda cifra debe ser {} o más.</translation>
    </message>
    <message>
        <source>Part not made for its place in the vehicle</source>
        <translation>Pieza no hecha para su lugar en el vehículo</translation>
    </message>
    <message>
        <source>IEC 60529 for the code; temperatures: common practice, no published source</source>
        <translation>IEC 60529 para el código; temperaturas: práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>cable</translation>
    </message>
    <message>
        <source>wires</source>
        <translation>cables</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>manguera</translation>
    </message>
    <message>
        <source>hoses</source>
        <translation>mangueras</translation>
    </message>
    <message>
        <source>Reference missing or given twice</source>
        <translation>Referencia ausente o repetida</translation>
    </message>
    <message>
        <source>IEC 81346-1: a reference designates one object; value from memory</source>
        <translation>IEC 81346-1: una referencia designa un solo objeto; valor de memoria</translation>
    </message>
    <message>
        <source>Set the delay of {}.</source>
        <translation>Ajuste el retardo de {}.</translation>
    </message>
    <message>
        <source>Set the delay of {}</source>
        <translation>Ajustar el retardo de {}</translation>
    </message>
    <message>
        <source>Let a timer with delay on release hold the pump for about five seconds after the vacuum switch has opened.</source>
        <translation>Haga que un temporizador con retardo a la desconexión mantenga la bomba unos cinco segundos después de abrir el interruptor de vacío.</translation>
    </message>
    <message>
        <source>{} {} times</source>
        <translation>{} {} veces</translation>
    </message>
    <message>
        <source>Contacts chatter: within {} from {} on close {}.</source>
        <translation>Los contactos vibran: en los {} a partir de {} cierran {}.</translation>
    </message>
    <message>
        <source>Each closing takes the pump's inrush: the contact welds or burns out within weeks.</source>
        <translation>Cada cierre toma el pico de conexión de la bomba: el contacto se suelda o se quema en semanas.</translation>
    </message>
    <message>
        <source>Relay chatter</source>
        <translation>Vibración de relé</translation>
    </message>
    <message>
        <source>Let {} switch a relay</source>
        <translation>Hacer que {} conmute un relé</translation>
    </message>
    <message>
        <source>Put a power relay beside {}: {} switches its coil, and its contact the load.</source>
        <translation>Ponga un relé de potencia junto a {}: {} conmuta su bobina, y su contacto el consumidor.</translation>
    </message>
    <message>
        <source>Add a warning lamp for low vacuum</source>
        <translation>Añadir una lámpara de aviso de vacío bajo</translation>
    </message>
    <message>
        <source>a reservoir of {} at {}</source>
        <translation>un depósito de {} en {}</translation>
    </message>
    <message>
        <source>Put in {}</source>
        <translation>Montar {}</translation>
    </message>
    <message>
        <source>Put in {}.</source>
        <translation>Monte {}.</translation>
    </message>
    <message>
        <source>Raise the set point of the vacuum switch, so that more vacuum is in store.</source>
        <translation>Suba el punto de consigna del interruptor de vacío, para que haya más vacío en reserva.</translation>
    </message>
    <message>
        <source>When the pump dies at {}, {} has {} of {} with at least {} of the assist; {} are wanted.</source>
        <translation>Si la bomba falla a {}, {} tiene {} de {} con al menos el {} de la asistencia; se piden {}.</translation>
    </message>
    <message>
        <source>With the pump dead, the stored vacuum must bring the vehicle to a stop.</source>
        <translation>Con la bomba muerta, el vacío almacenado debe detener el vehículo.</translation>
    </message>
    <message>
        <source>Too few presses in reserve</source>
        <translation>Demasiado pocas frenadas en reserva</translation>
    </message>
    <message>
        <source>the project's limit; two to three assisted presses: common practice, no published source</source>
        <translation>límite del proyecto; dos o tres frenadas con asistencia: práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>{}: closes at {}, opens {} higher</source>
        <translation>{}: cierra a {}, abre {} más arriba</translation>
    </message>
    <message>
        <source>Set {}.</source>
        <translation>Fije {}.</translation>
    </message>
    <message>
        <source>Set {}</source>
        <translation>Fijar {}</translation>
    </message>
    <message>
        <source>Lower the set point of {}.</source>
        <translation>Baje el punto de consigna de {}.</translation>
    </message>
    <message>
        <source>{} opens at {}; at {}, the highest of the drive plan, {} pump reaches {}.</source>
        <translation>{} abre a {}; a {}, lo más alto del plan de marcha, una bomba {} llega a {}.</translation>
    </message>
    <message>
        <source>a new</source>
        <translation>nueva</translation>
    </message>
    <message>
        <source>a worn</source>
        <translation>gastada</translation>
    </message>
    <message>
        <source>The pump then never stops: it overheats, and one day the assist is gone.</source>
        <translation>La bomba no se para entonces nunca: se sobrecalienta, y un día se pierde la asistencia.</translation>
    </message>
    <message>
        <source>Fit a pump with a lower ultimate pressure.</source>
        <translation>Monte una bomba con menor presión límite.</translation>
    </message>
    <message>
        <source>Set point out of the pump's reach</source>
        <translation>Punto de consigna fuera del alcance de la bomba</translation>
    </message>
    <message>
        <source>ISO 2533 for the ambient pressure; the pump's ultimate pressure</source>
        <translation>ISO 2533 para la presión ambiente; presión límite de la bomba</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>positivo</translation>
    </message>
    <message>
        <source>{} plus</source>
        <translation>positivo de {}</translation>
    </message>
    <message>
        <source>{} – {}</source>
        <translation>{} – {}</translation>
    </message>
    <message>
        <source>{} – minus</source>
        <translation>{} – negativo</translation>
    </message>
    <message>
        <source>{} closed</source>
        <translation>{} en posición cerrada</translation>
    </message>
    <message>
        <source>{} open</source>
        <translation>{} en posición abierta</translation>
    </message>
    <message>
        <source>{} blown</source>
        <translation>{} en estado fundido</translation>
    </message>
    <message>
        <source>{} off the body</source>
        <translation>{} sin unión a la carrocería</translation>
    </message>
    <message>
        <source>in every state</source>
        <translation>en todos los estados</translation>
    </message>
    <message>
        <source>with {}</source>
        <translation>con {}</translation>
    </message>
    <message>
        <source>Put a diode into {}, against the current that should not flow.</source>
        <translation>Ponga un diodo en {}, contra la corriente que no debe fluir.</translation>
    </message>
    <message>
        <source>Put a diode into {}</source>
        <translation>Poner un diodo en {}</translation>
    </message>
    <message>
        <source>Give {} a ground of its own</source>
        <translation>Dar a {} una masa propia</translation>
    </message>
    <message>
        <source>Give {} a ground point of its own.</source>
        <translation>Dé a {} un punto de masa propio.</translation>
    </message>
    <message>
        <source>Separate the two circuits: a contact of its own, or a relay, for each of them.</source>
        <translation>Separe los dos circuitos: un contacto propio, o un relé, para cada uno de ellos.</translation>
    </message>
    <message>
        <source>{} gets {} {} by a path that does not command it: {}.</source>
        <translation>{} recibe {} {} por un camino que no manda esta pieza: {}.</translation>
    </message>
    <message>
        <source>A fault then does more than put something out: it turns something else on, or keeps it on.</source>
        <translation>Una avería hace entonces más que apagar algo: enciende otra cosa, o la mantiene encendida.</translation>
    </message>
    <message>
        <source>Something comes on, or stays on, that nobody has turned on.</source>
        <translation>Se enciende algo, o sigue encendido, que nadie ha encendido.</translation>
    </message>
    <message>
        <source>{} switches, relays and fuses that hang together have {} combinations; a sample of {} of them was looked at for unintended paths.</source>
        <translation>{} interruptores, relés y fusibles unidos entre sí tienen {} combinaciones; se examinó una muestra de {} de ellas en busca de caminos no previstos.</translation>
    </message>
    <message>
        <source>A path that only some other combination opens is not found.</source>
        <translation>Un camino que solo se abre con otra combinación no se encuentra.</translation>
    </message>
    <message>
        <source>Check parts of the circuit as circuits of their own, or look through it by hand.</source>
        <translation>Compruebe partes del circuito como circuitos propios, o revíselo a mano.</translation>
    </message>
    <message>
        <source>Fed by a path that does not command it</source>
        <translation>Alimentación por un camino que no es el de mando</translation>
    </message>
    <message>
        <source>sneak analysis as ECSS-Q-TM-40-04 describes it, from memory</source>
        <translation>análisis de caminos ocultos (sneak analysis) como lo describe ECSS-Q-TM-40-04, de memoria</translation>
    </message>
    <message>
        <source>Choose a solid-state relay of at least {} as {}.</source>
        <translation>Elija un relé de estado sólido de al menos {} como {}.</translation>
    </message>
    <message>
        <source>a solid-state relay of {} as {}</source>
        <translation>un relé de estado sólido de {} como {}</translation>
    </message>
    <message>
        <source>Choose {}.</source>
        <translation>Elija {}.</translation>
    </message>
    <message>
        <source>Choose {}</source>
        <translation>Elegir {}</translation>
    </message>
    <message>
        <source>{} carries {} ({}); sold as {}, it is good for {} with {} load.</source>
        <translation>{} lleva {} ({}); vendido como {}, sirve para {} con carga {}.</translation>
    </message>
    <message>
        <source>An overheated semiconductor mostly fails closed: the load runs on.</source>
        <translation>Un semiconductor sobrecalentado suele fallar en cerrado: el consumidor sigue en marcha.</translation>
    </message>
    <message>
        <source>Use a power relay with a mechanical contact instead.</source>
        <translation>Use en su lugar un relé de potencia con contacto mecánico.</translation>
    </message>
    <message>
        <source>Solid-state relay beyond its derated current</source>
        <translation>Relé de estado sólido por encima de su corriente reducida</translation>
    </message>
    <message>
        <source>Fit {} on a heat sink of {}, junction to surroundings</source>
        <translation>Monte {} sobre un disipador de {}, de la unión al entorno</translation>
    </message>
    <message>
        <source>Fit {} on a heat sink</source>
        <translation>Montar {} sobre un disipador</translation>
    </message>
    <message>
        <source>Choose a solid-state relay with less on-resistance as {}, or fit it where it is cooler.</source>
        <translation>Elija como {} un relé de estado sólido con menos resistencia en conducción, o móntelo donde haga menos calor.</translation>
    </message>
    <message>
        <source>{} carries {} ({}) over {} and gives the heat off over {}: its junction gets {}{} in surroundings of {}.</source>
        <translation>{} lleva {} ({}) a través de {} y cede el calor a través de {}: su unión alcanza {}{} en un entorno de {}.</translation>
    </message>
    <message>
        <source>hotter and hotter, beyond </source>
        <translation>cada vez más calor, más de </translation>
    </message>
    <message>
        <source>Solid-state relay gets too hot</source>
        <translation>El relé de estado sólido se calienta demasiado</translation>
    </message>
    <message>
        <source>guide to the heat of solid-state relays: junctions to 115 °C</source>
        <translation>guía sobre el calor de los relés de estado sólido: uniones hasta 115 °C</translation>
    </message>
    <message>
        <source>Move {}</source>
        <translation>Mover {}</translation>
    </message>
    <message>
        <source>{} lies under the symbol of {}, {} from clear paper.</source>
        <translation>{} está bajo el símbolo de {}, a {} del papel libre.</translation>
    </message>
    <message>
        <source>{} grid steps</source>
        <translation>{} pasos de rejilla</translation>
    </message>
    <message>
        <source>1 grid step</source>
        <translation>1 paso de rejilla</translation>
    </message>
    <message>
        <source>Whoever builds from the sheet does not see that wires meet there, or takes the part's terminal for the joint.</source>
        <translation>Quien monta siguiendo la hoja no ve que allí se unen cables, o toma el borne de la pieza por el empalme.</translation>
    </message>
    <message>
        <source>Move {} to the nearest clear place.</source>
        <translation>Mueva {} al lugar libre más cercano.</translation>
    </message>
    <message>
        <source>Splice hidden under a part</source>
        <translation>Empalme oculto bajo una pieza</translation>
    </message>
    <message>
        <source>Put a diode of {} into the lead at {}, anode to it.</source>
        <translation>Ponga un diodo de {} en el cable en {}, con el ánodo hacia ese punto.</translation>
    </message>
    <message>
        <source>Add a diode at {}</source>
        <translation>Añadir un diodo en {}</translation>
    </message>
    <message>
        <source>Exchange the wires on the poles of {}.</source>
        <translation>Intercambie los cables de los polos de {}.</translation>
    </message>
    <message>
        <source>Charge {} before it is joined, or join the two over a switch that separates them at rest.</source>
        <translation>Cargue {} antes de unirla, o una las dos a través de un interruptor que las separe en reposo.</translation>
    </message>
    <message>
        <source>{} and {} stand {}: about {} flow from one into the other{}.</source>
        <translation>{} y {} están {}: fluyen unos {} de una a otra{}.</translation>
    </message>
    <message>
        <source>plus on minus</source>
        <translation>con el positivo en el negativo</translation>
    </message>
    <message>
        <source>side by side at different voltages</source>
        <translation>en paralelo con tensiones distintas</translation>
    </message>
    <message>
        <source>Two batteries short each other until a wire burns or one of them bursts.</source>
        <translation>Dos baterías se cortocircuitan entre sí hasta que arde un cable o revienta una de ellas.</translation>
    </message>
    <message>
        <source>The weaker battery is charged without any limit: leads and battery get hot.</source>
        <translation>La batería más débil se carga sin ningún límite: cables y batería se calientan.</translation>
    </message>
    <message>
        <source>Two supplies against each other</source>
        <translation>Dos alimentaciones enfrentadas</translation>
    </message>
    <message>
        <source>a tenth of the ampere-hours as charging current: common practice, no published source</source>
        <translation>una décima parte de los amperios-hora como corriente de carga: práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>{} is short-circuited{}: about {} flow over {}{}.</source>
        <translation>{} está en cortocircuito{}: fluyen unos {} por {}{}.</translation>
    </message>
    <message>
        <source> and no fuse</source>
        <translation> y ningún fusible</translation>
    </message>
    <message>
        <source> until {} opens</source>
        <translation> hasta la fusión de {}</translation>
    </message>
    <message>
        <source>A battery heats a shorted wire until its insulation burns.</source>
        <translation>Una batería calienta un cable en cortocircuito hasta que arde su aislamiento.</translation>
    </message>
    <message>
        <source>Take out the wire that leads past the load, or put the load into the way.</source>
        <translation>Quite el cable que pasa por fuera de la carga, o intercale la carga en el camino.</translation>
    </message>
    <message>
        <source>Short across the supply</source>
        <translation>Cortocircuito en la alimentación</translation>
    </message>
    <message>
        <source>The diode inside {} stands the wrong way round: plus is on {}, and belongs on {}.</source>
        <translation>El diodo dentro de {} está al revés: el positivo está en {} y va en {}.</translation>
    </message>
    <message>
        <source>Exchange the coil wires of {}</source>
        <translation>Intercambiar los cables de la bobina de {}</translation>
    </message>
    <message>
        <source>{} across the winding stands the wrong way round: its anode is on plus.</source>
        <translation>{}, en paralelo con el devanado, está al revés: su ánodo está en el positivo.</translation>
    </message>
    <message>
        <source>Turn {} round.</source>
        <translation>Invierta {}.</translation>
    </message>
    <message>
        <source>Turn {} round</source>
        <translation>Invertir {}</translation>
    </message>
    <message>
        <source>It shorts the supply as soon as the winding is switched on: the diode or the switch burns.</source>
        <translation>Cortocircuita la alimentación en cuanto se conecta el devanado: se quema el diodo o el interruptor.</translation>
    </message>
    <message>
        <source>Suppression diode the wrong way round</source>
        <translation>Diodo de supresión al revés</translation>
    </message>
    <message>
        <source>The coil of {} has {} suppressions: {}{}.</source>
        <translation>La bobina de {} tiene {} supresiones: {}{}.</translation>
    </message>
    <message>
        <source>one built in, </source>
        <translation>una incorporada, </translation>
    </message>
    <message>
        <source>The slower one decides the release; the other is money and one more thing to fail.</source>
        <translation>La más lenta decide el desenganche; la otra cuesta dinero y es una cosa más que puede fallar.</translation>
    </message>
    <message>
        <source>Leave out {}.</source>
        <translation>Quite {}.</translation>
    </message>
    <message>
        <source>Coil suppressed twice</source>
        <translation>Bobina con doble supresión</translation>
    </message>
    <message>
        <source>Move {} to the booster</source>
        <translation>Mover {} al servofreno</translation>
    </message>
    <message>
        <source>Connect {} between check valve and booster, with a tee.</source>
        <translation>Conecte {} entre la válvula antirretorno y el servofreno, con una te.</translation>
    </message>
    <message>
        <source>Change the hoses so that the check valve lies between pump and switch.</source>
        <translation>Cambie las mangueras de modo que la válvula antirretorno quede entre la bomba y el vacuostato.</translation>
    </message>
    <message>
        <source>{} senses the pump's side of the check valve, not the booster's.</source>
        <translation>{} mide en el lado de la bomba de la válvula antirretorno, no en el del servofreno.</translation>
    </message>
    <message>
        <source>That side loses its vacuum as soon as the pump stops: the pump starts again and again, and the switch knows nothing of the booster.</source>
        <translation>Ese lado pierde el vacío en cuanto se para la bomba: la bomba arranca una y otra vez, y el vacuostato no sabe nada del servofreno.</translation>
    </message>
    <message>
        <source>Vacuum switch on the wrong side of the check valve</source>
        <translation>Vacuostato en el lado equivocado de la válvula antirretorno</translation>
    </message>
    <message>
        <source>a motor</source>
        <translation>un motor</translation>
    </message>
    <message>
        <source>a filament lamp</source>
        <translation>una lámpara de filamento</translation>
    </message>
    <message>
        <source>a coil</source>
        <translation>una bobina</translation>
    </message>
    <message>
        <source>electronics</source>
        <translation>electrónica</translation>
    </message>
    <message>
        <source>a resistive load</source>
        <translation>una carga resistiva</translation>
    </message>
    <message>
        <source>Join {} in a splice, and lead one wire of {} from there to {}.</source>
        <translation>Junte {} en un empalme y lleve desde ahí un solo cable de {} a {}.</translation>
    </message>
    <message>
        <source>Add a splice at {}</source>
        <translation>Añadir un empalme en {}</translation>
    </message>
    <message>
        <source>Put some of the wires on another terminal of the same line than {}.</source>
        <translation>Ponga algunos de los cables en otro borne de la misma línea, distinto de {}.</translation>
    </message>
    <message>
        <source>{} wire ends are on {}, which takes {}: {}.</source>
        <translation>Hay {} extremos de cable en {}, que admite {}: {}.</translation>
    </message>
    <message>
        <source>Too many wires in one crimp or under one screw work loose, and a loose joint gets hot.</source>
        <translation>Demasiados cables en un engaste o bajo un tornillo se aflojan, y una unión floja se calienta.</translation>
    </message>
    <message>
        <source>Terminal with more wires than it takes</source>
        <translation>Borne con más cables de los que admite</translation>
    </message>
    <message>
        <source>makes a single shot: the pump stops after the set time, however low the vacuum still is</source>
        <translation>da un solo impulso: la bomba se para tras el tiempo ajustado, por bajo que siga el vacío</translation>
    </message>
    <message>
        <source>delays on make: the pump starts late, and not at all for a shorter signal</source>
        <translation>retarda la conexión: la bomba arranca tarde, y con una señal más corta no arranca</translation>
    </message>
    <message>
        <source>ignores a new signal during its delay: the run-on may end too early</source>
        <translation>ignora una señal nueva durante su retardo: la marcha residual puede acabar demasiado pronto</translation>
    </message>
    <message>
        <source>Let a new signal start the time of {} anew.</source>
        <translation>Haga que una señal nueva reinicie el tiempo de {}.</translation>
    </message>
    <message>
        <source>Let {} start anew</source>
        <translation>Hacer que {} se reinicie</translation>
    </message>
    <message>
        <source>Set {} to delay on release.</source>
        <translation>Ponga {} en retardo a la desconexión.</translation>
    </message>
    <message>
        <source>Set {} to delay on release</source>
        <translation>Poner {} en retardo a la desconexión</translation>
    </message>
    <message>
        <source>{} commands the pump and {}.</source>
        <translation>{} manda la bomba y {}.</translation>
    </message>
    <message>
        <source>The run-on of a pump must start at once and begin anew with the last end of the signal.</source>
        <translation>La marcha residual de una bomba debe empezar enseguida, y de nuevo con el último fin de la señal.</translation>
    </message>
    <message>
        <source>Timer cannot do what the pump needs</source>
        <translation>El temporizador no puede hacer lo que la bomba necesita</translation>
    </message>
    <message>
        <source>IEC 60050-445-01-04, off-delay with control signal; retriggerable: common practice, no published source</source>
        <translation>IEC 60050-445-01-04, retardo a la desconexión con señal de mando; redisparable: práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>Put a fuse of {} into {} at {}.</source>
        <translation>Ponga un fusible de {} en {}, junto a {}.</translation>
    </message>
    <message>
        <source>Add a fuse to {}</source>
        <translation>Añadir un fusible en {}</translation>
    </message>
    <message>
        <source>{} leads from {} to {} without a fuse.</source>
        <translation>{} va de {} a {} sin fusible.</translation>
    </message>
    <message>
        <source>When this wire chafes through, the battery feeds the short until something burns.</source>
        <translation>Si el roce pela este cable, la batería alimenta el cortocircuito hasta que algo arde.</translation>
    </message>
    <message>
        <source>Supply lead without a fuse</source>
        <translation>Cable de alimentación sin fusible</translation>
    </message>
    <message>
        <source>Lay larger wires to {}</source>
        <translation>Tender cables más gruesos hasta {}</translation>
    </message>
    <message>
        <source>Shorten the wires to {}.</source>
        <translation>Acorte los cables hasta {}.</translation>
    </message>
    <message>
        <source>{} loses {} of {} on the way to and from it ({}), {}.</source>
        <translation>{} pierde {} de {} en la ida y la vuelta ({}), {}.</translation>
    </message>
    <message>
        <source>running in the drive</source>
        <translation>en funcionamiento durante la marcha</translation>
    </message>
    <message>
        <source>by the nameplates, in the wires alone</source>
        <translation>según las placas de datos, solo en los cables</translation>
    </message>
    <message>
        <source>A pump on low voltage runs slowly and takes longer to restore the vacuum.</source>
        <translation>Una bomba con tensión baja gira despacio y tarda más en restablecer el vacío.</translation>
    </message>
    <message>
        <source>Voltage drop in feed and return</source>
        <translation>Caída de tensión en la ida y el retorno</translation>
    </message>
    <message>
        <source>ABYC E-11: 10 % for circuits that are not critical; set in the project's limits</source>
        <translation>ABYC E-11: 10 % para circuitos no críticos; fijado en los límites del proyecto</translation>
    </message>
    <message>
        <source>While {} starts with {}, {} are lost in wires and fuse; {} are usual at most.</source>
        <translation>Mientras {} arranca con {}, se pierden {} en cables y fusible; lo habitual son {} como máximo.</translation>
    </message>
    <message>
        <source>The motor starts slowly, and a relay on the same wires may drop out and chatter.</source>
        <translation>El motor arranca despacio, y un relé en los mismos cables puede desengancharse y vibrar.</translation>
    </message>
    <message>
        <source>Voltage drop while the motor starts</source>
        <translation>Caída de tensión al arrancar el motor</translation>
    </message>
    <message>
        <source>Fit a smaller fuse as {}, or give {} one of its own at its start.</source>
        <translation>Ponga un fusible menor como {}, o dé a {} uno propio en su comienzo.</translation>
    </message>
    <message>
        <source>A short at the far end of {} draws {}; {} may take {} to open, but the wire stands it for {}.</source>
        <translation>Un cortocircuito en el extremo lejano de {} toma {}; {} puede tardar {} en abrir, pero el cable solo lo soporta {}.</translation>
    </message>
    <message>
        <source>for ever</source>
        <translation>un tiempo ilimitado</translation>
    </message>
    <message>
        <source>The wire burns before the fuse opens, and sets fire to what lies beside it.</source>
        <translation>El cable arde antes de que abra el fusible y prende fuego a lo que tiene al lado.</translation>
    </message>
    <message>
        <source>Wire burns before the fuse opens</source>
        <translation>El cable arde antes de que abra el fusible</translation>
    </message>
    <message>
        <source>IEC 60949, IEC 60364-5-54: I²t = k²S²; slow edge of blade fuses</source>
        <translation>IEC 60949, IEC 60364-5-54: I²t = k²S²; límite lento de los fusibles de cuchilla</translation>
    </message>
    <message>
        <source>Share the load between several circuits, or lay {} where it is cooler.</source>
        <translation>Reparta la carga entre varios circuitos, o tienda {} por donde haga menos calor.</translation>
    </message>
    <message>
        <source>{} of {} carries {} ({}); at {}{} it may carry {}.</source>
        <translation>{} de {} lleva {} ({}); a {}{} puede llevar {}.</translation>
    </message>
    <message>
        <source> in a bundle of {}</source>
        <translation> en un mazo de {}</translation>
    </message>
    <message>
        <source>A wire over its capacity gets hotter than its insulation stands.</source>
        <translation>Un cable por encima de su capacidad se calienta más de lo que soporta su aislamiento.</translation>
    </message>
    <message>
        <source>Wire over its current capacity</source>
        <translation>Cable por encima de su capacidad de corriente</translation>
    </message>
    <message>
        <source>33 CFR 183.425, table 5</source>
        <translation>33 CFR 183.425, tabla 5</translation>
    </message>
    <message>
        <source>Both ends of {} are on {}.</source>
        <translation>Los dos extremos de {} están en {}.</translation>
    </message>
    <message>
        <source>It joins nothing; most likely one end belongs elsewhere.</source>
        <translation>No une nada; lo más probable es que un extremo vaya en otro sitio.</translation>
    </message>
    <message>
        <source>Delete {}.</source>
        <translation>Borre {}.</translation>
    </message>
    <message>
        <source>Delete {}</source>
        <translation>Borrar {}</translation>
    </message>
    <message>
        <source>Put one end of {} where it belongs.</source>
        <translation>Ponga un extremo de {} donde le corresponde.</translation>
    </message>
    <message>
        <source>Wire joins a terminal to itself</source>
        <translation>Cable que une un borne consigo mismo</translation>
    </message>
    <message>
        <source>{} and {}</source>
        <translation>{} y {}</translation>
    </message>
    <message>
        <source>{}, {}</source>
        <translation>{}, {}</translation>
    </message>
    <message>
        <source> as soon as {} closes</source>
        <translation> en cuanto se cierra {}</translation>
    </message>
    <message>
        <source> as soon as {} close</source>
        <translation> en cuanto se cierran {}</translation>
    </message>
    <message>
        <source>in the drive at {}</source>
        <translation>en {} de la marcha</translation>
    </message>
    <message>
        <source>1 press</source>
        <translation>1 frenada</translation>
    </message>
    <message>
        <source>{} presses</source>
        <translation>{} frenadas</translation>
    </message>
    <message>
        <source>Closes at pedal force</source>
        <translation>Cierra con una fuerza en el pedal de</translation>
    </message>
    <message>
        <source>in the cabin</source>
        <translation>en el habitáculo</translation>
    </message>
    <message>
        <source>under the bonnet</source>
        <translation>bajo el capó</translation>
    </message>
    <message>
        <source>under the bonnet, near the engine</source>
        <translation>bajo el capó, cerca del motor</translation>
    </message>
    <message>
        <source>on the engine</source>
        <translation>en el motor</translation>
    </message>
    <message>
        <source>under the floor or in a wheel arch</source>
        <translation>bajo el piso o en un paso de rueda</translation>
    </message>
    <message>
        <source>Coil resistance (20 °C)</source>
        <translation>Resistencia de la bobina (20 °C)</translation>
    </message>
    <message>
        <source>Coil inductance</source>
        <translation>Inductancia de la bobina</translation>
    </message>
    <message>
        <source>Coil stray capacitance</source>
        <translation>Capacidad parásita de la bobina</translation>
    </message>
    <message>
        <source>Pulls in at (20 °C)</source>
        <translation>Se engancha a (20 °C)</translation>
    </message>
    <message>
        <source>Drops out at (20 °C)</source>
        <translation>Se desengancha a (20 °C)</translation>
    </message>
    <message>
        <source>Armature travel, in</source>
        <translation>Tiempo de recorrido de la armadura, al enganchar</translation>
    </message>
    <message>
        <source>Armature travel, out</source>
        <translation>Tiempo de recorrido de la armadura, al desenganchar</translation>
    </message>
    <message>
        <source>Make contact bounces for</source>
        <translation>El contacto de cierre rebota durante</translation>
    </message>
    <message>
        <source>Suppression resistor</source>
        <translation>Resistencia de supresión</translation>
    </message>
    <message>
        <source>Suppression Zener</source>
        <translation>Tensión Zener de supresión</translation>
    </message>
    <message>
        <source>Set time</source>
        <translation>Tiempo ajustado</translation>
    </message>
    <message>
        <source>Trigger on at</source>
        <translation>Disparo activo a</translation>
    </message>
    <message>
        <source>Trigger off at</source>
        <translation>Disparo inactivo a</translation>
    </message>
    <message>
        <source>Trigger input resistance</source>
        <translation>Resistencia de la entrada de disparo</translation>
    </message>
    <message>
        <source>Own current</source>
        <translation>Consumo propio</translation>
    </message>
    <message>
        <source>Works down to</source>
        <translation>Funciona desde</translation>
    </message>
    <message>
        <source>Inner relay's operate time</source>
        <translation>Tiempo de accionamiento del relé interno</translation>
    </message>
    <message>
        <source>Breakdowns, worst first</source>
        <translation>Averías, la peor primero</translation>
    </message>
    <message>
        <source>What fails</source>
        <translation>Qué falla</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>Qué resulta de ello</translation>
    </message>
    <message>
        <source>The driver notices</source>
        <translation>El conductor nota</translation>
    </message>
    <message>
        <source>Also</source>
        <translation>Además</translation>
    </message>
    <message>
        <source>Brakes are safety-critical: a fault in this circuit can cost lives.</source>
        <translation>Los frenos son críticos para la seguridad: un fallo en este circuito puede costar vidas.</translation>
    </message>
    <message>
        <source>The results of this program are estimates from the values entered; they prove nothing about a vehicle.</source>
        <translation>Los resultados de este programa son estimaciones a partir de los valores introducidos; no prueban nada sobre un vehículo.</translation>
    </message>
    <message>
        <source>Have the finished work inspected by a qualified person before the vehicle is driven.</source>
        <translation>Haga revisar el trabajo terminado por una persona cualificada antes de conducir el vehículo.</translation>
    </message>
    <message>
        <source>Local roadworthiness law decides whether the vehicle may be used on the road.</source>
        <translation>La normativa local de circulación decide si el vehículo puede usarse en la vía pública.</translation>
    </message>
    <message>
        <source>Test with the vehicle stationary first, wheels chocked, before any test at low speed.</source>
        <translation>Pruebe primero con el vehículo parado y las ruedas calzadas, antes de cualquier prueba a baja velocidad.</translation>
    </message>
    <message>
        <source>Disconnect the battery before wiring, and connect it last.</source>
        <translation>Desconecte la batería antes de cablear y conéctela en último lugar.</translation>
    </message>
    <message>
        <source>Fitted values</source>
        <translation>Valores ajustados</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Ajustado</translation>
    </message>
    <message>
        <source>Standard error</source>
        <translation>Error estándar</translation>
    </message>
    <message>
        <source>of the value</source>
        <translation>del valor</translation>
    </message>
    <message>
        <source>Between log and simulation, root mean square</source>
        <translation>Entre registro y simulación, media cuadrática</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>The simulation does not meet {}: {} are left between them. Do not trust these values, whatever their errors: log a stretch in which nothing switches, start from nearer values, or fit others.</source>
        <translation>La simulación no coincide con {}: quedan {} entre ambas. No se fíe de estos valores, sean cuales sean sus errores: registre un tramo en el que nada conmute, parta de valores más cercanos o ajuste otros.</translation>
    </message>
    <message>
        <source>The log cannot tell {} and {} apart: one makes up for the other (correlation {}). Fit one of them, or log something else as well.</source>
        <translation>El registro no puede distinguir {} de {}: uno compensa al otro (correlación {}). Ajuste solo uno de ellos o registre algo más.</translation>
    </message>
    <message>
        <source>{} ended at the limit of what it may be: do not trust it.</source>
        <translation>{} acabó en el límite de lo que puede ser: no se fíe de él.</translation>
    </message>
    <message>
        <source>The log says nothing about {}: it stays as it was.</source>
        <translation>El registro no dice nada de {}: queda como estaba.</translation>
    </message>
    <message>
        <source>The search had not settled when its rounds were used up: start from nearer values.</source>
        <translation>La búsqueda no se había asentado al agotar sus vueltas: parta de valores más cercanos.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Rótulo</translation>
    </message>
    <message>
        <source>Catalogue entry</source>
        <translation>Entrada del catálogo</translation>
    </message>
    <message>
        <source>Values from</source>
        <translation>Origen de los valores</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Aislamiento</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Empieza</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Legal owner</source>
        <translation>Propietario legal</translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation>Número de identificación</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Fecha de emisión</translation>
    </message>
    <message>
        <source>Creator</source>
        <translation>Creado por</translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation>Aprobado por</translation>
    </message>
    <message>
        <source>Tolerances that matter most: rank correlations of {} cars, beyond chance from {} on</source>
        <translation>Tolerancias que más importan: correlaciones de rango de {} coches, más que azar a partir de {}</translation>
    </message>
    <message>
        <source>Tolerance of</source>
        <translation>Tolerancia de</translation>
    </message>
    <message>
        <source>with closings</source>
        <translation>con cierres</translation>
    </message>
    <message>
        <source>with assist</source>
        <translation>con asistencia</translation>
    </message>
    <message>
        <source>with vacuum</source>
        <translation>con vacío</translation>
    </message>
    <message>
        <source>none that stands out</source>
        <translation>ninguna que destaque</translation>
    </message>
    <message>
        <source>Shares</source>
        <translation>Fracciones</translation>
    </message>
    <message>
        <source>Cars</source>
        <translation>Coches</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Fracción</translation>
    </message>
    <message>
        <source>True share, 95 % sure</source>
        <translation>Fracción real, con certeza del 95 %</translation>
    </message>
    <message>
        <source>with a contact that chatters</source>
        <translation>con un contacto que vibra</translation>
    </message>
    <message>
        <source>with a press without full assist</source>
        <translation>con una frenada sin asistencia plena</translation>
    </message>
    <message>
        <source>Percentiles</source>
        <translation>Percentiles</translation>
    </message>
    <message>
        <source>Worst press of a car</source>
        <translation>Peor frenada de un coche</translation>
    </message>
    <message>
        <source>5 % have less</source>
        <translation>el 5 % tiene menos</translation>
    </message>
    <message>
        <source>half have less</source>
        <translation>la mitad tiene menos</translation>
    </message>
    <message>
        <source>95 % have less</source>
        <translation>el 95 % tiene menos</translation>
    </message>
    <message>
        <source>Lowest vacuum</source>
        <translation>Vacío mínimo</translation>
    </message>
    <message>
        <source>Assist, of what is asked for</source>
        <translation>Asistencia, de la que se pide</translation>
    </message>
    <message>
        <source>{}; good is {}</source>
        <translation>{}; bueno es {}</translation>
    </message>
    <message>
        <source>{}; good is {} or more</source>
        <translation>{}; bueno es {} o más</translation>
    </message>
    <message>
        <source>{}; good is {} or less</source>
        <translation>{}; bueno es {} o menos</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Thresholds of {}, found to {}</source>
        <translation>Umbrales de {}, hallados con {} de precisión</translation>
    </message>
    <message>
        <source>Threshold</source>
        <translation>Umbral</translation>
    </message>
    <message>
        <source>The study was ended before all were found.</source>
        <translation>El estudio terminó antes de hallarlos todos.</translation>
    </message>
    <message>
        <source>The result turns good nowhere between the points.</source>
        <translation>El resultado no se vuelve bueno en ningún lugar entre los puntos.</translation>
    </message>
    <message>
        <source>Good from {} up, not yet at {}.</source>
        <translation>Bueno desde {} hacia arriba, todavía no a {}.</translation>
    </message>
    <message>
        <source>Good from {} down, not yet at {}.</source>
        <translation>Bueno desde {} hacia abajo, todavía no a {}.</translation>
    </message>
    <message>
        <source>all alike</source>
        <translation>todos iguales</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>Idea</source>
        <translation>Idea</translation>
    </message>
    <message>
        <source>Added parts</source>
        <translation>Piezas añadidas</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Resultados</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Mejor</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Peor</translation>
    </message>
    <message>
        <source>armature pulls in</source>
        <translation>la armadura se engancha</translation>
    </message>
    <message>
        <source>armature lets go</source>
        <translation>la armadura se suelta</translation>
    </message>
    <message>
        <source>armature is back</source>
        <translation>la armadura ha vuelto</translation>
    </message>
    <message>
        <source>contacts close</source>
        <translation>los contactos cierran</translation>
    </message>
    <message>
        <source>contacts open</source>
        <translation>los contactos abren</translation>
    </message>
    <message>
        <source>vacuum chamber</source>
        <translation>cámara de vacío</translation>
    </message>
    <message>
        <source>pedal force</source>
        <translation>fuerza en el pedal</translation>
    </message>
    <message>
        <source>assist</source>
        <translation>asistencia</translation>
    </message>
    <message>
        <source>assist asked for</source>
        <translation>asistencia pedida</translation>
    </message>
    <message>
        <source>diaphragm travel</source>
        <translation>carrera del diafragma</translation>
    </message>
    <message>
        <source>line pressure</source>
        <translation>presión hidráulica</translation>
    </message>
    <message>
        <source>deceleration</source>
        <translation>deceleración</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>sounds</source>
        <translation>suena</translation>
    </message>
    <message>
        <source>+ where it is polarised</source>
        <translation>+ si está polarizado</translation>
    </message>
    <message>
        <source>− where it is polarised</source>
        <translation>− si está polarizado</translation>
    </message>
    <message>
        <source>charging current</source>
        <translation>corriente de carga</translation>
    </message>
    <message>
        <source>to the booster: air comes from here</source>
        <translation>al servofreno: de aquí viene el aire</translation>
    </message>
    <message>
        <source>to the pump: air leaves here</source>
        <translation>a la bomba: por aquí sale el aire</translation>
    </message>
    <message>
        <source>air flow</source>
        <translation>caudal de aire</translation>
    </message>
    <message>
        <source>anode</source>
        <translation>ánodo</translation>
    </message>
    <message>
        <source>cathode</source>
        <translation>cátodo</translation>
    </message>
    <message>
        <source>filament temperature</source>
        <translation>temperatura del filamento</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>encendida</translation>
    </message>
    <message>
        <source>towards the supply</source>
        <translation>hacia la alimentación</translation>
    </message>
    <message>
        <source>towards the load</source>
        <translation>hacia la carga</translation>
    </message>
    <message>
        <source>way to opening</source>
        <translation>avance hasta la apertura</translation>
    </message>
    <message>
        <source>to the vehicle body</source>
        <translation>a la carrocería</translation>
    </message>
    <message>
        <source>current into the body</source>
        <translation>corriente a la carrocería</translation>
    </message>
    <message>
        <source>contact</source>
        <translation>contacto</translation>
    </message>
    <message>
        <source>Give every {} its own reference</source>
        <translation>Dar a cada {} su propia referencia</translation>
    </message>
    <message>
        <source>current, anode to cathode</source>
        <translation>corriente, de ánodo a cátodo</translation>
    </message>
    <message>
        <source>one end</source>
        <translation>un extremo</translation>
    </message>
    <message>
        <source>other end</source>
        <translation>el otro extremo</translation>
    </message>
    <message>
        <source>{} {} are called {}.</source>
        <translation>{} {} se llaman {}.</translation>
    </message>
    <message>
        <source>1 {} has no reference.</source>
        <translation>1 {} no tiene referencia.</translation>
    </message>
    <message>
        <source>{} {} have no reference.</source>
        <translation>{} {} no tienen referencia.</translation>
    </message>
    <message>
        <source>On the wiring sheet nobody can tell which of them is meant.</source>
        <translation>En la hoja de cableado nadie puede saber a cuál se refiere.</translation>
    </message>
    <message>
        <source>Give them the next free references.</source>
        <translation>Asigne las siguientes referencias libres.</translation>
    </message>
    <message>
        <source>motor, plus</source>
        <translation>motor, positivo</translation>
    </message>
    <message>
        <source>motor, minus</source>
        <translation>motor, negativo</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>motor current</source>
        <translation>corriente del motor</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>velocidad de giro</translation>
    </message>
    <message>
        <source>coil, + side</source>
        <translation>bobina, lado +</translation>
    </message>
    <message>
        <source>coil, − side</source>
        <translation>bobina, lado −</translation>
    </message>
    <message>
        <source>contact, common</source>
        <translation>contacto, común</translation>
    </message>
    <message>
        <source>make contact</source>
        <translation>contacto de cierre</translation>
    </message>
    <message>
        <source>break contact</source>
        <translation>contacto de apertura</translation>
    </message>
    <message>
        <source>coil current</source>
        <translation>corriente de la bobina</translation>
    </message>
    <message>
        <source>coil voltage</source>
        <translation>tensión de la bobina</translation>
    </message>
    <message>
        <source>armature in</source>
        <translation>armadura enganchada</translation>
    </message>
    <message>
        <source>one port</source>
        <translation>una toma</translation>
    </message>
    <message>
        <source>other port, may stay closed</source>
        <translation>la otra toma, puede quedar cerrada</translation>
    </message>
    <message>
        <source>control, +</source>
        <translation>mando, +</translation>
    </message>
    <message>
        <source>control, −</source>
        <translation>mando, −</translation>
    </message>
    <message>
        <source>output, +</source>
        <translation>salida, +</translation>
    </message>
    <message>
        <source>output, −</source>
        <translation>salida, −</translation>
    </message>
    <message>
        <source>output on</source>
        <translation>salida activa</translation>
    </message>
    <message>
        <source>output current</source>
        <translation>corriente de salida</translation>
    </message>
    <message>
        <source>junction temperature</source>
        <translation>temperatura de la unión</translation>
    </message>
    <message>
        <source>where the wires meet</source>
        <translation>donde se unen los cables</translation>
    </message>
    <message>
        <source>positive pole</source>
        <translation>polo positivo</translation>
    </message>
    <message>
        <source>negative pole</source>
        <translation>polo negativo</translation>
    </message>
    <message>
        <source>current delivered</source>
        <translation>corriente entregada</translation>
    </message>
    <message>
        <source>run</source>
        <translation>paso recto</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>derivación</translation>
    </message>
    <message>
        <source>own supply, +</source>
        <translation>alimentación propia, +</translation>
    </message>
    <message>
        <source>own supply, −</source>
        <translation>alimentación propia, −</translation>
    </message>
    <message>
        <source>trigger, + starts</source>
        <translation>disparo, + inicia</translation>
    </message>
    <message>
        <source>delay left</source>
        <translation>retardo restante</translation>
    </message>
    <message>
        <source>conductor temperature</source>
        <translation>temperatura del conductor</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Price per metre</source>
        <translation>Precio por metro</translation>
    </message>
    <message>
        <source>Stands surroundings up to</source>
        <translation>Soporta un entorno de hasta</translation>
    </message>
    <message>
        <source>Cross-section</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Inner diameter</source>
        <translation>Diámetro interior</translation>
    </message>
    <message>
        <source>Equivalent hole of its leak</source>
        <translation>Orificio equivalente a su fuga</translation>
    </message>
    <message>
        <source>Tolerance, share of the value</source>
        <translation>Tolerancia, parte del valor</translation>
    </message>
    <message>
        <source>Ambient temperature</source>
        <translation>Temperatura ambiente</translation>
    </message>
    <message>
        <source>Voltage drop allowed</source>
        <translation>Caída de tensión admitida</translation>
    </message>
    <message>
        <source>Share of a fuse's rating carried for long</source>
        <translation>Parte de la corriente nominal de un fusible de forma continua</translation>
    </message>
    <message>
        <source>Lowest supply voltage</source>
        <translation>Tensión de alimentación mínima</translation>
    </message>
    <message>
        <source>Parked without charging for</source>
        <translation>Estacionado sin cargar durante</translation>
    </message>
    <message>
        <source>Driven in a year</source>
        <translation>Conducido en un año</translation>
    </message>
    <message>
        <source>Duration</source>
        <translation>Duración</translation>
    </message>
    <message>
        <source>Vacuum at the start</source>
        <translation>Vacío al principio</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Comienzo</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Held for</source>
        <translation>Mantenido durante</translation>
    </message>
    <message>
        <source>Pedal force</source>
        <translation>Fuerza en el pedal</translation>
    </message>
    <message>
        <source>Rise and fall</source>
        <translation>Subida y bajada</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Value when waived</source>
        <translation>Valor al aceptarlo</translation>
    </message>
    <message>
        <source>DANGER</source>
        <translation>PELIGRO</translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation>ADVERTENCIA</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>PRECAUCIÓN</translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation>AVISO</translation>
    </message>
    <message>
        <source>Diaphragm area</source>
        <translation>Superficie del diafragma</translation>
    </message>
    <message>
        <source>Vacuum chamber at rest</source>
        <translation>Cámara de vacío en reposo</translation>
    </message>
    <message>
        <source>Working chamber at rest</source>
        <translation>Cámara de trabajo en reposo</translation>
    </message>
    <message>
        <source>Longest travel</source>
        <translation>Carrera máxima</translation>
    </message>
    <message>
        <source>Output force that asks for full travel</source>
        <translation>Fuerza de salida que pide toda la carrera</translation>
    </message>
    <message>
        <source>Boost ratio</source>
        <translation>Relación de asistencia</translation>
    </message>
    <message>
        <source>Pedal ratio</source>
        <translation>Relación del pedal</translation>
    </message>
    <message>
        <source>Rod force at which assist sets in</source>
        <translation>Fuerza en la varilla a la que empieza la asistencia</translation>
    </message>
    <message>
        <source>Return spring at rest</source>
        <translation>Muelle de retorno en reposo</translation>
    </message>
    <message>
        <source>Return spring rate</source>
        <translation>Rigidez del muelle de retorno</translation>
    </message>
    <message>
        <source>Equivalent hole of an open valve</source>
        <translation>Orificio equivalente de una válvula abierta</translation>
    </message>
    <message>
        <source>Equivalent hole of all leaks</source>
        <translation>Orificio equivalente de todas las fugas</translation>
    </message>
    <message>
        <source>Walls bring gas back to ambient temperature in</source>
        <translation>Las paredes devuelven el gas a la temperatura ambiente en</translation>
    </message>
    <message>
        <source>Efficiency of booster and master cylinder</source>
        <translation>Rendimiento de servofreno y cilindro maestro</translation>
    </message>
    <message>
        <source>Master cylinder bore</source>
        <translation>Diámetro del cilindro maestro</translation>
    </message>
    <message>
        <source>Vehicle mass, kg</source>
        <translation>Masa del vehículo, kg</translation>
    </message>
    <message>
        <source>Braking force per line pressure</source>
        <translation>Fuerza de frenado por presión hidráulica</translation>
    </message>
    <message>
        <source>Deceleration that the road allows</source>
        <translation>Deceleración que permite la calzada</translation>
    </message>
    <message>
        <source>Brake booster with pedal</source>
        <translation>Servofreno con pedal</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Sounds from</source>
        <translation>Suena desde</translation>
    </message>
    <message>
        <source>Buzzer</source>
        <translation>Zumbador</translation>
    </message>
    <message>
        <source>Capacitance</source>
        <translation>Capacidad</translation>
    </message>
    <message>
        <source>Series resistance</source>
        <translation>Resistencia en serie</translation>
    </message>
    <message>
        <source>Working voltage</source>
        <translation>Tensión de trabajo</translation>
    </message>
    <message>
        <source>Polarised</source>
        <translation>Polarizado</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Capacitor</source>
        <translation>Condensador</translation>
    </message>
    <message>
        <source>Opens at a pressure difference of</source>
        <translation>Abre con una diferencia de presión de</translation>
    </message>
    <message>
        <source>Equivalent hole when open</source>
        <translation>Orificio equivalente, abierta</translation>
    </message>
    <message>
        <source>Equivalent hole when shut</source>
        <translation>Orificio equivalente, cerrada</translation>
    </message>
    <message>
        <source>Vacuum check valve</source>
        <translation>Válvula antirretorno de vacío</translation>
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
        <translation>105 °C (PVC resistente al calor)</translation>
    </message>
    <message>
        <source>125 °C (cross-linked polyethylene)</source>
        <translation>125 °C (polietileno reticulado)</translation>
    </message>
    <message>
        <source>Contact resistance</source>
        <translation>Resistencia de contacto</translation>
    </message>
    <message>
        <source>Continuous current of a pin</source>
        <translation>Corriente permanente de un pin</translation>
    </message>
    <message>
        <source>Ways</source>
        <translation>Vías</translation>
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
        <translation>Conector</translation>
    </message>
    <message>
        <source>Forward voltage at rated current</source>
        <translation>Tensión directa a la corriente nominal</translation>
    </message>
    <message>
        <source>Rated current</source>
        <translation>Corriente nominal</translation>
    </message>
    <message>
        <source>Surge current, 8 ms</source>
        <translation>Corriente de pico, 8 ms</translation>
    </message>
    <message>
        <source>Blocks up to</source>
        <translation>Bloquea hasta</translation>
    </message>
    <message>
        <source>Diode</source>
        <translation>Diodo</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Calibre</translation>
    </message>
    <message>
        <source>Breaking capacity</source>
        <translation>Poder de corte</translation>
    </message>
    <message>
        <source>Rated voltage</source>
        <translation>Tensión nominal</translation>
    </message>
    <message>
        <source>Type (ISO 8820-3)</source>
        <translation>Tipo (ISO 8820-3)</translation>
    </message>
    <message>
        <source>C, medium</source>
        <translation>C, mediano</translation>
    </message>
    <message>
        <source>F, small</source>
        <translation>F, pequeño</translation>
    </message>
    <message>
        <source>E, high current</source>
        <translation>E, alta corriente</translation>
    </message>
    <message>
        <source>Opens at</source>
        <translation>Abre en</translation>
    </message>
    <message>
        <source>middle of the published band</source>
        <translation>el centro de la banda publicada</translation>
    </message>
    <message>
        <source>fast edge</source>
        <translation>el límite rápido</translation>
    </message>
    <message>
        <source>slow edge</source>
        <translation>el límite lento</translation>
    </message>
    <message>
        <source>fuse opens</source>
        <translation>el fusible abre</translation>
    </message>
    <message>
        <source>Fuse</source>
        <translation>Fusible</translation>
    </message>
    <message>
        <source>Ground point</source>
        <translation>Punto de masa</translation>
    </message>
    <message>
        <source>At the start</source>
        <translation>Al principio</translation>
    </message>
    <message>
        <source>off</source>
        <translation>apagado</translation>
    </message>
    <message>
        <source>on</source>
        <translation>encendido</translation>
    </message>
    <message>
        <source>Hand switch</source>
        <translation>Interruptor manual</translation>
    </message>
    <message>
        <source>Rated power</source>
        <translation>Potencia nominal</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>filament</source>
        <translation>filamento</translation>
    </message>
    <message>
        <source>LED</source>
        <translation>LED</translation>
    </message>
    <message>
        <source>Lamp</source>
        <translation>Lámpara</translation>
    </message>
    <message>
        <source>Pedal switch</source>
        <translation>Interruptor de pedal</translation>
    </message>
    <message>
        <source>Motor: armature and brushes</source>
        <translation>Motor: inducido y escobillas</translation>
    </message>
    <message>
        <source>Motor: armature</source>
        <translation>Motor: inducido</translation>
    </message>
    <message>
        <source>Motor constant</source>
        <translation>Constante del motor</translation>
    </message>
    <message>
        <source>Rotor and vanes</source>
        <translation>Rotor y paletas</translation>
    </message>
    <message>
        <source>Friction</source>
        <translation>Rozamiento</translation>
    </message>
    <message>
        <source>Friction that grows with speed, N·m·s</source>
        <translation>Rozamiento que crece con la velocidad, N·m·s</translation>
    </message>
    <message>
        <source>Volume flow at rated speed</source>
        <translation>Caudal volumétrico a la velocidad nominal</translation>
    </message>
    <message>
        <source>Rated speed</source>
        <translation>Velocidad nominal</translation>
    </message>
    <message>
        <source>Lowest pressure, share of ambient</source>
        <translation>Presión mínima, fracción de la ambiente</translation>
    </message>
    <message>
        <source>Volume at the inlet</source>
        <translation>Volumen en la entrada</translation>
    </message>
    <message>
        <source>Equivalent hole at standstill</source>
        <translation>Orificio equivalente con la bomba parada</translation>
    </message>
    <message>
        <source>Pulsation of the flow</source>
        <translation>Pulsación del caudal</translation>
    </message>
    <message>
        <source>Running current, stated</source>
        <translation>Corriente de marcha, indicada</translation>
    </message>
    <message>
        <source>Inrush current, stated</source>
        <translation>Corriente de arranque, indicada</translation>
    </message>
    <message>
        <source>Lowest pressure may be worse by</source>
        <translation>La presión mínima puede ser peor en</translation>
    </message>
    <message>
        <source>Rated duty, of ten minutes</source>
        <translation>Factor de marcha nominal, en diez minutos</translation>
    </message>
    <message>
        <source>Starts in an hour</source>
        <translation>Arranques por hora</translation>
    </message>
    <message>
        <source>Vacuum pump</source>
        <translation>Bomba de vacío</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Contactos</translation>
    </message>
    <message>
        <source>make</source>
        <translation>de cierre</translation>
    </message>
    <message>
        <source>changeover</source>
        <translation>conmutado</translation>
    </message>
    <message>
        <source>Across the coil</source>
        <translation>En paralelo con la bobina</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>diode</source>
        <translation>diodo</translation>
    </message>
    <message>
        <source>resistor</source>
        <translation>resistencia</translation>
    </message>
    <message>
        <source>diode and Zener</source>
        <translation>diodo y Zener</translation>
    </message>
    <message>
        <source>Relay</source>
        <translation>Relé</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Wall brings gas back to ambient temperature in</source>
        <translation>La pared devuelve el gas a la temperatura ambiente en</translation>
    </message>
    <message>
        <source>Vacuum reservoir</source>
        <translation>Depósito de vacío</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Resistencia</translation>
    </message>
    <message>
        <source>Resistor</source>
        <translation>Resistencia</translation>
    </message>
    <message>
        <source>Share for a resistive load</source>
        <translation>Fracción para una carga resistiva</translation>
    </message>
    <message>
        <source>Share for a motor or coil</source>
        <translation>Fracción para un motor o una bobina</translation>
    </message>
    <message>
        <source>On-resistance (25 °C)</source>
        <translation>Resistencia en conducción (25 °C)</translation>
    </message>
    <message>
        <source>Leakage when off</source>
        <translation>Corriente de fuga en bloqueo</translation>
    </message>
    <message>
        <source>Output breaks down at</source>
        <translation>Ruptura de la salida a</translation>
    </message>
    <message>
        <source>Input on at</source>
        <translation>Entrada activa a</translation>
    </message>
    <message>
        <source>Input off at</source>
        <translation>Entrada inactiva a</translation>
    </message>
    <message>
        <source>Input current</source>
        <translation>Corriente de entrada</translation>
    </message>
    <message>
        <source>Junction to surroundings</source>
        <translation>De la unión al entorno</translation>
    </message>
    <message>
        <source>Heat capacity</source>
        <translation>Capacidad térmica</translation>
    </message>
    <message>
        <source>output conducts</source>
        <translation>la salida conduce</translation>
    </message>
    <message>
        <source>output blocks</source>
        <translation>la salida bloquea</translation>
    </message>
    <message>
        <source>Solid-state relay</source>
        <translation>Relé de estado sólido</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Empalme</translation>
    </message>
    <message>
        <source>State of charge at the start</source>
        <translation>Estado de carga al principio</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Capacidad</translation>
    </message>
    <message>
        <source>Internal resistance</source>
        <translation>Resistencia interna</translation>
    </message>
    <message>
        <source>Charging voltage</source>
        <translation>Tensión de carga</translation>
    </message>
    <message>
        <source>Charging current limit</source>
        <translation>Límite de la corriente de carga</translation>
    </message>
    <message>
        <source>Charging lead resistance</source>
        <translation>Resistencia del cable de carga</translation>
    </message>
    <message>
        <source>Cranking current of the engine, at 10 V</source>
        <translation>Corriente de arranque del motor, a 10 V</translation>
    </message>
    <message>
        <source>The engine is cranked for</source>
        <translation>El arranque del motor dura</translation>
    </message>
    <message>
        <source>The vehicle's other consumption</source>
        <translation>Otros consumos del vehículo</translation>
    </message>
    <message>
        <source>Charged by</source>
        <translation>Cargada por</translation>
    </message>
    <message>
        <source>alternator</source>
        <translation>alternador</translation>
    </message>
    <message>
        <source>traction converter</source>
        <translation>convertidor de tracción</translation>
    </message>
    <message>
        <source>cranking begins</source>
        <translation>empieza el arranque del motor</translation>
    </message>
    <message>
        <source>cranking ends</source>
        <translation>termina el arranque del motor</translation>
    </message>
    <message>
        <source>charging begins</source>
        <translation>empieza la carga</translation>
    </message>
    <message>
        <source>charging ends</source>
        <translation>termina la carga</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>Volume inside</source>
        <translation>Volumen interior</translation>
    </message>
    <message>
        <source>Hose tee</source>
        <translation>Te de manguera</translation>
    </message>
    <message>
        <source>Function (IEC 61812-1)</source>
        <translation>Función (IEC 61812-1)</translation>
    </message>
    <message>
        <source>delay on release</source>
        <translation>retardo a la desconexión</translation>
    </message>
    <message>
        <source>single shot</source>
        <translation>impulso único</translation>
    </message>
    <message>
        <source>delay on make</source>
        <translation>retardo a la conexión</translation>
    </message>
    <message>
        <source>New trigger during the delay</source>
        <translation>Nuevo disparo durante el retardo</translation>
    </message>
    <message>
        <source>starts the time anew</source>
        <translation>reinicia el tiempo</translation>
    </message>
    <message>
        <source>is ignored</source>
        <translation>se ignora</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Temporizador</translation>
    </message>
    <message>
        <source>Closes when vacuum falls to</source>
        <translation>Cierra cuando el vacío baja a</translation>
    </message>
    <message>
        <source>Opens this much above</source>
        <translation>Diferencial hasta la apertura</translation>
    </message>
    <message>
        <source>vacuum switch closes</source>
        <translation>el vacuostato cierra</translation>
    </message>
    <message>
        <source>vacuum switch opens</source>
        <translation>el vacuostato abre</translation>
    </message>
    <message>
        <source>Vacuum switch</source>
        <translation>Vacuostato</translation>
    </message>
    <message>
        <source>Zener voltage</source>
        <translation>Tensión Zener</translation>
    </message>
    <message>
        <source>Resistance while it holds</source>
        <translation>Resistencia mientras limita</translation>
    </message>
    <message>
        <source>Zener diode</source>
        <translation>Diodo Zener</translation>
    </message>
    <message>
        <source>{} opens in time, no wire is harmed</source>
        <translation>{} abre a tiempo, ningún cable sufre daño</translation>
    </message>
    <message>
        <source>{} opens</source>
        <translation>{} abre</translation>
    </message>
    <message>
        <source>{} too hot for the insulation</source>
        <translation>{} demasiado caliente para el aislamiento</translation>
    </message>
    <message>
        <source>{} out of action</source>
        <translation>{} fuera de servicio</translation>
    </message>
    <message>
        <source>the drive stopped: {}</source>
        <translation>la marcha se detuvo: {}</translation>
    </message>
    <message>
        <source>the drive stopped</source>
        <translation>la marcha se detuvo</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bueno</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>assist lost without warning</source>
        <translation>asistencia perdida sin aviso</translation>
    </message>
    <message>
        <source>wire overheats</source>
        <translation>un cable se sobrecalienta</translation>
    </message>
    <message>
        <source>assist lost after a warning</source>
        <translation>asistencia perdida tras un aviso</translation>
    </message>
    <message>
        <source>noticed, assist stays</source>
        <translation>se nota, la asistencia se mantiene</translation>
    </message>
    <message>
        <source>not noticed, assist stays</source>
        <translation>no se nota, la asistencia se mantiene</translation>
    </message>
    <message>
        <source>City</source>
        <translation>Ciudad</translation>
    </message>
    <message>
        <source>Highway</source>
        <translation>Autopista</translation>
    </message>
    <message>
        <source>Mountain descent</source>
        <translation>Descenso de montaña</translation>
    </message>
    <message>
        <source>Car park</source>
        <translation>Aparcamiento</translation>
    </message>
    <message>
        <source>Contacts chatter</source>
        <translation>Los contactos vibran</translation>
    </message>
    <message>
        <source>Closings in 2 s, most</source>
        <translation>Cierres en 2 s, máximo</translation>
    </message>
    <message>
        <source>Presses without full assist</source>
        <translation>Frenadas sin asistencia plena</translation>
    </message>
    <message>
        <source>Assist of the worst press, of what it asks for</source>
        <translation>Asistencia de la peor frenada, de la que pide</translation>
    </message>
    <message>
        <source>Lowest vacuum in a press</source>
        <translation>Vacío mínimo en una frenada</translation>
    </message>
    <message>
        <source>Reserve, presses</source>
        <translation>Reserva, frenadas</translation>
    </message>
    <message>
        <source>Pump starts</source>
        <translation>Arranques de la bomba</translation>
    </message>
    <message>
        <source>Pump runs for</source>
        <translation>La bomba funciona durante</translation>
    </message>
    <message>
        <source>Findings: DANGER</source>
        <translation>Hallazgos: PELIGRO</translation>
    </message>
    <message>
        <source>Lead-acid battery 45 Ah</source>
        <translation>Batería de plomo 45 Ah</translation>
    </message>
    <message>
        <source>Lead-acid battery 60 Ah</source>
        <translation>Batería de plomo 60 Ah</translation>
    </message>
    <message>
        <source>Lead-acid battery 60 Ah with alternator 70 A</source>
        <translation>Batería de plomo 60 Ah con alternador 70 A</translation>
    </message>
    <message>
        <source>Lead-acid battery 45 Ah with DC-DC converter 40 A</source>
        <translation>Batería de plomo 45 Ah con convertidor CC-CC 40 A</translation>
    </message>
    <message>
        <source>Ground point: M6 bolt on bare metal with toothed washer</source>
        <translation>Punto de masa: perno M6 sobre metal desnudo con arandela dentada</translation>
    </message>
    <message>
        <source>Ground bar, 6 bolts, on the vehicle body</source>
        <translation>Barra de masa, 6 pernos, en la carrocería</translation>
    </message>
    <message>
        <source>Blade fuse 3 A with holder</source>
        <translation>Fusible de cuchilla 3 A con portafusible</translation>
    </message>
    <message>
        <source>Blade fuse 5 A with holder</source>
        <translation>Fusible de cuchilla 5 A con portafusible</translation>
    </message>
    <message>
        <source>Blade fuse 7.5 A with holder</source>
        <translation>Fusible de cuchilla 7.5 A con portafusible</translation>
    </message>
    <message>
        <source>Blade fuse 10 A with holder</source>
        <translation>Fusible de cuchilla 10 A con portafusible</translation>
    </message>
    <message>
        <source>Blade fuse 15 A with holder</source>
        <translation>Fusible de cuchilla 15 A con portafusible</translation>
    </message>
    <message>
        <source>Blade fuse 20 A with holder</source>
        <translation>Fusible de cuchilla 20 A con portafusible</translation>
    </message>
    <message>
        <source>Blade fuse 25 A with holder</source>
        <translation>Fusible de cuchilla 25 A con portafusible</translation>
    </message>
    <message>
        <source>Blade fuse 30 A with holder</source>
        <translation>Fusible de cuchilla 30 A con portafusible</translation>
    </message>
    <message>
        <source>High-current blade fuse 40 A with holder</source>
        <translation>Fusible de cuchilla de alta corriente 40 A con portafusible</translation>
    </message>
    <message>
        <source>High-current blade fuse 60 A with holder</source>
        <translation>Fusible de cuchilla de alta corriente 60 A con portafusible</translation>
    </message>
    <message>
        <source>Toggle switch 10 A</source>
        <translation>Interruptor de palanca 10 A</translation>
    </message>
    <message>
        <source>Rocker switch 20 A</source>
        <translation>Interruptor basculante 20 A</translation>
    </message>
    <message>
        <source>Ignition switch, terminal 15</source>
        <translation>Interruptor de encendido, borne 15</translation>
    </message>
    <message>
        <source>Brake lamp switch</source>
        <translation>Interruptor de luz de freno</translation>
    </message>
    <message>
        <source>Vacuum switch, 50 kPa, differential 1 kPa</source>
        <translation>Vacuostato, 50 kPa, diferencial 1 kPa</translation>
    </message>
    <message>
        <source>Vacuum switch, 50 kPa, differential 7 kPa</source>
        <translation>Vacuostato, 50 kPa, diferencial 7 kPa</translation>
    </message>
    <message>
        <source>Vacuum switch, adjustable, differential 4 kPa</source>
        <translation>Vacuostato regulable, diferencial 4 kPa</translation>
    </message>
    <message>
        <source>Vacuum warning switch, 35 kPa</source>
        <translation>Vacuostato de aviso, 35 kPa</translation>
    </message>
    <message>
        <source>Timer, delay on release, retriggerable, contact 5 A</source>
        <translation>Temporizador, retardo a la desconexión, redisparable, contacto 5 A</translation>
    </message>
    <message>
        <source>Timer, delay on release, retriggerable, contact 10 A</source>
        <translation>Temporizador, retardo a la desconexión, redisparable, contacto 10 A</translation>
    </message>
    <message>
        <source>Run-on relay, delay on release, retriggerable, contact 20 A</source>
        <translation>Relé de marcha posterior, retardo a la desconexión, redisparable, contacto 20 A</translation>
    </message>
    <message>
        <source>Timer, single shot, contact 10 A</source>
        <translation>Temporizador, impulso único, contacto 10 A</translation>
    </message>
    <message>
        <source>Timer, delay on make, contact 10 A</source>
        <translation>Temporizador, retardo a la conexión, contacto 10 A</translation>
    </message>
    <message>
        <source>Relay 30 A, make contact</source>
        <translation>Relé 30 A, contacto de cierre</translation>
    </message>
    <message>
        <source>Relay 30 A, make contact, diode inside</source>
        <translation>Relé 30 A, contacto de cierre, con diodo interno</translation>
    </message>
    <message>
        <source>Relay 30 A, make contact, resistor 680 Ω inside</source>
        <translation>Relé 30 A, contacto de cierre, con resistencia interna de 680 Ω</translation>
    </message>
    <message>
        <source>Relay 40 A, changeover contact</source>
        <translation>Relé 40 A, contacto conmutado</translation>
    </message>
    <message>
        <source>Relay 40 A, changeover contact, diode inside</source>
        <translation>Relé 40 A, contacto conmutado, con diodo interno</translation>
    </message>
    <message>
        <source>Relay 40 A, changeover contact, resistor 680 Ω inside</source>
        <translation>Relé 40 A, contacto conmutado, con resistencia interna de 680 Ω</translation>
    </message>
    <message>
        <source>Relay 40 A, make contact, diode and Zener 24 V inside</source>
        <translation>Relé 40 A, contacto de cierre, con diodo y Zener de 24 V internos</translation>
    </message>
    <message>
        <source>Power relay 70 A, make contact, resistor 680 Ω inside</source>
        <translation>Relé de potencia 70 A, contacto de cierre, con resistencia interna de 680 Ω</translation>
    </message>
    <message>
        <source>Solid-state relay 25 A, DC</source>
        <translation>Relé de estado sólido 25 A, CC</translation>
    </message>
    <message>
        <source>Solid-state relay 60 A, DC</source>
        <translation>Relé de estado sólido 60 A, CC</translation>
    </message>
    <message>
        <source>Solid-state relay 100 A, DC</source>
        <translation>Relé de estado sólido 100 A, CC</translation>
    </message>
    <message>
        <source>Rectifier diode 1 A, 400 V</source>
        <translation>Diodo rectificador 1 A, 400 V</translation>
    </message>
    <message>
        <source>Rectifier diode 3 A, 400 V</source>
        <translation>Diodo rectificador 3 A, 400 V</translation>
    </message>
    <message>
        <source>Rectifier diode 6 A, 400 V</source>
        <translation>Diodo rectificador 6 A, 400 V</translation>
    </message>
    <message>
        <source>Zener diode 24 V, 5 W</source>
        <translation>Diodo Zener 24 V, 5 W</translation>
    </message>
    <message>
        <source>Zener diode 33 V, 5 W</source>
        <translation>Diodo Zener 33 V, 5 W</translation>
    </message>
    <message>
        <source>Electrolytic capacitor 470 µF, 35 V</source>
        <translation>Condensador electrolítico 470 µF, 35 V</translation>
    </message>
    <message>
        <source>Electrolytic capacitor 1000 µF, 35 V</source>
        <translation>Condensador electrolítico 1000 µF, 35 V</translation>
    </message>
    <message>
        <source>Electrolytic capacitor 4700 µF, 35 V</source>
        <translation>Condensador electrolítico 4700 µF, 35 V</translation>
    </message>
    <message>
        <source>Film capacitor 1 µF, 100 V</source>
        <translation>Condensador de película 1 µF, 100 V</translation>
    </message>
    <message>
        <source>Resistor 680 Ω, 0.5 W</source>
        <translation>Resistencia 680 Ω, 0.5 W</translation>
    </message>
    <message>
        <source>Resistor 330 Ω, 1 W</source>
        <translation>Resistencia 330 Ω, 1 W</translation>
    </message>
    <message>
        <source>Resistor 100 Ω, 5 W</source>
        <translation>Resistencia 100 Ω, 5 W</translation>
    </message>
    <message>
        <source>Vacuum pump, 5.5 A, 36 L/min</source>
        <translation>Bomba de vacío, 5.5 A, 36 L/min</translation>
    </message>
    <message>
        <source>Vacuum pump, 8.3 A, 54 L/min</source>
        <translation>Bomba de vacío, 8.3 A, 54 L/min</translation>
    </message>
    <message>
        <source>Filament lamp 5 W with socket</source>
        <translation>Lámpara de filamento 5 W con portalámparas</translation>
    </message>
    <message>
        <source>Filament lamp 21 W with socket</source>
        <translation>Lámpara de filamento 21 W con portalámparas</translation>
    </message>
    <message>
        <source>Warning lamp, LED, red</source>
        <translation>Testigo LED, rojo</translation>
    </message>
    <message>
        <source>Warning buzzer 12 V</source>
        <translation>Zumbador de aviso 12 V</translation>
    </message>
    <message>
        <source>Brake booster 7 in, single diaphragm, with master cylinder</source>
        <translation>Servofreno 7 in, un diafragma, con cilindro maestro</translation>
    </message>
    <message>
        <source>Brake booster 8 in, single diaphragm, with master cylinder</source>
        <translation>Servofreno 8 in, un diafragma, con cilindro maestro</translation>
    </message>
    <message>
        <source>Brake booster 9 in, single diaphragm, with master cylinder</source>
        <translation>Servofreno 9 in, un diafragma, con cilindro maestro</translation>
    </message>
    <message>
        <source>Vacuum reservoir 1 L</source>
        <translation>Depósito de vacío 1 L</translation>
    </message>
    <message>
        <source>Vacuum reservoir 2 L</source>
        <translation>Depósito de vacío 2 L</translation>
    </message>
    <message>
        <source>Vacuum reservoir 4 L</source>
        <translation>Depósito de vacío 4 L</translation>
    </message>
    <message>
        <source>Check valve for 9 mm hose</source>
        <translation>Válvula antirretorno para manguera de 9 mm</translation>
    </message>
    <message>
        <source>Check valve for the booster's port, with grommet</source>
        <translation>Válvula antirretorno para la toma del servofreno, con pasamuros</translation>
    </message>
    <message>
        <source>Hose tee 9 mm</source>
        <translation>Te de manguera 9 mm</translation>
    </message>
    <message>
        <source>Hose tee 9 mm with branch 4 mm</source>
        <translation>Te de manguera 9 mm con derivación de 4 mm</translation>
    </message>
    <message>
        <source>Crimp splice with adhesive heat-shrink sleeve</source>
        <translation>Empalme engastado con funda termorretráctil adhesiva</translation>
    </message>
    <message>
        <source>Sealed connector, 1 way</source>
        <translation>Conector estanco, 1 vía</translation>
    </message>
    <message>
        <source>Sealed connector, 2 ways</source>
        <translation>Conector estanco, 2 vías</translation>
    </message>
    <message>
        <source>Sealed connector, 3 ways</source>
        <translation>Conector estanco, 3 vías</translation>
    </message>
    <message>
        <source>Sealed connector, 4 ways</source>
        <translation>Conector estanco, 4 vías</translation>
    </message>
    <message>
        <source>Sealed connector, 6 ways</source>
        <translation>Conector estanco, 6 vías</translation>
    </message>
    <message>
        <source>Typical value; common practice, no published source.</source>
        <translation>Valor típico; práctica habitual, sin fuente publicada.</translation>
    </message>
    <message>
        <source>Price of the battery alone. Typical value; common practice, no published source.</source>
        <translation>Precio de la batería sola. Valor típico; práctica habitual, sin fuente publicada.</translation>
    </message>
    <message>
        <source>ISO 8820-3 type C: 32 V, 1000 A (value from memory of ISO 8820-3). Price: fuse and splash-proof holder.</source>
        <translation>ISO 8820-3 tipo C: 32 V, 1000 A (valor de memoria de ISO 8820-3). Precio: fusible y portafusible a prueba de salpicaduras.</translation>
    </message>
    <message>
        <source>ISO 8820-3 type E: 32 V, 1000 A (value from memory of ISO 8820-3). Price: fuse and holder.</source>
        <translation>ISO 8820-3 tipo E: 32 V, 1000 A (valor de memoria de ISO 8820-3). Precio: fusible y portafusible.</translation>
    </message>
    <message>
        <source>Shares of the rating that are left without a heat sink: common practice, no published source.</source>
        <translation>Partes de la corriente nominal que quedan sin disipador: práctica habitual, sin fuente publicada.</translation>
    </message>
    <message>
        <source>Running and inrush current, flow and lowest pressure of a small 12 V vane pump; common practice, no published source.</source>
        <translation>Corriente de marcha y de arranque, caudal y presión mínima de una pequeña bomba de paletas de 12 V; práctica habitual, sin fuente publicada.</translation>
    </message>
    <message>
        <source>The small pump with one and a half times the flow and torque; common practice, no published source.</source>
        <translation>La bomba pequeña con una vez y media el caudal y el par; práctica habitual, sin fuente publicada.</translation>
    </message>
    <message>
        <source>Area of the housing's nominal diameter; chambers in proportion to it; common practice, no published source.</source>
        <translation>Superficie del diámetro nominal de la carcasa; cámaras en proporción; práctica habitual, sin fuente publicada.</translation>
    </message>
    <message>
        <source>Price: splice and sleeve.</source>
        <translation>Precio: empalme y funda.</translation>
    </message>
</context>
</TS>

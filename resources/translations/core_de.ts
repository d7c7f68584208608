<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>core</name>
    <message>
        <source>With everything switched off, {} {} {}: {} in {}; {} may lose {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A battery that is drained below half starts no engine and ages fast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed {} over a contact of the ignition switch, after its fuse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State a shorter time between two charges, if the vehicle is never left longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Battery drained while parked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a resistor of {} before {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a resistor of {} into {}, before {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a resistor before {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The contact {}–{} of {} charges {} with {}, over {} in all; it may make {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An empty capacitor is a short for a moment: the small contact welds, and the load runs on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact charges a capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the contact's rating for making; I = V/R of the charge: physics</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the drive at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the nameplates of its loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} is plus and {} is minus: as {} leaves one under {}, the arc can reach the other, and plus lies on minus over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arc then draws the battery's current until the fuse opens or the relay has burnt out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch plus and minus with two relays, so that one opens before the other closes, instead of {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave {} of {} open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the wire off {}: what hangs on {} then runs out by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc can bridge a changeover contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least current of an arc: Bell System paper on arcing of contacts, 1953; 0.4 A for silver from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This circuit takes {} and the rest of the vehicle {}, {} together; {} is charged with {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the alternator or converter can't give comes out of the battery, until it is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit an alternator or converter for at least {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch off other consumers while the pump runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alternator or converter too weak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the source's charging current limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the leakage at {} off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a resistor of {} and {} beside the coil of {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switched off, the coil of {} still gets {} over {}; it lets go for certain below {}, 90 % of its drop-out current.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A relay that has once pulled in stays in: the pump does not stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {} off what switches the coil, or put a relay between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relay may not drop out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With {} of supply the coil of {} gets {}; hot, at {}, it needs {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hot relay that has dropped out does not pull in again while the supply is low.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a relay that pulls in at less as {}, or fit it where it is cooler.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relay may not pull in when hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.3; lowest supply set in the project's limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a resistor of about 680 Ω across {}'s coil: its current may have either direction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a relay with a built-in diode as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build a diode into {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a diode across the coil, cathode to {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a diode across {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by I·√(L/C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by I·√(L/C), as far as the opening gap stands it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is switched off without suppression: its coil makes a spike of {} ({}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is switched off without suppression: its coil makes a spike of {} ({}); with the supply that makes {} across {}, which stands {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The output breaks down at every switch-off; in the end it fails closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spike burns the contact that switches the coil and can destroy electronics nearby.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil without suppression</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caltrans equipment electrical standards 8.1; spike: ISO 7637-2, pulse 1, or what the output stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The contact {}–{} of {} switches {}; below {} it does not stay clean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A power contact needs the small arc to burn off its film; without it fails now and then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a part with a contact for small loads as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a resistor beside the load draw what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load too small for the contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the contact's least current; 1 A for 40 to 70 A relays in their data sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a diode across {}, cathode to {}, so that its current does not go through the arc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let {} switch a relay whose contact may break {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> ({}, {})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The contact {}–{} of {} opens under {} ({}); with {} load{} it may break {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an inductive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a resistive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>FAA AC 43.13-1B, table 11-4: half the resistive rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arc at opening eats the contact; in the end it sticks or no longer closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact breaks too high a current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the contact's rating for breaking; kinds of load: IEC 60947-4-1 and IEC 60947-5-1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The contact {}–{} of {} carries {} ({}); it is rated for {}{}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, and good for {} at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An overloaded contact heats up, softens its housing and in the end fails closed or open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a part with a contact for at least {} as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact carries more than its rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the contact's rating; relays in heat: data sheet of a 70 A power relay; five seconds as continuous: common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a timer with delay on release hold the pump longer, so that it starts less often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a part with a longer electrical life or a larger contact as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The contact {}–{} of {} closes {} times in the drive, about {} times in a year of {}. Rated for {} operations at {}, it lasts about {} at {} ({}): {} years, of {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A worn contact welds or no longer closes: the pump runs on, or not at all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact worn out too soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the contact's rated operations; ten years, and how life goes with current: common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> into {}, {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The contact {}–{} of {} closes on an inrush of {}{} ({}); it may make {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A contact that bounces on too high an inrush welds, and the load runs on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a part that may make at least {} as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact closes on too high an inrush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the contact's rating for making; lamps: FAA AC 43.13-1B, table 11-4; kinds of load: IEC 60947-4-1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the pump's stop at {} the vacuum falls back by {} within {}; {} closes again after {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas that was pumped down fast warms up again and its pressure rises: the pump starts anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a timer with delay on release run the pump on after the switch has opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Differential smaller than the pressure's creep back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a relay with diode and zener inside as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build diode and zener into {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a zener of {} in a row with {}, anode to anode.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a zener to {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The diode across the coil of {} lets it go after {}, {} later than diode and zener would; its contact {}–{} then parts slowly under {}, of {} inductive that it may break.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The armature lets go with little force: the arc burns longer and the contact can stick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diode lets a relay open slowly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no published source; that it shortens contact life: coil-suppression application notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes as a surge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a larger diode as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a diode for {} as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a larger diode as {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} {} of the {} that it has to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} {} {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across a winding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A diode that fails closed shorts the supply as soon as the winding is fed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A diode that fails opens the feed, or lets current through both ways.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diode too small for its current or voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the diode's ratings; blocks three times the supply: relay contact protection in a card's manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the rest of the drive would show, chatter or a press without assist, is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the values and wires of the part that the message names.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drive not simulated to its end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {} {} long, in a sheath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A short right behind {} draws {}; the fuse interrupts {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fuse beyond its breaking capacity arcs on, bursts and sets fire to its holder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a fuse with a larger breaking capacity as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuse cannot interrupt the short-circuit current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fuse's breaking capacity, 1000 A for ISO 8820-3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {} to {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, at most 0.178 m of wire before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {} to the begin of {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheathe the lead to {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {} into a sheath all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of wire lie between {} and {}{}; {} are allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, in a sheath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing protects this piece of wire: when it chafes through, it burns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuse far from the source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>33 CFR 183.455(b)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuse of {} as {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {} in a gauge for {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay larger wires behind the fuse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is rated for {}, but {} behind it may carry only {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An overload that the fuse carries for ever burns the wire's insulation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share what {} feeds between several fuses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuse larger than the wire it protects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>33 CFR 183.455</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {} a fuse of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} may open after {} of {}, but {} takes that for about {} when it starts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fuse at the fast edge of its band opens without a fault, and the load is dead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuse may open on the inrush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fast edge of the opening times of blade fuses, data sheets to ISO 8820-3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a {}, and lay {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed {} over a fuse of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a fuse of {} into {}, so that {} has its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a fuse for {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} feeds {} and {} as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fault there opens the fuse, and with the lamp or horn the brake assist is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump shares its fuse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} opens in the drive at {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} carries {} for long ({}); {} of its rating is {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fuse that is loaded too highly opens some day without a fault, and the pump stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuse smaller than the load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>continuous share set in the project's limits; 80 %: common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} on the way back from {} has {}; no wire that feeds it is below {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way back carries the same current: there the voltage is lost and the wire warms.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {} in {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {} in {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground wire thinner than the feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} to {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a timer with delay on release bridge the gap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} holds {} for {}; in the drive at {} its command is gone for {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The capacitor costs a charge at every closing, and the relay chatters all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacitor holds for too short a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the gap in the drive; gaps up to two seconds: common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a part whose input goes on at less as {}, or feed it past what lies in a row with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With {} of supply the input {} of {} gets {}; to go on for certain it needs {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While the supply is low, as at a start or with lamps on, the pump is not commanded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Input may not go on at low supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the voltage at which the input goes on, and a tenth more: Caltrans equipment electrical standards 8.3; lowest supply set in the project's limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a relay instead of {} switch {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a resistor of {} from {} to {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off, {} still leaks {}: that leaves {} at the input {} of {}, which lets go below {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The input stays on, or comes on by itself when it is warm: the pump does not stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leakage keeps an input on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the voltage at which the input goes off, the output's leakage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} switches {} off, and the motor's {} find no way but through the semiconductor, which breaks down at {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every switch-off drives the semiconductor into breakdown; in the end it fails closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a diode across {}, cathode to {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motor on a semiconductor without a freewheel diode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No check valve lies between {} and {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the pump stops, air leaks back through it and the assist is gone in seconds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a check valve into the hose at {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a check valve at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No check valve before the booster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>49 CFR 393.50(b), text of earlier years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Current flows only where it can come back to the source: this part does nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A diode, semiconductor or capacitor bars the current through {} ({}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the part that stands the wrong way round, or bridge the capacitor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing feeds {} ({}): the circuit has no supply.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a supply and wire it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No current can flow from a supply through {} ({}) and back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire {} between a feed and ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No return path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lamp or buzzer tells the driver that {} has too little vacuum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loss of assist shows only when the pedal is hard: in the press that was needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed {} from the battery over a fuse and a contact of the ignition switch of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} feeds the pump or its control, and the warning {} as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fuse that stops the pump silences the warning of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No warning of low vacuum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no published source; the idea: California Vehicle Code 26521</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part with an open terminal does not work, or works only by chance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire {} of {} to where it belongs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete {} if it is not needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open terminal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>makes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breaks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} ({}–{})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} lie side by side: whichever closes first and opens last {} {} alone ({}), and one of them may no more than {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They share what they carry, not what they make and break: one welds, then the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose parts of which each {} {} alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the contacts switch the coil of one power relay, whose contact does all of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contacts in parallel count as one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rating of one contact; common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the pedal starts {}; no vacuum switch does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump begins when the assist is needed already, and fills up only while the foot is down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a vacuum switch at the booster start the pump as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the pedal starts the pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} stands the wrong way round: its plus is on the body.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} stands the wrong way round: plus is on {} and belongs on {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything gets the wrong polarity: electronics fail at once, diodes short it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part does not work that way round, and may burn or burst.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange the wires on {} and {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange the wires of {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part the wrong way round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a vacuum switch start the pump, so that the vacuum is there before the first press.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the set point of the vacuum switch, or fit a larger reservoir or pump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warn the driver of low vacuum with a lamp and a buzzer on a switch and fuse of their own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} of the drive {} full assist from {}; the worst, at {}, gets {} of the {} that it asks for ({}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} presses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lacks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without assist the pedal needs several times the force, and the vehicle stops later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press without assist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 press with assist is in store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} presses with assist are in store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With {} off while the vehicle rolls, {} is dead; {}, and the drive plan makes {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With {} off while the vehicle rolls, {} is dead; {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A key that is turned off too early, or an ignition switch that fails, takes the assist along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell the driver to keep {} on until the vehicle stands; write it on the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a larger reservoir, so that the presses after that have their vacuum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump dead with the key off while rolling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} runs for {} of the {} from {} on, a duty of {}; it is rated for {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump beyond its duty gets hotter than its windings stand, and then the assist is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for leaks; a tight system is pumped down once and kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a pump with a larger flow or for continuous duty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump beyond its duty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pump's rated duty in ten minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead {} over a contact of the ignition switch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put an ignition contact into {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a relay on the ignition switch feed the pump's circuit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is fed with every hand switch off: it draws {} whenever the vacuum is low.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a parked car the vacuum leaks away: the pump runs unwatched until the battery is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump fed with the key off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} runs for {} without a stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump without a pause overheats and wears out, and then the assist is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} {} opens at {}; the vacuum gets to {} only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for leaks; fit a pump with a better ultimate vacuum or a larger flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump never reaches the set point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Australian heavy-vehicle inspection criteria: full vacuum within 60 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a reservoir, so that a press takes less of the vacuum; look for leaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} starts {} times in an hour of this drive; it is rated for {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each start is an inrush: brushes, contacts and windings wear with every one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump starts too often</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pump's rated starts in an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay thicker or shorter wires to {} and back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the pump rest while the engine is cranked: feed its control from a contact that opens then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge or change the battery, and clean its terminals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} gets {} ({}); it works down to {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with {} at the battery, as in cranking or at full load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump that gets too little voltage stalls, and the vacuum is not made good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too little voltage at the pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pump's lowest voltage; ISO 16750-2, code D, for the lowest supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part beyond what it stands fails early: it melts, corrodes, or water shorts it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit {} in a cooler or drier place, or choose one that is made for {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} stands {}; {} it gets {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is {}; {} its second digit must be {} or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part not made for its place in the vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>IEC 60529 for the code; temperatures: common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wires</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference missing or given twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>IEC 81346-1: a reference designates one object; value from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the delay of {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the delay of {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a timer with delay on release hold the pump for about five seconds after the vacuum switch has opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} {} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contacts chatter: within {} from {} on close {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each closing takes the pump's inrush: the contact welds or burns out within weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relay chatter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let {} switch a relay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a power relay beside {}: {} switches its coil, and its contact the load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a warning lamp for low vacuum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a reservoir of {} at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put in {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put in {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the set point of the vacuum switch, so that more vacuum is in store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the pump dies at {}, {} has {} of {} with at least {} of the assist; {} are wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the pump dead, the stored vacuum must bring the vehicle to a stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few presses in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the project's limit; two to three assisted presses: common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: closes at {}, opens {} higher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the set point of {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} opens at {}; at {}, the highest of the drive plan, {} pump reaches {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a worn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump then never stops: it overheats, and one day the assist is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a pump with a lower ultimate pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set point out of the pump's reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ISO 2533 for the ambient pressure; the pump's ultimate pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} – {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} – minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} blown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} off the body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in every state</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a diode into {}, against the current that should not flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a diode into {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {} a ground of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {} a ground point of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Separate the two circuits: a contact of its own, or a relay, for each of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} gets {} {} by a path that does not command it: {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fault then does more than put something out: it turns something else on, or keeps it on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something comes on, or stays on, that nobody has turned on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} switches, relays and fuses that hang together have {} combinations; a sample of {} of them was looked at for unintended paths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A path that only some other combination opens is not found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check parts of the circuit as circuits of their own, or look through it by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fed by a path that does not command it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sneak analysis as ECSS-Q-TM-40-04 describes it, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a solid-state relay of at least {} as {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a solid-state relay of {} as {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} carries {} ({}); sold as {}, it is good for {} with {} load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An overheated semiconductor mostly fails closed: the load runs on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a power relay with a mechanical contact instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid-state relay beyond its derated current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit {} on a heat sink of {}, junction to surroundings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit {} on a heat sink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a solid-state relay with less on-resistance as {}, or fit it where it is cooler.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} carries {} ({}) over {} and gives the heat off over {}: its junction gets {}{} in surroundings of {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hotter and hotter, beyond </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid-state relay gets too hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>guide to the heat of solid-state relays: junctions to 115 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} lies under the symbol of {}, {} from clear paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} grid steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 grid step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever builds from the sheet does not see that wires meet there, or takes the part's terminal for the joint.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {} to the nearest clear place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice hidden under a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a diode of {} into the lead at {}, anode to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a diode at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange the wires on the poles of {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge {} before it is joined, or join the two over a switch that separates them at rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} and {} stand {}: about {} flow from one into the other{}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plus on minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side by side at different voltages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two batteries short each other until a wire burns or one of them bursts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weaker battery is charged without any limit: leads and battery get hot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two supplies against each other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a tenth of the ampere-hours as charging current: common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is short-circuited{}: about {} flow over {}{}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and no fuse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> until {} opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A battery heats a shorted wire until its insulation burns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out the wire that leads past the load, or put the load into the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short across the supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The diode inside {} stands the wrong way round: plus is on {}, and belongs on {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange the coil wires of {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} across the winding stands the wrong way round: its anode is on plus.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn {} round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn {} round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shorts the supply as soon as the winding is switched on: the diode or the switch burns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suppression diode the wrong way round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil of {} has {} suppressions: {}{}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one built in, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The slower one decides the release; the other is money and one more thing to fail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil suppressed twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {} to the booster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connect {} between check valve and booster, with a tee.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the hoses so that the check valve lies between pump and switch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} senses the pump's side of the check valve, not the booster's.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That side loses its vacuum as soon as the pump stops: the pump starts again and again, and the switch knows nothing of the booster.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vacuum switch on the wrong side of the check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a motor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a filament lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electronics</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a resistive load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join {} in a splice, and lead one wire of {} from there to {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a splice at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put some of the wires on another terminal of the same line than {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} wire ends are on {}, which takes {}: {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too many wires in one crimp or under one screw work loose, and a loose joint gets hot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Terminal with more wires than it takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>makes a single shot: the pump stops after the set time, however low the vacuum still is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delays on make: the pump starts late, and not at all for a shorter signal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ignores a new signal during its delay: the run-on may end too early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let a new signal start the time of {} anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let {} start anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set {} to delay on release.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set {} to delay on release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} commands the pump and {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run-on of a pump must start at once and begin anew with the last end of the signal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer cannot do what the pump needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>IEC 60050-445-01-04, off-delay with control signal; retriggerable: common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a fuse of {} into {} at {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a fuse to {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} leads from {} to {} without a fuse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When this wire chafes through, the battery feeds the short until something burns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply lead without a fuse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay larger wires to {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorten the wires to {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} loses {} of {} on the way to and from it ({}), {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>running in the drive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the nameplates, in the wires alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump on low voltage runs slowly and takes longer to restore the vacuum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage drop in feed and return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ABYC E-11: 10 % for circuits that are not critical; set in the project's limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While {} starts with {}, {} are lost in wires and fuse; {} are usual at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The motor starts slowly, and a relay on the same wires may drop out and chatter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage drop while the motor starts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a smaller fuse as {}, or give {} one of its own at its start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A short at the far end of {} draws {}; {} may take {} to open, but the wire stands it for {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for ever</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wire burns before the fuse opens, and sets fire to what lies beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire burns before the fuse opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>IEC 60949, IEC 60364-5-54: I²t = k²S²; slow edge of blade fuses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share the load between several circuits, or lay {} where it is cooler.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} carries {} ({}); at {}{} it may carry {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> in a bundle of {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wire over its capacity gets hotter than its insulation stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire over its current capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>33 CFR 183.425, table 5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both ends of {} are on {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It joins nothing; most likely one end belongs elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put one end of {} where it belongs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire joins a terminal to itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} and {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes at pedal force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the cabin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under the bonnet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under the bonnet, near the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under the floor or in a wheel arch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil resistance (20 °C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil inductance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil stray capacitance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulls in at (20 °C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drops out at (20 °C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Armature travel, in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Armature travel, out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make contact bounces for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suppression resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suppression Zener</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trigger on at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trigger off at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trigger input resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Works down to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inner relay's operate time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catalogue entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Legal owner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Creator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>armature pulls in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>armature lets go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>armature is back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contacts close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contacts open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vacuum chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pedal force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assist asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diaphragm travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deceleration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+ where it is polarised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>− where it is polarised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>charging current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the booster: air comes from here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the pump: air leaves here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cathode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filament temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>towards the supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>towards the load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>way to opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the vehicle body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>current into the body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give every {} its own reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>current, anode to cathode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} {} are called {}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 {} has no reference.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} {} have no reference.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the wiring sheet nobody can tell which of them is meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give them the next free references.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>motor, plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>motor, minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>motor current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil, + side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil, − side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contact, common</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>break contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>armature in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other port, may stay closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>control, +</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>control, −</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output, +</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output, −</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>junction temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the wires meet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>positive pole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>negative pole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>current delivered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>branch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own supply, +</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own supply, −</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trigger, + starts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delay left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conductor temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diaphragm area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vacuum chamber at rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working chamber at rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output force that asks for full travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boost ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pedal ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rod force at which assist sets in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return spring at rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return spring rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equivalent hole of an open valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equivalent hole of all leaks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walls bring gas back to ambient temperature in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Efficiency of booster and master cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Master cylinder bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vehicle mass, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Braking force per line pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deceleration that the road allows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brake booster with pedal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sounds from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buzzer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacitance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Series resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Polarised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens at a pressure difference of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equivalent hole when open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equivalent hole when shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vacuum check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>60 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>75 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>80 °C (PVC)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>90 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>105 °C (heat-resistant PVC)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>125 °C (cross-linked polyethylene)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Continuous current of a pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forward voltage at rated current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surge current, 8 ms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blocks up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breaking capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type (ISO 8820-3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C, medium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F, small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E, high current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle of the published band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fast edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slow edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuse opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand switch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filament</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pedal switch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motor: armature and brushes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motor: armature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motor constant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rotor and vanes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Friction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Friction that grows with speed, N·m·s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume flow at rated speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest pressure, share of ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume at the inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equivalent hole at standstill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulsation of the flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running current, stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inrush current, stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest pressure may be worse by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated duty, of ten minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starts in an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vacuum pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changeover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diode and Zener</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wall brings gas back to ambient temperature in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vacuum reservoir</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share for a resistive load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share for a motor or coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On-resistance (25 °C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leakage when off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output breaks down at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Input on at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Input off at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Input current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Junction to surroundings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output conducts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid-state relay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State of charge at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Internal resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charging voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charging current limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charging lead resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cranking current of the engine, at 10 V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine is cranked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vehicle's other consumption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charged by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alternator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>traction converter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cranking begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cranking ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>charging begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>charging ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose tee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Function (IEC 61812-1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delay on release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single shot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delay on make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New trigger during the delay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>starts the time anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is ignored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes when vacuum falls to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens this much above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vacuum switch closes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vacuum switch opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vacuum switch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zener voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistance while it holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zener diode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>City</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mountain descent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Car park</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contacts chatter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closings in 2 s, most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Presses without full assist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assist of the worst press, of what it asks for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest vacuum in a press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserve, presses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump starts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump runs for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings: DANGER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>

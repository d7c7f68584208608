#pragma once

#include "core/circuit/circuit.h"
#include "core/units/text.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

class PartKind;

// Edits that remedies offer. Names are what undo shows.

Edit valueEdit(const Circuit& circuit, const PartId& part, std::string_view key, double value, Text name);
Edit choiceEdit(const Circuit& circuit, const PartId& part, std::string_view key, std::string_view option,
                Text name);
/// Gives wires new conductor areas [m²].
Edit areaEdit(const Circuit& circuit, const std::map<WireId, double>& areas_m2, Text name);
/// Moves every wire on one terminal of a part to another one and the other way round.
Edit swapEdit(const Circuit& circuit, const PartId& part, const std::string& oneTerminal,
              const std::string& otherTerminal, Text name);
/// Adds a diode for a current [A], cathode to `plus`, anode to `minus`, with two short wires.
Edit diodeEdit(const Circuit& circuit, const End& plus, const End& minus, double current_A, Text name);
/// A new part of a kind with a free reference, on a free place near another one.
Part partBeside(const Circuit& circuit, const PartKind& kind, GridPoint near);
/// Cuts a wire close to one of its ends and puts a part there, its terminal `near` on the side of that end.
Edit insertEdit(const Circuit& circuit, const WireId& wire, const End& atEnd, Part part,
                const std::string& near, const std::string& far, Text name);
/// Cuts a wire close to one of its ends and puts a fuse there.
Edit fuseEdit(const Circuit& circuit, const WireId& wire, const End& atEnd, double rating_A, Text name);
/// Moves wires from a terminal to a splice beside it, which one short wire joins to the terminal.
Edit spliceEdit(const Circuit& circuit, const End& terminal, const std::vector<WireId>& moved,
                double shortWire_m2, Text name);
/// Puts a check valve into the hose at a pump's inlet, so that air leaves through the pump only. The inlet
/// has a hose.
Edit checkValveEdit(const Circuit& circuit, const End& inlet, Text name);
/// Takes a switch's hose off where it is, and joins it to a tee that is put into the hose at a booster's
/// port.
Edit movedHoseEdit(const Circuit& circuit, const End& sensor, const End& booster, Text name);

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <string>
#include <string_view>

namespace pumpwright {

/// Collects changes that belong together. Ids and references that it hands out are used neither in the
/// circuit nor by the changes before.
class EditDraft {
public:
    EditDraft(const Circuit& circuit, Text name);

    /// The circuit with the changes so far.
    const Circuit& circuit() const { return m_circuit; }

    /// Places a new part of this kind beside another.
    PartId add(const PartKind& kind, const PartId& beside, std::string_view label = {});
    void setValue(const PartId& part, std::string_view key, double value);
    void setChoice(const PartId& part, std::string_view key, std::string_view option);

    void addWire(End from, End to, double area_m2, double length_m, std::string_view colour = "BK");
    void addHose(End from, End to, double innerDiameter_m, double length_m);
    /// Lets everything that ends on `now` end on `next` instead.
    void moveWires(const End& now, const End& next);
    void moveHoses(const End& now, const End& next);
    void put(const WireId& id, Wire wire);

    Edit edit() &&;

private:
    void put(const PartId& id, Part part);
    void put(const HoseId& id, Hose hose);

    Circuit m_circuit;
    Edit m_edit;
};

/// A place near a part that no other part's origin takes.
GridPoint freePlace(const Circuit& circuit, GridPoint near);

} // namespace pumpwright

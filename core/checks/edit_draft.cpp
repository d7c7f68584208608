#include "core/checks/edit_draft.h"

#include <algorithm>
#include <cstdlib>
#include <vector>

namespace pumpwright {
namespace {

/// Ids of the connections that end there; they are changed afterwards.
template <class Id, class Connection>
std::vector<Id> endingOn(const std::map<Id, Connection>& connections, const End& end) {
    std::vector<Id> ids;
    for (const auto& [id, connection] : connections) {
        if (connection.from == end || connection.to == end) {
            ids.push_back(id);
        }
    }
    return ids;
}

template <class Connection>
Connection moved(Connection connection, const End& now, const End& next) {
    (connection.from == now ? connection.from : connection.to) = next;
    connection.bends.clear();
    connection.labelFrom.reset();
    return connection;
}

} // namespace

EditDraft::EditDraft(const Circuit& circuit, Text name) : m_circuit(circuit), m_edit{name.english(), {}} {}

PartId EditDraft::add(const PartKind& kind, const PartId& beside, std::string_view label) {
    const PartId id = freePartId(m_circuit);
    Part part = newPart(kind, freeReference(m_circuit, std::string(kind.letter())),
                        freePlace(m_circuit, m_circuit.parts.at(beside).at));
    part.label = label;
    put(id, std::move(part));
    return id;
}

void EditDraft::setValue(const PartId& part, std::string_view key, double value) {
    Part changed = m_circuit.parts.at(part);
    changed.values.insert_or_assign(std::string(key), value);
    put(part, std::move(changed));
}

void EditDraft::setChoice(const PartId& part, std::string_view key, std::string_view option) {
    Part changed = m_circuit.parts.at(part);
    changed.choices.insert_or_assign(std::string(key), std::string(option));
    put(part, std::move(changed));
}

void EditDraft::addWire(End from, End to, double area_m2, double length_m, std::string_view colour) {
    Wire wire;
    wire.reference = freeReference(m_circuit, "W");
    wire.from = std::move(from);
    wire.to = std::move(to);
    wire.area_m2 = area_m2;
    wire.length_m = length_m;
    wire.colour = colour;
    put(freeWireId(m_circuit), std::move(wire));
}

void EditDraft::addHose(End from, End to, double innerDiameter_m, double length_m) {
    Hose hose;
    hose.reference = freeReference(m_circuit, "H");
    hose.from = std::move(from);
    hose.to = std::move(to);
    hose.innerDiameter_m = innerDiameter_m;
    hose.length_m = length_m;
    put(freeHoseId(m_circuit), std::move(hose));
}

void EditDraft::moveWires(const End& now, const End& next) {
    for (const WireId& id : endingOn(m_circuit.wires, now)) {
        put(id, moved(m_circuit.wires.at(id), now, next));
    }
}

void EditDraft::moveHoses(const End& now, const End& next) {
    for (const HoseId& id : endingOn(m_circuit.hoses, now)) {
        put(id, moved(m_circuit.hoses.at(id), now, next));
    }
}

void EditDraft::put(const PartId& id, Part part) {
    m_circuit.parts.insert_or_assign(id, part);
    m_edit.changes.push_back(putPart(id, std::move(part)));
}

void EditDraft::put(const WireId& id, Wire wire) {
    m_circuit.wires.insert_or_assign(id, wire);
    m_edit.changes.push_back(putWire(id, std::move(wire)));
}

void EditDraft::put(const HoseId& id, Hose hose) {
    m_circuit.hoses.insert_or_assign(id, hose);
    m_edit.changes.push_back(putHose(id, std::move(hose)));
}

Edit EditDraft::edit() && {
    return std::move(m_edit);
}

GridPoint freePlace(const Circuit& circuit, GridPoint near) {
    constexpr int kApart = 6;
    const auto taken = [&](GridPoint at) {
        return std::any_of(circuit.parts.begin(), circuit.parts.end(), [&](const auto& entry) {
            const GridPoint other = entry.second.at;
            return std::abs(other.x - at.x) < kApart && std::abs(other.y - at.y) < kApart;
        });
    };
    GridPoint at{near.x + kApart, near.y};
    while (taken(at)) {
        at.y += kApart;
    }
    return at;
}

} // namespace pumpwright

#include "core/checks/remedy_edit.h"

#include "core/checks/edit_draft.h"
#include "core/checks/standard_size.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// A diode is fitted at the relay's socket, a fuse within 7 in (0.178 m) of the source [33 CFR 183.455(b)].
constexpr double kShortWire_m = 0.1;
constexpr double kFuseLead_m = 0.17;
/// A coil's current is small; thinner wire breaks when handled. Common practice, no published source.
constexpr double kCoilWire_m2 = 0.75e-6;

Wire shortWire(std::string reference, End from, End to) {
    Wire wire;
    wire.reference = std::move(reference);
    wire.from = std::move(from);
    wire.to = std::move(to);
    wire.length_m = kShortWire_m;
    return wire;
}

/// [m] between a fitting and the port beside it.
constexpr double kShortHose_m = 0.1;

Hose shortHose(const Circuit& circuit, End from, End to) {
    Hose hose;
    hose.reference = freeReference(circuit, "H");
    hose.from = std::move(from);
    hose.to = std::move(to);
    hose.length_m = kShortHose_m;
    return hose;
}

/// Lets the hose end on `next` where it ended on `now`; says whether it did.
bool endAt(Hose& hose, const End& now, const End& next) {
    if (hose.from != now && hose.to != now) {
        return false;
    }
    (hose.from == now ? hose.from : hose.to) = next;
    hose.bends.clear();
    hose.labelFrom.reset();
    return true;
}

bool swapEnd(End& end, const PartId& part, const std::string& one, const std::string& other) {
    if (end.part != part || (end.terminal != one && end.terminal != other)) {
        return false;
    }
    end.terminal = end.terminal == one ? other : one;
    return true;
}

} // namespace

Part partBeside(const Circuit& circuit, const PartKind& kind, GridPoint near) {
    return newPart(kind, freeReference(circuit, std::string(kind.letter())), freePlace(circuit, near));
}

Edit valueEdit(const Circuit& circuit, const PartId& part, std::string_view key, double value, Text name) {
    Part changed = circuit.parts.at(part);
    changed.values.insert_or_assign(std::string(key), value);
    return {name.english(), {putPart(part, std::move(changed))}};
}

Edit choiceEdit(const Circuit& circuit, const PartId& part, std::string_view key, std::string_view option,
                Text name) {
    Part changed = circuit.parts.at(part);
    changed.choices.insert_or_assign(std::string(key), std::string(option));
    return {name.english(), {putPart(part, std::move(changed))}};
}

Edit areaEdit(const Circuit& circuit, const std::map<WireId, double>& areas_m2, Text name) {
    Edit edit{name.english(), {}};
    for (const auto& [id, area_m2] : areas_m2) {
        Wire changed = circuit.wires.at(id);
        changed.area_m2 = area_m2;
        edit.changes.push_back(putWire(id, std::move(changed)));
    }
    return edit;
}

Edit swapEdit(const Circuit& circuit, const PartId& part, const std::string& oneTerminal,
              const std::string& otherTerminal, Text name) {
    Edit edit{name.english(), {}};
    for (const auto& [id, wire] : circuit.wires) {
        Wire changed = wire;
        const bool from = swapEnd(changed.from, part, oneTerminal, otherTerminal);
        const bool to = swapEnd(changed.to, part, oneTerminal, otherTerminal);
        if (from || to) {
            changed.bends.clear();
            changed.labelFrom.reset();
            edit.changes.push_back(putWire(id, std::move(changed)));
        }
    }
    return edit;
}

Edit diodeEdit(const Circuit& circuit, const End& plus, const End& minus, double current_A, Text name) {
    const PartId id = freePartId(circuit);
    Circuit draft = circuit;
    Edit edit{name.english(), {}};
    Part diode = partBeside(circuit, diodeKind(), circuit.parts.at(plus.part).at);
    const auto size_A = diodeAtLeast_A(current_A);
    if (size_A && *size_A > diodeKind().value(diode, "ratedCurrent_A")) {
        diode.values["ratedCurrent_A"] = *size_A;
    }
    edit.changes.push_back(putPart(id, std::move(diode)));
    for (const auto& [coilEnd, terminal] : {std::pair{plus, "K"}, std::pair{minus, "A"}}) {
        const WireId wireId = freeWireId(draft);
        Wire wire = shortWire(freeReference(draft, "W"), {id, terminal}, coilEnd);
        wire.area_m2 = kCoilWire_m2;
        draft.wires.emplace(wireId, wire);
        edit.changes.push_back(putWire(wireId, std::move(wire)));
    }
    return edit;
}

Edit insertEdit(const Circuit& circuit, const WireId& wire, const End& atEnd, Part part,
                const std::string& near, const std::string& far, Text name) {
    const PartId id = freePartId(circuit);
    Wire rest = circuit.wires.at(wire);
    Wire lead = rest;
    lead.reference = freeReference(circuit, "W");
    lead.from = atEnd;
    lead.to = {id, near};
    lead.length_m = std::min(kFuseLead_m, rest.length_m);
    lead.bends.clear();
    lead.labelFrom.reset();
    (rest.from == atEnd ? rest.from : rest.to) = {id, far};
    rest.bends.clear();
    rest.labelFrom.reset();
    Edit edit{name.english(), {}};
    edit.changes = {putPart(id, std::move(part)), putWire(freeWireId(circuit), std::move(lead)),
                    putWire(wire, std::move(rest))};
    return edit;
}

Edit fuseEdit(const Circuit& circuit, const WireId& wire, const End& atEnd, double rating_A, Text name) {
    Part fuse = partBeside(circuit, fuseKind(), circuit.parts.at(atEnd.part).at);
    fuse.values["rating_A"] = rating_A;
    return insertEdit(circuit, wire, atEnd, std::move(fuse), "1", "2", std::move(name));
}

Edit spliceEdit(const Circuit& circuit, const End& terminal, const std::vector<WireId>& moved,
                double shortWire_m2, Text name) {
    const PartId splice = freePartId(circuit);
    Edit edit{name.english(), {}};
    edit.changes.push_back(
        putPart(splice, partBeside(circuit, spliceKind(), circuit.parts.at(terminal.part).at)));
    for (const WireId& id : moved) {
        Wire changed = circuit.wires.at(id);
        (changed.from == terminal ? changed.from : changed.to) = {splice, "1"};
        changed.bends.clear();
        changed.labelFrom.reset();
        edit.changes.push_back(putWire(id, std::move(changed)));
    }
    Wire joint = shortWire(freeReference(circuit, "W"), {splice, "1"}, terminal);
    joint.area_m2 = shortWire_m2;
    edit.changes.push_back(putWire(freeWireId(circuit), std::move(joint)));
    return edit;
}

Edit checkValveEdit(const Circuit& circuit, const End& inlet, Text name) {
    Edit edit{name.english(), {}};
    const PartId valve = freePartId(circuit);
    edit.changes.push_back(
        putPart(valve, partBeside(circuit, checkValveKind(), circuit.parts.at(inlet.part).at)));
    for (const auto& [id, hose] : circuit.hoses) {
        Hose rest = hose;
        if (endAt(rest, inlet, {valve, "booster"})) {
            edit.changes.push_back(putHose(id, std::move(rest)));
        }
    }
    edit.changes.push_back(putHose(freeHoseId(circuit), shortHose(circuit, {valve, "pump"}, inlet)));
    return edit;
}

Edit movedHoseEdit(const Circuit& circuit, const End& sensor, const End& booster, Text name) {
    Edit edit{name.english(), {}};
    const PartId tee = freePartId(circuit);
    edit.changes.push_back(putPart(tee, partBeside(circuit, teeKind(), circuit.parts.at(booster.part).at)));
    for (const auto& [id, hose] : circuit.hoses) {
        Hose changed = hose;
        if (changed.from == sensor || changed.to == sensor) {
            (changed.from == sensor ? changed.to : changed.from) = {tee, "c"};
            changed.bends.clear();
            changed.labelFrom.reset();
        } else if (!endAt(changed, booster, {tee, "b"})) {
            continue;
        }
        edit.changes.push_back(putHose(id, std::move(changed)));
    }
    edit.changes.push_back(putHose(freeHoseId(circuit), shortHose(circuit, booster, {tee, "a"})));
    return edit;
}

} // namespace pumpwright

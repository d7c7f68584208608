#include "core/study/failed_circuit.h"

#include "core/checks/wording.h"
#include "core/nets/nets.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

constexpr std::string_view kBroken = "wire-broken";
constexpr std::string_view kOff = "hose-off";
constexpr std::string_view kLeaks = "hose-leaks";
/// A split that hisses.
constexpr double kSplit_m = 1e-3;

/// A wire that is as good as none: 10 mm², a centimetre.
Wire bridge(End from, End to) {
    Wire wire;
    wire.from = std::move(from);
    wire.to = std::move(to);
    wire.area_m2 = 10e-6;
    wire.length_m = 0.01;
    return wire;
}

/// Builds the edit of one failure, effect by effect; ids that it adds stay free of each other.
class FailureEdit {
public:
    explicit FailureEdit(const Circuit& circuit) : m_circuit(circuit) {}

    void apply(const PartId& id, const FailureEffect& effect) {
        std::visit([&](const auto& one) { make(id, one); }, effect);
    }

    /// Joins an end with the vehicle's body.
    void joinBody(const End& end) {
        const PartId ground = addPart("ground");
        addWire(bridge(end, {ground, "31"}));
    }

    void add(Change change) {
        applyEdit(m_circuit, {{}, {change}});
        m_edit.changes.push_back(std::move(change));
    }

    Edit finish(std::string name) {
        m_edit.name = std::move(name);
        return std::move(m_edit);
    }

private:
    void make(const PartId& id, const OpensTerminal& opens) {
        const End lost{id, opens.terminal};
        std::vector<WireId> ids;
        for (const auto& [wireId, wire] : m_circuit.wires) {
            if (wire.from == lost || wire.to == lost) {
                ids.push_back(wireId);
            }
        }
        if (ids.size() < 2) { // a single loose wire hangs in the air
            std::ranges::for_each(ids, [&](const WireId& wire) { add(takeWire(wire)); });
            return;
        }
        const End splice{addPart("splice"), "1"};
        for (const WireId& wireId : ids) {
            Wire wire = m_circuit.wires.at(wireId);
            wire.from = wire.from == lost ? splice : wire.from;
            wire.to = wire.to == lost ? splice : wire.to;
            add(putWire(wireId, std::move(wire)));
        }
    }

    void make(const PartId& id, const JoinsTerminals& joins) {
        addWire(bridge({id, joins.from}, {id, joins.to}));
    }

    void make(const PartId& id, const SetsValue& sets) {
        Part part = m_circuit.parts.at(id);
        part.values[sets.key] = sets.value;
        add(putPart(id, std::move(part)));
    }

    void make(const PartId& id, const SetsChoice& sets) {
        Part part = m_circuit.parts.at(id);
        part.choices[sets.key] = sets.option;
        add(putPart(id, std::move(part)));
    }

    PartId addPart(std::string_view kind) {
        const PartId id = freePartId(m_circuit);
        add(putPart(id, newPart(*findPartKind(kind), "", {})));
        return id;
    }
    void addWire(Wire wire) { add(putWire(freeWireId(m_circuit), std::move(wire))); }

    Circuit m_circuit;
    Edit m_edit;
};

/// Terminals that have a wire.
std::set<End> wiredEnds(const Circuit& circuit) {
    std::set<End> ends;
    for (const auto& [id, wire] : circuit.wires) {
        ends.insert(wire.from);
        ends.insert(wire.to);
    }
    return ends;
}

bool changesSomething(const FailureEffect& effect, const PartId& id, const std::set<End>& wired) {
    if (const auto* opens = std::get_if<OpensTerminal>(&effect)) {
        return wired.contains({id, opens->terminal});
    }
    if (const auto* joins = std::get_if<JoinsTerminals>(&effect)) {
        return wired.contains({id, joins->from}) && wired.contains({id, joins->to});
    }
    return true;
}

void addPartBreakdowns(std::vector<Breakdown>& all, const Circuit& circuit) {
    const std::set<End> wired = wiredEnds(circuit);
    for (const auto& [id, part] : circuit.parts) {
        for (const Failure& failure : kindOf(part).failures(part)) {
            if (std::ranges::any_of(failure.effects, [&, &failing = id](const FailureEffect& effect) {
                    return changesSomething(effect, failing, wired);
                })) {
                all.push_back({Subject::Part, id.text, failure.id,
                               fmt::format("{}: {}", nameOf(circuit, id), failure.title)});
            }
        }
    }
}

void addWireBreakdowns(std::vector<Breakdown>& all, const Circuit& circuit) {
    const Nets nets = findNets(circuit);
    const auto isGround = [&](const End& end) { return nets.nets[nets.netOf.at(end)].ground; };
    for (const auto& [id, wire] : circuit.wires) {
        const std::string name = nameOf(circuit, id);
        all.push_back({Subject::Wire, id.text, std::string(kBroken), name + ": broken"});
        if (!isGround(wire.from)) {
            all.push_back(
                {Subject::Wire, id.text, std::string(kWireOnBody), name + ": chafed, touches the body"});
        }
    }
}

void addHoseBreakdowns(std::vector<Breakdown>& all, const Circuit& circuit) {
    for (const auto& [id, hose] : circuit.hoses) {
        const std::string name = hose.reference.empty() ? id.text : hose.reference;
        all.push_back({Subject::Hose, id.text, std::string(kOff), name + ": slipped off"});
        all.push_back({Subject::Hose, id.text, std::string(kLeaks), name + ": split, leaks through 1 mm"});
    }
}

void breakPart(FailureEdit& edit, const Circuit& circuit, const Breakdown& breakdown) {
    const auto part = circuit.parts.find(PartId{breakdown.id});
    if (part == circuit.parts.end()) {
        return;
    }
    const std::vector<Failure> failures = kindOf(part->second).failures(part->second);
    const auto failure = std::ranges::find(failures, breakdown.failure, &Failure::id);
    if (failure != failures.end()) {
        for (const FailureEffect& effect : failure->effects) {
            edit.apply(part->first, effect);
        }
    }
}

void breakWire(FailureEdit& edit, const Circuit& circuit, const Breakdown& breakdown) {
    const WireId id{breakdown.id};
    const auto wire = circuit.wires.find(id);
    if (wire == circuit.wires.end()) {
        return;
    }
    if (breakdown.failure == kBroken) {
        edit.add(takeWire(id));
    } else if (breakdown.failure == kWireOnBody) {
        edit.joinBody(wire->second.to);
    }
}

void breakHose(FailureEdit& edit, const Circuit& circuit, const Breakdown& breakdown) {
    const HoseId id{breakdown.id};
    const auto found = circuit.hoses.find(id);
    if (found == circuit.hoses.end()) {
        return;
    }
    Hose hose = found->second;
    hose.leakHole_m = breakdown.failure == kOff ? hose.innerDiameter_m : std::max(hose.leakHole_m, kSplit_m);
    edit.add(putHose(id, std::move(hose)));
}

} // namespace

std::vector<Breakdown> breakdownsOf(const Circuit& circuit) {
    std::vector<Breakdown> all;
    addPartBreakdowns(all, circuit);
    addWireBreakdowns(all, circuit);
    addHoseBreakdowns(all, circuit);
    return all;
}

Edit breakdownEdit(const Circuit& circuit, const Breakdown& breakdown) {
    FailureEdit edit(circuit);
    if (breakdown.subject == Subject::Part) {
        breakPart(edit, circuit, breakdown);
    } else if (breakdown.subject == Subject::Wire) {
        breakWire(edit, circuit, breakdown);
    } else {
        breakHose(edit, circuit, breakdown);
    }
    return edit.finish(breakdown.title);
}

} // namespace pumpwright

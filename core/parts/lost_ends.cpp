#include "core/parts/lost_ends.h"

#include "core/parts/part_kind.h"

#include <algorithm>
#include <map>

namespace pumpwright {
namespace {

template <class IdType, class Object>
using Puts = std::map<IdType, std::shared_ptr<const Object>>;

/// What the edit puts and takes; of several changes to one object the last one counts.
struct LastPuts {
    Puts<PartId, Part> parts;
    Puts<WireId, Wire> wires;
    Puts<HoseId, Hose> hoses;
    std::shared_ptr<const DrivePlan> plan;

    void operator()(const Put<PartId, Part>& put) { parts.insert_or_assign(put.id, put.object); }
    void operator()(const Put<WireId, Wire>& put) { wires.insert_or_assign(put.id, put.object); }
    void operator()(const Put<HoseId, Hose>& put) { hoses.insert_or_assign(put.id, put.object); }
    void operator()(const Replace<DrivePlan>& replace) { plan = replace.section; }
    template <class Other>
    void operator()(const Other&) {}
};

/// The circuit as it will be, without making a copy of it.
class Outcome {
public:
    Outcome(const Circuit& circuit, const LastPuts& puts) : m_circuit(circuit), m_puts(puts) {}

    /// The part as it will be, or nullptr.
    const Part* part(const PartId& id) const {
        if (const auto put = m_puts.parts.find(id); put != m_puts.parts.end()) {
            return put->second.get();
        }
        const auto found = m_circuit.parts.find(id);
        return found == m_circuit.parts.end() ? nullptr : &found->second;
    }

    /// An end that the edit does not touch is as good as it was.
    bool isTouched(const End& end) const { return m_puts.parts.contains(end.part); }

    bool isThere(const End& end, bool vacuum) const {
        const Part* owner = part(end.part);
        if (!owner) {
            return false;
        }
        const auto specs = vacuum ? kindOf(*owner).ports(*owner) : kindOf(*owner).terminals(*owner);
        return std::any_of(specs.begin(), specs.end(),
                           [&](const TerminalSpec& spec) { return spec.name == end.terminal; });
    }

private:
    const Circuit& m_circuit;
    const LastPuts& m_puts;
};

/// Ids of the connections that would be there with an end that would not.
template <class IdType, class Object>
std::vector<IdType> lostConnections(const std::map<IdType, Object>& before, const Puts<IdType, Object>& puts,
                                    const Outcome& outcome, bool vacuum) {
    std::vector<IdType> lost;
    for (const auto& [id, connection] : before) {
        const auto isLost = [&](const End& end) {
            return outcome.isTouched(end) && !outcome.isThere(end, vacuum);
        };
        if (!puts.contains(id) && (isLost(connection.from) || isLost(connection.to))) {
            lost.push_back(id);
        }
    }
    for (const auto& [id, connection] : puts) {
        if (connection &&
            !(outcome.isThere(connection->from, vacuum) && outcome.isThere(connection->to, vacuum))) {
            lost.push_back(id);
        }
    }
    return lost;
}

} // namespace

Edit editWithLostEnds(const Circuit& circuit, Edit edit) {
    LastPuts puts;
    for (const Change& change : edit.changes) {
        std::visit(puts, change);
    }
    const Outcome outcome(circuit, puts);
    for (const WireId& id : lostConnections(circuit.wires, puts.wires, outcome, false)) {
        edit.changes.push_back(takeWire(id));
    }
    for (const HoseId& id : lostConnections(circuit.hoses, puts.hoses, outcome, true)) {
        edit.changes.push_back(takeHose(id));
    }
    DrivePlan plan = puts.plan ? *puts.plan : circuit.plan;
    if (std::erase_if(plan.switchMoves, [&](const SwitchMove& move) { return !outcome.part(move.part); }) >
        0) {
        edit.changes.push_back(replacePlan(std::move(plan)));
    }
    return edit;
}

} // namespace pumpwright

#include "core/checks/relay_edit.h"

#include "core/checks/edit_draft.h"
#include "core/checks/surroundings_of.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// [m²] for a relay's coil; thinner wire breaks when handled. Common practice, no published source.
constexpr double kCoilWire_m2 = 0.75e-6;
/// [m] to a relay beside the switch, and from it to the body. Common practice, no published source.
constexpr double kBeside_m = 0.3;

/// The contact's terminals, the one towards the supply first, and a load behind it.
struct Sides {
    End near;
    End far;
    const LoadPath* path;
};

/// Empty if the contact is on its loads' ground side.
std::optional<Sides> feedSides(const Survey& survey, const SwitchedLoads& loads, std::size_t contact) {
    const Branch& branch = survey.branches()[contact];
    for (const LoadPath* path : loads.over(contact)) {
        for (const LeadStep& step : path->feed) {
            if (step.branch == contact) {
                return step.to == branch.toEnd() ? Sides{branch.fromEnd(), branch.toEnd(), path}
                                                 : Sides{branch.toEnd(), branch.fromEnd(), path};
            }
        }
    }
    return std::nullopt;
}

std::vector<WireId> wiresAt(const Circuit& circuit, const End& end) {
    std::vector<WireId> wires;
    for (const auto& [id, wire] : circuit.wires) {
        if (wire.from == end || wire.to == end) {
            wires.push_back(id);
        }
    }
    return wires;
}

Edit relayEdit(const Survey& survey, const Sides& sides, double area_m2) {
    const PartId& part = sides.near.part;
    const End minus{sides.path->part, sides.path->load.to};
    EditDraft draft(survey.circuit(), say("Let {} switch a relay", nameOf(survey.circuit(), part)));
    const PartId relay = draft.add(relayKind(), part, "Power relay");
    draft.setChoice(relay, "suppression", "resistor");
    draft.moveWires(sides.near, {relay, "30"});
    draft.moveWires(sides.far, {relay, "87"});
    draft.addWire({relay, "30"}, sides.near, area_m2, kBeside_m, "RD");
    draft.addWire(sides.far, {relay, "86"}, area_m2, kBeside_m);
    const bool onBody = survey.nets().nets[survey.nets().netOf.at(minus)].ground;
    draft.addWire({relay, "85"}, onBody ? End{draft.add(groundKind(), relay), "31"} : minus, kCoilWire_m2,
                  kBeside_m);
    return std::move(draft).edit();
}

bool suffices(const Contact& contact, const ContactDuty& duty, double heatShare) {
    return heatShare * contact.rating.continuous_A >= duty.continuous_A &&
           contact.rating.make_A >= duty.make_A && contact.rating.breakInductive_A >= duty.break_A;
}

} // namespace

std::optional<Remedy> powerRelayRemedy(const Survey& survey, const SwitchedLoads& loads, std::size_t contact,
                                       const ContactDuty& duty) {
    const Circuit& circuit = survey.circuit();
    const Features usual = relayKind().features(newPart(relayKind(), "", {}));
    const auto sides = feedSides(survey, loads, contact);
    if (!sides ||
        !suffices(usual.contacts.front(), duty, relayHeatShare(survey.circuit().limits.ambient_K))) {
        return std::nullopt;
    }
    const std::size_t minus = survey.nets().netOf.at({sides->path->part, sides->path->load.to});
    const std::vector<WireId> near = wiresAt(circuit, sides->near);
    const std::vector<WireId> far = wiresAt(circuit, sides->far);
    if (near.size() != 1 || far.empty() || far.size() > 2 || !survey.groundedNets()[minus]) {
        return std::nullopt;
    }
    const std::string name = nameOf(circuit, sides->near.part);
    return Remedy{
        say("Put a power relay beside {}: {} switches its coil, and its contact the load.", name, name),
        relayEdit(survey, *sides, circuit.wires.at(near.front()).area_m2)};
}

} // namespace pumpwright

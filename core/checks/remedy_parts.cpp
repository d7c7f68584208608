#include "core/checks/remedy_parts.h"

#include "core/checks/edit_draft.h"
#include "core/checks/vacuum_lines.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"

#include <algorithm>

namespace pumpwright {
namespace {

// Common practice, no published source, all of them.
constexpr double kShort_m = 0.1;           ///< of wires and hoses between neighbours
constexpr double kGroundLead_m = 0.5;      ///< to the next bolt
constexpr double kSignalWire_m2 = 0.75e-6; ///< thinner wire breaks when handled
constexpr double kRun_m = 1.5;             ///< from fuse to switch to dashboard
constexpr double kWarning_Pa = 30e3;       ///< vacuum at which a press still gets some assist
constexpr double kWarningDifferential_Pa = 6e3;
constexpr double kWarningFuse_A = 3;
/// [W] of a lamp that may burn for weeks in a parked car.
constexpr double kWarningLamp_W = 0.3;
/// [m] from the source; a fuse must not be farther than 7 in (0.178 m) [33 CFR 183.455(b)].
constexpr double kFuseLead_m = 0.15;
constexpr double kHose_m = 0.009;
constexpr double kSwitchHose_m = 0.004;

void addGround(EditDraft& draft, const End& end, double area_m2) {
    const PartId ground = draft.add(groundKind(), end.part);
    draft.addWire(end, {ground, "31"}, area_m2, kGroundLead_m);
}

std::optional<End> plusOfSource(const Survey& survey) {
    for (const auto& [id, features] : survey.allFeatures()) {
        if (features.source) {
            return End{id, features.source->plus};
        }
    }
    return std::nullopt;
}

bool hasHose(const Circuit& circuit, const End& port) {
    return std::any_of(circuit.hoses.begin(), circuit.hoses.end(), [&](const auto& entry) {
        return entry.second.from == port || entry.second.to == port;
    });
}

/// A tee at a port that has a hose; its free leg.
End addTee(EditDraft& draft, const End& port) {
    const PartId tee = draft.add(teeKind(), port.part);
    draft.moveHoses(port, {tee, "b"});
    draft.addHose(port, {tee, "a"}, kHose_m, kShort_m);
    return {tee, "c"};
}

/// Leaves the wire's `from` half, which ends on `near`; the other half begins on `far`.
void cutWire(EditDraft& draft, const WireId& id, const End& near, const End& far) {
    const Wire whole = draft.circuit().wires.at(id);
    Wire half = whole;
    half.to = near;
    half.bends.clear();
    half.labelFrom.reset();
    draft.put(id, half);
    draft.addWire(far, whole.to, whole.area_m2, kShort_m, whole.colour);
}

} // namespace

std::optional<Edit> warningLampEdit(const Survey& survey) {
    const auto plus = plusOfSource(survey);
    const std::vector<End> boosters = boosterPorts(survey);
    if (!plus || boosters.empty() || !hasHose(survey.circuit(), boosters.front())) {
        return std::nullopt;
    }
    EditDraft draft(survey.circuit(), say("Add a warning lamp for low vacuum"));
    const PartId fuse = draft.add(fuseKind(), plus->part, "Low vacuum");
    draft.setValue(fuse, "rating_A", kWarningFuse_A);
    const PartId sensor = draft.add(vacuumSwitchKind(), boosters.front().part, "Warning switch");
    draft.setValue(sensor, "setPoint_Pa", kWarning_Pa);
    draft.setValue(sensor, "differential_Pa", kWarningDifferential_Pa);
    const PartId lamp = draft.add(lampKind(), sensor, "Low vacuum");
    draft.setValue(lamp, "ratedPower_W", kWarningLamp_W);
    draft.setChoice(lamp, "sort", "led");
    draft.addWire(*plus, {fuse, "1"}, kSignalWire_m2, kFuseLead_m, "RD");
    draft.addWire({fuse, "2"}, {sensor, "1"}, kSignalWire_m2, kRun_m);
    draft.addWire({sensor, "2"}, {lamp, "1"}, kSignalWire_m2, kRun_m);
    addGround(draft, {lamp, "2"}, kSignalWire_m2);
    draft.addHose(addTee(draft, boosters.front()), {sensor, "vacuum"}, kSwitchHose_m, kShort_m);
    return std::move(draft).edit();
}

Edit handSwitchEdit(const Circuit& circuit, const WireId& wire, std::string_view label, Text name) {
    EditDraft draft(circuit, std::move(name));
    const PartId part = draft.add(handSwitchKind(), circuit.wires.at(wire).to.part, label);
    draft.setChoice(part, "atStart", "on");
    cutWire(draft, wire, {part, "1"}, {part, "2"});
    return std::move(draft).edit();
}

Edit diodeInWireEdit(const Circuit& circuit, const WireId& wire, const End& to, Text name) {
    EditDraft draft(circuit, std::move(name));
    const bool forward = circuit.wires.at(wire).to == to;
    const PartId part = draft.add(diodeKind(), to.part);
    cutWire(draft, wire, {part, forward ? "A" : "K"}, {part, forward ? "K" : "A"});
    return std::move(draft).edit();
}

std::optional<Edit> reservoirEdit(const Circuit& circuit, const End& booster, double volume_m3, Text name) {
    if (!hasHose(circuit, booster)) {
        return std::nullopt;
    }
    EditDraft draft(circuit, std::move(name));
    const PartId reservoir = draft.add(reservoirKind(), booster.part, "Reservoir");
    draft.setValue(reservoir, "volume_m3", volume_m3);
    draft.moveHoses(booster, {reservoir, "b"});
    draft.addHose(booster, {reservoir, "a"}, kHose_m, kShort_m);
    return std::move(draft).edit();
}

} // namespace pumpwright

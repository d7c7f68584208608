#include "core/checks/carried_current.h"
#include "core/checks/coil_release.h"
#include "core/checks/current_loop.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/suppression.h"
#include "core/checks/switched_load.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

// Common practice, no published source, all of them.
constexpr double kAllowed_s = 5e-3;     ///< that the diode may add before the contacts part too slowly
constexpr double kSlowBreakShare = 0.5; ///< of the inductive rating that slowly parting contacts break well
constexpr double kDiode_V = 0.7;        ///< forward
constexpr double kZener_V = 24;         ///< of the zener that is advised with the diode

/// The contact of a relay for whose load it matters how fast it opens.
struct Matters {
    const Branch* branch = nullptr;
    double current_A = 0;
    double rating_A = 0;
};

std::optional<Matters> loadThatMatters(const Survey& survey, const SwitchedLoads& loads,
                                       const PartId& relay) {
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.part != relay || branch.sort != BranchSort::Contact) {
            continue;
        }
        const BreakingLimit limit = breakingLimit(survey, loads, i);
        const double current_A = breakingCurrent(survey, i).value_A;
        if (limit.inductive != nullptr && current_A > kSlowBreakShare * limit.value_A) {
            return Matters{&branch, current_A, limit.value_A};
        }
    }
    return std::nullopt;
}

/// The one wire on a terminal, if there is one only.
std::optional<WireId> onlyWireAt(const Circuit& circuit, const End& end) {
    std::optional<WireId> only;
    for (const auto& [id, wire] : circuit.wires) {
        if (wire.from == end || wire.to == end) {
            if (only) {
                return std::nullopt;
            }
            only = id;
        }
    }
    return only;
}

Remedy remedyFor(const Survey& survey, const Branch& coil, const PartId& diode) {
    const Circuit& circuit = survey.circuit();
    const std::string name = nameOf(circuit, diode);
    if (diode == coil.part) {
        return {
            say("Use a relay with diode and zener inside as {}.", name),
            choiceEdit(circuit, diode, "suppression", "zener", say("Build diode and zener into {}", name))};
    }
    const Text text = say("Put a zener of {} in a row with {}, anode to anode.",
                          amount(kZener_V, QuantityKind::Voltage), name);
    const End anode{diode, survey.features(diode).rectifier->anode};
    const auto wire = onlyWireAt(circuit, anode);
    if (!wire || survey.features(diode).rectifier->zener) {
        return {text, {}};
    }
    Part zener = partBeside(circuit, zenerKind(), circuit.parts.at(diode).at);
    zener.values["zenerVoltage_V"] = kZener_V;
    return {text,
            insertEdit(circuit, *wire, anode, std::move(zener), "A", "K", say("Add a zener to {}", name))};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const SwitchedLoads loads(survey);
    for (const LoadPath& path : survey.loadPaths()) {
        const Branch& branch = survey.branches()[path.branch];
        const auto diode =
            branch.sort == BranchSort::Coil && path.source ? freewheelDiodeOf(survey, branch) : std::nullopt;
        const auto matters = diode ? loadThatMatters(survey, loads, path.part) : std::nullopt;
        if (!matters) {
            continue;
        }
        const Coil& coil = survey.features(path.part).coils[branch.index];
        const double slow_s = releaseTime_s(coil, survey.supplyVoltage_V(), kDiode_V);
        const double fast_s = releaseTime_s(coil, survey.supplyVoltage_V(), kDiode_V + kZener_V);
        if (slow_s - fast_s <= kAllowed_s) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {path.part};
        if (*diode != path.part) {
            finding.parts.push_back(*diode);
        }
        finding.value = slow_s - fast_s;
        finding.limit = kAllowed_s;
        finding.kind = QuantityKind::Time;
        finding.what = say(
            "The diode across the coil of {} lets it go after {}, {} later than diode and zener would; its "
            "contact {}–{} then parts slowly under {}, of {} inductive that it may break.",
            nameOf(survey.circuit(), path.part), amount(slow_s, finding.kind),
            amount(finding.value, finding.kind), matters->branch->from, matters->branch->to,
            amount(matters->current_A, QuantityKind::Current),
            amount(matters->rating_A, QuantityKind::Current));
        finding.why =
            say("The armature lets go with little force: the arc burns longer and the contact can stick.");
        finding.remedies = {remedyFor(survey, branch, *diode)};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kDiodeDelaysRelease{"diode-delays-release",
                                      words("Diode lets a relay open slowly"),
                                      SignalWord::Caution,
                                      words("common practice, no published source; that it shortens contact "
                                            "life: coil-suppression application notes"),
                                      false,
                                      check};

} // namespace pumpwright

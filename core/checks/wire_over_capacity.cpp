#include "core/checks/carried_current.h"
#include "core/checks/lead_values.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// The smallest standard area, above the wire's own, that may carry the current there.
std::optional<double> sufficientArea_m2(const Survey& survey, const Wire& wire, double current_A) {
    for (auto area_m2 = nextWireArea_m2(wire.area_m2); area_m2; area_m2 = nextWireArea_m2(*area_m2)) {
        if (capacity_A(survey, wire, *area_m2) >= current_A) {
            return area_m2;
        }
    }
    return std::nullopt;
}

Remedy remedyFor(const Survey& survey, const WireId& id, double current_A) {
    const std::string name = nameOf(survey.circuit(), id);
    const auto area_m2 = sufficientArea_m2(survey, survey.circuit().wires.at(id), current_A);
    if (!area_m2) {
        return {say("Share the load between several circuits, or lay {} where it is cooler.", name), {}};
    }
    const std::string area = amount(*area_m2, QuantityKind::WireArea);
    return {say("Lay {} in {}.", name, area),
            areaEdit(survey.circuit(), {{id, *area_m2}}, say("Lay {} in {}", name, area))};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const auto& [id, wire] : survey.circuit().wires) {
        const double limit_A = capacity_A(survey, wire);
        const int bundled = bundledOf(survey, wire);
        const CarriedCurrent current = sustainedCurrent(survey, id);
        if (current.value_A <= limit_A) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.wires = {id};
        finding.value = current.value_A;
        finding.limit = limit_A;
        finding.kind = QuantityKind::Current;
        finding.at_s = current.at_s;
        finding.what =
            say("{} of {} carries {} ({}); at {}{} it may carry {}.", nameOf(survey.circuit(), id),
                amount(wire.area_m2, QuantityKind::WireArea), amount(current.value_A, finding.kind),
                whereFrom(current), amount(survey.circuit().limits.ambient_K, QuantityKind::Temperature),
                bundled > 1 ? say(" in a bundle of {}", bundled) : Text(), amount(limit_A, finding.kind));
        finding.why = say("A wire over its capacity gets hotter than its insulation stands.");
        finding.remedies = {remedyFor(survey, id, current.value_A)};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kWireOverCapacity{"wire-over-capacity",
                                    words("Wire over its current capacity"),
                                    SignalWord::Warning,
                                    words("33 CFR 183.425, table 5"),
                                    false,
                                    check};

} // namespace pumpwright

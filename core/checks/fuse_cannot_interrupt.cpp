#include "core/checks/lead_values.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// [m] A lead in a sheath may be so long before its fuse (40 in) [33 CFR 183.455(b)].
constexpr double kSheathed_m = 1.016;
constexpr double kRounded_m = 0.01;

/// The short right behind the fuse, from the source that drives it hardest.
struct Fault {
    double current_A = 0;
    std::optional<WireId> lead;
    double length_m = 0; ///< of that lead, with which the current is what the fuse interrupts
};

Fault worstFault(const Survey& survey, const Branch& fuse) {
    Fault worst;
    for (const SourceLeads& source : survey.sources()) {
        for (const End& end : {fuse.fromEnd(), fuse.toEnd()}) {
            const auto way = source.fromPlus.way(end);
            const bool overFuse = way && std::any_of(way->begin(), way->end(), [&](const LeadStep& step) {
                                      return step.branch && survey.branches()[*step.branch].part == fuse.part;
                                  });
            const double current_A = way && !overFuse ? faultCurrent_A(survey, source.source, *way) : 0;
            if (current_A > worst.current_A) {
                worst = {current_A, way->empty() ? std::nullopt : way->back().wire, 0};
            }
        }
    }
    return worst;
}

/// A lead of the same gauge, long enough and still allowed.
std::optional<Remedy> longerLead(const Survey& survey, const Fault& fault, double breaking_A) {
    if (!fault.lead) {
        return std::nullopt;
    }
    Wire wire = survey.circuit().wires.at(*fault.lead);
    const double missing_ohm = survey.supplyVoltage_V() * (1 / breaking_A - 1 / fault.current_A);
    const double perMetre_ohm = resistance_ohm(survey, wire) / wire.length_m;
    wire.length_m = std::ceil((wire.length_m + missing_ohm / perMetre_ohm) / kRounded_m) * kRounded_m;
    wire.sheathed = true;
    if (wire.length_m > kSheathed_m) {
        return std::nullopt;
    }
    const Text text = say("Make {} {} long, in a sheath", nameOf(survey.circuit(), *fault.lead),
                          amount(wire.length_m, QuantityKind::Length));
    return Remedy{say("{}.", text), Edit{text.english(), {putWire(*fault.lead, std::move(wire))}}};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const Branch& branch : survey.branches()) {
        if (branch.sort != BranchSort::Fuse) {
            continue;
        }
        const double breaking_A = survey.features(branch.part).fuse->breaking_A;
        const Fault fault = worstFault(survey, branch);
        if (fault.current_A <= breaking_A) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), branch.part);
        Finding finding = newFinding(rule);
        finding.parts = {branch.part};
        finding.value = fault.current_A;
        finding.limit = breaking_A;
        finding.kind = QuantityKind::Current;
        finding.what = say("A short right behind {} draws {}; the fuse interrupts {}.", name,
                           amount(finding.value, finding.kind), amount(breaking_A, finding.kind));
        finding.why = say("A fuse beyond its breaking capacity arcs on, bursts and sets fire to its holder.");
        if (auto remedy = longerLead(survey, fault, breaking_A)) {
            finding.remedies.push_back(std::move(*remedy));
        }
        finding.remedies.push_back({say("Choose a fuse with a larger breaking capacity as {}.", name), {}});
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kFuseCannotInterrupt{"fuse-cannot-interrupt",
                                       words("Fuse cannot interrupt the short-circuit current"),
                                       SignalWord::Warning,
                                       words("the fuse's breaking capacity, 1000 A for ISO 8820-3"),
                                       false,
                                       check};

} // namespace pumpwright

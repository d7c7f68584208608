#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

double drawn_A(const Survey& survey, const PartId& source) {
    double sum_A = 0;
    for (const LoadPath& path : survey.loadPaths()) {
        sum_A += path.source == source ? path.load.running_A : 0;
    }
    return sum_A;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const auto& [id, features] : survey.allFeatures()) {
        if (!features.source || features.source->chargeLimit_A <= 0) {
            continue;
        }
        const Source& source = *features.source;
        const double circuit_A = drawn_A(survey, id);
        if (circuit_A + source.vehicleLoad_A <= source.chargeLimit_A) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), id);
        Finding finding = newFinding(rule);
        finding.parts = {id};
        finding.value = circuit_A + source.vehicleLoad_A;
        finding.limit = source.chargeLimit_A;
        finding.kind = QuantityKind::Current;
        finding.what =
            say("This circuit takes {} and the rest of the vehicle {}, {} together; {} is charged with {}.",
                amount(circuit_A, finding.kind), amount(source.vehicleLoad_A, finding.kind),
                amount(finding.value, finding.kind), name, amount(finding.limit, finding.kind));
        finding.why =
            say("What the alternator or converter can't give comes out of the battery, until it is empty.");
        finding.remedies = {
            {say("Fit an alternator or converter for at least {}.", amount(finding.value, finding.kind)), {}},
            {say("Switch off other consumers while the pump runs."), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kChargingTooWeak{"charging-too-weak",
                                   words("Alternator or converter too weak"),
                                   SignalWord::Caution,
                                   words("the source's charging current limit"),
                                   false,
                                   check};

} // namespace pumpwright

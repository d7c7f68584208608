#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/place.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

Finding baseFinding(const Rule& rule, const Survey& survey, const PartId& id, const VehiclePlace& place) {
    Finding finding = newFinding(rule);
    finding.parts = {id};
    finding.why = say("A part beyond what it stands fails early: it melts, corrodes, or water shorts it.");
    finding.remedies = {{say("Fit {} in a cooler or drier place, or choose one that is made for {}.",
                             nameOf(survey.circuit(), id), place.label),
                         {}}};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const auto& [id, part] : survey.circuit().parts) {
        const VehiclePlace* place = findPlace(part.place);
        if (place == nullptr) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), id);
        if (part.ratedTemperature_K < place->hottest_K) {
            Finding finding = baseFinding(rule, survey, id, *place);
            finding.value = part.ratedTemperature_K;
            finding.limit = place->hottest_K;
            finding.kind = QuantityKind::Temperature;
            finding.what =
                say("{} stands {}; {} it gets {}.", name, amount(part.ratedTemperature_K, finding.kind),
                    place->label, amount(place->hottest_K, finding.kind));
            findings.push_back(std::move(finding));
        }
        if (!part.ingress.empty() && waterDigit(part.ingress) < place->water) {
            Finding finding = baseFinding(rule, survey, id, *place);
            finding.value = waterDigit(part.ingress);
            finding.limit = place->water;
            finding.what = say("{} is {}; {} its second digit must be {} or more.", name, part.ingress,
                               place->label, place->water);
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

} // namespace

extern const Rule kRatingBelowPlace{
    "rating-below-place",
    words("Part not made for its place in the vehicle"),
    SignalWord::Caution,
    words("IEC 60529 for the code; temperatures: common practice, no published source"),
    false,
    check};

} // namespace pumpwright

#include "core/checks/booster_reserve.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/set_point.h"
#include "core/checks/wording.h"
#include "core/units/atmosphere.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// [Pa] A set point is set to about this. Common practice, no published source.
constexpr double kRounded_Pa = 1e3;

/// [Pa] gauge vacuum that the best of the pumps reaches, new and at the end of its tolerance.
struct Reach {
    double new_Pa = 0;
    double worn_Pa = 0;
};

Reach reachOf(const Survey& survey, double ambient_Pa) {
    Reach reach;
    for (const auto& [id, features] : survey.allFeatures()) {
        if (features.pump) {
            const double share = 1 - features.pump->ultimateShare;
            reach.new_Pa = std::max(reach.new_Pa, share * ambient_Pa);
            reach.worn_Pa =
                std::max(reach.worn_Pa, (share - features.pump->ultimateTolerance_share) * ambient_Pa);
        }
    }
    return reach;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const double altitude_m = highestAltitude_m(survey.circuit().plan);
    const Reach reach = reachOf(survey, standardPressure_Pa(altitude_m));
    std::vector<Finding> findings;
    for (const auto& [id, part] : survey.circuit().parts) {
        const auto setPoint = reach.new_Pa > 0 ? setPointOf(survey, id) : std::nullopt;
        if (!setPoint || setPoint->opens_Pa <= reach.worn_Pa) {
            continue;
        }
        const bool never = setPoint->opens_Pa > reach.new_Pa;
        const std::string name = nameOf(survey.circuit(), id);
        const double differential_Pa = setPoint->opens_Pa - setPoint->closes_Pa;
        const double closes_Pa = std::floor((reach.worn_Pa - differential_Pa) / kRounded_Pa) * kRounded_Pa;
        Finding finding = newFinding(rule);
        finding.word = never ? SignalWord::Warning : SignalWord::Caution;
        finding.parts = {id};
        finding.value = setPoint->opens_Pa;
        finding.limit = never ? reach.new_Pa : reach.worn_Pa;
        finding.kind = QuantityKind::GaugeVacuum;
        finding.what = say("{} opens at {}; at {}, the highest of the drive plan, {} pump reaches {}.", name,
                           amount(setPoint->opens_Pa, finding.kind), amount(altitude_m, QuantityKind::Length),
                           never ? say("a new") : say("a worn"), amount(finding.limit, finding.kind));
        finding.why = say("The pump then never stops: it overheats, and one day the assist is gone.");
        if (closes_Pa > 0) {
            const Text text = say("{} to {}", name, amount(closes_Pa, finding.kind));
            finding.remedies.push_back(
                {say("Lower the set point of {}.", text),
                 valueEdit(survey.circuit(), id, "setPoint_Pa", closes_Pa, say("Set {}", text))});
        }
        finding.remedies.push_back({say("Fit a pump with a lower ultimate pressure."), {}});
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kSetPointOutOfReach{
    "set-point-out-of-reach",
    words("Set point out of the pump's reach"),
    SignalWord::Warning,
    words("ISO 2533 for the ambient pressure; the pump's ultimate pressure"),
    false,
    check};

} // namespace pumpwright

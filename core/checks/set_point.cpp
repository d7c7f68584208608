#include "core/checks/set_point.h"

#include "core/checks/remedy_edit.h"
#include "core/checks/wording.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr char kSetPoint[] = "setPoint_Pa";
constexpr char kDifferential[] = "differential_Pa";

// Common practice, no published source, all of them.
constexpr double kUsefulDifferential_Pa = 10e3; ///< stands the creep back after a fast pump-down
constexpr double kReachable_Pa = 65e3;          ///< that electric pumps reach near sea level
constexpr double kReachableShare = 0.9;         ///< of the vacuum that was reached
constexpr double kLowestSetPoint_Pa = 40e3;     ///< below it a booster gives no full assist
constexpr double kRounded_Pa = 1e3;             ///< set points are set to about this

} // namespace

std::optional<double> nameplateValue(const Part& part, std::string_view key) {
    const PartKind& kind = kindOf(part);
    const auto all = kind.parameters();
    const bool known =
        std::any_of(all.begin(), all.end(), [&](const ParameterSpec& spec) { return spec.key == key; });
    return known ? std::optional(kind.value(part, key)) : std::nullopt;
}

std::optional<SetPoint> setPointOf(const Survey& survey, const PartId& part) {
    const auto closes_Pa = nameplateValue(survey.part(part), kSetPoint);
    const auto differential_Pa = nameplateValue(survey.part(part), kDifferential);
    if (!closes_Pa || !differential_Pa) {
        return std::nullopt;
    }
    SetPoint setPoint{part, *closes_Pa, *closes_Pa + *differential_Pa, 0};
    const PartKind& kind = kindOf(survey.part(part));
    for (const PortSpec& port : kind.ports(survey.part(part))) {
        const Channel* vacuum =
            survey.recording() == nullptr ? nullptr : survey.recording()->port({part, port.name});
        if (vacuum != nullptr && !vacuum->values.empty()) {
            setPoint.reached_Pa = std::max(
                setPoint.reached_Pa,
                static_cast<double>(*std::max_element(vacuum->values.begin(), vacuum->values.end())));
        }
    }
    return setPoint;
}

std::optional<Remedy> widerDifferential(const Survey& survey, const PartId& part) {
    const auto setPoint = setPointOf(survey, part);
    if (!setPoint) {
        return std::nullopt;
    }
    const double now_Pa = setPoint->opens_Pa - setPoint->closes_Pa;
    const double wider_Pa = std::max(kUsefulDifferential_Pa, 2 * now_Pa);
    const double reachable_Pa = std::max({kReachable_Pa, setPoint->reached_Pa, setPoint->opens_Pa});
    double closes_Pa = setPoint->closes_Pa;
    if (closes_Pa + wider_Pa > reachable_Pa) {
        closes_Pa = std::floor((reachable_Pa - wider_Pa) / kRounded_Pa) * kRounded_Pa;
    }
    if (closes_Pa < kLowestSetPoint_Pa) {
        return std::nullopt;
    }
    const Text text =
        say("{}: closes at {}, opens {} higher", nameOf(survey.circuit(), part),
            amount(closes_Pa, QuantityKind::GaugeVacuum), amount(wider_Pa, QuantityKind::PressureDifference));
    Part changed = survey.part(part);
    changed.values[kSetPoint] = closes_Pa;
    changed.values[kDifferential] = wider_Pa;
    return Remedy{say("Set {}.", text),
                  Edit{say("Set {}", text).english(), {putPart(part, std::move(changed))}}};
}

std::optional<Remedy> lowerSetPoint(const Survey& survey, const SetPoint& setPoint) {
    const double differential_Pa = setPoint.opens_Pa - setPoint.closes_Pa;
    const double opens_Pa = kReachableShare * setPoint.reached_Pa;
    const double closes_Pa = std::floor((opens_Pa - differential_Pa) / kRounded_Pa) * kRounded_Pa;
    if (closes_Pa < kLowestSetPoint_Pa) {
        return std::nullopt;
    }
    const Text text = say("{} to {}", nameOf(survey.circuit(), setPoint.part),
                          amount(closes_Pa, QuantityKind::GaugeVacuum));
    return Remedy{say("Lower the set point of {}.", text),
                  valueEdit(survey.circuit(), setPoint.part, kSetPoint, closes_Pa, say("Set {}", text))};
}

} // namespace pumpwright

#include "core/checks/booster_reserve.h"
#include "core/checks/press_assist.h"
#include "core/checks/remedy_parts.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <array>

namespace pumpwright {
namespace {

/// [m³] Reservoirs as they are sold. Common practice, no published source.
constexpr std::array kReservoirs_m3{1e-3, 2e-3, 3e-3, 4e-3, 6e-3, 8e-3, 10e-3};

std::vector<Remedy> remedies(const Survey& survey, const End& port, IsolatedBooster booster, double vacuum_Pa,
                             double force_N, int wanted) {
    std::vector<Remedy> remedies;
    const double beside_m3 = booster.beside_m3;
    for (const double volume_m3 : kReservoirs_m3) {
        booster.beside_m3 = beside_m3 + volume_m3;
        if (reservePresses(booster, vacuum_Pa, force_N, kDangerShare) >= wanted) {
            const Text text = say("a reservoir of {} at {}", amount(volume_m3, QuantityKind::Volume),
                                  nameOf(survey.circuit(), port.part));
            if (auto edit = reservoirEdit(survey.circuit(), port, volume_m3, say("Put in {}", text))) {
                remedies.push_back({say("Put in {}.", text), std::move(edit)});
            }
            break;
        }
    }
    remedies.push_back(
        {say("Raise the set point of the vacuum switch, so that more vacuum is in store."), {}});
    return remedies;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const int wanted = survey.circuit().limits.reservePresses;
    const double force_N = usualPedalForce_N(survey.circuit().plan);
    std::vector<Finding> findings;
    for (const auto& [port, booster, vacuum_Pa] : boosterReserves(survey)) {
        const int presses = vacuum_Pa ? reservePresses(booster, *vacuum_Pa, force_N, kDangerShare) : wanted;
        if (presses >= wanted) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {port.part};
        finding.value = presses;
        finding.limit = wanted;
        finding.what =
            say("When the pump dies at {}, {} has {} of {} with at least {} of the assist; {} are wanted.",
                amount(*vacuum_Pa, QuantityKind::GaugeVacuum), nameOf(survey.circuit(), port.part),
                pressesText(presses), amount(force_N, QuantityKind::Force),
                amount(kDangerShare, QuantityKind::Share), wanted);
        finding.why = say("With the pump dead, the stored vacuum must bring the vehicle to a stop.");
        finding.remedies = remedies(survey, port, booster, *vacuum_Pa, force_N, wanted);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kReservePresses{
    "reserve-presses",
    words("Too few presses in reserve"),
    SignalWord::Warning,
    words("the project's limit; two to three assisted presses: common practice, no "
          "published source"),
    false,
    check};

} // namespace pumpwright

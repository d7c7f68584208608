#include "core/checks/fuse_remedy.h"
#include "core/checks/lead_values.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"
#include "core/parts/conductor.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

// What a copper conductor stands once, adiabatically: I²t = k²S², k = K·√(ln((β + θf)/(β + θi))) with
// copper's K and β [IEC 60949]. Final temperatures are those of PVC and cross-linked polyethylene [IEC
// 60364-5-54, values from memory].
constexpr double kCopperK_Aperm2 = 226e6; ///< [A·√s/m²]
constexpr double kCopperBeta = 234.5;     ///< [K]
constexpr double kZeroCelsius = 273.15;
constexpr double kPvcFinal_K = kZeroCelsius + 160;
constexpr double kCrossLinkedFinal_K = kZeroCelsius + 250;
/// Insulation classes from this temperature up are cross-linked.
constexpr double kCrossLinkedFrom_K = kZeroCelsius + 120;

/// What a short to the body at a wire's far end does.
struct Fault {
    WireId wire;
    double current_A = 0;
    double opens_s = 0;  ///< the fuse, at the slow edge of its band
    double stands_s = 0; ///< the wire, until its insulation is spoilt

    double share() const { return opens_s / stands_s; }
};

double finalTemperature_K(const Wire& wire) {
    const InsulationClass* insulation = findInsulation(wire.insulation);
    return insulation != nullptr && insulation->maxTemperature_K >= kCrossLinkedFrom_K ? kCrossLinkedFinal_K
                                                                                       : kPvcFinal_K;
}

/// The adiabatic time, longer where the wire gives off much of its heat meanwhile: that has it follow
/// rise·(1 − e^(−t/τ)) towards a rise that may stay below what it stands.
double stands_s(const Survey& survey, const Wire& wire, double current_A) {
    const double start_K = survey.circuit().limits.ambient_K;
    const double final_K = finalTemperature_K(wire);
    if (final_K <= start_K) {
        return 0;
    }
    const double k =
        kCopperK_Aperm2 *
        std::sqrt(std::log((kCopperBeta + final_K - kZeroCelsius) / (kCopperBeta + start_K - kZeroCelsius)));
    const double adiabatic_s = std::pow(k * wire.area_m2 / current_A, 2);
    const WireHeat heat = wireHeat(wire.area_m2, bundledOf(survey, wire));
    const double settled_K =
        current_A * current_A * copperResistivity_ohmm(final_K) / wire.area_m2 * heat.resistance_KmperW;
    if (settled_K <= final_K - start_K) {
        return std::numeric_limits<double>::infinity();
    }
    const double constant_s = heat.capacity_JperKm * heat.resistance_KmperW;
    return std::max(adiabatic_s, -constant_s * std::log(1 - (final_K - start_K) / settled_K));
}

Fault faultAt(const Survey& survey, const Branch& source, const FuseRating& fuse,
              const std::vector<LeadStep>& way, const WireId& id) {
    Fault fault;
    fault.wire = id;
    fault.current_A = faultCurrent_A(survey, source, way);
    fault.opens_s = openingTime_s(fuse.type, fault.current_A / fuse.rating_A, FuseEdge::Slow);
    fault.stands_s = stands_s(survey, survey.circuit().wires.at(id), fault.current_A);
    return fault;
}

/// The wire behind a fuse that fares worst.
std::optional<Fault> worstFault(const Survey& survey, const Branch& branch, const FuseRating& fuse) {
    std::optional<Fault> worst;
    for (const WireId& id : survey.wiresBehind(branch)) {
        const Wire& wire = survey.circuit().wires.at(id);
        for (const SourceLeads& source : survey.sources()) {
            for (const End& end : {wire.from, wire.to}) {
                const auto way = source.fromPlus.way(end);
                const bool over = way && std::any_of(way->begin(), way->end(),
                                                     [&](const LeadStep& step) { return step.wire == id; });
                if (over) {
                    const Fault fault = faultAt(survey, source.source, fuse, *way, id);
                    worst = !worst || fault.share() > worst->share() ? fault : *worst;
                }
            }
        }
    }
    return worst;
}

/// The smallest standard area that stands the fault until the fuse opens. A thicker wire lets more current
/// through, with which the fuse opens sooner: that is left out.
std::optional<double> sufficientArea_m2(const Survey& survey, const Fault& fault) {
    Wire wire = survey.circuit().wires.at(fault.wire);
    for (auto area_m2 = nextWireArea_m2(wire.area_m2); area_m2; area_m2 = nextWireArea_m2(*area_m2)) {
        wire.area_m2 = *area_m2;
        if (stands_s(survey, wire, fault.current_A) >= fault.opens_s) {
            return area_m2;
        }
    }
    return std::nullopt;
}

std::vector<Remedy> remedies(const Survey& survey, const Branch& fuse, const Fault& fault) {
    const std::string name = nameOf(survey.circuit(), fault.wire);
    std::vector<Remedy> remedies;
    if (const auto area_m2 = sufficientArea_m2(survey, fault)) {
        const Text text = say("Lay {} in {}", name, amount(*area_m2, QuantityKind::WireArea));
        remedies.push_back({say("{}.", text), areaEdit(survey.circuit(), {{fault.wire, *area_m2}}, text)});
    }
    remedies.push_back({say("Fit a smaller fuse as {}, or give {} one of its own at its start.",
                            nameOf(survey.circuit(), fuse.part), name),
                        {}});
    return remedies;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const Branch& branch : survey.branches()) {
        if (branch.sort != BranchSort::Fuse) {
            continue;
        }
        const FuseRating& fuse = *survey.features(branch.part).fuse;
        const auto fault = worstFault(survey, branch, fuse);
        if (!fault || fault->opens_s <= fault->stands_s) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {branch.part};
        finding.wires = {fault->wire};
        finding.value = std::min(fault->opens_s, 1e6);
        finding.limit = fault->stands_s;
        finding.kind = QuantityKind::Time;
        finding.what = say(
            "A short at the far end of {} draws {}; {} may take {} to open, but the wire stands it for {}.",
            nameOf(survey.circuit(), fault->wire), amount(fault->current_A, QuantityKind::Current),
            nameOf(survey.circuit(), branch.part),
            std::isinf(fault->opens_s) ? say("for ever") : Text(amount(fault->opens_s, finding.kind)),
            amount(fault->stands_s, finding.kind));
        finding.why = say("The wire burns before the fuse opens, and sets fire to what lies beside it.");
        finding.remedies = remedies(survey, branch, *fault);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kWireBurnsBeforeFuse{
    "wire-burns-before-fuse",
    words("Wire burns before the fuse opens"),
    SignalWord::Warning,
    words("IEC 60949, IEC 60364-5-54: I²t = k²S²; slow edge of blade fuses"),
    false,
    check};

} // namespace pumpwright

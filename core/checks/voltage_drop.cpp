#include "core/checks/remedy_edit.h"
#include "core/checks/running_state.h"
#include "core/checks/standard_size.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/conductor.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace pumpwright {
namespace {

/// A larger gauge is chosen so that this share of the allowed drop is used at most.
constexpr double kRemedyMargin = 0.95;

/// One wire on the way of a load.
struct WireOnWay {
    double current_A = 0;
    double length_m = 0;
    double area_m2 = 0;
};

/// What is lost between source and load.
struct Drop {
    double supply_V = 0;
    double lost_V = 0;
    std::map<WireId, WireOnWay> wires;
    std::optional<double> at_s;

    double share() const { return supply_V > 0 ? lost_V / supply_V : 0; }
};

double wireLoss_V(const WireOnWay& wire, double ambient_K) {
    return wire.current_A * copperResistivity_ohmm(ambient_K) * wire.length_m / wire.area_m2;
}

double wireLoss_V(const std::map<WireId, WireOnWay>& wires, double ambient_K) {
    double sum_V = 0;
    for (const auto& [id, wire] : wires) {
        sum_V += wireLoss_V(wire, ambient_K);
    }
    return sum_V;
}

double wireCurrent_A(const Survey& survey, const WireId& id, const std::optional<TimeSpan>& run) {
    if (run) {
        if (const Channel* current = survey.recording()->wire(id, probe::kCurrent)) {
            return std::abs(current->mean(run->from_s, run->to_s));
        }
    }
    const auto& expected = survey.expectedCurrents().wires;
    const auto found = expected.find(id);
    return found == expected.end() ? 0 : found->second.running_A;
}

std::map<WireId, WireOnWay> wiresOnWay(const Survey& survey, const LoadPath& path,
                                       const std::optional<TimeSpan>& run) {
    std::map<WireId, WireOnWay> wires;
    for (const std::vector<LeadStep>* way : {&path.feed, &path.back}) {
        for (const LeadStep& step : *way) {
            if (step.wire) {
                const Wire& wire = survey.circuit().wires.at(*step.wire);
                wires[*step.wire] = {wireCurrent_A(survey, *step.wire, run), wire.length_m, wire.area_m2};
            }
        }
    }
    return wires;
}

std::optional<double> meanVoltage_V(const Survey& survey, const End& plus, const End& minus,
                                    const TimeSpan& span) {
    const Channel* high = survey.recording()->terminal(plus);
    const Channel* low = survey.recording()->terminal(minus);
    if (high == nullptr || low == nullptr) {
        return std::nullopt;
    }
    return high->mean(span.from_s, span.to_s) - low->mean(span.from_s, span.to_s);
}

/// From the recorded terminal voltages where the load ran in the drive, else from the nameplates: then of the
/// wires alone, at the ambient temperature of the project.
Drop dropOf(const Survey& survey, const LoadPath& path) {
    const Source& source = *survey.features(*path.source).source;
    const auto run = settledRun(survey, path.part, path.load);
    Drop drop{source.emf_V, 0, wiresOnWay(survey, path, run), std::nullopt};
    if (run) {
        const auto supply_V =
            meanVoltage_V(survey, {*path.source, source.plus}, {*path.source, source.minus}, *run);
        const auto load_V =
            meanVoltage_V(survey, {path.part, path.load.from}, {path.part, path.load.to}, *run);
        if (supply_V && load_V) {
            return {*supply_V, *supply_V - *load_V, drop.wires, run->from_s};
        }
    }
    drop.lost_V = wireLoss_V(drop.wires, survey.circuit().limits.ambient_K);
    return drop;
}

/// Makes the wire that loses most larger until enough is saved; nothing where wires alone cannot save enough.
std::optional<std::map<WireId, double>> largerAreas_m2(const Survey& survey, const Drop& drop) {
    const double ambient_K = survey.circuit().limits.ambient_K;
    const double allowed_V = kRemedyMargin * survey.circuit().limits.voltageDropShare * drop.supply_V;
    const double elsewhere_V = std::max(0.0, drop.lost_V - wireLoss_V(drop.wires, ambient_K));
    std::map<WireId, WireOnWay> wires = drop.wires;
    std::map<WireId, double> areas_m2;
    while (elsewhere_V + wireLoss_V(wires, ambient_K) > allowed_V) {
        const auto worst = std::max_element(wires.begin(), wires.end(), [&](const auto& a, const auto& b) {
            return wireLoss_V(a.second, ambient_K) < wireLoss_V(b.second, ambient_K);
        });
        const auto area_m2 = worst == wires.end() ? std::nullopt : nextWireArea_m2(worst->second.area_m2);
        if (!area_m2) {
            return std::nullopt;
        }
        worst->second.area_m2 = *area_m2;
        areas_m2[worst->first] = *area_m2;
    }
    return areas_m2;
}

std::vector<Remedy> remedies(const Survey& survey, const LoadPath& path, const Drop& drop) {
    const std::string name = nameOf(survey.circuit(), path.part);
    std::vector<Remedy> remedies;
    if (const auto areas_m2 = largerAreas_m2(survey, drop)) {
        std::vector<Text> texts;
        for (const auto& [id, area_m2] : *areas_m2) {
            texts.push_back(
                say("{} in {}", nameOf(survey.circuit(), id), amount(area_m2, QuantityKind::WireArea)));
        }
        remedies.push_back({say("Lay {}.", listOf(texts)),
                            areaEdit(survey.circuit(), *areas_m2, say("Lay larger wires to {}", name))});
    }
    remedies.push_back({say("Shorten the wires to {}.", name), {}});
    return remedies;
}

Finding findingFor(const Rule& rule, const Survey& survey, const LoadPath& path, const Drop& drop) {
    Finding finding = newFinding(rule);
    finding.parts = {path.part};
    for (const auto& [id, wire] : drop.wires) {
        finding.wires.push_back(id);
    }
    finding.value = drop.share();
    finding.limit = survey.circuit().limits.voltageDropShare;
    finding.kind = QuantityKind::Share;
    finding.at_s = drop.at_s;
    finding.what =
        say("{} loses {} of {} on the way to and from it ({}), {}.", nameOf(survey.circuit(), path.part),
            amount(drop.lost_V, QuantityKind::Voltage), amount(drop.supply_V, QuantityKind::Voltage),
            amount(drop.share(), finding.kind),
            drop.at_s ? say("running in the drive") : say("by the nameplates, in the wires alone"));
    finding.why = say("A pump on low voltage runs slowly and takes longer to restore the vacuum.");
    finding.remedies = remedies(survey, path, drop);
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const LoadPath& path : survey.loadPaths()) {
        // Coils and electronics state the lowest voltage at which they work; that is not a matter of a share.
        if (!path.source || path.load.sort == LoadSort::Coil || path.load.sort == LoadSort::Electronic) {
            continue;
        }
        const Drop drop = dropOf(survey, path);
        if (drop.share() > survey.circuit().limits.voltageDropShare) {
            findings.push_back(findingFor(rule, survey, path, drop));
        }
    }
    return findings;
}

} // namespace

extern const Rule kVoltageDrop{
    "voltage-drop",
    words("Voltage drop in feed and return"),
    SignalWord::Caution,
    words("ABYC E-11: 10 % for circuits that are not critical; set in the project's limits"),
    false,
    check};

} // namespace pumpwright

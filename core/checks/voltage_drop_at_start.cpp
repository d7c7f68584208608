#include "core/checks/lead_values.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// [V] between source and motor while it starts. Common practice, no published source.
constexpr double kLimit_V = 1.2;

std::map<WireId, Wire> wiresOf(const Survey& survey, const LoadPath& path) {
    std::map<WireId, Wire> wires;
    for (const std::vector<LeadStep>* way : {&path.feed, &path.back}) {
        for (const LeadStep& step : *way) {
            if (step.wire) {
                wires.emplace(*step.wire, survey.circuit().wires.at(*step.wire));
            }
        }
    }
    return wires;
}

double wires_V(const Survey& survey, const std::map<WireId, Wire>& wires, double current_A) {
    double sum_V = 0;
    for (const auto& [id, wire] : wires) {
        sum_V += current_A * resistance_ohm(survey, wire);
    }
    return sum_V;
}

/// The wire that loses most in the next gauge, again and again until the rest fits.
std::optional<Remedy> largerWires(const Survey& survey, const LoadPath& path, double allowed_V) {
    std::map<WireId, Wire> wires = wiresOf(survey, path);
    std::map<WireId, double> areas_m2;
    while (wires_V(survey, wires, path.load.inrush_A) > allowed_V) {
        const auto worst = std::max_element(wires.begin(), wires.end(), [&](const auto& a, const auto& b) {
            return resistance_ohm(survey, a.second) < resistance_ohm(survey, b.second);
        });
        const auto area_m2 = worst == wires.end() ? std::nullopt : nextWireArea_m2(worst->second.area_m2);
        if (!area_m2) {
            return std::nullopt;
        }
        worst->second.area_m2 = *area_m2;
        areas_m2[worst->first] = *area_m2;
    }
    std::vector<Text> texts;
    for (const auto& [id, area_m2] : areas_m2) {
        texts.push_back(
            say("{} in {}", nameOf(survey.circuit(), id), amount(area_m2, QuantityKind::WireArea)));
    }
    return Remedy{say("Lay {}.", listOf(texts)),
                  areaEdit(survey.circuit(), areas_m2,
                           say("Lay larger wires to {}", nameOf(survey.circuit(), path.part)))};
}

Finding findingFor(const Rule& rule, const Survey& survey, const LoadPath& path, double lost_V) {
    Finding finding = newFinding(rule);
    finding.parts = {path.part};
    double wires_V = 0;
    for (const auto& [id, wire] : wiresOf(survey, path)) {
        finding.wires.push_back(id);
        wires_V += path.load.inrush_A * resistance_ohm(survey, wire);
    }
    finding.value = lost_V;
    finding.limit = kLimit_V;
    finding.kind = QuantityKind::Voltage;
    finding.what = say("While {} starts with {}, {} are lost in wires and fuse; {} are usual at most.",
                       nameOf(survey.circuit(), path.part), amount(path.load.inrush_A, QuantityKind::Current),
                       amount(lost_V, finding.kind), amount(kLimit_V, finding.kind));
    finding.why = say("The motor starts slowly, and a relay on the same wires may drop out and chatter.");
    const double elsewhere_V = lost_V - wires_V;
    if (auto remedy = largerWires(survey, path, kLimit_V - elsewhere_V)) {
        finding.remedies.push_back(std::move(*remedy));
    }
    finding.remedies.push_back({say("Shorten the wires to {}.", nameOf(survey.circuit(), path.part)), {}});
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const LoadPath& path : survey.loadPaths()) {
        if (!path.source || path.load.sort != LoadSort::Motor) {
            continue;
        }
        const double lost_V =
            path.load.inrush_A * (resistance_ohm(survey, path.feed) + resistance_ohm(survey, path.back));
        if (lost_V > kLimit_V) {
            findings.push_back(findingFor(rule, survey, path, lost_V));
        }
    }
    return findings;
}

} // namespace

extern const Rule kVoltageDropAtStart{"voltage-drop-at-start",
                                      words("Voltage drop while the motor starts"),
                                      SignalWord::Caution,
                                      words("common practice, no published source"),
                                      false,
                                      check};

} // namespace pumpwright

#include "core/checks/remedy_edit.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// Areas that come from AWG and from mm² differ by less.
constexpr double kSameArea = 1.02;

std::optional<WireId> thinnest(const Survey& survey, const std::vector<LeadStep>& way) {
    std::optional<WireId> found;
    for (const LeadStep& step : way) {
        if (step.wire && (!found || survey.circuit().wires.at(*step.wire).area_m2 <
                                        survey.circuit().wires.at(*found).area_m2)) {
            found = step.wire;
        }
    }
    return found;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const LoadPath& path : survey.loadPaths()) {
        const auto feed = thinnest(survey, path.feed);
        const auto back = thinnest(survey, path.back);
        if (!feed || !back) {
            continue;
        }
        const double feed_m2 = survey.circuit().wires.at(*feed).area_m2;
        const double back_m2 = survey.circuit().wires.at(*back).area_m2;
        if (back_m2 * kSameArea >= feed_m2) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), *back);
        const std::string area = amount(feed_m2, QuantityKind::WireArea);
        Finding finding = newFinding(rule);
        finding.parts = {path.part};
        finding.wires = {*back};
        finding.value = back_m2;
        finding.limit = feed_m2;
        finding.kind = QuantityKind::WireArea;
        finding.what = say("{} on the way back from {} has {}; no wire that feeds it is below {}.", name,
                           nameOf(survey.circuit(), path.part), amount(back_m2, finding.kind), area);
        finding.why =
            say("The way back carries the same current: there the voltage is lost and the wire warms.");
        finding.remedies = {{say("Lay {} in {}.", name, area), areaEdit(survey.circuit(), {{*back, feed_m2}},
                                                                        say("Lay {} in {}", name, area))}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kGroundThinnerThanFeed{"ground-thinner-than-feed",
                                         words("Ground wire thinner than the feed"),
                                         SignalWord::Notice,
                                         words("common practice, no published source"),
                                         false,
                                         check};

} // namespace pumpwright

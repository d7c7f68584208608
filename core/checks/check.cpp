#include "core/checks/rule.h"
#include "core/checks/survey.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

/// Results of a repeated run differ by less; a value worse by more than this share ends a waiver.
constexpr double kSameValue = 1e-3;

bool noWorse(const Finding& finding, double waived) {
    const double margin = kSameValue * std::abs(waived);
    return finding.value >= finding.limit ? finding.value <= waived + margin
                                          : finding.value >= waived - margin;
}

void attachWaiver(Finding& finding, const Waivers& waivers) {
    const auto found = std::find_if(waivers.begin(), waivers.end(), [&](const Waiver& waiver) {
        return waiver.rule == finding.rule && waiver.subjects == finding.subjects() &&
               noWorse(finding, waiver.value);
    });
    if (found != waivers.end()) {
        finding.waiver = *found;
    }
}

/// How many times the value is past the limit, in whichever direction; infinite against a limit of zero.
double excess(const Finding& finding) {
    const double smaller = std::min(std::abs(finding.value), std::abs(finding.limit));
    const double larger = std::max(std::abs(finding.value), std::abs(finding.limit));
    return smaller > 0 ? larger / smaller : std::numeric_limits<double>::infinity();
}

} // namespace

Finding newFinding(const Rule& rule) {
    Finding finding;
    finding.rule = std::string(rule.id);
    finding.title = std::string(rule.title);
    finding.word = rule.word;
    finding.source = std::string(rule.source);
    return finding;
}

std::vector<Finding> findingsOf(const Rule& rule, const CheckInputs& inputs) {
    return rule.check(rule, Survey(inputs));
}

std::vector<Finding> checkCircuit(const CheckInputs& inputs) {
    const Survey survey(inputs);
    std::vector<Finding> findings;
    for (const Rule* rule : rules()) {
        if (rule->needsDrive && inputs.drive == nullptr) {
            continue;
        }
        for (Finding& finding : rule->check(*rule, survey)) {
            attachWaiver(finding, inputs.circuit.waivers);
            findings.push_back(std::move(finding));
        }
    }
    std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        return a.word != b.word ? a.word < b.word : excess(a) > excess(b);
    });
    return findings;
}

} // namespace pumpwright

#pragma once

#include "core/checks/finding.h"
#include "core/nets/nets.h"
#include "core/simulate/drive.h"

#include <span>
#include <string_view>
#include <vector>

namespace pumpwright {

class Survey;

/// What is checked. `drive` is null while no run is there; rules that need it then stay silent.
struct CheckInputs {
    const Circuit& circuit;
    const Nets& nets;
    const DriveResult* drive = nullptr;
};

/// One thing to check. Rules are pure: the same survey gives the same findings.
struct Rule {
    std::string_view id;     ///< the name of its file, page and test, with hyphens
    std::string_view title;  ///< plain words
    SignalWord word;         ///< the worst that it reports
    std::string_view source; ///< of its limit
    bool needsDrive;
    std::vector<Finding> (*check)(const Rule& rule, const Survey& survey);
};

/// A finding of this rule with its id, title, word and source; the rule fills in the rest.
Finding newFinding(const Rule& rule);

/// All rules in the order that users see.
std::span<const Rule* const> rules();

/// Findings of one rule, as it states them.
std::vector<Finding> findingsOf(const Rule& rule, const CheckInputs& inputs);

/// Findings of all rules, waivers attached, sorted by signal word and then by how far over the limit.
/// A waiver holds for the same rule and subjects as long as the value is no worse than when it was given.
std::vector<Finding> checkCircuit(const CheckInputs& inputs);

} // namespace pumpwright

#include "core/sheet/fault_table.h"

#include "core/checks/wording.h"
#include "core/parts/part_kind.h"
#include "core/sheet/fault_search.h"
#include "core/sheet/references.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// Rows of one symptom, in the order in which they are gone through.
struct Symptom {
    std::string text;
    std::vector<std::pair<FaultTest, std::vector<std::string>>> tests; ///< with the causes of a wrong reading
};

bool isMotor(const Part& part) {
    const std::vector<Load> loads = kindOf(part).features(part).loads;
    return std::ranges::find(loads, LoadSort::Motor, &Load::sort) != loads.end();
}

std::string stoppedText(const Circuit& circuit, const PartId& id) {
    const Part& part = circuit.parts.at(id);
    const bool silent = part.kind == "buzzer";
    return nameOf(circuit, id) + (isMotor(part) ? " does not run" : silent ? " stays silent" : " stays dark");
}

std::string warnedText(const Circuit& circuit, const PartId& id) {
    return nameOf(circuit, id) + (circuit.parts.at(id).kind == "buzzer" ? " sounds" : " lights");
}

/// "H1: slipped off" and "H2: slipped off" as "H1, H2: slipped off".
std::string causesText(const std::vector<std::string>& titles) {
    std::vector<std::pair<std::string, std::vector<std::string>>> namesByFailure;
    for (const std::string& title : titles) {
        const std::size_t colon = std::min(title.find(": "), title.size());
        const std::string failure = title.substr(colon);
        auto found =
            std::ranges::find_if(namesByFailure, [&](const auto& one) { return one.first == failure; });
        if (found == namesByFailure.end()) {
            found = namesByFailure.insert(found, {failure, {}});
        }
        found->second.push_back(title.substr(0, colon));
    }
    std::vector<std::string> texts;
    for (auto& [failure, names] : namesByFailure) {
        texts.push_back(joinedReferences(std::move(names)) + failure);
    }
    return fmt::format("{}", fmt::join(texts, "; "));
}

void addCause(Symptom& symptom, FaultTest test, const std::string& cause) {
    auto& tests = symptom.tests;
    const auto same = std::ranges::find_if(tests, [&](const auto& one) { return one.first.isSame(test); });
    if (same != tests.end()) {
        same->second.push_back(cause);
    } else {
        tests.push_back({std::move(test), {cause}});
    }
}

std::vector<Symptom> symptomsOf(const Survey& survey, const StandingTests& tests,
                                const BreakdownStudy& study) {
    const FaultSearch search(survey, tests);
    std::vector<Symptom> symptoms;
    for (const BreakdownOutcome& outcome : study.outcomes) {
        const std::string text = symptomText(survey.circuit(), outcome);
        if (text.empty() || outcome.broken.size() != 1) {
            continue;
        }
        auto symptom = std::ranges::find(symptoms, text, &Symptom::text);
        if (symptom == symptoms.end()) {
            symptom = symptoms.insert(symptoms.end(), {text, {}});
        }
        addCause(*symptom, search.testFor(outcome), outcome.broken.front().title);
    }
    return symptoms;
}

} // namespace

std::string symptomText(const Circuit& circuit, const BreakdownOutcome& outcome) {
    std::vector<std::string> texts;
    for (const PartId& id : outcome.stopped) {
        texts.push_back(stoppedText(circuit, id));
    }
    for (const PartId& id : outcome.runsOn) {
        texts.push_back(nameOf(circuit, id) + " does not stop");
    }
    for (const PartId& id : outcome.chatters) {
        texts.push_back(nameOf(circuit, id) + " chatters");
    }
    for (const PartId& id : outcome.warned) {
        texts.push_back(warnedText(circuit, id));
    }
    if (outcome.lostAt_s) {
        texts.emplace_back("the pedal gets hard");
    }
    for (const PartId& id : outcome.openedFuses) {
        texts.push_back(nameOf(circuit, id) + " opens");
    }
    for (const WireId& id : outcome.overheatedWires) {
        texts.push_back(nameOf(circuit, id) + " gets hot");
    }
    return fmt::format("{}", fmt::join(texts, ", "));
}

SheetTable faultTable(const Survey& survey, const StandingTests& tests, const BreakdownStudy& study) {
    SheetTable table{"Fault finding",
                     {"What you notice", "Do", "Measure", "Should read", "If not, likely"},
                     std::vector<bool>(5, false),
                     {}};
    table.groupedByFirst = true;
    for (Symptom& symptom : symptomsOf(survey, tests, study)) {
        std::ranges::stable_sort(symptom.tests, {}, [](const auto& one) { return one.first.order; });
        for (const auto& [test, causes] : symptom.tests) {
            table.rows.push_back({symptom.text, test.act, test.where, test.reads, causesText(causes)});
        }
    }
    return table;
}

} // namespace pumpwright

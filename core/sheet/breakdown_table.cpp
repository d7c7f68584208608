#include "core/sheet/breakdown_table.h"

#include "core/checks/wording.h"
#include "core/sheet/cells.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace pumpwright {
namespace {

std::string joinedOr(const std::vector<std::string>& texts, std::string_view separator) {
    return texts.empty() ? std::string(kNothing) : fmt::format("{}", fmt::join(texts, separator));
}

/// Fuses, wires and loads that fare otherwise than in the sound drive.
std::string alsoText(const Circuit& circuit, const BreakdownOutcome& outcome, const Speech& speech) {
    std::vector<std::string> also;
    const auto add = [&](const auto& ids, auto sentence) {
        if (!ids.empty()) {
            also.push_back(speech(sentence(listOf(namesOf(circuit, ids)))));
        }
    };
    add(outcome.openedFuses, [&](const Text& fuses) {
        return outcome.fuseSavedWires() ? say("{} opens in time, no wire is harmed", fuses)
                                        : say("{} opens", fuses);
    });
    add(outcome.overheatedWires,
        [](const Text& wires) { return say("{} too hot for the insulation", wires); });
    add(outcome.stopped, [](const Text& loads) { return say("{} out of action", loads); });
    if (outcome.status == DriveStatus::Stopped) {
        also.push_back(speech(say("the drive stopped: {}", outcome.message)));
    }
    return joinedOr(also, "; ");
}

} // namespace

std::string failuresText(const BreakdownOutcome& outcome) {
    std::vector<std::string> titles;
    for (const Breakdown& breakdown : outcome.broken) {
        titles.push_back(breakdown.title);
    }
    return joinedOr(titles, " + ");
}

SheetTable breakdownTable(const Circuit& circuit, const BreakdownStudy& study, const Speech& speech) {
    SheetTable table{
        words("Breakdowns, worst first"),
        {words("What fails"), words("What comes of it"), words("The driver notices"), words("Also")},
        {false, false, false, false},
        {}};
    for (const BreakdownOutcome& outcome : study.outcomes) {
        table.rows.push_back({failuresText(outcome), std::string(consequenceName(outcome.consequence)),
                              joinedOr(outcome.noticed, "; "), alsoText(circuit, outcome, speech)});
    }
    return table;
}

} // namespace pumpwright

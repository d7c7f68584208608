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
std::string alsoText(const Circuit& circuit, const BreakdownOutcome& outcome) {
    std::vector<std::string> also;
    const auto add = [&](const auto& ids, std::string_view what) {
        if (!ids.empty()) {
            also.push_back(fmt::format("{} {}", listOf(namesOf(circuit, ids)).english(), what));
        }
    };
    add(outcome.openedFuses, outcome.fuseSavedWires() ? "opens in time, no wire is harmed" : "opens");
    add(outcome.overheatedWires, "too hot for the insulation");
    add(outcome.stopped, "out of action");
    if (outcome.status == DriveStatus::Stopped) {
        also.push_back("the drive stopped: " + outcome.message);
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

SheetTable breakdownTable(const Circuit& circuit, const BreakdownStudy& study) {
    SheetTable table{"Breakdowns, worst first",
                     {"What fails", "What comes of it", "The driver notices", "Also"},
                     {false, false, false, false},
                     {}};
    for (const BreakdownOutcome& outcome : study.outcomes) {
        table.rows.push_back({failuresText(outcome), std::string(consequenceName(outcome.consequence)),
                              joinedOr(outcome.noticed, "; "), alsoText(circuit, outcome)});
    }
    return table;
}

} // namespace pumpwright

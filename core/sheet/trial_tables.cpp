#include "core/sheet/trial_tables.h"

#include "core/sheet/cells.h"
#include "core/sheet/references.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <functional>

namespace pumpwright {
namespace {

enum class Better { Less, More, Neither };

/// One result of a trial: as a number to be ranked, and as people read it.
struct Measure {
    std::string label;
    Better better;
    std::function<double(const TrialOutcome&)> value;
    std::string (*text)(double value);
};

/// Stands for the lowest vacuum of a plan without presses; real ones are not below zero by so much.
constexpr double kNoPress = -1e9;

std::string count(double value) {
    return fmt::format("{:.0f}", value);
}
std::string yesOrNo(double value) {
    return value > 0 ? "yes" : "no";
}
std::string vacuum(double value_Pa) {
    const double unit_Pa = displayUnits(QuantityKind::GaugeVacuum).front().factor; // kPa
    return value_Pa <= kNoPress ? std::string(kNothing) : fmt::format("{:.1f}", value_Pa / unit_Pa);
}
std::string money(double value) {
    return fmt::format("{:.2f}", value);
}

template <SignalWord word>
double openFindings(const TrialOutcome& outcome) {
    return outcome.openFindings[static_cast<std::size_t>(word)];
}

std::vector<Measure> measures(const std::string& currency, const PriceList& prices) {
    return {
        {"Contacts chatter", Better::Less,
         [](const TrialOutcome& one) { return one.numbers.chatters ? 1.0 : 0.0; }, yesOrNo},
        {"Closings in 2 s, most", Better::Neither,
         [](const TrialOutcome& one) { return one.numbers.mostClosings; }, count},
        {"Presses without full assist", Better::Less,
         [](const TrialOutcome& one) { return static_cast<double>(one.numbers.lackingPresses); }, count},
        {"Lowest vacuum in a press, kPa", Better::More,
         [](const TrialOutcome& one) { return one.numbers.lowestVacuum_Pa.value_or(kNoPress); }, vacuum},
        {"Reserve, presses", Better::More,
         [](const TrialOutcome& one) { return static_cast<double>(one.reservePresses); }, count},
        {"Pump starts", Better::Less,
         [](const TrialOutcome& one) { return static_cast<double>(one.numbers.pumpStarts); }, count},
        {"Pump runs for, s", Better::Less, [](const TrialOutcome& one) { return one.numbers.pumpRunning_s; },
         count},
        {"Findings: DANGER", Better::Less, openFindings<SignalWord::Danger>, count},
        {"WARNING", Better::Less, openFindings<SignalWord::Warning>, count},
        {"CAUTION", Better::Less, openFindings<SignalWord::Caution>, count},
        {"NOTICE", Better::Less, openFindings<SignalWord::Notice>, count},
        {fmt::format("Price, {}", currency), Better::Less,
         [&prices](const TrialOutcome& one) { return billOf(one.circuit, prices).total; }, money},
    };
}

/// The columns that show the same text as this value: what looks alike is alike.
std::string columnsWith(double value, const std::vector<double>& values, const Measure& measure) {
    std::vector<std::string> columns;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (measure.text(values[i]) == measure.text(value)) {
            columns.push_back(trialColumn(i));
        }
    }
    return fmt::format("{}", fmt::join(columns, ", "));
}

std::vector<std::string> row(const Measure& measure, const std::vector<TrialOutcome>& outcomes) {
    std::vector<std::string> cells{measure.label};
    std::vector<double> values;
    for (const TrialOutcome& outcome : outcomes) {
        values.push_back(measure.value(outcome));
        cells.push_back(measure.text(values.back()));
    }
    const auto [least, most] = std::ranges::minmax(values);
    if (measure.better == Better::Neither) {
        cells.resize(cells.size() + 2, kNothing);
    } else if (measure.text(least) == measure.text(most)) {
        cells.emplace_back("all alike");
        cells.emplace_back(kNothing);
    } else {
        const bool less = measure.better == Better::Less;
        cells.push_back(columnsWith(less ? least : most, values, measure));
        cells.push_back(columnsWith(less ? most : least, values, measure));
    }
    return cells;
}

std::string nameWithStop(const TrialOutcome& outcome) {
    return outcome.status == DriveStatus::Finished
               ? outcome.name
               : outcome.name + " (its drive stopped: " + outcome.message + ")";
}

} // namespace

std::string trialColumn(std::size_t index) {
    return index == 0 ? "Base" : std::to_string(index);
}

SheetTable trialIdeas(const std::vector<TrialOutcome>& outcomes) {
    SheetTable table{"Trials", {"", "Idea", "Added parts"}, {false, false, false}, {}};
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        std::vector<std::string> added;
        for (const PartId& id : outcomes[i].addedParts) {
            added.push_back(partName(outcomes[i].circuit, id));
        }
        table.rows.push_back(
            {trialColumn(i), nameWithStop(outcomes[i]),
             added.empty() ? std::string(kNothing) : fmt::format("{}", fmt::join(added, ", "))});
    }
    return table;
}

SheetTable trialResults(const std::vector<TrialOutcome>& outcomes, const PriceList& prices) {
    SheetTable table{"Results", {"Result"}, {false}, {}};
    if (outcomes.empty()) {
        return table;
    }
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        table.columns.push_back(trialColumn(i));
        table.numeric.push_back(true);
    }
    table.columns.emplace_back("Best");
    table.columns.emplace_back("Worst");
    table.numeric.insert(table.numeric.end(), {false, false});
    for (const Measure& measure : measures(outcomes.front().circuit.currency, prices)) {
        table.rows.push_back(row(measure, outcomes));
    }
    return table;
}

} // namespace pumpwright

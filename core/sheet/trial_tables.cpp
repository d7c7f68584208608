#include "core/sheet/trial_tables.h"

#include "core/sheet/cells.h"
#include "core/sheet/references.h"
#include "core/study/measure.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <functional>
#include <optional>

namespace pumpwright {
namespace {

/// One result of a trial: as a number to be ranked, and as people read it.
struct Row {
    std::string label;
    Better better;
    std::function<std::optional<double>(const TrialOutcome&)> value;
    std::function<std::string(std::optional<double>)> text;
};

/// Columns are narrow: the unit stands in the label.
Row rowOf(const Measure& measure) {
    const auto value = [&measure](const TrialOutcome& one) { return measure.value(one); };
    if (measure.sort != Measure::Sort::Quantity) {
        return {std::string(measure.label), measure.better, value,
                [&measure](std::optional<double> si) { return measureText(measure, si); }};
    }
    const DisplayUnit unit = displayUnits(measure.kind).front();
    const int decimals = measure.kind == QuantityKind::GaugeVacuum ? 1 : 0;
    return {fmt::format("{}, {}", measure.label, unit.symbol), measure.better, value,
            [unit, decimals](std::optional<double> si) {
                return si ? fmt::format("{:.{}f}", *si / unit.factor, decimals) : std::string(kNothing);
            }};
}

std::vector<Row> rowsOf(const std::string& currency, const PriceList& prices) {
    std::vector<Row> rows;
    for (const Measure& measure : measures()) {
        rows.push_back(rowOf(measure));
    }
    rows.push_back({fmt::format("Price, {}", currency), Better::Less,
                    [&prices](const TrialOutcome& one) { return billOf(one.circuit, prices).total; },
                    [](std::optional<double> money) { return fmt::format("{:.2f}", money.value_or(0)); }});
    return rows;
}

/// The columns that show the same text as this value: what looks alike is alike.
std::string columnsWith(std::optional<double> value, const std::vector<std::optional<double>>& values,
                        const Row& measure) {
    std::vector<std::string> columns;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (measure.text(values[i]) == measure.text(value)) {
            columns.push_back(trialColumn(i));
        }
    }
    return fmt::format("{}", fmt::join(columns, ", "));
}

std::vector<std::string> cellsOf(const Row& measure, const std::vector<TrialOutcome>& outcomes) {
    std::vector<std::string> cells{measure.label};
    std::vector<std::optional<double>> values; // nothing counts as least
    for (const TrialOutcome& outcome : outcomes) {
        values.push_back(measure.value(outcome));
        cells.push_back(measure.text(values.back()));
    }
    const auto [least, most] = std::ranges::minmax(values);
    if (measure.better == Better::Neither) {
        cells.resize(cells.size() + 2, kNothing);
    } else if (measure.text(least) == measure.text(most)) {
        cells.emplace_back(words("all alike"));
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
    return index == 0 ? words("Base") : std::to_string(index);
}

SheetTable trialIdeas(const std::vector<TrialOutcome>& outcomes) {
    SheetTable table{words("Trials"), {"", words("Idea"), words("Added parts")}, {false, false, false}, {}};
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
    SheetTable table{words("Results"), {words("Result")}, {false}, {}};
    if (outcomes.empty()) {
        return table;
    }
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        table.columns.push_back(trialColumn(i));
        table.numeric.push_back(true);
    }
    table.columns.emplace_back(words("Best"));
    table.columns.emplace_back(words("Worst"));
    table.numeric.insert(table.numeric.end(), {false, false});
    for (const Row& row : rowsOf(outcomes.front().circuit.currency, prices)) {
        table.rows.push_back(cellsOf(row, outcomes));
    }
    return table;
}

} // namespace pumpwright

#include "core/sheet/sweep_tables.h"

#include "core/sheet/cells.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::string text(const SweepAxis& axis, double value) {
    return formatQuantity(value, axis.what.spec->kind);
}

/// With "good" behind it where it is, so that a map is read without colours.
std::string resultText(const SweepPoint& point, const Measure& measure, std::optional<double> goal) {
    if (point.outcome.status != DriveStatus::Finished) {
        return "the drive stopped";
    }
    const std::optional<double> value = sweepValue(point, measure);
    const bool good = goal && isGood(measure, value, *goal);
    return measureText(measure, value) + (good ? ", good" : "");
}

std::string titleOf(const Measure& measure, std::optional<double> goal) {
    if (!goal) {
        return std::string(measure.label);
    }
    return fmt::format("{}; good is {}{}", measure.label, measureText(measure, goal),
                       measure.sort == Measure::Sort::YesNo ? ""
                       : measure.better == Better::More     ? " or more"
                                                            : " or less");
}

SheetTable curveTable(const SweepStudy& study, const Measure& measure, std::optional<double> goal) {
    const SweepAxis& axis = study.axes.front();
    SheetTable table{titleOf(measure, goal), {axis.what.label, "Result"}, {true, true}, {}};
    for (const SweepPoint& point : study.points) {
        table.rows.push_back({text(axis, point.at.front()), resultText(point, measure, goal)});
    }
    return table;
}

/// The first axis downwards, the second to the right.
SheetTable mapTable(const SweepStudy& study, const Measure& measure, std::optional<double> goal) {
    const SweepAxis& down = study.axes.front();
    const SweepAxis& right = study.axes.back();
    SheetTable table{
        titleOf(measure, goal), {fmt::format("{} / {}", down.what.label, right.what.label)}, {true}, {}};
    for (int i = 0; i < right.points; ++i) {
        table.columns.push_back(text(right, right.at(i)));
        table.numeric.push_back(true);
    }
    for (int row = 0; row < down.points; ++row) {
        std::vector<std::string> cells{text(down, down.at(row))};
        for (int column = 0; column < right.points; ++column) {
            const auto index = static_cast<std::size_t>(column * down.points + row);
            cells.push_back(index < study.points.size() ? resultText(study.points[index], measure, goal)
                                                        : std::string(kNothing));
        }
        table.rows.push_back(std::move(cells));
    }
    return table;
}

SheetTable thresholdTable(const SweepStudy& study) {
    const SweepAxis& axis = study.axes.front();
    SheetTable table{
        fmt::format("Thresholds of {}, found to {}", axis.what.label, text(axis, study.resolution)),
        {study.axes.size() > 1 ? study.axes.back().what.label : "", "Threshold"},
        {true, false},
        {}};
    for (const SweepThreshold& threshold : study.thresholds) {
        table.rows.push_back({threshold.second ? text(study.axes.back(), *threshold.second) : "",
                              thresholdText(study, threshold)});
    }
    if (!study.isComplete() || study.thresholds.size() < study.turns) {
        table.rows.push_back({"", "The study was ended before all were found."});
    } else if (table.rows.empty()) {
        table.rows.push_back({"", "The result turns good nowhere between the points."});
    }
    return table;
}

} // namespace

std::string thresholdText(const SweepStudy& study, const SweepThreshold& threshold) {
    const SweepAxis& axis = study.axes.front();
    return fmt::format("Good from {} {}, not yet at {}.", text(axis, threshold.good),
                       threshold.good > threshold.bad ? "up" : "down", text(axis, threshold.bad));
}

std::vector<SheetTable> sweepTables(const SweepStudy& study, const Measure& measure,
                                    std::optional<double> goal) {
    std::vector<SheetTable> tables;
    if (goal) {
        tables.push_back(thresholdTable(study));
    }
    tables.push_back(study.axes.size() > 1 ? mapTable(study, measure, goal)
                                           : curveTable(study, measure, goal));
    return tables;
}

} // namespace pumpwright

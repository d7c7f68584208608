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
        return words("the drive stopped");
    }
    const std::optional<double> value = sweepValue(point, measure);
    const bool good = goal && isGood(measure, value, *goal);
    const std::string result = measureText(measure, value);
    return good ? fmt::format("{}, {}", result, words("good")) : result;
}

Text titleOf(const Measure& measure, std::optional<double> goal) {
    const Text label = said(measure.label);
    if (!goal) {
        return label;
    }
    const std::string good = measureText(measure, goal);
    if (measure.sort == Measure::Sort::YesNo) {
        return say("{}; good is {}", label, said(good));
    }
    return measure.better == Better::More ? say("{}; good is {} or more", label, good)
                                          : say("{}; good is {} or less", label, good);
}

SheetTable curveTable(const SweepStudy& study, const Measure& measure, std::optional<double> goal,
                      const Speech& speech) {
    const SweepAxis& axis = study.axes.front();
    SheetTable table{speech(titleOf(measure, goal)), {axis.what.label, words("Result")}, {true, true}, {}};
    for (const SweepPoint& point : study.points) {
        table.rows.push_back({text(axis, point.at.front()), resultText(point, measure, goal)});
    }
    return table;
}

/// The first axis downwards, the second to the right.
SheetTable mapTable(const SweepStudy& study, const Measure& measure, std::optional<double> goal,
                    const Speech& speech) {
    const SweepAxis& down = study.axes.front();
    const SweepAxis& right = study.axes.back();
    SheetTable table{speech(titleOf(measure, goal)),
                     {fmt::format("{} / {}", down.what.label, right.what.label)},
                     {true},
                     {}};
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

SheetTable thresholdTable(const SweepStudy& study, const Speech& speech) {
    const SweepAxis& axis = study.axes.front();
    SheetTable table{
        speech(say("Thresholds of {}, found to {}", axis.what.label, text(axis, study.resolution))),
        {study.axes.size() > 1 ? study.axes.back().what.label : "", words("Threshold")},
        {true, false},
        {}};
    for (const SweepThreshold& threshold : study.thresholds) {
        table.rows.push_back({threshold.second ? text(study.axes.back(), *threshold.second) : "",
                              speech(thresholdText(study, threshold))});
    }
    if (!study.isComplete() || study.thresholds.size() < study.turns) {
        table.rows.push_back({"", words("The study was ended before all were found.")});
    } else if (table.rows.empty()) {
        table.rows.push_back({"", words("The result turns good nowhere between the points.")});
    }
    return table;
}

} // namespace

Text thresholdText(const SweepStudy& study, const SweepThreshold& threshold) {
    const SweepAxis& axis = study.axes.front();
    const std::string good = text(axis, threshold.good);
    const std::string bad = text(axis, threshold.bad);
    return threshold.good > threshold.bad ? say("Good from {} up, not yet at {}.", good, bad)
                                          : say("Good from {} down, not yet at {}.", good, bad);
}

std::vector<SheetTable> sweepTables(const SweepStudy& study, const Measure& measure,
                                    std::optional<double> goal, const Speech& speech) {
    std::vector<SheetTable> tables;
    if (goal) {
        tables.push_back(thresholdTable(study, speech));
    }
    tables.push_back(study.axes.size() > 1 ? mapTable(study, measure, goal, speech)
                                           : curveTable(study, measure, goal, speech));
    return tables;
}

} // namespace pumpwright

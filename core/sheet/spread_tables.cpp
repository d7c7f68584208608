#include "core/sheet/spread_tables.h"

#include "core/sheet/cells.h"
#include "core/study/rank_correlation.h"
#include "core/units/quantity_kind.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::string percent(double share) {
    return fmt::format("{:.1f} %", 100 * share);
}

std::vector<std::string> shareRow(std::string label, std::size_t count, const Proportion& proportion) {
    return {std::move(label), fmt::format("{}", count), percent(proportion.share),
            fmt::format("{} to {}", percent(proportion.low), percent(proportion.high))};
}

std::vector<std::string> percentileRow(std::string label, const std::optional<Percentiles>& values,
                                       QuantityKind kind) {
    if (!values) {
        return {std::move(label), kNothing, kNothing, kNothing};
    }
    return {std::move(label), formatQuantity(values->p5, kind), formatQuantity(values->p50, kind),
            formatQuantity(values->p95, kind)};
}

std::string correlation(std::optional<double> value) {
    return value ? fmt::format("{:+.2f}", *value) : std::string(kNothing);
}

/// Those that stand out from chance, and no more of them than anybody looks into.
SheetTable influenceTable(const SpreadSummary& summary, const Speech& speech) {
    constexpr std::size_t kMostShown = 12;
    const double chance = chanceCorrelation(summary.ranked);
    SheetTable table{
        speech(say("Tolerances that matter most: rank correlations of {} cars, beyond chance from {} on",
                   summary.ranked, fmt::format("{:.2f}", chance))),
        {words("Tolerance of"), words("with closings"), words("with assist"), words("with vacuum")},
        {false, true, true, true},
        {}};
    for (const Influence& influence : summary.influences) {
        if (influence.strongest() <= chance || table.rows.size() == kMostShown) {
            break;
        }
        table.rows.push_back({influence.what.label, correlation(influence.onClosings),
                              correlation(influence.onAssist), correlation(influence.onVacuum)});
    }
    if (table.rows.empty()) {
        table.rows.push_back({words("none that stands out"), kNothing, kNothing, kNothing});
    }
    return table;
}

} // namespace

std::vector<SheetTable> spreadTables(const SpreadSummary& summary, const Speech& speech) {
    return {{words("Shares"),
             {words("Cars"), words("Count"), words("Share"), words("True share, 95 % sure")},
             {false, true, true, true},
             {shareRow(words("with a contact that chatters"), summary.chattering, summary.chatters),
              shareRow(words("with a press without full assist"), summary.lacking, summary.lacks)}},
            {words("Percentiles"),
             {words("Worst press of a car"), words("5 % have less"), words("half have less"),
              words("95 % have less")},
             {false, true, true, true},
             {percentileRow(words("Lowest vacuum"), summary.lowestVacuum_Pa, QuantityKind::GaugeVacuum),
              percentileRow(words("Assist, of what is asked for"), summary.leastAssistShare,
                            QuantityKind::Share)}},
            influenceTable(summary, speech)};
}

} // namespace pumpwright

#include "core/sheet/spread_tables.h"

#include "core/sheet/cells.h"
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

} // namespace

std::vector<SheetTable> spreadTables(const SpreadSummary& summary) {
    return {{"Shares",
             {"Cars", "Count", "Share", "True share, 95 % sure"},
             {false, true, true, true},
             {shareRow("with a contact that chatters", summary.chattering, summary.chatters),
              shareRow("with a press without full assist", summary.lacking, summary.lacks)}},
            {"Percentiles",
             {"Worst press of a car", "5 % have less", "half have less", "95 % have less"},
             {false, true, true, true},
             {percentileRow("Lowest vacuum", summary.lowestVacuum_Pa, QuantityKind::GaugeVacuum),
              percentileRow("Assist, of what is asked for", summary.leastAssistShare, QuantityKind::Share)}}};
}

} // namespace pumpwright

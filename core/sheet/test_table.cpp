#include "core/sheet/test_table.h"

#include "core/sheet/cells.h"

#include <fmt/format.h>

#include <cmath>

namespace pumpwright {
void TestTables::startStage(std::string title) {
    constexpr std::size_t kMeasured = 4;
    m_stages.push_back({std::move(title),
                        {"Step", "Do", "Measure", "Expected", "Measured", "If it is off, suspect"},
                        {true, false, false, false, false, false},
                        {},
                        false,
                        kMeasured});
}

void TestTables::add(TestStep step) {
    m_stages.back().rows.push_back({std::to_string(++m_steps), std::move(step.act), std::move(step.where),
                                    std::move(step.expected), "", std::move(step.suspect)});
}

std::vector<SheetTable> TestTables::finished() && {
    std::erase_if(m_stages, [](const SheetTable& stage) { return stage.rows.empty(); });
    return std::move(m_stages);
}

std::string expectedText(std::optional<double> si, double tolerance, QuantityKind kind) {
    if (!si) {
        return "not reached in the simulation";
    }
    const double smallest = toDigits(tolerance, 1);
    const double shown = std::abs(*si) < smallest / 10 ? 0 : toDigits(*si, 3);
    const QuantityKind width = kind == QuantityKind::GaugeVacuum ? QuantityKind::PressureDifference : kind;
    return fmt::format("{} ± {}", settingText(shown, kind), formatQuantity(smallest, width));
}

} // namespace pumpwright

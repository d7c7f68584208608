#pragma once

#include "core/sheet/wiring_sheet.h"
#include "core/units/quantity_kind.h"

#include <optional>
#include <string>

namespace pumpwright {

/// One step: what is done, where it is measured, what should be read, what to suspect where it is off.
struct TestStep {
    std::string act;
    std::string where;
    std::string expected;
    std::string suspect;
};

/// Stages of tests, their steps counted through.
class TestTables {
public:
    void startStage(std::string title);
    void add(TestStep step);
    /// Without the stages that have no step.
    std::vector<SheetTable> finished() &&;

private:
    std::vector<SheetTable> m_stages;
    int m_steps = 0;
};

/// "12.5 V ± 0.3 V", with at most three digits; vacuum also in inHg. Where the simulation gave nothing: that
/// it did not come to it.
std::string expectedText(std::optional<double> si, double tolerance, QuantityKind kind);

} // namespace pumpwright

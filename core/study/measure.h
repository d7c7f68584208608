#pragma once

#include "core/study/drive_outcome.h"
#include "core/units/quantity_kind.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace pumpwright {

enum class Better { Less, More, Neither };

/// One result of a drive by which circuits are compared.
struct Measure {
    std::string_view id;    ///< as people type it: "lowest-vacuum"
    std::string_view label; ///< as they read it: "Lowest vacuum in a press"
    Better better;
    enum class Sort { YesNo, Count, Quantity } sort;
    QuantityKind kind;                                   ///< of a quantity
    std::optional<double> (*value)(const DriveOutcome&); ///< [SI]; nothing where the plan has no press
    /// What is good enough unless somebody says otherwise; nothing where that is a matter of taste.
    std::optional<double> (*goal)(const Circuit&);
};

/// All of them, as trials list them.
std::span<const Measure> measures();
/// The measure with this id, or nullptr.
const Measure* findMeasure(std::string_view id);

/// "yes", "3", "48.2 kPa".
std::string measureText(const Measure& measure, std::optional<double> value);

/// Whether a value is at or beyond the goal, on its better side.
bool isGood(const Measure& measure, std::optional<double> value, double goal);

} // namespace pumpwright

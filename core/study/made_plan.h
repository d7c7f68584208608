#pragma once

#include "core/circuit/circuit.h"
#include "core/units/result.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace pumpwright {

/// A sort of drive that plans are made of. Bounds are common practice, no published source; each value is
/// drawn evenly between them.
struct DriveSort {
    std::string_view id;    ///< as people type it: "car-park"
    std::string_view label; ///< as they read it: "Car park"
    double duration_s;      ///< usual
    struct Bounds {
        double low;
        double high;
    };
    Bounds pause_s; ///< from release to press
    Bounds hold_s;
    Bounds deceleration_mps2;
    Bounds altitude_m; ///< from `high` at the start to `low` at the end; both 0: as the circuit's plan has it
};

std::span<const DriveSort> driveSorts();
/// The sort with this id, or nullptr.
const DriveSort* findDriveSort(std::string_view id);

/// The circuit's plan with presses as this sort of drive has them: the same for the same seed on every
/// machine. Presses are as hard as the first booster's law has it with full assist; switches and charging as
/// for planFromTrace(). An error without a booster.
[[nodiscard]] Result<DrivePlan> madePlan(const Circuit& circuit, const DriveSort& sort, std::uint64_t seed,
                                         std::optional<double> duration_s = {});

} // namespace pumpwright

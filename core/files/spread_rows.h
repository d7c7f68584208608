#pragma once

#include "core/study/spread_tally.h"
#include "core/units/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// Where a row of a spread's CSV comes from: rows of other circuits or seeds must not be mixed.
struct SpreadOrigin {
    std::string checkSum;
    std::uint64_t seed = 1;
    friend bool operator==(const SpreadOrigin&, const SpreadOrigin&) = default;
};

std::string spreadHead();
/// A row of a car, with all digits, so that cars read back are the same.
std::string spreadRow(const SpreadOrigin& origin, const SpreadCar& car);

struct SpreadRows {
    SpreadOrigin origin;
    std::vector<SpreadCar> cars; ///< in order of their numbers
};

/// Reads rows that were written in one or more runs, one after the other, head lines among them or not. An
/// error where cars are missing between them, come twice, or are not of one circuit and seed.
[[nodiscard]] Result<SpreadRows> parseSpreadRows(std::string_view text, const std::string& fileName = {});

} // namespace pumpwright

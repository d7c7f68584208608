#pragma once

#include <span>
#include <string_view>

namespace pumpwright {

/// A place in a vehicle and what parts there have to stand.
struct VehiclePlace {
    std::string_view id; ///< stored in files: "under-bonnet"
    std::string_view label;
    double hottest_K;
    int water; ///< second digit of the protection code after IEC 60529 that parts there need
};

std::span<const VehiclePlace> places();
std::span<const std::string_view> placeIds();
/// The place with this id, or nullptr.
const VehiclePlace* findPlace(std::string_view id);

/// Protection codes after IEC 60529 that parts are sold with.
std::span<const std::string_view> ingressCodes();
/// The second digit of a code, protection from water; zero for an empty code.
int waterDigit(std::string_view ingressCode);

} // namespace pumpwright

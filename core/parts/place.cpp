#include "core/parts/place.h"

#include "core/units/text.h"

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

/// Temperatures and protection that builders reckon with: common practice, no published source (SAE J1211 and
/// ISO 16750-4 divide vehicles alike).
constexpr std::array<VehiclePlace, 5> kPlaces{{
    {"cabin", words("in the cabin"), 358.15, 0},
    {"under-bonnet", words("under the bonnet"), 378.15, 4},
    {"near-engine", words("under the bonnet, near the engine"), 398.15, 4},
    {"on-engine", words("on the engine"), 423.15, 4},
    {"underbody", words("under the floor or in a wheel arch"), 358.15, 6},
}};
constexpr std::array<std::string_view, 5> kPlaceIds{"cabin", "under-bonnet", "near-engine", "on-engine",
                                                    "underbody"};
constexpr std::array<std::string_view, 8> kIngressCodes{"IP20", "IP40", "IP44", "IP54",
                                                        "IP65", "IP66", "IP67", "IP68"};

} // namespace

std::span<const VehiclePlace> places() {
    return kPlaces;
}

std::span<const std::string_view> placeIds() {
    return kPlaceIds;
}

const VehiclePlace* findPlace(std::string_view id) {
    const auto found = std::find_if(kPlaces.begin(), kPlaces.end(),
                                    [&](const VehiclePlace& place) { return place.id == id; });
    return found == kPlaces.end() ? nullptr : found;
}

std::span<const std::string_view> ingressCodes() {
    return kIngressCodes;
}

int waterDigit(std::string_view ingressCode) {
    return ingressCode.size() < 4 ? 0 : ingressCode[3] - '0';
}

} // namespace pumpwright

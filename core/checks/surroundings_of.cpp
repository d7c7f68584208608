#include "core/checks/surroundings_of.h"

#include "core/parts/place.h"

#include <algorithm>

namespace pumpwright {

double surroundings_K(const Survey& survey, const PartId& id) {
    const VehiclePlace* place = findPlace(survey.part(id).place);
    return place == nullptr ? survey.circuit().limits.ambient_K : place->hottest_K;
}

double relayHeatShare(double surroundings_K) {
    constexpr double kRated_K = 296.15;
    constexpr double kWarm_K = 358.15;
    constexpr double kHot_K = 398.15;
    constexpr double kWarm = 50.0 / 70;
    constexpr double kHot = 30.0 / 70;
    if (surroundings_K <= kWarm_K) {
        return std::min(1.0, 1 - (1 - kWarm) * (surroundings_K - kRated_K) / (kWarm_K - kRated_K));
    }
    return std::max(0.0, kWarm - (kWarm - kHot) * (surroundings_K - kWarm_K) / (kHot_K - kWarm_K));
}

} // namespace pumpwright

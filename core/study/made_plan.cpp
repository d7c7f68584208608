#include "core/study/made_plan.h"

#include "core/study/brake_force.h"
#include "core/study/speed_trace.h"
#include "core/units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

namespace pumpwright {
namespace {

constexpr std::array kSorts{
    DriveSort{"city", words("City"), 1200, {15, 60}, {2, 8}, {0.8, 3}, {0, 0}},
    DriveSort{"highway", words("Highway"), 1800, {45, 240}, {1, 4}, {0.5, 3.5}, {0, 0}},
    DriveSort{"mountain-descent", words("Mountain descent"), 900, {6, 25}, {2, 6}, {1, 3}, {600, 2000}},
    DriveSort{"car-park", words("Car park"), 300, {3, 15}, {0.5, 2.5}, {0.5, 1.5}, {0, 0}},
};

constexpr double kRise_s = 0.25;

/// Draws that are the same on every machine: the standard fixes the generator's numbers, but not the
/// library's distributions.
class Draws {
public:
    explicit Draws(std::uint64_t seed) : m_random(seed) {}

    double between(const DriveSort::Bounds& bounds) {
        constexpr unsigned kSpareBits = 64 - 53;
        const double share = static_cast<double>(m_random() >> kSpareBits) * 0x1p-53;
        return std::lerp(bounds.low, bounds.high, share);
    }

private:
    std::mt19937_64 m_random;
};

/// To the hundredth, so that a plan is read and written without long tails of digits.
double rounded(double value) {
    return std::round(100 * value) / 100;
}

} // namespace

std::span<const DriveSort> driveSorts() {
    return kSorts;
}

const DriveSort* findDriveSort(std::string_view id) {
    const auto found = std::ranges::find(kSorts, id, &DriveSort::id);
    return found == kSorts.end() ? nullptr : &*found;
}

Result<DrivePlan> madePlan(const Circuit& circuit, const DriveSort& sort, std::uint64_t seed,
                           std::optional<double> duration_s) {
    const Part* booster = firstBooster(circuit);
    if (booster == nullptr) {
        return tl::unexpected(
            Error{ErrorCode::DanglingReference,
                  "The circuit has no booster: how hard a press is follows from its values.",
                  {}});
    }
    DrivePlan plan = withDuration(circuit.plan, duration_s.value_or(sort.duration_s));
    plan.name = fmt::format("{}, seed {}", sort.label, seed);
    plan.presses.clear();
    if (sort.altitude_m.high > 0) {
        plan.altitude = {{0, sort.altitude_m.high}, {plan.duration_s, sort.altitude_m.low}};
    }
    Draws draws(seed);
    for (double at_s = draws.between(sort.pause_s); at_s < plan.duration_s;) {
        Press press;
        press.at_s = rounded(at_s);
        press.hold_s = rounded(draws.between(sort.hold_s));
        press.rise_s = kRise_s;
        press.force_N = rounded(pedalForce_N(*booster, draws.between(sort.deceleration_mps2)));
        at_s += press.hold_s + press.rise_s + draws.between(sort.pause_s);
        if (press.at_s + press.hold_s + press.rise_s <= plan.duration_s) {
            plan.presses.push_back(press);
        }
    }
    return plan;
}

} // namespace pumpwright

#include "core/parts/fuse_band.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <span>

namespace pumpwright {
namespace {

struct BandPoint {
    double share; ///< of the rating
    double fast_s;
    double slow_s;
};

/// 100 hours at 110 %: the least that is printed, taken for both edges. No longest time is printed below 135
/// %.
constexpr double kHundredHours_s = 360000;

/// Opening times from data sheets that name ISO 8820-3; 160 % from type C sheets only, as is the slow edge at
/// 600 %, where the fast edge is that of type F.
constexpr std::array<BandPoint, 6> kBandCF{{
    {kFuseHoldsShare, kHundredHours_s, kHundredHours_s},
    {1.35, 0.75, 600},
    {1.60, 0.25, 50},
    {2.00, 0.15, 5},
    {3.50, 0.08, 0.5},
    {6.00, 0.03, 0.15},
}};
constexpr std::array<BandPoint, 5> kBandE{{
    {kFuseHoldsShare, kHundredHours_s, kHundredHours_s},
    {1.35, 60, 1800},
    {2.00, 2, 50},
    {3.50, 0.2, 7},
    {6.00, 0.04, 1},
}};

/// The rate rises from zero to the band's over this much more of the rating.
constexpr double kOnsetShare = 0.05;

std::span<const BandPoint> band(FuseType type) {
    return type == FuseType::E ? std::span<const BandPoint>(kBandE) : std::span<const BandPoint>(kBandCF);
}

double bandTime_s(const BandPoint& point, FuseEdge edge) {
    switch (edge) {
    case FuseEdge::Fast:
        return point.fast_s;
    case FuseEdge::Slow:
        return point.slow_s;
    case FuseEdge::Middle:
        break;
    }
    return std::sqrt(point.fast_s * point.slow_s);
}

/// 1/t in the band, straight lines of log t over log I, for shares above 110 %.
SmoothValue bandRate(FuseType type, double share, FuseEdge edge) {
    const auto points = band(type);
    const auto next = std::find_if(points.begin() + 1, points.end(),
                                   [&](const BandPoint& point) { return point.share >= share; });
    double power = 2; // adiabatic: I²t stays
    const BandPoint& from = *std::prev(next);
    if (next != points.end()) {
        power =
            -std::log(bandTime_s(*next, edge) / bandTime_s(from, edge)) / std::log(next->share / from.share);
    }
    const double rate = std::pow(share / from.share, power) / bandTime_s(from, edge);
    return {rate, power * rate / share};
}

struct ResistancePoint {
    double rating_A;
    double resistance_ohm;
};

/// Cold resistances: 20 and 40 A (type C) and all of type E from data sheets, the others values from memory
/// of typical data sheets, good for a tenth. Type F is taken as type C.
constexpr std::array<ResistancePoint, 9> kResistanceC{{{3, 31e-3},
                                                       {5, 17.9e-3},
                                                       {7.5, 10.9e-3},
                                                       {10, 7.7e-3},
                                                       {15, 4.8e-3},
                                                       {20, 3.38e-3},
                                                       {25, 2.5e-3},
                                                       {30, 2.0e-3},
                                                       {40, 1.44e-3}}};
constexpr std::array<ResistancePoint, 3> kResistanceE{{{30, 1.9e-3}, {35, 1.7e-3}, {40, 1.4e-3}}};

struct AmbientPoint {
    double ambient_K;
    double share;
};

/// Re-rating of a type E 40 A fuse, from its data sheet: 40, 34, 30, 25, 22 A.
constexpr std::array<AmbientPoint, 5> kAmbient{
    {{293.15, 1.0}, {338.15, 0.85}, {358.15, 0.75}, {383.15, 0.625}, {398.15, 0.55}}};

} // namespace

FuseType fuseType(std::string_view id) {
    if (id == "E") {
        return FuseType::E;
    }
    return id == "F" ? FuseType::F : FuseType::C;
}

FuseEdge fuseEdge(std::string_view id) {
    if (id == "fast") {
        return FuseEdge::Fast;
    }
    return id == "slow" ? FuseEdge::Slow : FuseEdge::Middle;
}

SmoothValue openingRate(FuseType type, double currentShare, FuseEdge edge) {
    if (currentShare <= kFuseHoldsShare) {
        return {0, 0};
    }
    const SmoothValue rate = bandRate(type, currentShare, edge);
    const double onset = (currentShare - kFuseHoldsShare) / kOnsetShare;
    if (onset >= 1) {
        return rate;
    }
    const double part = onset * onset * (3 - 2 * onset);
    const double partSlope = 6 * onset * (1 - onset) / kOnsetShare;
    return {part * rate.value, part * rate.slope + partSlope * rate.value};
}

double openingTime_s(FuseType type, double currentShare, FuseEdge edge) {
    const double rate = openingRate(type, currentShare, edge).value;
    return rate > 0 ? 1 / rate : std::numeric_limits<double>::infinity();
}

double fuseResistance_ohm(FuseType type, double rating_A) {
    const auto points = type == FuseType::E ? std::span<const ResistancePoint>(kResistanceE)
                                            : std::span<const ResistancePoint>(kResistanceC);
    const auto next = std::find_if(points.begin(), points.end(),
                                   [&](const ResistancePoint& point) { return point.rating_A >= rating_A; });
    if (next == points.begin() || next == points.end()) {
        const ResistancePoint& edge = next == points.end() ? points.back() : points.front();
        return edge.resistance_ohm * edge.rating_A /
               rating_A; // about the same drop at each fuse's own rating
    }
    const ResistancePoint& low = *std::prev(next);
    const double share = std::log(rating_A / low.rating_A) / std::log(next->rating_A / low.rating_A);
    return low.resistance_ohm * std::pow(next->resistance_ohm / low.resistance_ohm, share);
}

double fuseAmbientShare(double ambient_K) {
    const auto next = std::find_if(kAmbient.begin(), kAmbient.end(),
                                   [&](const AmbientPoint& point) { return point.ambient_K >= ambient_K; });
    if (next == kAmbient.begin()) {
        return kAmbient.front().share;
    }
    if (next == kAmbient.end()) {
        return kAmbient.back().share;
    }
    const AmbientPoint& low = *std::prev(next);
    const double part = (ambient_K - low.ambient_K) / (next->ambient_K - low.ambient_K);
    return low.share + part * (next->share - low.share);
}

} // namespace pumpwright

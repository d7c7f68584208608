#pragma once

#include "core/parts/saturation.h"

#include <string_view>

namespace pumpwright {

/// Blade fuses to ISO 8820-3: C (medium), F (small), E (high current).
enum class FuseType { C, F, E };

/// Where in the published band of opening times a fuse lies. Middle is the geometric mean of the edges.
enum class FuseEdge { Fast, Middle, Slow };

/// From the ids of the fuse's choices: "C", "F", "E"; "fast", "middle", "slow".
FuseType fuseType(std::string_view id);
FuseEdge fuseEdge(std::string_view id);

/// The rating up to which a fuse carries for ever, as a share.
inline constexpr double kFuseHoldsShare = 1.10;

/// [s] until a fuse opens that carries `currentShare` of its rating without a break. Infinite up to 110 %;
/// beyond 600 % the melting integral I²t stays as it is there.
double openingTime_s(FuseType type, double currentShare, FuseEdge edge);

/// [1/s] the reciprocal, and its slope. Without jumps: it begins at zero at 110 %.
SmoothValue openingRate(FuseType type, double currentShare, FuseEdge edge);

/// [Ω] of a cold fuse.
double fuseResistance_ohm(FuseType type, double rating_A);

/// Share of the rating that is left in hot surroundings.
double fuseAmbientShare(double ambient_K);

} // namespace pumpwright

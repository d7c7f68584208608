#pragma once

#include "core/checks/sneak_island.h"

#include <cstdint>

namespace pumpwright {

/// A load that current flows through although nothing that should command it is on.
struct SneakVictim {
    std::size_t branch = 0;
    double voltage_V = 0;
    double limit_V = 0;            ///< with less it does nothing
    std::vector<std::size_t> path; ///< numbers of branches from plus to minus, the victim among them
    std::vector<PartId> operated;  ///< switches and relays that are closed, or pulled in, on that path
    std::vector<PartId> blown;     ///< fuses that are open
    bool throughLoad = false;      ///< another load is on the path
};

struct SneakSearch {
    std::vector<SneakVictim> victims; ///< each load once, in the state with the least that is operated
    double combinations = 0;          ///< of switch, relay and fuse states
    std::uint64_t tried = 0;          ///< of them; fewer: a sample
};

/// More combinations are sampled. Each is looked at with all sources at one voltage, loads as resistances of
/// their nameplate values, and diodes without loss.
inline constexpr std::uint64_t kMostCombinations = 1U << 16U;

/// The same island gives the same result: a sample is drawn by a fixed sequence.
SneakSearch searchSneaks(const Survey& survey, const SneakIsland& island);

} // namespace pumpwright

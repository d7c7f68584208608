#pragma once

#include <cstdint>

namespace pumpwright {

/// The seed of a property test: the same in every run, unless the environment's PUMPWRIGHT_SEED gives another
/// to search further. Print it with INFO().
std::uint64_t testSeed();

} // namespace pumpwright

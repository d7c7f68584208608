#pragma once

#include <cstddef>
#include <set>

namespace pumpwright {

/// What switches a load: contacts by number of their branch, its own and those that command these in turn,
/// and the numbers of the load paths of coils, timers and inputs on the way. Without itself.
struct Command {
    std::set<std::size_t> contacts;
    std::set<std::size_t> paths;
};

} // namespace pumpwright

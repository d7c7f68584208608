#pragma once

#include <compare>
#include <string>

namespace pumpwright {

/// A stable name of one object in a circuit, unique among its sort, at most 64 characters.
/// The tag keeps a wire's id from being used as a part's.
template <class Tag>
struct Id {
    std::string text;
    friend auto operator<=>(const Id&, const Id&) = default;
};

using PartId = Id<struct PartTag>;
using WireId = Id<struct WireTag>;
using HoseId = Id<struct HoseTag>;

} // namespace pumpwright

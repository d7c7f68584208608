#pragma once

#include "core/units/quantity_kind.h"

#include <cstddef>
#include <limits>

namespace pumpwright {

/// What text and numbers of one kind look like.
struct KindRow {
    QuantityKind kind;
    std::string_view name;
    std::string_view siUnit;
    std::string_view example; ///< a text that parses, for messages
    std::span<const DisplayUnit> units;
    std::size_t ladder =
        1; ///< how many of the first units take part when a prefix is picked; powers of ten only
    double lowest = -std::numeric_limits<double>::infinity(); ///< in SI
};

const KindRow& kindRow(QuantityKind kind);

/// The unit of a kind that a text names: its symbol, another usual spelling, or either in other letter case
/// where that can't be taken for another unit. Null when there is none.
const DisplayUnit* unitNamed(QuantityKind kind, std::string_view text);

} // namespace pumpwright

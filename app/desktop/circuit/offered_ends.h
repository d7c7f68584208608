#pragma once

#include "app/desktop/circuit/layout.h"
#include "app/desktop/document/selection.h"

#include <QString>

#include <optional>
#include <vector>

namespace pumpwright {

// Terminals and ports that keys choose, for wires and for hoses.

enum class EndSort { Terminal, Port };

/// What a typed text means, best first: reference and number run together in any case, "k186" or "K1 86". A
/// reference alone means its free ends first; a beginning means all that go on like that; a number alone
/// means the ends of that number, those of the part at hand first.
std::vector<End> typedEnds(const Circuit& circuit, const QString& text, EndSort sort,
                           const std::optional<PartId>& atHand = std::nullopt);

/// Where a line would begin that goes on from a part: its first free end.
std::optional<End> freeEndOf(const Circuit& circuit, const PartId& part, EndSort sort);

/// Where a line from `from` would end if nobody says otherwise: the nearest free end of another part.
std::optional<End> nearestFreeEnd(const Circuit& circuit, const CircuitLayout& layout, const End& from,
                                  EndSort sort);

} // namespace pumpwright

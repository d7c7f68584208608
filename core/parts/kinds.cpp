#include "core/parts/kinds.h"

#include "core/parts/part_kind.h"

#include <array>

namespace pumpwright {

std::span<const PartKind* const> partKinds() {
    static const std::array kinds{
        &vacuumSwitchKind(),
        &resistorKind(),
        &pumpKind(),
        &boosterKind(),
        &reservoirKind(),
        &checkValveKind(),
        &teeKind(),
    };
    return kinds;
}

} // namespace pumpwright

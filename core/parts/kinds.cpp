#include "core/parts/kinds.h"

#include "core/parts/part_kind.h"

#include <array>

namespace pumpwright {

std::span<const PartKind* const> partKinds() {
    // One kind, one line, so that a new kind changes one line.
    // clang-format off
    static const std::array kinds{
        &supplyKind(),
        &groundKind(),
        &fuseKind(),
        &handSwitchKind(),
        &pedalSwitchKind(),
        &vacuumSwitchKind(),
        &timerKind(),
        &relayKind(),
        &solidStateRelayKind(),
        &diodeKind(),
        &zenerKind(),
        &capacitorKind(),
        &resistorKind(),
        &pumpKind(),
        &lampKind(),
        &buzzerKind(),
        &boosterKind(),
        &reservoirKind(),
        &checkValveKind(),
        &teeKind(),
        &spliceKind(),
        &connectorKind(),
    };
    // clang-format on
    return kinds;
}

} // namespace pumpwright

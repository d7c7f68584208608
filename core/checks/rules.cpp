#include "core/checks/rule.h"

#include <array>

namespace pumpwright {

// Each is defined in the file of its id.
extern const Rule kDriveCutShort;
extern const Rule kPressWithoutAssist;
extern const Rule kSupplyShort;
extern const Rule kUnfusedSupplyLead;
extern const Rule kFuseLargerThanWire;
extern const Rule kFuseSmallerThanLoad;
extern const Rule kWireOverCapacity;
extern const Rule kVoltageDrop;
extern const Rule kOpenTerminal;
extern const Rule kNoReturnPath;
extern const Rule kSuppressionDiodeReversed;
extern const Rule kCoilWithoutSuppression;
extern const Rule kContactContinuousCurrent;
extern const Rule kContactMakingCurrent;
extern const Rule kContactBreakingCurrent;
extern const Rule kSolidStateRelayDerating;
extern const Rule kRelayChatter;
extern const Rule kPumpNeverStops;

std::span<const Rule* const> rules() {
    static constexpr std::array kRules{
        &kDriveCutShort,
        &kPressWithoutAssist,
        &kSupplyShort,
        &kUnfusedSupplyLead,
        &kFuseLargerThanWire,
        &kFuseSmallerThanLoad,
        &kWireOverCapacity,
        &kVoltageDrop,
        &kOpenTerminal,
        &kNoReturnPath,
        &kSuppressionDiodeReversed,
        &kCoilWithoutSuppression,
        &kContactContinuousCurrent,
        &kContactMakingCurrent,
        &kContactBreakingCurrent,
        &kSolidStateRelayDerating,
        &kRelayChatter,
        &kPumpNeverStops,
    };
    return kRules;
}

} // namespace pumpwright

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
extern const Rule kSolidStateRelayOverheats;
extern const Rule kLeakageHoldsInput;
extern const Rule kInputBelowThreshold;
extern const Rule kCoilHeldByLeakage;
extern const Rule kHoldUpTooShort;
extern const Rule kRelayChatter;
extern const Rule kPumpNeverStops;
extern const Rule kVoltageDropAtStart;
extern const Rule kFuseOpensOnInrush;
extern const Rule kFuseCannotInterrupt;
extern const Rule kWireBurnsBeforeFuse;
extern const Rule kFuseFarFromSource;
extern const Rule kFuseSharedWithPump;
extern const Rule kGroundThinnerThanFeed;
extern const Rule kPolarityReversed;
extern const Rule kWireToItself;
extern const Rule kReferenceNotUnique;
extern const Rule kTerminalOverfull;
extern const Rule kSpliceHidden;
extern const Rule kSuppliesOpposed;
extern const Rule kSuppressionTwice;
extern const Rule kDiodeDelaysRelease;
extern const Rule kDiodeTooSmall;
extern const Rule kCapacitorInrush;
extern const Rule kMotorWithoutFreewheel;
extern const Rule kContactBelowMinimumLoad;
extern const Rule kContactLife;
extern const Rule kParallelContacts;
extern const Rule kChangeoverArc;
extern const Rule kCoilPullInMargin;
extern const Rule kTimerFunctionUnfit;
extern const Rule kSetPointOutOfReach;
extern const Rule kNoCheckValve;
extern const Rule kSwitchOnPumpSide;
extern const Rule kPedalOnlyTrigger;
extern const Rule kReservePresses;
extern const Rule kDifferentialBelowCreep;
extern const Rule kPumpDuty;
extern const Rule kPumpStarts;
extern const Rule kNoVacuumWarning;
extern const Rule kPumpDeadKeyOff;
extern const Rule kPumpLiveKeyOff;
extern const Rule kBatteryDrainParked;
extern const Rule kPumpVoltageLow;
extern const Rule kChargingTooWeak;
extern const Rule kSneakPath;
extern const Rule kRatingBelowPlace;

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
        &kVoltageDropAtStart,
        &kFuseOpensOnInrush,
        &kFuseCannotInterrupt,
        &kWireBurnsBeforeFuse,
        &kFuseFarFromSource,
        &kFuseSharedWithPump,
        &kGroundThinnerThanFeed,
        &kOpenTerminal,
        &kNoReturnPath,
        &kPolarityReversed,
        &kWireToItself,
        &kReferenceNotUnique,
        &kTerminalOverfull,
        &kSpliceHidden,
        &kSuppliesOpposed,
        &kSuppressionDiodeReversed,
        &kCoilWithoutSuppression,
        &kSuppressionTwice,
        &kDiodeTooSmall,
        &kDiodeDelaysRelease,
        &kCapacitorInrush,
        &kMotorWithoutFreewheel,
        &kContactContinuousCurrent,
        &kContactMakingCurrent,
        &kContactBreakingCurrent,
        &kParallelContacts,
        &kChangeoverArc,
        &kContactLife,
        &kContactBelowMinimumLoad,
        &kSolidStateRelayDerating,
        &kSolidStateRelayOverheats,
        &kLeakageHoldsInput,
        &kInputBelowThreshold,
        &kCoilPullInMargin,
        &kCoilHeldByLeakage,
        &kHoldUpTooShort,
        &kTimerFunctionUnfit,
        &kRelayChatter,
        &kPumpNeverStops,
        &kSetPointOutOfReach,
        &kNoCheckValve,
        &kSwitchOnPumpSide,
        &kPedalOnlyTrigger,
        &kReservePresses,
        &kDifferentialBelowCreep,
        &kPumpDuty,
        &kPumpStarts,
        &kNoVacuumWarning,
        &kPumpDeadKeyOff,
        &kPumpLiveKeyOff,
        &kBatteryDrainParked,
        &kPumpVoltageLow,
        &kChargingTooWeak,
        &kSneakPath,
        &kRatingBelowPlace,
    };
    return kRules;
}

} // namespace pumpwright

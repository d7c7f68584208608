#pragma once

namespace pumpwright {

class PartKind;

// One function for each kind, defined in the file of the same name ("relay.cpp"). kinds.cpp lists them.
const PartKind& supplyKind();
const PartKind& groundKind();
const PartKind& fuseKind();
const PartKind& handSwitchKind();
const PartKind& pedalSwitchKind();
const PartKind& vacuumSwitchKind();
const PartKind& timerKind();
const PartKind& relayKind();
const PartKind& solidStateRelayKind();
const PartKind& diodeKind();
const PartKind& zenerKind();
const PartKind& capacitorKind();
const PartKind& resistorKind();
const PartKind& pumpKind();
const PartKind& lampKind();
const PartKind& buzzerKind();
const PartKind& boosterKind();
const PartKind& reservoirKind();
const PartKind& checkValveKind();
const PartKind& teeKind();
const PartKind& spliceKind();
const PartKind& connectorKind();

} // namespace pumpwright

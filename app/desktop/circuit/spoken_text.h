#pragma once

#include "app/desktop/circuit/live_state.h"
#include "core/checks/finding.h"

#include <QString>

namespace pumpwright {

// What a screen reader says of a thing on the canvas: its name, and the state that it is in.

/// "K1 Relay, pump"
QString spokenName(const Part& part);
/// "Wire W3 RD 2.5 mm², from K1 87 to M1 +"
QString spokenName(const Circuit& circuit, const Wire& wire);
QString spokenName(const Circuit& circuit, const Hose& hose);
/// "WARNING: K1 is switched off without suppression: …"
QString spokenName(const Finding& finding);

/// "coil energised, contact 87 closed"; empty where a part of this kind has no state.
QString spokenState(const Part& part, const PartLive& live);
/// "5.5 A from K1 to M1", "live", "without voltage"
QString spokenState(const Circuit& circuit, const Wire& wire, const WireLive& live);
/// Why it matters, and by whom it was waived.
QString spokenState(const Finding& finding);

} // namespace pumpwright

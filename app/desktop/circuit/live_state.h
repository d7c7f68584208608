#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/drive.h"
#include "core/units/quantity_kind.h"

#include <QString>

#include <map>
#include <vector>

namespace pumpwright {

/// What a part does at one instant of the drive.
struct PartLive {
    bool known = false; ///< there is a drive to show
    bool closed = false;
    bool energised = false;
    double travel = 0;    ///< of a booster's diaphragm, 0 at rest to 1 at the stop, in steps worth drawing
    bool flashes = false; ///< switches to and fro faster than is shown while the drive plays
    QString reading;      ///< "blown", "62 kPa", or empty
    friend bool operator==(const PartLive&, const PartLive&) = default;
};

/// What a wire does at one instant of the drive.
struct WireLive {
    bool live = false;    ///< voltage against ground, or current
    double current_A = 0; ///< positive from `from` to `to`; zero where next to nothing flows
    friend bool operator==(const WireLive&, const WireLive&) = default;
};

struct LiveState {
    std::map<PartId, PartLive> parts;
    std::map<WireId, WireLive> wires;
};

/// A reading for people: three digits, because the last ones only flicker.
QString readingText(double si, QuantityKind kind);

/// Reads states from a recording, which must outlive it. Looks the channels up once, not at each instant.
class LiveReader {
public:
    LiveReader(const Circuit& circuit, const Recording& recording);
    ~LiveReader();

    /// The state of all parts and wires at a time of the recorded drive. `pace` is how many seconds of the
    /// drive pass in one on the screen: what would flash more than twice a second is shown as chattering, or
    /// steadily lit.
    LiveState at(double time_s, double pace = 0) const;
    /// The state at the end of a recording that is still going on, in real time: there is no telling what
    /// comes next.
    LiveState now() const;

    struct PartChannels;
    struct WireChannels;

private:
    double m_duration_s;
    std::vector<PartChannels> m_parts;
    std::vector<WireChannels> m_wires;
};

/// One state from a recording, as LiveReader::at().
LiveState liveState(const Circuit& circuit, const Recording& recording, double time_s, double pace = 0);
/// Likewise, as LiveReader::now().
LiveState liveStateNow(const Circuit& circuit, const Recording& recording);

/// The state before any drive: contacts as at rest.
LiveState restState(const Circuit& circuit);

} // namespace pumpwright
